"""The supply over a day: claims judged from the figures, faults of the form, fixes that fix."""

import re
from dataclasses import replace
from functools import partial

import pytest

from calc import practice
from calc.page import row_text
from calc.page.fields import Choice, Count, Number
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet, views
from calc.sheets.parts.clock import clock
from calc.site.demo import alder_terrace, with_hill_tank
from calc.units import HOUR, PSI
from tests.page.pictures import faults, named
from tests.sheets import asking, awkward, few
from tests.sheets.working import check_working

SHEET = sheet("day")
answer = partial(asking.answer, SHEET)
outcome = partial(asking.outcome, SHEET)
figures = partial(asking.figures, SHEET)
found = partial(asking.found, SHEET)
SYSTEMS = ("metric", "us")
LOST, LOWEST, DRAWN = "Not served a day", "Lowest in hill tank", "Drawn a day"
STARTS, RUNS_FOR = "Pump starts a day", "Pump runs a day, hours"
PLAIN = replace(
    SHEET, fields=tuple(e for e in SHEET.fields if isinstance(e, Choice | Count | Number))
)


def tank(volume="1000 L", up="35.5 m", deep="1.5 m", name="hill tank"):
    return {"stores": row_text.encode([(name, up, deep, volume)])}


def use(*rows):
    """Times of use: (outlet, opens at, hours, how many)."""
    return {"draws": row_text.encode([tuple(map(str, row)) for row in rows])}


LARGE = tank("3000 L")
# the same pipes without the main to a tank
PUMP_ALONE = {
    "stores": "",
    "runs": row_text.encode(row_text.decode(SHEET.field("runs").default("metric"))[:-1]),
}


def said(text):
    return text.replace("\u00a0", " ").replace("\u202f", "")


# A day in August ------------------------------------------------------------------------------


@pytest.mark.parametrize("system", SYSTEMS)
def test_our_hill_tank_is_empty_by_evening_in_august(system):
    """The form as it is filled: who has no water from when to when, why, and what helps."""
    one = answer(system)
    assert one.verdict.word == "Does not work"
    sentence = one.verdict.sentence
    assert re.match(r"Wash-house shower gets nothing from 7:00 to 7:30: ", sentence)
    assert "hill tank is empty and the pump has no power" in sentence
    shown = figures(system)
    assert shown[LOST] > 0.1 and shown[LOWEST] == pytest.approx(0.0, abs=1e-6)
    assert {"no-water": "stop", "tank-empty": "stop"}.items() <= found(system).items()
    hose = next(one.text for one in one.findings if one.at == "Wash-house hose")
    assert re.search(r"from 19:\d\d to 19:30", hose)
    assert any("hill tank" in fix.text and fix.link for fix in one.fixes)


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize(
    "texts", [{}, {"drive": "held"}, {"again": ""}, {"gives": "1 L/min"}, tank("600 L", "25 m")]
)
def test_every_fix_that_can_be_opened_works_or_says_what_is_left(system, texts):
    one = answer(system, **texts)
    assert one.fixes
    for fix in one.fixes:
        if fix.link is None:
            continue
        after = few.opened(fix.link, SHEET, State(system, dict(texts)))
        assert after.errors == {}
        left, _ = few.wrong(after.answer)
        remains = "Still to put right" in fix.text or "Still not checked" in fix.text
        assert bool(left) == remains, (fix.text, left)
        assert "another fault" not in fix.text


def test_the_table_of_the_hours_shows_what_the_verdict_says():
    table = answer().tables[0]
    for at, (_hour, _, _, weakest) in enumerate(table.rows):
        if "nothing" in weakest:
            assert at in table.marked
    by_hour = {row[0].split(" ")[0]: row for row in table.rows}
    assert "nothing" in by_hour["7:00"][-1] and by_hour["19:00"][2] == pytest.approx(0.0, abs=1e-6)
    assert by_hour["7:00"][1] == 0.0  # before there is power


def test_the_outlets_table_adds_up_to_what_is_drawn_and_missing():
    for texts in ({}, LARGE, {"drive": "held"}, {"powered": "always"}):
        one, shown = answer(**texts), figures(**texts)
        rows = one.tables[1].rows
        given = sum(pair[1] for _, pair, *_ in rows)
        assert given == pytest.approx(shown[DRAWN], rel=1e-9)
        short = sum(max(0.0, pair[0] - pair[1]) for _, pair, *_ in rows)
        assert shown.get(LOST, 0.0) >= short - 1e-6


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("texts", [{}, LARGE, {"drive": "none"}, PUMP_ALONE, {"again": ""}])
def test_the_working_holds(system, texts):
    if system == "us" and texts is PUMP_ALONE:
        pytest.skip("rows in metres are read alike")
    check_working(answer(system, **texts))


# What is found, by the figures ----------------------------------------------------------------


def test_where_nothing_is_missing_and_pressures_suffice_it_works():
    one = answer(**LARGE)
    assert one.verdict.word == "Works" and LOST not in figures(**LARGE)
    assert "hill tank is lowest at 8:15" in one.verdict.sentence
    assert figures(**LARGE)[LOWEST] > 0.5


def test_a_larger_tank_leaves_less_missing():
    lost = [
        figures(**tank(f"{litres} L")).get(LOST, 0.0) for litres in (300, 600, 1000, 1600, 3000)
    ]
    assert lost == sorted(lost, reverse=True) and lost[0] > lost[-1] == 0.0


def test_power_day_and_night_leaves_nothing_missing_where_six_hours_do():
    assert figures()[LOST] > 0.1
    assert LOST not in figures(powered="always") and found(powered="always").get("no-water") is None


def test_an_outlet_that_is_weak_whenever_it_is_open_stops_and_one_at_times_is_a_care():
    low = found(**tank("3000 L", "22 m"))
    assert low["too-weak"] == "stop"
    both = use(("Cabin 3 shower", 18, 1, 1), ("Wash-house hose", 18.5, 0.5, 3),
               ("Wash-house shower", 18.5, 0.5, 3))  # fmt: skip
    texts = {**tank("9000 L", "33 m"), **both, "powered": "always"}
    one = answer(**texts)
    weak = [f for f in one.findings if f.at == "Cabin 3 shower" and f.level != "note"]
    assert [(f.level, f.key) for f in weak] == [("care", "short")]
    assert re.search(r"too little from 18:3\d to 19:00", weak[0].text)
    alone = found(**{**texts, **use(("Cabin 3 shower", 18, 1, 1))})
    assert "short" not in alone and "too-weak" not in alone


def test_the_levels_of_practice_hold_for_the_least_pressure():
    needed = practice.SHOWER_WORKS
    seen = set()
    for up in (28.0, 30.0, 30.5, 31.0, 32.0, 36.0):
        texts = {**tank("9000 L", f"{up} m"), **use(("Cabin 3 shower", 18, 0.5, 1))}
        one = answer(**texts, powered="always")
        (row,) = one.tables[1].rows
        level = practice.enough(row[2], needed, practice.SHOWER_COMFORTABLE)
        mine = {f.level for f in one.findings if f.at == "Cabin 3 shower"}
        assert mine == ({level} if level else set()), (up, row[2] / PSI)
        seen.add(level)
    assert {"stop", "care", "note"} <= seen


def test_starts_above_what_is_allowed_are_a_care():
    texts = {**tank("100 L", "35.5 m", "0.3 m"), "powered": "always", "again": "90 %",
             "gives": "60 L/min", **use(("Wash-house hose", 8, 4, 1))}  # fmt: skip
    most = figures(**texts)[STARTS]
    assert most > 20
    assert found(**texts, starts="3 per hour")["starts"] == "care"
    assert "starts" not in found(**texts, starts="300 per hour")
    assert "starts" not in found()


def test_a_pump_at_fixed_speed_against_a_full_tanks_valve_is_a_care():
    assert found(again="")["against-closed"] == "care"
    assert figures(again="")[RUNS_FOR] > figures()[RUNS_FOR] + 1
    assert "against-closed" not in found() and "against-closed" not in found(drive="held", again="")


def test_days_that_end_lower_are_a_care_and_say_how_long_the_tank_lasts():
    texts = {**tank("30 m³"), "gives": "1 L/min"}
    one = answer(**texts)
    (lower,) = (f for f in one.findings if f.key == "lower")
    assert lower.level == "care" and one.verdict.word == "Borderline"
    assert re.search(
        r"ends 15\d\d L lower than it began: it lasts 12\.\d more days", said(lower.text)
    )
    assert "lower" not in found(**tank("30 m³"), gives="6 L/min")


def test_a_source_that_runs_out_is_said_and_the_pump_waits():
    assert found()["source-dry"] == "note"
    much = found(stored="20 m³")
    assert "source-dry" not in much
    poor = answer(**LARGE, gives="0.3 L/min")
    assert {f.key for f in poor.findings if f.level == "stop"} >= {"no-water"}


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("texts", [{"gives": ""}, {"stored": ""}, {"gives": "", "stored": ""}])
def test_what_would_pass_where_the_source_is_not_known_does_pass(system, texts):
    one = answer(system, **{**texts, "powered": "always"})
    (open_,) = (f for f in one.findings if f.rank == "unchecked")
    assert open_.level == "care" and one.verdict.word == "Borderline"
    text = said(open_.text)
    flow = re.search(r"([\d.]+ (?:L/min|gpm))", text)
    stored = re.search(r"([\d.]+ (?:L|gal)\b)(?!/)", text)
    named_now = {"gives": flow and flow[1], "stored": stored and stored[1]}
    typed = {key: named_now[key] for key in texts}
    assert all(typed.values()), text
    after = answer(system, **{**texts, **typed, "powered": "always"})
    assert after.verdict.word == "Works"


def test_a_source_that_gives_less_than_is_pumped_stops_though_its_store_is_not_known():
    texts = {"powered": "always", "stored": "", "gives": "0.5 L/min"}
    one = answer(**texts)
    assert found(**texts)["source-short"] == "stop"
    assert any(fix.link for fix in one.fixes)


def test_without_a_pump_the_tanks_alone_give():
    one = answer(drive="none", **LARGE)
    assert one.verdict.word == "Does not work" and "pump" not in one.verdict.sentence
    assert STARTS not in figures(drive="none")
    full = answer(drive="none", start="100 %", **LARGE)
    assert full.verdict.word == "Works"  # a full tank lasts the day, which does not repeat
    assert found(drive="none", start="100 %", **LARGE)["ends-lower"] == "note"


def test_the_day_from_a_given_level_is_not_the_one_that_repeats():
    assert figures(start="100 %")[LOST] < figures()[LOST]
    assert figures(start="0 %")[LOST] == pytest.approx(figures()[LOST], rel=1e-3)


def test_a_day_without_use_is_not_checked():
    assert found(draws="")["no-use"] == "care"
    assert answer(draws="").verdict.word == "Borderline"


def test_pipes_over_their_rating_and_static_pressure_are_found():
    high = found(**tank("3000 L", "300 m"), drive="none", start="100 %")
    assert high["over-rating"] == "stop" and high["outlet-over-limit"] == "care"


def test_a_supply_without_a_tank_is_as_keep_up_solves_it():
    """What is open all at once, for an hour: the same pressure at the same outlets."""
    keep_up = sheet("keep_up")
    taps = row_text.decode(keep_up.field("taps").default("metric"))
    open_now = {"Wash-house shower": 2, "Cabin 3 shower": 1, "Goat trough": 1}
    rows = [(*row[:3], str(open_now.get(row[0], 0)), str(open_now.get(row[0], 0)), *row[5:])
            for row in taps]  # fmt: skip
    known = work(keep_up, State("metric", {"taps": row_text.encode(rows)})).answer
    pressures = {row[0]: row[2] for row in known.tables[0].rows}
    texts = {**PUMP_ALONE, "drive": "held", "powered": "always", "stored": "", "gives": "",
             **use(*((name, 8, 1, count) for name, count in open_now.items()))}  # fmt: skip
    for name, _, least, _ in answer(**texts).tables[1].rows:
        there = next(v for k, v in pressures.items() if k.startswith(name))
        there = there[1] if isinstance(there, tuple) else there
        assert least == pytest.approx(there, rel=1e-6), name


# Faults of the form ---------------------------------------------------------------------------


def test_a_time_of_use_of_no_outlet_is_said_at_its_cell():
    errors = outcome(**use(("Sauna", 7, 1, 1))).errors
    assert "There is no outlet “Sauna”" in errors["draws.0.tap"]
    empty = outcome(**use(("", 7, 1, 1))).errors["draws.0.tap"]
    assert "Enter the outlet that is open" in empty


def test_hours_beyond_a_day_are_said_at_their_cell():
    errors = outcome(**use(("Cabin 1 sink", 25, 1, 1))).errors
    assert "24 or fewer" in errors["draws.0.from"]
    errors = outcome(**use(("Cabin 1 sink", 7, 30, 1))).errors
    assert "24 or fewer" in errors["draws.0.hours"]


def test_a_tank_of_no_depth_is_said_at_its_cell():
    assert "stores.0.deep" in outcome(**tank(deep="0 m")).errors
    assert "stores.0.volume" in outcome(**tank(volume="0 L")).errors


def test_a_tank_in_no_section_is_said_at_its_cell():
    errors = outcome(**tank(name="far tank")).errors
    # the section that led to the tank of old now ends at a point of its own
    assert "No pipe section leads to or from “far tank”" in errors["stores.0.name"]


def test_faults_of_rows_are_said_though_another_field_cannot_be_read():
    errors = outcome(water="abc", **use(("Sauna", 7, 1, 1))).errors
    assert {"water", "draws.0.tap"} <= set(errors)


def test_so_little_stored_that_the_pump_would_start_all_the_time_is_said_at_its_field():
    texts = {**use(("Wash-house hose", 0, 24, 3)), "stored": "0.2 L", "gives": "20 L/min",
             "powered": "always", "recovers": "5 %"}  # fmt: skip
    assert "thousands of times" in outcome(**texts).errors["stored"]


# All kinds of forms ---------------------------------------------------------------------------

FORMS = [(state, work(SHEET, state)) for state in awkward.states(PLAIN, 24)]
WORKED = [(state, one.answer) for state, one in FORMS if one.answer]


def test_most_awkward_forms_are_worked_with():
    assert len(WORKED) > len(FORMS) / 2


def test_a_stop_is_there_wherever_an_outlet_gets_nothing():
    for state, one in WORKED:
        nothing = any("nothing" in row[-1] for row in one.tables[0].rows)
        stops = {f.key for f in one.findings if f.level == "stop"}
        assert not nothing or stops & {"no-water", "too-weak"}, state
        lost = next((f.value for f in one.figures if f.label == LOST), 0.0)
        assert lost == 0 or one.verdict.word != "Works", state


def test_sentences_are_short_and_pictures_legible_whatever_is_asked():
    for state, one in WORKED:
        for finding in one.findings:
            assert len(finding.text.split(" ")) <= 25, finding.text
        for picture in one.drawings:
            assert list(faults(picture)) == [], state


@pytest.mark.parametrize("texts", [{}, LARGE, PUMP_ALONE, {"drive": "none"}])
def test_the_picture_is_drawn_as_the_figures_say(texts):
    one = answer(**texts)
    (picture,) = one.drawings
    if texts is PUMP_ALONE:
        assert "the source" in picture.alt
        return
    shapes = {one.at: one for one in picture.shapes if one.at}
    assert len(named(picture)) == len(shapes)
    low, full = shapes["tank"].points[1][1], shapes["tank"].points[0][1] + 3
    volume = 3.0 if texts is LARGE else 1.0
    level = shapes["lowest"]
    drawn = (low - level.y) / (low - full) * volume
    assert drawn == pytest.approx(figures(**texts)[LOWEST], abs=volume * 0.5 / (low - full))
    blocks = [name for name in shapes if name.startswith("nothing")]
    assert bool(blocks) == ("no-water" in found(**texts))


# The site -------------------------------------------------------------------------------------


def test_the_day_is_filled_from_a_site_and_put_back():
    site = with_hill_tank()
    facts = views.fill(site, "day")
    texts = {key: fact.text for key, fact in facts.items()}
    standing = {key: fact.standing for key, fact in facts.items()}
    assert work(SHEET, State("metric", texts, {}, standing)).errors == {}
    rows = [list(row) for row in row_text.decode(texts["draws"])]
    rows[0][1] = "6.5"
    typed = State("metric", {**texts, "draws": row_text.encode(rows), **LARGE}, {},
                  {**standing, "draws": "given", "stores": "given"})  # fmt: skip
    put = views.back(site, "day", typed)
    assert put.site.rows("draws")[0]["from"].text == "6.5"
    joined = [row for row in put.site.rows("tanks") if row["name"].text == "hill tank"]
    assert joined[0]["volume"].text == "3000 L"
    assert [row["name"].text for row in put.site.rows("tanks")].count("cistern") == 1


def test_a_site_without_times_of_use_or_tanks_opens_without_errors():
    site = alder_terrace()
    assert site.rows("draws") == ()
    facts = views.fill(site, "day")
    state = State("metric", {key: fact.text for key, fact in facts.items()}, {},
                  {key: fact.standing for key, fact in facts.items()})  # fmt: skip
    done = work(SHEET, state)
    assert done.errors == {} and {f.key for f in done.answer.findings} >= {"no-use"}


def test_a_moment_past_midnight_is_shown_by_the_clock():
    assert clock(19 * HOUR) == "1:00"
    late = use(("Cabin 3 shower", 23.5, 1, 1))
    one = answer(**{**tank("3000 L", "22 m"), **late})
    assert any(f.at == "Cabin 3 shower" for f in one.findings)


# Without a pump ---------------------------------------------------------------------------------


def test_an_open_source_above_gives_all_day_and_must_give_what_runs():
    texts = {"drive": "none", "fall": "40 m", **LARGE}
    assert found(**texts)["source-short"] == "stop"  # 6 L/min of the example
    one = answer(**texts, gives="")
    (open_,) = (f for f in one.findings if f.rank == "unchecked")
    enough = re.search(r"([\d.]+ L/min) would pass", said(open_.text))[1]
    assert answer(**texts, gives=enough).verdict.word == "Works"
    check_working(one)


def test_sections_may_begin_at_the_source_by_its_own_name():
    rows = row_text.decode(SHEET.field("runs").default("metric"))[:-1]
    runs = row_text.encode([["source" if row[0] == "pump" else row[0], *row[1:]] for row in rows])
    texts = {"drive": "none", "fall": "40 m", "runs": runs, "stores": "", "gives": "9 m³/h"}
    assert answer(**texts).verdict.word == "Works"
    assert outcome(**{**texts, "fall": ""}).errors
