"""Pressure and head: one value in every unit, and what is left up a climb of standing water."""

import math
from dataclasses import dataclass

from calc import water
from calc.errors import InputError
from calc.page.answer import (
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
from calc.page.fields import Choice, Number, Sheet
from calc.sheets.parts.fields import altitude, water_temperature
from calc.units import GRAVITY, METRE_OF_WATER, PSI, QUANTITIES, number_text

SUITS = (  # pressure left, what it suits; common practice, no source
    (30 * PSI, "a house"),
    (20 * PSI, "drip lines"),
    (5 * PSI, "filling a trough"),
    (0.0, "a trickle"),
)
COLUMNS = {"m water", "ft water"}
HIGH = 80 * PSI  # most at a fixture without a reducer: IPC 604.8, UPC 608.2, from memory
REACH_MOST, REACH_CLIMB = 20e5, 200.0  # Pa, m: as far as the sheet linked to goes

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
    water_temperature(373.15, "Water and altitude"),
    altitude(
        5000.0,
        group="Water and altitude",
        help="Sets the air pressure, for absolute pressures.",
    ),
)


def solve(values, reader):
    state = _read(values, reader)
    return Answer(
        given_verdict=_verdict(state, values, reader),
        figures=_figures(state, values),
        steps=_steps(state, values),
        tables=(_every_unit(state), _profile(state, values, reader)),
        charts=(_chart(state, values, reader),),
        warnings=_warnings(state, values, reader),
        links=_links(state, values, reader),
    )


@dataclass(frozen=True)
class Standing:
    """Standing water. SI: density kg/m3; air, known (as typed, in Pa) and gauge Pa; climb m."""

    density: float
    air: float
    known: float
    gauge: float
    climb: float

    @property
    def weight(self):
        """Pa per metre of height."""
        return self.density * GRAVITY

    @property
    def head(self):
        return water.head_from_pressure(self.gauge, self.density)

    @property
    def left(self):
        return self.at(self.climb)

    def at(self, height):
        """Gauge pressure at a height above the place of the known one, Pa; below 0: no water."""
        return self.gauge - self.weight * height

    def highest(self, wanted):
        """Height (m) at which ``wanted`` Pa is left; negative: so far below."""
        return (self.gauge - wanted) / self.weight


def _is_column(values):
    return values.typed["known"].unit.symbol in COLUMNS


def _read(values, reader):
    density, air = water.density(values.water), water.air_pressure(values.altitude)
    known = values.known
    if _is_column(values):  # a column of the reader's water, not of the conventional one
        known = water.pressure_from_head(values.known / METRE_OF_WATER, density)
    gauge = known - air if values.kind == "absolute" else known
    if gauge < 0:
        raise InputError(
            f"An absolute pressure below the air's own ({reader.show(air, 'pressure')} here) is a "
            "vacuum: nothing is pushed up. Enter more, or choose “the air outside”.",
            name="known",
        )
    return Standing(density, air, known, gauge, values.climb)


def _verdict(state, values, reader):
    show, same = reader.both, _same(state, values, reader)
    after, way = "Level with it", "climb" if state.climb > 0 else "drop"
    if state.climb:
        after = f"After a {way} of {show(abs(state.climb), 'length')}"
    need = show(values.wanted + state.weight * state.climb, "pressure")
    cure = f"It takes {need} here to have {show(values.wanted, 'pressure')} there."
    if state.left <= 0:
        sentence = f"{same} {after} nothing is left: no water arrives. {cure}"
        return Verdict("bad", sentence, "No water arrives")
    top = f"{same} {after}, {show(state.left, 'pressure')} is left"
    if state.left >= values.wanted:
        enough = f"{top}: enough for {_use(state.left)} (common practice)."
        return Verdict("good", enough, "There is enough")
    highest = state.highest(values.wanted)
    if highest > 0:
        cure = f"An outlet no higher than {show(highest, 'length')} above here has it. {cure}"
    wanted = reader.show(values.wanted, "pressure")
    return Verdict("tight", f"{top}, less than the {wanted} wanted. {cure}", "Less than wanted")


def _same(state, values, reader):
    """The first sentence: what was typed is the weight of so much water."""
    head = reader.both(state.head, "head", 4)
    if _is_column(values) or values.kind == "absolute":
        gauge = reader.both(state.gauge, "pressure")
        return f"A gauge would read {gauge}, the weight of {head} of water standing still."
    typed = values.typed["known"]
    pressure = reader.show(state.gauge, "pressure")
    if typed.unit.symbol != reader.unit("pressure").symbol:
        pressure = f"{number_text(typed.number)}\u00a0{typed.unit.symbol} ({pressure})"
    return f"{pressure} is the weight of {head} of water standing still."


def _use(left):
    """What a pressure suits, in words; common practice, no source."""
    if left <= 0:
        return "nothing"
    return next(use for floor, use in SUITS if left >= floor)


def _figures(state, values):
    highest = state.highest(values.wanted)
    return (
        Figure("Head: height of standing water it holds", state.head, "head", 4, main=True),
        Figure(
            "Left at the outlet, nothing running",
            state.left,
            "pressure",
            note="" if state.left > 0 else "below 0: so much is missing for water to arrive",
            main=True,
        ),
        Figure("Gauge pressure", state.gauge, "pressure"),
        Figure("Absolute pressure", state.gauge + state.air, "pressure"),
        Figure(
            "Highest outlet that keeps the pressure wanted",
            highest,
            "length",
            note="" if highest >= 0 else "below 0: that far below the place of the known pressure",
        ),
        Figure("Each metre (3.28 ft) of climb costs", state.weight, "pressure"),
    )


def _steps(state, values):
    rho, g = Value(state.density, "density", 5), Value(GRAVITY, "number", 6)
    p = Value(state.gauge, "pressure")
    return (
        Step(
            "Density of the water",
            note=f"{number_text(state.density, 5)} kg/m³ at its temperature.",
            source="IAPWS SR6-08(2011)",
        ),
        *_known_steps(state, values, rho, g),
        Step(
            "Pressure as head",
            "h = p / (rho * g)",
            {"p": p, "rho": rho, "g": g},
            Value(state.head, "head", 4),
            source="Hydrostatics, standard gravity (NIST SP 811)",
        ),
        Step(
            "Absolute pressure",
            "p_abs = p + p_air",
            {"p": p, "p_air": Value(state.air, "pressure", 4)},
            Value(state.gauge + state.air, "pressure"),
            source="Air pressure by altitude: ISO 2533:1975",
        ),
        Step(
            "What the climb leaves",
            "p_top = p - rho * g * z",
            {"p": p, "rho": rho, "g": g, "z": Value(state.climb, "length")},
            Value(state.left, "pressure"),
        ),
        Step(
            "Highest outlet with the pressure wanted",
            "z_max = (p - p_want) / (rho * g)",
            {"p": p, "p_want": Value(values.wanted, "pressure"), "rho": rho, "g": g},
            Value(state.highest(values.wanted), "length"),
        ),
    )


def _known_steps(state, values, rho, g):
    """From what was typed to the gauge pressure, where these are not the same."""
    absolute = values.kind == "absolute"
    if _is_column(values):
        target = "p_typed" if absolute else "p"
        yield Step(
            "The column you typed, as pressure",
            f"{target} = rho * g * h_typed",
            {"rho": rho, "g": g, "h_typed": Value(values.known / METRE_OF_WATER, "head", 4)},
            Value(state.known, "pressure"),
            note="A column of your water at its temperature.",
        )
    if absolute:
        yield Step(
            "Above the air outside: gauge pressure",
            "p = p_typed - p_air",
            {
                "p_typed": Value(state.known, "pressure", 4),
                "p_air": Value(state.air, "pressure", 4),
            },
            Value(state.gauge, "pressure"),
            source="Air pressure by altitude: ISO 2533:1975",
        )


def _every_unit(state):
    gauge, absolute = state.gauge, state.gauge + state.air
    rows = []
    for symbol in ("psi", "kPa", "bar"):
        unit = QUANTITIES["pressure"].unit(symbol)
        rows.append((symbol, *(number_text(unit.from_si(p), 4) for p in (gauge, absolute))))
    for symbol in ("m", "ft"):
        unit = QUANTITIES["head"].unit(symbol)
        pair = (number_text(unit.from_si(p / state.weight), 4) for p in (gauge, absolute))
        rows.append((f"{symbol} of this water", *pair))
    return Table(
        "The same in every unit",
        (Column("Unit"), Column("Gauge"), Column("Absolute")),
        tuple(rows),
        note="A metre or foot of water is a column of water at the temperature given.",
    )


def _profile(state, values, reader):
    unit = reader.unit("length")
    low, high = min(0.0, state.climb), max(state.head, state.climb, 1.0)
    step = unit.to_si(_round_step(unit.from_si(high - low) / 8))
    number, rows = math.floor(low / step + 1e-9), []
    while not rows or (rows[-1][1] > 0 and len(rows) < 14):
        left = max(state.at(number * step), 0.0)  # above the water the pipe holds air: no pressure
        rows.append((number * step, left, _use(left)))
        number += 1
    short = tuple(i for i, row in enumerate(rows) if row[1] < values.wanted)
    return Table(
        "Standing pressure up the climb",
        (
            Column("Climb", "length"),
            Column("Left", "pressure"),
            Column("Enough for (common practice)"),
        ),
        tuple(rows),
        dimmed=short,
        note="Grey: less than the pressure wanted.",
    )


def _round_step(step):
    """The next of 1, 2, 5 times a power of ten that is at least ``step``."""
    power = 10.0 ** math.floor(math.log10(step))
    return next(m * power for m in (1, 2, 5, 10) if m * power >= step * (1 - 1e-9))


def _chart(state, values, reader):
    low, top = min(0.0, state.climb), max(state.climb, state.head, 1.0)
    heights = [low + (state.head - low) * i / 10 for i in range(11)]
    pressures = [state.at(z) for z in heights[:-1]] + [0.0]
    if state.head < top:  # above the water: air, without pressure
        heights.append(top)
        pressures.append(0.0)
    weight = reader.both(state.weight, "pressure")
    return Chart(
        "profile",
        "Pressure of standing water up the climb",
        f"Pressure against height: a straight line falling by {weight} each metre (3.28 ft) down "
        f"to nothing at {reader.both(state.head, 'head')}; your outlet is marked on it.",
        "Climb",
        "length",
        "Pressure left",
        "pressure",
        (Series("Standing water", tuple(heights), tuple(pressures)),),
        marks=((state.climb, max(state.left, 0.0), "your outlet"),),
        levels=((values.wanted, "wanted"),),
    )


def _warnings(state, values, reader):
    found = []
    if state.gauge + state.air < water.vapour_pressure(values.water):
        boils = reader.both(water.boiling_temperature(state.gauge + state.air), "temperature")
        found.append(Warning("stop", f"At this pressure water boils at {boils} already."))
    most = max(state.gauge, state.left)
    if most > HIGH:
        found.append(
            Warning(
                "care",
                f"{reader.both(most, 'pressure')} is more than house fittings are meant for. Fit a "
                "pressure reducer: plumbing codes commonly allow 80 psi (5.5 bar) at a tap.",
            )
        )
    found.append(
        Warning("note", "This is for standing water. Running water loses more, to friction.")
    )
    return tuple(found)


def _links(state, values, reader):
    if state.gauge > REACH_MOST or abs(state.climb) > REACH_CLIMB:
        return ()
    given = {
        "pressure": reader.typed(state.gauge, "pressure"),
        "climb": reader.typed(state.climb, "length"),
    }
    return (Link("Now with pipe and taps: will it reach?", "reach", given),)


SHEET = Sheet(
    "pressure",
    "Pressure and head",
    FIELDS,
    solve,
    folded=("Water and altitude",),
    cautions=(
        "Never exceed the rating of the weakest part; the lowest point carries the highest "
        "pressure.",
        "Let the pressure out before you open a joint or take off a gauge.",
    ),
    sources=(
        "Unit factors: NIST Special Publication 811 (2008), appendix B.8.",
        "Water density: IAPWS SR6-08(2011). Air pressure: ISO 2533:1975.",
    ),
    page="pressure/",
)
