"""Bars of what is asked for and what there is, each to a scale of its own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Block, Words
from calc.sheets.parts.scaled import WIDTH, Scale
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.page.shapes import Shape

    Bar = tuple[str, float, float, str, str]  # name, asked, had, both in words

THICK, EACH = 10.0, 30.0  # units: a bar; from bar to bar


def bar_shapes(bars: Iterable[Bar], left: float, top: float) -> Iterator[Shape]:
    """The bars, one below the other.  left, top: units, where the first begins."""
    for at, bar in enumerate(bars):
        yield from _bar(*bar, left, top + at * EACH)


def bars_in_words(bars: Iterable[Bar]) -> str:
    """The same for a screen reader."""
    return "; ".join(
        f"{name}, {asked} of {had}" + (" (too much)" if more > most * MET else "")
        for name, more, most, asked, had in bars
    )


def _bar(
    name: str, asked: float, had: float, asked_text: str, had_text: str, left: float, y: float
) -> Iterator[Shape]:
    """What is asked for of what there is; what is over it is bad."""
    scale = Scale(0.0, max(asked, had), left, WIDTH - 6)
    over = asked > had * MET
    role = "bad" if over else "ink"
    text = f"{name}: {asked_text} of {had_text}"
    yield Words(left, y + 10, text, role=role, bold=over, size=SMALL, at=f"says {name}")
    top = y + 14
    yield Block(left, top, scale.long(had), THICK, "paper", "ink", at=f"had {name}")
    part = min(asked, had)
    if part > 0:
        yield Block(left, top, scale.long(part), THICK, "water", at=f"asked {name}")
    if over:
        yield Block(scale.at(had), top, scale.long(asked - had), THICK, "bad", "bad",
                    at=f"over {name}")  # fmt: skip
