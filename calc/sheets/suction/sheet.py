"""Suction lift: whether the pump can draw the water up, and what to change if not."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Sheet, Unknown
from calc.sheets.parts.fields import (
    CAREFUL_ALTITUDE,
    altitude,
    hottest_pipe,
    suction_lift,
    water_temperature,
)
from calc.sheets.parts.line_cautions import CHLORINATE, DIG, FROST
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.parts.tries import Form
from calc.sheets.suction import drawing, fixes, judge, show
from calc.sheets.suction.case import FURTHEST_UP, fitted, read
from calc.units import MINUTE

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

FITTINGS = "Bends, foot valve and water"
PULSES = ("chambers", tuple(one.key for one in practice.PULSING))
STRAINER = Unknown(
    f"{practice.STRAINER_LOSS:g} m", "1.64 ft", "allowed for a strainer nobody measured"
)

FIELDS = (
    suction_lift(50.0),
    Number(
        "length",
        "Length of suction pipe",
        "length",
        "7 m",
        "23 ft",
        0.1,
        500.0,
        help="From the foot valve to the pump, along the pipe",
    ),
    Number(
        "flow",
        "Flow",
        "flow",
        "18 L/min",
        "5 gpm",
        1e-6,
        0.05,
        help="The most the pump draws",
    ),
    *pipe_fields(start=("pe100-sdr11", "32"), start_us=("pvc40", "1")),
    Choice(
        "figure",
        "What the pump's data sheet says",
        (("npsh", "NPSH required"), ("lift", "Dry lift")),
        "npsh",
        help="Small self-priming pumps state a dry lift, others NPSH",
    ),
    Number(
        "npsh",
        "NPSH required at that flow",
        "head",
        "3 m",
        "10 ft",
        0.0,
        20.0,
        help="From the data sheet; 3 m (10 ft) is only an example",
        when=("figure", ("npsh",)),
        unknown=Unknown(reason="not checked; the answer says what would work"),
    ),
    Number(
        "rated",
        "Dry lift, stated at sea level",
        "length",
        "5.5 m",
        "18 ft",
        0.1,
        10.0,
        help="How high it draws water with the pipe empty (self-priming)",
        when=("figure", ("lift",)),
        unknown=Unknown(reason="not checked; the answer says what would work"),
    ),
    replace(
        altitude(FURTHEST_UP, "300 m", "1000 ft", FITTINGS),
        unknown=CAREFUL_ALTITUDE,
    ),
    water_temperature(353.15, FITTINGS),
    Count(
        "foot",
        "Foot valves with strainer",
        1,
        0,
        3,
        group=FITTINGS,
        unknown=Unknown("1", "1", "usual; common practice"),
    ),
    Count(
        "elbow90",
        "90° elbows",
        2,
        0,
        20,
        group=FITTINGS,
        unknown=Unknown("4", "4", "more than most; our choice"),
    ),
    Number(
        "strainer",
        "Loss in a strainer at the pump",
        "head",
        "0.2 m",
        "0.5 ft",
        0.0,
        5.0,
        help="Clean, at your flow; a dirty one loses several times that",
        group=FITTINGS,
        unknown=STRAINER,
    ),
    Number(
        "margin",
        "NPSH margin",
        "head",
        "0.6 m",
        "2 ft",
        0.0,
        5.0,
        help="Kept beyond what the pump needs, for wear and warm days",
        group=FITTINGS,
        unknown=Unknown(f"{practice.NPSH_MARGIN:g} m", "2 ft", "common practice"),
    ),
    hottest_pipe(group=FITTINGS),
    Choice(
        "chambers",
        "How the pump draws",
        (("steady", "Steadily (centrifugal)"), *((one.key, one.name) for one in practice.PULSING)),
        "steady",
        help="A piston or diaphragm pump draws in pulses",
        group=FITTINGS,
    ),
    Number(
        "strokes",
        "Strokes of each chamber a minute",
        "rpm",
        "100 rpm",
        "100 rpm",
        1 / MINUTE,
        6000 / MINUTE,
        help="The speed of its shaft, where each turn is a stroke",
        when=PULSES,
        group=FITTINGS,
        unknown=Unknown(reason="the answer says what would work"),
    ),
    Number(
        "stub",
        "Pipe after a dampener (optional)",
        "length",
        "",
        "",
        0.01,
        500.0,
        help="From a standpipe or air-filled dampener to the pump; blank: none",
        optional=True,
        when=PULSES,
        group=FITTINGS,
        unknown=Unknown(reason="taken as without a dampener"),
    ),
)


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer``: values to case, case to findings, fixes and figures."""
    case = read(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(read(changed, reader), reader),
        lambda changed: fixes.changes(read(changed, reader), reader),
        fixes.last(case, reader),
    )
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        later=lambda: {"fixes": form.fixes()},
        figures=show.figures(case),
        steps=show.steps(case),
        tables=(show.sizes(case),),
        charts=(show.chart(case, reader),),
        links=judge.links(case, values, reader),
        drawings=(drawing.draw(case, reader),),
        cautions=judge.cautions(case, reader),
    )


SHEET = Sheet(
    "suction",
    "Suction lift",
    FIELDS,
    solve,
    folded=(FITTINGS,),
    cautions=(
        "A well is a confined space: bad air kills without warning. Do not enter; call people "
        "who are trained and equipped.",
        "Cover the well, and keep surface water and animals out of drinking water.",
        "Have the pump wired by a licensed person, to local codes.",
        "Lift a pump by its lug or rope, never by its cable; get help with heavy parts.",
        "Protect the pump against running dry. Measure the lift to the lowest level the water "
        "falls to while the pump runs.",
        "A diaphragm pump draws in pulses: a short, reinforced, non-collapsing hose at its inlet "
        "evens them out. They count where you say how the pump draws, as in a stiff pipe.",
        "A suction pipe is below the pressure outside: a leak draws in air and polluted water.",
        FROST,
        DIG,
        CHLORINATE,
    ),
    sources=(
        "Net positive suction head: ISO 17769-1:2012. Air pressure: ISO 2533:1975.",
        "Vapour pressure: IAPWS R7-97(2012). Density and viscosity: IAPWS SR6-08(2011).",
        "Friction: Darcy-Weisbach with Colebrook (1939). Fittings: Crane TP-410, from memory.",
        "Head that pulses take: Hydraulic Institute, reciprocating pumps (ANSI/HI 6.1-6.5), from "
        "memory.",
        "Margin of 0.6 m (2 ft): after ANSI/HI 9.6.1, from memory. Lift of 15 ft at sea level: "
        "common practice; scaled by air pressure: our choice.",
    ),
    arguments={
        "altitude_m": "altitude",
        "temperature_k": "water",
        "lift_m": "lift",
        "friction_m": "flow",
        "npsh_m": "npsh",
        "npsh_required_m": "npsh",
        "margin_m": "margin",
        "rated_lift_m": "rated",
        "bore_m": "bore",
        "roughness_m": "bore",
        "displacement_m3s": "flow",
        "re": "flow",
        "speed_ms": "flow",
    },
    page="suction-lift/",
    fitted=fitted,
)
