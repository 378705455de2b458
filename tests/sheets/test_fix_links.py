"""A fix's link opens the form as it stands with the fix made, and nothing else changed.

Judged from what the form reads before and after, whatever texts a sheet puts into its links.
"""

import json

import pytest

from calc import bridge
from calc.errors import InputError
from calc.page.entries import read
from calc.page.fields import Rows
from calc.page.form import work
from calc.page.state import State, filled_rows, hidden_keys, replaced_keys, typed_over
from calc.sheets import KEYS, LATER, sheet
from calc.sheets.addresses import fragment
from calc.site import link
from calc.site.demo import alder_terrace
from calc.site.facts import Fact
from calc.site.pack import pack
from tests.sheets.drawn import states

NO_LINKS = ("pressure", "tank", "pressure_tank", "demand", "fault")  # their fixes are advice


def shown(key, state):
    """{field: what it reads as, rows as tuples} of the fields that count."""
    entries = sheet(key)
    hidden = hidden_keys(entries, state)
    gone = replaced_keys(entries, state, hidden)
    state = typed_over(entries, state, hidden)
    return {
        entry.key: value(entry, state)
        for entry in entries.fields
        if entry.key not in hidden | gone
    }  # fmt: skip


def value(entry, state):
    if not isinstance(entry, Rows):
        return one(entry, state.text(entry), state.system, state.units.get(entry.key))
    return tuple(
        tuple(one(c, text, state.system, state.units.get(f"{entry.key}.{c.key}"))
              for c, text in zip(entry.columns, row, strict=False))
        for row in filled_rows(entry, state.text(entry), state.system)
    )  # fmt: skip


def one(column, text, system, unit):
    try:
        found = read(column, text, system, unit)[0]
    except InputError:
        return text
    return round(found, 9) if isinstance(found, float) and abs(found) < 1 else (
        float(f"{found:.9g}") if isinstance(found, float) else found)  # fmt: skip


def opened(key, wanted, state, outcome, carried=("", "")):
    made = fragment(sheet(key), wanted, state.system, outcome.example, carried, state)
    reading = link.read(made, sheet(key))
    assert reading.trusted
    return reading


def lost(key, before, state, reading, wanted):
    """Fields of a link that came out otherwise than the form has them and the link says."""
    after = shown(key, state)
    said = shown(key, State(reading.system, dict(wanted)))
    return {
        field: (before[field], after[field])
        for field in before.keys() & after.keys()
        if before[field] != after[field] and not (field in wanted and said.get(field) ==
                                                  after[field])
    }  # fmt: skip


def check(key, state):
    """How many links were followed; none changes what it does not say."""
    outcome, count = work(sheet(key), state), 0
    if outcome.answer is None:
        return 0
    before = shown(key, state)
    for fix in outcome.answer.fixes:
        if fix.link is None or fix.link.sheet != key:
            continue
        count += 1
        reading = opened(key, fix.link.values, state, outcome)
        assert lost(key, before, reading.state, reading, fix.link.values) == {}, (state, fix)
    return count


@pytest.mark.parametrize("key", KEYS)
def test_a_fix_keeps_what_it_does_not_change(key):
    count = sum(check(key, state) for state in states(sheet(key), 60, "links"))
    # few random forms of panels have a fix that is a link
    assert count > (2 if key in LATER else 5) or key in NO_LINKS


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("key", KEYS)
def test_a_fix_keeps_what_reads_as_the_sheet_had_it_before_its_example_came_from_a_site(
    key, system
):
    plain = sheet(key).plain
    entries = [e for e in plain.fields if e.default(system) != sheet(key).field(
        e.key).default(system)]  # fmt: skip
    texts = {entry.key: entry.default(system) for entry in entries}
    spoiled = {"wanted": "9 bar", "flow": "60 L/min", "set": "1 bar"}
    for more in ({}, *({field: text} for field, text in spoiled.items()
                       if field in {e.key for e in plain.fields})):  # fmt: skip
        check(key, State(system, texts | more))


def test_the_small_pump_stays_when_the_fix_for_it_is_opened():
    state = State(texts={"pump": "small", "flow": "30 L/min"}, standing={"pump": "given"})
    outcome = work(sheet("pump_match"), state)
    (first, *_) = outcome.answer.fixes
    reading = opened("pump_match", first.link.values, state, outcome)
    assert reading.texts["pump"] == "small"
    assert work(sheet("pump_match"), reading.state).answer.verdict.word == "Works"


def test_what_a_fix_does_not_change_stays_as_well_known_as_it_was():
    state = State("us", {"climb": "12 1/2 ft", "pressure": "20"}, {"pressure": "psi"})
    outcome = work(sheet("reach"), state)
    fix = outcome.answer.fixes[0]
    reading = opened("reach", fix.link.values, state, outcome)
    assert reading.texts["climb"] == "12.5"
    assert reading.standing["climb"] == "given"
    assert reading.standing["water"] == "example"


def test_a_fix_opened_from_a_site_leaves_to_the_site_what_is_the_sites():
    site = alder_terrace().put("pump.set", Fact("2 bar"))
    ask = {"sheet": "reach", "system": "metric"}
    filled = json.loads(bridge.handle(json.dumps(
        {"op": "read", **ask, "fragment": link.of_site("metric", pack(site))})))  # fmt: skip
    state = State("metric", filled["texts"], filled["units"], filled["standing"],
                  kept=frozenset(filled["site"]["filled"]))  # fmt: skip
    outcome = work(sheet("reach"), state)
    fix = outcome.answer.fixes[0]
    reading = opened("reach", fix.link.values, state, outcome, (pack(site), filled["site"]["way"]))
    assert "hottest" not in reading.named
    assert reading.named <= {"pressure", "line", "flow"}  # what the fix changes
