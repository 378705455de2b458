"""What holds for every calculator: its example, its working, its text, its links."""

import json
from html import escape

import pytest

from calc import bridge
from calc.page import render, row_text
from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows
from calc.page.form import work
from calc.page.state import State, filled_rows, hidden_keys
from calc.sheets import KEYS, LATER, sheet
from calc.units import QUANTITIES, parse
from tests.parity.cases import worked
from tests.rounds import one_in, some
from tests.sheets.working import check_working

BOTH = [(key, system) for key in KEYS for system in ("metric", "us")]


@pytest.mark.parametrize("key, system", BOTH)
def test_the_example_works_out(key, system):
    outcome = work(sheet(key), State(system))
    assert outcome.errors == {}
    assert outcome.answer.figures and outcome.answer.steps


@pytest.mark.parametrize("key", KEYS)
def test_the_working_gives_what_it_says_for_random_inputs(key):
    for *_, outcome in worked(key, some(8 if key in LATER else 40)):  # a year takes its time
        check_working(outcome.answer)


@pytest.mark.parametrize("key", KEYS)
def test_fields_have_distinct_link_safe_keys(key):
    keys = [entry.key for entry in sheet(key).fields]
    assert len(keys) == len(set(keys))
    assert "u" not in keys
    assert all(k.replace("_", "").replace("-", "").isalnum() and k.isascii() for k in keys)


@pytest.mark.parametrize("key, system", BOTH)
def test_defaults_are_typed_in_the_readers_units(key, system):
    for entry in sheet(key).fields:
        if isinstance(entry, Number) and entry.default(system):
            usual = QUANTITIES[entry.quantity].default(system)
            parsed = parse(entry.default(system), entry.quantity, usual.symbol)
            assert parsed.unit.symbol in {u.symbol for u in QUANTITIES[entry.quantity].units}
            assert entry.low <= parsed.value <= entry.high


SLOW, MANY = {"panels", "battery", "direct", "day", "fault"}, 20


def _changed(key, entry, values):
    """(state, outcome) of the example with each value in a field, which is shown; each form once.

    A value that is the example's own changes nothing: ``test_the_example_works_out``.
    """
    shows, place = {}, entry
    while place.when:
        name, wanted = place.when
        shows[name], place = wanted[0], sheet(key).field(name)
    own = shows.get(entry.key, entry.default("metric"))
    for value in dict.fromkeys(values):
        if shows or value != own:
            state = State(texts={**shows, entry.key: value})
            yield state, work(sheet(key), state)


@pytest.mark.parametrize("key", KEYS)
def test_every_choice_is_accepted_or_refused_in_words(key):
    hidden = hidden_keys(sheet(key), State())
    for entry in sheet(key).fields:
        # what the example hides counts for nothing: the answer would be the example's own
        if isinstance(entry, Choice) and entry.key not in hidden:
            # of the many pipes a quarter, where an answer takes long: other sheets try more
            values = [value for value, _ in entry.options]
            if len(values) > MANY:
                values = values[::4] if key in SLOW else one_in(values)
            for state, outcome in _changed(key, entry, values):
                assert outcome.answer or all(outcome.errors.values()), state


BAD = ["", "abc", "40 furlongs", "-1e9", "1e300", "NaN", "inf", "1,250", "1/0", "<b>", "0x10"]


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("text", BAD)
def test_bad_numbers_are_said_at_their_own_field(key, text):
    for entry in sheet(key).fields:
        if not isinstance(entry, Number) or (entry.optional and not text):
            continue
        state = State(texts={entry.key: text})
        if entry.when:
            state.texts[entry.when[0]] = entry.when[1][0]
        outcome = work(sheet(key), state)
        if entry.key in outcome.hidden:
            continue
        assert outcome.answer is None
        assert outcome.errors.get(entry.key), (entry.key, outcome.errors)


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_what_may_be_empty_may_be_unknown_and_then_counts_as_empty(key, system):
    for entry in sheet(key).fields:
        if not isinstance(entry, Number) or not entry.optional:
            continue
        shows = {entry.when[0]: entry.when[1][0]} if entry.when else {}
        unknown = work(sheet(key), State(system, shows | {entry.key: UNKNOWN}))
        assert unknown.errors == {}
        assert [one for one in unknown.assumed if one.key == entry.key]
        if entry.unknown is None:
            empty = work(sheet(key), State(system, shows | {entry.key: ""}))
            assert unknown.answer == empty.answer


@pytest.mark.parametrize("key", KEYS)
def test_the_height_above_the_sea_need_not_be_known(key):
    for entry in sheet(key).fields:
        if entry.key == "altitude":
            found = work(sheet(key), State(texts={"altitude": UNKNOWN}))
            (told,) = (one for one in found.assumed if one.key == "altitude")
            assert found.errors == {} and told.shown and "careful" in told.reason


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("text", BAD)
def test_bad_cells_are_said_at_their_own_cell(key, text):
    for entry in (entry for entry in sheet(key).fields if isinstance(entry, Rows)):
        some = entry.default("metric") or "a"
        rows = [list(row) for row in filled_rows(entry, some, "metric")]
        shows = {entry.when[0]: entry.when[1][0]} if entry.when else {}
        for place, column in enumerate(entry.columns):
            if not isinstance(column, Number | Count) or (not text and _may_be_empty(column)):
                continue
            changed = [list(row) for row in rows]
            changed[0][place] = text
            texts = shows | {entry.key: row_text.encode(changed)}
            outcome = work(sheet(key), State(texts=texts))
            assert outcome.answer is None
            assert outcome.errors.get(f"{entry.key}.0.{column.key}"), outcome.errors


def _may_be_empty(column):
    return isinstance(column, Number) and column.optional


@pytest.mark.parametrize("key", KEYS)
def test_no_bound_crashes_the_sheet(key):
    for entry in sheet(key).fields:
        if isinstance(entry, Number):
            unit = QUANTITIES[entry.quantity].default("metric")
            bounds = [repr(unit.from_si(one)) for one in (entry.low, entry.high, 0.0)]
            for state, outcome in _changed(key, entry, bounds):
                assert entry.key not in outcome.hidden
                assert outcome.answer or all(outcome.errors.values()), state


@pytest.mark.parametrize("key", KEYS)
def test_next_steps_are_read_by_the_sheet_they_lead_to(key):
    for system in ("metric", "us"):
        for link in work(sheet(key), State(system)).answer.links:
            target = sheet(link.sheet)
            known = {entry.key for entry in target.fields}
            assert set(link.values) <= known, (link.sheet, set(link.values) - known)
            assert work(target, State(system, dict(link.values))).errors == {}


@pytest.mark.parametrize("key, system", BOTH)
def test_the_text_for_an_email_holds_verdict_figures_and_working(key, system):
    state = State(system)
    outcome = work(sheet(key), state)
    text = render.plain(sheet(key), outcome, state)
    assert outcome.answer.verdict.sentence.replace("\u00a0", " ") in text
    assert all(figure.label in text for figure in outcome.answer.figures)
    assert all(step.title in text for step in outcome.answer.steps)
    assert "<" not in text.replace("< ", "")


@pytest.mark.parametrize("key", KEYS)
def test_the_bridge_speaks_plain_json(key):
    reply = json.loads(bridge.handle(json.dumps({"op": "work", "sheet": key})))
    assert reply["errors"] == {} and reply["html"] and reply["text"]
    assert "NaN" not in bridge.handle(json.dumps({"op": "work", "sheet": key}))


@pytest.mark.parametrize("key", KEYS)
def test_converting_there_and_back_keeps_the_answer_nearly(key):
    here = {"op": "convert", "sheet": key, "system": "metric", "to": "us"}
    there = json.loads(bridge.handle(json.dumps(here)))
    assert work(sheet(key), State("us", there["texts"], there["units"])).errors == {}


@pytest.mark.parametrize("key", KEYS)
def test_cautions_and_sources_are_given(key):
    assert sheet(key).cautions and sheet(key).sources and sheet(key).page.endswith("/")


LONG = 30  # options that can be looked through without headings; our choice


@pytest.mark.parametrize("key", KEYS)
def test_a_long_menu_has_headings_over_a_few_options_each(key):
    html = render.form(sheet(key), key)
    columns = [c for entry in sheet(key).fields if isinstance(entry, Rows) for c in entry.columns]
    menus = [c for c in (*sheet(key).fields, *columns) if isinstance(c, Choice)]
    for menu in (one for one in menus if len(one.options) > LONG):
        heads = dict(menu.groups)
        parts = [value.partition("/")[0] for value, _ in menu.options]
        assert set(parts) == set(heads), menu.key
        assert max(parts.count(part) for part in heads) <= LONG / 2
        for head in heads.values():
            assert f'<optgroup label="{escape(head)}">' in html
