"""Whole supplies and the finder of faults: solved again with other unknowns, scipy and fluids."""

import math

from fluids.friction import Colebrook
from scipy import stats
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, fsolve

from calc import water
from calc.network.at_levels import Flows, Tank
from calc.network.outlets import FixedFlow, Orifice, Outlet
from calc.network.over_a_day import Piece, Plan, Start, follow
from calc.network.parts import Level, Network, Place, Run
from calc.network.solve import solve
from calc.network.suspects import chi2_tail, log_likelihood
from calc.pipe import pipes
from calc.pipe.line import Line, Section
from calc.units import DAY, FOOT, GALLON_US, LITRE, MINUTE, PSI
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    PRACTICE,
    give,
    library,
    part,
    table,
)  # fmt: skip

SUBJECT = "Whole supplies and faults"
SCIPY, FLUIDS = library("scipy"), library("fluids")
LPM, GRAVITY, WARM = LITRE / MINUTE, 9.80665, 283.15
PE = "pe100-sdr11"
WEIGHT, NU = water.density(WARM) * GRAVITY, water.kinematic_viscosity(WARM)


def lost(size, length, flow):
    """Head lost, m, by the library's Colebrook; flows here are turbulent."""
    pipe = pipes.pipe(PE, size)
    speed = flow / (math.pi / 4 * pipe.inside_m**2)
    factor = Colebrook(speed * pipe.inside_m / NU, pipe.roughness_m / pipe.inside_m)
    return factor * length / pipe.inside_m * speed**2 / (2 * GRAVITY)


def _line_loss(size, length, lpm):
    line = Line((Section(pipes.pipe(PE, size), length, 0.0, ()),), 3e5, WARM)
    return line.loss(lpm * LPM)


ONE_WAY = table(
    SUBJECT, "pipe.line", "Head lost in {1:g} m of pipe {0} mm at {2:g} L/min",
    [("25", 40.0, 20.0), ("32", 120.0, 40.0), ("50", 300.0, 120.0), ("63", 800.0, 150.0)],
    _line_loss, source=FLUIDS, kind=LIBRARY, near=part(1e-8), unit="m", place="Colebrook",
    against=lambda size, length, lpm: lost(size, length, lpm * LPM),
)  # fmt: skip


def _forked(level, first, second):
    """L/min of two openings of 20 L/min at 1 bar behind one pipe; heights below the spring's."""
    runs = (Run("main", "spring", "fork", pipes.pipe(PE, "40"), 200.0, 0.0),
            Run("a", "fork", "low", pipes.pipe(PE, "32"), 80.0, 0.0),
            Run("b", "fork", "high", pipes.pipe(PE, "25"), 60.0, 0.0))  # fmt: skip
    taps = (
        Outlet("one", "low", Orifice(20 * LPM, 1e5)),
        Outlet("two", "high", Orifice(20 * LPM, 1e5)),
    )
    places = (Place("fork", 0.0), Place("low", first), Place("high", second))
    found = solve(Network(places, (Level("spring", level),), runs, taps, temperature_k=WARM))
    return found.outlet("one").flow_m3s / LPM, found.outlet("two").flow_m3s / LPM


def forked(level, first, second):
    """The same with head at the fork and both flows as unknowns of scipy."""

    def off(unknown):
        fork, one, two = unknown
        both = (one + two) * LPM
        rests = [fork - lost(size, length, flow * LPM) - height for size, length, flow, height in
                 (("32", 80.0, one, first), ("25", 60.0, two, second))]  # fmt: skip
        given = [20 * math.sqrt(max(rest, 1e-9) * WEIGHT / 1e5) for rest in rests]
        return [level - lost("40", 200.0, both) - fork, one - given[0], two - given[1]]

    found = fsolve(off, [0.6 * level, 15.0, 15.0], xtol=1e-13)
    return found[1], found[2]


_FORKS = [(30.0, 0.0, 5.0), (45.0, -10.0, 12.0), (20.0, 2.0, 2.0)]
NETWORKS = (
    *table(SUBJECT, "network", "First of two openings, water {0:g} m up, at {1:g} and {2:g} m",
           _FORKS, lambda *row: _forked(*row)[0], kind=INDEPENDENT, near=part(1e-9), unit="L/min",
           source="Two openings solved at once, in the tests with scipy and fluids",
           against=lambda *row: forked(*row)[0]),
    *table(SUBJECT, "network", "Second of two openings, water {0:g} m up, at {1:g} and {2:g} m",
           _FORKS, lambda *row: _forked(*row)[1], kind=INDEPENDENT, near=part(1e-9), unit="L/min",
           source="Two openings solved at once, in the tests with scipy and fluids",
           against=lambda *row: forked(*row)[1]),
)  # fmt: skip

# A tank drains ----------------------------------------------------------------------------------

HELD = 1.5  # m3, of a tank of 1.5 m3 and 2 m, 8 m up


def _drained(size, length):
    """h until it is empty, by calc."""
    run = Run("down", "tank", "tap", pipes.pipe(PE, size), length, 0.0)
    tap = Outlet("tap", "tap", Orifice(20 * LPM, 1e5))
    network = Network((Place("tap", 0.0),), (Level("tank", 10.0, True),), (run,), (tap,),
                      temperature_k=WARM)  # fmt: skip
    tank = Tank("tank", 8.0, 2.0, HELD)
    day = follow(Flows(network, (tank,)), Plan((Piece(DAY, (("tap", 1),)),)), Start((HELD,)))
    (span,) = (one for one in day.spans("tap") if one.kind == "nothing")
    return span.start / 3600


def drained(size, length):
    """The same, integrated."""

    def drawn(volume):
        level = 8.0 + 2.0 * volume / HELD

        def off(flow):
            head = level - lost(size, length, flow)
            return 20 * LPM * math.sqrt(max(head, 0.0) * WEIGHT / 1e5) - flow

        return brentq(off, 5 * LPM, 40 * LPM, xtol=1e-16, rtol=1e-14)

    def empty(_time, volume):
        return volume[0]

    empty.terminal = True
    run = solve_ivp(lambda _t, v: [-drawn(v[0])], (0, DAY), [HELD], rtol=1e-10, atol=1e-12,
                    events=empty)  # fmt: skip
    return run.t_events[0][0] / 3600


DAYS = table(
    SUBJECT, "network", "Tank of 1.5 m³ drains through {1:g} m of pipe {0} mm",
    [("32", 80.0), ("25", 60.0)], _drained,
    source="A draining tank, integrated in the tests with scipy and fluids",
    kind=INDEPENDENT, near=give(1 / 3600), unit="h", against=drained,
    why="a second: calc looks for the moment to that",
)  # fmt: skip

# Faults -----------------------------------------------------------------------------------------

SPREAD = [[4.0, 1.0, 0.5], [1.0, 3.0, -0.2], [0.5, -0.2, 2.0]]
FAULTS = (
    *table(SUBJECT, "network", "Likelihood (log) of three readings {0}, {1}, {2} apart",
           [(1.0, -2.0, 0.7), (0.0, 0.0, 0.0), (3.0, 3.0, -2.0)],
           lambda *apart: log_likelihood(list(apart), SPREAD)[0], source=SCIPY, kind=LIBRARY,
           near=part(1e-12), place="multivariate normal distribution",
           against=lambda *apart: stats.multivariate_normal(cov=SPREAD).logpdf(apart)),
    *table(SUBJECT, "network", "Chance of being {0} or more off in {1} readings",
           [(3.84, 1), (5.99, 2), (20.0, 7), (11.0, 12)], chi2_tail, source=SCIPY, kind=LIBRARY,
           near=part(1e-10), place="chi-squared distribution", against=stats.chi2.sf),
)  # fmt: skip


def _house():
    """psi, 50 ft up behind 300 ft of pipe from a tank 100 ft up."""
    run = Run("line", "tank", "house", pipes.pipe("pvc40", "1.25"), 300 * FOOT, 5.0)
    tap = Outlet("shower", "house", FixedFlow(4 * GALLON_US / MINUTE))
    network = Network((Place("house", 50 * FOOT),), (Level("tank", 100 * FOOT),), (run,), (tap,))
    return solve(network).pressure("house") / PSI


RULES = table(
    SUBJECT, "network", "Pressure 50 ft up, 4 gpm, under a hundred feet of head", [(25.0,)], _house,
    source="Rule of the trade: 20 to 30 psi", kind=PRACTICE, near=give(7.0), unit="psi",
    why="18 to 30 psi",
)  # fmt: skip

CHECKS = (*ONE_WAY, *NETWORKS, *DAYS, *FAULTS, *RULES)
