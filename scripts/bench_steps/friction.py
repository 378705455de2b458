"""Friction factor against ``fluids``, an independent library: how close, how fast."""

import itertools
import statistics
import time

from fluids.friction import friction_factor as theirs

from calc.pipe.friction import friction_factor as ours

REYNOLDS = [10 ** (n / 25) for n in range(201)]  # -, 1 to 1e8
ROUGHNESS = [0.0, *(10 ** (n / 5) for n in range(-35, -6)), 0.05]  # eps/D, -; 1e-7 to 0.05
GRID = list(itertools.product(REYNOLDS, ROUGHNESS))
ROUNDS = 7


def largest_difference():
    """Largest relative difference over the grid, -."""
    return max(abs(ours(re, rough) / theirs(re, rough) - 1) for re, rough in GRID)


def seconds(function):
    """Time for one pass over the grid, s."""
    started = time.perf_counter()
    for re, rough in GRID:
        function(re, rough)
    return time.perf_counter() - started


def measures():
    """(label, ratio) pairs. Rounds alternate, so a busy machine slows both alike."""
    yield "friction factor: largest relative difference from fluids", largest_difference()
    pairs = [(seconds(ours), seconds(theirs)) for _ in range(ROUNDS)]
    ratio = statistics.median(one / other for one, other in pairs)
    yield "friction factor: time, ours / fluids (below 1: ours is faster)", ratio
