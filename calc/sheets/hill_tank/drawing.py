"""The hill tank's picture: its level over a day, and below it what comes in and what is drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import day_tank
from calc.page.shapes import SMALL, Area, Block, Dot, Drawing, Stroke, Words
from calc.sheets.hill_tank.case import DRY, HAIR
from calc.sheets.hill_tank.judge import lowest_at, missing
from calc.sheets.parts.clock import clock, hours_axis, kept_in
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Point, Shape
    from calc.sheets.hill_tank.case import Case
    from calc.units import Reader

LEFT, RIGHT = 10.0, 318.0  # units: the day from, to
HEAD, HIGH = 20.0, 76.0  # units over the level's panel, and its height
FLOWS = HEAD + HIGH + 72.0  # units down to the line between what comes and what goes
TALL = 26.0  # units of the largest flow, each way


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    across = Scale(0.0, DAY, LEFT, RIGHT)
    up = Scale(0.0, case.volume, HEAD + HIGH, HEAD)
    shapes = (
        *_level(case, across, up),
        *_full(case, up, reader),
        *_empty(case, across, up),
        *_lowest(case, across, up, reader),
        *_flows(case, across, reader),
        *hours_axis(across, FLOWS, TALL + 2 * LINE),
    )
    height = FLOWS + TALL + 2 * LINE + 8
    title = "A day of the dry month" if case.worst.key == DRY else "A usual day"
    scaled = "Levels are to scale with one another, and flows with one another."
    return Drawing("day", f"{title}, from morning to morning", _alt(case, reader), WIDTH, height,
                   shapes, scaled)  # fmt: skip


# The level ------------------------------------------------------------------------------------


def _level(case: Case, across: Scale, up: Scale) -> Iterator[Shape]:
    line = tuple(_levels(case, across, up))
    low = up.start
    yield Block(LEFT, HEAD, RIGHT - LEFT, HIGH, "glass")
    yield Area((*line, (RIGHT, low), (LEFT, low)), "water", at="water")
    yield Stroke(line, "ink", width=1.6, at="level")
    sides = ((LEFT, HEAD - 3), (LEFT, low), (RIGHT, low), (RIGHT, HEAD - 3))
    yield Stroke(sides, "ink", width=2.0, at="tank")


def _levels(case: Case, across: Scale, up: Scale) -> Iterator[Point]:
    """Where the level bends, also within a piece of the day: when it is full or empty."""
    day, run = case.worst, case.shown
    yield across.at(0.0), up.at(run.levels[0])
    for at, piece in enumerate(day.pieces):
        net, end = piece.comes - piece.drawn, piece.start + piece.long
        stops = (run.over[at] + run.missing[at]) / abs(net) if net else 0.0
        if 1.0 < stops < piece.long:
            yield across.at(end - stops), up.at(run.levels[at + 1])
        yield across.at(end), up.at(run.levels[at + 1])


def _full(case: Case, up: Scale, reader: Reader) -> Iterator[Shape]:
    full = brief(case.volume, "volume", reader)
    yield Words(LEFT, HEAD - 8, full, size=SMALL, lead="full")
    if case.kept <= HAIR:
        return
    y = up.at(case.kept)
    yield Stroke(((LEFT, y), (RIGHT, y)), "ink", "dotted", 1.2, at="reserve")
    kept = brief(case.kept, "volume", reader)
    yield Words(RIGHT, HEAD - 8, kept, "end", size=SMALL, lead="reserve")


def _empty(case: Case, across: Scale, up: Scale) -> Iterator[Shape]:
    """The spans in which water is asked for in vain."""
    low, longest = up.start, (0.0, 0.0)
    spans = [part for one in _vain(case) for part in _in_the_day(one)]
    for number, (start, end) in enumerate(spans):
        wide = max(across.long(end - start), 2.0)
        x = min(across.at(start), RIGHT - wide)
        yield Block(x, low + 1, wide, 7, "bad", "bad", at=f"empty {number}")
        longest = max(longest, (end - start, x + wide / 2))
    if spans:
        said = "at its reserve" if case.kept > HAIR else "empty"
        words = Words(longest[1], low + 22, said, "middle", "bad", bold=True, size=SMALL)
        yield kept_in(words)


def _vain(case: Case) -> tuple[tuple[float, float], ...]:
    """Spans of the day shown in which water is missing, but for rounding."""
    run = case.shown
    if sum(run.missing) <= 1e-9 * case.worst.use:
        return ()
    return day_tank.empty_spans(case.worst.pieces, run)


def _in_the_day(span: tuple[float, float]) -> Iterator[tuple[float, float]]:
    """A span, parted where it goes past the day's end."""
    start, end = span
    yield start, min(end, DAY)
    if end > DAY:
        yield 0.0, end - DAY


def _lowest(case: Case, across: Scale, up: Scale, reader: Reader) -> Iterator[Shape]:
    if _vain(case):
        return
    least = min(case.shown.levels)
    x, y = across.at(lowest_at(case.worst, case.shown)), up.at(least)
    yield Dot(x, y, 3.5, "ink", at="lowest")
    text = brief(least, "volume", reader)
    yield kept_in(Words(x, up.start + LINE, text, "middle", size=SMALL, lead="lowest"))


# The flows ------------------------------------------------------------------------------------


def _flows(case: Case, across: Scale, reader: Reader) -> Iterator[Shape]:
    pieces = case.worst.pieces
    comes, drawn = ([getattr(one, name) for one in pieces] for name in ("comes", "drawn"))
    most = max(*comes, *drawn)
    rows = ((comes, -1.0, "water", "comes in"), (drawn, 1.0, "earth", "is asked for"))
    for flows, way, role, name in rows:
        edge = tuple(
            (across.at(at), FLOWS + way * TALL * flow / most)
            for piece, flow in zip(pieces, flows, strict=True)
            for at in (piece.start, piece.start + piece.long)
        )
        if max(flows) > 0:
            yield Area((*edge, (RIGHT, FLOWS), (LEFT, FLOWS)), role, "ink", 0.8, at=name)
        y = FLOWS - TALL - 6 if way < 0 else FLOWS + TALL + 12
        top = brief(max(flows), "flow", reader)
        text = f"up to {top}" if max(flows) > 0 else "nothing"
        yield Words(LEFT, y, text, size=SMALL, lead=name)
    yield Stroke(((LEFT, FLOWS), (RIGHT, FLOWS)), "ink", width=1.2, at="no flow")


def _alt(case: Case, reader: Reader) -> str:
    day, run = case.worst, case.shown
    kind = "a day of the dry month" if day.key == DRY else "a usual day"
    low, used, comes = (
        reader.show(one, "volume") for one in (min(run.levels), day.use, day.supply)
    )
    said = (
        f"The level of a tank of which {reader.show(case.volume, 'volume')} can be used, over "
        f"{kind}: {comes} comes in, {used} is asked for. "
    )
    if _vain(case):
        state = "down to its reserve" if case.kept > HAIR else "empty"
        lost = reader.show(sum(run.missing), "volume")
        at = clock(_vain(case)[0][0])
        return f"{said}It is {state}, first at {at}, and {lost} is missing."
    assert missing(day) == 0 or case.by_rain
    at = clock(lowest_at(day, run))
    return f"{said}Its lowest is {low}, at {at}."
