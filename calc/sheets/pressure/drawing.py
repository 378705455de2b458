"""The picture of the pressure sheet: one pipe up or down a slope, and water over it as high."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice
from calc.page.hill.draw import drawn
from calc.page.hill.scene import Cause, Column, Pipe, Scene, Source, Stop
from calc.sheets.parts import pressures

if TYPE_CHECKING:
    from calc.page.shapes import Drawing
    from calc.sheets.pressure.case import Standing
    from calc.units import Reader

GAUGE, OUTLET = "gauge", "outlet"
BETWEEN = 3  # heights between the gauge and the outlet, at most; our choice
PIPE = 0.025  # m, inside diameter of a pipe of which nothing is known; our choice
HIGH = ("too high", "high")


def draw(state: Standing, reader: Reader) -> Drawing:
    """The ``Drawing`` of water at rest."""
    key = "Heights are to scale. Water is as high as its pressure lifts it"
    if state.head > 0:
        key += (
            f": everywhere to {reader.show(state.head, 'length')} above the gauge, the dotted line"
        )
    key += ". The bar is what you need."
    title = "Pressure at each height, with no flow"
    return drawn(scene(state, reader), "slope", title, alt(state, reader), key)


def scene(state: Standing, reader: Reader) -> Scene:
    """The ``Scene`` of water at rest."""
    heights = [0.0, *_between(state.climb, reader), state.climb]
    keys = [GAUGE, *(f"height {at}" for at in range(1, len(heights) - 1)), OUTLET]
    stops = tuple(
        Stop(key, "", height, cause=_cause(state, reader) if key == OUTLET else None)
        for key, height in zip(keys, heights, strict=True)
    )
    pipes = tuple(
        Pipe(f"pipe {at}", start, end, PIPE)
        for at, (start, end) in enumerate(zip(keys, keys[1:], strict=False))
    )
    columns = tuple(
        _column(state, key, height, reader) for key, height in zip(keys, heights, strict=True)
    )
    unit = reader.unit("pressure").symbol
    line = state.head if state.head > 0 else None
    return Scene(GAUGE, Source("place"), stops, pipes, columns, unit, line)


def _between(climb_m: float, reader: Reader) -> list[float]:
    """Round heights between the gauge and the outlet, m."""
    unit = reader.unit("length")
    whole = unit.from_si(abs(climb_m))
    if whole < 0.1:  # nothing to tell apart
        return []
    power = 10.0 ** math.floor(math.log10(whole / (BETWEEN + 1)))
    step = next(m * power for m in (1, 2, 5, 10) if m * power * (BETWEEN + 1) >= whole * 0.999)
    count = math.ceil(whole / step * 0.999) - 1
    return [math.copysign(unit.to_si(step * at), climb_m) for at in range(1, count + 1)]


def _column(state: Standing, key: str, height_m: float, reader: Reader) -> Column:
    left, needed = max(0.0, state.at(height_m)), state.needed
    level = practice.enough(left, needed, needed) if key == OUTLET else ""
    if key == OUTLET and state.left <= 0:
        level = "stop"
    text = pressures.told_apart(left, needed, level, reader)
    words = pressures.words(level, text)
    if key == OUTLET and left > practice.HIGHEST_AT_OUTLET and not words:
        level, words = "care", HIGH
    said = "the pressure you know"
    if key == OUTLET:
        said = f"needs {reader.show(needed, 'pressure', 2)}, {words[0] if words else 'enough'}"
    name = key if key in (GAUGE, OUTLET) else reader.show(height_m, "length", 2)
    return Column(
        at=key,
        name=name,
        stop=key,
        before_m=None,
        after_m=left / state.weight,
        needs_m=(needed / state.weight,) if key == OUTLET and needed > 0 else (),
        level=pressures.LEVELS.get(level, "good"),
        before="",
        after=text,
        words=words,
        change={GAUGE: "known", OUTLET: "climb"}.get(key, ""),
        said=said,
    )


def _cause(state: Standing, reader: Reader) -> Cause | None:
    """The climb, where it leaves too little."""
    short = practice.enough(state.left, state.needed, state.needed) in ("stop", "care")
    if state.climb <= 0 or not (short or state.left <= 0):
        return None
    high = reader.show(state.climb, "length", 2)
    used = reader.show(state.weight * state.climb, "pressure", 2)
    return Cause(f"climb of {high} uses {used}", state.climb)


def alt(state: Standing, reader: Reader) -> str:
    """What the picture shows, in sentences."""
    way = "up" if state.climb >= 0 else "down"
    gauge, left = (reader.show(max(0.0, one), "pressure", 2) for one in (state.gauge, state.left))
    told = f"A pipe {way} a slope, full of still water. At the gauge the pressure is {gauge}; "
    height = reader.show(abs(state.climb), "length", 2)
    place = f"{height} {'higher' if state.climb >= 0 else 'lower'}" if state.climb else "level"
    needed = reader.show(state.needed, "pressure", 2)
    return f"{told}at the outlet, {place}, it is {left}, where you need {needed}."
