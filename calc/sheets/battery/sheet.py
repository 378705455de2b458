"""How big a battery: how long it carries and lasts, at the reader's own place."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.page.answer import Answer
from calc.page.fields import Sheet
from calc.sheets.parts.place import CLIMATE, months_text
from calc.sheets.parts.solar_fields import (
    ARGUMENTS,
    CAUTIONS,
    FIELDS,
    MORE,
    SOURCES,
    STORE,
    SUN,
)
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the battery sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about a battery waits for the rooms of sun and power
    from calc.sheets.battery import judge, show
    from calc.sheets.parts import solar_drawing, solar_fixes, solar_judge
    from calc.sheets.parts.solar_case import case_of

    case = case_of(values)

    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed), reader),
        lambda changed: solar_fixes.changes(case_of(changed), reader),
        tables={"months": months_text(values, reader)},
    )

    def later() -> dict[str, Any]:
        return {
            "fixes": form.fixes(),
            "drawings": (solar_drawing.fortnight(case, reader),),
            "steps": show.steps(case),
            "tables": show.tables(case),
            "links": judge.links(),
        }

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case),
        cautions=solar_judge.cautions(case, reader),
        later=later,
    )


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
