"""Hot water: how it grows, what an expansion tank takes up, the pipe to a tap, mixing, scalding."""

from __future__ import annotations

import itertools
import math
from typing import TYPE_CHECKING

from calc import practice, storage, water
from calc.errors import require
from calc.pipe import wall

if TYPE_CHECKING:
    from calc.pipe.wall import Material

STEEL = wall.MATERIALS["steel"]
_REMEDY = "Heated water is warmer than the water that comes in."


def _heated(cold_k: float, hot_k: float) -> None:
    require("cold_k", cold_k, water.COLDEST, water.HOTTEST, "temperature")
    require("hot_k", hot_k, cold_k, water.HOTTEST, "temperature", _REMEDY)


def growth(volume_m3: float, cold_k: float, hot_k: float) -> float:
    """Water that no longer fits into a heater full of cold water once it is hot.

    Delta_V = V (rho_c / rho_h - 1)
    volume_m3: m3, 1e-6 to 100; cold_k: K, 273.15 to 373.15; hot_k: K, cold_k to 373.15.
    Returns m3 of hot water; below 0 where water below 4 degC is hardly heated.
    Raises RangeError outside.  Source: conservation of mass, density by ``water``.

    >>> round(growth(0.2, 288.15, 333.15) * 1e3, 2)
    3.24
    """
    _heated(cold_k, hot_k)
    require("volume_m3", volume_m3, 1e-6, 100.0, "volume")
    return volume_m3 * (water.density(cold_k) / water.density(hot_k) - 1)


def tank_needed(
    growth_m3: float, precharge_pa: float, static_pa: float, most_pa: float, air_pa: float
) -> float:
    """Whole volume of an expansion tank that takes up a growth below a pressure.

    V_t = Delta_V / ((p_0 + p_a) (1 / (p_s + p_a) - 1 / (p_m + p_a))); with p_0 = p_s the same as
    Delta_V / (1 - (p_0 + p_a) / (p_m + p_a))
    growth_m3: m3, 0 or more; precharge_pa: p_0, Pa gauge, 0 to 20e5; static_pa: p_s, of the cold
    system, Pa gauge (below p_0 the tank takes nothing until p_0, which then counts); most_pa: p_m,
    Pa gauge; air_pa: Pa.  Returns m3, infinite where p_m is not above p_s or p_0.
    Raises RangeError outside.  Source: Boyle's law; ``storage.tank_for_drawdown``.

    >>> round(tank_needed(0.00324, 3e5, 3e5, 6.3e5, 1e5) * 1e3, 2)
    7.17
    """
    start = max(precharge_pa, static_pa)
    if most_pa <= start:
        return math.inf
    return storage.tank_for_drawdown(max(growth_m3, 0.0), precharge_pa, start, most_pa, air_pa)


def pressure_reached(
    growth_m3: float, tank_m3: float, precharge_pa: float, static_pa: float, air_pa: float
) -> float:
    """Pressure once an expansion tank has taken up a growth, were there no relief valve.

    p = (p_s + p_a) V_g / (V_g - Delta_V) - p_a, V_g = V_t (p_0 + p_a) / (p_s + p_a)
    growth_m3: m3; tank_m3: m3, 1e-5 to 100; pressures as ``tank_needed``, p_s at least p_0.
    Returns Pa gauge, infinite where the tank is full before.  Raises RangeError outside.
    Source: Boyle's law.

    >>> round(pressure_reached(0.002, 0.008, 3e5, 3e5, 1e5) / 1e5, 3)
    4.333
    """
    require("tank_m3", tank_m3, 1e-5, 100.0, "volume")
    start = max(precharge_pa, static_pa)
    gas = tank_m3 * (precharge_pa + air_pa) / (start + air_pa)
    if growth_m3 >= gas:
        return math.inf
    return (start + air_pa) * gas / (gas - max(growth_m3, 0.0)) - air_pa


def locked_rise(
    grown: float, hot_k: float, slender: float = practice.HEATER_SLENDER, metal: Material = STEEL
) -> float:
    """Rise of pressure in a heater that nothing leaves: water and wall give way, and no more.

    Delta_p = (Delta_V / V) / (1 / K + (5/4 - nu) (D / e) / E)
    grown: Delta_V / V, share, 0 to 0.1; hot_k: K, 273.15 to 373.15; slender: D / e of its wall,
    10 to 1000; metal: ``wall.Material``.  Returns Pa; a pressure that no heater holds, so only how
    enormous it is counts.  Raises RangeError outside.
    Source: bulk modulus (that of a wave, 6 % too high at 60 degC for a slow rise) and the thin
    closed cylinder, J. M. Gere and S. P. Timoshenko, Mechanics of Materials, from memory.

    >>> round(locked_rise(0.016, 333.15) / 1e5)
    144
    """
    require("grown", grown, 0.0, 0.1, "percent")
    require("slender", slender, 10.0, 1000.0, "number")
    give = 1 / water.bulk_modulus(hot_k) + (1.25 - metal.poisson) * slender / metal.modulus
    return grown / give


def mean_capacity(cold_k: float, hot_k: float) -> float:
    """Heat capacity of water, mean of a span of temperatures by Simpson's rule.

    c = (c(T_c) + 4 c((T_c + T_h) / 2) + c(T_h)) / 6
    cold_k, hot_k: K as ``growth``.  Returns J/(kg K), a number.  Raises RangeError outside.
    Source: IAPWS SR6-08(2011), heat capacity by ``water``.
    """
    _heated(cold_k, hot_k)
    ends = water.heat_capacity(cold_k) + water.heat_capacity(hot_k)
    return (ends + 4 * water.heat_capacity((cold_k + hot_k) / 2)) / 6


def heat(volume_m3: float, cold_k: float, hot_k: float) -> float:
    """Heat that a volume of cold water takes up.

    Q = rho_c V c (T_h - T_c), c by ``mean_capacity``
    volume_m3: m3 as cold water; cold_k, hot_k: K as ``growth``.  Returns J.
    Raises RangeError outside.  Source: definition.

    >>> round(heat(0.08, 288.15, 333.15) / 3.6e6, 2)
    4.18
    """
    capacity = mean_capacity(cold_k, hot_k)
    return water.density(cold_k) * volume_m3 * capacity * (hot_k - cold_k)


def pipe_holds(inside_m: float, length_m: float) -> float:
    """Water in a pipe, which cools there and runs off before a tap runs hot.

    V = pi / 4 D^2 L
    inside_m: m, above 0; length_m: m, 0 or more.  Returns m3.  Source: geometry.

    >>> round(pipe_holds(0.02, 10.0) * 1e3, 2)
    3.14
    """
    return math.pi / 4 * inside_m**2 * length_m


def hot_share(cold_k: float, hot_k: float, mixed_k: float) -> float:
    """Share of hot water in mixed water, by mass.

    x = (T_m - T_c) / (T_h - T_c)
    cold_k, hot_k: K, hot_k above cold_k; mixed_k: K, cold_k to hot_k.  Returns a share, 0 to 1.
    Raises RangeError outside.
    Source: conservation of energy with one heat capacity, which is less than 0.5 % out.

    >>> round(hot_share(288.15, 333.15, 311.15), 3)
    0.511
    """
    _heated(cold_k, hot_k)
    require("mixed_k", mixed_k, cold_k, hot_k, "temperature", "It is mixed of the two.")
    return (mixed_k - cold_k) / (hot_k - cold_k)


def scald_time(temperature_k: float) -> float:
    """How long hot water takes to burn an adult's skin deeply; a child's burns in less.

    Straight lines of the logarithm of time between the points of ``practice.SCALDS``.
    temperature_k: K, 322.04 to 341.48 (120 to 155 degF).  Returns s.
    Raises RangeError outside: below it takes longer than 5 minutes, above it less than a second.
    Source: A. R. Moritz and F. C. Henriques (1947), as the trade prints it, from memory.

    >>> round(scald_time(333.15), 9)
    5.0
    """
    points = practice.SCALDS
    require("temperature_k", temperature_k, points[0][0], points[-1][0], "temperature")
    for (low, slow), (high, fast) in itertools.pairwise(points):
        if temperature_k <= high:
            share = (temperature_k - low) / (high - low)
            return slow * (fast / slow) ** share
    return points[-1][1]
