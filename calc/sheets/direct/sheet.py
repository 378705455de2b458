"""Without a battery, into a tank: the pump as fast as the sun allows, at the reader's own place."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Number, Sheet
from calc.sheets.parts.fields import (
    climb,
    extra_length,
    pipe_length,
    suction_lift,
    water_temperature,
)
from calc.sheets.parts.line_cautions import DIG, FROST
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.parts.place import CLIMATE, months_text
from calc.sheets.parts.place import FIELDS as PLACE_FIELDS
from calc.sheets.parts.pump_choice import own_pump_fields, pump_menu
from calc.sheets.parts.solar_fields import (
    ARGUMENTS,
    BUILT,
    DEEPER,
    FAIL,
    LIFT,
    LIVE,
    MORE,
    PANELS,
    PATTERN,
    SEASON,
    SOURCES,
    STAND,
    SUN,
    USE,
)
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

LINE = "Suction and water"
FIELDS = (
    USE,
    Number("tank", "Tank", "volume", "5000 L", "1300 gal", 1e-3, 1e4,
           help="It feeds the taps by its height"),
    pump_menu("middle"),
    *own_pump_fields(),
    replace(climb("18 m", "60 ft", 300.0), label="Climb from pump to tank",
            help="To where the water flows in. Below the pump: a minus sign"),
    pipe_length(),
    *pipe_fields(),
    *PANELS,
    FAIL,
    *PLACE_FIELDS,
    *STAND,
    *DEEPER,
    Number("limit", "Maximum panel voltage of the pump’s controller", "voltage", "150 V", "150 V",
           1.0, 1500.0, group=SUN),
    suction_lift(9.0, LINE),
    extra_length(LINE),
    water_temperature(333.15, LINE),
    PATTERN,
    *SEASON,
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for the rooms of sun and power
    from calc.sheets.direct import drawing, fixes, judge, show
    from calc.sheets.direct.case import case_of

    case = case_of(values)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed), reader),
        lambda changed: fixes.changes(case_of(changed), reader),
        tables={"months": months_text(values, reader)},
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: drawing.draw(case, reader),
            steps=lambda: show.steps(case),
            tables=lambda: show.tables(case, reader),
            links=lambda: judge.links(),
        ),
    )


SHEET = Sheet(
    "direct",
    "Sun into a tank",
    FIELDS,
    solve,
    folded=(CLIMATE, SUN, LINE, MORE),
    cautions=(
        *LIVE,
        "A tank is a confined space: do not enter; call trained people.",
        "A full tank is heavy; stands, roofs and slopes need a structural design and permits.",
        "Let the fill end in free air above the highest water: an air gap.",
        FROST,
        DIG,
        LIFT,
        *BUILT,
    ),
    sources=(
        *SOURCES[:2],
        "Pump at another speed: affinity laws. Friction: Darcy-Weisbach with Colebrook (1939).",
        "Motor and controller where the table does not tell, losses of panels: common practice, "
        "no source.",
    ),
    arguments={**ARGUMENTS, "tank_m3": "tank", "limit_v": "limit", "static_m": "climb"},
    page="no-battery/",
)
