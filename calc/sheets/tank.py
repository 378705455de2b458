"""Storage tank: balance over the day, days to bridge, and the pressure a tank up the hill gives."""

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
from calc.sheets.form import Choice, Number, Sheet
from calc.units import DAY, GRAVITY, LITRE, PSI

SOURCE = "The source"
HILL = "A tank up the hill"
SIZES = tuple(
    v * LITRE for v in (200, 500, 1000, 1500, 2000, 3000, 5000, 7500, 10000, 15000, 20000, 30000)
)

FIELDS = (
    Number("use", "Water used a day", "daily", "930 L/day", "245 gal/day", 1e-9, 1e-2),
    Choice(
        "pattern",
        "When it is used",
        (
            ("home", "Home: morning and evening"),
            ("dawn", "Drip lines at dawn"),
            ("day", "Through the day: stock, work"),
            ("even", "Evenly, day and night"),
        ),
        "home",
    ),
    Number(
        "gives",
        "What pump or source gives",
        "flow",
        "6 L/min",
        "1.5 gpm",
        0.0,
        1.0,
        help="The smaller of the pump's flow and what the well gives back while pumping.",
    ),
    Number(
        "hours",
        "Hours it runs a day",
        "number",
        "6",
        "6",
        0.5,
        24.0,
        help="With the sun: about 5 to 7 hours of full power on a fair day (common practice).",
    ),
    Number(
        "bridge",
        "Days to bridge without it",
        "days",
        "3 days",
        "3 days",
        0.0,
        60 * DAY,
        help="Cloudy days, or days until a repair.",
    ),
    Number(
        "own",
        "The tank you have in mind",
        "volume",
        "",
        "",
        0.01,
        1e4,
        help="Leave empty to be told the size.",
        optional=True,
    ),
    Number(
        "usable",
        "Share of the tank that can be used",
        "percent",
        "90 %",
        "90 %",
        0.3,
        1.0,
        group=SOURCE,
    ),
    Number(
        "height",
        "Tank's water above the tap",
        "length",
        "15 m",
        "50 ft",
        0.0,
        300.0,
        help="Height when nearly empty. 0: the tank feeds a pump.",
        group=HILL,
    ),
    Number(
        "lost", "Head lost on the way to the tap", "head", "1.5 m", "5 ft", 0.0, 300.0, group=HILL
    ),
    Number(
        "wanted",
        "Pressure wanted at the tap",
        "pressure",
        "2.1 bar",
        "30 psi",
        0.0,
        10e5,
        group=HILL,
    ),
)


def solve(values, reader):
    use = values.use * DAY
    supply = values.gives * values.hours * 3600
    shares = storage.PATTERNS[values.pattern]
    steady = storage.supply_pattern(values.hours)
    balance = storage.daily_balance(use, shares, supply, steady)
    days = values.bridge / DAY
    volume = storage.tank_volume(balance.swing, use, days, values.usable)
    kept = values.own if values.own else volume
    density = water.density(288.15)  # K; between 5 and 30 degC pressure differs by less than 0.5 %
    gravity = storage.gravity_pressure(values.height, values.lost, density)
    return Answer(
        verdict=_verdict(values, balance, use, supply, volume, reader),
        figures=_figures(values, balance, use, supply, volume, gravity, density),
        steps=_steps(values, balance, use, supply, volume, gravity, density),
        tables=(_table(values, balance, use, supply, reader),),
        charts=(_chart(values, kept, use, shares, supply, steady),),
        warnings=_warnings(values, balance, kept, gravity, reader),
        links=(
            Link("The pressure a height gives", "pressure", {"climb": "0 m"}),
            Link("Count the water a day again", "demand", {}),
        ),
    )


def _verdict(values, balance, use, supply, volume, reader):
    show = reader.both
    if balance.surplus < -1e-9 * use:
        need = use / (values.gives * 3600) if values.gives else math.inf
        more = f" It would have to run {need:.1f} hours a day." if need <= 24 else ""
        return Verdict(
            "bad",
            f"No tank helps: {show(use, 'volume')} a day is used and only {show(supply, 'volume')} comes in.{more}",
            "The source is too small",
        )
    if values.own is None:
        return Verdict(
            "good",
            f"A tank of {show(volume, 'volume')} evens out the day and bridges {_days(values.bridge)}.",
            "Size",
        )
    spare = values.own * values.usable - balance.swing
    bridged = spare / use
    if spare < 0:
        return Verdict(
            "bad", f"Too small: it runs dry on an ordinary day; {show(volume, 'volume')} is needed."
        )
    if values.own >= volume * (1 - 1e-9):
        return Verdict(
            "good",
            f"Large enough: it bridges {bridged:.1f} days; {show(volume, 'volume')} would do.",
        )
    return Verdict(
        "tight",
        f"It evens out the day but bridges {bridged:.1f} days, not {_days(values.bridge)}; "
        f"{show(volume, 'volume')} would.",
    )


def _days(seconds):
    number = seconds / DAY
    return f"{number:g} day" + ("" if number == 1 else "s")


def _figures(values, balance, use, supply, volume, gravity, density):
    height = storage.height_for_pressure(values.wanted, values.lost, density)
    return (
        Figure("Tank needed", volume, "volume", main=True),
        Figure("To even out the day", balance.swing, "volume"),
        Figure("Comes in on a fair day", supply, "volume"),
        Figure("Left over on a fair day", balance.surplus, "volume"),
        Figure("Pressure by height at the tap", gravity, "pressure"),
        Figure("Height that would give the pressure wanted", height, "length"),
    )


def _steps(values, balance, use, supply, volume, gravity, density):
    return (
        Step("What comes in", "S = q * h * 3600",
             {"q": Value(values.gives, "flow"), "h": Value(values.hours, "number")}, Value(supply, "volume"),
             note="3600 s in an hour."),
        Step("To even out the day", note="Hour by hour, what has come in less what has been used since midnight is "
             "added up. The distance from the lowest point of that sum to the highest is the least tank. What comes "
             "in beyond the use is left in the source.", result=Value(balance.swing, "volume"),
             source="Mass curve: W. Rippl, Proc. Inst. Civ. Eng. 71 (1883)"),
        Step("With the days to bridge", "V = (V_swing + V_day * n) / u",
             {"V_swing": Value(balance.swing, "volume"), "V_day": Value(use, "volume"),
              "n": Value(values.bridge / DAY, "number"), "u": Value(values.usable, "percent")}, Value(volume, "volume")),
        Step("Pressure from the tank's height", "p = rho * g * (z - h_f)",
             {"rho": Value(density, "density", 4), "g": Value(GRAVITY, "number", 6), "z": Value(values.height, "length"),
              "h_f": Value(values.lost, "head")}, Value(gravity, "pressure")),
        Step("Height for the pressure wanted", "z_want = p_want / (rho * g) + h_f",
             {"p_want": Value(values.wanted, "pressure"), "rho": Value(density, "density", 4),
              "g": Value(GRAVITY, "number", 6), "h_f": Value(values.lost, "head")},
             Value(storage.height_for_pressure(values.wanted, values.lost, density), "length")),
    )  # fmt: skip


def _table(values, balance, use, supply, reader):
    rows, dimmed = [], []
    for index, size in enumerate(SIZES):
        spare = size * values.usable - balance.swing
        bridged = spare / use
        if spare < 0 or balance.surplus < -1e-9 * use:
            rows.append((size, None, "runs dry on an ordinary day"))
            dimmed.append(index)
            continue
        refill = storage.days_to_recover(min(spare, use * values.bridge / DAY), supply, use)
        refill_text = (
            "never refills: nothing is left over"
            if math.isinf(refill)
            else f"refills in {refill / DAY:.1f} fair days"
        )
        rows.append((size, bridged, refill_text))
        if bridged < values.bridge / DAY:
            dimmed.append(index)
    columns = (
        Column("Tank", "volume"),
        Column("Days bridged", "number"),
        Column("After the days you named"),
    )
    return Table("Tanks and what they bridge", columns, tuple(rows), dimmed=tuple(dimmed))


def _chart(values, kept, use, shares, supply, steady):
    dry = min(math.ceil(values.bridge / DAY), 6)
    days = min(dry + 4, 9)
    start = kept * values.usable
    levels, _ = storage.level_over_days(start, start, use, shares, supply, steady, dry, days)
    step = 2 if len(levels) > 120 else 1
    hours = tuple(range(0, len(levels), step))
    return Chart(
        "level",
        f"Water in the tank, the first {dry} days without the source"
        if dry
        else "Water in the tank",
        "The level falls in steps through the days without the source, then climbs back by day.",
        "Time",
        "days",
        "Water that can be used",
        "volume",
        (
            Series(
                "Water in the tank",
                tuple(h * 3600.0 for h in hours),
                tuple(levels[h] for h in hours),
            ),
        ),
    )


def _warnings(values, balance, kept, gravity, reader):
    found = [
        Warning(
            "care",
            f"Full, it holds {reader.both(kept * 1000, 'mass')} of water. It needs level, firm ground; a stand or a "
            "roof needs a structural design.",
        )
    ]
    if 0 < values.height and gravity < values.wanted:
        found.append(
            Warning(
                "note",
                f"By height alone the tap gets {reader.both(max(gravity, 0.0), 'pressure')}, less than wanted: drip "
                f"lines may be content with {reader.both(20 * PSI, 'pressure')} (common practice); for showers let "
                "a small pump raise it.",
            )
        )
    return tuple(found)


SHEET = Sheet(
    "tank",
    "Storage tank",
    FIELDS,
    solve,
    folded=(SOURCE, HILL),
    cautions=(
        "A tank is a confined space: never enter one alone or untested; call trained people.",
        "Water for people: a closed, dark, cleaned tank with screened vents, of a material approved for it.",
        "Keep children out: lock hatches and lids. An open cistern drowns.",
        "A full tank is heavy; stands, roofs and slopes need a structural design and local permits.",
    ),
    sources=(
        "Mass curve: W. Rippl, Proceedings of the Institution of Civil Engineers 71 (1883).",
        "Patterns of use over the day and hours of sun: common practice, no source.",
    ),
    page="storage/",
)
