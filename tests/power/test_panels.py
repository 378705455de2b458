"""Panels and controllers: cold and heat, strings, clipping, and what is refused."""

import dataclasses
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError, RangeError
from calc.power import array, controller
from calc.power.array import Array, Losses, usual_module
from calc.power.controller import Controller, charge_power

ROUNDS = settings(max_examples=60, deadline=None)
EXACT = 1e-9  # relative: sums of a few rounded products
PANEL = usual_module(400.0)


def test_a_panel_known_by_its_power_agrees_with_itself():
    for rated in (10.0, 100.0, 380.0, 600.0):
        one = usual_module(rated)
        assert one.best_v * one.best_a == pytest.approx(rated, rel=EXACT)
        assert one.best_v < one.open_v and one.best_a < one.short_a


def test_the_cold_raises_the_voltage_and_the_heat_lowers_it():
    cold, rated, hot = (array.open_voltage(PANEL, 3, kelvin) for kelvin in (253.15, 298.15, 343.15))
    assert cold > rated > hot
    assert rated == pytest.approx(3 * PANEL.open_v, rel=EXACT)


@ROUNDS
@given(st.floats(230.0, 300.0), st.floats(60.0, 600.0))
def test_the_longest_string_stays_below_the_limit_and_the_next_does_not(coldest, limit):
    most = array.most_in_series(PANEL, coldest, limit)
    if most:
        assert array.check_string(PANEL, most, coldest, limit) <= limit * (1 + EXACT)
    with pytest.raises(InputError) as caught:
        array.check_string(PANEL, most + 1, coldest, limit)
    assert caught.value.name == "series"


@ROUNDS
@given(st.floats(300.0, 350.0), st.floats(20.0, 400.0))
def test_the_shortest_string_reaches_the_window_in_the_heat(hottest, low):
    least = array.least_in_series(PANEL, hottest, low)
    assert array.best_voltage(PANEL, least, hottest) >= low * (1 - EXACT)
    assert least == 1 or array.best_voltage(PANEL, least - 1, hottest) < low


def test_power_follows_the_sun_and_falls_with_heat():
    one = Array(PANEL, 2, 3)
    half, whole = (array.power(one, sun, 298.15) for sun in (500.0, 1000.0))
    assert whole == pytest.approx(2 * half, rel=EXACT)
    assert whole == pytest.approx(one.rated_w * Losses().left, rel=EXACT)
    assert array.power(one, 1000.0, 338.15) < whole
    assert array.power(one, 0.0, 298.15) == 0.0


def test_many_hours_are_one_hour_many_times():
    one, suns, warms = Array(PANEL, 2, 2), [0.0, 300.0, 900.0], [270.0, 300.0, 330.0]
    singly = [array.power(one, sun, warm) for sun, warm in zip(suns, warms, strict=True)]
    assert array.powers(one, suns, warms) == pytest.approx(singly, rel=EXACT)


def test_a_following_controller_takes_the_maximum_power():
    one = Array(PANEL, 2, 1)
    taken = charge_power(Controller("mppt", 150.0, 100.0, efficiency=0.9), one, 600.0, 310.0, 24.0)
    assert taken == pytest.approx(0.9 * array.power(one, 600.0, 310.0), rel=EXACT)


def test_a_current_limit_clips():
    small = Controller("mppt", 150.0, 10.0)
    assert charge_power(small, Array(PANEL, 1, 3), 1000.0, 298.15, 24.0) == 240.0


def test_a_switching_controller_wastes_the_voltage_over_the_battery():
    pulled, followed = (
        charge_power(Controller(kind, 60.0, 60.0), Array(PANEL, 1, 1), 1000.0, 298.15, 12.0)
        for kind in ("pwm", "mppt")
    )
    assert pulled < 0.5 * followed
    expected = 0.98 * 12.0 * PANEL.best_a * Losses().left
    assert pulled == pytest.approx(expected, rel=EXACT)


def test_a_switching_controller_gives_nothing_into_a_battery_above_the_panels():
    small = Array(usual_module(100.0), 1, 1)  # 23 V at open circuit
    assert charge_power(Controller("pwm", 60.0, 60.0), small, 1e3, 298.15, 24.0) == 0.0


def test_below_the_window_power_fades_with_the_heat():
    watched = Controller("mppt", 150.0, 60.0, low_v=38.0)
    warm, hot, none = (
        charge_power(watched, Array(PANEL, 1, 1), 1000.0, kelvin, 24.0)
        for kelvin in (300, 335, 371)
    )
    free = charge_power(Controller("mppt", 150.0, 60.0), Array(PANEL, 1, 1), 1000.0, 335, 24.0)
    assert warm > hot > none and hot < free


def test_above_the_window_power_is_that_of_its_end():
    capped = Controller("mppt", 150.0, 60.0, high_v=array.best_voltage(PANEL, 1, 298.15) / 2)
    whole, half = (
        charge_power(one, Array(PANEL, 1, 1), 800.0, 298.15, 24.0)
        for one in (Controller("mppt", 150.0, 60.0), capped)
    )
    assert half == pytest.approx(whole / 2, rel=EXACT)


@pytest.mark.parametrize(
    "name, value",
    [("rated_w", 0.0), ("rated_w", 300.0), ("open_v", -1.0), ("best_v", 60.0), ("best_a", 20.0),
     ("power_rise", 0.004), ("short_a", math.nan)],
)  # fmt: skip
def test_a_panel_that_cannot_be_is_named(name, value):
    with pytest.raises(InputError) as caught:
        dataclasses.replace(PANEL, **{name: value})
    assert caught.value.name == name


@pytest.mark.parametrize("share, fits", [(0.95, True), (1.05, True), (0.93, False), (1.07, False)])
def test_a_label_may_be_rounded_but_not_wrong(share, fits):
    watts = share * PANEL.best_v * PANEL.best_a
    if fits:
        assert dataclasses.replace(PANEL, rated_w=watts).rated_w == watts
        return
    with pytest.raises(InputError) as caught:
        dataclasses.replace(PANEL, rated_w=watts)
    assert caught.value.name == "rated_w"


def test_a_panel_of_no_power_is_refused():
    with pytest.raises(RangeError) as caught:
        usual_module(0.0)
    assert caught.value.name == "rated_w"


@pytest.mark.parametrize(
    "name, change",
    [("kind", {"kind": "magic"}), ("limit_v", {"limit_v": 0.0}), ("most_a", {"most_a": 0.0}),
     ("low_v", {"low_v": 200.0}), ("high_v", {"low_v": 60.0, "high_v": 50.0}),
     ("efficiency", {"efficiency": 1.2})],
)  # fmt: skip
def test_a_controller_that_cannot_be_is_named(name, change):
    with pytest.raises(InputError) as caught:
        Controller(**{"kind": "mppt", "limit_v": 150.0, "most_a": 60.0} | change)
    assert caught.value.name == name


def test_one_string_times_their_number_is_all_of_them():
    strings = controller.string_powers(Controller("mppt", 150.0, 99.0), Array(PANEL, 2, 3), [700.0],
                                       [310.0], 48.0)  # fmt: skip
    whole = charge_power(Controller("mppt", 150.0, 99.0), Array(PANEL, 2, 3), 700.0, 310.0, 48.0)
    assert whole == pytest.approx(3 * strings[0], rel=EXACT)
