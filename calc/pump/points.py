"""The points of a pump's table: what one row says, what is wrong with several, the best of them."""

from dataclasses import dataclass

from calc.errors import InputError
from calc.units import GRAVITY

POINT_DENSITY = 998.2  # kg/m3, clean cold water near 20 degC, in which makers test


Share = tuple[float, float]  # flow m3/s, efficiency -


@dataclass(frozen=True)
class Point:
    """One row: flow (m3/s), head (m), and where given efficiency (share), powers (W), NPSH (m).

    ``power`` is what the motor or controller draws; ``shaft_power`` what the
    pump's shaft takes; ``row`` is the row of the table, to name in an error.
    """

    flow: float
    head: float
    efficiency: float | None = None
    power: float | None = None
    shaft_power: float | None = None
    npsh: float | None = None
    row: int = 0


@dataclass(frozen=True)
class BestPoint:
    """Where the efficiency is highest.

    ``at_end``: the table stops there, the true best may lie beyond.
    """

    flow: float
    efficiency: float
    at_end: bool


def efficiency(point: Point) -> float | None:
    """Share of the power that ends in the water, given or from the power; None without either."""
    if point.efficiency is not None:
        return point.efficiency
    power = point.shaft_power or point.power
    return POINT_DENSITY * GRAVITY * point.flow * point.head / power if power else None


def vertex(left: Share, middle: Share, right: Share) -> BestPoint:
    """Top of the parabola through three (flow, share) points."""
    (x0, y0), (x1, y1), (x2, y2) = left, middle, right
    first, second = (y1 - y0) / (x1 - x0), (y2 - y1) / (x2 - x1)
    bend = (second - first) / (x2 - x0)
    if bend >= 0:
        return BestPoint(x1, y1, False)
    flow = (x0 + x1) / 2 - first / (2 * bend)
    flow = min(max(flow, x0), x2)
    share = y0 + first * (flow - x0) + bend * (flow - x0) * (flow - x1)
    return BestPoint(flow, share, False)


def check(points: tuple[Point, ...]) -> None:
    """Raise InputError, naming the row, where points are no falling curve."""
    if len(points) < 3:
        raise InputError(
            f"The table has {len(points)} points. A curve needs three or more: add rows."
        )
    for point in points:
        for value in (point.flow, point.head):
            if not 0 <= value < 1e6:
                raise InputError(f"{_row(point, points)} has a flow or head below zero. Check it.")
    for before, after in zip(points, points[1:], strict=False):
        if after.flow == before.flow:
            raise InputError(
                f"{_row(before, points)} and {_row(after, points).lower()} have the same flow. "
                "Leave one of them out."
            )
        if after.head >= before.head:
            how = "more head" if after.head > before.head else "the same head"
            raise InputError(
                f"{_row(after, points)} gives {how} at a larger flow than "
                f"{_row(before, points).lower()}. The curve must fall all the way, or one head "
                "belongs to two flows: check the figures, or leave one of the two rows out."
            )


def _row(point: Point, points: tuple[Point, ...]) -> str:
    return f"Row {point.row or points.index(point) + 1}"
