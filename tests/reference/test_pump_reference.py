"""Pump relations and curves against published examples and scipy."""

import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from calc.pump.curve import Pump
from calc.pump.invented import LPM, PUMPS
from calc.pump.laws import (
    GRADES,
    electrical_power,
    shaft_power,
    water_power,
)
from calc.pump.points import POINT_DENSITY, Point
from calc.pump.sets import Parallel, duty
from calc.units import FOOT, GALLON_US, HORSEPOWER, MINUTE

GPM = GALLON_US / MINUTE  # m3/s
CRANE = "Crane TP-410 (2013), problem 7-33, worked in the documents of the fluids library"
COURSE = "Cleveland, CE 3305 lecture notes, Texas Tech, pump speed example 690 to 900 rpm"

# (what, at full speed, ratio of speeds, expected, source)
AFFINITY = [
    ("flow", 400 * GPM, 1700 / 3500, 194.28571 * GPM, CRANE),
    ("head", 126 * FOOT, 1700 / 3500, 29.725714 * FOOT, CRANE),
    ("power", 17.5 * HORSEPOWER, 1700 / 3500, 2.0053061 * HORSEPOWER, CRANE),
    ("flow", 0.24, 900 / 690, 0.313, COURSE),
    ("power", 100.0, 0.8, 51.2, "US DOE pumping tip sheet: a fifth off the speed halves the"
     " power, from memory"),
]  # fmt: skip


def _pump(flow, head, power):
    """A pump that gives this head and draws this power at this flow and full speed."""
    shape = ((0.0, 1.3, 0.7), (1.0, 1.0, 1.0), (1.6, 0.5, 1.1))
    return Pump("p", tuple(Point(flow * q, head * h, power=power * p) for q, h, p in shape))


def _flow_at(pump, head, speed):
    most = speed * pump.largest_flow
    return brentq(lambda q: pump.head_and_slope(q, speed)[0] - head, 0.0, most, xtol=1e-15)


@pytest.mark.parametrize("what, value, ratio, expected, source", AFFINITY)
def test_a_curve_at_another_speed_gives_the_published_example(what, value, ratio, expected, source):
    full = {"flow": 0.02, "head": 30.0, "power": 1e3} | {what: value}
    pump = _pump(**full)
    flow = full["flow"] * ratio
    found = {
        "flow": lambda: _flow_at(pump, full["head"] * ratio**2, ratio),
        "head": lambda: pump.head_and_slope(flow, ratio)[0],
        "power": lambda: pump.power_at(flow, ratio, POINT_DENSITY),
    }[what]()
    assert found == pytest.approx(expected, rel=2e-4), source


# (gpm, ft, efficiency, hp, source): the constant 3960 = 33 000 ft lb/min per hp
# over 8.33 lb a gallon; 8.333 gives 3960.2, hence the tolerance.
BRAKE = [
    (
        100,
        100,
        1.0,
        10000 / 3960,
        "BHP = gpm x ft / (3960 x eta), Crane TP-410 equation, from memory",
    ),
    (400, 126, 0.727, 17.5, CRANE + "; the efficiency that its 17.5 hp implies"),
]


@pytest.mark.parametrize("gpm, feet, efficiency, horsepower, source", BRAKE)
def test_brake_power_follows_the_handbook_rule(gpm, feet, efficiency, horsepower, source):
    water = water_power(gpm * GPM, feet * FOOT, 998.2)
    found = water if efficiency == 1.0 else shaft_power(water, efficiency)
    assert found / HORSEPOWER == pytest.approx(horsepower, rel=2e-3), source


def test_wire_power_of_the_canal_pump_is_that_of_the_course():
    # 0.24 m3/s at 2.65 m and 80 %: 7.8 kW (course above, which takes g = 9.8).
    found = electrical_power(shaft_power(water_power(0.24, 2.65, 1000.0), 0.8), 1.0, 1.0)
    assert found == pytest.approx(7798, rel=2e-3), COURSE


# (grade, flow %, head %, power %, efficiency %, source)
ISO = [
    ("1B", 5, 3, 4, 3, "ISO 9906:2012 table 8, from memory"),
    ("2B", 8, 5, 8, 5, "ISO 9906:2012 table 8, from memory; flow, head and efficiency as in a pump"
     " maker's glossary for class 2"),
    ("3B", 9, 7, 9, 7, "ISO 9906:2012 table 8, from memory"),
]  # fmt: skip


@pytest.mark.parametrize("key, flow, head, power, efficiency, source", ISO)
def test_tolerances_are_those_of_the_standard(key, flow, head, power, efficiency, source):
    grade = GRADES[key]
    found = [100 * share for share in (grade.flow, grade.head, grade.power, grade.efficiency)]
    assert found == pytest.approx([flow, head, power, efficiency]), source


@pytest.mark.parametrize("key", PUMPS)
def test_curve_is_scipys_monotone_cubic(key):
    pump = PUMPS[key]
    curve = PchipInterpolator([p.flow for p in pump.points], [p.head for p in pump.points])
    for flow in np.linspace(pump.points[0].flow, pump.largest_flow, 41):
        assert pump.head_at(flow) == pytest.approx(float(curve(flow)), rel=1e-12, abs=1e-12)


@pytest.mark.parametrize("key", ["small", "middle", "large"])
@pytest.mark.parametrize("speed", [0.7, 1.0])
def test_duty_point_is_scipys_root(key, speed):
    pump = PUMPS[key]
    curve = PchipInterpolator([p.flow for p in pump.points], [p.head for p in pump.points])
    static, end = 0.3 * pump.shut_off_head * speed**2, pump.most_flow(speed)

    def system(flow):
        return static + 0.6 * pump.shut_off_head * speed**2 * (flow / end) ** 1.8

    wanted = brentq(lambda q: speed**2 * float(curve(q / speed)) - system(q), 0.0, end, xtol=1e-15)
    assert duty(pump, system, speed).flow == pytest.approx(wanted, rel=1e-7)


def test_unlike_pumps_in_parallel_share_flow_as_scipy_solves_it():
    first, second = PUMPS["small"], PUMPS["middle"]
    flow = 95 * LPM

    def flow_of(pump, head):
        return brentq(lambda q: pump.head_at(q) - head, 0, pump.largest_flow, xtol=1e-16)

    def shortfall(head):
        return flow_of(first, head) + flow_of(second, head) - flow

    assert Parallel((first, second)).head_at(flow) == pytest.approx(
        brentq(shortfall, 22.1, 37.9), rel=1e-8
    )
