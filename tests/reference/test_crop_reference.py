"""What plants need, against another library; the examples of FAO-56 are in ``checks.garden``.

FAO-56 is R. G. Allen, L. S. Pereira, D. Raes and M. Smith, FAO Irrigation and Drainage Paper 56
(1998).  The library is refet, which follows the
standardised equation of ASCE-EWRI (2005); a day on grass is that of FAO-56.
"""

import math
import random

import numpy
import pytest
import refet

from calc.drip import crop
from calc.sun.position import daily_extraterrestrial
from calc.units import CELSIUS

MJ = 1e6


COUNT = 200
# FAO-56 takes 4.903e-9 and 4098 x 0.6108, ASCE 4.901e-9 and 2503: 4e-4 and 2e-5 of their terms
ALIKE = 1e-3  # of the need, and 0.005 mm where a term nearly cancels another


def climates(count=COUNT, cloud=(0.32, 0.98)):
    """degC, degC, J/m2, J/m2, kPa, m/s, m, rad, day of the year.

    cloud: share of the clear day's sun.  Below 0.3 the library takes 0.3, FAO-56 does not.
    """
    rng = random.Random(56)
    for _ in range(count):
        latitude, day = math.radians(rng.uniform(-55, 55)), rng.randint(1, 365)
        outside = daily_extraterrestrial(latitude, day)
        above = rng.uniform(-50, 4000)
        cool = rng.uniform(-5, 25)
        warm = cool + rng.uniform(2, 22)
        light = rng.uniform(*cloud) * (0.75 + 2e-5 * above) * outside
        most = 0.6108 * math.exp(17.27 * cool / (cool + 237.3))
        yield cool, warm, light, outside, rng.uniform(0.2, 1.0) * most, rng.uniform(0.3, 8), \
            above, latitude, day  # fmt: skip


def theirs(cool, warm, light, vapour, wind, above, latitude, day, into=0.0):
    """(need, sun outside the air) in mm and MJ/m2 a day."""
    found = refet.Daily(
        tmin=cool, tmax=warm, rs=light / MJ, uz=wind, zw=2.0, elev=above,
        lat=math.degrees(latitude), doy=numpy.array([day]), ea=vapour, method="asce",
    )  # fmt: skip
    found.g = into / MJ
    return float(found.eto()[0]), float(found.ra[0])


def ours(cool, warm, light, outside, vapour, wind, above, into=0.0):
    """mm a day."""
    warm_k, cool_k = warm + CELSIUS, cool + CELSIUS
    depth = crop.reference(light, outside, warm_k, cool_k, above, vapour * 1000, wind, into)
    return depth / crop.MM_DAY


def test_the_sun_outside_the_air_is_theirs():
    """To 1 %: the declination, the distance of the sun and its strength by two sets of series."""
    for *_, outside, _, _, _, latitude, day in climates():
        _, told = theirs(10.0, 20.0, 10 * MJ, 1.0, 2.0, 0.0, latitude, day)
        assert outside / MJ == pytest.approx(told, rel=0.01, abs=0.1)


@pytest.mark.parametrize("into", [0.0, 0.5 * MJ, -0.5 * MJ], ids=["day", "spring", "autumn"])
def test_two_hundred_climates_by_penman_and_monteith_are_theirs(into):
    """A day, and a month that warms or cools the ground."""
    seen = []
    for cool, warm, light, _, vapour, wind, above, latitude, day in climates():
        told, outside = theirs(cool, warm, light, vapour, wind, above, latitude, day, into)
        found = ours(cool, warm, light, outside * MJ, vapour, wind, above, into)
        assert found == pytest.approx(max(0.0, told), rel=ALIKE, abs=0.005)
        seen.append(told)
    assert len(seen) == COUNT and min(seen) < 1 and max(seen) > 9


def test_with_our_own_sun_the_need_is_theirs_to_a_fortieth_of_a_millimetre():
    """The sun outside the air decides only how clear the sky is."""
    for cool, warm, light, outside, vapour, wind, above, latitude, day in climates():
        told, _ = theirs(cool, warm, light, vapour, wind, above, latitude, day)
        found = ours(cool, warm, light, outside, vapour, wind, above)
        assert found == pytest.approx(max(0.0, told), rel=0.01, abs=0.025)


def test_under_a_dark_sky_fao_56_takes_more_than_they_do():
    """The one place where the two differ: ASCE limits the sky to 0.3 of a clear day, FAO-56 to
    none, so the grass throws back less heat and needs more."""
    more = 0
    for cool, warm, light, outside, vapour, wind, above, latitude, day in climates(60, (0, 0.2)):
        told, _ = theirs(cool, warm, light, vapour, wind, above, latitude, day)
        found = ours(cool, warm, light, outside, vapour, wind, above)
        assert found >= told - 0.025
        more += found > told + 0.05
    assert more > 20
