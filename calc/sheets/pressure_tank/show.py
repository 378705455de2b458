"""The figures, working, tables and charts of the pressure tank sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, storage
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.parts.tank_sizes import gap_words
from calc.sheets.pressure_tank.case import CUP
from calc.sheets.pressure_tank.judge import COMMON, starts_now
from calc.units import HOUR

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.pressure_tank.case import Case
    from calc.units import Reader

SMALL = 7  # of the common sizes are shown for standby
PER_SECOND = "The formula gives starts per second; times 3600 per hour."


def _given(values: Values, found: Case, *names: str) -> dict[str, Value]:
    """The named symbols of the working with their numbers."""
    all_of_them = {
        "V": Value(values.tank or 0.0, "volume"),
        "V_d": Value(found.gives, "volume"),
        "V_n": Value(found.target, "volume"),
        "n_max": Value(values.starts, "per_hour"),
        "Q_p": Value(values.pump, "flow") if values.pump else None,
        "Q_l": Value(values.leak, "flow") if values.leak is not None else None,
        "p_0": Value(found.charge, "pressure"),
        "p_1": Value(found.cut_in, "pressure"),
        "p_2": Value(found.high, "pressure"),
        "p_a": Value(found.air, "pressure", 4),
        "V_cup": Value(CUP, "volume"),
    }
    return {name: all_of_them[name] for name in names}


def _drawdown_steps(values: Values, found: Case) -> tuple[Step, ...]:
    steps = []
    if found.speed:
        steps.append(
            Step(
                "Restart pressure",
                "p_1 = s * p_2",
                {**_given(values, found, "p_2"), "s": Value(practice.RESTART_SHARE, "percent")},
                Value(found.cut_in, "pressure"),
                note="A speed control that rests starts the pump again at this share of p_2.",
                source="Common practice, no source",
            )
        )
    if values.precharge is None and found.charge > 0:
        steps.append(
            Step(
                "Pre-charge",
                "p_0 = p_1 - p_gap",
                {
                    **_given(values, found, "p_1"),
                    "p_gap": Value(practice.PRECHARGE_GAP, "pressure"),
                },
                Value(found.charge, "pressure"),
                source="2 psi below cut-in: common practice, no source",
            )
        )
    return (*steps, _drawdown_step(values, found))


def _drawdown_step(values: Values, found: Case) -> Step:
    return Step(
        "Drawdown, by Boyle's law",
        "V_d = V * (p_0 + p_a) / (p_1 + p_a) - V * (p_0 + p_a) / (p_2 + p_a)",
        _given(values, found, "V", "p_0", "p_1", "p_2", "p_a"),
        Value(found.gives, "volume"),
        note="p_0 is the pre-charge, p_a the air outside: Boyle's law takes absolute pressures.",
        source="Boyle's law; air pressure ISO 2533:1975",
    )


def _tank_step(values: Values, found: Case) -> Step:
    return Step(
        "Tank needed",
        "V_tank = V * V_n / V_d",
        _given(values, found, "V", "V_n", "V_d"),
        Value(found.need, "volume"),
        note="The tank asked for is this, rounded up.",
    )


# With a pressure switch ------------------------------------------------------


def switch_figures(values: Values, found: Case) -> tuple[Figure, ...]:
    """Key figures with a pressure switch."""
    need = Figure("Tank needed", found.asked, "volume", note="rounded up", main=True)
    if not found.gives:
        return (need,)
    note = "when half the pump's flow is drawn"
    runs_on = "the pump does not stop" if values.draw >= values.pump else ""
    now = starts_now(values, found.gives)
    shortest = storage.run_time(found.gives, values.pump, 0.0)
    return (
        Figure("Drawdown", found.gives, "volume", main=True),
        Figure("Starts per hour, at worst", found.worst, "per_hour", main=True, note=note),
        Figure("Starts per hour at your draw", now, "per_hour", note=runs_on),
        Figure("Shortest run", shortest, "time", note="when nothing more is drawn"),
        Figure("Tank needed", found.asked, "volume", note="rounded up"),
    )


def switch_steps(values: Values, found: Case) -> tuple[Step, ...]:
    """The working with a pressure switch."""
    if not found.gives:
        return (_enough_step(values, found),)
    return (
        *_drawdown_steps(values, found),
        Step(
            "Starts at the worst draw, half the pump's flow",
            "n = Q_p / (4 * V_d)",
            _given(values, found, "Q_p", "V_d"),
            Value(found.worst, "per_hour"),
            note=PER_SECOND,
            source="Volume balance of one cycle",
        ),
        _enough_step(values, found),
        _tank_step(values, found),
    )


def _enough_step(values: Values, found: Case) -> Step:
    return Step(
        "Drawdown that is enough",
        "V_n = Q_p / (4 * n_max)",
        _given(values, found, "Q_p", "n_max"),
        Value(found.target, "volume"),
    )


def size_table(values: Values, found: Case, reader: Reader) -> Table:
    """Common sizes, what each gives and how often the pump starts."""
    rows, dimmed = [], []
    for index, size in enumerate(COMMON[reader.system]):
        gives = found.drawdown(size)
        worst = storage.most_starts_rate(gives, values.pump)
        fits = worst <= values.starts * (1 + 1e-9)
        run = storage.run_time(gives, values.pump, 0.0)
        rows.append((size, gives, worst, run, "fits" if fits else "too many starts"))
        if not fits:
            dimmed.append(index)
    marked = (len(dimmed),) if len(dimmed) < len(rows) else ()
    columns = (
        Column("Tank", "volume", 1),
        Column("Drawdown", "volume"),
        Column("Starts, at worst", "per_hour"),
        Column("Shortest run", "time"),
        Column("Fit"),
    )
    note = "" if marked else "None of these is large enough: use several side by side."
    return Table("Common tank sizes", columns, tuple(rows), marked, tuple(dimmed), note)


def switch_chart(values: Values, found: Case) -> Chart:
    """Starts an hour against the draw, for the tank and for the one needed."""
    flows = tuple(values.pump * (i / 40) for i in range(41))  # the last exactly the pump's
    pairs = [("Your tank", found.gives)]
    if not math.isclose(found.target, found.gives, rel_tol=1e-6):
        pairs.append(("The tank needed", found.target))
    now = (values.draw, starts_now(values, found.gives), "your draw")
    return Chart(
        "starts",
        "Pump starts per hour against the flow drawn",
        "Starts per hour rise from none to a peak at half the pump's flow and fall to none at its "
        "full flow.",
        "Water drawn",
        "flow",
        "Starts",
        "per_hour",
        tuple(
            Series(name, flows, tuple(storage.starts_rate(v, values.pump, q) for q in flows))
            for name, v in pairs
        ),
        marks=(now,) if values.draw < values.pump else (),
        levels=((values.starts, "allowed"),),
    )


# With speed control ----------------------------------------------------------


def speed_figures(found: Case) -> tuple[Figure, ...]:
    """Key figures with speed control."""
    note = "0.25 L, about half a pint, drawn before the pump starts"
    cup = Figure("Tank that covers a cup of water", found.cup, "volume", note=note)
    if not found.gives:
        return (cup,)
    return (
        Figure("Drawdown", found.gives, "volume", main=True),
        Figure("Starts per hour from leaks alone", found.leaks, "per_hour", main=True),
        cup,
    )


def speed_steps(values: Values, found: Case) -> tuple[Step, ...]:
    """The working with speed control."""
    enough = Step(
        "Drawdown that is enough for leaks",
        "V_l = Q_l / n_max",
        _given(values, found, "Q_l", "n_max"),
        Value(values.leak / values.starts, "volume"),
    )
    if not found.gives:
        return (enough,)
    return (
        *_drawdown_steps(values, found),
        Step(
            "Starts from leaks",
            "n = Q_l / V_d",
            _given(values, found, "Q_l", "V_d"),
            Value(found.leaks, "per_hour"),
            note=PER_SECOND,
            source="Volume balance of one cycle",
        ),
        enough,
        *_cycling_steps(values, found),
        _tank_step(values, found),
        Step(
            "Tank for a cup",
            "V_tank = V * V_cup / V_d",
            _given(values, found, "V", "V_cup", "V_d"),
            Value(found.cup, "volume"),
        ),
    )


def _cycling_steps(values: Values, found: Case) -> tuple[Step, ...]:
    """Starts where less is drawn than the pump's least flow."""
    small = found.small
    if small is None or not small.below:
        return ()
    known = {"Q_d": Value(small.draw, "flow"), **_given(values, found, "V_d")}
    formula, note = "n = Q_d / V_d", f"Taken as filled at once, the careful side. {PER_SECOND}"
    if small.refill is not None:
        known["Q_p"] = Value(max(small.refill, small.draw), "flow")
        formula = "n = Q_d * (Q_p - Q_d) / (V_d * Q_p)"
        note = f"Q_p is what the pump gives while it fills the tank. {PER_SECOND}"
    return (
        Step(
            "Starts at the smallest draw, below the pump's least flow",
            formula,
            known,
            Value(small.starts / HOUR, "per_hour"),
            note=note,
            source="Volume balance of one cycle",
        ),
    )


def leak_table(values: Values, found: Case, reader: Reader) -> Table:
    """Small tanks, and how far apart leaks start the pump."""
    rows = []
    for size in COMMON[reader.system][:SMALL]:
        gives = found.drawdown(size)
        often = f"every {gap_words(gives / values.leak)}" if values.leak > 0 else "never"
        rows.append((size, gives, often))
    columns = (Column("Tank", "volume", 1), Column("Drawdown", "volume"), Column("Leaks start it"))
    return Table("Small tanks for standby", columns, tuple(rows))


def leak_chart(values: Values, found: Case) -> Chart:
    """Starts an hour from leaks against tank size."""
    small, large = COMMON["metric"][0], COMMON["metric"][SMALL - 1]
    sizes = tuple(small + (large - small) * i / 24 for i in range(25))
    rates = (storage.leak_starts_rate(found.drawdown(size), values.leak) for size in sizes)
    return Chart(
        "standby",
        "Starts from leaks against tank size",
        "Starts per hour fall steeply with the first of the tank's volume and then level out.",
        "Tank volume",
        "volume",
        "Starts from leaks",
        "per_hour",
        (Series("Starts from leaks", sizes, tuple(rates)),),
        levels=((values.starts, "allowed"),),
    )
