"""Tanks: a trade journal's example, real air, brute force, numpy and scipy."""

import numpy as np
from CoolProp.CoolProp import PropsSI
from fluids.friction import Colebrook
from scipy.optimize import brentq

from calc import day_tank, gravity, storage, water
from calc.pipe import pipes
from calc.units import DAY, FOOT, GALLON_US, HOUR, LITRE, MINUTE, PSI
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    MEMORY,
    PRACTICE,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip

SUBJECT = "Tanks and gravity supplies"
AIR = 101325.0  # Pa, standard atmosphere, ISO 2533:1975
DRILLER = "National Driller, Tech Topics on pressure tanks"
NUMPY = "Brute force in the tests with numpy"


def _share(charge, low, high, air=AIR):
    """Of the tank's volume, psi and Pa."""
    return storage.drawdown(1.0, charge * PSI, low * PSI, high * PSI, air)


# precharge, cut-in, cut-out in bar; air of Lemmon et al. 2000, a real gas, kept at 293.15 K
_REAL = [(1.86, 2.0, 3.5), (1.0, 1.2, 2.4), (0.5, 2.0, 4.0), (2.6, 2.8, 4.2), (5.0, 5.5, 8.0)]


def real_air(charge, low, high):
    """L of a tank of 100 L."""
    density = [PropsSI("D", "T", 293.15, "P", p * 1e5 + AIR, "Air") for p in (charge, low, high)]
    return 100 * (density[0] / density[1] - density[0] / density[2])


PRESSURE = (
    *table(SUBJECT, "storage", "Drawdown of 85 gal, pre-charge {0} psi, switch {1}/{2} psi",
           [(28, 30, 50, 25.1)],
           lambda *psi: storage.drawdown(85 * GALLON_US, *(p * PSI for p in psi), 14.7 * PSI)
           / GALLON_US,
           source=DRILLER, kind=PUBLISHED, near=give(0.1), unit="gal", place="example 1",
           why="worked with 0.295"),
    *table(SUBJECT, "storage", "Drawdown over the volume, pre-charge {0} psi, switch {1}/{2} psi",
           [(28, 30, 50, 0.3)], _share, source=DRILLER, kind=PUBLISHED, near=give(0.005001),
           place="drawdown factor", why="half the last place, and 14.7 psi of air"),
    *table(SUBJECT, "storage", "Drawdown of 100 L, {0} bar of pre-charge, {1} to {2} bar", _REAL,
           lambda *bar: storage.drawdown(0.1, *(p * 1e5 for p in bar), AIR) / LITRE,
           source=library("CoolProp"), kind=LIBRARY, near=part(4e-3), unit="L", against=real_air,
           place="real air", why="air at 9 bar is 0.3 % off an ideal gas"),
    # precharge equal to cut-in
    *table(SUBJECT, "storage", "Drawdown over the volume, pre-charge {0} psi, switch {1}/{2} psi",
           [(20, 20, 40, 0.37), (30, 30, 50, 0.31), (40, 40, 60, 0.27), (50, 50, 70, 0.24)], _share,
           source="Acceptance factors of the trade", kind=MEMORY, near=give(0.0051)),
    *table(SUBJECT, "storage", "Starts an hour at worst, a minute's flow drawn down", [(15.0,)],
           lambda: storage.most_starts_rate(10 * GALLON_US, 10 * GALLON_US / MINUTE) * HOUR,
           source="Rule of the trade", kind=PRACTICE, near=part(1e-9), unit="1/h"),
    *table(SUBJECT, "storage", "Pressure under 231 ft of water", [(100.0,)],
           lambda: storage.gravity_pressure(231 * FOOT, 0, water.density(288.71)) / PSI,
           source="Cameron Hydraulic Data", kind=MEMORY, near=part(2e-3), unit="psi"),
    # ISO 2533 prints 84 556 and 70 108 Pa
    *table(SUBJECT, "storage", "Drawdown of 100 L at {0} m, 1.86 bar, 2 to 3.5 bar",
           [(1500.0, 84556.0), (3000.0, 70108.0)],
           lambda altitude, _air: storage.drawdown(0.1, 1.86e5, 2e5, 3.5e5,
                                                   water.air_pressure(altitude)) / LITRE,
           source="ISO 2533:1975", kind=MEMORY, near=part(1e-4), unit="L",
           against=lambda _z, air: 100 * (1.86e5 + air) * (1 / (2e5 + air) - 1 / (3.5e5 + air)),
           why="printed to 1 Pa"),
)  # fmt: skip


def counted_starts(share, step=0.1, hours=3):
    """Starts an hour of a switch, 31.7 L drawn down at 18 L/min, followed step by step."""
    pump, volume = 18 * LITRE / MINUTE, 31.7 * LITRE
    held, on, starts = volume, False, []
    for tick in range(int(hours * HOUR / step)):
        held += (pump * on - share * pump) * step
        if not on and held <= 0:
            on = True
            starts.append(tick * step)
        elif on and held >= volume:
            on = False
    return (len(starts) - 1) / (starts[-1] - starts[0]) * HOUR


def largest_shortfall(seed):
    """Of any stretch of hours of a made-up day, as a share of the day's use."""
    use, steady, supply = made_up(seed)
    net = np.tile(use - supply * steady, 2)
    return max(0.0, max(net[i:j].sum() for i in range(24) for j in range(i, i + 25)))


def made_up(seed):
    """Shares of use and of supply by the hour, and the supply over the use."""
    rng = np.random.default_rng(seed)
    use, steady = rng.dirichlet(np.full(24, 0.5)), rng.dirichlet(np.full(24, 0.5))
    return use, steady, float(rng.uniform(1.0, 4.0))


def _swing(seed):
    use, steady, supply = made_up(seed)
    return storage.daily_balance(1.0, tuple(use), supply, tuple(steady)).swing


def _day_swing(seed):
    use, steady, supply = made_up(seed)
    return day_tank.swing([float(supply * one) for one in steady], [float(one) for one in use])


def mass_curve(use, pattern, supply, hours):
    """Rippl's span of the mass curve where nothing runs over, m3."""
    shares, steady = storage.PATTERNS[pattern], storage.supply_pattern(hours)
    curve = np.cumsum(use * (np.asarray(steady) - np.asarray(shares)))
    return max(curve.max(), 0.0) - min(curve.min(), 0.0)


def _balanced(use, pattern, _supply, hours):
    shares, steady = storage.PATTERNS[pattern], storage.supply_pattern(hours)
    return storage.daily_balance(use, shares, use, steady).swing


DAYS = (
    *table(SUBJECT, "storage", "Starts an hour at {0} of the pump's flow",
           [(0.1,), (0.25,), (0.5,), (0.8,)],
           lambda share: storage.starts_rate(31.7 * LITRE, 18 * LITRE / MINUTE,
                                             share * 18 * LITRE / MINUTE) * HOUR,
           source="A switch followed second by second in the tests", kind=INDEPENDENT,
           near=part(5e-3), unit="1/h", against=counted_starts, why="steps of 0.1 s"),
    *table(SUBJECT, "storage", "Least tank of made-up day {0}, as a share of its use",
           [(seed,) for seed in range(5)], _swing, source=NUMPY, kind=INDEPENDENT, near=give(1e-9),
           against=largest_shortfall),
    *table(SUBJECT, "day_tank", "Least tank of made-up day {0}, followed by the piece",
           [(seed,) for seed in range(5, 10)], _day_swing, source=NUMPY, kind=INDEPENDENT,
           near=give(1e-9), against=largest_shortfall),
    *table(SUBJECT, "storage", "Least tank for {0} m³ a day ({1}), pumped in {3:g} h",
           [(0.93, "home", 0.93, 6.0), (2.0, "dawn", 2.0, 8.0), (5.0, "day", 5.0, 3.5)], _balanced,
           source="Rippl's mass curve, drawn in the tests with numpy", kind=INDEPENDENT,
           near=part(1e-9), unit="m³", against=mass_curve),
    *table(SUBJECT, "storage", "Days until 2.79 m³ are back, 2.16 m³ a day in, 0.93 out", [()],
           lambda: storage.days_to_recover(2.79, 2.16, 0.93) / DAY, source=NUMPY, kind=INDEPENDENT,
           near=part(1e-9), unit="days",
           against=lambda: np.interp(2.79, np.cumsum(np.full(30, 1.23)), np.arange(1, 31))),
)  # fmt: skip

# Gravity ----------------------------------------------------------------------------------------


def by_fluids(size, drop, length):
    """L/min: head lost by the library's Colebrook equals the drop."""
    pipe = pipes.pipe("pe100-sdr11", size)
    nu, bore = water.kinematic_viscosity(283.15), pipe.inside_m

    def left(flow):
        speed = flow / (np.pi / 4 * bore**2)
        factor = Colebrook(speed * bore / nu, pipe.roughness_m / bore)
        return drop - factor * length / bore * speed**2 / (2 * 9.80665)

    return brentq(left, 1e-5, 0.1, xtol=1e-16) / (LITRE / MINUTE)


def _falls(size, drop, length):
    spots = (gravity.Spot(0.0, 0.0), gravity.Spot(length, -drop))
    fall = gravity.Fall(pipes.pipe("pe100-sdr11", size), spots, 283.15)
    return fall.largest_flow() / (LITRE / MINUTE)


GRAVITY = table(
    SUBJECT, "gravity", "Most flow down {2:g} m of pipe {0} mm with {1:g} m of drop",
    [("32", 30.0, 900.0), ("40", 12.0, 300.0), ("63", 60.0, 2000.0)], _falls,
    source=library("fluids"), kind=LIBRARY, near=part(1e-9), unit="L/min", against=by_fluids,
    place="Colebrook, root by scipy",
)  # fmt: skip

CHECKS = (*PRESSURE, *DAYS, *GRAVITY)
