"""What holds of every sheet that runs on the sun, on forms drawn at places far apart."""

import re

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from tests.page.pictures import faults
from tests.sheets import few, solar
from tests.sheets.test_every_fix import counted

SHEETS = ("panels", "battery", "direct", "panel_place")
MANY, WHOLE = 60, 8  # forms of each sheet: their verdicts, and all of their answers


SYSTEMS = ("metric", "us")
OTHER = {"us": r"\d\u00a0(L|m³|m|kg|bar|kPa|L/min|L/day|L/s|m³/h|mm|cm|°C|K)(?![\w/³²])",
         "metric": r"\d\u00a0(gal|gpm|gal/day|ft|psi|lb|°F|in)(?![\w/])"}  # fmt: skip


@pytest.mark.parametrize("key", SHEETS)
def test_a_sentence_that_can_open_the_verdict_has_few_words_and_numbers(key):
    answered = 0
    for state, outcome in solar.outcomes(key, MANY, True):
        one = outcome.answer
        if one is None:
            continue
        answered += 1
        for text in (one.told, one.verdict.sentence, *(each.text for each in one.findings)):
            words, numbers = counted(text)
            assert words <= 25 and numbers <= 4, (state, text)
    assert answered > MANY / 3


def said(one):
    yield from (one.told, one.verdict.sentence, *one.cautions)
    yield from (each.text for each in (*one.findings, *one.fixes))
    yield from (drawing.alt for drawing in one.drawings)
    for table in one.tables:
        yield from (cell for row in table.rows for cell in row if isinstance(cell, str))
        yield table.note
    yield from (step.note for step in one.steps)


@pytest.mark.parametrize("key", SHEETS)
def test_an_answer_speaks_one_system_of_units(key):
    seen = set()
    for state, outcome in solar.outcomes(key, WHOLE):
        if outcome.answer:
            seen.add(state.system)
            for text in said(outcome.answer):
                assert not re.search(OTHER[state.system], text), (state.system, text)
    assert seen == set(SYSTEMS)


@pytest.mark.parametrize("key", SHEETS)
def test_no_form_fails_without_saying_where(key):
    for state, outcome in (
        *solar.outcomes(key, MANY, True), *solar.outcomes(key, WHOLE),
    ):  # fmt: skip
        assert "" not in outcome.errors and all(outcome.errors.values()), (state, outcome.errors)


@pytest.mark.parametrize("key", SHEETS)
def test_every_fix_followed_leaves_nothing_that_it_does_not_say(key):
    for state, outcome in solar.outcomes(key, WHOLE):
        if outcome.answer is None:
            continue
        every, known = few.wrong(outcome.answer)
        assert outcome.answer.fixes or not known, state
        for fix in outcome.answer.fixes:
            if fix.link is None:
                continue
            after = few.opened(fix.link, sheet(key), state)
            assert after.errors == {}, (state, fix)
            left, _ = few.wrong(after.answer)
            assert left <= every and len(left) < len(every), (state, fix, left)
            assert bool(left) == ("Still to put right" in fix.text), (state, fix, left)


@pytest.mark.parametrize("key", SHEETS)
def test_no_picture_is_hard_to_read(key):
    for state, outcome in solar.outcomes(key, WHOLE):
        for drawing in outcome.answer.drawings if outcome.answer else ():
            assert not list(faults(drawing)), state


@pytest.mark.parametrize("key", SHEETS)
@pytest.mark.parametrize("system", SYSTEMS)
def test_every_link_that_leads_on_opens_without_errors(key, system):
    state = State(system, dict(solar.NORTH))
    for link in work(sheet(key), state).answer.links:
        assert few.opened(link, sheet(key), state).errors == {}, link
