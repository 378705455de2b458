"""A small map of the world to touch: the sun of a mean day wherever there is land.

One unit of the drawing is one degree, so that a point touched is a position.  How dark a class is
stands in the style sheet.
"""

from __future__ import annotations

from bisect import bisect
from html import escape
from typing import TYPE_CHECKING

from calc.units import Reader, plain_number

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

NORTH, SOUTH = 84, -60  # degrees, edges of the map: no land of our figures is beyond
WEST, EAST = -180, 180
KEY = 32  # units, height of what the classes mean
BOUNDS = (2.5, 3.5, 4.5, 5.5, 6.0)  # kWh/m2 a day between the classes: our choice
STEP = 30  # units, of a class in the key
KWH = 3.6e6  # J
_TEXT = 'class="sl-world-text" font-size="13.5"'


def land(cells: Iterable[tuple[int, int, float]]) -> tuple[str, ...]:
    """The ``d`` of one path a class, from little sun to much: a line along each row of cells.

    cells: (latitude, longitude of the southern and western edge in degrees, J/m2 a day).
    """
    classes = {(north, east): bisect(BOUNDS, sun / KWH) for north, east, sun in cells}
    paths: list[list[str]] = [[] for _ in range(len(BOUNDS) + 1)]
    for north, east, long, kind in _runs(classes):
        paths[kind].append(f"M{east - WEST} {NORTH - north - 0.5:g}h{long}")
    return tuple("".join(path) for path in paths)


def _runs(classes: Mapping[tuple[int, int], int]) -> Iterator[tuple[int, int, int, int]]:
    """(latitude, longitude, cells, class) of every row of cells of one class."""
    for (north, east), kind in sorted(classes.items()):
        if classes.get((north, east - 1)) == kind:
            continue
        long = 1
        while classes.get((north, east + long)) == kind:
            long += 1
        yield north, east, long, kind


def position(x: float, y: float) -> tuple[float, float] | None:
    """(latitude, longitude) in degrees of a point of the drawing; None beside the map."""
    north, east = NORTH - y, WEST + x
    return (north, east) if SOUTH <= north <= NORTH and WEST <= east <= EAST else None


def svg(paths: tuple[str, ...], place: tuple[float, float] | None) -> str:
    """The map. paths: of ``land``; place: (latitude, longitude) in degrees to mark, or None."""
    high, wide = NORTH - SOUTH, EAST - WEST
    drawn = "".join(
        f'<path class="sl-world-{at}" d="{path}"/>' for at, path in enumerate(paths, 1) if path
    )
    said = f", with a mark at {place[0]:.1f}°, {place[1]:.1f}°" if place else ""
    return (
        f'<svg viewBox="0 0 {wide} {high}" role="img" focusable="false" aria-label="'
        f'{escape(f"Map of the world: sun of a mean day on level ground{said}")}">'
        f'<rect class="sl-world-sea" width="{wide}" height="{high}"/>{drawn}'
        f'<path class="sl-world-equator" d="M0 {NORTH}h{wide}"/>{_mark(place)}</svg>'
    )


def _mark(place: tuple[float, float] | None) -> str:
    if place is None:
        return ""
    where = f'cx="{place[1] - WEST:.2f}" cy="{NORTH - place[0]:.2f}"'
    return (
        f'<circle class="sl-world-halo" {where} r="7"/>'
        f'<circle class="sl-world-mark" {where} r="5"/>'
        f'<circle class="sl-world-dot" {where} r="1.2"/>'
    )


def key(system: str) -> str:
    """A strip of the classes, with the numbers between them. system: the reader's units."""
    unit = Reader(system).unit("irradiation")
    blocks = "".join(
        f'<path class="sl-world-{at + 1} sl-world-key" d="M{4 + STEP * at} 7h{STEP}"/>'
        for at in range(len(BOUNDS) + 1)
    )
    numbers = "".join(
        f'<text {_TEXT} x="{4 + STEP * at}" y="26" text-anchor="middle">'
        f"{plain_number(unit.from_si(bound * KWH), 2)}</text>"
        for at, bound in enumerate(BOUNDS, 1)
    )
    words = escape(f"{unit.symbol} of sun a day")
    return (
        f'<svg class="sl-world-classes" viewBox="0 0 360 {KEY}" focusable="false" '
        f'aria-hidden="true">{blocks}{numbers}'
        f'<text {_TEXT} x="{12 + STEP * 6}" y="12">{words}</text></svg>'
    )
