"""The water-hammer sheet where the pump stops: judged from its figures, its fixes worked anew."""

import re
from dataclasses import replace
from functools import partial

import pytest

from calc import practice
from calc.page.form import work
from calc.page.state import State
from calc.sheets.surge.sheet import SHEET
from calc.units import QUANTITIES
from tests.sheets import asking, awkward
from tests.sheets.asking import figure
from tests.sheets.test_surge import keys, said, table_rating
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
trip = partial(asking.answer, SHEET, event="trip")

GENTLE = {"flow": "4 L/min", "crest": "10 m"}
PEAK, PUMP, CREST = (
    "Maximum pressure", "Lowest pressure at the pump", "Lowest pressure at the highest point",
)  # fmt: skip
ENOUGH = "Air of a vessel that is enough"
MANY = [
    (state, work(SHEET, replace(state, texts={**state.texts, "event": "trip"})))
    for state in awkward.states(SHEET, 300, seed=9)
]
WORKED = [(state, outcome.answer) for state, outcome in MANY if outcome.answer]


def figures(found):
    return {one.label: one.value for one in found.figures}


def lowest(found):
    told = figures(found)
    return min(told[PUMP], told.get(CREST, told[PUMP]))


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("texts", [{}, GENTLE, {"vessel": "1 L", "crest": "20 m"}, {"kind": "own"}])
def test_the_working_gives_the_figures(system, texts):
    check_working(trip(system, **texts))


def test_the_valves_answer_is_as_before_the_question_of_the_pump():
    plain, asked = answer(), answer(event="valve", lift="90 m", crest="80 m", vessel="5 L")
    assert plain.figures == asked.figures and plain.verdict == asked.verdict


def test_a_gentle_flow_works():
    found = trip(**GENTLE)
    assert found.verdict.word == "Works" and found.fixes == ()


def test_the_fall_and_the_rise_are_joukowskys():
    found = trip(**GENTLE)
    sudden = next(one.result.value for one in found.steps if one.title.startswith("Fall as"))
    rest = next(one.result.value for one in found.steps if one.title.endswith("at rest"))
    assert figure(found, PEAK) == pytest.approx(rest + sudden)
    assert figure(found, PUMP) == pytest.approx(rest - sudden)


def test_the_closing_time_of_a_valve_does_not_count():
    quick, slow = trip(closing="0 s", **GENTLE), trip(closing="9 min", **GENTLE)
    assert quick.figures == slow.figures


# Monotone ---------------------------------------------------------------------------------------


def test_more_flow_never_falls_less_or_peaks_lower():
    found = [trip(flow=f"{f} L/min", crest="10 m") for f in (2, 4, 8, 16, 32)]
    assert [lowest(one) for one in found] == sorted((lowest(one) for one in found), reverse=True)
    peaks = [figure(one, PEAK) for one in found]
    assert peaks == sorted(peaks)


def test_a_higher_crest_never_has_more_pressure():
    found = [figure(trip(flow="4 L/min", crest=f"{m} m"), CREST) for m in (0, 5, 15, 29, 45)]
    assert found == sorted(found, reverse=True)


def test_a_larger_vessel_never_lets_the_pressure_fall_or_rise_further():
    found = [trip(crest="10 m", vessel=f"{v} L") for v in (0.3, 1, 3, 10, 100)]
    assert [lowest(one) for one in found] == sorted(lowest(one) for one in found)
    peaks = [figure(one, PEAK) for one in found]
    assert peaks == sorted(peaks, reverse=True)


# Judged from the figures ------------------------------------------------------------------------


def test_many_awkward_requests_are_answered():
    assert len(WORKED) > 0.3 * len(MANY)
    assert sum(any(fix.link for fix in found.fixes) for _, found in WORKED) > 0.1 * len(WORKED)


@pytest.mark.parametrize("state, found", WORKED)
def test_nothing_dangerous_in_the_figures_goes_unsaid(state, found):
    rating, low = table_rating(state), lowest(found)
    allowance = max(practice.SURGE_ALLOWANCE.values())
    if rating is not None and figure(found, PEAK) > allowance * rating * (1 + 1e-9):
        assert keys(found, "stop") & {"over-rating", "too-hot"}
    if low < -10:
        assert "negative-pressure" in keys(found, "care")
    if low < practice.DEEPEST_VACUUM:
        assert "collapse" in said(found, "negative-pressure")
    if low < -102e3 or "the water boils" in " ".join(one.note for one in found.figures):
        assert "column-separation" in keys(found, "care")
    if CREST not in figures(found):
        assert "crest-unchecked" in keys(found, "care")
    if keys(found, "stop", "care"):
        assert found.verdict.level != "good"
    check_working(found)


def test_a_parted_column_peaks_at_the_bound_and_not_below():
    found = trip()
    assert "column-separation" in keys(found, "care")
    sudden = next(one.result.value for one in found.steps if one.title.startswith("Fall as"))
    rest = next(one.result.value for one in found.steps if one.title.endswith("at rest"))
    assert figure(found, PEAK) == pytest.approx(rest + 2 * sudden)


def test_the_height_that_is_said_to_work_for_a_crest_works():
    found = trip(flow="4 L/min")
    assert keys(found, "stop", "care") == {"crest-unchecked"}
    most = re.search(r"up to ([\d.]+)\u00a0m", said(found, "crest-unchecked"))[1]
    assert trip(flow="4 L/min", crest=f"{most} m").verdict.word == "Works"
    over = f"{float(most) * 1.02} m"
    assert "negative-pressure" in keys(trip(flow="4 L/min", crest=over), "care")


# Fixes ------------------------------------------------------------------------------------------


def test_the_vessel_named_is_enough_and_a_tenth_less_is_not():
    found = trip(crest="20 m")
    fix = next(one for one in found.fixes if "air vessel" in one.text)
    assert answer(**fix.link.values).verdict.word == "Works"
    less = f"{0.9 * figure(found, ENOUGH) * 1e3} L"
    assert keys(trip(crest="20 m", vessel=less), "stop", "care")


def test_where_only_the_crest_is_at_fault_it_may_be_led_lower():
    found = trip(flow="4 L/min", crest="25 m", weakest="")
    fix = next(one for one in found.fixes if "Lead the pipe" in one.text)
    assert answer(**fix.link.values).verdict.word == "Works"


def test_a_crest_above_the_tank_is_said_to_be_the_fault():
    found = trip(flow="4 L/min", lift="20 m", crest="30 m")
    assert "negative-pressure" in keys(found, "care")
    assert any("Lead the pipe" in one.text for one in found.fixes)


def test_every_fix_leaves_less_wrong_and_nothing_new():
    for state, found in WORKED[::2]:
        wrong = keys(found, "stop", "care")
        for fix in (fix for fix in found.fixes if fix.link):
            after = work(SHEET, State(state.system, dict(fix.link.values)))
            assert after.errors == {}, fix
            assert keys(after.answer, "stop", "care") < wrong, fix.text


def test_every_sentence_is_short_and_in_one_system_of_units():
    units = {u.symbol for q in QUANTITIES.values() for u in q.units if u.symbol}
    for state, found in WORKED:
        other = "psi" if state.system == "metric" else "bar"
        for text in (found.told, *(one.text for one in found.findings)):
            assert len(text.replace("\u00a0", "_").split()) <= 25, text
            assert f"\u00a0{other}" not in text
            numbers = re.findall(r"\d\u00a0(\S+?)(?=[\s,.;:]|$)", text)
            assert len([symbol for symbol in numbers if symbol in units]) <= 4, text


# Errors -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("field, text", [
    ("lift", "0"), ("lift", ""), ("crest", "-3 m"), ("vessel", "0 L"), ("vessel", "20 m³"),
    ("flow", "6000 L/min"),
])  # fmt: skip
def test_a_bad_entry_is_said_at_its_field(field, text):
    outcome = work(SHEET, State(texts={"event": "trip", field: text}))
    assert outcome.answer is None and outcome.errors[field]


@pytest.mark.parametrize("texts", [{"lift": "200 m"}, {"crest": "150 m"}])
def test_a_pipe_shorter_than_it_rises_is_said_at_its_length(texts):
    outcome = work(SHEET, State(texts={"event": "trip", **texts}))
    assert "at least as long as it rises" in outcome.errors["length"]


@pytest.mark.parametrize("key", ["crest", "vessel"])
def test_not_knowing_is_an_answer(key):
    outcome = work(SHEET, State(texts={"event": "trip", key: "?"}))
    assert outcome.errors == {} and key in {one.key for one in outcome.assumed}


@pytest.mark.parametrize("texts, word", [
    ({"crest": "20 m"}, "Does not work"), ({"crest": "20 m", "vessel": "3 L"}, "Works"),
    ({"crest": "10 m", "flow": "4 L/min"}, "Works"),
])  # fmt: skip
def test_the_cases_of_the_guide_are_as_it_says(texts, word):
    assert trip(lift="30 m", **texts).verdict.word == word
