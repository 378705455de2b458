"""What is found of where panels stand, and what would do better."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.page.findings import Finding
from calc.sheets.parts.carry import exact
from calc.sheets.parts.tries import Change

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.panel_place.case import Case
    from calc.units import Reader

MUCH = 0.1  # share of the light lost, from which it is worth a word; our choice
FLAT = math.radians(10)  # below which dust and leaves are not washed off; our choice
GOALS = {
    "worst": "in the dullest month",
    "year": "over the year",
    "north": "from April to September",
    "south": "from October to March",
}


def told(case: Case, reader: Reader) -> str:
    """What the panels get, and the tilt that suits best."""
    gets = reader.show(case.worth(case.daily), "irradiation")
    best = f"{math.degrees(case.best.slope):.0f}°"
    return f"The panels get {gets} a day {GOALS[case.goal]}; {best} is the best tilt for that."


def findings(case: Case) -> tuple[Finding, ...]:
    """Everything found."""
    return (*_hidden(case), *_turned(case), *_flat(case))


def _hidden(case: Case) -> Iterator[Finding]:
    if case.hidden > MUCH:
        share = round(100 * case.hidden)
        text = f"What stands before the sun takes {share} % of the light {GOALS[case.goal]}."
        yield Finding("care", "hidden", text)


def _turned(case: Case) -> Iterator[Finding]:
    if case.turned > MUCH:
        share = round(100 * case.turned)
        text = f"Another tilt or facing would give more: these lose {share} % {GOALS[case.goal]}."
        yield Finding("care", "turned", text)


def _flat(case: Case) -> Iterator[Finding]:
    if case.stand.slope < FLAT:
        text = "So flat, rain does not wash dust and leaves off: tilt panels by 10° at least."
        yield Finding("note", "flat", text)


def changes(case: Case) -> Iterator[Change]:
    """The best stand; a clearer place has no words in the form."""
    slope = f"{math.degrees(case.best.slope):.0f}"
    text = f"Tilt the panels by {slope}° and face them to the midday sun."
    yield Change(text, frozenset({"turned"}), {"tilt": f"{slope}°", "facing": "equator"})
    left = tuple(one for one in findings(case) if one.level != "note" and one.key != "hidden")
    text = "Find a place with a clearer view, or put up more panels for what is hidden."
    yield Change(text, frozenset({"hidden"}), {}, left)


def links(values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on."""
    return (
        Link("How many panels then", "panels", {}),
        Link("Which cable for this distance", "cable",
             {"length": exact(values.away, "length", reader)}),
        Link("How far above its water a pump may stand", "suction", {}),
    )  # fmt: skip
