"""The day's picture: the level of the tank, when outlets fail, what is pumped and what is drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.day_run import NOTHING
from calc.page.shapes import SMALL, Area, Block, Dot, Drawing, Stroke, Words
from calc.sheets.day.case import comes
from calc.sheets.parts.clock import clock, hours_axis, kept_in
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Point, Shape
    from calc.sheets.day.case import Case
    from calc.units import Reader

LEFT, RIGHT = 10.0, 318.0  # units: the day from, to
HEAD, HIGH = 36.0, 76.0  # units over the level's panel, and its height
BAR, GAP = 7.0, 10.0  # units: height of the row of failing outlets, and what is above it
TALL = 26.0  # units of the largest flow, each way


def pictures(case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing`` of a case, of the tank that falls lowest, or of the source."""
    across = Scale(0.0, DAY, LEFT, RIGHT)
    at = _store(case)
    level: tuple[Shape, ...] = ()
    low = HEAD - LINE - 4
    if at is not None:
        up = Scale(0.0, _most(case, at), HEAD + HIGH, HEAD)
        level = (*_level(case, at, across, up), *_names(case, at, reader),
                 *_lowest(case, at, across, up, reader))  # fmt: skip
        low = up.start
    flows = low + GAP + BAR + 2 * LINE + 22 + TALL
    shapes = (
        *level,
        *_failing(case, across, low),
        *_flows(case, across, flows, reader),
        *hours_axis(across, flows, TALL + 2 * LINE),
    )
    height = flows + TALL + 2 * LINE + 8
    scaled = "Flows are to scale with one another."
    if level:
        scaled = "Levels are to scale with one another, and flows with one another."
    return (
        Drawing("day", "The supply from morning to morning", _alt(case, at, reader), WIDTH, height,
                shapes, scaled),
    )  # fmt: skip


def _store(case: Case) -> int | None:
    """Index of what is drawn: the tank that falls to the least, or the source; None: neither."""
    if case.tanks:
        return case.lowest_share
    return 0 if case.limited else None


def _most(case: Case, at: int) -> float:
    if at < len(case.tanks):
        return case.tanks[at].volume_m3
    return case.plan.store.stored_m3 or 0.0


def _name(case: Case, at: int) -> str:
    return case.tanks[at].name if at < len(case.tanks) else "the source"


# The level ------------------------------------------------------------------------------------


def _level(case: Case, at: int, across: Scale, up: Scale) -> Iterator[Shape]:
    steps = case.run.steps
    line: tuple[Point, ...] = (
        (across.at(0.0), up.at(_within(steps[0].held[at], up))),
        *((across.at(one.end), up.at(_within(one.then[at], up))) for one in steps),
    )
    low = up.start
    yield Block(LEFT, HEAD, RIGHT - LEFT, HIGH, "glass")
    yield Area((*line, (RIGHT, low), (LEFT, low)), "water", at="water")
    yield Stroke(line, "ink", width=1.6, at="level")
    sides = ((LEFT, HEAD - 3), (LEFT, low), (RIGHT, low), (RIGHT, HEAD - 3))
    yield Stroke(sides, "ink", width=2.0, at="tank")


def _within(volume: float, up: Scale) -> float:
    """A volume between empty and full, but for what seeps past a closed valve."""
    return min(max(volume, up.low), up.high)


def _names(case: Case, at: int, reader: Reader) -> Iterator[Shape]:
    full = brief(_most(case, at), "volume", reader)
    yield Words(LEFT, HEAD - 8 - LINE, _name(case, at), size=SMALL, bold=True)
    yield Words(LEFT, HEAD - 8, full, size=SMALL, lead="full")


def _lowest(case: Case, at: int, across: Scale, up: Scale, reader: Reader) -> Iterator[Shape]:
    least, when = case.run.lowest(at)
    least = _within(least, up)
    yield Dot(across.at(when), up.at(least), 3.5, "ink", at="lowest")
    text = f"{brief(least, 'volume', reader)}, {clock(when)}"
    yield Words(RIGHT, HEAD - 8, text, "end", size=SMALL, lead="lowest")


# Outlets that fail ----------------------------------------------------------------------------


def _failing(case: Case, across: Scale, low: float) -> Iterator[Shape]:
    """The spans in which some outlet gets nothing or too little."""
    y, longest, number = low + GAP, (0.0, 0.0, ""), 0
    for name in case.failing:
        for span in case.run.spans(name):
            wide = max(across.long(span.end - span.start), 2.0)
            x = min(across.at(span.start), RIGHT - wide)
            role = "bad" if span.kind == NOTHING else "tight"
            yield Block(x, y, wide, BAR, role, role, at=f"{span.kind} {number}")
            number += 1
            said = "no water" if span.kind == NOTHING else "too little"
            longest = max(longest, (span.end - span.start, x + wide / 2, said))
    if number:
        role = "bad" if longest[2] == "no water" else "tight"
        words = Words(longest[1], y + BAR + 14, longest[2], "middle", role, bold=True, size=SMALL)
        yield kept_in(words)


# The flows ------------------------------------------------------------------------------------


def _flows(case: Case, across: Scale, y: float, reader: Reader) -> Iterator[Shape]:
    comes_in = [(s.start, s.end, comes(s.rates), comes(s.rates_then)) for s in case.run.steps]
    drawn = [(s.start, s.end, sum(s.rates.drawn), sum(s.rates_then.drawn)) for s in case.run.steps]
    most = max(1e-9, *(max(a, b) for _, _, a, b in comes_in + drawn))
    for flows, way, role, name in (
        (comes_in, -1.0, "water", "pumped" if case.pumped else "comes in"),
        (drawn, 1.0, "earth", "drawn"),
    ):
        edge = tuple(
            (across.at(when), y + way * TALL * max(flow, 0.0) / most)
            for start, end, one, other in flows
            for when, flow in ((start, one), (end, other))
        )
        top = max(max(a, b) for _, _, a, b in flows)
        if top > 0:
            yield Area((*edge, (RIGHT, y), (LEFT, y)), role, "ink", 0.8, at=name)
        words = y - TALL - 6 if way < 0 else y + TALL + 12
        text = f"up to {brief(top, 'flow', reader)}" if top > 1e-9 else "nothing"
        yield Words(LEFT, words, text, size=SMALL, lead=name)
    yield Stroke(((LEFT, y), (RIGHT, y)), "ink", width=1.2, at="no flow")


def _alt(case: Case, at: int | None, reader: Reader) -> str:
    came, drawn = (reader.show(one, "volume") for one in (case.came, sum(case.run.given)))
    how = "is pumped" if case.pumped else "comes in"
    said = f"A supply over a day: {came} {how}, {drawn} is drawn."
    if at is not None:
        least, when = case.run.lowest(at)
        low = reader.show(max(least, 0.0), "volume")
        said += f" The lowest of {_name(case, at)} is {low}, at {clock(when)}."
    names = list(case.failing)
    if names:
        more = f" and {len(names) - 2} more" if len(names) > 2 else ""
        said += f" Too little or nothing: {', '.join(names[:2])}{more}."
    return said
