"""What plants need: crop coefficients, and the reference evapotranspiration of FAO-56.

FAO-56 is R. G. Allen, L. S. Pereira, D. Raes and M. Smith, FAO Irrigation and Drainage Paper 56
(1998).  Depths of water a day are m/s here (1 mm a day is 1.157e-8 m/s).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.errors import require
from calc.units import CELSIUS, DAY

MM_DAY = 1e-3 / DAY  # m/s in a millimetre a day
MJ = 1e6  # J
STEFAN_BOLTZMANN = 4.903e-9  # MJ/K4 m2 day, FAO-56 eq. 39
PSYCHROMETRIC = 0.665e-3  # 1/K, FAO-56 eq. 8
GRASS_ALBEDO = 0.23  # FAO-56 eq. 38
LIGHT_WIND = 2.0  # m/s at 2 m, where nobody measured: FAO-56, page 63
MOST_WATER = 20.0 * MM_DAY  # m/s, more than any place takes; our choice


@dataclass(frozen=True)
class Crop:
    """A crop: link-safe ``key``, name, and ``need``, its crop coefficient K_c in mid-season."""

    key: str
    name: str
    need: float


# Single crop coefficients in mid-season, K_c mid: FAO-56 table 12, from memory
CROPS = (
    Crop("tomato", "Tomatoes", 1.15),
    Crop("pepper", "Peppers", 1.05),
    Crop("potato", "Potatoes", 1.15),
    Crop("onion", "Onions", 1.05),
    Crop("carrot", "Carrots", 1.05),
    Crop("cabbage", "Cabbage, broccoli", 1.05),
    Crop("lettuce", "Lettuce, spinach", 1.00),
    Crop("cucumber", "Cucumbers", 1.00),
    Crop("squash", "Squash, zucchini", 0.95),
    Crop("melon", "Melons", 1.05),
    Crop("bean", "Green beans", 1.05),
    Crop("corn", "Sweet corn", 1.15),
    Crop("strawberry", "Strawberries", 0.85),
    Crop("mint", "Mint and other leafy herbs", 1.15),
    Crop("berry", "Berry bushes", 1.05),
    Crop("grape", "Grapes", 0.85),
    Crop("apple", "Apples, pears, cherries", 0.95),
    Crop("olive", "Olives", 0.70),
)
CROP_BY_KEY = {crop.key: crop for crop in CROPS}


def saturation_pressure(temperature_k: float) -> float:
    """Vapour pressure of saturated air.

    e = 0.6108 kPa exp(17.27 T / (T + 237.3)), T in degC
    temperature_k: K, 223 to 333.  Returns Pa.  Raises RangeError outside.  Source: FAO-56 eq. 11.

    >>> round(saturation_pressure(293.15))
    2338
    """
    require("temperature_k", temperature_k, 223.0, 333.0, "temperature")
    degrees = temperature_k - CELSIUS
    return 610.8 * math.exp(17.27 * degrees / (degrees + 237.3))


def _slope(temperature_k: float) -> float:
    """kPa/K, slope of the saturation pressure.  Source: FAO-56 eq. 13."""
    degrees = temperature_k - CELSIUS
    return 4.098 * saturation_pressure(temperature_k) / (degrees + 237.3) ** 2


def air_pressure(altitude_m: float) -> float:
    """Pressure of the air.

    P = 101.3 kPa ((293 - 0.0065 z) / 293)**5.26
    altitude_m: z, m, -400 to 6000.  Returns Pa.  Raises RangeError outside.
    Source: FAO-56 eq. 7.
    """
    require("altitude_m", altitude_m, -400.0, 6000.0, "length")
    return 101.3e3 * ((293 - 0.0065 * altitude_m) / 293) ** 5.26


def vapour_from_humidity(humidity: float, warmest_k: float, coolest_k: float) -> float:
    """Vapour in the air, from the mean relative humidity of a day.

    e_a = RH (e(T_max) + e(T_min))/2
    humidity: RH, share, 0 to 1; warmest_k, coolest_k: K, of the day.  Returns Pa.
    Raises RangeError outside.  Source: FAO-56 eq. 19.
    """
    require("humidity", humidity, 0.0, 1.0, "percent")
    return humidity * (saturation_pressure(warmest_k) + saturation_pressure(coolest_k)) / 2


def middle_day(month: int) -> int:
    """Day of the year in the middle of a month.

    J = int(30.4 m - 15)
    month: m, whole number, 1 to 12.  Returns a whole number, 1 to 366.  Raises RangeError outside.
    Source: FAO-56, annex 2, box of eq. 22.
    """
    require("month", month, 1, 12, "number")
    return int(30.4 * month - 15)


def net_light(
    light_j: float,
    outside_j: float,
    warmest_k: float,
    coolest_k: float,
    vapour_pa: float,
    altitude_m: float,
) -> float:
    """Light that grass keeps in a day, less the heat it throws back.

    R_n = (1 - 0.23) R_s - s (T_max**4 + T_min**4)/2 (0.34 - 0.14 sqrt(e_a)) (1.35 R_s/R_so - 0.35)
    R_so = (0.75 + 2e-5 z) R_a
    light_j: R_s, J/m2 a day on level ground, 0 to 5e7; outside_j: R_a, the same outside the air,
    0 to 5e7; warmest_k, coolest_k: K, of the day; vapour_pa: e_a, Pa, 0 to 2e4; altitude_m: z, m.
    Returns J/m2 a day, which may be below 0.  Raises RangeError outside.
    Source: FAO-56 eqs. 37 to 40.
    """
    require("light_j", light_j, 0.0, 5e7, "irradiation")
    require("outside_j", outside_j, 0.0, 5e7, "irradiation")
    require("vapour_pa", vapour_pa, 0.0, 2e4, "pressure")
    clear = (0.75 + 2e-5 * altitude_m) * outside_j
    share = min(1.0, light_j / clear) if clear > 0 else 0.0
    heat = (warmest_k**4 + coolest_k**4) / 2 * STEFAN_BOLTZMANN * MJ
    damp = 0.34 - 0.14 * math.sqrt(vapour_pa / 1000)
    return (1 - GRASS_ALBEDO) * light_j - heat * damp * (1.35 * share - 0.35)


def reference(
    light_j: float,
    outside_j: float,
    warmest_k: float,
    coolest_k: float,
    altitude_m: float,
    vapour_pa: float | None = None,
    wind_ms: float = LIGHT_WIND,
    into_ground_j: float = 0.0,
) -> float:
    """Reference evapotranspiration by Penman and Monteith: grass that lacks no water.

    ET_0 = (0.408 D (R_n - G) + g 900 u_2 (e_s - e_a) / (T + 273)) / (D + g (1 + 0.34 u_2))
    light_j, outside_j, warmest_k, coolest_k, altitude_m: as for ``net_light``; vapour_pa: e_a, Pa
    (None: as damp as saturated at the coolest hour); wind_ms: u_2, m/s at 2 m, 0 to 20;
    into_ground_j: G, J/m2 a day.
    Returns m/s, 0 or more.  Raises RangeError outside.
    Source: FAO-56 eq. 6; where the damp is not known eq. 48, wind page 63.
    """
    require("warmest_k", warmest_k, coolest_k, 333.0, "temperature", "Warmer than the coolest.")
    require("wind_ms", wind_ms, 0.0, 20.0, "speed")
    mean = (warmest_k + coolest_k) / 2
    damp = saturation_pressure(coolest_k) if vapour_pa is None else vapour_pa
    full = (saturation_pressure(warmest_k) + saturation_pressure(coolest_k)) / 2
    kept = net_light(light_j, outside_j, warmest_k, coolest_k, damp, altitude_m) - into_ground_j
    slope, psychro = _slope(mean), PSYCHROMETRIC * air_pressure(altitude_m) / 1000
    dry = max(0.0, full - damp) / 1000
    drawn = psychro * 900 / (mean - CELSIUS + 273) * wind_ms * dry
    depth = (0.408 * slope * kept / MJ + drawn) / (slope + psychro * (1 + 0.34 * wind_ms))
    return max(0.0, depth) * MM_DAY


def into_ground(before_k: float, after_k: float) -> float:
    """Heat that a month takes into the ground.

    G = 0.07 (T_next - T_last), MJ
    before_k, after_k: mean air of the month before and of the next, K.  Returns J/m2 a day.
    Raises nothing.  Source: FAO-56 eq. 43.
    """
    return 0.07 * (after_k - before_k) * MJ


def by_temperature(outside_j: float, warmest_k: float, coolest_k: float) -> float:
    """Reference evapotranspiration where only temperatures are known.

    ET_0 = 0.0023 (T + 17.8) sqrt(T_max - T_min) R_a, R_a as mm
    outside_j: R_a, J/m2 a day, 0 to 5e7; warmest_k, coolest_k: K.
    Returns m/s, 0 or more.  Raises RangeError outside.
    Source: Hargreaves, FAO-56 eq. 52; it should be checked against measured places.
    """
    require("outside_j", outside_j, 0.0, 5e7, "irradiation")
    require("warmest_k", warmest_k, coolest_k, 333.0, "temperature", "Warmer than the coolest.")
    mean = (warmest_k + coolest_k) / 2 - CELSIUS
    depth = 0.0023 * (mean + 17.8) * math.sqrt(warmest_k - coolest_k) * 0.408 * outside_j / MJ
    return max(0.0, depth) * MM_DAY
