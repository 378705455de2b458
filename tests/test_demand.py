"""Demand: chances of taps, total flows, fixture units and water for beds."""

import math
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import demand
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
    found = demand.mean_flow(demand.flow_chances(kinds))
    everything = demand.together((n, q) for n, q, _ in kinds)
    # flows nearer than 1/4000 of everything open are taken as the larger; chances of 1e-15 and
    # less are left out, with at most 100 of them here
    lost = 1e-13 * everything
    assert expected - lost <= found <= expected + everything / demand.BINS + lost


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


# The lists -------------------------------------------------------------------


def test_every_kind_of_tap_and_animal_names_its_source():
    listed = [*demand.FIXTURES, *demand.ANIMALS]
    assert all(("common practice" in x.source) or ("(20" in x.source) for x in listed)
    assert len({x.key for x in listed}) == len(listed)


def test_a_better_service_uses_more():
    each = [amount * DAY for _, amount, _ in demand.SERVICE]
    assert each == sorted(each)
