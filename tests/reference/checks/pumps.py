"""Pumps and relief valves: worked examples, scipy's curves and roots, standards recalled."""

import math

from fluids.flow_meter import flow_meter_discharge
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from calc import practice, relief
from calc.pump.curve import Pump
from calc.pump.invented import LPM, PUMPS
from calc.pump.laws import GRADES, electrical_power, shaft_power, water_power
from calc.pump.points import POINT_DENSITY, Point
from calc.pump.sets import Parallel, duty
from calc.units import FOOT, GALLON_US, HORSEPOWER, INCH, MINUTE, PSI
from tests.reference.checks.check import LIBRARY, MEMORY, PUBLISHED, library, part, table
from tests.reference.checks.suction import CRANE

SUBJECT = "Pumps and relief valves"
GPM = GALLON_US / MINUTE  # m3/s
COURSE = "Cleveland, CE 3305 lecture notes, Texas Tech"
SCIPY = library("scipy")
UNIT = {"flow": GPM, "head": FOOT, "power": HORSEPOWER}


def _pump(flow, head, power):
    """A pump that gives this head and draws this power at this flow and full speed."""
    shape = ((0.0, 1.3, 0.7), (1.0, 1.0, 1.0), (1.6, 0.5, 1.1))
    return Pump("p", tuple(Point(flow * q, head * h, power=power * p) for q, h, p in shape))


def _slowed(what, value, ratio):
    """What a pump's point becomes at another speed, in SI."""
    full = {"flow": 0.02, "head": 30.0, "power": 1e3} | {what: value}
    pump = _pump(**full)
    flow = full["flow"] * ratio
    if what == "flow":
        head, most = full["head"] * ratio**2, ratio * pump.largest_flow
        return brentq(lambda q: pump.head_and_slope(q, ratio)[0] - head, 0.0, most, xtol=1e-15)
    if what == "head":
        return pump.head_and_slope(flow, ratio)[0]
    return pump.power_at(flow, ratio, POINT_DENSITY)


def _in_trade_units(what, value, _from, to):
    return _slowed(what, value * UNIT[what], to / _from) / UNIT[what]


def _affinity(unit, row):
    return table(SUBJECT, "pump.curve", "{0} at {3} rpm, from {1} at {2} rpm", [row],
                 _in_trade_units, source=CRANE, kind=PUBLISHED, near=part(2e-4), unit=unit,
                 place="problem 7-33")  # fmt: skip


SPEEDS = (
    *_affinity("gpm", ("flow", 400, 3500, 1700, 194.28571)),
    *_affinity("ft", ("head", 126, 3500, 1700, 29.725714)),
    *_affinity("hp", ("power", 17.5, 3500, 1700, 2.0053061)),
    *table(SUBJECT, "pump.curve", "Flow at 900 rpm, from 0.24 m³/s at 690 rpm", [(0.313,)],
           lambda: _slowed("flow", 0.24, 900 / 690), source=COURSE, kind=PUBLISHED, near=part(2e-3),
           unit="m³/s", place="pump speed example"),
    *table(SUBJECT, "pump.curve", "Power at four fifths of the speed, of 100", [(51.2,)],
           lambda: _slowed("power", 100.0, 0.8), source="US DOE, pumping tip sheet", kind=MEMORY,
           near=part(2e-4)),
)  # fmt: skip

POWERS = (
    *table(SUBJECT, "pump.laws", "Brake power of 700 gpm at 428 ft, efficiency 0.707", [(107.056,)],
           lambda: shaft_power(water_power(700 * GPM, 428 * FOOT, 999.0), 0.707) / HORSEPOWER,
           source=CRANE, kind=PUBLISHED, near=part(2e-4), unit="hp",
           place="problem 7-34, worked in the documents of fluids"),
    # the answer is a cost: 83 970 dollars for 8000 h a year at 0.12 dollars a kWh
    *table(SUBJECT, "pump.laws", "Power from the mains of the same, motor 0.95, drive 0.96",
           [(83970 / 8000 / 0.12,)],
           lambda: electrical_power(shaft_power(water_power(700 * GPM, 428 * FOOT, 999.0), 0.707),
                                    0.95, 0.96) / 1e3,
           source=CRANE, kind=PUBLISHED, near=part(1e-3), unit="kW", place="problem 7-34",
           why="given as a yearly cost, worked with rounded powers"),
    *table(SUBJECT, "pump.laws", "Brake power of 100 gpm at 421 ft, efficiency 0.7", [(15.2,)],
           lambda: shaft_power(water_power(100 * GPM, 421 * FOOT, 997.9), 0.7) / HORSEPOWER,
           source=CRANE, kind=PUBLISHED, near=part(3.3e-3), unit="hp", place="problem 7-15"),
    *table(SUBJECT, "pump.laws", "Power of 0.24 m³/s at 2.65 m, efficiency 0.8", [(7798.0,)],
           lambda: electrical_power(shaft_power(water_power(0.24, 2.65, 1000.0), 0.8), 1.0, 1.0),
           source=COURSE, kind=PUBLISHED, near=part(2e-3), unit="W", place="pump speed example",
           why="takes 9.8 m/s² for gravity"),
    # 3960 = 33 000 ft lb/min over 8.33 lb a gallon
    *table(SUBJECT, "pump.laws", "Power in 100 gpm at 100 ft", [(1e4 / 3960,)],
           lambda: water_power(100 * GPM, 100 * FOOT, 998.2) / HORSEPOWER,
           source="Crane TP-410, equations", kind=MEMORY, near=part(2e-3), unit="hp"),
)  # fmt: skip


def _grade(key, what):
    return 100 * getattr(GRADES[key], what)


_ISO = {"1B": (5, 3, 4, 3), "2B": (8, 5, 8, 5), "3B": (9, 7, 9, 7)}
GRADE_VALUES = table(
    SUBJECT, "pump.laws", "Tolerance of grade {0}: {1}",
    [(key, what, value) for key, values in _ISO.items()
     for what, value in zip(("flow", "head", "power", "efficiency"), values, strict=True)],
    _grade, source="ISO 9906:2012", kind=MEMORY, near=part(1e-9), unit="%", place="table 8",
)  # fmt: skip

# Curves and roots -------------------------------------------------------------------------------


def _curve(key):
    points = PUMPS[key].points
    return PchipInterpolator([p.flow for p in points], [p.head for p in points])


def _flow(key, share):
    first = PUMPS[key].points[0].flow
    return first + share * (PUMPS[key].largest_flow - first)


def system(key, speed):
    """(Head of a pipe at a flow, the pump's last flow) for a duty to be found."""
    pump = PUMPS[key]
    top, end = pump.shut_off_head * speed**2, pump.most_flow(speed)
    return (lambda flow: 0.3 * top + 0.6 * top * (flow / end) ** 1.8), end


def _root(key, speed):
    head, end = system(key, speed)
    curve = _curve(key)
    off = lambda q: speed**2 * float(curve(q / speed)) - head(q)  # noqa: E731
    return brentq(off, 0.0, end, xtol=1e-15) / LPM


def _shared():
    """Head of two unlike pumps that give 95 L/min together."""

    def flow_of(pump, head):
        return brentq(lambda q: pump.head_at(q) - head, 0, pump.largest_flow, xtol=1e-16)

    pair = [PUMPS["small"], PUMPS["middle"]]
    return brentq(lambda head: sum(flow_of(one, head) for one in pair) - 95 * LPM, 22.1, 37.9)


CURVES = (
    *table(SUBJECT, "pump.curve", "Head of our example pump {0} at {1:g} of its range",
           [(key, share) for key in PUMPS for share in (0.37, 0.8)],
           lambda key, share: PUMPS[key].head_at(_flow(key, share)), source=SCIPY, kind=LIBRARY,
           near=part(1e-12), unit="m", place="monotone cubic",
           against=lambda key, share: float(_curve(key)(_flow(key, share)))),
    *table(SUBJECT, "pump.sets", "Duty of our example pump {0} at {1:g} of its speed",
           [(key, speed) for key in ("small", "middle", "large") for speed in (0.7, 1.0)],
           lambda key, speed: duty(PUMPS[key], system(key, speed)[0], speed).flow / LPM,
           source=SCIPY, kind=LIBRARY, near=part(1e-7), unit="L/min", against=_root, place="brentq",
           why="calc stops at a part in 10 million"),
    *table(SUBJECT, "pump.sets", "Head of two unlike pumps side by side at 95 L/min", [()],
           lambda: Parallel((PUMPS["small"], PUMPS["middle"])).head_at(95 * LPM), source=SCIPY,
           kind=LIBRARY, near=part(1e-8), unit="m", against=_shared, place="brentq"),
)  # fmt: skip

# Relief valves ----------------------------------------------------------------------------------

WATER_60F = 62.4 * 16.01846337  # kg/m3, 62.4 lb/ft3


def _opening(gpm, psi, heavy):
    """in2"""
    found = relief.opening_for(gpm * GPM, psi * PSI, heavy * WATER_60F)
    return math.pi / 4 * (found / INCH) ** 2


def _passes(inches, psi):
    gpm = 29.84 * practice.RELIEF_COEFFICIENT * inches**2 * math.sqrt(psi)
    return relief.pressure_to_pass(gpm * GPM, inches * INCH, WATER_60F) / PSI


def api_520(gpm, psi, heavy):
    """A = Q / (38 K_d) sqrt(G / p), in2, gpm, psi, G over water."""
    return gpm / (38 * practice.RELIEF_COEFFICIENT) * math.sqrt(heavy / psi)


def by_fluids(gpm, psi, _heavy):
    """in2: the library's orifice in a wide pipe, turned round."""
    one = flow_meter_discharge(10.0, 0.01, psi * PSI, 0.0, WATER_60F, practice.RELIEF_COEFFICIENT)
    return math.pi / 4 * (0.01 / INCH) ** 2 * gpm * GPM * WATER_60F / one


RELIEF = (
    *table(SUBJECT, "relief", "Opening that passes {0:g} gpm at {1:g} psi",
           [(5.0, 100.0, 1.0), (20.0, 82.5, 1.0), (100.0, 165.0, 1.0)], _opening,
           source=library("fluids"), kind=LIBRARY, near=part(1e-9), unit="in²", against=by_fluids,
           place="orifice in a wide pipe"),
    *table(SUBJECT, "relief", "Opening that passes {0:g} gpm at {1:g} psi, {2} of water's weight",
           [(5.0, 100.0, 1.0), (20.0, 82.5, 1.0), (1.0, 45.0, 0.999), (100.0, 165.0, 1.0)],
           _opening, source="API 520 part I, liquid", kind=MEMORY, near=part(2e-3), unit="in²",
           against=api_520, why="its 38 has two figures; 37.99 with all of them"),
    # 29.84 C d^2 sqrt(p): the nozzle formula of fire protection
    *table(SUBJECT, "relief", "Pressure at which {0} in passes what the formula gives at {1:g} psi",
           [(0.25, 100.0), (0.5, 60.0)], _passes, source="Nozzle formula of fire protection",
           kind=MEMORY, near=part(2e-3), unit="psi", against=lambda _inches, psi: psi,
           why="four figures of 29.84, water at 60 °F"),
)  # fmt: skip

CHECKS = (*SPEEDS, *POWERS, *GRADE_VALUES, *CURVES, *RELIEF)
