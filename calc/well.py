"""A slow well: what it and its pump give in a day, counting the water that gathers meanwhile."""

import math

from calc.errors import require
from calc.units import DAY, HOUR

HOURS = 24


def daily(yield_m3s: float, pump_m3s: float, hours: float, stored_m3: float) -> float:
    """Water a well and its pump give in a day that repeats.

    V = min(Q_p t, Q_w t + min(W, Q_w (24 h - t)))
    yield_m3s: Q_w, what flows into the well, m3/s, 0 to 10; pump_m3s: Q_p, m3/s, 0 to 10;
    hours: t, 0 to 24, hours a day the pump can run; stored_m3: W, water standing in the well
    above the lowest level allowed, m3, 0 to 1e5: it is drawn first and gathers again while the
    pump rests.
    Returns m3.  Raises RangeError outside.
    Source: volume balance of the well over one day.

    >>> round(daily(1e-4, 5e-4, 6.0, 0.5), 6)
    2.66
    """
    require("yield", yield_m3s, 0.0, 10.0, "flow")
    require("pump", pump_m3s, 0.0, 10.0, "flow")
    require("hours", hours, 0.0, 24.0, "number", "A day has 24 hours.")
    require("stored", stored_m3, 0.0, 1e5, "volume")
    run, rest = hours * HOUR, (HOURS - hours) * HOUR
    return min(pump_m3s * run, yield_m3s * run + min(stored_m3, yield_m3s * rest))


def hours_for(use_m3: float, yield_m3s: float, pump_m3s: float, stored_m3: float) -> float:
    """Hours a day the pump must be able to run for a use: ``daily`` solved for the hours.

    t = max(V / Q_p, (V - W) / Q_w)
    use_m3: V, m3 a day, 0 or more; the rest as ``daily``.
    Returns hours; infinite where even 24 hours of pump or well do not give it.
    Source: volume balance of the well over one day.

    >>> round(hours_for(2.66, 1e-4, 5e-4, 0.5), 6)
    6.0
    """
    if use_m3 <= 0:
        return 0.0
    if use_m3 > DAY * min(yield_m3s, pump_m3s):
        return math.inf
    return max(use_m3 / pump_m3s, (use_m3 - stored_m3) / yield_m3s) / HOUR


def hourly(
    yield_m3s: float, pump_m3s: float, hours: float, stored_m3: float, middle: float = 12.5
) -> tuple[float, ...]:
    """What ``daily`` gives in each hour, the pump running about the hour ``middle``.

    The pump gives its own flow until the stored water is drawn, then what flows in.
    Arguments as ``daily``; middle: hour of day, 0 to 24.
    Returns 24 volumes, m3, adding up to ``daily``.  Raises RangeError outside.
    Source: volume balance of the well.
    """
    require("middle", middle, 0.0, 24.0, "number", "An hour of the day.")
    volume = daily(yield_m3s, pump_m3s, hours, stored_m3)
    slow = min(yield_m3s, pump_m3s)
    fast = (volume - slow * hours * HOUR) / (pump_m3s - slow) / HOUR if pump_m3s > slow else 0.0
    fast = min(max(fast, 0.0), hours)  # the last bit may fall outside
    start = middle - hours / 2
    return tuple(
        HOUR
        * (pump_m3s * overlap(start, fast, hour) + slow * overlap(start + fast, hours - fast, hour))
        for hour in range(HOURS)
    )


def overlap(start_h: float, length_h: float, hour: float) -> float:
    """Part of one hour of the day that lies in a window that opens every day.

    start_h: hour of day the window opens, any; length_h: hours, 0 to 24; hour: 0 to 23.
    Returns 0 to 1.  Raises RangeError for the length.  Source: geometry.

    >>> overlap(23.5, 1.0, 0)
    0.5
    """
    require("hours", length_h, 0.0, 24.0, "number", "A day has 24 hours.")
    first = start_h % HOURS
    return sum(
        max(0.0, min(hour + 1, opens + length_h) - max(hour, opens))
        for opens in (first - HOURS, first)
    )
