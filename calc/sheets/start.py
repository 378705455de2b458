"""The picture of the start page: Alder Terrace in section, each part leading to its question."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING

from calc.page.drawing import touch
from calc.page.hill import earth
from calc.page.hill.layout import WIDTH, laid_out
from calc.page.hill.scene import Pipe, Scene, Source, Stop
from calc.page.shapes import SMALL, Area, Block, Dot, Drawing, Press, Stroke, Words
from calc.page.text_boxes import text_width
from calc.sheets import sheet
from calc.sheets.parts.pipe_choice import pipe_of
from calc.site.demo import NAME, alder_terrace
from calc.site.rows import PUMP

if TYPE_CHECKING:
    from calc.page.hill.layout import Layout
    from calc.page.shapes import Mark, Point, Shape
    from calc.site.rows import Row
    from calc.site.site import Site

# What each part asks, in few words, by the sheet that answers: over the ground, and under it
OVER = (
    ("well", "How much can the well give?"),
    ("suction", "How deep can the pump draw?"),
    ("pressure_tank", "Do I need a pressure tank?"),
    ("pump_match", "Which pump do I need?"),
    ("tank", "How big a storage tank?"),
    ("panels", "How many panels?"),
)
UNDER = (
    ("pressure", "psi, bar or feet?"),
    ("pipe", "What size of pipe?"),
    ("demand", "How much water?"),
    ("surge", "Why do the pipes bang?"),
    ("reach", "Will the water reach?"),
    ("keep_up", "Why is the shower weak?"),
    ("drip", "Will it water the garden?"),
)
VESSEL, EDGE = "pressure tank", 4.0
ROOF = 22.0  # units from the foot of a house to its top
SIZE = SMALL


@dataclass(frozen=True)
class Part:
    """A part of the picture: where a line from its question ends, and its own shapes."""

    point: Point
    shapes: tuple[Mark, ...] = ()


def start_picture() -> Drawing:
    """The start page's ``Drawing``; its parts lead to the guides.  Raises nothing."""
    site = alder_terrace()
    layout = laid_out(_scene(site))
    row = touch(WIDTH) + 0.5
    sky = len(OVER) * row + 6.0
    lift = sky - min(layout.reach.roof) + ROOF
    layout = replace(layout, down=lift)
    parts = _parts(site, layout)
    under = max(layout.deep(0.0, WIDTH), layout.y(0.0)) + 4.0
    height = under + len(UNDER) * row + EDGE
    shapes: list[Shape] = [
        earth.ground(layout, height), *earth.source(layout), *earth.pipes(layout),
        *earth.stops(layout),
    ]  # fmt: skip
    # from left to right, each below the one before: so no line crosses another's words
    shapes += _others(site, layout)
    for top, asked, over in ((2.0, OVER, True), (under, UNDER, False)):
        ordered = sorted(asked, key=lambda one: parts[one[0]].point[0])
        for at, (key, text) in enumerate(ordered):
            shapes.append(_asked(parts[key], key, text, top + at * row, row, over))
    alt = (
        f"{NAME}, an invented place, in section: a well, a pump and its tanks on the left, and a "
        "pipe up the hill to a trough, herb terraces, a wash-house and three cabins. Each part "
        "leads to a question."
    )
    return Drawing(
        "start", NAME, alt, WIDTH, height, tuple(shapes), "Heights are to scale; the rest is not."
    )


def _scene(site: Site) -> Scene:
    """The site's points and pipes; the tank in the shed and the pressure tank by the pump."""
    stops, pipes = [Stop(PUMP, "", 0.0), Stop(VESSEL, "", 0.0)], []
    for at, row in enumerate(site.rows("sections"), 1):
        start, end = (site.word("sections", row, one) for one in ("from", "to"))
        bore = pipe_of(site.word("sections", row, "pipe")).inside_m
        stops.append(Stop(end, "", site.cell("sections", row, "height")))
        if start == PUMP:
            pipes.append(Pipe("pipe 0", PUMP, VESSEL, bore))
            start = VESSEL
        pipes.append(Pipe(f"pipe {at}", start, end, bore))
    for row in site.rows("tanks"):
        name = site.word("tanks", row, "name")
        stops.append(Stop(name, "", site.cell("tanks", row, "level"), tank=True))
        pipes.append(Pipe("", PUMP, name, 0.0))  # beside the pump, with no pipe to it
    level = -abs(site.value("water.level"))
    bore = pipe_of(site.best("suction.pipe").text).inside_m
    return Scene(PUMP, Source("well", level, bore), tuple(stops), tuple(pipes), (), "")


# Parts ----------------------------------------------------------------------------------------


def _parts(site: Site, layout: Layout) -> dict[str, Part]:
    """Each sheet's part of the site."""
    outlets = site.rows("outlets")
    heights = {stop.key: stop.height_m for stop in layout.scene.stops}

    def highest(rows: list[Row]) -> str:
        return max((site.word("outlets", row, "at") for row in rows), key=heights.__getitem__)

    def of(*kinds: str) -> list[Row]:
        return [row for row in outlets if site.word("outlets", row, "kind") in kinds]

    places = {site.word("outlets", row, "at") for row in outlets}
    shower, hose, trough = highest(of("shower")), highest(of("hose")), highest(of("float"))
    next_best = max(places - {shower, hose, trough}, key=heights.__getitem__)
    (tank,) = [stop.key for stop in layout.scene.stops if stop.tank]
    return {
        "suction": Part(((earth.WELL + layout.ends[PUMP][0]) / 2, layout.y(0.0) - 5.0)),
        "pump_match": Part((layout.ends[PUMP][0], layout.y(0.0) - 14.0)),
        "pressure_tank": _vessel(layout),
        "panels": _panels(layout),
        "tank": Part((layout.ends[tank][0], layout.y(heights[tank]) - 5.0)),
        "pressure": _gauge(layout),
        "pipe": Part(_middle(layout)),
        "demand": _trough(layout, trough),
        "surge": _house(layout, hose),
        "reach": _house(layout, next_best),
        "keep_up": _house(layout, shower),
        "well": Part((earth.WELL, layout.y(-1.0))),
        "drip": Part(_foot(layout, highest(of("drip")))),
    }


def _foot(layout: Layout, stop: str) -> Point:
    x = layout.ends[stop][0]
    return x, layout.ground_at(x)


def _house(layout: Layout, stop: str) -> Part:
    x, y = _foot(layout, stop)
    roof = ((x - 11, y - 13), (x, y - ROOF), (x + 11, y - 13))
    return Part(
        (x, y + 2.0),
        (
            Block(x - 8, y - 14, 16, 14, "paper", "ink", line=1.4),
            Area(roof, "soft", "ink", 1.4),
            Dot(x, y, 2.6, "ink", hollow=True),
        ),
    )


def _others(site: Site, layout: Layout) -> list[Mark]:
    """Houses and beds that ask nothing."""
    shapes: list[Mark] = []
    for row in site.rows("outlets"):
        stop = site.word("outlets", row, "at")
        if site.word("outlets", row, "kind") == "drip":
            shapes += _bed(layout, stop)
        elif site.word("outlets", row, "kind") != "float":
            shapes += _house(layout, stop).shapes
    return shapes


def _bed(layout: Layout, stop: str) -> list[Mark]:
    """Three plants."""
    x, y = _foot(layout, stop)
    shapes: list[Mark] = []
    for at in (-7.0, 0.0, 7.0):
        foot = layout.ground_at(x + at)
        shapes.append(Stroke(((x + at, foot), (x + at, foot - 10.0)), "good", width=1.6))
        leaf = ((x + at - 3.5, foot - 9.0), (x + at, foot - 5.0), (x + at + 3.5, foot - 9.0))
        shapes.append(Stroke(leaf, "good", width=1.6))
    return shapes


def _trough(layout: Layout, stop: str) -> Part:
    x, y = _foot(layout, stop)
    sides = ((x - 9, y - 8), (x + 9, y - 8), (x + 6, y), (x - 6, y))
    return Part((x, y + 2.0), (Area(sides, "water", "ink", 1.4),))


def _vessel(layout: Layout) -> Part:
    x, y = _foot(layout, VESSEL)
    return Part(
        (x, y - 21.0),
        (
            Block(x - 7, y - 21, 14, 20, "paper", "ink", line=1.4, corner=6.0),
            Block(x - 6, y - 10, 12, 8, "water", corner=3.0),
        ),
    )


def _panels(layout: Layout) -> Part:
    """On a frame where there is most room between two stops."""
    feet = sorted(layout.ends[stop.key][0] for stop in layout.scene.stops)
    left, right = max(pairwise(feet), key=lambda pair: pair[1] - pair[0])
    x = (left + right) / 2
    y = layout.ground_at(x)
    tilted = ((x - 11, y - 7), (x + 5, y - 17), (x + 11, y - 14), (x - 5, y - 4))
    legs = ((x - 6, y), (x - 6, y - 6), (x + 7, y - 14), (x + 7, layout.ground_at(x + 7)))
    return Part(
        (x, y - 15.0),
        (Stroke(legs, "ink", width=1.4), Area(tilted, "one", "ink", 1.2)),
    )


def _gauge(layout: Layout) -> Part:
    """On the pipe after the pump."""
    x, y = _foot(layout, VESSEL)
    x += 13.0
    return Part(
        (x, y + 6.0),
        (
            Stroke(((x, y + 5.0), (x, y - 6.0)), "ink", width=1.4),
            Dot(x, y - 9.0, 5.0, "ink", hollow=True),
            Stroke(((x, y - 9.0), (x + 2.5, y - 12.0)), "ink", width=1.2),
        ),
    )


def _middle(layout: Layout) -> Point:
    """A place on the longest pipe as drawn."""
    lane = max(
        (one for one in layout.lanes if one.pipe.at),
        key=lambda one: layout.ends[one.right][0] - layout.ends[one.left][1],
    )
    x = (layout.ends[lane.left][1] + layout.ends[lane.right][0]) / 2
    return x, layout.lane_y(lane, x) + 3.0


# Questions ------------------------------------------------------------------------------------


def _asked(part: Part, key: str, text: str, top: float, row: float, over: bool) -> Press:
    """A part with its question, which leads to the guide."""
    x, y = part.point
    wide = text_width(text, SIZE, bold=True)
    base = top + row / 2 + 0.27 * SIZE
    if over:  # words to the right of the line that comes up
        left = min(x - 3.0, WIDTH - EDGE - wide)
        line = ((x, top + row - 5.0), (x, y))
        words = Words(left, base, text, "start", "accent", True, SIZE)
    else:  # words to the left of the line that comes down
        right = max(x + 3.0, EDGE + wide)
        left = right - wide
        line = ((x, y), (x, top + 5.0))
        words = Words(right, base, text, "end", "accent", True, SIZE)
    leader = Stroke(line, "soft", "dotted", 1.2)
    room = (max(0.0, left - 4.0), top, min(wide + 8.0, WIDTH - max(0.0, left - 4.0)), row - 0.2)
    return Press((leader, *part.shapes, words), text, *room, href=sheet(key).page, at=f"ask {key}")
