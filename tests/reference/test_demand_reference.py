"""Demand against a statistics library, all along; tables are in ``checks.uses``."""

import math

import numpy as np
import pytest
from scipy import stats

from calc import demand
from tests.reference.checks.uses import GPM, KINDS, on_a_grid


# n, p; source: scipy.stats.binom
@pytest.mark.parametrize("number, p", [(1, 0.5), (4, 0.045), (20, 0.02), (60, 0.1), (500, 0.003)])
def test_binomial_matches_scipy_to_1e_11(number, p):
    expected = stats.binom.pmf(np.arange(number + 1), number, p)
    # scipy's far tail loses figures before it underflows: below 1e-100 only the size is compared
    assert np.allclose(demand.binomial(number, p), expected, rtol=1e-11, atol=1e-100)


@pytest.mark.parametrize("scale", [1, 3, 8])
def test_total_flow_matches_numpys_convolution(scale):
    kinds = tuple((n * scale, q, p) for n, q, p in KINDS)
    expected = on_a_grid(kinds)
    found = demand.flow_chances(tuple((n, q * GPM, p) for n, q, p in kinds))
    ours = np.zeros_like(expected)
    for flow, chance in found:
        assert math.isclose(flow / GPM * 2, round(flow / GPM * 2), rel_tol=1e-9)
        ours[round(flow / GPM * 2)] = chance
    # below 1e-12 chances are left out by design; the sum of all of those stays below 1e-11
    assert np.allclose(ours, expected, rtol=1e-9, atol=1e-12)


def test_many_rare_taps_are_as_rare_as_poissons():
    # Le Cam's bound: the distributions differ by at most n p^2 in all
    number, p = 400, 0.002
    ours = np.array(demand.binomial(number, p))
    expected = stats.poisson.pmf(np.arange(number + 1), number * p)
    assert np.abs(ours - expected).sum() <= 2 * number * p**2


def test_a_draw_of_random_moments_agrees():
    rng = np.random.default_rng(7)
    flow = sum(rng.binomial(n, p, 400_000) * q for n, q, p in KINDS)
    chances = demand.flow_chances([(n, q * GPM, p) for n, q, p in KINDS])
    for gpm in (2.0, 5.0, 10.0, 12.0):
        expected = np.mean(flow > gpm + 1e-9)
        spread = math.sqrt(expected * (1 - expected) / flow.size)
        assert abs(demand.exceeded(chances, gpm * GPM) - expected) < 5 * spread
