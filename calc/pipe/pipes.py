"""Real pipe: nominal size, outside and inside diameter, rating and its loss with heat.

The bore is the outside diameter less twice the wall the standard names: the minimum wall
for plastics and the nominal wall for metals, so that friction is for the widest bore a
new plastic pipe may have and a typical metal one; hoses are by bore.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.pipe.tables import TABLES
from calc.units import INCH

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.pipe.tables import PipeTable, Row


@dataclass(frozen=True)
class Pipe:
    """One size of one kind. Lengths in m, rating in Pa (None: none stated) at ``rating_at_k`` K."""

    kind: str
    kind_label: str
    size: str
    name: str  # of the size: "1 1/4 in"
    label: str
    outside_m: float
    inside_m: float
    rating_pa: float | None
    rating_at_k: float
    roughness_m: float
    hazen_williams_c: float
    source: str
    hot: bool = False  # its kind is made for hot distribution pipe
    heat_note: str = ""  # what to know of the hottest its kind may get


KINDS = {table.key: table.label for table in TABLES}
_TABLE = {table.key: table for table in TABLES}


@cache
def sizes(kind: str) -> tuple[Pipe, ...]:
    """Every size of a kind, smallest bore first.

    kind: a key of ``KINDS``.  Returns a tuple of ``Pipe``.  Raises InputError if unknown.
    """
    if kind not in _TABLE:
        raise InputError(f"“{kind}” is not a kind of pipe known here.", name="kind")
    table = _TABLE[kind]
    return tuple(sorted((_pipe(table, row) for row in table.rows), key=lambda p: p.inside_m))


def _pipe(table: PipeTable, row: Row) -> Pipe:
    size, name, outside, wall, rating = row
    return Pipe(
        table.key,
        table.label,
        size,
        name,
        f"{name} {table.short}",
        outside,
        outside - 2 * wall,
        rating,
        table.rating_at_k,
        table.roughness_m,
        table.hazen_williams_c,
        table.source,
        table.hot,
        table.heat_note,
    )


def pipe(kind: str, size: str) -> Pipe:
    """One size of a kind. Raises InputError, naming "kind" or "size", if there is none."""
    for candidate in sizes(kind):
        if candidate.size == size:
            return candidate
    raise InputError(f"“{size}” is not a size of {KINDS[kind]}.", name="size")


def own_pipe(bore_m: float, roughness_m: float) -> Pipe:
    """A pipe by its measured bore and roughness (m); no rating is known.

    bore_m: 1 mm to 1 m; roughness_m: 0 to 5 % of the bore.  Raises RangeError outside.
    """
    require("bore_m", bore_m, 1e-3, 1.0, "diameter", "Measure the inside diameter.")
    remedy = "Choose a smoother surface, or a pipe with a wider inside diameter."
    require("roughness_m", roughness_m, 0.0, 0.05 * bore_m, "roughness", remedy)
    label = f"{bore_m * 1e3:.4g} mm bore ({bore_m / INCH:.3g} in)"
    return Pipe(
        "own", "Measured bore", "own", label, label, bore_m, bore_m, None, 293.15, roughness_m,
        140.0, "bore and roughness as given",
    )  # fmt: skip


def rating_at(pipe: Pipe, temperature_k: float) -> float:
    """Pressure rating at a water temperature, by the standard's reduction with heat.

    Straight lines between the table's points; below the first point the first factor.
    pipe: ``Pipe`` with a rating; temperature_k: K, 273.15 up to the last point of the table
    (``hottest_k``).
    Returns Pa.  Raises RangeError above it: the kind may not carry water so hot.
    """
    if pipe.rating_pa is None:
        raise InputError("No rating is known for this pipe.", name="pipe")
    points = _TABLE[pipe.kind].derating
    remedy = f"{pipe.kind_label} may not carry water hotter than that. {pipe.heat_note}".strip()
    hottest = points[-1][0] + 1e-9  # a limit typed in another unit is still met
    require("temperature_k", temperature_k, 273.15, hottest, "temperature", remedy)
    return pipe.rating_pa * _between(points, temperature_k)


def hottest_k(pipe: Pipe) -> float | None:
    """The hottest a pipe's kind may get, K; None where no rating is known."""
    return None if pipe.rating_pa is None else _TABLE[pipe.kind].derating[-1][0]


def too_hot(pipe: Pipe, heat_k: float, water_k: float) -> bool:
    """Whether a pipe gets hotter than its kind may, or carries hot water and is not made for it.

    heat_k: the hottest the pipe gets, K; water_k: of its water, K.  False where nothing is known.
    Raises nothing.  Source: ``derating`` tables; hot water: ``practice.HOT_RATED``.
    """
    limit = hottest_k(pipe)
    if limit is None:
        return False
    return heat_k > limit + 1e-9 or (water_k > practice.HOT_FROM + 1e-9 and not pipe.hot)


def _between(points: Sequence[tuple[float, float]], x: float) -> float:
    if x <= points[0][0]:
        return points[0][1]
    for (x0, y0), (x1, y1) in itertools.pairwise(points):
        if x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    return points[-1][1]


def hoop_rating(design_stress_pa: float, outside_m: float, wall_m: float) -> float:
    """Pressure that brings a wall to its design stress.

    p = 2 S t / (D - t)
    design_stress_pa: Pa; outside_m, wall_m: m.  Returns Pa.
    Source: ISO 161-1 and ASTM D1785 appendix X1 (the same relation).

    >>> from calc.units import PSI
    >>> round(hoop_rating(2000 * PSI, 1.315 * INCH, 0.133 * INCH) / PSI)
    450
    """
    return 2 * design_stress_pa * wall_m / (outside_m - wall_m)
