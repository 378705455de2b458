"""The keep_up sheet's picture: the site to scale in height, and its pressure as a height.

Across: metres of pipe from the source; up: metres above the pump.  The line of the pressure
(hydraulic grade line) is above each point by the pressure there as a height of water.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.network.parts import Run
from calc.page.shapes import Dot, Drawing, Stroke, Words
from calc.site.supply import INLET, PUMP, WATER

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.network.parts import Network
    from calc.network.state import Solution
    from calc.page.shapes import Shape
    from calc.sheets.keep_up.case import Case
    from calc.units import Reader

WIDTH, PLOT = 340.0, 230.0  # px: as wide as a phone's text, and as high as the plot inside it
LEFT, RIGHT, TOP = 46.0, 14.0, 14.0  # px around the plot
LINE = 17.0  # px from one line of words to the next
LETTER = 7.0  # px, width of a letter at 13 px, on the wide side
APART = 14.0  # px between two numbers
BESIDE = ((0, 13), (0, -13), (13, 4), (-13, 4), (0, 27), (0, -27))  # px, a number from its mark


@dataclass(frozen=True)
class _Scale:
    """Metres to px."""

    far: float
    low: float
    high: float

    def x(self, metres: float) -> float:
        return LEFT + metres / self.far * (WIDTH - LEFT - RIGHT)

    def y(self, height: float) -> float:
        return TOP + (self.high - height) / (self.high - self.low) * PLOT


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    before, after = case.before, case.after
    along = distances(after.network)
    heights = {name: after.network.heights[name] for name in along}
    tops = [s.heads[n] for s in (before, after) for n in along if n != INLET]
    low, high = min(heights.values()), max(*heights.values(), *tops)
    room = 0.06 * max(high - low, 1.0)
    scale = _Scale(max(*along.values(), 1.0), low - room, high + room)
    numbers = _numbers(case, along)
    shapes = [*_ticks(scale, reader)]
    shapes += _pipes(after, along, heights, scale)
    shapes += _grade(before, along, scale, "two", "dashed")
    shapes += _grade(after, along, scale, "one", "solid")
    shapes += _marks(case, numbers, along, heights, scale)
    legend, height = _legend(case, numbers, TOP + PLOT + 14)
    return Drawing(
        "site",
        "The site in height, and its pressure as a height",
        _alt(case, reader),
        WIDTH,
        height,
        (*shapes, *legend),
    )


def distances(network: Network) -> dict[str, float]:
    """Metres of pipe from the water's source to every place and tank, by the shortest way.

    The pump itself and devices take no length.
    """
    near: dict[str, list[tuple[str, float]]] = {}
    for link in network.links:
        length = link.length_m if isinstance(link, Run) else 0.0
        near.setdefault(link.start, []).append((link.end, length))
        near.setdefault(link.end, []).append((link.start, length))
    found, todo = {}, [(0.0, WATER)]
    while todo:
        todo.sort(reverse=True)
        so_far, here = todo.pop()
        if here in found:
            continue
        found[here] = so_far
        todo += [(so_far + length, other) for other, length in near.get(here, ())]
    return found


def _numbers(case: Case, along: dict[str, float]) -> dict[str, int]:
    """Numbers of the places to show, from the pump outwards."""
    named = [name for name in along if name in case.built.shown]
    named.sort(key=lambda name: (along[name], name))
    return {name: number for number, name in enumerate(named, 1)}


def _ticks(scale: _Scale, reader: Reader) -> Iterator[Shape]:
    unit = reader.unit("length")
    low, high = unit.from_si(scale.low), unit.from_si(scale.high)
    step = next(
        s for s in (1, 2, 5, 10, 20, 50, 100, 200, 500) if (high - low) / s <= 6 or s == 500
    )
    tick = step * int(low / step - 1)
    yield Words(4, TOP - 2, f"{unit.symbol} above the pump", role="soft")
    while tick <= high:
        if tick >= low:
            y = scale.y(unit.to_si(tick))
            yield Stroke(((LEFT, y), (WIDTH - RIGHT, y)), "rule", width=1)
            if y > TOP + LINE / 2:
                yield Words(LEFT - 6, y + 4, str(tick).replace("-", "−"), "end", "soft")
        tick += step


def _pipes(
    solution: Solution, along: dict[str, float], heights: dict[str, float], scale: _Scale
) -> Iterator[Shape]:
    for link in solution.network.links:
        if link.start in along and isinstance(link, Run):
            ends = [(scale.x(along[n]), scale.y(heights[n])) for n in (link.start, link.end)]
            yield Stroke(tuple(ends), "ink", width=2.5)


def _grade(
    solution: Solution, along: dict[str, float], scale: _Scale, role: str, style: str
) -> Iterator[Shape]:
    """Head along every link; over the pump it rises at once."""
    for link in solution.network.links:
        if link.start in along:
            ends = ((n, solution.heads[n]) for n in (link.start, link.end))
            points = tuple((scale.x(along[n]), scale.y(head)) for n, head in ends)
            yield Stroke(points, role, style, 2.0)


def _marks(
    case: Case,
    numbers: dict[str, int],
    along: dict[str, float],
    heights: dict[str, float],
    scale: _Scale,
) -> Iterator[Shape]:
    """A numbered mark at every place, moved down where it would lie on another."""
    short = {tap.node for tap in case.taps if tap.level == "stop"}
    placed: list[tuple[float, float]] = []
    for level in case.after.network.levels:
        if level.name in along:
            yield Dot(scale.x(along[level.name]), scale.y(level.level_m), 4, "one", hollow=True)
    for name, number in numbers.items():
        x, y = scale.x(along[name]), scale.y(heights[name])
        role = "bad" if name in short else "ink"
        yield Dot(x, y, 4, role)
        spots = [(x + across, y + down) for across, down in BESIDE]
        spot = next((one for one in spots if not _near(one, placed)), spots[0])
        placed.append(spot)
        yield Words(spot[0], spot[1] + 4, str(number), "middle", role, bold=True)


def _near(spot: tuple[float, float], others: list[tuple[float, float]]) -> bool:
    return any(abs(spot[0] - a) < APART and abs(spot[1] - b) < APART for a, b in others)


def _legend(case: Case, numbers: dict[str, int], top: float) -> tuple[list[Shape], float]:
    """(shapes, y below them): the two lines, then the numbers' names."""
    y = top + LINE
    shapes: list[Shape] = [
        Stroke(((4, y - 4), (30, y - 4)), "two", "dashed", 2),
        Words(36, y, "pressure as a height, before"),
        Stroke(((4, y + LINE - 4), (30, y + LINE - 4)), "one", "solid", 2),
        Words(36, y + LINE, "pressure as a height, after"),
    ]
    y += 2 * LINE + 4
    short = {tap.node for tap in case.taps if tap.level == "stop"}
    x = 4.0
    for name, number in numbers.items():
        text = f"{number} {name}"
        wide = LETTER * len(text) + 22
        if x > 4.0 and x + wide > WIDTH:
            x, y = 4.0, y + LINE
        shapes.append(Words(x, y, text, role="bad" if name in short else "ink"))
        x += wide
    return shapes, y + 10


def _alt(case: Case, reader: Reader) -> str:
    heights = case.after.network.heights
    top = max(case.built.shown, key=lambda name: heights.get(name, 0.0), default=PUMP)
    told = (
        f"The site from the water to the far ends: highest is {top}, "
        f"{reader.show(heights.get(top, 0.0), 'length')} above the pump."
    )
    if case.main is None:
        return told + " Nothing is open."
    name, weight = case.main.node, case.weight
    before, after = (max(0.0, s.pressure(name)) / weight for s in (case.before, case.after))
    return (
        f"{told} At {name} the pressure as a height of water is {reader.show(before, 'head')} "
        f"before and {reader.show(after, 'head')} after."
    )
