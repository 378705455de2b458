"""Cable: the smallest conductor that keeps to a voltage drop, or the drop of a cable in mind.

The physics of power is imported only by who asks (``calc.sheets.LATER``), so this module names
sizes and the like itself; a test holds that they are those of the physics.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Sheet, Unknown
from calc.sheets.parts.line_cautions import DIG
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

MM2 = ("0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120", "150",
       "185", "240")  # fmt: skip
AWG = ("18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1-0", "2-0", "3-0", "4-0")
MOST_CABLES = 4  # beside one another; our choice
START, DROP, CABLE = "Start-up", "Accepted drop", "The cable itself"
AC, IN_MIND = ("circuit", ("single", "three")), ("own", ("mm2", "awg"))


def _usual(number: float, reason: str) -> Unknown:
    text = f"{100 * number:g} %"
    return Unknown(text, text, reason)


FIELDS = (
    Number("length", "Length of cable, one way", "length", "30 m", "100 ft", 0.1, 20e3,
           help="Along its route; the way back is counted for you"),
    Choice("circuit", "Kind of current",
           (("dc", "DC: panels, battery"), ("single", "AC, one phase"),
            ("three", "AC, three phases")), "dc"),
    Number("voltage", "System voltage", "voltage", "48 V", "48 V", 1.0, 1000.0,
           help="At the source; three phases: between two of them"),
    Choice("known", "What you know of the pump",
           (("power", "Its power"), ("current", "Its current")), "power",
           help="Either is on its label or data sheet"),
    Number("power", "Power the pump takes", "power", "1000 W", "1000 W", 1.0, 1e5,
           help="Electrical, the most it takes while it runs", when=("known", ("power",))),
    Number("current", "Running current", "current", "20 A", "20 A", 0.01, 1000.0,
           help="The most it takes while it runs", when=("known", ("current",))),
    Number("factor", "Power factor", "number", "0.8", "0.8", 0.1, 1.0, when=AC,
           help="From the label, as cos φ",
           unknown=Unknown("0.8", "0.8", "usual for a small motor; common practice")),
    Choice("own", "Cable in mind (optional)",
           (("none", "None: find the size"), ("mm2", "A size in mm²"), ("awg", "A size in AWG")),
           "none"),
    Choice("mm2", "Size of the cable, mm²", tuple((one, f"{one} mm²") for one in MM2), "10",
           when=("own", ("mm2",))),
    Choice("awg", "Size of the cable, AWG",
           tuple((one, f"{one.replace('-', '/')} AWG") for one in AWG), "8",
           when=("own", ("awg",))),
    Number("carries", "Current it may carry (optional)", "current", "", "", 0.1, 2000.0,
           help="By local code, as it lies; if blank, not checked", optional=True, when=IN_MIND,
           unknown=Unknown(reason="the local code gives it")),
    Choice("start", "How the motor starts",
           (("soft", "Slowly, by a controller"), ("direct", "Switched on directly"),
            ("own", "By its data sheet")), "soft", group=START,
           unknown=Unknown("direct", "direct", "takes the most; our choice")),
    Number("startup", "Start-up current", "current", "60 A", "60 A", 0.01, 1e4,
           when=("start", ("own",)), group=START),
    Number("drop", "Accepted drop, running", "percent", "3 %", "3 %", 0.001, 0.5, group=DROP,
           help="Share of the system voltage lost in the cable",
           unknown=_usual(practice.DROP_RUNNING, "common practice")),
    Number("dropstart", "Accepted drop, at start", "percent", "15 %", "15 %", 0.001, 0.5,
           group=DROP, help="The motor must still start with what is left",
           unknown=_usual(practice.DROP_STARTING, "common practice")),
    Choice("metal", "Metal of the conductor", (("copper", "Copper"), ("aluminium", "Aluminium")),
           "copper", group=CABLE),
    Choice("strands", "Strands of a cable in mm²",
           (("fine", "Fine: flexible cable, solar cable"), ("coarse", "Few: fixed wiring")), "fine",
           group=CABLE, unknown=Unknown("fine", "fine", "loses a little more; our choice")),
    Choice("lies", "How the cable lies",
           (("ground", "Buried"), ("shade", "Above ground, in the shade"),
            ("sun", "In the sun, or in a pipe in the sun"), ("own", "I know how warm it gets")),
           "shade", group=CABLE, help="A warm conductor loses more",
           unknown=Unknown("sun", "sun", "the warmest; our choice")),
    Number("warm", "Temperature of the conductor", "temperature", "50 °C", "122 °F", 233.15, 393.15,
           help="Under load", when=("lies", ("own",)), group=CABLE),
    Count("cables", "Equal cables side by side", 1, 1, MOST_CABLES, group=CABLE,
          help="They share the current"),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the cable sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about a cable waits for the rooms of power
    from calc.sheets.cable import drawing, fixes, judge, show
    from calc.sheets.cable.case import case_of

    case = case_of(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed, reader), reader),
        lambda changed: fixes.changes(changed, case_of(changed, reader), reader),
        fixes.NONE,
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        sizing=case.own is None,
        figures=show.figures(case, reader),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: (drawing.draw(case, reader),),
            tables=lambda: show.tables(case, reader),
            steps=lambda: show.steps(case, reader),
            links=lambda: judge.links(),
        ),
    )


SHEET = Sheet(
    "cable",
    "Cable size",
    FIELDS,
    solve,
    folded=(START, DROP, CABLE),
    cautions=(
        "Have a licensed electrician choose, lay and connect the cable, to local codes.",
        "A DC arc does not go out by itself. Use switches, fuses and plugs made for DC at this "
        "voltage, and never unplug under load.",
        "Fit a disconnect that can be locked off beside the pump and beside the source. Panels are "
        "live in any light.",
        "A battery short-circuits with thousands of amperes: put its fuse or breaker as near to "
        "its terminal as the code allows.",
        "Earth (ground) and bond the frames, the pump and the pipe, and protect against lightning, "
        "as the local code asks.",
        "In wells, tanks and wet places use only cable, joints and protection made for them. "
        "Protect cable from sun, rodents and spades.",
        DIG,
    ),
    sources=(
        "Resistivity of copper and aluminium: IEC 60028 and IEC 60889, from memory.",
        "Strands and sizes: IEC 60228, from memory; AWG: ASTM B258; their resistance: NEC chapter "
        "9, table 8, from memory.",
        "Voltage drop and reactance: IEC 60364-5-52 annex G, from memory.",
        "Accepted drops, start-up currents, power factor and fuse ratings: common practice, no "
        "source. How warm a cable gets as it lies: our choice.",
    ),
    # what the physics may refuse -> the field it came from
    arguments={
        "length_m": "length",
        "voltage_v": "voltage",
        "power_w": "power",
        "current_a": "current",
        "power_factor": "factor",
        "start_times": "startup",
        "temperature_k": "warm",
        "most_share": "drop",
        "most_start_share": "dropstart",
    },
    page="cable/",
)
