"""Where a link of an answer leads: to the numbers the answer used, each still whose it was."""

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet, site_ops
from calc.sheets.addresses import addresses
from calc.site import link

# A case that needs a fix, one field of it at the value that a blank form of the sheet has, while
# the example has another: the fix must not go back to the example's.
TYPED = [
    ("keep_up", "us", {"set": "50 psi"}, "set"),
    ("keep_up", "us", {"altitude": "1000 ft"}, "altitude"),
    ("suction", "metric", {"lift": "7.5 m", "length": "9 m", "strainer": "0.2 m"}, "strainer"),
    ("suction", "us", {"lift": "26 ft", "length": "30 ft", "kind": "pvc40"}, "kind"),
    ("pump_match", "metric", {"climb": "35 m", "set": ""}, "set"),
    ("pump_match", "metric", {"climb": "20 m", "pump": "small"}, "pump"),
]


def opened(key, state, carried=("", "")):
    """[(Link to the sheet itself, Reading of its address)] of the answer to a form."""
    outcome = work(sheet(key), state)
    assert outcome.answer, outcome.errors
    where = addresses(sheet(key), state, outcome.example, carried=carried)
    made = [fix.link for fix in outcome.answer.fixes if fix.link]
    found = [one for one in made if one.sheet == key]
    assert found
    return [(one, link.read(where(one).partition("#")[2], sheet(key))) for one in found]


@pytest.mark.parametrize("key, system, texts, name", TYPED)
def test_a_fix_keeps_what_was_typed_whatever_the_example_has(key, system, texts, name):
    state = State(system, texts, {}, dict.fromkeys(texts, "given"))
    entry = sheet(key).field(name)
    for one, read in opened(key, state):
        if one.values[name] == texts[name]:  # else the fix is to change it
            asked, now = (link.said(sheet(key), entry, held) for held in (state, read.state))
            assert now == asked
            assert read.standing[name] == "given"


def test_what_nobody_gave_is_not_made_the_readers_own_by_a_fix():
    state = State("metric", {"set": "2 bar", "water": "12 °C", "suctionlong": "?"}, {},
                  {"set": "given", "water": "assumed"})  # fmt: skip
    for _, read in opened("keep_up", state):
        found = [read.standing[name] for name in ("water", "suctionlong", "lift")]
        assert found == ["assumed", "unknown", "example"]
        assert read.texts["suctionlong"] == "?"


def test_what_is_typed_over_a_site_stays_although_the_example_has_the_same():
    site = site_ops.handle({"do": "demo"})["site"]
    site["facts"]["pump.set"] = "2 bar"  # the example holds 3.5 bar
    packed = site_ops.handle({"do": "pack", "site": site})["text"]
    filled = site_ops.handle({"do": "fill", "site": site, "sheet": "keep_up", "system": "metric"})
    kept = frozenset(filled["texts"]) - {"set"}
    state = State("metric", {**filled["texts"], "set": "3.5 bar"}, filled["units"],
                  {**filled["standing"], "set": "given"}, {}, kept)  # fmt: skip
    for one, read in opened("keep_up", state, (packed, "now/")):
        assert read.site == packed
        assert "set" in read.named, one.text
        assert "water" not in read.named  # as the site fills it
