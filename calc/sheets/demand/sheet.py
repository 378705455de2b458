"""How much water: the flow at once counted four ways, and the water of a day."""

from calc import demand
from calc.page.answer import Answer, Chart, Column, Figure, Link, Series, Table, Verdict, Warning
from calc.page.fields import Count, Number, Sheet
from calc.sheets.demand.case import count
from calc.sheets.demand.steps import steps
from calc.units import HOUR, LITRE, MINUTE

TAPS = "Taps there are, open or not"
ANIMALS = "Animals and beds"
HABITS = "Flows and habits"
SMALL_PUMP = 19 * LITRE / MINUTE  # m3/s, 5 gpm, the most of small diaphragm pumps; common practice
NEVER = 1e-7  # a chance less than this, a moment in centuries of busiest hours, shows as 0
HAVE = {"shower": 4, "sink": 5, "toilet": 0, "washer": 0, "hose": 0, "trough": 1}

_P_HELP = "100 % is an ordinary home; guests who all rise at once are more (common practice)."
FIELDS = (
    Count("showers_open", "Showers open together", 2, 0, 20),
    Count("sinks_open", "Sinks open together", 1, 0, 20),
    Count("hoses_open", "Hoses open together", 0, 0, 10),
    Number("drip", "Drip lines running then", "flow", "0 L/min", "0 gpm", 0.0, 0.01,
           help="Flow of the zone that may be on at the same time."),
    Count("people", "People", 6, 0, 500),
    *(Count(f.key, f.name, HAVE[f.key], 0, 60, group=TAPS) for f in demand.FIXTURES),
    Count("goats", "Goats or sheep", 8, 0, 5000, group=ANIMALS),
    Count("cattle", "Cows or horses", 0, 0, 2000, group=ANIMALS),
    Count("hens", "Hens", 12, 0, 50000, group=ANIMALS),
    Number("beds", "Area watered by drip", "area", "60 m²", "650 ft²", 0.0, 1e5, group=ANIMALS),
    Number("depth", "Water the plants use a day", "rain", "4 mm", "0.16 in", 0.0, 0.02,
           help="3 to 6 mm (0.12 to 0.24 in) on a summer day (common practice).", group=ANIMALS),
    Number("each", "Water a person uses a day", "daily", "100 L/day", "26 gal/day", 0.0, 1e-5,
           help="20 L is bare need, 50 to 100 L a thrifty home, 200 L (53 gal) a town flat.",
           group=HABITS),
    Number("showerflow", "Flow of a shower", "flow", "7.5 L/min", "2 gpm", 1e-5, 1e-3,
           help="About 2 gpm (common practice); thrifty heads 6 L/min (1.6 gpm).", group=HABITS),
    Number("sinkflow", "Flow of a sink", "flow", "7.5 L/min", "2 gpm", 1e-5, 1e-3, group=HABITS),
    Number("hoseflow", "Flow of a hose", "flow", "38 L/min", "10 gpm", 1e-5, 3e-3,
           help="About 10 gpm (common practice).", group=HABITS),
    Number("busy", "How busy the busiest hour is", "percent", "100 %", "100 %", 0.1, 5.0,
           help=_P_HELP, group=HABITS),
    Number("reach", "Share of drip water that reaches the roots", "percent", "90 %", "90 %",
           0.3, 1.0, help="About 90 % for drip (common practice).", group=HABITS),
)  # fmt: skip


def solve(values, reader):
    case = count(values)
    return Answer(
        given_verdict=_verdict(case, reader),
        figures=_figures(case),
        steps=steps(values, case),
        tables=(_methods(case), _day_table(case), _service_table(values)),
        charts=(_chart(case),) if len(case.chances) > 1 else (),
        warnings=_warnings(values, case, reader),
        links=_links(case, reader),
    )


# What it says ----------------------------------------------------------------


def _verdict(case, reader):
    flow, day = reader.both(case.plan, "flow"), reader.both(case.daily, "daily")
    if case.plan == 0:
        return Verdict(
            "tight",
            f"No tap is named or counted yet, so no flow is planned for; the day takes {day}.",
            "Nothing is open",
        )
    start = f"Plan for {flow} at once and {day}."
    if case.list_decides:
        sentence = f"{start} Your list of what is open together decides."
        return Verdict("good", sentence, "Plan for it")
    often = case.more(case.listed) / (1 - case.dry)
    return Verdict(
        "tight",
        f"{start} Your list comes to {reader.both(case.listed, 'flow')}, but with these taps more "
        f"is drawn in {often * 100:.2g} of 100 moments when water runs.",
        "More than your list",
    )


def _figures(case):
    return (
        Figure("Flow to plan for", case.plan, "flow", main=True),
        Figure("Water a day", case.daily, "daily", main=True),
        Figure("By your list", case.listed, "flow", note="all of it open, nothing else"),
        Figure("By chance", case.likely, "flow", note="enough in 99 of 100 moments of use"),
        Figure("Taps open on average", demand.mean_open(case.taps.values()), "number", 2,
               note="in the busiest hour"),
        Figure("Your list happens by itself", case.combination * HOUR, "time", 2,
               note="of the busiest hour"),
    )  # fmt: skip


def _methods(case):
    ways = (
        ("Your list: all of it, nothing else", case.listed),
        ("By chance: enough in 99 of 100 moments of the busiest hour", case.moments),
        ("By chance: enough in 99 of 100 moments when water runs", case.likely),
        ("Fixture units, as plumbing codes count", case.coded),
        ("Everything open", case.everything),
    )
    shares = [case.more(flow) for _, flow in ways]
    shares = [share if share > NEVER else 0.0 for share in shares]
    rows = tuple((*way, share, share * HOUR) for way, share in zip(ways, shares, strict=True))
    columns = (
        Column("Way of counting"),
        Column("Flow", "flow"),
        Column("Chance of more", "percent", 2),
        Column("Of the busiest hour", "time", 2),
    )
    return Table(
        "Why the ways differ",
        columns,
        rows,
        marked=(0 if case.list_decides else 2,),
        note="The list says what you want to be possible. Chance says what happens by itself when "
        "each tap is open now and then, independently of the others. People who shower together "
        "after work are not independent: then the list decides. Fixture units come from thirstier "
        "taps and larger buildings, so they ask more of a few cabins.",
    )


def _day_table(case):
    rows = [(name, amount, amount / case.daily) for name, amount in case.parts.items() if amount]
    rows.append(("Together", case.daily, 1.0 if case.daily else None))
    columns = (Column("For"), Column("Amount", "daily"), Column("Share", "percent", 2))
    return Table("Water a day", columns, tuple(rows), marked=(len(rows) - 1,))


def _service_table(values):
    rows = tuple((name, each, each * values.people) for name, each, _ in demand.SERVICE)
    columns = (Column("Service"), Column("A person", "daily"), Column("Your people", "daily"))
    return Table(
        "What people use, by how the water comes",
        columns,
        rows,
        note="Sphere Handbook; WHO, Domestic Water Quantity (2020); from memory.",
    )


def _chart(case):
    left, points = 1.0, []
    for flow, chance in case.chances:
        left = max(0.0, left - chance)
        points.append((flow + case.drip, left))
    shown = [pair for pair in points if pair[1] > 1e-5 or pair[0] <= case.listed * 1.2]
    shown = shown[:: 1 + len(shown) // 60]
    return Chart(
        "chance",
        "How often more than a flow is drawn in the busiest hour",
        "The chance that more is drawn falls as the flow grows; your list, the flow to plan for "
        "and the line of 1 moment in 100 are marked.",
        "Flow",
        "flow",
        "Chance of more than that",
        "percent",
        (Series("Chance of more", tuple(x for x, _ in shown), tuple(y for _, y in shown)),),
        marks=(
            (case.listed, case.more(case.listed), "your list")
            if case.list_decides
            else (case.likely, case.more(case.likely), "by chance"),
        ),
        levels=((1 - demand.CONFIDENCE, "1 in 100"),),
    )


# What to know, and where to go on ---------------------------------------------


def _warnings(values, case, reader):
    found = []
    short = [f.name for f in demand.FIXTURES if case.taps[f.key][0] > values.numbers[f.key]]
    if short:
        found.append(Warning("note", f"{' and '.join(short)}: more are named as open than there "
                             "are, so those named are counted as there."))  # fmt: skip
    if case.plan > SMALL_PUMP * 1.001:
        found.append(
            Warning(
                "care",
                "Small diaphragm pumps give 11 to 19 L/min (3 to 5 gpm, common practice): this "
                "asks for more. A tank up the hill, a larger pump, or one thing at a time are the "
                "usual answers.",
            )
        )
    hose = case.named["hose"] * case.taps["hose"][1]
    if hose and case.list_decides:
        found.append(
            Warning(
                "note",
                f"Without the hose the list is {reader.both(case.listed - hose, 'flow')}. "
                "Watering by drip, or when nobody showers, saves the rest.",
            )
        )
    beds = case.parts["Drip beds"]
    if beds > 0.5 * case.daily:
        found.append(
            Warning(
                "note",
                f"The beds take most of the day's water: {reader.both(beds, 'daily')}. Watered at "
                "dawn, when no one showers, they need not add to the flow at once.",
            )
        )
    return tuple(found)


def _links(case, reader):
    links = []
    if case.plan > 0:
        flow = reader.typed(case.plan, "flow")
        links.append(Link("With this flow: will it reach?", "reach", {"flow": flow}))
        links.append(Link("With this flow: what pipe?", "pipe", {"flow": flow}))
        links.append(Link("With this flow: a pressure tank?", "pressure_tank", {"draw": flow}))
    if case.daily > 0:
        use = reader.typed(case.daily, "daily")
        links.append(Link("With this water a day: how big a tank?", "tank", {"use": use}))
    return tuple(links)


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
        "Where a plumbing code applies, its own count of the flow decides.",
    ),
    sources=(
        "Binomial method: R. B. Hunter, NBS report BMS65 (1940).",
        "Chances of use: IAPMO/ASPE/WQRF Peak Water Demand Study (2017), from memory; hoses and "
        "troughs: common practice, no source.",
        "Fixture units: Uniform Plumbing Code; their flow: International Plumbing Code, table "
        "E103.3(3); both from memory.",
        "Water a person: WHO, Domestic Water Quantity, Service Level and Health (2020), and the "
        "Sphere Handbook, from memory.",
        "Water for animals: Journal of Renewable Energy (2017) 8504283, table 1.",
        "Beds: FAO Irrigation and Drainage Paper 24, from memory.",
    ),
    page="demand/",
)
