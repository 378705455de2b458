"""Sprinklers: enough pressure, even ground, no faster than the soil drinks, and the hours it takes.

The physics of watering is imported only by who asks (``calc.sheets.LATER``).
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Sheet, Unknown
from calc.sheets.parts.fields import usual
from calc.sheets.parts.line_cautions import DIG
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

KINDS = tuple((key, practice.OUTLET_BY_KEY[key].name) for key in ("spray", "micro", "sprinkler"))
SOILS = (*((soil.key, soil.name) for soil in practice.SOILS), ("none", "Not known"))
GROUND, USE = "Ground and wind", "Water and days"

FIELDS = (
    Number("area", "Area to water", "area", "100 m²", "1100 ft²", 1.0, 1e6),
    Number("depth", "Water plants take a day", "rain", "5 mm", "0.2 in", 1e-5, 30e-3,
           help="Reference ET₀ times the crop coefficient",
           unknown=Unknown("6 mm", "0.24 in", "a warm dry place: FAO-56 table 2, from memory")),
    Choice("kind", "Kind of sprinkler", KINDS, "spray"),
    Number("each", "Flow of one sprinkler", "flow", "4 L/min", "1 gpm", 1e-6, 0.02,
           help="Nominal, from its data sheet"),
    Number("rated", "Its rated pressure (optional)", "pressure", "", "", 0.3e5, 7e5, optional=True,
           help="At which it gives that; if blank, usual for its kind",
           unknown=Unknown(reason="what is usual for its kind")),
    Number("radius", "Wetted radius", "length", "4 m", "13 ft", 0.3, 40.0,
           help="How far it throws, from its data sheet"),
    Number("along", "From sprinkler to sprinkler", "length", "4 m", "13 ft", 0.3, 60.0,
           help="Along a line"),
    Number("between", "From line to line", "length", "4 m", "13 ft", 0.3, 60.0),
    Number("flow", "Flow of the pump or source", "flow", "15 L/min", "4 gpm", 1e-6, 1.0,
           help="What it gives at the garden, for hours"),
    Number("pressure", "Pressure at the last sprinkler", "pressure", "2.1 bar", "31 psi", 0.1e5,
           10e5, help="Running, with a whole zone open"),
    Number("hours", "Hours a day it may run", "number", "4", "4", 0.1, 24.0),
    Choice("soil", "Soil", SOILS, "sandy", group=GROUND,
           unknown=Unknown("none", "none", "then what it takes in is not checked")),
    Number("wind", "Wind while it runs", "speed", "1.5 m/s", "5 ft/s", 0.0, 20.0, group=GROUND,
           help="Early in the morning it is least",
           unknown=Unknown("2 m/s", "6.5 ft/s", "where nobody measured: FAO-56")),
    Count("every", "Days from watering to watering", 3, 1, 14, group=USE,
          help="1: every day; lawns and trees can wait longer"),
    Number("daily", "Water there is a day (optional)", "daily", "1500 L/day", "400 gal/day",
           1e-9, 1.0, group=USE, optional=True, help="What the source yields for this ground",
           unknown=Unknown(reason="a bucket test of the source tells it")),
    Number("reaches", "Share that reaches the roots", "percent", "75 %", "75 %", 0.3, 1.0,
           group=USE,
           unknown=usual(practice.SPRINKLER_EFFICIENCY, "percent",
                         "usual for sprinklers: FAO, from memory")),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the sprinkler sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about sprinklers waits for their physics
    from calc.sheets.sprinkler import drawing, fixes, judge, show
    from calc.sheets.sprinkler.case import case_of

    case = case_of(values)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed), reader),
        lambda changed: fixes.changes(case_of(changed), reader),
        fixes.NONE,
    )
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case, reader),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: (drawing.draw(case, reader),),
            tables=lambda: show.tables(case, reader),
            steps=lambda: show.steps(case),
            links=lambda: judge.links(case, reader),
        ),
    )


SHEET = Sheet(
    "sprinkler",
    "Sprinklers",
    FIELDS,
    solve,
    folded=(GROUND, USE),
    cautions=(
        "Where drinking water feeds the same line, fit a backflow preventer to the local code: "
        "sprinklers lie on the ground, and a falling pressure draws dirt in.",
        "Spray that stands on leaves in frost can ruin them. In frost sprinklers, pipes and valves "
        "burst: drain them before winter.",
        "Keep spray off power lines, electrical boxes, panels, roads and paths. A jet of water "
        "carries current.",
        "Do not let spray of water that nobody tested reach people or leaves that are eaten raw.",
        DIG,
    ),
    sources=(
        "Least and rated pressures of sprinklers, and how far they throw below the least: common "
        "practice, no source.",
        "What soils take in: FAO Irrigation Water Management training manual 5 (1988). What "
        "reaches the roots: training manual 4 (1989). Both from memory.",
        "How far apart in wind: handbooks of sprinkling, from memory.",
    ),
    arguments={
        "flow_m3s": "each", "along_m": "along", "between_m": "between", "wind_ms": "wind",
    },
    page="sprinkler/",
)  # fmt: skip
