"""Well: what it can keep giving, what stands in it, its levels, and the pump that suits it.

Asked by few, so it is imported by who asks (``calc.sheets.LATER``): this module names fields only.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Rows, Sheet, Unknown
from calc.sheets.parts.fields import daily_use, use_pattern
from calc.sheets.parts.line_cautions import GRIT
from calc.sheets.parts.tries import Form

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

DAY_USE, MARGINS, SUBMERSIBLE, SENSED = (
    "Use over the day", "Margins", "Submersible pump", "Pressure and where it is sensed",
)  # fmt: skip
BUCKET, LEVELS, RECOVERY, TOLD = (("known", (one,)) for one in (
    "bucket", "levels", "recovery", "told"))  # fmt: skip
IN, HOUSE = ("kind", ("in",)), ("sensed", ("house",))
MOST_DEEP = 500.0  # m, of a well; our choice
READINGS = (
    ("0 min", "4 m"), ("30 min", "3.94 m"), ("60 min", "3.89 m"), ("120 min", "3.79 m"),
    ("240 min", "3.64 m"), ("480 min", "3.44 m"), ("720 min", "3.33 m"),
)  # fmt: skip
READINGS_US = (
    ("0 min", "13.1 ft"), ("30 min", "12.9 ft"), ("60 min", "12.7 ft"), ("120 min", "12.4 ft"),
    ("240 min", "11.9 ft"), ("480 min", "11.3 ft"), ("720 min", "10.9 ft"),
)  # fmt: skip

FIELDS = (
    Choice("known", "What you know of the well",
           (("bucket", "A pumping or bucket test"), ("levels", "Levels at rest and while pumping"),
            ("recovery", "A recovery test"), ("told", "A figure from the driller")), "bucket"),
    Number("drawn", "Volume drawn first", "volume", "690 L", "182 gal", 1e-3, 1e3,
           help="Before the flow fell, from a well that was at rest", when=BUCKET),
    Number("minutes", "Time that took", "minutes", "115 min", "115 min", 60.0, 30 * 86400.0,
           help="At one pump setting", when=BUCKET),
    Number("steady", "Steady flow after that", "flow", "1.5 L/min", "0.4 gpm", 0.0, 1.0,
           help="Once it no longer fell, for an hour or more", when=BUCKET),
    Number("tested", "Flow of the test", "flow", "1 L/min", "0.26 gpm", 1e-6, 1.0, when=LEVELS),
    Number("pumping", "Pumping level at that flow", "length", "3.75 m", "12.3 ft", 0.0, MOST_DEEP,
           help="Below the top of the well, once it no longer falls", when=LEVELS),
    Number("rate", "Flow pumped before", "flow", "6 L/min", "1.6 gpm", 1e-6, 1.0, when=RECOVERY),
    Number("pumped", "Time it was pumped", "minutes", "115 min", "115 min", 60.0, 30 * 86400.0,
           when=RECOVERY),
    Rows("readings", "Readings while the level recovers",
         (
             Number("time", "Since the pump stopped", "minutes", "0 min", "0 min", 0.0,
                    30 * 86400.0),
             Number("level", "Water below the top", "length", "4 m", "13.1 ft", 0.0, MOST_DEEP),
         ),
         READINGS, READINGS_US, row="reading", least=2, most=40, when=RECOVERY,
         help="The first as the pump stops, at 0. Then twice as long each time, such as 1, 2, 4 "
         "and 8 minutes"),
    Number("told", "Yield you were told", "flow", "1.5 L/min", "0.4 gpm", 0.0, 1.0, when=TOLD,
           help="From a test of an hour or two it may not last. Test it yourself if you can"),
    daily_use(),
    Number("pump", "Flow the pump takes", "flow", "6 L/min", "1.6 gpm", 0.0, 1.0,
           help="While it runs, as it is set now"),
    Choice("dry", "Dry-run protection", (("yes", "Yes, it stops the pump"), ("no", "None")), "yes",
           help="An electrode, a float or a control that senses the load",
           unknown=Unknown("no", "no", "taken as none, the careful side")),
    Number("static", "Static level", "length", "3.2 m", "10.5 ft", 0.0, MOST_DEEP,
           help="Water below the top of the well after a long rest"),
    Number("intake", "Depth of the intake", "length", "4.3 m", "14.1 ft", 0.1, MOST_DEEP,
           help="Where the water enters: the foot valve or the pump’s strainer"),
    Number("depth", "Depth of the well", "length", "6 m", "19.7 ft", 0.2, MOST_DEEP,
           help="Its floor below its top",
           unknown=Unknown(reason="not checked; the answer says what would pass")),
    Number("casing", "Inside diameter of the well", "diameter", "1000 mm", "39.4 in", 0.03, 10.0,
           help="Of the casing or the shaft, where the water stands",
           unknown=Unknown(reason="what stands in the well is not counted, but for a bucket test")),
    Choice("kind", "Where the pump is",
           (("out", "Above the water"), ("in", "In the well: submersible")), "out"),
    Number("cistern", "Storage tank it fills (optional)", "volume", "", "", 0.01, 1e4,
           help="If blank, the well alone meets the busiest time", optional=True, group=DAY_USE),
    Number("peak", "Used in the busiest time", "volume", "90 L", "24 gal", 0.0, 1e3,
           group=DAY_USE),
    Number("peakfor", "How long that lasts", "minutes", "60 min", "60 min", 60.0, 86400.0,
           group=DAY_USE),
    use_pattern(DAY_USE),
    Number("cover", "Least water above the intake", "length", "0.3 m", "1 ft", 0.0, 30.0,
           help="So that no air is drawn in", group=MARGINS,
           unknown=Unknown("1 m", "3 ft", "more than most need; our choice")),
    Number("clear", "Kept free above the floor", "length", "0.5 m", "1.6 ft", 0.0, 30.0,
           help="Sand and mud gather there", group=MARGINS,
           unknown=Unknown("1 m", "3 ft", "more than most need; our choice")),
    Number("motor", "Outside diameter of the pump", "diameter", "96 mm", "3.8 in", 0.03, 0.5,
           when=IN, group=SUBMERSIBLE,
           unknown=Unknown("96 mm", "3.8 in", "usual for a small one; common practice")),
    Number("sleeve", "Cooling sleeve, inside diameter (optional)", "diameter", "", "", 0.03, 1.0,
           help="A tube about the motor, also called a flow inducer", optional=True, when=IN,
           group=SUBMERSIBLE),
    Number("cooling", "Least cooling speed (optional)", "speed", "", "", 0.01, 1.0,
           help="From the motor’s data sheet; if blank, what is usual for its size",
           optional=True, when=IN, group=SUBMERSIBLE),
    Number("drop", "Length of drop pipe (optional)", "length", "", "", 0.1, MOST_DEEP,
           help="From the pump to the top of the well; if blank, the depth of the intake",
           optional=True, when=IN, group=SUBMERSIBLE),
    Choice("sensed", "Where the pressure is sensed",
           (("top", "At the top of the well"), ("house", "At the house")), "top", group=SENSED),
    Number("rise", "House above the top of the well", "length", "5 m", "16 ft", -200.0, 400.0,
           help="Below it: a minus sign", when=HOUSE, group=SENSED),
    Number("set", "Set pressure there", "pressure", "3.5 bar", "50 psi", 0.1e5, 16e5,
           help="Or the cut-out pressure of a switch", group=SENSED),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the well sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks about a well waits for its rooms
    from calc.sheets.well import drawing, fixes, judge, show, working
    from calc.sheets.well.case import case_of

    case = case_of(values, reader)
    tables = {"readings": show.readings_text(values)} if values.known == "recovery" else {}
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed, reader), reader),
        lambda changed: fixes.changes(case_of(changed, reader), reader),
        fixes.last(case),
        tables,
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case, reader),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: (drawing.draw(case, reader),),
            tables=lambda: show.tables(case),
            steps=lambda: working.steps(case),
            links=lambda: judge.links(case, reader),
        ),
    )


SHEET = Sheet(
    "well",
    "How much can the well give?",
    FIELDS,
    solve,
    folded=(DAY_USE, MARGINS, SUBMERSIBLE, SENSED),
    cautions=(
        "A well is a confined space: bad air kills without warning. Do not enter; call people who "
        "are trained and equipped.",
        "Keep the well covered and locked, and surface water and animals out of it.",
        "Lift a pump by its rope or pipe with proper gear, never by its cable. Keep clear of "
        "overhead power lines.",
        "Have a licensed person wire the pump, to local codes. Switch off and lock off first. "
        "Earth (ground) and protect it against lightning.",
        "After work in a well, chlorinate it and have the water tested before people drink it "
        "(shock chlorination). Ask the local health authority how.",
        "Before you dig, find cables and pipes. A new or a deeper well may need a permit and a "
        "licensed driller.",
        "Let the pipe leave the well below the frost, or drain back into it: then air must get in "
        "at its top.",
        GRIT,
    ),
    sources=(
        "Recovery: C. V. Theis (1935); H. H. Cooper and C. E. Jacob (1946). Water in the well "
        "itself: I. S. Papadopulos (1967), from memory.",
        "Inflow in step with the drawdown, and what follows from it: our own derivation.",
        f"Cooling of motors, check valves each {practice.CHECK_VALVES_EVERY:g} m (200 ft): common "
        "practice, no source.",
        "100 days without rain, no more than 90 % of the yield, margins: our choice.",
    ),
    # what the physics may refuse -> the field it came from
    arguments={
        "steady_m3s": "steady",
        "pump_m": "motor",
        "bore_m": "casing",
    },
    page="well/",
)
