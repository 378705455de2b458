"""Every field of the newest pages stands to the site: put back into it, worked out of it, or by
choice a what-if of its page.  A field of none of the three fails here."""

import pytest

from calc.page import row_text
from calc.page.fields import Choice, Count, Number, Rows
from calc.page.form import work
from calc.page.state import State, filled_rows
from calc.pipe import pipes
from calc.sheets import sheet, views
from calc.sheets.onward import along
from calc.site import file
from calc.site.demo import alder_terrace
from calc.site.facts import BY_PATH, NOT_KNOWN, SLOTS, Fact
from calc.site.pack import pack, unpack
from calc.site.site import Site
from calc.units import parse
from tests.sheets.test_views import another

NEWEST = ("gravity", "well", "hill_tank", "drip")
OWN_BORE = "a site holds pipes by kind and size, not a bore that was measured"
WHAT_IF = {  # by choice of the page alone: why
    "gravity": {"bore": OWN_BORE, "inside": OWN_BORE},
    "hill_tank": {
        "bore": OWN_BORE, "inside": OWN_BORE,
        "morning": "how full it was today is another number tomorrow, and no fact of the place",
    },
}  # fmt: skip
WORKED_OUT = {  # at Alder Terrace, so that what is typed there is a what-if: why
    "drip": {
        "flow": "what the outlet gets is solved from pump and pipes, where the site has them",
        "pressure": "so is the pressure there",
        "daily": "what comes in is known, and what all else uses",
    },
}
FIELDS = [(key, entry) for key in NEWEST for entry in sheet(key).fields]
NAMED = [pytest.param(key, entry, id=f"{key}-{entry.key}") for key, entry in FIELDS]


def bindings(key):
    return {one.field: one for one in views.VIEWS[key].fields}


def of_pipe(key, field):
    """Whether a field is a menu of sizes, which goes with the menu of kinds."""
    kind = bindings(key).get("kind")
    return field in pipes.KINDS and getattr(kind, "pipe", False)


def shown_by(entries, field):
    """Texts of the menus that let a field show."""
    texts, ruler = {}, entries.field(field).when
    while ruler:
        texts[ruler[0]] = ruler[1][0]
        ruler = entries.field(ruler[0]).when
    return texts


def form(site, key, typed):
    facts = views.fill(site, key)
    texts = {field: fact.text for field, fact in facts.items()} | typed
    standing = {field: fact.standing for field, fact in facts.items()}
    return State("metric", texts, {}, standing | dict.fromkeys(typed, "given"))


def filled(site, key, field):
    fact = views.fill(site, key)[field]
    return fact.text if fact.known else None


def table(site, key, field, system="metric"):
    text = views.fill(site, key, "", system)[field].text
    return filled_rows(sheet(key).field(field), text, system)


# Which is which -------------------------------------------------------------------------------


@pytest.mark.parametrize("key, entry", NAMED)
def test_every_field_is_put_back_worked_out_or_by_choice_a_what_if(key, entry):
    what_if, worked = (set(one.get(key, ())) for one in (WHAT_IF, WORKED_OUT))
    if entry.key in what_if:
        assert entry.key not in bindings(key)
        return
    if of_pipe(key, entry.key):
        return
    one, asked = bindings(key)[entry.key], views.asked_of(alder_terrace(), key)
    assert one.puts_back(asked) != (entry.key in worked)


def test_what_is_named_here_is_a_field_of_its_page():
    for listed in (WHAT_IF, WORKED_OUT):
        for key, reasons in listed.items():
            assert set(reasons) <= {entry.key for entry in sheet(key).fields}
            assert all(reasons.values())


def test_where_the_site_works_nothing_out_those_fields_are_facts_too():
    for key, reasons in WORKED_OUT.items():
        for field in reasons:
            assert bindings(key)[field].puts_back(views.asked_of(Site(), key))


@pytest.mark.parametrize("key, entry", NAMED)
def test_what_a_field_takes_its_fact_takes_too(key, entry):
    path = getattr(bindings(key).get(entry.key), "path", "")
    if not path or path == "pump.sensed":  # counted from another height
        return
    slot = BY_PATH[path]
    if isinstance(entry, Choice) and entry.key != "kind":
        assert {value for value, _ in entry.options} <= (
            {value for value, _ in slot.options} or set(map(str, range(1, int(slot.high) + 1)))
        )
    if isinstance(entry, Number):
        assert slot.quantity == entry.quantity
        if path.split(".")[0] in ("fall", "well", "drip", "rain"):
            assert (slot.low, slot.high) == (entry.low, entry.high)
    if isinstance(entry, Count):
        assert (slot.low, slot.high) == (entry.low, entry.high)


def test_every_fact_of_the_newest_pages_is_asked_by_one_of_them():
    paths = {getattr(one, "path", "") for key in NEWEST for one in views.VIEWS[key].fields}
    keys = [slot.key for slot in SLOTS]
    newest = set(keys[keys.index("fall.drop") : keys.index("drip.filter") + 1])
    # a table, below; and what stands where no yield is counted on
    assert newest - {"rain.months", "well.steady"} <= paths


# Round trips ----------------------------------------------------------------------------------

SINGLE = [pytest.param(key, entry.key, id=f"{key}-{entry.key}") for key, entry in FIELDS
          if not isinstance(entry, Rows) and entry.key not in WHAT_IF.get(key, ())
          and entry.key not in WORKED_OUT.get(key, ()) and not of_pipe(key, entry.key)
          and entry.key != "kind"]  # fmt: skip


@pytest.mark.parametrize("key, field", SINGLE)
def test_what_is_typed_is_in_the_site_its_file_and_its_link_and_is_filled_again(key, field):
    site, entries = alder_terrace(), sheet(key)
    typed = shown_by(entries, field)
    before = form(site, key, typed)
    typed[field] = another(entries.field(field), before.text(entries.field(field)))
    put = views.back(site, key, form(site, key, typed))
    assert not put.what_if and put.site != site
    assert filled(put.site, key, field) == typed[field]
    assert file.read(file.write(put.site)).site == put.site
    assert unpack(pack(put.site)) == put.site
    again = views.back(put.site, key, form(put.site, key, {}))
    assert (again.site, again.changes, again.what_if) == (put.site, (), ())


@pytest.mark.parametrize("key, field", SINGLE)
def test_what_is_typed_on_the_example_is_there_when_its_reader_comes_back(key, field):
    entries = sheet(key)
    texts = shown_by(entries, field)
    texts[field] = another(entries.field(field), entries.field(field).default("metric"))
    found = along(entries, State("metric", texts, {}, dict.fromkeys(texts, "given")))
    assert found.site and filled(unpack(found.site), key, field) == texts[field]


@pytest.mark.parametrize("key", ["gravity", "hill_tank"])
def test_a_pipe_that_is_chosen_is_a_fact(key):
    typed = {"kind": "pe100-sdr11", "pe100-sdr11": "63"}
    put = views.back(alder_terrace(), key, form(alder_terrace(), key, typed))
    assert views.fill(put.site, key)["pe100-sdr11"].text == "63" and not put.what_if
    assert unpack(pack(put.site)) == put.site


def test_where_a_pump_is_in_the_well_goes_back():
    put = views.back(alder_terrace(), "well", form(alder_terrace(), "well", {"kind": "in"}))
    assert filled(put.site, "well", "kind") == "in"


RAIN = [[str(at), f"{9 * at} mm"] for at in range(1, 13)]
TABLES = [
    ("gravity", "profile", {}, [["0 m", "100 m"], ["300 m", "95 m"], ["900 m", "70.5 m"]]),
    ("well", "readings", {"known": "recovery"}, [["0 min", "4 m"], ["30 min", "3.9 m"]]),
    ("hill_tank", "months", {"rain": "yes"}, RAIN),
    ("drip", "months", {"climate": "months"}, [["jun", "5 mm"], ["jul", "5.5 mm"]]),
]  # fmt: skip


@pytest.mark.parametrize("key, field, with_it, rows", TABLES, ids=lambda one: str(one)[:9])
def test_a_table_that_is_typed_is_in_the_site_its_file_and_its_link(key, field, with_it, rows):
    site = alder_terrace()
    put = views.back(site, key, form(site, key, {**with_it, field: row_text.encode(rows)}))
    assert put.changes and not put.what_if
    assert table(put.site, key, field) == tuple(map(tuple, rows))
    assert file.read(file.write(put.site)).site == put.site
    assert unpack(pack(put.site)) == put.site
    again = views.back(put.site, key, form(put.site, key, {}))
    assert (again.site, again.changes, again.what_if) == (put.site, (), ())


def test_a_table_in_inches_is_filled_in_inches_again():
    site = Site("S", "us")
    typed = {"rain": "yes", "months": row_text.encode((str(at), "4.3 in") for at in range(1, 13))}
    put = views.back(site, "hill_tank", State("us", typed, {}, dict.fromkeys(typed, "given")))
    assert table(put.site, "hill_tank", "months", "us")[6] == ("7", "4.3 in")


@pytest.mark.parametrize("rows", [RAIN[:11], [*RAIN[:11], RAIN[0]]], ids=["eleven", "twice"])
def test_rain_of_other_than_twelve_months_stays_and_says_why(rows):
    site = alder_terrace()
    put = views.back(site, "hill_tank", form(site, "hill_tank", {
        "rain": "yes", "months": row_text.encode(rows)}))  # fmt: skip
    assert not put.site.get("rain.months").known
    assert any("twelve months" in one for one in put.what_if)


# One fact, several pages ----------------------------------------------------------------------

SHARED = [  # (page, field) of one fact each
    [("well", "steady"), ("well", "told"), ("tank", "well"), ("gravity", "spring")],
    [("hill_tank", "volume"), ("tank", "own"), ("well", "cistern")],
    [("hill_tank", "height"), ("tank", "height")],
    [("hill_tank", "gives"), ("tank", "gives"), ("well", "pump")],
    [("hill_tank", "hours"), ("tank", "hours")],
    [("hill_tank", "usable"), ("tank", "usable")],
    [("hill_tank", "extra"), ("gravity", "extra")],
    [("hill_tank", "use"), ("tank", "use"), ("well", "use")],
    [("hill_tank", "water"), ("gravity", "water"), ("suction", "water")],
    [("well", "rise"), ("keep_up", "sensed")],
    [("well", "set"), ("keep_up", "set")],
    [("drip", "reaches"), ("demand", "reach")],
    [("drip", "area"), ("demand", "beds")],
    [("drip", "above"), ("suction", "altitude")],
    [("gravity", "hottest"), ("keep_up", "hottest")],
]
PAIRS = [(one, other) for group in SHARED for one in group for other in group if one != other]


@pytest.mark.parametrize("typed, shown", PAIRS, ids=lambda one: "-".join(one))
def test_what_one_page_was_told_the_other_shows(typed, shown):
    (key, field), (other, there), site = typed, shown, alder_terrace()
    if (other, there) == ("well", "rise"):
        site = site.put("pump.sensed_at", Fact("house"))
    entry = sheet(key).field(field)
    texts = shown_by(sheet(key), field)
    if (key, field) == ("well", "rise"):
        texts = {"sensed": "house"}
    text = another(entry, "")
    put = views.back(site, key, form(site, key, {**texts, field: text}))
    assert parse(filled(put.site, other, there), entry.quantity).value == pytest.approx(
        parse(text, entry.quantity).value, rel=1e-3
    )


def test_a_yield_told_elsewhere_is_what_is_known_of_the_well():
    site = Site("S").put("water.yield", Fact("3 L/min"))
    assert (filled(site, "well", "known"), filled(site, "well", "told")) == ("told", "3 L/min")
    assert filled(site.put("well.tested", Fact("4 L/min")), "well", "known") == "levels"
    assert filled(alder_terrace(), "well", "known") == "bucket"
    assert "known" not in views.fill(Site("S"), "well")


def test_a_test_of_the_well_is_the_yield_until_another_is_counted_on():
    site = alder_terrace()
    assert filled(site, "well", "steady") == "1.5 L/min" and filled(site, "tank", "well") is None
    tested = views.back(site, "well", form(site, "well", {"steady": "2 L/min"})).site
    assert filled(tested, "tank", "well") == filled(tested, "gravity", "spring") == "2 L/min"
    counted = views.back(tested, "tank", form(tested, "tank", {"well": "1 L/min"})).site
    assert filled(counted, "well", "steady") == filled(counted, "well", "told") == "1 L/min"


def test_the_top_of_the_well_and_the_house_are_one_height_of_the_sensor():
    site = alder_terrace().put("pump.sensed", Fact("6 m"))
    assert (filled(site, "well", "sensed"), filled(site, "well", "rise")) == ("house", "6 m")
    top = views.back(site, "well", form(site, "well", {"sensed": "top"})).site
    assert top.get("pump.sensed").text == "0 m" and filled(top, "well", "sensed") == "top"
    house = views.back(top, "well", form(top, "well", {"sensed": "house", "rise": "4 m"})).site
    assert house.get("pump.sensed").text == "4 m" and filled(house, "well", "sensed") == "house"


def test_heights_counted_from_elsewhere_say_nothing_of_the_top_of_the_well():
    site = alder_terrace().put("place.datum", Fact("the floor of the house"))
    site = site.put("pump.sensed", Fact("6 m"))
    assert "sensed" not in views.fill(site, "well")
    assert filled(site, "well", "rise") is None
    put = views.back(site, "well", form(site, "well", {"sensed": "house", "rise": "4 m"}))
    assert put.site.get("pump.sensed").text == "6 m" and put.stays == ("rise",)


def test_the_busiest_time_is_longer_or_shorter_as_it_is_told():
    def peak(minutes):
        site = alder_terrace().put("use.peak_time", Fact(f"{minutes} min"))
        return parse(views.fill(site, "well", "", "", 12)["peak"].text, "volume").value

    shares, day = (3, 8, 10, 8), peak(1440)  # of the busiest hours of a home, in 107
    assert peak(60) / day == pytest.approx(10 / 107, rel=1e-3)
    assert peak(30) / day == pytest.approx(5 / 107, rel=1e-3)
    assert peak(180) / day == pytest.approx(sum(shares[1:]) / 107, rel=1e-3)
    assert peak(210) / day == pytest.approx((26 + 2.5) / 107, rel=1e-3)


def test_the_climate_of_the_place_fills_what_was_not_told_of_the_garden():
    site = alder_terrace()
    assert filled(site, "drip", "warmest") == "29.4 °C"
    told = site.put("drip.warmest", Fact("33 °C")).put("drip.month", Fact("aug"))
    assert (filled(told, "drip", "warmest"), filled(told, "drip", "month")) == ("33 °C", "aug")


# A supply that runs by its height -------------------------------------------------------------


def by_height(*sections):
    site = alder_terrace().put("pump.present", Fact("no"))
    rows = tuple(
        {"from": Fact(one), "to": Fact(to), "length": Fact(length), "height": Fact(height),
         "pipe": Fact("pe100-sdr11/40")} for one, to, length, height in sections)  # fmt: skip
    site = site.put_rows("sections", rows)
    site = site.put_rows("sources", ({"name": Fact("spring"), "level": Fact("40 m")},))
    outlet = {"name": Fact("Hut tap"), "at": Fact("hut"), "kind": Fact("sink")}
    return site.put_rows("outlets", (outlet,))


def test_a_line_of_the_supply_from_open_water_is_the_line_of_the_page():
    site = by_height(("spring", "hut", "300 m", "8 m"))
    site = site.put("fall.drop", Fact("99 m")).put("fall.length", Fact("99 m"))
    assert (filled(site, "gravity", "drop"), filled(site, "gravity", "length")) == ("32 m", "300 m")
    assert filled(site, "gravity", "pe100-sdr11") == "40"
    assert filled(site, "gravity", "use") == "own"
    assert filled(site, "hill_tank", "height") == filled(site, "tank", "height") == "32 m"
    put = views.back(site, "gravity", form(site, "gravity", {"length": "350 m", "drop": "30 m"}))
    assert put.site.rows("sections")[0]["length"].text == "350 m"
    assert put.stays == ("drop",) and put.site.get("fall.drop").text == "99 m"


def test_a_fork_above_the_pressure_line_is_a_point_of_the_page():
    site = by_height(("spring", "crest", "100 m", "39 m"), ("crest", "hut", "200 m", "8 m"))
    rows = table(site, "gravity", "profile")
    assert rows == (("0 m", "40 m"), ("100 m", "39 m"), ("300 m", "8 m"))  # as the site counts
    changed = row_text.encode([*rows[:2], ("300 m", "10 m")])
    put = views.back(site, "gravity", form(site, "gravity", {"profile": changed}))
    assert put.site == site and put.stays == ("profile",)


def test_a_pumped_supply_leaves_the_line_to_its_own_facts():
    site = alder_terrace().put("fall.drop", Fact("25 m"))
    assert filled(site, "gravity", "drop") == "25 m"
    assert views.fill(site, "gravity")["length"] == NOT_KNOWN


# The example ----------------------------------------------------------------------------------


def test_what_the_sheets_write_themselves_alder_terrace_says_too():
    for key, fields in views.AS_WRITTEN.items():
        for field in fields:
            entry, fact = sheet(key).field(field), views.fill(alder_terrace(), key)[field]
            assert fact.known, (key, field)
            if isinstance(entry, Number):
                assert parse(fact.text, entry.quantity) == parse(
                    entry.default("metric"), entry.quantity)  # fmt: skip
            else:
                assert fact.text == entry.default("metric")


@pytest.mark.parametrize("key", ["well", "drip"])
@pytest.mark.parametrize("system", ["metric", "us"])
def test_alder_terrace_itself_is_answered_as_the_example_is(key, system):
    facts = views.fill(alder_terrace(), key, "", system)
    texts = {field: fact.text for field, fact in facts.items()}
    standing = {field: fact.standing for field, fact in facts.items()}
    outcome = work(sheet(key), State(system, texts, {}, standing))
    assert outcome.errors == {}
    example = work(sheet(key), State(system)).answer
    assert outcome.answer.verdict.word == example.verdict.word
