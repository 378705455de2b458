"""A well as a store: every closed form against an integration by scipy, and its limits."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from calc import practice, well_yield
from calc.errors import InputError, RangeError
from calc.units import LITRE, MINUTE

ROUNDS = settings(max_examples=80, deadline=None)
flows = st.floats(1e-6, 1e-2)
stores = st.floats(1e-3, 50.0)
shares = st.floats(0.0, 0.95)


def integrated(yields, stored, pump, time, start=0.0):
    """Share drawn down after a time: W dy/dt = Q_p - Q_w y, step by step."""
    found = solve_ivp(
        lambda _t, y: (pump - yields * y) / stored, (0.0, time), [start], rtol=1e-10, atol=1e-12
    )
    return found.y[0][-1]


@pytest.mark.parametrize("start", [0.0, 0.4])
@pytest.mark.parametrize("pump", [1.2, 2.0, 30.0])
def test_a_pump_empties_the_well_when_an_integration_says_so(pump, start):
    yields, stored = 5e-5, 0.15
    time = well_yield.time_to_empty(yields, stored, pump * yields, start)
    assert integrated(yields, stored, pump * yields, time, start) == pytest.approx(1.0, abs=1e-7)


@pytest.mark.parametrize("share", [0.1, 0.5, 0.95])
def test_a_rest_brings_back_its_share_as_an_integration_says(share):
    time = well_yield.time_to_recover(5e-5, 0.15, share)
    assert integrated(5e-5, 0.15, 0.0, time, 1.0) == pytest.approx(1 - share, abs=1e-7)


@pytest.mark.parametrize("start", [0.0, 0.3, 0.9])
@pytest.mark.parametrize("time", [60.0, 3600.0, 86400.0])
def test_the_most_of_a_busy_time_just_empties_the_well(time, start):
    flow = well_yield.most_over(5e-5, 0.15, time, start)
    assert integrated(5e-5, 0.15, flow, time, start) == pytest.approx(1.0, abs=1e-6)


@pytest.mark.parametrize("pump", [1.05, 2.2, 40.0])
def test_a_bucket_test_finds_the_store_it_was_made_of(pump):
    """A made-up well pumped until its level is at its lowest, by the integration."""
    yields, stored = 5e-5, 0.15
    emptied = solve_ivp(
        lambda _t, y: (pump * yields - yields * y) / stored, (0.0, 1e6), [0.0], rtol=1e-10,
        atol=1e-12, events=_at_lowest,
    )  # fmt: skip
    time = emptied.t_events[0][0]
    found = well_yield.bucket_store(pump * yields * time, time, yields)
    assert found == pytest.approx(stored, rel=1e-6)


def _at_lowest(_time, y):
    return y[0] - 1


_at_lowest.terminal = True


def test_200_litres_in_half_an_hour_and_then_3_a_minute():
    """Worked by hand: x = 3 * 30 / 200 = 0.45, and 90 L / -ln(0.55) = 150.5 L."""
    stored = well_yield.bucket_store(200 * LITRE, 30 * MINUTE, 3 * LITRE / MINUTE)
    assert stored == pytest.approx(0.1505, abs=5e-5)


def test_a_bucket_test_at_its_ends():
    assert well_yield.bucket_store(0.2, 1800.0, 0.0) == 0.2  # all of it was stored
    assert well_yield.bucket_store(0.2, 2000.0, 1e-4) == 0.0  # none of it
    with pytest.raises(InputError) as told:
        well_yield.bucket_store(0.2, 2000.0, 1.1e-4)
    assert told.value.name == "steady_m3s"


@given(flows, st.floats(10.0, 1e5), st.floats(0.001, 0.999))
@ROUNDS
def test_a_steadier_flow_after_it_was_drawn_leaves_less_that_was_stored(pump, time, share):
    whole = pump * time
    less = well_yield.bucket_store(whole, time, share * pump)
    assert 0 <= less <= whole
    assert well_yield.bucket_store(whole, time, 0.9 * share * pump) >= less


@given(flows, stores, shares, st.floats(1.01, 50.0))
@ROUNDS
def test_more_store_or_yield_never_shortens_a_run(yields, stored, start, times):
    def runs(gives=yields, holds=stored):
        return well_yield.time_to_empty(gives, holds, times * yields, start)

    assert runs(holds=2 * stored) >= runs()
    assert runs(gives=1.005 * yields) >= runs()


@given(flows, stores, shares, st.floats(60.0, 1e5))
@ROUNDS
def test_a_busy_time_is_never_given_less_by_a_fuller_or_larger_well(yields, stored, start, time):
    def most(gives=yields, holds=stored, drawn=start):
        return well_yield.most_over(gives, holds, time, drawn)

    for more in (most(holds=2 * stored), most(gives=2 * yields), most(drawn=start / 2)):
        assert more >= most() * (1 - 1e-12)
    assert most() >= yields * (1 - 1e-12)


def test_a_pump_that_takes_no_more_than_the_yield_runs_on():
    assert well_yield.time_to_empty(5e-5, 0.15, 5e-5) == math.inf
    assert well_yield.time_to_empty(5e-5, 0.15, 0.0) == math.inf


def test_a_well_without_inflow_gives_its_store_and_never_recovers():
    assert well_yield.time_to_empty(0.0, 0.15, 1e-4, 0.2) == pytest.approx(1200.0)
    assert well_yield.time_to_recover(0.0, 0.15, 0.5) == math.inf
    assert well_yield.most_over(0.0, 0.15, 600.0, 0.0) == pytest.approx(0.15 / 600)


def test_a_well_whose_store_is_not_counted_gives_its_yield():
    assert well_yield.most_over(5e-5, 0.0, 600.0, 0.5) == 5e-5
    assert well_yield.time_to_empty(5e-5, 0.0, 1e-4) == 0.0
    assert well_yield.time_to_recover(5e-5, 0.0, 0.5) == 0.0


@given(st.floats(0.03, 5.0), st.floats(1.0, 2.0), st.floats(0.0, 400.0))
@ROUNDS
def test_a_wider_well_never_holds_less(bore, wider, depth):
    assert well_yield.standing(bore * wider, depth) >= well_yield.standing(bore, depth)


def test_a_level_is_drawn_down_in_step_with_the_flow():
    assert well_yield.drawn_share(4e-5, 1e-5) == pytest.approx(0.25)
    assert well_yield.drawn_share(4e-5, 5e-5) == 1.0
    assert well_yield.drawn_share(0.0, 0.0) == 0.0


# The pump -----------------------------------------------------------------------------------------


@given(st.floats(1e-5, 1e-2), st.floats(0.05, 0.3), st.floats(0.02, 1.0))
@ROUNDS
def test_a_sleeve_as_wide_as_it_may_be_has_just_that_speed(flow, motor, speed):
    bore = well_yield.sleeve_bore(flow, motor, speed)
    if bore > motor * (1 + 1e-9):
        assert well_yield.cooling_speed(flow, bore, motor) == pytest.approx(speed, rel=1e-4)


def test_a_motor_as_wide_as_the_well_does_not_fit():
    with pytest.raises(InputError, match="fit"):
        well_yield.cooling_speed(1e-4, 0.1, 0.1)


def test_larger_motors_need_faster_water():
    assert well_yield.least_cooling(0.096) == practice.COOLING_SMALL
    assert well_yield.least_cooling(0.14) == practice.COOLING_LARGE > practice.COOLING_SMALL


@pytest.mark.parametrize("length, more", [(0.0, 0), (60.0, 0), (60.1, 1), (120.0, 1), (200.0, 3)])
def test_no_length_of_drop_pipe_between_check_valves_is_over_60_m(length, more):
    assert well_yield.check_valves(length) == more
    assert length / (more + 1) <= 60.0 + 1e-9


@pytest.mark.parametrize("call", [
    lambda: well_yield.bucket_store(0.0, 60.0, 1e-5),
    lambda: well_yield.standing(0.01, 1.0),
    lambda: well_yield.time_to_empty(-1.0, 1.0, 1.0),
    lambda: well_yield.time_to_empty(1.0, 1.0, 2.0, 1.5),
    lambda: well_yield.time_to_recover(1.0, 1.0, 1.0),
    lambda: well_yield.most_over(1.0, 1.0, 0.0, 0.5),
    lambda: well_yield.sleeve_bore(1e-4, 0.1, 0.0),
])  # fmt: skip
def test_values_out_of_range_are_refused(call):
    with pytest.raises(RangeError):
        call()
