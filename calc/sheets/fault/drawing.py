"""The fault sheet's picture: the likeliest causes as bars of their shares."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Block, Drawing, Words
from calc.sheets.fault import words
from calc.sheets.parts.scaled import WIDTH, Scale

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.fault.case import Case
    from calc.units import Reader

MOST = 6  # bars; our choice
LEFT, TOP, EACH, THICK = 6.0, 6.0, 32.0, 10.0  # units
LONGEST = 44  # letters beside a bar that fit on a phone


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    fits = case.listed[:MOST]
    height = TOP + EACH * len(fits) + 4
    told = "; ".join(
        f"{words.cause(fit.fault)}, {reader.show(fit.share, 'percent', 2)}" for fit in fits
    )
    return Drawing(
        "causes",
        "What fits, by its share",
        f"The likeliest causes with their shares: {told}.",
        WIDTH,
        height,
        tuple(_bars(case, reader)),
        "Bars are to scale: a full bar is 100 %.",
    )


def _bars(case: Case, reader: Reader) -> Iterator[Shape]:
    scale = Scale(0.0, 1.0, LEFT, WIDTH - 6)
    for at, fit in enumerate(case.listed[:MOST]):
        y = TOP + EACH * at
        marked = fit in case.first.fits
        name = words.short(fit.fault)
        name = name if len(name) <= LONGEST else f"{name[: LONGEST - 1]}…"
        text = f"{name}: {reader.show(fit.share, 'percent', 2)}"
        yield Words(LEFT, y + 10, text, bold=marked, size=SMALL, at=f"says {at}")
        yield Block(LEFT, y + 14, scale.long(1.0), THICK, "paper", "edge", at=f"all {at}")
        if fit.share > 0:
            role = "accent" if marked else "water"
            yield Block(LEFT, y + 14, scale.long(fit.share), THICK, role, at=f"share {at}")
