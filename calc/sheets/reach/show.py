"""The figures, working, tables and chart of the sheet that asks if the water reaches."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, water
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.parts.line_judge import AIR, below_zero
from calc.sheets.parts.pipe_working import line_steps, rating_step, sections_table
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.page.form import Values
    from calc.sheets.reach.case import Case
    from calc.units import Reader

RUNNING, STATIC = "Running pressure at the outlet", "Static pressure at the outlet"
TOO_MUCH = "more than the pump gives"
LEVEL_WORDS = {"stop": "too weak", "care": "borderline", "note": "works", "": "comfortable"}


def figures(case: Case) -> tuple[Figure, ...]:
    """The key figures, what runs first."""
    line, flow = case.line, case.need.flow_m3s
    left, rise = line.left(flow), line.weight * line.rise_m
    stress = max(one.pressure_pa for one in line.stresses())
    found = [
        Figure(RUNNING, left, "pressure", main=True, note=below_zero(left)),
        Figure(STATIC, line.static, "pressure", note=below_zero(line.static)),
        Figure("Gained by the drop" if rise < 0 else "Lost to the climb", abs(rise), "pressure"),
        Figure("Friction loss", line.loss(flow) * line.weight, "pressure"),
        Figure("Highest reach with no flow", line.reach_m, "head", note="above the start"),
        Figure("Water speed", line.speed(flow), "speed"),
        Figure("Maximum pressure in the pipe", stress, "pressure", note="with no flow"),
    ]
    if case.counted or line.highest_m is not None:
        least = line.crest(flow)
        note = "" if least >= 0 else below_zero(least) if least < -AIR else "below zero"
        found.append(Figure("Lowest pressure on the way", least, "pressure", note=note))
    return tuple(found)


def steps(case: Case, values: Values) -> tuple[Step, ...]:
    """The working, from the pressure at the start to that at the outlet."""
    line = case.line
    found = [
        Step(
            "The pressure at the start as a height of water",
            "H = p / (rho * g)",
            {
                "p": Value(line.start_pa, "pressure"),
                "rho": Value(water.density(line.temperature_k), "density", 4),
                "g": Value(GRAVITY, "number", 6),
            },
            Value(line.reach_m, "head"),
        )
    ]
    if not case.counted:
        found.append(
            Step(
                "Length with bends and valves",
                "L = L_pipe * (1 + a)",
                {"L_pipe": Value(values.length, "length"), "a": Value(case.extra, "percent")},
                Value(line.length_m, "length"),
            )
        )
    return (*found, *line_steps(line, case.need.flow_m3s), rating_step(line))


# Tables and chart ----------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """What may be open together, and the sections where they were given."""
    several = (sections_table(case.line, case.need.flow_m3s),) if case.counted else ()
    return (_outlets(case, reader), *several)


def _outlets(case: Case, reader: Reader) -> Table:
    """What is left for the usual things open together."""
    shower, hose = practice.SHOWER_FLOW, practice.HOSE_FLOW
    cases = (
        ("Nothing: static", 0.0),
        ("1 shower", shower),
        ("2 showers", 2 * shower),
        ("3 showers", 3 * shower),
        ("1 hose", hose),
        ("2 showers and a hose", 2 * shower + hose),
    )
    rows = tuple(_open_row(case, name, flow) for name, flow in cases)
    out = tuple(i for i, row in enumerate(rows) if row[2] is None)
    columns = (
        Column("Open together"),
        Column("Flow", "flow"),
        Column("Pressure at the outlet", "pressure"),
        Column("Result"),
    )
    a, b = reader.show(shower, "flow"), reader.show(hose, "flow")
    note = f"A shower is counted at {a}, a hose at {b}."
    return Table("What may be open together", columns, rows, dimmed=out, note=note)


def _open_row(case: Case, name: str, flow: float) -> Cells:
    need, left = case.need, case.line.left(flow)
    if case.most is not None and flow > case.most * (1 + 1e-9):
        return name, flow, None, TOO_MUCH
    if left < 0 or (left <= 0 < need.works_pa):
        return name, flow, None, "does not arrive"
    level = practice.enough(left, need.works_pa, need.comfortable_pa)
    return name, flow, left, LEVEL_WORDS[level]


def chart(case: Case) -> Chart:
    """Along the way where it was given section by section, else at each height."""
    return _along(case) if case.counted else _by_height(case)


def _along(case: Case) -> Chart:
    line = case.line
    running, still = line.points(case.need.flow_m3s), line.points(0.0)
    series = tuple(
        Series(name, tuple(p.distance_m for p in points), tuple(p.pressure_pa for p in points))
        for name, points in (("Running", running), ("Static, everything closed", still))
    )
    return Chart(
        "climb",
        "Pressure along the way",
        "Pressure against the distance from the start: a line for running water and one for still "
        "water, from section to section.",
        "Distance from the start",
        "length",
        "Pressure",
        "pressure",
        series,
        levels=((case.need.works_pa, "needed"),),
    )


def _by_height(case: Case) -> Chart:
    line, need = case.line, case.need
    top = max(line.reach_m, line.rise_m, 1.0) * 1.05
    bottom = min(0.0, line.rise_m)
    heights = tuple(bottom + (top - bottom) * i / 20 for i in range(21))
    loss = line.loss(need.flow_m3s)
    still = tuple(line.start_pa - line.weight * z for z in heights)
    running = tuple(line.start_pa - line.weight * (z + loss) for z in heights)
    return Chart(
        "climb",
        "Pressure at each height of the outlet",
        "Pressure at the outlet against its height: two straight falling lines, static and "
        "running; yours is marked on the running one.",
        "Climb from start to outlet",
        "length",
        "Pressure at the outlet",
        "pressure",
        (
            Series("Running, at your flow and length", *_above_zero(heights, running)),
            Series("Static, everything closed", *_above_zero(heights, still)),
        ),
        marks=((line.rise_m, max(line.left(need.flow_m3s), 0.0), "yours"),),
        levels=((need.works_pa, "needed"),),
    )


def _above_zero(
    heights: tuple[float, ...], pressures: tuple[float, ...]
) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """The points above zero, ended on the height where the line meets zero."""
    kept = [(z, p) for z, p in zip(heights, pressures, strict=True) if p >= 0]
    if kept and len(kept) < len(heights):
        after, below = heights[len(kept)], pressures[len(kept)]
        last, above = kept[-1]
        kept.append((last + (after - last) * above / (above - below), 0.0))
    return tuple(z for z, _ in kept), tuple(p for _, p in kept)
