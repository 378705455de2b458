"""Storage: a tank by balance hour by hour, a tank up a hill, and an air-charged pressure tank."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError, require
from calc.units import DAY, GRAVITY

if TYPE_CHECKING:
    from collections.abc import Sequence

HOURS = 24


def _shares(weights: tuple[float, ...]) -> tuple[float, ...]:
    total = sum(weights)
    return tuple(w / total for w in weights)


# Share of the day's water used in each hour from midnight; common practice, no source
PATTERNS = {
    "even": _shares((1,) * 24),
    "home": _shares((1, 1, 1, 1, 1, 3, 8, 10, 8, 5, 4, 4, 5, 4, 3, 3, 4, 6, 9, 9, 7, 5, 3, 2)),
    "dawn": _shares((0, 0, 0, 0, 6, 6, 6, 3, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 2, 2, 0, 0, 0, 0)),
    "day": _shares((0, 0, 0, 0, 0, 1, 2, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 2, 1, 0, 0, 0, 0, 0)),
}


def supply_pattern(hours: float, middle: float = 12.5) -> tuple[float, ...]:
    """Share of the day's supply in each hour: steady over ``hours`` about the hour ``middle``.

    hours: 0.5 to 24, hours the pump or source runs a day; middle: hour of day, 0 to 24.
    Returns 24 shares adding to 1.  Raises RangeError outside.  Source: proportion.
    """
    require("hours", hours, 0.5, 24.0, "number", "A day has 24 hours.")
    start = middle - hours / 2
    shares = [0.0] * HOURS
    for day in (-1, 0, 1):
        for hour in range(HOURS):
            low, high = hour + 24 * day, hour + 1 + 24 * day
            shares[hour] += max(0.0, min(high, start + hours) - max(low, start)) / hours
    return tuple(shares)


@dataclass(frozen=True)
class Balance:
    """A day that repeats: volumes in m3.

    ``swing``: the least tank that evens the day out; ``levels``: water in a tank of that size at
    the start of each hour and at the end; ``surplus``: supply over use (negative: short).
    """

    swing: float
    levels: tuple[float, ...]
    surplus: float


def daily_balance(
    use_m3: float, shares: Sequence[float], supply_m3: float, supply_shares: Sequence[float]
) -> Balance:
    """The smallest tank that never runs dry on a day that repeats (sequent peak).

    K_t = max(0, K_t-1 + D_t - S_t), V = max K over a day that repeats
    K is what is missing from a full tank, D use and S supply of the hour; a full tank takes no
    more.  use_m3, supply_m3: m3 a day, 0 to 1e6; shares, supply_shares: 24 shares adding to 1.
    Where the supply is short, the balance is that of the water there is.
    Returns ``Balance``.  Raises InputError for shares that do not add to 1, RangeError outside.
    Source: W. Rippl, Proc. Inst. Civ. Eng. 71 (1883) 270-278 (mass curve), with the overflow
    counted as by H. A. Thomas and R. P. Burden (sequent peak, 1963, from memory).

    >>> half = (1 / 12,) * 12 + (0,) * 12
    >>> round(daily_balance(1.0, half[::-1], 1.0, half).swing, 12)
    1.0
    """
    for name, parts in (("use", shares), ("supply", supply_shares)):
        if len(parts) != HOURS or abs(sum(parts) - 1) > 1e-9 or min(parts) < 0:
            raise InputError(f"The hourly shares of {name} must be 24 numbers adding to 1.")
    require("use_m3", use_m3, 0.0, 1e6, "volume")
    require("supply_m3", supply_m3, 0.0, 1e6, "volume")
    drawn = min(use_m3, supply_m3)
    hours = [drawn * u - supply_m3 * s for u, s in zip(shares, supply_shares, strict=True)]
    missing = 0.0
    for change in hours:  # a first day, to reach the state that repeats
        missing = max(0.0, missing + change)
    missed = [missing]
    for change in hours:
        missed.append(max(0.0, missed[-1] + change))
    swing = max(missed)
    return Balance(swing, tuple(swing - one for one in missed), supply_m3 - use_m3)


def tank_volume(swing_m3: float, use_m3: float, days: float, usable: float) -> float:
    """Tank for the day's swing and for days without any supply.

    V = (V_swing + V_day n) / u
    swing_m3, use_m3: m3, 0 or more; days: n, 0 to 60; usable: share of the tank above the outlet
    and below the overflow, 0.3 to 1.  Returns m3.  Raises RangeError outside.
    Source: sum of the two needs, common practice.

    >>> tank_volume(1.0, 2.0, 3.0, 1.0)
    7.0
    """
    require("days", days, 0.0, 60.0, "number")
    require("usable", usable, 0.3, 1.0, "percent", "Some water stays below the outlet.")
    return (swing_m3 + use_m3 * days) / usable


def level_over_days(
    volume_m3: float,
    start_m3: float,
    use_m3: float,
    shares: Sequence[float],
    supply_m3: float,
    supply_shares: Sequence[float],
    dry_days: float,
    days: float,
) -> tuple[tuple[float, ...], float]:
    """Level of water hour by hour, the supply failing for the first ``dry_days`` days.

    V_t = min(V, max(0, V_t-1 + S_t - D_t))
    volume_m3, start_m3: m3; use_m3, supply_m3: m3 a day; dry_days: 0 or more, counted in whole
    hours; days: whole days.  Overflow is lost; what an empty tank could not give is counted.
    Returns (levels m3, at the start and after each hour; unmet m3).  Source: conservation.
    """
    level, unmet, off = min(start_m3, volume_m3), 0.0, dry_days * HOURS - 1e-9
    levels = [level]
    for hour in range(int(days) * HOURS):
        supply = supply_m3 * supply_shares[hour % HOURS] if hour >= off else 0.0
        level = min(level + supply - use_m3 * shares[hour % HOURS], volume_m3)
        if level < 0:
            unmet -= level
            level = 0.0
        levels.append(level)
    return tuple(levels), unmet


def gravity_pressure(height_m: float, loss_m: float, density: float) -> float:
    """Pressure at an outlet from a tank above it.

    p = rho g (z - h_f)
    height_m: m from outlet up to the water's surface; loss_m: m of friction, 0 or more;
    density: kg/m3.  Returns Pa, negative where the water does not run.  Source: hydrostatics.
    """
    return density * GRAVITY * (height_m - loss_m)


def height_for_pressure(pressure_pa: float, loss_m: float, density: float) -> float:
    """How high a tank's water must stand above an outlet for a pressure there.

    z = p / (rho g) + h_f
    pressure_pa: gauge Pa; loss_m: m of friction, 0 or more; density: kg/m3.  Returns m.
    Source: hydrostatics.
    """
    return pressure_pa / (density * GRAVITY) + loss_m


def drawdown(
    tank_m3: float, precharge_pa: float, cut_in_pa: float, cut_out_pa: float, air_pa: float
) -> float:
    """Water an air-charged tank gives between cut-out and cut-in, the air keeping its temperature.

    V_d = V (p_0 + p_a)/(p_1 + p_a) - V (p_0 + p_a)/(p_2 + p_a)
    tank_m3: whole volume, m3, above 0; precharge_pa, cut_in_pa, cut_out_pa: gauge Pa, with
    precharge at most cut-in and cut-in below cut-out; air_pa: outside air, Pa absolute.
    Returns m3.  Raises InputError where the pressures are in the wrong order.
    Source: Boyle's law.

    >>> round(drawdown(0.1, 2e5, 2e5, 4e5, 1e5), 4)
    0.04
    """
    require("tank_m3", tank_m3, 1e-5, 100.0, "volume", "Give the tank's whole volume.")
    require("precharge_pa", precharge_pa, 0.0, 20e5, "pressure")
    if not cut_in_pa < cut_out_pa:
        raise InputError(
            "The pump must stop at a higher pressure than it starts.", name="cut_out_pa"
        )
    if precharge_pa > cut_in_pa:
        raise InputError(
            "The pre-charge must not be above the pressure at which the pump starts: the tank "
            "would be empty before it does. Usual: 0.14 bar (2 psi) below.",  # common practice
            name="precharge_pa",
        )
    full = tank_m3 * (precharge_pa + air_pa)
    return full / (cut_in_pa + air_pa) - full / (cut_out_pa + air_pa)


def tank_for_drawdown(
    drawdown_m3: float, precharge_pa: float, cut_in_pa: float, cut_out_pa: float, air_pa: float
) -> float:
    """Whole volume of an air-charged tank for a drawdown: ``drawdown`` solved for V.

    drawdown_m3: m3, above 0; pressures as ``drawdown``.  Returns m3.  Raises as ``drawdown``.
    Source: Boyle's law.
    """
    return drawdown_m3 / drawdown(1.0, precharge_pa, cut_in_pa, cut_out_pa, air_pa)


def starts_rate(drawdown_m3: float, pump_m3s: float, demand_m3s: float) -> float:
    """Pump starts per second with a steady demand below the pump's flow.

    n = Q_d (Q_p - Q_d) / (V_d Q_p): the tank empties at Q_d and fills at Q_p - Q_d
    drawdown_m3: m3, above 0; pump_m3s: m3/s, above 0; demand_m3s: 0 to pump_m3s.
    Returns 1/s; 0 at no demand and at full demand.  Raises RangeError outside.
    Source: volume balance over one cycle.
    """
    require("drawdown_m3", drawdown_m3, 1e-9, 100.0, "volume")
    require("pump_m3s", pump_m3s, 1e-9, 10.0, "flow")
    require("demand_m3s", demand_m3s, 0.0, pump_m3s, "flow", "The pump never stops.")
    return demand_m3s * (pump_m3s - demand_m3s) / (drawdown_m3 * pump_m3s)


def most_starts_rate(drawdown_m3: float, pump_m3s: float) -> float:
    """Starts per second at the worst demand, half the pump's flow.

    n = Q_p / (4 V_d)
    drawdown_m3: m3; pump_m3s: m3/s.  Returns 1/s.  Source: maximum of ``starts_rate``.
    """
    return starts_rate(drawdown_m3, pump_m3s, pump_m3s / 2)


def drawdown_for_starts(pump_m3s: float, rate: float) -> float:
    """Drawdown that keeps the worst case to a number of starts.

    V_d = Q_p / (4 n)
    pump_m3s: m3/s; rate: n, 1/s, 1e-9 to 1.  Returns m3.  Raises RangeError outside.
    Source: ``most_starts_rate`` solved for V_d.
    """
    require("rate", rate, 1e-9, 1.0, "per_hour")
    return pump_m3s / (4 * rate)


def leak_starts_rate(drawdown_m3: float, leak_m3s: float) -> float:
    """Starts per second from a leak far below the pump's flow, the pump refilling at once.

    n = Q_l / V_d
    drawdown_m3: m3, above 0; leak_m3s: m3/s, 0 or more.  Returns 1/s.
    Raises RangeError outside.  Source: limit of ``starts_rate`` for a small demand.

    >>> round(leak_starts_rate(0.03, 1e-6) * 3600, 9)
    0.12
    """
    require("drawdown_m3", drawdown_m3, 1e-9, 100.0, "volume")
    require("leak_m3s", leak_m3s, 0.0, 10.0, "flow")
    return leak_m3s / drawdown_m3


def run_time(drawdown_m3: float, pump_m3s: float, demand_m3s: float) -> float:
    """How long the pump runs in one cycle; shortest where nothing is drawn.

    t = V_d / (Q_p - Q_d)
    drawdown_m3: m3; pump_m3s: m3/s; demand_m3s: 0 to pump_m3s.  Returns s, infinite at full
    demand.  Raises RangeError outside.  Source: volume balance over one cycle.
    """
    require("demand_m3s", demand_m3s, 0.0, pump_m3s, "flow", "The pump never stops.")
    spare = pump_m3s - demand_m3s
    return drawdown_m3 / spare if spare > 0 else math.inf


def days_to_recover(volume_m3: float, supply_m3_day: float, use_m3_day: float) -> float:
    """Time to fill a volume with what the supply gives over the use.

    t = V / (S - D)
    volume_m3: m3; supply_m3_day, use_m3_day: m3 a day.  Returns s, infinite where nothing is
    left over.  Source: volume balance.
    """
    surplus = supply_m3_day - use_m3_day
    return volume_m3 / surplus * DAY if surplus > 0 else math.inf
