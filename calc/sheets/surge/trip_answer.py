"""The answer to a power cut, of the parts of its own files."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.sheets.parts.tries import Form
from calc.sheets.surge import trip_drawing, trip_fixes, trip_judge, trip_show
from calc.sheets.surge.judge import links
from calc.sheets.surge.trip_case import trip_of

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.page.form import Values
    from calc.units import Reader


def answer(sheet: Sheet, values: Values, reader: Reader) -> Answer:
    """The ``Answer`` where the pump stops.  Raises InputError for what cannot be worked with."""
    case = trip_of(values, reader)
    form = Form(
        sheet,
        values,
        reader,
        lambda changed: trip_judge.findings(trip_of(changed, reader), reader),
        lambda changed: trip_fixes.changes(trip_of(changed, reader), reader),
        trip_fixes.last(case),
    )
    return Answer(
        told=trip_judge.told(case, reader),
        findings=trip_judge.findings(case, reader),
        later=lambda: {"fixes": form.fixes()},
        figures=trip_show.figures(case),
        steps=trip_show.steps(case),
        tables=trip_show.tables(case),
        charts=trip_show.charts(case),
        drawings=(trip_drawing.draw(case, reader),),
        links=links(values, reader),
        cautions=trip_judge.cautions(case),
    )
