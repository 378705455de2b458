"""An enquiry goes from page to page by their links: what was entered once is there, and the same.

As the page does it: every answer is asked for through the bridge, its link opened by it.
"""

import html
import json
import re
from urllib.parse import urlsplit

import pytest

from calc import bridge
from calc.errors import InputError
from calc.page import row_text
from calc.page.state import State
from calc.sheets import KEYS, sheet, views
from calc.sheets.onward import along
from calc.sheets.parts.putting_back import with_unit
from calc.site import link
from calc.site.demo import alder_terrace
from calc.site.facts import ASSUMED, Fact
from calc.site.pack import pack, unpack
from calc.units import parse
from tests.rounds import one_in, some
from tests.sheets.drawn import states
from tests.site.made_sites import workable

PAGES = {sheet(key).page.strip("/"): key for key in KEYS}


class Page:
    """A calculator's page as a browser has it: opened by a fragment, typed into, left by links."""

    def __init__(self, key, fragment="", system="metric"):
        self.key, self.system = key, system
        self.site, self.filled, self.way, self.reasons = None, [], "", {}
        form = sheet(key)
        self.texts = {entry.key: entry.default(system) for entry in form.fields}
        self.units, self.standing = {}, dict.fromkeys(self.texts, "example")
        if fragment:
            found = self.ask(op="read", fragment=fragment)
            assert not found["cut"], found["said"]
            self.system = found["system"]
            self.texts, self.units = found["texts"], found["units"]
            self.standing = found["standing"]
            if "site" in found:
                self.site, self.filled = found["site"]["packed"], found["site"]["filled"]
                self.way, self.reasons = found["site"]["way"], found["site"]["reasons"]

    def ask(self, **request):
        return json.loads(bridge.handle(json.dumps({"sheet": self.key, **request})))

    def type(self, **typed):
        for key, text in typed.items():
            number, _, unit = text.partition(" ")
            if getattr(sheet(self.key).field(key), "quantity", None) and unit:
                text, self.units[key] = number, unit  # as the box and its menu hold it
            self.texts[key], self.standing[key] = text, "given"
            self.filled = [one for one in self.filled if one != key]
        return self

    @property
    def answer(self):
        site = self.site and {"text": self.site, "way": self.way, "kept": self.filled}
        form = {"system": self.system, "texts": self.texts, "units": self.units}
        form |= {"standing": self.standing, "reasons": self.reasons}
        return self.ask(op="work", **form, site=site, way=self.way)

    def follow(self, to):
        """The page that a link of the answer, or else of the menu, leads to."""
        found = self.answer
        assert found["errors"] == {}, found["errors"]
        for address in re.findall(r'<a href="([^"#]+#[^"]+)"', found["html"]):
            place = urlsplit(html.unescape(address))
            if PAGES[place.path.strip("/")] == to:
                return Page(to, place.fragment)
        return self.menu(to)

    def menu(self, to):
        return Page(to, self.answer["onward"], self.system)

    def value(self, key):
        """What stands in a field: SI, or its text."""
        entry, text = sheet(self.key).field(key), self.texts[key].strip()
        quantity = getattr(entry, "quantity", None)
        if not quantity or not text:
            return text
        return parse(text, quantity, self.units.get(key)).value

    @property
    def said(self):
        return html.unescape(" ".join(re.findall(r'<p class="sl-going">(.*?)</p>',
                                                 self.answer["html"])))  # fmt: skip


def from_site(key, site, way=""):
    return Page(key, link.of_site("metric", pack(site), way))


ENQUIRY = {"climb": "30 m", "length": "200 m", "water": "12 °C",
           "kind": "pe100-sdr11", "pe100-sdr11": "50", "hottest": "25 °C"}  # fmt: skip


@pytest.mark.parametrize("begun", ["example", "site"])
def test_an_enquiry_entered_once_is_on_every_page_it_goes_through(begun):
    reach = Page("reach") if begun == "example" else from_site("reach", alder_terrace())
    held = "5 bar" if begun == "example" else "3 bar"  # the site's own pump cannot hold 5
    demand = reach.type(**ENQUIRY, pressure=held).follow("demand")
    assert demand.site
    back = demand.type(people="9", dairy="2", others="30 L/day").follow("reach")
    assert back.value("flow") > 0
    pipe = back.follow("pipe")
    pump = pipe.follow("pump_match")
    suction = pump.type(lift="3 m", altitude="800 m").follow("suction")
    whole = suction.type(length="11 m").menu("keep_up")
    tank = whole.menu("tank")
    for page in (back, pipe, pump):
        assert page.value("climb") == pytest.approx(30), page.key
        assert page.value("length") == pytest.approx(200), page.key
        assert page.value("water") == pytest.approx(285.15), page.key
        assert page.value("flow") == pytest.approx(back.value("flow")), page.key
        assert page.value("hottest") == pytest.approx(298.15), page.key
    assert back.texts["pe100-sdr11"] == "50"
    for page in (back, pipe, pump):  # the sections count, each in the pipe that was chosen
        assert {row[2] for row in row_text.decode(page.texts["line"])} == {"pe100-sdr11/50"}
    assert (
        back.value("pressure")
        == pipe.value("pressure")
        == pump.value("set")
        == float(held[0]) * 1e5
    )
    assert suction.value("flow") == pytest.approx(back.value("flow"), rel=1e-3)
    assert (suction.value("lift"), suction.value("altitude")) == (3, 800)
    assert (whole.value("lift"), whole.value("suctionlong")) == (3, 11)
    assert (whole.value("set"), whole.value("altitude")) == (float(held[0]) * 1e5, 800)
    again = tank.menu("demand")
    assert again.texts["people"] == "9" and again.texts["dairy"] == "2"
    day = 9 * 100e-3 + 2 * 30 * 3.785411784e-3 + 30e-3  # people, dairy cows, others, m3
    day += 8 * 8e-3 + 12 * 0.3e-3 + 60 * 4e-3 / 0.9  # the goats, hens and beds of the example
    assert tank.value("use") * 86400 == pytest.approx(day, rel=1e-3)
    for page in (reach, demand, back, pipe, pump, suction, whole, tank, again):
        assert page.answer["errors"] == {}, page.key


def test_the_way_is_the_same_pipe_and_height_in_the_whole_supply():
    page = Page("reach").type(climb="30 m", length="200 m", kind="pe100-sdr11",
                              **{"pe100-sdr11": "50"}).menu("keep_up")  # fmt: skip
    site = unpack(page.site)
    rows = {row["to"].text: row for row in site.rows("sections")}
    long = [parse(rows[to]["length"].text, "length").value
            for to in ("lower fork", "upper fork", "wash-house")]  # fmt: skip
    assert sum(long) == pytest.approx(200)
    assert long[0] / long[1] == pytest.approx(60 / 70)
    assert rows["wash-house"]["height"].text == "30 m"
    assert rows["upper fork"]["pipe"].text == "pe100-sdr11/50"
    assert rows["cabin 2"]["pipe"].text == "pe100-sdr11/25"


@pytest.mark.parametrize("begun", ["example", "site"])
def test_head_and_demand_and_head_again_keep_the_climb_that_was_typed(begun):
    page = Page("reach") if begun == "example" else from_site("reach", alder_terrace())
    page.type(climb="30 m")
    assert page.follow("demand").follow("reach").value("climb") == 30
    assert page.menu("suction").menu("reach").value("climb") == 30


def test_the_site_itself_and_a_page_left_without_typing_stay_as_they_are():
    page = from_site("reach", alder_terrace())
    assert page.follow("demand").site == pack(alder_terrace())
    page.type(climb="30 m")
    assert page.site == pack(alder_terrace())
    assert unpack(page.follow("demand").site).name == "Alder Terrace"
    assert Page("reach").answer["onward"] == ""
    assert "site=" not in Page("reach").answer["html"]


def test_what_goes_along_and_what_stays_is_said_beside_the_links():
    page = Page("reach").type(climb="30 m", highest="31 m")
    assert "Climb from pump to outlet: 12 m becomes 30 m." in page.said
    assert "Highest point of the pipe, above the start" in page.said.partition("stays")[2]
    assert Page("reach").said == ""


def test_what_comes_from_the_example_is_assumed_on_the_next_page():
    page = Page("reach").type(climb="30 m").menu("suction")
    assert page.standing["lift"] == ASSUMED
    assumed = {one["key"]: one["reason"] for one in page.answer["assumed"]}
    assert assumed["lift"] == "from the example"


OWN = {"length": "90 m", "climb": "7 m", "flow": "20 L/min", "kind": "pe100-sdr11",
       "pe100-sdr11": "40", "wanted": "1.2 bar", "use": "own", "pressure": "3 bar"}  # fmt: skip


def test_a_pipe_of_ones_own_goes_along_as_a_line_of_one_section():
    page = Page("reach").type(line="", **OWN)
    left = re.search(r"You get ([\d.]+)", page.answer["text"])[1]
    whole = page.menu("keep_up")
    row, outlet = unpack(whole.site).rows("sections")[0], unpack(whole.site).rows("outlets")[0]
    assert (row["length"].text, row["height"].text, row["pipe"].text) == (
        "90 m", "7 m", "pe100-sdr11/40")  # fmt: skip
    assert (outlet["flow"].text, outlet["needed"].text) == ("20 L/min", "1.2 bar")
    again = whole.menu("demand").menu("reach")
    for key in ("climb", "length", "flow", "pressure", "wanted"):
        assert again.value(key) == pytest.approx(page.value(key), rel=1e-3), key
    assert again.texts["pe100-sdr11"] == "40"
    assert re.search(r"You get ([\d.]+)", again.answer["text"])[1] == left


def test_sections_of_ones_own_go_along_with_their_heights_added_up():
    rows = "30 m,4 m,pe100-sdr11/40,1;50 m,-2 m,pe100-sdr11/32,3,filter"
    page = Page("pump_match").type(line=rows)
    sections = unpack(page.menu("keep_up").site).rows("sections")
    assert [row["height"].text for row in sections] == ["4 m", "2 m"]
    assert [row["fitting"].text for row in sections] == ["none", "filter"]
    back = page.menu("demand").menu("pump_match")
    assert back.value("climb") == pytest.approx(2)


def test_an_older_link_of_one_pipe_goes_along_as_it_was_read():
    page = Page("reach", "climb=50ft&length=400ft&u=us")  # of release 0.1.0
    again = page.follow("demand").follow("reach")
    assert again.value("climb") == pytest.approx(15.24)
    assert again.value("length") == pytest.approx(121.92)
    assert again.texts["kind"] == page.texts["kind"] == "pvc40"


def test_a_measured_bore_is_said_to_stay():
    page = Page("reach").type(line="", kind="own", bore="31 mm")
    assert "size" in page.said and page.answer["onward"] == ""


@pytest.mark.parametrize("key", KEYS)
def test_whatever_is_typed_the_next_page_opens(key):
    """Every field typed over the example in turn: each next page reads its link and works."""
    from tests.sheets.test_views import another

    form = sheet(key)
    for at, entry in enumerate(form.fields):
        if entry.when or not hasattr(entry, "low"):
            continue
        page = Page(key)
        text = another(entry, page.texts[entry.key])
        answer = page.type(**{entry.key: text}).answer
        if answer["errors"]:
            continue
        onward = answer["onward"]
        if onward:
            for other in one_in(("reach", "keep_up", "demand"), at):
                Page(other, onward)


@pytest.mark.parametrize("key", KEYS)
def test_whatever_a_form_holds_something_honest_goes_along(key):
    site = pack(alder_terrace())
    for state in states(sheet(key), some(40), "onward"):
        for packed in ("", site):
            found = along(sheet(key), state, packed)
            assert not found.site or unpack(found.site)
            assert bool(found.site) >= bool(packed)
            assert all(one[-1] in ".!?" for one in (*found.changes, *found.only_here))


@pytest.mark.parametrize("seed", range(12))
def test_made_sites_go_along_with_what_was_typed(seed):
    site = workable(seed)
    page = from_site("reach", site)
    try:
        before = views.asked_of(site, "reach").way
    except InputError:
        return
    page.type(climb="9 m")
    if page.answer["errors"]:
        return
    again = page.menu("demand").menu("reach")
    if before.start == "pump":
        assert again.value("climb") == pytest.approx(9)
    assert unpack(again.site).name == site.name


def test_a_site_with_only_what_ifs_goes_along_unchanged_and_says_so():
    page = from_site("reach", alder_terrace()).type(flow="20 L/min")
    assert page.menu("demand").site == pack(alder_terrace())
    assert "Flow with everything open" in page.said


def test_typed_fact_is_given_and_the_rest_stays_assumed():
    site = unpack(Page("suction").type(lift="3 m").menu("keep_up").site)
    assert site.get("water.level") == Fact("-3 m")
    assert site.get("suction.length").standing == ASSUMED


@pytest.mark.parametrize("by", ["demand", "pressure_tank"])
@pytest.mark.parametrize("begun", ["example", "site"])
def test_a_daily_use_that_was_typed_is_there_again_after_other_pages(begun, by):
    tank = Page("tank") if begun == "example" else from_site("tank", alder_terrace())
    tank.type(use="600 L/day")
    said, again = tank.said, tank.menu(by).menu("tank")
    assert (again.texts["use"], again.units["use"]) == ("600", "L/day")
    assert again.value("use") * 86400 == pytest.approx(0.6)
    assert "does not hold" not in said and "worked out" not in said
    assert again.answer["errors"] == {}


def test_without_a_daily_use_that_was_typed_people_and_animals_make_it():
    tank = Page("demand").type(people="9").menu("tank")
    assert unpack(tank.site).get("use.daily").known is False
    assert tank.value("use") > from_site("tank", alder_terrace()).value("use")


FEW = {"ask": "few", "climb": "15 m", "away": "90 m", "main": "pe100-sdr11/40", "showers": "1",
       "suctionpipe": "pvc40/2", "lift": "3 m"}  # fmt: skip


@pytest.mark.parametrize("begun", ["example", "site"])
def test_a_few_questions_go_along_as_one_pipe_section_and_its_outlets(begun):
    page = Page("keep_up") if begun == "example" else from_site("keep_up", alder_terrace())
    page.type(**FEW)
    for to in ("pipe", "reach", "pump_match"):
        other = page.menu(to)
        assert (other.value("climb"), other.value("length")) == (15, 90), to
        assert other.texts["kind"] == "pe100-sdr11", to
        assert len(row_text.decode(other.texts["line"])) <= 1, to
        assert other.answer["errors"] == {}, to
    assert other.texts["pe100-sdr11"] == "40"
    (section,) = unpack(other.site).rows("sections")
    names = [row["name"].text for row in unpack(other.site).rows("outlets")]
    assert section["bends"].standing == ASSUMED and names == ["Showers", "Hoses"]
    suction = page.menu("suction")
    assert suction.value("lift") == 3
    assert (suction.texts["kind"], suction.texts["pvc40"]) == ("pvc40", "2")


def test_what_a_few_questions_found_the_whole_supply_finds_too():
    page = Page("keep_up").type(**FEW)
    whole = page.menu("suction").menu("keep_up")
    assert whole.texts["ask"] == "rows"
    one, other = (re.search(r"Verdict: .*|[^\n]+", p.answer["text"])[0] for p in (page, whole))
    assert one == other


def test_a_few_questions_go_along_in_us_units_too():
    page = Page("keep_up", system="us").type(ask="few", climb="50 ft", away="300 ft")
    reach = page.menu("reach")
    assert reach.value("climb") == pytest.approx(50 * 0.3048, rel=1e-3)
    assert reach.value("length") == pytest.approx(300 * 0.3048, rel=1e-3)


def test_a_few_questions_with_nothing_open_stay_and_that_is_said():
    page = Page("keep_up").type(ask="few", showers="0", sinks="0", hoses="0", climb="15 m")
    found = along(sheet("keep_up"), State("metric", page.texts, page.units, page.standing))
    assert found.site == "" and "Nothing is open" in found.only_here[0]


def test_a_unit_that_ends_in_a_digit_is_not_given_another():
    entry = sheet("tank").field("own")
    assert with_unit("5 m3", entry, "L", "metric") == "5 m³"
    assert with_unit("900 gallons", entry, "L", "metric") == "900 gal"
    assert with_unit("5000", entry, "L", "metric") == "5000 L"
    assert with_unit("3 kg/cm2", sheet("reach").field("wanted"), "bar", "metric") == "3 kg/cm2"
    assert with_unit("5 ft 6", sheet("reach").field("climb"), "m", "metric") == "5 ft 6"
