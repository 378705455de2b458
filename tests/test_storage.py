"""Storage: the day's balance, a tank up a hill, and the air-charged pressure tank."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import storage
from calc.errors import InputError, RangeError
from calc.units import DAY, METRE_OF_WATER, PSI

AIR = 101325.0  # Pa, standard atmosphere
EVEN = storage.PATTERNS["even"]
ROUNDS = settings(max_examples=100, deadline=None)
weights = st.lists(st.floats(0, 10), min_size=24, max_size=24).filter(lambda w: sum(w) > 0.1)


def shares(parts):
    return tuple(part / sum(parts) for part in parts)


# The day's balance -----------------------------------------------------------


@pytest.mark.parametrize("name", storage.PATTERNS)
def test_a_pattern_of_use_is_24_shares_of_one_day(name):
    assert len(storage.PATTERNS[name]) == 24
    assert math.isclose(sum(storage.PATTERNS[name]), 1.0)


@given(st.floats(0.5, 24), st.floats(0, 24))
@ROUNDS
def test_a_source_gives_its_whole_day_whenever_it_runs(hours, middle):
    found = storage.supply_pattern(hours, middle)
    assert math.isclose(sum(found), 1.0, abs_tol=1e-12)
    assert max(found) <= 1 / hours + 1e-12


def test_a_source_of_six_hours_runs_from_half_past_nine():
    found = storage.supply_pattern(6.0)
    assert [round(6 * s, 9) for s in found[8:17]] == [0, 0.5, 1, 1, 1, 1, 1, 0.5, 0]


def test_a_source_past_midnight_goes_on_in_the_morning():
    found = storage.supply_pattern(4.0, 0.0)
    assert found[22] == found[23] == found[0] == found[1] == 0.25


def test_use_and_supply_alike_need_no_tank():
    assert storage.daily_balance(2.0, EVEN, 2.0, EVEN).swing < 1e-12


def test_a_source_that_keeps_up_in_every_hour_needs_no_tank():
    home = storage.PATTERNS["home"]
    enough = 24 * max(home) * 1.0001
    assert storage.daily_balance(1.0, home, enough, EVEN).swing == 0.0


def test_use_wholly_outside_the_pumping_hours_needs_a_tank_for_all_of_it():
    dawn, noon = storage.PATTERNS["dawn"], storage.supply_pattern(6.0)
    assert math.isclose(storage.daily_balance(3.0, dawn, 5.0, noon).swing, 3.0)


@given(weights, weights, st.floats(1.0, 20.0))
@ROUNDS
def test_a_richer_source_never_needs_a_larger_tank(use, supply, more):
    lean = storage.daily_balance(1.0, shares(use), 1.0, shares(supply)).swing
    rich = storage.daily_balance(1.0, shares(use), more, shares(supply)).swing
    assert rich <= lean + 1e-12


@given(weights, weights, st.floats(0.0, 5.0), st.floats(0.01, 100.0))
@ROUNDS
def test_the_balance_grows_with_the_day(use, supply, gives, times):
    one = storage.daily_balance(1.0, shares(use), gives, shares(supply)).swing
    many = storage.daily_balance(times, shares(use), times * gives, shares(supply)).swing
    assert math.isclose(many, times * one, rel_tol=1e-9, abs_tol=1e-9)


@given(weights, weights, st.floats(1.0, 5.0))
@ROUNDS
def test_levels_stay_between_empty_and_full_and_repeat(use, supply, gives):
    found = storage.daily_balance(1.0, shares(use), gives, shares(supply))
    assert min(found.levels) >= -1e-12 and max(found.levels) <= found.swing + 1e-12
    assert math.isclose(found.levels[0], found.levels[-1], abs_tol=1e-9)


def test_a_short_source_is_said_by_a_negative_surplus():
    assert math.isclose(storage.daily_balance(2.0, EVEN, 1.5, EVEN).surplus, -0.5)


@pytest.mark.parametrize("bad", [(0.5,) * 24, (1.0,), (2.0, -1.0) + (0.0,) * 22])
def test_shares_that_are_no_day_are_refused(bad):
    with pytest.raises(InputError, match="24 numbers adding to 1"):
        storage.daily_balance(1.0, bad, 1.0, EVEN)


def test_water_of_a_dry_tank_is_counted_as_unmet():
    levels, unmet = storage.level_over_days(1.0, 1.0, 2.0, EVEN, 2.0, EVEN, 1, 1)
    assert levels[-1] == 0.0
    assert math.isclose(unmet, 1.0)


def test_a_full_tank_overflows_and_holds_no_more():
    levels, unmet = storage.level_over_days(1.0, 1.0, 1.0, EVEN, 9.0, EVEN, 0, 2)
    assert max(levels) == 1.0 and unmet == 0.0


def test_half_a_dry_day_is_half_a_day_without_supply():
    levels, _ = storage.level_over_days(5.0, 2.0, 1.0, EVEN, 1.0, EVEN, 0.5, 1)
    assert math.isclose(levels[12], 1.5) and math.isclose(levels[24], 1.5)


@pytest.mark.parametrize("days", [-0.1, 61.0, math.nan])
def test_days_out_of_range_are_refused(days):
    with pytest.raises(RangeError):
        storage.tank_volume(1.0, 1.0, days, 0.9)


def test_a_tank_with_no_usable_part_is_refused():
    with pytest.raises(RangeError, match="below the outlet"):
        storage.tank_volume(1.0, 1.0, 1.0, 0.2)


def test_days_to_recover_are_the_volume_over_what_is_left():
    assert math.isclose(storage.days_to_recover(3.0, 2.5, 1.0), 2 * DAY)


def test_a_tank_never_recovers_without_a_surplus():
    assert storage.days_to_recover(1.0, 2.0, 2.0) == math.inf


# A tank up a hill ------------------------------------------------------------


def test_ten_metres_of_head_are_ten_metres_of_pressure():
    assert math.isclose(storage.gravity_pressure(12.0, 2.0, 1000.0), 10 * METRE_OF_WATER)


@given(st.floats(0, 20e5), st.floats(0, 50), st.floats(950, 1000))
@ROUNDS
def test_the_height_for_a_pressure_gives_that_pressure(pressure, loss, density):
    height = storage.height_for_pressure(pressure, loss, density)
    back = storage.gravity_pressure(height, loss, density)
    assert math.isclose(back, pressure, rel_tol=1e-9, abs_tol=1e-3)


def test_more_lost_than_fallen_is_a_negative_pressure():
    assert storage.gravity_pressure(1.0, 2.0, 1000.0) < 0


# An air-charged tank ---------------------------------------------------------

pressures = st.tuples(st.floats(0.5e5, 5e5), st.floats(0.2e5, 5e5))


@given(st.floats(0.001, 1.0), pressures)
@ROUNDS
def test_the_tank_for_a_drawdown_gives_that_drawdown(volume, levels):
    low, apart = levels
    tank = storage.tank_for_drawdown(volume, low, low, low + apart, AIR)
    back = storage.drawdown(tank, low, low, low + apart, AIR)
    assert math.isclose(back, volume, rel_tol=1e-9)


@given(pressures, st.floats(0.0, 1.0))
@ROUNDS
def test_a_tank_never_gives_more_than_it_holds(levels, part):
    low, apart = levels
    given_out = storage.drawdown(0.1, part * low, low, low + apart, AIR)
    assert 0 < given_out < 0.1


@given(pressures, st.floats(0.0, 0.99))
@ROUNDS
def test_a_precharge_at_the_cut_in_gives_most(levels, part):
    low, apart = levels
    most = storage.drawdown(0.1, low, low, low + apart, AIR)
    assert storage.drawdown(0.1, part * low, low, low + apart, AIR) < most


def test_a_precharge_above_the_cut_in_is_refused_at_its_field():
    with pytest.raises(InputError) as caught:
        storage.drawdown(0.1, 2.1e5, 2e5, 4e5, AIR)
    assert caught.value.name == "precharge_pa" and "2 psi" in caught.value.message


def test_a_cut_out_below_the_cut_in_is_refused_at_its_field():
    with pytest.raises(InputError) as caught:
        storage.drawdown(0.1, 1e5, 4e5, 4e5, AIR)
    assert caught.value.name == "cut_out_pa"


@given(st.floats(0.0, 1.0), st.floats(1e-5, 1e-2), st.floats(1e-3, 1.0))
@ROUNDS
def test_no_draw_starts_the_pump_more_often_than_half_its_flow(part, pump, volume):
    worst = storage.most_starts_rate(volume, pump)
    assert storage.starts_rate(volume, pump, part * pump) <= worst * (1 + 1e-12)


@given(st.floats(0.001, 0.999), st.floats(1e-5, 1e-2), st.floats(1e-3, 1.0))
@ROUNDS
def test_a_cycle_is_a_run_and_a_rest(part, pump, volume):
    draw = part * pump
    cycle = storage.run_time(volume, pump, draw) + volume / draw
    assert math.isclose(1 / storage.starts_rate(volume, pump, draw), cycle, rel_tol=1e-9)


def test_nothing_drawn_and_everything_drawn_start_no_pump():
    assert storage.starts_rate(0.03, 3e-4, 0.0) == storage.starts_rate(0.03, 3e-4, 3e-4) == 0.0


def test_a_pump_at_its_full_flow_never_rests():
    assert storage.run_time(0.03, 3e-4, 3e-4) == math.inf


def test_more_drawn_than_the_pump_gives_is_refused():
    with pytest.raises(RangeError, match="never stops"):
        storage.starts_rate(0.03, 3e-4, 4e-4)


@given(st.floats(1e-5, 1e-2), st.floats(1e-4, 0.1))
@ROUNDS
def test_the_drawdown_for_a_rate_keeps_the_worst_draw_to_it(pump, rate):
    volume = storage.drawdown_for_starts(pump, rate)
    assert math.isclose(storage.most_starts_rate(volume, pump), rate, rel_tol=1e-9)


def test_starts_from_a_leak_are_the_limit_of_small_draws():
    leak, pump, volume = 1e-9, 3e-4, 0.03
    exact = storage.starts_rate(volume, pump, leak)
    assert math.isclose(storage.leak_starts_rate(volume, leak), exact, rel_tol=1e-5)


def test_a_leak_below_nothing_is_refused():
    with pytest.raises(RangeError):
        storage.leak_starts_rate(0.03, -1e-9)


def test_thin_air_makes_a_tank_give_more():
    low = storage.drawdown(0.1, 28 * PSI, 30 * PSI, 50 * PSI, AIR)
    assert storage.drawdown(0.1, 28 * PSI, 30 * PSI, 50 * PSI, 0.7 * AIR) > low
