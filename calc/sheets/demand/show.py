"""Figures, working, tables and chart of one count of the water needed."""

from __future__ import annotations

from collections.abc import Iterable

from calc import demand
from calc.page.answer import Cells, Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.demand.case import OPEN, OTHERS, Case
from calc.units import HOUR, number_text

NEVER = 1e-7  # a chance less than this, a moment in centuries of busiest hours, shows as 0
MOST_STEPS = 29  # of the chart's line, so that its corners stay under 60; our choice
SHORT = {"shower": "sh", "sink": "si", "toilet": "to", "washer": "wa", "hose": "ho", "trough": "tr"}
LETTERS = (
    "sh: showers, si: sinks, ho: hoses, to: toilets, wa: washing machines, tr: troughs; "
    "m: named as open, n: all you have."
)
UNITS = "International Plumbing Code, table E103.3(2), private use, from memory"
BINOMIAL = "Binomial method: R. B. Hunter, NBS report BMS65 (1940)"


def figures(case: Case) -> tuple[Figure, ...]:
    """The flow and the day, and the two counts of the flow."""
    seconds = number_text(case.combination * HOUR, 2)
    note = f"all open together by chance {seconds} s of the busiest hour"
    return (
        Figure("Flow to plan for", case.plan, "flow", main=True),
        Figure("Water a day", case.daily, "daily", main=True),
        Figure(
            "By your list",
            case.listed,
            "flow",
            note=note if any(case.named.values()) else "",
        ),
        Figure("By chance", case.likely, "flow", note="enough in 99 of 100 moments"),
    )


# Working ---------------------------------------------------------------------------------------


def steps(case: Case) -> tuple[Step, ...]:
    """All steps: flow by list and by chance, fixture units, the day."""
    return (*_list_steps(case), *_chance_steps(case), *_unit_steps(case), *_day_steps(case))


def _given(
    case: Case, letter: str, index: int, quantity: str, kinds: Iterable[str]
) -> dict[str, Value]:
    return {
        f"{letter}_{SHORT[key]}": Value(tap[index], quantity)
        for key, tap in case.taps.items()
        if key in kinds
    }


def _list_steps(case: Case) -> tuple[Step, ...]:
    kinds = tuple(case.taps)
    numbers, flows = _given(case, "n", 0, "number", kinds), _given(case, "q", 1, "flow", OPEN)
    odds = _given(case, "p", 2, "percent", kinds)
    named = {f"m_{SHORT[key]}": Value(n, "number") for key, n in case.named.items()}
    list_sum = " + ".join(f"m_{SHORT[key]} * q_{SHORT[key]}" for key in OPEN)
    mean = " + ".join(f"n_{SHORT[key]} * p_{SHORT[key]}" for key in kinds)
    parts = {
        f"P_{SHORT[key]}": Value(
            demand.at_least(case.taps[key][0], case.taps[key][2], n), "percent"
        )
        for key, n in case.named.items()
    }
    return (
        Step("Your list: everything on it at once", f"Q = {list_sum} + q_drip",
             named | flows | {"q_drip": Value(case.drip, "flow")}, Value(case.listed, "flow"),
             note=LETTERS),
        Step("Outlets open on average in the busiest hour", f"H = {mean}", numbers | odds,
             Value(demand.mean_open(case.taps.values()), "number"),
             source="p: Peak Water Demand Study (2017), from memory; hoses: common practice; "
             "troughs: our choice"),
        Step("All on your list open by chance", "P = " + " * ".join(parts), parts,
             Value(case.combination, "percent"),
             note="Each factor is the chance that at least the named number of that kind is open.",
             source="Binomial distribution, independent outlets"),
    )  # fmt: skip


def _chance_steps(case: Case) -> tuple[Step, ...]:
    kind, alone = case.alone
    n, _, p = case.taps[kind]
    only = demand.flow_chances((case.taps[kind],))
    dry, beyond = (1 - p) ** n, demand.exceeded(only, alone - case.drip)
    found = [
        Step("All outlets: the share of moments in which this flow is enough",
             "S = 1 - P_more", {"P_more": Value(case.more(case.moments), "percent", 6)},
             Value(1 - case.more(case.moments), "percent", 5),
             note="With n outlets of a kind, each open with chance p, k are open with chance "
             "C(n, k) p^k (1 − p)^(n − k). The chances of all totals follow; P_more is the chance "
             "of more than the first flow for which S reaches 99 %.",
             source=BINOMIAL),
    ]  # fmt: skip
    if dry < 1 - 1e-12:
        found.append(
            Step(f"{_name(kind)} alone: the share of their running moments in which it is enough",
                 "S = 1 - P_more / (1 - P_0)",
                 {"P_more": Value(beyond, "percent", 6), "P_0": Value(dry, "percent", 6)},
                 Value(1 - beyond / (1 - dry), "percent", 5),
                 note="P_0 is the chance that none of them runs. Of all kinds this one asks for "
                 "the most when only it runs; so a few outlets never need less than one of them.",
                 source="Moments of use only: Peak Water Demand Study (2017), from memory; by "
                 "kind, so that more outlets never need less: our choice")
        )  # fmt: skip
    found.append(
        Step("Flow by chance, with the drip lines", "Q_99 = max(q_all, q_kind) + q_drip",
             {"q_all": Value(case.moments - case.drip, "flow"),
              "q_kind": Value(alone - case.drip, "flow"),
              "q_drip": Value(case.drip, "flow")}, Value(case.likely, "flow"))
    )  # fmt: skip
    return tuple(found)


def _name(kind: str) -> str:
    return next(f.name for f in demand.FIXTURES if f.key == kind)


def _unit_steps(case: Case) -> tuple[Step, ...]:
    counted = {f.key: f.units for f in demand.FIXTURES if f.units is not None}
    steady = [key for key in case.taps if key not in counted]
    given = _given(case, "n", 0, "number", counted)
    given |= {f"u_{SHORT[key]}": Value(units, "number") for key, units in counted.items()}
    load = " + ".join(f"n_{SHORT[key]} * u_{SHORT[key]}" for key in counted)
    rest = _given(case, "n", 0, "number", steady) | _given(case, "q", 1, "flow", steady)
    rest |= {
        "q_U": Value(demand.fixture_unit_flow(case.units), "flow"),
        "q_drip": Value(case.drip, "flow"),
    }
    total = " + ".join(f"n_{SHORT[key]} * q_{SHORT[key]}" for key in steady)
    return (
        Step("Fixture units", f"U = {load}", given, Value(case.units, "number"), source=UNITS),
        Step("Flow by fixture units", f"Q_U = q_U + {total} + q_drip", rest,
             Value(case.coded, "flow"),
             note="q_U is read from the same code's table at U; hoses, troughs and drip run "
             "steadily and are added as they are.",
             source="International Plumbing Code, table E103.3(3), from memory"),
    )  # fmt: skip


def _day_steps(case: Case) -> tuple[Step, ...]:
    counts = {f"n_{a.key}": Value(case.animals[a.key], "number") for a in demand.ANIMALS}
    each = {f"w_{a.key}": Value(a.daily, "daily") for a in demand.ANIMALS}
    names = (*(a.name for a in demand.ANIMALS), OTHERS)
    animals = Value(sum(case.parts[name] for name in names), "daily")
    each["o"] = Value(case.others, "daily")
    people, beds = Value(case.parts["People"], "daily"), Value(case.parts["Garden beds"], "daily")
    return (
        Step("People", "V_p = n * w",
             {"n": Value(case.people, "number"), "w": Value(case.each, "daily")}, people,
             source="WHO, Domestic Water Quantity (2020), from memory"),
        Step("Animals",
             "V_a = " + " + ".join(f"n_{a.key} * w_{a.key}" for a in demand.ANIMALS) + " + o",
             counts | each, animals, note="o is what other animals take.",
             source="Journal of Renewable Energy (2017) 8504283, table 1; cows with a calf and in "
             "milk: Kansas State University, Livestock Watering Handbook, from memory"),
        Step("Garden beds", "V_b = A * d / e / 86400",
             {"A": Value(case.beds, "area"), "d": Value(case.depth, "rain"),
              "e": Value(case.reach, "percent")}, beds,
             note="86400 s in a day.",
             source="Net need over efficiency: FAO Irrigation and Drainage Paper 24, from memory"),
        Step("Together", "V = V_p + V_a + V_b", {"V_p": people, "V_a": animals, "V_b": beds},
             Value(case.daily, "daily")),
    )  # fmt: skip


# Tables and chart ------------------------------------------------------------------------------


def tables(case: Case) -> tuple[Table, ...]:
    """The ways of counting, the day, and what people use."""
    return (_methods(case), _day_table(case), _service_table(case))


def _methods(case: Case) -> Table:
    kind, alone = case.alone
    ways = (
        ("Your list: all of it, nothing else", case.listed),
        ("By chance: enough in 99 of 100 moments of the busiest hour", case.moments),
        (f"By chance: enough in 99 of 100 moments when only {_name(kind).lower()} run", alone),
        ("Peak Water Demand Study: 99 of 100 moments when water runs", case.study),
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
    by_chance = 1 if case.moments >= alone else 2
    return Table(
        "Why the ways differ",
        columns,
        rows,
        marked=(0 if case.list_decides else by_chance,),
        note="The list says what you want to be possible. Chance says how much is open when "
        "each outlet is open now and then, independently of the others. People who shower together "
        "after work are not independent: then the list decides. The study's own rule can fall when "
        "an outlet is added, so it is shown to compare. Fixture units come from high-flow outlets "
        "and larger buildings.",
    )


def _day_table(case: Case) -> Table:
    rows: list[Cells] = [
        (name, amount, amount / case.daily) for name, amount in case.parts.items() if amount
    ]
    rows.append(("Together", case.daily, 1.0 if case.daily else None))
    columns = (Column("For"), Column("Amount", "daily"), Column("Share", "percent", 2))
    return Table("Water a day", columns, tuple(rows), marked=(len(rows) - 1,))


def _service_table(case: Case) -> Table:
    rows = tuple((name, each, each * case.people) for name, each, _ in demand.SERVICE)
    columns = (Column("Service"), Column("A person", "daily"), Column("Your people", "daily"))
    return Table(
        "What people use, by how the water comes",
        columns,
        rows,
        note="Sphere Handbook; WHO, Domestic Water Quantity (2020); from memory.",
    )


def charts(case: Case) -> tuple[Chart, ...]:
    """How often more than a flow is drawn, as the steps it is; none without an outlet."""
    if len(case.chances) < 2:
        return ()
    xs, ys = _corners(case)
    decides = "your list" if case.list_decides else "by chance"
    return (
        Chart(
            "chance",
            "How often more than a flow is drawn in the busiest hour",
            "The chance that more is drawn falls in steps as the flow grows; the flow to plan for "
            "and the line of 1 moment in 100 are marked.",
            "Flow",
            "flow",
            "Chance of more than that",
            "percent",
            (Series("Chance of more", xs, ys),),
            marks=((case.plan, case.more(case.plan), decides),),
            levels=((1 - demand.CONFIDENCE, "1 in 100"),),
        ),
    )


def _corners(case: Case) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """(xs, ys) of the falling steps, level between the flows that can be drawn."""
    left, points = 1.0, []
    for flow, chance in case.chances:
        left = max(0.0, left - chance)
        points.append((flow + case.drip, left))
    shown = [pair for pair in points if pair[1] > 1e-5 or pair[0] <= case.listed * 1.2]
    shown = shown[:: 1 + len(shown) // MOST_STEPS]
    xs, ys = [shown[0][0]], [shown[0][1]]
    for flow, share in shown[1:]:
        xs += [flow, flow]
        ys += [ys[-1], share]
    return tuple(xs), tuple(ys)
