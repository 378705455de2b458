"""A well as a store that fills in step with its drawdown: yield, levels, how long a pump may run.

What flows in is taken as in step with how far the level is drawn down, so that a well is told by
two numbers: its yield, what flows in at the lowest level that is allowed, and the water stored
between that level and rest.  Emptying and filling then follow an exponential, in closed form.
"""

from __future__ import annotations

import math

from calc import practice
from calc.errors import InputError, require
from calc.units import MET


def bucket_store(drawn_m3: float, time_s: float, steady_m3s: float) -> float:
    """Water that was stored in the well, from a test with a steady pump.

    W = -Q_w t / ln(1 - Q_w t / V): of V some flowed in meanwhile, ever more as the level fell
    drawn_m3: V, m3 drawn before the flow fell, 1e-6 to 1e4; time_s: t, s that it took, 1 to 1e7;
    steady_m3s: Q_w, m3/s that then came, 0 to V/t.
    Returns m3.  Raises RangeError outside, InputError where more came afterwards than before.
    Source: volume balance of the well, inflow in step with the drawdown.

    >>> round(bucket_store(0.2, 1800.0, 5e-5), 4)
    0.1505
    """
    require("drawn_m3", drawn_m3, 1e-6, 1e4, "volume")
    require("time_s", time_s, 1.0, 1e7, "time")
    require("steady_m3s", steady_m3s, 0.0, 10.0, "flow")
    share = steady_m3s * time_s / drawn_m3
    if share > MET:
        text = "The steady flow is more than what was drawn at first. Enter the later, smaller flow"
        raise InputError(text, name="steady_m3s")
    if share >= 1:
        return 0.0
    return drawn_m3 if share < 1e-12 else -drawn_m3 * share / math.log1p(-share)


def standing(bore_m: float, depth_m: float) -> float:
    """Water that stands in a length of the well.

    W = pi/4 d**2 h
    bore_m: d, m, inside diameter, 0.03 to 10; depth_m: h, m, 0 to 1000.  What pump and pipe in it
    take up is not counted off.
    Returns m3.  Raises RangeError outside.  Source: geometry.

    >>> round(standing(0.1, 10.0), 4)
    0.0785
    """
    require("bore_m", bore_m, 0.03, 10.0, "length")
    require("depth_m", depth_m, 0.0, 1000.0, "length")
    return math.pi / 4 * bore_m**2 * depth_m


def drawn_share(yield_m3s: float, flow_m3s: float) -> float:
    """Share of the whole drawdown at which as much flows in as is drawn, or on average over a day.

    y = min(1, Q / Q_w)
    yield_m3s: Q_w, m3/s at the lowest level; flow_m3s: Q, m3/s; both 0 or more.
    Returns a share, 0 to 1.  Raises nothing.  Source: inflow in step with the drawdown.
    """
    if flow_m3s <= 0:
        return 0.0
    return 1.0 if flow_m3s >= yield_m3s else flow_m3s / yield_m3s


def time_to_empty(yield_m3s: float, stored_m3: float, pump_m3s: float, start: float = 0.0) -> float:
    """How long a pump may run until the level is at its lowest.

    t = W / Q_w ln((Q_p - y Q_w) / (Q_p - Q_w)); without inflow W (1 - y) / Q_p
    yield_m3s: Q_w, m3/s at the lowest level, 0 to 10; stored_m3: W, m3 from rest to there, 0 to
    1e5; pump_m3s: Q_p, m3/s, 0 to 10; start: y, share drawn down as it starts, 0 to 1.
    Returns s; infinite where the pump takes no more than the yield.  Raises RangeError outside.
    Source: volume balance of the well, inflow in step with the drawdown.

    >>> round(time_to_empty(5e-5, 0.1505, 2e-4))
    866
    """
    require("yield_m3s", yield_m3s, 0.0, 10.0, "flow")
    require("stored_m3", stored_m3, 0.0, 1e5, "volume")
    require("pump_m3s", pump_m3s, 0.0, 10.0, "flow")
    require("start", start, 0.0, 1.0, "percent")
    if pump_m3s <= yield_m3s * MET:
        return math.inf
    if yield_m3s < 1e-12 * pump_m3s:
        return stored_m3 * (1 - start) / pump_m3s
    more = yield_m3s * (1 - start) / (pump_m3s - yield_m3s)
    return stored_m3 / yield_m3s * math.log1p(more)


def time_to_recover(yield_m3s: float, stored_m3: float, share: float) -> float:
    """How long the well rests until a share of what was drawn from it has come back.

    t = W / Q_w ln(1 / (1 - f))
    yield_m3s: Q_w, m3/s at the lowest level, 0 to 10; stored_m3: W, m3, 0 to 1e5; share: f, 0 to
    0.999.
    Returns s; infinite without inflow.  Raises RangeError outside.
    Source: volume balance of the well, inflow in step with the drawdown.

    >>> round(time_to_recover(5e-5, 0.15, 0.5))
    2079
    """
    require("yield_m3s", yield_m3s, 0.0, 10.0, "flow")
    require("stored_m3", stored_m3, 0.0, 1e5, "volume")
    require("share", share, 0.0, 0.999, "percent")
    if stored_m3 * share == 0:
        return 0.0
    return -stored_m3 / yield_m3s * math.log1p(-share) if yield_m3s > 0 else math.inf


def most_over(yield_m3s: float, stored_m3: float, time_s: float, start: float) -> float:
    """The most that can be drawn steadily for a time, the level then being at its lowest.

    Q = Q_w (1 - y e) / (1 - e), e = exp(-Q_w t / W)
    yield_m3s: Q_w, m3/s at the lowest level, 0 to 10; stored_m3: W, m3, 0 to 1e5; time_s: t, s, 1
    to 1e7; start: y, share drawn down before, 0 to 1.
    Returns m3/s.  Raises RangeError outside.
    Source: volume balance of the well, inflow in step with the drawdown.

    >>> round(most_over(5e-5, 0.15, 3600.0, 0.0) / 5e-5, 3)
    1.431
    """
    require("yield_m3s", yield_m3s, 0.0, 10.0, "flow")
    require("stored_m3", stored_m3, 0.0, 1e5, "volume")
    require("time_s", time_s, 1.0, 1e7, "time")
    require("start", start, 0.0, 1.0, "percent")
    if stored_m3 <= 0:
        return yield_m3s
    times = yield_m3s * time_s / stored_m3
    if times < 1e-12:
        return stored_m3 * (1 - start) / time_s
    filled = -math.expm1(-times)  # 1 - e
    return yield_m3s * (1 + (1 - start) * (1 - filled) / filled)


# The pump in it --------------------------------------------------------------------------------


def cooling_speed(flow_m3s: float, bore_m: float, pump_m: float) -> float:
    """How fast water passes a pump's motor in a well or a sleeve.

    v = Q / (pi/4 (D**2 - d**2))
    flow_m3s: Q, m3/s that the pump takes; bore_m: D, m, inside diameter of the well or of the
    sleeve about the motor; pump_m: d, m, outside diameter of the motor, less than D.
    Returns m/s.  Raises InputError where the motor does not fit.  Source: continuity.

    >>> round(cooling_speed(5e-4, 0.125, 0.096), 3)
    0.099
    """
    if pump_m >= bore_m:
        raise InputError("The pump does not fit: it is as wide as what is about it", name="pump_m")
    return flow_m3s / (math.pi / 4 * (bore_m**2 - pump_m**2))


def sleeve_bore(flow_m3s: float, pump_m: float, speed_ms: float) -> float:
    """The widest sleeve in which water passes a motor at a speed: ``cooling_speed`` turned round.

    D = sqrt(d**2 + 4 Q / (pi v))
    flow_m3s: Q, m3/s; pump_m: d, m; speed_ms: v, m/s, above 0.
    Returns m.  Raises RangeError for the speed.  Source: continuity.

    >>> round(sleeve_bore(5e-4, 0.096, 0.0989), 3)
    0.125
    """
    require("speed_ms", speed_ms, 1e-6, 10.0, "speed")
    return math.sqrt(pump_m**2 + 4 * flow_m3s / (math.pi * speed_ms))


def least_cooling(pump_m: float) -> float:
    """The least speed of water past a motor that is usual for its size.

    pump_m: m, outside diameter.  Returns m/s.  Raises nothing.  Source: common practice, no
    source.
    """
    small = pump_m <= practice.SMALL_MOTOR * MET
    return practice.COOLING_SMALL if small else practice.COOLING_LARGE


def check_valves(length_m: float) -> int:
    """Check valves in a drop pipe besides the one at the pump.

    n = ceil(L / 60 m) - 1
    length_m: L, m, 0 to 1000.  Returns a count.  Raises RangeError outside.
    Source: common practice, no source.

    >>> check_valves(40.0), check_valves(61.0)
    (0, 1)
    """
    require("length_m", length_m, 0.0, 1000.0, "length")
    return max(0, math.ceil(length_m / practice.CHECK_VALVES_EVERY - 1e-9) - 1)
