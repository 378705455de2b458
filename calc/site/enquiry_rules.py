"""Which fact a number with a unit is: cues before and after it, weighed.

A rule is (path, weight, pattern that the words before it end with, pattern that those after it
begin with). The heaviest path wins; two of nearly one weight make it unclear.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.site import enquiry_places as places
from calc.site.enquiry_cues import RULES
from calc.site.enquiry_model import Token

_AFTER_PIPE = re.compile(
    r"[ ,;x@(/:=-]*+(?>(?:and|it|which|that|is|are|measures|runs|has|of|with|a|length|long|about|roughly|approx\.?|ca\.?|over|for|total|in|all|the|way|around|some|pipe|line|poly|buried|distance|then)(?![a-z])[ ,:]*+)*+"
)
_LABEL = re.compile(
    r"(?:(?P<one>[a-z ]{3,25}?) )?(?P<how>above|over|below|under|higher than|lower than) (?:the |our |my )?(?P<other>[a-z-]+(?: (?!and)[a-z-]+)?)[ ]*(?:\(?(?:in )?(?:m|ft|feet|metres)\)?)? ?(?::|=| is| - )[ ~-]*(?:about |approx\.? |ca\.? |roughly )*$"
)


@dataclass(frozen=True)
class Context:
    """The words round a number: ``left`` and ``right`` as far as the next number, ``before`` from
    the sentence's beginning, ``after`` to its end, ``subject`` of the sentence before, ``mail`` all
    of it."""

    left: str
    right: str
    before: str
    after: str
    subject: str
    mail: str
    next_pipe: str = ""  # path of the pipe whose size the next number is
    last_pipe: str = ""  # of the number before


def weigh(token: Token, near: Context) -> dict[str, float]:
    """{path: weight} of what a number may be, by the words beside it."""
    found: dict[str, float] = {}
    for rule in RULES.get(token.kind, ()):
        if rule.fits(near.left[-110:], near.right):
            more = 0.5 if rule.path in found else 0
            found[rule.path] = max(found.get(rule.path, 0), rule.weight) + more
    if token.kind == "time" and token.unit == "weeks":
        dry = re.search(
            r"\b(?:dry|drought|without|no (?:rain|water|sun)|last|lasts|enough|storage|reserve)\b",
            near.before + near.after,
        )
        return {"store.days": 6} if dry else {}
    if token.kind == "rise":
        found["way.climb"] = 6.5
        token.sign = -1.0 if places.goes_down(near.left, near.right) else 1.0
    if token.kind == "length":
        _lengths(token, near, found)
    return {path: weight for path, weight in found.items() if weight > 0}


def _lengths(token: Token, near: Context, found: dict[str, float]) -> None:
    """Heights between two places, and what only their nouns say."""
    at = places.between(near.left, near.right, near.before, near.subject)
    token.sign = -1.0 if at.how == "below" else 1.0
    _of_pipes(token, near, found)
    if _on_a_hill(token, near, at, found):
        return
    if at.how and re.match(r"[ ,]*(?:sea|mean sea)", near.right.split("above", 1)[-1]):
        return
    if re.search(r"\b(?:lift|raise|pump|bring)\b[^.;¤]{0,50}\bby (?:about )?$", near.before):
        found["way.climb"] = 6
    if _from_to(token, near, found):
        return
    at = _labelled(token, near, at)
    vertical = _VERTICAL.search(near.left[-60:])
    if _ELSE.search(near.left[-60:]) and not _RUNS.search(near.left + near.right[:25]):
        found.pop("way.length", None)
    if re.match(r" ?(?:long|wide) (?:and|by|x)\b[^.;]{0,12}\b(?:wide|deep|long|high)", near.right):
        found.pop("way.length", None)
    if re.search(r"\bsuck\w* (?:the water |it |water )?up\b[^.;]{0,12}$", near.left[-40:]):
        found.pop("way.length", None)
    if re.search(r"\bpump\b[^.;]{0,25}\b(?:hanging|hangs|hung)\b[^.;]{0,12}$", near.left[-50:]):
        found.pop("water.level", None)
        found["pump.height"], token.sign = 7, -1.0
    if _DUG.search(near.left[-40:]):
        found.pop("water.level", None)
    if "way.length" in found and at.before == "WELL" and re.search(r"\b(?:goes|whole)\b", near.left):
        found.pop("way.length")
        found["well.depth"] = max(found.get("well.depth", 0), 5)
    if re.match(r" ?per (?:line|row|lateral)\b", near.right):
        found.clear()
        found["drip.length"] = 9
    if re.search(r"\bline length ?[:=]? ?$", near.left) and re.search(r"\b(?:drip|emitters)", near.mail):
        found["drip.length"] = 9
    if "drip.length" in found:
        found.pop("way.length", None)
    if "way.climb" in found and vertical and "suction" not in near.left[-50:] and not re.match(r" ?of (?:pipe|line|hose)", near.right):
        found.pop("way.length", None)
        if "water" not in near.left[-40:] and at.before != "WATER":
            found.pop("water.level", None)
    at = _aliased(at, near)
    if at.how:
        _related(token, at, near, found)
    elif "pump.height" in found:
        token.sign = -1.0  # hung in a well
        found.pop("water.level", None)
    elif at.before == "PUMP" and _DOWN.match(near.right):
        found["pump.height"], token.sign = 7, -1.0
    elif "way.climb" in found:
        _unrelated(token, at, near, found)
    if at.before == "WATER" and "water.level" in found:
        found.pop("way.climb", None)
    if _BORE_IS.search(near.left) and re.match(r" ?(?:$|[,.;)\n])", near.right):
        found["well.depth"] = 6.5
    _of_suction(near, at, found)
    _altitude(token, near, at, found)


def _aliased(at: places.Between, near: Context) -> places.Between:
    """ "above the shed" is above the pump, where the letter says that the pump stands in it."""
    place = _ABOVE_WHAT.match(near.right)
    if not at.how or at.after not in {"HOUSE", ""} or place is None:
        return at
    word = re.escape(place[1])
    if re.search(
        rf"\b(?:pump|well|bore ?hole|bore)\b[^.;\n]{{0,30}} (?:in|at|on|inside) (?:the |our |a |my )?(?:\w+ )?{word}\b|\b{word},? where the (?:pump|well|bore\w*|spring)\b",
        near.mail,
    ):
        return places.Between(at.before, "PUMP", at.how)
    return at


_ABOVE_WHAT = re.compile(
    r"[ ,]*(?:above|below|higher than|lower than|over|under|up from|down from) (?:the |our |my )?([a-z-]{4,})\b"
)


def _from_to(token: Token, near: Context, found: dict[str, float]) -> bool:
    """ "from the creek up to the shed is 4 m", "4 m from the creek up to the shed"."""
    after = _UP_TO.match(near.right)
    rise = after or _FROM_TO.search(near.left[-100:]) or _RISES.search(near.left[-100:])
    if rise is None:
        return False
    if after:
        found.clear()
    found.pop("way.length", None)
    sign = -1.0 if not after and rise["how"] in {"down", "fall", "drop"} else 1.0
    _climbs(token, places.noun(rise["one"]), places.noun(rise["other"]), found, sign)
    return True


_BORE_IS = re.compile(
    r"(?:^|[.\n;:]) *(?:our |the |a |drilled |dug |new |old )*(?:well|bore|bore ?hole)[ ,:=-]{1,3}(?:is |of |about )*$"
)
_VERTICAL = re.compile(
    r"\b(?:climb(?:s|ing)?|rises?|rising|drop(?:s|ping)?|falls?|falling|descends?|ascends?|lift(?:s|ed)?|raised?|height difference|difference in height|elevation (?:gain|change)|vertical \w+)"
    r"(?: (?:of|is|by|about|another|further|some|roughly|between [a-z ]{5,40}|from [a-z ]{5,40}))*[ :=]*$"
)
_DOWN = re.compile(r" ?(?:down\b(?! the (?:hill|slope|road))|lower|deeper|below)")
_HILL = re.compile(
    r" ?(?:further )?(up|down) (?:the|a|our) (?:\w+ )?(?:hill|slope|mountain|ridge|hillside|bank|knoll)\b"
)
_OF_PIPE = re.compile(
    r" ?(?:of|of the|run of|long|in|-|,|x|/|worth of|of old|of new|of buried|of black|@|on|down|using|through)? ?\(?"
)
_RUN_UNITS = {"m", "ft", "yd", "km", "mi"}


def _of_pipes(token: Token, near: Context, found: dict[str, float]) -> None:
    """ "400 ft of 1 in poly", "1 in poly, 400 ft": the length of that pipe."""
    if near.next_pipe and _OF_PIPE.fullmatch(near.right) and token.unit in _RUN_UNITS:
        path = near.next_pipe.replace(".pipe", ".length")
        if path != "way.length":
            found.pop("way.length", None)
        found[path] = max(found.get(path, 0), 6.5 if near.right.strip() else 4.5)
    cover = re.match(r" ?(?:deep|down|under|below|of cover)", near.right)
    follows = near.last_pipe and _AFTER_PIPE.fullmatch(near.left)
    if follows and not found and not cover and token.unit in _RUN_UNITS:
        found[near.last_pipe.replace(".pipe", ".length")] = 4.5


def _on_a_hill(token: Token, near: Context, at: places.Between, found: dict[str, float]) -> bool:
    """ "60 ft up the hill" may be a length or a height."""
    hill = _HILL.match(near.right)
    if hill is None:
        return False
    from_source = -1.0 if at.before in {*places.SOURCES, "PUMP"} else 1.0
    token.sign = from_source if hill[1] == "up" else -from_source
    found.clear()
    found["way.length"], found["way.climb"] = 5, 5
    return True


def _labelled(token: Token, near: Context, at: places.Between) -> places.Between:
    """ "height above the house: 18 m": the relation stands before the number."""
    bare = _STANDS.search(near.left[-50:])
    if bare and not at.how:
        token.sign = -1.0 if bare["how"] in {"below", "lower", "under"} else 1.0
        return places.Between(
            places.noun(bare["one"]), "HOUSE", "below" if token.sign < 0 else "above"
        )
    by = _BY.search(near.left[-90:])
    if by and not at.how:
        how = "below" if by["how"] in {"below", "lower"} else "above"
        token.sign = -1.0 if how == "below" else 1.0
        return places.Between(at.before, places.noun(by["other"], last=False), how)
    label = _LABEL.search(near.left[-70:])
    if not label or at.how:
        return at
    how = "below" if label["how"] in {"below", "under", "lower than"} else "above"
    one = places.noun(label["one"] or "") or places.noun(near.before)
    other = places.noun(label["other"])
    token.sign = -1.0 if how == "below" else 1.0
    return places.Between((one if one != other else "") or _from_mail(near.mail, other), other, how)


_STANDS = re.compile(
    r"(?:^|\n) *(?P<one>[a-z ]{3,14}?) (?P<how>above|below|higher|lower) *[:=] *(?:about |ca\.? )?$"
)
_BY = re.compile(
    r"\b(?P<how>above|below|higher|lower)(?: than)? (?P<other>(?:the|our|my) [a-z '-]{3,50}?) by (?:about |some |roughly |around |a good )*$"
)
_TO_PUMP = re.compile(
    r"\bfrom (?:the |our )?(?:\w+ )?(?:well|creek|stream|pond|lake|river|cistern|spring|water|foot valve)"
    r" (?:up |over )?to (?:the |our )?(?:\w+ )?pump\b"
)


def _of_suction(near: Context, at: places.Between, found: dict[str, float]) -> None:
    """The pipe from the water to a pump that is out of it is its suction."""
    around = near.before + near.after
    draws = re.search(r"suction|intake|suck", around) or "foot valve" in near.left[-30:]
    if "suction.length" in found and not draws:
        del found["suction.length"]
    if at.before == "PANELS" and not near.next_pipe:
        found.pop("way.length", None)
    to_pump = re.search(
        _TO_PUMP.pattern + r"(?:,? (?:is|are|of|with|runs|there|about|by|a|it|is it))*[ :]*$",
        near.left[-90:],
    ) or _TO_PUMP.match(near.right.lstrip())
    if "way.length" in found and to_pump and "submersible" not in near.mail:
        found["suction.length"] = found.pop("way.length") + 1


def _altitude(token: Token, near: Context, at: places.Between, found: dict[str, float]) -> None:
    """A height above the sea, by how high it is and what is said to be "at" it."""
    high = max(token.low, *token.maybe, 0.0) * {"m": 1, "ft": 0.3048}.get(token.unit, 0)
    if high >= 250 and _LIVES_AT.search(near.left[-50:]):
        found["place.altitude"] = max(found.get("place.altitude", 0), 8)
    elif high >= 900 and not at.how and _AT.search(near.left):
        found["place.altitude"] = max(found.get("place.altitude", 0), 5.5)
    if _TOPS.search(near.left[-50:]):
        found.pop("place.altitude", None)
    sure = "sea" in near.right or "altitude" in near.left
    if "place.altitude" in found and high < 60 and not sure:
        found["place.altitude"] = 0
        found["way.climb"] = max(found.get("way.climb", 0), 4)


_LIVES_AT = re.compile(
    r"\b(?:we(?:'re| are| live| sit)|cabin is|place is|house is|located|situated|up)(?: \w+){0,3} (?:at|up)"
    r"(?: about| around| roughly| nearly)? ?$"
)
_AT = re.compile(r"\b(?:at|@)(?: about| around| roughly| nearly)? ?$")


def _related(token: Token, at: places.Between, near: Context, found: dict[str, float]) -> None:
    """A height above or below something: which of the two is a tank, the source, the house?"""
    for path in ("way.climb", "way.length", "water.level"):
        if path != "water.level" or at.after:
            found.pop(path, None)
    one, other, down = at.before, at.after, at.how == "below"
    sources = {*places.SOURCES, "STORE", "WATER"}
    if one in {"TANK", "ABOVE"} and other != one:
        found["tank.level"] = 8
    elif one == "STORE" and other in {"HOUSE", ""}:
        found["way.climb"], token.sign = 7, 1.0 if down else -1.0
    elif one in {"WATER"} and other in {"PUMP", "", *places.SOURCES}:
        if down:
            found["water.level"], token.sign = 8, -1.0
    elif one == "PUMP" and other in sources:
        # heights are counted from the pump, unless it hangs in the water
        if down:
            found["pump.height"], token.sign = 8, -1.0
            return
        found["water.level"], token.sign = 7, 1.0 if down else -1.0
    elif one in sources and other == "PUMP":
        found["water.level"], token.sign = 6.5, -1.0 if down else 1.0
    elif one == "PUMP" and not other:
        found.pop("pump.height", None)  # above or below what is not said
    elif one in {*sources, "PUMP"} and other in {"HOUSE", ""}:
        found["way.climb"], token.sign = (7 if other else 4), 1.0 if down else -1.0
        if (
            not other
            and one in {"WELL", "PUMP"}
            and re.match(r" ?(?:below|above|under|over)", near.right)
        ):
            found["way.climb"] = 0
    elif one == "HOUSE" and other == "STORE" and down and "cistern" not in near.after[:40]:
        found["tank.level"], token.sign = 7, 1.0
    elif one == "HOUSE" and other in {"TANK", "ABOVE"} and down:
        found["tank.level"], token.sign = 7, 1.0
    elif one == "HOUSE" and other in {*sources, "PUMP", "TANK", "ABOVE", ""}:
        found["way.climb"] = 7 if other else 4
    elif one == "HOUSE" and other == "HOUSE" or not one and other == "HOUSE":
        _by_mail(down, near, found, token)
    elif not one and other in {*sources, "PUMP"}:
        found["way.climb"] = 5
    elif one in {"PTANK", "PANELS", "SUCTION"}:
        found.clear()


def _climbs(token: Token, one: str, other: str, found: dict[str, float], sign: float) -> None:
    """ "from the creek up to the shed is 4 m": a height from the first place to the second."""
    token.sign = sign
    if one in {"TANK", "ABOVE"} and other == "HOUSE":
        found["tank.level"], token.sign = 7, 1.0
    elif other in {"TANK", "ABOVE"}:
        found["tank.level"] = 7
    elif other == "PUMP" and one in {*places.SOURCES, "WATER", "STORE"}:
        found["water.level"] = 7
    elif other == "HOUSE" and one:
        found["way.climb"] = 7


_RISES = re.compile(
    r"\b(?P<how>lift|rise|climb|height|vertical(?: distance)?|fall|drop)\b,? (?:is )?(?:from )?(?<=from ) (?:the |our |my )?(?P<one>[a-z' -]{3,25}?) to (?:the |our |my )?(?P<other>[a-z-]+(?: (?!is|are)[a-z-]+)?),?(?: (?:is|are|about|roughly|around))*[ :=]+$"
)
_UP_TO = re.compile(
    r" ?from (?:the |our )?(?P<one>[a-z]+(?: [a-z]+)?) up to (?:the |our )?(?P<other>[a-z]+(?: [a-z]+)?)"
)
_FROM_TO = re.compile(
    r"\bfrom (?:the |our |my )?(?P<one>[a-z' -]{3,30}?),? (?:it (?:is|climbs|goes) )?(?P<how>up|down) to (?:the |our |my )?(?P<other>[a-z-]+(?: [a-z-]+)?),?(?: (?:it's|it is|it climbs|is|there are|there is|are|about|roughly|around|goes|climbs))*[ :=]+$"
)


def _from_mail(mail: str, other: str) -> str:
    """What stands above or below the ``other`` where a list does not say it."""
    if other == "HOUSE":
        return next(
            (key for key in ("ABOVE", "SPRING", "WELL", "CREEK") if re.search(_FIRST[key], mail)),
            "",
        )
    return "HOUSE"


_FIRST = {
    "ABOVE": r"\b(?:hill|header|upper) ?-?tank",
    "SPRING": r"\bspring",
    "WELL": r"\bwell|\bbore",
    "CREEK": r"\b(?:creek|stream|river|pond|lake)",
}


def _by_mail(down: bool, near: Context, found: dict[str, float], token: Token) -> None:
    """ "40 ft above the house" with nobody named: the tank of the sentence, else the source."""
    if re.search(r"\btank", near.before + near.after):
        found["tank.level"] = 5
    elif re.search(r"\b(?:spring|creek|stream|source|well|pump)\b", near.before):
        found["way.climb"], token.sign = 5, 1.0 if down else -1.0


_ELSE = re.compile(
    r"\b(?:town|village|shop|store|fence|road|drive|driveway|property|land|wall|city|school|highway|track|boundary|sea|coast|neighbou?rs?)\b(?:'s)?(?: [a-z]+)? (?:is|are|lies|runs|measures)\b[^.;,]*$"
)
_RUNS = re.compile(r"\b(?:pipe|line|poly\w*|hose|pvc|pump|well|spring|water)\b")
_DUG = re.compile(
    r"\b(?:pipe|line|cellar|basement|floor|frost|trench|tank|footing|slab|cable)s? (?:is|are|goes|lies|sits|runs|was) (?:about |laid |buried |some )*$"
)
_TOPS = re.compile(r"\b(?:summit|peak|pass|top of the mountain|works|rated|good|approved)\b[^.;,]*$")
_HIGH_SOURCE = re.compile(
    r"\b(?:spring|source|intake|creek|stream|pond|lake)\b[^.;]{0,25}\b(?:is|lies|sits|stands|comes) (?:\w+ )?(?:over|above|higher than|uphill (?:of|from)) (?:the |our |my )?(?:house|hut|cabin|home|farm|cottage|garden|place|camp|village)"
)


def _unrelated(token: Token, at: places.Between, near: Context, found: dict[str, float]) -> None:
    """ "up 40 ft", "a fall of 20 m": the way's, unless a tank is named where it ends."""
    if places.goes_down(near.left.rsplit(",", 1)[-1], near.right.split(",", 1)[0]):
        token.sign = -1.0
    elif _HIGH_SOURCE.search(near.before[-120:]) and not re.search(r"\b(?:up|climbs?|rises?|uphill)\b", near.left[-25:]):
        token.sign = -1.0
    to = re.match(
        r" ?(?:of )?(?:vertical(?:ly)?|rise|climb|lift|elevation(?: gain)?|up|uphill|higher|straight up|height|head)?,? ?(?:up )?(?:in)?to (?:a|an|the|our|my)\b([^.,;]{0,40})",
        near.right,
    )
    goal = places.noun(to[1], last=False) if to else ""
    tank = goal in {"TANK", "ABOVE"} or (not goal and at.before in {"TANK", "ABOVE"} and not re.search(
        r"\b(?:from|between) [^.,;]{0,20}tanks?[^.,;]*$", near.left))  # fmt: skip
    from_tank = re.search(
        r"\b(?:drops?|falls?|height|head)\b[^.;,]{0,12} from (?:the |our )?(?:\w+ )?(?:tank|reservoir) ?(?:to [^.;,]{3,25}? )?(?:is|are|:|of)?[ ~]*(?:about |some )?$"
        r"|\bfrom (?:the |our )?(?:\w+ )?(?:tank|reservoir) to [^.;,]{3,25},? (?:it |there )?(?:drops|falls|is a (?:drop|fall) of)[ ~]*(?:about |some )?$",
        near.before[-90:],
    )
    if from_tank:
        found.pop("water.level", None)
        tank, token.sign = True, 1.0
    if tank:
        found["tank.level"], found["way.climb"] = 6.5, 0
    if at.before == "PUMP" and re.search(
        r"(?:max|total|rated|shut)\W?(?:imum)? ?(?:head|lift|height)", near.left[-40:]
    ):
        found["way.climb"] = 0
    if at.before in {"WATER", "SUCTION"} and "suction" in near.before[-40:]:
        found["way.climb"] = 0
