"""Fewer columns where there is no room for all: one for each stop, then the telling ones."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.page.hill.order import Item
    from calc.page.hill.scene import Column, Scene

WORST = ("bad", "tight", "good", "shut")


def merged(scene: Scene) -> Scene:
    """The same scene with one column at each stop: the pressure is the same for all there."""
    by_stop: dict[str, list[Column]] = {}
    for column in scene.columns:
        by_stop.setdefault(column.stop, []).append(column)
    return replace(
        scene, columns=tuple(_one(scene, stop, columns) for stop, columns in by_stop.items())
    )


def _one(scene: Scene, stop: str, columns: list[Column]) -> Column:
    if len(columns) == 1:
        return columns[0]
    worst = min(columns, key=lambda one: WORST.index(one.level))
    needs = {need for one in columns if one.level != "shut" for need in one.needs_m}
    said = "; ".join(f"{one.name} {one.said}" for one in columns)
    name = scene.by_key[stop].name
    return replace(
        worst, name=name, needs_m=tuple(sorted(needs)), said=said, shown=_shown(name, columns)
    )


def _shown(stop: str, columns: list[Column]) -> str:
    """The stop, and which of its outlets opens: "wash-house: hose opens"."""
    opened = [one.name for one in columns if one.opens]
    if len(opened) != 1:
        return f"{stop}: {len(opened)} open" if opened else stop
    (name,) = opened
    if name.casefold().startswith(stop.casefold()):
        name = name[len(stop) :].strip() or name
    return f"{stop}: {name} opens"


def fewer(scene: Scene) -> Scene:
    """Without the column that tells least: a closed one, else the one most above its need."""
    least = max(scene.columns, key=_tells)
    return replace(scene, columns=tuple(one for one in scene.columns if one is not least))


def _tells(column: Column) -> tuple[int, float]:
    return WORST.index(column.level), column.after_m - max(column.needs_m, default=0.0)


def tightened(items: tuple[Item, ...], share: float) -> tuple[Item, ...]:
    """The items with little room for stops without columns."""
    return tuple(
        replace(item, share=min(item.share, share)) if item.kind == "stop" else item
        for item in items
    )
