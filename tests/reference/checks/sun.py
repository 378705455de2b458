"""The sun: NREL's example, a textbook's, FAO-56, and pvlib."""

import math

import pandas as pd
import pvlib

from calc.sun import horizon, position, sky
from calc.sun.plane import Plane, incidence, module_temperature, on_plane
from tests.reference.checks.check import (
    LIBRARY,
    MEMORY,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip

SUBJECT = "Sun"
PVLIB = library("pvlib")
NREL = "NREL/TP-560-34302, solar position algorithm"
BECKMAN = "Duffie and Beckman, Solar Engineering of Thermal Processes"
FAO = "FAO Irrigation and Drainage Paper 56"
READ = "as quoted in the tests of the pyeto library"
COOPER = "Cooper's series there, Spencer's here: up to 0.6 degree apart in spring and autumn"
OURS = "our year has 365 days and the series is good to 0.04 degree: 0.25 degree in all"


def _clock(what):
    """17 October 2003, 12:30:30 at 7 hours behind, 39.742476 N, 105.1786 W, degrees."""
    found = position.position_by_clock(math.radians(39.742476), math.radians(-105.1786), -7, 290,
                                       12 + 30.5 / 60)  # fmt: skip
    return math.degrees(getattr(found, what))


def _stands(what, day, hour):
    """By the sun's own hour at 43 N; the azimuth from south, westwards."""
    found = math.degrees(getattr(position.position(math.radians(43.0), day, hour), what))
    return found - 180 if what == "azimuth" else found


def _falls():
    """Example 1.6.1: a plane of 45 degrees that looks 15 degrees west of south."""
    sun = position.position(math.radians(43.0), 44, 10.5)
    return math.degrees(incidence(Plane(math.radians(45), math.radians(195)), *_pair(sun)))


def _pair(sun):
    return sun.zenith, sun.azimuth


_WHERE = {"source": BECKMAN, "kind": PUBLISHED, "unit": "°"}
POSITIONS = (
    # with refraction 50.11162, which the page leaves out: 0.0163 degree
    *table(SUBJECT, "sun.position", "Golden, 17 October 2003, 12:30:30: {0}",
           [("zenith", 50.12795), ("azimuth", 194.34024)], _clock, source=NREL, kind=PUBLISHED,
           near=give(0.25), unit="°", place="example, table A5.1", why=OURS),
    *table(SUBJECT, "sun.position", "43° N, day {1}, hour {2}: {0}",
           [("zenith", 44, 9.5, 66.5), ("azimuth", 44, 9.5, -40.0), ("zenith", 182, 18.5, 79.6),
            ("azimuth", 182, 18.5, 112.0), ("zenith", 75, 16.0, 70.3), ("azimuth", 75, 16.0, 66.8)],
           _stands, near=give(0.65), place="examples 1.6.2 and 1.6.3", **_WHERE, why=COOPER),
    *table(SUBJECT, "sun.position", "Height of the sun over the equator, day {0}",
           [(44, -14.0), (75, -2.4)], lambda day: math.degrees(position.declination(day)),
           near=give(0.65), place="examples 1.6.1 and 1.6.3", **_WHERE, why=COOPER),
    *table(SUBJECT, "sun.plane", "Angle of the sun to a plane of 45°, 43° N, 13 February",
           [(35.0,)], _falls, near=give(0.65), place="example 1.6.1", **_WHERE, why=COOPER),
    *table(SUBJECT, "sun.position", "Equation of time on 3 February", [(-13.5,)],
           lambda: 60 * position.equation_of_time(34), source=BECKMAN, kind=PUBLISHED,
           near=give(0.5), unit="min", place="example 1.5.1", why="the day of 365 or 366"),
)  # fmt: skip

_LIGHT = [(-20.0, 246, 32.2), (-22.9, 135, 25.1), (45.72, 196, 40.6)]


def _outside(degrees, day):
    return position.daily_extraterrestrial(math.radians(degrees), day) / 1e6


# 2.6: MJ/m2 a day on the 15th of a month at the equator
_MONTHS = zip(
    (15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349),
    (36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6), strict=True,
)  # fmt: skip
FAO_56 = (
    *table(SUBJECT, "sun.position", "Sun outside the air at {0}°, day {1}",
           [*_LIGHT, (50.8, 187, 41.09)], _outside, source=FAO, kind=PUBLISHED,
           near=give(0.1), unit="MJ/m²",
           place=f"examples 8, 10, 15, 18, {READ}", why="printed to one decimal, latitude rounded"),
    *table(SUBJECT, "sun.position", "Height of the sun over the equator, day 246", [(0.120,)],
           lambda: position.fao_declination(246), source=FAO, kind=PUBLISHED, near=give(5e-4),
           unit="rad", place=f"example 8, {READ}"),
    *table(SUBJECT, "sun.position", "Hour angle of sunset at 20° S, day 246", [(1.527,)],
           lambda: position.sunset_angle(math.radians(-20), position.fao_declination(246)),
           source=FAO, kind=PUBLISHED, near=give(5e-4), unit="rad", place=f"example 8, {READ}"),
    *table(SUBJECT, "sun.position", "Daylight at {0}°, day {1}",
           [(-20.0, 246, 11.7), (-22.9, 135, 10.9)],
           lambda degrees, day: position.daylight_hours(math.radians(degrees), day), source=FAO,
           kind=PUBLISHED, near=give(0.06), unit="h", place=f"examples 9 and 10, {READ}"),
    *table(SUBJECT, "sun.position", "Daylight at {0}°, day {1}",
           [(0.0, 15, 12.0), (0.0, 196, 12.0), (13.73, 105, 12.31), (50.8, 187, 16.1)],
           lambda degrees, day: position.daylight_hours(math.radians(degrees), day), source=FAO,
           kind=MEMORY, near=give(0.06), unit="h", place="table 2.7, examples 17 and 18"),
    *table(SUBJECT, "sun.position", "Sun outside the air at {0:g}°, day {1}",
           [*((0.0, day, light) for day, light in _MONTHS), (40.0, 15, 15.0), (40.0, 74, 27.2),
            (40.0, 105, 34.7), (40.0, 196, 40.8), (40.0, 258, 30.0), (40.0, 349, 13.6),
            (13.73, 105, 38.06)],
           _outside, source=FAO, kind=MEMORY, near=give(0.1), unit="MJ/m²", place="table 2.6",
           why="printed to one decimal, for a day near the middle of the month"),
)  # fmt: skip


# A library --------------------------------------------------------------------------------------


def _pvlib(module, what, rows, found, against, near, unit="", why="", place=""):
    return table(SUBJECT, module, what, rows, found, source=PVLIB, kind=LIBRARY, near=near,
                 unit=unit, against=against, why=why, place=place)  # fmt: skip


def up(zenith):
    return math.cos(math.radians(zenith))


def ineichen(zenith, altitude, turbidity, what):
    mass = pvlib.atmosphere.get_relative_airmass(zenith)
    mass = pvlib.atmosphere.get_absolute_airmass(mass, pvlib.atmosphere.alt2pres(altitude))
    found = pvlib.clearsky.ineichen(zenith, mass, turbidity, altitude=altitude, dni_extra=1367.0)
    return found[what]


def _clear(zenith, altitude, turbidity, what):
    found = sky.clear_sky(up(zenith), 1367.0, altitude, turbidity)
    return {"ghi": found.level, "dni": found.beam}[what]


def _erbs(clearness):
    # pvlib takes the level light and the day; with its own kt both ask the same
    return _erbs_of(clearness)["dhi"] / (clearness * 0.6 * 1400.0)


def _erbs_of(clearness):
    return pvlib.irradiance.erbs(clearness * 0.6 * 1400.0, math.degrees(math.acos(0.6)),
                                 pd.Timestamp("2023-01-03"))  # fmt: skip


_PLANES = [(zenith, sun, slope, azimuth)
           for zenith, sun in ((5.0, 120.0), (40.0, 200.0), (75.0, 10.0))
           for slope, azimuth in ((30, 180), (90, 90))]  # fmt: skip


def hay_davies(zenith, sun, slope, azimuth):
    level = 700.0 * up(zenith) + 120.0
    found = pvlib.irradiance.get_total_irradiance(
        slope, azimuth, zenith, sun, 700.0, level, 120.0, dni_extra=1380.0, albedo=0.25,
        model="haydavies",
    )  # fmt: skip
    return found["poa_global"]


def _on_plane(zenith, sun, slope, azimuth):
    plane = Plane(math.radians(slope), math.radians(azimuth), 0.25)
    angle = incidence(plane, math.radians(zenith), math.radians(sun))
    level = 700.0 * up(zenith) + 120.0
    return on_plane(plane, math.cos(angle), up(zenith), 1380.0, 700.0, 120.0, level)


def _hidden(degrees):
    """Share of the sky behind a long row: its elevation falls off with the cosine."""
    ridge = [(math.radians(one % 360), math.atan(math.tan(math.radians(degrees))
              * max(0.0, math.cos(math.radians(one - 180)))))
             for one in range(0, 360, 3)]  # fmt: skip
    return 1 - horizon.sky_share(horizon.skyline(ridge), 0.0, math.pi)


FROM_PVLIB = (
    *_pvlib("sun.position", "Declination on day {0}", [(10,), (80,), (200,), (300,)],
            lambda day: math.degrees(position.declination(day)),
            lambda day: math.degrees(pvlib.solarposition.declination_spencer71(day)), part(1e-9),
            "°"),
    *_pvlib("sun.position", "Equation of time on day {0}", [(10,), (80,), (200,), (300,)],
            lambda day: 60 * position.equation_of_time(day),
            lambda day: float(pvlib.solarposition.equation_of_time_spencer71(day)), give(0.01),
            "min", "it multiplies by 229.18, rounded"),
    *_pvlib("sun.position", "Sun outside the air on day {0}", [(1,), (100,), (190,)],
            position.extraterrestrial_normal,
            lambda day: float(pvlib.irradiance.get_extra_radiation(day, solar_constant=1361.0)),
            part(0.009), "W/m²", "FAO-56 has 1367 W/m² where it has 1361, and one cosine"),
    *_pvlib("sun.sky", "Clear sky by Haurwitz, zenith {0}°", [(5,), (45,), (80,)],
            lambda zenith: sky.clear_global(up(zenith)),
            lambda zenith: pvlib.clearsky.haurwitz(pd.Series([float(zenith)]))["ghi"].iloc[0],
            part(1e-9), "W/m²"),
    *_pvlib("sun.sky", "Air mass, zenith {0}°", [(0,), (60,), (85,)],
            lambda zenith: sky.air_mass(up(zenith)),
            lambda zenith: float(pvlib.atmosphere.get_relative_airmass(zenith)), part(1e-3)),
    *_pvlib("sun.sky", "Clear sky, zenith {0}°, {1:g} m, turbidity {2:g}: {3}",
            [(z, a, t, what) for z, a, t in ((20, 0.0, 3.0), (60, 1200.0, 2.0), (75, 4000.0, 6.0))
             for what in ("ghi", "dni")],
            _clear, ineichen, part(1e-3), "W/m²", "its air pressure differs by 0.1 %", "Ineichen"),
    *_pvlib("sun.sky", "Diffuse share of an hour at clearness {0:.1f}",
            [(0.1,), (0.3,), (0.5,), (0.7,), (0.9,)],
            lambda clearness: sky.hourly_diffuse_share(float(_erbs_of(clearness)["kt"])), _erbs,
            part(1e-9), place="Erbs"),
    *_pvlib("sun.plane", "Plane of {2}° towards {3}°, sun at zenith {0:g}°, azimuth {1:g}°",
            _PLANES, _on_plane, hay_davies, part(1e-9), "W/m²", place="Hay and Davies"),
    *_pvlib("sun.plane", "Module in {0} W/m², air {1} °C, wind {2} m/s",
            [(1000, 25, 1), (650, 41, 6.5), (300, -12, 3)],
            lambda light, air, wind: module_temperature(light, air + 273.15, wind) - 273.15,
            lambda light, air, wind: float(pvlib.temperature.faiman(light, air, wind)), give(1e-6),
            "°C", place="Faiman"),
    *_pvlib("sun.horizon", "Sky hidden by a long row of {0:g}°", [(10.0,), (25.0,), (40.0,)],
            _hidden, lambda degrees: float(pvlib.shading.sky_diffuse_passias(degrees)), give(0.002),
            why="the skyline is made of 120 points", place="Passias and Källbäck"),
)  # fmt: skip

CHECKS = (*POSITIONS, *FAO_56, *FROM_PVLIB)
