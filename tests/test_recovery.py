"""Tests of wells against a published pumping test, scipy and made-up aquifers."""

import math

import pytest
from scipy.special import exp1

from calc import recovery
from calc.errors import InputError

DAY = 86400.0
# Kruseman and de Ridder, Analysis and Evaluation of Pumping Test Data (1990), table 3.1: "Oude
# Korendijk", 788 m3 a day, the piezometer 30 m away: (minutes, metres), from memory
KORENDIJK = (
    (1.0, 0.23), (1.4, 0.28), (1.9, 0.33), (2.33, 0.36), (2.8, 0.39), (3.36, 0.42), (4.0, 0.45),
    (5.35, 0.50), (6.8, 0.54), (8.3, 0.57), (8.7, 0.58), (10.0, 0.60),
)  # fmt: skip
FLOW = 788 / DAY


@pytest.mark.parametrize("power", range(-14, 2))
@pytest.mark.parametrize("digit", [1.0, 3.7, 9.9])
def test_the_well_function_is_the_exponential_integral(power, digit):
    u = digit * 10.0 ** (power - 0.5)
    assert recovery.well_function(u) == pytest.approx(exp1(u), rel=1e-9)


def test_a_published_pumping_test():
    """Their result by Jacob's method: 385 m2 a day and 1.7e-4; from memory.

    The first ten minutes, as they took them: later the ground above leaks. They drew the line by
    eye: 5 % for its slope, and what follows for its start.
    """
    times, levels = zip(*KORENDIJK, strict=True)
    line = recovery.line_through([60 * one for one in times], levels)
    assert line.bears
    found = recovery.transmissivity(FLOW, line)
    assert found * DAY == pytest.approx(385, rel=0.05)
    assert recovery.storage(found, line, 30.0) == pytest.approx(1.7e-4, rel=0.2)


@pytest.mark.parametrize("transmissivity", [1e-6, 2e-4, 5e-3])
def test_a_recovery_of_a_made_up_aquifer_gives_its_transmissivity(transmissivity):
    """By superposition: the pumped well goes on, and one that puts as much back begins."""
    pumped, flow = 6 * 3600.0, 0.3 * transmissivity * 10
    times = [60.0 * 2**one for one in range(8)]
    made = (flow, transmissivity, 1e-4, 0.05)
    left = [recovery.drawdown(*made, pumped + t) - recovery.drawdown(*made, t) for t in times]
    line = recovery.line_through([(pumped + t) / t for t in times], left)
    assert line.bears
    assert recovery.transmissivity(flow, line) == pytest.approx(transmissivity, rel=0.02)


def test_drawdown_grows_with_time_and_flow_and_falls_with_distance():
    def of(flow=1e-3, away=1.0, time=3600.0):
        return recovery.drawdown(flow, 1e-4, 1e-3, away, time)

    assert of(time=7200.0) > of() > of(time=1800.0)
    assert of(flow=2e-3) == pytest.approx(2 * of())
    assert of(away=0.5) > of() > of(away=30.0) > 0
    assert of(away=3000.0, time=1.0) == 0.0


@pytest.mark.parametrize("levels", [(0.5, 0.5, 0.5, 0.5), (0.5, 0.4, 0.3, 0.2)])
def test_levels_that_do_not_rise_bear_no_line(levels):
    line = recovery.line_through((60.0, 120.0, 240.0, 480.0), levels)
    assert not line.bears
    with pytest.raises(InputError, match="do not rise"):
        recovery.transmissivity(1e-3, line)


def test_scattered_levels_bear_no_line():
    line = recovery.line_through((60.0, 120.0, 240.0, 480.0), (0.1, 0.9, 0.2, 1.0))
    assert line.slope > 0 and not line.bears


def test_three_readings_are_too_few_for_a_line():
    assert not recovery.line_through((60.0, 120.0, 240.0), (0.1, 0.2, 0.3)).bears


def test_what_comes_into_a_well_is_its_volume_over_time():
    found = recovery.coming_in(1.0, (0.0, 600.0, 1800.0), (6.0, 5.7, 5.1))
    assert found == pytest.approx(math.pi / 4 * 0.9 / 1800)


@pytest.mark.parametrize("times, depths, name", [
    ((0.0, 60.0, 120.0), (6.0, 5.5, 5.8), "depths.2"),
    ((0.0, 60.0, 60.0), (6.0, 5.5, 5.4), "times.2"),
    ((0.0,), (6.0,), "times"),
])  # fmt: skip
def test_a_recovery_that_falls_or_goes_back_is_said_at_its_reading(times, depths, name):
    with pytest.raises(InputError) as told:
        recovery.coming_in(1.0, times, depths)
    assert told.value.name == name


def test_specific_capacity_is_flow_over_drawdown():
    assert recovery.specific_capacity(2e-3, 4.0) == pytest.approx(5e-4)
