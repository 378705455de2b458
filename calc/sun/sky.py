"""What the air lets through: a clear sky, the diffuse share, and a day's sum over its hours."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc import practice
from calc.errors import require
from calc.practice import SEA_LEVEL_AIR
from calc.water import air_pressure

CLEAREST = 0.85  # most of what is outside the air that reaches the ground over a day; our choice


@dataclass(frozen=True)
class ClearSky:
    """Light under a clear sky, W/m2. ``level``: all on level ground; ``beam``: on a plane facing
    the sun; ``diffuse``: on level ground.
    """

    level: float
    beam: float
    diffuse: float


def clear_global(cos_zenith: float) -> float:
    """All that reaches level ground under a clear sky.

    G = 1098 cos z exp(-0.059 / cos z)
    cos_zenith: cos z, number, -1 to 1.  Returns W/m2, 0 where the sun is down.
    Raises RangeError outside.  Source: B. Haurwitz, J. Meteorology 2 (1945) 154-166, 3 (1946)
    123-124, as given by M. Reno et al., SAND2012-2389.

    >>> round(clear_global(1.0))
    1035
    """
    require("cos_zenith", cos_zenith, -1.0, 1.0, "number")
    if cos_zenith <= 1e-3:
        return 0.0
    return 1098.0 * cos_zenith * math.exp(-0.059 / cos_zenith)


def air_mass(cos_zenith: float, altitude_m: float = 0.0) -> float:
    """How much air the beam crosses, over the air straight up at the sea.

    m = p / p_0 / (cos z + 0.50572 (96.07995 - z)^-1.6364), z in degrees
    cos_zenith: cos z, number, 0 to 1; altitude_m: h, m, -500 to 9000.  Returns a number.
    Raises RangeError outside.
    Source: F. Kasten and A. T. Young, Applied Optics 28 (1989) 4735-4738; p is
    ``calc.water.air_pressure``.
    """
    require("cos_zenith", cos_zenith, 0.0, 1.0, "number")
    require("altitude_m", altitude_m, -500.0, 9000.0, "length")
    zenith = math.degrees(math.acos(cos_zenith))
    path = 1 / (cos_zenith + 0.50572 * (96.07995 - zenith) ** -1.6364)
    return path * air_pressure(altitude_m) / SEA_LEVEL_AIR


def clear_sky(
    cos_zenith: float,
    normal: float,
    altitude_m: float = 0.0,
    turbidity: float = practice.TURBIDITY,
) -> ClearSky:
    """Beam and diffuse light under a clear sky.

    G = c_1 I_0 cos z exp(-c_2 m (f_1 + f_2 (T - 1))), I_b = min((0.664 + 0.163 / f_1) I_0
    exp(-0.09 m (T - 1)), G (1 - (0.1 - 0.2 e^-T) / (0.1 + 0.882 / f_1)) / cos z),
    c_1 = 5.09e-5 h + 0.868, c_2 = 3.92e-5 h + 0.0387, f_1 = e^(-h/8000), f_2 = e^(-h/1250)
    cos_zenith: cos z, number, -1 to 1; normal: I_0, W/m2, 1 to 1500, outside the air; altitude_m:
    h, m, -500 to 9000; turbidity: T of Linke, number, 1 to 10.  Returns ``ClearSky``, dark where
    the sun is down.  Raises RangeError outside.
    Source: P. Ineichen and R. Perez, Solar Energy 73 (2002) 151-157.
    """
    require("cos_zenith", cos_zenith, -1.0, 1.0, "number")
    require("normal", normal, 1.0, 1500.0, "number")
    require("altitude_m", altitude_m, -500.0, 9000.0, "length")
    require("turbidity", turbidity, 1.0, 10.0, "number")
    if cos_zenith <= 1e-3:
        return ClearSky(0.0, 0.0, 0.0)
    mass, high = air_mass(cos_zenith, altitude_m), altitude_m
    thin, hazy = math.exp(-high / 8000), math.exp(-high / 1250)
    level = (5.09e-5 * high + 0.868) * normal * cos_zenith
    level *= math.exp(-(3.92e-5 * high + 0.0387) * mass * (thin + hazy * (turbidity - 1)))
    beam = (0.664 + 0.163 / thin) * normal * math.exp(-0.09 * mass * (turbidity - 1))
    share = 1 - (0.1 - 0.2 * math.exp(-turbidity)) / (0.1 + 0.882 / thin)
    beam = min(beam, level * share / cos_zenith)
    return ClearSky(level, beam, max(0.0, level - beam * cos_zenith))


def hourly_diffuse_share(clearness: float) -> float:
    """The diffuse share of an hour's light.

    k <= 0.22: 1 - 0.09 k; k <= 0.80: 0.9511 - 0.1604 k + 4.388 k^2 - 16.638 k^3 + 12.336 k^4;
    above: 0.165
    clearness: k, share of what is outside the air, 0 to 1.5.  Returns a share.
    Raises RangeError outside.
    Source: D. G. Erbs, S. A. Klein and J. A. Duffie, Solar Energy 28 (1982) 293-302.
    """
    require("clearness", clearness, 0.0, 1.5, "percent")
    k = clearness
    if k <= 0.22:
        return 1 - 0.09 * k
    if k <= 0.80:
        return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)))
    return 0.165


SEASON_FROM = math.radians(81.4)  # sunset angle that parts the two fits of Erbs et al.


def daily_diffuse_share(clearness: float, sunset: float) -> float:
    """The diffuse share of a day's light.

    omega_s < 81.4 deg, k < 0.715: 1 - 0.2727 k + 2.4495 k^2 - 11.9514 k^3 + 9.3879 k^4, then 0.143
    omega_s >= 81.4 deg, k < 0.722: 1 + 0.2832 k - 2.5557 k^2 + 0.8448 k^3, then 0.175
    clearness: k, share of what is outside the air, 0 to 1; sunset: omega_s, rad, 0 to pi.
    Returns a share.  Raises RangeError outside.
    Source: D. G. Erbs, S. A. Klein and J. A. Duffie, Solar Energy 28 (1982) 293-302.

    >>> round(daily_diffuse_share(0.5, 1.6), 2)
    0.61
    """
    require("clearness", clearness, 0.0, 1.0, "percent")
    k = clearness
    if sunset < SEASON_FROM:
        if k >= 0.715:
            return 0.143
        return 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879)))
    if k >= 0.722:
        return 0.175
    return 1 + k * (0.2832 + k * (-2.5557 + k * 0.8448))


def monthly_diffuse_share(clearness: float, sunset: float) -> float:
    """The diffuse share of a month's light, from the month's mean clearness.

    omega_s <= 81.4 deg: 1.391 - 3.560 K + 4.189 K^2 - 2.137 K^3
    above: 1.311 - 3.022 K + 3.427 K^2 - 1.821 K^3
    clearness: K, share, fitted 0.3 to 0.8 and held at those ends; sunset: omega_s, rad, 0 to pi.
    Returns a share.  Raises RangeError for a clearness outside 0 to 1.
    Source: D. G. Erbs, S. A. Klein and J. A. Duffie, Solar Energy 28 (1982) 293-302.
    """
    require("clearness", clearness, 0.0, 1.0, "percent")
    k = min(max(clearness, 0.3), 0.8)
    if sunset <= SEASON_FROM:
        return 1.391 + k * (-3.560 + k * (4.189 - k * 2.137))
    return 1.311 + k * (-3.022 + k * (3.427 - k * 1.821))


def bend(sunset: float) -> tuple[float, float]:
    """The two constants a, b by which a day's light is more about noon than the sun's height.

    a = 0.409 + 0.5016 sin(omega_s - pi/3), b = 0.6609 - 0.4767 sin(omega_s - pi/3)
    sunset: omega_s, rad, 0 to pi.  Returns shares (a, b).  Raises nothing.
    Source: M. Collares-Pereira and A. Rabl, Solar Energy 22 (1979) 155-164.
    """
    lean = math.sin(sunset - math.pi / 3)
    return 0.409 + 0.5016 * lean, 0.6609 - 0.4767 * lean


def hour_of_day_diffuse(turn: float, sunset: float) -> float:
    """The share of a day's diffuse light that an hour has, by the sun's height.

    r_d = pi/24 (cos omega - cos omega_s) / (sin omega_s - omega_s cos omega_s)
    turn: omega, the hour angle in the middle of the hour, rad; sunset: omega_s, rad, 0 to pi.
    Returns a share of the day, 0 at night.  Raises RangeError outside.
    Source: B. Y. H. Liu and R. C. Jordan, Solar Energy 4 (3) (1960) 1-19.
    """
    require("turn", turn, -math.pi, math.pi, "angle")
    require("sunset", sunset, 0.0, math.pi, "angle")
    if sunset == 0 or abs(turn) >= sunset:
        return 0.0
    whole = math.sin(sunset) - sunset * math.cos(sunset)
    return math.pi / 24 * (math.cos(turn) - math.cos(sunset)) / whole


def hour_of_day_global(turn: float, sunset: float) -> float:
    """The share of a day's light that an hour has.

    r_t = (a + b cos omega) r_d, a and b from ``bend``
    turn: omega, the hour angle in the middle of the hour, rad; sunset: omega_s, rad, 0 to pi.
    Returns a share of the day, 0 at night.  Raises RangeError outside.
    Source: M. Collares-Pereira and A. Rabl, Solar Energy 22 (1979) 155-164.

    >>> round(hour_of_day_global(0.0, math.radians(90)), 3)
    0.142
    """
    base, more = bend(sunset)
    return (base + more * math.cos(turn)) * hour_of_day_diffuse(turn, sunset)
