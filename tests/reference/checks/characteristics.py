"""The method of characteristics, written apart from calc: pipes of one size without friction.

Wylie and Streeter, Fluid Transients in Systems (1993), chapters 3 and 8, from memory.
"""

import math

import numpy as np

RHO, AIR, BORE, EXPONENT = 1000.0, 1e5, 0.04, 1.2
AREA = math.pi / 4 * BORE**2
BOILS = -0.99e5  # Pa gauge


def characteristics(speed, length, velocity, closing, pressure, cells=100, density=1000.0):
    """Highest rise at the valve by the method of characteristics, no friction.

    Constant pressure upstream; the valve's opening closes evenly and its flow
    goes with the root of the pressure.
    """
    step, impedance = length / cells / speed, density * speed
    p, v = np.full(cells + 1, pressure), np.full(cells + 1, velocity)
    highest = pressure
    for index in range(1, int((closing + 2 * length / speed) / step) + 2):
        right, left = p[:-1] + impedance * v[:-1], p[1:] - impedance * v[1:]
        opening = max(0.0, 1 - index * step / closing)
        through = (velocity * opening) ** 2 / pressure
        last = (
            -impedance * through + math.sqrt((impedance * through) ** 2 + 4 * through * right[-1])
        ) / 2
        p[1:-1], v[1:-1] = (right[:-1] + left[1:]) / 2, (right[:-1] - left[1:]) / (2 * impedance)
        p[0], v[0] = pressure, (pressure - left[0]) / impedance
        p[-1], v[-1] = right[-1] - impedance * last, last
        highest = max(highest, p[-1])
    return highest - pressure


def whole(speed, length, velocity, static, cells=50, periods=2.5):
    """(lowest, highest) gauge pressure at each node, no vessel, water that cannot boil."""
    step, z = length / cells / speed, RHO * speed
    p, v = np.full(cells + 1, float(static)), np.full(cells + 1, float(velocity))
    low, high = p.copy(), p.copy()
    for _ in range(int(periods * 2 * length / speed / step)):
        right, left = p[:-1] + z * v[:-1], p[1:] - z * v[1:]
        p[1:-1], v[1:-1] = (right[:-1] + left[1:]) / 2, (right[:-1] - left[1:]) / (2 * z)
        p[0], v[0] = left[0], 0.0
        p[-1], v[-1] = static, (right[-1] - static) / z
        low, high = np.minimum(low, p), np.maximum(high, p)
    return low, high


def with_vessel(speed, length, velocity, static, air, cells=50, seconds=1.0):
    """The same with a vessel at the pump: p V^n is constant, V grows by what the pipe takes."""
    step, z = length / cells / speed, RHO * speed
    p, v = np.full(cells + 1, float(static)), np.full(cells + 1, float(velocity))
    low, high, volume = p.copy(), p.copy(), air
    constant = (static + AIR) * air**EXPONENT
    for _ in range(int(seconds / step)):
        right, left = p[:-1] + z * v[:-1], p[1:] - z * v[1:]
        p[1:-1], v[1:-1] = (right[:-1] + left[1:]) / 2, (right[:-1] - left[1:]) / (2 * z)
        p[-1], v[-1] = static, (right[-1] - static) / z
        new = v[0]
        for _ in range(60):  # Newton, on the speed at the end of the step
            there = volume + step * AREA * (new + v[0]) / 2
            off = left[0] + z * new + AIR - constant * there**-EXPONENT
            slope = z + constant * EXPONENT * there ** (-EXPONENT - 1) * step * AREA / 2
            new -= off / slope
            if abs(off) < 1e-6:
                break
        volume += step * AREA * (new + v[0]) / 2
        p[0], v[0] = left[0] + z * new, new
        low, high = np.minimum(low, p), np.maximum(high, p)
    return low, high


def parted(speed, length, velocity, static, rises, cells=50, periods=6):
    """Highest pressure (Pa, as at the pump's height) of a column that boils where it must."""
    step, z = length / cells / speed, RHO * speed
    floor = BOILS + 9806.65 * rises
    p, up = np.full(cells + 1, float(static)), np.full(cells + 1, float(velocity))
    down, cavity, highest = up.copy(), np.zeros(cells + 1), static
    for _ in range(int(periods * 2 * length / speed / step)):
        right = np.append([0.0], p[:-1] + z * down[:-1])
        left = np.append(p[1:] - z * up[1:], [0.0])
        free = (right + left) / 2
        free[0], free[-1] = left[0], static
        held = (cavity > 0) | (free < floor)
        held[-1] = False
        p = np.where(held, floor, free)
        up, down = (right - p) / z, (p - left) / z
        up[0], down[-1] = 0.0, (right[-1] - static) / z
        up[-1] = down[-1]
        cavity = np.where(held, cavity + step * (down - up), 0.0)
        shut = held & (cavity <= 0)
        p, cavity = np.where(shut, free, p), np.where(shut, 0.0, cavity)
        up, down = np.where(shut, (right - p) / z, up), np.where(shut, (p - left) / z, down)
        up[0] = 0.0
        highest = max(highest, p.max())
    return highest
