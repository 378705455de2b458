"""Seeded years of days: the same from the same, the given months in the mean, runs as real ones."""

import hashlib
import math
from statistics import fmean, pstdev

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError, RangeError
from calc.sun import days
from tests.sun.years import MONTH_OF, daily, latitude, monthly, worst_week

KWH = 3.6e6
HERE = math.radians(31.77)
MEANS = [one * KWH for one in (3.5, 4.5, 5.9, 7.0, 7.7, 7.7, 6.9, 6.3, 5.6, 4.9, 3.9, 3.3)]


def shares_of(shares, place):
    above = monthly(days.outside(place))
    return [one * most for one, most in zip(shares, above, strict=True)]


def test_the_same_inputs_give_the_same_years():
    again = days.years([float(f"{one:.17g}") for one in MEANS], HERE)
    assert days.years(MEANS, HERE) == again


def test_another_seed_gives_other_years():
    assert days.years(MEANS, HERE, seed=1) != days.years(MEANS, HERE)


def test_the_last_bit_of_the_arithmetic_changes_no_day(monkeypatch):
    """Another machine's ``log`` and ``erf`` may differ in the last bit: the years may not."""
    before = days.years(MEANS, HERE)
    log, erf = math.log, math.erf
    monkeypatch.setattr(days.math, "log", lambda x: math.nextafter(log(x), math.inf))
    monkeypatch.setattr(days.math, "erf", lambda x: math.nextafter(erf(x), -math.inf))
    after = days.years(MEANS, HERE)
    assert hashlib.sha256(repr(after).encode()).digest() == (
        hashlib.sha256(repr(before).encode()).digest()
    )


# from a foggy coast to the Atacama; winters of high latitudes and both hemispheres
@settings(max_examples=30, deadline=None)
@given(
    st.lists(st.floats(0.12, 0.82), min_size=12, max_size=12),
    st.integers(-89, 89),
    st.integers(0, 50),
)
def test_the_mean_of_twenty_years_is_the_given_months(shares, degrees, seed):
    place = math.radians(degrees)
    means = shares_of(shares, place)
    made = days.years(means, place, seed)
    mean = monthly([fmean(one) for one in zip(*made, strict=True)])
    # 0.5 % is what is asked; a dark month's days are rounded to 100 J/m2, hence 50 J/m2
    assert mean == pytest.approx(means, rel=0.005, abs=50.0)


def test_single_years_vary():
    january = [monthly(year)[0] for year in days.years(MEANS, HERE)]
    assert pstdev(january) > 0.02 * MEANS[0]


@pytest.mark.parametrize("name", ["el-paso", "tucson"])
@pytest.mark.parametrize("seed", [0, 1, 2])
def test_the_worst_week_of_a_dry_place_is_as_dull_as_the_real_one(name, seed):
    means = monthly(daily(name))
    made = days.years(means, latitude(name), seed)
    # 0.10 of the month's mean: what one typical year can tell of twenty (DECISIONS)
    assert fmean(worst_week(year, means) for year in made) == pytest.approx(
        worst_week(daily(name), means), abs=0.10
    )


def test_in_the_maritime_tropics_the_worst_week_is_at_least_as_dull():
    means = monthly(daily("honolulu"))
    made = days.years(means, latitude("honolulu"))
    assert fmean(worst_week(year, means) for year in made) <= worst_week(daily("honolulu"), means)


def test_a_day_leans_on_the_day_before():
    scores = days.normal_scores(7, 20_000)
    pairs = fmean(a * b for a, b in zip(scores, scores[1:], strict=False))
    # 4 standard errors of 20,000 numbers: 4 / sqrt(20000) = 0.03
    assert fmean(scores) == pytest.approx(0.0, abs=0.04)
    assert pairs == pytest.approx(days.LEAN, abs=0.03)
    assert pstdev(scores) == pytest.approx(1.0, abs=0.03)


@settings(deadline=None)
@given(st.floats(0.06, 0.85))
def test_the_distribution_has_the_mean_it_was_made_for(mean):
    high = days.clearest_of_month(mean)
    rate = days.steepness(mean, days.DULLEST, high)
    steps = 4000
    found = fmean(
        days.clearness_at((one + 0.5) / steps, rate, days.DULLEST, high) for one in range(steps)
    )
    assert found == pytest.approx(mean, abs=2e-4)  # the sum of 4,000 steps


@given(st.floats(0.0, 0.85), st.floats(0.0, 0.85))
def test_the_clearest_day_is_clearer_the_clearer_the_month(one, other):
    low, high = sorted((one, other))
    # the fit's last term makes a dent of under 0.01 near 0.8
    assert days.clearest_of_month(low) <= days.clearest_of_month(high) + 0.01
    assert days.clearest_of_month(high) >= high


def test_no_day_has_more_than_reaches_the_ground():
    above = days.outside(HERE)
    for year in days.years(shares_of([0.8] * 12, HERE), HERE):
        assert all(0 <= day <= 0.9 * most for day, most in zip(year, above, strict=True))


@pytest.mark.parametrize("degrees", [-90, -80, 70, 90])
def test_polar_night_is_dark_and_its_day_is_not(degrees):
    place = math.radians(degrees)
    year = days.years(shares_of([0.5] * 12, place), place)[0]
    dark, light = (15, 172) if degrees > 0 else (172, 15)
    assert year[dark] == 0 < year[light]


def test_a_latitude_of_95_is_refused():
    with pytest.raises(RangeError, match="latitude"):
        days.years(MEANS, math.radians(95))


@pytest.mark.parametrize(
    "means, words",
    [
        ([*MEANS[:6], None, *MEANS[7:]], "July is missing"),
        (MEANS[:11], "there are 11"),
        ([*MEANS[:11], math.nan], "December is not"),
        ([-1.0, *MEANS[1:]], "January is not"),
        ([9 * KWH, *MEANS[1:]], "January has more sunlight than can reach the ground"),
    ],
)
def test_means_that_cannot_be_are_named_by_their_month(means, words):
    with pytest.raises(InputError, match=words):
        days.years(means, HERE)


def test_there_are_365_days_in_every_year():
    assert {len(year) for year in days.years(MEANS, HERE, count=3)} == {365}
    assert len(MONTH_OF) == 365
