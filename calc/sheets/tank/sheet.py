"""Storage tank: balance over the day, days to bridge, and the pressure a tank up the hill gives."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Answer
from calc.page.fields import Number, Sheet, Unknown
from calc.sheets.parts.fields import daily_use, use_pattern
from calc.sheets.parts.line_cautions import CHLORINATE, GRIT
from calc.sheets.parts.tries import Form
from calc.sheets.tank import drawing, fixes, judge, show
from calc.sheets.tank.case import case
from calc.units import DAY

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

WELL = "A slow well"
TANK = "The tank itself"
HILL = "A tank up the hill"

FIELDS = (
    daily_use(),
    use_pattern(),
    Number(
        "gives",
        "Flow of pump or source",
        "flow",
        "6 L/min",
        "1.5 gpm",
        0.0,
        1.0,
        help="A well that yields less: say so below, under “A slow well”.",
    ),
    Number(
        "hours",
        "Hours it runs a day",
        "number",
        "6",
        "6",
        0.5,
        24.0,
        help="With the sun: about 5 to 7 hours of full power on a fair day.",
        unknown=Unknown("6", "6", "usual hours of full sun"),
    ),
    Number(
        "bridge",
        "Days without supply",
        "days",
        "3 days",
        "3 days",
        0.0,
        60 * DAY,
        help="Cloudy days, or days until a repair.",
        unknown=Unknown("3 days", "3 days", "usual with solar pumping"),
    ),
    Number(
        "own",
        "Tank size (optional)",
        "volume",
        "",
        "",
        0.01,
        1e4,
        help="Leave empty to be told the size.",
        optional=True,
    ),
    Number(
        "well",
        "Well yield",
        "flow",
        "",
        "",
        0.0,
        1.0,
        help="Leave empty where it yields as much as the pump takes.",
        optional=True,
        group=WELL,
    ),
    Number(
        "stored",
        "Water standing in the well",
        "volume",
        "0 L",
        "0 gal",
        0.0,
        200.0,
        help="Above the lowest level allowed. It gathers again while the pump rests.",
        group=WELL,
    ),
    Number(
        "usable",
        "Share of the tank that can be used",
        "percent",
        "90 %",
        "90 %",
        0.3,
        1.0,
        group=TANK,
        unknown=Unknown("90 %", "90 %", "usual for a tank with its outlet near the floor"),
    ),
    Number(
        "height",
        "Tank’s water above the outlet",
        "length",
        "",
        "",
        0.0,
        300.0,
        help="Its water when nearly empty. Leave empty where a pump draws from the tank.",
        optional=True,
        group=HILL,
    ),
    Number("lost", "Friction loss on the way", "head", "1.5 m", "5 ft", 0.0, 300.0, group=HILL),
    Number(
        "wanted",
        "Needed pressure at the outlet",
        "pressure",
        "2.1 bar",
        "30 psi",
        0.0,
        10e5,
        group=HILL,
    ),
)


def solve(values: Values, reader: Reader) -> Answer:
    """The answer to a form.  Raises InputError for what cannot be worked with."""
    found = case(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(changed, case(changed, reader), reader),
        lambda changed: fixes.changes(changed, case(changed, reader), reader),
    )
    return Answer(
        told=judge.told(values, found, reader),
        findings=tuple(judge.findings(values, found, reader)),
        fixes=(*form.fixes(), *judge.protection(found)),
        sizing=not values.own,
        figures=show.figures(values, found),
        steps=show.steps(values, found),
        tables=() if found.short else show.tables(values, found, reader),
        drawings=drawing.draw(values, found, reader),
        cautions=judge.cautions(values, found, reader),
        links=judge.links(values, found, reader),
    )


SHEET = Sheet(
    "tank",
    "Storage tank",
    FIELDS,
    solve,
    folded=(WELL, TANK, HILL),
    cautions=(
        "A tank is a confined space: do not enter; call trained people.",
        "Water for people: a closed, dark, clean tank approved for it, its vents screened.",
        "Keep children out: lock hatches and lids. An open cistern drowns.",
        "A full tank is heavy; stands, roofs and slopes need a structural design and permits.",
        "Let the fill end in free air above the highest water: an air gap.",
        CHLORINATE,
        "In frost drain the pipes or bury them; protect outlet, vent and overflow.",
        "Lift tanks with machines or many hands: an empty one rolls and catches wind.",
        GRIT,
    ),
    sources=(
        "Mass curve: W. Rippl, Proceedings of the Institution of Civil Engineers 71 (1883).",
        "With the overflow counted: H. A. Thomas and R. P. Burden (1963), from memory.",
        "Patterns of use over the day, hours of sun, pressures that suit: common practice, no "
        "source.",
    ),
    page="storage/",
)
