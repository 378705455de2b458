"""Skies, planes and skylines: limits, what must add up, and what is refused."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.errors import InputError, RangeError
from calc.sun import sky
from calc.sun.horizon import FLAT, sky_share, skyline
from calc.sun.plane import Plane, incidence, module_temperature, on_plane

ANGLES = st.floats(0, 2 * math.pi)


@given(st.floats(0.05, math.pi))
def test_the_hours_of_a_day_add_to_the_day(sunset):
    steps = 2000
    width = 2 * sunset / steps
    turns = [-sunset + (one + 0.5) * width for one in range(steps)]
    hours = width / (math.pi / 12)
    diffuse = sum(sky.hour_of_day_diffuse(turn, sunset) for turn in turns) * hours
    assert diffuse == pytest.approx(1.0, abs=1e-4)
    if 1.0 < sunset < 2.6:  # days of 8 to 20 hours, for which it was made
        whole = sum(sky.hour_of_day_global(turn, sunset) for turn in turns) * hours
        # the fit's constants are rounded to four figures and close to a percent or two
        assert whole == pytest.approx(1.0, abs=0.03)


@pytest.mark.parametrize(
    "share",
    [
        sky.hourly_diffuse_share,
        lambda k: sky.daily_diffuse_share(k, 1.6),
        lambda k: sky.daily_diffuse_share(k, 1.2),
    ],
)
def test_the_clearer_the_less_is_diffuse(share):
    found = [share(one / 100) for one in range(86)]
    # the fits rise by under 0.02 before they fall, and near their ends
    assert all(b <= a + 0.02 for a, b in zip(found, found[1:], strict=False))
    assert found[0] == pytest.approx(1.0) and 0.1 < found[-1] < 0.25


@given(st.floats(-1.0, 1.0), st.floats(0.0, 6000.0), st.floats(1.5, 8.0))
def test_a_clear_sky_lets_through_less_than_there_is(cos_zenith, altitude, turbidity):
    clear = sky.clear_sky(cos_zenith, 1367.0, altitude, turbidity)
    hazy = sky.clear_sky(cos_zenith, 1367.0, altitude, turbidity + 1)
    up = max(0.0, cos_zenith)
    assert clear.beam * up + clear.diffuse == pytest.approx(clear.level)
    # the fit's c_1, what is left of the light without any air: above 1 from 2,590 m on
    assert 0 <= clear.level <= (5.09e-5 * altitude + 0.868) * 1367.0 * up
    assert hazy.level <= clear.level and hazy.beam <= clear.beam


@given(ANGLES, st.floats(0, 1.5), ANGLES, st.floats(0, 1.5))
def test_a_plane_that_faces_the_sun_is_at_no_angle_to_it(azimuth, slope, other, zenith):
    assert incidence(Plane(slope, azimuth), slope, azimuth) == pytest.approx(0.0, abs=1e-6)
    assert incidence(Plane(0.0, azimuth), zenith, other) == pytest.approx(zenith, abs=1e-6)


@given(st.floats(0.05, 1.0), st.floats(0, 1000), st.floats(0, 500))
def test_a_flat_plane_gets_what_the_ground_gets(cos_zenith, beam, diffuse):
    whole = beam * cos_zenith + diffuse
    found = on_plane(Plane(0.0, 1.0), cos_zenith, cos_zenith, 1367.0, beam, diffuse, whole)
    assert found == pytest.approx(whole)


def test_an_upright_plane_with_its_back_to_the_sun_sees_half_the_sky_and_half_the_ground():
    found = on_plane(Plane(math.pi / 2, 0.0, 0.2), -0.5, 0.5, 1000.0, 500.0, 100.0, 350.0)
    assert found == pytest.approx(100 * 0.5 * 0.5 + 350 * 0.2 / 2)


def test_wind_cools_a_module_and_light_heats_it():
    assert module_temperature(0.0, 290.0) == 290.0
    assert module_temperature(800.0, 290.0, 5.0) < module_temperature(800.0, 290.0, 1.0)


@given(st.floats(0, math.pi / 2), ANGLES)
def test_open_land_hides_nothing(slope, azimuth):
    level = skyline([(0.0, 0.0), (2.0, 0.0)])
    # 0.001: 360 slices of the sky
    assert sky_share(level, slope, azimuth) == pytest.approx((1 + math.cos(slope)) / 2, abs=1e-3)
    assert sky_share(FLAT, slope, azimuth) == (1 + math.cos(slope)) / 2


@given(st.floats(0, 1.5))
def test_an_even_ring_of_hills_leaves_flat_ground_the_square_of_its_cosine(height):
    ring = skyline([(0.0, height)])
    assert sky_share(ring, 0.0, 0.0) == pytest.approx(math.cos(height) ** 2)


@given(st.lists(st.tuples(st.floats(0, 6.28), st.floats(0, 1.5)), max_size=6,
                unique_by=lambda one: one[0]), ANGLES)  # fmt: skip
def test_a_skyline_is_never_higher_than_its_highest_point(points, azimuth):
    line = skyline(points)
    low = min((height for _, height in points), default=0.0)
    high = max((height for _, height in points), default=0.0)
    assert low - 1e-12 <= line.elevation(azimuth) <= high + 1e-12
    for towards, height in points:
        assert line.elevation(towards) == pytest.approx(height, abs=1e-9)


def test_a_skyline_goes_round_through_north():
    line = skyline([(math.radians(350), 0.1), (math.radians(20), 0.4)])
    assert line.elevation(math.radians(5)) == pytest.approx(0.25)
    assert line.elevation(math.radians(-5)) == pytest.approx(0.15)


@pytest.mark.parametrize(
    "ask",
    [
        lambda: skyline([(0.1, 0.2), (0.1, 0.3)]),
        lambda: skyline([(7.0, 0.2)]),
        lambda: skyline([(1.0, -0.2)]),
        lambda: skyline([(1.0, 1.6)]),
    ],
)
def test_a_skyline_that_cannot_be_is_refused(ask):
    with pytest.raises(InputError):
        ask()


@pytest.mark.parametrize(
    "ask",
    [
        lambda: Plane(math.radians(95), 0.0),
        lambda: Plane(-0.1, 0.0),
        lambda: Plane(0.1, 0.0, 1.2),
        lambda: sky.hourly_diffuse_share(-0.1),
        lambda: sky.clear_global(1.1),
        lambda: module_temperature(800.0, 20.0),
    ],
)
def test_what_cannot_be_is_refused(ask):
    with pytest.raises(RangeError):
        ask()
