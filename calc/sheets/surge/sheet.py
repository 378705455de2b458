"""Water hammer: what a valve that closes does to the pipe, and what makes it gentle."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Sheet, Unknown
from calc.sheets.parts.fields import CAREFUL_ALTITUDE, altitude, usual, water_temperature
from calc.sheets.parts.line_cautions import DIG, FROST
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.parts.tries import Form
from calc.sheets.surge import drawing, fixes, judge, show
from calc.sheets.surge.case import HELD, LONGEST_CLOSING, case_of

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

WALL = "Pipe wall, water and height"
VALVE, TRIP = ("event", ("valve",)), ("event", ("trip",))
FIELDS = (
    Number("flow", "Flow that is stopped", "flow", "25 L/min", "6 gpm", 1e-6, 0.1,
           help="What runs in the pipe just before the valve closes"),
    Number("length", "Pipe length to valve or tank", "length", "140 m", "450 ft", 0.5, 20e3,
           help="The water in it moves as one column"),
    *pipe_fields(start=("pe100-sdr11", "25"), start_us=("pvc40", "1")),
    Number("closing", "Closing time of the valve", "time", "0.1 s", "0.1 s", 0.0, LONGEST_CLOSING,
           help="Solenoid or snapping float: 0.1 s; ball valve by hand: 0.3 s", when=VALVE,
           unknown=usual(practice.SNAP_CLOSING, "time",
                         "a fast valve, to be careful; common practice")),
    Number("pressure", "Static pressure at the valve", "pressure", "3.5 bar", "50 psi", 1e3, 40e5,
           help="With no water flowing", when=VALVE),
    Number("weakest", "Lowest-rated part (optional)", "pressure", "10 bar", "150 psi", 1e4, 100e5,
           help="A filter housing, a tank; empty: the pipe alone", optional=True,
           unknown=usual(practice.PART_RATING, "pressure",
                         "usual for a filter housing or small tank; common practice")),
    Choice("held", "How the pipe is held", tuple((key, hold.label) for key, hold in HELD.items()),
           "buried", help="It changes the speed of the wave by a few percent", group=WALL,
           unknown=Unknown("laid", "laid", "gives the highest knock; our choice")),
    replace(water_temperature(333.15, WALL), help="Colder pipe is stiffer and knocks harder",
            unknown=usual(practice.WELL_WATER, "temperature",
                          "usual for well water; common practice")),
    replace(altitude(4500.0, group=WALL, help="In thinner air the water column separates sooner"),
            unknown=CAREFUL_ALTITUDE),
    Number("rating", "Pressure rating of the pipe", "pressure", "", "", 1e4, 100e5,
           help="As printed on it; if blank, it is not checked", optional=True,
           when=("kind", ("own",)), unknown=Unknown(reason="not printed on the pipe")),
    Number("hottest", "Hottest the pipe gets (optional)", "temperature", "", "", 273.15, 373.15,
           help="In the sun over 40 °C (104 °F); if blank, as its water", optional=True,
           group=WALL, unknown=Unknown("", "", "taken as hot as its water")),
    Choice("event", "What stops the water",
           (("valve", "A valve or tap closes"), ("trip", "The pump stops in a power cut")),
           "valve"),
    Number("lift", "Rise from the pump to the tank", "length", "30 m", "100 ft", 0.5, 400.0,
           help="Height, not distance, up to the water of an open tank", when=TRIP),
    Number("crest", "Highest point on the way (optional)", "length", "", "", 0.0, 400.0,
           help="Above the pump: a crest or level stretch before the tank", optional=True,
           when=TRIP, unknown=Unknown(reason="the answer says how high one may be")),
    Number("vessel", "Air in a vessel at the pump (optional)", "volume", "", "", 1e-5, 10.0,
           help="Its air while nothing runs, on the tank's side of the check valve", optional=True,
           when=TRIP, unknown=Unknown(reason="taken as none")),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the water-hammer sheet."""
    if values.event == "trip":
        from calc.sheets.surge import trip_answer  # asked by few: not in what a start is sent

        return trip_answer.answer(SHEET, values, reader)
    case = case_of(values)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.faults(case_of(changed), reader),
        lambda changed: fixes.changes(case_of(changed), reader),
    )
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        later=lambda: {"fixes": form.fixes()},
        figures=show.figures(case),
        steps=show.steps(case),
        tables=show.tables(case),
        charts=(show.chart(case),),
        drawings=(drawing.draw(case, reader),),
        links=judge.links(values, reader),
        cautions=judge.cautions(case),
    )


SHEET = Sheet(
    "surge",
    "Water hammer",
    FIELDS,
    solve,
    folded=(WALL,),
    cautions=(
        "Never test a suspect pipe by slamming a valve: a burst pipe or filter housing throws "
        "parts and water.",
        "Let the pressure out before you open a joint, a filter or a tank.",
        "A relief valve must be sized and set by its manufacturer's data and discharge to a safe "
        "place. Never plug it.",
        "Anchor bends, tees and ends: a surge pushes on them with the full peak pressure.",
        "A pump that stops at once, as in a power cut, sends a wave of the same size the other "
        "way: ask for it under what stops the water. Speed control that ramps down avoids it "
        "otherwise.",
        "Most valves stop most of the flow in the last half of their travel: give the time in "
        "which the flow really stops.",
        "Follow local codes, and have a licensed person do the work they reserve.",
        "The low side of a wave draws in polluted water through leaks.",
        FROST,
        DIG,
    ),
    sources=(
        "Wave speed: Korteweg (1878) with wall restraint after Wylie and Streeter, Fluid "
        "Transients in Systems (1993), from memory.",
        "Stiffness of polyethylene: Covas et al., J. Hydraul. Res. 42 (2004), and by temperature "
        "PPI, Handbook of PE Pipe, table B.1.2; both from memory.",
        "Sudden stop: Joukowsky (1898). Slow closing: Michaud (1878) and Allievi (1913); friction "
        "left out.",
        "Peak of a rejoining column, twice the rise: after Bergant, Simpson and Tijsseling, J. "
        "Fluids Struct. 22 (2006), from memory; as a bound, our choice.",
        "A pump that stops and an air vessel against it: Wylie and Streeter (1993) and Chaudhry, "
        "Applied Hydraulic Transients (2014), from memory; stopped at once, friction left out.",
        "Surge allowance of 1.5 for inch polyethylene pipe: AWWA Manual M55, from memory. For "
        "other pipe none is taken (our choice).",
        "How valves stop the flow, how stiff a hose is: common practice, no source.",
    ),
    # what the physics may refuse -> the field it came from
    arguments={
        "velocity": "flow",
        "flow_m3s": "flow",
        "bore_m": "bore",
        "wall": "kind",
        "roughness_m": "inside",
        "temperature_k": "water",
        "altitude_m": "altitude",
        "air": "vessel",
    },
    page="water-hammer/",
)
