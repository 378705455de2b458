"""What is wrong here: the cause by the figures, what parts it, and what is refused."""

import json
import re
from functools import cache

import pytest

from calc import bridge
from calc.network import faults
from calc.network.fault_readings import Expected
from calc.network.faults import Fault
from calc.page import row_text
from calc.page.form import read_values, work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.fault.case import case_of
from calc.sheets.fault.rows import SIGNS
from calc.units import LITRE, MINUTE
from tests.parity.cases import worked
from tests.sheets import asking
from tests.sheets.test_every_fix import counted
from tests.sheets.working import check_working

SHEET = sheet("fault")
CABIN = "upper fork – cabin 3"
LPM, BAR = LITRE / MINUTE, 1e5
BARE = {"gauges": "", "buckets": ""}
PUMP = {"gauges": "pump,3.5bar", "buckets": ""}


def found(system="metric", **texts):
    return asking.found(SHEET, system, **texts)


def said(**texts):
    return asking.answer(SHEET, **texts).verdict.sentence


def errors(**texts):
    outcome = asking.outcome(SHEET, **texts)
    assert outcome.answer is None
    return outcome.errors


@cache
def alder():
    return case_of(read_values(SHEET, State()))


def typed(fault, severity):
    """What somebody would type who reads Alder Terrace with a fault in it."""
    case = alder()
    expected = Expected(faults.changed(case.finder.supply, fault, severity))
    gauges, buckets = [], []
    for reading in case.readings:
        value = expected.of(reading)
        if reading.kind == "pressure":
            gauges.append((reading.at, f"{value / BAR:.3g}bar", "after" if reading.opened else ""))
        else:
            seconds = min(86400.0, 0.01 / max(value, 1e-9))
            buckets.append((reading.at, "10L", f"{seconds:.4g}s"))
    gauges = [row if row[2] else row[:2] for row in gauges]
    return {"gauges": row_text.encode(gauges), "buckets": row_text.encode(buckets)}


# The cause ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("fault", "severity", "words"),
    [
        (Fault("valve", CABIN), 2000.0, "upper fork to cabin 3"),
        (Fault("valve", "lower fork – upper fork"), 2000.0, "lower fork to upper fork"),
        (Fault("shut", CABIN), 9e5, "closed valve"),
        (Fault("set"), 0.6, "set pressure"),
        (Fault("outlet", "Cabin 2 sink"), 0.4, "Cabin 2 sink"),
        (Fault("leak", CABIN), 30 * LPM, "leak"),
    ],
)
def test_the_readings_of_a_fault_name_it(fault, severity, words):
    answer = asking.answer(SHEET, **typed(fault, severity))
    assert words in answer.verdict.sentence
    assert asking.figure(answer, "Share of this cause") >= 0.5
    assert answer.verdict.level != "good"


def test_readings_of_a_sound_supply_name_nothing():
    texts = typed(faults.NOTHING, 1.0)
    levels = found(**texts)
    assert "cause" not in levels and "unlike" not in levels
    assert "nothing wrong" in asking.answer(SHEET, **texts).told


def test_the_verdict_is_a_stop_where_an_outlet_gets_too_little():
    answer = asking.answer(SHEET)
    case = alder()
    weak = [one for one in case.weak_now if one.has < one.needs]
    assert weak and answer.verdict.level == "bad"


def test_a_supply_that_is_too_weak_with_nothing_wrong_is_never_green():
    assert any(one.has < one.needs for one in alder().weak_sound)
    texts = typed(faults.NOTHING, 1.0)
    assert found(**texts)["weak-sound"] == "stop"
    assert asking.answer(SHEET, **texts).verdict.level == "bad"


def test_a_fall_at_rest_is_a_leak_or_the_check_valve_and_the_next_reading_parts_them():
    answer = asking.answer(SHEET, **PUMP, fell="0.5 bar")
    told = " ".join(one.text for one in answer.findings)
    assert "check valve" in told and "leak" in told
    assert "the valve behind the tank closed" in told
    assert "leak" in said(**PUMP, fell="0.5 bar", kept="0 bar")
    assert "check valve" in said(**PUMP, fell="0.5 bar", kept="0.5 bar")


def test_the_display_tells_low_voltage_from_other_weakness():
    weak = {"gauges": "pump,3.4bar;pump,1.9bar,after", "buckets": "", "nominal": "24 V"}
    low = work(SHEET, State("metric", {**weak, "volts": "20.4 V"})).answer
    full = work(SHEET, State("metric", {**weak, "volts": "24 V"})).answer
    assert "low voltage" in low.verdict.sentence
    assert "low voltage" not in full.verdict.sentence


def test_what_is_noticed_alone_shifts_the_shares_and_says_that_nothing_shows_it():
    levels = found(**PUMP, cycling="yes")
    assert levels["unseen"] == "care" and "cause" not in levels


def test_readings_that_fit_no_single_cause_are_said_to():
    texts = {"gauges": "pump,3.5bar;cabin 3,0.2bar;cabin 3,1.7bar,after", "buckets": ""}
    assert found(**texts)["unlike"] == "care"


def test_no_reading_is_not_checked_and_says_what_to_read_first():
    answer = asking.answer(SHEET, **BARE)
    (one,) = (one for one in answer.findings if one.key == "no-reading")
    assert one.level == "care" and "Read first: pressure" in one.text


@pytest.mark.parametrize(("key", "text"), [("amps", "20 A"), ("volts", "23 V")])
def test_a_reading_that_cannot_be_compared_is_said_to(key, text):
    assert f"left-out-{key}" in found(**PUMP, **{key: text})


def test_shares_are_shares_and_the_marked_ones_are_the_group_s():
    answer = asking.answer(SHEET)
    causes = answer.tables[0]
    shares = [row[1] for row in causes.rows]
    assert all(0 <= share <= 1 for share in shares) and sum(shares) <= 1 + 1e-9
    assert 0 in causes.marked


def test_electrical_work_is_left_to_a_licensed_person():
    volts = {"gauges": "pump,3.4bar;pump,1.9bar,after", "buckets": "", "nominal": "24 V"}
    answer = asking.answer(SHEET, **volts, volts="20.4 V")
    assert "licensed person" in " ".join(fix.text for fix in answer.fixes)
    assert any("Never open a box" in one for one in SHEET.cautions)
    for _, _, label in SIGNS:
        assert "volt" not in label.lower()


# Other supplies -----------------------------------------------------------------------------------


def test_water_from_above_has_faults_without_a_pump():
    texts = {"drive": "none", "fall": "40 m", "gauges": "cabin 3,0.3bar,after", "buckets": ""}
    answer = asking.answer(SHEET, **texts)
    told = " ".join(str(cell) for row in answer.tables[0].rows for cell in row)
    assert "pump" not in re.sub(r"from pump|pump to", "", told)


def test_a_pressure_switch_is_between_its_two_pressures():
    texts = {"drive": "full", "cutin": "2 bar", "cutout": "3.5 bar", "buckets": ""}
    for got in ("2.2 bar", "2.7 bar", "3.3 bar"):
        assert "cause" not in found(**texts, gauges=f"pump,{got}")
    assert "cause" in found(**texts, gauges="pump,0.9bar;pump,0.8bar,after")


def test_the_same_readings_in_the_other_units_say_the_same():
    metric, us = work(SHEET, State("metric")).answer, work(SHEET, State("us")).answer
    assert metric.verdict.word == us.verdict.word
    assert metric.tables[0].rows[0][0] == us.tables[0].rows[0][0]


def test_a_fault_that_the_whole_supply_s_form_has_words_for_goes_along():
    answer = asking.answer(SHEET, **typed(Fault("set"), 0.6))
    (link,) = (one for one in answer.links if "this fault" in one.text)
    opened = work(sheet("keep_up"), State("metric", dict(link.values)))
    assert opened.errors == {}
    pressure = asking.figure(opened.answer, "Pressure at the pump")
    assert pressure == pytest.approx(0.6 * 3.5 * BAR, rel=0.03)


# Bad input ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("texts", "key", "words"),
    [
        ({"gauges": "barn,3bar"}, "gauges.0.at", "not a point"),
        ({"gauges": "pump,-1bar"}, "gauges.0.got", "0 bar"),
        ({"gauges": "pump,9bar"}, "gauges.0.got", "more than the pump can make"),
        ({"gauges": "pump,2bar,one"}, "gauges.0.tap", "outlet"),
        ({"gauges": "pump,2bar,one,Bath"}, "gauges.0.tap", "no outlet"),
        ({"buckets": "Bath,10L,60s"}, "buckets.0.tap", "no outlet"),
        ({"buckets": "Cabin 2 sink,10L,60s,after"}, "buckets.0.open", "closed after"),
        ({"drive": "full", "cutin": "2bar"}, "cutout", "both"),
        ({"drive": "full", "cutin": "3bar", "cutout": "2bar"}, "cutout", "above"),
        ({"drive": "none", "fall": "30m", "gauges": "pump,1bar"}, "gauges.0.at", "open water"),
        ({"drive": "none", "fall": "30m", "gauges": "cabin 3,9bar"}, "gauges.0.got", "source"),
        ({"volts": "-3"}, "volts", "0"),
    ],
)
def test_bad_input_is_said_at_its_cell(texts, key, words):
    told = errors(**texts)
    assert words in told[key], told


def test_several_mistakes_are_said_at_once():
    told = errors(gauges="barn,3bar;attic,2bar", buckets="Bath,10L,60s")
    assert {"gauges.0.at", "gauges.1.at", "buckets.0.tap"} <= set(told)


def test_a_name_is_text_and_never_markup():
    runs = "pump,<b>x</b>,60m,5m,pe100-sdr11/40"
    taps = "Tap <i>1</i>,<b>x</b>,shower,1,1"
    state = State("metric", {"runs": runs, "taps": taps, "gauges": "<b>x</b>,2bar,after",
                             "buckets": "Tap <i>1</i>,10L,60s"})  # fmt: skip
    assert work(SHEET, state).errors == {}
    request = {"op": "work", "sheet": "fault", "system": "metric", "texts": state.texts}
    html = json.loads(bridge.handle(json.dumps(request)))["html"]
    assert "&lt;b&gt;x" in html and "<b>x" not in html and "<i>1" not in html


# Sentences ----------------------------------------------------------------------------------------


def test_sentences_are_short_and_the_working_holds_for_random_forms():
    for *_, outcome in worked("fault", 12, seed=7):
        answer = outcome.answer
        check_working(answer)
        for text in {answer.told, *(one.text for one in answer.findings)}:
            words, numbers = counted(text)
            assert words <= 25 and numbers <= 4 + len(re.findall(r"cabin \d|Cabin \d", text)), text
