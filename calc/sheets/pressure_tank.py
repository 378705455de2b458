"""Air-charged pressure tank: drawdown, starts an hour, and what speed control does instead."""

import math

from calc import storage, water
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
from calc.sheets.form import Choice, Number, Sheet
from calc.units import HOUR, LITRE, PSI

MORE = "Precharge, starts and site"
SIZES = tuple(
    v * LITRE for v in (8, 18, 24, 35, 60, 80, 100, 150, 200, 300, 450)
)  # common sizes, common practice
GAP = 2 * PSI  # precharge below cut-in; common practice, no source
SHORT_RUN = 60.0  # s, least run of a small motor; common practice, no source
CUP = 0.25 * LITRE  # m3, a cup of water

FIELDS = (
    Choice(
        "control",
        "How the pump is controlled",
        (("switch", "Pressure switch: on and off"), ("speed", "Speed control: holds the pressure")),
        "switch",
    ),
    Number("cutin", "Pump starts at", "pressure", "2 bar", "30 psi", 0.1e5, 15e5),
    Number("cutout", "Pump stops at", "pressure", "3.5 bar", "50 psi", 0.1e5, 20e5, when=("control", ("switch",))),
    Number(
        "set",
        "Pressure it holds",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.1e5,
        20e5,
        help="It rests at this pressure and starts again at the one above.",
        when=("control", ("speed",)),
    ),
    Number("pump", "Flow of the pump", "flow", "18 L/min", "5 gpm", 1e-7, 0.05),
    Number("tank", "Tank, whole volume", "volume", "100 L", "26 gal", 1e-4, 10.0,
           help="The size on its label, not what it gives."),
    Number("draw", "Water drawn steadily", "flow", "7.5 L/min", "2 gpm", 0.0, 0.05),
    Number("precharge", "Air charge of the empty tank", "pressure", "1.86 bar", "28 psi", 0.0, 15e5,
           help="About 0.14 bar (2 psi) below the starting pressure (common practice).", group=MORE),
    Number("starts", "Most starts an hour", "per_hour", "20 per hour", "20 per hour", 1 / HOUR, 300 / HOUR,
           help="From the motor's data sheet.", group=MORE),
    Number("leak", "Leaks and drips", "flow", "0.05 L/min", "0.013 gpm", 0.0, 0.01,
           help="A dripping tap loses about this.", when=("control", ("speed",)), group=MORE),
    Number("altitude", "Altitude of the site", "length", "0 m", "0 ft", -400.0, 5000.0, group=MORE),
)  # fmt: skip


def solve(values, reader):
    high = values.set if values.control == "speed" else values.cutout
    key = "set" if values.control == "speed" else "cutout"
    if high <= values.cutin:
        raise InputError(
            f"This must be above the pressure at which the pump starts ({reader.show(values.cutin, 'pressure')}).",
            name=key,
        )
    air = water.air_pressure(values.altitude)
    gives = storage.drawdown(values.tank, values.precharge, values.cutin, high, air)
    if values.control == "speed":
        return _with_speed_control(values, reader, high, air, gives)
    return _with_switch(values, reader, high, air, gives)


# With a pressure switch ------------------------------------------------------


def _with_switch(values, reader, high, air, gives):
    worst = storage.most_starts_rate(gives, values.pump)
    need = storage.tank_for_drawdown(
        storage.drawdown_for_starts(values.pump, values.starts),
        values.precharge,
        values.cutin,
        high,
        air,
    )
    now = _starts(gives, values)
    return Answer(
        verdict=_switch_verdict(values, worst, need, gives, reader),
        figures=(
            Figure("Water the tank gives between starts", gives, "volume", main=True),
            Figure(
                "Starts an hour, at worst",
                worst,
                "per_hour",
                main=True,
                note="when half the pump's flow is drawn",
            ),
            Figure("Starts an hour at your draw", now, "per_hour"),
            Figure("Shortest run", storage.run_time(gives, values.pump, 0.0), "time"),
            Figure("Tank needed", need, "volume"),
        ),
        steps=_switch_steps(values, high, air, gives, worst, need),
        tables=(_size_table(values, high, air),),
        charts=(_switch_chart(values, gives, high, air, need),),
        warnings=_warnings(values, gives, high, reader),
        links=_links(values, reader),
    )


def _starts(gives, values):
    return (
        storage.starts_rate(gives, values.pump, values.draw) if values.draw < values.pump else 0.0
    )


def _switch_verdict(values, worst, need, gives, reader):
    show = reader.both
    facts = f"it gives {show(gives, 'volume')} between starts, at worst {worst * HOUR:.0f} starts an hour"
    if worst <= values.starts * (1 + 1e-9):
        return Verdict("good", f"Large enough: {facts}.")
    level = "tight" if worst <= 1.5 * values.starts else "bad"
    return Verdict(
        level,
        f"Too small: {facts}, where {values.starts * HOUR:.0f} are allowed. A tank of {show(need, 'volume')} would "
        "do, or a pump with speed control.",
        "Too small",
    )


def _drawdown_step(values, high, air, gives):
    return Step(
        "Water between starts, by Boyle's law",
        "V_d = V * (p_0 + p_a) / (p_1 + p_a) - V * (p_0 + p_a) / (p_2 + p_a)",
        {
            "V": Value(values.tank, "volume"),
            "p_0": Value(values.precharge, "pressure"),
            "p_1": Value(values.cutin, "pressure"),
            "p_2": Value(high, "pressure"),
            "p_a": Value(air, "pressure", 4),
        },
        Value(gives, "volume"),
        note="p_a is the air outside: Boyle's law takes absolute pressures.",
        source="Boyle's law; air pressure ISO 2533:1975",
    )


def _switch_steps(values, high, air, gives, worst, need):
    target = storage.drawdown_for_starts(values.pump, values.starts)
    return (
        _drawdown_step(values, high, air, gives),
        Step("Starts at the worst draw, half the pump's flow", "n = Q_p / (4 * V_d)",
             {"Q_p": Value(values.pump, "flow"), "V_d": Value(gives, "volume")}, Value(worst, "per_hour"),
             note="The formula gives starts a second; times 3600 an hour.", source="Volume balance of one cycle"),
        Step("Water between starts that would do", "V_n = Q_p / (4 * n_max)",
             {"Q_p": Value(values.pump, "flow"), "n_max": Value(values.starts, "per_hour")}, Value(target, "volume")),
        Step("Tank needed", "V_tank = V * V_n / V_d",
             {"V": Value(values.tank, "volume"), "V_n": Value(target, "volume"), "V_d": Value(gives, "volume")},
             Value(need, "volume")),
    )  # fmt: skip


def _size_table(values, high, air):
    rows, dimmed = [], []
    for index, size in enumerate(SIZES):
        gives = storage.drawdown(size, values.precharge, values.cutin, high, air)
        worst = storage.most_starts_rate(gives, values.pump)
        fits = worst <= values.starts * (1 + 1e-9)
        rows.append(
            (
                size,
                gives,
                worst,
                storage.run_time(gives, values.pump, 0.0),
                "fits" if fits else "too many starts",
            )
        )
        if not fits:
            dimmed.append(index)
    columns = (
        Column("Tank", "volume"),
        Column("Gives", "volume"),
        Column("Starts, worst", "per_hour"),
        Column("Shortest run", "time"),
        Column(""),
    )
    return Table("Common tank sizes", columns, tuple(rows), dimmed=tuple(dimmed))


def _switch_chart(values, gives, high, air, need):
    flows = tuple(values.pump * i / 40 for i in range(41))
    needed = storage.drawdown(need, values.precharge, values.cutin, high, air)
    series = [
        Series("Your tank", flows, tuple(storage.starts_rate(gives, values.pump, q) for q in flows))
    ]
    if not math.isclose(needed, gives, rel_tol=1e-6):
        rates = tuple(storage.starts_rate(needed, values.pump, q) for q in flows)
        series.append(Series("The tank needed", flows, rates))
    return Chart(
        "starts",
        "Pump starts an hour against the water drawn",
        "Starts an hour rise from none to a peak at half the pump's flow and fall to none at its full flow.",
        "Water drawn",
        "flow",
        "Starts",
        "per_hour",
        tuple(series),
        marks=((values.draw, _starts(gives, values), "your draw"),)
        if values.draw < values.pump
        else (),
        levels=((values.starts, "allowed"),),
    )


# With speed control ----------------------------------------------------------


def _with_speed_control(values, reader, high, air, gives):
    between = gives / values.leak if values.leak > 0 else math.inf
    cup = storage.tank_for_drawdown(CUP, values.precharge, values.cutin, high, air)
    rate = values.leak / gives
    return Answer(
        verdict=_speed_verdict(values, gives, between, rate, cup, reader),
        figures=(
            Figure("Water the tank gives before a start", gives, "volume", main=True),
            Figure("Starts an hour from leaks alone", rate, "per_hour", main=True),
            Figure("Tank that covers a cup of water", cup, "volume", note="0.25 L (half a pint)"),
        ),
        steps=(
            _drawdown_step(values, high, air, gives),
            Step("Starts from leaks", "n = Q_leak / V_d",
                 {"Q_leak": Value(values.leak, "flow"), "V_d": Value(gives, "volume")}, Value(rate, "per_hour"),
                 note="The formula gives starts a second; times 3600 an hour."),
            Step("Tank for a cup", "V_tank = V * V_cup / V_d",
                 {"V": Value(values.tank, "volume"), "V_cup": Value(CUP, "volume"), "V_d": Value(gives, "volume")},
                 Value(cup, "volume")),
        ),
        tables=(_leak_table(values, high, air),),
        charts=(_leak_chart(values, high, air),),
        warnings=_warnings(values, gives, high, reader),
        links=_links(values, reader),
    )  # fmt: skip


def _speed_verdict(values, gives, between, rate, cup, reader):
    show = reader.both
    facts = (
        "While water runs, speed control matches the draw and does not cycle; a check valve holds the pressure "
        f"while it rests (common practice). This tank gives {show(gives, 'volume')} before a start"
    )
    if rate <= values.starts * (1 + 1e-9):
        gap = f"every {reader.show(between, 'minutes')}" if math.isfinite(between) else "never"
        return Verdict("good", f"{facts}; leaks alone start the pump {gap}.", "Enough")
    need = values.leak / values.starts * values.tank / gives
    return Verdict(
        "tight",
        f"{facts}, but leaks alone start it {rate * HOUR:.0f} times an hour. Mend the leak, or use a tank of "
        f"{show(need, 'volume')}.",
        "It will start too often",
    )


def _leak_table(values, high, air):
    rows = []
    for size in SIZES[:7]:
        gives = storage.drawdown(size, values.precharge, values.cutin, high, air)
        rows.append((size, gives, values.leak / gives))
    columns = (
        Column("Tank", "volume"),
        Column("Gives", "volume"),
        Column("Starts from leaks", "per_hour"),
    )
    return Table("Small tanks for standby", columns, tuple(rows))


def _leak_chart(values, high, air):
    sizes = tuple(SIZES[0] + (SIZES[6] - SIZES[0]) * i / 24 for i in range(25))
    each = storage.drawdown(1.0, values.precharge, values.cutin, high, air)
    return Chart(
        "standby",
        "Starts from leaks against tank size",
        "Starts an hour fall steeply with the first litres of tank and then level out.",
        "Tank, whole volume",
        "volume",
        "Starts from leaks",
        "per_hour",
        (Series("Starts from leaks", sizes, tuple(values.leak / (each * s) for s in sizes)),),
        levels=((values.starts, "allowed"),),
    )


# Both ------------------------------------------------------------------------


def _warnings(values, gives, high, reader):
    found = []
    if values.draw >= values.pump and values.control == "switch":
        found.append(
            Warning("care", "As much is drawn as the pump gives: it does not stop, and the pressure falls to what "
                    "the pump can hold.")
        )  # fmt: skip
    if values.control == "switch" and storage.run_time(gives, values.pump, 0.0) < SHORT_RUN:
        found.append(
            Warning("care", f"The pump runs {reader.show(storage.run_time(gives, values.pump, 0.0), 'time')} at the "
                    "shortest. Many motors ask for a minute to cool between starts (common practice): see its sheet.")
        )  # fmt: skip
    if values.precharge < 0.6 * values.cutin:
        found.append(
            Warning("note", f"The air charge is low. At {reader.both(max(values.cutin - GAP, 0.0), 'pressure')} the "
                    "same tank would give more.")
        )  # fmt: skip
    found.append(
        Warning("note", f"Check the air charge once a year with the pump off and the tank empty. The tank and a relief "
                f"valve must be rated above {reader.both(high, 'pressure')}.")
    )  # fmt: skip
    return tuple(found)


def _links(values, reader):
    flow = reader.show(values.draw, "flow", 4).replace("\u00a0", " ").replace("\u202f", "")
    pressure = reader.show(values.cutin, "pressure", 4).replace("\u00a0", " ")
    return (
        Link(
            "At the starting pressure: will it reach?",
            "reach",
            {"pressure": pressure, "flow": flow},
        ),
        Link("Water for days without the pump: a storage tank", "tank", {}),
    )


SHEET = Sheet(
    "pressure_tank",
    "Pressure tank",
    FIELDS,
    solve,
    folded=(MORE,),
    cautions=(
        "A pressure tank stores energy: shut off the pump and drain it before you loosen anything.",
        "Fit a relief valve set below the weakest part's rating, and never charge a tank past its label.",
        "Pressure vessels and their inspection are under local law. Wiring is for licensed hands.",
    ),
    sources=(
        "Boyle's law with absolute pressures; air pressure by altitude: ISO 2533:1975.",
        "Air charge 2 psi below the starting pressure, a minute's run: common practice, no source.",
    ),
    page="pressure-tank/",
)
