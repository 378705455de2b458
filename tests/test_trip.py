"""A pump that stops at once: limits, bounds and round trips that must hold."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import surge, trip
from calc.errors import InputError, RangeError

CHECKED = settings(max_examples=100, deadline=None)
SPEEDS = st.floats(150.0, 1450.0)
LENGTHS = st.floats(5.0, 2000.0)
VELOCITIES = st.floats(0.05, 5.0)
STARTS = st.floats(1.2e5, 2e6)  # absolute
AIRS = st.floats(1e-5, 1.0)
RHO, BORE = 998.2, 0.026


def swing(speed, length, velocity, start, air):
    return trip.swing(RHO, speed, length, BORE, velocity, start, air)


def test_without_flow_nothing_falls():
    assert surge.joukowsky_rise(RHO, 400.0, 0.0) == 0.0
    still = swing(400.0, 100.0, 0.0, 4e5, 1e-3)
    assert (still.fall, still.rise) == (0.0, 0.0)


@given(STARTS, st.floats(0.0, 200.0), st.floats(0.0, 5e5))
@CHECKED
def test_a_higher_point_has_less_by_the_weight_of_water(static, height, fall):
    here = trip.pressure_after(static, -fall, height, 9790.0)
    assert trip.pressure_after(static, -fall, height + 1.0, 9790.0) == pytest.approx(here - 9790.0)


@given(SPEEDS, LENGTHS, VELOCITIES, STARTS, AIRS)
@CHECKED
def test_a_larger_vessel_never_swings_further(speed, length, velocity, start, air):
    small, large = (swing(speed, length, velocity, start, one) for one in (air, 1.5 * air))
    assert large.fall <= small.fall * (1 + 1e-9) and large.rise <= small.rise * (1 + 1e-9)


@given(SPEEDS, LENGTHS, VELOCITIES, STARTS, AIRS)
@CHECKED
def test_more_flow_never_swings_less(speed, length, velocity, start, air):
    slow, fast = (swing(speed, length, v, start, air) for v in (velocity, 1.2 * velocity))
    assert fast.fall >= slow.fall * (1 - 1e-9) and fast.rise >= slow.rise * (1 - 1e-9)


@given(SPEEDS, LENGTHS, VELOCITIES, STARTS, AIRS)
@CHECKED
def test_no_vessel_swings_further_than_twice_the_sudden_fall_or_below_a_vacuum(
    speed, length, velocity, start, air
):
    found, sudden = swing(speed, length, velocity, start, air), RHO * speed * velocity
    assert 0 <= found.fall <= min(2 * sudden, start) * (1 + 1e-9)
    assert 0 <= found.rise <= 2 * sudden * (1 + 1e-9)


@given(LENGTHS, VELOCITIES, STARTS, st.one_of(st.floats(0.2, 0.95), st.floats(1.05, 4.0)))
@CHECKED
def test_the_vessel_found_swings_as_far_as_it_may(length, velocity, start, share):
    air = trip.vessel_air(RHO, length, BORE, velocity, start, share * start)
    found = swing(1e9 / RHO / velocity, length, velocity, start, air)  # so stiff that no bound acts
    reached = start - found.fall if share < 1 else start + found.rise
    assert reached == pytest.approx(share * start, rel=1e-6)


def test_a_vessel_for_a_highest_pressure_is_that_of_an_arrester():
    arrester = surge.arrester_air(RHO, 140.0, BORE, 1.0, 4e5, 9e5)
    assert trip.vessel_air(RHO, 140.0, BORE, 1.0, 4e5, 9e5) == pytest.approx(arrester, rel=1e-12)


@pytest.mark.parametrize("call", [
    lambda: trip.swing(RHO, 400.0, 100.0, BORE, 1.0, 0.0, 1e-3),
    lambda: trip.swing(RHO, 400.0, 100.0, BORE, 1.0, 4e5, 0.0),
    lambda: trip.vessel_air(RHO, 100.0, BORE, 1.0, 4e5, 0.0),
])  # fmt: skip
def test_out_of_range_is_refused(call):
    with pytest.raises(RangeError):
        call()


def test_a_vessel_that_may_not_swing_is_refused():
    with pytest.raises(InputError, match="swing"):
        trip.vessel_air(RHO, 100.0, BORE, 1.0, 4e5, 4e5)
