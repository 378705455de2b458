"""The cable sheet: closed forms, sizes that are enough and no larger, fixes worked anew, errors."""

import math
import re
from functools import partial
from pathlib import Path

import pytest

from calc import practice
from calc.page.form import work
from calc.page.shapes import Stroke
from calc.page.state import State
from calc.power import cable
from calc.sheets.cable.case import HIGHER, LIES, STRANDS
from calc.sheets.cable.sheet import AWG, MM2, MOST_CABLES, SHEET
from tests.page.pictures import faults, named
from tests.sheets import asking, awkward
from tests.sheets.asking import figure, figures
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
found = partial(asking.found, SHEET)
RUNNING, START = "Voltage at the pump, running", "Voltage at the pump, at start"
LOST, CURRENT = "Power lost in the cable", "Running current"
MANY = [(state, work(SHEET, state)) for state in awkward.states(SHEET, 300)]
WORKED = [(state, outcome.answer) for state, outcome in MANY if outcome.answer]
LONG_AC = {"circuit": "single", "voltage": "230 V", "power": "5 kW", "length": "500 m"}
KNOWN = {"known": "current", "current": "10 A"}


def mm2(size, **texts):
    return {"own": "mm2", "mm2": size, **texts}


def size(one):
    """The smallest size that an answer names, in mm²."""
    return float(re.search(r"([\d.]+) mm²", one.verdict.sentence)[1])


# Closed forms -----------------------------------------------------------------------------------


def test_dc_loses_what_ohms_law_says_over_both_ways():
    """58 m of copper of 1 mm² is 1 ohm at 20 °C (IEC 60028); strands add 7 % (IEC 60228)."""
    texts = mm2("10", **KNOWN, length="29 m", lies="own", warm="20 °C", strands="coarse")
    one = answer(voltage="48 V", **texts)
    lost = 10 * 2 * 29 / 58 / 10 * practice.STRANDED
    assert figure(one, RUNNING) == pytest.approx(48 - lost)
    assert figure(one, START) == pytest.approx(48 - practice.START_SOFT * lost)
    assert figure(one, LOST) == pytest.approx(10 * lost)


def test_a_warm_conductor_loses_more_by_393_parts_in_100_000_a_kelvin():
    cold, warm = (
        48 - figure(answer(**mm2("10", **KNOWN, lies="own", warm=at)), RUNNING)
        for at in ("20 °C", "70 °C")
    )
    assert warm / cold == pytest.approx(1 + 50 * 3.93e-3)


def test_three_phases_lose_root_three_of_one_conductor_and_heat_three():
    texts = mm2("16", circuit="three", voltage="400 V", factor="1", **KNOWN)
    one, ohm = answer(**texts), answer(**mm2("16", voltage="400 V", **KNOWN))
    half = (400 - figure(ohm, RUNNING)) / 2  # of one conductor
    assert 400 - figure(one, RUNNING) == pytest.approx(math.sqrt(3) * half)
    assert figure(one, LOST) == pytest.approx(3 * half * 10)


@pytest.mark.parametrize(
    "circuit, voltage, amperes",
    [
        ("dc", 48, 1000 / 48),
        ("single", 230, 1000 / 230 / 0.8),
        ("three", 400, 1000 / 400 / 0.8 / math.sqrt(3)),
    ],
)
def test_a_power_takes_the_current_of_its_circuit(circuit, voltage, amperes):
    one = answer(circuit=circuit, voltage=f"{voltage} V", power="1000 W")
    assert figure(one, CURRENT) == pytest.approx(amperes)
    check_working(one)


@pytest.mark.parametrize("cables", range(1, MOST_CABLES + 1))
def test_equal_cables_side_by_side_share_the_current_and_the_loss(cables):
    alone, several = answer(**mm2("10")), answer(**mm2("10", cables=str(cables)))
    assert 48 - figure(several, RUNNING) == pytest.approx((48 - figure(alone, RUNNING)) / cables)
    assert figure(several, LOST) == pytest.approx(figure(alone, LOST) / cables)
    check_working(several)


def test_a_current_and_the_power_it_comes_to_are_one_question():
    by_power, by_current = answer(power="960 W"), answer(known="current", current="20 A")
    assert by_power.figures == by_current.figures


# The size ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("texts", [{}, {"start": "direct"}, {"circuit": "single", "voltage": "230"},
                                   {"metal": "aluminium"}, {"cables": "2"}])  # fmt: skip
def test_the_size_named_is_enough_and_the_next_smaller_is_not(texts):
    least = f"{size(answer(**texts)):g}"
    drops = {"too-thin", "start-drop", "start-half"}
    assert not drops & found(**mm2(least, **texts)).keys()
    assert drops & found(**mm2(MM2[MM2.index(least) - 1], **texts)).keys()


@pytest.mark.parametrize(
    "less, more",
    [
        ({"length": "20 m"}, {"length": "60 m"}),
        ({"power": "400 W"}, {"power": "2000 W"}),
        ({"voltage": "96 V"}, {"voltage": "24 V"}),
        ({"drop": "5 %"}, {"drop": "1 %"}),
        ({"dropstart": "15 %"}, {"dropstart": "1 %"}),
        ({"metal": "copper"}, {"metal": "aluminium"}),
        ({"start": "soft", "dropstart": "10 %"}, {"start": "direct", "dropstart": "10 %"}),
        ({"lies": "ground", "drop": "2.35 %"}, {"lies": "sun", "drop": "2.35 %"}),
        ({"cables": "2"}, {"cables": "1"}),
        ({**LONG_AC, "factor": "1"}, {**LONG_AC, "factor": "0.5"}),
    ],
)  # fmt: skip
def test_what_asks_for_more_never_gets_a_thinner_cable(less, more):
    assert size(answer(**less)) < size(answer(**more))


def test_the_reader_meets_the_sizes_of_their_own_system_first():
    metric, us = answer("metric").verdict.sentence, answer("us").verdict.sentence
    assert re.match(r"25 mm² \(4 AWG\)", metric) and re.match(r"4 AWG \(25 mm²\)", us)
    assert [t.title for t in answer("us").tables[:2]] == ["Sizes in AWG", "Sizes in mm²"]


def test_both_sizes_named_keep_to_the_drops():
    _, gauge = re.match(r"([\d.]+) mm² \(([\d/]+) AWG\)", answer().verdict.sentence).groups()
    gauge = gauge.replace("/", "-")
    assert "too-thin" not in found(own="awg", awg=gauge)
    assert "too-thin" in found(own="awg", awg=AWG[AWG.index(gauge) - 1])


def test_the_form_offers_the_sizes_that_the_physics_knows():
    for series in STRANDS.values():
        assert [f"{one} mm²" for one in MM2] == [one.name for one in cable.SERIES[series]]
    offered = [f"{one.replace('-', '/')} AWG" for one in AWG]
    assert offered == [one.name for one in cable.SERIES["awg"]]
    ways = {key for key, _ in SHEET.field("lies").options}
    assert ways == {*LIES, "own"} and set(STRANDS) == dict(SHEET.field("strands").options).keys()


@pytest.mark.parametrize("way", LIES)
def test_a_cable_is_as_warm_as_is_said_of_how_it_lies(way):
    texts = mm2("10", lies="own", warm=f"{LIES[way] - 273.15:.12g} °C")
    assert figures(SHEET, **texts) == pytest.approx(figures(SHEET, **mm2("10", lies=way)))


# Judged -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("system", ["metric", "us"])
def test_a_size_alone_never_works_since_what_it_may_carry_is_not_checked(system):
    one = answer(system)
    assert one.verdict.word == "Borderline" and "Not checked" in one.verdict.sentence
    assert found(system) == {"capacity": "care"}
    assert one.fixes == ()


def test_no_form_whatever_works_where_what_the_cable_may_carry_is_not_known():
    seen = 0
    for state, one in WORKED:
        if not state.texts.get("carries", "").strip(" ?") or state.texts.get("own") == "none":
            seen += 1
            assert one.verdict.word != "Works", state
    assert seen > 100


@pytest.mark.parametrize(
    "carries, word, finding",
    [
        ("90 A", "Works", None),
        ("30 A", "Works", None),  # that of the usual fuse
        ("29 A", "Borderline", "fuse"),
        ("20.9 A", "Borderline", "fuse"),
        ("20.8 A", "Does not work", "over-capacity"),
    ],
)
def test_a_cable_that_may_carry_so_much_is_held_to_its_current_and_its_fuse(carries, word, finding):
    one = answer(**mm2("25", carries=carries))
    assert one.verdict.word == word
    assert [each.key for each in one.findings] == ([finding] if finding else [])


def test_cables_side_by_side_may_carry_together():
    texts = mm2("16", cables="2")
    assert answer(**texts, carries="15 A").verdict.word == "Works"
    assert found(**texts, carries="14 A") == {"fuse": "care"}
    assert found(**texts, carries="10 A") == {"over-capacity": "stop"}


def test_a_current_no_listed_fuse_takes_is_held_to_the_cable_all_the_same():
    texts = mm2("240", known="current", current="600 A", length="1 m")
    assert found(**texts, carries="700 A") == {"fuse": "care"}
    assert found(**texts, carries="750 A") == {}


def test_a_cable_that_leaves_less_than_half_at_start_may_not_start_the_pump():
    assert "start-half" not in found(**mm2("10", start="direct"))  # 37.5 %
    one = answer(**mm2("6", start="direct"))  # 60 %
    assert one.verdict.word == "Does not work" and "may not start" in one.verdict.sentence


def test_a_drop_met_exactly_is_accepted():
    one = answer(**mm2("10"))
    lost = (48 - figure(one, RUNNING)) / 48
    exact = f"{100 * lost:.15g} %"
    assert found(**mm2("10", drop=exact)) == {"capacity": "care"}
    assert "too-thin" in found(**mm2("10", drop=f"{99.9 * lost:.15g} %"))


@pytest.mark.parametrize("length", ["20 m", "500 m"])  # 1.3 and 33 times all of it
def test_where_nothing_is_left_no_volts_below_zero_are_told(length):
    one = answer(**mm2("0.75", voltage="24 V", length=length))
    assert figure(one, RUNNING) == figure(one, START) == 0
    assert "0 V of" in one.verdict.sentence.replace("\u00a0", " ")
    said = {each.key: each.text for each in one.findings}
    assert "all of the voltage running" in said["too-thin"]
    assert one.figures[1].note == "100\u00a0% lost"
    assert LOST not in {f.label for f in one.figures}
    assert max(row[1] for table in one.tables[:2] for row in table.rows) <= 1
    check_working(one)


def test_no_size_is_told_by_what_it_loses_more_than_is_accepted():
    running = answer(voltage="12 V", length="100 m").verdict.sentence
    assert "running" in running and "accept 3\u00a0%" in running
    start = answer(length="200 m", start="direct", dropstart="5 %").verdict.sentence
    assert "at start" in start and "accept 5\u00a0%" in start
    assert "all of the voltage" in answer(voltage="12 V", length="20 km").verdict.sentence


def test_a_cable_too_thin_is_never_said_to_keep_to_the_drop():
    for texts in (mm2("10"), mm2("25", start="direct", dropstart="10 %"), {"length": "20 km"}):
        (unknown,) = (one for one in answer(**texts).findings if one.key == "capacity")
        assert "keep" not in unknown.text
    (unknown,) = answer().findings
    assert "25 mm² (4 AWG) keeps to the drop" in unknown.text
    (unknown,) = answer(cables="2").findings
    assert "cables of" in unknown.text and " keep to " in unknown.text and "each" in unknown.text


def test_shares_that_differ_by_little_are_told_apart():
    one = answer(**mm2("10"))
    lost = (48 - figure(one, RUNNING)) / 48
    said = answer(**mm2("10", drop=f"{99.99 * lost:.12g} %")).verdict.sentence
    shares = re.findall(r"[\d.]+\u00a0%", said)
    assert len(set(shares)) == 2


def test_what_stands_in_the_notes_of_the_figures_is_of_this_pump():
    one = {f.label: f for f in answer(**mm2("10")).figures}
    power, current = 1000.0, 1000 / 48
    assert one[LOST].note == f"{100 * one[LOST].value / power:.2g}\u00a0% of the power"
    assert one[CURRENT].note == f"{practice.START_SOFT * current:.1f}\u00a0A at start"
    assert one[START].note == f"{100 * (1 - one[START].value / 48):.2g}\u00a0% lost"


# Fixes ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, words",
    [
        ({"voltage": "12 V", "length": "100 m"}, "made for 48"),
        ({"voltage": "12 V", "length": "38 m"}, "equal cables"),
        ({"voltage": "12 V", "length": "38 m"}, "nearer"),
        ({"start": "direct", "length": "120 m", "dropstart": "5 %"}, "soft starter"),
        (mm2("10"), "Use 25"),
        (mm2("25", start="direct", dropstart="10 %"), "soft starter"),
        (mm2("16", carries="60 A"), "Use 25"),
        (mm2("25", carries="20 A"), "two equal cables"),
    ],
)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_each_kind_of_fix_is_offered_where_it_is_enough(system, texts, words):
    one = answer(system, **texts)
    assert one.verdict.word == "Does not work"
    assert words in " ".join(fix.text for fix in one.fixes).replace("\u00a0", " ")
    for fix in one.fixes:
        after = answer(system, **fix.link.values)
        assert {each.rank for each in after.findings} <= {"unchecked"}, fix.text


def test_a_higher_voltage_takes_the_same_power():
    for texts in ({}, {"known": "current", "current": "80 A", "start": "own", "startup": "160 A"}):
        one = answer(voltage="12 V", length="60 m", **texts)
        fix = next(fix for fix in one.fixes if "made for" in fix.text)
        after = answer(**fix.link.values)
        volts = float(fix.link.values["voltage"].split()[0])
        assert volts * figure(after, CURRENT) == pytest.approx(12 * figure(one, CURRENT))
        notes = [re.match(r"[\d.]+", f.note)[0] for f in (one.figures[-1], after.figures[-1])]
        assert volts * float(notes[1]) == pytest.approx(12 * float(notes[0]), rel=5e-3)  # 3 figures


def test_where_no_change_is_enough_alone_that_is_said():
    one = answer(voltage="12 V", length="20 km")
    assert len(one.fixes) == 1 and "combine" in one.fixes[0].text


# Working, tables, picture -----------------------------------------------------------------------


def test_the_working_holds_however_awkward_the_form():
    assert len(WORKED) > 100
    for _, one in WORKED:
        check_working(one)


def test_the_least_area_of_the_working_is_the_drop_met_exactly():
    one = answer()
    area = next(s.result.value for s in one.steps if s.title == "Least area of the conductor")
    lost = 48 - figure(one, RUNNING)
    assert area == pytest.approx(25e-6 * lost / (0.03 * 48))


def test_a_table_of_sizes_says_what_each_does_in_mind():
    for name, running, start, watts in answer().tables[0].rows:
        one = answer(**mm2(name.split()[0]))
        assert running == pytest.approx(1 - figure(one, RUNNING) / 48)
        assert start == pytest.approx(1 - figure(one, START) / 48)
        assert watts == pytest.approx(figure(one, LOST))


def test_sizes_that_lose_too_much_are_dim_and_the_one_found_is_marked():
    for texts in ({}, {"start": "direct", "dropstart": "10 %"}, {"cables": "2"}):
        one = answer(**texts)
        for table, kind in zip(one.tables[:2], ("mm2", "awg"), strict=True):
            drops = {"too-thin", "start-drop", "start-half"}
            for at, (name, *_, watts) in enumerate(table.rows):
                key = name.split()[0].replace("/", "-")
                alone = answer(own=kind, **{kind: key}, **texts)
                wrong = {each.key for each in alone.findings}
                assert (at in table.dimmed) == bool(drops & wrong), (texts, name)
                assert watts == pytest.approx(figure(alone, LOST))
            assert table.marked == (max(table.dimmed) + 1,)
    (marked,) = answer(**mm2("10")).tables[0].marked
    assert answer(**mm2("10")).tables[0].rows[marked][0] == "10 mm²"


def test_the_table_of_voltages_is_of_sizes_that_are_enough_whatever_is_in_mind():
    assert answer(**mm2("10", carries="5 A")).tables[2] == answer().tables[2]


def test_the_table_of_voltages_says_what_each_would_need():
    table = answer().tables[2]
    assert [row[0] for row in table.rows] == list(HIGHER["metric"]["dc"])
    for volts, current, name, _ in table.rows:
        other = answer(voltage=f"{volts} V")
        assert current == pytest.approx(figure(other, CURRENT))
        if name == "none listed":
            assert found(voltage=f"{volts} V")["no-size"] == "stop"
        else:
            assert name in other.verdict.sentence
    assert table.rows[table.marked[0]][0] == 48


def test_the_picture_falls_to_scale_and_marks_what_is_too_low():
    for texts in ({}, mm2("10"), mm2("1.5", start="direct", voltage="24 V")):
        one = answer(**texts)
        (picture,) = one.drawings
        assert list(faults(picture)) == []
        lines = {s.at: s for s in picture.shapes if isinstance(s, Stroke) and s.at}
        whole = float(texts.get("voltage", "48 V").split()[0])
        depths = [lines[at].points[-1][1] - lines[at].points[0][1] for at in ("running", "start")]
        lost = [whole - figure(one, RUNNING), whole - figure(one, START)]
        assert depths[0] * lost[1] == pytest.approx(depths[1] * lost[0])
        wrong = {each.key for each in one.findings}
        assert (lines["running"].role == "bad") == ("too-thin" in wrong)
        assert (lines["start"].role == "bad") == bool({"start-drop", "start-half"} & wrong)
        least = lines["least running"].points[0][1] - lines["running"].points[0][1]
        if lost[0] < whole:
            assert least / depths[0] == pytest.approx(practice.DROP_RUNNING * whole / lost[0])
        else:  # all of it is lost on the way
            part = lines["running"].points[1][0] - lines["running"].points[0][0]
            long = lines["running"].points[2][0] - lines["running"].points[0][0]
            amperes = figure(one, CURRENT)
            ohm = cable.resistance(1.5e-6, practice.CABLE_WARM, "copper", practice.FLEXIBLE)
            assert part / long == pytest.approx(whole / (2 * 30 * amperes * ohm))
    assert {"there", "back", "pump", "source"} <= named(answer().drawings[0]).keys()


# Advice -----------------------------------------------------------------------------------------


def test_the_fuse_is_advice_that_defers_and_is_for_dc_where_the_current_is():
    said = answer().cautions[0]
    assert "30\u00a0A" in said and "DC" in said and "electrician" in said and "local code" in said
    assert "DC" not in answer(circuit="single", voltage="230 V").cautions[0]


def test_several_cables_and_aluminium_have_their_cautions():
    def said(**texts):
        return " ".join(answer(**texts).cautions)

    assert "side by side" in said(cables="2") and "side by side" not in said()
    assert "Aluminium" in said(metal="aluminium") and "Aluminium" not in said()


@pytest.mark.parametrize(
    "texts, deadly",
    [
        ({"voltage": "48 V"}, False),
        ({"voltage": "130 V"}, True),
        ({"circuit": "single", "voltage": "48 V"}, False),
        ({"circuit": "single", "voltage": "120 V"}, True),
        ({"circuit": "three", "voltage": "400 V"}, True),
    ],
)
def test_a_voltage_that_kills_at_a_touch_is_said(texts, deadly):
    assert any("kill" in one for one in answer(**texts).cautions) == deadly


def test_cautions_of_the_trade_stand_on_the_page():
    said = " ".join(SHEET.cautions)
    for word in ("licensed electrician", "arc", "locked off", "lightning", "Earth", "wet",
                 "short-circuits"):  # fmt: skip
        assert word in said, word


# Errors -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "field, text, more",
    [
        ("voltage", "0 V", {}),
        ("voltage", "2000 V", {}),
        ("voltage", "12 V", {"power": "20 kW"}),  # takes more than is worked out
        ("length", "0 m", {}),
        ("length", "-3 m", {}),
        ("power", "0 W", {}),
        ("power", "?", {}),
        ("current", "0 A", {"known": "current"}),
        ("factor", "0", {"circuit": "single"}),
        ("factor", "1.2", {"circuit": "three"}),
        ("drop", "0 %", {}),
        ("drop", "60 %", {}),
        ("dropstart", "70 %", {}),
        ("startup", "10 A", {"start": "own"}),  # less than the running current
        ("startup", "900 A", {"start": "own"}),  # more than ten times
        ("warm", "200 °C", {"lies": "own"}),
        ("cables", "0", {}),
        ("carries", "-1 A", {"own": "mm2"}),
    ],
)
def test_a_bad_entry_is_said_at_its_field(field, text, more):
    outcome = work(SHEET, State(texts={**more, field: text}))
    assert outcome.answer is None and set(outcome.errors) == {field}


def test_a_start_up_current_at_its_bounds_is_taken():
    for text, times in (("20 A", 1), ("200 A", 10)):
        one = answer(known="current", current="20 A", start="own", startup=text, **mm2("70"))
        lost = [48 - figure(one, label) for label in (RUNNING, START)]
        assert lost[1] == pytest.approx(times * lost[0])


@pytest.mark.parametrize("key", ["start", "drop", "dropstart", "factor", "lies", "strands"])
def test_not_knowing_is_an_answer_on_the_careful_side(key):
    texts = {"circuit": "single", "voltage": "230 V", "power": "3 kW", "length": "100 m"}
    outcome = work(SHEET, State(texts={**texts, key: "?"}))
    assert outcome.errors == {} and key in {one.key for one in outcome.assumed}
    assert size(outcome.answer) >= size(answer(**texts))


# The guide --------------------------------------------------------------------------------------


def guide():
    path = Path(__file__).resolve().parents[2] / "docs" / "cable.md"
    return " ".join(path.read_text(encoding="utf-8").split())


def test_the_short_answer_names_the_sizes_that_the_calculator_finds():
    short = guide().partition("**Short answer.**")[2].partition("```")[0]
    for system, length in (("metric", "30 m"), ("us", "100 ft")):
        one = answer(system, power="1 kW", voltage="48 V", length=length)
        named = re.match(r"(\S+ \S+) \((\S+ \S+)\)", one.verdict.sentence).groups()
        assert set(named) == {"25 mm²", "4 AWG"}
    assert "At 48 V a 1 kW pump at 30 m (100 ft) needs 25 mm² (4 AWG) of copper" in short
    assert f"{100 * practice.DROP_RUNNING:g} %" in short


def test_twice_the_voltage_needs_a_quarter_of_the_metal_and_twice_the_length_twice():
    def area(**texts):
        steps = answer(**texts).steps
        return next(s.result.value for s in steps if s.title == "Least area of the conductor")

    assert "only a quarter of the metal" in guide() and "Twice the length needs twice" in guide()
    assert area(voltage="96 V") == pytest.approx(area() / 4)
    assert area(length="60 m") == pytest.approx(2 * area())
    assert "about 1.6 times the area of copper" in guide()
    assert area(metal="aluminium") / area() == pytest.approx(1.6, abs=0.05)  # as it is rounded


def test_what_the_guide_says_of_heat_strands_start_and_fuse_is_what_is_worked_with():
    text, rise = guide(), cable.METALS["copper"].rise
    assert f"{1000 * rise:.0f} % more with each 10 °C" in text
    strands = practice.FLEXIBLE / practice.STRANDED
    assert f"about {100 * (strands - 1):.0f} % more" in text
    assert practice.START_TIMES == 6 and "six times" in text
    assert f"{practice.FUSE_TIMES:g} times the running current" in text
    assert "a quarter more current" in text and 1 / practice.MOTOR_POWER_FACTOR == 1.25
