"""How many panels: a year of sun, battery, pump and tank at the reader's own place."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.page.answer import Answer
from calc.page.fields import Sheet
from calc.sheets.parts.place import PLACE
from calc.sheets.parts.solar_fields import ARGUMENTS, FIELDS, MORE, STORE, SUN

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the panels sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about panels waits for the rooms of sun and power
    from calc.sheets.panels import drawing, judge, show
    from calc.sheets.parts.solar_case import case_of

    case = case_of(values)

    def later() -> dict[str, Any]:
        return {
            "drawings": drawing.draw(case, reader),
            "steps": show.steps(case, reader),
            "tables": show.tables(case, reader),
            "links": judge.links(case),
        }

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case),
        cautions=judge.cautions(case, reader),
        later=later,
    )


SHEET = Sheet(
    "panels",
    "Panels and battery",
    FIELDS,
    solve,
    folded=(PLACE, SUN, STORE, MORE),
    cautions=(
        "Panels cannot be switched off by day: their terminals are live in any light.",
        "A DC arc does not go out by itself. Never unplug a connector under load.",
        "A battery short-circuits with thousands of amperes. Keep tools and rings off its "
        "terminals and put its fuse beside them.",
        "Batteries give off gas or burn: house them ventilated, dry, away from heat and from "
        "where people sleep.",
        "Falls from roofs kill: work at height is for people who are trained and secured.",
        "Earth (ground) frames and fit lightning protection as the local code asks.",
        "Keep controllers and batteries in enclosures that stay dry, shaded and free of frost.",
        "Wiring, fuses and disconnects: a licensed person, to local codes.",
    ),
    sources=(
        "Sun and air by month: see “Where the figures come from”.",
        "Days from months: Bendt, Collares-Pereira and Rabl (1981); Graham, Hollands and Huget "
        "(1988). Light on panels: Hay and Davies (1980); their warmth: Faiman (2008).",
        "Batteries, controllers, losses: common practice, no source.",
        "Quick method: after IEEE 1013 and IEEE 1562, from memory.",
    ),
    arguments=ARGUMENTS,
    page="power/",
)
