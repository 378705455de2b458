"""The suction sheet's picture: the well, the pump, and a ruler of how far air pushes the water.

Heights are to scale, from the lowest water up.  The ruler starts at what the air's pressure could
raise; vapour, friction, the pump's NPSH and the margin are taken off it from the top.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Block, Drawing, Stroke, Words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, spread
from calc.sheets.suction.case import SLACK
from calc.units import GRAVITY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.suction.case import Case
    from calc.units import Reader

PLOT, BELOW = 190.0, 42.0  # units of and under what is to scale
LOW_TOP, HIGH_TOP = 12.0, 44.0  # units over it, without and with words over the pump
SHAFT, PUMP, RULER, SAID = 20.0, 86.0, 150.0, 174.0  # left edges: well, pump, ruler, its words
WIDE = {"shaft": 30.0, "pump": 28.0, "ruler": 14.0}
HALF_PUMP = 8.0  # units from the pump's inlet down to the ground
VAPOUR_SEEN = 0.3  # m, from which vapour has a part of its own on the ruler; our choice


@dataclass(frozen=True)
class _Part:
    """Of the ruler: from ``low`` to ``high``, m above the water."""

    name: str
    low: float
    high: float
    said: str
    role: str


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    parts = _parts(case)
    bottom = min(0.0, case.lift, max(parts[-1].low, -case.limit))
    high = max(parts[0].high, case.lift)
    top = HIGH_TOP if case.lift > high - 0.2 * (high - bottom) else LOW_TOP
    scale = Scale(bottom, high, top + PLOT, top)
    height = top + PLOT + BELOW
    shapes = (
        *_scene(case, scale, height),
        *_pump(case, reader, scale),
        *_ruler(case, parts, reader, scale, height),
    )
    title = "How high air can push the water"
    scaled = "Heights are to scale."
    return Drawing("well", title, _alt(case, reader), WIDTH, height, shapes, scaled)


def _parts(case: Case) -> tuple[_Part, ...]:
    """The ruler's parts from its top down to what is left for the lift."""
    vapour = case.site.vapour_pa / (case.site.density * GRAVITY)
    taken = [
        ("vapour", vapour if vapour >= VAPOUR_SEEN else 0.0, "warm water", "rule"),
        ("friction", case.loss, "friction", "earth"),
        ("pulses", case.pulses, "pulses", "rule"),
        ("needed", case.needed or 0.0, "pump needs", "glass"),
        ("margin", case.margin, "margin", "paper"),
    ]
    high = case.limit + taken[0][1]
    found = [_Part("air", high, high, "air pushes", "")]
    for name, takes, said, role in taken:
        if takes > 0:
            found.append(_Part(name, high - takes, high, said, role))
            high -= takes
    return tuple(found)


# The well and the pump ----------------------------------------------------------------------


def _scene(case: Case, scale: Scale, height: float) -> Iterator[Shape]:
    water, inlet = scale.at(0.0), scale.at(case.lift)
    ground = inlet + HALF_PUMP
    wide, middle = WIDE["shaft"], SHAFT + WIDE["shaft"] / 2
    yield Block(0.0, ground, RULER - 12, height - ground, "earth")
    if case.lift > 0:
        yield Stroke(((SHAFT + wide, water), (RULER, water)), "edge", "dotted", 1.0)
        top, foot, end = min(ground, water - 6), water + 16, water + 26
        yield Block(SHAFT, top, wide, end - top, "paper")
        yield Block(SHAFT, water, wide, end - water, "water", at="water")
        for side in (SHAFT, SHAFT + wide):
            yield Stroke(((side, top), (side, end)), "edge", width=1.5)
        yield Stroke(((middle, foot), (middle, inlet), (PUMP, inlet)), "pipe", width=4, at="pipe")
        yield Block(middle - 5, foot, 10, 5, "pipe")
    else:
        yield Block(SHAFT, water - 6, wide, ground - water + 6, "paper")
        yield Block(SHAFT, water, wide, ground - water, "water", at="water")
        sides = ((SHAFT, water - 6), (SHAFT, ground), (SHAFT + wide, ground))
        yield Stroke((*sides, (SHAFT + wide, water - 6)), "edge", width=1.5)
        yield Stroke(((SHAFT + wide, inlet), (PUMP, inlet)), "pipe", width=4, at="pipe")
    yield Block(PUMP, inlet - 8, WIDE["pump"], 8 + HALF_PUMP, "pump", corner=3, at="pump")


def _pump(case: Case, reader: Reader, scale: Scale) -> Iterator[Shape]:
    """How high the pump is, and by how much too high."""
    inlet, water = scale.at(case.lift), scale.at(0.0)
    middle = PUMP + WIDE["pump"] / 2 - 20
    over = _over(case)
    lift = brief(abs(case.lift), "length", reader)
    if case.lift <= 0:
        yield Words(
            middle, inlet + 24, f"{lift} down", "middle", bold=True, size=SMALL, lead="pump"
        )
        yield Words(SHAFT + WIDE["shaft"] + 6, water - 12, "water", size=SMALL)
        if over > 0:
            yield _too_high(middle, inlet + 24 + LINE - 2, over, reader)
        return
    yield Stroke(((PUMP + WIDE["pump"], inlet), (RULER, inlet)), "ink", "dotted", at="level")
    yield Words(middle, inlet - 12, f"{lift} up", "middle", bold=True, size=SMALL, lead="pump")
    if over > 0:
        yield _too_high(middle, inlet - 12 - LINE + 1, over, reader)
    yield Words(SHAFT + WIDE["shaft"] + 6, water + 24, "lowest water", size=SMALL)


def _over(case: Case) -> float:
    """By how much the pump is too high, m; 0: it is not, or nobody knows."""
    most = case.lift + case.would_pass if case.needed is None else case.allowed
    return max(0.0, case.lift - most - SLACK)


def _too_high(x: float, y: float, over: float, reader: Reader) -> Words:
    text = f"{reader.show(over, 'length')} too high"
    return Words(x, y, text, "middle", "bad", bold=True, size=SMALL)


# The ruler ----------------------------------------------------------------------------------


def _ruler(
    case: Case, parts: tuple[_Part, ...], reader: Reader, scale: Scale, height: float
) -> Iterator[Shape]:
    """The parts, each with its name beside it, led to where it is."""
    end = RULER + WIDE["ruler"]
    for part in (*parts[1:], *_left(case, parts[-1].low)):
        high, low = (max(one, scale.low) for one in (part.high, part.low))
        if high > low:
            y = scale.at(high)
            yield Block(RULER, y, WIDE["ruler"], scale.at(low) - y, part.role, "edge", at=part.name)
    yield from _marks(case, parts, scale)
    said = sorted(_said(case, parts, reader), key=lambda one: -one[0])
    wanted = [scale.at(max(level, scale.low)) for level, _ in said]
    places = spread(wanted, LINE, scale.end - 2, height - 8)
    for at, place, (_, words) in zip(wanted, places, said, strict=True):
        yield Stroke(((end, at), (SAID - 4, place)), "edge", width=1)
        lead, text, role = words
        yield Words(SAID, place + 4, text, role=role, bold=not lead, size=SMALL, lead=lead)


def _left(case: Case, most: float) -> tuple[_Part, ...]:
    """What is left of the ruler for the lift, and for the pump where its need is not known."""
    if case.needed is not None:
        return (_Part("left", 0.0, max(most, 0.0), "", "water"),)
    raised = max(min(case.lift, most), 0.0)
    return (
        _Part("left", 0.0, raised, "", "water"),
        _Part("free", min(case.lift, most), most, "", "glass"),
    )


def _marks(case: Case, parts: tuple[_Part, ...], scale: Scale) -> Iterator[Shape]:
    """The top of the ruler and its mark; by how much the pump is over it."""
    most, over = parts[-1].low, _over(case)
    if over > 0:
        low, high = scale.at(max(most, scale.low)), scale.at(case.lift)
        yield Block(RULER - 8, high, 7, low - high, "bad", "bad", at="over")
    levels = [(parts[0].high, "top", "solid"), (most, "most", "solid")]
    if _above_usual(case):
        levels.append((case.usual_lift, "usual", "dotted"))
    for level, name, style in levels:
        if scale.shows(level):
            y = scale.at(level)
            ends = ((RULER - 4, y), (RULER + WIDE["ruler"] + 4, y))
            yield Stroke(ends, "ink", style, 2.5, at=name)


def _above_usual(case: Case) -> bool:
    """Whether the rule of the trade is worth a mark: the pump is above it."""
    return case.lift > case.usual_lift + SLACK


Said = tuple[float, tuple[str, str, str]]  # m above the water; lead, text, role of the words


def _said(case: Case, parts: tuple[_Part, ...], reader: Reader) -> Iterator[Said]:
    """What is written beside the ruler."""
    yield parts[0].high, (parts[0].said, brief(parts[0].high, "head", reader), "ink")
    for part in parts[1:]:
        takes = brief(part.high - part.low, "head", reader)
        yield (part.high + part.low) / 2, (part.said, f"−{takes}", "ink")
    most = parts[-1].low
    if _above_usual(case):
        yield case.usual_lift, ("in practice", reader.show(case.usual_lift, "length", 2), "ink")
    if case.needed is None:
        if case.would_pass > SLACK:
            free = brief(case.would_pass, "head", reader)
            yield (most + case.lift) / 2, ("left for pump", free, "ink")
        else:
            yield most, ("", "nothing is left", "bad")
        return
    role = "bad" if _over(case) > 0 else "ink"
    if most >= 0:
        yield most, ("", f"{brief(most, 'length', reader)} at most", role)
    elif most >= -case.limit:
        yield most, ("", f"{brief(-most, 'length', reader)} under water", role)
    else:
        yield most, ("", "nothing is left", role)


def _alt(case: Case, reader: Reader) -> str:
    show = reader.show
    most = _parts(case)[-1].low
    side = "above" if case.lift >= 0 else "below"
    said = (
        f"A ruler beside the well: air pressure raises this water {show(case.limit, 'head')} at "
        f"most, friction takes {show(case.loss, 'head')} of it"
    )
    if case.pulses > 0:
        said += f", pulses {show(case.pulses, 'head')}"
    pump = f"The pump is {show(abs(case.lift), 'length')} {side} the lowest water."
    if case.needed is None:
        left = max(case.would_pass, 0.0)
        return f"{said}, and {show(left, 'head')} is left for the pump itself. {pump}"
    need = f"{said} and the pump {show(case.needed + case.margin, 'head')} with its margin"
    if most >= 0:
        return f"{need}, so the pump may be up to {show(most, 'length')} above the water. {pump}"
    return f"{need}, so the pump must be {show(-most, 'length')} under the water. {pump}"
