"""What happens at one outlet when another opens: the whole supply solved before and after."""

from dataclasses import replace

from calc.errors import InputError
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Sheet
from calc.page.form import Row
from calc.sheets.keep_up.case import Supply
from calc.sheets.keep_up.cures import Rows, tried
from calc.sheets.keep_up.drawing import draw
from calc.sheets.keep_up.links import links
from calc.sheets.keep_up.rows import PIPES, RUNS, TANKS, TAPS, pipe_of
from calc.sheets.keep_up.show import changes_table, chart, figures, outlets, pipes_table, steps
from calc.sheets.keep_up.verdict import verdict
from calc.sheets.keep_up.warnings import warnings
from calc.sheets.parts.fields import altitude, water_temperature
from calc.sheets.parts.pump_choice import chosen_pump, own_pump_fields, pump_menu

SOURCE, LINES = "Source and water", "Runs of pipe and tanks"
ROWS, FEW = ("ask", ("rows",)), ("ask", ("few",))

FIELDS = (
    Choice(
        "ask",
        "Describe the site",
        (("rows", "Row by row"), ("few", "By a few questions")),
        "rows",
        help="A few questions make a simple site: one pipe to a house. You can go on from there.",
    ),
    pump_menu("middle"),
    Choice(
        "drive",
        "Its control",
        (("held", "Speed control, holds a set pressure"), ("full", "Runs at full speed")),
        "held",
    ),
    Number(
        "set",
        "Set pressure at the pump",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.1e5,
        16e5,
        when=("drive", ("held",)),
    ),
    *own_pump_fields(),
    Number("away", "Length of pipe to the house", "length", "140 m", "450 ft", 0.1, 20e3, when=FEW),
    Number(
        "climb", "Climb from pump to house", "length", "8 m", "25 ft", -300.0, 400.0, when=FEW
    ),
    Choice("main", "Pipe", PIPES, "pe100-sdr11/32", "pvc40/1", when=FEW),
    Count("showers", "Showers running", 2, 0, 20, when=FEW),
    Count("sinks", "Sinks running", 0, 0, 20, when=FEW),
    Count("hoses", "Hoses that then open", 1, 0, 10, when=FEW),
    replace(TAPS, when=ROWS),
    replace(RUNS, when=ROWS, group=LINES),
    replace(TANKS, when=ROWS, group=LINES),
    Number(
        "lift",
        "Lift from the water to the pump",
        "length",
        "4 m",
        "13 ft",
        -50.0,
        9.0,
        help="From the water’s lowest level. Water above the pump: a minus sign.",
        group=SOURCE,
    ),
    Number("suctionlong", "Suction pipe", "length", "7 m", "23 ft", 0.1, 200.0, group=SOURCE),
    Count(
        "pumps",
        "Pumps like it side by side",
        1,
        1,
        3,
        help="Each behind its own check valve.",
        group=SOURCE,
    ),
    Choice(
        "suctionpipe", "Its size", PIPES, "pe100-sdr11/40", "pvc40/1.25", group=SOURCE,
        help="A foot valve and a bend are counted with it.",
    ),
    water_temperature(333.15, SOURCE),
    altitude(4500.0, "300 m", "1000 ft", SOURCE),
)  # fmt: skip


def solve(values, reader):
    rows = rows_of(values)
    case = rows.case()
    changes = tried(rows, case, reader)
    tables = [outlets(case), pipes_table(case)]
    if changes:
        tables.insert(1, changes_table(case, changes))
    return Answer(
        given_verdict=verdict(case, changes, reader),
        figures=figures(case),
        steps=steps(case),
        tables=tuple(tables),
        charts=(chart(case, reader),),
        drawings=(draw(case, reader),),
        warnings=tuple(warnings(case, reader)),
        links=tuple(links(SHEET, values, rows, case, changes, reader)),
    )


# Inputs ---------------------------------------------------------------------------------------


def rows_of(values):
    """The inputs of a case, whichever way the site was described."""
    supply = Supply(
        chosen_pump(values),
        values.set if values.drive == "held" else None,
        values.lift,
        values.suctionlong,
        pipe_of(values.suctionpipe),
        values.water,
        values.altitude,
        values.pumps,
    )
    if values.ask == "few":
        return Rows(supply, *_few(values), ())
    return Rows(supply, values.runs, values.taps, values.tanks)


def _few(values):
    """Runs and outlets of one pipe to one house."""
    run = {"from": "pump", "to": "house", "long": values.away, "up": values.climb}
    run |= {"pipe": values.main, "bends": 4, "extra": "none"}
    taps = []
    for name, kind, now, then in (
        ("Showers", "shower", values.showers, values.showers),
        ("Sinks", "sink", values.sinks, values.sinks),
        ("Hoses", "hose", 0, values.hoses),
    ):
        if then:
            numbers = {"name": name, "at": "house", "kind": kind, "now": now, "then": then}
            taps.append(numbers | {"flow": None, "rated": None, "want": None})
    if not taps:
        raise InputError("Nothing runs. Give at least one outlet.", name="showers")
    return (Row("away", run),), tuple(Row("showers", numbers) for numbers in taps)


SHEET = Sheet(
    "keep_up",
    "Will it keep up?",
    FIELDS,
    solve,
    folded=(LINES, SOURCE),
    cautions=(
        "Switch off, lock off and let the pressure out before you open a pump or a pipe.",
        "Know what is buried before you dig; a trench can fall in.",
        "Wells and cisterns are confined spaces: do not climb in; bad air kills without warning.",
        "Wiring near water, batteries and inverters are for licensed hands and local codes.",
        "A hose, trough or tank can draw dirty water back: fit a backflow preventer (local codes).",
        "Parts that touch drinking water must be approved for it where you are.",
    ),
    sources=(
        "Friction: Darcy-Weisbach with Colebrook (1939); fittings: Crane TP-410, from memory.",
        "Outlets: Torricelli’s law from a flow at a pressure.",
        "Pump at another speed: affinity laws.",
        "What a shower, sink or hose takes, and what it wants: common practice, no source.",
        "Losses of filters and reducers: common practice, no source; use your maker’s.",
    ),
    page="keep-up/",
)
