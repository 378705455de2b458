"""Answer drawings -> inline SVG, everything escaped.

Colours are CSS variables, so the same drawing serves light, dark and paper.  The page's policy
allows no inline style: presentation attributes and classes only.
"""

from __future__ import annotations

import math
from functools import lru_cache
from html import escape
from typing import TYPE_CHECKING

from calc.page.shapes import Area, Block, Dot, Press, Stroke, Words, bends

if TYPE_CHECKING:
    from calc.page.shapes import Drawing, Point, Shape

PHONE = 298.0  # px, that a picture is wide on a phone of 360 px
LEGIBLE = 11.0  # px, words as seen there
FINGER = 24.0  # px, what can be pressed, each way. Source: WCAG 2.2, 2.5.8
COLOURS = {
    "ink": "var(--sl-ink)",
    "soft": "var(--sl-soft)",
    "rule": "var(--sl-rule)",
    "edge": "var(--sl-edge)",
    "paper": "var(--sl-paper)",
    "accent": "var(--sl-accent)",
    "one": "var(--sl-line-1)",
    "two": "var(--sl-line-2)",
    "three": "var(--sl-line-3)",
    "four": "var(--sl-line-4)",
    "good": "var(--sl-good)",
    "tight": "var(--sl-tight)",
    "bad": "var(--sl-bad)",
    "earth": "var(--sl-earth)",
    "water": "var(--sl-water)",
    "glass": "var(--sl-glass)",
    "pipe": "var(--sl-ink)",
    "pump": "var(--sl-ink)",
}
DASHES = {"solid": "", "dashed": "5 4", "dotted": "1.5 3", "bad": "8 2.5"}
HATCH = 5.0  # units from one line of a hatching to the next


def touch(width: float) -> float:
    """The least side of what can be pressed in a drawing ``width`` wide, in its units."""
    return FINGER * width / PHONE


def svg(drawing: Drawing) -> str:
    """The SVG of a ``calc.page.shapes.Drawing``; its ``alt`` is what a screen reader says.

    Where parts of it can be pressed it is a group: an image's parts would be out of reach.
    """
    pressed = any(isinstance(shape, Press) for shape in drawing.shapes)
    inside = "".join(map(_quiet if pressed else _shape, drawing.shapes))
    return (
        f'<svg viewBox="0 0 {_n(drawing.width)} {_n(drawing.height)}" '
        f'role="{"group" if pressed else "img"}" aria-label="{escape(drawing.alt)}">{inside}</svg>'
    )


@lru_cache(maxsize=256)
def path(points: tuple[Point, ...], smooth: bool = False) -> str:
    """The ``d`` of a line through ``points``; smooth: a Catmull-Rom curve, as cubic Béziers."""
    start = f"M{_pair(points[0])}"
    if smooth:
        # "S": its first control point mirrors the last of the piece before, as here it always does
        pieces = (
            f"S{_pair(second)} {_pair(end)}"
            if at
            else f"C{_pair(first)} {_pair(second)} {_pair(end)}"
            for at, (first, second, end) in enumerate(bends(points))
        )
        return start + "".join(pieces)
    return start + "".join(f"L{_pair(point)}" for point in points[1:])


def _quiet(shape: Shape) -> str:
    """What is beside the parts to press is in the picture's name already."""
    if isinstance(shape, Press):
        return _press(shape)
    return f'<g aria-hidden="true">{_shape(shape)}</g>'


def _shape(shape: Shape) -> str:
    match shape:
        case Stroke():
            return _stroke(shape)
        case Area():
            return _area(shape)
        case Block():
            return _block(shape)
        case Dot():
            return _dot(shape)
        case Press():
            return _press(shape)
    return _words(shape)


def _line(role: str, width: float, style: str = "solid") -> str:
    """Attributes of a line; a bad one that would be solid is broken, to be told in grey."""
    if not role:
        return ""
    dash = DASHES["bad" if role == "bad" and style == "solid" else style]
    broken = f' stroke-dasharray="{dash}"' if dash else ""
    return f' stroke="{COLOURS[role]}" stroke-width="{_n(width)}"{broken}'


def _at(name: str) -> str:
    return f' data-sl-at="{escape(name)}"' if name else ""


def _stroke(shape: Stroke) -> str:
    line = _line(shape.role, shape.width, shape.style)
    cap = "butt" if shape.style != "solid" or shape.role == "bad" else "round"
    return (
        f'<path d="{path(shape.points, shape.smooth)}" fill="none"{line} '
        f'stroke-linejoin="round" stroke-linecap="{cap}"{_at(shape.at)}/>'
    )


def _area(shape: Area) -> str:
    curved, rest = shape.points[: shape.smooth], shape.points[shape.smooth :]
    whole = path(curved, smooth=True) if curved else path(rest)
    if curved:
        whole += "".join(f"L{_pair(point)}" for point in rest)
    return (
        f'<path d="{whole}Z" fill="{COLOURS[shape.role]}"{_line(shape.edge, shape.width)}'
        f' stroke-linejoin="round"{_at(shape.at)}/>'
    )


def _block(shape: Block) -> str:
    fill = COLOURS[shape.role] if shape.role else "none"
    hatched = shape.role == "bad"
    corner = f' rx="{_n(shape.corner)}"' if shape.corner else ""
    soft = ' fill-opacity="0.35"' if hatched else ""
    block = (
        f'<rect x="{_n(shape.x)}" y="{_n(shape.y)}" width="{_n(shape.width)}" '
        f'height="{_n(shape.height)}"{corner} fill="{fill}"{soft}'
        f"{_line(shape.edge, shape.line, shape.style)}{_at(shape.at)}/>"
    )
    return block + (_hatching(shape) if hatched else "")


def _hatching(shape: Block) -> str:
    """Lines rising to the right across a block, each cut to it: no pattern, so no id."""
    x, y, wide, high = shape.x, shape.y, shape.width, shape.height
    lines = []
    for number in range(1, math.ceil((wide + high) / HATCH)):
        along = number * HATCH  # of a line that begins so far down the left side
        start = (x + max(0.0, along - high), y + min(along, high))
        end = (x + min(along, wide), y + max(0.0, along - wide))
        lines.append(f"M{_pair(start)}L{_pair(end)}")
    if not lines:
        return ""
    return f'<path d="{"".join(lines)}" fill="none" stroke="{COLOURS["bad"]}" stroke-width="1.4"/>'


def _dot(shape: Dot) -> str:
    colour = COLOURS[shape.role]
    inside = COLOURS["paper"] if shape.hollow else colour
    return (
        f'<circle cx="{_n(shape.x)}" cy="{_n(shape.y)}" r="{_n(shape.r)}" fill="{inside}" '
        f'stroke="{colour}" stroke-width="1.5"{_at(shape.at)}/>'
    )


def _words(shape: Words) -> str:
    bold = ' font-weight="600"' if shape.bold else ""
    rim = ""
    if shape.halo:
        rim = f' stroke="{COLOURS[shape.halo]}" stroke-width="3" paint-order="stroke"'
    turn = f' transform="rotate(-90 {_pair((shape.x, shape.y))})"' if shape.turned else ""
    lead = ""
    if shape.lead:
        soft = f'<tspan fill="{COLOURS["soft"]}" font-weight="400">'
        lead = f"{soft}{escape(shape.lead)}</tspan> "
    return (
        f'<text x="{_n(shape.x)}" y="{_n(shape.y)}" font-size="{_n(shape.size)}" '
        f'text-anchor="{escape(shape.anchor)}" fill="{COLOURS[shape.role]}"{rim}{bold}{turn}'
        f"{_at(shape.at)}>{lead}{escape(shape.text)}</text>"
    )


def _press(shape: Press) -> str:
    leads = f' data-sl-change="{escape(shape.change)}"' if shape.change else ""
    inside = " ".join(map(_shape, shape.shapes))  # a space between what is read as words
    seen = " ".join(
        f"{one.lead} {one.text}".strip() for one in shape.shapes if isinstance(one, Words)
    )
    name = shape.name if seen in shape.name else f"{seen}; {shape.name}"  # WCAG 2.5.3
    return (
        f'<a href="{escape(shape.href or "#")}"{leads} aria-label="{escape(name)}"'
        f'{_at(shape.at)}><rect class="sl-touch" x="{_n(shape.x)}" y="{_n(shape.y)}" '
        f'width="{_n(shape.width)}" height="{_n(shape.height)}" rx="3" fill="none" '
        f'pointer-events="all"/>{inside}</a>'
    )


def _pair(point: Point) -> str:
    return f"{_n(point[0])} {_n(point[1])}"


def _n(number: float) -> str:
    """A tenth of a unit: enough, and the same text on every machine."""
    return f"{number + 0.0:.1f}".removesuffix(".0")
