"""Where the words in a chart stand: by their dot or rule, off other words, dots and lines.

Pixels are counted from the top left corner of the plot.  The words are set in Vega-Lite, which
knows its scales only when it draws; they are worked out here in the same way.
"""

from __future__ import annotations

import itertools
import math
from bisect import bisect_left
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.text_boxes import Box, text_width

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from calc.page.answer import Chart

    Place = tuple[int, int]  # one of ``BESIDE`` or ``ALONG``
    Wanted = tuple[dict[Place, "Box"], list["Box"]]  # a label by place, what must stay free
    Line = tuple[Sequence[float], Sequence[float]]  # xs, ys; px

LOOK, LINE = 7.4, 15.0  # px; how often a line is looked at; height of a line of words
DOT = 7.0  # px; a dot and its rim, from the middle
BESIDE = ((8, -8), (8, 16), (-8, -8), (-8, 16))  # px right and down of a dot, the best first
# at the right end (0) or the left end (1) of a rule; px down of it
ALONG = ((0, -8), (1, -8), (0, 10), (1, 10))
EDGE = 4  # px between the left end of a rule and its words
TICKS = 10  # about so many steps divide a scale that is rounded outwards


@dataclass(frozen=True)
class Scale:
    """Values from ``low`` to ``high`` over ``pixels``."""

    low: float
    high: float
    pixels: float

    def at(self, value: float) -> float:
        return (value - self.low) / (self.high - self.low) * self.pixels


def scale(values: Iterable[float], pixels: float) -> Scale:
    """From zero, or below, to the greatest, rounded outwards as d3-scale's "nice" does."""
    low, high = min([0.0, *values]), max([0.0, *values])
    if low == high:
        high = low + 1.0
    before = None
    while (step := _step((high - low) / TICKS)) != before:
        low, high = math.floor(low / step) * step, math.ceil(high / step) * step
        before = step
    return Scale(low, high, pixels)


def _step(share: float) -> float:
    """1, 2, 5 or 10 times a power of ten, whichever is nearest to ``share`` by ratio."""
    power = 10.0 ** math.floor(math.log10(share))
    steps = ((1, 2**0.5), (2, 10**0.5), (5, 50**0.5), (10, math.inf))
    return next(step for step, most in steps if share / power < most) * power


def _label_box(x: float, y: float, text: str, to_left: bool) -> Box:
    """Of ``text`` that ends (``to_left``) or begins at x, its middle at y."""
    long = text_width(text, bold=True)
    left = x - long if to_left else x
    return Box(left, y - LINE / 2, left + long, y + LINE / 2)


def beside(x: float, y: float, text: str) -> dict[Place, Box]:
    """{place: the box of a dot's label there} for ``BESIDE``."""
    return {
        (right, down): _label_box(x + right, y + down, text, right < 0) for right, down in BESIDE
    }


def along(y: float, text: str, width: float) -> dict[Place, Box]:
    """{place: the box of a rule's label there} for ``ALONG``."""
    return {
        (left, down): _label_box(EDGE if left else width, y + down, text, not left)
        for left, down in ALONG
    }


TOGETHER = 3  # labels placed with regard to each other, the rest one by one; our choice


@dataclass(frozen=True)
class Plot:
    """What is drawn. lines: (xs, ys) with xs rising; dots, rules: (x, y, label), (y, label)."""

    width: float
    height: float
    lines: tuple[Line, ...]
    dots: tuple[tuple[float, float, str], ...]
    rules: tuple[tuple[float, str], ...]

    def labels(self) -> tuple[list[Place], list[Place]]:
        """(places of the dots' labels as in ``BESIDE``, of the rules' as in ``ALONG``)."""
        dots = [Box(x - DOT, y - DOT, x + DOT, y + DOT) for x, y, _ in self.dots]
        wanted = [
            (beside(*dot), [*dots[:index], *dots[index + 1 :]])
            for index, dot in enumerate(self.dots)
        ]
        wanted += [(along(y, label, self.width), dots) for y, label in self.rules]
        together = min(
            itertools.product(*(boxes for boxes, _ in wanted[:TOGETHER])),
            key=lambda tried: self._lost(tried, wanted),
        )
        taken = [boxes[place] for (boxes, _), place in zip(wanted, together, strict=False)]
        places = list(together)
        for boxes, others in wanted[TOGETHER:]:
            place = min(boxes, key=lambda one: self._hidden(boxes[one], [*taken, *others]))
            places.append(place)
            taken.append(boxes[place])
        return places[: len(dots)], places[len(dots) :]

    def _lost(self, places: tuple[Place, ...], wanted: list[Wanted]) -> int:
        """How much of the first labels would be lost with all of them so placed."""
        taken: list[Box] = []
        lost = 0
        for (boxes, others), place in zip(wanted, places, strict=False):
            lost += self._hidden(boxes[place], [*taken, *others])
            taken.append(boxes[place])
        return lost

    def _hidden(self, box: Box, others: Iterable[Box]) -> int:
        """How much of a label would be lost: over the edge or on others counts most."""
        over = box.left < 0 or box.right > self.width + EDGE or box.top < 0
        over = over or box.bottom > self.height
        crossed = sum(_crosses(line, box) for line in self.lines)
        ruled = sum(box.top < y < box.bottom for y, _ in self.rules)
        return 10 * (over + sum(box.meets(other) for other in others)) + crossed + ruled


def _crosses(line: Line, box: Box) -> bool:
    """Whether a line passes through a box, looked at every few pixels."""
    xs, ys = line
    steps = math.ceil((box.right - box.left) / LOOK)
    looks = (box.left + (box.right - box.left) * step / steps for step in range(steps + 1))
    return any(
        box.top < y < box.bottom for y in (_height(xs, ys, x) for x in looks) if y is not None
    )


def _height(xs: Sequence[float], ys: Sequence[float], x: float) -> float | None:
    """y of a line at x, None beside it."""
    if not xs or not xs[0] <= x <= xs[-1]:
        return None
    after = max(1, bisect_left(xs, x))
    if len(xs) == 1 or xs[after] == xs[after - 1]:
        return ys[after - 1]
    share = (x - xs[after - 1]) / (xs[after] - xs[after - 1])
    return ys[after - 1] + share * (ys[after] - ys[after - 1])


def plot(chart: Chart, width: float, height: float) -> Plot:
    """The ``Plot`` of a ``calc.page.answer.Chart`` whose numbers are those of its axes."""
    lines = [(series.xs, series.ys) for series in chart.series]
    xs = [x for line, _ in lines for x in line] + [x for x, _, _ in chart.marks]
    ys = [y for _, line in lines for y in line] + [y for _, y, _ in chart.marks]
    across, up = scale(xs, width), scale(ys + [y for y, _ in chart.levels], height)

    def down(y: float) -> float:
        return height - up.at(y)

    return Plot(
        width,
        height,
        tuple(([across.at(x) for x in xs], [down(y) for y in ys]) for xs, ys in lines),
        tuple((across.at(x), down(y), label) for x, y, label in chart.marks),
        tuple((down(y), label) for y, label in chart.levels),
    )
