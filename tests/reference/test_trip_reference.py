"""A pump that stops at once, against the method of characteristics of ``checks.characteristics``.

One pipe without friction: a check valve at the pump, which lets nothing back and from the first
moment nothing through, a tank of constant pressure at the end.  Wylie and Streeter, Fluid
Transients in Systems (1993), chapter 3 (method) and 8 (cavities lumped at the nodes), from memory.
"""

import math
import random

import numpy as np
import pytest

from calc import surge, trip
from tests.reference.checks.characteristics import (
    AIR,
    AREA,
    BOILS,
    BORE,
    EXPONENT,
    RHO,
    parted,
    whole,
    with_vessel,
)
from tests.reference.checks.surges import trips


@pytest.mark.parametrize("case", list(trips(12)))
def test_fall_and_rise_are_those_of_the_method_of_characteristics(case):
    speed, length, velocity, static = case
    low, high = whole(*case)
    sudden = surge.joukowsky_rise(RHO, speed, velocity)
    # exact but for rounding: the wave runs along the characteristics themselves
    assert high[0] == pytest.approx(static + sudden, rel=1e-9)
    for at in (0, 10, 25, 45):  # undiminished all along the pipe, as high up as it may be
        assert low[at] == pytest.approx(
            trip.pressure_after(static, -sudden, 0.0, 9806.65), rel=1e-9
        )


def vessels(count):
    rnd = random.Random(32)
    for speed, length, velocity, static in trips(4 * count, 33):
        if RHO * speed * velocity < 0.5 * (static + AIR) and count:
            count -= 1
            # swing of the rigid column over the wave's way there and back
            ratio = 10 ** rnd.uniform(-0.5, 1.2)
            air = (ratio * 2 * length / speed / 2 / math.pi) ** 2 * AREA / (RHO * length)
            yield speed, length, velocity, static, air * EXPONENT * (static + AIR), ratio


@pytest.mark.parametrize("case", list(vessels(30)))
def test_no_vessel_lets_a_pipe_swing_further_than_said(case):
    speed, length, velocity, static, air, ratio = case
    seconds = max(6.0, 2.2 * ratio) * 2 * length / speed
    low, high = with_vessel(speed, length, velocity, static, air, seconds=seconds)
    found = trip.swing(RHO, speed, length, BORE, velocity, static + AIR, air)
    room = 0.005 * (static + AIR)  # steps of 1/50 of the pipe
    assert low.min() >= static - found.fall - room
    assert high.max() <= static + found.rise + room


@pytest.mark.parametrize("case", [one for one in vessels(60) if one[-1] > 5])
def test_a_vessel_that_swings_slowly_swings_as_far_as_said(case):
    speed, length, velocity, static, air, ratio = case
    low, high = with_vessel(*case[:5], seconds=1.3 * ratio * 2 * length / speed)
    found = trip.swing(RHO, speed, length, BORE, velocity, static + AIR, air)
    # the column is rigid to the page; springs of water and wall take up to a tenth at five waves
    assert static - low[0] == pytest.approx(found.fall, rel=0.1)
    assert high[0] - static == pytest.approx(found.rise, rel=0.15)


def crests(count):
    rnd = random.Random(34)
    while count:
        speed, length = rnd.uniform(250, 1300), 10 ** rnd.uniform(1.5, 3.2)
        velocity, lift = rnd.uniform(0.2, 2.5), 10 ** rnd.uniform(0.7, 2)
        crest, at = lift * rnd.uniform(0.2, 1.0), rnd.uniform(0.2, 0.9)
        if 9806.65 * (lift - crest) - RHO * speed * velocity < BOILS:
            count -= 1
            yield speed, length, velocity, lift, crest, at


@pytest.mark.parametrize("case", list(crests(40)))
def test_a_parted_column_rejoins_within_the_bound(case):
    speed, length, velocity, lift, crest, at = case
    rises = np.interp(np.linspace(0, 1, 51), [0, at, 1], [0, crest, lift])
    static, sudden = 9806.65 * lift, surge.joukowsky_rise(RHO, speed, velocity)
    highest = parted(speed, length, velocity, static, rises)
    # cavities lumped at nodes clap together in spikes of a few percent of the rise
    assert highest <= surge.rejoining_peak(static, sudden) + 0.05 * sudden
