"""The ground, the well and the pump, the pipes as they branch, the tanks up the hill."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.hill.layout import FIRST, PUMP, TANK, WALL, WELL, WIDTH, source_x, well_bottom
from calc.page.shapes import Area, Block, Dot, Stroke

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.hill.layout import Layout
    from calc.page.hill.order import Lane
    from calc.page.shapes import Mark

SHAFT = 8.0  # units, half the width of the well
BASIN = 13.0  # units, half the width of a tank
RIM = 5.0  # units of a tank over its water
EVERY = 12  # units between the points of the ground


def ground(layout: Layout, lowest: float) -> Area:
    """The hill in section, down to ``lowest``."""
    xs = sorted({*map(float, range(0, WIDTH, EVERY)), *(x for x, _ in layout.ground.knots)})
    hill = tuple((x, layout.ground_at(x)) for x in xs)
    corners = ((float(WIDTH), lowest), (0.0, lowest))
    return Area((*hill, *corners), "earth", smooth=len(hill), at="ground")


def source(layout: Layout) -> Iterator[Mark]:
    """The water, the suction line and the pump."""
    scene = layout.scene
    if scene.source.has_well:
        flooded = scene.source.level_m > 0
        yield from _basin(layout) if flooded else _shaft(layout)
        yield from _suction(layout, flooded)
    if scene.source.has_pump:
        x, zero = source_x(scene), layout.y(0.0)
        role = "bad" if scene.source.pump_cause else "pump"
        yield Block(x - 8, zero - 11, 16, 11, role, "pump", corner=2.5, at="pump")
        yield Block(x - 3, zero - 14, 6, 3, "pump")
    elif scene.source.kind == "tank":
        yield from _tank(
            source_x(scene), layout.y(0.0), "water", scene.source.pump_cause is not None
        )
    else:
        yield Dot(source_x(scene), layout.y(0.0), 3.0, "pipe", at="place")


def _shaft(layout: Layout) -> Iterator[Mark]:
    zero, level = layout.y(0.0), layout.y(layout.scene.source.level_m)
    bottom = well_bottom(layout)
    yield Block(WELL - SHAFT, zero - 4, 2 * SHAFT, bottom - zero + 4, "paper", "soft")
    yield Block(WELL - SHAFT, level, 2 * SHAFT, bottom - level, "water", at="water")


def _basin(layout: Layout) -> Iterator[Mark]:
    level = layout.y(layout.scene.source.level_m)
    yield from _tank(WELL, level, "water")


def _tank(x: float, level: float, at: str, bad: bool = False) -> Iterator[Mark]:
    yield Block(x - BASIN, level - RIM, 2 * BASIN, TANK + RIM, "paper", "bad" if bad else "soft")
    yield Block(x - BASIN, level, 2 * BASIN, TANK, "water", at=at)


def _suction(layout: Layout, flooded: bool) -> Iterator[Mark]:
    scene, zero = layout.scene, layout.y(0.0)
    level = layout.y(scene.source.level_m)
    if flooded:
        xs = [WELL + BASIN - 5 + step * (PUMP - WELL - BASIN + 5) / 8 for step in range(9)]
        inner = [(x, layout.ground_at(x) + FIRST) for x in xs[1:-1]]
        points = ((xs[0], level + TANK), *inner, (PUMP, zero - 3))
    else:
        down = zero + FIRST
        points = ((WELL, level + TANK * 0.6), (WELL, down), (PUMP - 4, down), (PUMP - 4, zero - 3))
    bad = scene.source.water_cause is not None
    yield from _pipe(points, scene.source.bore_m * layout.bore, "pipe suction", bad, smooth=False)


def _pipe(
    points: tuple[tuple[float, float], ...], wide: float, at: str, bad: bool, smooth: bool = True
) -> Iterator[Mark]:
    """Walls with water between: the water is as wide as the scale says."""
    role = "bad" if bad else "pipe"
    yield Stroke(points, role, width=wide + 2 * WALL, smooth=smooth)
    yield Stroke(points, "glass", width=wide, smooth=smooth, at=at)


def pipes(layout: Layout) -> Iterator[Mark]:
    """Every pipe section, the deepest first; a filter or valve in one before its end."""
    for lane in sorted(layout.lanes, key=lambda one: -one.depth):
        if not lane.pipe.at:
            continue  # only keeps two stops together
        bad = lane.pipe.cause is not None and not lane.pipe.in_device
        wide = lane.pipe.bore_m * layout.bore
        yield from _pipe(layout.traced(lane), wide, lane.pipe.at, bad)
        if lane.pipe.device:
            yield _device(layout, lane)


def _device(layout: Layout, lane: Lane) -> Mark:
    start, end = layout.ends[lane.left][1], layout.ends[lane.right][0]
    x = max((start + end) / 2, end - 13.0)
    y = layout.lane_y(lane, x)
    role, edge = ("bad", "bad") if lane.pipe.in_device else ("paper", "ink")
    return Block(x - 3.5, y - 5, 7, 10, role, edge, corner=1, at=f"device {lane.pipe.at}")


def stops(layout: Layout) -> Iterator[Mark]:
    """Tanks, forks, and the pipe along a stop with several outlets."""
    for x, item in zip(layout.xs, layout.items, strict=True):
        if item.kind not in ("tank", "stop"):
            continue
        stop = layout.scene.by_key[item.key]
        y = layout.y(stop.height_m)
        if stop.tank:
            yield from _tank(x, y, f"tank {stop.key}", stop.cause is not None)
        else:
            yield Dot(x, y, 2.2, "pipe", at=f"stop {stop.key}")
    for key, (first, last) in layout.ends.items():
        if last > first:
            y = layout.y(layout.scene.by_key[key].height_m)
            yield Stroke(((first, y), (last, y)), "pipe", width=2.0)
