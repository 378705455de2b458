"""What a length is: a run of pipe, a depth, a height, by the words beside it."""

from __future__ import annotations

import re
from functools import lru_cache

from calc.site import enquiry_places as places
from calc.site import enquiry_sides as sides
from calc.site.enquiry_beside import beside
from calc.site.enquiry_heights import (
    aliased,
    altitude,
    from_to,
    labelled,
    related,
    unrelated,
)
from calc.site.enquiry_levels import levels
from calc.site.enquiry_model import Context, Token

_AFTER_PIPE = re.compile(
    r"[ ,;x@(/:=-]*+(?>(?:and|it|which|that|is|are|measures|runs|has|of|with|a|length|long|about|roughly|approx\.?|ca\.?|over|for|total|in|all|the|way|around|some|pipe|line|poly|buried|distance|then|maybe|perhaps|plastic)(?![a-z])[ ,:]*+)*+"
)
_BORE_IS = re.compile(
    r"(?:(?:^|[.\n;:]) *|\b(?:has|have|got|with|from|is) )(?:our |my |the |an? |drilled |dug |deep |bored |new |old )*(?:well|bore|bore ?hole)[ ,:=-]{1,3}(?:is |of |about )*$"
)
_VERTICAL = re.compile(
    r"\b(?:climb(?:s|ing)?|rises?|rising|drop(?:s|ping)?|falls?|falling|descends?|ascends?|lift(?:s|ed)?|raised?|height difference|difference in height|elevation (?:gain|change)|vertical \w+)"
    r"(?: (?:of|is|by|about|another|further|some|roughly|between [a-z ]{5,40}|from [a-z ]{5,40}))*[ :=]*$"
)
_DOWN = re.compile(
    r" ?(?:down\b(?! (?:the (?:hill|slope|road)|to (?:the|our|a)\b|from|into))|lower|deeper|below)"
)
_HILL = re.compile(
    r" ?(?:further )?(up|down) (?:the|a|our) (?:\w+ )?(hill|slope|mountain|ridge|hillside|bank|knoll|fell|glen|mountainside|gully|brae|ravine|valley side)\b"
)
_HEIGHT = re.compile(
    r"\b(?:drop|fall|rise|climb|higher|lower|above|below|vertical(?:ly)?|elevation|height|head)\b"
)
_STEEP = 60.0  # m, beyond which "up the hill" may be the way along it; our choice
_OF_PIPE = re.compile(
    r" ?(?:of|of the|run of|long|in|-|,|x|/|worth of|of old|of new|of buried|of black|@|on|down|using|through)? ?\(?"
)
_RUN_UNITS = {"m", "ft", "yd", "km", "mi"}
_ELSE = re.compile(
    r"\b(?:town|village|shop|store|fence|road|drive|driveway|property|land|wall|city|school|highway|track|boundary|sea|coast|neighbou?rs?)\b(?:'s)?(?: [a-z]+)? (?:is|are|lies|runs|measures)\b[^.;,]*$"
)
_NEAREST = re.compile(
    r"\b(?:nearest|closest) (?!well|spring|water|tap|tank|trough)\w+(?: \w+)?,? (?:is|are|lies|stands|being)(?: [a-z]+){0,2} $"
)
_UP_FROM = re.compile(r"\bup(?: (?:about|some|maybe|only|around|roughly|another|just|a good))* $")
_LOW = 10.0  # m, up to which "up from the well" is a height; our choice
_IN_HEIGHT = re.compile(r"[^,.;\d]{0,30}\bin (?:height|elevation|level|altitude)\b")
_AT_WELL = re.compile(
    r" ?(?:away )?from (?:the |our |my )?(?:\w+ )?(?:well|bore ?hole|bore|creek|river|stream|pond)\b"
)
_PUMP_IS = re.compile(
    r"\b(?:pump|pump ?house|pump shed|pump hut) (?:is|sits|stands)(?: (?:in|inside) (?:the|a|our|its) (?:\w+ )?(?:shed|hut|garage|box|pump ?house),?)?(?: (?:about|some|only|maybe|just|roughly))* $"
)
_SIDES = re.compile(r" ?(?:m )?(?:long|wide) (?:and|by|x)\b[^.;]{0,12}\b(?:wide|deep|long|high)")
_RUNS = re.compile(r"\b(?:pipe|line|poly\w*|hose|pvc|pump|well|spring|water)\b")
_DUG = re.compile(
    r"\b(?:pipe|line|cellar|basement|floor|frost|trench|tank|footing|slab|cable)s? (?:is|are|goes|lies|sits|runs|was) (?:about |laid |buried |some )*$"
)


def lengths(token: Token, near: Context, found: dict[str, float]) -> None:
    """Heights between two places, and what only their nouns say."""
    at = places.between(near.left, near.right, near.before, near.subject)
    token.sign = -1.0 if at.how == "below" else 1.0
    _of_pipes(token, near, found)
    if _on_a_hill(token, near, at, found) or _well_down(near, found):
        return
    if at.how and re.match(r"[ ,]*(?:sea|mean sea)", near.right.split("above", 1)[-1]):
        return
    if re.search(r"\b(?:lift|raise|pump|bring)\b[^.;¤]{0,50}\bby (?:about )?$", near.before):
        found["way.climb"] = 6
    if from_to(token, near, found):
        return
    at = labelled(token, near, at)
    _of_something_else(token, near, found)
    levels(near, found)
    _of_wells(token, near, at, found)
    _of_drip(near, found)
    _only_upright(near, at, found)
    at = aliased(at, near)
    if at.how:
        related(token, at, near, found)
    elif "pump.height" in found:
        token.sign = -1.0  # hung in a well
        if re.match(r" ?on ", near.right):
            found.pop("way.length", None)  # "set at 140 ft on 1 in poly"
        found.pop("water.level", None)
    elif at.before == "PUMP" and _DOWN.match(near.right):
        found["pump.height"], token.sign = 7, -1.0
    elif "way.climb" in found:
        unrelated(token, at, near, found)
    if at.before == "WATER" and "water.level" in found:
        found.pop("way.climb", None)
    if _BORE_IS.search(near.left) and re.match(
        r" ?(?:$|[,.;)\n]|with (?:the )?water\b)", near.right
    ):
        found["well.depth"] = 6.5
    beside(token, near, at, found)
    _whose(token, near, found)
    altitude(token, near, at, found)


_FALLS = re.compile(
    r"\b(?:stream|creek|river|brook|burn)(?: itself)? (?:drops?|falls?|fell|dropped|sinks?)(?: by| about| another| a further| some| to)* $"
)
_INCH_WELL = re.compile(r"[ -]*(?:drilled |bored |cased |steel )*(?:well|bore ?hole|bore)\b")
_THING_FALLS = re.compile(
    r"\b(?:the|an?|our|my|its|when|and|some) (?P<who>(?!an?\b|the\b|of\b)[a-z]+)(?: itself| often| still| then| only| just| hardly)? (?:falls?|fell|drops?|dropped|rises?|rose|sinks?|sank|climbs?|climbed|goes up|goes down)\b,?(?: [a-z]+){0,3} ?$"
)
_LAND = re.compile(
    r"land|ground|terrain|hill|slope|path|track|trail|field|garden|road|lane|drive|meadow|paddock|valley|bank|plot|site|pipe|line|poly|hose|main|run|route|way|trench|conduct|tube|water|it|that|which|this|house|cabin|gully|ridge|driveway|yard|level|well|spring|source|static|table|cistern|tank|intake|pasture|there|elevation"
)
_RISE_IN = re.compile(
    r"^ ?(?:of )?(?:rise|climb|fall|drop|lift)(?: altogether| in all| total)? (?:in|over|across|along) (?:about |the |some )*$"
)
_FAR_FROM = re.compile(
    r" ?(?:away )?from (?:the )?(?:nearest |closest |next )?(?:grid|town|village|road|power|mains|pole|shop|store|sea|coast|city|neighbou?rs?)\b"
)


_RATED_HEAD = re.compile(r"\b(?:rated|max(?:imum)?\.?|shut-?off) head[ :of]*$")


def _of_something_else(token: Token, near: Context, found: dict[str, float]) -> None:
    """Of a town, a fence, a house's own sides, a suction, a pipe's depth: none of the way or water."""
    if token.unit == "cm":
        found.pop("well.depth", None)  # a pipe's, dug in
    if token.unit in {"in", "mm"}:  # a size: no way is as short
        for path in ("way.length", "way.climb", "well.depth"):
            found.pop(path, None)
        if _INCH_WELL.match(near.right):
            found["well.bore"] = 7
    if _NEAREST.search(near.left[-60:]):
        found.clear()
    if _RATED_HEAD.search(near.left):
        found.pop("way.climb", None)
    if _ELSE.search(near.left[-60:]) and not _RUNS.search(near.left + near.right[:25]):
        found.pop("way.length", None)
    on_hose = re.search(
        r"\b(?:shower|tap|spray|nozzle|sprinkler)s? (?:head )?(?:on|with) an? $", near.left
    )
    if on_hose or _SIDES.match(near.right) or _FAR_FROM.match(near.right):
        found.pop("way.length", None)
    apart = re.match(r" ?(?:away|distant)\b", near.right) or (
        re.search(r"\b(?:higher|lower|uphill|up|above)\b ?, ?(?:and )?$", near.left)
        and not re.match(
            r" ?(?:up|higher|above|below|lower|of (?:rise|climb|fall|drop)|vertical)", near.right
        )
    )
    if apart:
        found.pop("way.climb", None)
    _up_or_along(token, near, found)
    _of_what_falls(token, near, found)
    sides.its_own(token, near, found)


def _up_or_along(token: Token, near: Context, found: dict[str, float]) -> None:
    """ "up 8 ft from the well" is a height, "up 300 ft from the well" may be a length."""
    sucks = re.search(r"suck|suction|draw|\bwater\b", near.left[-40:])
    if not sucks and _UP_FROM.search(near.left) and near.right.lstrip().startswith("from"):
        metres = max(token.low, token.high) * {"m": 1.0, "ft": 0.3048}.get(token.unit, 999.0)
        found["way.climb"] = 5.0
        found["way.length"] = 5.0 if metres > _LOW else 0.0
    if _IN_HEIGHT.match(near.right):
        found.pop("way.length", None)
        found["way.climb"] = max(found.get("way.climb", 0), 6)


def _of_what_falls(token: Token, near: Context, found: dict[str, float]) -> None:
    """Of a season, a creek that sinks, a trench, a suction: no climb and no length of the way."""
    if re.search(r"\b(?:last|this|next|every|each|in (?:the )?) ?fall,? $", near.left):
        found.pop("way.climb", None)  # the season
    if _AT_WELL.match(near.right) and _PUMP_IS.search(near.left):
        found.pop("way.length", None)  # from the pump to its well: none of the way
        token.extra["other"] = 1.0
    if _RISE_IN.search(near.left):  # "40 ft of rise in 300 ft"
        found.pop("way.climb", None)
        found["way.length"] = max(found.get("way.length", 0), 5)
    if re.search(r"\btrench\b[^.;\n]*$", near.left):
        found.pop("well.depth", None)
    falls = _THING_FALLS.search(near.before[-60:])
    if _FALLS.search(near.left) or (falls and not _LAND.search(falls["who"])):
        found.pop("way.climb", None)
    if re.search(r"\bsuck\w* (?:the water |it |water )?up\b[^.;]{0,12}$", near.left[-40:]):
        found.pop("way.length", None)
    if re.search(r"\bburied (?:about |at |only |some |just )*$", near.left) and not near.next_pipe:
        for path in ("way.length", "way.climb", "water.level"):
            found.pop(path, None)
    if _DUG.search(near.left[-40:]):
        found.pop("water.level", None)


_PUMP_TO = re.compile(
    r"\bpump (?:is|was|hangs|goes|sits) (?:put |down )?(?:to|on|in) (?:the )?(?:about )?$"
)
_FROM = re.compile(r"\bfrom (?:the |our )?\w+\b[^.;]{0,25}$")
_NO_WELL = frozenset(["TANK", "ABOVE", "STORE", "CREEK", "PTANK"])
_WELL_FALLS = re.compile(
    r"\b(?:well|bore ?hole|bore)(?: itself)? (?:drops|falls|sinks|goes down|went down|dropped|fell|draws down) (?:down )?to(?: about)? $"
)
_COMES_UP = re.compile(
    r"\bwater(?: level)? (?:comes|rises|stands|came|rose) (?:back )?up (?:to|till|until)(?: about)? $"
)
_OTHER_WIDE = re.compile(
    r"\b(?:road|track|path|river|creek|stream|ditch|gap|gate|drive|lane)\b[^.;]{0,20}$"
)
_TOP_DOWN = re.compile(r" ?from (?:the )?top to (?:the )?bottom\b")
_OF_WELL = re.compile(r"well|bore|casing|cased|\blin(?:ed|ing|er)\b|hole|\brings?\b|shaft")


@lru_cache(maxsize=8)
def _tells_of_well(mail: str) -> bool:
    return _OF_WELL.search(mail) is not None


def _of_wells(token: Token, near: Context, at: places.Between, found: dict[str, float]) -> None:
    """A pump that hangs, and a well that goes down."""
    if re.search(r"\bpump\b[^.;]{0,25}\b(?:hanging|hangs|hung)\b[^.;]{0,12}$", near.left[-50:]):
        found.pop("water.level", None)
        found["pump.height"], token.sign = 7, -1.0
    if _PUMP_TO.search(near.left[-40:]) and not re.match(
        r" ?(?:of|from|away|higher)\b", near.right
    ):
        found.clear()  # "the pump is to 100 metres"
        found["pump.height"], token.sign = 6, -1.0
    if _COMES_UP.search(near.left[-45:]) or _WELL_FALLS.search(near.left[-60:]):
        found.clear()
        found["water.level"] = 6.5
    deep = re.match(r" ?deep\b(?! (?:trench|under|in the))", near.right)
    alone = re.fullmatch(
        r"[ ,]*(?:and |it |which )*(?:is |it's |its )(?:about |only |just )?", near.left
    )
    if deep and alone and at.before == "WELL" and not found:
        found["well.depth"] = 6
    if re.search(r"\b(?:water depth|depth of (?:the )?water)\b[^.;]*$", near.left):
        found.pop("well.depth", None)  # of the water that stands in it
    own = _OF_WELL.search(near.before)
    if not own and (at.before in _NO_WELL or not _tells_of_well(near.mail)):
        found.pop("well.depth", None)  # "the tank is full when it's 9 ft deep"
    if _TOP_DOWN.match(near.right) and not _OF_WELL.search(near.before + near.subject.lower()):
        found.pop("well.depth", None)  # a garden's
    if _OTHER_WIDE.search(near.left):
        found.pop("well.bore", None)
    if "well.bore" in found and not (
        near.subject == "WELL" or _OF_WELL.search(near.before[-90:] + near.right[:40])
    ):
        del found["well.bore"]
    wide = max(token.low, token.high) * {"m": 1.0, "ft": 0.3048}.get(token.unit, 0.0)
    if wide > 10:
        found.pop("well.bore", None)
    goes = re.search(r"\b(?:goes|whole)\b", near.left) and not _FROM.search(near.left)
    if "way.length" in found and at.before == "WELL" and goes and not near.next_pipe:
        found.pop("way.length")
        found["well.depth"] = max(found.get("well.depth", 0), 5)


def _of_drip(near: Context, found: dict[str, float]) -> None:
    """The length of a drip line is none of the way."""
    spaced = re.search(r"\bspac(?:ing|ed)(?: (?:is|of|at|about))*[ :=]*$", near.left)
    if spaced and re.search(r"\b(?:drippers?|emitters?)\b[^.;\n]*$", near.before):
        found.clear()
        found["drip.spacing"] = 9
    line = re.search(r"\bline length ?[:=]? ?$", near.left) or (
        re.search(r"\bdrip\b[^.;\n]{0,25}\blines(?: are| of)? $", near.before[-60:])
    )
    if re.match(r" ?per (?:line|row|lateral)\b", near.right):
        found.clear()
        found["drip.length"] = 9
    elif line and re.search(r"\b(?:drip|emitters)", near.mail):
        found["drip.length"] = 9
    if "drip.length" in found:
        found.pop("way.length", None)


def _only_upright(near: Context, at: places.Between, found: dict[str, float]) -> None:
    """ "drops 25 ft from the spring to the house" is a height, and no run of that length."""
    upright = "way.climb" in found and _VERTICAL.search(near.left[-60:])
    if not upright or "suction" in near.left[-50:]:
        return
    if re.match(r" ?of (?:pipe|line|hose)", near.right):
        return
    found.pop("way.length", None)
    if "water" not in near.left[-40:] and at.before != "WATER":
        found.pop("water.level", None)


_DROP = re.compile(
    r"\b(?:drop (?:pipe|line)|riser)\b(?:(?!\b(?:house|then|line to|to the)\b)[^.;\n]){0,35}$"
)


def _of_pipes(token: Token, near: Context, found: dict[str, float]) -> None:
    """ "400 ft of 1 in poly", "1 in poly, 400 ft": the length of that pipe."""
    if near.next_pipe and _OF_PIPE.fullmatch(near.right) and token.unit in _RUN_UNITS:
        path = near.next_pipe.replace(".pipe", ".length")
        if path != "way.length":
            found.pop("way.length", None)
        found[path] = max(found.get(path, 0), 6.5 if near.right.strip() else 4.5)
        if near.right.strip().startswith("of"):
            found.pop("way.climb", None)  # "runs downhill: 1,350 ft of 1 in poly"
    if near.last_pipe and _DROP.search(near.before[-60:]) and token.unit in _RUN_UNITS:
        found.pop("way.length", None)
        if "bottom" not in near.right[:20]:  # "4 m off the bottom"
            found["well.drop_pipe"] = 9
        return
    cover = re.match(r" ?(?:deep|down|under|below|of cover)", near.right)
    follows = near.last_pipe and _AFTER_PIPE.fullmatch(near.left)
    if follows and near.last_pipe == "suction.pipe" and found.keys() <= {"way.length"}:
        found.pop("way.length", None)
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
    metres = max(token.low, token.high) * {"m": 1.0, "ft": 0.3048}.get(token.unit, 1000.0)
    other = _HEIGHT.search(near.before[-60:] + " " + near.after[hill.end() : hill.end() + 60])
    plain = hill[1] == "up" and hill[2] == "hill" and metres <= _STEEP and not other
    if at.before == "HOUSE" and plain:
        found["way.climb"] = 7
        return True
    found["way.length"], found["way.climb"] = 5, 1 if metres > _STEEP / 2 and other else 5
    return True


_WELL_IS = re.compile(
    r"(?:^|[\n.;:,] *|\b(?:our|the|my|a|and|with) )(?:\w+ )?(?:wells?|bore ?hole|bore),?(?: (?:is|about|roughly|only|just|some))*,? ?$"
)
_BORED = re.compile(r"\b(?:bored|drilled|sunk|driven|goes|went|bore ?hole|bore)\b[^.;¤\d]{0,45}$")


def _well_down(near: Context, found: dict[str, float]) -> bool:
    """ "our well is 4 m down" may be its water or its bottom; one that was drilled goes down."""
    down = re.match(r" ?down\b(?! (?:the|to|from|in|by))", near.right)
    if not down or re.search(r"\b(?:water|pump|submersible|level|static)\b", near.left[-60:]):
        return False
    if _BORED.search(near.left):
        found.clear()
        found["well.depth"] = 6
        return True
    if _WELL_IS.search(near.left):
        found.clear()
        found["water.level"], found["well.depth"] = 5, 5
        return True
    return False


_SUBJECT = re.compile(
    r"(?:^ ?|[.;:,(\n] ?|\b(?:and|but|while|whose) )(?:(?:the|our|my|an?|this|that|its|his|her|each|every|one) )?(?P<who>(?:[a-z'-]+ ){0,3}[a-z'-]+) (?:is|are|was|lies|sits|stands|ends|stops|starts|begins|measures|reaches)(?: [\d.,]+ ?[a-z0-9²]+,(?: and)?)?"
    r"(?: (?:about|only|some|roughly|just|over|nearly|around|almost|a|good|at|another|under|maybe|perhaps|approximately|exactly|up|down))* ?$"
)
_ITS_OWN = re.compile(
    r"\b(?:ours|mine|delivery|discharge|casing|lining|liner|pipes?|piping|line|lines|run|way|distance|hose|poly\w*|pvc|hdpe|mdpe|pe|pex|copper|trench|main|mains|route|stretch|haul|pipeline|length|conduct|conduit|tube|tubing|it|they|that|this|there|which|here|we|he|she|level|rise|climb|height|drop|fall|lift|depth|head|difference|elevation|gain|total|suction|all|from|to|between|between|everything|rest|ground|land|slope|hill|table|surface|source|intake|bottom|top|outlet|altitude|one|other|villa|dwelling|storey|gite|refuge|conduite|spigots?|standpipes?|hydrants?|beds?|vegetables|orchard|drip|zones?|runn|thing|animals|cows|cattle|sheep|point|end|spot|site|property)\b"
)
_WIRES = re.compile(
    r"\bseptic\b|\bsewage\b|\b(?:power|phone|telephone|electric|washing|clothes|fence|tree|bus|railway|overhead) ?-?lines?\b"
)
_OF_AREA = re.compile(
    r"\b(?:garden|greenhouse|field|plot|bed|beds|poly ?tunnel|yard|lawn|roof|house|barn|room|orchard|paddock)s?$"
)


def _whose(token: Token, near: Context, found: dict[str, float]) -> None:
    """What a ladder or a shed measures, or how far it is from the house, is no way of water."""
    one = _SUBJECT.search(near.before[-80:])
    if one is None:
        return
    who = re.split(r" (?:in|of|at|on|beside|under|over|inside) ", one["who"])[
        0
    ]  # "the ladder in the well"
    other = _WIRES.search(who) or (not places.noun(who) and not _ITS_OWN.search(who))
    side = (
        _OF_AREA.search(who)
        and not re.search(r"\b(?:to|from)\b", who)
        and re.match(r" ?(?:long|wide|high|tall|by)\b|across(?! the)", near.right)
    )
    apart = places.noun(who) == "HOUSE" and re.match(
        r" ?(?:away )?from (?:the |our )?(?:main )?(?:house|cabin|home|cottage|farmhouse)\b",
        near.right,
    )
    if other or side or apart:
        token.extra["other"] = 1.0
        wells = () if places.noun(near.right[:20]) == "WELL" else ("well.bore", "well.depth")
        for path in ("way.length", "way.climb", "water.level", *wells):
            found.pop(path, None)
