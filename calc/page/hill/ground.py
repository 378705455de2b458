"""The line of the ground, and how far up and down what is in it reaches."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.page.shapes import Point

CELL = 4  # units along, for which one height and one depth are kept


@dataclass(frozen=True)
class Ground:
    """A line through ``knots``, their x rising, that never over-shoots between two of them."""

    knots: tuple[Point, ...]

    @cached_property
    def _xs(self) -> list[float]:
        return [x for x, _ in self.knots]

    @cached_property
    def _slopes(self) -> list[float]:
        """At every knot.  Source: Fritsch and Carlson (1980), with harmonic means."""
        pairs = zip(self.knots, self.knots[1:], strict=False)
        steps = [(y1 - y0) / (x1 - x0) for (x0, y0), (x1, y1) in pairs]
        inner = [
            2 * before * after / (before + after) if before * after > 0 else 0.0
            for before, after in zip(steps, steps[1:], strict=False)
        ]
        return [0.0, *inner, 0.0]

    def at(self, x: float) -> float:
        """y at x, which is between the first knot and the last."""
        place = min(max(0, bisect_right(self._xs, x) - 1), len(self._xs) - 2)
        (x0, y0), (x1, y1) = self.knots[place], self.knots[place + 1]
        if y0 == y1:
            return y0
        wide = x1 - x0
        t = (x - x0) / wide
        rest = 1 - t
        value = rest * rest * ((1 + 2 * t) * y0 + t * wide * self._slopes[place])
        return value + t * t * ((3 - 2 * t) * y1 - rest * wide * self._slopes[place + 1])


class Reach:
    """The highest and the lowest of ground and pipes, cell by cell."""

    def __init__(self, ground: Ground, width: float) -> None:
        last = int(width) // CELL
        ys = [ground.at(min(width, float(at * CELL))) for at in range(last + 2)]
        self.roof = [min(pair) for pair in zip(ys, ys[1:], strict=False)]
        self.floor = [max(pair) + 3.0 for pair in zip(ys, ys[1:], strict=False)]
        for x, y in ground.knots:
            self.widen(x, x, y, y + 3.0)

    def widen(self, left: float, right: float, top: float, bottom: float) -> None:
        """Something reaches from ``top`` to ``bottom`` between two xs."""
        for at in self._cells(left, right):
            self.roof[at] = min(self.roof[at], top)
            self.floor[at] = max(self.floor[at], bottom)

    def line(self, points: tuple[Point, ...], half: float) -> None:
        """A pipe does, so thick on either side."""
        for (x0, y0), (x1, y1) in zip(points, points[1:], strict=False):
            top, bottom = (y0, y1) if y0 < y1 else (y1, y0)
            self.widen(x0 - half, x1 + half, top - half, bottom + half + 1.0)

    def crest(self, left: float, right: float) -> float:
        """The highest between two xs."""
        return min(self.roof[at] for at in self._cells(left, right))

    def deep(self, left: float, right: float) -> float:
        """The lowest between two xs."""
        return max(self.floor[at] for at in self._cells(left, right))

    def _cells(self, left: float, right: float) -> range:
        last = len(self.roof) - 1
        return range(
            min(last, max(0, int(left) // CELL)), min(last, max(0, int(right) // CELL)) + 1
        )
