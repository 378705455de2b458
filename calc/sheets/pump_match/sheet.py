"""Pump and pipe together: where they meet, at what speed, with what power."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Sheet, Unknown
from calc.sheets.parts.fields import (
    CAREFUL_ALTITUDE,
    altitude,
    climb,
    everything_open,
    extra_length,
    highest_point,
    hottest_pipe,
    least_pump_flow,
    lowest_point,
    pipe_length,
    precharge,
    pressure_tank,
    pumps_in_parallel,
    relief_valve,
    sensor,
    smallest_draw,
    starts_allowed,
    suction_lift,
    water_temperature,
)
from calc.sheets.parts.guard import CENTRIFUGAL, pump_guard
from calc.sheets.parts.line_cautions import DIG, DRAWN_IN, EARTH, FROST
from calc.sheets.parts.line_rows import line_field, what_if
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.parts.pump_choice import own_pump_fields, pump_menu
from calc.sheets.pump_match import drawing, judge, show
from calc.sheets.pump_match.case import FURTHEST_UP, case_of
from calc.sheets.pump_match.fixes import fixes
from calc.sheets.pump_match.links import cautions, links

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

SUCTION, LOSSES = "Suction, water and height", "Losses, motor and control"
WAY, SMALL = "Dips, crests and pipe sections", "Small draws"
LOW = "on the low side of small ones; our choice"
GRADES_OFFERED = (
    ("1B", "ISO 9906 grade 1B"),
    ("2B", "ISO 9906 grade 2B"),
    ("3B", "ISO 9906 grade 3B (usual for small pumps)"),
    ("none", "None: the table as it is"),
)


_SUCTION_FIELDS = (
    suction_lift(9.0, SUCTION),
    Number(
        "suction",
        "Friction loss in suction pipe",
        "head",
        "0.5 m",
        "2 ft",
        0.0,
        9.0,
        help="At the full flow; the page on suction lift works it out",
        group=SUCTION,
        unknown=Unknown(
            f"{practice.SUCTION_LOSS:g} m", "3.28 ft", "allowed where nobody worked it out"
        ),
    ),
    water_temperature(333.15, SUCTION),
    replace(
        altitude(FURTHEST_UP, "300 m", "1000 ft", SUCTION),
        unknown=CAREFUL_ALTITUDE,
    ),
)


_LOSS_FIELDS = (
    extra_length(LOSSES),
    Number(
        "set",
        "Set pressure at the pump",
        "pressure",
        "",
        "",
        1e3,
        20e5,
        help="If blank, one is worked out",
        optional=True,
        group=LOSSES,
        unknown=Unknown(reason="worked out"),
    ),
    Choice(
        "grade",
        "Tolerance of the pump's curve",
        GRADES_OFFERED,
        "3B",
        help="How far a delivered pump may fall short of its table",
        group=LOSSES,
        unknown=Unknown("3B", "3B", "usual for small pumps"),
    ),
    Number(
        "motor",
        "Motor efficiency",
        "percent",
        "75 %",
        "75 %",
        0.2,
        1.0,
        help="Used where the table gives efficiency but no power drawn",
        group=LOSSES,
        unknown=Unknown(
            f"{100 * practice.MOTOR_EFFICIENCY:g} %",
            f"{100 * practice.MOTOR_EFFICIENCY:g} %",
            LOW,
        ),
    ),
    Number(
        "controller",
        "Controller efficiency",
        "percent",
        "95 %",
        "95 %",
        0.2,
        1.0,
        group=LOSSES,
        unknown=Unknown(
            f"{100 * practice.CONTROL_EFFICIENCY:g} %",
            f"{100 * practice.CONTROL_EFFICIENCY:g} %",
            LOW,
        ),
    ),
)


_SMALL_FIELDS = (
    smallest_draw(SMALL),
    least_pump_flow(SMALL),
    pressure_tank(SMALL),
    precharge(SMALL),
    starts_allowed(SMALL),
    pump_guard(SMALL),
)


FIELDS = (
    pump_menu("small"),
    *own_pump_fields(),
    everything_open("30 L/min", "8 gpm", 1e-6),
    climb("12 m", "40 ft", 300.0),
    pipe_length(),
    *pipe_fields(start=("pe100-sdr11", "40"), start_us=("pvc40", "1.25")),
    Number(
        "wanted",
        "Needed pressure at the outlet",
        "pressure",
        "1 bar",
        "15 psi",
        0.0,
        20e5,
        help="A shower works from 1 bar (15 psi) and is comfortable from 2 bar (30 psi); drip "
        "lines need 1.4 bar (20 psi).",
    ),
    *_SUCTION_FIELDS,
    *_LOSS_FIELDS,
    hottest_pipe(group=WAY),
    lowest_point(WAY),
    highest_point("highest", WAY),
    line_field(WAY),
    sensor(SMALL),
    *_SMALL_FIELDS,
    relief_valve(LOSSES, ("pump", CENTRIFUGAL)),
    pumps_in_parallel(LOSSES),
)


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer``: values to case, case to findings, fixes and figures."""
    case = case_of(values)
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        later=lambda: {
            "fixes": fixes(case, FIELDS, values, reader),
            "drawings": (drawing.draw(case, reader),),
        },
        figures=show.figures(case),
        steps=show.steps(case, values),
        tables=show.tables(case),
        links=links(case, values, reader),
        cautions=cautions(case, reader),
    )


SHEET = Sheet(
    "pump_match",
    "Pump and pipe together",
    FIELDS,
    solve,
    folded=(SUCTION, LOSSES, WAY, SMALL),
    cautions=(
        "A pump run dry or against a closed valve overheats and can burst: fit dry-run and "
        "over-temperature protection.",
        "Switch off, lock off and let the pressure out before you open a pump or pipe.",
        "Have wiring near water, batteries and inverters done by a licensed person, to local "
        "codes.",
        "Wells and storage tanks are confined spaces: do not enter; bad air kills without warning.",
        "Parts that touch drinking water must be approved for it where you are.",
        FROST,
        DRAWN_IN,
        DIG,
        EARTH,
    ),
    sources=(
        "Affinity laws: Karassik, Pump Handbook; definitions as in ISO 17769-1.",
        "Tolerances: ISO 9906:2012 grades 1B, 2B and 3B, from memory.",
        "Preferred flow, 70 to 120% of the best: ANSI/HI 9.6.3, from memory.",
        "Friction: Darcy-Weisbach with Colebrook (1939).",
        "Static pressure at an outlet: IPC 604.8 and UPC 608.2, from memory.",
        "NPSH margin: after ANSI/HI 9.6.1, from memory. Least flow and restart pressure: common "
        "practice, no source. A slowed pump needs no less NPSH than at full speed: our choice.",
    ),
    replaced={"line": ("climb", "length", "extra", *(one.key for one in pipe_fields()))},
    over={"line": what_if("climb", "length", *(one.key for one in pipe_fields()))},
    arguments={
        "altitude_m": "altitude",
        "temperature_k": "water",
        "length_m": "length",
        "lift_m": "lift",
        "friction_m": "suction",
        "tank_m3": "tank",
        "motor_efficiency": "motor",
        "controller_efficiency": "controller",
        "flow_m3s": "flow",
    },
    page="pump-match/",
)
