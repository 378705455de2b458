"""Water over the outlets, the pressures written over it, and the room to press each."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.hill.layout import TANK, source_x
from calc.page.shapes import SMALL, Block, Dot, Stroke, Words
from calc.page.text_boxes import ABOVE, BELOW, Board, Box, box_of, text_width

if TYPE_CHECKING:
    from calc.page.hill.layout import Layout
    from calc.page.hill.scene import Column
    from calc.page.shapes import Mark

HALF, SLIM = 5.0, 3.5  # units, half the width of a column, and in a crowd
BAR = 3.0  # units, that the bar of what is needed is wider on each side
STEP = 13.5  # units from one line of words to the next
GAP = 2.0  # units between words
LIFT = 3.0  # units between a column and the words over it
RISES = (0, 6, 12, 18, 24, 30, 40, 50, 60, 75, 90, 110, 140, 180, 240, 320)  # units above it
NEAR = 5  # of them, that words with a unit or a verdict may take
ROLES = {"bad": "bad", "tight": "tight", "good": "ink", "shut": "soft"}


Line = tuple[str, str, str]  # lead, text, role


@dataclass(frozen=True)
class Stack:
    """Lines of words over one another. lines: (lead, text, role), the top one first."""

    lines: tuple[Line, ...]

    @property
    def width(self) -> float:
        return max(_wide(lead, text) for lead, text, _ in self.lines)

    def words(self, x: float, bottom: float) -> list[Words]:
        """The words about x from the top down, the last line's lowest at ``bottom``."""
        found = []
        for number, (lead, text, role) in enumerate(reversed(self.lines)):
            y = bottom - BELOW * SMALL - number * STEP
            bold = bool(text) and role != "soft"
            found.append(
                Words(x, y, text or lead, "middle", role, bold, SMALL, lead if text else "")
            )
        return found[::-1]


def _wide(lead: str, text: str) -> float:
    return text_width(f"{lead} {text}".strip(), SMALL, bold=bool(text))


def half(layout: Layout) -> float:
    """Half the width of a column."""
    return SLIM if layout.crowd else HALF


def top_of(layout: Layout, column: Column) -> float:
    """y of the highest of a column: water before or after, or the bar."""
    over = max(column.before_m or 0.0, column.after_m, *column.needs_m, 0.0)
    return layout.y(layout.scene.by_key[column.stop].height_m + over)


def standing(layout: Layout, x: float, column: Column) -> list[Mark]:
    """The shapes of a column."""
    wide, foot = half(layout), layout.scene.by_key[column.stop].height_m
    low, role = layout.y(foot), ROLES[column.level]
    shapes: list[Mark] = []
    if column.before_m is not None:
        top = layout.y(foot + max(column.before_m, 0.0))
        shapes.append(_block(x, wide, top, low, "glass", "soft", "dashed", f"before {column.at}"))
    top = layout.y(foot + max(column.after_m, 0.0))
    fill = "bad" if column.level == "bad" else "glass" if column.level == "shut" else "water"
    edge = role if column.level != "good" else "ink"
    shapes.append(_block(x, wide, top, low, fill, edge, "solid", f"after {column.at}"))
    for number, need in enumerate(column.needs_m):
        y = layout.y(foot + need)
        ends = ((x - wide - BAR, y), (x + wide + BAR, y))
        mark = f"need {column.at}" + (f" {number + 1}" if number else "")
        shapes.append(Stroke(ends, "ink", width=2.0, at=mark))
    shapes.append(Dot(x, low, 3.0, role, hollow=True, at=f"outlet {column.at}"))
    return shapes


def _block(
    x: float, wide: float, top: float, low: float, role: str, edge: str, style: str, at: str
) -> Block:
    return Block(x - wide, top, 2 * wide, low - top, role, edge, style, 0.9, at=at)


def stacks(column: Column, unit: str) -> list[list[Stack]]:
    """Ways to write a column's pressures: with its word, without, the last one alone.

    unit: "" where it is said elsewhere.
    """
    role = ROLES[column.level]
    was = f"{column.before} →" if column.before_m is not None else ""
    now = f"{column.after}\u00a0{unit}" if unit else column.after
    line: tuple[Line, ...] = ((was, now, role),)
    ways = [line]
    if was:
        ways.append(((was, "", "soft"), ("", now, role)))
    said = [(("", word, role), *way) for way in ways for word in column.words]
    return [[Stack(way) for way in some] for some in (said, ways, [(("", now, role),)])]


@dataclass(frozen=True)
class Sky:
    """What is written over the columns. words: {column's name: its words}; unit: beside them."""

    words: dict[str, list[Words]]
    unit: bool
    board: Board


def pressures(layout: Layout) -> Sky:
    """The pressures, none on another, on a column or below the ground."""
    for unit in (layout.scene.unit, ""):
        board = _taken(layout)
        found = _written(layout, board, unit)
        if found is not None:
            return Sky(found, bool(unit), board)
    raise AssertionError("there is always room higher up")


def line(layout: Layout) -> list[Mark]:
    """The height to which water would rise, as far as it is over the ground."""
    height = layout.scene.line_m
    if height is None:
        return []
    y, last = layout.y(height), max((x for x, _ in columns(layout)), default=0.0) + 12.0
    end = next((x for x in range(0, int(last), 2) if layout.ground_at(x) < y), last)
    return [Stroke(((0.0, y), (float(end), y)), "water", "dotted", 1.4, at="level")]


def columns(layout: Layout) -> list[tuple[float, Column]]:
    """(x, column) of every column, from left to right."""
    items = zip(layout.xs, layout.items, strict=True)
    return [(x, item.column) for x, item in items if item.column is not None]


def _taken(layout: Layout) -> Board:
    """The sky with the columns, the pump, the well and the tanks in it."""
    board = Board(1e9, 1e9)  # only meetings count: the sky is as high as it must be
    wide, zero = half(layout) + BAR, layout.y(0.0)
    for x, column in columns(layout):
        foot = layout.y(layout.scene.by_key[column.stop].height_m)
        board.boxes.append(Box(x - wide, top_of(layout, column) - 1, x + wide, foot))
    if layout.scene.source.has_pump:
        x = source_x(layout.scene)
        board.boxes.append(Box(x - 9, zero - 15, x + 9, zero))
    if layout.scene.source.kind == "tank":
        board.boxes.append(Box(0.0, zero - 6, 35.0, zero + TANK))
    if layout.scene.source.has_well:
        level = min(zero, layout.y(layout.scene.source.level_m))
        board.boxes.append(Box(0.0, level - 6, 35.0, level + TANK))
    for x, item in zip(layout.xs, layout.items, strict=True):
        if item.kind == "tank":
            level = layout.y(layout.scene.by_key[item.key].height_m)
            board.boxes.append(Box(x - 14, level - 6, x + 14, level + TANK))
    return board


def _written(layout: Layout, board: Board, unit: str) -> dict[str, list[Words]] | None:
    """The words over every column, the failing ones first; None where a unit finds no room."""
    places = columns(layout)
    found: dict[str, list[Words]] = {}
    order = sorted(range(len(places)), key=lambda at: places[at][1].level != "bad")
    for at in order:
        x, column = places[at]
        left = places[at - 1][0] if at else 0.0
        right = places[at + 1][0] if at + 1 < len(places) else layout.far
        if layout.crowd:
            found[column.at] = [_turned(layout, board, x, column)]
            continue
        words = _over(layout, board, x, column, unit, left, right)
        if words is None and unit:
            return None
        found[column.at] = words or []
    return {column.at: found[column.at] for _, column in places}


def _over(
    layout: Layout, board: Board, x: float, column: Column, unit: str, left: float, right: float
) -> list[Words] | None:
    """The words over one column, in the room between its neighbours; None where there is none."""
    top = top_of(layout, column) - LIFT
    said, plain, last = stacks(column, unit)
    for ways, rises in (
        (said, RISES[:NEAR]),
        (plain, RISES[:NEAR] if unit else RISES),
        (last, RISES),
    ):
        if ways is last and unit:
            return None
        fitting = [way for way in ways if way.width <= right - left - 2 * GAP]
        for rise in rises:
            for stack in fitting:
                words = stack.words(_about(x, stack.width, left, right), top - rise)
                if _open(layout, board, words):
                    return _take(board, words)
    return None


def _about(x: float, wide: float, left: float, right: float) -> float:
    """The middle of words of a width, as near to x as there is room."""
    low, high = left + half_of(wide), right - half_of(wide)
    return min(max(x, low), high) if low <= high else (low + high) / 2


def half_of(wide: float) -> float:
    """Half a width and a gap."""
    return wide / 2 + GAP


def _turned(layout: Layout, board: Board, x: float, column: Column) -> Words:
    text = f"{column.after} {layout.scene.unit}"
    lead = f"{column.before} →" if column.before_m is not None else ""
    base, top = x + (ABOVE - BELOW) / 2 * SMALL, top_of(layout, column) - LIFT
    role = ROLES[column.level]
    for rise in RISES:
        bold = column.level != "shut"
        words = Words(base, top - rise, text, "start", role, bold, SMALL, lead, turned=True)
        if _open(layout, board, [words]):
            break
    return board.take(words)


def _open(layout: Layout, board: Board, words: list[Words]) -> bool:
    boxes = [box_of(one) for one in words]
    return all(
        box.bottom <= layout.crest(box.left, box.right) - 1
        and not any(map(box.grown(0.5).meets, board.boxes))
        for box in boxes
    )


def _take(board: Board, words: list[Words]) -> list[Words]:
    return [board.take(one) for one in words]
