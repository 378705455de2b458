"""The picture of a power cut: the pipe from pump to tank, and how high the water then pushes.

Heights are to scale, pressures as heights of water above the pump: where a line is under the pipe,
the pressure there is below zero.  How far along a highest point is nobody said, so it is drawn on
the way.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Drawing, Stroke, Words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, spread
from calc.sheets.surge.drawing import FAR_OVER, over, seconds
from calc.sheets.surge.judge import HAIR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Point, Shape
    from calc.sheets.surge.trip_case import Trip
    from calc.units import Reader

PUMP, CREST, NEAR, TANK, SAID = 22.0, 104.0, 158.0, 166.0, 198.0  # units, from the left
WIDE = 16.0  # units, of the tank
TOP, HIGH, BELOW = 14.0, 150.0, 58.0  # units over what is to scale, of it and under it


def draw(case: Trip, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    ratings = [(what, rating) for what, rating, _ in case.limits]
    shown = [(what, rating) for what, rating in ratings if rating <= FAR_OVER * case.peak]
    high = max(case.peak, *(rating for _, rating in shown), case.weight * (case.crest or 0.0))
    low = min(0.0, case.boiled(case.low))
    scale = Scale(low, high, TOP + HIGH, TOP)  # of Pa at the pump
    shapes = (
        *_pressures(case, scale),
        *_ratings(shown, scale),
        *_pipe(case, scale),
        *_said(case, shown, reader, scale),
        *_names(case, reader, TOP + HIGH + 22),
    )
    over_it = [
        f"{what} is rated {reader.show(rating, 'pressure')}, above this picture"
        for what, rating in ratings if (what, rating) not in shown
    ]  # fmt: skip
    scaled = ["Heights are to scale", *(one[:1].upper() + one[1:] for one in over_it)]
    title = "Pressure after the power cut"
    height = TOP + HIGH + BELOW
    return Drawing("trip", title, _alt(case, reader), WIDTH, height, shapes,
                   f"{'. '.join(scaled)}.")  # fmt: skip


def _lowest(case: Trip, scale: Scale) -> tuple[Point, ...]:
    """How high the water pushes at the lowest, from the pump to the tank."""
    start = (PUMP, scale.at(case.boiled(case.low)))
    end = (TANK, scale.at(case.pressure))
    if case.crest is None:
        return (start, (NEAR, start[1]), end)
    return (start, (CREST, scale.at(_at_crest(case))), end)


def _at_crest(case: Trip) -> float:
    """The lowest pressure of the highest point, as it would be at the pump's height, Pa."""
    return case.boiled(case.crest_low) + case.weight * case.crest


def _pressures(case: Trip, scale: Scale) -> Iterator[Shape]:
    highest = (
        (PUMP, scale.at(case.peak)),
        (NEAR, scale.at(case.peak)),
        (TANK, scale.at(case.pressure)),
    )
    lowest = _lowest(case, scale)
    yield Area((*highest, *reversed(lowest)), "glass", at="swing")
    yield Stroke(((PUMP, scale.at(case.pressure)), (TANK, scale.at(case.pressure))), "ink",
                 "dotted", 1.0, at="static")  # fmt: skip
    bad = over(case)
    yield Stroke(highest, "bad" if bad else "ink", "dashed" if bad else "solid", 2.5, at="peak")
    yield Stroke(lowest, "bad" if case.worst[1] < -HAIR else "ink", "dotted", 2.0, at="lowest")


def _ratings(shown: list[tuple[str, float]], scale: Scale) -> Iterator[Shape]:
    for number, (_, rating) in enumerate(shown):
        y = scale.at(rating)
        yield Stroke(((PUMP, y), (TANK, y)), "ink", "dashed", 1.5, at=f"rating {number}")


def _pipe(case: Trip, scale: Scale) -> Iterator[Shape]:
    """The pipe, the pump at its foot and the tank at its end."""
    zero, level = scale.at(0.0), scale.at(case.pressure)
    crest = () if case.crest is None else ((CREST, scale.at(case.weight * case.crest)),)
    yield Stroke(((PUMP, zero), *crest, (TANK, level)), "pipe", width=4.0, at="pipe")
    yield Block(PUMP - 14, zero - 8, 16, 16, "pump", corner=3, at="pump")
    yield Block(TANK, level, WIDE, 12, "water", at="tank")
    yield Block(TANK, level - 8, WIDE, 20, "", "ink", line=2.0)


def _said(
    case: Trip, shown: list[tuple[str, float]], reader: Reader, scale: Scale
) -> Iterator[Shape]:
    """What is written beside the pressures, led to them: height drawn, pressure, name, role."""
    names = {"the pipe": "pipe rated", "the lowest-rated part": "part rated"}
    low = case.boiled(case.low)
    said = [
        (case.peak, case.peak, *(("too high", "bad") if over(case) else ("highest", "ink"))),
        (case.pressure, case.pressure, "at rest", "ink"),
        (low, low, "lowest", _role(case.low)),
        *((rating, rating, names[what], "ink") for what, rating in shown),
    ]
    if case.crest_low is not None:
        low = case.boiled(case.crest_low)
        said.append((_at_crest(case), low, "crest", _role(case.crest_low)))
    said.sort(key=lambda one: -one[0])
    wanted = [scale.at(one[0]) for one in said]
    places = spread(wanted, LINE, TOP - 2, TOP + HIGH - 2)
    for at, place, (_, pressure, name, role) in zip(wanted, places, said, strict=True):
        yield Stroke(((TANK + WIDE, at), (SAID - 3, place)), "edge", width=1.0)
        minus = "−" if pressure < 0 else ""
        text = minus + brief(abs(pressure), "pressure", reader)
        yield Words(SAID, place + 4, text, role=role, bold=role == "bad", size=SMALL, lead=name)


def _role(pressure: float) -> str:
    return "bad" if pressure < -HAIR else "ink"


def _names(case: Trip, reader: Reader, y: float) -> Iterator[Shape]:
    yield Words(2.0, y, "pump", size=SMALL)
    yield Words(TANK + WIDE, y, "tank", "end", size=SMALL)
    up = f"{brief(case.lift, 'length', reader)} up, {brief(case.length, 'length', reader)} long"
    yield Words(2.0, y + LINE, up, size=SMALL)
    yield Words(2.0, y + 2 * LINE - 2, f"{seconds(case.critical)} there and back", size=SMALL,
                lead="wave")  # fmt: skip


def _alt(case: Trip, reader: Reader) -> str:
    show = reader.show
    rated = "".join(
        f", {what} is rated {show(rating, 'pressure')}" for what, rating, _ in case.limits
    )
    said = (
        f"The pipe rises {show(case.lift, 'length')} from the pump to the tank. At rest the pump "
        f"has {show(case.pressure, 'pressure')}; as it stops the pressure falls to "
        f"{show(case.boiled(case.low), 'pressure')}"
    )
    if case.crest_low is not None:
        low = show(case.boiled(case.crest_low), "pressure")
        said += f", at the highest point, {show(case.crest, 'length')} up, to {low}"
    return f"{said}. Then it peaks at {show(case.peak, 'pressure')} at the pump{rated}."
