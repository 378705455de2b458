"""Cables: the drop, the smallest conductor, and what is refused."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError, RangeError
from calc.power import cable
from calc.power.cable import SERIES, Line

ROUNDS = settings(max_examples=80, deadline=None)
lines = st.builds(
    Line,
    st.sampled_from(sorted(cable.CIRCUITS)),
    st.sampled_from((12.0, 24.0, 48.0, 230.0, 400.0)),
    st.floats(0.1, 40.0),
    st.floats(1.0, 300.0),
    st.floats(1.0, 7.0),
    st.floats(0.5, 1.0),
)
EXACT = 1e-9  # relative: sums of a few rounded products


@pytest.mark.parametrize("series", SERIES)
def test_sizes_rise(series):
    areas = [one.area for one in SERIES[series]]
    assert areas == sorted(set(areas))


def test_three_gauges_down_is_about_twice_the_area():
    # 92 ** (6 / 39) = 2.005 by the gauge's definition
    assert cable.awg_area(9) / cable.awg_area(12) == pytest.approx(92 ** (6 / 39), rel=EXACT)
    assert [one.name for one in SERIES["awg"][-4:]] == ["1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG"]


def test_the_way_back_is_counted():
    one_way = 0.002 * 50 * 8
    assert cable.voltage_drop("dc", 50, 8, 0.002) == pytest.approx(2 * one_way, rel=EXACT)


def test_direct_current_knows_no_reactance():
    assert cable.voltage_drop("dc", 50, 8, 0.002, 0.5, 0.01) == cable.voltage_drop(
        "dc", 50, 8, 0.002
    )


def test_three_phases_carry_a_power_with_half_the_loss_of_one_at_the_same_voltage_and_size():
    # P = U I and 2 I^2 R against P = sqrt(3) U I and 3 I^2 R: 2 against 1
    losses = []
    for circuit in ("single", "three"):
        amps = cable.current(circuit, 1500.0, 230.0, 0.8)
        line = Line(circuit, 230.0, amps, 80.0, power_factor=0.8)
        losses.append(cable.drop_of(line, SERIES["mm2"][4]).loss)
    assert losses[0] == pytest.approx(2 * losses[1], rel=EXACT)


def test_the_loss_on_direct_current_is_drop_times_current():
    worked = cable.drop_of(Line("dc", 48.0, 7.0, 60.0), SERIES["awg"][6])
    assert worked.loss == pytest.approx(worked.drop * 7.0, rel=EXACT)
    assert worked.left + worked.drop == pytest.approx(48.0, rel=EXACT)


def test_a_warmer_conductor_drops_more():
    cold, hot = (cable.resistance(4e-6, kelvin) for kelvin in (273.15, 343.15))
    assert hot > cold


@ROUNDS
@given(lines, st.sampled_from(sorted(SERIES)), st.floats(0.01, 0.1), st.floats(0.05, 0.3))
def test_the_smallest_is_enough_and_the_next_smaller_is_not(line, series, most, most_start):
    worked = cable.smallest(line, series, most, most_start)
    sizes = SERIES[series]
    if worked is None:
        largest = cable.drop_of(line, sizes[-1])
        assert largest.share > most * (1 - EXACT) or largest.start_share > most_start * (1 - EXACT)
        return
    assert worked.share <= most * (1 + EXACT) and worked.start_share <= most_start * (1 + EXACT)
    place = sizes.index(worked.conductor)
    if place:
        thin = cable.drop_of(line, sizes[place - 1])
        assert thin.share > most * (1 - EXACT) or thin.start_share > most_start * (1 - EXACT)


def test_the_start_decides_where_a_motor_is_switched_on_directly():
    soft, hard = (
        cable.smallest(Line("single", 230.0, 6.0, 100.0, times, 0.8), "mm2")
        for times in (1.25, 7.0)
    )
    assert hard.conductor.area > soft.conductor.area


def test_a_conductor_that_is_met_exactly_is_taken():
    line, size = Line("dc", 48.0, 10.0, 30.0), SERIES["mm2"][4]
    share = cable.drop_of(line, size).share
    assert cable.smallest(line, "mm2", share, 0.5).conductor == size


def test_what_no_size_can_do_has_no_size():
    assert cable.smallest(Line("dc", 12.0, 60.0, 2000.0), "awg") is None
    assert math.isinf(cable.least_area(Line("three", 48.0, 900.0, 9e4, power_factor=0.2), 1.07))


def test_a_fuse_is_at_least_its_multiple_and_one_that_is_sold():
    advice = cable.protection("dc", 13.0)
    assert advice.rating >= 1.25 * 13.0 and advice.dc
    assert cable.protection("single", 900.0).rating is None


@pytest.mark.parametrize(
    "name, change",
    [
        ("voltage_v", {"voltage_v": 0.0}),
        ("length_m", {"length_m": -1.0}),
        ("current_a", {"current_a": math.nan}),
        ("start_times", {"start_times": 0.5}),
        ("power_factor", {"power_factor": 1.2}),
        ("temperature_k", {"temperature_k": 20.0}),
        ("metal", {"metal": "tin"}),
        ("circuit", {"circuit": "two"}),
    ],
)
def test_what_cannot_be_is_named(name, change):
    usual = {"circuit": "dc", "voltage_v": 48.0, "current_a": 5.0, "length_m": 20.0}
    with pytest.raises(InputError) as caught:
        Line(**usual | change)
    assert caught.value.name == name


def test_a_gauge_that_is_none_is_refused():
    with pytest.raises(RangeError):
        cable.awg_area(41)
