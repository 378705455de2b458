"""Pressure and head: against the trade's rules and closed forms."""

import math

import pytest

from calc.sheets.form import State, work
from calc.sheets.pressure import SHEET
from calc.units import FOOT, PSI


def figures(state):
    outcome = work(SHEET, state)
    assert outcome.errors == {}, outcome.errors
    return {figure.label: figure.value for figure in outcome.answer.figures}


HEAD = "Head: height of standing water it holds"
LEFT = "Left at the outlet, nothing running"


def test_45_psi_is_about_100_ft_of_head():
    # common practice, no source: "about 100 ft", here within 5 %
    head = figures(State("us", {"known": "45 psi"}))[HEAD]
    assert math.isclose(head, 100 * FOOT, rel_tol=0.05)


def test_50_ft_of_climb_on_45_psi_leaves_20_to_30_psi():
    # common practice, no source
    left = figures(State("us", {"known": "45 psi", "climb": "50 ft"}))[LEFT]
    assert 20 * PSI <= left <= 30 * PSI


def test_one_psi_is_2_31_ft_of_water_at_60_degrees_f():
    # 2.31 ft per psi: Cameron Hydraulic Data, conversion of head, from memory
    head = figures(State("us", {"known": "1 psi", "water": "60 °F", "climb": "0"}))[HEAD]
    assert math.isclose(head / FOOT, 2.31, rel_tol=1e-3)


def test_head_typed_as_head_comes_back_whatever_the_temperature():
    for temperature in ("5 °C", "60 °C"):
        head = figures(State(texts={"known": "25 m water", "water": temperature}))[HEAD]
        assert math.isclose(head, 25.0, rel_tol=1e-12)


def test_absolute_less_air_is_gauge():
    gauge = figures(State(texts={"known": "2 bar", "kind": "gauge", "altitude": "1500 m"}))
    absolute = gauge["Absolute pressure"]
    texts = {"known": f"{absolute!r} Pa", "kind": "absolute", "altitude": "1500 m"}
    assert math.isclose(figures(State(texts=texts))["Gauge pressure"], 2e5, rel_tol=1e-9)


def test_a_vacuum_is_refused_at_its_field():
    errors = work(SHEET, State(texts={"known": "0.5 bar", "kind": "absolute"})).errors
    assert "vacuum" in errors["known"]


def test_too_high_a_climb_is_said_plainly():
    answer = work(SHEET, State(texts={"climb": "40 m"})).answer
    assert answer.verdict.level == "bad" and "no water arrives" in answer.verdict.sentence


@pytest.mark.parametrize("known, climb", [("1 bar", "5 m"), ("45 psi", "90 ft"), ("0 bar", "-5 m")])
def test_the_highest_outlet_keeps_just_the_pressure_wanted(known, climb):
    texts = {"known": known, "climb": climb, "wanted": "0.5 bar"}
    highest = figures(State(texts=texts))["Highest outlet that keeps the pressure wanted"]
    left = figures(State(texts={**texts, "climb": f"{highest!r} m"}))[LEFT]
    assert math.isclose(left, 0.5e5, rel_tol=1e-9)


def test_the_profile_ends_where_the_water_stops():
    table = work(SHEET, State()).answer.tables[1]
    assert table.rows[-1][1] == 0.0
    assert all(a[1] > b[1] for a, b in zip(table.rows, table.rows[1:], strict=False))
