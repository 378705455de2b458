"""What pictures of a day share: water in a store from morning to morning, what comes and goes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Stroke, Words
from calc.sheets.parts.scaled import brief

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from calc.page.shapes import Point, Shape
    from calc.sheets.parts.scaled import Scale
    from calc.units import Reader

    Flow = tuple[float, float, float, float]  # s from, to; m3/s at both, steady between

LEFT, RIGHT = 10.0, 318.0  # units: the day from, to
HIGH = 76.0  # units: height of the level's panel
TALL = 26.0  # units of the largest flow, each way


def level_shapes(line: tuple[Point, ...], up: Scale) -> Iterator[Shape]:
    """A store with its level. line: points of the level; up: volumes, from its floor."""
    low, head = up.start, up.start - HIGH
    yield Block(LEFT, head, RIGHT - LEFT, HIGH, "glass")
    yield Area((*line, (RIGHT, low), (LEFT, low)), "water", at="water")
    yield Stroke(line, "ink", width=1.6, at="level")
    sides = ((LEFT, head - 3), (LEFT, low), (RIGHT, low), (RIGHT, head - 3))
    yield Stroke(sides, "ink", width=2.0, at="tank")


def flow_shapes(
    comes: tuple[str, Sequence[Flow]],
    goes: tuple[str, Sequence[Flow]],
    across: Scale,
    y: float,
    reader: Reader,
) -> Iterator[Shape]:
    """What comes, above the line at ``y``, and what goes, below it, to one scale; each with its
    name."""
    most = max(max(one, other) for _, flows in (comes, goes) for _, _, one, other in flows)
    for (name, flows), way, role in ((comes, -1.0, "water"), (goes, 1.0, "earth")):
        edge = tuple(
            (across.at(when), y + way * TALL * flow / most if most > 0 else y)
            for start, end, one, other in flows
            for when, flow in ((start, one), (end, other))
        )
        top = max(max(one, other) for _, _, one, other in flows)
        if top > 0:
            yield Area((*edge, (RIGHT, y), (LEFT, y)), role, "ink", 0.8, at=name)
        words = y - TALL - 6 if way < 0 else y + TALL + 12
        text = f"up to {brief(top, 'flow', reader)}" if top > 0 else "nothing"
        yield Words(LEFT, words, text, size=SMALL, lead=name)
    yield Stroke(((LEFT, y), (RIGHT, y)), "ink", width=1.2, at="no flow")
