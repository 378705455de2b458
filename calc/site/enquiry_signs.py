"""Which end of a way is the higher one, where the words say it apart from the height itself; and of
two levels the one of the dry time.

The last look at heights: a rule here turns a sign or takes the lower of two levels; it adds no fact.
"""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site.enquiry_model import Piece

_SOURCE = r"(?:spring ?-?house|spring ?-?box|spring|source|intake|weir|creek|stream|burn|brook|river|pond|dam|lake|well|bore ?hole|bore|water)"
_HOME = r"(?:house|cabin|home|cottage|hut|huts|barn|lodge|farm|place|camp|garden|yurt|chalet|trough|tap|taps|kitchen|bach|croft|homestead|us)"
_THE = r"(?:(?:the|our|my) (?:\w+ )?)?"
_HIGH = r"(?:above|higher|the higher (?:one|end|of the two)|up ?hill|on top|the upper (?:one|end))"
_LOW = r"(?:below|lower|the lower (?:one|end|of the two)|down ?hill|at the bottom|deeper)"
_IS = r"(?:,? (?:is|it is|it's|there is|there are|that is|lies|runs|comes|about|some|only|roughly|maybe|we have))*"
_OPENS = r"[^.;\d]{0,12}[,(:] ?(?:with |and |where |so )?"

_BEGINS = r"(?:(?:^|[.;,(:]) ?|\b(?:and|but|while|that) )(?:the |our |my |a |an |its |his |her |this )?(?:(?!(?:well|pump|spring)\b)\w+ )?"
_LOW_END = rf"(?:{_SOURCE}|pump|pump ?-?(?:house|shed|hut)|well ?head|booster)"
_GOAL = rf"(?:{_HOME}|sheds?|yards?|corral|stables?|trailers?|caravan|hall|clinic|school|troughs|beds|plots?|field|orchard|buildings?|upper floor)"
_OPEN = r"(?:spring ?-?house|spring ?-?box|spring|source|intake|weir|creek|stream|burn|brook|river|pond|dam|lake)"  # a well may be deep
_STANDS = r"(?: there| itself| here)?(?:,? (?:is|lies|sits|stands|being|about|some|only|roughly|maybe|around|just))+ "

# (words before the number, words after it, which sign the climb then has)
_TURNS = tuple(
    (re.compile(left), re.compile(right), sign)
    for left, right, sign in (
        (rf"\b(?:from|off) {_THE}{_HOME},? (?:and|but){_IS} $", r" ?(?:vertically |vertical )?(?:above|higher than|up from|over) (?:it|that|us|there|the (?:house|cabin|hut|farm))\b", -1.0),
        (rf"\b(?:from|off) {_THE}{_HOME},? (?:and|but){_IS} $", r" ?(?:vertically |vertical )?(?:below|lower than|down from|under) (?:it|that|us|there|the (?:house|cabin|hut|farm))\b", 1.0),
        (rf"\bfrom {_THE}{_HOME} (?:straight |right |back )?down to {_THE}{_SOURCE}{_IS} $", "", 1.0),
        (rf"\bfrom {_THE}{_HOME} (?:straight |right |back )?up to {_THE}{_SOURCE}{_IS} $", "", -1.0),
        (rf"\bfrom {_THE}{_HOME}{_IS} $", rf" ?(?:straight |right )?(?:down|lower|downhill) to {_THE}{_SOURCE}\b", 1.0),
        (rf"\bfrom {_THE}{_HOME}{_IS} $", rf" ?(?:straight |right )?(?:up|higher|uphill) to {_THE}{_SOURCE}\b", -1.0),
        (r"\b(?:height|level|elevation|vertical|difference|climb|rise|lift)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_SOURCE}(?: being| is| lies| sits)?(?: the)? {_HIGH}\b(?! (?:the|our) (?:pump|well))", -1.0),
        (r"\b(?:height|level|elevation|vertical|difference|fall|drop)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_SOURCE}(?: being| is| lies| sits)?(?: the)? {_LOW}\b", 1.0),
        (r"\b(?:height|level|elevation|vertical|difference)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_HOME}(?: being| is| lies| sits)?(?: the)? {_LOW}\b", -1.0),
        (r"\b(?:height|level|elevation|vertical|difference)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_HOME}(?: being| is| lies| sits)?(?: the)? {_HIGH}\b", 1.0),
        (rf"\b{_HOME} is the (?:higher|upper) (?:one )?by (?:about |some )?$", "", 1.0),
        (rf"\b{_HOME} is the lower (?:one )?by (?:about |some )?$", "", -1.0),
        (rf"{_BEGINS}{_LOW_END}{_STANDS}$", rf" ?(?:vertically )?(?:below|lower than|under|beneath|down from) {_THE}{_GOAL}\b", 1.0),
        (rf"{_BEGINS}{_LOW_END}{_STANDS}$", rf" ?(?:vertically )?(?:above|higher than|over|up from) {_THE}{_GOAL}\b", -1.0),
        (rf"{_BEGINS}{_GOAL}{_STANDS}$", rf" ?(?:vertically )?(?:below|lower than|under|beneath|down from) {_THE}{_LOW_END}\b", -1.0),
        (rf"{_BEGINS}{_GOAL}{_STANDS}$", rf" ?(?:vertically )?(?:above|higher than|over|up from) {_THE}{_LOW_END}\b", 1.0),
        (rf"{_BEGINS}{_OPEN}{_STANDS}$", r" ?(?:further |vertically )?(?:up|higher|uphill)\b(?! (?:from|to|than|the hill from)\b)", -1.0),
        (rf"{_BEGINS}{_OPEN}{_STANDS}$", r" ?(?:further |vertically )?(?:down|lower|downhill)\b(?! (?:from|to|than|in)\b)", 1.0),
        (rf"\bfrom (?:an?|the|our) {_OPEN},? $", r" ?(?:further up|higher(?: up)?|uphill)\b(?! than)", -1.0),
        (rf"{_BEGINS}{_GOAL}{_STANDS}$", r" ?(?:further |vertically )?(?:down|lower|downhill)\b(?![^.;]{0,12} to )", -1.0),
        (rf"\bup to {_THE}{_OPEN}{_IS} $", "", -1.0),
        (rf"\bdown to {_THE}{_OPEN}{_IS} $", "", 1.0),
        (rf"\bhead (?:from|of) {_THE}{_OPEN}{_IS}[ :]+$", "", -1.0),
        (rf"\b{_GOAL}\b[^.;\d]{{0,20}}\b(?:at|in|near) the (?:foot|bottom)\b[^.;\d]*\b{_SOURCE}\b[^.;\d]*$", "", -1.0),
        (rf"\b{_SOURCE}\b[^.;\d]{{0,20}}\b(?:at|in|near) the (?:foot|bottom)\b[^.;\d]*\b{_GOAL}\b[^.;\d]*$", "", 1.0),
        (r"\b(?:cistern|tank)\b[^.;]*(?:is|lies|sits|stands) (?:about |some )?$", rf" ?(?:below|under|lower than|beneath) {_THE}{_GOAL}\b", 1.0),
    )
)  # fmt: skip
_DRY = re.compile(
    r"(?:(?! from\b)[^.;\n\d]){0,30}[,;(] ?(?:but |and |or |maybe |then |perhaps |about |nearer |more like )*(?P<low>\d[\d.]*) ?(?:m|ft|feet|met(?:re|er)s)?(?: (?:below|down|above(?: it)?|under|lower))? (?:in|by|at|during|when|towards|after) (?:an? |the |it is |it's )?(?:very |end of |long )*(?:dry|late|drought|summer|august|september|october|low water|low stage|worst)\b"
)


def signed(low: str, pieces: list[Piece], bounds: list[tuple[int, int]]) -> list[Piece]:
    """The pieces, heights turned and levels lowered.  bounds: of the sentence of each."""
    pieces, bounds = _first_leg(low, pieces, bounds)
    falls = any(one.path == "pump.present" and one.word == "no" for one in pieces)
    return [
        _by_itself(low, put, *ends) if falls else put
        for put, ends in (
            (_put_right(low, one, *ends), ends) for one, ends in zip(pieces, bounds, strict=True)
        )
    ]


_TO_TANK = re.compile(
    r"\b(?:between|from) (?:the |our )?(?:pump|well|spring|bore\w*|source|creek|river) (?:and|up to|to) (?:the |our )?(?:\w+ )?(?:tank|reservoir)\b[^.;\n\d]{0,25}\d"
)
_FROM_TANK = re.compile(
    r"\b(?:between|from) (?:the |our )?(?:\w+ )?(?:tank|reservoir) (?:and|down to|to) (?:the |our )?[a-z ]{3,20}\b[^.;\n\d]{0,15}$"
)


def _first_leg(
    low: str, pieces: list[Piece], bounds: list[tuple[int, int]]
) -> tuple[list[Piece], list[tuple[int, int]]]:
    """Without the length from the tank, where the one from the pump to the tank is told: the way
    leads from the pump."""
    if not _TO_TANK.search(low):
        return pieces, bounds
    both = [
        (one, ends) for one, ends in zip(pieces, bounds, strict=True)
        if one.path != "way.length" or not _FROM_TANK.search(low, ends[0], one.start)
    ]  # fmt: skip
    return [one for one, _ in both], [ends for _, ends in both]


_OF_HEIGHT = re.compile(r" ?(?:of )?(?:height|head|difference|vertical|fall|drop)\b")
_HEIGHT_OF = re.compile(r"\b(?:height|head|difference|vertical)\b[^.;\d]{0,25}$")
_RISES = re.compile(r"\b(?:up|climbs?|climbing|rises?|rising|lifts?|hump|above|higher|uphill)\b")


def _by_itself(low: str, piece: Piece, start: int, end: int) -> Piece:
    """Where there is no pump, a height that is not said to climb is a fall."""
    left, right = low[start : piece.start], low[piece.end : end]
    named = _OF_HEIGHT.match(right) or _HEIGHT_OF.search(left)
    if piece.path != "way.climb" or piece.low <= 0 or not named or _RISES.search(left + right):
        return piece
    return replace(piece, low=-piece.high, high=-piece.low)


def _put_right(low: str, piece: Piece, start: int, end: int) -> Piece:
    if piece.path == "way.length" and piece.low == piece.high:
        return _agreed(low, piece, end)
    if piece.path == "water.level" and piece.low == piece.high and piece.low < 0:
        return _lowest(low, piece, start, end)
    if piece.path != "way.climb" or piece.word or not piece.low:
        return piece
    left, right = low[start : piece.start], low[piece.end : end]
    for before, after, sign in _TURNS:
        if before.search(left) and after.match(right):
            ends = sorted((sign * abs(piece.low), sign * abs(piece.high)))
            return replace(piece, low=ends[0], high=ends[1])
    return _beside(low, piece, left, right)


_GOAL_IS = re.compile(rf"{_BEGINS}{_GOAL}{_STANDS}$")
_OVER_A_PLACE = re.compile(
    r" ?(?P<how>above|below|higher than|lower than|over|under) (?:the |our )(?P<place>[a-z]+)\b"
)


def _beside(low: str, piece: Piece, left: str, right: str) -> Piece:
    """ "the yard is 20 ft below the lane, and the well is by the lane": from there it is counted."""
    over = _OVER_A_PLACE.match(right) if _GOAL_IS.search(left) else None
    if over is None or not re.search(
        rf"\b(?:well|pump|booster|spring|bore\w*|source)\b(?: house| shed| box)?(?: is| sits| stands| lies)?(?: right| just)?[^.;\d]{{0,14}} (?:in|at|on|by|beside|inside|next to|near) the {over['place']}\b",
        low,
    ):
        return piece
    sign = -1.0 if over["how"] in {"below", "lower than", "under"} else 1.0
    return replace(piece, low=sign * abs(piece.low), high=sign * abs(piece.high))


def _lowest(low: str, piece: Piece, start: int, end: int) -> Piece:
    """ "3 m above the river, 5 m in a dry summer": the second is the lowest water."""
    dry = _DRY.match(low, piece.end, end)
    if dry is None or float(dry["low"].rstrip(".")) <= abs(piece.low):
        return piece
    number = -float(dry["low"].rstrip("."))
    return replace(piece, start=dry.start("low"), end=dry.end("low"), low=number, high=number)


_GO_WITH = re.compile(
    r"[^.;]{0,70}\b(?:so|but|and|let's|please|just|,)+ (?:please |just |we )?(?:go with|use|take|trust|believe|count on|call it|say) (?:the |that )?(?P<number>\d[\d.]*)(?= ?(?:$|[.,;)\n]|m\b|ft\b|feet|met|yards))"
)


def _agreed(low: str, piece: Piece, end: int) -> Piece:
    """ "600 ft, my wife says 500, so go with 500": the number that is settled on."""
    settled = _GO_WITH.match(low, piece.end, end)
    if settled is None:
        return piece
    number = float(settled["number"].rstrip("."))
    return replace(
        piece, start=settled.start("number"), end=settled.end("number"), low=number, high=number
    )
