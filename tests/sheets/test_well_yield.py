"""The well sheet: figures by hand, what is found, fixes worked anew, errors at their fields."""

import math
import re
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest

from calc import practice, recovery
from calc.page import row_text
from calc.page.form import work
from calc.page.state import State
from calc.sheets.well.sheet import SHEET
from calc.units import FOOT, LITRE, MINUTE
from tests.page.pictures import HALF, faults, off_scale
from tests.sheets import asking, awkward
from tests.sheets.asking import figure
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
found = partial(asking.found, SHEET)
YIELD, STORED, LEVEL = "Well yield", "Stored in the well", "Level while the pump runs"
EMPTIES, TANK = "The pump empties it in", "Storage tank that evens out the day"
SET_AT, PAST = "Depth to set the intake", "Water speed past the motor"
OURS = {"drawn": "200 L", "minutes": "30 min", "steady": "3 L/min", "cistern": ""}
DEEP = {
    "kind": "in", "known": "levels", "tested": "30 L/min", "static": "12 m", "pumping": "16.5 m",
    "intake": "40 m", "depth": "60 m", "casing": "125 mm", "pump": "25 L/min", "cover": "1.5 m",
}  # fmt: skip
PLAIN = [one for one in SHEET.fields if one.key != "readings"]


def readings(*rows):
    """A recovery test: (minutes, metres down)."""
    text = row_text.encode((f"{time} min", f"{level} m") for time, level in rows)
    return {"known": "recovery", "readings": text}


def theis(transmissivity=3e-4, flow="30 L/min", pumped=6 * 60, static=12.0):
    """A made-up aquifer's recovery in a casing of 125 mm, as a form has it."""
    rate = float(flow.split()[0]) * LITRE / MINUTE

    def s(time):
        return recovery.drawdown(rate, transmissivity, 1e-4, 0.0625, time)

    rows = [(0, static + s(pumped * 60))]
    for at in range(10):
        time = 60.0 * 2**at
        rows.append((2**at, static + s(pumped * 60 + time) - s(time)))
    return {**DEEP, **readings(*rows), "rate": flow, "pumped": f"{pumped} min", "pump": "25 L/min"}


# By hand ----------------------------------------------------------------------------------------


def test_the_customers_well_gives_3_litres_a_minute_and_had_150_in_store():
    one = answer(**OURS)
    assert figure(one, YIELD) == pytest.approx(3 * LITRE / MINUTE)
    assert figure(one, STORED) == pytest.approx(90 * LITRE / -math.log(0.55))
    assert "4320" in one.verdict.sentence and one.verdict.word == "Works"


def test_what_the_well_is_too_narrow_to_hold_is_not_counted():
    one = answer(**{**OURS, "casing": "150 mm"})
    assert figure(one, STORED) == pytest.approx(math.pi / 4 * 0.15**2 * 0.8)


def test_two_levels_give_the_specific_capacity_and_with_it_the_yield_and_the_level():
    one = answer(**DEEP)
    capacity = 30 / 4.5  # L/min for a metre
    assert figure(one, YIELD) == pytest.approx(capacity * 26.5 * LITRE / MINUTE)
    assert figure(one, LEVEL) == pytest.approx(12 + 25 / capacity)
    assert figure(one, SET_AT) == pytest.approx(12 + 25 / capacity + 1.5)


def test_a_recovery_on_theis_line_lasts_100_days():
    one = answer(**theis())
    after = recovery.drawdown(1.0, 3e-4, 1e-4, 0.0625, practice.LASTING)
    assert figure(one, YIELD) == pytest.approx(26.5 / after, rel=0.01)
    assert "Theis" in one.figures[0].note and "on Theis' line" in str(one.tables)


def test_a_wide_well_says_why_its_recovery_is_read_the_simple_way():
    one = answer(known="recovery")
    said = " ".join(step.note for step in one.steps)
    assert "own water" in said and "fewer than 4" in said
    assert "how fast the level recovers" in one.figures[0].note
    assert figure(one, YIELD) == pytest.approx(1.5 * LITRE / MINUTE, rel=0.1)  # as the bucket says


def test_a_pump_at_the_house_must_make_the_height_of_the_house_too():
    low, high = (
        figure(answer(**DEEP, **texts), "Head the pump must make")
        for texts in ({}, {"sensed": "house", "rise": "7 m"})
    )
    assert high - low == pytest.approx(7.0)
    one = answer(**DEEP, set="3 bar")
    at_pump = figure(one, "Static pressure at the pump")
    assert at_pump == pytest.approx(3e5 + 40 * 9.80665 * 999.1, rel=1e-4)


def test_cooling_is_the_flow_over_the_room_about_the_motor():
    area = math.pi / 4 * (0.125**2 - 0.096**2)
    assert figure(answer(**DEEP), PAST) == pytest.approx(25 * LITRE / MINUTE / area)


# What never goes the wrong way ------------------------------------------------------------------


def yields(**texts):
    return figure(answer(**texts), YIELD)


def test_a_deeper_pumping_level_never_raises_the_yield():
    at = [yields(**{**DEEP, "pumping": f"{12.5 + 1.5 * n} m"}) for n in range(12)]
    assert at == sorted(at, reverse=True) and at[-1] < at[0]


def test_a_wider_well_never_lessens_what_is_stored():
    for texts in (OURS, {"known": "told"}, DEEP):
        wide = [figure(answer(**{**texts, "casing": f"{mm} mm"}), STORED)
                for mm in (110, 150, 400, 1000, 3000)]  # fmt: skip
        assert wide == sorted(wide) and wide[-1] > wide[0], texts


def test_a_deeper_intake_never_gives_less_and_a_stronger_pump_never_lasts_longer():
    deep = [yields(**{**DEEP, "intake": f"{one} m"}) for one in (20, 30, 45, 55)]
    assert deep == sorted(deep)
    runs = [figure(answer(**{**OURS, "pump": f"{one} L/min"}), EMPTIES) for one in (4, 8, 16, 60)]
    assert runs == sorted(runs, reverse=True)


# What is found ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, level, key",
    [
        ({"steady": "0 L/min"}, "stop", "no-flow"),
        ({"use": "3000 L/day"}, "stop", "too-little"),
        ({"use": "2100 L/day"}, "care", "well-near"),
        ({"use": "900 L/day", "pump": "0.5 L/min"}, "stop", "too-little"),
        ({"dry": "no"}, "stop", "runs-dry"),
        ({"dry": "?"}, "stop", "runs-dry"),
        ({"dry": "no", "use": "200 L/day"}, "care", "runs-dry"),
        ({}, "note", "cycles"),
        ({**OURS, "peak": "800 L", "peakfor": "30 min", "pump": "40 L/min"}, "stop", "peak"),
        ({"cistern": "100 L"}, "stop", "cistern"),
        ({"intake": "5.8 m"}, "care", "floor"),
        ({"depth": "?"}, "care", "floor-unchecked"),
        ({**DEEP, "casing": "200 mm"}, "care", "cooling"),
        ({**DEEP, "casing": "?"}, "care", "cooling-unchecked"),
        ({**DEEP, "pump": "40 L/min"}, "care", "beyond-test"),
        ({**DEEP, "kind": "out"}, "stop", "suction"),
        ({"intake": "5.3 m", "depth": "8 m"}, "care", "suction-unchecked"),
    ],
)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_what_is_wrong_is_found(system, texts, level, key):
    assert found(system, **texts).get(key) == level


def test_the_example_and_the_deep_pump_work():
    for texts in ({}, OURS, DEEP, theis(), {"known": "told"}):
        assert answer(**texts).verdict.word == "Works", texts


def test_a_pump_held_to_the_yield_is_never_said_to_run_dry():
    assert not {"runs-dry", "cycles"} & found(dry="no", pump="1.5 L/min").keys()


def test_a_tank_that_is_enough_just_passes():
    size = figure(answer(), TANK)
    for part, passes in ((1.0 + 1e-12, True), (0.99, False)):
        assert ("cistern" not in found(cistern=f"{1000 * part * size:.12g} L")) == passes


def test_a_recovery_that_stays_below_rest_is_not_trusted():
    texts = theis()
    rows = row_text.decode(texts["readings"])
    sunk = [(time, f"{float(level.split()[0]) + 0.4} m") for time, level in rows]
    assert found(**{**texts, "readings": row_text.encode(sunk)}).get("limited") == "care"
    assert "limited" not in found(**texts)


def test_a_flow_beyond_the_test_is_not_told_as_the_wells_yield():
    one = answer(**DEEP)
    assert "keeps up with the pump" in one.verdict.sentence
    assert "beyond" in one.figures[0].note


# Fixes ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, words",
    [
        ({"dry": "no"}, "set it slower"),
        ({"dry": "no"}, "Fit dry-run protection"),
        ({"use": "900 L/day", "pump": "0.5 L/min"}, "Use a pump that takes"),
        ({"use": "3000 L/day"}, "Use no more than"),
        ({**OURS, "peak": "800 L", "peakfor": "30 min", "pump": "40 L/min"}, "fill a storage tank"),
        ({"cistern": "100 L"}, "fill a storage tank"),
        ({"intake": "4.4 m", "depth": "4.6 m"}, "Raise the intake"),
        ({**DEEP, "casing": "200 mm"}, "cooling sleeve"),
        ({**DEEP, "kind": "out"}, "submersible"),
        ({**DEEP, "kind": "out", "casing": "200 mm"}, "Do all of this"),
        ({**DEEP, "intake": "14.5 m", "dry": "no", "cistern": ""}, "Set the intake"),
    ],
)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_each_kind_of_fix_is_offered_and_works(system, texts, words):
    one = answer(system, **texts)
    assert words in " ".join(fix.text for fix in one.fixes)
    for fix in one.fixes:
        assert answer(system, **fix.link.values).verdict.word == "Works", fix.text


def test_a_deeper_pump_is_offered_only_after_a_test_with_levels():
    for texts in ({}, {"known": "told"}):
        one = answer(dry="no", use="3000 L/day", depth="60 m", **texts)
        assert "Set the intake" not in " ".join(fix.text for fix in one.fixes)


def test_a_well_without_inflow_is_offered_no_tank_and_no_smaller_use():
    (fix,) = answer(steady="0 L/min").fixes
    assert fix.link is None and "another source" in fix.text


def test_a_fix_keeps_the_readings_of_the_test():
    one = answer(known="recovery", dry="no")
    after = answer(**one.fixes[0].link.values)
    assert figure(after, YIELD) == pytest.approx(figure(one, YIELD), rel=1e-9)


# Working and picture ----------------------------------------------------------------------------


@pytest.mark.parametrize("texts", [{}, OURS, DEEP, theis(), {"known": "recovery"},
                                   {"known": "told"}, {"steady": "0"}, {"pump": "0"},
                                   {**DEEP, "sensed": "house"}, {"casing": "?"}])  # fmt: skip
def test_every_step_gives_its_result(texts):
    check_working(answer(**texts))


def test_the_working_holds_however_awkward_the_form():
    states = awkward.states(replace(SHEET, fields=tuple(PLAIN)), 300)
    worked = [one for one in (work(SHEET, state).answer for state in states) if one]
    assert len(worked) > 20
    for one in worked:
        check_working(one)


@pytest.mark.parametrize("texts", [{}, OURS, DEEP, {**DEEP, "depth": "?"}, {"dry": "no"}])
def test_depths_are_to_scale(texts):
    (picture,) = answer(**texts).drawings
    assert list(faults(picture)) == []
    drawn = {one.at: one for one in picture.shapes if getattr(one, "at", "")}
    texts = {**{one.key: one.default("metric") for one in PLAIN}, **texts}
    metres = {key: float(texts[key].split()[0]) for key in ("static", "intake")}
    known = [
        (metres["static"], drawn["static"].points[0][1]),
        (metres["intake"], drawn["pipe"].points[-1][1]),
        (figure(answer(**texts), LEVEL), drawn["water"].y),
    ]
    assert off_scale(known) <= HALF


def test_a_table_says_how_long_each_flow_lasts():
    table = answer(**OURS).tables[0]
    for flow, level, said in table.rows:
        one = answer(**{**OURS, "pump": f"{flow / LITRE * MINUTE:.12g} L/min"})
        assert level == pytest.approx(figure(one, LEVEL))
        assert ("as long as you like" in said) == (flow <= 3 * LITRE / MINUTE * (1 + 1e-9))


# Cautions ---------------------------------------------------------------------------------------


def test_what_can_hurt_is_said_on_the_page():
    said = " ".join(SHEET.cautions)
    for word in ("confined space", "Lift a pump", "never by its cable", "licensed person",
                 "lightning", "chlorinate", "health authority", "Before you dig"):  # fmt: skip
        assert word in said, word


def test_check_valves_follow_the_length_of_the_drop_pipe():
    assert "A check valve at the pump is enough" in " ".join(answer(**DEEP).cautions)
    said = " ".join(answer(**DEEP, drop="130 m").cautions)
    assert "2 more check valves" in said and "60.0\u00a0m" in said
    assert "check valve" not in " ".join(answer().cautions)


# Errors -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, place, words",
    [
        ({"static": "6.5 m"}, "static", "above the floor"),
        ({"intake": "7 m"}, "intake", "below the floor"),
        ({"intake": "3 m"}, "intake", "deeper"),
        ({"known": "levels", "pumping": "3 m"}, "pumping", "above the static"),
        ({"known": "levels", "pumping": "9 m"}, "pumping", "below the floor"),
        ({"steady": "9 L/min"}, "steady", "later, smaller"),
        ({"known": "recovery", "casing": "?"}, "casing", "recovery test"),
        ({**DEEP, "motor": "150 mm"}, "motor", "does not fit"),
        ({**DEEP, "sleeve": "90 mm"}, "sleeve", "wider than the pump"),
        ({**DEEP, "sleeve": "130 mm"}, "sleeve", "does not fit"),
        (readings((0, 4), (10, 4.2)), "readings.1.level", "falls here"),
        (readings((0, 4), (10, 3.8), (10, 3.7)), "readings.2.time", "later"),
        (readings((0, 4), (10, 3)), "readings.1.level", "above the static"),
        (readings((5, 4), (10, 3.8)), "readings.0.time", "at 0"),
        (readings((0, 3), (10, 3)), "readings.0.level", "below the static"),
        (readings((0, 4)), "readings", "a reading"),
    ],
)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_a_bad_entry_is_said_at_its_field(system, texts, place, words):
    outcome = work(SHEET, State(system, texts))
    assert outcome.answer is None and place in outcome.errors
    assert words in outcome.errors[place]


def test_several_faults_are_said_at_once():
    outcome = work(SHEET, State(texts={"known": "levels", "pumping": "3 m", "intake": "7 m"}))
    assert outcome.errors.keys() == {"pumping", "intake"}


# The guide --------------------------------------------------------------------------------------


def guide():
    path = Path(__file__).resolve().parents[2] / "docs" / "well.md"
    return " ".join(path.read_text(encoding="utf-8").split())


def test_the_short_answer_is_what_the_calculator_finds():
    short = guide().partition("**Short answer.**")[2].partition("```")[0]
    one = answer(**OURS)
    assert "4320 L (1140 gal) a day" in short
    assert figure(one, "Well yield in a day") == pytest.approx(4320 * LITRE)
    stored = figure(one, STORED) / LITRE
    told = float(re.search(r"About (\d+) L", short)[1])
    assert stored == pytest.approx(told, abs=1)


def test_what_the_guide_says_of_valves_and_cooling_is_what_is_worked_with():
    text = guide()
    assert f"each {practice.CHECK_VALVES_EVERY:g} m (200 ft)" in text
    feet = practice.CHECK_VALVES_EVERY / FOOT
    assert feet == pytest.approx(200, rel=0.02)  # as it is rounded
    for speed in (practice.COOLING_SMALL, practice.COOLING_LARGE):
        assert f"{speed:g} m/s" in text
    assert practice.LASTING == 100 * 86400 and "100 days without rain" in text
