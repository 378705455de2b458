"""The picture of the sky over the panels: the sun's path in three seasons, and what hides it."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Drawing, Stroke, Words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale
from calc.sun.hours import day_hours

if TYPE_CHECKING:
    from calc.page.shapes import Shape
    from calc.sheets.panel_place.case import Case

TOP, HIGH = 26.0, 130.0  # units over the sky, and its height
HALF = math.radians(120)  # shown to either side of the midday sun
NAME = 72.0  # units, of the longest day's name
STEPS = 96  # of the skyline; our choice
PATHS = ((172, "21 June", "solid"), (80, "21 March", "dashed"), (355, "21 December", "dotted"))
COMPASS = ("N", "NE", "E", "SE", "S", "SW", "W", "NW")


def path(latitude: float, day: int) -> list[tuple[float, float]]:
    """(azimuth from north, elevation) of the sun through a day, rad, hour by hour."""
    _, rows = day_hours(latitude, day)
    return [
        (math.atan2(east, north) % (2 * math.pi), math.asin(min(1.0, up)))
        for _, _, _, east, north, up in rows
    ]


def draw(case: Case) -> Drawing:
    """The ``Drawing`` of a case."""
    middle = case.equator
    across, up = Scale(-HALF, HALF, 8.0, WIDTH - 8.0), Scale(0.0, math.pi / 2, TOP + HIGH, TOP)
    shapes: list[Shape] = [Words(8.0, 14.0, "overhead", size=SMALL)]
    for day, name, style in PATHS:
        shapes += _path(case, day, name, style, middle, across, up)
    shapes += _skyline(case, middle, across, up)
    low = up.at(0.0)
    shapes.append(Stroke(((across.start, low), (across.end, low)), "ink", width=1.2))
    for at, name in enumerate(COMPASS):
        x = _turn(at * math.pi / 4, middle)
        if abs(x) <= HALF - 0.05:
            shapes.append(Words(across.at(x), low + LINE, name, "middle", size=SMALL))
    alt = (
        "The sky over the panels: the sun’s path on 21 June, 21 March and 21 December, and what "
        f"stands before it. It takes {round(100 * case.hidden)} % of the light that is needed."
    )
    return Drawing("sky", "The sun’s path, and what hides it", alt, WIDTH, low + LINE + 8,
                   tuple(shapes), "Directions and heights are to scale.")  # fmt: skip


def _turn(azimuth: float, middle: float) -> float:
    """From the midday sun, rad, -pi to pi, to the right as one faces it."""
    return (azimuth - middle + math.pi) % (2 * math.pi) - math.pi


def _path(
    case: Case, day: int, name: str, style: str, middle: float, across: Scale, up: Scale
) -> list[Shape]:
    shapes: list[Shape] = []
    for number, run in enumerate(_in_view(path(case.place.latitude, day), middle), 1):
        points = tuple((across.at(turn), up.at(high)) for turn, high in run)
        at = f"path {day}" if number == 1 else f"path {day} {number}"
        shapes.append(Stroke(points, "four", style, 2.0, smooth=True, at=at))
    shown = [point for one in shapes if isinstance(one, Stroke) for point in one.points]
    if shown:
        left, high = min(shown, key=lambda one: one[1])
        held = min(max(left, across.start + NAME / 2), across.end - NAME / 2)
        shapes.append(Words(held, high - 5, name, "middle", size=SMALL, halo="paper"))
    return shapes


def _in_view(hours: list[tuple[float, float]], middle: float) -> list[list[tuple[float, float]]]:
    """(turn, elevation) of hours one after the other, taken apart where the sun is behind.

    Between the tropics it passes behind whoever faces the equator, for a part of the year.
    """
    runs: list[list[tuple[float, float]]] = [[]]
    for azimuth, high in hours:
        turn = _turn(azimuth, middle)
        behind = abs(turn) > HALF
        if behind or (runs[-1] and abs(turn - runs[-1][-1][0]) > math.pi):
            runs.append([])
        if not behind:
            runs[-1].append((turn, high))
    return [run for run in runs if len(run) > 1]


def _skyline(case: Case, middle: float, across: Scale, up: Scale) -> list[Shape]:
    line = case.stand.line
    if not line.points:
        return []
    turns = [-HALF + 2 * HALF * at / STEPS for at in range(STEPS + 1)]
    points = tuple((across.at(turn), up.at(line.elevation(middle + turn))) for turn in turns)
    low = up.at(0.0)
    return [Area((*points, (across.end, low), (across.start, low)), "earth", "ink", 1.2,
                 at="skyline")]  # fmt: skip
