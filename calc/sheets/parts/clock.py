"""Moments of a day that begins at six in the morning, as a clock shows them, and their axis."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc.day_tank import MORNING
from calc.page.shapes import SMALL, Stroke, Words
from calc.page.text_boxes import box_of
from calc.sheets.parts.scaled import WIDTH
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.parts.scaled import Scale

EVERY = 6  # hours from one number of the axis to the next


def clock(seconds: float) -> str:
    """A moment of the day as a clock shows it, rounded down to the minute.

    seconds: from ``day_tank.MORNING``.

    >>> clock(0.0), clock(13.5 * 3600), clock(19 * 3600)
    ('6:00', '19:30', '1:00')
    """
    minutes = math.floor((MORNING * HOUR + seconds) / 60 + 1e-6) % (24 * 60)
    return f"{minutes // 60}:{minutes % 60:02d}"


def kept_in(words: Words) -> Words:
    """Words whose middle is moved as far as keeps them in the picture."""
    box = box_of(words)
    half = (box.right - box.left) / 2
    return replace(words, x=min(max(words.x, half), WIDTH - half))


def hours_axis(across: Scale, y: float, below: float) -> Iterator[Shape]:
    """Hours of the day along a line at ``y``, their numbers ``below`` it. Raises nothing."""
    for hour in range(0, 25, EVERY):
        x = across.at(hour * HOUR)
        words = Words(x, y + below, clock(hour * HOUR), "middle", "soft", size=SMALL)
        yield kept_in(words)
        yield Stroke(((x, y - 3), (x, y + 3)), "ink", width=1.2)
