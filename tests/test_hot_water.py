"""Hot water: limits, what never goes the wrong way, round trips, and what is refused."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import hot_water, practice, water
from calc.errors import RangeError
from calc.units import LITRE

ROUNDS = settings(max_examples=150, deadline=None)
AIR = 101325.0
colds = st.floats(278.15, 303.15)
hots = st.floats(313.15, 368.15)
pressures = st.floats(0.5e5, 6e5)
growths = st.floats(1e-5, 0.1)


@given(st.floats(1e-3, 10.0), colds, hots)
@ROUNDS
def test_the_mass_stays(volume, cold, hot):
    grown = hot_water.growth(volume, cold, hot)
    mass = volume * water.density(cold)
    assert (volume + grown) * water.density(hot) == pytest.approx(mass, rel=1e-12)


@given(colds, hots)
@ROUNDS
def test_hotter_grows_more_and_twice_the_heater_twice_as_much(cold, hot):
    less, more = (hot_water.growth(0.1, cold, one) for one in (hot, hot + 1))
    assert 0 < less < more
    assert hot_water.growth(0.2, cold, hot) == pytest.approx(2 * less)


def test_water_that_is_not_heated_does_not_grow():
    assert hot_water.growth(0.1, 300.0, 300.0) == 0
    with pytest.raises(RangeError, match="warmer"):
        hot_water.growth(0.1, 300.0, 299.0)


@given(growths, pressures, st.floats(0.2, 1.0), st.floats(1.1, 4.0))
@ROUNDS
def test_the_tank_that_is_needed_reaches_the_pressure_it_was_made_for(growth, static, low, times):
    """Boyle there and back: with a pre-charge at or below the static pressure."""
    most = static * times
    tank = hot_water.tank_needed(growth, low * static, static, most, AIR)
    reached = hot_water.pressure_reached(growth, min(tank, 100.0), low * static, static, AIR)
    if tank <= 100.0:
        assert reached == pytest.approx(most, rel=1e-9)


@given(growths, pressures, st.floats(1.1, 4.0))
@ROUNDS
def test_charged_to_the_static_pressure_it_is_the_acceptance_factor(growth, static, times):
    most = static * times
    factor = (most - static) / (most + AIR)  # of absolute pressures
    tank = hot_water.tank_needed(growth, static, static, most, AIR)
    assert tank == pytest.approx(growth / factor, rel=1e-9)


@given(pressures, st.floats(0.2, 0.99), st.floats(1.05, 1.6))
@ROUNDS
def test_no_pre_charge_is_better_than_the_static_pressure(static, low, high):
    most = 2 * static
    best = hot_water.tank_needed(1e-3, static, static, most, AIR)
    for other in (low * static, high * static):
        assert hot_water.tank_needed(1e-3, other, static, most, AIR) > best


def test_a_pressure_below_the_start_needs_a_tank_without_end():
    assert hot_water.tank_needed(1e-3, 3e5, 3e5, 3e5, AIR) == math.inf
    assert hot_water.tank_needed(1e-3, 4e5, 3e5, 3.9e5, AIR) == math.inf


def test_a_tank_with_less_gas_than_the_water_grows_is_full():
    assert hot_water.pressure_reached(2e-3, 2e-3, 3e5, 3e5, AIR) == math.inf
    # full of water before: a fifth of the gas is left at the static pressure
    assert hot_water.pressure_reached(2e-3, 5e-3, 0.0, 4 * AIR, AIR) == math.inf


@given(growths, pressures, st.floats(1.3, 20.0))
@ROUNDS
def test_a_larger_tank_never_raises_the_pressure(growth, static, times):
    tanks = [min(growth * times * more, 100.0) for more in (1.0, 1.5, 4.0)]
    found = [hot_water.pressure_reached(growth, one, static, static, AIR) for one in tanks]
    assert found == sorted(found, reverse=True) and found[-1] > static


def test_a_locked_heater_would_rise_past_anything_it_holds():
    grown = hot_water.growth(1.0, 288.15, 333.15)
    rise = hot_water.locked_rise(grown, 333.15)
    assert 100e5 < rise < 400e5  # water alone: 380 bar; no heater is tested at more than 20
    assert hot_water.locked_rise(0.0, 333.15) == 0
    # a wall that gives no way leaves the water's own bulk modulus
    stiff = hot_water.locked_rise(grown, 333.15, slender=10.0)
    assert stiff < grown * water.bulk_modulus(333.15) < 1.2 * stiff


@given(colds, st.floats(330.0, 368.15), st.floats(0.0, 1.0))
@ROUNDS
def test_mixing_keeps_the_heat(cold, hot, share):
    mixed = min(cold + share * (hot - cold), hot)
    found = hot_water.hot_share(cold, hot, mixed)
    assert found * hot + (1 - found) * cold == pytest.approx(mixed)
    assert 0 <= found <= 1


def test_a_pipe_holds_its_bore_times_its_length():
    assert hot_water.pipe_holds(0.02, 12.0) == pytest.approx(3.77 * LITRE, rel=1e-3)
    assert hot_water.pipe_holds(0.04, 12.0) == pytest.approx(4 * hot_water.pipe_holds(0.02, 12.0))


def test_burns_come_sooner_the_hotter_and_the_table_is_met_at_its_points():
    for kelvin, seconds in practice.SCALDS:
        assert hot_water.scald_time(kelvin) == pytest.approx(seconds)
    times = [hot_water.scald_time(322.1 + 0.1 * n) for n in range(193)]
    assert times == sorted(times, reverse=True)


@pytest.mark.parametrize("kelvin", [practice.SCALDS[0][0] - 0.01, practice.SCALDS[-1][0] + 0.01])
def test_no_time_is_told_beyond_the_table(kelvin):
    with pytest.raises(RangeError):
        hot_water.scald_time(kelvin)
