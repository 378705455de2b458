"""The working of one count of the water needed."""

from calc import demand
from calc.page.answer import Step, Value
from calc.sheets.demand.case import OPEN

SHORT = {"shower": "sh", "sink": "si", "toilet": "to", "washer": "wa", "hose": "ho", "trough": "tr"}
LETTERS = (
    "sh: showers, si: sinks, ho: hoses, to: toilets, wa: washing machines, tr: troughs; "
    "m: named as open, n: there are."
)


def steps(values, case):
    """All steps: flow by list and by chance, fixture units, the day."""
    return (*_flow_steps(case), *_unit_steps(case), *_day_steps(values, case))


def _given(case, letter, index, quantity, kinds):
    return {
        f"{letter}_{SHORT[key]}": Value(tap[index], quantity)
        for key, tap in case.taps.items()
        if key in kinds
    }


def _flow_steps(case):
    kinds = tuple(case.taps)
    numbers, flows = _given(case, "n", 0, "number", kinds), _given(case, "q", 1, "flow", OPEN)
    odds = _given(case, "p", 2, "percent", kinds)
    named = {f"m_{SHORT[key]}": Value(n, "number") for key, n in case.named.items()}
    list_sum = " + ".join(f"m_{SHORT[key]} * q_{SHORT[key]}" for key in OPEN)
    mean = " + ".join(f"n_{SHORT[key]} * p_{SHORT[key]}" for key in kinds)
    none = " * ".join(f"(1 - p_{SHORT[key]})**n_{SHORT[key]}" for key in kinds)
    steps = (
        Step("Your list: everything on it at once", f"Q = {list_sum} + q_drip",
             named | flows | {"q_drip": Value(case.drip, "flow")}, Value(case.listed, "flow"),
             note=LETTERS),
        Step("Taps open on average in the busiest hour", f"H = {mean}", numbers | odds,
             Value(demand.mean_open(case.taps.values()), "number"),
             source=demand.FIXTURES[0].source + "; hoses and troughs: common practice"),
        _combination_step(case),
        Step("Moments when no water runs", f"P_0 = {none}", numbers | odds,
             Value(case.dry, "percent")),
    )  # fmt: skip
    return (*steps, *_chance_steps(case))


def _chance_steps(case):
    if case.dry >= 1 - 1e-12:
        return ()
    reached = 1 - case.more(case.likely)
    return (
        Step("The flow that is enough in 99 of 100 moments when water runs",
             "S = (C - P_0) / (1 - P_0)",
             {"C": Value(reached, "percent", 6), "P_0": Value(case.dry, "percent", 6)},
             Value((reached - case.dry) / (1 - case.dry), "percent", 5),
             note="With n taps of a kind, each open with chance p, k are open with chance "
             "C(n, k) p^k (1 − p)^(n − k). The chances of all totals are added up from the "
             "smallest; C is that sum at the first flow for which S reaches 99 %.",
             source="Binomial method: R. B. Hunter, NBS report BMS65 (1940); moments of use "
             "only: Peak Water Demand Study (2017), from memory"),
        Step("Flow by chance, with the drip lines", "Q_99 = q_taps + q_drip",
             {"q_taps": Value(case.likely - case.drip, "flow"),
              "q_drip": Value(case.drip, "flow")}, Value(case.likely, "flow")),
    )  # fmt: skip


def _combination_step(case):
    parts = {
        f"P_{SHORT[key]}": Value(
            demand.at_least(case.taps[key][0], case.taps[key][2], n), "percent"
        )
        for key, n in case.named.items()
    }
    return Step(
        "Chance that your list, or more, is open by itself",
        "P = " + " * ".join(parts),
        parts,
        Value(case.combination, "percent"),
        note="Each factor is the chance that at least the named number of that kind is open.",
        source="Binomial distribution, independent taps",
    )


def _unit_steps(case):
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
        Step("Fixture units", f"U = {load}", given, Value(case.units, "number"),
             source="Units: Uniform Plumbing Code, private use, from memory"),
        Step("Flow by fixture units", f"Q_U = q_U + {total} + q_drip", rest,
             Value(case.coded, "flow"),
             note="q_U is read from the code's table at U; hoses, troughs and drip run steadily "
             "and are added as they are.",
             source="International Plumbing Code, table E103.3(3), from memory"),
    )  # fmt: skip


def _day_steps(values, case):
    counts = {f"n_{a.key}": Value(values.numbers[a.key], "number") for a in demand.ANIMALS}
    each = {f"w_{a.key}": Value(a.daily, "daily") for a in demand.ANIMALS}
    animals = sum(case.parts[a.name] for a in demand.ANIMALS)
    people, beds = Value(case.parts["People"], "daily"), Value(case.parts["Drip beds"], "daily")
    return (
        Step("People", "V_p = n * w",
             {"n": Value(values.people, "number"), "w": Value(values.each, "daily")}, people,
             source="WHO, Domestic Water Quantity (2020), from memory"),
        Step("Animals", "V_a = " + " + ".join(f"n_{a.key} * w_{a.key}" for a in demand.ANIMALS),
             counts | each, Value(animals, "daily"),
             source="Journal of Renewable Energy (2017) 8504283, table 1"),
        Step("Drip beds", "V_b = A * d / e / 86400",
             {"A": Value(values.beds, "area"), "d": Value(values.depth, "rain"),
              "e": Value(values.reach, "percent")}, beds,
             note="86400 s in a day.",
             source="Net need over efficiency: FAO Irrigation and Drainage Paper 24, from memory"),
        Step("Together", "V = V_p + V_a + V_b",
             {"V_p": people, "V_a": Value(animals, "daily"), "V_b": beds},
             Value(case.daily, "daily")),
    )  # fmt: skip
