"""Drip: the water plants need, the zones and hours that takes, and how even a line of drippers is.

The physics of drip is imported only by who asks (``calc.sheets.LATER``), so this module names
crops and the like itself; a test holds that they are those of the physics.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, units
from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Rows, Sheet, Unknown
from calc.sheets.parts.fields import CAREFUL_ALTITUDE, usual
from calc.sheets.parts.pipe_choice import KIND_HEADINGS, pipe_options
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

CROPS = (
    ("tomato", "Tomatoes"), ("pepper", "Peppers"), ("potato", "Potatoes"), ("onion", "Onions"),
    ("carrot", "Carrots"), ("cabbage", "Cabbage, broccoli"), ("lettuce", "Lettuce, spinach"),
    ("cucumber", "Cucumbers"), ("squash", "Squash, zucchini"), ("melon", "Melons"),
    ("bean", "Green beans"), ("corn", "Sweet corn"), ("strawberry", "Strawberries"),
    ("mint", "Mint and other leafy herbs"), ("berry", "Berry bushes"), ("grape", "Grapes"),
    ("apple", "Apples, pears, cherries"), ("olive", "Olives"), ("own", "I know its coefficient"),
)  # fmt: skip
MONTHS = tuple((name[:3].lower(), name) for name in units.MONTHS)
# mm a day, a place at 41 degrees north with dry summers, by Hargreaves; our choice
USUAL = (1.1, 1.6, 2.4, 3.4, 4.4, 5.2, 5.4, 4.9, 3.7, 2.3, 1.4, 1.0)
LINE, USE, FEEDER = "Drippers and line", "Water and filter", "Manifold"
COUNTED = ("fed", ("start", "middle"))
MEASURED, ALL = ("climate", ("warm", "full")), ("climate", ("full",))

FIELDS = (
    Number("area", "Area planted", "area", "60 m²", "650 ft²", 1.0, 1e6),
    Number("rows", "Distance between rows", "length", "0.5 m", "1.5 ft", 0.1, 20.0,
           help="From one drip line to the next"),
    Choice("crop", "What grows there", CROPS, "mint"),
    Number("need", "Crop coefficient", "number", "1", "1", 0.1, 1.5, when=("crop", ("own",)),
           help="In mid-season, such as FAO-56 table 12 gives"),
    Choice("climate", "Climate in the month of most need",
           (("known", "I know the reference ET₀"),
            ("warm", "By temperature and latitude"),
            ("full", "With humidity, wind and sun"),
            ("months", "I know ET₀ of each month")), "warm"),
    Number("et", "Reference ET₀ a day", "rain", "6 mm", "0.24 in", 0.5e-3, 15e-3,
           help="Of that month; a weather service has it", when=("climate", ("known",))),
    Rows("months", "Reference ET₀ by month",
         (Choice("at", "Month", MONTHS, "jan"),
          Number("et", "ET₀ a day", "rain", "3 mm", "0.12 in", 0.0, 15e-3)),
         tuple((key, f"{mm} mm") for (key, _), mm in zip(MONTHS, USUAL, strict=True)),
         tuple((key, f"{mm / 25.4:.2g} in") for (key, _), mm in zip(MONTHS, USUAL, strict=True)),
         row="month", most=12, help="A mean day of each month", when=("climate", ("months",))),
    Choice("month", "Month with the greatest need", MONTHS, "jul", when=MEASURED),
    Number("latitude", "Latitude", "angle", "41°", "41°", -math.pi * 7 / 18, math.pi * 7 / 18,
           help="South of the equator: a minus sign", when=MEASURED),
    Number("warmest", "Mean daily maximum", "temperature", "30 °C", "86 °F", 273.15, 328.15,
           help="Of the air in that month", when=MEASURED),
    Number("coolest", "Mean daily minimum", "temperature", "17 °C", "63 °F", 263.15, 318.15,
           help="Of the air in that month", when=MEASURED),
    Number("humid", "Mean humidity of the air", "percent", "55 %", "55 %", 0.05, 1.0, when=ALL),
    Number("wind", "Wind, 2 m above the ground", "speed", "2 m/s", "6.5 ft/s", 0.0, 15.0,
           when=ALL, unknown=Unknown("2 m/s", "6.5 ft/s", "where nobody measured: FAO-56")),
    Number("light", "Sun on level ground, a day", "irradiation", "7 kWh/m²", "7 kWh/m²",
           0.1 * 3.6e6, 11 * 3.6e6, when=ALL),
    Number("above", "Height above sea level", "length", "300 m", "1000 ft", -400.0, 5000.0,
           when=ALL, unknown=CAREFUL_ALTITUDE),
    Number("flow", "Flow of the pump or source", "flow", "10 L/min", "2.6 gpm", 1e-6, 1.0,
           help="What it gives at the garden, for hours"),
    Number("pressure", "Pressure where lines begin", "pressure", "1 bar", "15 psi", 1e3, 10e5,
           help="With that flow, after filter and pressure-reducing valve"),
    Number("hours", "Hours a day it may run", "number", "6", "6", 0.1, 24.0),
    Number("length", "Length of one drip line", "length", "20 m", "65 ft", 0.5, 500.0,
           help="From where it is fed to its end"),
    Number("spacing", "Distance between drippers", "length", "0.3 m", "1 ft", 0.05, 10.0,
           help="Along the line"),
    Number("dripper", "Flow of one dripper", "dripper", "2 L/h", "0.5 gph", 0.1e-6, 50e-6,
           help="Nominal, from its label"),
    Choice("holds", "Kind of dripper",
           (("plain", "Plain: more pressure gives more"),
            ("steady", "Pressure-compensating")), "plain", group=LINE),
    Number("rated", "Pressure a dripper is rated at", "pressure", "1 bar", "15 psi", 0.05e5, 5e5,
           group=LINE, help="From the data sheet", when=("holds", ("plain",)),
           unknown=usual(practice.DRIPPER_RATED, "pressure", "common practice")),
    Number("least", "Least pressure it needs", "pressure", "0.7 bar", "10 psi", 0.05e5, 5e5,
           group=LINE, help="From which it holds its flow", when=("holds", ("steady",)),
           unknown=usual(practice.DRIPPER_LEAST, "pressure", "common practice")),
    Number("bore", "Inside diameter of the line", "diameter", "13.6 mm", "0.54 in", 4e-3, 0.1,
           group=LINE, help="A line of 16 mm outside has about 13.6 mm (0.54 in)"),
    Number("slope", "Slope along the line", "percent", "0 %", "0 %", -0.2, 0.2, group=LINE,
           help="Uphill from where it is fed; downhill: a minus sign"),
    Number("made", "Variation of new drippers", "percent", "5 %", "5 %", 0.0, 0.3, group=LINE,
           help="Coefficient of variation, from the data sheet",
           unknown=usual(practice.DRIPPER_MADE, "percent", "good ones; ASAE EP405, from memory")),
    Number("zones", "Zones, one after another (optional)", "number", "", "", 1.0, 500.0,
           group=USE, optional=True, help="If blank, as few as the flow allows",
           unknown=Unknown(reason="as few as the flow allows")),
    Number("daily", "Water there is a day (optional)", "daily", "1500 L/day", "400 gal/day",
           1e-9, 1.0, group=USE, optional=True, help="What the source yields for this garden",
           unknown=Unknown(reason="a bucket test of the source tells it")),
    Number("reaches", "Share that reaches the roots", "percent", "90 %", "90 %", 0.3, 1.0,
           group=USE,
           unknown=usual(practice.DRIP_EFFICIENCY, "percent", "usual for drip; common practice")),
    Choice("filter", "Filter before the lines",
           (("yes", "Yes, 120 mesh (0.13 mm) or finer"), ("no", "None, or coarser")), "yes",
           group=USE, unknown=Unknown("no", "no", "as if there is none")),
    Choice("fed", "Manifold that feeds the lines",
           (("none", "Not counted: all lines get the same"),
            ("start", "Fed at one end"),
            ("middle", "Fed in the middle")), "none", group=FEEDER),
    Choice("manifold", "Pipe of the manifold", pipe_options(), "pe100-sdr17/40", "pvc40/1.25",
           help="It crosses the rows; each line begins at it", groups=KIND_HEADINGS, group=FEEDER,
           when=COUNTED),
    Number("across", "Slope along the manifold", "percent", "0 %", "0 %", -0.2, 0.2, group=FEEDER,
           help="Uphill from one end; downhill: a minus sign", when=COUNTED),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the drip sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about drip waits for its physics
    from calc.sheets.drip import drawing, fixes, judge, show
    from calc.sheets.drip.case import case_of
    from calc.sheets.drip.climate import months_text

    case = case_of(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed, reader), reader),
        lambda changed: fixes.changes(changed, case_of(changed, reader), reader),
        fixes.NONE,
        {"months": months_text(values, reader)} if values.climate == "months" else {},
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case, reader),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: (drawing.draw(case, reader),),
            tables=lambda: show.tables(case, reader),
            steps=lambda: show.steps(case, reader),
            links=lambda: judge.links(case, reader),
        ),
    )


SHEET = Sheet(
    "drip",
    "Drip watering",
    FIELDS,
    solve,
    folded=(LINE, USE, FEEDER),
    cautions=(
        "Where drinking water feeds the same line, fit a backflow preventer: an air gap or a "
        "vacuum breaker above the highest dripper, to the local code.",
        "Where fertiliser is fed in, a vacuum breaker is not enough in most codes. Ask the local "
        "authority which backflow preventer it asks for.",
        "Drip lines, filters and valves burst in frost. Drain them before winter.",
        "Find buried cables and pipes before you dig a trench.",
        "A small diaphragm pump is often not made to run for hours. See its data sheet, and fuse "
        "its cable.",
    ),
    sources=(
        "Reference evapotranspiration: FAO-56 (Allen and others, 1998), equations 6 and 52. Crop "
        "coefficients in mid-season: its table 12, from memory.",
        "Lines of many outlets: J. E. Christiansen (1942). Friction in smooth pipe: H. Blasius "
        "(1913).",
        "Emission uniformity: Keller and Karmeli (1974). Its bounds: ASAE EP458. Variation of "
        "flow: Wu and Gitlin (1974). All from memory.",
        "Efficiency, pressures and sizes of drippers and lines, filters: common practice, no "
        "source.",
    ),
    # what the physics may refuse -> the field it came from
    arguments={
        "warmest_k": "warmest",
        "humidity": "humid",
        "wind_ms": "wind",
        "altitude_m": "above",
        "light_j": "light",
        "bore_m": "bore",
        "start_pa": "pressure",
        "rises": "slope",
    },
    page="drip/",
)
