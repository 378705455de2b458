"""The guides' links to numbers, as the build writes them."""

import re
from pathlib import Path

import pytest

from calc.page import row_text
from calc.page.fields import Rows
from calc.page.state import filled_rows, hidden_keys
from calc.site import link
from calc.site.link_texts import rows_out
from scripts.site_hook import NUMBERS, PAGES, with_links

DOCS = Path(__file__).resolve().parents[2] / "docs"
GUIDES = [path for path in sorted(DOCS.glob("*.md")) if NUMBERS.search(path.read_text("utf-8"))]


def typed(entry, read):
    """A field's text and unit; of a table the cells with their units, as a link writes them."""
    if not isinstance(entry, Rows):
        return read.texts[entry.key], read.units.get(entry.key)
    full = row_text.encode(filled_rows(entry, read.texts[entry.key], read.system))
    return rows_out(entry, full, read.units, read.system, {})


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
                assert now.standing[entry.key] == then.standing[entry.key]
                assert typed(entry, now) == typed(entry, then)
        assert hidden_keys(sheet, now.state) == hidden
