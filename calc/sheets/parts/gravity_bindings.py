"""How the gravity sheet's fields stand to a site whose way to an outlet begins at open water."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.sheets.parts import bindings as b
from calc.sheets.parts import worked_out as w
from calc.sheets.parts.bindings import Asked, Binding, figure, written
from calc.sheets.parts.table_bindings import Cells
from calc.site import profile
from calc.site.open_water import BEGINNINGS
from calc.site.rows import SOURCE, fold
from calc.units import parse

if TYPE_CHECKING:
    from calc.site.facts import Fact
    from calc.site.site import Site

MOST = 60  # points that the sheet's table holds


def falling(asked: Asked) -> bool:
    """Whether the way begins at open water and has nothing in it but pipe and bends, which is all
    that the sheet knows.  Raises nothing."""
    return asked.open_water and not any(one.device or one.reducer for one in asked.way.sections)


def drop() -> Binding:
    """From the source's water down to the point: one to one with the point's height."""
    climb = b.climb()

    def take(asked: Asked, fact: Fact) -> Site:
        if fact.known:
            rise = -parse(fact.text, "length").value
            fact = replace(fact, text=written(rise, "length").text)
        return climb.take(asked, fact) if climb.take else asked.site

    return replace(figure("drop", "length", w.raised), take=take, only=climb.only)


def extra(asked: Asked) -> float:
    """Bends as added length: the share of all sections' length that loses as much."""
    line, flow = w.line_of(asked), asked.way.flow
    straight = sum(line.straight_loss_in(one, flow) for one in line.sections)
    return sum(line.local_loss_in(one, flow) for one in line.sections) / straight


def profile_of(asked: Asked) -> tuple[Cells, ...]:
    """The way point by point: where sections meet, and the points that their rows hold."""
    if not falling(asked):
        return ()
    site, way = asked.site, asked.way
    top = asked.solved.moving.network.heights[way.start]
    here, along, high, found, told = fold(way.start), 0.0, top, [(0.0, top)], not way.single
    for at, section in zip(way.rows, way.sections, strict=True):
        row = site.rows("sections")[at]
        start, end = (fold(site.word("sections", row, column)) for column in ("from", "to"))
        forward = start == here or (here == SOURCE and start in BEGINNINGS)
        inner = profile.points(site.word("sections", row, "profile"), section.length_m)
        told = told or bool(inner)
        if not forward:
            inner = tuple((section.length_m - far, height) for far, height in reversed(inner))
        found += [(along + far, height) for far, height in inner]
        along, high = along + section.length_m, high + section.rise_m
        found.append((along, high))
        here = end if forward else start
    if not told:
        return ()
    if len(found) > MOST:
        from calc import track  # only who has so many waits for it

        found = list(track.thinned(found, MOST))
    return tuple({"at": written(far, "length"), "height": written(height, "length")}
                 for far, height in found)  # fmt: skip
