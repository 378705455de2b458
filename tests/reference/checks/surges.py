"""Pressure surges: tables of pressure rise, a library of sound, the method of characteristics."""

import random

from CoolProp.CoolProp import PropsSI

from calc import surge, trip, water
from calc.pipe import wall
from calc.units import FOOT, PSI
from tests.reference.checks import characteristics as moc
from tests.reference.checks.check import INDEPENDENT, LIBRARY, MEMORY, library, part, table

SUBJECT = "Pressure surges"
DENSITY = 62.4 * 16.01846337  # kg/m3, 62.4 lb/ft3
MOC = "Method of characteristics, written out in the tests with numpy"
PVC = "AWWA C900/C905, surge table for PVC"
PE = "AWWA M55, surge table for PE4710"


def _per_foot(ratio, modulus):
    """psi for each ft/s stopped: such tables use a thin wall free at its joints, D/e = DR - 2."""
    speed = surge.wave_speed(300e3 * PSI, DENSITY, ratio - 2, 1.0, modulus * PSI, 1.0)
    return surge.joukowsky_rise(DENSITY, speed, FOOT) / PSI


def _tables(source, modulus, rows):
    why = "4660 ft/s for sound in water, where its own modulus gives 4721: 1.3 %"
    return table(SUBJECT, "surge", "Rise for each ft/s stopped, dimension ratio {0}",
                 [(ratio, modulus, psi) for ratio, psi in rows], _per_foot, source=source,
                 kind=MEMORY, near=part(0.018), unit="psi", why=why)  # fmt: skip


RISES = (
    *_tables(PVC, 400e3, [(14, 19.8), (18, 17.4), (21, 16.0), (25, 14.7), (26, 14.4), (32.5, 12.8),
                          (41, 11.4)]),
    *_tables(PE, 150e3, [(11, 14.4), (17, 11.3)]),
    # 4660 ft/s over 2.31 x 32.2
    *table(SUBJECT, "surge", "Rise for each ft/s stopped in a rigid pipe", [(62.7,)],
           lambda: surge.joukowsky_rise(DENSITY, 4660 * FOOT, FOOT) / PSI, kind=MEMORY,
           source="Handbook rule of water hammer", near=part(2e-3), unit="psi"),
)  # fmt: skip


def _sound(celsius):
    state = ("T", celsius + 273.15, "P", 3e5, "Water")
    return PropsSI("D", *state), PropsSI("A", *state)


def _stiff(celsius):
    density, sound = _sound(celsius)
    return surge.wave_speed(density * sound**2, density, 0.05, 0.05, 1e13, 1.0)


def _measured():
    inside, thick, pe = 50.6e-3, 6.2e-3, wall.MATERIALS["pe"]
    held = wall.restraint_buried(inside, thick, pe.poisson)
    return surge.wave_speed(water.bulk_modulus(293.15), water.density(293.15), inside, thick,
                            wall.modulus_at(pe, 293.15), held)  # fmt: skip


WAVES = (
    *table(SUBJECT, "surge", "Speed of a wave in a stiff pipe at {0} °C", [(5,), (15,), (25,)],
           _stiff, source=library("CoolProp"), kind=LIBRARY, near=part(5e-4), unit="m/s",
           against=lambda celsius: _sound(celsius)[1], why="a thick wall takes the last 0.02 %"),
    *table(SUBJECT, "surge", "Speed of a wave in 63 mm PE 100, held along its length, 20 °C",
           [(395.0,)], _measured, source="Covas et al., J. Hydraul. Res. 42 (2004) 517, measured",
           kind=MEMORY, near=part(0.04), unit="m/s", why="recalled, and the wall is nominal"),
)  # fmt: skip


def closings(count):
    """speed, length, velocity, closing, pressure: closings from half a period to ten of them."""
    rnd = random.Random(20)
    for _ in range(count):
        speed, length = rnd.uniform(200, 1400), 10 ** rnd.uniform(1, 3)
        velocity, pressure = rnd.uniform(0.1, 3), 10 ** rnd.uniform(4.3, 6.3)
        yield speed, length, velocity, 2 * length / speed * 10 ** rnd.uniform(-0.3, 1.0), pressure


def trips(count, seed=31):
    """speed, length, velocity, static pressure of pumps that stop at once."""
    rnd = random.Random(seed)
    for _ in range(count):
        yield (rnd.uniform(250, 1300), 10 ** rnd.uniform(1.3, 3.2), rnd.uniform(0.1, 2.5),
               10 ** rnd.uniform(5, 6.2))  # fmt: skip


CLOSED = "Rise on closing in {3:.2g} s: {1:.4g} m, wave {0:.4g} m/s, water {2:.2g} m/s"
_CLOSINGS = [tuple(float(f"{one:.4g}") for one in case) for case in closings(10)]
_TRIPS = [tuple(float(f"{one:.4g}") for one in case) for case in trips(5)]
STOPPED = "Pump stops in {1:.4g} m of pipe, wave {0:.4g} m/s, water {2:.2g} m/s: "
METHOD = (
    *table(SUBJECT, "surge", CLOSED, _CLOSINGS,
           lambda a, length, v, t, p: surge.closing_rise(1000.0, a, length, v, t, p) / 1e5,
           source=MOC, kind=INDEPENDENT, near=part(0.007), unit="bar",
           against=lambda *case: moc.characteristics(*case) / 1e5,
           why="100 cells and 12 chains leave about 0.5 %"),
    *table(SUBJECT, "trip", STOPPED + "least pressure", _TRIPS,
           lambda a, _l, v, p: trip.pressure_after(p, -surge.joukowsky_rise(moc.RHO, a, v), 0.0,
                                                   9806.65) / 1e5,
           source=MOC, kind=INDEPENDENT, near=part(1e-9), unit="bar",
           against=lambda *case: moc.whole(*case)[0][25] / 1e5),
    *table(SUBJECT, "surge", STOPPED + "greatest pressure", _TRIPS,
           lambda a, _l, v, p: (p + surge.joukowsky_rise(moc.RHO, a, v)) / 1e5,
           source=MOC, kind=INDEPENDENT, near=part(1e-9), unit="bar",
           against=lambda *case: moc.whole(*case)[1][0] / 1e5),
)  # fmt: skip

CHECKS = (*RISES, *WAVES, *METHOD)
