"""What is wrong here: the fault that fits what was read and noticed, by changing the solved supply.

Asked by few, so it is imported by who asks (``calc.sheets.LATER``): this module names fields only.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Choice, Field, Number, Sheet
from calc.sheets.fault.rows import BUCKETS, GAUGES, OPEN, SIGNS
from calc.sheets.parts.fields import (
    CAREFUL_ALTITUDE,
    NO_PUMP,
    SUCTION_LONG,
    altitude,
    least_pump_flow,
    precharge,
    pressure_tank,
    pumps_in_parallel,
    sensor,
    suction_lift,
    water_temperature,
)
from calc.sheets.parts.line_cautions import CHLORINATE, DIG, DRAWN_IN, FROST
from calc.sheets.parts.pipe_choice import KIND_HEADINGS
from calc.sheets.parts.pump_choice import own_pump_fields, pump_menu
from calc.sheets.parts.supply_tables import PIPES, RUNS, TANKS, TAPS

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

NOTICED, AT_PUMP, SOURCE, HILL = (
    "What you notice", "Read at the pump", "Source and water", "Tanks up the hill",
)  # fmt: skip
HELD, FULL = "held", "full"
PUMPED, WITH_SET, FIXED, FALLS = (
    ("drive", (HELD, FULL)), ("drive", (HELD,)), ("drive", (FULL,)), ("drive", (NO_PUMP,)),
)  # fmt: skip
DISPLAY = "From a display only, never inside a box"


def _read(key: str, label: str, quantity: str, low: float, high: float, help: str) -> Number:
    return Number(
        key, label, quantity, "", "", low, high, help, optional=True, group=AT_PUMP, when=PUMPED
    )


FIELDS: tuple[Field, ...] = (
    GAUGES,
    BUCKETS,
    RUNS,
    TAPS,
    Choice("drive", "How the pump is driven",
           ((HELD, "Speed control, holds a set pressure"), (FULL, "Fixed speed"),
            (NO_PUMP, "No pump: the water comes from above")), HELD),
    replace(pump_menu("middle"), when=PUMPED),
    Number("set", "Set pressure at the pump", "pressure", "3.5 bar", "50 psi", 0.1e5, 16e5,
           when=WITH_SET),
    Number("cutin", "Pump starts at (optional)", "pressure", "", "", 0.1e5, 15e5, optional=True,
           when=FIXED, help="By a pressure switch; if blank, it runs on"),
    Number("cutout", "Pump stops at (optional)", "pressure", "", "", 0.1e5, 20e5, optional=True,
           when=FIXED, help="By a pressure switch; if blank, it runs on"),
    *own_pump_fields(),
    *(Choice(key, label, (("no", "No"), ("yes", "Yes")), "no", group=NOTICED)
      for key, _, label in SIGNS),
    Choice("during", "Outlets open meanwhile", tuple(o for o in OPEN if o[0] != "one"), "after",
           group=AT_PUMP, when=PUMPED, help="While gauge and display were read"),
    _read("vacuum", "Vacuum at the pump’s inlet (optional)", "pressure", -5e5, 1.0e5,
          "By a suction gauge; above the air outside: a minus sign"),
    _read("watts", "Power on the display (optional)", "power", 0.0, 1e5, DISPLAY),
    _read("nominal", "Voltage when all is well (optional)", "voltage", 5.0, 1000.0,
          "What the display says on a good day"),
    _read("volts", "Voltage on the display (optional)", "voltage", 0.0, 1000.0, DISPLAY),
    _read("amps", "Current on the display (optional)", "current", 0.0, 500.0,
          "From a display only; compared where the usual voltage is known"),
    _read("deep", "Water below the pump, measured (optional)", "length", -50.0, 60.0,
          "By a line from the top; never climb in"),
    _read("cycles", "Pump starts counted (optional)", "per_hour", 0.0, 1.0,
          "With those outlets open; needs the pressure tank’s volume"),
    _read("fell", "Fall at rest, pump off (optional)", "pressure", 0.0, 20e5,
          "Pump switched off, all closed: how far the pressure falls"),
    _read("kept", "Fall behind a closed valve (optional)", "pressure", 0.0, 20e5,
          "The same, the valve after pump and tank closed too"),
    Number("wait", "Time it fell for", "minutes", "10 min", "10 min", 30.0, 86400.0, group=AT_PUMP,
           when=PUMPED),
    replace(suction_lift(9.0, SOURCE), when=PUMPED),
    Number("suctionlong", "Suction pipe length", "length", "7 m", "23 ft", 0.1, 200.0, when=PUMPED,
           group=SOURCE, unknown=SUCTION_LONG),
    Choice("suctionpipe", "Suction pipe size", PIPES, "pe100-sdr11/40", "pvc40/1.25", when=PUMPED,
           group=SOURCE, help="A foot valve and a bend are counted with it", groups=KIND_HEADINGS),
    replace(pumps_in_parallel(SOURCE), when=PUMPED),
    replace(pressure_tank(SOURCE), when=PUMPED),
    replace(precharge(SOURCE), when=PUMPED),
    sensor(SOURCE, WITH_SET),
    replace(least_pump_flow(SOURCE), when=PUMPED),
    Number("fall", "Water level of the source", "length", "30 m", "100 ft", -300.0, 400.0,
           help="Above the point that your heights begin at; below it: a minus sign", when=FALLS,
           group=SOURCE),
    water_temperature(333.15, SOURCE),
    replace(altitude(4500.0, "300 m", "1000 ft", SOURCE), unknown=CAREFUL_ALTITUDE),
    replace(TANKS, group=HILL),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for it
    from calc.sheets.fault import drawing, judge, show
    from calc.sheets.fault.case import case_of

    case = case_of(values)
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case, reader),
        cautions=judge.cautions(case),
        later=lambda: {
            "drawings": (drawing.draw(case, reader),),
            "tables": show.tables(case, reader),
            "steps": show.steps(case, reader),
            "links": judge.links(case, reader),
            "fixes": judge.fixes(case, reader),
        },
    )


def check(values: Values) -> None:
    """The faults of rows that were read, where something else could not be read."""
    from calc.sheets.fault.form import check_rows

    check_rows(values)


SHEET = Sheet(
    "fault",
    "What is wrong here?",
    FIELDS,
    solve,
    check=check,
    folded=(AT_PUMP, SOURCE, HILL),
    cautions=(
        "Never open a box, a motor or a display to measure: that is for a licensed person, to "
        "local codes.",
        "Switch off, lock off and let the pressure out before you open a pump, a filter or a pipe.",
        "A pressure tank holds energy: let out the water before you check or fill its air.",
        "Wells and tanks are confined spaces: bad air kills. Do not enter; measure from above.",
        "A displacement pump against a closed valve bursts something: leave its relief valve as "
        "it is.",
        "If the water looks, smells or tastes odd after a fault, have it tested before you drink "
        "it.",
        DIG,
        CHLORINATE,
        DRAWN_IN,
        FROST,
    ),
    sources=(
        "Each fault is put into the solved supply; shares by Bayes’ rule from normal errors.",
        "Roughness, fittings and heights are taken as known to 5 %: our choice.",
        "How likely each fault is before a reading, and what it is noticed by: common practice, no "
        "source; the numbers are our choice.",
        "Friction: Darcy-Weisbach with Colebrook (1939); fittings: Crane TP-410, from memory.",
        "Pump at another speed: affinity laws. Pressure tank: Boyle’s law.",
    ),
    page="fault/",
)
