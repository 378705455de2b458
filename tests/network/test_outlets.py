"""Outlets: what each law promises."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.network.outlets import (
    CompensatingDripper,
    FixedFlow,
    LimitedShower,
    Orifice,
    Outlet,
    held_flow_and_slope,
    orifice_flow_and_slope,
)

LPM = 1e-3 / 60
LAWS = [
    Orifice(12 * LPM, 1e5),
    FixedFlow(5 * LPM),
    LimitedShower(12 * LPM, 1.5e5, 9 * LPM),
    CompensatingDripper(2e-3 / 3600, 1e5, 4e5),
]
laws = st.sampled_from(LAWS)
pressures = st.floats(-1e5, 1e6)


def test_an_orifice_gives_its_rated_flow_at_its_rated_pressure():
    assert Orifice(12 * LPM, 1e5).flow_and_slope(1e5)[0] == 12 * LPM


def test_four_times_the_pressure_gives_twice_the_flow():
    assert math.isclose(orifice_flow_and_slope(4e5, 1e-4, 1e5)[0], 2e-4, rel_tol=1e-14)


@pytest.mark.parametrize("law", LAWS)
def test_nothing_runs_without_pressure(law):
    assert law.flow_and_slope(0.0) == (0.0, 0.0)


@given(laws, st.floats(-1e5, 0.0))
@settings(max_examples=60, deadline=None)
def test_no_outlet_sucks_water_in(law, pressure):
    assert law.flow_and_slope(pressure)[0] == 0.0


@given(laws, pressures, pressures)
@settings(max_examples=100, deadline=None)
def test_more_pressure_never_gives_less_flow(law, one, other):
    low, high = sorted((one, other))
    assert law.flow_and_slope(low)[0] <= law.flow_and_slope(high)[0]


@given(laws, st.floats(10.0, 9e5))
@settings(max_examples=100, deadline=None)
def test_slopes_are_those_of_finite_differences(law, pressure):
    step = 1e-5 * pressure
    bends = (law.least_pa, 1e-4 * law.pressure_pa, 1e-4 * law.least_pa)
    if any(abs(pressure - bend) <= 2 * step for bend in bends):
        return
    rise = law.flow_and_slope(pressure + step)[0] - law.flow_and_slope(pressure - step)[0]
    slope = law.flow_and_slope(pressure)[1]
    assert math.isclose(rise / (2 * step), slope, rel_tol=1e-6, abs_tol=1e-17)


def test_a_limited_shower_holds_its_limit_from_the_pressure_it_names():
    shower = LAWS[2]
    assert math.isclose(shower.least_pa, 1.5e5 * (9 / 12) ** 2, rel_tol=1e-14)
    assert shower.flow_and_slope(shower.least_pa)[0] == 9 * LPM
    assert shower.flow_and_slope(5e5) == (9 * LPM, 0.0)


def test_below_its_least_pressure_a_held_flow_falls_as_an_orifice():
    assert math.isclose(held_flow_and_slope(0.25e5, 1e-4, 1e5)[0], 0.5e-4, rel_tol=1e-14)


def test_a_dripper_drips_the_same_from_least_to_most_pressure():
    dripper = LAWS[3]
    assert {dripper.flow_and_slope(p)[0] for p in (1e5, 2.5e5, 4e5)} == {2e-3 / 3600}


def test_so_many_outlets_give_so_many_times_the_flow():
    one, many = (Outlet("drip", "bed", LAWS[3], count) for count in (1, 300))
    assert many.flow_and_slope(2e5)[0] == 300 * one.flow_and_slope(2e5)[0]


def test_a_user_may_be_content_with_less_than_full_duty():
    shower = Outlet("shower", "cabin", LAWS[2], wanted_pa=0.5e5)
    assert shower.full_m3s < 9 * LPM


@pytest.mark.parametrize("make, words", [
    (lambda: Orifice(0.0, 1e5), "above zero"),
    (lambda: Orifice(1e-4, -1.0), "pressure"),
    (lambda: LimitedShower(1e-4, 1e5, 0.0), "limit"),
    (lambda: CompensatingDripper(1e-6, 2e5, 1e5), "highest pressure must be above"),
    (lambda: Outlet("t", "a", LAWS[0], count=0), "whole number"),
    (lambda: Orifice(math.nan, 1e5), "flow"),
])  # fmt: skip
def test_figures_that_cannot_be_are_refused_in_words(make, words):
    with pytest.raises(InputError, match=words):
        make()
