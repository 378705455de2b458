"""How big a battery: how long it carries and lasts, at the reader's own place."""

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
    from calc.page.shapes import Drawing
    from calc.sheets.parts.solar_case import Case
    from calc.units import Reader


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for the rooms of sun and power
    from calc.sheets.battery import judge, show
    from calc.sheets.parts import solar_drawing
    from calc.sheets.parts.solar_answer import Told, answer

    def drawn(case: Case, reader: Reader) -> tuple[Drawing, ...]:
        return (solar_drawing.fortnight(case, reader),)

    said = Told(
        judge.told, judge.findings, show.figures, drawn, show.steps, show.tables, judge.links
    )
    return answer(SHEET, values, reader, said)


SHEET = Sheet(
    "battery",
    "Battery",
    FIELDS,
    solve,
    folded=(CLIMATE, SUN, STORE, MORE),
    cautions=CAUTIONS,
    sources=SOURCES,
    arguments=ARGUMENTS,
    page="battery/",
)
