"""Will it keep up: before and after, who suffers, why, and what is wrong with a row."""

from dataclasses import replace

import pytest

from calc import practice
from calc.page import drawing, row_text
from calc.page.form import Reader, read_values, work
from calc.page.state import State
from calc.pipe import friction
from calc.sheets import sheet
from calc.sheets.keep_up import show
from calc.sheets.keep_up.case import solved, supply_of
from calc.sheets.parts.pipe_choice import pipe_of
from calc.site.supply import PUMP_PART
from calc.units import GALLON_US, MINUTE, PSI
from tests.sheets.working import check_working

SHEET = sheet("keep_up")
GPM = GALLON_US / MINUTE
HOUSE = (("pump", "house", "30 m", "8 m", "pe100-sdr11/32"),)
SHOWER = ("Shower", "house", "shower", "1", "1")
HOSE = ("Hose", "house", "hose", "0", "1")


def _state(runs=HOUSE, taps=(SHOWER, HOSE), tanks=(), system="metric", **texts):
    rows = {"runs": runs, "taps": taps, "tanks": tanks}
    return State(system, {k: row_text.encode(v) for k, v in rows.items()} | texts)


def _answer(*args, **texts):
    outcome = work(SHEET, _state(*args, **texts))
    assert outcome.errors == {}
    return outcome.answer


def _errors(*args, **texts):
    outcome = work(SHEET, _state(*args, **texts))
    assert outcome.answer is None
    return outcome.errors


def _table(answer, title):
    return next(table for table in answer.tables if table.title == title)


def _outlet(answer, name):
    """(flow before, pressure before, flow after, pressure after) in SI."""
    row = next(r for r in _table(answer, "Every outlet before and after").rows if r[0] == name)
    (pressure, pressure_after), _, (flow, flow_after) = row[2:5]
    return flow, pressure, flow_after, pressure_after


# The example ----------------------------------------------------------------------------------


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_example_names_sufferer_and_bottleneck(system):
    answer = work(SHEET, State(system)).answer
    told = answer.verdict.sentence
    assert answer.verdict.word == "Does not work"
    assert told.startswith("With Wash-house hose open, pressure at Cabin 3 shower is ")
    assert "is lost from lower fork to upper fork" in told


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_link_to_the_first_fix_opens_a_site_that_works(system):
    link = work(SHEET, State(system)).answer.fixes[0].link
    fixed = work(SHEET, State(system, dict(link.values)))
    assert fixed.errors == {}
    assert fixed.answer.verdict.word == "Works"


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_fix_told_is_what_the_fixed_site_shows(system):
    fix = work(SHEET, State(system)).answer.fixes[0]
    fixed = work(SHEET, State(system, dict(fix.link.values))).answer
    told = Reader(system).show(_outlet(fixed, "Cabin 3 shower")[3], "pressure")
    assert f"That gives {told} at Cabin 3 shower" in fix.text


def test_a_blank_site_and_a_few_questions_work_out():
    links = {link.text: link for link in work(SHEET, State(texts={"ask": "few"})).answer.links}
    for text in ("Start from a blank site", "Enter every pipe and outlet"):
        assert work(SHEET, State(texts=dict(links[text].values))).errors == {}


def test_a_few_questions_and_their_rows_give_the_same_figures():
    few = work(SHEET, State(texts={"ask": "few"})).answer
    link = next(one for one in few.links if one.text == "Enter every pipe and outlet")
    rows = work(SHEET, State(texts=dict(link.values))).answer
    for ours, theirs in zip(few.figures, rows.figures, strict=True):
        assert ours.label == theirs.label
        assert ours.value == pytest.approx(theirs.value, rel=1e-9)


# Facts of the trade ---------------------------------------------------------------------------

FACTS = [
    # pump psi, climb ft, least psi, most psi, source
    (45.0, 50.0, 20.0, 30.0, "common practice, no source: 50 ft of climb leaves 20-30 psi"),
    (45.0, 100.0, 0.0, 5.0, "common practice, no source: 45 psi is about 100 ft of head"),
]


@pytest.mark.parametrize("pump, climb, least, most, source", FACTS)
def test_what_a_climb_leaves(pump, climb, least, most, source):
    runs = (("pump", "house", "200 ft", f"{climb} ft", "pvc40/1"),)
    answer = _answer(runs, (SHOWER,), set=f"{pump} psi", lift="0 m", pump="middle")
    assert least <= _outlet(answer, "Shower")[3] / PSI <= most


def test_a_shower_takes_about_2_gpm_and_a_hose_about_10():
    runs = (("pump", "house", "1 m", "0 m", "pe100-sdr11/63"),)
    shower = _answer(runs, (SHOWER,), set="30 psi", lift="0 m")
    hose = _answer(runs, (HOSE,), set="40 psi", lift="0 m")
    assert _outlet(shower, "Shower")[2] / GPM == pytest.approx(2.0, rel=0.02)
    assert _outlet(hose, "Hose")[2] / GPM == pytest.approx(10.0, rel=0.02)


# Physics --------------------------------------------------------------------------------------


def test_opening_the_hose_lowers_the_shower():
    _, before, _, after = _outlet(_answer(), "Shower")
    assert after < before


def test_a_wider_pipe_never_lowers_the_shower():
    found = []
    for size in ("25", "32", "40", "50"):
        runs = (("pump", "house", "30 m", "8 m", f"pe100-sdr11/{size}"),)
        found.append(_outlet(_answer(runs), "Shower")[3])
    assert found == sorted(found)


def test_with_nothing_open_the_set_pressure_stands_less_the_climb():
    answer = _answer(taps=(("Shower", "house", "shower", "0", "0"),), set="3 bar")
    assert answer.verdict.sentence.startswith("Nothing is open: static pressure at the pump is")
    assert _outlet(answer, "Shower")[3] == pytest.approx(3e5 - 8 * 9798, rel=2e-3)


def test_the_loss_in_a_pipe_is_that_of_friction():
    rows = _table(_answer(), "Every pipe").rows
    name, _, (_, flow), _, lost = next(row for row in rows if row[0] == "pump – house")
    pipe = pipe_of("pe100-sdr11/32")
    k = 2 * friction.fitting_coefficient(friction.BY_KEY["elbow90"], pipe.inside_m)
    # kinematic viscosity of water at 15 degC: 1.139e-6 m2/s, handbook value from memory
    head = friction.total_loss(flow, pipe.inside_m, 30.0, pipe.roughness_m, 1.139e-6, k)
    assert lost == pytest.approx(head * 9798, rel=2e-3)


def test_what_comes_out_of_the_pump_runs_out_of_the_taps():
    answer = _answer()
    flow = next(r for r in _table(answer, "Every pipe").rows if r[0] == "pump – house")[2][1]
    assert flow == pytest.approx(sum(_outlet(answer, n)[2] for n in ("Shower", "Hose")), rel=1e-9)


def test_a_dirty_filter_is_named_and_cleaning_it_comes_first():
    runs = (("pump", "house", "10 m", "8 m", "pe100-sdr11/40", "2", "dirty"),)
    answer = _answer(runs, set="2.1 bar")
    assert "is lost in the filter from pump to house" in answer.verdict.sentence
    assert answer.fixes[0].text.startswith("Clean or change the filter from pump to house")


def test_too_low_a_set_pressure_is_named_and_turned_up():
    answer = _answer(taps=(SHOWER,), set="1.5 bar")
    assert "the set pressure is too low for this climb" in answer.verdict.sentence
    assert answer.fixes[0].text.startswith("Raise the set pressure to")


def test_a_pump_that_cannot_lift_so_high_is_named():
    runs = (("pump", "house", "80 m", "60 m", "pe100-sdr11/32"),)
    told = _answer(runs, (SHOWER,), pump="small", set="2.5 bar").verdict.sentence
    assert "the pump is too weak for this height" in told


def test_a_diaphragm_pump_is_named_when_a_hose_opens():
    told = _answer(HOUSE, pump="diaphragm", set="2.5 bar").verdict.sentence
    assert "the pump is" in told and "below its set pressure" in told


def test_a_starved_inlet_is_said():
    answer = _answer(lift="8.9 m")
    assert answer.verdict.level == "bad" and "cavitate" in answer.verdict.sentence
    assert "npsh" in {one.key for one in answer.findings if one.level == "stop"}


def test_a_tank_up_the_hill_gives_when_much_is_open():
    runs = (*HOUSE, ("house", "tank", "30 m", "30 m"))
    answer = _answer(runs, tanks=(("Tank", "30 m"),), set="2.8 bar")
    alone = _answer(set="2.8 bar")
    assert any(one.text.startswith("Tank gives") for one in answer.findings)
    assert _outlet(answer, "Shower")[3] > _outlet(alone, "Shower")[3]


def test_a_tank_below_the_pumps_head_is_filled():
    runs = (*HOUSE, ("house", "tank", "20 m", "20 m"))
    answer = _answer(runs, (SHOWER,), (("Tank", "20 m"),), set="3.8 bar")
    assert any(one.text.startswith("Tank is filled with") for one in answer.findings)


def test_a_loop_of_pipe_helps():
    ring = (*HOUSE, ("pump", "shed", "20 m", "4 m"), ("shed", "house", "20 m", "8 m"))
    assert _outlet(_answer(ring), "Shower")[3] > _outlet(_answer(), "Shower")[3]


def test_a_reducer_holds_its_pressure():
    runs = (("pump", "house", "30 m", "8 m", "pe100-sdr11/40", "2", "r15"),)
    assert _outlet(_answer(runs, (SHOWER,)), "Shower")[3] == pytest.approx(1.5e5, rel=1e-10)


def test_a_pipe_beyond_its_rating_is_said():
    runs = (("pump", "house", "100 m", "-90 m", "pe-sidr15/1"),)
    found = _answer(runs, (SHOWER,)).findings
    assert {one.level for one in found if one.key == "over-rating"} == {"stop"}


def test_steady_draw_takes_its_flow():
    taps = (SHOWER, ("Urn", "house", "steady", "0", "1", "5 L/min"))
    assert _outlet(_answer(taps=taps), "Urn")[2] == pytest.approx(5e-3 / 60, rel=1e-9)


KINDS = [kind.key for kind in practice.OUTLETS if kind.flow is not None]


@pytest.mark.parametrize("kind", KINDS)
def test_the_working_holds_for_every_kind_of_outlet(kind):
    check_working(_answer(taps=(("It", "house", kind, "0", "2"),)))


def test_full_speed_without_control_gives_more_than_the_set_pressure():
    assert _outlet(_answer(drive="full"), "Shower")[1] > _outlet(_answer(), "Shower")[1]


# What is wrong with a row ---------------------------------------------------------------------


BAD = [
    (
        {"taps": (("Tap", "barn", "sink", "0", "1"),)},
        "taps.0.at",
        "No pipe section ends at “barn” yet",
    ),
    ({"runs": (*HOUSE, ("barn", "shed", "5 m", "0 m"))}, "runs.1.from", "ends at “barn” yet"),
    ({"runs": (("pump", "house", "0 m", "8 m"),)}, "runs.0.long", "0.01 m or more"),
    ({"runs": (*HOUSE, ("house", "house", "9 m", "8 m"))}, "runs.1.to", "another point"),
    ({"runs": (*HOUSE, ("pump", "house", "9 m", "3 m"))}, "runs.1.up", "another height"),
    ({"taps": (SHOWER, SHOWER)}, "taps.1.name", "taken already"),
    ({"taps": (("", "house"),)}, "taps.0.name", "Give the outlet a name"),
    ({"runs": (("pump", "The water", "9 m", "8 m"),)}, "runs.0.to", "taken already"),
    ({"taps": (("Urn", "house", "steady", "0", "1"),)}, "taps.0.flow", "Enter the flow"),
    ({"taps": (("Jet", "house", "opening", "0", "1", "5 L/min"),)}, "taps.0.rated", "pressure"),
    ({"tanks": (("pump", "9 m"),)}, "tanks.0.name", "taken already"),
    ({"tanks": (("Pond", "9 m"),), "taps": (("Tap", "pond"),)}, "taps.0.at", "open water"),
]


@pytest.mark.parametrize("rows, key, words", BAD)
def test_bad_rows_are_said_beside_the_cell(rows, key, words):
    errors = _errors(**rows)
    assert words in errors[key]
    # what hangs on a point that was refused is said too
    assert all("No pipe section ends at" in errors[other] for other in set(errors) - {key})


def test_every_fault_of_the_rows_is_said_at_once():
    errors = _errors(
        (*HOUSE, ("shed", "", "5 m", "0 m")),
        (("Tap", "barn", "sink", "0", "1"), ("", "house"), ("Urn", "house", "steady")),
        (("pump", "9 m"),),
    )
    assert set(errors) == {
        "runs.1.from", "runs.1.to", "taps.0.at", "taps.1.name", "taps.2.flow", "tanks.0.name"
    }  # fmt: skip


UNREAD = [
    ({}, {"lift": "deep"}, "lift"),
    ({"runs": (("pump", "house", "far", "8 m"),)}, {}, "runs.0.long"),
    ({"runs": (("pump", "house", "30 m", "8 m", "pe100-sdr11/32", "few"),)}, {}, "runs.0.bends"),
    ({"runs": (("pump", "house", "30 m", "8 m", "straw"),)}, {}, "runs.0.pipe"),
    ({"tanks": (("Pond", "low"),)}, {}, "tanks.0.up"),
]


@pytest.mark.parametrize("rows, texts, unread", UNREAD)
def test_what_cannot_be_read_hides_no_fault_of_the_other_rows(rows, texts, unread):
    taps = (SHOWER, SHOWER, ("Tap", "barn", "sink", "0", "1"))
    errors = _errors(**{"taps": taps, **rows}, **texts)
    assert set(errors) == {unread, "taps.1.name", "taps.2.at"}
    assert "No pipe section ends at “barn” yet" in errors["taps.2.at"]


def test_a_height_that_cannot_be_read_is_not_another_height():
    runs = (("pump", "house", "30 m", "high"), ("pump", "house", "9 m", "8 m"))
    assert set(_errors(runs)) == {"runs.0.up"}


@pytest.mark.parametrize("cells, column", [
    (("Jet", "house", "opening", "0", "1", "5 L/min", "much"), "rated"),
    (("Urn", "house", "steady", "0", "1", "lots"), "flow"),
    (("Jet", "house", "fountain", "0", "1"), "kind"),
    (("x" * 30, "house", "sink", "0", "1"), "name"),
])  # fmt: skip
def test_a_cell_that_cannot_be_read_is_one_fault(cells, column):
    assert set(_errors(taps=(cells, SHOWER))) == {f"taps.0.{column}"}


def test_without_the_rows_of_a_table_nothing_is_said_of_those_that_name_them():
    assert set(_errors(runs=())) == {"runs"}


def test_a_question_by_few_numbers_says_nothing_of_rows():
    assert set(_errors(ask="few", away="far", taps=(SHOWER, SHOWER))) == {"away"}


def test_a_row_with_too_many_cells_still_names_its_point():
    runs = ((*HOUSE[0], "2", "none", "8 m"),)
    assert set(_errors(runs)) == {"runs.0"}


def test_a_loop_with_no_source_is_said_at_its_row():
    runs = (*HOUSE, ("shed", "barn", "9 m", "0 m"), ("barn", "shed", "9 m", "0 m"))
    errors = _errors(runs)
    assert [key for key in errors if key.startswith("runs.")] and len(errors) == 1
    assert "has no source of water" in next(iter(errors.values()))


def test_a_rising_pump_curve_is_said_at_the_table():
    table = "Flow L/min; Head m\n0; 20\n20; 25\n40; 15"
    assert list(_errors(pump="own", table=table)) == ["table"]


def test_names_are_the_same_whatever_their_capitals_and_spaces():
    answer = _answer(taps=(("Shower", " HOUSE ", "shower", "1", "1"),))
    assert _outlet(answer, "Shower")[3] > 0


# The drawing ----------------------------------------------------------------------------------


def test_the_drawing_escapes_names():
    runs = (("pump", "<b>&\"'", "30 m", "8 m"),)
    answer = _answer(runs, (("<i>", "<b>&\"'", "shower", "1", "1"),))
    assert "<b>" not in drawing.svg(answer.drawings[0])


def test_a_flow_that_is_only_rounding_is_told_as_none():
    case = solved(supply_of(read_values(sheet("keep_up"), State())))
    tiny = {**case.before.flows, PUMP_PART: -4.9e-29 * GALLON_US / MINUTE}
    case.__dict__["before"] = replace(case.before, flows=tiny)
    (chart,) = show.charts(case, Reader("us"))
    told = chart.alt
    assert "runs at 0 gpm at" in told.replace("\u00a0", " ")
