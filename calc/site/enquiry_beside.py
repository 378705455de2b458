"""Lengths told beside the way's: of a part, a casing, a frost, what a pump could lift; and some of the way itself."""

from __future__ import annotations

import re

from calc.site import enquiry_places as places
from calc.site.enquiry_model import Context, Token
from calc.site.enquiry_suction import of_suction

_PART = re.compile(r"\b(?:the|last|its) (?:first|last|final|next|remaining|lowest|top) (?:few )?$")
_THEN = re.compile(
    r"\b(?:then|and|again)(?: (?:it |we |you |the \w+ )?(?:goes|climbs?|rises?|drops?|falls?|comes|dips))?(?: back| again)? (?:up|down|again|climbs?|rises?|drops?|falls?)(?: again| by| about| another| some| back)* $"
)
_ENDS_AT = re.compile(r" ?(?:down |up |again )?(?:in)?to (?:the|our|my|us)\b")
_IN_WELL = re.compile(
    r" ?(?:of (?:it|that|pipe) )?(?:is |are |goes |runs |hangs )?(?:down|inside|in|within|up) (?:the|our|my|a|its) (?:\w+ )?(?:well|bore ?hole|bore|hole|casing|shaft)\b(?! (?:house|shed|field))"
)
_FROST = re.compile(
    r"\b(?:frost(?: ?line| depth)?|freez\w+)\b[^.;,\d]{0,30}$|\b(?:pipe|line|trench|ditch)s? (?:is |are |was |lies |sits )?(?:laid |buried )?(?:at|to) (?:about )?$"
)
_DEEP = re.compile(r" ?(?:of )?(?:depth|deep|down\b|under(?:ground)?\b|below (?:ground|grade))")
_CASING = re.compile(r" ?(?:of )?(?:\w+ )?(?:casing|surface casing|liner)\b")
_PIT = re.compile(r"\b(?:well|pump|valve|meter) pit\b[^.;,\d]{0,15}$")
_COULD = re.compile(
    r"\b(?:could|can|able to|capable of|rated to|good for|says it|should) (?:lift|push|pump|raise|lifting|pumping|pushing)(?: water| it)?(?: up| to| up to)?(?: about)? $"
)
_BOUGHT = re.compile(
    r"\b(?:bought|ordered|a roll of|rolls? of|coils? of|spare|left over|in stock|in the shed)(?: about| some| a| another)* $"
)
_NEEDED = re.compile(r" ?(?:was|were|is|are|will be) (?:needed|used|required|laid|enough)\b")
_FOOT_VALVE = re.compile(r"\b(?:foot valve|strainer) (?:is |sits |hangs )?at(?: about)? $")
_FROM_HOME = re.compile(
    r" ?(?:away )?from (?:the|our|my) (?:house|cabin|home|cottage|hut|barn|trailer|lodge|farm),? (?:and|but)(?: about| some| maybe| roughly)* $"
)
_LEVELS = re.compile(
    r" ?(?P<how>down|lower|below|up|higher|above)(?: us| it| here)?(?= ?[.,;)\n]|$| and\b| but\b)"
)
_ALONG = re.compile(
    r" ?(?:up|down|along) (?:a|the|our|my) (?:\w+ )?(?:track|road|lane|drive|driveway|path|trail|valley|canyon)\b"
)
_LIFT = re.compile(r"\bsuction\b[^.;]*\b(?:with )?(?:an? )?lift (?:of |is |about )*$")
_DELIVERY = re.compile(
    r"\b(?:delivery|discharge|pressure(?= (?:side|pipe|line)))(?: (?:line|pipe|side|hose))?(?: is| are| of|:| has| about)* $"
)
_BORE = re.compile(
    r"\b(?:bore ?hole|bore|casing|cased|well)(?: is| of|:| has| with| measures| about)* $"
)
_OFF_BOTTOM = re.compile(
    r" ?(?:above|off|from|over|up from) (?:the |its )?(?:very )?(?:floor|bottom|base)\b(?! of (?:the )?(?:hill|slope|garden|field|valley))"
)
_UNDER_WATER = re.compile(r" ?(?:under|below|beneath|deep in) (?:the )?(?:water|surface)\b")
_INLET = re.compile(
    r"\b(?:intake|inlet|foot valve|strainer|screen)(?: is| sits| hangs| lies)?(?: about)? $"
)
_PUMP_ABOVE = re.compile(r"\bpump(?: is| sits| stands)?(?: about| some| only)* $")
_OVER_WATER = re.compile(
    r" ?(?:above|over|higher than) (?:the )?(?:water|surface|water ?level|water ?line)\b"
)
_ALL = re.compile(r"\b(?:all together|altogether|in all|all told|in total)[:,]? (?:about )?$")
_RUN = re.compile(r"\b(?:line|pipe|run|poly|hose)\b")
_RISES = re.compile(r" ?(?:up|uphill|higher|of (?:rise|climb|lift|fall|drop)|rise|climb)\b")
_FLAT = re.compile(r" ?(?:on the (?:flat|level)|of (?:lay-?flat|hose|flat|level|pipe|poly))\b")
_PIPE_REACHES = re.compile(
    r"\b(?:pipe|hose|ladder|rope|cable)\b[^.;\d]{0,25}\b(?:reaches|goes down|hangs|ends|goes)(?: down)?(?: to| at)?(?: about)? $"
)
_BY_ROAD = re.compile(r" ?by (?:the )?(?:road|car|track|truck|trail)\b")
_BY_PIPE = re.compile(r" ?(?:by|along|following) (?:the|our) (?:pipe|trench|ditch|line)\b")
_FOR = re.compile(r" ?(?:deep|down|underground) for (?:about )?")
_IN_ALL_UP = re.compile(
    r" ?(?:in all|in total|altogether|total) (?P<how>above|below|higher|lower|up)\b"
)
_SINKS_BY = re.compile(
    r"\b(?:water|level)\b[^.;\d]{0,15}\b(?:drops?|falls?|sinks?|goes down|dropped|fell|sank|rises?|rose)(?: down)?(?: by)?(?: about| only| some)* $"
)
_DROPS_BY = re.compile(  # "the water drops 4 ft by autumn": by so much, and not to it
    r"\b(?:water|level|pond|creek)(?: level)? (?:drops|falls|sinks|goes down|dropped|fell|sank)(?: by)?(?: about| some| maybe| around)* $"
)
_LOSES = re.compile(r"\blos(?:e|es|ing|t)(?: about| like| some| only| maybe| around)* $")
_STANDING = re.compile(r" ?of (?:standing )?water\b(?! (?:pressure|head|column|pipe|line|hose))")
_SUNK = re.compile(
    r"\b(?:lowers?|lowered|draws?|drew|pulls?|pulled|drops?|dropped|falls?|fell|sinks?|sank)\b(?: (?:it|down|the|water|level))*(?: from)? $"
)
_FALLS_FROM = re.compile(
    r"\b(?:well|water|level)\b[^.;\d]{0,25}\b(?:falls?|drops?|sinks?|goes down|fell|dropped|sank|went down)\b[^.;\d]{0,25}\bfrom (?:about )?$"
)
_GRID = re.compile(
    r"\b(?:grid|mains|power ?lines?|electricity|electric pole|transformer|utility)\b[^.;\d]{0,25}$"
)
_CREEK_TO_PUMP = re.compile(
    r"(?:^|[.;\n] ?)(?:the )?(?:well|creek|stream|pond|lake|river|cistern|water) to (?:the )?pump\b[^.;\n]*$"
)
_SUCTION_LIFT = re.compile(r" ?(?:of )?(?:suction )?(?:lift|height|rise)\b")
_FROM_SOURCE = re.compile(
    r" ?(?:away )?(?:from|off) (?:the|our|my) (?:\w+ )?(?:stream|creek|river|spring|well|bore|pond|lake|dam),? (?:and|but)(?: about| some| maybe| roughly)* $"
)
_GAINS = re.compile(r"\b(?:pipe|line|it|which|that) (?P<how>loses|gains)(?: about| some| only)* $")
_SUCTION_ONLY = re.compile(r" ?(?:of )?suction(?= ?[.,;)\n]|$)")
_OTHER_PLACE = re.compile(
    r" ?(?:above|below|over|under|higher than|lower than) (?:the|our|my) (?:\w+ )?(?:road|track|lane|street|driveway|fence|beach|railway|highway|village|valley(?: floor)?)\b"
)
_VARIES = re.compile(
    r"\blevel\b[^.;\d]{0,30}\b(?:up and down|varies|fluctuates|changes|swings)(?: by)?(?: about| some)* $"
)
_PLUMBING = re.compile(r"\bplumbing\b[^.;\d]{0,20}$")
_DROPS = re.compile(r"\W*(?:the )?(?:drop|fall|rise|height|lift)s? from\b")
_SHORT = 10.0  # m, below which a length "in all" is rarely a way's; our choice
_METRES = {"m": 1.0, "ft": 0.3048, "yd": 0.9144, "km": 1000.0, "mi": 1609.0}


def beside(token: Token, near: Context, at: places.Between, found: dict[str, float]) -> None:
    """What stands beside the way, the well and the pump, and is none of their lengths."""
    of_suction(near, at, found)
    left, right = near.left[-90:], near.right
    before = len(found)
    if _GRID.search(near.before[-60:]) and not _RUN.search(near.before[-60:]):
        found.pop("way.length", None)  # how far the mains are
    if _OTHER_PLACE.match(right) or _VARIES.search(left) or _PLUMBING.search(left):
        found.clear()
    if _DROPS.match(near.before) and not _RUN.search(right[:12]):
        found.pop("way.length", None)
    if (
        _FROST.search(left)
        and not right.startswith(" of ")
        and ("frost" in left[-40:] or "freez" in left[-40:] or _DEEP.match(right))
    ):
        found.clear()
    if _COULD.search(left) and "pump" in near.before or _OFF_BOTTOM.match(right):
        found.clear()
    if _INLET.search(left) and _UNDER_WATER.match(right):
        found.clear()
    if _PART.search(left) or (_THEN.search(left) and _ENDS_AT.match(right)):
        found.pop("way.length", None)
    _of_wells(left, right, found)
    if _BOUGHT.search(left) and "way.length" in found:
        found["way.length"] = 4.0
    if _ALONG.match(right) or _FLAT.match(right):
        found.pop("way.climb", None)
    if _BY_ROAD.match(right):
        found.pop("way.length", None)
    _of_water(token, near, found)
    if before and not found:
        token.extra["other"] = 1.0  # and none of what is left over either
    _thin(token, near, found)
    _of_way(token, near, at, found)


def _of_wells(left: str, right: str, found: dict[str, float]) -> None:
    """A pipe inside a well, a casing, a pit, a foot valve: no way, and no bottom of a well."""
    if _IN_WELL.match(right):
        for path in ("way.length", "way.climb"):
            found.pop(path, None)
    if _CASING.match(right) or _PIT.search(left):
        found.pop("well.depth", None)
    if _FOOT_VALVE.search(left):
        found.pop("suction.length", None)
    if _PIPE_REACHES.search(left):
        found.pop("well.depth", None)


def _of_water(token: Token, near: Context, found: dict[str, float]) -> None:
    """How far the water sinks, or stands in a well, is no climb; what it sinks to is its level."""
    if _SINKS_BY.search(near.left[-60:]):
        found.pop("way.climb", None)
    if _DROPS_BY.search(near.left) and not re.match(r" ?(?:below|under|lower)", near.right):
        found.pop("water.level", None)
    if _LOSES.search(near.left):
        for path in ("well.pumping", "water.level", "well.static"):
            found.pop(path, None)
    if _STANDING.match(near.right):
        found.clear()
        token.extra["other"] = 1.0
    falls = _SUNK.search(near.left[-70:]) or _FALLS_FROM.search(near.before[-90:])
    if token.low != token.high and falls:
        found.clear()
        found["water.level"] = 6.5
        token.low = token.high = max(token.low, token.high)


def _thin(token: Token, near: Context, found: dict[str, float]) -> None:
    """Millimetres and inches beside a bore are its width, and never a pipe's length."""
    if token.unit not in {"mm", "in"}:
        return
    found.pop("well.drop_pipe", None)
    if _BORE.search(near.left[-40:]):
        found["well.bore"] = 7
        found.pop("well.depth", None)


def _runs(near: Context, metres: float) -> bool:
    """Whether a length is a delivery's, one along the pipe, or what was needed of it."""
    left, right = near.left[-90:], near.right
    if _DELIVERY.search(left) and metres and not _RISES.match(right):
        return True
    if re.match(r" ?of lay-?flat", right) or _BY_PIPE.match(right) or _FOR.fullmatch(near.left):
        return True
    return bool(_NEEDED.match(right) and metres > _SHORT and _RUN.search(near.before))


def _of_way(token: Token, near: Context, at: places.Between, found: dict[str, float]) -> None:
    """Of a suction's lift, a delivery, what was needed, all together, "150 ft off and 35 ft down"."""
    left, right = near.left[-90:], near.right
    metres = max(token.low, token.high) * _METRES.get(token.unit, 0.0)
    if _LIFT.search(near.before[-90:]) and token.unit in {"m", "ft"}:
        found.clear()
        found["water.level"] = 7
    elif _runs(near, metres):
        found["way.length"] = 6
    elif _CREEK_TO_PUMP.search(near.before) and _SUCTION_LIFT.match(right):
        found.clear()
        found["water.level"] = 7
    elif _ALL.search(left) and metres > _SHORT and not found and _RUN.search(near.mail):
        found["way.length"] = 4.5
    elif _PUMP_ABOVE.search(left) and _OVER_WATER.match(right):
        found.clear()
        found["water.level"], token.sign = 8, -1.0
    whole = _IN_ALL_UP.match(right)
    if whole and at.before not in {"TANK", "ABOVE"}:
        found["way.climb"] = 7
        token.sign = -1.0 if whole["how"] in {"below", "lower"} else 1.0
    elif _SUCTION_ONLY.match(right) and re.search(r"\b(?:lift|vertical|height)\b", near.before):
        found.clear()
        found["water.level"] = 7
    gains = _GAINS.search(left)
    if gains and metres:
        found.pop("way.length", None)
        found["way.climb"], token.sign = 6.5, -1.0 if gains["how"].startswith("los") else 1.0
    _off_and_up(token, near, found)


def _off_and_up(token: Token, near: Context, found: dict[str, float]) -> None:
    """ "50 m off the stream and 7 m above", "150 ft from the cabin and 35 ft down"."""
    levels = _LEVELS.match(near.right)
    off = levels and _FROM_SOURCE.fullmatch(near.left)
    if levels and off and places.noun(near.before, last=False) == "HOUSE":
        found.clear()
        found["way.climb"] = 6.5
        token.sign = -1.0 if levels["how"] in {"down", "lower", "below"} else 1.0
    if (
        levels
        and _FROM_HOME.fullmatch(near.left)
        and places.noun(near.before, last=False) in places.SOURCES
    ):
        found.clear()
        found["way.climb"] = 6.5
        token.sign = 1.0 if levels["how"] in {"down", "lower", "below"} else -1.0
