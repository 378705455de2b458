"""Hill tank: a day followed from morning to morning, and the year of a tank that a roof fills."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page import row_text
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Rows, Sheet, Unknown
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fields import daily_use, extra_length, use_pattern, water_temperature
from calc.sheets.parts.line_cautions import CHLORINATE, DIG
from calc.sheets.parts.pipe_choice import pipe_fields
from calc.sheets.parts.tries import Form
from calc.units import MONTHS

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

TANK, PIPE, RAIN = "The tank itself", "The pipe to the outlet", "Rain from a roof"
FLOWING, BY_HOURS = ("fills", ("sun", "hours", "always")), ("fills", ("sun", "hours"))
ROOF = ("rain", ("yes",))
MONTH = tuple((str(at), name) for at, name in enumerate(MONTHS, 1))
RUNOFF = f"{100 * practice.ROOF_RUNOFF:g} %"
WARMEST = 303.15  # K, of the water: no pipe listed loses its rating by then
# of the invented place: mm and inches in each month, dry in summer
WET = (("110", "4.3"), ("90", "3.5"), ("75", "3"), ("65", "2.6"), ("50", "2"), ("20", "0.8"),
       ("8", "0.3"), ("10", "0.4"), ("35", "1.4"), ("85", "3.3"), ("105", "4.1"),
       ("115", "4.5"))  # fmt: skip

FIELDS = (
    Number("volume", "Tank size", "volume", "1000 L", "260 gal", 0.01, 1e4,
           help="Its whole volume, the size on its label"),
    replace(daily_use(), label="Used on a usual day"),
    use_pattern(),
    Number("garden", "More on a dry month’s day", "daily", "800 L/day", "210 gal/day", 0.0, 1e-2,
           help="For the garden, in the hours below; 0 for nothing"),
    Number("gfrom", "Watering begins at", "number", "18", "18", 0.0, 24.0,
           help="Hour of the day: 18.5 is half past six in the evening"),
    Number("ghours", "Hours of watering a day", "number", "2", "2", 0.25, 24.0),
    Choice("fills", "What fills the tank",
           (("sun", "A pump, while the sun shines"), ("hours", "A pump or spring in some hours"),
            ("always", "A spring, day and night"), ("none", "Nothing but rain")), "sun"),
    Number("gives", "Flow into the tank", "flow", "6 L/min", "1.5 gpm", 0.0, 1.0, when=FLOWING),
    Number("dryflow", "Flow in the dry month (optional)", "flow", "", "", 0.0, 1.0,
           help="If blank, the same as ever", optional=True, when=FLOWING),
    Number("hours", "Hours it runs a day", "number", "6", "6", 0.5, 24.0, when=BY_HOURS,
           help="With the sun: 5 to 7 hours on a fair day",
           unknown=Unknown("6", "6", "usual hours of full sun")),
    Number("begins", "Filling begins at", "number", "9", "9", 0.0, 24.0,
           help="Hour of the day", when=("fills", ("hours",))),
    Number("height", "Tank above the outlet (optional)", "length", "", "", 0.0, 300.0,
           help="From the outlet up to its floor; blank: a pump follows", optional=True),
    Number("wanted", "Needed pressure at the outlet", "pressure", "1 bar", "15 psi", 0.0, 10e5,
           help="While water runs"),
    Number("usable", "Share of the tank that can be used", "percent", "90 %", "90 %", 0.3, 1.0,
           group=TANK, unknown=Unknown("90 %", "90 %", "usual: the outlet is near the floor")),
    Number("reserve", "Fire reserve kept in the tank", "volume", "0 L", "0 gal", 0.0, 1e4,
           help="The local fire authority says how much", group=TANK,
           unknown=Unknown("0 L", "0 gal", "none kept")),
    Number("morning", "Full at 6 in the morning (optional)", "percent", "", "", 0.0, 1.0,
           help="Share of the water above the reserve, today", optional=True, group=TANK),
    Choice("shape", "What you know of its shape",
           (("depth", "How deep its water is"), ("plan", "Its floor area")), "depth", group=TANK),
    Number("deep", "Depth of the water when full", "length", "1 m", "3.3 ft", 0.05, 30.0,
           when=("shape", ("depth",)), group=TANK,
           unknown=Unknown("1 m", "3.3 ft", "careful: most tanks are deeper")),
    Number("plan", "Floor area", "area", "1 m²", "10 ft²", 0.05, 1e5,
           when=("shape", ("plan",)), group=TANK),
    Number("length", "Length of pipe", "length", "140 m", "450 ft", 0.1, 20e3, group=PIPE),
    *pipe_fields(PIPE),
    extra_length(PIPE),
    Number("flow", "Flow of one open outlet", "flow", "7.5 L/min", "2 gpm", 1e-7, 0.05,
           help="The least that runs while somebody draws", group=PIPE,
           unknown=Unknown("7.5 L/min", "2 gpm", "usual for a shower or sink")),
    water_temperature(WARMEST, PIPE),
    Choice("rain", "Does a roof fill the tank too?", (("no", "No"), ("yes", "Yes")), "no",
           group=RAIN),
    Number("roof", "Roof area, from above", "area", "120 m²", "1300 ft²", 1.0, 1e5,
           help="Length times width on the ground, not along the slope", when=ROOF, group=RAIN),
    Number("runoff", "Share that reaches the tank", "percent", RUNOFF, RUNOFF, 0.1, 1.0, when=ROOF,
           help="The rest wets the roof, splashes or is let go first", group=RAIN,
           unknown=Unknown(RUNOFF, RUNOFF, "common practice")),
    Rows("months", "Rain by month",
         (Choice("month", "Month", MONTH, "1"),
          Number("rain", "Rain in the month", "rain", "50 mm", "2 in", 0.0, 5.0)),
         tuple((str(at), f"{one[0]} mm") for at, one in enumerate(WET, 1)),
         tuple((str(at), f"{one[1]} in") for at, one in enumerate(WET, 1)),
         row="month", least=12, most=12, help="A mean year, or a dry one to be careful",
         when=ROOF, group=RAIN),
    Choice("dryfrom", "First dry month", MONTH, "6", when=ROOF, group=RAIN,
           help="In dry months every day is a dry month’s day"),
    Count("drycount", "Number of dry months", 4, 0, 12, when=ROOF, group=RAIN),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of this sheet.  Raises InputError for what cannot be worked with."""
    # here, so that only who asks waits for it
    from calc.sheets.hill_tank import drawing, fixes, judge, show
    from calc.sheets.hill_tank.case import case_of

    case = case_of(values)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(case_of(changed), reader),
        lambda changed: fixes.changes(case_of(changed), reader),
        fixes.NONE,
        {"months": _months(values, reader)} if values.rain == "yes" else {},
    )

    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        figures=show.figures(case),
        cautions=judge.cautions(case, reader),
        later=form.later(
            drawings=lambda: (drawing.draw(case, reader),),
            tables=lambda: show.tables(case),
            steps=lambda: show.steps(case),
            links=lambda: judge.links(case, reader),
        ),
    )


def _months(values: Values, reader: Reader) -> str:
    return row_text.encode((row.month, exact(row.rain, "rain", reader)) for row in values.months)


SHEET = Sheet(
    "hill_tank",
    "Hill tank over the day",
    FIELDS,
    solve,
    folded=(TANK, PIPE, RAIN),
    cautions=(
        "A tank is a confined space: do not enter; call trained people.",
        "A cubic metre of water weighs a tonne: a tank needs firm, level ground or a structural "
        "design, and slopes and stands need permits.",
        "Let the fill end in free air above the highest water (an air gap), so that no tank water "
        "flows back into a well or a main.",
        "Rain from a roof is not drinking water as it is: let the first flush go, filter and "
        "disinfect it, have it tested, and follow the local rules.",
        "The local fire authority decides how much water is kept, and how it is drawn.",
        "Lift tanks up a hill with machines or many hands: an empty one rolls and catches wind.",
        "In frost bury the pipes or drain them, and protect the outlet, vent and overflow.",
        "Keep children out: lock hatches and lids.",
        CHLORINATE,
        DIG,
        "A hill top, a mast or a long cable to a float draws lightning: stay away in a storm, and "
        "earth (ground) and protect it as the local code asks.",
    ),
    sources=(
        "Balance of the tank: conservation, piece by piece of the day, our own derivation.",
        "Mass curve: W. Rippl, Proceedings of the Institution of Civil Engineers 71 (1883).",
        "With the overflow counted: H. A. Thomas and R. P. Burden (1963), from memory.",
        "Friction: Darcy-Weisbach with Colebrook (1939).",
        "Patterns of use, hours of sun, share of the rain that reaches a tank: common practice, no "
        "source. A tenth left to spare, a day's water left in each month, 14 days "
        "between rains: our choice.",
    ),
    arguments={"length_m": "length", "flow_m3s": "flow", "temperature_k": "water"},
    page="hill-tank/",
)
