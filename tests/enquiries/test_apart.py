"""The enquiries kept apart are whole and read well: there are none to ask where no file holds any.

Failures name an enquiry and never its words, since whoever writes the reader does not read them.
"""

import json
from pathlib import Path

import pytest

from calc.site.facts import BY_PATH
from tests.enquiries.score import score

FILE = Path(__file__).parent / "apart.json"
APART = json.loads(FILE.read_text("utf-8")) if FILE.exists() else []
# told by rows of a site's tables, or worked out from several of them
OF_ROWS = ("way.", "outlets.", "animals.", "beds.", "tank.")


@pytest.mark.skipif(not APART, reason="no letters are set apart")
def test_they_are_read_well():
    total = score(APART, later=())  # written when every path was there
    shares = f"{total.found_share:.3f} found, {total.wrong_share:.3f} wrong"
    assert total.found_share >= 0.85 and total.wrong_share < 0.02, (shares, total.faults)


@pytest.mark.skipif(not APART, reason="no letters are set apart")
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
