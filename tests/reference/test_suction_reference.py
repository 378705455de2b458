"""Suction: limits of textbooks and of the trade; single values are in ``checks.suction``."""

from calc import practice, suction
from calc.units import FOOT
from tests.reference.checks.suction import TURN, pistons
from tests.reference.checks.water import kelvin


# "34 ft" is the textbook limit for cold water at sea level: e.g. USGS Water Science School
# and Cameron Hydraulic Data (33.9 ft at 39 degF), from memory
def test_cold_water_at_sea_level_cannot_be_lifted_34_feet():
    limit = suction.theoretical_lift(suction.place(0.0, 277.15)) / FOOT
    assert 33.5 < limit < 34.0


# common practice, no source: about 15 ft of lift is kept to
def test_15_ft_leaves_a_usual_pump_its_npsh_even_1500_m_up():
    site = suction.place(1500.0, 293.15)
    assert suction.npsh_available(site, practice.suction_lift(site.air_pa), 0.5) > 3.0


def test_a_thousand_feet_up_costs_about_a_foot_of_lift():
    # NWCG, water handling unit estimations, table 3.1: 1 ft, rounded, per 1000 ft
    low, high = (suction.place(z * FOOT, kelvin(60)) for z in (0, 1000))
    lost = (suction.theoretical_lift(low) - suction.theoretical_lift(high)) / FOOT
    assert 0.9 < lost < 1.3


def test_four_chambers_that_take_turns_are_no_worse_than_two_double_acting():
    assert pistons(4, TURN / 4, False) < practice.PULSING_BY_KEY["4"].factor
