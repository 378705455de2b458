"""A supply at one set of heads: what is out of balance, and how steeply it changes."""

from __future__ import annotations

import math

EPSILON = 2.0**-52  # share of a number that its last bit is


class Point:
    """Imbalances and slopes at one set of heads; norm: sum of imbalances, through: whole flow."""

    __slots__ = ("diagonal", "draws", "flows", "norm", "over", "through", "upper")

    def __init__(self, count: int, size: int) -> None:
        self.over, self.diagonal, self.upper = [0.0] * count, [0.0] * count, [0.0] * size
        self.flows: list[tuple[str, int, int, float, float]] = []
        self.draws: list[tuple[float, float]] = []
        self.norm = self.through = 0.0

    def copy(self) -> Point:
        """Another with the same numbers, to be added to."""
        made = Point(0, 0)
        made.over, made.diagonal, made.upper = self.over[:], self.diagonal[:], self.upper[:]
        made.flows, made.draws = self.flows[:], self.draws[:]
        return made

    def link(self, i: int, j: int, slot: int, flow: float, slope: float) -> None:
        self.over[i] += flow
        self.over[j] -= flow
        self.diagonal[i] += slope
        self.diagonal[j] += slope
        if slot >= 0:
            self.upper[slot] -= slope

    def rounding(self, heads: list[float]) -> float:
        """m3/s of imbalance that the last bits of the heads make, where slopes are steep."""
        return EPSILON * math.fsum(
            slope * abs(head) for slope, head in zip(self.diagonal, heads, strict=True)
        )

    def slope_along(self, change: list[float]) -> float:
        """Slope of the co-content along a change of heads, m4/s."""
        return math.fsum(map(float.__mul__, self.over, change))
