"""A slow well: its day against a run minute by minute, and its limits."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import storage, well
from calc.errors import RangeError
from calc.units import DAY, HOUR

ROUNDS = settings(max_examples=60, deadline=None)
flows = st.floats(1e-5, 1e-3)
hours = st.floats(0.5, 23.5)
volumes = st.floats(0.0, 20.0)


def minute_by_minute(yield_m3s, pump_m3s, run_hours, stored):
    """A well filled and pumped in short steps until its day repeats; m3 of the last day."""
    level, step, given_m3 = stored, 30.0, 0.0
    steps = round(DAY / step)
    for _day in range(8):
        given_m3 = 0.0
        for at in range(steps):
            on = min(max(run_hours * HOUR - at * step, 0.0), step)
            drawn = min(pump_m3s * on, level + yield_m3s * on)
            level = min(stored, level + yield_m3s * step - drawn)
            given_m3 += drawn
    return given_m3


@pytest.mark.parametrize(
    "case",
    [
        (1e-4, 2e-4, 6.0, 0.0),  # no water stands in it
        (1e-4, 5e-4, 6.0, 0.5),  # what stands is drawn down
        (1e-4, 5e-4, 6.0, 10.0),  # more stands than gathers in a day
        (1e-4, 2e-4, 6.0, 3.0),  # the pump is the limit
        (3e-4, 2e-4, 8.0, 1.0),  # the well is faster than the pump
        (1e-4, 5e-4, 24.0, 5.0),  # never rests
        (2e-5, 3e-4, 10.25, 0.7),
    ],
)
def test_a_day_matches_the_well_run_in_half_minutes(case):
    # a step of 30 s blurs the moment the well is drawn down by one step's pumping
    assert minute_by_minute(*case) == pytest.approx(well.daily(*case), rel=2e-3)


@given(flows, flows, hours, volumes)
@ROUNDS
def test_the_hours_add_up_to_the_day(yields, pump, run, stored):
    found = well.hourly(yields, pump, run, stored)
    assert math.isclose(sum(found), well.daily(yields, pump, run, stored), rel_tol=1e-9)
    assert min(found) >= 0 and max(found) <= pump * HOUR * (1 + 1e-9)


@given(flows, flows, hours, volumes)
@ROUNDS
def test_the_hours_asked_for_give_the_use_asked_for(yields, pump, run, stored):
    use = well.daily(yields, pump, run, stored)
    needed = well.hours_for(use * (1 - 1e-12), yields, pump, stored)
    assert needed <= run * (1 + 1e-9)
    assert math.isclose(well.daily(yields, pump, max(needed, 0), stored), use, rel_tol=1e-9)


@given(flows, flows, hours, volumes, volumes)
@ROUNDS
def test_more_water_standing_never_gives_less(yields, pump, run, one, other):
    less, more = sorted((one, other))
    assert well.daily(yields, pump, run, less) <= well.daily(yields, pump, run, more)


def test_a_day_never_gives_more_than_flows_in():
    assert math.isclose(well.daily(1e-4, 5e-3, 12.0, 1e4), 1e-4 * DAY)


def test_a_fast_well_leaves_the_pump_its_own_pattern():
    found = well.hourly(1.0, 2e-4, 6.0, 0.0)
    shares = storage.supply_pattern(6.0)
    assert found == pytest.approx([2e-4 * 6 * HOUR * share for share in shares])


def test_the_stored_water_comes_first():
    # 0.4 m3 are drawn down in 0.4 / (5e-4 - 1e-4) = 1000 s; half past nine to ten is 1800 s
    found = well.hourly(1e-4, 5e-4, 6.0, 0.4)
    assert found[9] == pytest.approx(1000 * 5e-4 + 800 * 1e-4)
    assert found[15] == pytest.approx(1800 * 1e-4)


def test_too_much_use_is_beyond_any_hours():
    assert well.hours_for(9.0, 1e-4, 5e-4, 50.0) == math.inf
    assert well.hours_for(9.0, 5e-4, 1e-4, 50.0) == math.inf


def test_no_use_needs_no_hours():
    assert well.hours_for(0.0, 1e-4, 5e-4, 0.0) == 0.0


@pytest.mark.parametrize("case", [(-1, 1, 6, 0), (1, -1, 6, 0), (1, 1, 25, 0), (1, 1, 6, -1)])
def test_values_out_of_range_are_refused(case):
    with pytest.raises(RangeError):
        well.daily(*case)


def test_a_window_past_midnight_goes_on_in_the_morning():
    assert [well.overlap(22.5, 3.0, h) for h in (21, 22, 23, 0, 1, 2)] == [0, 0.5, 1, 1, 0.5, 0]
