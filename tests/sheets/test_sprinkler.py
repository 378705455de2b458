"""The sprinkler sheet: closed forms, zones and hours, findings, fixes, picture, guide, errors."""

import math
import re
from functools import partial
from pathlib import Path

import pytest

from calc import practice
from calc.drip import sprinkler
from calc.errors import RangeError
from calc.page.form import read_values, work
from calc.page.shapes import Block, Stroke
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets import views
from calc.sheets.sprinkler.case import case_of
from calc.sheets.sprinkler.sheet import KINDS, SHEET, SOILS
from calc.site.demo import alder_terrace
from calc.site.facts import Fact
from tests.page.pictures import faults, marks
from tests.sheets import asking, few
from tests.sheets.asking import figure
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
found = partial(asking.found, SHEET)
HOURS, RATE, APART = (
    "Hours on the busiest day", "Water given in an hour", "Distance over wetted diameter",
)  # fmt: skip
MM_HOUR = 1e-3 / 3600
MANY = [(s, state, few.work(s, state, first=True)) for s, state in few.states("sprinkler", 150)]
WORKED = [(s, state, done.answer) for s, state, done in MANY if done.answer]


def case(system="metric", **texts):
    return case_of(read_values(SHEET, State(system, texts)))


# Physics ----------------------------------------------------------------------------------------


def test_a_quarter_of_the_pressure_gives_half_and_throws_short():
    one = sprinkler.Sprinkler(2e-4, 3e5, 2e5, 10.0)
    assert one.at(0.75e5) == pytest.approx(1e-4) and one.at(-1.0) == 0.0
    assert one.throws(2e5) == 10.0 and one.throws(1.9e5) == pytest.approx(6.0)


def test_the_rate_of_a_handbooks_example():
    """0.5 L/s on 18 m by 24 m is 4.2 mm an hour: handbooks of sprinkling, from memory."""
    assert sprinkler.application_rate(0.5e-3, 18.0, 24.0) / MM_HOUR == pytest.approx(4.17, abs=0.01)


@pytest.mark.parametrize("wind, share", [(0.0, 0.65), (1.8, 0.60), (3.6, 0.50), (8.0, 0.30)])
def test_the_windier_the_nearer(wind, share):
    """Still 65 %, 6.5 km/h 60 %, 13 km/h 50 %, more 30 % of the wetted diameter: handbooks of
    sprinkling, from memory."""
    assert sprinkler.apart(wind) == share


def test_what_cannot_be_is_refused():
    for bad in (lambda: sprinkler.apart(-1.0), lambda: sprinkler.application_rate(1e-4, 0.0, 4.0)):
        with pytest.raises(RangeError):
            bad()


@pytest.mark.parametrize("key, low, high", [
    ("sandy", 20, 30), ("loam", 10, 20), ("clayloam", 5, 10), ("clay", 1, 5),
])  # fmt: skip
def test_what_soils_take_in(key, low, high):
    """mm an hour: FAO Irrigation Water Management, Training Manual 5 (1988), from memory."""
    soil = practice.SOIL_BY_KEY[key]
    assert (soil.low / MM_HOUR, soil.high / MM_HOUR) == pytest.approx((low, high))


def test_the_form_offers_what_practice_knows():
    assert [key for key, _ in SOILS[:-1]] == [soil.key for soil in practice.SOILS]
    kinds = {key: practice.OUTLET_BY_KEY[key] for key, _ in KINDS}
    assert [kinds[key].name for key, _ in KINDS] == [name for _, name in KINDS]
    works = [kinds[key].works for key in ("micro", "spray", "sprinkler")]
    assert works == sorted(works) and all(kind.lasting for kind in kinds.values())


# Closed forms -----------------------------------------------------------------------------------


@pytest.mark.parametrize("texts", [{}, {"every": "1"}, {"area": "2000 m²", "flow": "80 L/min"}])
def test_what_is_given_is_what_plants_take_over_what_reaches_them(texts):
    one = case(**texts)
    ground = one.count * one.along * one.between
    assert one.water == pytest.approx(ground * one.depth / one.reaches, rel=1e-12)
    assert one.zone_time * one.rate == pytest.approx(one.depth * one.every / one.reaches)
    assert ground >= one.area > ground - one.along * one.between


def test_zones_are_the_fewest_that_the_source_feeds():
    for flow in (4.2, 9, 15, 30, 100):
        one = case(area="900 m²", flow=f"{flow} L/min")
        assert one.zone_flow <= one.flow * (1 + 1e-9)
        assert one.zones == 1 or one.flow < math.ceil(one.count / (one.zones - 1)) * one.each


def test_zones_are_spread_over_the_days():
    one = case(area="900 m²", every="4")
    assert one.zones_a_day * 4 >= one.zones > (one.zones_a_day - 1) * 4
    assert one.time == one.zones_a_day * one.zone_time


@pytest.mark.parametrize(
    "less, more",
    [({"flow": "40 L/min"}, {}), ({"depth": "3 mm"}, {"depth": "7 mm"}),
     ({"reaches": "85 %"}, {"reaches": "60 %"}), ({}, {"area": "700 m²"})],
)  # fmt: skip
def test_what_asks_for_more_never_takes_fewer_hours(less, more):
    base = {"area": "500 m²"}
    assert case(**{**base, **less}).time < case(**{**base, **more}).time


def test_an_own_rated_pressure_scales_what_it_works_from():
    assert case(kind="sprinkler").one.works_pa == practice.OUTLET_BY_KEY["sprinkler"].works
    half = case(kind="sprinkler", rated="20 psi")
    assert half.one.works_pa == pytest.approx(practice.OUTLET_BY_KEY["sprinkler"].works / 2)


# Judged -----------------------------------------------------------------------------------------


def test_the_example_works_in_both_systems():
    for system in ("metric", "us"):
        one = asking.answer(find_sheet("sprinkler"), system)
        assert one.verdict.word == "Works" and one.findings == ()


@pytest.mark.parametrize(
    "texts, finding, level",
    [
        ({"pressure": "19 psi"}, "weak", "stop"),
        ({"pressure": "21 psi"}, "weak", "care"),
        ({"pressure": "25 psi"}, "weak", "note"),
        ({"pressure": "31 psi"}, "weak", None),
        ({"kind": "sprinkler", "pressure": "29 psi"}, "weak", "stop"),
        ({"kind": "sprinkler", "pressure": "39 psi"}, "weak", "note"),
        ({"kind": "sprinkler", "pressure": "40 psi"}, "weak", None),
        ({"kind": "micro", "pressure": "16 psi"}, "weak", "care"),
        ({"flow": "3 L/min"}, "zone-flow", "stop"),
        ({"soil": "loam"}, "runoff", "care"),
        ({"soil": "clayloam"}, "runoff", "stop"),
        ({"soil": "sand"}, "runoff", None),
        ({"soil": "?"}, "soil", "care"),
        ({"soil": "none"}, "soil", "care"),
        ({"along": "5 m"}, "gaps", "care"),
        ({"between": "8.1 m", "along": "2 m"}, "gaps", "stop"),
        ({"wind": "3.7 m/s"}, "windy", "care"),
        ({"wind": "3 m/s"}, "gaps", None),
        ({"wind": "3.7 m/s"}, "gaps", "care"),
        ({"daily": ""}, "daily", "care"),
        ({"daily": "300 L/day"}, "too-little", "stop"),
        ({"hours": "0.5"}, "too-long", "stop"),
    ],
)
def test_what_is_wrong_is_found(texts, finding, level):
    assert found(**texts).get(finding) == level


def test_too_little_pressure_is_said_with_how_far_it_then_throws():
    (text,) = [one.text for one in answer(pressure="1 bar").findings if one.key == "weak"]
    assert "works from 1.38" in text and "60\u00a0% of its radius" in text
    assert "gaps" in found(pressure="1 bar")  # by the shorter radius


def test_no_form_is_greener_than_its_figures():
    """Judged from the figures alone, as a reader could."""
    assert len(WORKED) > 60
    for sheet, state, one in WORKED:
        green, values = one.verdict.word == "Works", read_values(sheet, state)
        soil = practice.SOIL_BY_KEY.get(values.soil)
        wrong = (
            figure(one, HOURS) > values.hours * (1 + 1e-6)
            or figure(one, APART) > sprinkler.apart(values.wind) * (1 + 1e-6)
            or soil is None
            or figure(one, RATE) / 3600 > soil.low * (1 + 1e-6)
            or values.daily is None
        )
        assert not (green and wrong), state


def test_sentences_are_short():
    for *_, one in WORKED:
        for finding in one.findings:
            assert len(finding.text.replace("\u00a0", "_").split()) <= 25, finding.text
            assert len(re.findall(r"\d[\d.,\u202f]*", finding.text)) <= 4, finding.text


# Fixes ------------------------------------------------------------------------------------------


def said(**texts):
    return " ".join(fix.text for fix in answer(**texts).fixes)


@pytest.mark.parametrize(
    "texts, words",
    [
        ({"pressure": "1.2 bar"}, "Raise the pressure"),
        ({"kind": "sprinkler", "pressure": "1.9 bar"}, "low-pressure sprinklers that work from"),
        ({"pressure": "1.2 bar"}, "microsprinklers that work from"),
        ({"soil": "loam"}, "nozzles of"),
        ({"along": "7 m"}, "up to 4.80"),
        ({"flow": "3 L/min"}, "Find a pump"),
        ({"flow": "3 L/min"}, "fill a tank"),
        ({"wind": "5 m/s"}, "as early as you can"),
        ({"hours": "0.5"}, "hours a day"),
        ({"daily": "300 L/day"}, "leave the rest dry"),
        ({"daily": "300 L/day"}, "second source"),
    ],
)
def test_a_fix_that_works_is_offered(texts, words):
    assert words in said(**texts).replace("\u00a0", " ")


def test_heavy_soil_is_sent_to_drip_where_no_nozzle_is_small_enough():
    assert "drip" in said(soil="clay", each="10 L/min", pressure="2.1 bar")


# Working, tables, picture -----------------------------------------------------------------------


def test_the_working_holds_however_awkward_the_form():
    for *_, one in WORKED[:60]:
        check_working(one.whole())


def test_the_table_of_soils_is_judged_as_the_answer_is():
    for key, word in (("sand", "takes it in"), ("loam", "may run off"), ("clay", "runs off")):
        table = answer(soil=key).tables[0]
        row = table.rows[table.marked[0]]
        level = found(soil=key).get("runoff")
        assert row[3] == word
        assert level == {"takes it in": None, "may run off": "care", "runs off": "stop"}[word]


def test_the_table_of_pressures_holds_this_one():
    one, table = case(), answer().tables[1]
    row = table.rows[table.marked[0]]
    assert row[0] == one.pressure and row[1] == one.each and row[3] == one.rate * 3600
    assert [r[1] for r in table.rows] == sorted(r[1] for r in table.rows)


@pytest.mark.parametrize("texts", [{}, {"along": "7 m"}, {"pressure": "1 bar"}, {"soil": "clay"}])
def test_the_picture_is_to_scale_and_marks_what_is_wrong(texts):
    one, numbers = answer(**texts), case(**texts)
    (picture,) = one.drawings
    assert list(faults(picture)) == []
    shapes = {m.at: m for m in marks(picture) if isinstance(m, Block | Stroke) and m.at}
    ground, circle = shapes["ground"], shapes["wetted 0"].points
    across = max(x for x, _ in circle) - min(x for x, _ in circle)
    assert across / ground.width == pytest.approx(2 * numbers.throws / numbers.along, rel=1e-3)
    assert ground.height / ground.width == pytest.approx(numbers.between / numbers.along)
    wrong = {each.key for each in one.findings}
    assert (shapes["wetted 0"].role == "bad") == bool(wrong & {"gaps", "weak"})
    assert ("over an hour on the soil" in shapes) == ("runoff" in wrong)


# The way on -------------------------------------------------------------------------------------


def test_the_pump_is_asked_for_a_zone_at_the_pressure_they_need():
    (link,) = [one for one in answer().links if one.sheet == "pump_match"]
    one = case()
    assert link.values["flow"].startswith(f"{one.zone_flow * 6e4:.4g}"[:4])
    assert float(link.values["wanted"].split()[0]) * 1e5 >= one.rated * 0.999


def test_drip_leads_here_with_the_water_its_plants_take():
    drip = find_sheet("drip")
    (link,) = [one for one in asking.answer(drip).links if one.sheet == "sprinkler"]
    opened = asking.answer(find_sheet("sprinkler"), **link.values)
    assert opened.verdict.word and link.values["area"].startswith("60")


def test_a_sprinkler_of_the_site_is_asked_about_before_other_outlets():
    site = alder_terrace()
    *first, last = site.rows("outlets")
    site = site.put_rows("outlets", (*first, {**last, "kind": Fact("sprinkler")}))
    name = site.word("outlets", last, "name")
    assert views.asked_of(site, "sprinkler").outlet == name != views.asked_of(site, "reach").outlet
    filled = views.fill(site, "sprinkler")
    assert filled["flow"].known and filled["pressure"].known


# Advice and errors ------------------------------------------------------------------------------


def test_cautions_of_the_trade_stand_on_the_page():
    told = " ".join((*SHEET.cautions, *answer().cautions)).replace("\u00a0", " ")
    for word in ("backflow preventer", "local code", "frost", "power lines", "dig", "2.8 bar",
                 "1.4 bar", "data sheet", "slope"):  # fmt: skip
        assert word in told, word
    us = " ".join(answer("us").cautions).replace("\u00a0", " ")
    assert "40 psi" in us and "20 psi" in us


@pytest.mark.parametrize(
    "field, text",
    [
        ("area", "0 m²"), ("area", "-5 m²"), ("each", "0 L/min"), ("radius", "0 m"),
        ("along", "0 m"), ("between", "-1 m"), ("pressure", "0 bar"), ("hours", "30"),
        ("wind", "-1 m/s"), ("every", "0"), ("every", "1.5"), ("depth", "0 mm"), ("reaches", "0 %"),
        ("rated", "20 bar"), ("flow", ""),
    ],
)  # fmt: skip
def test_a_bad_entry_is_said_at_its_field(field, text):
    outcome = work(SHEET, State(texts={field: text}))
    assert outcome.answer is None and set(outcome.errors) == {field}


@pytest.mark.parametrize("key", ["depth", "soil", "wind", "reaches", "rated", "daily"])
def test_not_knowing_is_an_answer(key):
    outcome = work(SHEET, State(texts={key: "?"}))
    assert outcome.errors == {} and key in {one.key for one in outcome.assumed}


# The guide --------------------------------------------------------------------------------------


def test_the_guide_says_what_the_calculator_works_with():
    path = Path(__file__).resolve().parents[2] / "docs" / "sprinkler.md"
    text = " ".join(path.read_text(encoding="utf-8").split())
    one = case(each="4 L/min", pressure="30 psi")
    assert one.rate / MM_HOUR == pytest.approx(15.0) and "gives 15 mm (0.6 in) an hour" in text
    for share in (65, 60, 50, 30):
        assert f"{share} %" in text
    for soil in practice.SOILS[1:]:
        low, high = round(soil.low / MM_HOUR), round(soil.high / MM_HOUR)
        assert f"| {soil.name.lower()} | {low} to {high} mm" in text
    assert "40 psi" in text and "20 psi" in text and "60 % of its radius" in text
    assert "about 13 % less" in text and 1 - math.sqrt(0.75) == pytest.approx(0.134, abs=1e-3)


def test_drip_says_where_sprinklers_are():
    path = Path(__file__).resolve().parents[2] / "docs" / "drip.md"
    assert "](sprinkler.md)" in path.read_text(encoding="utf-8")
