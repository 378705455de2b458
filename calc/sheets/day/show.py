"""Figures, working, tables and the chart of a supply's day."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.day_tank import MORNING
from calc.network.day_run import NONE
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.day.case import HAIR, comes
from calc.sheets.parts.clock import clock
from calc.units import DAY, GRAVITY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.network.day_run import Step as Part
    from calc.page.answer import Cells
    from calc.sheets.day.case import Case
    from calc.units import Reader

MOST_LINES = 3  # of the chart


def figures(case: Case) -> tuple[Figure, ...]:
    """The lowest level, what is missing, the weakest outlet, the pump's hours and starts."""
    return (*_levels(case), *_water(case), *_pump(case))


def _levels(case: Case) -> Iterator[Figure]:
    for at, tank in enumerate(case.tanks):
        least, when = case.run.lowest(at)
        yield Figure(f"Lowest in {tank.name}", max(least, 0.0), "volume", note=f"at {clock(when)}",
                     main=at == case.lowest_share and not case.missing)  # fmt: skip


def _water(case: Case) -> Iterator[Figure]:
    if case.missing:
        yield Figure("Not served a day", case.missing, "volume", main=True,
                     note="of what outlets ask for at the pressure they need")  # fmt: skip
    weakest = _weakest(case)
    if weakest is not None:
        name, pressure, when = weakest
        yield Figure("Least pressure", max(pressure, 0.0), "pressure",
                     main=not case.missing and not case.tanks,
                     note=f"{name}, at {clock(when)}")  # fmt: skip
    yield Figure("Drawn a day", sum(case.run.given), "volume")


def _weakest(case: Case) -> tuple[str, float, float] | None:
    """(name, Pa, s) of the outlet with the least share of the pressure it needs."""
    found = []
    for name in case.used:
        least = case.run.least(name)
        if least is not None:
            needed = max(case.run.flows.network.outlets_by_name[name].content_pa, 1.0)
            found.append((least[0] / needed, name, least[0], least[2]))
    return min(found)[1:] if found else None


def _pump(case: Case) -> Iterator[Figure]:
    if not case.pumped:
        return
    yield Figure("Pump runs a day, hours", case.run.pump_time / HOUR, "number")
    yield Figure("Pump starts a day", len(case.run.starts), "number")
    if case.limited:
        least, when = case.run.lowest(len(case.tanks))
        yield Figure("Lowest at the source", max(least, 0.0), "volume", note=f"at {clock(when)}")


# Working -------------------------------------------------------------------------------------


def steps(case: Case) -> tuple[Step, ...]:
    """The balance of tanks and source, level and pressure from a volume, how it was followed."""
    return (*_followed(case), *_balance(case), *_level(case), *_pressure(case), *_stored(case))


def _followed(case: Case) -> Iterator[Step]:
    yield Step(
        "How the day is followed",
        note="The day is cut wherever an outlet opens or closes, power comes or goes, a tank is "
        "full or empty, or a switch acts. Between cuts the whole supply is solved at levels an "
        "eighth of the depth apart or nearer, the flows are taken as straight between these, and "
        "the levels follow from them. The days are repeated until they no longer change.",
        source="Continuity; Bogacki and Shampine (1989), from memory",
    )


def _balance(case: Case) -> Iterator[Step]:
    tanks, drawn = len(case.tanks), sum(case.run.given)
    yield Step(
        "Drawn on the mean of the day",
        "Q = G / T",
        {"G": Value(drawn, "volume"), "T": Value(DAY, "time")},
        Value(drawn / DAY, "flow"),
    )
    if drawn <= HAIR:
        return
    yield Step(
        "Drawn in the day, by the balance of source and tanks",
        "G = V_0 + P - V_1" if tanks else "G = P",
        {
            **({"V_0": Value(sum(case.run.begins[:tanks]), "volume")} if tanks else {}),
            "P": Value(case.came, "volume"),
            **({"V_1": Value(sum(case.run.ends[:tanks]), "volume")} if tanks else {}),
        },
        Value(drawn, "volume"),
        note="P is pumped or comes from the source; V is in all tanks, at the beginning and the "
        "end of the day. Full tanks take no more: their float valves close."
        + (" The day repeats." if case.repeats else ""),
        source="Conservation",
    )


def _level(case: Case) -> Iterator[Step]:
    if not case.tanks:
        return
    tank = case.tanks[case.lowest_share]
    least, when = case.run.lowest(case.lowest_share)
    yield Step(
        f"Lowest level of {tank.name}",
        "z = z_f + d * V / V_full",
        {
            "z_f": Value(tank.floor_m, "length"),
            "d": Value(tank.depth_m, "length"),
            "V": Value(max(least, 0.0), "volume"),
            "V_full": Value(tank.volume_m3, "volume"),
        },
        Value(tank.level_m(max(least, 0.0)), "length"),
        note=f"Above the pump, at {clock(when)}. Its walls are taken as upright.",
    )


def _pressure(case: Case) -> Iterator[Step]:
    weakest = _weakest(case)
    if weakest is None:
        return
    name, pressure, when = weakest
    network = case.built.before
    height = network.heights[network.outlets_by_name[name].node]
    yield Step(
        f"Least pressure at {name}",
        "p = rho * g * (H - z)",
        {
            "rho": Value(network.weight / GRAVITY, "density", 4),
            "g": Value(GRAVITY, "number", 6),
            "H": Value(pressure / network.weight + height, "head"),
            "z": Value(height, "length"),
        },
        Value(pressure, "pressure"),
        note=f"H is the head there of the solved supply, at {clock(when)}.",
        source="Hydrostatics; friction by Darcy-Weisbach with Colebrook (1939)",
    )


def _stored(case: Case) -> Iterator[Step]:
    run = case.run
    if not case.limited or run.pumped <= HAIR:
        return
    yield Step(
        "Pumped in the day, by the balance of the source",
        "P = S_0 + y * T - R - S_1",
        {
            "S_0": Value(run.begins[-1], "volume"),
            "y": Value(case.plan.store.yield_m3s, "flow"),
            "T": Value(DAY, "time"),
            "R": Value(run.over, "volume"),
            "S_1": Value(run.ends[-1], "volume"),
        },
        Value(run.pumped, "volume"),
        note="S is stored at the source, at the beginning and the end of the day; R is what a full "
        "source does not take in.",
        source="Conservation",
    )


# Tables --------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """The day by the hour, and the outlets."""
    return (_hours(case, reader), _outlets(case))


def _hours(case: Case, reader: Reader) -> Table:
    rows: list[Cells] = []
    marked = []
    for hour in range(24):
        low, high = hour * HOUR, (hour + 1) * HOUR
        parts = [one for one in case.run.steps if low - 1e-3 <= one.start < high - 1e-3]
        came = sum((comes(s.rates) + comes(s.rates_then)) / 2 * (s.end - s.start) for s in parts)
        levels = [max(parts[-1].then[at], 0.0) for at in range(len(case.tanks))]
        said, failed = _worst(case, parts, reader)
        if failed:
            marked.append(hour)
        rows.append((f"{clock(low)} to {clock(high)}", came / HOUR, *levels, said))
    columns = (
        Column("Hour"),
        Column("Pump, mean" if case.pumped else "Source, mean", "flow"),
        *(Column(f"Then in {tank.name}", "volume") for tank in case.tanks),
        Column("Weakest outlet"),
    )
    note = "Marked: hours in which an outlet gets too little or nothing." if marked else ""
    return Table("The day by the hour", columns, tuple(rows), tuple(marked), (), note)


def _worst(case: Case, parts: list[Part], reader: Reader) -> tuple[str, bool]:
    """(the weakest outlet of some steps and what it has, whether that is too little)."""
    found, network = [], case.run.flows.network
    for part in parts:
        wanted = case.run.flows.wanted(part.state.counts)
        for at, one in enumerate(network.outlets):
            for rates in (part.rates, part.rates_then) if wanted[at] > 0 else ():
                nothing = rates.drawn[at] <= NONE * wanted[at]
                share = rates.pressures[at] / max(one.content_pa, 1.0)
                found.append((not nothing, share, one.name, rates.pressures[at]))
    if not found:
        return "none open", False
    some, share, name, pressure = min(found)
    if not some:
        return f"{name}: nothing", True
    return f"{name}: {reader.show(max(pressure, 0.0), 'pressure')}", share < 1 - 1e-6


def _outlets(case: Case) -> Table:
    rows: list[Cells] = []
    marked = []
    for at, name in enumerate(case.run.outlets):
        least = case.run.least(name)
        if least is None:
            continue
        if name in case.failing:
            marked.append(len(rows))
        pressure, _, when = least
        pair = (case.run.asked[at], case.run.given[at])
        rows.append((name, pair, max(pressure, 0.0), clock(when)))
    columns = (
        Column("Outlet"),
        Column("Asked for → given", "volume"),
        Column("Least pressure", "pressure"),
        Column("At"),
    )
    note = "An outlet asks for its flow at the pressure it needs; under more it draws more."
    if marked:
        note += " Marked: it gets too little or nothing at some time."
    return Table("The outlets over the day", columns, tuple(rows), tuple(marked), (), note)


# Chart ---------------------------------------------------------------------------------------


def charts(case: Case, reader: Reader) -> tuple[Chart, ...]:
    """What is in the tanks and at the source through the day; none where neither is known."""
    lines = [(tank.name, at) for at, tank in enumerate(case.tanks)][:MOST_LINES]
    if case.limited and len(lines) < MOST_LINES:
        lines.append(("the source", len(case.tanks)))
    if not lines:
        return ()
    times = [0.0, *(step.end for step in case.run.steps)]
    first = case.run.steps[0].held
    series = tuple(
        Series(
            name,
            tuple(when / HOUR for when in times),
            tuple(max(v, 0.0) for v in (first[at], *(s.then[at] for s in case.run.steps))),
        )
        for name, at in lines
    )
    least, when = case.run.lowest(lines[0][1])
    said = reader.show(max(least, 0.0), "volume")
    alt = f"What is in {' and '.join(name for name, _ in lines)} over a day: "
    alt += f"{lines[0][0]} is lowest at {clock(when)}, with {said}."
    label = f"Hours from {MORNING:g}:00"
    return (
        Chart("levels", "Water in store over the day", alt, label, "number", "In store", "volume",
              series),
    )  # fmt: skip
