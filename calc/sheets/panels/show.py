"""The figures, working, tables and charts of panels and battery."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Column, Figure, Step, Table, Value
from calc.power import design
from calc.power.year import generator_fuel
from calc.sheets.parts.solar_judge import closes, count, digits, lasts, made_of, source_of
from calc.units import DAY, MONTHS

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.power.design import Compared
    from calc.sheets.parts.solar_case import Case


def figures(case: Case) -> tuple[Figure, ...]:
    """Key figures of the dullest year."""
    year = case.year
    rows = [
        Figure(
            "Days short in that year",
            float(year.short_days),
            "number",
            digits(year.short_days),
            main=True,
        ),
        Figure(
            "Hours with too little water", float(year.dry_hours), "number", digits(year.dry_hours)
        ),
        Figure("Water not served", year.unserved / year.asked, "percent"),
        Figure("Lowest charge of the battery", year.lowest, "percent"),
        Figure("Lasts without any sun", case.autonomy * DAY, "days"),
        Figure("Sun that finds no use", _share(year.spilled, year.array), "percent"),
        Figure("Battery lasts, in years", lasts(case), "number", 2),
    ]
    if case.system.backup:
        rows.append(Figure("Backup runs, hours a year", year.backup_hours, "number"))
        if case.values.backup == "generator":
            rows.append(Figure("Fuel a year", fuel(case), "volume"))
    return tuple(rows)


def _share(part: float, whole: float) -> float:
    return part / whole if whole > 0 else 0.0


def fuel(case: Case) -> float:
    """Fuel of a generator in the year, m3."""
    return generator_fuel(case.year.aided)


def steps(case: Case) -> tuple[Step, ...]:
    """The working: what a day takes, the quick method, the year, the cold voltage."""
    return (_day(case), *_quick(case), _hour_by_hour(case), _cold(case))


def _day(case: Case) -> Step:
    pump = case.system.pump
    return Step(
        "Energy of a day in the busiest month",
        "E = V_day * P / Q + 86400 * P_idle",
        {
            "V_day": Value(case.daily, "volume"),
            "P": Value(pump.power_w, "power"),
            "Q": Value(pump.flow_m3s, "flow"),
            "P_idle": Value(case.system.idle_w, "power"),
        },
        Value(case.daily_energy, "energy"),
        note="86400 s in a day. What is on standby draws day and night.",
    )


def _quick(case: Case) -> tuple[Step, ...]:
    """Panels and battery by the quick method; none where it has no design."""
    if case.compared is None:
        return ()
    one, hand = case.system.battery, case.compared.hand
    share = case.system.losses.left * case.system.controller.gives
    share *= one.of.charging * one.of.discharging
    panels = Step(
        f"Panels by the quick method, for {MONTHS[hand.month]}",
        "P_panels = E_month / 3600 / (h * eta)",
        {
            "E_month": Value(hand.daily_j, "energy"),
            "h": Value(hand.sun_h, "number"),
            "eta": Value(share, "percent"),
        },
        Value(hand.panels_w, "power"),
        note="h: hours of full sun a day on these panels; eta: what is left after dust, wiring, "
        "controller and battery. The month that asks for most panels decides.",
        source="After IEEE 1562, from memory",
    )
    battery = Step(
        "Battery by the quick method",
        "E_battery = E_month * n / (u * eta_b)",
        {
            "E_month": Value(hand.daily_j, "energy"),
            "n": Value(hand.days, "number"),
            "u": Value(one.of.usable, "percent"),
            "eta_b": Value(one.of.discharging, "percent"),
        },
        Value(hand.energy_j, "energy"),
        note="n: days to last without sun, three are usual; u: share that is drawn.",
        source="After IEEE 1013 and 1562, from memory; three days: common practice, no source",
    )
    return panels, battery


def _hour_by_hour(case: Case) -> Step:
    return Step(
        "The year, hour by hour",
        note=f"{made_of(case)} In each hour the sun runs the pump first, then fills tank and "
        "battery; what is missing comes from the battery down to its cut-out, then from a backup. "
        f"Energy closes {closes(case.year.energy_gap)} of what came in.",
        source=f"Conservation of energy and water{source_of(case)}",
    )


def _cold(case: Case) -> Step:
    array = case.system.array
    return Step(
        "Voltage of a string on the coldest morning",
        "U = n_s * U_oc * (1 + beta * (T - 298.15))",
        {
            "n_s": Value(float(array.series), "number"),
            "U_oc": Value(array.module.open_v, "voltage"),
            "beta": Value(array.module.voltage_rise, "number"),
            "T": Value(case.coldest, "temperature", 5),
        },
        Value(case.cold_v, "voltage"),
        source="NEC 690.7, from memory",
    )


def tables(case: Case) -> tuple[Table, ...]:
    """What one more of each changes, and the quick method beside the year."""
    found = case.compared
    return (_one_more(case), *(() if found is None else (_by_hand(case, found),)))


def _one_more(case: Case) -> Table:
    """Start small and add later."""
    one, day = case.system.battery, case.daily
    changes = design.one_more(
        case.weather, case.demand, case.system, one.energy_j, day, case.most_short, case.year
    )
    names = {"panel": "One more string of panels", "battery": "The same battery again",
             "tank": "A tank for one more day"}  # fmt: skip
    rows: list[Cells] = [
        ("As it is", str(case.year.short_days), case.year.unserved),
        *(
            (names[one.what], str(one.tried.year.short_days), one.tried.year.unserved)
            for one in changes
        ),
    ]
    columns = (Column("Start small, add later"), Column("Days short"),
               Column("Water missed in the year", "volume"))  # fmt: skip
    marked = tuple(at for at, (_, days, _) in enumerate(rows) if int(str(days)) <= case.most)
    return Table("What one more of each changes", columns, tuple(rows), marked)


def _by_hand(case: Case, found: Compared) -> Table:
    """The quick method's design, and what the same year makes of it."""
    hand, array = found.hand, case.system.array
    rows: tuple[Cells, ...] = (
        ("These", str(array.count), case.system.battery.energy_j, str(case.year.short_days)),
        ("By the quick method", str(hand.strings * array.series), hand.energy_j,
         str(found.year.short_days)),
    )  # fmt: skip
    columns = (Column("Design"), Column("Panels"), Column("Battery", "energy"),
               Column("Days short"))  # fmt: skip
    return Table("The quick method beside the year", columns, rows, (), (), why(found))


def why(found: Compared) -> str:
    """Why the quick method and the year differ, in sentences."""
    percent = [f"{round(100 * share)} %" for share in (found.heat, found.by_day, found.spilled)]
    days = count(found.dull_days, "day")
    return (
        f"The quick method takes each day of {MONTHS[found.hand.month]} for its mean day. In the "
        f"year, dull days come in runs of up to {days}; warm panels lose {percent[0]}; "
        f"{percent[1]} of the water is asked by day and spares the battery; {percent[2]} of the "
        "panels’ energy comes when all is full."
    )
