"""Pressure and head: one value in every unit, and what is left up a climb with no flow."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Sheet
from calc.sheets.parts.fields import SEA_LEVEL, altitude, water_temperature
from calc.sheets.parts.tries import Form
from calc.sheets.pressure import judge, show
from calc.sheets.pressure.case import read
from calc.sheets.pressure.drawing import draw

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

FIELDS = (
    Number(
        "known",
        "Pressure or head you know",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.0,
        100e5,
        help="Choose the unit beside it; “m water” and “ft water” are head.",
    ),
    Choice(
        "kind",
        "Measured from",
        (("gauge", "The air outside (a gauge)"), ("absolute", "A vacuum (absolute)")),
        "gauge",
    ),
    Number(
        "climb",
        "Climb to the outlet",
        "length",
        "15 m",
        "50 ft",
        -300.0,
        300.0,
        help="Above the place of that pressure. Below it: a minus sign",
    ),
    Number("wanted", "Needed pressure at the outlet", "pressure", "1.4 bar", "20 psi", 0.0, 100e5),
    water_temperature(373.15, "Water and altitude"),
    replace(
        altitude(
            5000.0,
            group="Water and altitude",
            help="Sets the air pressure, for absolute pressures.",
        ),
        unknown=SEA_LEVEL,
    ),
)


def solve(values: Values, reader: Reader) -> Answer:
    """The answer to a form.  Raises InputError for what cannot be worked with."""
    state = read(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(read(changed, reader), reader),
        lambda changed: judge.changes(read(changed, reader), reader),
    )
    return Answer(
        told=judge.told(state, values, reader),
        findings=tuple(judge.findings(state, reader)),
        fixes=form.fixes(),
        figures=show.figures(state),
        steps=show.steps(state, values),
        tables=(show.every_unit(state), show.profile(state, reader)),
        charts=(show.chart(state, reader),),
        drawings=(draw(state, reader),),
        links=judge.links(state, reader),
        cautions=("This is with no flow. Running water loses more, to friction.",),
    )


SHEET = Sheet(
    "pressure",
    "Pressure and head",
    FIELDS,
    solve,
    folded=("Water and altitude",),
    cautions=(
        "Never exceed the rating of the weakest part; the lowest point carries the highest "
        "pressure.",
        "Wells and tanks are confined spaces: do not enter.",
        "Let the pressure out before you open a joint or take off a gauge.",
    ),
    sources=(
        "Unit factors: NIST Special Publication 811 (2008), appendix B.8.",
        "Water density: IAPWS SR6-08(2011). Air pressure: ISO 2533:1975.",
    ),
    page="pressure/",
)
