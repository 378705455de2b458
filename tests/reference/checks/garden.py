"""Garden: FAO-56's examples, a library of evapotranspiration, lines of drippers solved by scipy."""

import math

import numpy as np
import refet
from scipy import optimize

from calc import practice
from calc.drip import crop, lateral, manifold, sprinkler
from calc.drip.lateral import Dripper
from calc.sun.position import daily_extraterrestrial
from calc.units import CELSIUS, GALLON_US, HOUR, INCH, MINUTE
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    MEMORY,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip
from tests.reference.checks.sun import FAO, READ

SUBJECT = "Garden and sprinklers"
MJ = 1e6
REFET = library("refet")
NCL = "as reprinted in the documents of the NCL library"


def _net_light():
    """Rio de Janeiro in May: 14.5 MJ/m2 come, 25.1 outside the air, 25.1 and 19.1 degC, 2.1 kPa."""
    found = crop.net_light(14.5 * MJ, 25.1 * MJ, 25.1 + CELSIUS, 19.1 + CELSIUS, 2100.0, 0.0)
    return found / MJ


def _brussels():
    """6 July, 50.8 N, 100 m, 21.5 and 12.3 degC, 1.409 kPa, 2.078 m/s, 22.07 MJ/m2."""
    outside = daily_extraterrestrial(math.radians(50.8), 187)
    found = crop.reference(22.07e6, outside, 21.5 + CELSIUS, 12.3 + CELSIUS, 100.0, 1409.0, 2.078)
    return found / crop.MM_DAY


def _bangkok():
    """April, 13.73 N, 2 m, 34.8 and 25.6 degC, 2.85 kPa, 2 m/s, 22.65 MJ/m2, G 0.14 MJ/m2."""
    outside = daily_extraterrestrial(math.radians(13.73), 105)
    found = crop.reference(22.65e6, outside, 34.8 + CELSIUS, 25.6 + CELSIUS, 2.0, 2850.0, 2.0,
                           0.14e6)  # fmt: skip
    return found / crop.MM_DAY


def _lyon():
    """July, 45.72 N, 200 m, 26.6 and 14.8 degC, by temperature alone."""
    outside = daily_extraterrestrial(math.radians(45.72), 196)
    return crop.by_temperature(outside, 26.6 + CELSIUS, 14.8 + CELSIUS) / crop.MM_DAY


def _fao(what, rows, found, unit, near, place, kind=PUBLISHED, why=""):
    return table(SUBJECT, "drip.crop", what, rows, found, source=FAO, kind=kind, near=near,
                 unit=unit, place=place, why=why)  # fmt: skip


def _saturated(degrees):
    return crop.saturation_pressure(degrees + CELSIUS) / 1000


FAO_56 = (
    *_fao("Air pressure at 1800 m by its formula", [(81.8,)], lambda: crop.air_pressure(1800) / 1e3,
          "kPa", give(0.05), f"example 2, {READ}"),
    *_fao("Saturated air at {0} °C", [(24.5, 3.075), (15.0, 1.705)], _saturated, "kPa", give(1e-3),
          f"example 3, {NCL}"),
    *_fao("Saturated air at {0} °C", [(14.8, 1.68)], _saturated, "kPa", give(0.005),
          f"example 20, {READ}"),
    *_fao("Vapour of air at 18 to 25 °C, 68 %", [(1.78,)],
          lambda: crop.vapour_from_humidity(0.68, 25 + CELSIUS, 18 + CELSIUS) / 1e3, "kPa",
          give(0.0055), f"example 5, {READ}", why="worked with rounded pressures"),
    *_fao("Light that grass in Rio throws back, May", [(3.5,)], lambda: 14.5 * 0.77 - _net_light(),
          "MJ/m²", give(0.1), f"examples 11 and 12, {READ}", why="rounded on the way"),
    *_fao("Heat into the ground, 14.1 °C before and 18.8 °C after", [(0.33,)],
          lambda: crop.into_ground(14.1, 18.8) / MJ, "MJ/m²", give(0.005), f"example 13, {READ}"),
    *_fao("Need of grass in Brussels, 6 July", [(3.88,)], _brussels, "mm/day", give(0.02),
          f"example 18, {READ}", why="rounded on the way"),
    *_fao("Light that grass in Rio keeps, May", [(7.6,)], _net_light, "MJ/m²", give(0.1),
          "examples 11 and 12", MEMORY, "rounded on the way"),
    *_fao("Need of grass in Bangkok, April", [(5.72,)], _bangkok, "mm/day", give(0.02),
          "example 17", MEMORY, "rounded on the way"),
    *_fao("Need of grass in Lyon, July, by temperature alone", [(5.03,)], _lyon, "mm/day",
          give(0.05), "example 20", MEMORY, "rounded on the way"),
    *_fao("Saturated air at {0} °C", [(0.0, 0.611), (10.0, 1.228), (20.0, 2.338), (30.0, 4.243)],
          _saturated, "kPa", give(6e-4), "table 2.3", MEMORY),
    *_fao("Air pressure at {0} m by its formula", [(0, 101.3), (1000, 90.0), (2000, 79.8)],
          lambda z: crop.air_pressure(z) / 1e3, "kPa", give(0.06), "table 2.1", MEMORY),
    *_fao("Need of a crop over that of grass: {0}",
          [("tomato", 1.15), ("lettuce", 1.0), ("strawberry", 0.85), ("olive", 0.70)],
          lambda key: crop.CROP_BY_KEY[key].need, "", part(1e-9), "table 12", MEMORY),
)  # fmt: skip

# degC, degC, MJ/m2, kPa, m/s, m, degrees, day
CLIMATES = [
    (18.0, 32.0, 24.0, 1.4, 2.0, 300.0, 35.0, 180),
    (5.0, 17.0, 12.0, 0.7, 3.5, 1200.0, -33.0, 200),
    (22.0, 31.0, 19.0, 2.4, 1.0, 10.0, 3.0, 80),
    (-2.0, 9.0, 8.0, 0.45, 4.0, 60.0, 51.0, 60),
    (14.0, 36.0, 28.0, 0.9, 5.0, 2400.0, 31.0, 150),
    (10.0, 21.0, 15.0, 1.2, 0.8, 500.0, -40.0, 20),
]


def by_refet(cool, warm, light, vapour, wind, above, latitude, day):
    """(mm/day, MJ/m2 outside the air)"""
    found = refet.Daily(tmin=cool, tmax=warm, rs=light, uz=wind, zw=2.0, elev=above, lat=latitude,
                        doy=np.array([day]), ea=vapour, method="asce")  # fmt: skip
    return float(found.eto()[0]), float(found.ra[0])


def _need(*row):
    cool, warm, light, vapour, wind, above, *_ = row
    outside = by_refet(*row)[1] * MJ
    depth = crop.reference(light * MJ, outside, warm + CELSIUS, cool + CELSIUS, above,
                           vapour * 1000, wind)  # fmt: skip
    return depth / crop.MM_DAY


NEEDS = table(
    SUBJECT, "drip.crop",
    "Need of grass, {0:g} to {1:g} °C, {2:g} MJ/m², {3} kPa, {4:g} m/s, {5:g} m",
    CLIMATES, _need, source=REFET, kind=LIBRARY, near=part(3e-4), unit="mm/day",
    against=lambda *row: by_refet(*row)[0], place="ASCE-EWRI (2005)",
    why="FAO-56 takes 4.903e-9 and 4098 × 0.6108, ASCE 4.901e-9 and 2503",
)  # fmt: skip

# Lines ------------------------------------------------------------------------------------------

WEIGHT, THIN, DRIP = 9798.0, 1.1e-6, 2e-3 / 3600  # Pa/m, m2/s, m3/s at 1 bar


def smooth(flow, bore, length):
    """Head lost in a smooth pipe, m, written again here."""
    flow = np.maximum(flow, 1e-15)
    speed = flow / (math.pi / 4 * bore**2)
    re = speed * bore / THIN
    factor = np.maximum.reduce([64 / re, 0.3164 * re**-0.25, 0.184 * re**-0.2])
    return factor * length / bore * speed**2 / 2 / 9.80665


def solved_at_once(outlets, slope, start):
    """bar at each dripper of a line, all of them unknowns of scipy's root finder."""

    def unbalanced(bars):
        flows = DRIP * np.sqrt(np.maximum(bars, 1e-9))
        carried = np.cumsum(flows[::-1])[::-1]
        before = np.concatenate([[start], bars[:-1]])
        return before - bars - WEIGHT / 1e5 * (smooth(carried, 13.6e-3, 0.4) + slope * 0.4)

    return optimize.root(unbalanced, np.full(outlets, start), tol=1e-13).x


def _line(outlets, slope, start):
    law, dripper = lateral.smooth_law(13.6e-3, THIN), Dripper(DRIP, 1e5)
    parts = [0.4] * outlets, [0.4 * slope] * outlets
    return lateral.step_by_step(start * 1e5, *parts, WEIGHT, law, dripper.at)


def summed(outlets, exponent):
    return sum((one / outlets) ** exponent for one in range(1, outlets + 1)) / outlets


def _zone(start, count, outlets):
    """L/h of a level zone, lines of drippers 0.3 m apart on a pipe of 26 mm, 1 m apart."""
    law, dripper = lateral.smooth_law(13.6e-3, THIN), Dripper(DRIP, 1e5)
    lines = manifold.inflow(start * 1e5, [0.3] * outlets, [0.0] * outlets, WEIGHT, law, dripper.at)
    wide = lateral.smooth_law(26e-3, THIN)
    return manifold.subunit(start * 1e5, count, 1.0, 0.0, 0.0, WEIGHT, wide, lines).flow * 3.6e6


def zone_at_once(start, count, outlets):
    """The same, pressures at every take-off and dripper unknowns of scipy's root finder."""

    def unbalanced(bars):
        heads, drips = bars[:count], bars[count:].reshape(count, outlets)
        flows = DRIP * np.sqrt(np.maximum(drips, 1e-9))
        carried = np.cumsum(flows[:, ::-1], axis=1)[:, ::-1]
        before = np.column_stack([heads, drips[:, :-1]])
        lines = before - drips - WEIGHT / 1e5 * smooth(carried, 13.6e-3, 0.3)
        taken = np.cumsum(flows.sum(axis=1)[::-1])[::-1]
        lengths = np.array([0.5] + [1.0] * (count - 1))  # lines in the middle of their strips
        upstream = np.concatenate([[start], heads[:-1]])
        along = upstream - heads - WEIGHT / 1e5 * smooth(taken, 26e-3, lengths)
        return np.concatenate([along, lines.ravel()])

    found = optimize.root(unbalanced, np.full(count * (outlets + 1), 0.9 * start), tol=1e-12).x
    return (DRIP * np.sqrt(found[count:])).sum() * 3.6e6


_TABLED = [
    (2, 1.75, 0.650), (5, 1.75, 0.469), (10, 1.75, 0.415), (20, 1.75, 0.389), (100, 1.75, 0.369),
    (2, 2.0, 0.625), (5, 2.0, 0.440), (10, 2.0, 0.385), (20, 2.0, 0.359), (10, 1.9, 0.396),
    (4, 1.852, 0.485), (15, 1.852, 0.385), (2, 1.852, 0.639), (5, 1.852, 0.457), (10, 1.852, 0.402),
    (20, 1.852, 0.376), (100, 1.852, 0.356),
]  # fmt: skip
_LINES = [(12, 0.0, 1.0), (40, 0.02, 1.2), (40, -0.03, 0.8), (150, 0.0, 1.0)]
SCIPY_LINES = "All pressures at once, in the tests with scipy's root finder"
LINES = (
    *table(SUBJECT, "drip.lateral", "Last of {0} drippers, slope {1:g}, {2:g} bar at the start",
           _LINES, lambda *row: _line(*row).pressures[-1] / 1e5, source=SCIPY_LINES,
           kind=INDEPENDENT, near=part(1e-8), unit="bar",
           against=lambda *row: solved_at_once(*row)[-1]),
    *table(SUBJECT, "drip.manifold", "Zone of {1} lines of {2} drippers, {0:g} bar at the start",
           [(1.0, 4, 30), (1.4, 6, 20)], _zone, source=SCIPY_LINES, kind=INDEPENDENT,
           near=part(1e-7), unit="L/h", against=zone_at_once,
           why="lines are read off a curve that calc makes of them"),
    *table(SUBJECT, "drip.lateral", "Share of friction, {0} outlets, exponent {1}",
           [(5, 1.75), (20, 1.75), (100, 1.75), (40, 1.852)], lateral.christiansen,
           source="A line's parts summed up in the tests", kind=INDEPENDENT, near=part(2e-3),
           against=summed, why="Christiansen's series leaves its small terms out"),
    *table(SUBJECT, "drip.lateral", "Share of friction, {0} outlets, exponent {1}", _TABLED,
           lateral.christiansen, source="Christiansen (1942), irrigation handbooks", kind=MEMORY,
           near=give(2e-3)),
)  # fmt: skip

NMSU = "New Mexico State University, Soils 456 notes, chapter 5"
SPRINKLERS = (
    # P = 96.3 q / A, in/hr, gpm, ft2
    *table(SUBJECT, "drip.sprinkler", "Rain of sprinklers of {0:g} gpm, {1:g} by {2:g} ft",
           [(3.0, 30.0, 30.0, 96.3 * 3 / 900), (8.0, 40.0, 50.0, 96.3 * 8 / 2000)],
           lambda gpm, along, between: sprinkler.application_rate(
               gpm * GALLON_US / MINUTE, along * 12 * INCH, between * 12 * INCH) * HOUR / INCH,
           source=NMSU, kind=PUBLISHED, near=part(6e-4), unit="in/h", place="precipitation rate",
           why="its 96.3 has three figures"),
    *table(SUBJECT, "practice", "Water that drippers bring to the roots", [(0.9,)],
           lambda: practice.DRIP_EFFICIENCY, source="FAO training manual 4 (1989)", kind=MEMORY,
           near=part(1e-9)),
)  # fmt: skip

CHECKS = (*FAO_56, *NEEDS, *LINES, *SPRINKLERS)
