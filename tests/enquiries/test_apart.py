"""The enquiries kept apart are whole: what is expected of each stands in its own words.

Failures name an enquiry and never its words, since whoever writes the reader does not read them.
"""

import json
from pathlib import Path

import pytest

from calc.site.facts import BY_PATH

APART = json.loads((Path(__file__).parent / "apart.json").read_text("utf-8"))
# told by rows of a site's tables, or worked out from several of them
OF_ROWS = ("way.", "outlets.", "animals.", "beds.", "tank.")


def test_there_are_fifty_and_no_name_twice():
    assert len({one["name"] for one in APART}) == len(APART) == 50


@pytest.mark.parametrize("at", range(len(APART)))
def test_what_is_expected_stands_in_its_text(at):
    one = APART[at]
    for fact in one["facts"]:
        known = fact["path"] in BY_PATH or fact["path"].startswith(OF_ROWS)
        assert known and (fact["quote"] in one["text"]), one["name"]
        assert ("value" in fact) != ("low" in fact), one["name"]
    for words in one["not_facts"]:
        assert words in one["text"], one["name"]
    assert 15 <= len(one["text"].split()) <= 240, one["name"]
