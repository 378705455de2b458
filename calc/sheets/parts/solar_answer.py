"""The answer of the sheets of panels and battery: one case and one form, told in two ways."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.sheets.parts import solar_fixes
from calc.sheets.parts.place import months_text
from calc.sheets.parts.solar_case import case_of
from calc.sheets.parts.solar_judge import cautions
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.answer import Figure, Link, Step, Table
    from calc.page.fields import Sheet
    from calc.page.findings import Finding
    from calc.page.form import Values
    from calc.page.shapes import Drawing
    from calc.sheets.parts.solar_case import Case
    from calc.units import Reader


@dataclass(frozen=True)
class Told:
    """What a sheet says of a case."""

    told: Callable[[Case, Reader], str]
    findings: Callable[[Case, Reader], tuple[Finding, ...]]
    figures: Callable[[Case], tuple[Figure, ...]]
    drawings: Callable[[Case, Reader], tuple[Drawing, ...]]
    steps: Callable[[Case], tuple[Step, ...]]
    tables: Callable[[Case], tuple[Table, ...]]
    links: Callable[[], tuple[Link, ...]]


def answer(sheet: Sheet, values: Values, reader: Reader, said: Told) -> Answer:
    """The ``Answer`` of a form; its fixes are looked for later.

    Raises InputError for what cannot be worked with.
    """
    case = case_of(values)
    form = Form(
        sheet,
        values,
        reader,
        lambda changed: said.findings(case_of(changed), reader),
        lambda changed: solar_fixes.changes(case_of(changed), reader),
        tables={"months": months_text(values, reader)},
    )

    return Answer(
        told=said.told(case, reader),
        findings=said.findings(case, reader),
        figures=said.figures(case),
        cautions=cautions(case, reader),
        later=form.later(
            drawings=lambda: said.drawings(case, reader),
            steps=lambda: said.steps(case),
            tables=lambda: said.tables(case),
            links=lambda: said.links(),
        ),
    )
