"""The figures, working and tables of the storage tank sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, storage
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.sheets.parts.tank_sizes import round_sizes, span
from calc.sheets.tank.judge import hours_needed, refill_time
from calc.units import DAY, GRAVITY

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.page.form import Values
    from calc.sheets.tank.case import Case
    from calc.units import Reader

SUITS = (  # what a pressure at the outlet suits
    ("Drip lines", practice.DRIP_PRESSURE),
    ("A house, modest", practice.HOUSE_PRESSURE[0]),
    ("A house", practice.HOUSE_PRESSURE[1]),
)


def figures(values: Values, found: Case) -> tuple[Figure, ...]:
    """Key figures; a tank's size only where a tank helps."""
    balance = found.balance
    rows = [] if found.short else [_needed(found)]
    if not found.short:
        rows.append(Figure("To even out the day", balance.swing, "volume"))
    rows.append(Figure("Comes in on a fair day", found.supply, "volume", main=found.short))
    if found.short:
        rows.append(Figure("Short by, each day", -balance.surplus, "volume", main=True))
    else:
        rows.append(Figure("Left over on a fair day", max(balance.surplus, 0.0), "volume"))
    if found.raised > 0:
        note = "" if found.gravity > 0 else "more head is lost than the height gives"
        rows += [
            Figure("Pressure at the outlet", max(found.gravity, 0.0), "pressure", note=note),
            Figure("Height for the needed pressure", found.height, "length"),
        ]
    return tuple(rows)


def _needed(found: Case) -> Figure:
    return Figure("Tank needed", found.volume, "volume", note="before rounding up", main=True)


def steps(values: Values, found: Case) -> tuple[Step, ...]:
    """The working: what comes in, the tank, the pressure."""
    rows = [_supply_step(values, found)]
    rows += [_hours_step(values, found)] if found.short else _tank_steps(values, found)
    if found.raised > 0:
        rows += _pressure_steps(values, found)
    return tuple(rows)


def _supply_step(values: Values, found: Case) -> Step:
    hours = {"h": Value(values.hours, "number")}
    about = "The hours are taken about midday, half before and half after 12:30."
    if values.well is None:
        return Step(
            "What comes in",
            "S = q * h * 3600",
            {"q": Value(values.gives, "flow"), **hours},
            Value(found.supply, "volume"),
            note=f"3600 s in an hour. {about}",
        )
    return Step(
        "What comes in",
        "S = min(q * h * 3600, q_w * h * 3600 + min(W, q_w * (24 - h) * 3600))",
        {
            "q": Value(values.gives, "flow"),
            "q_w": Value(values.well, "flow"),
            "W": Value(values.stored, "volume"),
            **hours,
        },
        Value(found.supply, "volume"),
        note="What the pump takes, or what flows into the well meanwhile and what has gathered in "
        f"it while the pump rested (W at most), whichever is less. {about}",
        source="Volume balance of the well over one day",
    )


def _hours_step(values: Values, found: Case) -> Step:
    if found.well_limits:
        return _slow_step(values, found)
    return Step(
        "Flow that would keep up",
        "q_need = V_day / (h * 3600)",
        {"V_day": Value(found.use, "volume"), "h": Value(values.hours, "number")},
        Value(found.use / (values.hours * 3600), "flow"),
    )


def _slow_step(values: Values, found: Case) -> Step:
    """Hours that would do, or the most the well lets be pumped in 24."""
    well_flow, pump = Value(values.well, "flow"), Value(values.gives, "flow")
    needed = hours_needed(values, found.use)
    if math.isinf(needed):
        return Step(
            "Maximum a day, pumping day and night",
            "S_24 = 86400 * min(q, q_w)",
            {"q": pump, "q_w": well_flow},
            Value(DAY * min(values.gives, values.well), "volume"),
        )
    return Step(
        "Hours of pumping that are enough",
        "h_need = max(V_day / q, (V_day - W) / q_w) / 3600",
        {
            "V_day": Value(found.use, "volume"),
            "W": Value(values.stored, "volume"),
            "q": pump,
            "q_w": well_flow,
        },
        Value(needed, "number"),
    )


def _tank_steps(values: Values, found: Case) -> list[Step]:
    swing = Value(found.balance.swing, "volume")
    return [
        Step(
            "To even out the day",
            note="Hour by hour, starting from a full tank, what is missing is added up: the use "
            "less what comes in, and never below nothing, as a full tank takes no more. The most "
            "that is ever missing on a day that repeats is the least tank.",
            result=swing,
            source="Mass curve: W. Rippl, Proc. Inst. Civ. Eng. 71 (1883); pattern of use: "
            "common practice, no source",
        ),
        Step(
            "With the days without supply",
            "V = (V_swing + V_day * n) / u",
            {
                "V_swing": swing,
                "V_day": Value(found.use, "volume"),
                "n": Value(values.bridge / DAY, "number"),
                "u": Value(values.usable, "percent"),
            },
            Value(found.volume, "volume"),
            note="u is the share of the tank that can be used.",
        ),
    ]


def _pressure_steps(values: Values, found: Case) -> list[Step]:
    weight = {"rho": Value(found.density, "density", 4), "g": Value(GRAVITY, "number", 6)}
    lost = Value(values.lost, "head")
    return [
        Step(
            "Pressure from the tank's height",
            "p = rho * g * (z - h_f)",
            {**weight, "z": Value(found.raised, "length"), "h_f": lost},
            Value(found.gravity, "pressure"),
        ),
        Step(
            "Height for the needed pressure",
            "z_want = p_want / (rho * g) + h_f",
            {"p_want": Value(values.wanted, "pressure"), **weight, "h_f": lost},
            Value(found.height, "length"),
        ),
    ]


def tables(values: Values, found: Case, reader: Reader) -> tuple[Table, ...]:
    """Round sizes, what they bridge, and how soon they are full again."""
    rows: list[Cells] = []
    dimmed: list[int] = []
    marked: list[int] = []
    for index, size in enumerate(round_sizes(max(found.volume, found.use / 2), reader)):
        spare = size * values.usable - found.balance.swing
        if spare < 0:
            rows.append((size, "–", "runs dry on an ordinary day"))
            dimmed.append(index)
            continue
        bridged = spare / found.use * DAY
        if size < found.volume * (1 - 1e-9):
            rows.append((size, span(bridged), "falls short"))
            dimmed.append(index)
            continue
        rows.append((size, span(bridged), _refill(values, found)))
        marked = marked or [index]
    columns = (Column("Tank", "volume", 1), Column("Lasts without supply"), Column("Afterwards"))
    title = "Round sizes and how long they last"
    sizes = Table(title, columns, tuple(rows), tuple(marked), tuple(dimmed))
    return (sizes, _height_table(values, found)) if found.raised > 0 else (sizes,)


def _height_table(values: Values, found: Case) -> Table:
    """What height alone gives, beside what is needed and what a pump would have to add."""
    rows: list[Cells] = [
        ("Your tank, by height alone", found.raised, max(found.gravity, 0.0), None)
    ]
    for name, pressure in (*SUITS, ("What you need", values.wanted)):
        height = storage.height_for_pressure(pressure, values.lost, found.density)
        rows.append((name, height, pressure, max(0.0, pressure - found.gravity)))
    columns = (
        Column("For"),
        Column("Water above the outlet", "length"),
        Column("Pressure at the outlet", "pressure"),
        Column("A pump at your tank must add", "pressure"),
    )
    note = "20 psi suits drip lines, 30 to 40 psi a house."
    return Table("By height or by pump", columns, tuple(rows), (0,), (), note)


def _refill(values: Values, found: Case) -> str:
    if values.bridge <= 0:
        return "fits"
    time = refill_time(values, found)
    if math.isinf(time):
        return "fits, but never refills: nothing is left over"
    days = math.ceil(time / DAY * 10 - 1e-9) / 10
    return f"fits; full again after {days:g} fair day" + ("" if days == 1 else "s")
