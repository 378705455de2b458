"""Water and air against published check values, handbook tables and independent libraries."""

import math

import ambiance
import pytest
from CoolProp.CoolProp import PropsSI
from iapws import IAPWS95
from iapws._iapws import _Liquid
from iapws.iapws97 import _TSat_P

from calc import water
from calc.units import FOOT, PSI

TEMPERATURES = [273.2, 278.15, 283.15, 288.15, 293.15, 298.15, 308.15, 323.15, 348.15, 372.7]
SR6 = "IAPWS SR6-08(2011) table 8, 298.15 K"

# name, function, argument (K or Pa), value (SI), relative band (the digits printed), source
PUBLISHED = [
    ("density", water.density, 298.15, 997.047013, 1e-9, SR6),
    ("heat capacity", water.heat_capacity, 298.15, 4181.44618, 2e-9, SR6),
    ("speed of sound", water.sound_speed, 298.15, 1496.69922, 5e-9, SR6),
    ("viscosity", water.dynamic_viscosity, 298.15, 889.996774e-6, 1e-9, SR6),
    ("vapour pressure", water.vapour_pressure, 300.0, 3536.58941, 2e-9, "R7-97(2012) table 35"),
    ("boiling", water.boiling_temperature, 0.1e6, 372.755919, 2e-9, "R7-97(2012) table 36"),
]


@pytest.mark.parametrize("name, function, given, value, band, source", PUBLISHED)
def test_matches_the_published_check_value(name, function, given, value, band, source):
    assert math.isclose(function(given), value, rel_tol=band), (name, source)


# temperature K; saturated water: pressure MPa, mol/dm3, speed of sound m/s, viscosity uPa s
# source: Perry's Chemical Engineers' Handbook, 9th edition, table 2-135
PERRY = [
    (280.0, 0.000992, 55.501, 1434.1, 1433.7),
    (290.0, 0.001920, 55.440, 1472.1, 1084.0),
    (300.0, 0.003537, 55.315, 1501.4, 853.84),
    (310.0, 0.006231, 55.139, 1523.2, 693.54),
    (320.0, 0.010546, 54.919, 1538.7, 577.02),
    (340.0, 0.027188, 54.371, 1553.9, 421.97),
    (360.0, 0.062194, 53.698, 1552.0, 326.10),
    (370.0, 0.090535, 53.321, 1545.8, 291.36),
]
MOLAR_MASS = 18.015268  # g/mol, IAPWS-95


@pytest.mark.parametrize("t, pressure, moles, speed, viscosity", PERRY)
def test_density_matches_the_handbook_within_a_ten_thousandth(t, pressure, moles, speed, viscosity):
    # saturated in the table, 0.1 MPa here: up to 45 ppm lighter under less pressure
    assert math.isclose(water.density(t), moles * MOLAR_MASS, rel_tol=1e-4)


@pytest.mark.parametrize("t, pressure, moles, speed, viscosity", PERRY)
def test_sound_matches_the_handbook_within_2_in_10_000(t, pressure, moles, speed, viscosity):
    # 0.1 MPa here: pressure adds up to 0.17 m/s per 0.1 MPa
    assert math.isclose(water.sound_speed(t), speed, rel_tol=2e-4)


@pytest.mark.parametrize("t, pressure, moles, speed, viscosity", PERRY)
def test_viscosity_matches_the_handbook_within_a_thousandth(t, pressure, moles, speed, viscosity):
    # the table carries an older viscosity formulation, apart from today's by up to 0.08 %
    assert math.isclose(water.dynamic_viscosity(t), viscosity * 1e-6, rel_tol=1e-3)


@pytest.mark.parametrize("t, pressure, moles, speed, viscosity", PERRY)
def test_vapour_pressure_matches_the_handbook(t, pressure, moles, speed, viscosity):
    # printed to 1 Pa: half of it, plus a ten-thousandth
    assert math.isclose(water.vapour_pressure(t), pressure * 1e6, rel_tol=1e-4, abs_tol=0.5)


# temperature degF, vapour pressure psi, feet; source: Know and Understand Centrifugal
# Pumps (Bachus, Custodio 2003, from memory), page 34 (older steam tables: up to 0.2 % apart,
# 0.4 % at ten feet)
TRADE = [
    (40, 0.1217, 0.281),
    (50, 0.1781, 0.411),
    (60, 0.2563, 0.591),
    (80, 0.5069, 1.172),
    (100, 0.9492, 2.203),
    (120, 1.692, 3.943),
    (140, 2.889, 6.766),
    (160, 4.741, 11.172),
]


@pytest.mark.parametrize("fahrenheit, psi, feet", TRADE)
def test_vapour_pressure_matches_the_pump_trades_table(fahrenheit, psi, feet):
    t = (fahrenheit - 32) * 5 / 9 + 273.15
    assert math.isclose(water.vapour_pressure(t) / PSI, psi, rel_tol=2e-3)


@pytest.mark.parametrize("fahrenheit, psi, feet", TRADE)
def test_vapour_head_matches_the_pump_trades_table(fahrenheit, psi, feet):
    t = (fahrenheit - 32) * 5 / 9 + 273.15
    head = water.head_from_pressure(water.vapour_pressure(t), water.density(t))
    assert math.isclose(head / FOOT, feet, rel_tol=4e-3)


# altitude m, pressure kPa; source: Davis, Water and Wastewater Engineering (2010), table 3-7,
# after the U.S. Standard Atmosphere, 1976 (the same as ISO 2533 below 32 km)
AIR = [
    (-1000, 113.9), (-500, 107.5), (0, 101.3), (500, 95.46), (1000, 89.88), (1500, 84.56),
    (2000, 79.50), (2500, 74.69), (3000, 70.12),
]  # fmt: skip


@pytest.mark.parametrize("altitude, kilopascal", AIR)
def test_air_pressure_matches_the_table_to_its_last_digit(altitude, kilopascal):
    assert float(f"{water.air_pressure(altitude) / 1e3:.4g}") == pytest.approx(
        kilopascal, abs=0.05 if kilopascal > 100 else 0.005
    )


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


@pytest.mark.parametrize("pressure", [700.0, 2e3, 1e4, 5e4, 7e4, 1e5])
def test_boiling_agrees_with_the_iapws_package(pressure):
    assert math.isclose(water.boiling_temperature(pressure), _TSat_P(pressure / 1e6), rel_tol=1e-12)


@pytest.mark.parametrize("altitude", [-500, 0, 250, 500, 1000, 1500, 2000, 3000, 4500, 8000])
def test_air_pressure_matches_the_icao_atmosphere_of_the_ambiance_package(altitude):
    # below sea level the package builds up from a base at -5000 m printed to six figures
    theirs = float(ambiance.Atmosphere(altitude).pressure[0])
    band = 1e-9 if altitude >= 0 else 3e-7
    assert math.isclose(water.air_pressure(altitude), theirs, rel_tol=band)


def test_a_metre_of_water_at_four_degrees_is_the_conventional_one():
    # NIST SP 811 B.8: conventional metre of water 9806.65 Pa; water at 4 degC is 27 ppm lighter
    assert math.isclose(water.pressure_from_head(1.0, water.density(277.13)), 9806.65, rel_tol=5e-5)
