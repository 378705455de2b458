"""Will it reach: what a held pressure leaves at the outlet of one line, static and running."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Number, Sheet, Unknown
from calc.sheets.parts.fields import (
    climb,
    everything_open,
    extra_length,
    highest_point,
    hottest_pipe,
    lowest_point,
    pipe_length,
    water_temperature,
)
from calc.sheets.parts.line_cautions import BACKFLOW, DRAWN_IN, FROST, line_cautions
from calc.sheets.parts.line_rows import line_field, what_if
from calc.sheets.parts.needs import use_field, wanted_field
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.reach import judge, show
from calc.sheets.reach.case import case_of
from calc.sheets.reach.drawing import draw
from calc.sheets.reach.fixes import fixes

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

REST, WAY = "Pump, bends and water", "Dips, crests and pipe sections"

FIELDS = (
    Number(
        "pressure",
        "Set pressure",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.0,
        20e5,
        help="What the pump keeps, read at the pump while water runs. From an open tank: 0 at its "
        "water level.",
    ),
    climb("12 m", "40 ft", 200.0),
    pipe_length(),
    everything_open("15 L/min", "4 gpm", 0.0),
    *pipe_fields(start=("pe100-sdr11", "32"), start_us=("pvc40", "1")),
    use_field(),
    wanted_field(),
    Number(
        "most",
        "Maximum flow at set pressure",
        "flow",
        "18 L/min",
        "5 gpm",
        1e-7,
        0.05,
        help="From the pump's data sheet. Small diaphragm pumps give 11 to 19 L/min (3 to 5 gpm).",
        group=REST,
        unknown=Unknown("", "", "the pump's flow is not checked"),
    ),
    extra_length(REST),
    water_temperature(333.15, REST),
    hottest_pipe(group=REST),
    lowest_point(WAY),
    highest_point("highest", WAY),
    line_field(WAY),
)


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer``: values to case, case to findings, fixes and figures."""
    case = case_of(values)
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        later=lambda: {"fixes": fixes(case, values, reader)},
        figures=show.figures(case),
        steps=show.steps(case, values),
        tables=show.tables(case, reader),
        charts=(show.chart(case),),
        drawings=(draw(case, reader),),
        links=judge.links(case, values, reader),
        cautions=line_cautions(case.line),
    )


SHEET = Sheet(
    "reach",
    "Will it reach?",
    FIELDS,
    solve,
    folded=(REST, WAY),
    replaced={"line": ("climb", "length", "extra", *(one.key for one in pipe_fields()))},
    over={"line": what_if("climb", "length", *(one.key for one in pipe_fields()))},
    arguments={
        "temperature_k": "water",
        "length_m": "length",
    },
    cautions=(
        "Let the pressure out before you open any joint; a pressurised pipe can whip and cut.",
        "Pipe, fittings and hoses must be rated for the highest pressure at the lowest point. Fit "
        "a relief valve where the pump could exceed that rating.",
        "Have buried services located before you dig, and never work alone in a deep trench.",
        "Electrical work near water is for a licensed person, to local codes.",
        FROST,
        BACKFLOW,
        DRAWN_IN,
    ),
    sources=(
        "Darcy-Weisbach with the friction factor of Colebrook (1939).",
        "Pressures and flows at outlets, water speed, check valve after a pump: common practice, "
        "no source.",
    ),
    page="head/",
)
