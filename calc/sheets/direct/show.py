"""The figures, working and tables of pumping straight from the panels."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Column, Figure, Step, Table, Value
from calc.power.array import RATED_AT, power
from calc.pump.laws import water_power
from calc.sheets.parts.solar_judge import closes, digits, made_of, source_of
from calc.sheets.parts.tank_sizes import round_up
from calc.units import DAY, GRAVITY

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.sheets.direct.case import Case
    from calc.units import Reader

SUNS = (200.0, 400.0, 600.0, 800.0, 1000.0)  # W/m2
LEAST = 1e-3  # m3, the smallest tank that is worked with
TANK_DAYS = (1.0, 2.0, 3.0, 5.0, 8.0)  # days of water in the tank; our choice


def figures(case: Case) -> tuple[Figure, ...]:
    """Key figures of the dullest year."""
    year = case.year
    return (
        Figure("Days short in that year", float(year.short_days), "number",
               digits(year.short_days), main=True),
        Figure("Flow in full sun", case.full_sun, "flow"),
        Figure("Power from which water comes", case.made.starts_w, "power"),
        Figure("Water not served", year.unserved / year.asked, "percent"),
        Figure("Hours the pump runs in a year", float(year.running_hours), "number", 4),
        Figure("Days of water in a full tank", case.tank / case.daily * DAY, "days", 2),
    )  # fmt: skip


def steps(case: Case) -> tuple[Step, ...]:
    """The working: the panels' power, the duty in full sun, the threshold, the year."""
    flow, full = case.full_sun, case.full_power
    head = case.lifted + case.line.loss(flow)
    left = full / case.array.rated_w
    return (
        Step(
            "Power of the panels in full sun",
            "P = n * P_0 * l",
            {"n": Value(float(case.array.count), "number"),
             "P_0": Value(case.array.module.rated_w, "power"), "l": Value(left, "percent")},
            Value(full, "power"),
            note="l: what dust, unlike panels and wiring leave. In the year warmth counts too.",
        ),
        Step(
            "Head at that flow",
            "H = z + h_f",
            {"z": Value(case.lifted, "head"), "h_f": Value(case.line.loss(flow), "head")},
            Value(head, "head"),
            note="z: from the lowest water up to the tank. The flow is where pump and pipe meet at "
            "the speed that takes this power, at most full speed.",
            source="Affinity laws; Darcy-Weisbach with Colebrook (1939)",
        ),
        Step(
            "Power in the water",
            "P_w = rho * g * Q * H",
            {"rho": Value(case.line.weight / GRAVITY, "density", 4),
             "g": Value(GRAVITY, "number", 6),
             "Q": Value(flow, "flow"), "H": Value(head, "head")},
            Value(water_power(flow, head, case.line.weight / GRAVITY), "power"),
        ),
        *_later_steps(case),
    )  # fmt: skip


def _later_steps(case: Case) -> tuple[Step, ...]:
    """The threshold and the year, in words."""
    return (
        Step(
            "Where water begins",
            note="Below the speed at which the pump’s head reaches the height, it turns and gives "
            "nothing. The power it then takes is the threshold.",
            result=Value(case.made.starts_w, "power"),
        ),
        Step(
            "The year, hour by hour",
            note=f"{made_of(case)} In each hour the sun’s power gives a flow into the tank, and "
            "the taps take from it. A full tank stops the pump. Water closes "
            f"{closes(case.year.water_gap)} of what came in.",
            source=f"Conservation of water{source_of(case)}",
        ),
    )


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """Flow against sun, and tanks against days short."""
    return (_by_sun(case), _tanks(case, reader))


def _by_sun(case: Case) -> Table:
    rows: list[Cells] = []
    for sun in SUNS:
        watts = power(case.array, sun, RATED_AT)
        rows.append((f"{sun:.0f} W/m²", watts, case.made.flow(watts)))
    columns = (Column("Sun on the panels"), Column("Power", "power"), Column("Flow", "flow"))
    return Table("What the pump gives", columns, tuple(rows))


def _tanks(case: Case, reader: Reader) -> Table:
    rows: list[Cells] = []
    marked: list[int] = []
    volumes = {round_up(days * case.daily, "volume", reader) for days in TANK_DAYS} | {case.tank}
    for at, volume in enumerate(sorted(one for one in volumes if one >= LEAST)):
        other = case.with_size(case.array.parallel, volume)
        rows.append((volume, str(other.year.short_days), other.year.unserved))
        if volume == case.tank:
            marked.append(at)
    columns = (Column("Tank", "volume"), Column("Days short"),
               Column("Water missed in the year", "volume"))  # fmt: skip
    return Table("Smaller and larger tanks", columns, tuple(rows), tuple(marked))
