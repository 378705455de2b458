"""Names and causes under the ground, each below what it names, off the pipes and one another."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Stroke, Words
from calc.page.text_boxes import ABOVE, BELOW, CUT, Board, Box, box_of, fitted, text_width

if TYPE_CHECKING:
    from calc.page.hill.layout import Layout
    from calc.page.shapes import Point

LINE = 13.5  # units from one line of words to the next
GAP = 2.5  # units between a name and what is beside it
STEP = 5.0  # units, that a name goes down to find a free place
MOST = 200  # steps down: there is a free place long before
LONGEST = 70.0  # units, above which a name is broken into lines
LINES, CAUSE_LINES = 4, 8  # of a name, of a cause, at most
TURNED = 125.0  # units, the longest of a name that runs upwards


@dataclass(frozen=True)
class Tag:
    """Words to place. x, y: what they name; left, right: what they may not pass.

    under: y that they keep below; spare: left out where there is no room near; cause: on more
    lines, not cut; below: the line that leads to it begins under the pipes.
    """

    x: float
    y: float
    text: str
    left: float = 0.0
    right: float = 0.0
    role: str = "ink"
    bold: bool = False
    under: float = 0.0
    spare: bool = False
    cause: bool = False
    below: bool = True
    key: str = ""


@dataclass(frozen=True)
class Placed:
    """Words where they are, and the line that leads to them, None where none is needed."""

    words: tuple[Words, ...]
    leader: Stroke | None
    bottom: float


def wrapped(text: str, room: float, bold: bool, most: int = LINES) -> list[str]:
    """``text`` in up to ``most`` lines of ``room`` units, cut with an ellipsis where it must be."""
    lines: list[str] = []
    for part in text.replace("-", "-\u200b").replace(" ", " \u200b").split("\u200b"):
        joined = (lines[-1] if lines else "") + part
        if lines and text_width(joined.strip(), SMALL, bold) <= room:
            lines[-1] = joined
        else:
            lines.append(part)
    if len(lines) > most:
        lines[most - 1 :] = ["".join(lines[most - 1 :])]
    return [fitted(line.strip(), room, SMALL, bold) for line in lines]


def placed(layout: Layout, board: Board, tag: Tag) -> Placed | None:
    """The words at the highest free place; None for a spare one without a place near."""
    room = tag.right - tag.left - 2 * GAP
    most, longest = (CAUSE_LINES, room) if tag.cause else (LINES, LONGEST)
    bold, lines = tag.bold, wrapped(tag.text, min(room, longest), tag.bold, most)
    if bold and any(line.endswith(CUT) for line in lines):  # a lighter hand is narrower
        bold, lines = False, wrapped(tag.text, min(room, longest), False, most)
    wide = max(text_width(line, SMALL, bold) for line in lines)
    middle = min(max(tag.x, tag.left + GAP + wide / 2), tag.right - GAP - wide / 2)
    left, right = middle - wide / 2, middle + wide / 2
    first = max(layout.deep(left - 1, right + 1), tag.under, tag.y + 4.0) + GAP
    top, high = first, (len(lines) - 1) * LINE + (ABOVE + BELOW) * SMALL
    start = max(tag.y, layout.deep(tag.x - 0.5, tag.x + 0.5)) + 1.0 if tag.below else tag.y + 1.0
    for _ in range(MOST):
        box = Box(left, top, right, top + high)
        led = top - start > 8.0
        if _free(board, box, (tag.x, start), led):
            break
        top += STEP
        if tag.spare and top > first + 40.0:
            return None
    words = tuple(
        Words(middle, top + ABOVE * SMALL + number * LINE, line, "middle", tag.role, bold,
              SMALL, at=f"{tag.key} name {number + 1}" if tag.key else "")
        for number, line in enumerate(lines)
    )  # fmt: skip
    for one in words:
        board.take(one)
    leader = None
    if led:
        ends = ((tag.x, start), (tag.x, top - 1.0))
        board.line(ends, 1.0)
        leader = Stroke(ends, tag.role if tag.role == "bad" else "soft", "dotted", 1.0)
    return Placed(words, leader, box.bottom)


def _free(board: Board, box: Box, start: Point, led: bool) -> bool:
    grown = box.grown(GAP / 2)
    if any(map(grown.meets, board.boxes)):
        return False
    for points, half in board.lines:
        cut = box.grown(half)
        if any(cut.cut_by(a, b) for a, b in zip(points, points[1:], strict=False)):
            return False
    end = (start[0], box.top)
    return not led or not any(one.cut_by(start, end) for one in board.boxes)


def turned(layout: Layout, board: Board, tag: Tag) -> Placed:
    """The words running upwards, their end under what they name."""
    bold = tag.bold and text_width(tag.text, SMALL, bold=True) <= TURNED
    text = fitted(tag.text, TURNED, SMALL, bold)
    base = tag.x + (ABOVE - BELOW) / 2 * SMALL
    reach = (ABOVE + BELOW) / 2 * SMALL
    top = max(layout.deep(tag.x - reach, tag.x + reach), tag.under, tag.y + 4.0) + GAP
    words = Words(
        base, top, text, "end", tag.role, bold, SMALL, turned=True, at=f"{tag.key} name 1"
    )
    board.take(words)
    return Placed((words,), None, box_of(words).bottom)


def over(layout: Layout, board: Board, tag: Tag) -> Placed | None:
    """The words just over the ground, in one line or in two; None where that is not free."""
    for room in (tag.right - tag.left, 0.6 * text_width(tag.text)):
        lines = wrapped(tag.text, room, tag.bold, 2)
        if any(line.endswith(CUT) for line in lines):
            continue
        wide = max(text_width(line, SMALL, tag.bold) for line in lines)
        for left in (tag.x - wide / 2, tag.x - wide + 4.0, tag.x - 4.0):
            middle, high = left + wide / 2, (len(lines) - 1) * LINE
            low = layout.crest(left, left + wide) - 4.0 - BELOW * SMALL
            words = tuple(
                Words(middle, low - high + number * LINE, line, "middle", tag.role, size=SMALL)
                for number, line in enumerate(lines)
            )
            boxes = [box_of(one).grown(GAP / 2) for one in words]
            if low > tag.y - 16.0 and all(map(board.free, boxes)):
                return Placed(tuple(map(board.take, words)), None, low)
    return None
