"""Where everything of a hillside is: across in order, up to scale.

Across, every stop has its share of the room, whatever the lengths; heights are to scale.  ``y``
grows downwards; the layout may be moved as a whole (``lower``) once the sky is known.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.hill.ground import Ground, Reach
from calc.page.hill.merge import fewer, merged, tightened
from calc.page.hill.order import arranged

if TYPE_CHECKING:
    from calc.page.hill.order import Item, Lane
    from calc.page.hill.scene import Column, Scene
    from calc.page.shapes import Point

WIDTH = 328  # units, as wide as a phone's picture
UP = 130.0  # units that the heights have
FEWEST = 6.0  # m, the least difference in height that fills them
WELL, PUMP, PLACE = 20.0, 54.0, 12.0  # x of a well, of the pump beside it, of a place alone
SHORE, BEGIN = 12.0, 24.0  # units from the pump, or what is there: even ground; the first item
MARGIN = 9.0  # units from the room of the last item to the edge
ROOM = 30.0  # units, least room of a column whose words run across
CROWD = 15.5  # units, least room of a column whose words run upwards
TANK = 15.0  # units from the level of an open tank to the ground it is on
TIGHT = 0.15  # of a column's room, that a stop without outlets has in a crowd
FIRST, NEXT, LANES = 8.0, 10.5, 40.0  # units down to the first pipe, to the next, for all
RAMP = 10.0  # units along, in which a pipe gets to its depth
CAUSES = ("cause", "climb")  # kinds of items that are no stop
WALL = 1.1  # units, the wall of a pipe as drawn
THICK = 7.0  # units, the widest pipe


@dataclass(frozen=True)
class Layout:
    """xs: of each item; ends: {stop: (its first x, its last x)}.

    zero: y of height 0; scale: units a metre; bore: units of thickness a metre of inside diameter;
    crowd: words run upwards; left_out: columns that found no room.  All is ``down`` lower than
    zero, ground, reach and traces say.
    """

    scene: Scene
    items: tuple[Item, ...]
    lanes: tuple[Lane, ...]
    xs: tuple[float, ...]
    ends: dict[str, tuple[float, float]]
    crowd: bool
    left_out: int
    zero: float
    scale: float
    bore: float
    ground: Ground
    reach: Reach
    traces: dict[str, tuple[Point, ...]]
    down: float = 0.0

    def y(self, height_m: float) -> float:
        """Where a height is."""
        return self.zero - height_m * self.scale + self.down

    def ground_at(self, x: float) -> float:
        """y of the ground."""
        return self.ground.at(x) + self.down

    def crest(self, left: float, right: float) -> float:
        """The highest of the ground and its pipes between two xs."""
        return self.reach.crest(left, right) + self.down

    def deep(self, left: float, right: float) -> float:
        """The lowest of them, and of the well."""
        return self.reach.deep(left, right) + self.down

    def traced(self, lane: Lane) -> tuple[Point, ...]:
        """Points along a pipe, near enough for a line that looks smooth."""
        return tuple((x, y + self.down) for x, y in self.traces[lane.pipe.at])

    def lane_y(self, lane: Lane, x: float) -> float:
        """Where a pipe is at an x between its ends."""
        points = self.traces[lane.pipe.at]
        for (x0, y0), (x1, y1) in zip(points, points[1:], strict=False):
            if x <= x1:
                return y0 + (y1 - y0) * (x - x0) / (x1 - x0) + self.down
        return points[-1][1] + self.down

    @property
    def far(self) -> float:
        """The x that nothing passes on the right."""
        return float(WIDTH)


def source_x(scene: Scene) -> float:
    """Where the pump is, or what there is in its place."""
    return {"well": PUMP, "place": PLACE}.get(scene.source.kind, WELL)


def laid_out(scene: Scene) -> Layout:
    """The ``Layout`` of a scene, with as many columns as there is room for."""
    root = source_x(scene)
    begin = root + BEGIN
    items, lanes, unit, crowd, left_out = _roomy(scene, WIDTH - MARGIN - begin)
    xs, ends = _across(items, begin, unit, {scene.root: (root, root)})
    low, high = _span(scene, [item.column for item in items if item.column])
    scale = UP / max(high - low, FEWEST)
    zero = high * scale
    ground = Ground(_knots(scene, items, xs, zero, scale))
    step = min(NEXT, LANES / max((lane.depth for lane in lanes), default=1))
    widest = max([scene.source.bore_m, *(lane.pipe.bore_m for lane in lanes)])
    bore = min(THICK, max(0.6, step - 3.5)) / widest if widest else 0.0
    traces = {
        lane.pipe.at: _trace(
            ground, ends[lane.left][1], ends[lane.right][0], FIRST + (lane.depth - 1) * step
        )
        for lane in lanes
    }
    reach = Reach(ground, WIDTH)
    for lane in lanes:
        reach.line(traces[lane.pipe.at], lane.pipe.bore_m * bore / 2 + WALL + 1.0)
    if scene.source.has_well:
        bottom = zero - scene.source.level_m * scale + TANK
        reach.widen(WELL - 12, WELL + 12, bottom, bottom + 2.0)
        half = scene.source.bore_m * bore / 2 + WALL + 1.0
        reach.line(_trace(ground, WELL, PUMP, FIRST), half)
    return Layout(
        scene, items, lanes, tuple(xs), ends, crowd, left_out, zero, scale, bore, ground, reach,
        traces,
    )  # fmt: skip


def _across(
    items: tuple[Item, ...], begin: float, unit: float, ends: dict[str, tuple[float, float]]
) -> tuple[list[float], dict[str, tuple[float, float]]]:
    """(x of every item, first and last x of every stop)."""
    xs: list[float] = []
    at = begin
    for item in items:
        # whole, so that no rounding shows; never two at one place
        x = max(float(round(at + item.share * unit / 2)), xs[-1] + 1.0 if xs else 0.0)
        at += item.share * unit
        xs.append(x)
        if item.kind not in CAUSES:
            ends[item.key] = (ends[item.key][0] if item.key in ends else x, x)
    return xs, ends


def _trace(ground: Ground, start: float, end: float, depth: float) -> tuple[Point, ...]:
    """Points of a pipe that leaves the ground at its start and is back at its end."""
    ramp = min(RAMP, (end - start) / 2)
    flat = end - start - 2 * ramp  # the way between the two ramps
    steps = max(1, round(flat / 16)) if flat > 0.1 else 0
    level = [start + ramp + flat * n / max(1, steps) for n in range(steps + 1)]
    xs = [start, start + ramp / 2, *level, end - ramp / 2, end]
    shares = [0.0, 0.5, *(1.0 for _ in level), 0.5, 0.0]
    return tuple(
        (x, ground.at(x) + depth * share * share * (3 - 2 * share))
        for x, share in zip(xs, shares, strict=True)
    )


def _roomy(
    scene: Scene, room: float
) -> tuple[tuple[Item, ...], tuple[Lane, ...], float, bool, int]:
    """(items, lanes, room of a column, whether crowded, columns left out)."""
    for one in (scene, merged(scene)):
        for share in (1.0, TIGHT):
            items, lanes = arranged(one)
            items = tightened(items, share)
            unit = room / max(1.0, sum(item.share for item in items))
            if unit >= ROOM:
                return items, lanes, unit, False, 0
    one = merged(scene)
    left_out = 0
    while True:
        items, lanes = arranged(one)
        items = tightened(items, TIGHT)
        unit = room / max(1.0, sum(item.share for item in items))
        if unit >= CROWD or len(one.columns) <= 1:
            return items, lanes, unit, True, left_out
        one = fewer(one)
        left_out += 1


def _span(scene: Scene, columns: list[Column]) -> tuple[float, float]:
    """(lowest, highest) height drawn, m."""
    heights = [0.0, *(stop.height_m for stop in scene.stops)]
    if scene.source.has_well:
        heights.append(scene.source.level_m)
    for column in columns:
        over = max(column.before_m or 0.0, column.after_m, *column.needs_m, 0.0)
        heights.append(scene.by_key[column.stop].height_m + over)
    return min(heights), max(heights)


def _knots(
    scene: Scene, items: tuple[Item, ...], xs: list[float], zero: float, scale: float
) -> tuple[Point, ...]:
    """Where the ground passes: the source, then each stop."""
    root = source_x(scene)
    foot = zero + TANK if scene.source.kind == "tank" else zero
    knots = [(0.0, foot), (root + SHORE, foot)]
    if scene.source.has_well and scene.source.level_m > 0:
        shore = zero - scene.source.level_m * scale + TANK
        knots = [(0.0, shore), (WELL + 16, shore), (PUMP - 8, zero), (root + SHORE, zero)]
    for item, x in zip(items, xs, strict=True):
        if item.kind not in CAUSES:
            y = zero - scene.by_key[item.key].height_m * scale
            knots.append((x, y + TANK if item.kind == "tank" else y))
    return (*knots, (float(WIDTH), knots[-1][1]))


def well_bottom(layout: Layout) -> float:
    """y of the bottom of the well, or of the tank the pump draws from."""
    return layout.y(layout.scene.source.level_m) + TANK
