"""A site completed with what is usual: nothing given is touched, and what is added is assumed."""

import json
import math

import pytest

from calc import bridge, practice
from calc.pipe import pipes
from calc.sheets.parts import ways
from calc.sheets.parts.completed import COMPLETED, INVENTED, completed, with_reasons
from calc.sheets.parts.moments import THEN
from calc.site import link
from calc.site.demo import FROM_THE_EXAMPLE, alder_terrace, to_change
from calc.site.facts import ASSUMED, Fact
from calc.site.pack import pack, unpack
from calc.site.site import Site

LETTER = {"from": "pump", "to": "house", "length": "140 m", "height": "18 m"}


def told(system="metric", level="", **outlet):
    site = Site(system=system)
    if level:
        site = site.put("water.level", Fact(level))
    site = site.put_rows("sections", ({key: Fact(text) for key, text in LETTER.items()},))
    rows = ({key: Fact(text) for key, text in outlet.items()},) if outlet else ()
    return site.put_rows("outlets", rows)


def answered(site, system):
    """What the page of the whole supply says when it is opened from the site."""
    asked = {"op": "read", "sheet": "keep_up", "fragment": link.of_site(system, pack(site))}
    form = json.loads(bridge.handle(json.dumps(asked)))
    return json.loads(bridge.handle(json.dumps({**form, "op": "work", "sheet": "keep_up"})))


def test_a_whole_site_stays_as_it_is():
    site = alder_terrace()
    assert pack(completed(site)) == pack(site)


@pytest.mark.parametrize("system", ["metric", "us"])
def test_what_is_added_is_assumed_with_its_reason(system):
    before, after = told(system), completed(told(system))
    added = {path: fact for path, fact in after.facts.items() if path not in before.facts}
    assert {"pump.set", "suction.length", "suction.pipe", "water.level"} <= set(added)
    assert all(fact.standing == ASSUMED and fact.reason for fact in added.values())
    pipe = after.rows("sections")[0]["pipe"]
    assert pipe.standing == ASSUMED and pipe.reason
    assert all(after.rows("sections")[0][key].text == text for key, text in LETTER.items())


@pytest.mark.parametrize("system", ["metric", "us"])
def test_what_was_told_is_enough_for_an_answer(system):
    site = completed(told(system))
    reply = answered(site, system)
    assert reply["errors"] == {}
    assert "sl-verdict" in reply["html"]


def test_the_pipe_is_the_smallest_that_is_slow_enough():
    site = completed(told(name="Showers", at="house", kind="shower", after="3"))
    kind, _, size = site.word("sections", site.rows("sections")[0], "pipe").partition("/")
    flow = 3 * practice.OUTLET_BY_KEY["shower"].flow
    bores = [
        one.inside_m for one in pipes.sizes(kind) if flow / (math.pi / 4 * one.inside_m**2) <= 1.5
    ]
    assert pipes.pipe(kind, size).inside_m == min(bores)


@pytest.mark.parametrize("level", ["-3 m", "-12 m"])
def test_a_suction_pipe_is_longer_than_its_lift(level):
    site = completed(told(level=level).put("pump.placement", Fact("out")))
    assert site.value("suction.length") >= -site.value("water.level") + 3.0 - 1e-9


def test_it_goes_through_a_link():
    site = completed(told())
    assert pack(unpack(pack(site))) == pack(site)


def test_without_a_pump_no_pump_is_added():
    site = completed(told().put("pump.present", Fact("no")))
    assert not any(path.startswith(("pump.set", "suction.")) for path in site.facts)


@pytest.mark.parametrize("system", ["metric", "us"])
def test_a_line_that_goes_down_without_a_pump_named_is_one_without_a_pump(system):
    row = {"from": "pump", "to": "house", "length": "300 m", "height": "-30 m"}
    site = Site(system=system).put_rows("sections", ({k: Fact(t) for k, t in row.items()},))
    found = completed(site)
    assert found.get("pump.present") == Fact("no", ASSUMED, found.get("pump.present").reason)
    reply = answered(found, system)
    assert reply["errors"] == {} and "sl-verdict" in reply["html"]
    named = completed(site.put("pump.set", Fact("3 bar")))
    assert not named.get("pump.present").known


@pytest.mark.parametrize("system", ["metric", "us"])
def test_a_spring_gives_no_more_than_its_fall(system):
    """Its level is what heights are counted from, and never the example's."""
    row = {"from": "source", "to": "house", "length": "420 m", "height": "-38 m"}
    site = Site(system=system).put("pump.present", Fact("no"))
    site = site.put_rows("sections", ({key: Fact(text) for key, text in row.items()},))
    assert ways.way_to_outlet(completed(site), "Shower", THEN).running_pa < 1000 * 9.81 * 38
    level = completed(site).get("water.level")
    assert (level.text, level.standing) == ("0 m" if system == "metric" else "0 ft", ASSUMED)
    rising = site.put_cell("sections", 0, "height", Fact("0 m"))  # counted from elsewhere
    assert not completed(rising).get("water.level").known


# Reasons told again -----------------------------------------------------------------------------


def reasons(site):
    """{place: reason} of all that is assumed in a site."""
    rows = {
        (table, at, key): fact
        for table, held in site.tables.items()
        for at, row in enumerate(held)
        for key, fact in row.items()
    }
    return {
        p: fact.reason for p, fact in {**site.facts, **rows}.items() if fact.standing == ASSUMED
    }


def falling(system):
    row = {"from": "pump", "to": "house", "length": "300 m", "height": "-30 m"}
    return Site(system=system).put_rows("sections", ({k: Fact(t) for k, t in row.items()},))


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("made", [told, falling])
def test_a_link_tells_again_why_each_thing_was_completed(made, system):
    site = completed(made(system))
    opened = unpack(pack(site))
    assert reasons(opened) != reasons(site)  # a link has no room for them
    assert reasons(with_reasons(opened)) == reasons(site)
    assert pack(with_reasons(opened)) == pack(site)


def test_the_page_that_a_completed_link_opens_says_its_reasons():
    where = link.of_site("metric", pack(completed(told())))
    asked = {"op": "read", "sheet": "keep_up", "fragment": where}
    held = json.loads(bridge.handle(json.dumps(asked)))["site"]
    said = {*held["reasons"].values(), *held["cells"].values()}
    assert "usual; our choice" in said
    assert not {one for one in said if "whoever made the link" in one}


def well(**facts):
    site = told().put("pump.placement", Fact("in"))
    for path, text in facts.items():
        site = site.put(path.replace("__", "."), Fact(text))
    return site


@pytest.mark.parametrize("facts", [{"pump__height": "-40 m"}, {"water__level": "-25 m"}])
def test_a_pump_in_its_water_is_answered_from_either_depth(facts):
    """It lifts from the water's level, whatever it hangs at, and has no suction pipe."""
    site = completed(well(**facts))
    (depth,) = facts.values()
    assert site.get("pump.height").text == site.get("water.level").text == depth
    assert {site.get(path).standing for path in ("pump.height", "water.level")} == {
        "given", ASSUMED}  # fmt: skip
    assert site.value("pump.sensed") == 0.0  # the set pressure is that at the top of the well
    assert site.value("suction.length") == pytest.approx(0.1)
    assert answered(site, "metric")["errors"] == {}
    again = with_reasons(unpack(pack(site)))
    assert again.get("suction.length").reason == site.get("suction.length").reason


def test_a_line_of_unknown_end_leads_to_the_tank_that_it_fills():
    site = told().put_cell("sections", 0, "height", Fact(""))
    site = site.put_rows("tanks", ({"name": Fact("hill"), "level": Fact("25 m")},))
    made = completed(site)
    assert made.rows("sections")[0]["height"].text == "25 m"
    assert made.word("outlets", made.rows("outlets")[0], "kind") == "float"
    assert answered(made, "metric")["errors"] == {}
    with_taps = completed(site.put_rows("outlets", told(name="Tap", at="house", kind="sink")
                                        .rows("outlets")))  # fmt: skip
    first = with_taps.rows("sections")[0]  # no pump was told, and no well: they hang on it
    assert (first["from"].text, first["height"].text) == ("source", "0 m")
    assert with_taps.get("water.level").text == "25 m"
    for path, kind in (("pump.set", "2 bar"), ("water.kind", "well")):
        filled = completed(site.put(path, Fact(kind)).put_rows(
            "outlets", told(name="Tap", at="house", kind="sink").rows("outlets")))  # fmt: skip
        assert filled.rows("sections")[0]["height"].text == "25 m"
        assert filled.word("outlets", filled.rows("outlets")[0], "name") == "Tank"


def test_a_tank_above_a_house_without_a_pump_is_where_its_line_comes_from():
    site = told(name="Tap", at="house", kind="sink", after="1").put("pump.present", Fact("no"))
    site = site.put_cell("sections", 0, "from", Fact("source"))
    site = site.put_cell("sections", 0, "height", Fact(""))
    site = site.put_rows("tanks", ({"name": Fact("hill"), "level": Fact("28 m")},))
    made = completed(site)
    assert made.get("water.level").text == "28 m"
    assert (
        made.get("water.level").standing == made.rows("sections")[0]["height"].standing == ASSUMED
    )
    page = answered(made, "metric")
    assert page["errors"] == {}
    again = with_reasons(unpack(pack(made)))
    assert again.get("water.level").reason == made.get("water.level").reason


def test_what_another_assumed_keeps_its_maker():
    site = completed(told()).put("pump.set", Fact("4.2 bar", ASSUMED, "a guess"))
    opened = with_reasons(unpack(pack(site)))
    assert opened.get("pump.set").reason == "assumed by whoever made the link"
    assert opened.get("suction.length").reason == site.get("suction.length").reason


def test_a_copy_of_the_example_stays_from_the_example():
    site = unpack(pack(to_change("Mine")))
    found = with_reasons(site)
    held = [found.get(path) for path in COMPLETED]
    usual = {"our choice", "counted from the ground at the source", INVENTED}
    assert {fact.reason for fact in held if fact.text} <= {FROM_THE_EXAMPLE, *usual}
    assert reasons(found) == reasons(site)
