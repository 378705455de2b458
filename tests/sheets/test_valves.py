"""A pressure-reducing valve near its rated flow gives less than it is set to, and that is said."""

import pytest

from calc import practice
from calc.page.form import rest, work
from calc.page.state import State
from calc.sheets import sheet, views
from calc.sheets.parts import ways
from calc.sheets.parts.line_rows import as_text
from calc.site.demo import alder_terrace
from calc.site.facts import GIVEN, Fact

RATED = 30  # L/min, of a 3/4 in valve, and 0.5 to 1 bar less near it: common practice, no source
LINES = ("reach", "pump_match", "pipe")


def one_way(flow, needed, valve="r20"):
    """A site with one valve at the house and one draw behind it."""
    section = {"from": Fact("pump"), "to": Fact("house"), "length": Fact("30 m"),
               "height": Fact("2 m"), "pipe": Fact("pe100-sdr11/50"), "bends": Fact("2"),
               "fitting": Fact(valve)}  # fmt: skip
    draw = {"name": Fact("draw"), "at": Fact("house"), "kind": Fact("steady"),
            "before": Fact("1"), "after": Fact("1"), "flow": Fact(f"{flow} L/min"),
            "needed": Fact(needed)}  # fmt: skip
    site = alder_terrace().put("pump.id", Fact("large"))
    return site.put_rows("sections", (section,)).put_rows("outlets", (draw,))


def answered(site, key):
    facts = views.fill(site, key, "", "metric", 14)
    texts = {field: fact.text for field, fact in facts.items()}
    if key in LINES and not texts.get("line"):
        texts["line"] = as_text(ways.way_to_outlet(site, "draw").sections)
    outcome = work(sheet(key), State("metric", texts, {}, dict.fromkeys(facts, GIVEN)))
    assert outcome.errors == {}
    return rest(outcome).answer


def found(site, key):
    return [one for one in answered(site, key).findings if one.key == "reducer-fall"]


@pytest.mark.parametrize("key", [*LINES, "keep_up"])
def test_near_its_rated_flow_what_is_left_is_counted_a_bar_lower(key):
    (one,) = found(one_way(0.9 * RATED, "1.2 bar"), key)
    assert (one.level, one.rank) == ("care", "weak")
    assert "less than it is set to" in one.text and "1.20\u00a0bar" in one.text


@pytest.mark.parametrize("key", [*LINES, "keep_up"])
def test_where_enough_is_left_all_the_same_it_is_a_note(key):
    (one,) = found(one_way(0.9 * RATED, "0.5 bar"), key)
    assert one.level == "note" and "0.500\u00a0bar to 1.00\u00a0bar" in one.text


@pytest.mark.parametrize("key", [*LINES, "keep_up"])
def test_far_below_its_rated_flow_it_holds(key):
    assert found(one_way(0.5 * RATED, "1.2 bar"), key) == []


@pytest.mark.parametrize("key", [*LINES, "keep_up"])
def test_a_higher_setting_is_offered_and_reaches_works(key):
    given = answered(one_way(0.9 * RATED, "1.2 bar"), key)
    assert given.verdict.word == "Borderline"
    fix = next(one for one in given.fixes if one.link and "valve" in one.text)
    outcome = work(sheet(key), State("metric", dict(fix.link.values)))
    assert outcome.answer.verdict.word in ("Works", "Result"), fix.text


def test_what_is_said_is_what_practice_says():
    assert practice.REDUCER_FALL == (0.5e5, 1e5)
    assert pytest.approx(RATED) == practice.REDUCER_FLOW * 60e3
