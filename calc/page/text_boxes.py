"""How much room words take, and finding a free place for them.

The page uses whatever sans-serif font a device has, so words are measured in the widest of those
that are likely.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, TEXT, Words

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.shapes import Point

    Spot = tuple[float, float, str]  # x, y of the base line, anchor

# Thousandths of the size that a character is wide, rounded up to the next 25.
# Source: advance widths of DejaVu Sans (2.37) and its bold, the widest of the fonts in the style
# sheet's list and of what systems fall back on
_PLAIN = {
    300: "'IJijl", 325: " \u00a0,.·’", 350: "/:;\\|", 375: "-f", 400: "!()[]t²³", 425: "r",
    475: '"', 500: "*_`–°", 525: "sz“”", 550: "?cç", 575: "FL", 600: "kvxy",
    625: "PTYaeoäöéøå", 650: "$0123456789ESbdghnpqu{}µüßñ", 675: "K", 700: "ABCRVXZ", 750: "NU",
    775: "DGH", 800: "&OQ", 825: "w", 850: "#+<=>^~−→×±≤≥", 875: "M", 950: "%", 975: "m½¼",
    1000: "@W…",
}  # fmt: skip
_BOLD = {
    325: "'", 350: " \u00a0ijl", 375: "/IJ\\|", 400: ",.:;·’", 425: "-", 450: "f²³",
    475: "!()[]", 500: "_`rt–°", 525: '"*', 600: "?cszç", 650: "Lx", 675: "akvy“”äå",
    700: "$0123456789EFTeoöéø", 725: "SYZbdghnpqu{}üßñ", 750: "CPµ", 775: "ABKRVX", 825: "GU",
    850: "#+<=>DHNOQ^~−→×±≤≥", 875: "&", 925: "w", 1000: "@M…", 1025: "%", 1050: "m½¼",
    1125: "W",
}  # fmt: skip
_WIDE = {
    bold: {ord(one): wide / 1000 for wide, ones in table.items() for one in ones}
    for bold, table in ((False, _PLAIN), (True, _BOLD))
}
_UNSEEN = str.maketrans("", "", "\u2068\u2069")  # isolates round words from right to left
OTHER = 1.25  # of the size, any other character; ours
PICTOGRAM = 1.5  # of the size, from here on: emoji and the like; ours
PICTOGRAMS = 0x1F000
ABOVE, BELOW = 0.78, 0.24  # of the size, tops of letters and tails over and under the base line
CUT = "…"


@lru_cache(maxsize=1024)
def text_width(text: str, size: float = TEXT, bold: bool = False) -> float:
    """The most that ``text`` is wide, in the unit of ``size``, the height of its type.

    Raises nothing.  Source: see ``_PLAIN``.
    """
    wide = _WIDE[bold]
    shares = (
        wide.get(one) or (PICTOGRAM if one >= PICTOGRAMS else OTHER)
        for one in map(ord, text.translate(_UNSEEN))
    )
    return size * sum(shares)


def fitted(text: str, room: float, size: float = TEXT, bold: bool = False) -> str:
    """``text``, cut with an ellipsis where it is wider than ``room``."""
    if text_width(text, size, bold) <= room:
        return text
    left = text
    while left and text_width(left + CUT, size, bold) > room:
        left = left[:-1]
    return left.rstrip() + CUT


@dataclass(frozen=True)
class Box:
    """What something covers."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Box) -> bool:
        """Whether the two have more than an edge in common."""
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )

    def within(self, other: Box) -> bool:
        """Whether no part of it is outside the other."""
        return (
            self.left >= other.left
            and self.right <= other.right
            and self.top >= other.top
            and self.bottom <= other.bottom
        )

    def grown(self, by: float) -> Box:
        """The box with so much more on every side."""
        return Box(self.left - by, self.top - by, self.right + by, self.bottom + by)

    def cut_by(self, start: Point, end: Point) -> bool:
        """Whether the straight line from ``start`` to ``end`` passes through it."""
        (x, y), (across, down) = start, (end[0] - start[0], end[1] - start[1])
        first, last = 0.0, 1.0
        for move, low, high in (
            (across, self.left - x, self.right - x),
            (down, self.top - y, self.bottom - y),
        ):
            if move == 0:
                if not low < 0 < high:
                    return False
                continue
            near, far = sorted((low / move, high / move))
            first, last = max(first, near), min(last, far)
        return first < last


def box_of(words: Words) -> Box:
    """The ``Box`` that a ``Words`` covers."""
    text = f"{words.lead} {words.text}" if words.lead else words.text
    wide = text_width(text, words.size, words.bold)
    before = {"start": 0.0, "middle": wide / 2, "end": wide}[words.anchor]
    above, below = ABOVE * words.size, BELOW * words.size
    if words.turned:
        bottom = words.y + before
        return Box(words.x - above, bottom - wide, words.x + below, bottom)
    left = words.x - before
    return Box(left, words.y - above, left + wide, words.y + below)


@dataclass
class Board:
    """What is taken of a sheet ``width`` by ``height``; words are placed where it is free.

    boxes: taken; lines: (points, half their width), not to be cut.
    """

    width: float
    height: float
    boxes: list[Box] = field(default_factory=list)
    lines: list[tuple[tuple[Point, ...], float]] = field(default_factory=list)

    def line(self, points: Iterable[Point], half: float = 1.0) -> None:
        """Keep words off a line."""
        self.lines.append((tuple(points), half))

    def free(self, box: Box) -> bool:
        """Whether a box is inside, meets nothing taken and is cut by no line."""
        inside = box.within(Box(0.0, 0.0, self.width, self.height))
        return inside and not any(map(box.meets, self.boxes)) and not self._cut(box)

    def _cut(self, box: Box) -> bool:
        grown = ((points, box.grown(half)) for points, half in self.lines)
        return any(
            one.cut_by(start, end)
            for points, one in grown
            for start, end in zip(points, points[1:], strict=False)
        )

    def take(self, words: Words) -> Words:
        """The words, their place taken."""
        self.boxes.append(box_of(words))
        return words

    def place(
        self,
        text: str,
        spots: Iterable[Spot],
        *,
        role: str = "ink",
        bold: bool = False,
        size: float = SMALL,
        lead: str = "",
        at: str = "",
    ) -> Words | None:
        """The words at the first of ``spots`` (x, y, anchor) that is free; None where none is."""
        for x, y, anchor in spots:
            words = Words(x, y, text, anchor, role, bold, size, lead, at=at)
            if self.free(box_of(words)):
                return self.take(words)
        return None


def around(x: float, y: float, off: float = 6.0, size: float = SMALL) -> tuple[Spot, ...]:
    """Spots for words about a mark at (x, y), ``off`` from it: above, below, right, left, corners.

    Raises nothing.
    """
    up, down, mid = y - off - BELOW * size, y + off + ABOVE * size, y + 0.27 * size
    return (
        (x, up, "middle"), (x, down, "middle"), (x + off, mid, "start"), (x - off, mid, "end"),
        (x + off / 2, up, "start"), (x - off / 2, up, "end"),
        (x + off / 2, down, "start"), (x - off / 2, down, "end"),
    )  # fmt: skip
