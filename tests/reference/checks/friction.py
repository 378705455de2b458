"""Friction and fittings: a library, printed tables and the worked examples of a handbook."""

from fluids import fittings
from fluids.friction import Clamond, friction_factor, ft_Crane

from calc import water
from calc.pipe import friction, pipes
from calc.units import CELSIUS, FOOT, GALLON_US, INCH, LITRE, MINUTE, PSI
from tests.reference.checks.check import LIBRARY, MEMORY, PUBLISHED, give, library, part, table
from tests.reference.checks.water import kelvin

SUBJECT, MODULE = "Friction and fittings", "pipe.friction"
GPM = GALLON_US / MINUTE
ILLINOIS = "Illinois Administrative Code, title 77, part 906"
CHART = "Printed chart of friction in 1 in schedule 40 steel pipe"
CRANE = "Crane TP-410, solved problems"
FLUIDS = library("fluids")

# nominal in, gpm, ft per 100 ft
SCHEDULE_40_C_150 = [
    ("1", 2, 0.28), ("1", 3, 0.60), ("1", 4, 1.01), ("1", 5, 1.52),
    ("1", 6, 2.14), ("1", 8, 3.63), ("1", 10, 5.50),
    ("1.25", 10, 1.46), ("1.25", 15, 3.06), ("1.25", 20, 5.23),
    ("1.5", 20, 2.46), ("1.5", 25, 3.75), ("1.5", 30, 5.22),
    ("2", 30, 1.54), ("2", 40, 2.62), ("2", 50, 3.98), ("3", 100, 2.09), ("4", 100, 0.55),
]  # fmt: skip
COARSE = [row for row in SCHEDULE_40_C_150 if row[2] < 0.5]  # two figures are printed
FINE = [row for row in SCHEDULE_40_C_150 if row[2] >= 0.5]


def _plastic(size, gpm):
    bore = pipes.pipe("pvc40", size).inside_m
    return friction.hazen_williams(gpm * GPM, bore, 100 * FOOT, 150.0) / FOOT


def _steel(gpm):
    bore = pipes.pipe("steel", "1").inside_m
    return friction.hazen_williams(gpm * GPM, bore, 100 * FOOT, 100.0) / FOOT


TABLES = (
    *table(SUBJECT, MODULE, "Head lost in 100 ft of {0} in PVC at {1} gpm, C = 150", FINE, _plastic,
           source=ILLINOIS, kind=PUBLISHED, near=part(0.04), unit="ft", place="appendix A",
           why="some of its rows were read from a coarse chart"),
    *table(SUBJECT, MODULE, "Head lost in 100 ft of {0} in PVC at {1} gpm, C = 150", COARSE,
           _plastic, source=ILLINOIS, kind=PUBLISHED, near=give(0.02), unit="ft",
           place="appendix A", why="some of its rows were read from a coarse chart"),
    *table(SUBJECT, MODULE, "Head lost in 100 ft of 1 in steel at {0} gpm, C = 100",
           [(2, 0.59), (4, 2.13), (6, 4.52), (8, 7.69), (10, 11.63), (15, 24.64), (20, 41.99)],
           _steel, source=CHART, kind=PUBLISHED, near=part(0.01), unit="ft",
           place="C = 100, 60 °F", why="rounded constants of its formula"),
)  # fmt: skip

TURBULENT_RE = (2500.0, 1e4, 1e5, 1e7)
COLEBROOK = (
    *table(SUBJECT, MODULE, "Friction factor at Re = {0:g}, roughness {1:g} of the bore",
           [(re, e) for re in TURBULENT_RE for e in (0.0, 1e-4, 0.01)], friction.friction_factor,
           source=FLUIDS, kind=LIBRARY, near=part(1e-10), against=Clamond, place="Colebrook"),
    *table(SUBJECT, MODULE, "Friction factor of slow flow at Re = {0:g}",
           [(1.0,), (500.0,), (2039.0,)], lambda re: friction.friction_factor(re, 1e-4),
           source=FLUIDS, kind=LIBRARY, near=part(1e-12),
           against=lambda re: friction_factor(re, 1e-4)),
    *table(SUBJECT, MODULE, "Friction factor at Re = {0:g}, roughness {1:g} of the bore",
           [(1e5, 0.0, 0.0180), (1e6, 0.0, 0.0116), (1e5, 0.001, 0.0222), (1e7, 0.01, 0.0379),
            (1e4, 0.0, 0.0309)],
           friction.friction_factor, source="Moody, Trans. ASME 66 (1944) 671", kind=MEMORY,
           near=part(0.03), why="read off a chart"),
)  # fmt: skip

BORE = 26.6e-3  # m, 1 in schedule 40
_CRANE = {
    "gate": lambda fd: fittings.K_gate_valve_Crane(BORE, BORE, 0.0, fd),
    "ball": lambda fd: fittings.K_ball_valve_Crane(BORE, BORE, 0.0, fd),
    "globe": lambda fd: fittings.K_globe_valve_Crane(BORE, BORE, fd),
    "swing": lambda fd: fittings.K_swing_check_valve_Crane(BORE, fd, angled=True),
    "foot": lambda fd: fittings.K_foot_valve_Crane(BORE, fd, style=0),
}
_BENDS = {"elbow90": 90.0, "elbow45": 45.0}


def _fitting(key):
    return friction.fitting_coefficient(friction.BY_KEY[key], BORE)


FITTINGS = (
    *table(SUBJECT, MODULE, "Loss coefficient of fitting: {0}", [(key,) for key in _CRANE],
           _fitting, source=FLUIDS, kind=LIBRARY, near=part(1e-9),
           against=lambda key: _CRANE[key](friction.turbulent_factor(BORE)), place="Crane"),
    *table(SUBJECT, MODULE, "Loss coefficient of fitting: {0}", [(key,) for key in _BENDS],
           _fitting, source=FLUIDS, kind=LIBRARY, near=part(0.06),
           against=lambda key: fittings.bend_rounded(Di=BORE, angle=_BENDS[key],
                                                     bend_diameters=1.0, method="Crane standard"),
           place="Crane", why="it fits Crane's table; ours is the formula behind the table"),
    *table(SUBJECT, MODULE, "Friction factor of fittings in {0} in steel", [
               (size,) for size in ("0.5", "0.75", "1", "1.5", "2", "4")],
           lambda size: friction.turbulent_factor(pipes.pipe("steel", size).inside_m),
           source=FLUIDS, kind=LIBRARY, near=part(0.06),
           against=lambda size: ft_Crane(pipes.pipe("steel", size).inside_m), place="Crane",
           why="it fits Crane's table; ours is the formula behind the table"),
    *table(SUBJECT, MODULE, "Friction factor of fittings in {0} in steel",
           [("0.5", 0.027), ("0.75", 0.025), ("1", 0.023), ("1.25", 0.022), ("1.5", 0.021),
            ("2", 0.019), ("4", 0.017)],
           lambda size: friction.turbulent_factor(pipes.pipe("steel", size).inside_m),
           source="Crane TP-410, tables", kind=MEMORY, near=part(0.06), place="page A-26",
           why="two figures are printed"),
)  # fmt: skip


def _smooth_plastic():
    """Problem 7-1: 50 mm smooth pipe of schedule 40, 200 L/min of water at 30 degC."""
    speed = friction.velocity(200 * LITRE / MINUTE, 52.48e-3)
    re = friction.reynolds(speed, 52.48e-3, water.kinematic_viscosity(30 + CELSIUS))
    return friction.friction_factor(re, 1.5e-6 / 52.48e-3), re


def _total_head():
    """Problem 7-15, ft: 400 ft up, 500 ft of 3 in pipe at 100 gpm, 70 degF; gate valve, four
    elbows and exit by our coefficients; a lift check valve of 2 1/2 in, 600 f_T, as Crane has."""
    bore = pipes.pipe("steel", "3").inside_m
    beta = 2.469 * INCH / bore
    narrow = 0.5 * (1 - beta**2) + (1 - beta**2) ** 2
    lift = (600 * friction.turbulent_factor(bore) + beta * narrow) / beta**4
    k = 1 + lift + sum(count * friction.fitting_coefficient(friction.BY_KEY[key], bore)
                       for key, count in (("gate", 1), ("elbow90", 4)))  # fmt: skip
    thin = water.kinematic_viscosity(kelvin(70))
    return 400 + friction.total_loss(100 * GPM, bore, 500 * FOOT, 0.0022 * INCH, thin, k) / FOOT


EXAMPLES = (
    *table(SUBJECT, MODULE, "Reynolds number of 200 L/min in 50 mm plastic pipe, 30 °C",
           [(100600.0,)], lambda: _smooth_plastic()[1], source=CRANE, kind=PUBLISHED,
           near=part(0.006), place="problem 7-1", why="worked with rounded properties of water"),
    *table(SUBJECT, MODULE, "Friction factor of the same", [(0.0179,)],
           lambda: _smooth_plastic()[0], source=CRANE, kind=PUBLISHED, near=part(0.012),
           place="problem 7-1", why="read off a chart"),
    *table(SUBJECT, MODULE, "Head of a pump over 400 ft of climb and 500 ft of 3 in pipe",
           [(421.0,)], _total_head, source=CRANE, kind=PUBLISHED, near=give(1.0), unit="ft",
           place="problem 7-15", why="friction factor read off a chart"),
)  # fmt: skip

RECALLED = (
    # outlets, F for m = 1.852, two figures after the point
    *table(SUBJECT, MODULE, "Christiansen's share of friction, {0} outlets",
           [(2, 0.64), (5, 0.46), (10, 0.40), (20, 0.38), (50, 0.36), (100, 0.36)],
           lambda outlets: friction.christiansen(outlets, 1.852),
           source="Christiansen (1942), irrigation handbooks", kind=MEMORY, near=give(0.006)),
    # p = 4.52 Q^1.85 / (C^1.85 d^4.87), psi per ft, gpm, in; water of 9789 N/m3
    *table(SUBJECT, MODULE, "Pressure lost in a foot of 2 in pipe at {0} gpm, C = 120",
           [(gpm, 4.52 * gpm**1.85 / (120**1.85 * 2.067**4.87)) for gpm in (1, 5, 20, 100)],
           lambda gpm: friction.hazen_williams(gpm * GPM, 2.067 * INCH, FOOT, 120.0) * 9789 / PSI,
           source="NFPA 13", kind=MEMORY, near=part(0.02), unit="psi",
           why="rounded constants of its formula"),
)  # fmt: skip

CHECKS = (*TABLES, *COLEBROOK, *FITTINGS, *EXAMPLES, *RECALLED)
