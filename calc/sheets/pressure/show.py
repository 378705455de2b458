"""The figures, working, tables and chart of the pressure sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.pressure.judge import use
from calc.units import GRAVITY, METRE_OF_WATER, QUANTITIES, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.pressure.case import Standing
    from calc.units import Reader


def figures(state: Standing) -> tuple[Figure, ...]:
    """The figures of the answer, the main ones first."""
    highest = state.highest(state.needed)
    return (
        Figure("Head: the height of water it holds up", state.head, "head", 4, main=True),
        Figure(
            "Static pressure at the outlet",
            state.left,
            "pressure",
            note="" if state.left > 0 else "below 0: so much is missing for water to arrive",
            main=True,
        ),
        Figure("Gauge pressure", state.gauge, "pressure"),
        Figure("Absolute pressure", state.gauge + state.air, "pressure"),
        Figure(
            "Height of the highest outlet with the needed pressure",
            highest,
            "length",
            note="" if highest >= 0 else "below 0: that far below the place of the known pressure",
        ),
        Figure("Pressure used by each metre (3.28 ft) of climb", state.weight, "pressure"),
    )


def steps(state: Standing, values: Values) -> tuple[Step, ...]:
    """From what was typed to what is left."""
    rho, g = Value(state.density, "density", 5), Value(GRAVITY, "number", 6)
    p = Value(state.gauge, "pressure")
    return (
        Step(
            "Density of the water",
            note=f"{number_text(state.density, 5)} kg/m³ at its temperature.",
            source="IAPWS SR6-08(2011)",
        ),
        *_known_steps(state, values, rho, g),
        Step(
            "Pressure as head",
            "h = p / (rho * g)",
            {"p": p, "rho": rho, "g": g},
            Value(state.head, "head", 4),
            source="Hydrostatics, standard gravity (NIST SP 811)",
        ),
        Step(
            "Absolute pressure",
            "p_abs = p + p_air",
            {"p": p, "p_air": Value(state.air, "pressure", 4)},
            Value(state.gauge + state.air, "pressure"),
            source="Air pressure by altitude: ISO 2533:1975",
        ),
        Step(
            "What the climb leaves",
            "p_top = p - rho * g * z",
            {"p": p, "rho": rho, "g": g, "z": Value(state.climb, "length")},
            Value(state.left, "pressure"),
        ),
        Step(
            "Highest outlet with the needed pressure",
            "z_max = (p - p_want) / (rho * g)",
            {"p": p, "p_want": Value(state.needed, "pressure"), "rho": rho, "g": g},
            Value(state.highest(state.needed), "length"),
        ),
    )


def _known_steps(state: Standing, values: Values, rho: Value, g: Value) -> Iterator[Step]:
    """From what was typed to the gauge pressure, where these are not the same."""
    if state.column:
        target = "p_typed" if state.absolute else "p"
        yield Step(
            "The column you typed, as pressure",
            f"{target} = rho * g * h_typed",
            {"rho": rho, "g": g, "h_typed": Value(values.known / METRE_OF_WATER, "head", 4)},
            Value(state.known, "pressure"),
            note="A column of your water at its temperature.",
        )
    if state.absolute:
        yield Step(
            "Gauge pressure: above the air outside",
            "p = p_typed - p_air",
            {
                "p_typed": Value(state.known, "pressure", 4),
                "p_air": Value(state.air, "pressure", 4),
            },
            Value(state.gauge, "pressure"),
            source="Air pressure by altitude: ISO 2533:1975",
        )


def every_unit(state: Standing) -> Table:
    """The pressure in every unit, gauge and absolute."""
    gauge, absolute = state.gauge, state.gauge + state.air
    rows: list[tuple[str, ...]] = []
    for symbol in ("psi", "kPa", "bar"):
        unit = QUANTITIES["pressure"].unit(symbol)
        rows.append((symbol, *(number_text(unit.from_si(p), 4) for p in (gauge, absolute))))
    for symbol in ("m", "ft"):
        unit = QUANTITIES["head"].unit(symbol)
        pair = (number_text(unit.from_si(p / state.weight), 4) for p in (gauge, absolute))
        rows.append((f"{symbol} of this water", *pair))
    return Table(
        "The same in every unit",
        (Column("Unit"), Column("Gauge"), Column("Absolute")),
        tuple(rows),
        note="A metre or foot of water is a column of water at the temperature given.",
    )


def profile(state: Standing, reader: Reader) -> Table:
    """Static pressure at round heights up the climb."""
    unit = reader.unit("length")
    low, high = min(0.0, state.climb), max(state.head, state.climb, 1.0)
    step = unit.to_si(_round_step(unit.from_si(high - low) / 8))
    number = math.floor(low / step + 1e-9)
    rows: list[tuple[float, float, str]] = []
    while not rows or (rows[-1][1] > 0 and len(rows) < 14):
        left = max(state.at(number * step), 0.0)  # above the water the pipe holds air: no pressure
        rows.append((number * step, left, use(left)))
        number += 1
    short = tuple(i for i, row in enumerate(rows) if row[1] < state.needed)
    return Table(
        "Static pressure up the climb",
        (
            Column("Climb", "length"),
            Column("Static pressure", "pressure"),
            Column("Enough for"),
        ),
        tuple(rows),
        dimmed=short,
        note="Grey: less than the needed pressure.",
    )


def _round_step(step: float) -> float:
    """The next of 1, 2, 5 times a power of ten that is at least ``step``."""
    power = 10.0 ** math.floor(math.log10(step))
    return next(m * power for m in (1, 2, 5, 10) if m * power >= step * (1 - 1e-9))


def chart(state: Standing, reader: Reader) -> Chart:
    """Static pressure against height, with the outlet on it."""
    low, top = min(0.0, state.climb), max(state.climb, state.head, 1.0)
    heights = [low + (state.head - low) * i / 10 for i in range(11)]
    pressures = [state.at(z) for z in heights[:-1]] + [0.0]
    if state.head < top:  # above the water: air, without pressure
        heights.append(top)
        pressures.append(0.0)
    weight = reader.show(state.weight, "pressure")
    return Chart(
        "profile",
        "Static pressure up the climb",
        f"Static pressure against height: a straight line that falls by {weight} each metre "
        f"(3.28 ft) to nothing at {reader.show(state.head, 'head')}; your outlet is marked on it.",
        "Climb",
        "length",
        "Static pressure",
        "pressure",
        (Series("Static pressure", tuple(heights), tuple(pressures)),),
        marks=((state.climb, max(state.left, 0.0), "your outlet"),),
        levels=((state.needed, "needed"),),
    )
