"""How much water: the flow at once counted in several ways, and the water of a day."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import demand, practice
from calc.page.answer import Answer
from calc.page.fields import Count, Field, Number, Sheet, Unknown
from calc.sheets.demand import drawing, judge, show
from calc.sheets.demand.case import count
from calc.sheets.parts.fields import usual

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

TAPS = "Every outlet you have"
ANIMALS = "Animals and garden beds"
HABITS = "Flows and habits"
HAVE = {"shower": 4, "sink": 5, "toilet": 0, "washer": 0, "hose": 0, "trough": 1}
NONE = Unknown("0", "0", "none counted")
OPEN = Unknown("0", "0", "only those named as open are counted")


HOT_DRY = "a hot dry day: FAO-56 table 2, from memory"
COMMON = "common practice"
FIELDS: tuple[Field, ...] = (
    Count("showers_open", "Showers open together", 2, 0, 20),
    Count("sinks_open", "Sinks open together", 1, 0, 20),
    Count("hoses_open", "Hoses open together", 0, 0, 10),
    Number("drip", "Drip flow at the same time", "flow", "0 L/min", "0 gpm", 0.0, 0.01,
           help="Flow of the drip zone that may run then", unknown=NONE),
    Count("people", "People", 6, 0, 500),
    *(Count(f.key, f.name, HAVE[f.key], 0, 60, group=TAPS, unknown=OPEN) for f in demand.FIXTURES),
    Count("goats", "Goats or sheep", 8, 0, 5000, group=ANIMALS, unknown=NONE),
    Count("cattle", "Dry cows or horses", 0, 0, 2000, group=ANIMALS, unknown=NONE),
    Count("hens", "Hens", 12, 0, 50000, group=ANIMALS, unknown=NONE),
    Number("beds", "Area watered by drip", "area", "60 m²", "650 ft²", 0.0, 1e5, group=ANIMALS,
           unknown=NONE),
    Number("depth", "Water the plants use a day", "rain", "4 mm", "0.16 in", 0.0, 0.02,
           help="Summer day 3 to 6 mm; hot and dry 6 to 9 mm (0.35 in)", group=ANIMALS,
           unknown=usual(practice.HOT_DRY_DEPTH[1], "rain", HOT_DRY)),
    Number("each", "Water a person uses a day", "daily", "100 L/day", "26 gal/day", 0.0, 1e-5,
           help="Bare need 20 L, saving home 50 to 100 L, town flat 200 L", group=HABITS,
           unknown=usual(practice.DAILY_PERSON, "daily", "taps in the house: WHO, from memory")),
    Number("showerflow", "Flow of a shower", "flow", "7.5 L/min", "2 gpm", 1e-5, 1e-3,
           help="Heads are rated at 80 psi: 2 gpm is about 1.2 at 30 psi", group=HABITS,
           unknown=usual(practice.SHOWER_FLOW, "flow", COMMON)),
    Number("sinkflow", "Flow of a sink", "flow", "7.5 L/min", "2 gpm", 1e-5, 1e-3, group=HABITS,
           unknown=usual(practice.SHOWER_FLOW, "flow", COMMON)),
    Number("hoseflow", "Flow of a hose", "flow", "38 L/min", "10 gpm", 1e-5, 3e-3,
           help="A usual garden hose gives about 38 L/min (10 gpm)", group=HABITS,
           unknown=usual(practice.HOSE_FLOW, "flow", COMMON)),
    Number("busy", "Peak-hour use", "percent", "100 %", "100 %", 0.1, 5.0,
           help="An ordinary home is 100 %; guests who rise at once are more", group=HABITS,
           unknown=Unknown("100 %", "100 %", COMMON)),
    Number("reach", "Drip water reaching the roots", "percent", "90 %", "90 %",
           0.3, 1.0, help="About 90 % for drip", group=HABITS,
           unknown=Unknown("90 %", "90 %", COMMON)),
    Count("nursing", "Cows with a calf", 0, 0, 2000, group=ANIMALS, unknown=NONE),
    Count("dairy", "Dairy cows in milk", 0, 0, 2000, group=ANIMALS, unknown=NONE),
    Number("others", "Water for other animals, a day", "daily", "0 L/day", "0 gal/day", 0.0, 0.05,
           help="All of them together, pigs or a kennel; or of a kind with a figure of its own",
           group=ANIMALS, unknown=NONE),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer`` of the sheet that counts how much water is needed."""
    case = count(values)
    return Answer(
        told=judge.told(case, reader),
        findings=judge.findings(case, reader),
        sizing=True,
        figures=show.figures(case),
        steps=show.steps(case),
        tables=show.tables(case),
        charts=show.charts(case),
        links=judge.links(case, reader),
        drawings=drawing.draw(case, reader),
        cautions=judge.cautions(case, reader),
    )


SHEET = Sheet(
    "demand",
    "How much water",
    FIELDS,
    solve,
    folded=(TAPS, ANIMALS, HABITS),
    cautions=(
        "Water for people must be fit to drink: have the source tested before use and after work "
        "on it.",
        "Hoses, drip lines and troughs must not flow back into the drinking water: fit the "
        "backflow preventers that local codes ask for.",
        "Where a plumbing code applies, its own count of the flow decides, and a licensed person "
        "does the work.",
        "This count is for daily use and holds nothing for fighting a fire: ask your fire service.",
    ),
    sources=(
        "Binomial method: R. B. Hunter, NBS report BMS65 (1940).",
        "Chances of use: IAPMO/ASPE/WQRF Peak Water Demand Study (2017), from memory; hoses: "
        "common practice, no source; troughs: our choice.",
        "Fixture units and their flow: International Plumbing Code, tables E103.3(2) and "
        "E103.3(3), from memory.",
        "Flows of outlets, hours of use, share of drip water that reaches the roots: common "
        "practice, no source.",
        "Water a person: WHO, Domestic Water Quantity, Service Level and Health (2020), and the "
        "Sphere Handbook, from memory.",
        "Water for animals: Journal of Renewable Energy (2017) 8504283, table 1; Kansas State "
        "University, Livestock Watering Handbook, from memory.",
        "Garden beds: FAO Irrigation and Drainage Papers 24 and 56, from memory.",
    ),
    # what the physics may refuse -> the field it came from
    arguments={
        "units": "shower",
        "area_m2": "beds",
        "depth_m_day": "depth",
        "efficiency": "reach",
        "p": "busy",
        "number": "shower",
    },
    page="demand/",
)
