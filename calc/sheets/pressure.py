"""Pressure and head: one value in every unit, and what is left up a climb of standing water."""

import math

from calc import water
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
from calc.units import GRAVITY, METRE_OF_WATER, PSI, QUANTITIES, number_text

SUITS = (  # pressure left, what it suits; common practice, no source
    (30 * PSI, "a house"),
    (20 * PSI, "drip lines"),
    (5 * PSI, "filling a trough"),
    (0.0, "a trickle"),
)
COLUMNS = {"m water", "ft water"}

FIELDS = (
    Number(
        "known",
        "The pressure or head you know",
        "pressure",
        "3 bar",
        "45 psi",
        0.0,
        100e5,
        help="Choose the unit beside it; “m water” and “ft water” are head.",
    ),
    Choice(
        "kind",
        "Measured from",
        (("gauge", "The air outside (a gauge)"), ("absolute", "Empty space (absolute)")),
        "gauge",
    ),
    Number(
        "climb",
        "Climb to the outlet",
        "length",
        "15 m",
        "50 ft",
        -300.0,
        300.0,
        help="Height above the place of that pressure. Lower: a minus sign.",
    ),
    Number("wanted", "Pressure wanted at the outlet", "pressure", "1.4 bar", "20 psi", 0.0, 100e5),
    Number(
        "water",
        "Water temperature",
        "temperature",
        "15 °C",
        "59 °F",
        273.15,
        373.15,
        group="Water and altitude",
    ),
    Number(
        "altitude",
        "Altitude of the site",
        "length",
        "0 m",
        "0 ft",
        -400.0,
        5000.0,
        help="Sets the air pressure, for absolute pressures.",
        group="Water and altitude",
    ),
)


def solve(values, reader):
    density = water.density(values.water)
    weight = density * GRAVITY
    air = water.air_pressure(values.altitude)
    known = _known(values, weight)
    gauge = known - air if values.kind == "absolute" else known
    if gauge < 0:
        raise InputError(
            f"An absolute pressure below the air's own ({reader.show(air, 'pressure')} here) is a "
            "vacuum: nothing is pushed up. Enter more, or choose “the air outside”.",
            name="known",
        )
    head, left = gauge / weight, gauge - weight * values.climb
    return Answer(
        verdict=_verdict(values, reader, gauge, head, left, weight),
        figures=(
            Figure("Head: height of standing water it holds", head, "head", main=True),
            Figure("Left at the outlet, nothing running", left, "pressure", main=True),
            Figure("Gauge pressure", gauge, "pressure"),
            Figure("Absolute pressure", gauge + air, "pressure"),
            Figure(
                "Highest outlet that keeps the pressure wanted",
                (gauge - values.wanted) / weight,
                "length",
            ),
            Figure("Each metre (3.28 ft) of climb costs", weight, "pressure"),
        ),
        steps=_steps(values, gauge, air, density, head, left),
        tables=(_every_unit(values, gauge, air, weight), _profile(values, reader, gauge, weight)),
        charts=(_chart(values, gauge, weight, left),),
        warnings=_warnings(values, gauge, air, left),
        links=(
            Link(
                "Now with pipe and taps: will it reach?",
                "reach",
                {
                    "pressure": _text(gauge, "pressure", reader),
                    "climb": _text(values.climb, "length", reader),
                },
            ),
        ),
    )


def _known(values, weight):
    """The pressure typed, Pa; a column of water is one of the reader's water."""
    if values.typed["known"].unit.symbol in COLUMNS:
        return values.known / METRE_OF_WATER * weight
    return values.known


def _verdict(values, reader, gauge, head, left, weight):
    same = f"{reader.show(gauge, 'pressure')} is the weight of {reader.both(head, 'head')} of standing water."
    if left < 0:
        return Verdict(
            "bad",
            f"{same} A climb of {reader.both(values.climb, 'length')} is more: no water arrives.",
        )
    at_top = f"{same} After a climb of {reader.both(values.climb, 'length')}, {reader.both(left, 'pressure')} is left"
    suits = next(use for floor, use in SUITS if left >= floor)
    if left >= values.wanted:
        return Verdict(
            "good", f"{at_top}: enough for {suits} (common practice).", "There is enough"
        )
    highest = (gauge - values.wanted) / weight
    where = (
        f"an outlet up to {reader.both(highest, 'length')} higher would have it"
        if highest > 0
        else f"it takes {reader.both(values.wanted + weight * values.climb, 'pressure')} to start with"
    )
    return Verdict(
        "tight",
        f"{at_top}, less than the {reader.show(values.wanted, 'pressure')} wanted; {where}.",
    )


def _steps(values, gauge, air, density, head, left):
    rho, g = Value(density, "density", 5), Value(GRAVITY, "number", 6)
    p = Value(gauge, "pressure")
    return (
        Step(
            "Density of the water",
            note=f"{number_text(density, 5)} kg/m³ at its temperature.",
            source="IAPWS SR6-08(2011)",
        ),
        Step(
            "Pressure as head",
            "h = p / (rho * g)",
            {"p": p, "rho": rho, "g": g},
            Value(head, "head"),
        ),
        Step(
            "Absolute pressure",
            "p_abs = p + p_air",
            {"p": p, "p_air": Value(air, "pressure", 4)},
            Value(gauge + air, "pressure"),
            source="Air pressure by altitude: ISO 2533:1975",
        ),
        Step(
            "What the climb leaves",
            "p_top = p - rho * g * z",
            {"p": p, "rho": rho, "g": g, "z": Value(values.climb, "length")},
            Value(left, "pressure"),
        ),
        Step(
            "Highest outlet with the pressure wanted",
            "z_max = (p - p_want) / (rho * g)",
            {"p": p, "p_want": Value(values.wanted, "pressure"), "rho": rho, "g": g},
            Value((gauge - values.wanted) / (density * GRAVITY), "length"),
        ),
    )


def _every_unit(values, gauge, air, weight):
    rows = []
    for symbol in ("psi", "kPa", "bar"):
        unit = QUANTITIES["pressure"].unit(symbol)
        rows.append(
            (symbol, number_text(unit.from_si(gauge), 4), number_text(unit.from_si(gauge + air), 4))
        )
    for symbol in ("m", "ft"):
        unit = QUANTITIES["head"].unit(symbol)
        pair = (number_text(unit.from_si(p / weight), 4) for p in (gauge, gauge + air))
        rows.append((f"{symbol} of this water", *pair))
    return Table(
        "The same in every unit",
        (Column("Unit"), Column("Gauge"), Column("Absolute")),
        tuple(rows),
        note="A metre or foot of water is a column of water at the temperature given.",
    )


def _profile(values, reader, gauge, weight):
    unit = reader.unit("length")
    step = unit.to_si(_round_step(unit.from_si(max(gauge / weight, values.climb, 1.0)) / 8))
    rows, height = [], 0.0
    while not rows or (rows[-1][1] > 0 and len(rows) < 12):
        left = gauge - weight * height
        use = next((use for floor, use in SUITS if left >= floor), "no water")
        rows.append((height, max(left, 0.0), use))
        height += step
    return Table(
        "Standing pressure up the climb",
        (
            Column("Climb", "length"),
            Column("Left", "pressure"),
            Column("Enough for (common practice)"),
        ),
        tuple(rows),
    )


def _round_step(step):
    """The next of 1, 2, 5 times a power of ten that is at least ``step``."""
    power = 10.0 ** math.floor(math.log10(step))
    return next(m * power for m in (1, 2, 5, 10) if m * power >= step * (1 - 1e-9))


def _chart(values, gauge, weight, left):
    low, high = min(0.0, values.climb), max(gauge / weight, values.climb, 1.0)
    heights = tuple(low + (high - low) * i / 10 for i in range(11))
    pressures = tuple(gauge - weight * z for z in heights)
    return Chart(
        "profile",
        "Pressure of standing water up the climb",
        "Pressure against height: a straight line falling by the same amount each metre; "
        "your outlet is marked on it.",
        "Climb",
        "length",
        "Pressure left",
        "pressure",
        (Series("Standing water", heights, pressures),),
        marks=((values.climb, left, "your outlet"),),
        levels=((values.wanted, "wanted"),),
    )


def _warnings(values, gauge, air, left):
    found = []
    if gauge + air < water.vapour_pressure(values.water):
        found.append(Warning("stop", "At this absolute pressure the water boils."))
    found.append(
        Warning(
            "note",
            "This is for standing water. Running water loses more to friction: see “will it reach”.",
        )
    )
    return tuple(found)


def _text(value, quantity, reader):
    return (
        reader.show(value, quantity, 4)
        .replace("\u00a0", " ")
        .replace("\u202f", "")
        .replace("−", "-")
    )


SHEET = Sheet(
    "pressure",
    "Pressure and head",
    FIELDS,
    solve,
    folded=("Water and altitude",),
    cautions=(
        "Never exceed the rating of the weakest part; the lowest point carries the highest pressure.",
        "Let the pressure out before you open a joint or take off a gauge.",
    ),
    sources=(
        "Unit factors: NIST Special Publication 811 (2008), appendix B.8.",
        "Water density: IAPWS SR6-08(2011). Air pressure: ISO 2533:1975.",
    ),
    page="pressure/",
)
