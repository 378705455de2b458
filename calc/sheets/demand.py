"""How much water: the flow at once by three counts, and the water of a day by two."""

from calc import demand
from calc.answer import (
    Answer,
    Chart,
    Column,
    Figure,
    Link,
    Series,
    Step,
    Table,
    Value,
    Verdict,
    Warning,
)
from calc.errors import InputError
from calc.sheets.form import Count, Number, Sheet

TAPS = "Taps there are"
ANIMALS = "Animals and beds"
HABITS = "Habits"
_HERE = {"shower": 4, "sink": 5, "toilet": 0, "washer": 0, "hose": 1, "trough": 1}
_OPEN = {"shower": 2, "hose": 0}

FIELDS = (
    Count("showers_open", "Showers open together", _OPEN["shower"], 0, 20),
    Count("sinks_open", "Sinks open together", 0, 0, 20),
    Count("hoses_open", "Hoses open together", _OPEN["hose"], 0, 10),
    Number(
        "drip",
        "Drip lines running then",
        "flow",
        "0 L/min",
        "0 gpm",
        0.0,
        0.01,
        help="The flow of the zone that may be on at the same time.",
    ),
    Count("people", "People", 6, 0, 500),
    *(Count(f.key, f.name, _HERE[f.key], 0, 60, group=TAPS) for f in demand.FIXTURES),
    Count("goats", "Goats or sheep", 8, 0, 5000, group=ANIMALS),
    Count("cattle", "Cows or horses", 0, 0, 2000, group=ANIMALS),
    Count("hens", "Hens", 12, 0, 50000, group=ANIMALS),
    Number("beds", "Area watered by drip", "area", "60 m²", "650 ft²", 0.0, 1e5, group=ANIMALS),
    Number(
        "depth",
        "Water the plants use a day",
        "rain",
        "4 mm",
        "0.16 in",
        0.0,
        0.02,
        help="3 to 6 mm (0.12 to 0.24 in) on a summer day (common practice).",
        group=ANIMALS,
    ),
    Number(
        "each",
        "Water a person uses a day",
        "daily",
        "100 L/day",
        "26 gal/day",
        0.0,
        1e-5,
        help="20 L is bare need, 50 to 100 L a thrifty home, 200 L (53 gal) a town flat.",
        group=HABITS,
    ),
    Number(
        "busy",
        "How busy the busiest hour is",
        "percent",
        "100 %",
        "100 %",
        0.1,
        5.0,
        help="100 % is an ordinary home; guests who all rise together are more.",
        group=HABITS,
    ),
    Number(
        "reach",
        "Share of drip water that reaches the roots",
        "percent",
        "90 %",
        "90 %",
        0.3,
        1.0,
        group=HABITS,
    ),
)


def solve(values, reader):
    if (
        values.hoses_open > values.hose
        or values.showers_open > values.shower
        or values.sinks_open > values.sink
    ):
        raise InputError(
            "More taps are open together than there are. Raise the number under “Taps there are”.",
            name=_over(values),
        )
    flows = {f.key: f.flow for f in demand.FIXTURES}
    listed = (
        demand.together(
            (
                (values.showers_open, flows["shower"]),
                (values.sinks_open, flows["sink"]),
                (values.hoses_open, flows["hose"]),
            )
        )
        + values.drip
    )
    taps = [(values.numbers[f.key], f.steps, min(1.0, f.p * values.busy)) for f in demand.FIXTURES]
    chances = demand.flow_chances(taps)
    likely = demand.quantile(chances, demand.CONFIDENCE) * demand.GRID + values.drip
    everything = (
        demand.together((values.numbers[f.key], f.flow) for f in demand.FIXTURES) + values.drip
    )
    parts = _daily_parts(values)
    daily = sum(amount for _, amount in parts)
    peak = max(listed, likely)
    return Answer(
        verdict=_verdict(listed, likely, daily, reader),
        figures=(
            Figure("Flow to plan for", peak, "flow", main=True),
            Figure("Water a day", daily, "daily", main=True),
            Figure("By your list", listed, "flow", note="what you say is open together"),
            Figure("By chance", likely, "flow", note="not passed in 99 of 100 busiest moments"),
            Figure("Everything open", everything, "flow", note="hardly ever happens"),
            Figure("Mean of the busiest hour", demand.mean_flow(chances), "flow"),
        ),
        steps=_steps(values, taps, chances, listed, likely, parts, daily),
        tables=(
            _methods(values, chances, listed, likely, everything, reader),
            _day_table(parts, chances),
        ),
        charts=(_chart(values, chances, listed, likely),),
        warnings=_warnings(values, chances, listed, likely, parts, reader),
        links=_links(peak, daily, reader),
    )


def _over(values):
    pairs = (("showers_open", "shower"), ("sinks_open", "sink"), ("hoses_open", "hose"))
    return next(a for a, b in pairs if values.numbers[a] > values.numbers[b])


def _daily_parts(values):
    beds = demand.irrigation(values.beds, values.depth, values.reach)
    return (
        ("People", values.people * values.each),
        ("Goats or sheep", values.goats * demand.GOAT),
        ("Cows or horses", values.cattle * demand.CATTLE),
        ("Hens", values.hens * demand.HEN),
        ("Drip beds", beds),
    )


def _verdict(listed, likely, daily, reader):
    show = reader.both
    day = f"and {show(daily, 'daily')}"
    if listed >= likely:
        return Verdict(
            "good",
            f"Plan for {show(listed, 'flow')} at once {day}. Your list asks more than chance alone would "
            f"({show(likely, 'flow')}), so it decides.",
            "Plan for it",
        )
    return Verdict(
        "tight",
        f"Plan for {show(likely, 'flow')} at once {day}. Your list comes to {show(listed, 'flow')}, but with "
        "these taps more than that is open together now and then.",
        "More than your list",
    )


def _methods(values, chances, listed, likely, everything, reader):
    rows = (
        ("Your list: all of it, nothing else", listed, _chance(chances, listed - values.drip)),
        (
            "Chance: passed in 1 of 100 busiest moments",
            likely,
            _chance(chances, likely - values.drip),
        ),
        ("Everything open", everything, _chance(chances, everything - values.drip)),
    )
    columns = (
        Column("Way of counting"),
        Column("Flow", "flow"),
        Column("Chance of more than that"),
    )
    return Table(
        "Why the ways differ",
        columns,
        rows,
        note="The list says what you want to be possible. Chance says what happens by itself when people "
        "do not agree on it: each tap open now and then, independently. Friends who shower "
        "together after work are not independent: then trust the list.",
    )


def _chance(chances, flow):
    share = demand.exceeded(chances, flow)
    if share == 0:
        return "none"
    if share >= 0.0995:
        return f"{share * 100:.0f} in 100"
    return f"{share * 1000:.1f} in 1000" if share >= 1e-4 else "less than 1 in 10 000"


def _day_table(parts, chances):
    rows = [(name, amount) for name, amount in parts if amount > 0]
    rows.append(("Together", sum(amount for _, amount in parts)))
    rows.append(
        (
            "For comparison: taps' busiest hour, spread over the day",
            demand.day_from_busy_hour(demand.mean_flow(chances)),
        )
    )
    return Table(
        "Water a day",
        (Column("For"), Column("Amount", "daily")),
        tuple(rows),
        marked=(len(rows) - 2,),
        note="The comparison takes the busiest hour as three times the day's mean (common practice) and "
        "knows only the taps; it differs where people use more or less than the usual.",
    )


def _steps(values, taps, chances, listed, likely, parts, daily):
    flows = {f.key: f.flow for f in demand.FIXTURES}
    counts = {"n_sh": values.showers_open, "n_si": values.sinks_open, "n_ho": values.hoses_open}
    given = {name: Value(number, "number") for name, number in counts.items()}
    given |= {
        "q_sh": Value(flows["shower"], "flow"),
        "q_si": Value(flows["sink"], "flow"),
        "q_ho": Value(flows["hose"], "flow"),
        "q_drip": Value(values.drip, "flow"),
    }
    mean = sum(n * p for n, _, p in taps)
    return (
        Step(
            "Your list: everything on it at once",
            "Q = n_sh * q_sh + n_si * q_si + n_ho * q_ho + q_drip",
            given,
            Value(listed, "flow"),
            source="Flows of taps: common practice, no source",
        ),
        Step(
            "By chance: each kind of tap is open or shut on its own",
            note=f"With n taps of a kind, each open with chance p in the busiest hour, k are open with chance "
            f"C(n, k) p^k (1 − p)^(n − k). The kinds are added up exactly. On average {mean:.2f} taps are open. "
            "The flow that is not passed in 99 of 100 moments is taken.",
            source="Binomial method after R. B. Hunter (1940); p: IAPMO Peak Water Demand Study (2017), from memory",
        ),
        Step("Flow by chance, with the drip lines", "Q_99 = q_taps + q_drip",
             {"q_taps": Value(likely - values.drip, "flow"), "q_drip": Value(values.drip, "flow")},
             Value(likely, "flow")),
        Step("People", "V_p = n * w", {"n": Value(values.people, "number"), "w": Value(values.each, "daily")},
             Value(parts[0][1], "daily"), source="WHO, Domestic Water Quantity (2020), from memory"),
        Step("Drip beds", "V_b = A * d / e / 86400",
             {"A": Value(values.beds, "area"), "d": Value(values.depth, "rain"), "e": Value(values.reach, "percent")},
             Value(parts[4][1], "daily"), note="86400 s in a day.", source="FAO Irrigation and Drainage Paper 56, from memory"),
        Step("Together", "V = V_p + V_a + V_b",
             {"V_p": Value(parts[0][1], "daily"), "V_a": Value(sum(a for _, a in parts[1:4]), "daily"),
              "V_b": Value(parts[4][1], "daily")},
             Value(daily, "daily"), note="V_a: the animals."),
    )  # fmt: skip


def _chart(values, chances, listed, likely):
    total, points = 0.0, []
    for steps, chance in enumerate(chances):
        total += chance
        points.append((steps * demand.GRID + values.drip, max(1 - total, 0.0)))
    last = next((i for i, (_, share) in enumerate(points) if share < 1e-4), len(points) - 1)
    end = max(last, round((listed - values.drip) / demand.GRID) + 4)
    kept = points[: end + 1]
    kept = kept[:: max(1, len(kept) // 60)]
    return Chart(
        "chance",
        "How often more than a flow is drawn in the busiest hour",
        "The chance that more is drawn falls as the flow grows; your list and the "
        "line of 1 moment in 100 are marked.",
        "Flow",
        "flow",
        "Chance of more than that",
        "percent",
        (Series("Chance", tuple(x for x, _ in kept), tuple(max(y, 0.0) for _, y in kept)),),
        marks=((listed, demand.exceeded(chances, listed - values.drip), "your list"),),
        levels=((0.01, "1 in 100"),),
    )


def _warnings(values, chances, listed, likely, parts, reader):
    found = []
    if listed > 0 and demand.exceeded(chances, listed - values.drip) < 1e-3:
        found.append(
            Warning("note", "Your list happens by chance in less than 1 of 1000 busiest moments. Plan for it if "
                    "people really do it together; otherwise the flow by chance is enough.")
        )  # fmt: skip
    if listed > 19 * 1e-3 / 60 * 1.001:
        found.append(
            Warning("care", "Small diaphragm pumps give 11 to 19 L/min (3 to 5 gpm, common practice): this asks for "
                    "more. A tank up the hill, two pumps, or one thing at a time are the usual answers.")
        )  # fmt: skip
    beds = parts[4][1]
    if beds > 0.5 * sum(amount for _, amount in parts):
        found.append(
            Warning("note", f"The beds take most of the day's water ({reader.both(beds, 'daily')}). Water them at "
                    "night or dawn, when no one showers, and the flow at once need not grow.")
        )  # fmt: skip
    return tuple(found)


def _links(peak, daily, reader):
    flow = _text(peak, "flow", reader)
    return (
        Link("With this flow: will it reach?", "reach", {"flow": flow}),
        Link("With this flow: what pipe?", "pipe", {"flow": flow}),
        Link(
            "With this water a day: how big a tank?", "tank", {"use": _text(daily, "daily", reader)}
        ),
    )


def _text(value, quantity, reader):
    return reader.show(value, quantity, 4).replace("\u00a0", " ").replace("\u202f", "")


SHEET = Sheet(
    "demand",
    "How much water",
    FIELDS,
    solve,
    folded=(TAPS, ANIMALS, HABITS),
    cautions=(
        "Water for people must be fit to drink: have the source tested, and keep drip and trough lines "
        "from flowing back into it (a backflow preventer, as local codes ask).",
    ),
    sources=(
        "Binomial method: R. B. Hunter, NBS report BMS65 (1940).",
        "Chances of use: IAPMO/ASPE/WQRF Peak Water Demand Study (2017), from memory.",
        "Water a person: WHO, Domestic Water Quantity, Service Level and Health (2020), from memory.",
    ),
    page="demand/",
)
