"""Every sheet as a view of a site: filled from it with nothing retyped, and put back into it."""

from dataclasses import replace

import pytest

from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import Choice, Count, Rows, Text
from calc.page.form import work
from calc.page.state import State
from calc.pipe.line import Line
from calc.sheets import KEYS, sheet, views
from calc.sheets.parts import ways
from calc.site.demo import alder_terrace
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN, UNKNOWN, Fact
from calc.site.site import Site
from calc.units import QUANTITIES, parse
from tests.site.made_sites import workable

SYSTEMS = ("metric", "us")


def state(site, key, system, way="", **typed):
    """The form of a sheet filled from a site, with some of it typed over."""
    facts = views.fill(site, key, way, system)
    texts = {field: fact.text for field, fact in facts.items()} | typed
    standing = {field: fact.standing for field, fact in facts.items() if field not in typed}
    return State(system, texts, {}, standing | dict.fromkeys(typed, GIVEN))


def number(site, key, field, system="metric", way=""):
    fact = views.fill(site, key, way, system, 12)[field]
    return parse(fact.text, sheet(key).field(field).quantity).value


# Filling --------------------------------------------------------------------------------------


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("key", ["reach", "demand", "pipe", "suction", "keep_up", "tank"])
def test_an_enquiry_entered_once_goes_through_with_nothing_retyped(key, system):
    outcome = work(sheet(key), state(alder_terrace(), key, system))
    assert outcome.errors == {}
    assert outcome.answer is not None


@pytest.mark.parametrize("key", KEYS)
def test_every_field_of_a_view_is_one_of_its_sheet(key):
    known = {entry.key for entry in sheet(key).fields} | {"line"}  # where the sheet has it
    assert {one.field for one in views.VIEWS[key].fields} <= known


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("key", KEYS)
def test_every_sheet_can_be_filled_from_fifty_made_sites(key, system):
    for seed in range(50):
        site = workable(seed)
        outcome = work(sheet(key), state(site, key, system))
        wrong = {k: v for k, v in outcome.errors.items() if k in _filled(site, key)}
        assert wrong == {}, (seed, wrong)


def _filled(site, key):
    facts = views.fill(site, key)
    return {field for field, fact in facts.items() if fact.known} | {"", "line", "runs", "taps"}


@pytest.mark.parametrize("key", KEYS)
def test_nothing_is_made_up_where_nothing_is_known(key):
    given = {f for f, fact in views.fill(Site(), key).items() if fact.standing == GIVEN}
    counted = {"ask", "use", "figure", "taps", "runs", "tanks", "line", "height", "profile"}
    counted |= {"showers_open", "sinks_open", "hoses_open", "drip"}
    counted |= {"showerflow", "sinkflow", "hoseflow"}  # common practice
    counted |= {"stores", "draws"}  # no rows
    assert given <= counted


def test_an_unknown_fact_leaves_its_field_to_be_asked():
    site = alder_terrace().put("suction.length", NOT_KNOWN)
    fact = views.fill(site, "suction")["length"]
    assert (fact.standing, fact.text) in ((UNKNOWN, ""), (UNKNOWN, "?"))


def test_an_assumed_fact_is_filled_as_assumed_with_its_reason():
    site = alder_terrace().put("water.temperature", NOT_KNOWN)
    fact = views.fill(site, "reach")["water"]
    assert (fact.text, fact.standing) == ("15 °C", ASSUMED)
    assert "ground water" in fact.reason


@pytest.mark.parametrize("key", KEYS)
def test_both_systems_of_units_say_the_same_numbers(key):
    metric, us = (views.fill(alder_terrace(), key, "", system, 12) for system in SYSTEMS)
    assert metric.keys() == us.keys()
    for entry in sheet(key).fields:
        quantity = getattr(entry, "quantity", None)
        if entry.key in metric and quantity and metric[entry.key].known:
            values = [parse(one[entry.key].text, quantity).value for one in (metric, us)]
            assert values[0] == pytest.approx(values[1], rel=1e-9, abs=1e-12)


def test_a_number_typed_in_the_readers_own_system_is_shown_as_typed():
    site = replace(alder_terrace(), system="us").put("pump.set", Fact("350 kPa"))
    assert views.fill(site, "keep_up", "", "us")["set"].text == "350 kPa"
    assert views.fill(site, "keep_up", "", "metric")["set"].text == "3.5 bar"


def test_nominal_pipe_sizes_are_the_same_in_both_systems():
    for system in SYSTEMS:
        assert views.fill(alder_terrace(), "keep_up", "", system)["suctionpipe"].text == (
            "pe100-sdr11/40"
        )


# The way --------------------------------------------------------------------------------------


def test_the_way_to_the_wash_house_is_its_three_sections():
    way = ways.way_to_outlet(alder_terrace(), "Wash-house shower")
    assert [section.length_m for section in way.sections] == [60.0, 70.0, 25.0]
    assert [section.rise_m for section in way.sections] == pytest.approx([5.0, 6.5, 0.5])
    assert way.sections[0].share == 1.0
    assert way.sections[2].share < way.sections[1].share < 1.0


@pytest.mark.parametrize("seed", range(30))
def test_a_line_of_the_way_leaves_the_pressure_the_solved_supply_has_there(seed):
    site = workable(seed)
    for outlet in ways.outlets(site):
        way = ways.way_to_outlet(site, outlet)
        if way.running_pa <= 0 or way.start != ways.PUMP:
            continue
        line = Line(way.sections, way.start_pa, site.value("water.temperature"))
        assert line.left(way.flow) == pytest.approx(way.running_pa, rel=1e-6, abs=20.0)


def test_the_asked_outlet_is_opened_where_it_is_shut():
    site = alder_terrace()
    shut = ways.way_to_outlet(site, "Wash-house shower")
    opened = ways.way_to_outlet(site, "Wash-house hose")
    assert opened.flow > shut.flow
    assert opened.outlet_flow > 0


def test_everything_open_after_runs_more_than_before():
    now, then = (number(alder_terrace(), "suction", "flow", way=w) for w in ("now/", "then/"))
    assert then > 1.2 * now


def test_without_a_pump_the_way_begins_at_the_spring():
    site = alder_terrace().put("pump.present", Fact("no"))
    rows = site.rows("sections")
    first = {**rows[0], "from": Fact("spring")}
    site = site.put_rows("sections", (first, *rows[1:]))
    site = site.put_rows("sources", ({"name": Fact("spring"), "level": Fact("40 m")},))
    way = ways.way_to_outlet(site, "Wash-house shower")
    assert (way.start, way.start_pa) == ("spring", 0.0)
    assert way.climb == pytest.approx(-28.0)
    assert number(site, "tank", "height") == pytest.approx(28.0)


def test_a_pump_that_cannot_hold_its_pressure_gives_the_pressure_it_has():
    site = alder_terrace().put("pump.set", Fact("6 bar"))
    way = ways.way_to_outlet(site, "Wash-house hose")
    assert not way.held
    assert number(site, "reach", "pressure", way="now/Wash-house hose") == pytest.approx(
        way.start_pa, rel=1e-9
    )


def test_a_pump_of_its_own_height_counts_climb_and_lift_from_there():
    site = alder_terrace().put("pump.height", Fact("2 m"))
    assert number(site, "suction", "lift") == pytest.approx(6.0)
    assert number(site, "reach", "climb") == pytest.approx(10.0)
    runs = row_text.decode(views.fill(site, "keep_up")["runs"].text)
    assert parse(runs[0][3], "length").value == pytest.approx(3.0)


def test_a_supply_that_cannot_be_solved_is_said_without_the_solvers_words():
    ring = alder_terrace().put_cell("sections", 0, "from", Fact("wash-house"))
    with pytest.raises(InputError, match="has no source of water"):
        ways.way_to_outlet(ring, "Wash-house shower")
    assert not views.fill(ring, "reach")["flow"].known


def test_a_pump_known_by_name_only_leaves_the_menu_alone():
    site = alder_terrace().put("pump.id", Fact("Shed pump"))
    assert "pump" not in views.fill(site, "keep_up")


# Animals ---------------------------------------------------------------------------------------

HERDS = [
    (("dairy", "10", ""),), (("nursing", "3", ""),), (("other", "4", "20 L/day"),),
    (("goats", "8", "12 L/day"), ("goats", "5", "")), (("cattle", "2", ""), ("cattle", "1", "")),
    (("hens", "12", ""), ("other", "1", "300 L/day"), ("dairy", "2", "150 L/day")), (),
]  # fmt: skip


def herd(rows):
    cells = ({"kind": Fact(kind), "count": Fact(count), "each": Fact(each)}
             for kind, count, each in rows)  # fmt: skip
    return alder_terrace().put_rows("animals", tuple(cells))


@pytest.mark.parametrize("rows", HERDS, ids=str)
def test_every_animal_of_a_site_counts_the_same_for_the_day_and_for_the_tank(rows):
    site = herd(rows)
    day = work(sheet("demand"), state(site, "demand", "metric")).answer
    counted = next(one.value for one in day.figures if one.label == "Water a day")
    assert number(site, "tank", "use") == pytest.approx(counted, rel=1e-9)


def test_ten_dairy_cows_drink_as_much_as_the_handbook_says_they_can():
    # 30 US gallons a day each: Kansas State University, Livestock Watering Handbook, from memory
    more = number(herd([("dairy", "10", "")]), "tank", "use") - number(herd([]), "tank", "use")
    assert more * 86400 == pytest.approx(10 * 30 * 3.785411784e-3)


def test_animals_whose_water_is_not_known_are_said_to_be_left_out():
    site = herd([("other", "5", "")])
    others, use = views.fill(site, "demand")["others"], views.fill(site, "tank")["use"]
    assert (others.standing, use.standing) == (ASSUMED, ASSUMED)
    assert "not known" in others.reason and "not known" in use.reason


def test_the_water_of_other_animals_goes_back_where_it_is_one_cell():
    site = herd([("hens", "12", "")])
    put = views.back(site, "demand", state(site, "demand", "metric", others="50 L/day"))
    assert put.site.rows("animals")[-1]["each"].text == "50 L/day"
    again = views.back(put.site, "demand", state(put.site, "demand", "metric", others="70 L/day"))
    assert [row["kind"].text for row in again.site.rows("animals")] == ["hens", "other"]
    assert views.fill(again.site, "demand")["others"].text == "70 L/day"
    many = herd([("other", "4", "20 L/day")])
    put = views.back(many, "demand", state(many, "demand", "metric", others="50 L/day"))
    assert put.site == many and len(put.what_if) == 1


# Putting back ---------------------------------------------------------------------------------


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("key", KEYS)
def test_what_was_filled_and_not_touched_changes_nothing(key, system):
    for site in (alder_terrace(), *(workable(seed) for seed in range(12))):
        put = views.back(site, key, state(site, key, system))
        assert (put.site, put.changes, put.what_if) == (site, (), ())


TYPED = [
    ("reach", "pressure", "4 bar"), ("reach", "climb", "14 m"), ("reach", "wanted", "1.5 bar"),
    ("reach", "water", "8 °C"), ("keep_up", "drive", "full"), ("keep_up", "set", "4 bar"),
    ("keep_up", "suctionpipe", "pe100-sdr11/50"), ("keep_up", "lift", "3 m"),
    ("keep_up", "pumps", "2"), ("keep_up", "pump", "large"), ("keep_up", "altitude", "900 m"),
    ("pressure", "known", "3 bar"), ("suction", "length", "9 m"), ("suction", "foot", "0"),
    ("suction", "npsh", "3 m"), ("suction", "strainer", "0.3 m"), ("pipe", "hottest", "30 °C"),
    ("tank", "gives", "9 L/min"), ("tank", "own", "3000 L"), ("tank", "well", "4 L/min"),
    ("pressure_tank", "cutin", "1.8 bar"), ("pressure_tank", "tank", "300 L"),
    ("pressure_tank", "precharge", "1.6 bar"), ("pressure_tank", "control", "switch"),
    ("tank", "use", "600 L/day"), ("pump_match", "draw", "2 L/min"),
    ("demand", "people", "9"), ("demand", "goats", "12"), ("demand", "cattle", "2"),
    ("demand", "nursing", "2"), ("demand", "dairy", "3"),
    ("reach", "hottest", "40 °C"), ("keep_up", "hottest", "40 °C"), ("surge", "hottest", "35 °C"),
    ("pump_match", "hottest", "40 °C"), ("pump_match", "least", "3 L/min"),
    ("pump_match", "tank", "80 L"), ("suction", "hottest", "30 °C"),
    ("demand", "beds", "80 m²"), ("demand", "hose", "2"), ("pump_match", "grade", "2B"),
    ("pump_match", "motor", "80 %"), ("surge", "weakest", "8 bar"), ("surge", "held", "laid"),
]  # fmt: skip


@pytest.mark.parametrize("key, field, text", TYPED)
def test_a_one_to_one_field_put_back_is_filled_again_as_typed(key, field, text):
    site = alder_terrace()
    if field == "npsh":
        site = site.put("pump.npsh", Fact("2 m"))
    if field == "cutin":  # a pressure switch's alone
        site = site.put("pump.control", Fact("switch"))
    before = views.fill(site, key)[field].text
    put = views.back(site, key, state(site, key, "metric", **{field: text}))
    assert len(put.changes) == 1
    assert put.site != site
    assert before != text
    assert views.fill(put.site, key)[field].text == text


def another(entry, text):
    """A text that a field takes and that says something else."""
    if isinstance(entry, Choice):
        return next(value for value, _ in entry.options if value != text)
    if isinstance(entry, Count):
        return str(entry.low if text != str(entry.low) else entry.low + 1)
    if isinstance(entry, Text):
        return f"{text} "[:-1] + "x"
    unit = QUANTITIES[entry.quantity].default("metric")
    low = max(entry.low, 0.0)
    span = min(entry.high, 10 * low + 1e-3) if low else entry.high / 7
    return f"{unit.from_si(low + 0.37 * (span - low)):.4g} {unit.symbol}".strip()


EVERY = [(key, entry.key) for key in KEYS for entry in sheet(key).fields
         if not isinstance(entry, Rows)]  # fmt: skip


@pytest.mark.parametrize("key, field", EVERY)
def test_every_field_typed_is_put_back_or_said_to_stay_a_what_if(key, field):
    site, entries = alder_terrace(), sheet(key)
    entry, typed = entries.field(field), {}
    asked, ruler = entry, entry.when
    while ruler:  # so that it shows
        typed[ruler[0]] = ruler[1][0]
        asked = entries.field(ruler[0])
        ruler = asked.when
    before = state(site, key, "metric", **typed)
    typed[field] = another(entry, before.text(entry))
    put = views.back(site, key, state(site, key, "metric", **typed))
    said = (*put.changes, *put.what_if)
    held = any(getattr(one, "pipe", False) for one in views.VIEWS[key].fields)
    of_pipe = held and entry.when is not None and entry.when[0] == "kind" and field != "rating"
    label = entries.field("kind").label if of_pipe else entry.label
    assert any(one.startswith(label) for one in said), said
    assert (put.site != site) == bool(put.changes)
    assert len(put.what_if) == 0 or put.stays


def test_a_field_that_stays_a_what_if_is_named_by_its_key():
    site = alder_terrace()
    put = views.back(site, "reach", state(site, "reach", "metric", highest="14 m", length="90 m",
                                          climb="13 m"))  # fmt: skip
    assert set(put.stays) == {"highest", "length"}
    assert len(put.changes) == 1


def test_a_pipe_of_ones_own_stays_with_its_bore_and_surface():
    site = alder_terrace()
    put = views.back(site, "surge", state(site, "surge", "metric", kind="own", bore="31 mm"))
    assert (put.site, set(put.stays)) == (site, {"kind", "bore", "inside"})
    assert "bore" in put.what_if[0]


def test_a_change_is_said_with_what_it_was():
    put = views.back(alder_terrace(), "keep_up", state(alder_terrace(), "keep_up", "metric",
                                                       set="4 bar"))  # fmt: skip
    assert put.changes == ("Set pressure at the pump: 3.5 bar becomes 4 bar.",)


def test_what_another_sheet_reads_has_changed_too():
    site = alder_terrace().put("pump.control", Fact("switch"))
    put = views.back(site, "pressure_tank", state(site, "pressure_tank", "us", cutin="35"))
    assert views.fill(put.site, "pressure_tank", "", "us")["cutin"].text == "35 psi"
    put = views.back(site, "keep_up", state(site, "keep_up", "metric", lift="5 m"))
    assert views.fill(put.site, "suction")["lift"].text == "5 m"
    assert views.fill(put.site, "pump_match")["lift"].text == "5 m"


def test_a_field_worked_out_stays_a_what_if():
    site = alder_terrace()
    put = views.back(site, "reach", state(site, "reach", "metric", flow="20 L/min", length="90 m"))
    assert (put.site, put.changes) == (site, ())
    assert len(put.what_if) == 2


def test_the_one_section_of_a_way_takes_length_and_pipe_back():
    site = alder_terrace().put_rows("sections", alder_terrace().rows("sections")[:1])
    site = site.put_rows("outlets", ({"name": Fact("Tap"), "at": Fact("lower fork")},))
    typed = state(site, "reach", "metric", length="90 m", **{"pe100-sdr11": "50"})
    put = views.back(site, "reach", typed)
    row = put.site.rows("sections")[0]
    assert (row["length"].text, row["pipe"].text) == ("90 m", "pe100-sdr11/50")
    assert len(put.changes) == 2


def test_a_field_emptied_or_not_known_becomes_unknown():
    site = alder_terrace().put("store.volume", Fact("3000 L"))
    put = views.back(site, "tank", state(site, "tank", "metric", own=""))
    assert not put.site.get("store.volume").known
    put = views.back(site, "suction", state(site, "suction", "metric", length="?"))
    assert not put.site.get("suction.length").known


def test_what_cannot_be_read_is_said_and_not_put_back():
    site = alder_terrace()
    put = views.back(site, "keep_up", state(site, "keep_up", "metric", set="much"))
    assert put.site == site
    assert "Set pressure" in put.what_if[0]


def test_an_assumed_fact_confirmed_becomes_given():
    site = alder_terrace().put("water.temperature", NOT_KNOWN)
    put = views.back(site, "reach", state(site, "reach", "metric", water="15 °C"))
    assert put.site.get("water.temperature") == Fact("15 °C")


def edited(site, field, change, system="metric"):
    facts = views.fill(site, "keep_up", "", system)
    rows = change([list(row) for row in row_text.decode(facts[field].text)])
    typed = {field: row_text.encode(rows)}
    return views.back(site, "keep_up", state(site, "keep_up", system, **typed))


def test_a_cell_changed_in_keep_up_changes_that_cell_only():
    site = alder_terrace()

    def longer(rows):
        rows[2][2] = "99 ft"
        return rows

    put = edited(site, "runs", longer, "us")
    assert len(put.changes) == 1
    assert put.site.rows("sections")[2]["length"].text == "99 ft"
    assert put.site.rows("sections")[0] == site.rows("sections")[0]
    assert put.site.rows("sections")[2]["height"].text == "12 m"


def test_a_row_taken_out_and_one_added_are_said():
    def swap(rows):
        return [*rows[:-1], ["Toilet", "cabin 1", "sink", "0", "1"]]

    put = edited(alder_terrace(), "taps", swap)
    names = [row["name"].text for row in put.site.rows("outlets")]
    assert names[-1] == "Toilet" and "Herb terraces" not in names
    assert len(put.changes) == 2


def test_a_row_keeps_what_keep_up_does_not_show():
    site = alder_terrace().put_cell("sections", 1, "profile", Fact("30 m at 9 m"))
    put = edited(site, "runs", lambda rows: [rows[1], rows[0], *rows[2:]])
    assert put.site.rows("sections")[0]["profile"].text == "30 m at 9 m"
    assert put.changes


def test_a_tank_no_section_joins_stays_when_keep_up_is_put_back():
    put = edited(alder_terrace(), "runs", lambda rows: rows[:-1])
    assert put.site.rows("tanks") == alder_terrace().rows("tanks")


# The example ----------------------------------------------------------------------------------


@pytest.mark.parametrize("key", KEYS)
def test_the_example_is_alder_terrace_with_the_same_verdict_in_both_systems(key):
    example = views.on_example(sheet(key))
    outcomes = [work(example, State(system)) for system in SYSTEMS]
    assert [one.errors for one in outcomes] == [{}, {}]
    assert all(one.example for one in outcomes)
    levels = {one.answer.verdict.level for one in outcomes}
    assert len(levels) == 1


@pytest.mark.parametrize("key", KEYS)
def test_an_examples_defaults_are_numbers_a_person_would_type(key):
    for field, texts in views.example_defaults(key).items():
        entry = sheet(key).field(field)
        for text, system in zip(texts, SYSTEMS, strict=True):
            if getattr(entry, "quantity", None) and text:
                unit = QUANTITIES[entry.quantity].default(system).symbol
                assert text.endswith(unit)
                digits = text[: len(text) - len(unit)].strip(" -").replace(".", "").lstrip("0")
                assert len(digits) <= 4


def test_every_page_climbs_to_the_wash_house_as_high():
    for key in ("reach", "pressure", "pipe", "pump_match"):
        assert views.example_defaults(key)["climb"] == ("12 m", "39.4 ft")
