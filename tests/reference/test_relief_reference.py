"""A relief valve's opening against the standard's own formula, in its own units."""

import math

import pytest

from calc import practice, relief
from calc.units import GALLON_US, INCH, MINUTE, PSI

# API 520 part I, sizing for liquid, valves certified for it, from memory:
# A = Q / (38 K_d K_w K_c K_v) sqrt(G / (p_1 - p_2)), A in in2, Q in gpm, p in psi, G over water
CASES = [(5.0, 100.0, 1.0), (20.0, 82.5, 1.0), (1.0, 45.0, 0.999), (100.0, 165.0, 1.0)]


@pytest.mark.parametrize("gpm, psi, heavy", CASES)
def test_the_opening_is_that_of_the_standard(gpm, psi, heavy):
    square_inches = gpm / (38 * practice.RELIEF_COEFFICIENT) * math.sqrt(heavy / psi)
    water = 62.4 * 16.01846337  # kg/m3, 62.4 lb/ft3, to which the standard's G refers
    found = relief.opening_for(gpm * GALLON_US / MINUTE, psi * PSI, heavy * water)
    # its 38 has two figures: 37.99 with all of them, and the opening goes with the root of the area
    assert math.pi / 4 * (found / INCH) ** 2 == pytest.approx(square_inches, rel=0.002)


def test_the_coefficient_is_between_those_of_the_trade():
    # a sharp edge 0.61 (handbooks of hydraulics), a certified valve 0.65 (API 520); from memory
    assert 0.61 <= practice.RELIEF_COEFFICIENT <= 0.65


# 29.84 C_d d^2 sqrt(psi) gives gpm for d in inches: the nozzle formula of fire protection, from
# memory
@pytest.mark.parametrize("inches, psi", [(0.25, 100.0), (0.5, 60.0)])
def test_an_opening_passes_what_the_nozzle_formula_says(inches, psi):
    gpm = 29.84 * practice.RELIEF_COEFFICIENT * inches**2 * math.sqrt(psi)
    water = 62.4 * 16.01846337
    found = relief.pressure_to_pass(gpm * GALLON_US / MINUTE, inches * INCH, water)
    assert found / PSI == pytest.approx(psi, rel=0.002)  # four figures of 29.84, water at 60 degF
