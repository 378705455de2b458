"""What happens at one outlet when another opens: the whole supply solved before and after."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Sheet, Unknown
from calc.page.findings import Fix
from calc.sheets.keep_up import judge, show, show_fall
from calc.sheets.keep_up.case import check_rows, solved, supply_of
from calc.sheets.keep_up.cautions import cautions
from calc.sheets.keep_up.drawing import draw
from calc.sheets.keep_up.fixes import SHORT, none_words, tried
from calc.sheets.keep_up.links import fixed, links
from calc.sheets.keep_up.rows import LEVEL_M, PIPES, RUNS, SET_PA, SUCTION_M, TANKS, TAPS
from calc.sheets.parts.fields import (
    CAREFUL_ALTITUDE,
    MOST_LIFT,
    NO_PUMP,
    SUCTION_LONG,
    altitude,
    hottest_pipe,
    least_pump_flow,
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
from calc.sheets.parts.line_cautions import DRAWN_IN, EARTH, FROST
from calc.sheets.parts.pipe_choice import KIND_HEADINGS
from calc.sheets.parts.pump_choice import own_pump_fields, pump_menu

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.answer import Table
    from calc.page.form import Values
    from calc.sheets.keep_up.case import Case
    from calc.sheets.keep_up.fixes import Change
    from calc.units import Reader

SOURCE, HILL = "Source and water", "Tanks"
ROWS, FEW = ("ask", ("rows",)), ("ask", ("few",))
PUMPED, FALLS = ("drive", ("held", "full")), ("drive", (NO_PUMP,))

FIELDS = (
    Choice(
        "ask",
        "Describe the site",
        (("rows", "Row by row"), ("few", "By a few questions")),
        "rows",
        help="A few questions make one pipe to one house",
    ),
    replace(pump_menu("middle"), when=PUMPED),
    Choice(
        "drive",
        "How the pump is driven",
        (
            ("held", "Speed control, holds a set pressure"),
            ("full", "Fixed speed"),
            (NO_PUMP, "No pump: the water comes from above"),
        ),
        "held",
    ),
    Number(
        "set",
        "Set pressure at the pump",
        "pressure",
        "3.5 bar",
        "50 psi",
        *SET_PA,
        when=("drive", ("held",)),
    ),
    *own_pump_fields(),
    Number("away", "Length of pipe to the house", "length", "140 m", "450 ft", 0.1, 20e3, when=FEW),
    Number("climb", "Climb from pump to house", "length", "8 m", "25 ft", -300.0, 400.0, when=FEW),
    Choice("main", "Pipe", PIPES, "pe100-sdr11/32", "pvc40/1", when=FEW, groups=KIND_HEADINGS),
    Count("showers", "Showers open", 2, 0, 20, when=FEW),
    Count("sinks", "Sinks open", 0, 0, 20, when=FEW),
    Count("hoses", "Hoses opened after", 1, 0, 10, when=FEW),
    replace(RUNS, when=ROWS),
    replace(TAPS, when=ROWS),
    replace(TANKS, when=ROWS, group=HILL),
    replace(suction_lift(MOST_LIFT, SOURCE), when=PUMPED),
    Number(
        "suctionlong",
        "Suction pipe length",
        "length",
        "7 m",
        "23 ft",
        *SUCTION_M,
        group=SOURCE,
        when=PUMPED,
        unknown=SUCTION_LONG,
    ),
    replace(pumps_in_parallel(SOURCE), when=PUMPED),
    Choice(
        "suctionpipe",
        "Suction pipe size",
        PIPES,
        "pe100-sdr11/40",
        "pvc40/1.25",
        group=SOURCE,
        help="A foot valve and a bend are counted with it",
        when=PUMPED,
        groups=KIND_HEADINGS,
    ),
    water_temperature(333.15, SOURCE),
    replace(altitude(4500.0, "300 m", "1000 ft", SOURCE), unknown=CAREFUL_ALTITUDE),
    hottest_pipe(group=SOURCE),
    relief_valve(SOURCE, ("pump", CENTRIFUGAL)),
    replace(pressure_tank(SOURCE), when=PUMPED),
    replace(precharge(SOURCE), when=PUMPED),
    replace(starts_allowed(SOURCE), when=PUMPED),
    replace(smallest_draw(SOURCE, "; if blank, the smallest of the outlets"), when=PUMPED),
    sensor(SOURCE, ("drive", ("held",))),
    replace(least_pump_flow(SOURCE), when=PUMPED),
    pump_guard(SOURCE),
    Number(
        "fall",
        "Water level of the source",
        "length",
        "30 m",
        "100 ft",
        *LEVEL_M,
        help="Above the point that your heights begin at; below it: a minus sign",
        when=FALLS,
    ),
    Number(
        "gives",
        "Least flow of the source (optional)",
        "flow",
        "",
        "",
        0.0,
        1.0,
        help="In the driest weeks. A tank that is kept full: what fills it",
        optional=True,
        when=FALLS,
        unknown=Unknown("", "", "the source's flow is not checked"),
    ),
)


def solve(values: Values, reader: Reader) -> Answer:
    case = solved(supply_of(values), values.ask)

    def later() -> dict[str, Any]:
        changes = tried(case, reader)
        none = none_words(case, changes, reader)
        said = (Fix(none),) if none else ()
        return {
            "fixes": (*(_fix(change, case, values, reader) for change in changes), *said),
            "tables": tuple(_tables(case, [one for one in changes if one.kinds is SHORT])),
            "steps": show.steps(case),
            "findings": judge.findings(case, reader),
            "drawings": (draw(case, reader),),
            "charts": show.charts(case, reader),
            "links": tuple(links(values, case, reader)),
        }

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader, brief=True),
        cautions=cautions(case, reader),
        figures=show.figures(case),
        later=later,
    )


def _fix(change: Change, case: Case, values: Values, reader: Reader) -> Fix:
    name = case.main.name if case.main else ""
    link = fixed(values, change.supply, reader) if change.fixes else None
    return Fix(change.text(name, reader), link)


def _tables(case: Case, changes: list[Change]) -> Iterator[Table]:
    yield show.outlets(case)
    if changes:
        yield show.changes_table(case, changes)
    yield show.pipes_table(case)
    if case.supply.pumping is None:
        yield show_fall.points(case)


SHEET = Sheet(
    "keep_up",
    "Will it keep up?",
    FIELDS,
    solve,
    check=check_rows,
    folded=(HILL, SOURCE),
    cautions=(
        "Switch off, lock off and let the pressure out before you open a pump or a pipe.",
        "Know what is buried before you dig; a trench can fall in.",
        "Do not enter a well or tank: bad air kills without warning.",
        "Wiring near water, batteries and inverters: a licensed person must do it, to local codes.",
        "A hose, trough or tank can draw dirty water back: fit a backflow preventer (local codes).",
        "Fit a relief valve wherever a pump could exceed a rating, also after a reducing valve.",
        "Parts that touch drinking water must be approved for it where you are.",
        FROST,
        DRAWN_IN,
        EARTH,
    ),
    sources=(
        "Friction: Darcy-Weisbach with Colebrook (1939); fittings: Crane TP-410, from memory.",
        "Outlets: Torricelli’s law from a flow at a pressure.",
        "Pump at another speed: affinity laws.",
        "Flows and needed pressures of outlets: common practice, no source.",
        "80 psi at an outlet: IPC 604.8 and UPC 608.2, from memory.",
        "Losses of filters and reducing valves, and that a reducing valve gives 7 to 15 psi (0.5 "
        "to 1 bar) less near its rated flow: common practice, no source; use your manufacturer’s.",
    ),
    page="keep-up/",
)
