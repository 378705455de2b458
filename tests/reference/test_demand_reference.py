"""Demand against published figures and an independent statistics library."""

import math

import numpy as np
import pytest
from scipy import stats

from calc import demand
from calc.units import DAY, GALLON_US, LITRE, MINUTE

GPM = GALLON_US / MINUTE
KINDS = ((4, 2.0, 0.045), (5, 1.5, 0.02), (3, 3.0, 0.01), (2, 3.5, 0.055), (1, 10.0, 0.05))


# n, p; source: scipy.stats.binom
@pytest.mark.parametrize("number, p", [(1, 0.5), (4, 0.045), (20, 0.02), (60, 0.1), (500, 0.003)])
def test_binomial_matches_scipy_to_1e_11(number, p):
    expected = stats.binom.pmf(np.arange(number + 1), number, p)
    # scipy's far tail loses figures before it underflows: below 1e-100 only the size is compared
    assert np.allclose(demand.binomial(number, p), expected, rtol=1e-11, atol=1e-100)


# n, p, m; source: scipy.stats.binom.sf
@pytest.mark.parametrize("number, p, wanted", [(4, 0.045, 2), (12, 0.02, 1), (60, 0.1, 14)])
def test_at_least_matches_scipy(number, p, wanted):
    expected = stats.binom.sf(wanted - 1, number, p)
    assert math.isclose(demand.at_least(number, p, wanted), expected, rel_tol=1e-11)


def on_a_grid(kinds):
    """Chances by numpy's convolution of scipy's binomials on a grid of half a gallon a minute."""
    total = np.ones(1)
    for number, gpm, p in kinds:
        one = np.zeros(round(number * gpm * 2) + 1)
        one[:: round(gpm * 2)] = stats.binom.pmf(np.arange(number + 1), number, p)
        total = np.convolve(total, one)
    return total


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


@pytest.mark.parametrize("share", [0.5, 0.9, 0.99, 0.999])
def test_quantile_matches_the_cumulative_sum_of_numpys_convolution(share):
    expected = int(np.searchsorted(np.cumsum(on_a_grid(KINDS)), share)) / 2
    found = demand.quantile(demand.flow_chances([(n, q * GPM, p) for n, q, p in KINDS]), share)
    assert found / GPM == pytest.approx(expected, rel=1e-9)


@pytest.mark.parametrize("share", [0.9, 0.99])
def test_quantile_of_moments_of_use_matches_numpys(share):
    grid = on_a_grid(KINDS)
    truncated = np.cumsum(grid[1:]) / (1 - grid[0])
    expected = (int(np.searchsorted(truncated, share)) + 1) / 2
    chances = demand.running(demand.flow_chances([(n, q * GPM, p) for n, q, p in KINDS]))
    assert demand.quantile(chances, share) / GPM == pytest.approx(expected, rel=1e-9)


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


# With many taps the flow is nearly normal and water nearly always runs, so that the 99th
# percentile is near m + z s.  Source: R. Wistort (1994), after the Peak Water Demand Study
# (2017), from memory: Q = sum npq + z sqrt(sum n p (1-p) q^2).  The distribution is skewed and
# comes in steps: 5 % covers both for these numbers (at half as many taps the skew alone is 8 %).
@pytest.mark.parametrize("scale", [40, 80])
def test_for_a_village_the_flow_is_near_wistorts(scale):
    kinds = [(n * scale, q, p) for n, q, p in KINDS]
    mean = sum(n * p * q for n, q, p in kinds)
    spread = math.sqrt(sum(n * p * (1 - p) * q**2 for n, q, p in kinds))
    found = demand.quantile(demand.flow_chances([(n, q * GPM, p) for n, q, p in kinds]), 0.99)
    assert found / GPM == pytest.approx(mean + 2.326 * spread, rel=0.05)


# units, gal/min; source: printed copy of the Uniform Plumbing Code's demand table for systems
# without flush valves, as given in trade tables of water supply fixture units
PRINTED = [(1, 3.0), (2, 5.0), (4, 8.0), (8, 12.8), (15, 17.5), (30, 23.3), (50, 29.1)]


@pytest.mark.parametrize("units, gpm", PRINTED)
def test_fixture_units_match_the_printed_table(units, gpm):
    assert demand.fixture_unit_flow(units) / GPM == pytest.approx(gpm, rel=1e-12)


# key, gal a day low, high; sources: Kansas State University, Livestock Watering Handbook, daily
# requirements (horse about 10, dry cow 10 to 15, nursing cow 11 to 18, dairy cow 15 to 30 gal);
# Journal of Renewable Energy (2017) 8504283, table 1 (sheep or goat 2 gal;
# 100 chickens 6 to 12 gal)
STOCK = [
    ("cattle", 10.0, 15.0),
    ("nursing", 11.0, 18.0),
    ("dairy", 15.0, 30.0),
    ("goats", 1.8, 2.2),
    ("hens", 0.06, 0.12),
]


@pytest.mark.parametrize("key, low, high", STOCK)
def test_animals_drink_what_handbooks_say(key, low, high):
    animal = next(a for a in demand.ANIMALS if a.key == key)
    assert low <= animal.daily * DAY / GALLON_US <= high


def test_a_person_with_taps_in_the_house_uses_50_to_100_litres():
    # UNDP (2006) as quoted by The Open University, water supply: 50 to 100 L, at the least 20 L
    each = [amount * DAY / LITRE for _, amount, _ in demand.SERVICE]
    assert each[1:] == pytest.approx([20, 50, 100])


def test_a_millimetre_on_a_hectare_is_ten_cubic_metres():
    # FAO Irrigation and Drainage Paper 56, chapter 1: 1 mm/day = 10 m3/ha/day (from memory)
    assert demand.irrigation(1e4, 1e-3, 1.0) * DAY == pytest.approx(10.0)


# key, units; source: International Plumbing Code 2018, table E103.3(2), private use, total: kitchen
# sink read in print, the others from memory
UNITS = [("shower", 1.4), ("sink", 1.4), ("toilet", 2.2), ("washer", 1.4)]


@pytest.mark.parametrize("key, units", UNITS)
def test_fixture_units_are_of_the_code_whose_table_turns_them_into_flow(key, units):
    assert next(f.units for f in demand.FIXTURES if f.key == key) == units


# common practice, no source: a shower or a sink takes about 2 gal/min, a hose about 10, a trough's
# float valve 4 to 10
@pytest.mark.parametrize(
    "key, gpm", [("shower", 2.0), ("sink", 2.0), ("hose", 10.0), ("trough", 6.0)]
)
def test_taps_give_what_the_trade_says(key, gpm):
    flow = next(f.flow for f in demand.FIXTURES if f.key == key)
    assert flow / GPM == pytest.approx(gpm)
