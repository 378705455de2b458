"""The picture of the gravity sheet: the pipe down the hill, and how high its water could rise."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.gravity import Break
from calc.page.shapes import SMALL, Area, Dot, Drawing, Stroke, Words
from calc.sheets.parts.scaled import LINE, WIDTH, Scale

if TYPE_CHECKING:
    from calc.gravity import State
    from calc.page.shapes import Point, Shape
    from calc.sheets.gravity.case import Case
    from calc.units import Reader

TOP, HIGH, SIDE = 46.0, 130.0, 12.0  # units: over the hill, its height, beside it
BELOW = 26.0  # units of ground under the lowest point
KEY = (
    "Distances and heights are each to scale. Dashed: how high standing water would rise; full: "
    "running water."
)


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    fall = case.fall
    runs = case.drop_m > 0
    still = _heads(fall.standing, fall.weight)
    lines = [*still, *(_heads(case.states, fall.weight) if runs else [])]
    heights = [one.height_m for one in fall.spots] + [high for _, high in lines]
    low, high = min(heights), max(heights)
    span = max(high - low, 1e-3)
    across = Scale(0.0, fall.length_m, SIDE, WIDTH - SIDE)
    up = Scale(low, low + span, TOP + HIGH, TOP)
    floor = TOP + HIGH + BELOW
    pipe = tuple((across.at(one.distance_m), up.at(one.height_m)) for one in fall.spots)
    shapes: list[Shape] = [
        Area((*pipe, (pipe[-1][0], floor), (pipe[0][0], floor)), "earth", at="ground"),
        Stroke(pipe, "pipe", width=3.0, at="pipe"),
        *_lines(case, across, up),
        *_breaks(case, across, up),
        Dot(*pipe[0], 5.0, "water", at="source"),
        Dot(*pipe[-1], 4.0, "ink", at="outlet"),
        *_words(case, pipe, floor, reader),
    ]
    return Drawing("fall", "The pipe, and how high its water would rise", alt(case, reader), WIDTH,
                   floor + 2 * LINE + 10, tuple(shapes), KEY)  # fmt: skip


def _heads(states: tuple[State, ...], weight: float) -> list[Point]:
    """(distance, height of the pressure line), m: twice at a break."""
    found = []
    for one in states:
        spot = one.spot
        found.append((spot.distance_m, spot.height_m + one.before_pa / weight))
        if one.after_pa != one.before_pa:
            found.append((spot.distance_m, spot.height_m + one.after_pa / weight))
    return found


def _lines(case: Case, across: Scale, up: Scale) -> list[Shape]:
    if case.drop_m <= 0:
        return []
    shapes: list[Shape] = []
    for states, role, style, at in (
        (case.fall.standing, "accent", "dashed", "still"),
        (case.states, "accent", "solid", "running"),
    ):
        points = tuple(
            (across.at(along), up.at(high)) for along, high in _heads(states, case.fall.weight)
        )
        shapes.append(Stroke(points, role, style, 2.0, at=at))
    over = case.over
    if over is not None:
        spot = over.spot
        line = spot.height_m + over.before_pa / case.fall.weight
        x = across.at(spot.distance_m)
        shapes.append(Stroke(((x, up.at(line)), (x, up.at(spot.height_m))), "bad", "solid", 3.0,
                             at="crest"))  # fmt: skip
        shapes.append(Dot(x, up.at(spot.height_m), 4.5, "bad", at="top"))
    return shapes


def _breaks(case: Case, across: Scale, up: Scale) -> list[Shape]:
    """Hollow marks on the pipe, named once, over the hill."""
    breaks = case.fall.breaks
    if not breaks:
        return []
    shapes: list[Shape] = [
        Dot(across.at(one.distance_m), up.at(one.height_m), 4.0, "ink", hollow=True, at="break")
        for one in breaks
    ]
    name = case.kept if len(breaks) == 1 else f"{len(breaks)} {case.kept}s"
    shapes.append(Dot(WIDTH - SIDE - 4.0, 10.0, 4.0, "ink", hollow=True))
    shapes.append(Words(WIDTH - SIDE - 13.0, 14.0, name, "end", size=SMALL))
    return shapes


def _words(case: Case, pipe: tuple[Point, ...], floor: float, reader: Reader) -> list[Shape]:
    """Source and outlet, each in two lines: over the hill and under it, so that none meet."""
    drop = reader.show(abs(case.drop_m), "length", 2)
    gives = "" if case.spring is None else f"gives {reader.show(case.spring, 'flow', 2)}"
    left = max(0.0, case.left)
    level = practice.enough(case.left, case.need.works_pa, case.need.comfortable_pa)
    role = {"stop": "bad", "care": "tight"}.get(level, "ink")
    flow = reader.show(case.flow, "flow", 2)
    over, crest = case.over, ""
    if over is not None and case.drop_m > 0:
        what = "too little" if isinstance(over.spot, Break) else "crest sucks air"
        crest = f"{what} at {reader.show(over.spot.distance_m, 'length', 2)}"
    found: list[Shape] = [
        Words(WIDTH - SIDE, 14.0 + LINE, crest, "end", "bad", bold=True, size=SMALL, at="cause"),
        Words(SIDE, 14.0, "source", bold=True),
        Words(SIDE, 14.0 + LINE, gives, size=SMALL),
        Words(WIDTH - SIDE, floor + LINE, f"{reader.show(left, 'pressure', 2)} with {flow}", "end",
              role, bold=True, lead="outlet", at="left"),
        Words(WIDTH - SIDE, floor + 2 * LINE, f"{reader.show(case.fall.length_m, 'length', 2)} of "
              f"pipe, {drop} {'down' if case.drop_m >= 0 else 'up'}", "end", size=SMALL),
    ]  # fmt: skip
    return [one for one in found if not isinstance(one, Words) or one.text]


def alt(case: Case, reader: Reader) -> str:
    """What the picture shows, in sentences."""
    drop, long = (
        reader.show(abs(case.drop_m), "length", 2),
        reader.show(case.fall.length_m, "length", 2),
    )
    way = "below" if case.drop_m >= 0 else "above"
    told = [f"The pipe in section: {long} to an outlet {drop} {way} the source."]
    still, left = (reader.show(max(0.0, one), "pressure", 2) for one in (case.static, case.left))
    told.append(f"There the pressure is {still} with no flow and {left} with water running.")
    count = len(case.fall.breaks)
    if count:
        several = "is a" if count == 1 else f"are {count}"
        told.append(f"On the way {several} {case.kept}{'' if count == 1 else 's'}.")
    over = case.over
    if case.drop_m > 0 and over is not None and not isinstance(over.spot, Break):
        told.append("Marked: a crest above the line of running water.")
    return " ".join(told)
