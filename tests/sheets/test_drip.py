"""The drip sheet: closed forms, zones and hours, how even a line is, findings, fixes, errors."""

import math
import re
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest

from calc import practice
from calc.drip import crop
from calc.page.form import read_values, work
from calc.page.shapes import Block, Stroke
from calc.page.state import State
from calc.sheets import views
from calc.sheets.drip.case import case_of
from calc.sheets.drip.climate import MONTHS as THEIR_MONTHS
from calc.sheets.drip.sheet import CROPS, MONTHS, SHEET
from calc.sheets.parts import drip_bindings
from calc.site.demo import alder_terrace
from calc.units import Reader
from tests.page.pictures import faults, marks
from tests.sheets import asking, few
from tests.sheets.asking import figure
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
found = partial(asking.found, SHEET)
HOURS, WATER = "Hours of watering a day", "Water needed a day"
EVEN, VARIES, LEAST = (
    "Emission uniformity",
    "Flow varies along a line",
    "Least pressure at a dripper",
)
KNOWN = {"climate": "known", "et": "6 mm"}
# half an acre of tomatoes on a 12 V pump
ACRE = {
    **KNOWN, "area": "2000 m²", "rows": "1.5 m", "crop": "tomato", "flow": "19 L/min",
    "pressure": "1.4 bar", "hours": "8", "length": "30 m", "daily": "20000 L/day",
}  # fmt: skip
MANY = [
    (sheet, state, few.work(sheet, state, first=True)) for sheet, state in few.states("drip", 150)
]
WORKED = [(one, state, outcome.answer) for one, state, outcome in MANY if outcome.answer]


def case(system="metric", **texts):
    return case_of(read_values(SHEET, State(system, texts)), Reader(system))


# Closed forms -----------------------------------------------------------------------------------


def test_water_is_area_times_need_over_what_reaches_the_roots():
    one = answer(**ACRE, reaches="90 %")
    assert figure(one, WATER) == pytest.approx(2000 * 6e-3 * 1.15 / 0.9)


@pytest.mark.parametrize("texts", [{}, ACRE, {"climate": "full"}, {"slope": "5 %", "zones": "2"}])
def test_what_zones_give_in_their_time_is_the_water_needed(texts):
    one = case(**texts)
    assert one.whole_flow * one.zone_time == pytest.approx(one.water, rel=1e-9)
    assert one.time == one.zones * one.zone_time


def test_compensating_drippers_give_their_nominal_flow_and_hours_follow():
    """13.3 mm an hour from 2 L/h on 0.3 m by 0.5 m."""
    one = case(**KNOWN, holds="steady", crop="own", need="1", reaches="100 %", length="21 m",
               pressure="2 bar")  # fmt: skip
    assert one.zone_time / 3600 == pytest.approx(6 / (2 / 0.15), rel=1e-9)


@pytest.mark.parametrize("way", ["warm", "full"])
def test_the_climate_is_that_of_fao_56(way):
    """Lyon in July by temperature alone, example 20: 5.0 mm; with FAO-56's own way it is near."""
    texts = {"climate": way, "month": "jul", "latitude": "45.72°", "warmest": "26.6 °C",
             "coolest": "14.8 °C", "above": "200 m", "humid": "64 %", "wind": "2 m/s",
             "light": "6.27 kWh/m²"}  # fmt: skip
    found_mm = case(**texts).climate.reference * 1000
    assert found_mm == pytest.approx({"warm": 5.03, "full": 4.6}[way], abs=0.1)


def test_no_place_south_of_the_equator_has_its_need_in_july():
    assert case(latitude="-41°").climate.reference < case(latitude="41°").climate.reference
    south = case(latitude="-41°", month="jan").climate.reference
    assert south == pytest.approx(case(latitude="41°", month="jul").climate.reference, rel=0.1)


def test_the_form_offers_what_the_physics_knows():
    assert [(one.key, one.name) for one in crop.CROPS] == list(CROPS[:-1])
    assert CROPS[-1][0] == "own"
    assert [key for key, _ in MONTHS] == list(THEIR_MONTHS) == list(drip_bindings.MONTHS)


def test_each_month_runs_by_its_own_need():
    """Twice the water takes twice the time, in the same zones; the month of most need decides."""
    texts = {"climate": "months", "months": "jun,4 mm;jul,6 mm;oct,2 mm"}
    one, alone = answer(**texts), answer(**KNOWN)
    assert one.figures == alone.figures
    table = next(table for table in one.tables if table.title == "Month by month")
    assert [row[0] for row in table.rows] == ["June", "July", "October"]
    assert table.marked == (1,) and table.rows[1][2] == pytest.approx(figure(one, HOURS))
    for at in (1, 2, 3):
        june, july, october = (row[at] for row in table.rows)
        assert june == pytest.approx(2 * october) and july == pytest.approx(3 * october)
    assert "Month by month" not in {table.title for table in alone.tables}


def test_a_fix_keeps_the_months():
    (fix, *_) = answer(climate="months", months="jun,4 mm;jul,6 mm", filter="no").fixes
    assert fix.link.values["months"].count(";") == 1


# Zones and hours --------------------------------------------------------------------------------


def test_a_zone_is_as_many_whole_lines_as_the_source_feeds():
    one = case(**ACRE)
    assert one.zone_flow <= one.flow < (one.per_zone + 1) * one.solved.flow
    assert one.zones == math.ceil(one.count / one.per_zone)


def test_more_area_never_needs_fewer_hours():
    texts = {key: text for key, text in ACRE.items() if key not in ("area", "daily")}
    times = [case(**texts, area=f"{area} m²").time for area in range(60, 3000, 49)]
    assert times == sorted(times) and times[0] < times[-1]


@pytest.mark.parametrize(
    "less, more",
    [
        ({"flow": "40 L/min"}, {"flow": "19 L/min"}),
        ({"et": "4 mm"}, {"et": "7 mm"}),
        ({"crop": "olive"}, {"crop": "tomato"}),
        ({"reaches": "95 %"}, {"reaches": "70 %"}),
        ({"dripper": "4 L/h", "flow": "40 L/min"}, {"dripper": "4 L/h", "flow": "19 L/min"}),
    ],
)
def test_what_asks_for_more_never_takes_fewer_hours(less, more):
    assert case(**{**ACRE, **less}).time < case(**{**ACRE, **more}).time


# Along a line -----------------------------------------------------------------------------------


@pytest.mark.parametrize("slope", ["0 %", "3 %"])
@pytest.mark.parametrize("length", ["20 m", "60 m", "90 m"])
def test_a_wider_line_never_waters_less_evenly(slope, length):
    texts = {"area": "600 m²", "length": length, "slope": slope}
    evens = [case(**texts, bore=f"{bore} mm").emission for bore in (11, 13.6, 17.6, 21.2, 28)]
    assert evens == sorted(evens)


def test_the_longest_line_waters_evenly_and_one_dripper_more_does_not():
    seen = 0
    for texts in ({}, {"slope": "4 %"}, {"holds": "steady"}, {"bore": "10 mm"}, {"slope": "-8 %"}):
        one = case(**texts)
        longest = one.line.longest(one.pressure)
        if 0 < longest < 600:
            seen += 1
            assert _line(one, longest).even(one.pressure)
            assert not _line(one, longest + 1).even(one.pressure)
    assert seen >= 4


def _line(one, outlets):
    return replace(one.line, outlets=outlets)


def test_the_pressure_asked_for_gives_the_nominal_flow():
    one = case(pressure="1 bar", length="60 m", slope="2 %")
    needed = one.line.needs()
    flow = one.line.solved(needed).flow
    assert flow == pytest.approx(one.line.outlets * one.line.dripper.flow_m3s, rel=1e-9)


def test_christiansens_check_agrees_with_dripper_by_dripper():
    """To 3 %: on level ground the drippers of an even line give nearly the same."""
    one = answer(length="40 m")
    step = next(s for s in one.steps if s.title.startswith("Friction along"))
    told = float(re.search(r"it is ([\d.]+)\u00a0m", step.note)[1])
    assert step.result.value == pytest.approx(told, rel=0.03)


# Judged -----------------------------------------------------------------------------------------


def test_the_example_works_in_both_systems():
    for system in ("metric", "us"):
        one = answer(system)
        assert one.verdict.word == "Works" and one.findings == ()


@pytest.mark.parametrize(
    "texts, finding, level",
    [
        ({"zones": "1"}, "zone-flow", "stop"),
        ({"area": "600 m²", "length": "120 m", "flow": "5 L/min"}, "zone-flow", "stop"),
        (ACRE, "too-long", "stop"),
        ({"daily": "100 L/day"}, "too-little", "stop"),
        ({"daily": ""}, "daily", "care"),
        ({"daily": "?"}, "daily", "care"),
        ({"holds": "steady", "pressure": "0.5 bar"}, "short", "stop"),
        ({"length": "60 m", "slope": "10 %"}, "uneven", "stop"),
        ({"area": "600 m²", "length": "75 m"}, "uneven", "care"),
        ({"made": "18 %"}, "emission", "care"),
        ({"made": "25 %"}, "emission", "stop"),
        ({"pressure": "4 bar"}, "over-pressure", "care"),
        ({"filter": "no"}, "no-filter", "care"),
        ({"filter": "?"}, "no-filter", "care"),
        ({"pressure": "0.7 bar"}, "slow", "note"),
        ({"area": "900 m²", "length": "150 m", "pressure": "3 bar", "holds": "steady",
          "dripper": "4 L/h", "spacing": "0.3 m", "bore": "21 mm"}, "fast", "note"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_found(texts, finding, level):
    assert found(**texts).get(finding) == level


def test_no_form_is_greener_than_its_figures():
    """Judged from the figures alone, as a reader could."""
    assert len(WORKED) > 60
    for sheet, state, one in WORKED:
        green, values = one.verdict.word == "Works", read_values(sheet, state)
        over = figure(one, HOURS) > values.hours * (1 + 1e-9)
        uneven = figure(one, VARIES) > 0.1 * (1 + 1e-9) or figure(one, EVEN) < 0.8 * (1 - 1e-9)
        assert not (green and (over or uneven or values.daily is None)), state


def test_the_longest_line_of_the_table_is_found_good_and_one_dripper_more_is_not():
    one = case(area="600 m²")
    longest = one.line.longest(one.pressure) * one.line.spacing
    assert "uneven" not in found(area="600 m²", length=f"{longest:.4g} m")
    assert "uneven" in found(area="600 m²", length=f"{longest + 0.3:.4g} m")


# Fixes ------------------------------------------------------------------------------------------


def said(**texts):
    return " ".join(fix.text for fix in answer(**texts).fixes)


@pytest.mark.parametrize(
    "texts, words",
    [
        ({"zones": "1"}, "Make 2 zones"),
        (ACRE, "hours a day"),
        (ACRE, "fill a tank"),
        ({"daily": "100 L/day"}, "leave the rest dry"),
        ({"daily": "100 L/day"}, "second source"),
        ({"length": "60 m", "slope": "10 %"}, "or less, each fed at its start"),
        ({"length": "60 m", "slope": "10 %", "pressure": "1.5 bar"}, "pressure-compensating"),
        ({"area": "600 m²", "length": "120 m", "flow": "30 L/min", "daily": "8000 L/day"},
         "inside diameter of 21.2"),
        ({"holds": "steady", "pressure": "0.5 bar"}, "Raise the pressure"),
        ({"pressure": "6 bar"}, "pressure-reducing valve"),
        ({"filter": "no"}, "filter of 120 mesh"),
        ({"made": "25 %"}, "coefficient of variation is"),
    ],
)  # fmt: skip
def test_a_fix_that_works_is_offered(texts, words):
    assert words in said(**texts)


def test_a_tank_is_offered_only_where_the_source_brings_enough_in_a_day():
    assert "fill a tank" not in said(**{**ACRE, "flow": "5 L/min"})


def test_area_that_is_left_dry_is_said():
    """No fix claims that all of it is watered."""
    (fix,) = (one for one in answer(daily="100 L/day").fixes if "leave the rest dry" in one.text)
    assert re.search(r"Water [\d.]+\u00a0m² and leave the rest dry", fix.text)


# Working, tables, picture -----------------------------------------------------------------------


def test_the_working_holds_however_awkward_the_form():
    for *_, one in WORKED[:60]:
        check_working(one.whole())


def test_the_table_of_a_line_is_that_of_its_drippers():
    one, table = case(length="60 m"), answer(length="60 m").tables[0]
    for at, pressure, flow in table.rows:
        index = round(at / one.line.spacing) - 1
        assert pressure == one.solved.pressures[index] and flow == one.solved.flows[index]
    assert len(table.rows) == 8


def test_the_table_of_lengths_grows_with_the_bore():
    table = answer(bore="15 mm").tables[1]
    assert [row[0] for row in table.rows] == sorted([*practice.DRIP_BORES, 0.015])
    lengths = [row[1] for row in table.rows]
    assert lengths == sorted(lengths) and table.rows[table.marked[0]][0] == pytest.approx(0.015)


@pytest.mark.parametrize("texts", [{}, ACRE, {"length": "60 m", "slope": "10 %"}, {"zones": "1"}])
def test_the_picture_is_to_scale_and_marks_what_is_wrong(texts):
    one, numbers = answer(**texts), case(**texts)
    (picture,) = one.drawings
    assert list(faults(picture)) == []
    shapes = {m.at: m for m in marks(picture) if isinstance(m, Block | Stroke) and m.at}
    line = shapes["pressure"].points
    ground = shapes["line"].points[0][1]
    high = [ground - line[0][1], ground - line[-1][1]]
    assert high[1] / high[0] == pytest.approx(numbers.solved.pressures[-1] / numbers.pressure)
    wrong = {each.key for each in one.findings}
    assert (shapes["pressure"].role == "bad") == ("uneven" in wrong)
    for name, key, asked, had in (
        ("hours a day", "too-long", numbers.time, numbers.hours),
        ("flow of a zone", "zone-flow", numbers.zone_flow, numbers.flow),
        ("water a day", "too-little", numbers.water, numbers.daily),
    ):
        assert (f"over {name}" in shapes) == (key in wrong)
        drawn = shapes[f"asked {name}"].width / shapes[f"had {name}"].width
        assert drawn == pytest.approx(min(asked, had) / had)


# Advice and errors ------------------------------------------------------------------------------


def test_cautions_of_the_trade_stand_on_the_page():
    told = " ".join((*SHEET.cautions, *answer().cautions))
    for word in ("backflow preventer", "air gap", "vacuum breaker", "fertiliser", "frost", "dig",
                 "pressure-reducing valve", "1.4 bar", "local"):  # fmt: skip
        assert word in told.replace("\u00a0", " "), word
    assert "20 psi" in " ".join(answer("us").cautions).replace("\u00a0", " ")


@pytest.mark.parametrize(
    "field, text, more",
    [
        ("area", "0 m²", {}),
        ("area", "-5 m²", {}),
        ("length", "200 m", {}),  # more row than the area has
        ("length", "400 m", {"area": "1000 m²"}),  # more drippers than are worked out
        ("spacing", "5 m", {"length": "2 m"}),
        ("zones", "2.5", {}),
        ("zones", "9", {}),  # of six lines
        ("slope", "20 %", {"length": "60 m", "pressure": "0.5 bar"}),  # climbs out of the pressure
        ("slope", "50 %", {}),
        ("warmest", "10 °C", {"coolest": "15 °C"}),
        ("month", "dec", {"latitude": "70°", "warmest": "1 °C", "coolest": "-2 °C"}),
        ("hours", "0", {}),
        ("hours", "30", {}),
        ("flow", "0 L/min", {}),
        ("dripper", "0 L/h", {}),
        ("humid", "120 %", {"climate": "full"}),
        ("reaches", "110 %", {}),
        ("bore", "1 mm", {}),
    ],
)
def test_a_bad_entry_is_said_at_its_field(field, text, more):
    outcome = work(SHEET, State(texts={**more, field: text}))
    assert outcome.answer is None and set(outcome.errors) == {field}


@pytest.mark.parametrize(
    "months, place",
    [
        ("jul,6 mm;jul,5 mm", "months.1.at"),
        ("jan,0 mm", "months"),
        ("jul,-2 mm", "months.0.et"),
        ("jul,60 mm", "months.0.et"),
        ("jul,", "months.0.et"),
    ],
)
def test_a_bad_month_is_said_beside_its_row(months, place):
    outcome = work(SHEET, State(texts={"climate": "months", "months": months}))
    assert outcome.answer is None and set(outcome.errors) == {place}


def test_a_line_that_climbs_out_of_its_pressure_is_told_by_how_much():
    outcome = work(SHEET, State(texts={"slope": "20 %", "length": "60 m", "pressure": "0.5 bar"}))
    told = outcome.errors["slope"].replace("\u00a0", " ")
    assert "climb of 12.0 m" in told and "0.500 bar" in told and "shorter one" in told


@pytest.mark.parametrize("key", ["reaches", "made", "rated", "filter", "least", "wind", "above"])
def test_not_knowing_is_an_answer(key):
    texts = {"climate": "full", "holds": "steady" if key == "least" else "plain", key: "?"}
    outcome = work(SHEET, State(texts=texts))
    assert outcome.errors == {} and key in {one.key for one in outcome.assumed}


# The site ---------------------------------------------------------------------------------------


def test_alder_terraces_water_is_what_comes_in_less_what_all_else_uses():
    """6 L/min for 6 h, less 6 people at 100 L and the animals; not less the beds' own water."""
    filled = views.fill(alder_terrace(), "drip", "now/Herb terraces", digits=12)
    left = float(filled["daily"].text.split()[0])
    assert 2160 - 600 - 100 < left < 2160 - 600
    without = alder_terrace().put_rows("beds", ())
    again = views.fill(without, "drip", "now/Herb terraces", digits=12)
    assert again["daily"].text == filled["daily"].text and not again["area"].known


def test_a_garden_on_drip_is_asked_about_before_other_outlets():
    assert views.choices(alder_terrace(), "drip")[0][0] == "now/Herb terraces"
    assert views.asked_of(alder_terrace(), "drip").outlet == "Herb terraces"
    assert views.asked_of(alder_terrace(), "reach").outlet != "Herb terraces"


def test_the_month_is_the_one_in_which_sun_and_warmth_take_the_most():
    filled = views.fill(alder_terrace(), "drip", "now/Herb terraces")
    assert filled["month"].text == "jul" and filled["light"].text.startswith("7.5")
    warm, cool = (float(filled[key].text.split()[0]) for key in ("warmest", "coolest"))
    assert (warm + cool) / 2 == pytest.approx(23.4) and warm - cool == practice.AIR_SWING


# The guide --------------------------------------------------------------------------------------


def guide():
    path = Path(__file__).resolve().parents[2] / "docs" / "drip.md"
    return " ".join(path.read_text(encoding="utf-8").split())


def test_the_short_answer_says_what_the_calculator_finds():
    short = guide().partition("**Short answer.**")[2].partition("```")[0]
    one = case(**ACRE)
    assert 14.5 < one.water < 15.5 and "about 15 000 L (4200 gal)" in short
    us = case("us", **KNOWN | {"et": "0.24 in"}, area="0.5 acre", rows="5 ft", crop="tomato",
              flow="5 gpm", pressure="20 psi", hours="8", length="100 ft")  # fmt: skip
    assert round(us.water / 3.785411784e-3, -2) == 4200
    assert us.zones == 9 and us.time / 3600 == pytest.approx(15, abs=0.1)
    assert one.zones >= 9 and one.time >= us.time
    assert "15 hours or more" in short and "nine zones or more" in short


def test_what_the_guide_says_of_lines_is_what_is_worked_with():
    text = guide()
    good, most = practice.FLOW_VARIES
    assert f"within {100 * good:g} %" in text and f"up to {100 * most:g} % is accepted" in text
    assert f"From {100 * practice.EMISSION[0]:g} % on it is good" in text
    assert f"below {100 * practice.EMISSION[1]:g} % it is poor" in text
    assert f"{100 * practice.EXTRA_LENGTH:g} % of length for barbs" in text
    assert "about 36 %" in text and round(1 / 2.75, 2) == 0.36
    assert "give 5 % less where the pressure is 10 % lower" in text
    assert math.sqrt(0.9) == pytest.approx(0.95, abs=0.002)
    assert practice.DRIP_SCREEN == 0.13e-3 and "120 mesh (0.13 mm)" in text
