"""Water and air against libraries over the range; published values are in ``checks.water``."""

import math

import ambiance
import pytest
from CoolProp.CoolProp import PropsSI
from iapws import IAPWS95
from iapws._iapws import _Liquid

from calc import water

TEMPERATURES = [273.2, 278.15, 283.15, 288.15, 293.15, 298.15, 308.15, 323.15, 348.15, 372.7]


@pytest.mark.parametrize("t", TEMPERATURES)
def test_matches_the_same_release_in_the_iapws_package(t):
    theirs = _Liquid(t)
    assert math.isclose(water.density(t), theirs["rho"], rel_tol=1e-12)
    assert math.isclose(water.sound_speed(t), theirs["w"], rel_tol=1e-9)
    assert math.isclose(water.dynamic_viscosity(t), theirs["mu"], rel_tol=1e-12)
    assert math.isclose(water.heat_capacity(t), 1e3 * theirs["cp"], rel_tol=1e-9)


@pytest.mark.parametrize("t", TEMPERATURES)
def test_density_agrees_with_iapws_95_within_a_tenth_of_a_millionth(t):
    assert math.isclose(water.density(t), IAPWS95(T=t, P=0.1).rho, rel_tol=1e-7)


@pytest.mark.parametrize("t", TEMPERATURES)
def test_sound_agrees_with_iapws_95_within_3_in_a_million(t):
    assert math.isclose(water.sound_speed(t), IAPWS95(T=t, P=0.1).w, rel_tol=3e-6)


@pytest.mark.parametrize("t", TEMPERATURES)
def test_viscosity_agrees_with_iapws_2008_within_5_in_100_000(t):
    assert math.isclose(water.dynamic_viscosity(t), IAPWS95(T=t, P=0.1).mu, rel_tol=5e-5)


@pytest.mark.parametrize("t", TEMPERATURES)
def test_vapour_pressure_agrees_with_iapws_95_within_a_ten_thousandth(t):
    # CoolProp carries IAPWS-95; R7-97 is an industrial fit of it
    assert math.isclose(
        water.vapour_pressure(t), PropsSI("P", "T", t, "Q", 0, "Water"), rel_tol=1e-4
    )


@pytest.mark.parametrize("t", TEMPERATURES)
def test_bulk_modulus_agrees_with_iapws_95_within_5_in_a_million(t):
    theirs = IAPWS95(T=t, P=0.1)
    assert math.isclose(water.bulk_modulus(t), theirs.rho * theirs.w**2, rel_tol=5e-6)


@pytest.mark.parametrize("t", TEMPERATURES)
def test_bulk_modulus_agrees_with_coolprop(t):
    # CoolProp at 0.102 MPa, as 0.1 MPa boils at 372.7 K: 2 kPa of pressure is within the band
    speed = PropsSI("A", "T", t, "P", 1.02e5, "Water")
    density = PropsSI("D", "T", t, "P", 1.02e5, "Water")
    assert math.isclose(water.bulk_modulus(t), density * speed**2, rel_tol=1e-5)


@pytest.mark.parametrize("altitude", [-500, 0, 250, 500, 1000, 1500, 2000, 3000, 4500, 8000])
def test_air_pressure_matches_the_icao_atmosphere_of_the_ambiance_package(altitude):
    # below sea level the package builds up from a base at -5000 m printed to six figures
    theirs = float(ambiance.Atmosphere(altitude).pressure[0])
    band = 1e-9 if altitude >= 0 else 3e-7
    assert math.isclose(water.air_pressure(altitude), theirs, rel_tol=band)
