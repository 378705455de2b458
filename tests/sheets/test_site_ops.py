"""What the page asks about sites: dictionaries in and out."""

import json

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import KEYS, sheet
from calc.sheets.site_ops import handle
from calc.site import file
from calc.site.demo import alder_terrace


def ask(do, **more):
    """One request through JSON, as the bridge passes it."""
    reply = handle(json.loads(json.dumps({"op": "site", "do": do, **more})))
    return json.loads(json.dumps(reply))


def demo():
    return ask("demo")["site"]


def test_the_demo_is_alder_terrace():
    reply = ask("demo")
    assert reply["name"] == "Alder Terrace"
    assert reply["summary"] == "8 pipe sections, 7 outlets, 1 tank"
    assert reply["site"] == file.to_data(alder_terrace())


def test_a_new_site_is_named_and_nothing_in_it_is_known():
    reply = ask("new", name="Hill farm", system="us")
    assert (reply["name"], reply["summary"]) == ("Hill farm", "nothing known yet")
    assert reply["site"]["facts"] == reply["site"]["tables"] == {}
    assert reply["site"]["system"] == "us"


def test_a_site_exported_opens_again():
    text = ask("export", site=demo())["text"]
    assert ask("open", text=text)["site"] == demo()


def test_a_site_packed_unpacks_again():
    text = ask("pack", site=demo())["text"]
    assert ask("unpack", text=text)["site"] == demo()


@pytest.mark.parametrize("request_", [
    {"do": "open", "text": "{"}, {"do": "unpack", "text": "?"}, {"do": "new", "name": " "},
    {"do": "fill", "site": {}, "sheet": "reach"}, {"do": "parts", "text": "[]"},
    {"do": "rename_point", "site": file.to_data(alder_terrace()), "old": "x", "new": "y"},
    {"do": "put", "site": file.to_data(alder_terrace()), "path": "pump.set", "text": "x"},
])  # fmt: skip
def test_what_cannot_be_done_is_said_in_errors(request_):
    assert ask(**request_)["errors"]


def test_an_unknown_request_is_a_fault_of_the_page():
    with pytest.raises(KeyError):
        handle({"do": "guess"})


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("key", KEYS)
def test_a_fill_is_a_state_of_the_sheet(key, system):
    reply = ask("fill", site=demo(), sheet=key, way="", system=system)
    state = State(system, reply["texts"], reply["units"], reply["standing"])
    outcome = work(sheet(key), state)
    wrong = {k: v for k, v in outcome.errors.items() if reply["standing"].get(k) != "unknown"}
    assert wrong == {}
    assert set(reply["texts"]) <= {entry.key for entry in sheet(key).fields}


def test_a_number_and_its_unit_come_apart_for_box_and_menu():
    reply = ask("fill", site=demo(), sheet="reach", system="us")
    assert (reply["texts"]["climb"], reply["units"]["climb"]) == ("39.37", "ft")


def test_a_fill_says_the_ways_and_the_line_to_show():
    reply = ask("fill", site=demo(), sheet="reach", system="metric")
    assert reply["way"] == reply["ways"][0]["value"] == "now/Wash-house shower"
    assert reply["line"] == "3 sections, 155 m"
    assert "climb" in reply["one_to_one"] and "length" not in reply["one_to_one"]


def test_what_is_typed_goes_back_with_its_changes():
    fill = ask("fill", site=demo(), sheet="keep_up", system="us")
    texts = fill["texts"] | {"set": "60"}
    standing = fill["standing"] | {"set": "given"}
    reply = ask("back", site=demo(), sheet="keep_up", system="us", texts=texts,
                units=fill["units"], standing=standing)  # fmt: skip
    assert reply["site"]["facts"]["pump.set"] == "60 psi"
    assert reply["changes"] == ["Set pressure at the pump: 50.76 psi becomes 60 psi."]
    assert reply["what_if"] == []


def test_a_duplicate_differs_by_its_name_only():
    reply = ask("duplicate", site=demo(), name="With a larger pipe")
    assert reply["site"] == {**demo(), "name": "With a larger pipe"}


def test_one_fact_can_be_put_given_assumed_or_unknown():
    site = ask("put", site=demo(), path="pump.set", text="4")["site"]
    assert site["facts"]["pump.set"] == "4 bar"
    site = ask("put", site=site, path="pump.set", text="4 bar", assumed="a guess")["site"]
    assert site["facts"]["pump.set"] == {"text": "4 bar", "assumed": "a guess"}
    assert "pump.set" not in ask("put", site=site, path="pump.set", text="")["site"]["facts"]


def test_a_pump_of_the_parts_list_is_put_into_the_site_with_its_curve():
    points = [{"flow": f"{q} L/min", "head": f"{h} m"} for q, h in ((0, 60), (40, 50), (80, 30))]
    text = json.dumps({"format": "springline-parts", "version": 1,
                       "pumps": [{"name": "Shed pump", "points": points}]})  # fmt: skip
    assert ask("parts", text=text)["pumps"] == [{"value": "Shed pump", "label": "Shed pump"}]
    site = ask("use_pump", site=demo(), text=text, pump="Shed pump")["site"]
    assert site["facts"]["pump.curve"].startswith("Flow L/min; Head m\n0; 60")
    fill = ask("fill", site=site, sheet="keep_up", system="metric")
    assert fill["texts"]["pump"] == "own"
    assert fill["texts"]["table"] == site["facts"]["pump.curve"]


@pytest.mark.parametrize("do", ["new", "derive", "duplicate"])
def test_hidden_signs_are_no_part_of_a_sites_name(do):
    assert ask(do, site=demo(), name=" Old\u202e mi\u200bll")["name"] == "Old mill"
    assert ask(do, site=demo(), name="\u200b\u2060")["errors"]


def test_hidden_signs_are_no_part_of_a_points_name():
    renamed = ask("rename_point", site=demo(), old="cabin 1", new="ca\u202ebin 9")["site"]
    assert "cabin 9" in [row["to"] for row in renamed["tables"]["sections"]]
    again = ask("rename_point", site=demo(), old="cabin 1", new="cab\u200bin 2")
    assert "another point already" in again["errors"][0]


def test_hidden_signs_are_no_part_of_one_fact():
    put = ask("put", site=demo(), path="pump.set", text="3\u200b bar", assumed="gu\u202eess")[
        "site"
    ]
    assert put["facts"]["pump.set"] == {"text": "3 bar", "assumed": "guess"}
