"""The picture of pumping straight from the panels: the worst fortnight, sun above, tank below."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Drawing, Stroke, Words
from calc.power.array import USUAL_LOSSES, powers
from calc.power.service import FORTNIGHT
from calc.sheets.parts import solar_drawing as sun
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.direct.case import Case
    from calc.units import Reader

LEFT, RIGHT = sun.LEFT, sun.RIGHT
TOP, HIGH = sun.STORE_TOP, sun.STORE_HIGH


def draw(case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing`` of a case."""
    worst, first = case.year.worst, case.year.worst[0].day
    across = Scale(0.0, float(FORTNIGHT), LEFT, RIGHT)
    missed = [day.asked - day.served > sun.SERVED * max(day.asked, sun.SERVED) for day in worst]
    shapes = (
        *sun.sun_bars([day.array for day in worst], across, reader),
        *_tank(case, first, across, reader),
        *sun.missed_days(missed, across),
        *sun.day_names(first, across),
    )
    title = f"The worst fortnight, from {sun.day_name(first)}"
    height = TOP + HIGH + 2 * LINE + 24
    lowest = round(100 * min(day.lowest for day in worst))
    alt = (
        f"The fortnight from {sun.day_name(first)}, the worst of the dullest year: "
        f"{sun.lacking(sum(missed))}, and "
        f"the tank falls to {lowest} % of its water."
    )
    scaled = "To scale: the sun’s energy of a day, and the water in the tank."
    return (Drawing("fortnight", title, alt, WIDTH, height, shapes, scaled),)


def levels(case: Case) -> list[float]:
    """m3 in the tank at the end of each hour of the year."""
    watts = powers(case.array, case.weather.plane, case.weather.module_k, USUAL_LOSSES)
    level, found = case.tank, []
    for offered, asked in zip(watts, case.demand.hours, strict=True):
        level = min(case.tank, max(0.0, level + 3600.0 * case.made.flow(offered) - asked))
        found.append(level)
    return found


def _tank(case: Case, first: int, across: Scale, reader: Reader) -> Iterator[Shape]:
    hours = levels(case)[24 * first : 24 * (first + FORTNIGHT)]
    up = Scale(0.0, case.tank, TOP + HIGH, TOP)
    line = tuple(
        (across.at((at + 1) / 24), up.at(hours[at])) for at in range(0, len(hours), sun.STEP)
    )
    low = up.at(0.0)
    size = brief(case.tank, "volume", reader)
    yield Words(LEFT, TOP - 6, f"water in the tank: full at {size}", size=SMALL)
    yield Block(LEFT, TOP, RIGHT - LEFT, HIGH, "", "edge")
    yield Area((*line, (line[-1][0], low), (line[0][0], low)), "water", at="water")
    yield Stroke(line, "ink", width=1.4, at="level")
