"""Answer drawings -> inline SVG, everything escaped.

Colours are CSS variables, so the same drawing serves light, dark and paper.
"""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from calc.page.answer import Dot, Stroke, Words

if TYPE_CHECKING:
    from calc.page.answer import Drawing

TEXT = 13  # px at a drawing's own width; 340 px wide drawn in a 360 px phone's 298 px it is 11.4
COLOURS = {
    "ink": "currentColor",
    "soft": "var(--sl-soft)",
    "rule": "var(--sl-rule)",
    "paper": "var(--sl-paper)",
    "one": "var(--sl-line-1)",
    "two": "var(--sl-line-2)",
    "three": "var(--sl-line-3)",
    "four": "var(--sl-line-4)",
    "good": "var(--sl-good)",
    "tight": "var(--sl-tight)",
    "bad": "var(--sl-bad)",
}


def svg(drawing: Drawing) -> str:
    """The SVG of a ``calc.page.answer.Drawing``; its ``alt`` is what a screen reader says."""
    inside = "".join(map(_shape, drawing.shapes))
    return (
        f'<svg viewBox="0 0 {_n(drawing.width)} {_n(drawing.height)}" role="img" '
        f'aria-label="{escape(drawing.alt)}" font-size="{TEXT}">{inside}</svg>'
    )


def _stroke(shape: Stroke) -> str:
    points = " ".join(f"{_n(x)},{_n(y)}" for x, y in shape.points)
    colour = COLOURS[shape.role]
    if shape.style == "filled":
        return f'<polygon points="{points}" fill="{colour}" fill-opacity="0.18"/>'
    dash = ' stroke-dasharray="5 4"' if shape.style == "dashed" else ""
    return (
        f'<polyline points="{points}" fill="none" stroke="{colour}" '
        f'stroke-width="{_n(shape.width)}" stroke-linejoin="round"{dash}/>'
    )


def _dot(shape: Dot) -> str:
    colour = COLOURS[shape.role]
    inside = COLOURS["paper"] if shape.hollow else colour
    return (
        f'<circle cx="{_n(shape.x)}" cy="{_n(shape.y)}" r="{_n(shape.r)}" fill="{inside}" '
        f'stroke="{colour}" stroke-width="1.5"/>'
    )


def _words(shape: Words) -> str:
    bold = ' font-weight="600"' if shape.bold else ""
    return (
        f'<text x="{_n(shape.x)}" y="{_n(shape.y)}" text-anchor="{escape(shape.anchor)}" '
        f'fill="{COLOURS[shape.role]}" stroke="var(--sl-paper)" stroke-width="3" '
        f'paint-order="stroke" stroke-linejoin="round"{bold}>{escape(shape.text)}</text>'
    )


def _shape(shape: Stroke | Dot | Words) -> str:
    match shape:
        case Stroke():
            return _stroke(shape)
        case Dot():
            return _dot(shape)
    return _words(shape)


def _n(number: float) -> str:
    """A tenth of a pixel: enough, and the same text on every machine."""
    return f"{number + 0.0:.1f}".removesuffix(".0")
