"""The drip sheet's picture: pressure along a line of drippers, and bars of what is asked and had.

Each is to a scale of its own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.shapes import SMALL, Dot, Drawing, Stroke, Words
from calc.sheets.drip.show import shown
from calc.sheets.parts.bars import EACH, bar_shapes, bars_in_words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, spread
from calc.sheets.parts.watering import share
from calc.units import HOUR, MET, numbers_apart

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.drip.case import Case
    from calc.sheets.parts.bars import Bar
    from calc.units import Reader

LEFT, RIGHT, SAID = 10.0, 196.0, 204.0  # units: the line from, to; the words beside it
TOP, HIGH = 28.0, 56.0  # units over the pressures, and from the highest to none
ROOM = TOP + HIGH + 2 * LINE  # units, of the pressures along a manifold
DROP = 14.0  # units, below the line to a drop


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    most = max(*case.solved.pressures, case.start)
    up = Scale(0.0, most, TOP + HIGH, TOP)
    base = TOP + HIGH + DROP + 2 * LINE
    bars = list(_amounts(case, reader))
    feeder = list(_manifold(case, reader, base)) if case.zone is not None else []
    base += ROOM if feeder else 0.0
    shapes = (
        *_pressures(case, reader, up),
        *_line(case, reader, TOP + HIGH),
        *feeder,
        *bar_shapes(bars, LEFT - 4, base + 4),
    )
    height = base + 4 + len(bars) * EACH
    title = "Pressure along a drip line"
    scaled = "Pressures are to scale from zero, and each bar is to a scale of its own."
    return Drawing("line", title, _alt(case, reader), WIDTH, height, shapes, scaled)


# Along a line ---------------------------------------------------------------------------------


def _bad(case: Case) -> bool:
    """Whether the line is too uneven, or too weak."""
    uneven = case.solved.variation > practice.FLOW_VARIES[0] * MET
    emission = case.solved.emission(case.line.made)
    return uneven or emission * MET < practice.EMISSION[0] or case.line.short(case.solved)


def _pressures(case: Case, reader: Reader, up: Scale) -> Iterator[Shape]:
    found, places = case.solved, shown(case.line.outlets)
    across = Scale(0.0, case.line.length, LEFT, RIGHT)
    points = ((LEFT, up.at(case.start)), *(
        (across.at((at + 1) * case.line.spacing), up.at(found.pressures[at])) for at in places
    ))  # fmt: skip
    bad = _bad(case)
    which = "a line" if case.zone is None else "the weakest line"
    said = f"pressure along {which}" + (": uneven" if bad else "")
    yield Words(LEFT - 4, 14.0, said, role="bad" if bad else "soft", size=SMALL)
    yield Stroke(points, "bad" if bad else "ink", "dashed" if bad else "solid", 2.5, at="pressure")
    yield Stroke(((LEFT, up.start), (RIGHT, up.start)), "edge", width=1.0)
    ends = [(case.start, "start"), (found.pressures[-1], "end")]
    ends.sort(key=lambda one: -one[0])
    places_y = spread([up.at(value) for value, _ in ends], LINE, TOP, TOP + HIGH)
    for (value, name), y in zip(ends, places_y, strict=True):
        text = brief(value, "pressure", reader)
        yield Words(SAID, y + 4, text, bold=name == "end", size=SMALL, lead=name)


def _line(case: Case, reader: Reader, y: float) -> Iterator[Shape]:
    """The line itself, some of its drippers below it."""
    across = Scale(0.0, case.line.length, LEFT, RIGHT)
    yield Stroke(((LEFT, y), (RIGHT, y)), "pipe", width=3.0, at="line")
    for at in shown(case.line.outlets):
        x = across.at((at + 1) * case.line.spacing)
        yield Dot(x, y + DROP - 5, 2.5, "water", at=f"drop {at}")
    slope = case.line.slope
    lies = "level" if slope == 0 else f"{share(abs(slope))} {'uphill' if slope > 0 else 'downhill'}"
    long = brief(case.laid, "length", reader)
    yield Words(LEFT - 4, y + DROP + LINE, f"{long}, {lies}, {case.line.outlets} drippers",
                size=SMALL)  # fmt: skip


# Along the manifold ---------------------------------------------------------------------------


def _manifold(case: Case, reader: Reader, top: float) -> Iterator[Shape]:
    """Pressure where each line begins, and where the manifold is fed."""
    zone, way = case.zone, case.in_zone * case.rows
    up = Scale(0.0, max(*zone.starts, case.pressure), top + TOP + HIGH, top + TOP)
    across = Scale(0.0, way, LEFT, RIGHT)
    fed = way / 2 if case.manifold.middle else 0.0
    places = [((at + 0.5) * case.rows, start) for at, start in enumerate(zone.starts)]
    points = [(across.at(x), up.at(p)) for x, p in sorted([*places, (fed, case.pressure)])]
    varies = zone.variation > practice.FLOW_VARIES[0] * MET
    bad = varies or case.emission * MET < practice.EMISSION[0]
    said = "pressure along the manifold" + (": uneven" if bad else "")
    yield Words(LEFT - 4, top + 14.0, said, role="bad" if bad else "soft", size=SMALL)
    yield Stroke(tuple(points), "bad" if bad else "ink", "dashed" if bad else "solid", 2.5,
                 at="manifold pressure")  # fmt: skip
    yield Stroke(((LEFT, up.start), (RIGHT, up.start)), "pipe", width=3.0, at="manifold")
    yield Dot(across.at(fed), up.start, 4.0, "ink", hollow=True, at="feed")
    ends = sorted([(case.pressure, "fed"), (case.start, "least")], key=lambda one: -one[0])
    heights = spread([up.at(value) for value, _ in ends], LINE, top + TOP, top + TOP + HIGH)
    for (value, name), y in zip(ends, heights, strict=True):
        text = brief(value, "pressure", reader)
        yield Words(SAID, y + 4, text, bold=name == "least", size=SMALL, lead=name)
    long = brief(way, "length", reader)
    number = f"{case.in_zone} line" + ("s" if case.in_zone > 1 else "")
    yield Words(LEFT - 4, up.start + LINE + 4, f"{long}, {number}", size=SMALL)


# What is asked and what there is --------------------------------------------------------------


def _amounts(case: Case, reader: Reader) -> Iterator[Bar]:
    takes, has = numbers_apart(case.time / HOUR, case.hours / HOUR)
    yield "hours a day", case.time, case.hours, takes, has
    zone, source = reader.apart(case.zone_flow, case.flow, "flow")
    yield "flow of a zone", case.zone_flow, case.flow, zone, source
    if case.daily is not None:
        needs, gives = reader.apart(case.water, case.daily, "volume")
        yield "water a day", case.water, case.daily, needs, gives


def _alt(case: Case, reader: Reader) -> str:
    start, end = (reader.show(one, "pressure") for one in (case.start, case.solved.pressures[-1]))
    uneven = ", which is uneven" if _bad(case) else ""
    long = reader.show(case.line.length, "length")
    which = "one drip line" if case.zone is None else "the weakest drip line"
    said = f"Pressure along {which} of {long}: {start} at its start, {end} at its end{uneven}. "
    bars = bars_in_words(_amounts(case, reader))
    if case.zone is not None:
        least = reader.show(case.start, "pressure")
        said += f"Along the manifold of {case.in_zone} lines the least pressure is {least}. "
    return f"{said}Bars of what is needed and what there is: {bars}."
