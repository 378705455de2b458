"""The answer of the gravity sheet, put together: what a start does not import."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.sheets.gravity import judge, show
from calc.sheets.gravity.case import case_of
from calc.sheets.gravity.drawing import draw
from calc.sheets.gravity.fixes import fixes
from calc.sheets.parts.line_cautions import pipe_cautions

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

TANKS = (
    "A break-pressure tank needs a float valve or an overflow that is led away, a screened vent "
    "and a locked lid."
)
VALVES = (
    "A pressure-reducing valve can fail open: fit a relief valve after it, set below the rating "
    "of the pipe there."
)


def answer(values: Values, reader: Reader) -> Answer:
    """The ``Answer``: values to case, case to findings, fixes and figures."""
    case = case_of(values)
    kept = {"tank": (TANKS,), "valve": (VALVES,)}.get(case.kept, ())
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        later=lambda: {"fixes": fixes(case, values, reader)},
        figures=show.figures(case, reader),
        steps=show.steps(case, reader),
        tables=show.tables(case, reader),
        drawings=(draw(case, reader),),
        links=judge.links(case, values, reader),
        cautions=(*kept, *pipe_cautions((case.fall.pipe,), case.fall.temperature_k)),
    )
