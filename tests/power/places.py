"""A year of weather made up for these tests, and a usual system."""

import functools
import math
import random

from calc.power.array import Array, usual_module
from calc.power.battery import Battery
from calc.power.controller import Controller
from calc.power.motor import Draw
from calc.power.year import Demand, System, Weather
from calc.storage import PATTERNS

PANEL = usual_module(400.0)
MPPT = Controller("mppt", 150.0, 60.0)
PUMP = Draw(450.0, 40e-3 / 60)
HOME = Demand((1.8,) * 12, PATTERNS["home"])
WH = 3600.0


@functools.cache
def weather(seed=1, mean_k=288.0):
    """Half sines of sun with dull days among them, and a year's and a day's swing of the air."""
    drawn = random.Random(seed)
    plane, module_k, air_k = [], [], []
    clear = 1.0
    for day in range(365):
        clear = drawn.choice((0.1, 0.4, 1.0)) if drawn.random() < 0.4 else clear
        for hour in range(24):
            high = 700 - 250 * math.cos(2 * math.pi * (day + 10) / 365)
            sun = max(0.0, math.sin(math.pi * (hour - 5.5) / 12)) * high * clear
            air = mean_k - 10 * math.cos(2 * math.pi * (day - 15) / 365) + 4 * math.sin(hour / 4)
            plane.append(sun)
            air_k.append(air)
            module_k.append(air + 0.03 * sun)
    return Weather(plane, module_k, air_k)


def system(strings=1, wh=1200.0, tank=0.0, kind="lfp", **more):
    reserve = more.pop("reserve_wh", None)
    battery = Battery(kind, 24.0, wh * WH, None if reserve is None else reserve * WH)
    made = {"controller": MPPT, "pump": PUMP} | more
    return System(Array(PANEL, 1, strings), battery=battery, tank_m3=tank, **made)
