"""Points along a way, read from a pasted GPS track or a table, and told in few points."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from calc.errors import InputError
from calc.reading import parse
from calc.sun.places import distance_km

MOST_POINTS = 24  # of a profile: a link has to hold them; our choice
SAME = 1.0  # m along, nearer than which two points of a track are one; our choice
LEVEL = 0.05  # m of height, less than which no point is worth keeping; our choice
LONGEST = 5_000_000  # characters; a day's track has a million
# Source: GPX 1.1, www.topografix.com/GPX/1/1: points of a track, a route or alone
_POINT = re.compile(r"<(?:\w+:)?(trkpt|rtept|wpt)\b([^>]*?)(/>|>(.*?)</(?:\w+:)?\1>)", re.S)
_PLACE = re.compile(r"""\b(lat|lon)\s*=\s*["']\s*(-?[\d.]+)\s*["']""")
_HEIGHT = re.compile(r"<(?:\w+:)?ele>\s*(-?[\d.]+(?:e[-+]?\d+)?)\s*</", re.I)
# what parts two cells, the surest first: a comma may be a decimal sign
_PARTS = (re.compile(r"\t|;"), re.compile(r",?\s+(?=[-+]?[.,]?\d)"), re.compile(r","))


@dataclass(frozen=True)
class Track:
    """Distances along a way and heights, m, the source first.

    read: how many points were read; off_m: the most a point left out is off in height, m;
    turned: the way was given from its low end up.
    """

    points: tuple[tuple[float, float], ...]
    read: int
    off_m: float = 0.0
    turned: bool = False


def read(text: str, unit: str) -> Track:
    """A track in GPX, or a table of two columns: distance along the way, height.

    text: as pasted; unit: symbol of a length where the table has none.  A way that ends higher than
    it began is turned round: water runs down.  More than ``MOST_POINTS`` are thinned (``thinned``).
    Returns ``Track``.  Raises InputError where no way of two points can be read.
    Source: GPX 1.1.
    """
    if len(text) > LONGEST:
        raise InputError("This is too long for a track. Cut it to the way of the pipe.")
    found = _gpx(text) if _POINT.search(text) else _table(text, unit)
    if len(found) < 2:
        raise InputError("Only one point was read. A way has two ends: the source and the outlet.")
    turned = found[-1][1] > found[0][1]
    if turned:
        end = found[-1][0]
        found = [(end - along, high) for along, high in reversed(found)]
    points = thinned(found, MOST_POINTS)
    return Track(points, len(found), _off(found, points), turned)


def _gpx(text: str) -> list[tuple[float, float]]:
    """Points of the kind that the track has most of: (distance along the slope, height), m."""
    kinds: dict[str, list[tuple[float, float, float]]] = {}
    bare = 0
    for kind, attributes, _, inside in _POINT.findall(text):
        place = dict(_PLACE.findall(attributes))
        height = _HEIGHT.search(inside)
        if len(place) == 2 and height:
            at = (float(place["lat"]), float(place["lon"]), float(height[1]))
            kinds.setdefault(kind, []).append(at)
        else:
            bare += 1
    if not kinds:
        raise InputError(
            "This track holds no heights. Record it with heights, or enter the points by hand."
        )
    points = max(kinds.values(), key=len)
    along, found, last = 0.0, [(0.0, points[0][2])], points[0]
    for one in points[1:]:
        step = math.hypot(1e3 * distance_km(*last[:2], *one[:2]), one[2] - last[2])
        if step >= SAME:
            along, last = along + step, one
            found.append((along, one[2]))
    return found


def _table(text: str, unit: str) -> list[tuple[float, float]]:
    found: list[tuple[float, float]] = []
    for number, line in enumerate(text.splitlines(), 1):
        cells = _cells(line.strip())
        if not cells or (not found and not any(sign.isdigit() for sign in line)):
            continue  # an empty line, or a heading
        if len(cells) < 2:
            raise InputError(f"Line {number} holds one number; give distance and height: “{line}”.")
        try:
            along, high = (parse(cell, "length", unit).value for cell in cells[:2])
        except InputError as error:
            raise InputError(f"Line {number}: {error.message}") from error
        if found and along <= found[-1][0]:
            raise InputError(
                f"Line {number} must be farther than the one before. Give distances along the pipe."
            )
        found.append((along, high))
    if not found:
        raise InputError("Nothing here is a track or a table of distances and heights.")
    return found


def _cells(line: str) -> list[str]:
    for sign in _PARTS:
        cells = [cell.strip() for cell in sign.split(line) if cell.strip()]
        if len(cells) > 1:
            return cells
    return [line] if line else []


def thinned(points: list[tuple[float, float]], most: int) -> tuple[tuple[float, float], ...]:
    """At most so many of the points, the ends and what is farthest off in height kept first.

    points: (distance, height), m; most: 2 or more.  At each turn the point farthest from the line
    through those kept is kept as well.  Source: U. Ramer (1972); D. Douglas and T. Peucker (1973),
    taken to a number of points, from memory.
    """
    kept = [0, len(points) - 1]
    while len(kept) < min(most, len(points)):
        worst, at = LEVEL, -1
        for one, other in zip(kept, kept[1:], strict=False):
            for index in range(one + 1, other):
                off = abs(_beside(points[one], points[other], points[index]))
                if off > worst:
                    worst, at = off, index
        if at < 0:
            break
        kept = sorted((*kept, at))
    return tuple(points[index] for index in kept)


def _beside(
    one: tuple[float, float], other: tuple[float, float], point: tuple[float, float]
) -> float:
    """How much a point is above the line through two others, m."""
    share = (point[0] - one[0]) / (other[0] - one[0])
    return point[1] - (one[1] + share * (other[1] - one[1]))


def _off(every: list[tuple[float, float]], kept: tuple[tuple[float, float], ...]) -> float:
    """The most a point is off the line through those kept, m."""
    worst, at = 0.0, 0
    for point in every:
        while point[0] > kept[at + 1][0]:
            at += 1
        worst = max(worst, abs(_beside(kept[at], kept[at + 1], point)))
    return worst
