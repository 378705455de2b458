"""Hot water against other libraries; printed tables are in ``checks.hot``."""

import pytest
from iapws import IAPWS95, IAPWS97

from calc import hot_water, practice

HEATED = [(278.15, 333.15), (283.15, 333.15), (288.15, 333.15), (288.15, 353.15), (293.15, 368.15)]


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


def test_a_tap_is_safe_where_the_table_begins():
    begins, _ = practice.SCALDS[0]
    assert abs(practice.SCALDS_ABOVE - begins) < 0.2
