"""Demand: chances of taps, total flows, fixture units and water for beds."""

import math
from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import demand, practice
from calc.errors import RangeError
from calc.units import DAY

ROUNDS = settings(max_examples=100, deadline=None)
chance = st.floats(0, 1)
tap = st.tuples(st.integers(0, 6), st.sampled_from((1e-4, 1.26e-4, 3.1e-4, 6.3e-4)), chance)
taps = st.lists(tap, max_size=4)


# One kind of tap -------------------------------------------------------------


@given(st.integers(0, 60), chance)
@ROUNDS
def test_chances_of_a_kind_add_up_to_one(number, p):
    assert math.isclose(sum(demand.binomial(number, p)), 1.0, rel_tol=1e-12)


@given(st.integers(0, 60), chance)
@ROUNDS
def test_none_or_more_is_certain(number, p):
    assert math.isclose(demand.at_least(number, p, 0), 1.0, rel_tol=1e-12)


@given(st.integers(1, 40), chance)
@ROUNDS
def test_at_least_one_is_the_rest_of_none(number, p):
    assert math.isclose(demand.at_least(number, p, 1), 1 - (1 - p) ** number, abs_tol=1e-12)


def test_more_taps_than_there_are_are_never_open():
    assert demand.at_least(3, 0.5, 4) == 0.0


def test_a_tap_never_used_is_shut_and_one_always_used_is_open():
    assert demand.binomial(3, 0.0) == (1.0, 0.0, 0.0, 0.0)
    assert demand.binomial(3, 1.0) == (0.0, 0.0, 0.0, 1.0)


@pytest.mark.parametrize("number, p", [(-1, 0.1), (501, 0.1), (3, -0.1), (3, 1.1), (3, math.nan)])
def test_numbers_and_chances_out_of_range_are_refused(number, p):
    with pytest.raises(RangeError):
        demand.binomial(number, p)


# All kinds together ----------------------------------------------------------


@given(taps)
@ROUNDS
def test_chances_of_the_total_flow_add_up_to_one(kinds):
    assert math.isclose(sum(c for _, c in demand.flow_chances(kinds)), 1.0, abs_tol=1e-11)


@given(taps)
@ROUNDS
def test_the_mean_flow_is_the_sum_of_n_p_q(kinds):
    expected = sum(n * p * q for n, q, p in kinds)
    found = sum(flow * share for flow, share in demand.flow_chances(kinds))
    # chances of 1e-15 and less are left out, with at most 100 of them here
    lost = 1e-13 * demand.together((n, q) for n, q, _ in kinds)
    assert math.isclose(found, expected, rel_tol=1e-9, abs_tol=lost)


@given(taps)
@ROUNDS
def test_flows_rise(kinds):
    flows = [q for q, _ in demand.flow_chances(kinds)]
    assert flows == sorted(set(flows))


def test_the_order_of_the_kinds_does_not_matter():
    kinds = ((3, 1e-4, 0.1), (2, 3e-4, 0.2), (1, 7e-4, 0.05))
    one, other = demand.flow_chances(kinds), demand.flow_chances(kinds[::-1])
    for (q1, c1), (q2, c2) in zip(one, other, strict=True):
        assert math.isclose(q1, q2, rel_tol=1e-12) and math.isclose(c1, c2, rel_tol=1e-12)


def test_two_kinds_that_are_one_kind_give_the_same():
    whole = demand.flow_chances(((5, 1e-4, 0.1),))
    parts = demand.flow_chances(((2, 1e-4, 0.1), (3, 1e-4, 0.1)))
    for (q1, c1), (q2, c2) in zip(whole, parts, strict=True):
        assert math.isclose(q1, q2, rel_tol=1e-12) and math.isclose(c1, c2, rel_tol=1e-12)


def test_no_taps_draw_nothing():
    assert demand.flow_chances(()) == ((0.0, 1.0),)
    assert demand.flow_chances(((0, 1e-4, 0.5),)) == ((0.0, 1.0),)


def test_chances_match_going_through_every_state_of_every_tap():
    kinds = ((3, 2, 0.045), (2, 3, 0.02), (1, 10, 0.3))
    single = [(q, p) for n, q, p in kinds for _ in range(n)]
    expected = {}
    for states in product((0, 1), repeat=len(single)):
        share = math.prod(p if s else 1 - p for s, (_, p) in zip(states, single, strict=True))
        total = sum(q for s, (q, _) in zip(states, single, strict=True) if s)
        expected[total] = expected.get(total, 0.0) + share
    found = demand.flow_chances(tuple((n, q * 1e-4, p) for n, q, p in kinds))
    assert {round(q * 1e4) for q, _ in found} == set(expected)
    for flow, share in found:
        assert math.isclose(share, expected[round(flow * 1e4)], rel_tol=1e-12)


def test_when_water_runs_the_chances_add_up_to_one_again():
    found = demand.running(demand.flow_chances(((4, 1e-4, 0.05), (1, 5e-4, 0.1))))
    assert found[0][0] > 0
    assert math.isclose(sum(c for _, c in found), 1.0, rel_tol=1e-12)


def test_water_that_never_runs_has_no_moments_of_use():
    assert demand.running(((0.0, 1.0),)) == ()
    assert demand.quantile((), 0.99) == 0.0


@given(taps, st.floats(0.01, 0.99))
@ROUNDS
def test_a_quantile_is_the_first_flow_enough_for_its_share(kinds, share):
    chances = demand.flow_chances(kinds)
    found = demand.quantile(chances, share)
    assert demand.exceeded(chances, found) <= 1 - share + 1e-9
    less = [q for q, _ in chances if q < found]
    if less:
        assert demand.exceeded(chances, less[-1]) > 1 - share - 1e-9


@given(taps)
@ROUNDS
def test_moments_of_use_need_at_least_as_much_as_all_moments(kinds):
    chances = demand.flow_chances(kinds)
    assert demand.quantile(demand.running(chances), 0.99) >= demand.quantile(chances, 0.99)


@given(taps)
@ROUNDS
def test_no_more_than_everything_open_is_drawn(kinds):
    chances = demand.flow_chances(kinds)
    assert demand.exceeded(chances, demand.together((n, q) for n, q, _ in kinds)) == 0.0


@pytest.mark.parametrize("share", [0.0, 1.0, -1.0, math.nan])
def test_a_share_that_is_none_is_refused(share):
    with pytest.raises(RangeError):
        demand.quantile(((0.0, 1.0),), share)


def test_a_combination_is_the_product_of_its_kinds():
    wanted = ((4, 0.045, 2), (5, 0.02, 1))
    expected = demand.at_least(4, 0.045, 2) * demand.at_least(5, 0.02, 1)
    assert math.isclose(demand.combination_chance(wanted), expected)


def test_an_empty_combination_is_always_there():
    assert demand.combination_chance(()) == 1.0


def test_mean_open_counts_every_kind():
    assert math.isclose(demand.mean_open(((4, 1.0, 0.05), (2, 1.0, 0.1))), 0.4)


# The flow to plan for by chance ----------------------------------------------

GPM = practice.GPM
# wide apart, near one another and equal; never, rarely and mostly open
any_tap = st.tuples(
    st.integers(0, 12),
    st.sampled_from((1e-5, 1.2e-4, 1.26e-4, 1.26e-4, 3.8e-4, 6.3e-4, 3e-3)),
    st.sampled_from((0.0, 0.001, 0.01, 0.02, 0.045, 0.055, 0.1, 0.5, 1.0)),
)
any_taps = st.lists(any_tap, min_size=1, max_size=5)


def exact(kinds):
    """{flow in 1e-9 m3/s: chance}, every state of every kind gone through: nothing left out."""
    totals = {0: Fraction(1)}
    for number, flow, p in kinds:
        p, unit, found = Fraction(p), round(flow * 1e9), {}
        for have, before in totals.items():
            for k in range(number + 1):
                share = math.comb(number, k) * p**k * (1 - p) ** (number - k)
                found[have + k * unit] = found.get(have + k * unit, 0) + before * share
        totals = found
    return totals


def exact_quantile(totals, share):
    total = Fraction(0)
    for flow in sorted(totals):
        total += totals[flow]
        if total >= Fraction(share) - Fraction(1, 10**12):
            return flow * 1e-9
    return max(totals) * 1e-9


def test_two_hoses_plan_no_less_when_showers_are_added():
    # 76.0 L/min with four showers, 53.0 with six, when 99 of 100 moments of use were the rule
    plans = [demand.by_chance(((2, 10 * GPM, 0.05), (n, 2 * GPM, 0.045))) for n in range(21)]
    assert plans == sorted(plans)
    assert plans[4] == pytest.approx(20 * GPM)


@given(any_taps, st.integers(0, 4), st.integers(1, 5))
@settings(max_examples=400, deadline=None)
def test_more_outlets_never_lower_the_flow_to_plan_for(kinds, which, more):
    before = demand.by_chance(kinds)
    number, flow, p = kinds[which % len(kinds)]
    kinds = list(kinds)
    kinds[which % len(kinds)] = (number + more, flow, p)
    assert demand.by_chance(kinds) >= before * (1 - 1e-9)


@given(any_taps, any_tap)
@settings(max_examples=200, deadline=None)
def test_another_kind_of_outlet_never_lowers_the_flow_to_plan_for(kinds, another):
    assert demand.by_chance([*kinds, another]) >= demand.by_chance(kinds) * (1 - 1e-9)


@given(st.lists(st.integers(0, 60), min_size=6, max_size=6), st.integers(0, 5))
@settings(max_examples=25, deadline=None)
def test_more_outlets_never_lower_it_in_a_village_either(counts, which):
    # more different flows than are kept apart: on the grid, and across the change to it
    def plan(numbers):
        return demand.by_chance(
            tuple((n, f.flow, f.p) for n, f in zip(numbers, demand.FIXTURES, strict=True))
        )

    more = list(counts)
    more[which] += 3
    assert plan(more) >= plan(counts) * (1 - 1e-9)


@given(any_taps, st.floats(1.0, 3.0))
@ROUNDS
def test_a_busier_hour_never_lowers_the_flow_to_plan_for(kinds, busier):
    busy = [(n, q, min(1.0, p * busier)) for n, q, p in kinds]
    assert demand.by_chance(busy) >= demand.by_chance(kinds) * (1 - 1e-9)


@given(any_taps)
@ROUNDS
def test_one_of_the_largest_outlets_can_always_run(kinds):
    used = [q for n, q, p in kinds if n and p > 1e-9]
    assert demand.by_chance(kinds) >= max(used, default=0.0) * (1 - 1e-9)


@given(any_taps)
@ROUNDS
def test_the_flow_by_chance_is_enough_in_99_of_100_moments(kinds):
    assert demand.exceeded(demand.flow_chances(kinds), demand.by_chance(kinds)) <= 0.01 + 1e-9


@given(st.lists(st.tuples(st.integers(0, 4), any_tap), max_size=4))
@ROUNDS
def test_flows_by_chance_are_those_of_an_exact_count(drawn):
    kinds = [(number, flow, p) for number, (_, flow, p) in drawn]
    totals = exact(kinds)
    found = demand.enough_for_all(kinds)
    assert found == pytest.approx(exact_quantile(totals, 0.99), rel=1e-8, abs=1e-12)
    for kind in kinds:
        alone = exact([kind])
        never = alone.pop(0)
        if never < 1:
            alone = {flow: share / (1 - never) for flow, share in alone.items()}
            expected = exact_quantile(alone, 0.99)
            assert demand.enough_for_one(kind) == pytest.approx(expected, rel=1e-8)


def test_a_flow_much_smaller_than_the_rest_is_not_lost():
    # under 1/8000 of everything open it was taken for no flow at all: 361 L/min for 540
    kinds = ((60, 1e-5, 0.045), (30, 3e-3, 0.0001), (6, 3e-3, 0.0002))
    chances = demand.flow_chances(kinds)
    assert demand.together((n, q) for n, q, _ in kinds) / 8000 > 1e-5
    totals = exact(kinds)
    assert chances[0] == (0.0, pytest.approx(float(totals[0]), rel=1e-9))
    never = totals.pop(0)
    used = {flow: share / (1 - never) for flow, share in totals.items()}
    expected = exact_quantile(used, 0.99)
    assert demand.quantile(demand.running(chances), 0.99) == pytest.approx(expected, rel=1e-8)


def test_a_village_of_every_kind_is_never_under_an_exact_count_and_little_over():
    counts, flows, odds = (
        (12, 14, 9, 11, 6, 7),
        (75, 76, 113, 131, 379, 227),
        (45, 20, 10, 55, 50, 30),
    )
    kinds = [(n, q * 1e-6, p * 1e-3) for n, q, p in zip(counts, flows, odds, strict=True)]
    grid = np.ones(1)
    for number, flow, p in zip(counts, flows, odds, strict=True):
        one = np.zeros(number * flow + 1)
        one[::flow] = demand.binomial(number, p * 1e-3)
        grid = np.convolve(grid, one)
    expected = int(np.searchsorted(np.cumsum(grid), 0.99)) * 1e-6
    everything = demand.together((n, q) for n, q, _ in kinds)
    found = demand.enough_for_all(kinds)
    assert expected * (1 - 1e-9) <= found <= expected + 6 / 4000 * everything


# Fixture units ---------------------------------------------------------------


@given(st.floats(0, 1000), st.floats(0, 1000))
@ROUNDS
def test_more_fixture_units_never_ask_for_less(one, other):
    low, high = sorted((one, other))
    assert demand.fixture_unit_flow(low) <= demand.fixture_unit_flow(high) * (1 + 1e-12)


def test_no_fixture_units_ask_for_nothing():
    assert demand.fixture_unit_flow(0) == 0.0


@pytest.mark.parametrize("units", [-1, 1001, math.nan])
def test_fixture_units_beyond_the_table_are_refused_with_what_is_allowed(units):
    with pytest.raises(RangeError, match="0 to 1000"):
        demand.fixture_unit_flow(units)


# Beds ------------------------------------------------------------------------


def test_half_the_efficiency_takes_twice_the_water():
    assert math.isclose(demand.irrigation(50, 0.004, 0.4), 2 * demand.irrigation(50, 0.004, 0.8))


@pytest.mark.parametrize("bad", [(-1, 0.004, 0.9), (50, 0.06, 0.9), (50, 0.004, 0.2)])
def test_beds_out_of_range_are_refused(bad):
    with pytest.raises(RangeError):
        demand.irrigation(*bad)


# One place for flows ----------------------------------------------------------


@pytest.mark.parametrize("fixture", demand.FIXTURES)
def test_an_outlets_flow_is_that_of_the_table_of_outlets(fixture):
    assert fixture.flow == practice.OUTLET_BY_KEY[fixture.outlet].flow


# The lists -------------------------------------------------------------------


def test_every_kind_of_tap_and_animal_names_its_source():
    listed = [*demand.FIXTURES, *demand.ANIMALS]
    sources = ("common practice", "our choice", "(20", "Handbook")
    assert all(any(word in x.source for word in sources) for x in listed)
    assert len({x.key for x in listed}) == len(listed)


def test_a_better_service_uses_more():
    each = [amount * DAY for _, amount, _ in demand.SERVICE]
    assert each == sorted(each)
