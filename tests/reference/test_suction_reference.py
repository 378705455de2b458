"""Suction against published figures and independent property libraries."""

import math

import ambiance
import pytest
from CoolProp.CoolProp import PropsSI

from calc import suction
from calc.units import FOOT

# altitude m, temperature K, lift m by CoolProp 8 and ambiance 1.3 (theoretical limit)
CASES = [(a, t) for a in (0, 500, 1500, 3000) for t in (278.15, 293.15, 313.15, 333.15)]


@pytest.mark.parametrize("altitude, temperature", CASES)
def test_theoretical_lift_matches_independent_properties(altitude, temperature):
    air = float(ambiance.Atmosphere(altitude).pressure[0])
    vapour = PropsSI("P", "T", temperature, "Q", 0, "Water")
    density = PropsSI("D", "T", temperature, "P", 1.02e5, "Water")
    expected = (air - vapour) / (density * 9.80665)
    ours = suction.theoretical_lift(suction.place(altitude, temperature))
    assert math.isclose(ours, expected, rel_tol=2e-5)


# "34 ft" is the textbook limit for cold water at sea level: e.g. USGS Water Science School
# and Cameron Hydraulic Data (33.9 ft at 39 degF), from memory
def test_cold_water_at_sea_level_cannot_be_lifted_34_feet():
    limit = suction.theoretical_lift(suction.place(0.0, 277.15)) / FOOT
    assert 33.5 < limit < 34.0


# common practice, no source: about 15 ft of lift is kept to
def test_15_ft_leaves_a_usual_pump_its_npsh_even_1500_m_up():
    site = suction.place(1500.0, 293.15)
    assert suction.npsh_available(site, suction.PRACTICAL_LIFT, 0.5) > 3.0
