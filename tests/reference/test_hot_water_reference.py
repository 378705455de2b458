"""Hot water against other libraries, printed tables and the trade's rules."""

import pytest
from iapws import IAPWS95, IAPWS97

from calc import hot_water, practice

HEATED = [(278.15, 333.15), (283.15, 333.15), (288.15, 333.15), (288.15, 353.15), (293.15, 368.15)]


def fahrenheit(degrees):
    return 273.15 + (degrees - 32) * 5 / 9


@pytest.mark.parametrize("cold, hot", HEATED)
def test_growth_agrees_with_iapws_95_within_3_in_100_000(cold, hot):
    """At 0.1 MPa as ours; each density is within 0.1 ppm, and a growth is a hundredth of it."""
    density = {t: IAPWS95(T=t, P=0.1).rho for t in (cold, hot)}
    assert hot_water.growth(1.0, cold, hot) == pytest.approx(
        density[cold] / density[hot] - 1, rel=3e-5
    )


@pytest.mark.parametrize("cold, hot", HEATED)
def test_growth_agrees_with_if97_under_the_pressure_of_a_supply(cold, hot):
    """At 0.6 MPa, which ours leaves out: 0.5 % of the growth at most."""
    density = {t: IAPWS97(T=t, P=0.6).rho for t in (cold, hot)}
    assert hot_water.growth(1.0, cold, hot) == pytest.approx(
        density[cold] / density[hot] - 1, rel=5e-3
    )


@pytest.mark.parametrize("cold, hot", HEATED)
def test_heat_agrees_with_the_enthalpy_of_iapws_95_within_2_in_10_000(cold, hot):
    """Simpson's mean is exact to 3e-5 here; the heat capacity of SR6-08 itself is 1e-4 apart."""
    start, end = (IAPWS95(T=t, P=0.1) for t in (cold, hot))
    joules = start.rho * (end.h - start.h) * 1e3
    assert hot_water.heat(1.0, cold, hot) == pytest.approx(joules, rel=2e-4)


@pytest.mark.parametrize("mixed", [311.15, 318.15, 322.15])
@pytest.mark.parametrize("cold, hot", HEATED)
def test_the_share_of_hot_water_agrees_with_enthalpies_within_half_a_percent(cold, hot, mixed):
    """Enthalpies are what really mixes; the heat capacity bends by 0.7 % between them."""
    h = {t: IAPWS95(T=t, P=0.1).h for t in (cold, hot, mixed)}
    share = (h[mixed] - h[cold]) / (h[hot] - h[cold])
    assert hot_water.hot_share(cold, hot, mixed) == pytest.approx(share, rel=5e-3)


def test_the_bulk_modulus_of_a_wave_is_6_percent_above_that_of_a_slow_rise():
    """What ``locked_rise`` says of itself: at 60 degC."""
    state = IAPWS95(T=333.15, P=0.1)
    fast = state.rho * state.w**2
    slow = 1e6 / state.kappa  # kappa: isothermal compressibility, 1/MPa
    assert fast / slow == pytest.approx(1.06, abs=0.01)


# degC, expansion from 10 degC in percent: EN 12828 annex D, printed from the parabola
# 0.31 + 3.9e-4 t^2 that fits it, from memory
EN_12828 = [(60, 1.71), (70, 2.22), (80, 2.81), (90, 3.47)]


@pytest.mark.parametrize("degrees, percent", EN_12828)
def test_growth_is_that_of_the_standard_on_heating_systems(degrees, percent):
    """Within 0.1 of a percent: the standard's parabola is no better than that."""
    grown = 100 * hot_water.growth(1.0, 283.15, 273.15 + degrees)
    assert grown == pytest.approx(percent, abs=0.1)


# degC, kg/m3: CRC Handbook of Chemistry and Physics, density of water, from memory
CRC = {10: 999.70, 20: 998.21, 40: 992.22, 60: 983.20, 80: 971.82}


@pytest.mark.parametrize("degrees", [40, 60, 80])
@pytest.mark.parametrize("cold", [10, 20])
def test_growth_is_that_of_the_handbooks_densities(cold, degrees):
    """Older editions, before IAPWS-95, are up to 0.03 kg/m3 apart, and print 0.01: 4e-5."""
    grown = hot_water.growth(1.0, 273.15 + cold, 273.15 + degrees)
    assert grown == pytest.approx(CRC[cold] / CRC[degrees] - 1, abs=4e-5)


# degF, s to a third-degree burn of an adult: US Consumer Product Safety Commission, tap water
# scalds, document 5098, from memory
CPSC = [(120, 300.0), (130, 30.0), (140, 6.0), (150, 2.0)]


@pytest.mark.parametrize("degrees, seconds", CPSC)
def test_burns_take_as_long_as_the_safety_commission_says(degrees, seconds):
    """Within a factor of 1.5: skin differs more than that, and so do printed tables."""
    assert 1 / 1.5 < hot_water.scald_time(fahrenheit(degrees)) / seconds < 1.5


def test_boyles_law_gives_the_example_of_the_trade():
    """A tank charged to 3 bar in a supply of 3 bar accepts (p_m - p_0) / p_m of itself, absolute:
    up to 6 bar, 3/7 of it; by hand, with air of 1 bar."""
    assert hot_water.tank_needed(3e-3, 3e5, 3e5, 6e5, 1e5) == pytest.approx(7e-3)


def test_a_tap_is_safe_where_the_table_begins():
    begins, _ = practice.SCALDS[0]
    assert abs(practice.SCALDS_ABOVE - begins) < 0.2
