"""Friction: limits, directions, inverses and what is refused."""

import itertools
import math

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from calc.errors import RangeError
from calc.pipe import friction
from calc.units import GRAVITY

NU = 1.139e-6  # m2/s, water at 15 degC
BORES = st.floats(8e-3, 0.11)
ROUGH = st.floats(0.0, 2e-4)
FLOWS = st.floats(1e-6, 2e-3)
LENGTHS = st.floats(0.5, 2000.0)
QUICK = settings(max_examples=100, deadline=None)


def test_laminar_flow_loses_what_hagen_and_poiseuille_say():
    # closed form: h = 128 nu L Q / (pi g D^4)
    flow, bore = 1e-6, 0.02
    exact = 128 * NU * 10.0 * flow / (math.pi * GRAVITY * bore**4)
    assert friction.pipe_loss(flow, bore, 10.0, 0.0, NU) == pytest.approx(exact, rel=1e-12)


@QUICK
@given(st.floats(2040.0, 1e8), st.floats(0.0, 0.05))
def test_the_factor_satisfies_colebrooks_equation(re, relative):
    x = 1 / math.sqrt(friction.friction_factor(re, relative))
    assert x == pytest.approx(-2 * math.log10(relative / 3.7 + 2.51 * x / re), rel=1e-13)


@QUICK
@given(st.floats(1e-4, 0.05))
def test_at_huge_reynolds_numbers_only_roughness_counts(relative):
    # von Karman's fully rough limit of Colebrook
    rough = 0.25 / math.log10(relative / 3.7) ** 2
    assert friction.friction_factor(1e10, relative) == pytest.approx(rough, rel=1e-4)


def test_the_laminar_law_ends_at_2040():
    assert friction.friction_factor(2039.999, 0.0) == pytest.approx(64 / 2039.999)
    assert friction.friction_factor(2040.0, 0.0) > 64 / 2040


@QUICK
@given(FLOWS, BORES, LENGTHS, ROUGH)
def test_a_wider_pipe_loses_less(flow, bore, length, rough):
    # compared on one side of the jump at Re 2040, where a wider pipe may turn laminar
    wider = friction.pipe_loss(flow, bore * 1.05, length, rough, NU)
    assert wider < friction.pipe_loss(flow, bore, length, rough, NU)


@QUICK
@given(FLOWS, BORES, LENGTHS, ROUGH, st.floats(1.001, 3.0))
def test_more_flow_loses_more(flow, bore, length, rough, more):
    less = friction.pipe_loss(flow, bore, length, rough, NU)
    assert friction.pipe_loss(flow * more, bore, length, rough, NU) > less


@QUICK
@given(FLOWS, BORES, LENGTHS, ROUGH)
def test_loss_grows_in_step_with_length(flow, bore, length, rough):
    twice = friction.pipe_loss(flow, bore, 2 * length, rough, NU)
    assert twice == pytest.approx(2 * friction.pipe_loss(flow, bore, length, rough, NU), rel=1e-12)


@QUICK
@given(FLOWS, BORES, LENGTHS, ROUGH, st.floats(0.0, 50.0))
def test_flow_for_loss_undoes_total_loss(flow, bore, length, rough, k):
    head = friction.total_loss(flow, bore, length, rough, NU, k)
    assume(head < 1e5)
    back = friction.flow_for_loss(head, bore, length, rough, NU, k)
    assert back == pytest.approx(flow, rel=1e-8)


def test_loss_rises_without_a_jump_from_laminar_to_turbulent():
    bore, length = 0.02, 10.0
    per_re = NU / bore * math.pi / 4 * bore**2
    flows = [re * per_re for re in range(1900, 4200, 5)]
    losses = [friction.pipe_loss(flow, bore, length, 0.0, NU) for flow in flows]
    assert all(0 < b - a < 0.01 * b for a, b in itertools.pairwise(losses))
    assert all(
        friction.flow_for_loss(loss, bore, length, 0.0, NU) == pytest.approx(flow, rel=1e-9)
        for flow, loss in zip(flows, losses, strict=True)
    )


def test_no_head_drives_no_flow():
    assert friction.flow_for_loss(0.0, 0.02, 10.0, 0.0, NU) == 0.0


@QUICK
@given(FLOWS, BORES, ROUGH, st.floats(0.0, 20.0))
def test_the_solvers_loss_is_the_true_one_outside_the_bridge_and_hardly_above_it_inside(
    flow, bore, rough, k
):
    re = friction.reynolds(friction.velocity(flow, bore), bore, NU)
    head, _ = friction.loss_and_slope(flow, bore, 50.0, rough, NU, k)
    true = friction.total_loss(flow, bore, 50.0, rough, NU, k)
    if re < 2040 or re > 4000:
        assert head == pytest.approx(true, rel=1e-10)
    else:
        # a chord of a curve that bends upwards lies a little above it near its end
        assert head <= true * 1.01


@QUICK
@given(FLOWS, BORES, ROUGH, st.floats(0.0, 20.0))
def test_the_solvers_slope_is_the_slope_of_its_loss(flow, bore, rough, k):
    step = 1e-6 * flow
    up, down = (
        friction.loss_and_slope(q, bore, 50.0, rough, NU, k)[0] for q in (flow + step, flow - step)
    )
    re = friction.reynolds(friction.velocity(flow, bore), bore, NU)
    if min(abs(re - 2040), abs(re - 4000)) > 1e-5 * re:  # at its two corners it has two slopes
        slope = friction.loss_and_slope(flow, bore, 50.0, rough, NU, k)[1]
        assert (up - down) / (2 * step) == pytest.approx(slope, rel=1e-5)


@QUICK
@given(st.floats(-2e-3, 2e-3), st.floats(1e-9, 1e-4), BORES, ROUGH)
def test_the_solvers_loss_always_rises(flow, more, bore, rough):
    low = friction.loss_and_slope(flow, bore, 50.0, rough, NU)
    high = friction.loss_and_slope(flow + more, bore, 50.0, rough, NU)
    assert high[0] > low[0] and low[1] > 0


@QUICK
@given(FLOWS, BORES, ROUGH)
def test_the_solvers_loss_is_odd_in_the_flow(flow, bore, rough):
    there, back = (friction.loss_and_slope(q, bore, 50.0, rough, NU) for q in (flow, -flow))
    assert back == (-there[0], there[1])


@pytest.mark.parametrize("corner", [2040.0, 4000.0])
def test_the_solvers_loss_has_no_jump(corner):
    bore = 0.02
    flow = corner * NU / bore * math.pi / 4 * bore**2
    below, above = (
        friction.loss_and_slope(flow * s, bore, 50.0, 1e-5, NU)[0] for s in (1 - 1e-9, 1 + 1e-9)
    )
    assert above == pytest.approx(below, rel=1e-7)


def test_one_outlet_at_the_end_carries_the_whole_flow_so_loses_it_all():
    # m = 2: 1/3 + 1/2 + 1/6 = 1 exactly
    assert friction.christiansen(1, 2.0) == pytest.approx(1.0, rel=1e-12)


def test_many_outlets_lose_a_share_of_one_in_m_plus_one():
    assert friction.christiansen(1e6, 2.0) == pytest.approx(1 / 3, rel=1e-5)


def test_christiansens_share_is_the_sum_over_the_spans():
    # summed span by span: flow falls by an equal amount at each outlet
    n, m = 25, 1.852
    summed = sum((i / n) ** m for i in range(1, n + 1)) / n
    assert friction.christiansen(n, m) == pytest.approx(summed, rel=2e-4)


@QUICK
@given(st.floats(0.05, 5.0), st.floats(0.0, 50.0))
def test_fittings_lose_by_the_square_of_speed(speed, k):
    assert friction.local_loss(k, 2 * speed) == pytest.approx(4 * friction.local_loss(k, speed))


@pytest.mark.parametrize("fitting", friction.FITTINGS, ids=lambda f: f.key)
def test_a_fitting_of_any_size_loses_something(fitting):
    assert (
        0
        < friction.fitting_coefficient(fitting, 0.1)
        <= friction.fitting_coefficient(fitting, 0.012)
    )


REFUSED = [
    (lambda: friction.velocity(1e-3, 0.0), "bore_m"),
    (lambda: friction.friction_factor(0.0, 0.0), "re"),
    (lambda: friction.friction_factor(1e5, 0.2), "relative_roughness"),
    (lambda: friction.friction_factor(math.nan, 0.0), "re"),
    (lambda: friction.pipe_loss(-1e-4, 0.02, 10.0, 0.0, NU), "flow_m3s"),
    (lambda: friction.hazen_williams(-1e-4, 0.02, 10.0, 150.0), "flow_m3s"),
    (lambda: friction.hazen_williams(1e-4, 0.02, 10.0, 10.0), "c"),
    (lambda: friction.christiansen(0, 1.852), "outlets"),
    (lambda: friction.flow_for_loss(-1.0, 0.02, 10.0, 0.0, NU), "head_m"),
    (lambda: friction.flow_for_loss(1.0, 0.02, 0.0, 0.0, NU), "length_m"),
    (lambda: friction.turbulent_factor(0.0), "bore_m"),
]


@pytest.mark.parametrize("call, named", REFUSED)
def test_what_makes_no_sense_is_refused_by_name(call, named):
    with pytest.raises(RangeError) as caught:
        call()
    assert caught.value.name == named
