"""Suction: printed examples, limits of a handbook, libraries of properties, priming integrated."""

import math

import ambiance
import numpy as np
from CoolProp.CoolProp import PropsSI
from scipy.integrate import solve_ivp

from calc import practice, suction
from calc.units import FOOT
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
from tests.reference.checks.water import DAVIS, TRADE, kelvin

SUBJECT, MODULE = "Suction", "suction"
OPERATORS = "Water operators' handbook (read without its title page)"
COURSE = "Training course note, Best practice no. 25"
PUMPS_SYSTEMS = "Pumps & Systems, How to calculate NPSHA in a suction lift (2018)"
NWCG = "NWCG, water handling unit estimations"
CRANE = "Crane TP-410, solved problems"


def _npsh_feet(altitude, degrees, lift, losses):
    site = suction.place(altitude * FOOT, kelvin(degrees))
    return suction.npsh_available(site, lift * FOOT, losses * FOOT) / FOOT


def _printed(rows, source, place):
    # altitude ft, temperature degF, lift ft (minus: flooded), losses ft, NPSH available ft
    return table(SUBJECT, MODULE, "NPSH available, {0} ft up, {1} °F, lift {2:g} ft, loss {3} ft",
                 rows,
                 _npsh_feet, source=source, kind=PUBLISHED, near=give(0.25), unit="ft",
                 place=place,
                 why="takes 33.9 to 34 ft for the air, or 0.1 ft for vapour")  # fmt: skip


EXAMPLES = (
    *_printed([(0, 70, -6.0, 4.0, 35.061), (7000, 50, 8.0, 3.0, 26.2 - 8.0 - 0.411 - 3.0)], TRADE,
              "chapter 2"),
    *_printed([(0, 60, 20.0, 2.4, 11.0), (0, 60, -15.0, 2.4, 46.0)], OPERATORS, "example 10.11"),
    *_printed([(0, 68, -10.0, 3.2, 40.0)], PUMPS_SYSTEMS, "flooded, before it"),
    *table(SUBJECT, MODULE, "Highest lift at 1000 ft, 85 °F, losses 5 ft, NPSH required 16 ft",
           [(32.8 - 1.38 - 5 - 16,)],
           lambda: suction.allowable_lift(suction.place(1000 * FOOT, kelvin(85)), 5 * FOOT,
                                          16 * FOOT, 0.0) / FOOT,
           source=COURSE, kind=PUBLISHED, near=give(0.1), unit="ft", place="example 5",
           why="air and vapour are printed to 0.1 ft and at 1000 ft"),
    # 5 psi gauge on the water, 25 ft of lift: by Crane's own figures, (p - p_v)/(rho g) - 31 ft
    *table(SUBJECT, MODULE, "NPSH available, 60 °F, lift 25 ft, losses 6 ft, 5 psi on the tank",
           [(13.887,)],
           lambda: _npsh_feet(0, 60, 25, 6) + 5 / 0.4331, source=CRANE, kind=PUBLISHED,
           near=give(0.02), unit="ft",
           place="problem 7-32, worked in the documents of fluids",
           why="62.364 lb/ft³, two figures of air"),
    *table(SUBJECT, MODULE, "Vacuum that lifts water 1.134 ft", [(3386.389,)],
           lambda: -suction.inlet_pressure(suction.place(0.0, kelvin(60)), 1.134 * FOOT, 0.0),
           source=NWCG, kind=PUBLISHED, near=part(2e-3), unit="Pa", place="table 3.1",
           why="one inch of mercury, printed to four figures at no stated temperature"),
)  # fmt: skip


def _bare(altitude):
    """Lift without vapour, of water at 4 degC."""
    site = suction.place(altitude, 277.13)
    return suction.theoretical_lift(site) + site.vapour_pa / site.weight


def _limit(altitude, temperature):
    air = float(ambiance.Atmosphere(altitude).pressure[0])
    vapour = PropsSI("P", "T", temperature, "Q", 0, "Water")
    return (air - vapour) / (PropsSI("D", "T", temperature, "P", 1.02e5, "Water") * 9.80665)


LIMITS = (
    # its 8.66 at 1500 m is a misprint: 84.56 kPa is 8.62 m
    *table(SUBJECT, MODULE, "What the air at {0} m carries",
           [(0, 10.33), (500, 9.74), (1000, 9.17), (2000, 8.11), (2500, 7.62), (3000, 7.15)], _bare,
           source=DAVIS, kind=PUBLISHED, near=give(0.006), unit="m", place="table 3-7"),
    *table(SUBJECT, MODULE, "Highest lift at {0} m, {1} K",
           [(a, t) for a in (0, 1500, 3000) for t in (278.15, 293.15, 333.15)],
           lambda a, t: suction.theoretical_lift(suction.place(a, t)), source=library("CoolProp"),
           kind=LIBRARY, near=part(2e-5), unit="m", against=_limit,
           place="with ambiance for the air", why="water at 0.102 MPa"),
)  # fmt: skip


# Priming ----------------------------------------------------------------------------------------


def integrated_priming(bore, length, altitude, temperature, lift, moved):
    """s: moles of dry air left in the pipe are integrated in time; the level follows from them."""
    site = suction.place(altitude, temperature)
    area, warmth = math.pi / 4 * bore**2, 8.314462618 * temperature
    dry = site.air_pa - site.vapour_pa

    def level(moles):
        # (dry - w y) (length - y) area = moles R T, the smaller root, up to the top of the rise
        a, b = site.weight, -(dry + site.weight * length)
        c = dry * length - moles * warmth / area
        return min(lift, (-b - math.sqrt(b * b - 4 * a * c)) / (2 * a))

    def drawn(_time, state):
        return [-moved * (dry - site.weight * level(state[0])) / warmth]

    def filled(_time, state):
        held = (dry - site.weight * lift) * (length - lift) * area / warmth
        return state[0] - held

    filled.terminal = True
    start = dry * length * area / warmth
    until = 3 * length * area / moved
    run = solve_ivp(drawn, (0, until), [start], events=filled, rtol=1e-10, atol=start * 1e-13)
    level_run = (length - lift) * area / moved  # then the level pipe, at constant pressure
    return run.t_events[0][0] + level_run


def _priming(bore, length, altitude, temperature, lift, moved):
    site = suction.place(altitude, temperature)
    return suction.priming_time(bore, length, site, lift, moved)


PRIMING = table(
    SUBJECT, MODULE, "Priming {1:g} m of pipe, bore {0} m, at {2:g} m, {3:g} K, lift {4} m", [
        (0.026, 8.0, 0.0, 288.15, 4.0, 3e-4), (0.040, 6.0, 0.0, 288.15, 6.0, 1e-3),
        (0.020, 60.0, 1500.0, 293.15, 5.5, 2e-4), (0.032, 9.0, 0.0, 333.15, 7.5, 5e-4),
        (0.032, 30.0, 3000.0, 278.15, 0.5, 5e-4),
    ],
    _priming, source="Moles of air drawn out, integrated in the tests with scipy",
    kind=INDEPENDENT, near=part(1e-6), unit="s", against=integrated_priming,
)  # fmt: skip


# Pumps that pulse -------------------------------------------------------------------------------

ROD = 5.0  # rod over crank, usual for small power pumps; common practice, no source
TURN = 2 * math.pi


def pistons(number, apart, both_ways, turns=7200):
    """Peak of d(flow)/dt over (mean flow x turns a minute) of pistons on one crank, 1/min 1/s."""
    angle = np.linspace(0.0, TURN, turns, endpoint=False)
    total = np.zeros(turns)
    for at in range(number):
        here = angle + at * apart
        speed = np.sin(here) + np.sin(here) * np.cos(here) / np.sqrt(ROD**2 - np.sin(here) ** 2)
        total += np.abs(speed) if both_ways else np.maximum(speed, 0.0)  # a double-acting one too
    change = np.diff(np.append(total, total[0])) / (TURN / turns)
    each_minute = TURN / 60  # rad/s of one turn a minute
    return np.abs(change).max() / total.mean() * each_minute


# kind of practice.PULSING, pistons, how far apart on the crank, whether both ways
_PISTONS = [("1", 1, 0.0, False), ("2", 2, TURN / 2, False), ("2", 1, 0.0, True),
            ("3", 3, TURN / 3, False), ("4", 2, TURN / 4, True),
            ("5", 5, TURN / 5, False)]  # fmt: skip
PULSES = (
    *table(SUBJECT, "practice", "Factor of pulses, kind {0}: {1} pistons", _PISTONS,
           lambda key, *_: practice.PULSING_BY_KEY[key].factor,
           source="Pistons on a crank followed through a turn in the tests", kind=INDEPENDENT,
           near=part(0.06), against=lambda _key, *drawn: pistons(*drawn),
           why="the factors are rounded to a few parts in a hundred"),
    # h_a = L V n C / (K g) in ft, ft/s, strokes a minute: 20 ft of pipe, 2 ft/s, triplex at 300
    *table(SUBJECT, MODULE, "Acceleration head of three pistons, 20 ft of pipe at 2 ft/s",
           [(20 * 2 * 300 * 0.066 / (1.4 * 32.174),)],
           lambda: suction.acceleration_head(20 * FOOT, 2 * FOOT, 300 / 60, 0.066, 1.4) / FOOT,
           source="Hydraulic Institute, pumps that reciprocate", kind=MEMORY, near=part(1e-4),
           unit="ft"),
)  # fmt: skip

CHECKS = (*EXAMPLES, *LIMITS, *PRIMING, *PULSES)
