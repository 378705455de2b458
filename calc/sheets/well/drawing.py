"""The well sheet's picture: a cut through the well to scale, and the day's water beside its use."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Block, Drawing, Stroke, Words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, spread

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.well.case import Case
    from calc.units import Reader

TOP, HIGH = 18.0, 150.0  # units over the ground, and from it to the floor of the well
LEFT, SHAFT, SAID = 30.0, 46.0, 118.0  # left edge of the well, its width, the words beside it
EARTH = 96.0  # units, as wide as the ground is drawn
BAR, BARS = 12.0, 150.0  # units a bar is high, and the longer of two long
UNDER = 0.12  # of the intake's depth, that is drawn below it where the floor is not known


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    floor = case.depth if case.depth is not None else case.intake * (1 + UNDER)
    scale = Scale(0.0, floor, TOP, TOP + HIGH)
    base = TOP + HIGH + 30
    shapes = (*_well(case, scale, floor), *_said(case, reader, scale), *_day(case, reader, base))
    title = "Levels in the well"
    height = base + 2 * (LINE + BAR) + 12
    scaled = "Depths are to scale, and the two bars are."
    return Drawing("well", title, _alt(case, reader), WIDTH, height, shapes, scaled)


def _dry(case: Case) -> bool:
    """Whether the pump runs dry, for all that is known."""
    return not case.keeps_up and not case.dry


def _well(case: Case, scale: Scale, floor: float) -> Iterator[Shape]:
    middle, right = LEFT + SHAFT / 2, LEFT + SHAFT
    end = scale.at(floor)
    yield Block(4.0, TOP, EARTH, HIGH + 14, "earth")
    yield Block(LEFT, TOP - 8, SHAFT, end - TOP + 8, "paper")
    level = scale.at(case.level)
    yield Block(LEFT, level, SHAFT, end - level, "water", at="water")
    rest = scale.at(case.static)
    yield Stroke(((LEFT, rest), (right, rest)), "ink", "dashed", 1.5, at="static")
    for side in (LEFT, right):
        yield Stroke(((side, TOP - 8), (side, end)), "edge", width=1.5)
    yield Stroke(((LEFT, end), (right, end)), "edge", width=1.5, at="floor")
    intake = scale.at(case.intake)
    yield Stroke(((middle, TOP - 14), (middle, intake)), "pipe", width=4, at="pipe")
    if case.submersible:
        high = min(18.0, intake - TOP)
        yield Block(middle - 5, intake - high, 10, high, "pump", corner=2, at="pump")
    yield Block(middle - 6, intake - 2, 12, 4, "pipe", at="intake")
    if _dry(case):
        low = scale.at(case.lowest)
        yield Stroke(((LEFT, low), (right, low)), "bad", "dotted", 3.0, at="dry")


def _said(case: Case, reader: Reader, scale: Scale) -> Iterator[Shape]:
    """What is written beside the well, led to it."""
    said = [
        (case.static, "static level", brief(case.static, "length", reader), "ink"),
        (case.level, "pump on" if case.keeps_up else "lowest", _level(case, reader), "ink"),
        (case.intake, "intake", brief(case.intake, "length", reader), "ink"),
    ]
    if case.depth is not None:
        said.append((case.depth, "floor", brief(case.depth, "length", reader), "ink"))
    if _dry(case):
        said[1] = (*said[1][:3], "bad")
    said.sort(key=lambda one: one[0])
    wanted = [scale.at(level) for level, *_ in said]
    places = spread(wanted, LINE, TOP, TOP + HIGH + 8)
    for at, place, (_, lead, text, role) in zip(wanted, places, said, strict=True):
        yield Stroke(((LEFT + SHAFT, at), (SAID - 4, place)), "edge", width=1.0)
        yield Words(SAID, place + 4, text, role=role, bold=True, size=SMALL, lead=lead)


def _level(case: Case, reader: Reader) -> str:
    level = brief(case.level, "length", reader)
    return f"{level}, runs dry" if _dry(case) else level


def _day(case: Case, reader: Reader, y: float) -> Iterator[Shape]:
    """Two bars: what well and pump can give in a day, and what is used."""
    gives, use = case.day_most, case.use
    scale = Scale(0.0, max(gives, use), 0.0, BARS)
    short = use > gives * (1 + 1e-9)
    for row, (name, value, role) in enumerate(
        (("can give", gives, "water"), ("you use", use, "bad" if short else "earth"))
    ):
        top = y + row * (LINE + BAR)
        yield Block(4.0, top, scale.long(value), BAR, role, "edge", at=name)
        text = brief(value, "volume", reader)
        said = f"{text} a day" + (", too much" if role == "bad" else "")
        yield Words(4.0, top + BAR + 12, said, role="bad" if role == "bad" else "ink", bold=True,
                    size=SMALL, lead=name)  # fmt: skip


def _alt(case: Case, reader: Reader) -> str:
    show = reader.show
    runs = "and the pump runs dry there" if _dry(case) else "and no lower"
    falls = (
        f"it falls to {show(case.level, 'length')} while the pump runs"
        if case.keeps_up
        else f"the pump draws it to {show(case.level, 'length')}, {runs}"
    )
    floor = "" if case.depth is None else f" The floor is at {show(case.depth, 'length')}."
    return (
        f"A cut through the well: at rest the water is {show(case.static, 'length')} below the "
        f"top; {falls}. The intake is at {show(case.intake, 'length')}.{floor} Well and pump "
        f"can give {show(case.day_most, 'volume')} a day, and you use {show(case.use, 'volume')}."
    )
