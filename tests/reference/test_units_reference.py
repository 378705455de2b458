"""Our conversion factors against pint's unit registry (general-purpose library)."""

import math

import pint
import pytest

from calc.units import QUANTITIES

PINT = pint.UnitRegistry()

# our quantity, our symbol, pint's name, SI unit; source of every value: pint 0.26 registry
FACTORS = [
    ("length", "ft", "foot", "m"),
    ("length", "in", "inch", "m"),
    ("length", "yd", "yard", "m"),
    ("length", "mi", "mile", "m"),
    ("area", "acre", "international_foot**2 * 43560", "m**2"),
    ("area", "ha", "hectare", "m**2"),
    ("pressure", "psi", "psi", "Pa"),
    ("pressure", "bar", "bar", "Pa"),
    ("pressure", "mbar", "millibar", "Pa"),
    ("volume", "gal", "US_liquid_gallon", "m**3"),
    ("volume", "imp gal", "imperial_gallon", "m**3"),
    ("volume", "ft³", "foot**3", "m**3"),
    ("flow", "gpm", "US_liquid_gallon/minute", "m**3/s"),
    ("flow", "L/min", "liter/minute", "m**3/s"),
    ("flow", "m³/h", "m**3/hour", "m**3/s"),
    ("power", "hp", "horsepower", "W"),
    ("mass", "lb", "pound", "kg"),
    ("force", "lbf", "pound_force", "N"),
    ("density", "lb/ft³", "pound/foot**3", "kg/m**3"),
    ("energy", "Wh", "watt*hour", "J"),
    ("speed", "ft/s", "foot/second", "m/s"),
    ("angle", "°", "degree", "radian"),
]


@pytest.mark.parametrize("quantity, symbol, name, si", FACTORS)
def test_factor_matches_pint(quantity, symbol, name, si):
    ours = QUANTITIES[quantity].unit(symbol).factor
    assert math.isclose(ours, PINT(name).to(si).magnitude, rel_tol=1e-9)


@pytest.mark.parametrize(
    "symbol, number, kelvin",
    [
        ("°F", 32.0, 273.15),  # NIST SP 811 B.8, footnote on temperature
        ("°F", 212.0, 373.15),
        ("°C", 20.0, 293.15),
    ],
)
def test_temperatures_have_the_right_zero(symbol, number, kelvin):
    assert math.isclose(QUANTITIES["temperature"].unit(symbol).to_si(number), kelvin, rel_tol=1e-12)


@pytest.mark.parametrize(
    "symbol, pascal, source",
    [
        ("inHg", 3386.389, "NIST SP 811 B.8: inch of mercury, conventional"),
        ("ft water", 2989.067, "NIST SP 811 B.8: foot of water, conventional"),
        ("m water", 9806.65, "NIST SP 811 B.8: 1000 x centimetre of water, conventional / 10"),
        ("psi", 6894.757, "NIST SP 811 B.8"),
    ],
)
def test_pressure_unit_matches_the_published_table(symbol, pascal, source):
    ours = QUANTITIES["pressure"].unit(symbol).factor
    assert math.isclose(ours, pascal, rel_tol=1e-6), source
