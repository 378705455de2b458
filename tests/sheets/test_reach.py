"""Will it reach: against the trade's rules, and the cures it works out."""

import math
import re
from functools import partial

import pytest

from calc.page.form import State, work
from calc.sheets.reach.case import HOSE, SHOWER
from calc.sheets.reach.sheet import SHEET
from calc.units import FOOT, PSI
from tests.sheets import asking
from tests.sheets.asking import figure

answer = partial(asking.answer, SHEET)


RUNNING, STANDING = "Pressure at the top, running", "Standing, all taps shut"


def test_50_ft_of_climb_on_about_100_ft_of_head_leaves_20_to_30_psi():
    # common practice, no source
    found = answer("us", pressure="45 psi", climb="50 ft", length="100 ft", flow="4 gpm")
    assert 20 * PSI <= figure(found, RUNNING) <= 30 * PSI
    assert figure(found, "Highest this pressure lifts") == pytest.approx(100 * FOOT, rel=0.05)


def test_nothing_running_loses_nothing():
    found = answer(flow="0")
    assert figure(found, RUNNING) == figure(found, STANDING)


def test_the_pressure_it_asks_for_is_just_enough():
    found = answer(climb="28 m")
    needed = 3.5e5 + 30 * PSI - figure(found, RUNNING)
    assert "would have to hold" in found.verdict.sentence
    cured = answer(climb="28 m", pressure=f"{needed!r} Pa")
    assert figure(cured, RUNNING) == pytest.approx(30 * PSI, rel=1e-9)


def test_the_pipe_it_names_really_cures():
    texts = {"flow": "35 L/min", "most": "60 L/min"}
    found = answer(**texts)
    named = re.search(r"(\d+) mm PE 100 SDR 11 would leave", found.verdict.sentence)[1]
    assert found.verdict.level != "good"
    assert answer(**texts, **{"pe100-sdr11": named}).verdict.level == "good"
    smaller = {"50": "40", "63": "50"}[named]
    assert answer(**texts, **{"pe100-sdr11": smaller}).verdict.level != "good"


def test_too_high_is_said_with_the_height_it_reaches():
    found = answer(climb="40 m")
    assert found.verdict.level == "bad" and "35.7" in found.verdict.sentence


def test_a_pump_asked_for_too_much_is_said():
    found = answer(flow="53 L/min")
    assert "cannot keep up" in found.verdict.sentence


def test_the_flow_it_says_arrives_is_the_most_that_does():
    found = answer(flow="90 L/min", most="95 L/min", length="400 m")
    assert "At most" in found.verdict.sentence
    number = float(found.verdict.sentence.split("At most ")[1].split("\u00a0")[0])
    assert figure(
        answer(flow=f"{number} L/min", most="95 L/min", length="400 m"), RUNNING
    ) == pytest.approx(0.0, abs=2e3)


def test_a_pipe_under_more_than_its_rating_is_stopped():
    found = answer(climb="-150 m", pressure="3 bar")
    assert any(w.level == "stop" and "rated" in w.text for w in found.warnings)


def test_hot_water_past_a_pipes_limit_is_refused_in_words():
    errors = work(SHEET, State(texts={"water": "55 °C"})).errors
    assert any("hotter" in message for message in errors.values())


def test_the_usual_taps_are_the_trades():
    # common practice, no source: shower about 2 gpm, hose about 10 gpm
    assert math.isclose(HOSE / SHOWER, 5.0)


@pytest.mark.parametrize(
    "worse", [{"climb": "13 m"}, {"length": "200 m"}, {"flow": "17 L/min"}, {"extra": "50"}]
)
def test_each_burden_lowers_what_is_left(worse):
    assert figure(answer(**worse), RUNNING) < figure(answer(), RUNNING)
