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
    ],
)
def test_out_of_range_is_refused(call):
    with pytest.raises(RangeError):
        call(suction.place(0.0, 288.15))
