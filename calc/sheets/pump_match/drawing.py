"""The pump_match sheet's picture: what the pump gives and what the pipe needs, at each flow.

Across: the flow; up: pressure as a height of water, both to scale.  The two lines meet at the most
the pump can bring through this pipe; what is asked for stands under the pump's line where it works.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Dot, Drawing, Stroke, Words
from calc.page.text_boxes import Board, Box, around, box_of
from calc.pump.sets import strongest_head, weakest_head
from calc.sheets.parts.line_judge import HAIR
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, ticks

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.page.shapes import Point, Shape
    from calc.page.text_boxes import Spot
    from calc.sheets.pump_match.case import Case
    from calc.units import Reader

    Leg = tuple[Point, Point]
    Said = list[tuple[str, str]]  # (lead, text) of each line of words

LEFT, RIGHT, TOP, HIGH = 44.0, 8.0, 28.0, 176.0  # units around the plot, and its height
POINTS = 21  # of each line; our choice
TICKS_UP, TICKS_ACROSS = 6, 7  # at most; our choice
ROOM = 1.2  # of the pump's highest head, up to which the plot goes; our choice
TOO_HIGH, TOO_FAR = 1.8, 3.0  # of the pump's highest head and flow: more is not drawn; our choice
ALONE = 7.0  # units, from the name of a line to another line
APART = 12.0  # units, marks closer than this are one
BEFORE = {"start": 0.0, "middle": 0.5, "end": 1.0}  # of words, what is left of their anchor
_NOTHING: tuple[Shape, ...] = ()
PUMP, PIPE, HELD = "the pump gives", "the pipe needs", "set pressure"
OUT, LOW, CREST = "out of reach", "set pressure too low", "not over the crest"


@dataclass(frozen=True)
class _Line:
    """A line of the plot and its name, which stands at its first end, or at its last."""

    at: str
    name: str
    points: tuple[Point, ...]
    last: bool
    role: str
    style: str
    width: float


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    across, up = _scales(case)
    lines = [
        one for one in (_pump(case, across, up), _pipe(case, across, up), _held(case, across, up))
        if len(one.points) > 1
    ]  # fmt: skip
    height = TOP + HIGH + LINE + 6
    board = Board(WIDTH, height)
    shapes: list[Shape] = [*_band(case, across, up), *_axes(across, up, board, reader)]
    for line in lines:
        shapes.append(Stroke(line.points, line.role, line.style, line.width, at=line.at))
        board.line(_sparse(line.points), 2.5)
    shapes += _marks(case, across, up, board, reader)
    shapes += _names(lines, board)
    scaled = "To scale."
    if case.band is not None:
        scaled = f"{scaled} Pale band: the pump’s tolerance, grade {case.band.key}."
    scaled = " ".join(filter(None, (scaled, _several(case))))
    title = "The pump and the pipe"
    return Drawing("curves", title, _alt(case, reader), WIDTH, height, tuple(shapes), scaled)


def _scales(case: Case) -> tuple[Scale, Scale]:
    pump, flow = case.pump, case.flow
    most = pump.largest_flow if flow > TOO_FAR * pump.largest_flow else max(pump.largest_flow, flow)
    top = ROOM * pump.shut_off_head
    if case.needed <= TOO_HIGH * pump.shut_off_head:
        top = max(top, 1.06 * case.needed)
    low = min(0.0, case.system(0.0), case.needed) if math.isfinite(case.needed) else 0.0
    low = max(low, -top)
    across = Scale(0.0, 1.04 * most, LEFT, WIDTH - RIGHT)
    return across, Scale(low, top, TOP + HIGH, TOP)


# The lines ----------------------------------------------------------------------------------


def _flows(end: float) -> list[float]:
    """Flows from 0 to ``end``, closer together at the end, where a curve may fall steeply."""
    return [end * (1 - (1 - at / (POINTS - 1)) ** 2) for at in range(POINTS)]


def _pump(case: Case, across: Scale, up: Scale) -> _Line:
    pump = case.pump
    points = tuple((across.at(q), up.at(pump.head_at(q))) for q in _flows(pump.largest_flow))
    return _Line("pump", PUMP, points, False, "one", "solid", 3.0)


def _pipe(case: Case, across: Scale, up: Scale) -> _Line:
    """Up to the edge of the plot, where it ends with a point on it."""
    points: list[Point] = []
    before = None
    for at in range(POINTS):
        flow = across.high * at / (POINTS - 1)
        head = case.system(flow)
        if not math.isfinite(head):
            break
        if head > up.high:
            if before is not None:
                share = (up.high - before[1]) / (head - before[1])
                points.append((across.at(before[0] + share * (flow - before[0])), up.end))
            break
        points.append((across.at(flow), up.at(max(head, up.low))))
        before = (flow, head)
    return _Line("needed", PIPE, tuple(points), True, "ink", "solid", 2.0)


def _held(case: Case, across: Scale, up: Scale) -> _Line:
    """At its set pressure, as far as the pump reaches it."""
    pump, points = case.pump, []
    if case.set_pressure > 0:
        for flow in _flows(pump.largest_flow):
            head = case.held_head(flow)
            if not up.shows(head) or head > pump.head_at(flow):
                break
            points.append((across.at(flow), up.at(head)))
    return _Line("held", HELD, tuple(points), False, "soft", "dashed", 1.5)


def _band(case: Case, across: Scale, up: Scale) -> Iterator[Shape]:
    """Between the weakest and the strongest pump of its grade."""
    if case.band is None:
        return
    pump, flows = case.pump, _flows(case.pump.largest_flow)
    sides = (
        [(across.at(q), up.at(min(max(head(pump, q, case.band), up.low), up.high))) for q in flows]
        for head in (strongest_head, weakest_head)
    )
    above, below = sides
    yield Area((*above, *reversed(below)), "glass", "edge", 0.6, at="band")


# Axes, marks and names ----------------------------------------------------------------------


def _axes(across: Scale, up: Scale, board: Board, reader: Reader) -> Iterator[Shape]:
    flow, head = reader.unit("flow"), reader.unit("head")
    title = Words(2.0, 14.0, f"pressure as a height of water ({head.symbol})", size=SMALL,
                  role="soft")  # fmt: skip
    yield board.take(title)
    for value, text in ticks(up.low, up.high, head, TICKS_UP):
        y = up.at(value)
        yield Stroke(((LEFT, y), (across.end, y)), "rule", width=1.0)
        words = Words(LEFT - 6, y + 4, text, "end", "soft", size=SMALL)
        if not box_of(words).meets(box_of(title)):
            yield board.take(words)
    low, free = up.start, WIDTH
    for number, (value, text) in enumerate(reversed(ticks(0.0, across.high, flow, TICKS_ACROSS))):
        said = text if number else f"{text} {flow.symbol}"
        half = (box_of(Words(0, 0, said, size=SMALL)).right) / 2
        middle = min(across.at(value), WIDTH - half)
        yield Stroke(((across.at(value), low), (across.at(value), low + 4)), "ink", width=1.2)
        if middle + half <= free:
            yield board.take(Words(middle, low + LINE + 1, said, "middle", "soft", size=SMALL))
            free = middle - half - 6
    axes = ((LEFT, TOP), (LEFT, low), (across.end, low))
    board.line(axes)
    yield Stroke(axes, "ink", width=1.2)


def _marks(case: Case, across: Scale, up: Scale, board: Board, reader: Reader) -> Iterator[Shape]:
    """What is asked for, and the most there is."""
    wrong = _wrong(case)
    role = "bad" if wrong else "ink"
    x, y = across.at(case.flow), up.at(min(case.needed, 2 * up.high))
    inside = across.shows(case.flow) and up.shows(case.needed)
    spots = _near(x, y) if inside else ()
    if inside:
        yield Dot(x, y, 5.0, role, hollow=bool(wrong), at="asked")
        board.boxes.append(Box(x - 6, y - 6, x + 6, y + 6))
    lines = [("you need", brief(case.flow, "flow", reader)), *([("", wrong)] if wrong else [])]
    yield from _together(lines, spots, role, board,
                         ((x, y),) if inside else ((across.end, TOP),), led=inside)  # fmt: skip
    duty = case.duty
    if duty is None or not (across.shows(duty.flow) and up.shows(duty.head)):
        return
    there = (across.at(duty.flow), up.at(duty.head))
    if inside and math.dist(there, (x, y)) < APART:
        return
    yield Dot(*there, 4.0, "ink", hollow=True, at="most")
    most = [("at most", brief(duty.flow, "flow", reader))]
    yield from _together(most, _near(*there), "ink", board, (there,))


def _wrong(case: Case) -> str:
    """Why what is needed does not arrive; "" where it does."""
    state = case.running
    if state is None or case.needed > case.available * (1 + 1e-9):
        return OUT
    line = case.line_at(state)
    if line.static <= 0 or line.crest(0.0) < -HAIR:
        return CREST
    return "" if state.left >= case.need.works_pa * (1 - 1e-9) else LOW


def _together(
    lines: Said,
    spots: Iterable[Spot],
    role: str,
    board: Board,
    marks: tuple[Point, ...],
    led: bool = True,
) -> tuple[Shape, ...]:
    """Lines of words under one another at the first of ``spots`` that is free for all; else
    wherever there is room, and then ``led`` to one of their marks, past other words if it can."""
    if found := _placed(lines, spots, role, board):
        return found
    taken, last, shapes = tuple(board.boxes), _NOTHING, _NOTHING
    for mark in marks:
        for spot in _anywhere(mark):
            if found := _placed(lines, (spot,), role, board):
                to = _nearest(mark, box_of(found[0]))
                shapes = (Stroke((mark, to), "edge", width=1.0), *found) if led else found
                if not any(box.cut_by(mark, to) for box in taken if not _holds(box, mark)):
                    return shapes
                last = last or shapes
                del board.boxes[len(taken) :]
    for words in last:
        if isinstance(words, Words):
            board.take(words)
    return last


def _anywhere(mark: Point) -> list[Spot]:
    """Spots all over the plot, those next to a mark first."""
    found = [
        (float(x), float(y), "start")
        for x in range(int(LEFT) + 6, int(WIDTH), 12)
        for y in range(int(TOP) + 10, int(TOP + HIGH), 8)
    ]
    return sorted(found, key=lambda one: math.dist(one[:2], mark))


def _nearest(point: Point, box: Box) -> Point:
    return min(max(point[0], box.left), box.right), min(max(point[1], box.top), box.bottom)


def _holds(box: Box, point: Point) -> bool:
    return _nearest(point, box) == point


def _placed(
    lines: Said, spots: Iterable[Spot], role: str, board: Board, apart: Iterable[Leg] = ()
) -> tuple[Words, ...]:
    """The words at the first free spot that is ``ALONE`` from some legs; none where none is."""
    first = tuple(
        Words(0, LINE * row, text, "start", role, bool(lead) or role == "bad", SMALL, lead, "paper")
        for row, (lead, text) in enumerate(lines)
    )
    sizes = [box_of(words) for words in first]
    for x, y, anchor in spots:
        boxes = [_moved(size, x - size.right * BEFORE[anchor], y) for size in sizes]
        if not all(map(board.free, boxes)):
            continue
        near = boxes[0].grown(ALONE)
        if any(near.cut_by(*leg) for leg in apart):
            continue
        found = (replace(one, x=x, y=y + one.y, anchor=anchor) for one in first)
        return tuple(map(board.take, found))
    return ()


def _moved(box: Box, x: float, y: float) -> Box:
    return Box(box.left + x, box.top + y, box.right + x, box.bottom + y)


def _near(x: float, y: float) -> tuple[Spot, ...]:
    """Spots for words about a mark, then a little further away from it."""
    return tuple(spot for off in (7.0, 14.0, 24.0) for spot in around(x, y, off))


def _names(lines: list[_Line], board: Board) -> Iterator[Shape]:
    """Each line's name, at its end if there is room, else along it, and nearer to no other."""
    for line in lines:
        points = tuple(reversed(line.points)) if line.last else line.points
        spots = [
            spot
            for x, y in points
            for spot in ((x + 4, y - 6, "start"), (x - 4, y - 6, "end"),
                         (x + 4, y + 15, "start"), (x - 4, y + 15, "end"))
        ]  # fmt: skip
        others = [_sparse(one.points) for one in lines if one is not line]
        legs = [leg for one in others for leg in zip(one, one[1:], strict=False)]
        said = [("", line.name)]
        found = _placed(said, spots, line.role, board, legs)
        marks = tuple(points[len(points) * part // 8] for part in (4, 2, 6, 1, 7))
        yield from found or _together(said, (), line.role, board, marks)


def _sparse(points: tuple[Point, ...]) -> tuple[Point, ...]:
    """Every third point of a line and its last: enough to keep words off it, and quicker."""
    return (*points[:-1:3], points[-1])


def _several(case: Case) -> str:
    """Whose curve it is, of several pumps."""
    return "" if case.pumps == 1 else f"The curve is of {case.pumps} pumps together."


def _alt(case: Case, reader: Reader) -> str:
    show = reader.show
    said = "Pressure as a height of water against flow: what the pump gives falls, what the pipe "
    asked = show(case.flow, "flow")
    needs = "cannot bring it through this pipe"
    if math.isfinite(case.needed):
        needs = f"must give {show(case.needed, 'head')} for it"
    if case.available is not None:
        needs = f"{needs} and gives up to {show(case.available, 'head')}"
    most = "they never meet"
    if case.duty is not None:
        most = f"they meet at {show(case.duty.flow, 'flow')}"
        if case.duty.past_end:
            most = (
                f"up to {show(case.duty.flow, 'flow')}, the end of its table, the pump gives more"
            )
    told = f"{said}needs rises; {most}. You need {asked}: the pump {needs}."
    return " ".join(filter(None, (told, _several(case))))
