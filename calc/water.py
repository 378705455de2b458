"""Water and air: density, viscosity, vapour pressure, speed of sound, air pressure by altitude.

Liquid water follows the supplementary release of the International Association for
the Properties of Water and Steam, IAPWS SR6-08(2011), at 0.1 MPa.  At the pressures
of a small supply (up to 2 MPa) its density is at most 0.1 % higher: not counted.

Reached from 0 to 100 degC against the full formulations (IAPWS-95 and, for viscosity,
IAPWS R12-08), as the tests hold it: density within 0.1 ppm, speed of sound 3 ppm, bulk
modulus 5 ppm, viscosity 0.005 %, vapour pressure 0.01 %.
"""

import math
from functools import cached_property, lru_cache

from calc.errors import require
from calc.units import GRAVITY

COLDEST, HOTTEST = 273.15, 373.15  # K, the span used here: liquid at about 1 bar
_TR = 10.0  # K, T_R of SR6-08
_R = 461.51805  # J/(kg K), R of SR6-08
_P0 = 1e5  # Pa, p_0 of SR6-08

# (coefficient, exponent) of alpha = T_R/(593 K - T) and beta = T_R/(T - 232 K): SR6-08
_GIBBS_A = ((-1.661470539e5, 4), (2.708781640e6, 5), (-1.557191544e8, 7))
_GIBBS_B = ((-8.237426256e-1, 2), (1.908956353, 3), (-2.017597384, 4), (8.546361348e-1, 5))
_GIBBS_C3 = -8.983025854
_VOLUME_0 = 1.93763157e-2
_VOLUME_A = (
    (6.74458446e3, 4), (-2.22521604e5, 5), (1.00231247e8, 7), (-1.63552118e9, 8),
    (8.32299658e9, 9),
)  # fmt: skip
_VOLUME_B = (
    (5.78545292e-3, 1), (-1.53195665e-2, 2), (3.11337859e-2, 3), (-4.23546241e-2, 4),
    (3.38713507e-2, 5), (-1.19946761e-2, 6),
)  # fmt: skip
_SQUEEZE_A = (
    (-7.5245878e-6, 1), (-1.3767418e-2, 3), (1.0627293e1, 5), (-2.0457795e2, 6),
    (1.2037414e3, 7),
)  # fmt: skip
_SQUEEZE_B = (
    (-3.1091470e-6, 1), (2.8964919e-5, 3), (-1.3112763e-4, 4), (3.0410453e-4, 5),
    (-3.9034594e-4, 6), (2.3403117e-4, 7), (-4.8510101e-5, 9),
)  # fmt: skip
_VISCOSITY = ((280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.45903, -40))  # SR6-08, eq. 7

# IAPWS-IF97 region 4, table 34 (Revised Release R7-97(2012))
_SATURATION = (
    1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333,
    14.91510861353, -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
)  # fmt: skip

SEA_LEVEL_PRESSURE = 101325.0  # Pa, ISO 2533:1975
SEA_LEVEL_TEMPERATURE = 288.15  # K, ISO 2533:1975
LAPSE_RATE = 0.0065  # K/m below 11 km, ISO 2533:1975
AIR_GAS_CONSTANT = 287.05287  # J/(kg K), ISO 2533:1975
EARTH_RADIUS = 6356766.0  # m, nominal, ISO 2533:1975


def _liquid(temperature_k: float) -> float:
    remedy = "Liquid water is counted from 0 to 100 degC (32 to 212 degF)."
    return require("temperature_k", temperature_k, COLDEST, HOTTEST, "temperature", remedy)


def _arguments(temperature_k: float) -> tuple[float, float]:
    _liquid(temperature_k)
    return _TR / (593.0 - temperature_k), _TR / (temperature_k - 232.0)


def _sum(terms: tuple[tuple[float, float], ...], argument: float, order: int = 0) -> float:
    """Sum of c x^n, or of its derivative terms n c x^(n+1), n (n+1) c x^(n+2)."""
    if order == 0:
        return sum(c * argument**n for c, n in terms)
    if order == 1:
        return sum(n * c * argument ** (n + 1) for c, n in terms)
    return sum(n * (n + 1) * c * argument ** (n + 2) for c, n in terms)


@lru_cache(maxsize=256)
def density(temperature_k: float) -> float:
    """Density of liquid water at 0.1 MPa.

    1/rho = v = R T_R / p_0 (a_5 + sum a_i alpha^n_i + sum b_i beta^m_i)
    temperature_k: K, 273.15 to 373.15.  Returns kg/m3.
    Raises RangeError outside.  Source: IAPWS SR6-08(2011), volume at 0.1 MPa.

    >>> round(density(298.15), 3)
    997.047
    """
    alpha, beta = _arguments(temperature_k)
    return 1.0 / (_R * _TR / _P0 * (_VOLUME_0 + _sum(_VOLUME_A, alpha) + _sum(_VOLUME_B, beta)))


def _expansion(temperature_k: float) -> float:
    """Volume gained per kelvin, (dv/dT) at constant pressure, m3/(kg K): SR6-08."""
    alpha, beta = _arguments(temperature_k)
    return _R / _P0 * (_sum(_VOLUME_A, alpha, 1) - _sum(_VOLUME_B, beta, 1))


def _squeeze(temperature_k: float) -> float:
    """Volume gained per pascal, (dv/dp) at constant temperature, m3/(kg Pa): SR6-08."""
    alpha, beta = _arguments(temperature_k)
    return _R * _TR / _P0**2 * (_sum(_SQUEEZE_A, alpha) + _sum(_SQUEEZE_B, beta))


def heat_capacity(temperature_k: float) -> float:
    """Isobaric heat capacity of liquid water at 0.1 MPa.

    c_p = -R (c_3 + tau (sum n(n+1) a alpha^(n+2) + sum m(m+1) b beta^(m+2))), tau = T / T_R
    temperature_k: K, 273.15 to 373.15.  Returns J/(kg K).
    Raises RangeError outside.  Source: IAPWS SR6-08(2011), from the Gibbs energy.
    """
    alpha, beta = _arguments(temperature_k)
    bent = _sum(_GIBBS_A, alpha, 2) + _sum(_GIBBS_B, beta, 2)
    return -_R * (_GIBBS_C3 + temperature_k / _TR * bent)


@lru_cache(maxsize=256)
def sound_speed(temperature_k: float) -> float:
    """Speed of sound in liquid water at 0.1 MPa.

    w = sqrt(-v^2 / (dv/dp + T (dv/dT)^2 / c_p))
    temperature_k: K, 273.15 to 373.15.  Returns m/s.
    Raises RangeError outside.  Source: IAPWS SR6-08(2011), from the Gibbs energy.

    >>> round(sound_speed(298.15), 1)
    1496.7
    """
    volume, expansion = 1.0 / density(temperature_k), _expansion(temperature_k)
    stiff = _squeeze(temperature_k) + temperature_k * expansion**2 / heat_capacity(temperature_k)
    return math.sqrt(-(volume**2) / stiff)


def bulk_modulus(temperature_k: float) -> float:
    """Adiabatic bulk modulus of liquid water at 0.1 MPa, as a pressure wave feels it.

    K = rho w^2
    temperature_k: K, 273.15 to 373.15.  Returns Pa.
    Raises RangeError outside.  Source: definition, with IAPWS SR6-08(2011).
    """
    return density(temperature_k) * sound_speed(temperature_k) ** 2


@lru_cache(maxsize=256)
def dynamic_viscosity(temperature_k: float) -> float:
    """Dynamic viscosity of liquid water at 0.1 MPa.

    mu = 1e-6 sum a_i (T/300)^b_i
    temperature_k: K, 273.15 to 373.15.  Returns Pa s.
    Raises RangeError outside.  Source: IAPWS SR6-08(2011), equation 7.

    >>> round(dynamic_viscosity(298.15) * 1e6, 1)
    890.0
    """
    ratio = _liquid(temperature_k) / 300.0
    return 1e-6 * sum(a * ratio**b for a, b in _VISCOSITY)


def kinematic_viscosity(temperature_k: float) -> float:
    """Kinematic viscosity of liquid water at 0.1 MPa.

    nu = mu / rho
    temperature_k: K, 273.15 to 373.15.  Returns m2/s.
    Raises RangeError outside.  Source: definition, with IAPWS SR6-08(2011).
    """
    return dynamic_viscosity(temperature_k) / density(temperature_k)


def vapour_pressure(temperature_k: float) -> float:
    """Pressure at which water boils (saturation pressure).

    p_s = 1 MPa (2 C / (-B + sqrt(B^2 - 4 A C)))^4 with A, B, C quadratic in
    theta = T + n_9 / (T - n_10)
    temperature_k: K, 273.15 to 373.15.  Returns Pa.
    Raises RangeError outside.  Source: IAPWS R7-97(2012), equation 30.

    >>> round(vapour_pressure(300.0), 3)
    3536.589
    """
    n1, n2, n3, n4, n5, n6, n7, n8, n9, n10 = _SATURATION
    theta = _liquid(temperature_k) + n9 / (temperature_k - n10)
    a = theta**2 + n1 * theta + n2
    b = n3 * theta**2 + n4 * theta + n5
    c = n6 * theta**2 + n7 * theta + n8
    return 1e6 * (2 * c / (-b + math.sqrt(b * b - 4 * a * c))) ** 4


def boiling_temperature(pressure_pa: float) -> float:
    """Temperature at which water boils: ``vapour_pressure`` turned round exactly.

    T = (n_10 + D - sqrt((n_10 + D)^2 - 4 (n_9 + n_10 D))) / 2,
    D = 2 G / (-F - sqrt(F^2 - 4 E G)), E, F, G quadratic in beta = (p / 1 MPa)^(1/4)
    pressure_pa: Pa absolute, 611.22 to 101418.  Returns K.
    Raises RangeError outside.  Source: IAPWS R7-97(2012), equation 31.

    >>> round(boiling_temperature(1e5), 4)
    372.7559
    """
    least, most = vapour_pressure(COLDEST), vapour_pressure(HOTTEST)
    remedy = "Between them water boils from 0 to 100 degC (32 to 212 degF)."
    require("pressure_pa", pressure_pa, least, most, "pressure", remedy)
    n1, n2, n3, n4, n5, n6, n7, n8, n9, n10 = _SATURATION
    beta = (pressure_pa / 1e6) ** 0.25
    e = beta**2 + n3 * beta + n6
    f = n1 * beta**2 + n4 * beta + n7
    g = n2 * beta**2 + n5 * beta + n8
    shifted = n10 + 2 * g / (-f - math.sqrt(f * f - 4 * e * g))
    temperature = (shifted - math.sqrt(shifted**2 - 4 * (n9 + n10 * (shifted - n10)))) / 2
    return min(max(temperature, COLDEST), HOTTEST)  # the last bit may fall outside


def air_pressure(altitude_m: float) -> float:
    """Pressure of the standard atmosphere below 11 km.

    p = p_0 (1 - B H / T_0)^(g / (B R)), H = r z / (r + z)
    altitude_m: m above sea level (geometric), -1000 to 9000.  Returns Pa.
    Raises RangeError outside.  Source: ISO 2533:1975, layer of constant lapse rate.

    >>> round(air_pressure(0.0))
    101325
    """
    require("altitude_m", altitude_m, -1000.0, 9000.0, "length", "Give the site's height.")
    height = EARTH_RADIUS * altitude_m / (EARTH_RADIUS + altitude_m)
    ratio = 1.0 - LAPSE_RATE * height / SEA_LEVEL_TEMPERATURE
    return SEA_LEVEL_PRESSURE * ratio ** (GRAVITY / (LAPSE_RATE * AIR_GAS_CONSTANT))


def _weighed(density_kg_m3: float) -> float:
    remedy = "Give the density of water, about 1000 kg/m³ (62.4 lb/ft3)."
    return require("density_kg_m3", density_kg_m3, 900.0, 1100.0, "density", remedy)


def head_from_pressure(pressure_pa: float, density_kg_m3: float) -> float:
    """Height of a column of water standing on a pressure.

    h = p / (rho g)
    pressure_pa: Pa; density_kg_m3: kg/m3, 900 to 1100.  Returns m.
    Raises RangeError for a density that is not water's.
    Source: hydrostatics, with standard gravity (NIST SP 811 B.8).

    >>> round(head_from_pressure(98066.5, 1000.0), 6)
    10.0
    """
    return pressure_pa / (_weighed(density_kg_m3) * GRAVITY)


def pressure_from_head(head_m: float, density_kg_m3: float) -> float:
    """Pressure under a column of water.

    p = rho g h
    head_m: m; density_kg_m3: kg/m3, 900 to 1100.  Returns Pa.
    Raises RangeError for a density that is not water's.
    Source: hydrostatics, with standard gravity (NIST SP 811 B.8).
    """
    return head_m * _weighed(density_kg_m3) * GRAVITY


class AtTemperature:
    """For what holds water at one temperature: a frozen dataclass with ``temperature_k``, K."""

    temperature_k: float

    @cached_property
    def weight(self) -> float:
        """Pa per metre of the water: rho g."""
        return density(self.temperature_k) * GRAVITY

    @cached_property
    def viscosity(self) -> float:
        """Kinematic viscosity of the water, m2/s."""
        return kinematic_viscosity(self.temperature_k)
