"""Figures, working and tables of the sprinkler sheet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.drip import sprinkler
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.sheets.sprinkler.judge import share
from calc.units import HOUR, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.answer import Cells
    from calc.sheets.sprinkler.case import Case
    from calc.units import Reader


def figures(case: Case, reader: Reader) -> tuple[Figure, ...]:
    """Hours, rate, zones, what the pump must give."""
    flow = reader.show(case.zone_flow, "flow")
    works = reader.show(case.one.works_pa, "pressure")
    number = "1 sprinkler" if case.in_zone == 1 else f"{case.in_zone} sprinklers"
    return (
        Figure("Hours on the busiest day", case.time / HOUR, "number", main=True,
               note=f"of {number_text(case.hours / HOUR)} you have"),
        Figure("Water given in an hour", case.rate * HOUR, "rain", note=_soil(case, reader)),
        Figure("Each zone runs in a watering", case.zone_time, "minutes",
               note=f"for {reader.show(case.given, 'rain')}"),
        Figure("Zones, one after another", case.zones, "number", digits=1,
               note=f"the largest: {number}, {flow}"),
        Figure("Sprinklers, all zones", case.count, "number", digits=1),
        Figure("Water needed a day", case.water, "volume"),
        Figure("Pressure they are rated at", case.rated, "pressure", note=f"works from {works}"),
        Figure("Distance over wetted diameter", case.spread, "percent", digits=2,
               note=f"up to {share(case.allowed)} in this wind"),
    )  # fmt: skip


def _soil(case: Case, reader: Reader) -> str:
    if case.soil is None:
        return "the soil is not known"
    return f"{case.soil.name.lower()} takes in {reader.show(case.soil.low * HOUR, 'rain')}"


def steps(case: Case) -> tuple[Step, ...]:
    """From one sprinkler to the hours of a day."""
    return *_one(case), *_water(case), *_zones(case)


def _one(case: Case) -> Iterator[Step]:
    each = Value(case.each, "flow")
    a, b = Value(case.along, "length"), Value(case.between, "length")
    yield Step(
        "Flow of one sprinkler at this pressure",
        "q = q_0 * sqrt(p / p_0)",
        {"q_0": Value(case.one.flow_m3s, "flow"), "p": Value(case.pressure, "pressure"),
         "p_0": Value(case.rated, "pressure")},
        each,
        source="Flow through a nozzle",
    )  # fmt: skip
    yield Step(
        "Depth of water given in an hour",
        "i = 3600 * q / (a * b)",
        {"q": each, "a": a, "b": b},
        Value(case.rate * HOUR, "rain"),
        note="a is the distance along a line, b from line to line; 3600 s in an hour.",
    )
    yield Step(
        "Greater distance over the wetted diameter",
        "s = max(a, b) / (2 * r)",
        {"a": a, "b": b, "r": Value(case.throws, "length")},
        Value(case.spread, "percent"),
        note="r is the wetted radius; below the least pressure it is counted at "
        f"{share(practice.SHORT_THROW)}.",
        source="Handbooks of sprinkling, from memory; the share: common practice, no source",
    )


def _water(case: Case) -> Iterator[Step]:
    given = Value(case.given, "rain")
    yield Step(
        "Depth given in a watering",
        "d = e_t * T / e",
        {"e_t": Value(case.depth, "rain"), "T": Value(case.every, "number"),
         "e": Value(case.reaches, "percent")},
        given,
        note="e_t is what plants take a day, T the days from watering to watering, e the share "
        "that reaches the roots. Rain is not counted.",
    )  # fmt: skip
    yield Step(
        "Time that a zone runs in a watering",
        "t = 3600 * d / i",
        {"d": given, "i": Value(case.rate * HOUR, "rain")},
        Value(case.zone_time, "minutes"),
    )


def _zones(case: Case) -> Iterator[Step]:
    whole = 1 + 1e-9  # a number typed in another unit is still met
    count, zones = Value(case.count, "number", 1), Value(case.zones, "number", 1)
    yield Step(
        "Sprinklers",
        "n = max(1, ceil(A / (a * b)))",
        {"A": Value(case.area / whole, "area"), "a": Value(case.along, "length"),
         "b": Value(case.between, "length")},
        count,
    )  # fmt: skip
    yield Step(
        "Zones that the source can feed",
        "Z = ceil(n / max(1, floor(Q / q)))",
        {"n": count, "Q": Value(case.flow * whole, "flow"), "q": Value(case.each, "flow")},
        zones,
    )
    yield Step(
        "Hours on the busiest day",
        "t_d = ceil(Z / T) * t / 3600",
        {"Z": zones, "T": Value(case.every, "number", 2), "t": Value(case.zone_time, "minutes")},
        Value(case.time / HOUR, "number"),
        note="The zones are spread over the days from watering to watering.",
    )


# Tables --------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """By soil, and by pressure."""
    return _soils(case), _pressures(case)


def _soils(case: Case) -> Table:
    rows: list[Cells] = []
    marked, dimmed = [], []
    for at, soil in enumerate(practice.SOILS):
        runs = case.rate > soil.high
        said = "runs off" if runs else "may run off" if case.rate > soil.low else "takes it in"
        rows.append((soil.name, soil.low * HOUR, soil.high * HOUR, said))
        if soil is case.soil:
            marked.append(at)
        if runs:
            dimmed.append(at)
    columns = (
        Column("Soil"),
        Column("Takes in, an hour", "rain", 2),
        Column("At best", "rain", 2),
        Column("With these sprinklers"),
    )
    note = "Level ground, wetted for a while. On a slope and on bare or trodden soil it is less."
    return Table("What soils take in", columns, tuple(rows), tuple(marked), tuple(dimmed), note)


def _pressures(case: Case) -> Table:
    """One sprinkler at pressures around those that count."""
    works, rated = case.one.works_pa, case.rated
    wanted = sorted({0.75 * works, works, rated, 1.25 * rated, case.pressure})
    rows: list[Cells] = []
    dimmed = []
    for at, pressure in enumerate(wanted):
        flow = case.one.at(pressure)
        rate = sprinkler.application_rate(flow, case.along, case.between)
        rows.append((pressure, flow, case.one.throws(pressure), rate * HOUR))
        if pressure < works:
            dimmed.append(at)
    columns = (
        Column("Pressure", "pressure"),
        Column("One gives", "flow"),
        Column("Wetted radius", "length"),
        Column("Given in an hour", "rain"),
    )
    at = wanted.index(case.pressure)
    note = "Pressures at which it does not work are dimmed."
    return Table("By pressure", columns, tuple(rows), (at,), tuple(dimmed), note)
