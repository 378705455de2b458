"""Figures and working of a relief valve beside a pressure tank."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, relief
from calc.page.answer import Figure, Step, Value
from calc.sheets.pressure_tank.relief_case import relief_of

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.pressure_tank.case import Case
    from calc.sheets.pressure_tank.relief_case import Relief

SOURCE = "Orifice equation; form after API 520, liquid, from memory"


def figures(values: Values, case: Case) -> tuple[Figure, ...]:
    """What it must pass, how wide it must be, and the pressure while it is open."""
    valve = relief_of(values, case)
    if valve is None or valve.passes is None or valve.needed is None:
        return ()
    idle = "the pump never opens it" if valve.idle else "all that the pump gives then"
    name = relief.connection(valve.needed)
    fits = f"with a connection of {name} or larger" if name else "more than one valve, side by side"
    shown = [Figure("Flow the relief valve must pass", valve.passes, "flow", note=idle)]
    if not valve.idle:
        shown.append(Figure("Opening it must have", valve.needed, "diameter", note=fits))
    open_at = "with the opening given" if valve.small else "a tenth over where it opens"
    note = "the pump makes no more" if valve.reaches == valve.most else open_at
    shown.append(
        Figure("Pressure with all outlets closed", valve.reaches or 0.0, "pressure", note=note)
    )
    return tuple(shown)


def steps(values: Values, case: Case) -> tuple[Step, ...]:
    """From where it opens to how wide it must be."""
    valve = relief_of(values, case)
    if valve is None:
        return ()
    full = Value(valve.full, "pressure")
    found = [
        Step(
            "Pressure at which the relief valve is fully open",
            "p_r = (1 + s) * p_set",
            {
                "s": Value(practice.RELIEF_OVER, "percent"),
                "p_set": Value(valve.opens, "pressure"),
            },
            full,
            source="ASME and API 520, from memory",
        )
    ]
    if valve.passes is None or valve.idle:
        return tuple(found)
    return (*found, _needed(valve), *_given(valve))


def _needed(valve: Relief) -> Step:
    return Step(
        "Opening that passes what the pump gives",
        "d = sqrt(4 / pi * Q / (C_d * sqrt(2 * p_r / rho)))",
        {
            "Q": Value(valve.passes or 0.0, "flow"),
            "C_d": Value(practice.RELIEF_COEFFICIENT, "number"),
            "p_r": Value(valve.full, "pressure"),
            "rho": Value(valve.density, "density", 5),
        },
        Value(valve.needed or 0.0, "diameter"),
        note="A displacement pump gives nearly its whole flow at any pressure. A valve that is not "
        "certified for liquid opens less at a tenth over: go by its data.",
        source=SOURCE,
    )


def _given(valve: Relief) -> tuple[Step, ...]:
    """What the opening given comes to, where it is too small."""
    if not valve.small or valve.opening is None or valve.passes is None:
        return ()
    reached = relief.pressure_to_pass(valve.passes, valve.opening, valve.density)
    return (
        Step(
            "Pressure that drives it through the opening given",
            "p_d = rho / 2 * (Q / (C_d * pi / 4 * D**2))**2",
            {
                "rho": Value(valve.density, "density", 5),
                "Q": Value(valve.passes, "flow"),
                "C_d": Value(practice.RELIEF_COEFFICIENT, "number"),
                "D": Value(valve.opening, "diameter"),
            },
            Value(reached, "pressure"),
            note="A pump whose highest pressure is less makes no more than that.",
            source=SOURCE,
        ),
    )
