"""The picture of pumping straight from the panels: the worst fortnight, sun above, tank below."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.power import direct
from calc.sheets.parts.scaled import brief
from calc.sheets.parts.solar_drawing import Store, worst_fortnight

if TYPE_CHECKING:
    from calc.page.shapes import Drawing
    from calc.sheets.direct.case import Case
    from calc.units import Reader


def draw(case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing`` of a case."""
    size = brief(case.tank, "volume", reader)
    label = f"water in the tank: full at {size}"
    store = Store("the tank", "water", label, levels(case), case.tank)
    return (worst_fortnight(case, case.year.worst, store, reader),)


def levels(case: Case) -> list[float]:
    """m3 in the tank at the end of each hour of the year."""
    return direct.trace(case.weather, case.array, case.made, case.tank, case.demand)
