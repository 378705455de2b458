"""The sprinkler sheet's picture: four sprinklers from above with what each wets, and bars."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Block, Dot, Drawing, Stroke, Words
from calc.sheets.parts.bars import EACH, bar_shapes, bars_in_words
from calc.sheets.parts.scaled import LINE, WIDTH, brief
from calc.units import HOUR, MET, numbers_apart

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.parts.bars import Bar
    from calc.sheets.sprinkler.case import Case
    from calc.units import Reader

LEFT = 6.0  # units
TOP, HIGH = 22.0, 150.0  # units over the ground seen from above, and its height at most
ROUND = 48  # corners of a circle


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    bars = list(_amounts(case, reader))
    base = TOP + HIGH + 2 * LINE + 8
    shapes = (*_ground(case, reader), *bar_shapes(bars, LEFT, base))
    title = "Sprinklers from above"
    scaled = "The ground is to scale, and each bar is to a scale of its own."
    height = base + len(bars) * EACH
    return Drawing("ground", title, _alt(case, reader), WIDTH, height, shapes, scaled)


def _bad(case: Case) -> bool:
    return case.spread > case.allowed * MET


def _ground(case: Case, reader: Reader) -> Iterator[Shape]:
    """Four sprinklers at the corners of the ground that one waters."""
    throws, bad = case.throws, _bad(case)
    each = min((WIDTH - 2 * LEFT) / (case.along + 2 * throws), HIGH / (case.between + 2 * throws))
    wide, deep = case.along * each, case.between * each
    left, top = (WIDTH - wide) / 2, TOP + (HIGH - deep) / 2
    weak = case.throws < case.one.radius_m
    said = "what each sprinkler wets" + (": too little pressure" if weak else "")
    yield Words(LEFT, 14.0, said, role="bad" if weak else "soft", size=SMALL)
    yield Block(left, top, wide, deep, "soft", "edge", at="ground")
    corners = [(left + x, top + y) for x in (0.0, wide) for y in (0.0, deep)]
    role, style = ("bad", "dashed") if bad or weak else ("water", "solid")
    for at, (x, y) in enumerate(corners):
        turns = [2 * math.pi * one / ROUND for one in range(ROUND + 1)]
        r = throws * each
        circle = tuple((x + r * math.cos(turn), y + r * math.sin(turn)) for turn in turns)
        yield Stroke(circle, role, style, 1.8, at=f"wetted {at}")
        yield Dot(x, y, 3.0, "ink", at=f"sprinkler {at}")
    along, between = (brief(one, "length", reader) for one in (case.along, case.between))
    radius = brief(throws, "length", reader)
    text = f"{along} by {between} apart, each throws {radius}"
    yield Words(LEFT, TOP + HIGH + LINE, text, role="bad" if bad else "ink", bold=bad, size=SMALL)
    if bad:
        most = reader.show(case.allowed * 2 * throws, "length")
        yield Words(LEFT, TOP + HIGH + 2 * LINE, f"up to {most} is good in this wind", role="bad",
                    size=SMALL)  # fmt: skip


def _amounts(case: Case, reader: Reader) -> Iterator[Bar]:
    takes, has = numbers_apart(case.time / HOUR, case.hours / HOUR)
    yield "hours, busiest day", case.time, case.hours, takes, has
    zone, source = reader.apart(case.zone_flow, case.flow, "flow")
    yield "flow of a zone", case.zone_flow, case.flow, zone, source
    if case.daily is not None:
        needs, gives = reader.apart(case.water, case.daily, "volume")
        yield "water a day", case.water, case.daily, needs, gives
    if case.soil is not None:
        gives, takes = reader.apart(case.rate * HOUR, case.soil.low * HOUR, "rain")
        yield "an hour on the soil", case.rate, case.soil.low, gives, takes


def _alt(case: Case, reader: Reader) -> str:
    along, between, radius = (
        reader.show(one, "length") for one in (case.along, case.between, case.throws)
    )
    dry = ", which is too far apart" if _bad(case) else ""
    said = f"Sprinklers {along} by {between} apart{dry}, each wetting {radius} around it. "
    bars = bars_in_words(_amounts(case, reader))
    return f"{said}Bars of what is needed and what there is: {bars}."
