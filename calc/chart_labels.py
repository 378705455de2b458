"""Where the words in a chart stand: by their dot or rule, off other words, dots and lines.

Pixels are counted from the top left corner of the plot.  The words are set in Vega-Lite, which
knows its scales only when it draws; they are worked out here in the same way.
"""

import math
from bisect import bisect_left
from dataclasses import dataclass

LETTER, LINE = 7.4, 15.0  # px; width of a bold letter of 13 px on the average, height of its line
DOT = 7.0  # px; a dot and its rim, from the middle
BESIDE = ((8, -8), (8, 16), (-8, -8), (-8, 16))  # px right and down of a dot, the best first
ALONG = (
    (0, -8),
    (1, -8),
    (0, 10),
    (1, 10),
)  # at the right end (0) or left end (1) of a rule; px down
EDGE = 4  # px between the left end of a rule and its words
TICKS = 10  # about so many steps divide a scale that is rounded outwards


@dataclass(frozen=True)
class Scale:
    """Values from ``low`` to ``high`` over ``pixels``."""

    low: float
    high: float
    pixels: float

    def at(self, value):
        return (value - self.low) / (self.high - self.low) * self.pixels


def scale(values, pixels):
    """From zero, or below, to the greatest, rounded outwards as d3-scale's "nice" does."""
    low, high = min([0.0, *values]), max([0.0, *values])
    if low == high:
        high = low + 1.0
    before = None
    while (step := _step((high - low) / TICKS)) != before:
        low, high = math.floor(low / step) * step, math.ceil(high / step) * step
        before = step
    return Scale(low, high, pixels)


def _step(share):
    """1, 2, 5 or 10 times a power of ten, whichever is nearest to ``share`` by ratio."""
    power = 10.0 ** math.floor(math.log10(share))
    steps = ((1, 2**0.5), (2, 10**0.5), (5, 50**0.5), (10, math.inf))
    return next(step for step, most in steps if share / power < most) * power


@dataclass(frozen=True)
class Box:
    """What a label covers."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other):
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )


def label_box(x, y, text, to_left):
    """Of ``text`` that ends (``to_left``) or begins at x, its middle at y."""
    long = LETTER * len(text)
    left = x - long if to_left else x
    return Box(left, y - LINE / 2, left + long, y + LINE / 2)


@dataclass(frozen=True)
class Plot:
    """What is drawn. lines: (xs, ys) with xs rising; dots, rules: (x, y, label), (y, label)."""

    width: float
    height: float
    lines: tuple
    dots: tuple
    rules: tuple

    def labels(self):
        """(places of the dots' labels as in ``BESIDE``, of the rules' as in ``ALONG``)."""
        taken = []
        dots = [Box(x - DOT, y - DOT, x + DOT, y + DOT) for x, y, _ in self.dots]
        beside, along = [], []
        for index, (x, y, label) in enumerate(self.dots):
            others = [*taken, *dots[:index], *dots[index + 1 :]]
            beside.append(self._best(BESIDE, others, taken, self._beside(x, y, label)))
        for y, label in self.rules:
            along.append(self._best(ALONG, [*taken, *dots], taken, self._along(y, label)))
        return beside, along

    def _beside(self, x, y, label):
        return lambda place: label_box(x + place[0], y + place[1], label, place[0] < 0)

    def _along(self, y, label):
        return lambda place: label_box(
            EDGE if place[0] else self.width, y + place[1], label, not place[0]
        )

    def _best(self, places, others, taken, box_at):
        """The first of the best places; its box is added to ``taken``."""
        best = min(places, key=lambda place: self._hidden(box_at(place), others))
        taken.append(box_at(best))
        return best

    def _hidden(self, box, others):
        """How much of a label would be lost: over the edge or on others counts most."""
        over = box.left < 0 or box.right > self.width + EDGE or box.top < 0
        over = over or box.bottom > self.height
        crossed = sum(_crosses(line, box) for line in self.lines)
        ruled = sum(box.top < y < box.bottom for y, _ in self.rules)
        return 10 * (over + sum(box.meets(other) for other in others)) + crossed + ruled


def _crosses(line, box):
    """Whether a line passes through a box, looked at every few pixels."""
    xs, ys = line
    steps = math.ceil((box.right - box.left) / LETTER)
    looks = (box.left + (box.right - box.left) * step / steps for step in range(steps + 1))
    return any(
        box.top < y < box.bottom for y in (_height(xs, ys, x) for x in looks) if y is not None
    )


def _height(xs, ys, x):
    """y of a line at x, None beside it."""
    if not xs or not xs[0] <= x <= xs[-1]:
        return None
    after = max(1, bisect_left(xs, x))
    if len(xs) == 1 or xs[after] == xs[after - 1]:
        return ys[after - 1]
    share = (x - xs[after - 1]) / (xs[after] - xs[after - 1])
    return ys[after - 1] + share * (ys[after] - ys[after - 1])
