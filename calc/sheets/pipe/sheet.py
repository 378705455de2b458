"""Pipe sizing: the smallest pipe that leaves the pressure needed, and why others do not."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Count, Field, Number, Sheet
from calc.pipe import friction
from calc.sheets.parts.fields import (
    everything_open,
    highest_point,
    hottest_pipe,
    lowest_point,
    water_temperature,
)
from calc.sheets.parts.line_cautions import BACKFLOW, FROST
from calc.sheets.parts.line_rows import line_field, what_if
from calc.sheets.parts.pipe_choice import kind_field
from calc.sheets.pipe import case as sizing
from calc.sheets.pipe import drawing, fixes, judge, show

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

FITTINGS, LIMITS, WAY = "Fittings", "Water and limits", "Dips, crests and pipe sections"

FIELDS: tuple[Field, ...] = (
    everything_open("15 L/min", "4 gpm", 1e-6),
    Number("length", "Length of pipe", "length", "140 m", "450 ft", 0.5, 20e3),
    Number(
        "climb",
        "Climb from start to outlet",
        "length",
        "12 m",
        "40 ft",
        -200.0,
        200.0,
        help="Height, not distance. Downhill: a minus sign.",
    ),
    Number(
        "pressure",
        "Pressure at the start",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.0,
        20e5,
        help="The set pressure of the pump, or what the tank gives while water runs.",
    ),
    Number(
        "wanted",
        "Needed pressure at the outlet",
        "pressure",
        "2 bar",
        "30 psi",
        0.0,
        20e5,
        help="A shower is comfortable from 2 bar (30 psi); drip lines need 1.4 bar (20 psi).",
    ),
    kind_field("pe100-sdr11", "pvc40", own=False),
    *(
        Count(f.key, f.name, sizing.COUNTS.get(f.key, 0), 0, 200, group=FITTINGS)
        for f in friction.FITTINGS
    ),
    water_temperature(373.15, LIMITS),
    hottest_pipe("20 °C", "68 °F", LIMITS),
    Number(
        "fastest",
        "Maximum water speed",
        "speed",
        "1.5 m/s",
        "5 ft/s",
        0.1,
        10.0,
        help="Faster water is noisy, and closing a valve then causes water hammer.",
        group=LIMITS,
    ),
    Number(
        "highest",
        "Maximum pressure at the start",
        "pressure",
        "",
        "",
        0.0,
        40e5,
        optional=True,
        help="With everything closed, or the relief valve's setting. If blank, the running "
        "pressure is used.",
        group=LIMITS,
    ),
    lowest_point(WAY),
    highest_point("crest", WAY),
    line_field(WAY),
)


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer``: values to case, every size tried, the smallest that works."""
    case = sizing.case_of(values)
    tries = sizing.trials(case)
    chosen = sizing.smallest(case, tries)
    shown = chosen or sizing.nearest(case, tries)
    line = case.line if case.counted else shown.line
    return Answer(
        told=judge.told(case, chosen, reader),
        findings=judge.findings(case, tries, chosen, reader),
        later=lambda: {"fixes": fixes.fixes(case, values, reader)},
        sizing=not case.counted,
        figures=show.figures(case, line, chosen, shown),
        steps=show.steps(case, line, shown),
        tables=show.tables(case, tries, chosen),
        charts=(show.chart(case, tries, shown),),
        links=judge.links(case, shown, values, reader),
        drawings=(drawing.draw(case, tries, chosen, shown, reader),),
        cautions=show.cautions(line, case.need.flow_m3s),
    )


SHEET = Sheet(
    "pipe",
    "Pipe sizing",
    FIELDS,
    solve,
    folded=(FITTINGS, LIMITS, WAY),
    replaced={"line": ("climb", "length", *(one.key for one in friction.FITTINGS))},
    over={"line": what_if("climb", "length")},
    arguments={
        "temperature_k": "water",
        "length_m": "length",
    },
    cautions=(
        "Pipe and fittings must be rated for the highest pressure at the lowest point, at the "
        "hottest they get.",
        "Let the pressure out before you open a joint; a pressurised pipe can whip and cut.",
        "Have buried services located before you dig; shore or slope trenches, never work alone in "
        "a deep one.",
        "Use pipe approved for drinking water where people or animals drink; local codes come "
        "first.",
        "A coil that is kinked, an insert fitting or a clogged filter loses more than its pipe.",
        FROST,
        BACKFLOW,
    ),
    sources=(
        "Darcy-Weisbach with the friction factor of Colebrook, J. Inst. Civ. Eng. 11 (1939) "
        "133-156.",
        "Loss coefficients of fittings: Crane Technical Paper 410 and Idelchik, from memory.",
        "Pipe dimensions and ratings: the standard named with each kind.",
        "Maximum water speed of 1.5 m/s (5 ft/s): common practice, no source.",
    ),
    page="pipe-sizing/",
)
