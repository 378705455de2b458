"""Water by gravity: closed forms, crests and siphons, tanks that break the pressure."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc import water
from calc.errors import InputError
from calc.gravity import Break, Fall, Spot, crests, dips
from calc.pipe import friction, pipes
from calc.units import CELSIUS

COLD = CELSIUS + 15
PIPE = pipes.pipe("pe100-sdr11", "32")
WIDER = pipes.pipe("pe100-sdr11", "40")


def fall(*spots, pipe=PIPE, **more):
    return Fall(pipe, tuple(Spot(*one) for one in spots), COLD, **more)


STRAIGHT = fall((0, 0), (900, -30))
CRESTED = fall((0, 0), (300, -5), (500, -2), (900, -30))


def test_the_flow_is_what_the_drop_drives_through_the_pipe():
    asked = friction.flow_for_loss(
        30, PIPE.inside_m, 900, PIPE.roughness_m, water.kinematic_viscosity(COLD)
    )
    assert STRAIGHT.largest_flow() == pytest.approx(asked, rel=1e-6)
    assert STRAIGHT.left(STRAIGHT.largest_flow()) == pytest.approx(0, abs=1)


def test_the_flow_agrees_with_an_independent_library():
    fluids = pytest.importorskip("fluids")
    flow = STRAIGHT.largest_flow(1e5)
    speed = flow / (math.pi / 4 * PIPE.inside_m**2)
    rho, mu = water.density(COLD), water.dynamic_viscosity(COLD)
    re = rho * speed * PIPE.inside_m / mu
    factor = fluids.friction_factor(Re=re, eD=PIPE.roughness_m / PIPE.inside_m)  # Colebrook
    lost = factor * 900 / PIPE.inside_m * rho * speed**2 / 2
    assert rho * 9.80665 * 30 - lost == pytest.approx(1e5, rel=2e-3)


def test_standing_pressure_is_the_water_above():
    weight = STRAIGHT.weight
    assert STRAIGHT.most.pressure_pa == pytest.approx(30 * weight)
    assert CRESTED.standing[2].pressure_pa == pytest.approx(2 * weight)


def test_a_crest_near_the_source_holds_the_flow_down():
    # 2 m of head for 500 m to the crest, against 30 m for 900 m to the end
    asked = friction.flow_for_loss(
        2, PIPE.inside_m, 500, PIPE.roughness_m, water.kinematic_viscosity(COLD)
    )
    assert CRESTED.largest_flow() == pytest.approx(asked, rel=1e-6)
    assert CRESTED.limit() == Spot(500, -2)
    assert CRESTED.largest_flow(sucks=True) == pytest.approx(STRAIGHT.largest_flow(), rel=1e-6)


def test_a_siphon_sucks_as_much_as_its_crest_is_above_the_pressure_line():
    flow = CRESTED.largest_flow(sucks=True)
    lowest = CRESTED.least(flow)
    lost = 30 * 500 / 900  # the drop is lost evenly along one pipe
    assert lowest.spot == Spot(500, -2)
    assert lowest.before_pa == pytest.approx(CRESTED.weight * (2 - lost), rel=1e-6)


def test_no_water_passes_a_crest_above_the_source():
    over = fall((0, 0), (300, 1), (900, -30))
    assert over.largest_flow() == 0 and over.largest_flow(sucks=True) > 0
    assert fall((0, 0), (900, 3)).largest_flow(sucks=True) == 0


def test_break_pressure_tanks_part_the_standing_pressure_evenly():
    broken = STRAIGHT.broken(2)
    assert [one.distance_m for one in broken.breaks] == pytest.approx([300, 600])
    assert broken.most.pressure_pa == pytest.approx(10 * STRAIGHT.weight)
    # each part has a third of the drop for a third of the length: the same flow
    assert broken.largest_flow() == pytest.approx(STRAIGHT.largest_flow(), rel=1e-6)
    assert broken.left(0.0) == pytest.approx(10 * STRAIGHT.weight)


def test_a_tank_on_a_flat_part_limits_the_flow_to_what_reaches_it():
    bent = fall((0, 0), (600, -6), (900, -30), breaks=(Break(600, -6),))
    asked = friction.flow_for_loss(
        6, PIPE.inside_m, 600, PIPE.roughness_m, water.kinematic_viscosity(COLD)
    )
    assert bent.largest_flow() == pytest.approx(asked, rel=1e-6)


def test_a_valve_holds_its_pressure_and_is_wide_open_where_less_comes():
    held = STRAIGHT.broken(1, held_pa=1e5)
    still = held.standing[-1].after_pa
    assert still == pytest.approx(1e5 + 15 * held.weight)
    most = STRAIGHT.largest_flow()
    assert held.largest_flow() == pytest.approx(most, rel=1e-6)
    assert held.left(0.99 * most) == pytest.approx(STRAIGHT.left(0.99 * most), abs=1)


def test_a_break_stands_where_nothing_after_it_is_higher():
    wavy = fall((0, 0), (200, -20), (400, -8), (900, -30))
    (tank,) = wavy.broken(1).breaks
    assert tank.height_m == -15 and tank.distance_m > 400
    with pytest.raises(InputError):
        wavy.last_at(5.0)


def test_crests_and_dips_are_where_the_pipe_turns():
    spots = tuple(Spot(*one) for one in ((0, 0), (1, -5), (2, -2), (3, -2), (4, -9), (5, -8)))
    assert crests(spots) == (Spot(2, -2),) and dips(spots) == (Spot(1, -5), Spot(4, -9))
    assert not crests(STRAIGHT.spots) and not dips(STRAIGHT.spots)


def test_lowered_lays_a_crest_on_the_pressure_line():
    flow = 0.9 * CRESTED.largest_flow(sucks=True)
    spots = CRESTED.lowered(flow)
    assert spots[2].height_m < -2 and spots[0] == Spot(0, 0) and spots[3] == Spot(900, -30)
    lower = Fall(PIPE, spots, COLD)
    assert lower.largest_flow() >= flow * (1 - 1e-9)


def test_a_pipe_that_gets_too_little_is_full_only_near_its_end():
    flow = STRAIGHT.largest_flow() / 2
    assert STRAIGHT.full_from(flow) == pytest.approx(900)  # open below: it never fills
    # 12 m at the end, and its own loss: full from where the line meets the pipe
    end, slope = 12 * STRAIGHT.weight, STRAIGHT.slope(flow)
    x = STRAIGHT.full_from(flow, end)
    assert -30 + 12 + slope * (900 - x) == pytest.approx(-30 * x / 900)
    assert STRAIGHT.full_from(STRAIGHT.largest_flow(), 0) == pytest.approx(0, abs=1)


def test_distances_that_run_backwards_are_refused_by_their_spot():
    with pytest.raises(InputError) as caught:
        fall((0, 0), (300, -5), (200, -9))
    assert caught.value.name == "spots.2"
    with pytest.raises(InputError):
        Fall(PIPE, (Spot(0, 0),), COLD)


profiles = st.lists(st.tuples(st.floats(20, 400), st.floats(-30, 10)), min_size=2, max_size=6).map(
    lambda steps: (
        (0.0, 0.0),
        *((sum(one for one, _ in steps[: at + 1]), low - 15) for at, (_, low) in enumerate(steps)),
    )
)


@given(profiles, st.integers(0, 2))
def test_every_pressure_is_at_least_the_air_and_one_is_used_up(spots, breaks):
    line = fall(*spots).broken(breaks)
    flow = line.largest_flow()
    if not flow:
        return
    inner = [one.before_pa for one in line.states(flow)]
    assert min(inner) == pytest.approx(0, abs=20)
    assert min(inner) >= -1


@given(profiles, st.data())
def test_a_lower_crest_never_lowers_the_flow(spots, data):
    at = data.draw(st.integers(1, len(spots) - 1))
    lower = [*spots]
    lower[at] = (spots[at][0], spots[at][1] - data.draw(st.floats(0, 20)))
    assert fall(*lower).largest_flow() >= fall(*spots).largest_flow() * (1 - 1e-9)


@given(profiles)
def test_a_wider_pipe_never_lowers_the_flow(spots):
    assert fall(*spots, pipe=WIDER).largest_flow() >= fall(*spots).largest_flow()


@given(profiles, st.floats(0, 1e5), st.floats(0, 1e5))
def test_more_pressure_asked_never_brings_more_flow(spots, one, other):
    low, high = sorted((one, other))
    line = fall(*spots)
    assert line.largest_flow(high) <= line.largest_flow(low) * (1 + 1e-9)


@given(profiles)
def test_one_pressure_line_joins_what_is_lost_to_what_is_left(spots):
    """Conservation: the drop is what friction takes and what is left, at every spot."""
    line = fall(*spots)
    flow = line.largest_flow()
    for state in line.states(flow):
        lost = line.slope(flow) * state.spot.distance_m
        whole = lost + state.before_pa / line.weight + state.spot.height_m
        assert abs(whole) <= 1e-9 * max(1.0, abs(state.spot.height_m), lost)
