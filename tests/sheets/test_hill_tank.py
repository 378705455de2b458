"""Hill tank sheet: verdicts from the figures, fixes that fix, the year of a roof, the picture."""

import math
import re
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest

from calc import practice, storage
from calc.page import row_text
from calc.page.fields import Choice, Count, Number
from calc.page.form import work
from calc.page.shapes import Stroke
from calc.sheets import sheet
from calc.sheets.parts.clock import clock
from calc.units import DAY, GRAVITY, MONTHS, parse
from tests.page.pictures import HALF, faults, named
from tests.sheets import asking, awkward
from tests.sheets.working import check_working

SHEET = sheet("hill_tank")
answer = partial(asking.answer, SHEET)
outcome = partial(asking.outcome, SHEET)
figures = partial(asking.figures, SHEET)
found = partial(asking.found, SHEET)
SYSTEMS = ("metric", "us")
PLAIN = tuple(one for one in SHEET.fields if isinstance(one, Choice | Count | Number))
MANY = [(state, work(SHEET, state)) for state in awkward.states(replace(SHEET, fields=PLAIN), 400)]
WORKED = [(state, one.answer) for state, one in MANY if one.answer]
LOST, SHORT, LOW = "Not served a day", "Short by, each day", "Lowest in the tank"
CARRIES, INFLOW = "Tank that carries the day", "Inflow that carries the day"
PRESSURE, HOURS = "Lowest pressure at the outlet", "Hours with too little"
RAIN = {"fills": "none", "rain": "yes", "use": "150 L/day", "garden": "0 L/day", "height": ""}
LARGE = {"volume": "3000 L"}
DRY = {"dryflow": "3 L/min"}


def said(fix):
    return fix.text.replace("\u00a0", " ").replace("\u202f", "")


def fixes(one):
    return " ".join(map(said, one.fixes))


def months(rain):
    """The table's text for these millimetres."""
    return row_text.encode((str(at), f"{one} mm") for at, one in enumerate(rain, 1))


# The day ----------------------------------------------------------------------------------------


def test_the_example_is_empty_in_the_evening_though_more_comes_in_than_is_used():
    one = answer()
    assert one.verdict.word == "Does not work" and "empty at 19:40" in one.verdict.sentence
    shown = figures()
    assert shown["Comes in a day"] > shown["Used a day"]
    assert LOST in shown and SHORT not in shown


def test_every_day_closes_to_a_billionth():
    """In and start are out, overflow and end: of the figures, and of the table's 24 hours."""
    for texts in ({}, LARGE, DRY, {**LARGE, "reserve": "1500 L"}, {"fills": "always"}):
        one, shown = answer(**texts), figures(**texts)
        rows = one.tables[0].rows
        given = sum(row[2] for row in rows)
        lost = shown.get(LOST, 0.0)
        assert given == pytest.approx(shown["Used a day"] - lost, rel=1e-9)
        over = shown.get("Runs over a day", 0.0)
        assert sum(row[1] for row in rows) == pytest.approx(given + over, rel=1e-9)
        level = rows[-1][3]
        for _, comes, out, then in rows:
            assert then <= level + comes - out + 1e-9  # what is less ran over
            level = then


def test_a_bigger_tank_or_more_inflow_never_serves_less():
    served = []
    for litres in (200, 500, 1000, 1500, 1890, 3000, 20000):
        served.append(-figures(volume=f"{litres} L").get(LOST, 0.0))
    assert served == sorted(served) and served[0] < served[-1] == 0
    served = []
    for flow in (1, 2, 3, 4, 4.9, 6, 60):
        served.append(-figures(gives=f"{flow} L/min").get(LOST, 0.0))
    assert served == pytest.approx(sorted(served)) and served[0] < served[-1]


def test_what_is_not_served_is_never_less_than_what_is_short():
    """A small tank also lets run over what it could not hold."""
    shown = figures(gives="4 L/min")
    assert shown[LOST] > shown[SHORT] + 0.1 and shown["Runs over a day"] > 0.1
    shown = figures(gives="4 L/min", volume="5000 L")
    assert shown[LOST] == pytest.approx(shown[SHORT])


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("texts", [{}, {"reserve": "500 L"}, {"fills": "always"}, {"garden": "0"},
                                   {"fills": "hours", "begins": "20"}])  # fmt: skip
def test_the_tank_it_asks_for_works_and_one_2_per_cent_smaller_does_not(system, texts):
    tank = figures(system, **texts)[CARRIES]
    one = answer(system, **{**texts, "volume": f"{tank * (1 + 1e-6)} m³"})
    assert one.verdict.word == "Works"
    assert "nearly-empty" in found(system, **{**texts, "volume": f"{tank * 0.98} m³"})
    # without the tenth to spare
    least = tank * (1 - practice.TANK_IN_HAND) * 0.98
    if "reserve" not in texts:
        assert "tank-dry" in found(system, **{**texts, "volume": f"{least} m³"})


def test_the_inflow_it_asks_for_works_and_2_per_cent_less_does_not():
    flow = figures(**LARGE)[INFLOW] * 60000
    assert answer(**LARGE, gives=f"{flow * (1 + 1e-6)} L/min").verdict.word == "Works"
    assert answer(**LARGE, gives=f"{flow * 0.98} L/min").verdict.word != "Works"


def test_where_a_day_takes_more_than_comes_in_no_tank_is_named_alone():
    one = answer(**DRY)
    assert "no tank makes that up" in one.verdict.sentence
    assert CARRIES not in figures(**DRY)
    assert not any(said(fix).startswith("Choose a tank") for fix in one.fixes)
    for size in ("10 m3", "1000 m3"):
        assert "too-little" in found(**DRY, volume=size)


def test_the_tank_of_a_day_evens_out_as_much_as_the_storage_tanks_page_says():
    """Both balance one day: a pump's hours on the sun, the same use, no garden."""
    other = asking.figures(sheet("tank"), use="900 L/day", gives="6 L/min", hours="7")
    swing = other["To even out the day"]
    # seven hours about 12:30 are whole ones, as that page counts them
    tank = figures(use="900 L/day", garden="0 L/day", hours="7")[CARRIES]
    assert tank * 0.9 * (1 - practice.TANK_IN_HAND) == pytest.approx(swing)


def test_even_a_usual_day_that_runs_dry_is_said():
    assert "Even on a usual day" in answer(volume="500 L").verdict.sentence
    assert "usual day" not in answer().verdict.sentence
    alone = answer(volume="500 L", garden="0 L/day").verdict.sentence
    assert "on a usual day" in alone and "Even" not in alone


def test_less_in_the_dry_month_counts_without_a_garden_too():
    texts = {**LARGE, "garden": "0 L/day"}
    assert found(**texts) == {}
    assert found(**texts, dryflow="2 L/min") == {"too-little": "stop"}


def test_the_harder_of_both_days_is_judged():
    """More in the dry month than usually: a usual day is then short."""
    one = answer(**LARGE, gives="1 L/min", dryflow="20 L/min")
    assert "A usual day uses" in one.verdict.sentence


def test_a_low_tank_this_morning_is_a_note_and_no_more():
    texts = {"volume": "2000 L", "morning": "10 %"}
    assert found(**texts) == {"today": "note"}
    assert answer(**texts).verdict.word == "Works"
    assert found(volume="2000 L", morning="100 %") == {}


def test_a_reserve_is_kept_and_not_used():
    one = answer(**LARGE, reserve="1500 L")
    assert "down to its reserve" in one.verdict.sentence
    assert min(row[3] for row in one.tables[0].rows) == pytest.approx(1.5)
    assert any("fire authority" in text for text in one.cautions)
    assert any("fire authority" in text for text in SHEET.cautions)


@pytest.mark.parametrize("hour, shown", [(0, "6:00"), (17.99, "23:59"), (18, "0:00"), (24, "6:00")])
def test_a_clock_counts_from_the_morning(hour, shown):
    assert clock(hour * 3600) == shown


# The pressure -----------------------------------------------------------------------------------


def test_the_pressure_is_the_height_of_the_low_water_less_the_friction():
    one = answer(**LARGE, deep="2 m", height="20 m")
    steps = {step.title: step for step in one.steps}
    step = steps["Pressure at the outlet with the tank low"]
    lost, density = (step.given[name].value for name in ("h_f", "rho"))
    least = min(row[3] for row in one.tables[0].rows)
    assert lost > 0
    # the hours' table has the lowest only where it is at an hour's end; here it is at 9:30
    least = figures(**LARGE)[LOW] if least > figures(**LARGE)[LOW] else least
    high = 20 + 2 * least / 2.7 - lost
    assert asking.figure(one, PRESSURE) == pytest.approx(density * GRAVITY * high)


def test_a_falling_level_takes_pressure_and_a_shape_given_either_way_is_one():
    deep = figures(**LARGE, deep="2 m")
    plan = figures(**LARGE, shape="plan", plan="1.35 m²")
    assert plan[PRESSURE] == pytest.approx(deep[PRESSURE])
    assert figures(**LARGE, deep="4 m")[PRESSURE] > deep[PRESSURE]
    dry = figures(**LARGE, deep="2 m", garden="1100 L/day", flow="20 L/min")
    deep = figures(**LARGE, deep="2 m", flow="20 L/min")
    assert dry[PRESSURE] < deep[PRESSURE]


@pytest.mark.parametrize("texts", [LARGE, {**LARGE, "deep": "8 m", "reserve": "300 L"}])
def test_an_outlet_as_high_as_the_table_says_has_just_what_it_needs_at_that_level(texts):
    table = answer(**texts).tables[1]
    assert [row[0] for row in table.rows[:1]] == ["Full"]
    heights = [row[3] for row in table.rows]
    assert heights == sorted(heights, reverse=True) and len(set(heights)) > 1
    (lowest,) = (row for row in table.rows if row[0] == "Lowest")
    wanted = parse(SHEET.field("wanted").metric, "pressure").value
    higher = figures(**texts, height=f"{15 - lowest[3]} m")
    assert higher[PRESSURE] == pytest.approx(wanted)
    assert lowest[2] == pytest.approx(figures(**texts)[PRESSURE])


def test_levels_with_too_little_are_dim():
    table = answer(**LARGE, deep="10 m", height="10 m", wanted="1.4 bar").tables[1]
    assert [row[0] for at, row in enumerate(table.rows) if at not in table.dimmed] == [
        "Full",
        "Half",
    ]
    assert all(row[3] < 0 for at, row in enumerate(table.rows) if at in table.dimmed)


def test_hours_with_too_little_are_those_in_which_the_level_is_below_what_is_needed():
    one = figures(**LARGE, deep="10 m", height="10 m", wanted="1.4 bar")
    assert 0 < one[HOURS] < 24
    assert HOURS not in figures(**LARGE, deep="10 m", height="10 m", wanted="0.5 bar")
    high = figures(**LARGE, deep="10 m", height="11 m", wanted="1.4 bar")
    assert high.get(HOURS, 0.0) < one[HOURS]


def test_too_little_pressure_stops_and_a_little_more_than_needed_is_borderline():
    has = figures(**LARGE)[PRESSURE]
    for share, level in ((0.99, "stop"), (1.05, "care")):
        assert found(**LARGE, wanted=f"{has / share} Pa")["short"] == level
    assert "short" not in found(**LARGE, wanted=f"{has / 1.11} Pa")


def test_a_pump_behind_the_tank_needs_no_height():
    assert PRESSURE not in figures(**LARGE, height="")
    assert found(**LARGE, height="", wanted="9 bar") == {}


def test_a_high_tank_needs_a_valve_or_a_lower_place():
    assert found(**LARGE, height="80 m")["outlet-over-limit"] == "care"
    assert found(**LARGE, height="170 m")["over-rating"] == "stop"


# Never kinder than the figures ------------------------------------------------------------------


def test_whatever_the_form_the_verdict_is_never_kinder_than_its_figures():
    seen = {"lost": 0, "short": 0, "low": 0, "works": 0}
    for state, one in WORKED:
        shown = {each.label: each.value for each in one.figures}
        bad = {each.key: each.level for each in one.findings}
        if shown.get(SHORT, 0.0) > 1e-9:
            seen["short"] += 1
            assert {"too-little", "no-source"} & bad.keys(), state
        elif shown.get(LOST, 0.0) > 1e-9:
            seen["lost"] += 1
            assert bad.get("tank-dry") == "stop", state
        if shown.get("Not served in the year", 0.0) > 1e-6:
            assert {"season", "year-short"} & bad.keys(), state
        if shown.get(HOURS, 0.0) > 0.01:
            seen["low"] += 1
            assert {"short", "no-water"} & bad.keys(), state
        if one.verdict.word == "Works":
            seen["works"] += 1
            assert not {LOST, SHORT, HOURS} & shown.keys(), state
    assert min(seen.values()) > 3, seen


def test_the_working_holds_however_awkward_the_form():
    assert len(WORKED) > 100
    for _, one in WORKED:
        check_working(one)
        assert list(faults(one.whole().drawings[0])) == []


# Fixes ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize(
    "texts, words",
    [
        ({}, "Choose a tank of"),
        ({}, "Begin watering at"),
        ({}, "Give the garden no more"),
        ({"fills": "hours", "begins": "21", "hours": "8", "gives": "6 L/min", "garden": "0",
          "volume": "800 L"}, "Begin filling at"),
        ({"fills": "hours", "begins": "21", "hours": "8", "gives": "6 L/min", "garden": "0",
          "volume": "800 L"}, "Let the tank fill for"),
        (DRY, "and choose a tank of"),
        ({**DRY, **LARGE}, "in the dry month too"),
        ({**LARGE, "gives": "4 L/min", "garden": "700 L/day"}, "Fill it with"),
        ({**LARGE, "gives": "2 L/min", "garden": "0"}, "Use no more than"),
        ({"fills": "none"}, "Find a source that gives"),
        ({**LARGE, "wanted": "1.8 bar"}, "Place the tank"),
        ({**LARGE, "height": "80 m"}, "no more than"),
        ({**LARGE, "length": "3000 m"}, "the outlet then gets"),
        ({**RAIN, "volume": "10 m³"}, "Choose a tank of"),
        ({**RAIN, "volume": "10 m³"}, "of roof"),
        ({**RAIN, "volume": "60 m³", "use": "300 L/day"}, "of roof"),
    ],
)  # fmt: skip
def test_each_kind_of_fix_is_offered_and_works(system, texts, words):
    one = answer(system, **texts)
    assert one.verdict.word != "Works"
    assert words in fixes(one), fixes(one)
    for fix in one.fixes:
        assert answer(system, **fix.link.values).verdict.word == "Works", said(fix)


def test_a_pump_on_the_sun_is_not_told_to_run_all_night():
    for state, one in WORKED:
        if state.texts.get("fills", "sun") == "sun":
            hours = re.findall(r"fill for ([\d.]+) hours", fixes(one.whole()))
            assert all(float(each) <= 9 for each in hours)


# The year ---------------------------------------------------------------------------------------


def test_rain_from_a_roof_is_area_times_depth_times_what_reaches_the_tank():
    texts = {**RAIN, "volume": "20 m³", "months": months([100] * 12), "roof": "80 m²"}
    shown = figures(**texts, runoff="75 %")
    assert shown["Rain from the roof, a year"] == pytest.approx(80 * 0.75 * 1.2)


def test_a_tank_for_one_dry_half_year_is_its_use_and_a_day():
    """Six months of more rain than enough, from January to June, then none: by hand."""
    texts = {**RAIN, "months": months([300] * 6 + [0] * 6), "usable": "100 %", "volume": "50 m³"}
    days = 31 + 31 + 30 + 31 + 30 + 31
    shown = figures(**texts)
    assert shown["Tank that carries the year"] == pytest.approx(0.15 * (days + 1))
    size = shown["Tank that carries the year"]
    assert "season" not in found(**{**texts, "volume": f"{size * 1.0001} m³"})
    assert found(**{**texts, "volume": f"{size * 0.99} m³"})["season"] == "stop"


def test_rain_that_is_enough_by_the_month_still_leaves_dry_days_between():
    """Enough rain in every month, and a tank of two days: no month sees that it runs dry."""
    texts = {**RAIN, "months": months([120] * 12), "usable": "100 %"}
    one = answer(**texts, volume="300 L")
    assert found(**texts, volume="300 L") == {"dry-spell": "care"}
    assert "lasts only 2 days" in one.verdict.sentence and "14 days" in one.verdict.sentence
    assert found(**texts, volume=f"{14 * 150} L") == {}
    assert found(**texts, volume=f"{13.9 * 150} L") == {"dry-spell": "care"}
    for fix in one.fixes:
        assert answer(**fix.link.values).verdict.word == "Works", said(fix)


def test_the_year_closes_month_by_month():
    for texts in ({**RAIN, "volume": "10 m³"}, {"rain": "yes", **DRY, "volume": "10 m³"}):
        rows = answer(**texts).tables[-1].rows
        level = rows[-1][3]
        for _, comes, given, then in rows:
            assert then <= level + comes - given + 1e-9
            level = then
        assert [row[0].partition(",")[0] for row in rows] == list(MONTHS)


def test_a_larger_roof_or_tank_never_leaves_more_unserved():
    lost = [figures(**RAIN, volume="10 m³", roof=f"{area} m²").get("Not served in the year", 0.0)
            for area in (20, 60, 100, 130, 163, 400)]  # fmt: skip
    assert lost == sorted(lost, reverse=True) and lost[0] > lost[-1] == 0
    lost = [figures(**RAIN, volume=f"{size} m³").get("Not served in the year", 0.0)
            for size in (1, 5, 9, 12.8, 50)]  # fmt: skip
    assert lost == sorted(lost, reverse=True) and lost[0] > lost[-1] == 0


def test_dry_months_go_round_the_turn_of_the_year():
    texts = {**RAIN, "garden": "500 L/day", "volume": "100 m³", "dryfrom": "12", "drycount": "3"}
    rows = answer(**texts).tables[-1].rows
    more = [name for (name, _, given, _), days in zip(rows, (31, 28) * 6, strict=True)
            if given > 0.3 * days]  # fmt: skip
    assert [name.partition(",")[0] for name in more] == ["January", "February", "December"]


def test_a_year_that_uses_more_than_it_rains_has_no_tank():
    texts = {**RAIN, "use": "300 L/day", "volume": "60 m³"}
    assert found(**texts) == {"year-short": "stop"}
    assert "Tank that carries the year" not in figures(**texts)
    assert "no tank is enough" in answer(**texts).verdict.sentence


# Bad input --------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "field, text, more",
    [
        ("volume", "0", {}),
        ("reserve", "950 L", {}),
        ("reserve", "900 L", {}),
        ("gfrom", "25", {}),
        ("ghours", "0", {}),
        ("begins", "-1", {"fills": "hours"}),
        ("hours", "25", {}),
        ("morning", "120 %", {}),
        ("plan", "0", {"shape": "plan"}),
        ("deep", "0", {}),
        ("runoff", "120 %", {"rain": "yes"}),
        ("roof", "0", {"rain": "yes"}),
        ("height", "-3 m", {}),
        ("drycount", "13", {"rain": "yes"}),
    ],
)
def test_bad_input_is_said_beside_its_field(field, text, more):
    one = outcome(**more, **{field: text})
    assert one.answer is None and set(one.errors) == {field}


def test_a_month_given_twice_is_said_in_its_row():
    rows = [(str(max(1, at)), "50 mm") for at in range(12)]
    one = outcome(rain="yes", months=row_text.encode(rows))
    assert set(one.errors) == {"months.1.month"} and "twice" in one.errors["months.1.month"]


@pytest.mark.parametrize("key", ["hours", "usable", "reserve", "deep", "flow", "extra", "water"])
def test_not_knowing_is_answered_with_what_is_usual(key):
    one = outcome(**{key: "?"})
    assert one.errors == {} and key in {each.key for each in one.assumed}


# The picture ------------------------------------------------------------------------------------


@pytest.mark.parametrize("texts", [{}, LARGE, {**LARGE, "reserve": "1500 L"}, DRY, RAIN])
def test_the_level_is_drawn_as_the_table_says(texts):
    one = answer(**texts)
    (picture,) = one.drawings
    line = next(s for s in picture.shapes if isinstance(s, Stroke) and s.at == "level").points
    (left, top), (_, low), (right, _), _ = next(
        s for s in picture.shapes if isinstance(s, Stroke) and s.at == "tank"
    ).points
    volume = parse(texts.get("volume", "1000 L"), "volume").value * 0.9
    top += 3  # the walls stand a little over the water
    for hour, row in enumerate(one.tables[0].rows, 1):
        x = left + (right - left) * hour / 24
        y = min(line, key=lambda point: abs(point[0] - x))[1]
        assert y == pytest.approx(low - (low - top) * row[3] / volume, abs=HALF)


def test_flows_are_drawn_to_one_scale():
    (picture,) = answer(**LARGE).drawings
    assert {"comes in", "is asked for", "level", "water", "tank"} <= named(picture).keys()
    areas = {s.at: [y for _, y in s.points] for s in picture.shapes if hasattr(s, "edge") and
             s.at in ("comes in", "is asked for")}  # fmt: skip
    tall = {name: max(ys) - min(ys) for name, ys in areas.items()}
    shares = storage.PATTERNS["home"]
    most = max(0.934 * shares[18], 0.934 * shares[19]) + 0.4
    assert tall["comes in"] / tall["is asked for"] == pytest.approx(0.36 / most)


def test_the_picture_says_when_it_is_empty():
    assert "first at 19:40" in answer().drawings[0].alt
    assert "empty" not in answer(**LARGE).drawings[0].alt


# On to other pages ------------------------------------------------------------------------------


def test_this_page_and_the_tank_for_days_without_supply_lead_to_one_another_with_numbers():
    there = next(link for link in answer(**LARGE).links if link.sheet == "tank")
    other = asking.answer(sheet("tank"), **there.values)
    assert there.values["own"] == "3000 L" and other.verdict.word
    back = next(link for link in asking.answer(sheet("tank"), own="3 m³").links
                if link.sheet == "hill_tank")  # fmt: skip
    assert back.values["volume"] == "3000 L" and back.values["garden"] == "0 L/day"
    again = asking.figures(SHEET, **back.values)
    day = asking.figures(sheet("tank"), own="3 m³")["Comes in on a fair day"]
    assert again["Comes in a day"] == pytest.approx(day)


def test_a_slow_wells_day_goes_along_as_what_it_gives():
    texts = {"gives": "12 L/min", "well": "1.5 L/min", "stored": "600 L"}
    link = next(one for one in asking.answer(sheet("tank"), **texts).links
                if one.sheet == "hill_tank")  # fmt: skip
    day = asking.figures(sheet("tank"), **texts)["Comes in on a fair day"]
    assert figures(**link.values)["Comes in a day"] == pytest.approx(day)


# Advice and guide -------------------------------------------------------------------------------


def test_the_cautions_name_what_can_hurt():
    every = " ".join((*SHEET.cautions, *answer().cautions)).lower()
    for word in ("confined space", "tonne", "air gap", "drinking water", "first flush", "frost",
                 "fire authority", "local rules", "hatches"):  # fmt: skip
        assert word in every
    assert "1000\u00a0kg" in answer().cautions[0]


def test_the_guide_says_what_the_calculator_finds():
    path = Path(__file__).resolve().parents[2] / "docs" / "hill-tank.md"
    short = path.read_text(encoding="utf-8").partition("**Short answer.**")[2].partition("```")[0]
    for system, size in (("metric", "1890 L"), ("us", "496 gal")):
        one = answer(system)
        assert "empty at 19:40" in one.verdict.sentence and "19:40" in short
        assert f"Choose a tank of {size}." in fixes(one) and size in short
        assert "Begin watering at 13:00" in fixes(one) and "13:00" in short


def test_the_guides_worked_examples_end_as_it_says():
    assert found(gfrom="13") == {} and found(**LARGE) == {}
    assert "tank-dry" in found(**LARGE, reserve="1500 L")
    assert "too-little" in found(**DRY)
    spring = {"fills": "always", "gives": "1.3 L/min"}
    assert found(**spring) == {}
    assert figures(**spring)["Comes in a day"] < figures()["Comes in a day"]
    assert "August and September" in answer(**RAIN, volume="10 m³").verdict.sentence
    assert found(**RAIN, volume="20 m³") == {}


def test_use_is_that_of_the_site_and_its_day_has_the_watering_on_top():
    shown = figures()
    use = parse(SHEET.field("use").metric, "daily").value * DAY
    assert math.isclose(shown["Used a day"], use + 0.8, rel_tol=1e-9)
