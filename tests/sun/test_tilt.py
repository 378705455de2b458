"""The best tilt: steeper for winter, flatter for the year, towards the equator, flat in between."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.sun import days, hours, tilt
from calc.sun.plane import Plane
from tests.sun.years import monthly

SUMMER = {1: (5, 6, 7, 8), -1: (11, 12, 1, 2)}


def means_at(degrees, share=0.55):
    return [share * one for one in monthly(days.outside(math.radians(degrees)))]


def slope(best):
    return round(math.degrees(best.slope))


@pytest.mark.parametrize("degrees", [25, 40, 55, -25, -40, -55])
def test_winter_wants_it_steeper_than_the_year_and_summer_flatter(degrees):
    means, place = means_at(degrees), math.radians(degrees)
    year = tilt.best_for_year(means, place)
    winter = tilt.best_for_worst_month(means, place)
    season = tilt.best_for_months(means, place, SUMMER[1 if degrees > 0 else -1])
    assert slope(season) < slope(year) < slope(winter)
    # the rule of thumb: about the latitude, less where much of the light is diffuse
    assert abs(degrees) - 15 <= slope(year) <= abs(degrees) + 3
    assert {year.azimuth, winter.azimuth, season.azimuth} == {math.pi if degrees > 0 else 0.0}


@pytest.mark.parametrize("degrees", [-3, 0, 3])
def test_near_the_equator_it_lies_almost_flat(degrees):
    assert slope(tilt.best_for_year(means_at(degrees), math.radians(degrees))) <= 5


def test_in_the_tropics_a_season_with_the_sun_behind_is_flat():
    means = means_at(10)
    assert slope(tilt.best_for_months(means, math.radians(10), (5, 6, 7))) == 0


@given(st.integers(-65, 65), st.integers(0, 90))
@settings(max_examples=20, deadline=None)
def test_no_other_slope_is_better(degrees, other):
    means, place = means_at(degrees), math.radians(degrees)
    best = tilt.best_for_worst_month(means, place)
    assert min(tilt.plane_means(means, place, math.radians(other))) <= min(best.daily) * (1 + 1e-9)


@given(st.integers(-65, 65), st.floats(0.3, 0.75))
@settings(max_examples=10, deadline=None)
def test_lying_flat_a_month_gets_what_the_ground_gets(degrees, share):
    means = means_at(degrees, share)
    # the months' light outside the air differs a little from that of their mean days
    assert tilt.plane_means(means, math.radians(degrees), 0.0) == pytest.approx(means)


@pytest.mark.parametrize("degrees, steep", [(31.77, 30), (-35.0, 60), (5.0, 10)])
def test_a_months_mean_day_gives_what_its_hours_give(degrees, steep):
    """Two ways to the same months: mean days here, 365 days of hours there."""
    place = math.radians(degrees)
    sun = hours.sun_hours(place)
    means = [0.6 * one for one in monthly(sun.day_light)]
    level = hours.level_from_days(sun, [0.6 * one for one in sun.day_light])
    plane = Plane(math.radians(steep), tilt.towards_equator(place))
    light = hours.plane_light(hours.facing(sun, plane), level)
    by_hours = monthly([3600 * sum(light[24 * d : 24 * d + 24]) for d in range(365)])
    by_days = tilt.plane_means(means, place, plane.slope)
    # 6 %: the diffuse share of a month of like days is another than that of a mixed month
    assert by_days == pytest.approx(by_hours, rel=0.06)


@pytest.mark.parametrize("degrees", [-90, -75, 75, 90])
def test_where_winter_is_dark_the_worst_month_is_a_lit_one(degrees):
    best = tilt.best_for_worst_month(means_at(degrees), math.radians(degrees))
    assert max(best.daily) > 0


@pytest.mark.parametrize("months", [(), (0,), (13,), (1, 2, 14)])
def test_a_season_needs_months_there_are(months):
    with pytest.raises(InputError, match="months"):
        tilt.best_for_months(means_at(40), math.radians(40), months)


def test_a_missing_month_is_named():
    means = means_at(40)
    means[1] = None
    with pytest.raises(InputError, match="February is missing"):
        tilt.best_for_year(means, math.radians(40))
