"""What a picture is made of: plain frozen shapes on a sheet of paper, no HTML.

``x`` runs to the right and ``y`` down, in the drawing's own units.  Colours are named by the role
of the thing (``calc.page.drawing.COLOURS``).  ``at`` names a shape, so that a test reads its
coordinates back from the page.
"""

from __future__ import annotations

from dataclasses import dataclass

Point = tuple[float, float]

TEXT = 13.0  # units; the usual size of words
SMALL = 12.2  # the least: 11 px where a drawing 328 units wide is shown 298 px wide, on a phone


def bends(points: tuple[Point, ...]) -> list[tuple[Point, Point, Point]]:
    """Control points and end of each cubic Bézier of the Catmull-Rom curve through ``points``."""
    found = []
    for at in range(1, len(points)):
        (x0, y0), (x1, y1) = points[max(at - 2, 0)], points[at - 1]
        (x2, y2), (x3, y3) = points[at], points[min(at + 1, len(points) - 1)]
        first = (x1 + (x2 - x0) / 6, y1 + (y2 - y0) / 6)
        second = (x2 - (x3 - x1) / 6, y2 - (y3 - y1) / 6)
        found.append((first, second, (x2, y2)))
    return found


def traced(points: tuple[Point, ...], steps: int = 8) -> tuple[Point, ...]:
    """Points along the curve through ``points``, so many to each piece of it."""
    found = [points[0]]
    for start, (first, second, end) in zip(points, bends(points), strict=False):
        four = (start, first, second, end)
        for step in range(1, steps + 1):
            t = step / steps
            shares = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
            x, y = (sum(s * p[i] for s, p in zip(shares, four, strict=True)) for i in (0, 1))
            found.append((x, y))
    return tuple(found)


@dataclass(frozen=True)
class Stroke:
    """A line through ``points``. style: "solid", "dashed" or "dotted"; smooth: a curve.

    role: its colour. A "bad" one is never solid, so that it can be told in grey.
    """

    points: tuple[Point, ...]
    role: str = "ink"
    style: str = "solid"
    width: float = 1.5
    smooth: bool = False
    at: str = ""


@dataclass(frozen=True)
class Area:
    """A filled shape with its corners at ``points``.

    smooth: so many of the first points are joined by a curve, the rest by straight lines.
    edge: role of its outline, "" for none; width: of the outline.
    """

    points: tuple[Point, ...]
    role: str = "earth"
    edge: str = ""
    width: float = 1.0
    smooth: int = 0
    at: str = ""


@dataclass(frozen=True)
class Block:
    """An upright rectangle, ``x`` and ``y`` its top left corner. role: "" leaves it empty.

    edge, style, line: role, style and width of its outline. A "bad" one is hatched, so that it
    can be told in grey.
    """

    x: float
    y: float
    width: float
    height: float
    role: str = "water"
    edge: str = ""
    style: str = "solid"
    line: float = 1.0
    corner: float = 0.0
    at: str = ""


@dataclass(frozen=True)
class Dot:
    """A round mark of radius ``r``; ``hollow``: filled with the paper's colour."""

    x: float
    y: float
    r: float = 4.0
    role: str = "ink"
    hollow: bool = False
    at: str = ""


@dataclass(frozen=True)
class Words:
    """A short text, ``y`` its base line; ``anchor``: what is at x: "start", "middle" or "end".

    lead: said before the text in a softer voice ("20 →"); size: at least ``SMALL``; halo: role of
    a rim that keeps lines off it, "" for none; turned: it runs upwards.
    """

    x: float
    y: float
    text: str
    anchor: str = "start"
    role: str = "ink"
    bold: bool = False
    size: float = TEXT
    lead: str = ""
    halo: str = ""
    turned: bool = False
    at: str = ""


@dataclass(frozen=True)
class Press:
    """Shapes that can be pressed together, with room for a finger around them.

    name: what it is and where it leads, for a screen reader, beginning with the words shown;
    change: key of the field it leads to ("taps.2"), or href: an address.
    x, y, width, height: the room, at least ``calc.page.drawing.TOUCH`` each way.
    """

    shapes: tuple[Mark, ...]
    name: str
    x: float
    y: float
    width: float
    height: float
    change: str = ""
    href: str = ""
    at: str = ""


Mark = Stroke | Area | Block | Dot | Words
Shape = Mark | Press


@dataclass(frozen=True)
class Drawing:
    """A picture of shapes on a sheet ``width`` by ``height``, y downwards, already placed.

    alt: says in words what it shows; scale: what is to scale in it, "" where nothing is.
    A ``width`` of 328 keeps ``SMALL`` words legible on a phone.
    """

    key: str
    title: str
    alt: str
    width: float
    height: float
    shapes: tuple[Shape, ...]
    scale: str = ""
