"""A site's file: written, read, checked; older ones open."""

import json
from pathlib import Path

import pytest
from hypothesis import given, settings

from calc.site import file
from calc.site.demo import alder_terrace
from calc.site.facts import ASSUMED, Fact
from calc.site.site import Site
from tests.site.made_sites import sites

ROOT = Path(__file__).resolve().parents[2]
DEMO = ROOT / "docs" / "demo" / "alder-terrace.json"
DESCRIPTION = ROOT / "docs" / "site-file.md"


def data(**changes):
    return {**file.to_data(alder_terrace()), **changes}


@given(sites())
@settings(max_examples=60, deadline=None)
def test_a_site_written_and_read_is_the_same(site):
    opened = file.read(file.write(site))
    assert opened.errors == ()
    assert opened.site == site


def test_the_demo_file_is_alder_terrace():
    assert file.read(DEMO.read_text(encoding="utf-8")) == file.Opened(alder_terrace())


def test_the_demo_file_is_as_it_would_be_written():
    assert DEMO.read_text(encoding="utf-8") == file.write(alder_terrace())


def test_an_assumed_fact_keeps_its_reason():
    site = Site("S").put("pump.set", Fact("3 bar", ASSUMED, "as the neighbour's"))
    assert file.read(file.write(site)).site.get("pump.set").reason == "as the neighbour's"


@pytest.mark.parametrize("changes, words", [
    ({"format": "other"}, "not a site"),
    ({"version": 99}, "version 99"),
    ({"version": "1"}, "no version number"),
    ({"version": True}, "no version number"),
    ({"version": -1}, "version -1 cannot be read"),
    ({"name": "x" * 61}, "“name” must be up to 60"),
    ({"name": 3}, "“name” must be"),
    ({"system": "imperial"}, "“system” must be"),
    ({"facts": []}, "“facts” must be"),
    ({"facts": {"pump.set": 3.5}}, "Fact “pump.set”: write text"),
    ({"facts": {"pump.set": {"text": "3 bar"}}}, "an object of “text” and “assumed”"),
    ({"facts": {"pump.set": {"text": "3 bar", "assumed": 1}}}, "must say why"),
    ({"facts": {"pump.set": {"text": "3 bar", "assumed": "x" * 999}}}, "a reason has up to"),
    ({"facts": {"pump.set": "4 m/s"}}, "Fact “pump.set”: “m/s” is a unit of speed"),
    ({"tables": []}, "“tables” must be"),
    ({"tables": {"outlets": {}}}, "Table “outlets” must be a list"),
    ({"tables": {"outlets": [{}] * 61}}, "up to 60 rows"),
    ({"tables": {"outlets": ["Hut"]}}, "Table “outlets”, row 1 must be an object"),
    ({"tables": {"outlets": [{}, {"flow": "12 bar"}]}},
     "Table “outlets”, row 2, column “flow”: “bar” is a unit of pressure"),
])  # fmt: skip
def test_what_cannot_be_read_is_named_by_table_row_and_column(changes, words):
    opened = file.from_data(data(**changes))
    assert opened.site is None
    assert words in " ".join(opened.errors)


def test_every_fault_is_named_at_once():
    broken = data(
        name=1, facts={"pump.set": "x"}, tables={"outlets": [{"before": "-1"}, {"flow": "tall"}]}
    )
    assert len(file.from_data(broken).errors) == 4


@pytest.mark.parametrize("changes, words", [
    ({"colour": "green"}, "“colour” is not known"),
    ({"facts": {"pump.colour": "green"}}, "fact “pump.colour” is not known"),
    ({"tables": {"roofs": []}}, "table “roofs” is not known"),
    ({"tables": {"outlets": [{"roof": "x"}]}}, "row 1: column “roof” is not known"),
    ({"tables": {"outlets": [{"at": "barn"}]}}, "row 1: no pipe section ends at “barn” yet"),
])  # fmt: skip
def test_what_is_not_known_is_left_out_and_said(changes, words):
    opened = file.from_data(data(**changes))
    assert opened.errors == ()
    assert words in " ".join(opened.notes)


@pytest.mark.parametrize(
    "text, words",
    [
        ("{oops", "line 1, column 2"),
        ('{"format": NaN}', "NaN is not a number"),
        ("[" * 100_000, "not JSON"),
        ("[]", "not a site"),
        (" " * 200_001, "200000 are allowed"),
    ],
    ids=["broken", "nan", "deep", "list", "large"],
)
def test_text_that_is_no_site_is_said_to_be_none(text, words):
    assert words in file.read(text).errors[0]


def test_a_file_of_an_older_version_is_turned_into_this_one():
    def from_zero(old):
        return {**old, "version": 1, "facts": {"pump.set": old["set"]}, "name": old["title"]}

    old = json.dumps({"format": file.FORMAT, "version": 0, "title": "Old", "set": "3 bar"})
    opened = file.read(old, {0: from_zero})
    assert (opened.site.name, opened.site.get("pump.set").text) == ("Old", "3 bar")
    assert file.read(old).errors == ("Files of version 0 cannot be read.",)


def test_an_object_of_the_file_is_not_changed_by_reading_it():
    given_data = data()
    before = json.dumps(given_data)
    file.from_data(given_data)
    assert json.dumps(given_data) == before


@pytest.mark.skipif(not DESCRIPTION.exists(), reason="no description yet")
def test_the_description_names_every_fact_table_and_column():
    from calc.site.facts import SLOTS
    from calc.site.rows import TABLES

    text = DESCRIPTION.read_text(encoding="utf-8")
    assert [s.key for s in SLOTS if f"`{s.key}`" not in text] == []
    for table in TABLES:
        line = next(one for one in text.splitlines() if one.startswith(f"| `{table.key}` |"))
        assert [c.key for c in table.columns if f"`{c.key}`" not in line] == []


# Signs that show nothing, or turn the way of writing round ------------------------------------

HIDDEN = "\u202e\u2066\u200b\ufeff\x00\x07"  # beside letters, each of them would mislead


def test_hidden_signs_are_no_part_of_a_files_words():
    data = file.to_data(alder_terrace())
    data |= {"name": f"Ol{HIDDEN}d mill", "note": f"two\nli{HIDDEN}nes"}
    data["facts"] = {"pump.set": {"text": f"3{HIDDEN} bar", "assumed": f"a gu{HIDDEN}ess"}}
    data["tables"] = {"outlets": [{"name": f"Si{HIDDEN}nk", "at": HIDDEN, "kind": "sink"}]}
    site = file.from_data(data).site
    assert (site.name, site.note) == ("Old mill", "two\nlines")
    assert site.facts == {"pump.set": Fact("3 bar", ASSUMED, "a guess")}
    assert site.rows("outlets") == ({"name": Fact("Sink"), "kind": Fact("sink")},)


def test_letters_of_any_writing_are_kept_as_they_are():
    data = file.to_data(Site("Wäsche\u00a0haus 水"))
    assert file.from_data(data).site.name == "Wäsche\u00a0haus 水"
