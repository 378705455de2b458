"""Figures, chart, table and working of the keep_up sheet where there is no pump."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.static import NONE, highest_heads, highest_pressures
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.keep_up.judge import most_static
from calc.site.rows import SOURCE

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.sheets.keep_up.case import Case
    from calc.units import Reader


def figures(case: Case) -> tuple[Figure, ...]:
    """What is taken from the source, and the highest static pressure."""
    where, most = most_static(case)
    return (
        Figure("Taken from the source", case.after.supplied[SOURCE], "flow"),
        Figure("Highest static pressure", most, "pressure", note=f"at {where}"),
    )


def chart(case: Case, reader: Reader) -> tuple[Chart, ...]:
    """The pressure line down to the main outlet, over its pipe; none where nothing is open."""
    if case.main is None or not case.way:
        return ()
    network, still = case.after.network, highest_heads(case.after.network)
    along, xs = 0.0, []
    names = _points(case)
    for _, length in names:
        along += length
        xs.append(along)
    points = [name for name, _ in names]
    heights = tuple(network.heights[name] for name in points)
    running = tuple(case.after.heads[name] for name in points)
    standing = tuple(still[name] for name in points)
    left = reader.show(case.main.after.pressure_pa, "pressure")
    drop = reader.show(heights[0] - heights[-1], "length")
    return (
        Chart(
            "fall",
            "How high the water would rise",
            f"Heights along the pipe to {case.main.name}, {drop} below the water: the pipe, and "
            f"how high water would rise standing and running. {left} is left there.",
            "Along the pipe",
            "length",
            "Height",
            "length",
            (
                Series("Standing", tuple(xs), standing, "dashed"),
                Series("Running", tuple(xs), running),
                Series("Pipe", tuple(xs), heights),
            ),
        ),
    )


def _points(case: Case) -> list[tuple[str, float]]:
    """(point, m of pipe before it) on the way to the main outlet, open water first."""
    found: list[tuple[str, float]] = []
    for link in case.way:
        forward = case.after.flows[link.name] >= 0
        start, end = (link.start, link.end) if forward else (link.end, link.start)
        if not found:
            found.append((start, 0.0))
        found.append((end, getattr(link, "length_m", 0.0)))
    return found


def points(case: Case) -> Table:
    """Every point, with its static and running pressure."""
    network, still = case.after.network, highest_pressures(case.after.network)
    rows: list[Cells] = []
    for name in case.built.shown:
        if name in network.heights:
            high = network.heights[name]
            static = still[name] if still[name] > NONE else None
            rows.append((name, high, static, case.after.pressure(name)))
    columns = (
        Column("Point"),
        Column("Height", "length"),
        Column("With no flow", "pressure"),
        Column("Running", "pressure"),
    )
    return Table(
        "Every point",
        columns,
        tuple(rows),
        note="Heights as you counted them. Below zero, air comes in.",
    )


def standing(case: Case) -> Step:
    """The highest pressure while nothing runs."""
    where, most = most_static(case)
    network = case.after.network
    head = highest_heads(network)[where]
    return Step(
        f"Static pressure at {where}",
        "p = w * (H - z)",
        {
            "w": Value(case.weight, "number", 6),
            "H": Value(head, "length", 6),
            "z": Value(network.heights[where], "length", 6),
        },
        Value(most, "pressure"),
        note="w: weight of water, Pa per metre; H: level of the water it stands under.",
    )
