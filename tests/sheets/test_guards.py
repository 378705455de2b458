"""A displacement pump must never face a closed valve: said alike wherever it stands."""

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet, views
from calc.sheets.parts import guard
from calc.site.demo import alder_terrace
from calc.site.facts import GIVEN, Fact

SHEETS = {
    "keep_up": {"ask": "few", "away": "50 m", "climb": "2 m", "showers": "1", "hoses": "0"},
    "pump_match": {"flow": "10 L/min"},
}
LEVELS = {"both": "", "switch": "care", "relief": "care", "none": "stop", "?": "stop"}


def answer(key, **texts):
    outcome = work(sheet(key), State("metric", {"pump": "diaphragm"} | SHEETS[key] | texts))
    assert outcome.errors == {}
    return outcome.answer


def found(answer, key=guard.KEY):
    return [(one.level, one.rank, one.text) for one in answer.findings if one.key == key]


@pytest.mark.parametrize("held", LEVELS)
def test_both_sheets_find_the_same_of_a_guard(held):
    first, second = (found(answer(key, guard=held)) for key in SHEETS)
    assert first == second
    assert [(level, rank) for level, rank, _ in first] == [
        (level, "harm") for level in (LEVELS[held],) if level
    ]


@pytest.mark.parametrize("key", SHEETS)
def test_where_its_switch_acts_is_said_of_a_displacement_pump_alone(key):
    ((level, _, text),) = found(answer(key), guard.SWITCH_AT_TOP)
    assert level == "note" and "highest head" in text
    assert found(answer(key, pump="small"), guard.SWITCH_AT_TOP) == []


@pytest.mark.parametrize("held", ["switch", "relief", "none"])
@pytest.mark.parametrize("key", SHEETS)
def test_its_fix_opens_with_nothing_of_it_left(key, held):
    fixes = answer(key, guard=held).fixes
    fix = next(one for one in fixes if one.link and guard.FIT in one.text)
    after = work(sheet(key), State("metric", dict(fix.link.values))).answer
    assert found(after) == []


def test_a_relief_valve_of_a_guard_counts_as_the_fields_own():
    texts = {"main": "pe100-sdr11/32", "away": "5 m"}
    hard = "head ft, flow gpm\n700, 0\n690, 2\n500, 5"
    own = {"pump": "own", "table": hard, "works": "diaphragm", "set": "3 bar"} | texts
    kinds = {held: found(answer("keep_up", guard=held, **own), "shut-off-over-rating")
             for held in ("both", "switch")}  # fmt: skip
    assert kinds["both"] == [] and kinds["switch"] != []


@pytest.mark.parametrize("key", SHEETS)
def test_the_site_keeps_it_and_gives_it_to_both_sheets(key):
    site = alder_terrace().put("pump.guard", Fact("switch")).put("pump.id", Fact("diaphragm"))
    facts = views.fill(site, key)
    texts = {field: fact.text for field, fact in facts.items()}
    state = State("metric", texts, {}, dict.fromkeys(facts, GIVEN))
    assert [level for level, *_ in found(work(sheet(key), state).answer)] == ["care"]
