"""A link that carries a site: what it leaves out the site says, cut it says nothing."""

import json

import pytest

from calc import bridge
from calc.page.state import State
from calc.sheets import KEYS, sheet
from calc.site import link
from calc.site.demo import FROM_THE_EXAMPLE, alder_terrace, to_change
from calc.site.pack import FROM_A_LINK, pack, unpack


def asked(op, **more):
    return json.loads(bridge.handle(json.dumps({"op": op, **more})))


def site(do, **more):
    return asked("site", do=do, **{"sheet": "reach", "system": "metric", **more})


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("key", KEYS)
def test_a_link_with_a_site_alone_fills_a_sheet_as_the_site_does(key, system):
    packed = pack(alder_terrace())
    fragment = link.of_site(system, packed)
    read = asked("read", sheet=key, fragment=fragment)
    filled = site("fill", site=site("demo")["site"], sheet=key, system=system)
    assert not read["cut"] and not read["said"]
    assert {k: read["texts"][k] for k in filled["texts"]} == filled["texts"]
    assert {k: read["standing"][k] for k in filled["standing"]} == filled["standing"]
    assert read["site"]["packed"] == packed


def test_what_stands_as_the_site_fills_it_is_left_out_and_what_was_typed_is_not():
    filled = site("fill", site=site("demo")["site"])
    texts, units = filled["texts"] | {"climb": "9.5"}, filled["units"]
    standing = filled["standing"] | {"climb": "given"}
    carried = {"text": pack(alder_terrace()), "way": filled["way"],
               "kept": [key for key in filled["texts"] if key != "climb"]}  # fmt: skip
    request = {"sheet": "reach", "texts": texts, "units": units, "standing": standing}
    worked = asked("work", **request, site=carried)
    keys = [piece.partition("=")[0] for piece in worked["link"].split("&")]
    assert "climb" in keys and "pressure" not in keys and keys[-1] == "c"
    read = asked("read", sheet="reach", fragment="#" + worked["link"])
    assert read["texts"]["climb"] == "9.5" and "climb" not in read["site"]["filled"]
    stands = {**carried, "kept": read["site"]["filled"]}
    form = {k: read[k] for k in ("texts", "units", "standing")}
    again = asked("work", sheet="reach", **form, site=stands)
    assert again["html"].split("sl-head")[0] == worked["html"].split("sl-head")[0]


@pytest.mark.parametrize("cut", [1, 5, 40, 400])
def test_a_link_cut_off_inside_its_site_says_so_and_nothing_else(cut):
    fragment = link.of_site("metric", pack(alder_terrace()))[:-cut]
    read = asked("read", sheet="reach", fragment=fragment)
    assert read["cut"] and "site" not in read


def test_a_site_that_cannot_be_read_gives_no_verdict():
    read = asked("read", sheet="reach", fragment=link.of_site("metric", "9m~a~~~"))
    assert read["cut"] and any("another release" in text for text in read["said"])


def test_a_way_that_the_site_does_not_have_is_the_first():
    fragment = link.of_site("metric", pack(alder_terrace()), "now/Ballroom")
    read = asked("read", sheet="reach", fragment=fragment)
    assert read["site"]["way"] == site("fill", site=site("demo")["site"])["way"]


def test_a_link_without_a_site_is_as_it_was():
    state = State("metric", {"climb": "20"}, {"climb": "m"}, {"climb": "given"})
    plain = link.write(sheet("reach"), state)
    assert plain == link.write(sheet("reach"), state, "", "now/", frozenset({"climb"}))
    assert "site" not in asked("read", sheet="reach", fragment=plain)


def test_the_example_to_be_typed_over_is_assumed_and_a_link_still_says_so():
    made = to_change("Ours")
    assert {fact.standing for fact in made.facts.values()} == {"assumed"}
    back = unpack(pack(made))
    rows = [row for table in back.tables.values() for row in table]
    facts = [fact for held in (back.facts, *rows) for fact in held.values()]
    assert {fact.standing for fact in facts} == {"assumed"}
    assert back.get("pump.set").reason == FROM_THE_EXAMPLE
    assert not [fact for fact in facts if fact.reason in ("", FROM_A_LINK)]


def test_what_was_assumed_is_named_with_the_sites_own_reason():
    state = {"texts": {"water": "15"}, "units": {"water": "°C"}, "standing": {"water": "assumed"}}
    reply = asked("work", sheet="reach", **state, reasons={"water": "read off the shed"})
    (water,) = [one for one in reply["assumed"] if one["key"] == "water"]
    assert water["reason"] == "read off the shed"


@pytest.mark.parametrize("system", ["metric", "us"])
def test_a_table_unchanged_goes_back_without_a_change_in_either_system(system):
    demo = site("demo")["site"]
    filled = site("fill", site=demo, sheet="keep_up", system=system)
    put = site("back", site=demo, sheet="keep_up", system=system, way=filled["way"],
               **{k: filled[k] for k in ("texts", "units", "standing")})  # fmt: skip
    assert put["changes"] == [] and put["site"] == demo


def test_a_bare_number_in_a_table_goes_back_in_the_unit_of_its_column():
    demo = site("demo")["site"]
    filled = site("fill", site=demo, sheet="keep_up", system="us")
    assert filled["units"]["runs.long"] == "ft"
    rows = filled["texts"]["runs"].split(";")
    rows[0] = rows[0].replace(rows[0].split(",")[2], "100", 1)
    put = site("back", site=demo, sheet="keep_up", system="us", way=filled["way"],
               texts=filled["texts"] | {"runs": ";".join(rows)},
               units=filled["units"], standing=filled["standing"] | {"runs": "given"})  # fmt: skip
    (length,) = [row["length"] for row in put["site"]["tables"]["sections"][:1]]
    assert "100 ft" in json.dumps(length)


def test_the_links_of_an_answer_take_the_site_along():
    filled = site("fill", site=site("demo")["site"])
    carried = {"text": pack(alder_terrace()), "way": filled["way"], "kept": list(filled["texts"])}
    worked = asked("work", sheet="reach", site=carried,
                   **{k: filled[k] for k in ("texts", "units", "standing")})  # fmt: skip
    links = worked["html"].split('class="sl-next"')[1].split('href="')[1:]
    assert links and all("site=1m~Alder" in one.split('"')[0] for one in links)
    assert worked["onward"] == link.of_site("metric", carried["text"], carried["way"])
