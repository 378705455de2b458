"""The pump-and-pipe sheet: its example, its failures with cures, its pasted table, its errors."""

import time
from functools import partial

import pytest

from calc.page.form import State, work
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.sheets.pump_match.sheet import SHEET
from tests.sheets import asking
from tests.sheets.asking import figure
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)


TAP, SPEED = "Pressure at the tap, everything open", "Speed of the pump"


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_example_works_out_in_both_systems(system):
    found = answer(system)
    check_working(found)
    assert found.verdict.level == "good"


CASES = [
    {},
    {"pump": "diaphragm", "flow": "10 L/min"},
    {"pump": "diaphragm", "flow": "30 L/min"},
    {"pump": "own"},
    {"pump": "large", "flow": "90 L/min"},
    {"flow": "50 L/min"},
    {"flow": "80 L/min"},
    {"climb": "60 m"},
    {"climb": "-60 m"},
    {"lift": "-5 m"},
    {"lift": "9 m", "altitude": "3000 m"},
    {"set": "5 bar"},
    {"set": "1 bar"},
    {"wanted": "0 bar", "climb": "0 m", "lift": "0 m"},
    {"length": "20 km"},
    {"grade": "none"},
    {"flow": "0.1 L/min"},
]


@pytest.mark.parametrize("case", CASES, ids=lambda case: " ".join(case.values()) or "example")
def test_the_working_holds(case):
    check_working(answer(**case))


def test_the_advised_set_pressure_holds_what_is_wanted():
    assert figure(answer(), TAP) == pytest.approx(1e5)


def test_setting_the_advised_pressure_by_hand_changes_nothing():
    advised = figure(answer(), "Pressure to set at the pump")
    by_hand = answer(set=f"{advised!r} Pa")
    assert figure(by_hand, SPEED) == pytest.approx(figure(answer(), SPEED))


def test_a_set_pressure_too_low_is_tight_and_names_the_right_one():
    found = answer(set="2 bar")
    assert found.verdict.level == "tight" and "Set 2.40" in found.verdict.sentence


def test_a_set_pressure_out_of_reach_is_stopped():
    assert any("cannot reach this set pressure" in w.text for w in answer(set="8 bar").warnings)


def test_more_climb_needs_more_speed():
    speeds = [figure(answer(climb=f"{z} m"), SPEED) for z in (0, 4, 8, 10)]
    assert speeds == sorted(speeds) and speeds[0] < speeds[-1]


def test_tap_pressure_is_highest_with_nothing_open():
    rows = answer().tables[0].rows
    assert rows[0][5] > rows[1][5] > rows[2][5]


def test_power_grows_from_nothing_open_to_everything_open():
    rows = answer().tables[0].rows
    assert rows[0][6] < rows[1][6] < rows[2][6]


def test_the_system_takes_only_lift_climb_and_pressure_with_no_flow():
    head = answer(wanted="0 bar").tables[0].rows[0][2]
    assert head == pytest.approx(12 + 4)


def test_too_high_a_climb_is_bad_and_names_a_pump_that_would_do():
    found = answer(climb="30 m")
    assert found.verdict.level == "bad" and "invented middle pump" in found.verdict.sentence


def test_too_much_flow_is_bad_and_says_what_it_gives():
    found = answer(flow="50 L/min")
    assert found.verdict.level == "bad"
    assert figure(found, "Most it gives at that pressure") < 50 / 60000


def test_a_little_too_much_flow_is_tight():
    assert answer(flow="37 L/min").verdict.level == "tight"


def test_the_most_it_gives_is_just_enough():
    most = figure(answer(flow="50 L/min"), "Most it gives at that pressure")
    assert answer(flow=f"{most * 0.97!r} m3/s").verdict.level != "bad"


def test_the_larger_pipe_advised_works():
    kind = SHEET.field("kind").default("metric")
    thin = {"flow": "34 L/min", kind: "32"}
    sentence = answer(**thin).verdict.sentence
    size = next(p.size for p in pipes.sizes(kind) if f"{p.label} would do" in sentence)
    assert answer(**(thin | {kind: size})).verdict.level != "bad"


def test_two_pumps_side_by_side_are_offered_where_flow_is_short():
    assert "Two such pumps" in answer(flow="50 L/min").verdict.sentence


def test_two_pumps_side_by_side_are_no_cure_for_too_little_head():
    assert "Two such pumps" not in answer(climb="30 m").verdict.sentence


def test_nothing_fitting_says_what_to_look_for():
    assert "Look for a pump that gives" in answer(climb="200 m").verdict.sentence


def test_a_suction_that_boils_is_bad_though_the_head_would_do():
    found = answer(lift="7 m", suction="2.5 m", climb="2 m")
    assert found.verdict.level == "bad" and "NPSH" in found.verdict.sentence


def test_a_pump_at_the_low_end_of_its_grade_makes_it_tight():
    found = answer(climb="14.5 m")
    assert found.verdict.level == "tight" and "grade 3B" in found.verdict.sentence


def test_without_a_grade_the_same_case_is_good():
    assert answer(climb="14.5 m", grade="none").verdict.level == "good"


def test_far_out_on_the_curve_is_warned_of():
    found = answer(flow="54 L/min", wanted="0 bar", climb="0 m")
    assert any("far out on its curve" in w.text for w in found.warnings)


def test_water_that_runs_by_itself_needs_no_pump():
    assert "No pump is needed" in answer(climb="-60 m").verdict.sentence


def test_a_shut_line_over_the_pipes_rating_is_stopped():
    assert any("Against a shut line" in w.text for w in answer(pump="large", kind="hose").warnings)


# Pasted tables -----------------------------------------------------------------

BARE = "Flow gpm; Head ft\n0; 140\n8; 115\n15; 50"


def test_a_pasted_table_is_used():
    assert answer(pump="own", table=BARE).charts[0].series[0].ys[0] == pytest.approx(140 * 0.3048)


def test_a_table_without_power_or_npsh_says_so():
    texts = [w.text for w in answer(pump="own", table=BARE).warnings]
    assert any("no NPSH" in t for t in texts) and any("power drawn" in t for t in texts)


def test_power_comes_from_the_efficiency_where_that_is_given():
    table = "Flow L/min; Head m; Eff %\n0; 40; 0\n30; 34; 45\n60; 15; 40"
    row = answer(pump="own", table=table).tables[0].rows[2]
    water = 999.1 * 9.80665 * row[1] * row[2]
    assert row[6] == pytest.approx(water / (0.45 * 0.75 * 0.95), rel=0.02)


BROKEN = [
    ("", "Paste the pump's table"),
    ("Flow gpm; Head ft\n0; 140\n8; 150\n15; 50", "Row 3 gives more head"),
    ("Flow gpm; Head ft\n0; 140\n8; 115\n8; 50", "Row 3 and row 4 have the same flow"),
    ("Flow gpm; Head ft\n0; 140\n8; many\n15; 50", "Row 3"),
    ("Flow gpm; Head ft\n" + "0; 140\n" * 700, "characters long"),
]


@pytest.mark.parametrize("table, words", BROKEN)
def test_a_broken_table_is_said_at_its_field(table, words):
    outcome = work(SHEET, State(texts={"pump": "own", "table": table}))
    assert outcome.answer is None and words in outcome.errors["table"]


@pytest.mark.parametrize(
    "field, text",
    [
        ("flow", "0"),
        ("climb", "high"),
        ("length", "0 m"),
        ("wanted", "-1 bar"),
        ("lift", "12 m"),
        ("suction", "-1 m"),
        ("water", "90 °C"),
        ("altitude", "9000 m"),
        ("motor", "150 %"),
    ],
)
def test_a_bad_entry_is_said_at_its_field(field, text):
    outcome = work(SHEET, State(texts={field: text}))
    assert outcome.answer is None and outcome.errors[field]


@pytest.mark.parametrize("pump", PUMPS)
def test_every_invented_pump_gives_an_answer(pump):
    assert answer(pump=pump).figures


def test_a_keystroke_is_answered_within_16_ms():
    work(SHEET, State())
    best = min(_seconds(work, SHEET, State()) for _ in range(5))
    assert best < 0.016  # one frame; the least of five, so that a busy machine does not fail it


def _seconds(function, *arguments):
    start = time.perf_counter()
    function(*arguments)
    return time.perf_counter() - start
