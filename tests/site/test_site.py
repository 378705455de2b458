"""A site as plain rows: read, checked, saved."""

import json
import math
from dataclasses import fields, replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.network.findings import findings
from calc.network.solve import solve
from calc.site import site as sites
from calc.site.demo import alder_terrace
from calc.site.rows import TABLES, PlaceRow, RunRow, read_value, save_value

DEMO = Path(__file__).resolve().parents[2] / "docs" / "demo" / "alder-terrace.json"


def rows(**changes):
    """Alder Terrace as a dictionary, some of it exchanged."""
    return {**sites.save(alder_terrace()), **changes}


def test_the_demo_file_is_alder_terrace():
    assert sites.read_json(DEMO.read_text(encoding="utf-8")) == alder_terrace()


def test_the_demo_file_is_as_it_would_be_saved():
    assert DEMO.read_text(encoding="utf-8") == sites.save_json(alder_terrace())


def test_alder_terrace_has_nothing_wrong():
    assert sites.check(alder_terrace()) == ()


def test_alder_terrace_runs_without_a_finding_as_it_opens():
    assert findings(solve(alder_terrace().network())) == ()


def test_alder_terrace_falls_short_at_the_top_when_a_hose_is_opened():
    opened = [row.name for row in alder_terrace().outlets if row.open]
    solution = solve(
        alder_terrace().with_open([*opened, "Wash-house tap", "Wash-house hose"]).network()
    )
    assert [state.name for state in solution.short] == ["Cabin 3 shower"]


def test_alder_terrace_has_what_its_story_names():
    site = alder_terrace()
    names = {row.name for table in TABLES for row in getattr(site, table)}
    story = {
        "Cabin 1", "Cabin 2", "Cabin 3", "Wash-house", "Goat trough", "Herb terraces",
        "Shallow well", "Cistern", "House pump",
    }  # fmt: skip
    assert story <= names


def test_heights_and_lengths_at_alder_terrace_are_those_of_a_hillside():
    site = alder_terrace()
    assert {row.name: row.level for row in site.waters}["Shallow well"] == -4.0
    cabins = [row.height for row in site.places if row.name.startswith("Cabin")]
    assert (min(cabins), max(cabins)) == (6.0, 18.0)
    assert all(7.0 <= row.length <= 140.0 for row in site.runs)


def test_a_site_saved_and_read_is_the_same():
    assert sites.read(json.loads(json.dumps(rows()))) == alder_terrace()


@pytest.mark.parametrize("table", sorted(TABLES))
def test_every_column_says_its_quantity(table):
    assert all(one.metadata.get("quantity") for one in fields(TABLES[table]))


@given(
    st.floats(1e-9, 1e4),
    st.sampled_from(["length", "pressure", "flow", "head", "percent"]),
)
@settings(max_examples=100, deadline=None)
def test_a_number_saved_reads_back_to_the_last_bits(value, quantity):
    back = read_value(save_value(value, quantity), quantity, "here")
    assert math.isclose(back, value, rel_tol=1e-15)


@pytest.mark.parametrize(
    ("value", "quantity", "text"),
    [(60.0, "length", "60 m"), (640.0, "length", "640 m"), (2.5e5, "pressure", "2.5 bar")],
)
def test_a_round_number_is_saved_as_a_person_would_write_it(value, quantity, text):
    assert save_value(value, quantity) == text


def test_saving_twice_changes_nothing():
    once = sites.save(sites.read(rows()))
    assert sites.save(sites.read(once)) == once


def test_heights_may_be_typed_in_feet():
    site = sites.read(rows(places=[{"name": "Hut", "height": "60 ft"}]))
    assert math.isclose(site.places[0].height, 60 * 0.3048)


def test_a_bare_number_is_si():
    assert sites.read(rows(places=[{"name": "Hut", "height": 18}])).places[0].height == 18.0


@pytest.mark.parametrize("changes, words", [
    ({"format": "other"}, "not a site"),
    ({"version": 99}, "version 99"),
    ({"colour": "green"}, "“colour” is no part"),
    ({"places": "none"}, "must be a list"),
    ({"places": ["Hut"]}, "Row 1 of “places” is not a row"),
    ({"places": [{"name": "Hut"}]}, "“height” is missing"),
    ({"places": [{"name": "Hut", "height": "tall"}]}, "Row 1 of “places” .“Hut”., height"),
    ({"places": [{"name": "Hut", "height": "4 bar"}]}, "unit of pressure"),
    ({"places": [{"name": "Hut", "height": True}]}, "not a number"),
    ({"places": [{"name": "", "height": 1}]}, "not a word"),
    ({"places": [{"name": "Hut", "height": 1, "roof": 2}]}, "“roof” is no column"),
    ({"places": [{"name": "Hut", "height": float("nan")}]}, "not a number"),
    ({"waters": [{"name": "W", "kind": "well", "level": 1, "fills": "yes"}]}, "neither true nor"),
])  # fmt: skip
def test_what_cannot_be_read_is_named(changes, words):
    with pytest.raises(InputError, match=words):
        sites.read(rows(**changes))


def test_text_that_is_not_json_is_said_to_be_none():
    with pytest.raises(InputError, match="line 1, column 2"):
        sites.read_json("{oops")


def changed_run(**changes):
    site = alder_terrace()
    return replace(site, runs=(replace(site.runs[0], **changes), *site.runs[1:]))


@pytest.mark.parametrize("changes, words", [
    ({"size": "41"}, "not a size"),
    ({"kind": "bamboo"}, "not a kind of pipe"),
    ({"fittings": (("knee", 1),)}, "not a fitting"),
    ({"length": 0.0}, "0 m long"),
    ({"end": "Pump inlte"}, "no place here"),
])  # fmt: skip
def test_the_check_names_the_row_that_is_wrong(changes, words):
    found = sites.check(changed_run(**changes))
    assert "Suction line" in {one.row for one in found}
    assert words in " ".join(one.text for one in found)


def test_the_check_names_every_wrong_row_not_only_the_first():
    site = changed_run(size="41")
    outlets = (replace(site.outlets[0], kind="fountain"), *site.outlets[1:])
    found = sites.check(replace(site, outlets=outlets))
    assert [one.row for one in found] == ["Suction line", "Cabin 1 shower"]


def test_the_check_names_a_hill_that_joins_nowhere():
    site = alder_terrace()
    found = sites.check(replace(site, hills=(replace(site.hills[0], join="Nowhere"),)))
    assert [one.row for one in found] == ["Knoll"]


def test_a_pump_may_be_given_by_its_own_curve():
    site = alder_terrace()
    curve = ((0.0, 56.0), (0.0005, 53.0), (0.001, 42.8), (0.0015, 22.0))
    own = replace(site, pumps=(replace(site.pumps[0], pump="", curve=curve),))
    assert sites.check(own) == ()
    assert sites.read(sites.save(own)) == own


def test_a_pump_curve_that_rises_names_the_pump():
    site = alder_terrace()
    curve = ((0.0, 30.0), (0.0005, 35.0), (0.001, 20.0))
    found = sites.check(replace(site, pumps=(replace(site.pumps[0], curve=curve),)))
    assert found[0].row == "House pump"
    assert "must fall" in found[0].text


def test_an_unknown_outlet_cannot_be_opened():
    with pytest.raises(InputError, match="no outlet of this site"):
        alder_terrace().with_open(["Fountain"])


def test_fittings_add_their_loss_in_the_pipes_own_bore():
    plain = sites.part_of(RunRow("r", "a", "b", "pe100-sdr11", "32", 10.0))
    bent = sites.part_of(RunRow("r", "a", "b", "pe100-sdr11", "32", 10.0, (("elbow90", 4),)))
    assert plain.k == 0.0
    assert 2.0 < bent.k < 4.0  # four elbows of 30 f_T, f_T 0.022 to 0.025: Crane TP-410


def test_places_need_only_a_name_and_a_height():
    assert sites.columns("places") == ("name", "height")
    assert PlaceRow("Hut", 3.0).height == 3.0
