"""Designs: the sweep, its frontier, one more of each, and the hand sum beside the year."""

import dataclasses
import itertools

import pytest

from calc.errors import RangeError
from calc.power import design
from calc.power.array import Array, usual_module
from calc.power.year import Weather, simulate
from calc.sun.days import MONTH_DAYS
from tests.power.places import HOME, WH, system, weather

STRINGS, ENERGIES, TANKS = (1, 2), (400.0 * WH, 1200.0 * WH), (0.0, 2.0)
EXACT = 1e-9  # relative: sums of a few rounded products


@pytest.fixture(scope="module")
def tried():
    return tuple(design.sweep(weather(), HOME, system(), STRINGS, ENERGIES, TANKS, 3.0))


def test_every_design_is_tried_once_and_its_year_is_its_own(tried):
    assert len({one.size for one in tried}) == 8
    for one in tried[::3]:
        assert one.year == simulate(weather(), one.system, HOME)
        assert one.meets == (one.year.short <= 3.0)
    assert {one.meets for one in tried} == {True, False}


def test_the_caller_may_stop_after_any_design():
    several = design.sweep(weather(), HOME, system(), range(1, 100), ENERGIES, TANKS)
    assert len(list(itertools.islice(several, 2))) == 2


def test_a_target_that_cannot_be_is_refused_before_the_first_design():
    with pytest.raises(RangeError) as caught:
        design.sweep(weather(), HOME, system(), STRINGS, ENERGIES, TANKS, 101.0)
    assert caught.value.name == "most_short"


def test_nothing_on_the_frontier_can_be_left_out(tried):
    best = design.frontier(tried)
    assert best and all(one.meets for one in best)
    for one in best:
        for other in tried:
            less = all(a <= b for a, b in zip(other.size, one.size, strict=True))
            assert not (less and other.size != one.size and other.meets)


def test_what_meets_the_target_is_on_the_frontier_or_above_it(tried):
    best = design.frontier(tried)
    for one in tried:
        if one.meets:
            assert any(all(a <= b for a, b in zip(low.size, one.size, strict=True)) for low in best)


def test_no_design_has_no_frontier():
    assert design.frontier(()) == ()


def test_one_more_is_the_difference_of_two_years():
    one = system(1, 500.0)
    now = simulate(weather(), one, HOME)
    panel, battery, tank = design.one_more(weather(), HOME, one, 800.0 * WH, 2.0)
    assert [each.what for each in (panel, battery, tank)] == ["panel", "battery", "tank"]
    assert panel.tried.size == (2, 500.0 * WH, 0.0) and tank.tried.tank == 2.0
    larger = simulate(weather(), design.with_size(one, 1, 1300.0 * WH, 0.0), HOME)
    assert battery.days == now.short_days - larger.short_days
    assert battery.less_missed == pytest.approx(now.unserved - larger.unserved, rel=EXACT)
    assert battery.days > 0 and tank.days > 0


def test_the_hand_sum_is_that_of_the_month_that_asks_for_most():
    hand = design.by_hand(weather(), HOME, system())
    hours = design.sun_hours(weather())
    assert hand.month == min(range(12), key=hours.__getitem__)  # the same use all year
    assert hand.panels * 400.0 >= hand.panels_w > (hand.panels - 1) * 400.0
    twice = design.by_hand(weather(), HOME, system(), days=6.0)
    assert twice.energy_j == pytest.approx(2 * hand.energy_j, rel=EXACT)


def test_the_comparison_says_what_the_hand_left_out():
    told = design.compare(weather(), HOME, system())
    assert 0 < told.heat < 0.2 and 0 < told.by_day < 1 and 0 <= told.spilled < 1
    assert told.dull_days >= 1 and told.rate <= 1
    assert told.year.asked == pytest.approx(365 * 1.8, rel=EXACT)


def test_the_longest_dull_run_is_counted():
    nine = [200.0] * 24 * 5 + [10.0] * 24 * 3 + [200.0] * 24
    flat = Weather((nine * 41)[:8760], [300.0] * 8760, [300.0] * 8760)
    assert design.dull_run(flat, 2.0) == 3
    assert design.dull_run(flat, 0.1) == 0 and design.dull_run(flat, 10.0) == 365


def test_without_sun_the_hand_sum_is_refused_by_name():
    dark = Weather([0.0] * 8760, [300.0] * 8760, [300.0] * 8760)
    with pytest.raises(RangeError) as caught:
        design.by_hand(dark, HOME, system())
    assert caught.value.name == "sun_h"


def test_the_hand_sum_is_energy_over_sun_hours_and_days_over_what_is_drawn():
    one, demand = system(), dataclasses.replace(HOME, by_month=(0.5, *(1.8,) * 10, 0.9))
    hand = design.by_hand(weather(), demand, one, days=2.0)
    daily = demand.by_month[hand.month] / 40e-3 * 60 * 450 + 86400 * 7  # pump; 5 W and 2 W at rest
    share = 0.97 * 0.98 * 0.97 * 0.95 * 0.97 * 0.97  # dust, mismatch, wires, MPPT, in and out
    assert hand.daily_j == pytest.approx(daily, rel=EXACT)
    assert hand.panels_w == pytest.approx(daily / 3600 / (hand.sun_h * share), rel=EXACT)
    assert hand.energy_j == pytest.approx(daily * 2 / (0.8 * 0.97), rel=EXACT)


def test_the_hand_sum_s_month_is_that_of_most_panels_not_of_least_sun():
    """December is dull, but little is used then."""
    demand = dataclasses.replace(HOME, by_month=(0.1, *(1.8,) * 10, 0.1))
    hand = design.by_hand(weather(), demand, system())
    hours = design.sun_hours(weather())
    assert hand.month == min(range(1, 11), key=hours.__getitem__)
    assert hours[hand.month] > min(hours)


def test_whole_strings_are_counted():
    one = dataclasses.replace(system(), array=Array(usual_module(100.0), 3, 1))
    hand = design.by_hand(weather(), HOME, one)
    assert 3 * hand.strings >= hand.panels > 3 * (hand.strings - 1)


def test_the_year_beside_the_hand_sum_is_that_of_its_design():
    one = dataclasses.replace(system(), array=Array(usual_module(60.0), 1, 1))
    told = design.compare(weather(), HOME, one)
    made = design.with_size(one, told.hand.strings, told.hand.energy_j, 0.0)
    assert told.hand.strings > 3 and told.year == simulate(weather(), made, HOME)
    assert told.spilled == pytest.approx(told.year.spilled / told.year.array, rel=EXACT)
    sun, lit = weather().plane, 0.0
    for ask, light in zip(HOME.hours, sun, strict=True):
        lit += ask if light > 0 else 0.0
    assert told.by_day == pytest.approx(lit / (365 * 1.8), rel=EXACT)
    rows = zip(sun, weather().module_k, strict=True)
    warm = sum(light * 0.004 * (kelvin - 298.15) for light, kelvin in rows)
    assert told.heat == pytest.approx(warm / sum(sun), rel=EXACT)
    assert told.dull_days == design.dull_run(weather(), 0.5 * told.hand.sun_h)


def test_sun_hours_are_those_of_each_month():
    flat = [float(month) for month, days in enumerate(MONTH_DAYS, 1) for _ in range(24 * days)]
    hours = design.sun_hours(Weather(flat, [300.0] * 8760, [300.0] * 8760))
    assert hours == pytest.approx([24 * month / 1000 for month in range(1, 13)], rel=EXACT)


def test_a_dull_day_is_its_own_24_hours():
    early = Weather([2000.0, *[0.0] * 23] * 365, [300.0] * 8760, [300.0] * 8760)
    assert design.dull_run(early, 2.5) == 365 and design.dull_run(early, 1.5) == 0
