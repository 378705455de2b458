"""What the pressure tank sheet shows below its verdict."""

import math

from calc import storage
from calc.page.answer import Chart, Column, Figure, Link, Series, Step, Table, Value, Warning
from calc.sheets.parts.tank_sizes import gap_words, round_up
from calc.sheets.pressure_tank.case import CUP, GAP
from calc.units import GALLON_US, LITRE, PSI

COMMON = {  # m3, sizes tanks are sold in; common practice, no source
    "metric": tuple(v * LITRE for v in (8, 18, 24, 35, 60, 80, 100, 150, 200, 300, 450)),
    "us": tuple(v * GALLON_US for v in (2, 5, 9, 14, 20, 32, 44, 62, 86, 119)),
}
SMALL = 7  # of the common sizes are shown for standby
SHORT_RUN = 60.0  # s, least run of a small motor; common practice, no source
STOUT = 100 * PSI  # Pa, a usual rating of small tanks; common practice, no source
PER_SECOND = "The formula gives starts a second; times 3600 an hour."


def _given(values, found, *names):
    """The named symbols of the working with their numbers."""
    all_of_them = {
        "V": Value(values.tank, "volume"),
        "V_d": Value(found.gives, "volume"),
        "V_n": Value(found.target, "volume"),
        "n_max": Value(values.starts, "per_hour"),
        "Q_p": Value(values.pump, "flow") if values.pump else None,
        "Q_l": Value(values.leak, "flow") if values.leak is not None else None,
        "p_0": Value(found.charge, "pressure"),
        "p_1": Value(values.cutin, "pressure"),
        "p_2": Value(found.high, "pressure"),
        "p_a": Value(found.air, "pressure", 4),
        "V_cup": Value(CUP, "volume"),
    }
    return {name: all_of_them[name] for name in names}


def _drawdown_steps(values, found):
    steps = []
    if values.precharge is None and found.charge > 0:
        steps.append(
            Step(
                "Air charge of the empty tank",
                "p_0 = p_1 - p_gap",
                {**_given(values, found, "p_1"), "p_gap": Value(GAP, "pressure")},
                Value(found.charge, "pressure"),
                source="2 psi below the start: common practice, no source",
            )
        )
    return (*steps, _drawdown_step(values, found))


def _drawdown_step(values, found):
    return Step(
        "Water between starts, by Boyle's law",
        "V_d = V * (p_0 + p_a) / (p_1 + p_a) - V * (p_0 + p_a) / (p_2 + p_a)",
        _given(values, found, "V", "p_0", "p_1", "p_2", "p_a"),
        Value(found.gives, "volume"),
        note="p_0 is the air charge, p_a the air outside: Boyle's law takes absolute pressures.",
        source="Boyle's law; air pressure ISO 2533:1975",
    )


def _tank_step(values, found):
    return Step(
        "Tank needed",
        "V_tank = V * V_n / V_d",
        _given(values, found, "V", "V_n", "V_d"),
        Value(found.need, "volume"),
    )


# With a pressure switch ------------------------------------------------------


def starts_now(values, gives):
    """Starts a second at the reader's draw; none where the pump never stops."""
    if values.draw >= values.pump:
        return 0.0
    return storage.starts_rate(gives, values.pump, values.draw)


def switch_figures(values, found):
    """Key figures with a pressure switch."""
    note = "when half the pump's flow is drawn"
    runs_on = "the pump does not stop" if values.draw >= values.pump else ""
    now = starts_now(values, found.gives)
    shortest = storage.run_time(found.gives, values.pump, 0.0)
    return (
        Figure("Water the tank gives between starts", found.gives, "volume", main=True),
        Figure("Starts an hour, at worst", found.worst, "per_hour", main=True, note=note),
        Figure("Starts an hour at your draw", now, "per_hour", note=runs_on),
        Figure("Shortest run", shortest, "time", note="when nothing more is drawn"),
        Figure("Tank needed", found.need, "volume", note="before rounding up"),
    )


def switch_steps(values, found):
    """The working with a pressure switch."""
    return (
        *_drawdown_steps(values, found),
        Step(
            "Starts at the worst draw, half the pump's flow",
            "n = Q_p / (4 * V_d)",
            _given(values, found, "Q_p", "V_d"),
            Value(found.worst, "per_hour"),
            note=PER_SECOND,
            source="Volume balance of one cycle",
        ),
        Step(
            "Water between starts that would do",
            "V_n = Q_p / (4 * n_max)",
            _given(values, found, "Q_p", "n_max"),
            Value(found.target, "volume"),
        ),
        _tank_step(values, found),
    )


def size_table(values, found, reader):
    """Common sizes, what each gives and how often the pump starts."""
    rows, dimmed = [], []
    for index, size in enumerate(COMMON[reader.system]):
        gives = found.drawdown(size, values.cutin)
        worst = storage.most_starts_rate(gives, values.pump)
        fits = worst <= values.starts * (1 + 1e-9)
        run = storage.run_time(gives, values.pump, 0.0)
        rows.append((size, gives, worst, run, "fits" if fits else "too many starts"))
        if not fits:
            dimmed.append(index)
    marked = (len(dimmed),) if len(dimmed) < len(rows) else ()
    columns = (
        Column("Tank", "volume", 1),
        Column("Gives", "volume"),
        Column("Starts, at worst", "per_hour"),
        Column("Shortest run", "time"),
        Column("Fit"),
    )
    note = "" if marked else "None of these is large enough: use several side by side."
    return Table("Common tank sizes", columns, tuple(rows), marked, tuple(dimmed), note)


def switch_chart(values, found):
    """Starts an hour against the draw, for the tank and for the one needed."""
    flows = tuple(values.pump * (i / 40) for i in range(41))  # the last exactly the pump's
    pairs = [("Your tank", found.gives)]
    if not math.isclose(found.target, found.gives, rel_tol=1e-6):
        pairs.append(("The tank needed", found.target))
    now = (values.draw, starts_now(values, found.gives), "your draw")
    return Chart(
        "starts",
        "Pump starts an hour against the water drawn",
        "Starts an hour rise from none to a peak at half the pump's flow and fall to none at its "
        "full flow.",
        "Water drawn",
        "flow",
        "Starts",
        "per_hour",
        tuple(
            Series(name, flows, tuple(storage.starts_rate(v, values.pump, q) for q in flows))
            for name, v in pairs
        ),
        marks=(now,) if values.draw < values.pump else (),
        levels=((values.starts, "allowed"),),
    )


# With speed control ----------------------------------------------------------


def speed_figures(found):
    """Key figures with speed control."""
    cup = "0.25 L, about half a pint, drawn before the pump starts"
    return (
        Figure("Water the tank gives before a start", found.gives, "volume", main=True),
        Figure("Starts an hour from leaks alone", found.leaks, "per_hour", main=True),
        Figure("Tank that covers a cup of water", found.cup, "volume", note=cup),
    )


def speed_steps(values, found):
    """The working with speed control."""
    return (
        *_drawdown_steps(values, found),
        Step(
            "Starts from leaks",
            "n = Q_l / V_d",
            _given(values, found, "Q_l", "V_d"),
            Value(found.leaks, "per_hour"),
            note=PER_SECOND,
            source="Volume balance of one cycle",
        ),
        Step(
            "Water before a start that would do",
            "V_n = Q_l / n_max",
            _given(values, found, "Q_l", "n_max"),
            Value(found.target, "volume"),
        ),
        _tank_step(values, found),
        Step(
            "Tank for a cup",
            "V_tank = V * V_cup / V_d",
            _given(values, found, "V", "V_cup", "V_d"),
            Value(found.cup, "volume"),
        ),
    )


def leak_table(values, found, reader):
    """Small tanks, and how far apart leaks start the pump."""
    rows = []
    for size in COMMON[reader.system][:SMALL]:
        gives = found.drawdown(size, values.cutin)
        often = f"every {gap_words(gives / values.leak)}" if values.leak > 0 else "never"
        rows.append((size, gives, often))
    columns = (Column("Tank", "volume", 1), Column("Gives", "volume"), Column("Leaks start it"))
    return Table("Small tanks for standby", columns, tuple(rows))


def leak_chart(values, found):
    """Starts an hour from leaks against tank size."""
    small, large = COMMON["metric"][0], COMMON["metric"][SMALL - 1]
    sizes = tuple(small + (large - small) * i / 24 for i in range(25))
    rates = (
        storage.leak_starts_rate(found.drawdown(size, values.cutin), values.leak) for size in sizes
    )
    return Chart(
        "standby",
        "Starts from leaks against tank size",
        "Starts an hour fall steeply with the first of the tank's volume and then level out.",
        "Tank, whole volume",
        "volume",
        "Starts from leaks",
        "per_hour",
        (Series("Starts from leaks", sizes, tuple(rates)),),
        levels=((values.starts, "allowed"),),
    )


# Both ------------------------------------------------------------------------


def warnings(values, found, reader):
    """What to know or do about runs, the air charge and ratings."""
    rows = []
    if values.control == "switch":
        rows += _switch_warnings(values, found, reader)
    if found.charge < 0.6 * values.cutin and values.cutin > GAP:
        better = reader.both(values.cutin - GAP, "pressure")
        rows.append(
            Warning("note", f"The air charge is low. At {better} the same tank would give more.")
        )
    if found.high > STOUT:
        rows.append(
            Warning("care", "Many small tanks and fittings are rated only 7 to 10 bar (100 to 150 "
                    "psi, common practice). Read the labels of all parts.")
        )  # fmt: skip
    rows.append(
        Warning("note", "Check the air charge once a year, pump off and tank empty. The tank must "
                f"be rated for more than {reader.both(found.high, 'pressure')}; the relief valve "
                "opens between that and the weakest part's rating.")
    )  # fmt: skip
    return tuple(rows)


def _switch_warnings(values, found, reader):
    if values.draw >= values.pump:
        yield Warning(
            "care",
            "As much is drawn as the pump gives, or more: it does not stop, and the pressure falls "
            "to what the pump can hold.",
        )
    shortest = storage.run_time(found.gives, values.pump, 0.0)
    if shortest < SHORT_RUN * (1 - 1e-9):
        longer = round_up(values.tank * SHORT_RUN / shortest, "volume", reader)
        yield Warning(
            "care",
            f"The shortest run is {math.floor(shortest)} s. Many motors ask for a minute, to cool "
            "between starts (common practice; see the motor's data sheet): a tank of "
            f"{reader.both(longer, 'volume')} gives that.",
        )


def links(values, reader):
    """Where to go on from a pressure tank."""
    asked = {"pressure": reader.typed(values.cutin, "pressure")}
    if values.draw:
        asked["flow"] = reader.typed(values.draw, "flow")
    return (
        Link("At the starting pressure: will it reach?", "reach", asked),
        Link("Water for days without the pump: a storage tank", "tank", {}),
    )
