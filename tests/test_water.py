"""Water and air: limits, directions and ranges."""

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import water
from calc.errors import RangeError

LIQUID = st.floats(273.15, 373.0)


@given(LIQUID)
@settings(max_examples=100, deadline=None)
def test_warmer_water_is_thinner(t):
    assert water.dynamic_viscosity(t + 0.1) < water.dynamic_viscosity(t)


@given(LIQUID)
@settings(max_examples=100, deadline=None)
def test_warmer_water_boils_more_easily(t):
    assert water.vapour_pressure(t + 0.1) > water.vapour_pressure(t)


def test_water_is_heaviest_near_four_degrees():
    heaviest = max(range(400), key=lambda i: water.density(273.15 + i * 0.05)) * 0.05
    assert abs(heaviest - 3.98) < 0.06


@given(st.floats(-1000, 8999))
@settings(max_examples=100, deadline=None)
def test_air_thins_with_height(altitude):
    assert water.air_pressure(altitude + 1) < water.air_pressure(altitude)


@given(st.floats(-100, 1e4), LIQUID)
@settings(max_examples=100, deadline=None)
def test_head_and_pressure_are_each_others_inverse(head, t):
    density = water.density(t)
    back = water.head_from_pressure(water.pressure_from_head(head, density), density)
    assert back == pytest.approx(head, rel=1e-12, abs=1e-12)


@pytest.mark.parametrize("t", [273.0, 374.0, float("nan"), float("inf"), -5.0])
def test_ice_and_steam_are_refused_with_the_range(t):
    with pytest.raises(RangeError, match="0 to 100 degC"):
        water.density(t)


@pytest.mark.parametrize("altitude", [-1001.0, 9001.0, float("nan")])
def test_heights_off_the_scale_are_refused(altitude):
    with pytest.raises(RangeError):
        water.air_pressure(altitude)


@given(st.floats(273.15, 373.15))
@settings(max_examples=100, deadline=None)
def test_boiling_turns_vapour_pressure_round_to_a_billionth_of_a_kelvin(t):
    assert abs(water.boiling_temperature(water.vapour_pressure(t)) - t) < 1e-9


@pytest.mark.parametrize("pressure", [0.0, 600.0, 1.02e5, float("nan")])
def test_boiling_outside_0_to_100_degrees_is_refused(pressure):
    with pytest.raises(RangeError, match="0 to 100 degC"):
        water.boiling_temperature(pressure)


@pytest.mark.parametrize("density", [0.0, 1.0, -1000.0, 1e6, float("nan")])
def test_a_density_that_is_not_waters_is_refused(density):
    with pytest.raises(RangeError, match="density of water"):
        water.head_from_pressure(1e5, density)
    with pytest.raises(RangeError, match="density of water"):
        water.pressure_from_head(10.0, density)


@given(LIQUID)
@settings(max_examples=100, deadline=None)
def test_kinematic_viscosity_is_dynamic_by_density(t):
    assert water.kinematic_viscosity(t) * water.density(t) == pytest.approx(
        water.dynamic_viscosity(t), rel=1e-14
    )


def test_the_guide_on_hot_water_says_what_water_does():
    guide = Path(__file__).resolve().parents[1] / "docs" / "hot-water.md"
    rows = re.findall(
        r"\| (\d+) °C \(\d+ °F\) \| ([\d.]+) % \| ([\d.]+) L \(([\d.]+) gal\)",
        guide.read_text("utf-8"),
    )
    assert len(rows) == 3
    cold = water.density(288.15)
    for degrees, share, litres, gallons in rows:
        grows = cold / water.density(273.15 + float(degrees)) - 1
        assert float(share) == pytest.approx(100 * grows, abs=0.05)
        assert float(litres) == pytest.approx(200 * grows, abs=0.05)
        assert float(gallons) == pytest.approx(200 * grows / 3.785411784, rel=0.02)
