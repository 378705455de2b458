"""Where the sun stands: noon, the poles, both hemispheres, and what is refused."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.errors import RangeError
from calc.sun import position

DAYS = st.integers(1, 365)
LATITUDES = st.floats(-90, 90).map(math.radians)


def rad(degrees):
    return math.radians(degrees)


@given(DAYS)
def test_at_noon_the_sun_is_south_of_the_north_and_north_of_the_south(day):
    assert position.position(rad(50), day, 12).azimuth == pytest.approx(math.pi)
    assert math.cos(position.position(rad(-50), day, 12).azimuth) == pytest.approx(1.0)


@given(LATITUDES, DAYS)
def test_at_noon_it_is_as_far_from_straight_up_as_latitude_and_declination_differ(latitude, day):
    found = position.position(latitude, day, 12).zenith
    # 1e-7: the arccosine of numbers near 1
    assert found == pytest.approx(
        abs(latitude - position.declination(day + position.NOON)), abs=1e-7
    )


@given(st.floats(-89, 89).map(math.radians), DAYS, st.floats(0.5, 11.5))
def test_morning_and_afternoon_mirror_each_other(latitude, day, away):
    before = position.position(latitude, day, 12 - away)
    after = position.position(latitude, day, 12 + away)
    # 0.007 rad: the sun's declination changes by up to 0.4 degree a day, and these are 23 h apart
    assert before.zenith == pytest.approx(after.zenith, abs=0.007)
    assert math.sin(before.azimuth) > 0 > math.sin(after.azimuth)  # east, then west


@given(LATITUDES, DAYS)
def test_the_day_of_one_hemisphere_is_the_night_of_the_other(latitude, day):
    here = position.daylight_hours(latitude, day)
    there = position.daylight_hours(-latitude, day)
    assert here + there == pytest.approx(24.0)


@pytest.mark.parametrize("degrees", [-90, -75, 75, 90])
def test_polar_day_and_night_are_whole(degrees):
    summer, winter = (172, 355) if degrees > 0 else (355, 172)
    latitude = rad(degrees)
    assert position.daylight_hours(latitude, summer) == 24.0
    assert position.daylight_hours(latitude, winter) == 0.0
    assert position.daily_extraterrestrial(latitude, winter) == 0.0
    assert position.daily_extraterrestrial(latitude, summer) > 40e6


@given(LATITUDES, DAYS)
def test_a_day_outside_the_air_is_the_sum_of_its_minutes(latitude, day):
    tilt, steps = position.declination(day + position.NOON), 1440
    total = 0.0
    for minute in range(steps):
        turn = position.hour_angle(24 * (minute + 0.5) / steps)
        up = math.sin(latitude) * math.sin(tilt)
        total += max(0.0, up + math.cos(latitude) * math.cos(tilt) * math.cos(turn))
    total *= position.extraterrestrial_normal(day) * 60
    # 0.3 kJ/m2: a minute in which the sun rises or sets
    assert position.daily_outside(latitude, day) == pytest.approx(total, rel=1e-5, abs=500.0)


def test_the_clock_is_behind_the_sun_in_november_and_west_of_its_meridian_in_february():
    noon = position.clock_shift(307, 0.0, 0.0)
    assert noon * 60 == pytest.approx(16.4, abs=0.2)  # 16 min 25 s, known to every sundial
    assert position.clock_shift(42, rad(-106.5), -7.0) * 60 == pytest.approx(-20.2, abs=0.3)


@pytest.mark.parametrize(
    "ask",
    [
        lambda: position.position(rad(95), 1, 12),
        lambda: position.daily_extraterrestrial(rad(-95), 1),
        lambda: position.daily_extraterrestrial(math.nan, 1),
        lambda: position.daylight_hours(0.0, 367),
        lambda: position.declination(-1),
        lambda: position.position(0.0, 0, 12),
        lambda: position.position_by_clock(0.0, rad(200), 0.0, 1, 12),
        lambda: position.position_by_clock(0.0, 0.0, 0.0, 1, 25),
        lambda: position.clock_shift(1, 0.0, 15.0),
    ],
)
def test_what_is_not_on_earth_is_refused(ask):
    with pytest.raises(RangeError):
        ask()
