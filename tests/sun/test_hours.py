"""Days into hours and hours onto a plane: nothing is lost, nothing comes from nowhere."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import practice
from calc.errors import InputError, RangeError
from calc.sun import days, hours, position
from calc.sun.horizon import skyline
from calc.sun.plane import Plane
from tests.sun.years import monthly

FEW = settings(max_examples=12, deadline=None)  # each makes a whole year
SOUTH = Plane(math.radians(30), math.pi)
HERE = math.radians(40)


def made(latitude, share=0.55):
    sun = hours.sun_hours(latitude)
    light = [share * one for one in sun.day_light]
    return sun, light, hours.level_from_days(sun, light)


@FEW
@given(st.integers(-90, 90), st.floats(0.1, 0.8))
def test_the_hours_of_each_day_add_to_the_day_and_beam_and_diffuse_to_all(degrees, share):
    _, light, level = made(math.radians(degrees), share)
    for day, wanted in enumerate(light):
        assert 3600 * sum(level.whole[24 * day : 24 * day + 24]) == pytest.approx(wanted, rel=1e-9)
    assert min(level.beam) >= 0 and min(level.diffuse) >= 0
    for whole, beam, diffuse in zip(level.whole, level.beam, level.diffuse, strict=True):
        assert beam + diffuse == pytest.approx(whole)


@FEW
@given(st.integers(-90, 90), st.sampled_from([None, 0.0, 0.5, -2.0]))
def test_a_day_outside_the_air_is_the_same_by_hours(degrees, longitude):
    latitude = math.radians(degrees)
    sun = hours.sun_hours(latitude, longitude)
    for day in range(365):
        wanted = position.daily_outside(latitude, day + 1)
        # where the sun only dips at midnight, the shorter part of that hour is left out
        assert sun.day_light[day] == pytest.approx(wanted, rel=2e-4, abs=1e4)


@FEW
@given(st.integers(-90, 90))
def test_a_flat_plane_gets_what_the_ground_gets(degrees):
    sun, _, level = made(math.radians(degrees))
    flat = hours.plane_light(hours.facing(sun, Plane(0.0, 1.0)), level)
    assert flat == pytest.approx(level.whole)


@FEW
@given(st.integers(0, 60))
def test_north_and_south_mirror_each_other_half_a_year_apart(degrees):
    """A plane towards the equator at the mirrored place sees the sun of the mirrored season."""
    up, down = (hours.sun_hours(math.radians(one)) for one in (degrees, -degrees))
    north = hours.facing(up, SOUTH).ratio
    south = hours.facing(down, Plane(SOUTH.slope, 0.0)).ratio
    june, december = 172 - 1, 355 - 1  # the solstices
    for one, other in ((june, december), (december, june)):
        here = north[up.first[one] : up.first[one + 1]]
        there = south[down.first[other] : down.first[other + 1]]
        assert len(here) == len(there)
        # 2 %: the two solstices' declinations differ by some hundredths of a degree
        assert here[len(here) // 2] == pytest.approx(there[len(there) // 2], rel=0.02)


def test_a_tilted_plane_gets_more_in_winter_and_less_in_summer():
    sun, light, level = made(HERE)
    plane = hours.plane_light(hours.facing(sun, Plane(math.radians(60), math.pi)), level)
    tilted = monthly([3600 * sum(plane[24 * d : 24 * d + 24]) for d in range(365)])
    flat = monthly(light)
    assert tilted[11] > 1.5 * flat[11] and tilted[5] < flat[5]


def test_a_ring_of_hills_hides_light_and_open_land_none():
    sun, _, level = made(HERE)
    open_, level_land, hills, wall = (
        sum(hours.plane_light(hours.facing(sun, SOUTH, skyline(points)), level))
        for points in ([], [(0.0, 0.0)], [(2.0, 0.3), (3.0, 0.8), (4.0, 0.3)], [(0.0, 1.4)])
    )
    assert level_land == pytest.approx(open_, rel=1e-4)  # 360 slices of the sky
    assert 0.3 * open_ < hills < 0.8 * open_
    assert wall < 0.1 * open_


def test_a_hill_in_the_east_hides_the_morning_sun_only():
    sun, _, _ = made(HERE)
    hill = skyline([(0.0, 0.0), (math.pi / 2, 0.5), (math.pi, 0.0)])
    before, after = (hours.facing(sun, SOUTH, one).ratio for one in (skyline([]), hill))
    hidden = {at % 24 for at, a, b in zip(sun.at, before, after, strict=True) if a != b}
    assert hidden and max(hidden) < 12
    assert all(b in (0.0, a) for a, b in zip(before, after, strict=True))


def test_the_clock_moves_the_sun():
    """El Paso lies west of its zone's meridian: the sun is highest after 12."""
    sun = hours.sun_hours(math.radians(31.77), math.radians(-106.5), -7.0)
    light = [0.6 * one for one in sun.day_light]
    level = hours.level_from_days(sun, light)
    # day 105: the equation of time is 0; the shift is 1.5 / 15 h
    middle = sum((at + 0.5) * g for at, g in enumerate(level.whole[104 * 24 : 105 * 24]))
    middle /= sum(level.whole[104 * 24 : 105 * 24])
    assert middle == pytest.approx(12.1, abs=0.02)


def test_air_has_its_months_and_its_swing():
    means = [280.0, 282, 285, 288, 292, 296, 298, 297, 294, 289, 284, 281]
    air = hours.air_hours(means, 10.0)
    assert len(air) == 8760
    day = air[24 * 14 : 24 * 15]
    assert max(day) - min(day) == pytest.approx(10.0, abs=0.1)  # the hours' middles
    assert day.index(max(day)) in (14, 15)
    kept = monthly([sum(air[24 * d : 24 * d + 24]) / 24 for d in range(365)])
    # straight lines between the months' middles cut corners
    assert kept == pytest.approx(means, abs=0.6)


def test_a_series_is_a_year_of_light_and_of_two_temperatures():
    sun, _, level = made(HERE)
    view = hours.facing(sun, SOUTH)
    air = hours.air_hours([290.0] * 12)
    still, windy = (hours.series(view, level, air, wind) for wind in (0.0, 5.0))
    assert len(still.plane) == len(still.air) == len(still.module) == 8760
    for light, cool, hot, hotter in zip(still.plane, air, windy.module, still.module, strict=True):
        assert cool <= hot <= hotter and (light > 0) == (hotter > cool)


def test_twenty_years_are_made_one_after_another():
    sun = hours.sun_hours(HERE)
    means = [0.5 * one for one in monthly(sun.day_light)]
    years = days.years(means, HERE, count=3)
    view, air = hours.facing(sun, SOUTH), hours.air_hours([290.0] * 12)
    found = list(hours.seeded_series(view, years, air, practice.MODULE_WIND))
    assert len(found) == 3 and len({one.plane for one in found}) == 3


@pytest.mark.parametrize(
    "ask, words",
    [
        (lambda sun: hours.level_from_days(sun, [1e6] * 364), "365 days"),
        (lambda sun: hours.level_from_hours(sun, [0.0] * 8784, [0.0], [0.0]), "8,760"),
        (lambda sun: hours.air_hours([290.0] * 11), "twelve"),
        (lambda sun: hours.air_hours([15.0] * 12), "January"),
    ],
)
def test_a_year_of_another_length_is_refused(ask, words):
    with pytest.raises(InputError, match=words):
        ask(hours.sun_hours(HERE))


def test_a_latitude_of_95_is_refused():
    with pytest.raises(RangeError):
        hours.sun_hours(math.radians(95))
