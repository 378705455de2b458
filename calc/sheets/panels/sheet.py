"""How many panels: a year of sun, battery, pump and tank at the reader's own place."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import Sheet
from calc.sheets.parts.place import CLIMATE
from calc.sheets.parts.solar_fields import (
    ARGUMENTS,
    CAUTIONS,
    FIELDS,
    MORE,
    SOURCES,
    STORE,
    SUN,
)

if TYPE_CHECKING:
    from calc.page.answer import Answer
    from calc.page.form import Values
    from calc.units import Reader


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for the rooms of sun and power
    from calc.sheets.panels import judge, show
    from calc.sheets.parts import solar_drawing, solar_judge
    from calc.sheets.parts.solar_answer import Told, answer

    said = Told(
        judge.told, solar_judge.findings, show.figures, solar_drawing.draw,
        show.steps, show.tables, judge.links,
    )  # fmt: skip
    return answer(SHEET, values, reader, said)


SHEET = Sheet(
    "panels",
    "Panels and battery",
    FIELDS,
    solve,
    folded=(CLIMATE, SUN, STORE, MORE),
    cautions=CAUTIONS,
    sources=SOURCES,
    arguments=ARGUMENTS,
    page="power/",
)
