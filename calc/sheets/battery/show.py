"""The figures, working and tables of the battery sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.power.battery import rate_share
from calc.sheets.parts.solar_judge import digits, lasts
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.sheets.parts.solar_case import Case

LEAST = HOUR  # J, 1 Wh, the smallest battery that is worked with
SIZES = (0.5, 1.0, 1.5, 2.0, 3.0)  # of the battery in the form; our choice


def figures(case: Case) -> tuple[Figure, ...]:
    """Key figures."""
    year = case.year
    return (
        Figure("Lasts without any sun", case.autonomy * DAY, "days", main=True),
        Figure("Energy that may be drawn", case.usable, "energy"),
        Figure(
            "Days short in that year", float(year.short_days), "number", digits(year.short_days)
        ),
        Figure("Lowest charge in it", year.lowest, "percent"),
        Figure("Full cycles a year", year.cycles, "number"),
        Figure("Battery lasts, in years", lasts(case), "number", 2),
    )


def steps(case: Case) -> tuple[Step, ...]:
    """The working: what may be drawn, how long that carries, and what the pump's power costs."""
    return (*_energy(case), *_lasting(case))


def _energy(case: Case) -> tuple[Step, ...]:
    """What the battery holds and what a day takes."""
    one, pump = case.system.battery, case.system.pump
    return (
        Step(
            "Rated energy",
            "E = U * Q",
            {"U": Value(one.nominal_v, "voltage"),
             "Q": Value(one.energy_j / one.nominal_v, "charge")},
            Value(one.energy_j, "energy"),
        ),
        Step(
            "Energy that may be drawn",
            "E_u = u * E",
            {"u": Value(one.of.usable, "percent"), "E": Value(one.energy_j, "energy")},
            Value(case.usable, "energy"),
            note="u: what its kind bears daily.",
            source="Common practice, no source",
        ),
        Step(
            "Energy of a day in the busiest month",
            "E_day = V_day * P / Q_p + 86400 * P_idle",
            {"V_day": Value(case.daily, "volume"), "P": Value(pump.power_w, "power"),
             "Q_p": Value(pump.flow_m3s, "flow"), "P_idle": Value(case.system.idle_w, "power")},
            Value(case.daily_energy, "energy"),
        ),
    )  # fmt: skip


def _lasting(case: Case) -> tuple[Step, ...]:
    """How long it carries, what the pump's power costs, how long it lasts."""
    one, pump = case.system.battery, case.system.pump
    stored = case.system.tank_m3 / case.daily
    return (
        Step(
            "Days without sun",
            "n = n_t + max(0, E_u * eta - n_t * 86400 * P_idle) / E_day",
            {"n_t": Value(stored, "number"), "E_u": Value(case.usable, "energy"),
             "eta": Value(one.of.discharging, "percent"),
             "P_idle": Value(case.system.idle_w, "power"),
             "E_day": Value(case.daily_energy, "energy")},
            Value(case.autonomy, "number"),
            note="n_t: days that a full tank serves first, while only the standby draws.",
        ),
        Step(
            "What drawing at the pump’s power leaves of it",
            "s = min(1, (E / (72000 * P)) ** (k - 1))",
            {"E": Value(one.energy_j, "energy"), "P": Value(pump.power_w, "power"),
             "k": Value(one.of.exponent, "number")},
            Value(rate_share(one, pump.power_w), "percent"),
            note="The rated energy is for 20 hours (72000 s); faster gives less.",
            source="W. Peukert (1897), from memory",
        ),
        Step(
            "How long it lasts",
            note="Each day counts as a cycle of its own depth; the shares of life used are added "
            "up over the year, and no battery lasts longer than its kind does lying still.",
            result=Value(lasts(case), "number"),
            source="Miner’s rule; cycle lives: common practice, no source",
        ),
    )  # fmt: skip


def tables(case: Case) -> tuple[Table, ...]:
    """Kinds side by side, and sizes."""
    return (_kinds(case), _sizes(case))


def _kinds(case: Case) -> Table:
    rows: list[Cells] = []
    marked: list[int] = []
    for at, kind in enumerate(practice.BATTERIES):
        one = replace(case.system.battery, kind=kind.key)
        other = replace(case, system=replace(case.system, battery=one))
        rows.append((kind.name, other.autonomy * DAY, str(other.year.short_days),
                     lasts(other)))  # fmt: skip
        if kind.key == case.system.battery.kind:
            marked.append(at)
    columns = (Column("Kind, of the same capacity"), Column("Without sun", "days", 2),
               Column("Days short"), Column("Lasts, years", "number", 2))  # fmt: skip
    note = "Usual values of each kind; your manufacturer’s go before them."
    return Table("Kinds of battery", columns, tuple(rows), tuple(marked), (), note)


def _sizes(case: Case) -> Table:
    rows: list[Cells] = []
    dimmed: list[int] = []
    system = case.system
    shares = [share for share in SIZES if share * system.battery.energy_j >= LEAST]
    for at, share in enumerate(shares):
        energy = share * system.battery.energy_j
        other = case.with_size(system.array.parallel, energy, system.tank_m3)
        rows.append((energy / system.battery.nominal_v, other.autonomy * DAY,
                     str(other.year.short_days), lasts(other)))  # fmt: skip
        if not other.meets:
            dimmed.append(at)
    columns = (Column("Capacity", "charge"), Column("Without sun", "days", 2),
               Column("Days short"), Column("Lasts, years", "number", 2))  # fmt: skip
    marked = (shares.index(1.0),)
    return Table("Smaller and larger", columns, tuple(rows), marked, tuple(dimmed))
