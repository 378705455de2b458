"""Power against outside figures: conductor tables, another program, a worked sum, another year."""

import numpy as np
import pvlib
import pytest

from calc.power import array
from calc.power.array import Array, usual_module
from calc.power.year import simulate, trace
from tests.power.places import HOME, system, weather
from tests.reference.checks.power import other_year

# Panels against pvlib -----------------------------------------------------------------------


@pytest.mark.parametrize("plane", [0.0, 80.0, 450.0, 1000.0, 1150.0])
@pytest.mark.parametrize("celsius", [-20.0, 25.0, 68.0])
def test_panels_give_what_pvlib_says(plane, celsius):
    one = Array(usual_module(400.0), 2, 3)
    theirs = pvlib.pvsystem.pvwatts_dc(plane, celsius, one.rated_w, one.module.power_rise)
    left = 1 - pvlib.pvsystem.pvwatts_losses(
        soiling=3, shading=0, snow=0, mismatch=2, wiring=3, connections=0, lid=0,
        nameplate_rating=0, age=0, availability=0,
    ) / 100  # fmt: skip
    ours = array.power(one, plane, 273.15 + celsius)
    # the same formula; only the last bits differ
    assert ours == pytest.approx(theirs * left, rel=1e-12, abs=1e-12)


# The year against another one ---------------------------------------------------------------


@pytest.mark.parametrize("kind", ["flooded", "lfp"])
@pytest.mark.parametrize("strings, wh, tank", [(1, 900.0, 0.0), (1, 500.0, 2.0), (3, 2500.0, 0.5)])
@pytest.mark.parametrize("mean_k", [276.0, 293.0])
def test_the_year_is_that_of_another_program(kind, strings, wh, tank, mean_k):
    there, one = weather(2, mean_k), system(strings, wh, tank, kind)
    asked, served, charge, sun = other_year(there, one, HOME, wh)
    ours = simulate(there, one, HOME)
    # rounding of some ten operations an hour, 8,760 hours: measured at 1e-12, asked for 1e-9
    assert ours.served == pytest.approx(served.sum(), rel=1e-9)
    assert ours.unserved == pytest.approx((asked - served).sum(), rel=1e-9, abs=1e-9)
    assert ours.lowest == pytest.approx(min(1.0, charge.min()), rel=1e-9, abs=1e-9)
    assert ours.array == pytest.approx(sun.sum() * 3600, rel=1e-9)
    hours = trace(there, one, HOME)
    mine = np.array([hour.served for hour in hours])
    assert mine == pytest.approx(served, rel=1e-9, abs=1e-9)
    stored = np.array([hour.stored for hour in hours]) / wh
    assert stored == pytest.approx(charge, rel=1e-9, abs=1e-9)
