"""Suction against published figures and independent property libraries."""

import math

import ambiance
import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI
from scipy.integrate import solve_ivp

from calc import practice, suction
from calc.units import FOOT

# altitude m, temperature K: the limit by CoolProp (IAPWS-95) and ambiance (ICAO atmosphere)
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
    assert suction.npsh_available(site, practice.suction_lift(site.air_pa), 0.5) > 3.0


def fahrenheit(degrees):
    return (degrees - 32) * 5 / 9 + 273.15


# altitude ft, temperature degF, lift ft (minus: flooded), losses ft, NPSH available ft as the
# source's own figures add up, source.  The sources print air and vapour head to 0.1 ft or take
# 33.9 to 34 ft for sea level: 0.25 ft (0.8 % of the air's push) covers that.
TRADE = "Know and Understand Centrifugal Pumps (Bachus, Custodio 2003, from memory), chapter 2"
OPERATORS = (
    "water operators' handbook, section 10.2.12, example 10.11 (read without its title page)"
)
PRINTED = [
    (0, 70, -6.0, 4.0, 33.9 + 6.0 - 0.839 - 2.0 - 2.0, TRADE),
    (7000, 50, 8.0, 3.0, 26.2 - 8.0 - 0.411 - 1.0 - 2.0, TRADE),
    (0, 60, 20.0, 2.4, 11.0, OPERATORS),
    (0, 60, -15.0, 2.4, 46.0, OPERATORS),
]


@pytest.mark.parametrize("altitude, degrees, lift, losses, npsh, source", PRINTED)
def test_npsh_matches_the_printed_example(altitude, degrees, lift, losses, npsh, source):
    site = suction.place(altitude * FOOT, fahrenheit(degrees))
    ours = suction.npsh_available(site, lift * FOOT, losses * FOOT) / FOOT
    assert ours == pytest.approx(npsh, abs=0.25), source


def test_allowable_lift_matches_the_printed_example():
    # Training course note "Best practice no. 25", example 5: 85 degF, 1000 ft, losses 5 ft, NPSH
    # required 16 ft, air 32.8 ft, vapour 1.38 ft: 32.8 - 1.38 - 5 - 16 = 10.42 ft
    site = suction.place(1000 * FOOT, fahrenheit(85))
    ours = suction.allowable_lift(site, 5 * FOOT, 16 * FOOT, 0.0) / FOOT
    assert ours == pytest.approx(10.42, abs=0.1)


# altitude m, limit m of water at 1000 kg/m3, printed to 0.01; source: Davis, Water and Wastewater
# Engineering (2010), table 3-7 (its 8.66 at 1500 m is a misprint: 84.56 kPa is 8.62 m)
LIMITS = [(0, 10.33), (500, 9.74), (1000, 9.17), (2000, 8.11), (2500, 7.62), (3000, 7.15)]


@pytest.mark.parametrize("altitude, metres", LIMITS)
def test_air_less_nothing_lifts_what_the_table_says(altitude, metres):
    # 4 degC: vapour takes 0.083 m, added back; density 999.97
    site = suction.place(altitude, 277.13)
    bare = suction.theoretical_lift(site) + site.vapour_pa / site.weight
    assert bare == pytest.approx(metres, abs=0.006)


def test_an_inch_of_mercury_lifts_1_134_feet():
    # NWCG, water handling unit estimations, table 3.1: 1 in of mercury lifts 1.134 ft
    site = suction.place(0.0, fahrenheit(60))
    assert -suction.inlet_pressure(site, 1.134 * FOOT, 0.0) == pytest.approx(3386.389, rel=2e-3)


def test_a_thousand_feet_up_costs_about_a_foot_of_lift():
    # NWCG, water handling unit estimations, table 3.1: 1 ft, rounded, per 1000 ft
    low, high = (suction.place(z * FOOT, fahrenheit(60)) for z in (0, 1000))
    lost = (suction.theoretical_lift(low) - suction.theoretical_lift(high)) / FOOT
    assert 0.9 < lost < 1.3


# bore m, length m, altitude m, temperature K, lift m, displacement m3/s
PRIMING = [
    (0.026, 8.0, 0.0, 288.15, 4.0, 3e-4),
    (0.040, 6.0, 0.0, 288.15, 6.0, 1e-3),
    (0.020, 60.0, 1500.0, 293.15, 5.5, 2e-4),
    (0.032, 9.0, 0.0, 333.15, 7.5, 5e-4),
    (0.032, 30.0, 3000.0, 278.15, 0.5, 5e-4),
]


@pytest.mark.parametrize("bore, length, altitude, temperature, lift, moved", PRIMING)
def test_priming_time_matches_integrating_the_moles_drawn_out(
    bore, length, altitude, temperature, lift, moved
):
    """Moles of dry air left in the pipe are integrated in time; the level follows from them."""
    site = suction.place(altitude, temperature)
    area, warmth = math.pi / 4 * bore**2, 8.314462618 * temperature
    dry = site.air_pa - site.vapour_pa

    def level(moles):
        # (dry - w y) (length - y) area = moles R T, the smaller root, up to the top of the rise
        a, b = site.weight, -(dry + site.weight * length)
        c = dry * length - moles * warmth / area
        return min(lift, (-b - math.sqrt(b * b - 4 * a * c)) / (2 * a))

    def drawn(_time, state):
        height = level(state[0])
        return [-moved * (dry - site.weight * height) / warmth]

    def filled(_time, state):
        held = (dry - site.weight * lift) * (length - lift) * area / warmth
        return state[0] - held

    filled.terminal = True
    start = dry * length * area / warmth
    until = 3 * length * area / moved
    run = solve_ivp(drawn, (0, until), [start], events=filled, rtol=1e-10, atol=start * 1e-13)
    level_run = (length - lift) * area / moved  # then the level pipe, at constant pressure
    ours = suction.priming_time(bore, length, site, lift, moved)
    assert ours == pytest.approx(run.t_events[0][0] + level_run, rel=1e-6)


# Acceleration head ------------------------------------------------------------------------------

ROD = 5.0  # rod over crank, usual for small power pumps; common practice, no source


def pistons(number, apart, both_ways, turns=7200):
    """Peak of d(flow)/dt over (mean flow x turns a minute) of pistons on one crank, 1/min 1/s."""
    angle = np.linspace(0.0, 2 * math.pi, turns, endpoint=False)
    total = np.zeros(turns)
    for at in range(number):
        here = angle + at * apart
        speed = np.sin(here) + np.sin(here) * np.cos(here) / np.sqrt(ROD**2 - np.sin(here) ** 2)
        total += np.abs(speed) if both_ways else np.maximum(speed, 0.0)  # a double-acting one too
    change = np.diff(np.append(total, total[0])) / (2 * math.pi / turns)
    each_minute = 2 * math.pi / 60  # rad/s of one turn a minute
    return np.abs(change).max() / total.mean() * each_minute


TURN = 2 * math.pi
# kind -> pistons that draw so; the most sudden of what its name says
PISTONS = {
    "1": [(1, 0.0, False)],
    "2": [(2, TURN / 2, False), (1, 0.0, True)],
    "3": [(3, TURN / 3, False)],
    "4": [(2, TURN / 4, True)],
    "5": [(5, TURN / 5, False)],
}


@pytest.mark.parametrize("kind", practice.PULSING, ids=lambda one: one.name)
def test_the_factors_are_those_of_pistons_followed_through_a_turn(kind):
    for drawn in PISTONS[kind.key]:
        # the table is rounded to a few parts in a hundred
        assert kind.factor == pytest.approx(pistons(*drawn), rel=0.06)


def test_four_chambers_that_take_turns_are_no_worse_than_two_double_acting():
    assert pistons(4, TURN / 4, False) < practice.PULSING_BY_KEY["4"].factor


def test_acceleration_head_in_feet_is_the_handbooks_formula():
    # h_a = L V n C / (K g) in ft, ft/s, strokes a minute: Hydraulic Institute, from memory.
    # 20 ft of pipe, 2 ft/s, triplex at 300 rpm, water: 20 x 2 x 300 x 0.066 / (1.4 x 32.174)
    expected = 20 * 2 * 300 * 0.066 / (1.4 * 32.174)
    found = suction.acceleration_head(20 * FOOT, 2 * FOOT, 300 / 60, 0.066, 1.4)
    assert found / FOOT == pytest.approx(expected, rel=1e-4)
