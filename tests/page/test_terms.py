"""One table of terms: the glossary, what is explained on a page, and the words of the forms."""

import re
from html import escape

import pytest

from calc.page import explain
from calc.page.fields import Rows
from calc.page.terms import TERMS, hard
from calc.sheets import KEYS, sheet
from scripts import words_hook


def test_no_two_terms_have_one_place_in_the_glossary():
    assert len({term.anchor for term in TERMS}) == len(TERMS)


def test_the_glossary_holds_every_term_with_its_meaning():
    html = words_hook.glossary()
    assert all(
        f'<dt id="{term.anchor}">' in html and escape(term.meaning[1:]) in html for term in TERMS
    )


def test_a_hard_word_is_explained_once_and_never_inside_a_link_or_a_heading():
    html = "<h2>Foot valve</h2><p>A <a>foot valve</a>, a foot valve, a foot valve.</p>"
    found = words_hook.explained(html, "../glossary/")
    assert found.count('popovertarget="sl-term-foot-valve">foot valve</button>') == 1
    assert "<h2>Foot valve</h2>" in found and "<a>foot valve</a>, a <button" in found
    assert found.count('id="sl-term-foot-valve"') == 1


def test_a_text_without_hard_words_stays_as_it_is():
    assert words_hook.explained("<p>Water runs.</p>", "g/") == "<p>Water runs.</p>"


@pytest.mark.parametrize("key", KEYS)
def test_a_label_with_a_hard_word_has_its_meaning_beside_it(key):
    for entry in sheet(key).fields:
        if isinstance(entry, Rows):
            continue
        named = [term for term in hard() if term.word.lower() in entry.label.lower()]
        html = explain.beside(entry.label, "x")
        assert bool(named) == bool(html)
        if html:
            assert re.search(r'popovertarget="x-why".*id="x-why"', html)
