"""Water hammer: limits, bounds and round trips that must hold."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from calc import surge
from calc.errors import InputError, RangeError
from tests.steps import lines

CHECKED = settings(max_examples=100, deadline=None)
SPEEDS = st.floats(150.0, 1450.0)
LENGTHS = st.floats(1.0, 2000.0)
VELOCITIES = st.floats(0.05, 5.0)
PRESSURES = st.floats(1e4, 2e6)
RHO = 998.2


def test_a_stiff_wall_leaves_the_speed_of_sound_in_water():
    assert surge.wave_speed(2.2e9, 1000.0, 0.05, 0.05, 1e13, 1.0) == pytest.approx(
        math.sqrt(2.2e6), rel=2e-4
    )


@given(st.floats(5e8, 2e11), st.floats(5e8, 2e11))
@CHECKED
def test_a_stiffer_wall_never_slows_the_wave(a, b):
    soft, stiff = sorted((a, b))
    speeds = [surge.wave_speed(2.2e9, RHO, 0.05, 0.003, e, 1.0) for e in (soft, stiff)]
    assert speeds[0] <= speeds[1]


def test_no_flow_no_hammer():
    assert surge.closing_rise(RHO, 400.0, 100.0, 0.0, 0.0, 3e5) == 0.0


@given(SPEEDS, LENGTHS, VELOCITIES, PRESSURES, st.floats(0.0, 50.0))
@CHECKED
def test_no_closing_beats_a_sudden_one(speed, length, velocity, pressure, closing):
    rise = surge.closing_rise(RHO, speed, length, velocity, closing, pressure)
    assert 0 < rise <= surge.joukowsky_rise(RHO, speed, velocity) * (1 + 1e-12)


@given(SPEEDS, LENGTHS, VELOCITIES, PRESSURES, st.floats(0.0, 1.0))
@CHECKED
def test_any_closing_within_the_critical_time_is_sudden(speed, length, velocity, pressure, share):
    closing = share * surge.critical_time(length, speed)
    rise = surge.closing_rise(RHO, speed, length, velocity, closing, pressure)
    assert rise == surge.joukowsky_rise(RHO, speed, velocity)


def test_michaud_meets_joukowsky_at_the_critical_time():
    closing = surge.critical_time(140.0, 380.0)
    assert surge.michaud_rise(RHO, 140.0, 1.2, closing) == pytest.approx(
        surge.joukowsky_rise(RHO, 380.0, 1.2)
    )


def test_allievi_at_high_pressure_tends_to_michaud():
    # Against a very high pressure the velocity follows the opening: Michaud's case.
    found = surge.closing_rise(RHO, 400.0, 100.0, 0.1, 2.0, 1e8)
    assert found == pytest.approx(surge.michaud_rise(RHO, 100.0, 0.1, 2.0), rel=0.01)


def test_allievi_for_a_very_slow_closing_at_low_pressure_tends_to_the_rigid_column():
    found = surge.closing_rise(RHO, 1000.0, 50.0, 3.0, 10.0, 2000.0)
    # Allievi's limit for slow uniform closing (Chaudhry 2014), from memory
    n = RHO * 50.0 * 3.0 / (2000.0 * 10.0)
    assert found == pytest.approx(2000.0 * n / 2 * (n + math.sqrt(n * n + 4)), rel=0.01)


@given(SPEEDS, LENGTHS, VELOCITIES, PRESSURES, st.floats(0.02, 0.9))
@CHECKED
def test_the_closing_time_found_keeps_the_rise_allowed(speed, length, velocity, pressure, share):
    allowed = share * surge.joukowsky_rise(RHO, speed, velocity)
    closing = surge.closing_time_for(RHO, speed, length, velocity, pressure, allowed)
    assert surge.closing_rise(RHO, speed, length, velocity, closing, pressure) <= allowed * (
        1 + 1e-9
    )


@given(SPEEDS, LENGTHS, VELOCITIES, PRESSURES, st.floats(0.02, 0.9))
@CHECKED
def test_the_closing_time_found_is_not_longer_than_needed(speed, length, velocity, pressure, share):
    allowed = share * surge.joukowsky_rise(RHO, speed, velocity)
    closing = surge.closing_time_for(RHO, speed, length, velocity, pressure, allowed)
    shorter = surge.closing_rise(RHO, speed, length, velocity, 0.99 * closing, pressure)
    assert shorter > allowed * 0.98


def test_a_gentle_flow_may_be_stopped_at_once():
    assert surge.closing_time_for(RHO, 300.0, 100.0, 0.1, 3e5, 1e5) == 0.0


def test_no_room_under_the_rating_is_said():
    with pytest.raises(InputError, match="nothing is left"):
        surge.closing_time_for(RHO, 300.0, 100.0, 1.0, 3e5, 0.0)


def test_a_rise_no_closing_is_slow_enough_for_has_no_time():
    assert surge.closing_time_for(RHO, 1200.0, 1e6, 20.0, 1e5, 1.0) == math.inf


def test_a_closing_of_sixty_thousand_phases_is_not_followed_phase_by_phase():
    def taken(closing):
        return lines(lambda: surge.closing_rise(RHO, 1250.0, 5.55, 16.5, closing, 1830.0))[1]

    assert taken(548.0) < 2 * taken(5.48)


def test_a_rejoining_column_can_knock_with_twice_the_rise():
    assert surge.rejoining_peak(3e5, 5e5) - 3e5 == 2 * 5e5


def test_water_too_fast_for_any_pipe_is_refused_with_what_to_do():
    with pytest.raises(RangeError, match="lower the flow or choose a larger pipe") as caught:
        surge.joukowsky_rise(RHO, 400.0, 120.0)
    assert caught.value.name == "velocity"


def test_a_column_parts_only_below_vapour_pressure():
    low = surge.low_side(2e5, 4e5)
    assert [surge.column_separates(p, 101325.0, 1705.0) for p in (low, -99000.0)] == [True, False]


def test_a_relief_valve_for_no_rise_passes_the_whole_flow():
    assert surge.relief_flow(0.001, 5e5, 0.0) == 0.001


def test_a_relief_valve_is_idle_when_the_rise_is_allowed():
    assert surge.relief_flow(0.001, 5e5, 6e5) == 0.0


@pytest.mark.parametrize(
    "call",
    [
        lambda: surge.wave_speed(2.2e9, 1000.0, 0.05, 0.003, 0.0, 1.0),
        lambda: surge.joukowsky_rise(1000.0, 400.0, -1.0),
        lambda: surge.critical_time(0.0, 400.0),
        lambda: surge.michaud_rise(1000.0, 100.0, 1.0, 0.0),
        lambda: surge.allievi_phase(1000.0, 400.0, 100.0, 1.0, 2.0, 0.0),
        lambda: surge.joukowsky_rise(1000.0, 400.0, float("nan")),
    ],
)
def test_numbers_out_of_range_are_refused(call):
    with pytest.raises(RangeError):
        call()


# Arrester and thrust ----------------------------------------------------------------------------


@pytest.mark.parametrize("velocity, allowed", [(0.5, 2e5), (1.5, 4e5), (3.0, 8e5)])
def test_an_arresters_air_holds_the_peak_of_a_rigid_column(velocity, allowed):
    """Against the column's own motion, integrated: L rho dv/dt = p_0 - p, p V^n = constant."""
    density, length, bore, start = 999.1, 140.0, 0.0204, 4.5e5
    area = math.pi / 4 * bore**2
    air = surge.arrester_air(density, length, bore, velocity, start, start + allowed)

    def motion(_time, state):
        speed, volume = state
        pressure = start * (air / volume) ** surge.POLYTROPIC
        return [(start - pressure) / (density * length), -area * speed]

    def stopped(_time, state):
        return state[0]

    stopped.terminal, stopped.direction = True, -1
    run = solve_ivp(motion, (0, 500), [velocity, air], events=stopped, rtol=1e-9, atol=1e-12)
    peak = start * (air / run.y[1][-1]) ** surge.POLYTROPIC
    assert peak == pytest.approx(start + allowed, rel=1e-5)


def test_less_air_is_needed_for_less_water_and_a_higher_peak():
    plain = surge.arrester_air(1000, 100, 0.02, 1.0, 4e5, 6e5)
    assert surge.arrester_air(1000, 100, 0.02, 0.5, 4e5, 6e5) == pytest.approx(plain / 4)
    assert surge.arrester_air(1000, 100, 0.02, 1.0, 4e5, 8e5) < plain
    with pytest.raises(InputError):
        surge.arrester_air(1000, 100, 0.02, 1.0, 4e5, 4e5)


def test_a_bend_bears_the_pressure_on_both_its_ends():
    area = math.pi / 4 * 0.05**2
    assert surge.thrust(6e5, 0.05) == pytest.approx(math.sqrt(2) * 6e5 * area)
    assert surge.thrust(6e5, 0.05, math.pi / 3) == pytest.approx(6e5 * area)
    assert surge.thrust(6e5, 0.05, math.pi) == pytest.approx(2 * 6e5 * area)
