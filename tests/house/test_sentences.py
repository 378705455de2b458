"""Guides are read on a phone by somebody in a hurry: a sentence has up to 25 words.

Items of a list are sentences of their own. Tables, code, the terms that a work asks to be quoted
and ``changes.md``, which is for those who develop, are left out.  The limit is our choice.
"""

import re

import pytest

from tests.house.modules import ROOT

MOST = 25  # words in a sentence; our choice
GUIDES = [one for one in sorted((ROOT / "docs").glob("*.md")) if one.name != "changes.md"]
OUT = (
    r"\A---\n.*?\n---\n",  # frontmatter
    r"^ *```.*?^ *```[^\n]*$",  # code and calculators
    r"<!--.*?-->",
    r"^ *[|>].*?$",  # tables and quotations
)
TITLE = re.compile(r" *(?:#|!!!|\?\?\?)")
NEW_BLOCK = re.compile(r"\A *(?:[-*] |\d+\. |#+ |!!! |\?\?\? |(?=<))")


def blocks(text):
    """Paragraphs, headings and items of lists, each as one line without its links' addresses."""
    for pattern in OUT:
        text = re.sub(pattern, "", text, flags=re.S | re.M)
    block: list[str] = []
    for line in [*re.sub(r"\]\([^)]*\)", "]", text).splitlines(), ""]:
        if block and (not line.strip() or NEW_BLOCK.match(line) or TITLE.match(block[0])):
            yield " ".join(NEW_BLOCK.sub("", one, count=1) for one in block)
            block = []
        if line.strip():
            block.append(line)


def long_sentences(text):
    """(words, sentence) of those over the limit."""
    for block in blocks(text):
        plain = re.sub(r"<[^>]+>", " ", block)
        for sentence in re.split(r"(?<=[.?!])[*”\"’)]*\s+(?=[^a-z])", plain):
            words = [one for one in sentence.split() if re.search(r"\w", one)]
            if len(words) > MOST:
                yield len(words), sentence


@pytest.mark.parametrize("guide", GUIDES, ids=lambda one: one.stem)
def test_no_sentence_of_a_guide_is_over_25_words(guide):
    assert list(long_sentences(guide.read_text(encoding="utf-8"))) == []


WORDS = "word " * 24


@pytest.mark.parametrize("text", [
    f"Short one. A {WORDS}3.5.",
    f"- Item, short.\n- {WORDS}\n  and more.",
    f"Lead:\n\n- {WORDS}[and](x.md#a.b) more.",
    f"!!! warning \"Title\"\n    {WORDS}and more.",
    f"<li><strong>{WORDS}and\nmore.</strong></li>",
])  # fmt: skip
def test_a_long_sentence_is_found(text):
    assert [count for count, _ in long_sentences(text)] == [26]


@pytest.mark.parametrize("text", [
    f"{WORDS}more. `code` {WORDS}",
    f"Lead {WORDS}\n\n- item {WORDS}",
    f"---\ntags: [{WORDS}{WORDS}]\n---\n| {WORDS}and more |\n",
    f"```text\n{WORDS}and more\n```",
])  # fmt: skip
def test_what_is_short_or_left_out_is_not_found(text):
    assert list(long_sentences(text)) == []
