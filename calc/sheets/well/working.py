"""Working of the well sheet: from what is known to yield, store, levels and times."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, recovery, well_yield
from calc.page.answer import Step, Value
from calc.sheets.well.case import MOST_YIELD, USABLE
from calc.units import GRAVITY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.well.case import Case

WHY = {
    recovery.FEW: "Too few readings are left once the well's own water has filled: fewer than "
    f"{recovery.LEAST_POINTS}.",
    recovery.SCATTER: "The readings are not on a straight line.",
    recovery.FALLS: "The level hardly recovers.",
}


def steps(case: Case) -> tuple[Step, ...]:
    """From what is known to yield, store, levels and times."""
    known = {"bucket": _bucket, "levels": _by_levels, "recovery": _by_recovery, "told": _told}
    return (
        *known[case.known](case),
        *_stored(case),
        *_level(case),
        *_lasts(case),
        *_tank(case),
        *_in_the_well(case),
        _head(case),
    )


def _bucket(case: Case) -> Iterator[Step]:
    values = case.values
    whole = well_yield.bucket_store(values.drawn, values.minutes, values.steady)
    share = values.steady * values.minutes / values.drawn
    given = {
        "Q_w": Value(values.steady, "flow"),
        "t": Value(values.minutes, "minutes"),
        "V": Value(values.drawn, "volume"),
    }
    note = (
        "What was drawn first came in part from the store, in part from what flowed in, ever more "
        "as the level fell."
    )
    if 1e-9 < share < 1 - 1e-9:
        yield Step("Water that was stored in the well", "W = -Q_w * t / log(1 - Q_w * t / V)",
                   given, Value(whole, "volume"), note=note,
                   source="Volume balance of the well, our own derivation")  # fmt: skip
    else:
        yield Step("Water that was stored in the well", result=Value(whole, "volume"), note=note)


def _by_levels(case: Case) -> Iterator[Step]:
    values = case.values
    given = {
        "Q": Value(values.tested, "flow"),
        "z_p": Value(values.pumping, "length"),
        "z_0": Value(values.static, "length"),
    }
    capacity = values.tested / (values.pumping - values.static)
    yield Step("Flow for a drawdown of one metre", "C = Q / (z_p - z_0)", given,
               Value(capacity, "flow"), note="The specific capacity.",
               source="Definition")  # fmt: skip
    yield _yield(case, capacity)


def _yield(case: Case, capacity: float) -> Step:
    given = {
        "C": Value(capacity, "flow"),
        "z_i": Value(case.intake, "length"),
        "c": Value(case.values.cover, "length"),
        "z_0": Value(case.static, "length"),
        "Q_most": Value(MOST_YIELD, "flow"),
    }
    note = "Inflow is taken as in step with the drawdown, to the lowest level: c above the intake."
    return Step("Well yield", "Q_w = min(C * (z_i - c - z_0), Q_most)", given,
                Value(case.yields, "flow"), note=note)  # fmt: skip


def _by_recovery(case: Case) -> Iterator[Step]:
    test, values = case.test, case.values
    drawn = max(values.readings[0].level - case.static, 0.0)
    if test.transmissivity is None:
        yield from _simple(case)
    else:
        pumped = Value(values.rate, "flow")
        slope = Value(test.line.slope, "length")
        yield Step("Transmissivity of the ground", "T = log(10) * Q / (4 * pi * Delta_s)",
                   {"Q": pumped, "Delta_s": slope}, Value(test.transmissivity, "number"),
                   note=f"In square metres per second, by {len(test.kept)} readings on a straight "
                   "line: Delta_s is its rise for each tenfold of the time since the start over "
                   "the time since the stop. Earlier readings are left out while the well's own "
                   "water fills.",
                   source="Theis (1935); Papadopulos (1967), from memory")  # fmt: skip
        given = {
            "Q": pumped,
            "s": Value(drawn, "length"),
            "Delta_s": slope,
            "t": Value(practice.LASTING, "days"),
            "t_p": Value(values.pumped, "minutes"),
        }
        yield Step("Flow for a drawdown of one metre, after 100 days",
                   "C = Q / (s + Delta_s * log10(t / t_p))", given,
                   Value(test.capacity, "flow"),
                   note="The drawdown at the stop is carried on along the line, without rain.",
                   source="Cooper and Jacob (1946)")  # fmt: skip
    yield _yield(case, test.capacity)


def _simple(case: Case) -> Iterator[Step]:
    values, test = case.values, case.test
    times = [row.time for row in values.readings]
    levels = [row.level for row in values.readings]
    yield Step(
        "Why not by Theis' line",
        note=f"{WHY[test.why]} So what flowed in is taken from how fast the level recovers.",
    )
    yield Step(
        "What flowed in, on average",
        "Q_in = pi / 4 * d**2 * (z_1 - z_n) / t",
        {
            "d": Value(case.casing, "diameter"),
            "z_1": Value(levels[0], "length"),
            "z_n": Value(levels[-1], "length"),
            "t": Value(times[-1], "minutes"),
        },
        Value(recovery.coming_in(case.casing, times, levels), "flow"),
        note="Over all of the readings.",
        source="Volume balance of the well",
    )
    yield Step(
        "Flow for a drawdown of one metre",
        result=Value(test.capacity, "flow"),
        note="The level comes back as an exponential: by its first reading and the last at which "
        "a twentieth of the drawdown or more is left.",
    )


def _told(case: Case) -> Iterator[Step]:
    yield Step("Well yield", result=Value(case.yields, "flow"),
               note="As you were told, at the lowest level you allow.")  # fmt: skip


def _stored(case: Case) -> Iterator[Step]:
    if case.casing is None:
        return
    holds = well_yield.standing(case.casing, case.drawdown)
    note = "What pump and pipe take up in it is not counted off."
    if case.known == "bucket":
        note += " Of this and what the test found, the smaller counts."
    yield Step(
        "What the well holds above the lowest level",
        "W_h = pi / 4 * d**2 * (z_i - c - z_0)",
        {
            "d": Value(case.casing, "diameter"),
            "z_i": Value(case.intake, "length"),
            "c": Value(case.values.cover, "length"),
            "z_0": Value(case.static, "length"),
        },
        Value(holds, "volume"),
        note=note,
    )


def _level(case: Case) -> Iterator[Step]:
    if case.yields <= 0:
        return
    yield Step(
        "Level while the pump runs",
        "z = z_0 + (z_i - c - z_0) * min(1, Q_p / Q_w)",
        {
            "z_0": Value(case.static, "length"),
            "z_i": Value(case.intake, "length"),
            "c": Value(case.values.cover, "length"),
            "Q_p": Value(case.pump, "flow"),
            "Q_w": Value(case.yields, "flow"),
        },
        Value(case.level, "length"),
    )


def _lasts(case: Case) -> Iterator[Step]:
    """How long the pump may run, and how long the well rests."""
    if case.keeps_up or not case.stored or case.yields <= 0:
        return
    given = {"W": Value(case.stored, "volume"), "Q_w": Value(case.yields, "flow")}
    yield Step(
        "How long the pump may run",
        "t_e = W / Q_w * log(Q_p / (Q_p - Q_w))",
        {**given, "Q_p": Value(case.pump, "flow")},
        Value(case.runs, "minutes"),
        note="From the static level to the lowest.",
        source="Volume balance of the well, our own derivation",
    )
    yield Step(
        "Rest until half has come back",
        "t_r = W / Q_w * log(2)",
        given,
        Value(case.rests(0.5), "minutes"),
        note="The last of it comes slowly: the nearer to rest, the less flows in.",
    )


def _tank(case: Case) -> Iterator[Step]:
    if case.yields <= 0:
        return
    yield Step(
        "Storage tank that evens out the day",
        "V_t = max(V_s, V_b - V_day / 86400 * t_b) / u",
        {
            "V_s": Value(case.swing, "volume"),
            "V_b": Value(case.values.peak, "volume"),
            "V_day": Value(case.use, "volume"),
            "t_b": Value(case.values.peakfor, "minutes"),
            "u": Value(USABLE, "percent"),
        },
        Value(case.tank, "volume"),
        note="V_s: the most that is missing on a day that repeats, filled evenly day and night. "
        "V_b: the busiest time, less what flows in meanwhile. 90 % of a tank can be used.",
        source="Mass curve: W. Rippl (1883)",
    )


def _in_the_well(case: Case) -> Iterator[Step]:
    """Cooling and the pressure at a submersible pump."""
    if case.cooling is not None:
        yield Step(
            "Water speed past the motor",
            "v = Q_p / (pi / 4 * (D**2 - d_m**2))",
            {
                "Q_p": Value(case.pump, "flow"),
                "D": Value(case.about, "diameter"),
                "d_m": Value(case.values.motor, "diameter"),
            },
            Value(case.cooling, "speed"),
            note="D is the inside of the sleeve, or of the well.",
        )
    if case.submersible:
        yield Step(
            "Static pressure at the pump",
            "p_p = p + rho_g * (z_i + h)",
            {**_sensor(case), "z_i": Value(case.intake, "length")},
            Value(case.pump_pressure, "pressure"),
            note="In the drop pipe, with the pump at rest.",
        )


def _sensor(case: Case) -> dict[str, Value]:
    return {
        "p": Value(case.values.set, "pressure"),
        "rho_g": Value(case.weight, "number", 5),
        "h": Value(case.rise, "length"),
    }


def _head(case: Case) -> Step:
    return Step(
        "Head the pump must make",
        "H = z + h + p / rho_g",
        {**_sensor(case), "z": Value(case.level, "length")},
        Value(case.head, "head"),
        note="From the water's level up to where the pressure is sensed, without friction. rho_g "
        f"is the density at 15 °C (59 °F) times {GRAVITY:g} m/s².",
    )
