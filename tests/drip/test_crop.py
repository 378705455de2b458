"""Reference evapotranspiration: order, bounds, calendar; examples are in ``checks.garden``."""

import pytest

from calc.drip import crop
from calc.errors import RangeError

ZERO = 273.15


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


def test_every_crop_needs_about_what_grass_needs():
    assert all(0.6 <= one.need <= 1.3 for one in crop.CROPS)
    assert len({one.key for one in crop.CROPS}) == len(crop.CROPS)
