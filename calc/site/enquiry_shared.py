"""What stands beside a number and tells of the next one: a unit that both share, longitudes."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece, Token

_STOP = re.compile(r" ?(?:$|[.,;!)\n])")
_BOUND = re.compile(
    r"[^.;\n\d]{0,40}\b(?:at (?:the )?(?:least|most)|minimum|maximum|min|max|no less than|not more than|down to|falls to|drops to|goes (?:down )?to|sinks to)(?: of| is| about| only)* $"
)
_SEASON = r"(?:late |dry |wet |hot )*(?:summer|winter|spring|autumn|fall|(?:dry|wet|rainy) (?:season|time|months?)|rains|drought|august|september|october|november|january|february|march|april|june|july)"
_THEN = re.compile(
    rf"(?: down| deep)?[ ,;(]*(?:but |and |or |only )*(?:in|at|by|during|towards?)?(?: the)?(?: very)?(?: end of)?(?: the)? ?{_SEASON},?(?: (?:it is|it's|only|at|about|to|falls to|down to|goes to|still|is))*[ ,]*"
)
_KINDS = frozenset(["pressure", "flow", "length", "temperature"])
_LONGITUDE = re.compile(
    r"\blon(?:g(?:itude)?)?\b\.?(?: is| of|:|=)*[ ]*(?P<n>-?\d{1,3}(?:[.,]\d+)?) ?(?:°|deg(?:rees)?)?(?: ?(?P<side>east|west|e|w)\b)?"
)
_SIDES = re.compile(  # "at 56.2° N and 5.1° W"
    r"\d ?(?:°|deg(?:rees)?) ?(?:n(?:orth)?|s(?:outh)?)\b[ ,/]*(?:and )?(?P<n>\d{1,3}(?:[.,]\d+)?) ?(?:°|deg(?:rees)?) ?(?P<side>east|west|e|w)\b"
)
_LATITUDE = re.compile(r"\blat(?:itude)?\b")


def shared(low: str, numbers: list[Token]) -> None:
    """ "rated 20 psi, needs at least 10", "12 m, at the end of the dry season at 13.5": the second
    number has the unit of the first."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        alike = first.kind in _KINDS and second.kind == "bare" and not second.why
        if not alike or first.unit in {"mm", "cm", "in"} or not _STOP.match(low, second.end):
            continue
        gap = low[first.end : second.start]
        season = first.kind in {"flow", "length"} and _THEN.fullmatch(gap)
        if season or (first.kind == "pressure" and _BOUND.fullmatch(gap)):
            second.kind, second.unit = first.kind, first.unit


def longitudes(low: str) -> list[Piece]:
    """Longitudes that stand beside a latitude."""
    found = []
    named = _LONGITUDE.finditer(low) if _LATITUDE.search(low) else ()
    for match in (*named, *_SIDES.finditer(low)):
        number = float(match["n"].replace(",", "."))
        if (match["side"] or "").startswith("w"):
            number = -abs(number)
        if abs(number) <= 180:
            found.append(
                Piece("place.longitude", match.start("n"), match.end(), number, number, "°")
            )
    return found
