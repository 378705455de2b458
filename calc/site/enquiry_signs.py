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
        (rf"\b(?:height|level|elevation|vertical|difference|climb|rise|lift)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_SOURCE}(?: being| is| lies| sits)?(?: the)? {_HIGH}\b(?! (?:the|our) (?:pump|well))", -1.0),
        (rf"\b(?:height|level|elevation|vertical|difference|fall|drop)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_SOURCE}(?: being| is| lies| sits)?(?: the)? {_LOW}\b", 1.0),
        (rf"\b(?:height|level|elevation|vertical|difference)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_HOME}(?: being| is| lies| sits)?(?: the)? {_LOW}\b", -1.0),
        (rf"\b(?:height|level|elevation|vertical|difference)\b[^.;\d]*$", rf"{_OPENS}{_THE}{_HOME}(?: being| is| lies| sits)?(?: the)? {_HIGH}\b", 1.0),
        (rf"\b{_HOME} is the (?:higher|upper) (?:one )?by (?:about |some )?$", "", 1.0),
        (rf"\b{_HOME} is the lower (?:one )?by (?:about |some )?$", "", -1.0),
    )
)  # fmt: skip
_DRY = re.compile(
    r"(?:(?! from\b)[^.;\n\d]){0,30}[,;(] ?(?:but |and |or |maybe |then |perhaps |about |nearer |more like )*(?P<low>\d[\d.]*) ?(?:m|ft|feet|met(?:re|er)s)?(?: (?:below|down|above(?: it)?|under|lower))? (?:in|by|at|during|when|towards|after) (?:an? |the |it is |it's )?(?:very |end of |long )*(?:dry|late|drought|summer|august|september|october|low water|low stage|worst)\b"
)


def signed(low: str, pieces: list[Piece], bounds: list[tuple[int, int]]) -> list[Piece]:
    """The pieces, heights turned and levels lowered.  bounds: of the sentence of each."""
    return [_put_right(low, one, *ends) for one, ends in zip(pieces, bounds, strict=True)]


def _put_right(low: str, piece: Piece, start: int, end: int) -> Piece:
    if piece.path == "water.level" and piece.low == piece.high and piece.low < 0:
        return _lowest(low, piece, start, end)
    if piece.path != "way.climb" or piece.word or not piece.low:
        return piece
    left, right = low[start : piece.start], low[piece.end : end]
    for before, after, sign in _TURNS:
        if before.search(left) and after.match(right):
            ends = sorted((sign * abs(piece.low), sign * abs(piece.high)))
            return replace(piece, low=ends[0], high=ends[1])
    return piece


def _lowest(low: str, piece: Piece, start: int, end: int) -> Piece:
    """ "3 m above the river, 5 m in a dry summer": the second is the lowest water."""
    dry = _DRY.match(low, piece.end, end)
    if dry is None or float(dry["low"].rstrip(".")) <= abs(piece.low):
        return piece
    number = -float(dry["low"].rstrip("."))
    return replace(piece, start=dry.start("low"), end=dry.end("low"), low=number, high=number)
