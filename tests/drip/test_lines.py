"""Drippers, smooth pipe, how even a line is: against closed forms and other people's solvers."""

import math

import numpy
import pytest
from scipy import optimize

from calc.drip import lateral
from calc.drip.lateral import Dripper
from calc.errors import RangeError
from calc.pipe import friction

WEIGHT, THIN = 9798.0, 1.1e-6  # Pa/m, m2/s
PLAIN = Dripper(2e-3 / 3600, 1e5)
STEADY = Dripper(2e-3 / 3600, 0.7e5, compensating=True)


def line(start=1e5, outlets=60, spacing=0.3, bore=13.6e-3, slope=0.0, dripper=PLAIN):
    law = lateral.smooth_law(bore, THIN)
    parts = [spacing] * outlets, [spacing * slope] * outlets
    return lateral.step_by_step(start, *parts, WEIGHT, law, dripper.at)


# Published tables -----------------------------------------------------------------------------


@pytest.mark.parametrize("outlets", [5, 20, 100, 400])
def test_the_factor_is_the_sum_of_a_lines_parts(outlets):
    exact = sum((one / outlets) ** 1.75 for one in range(1, outlets + 1)) / outlets
    assert lateral.christiansen(outlets, 1.75) == pytest.approx(exact, rel=2e-3)


# Friction -------------------------------------------------------------------------------------


def factor_of(flow, bore=13.6e-3):
    speed = flow / (math.pi / 4 * bore**2)
    lost = lateral.smooth_law(bore, THIN)(flow, 1.0)
    return lost * 2 * 9.80665 * bore / speed**2, speed * bore / THIN


@pytest.mark.parametrize("re", [4e3, 1e4, 3e4, 1e5, 3e5, 1e6])
def test_a_smooth_pipe_loses_what_colebrook_says(re):
    """Within 5 %: the spread of Blasius and McAdams about Colebrook's smooth pipe."""
    found, at = factor_of(re * THIN * math.pi / 4 * 13.6e-3)
    assert at == pytest.approx(re)
    assert found == pytest.approx(friction.friction_factor(re, 0.0), rel=0.05)


@pytest.mark.parametrize("re", [1.0, 100.0, 1000.0])
def test_slow_flow_loses_what_hagen_and_poiseuille_say(re):
    found, at = factor_of(re * THIN * math.pi / 4 * 13.6e-3)
    assert found == pytest.approx(64 / at, rel=1e-12)


def test_more_flow_never_loses_less_and_none_loses_nothing():
    law = lateral.smooth_law(13.6e-3, THIN)
    flows = [10 ** (at / 50 - 9) for at in range(400)]
    losses = [law(flow, 1.0) for flow in flows]
    assert losses == sorted(losses) and law(0.0, 1.0) == law(-1e-6, 1.0) == 0.0


def test_added_length_loses_in_proportion():
    plain, more = lateral.smooth_law(0.02, THIN), lateral.smooth_law(0.02, THIN, 0.1)
    assert more(1e-4, 7.0) == pytest.approx(1.1 * plain(1e-4, 7.0), rel=1e-12)


def test_a_bore_of_nothing_is_refused():
    with pytest.raises(RangeError):
        lateral.smooth_law(0.0, THIN)


# Drippers -------------------------------------------------------------------------------------


def test_a_plain_dripper_gives_twice_at_four_times_the_pressure():
    assert PLAIN.at(4e5) == pytest.approx(2 * PLAIN.flow_m3s)
    assert PLAIN.at(0.0) == PLAIN.at(-1.0) == 0.0


def test_a_compensating_dripper_holds_its_flow_from_its_least_pressure_on():
    assert STEADY.at(0.7e5) == STEADY.at(3e5) == STEADY.flow_m3s
    assert STEADY.at(0.175e5) == pytest.approx(STEADY.flow_m3s / 2)


# Against another's solution -------------------------------------------------------------------


@pytest.mark.parametrize(
    "outlets, slope, start",
    [(12, 0.0, 1e5), (40, 0.02, 1.2e5), (40, -0.03, 0.8e5), (150, 0.0, 1e5)],
)
def test_a_line_is_that_of_all_its_equations_solved_at_once(outlets, slope, start):
    """scipy's root finder on all pressures together, with friction written again here."""
    bore, spacing = 13.6e-3, 0.4

    def head(flow):
        speed = flow / (math.pi / 4 * bore**2)
        re = speed * bore / THIN
        factor = numpy.maximum.reduce([64 / re, 0.3164 * re**-0.25, 0.184 * re**-0.2])
        return factor * spacing / bore * speed**2 / 2 / 9.80665

    def unbalanced(bars):
        flows = 2e-3 / 3600 * numpy.sqrt(numpy.maximum(bars, 1e-9))
        carried = numpy.cumsum(flows[::-1])[::-1]
        before = numpy.concatenate([[start / 1e5], bars[:-1]])
        return before - bars - WEIGHT / 1e5 * (head(carried) + slope * spacing)

    solved = optimize.root(unbalanced, numpy.full(outlets, start / 1e5), tol=1e-13)
    assert solved.success
    found = line(start, outlets, spacing, bore, slope)
    assert numpy.array(found.pressures) / 1e5 == pytest.approx(solved.x, rel=1e-8)


@pytest.mark.parametrize("slope", [-0.05, 0.0, 0.03])
@pytest.mark.parametrize("dripper", [PLAIN, STEADY], ids=["plain", "compensating"])
def test_water_and_energy_balance_to_a_billionth(slope, dripper):
    found, law = line(slope=slope, dripper=dripper, outlets=90), lateral.smooth_law(13.6e-3, THIN)
    carried, pressure = found.flow, 1e5
    for at, flow in enumerate(found.flows):
        pressure -= WEIGHT * (law(carried, 0.3) + 0.3 * slope)
        assert found.pressures[at] == pytest.approx(pressure, rel=1e-9)
        assert flow == pytest.approx(dripper.at(pressure), rel=1e-9)
        carried -= flow
    assert abs(carried) < 1e-9 * found.flow


# How even -------------------------------------------------------------------------------------


def test_a_wider_line_is_never_less_even_on_level_ground_and_uphill():
    for slope in (0.0, 0.02):
        bores = [0.010, 0.0136, 0.0176, 0.0212, 0.028]
        evens = [line(bore=bore, slope=slope, start=1.5e5).emission(0.05) for bore in bores]
        assert evens == sorted(evens) and evens[0] < evens[-1]


def test_downhill_a_narrow_line_can_be_more_even():
    """The exception: its friction balances the fall."""
    narrow, wide = (line(bore=bore, slope=-0.05, outlets=120) for bore in (0.0136, 0.028))
    assert narrow.emission(0.05) > wide.emission(0.05)


def test_variation_and_emission_are_those_of_the_flows():
    found = line(outlets=150)
    least, most = min(found.flows), max(found.flows)
    mean = sum(found.flows) / 150
    assert found.variation == pytest.approx(1 - least / most)
    assert found.emission(0.05) == pytest.approx((1 - 1.27 * 0.05) * least / mean)
    assert found.emission(0.0) > found.uniformity * least / most
    assert found.emission(0.9) == 0.0


def test_a_line_of_compensating_drippers_with_enough_pressure_does_not_vary():
    assert line(start=1.5e5, dripper=STEADY).variation == 0.0


# What is just enough --------------------------------------------------------------------------


def needed(enough, slope=0.0, dripper=PLAIN):
    law = lateral.smooth_law(13.6e-3, THIN)
    return lateral.start_for(enough, [0.3] * 90, [0.3 * slope] * 90, WEIGHT, law, dripper.at)


@pytest.mark.parametrize("slope", [-0.02, 0.0, 0.05])
def test_the_pressure_for_the_nominal_flow_gives_it(slope):
    found = needed(lambda one: one.flow - 90 * PLAIN.flow_m3s, slope)
    again = line(found.start_pa, 90, slope=slope)
    assert again.flow == pytest.approx(90 * PLAIN.flow_m3s, rel=1e-9)


def test_the_pressure_for_the_weakest_dripper_gives_it():
    found = needed(lambda one: min(one.pressures) - 0.7e5, 0.03, STEADY)
    again = line(found.start_pa, 90, slope=0.03, dripper=STEADY)
    assert min(again.pressures) == pytest.approx(0.7e5, rel=1e-9)


def test_a_flow_that_no_pressure_gives_has_none():
    assert needed(lambda one: one.flow - 1.0) is None
