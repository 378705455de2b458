"""The cable sheet's picture: the voltage from the source to the pump, running and at start."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Dot, Drawing, Stroke, Words
from calc.sheets.cable.judge import size_words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, spread
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Point, Shape
    from calc.sheets.cable.case import Case
    from calc.units import Reader

START, PUMP, SAID = 14.0, 144.0, 154.0  # units: the cable from, to; the words beside it
TOP, HIGH = 14.0, 140.0  # units over the source's voltage, and from it to the lowest
FAR = 1.8  # of the deepest drop: a limit below that is told, not drawn; our choice
UNDER = 1.08  # of the deepest drop: as far down as the picture goes; our choice


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    volts, drop = case.line.voltage_v, case.found
    limits = [("running", case.drop * volts), ("at start", case.start_drop * volts)]
    deepest = max(drop.start_drop, limits[0][1])
    shown = [one for one in limits if one[1] <= FAR * deepest]
    deepest = max(deepest, *(one[1] for one in shown))
    low = max(0.0, volts - UNDER * deepest)
    scale = Scale(low, volts, TOP + HIGH, TOP)
    base = TOP + HIGH + 20
    shapes = (
        *_lines(case, scale),
        *_limits(volts, shown, scale),
        *_said(case, shown, reader, scale),
        *_cable(case, reader, base),
    )
    told = [f"Voltages are to scale, from {_volts(low, reader)} up"]
    told += [
        f"You accept {_volts(volts - lost, reader)} {when}, below this picture"
        for when, lost in limits
        if (when, lost) not in shown
    ]
    height = base + 3 * LINE + 16
    title = "Voltage along the cable"
    return Drawing("volts", title, _alt(case, reader), WIDTH, height, shapes, f"{'. '.join(told)}.")


def _volts(value: float, reader: Reader) -> str:
    return reader.show(value, "voltage", 4 if value >= 10 else 3)


# The voltage ----------------------------------------------------------------------------------


def _falling(volts: float, lost: float, scale: Scale) -> tuple[Point, ...]:
    """From the source to the pump; a drop of all of it ends on the way."""
    start = (START, scale.at(volts))
    if lost <= volts:
        return (start, (PUMP, scale.at(volts - lost)))
    end = START + (PUMP - START) * volts / lost
    return (start, (end, scale.at(0.0)), (PUMP, scale.at(0.0)))


def _too_low(case: Case) -> tuple[bool, bool]:
    """Whether more is lost than is accepted, running and at start."""
    drop = case.found
    return drop.share > case.drop * MET, drop.start_share > case.start_drop * MET


def _lines(case: Case, scale: Scale) -> Iterator[Shape]:
    volts, drop = case.line.voltage_v, case.found
    running, start = _too_low(case)
    yield Stroke(((START, scale.at(volts)), (PUMP, scale.at(volts))), "edge", width=1.0)
    for lost, name, bad, style in (
        (drop.drop, "running", running, "solid"),
        (drop.start_drop, "start", start, "dotted" if start else "dashed"),
    ):
        points = _falling(volts, lost, scale)
        yield Stroke(points, "bad" if bad else "ink", style, 2.5, at=name)


def _limits(volts: float, shown: list[tuple[str, float]], scale: Scale) -> Iterator[Shape]:
    """The least voltages that are accepted, beside the pump."""
    for when, lost in shown:
        y = scale.at(volts - lost)
        yield Stroke(((PUMP - 40, y), (PUMP, y)), "soft", width=1.5, at=f"least {when}")


def _said(
    case: Case, shown: list[tuple[str, float]], reader: Reader, scale: Scale
) -> Iterator[Shape]:
    """What is written beside the pump, led to it."""
    volts, drop = case.line.voltage_v, case.found
    running, start = _too_low(case)
    said = [
        (volts, "source", "ink", False),
        (drop.left, "running", "bad" if running else "ink", True),
        (drop.start_left, "at start", "bad" if start else "ink", True),
        *((volts - lost, f"least {when}", "soft", False) for when, lost in shown),
    ]
    said.sort(key=lambda one: -one[0])
    wanted = [scale.at(value) for value, *_ in said]
    places = spread(wanted, LINE, TOP - 2, TOP + HIGH - 2)
    for at, place, (value, name, role, bold) in zip(wanted, places, said, strict=True):
        yield Stroke(((PUMP, at), (SAID - 3, place)), "edge", width=1.0)
        text = _volts(value, reader) + (", too low" if role == "bad" else "")
        yield Words(SAID, place + 4, text, role=role, bold=bold, size=SMALL, lead=name)


# The cable ------------------------------------------------------------------------------------


def _cable(case: Case, reader: Reader, y: float) -> Iterator[Shape]:
    """The source, both ways of the circuit, the pump."""
    for at, name in ((y - 3, "there"), (y + 3, "back")):
        yield Stroke(((START, at), (PUMP, at)), "pipe", width=2.0, at=name)
    yield Block(START - 10, y - 9, 14, 18, "paper", "ink", line=1.5, at="source")
    yield Dot(PUMP + 5, y, 9, "ink", hollow=True, at="pump")
    blade = ((PUMP + 1, y - 5), (PUMP + 11, y), (PUMP + 1, y + 5))
    yield Area(blade, "ink")
    yield Words(START - 10, y + 10 + LINE, "source", size=SMALL)
    yield Words(PUMP + 14, y + 10 + LINE, "pump", "end", size=SMALL)
    long = f"{brief(case.line.length_m, 'length', reader)} each way"
    for row, said in enumerate((size_words(case, reader), long), 2):
        yield Words(START - 10, y + 10 + row * LINE, said, size=SMALL)


def _alt(case: Case, reader: Reader) -> str:
    volts, drop = case.line.voltage_v, case.found
    running, start = (" (too low)" if bad else "" for bad in _too_low(case))
    return (
        f"Voltage along {size_words(case, reader)}, "
        f"{reader.show(case.line.length_m, 'length')} each way: it falls evenly from "
        f"{_volts(volts, reader)} at the source to {_volts(drop.left, reader)}{running} at the "
        f"pump while it runs, and to {_volts(drop.start_left, reader)}{start} while it starts. "
        f"You accept {_volts(volts * (1 - case.drop), reader)} and "
        f"{_volts(volts * (1 - case.start_drop), reader)}."
    )
