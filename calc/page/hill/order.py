"""In which order the stops of a hillside come, and how deep each pipe is drawn.

From the source to the right, each branch after the point it leaves, the higher one further right:
so water always runs to the right, and a pipe passes under what branches off before it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.page.hill.scene import Column, Pipe, Scene


@dataclass(frozen=True)
class Item:
    """What takes room from left to right: a column, a stop without any, or a cause's words."""

    kind: str  # "column", "stop", "tank", "cause" of a pipe or "climb" to a stop
    key: str  # of the stop, or of the pipe whose cause it is
    share: float  # of the room that a column takes
    column: Column | None = None
    text: str = ""  # of the cause


@dataclass(frozen=True)
class Lane:
    """A pipe from the left to the right. depth: 1 is the highest; left, right: keys of stops."""

    pipe: Pipe
    left: str
    right: str
    depth: int


SHARES = {"column": 1.0, "stop": 0.5, "tank": 0.9, "cause": 1.1, "climb": 0.7}  # our choice


def arranged(scene: Scene) -> tuple[tuple[Item, ...], tuple[Lane, ...]]:
    """(items from left to right, pipes with their depths)."""
    stops, parents = _walked(scene)
    by_stop: dict[str, list[Column]] = {}
    for column in scene.columns:
        by_stop.setdefault(column.stop, []).append(column)
    items: list[Item] = []
    for key in stops:
        pipe = parents.get(key)
        if pipe is not None and pipe.cause is not None:
            items.append(Item("cause", pipe.at, SHARES["cause"], text=pipe.cause.text))
        cause = scene.by_key[key].cause
        if cause is not None and not scene.by_key[key].tank:
            items.append(Item("climb", key, SHARES["climb"], text=cause.text))
        for column in by_stop.get(key, ()):
            items.append(Item("column", key, SHARES["column"], column))
        if key != scene.root and not by_stop.get(key):
            kind = "tank" if scene.by_key[key].tank else "stop"
            items.append(Item(kind, key, SHARES[kind]))
    return tuple(items), tuple(_lanes(scene, stops))


def _walked(scene: Scene) -> tuple[list[str], dict[str, Pipe]]:
    """(keys of stops in order, pipe by the stop it leads to)."""
    near: dict[str, list[tuple[str, Pipe]]] = {stop.key: [] for stop in scene.stops}
    for pipe in scene.pipes:
        near[pipe.start].append((pipe.end, pipe))
        near[pipe.end].append((pipe.start, pipe))
    parents: dict[str, Pipe] = {}
    children: dict[str, list[str]] = {stop.key: [] for stop in scene.stops}
    roots, seen = [], set()
    for root in sorted(near, key=lambda key: (key != scene.root, not scene.by_key[key].tank)):
        if root in seen:
            continue
        roots.append(root)
        seen.add(root)
        todo = [root]
        for here in todo:  # grows as the pipes are followed
            for other, pipe in near[here]:
                if other not in seen:
                    seen.add(other)
                    parents[other] = pipe
                    children[here].append(other)
                    todo.append(other)
    return _in_order(scene, roots, children), parents


def _in_order(scene: Scene, roots: list[str], children: dict[str, list[str]]) -> list[str]:
    tops: dict[str, float] = {}

    def top(key: str) -> float:
        if key not in tops:
            own = scene.by_key[key].height_m
            tops[key] = max([own, *map(top, children[key])])
        return tops[key]

    found: list[str] = []
    todo = list(reversed(roots))
    while todo:
        key = todo.pop()
        found.append(key)
        todo += sorted(children[key], key=lambda one: (-top(one), one))
    return found


def _lanes(scene: Scene, stops: list[str]) -> list[Lane]:
    """The pipes, each deeper than all that lie within its ends."""
    place = {key: at for at, key in enumerate(stops)}
    spans = []
    for pipe in scene.pipes:
        left, right = sorted((pipe.start, pipe.end), key=place.__getitem__)
        spans.append((place[right] - place[left], place[left], place[right], pipe, left, right))
    spans.sort(key=lambda span: span[:3])
    taken: list[tuple[int, int, int]] = []
    found = []
    for _, first, last, pipe, left, right in spans:
        over = [depth for a, b, depth in taken if a < last and first < b]
        depth = 1 + max(over, default=0)
        taken.append((first, last, depth))
        found.append(Lane(pipe, left, right, depth))
    return found
