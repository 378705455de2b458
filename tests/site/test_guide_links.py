"""The guides' links to numbers, as the build writes them."""

import re
from pathlib import Path

import pytest

from calc.page.fields import Rows
from calc.page.form import filled_rows, hidden_keys
from calc.site import link
from scripts.site_hook import NUMBERS, PAGES, with_links

DOCS = Path(__file__).resolve().parents[2] / "docs"
GUIDES = [path for path in sorted(DOCS.glob("*.md")) if NUMBERS.search(path.read_text("utf-8"))]


def full(entry, read):
    """A field's text, a table's with every column."""
    text = read.texts[entry.key]
    return filled_rows(entry, text, read.system) if isinstance(entry, Rows) else text


@pytest.mark.parametrize("path", GUIDES, ids=lambda path: path.name)
def test_every_link_of_a_guide_is_whole_and_says_what_it_said(path):
    text = path.read_text("utf-8")
    written = with_links(text, path.name)
    pairs = zip(NUMBERS.findall(text), NUMBERS.findall(written), strict=True)
    for (page, short), (_, whole) in pairs:
        sheet = PAGES.get((page or path.name).removesuffix(".md"))
        if sheet is None:
            continue
        then, now = link.read(short, sheet), link.read(whole, sheet)
        assert now.trusted and not now.older and re.search(r"&c=[0-9a-z]{5}$", whole)
        hidden = hidden_keys(sheet, then.state)  # a field that does not show is not written
        for entry in sheet.fields:
            if entry.key not in hidden:
                assert full(entry, now) == full(entry, then)
                assert now.standing[entry.key] == then.standing[entry.key]
        assert hidden_keys(sheet, now.state) == hidden
