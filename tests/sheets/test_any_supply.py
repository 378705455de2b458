"""Whatever is asked of the three sheets of a whole supply: sentences, links and fixes hold."""

import pytest

from calc.page.form import work
from calc.page.state import State
from tests.sheets import any_supply, asking
from tests.sheets.any_supply import SHEETS, answered, sheet


@pytest.mark.parametrize("key, plain", SHEETS)
def test_enough_requests_are_answered(key, plain):
    assert len(answered(key, plain)) >= 15


# Sentences --------------------------------------------------------------------------------------


def said_twice(text):
    """Figures that a sentence says twice, as if a thing were compared with itself."""
    found = any_supply.figures(text)
    return sorted({one for one in found if found.count(one) > 1})


def test_a_figure_said_twice_is_found():
    assert said_twice("At 1.03\u00a0bar; 1.030\u00a0bar is needed.") == [(1.03, "bar")]
    assert said_twice("At 1.03\u00a0bar; 1.034\u00a0bar is needed: 1.03\u00a0m/s.") == []


@pytest.mark.parametrize("key, plain", SHEETS)
def test_no_finding_compares_a_figure_with_itself(key, plain):
    for state, answer in answered(key, plain):
        for text in (answer.verdict.sentence, *(one.text for one in answer.findings)):
            assert said_twice(text) == [], (text, state)


# A share of a limit, so near to it that three figures do not tell them apart
NEAR = [
    ("keep_up", {"pump": "own", "ask": "few", "set": "3.2 bar"}, "short"),
    ("keep_up", {"lift": "4.415 m", "suctionlong": "5 m"}, "lift-practice"),
    ("reach", {"flow": "18.01 L/min"}, "pump-most"),
    ("reach", {"climb": "30.621 m", "flow": "1 L/min", "use": "own", "wanted": "0.5 bar"}, "short"),
    ("pump_match", {"set": "3.333 bar"}, "runs-on"),
    ("pump_match", {"lift": "4.415 m"}, "lift-practice"),
    ("pump_match", {"flow": "58.01 L/min"}, "pump-most"),
    ("pump_match", {"draw": "3.699 L/min"}, "least-flow"),
]


@pytest.mark.parametrize("key, texts, finding", NEAR)
def test_two_figures_compared_print_different(key, texts, finding):
    answer = work(sheet(key, True), State(texts=texts)).answer
    text = next(one.text for one in answer.findings if one.key == finding)
    assert said_twice(text) == [], text


# Heat -------------------------------------------------------------------------------------------

HOT = {
    "reach": {"kind": "cpvc11"},
    "pump_match": {"kind": "cpvc11"},
    "keep_up": {"ask": "few", "main": "cpvc11/1"},
    "pipe": {"kind": "cpvc11"},
}


@pytest.mark.parametrize("key", HOT)
def test_hot_water_brings_the_same_cautions_to_every_sheet_and_cold_water_none(key):
    hot = " ".join(asking.answer(sheet(key, True), water="60 °C", **HOT[key]).cautions)
    assert all(word in hot for word in ("scalds", "temperature-and-pressure", "expansion"))
    assert "scalds" not in " ".join(asking.answer(sheet(key, True), **HOT[key]).cautions)


IN_THE_SUN = {
    "reach": {"kind": "pe-sidr7"},
    "pump_match": {"kind": "pe-sidr7"},
    "keep_up": {"ask": "few", "main": "pe-sidr7/1"},
}


@pytest.mark.parametrize("key", IN_THE_SUN)
def test_pipe_refused_for_its_heat_on_the_careful_side_says_so(key):
    found = asking.found(sheet(key, True), hottest="45 °C", **IN_THE_SUN[key])
    assert (found.get("too-hot"), found.get("cautious-heat")) == ("stop", "note")


HOSE = {"reach": {"kind": "hose"}, "pump_match": {"kind": "hose"},
        "keep_up": {"ask": "few", "main": "hose/1"}}  # fmt: skip


@pytest.mark.parametrize("key", HOSE)
def test_a_garden_hose_brings_its_caution_to_every_sheet(key):
    said = " ".join(asking.answer(sheet(key, True), **HOSE[key]).cautions)
    assert "garden hose is not made to stay under pressure" in said
