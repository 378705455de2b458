"""Storage tank sheet with a slow well: what it lets be pumped, and fixes that fix."""

import math
import re
from functools import partial

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets.tank.sheet import SHEET
from calc.units import LITRE
from tests.sheets import asking
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
keys = partial(asking.found, SHEET)

SLOW = {"gives": "12 L/min", "well": "2 L/min"}
CASES = (
    SLOW,
    {**SLOW, "stored": "700 L"},
    {**SLOW, "well": "0.5 L/min", "stored": "300 L"},
    {**SLOW, "well": "0", "stored": "900 L"},
    {"gives": "0.4 L/min", "well": "0.3 L/min"},
    {"gives": "0", "well": "3 L/min"},
)


def comes_in(**texts):
    found = answer(**texts).figures
    return next(f.value for f in found if f.label == "Comes in on a fair day")


@pytest.mark.parametrize("texts", CASES)
def test_every_step_gives_its_result(texts):
    check_working(answer(**texts))


def test_a_well_faster_than_the_pump_changes_nothing():
    assert answer(well="60 L/min").verdict == answer().verdict


def test_a_slow_well_lets_its_yield_be_pumped_while_the_pump_runs():
    assert math.isclose(comes_in(**SLOW), 2 * 60 * 6 * LITRE)


def test_water_that_stands_in_the_well_adds_itself_once_a_day():
    assert math.isclose(comes_in(**SLOW, stored="700 L"), (2 * 60 * 6 + 700) * LITRE)


def test_no_more_gathers_in_a_well_than_flows_in_while_the_pump_rests():
    assert math.isclose(comes_in(**SLOW, stored="50000 L"), 2 * 60 * 24 * LITRE)


def test_where_the_hours_hold_a_well_back_well_and_hours_are_named():
    short = {"use": "1000 L/day", "gives": "30 L/min", "well": "3 L/min", "hours": "2"}
    sentence = answer(**short).verdict.sentence.replace("\u00a0", " ")
    assert "only 360 L comes from this well in 2 hours;" in sentence
    more = {"use": "5000 L/day", "gives": "60 L/min", "stored": "9000 L"}
    all_day = answer(**{**short, **more}).verdict.sentence
    assert "from this well;" in all_day  # what stands in it makes the hours no matter


def test_the_hours_it_names_do():
    short = answer(**SLOW)
    assert short.verdict.level == "bad"
    hours = re.search(r"pump ([\d.]+) hours", short.fixes[0].text)[1]
    assert answer(**SLOW, hours=hours).verdict.level == "good"
    assert answer(**SLOW, hours=f"{float(hours) - 0.2}").verdict.level != "good"


def test_the_yield_it_names_does_when_pumped_day_and_night():
    texts = {**SLOW, "well": "0.5 L/min"}
    fix = answer(**texts).fixes[0].text
    flow = re.search(r"Find a well that can give ([\d.]+)", fix)[1]
    assert answer(gives="12 L/min", well=f"{flow} L/min", hours="24").verdict.level == "good"


def test_a_pump_too_small_as_well_is_named_beside_the_well():
    fix = answer(gives="0.4 L/min", well="0.3 L/min").fixes[0].text
    assert "Find a well and a pump that can give" in fix


def test_a_pump_that_outruns_its_well_is_told_to_be_guarded():
    assert keys(**SLOW, stored="700 L")["dry-run"] == "note"
    assert "dry-run" not in keys(well="60 L/min")


def test_a_source_that_is_no_well_needs_no_well_fields():
    assert math.isclose(comes_in(use="100 L/day"), 6 * 60 * 6 * LITRE)


def test_the_use_is_met_hour_by_hour_with_a_slow_well():
    texts = {**SLOW, "stored": "700 L", "bridge": "0"}
    size = next(f.value for f in answer(**texts).figures if f.label == "Tank needed")
    said = {w.text for w in answer(**texts, own=f"{size} m³").drawings[0].shapes
            if hasattr(w, "text")}  # fmt: skip
    assert "empty" not in said
    small = answer(**texts, own=f"{0.98 * size} m³")
    assert small.verdict.level == "bad"


@pytest.mark.parametrize("key, text", [("well", "-1 L/min"), ("stored", "1e9 L"), ("well", "3 m")])
def test_bad_inputs_are_said_at_their_field(key, text):
    outcome = work(SHEET, State(texts={key: text}))
    assert outcome.answer is None and outcome.errors[key]
