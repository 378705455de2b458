"""Sites of which a letter told little: what is taken for the rest, up to where an answer holds, and
what is asked back."""

import pytest

from calc.desk import asked, limits, verdict
from calc.desk.work import all_ways, work_out
from calc.sheets.parts import completed_more, ways
from calc.sheets.parts.completed import completed, with_reasons
from calc.site.facts import ASSUMED, Fact
from calc.site.pack import pack, unpack
from calc.site.site import Site
from tests.desk.sites import MADE, worked

PUMPED = {
    "pump.set": "3.5 bar", "water.kind": "cistern", "water.level": "0 m",
    "pump.placement": "out", "suction.length": "2 m", "suction.pipe": "pe100-sdr11/40",
}  # fmt: skip


def made(facts, outlets=("shower",), system="metric", tanks=(), start="pump", **section):
    """A site of one pipe from the pump to the house."""
    site = Site("", system)
    for path, text in facts.items():
        site = site.put(path, Fact(text))
    row = {"from": Fact(start), "to": Fact("house")}
    row |= {key: Fact(text) for key, text in section.items()}
    rows = tuple(
        {"name": Fact(f"{kind} {n}"), "at": Fact("house"), "kind": Fact(kind), "after": Fact("1")}
        for n, kind in enumerate(outlets)
    )
    site = site.put_rows("sections", (row,)).put_rows("outlets", rows)
    return site.put_rows("tanks", tuple({k: Fact(v) for k, v in one.items()} for one in tanks))


def enough(site):
    return all(one.running_pa >= one.needed_pa for one in all_ways(completed(site)))


# The pump ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("level", ["-12 m", "-40 m", "-95 m"])
@pytest.mark.parametrize("open_", [("shower",), ("shower", "shower", "hose")])
def test_water_that_deep_gets_a_pump_in_it_that_is_enough(level, open_):
    site = completed(made({"water.level": level}, open_, length="80 m", height="10 m"))
    assert site.get("pump.placement").text == "in"
    assert site.get("pump.height").text == level
    for path in ("pump.placement", "pump.height", "pump.id", "pump.set"):
        assert site.get(path).standing == ASSUMED
    assert enough(site)
    keep_up = work_out(site, only=("keep_up",)).part("keep_up")
    assert keep_up.verdict.level != "bad"


def test_a_smaller_pump_than_the_one_taken_would_not_be_enough():
    wells = ("-5 m", "-25 m", "-60 m")
    names = []
    for level in wells:
        site = completed(made({"water.level": level}, length="150 m", height="20 m"))
        names.append(ways.pump_of(site).shut_off_head)
        every = completed_more._pumps(site)
        weaker = [one for one in every if ways.pump_of(one).shut_off_head < names[-1]]
        assert not [one for one in weaker if completed_more._is_enough(one)]
    assert names == sorted(names)


def test_a_pump_and_a_pressure_that_were_told_are_kept():
    facts = {"water.level": "-3 m", "pump.id": "small", "pump.set": "2 bar"}
    site = completed(made(facts, length="400 m", height="18 m"))
    assert site.get("pump.id") == Fact("small")
    assert site.get("pump.set") == Fact("2 bar")
    assert not enough(site)


def test_a_pump_that_was_said_to_stand_outside_is_not_hung():
    facts = {"water.level": "-12 m", "pump.placement": "out"}
    site = completed(made(facts, length="80 m", height="10 m"))
    assert site.get("pump.placement") == Fact("out")
    suction = work_out(site, only=("suction",)).part("suction")
    assert suction.verdict.level == "bad"


def test_pipe_whose_class_nobody_named_carries_what_the_pump_makes():
    for standing, kind in ((ASSUMED, "pe-sidr7"), ("given", "pe-sidr15")):
        site = made({"water.level": "-150 ft"}, system="us", length="300 ft", height="30 ft")
        site = site.put_cell("sections", 0, "pipe", Fact("pe-sidr15/1", standing))
        assert completed(site).rows("sections")[0]["pipe"].text == f"{kind}/1"


# What one fact says of another ------------------------------------------------------------------


def test_levels_of_a_well_stand_in_for_one_another():
    site = completed(Site("", "us").put("water.kind", Fact("well")).put(
        "well.static", Fact("40 ft")).put("well.pumping", Fact("63 ft")))  # fmt: skip
    assert site.get("water.level").text == "-63 ft"
    site = completed(made({"water.level": "-63 ft", "water.yield": "5 gpm"}, system="us",
                          length="300 ft", height="30 ft"))  # fmt: skip
    assert (site.get("well.static").text, site.get("store.inflow").text) == ("63 ft", "5 gpm")


@pytest.mark.parametrize(("outlets", "people"), [((), "0"), (("float",), "0"), (("sink",), "")])
def test_animals_alone_mean_that_nobody_lives_there(outlets, people):
    site = made(PUMPED, outlets, length="300 m", height="5 m")
    site = site.put_rows("animals", ({"kind": Fact("cattle"), "count": Fact("40")},))
    assert completed(site).get("use.people").text == people


def test_a_line_to_a_tank_is_asked_what_fills_it_and_not_what_hangs_behind_it():
    tank = {"name": "tank", "level": "9 m", "volume": "5000 L"}
    site = completed(made(PUMPED, ("float",), tanks=(tank,), length="200 m"))
    assert site.rows("sections")[0]["height"].text == "9 m"
    first, behind = site.rows("outlets")
    assert (first["name"].text, first["after"].text, behind["after"].text) == ("Tank", "1", "0")
    assert enough(site)
    assert [one.outlet for one in all_ways(site)] == ["Tank"]


def test_drip_lines_without_a_climate_are_worked_out_for_a_usual_month():
    site = Site("", "metric").put_rows("beds", ({"name": Fact("garden"), "area": Fact("800 m²")},))
    told = {"drip.rows": "1.2 m", "drip.length": "40 m", "drip.spacing": "0.3 m",
            "drip.dripper": "2 L/h", "drip.flow": "30 L/min", "drip.hours": "5",
            "drip.pressure": "1 bar", "drip.crop": "tomato"}  # fmt: skip
    for path, text in told.items():
        site = site.put(path, Fact(text))
    part = work_out(site, only=("drip",)).part("drip")
    assert part.answer is not None
    assert "not told" not in part.answer.verdict.sentence
    reasons = [one.reason for one in part.outcome.assumed if one.key == "et"]
    assert reasons == [completed_more.A_DAY_SAID]


TOLD = {
    "deep": made({"water.level": "-40 m", "water.yield": "9 L/min"}, length="80 m", height="10 m"),
    "tank": made(PUMPED, ("float", "sink"), tanks=({"name": "tank", "level": "9 m"},),
                 length="200 m"),
    "line to a tank": made({"pump.height": "-30 m", "water.kind": "well"}, (),
                           tanks=({"name": "tank", "level": "9 m"},), length="200 m"),
    "no outlet": made(PUMPED, (), length="60 m", height="4 m"),
    "no pump": made({}, start="pump", length="300 m", height="-25 m"),
    "no length": made(PUMPED, height="4 m"),
}  # fmt: skip


@pytest.mark.parametrize("key", TOLD)
def test_what_was_completed_once_stays_as_it_is(key):
    """Links of the desk's pages hold the completed site, and each page completes what it gets."""
    once = pack(completed(TOLD[key]))
    again = completed(with_reasons(unpack(once)))
    assert pack(again) == once
    assert pack(completed(with_reasons(unpack(pack(again))))) == once


# Up to where ------------------------------------------------------------------------------------


def _limit(site):
    sentence = limits.told(work_out(site)).replace("\u00a0", " ")
    assert verdict.of(work_out(site)).sentence.replace("\u00a0", " ") == sentence
    return sentence


@pytest.mark.parametrize(("missing", "other"), [("length", {"height": "12 m"}),
                                                ("height", {"length": "70 m"})])  # fmt: skip
def test_what_was_left_out_is_told_up_to_where_enough_arrives(missing, other):
    site = made(PUMPED | {"pump.id": "large"}, ("shower", "hose"), pipe="pe100-sdr11/25", **other)
    sentence = _limit(site)
    most = float(sentence.split("up to ")[1].split(" m ")[0].split(" m")[0])
    assert most > 0
    for times, is_enough in ((1.0, True), (1.1, False)):
        at_most = site.put_cell("sections", 0, missing, Fact(f"{most * times} m"))
        assert enough(at_most) == is_enough


def test_without_a_pump_it_is_told_how_far_it_must_fall():
    site = made({"pump.present": "no"}, start="source", length="400 m", pipe="pe100-sdr11/25")
    sentence = _limit(site)
    least = float(sentence.split("fall ")[1].split(" m")[0])
    for times, is_enough in ((1.0, True), (0.9, False)):
        fallen = site.put_cell("sections", 0, "height", Fact(f"{-least * times} m"))
        assert enough(fallen) == is_enough


def test_where_even_the_shortest_is_too_long_that_is_said():
    site = made(PUMPED | {"pump.set": "1 bar"}, height="12 m", pipe="pe100-sdr11/25")
    assert "too little arrives however short it is" in _limit(site)


def test_nothing_is_told_of_a_pipe_of_which_all_or_nothing_is_known():
    assert limits.told(work_out(made(PUMPED, length="90 m", height="5 m"))) == ""
    assert limits.told(work_out(made(PUMPED))) == ""


# Asked ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", MADE)
def test_nobody_is_asked_what_only_we_can_say(key):
    work = worked(key, "")
    for one in asked.questions(work):
        assert one.label not in asked.OURS
        assert "“It”" not in one.told


def test_what_opens_is_asked_in_one_question():
    site = made(PUMPED, (), length="90 m", height="5 m").put("use.people", Fact("4"))
    site = site.put_rows("sections", ())
    labels = [one.label for one in asked.questions(work_out(site))]
    assert labels.count(asked.ALL_COUNTS) == 1
    assert "Showers" not in labels


def test_a_missing_length_is_asked_for():
    site = made(PUMPED, height="12 m")
    assert limits.ASKED["length"] in [one.label for one in asked.questions(work_out(site))]
