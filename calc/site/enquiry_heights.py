"""Heights between two places: which stands above which, and what that makes of a number."""

from __future__ import annotations

import re

from calc.site import enquiry_places as places
from calc.site import enquiry_words as words
from calc.site.enquiry_model import Context, Token

_LABEL = re.compile(
    r"(?:(?P<one>[a-z ]{3,25}?) )?(?P<how>above|over|below|under|higher than|lower than) (?:the |our |my )?(?P<other>[a-z-]+(?: (?!and)[a-z-]+)?)[ ]*(?:\(?(?:in )?(?:m|ft|feet|metres)\)?)? ?(?::|=| is| - )[ ~-]*(?:about |approx\.? |ca\.? |roughly )*$"
)
_PLAIN = re.compile(  # "tank 8 m3, above the hut 15 m"
    r"[,;] ?(?P<one>)(?P<how>above|below|higher than|lower than|over|under|up from) (?:the |our |my )?(?P<other>[a-z-]+) (?:about |some )?$"
)
_ABOVE_WHAT = re.compile(
    r"[ ,]*(?:above|below|higher than|lower than|over|under|up from|down from) (?:the |our |my )?([a-z-]{4,})\b"
)
_STANDS = re.compile(
    r"(?:^|\n) *(?P<one>[a-z ]{3,14}?) (?P<how>above|below|higher|lower) *[:=] *(?:about |ca\.? )?$"
)
_BY = re.compile(
    r"\b(?P<how>above|below|higher|lower)(?: than)? (?P<other>(?:(?:the|our|my) [a-z '-]{3,50}?|it|that|this|them)) by (?:about |some |roughly |around |a good )*$"
)
_RISES = re.compile(
    r"\b(?P<how>lift|rise|climb|height|vertical(?: distance)?|fall|drop)\b,? (?:is )?(?:from )?(?<=from ) (?:the |our |my )?(?P<one>[a-z' -]{3,25}?) to (?:the |our |my )?(?P<other>[a-z-]+(?: (?!is|are)[a-z-]+)?),?(?: (?:is|are|about|roughly|around))*[ :=]+$"
)
_UP_TO = re.compile(
    r" ?from (?:the |our )?(?P<one>[a-z]+(?: [a-z]+)?) (?P<to>up|down) to (?:the |our )?(?P<other>[a-z]+(?: [a-z]+)?)"
)
_FROM_TO = re.compile(
    r"\bfrom (?:the |our |my )?(?P<one>[a-z' -]{3,30}?),? (?:it (?:is|climbs|goes) )?(?P<how>up|down) to (?:the |our |my )?(?P<other>[a-z-]+(?: (?!in\b|of\b|at\b|it|and\b)[a-z-]+)?)(?: (?:in|of|at) (?:the|our|my) [a-z]+)?,?(?: (?:it's|it is|it climbs|is|there are|there is|are|about|roughly|around|goes|climbs))*[ :=]+$"
)
_OF_FALL = re.compile(
    r"\b(?:drops?|falls?|head|height)(?: difference)? of (?:about |some |around )?$"
)
_FROM_TANK = re.compile(
    r" ?(?:from|between) (?:the |our )?(?:\w+ )?(?:tank|reservoir) (?:down )?(?:to|and)\b"
)
_DOWN_TO = re.compile(
    r" ?(?:from|between) (?:the |our )?pump (?:straight )?(?:down to|and) (?:the )?water\b"
)
_SPRING_UP = re.compile(
    r"\b(?:spring|source|intake)(?: is| lies)? \| up(?:hill| the hill)?(?= ?[.,;)\n]|$)"
)
_UP_IS = re.compile(
    r" ?(?:up|higher|above)(?: us| here)? (?:is|lies|sits|comes|there is|we have) (?:the|our|a|an) (?:\w+ )?(?:spring|source|creek|stream|intake|pond|lake|dam)\b"
)
_FIRST = {
    "ABOVE": r"\b(?:hill|header|upper) ?-?tank",
    "SPRING": r"\bspring",
    "WELL": r"\bwell|\bbore",
    "CREEK": r"\b(?:creek|stream|river|pond|lake)",
}
_HIGH_SOURCE = re.compile(
    r"\b(?:spring|source|intake|creek|stream|pond|lake)\b[^.;]{0,25}\b(?:is|lies|sits|stands|comes) (?:\w+ )?(?:over|above|higher than|uphill (?:of|from)) (?:the |our |my )?(?:house|hut|cabin|home|farm|cottage|garden|place|camp|village)"
)


_BESIDE = re.compile(  # "a house 4.5 m above the well", "a tank on the terrace, 48 m above the creek"
    r"\bto (?:an?|the|our|my) (?:[a-z]+ )?(?P<one>[a-z]+)(?: (?:on|at|in|by) (?:the|an?|our) [a-z]+)?,? (?:about |some |only |just )*$"
)


def aliased(at: places.Between, near: Context) -> places.Between:
    """ "above the shed" is above the pump, where the letter says that the pump stands in it."""
    place = _ABOVE_WHAT.match(near.right)
    beside = _BESIDE.search(near.left) if at.how and at.after else None
    goal = places.noun(beside["one"]) if beside else ""
    if goal in {"HOUSE", "TANK", "ABOVE"} and goal != at.after:
        return places.Between(goal, at.after, at.how)
    if not at.how or at.after not in {"HOUSE", ""} or place is None:
        return at
    word = re.escape(place[1])
    if re.search(
        rf"\b(?:pump|booster|well|bore ?hole|bore)\b[^.;\n]{{0,30}} (?:in|at|on|inside|by|beside|next to|near|behind) (?:the |our |a |my )?(?:\w+ )?{word}\b|\b{word},? where the (?:pump|well|bore\w*|spring)\b",
        near.mail,
    ):
        return places.Between(at.before, "PUMP", at.how)
    return at


def from_to(token: Token, near: Context, found: dict[str, float]) -> bool:
    """ "from the creek up to the shed is 4 m", "4 m from the creek up to the shed"."""
    after = _UP_TO.match(near.right)
    if _DOWN_TO.match(near.right):
        found.clear()
        found["water.level"] = 8
        return True
    rise = after or _FROM_TO.search(near.left[-100:]) or _RISES.search(near.left[-100:])
    route = _ROUTE.search(near.before[-100:]) if _BARE.match(near.right) else None
    if rise is None and route:  # "from dam to yards 500 m, 30 m lower": the goal is
        ends = places.noun(route["one"]), places.noun(route["other"])
        if all(ends) and ends[0] != ends[1]:
            found.pop("way.length", None)
            low = re.match(r" ?(?:lower|deeper|below|down)", near.right)
            _climbs(token, *ends, found, -1.0 if low else 1.0)
            return True
    if rise is None:
        return False
    if after and re.search(r"\b(?:length|run|distance|(?:of|the) pipe)\b", near.before):
        return False  # parts of a pipe
    if after:
        found.clear()
    found.pop("way.length", None)
    sign = -1.0 if rise["to" if after else "how"] in {"down", "fall", "drop"} else 1.0
    _climbs(token, places.noun(rise["one"], last=False), places.noun(rise["other"]), found, sign)
    return True


def labelled(token: Token, near: Context, at: places.Between) -> places.Between:
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
        if by["other"] in {"it", "that", "this", "them"}:  # "below it by 60 ft, the drinkers"
            return places.Between("HOUSE", near.subject, how)
        return places.Between(at.before, places.noun(by["other"], last=False), how)
    label = _LABEL.search(near.left[-70:]) or _PLAIN.search(near.left[-50:])
    if not label or at.how:
        return at
    how = "below" if label["how"] in {"below", "under", "lower than"} else "above"
    one = places.noun(label["one"] or "") or places.noun(near.before)
    other = places.noun(label["other"])
    token.sign = -1.0 if how == "below" else 1.0
    return places.Between((one if one != other else "") or _from_mail(near.mail, other), other, how)


def related(token: Token, at: places.Between, near: Context, found: dict[str, float]) -> None:
    """A height above or below something: which of the two is a tank, the source, the house?"""
    for path in ("way.climb", "way.length", "water.level"):
        if path != "water.level" or at.after:
            found.pop(path, None)
    one, other, down = at.before, at.after, at.how == "below"
    sources = {*places.SOURCES, "STORE", "WATER"}
    if _of_neither(token, near, one, found):
        return
    if one == "TANK" and down and other in {*places.SOURCES, "PUMP", "HOUSE"}:
        _low_tank(token, other, found)
    elif one in {"TANK", "ABOVE"} and other != one:
        found["tank.level"] = 8 if one == "ABOVE" or not _of_pressure(near.mail) else 0
        token.sign *= _turned(down, other, near)
    elif one == "STORE" and other in {"HOUSE", ""}:
        found["way.climb"], token.sign = 7, 1.0 if down else -1.0
    elif one == "WATER" and other in {"PUMP", "", *places.SOURCES}:
        found["water.level"], token.sign = 8 if down else 0, -1.0
    elif one == "PUMP" and other in sources:
        _pump_over(token, down, found)
    elif one in sources and other == "PUMP":
        found["water.level"], token.sign = 6.5, -1.0 if down else 1.0
        token.extra["over"] = token.sign > 0  # water that stands above its pump
    elif one == "PUMP" and not other:
        _pump_alone(token, down and _HUNG.search(near.left[-40:]) is not None, found)
    elif one in {*sources, "PUMP"} and other in {"HOUSE", ""}:
        found["way.climb"], token.sign = (7 if other else 4), 1.0 if down else -1.0
        bare = re.match(r" ?(?:below|above|under|over)", near.right)
        if not other and one in {"WELL", "PUMP"} and bare:
            found["way.climb"] = 0
    elif one == "HOUSE":
        _house(token, other, down, near, found)
    elif not one and other == "HOUSE":
        _by_mail(down, near, found, token)
    elif not one and other == "WATER" and not down:
        found["water.level"], token.sign = 6, -1.0  # "ours is 6 m above the water"
    elif not one and other in {*sources, "PUMP"}:
        found["way.climb"] = 5
    elif one in {"PTANK", "PANELS", "SUCTION"}:
        found.clear()


_GOAL_LOWER = re.compile(
    r"\bto (?:the |our )?(?:\w+ )?(?:house|kitchen|cabin|barn|garden|hut|home|trough|taps?|showers?|stable)(?:,| which is| that is| and is)(?: about| some)* $"
)


def _of_neither(token: Token, near: Context, one: str, found: dict[str, float]) -> bool:
    """Whether a height is of none of them: of a bottom, a hump, a second place, a well's top."""
    bottom = _BOTTOM.match(near.right) or _HUMP.search(near.left[-50:])
    if bottom or (one == "PUMP" and _HEAD.match(near.right)):
        found.clear()
        return True
    if _TWICE.match(near.left) or _EACH_OTHER.match(near.right):
        token.extra["other"] = 1.0  # above a second place; two of one kind beside each other
        return True
    return False


def _low_tank(token: Token, other: str, found: dict[str, float]) -> None:
    """A tank below the pump is drawn from; one below its spring is no tank above."""
    if other == "PUMP":
        found["water.level"], token.sign = 7, -1.0
    elif other == "HOUSE":
        found["way.climb"] = found["tank.level"] = 5  # drawn from, or only low
    else:
        token.extra["other"] = 1.0


def _pump_alone(token: Token, hung: bool, found: dict[str, float]) -> None:
    """A pump that hangs; above or below what is not said of others."""
    if hung:
        found["pump.height"], token.sign = 7, -1.0
    else:
        found.pop("pump.height", None)


_TWICE = re.compile(
    r" ?(?:above|below|higher than|lower than) (?:the |our )?[a-z -]{3,30},? (?:and|but) (?:about |some |only |just )?$"
)
_EACH_OTHER = re.compile(
    r" ?(?:above|below|higher than|lower than|under|over) (?:the |each )?(?:first|second|third|other|next|last|previous|lower|upper|old|neighbouring|ground floor|basement|cellar floor|lower floor)(?: one| house| cabin| cottage| building|(?= ?[.,;\n]|$| and\b| but\b))"
)
_BOTTOM = re.compile(
    r" ?(?:above|below|over|under|off) (?:the |its )?(?:(?:\w+ )?bottom|(?<=its )(?:floor|base)|(?:well|tank|cistern|creek|river) (?:floor|bed))\b"
)
_HUMP = re.compile(
    r"\b(?:hump|bump|high point|low point|highest point|dip|saddle|hollow|crest|air ?lock|kink)\b[^.;]*$"
)
_HEAD = re.compile(
    r" ?(?:above|over|higher than) (?:the |our )?(?:well ?head|well (?:cover|cap|top|lid)|top of the (?:well|bore\w*))\b"
)
_ROUTE = re.compile(
    r"\b(?:from )?(?:the |our )?(?P<one>(?<=from )[a-z]+|(?<=from the )[a-z]+|[a-z]+) to (?:the |our |my )?(?P<other>[a-z]+)\b[^.;]{0,25}[,:(] ?(?:and |which is |it is |that is )?(?:about |some )?$"
)
_BARE = re.compile(r" ?(?:lower|higher|deeper|below|above|down|up|uphill|downhill)(?: ?[,.;)\n]|$)")
_PRESSURE_TANK = re.compile(r"(?<!break )(?<!break-)\bpressure tank")
_TANKS = 4  # mentions of a tank from which on there is another one as well; our choice
_HUNG = re.compile(r"\b(?:hanging|hangs|hung|suspended|lowered)\b")


def _of_others(token: Token, near: Context) -> bool:
    """Whether a height is above a second place, or between two of one kind."""
    found = bool(_TWICE.match(near.left) or _EACH_OTHER.match(near.right))
    if found:
        token.extra["other"] = 1.0
    return found


def _turned(down: bool, other: str, near: Context) -> float:
    """-1 where what lies lower is the goal: "from the tank 80 m to the kitchen, 15 m lower"."""
    return -1.0 if down and not other and _GOAL_LOWER.search(near.before[-45:]) else 1.0


def _pump_over(token: Token, down: bool, found: dict[str, float]) -> None:
    """Heights are counted from the pump, unless it hangs in the water."""
    path, weight = ("pump.height", 8) if down else ("water.level", 7)
    found[path], token.sign = weight, -1.0


def _house(token: Token, other: str, down: bool, near: Context, found: dict[str, float]) -> None:
    """A house above or below another place; one below a tank tells the tank's height."""
    tank = other in {"TANK", "ABOVE"} or (other == "STORE" and "cistern" not in near.after[:40])
    if down and tank and not _drawn_from(near) and "spring box" not in near.after[:30]:
        found["tank.level"], token.sign = 7, 1.0
    elif other == "HOUSE":
        _by_mail(down, near, found, token)
    elif other in {*places.SOURCES, "STORE", "WATER", "PUMP", "TANK", "ABOVE", ""}:
        found["way.climb"] = 7 if other else 4


def _of_pressure(mail: str) -> bool:
    """Whether a letter's tank may be its pressure tank: it names one, and none that stands above."""
    other = words.ABOVE.search(mail) or words.STORE.search(mail)
    rest = words.PRESSURE_TANK.sub(" ", mail)
    return (
        bool(_PRESSURE_TANK.search(mail))
        and not other
        and len(re.findall(r"\btank", rest)) < _TANKS
    )


def _drawn_from(near: Context) -> bool:
    """Whether the tank that a house lies below is the one that its pump draws from."""
    return bool(
        words.clues(near.mail)[1]
        and re.search(r"\bpump\b", near.mail)
        and not words.ABOVE.search(near.mail)
        and not re.search(r"\bgravity\b|\bhill\b|\bridge\b", near.mail)
    )


def _climbs(token: Token, one: str, other: str, found: dict[str, float], sign: float) -> None:
    """ "from the creek up to the shed is 4 m": a height from the first place to the second."""
    token.sign = sign
    if one in {"TANK", "ABOVE"} and other == "HOUSE":
        found["tank.level"], token.sign = 7, 1.0
    elif other in {"TANK", "ABOVE"}:
        found["tank.level"] = 7
    elif one == "PUMP" and other in {"WATER", "CREEK", "STORE"}:
        found.pop("pump.height", None)
        found["water.level"] = 8
    elif other == "PUMP" and one in {*places.SOURCES, "WATER", "STORE"}:
        found["water.level"] = 7
    elif other == "HOUSE" and one:
        found["way.climb"] = 7


def _from_mail(mail: str, other: str) -> str:
    """What stands above or below the ``other`` where a list does not say it."""
    if other == "HOUSE":
        return next(
            (key for key in ("ABOVE", "SPRING", "WELL", "CREEK") if re.search(_FIRST[key], mail)),
            "",
        )
    return "HOUSE"


def _by_mail(down: bool, near: Context, found: dict[str, float], token: Token) -> None:
    """ "40 ft above the house" with nobody named: the tank of the sentence, else the source."""
    if re.search(r"\btank", near.before + near.after):
        found["tank.level"] = 5
    elif re.search(r"\b(?:spring|creek|stream|source|well|pump)\b", near.before):
        found["way.climb"], token.sign = 5, 1.0 if down else -1.0


_TO_TANK = re.compile(
    r"\b(?:pump|well|spring|creek|bore\w*) to (?:the |our )?(?:\w+ )?tank:[^.;\n]*$"
)


def unrelated(token: Token, at: places.Between, near: Context, found: dict[str, float]) -> None:
    """ "up 40 ft", "a fall of 20 m": the way's, unless a tank is named where it ends."""
    if (
        places.goes_down(near.left.rsplit(",", 1)[-1], near.right.split(",", 1)[0])
        or _HIGH_SOURCE.search(near.before[-120:])
        and not re.search(r"\b(?:up|climbs?|rises?|uphill)\b", near.left[-25:])
    ):
        token.sign = -1.0
    if _UP_IS.match(near.right) or _SPRING_UP.search(f"{near.left[-30:]}|{near.right[:18]}"):
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
    if from_tank or (_OF_FALL.search(near.left) and _FROM_TANK.match(near.right)):
        found.pop("water.level", None)
        tank, token.sign = True, 1.0
    if tank or _TO_TANK.search(near.before):
        found["tank.level"], found["way.climb"] = 6.5, 0
        token.sign = 1.0 if at.before in {"TANK", "ABOVE"} else token.sign  # it falls from there
    if re.search(
        r"\b(?:data ?sheets?|specs?|specification|curve|brochure|name ?plate|the box|label|leaflet)\b[^.;\n]*$",
        near.before[-70:],
    ):
        found["way.climb"] = 0  # a pump's, on paper
    if at.before == "PUMP" and re.search(
        r"(?:max|total|rated|shut)\W?(?:imum)? ?(?:head|lift|height)", near.left[-40:]
    ):
        found["way.climb"] = 0
    if at.before in {"WATER", "SUCTION"} and "suction" in near.before[-40:]:
        found["way.climb"] = 0


_LIVES_AT = re.compile(
    r"\b(?:we(?:'re| are| live| sit)|cabin is|place is|house is|located|situated|up)(?: \w+){0,3} (?:at|up)"
    r"(?: about| around| roughly| nearly)? ?$"
)
_AT = re.compile(r"\b(?:at|@)(?: about| around| roughly| nearly)? ?$")
_TOPS = re.compile(
    r"\b(?:summit|peak|pass|top of the mountain|works|rated|good|approved)\b[^.;,]*$"
)
_ELEVATION = re.compile(
    r" ?(?:(?:of )?(?:elevation|altitude)\b|(?:above|over) (?:the )?sea|a\.?s\.?l|in (?:elevation|altitude)\b)"
)


def altitude(token: Token, near: Context, at: places.Between, found: dict[str, float]) -> None:
    """A height above the sea, by how high it is and what is said to be "at" it."""
    high = max(token.low, *token.maybe, 0.0) * {"m": 1, "ft": 0.3048}.get(token.unit, 0)
    if high >= 250 and _LIVES_AT.search(near.left[-50:]):
        found["place.altitude"] = max(found.get("place.altitude", 0), 8)
    elif high >= 900 and not at.how and _AT.search(near.left):
        found["place.altitude"] = max(found.get("place.altitude", 0), 5.5)
    if _TOPS.search(near.left[-50:]):
        found.pop("place.altitude", None)
    if high >= 250 and found.get("place.altitude", 0) >= 8 and _ELEVATION.match(near.right):
        found["place.altitude"] = 10  # said beside the number itself
    sure = "sea" in near.right or "altitude" in near.left
    if "place.altitude" in found and high < 60 and not sure:
        found["place.altitude"] = 0
        found["way.climb"] = max(found.get("way.climb", 0), 4)
