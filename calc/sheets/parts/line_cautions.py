"""Cautions that never count: those that stand on the pages of several sheets, and those that belong
to a line's numbers: hot water, water kept by a valve."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.pipe.line import Line
    from calc.pipe.pipes import Pipe

# Standing cautions that several sheets share: common practice, no source.
FROST = (
    "Lay pipe below the frost, or so that it drains. A line that drains back must let air in at "
    "its top."
)
BACKFLOW = (
    "Fit an air gap or a backflow preventer where a hose, trough, drip line or tank could flow "
    "back (local codes)."
)
DRAWN_IN = "Where its pressure is low, a leaky pipe draws in polluted water."
DIG = "Have buried cables and pipes located before you dig; a trench can fall in."
CHLORINATE = (
    "After work in a well or tank, chlorinate it as the health authority says, and have the water "
    "tested."
)
HOT = (
    "Hot water scalds. A water heater needs a temperature-and-pressure relief valve, piped to a "
    "safe place and never plugged.",
    "A heater behind a check valve or a pressure-reducing valve needs an expansion tank or the "
    "like (IPC 607.3, from memory). A licensed person must fit it, to local codes.",
)
CHECK_VALVE = (
    "A check valve after the pump keeps the line full and under pressure while the pump rests.",
)
EARTH = "Earth (ground) the pump and protect it against lightning, to local codes."
PRIMES = "A check valve after a self-priming pump can stop it priming."
GRIT = (
    "Iron, manganese and sediment stain, and clog filters, valves and drippers: have the water "
    "tested before you choose a filter."
)
HOSE = (
    "A garden hose is not made to stay under pressure, nor for drinking water. Close the valve "
    "before it after use.",
)


def hot_cautions(temperature_k: float) -> tuple[str, ...]:
    """For hot water; none for cold. temperature_k: of the water, K."""
    return HOT if temperature_k > practice.HOT_FROM else ()


def pipe_cautions(laid: Iterable[Pipe], temperature_k: float) -> tuple[str, ...]:
    """For hot water and a hose. laid: pipes under pressure; temperature_k: of the water, K."""
    hose = HOSE if any(pipe.kind == "hose" for pipe in laid) else ()
    return (*hot_cautions(temperature_k), *hose)


def line_cautions(line: Line) -> tuple[str, ...]:
    """For hot water, a hose, and a pump that pushes uphill."""
    pumped = CHECK_VALVE if line.start_pa > 0 and line.rise_m > 0 else ()
    laid = (section.pipe for section in line.sections)
    return (*pipe_cautions(laid, line.temperature_k), *pumped)
