"""Hot water: room to expand, relief, ratings at its heat, the wait at the tap, scalding.

Asked by few, so it is imported by who asks (``calc.sheets.LATER``): this module names fields only.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import UNKNOWN, Choice, Count, Field, Number, Sheet, Unknown
from calc.sheets.parts.fields import SEA_LEVEL, altitude, usual
from calc.sheets.parts.line_cautions import HOT
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.parts.tries import Form
from calc.units import CELSIUS

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

MORE = "Draws, heating and site"
CLOSED = ("check", "reducer")  # what keeps the grown water from going back
TANK, VALVE, MIX = ("vessel", ("yes",)), ("valve", ("tp", "pressure")), ("mix", ("tap", "heater"))
NOT_CHECKED = Unknown(reason="not checked; the answer says what would pass")
NONE_CAREFUL = Unknown("none", "none", "taken as none, the careful side")

FIELDS: tuple[Field, ...] = (
    Number("heater", "Heater volume", "volume", "80 L", "21 gal", 1e-3, 10.0,
           help="The water it holds, from its label"),
    Number("water", "Cold water comes in at", "temperature", "15 °C", "59 °F", CELSIUS,
           CELSIUS + 40, unknown=Unknown("5 °C", "41 °F", "careful: colder water grows more")),
    Number("stored", "Stored temperature", "temperature", "60 °C", "140 °F", CELSIUS + 20,
           CELSIUS + 95, help="The hottest that its thermostat lets the water get",
           unknown=usual(practice.STORED_HOT, "temperature", "commonly asked for")),
    Number("static", "Static pressure at the heater", "pressure", "3.5 bar", "50 psi", 0.05e5,
           16e5, help="The highest with all taps closed and the water cold"),
    Choice("closed", "On the cold pipe",
           (("check", "A check valve or backflow preventer"),
            ("reducer", "A pressure-reducing valve"),
            ("open", "Neither: open to a pressure tank or main"),
            ("vent", "An open tank feeds it, with a vent pipe")), "check",
           help="Between the heater and whatever could take water back",
           unknown=Unknown("check", "check", "taken as closed, the careful side")),
    Choice("vessel", "Expansion tank", (("yes", "There is one"), ("none", "None")), "yes",
           when=("closed", (*CLOSED, UNKNOWN)), unknown=NONE_CAREFUL),
    Number("volume", "Expansion tank volume", "volume", "5 L", "1.3 gal", 1e-4, 10.0,
           help="Its whole volume, the size on its label", when=TANK, unknown=NOT_CHECKED),
    Number("charge", "Pre-charge of that tank", "pressure", "3.5 bar", "50 psi", 0.0, 16e5,
           help="Air pressure with the tank empty. Usual: the static pressure", when=TANK,
           unknown=NOT_CHECKED),
    Choice("valve", "Relief valve at the heater",
           (("tp", "Temperature and pressure (T&P)"), ("pressure", "Pressure only"),
            ("none", "None")), "tp", unknown=NONE_CAREFUL),
    Number("relief", "Relief valve setting", "pressure", "7 bar", "100 psi", 0.5e5, 25e5,
           help="The pressure at which it opens, from its label", when=VALVE,
           unknown=NOT_CHECKED),
    Number("weakest", "Lowest-rated part", "pressure", "10 bar", "150 psi", 0.1e5, 100e5,
           help="Of heater, tanks, valves and hoses, at this heat. The pipe is looked up",
           unknown=NOT_CHECKED),
    *pipe_fields(start=("pex-mm", "16"), start_us=("pex-in", "0.5")),
    Number("length", "Pipe from heater to the tap", "length", "12 m", "40 ft", 0.1, 500.0),
    Number("flow", "Flow of the tap", "flow", "7.5 L/min", "2 gpm", 1e-6, 0.05,
           unknown=usual(practice.SHOWER_FLOW, "flow", "a shower; common practice")),
    Choice("mix", "Mixing valve",
           (("tap", "At the tap or shower"), ("heater", "At the heater"), ("none", "None")),
           "tap", help="One that holds the temperature", unknown=NONE_CAREFUL),
    Number("set", "Mixing valve set to", "temperature", "45 °C", "113 °F", CELSIUS + 30,
           CELSIUS + 70, when=MIX, unknown=NOT_CHECKED),
    Count("draws", "Hot draws a day after a pause", 6, 0, 200,
          help="Each begins with the pipe cold", group=MORE),
    Number("power", "Heating power (optional)", "power", "2000 W", "2000 W", 50.0, 1e5,
           help="Of the element, burner or collectors", optional=True, group=MORE),
    Number("hottest", "Hottest the pipe gets (optional)", "temperature", "", "", CELSIUS,
           CELSIUS + 100, help="Apart from its hot water, as in the sun. The hotter counts",
           optional=True, group=MORE),
    replace(altitude(5000.0, group=MORE), unknown=SEA_LEVEL),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the hot water sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about hot water waits for its rooms
    from calc.sheets.hot_water import drawing, fixes, judge, show, working
    from calc.sheets.hot_water.case import case_of

    case = case_of(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed, reader), reader),
        lambda changed: fixes.changes(case_of(changed, reader), reader),
        fixes.NONE,
    )
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: (drawing.draw(case, reader),),
            tables=lambda: show.tables(case, reader),
            steps=lambda: working.steps(case),
            links=lambda: judge.links(case, reader),
        ),
    )


SHEET = Sheet(
    "hot_water",
    "Hot water",
    FIELDS,
    solve,
    folded=(MORE,),
    cautions=(
        *HOT,
        "A heater without a working relief valve can explode. Lift its lever now and then; fit no "
        "valve before or after it.",
        "Hot water burns: test it by hand before you bathe a child, and let the heater cool before "
        "you open anything.",
        "An expansion tank is a pressure vessel under local law. Let the pressure out, and drain "
        "it, before you loosen it.",
        "Heaters, burners, flues and electric elements are for a licensed person, to local codes. "
        "Carbon monoxide kills.",
        "Local rules say how hot water is stored and mixed against legionella and scalding. They "
        "come first.",
    ),
    sources=(
        "Density and heat of water: IAPWS SR6-08 (2011). Expansion tank: Boyle's law with absolute "
        "pressures; air pressure by altitude: ISO 2533:1975.",
        "Burns: A. R. Moritz and F. C. Henriques (1947), as the trade prints it. 49 °C (120 °F) at "
        "a tap: IPC 424.3. From memory.",
        "Store at 60 °C, legionella up to 50 °C: WHO (2007). Hot within a minute: HSE HSG274. From "
        "memory.",
        "A relief valve may drip from 90 % of its setting: EN 12828, from memory.",
        "Heat and pipe: the standard named with each kind.",
    ),
    # what the physics may refuse -> the field it came from
    arguments={"temperature_k": "stored", "cold_k": "water", "hot_k": "stored"},
    page="hot-water/",
)
