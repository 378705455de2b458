"""A scene -> its drawing."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.drawing import touch
from calc.page.hill import sky, tags
from calc.page.hill.earth import RIM, ground, pipes, source, stops
from calc.page.hill.layout import WELL, WIDTH, laid_out, source_x
from calc.page.shapes import Drawing, Press, Stroke
from calc.page.text_boxes import CUT, Board, box_of

if TYPE_CHECKING:
    from calc.page.hill.layout import Layout
    from calc.page.hill.order import Item
    from calc.page.hill.scene import Column, Scene
    from calc.page.hill.tags import Placed
    from calc.page.shapes import Mark, Shape, Words

SKY = 4.0  # units over the highest of all
EARTH = 5.0  # units under the lowest
SIDE = 46.0  # units, the widest room to press one outlet


def drawn(scene: Scene, key: str, title: str, alt: str, scale: str) -> Drawing:
    """The ``Drawing`` of a ``Scene``.  key, title, alt, scale: as of ``Drawing``."""
    layout = laid_out(scene)
    over = sky.pressures(layout)
    numbers = over.words
    highest = min(
        [box_of(one).top for words in numbers.values() for one in words]
        + [layout.y(0.0) - 16.0, min(layout.reach.roof), *_rims(layout)]
        + [sky.top_of(layout, column) for _, column in sky.columns(layout)]
    )
    down = SKY - highest
    layout = replace(layout, down=down)
    numbers = {at: [replace(one, y=one.y + down) for one in words] for at, words in numbers.items()}
    over = replace(over, words=numbers)
    board, names = Board(WIDTH, 1e9), _names(layout)
    board.boxes += [
        replace(one, top=one.top + down, bottom=one.bottom + down) for one in over.board.boxes
    ]
    if not over.unit and layout.scene.columns and not layout.crowd:
        title = f"{title}, in {scene.unit}"
    climbs = _climbs(layout, board)
    found = _placed(layout, board, names)
    lowest = max([layout.deep(0.0, WIDTH), *(one.bottom for one in found.values())]) + EARTH
    if layout.crowd:
        lowest = max(lowest, max(y for _, y in layout.ground.knots) + down + touch(WIDTH) + 1.0)
    shapes: list[Shape] = [ground(layout, lowest), *source(layout), *pipes(layout), *stops(layout)]
    shapes += [*climbs, *sky.line(layout)]
    pressed = {column.at for _, column in sky.columns(layout)}
    for name, one in found.items():
        if one.leader is not None:
            shapes.append(one.leader)
        if name not in pressed:
            shapes += one.words
    shapes += _pressed(layout, over, found, lowest)
    if layout.left_out:
        scale = f"{scale} {layout.left_out} more have no room in the picture: see the table."
    return Drawing(key, title, alt, WIDTH, lowest, tuple(shapes), scale)


def _rims(layout: Layout) -> list[float]:
    """Tops of the tanks."""
    levels = [stop.height_m for stop in layout.scene.stops if stop.tank]
    if layout.scene.source.has_well:
        levels.append(layout.scene.source.level_m)
    if layout.scene.source.kind == "tank":
        levels.append(0.0)
    return [layout.y(level) - RIM - 1.0 for level in levels]


# Names ----------------------------------------------------------------------------------------


def _names(layout: Layout) -> list[tuple[str, tags.Tag]]:
    """What is named, from left to right; a tag's room ends at its neighbours."""
    scene = layout.scene
    found: list[tuple[str, tags.Tag]] = []
    if scene.source.has_well and scene.source.water:
        found.append(_source_tag(layout, "water"))
    if scene.source.pump:
        found.append(_source_tag(layout, "pump"))
    for x, item in zip(layout.xs, layout.items, strict=True):
        if item.column is not None and item.column.name:
            found.append((item.column.at, _column_tag(layout, item.column, x)))
        elif item.kind == "tank":
            found.append((item.key, _tank_tag(layout, item.key, x)))
        elif item.kind == "cause":
            found.append((item.key, _pipe_tag(layout, item, x)))
        elif item.kind == "climb":
            low = layout.y(0.0)
            tag = tags.Tag(x, low, item.text, role="bad", bold=True, under=low + 2.0, cause=True)
            found.append((f"climb {item.key}", tag))
    return _roomed(found, layout)


def _column_tag(layout: Layout, column: Column, x: float) -> tags.Tag:
    low = layout.y(layout.scene.by_key[column.stop].height_m)
    bold = column.level in ("bad", "tight")
    return tags.Tag(
        x, low, column.shown or column.name, role=sky.ROLES[column.level], bold=bold, key=column.at
    )


def _source_tag(layout: Layout, which: str) -> tuple[str, tags.Tag]:
    source = layout.scene.source
    lines, cause = source.water, source.water_cause
    x = WELL
    if which == "pump":
        lines, cause = source.pump, source.pump_cause
        x = source_x(layout.scene)
    text, low = cause.text if cause else " ".join(lines), layout.deep(x, x) - 4.0
    if cause:
        return which, tags.Tag(x, low, text, role="bad", bold=True, cause=True)
    return which, tags.Tag(x, low, text, role="soft")


def _tank_tag(layout: Layout, key: str, x: float) -> tags.Tag:
    stop = layout.scene.by_key[key]
    if stop.cause:
        text = f"{stop.name}: {stop.cause.text}"
        return tags.Tag(x, layout.ground_at(x), text, role="bad", bold=True, cause=True)
    return tags.Tag(x, layout.ground_at(x), stop.name)


def _pipe_tag(layout: Layout, item: Item, x: float) -> tags.Tag:
    lane = next(one for one in layout.lanes if one.pipe.at == item.key)
    y = layout.lane_y(lane, x)
    return tags.Tag(x, y, item.text, role="bad", bold=True, cause=True, below=False)


def _roomed(found: list[tuple[str, tags.Tag]], layout: Layout) -> list[tuple[str, tags.Tag]]:
    xs = [0.0, *(tag.x for _, tag in found), layout.far]
    return [
        (name, replace(tag, left=xs[at], right=xs[at + 2])) for at, (name, tag) in enumerate(found)
    ]


def _placed(layout: Layout, board: Board, names: list[tuple[str, tags.Tag]]) -> dict[str, Placed]:
    """The names where they are; those of forks only where there is room near."""
    found: dict[str, Placed] = {}
    upright = layout.crowd
    pressed = {column.at for _, column in sky.columns(layout)}
    tanks = {item.key for item in layout.items if item.kind == "tank"}
    if upright:
        for name, tag in names:
            if name in pressed or name in tanks:
                found[name] = tags.turned(layout, board, tag)
    under = max((one.bottom for one in found.values()), default=0.0)
    rest = [(name, tag) for name, tag in names if name not in found]
    if not upright:
        rest.sort(key=lambda one: one[1].role != "bad")
    for name, tag in rest:
        if upright and name not in ("water", "pump"):
            tag = replace(tag, left=0.0, right=layout.far, under=max(tag.under, under))
        one = tags.placed(layout, board, tag)
        if one is not None:
            found[name] = one
    if not upright:
        for name, tag in (*_forks(layout, names), *_labels(layout, names)):
            above = tags.over(layout, board, tag) if name.startswith("name") else None
            one = above or tags.placed(layout, board, tag)
            if one is not None:
                found[name] = one
    return found


def _forks(layout: Layout, names: list[tuple[str, tags.Tag]]) -> list[tuple[str, tags.Tag]]:
    found = []
    for x, item in zip(layout.xs, layout.items, strict=True):
        name = layout.scene.by_key[item.key].name if item.kind == "stop" else ""
        if name:
            low = layout.y(layout.scene.by_key[item.key].height_m)
            found.append((f"name {item.key}", _spare(layout, names, x, low, name)))
    return found


def _labels(layout: Layout, names: list[tuple[str, tags.Tag]]) -> list[tuple[str, tags.Tag]]:
    """What is said of a pipe, under its middle."""
    found = []
    for lane in layout.lanes:
        if lane.pipe.label:
            x = (layout.ends[lane.left][1] + layout.ends[lane.right][0]) / 2
            tag = _spare(layout, names, x, layout.lane_y(lane, x), lane.pipe.label)
            found.append((f"label {lane.pipe.at}", tag))
    return found


def _spare(
    layout: Layout, names: list[tuple[str, tags.Tag]], x: float, y: float, text: str
) -> tags.Tag:
    """A tag that may be left out, between those that are not."""
    left = max([tag.x for _, tag in names if tag.x <= x], default=0.0)
    right = min([tag.x for _, tag in names if tag.x > x], default=layout.far)
    return tags.Tag(x, y, text, left, right, role="soft", spare=True)


# Causes and outlets ---------------------------------------------------------------------------


def _climbs(layout: Layout, board: Board) -> list[Mark]:
    """How high an outlet is over the pump, where that is why it gets too little."""
    shapes: list[Mark] = []
    for x, item in zip(layout.xs, layout.items, strict=True):
        if item.kind != "climb":
            continue
        stop = layout.scene.by_key[item.key]
        top, low = layout.y(stop.height_m), layout.y(0.0)
        level = ((layout.ends[layout.scene.root][0] + 8.0, low), (x + 5.0, low))
        rise = ((x, low), (x, top))
        head = ((x - 4.0, top + 6.0), (x, top), (x + 4.0, top + 6.0))
        over = ((x, top), (layout.ends[item.key][0], top))
        shapes += [
            Stroke(level, "bad", "dotted", 1.2), Stroke(over, "bad", "dotted", 1.2),
            Stroke(rise, "bad", "dashed", 1.8, at=f"climb {item.key}"),
            Stroke(head, "bad", "dashed", 1.8),
        ]  # fmt: skip
        board.line(level, 1.5)
        board.line(rise, 1.5)
    return shapes


def _pressed(layout: Layout, over: sky.Sky, names: dict[str, Placed], lowest: float) -> list[Shape]:
    """Each outlet as something to press, with room for a finger, where it leads somewhere."""
    places = sky.columns(layout)
    found: list[Shape] = []
    for at, (x, column) in enumerate(places):
        before = places[at - 1][0] if at else x - SIDE
        after = places[at + 1][0] if at + 1 < len(places) else x + SIDE
        words = (*(names[column.at].words if column.at in names else ()), *over.words[column.at])
        shapes = (*sky.standing(layout, x, column), *words)
        if not column.change:
            found += shapes
            continue
        room = _crowded(layout, places, at, lowest) if layout.crowd else (
            _beside(layout, x, before, after, words, column, lowest)
        )  # fmt: skip
        name = _spoken(column, words, "" if over.unit or layout.crowd else layout.scene.unit)
        found.append(Press(shapes, name, *room, column.change, at=f"press {column.at}"))
    return found


def _spoken(column: Column, words: tuple[Words, ...], unit: str) -> str:
    """What a screen reader says: the words as they are seen, then the rest.

    Source: WCAG 2.2, 2.5.3, label in name.
    """
    seen = " ".join(f"{one.lead} {one.text}".strip() for one in words)
    name = f"{column.name}, " if any(one.text.endswith(CUT) for one in words) else ""
    return f"{seen}{chr(0xA0) + unit if unit else ''}: {name}{column.said}"


def _beside(
    layout: Layout, x: float, before: float, after: float, words: tuple[Words, ...],
    column: Column, lowest: float,
) -> tuple[float, float, float, float]:  # fmt: skip
    half = min(SIDE, x - before, after - x, 2 * (layout.far - x)) / 2
    top = min([box_of(one).top for one in words] + [sky.top_of(layout, column)])
    bottom = min(lowest, max(box_of(one).bottom for one in words) + 2.0)
    top = max(0.0, min(top - 2.0, bottom - touch(WIDTH)))
    return x - half, top, 2 * half, bottom - top


def _crowded(
    layout: Layout, places: list[tuple[float, Column]], at: int, lowest: float
) -> tuple[float, float, float, float]:
    """Every other one is pressed over the ground, those between under it."""
    x, side = places[at][0], touch(WIDTH) + 0.2
    near = [layout.ground_at(one) for one, _ in places[max(0, at - 1) : at + 2]]
    left = min(x - side / 2, layout.far - side)
    if at % 2 == 0:
        return left, 0.0, side, layout.ground_at(x)
    return left, max(near), side, lowest - max(near)
