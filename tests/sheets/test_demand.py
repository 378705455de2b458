"""How much water: the ways of counting, limits, notes, links and errors at their field."""

import math
from functools import partial
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import demand
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.demand.sheet import SHEET
from calc.units import DAY, GALLON_US, LITRE, MINUTE
from tests.sheets import asking, awkward
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
SHEET_KEYS = {entry.key for entry in SHEET.fields}

GPM = GALLON_US / MINUTE
NONE = {"showers_open": "0", "sinks_open": "0", "shower": "0", "sink": "0", "trough": "0"}
CASES = (
    {},
    {"hoses_open": "1", "drip": "5 L/min"},
    {"busy": "500 %", "toilet": "12", "washer": "6", "hose": "2"},
    {"people": "0", "goats": "0", "hens": "0", "beds": "0"},
    NONE,
    {**NONE, "drip": "8 L/min"},
)


def figure(label, system="metric", **texts):
    return next(f.value for f in answer(system, **texts).figures if f.label == label)


def keys(found):
    return {one.key for one in found.findings}


def said(found, key):
    return next(one.text for one in found.findings if one.key == key)


def ways(**texts):
    return {row[0].split(":")[0]: row for row in answer(**texts).tables[0].rows}


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("texts", CASES)
def test_every_step_gives_its_result(system, texts):
    check_working(answer(system, **texts))


# The flow --------------------------------------------------------------------


def test_the_list_is_the_sum_of_its_taps():
    found = figure("By your list", "us", showers_open="2", sinks_open="1", hoses_open="1")
    assert math.isclose(found, (2 * 2 + 2 + 10) * GPM)  # common practice, no source: 2 and 10 gpm


def test_two_showers_and_a_hose_are_14_gallons_a_minute():
    # common practice, no source: shower about 2 gpm, hose about 10
    found = answer("us", showers_open="2", sinks_open="0", hoses_open="1")
    assert "14.0\u00a0gpm" in found.verdict.sentence and found.verdict.word == "Result"


def test_a_short_list_is_overruled_by_chance_and_said_so():
    texts = {"showers_open": "1", "sinks_open": "0", "shower": "12", "sink": "12"}
    assert "more than your list" in answer(**texts).verdict.sentence
    assert "list-short" in keys(answer(**texts))
    assert figure("Flow to plan for", **texts) > 2 * figure("By your list", **texts)


@pytest.mark.parametrize("system", ["metric", "us"])
def test_how_often_a_list_is_short_is_said_in_words_a_person_uses(system):
    for texts in (
        {"showers_open": "0"},
        {"showers_open": "0", "sinks_open": "0"},
        {"showers_open": "1", "shower": "60"},
        {"showers_open": "3", "shower": "20"},
    ):
        text = said(answer(system, **texts), "list-short")
        assert "e+" not in text and " 100 of 100" not in text, text
        assert " moment" in text


@pytest.mark.parametrize(
    "texts",
    [
        {"goats": "5000", "hens": "50000", "beds": "10 ha", "depth": "15 mm"},
        {
            "showers_open": "20",
            "sinks_open": "20",
            "hoses_open": "10",
            "hoseflow": "180 L/min",
            "showerflow": "60 L/min",
        },
    ],
)
def test_more_than_another_sheet_takes_leads_to_none_that_refuses_it(texts):
    links = answer("us", **texts).links
    assert {link.sheet for link in links} < {"reach", "pipe", "pressure_tank", "tank"}
    for link in links:
        assert work(sheet(link.sheet), State("us", dict(link.values))).errors == {}


def test_planning_for_what_it_says_settles_it():
    texts = {"shower": "12", "sink": "12", "sinks_open": "0", "trough": "0"}
    needed = round(figure("By chance", "us", showers_open="1", **texts) / (2 * GPM))
    assert "list-short" not in keys(answer("us", showers_open=str(needed), **texts))
    assert "list-short" in keys(answer("us", showers_open=str(needed - 1), **texts))


def test_the_flow_by_chance_is_passed_in_1_of_100_moments_at_most():
    texts = {"shower": "8", "sink": "10", "hose": "1"}
    taps = [(8, 2 * GPM, 0.045), (10, 2 * GPM, 0.02), (1, 10 * GPM, 0.05), (1, 6 * GPM, 0.03)]
    chances = demand.flow_chances(taps)
    found = figure("By chance", "us", **texts)
    assert demand.exceeded(chances, found) <= 0.01
    less = max(q for q, _ in chances if q < found * (1 - 1e-6))
    assert demand.exceeded(chances, less) > 0.01


def test_more_showers_never_plan_less():
    # with two hoses, 4 showers planned 76.0 L/min and 6 planned 53.0
    texts = {"hose": "2", "sink": "0", "trough": "0", "showers_open": "0", "sinks_open": "0"}
    plans = [figure("Flow to plan for", shower=str(n), **texts) for n in range(13)]
    assert plans == sorted(plans)


@given(st.lists(st.integers(0, 12), min_size=6, max_size=6), st.integers(0, 8), st.integers(1, 6))
@settings(max_examples=60, deadline=None)
def test_no_outlet_open_or_not_ever_lowers_the_plan(counts, which, more):
    names = [f.key for f in demand.FIXTURES] + ["showers_open", "sinks_open", "hoses_open"]
    numbers = dict(zip(names, [*counts, 1, 1, 0], strict=True))
    before = figure("Flow to plan for", **{key: str(n) for key, n in numbers.items()})
    numbers[names[which]] += more
    after = figure("Flow to plan for", **{key: str(n) for key, n in numbers.items()})
    assert after >= before * (1 - 1e-9)


def test_where_the_published_rule_asks_for_more_it_is_said():
    rows, plan = ways(), figure("Flow to plan for")
    study = rows["Peak Water Demand Study"][1]
    assert study > plan and "study-more" in keys(answer())


def test_a_busier_hour_needs_no_less():
    flows = [figure("By chance", busy=f"{b} %", shower="8") for b in (50, 100, 200, 400)]
    assert flows == sorted(flows) and flows[0] < flows[-1]


def test_the_ways_of_counting_stand_in_order_for_a_few_cabins():
    rows = ways()
    names = ("By chance", "Fixture units, as plumbing codes count", "Everything open")
    flows = [rows[name][1] for name in names]
    assert flows == sorted(flows)
    assert rows["Everything open"][2] == 0.0


def test_drip_lines_that_run_then_are_added_to_every_way():
    dry, wet = ways(), ways(drip="6 L/min")
    for name, row in dry.items():
        assert math.isclose(wet[name][1] - row[1], 6 * LITRE / MINUTE), name
        assert math.isclose(wet[name][2], row[2], abs_tol=1e-12), name


def test_the_time_the_list_is_open_by_chance_is_a_share_of_an_hour():
    # 4 showers at 4.5 %: two or more open in 1.143 % of an hour, by hand: 1 - q^4 - 4 p q^3
    p, q = 0.045, 0.955
    found = answer(showers_open="2", sinks_open="0")
    share = next(step.result.value for step in found.steps if "open by chance" in step.title)
    assert math.isclose(share, 1 - q**4 - 4 * p * q**3, rel_tol=1e-9)
    note = next(f.note for f in found.figures if f.label == "By your list")
    assert note == "all open together by chance 41 s of the busiest hour"


def test_taps_named_as_open_are_counted_as_there_and_said_so():
    found = answer(hoses_open="1", hose="0")
    assert "counted" in keys(found)
    assert "counted" not in keys(answer(hoses_open="1", hose="1"))


def test_a_hose_is_named_as_what_can_be_saved():
    text = said(answer("us", hoses_open="1", sinks_open="0"), "hose")
    assert "Without the hose your list is 4.00\u00a0gpm" in text


def test_more_than_a_small_diaphragm_pump_gives_is_said():
    # common practice, no source: small diaphragm pumps give 3 to 5 gpm
    assert "small-pump" in keys(answer("us", sinks_open="1"))
    texts = {"sinks_open": "0", "sink": "0", "trough": "0", "shower": "2"}
    assert "small-pump" not in keys(answer("us", **texts))


def test_nothing_open_and_nothing_there_has_no_flow():
    found = answer(**NONE)
    assert "no flow" in found.verdict.sentence and found.charts == ()
    assert found.verdict.word == "Borderline" and keys(found) >= {"no-outlets"}
    assert {link.sheet for link in found.links} == {"tank"}


# The day ---------------------------------------------------------------------


def test_the_day_adds_people_animals_and_beds():
    expected = (6 * 100 + 8 * 8 + 12 * 0.3 + 60 * 4 / 0.9) * LITRE / DAY
    assert math.isclose(figure("Water a day"), expected)


def test_an_empty_place_uses_nothing_and_leads_to_no_tank():
    found = answer(people="0", goats="0", hens="0", beds="0")
    assert "0\u00a0L/day" in found.verdict.sentence
    assert "tank" not in {link.sheet for link in found.links}


def test_beds_that_take_most_are_named():
    assert "beds" in keys(answer(beds="1000 m²"))
    assert "beds" not in keys(answer())


def test_a_cow_in_milk_drinks_more_than_one_with_a_calf_and_that_more_than_a_dry_one():
    empty = {"people": "0", "goats": "0", "hens": "0", "beds": "0"}
    each = [figure("Water a day", **empty, **{key: "1"}) for key in ("cattle", "nursing", "dairy")]
    assert each == sorted(each) and each[2] > 2 * each[0]


def test_cattle_are_said_to_drink_more_in_heat():
    assert any("hot weather" in caution for caution in answer(dairy="2").cautions)
    assert answer().cautions == ()


def test_animals_nobody_gave_are_seen_as_the_examples():
    outcome = work(SHEET, State(texts={"people": "4"}))
    assert {"hens", "goats"} <= {one.key for one in outcome.assumed}


UNSURE = ["hens", "goats", "beds", "busy", "each", "depth", "drip", "trough", "reach", "hoseflow"]


@pytest.mark.parametrize("key", UNSURE)
def test_not_knowing_is_an_answer(key):
    outcome = work(SHEET, State(texts={key: "?"}))
    assert outcome.errors == {} and outcome.answer.verdict.word == "Result"
    assert key in {one.key for one in outcome.assumed}


def test_unknown_animals_are_none():
    known = figure("Water a day", hens="0", goats="0")
    assert figure("Water a day", hens="?", goats="?") == known


def test_the_table_of_the_day_adds_up():
    rows = answer().tables[1].rows
    assert math.isclose(sum(row[1] for row in rows[:-1]), rows[-1][1])
    assert math.isclose(sum(row[2] for row in rows[:-1]), 1.0)


# The chart, links and errors --------------------------------------------------


def test_the_chart_falls_in_steps_and_holds_at_most_60_points():
    texts = {"shower": "60", "sink": "60", "hose": "20", "hoseflow": "31 L/min", "toilet": "60"}
    for found in (answer(), answer(**texts)):
        series = found.charts[0].series[0]
        assert len(series.xs) <= 60
        assert list(series.xs) == sorted(series.xs)
        assert list(series.ys) == sorted(series.ys, reverse=True)
        corners = list(zip(series.xs, series.ys, strict=True))
        # level or upright, never slanting: no flow between two that can be drawn is drawn
        assert all(x1 == x2 or y1 == y2 for (x1, y1), (x2, y2) in pairwise(corners))


AWKWARD = [(state, work(SHEET, state)) for state in awkward.states(SHEET, 120)]


def test_every_awkward_request_is_answered_or_refused_at_its_field():
    answered = 0
    for state, outcome in AWKWARD:
        if outcome.answer is None:
            assert all(key in SHEET_KEYS and text for key, text in outcome.errors.items())
            continue
        answered += 1
        check_working(outcome.answer)
        label = {f.label: f.value for f in outcome.answer.figures}
        assert label["Flow to plan for"] >= max(label["By your list"], label["By chance"])
        assert (label["Flow to plan for"] == 0) == ("no-outlets" in keys(outcome.answer))
        other = "gpm" if state.system == "metric" else "L/min"
        for one in outcome.answer.findings:
            assert len(one.text.replace("\u00a0", "_").split()) <= 25, one.text
            assert f"\u00a0{other}" not in one.text
    assert answered > 60


@pytest.mark.parametrize("texts", CASES)
def test_metric_and_us_readers_get_the_same_words(texts):
    plain = {key: text for key, text in texts.items() if " " not in text.strip(" %")}
    one, other = answer("metric", **plain), answer("us", **plain)
    assert one.verdict.word == other.verdict.word and keys(one) == keys(other)


@pytest.mark.parametrize("system", ["metric", "us"])
def test_links_carry_the_flow_and_the_day(system):
    found = answer(system)
    flow = figure("Flow to plan for", system)
    for link in found.links:
        outcome = work(sheet(link.sheet), State(system, dict(link.values)))
        assert outcome.errors == {}
    tank = next(link for link in found.links if link.sheet == "tank")
    value, symbol = tank.values["use"].split(" ")
    factor = {"L/day": LITRE / DAY, "gal/day": GALLON_US / DAY}[symbol]
    assert float(value) * factor == pytest.approx(figure("Water a day", system), rel=1e-3)
    reach = next(link for link in found.links if link.sheet == "reach")
    value, symbol = reach.values["flow"].split(" ")
    assert float(value) * {"L/min": LITRE / MINUTE, "gpm": GPM}[symbol] == pytest.approx(
        flow, rel=1e-3
    )


@pytest.mark.parametrize(
    "key, text",
    [
        ("showers_open", "21"),
        ("people", "-1"),
        ("shower", "2.5"),
        ("depth", "30 mm"),
        ("reach", "10 %"),
        ("busy", "0"),
        ("each", "40 psi"),
        ("hoseflow", "0"),
    ],
)
def test_bad_inputs_are_said_at_their_field(key, text):
    outcome = work(SHEET, State(texts={key: text}))
    assert outcome.answer is None and outcome.errors[key]
