"""Suction relations: limits, directions, ranges."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import suction
from calc.errors import RangeError

SITES = st.builds(suction.place, st.floats(0, 4000), st.floats(274, 340))


@given(SITES, st.floats(-5, 9), st.floats(0, 3))
@settings(max_examples=100, deadline=None)
def test_at_the_allowable_lift_nothing_is_left_over(site, needed, friction):
    needed = abs(needed)
    lift = suction.allowable_lift(site, friction, needed, 0.6)
    if lift > -100:
        assert suction.npsh_available(site, lift, friction) == pytest.approx(needed + 0.6, abs=1e-9)


@given(st.floats(0, 4000), st.floats(274, 340))
@settings(max_examples=100, deadline=None)
def test_height_and_heat_lower_the_limit(altitude, temperature):
    here = suction.theoretical_lift(suction.place(altitude, temperature))
    assert suction.theoretical_lift(suction.place(altitude + 10, temperature)) < here
    assert suction.theoretical_lift(suction.place(altitude, temperature + 1)) < here


def test_a_dry_lift_shrinks_with_the_air():
    sea, high = suction.place(0.0, 293.15), suction.place(2000.0, 293.15)
    assert suction.altitude_derated_lift(5.0, sea, sea) == 5.0
    share = suction.altitude_derated_lift(5.0, high, sea) / 5.0
    assert math.isclose(share, high.air_pa / sea.air_pa, rel_tol=1e-12)


def test_the_vacuum_at_the_inlet_is_the_weight_lifted():
    site = suction.place(0.0, 277.13)
    assert math.isclose(suction.inlet_pressure(site, 3.0, 1.0), -4 * site.weight, rel_tol=1e-12)


def test_air_to_clear_is_the_pipes_volume():
    site = suction.place(0.0, 288.15)
    volume = suction.air_volume_to_clear(0.05, 10.0, site, 4.0)
    assert math.isclose(volume, math.pi * 0.025**2 * 10, rel_tol=1e-12)


@pytest.mark.parametrize(
    "call",
    [
        lambda s: suction.npsh_available(s, 101.0, 0.0),
        lambda s: suction.npsh_available(s, 4.0, -0.1),
        lambda s: suction.allowable_lift(s, 0.0, -1.0, 0.0),
        lambda s: suction.altitude_derated_lift(11.0, s, s),
        lambda s: suction.air_volume_to_clear(0.05, 10.0, s, 12.0),
        lambda s: suction.priming_time(0.05, 10.0, s, 12.0, 1e-4),
        lambda s: suction.priming_time(0.05, 3.0, s, 4.0, 1e-4),
        lambda s: suction.priming_time(0.05, 10.0, s, -1.0, 1e-4),
        lambda s: suction.priming_time(0.05, 10.0, s, 4.0, 0.0),
        lambda s: suction.dry_lift_for(-0.1, s, s),
        lambda s: suction.npsh_of_dry_lift(11.0, s, s),
    ],
)
def test_out_of_range_is_refused(call):
    with pytest.raises(RangeError):
        call(suction.place(0.0, 288.15))


@given(SITES, st.floats(0.1, 10.0))
@settings(max_examples=100, deadline=None)
def test_a_dry_lift_loses_all_that_height_and_heat_take_from_the_air(site, rated):
    sea = suction.place(0.0, 293.15)
    needed = suction.npsh_of_dry_lift(rated, site, sea)
    allowed = suction.allowable_lift(site, 0.0, needed, 0.0)
    lost = suction.theoretical_lift(sea) - suction.theoretical_lift(site)
    assert allowed <= rated - lost + 1e-9
    assert allowed <= suction.altitude_derated_lift(rated, site, sea) + 1e-9


@given(SITES, st.floats(0.1, 10.0))
@settings(max_examples=100, deadline=None)
def test_a_dry_lift_where_it_was_rated_allows_just_that_lift(site, rated):
    limit = suction.theoretical_lift(site)
    needed = suction.npsh_of_dry_lift(rated, site, site)
    allowed = suction.allowable_lift(site, 0.0, needed, 0.0)
    assert allowed == pytest.approx(min(rated, limit), abs=1e-9)


@given(SITES, st.floats(0.0, 20.0), st.floats(-20.0, 9.0), st.floats(0.0, 3.0))
@settings(max_examples=100, deadline=None)
def test_npsh_falls_metre_for_metre_with_lift_and_friction(site, more, lift, friction):
    before = suction.npsh_available(site, lift, friction)
    assert suction.npsh_available(site, lift + more, friction) == pytest.approx(before - more)
    assert suction.npsh_available(site, lift, friction + more) == pytest.approx(before - more)


@given(SITES, st.floats(0.0, 9.0))
@settings(max_examples=100, deadline=None)
def test_a_pump_that_states_the_dry_lift_asked_for_needs_no_more(site, npsh):
    sea = suction.place(0.0, 293.15)
    asked = suction.dry_lift_for(npsh, site, sea)
    if 0.0 < asked <= suction.MOST_DRY_LIFT:
        assert suction.npsh_of_dry_lift(asked, site, sea) == pytest.approx(npsh, abs=1e-9)


@given(SITES, st.floats(0.01, 0.99), st.floats(0.01, 0.1))
@settings(max_examples=100, deadline=None)
def test_priming_a_rising_pipe_takes_one_to_two_times_its_volume(site, share, bore):
    lift = share * suction.theoretical_lift(site)
    swept = 2e-4 * suction.priming_time(bore, lift, site, lift, 2e-4)
    volume = suction.air_volume_to_clear(bore, lift, site, lift)
    assert volume <= swept <= 2 * volume


def test_priming_a_level_pipe_sweeps_its_volume_once():
    site = suction.place(0.0, 288.15)
    swept = 2e-4 * suction.priming_time(0.032, 12.0, site, 0.0, 2e-4)
    volume = suction.air_volume_to_clear(0.032, 12.0, site, 0.0)
    assert swept == pytest.approx(volume, rel=1e-12)


def test_half_the_pump_takes_twice_as_long_to_prime():
    site = suction.place(0.0, 288.15)
    slow = suction.priming_time(0.032, 12.0, site, 4.0, 1e-4)
    assert slow == pytest.approx(2 * suction.priming_time(0.032, 12.0, site, 4.0, 2e-4))


def test_an_error_says_what_to_do():
    with pytest.raises(RangeError, match="Lower the pump"):
        suction.priming_time(0.05, 20.0, suction.place(0.0, 288.15), 12.0, 1e-4)


# Pulses -----------------------------------------------------------------------------------------

PIPES = st.tuples(st.floats(0.1, 100), st.floats(0.05, 3), st.floats(0.1, 30), st.floats(0.02, 0.4))


@given(PIPES, st.floats(1.01, 3.0))
@settings(max_examples=100, deadline=None)
def test_pulses_take_more_in_longer_narrower_faster_pipe_and_by_as_much(pipe, more):
    length, speed, strokes, factor = pipe
    head = suction.acceleration_head(length, speed, strokes, factor, 1.4)
    assert head > 0
    for changed in ((more * length, speed, strokes), (length, more * speed, strokes),
                    (length, speed, more * strokes)):  # fmt: skip
        found = suction.acceleration_head(*changed, factor, 1.4)
        assert found == pytest.approx(more * head, rel=1e-12)


def test_no_strokes_and_no_flow_take_no_head():
    assert suction.acceleration_head(5.0, 0.5, 0.0, 0.2, 1.4) == 0.0
    assert suction.acceleration_head(5.0, 0.0, 5.0, 0.2, 1.4) == 0.0


@pytest.mark.parametrize("arguments", [
    (-1.0, 0.5, 5.0, 0.2, 1.4), (5.0, -0.5, 5.0, 0.2, 1.4), (5.0, 0.5, 101.0, 0.2, 1.4),
    (5.0, 0.5, 5.0, 1.1, 1.4), (5.0, 0.5, 5.0, 0.2, 0.9),
])  # fmt: skip
def test_pulses_out_of_range_are_refused(arguments):
    with pytest.raises(RangeError):
        suction.acceleration_head(*arguments)
