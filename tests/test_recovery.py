"""Tests of wells against scipy and made-up aquifers; a published one is in ``checks.wells``."""

import math

import pytest
from scipy.special import exp1

from calc import recovery
from calc.errors import InputError

DAY = 86400.0


@pytest.mark.parametrize("power", range(-14, 2))
@pytest.mark.parametrize("digit", [1.0, 3.7, 9.9])
def test_the_well_function_is_the_exponential_integral(power, digit):
    u = digit * 10.0 ** (power - 0.5)
    assert recovery.well_function(u) == pytest.approx(exp1(u), rel=1e-9)


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


# A recovery test, whichever way it bears ----------------------------------------------------------

HOURS = 3600.0
LASTING = 100 * DAY


def by_theis(transmissivity, bore=0.1, flow=None, pumped=6 * HOURS, count=11):
    """A made-up aquifer's recovery: (flow, pumped, bore, times, drawdown)."""
    flow = flow or transmissivity * 2.0
    made = (flow, transmissivity, 1e-4, bore / 2)
    times = [0.0, *(60.0 * 2**one for one in range(count - 1))]
    drawn = [recovery.drawdown(*made, pumped)]
    drawn += [recovery.drawdown(*made, pumped + t) - recovery.drawdown(*made, t) for t in times[1:]]
    return flow, pumped, bore, times, drawn


@pytest.mark.parametrize("transmissivity", [2e-5, 3e-4, 4e-3])
def test_a_recovery_that_bears_theis_line_lasts_as_the_aquifer_does(transmissivity):
    """The capacity after 100 days is the flow over the aquifer's own drawdown then."""
    test = by_theis(transmissivity)
    found = recovery.recovered(*test, LASTING)
    assert found.why == recovery.BORNE
    assert found.transmissivity == pytest.approx(transmissivity, rel=0.02)
    after = recovery.drawdown(test[0], transmissivity, 1e-4, 0.05, LASTING)
    assert found.capacity == pytest.approx(test[0] / after, rel=0.01)
    assert not found.misses_rest(test[4][0])


def test_readings_of_the_wells_own_water_are_left_out_of_the_line():
    flow, pumped, bore, times, drawn = by_theis(3e-4)
    ends = recovery.well_store_ends(bore, 3e-4)
    wrong = [s + (0.5 if t < ends else 0.0) for t, s in zip(times, drawn, strict=True)]
    found = recovery.recovered(flow, pumped, bore, times, wrong, LASTING)
    assert found.transmissivity == pytest.approx(3e-4, rel=0.03)
    assert min(times[at] for at in found.kept) >= ends


@pytest.mark.parametrize("bore", [0.8, 3.0])
def test_a_wide_well_filling_as_an_exponential_gives_its_capacity_the_simple_way(bore):
    """A bailed well: A ds/dt = -C s, whose solution is in the test's own words."""
    capacity, area = 3e-5, math.pi / 4 * bore**2
    times = [0.0, 600.0, 1800.0, 3600.0, 7200.0, 14400.0]
    drawn = [1.2 * math.exp(-capacity * t / area) for t in times]
    found = recovery.recovered(1e-4, 2 * HOURS, bore, times, drawn, LASTING)
    assert found.why == recovery.FEW and found.transmissivity is None
    assert found.capacity == pytest.approx(capacity, rel=1e-9)


def test_a_recovery_all_the_way_to_rest_counts_no_more_than_its_last_twentieth():
    slow = recovery.simple_capacity(1.0, (0.0, 600.0, 1200.0), (1.0, 0.4, 0.0))
    assert slow == pytest.approx(math.pi / 4 * math.log(20) / 1200)


def test_readings_that_scatter_or_stay_bear_no_line():
    flow, pumped, bore, times, drawn = by_theis(3e-4)
    bumpy = [s - 0.2 * (at % 2) * s for at, s in enumerate(drawn)]
    assert recovery.recovered(flow, pumped, bore, times, bumpy, LASTING).why == recovery.SCATTER
    level = recovery.recovered(flow, pumped, bore, times, [1.0] * len(times), LASTING)
    assert level.why == recovery.FALLS and level.capacity == 0.0


def test_a_line_that_ends_below_rest_is_told():
    flow, pumped, bore, times, drawn = by_theis(3e-4)
    sunk = [s + 0.3 * drawn[0] for s in drawn]
    assert recovery.recovered(flow, pumped, bore, times, sunk, LASTING).misses_rest(sunk[0])


def test_more_drawdown_for_the_same_flow_never_means_more_capacity():
    flow, pumped, bore, times, drawn = by_theis(3e-4)
    deeper = [1.3 * s for s in drawn]
    one, other = (
        recovery.recovered(flow, pumped, bore, times, levels, LASTING).capacity
        for levels in (drawn, deeper)
    )
    assert other < one
