"""The supply over a day: tanks, pump and source followed from morning to morning.

Asked by few, so it is imported by who asks (``calc.sheets.LATER``): this module names fields only.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Sheet, Unknown
from calc.sheets.day.rows import DRAWS, OUTLETS, STORES
from calc.sheets.parts.fields import (
    CAREFUL_ALTITUDE,
    SUCTION_LONG,
    altitude,
    pumps_in_parallel,
    sensor,
    starts_allowed,
    suction_lift,
    water_temperature,
)
from calc.sheets.parts.line_cautions import CHLORINATE, DIG, DRAWN_IN, FROST
from calc.sheets.parts.pipe_choice import KIND_HEADINGS
from calc.sheets.parts.pump_choice import own_pump_fields, pump_menu
from calc.sheets.parts.supply_tables import PIPES, RUNS
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

POWER, SOURCE, MORNING = "Pump and power", "Source and water", "Before the day begins"
PUMPED, HELD, FALLS = (("drive", one) for one in (("held", "full"), ("held",), ("none",)))
BY_HOURS = ("powered", ("hours",))

FIELDS = (
    STORES,
    DRAWS,
    OUTLETS,
    RUNS,
    Choice("drive", "How the pump is driven",
           (("held", "Speed control, holds a set pressure"), ("full", "Fixed speed"),
            ("none", "No pump: the water comes from above")), "full"),
    replace(pump_menu("middle"), when=PUMPED),
    Number("set", "Set pressure at the pump", "pressure", "3.5 bar", "50 psi", 0.1e5, 16e5,
           when=HELD),
    *own_pump_fields(),
    Choice("powered", "Power for the pump",
           (("always", "At any hour"), ("hours", "In some hours, as with the sun")), "always",
           when=PUMPED),
    Number("pfrom", "Power comes at", "number", "9", "9", 0.0, 24.0, when=BY_HOURS,
           help="Hour of the day"),
    Number("phours", "Hours of power", "number", "6", "6", 0.25, 24.0, when=BY_HOURS,
           help="With the sun: 5 to 7 hours on a fair day"),
    Number("again", "Pump starts again at (optional)", "percent", "80 %", "80 %", 0.0, 0.95,
           optional=True, when=PUMPED, group=POWER,
           help="Of the tank, once full; blank: a float valve alone",
           unknown=Unknown(reason="taken as a float valve alone")),
    replace(pumps_in_parallel(POWER), when=PUMPED),
    sensor(POWER, HELD),
    replace(starts_allowed(POWER), when=PUMPED),
    Number("stored", "Water stored at the source", "volume", "", "", 0.0, 1e4, optional=True,
           when=PUMPED, group=SOURCE, help="In the well at rest, or in the cistern when full",
           unknown=Unknown(reason="not checked; the answer says what would pass")),
    Number("gives", "What the source gives", "flow", "", "", 0.0, 1.0, optional=True,
           group=SOURCE, help="Day and night, in the driest weeks; 0 for a cistern",
           unknown=Unknown(reason="not checked; the answer says what would pass")),
    Number("fall", "Water level of the source", "length", "", "", -300.0, 400.0, optional=True,
           when=FALLS, group=SOURCE,
           help="Above the point heights begin at; blank: the tanks alone",
           unknown=Unknown(reason="the tanks alone")),
    Number("recovers", "Pump starts again after it ran out", "percent", "50 %", "50 %", 0.05, 1.0,
           when=PUMPED, group=SOURCE, help="Share of the stored water that is there again",
           unknown=Unknown("50 %", "50 %", "our choice")),
    replace(suction_lift(9.0, SOURCE), when=PUMPED),
    Number("suctionlong", "Suction pipe length", "length", "7 m", "23 ft", 0.1, 200.0, when=PUMPED,
           group=SOURCE, unknown=SUCTION_LONG),
    Choice("suctionpipe", "Suction pipe size", PIPES, "pe100-sdr11/40", "pvc40/1.25", when=PUMPED,
           group=SOURCE, help="A foot valve and a bend are counted with it", groups=KIND_HEADINGS),
    water_temperature(333.15, SOURCE),
    replace(altitude(4500.0, "300 m", "1000 ft", SOURCE), unknown=CAREFUL_ALTITUDE),
    Number("start", "Tanks at 6 in the morning (optional)", "percent", "", "", 0.0, 1.0,
           optional=True, group=MORNING, help="Share of each tank; blank: the day that repeats",
           unknown=Unknown(reason="the day that repeats is followed")),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for it
    from calc.sheets.day import drawing, fixes, judge, show
    from calc.sheets.day.case import Kept, case_of
    from calc.sheets.day.form import table_texts

    kept = Kept()
    case = case_of(values, kept)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed, kept), reader),
        lambda changed: fixes.changes(case_of(changed, kept), reader),
        fixes.last(case),
        table_texts(values, reader),
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: drawing.pictures(case, reader),
            charts=lambda: show.charts(case, reader),
            tables=lambda: show.tables(case, reader),
            steps=lambda: show.steps(case),
            links=lambda: judge.links(case, reader),
        ),
    )


def check(values: Values) -> None:
    """The faults of rows that were read, where something else could not be read."""
    from calc.sheets.day.form import check_rows

    check_rows(values)


SHEET = Sheet(
    "day",
    "The supply over a day",
    FIELDS,
    solve,
    check=check,
    folded=(POWER, SOURCE, MORNING),
    cautions=(
        "Wells and tanks are confined spaces: do not enter; call trained people.",
        "A cubic metre of water weighs a tonne: a tank needs firm, level ground or a structural "
        "design, and slopes and stands need permits.",
        "Let the fill end in free air above the highest water (an air gap), so that no tank water "
        "flows back into a well or a main.",
        "Switch off, lock off and let the pressure out before you open a pump or a pipe.",
        "Wiring near water, switches in tanks and wells, batteries and inverters: a licensed "
        "person must do it, to local codes.",
        "Fit dry-run protection: a pump that runs without water is soon destroyed.",
        "Keep some water for fire if the local fire authority asks for it: this page counts none.",
        "Keep children out: lock hatches and lids.",
        "Lift tanks up a hill with machines or many hands: an empty one rolls and catches wind.",
        "A hill top or a long cable to a float draws lightning: stay away in a storm, and earth "
        "(ground) and protect it as the local code asks.",
        FROST,
        DRAWN_IN,
        CHLORINATE,
        DIG,
    ),
    sources=(
        "Tanks and source: conservation, followed by steps of third order with their error watched "
        "(Bogacki and Shampine, 1989, from memory).",
        "Friction: Darcy-Weisbach with Colebrook (1939); fittings: Crane TP-410, from memory.",
        "Outlets: Torricelli’s law from a flow at a pressure.",
        "Pump at another speed: affinity laws.",
        "Flows and needed pressures of outlets, starts per hour, hours of sun: common practice, no "
        "source.",
    ),
    arguments={"stored_m3": "stored", "again": "again"},
    page="day/",
)
