"""Figures, working and tables of the hill tank's page."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.day_tank import DAYS_OF
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.sheets.hill_tank.case import DRY, HAIR
from calc.sheets.hill_tank.judge import empty_from, lowest_at, missing, of_day
from calc.sheets.parts.clock import clock
from calc.sheets.parts.tank_sizes import span
from calc.units import GRAVITY, HOUR, MONTHS

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from calc.page.answer import Cells
    from calc.sheets.hill_tank.case import Case, Day

HAND = "with a tenth to spare"
KIND = {True: "A day of the dry month", False: "A usual day"}


def figures(case: Case) -> tuple[Figure, ...]:
    """What the day comes to, what would carry it, the pressure, the year."""
    year = tuple(_of_year(case))
    of_day = (*_of_day(case), *_carried(case), *_pressed(case))
    return (*year, *of_day) if case.by_rain else (*of_day, *year)


def _of_day(case: Case) -> Iterator[Figure]:
    day, when = case.worst, of_day(case.worst)
    lost = missing(day)
    if case.by_rain:
        note = f"from full it lasts {span(case.lasting)}"
        yield Figure("Short by, each day without rain", day.use - day.supply, "volume", note=note)
    elif lost > 0:
        note = f"from {clock(empty_from(day))} {when}"
        yield Figure("Not served a day", lost, "volume", main=True, note=note)
        if day.short:
            note = f"from full it lasts {span(case.lasting)}"
            yield Figure("Short by, each day", day.use - day.supply, "volume", note=note)
    else:
        note = f"at {clock(lowest_at(day, case.shown))} {when}"
        least = min(case.shown.levels) - case.kept
        yield Figure("Lowest above the reserve" if case.kept > HAIR else "Lowest in the tank",
                     least, "volume", main=True, note=note)  # fmt: skip
    yield Figure("Comes in a day", day.supply, "volume", note=when)
    yield Figure("Used a day", day.use, "volume", note=when)
    if sum(case.shown.over) > HAIR and not case.by_rain:
        yield Figure("Runs over a day", sum(case.shown.over), "volume")


def _carried(case: Case) -> Iterator[Figure]:
    day = case.judged
    if case.day_tank is not None:
        yield Figure("Tank that carries the day", case.day_tank, "volume", note=HAND)
    if day is None or case.values.fills == "none" or day.times is None:
        return
    own = case.values.gives
    if day.key == DRY and case.values.dryflow is not None:
        own = case.values.dryflow
    yield Figure("Inflow that carries the day", own * day.times, "flow",
                 note=f"in its hours, {HAND}")  # fmt: skip


def _pressed(case: Case) -> Iterator[Figure]:
    if case.raised <= 0:
        return
    left = max(0.0, case.line.left(case.flow))
    yield Figure("Lowest pressure at the outlet", left, "pressure", note="with the tank low")
    if case.too_low > 1:
        yield Figure("Hours with too little", case.too_low / HOUR, "number",
                     note="in which water runs with too little pressure")  # fmt: skip


def _of_year(case: Case) -> Iterator[Figure]:
    if case.year is None:
        return
    lost = sum(case.year.run.missing)
    label, value = "Not served in the year", lost
    if not case.year.dry:
        label, value = "Lowest at the end of a month", min(case.year.run.levels) - case.kept
    yield Figure(label, value, "volume", main=case.by_rain)
    yield Figure("Rain from the roof, a year", sum(case.year.rain), "volume")
    if case.year_tank is not None:
        yield Figure("Tank that carries the year", case.year_tank, "volume")


# Working -------------------------------------------------------------------------------------


def steps(case: Case) -> tuple[Step, ...]:
    """The day's balance, the tank it asks for, the pressure, the roof."""
    return (*_balance(case), *_tank(case), *_pressure(case), *_rain(case))


def _balance(case: Case) -> Iterator[Step]:
    day, run = case.worst, case.shown
    yield Step(
        "Used in the day",
        "D = U + W",
        {"U": Value(sum(day.used), "volume"), "W": Value(sum(day.watered), "volume")},
        Value(day.use, "volume"),
        note="U by the pattern of the day, W in the hours of watering.",
    )
    yield Step(
        "The level at the end of the day",
        "v_1 = v_0 + S - (D - M) - O",
        {
            "v_0": Value(run.levels[0], "volume"),
            "S": Value(day.supply, "volume"),
            "D": Value(day.use, "volume"),
            "M": Value(sum(run.missing), "volume"),
            "O": Value(sum(run.over), "volume"),
        },
        Value(run.levels[-1], "volume"),
        note="S comes in, M is missing, O runs over. The flows are steady within each piece of the "
        "day, so the level runs straight between its ends, held between the reserve and full."
        + (" The day begins with a full tank." if case.by_rain else " The day repeats."),
        source="Conservation",
    )


def _tank(case: Case) -> Iterator[Step]:
    day = case.judged
    if day is None or day.swing is None:
        return
    swing = Value(day.swing, "volume")
    yield Step(
        "What the tank must give",
        note="What is missing from a full tank is added up through the day: the use less what "
        "comes in, and never below nothing. The most that is ever missing is what the tank must "
        "give above its reserve.",
        result=swing,
        source="Mass curve: W. Rippl, Proc. Inst. Civ. Eng. 71 (1883)",
    )
    yield Step(
        "Tank that carries the day",
        "V = (V_kept + V_swing / 0.9) / u",
        {
            "V_kept": Value(case.kept, "volume"),
            "V_swing": swing,
            "u": Value(case.values.usable, "percent"),
        },
        Value(case.day_tank, "volume"),
        note="u is the share of the tank that can be used; a tenth is left to spare (our choice).",
    )


def _pressure(case: Case) -> Iterator[Step]:
    if case.raised <= 0:
        return
    line = case.line
    high, lost = case.height(case.low), line.loss(case.flow)
    yield Step(
        "Height of the low water above the tank's outlet",
        "d = d_full * v / V_full",
        {
            "d_full": Value(case.deep, "length"),
            "v": Value(case.low, "volume"),
            "V_full": Value(case.volume, "volume"),
        },
        Value(high, "length"),
    )
    yield Step(
        "Pressure at the outlet with the tank low",
        "p = rho * g * (z + d - h_f)",
        {
            "rho": Value(line.weight / GRAVITY, "density", 4),
            "g": Value(GRAVITY, "number", 6),
            "z": Value(case.raised, "length"),
            "d": Value(high, "length"),
            "h_f": Value(lost, "head"),
        },
        Value(line.weight * (case.raised + high - lost), "pressure"),
        note="h_f is lost in the pipe at the largest flow of an hour, or that of one open outlet.",
        source="Hydrostatics; friction by Darcy-Weisbach with Colebrook (1939)",
    )


def _rain(case: Case) -> Iterator[Step]:
    year = case.year
    if year is None:
        return
    values = case.values
    yield Step(
        "Rain from the roof in a year",
        "R = A * c * h",
        {
            "A": Value(values.roof, "area"),
            "c": Value(values.runoff, "percent"),
            "h": Value(sum(row.rain for row in values.months), "rain"),
        },
        Value(sum(year.rain), "volume"),
        note="A is the roof seen from above, c what reaches the tank, h the rain of the months.",
    )
    if year.least is not None:
        yield Step(
            "Tank that carries the year",
            "V = (V_kept + D + V_year) / u",
            {
                "V_kept": Value(case.kept, "volume"),
                "D": Value(case.dry.use, "volume"),
                "V_year": Value(year.least, "volume"),
                "u": Value(values.usable, "percent"),
            },
            Value(case.year_tank, "volume"),
            note="V_year is the most that is ever missing, month by month. A day's use D is left "
            "for the days within a month (our choice).",
        )


# Tables --------------------------------------------------------------------------------------


def tables(case: Case) -> tuple[Table, ...]:
    """The day hour by hour, pressure by the level, both days side by side, the months."""
    found = [_hours(case)]
    if case.raised > 0:
        found.append(_levels(case))
    if not case.alike:
        found.append(_both(case))
    if case.year is not None:
        found.append(_months(case))
    return tuple(found)


def _hours(case: Case) -> Table:
    day, run = case.worst, case.shown
    rows: list[Cells] = []
    marked = []
    for hour in range(24):
        low, high = hour * HOUR, (hour + 1) * HOUR
        inside = [at for at, one in enumerate(day.pieces) if low <= one.start + 1e-6 < high]
        comes = sum(day.comes[at] for at in inside)
        given = sum(day.asked[at] - run.missing[at] for at in inside)
        if sum(run.missing[at] for at in inside) > 1e-9 * day.use:
            marked.append(hour)
        rows.append((f"{clock(low)} to {clock(high)}", comes, given, run.levels[inside[-1] + 1]))
    columns = (
        Column("Hour"),
        Column("Comes in", "volume"),
        Column("Is given", "volume"),
        Column("Then in the tank", "volume"),
    )
    note = "Marked: hours in which water is asked for in vain." if marked else ""
    title = f"{KIND[day.key == DRY]}, hour by hour"
    return Table(title, columns, tuple(rows), tuple(marked), (), note)


def _levels(case: Case) -> Table:
    """The pressure at falling levels, and how high an outlet then has enough."""
    weight, wanted = case.line.weight, case.values.wanted
    named = [("Full", case.volume), ("Half", case.volume / 2), ("Lowest", case.low)]
    if case.kept > HAIR:
        named.append(("Reserve", case.kept))
    named.sort(key=lambda one: -one[1])
    rows: list[Cells] = []
    dimmed = []
    for at, (name, level) in enumerate(named):
        pressure = case.pressure(level, case.flow)
        if pressure < wanted * (1 - HAIR):
            dimmed.append(at)
        rows.append((name, level, max(0.0, pressure), (pressure - wanted) / weight))
    columns = (
        Column("Tank"),
        Column("Water in it", "volume"),
        Column("Pressure at the outlet", "pressure"),
        Column("Highest outlet with enough", "length"),
    )
    note = "The last column is counted up from your outlet, on the same pipe; below it has a minus "
    note += "sign. Outlets that are higher fail first as the tank empties."
    title = "The level, and which outlets still have enough"
    return Table(title, columns, tuple(rows), (), tuple(dimmed), note)


def _both(case: Case) -> Table:
    def row(name: str, of: Callable[[Day], float]) -> Cells:
        return (name, of(case.usual), of(case.dry))

    def least(day: Day) -> float:
        return min(day.run.levels)

    rows = (
        row("Comes in", lambda day: day.supply),
        row("Asked for", lambda day: day.use),
        row("Missing", missing),
        row("Runs over", lambda day: sum(day.run.over)),
        row("Lowest in the tank", least),
    )
    columns = (
        Column("In a day that repeats"),
        Column("Usual day", "volume"),
        Column("Dry month’s day", "volume"),
    )
    return Table("Both kinds of day", columns, rows)


def _months(case: Case) -> Table:
    year = case.year
    rows: list[Cells] = []
    marked = []
    for at, name in enumerate(MONTHS):
        lost = year.run.missing[at]
        if lost > HAIR:
            marked.append(at)
        rows.append((f"{name}, {DAYS_OF[at]} days", year.comes[at], year.asked[at] - lost,
                     year.run.levels[at + 1]))  # fmt: skip
    columns = (
        Column("Month"),
        Column("Comes in", "volume"),
        Column("Is given", "volume"),
        Column("Then in the tank", "volume"),
    )
    note = "Marked: months in which the tank runs dry." if marked else ""
    return Table("The year by the month", columns, tuple(rows), tuple(marked), (), note)
