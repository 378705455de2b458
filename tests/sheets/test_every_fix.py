"""What an answer offers, opened: every link on a form without errors, every fix on one that works.

Of the sheets of one pipe, tank or pump; what a whole supply offers is held to it elsewhere.
"""

import functools
import re

import pytest

from calc.pipe import pipes
from calc.power import cable
from tests.rounds import some
from tests.sheets import few

KEYS = (
    "pipe",
    "pressure",
    "pressure_tank",
    "tank",
    "demand",
    "surge",
    "suction",
    "cable",
    "gravity",
    "well",
    "hill_tank",
    "drip",
    "sprinkler",
    "hot_water",
)
EACH = some(150)
REMAINS = ("Still to put right", "Still not checked")
MOST_WORDS, MOST_NUMBERS = 25, 4
LABELS = sorted(
    {
        text
        for kind in pipes.KINDS
        for pipe in pipes.sizes(kind)
        for text in (pipe.label, pipe.name, pipe.kind_label.partition(" (")[0])
    }
    | {size.name for series in cable.SERIES.values() for size in series},
    key=len,
    reverse=True,
)


@functools.cache
def answered(key):
    """(sheet, state, answer) of every form drawn that has one."""
    found = ((one, state, few.work(one, state).answer) for one, state in few.states(key, EACH))
    return [three for three in found if three[2] is not None]


@pytest.mark.parametrize("key", KEYS)
def test_every_link_that_leads_on_opens_without_errors(key):
    for sheet, state, answer in answered(key):
        for link in answer.links:
            assert few.opened(link, sheet, state).errors == {}, (state, link)


@pytest.mark.parametrize("key", KEYS)
def test_a_fix_of_one_fault_works_and_one_of_several_says_what_remains(key):
    for sheet, state, answer in answered(key):
        every, _ = few.wrong(answer)
        for fix in answer.fixes:
            if fix.link is None:
                continue
            after = few.opened(fix.link, sheet, state)
            assert after.errors == {}, (state, fix)
            left, left_known = few.wrong(after.answer)
            assert left <= every and "another fault" not in fix.text, (state, fix)
            # of a fault that nothing puts right and a check that a change settles, it is the check
            assert len(every) > 1 or not left_known, (state, fix)
            assert bool(left) == any(words in fix.text for words in REMAINS), (state, fix, left)


@pytest.mark.parametrize("key", KEYS)
def test_nothing_is_wrong_without_a_fix_or_a_sentence_that_there_is_none(key):
    for _, state, answer in answered(key):
        assert answer.fixes or not few.wrong(answer)[1], (state, answer.verdict)


def counted(text):
    """(words, numbers) of a text; a pipe's or cable's size or standard counts as one number."""
    for label in LABELS:
        text = re.sub(rf"(?<![\w.]){re.escape(label)}(?![\w.])", "0", text)
    text = text.replace("\u202f", "")
    return len(text.split()), len(re.findall(r"\d[\d.,]*", text))


@pytest.mark.parametrize("key", KEYS)
def test_a_sentence_that_can_open_the_verdict_has_few_words_and_numbers(key):
    for _, state, answer in answered(key):
        told = {answer.told, answer.verdict.sentence, *(one.text for one in answer.findings)}
        for text in told:
            words, numbers = counted(text)
            assert words <= MOST_WORDS and numbers <= MOST_NUMBERS, (state, text)


@pytest.mark.parametrize("key", KEYS)
def test_each_sentence_of_a_fix_has_few_words_and_numbers(key):
    for _, state, answer in answered(key):
        for fix in answer.fixes:
            for text in re.split(r"(?<=[.:])\s+(?=[A-Z])", fix.text):
                words, numbers = counted(text)
                assert words <= MOST_WORDS and numbers <= MOST_NUMBERS, (state, text)


@pytest.mark.parametrize("key", KEYS)
def test_no_figure_is_compared_with_itself(key):
    for _, _, answer in answered(key):
        for one in answer.findings:
            shown = re.findall(r"(?<![\w.])−?\d[\d.\u202f]*\u00a0[^\s.,;:)]+", one.text)
            assert len(set(shown)) == len(shown), one.text
