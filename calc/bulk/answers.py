"""One sheet worked out as a record: plain dictionaries that JSON can hold.

The form, the answer and the link are those of the sheet's own page.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from calc.page import render
from calc.page.form import work
from calc.sheets.addresses import addresses
from calc.site import link

if TYPE_CHECKING:
    from calc.page.answer import Answer, Figure
    from calc.page.fields import Sheet
    from calc.page.form import Outcome
    from calc.page.state import State
    from calc.units import Reader

Data = dict[str, Any]

ALL = "all"  # in place of names: every figure, every sheet
KEPT_DIGITS = 10  # figures of a number in JSON; our choice, far more than any answer is good for
FAILED = (
    "This could not be worked out: a fault of this calculator, not of yours. Change a number, and "
    "tell us with the file."
)


@dataclass(frozen=True)
class Wanted:
    """What is wanted of every answer.

    system: "metric", "us" or "" (a site's own, else metric); base: address before a page's;
    flat: pages end in .html; figures: labels, or ``ALL`` (none: the main ones); sheets: keys, or
    ``ALL`` (none: the usual).
    """

    system: str = ""
    base: str = ""
    flat: bool = False
    figures: tuple[str, ...] = ()
    sheets: tuple[str, ...] = ()


def address(sheet: Sheet, fragment: str, wanted: Wanted) -> str:
    """Where a sheet's page is opened on a fragment."""
    page = sheet.page.rstrip("/") + ".html" if wanted.flat else sheet.page
    return f"{wanted.base}{page}#{fragment}"


def record(sheet: Sheet, state: State, wanted: Wanted, carried: tuple[str, str] = ("", "")) -> Data:
    """A sheet's answer to a form.

    carried: a packed site that the link takes along, and the way asked about.
    Returns {"sheet", "verdict", "level", "sentence", "example", "figures", "findings", "assumed",
    "cautions", "fixes", "unused", "link", "errors", "error"}: where there is no answer "error" is
    not empty and all before "unused" but the sheet is missing.  Raises nothing on input.
    """
    outcome = work(sheet, state)
    fragment = link.write(sheet, state, *carried, state.kept)
    found: Data = {"sheet": sheet.key}
    if outcome.answer is not None:
        found |= _answered(sheet, outcome, outcome.answer, wanted)
        to = addresses(sheet, state, outcome.example, wanted.base, wanted.flat, carried)
        found["fixes"] = [
            {"text": plain(one.text), "link": to(one.link) if one.link else ""}
            for one in outcome.answer.fixes
        ]
    return found | {
        "unused": _unused(sheet, state, outcome),
        "link": address(sheet, fragment, wanted),
        "errors": {key: plain(sentence) for key, sentence in outcome.errors.items()},
        "error": plain("; ".join(outcome.errors.values())),
    }


def _answered(sheet: Sheet, outcome: Outcome, answer: Answer, wanted: Wanted) -> Data:
    verdict = answer.verdict
    return {
        "verdict": verdict.word,
        "level": verdict.level,
        "sentence": plain(verdict.sentence),
        "example": outcome.example,
        "figures": [_figure(one, outcome.reader) for one in _chosen(answer, wanted)],
        "findings": [
            {"level": one.level, "text": plain(one.text)} for one in render.beside(answer)
        ],
        "assumed": [
            {"label": one.label, "shown": plain(one.shown), "reason": plain(one.reason)}
            for one in outcome.assumed
        ],
        "cautions": [plain(one) for one in (*answer.cautions, *sheet.cautions)],
    }


def _chosen(answer: Answer, wanted: Wanted) -> list[Figure]:
    """The figures that are wanted, the main ones first."""
    ranked = sorted(answer.figures, key=lambda one: not one.main)
    if ALL in wanted.figures:
        return ranked
    names = {name.casefold() for name in wanted.figures}
    return [one for one in ranked if one.main or one.label.casefold() in names]


def _figure(figure: Figure, reader: Reader) -> Data:
    unit = reader.unit(figure.quantity)
    number = unit.from_si(figure.value)
    return {
        "label": figure.label,
        "value": float(f"{number:.{KEPT_DIGITS}g}") if math.isfinite(number) else None,
        "unit": unit.symbol,
        "shown": plain(render.told(figure, reader)),
        "main": figure.main,
    }


def _unused(sheet: Sheet, state: State, outcome: Outcome) -> list[str]:
    """Labels of the fields that were given a text and do not count beside the others."""
    silent = outcome.hidden | outcome.idle
    return [
        entry.label
        for entry in sheet.fields
        if entry.key in silent
        and state.standing.get(entry.key) == "given"
        and entry.key not in state.kept
        and state.text(entry).strip()
    ]


def plain(text: str) -> str:
    """A sentence with plain spaces, which every program can search."""
    return text.replace("\u00a0", " ").replace("\u202f", " ")
