"""A site is worked out as the page does it that opens the link."""

import json

import pytest

from calc import bridge
from calc.bulk import letters, sites
from calc.bulk.answers import ALL, Wanted
from calc.sheets import KEYS, sheet
from calc.site import file
from calc.site.demo import alder_terrace
from calc.site.pack import pack
from calc.site.site import Site
from tests.site.made_sites import workable

PLAIN = str.maketrans("\u00a0\u202f", "  ")
ALDER = file.to_data(alder_terrace())


def asked(**request):
    return json.loads(bridge.handle(json.dumps(request)))


def page_of(found, system):
    """What the page says that opens the link of a record."""
    key, fragment = found["sheet"], found["link"].partition("#")[2]
    read = asked(op="read", sheet=key, fragment=fragment)
    form = {part: read[part] for part in ("texts", "units", "standing")}
    carried = {"text": read["site"]["packed"], "way": read["site"]["way"],
               "kept": read["site"]["filled"]}  # fmt: skip
    reply = asked(op="work", sheet=key, system=system, site=carried, **form)
    assert reply["link"] == fragment
    return reply


def alike(found, system):
    reply = page_of(found, system)
    assert bool(found["error"]) == bool(reply["errors"])
    if found["error"]:
        return
    text = reply["text"].translate(PLAIN)
    assert f"{found['verdict']}: {found['sentence']}\n" in text
    for one in (*found["figures"], *found["findings"]):
        assert one.get("shown", one.get("text")) in text


@pytest.mark.parametrize("seed", range(25))
def test_a_site_answers_as_the_page_that_opens_its_link(seed):
    site = workable(seed)
    record = sites.worked(file.to_data(site), Wanted(sheets=("keep_up", "reach")))
    for found in record["answers"]:
        alike(found, site.system)


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_example_site_answers_so_on_every_sheet_it_fills(system):
    record = sites.worked(ALDER, Wanted(system=system, sheets=(ALL,), figures=(ALL,)))
    assert record["error"] == "" and len(record["answers"]) > 12
    for found in record["answers"]:
        alike(found, system)


def test_a_sheet_that_stands_on_the_example_more_than_on_the_site_is_left_out():
    keys = {one["sheet"] for one in sites.worked(ALDER, Wanted(sheets=(ALL,)))["answers"]}
    assert keys < set(KEYS) and "fault" not in keys and "keep_up" in keys
    assert sites.worked(ALDER, Wanted(sheets=("fault",)))["answers"][0]["sheet"] == "fault"


def test_a_site_without_a_pump_is_asked_nothing_of_one():
    data = {**ALDER, "facts": {**ALDER["facts"], "pump.present": "no"}}
    keys = {one["sheet"] for one in sites.worked(data, Wanted(sheets=(ALL,)))["answers"]}
    assert "pump_match" not in keys and "keep_up" in keys


def test_the_whole_supply_is_asked_where_nothing_else_is():
    (found,) = sites.worked(ALDER, Wanted())["answers"]
    assert found["sheet"] == "keep_up" and pack(alder_terrace())[:30] in found["link"].replace(
        "+", " "
    )


def test_an_id_is_handed_back_beside_the_site_or_around_it():
    assert sites.worked({"id": 7, **ALDER}, Wanted())["id"] == 7
    found = sites.worked({"id": "a-7", "site": ALDER}, Wanted())
    assert (found["id"], found["name"], found["notes"]) == ("a-7", "Alder Terrace", [])


@pytest.mark.parametrize("given", [None, 3, [], {}, {"site": {}}, {"id": 1}, {"format": "other"}])
def test_what_is_not_a_site_says_so(given):
    assert "This is not a site" in sites.worked(given, Wanted())["error"]


def test_every_fault_of_a_site_is_told():
    data = {**ALDER, "facts": {"pump.set": "blue", "water.level": "3 kg"}}
    found = sites.worked(data, Wanted())
    assert "pump.set" in found["error"] and "water.level" in found["error"]
    assert found["answers"] == []


def test_of_an_empty_site_too_little_is_known():
    found = sites.worked(file.to_data(Site("Empty")), Wanted(sheets=(ALL,)))
    assert found["answers"] == [] and "Too little is known" in found["error"]


def test_a_letter_is_read_and_answered_by_what_it_is_about():
    found = letters.worked(
        "We have a spring 38 m above the house, 420 m of 32 mm PE 100 SDR 11 pipe, buried. It "
        "gives 4 litres a minute. There are two showers, both open together, and no pump.",
        Wanted(base="site/"),
    )
    facts = {one["path"]: one["text"] for one in found["facts"]}
    assert facts["way.length"] == "420 m" and facts["water.kind"] == "spring"
    assert found["sheet"] == "gravity" and found["verdict"] == "Does not work"
    assert found["link"].startswith("site/gravity/#")
    assert found["links"] and all(link.startswith("site/") for link in found["links"])
    alike(found, "metric")


def test_a_letter_that_tells_too_little_has_no_verdict_and_says_what_to_ask():
    found = letters.worked("Our house is 22 m above the well. Will it work?", Wanted())
    assert "verdict" not in found and found["ask"] and found["links"] and found["error"] == ""


@pytest.mark.parametrize("text", ["", "  \n", "Good morning!"])
def test_a_letter_without_a_fact_is_told(text):
    assert letters.worked(text, Wanted())["error"]


def test_every_title_is_one_sheets_own():
    titles = [sheet(key).title for key in KEYS]
    assert len(titles) == len(set(titles))  # by it a letter's sheets are known
