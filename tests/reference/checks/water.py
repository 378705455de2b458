"""Water and air: published check values, handbook tables and libraries of properties."""

import ambiance
from CoolProp.CoolProp import PropsSI
from iapws import IAPWS95
from iapws._iapws import _Liquid
from iapws.iapws97 import _TSat_P

from calc import water
from calc.units import CELSIUS, FOOT, PSI
from tests.reference.checks.check import (
    LIBRARY,
    MEMORY,
    PUBLISHED,
    Check,
    give,
    library,
    part,
    table,
)

SUBJECT, MODULE = "Water and air", "water"
SR6 = "IAPWS SR6-08(2011), liquid water at 0.1 MPa"
R7 = "IAPWS R7-97(2012), industrial formulation"
PERRY = "Perry's Chemical Engineers' Handbook, 9th edition"
DAVIS = "Davis, Water and Wastewater Engineering (2010)"
NIST = "NIST Special Publication 811"
MOLAR_MASS = 18.015268  # g/mol, IAPWS-95
TEMPERATURES = [(one,) for one in (273.2, 283.15, 293.15, 308.15, 348.15, 372.7)]

RELEASES = (
    Check(SUBJECT, MODULE, "Density of water at 298.15 K", SR6, 997.047013, "kg/m³", part(1e-9),
          PUBLISHED, lambda: water.density(298.15), "table 8"),
    Check(SUBJECT, MODULE, "Heat capacity of water at 298.15 K", SR6, 4181.44618, "J/(kg K)",
          part(2e-9), PUBLISHED, lambda: water.heat_capacity(298.15), "table 8"),
    Check(SUBJECT, MODULE, "Speed of sound in water at 298.15 K", SR6, 1496.69922, "m/s",
          part(5e-9), PUBLISHED, lambda: water.sound_speed(298.15), "table 8"),
    Check(SUBJECT, MODULE, "Viscosity of water at 298.15 K", SR6, 889.996774, "µPa s", part(1e-9),
          PUBLISHED, lambda: 1e6 * water.dynamic_viscosity(298.15), "table 8"),
    Check(SUBJECT, MODULE, "Vapour pressure at 300 K", R7, 3536.58941, "Pa", part(2e-9), PUBLISHED,
          lambda: water.vapour_pressure(300.0), "table 35"),
    Check(SUBJECT, MODULE, "Boiling temperature at 0.1 MPa", R7, 372.755919, "K", part(2e-9),
          PUBLISHED, lambda: water.boiling_temperature(0.1e6), "table 36"),
    Check(SUBJECT, MODULE, "Pressure under a metre of water at 4 °C", NIST, 9806.65, "Pa",
          part(5e-5), PUBLISHED, lambda: water.pressure_from_head(1.0, water.density(277.13)),
          "B.8", "water at 4 °C is 27 parts in a million lighter than the conventional one"),
)  # fmt: skip

# temperature K; saturated water: pressure Pa, mol/dm3, speed of sound m/s, viscosity uPa s
_PERRY = [
    (280.0, 992, 55.501, 1434.1, 1433.7),
    (290.0, 1920, 55.440, 1472.1, 1084.0),
    (300.0, 3537, 55.315, 1501.4, 853.84),
    (310.0, 6231, 55.139, 1523.2, 693.54),
    (320.0, 10546, 54.919, 1538.7, 577.02),
    (340.0, 27188, 54.371, 1553.9, 421.97),
    (360.0, 62194, 53.698, 1552.0, 326.10),
    (370.0, 90535, 53.321, 1545.8, 291.36),
]


def _perry(what, unit, column, found, near, why, scale=1.0, part_of=slice(None)):
    rows = [(row[0], scale * row[column]) for row in _PERRY[part_of]]
    return table(SUBJECT, MODULE, what + " at {0:g} K", rows, found, source=PERRY, kind=PUBLISHED,
                 near=near, unit=unit, place="table 2-135", why=why)  # fmt: skip


HANDBOOK = (
    *_perry("Density of water", "kg/m³", 2, water.density, part(1e-4),
            "the table is at saturation: up to 45 parts in a million lighter", MOLAR_MASS),
    *_perry("Speed of sound in water", "m/s", 3, water.sound_speed, part(2e-4),
            "the table is at saturation: up to 0.17 m/s slower"),
    *_perry("Viscosity of water", "µPa s", 4, lambda t: 1e6 * water.dynamic_viscosity(t),
            part(1e-3), "the table carries an older formulation, up to 0.08 % apart"),
    *_perry("Vapour pressure", "Pa", 1, water.vapour_pressure, give(0.5), "",
            part_of=slice(0, 3)),
    *_perry("Vapour pressure", "Pa", 1, water.vapour_pressure, part(1e-4),
            "R7-97 is a fit of the formulation behind the table", part_of=slice(3, None)),
)  # fmt: skip

# altitude m, pressure kPa: the U.S. Standard Atmosphere of 1976, the same as ISO 2533
_AIR = [(-1000, 113.9), (-500, 107.5), (0, 101.3), (500, 95.46), (1000, 89.88), (1500, 84.56),
        (2000, 79.50), (2500, 74.69), (3000, 70.12)]  # fmt: skip


def _kilopascal(altitude):
    return water.air_pressure(altitude) / 1e3


AIR = (
    *table(SUBJECT, MODULE, "Air pressure at {0} m", _AIR[:3], _kilopascal, source=DAVIS,
           kind=PUBLISHED, near=give(0.05), unit="kPa", place="table 3-7"),
    *table(SUBJECT, MODULE, "Air pressure at {0} m", _AIR[3:], _kilopascal, source=DAVIS,
           kind=PUBLISHED, near=give(0.005), unit="kPa", place="table 3-7"),
    *table(SUBJECT, MODULE, "Air pressure at {0} m", [(z,) for z in (0, 250, 1000, 3000, 8000)],
           water.air_pressure, source=library("ambiance"), kind=LIBRARY, near=part(1e-9), unit="Pa",
           against=lambda z: ambiance.Atmosphere(z).pressure[0], place="ICAO atmosphere"),
)  # fmt: skip


def _iapws(what, unit, found, against, near, why=""):
    return table(SUBJECT, MODULE, what + " at {0:g} K", TEMPERATURES, found, kind=LIBRARY,
                 source=library("iapws"), near=near, unit=unit, against=against,
                 why=why)  # fmt: skip


def _coolprop(what, unit, found, against, near, why):
    return table(SUBJECT, MODULE, what + " at {0:g} K", TEMPERATURES, found, kind=LIBRARY,
                 source=library("CoolProp"), near=near, unit=unit, against=against, why=why,
                 place="IAPWS-95")  # fmt: skip


def _coolprop_bulk(t):
    # at 0.102 MPa, as 0.1 MPa boils at 372.7 K
    state = ("T", t, "P", 1.02e5, "Water")
    return PropsSI("D", *state) * PropsSI("A", *state) ** 2 / 1e9


LIBRARIES = (
    *_iapws("Density of water, same release", "kg/m³", water.density,
            lambda t: _Liquid(t)["rho"], part(1e-12)),
    *_iapws("Heat capacity of water, same release", "J/(kg K)", water.heat_capacity,
            lambda t: 1e3 * _Liquid(t)["cp"], part(1e-9)),
    *_iapws("Density of water by IAPWS-95", "kg/m³", water.density,
            lambda t: IAPWS95(T=t, P=0.1).rho, part(1e-7), "SR6-08 is a fit of IAPWS-95"),
    *_iapws("Viscosity of water by IAPWS 2008", "µPa s", lambda t: 1e6 * water.dynamic_viscosity(t),
            lambda t: 1e6 * IAPWS95(T=t, P=0.1).mu, part(5e-5), "SR6-08 is a fit of it"),
    *_coolprop("Vapour pressure", "Pa", water.vapour_pressure,
               lambda t: PropsSI("P", "T", t, "Q", 0, "Water"), part(1e-4),
               "R7-97 is an industrial fit of IAPWS-95"),
    *_coolprop("Bulk modulus of water", "GPa", lambda t: water.bulk_modulus(t) / 1e9,
               _coolprop_bulk, part(1e-5), "at 0.102 MPa, to stay liquid"),
    *table(SUBJECT, MODULE, "Boiling temperature at {0:g} Pa", [(p,) for p in (700.0, 1e4, 7e4)],
           water.boiling_temperature, source=library("iapws"), kind=LIBRARY, near=part(1e-12),
           unit="K", against=lambda p: _TSat_P(p / 1e6)),
)  # fmt: skip

TRADE = "Know and Understand Centrifugal Pumps (Bachus, Custodio 2003)"
# temperature degF, vapour pressure psi, feet, page 34: older steam tables, up to 0.2 % apart
_VAPOUR = [
    (40, 0.1217, 0.281), (50, 0.1781, 0.411), (60, 0.2563, 0.591), (80, 0.5069, 1.172),
    (100, 0.9492, 2.203), (120, 1.692, 3.943), (140, 2.889, 6.766), (160, 4.741, 11.172),
]  # fmt: skip


def kelvin(fahrenheit):
    return (fahrenheit - 32) * 5 / 9 + CELSIUS


def _vapour_feet(fahrenheit):
    t = kelvin(fahrenheit)
    return water.head_from_pressure(water.vapour_pressure(t), water.density(t)) / FOOT


RECALLED = (
    *table(SUBJECT, MODULE, "Vapour pressure at {0} °F", [(f, psi) for f, psi, _ in _VAPOUR],
           lambda f: water.vapour_pressure(kelvin(f)) / PSI, source=TRADE, kind=MEMORY,
           near=part(2e-3), unit="psi", place="page 34", why="older steam tables"),
    *table(SUBJECT, MODULE, "Vapour pressure as head at {0} °F",
           [(f, feet) for f, _, feet in _VAPOUR], _vapour_feet, source=TRADE, kind=MEMORY,
           near=part(4e-3), unit="ft", place="page 34", why="older steam tables"),
)  # fmt: skip

CHECKS = (*RELEASES, *HANDBOOK, *AIR, *LIBRARIES, *RECALLED)
