"""Reference evapotranspiration against the worked examples of FAO-56."""

import math

import pytest

from calc.drip import crop
from calc.errors import RangeError
from calc.sun.position import daily_extraterrestrial

ZERO = 273.15


def test_a_month_in_bangkok():
    """FAO-56 example 17: April, 13.73 degrees north, 2 m above the sea; ET_0 is 5.72 mm a day.

    Numbers of the example from memory: 34.8 and 25.6 degC, 2.85 kPa, 2 m/s, light 22.65 MJ/m2,
    G 0.14 MJ/m2.
    """
    outside = daily_extraterrestrial(math.radians(13.73), 105)
    assert outside == pytest.approx(38.06e6, rel=2e-3)
    found = crop.reference(22.65e6, outside, 34.8 + ZERO, 25.6 + ZERO, 2.0, 2850.0, 2.0, 0.14e6)
    assert found / crop.MM_DAY == pytest.approx(5.72, abs=0.02)


def test_a_day_in_brussels():
    """FAO-56 example 18: 6 July, 50.8 degrees north, 100 m; ET_0 is 3.88 mm a day.

    Numbers of the example from memory: 21.5 and 12.3 degC, 1.409 kPa, 2.078 m/s, light 22.07 MJ/m2.
    """
    outside = daily_extraterrestrial(math.radians(50.8), 187)
    assert outside == pytest.approx(41.09e6, rel=2e-3)
    found = crop.reference(22.07e6, outside, 21.5 + ZERO, 12.3 + ZERO, 100.0, 1409.0, 2.078)
    assert found / crop.MM_DAY == pytest.approx(3.88, abs=0.02)


def test_lyon_by_temperature_alone():
    """FAO-56 example 20: July, 45.72 degrees north, 200 m; 26.6 and 14.8 degC give 5.0 mm a day.

    From memory.
    """
    outside = daily_extraterrestrial(math.radians(45.72), 196)
    assert outside == pytest.approx(40.55e6, rel=3e-3)
    found = crop.by_temperature(outside, 26.6 + ZERO, 14.8 + ZERO)
    assert found / crop.MM_DAY == pytest.approx(5.03, abs=0.05)


@pytest.mark.parametrize(
    "degrees, kilopascal", [(0.0, 0.611), (10.0, 1.228), (20.0, 2.338), (30.0, 4.243)]
)
def test_saturated_air(degrees, kilopascal):
    """FAO-56 annex 2, table 2.3."""
    found = crop.saturation_pressure(degrees + ZERO)
    assert found / 1000 == pytest.approx(kilopascal, abs=6e-4)


@pytest.mark.parametrize("metres, kilopascal", [(0, 101.3), (1000, 90.0), (2000, 79.8)])
def test_air_pressure(metres, kilopascal):
    """FAO-56 annex 2, table 2.1."""
    assert crop.air_pressure(metres) / 1000 == pytest.approx(kilopascal, abs=0.06)


def test_more_light_more_wind_and_drier_air_take_more_water():
    def of(light=20e6, wind=2.0, vapour=1500.0):
        return crop.reference(light, 40e6, 300.0, 288.0, 100.0, vapour, wind)

    assert of(light=25e6) > of() > of(light=15e6)
    assert of(wind=4.0) > of() > of(wind=1.0)
    assert of(vapour=1000.0) > of() > of(vapour=1700.0)


def test_a_dark_cold_day_takes_nothing_and_never_less():
    assert crop.reference(0.0, 0.0, 262.0, 258.0, 0.0) >= 0.0
    assert crop.by_temperature(0.0, 262.0, 258.0) == 0.0


def test_a_day_that_is_cooler_at_its_warmest_is_refused():
    with pytest.raises(RangeError):
        crop.reference(20e6, 40e6, 280.0, 290.0, 0.0)


def test_heat_goes_into_the_ground_in_spring_and_comes_back_in_autumn():
    assert crop.into_ground(281.0, 287.0) == pytest.approx(0.42e6)
    assert crop.into_ground(287.0, 281.0) == pytest.approx(-0.42e6)


def test_vapour_from_humidity():
    """FAO-56 example 5: 82 % at 18 degC and 54 % at 25 degC give 1.70 kPa; by the mean, eq. 19,
    1.78 kPa.  From memory."""
    assert crop.vapour_from_humidity(0.68, 25 + ZERO, 18 + ZERO) / 1000 == pytest.approx(1.78, 6e-3)
    assert crop.vapour_from_humidity(0.0, 300.0, 290.0) == 0.0


@pytest.mark.parametrize("month, day", [(1, 15), (4, 106), (7, 197), (9, 258), (12, 349)])
def test_the_middle_of_a_month(month, day):
    """FAO-56, annex 2, box of equation 22, which is good to a day."""
    assert crop.middle_day(month) == pytest.approx(day, abs=1)


@pytest.mark.parametrize(
    "key, need", [("tomato", 1.15), ("lettuce", 1.0), ("strawberry", 0.85), ("olive", 0.70)]
)
def test_crops_of_the_table(key, need):
    """FAO-56 table 12, from memory."""
    assert crop.CROP_BY_KEY[key].need == need


def test_every_crop_needs_about_what_grass_needs():
    assert all(0.6 <= one.need <= 1.3 for one in crop.CROPS)
    assert len({one.key for one in crop.CROPS}) == len(crop.CROPS)
