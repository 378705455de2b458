"""The surge sheet's picture: the highest and the lowest pressure along the pipe after the closing.

The wave runs back from the valve to the start of the pipe and returns.  Where its return comes
before the valve is closed it takes some of the rise off: the last part of the pipe before its start
sees less, and with a slow closing all of it but the valve.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Drawing, Stroke, Words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, spread
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Point, Shape
    from calc.sheets.surge.case import Case
    from calc.units import Reader

START, VALVE, SAID = 14.0, 182.0, 192.0  # units: the pipe from, to; the words beside it
TOP, HIGH = 14.0, 150.0  # units over the highest pressure, and from it to the lowest
FAR_OVER = 1.8  # of the peak: a rating higher than that is told, not drawn; our choice


def along(case: Case) -> float:
    """Share of the pipe, from its start, over which the rise grows to the full one.

    a T / 2 over L, at most 1: the wave that comes back from the start meets the end of the closing
    there.  Raises nothing.  Source: method of characteristics, closing at an even rate.
    """
    return min(1.0, case.closing / case.critical)


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    ratings = [(what, rating) for what, rating, _ in case.limits]
    shown = [(what, rating) for what, rating in ratings if rating <= FAR_OVER * case.peak]
    high = max(case.peak, *(rating for _, rating in shown), 1.0)
    low = min(0.0, case.lowest)
    scale = Scale(low, high, TOP + HIGH, TOP)
    shapes = (
        *_pressures(case, scale),
        *_ratings(case, shown, scale),
        *_said(case, shown, reader, scale),
        *_pipe(case, reader, TOP + HIGH + 14),
    )
    over = [
        f"{what} is rated {reader.show(rating, 'pressure')}, above this picture"
        for what, rating in ratings if (what, rating) not in shown
    ]  # fmt: skip
    scaled = ". ".join(["Pressures are to scale", *(one[:1].upper() + one[1:] for one in over)])
    title = "Pressure along the pipe"
    height = TOP + HIGH + 14 + 62
    return Drawing("wave", title, _alt(case, reader), WIDTH, height, shapes, f"{scaled}.")


# The pressures ------------------------------------------------------------------------------


def _envelope(case: Case, wave: float, most: float, scale: Scale) -> tuple[Point, ...]:
    """From the start of the pipe to the valve: to the pressure ``wave``, but no lower than
    ``most``, both Pa."""
    change = wave - case.pressure
    share = along(case) * ((most - case.pressure) / change if change else 1.0)
    full, there = START + share * (VALVE - START), scale.at(most)
    return ((START, scale.at(case.pressure)), (full, there), (VALVE, there))


def _pressures(case: Case, scale: Scale) -> Iterator[Shape]:
    """The static pressure, the highest over it and the lowest under it."""
    zero, static = scale.at(0.0), scale.at(case.pressure)
    peak = _envelope(case, case.peak, case.peak, scale)
    lowest = _envelope(case, case.low, case.lowest, scale)
    yield Block(START, static, VALVE - START, zero - static, "water", at="static")
    yield Area((*peak, (VALVE, static), (START, static)), "glass", at="rise")
    yield Stroke(peak, "bad" if over(case) else "ink", width=2.5, at="peak")
    yield Stroke(lowest, "bad" if case.lowest < 0 else "ink", "dotted", 2.0, at="lowest")
    yield Stroke(((START, zero), (VALVE, zero)), "ink", width=1.0, at="zero")


def over(case: Case) -> bool:
    """Whether the peak is over what a part may carry, or all that is always there."""
    return any(
        case.peak > allowed * MET or case.pressure > rating * MET
        for _, rating, allowed in case.limits
    )


def _ratings(case: Case, shown: list[tuple[str, float]], scale: Scale) -> Iterator[Shape]:
    for number, (_, rating) in enumerate(shown):
        y = scale.at(rating)
        yield Stroke(((START, y), (VALVE, y)), "ink", "dashed", 1.5, at=f"rating {number}")


def _said(
    case: Case, shown: list[tuple[str, float]], reader: Reader, scale: Scale
) -> Iterator[Shape]:
    """What is written beside the pressures, led to them."""
    names = {"the pipe": "pipe rated", "the lowest-rated part": "part rated"}
    said = [
        (case.peak, *(("too high", "bad") if over(case) else ("peak", "ink")), True),
        (case.pressure, "static", "ink", False),
        (case.lowest, "lowest", "bad" if case.lowest < 0 else "ink", False),
        *((rating, names[what], "ink", False) for what, rating in shown),
    ]
    said.sort(key=lambda one: -one[0])
    wanted = [scale.at(pressure) for pressure, *_ in said]
    places = spread(wanted, LINE, TOP - 2, TOP + HIGH - 2)
    for at, place, (pressure, name, role, bold) in zip(wanted, places, said, strict=True):
        yield Stroke(((VALVE, at), (SAID - 3, place)), "edge", width=1.0)
        minus = "−" if pressure < 0 else ""
        text = minus + brief(abs(pressure), "pressure", reader)
        yield Words(SAID, place + 4, text, role=role, bold=bold, size=SMALL, lead=name)


# The pipe -----------------------------------------------------------------------------------


def _pipe(case: Case, reader: Reader, y: float) -> Iterator[Shape]:
    """The pipe with its valve, the way of the wave and how long it takes."""
    middle = (START + VALVE) / 2
    yield Stroke(((START, y), (VALVE, y)), "pipe", width=5.0, at="pipe")
    valve = ((VALVE, y - 7), (VALVE + 12, y + 7), (VALVE + 12, y - 7), (VALVE, y + 7))
    yield Area(valve, "ink")
    yield Words(SAID + 8, y + 4, "valve", size=SMALL)
    yield Words(SAID + 8, y + 4 + LINE, f"closes in {seconds(case.closing)}", size=SMALL)
    arrow = y + 16
    yield Stroke(((START + 8, arrow), (VALVE, arrow)), "ink", width=1.2)
    yield Area(((START, arrow), (START + 9, arrow - 4), (START + 9, arrow + 4)), "ink")
    long = f"{brief(case.length, 'length', reader)} long"
    yield Words(middle, arrow + LINE, long, "middle", size=SMALL)
    there = f"{seconds(case.critical)} there and back"
    yield Words(START, arrow + 2 * LINE, there, size=SMALL, lead="wave")


def seconds(time: float) -> str:
    """A time (s) in few letters."""
    return f"{time:.3g}\u00a0s" if time < 1000 else f"{time:.0f}\u00a0s"


def _alt(case: Case, reader: Reader) -> str:
    show = reader.show
    shape = "the same all along it" if along(case) < 1 else "growing from its start to the valve"
    rated = "".join(
        f", {what} is rated {show(rating, 'pressure')}" for what, rating, _ in case.limits
    )
    return (
        f"Pressure along the pipe: static {show(case.pressure, 'pressure')}, highest "
        f"{show(case.peak, 'pressure')} at the valve{rated}; then it falls to "
        f"{show(case.lowest, 'pressure')}. The wave takes {seconds(case.critical)} to the start "
        f"and back, the valve closes in {seconds(case.closing)}; the rise is {shape}."
    )
