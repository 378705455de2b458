"""Conversion factors: NIST and a library of units."""

import pint

from calc.units import QUANTITIES
from tests.reference.checks.check import LIBRARY, PUBLISHED, library, part, table
from tests.reference.checks.water import NIST

SUBJECT, MODULE = "Units", "units"
PINT = pint.UnitRegistry()

# our quantity, our symbol, the library's name, SI unit
_FACTORS = [
    ("length", "ft", "foot", "m"), ("length", "in", "inch", "m"), ("length", "yd", "yard", "m"),
    ("length", "mi", "mile", "m"), ("area", "acre", "international_foot**2 * 43560", "m**2"),
    ("area", "ha", "hectare", "m**2"), ("pressure", "psi", "psi", "Pa"),
    ("pressure", "bar", "bar", "Pa"), ("pressure", "mbar", "millibar", "Pa"),
    ("volume", "gal", "US_liquid_gallon", "m**3"), ("volume", "imp gal", "imperial_gallon", "m**3"),
    ("volume", "ft³", "foot**3", "m**3"), ("flow", "gpm", "US_liquid_gallon/minute", "m**3/s"),
    ("flow", "L/min", "liter/minute", "m**3/s"), ("flow", "m³/h", "m**3/hour", "m**3/s"),
    ("power", "hp", "horsepower", "W"), ("mass", "lb", "pound", "kg"),
    ("force", "lbf", "pound_force", "N"), ("density", "lb/ft³", "pound/foot**3", "kg/m**3"),
    ("energy", "Wh", "watt*hour", "J"), ("speed", "ft/s", "foot/second", "m/s"),
    ("angle", "°", "degree", "radian"),
]  # fmt: skip


def _factor(quantity, symbol, *_):
    return QUANTITIES[quantity].unit(symbol).factor


CHECKS = (
    *table(SUBJECT, MODULE, "One {1} of {0} in SI", _FACTORS, _factor, source=library("pint"),
           kind=LIBRARY, near=part(1e-9), unit="SI",
           against=lambda _q, _s, name, si: PINT(name).to(si).magnitude),
    *table(SUBJECT, MODULE, "{1:g} {0} in kelvin",
           [("°F", 32.0, 273.15), ("°F", 212.0, 373.15), ("°C", 20.0, 293.15)],
           lambda symbol, number: QUANTITIES["temperature"].unit(symbol).to_si(number),
           source=NIST, kind=PUBLISHED, near=part(1e-12), unit="K", place="B.8"),
    *table(SUBJECT, MODULE, "One {0} of pressure",
           [("inHg", 3386.389), ("ft water", 2989.067), ("m water", 9806.65), ("psi", 6894.757)],
           lambda symbol: _factor("pressure", symbol), source=NIST, kind=PUBLISHED, near=part(1e-6),
           unit="Pa", place="B.8"),
)  # fmt: skip
