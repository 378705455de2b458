"""Where to put panels and pump: tilt, facing and skyline at the reader's own place."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Rows, Sheet
from calc.sheets.parts.place import CLIMATE, months_text
from calc.sheets.parts.place import FIELDS as PLACE_FIELDS
from calc.sheets.parts.solar_fields import ARGUMENTS, EARTHED, FALLS, LIFT, LIVE, SOURCES, STAND
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

TILT, FACING, SHADE = STAND
HILLS = (("90", "12"), ("135", "6"), ("180", "4"), ("225", "8"), ("270", "15"))
FIELDS = (
    replace(TILT, group=""),
    replace(FACING, group=""),
    Choice(
        "goal",
        "Light is needed",
        (
            ("worst", "In the dullest month: a house"),
            ("year", "Over the whole year"),
            ("north", "April to September: gardens in the north"),
            ("south", "October to March: gardens in the south"),
        ),
        "worst",
    ),
    Number("away", "Distance from the panels to the pump", "length", "30 m", "100 ft", 0.1, 20e3,
           help="Along the cable’s way"),
    Rows(
        "skyline",
        "What stands before the sun",
        (
            Number("from_north", "Direction, from north", "angle", "180°", "180°", 0.0,
                   2 * math.pi, help="90° is east, 180° south, 270° west"),
            Number("high", "Height above level", "angle", "0°", "0°", 0.0, 1.5),
        ),
        tuple((f"{at}°", f"{high}°") for at, high in HILLS),
        tuple((f"{at}°", f"{high}°") for at, high in HILLS),
        row="point",
        least=0,
        most=24,
        help="Hills, trees and roofs, seen from where the panels stand. A fist at arm’s length is "
        "about 10°",
    ),
    *PLACE_FIELDS,
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for the room of the sun
    from calc.sheets.panel_place import drawing, judge, show
    from calc.sheets.panel_place.case import case_of

    case = case_of(values)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed)),
        lambda changed: judge.changes(case_of(changed)),
        tables={"months": months_text(values, reader), "skyline": show.skyline_text(values)},
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case),
        sizing=True,
        figures=show.figures(case),
        later=form.later(
            drawings=lambda: (drawing.draw(case),),
            steps=lambda: show.steps(case),
            tables=lambda: show.tables(case),
            links=lambda: judge.links(values, reader),
        ),
    )


SHEET = Sheet(
    "panel_place",
    "Where panels stand",
    FIELDS,
    solve,
    folded=(CLIMATE,),
    cautions=(
        LIVE[0],
        FALLS,
        "Wind lifts panels: frames and roofs need fixings that somebody has worked out.",
        EARTHED,
        "Find buried cables and pipes before you dig for a post or a trench.",
        "Do not look into the sun when you judge what hides it.",
        LIFT,
    ),
    sources=(
        SOURCES[0],
        "Sun’s path: Spencer (1971). Light on panels: Hay and Davies (1980). Best tilt: the mean "
        "day of Klein (1977).",
        "What is a large loss: our choice.",
    ),
    arguments={**ARGUMENTS, "points": "skyline"},
    page="where-panels/",
)
