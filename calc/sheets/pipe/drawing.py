"""The pipe-sizing sheet's picture: pipes seen from their end, side by side and to scale.

Filled with water are the sizes that work; the smallest of them is framed.  Under each stands the
pressure it leaves at the outlet, and what speaks against it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.shapes import SMALL, Block, Dot, Drawing, Words
from calc.page.text_boxes import text_width
from calc.sheets.parts.scaled import LINE, WIDTH, brief
from calc.sheets.pipe.case import DRY, FAST, HOT, SHORT, VACUUM, WEAK

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.pipe.case import Case, Trial
    from calc.units import Reader

BEFORE, MOST = 2, 5  # sizes shown before the one that is shown, and in all
ROOM, HEAD = 62.0, 26.0  # units, the largest circle's width, and what is over it
FOOT = HEAD + ROOM + 8.0  # units down to the words under the circles
NONE = "none of these works"
# what speaks against a size, in two words at most; beside it the figures say more
SHORTLY = {
    HOT: "too hot",
    WEAK: "too weak",
    SHORT: "too little",
    DRY: "arrives",
    FAST: "too fast",
    VACUUM: "breaks off",
}


def draw(case: Case, tries: tuple[Trial, ...], chosen: Trial | None, shown: Trial,
         reader: Reader) -> Drawing:  # fmt: skip
    """The ``Drawing`` of the sizes next to the one shown."""
    near = nearby(tries, shown)
    width = WIDTH / len(near)
    across = ROOM / max(trial.pipe.outside_m for trial in near)
    shapes: list[Shape] = []
    for number, trial in enumerate(near):
        middle = width * (number + 0.5)
        shapes += _circles(trial, middle, across)
        shapes += _said(trial, trial is chosen, middle, case.need.works_pa, reader)
    if chosen is not None:
        shapes += _frame(near.index(chosen), width)
    else:
        shapes.append(Words(WIDTH / 2, HEAD - 10, NONE, "middle", "bad", bold=True, size=SMALL))
    shapes.append(_needed(case, reader))
    title = "One size for the whole line" if case.counted else "Sizes of this pipe"
    height = FOOT + 4 * LINE + 10
    scaled = "To scale. Below: the pressure left at the outlet."
    return Drawing(
        "sizes", title, _alt(case, near, chosen, reader), WIDTH, height, tuple(shapes), scaled
    )


def nearby(tries: tuple[Trial, ...], shown: Trial) -> tuple[Trial, ...]:
    """The size shown and those next to it, the narrower first."""
    first = min(max(0, tries.index(shown) - BEFORE), max(0, len(tries) - MOST))
    return tries[first : first + MOST]


def _circles(trial: Trial, middle: float, across: float) -> Iterator[Shape]:
    """The pipe from its end; a size that works holds water."""
    pipe, low = trial.pipe, HEAD + ROOM
    outer, inner = (across * one / 2 for one in (pipe.outside_m, pipe.inside_m))
    yield Dot(middle, low - outer, outer, "pipe", at=f"outside {pipe.size}")
    yield Dot(middle, low - outer, inner, "water", hollow=not trial.fits, at=f"inside {pipe.size}")


def _said(
    trial: Trial, chosen: bool, middle: float, works: float, reader: Reader
) -> Iterator[Shape]:
    role = "ink" if trial.fits else "bad"
    left = "no water" if DRY in trial.reasons else brief(max(trial.left, 0.0), "pressure", reader)
    remark = _works(trial, works) if trial.fits else SHORTLY[_worst(trial)]
    lines = ((short_name(trial), True), (left, chosen), (remark, chosen))
    for number, (text, bold) in enumerate(lines):
        y = FOOT + number * LINE + 10
        shade = role if number else "ink"
        yield Words(middle, y, text, "middle", shade, bold, SMALL)


def _works(trial: Trial, works: float) -> str:
    return "only just" if practice.enough(trial.left, works, 0.0) == "care" else "works"


def _worst(trial: Trial) -> str:
    """The reason to show: that no water arrives explains what stands in place of a pressure."""
    return DRY if DRY in trial.reasons else trial.reasons[0]


def short_name(trial: Trial) -> str:
    """The nominal size without the other system's in brackets or a unit said twice."""
    name = trial.pipe.name.split(" (")[0]
    return name.removesuffix(" mm") if "×" in name else name


def _frame(number: int, width: float) -> Iterator[Shape]:
    """Round the smallest size that works."""
    high = FOOT + 3 * LINE - HEAD + 8
    yield Block(
        width * number + 1, HEAD - 4, width - 2, high, "", "ink", line=2, corner=5, at="chosen"
    )
    text = "smallest that works"
    half = text_width(text, SMALL, bold=True) / 2
    middle = min(max(width * (number + 0.5), half), WIDTH - half)
    yield Words(middle, HEAD - 10, text, "middle", bold=True, size=SMALL)


def _needed(case: Case, reader: Reader) -> Words:
    text = brief(case.need.works_pa, "pressure", reader)
    if not case.counted:
        return Words(WIDTH / 2, FOOT + 4 * LINE + 4, text, "middle", size=SMALL, lead="you need")
    left = case.line.left(case.need.flow_m3s)
    short = left <= 0 or practice.enough(left, case.need.works_pa, 0.0) == "stop"
    now = f"as it is {brief(max(left, 0.0), 'pressure', reader)}, you need"
    role = "bad" if short else "ink"
    return Words(
        WIDTH / 2, FOOT + 4 * LINE + 4, text, "middle", role, bold=short, size=SMALL, lead=now
    )


def _alt(case: Case, near: tuple[Trial, ...], chosen: Trial | None, reader: Reader) -> str:
    needed = reader.show(case.need.works_pa, "pressure")
    said = "; ".join(
        f"{one.pipe.name} {', '.join(one.reasons) or 'works'}"
        + ("" if DRY in one.reasons else f", leaves {reader.show(one.left, 'pressure')}")
        for one in near
    )
    best = f"The smallest that works is {chosen.pipe.name}" if chosen else "None of them works"
    return f"Pipe sizes side by side, the narrowest first: {said}. {best}; you need {needed}."
