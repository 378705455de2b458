"""Sun straight into a tank: figures worked out apart, threshold, tank, picture, fixes."""

import re
from functools import partial

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import practice
from calc.page.state import State
from calc.pipe.line import Line, Section
from calc.power import direct
from calc.power.array import Array, usual_module
from calc.pump.invented import PUMPS
from calc.sheets import sheet
from calc.sheets.direct import drawing
from calc.sheets.direct.case import case_of
from calc.sheets.parts import solar_drawing
from calc.sheets.parts.pipe_choice import chosen_pipe
from calc.units import HOUR, Reader
from tests.page.pictures import faults, named
from tests.sheets import asking, few, solar
from tests.sheets.solar import NORTH
from tests.sheets.test_panels import points
from tests.sheets.working import check_working

DIRECT = sheet("direct")
answer = partial(asking.answer, DIRECT)
figures = partial(solar.figures, DIRECT)
found = partial(solar.found, DIRECT)
SHORT, MISSED = "Days short in that year", "Water not served"
BASE = {
    **NORTH, "use": "1000 L/day", "tank": "3000 L", "pump": "small", "climb": "12 m",
    "lift": "3 m", "length": "100 m", "extra": "10 %", "kind": "pe100-sdr11",
    "pe100-sdr11": "32", "water": "15 °C", "rated": "200 W", "series": "2", "strings": "1",
    "fail": "5", "tilt": "55°", "shade": "0 %", "limit": "150 V", "pattern": "home",
}  # fmt: skip


def case(system="metric", **texts):
    return case_of(solar.values(DIRECT, system, **{**BASE, **texts}))


def apart(strings=1, tank=3.0):
    """(table, ``DirectYear``) of BASE by the rooms below."""
    values = solar.values(DIRECT, **BASE)
    line = Line((Section(chosen_pipe(values), 110.0),), 0.0, 288.15)
    made = direct.table(PUMPS["small"], lambda flow: 15.0 + line.loss(flow), line.weight / 9.80665)
    panels = Array(usual_module(200.0), 2, strings)
    one = case()
    return made, direct.simulate(one.weather, panels, made, tank, one.demand)


@pytest.mark.parametrize("strings, tank", [(1, 3.0), (1, 0.8), (3, 1.5)])
def test_figures_are_those_of_a_year_worked_out_apart(strings, tank):
    made, year = apart(strings, tank)
    shown = figures(**{**BASE, "strings": str(strings), "tank": f"{tank} m³"})
    assert shown[SHORT] == year.short_days and year.asked == pytest.approx(365)
    assert shown[MISSED] == pytest.approx(year.unserved / year.asked, abs=1e-12)
    assert shown["Hours the pump runs in a year"] == year.running_hours
    assert shown["Power from which water comes"] == pytest.approx(made.starts_w)
    watts = strings * 400 * 0.97 * 0.98 * 0.97  # dust, unlike panels, wires
    assert shown["Flow in full sun"] == pytest.approx(made.flow(watts))
    assert shown["Days of water in a full tank"] == pytest.approx(tank * 86400)


@given(st.integers(1, 4), st.floats(0.3, 6.0), st.floats(1.05, 4.0))
@settings(max_examples=15, deadline=None)
def test_more_panels_or_a_larger_tank_never_miss_more_water(strings, tank, times):
    one = case(strings=str(strings), tank=f"{tank} m³")
    missed = one.year.unserved
    assert one.with_size(strings + 1, tank).year.unserved <= missed + 1e-9
    # full at the start, the larger tank holds more
    assert one.with_size(strings, times * tank).year.unserved <= missed + 1e-9


@pytest.mark.parametrize("texts", [{}, {"tank": "700 L"}, {"strings": "4", "tank": "20 m³"}])
def test_the_water_of_the_year_closes(texts):
    one = case(**texts)
    assert abs(one.year.water_gap) < 1e-9
    left = one.tank + one.year.pumped - one.year.served
    assert left == pytest.approx(drawing.levels(one)[-1], abs=1e-9 * one.year.pumped)


# Where water begins -------------------------------------------------------------------------------


def starts(watts):
    """Share of full sun from which water comes with so many W of panels."""
    return apart()[0].starts_w / (watts * 0.97 * 0.98 * 0.97)


def test_panels_that_never_start_the_pump_are_said_and_not_the_days():
    least = apart()[0].starts_w / (0.97 * 0.98 * 0.97)
    never = {**BASE, "series": "1", "rated": f"{0.99 * least} W"}
    one = answer(**never)
    assert found(**never)["never-starts"] == "stop" and one.verdict.level == "bad"
    assert "before water comes" in one.verdict.sentence
    needs, gives = map(float, re.findall(r"([\d.]+)\u00a0W", one.verdict.sentence))
    assert needs == pytest.approx(apart()[0].starts_w, rel=5e-3)  # three figures
    # what dust, unlike panels and wires leave: what it is compared with, so that it is less
    assert gives == pytest.approx(0.99 * needs, rel=5e-3) and gives < needs
    assert "never-starts" not in found(**{**never, "rated": f"{1.01 * least} W"})


def test_a_late_start_is_said_with_its_share_of_full_sun():
    for share, said in ((0.68, False), (0.72, True), (0.97, True)):
        watts = 400 * starts(400) / share
        texts = {**BASE, "series": "1", "rated": f"{watts} W", "fail": "365"}
        assert (found(**texts).get("dim") == "care") == said, share
        if said:
            assert (
                f"only from {round(100 * share)} % of full sun" in answer(**texts).verdict.sentence
            )


def test_more_panels_are_offered_for_a_pump_that_never_starts_and_start_it():
    texts = {**BASE, "series": "1", "rated": "120 W", "strings": "1"}
    one = answer(**texts)
    (fix, *_) = [each for each in one.fixes if each.link]
    after = few.opened(fix.link, DIRECT, State("metric", texts)).answer
    assert one.verdict.level == "bad" and not few.wrong(after)[0]


# Tank ---------------------------------------------------------------------------------------------


@pytest.mark.parametrize("tank", ["0 L", "-5 L", "0.5 L"])
def test_without_a_tank_it_is_refused_at_the_tank(tank):
    outcome = asking.outcome(DIRECT, **{**BASE, "tank": tank})
    assert outcome.answer is None and list(outcome.errors) == ["tank"]


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_larger_tank_it_names_is_enough(system):
    texts = {**BASE, "tank": "1100 L", "fail": "3"}
    before = answer(system, **texts)
    assert before.verdict.level == "bad"
    fix = next(each for each in before.fixes if "Choose a tank" in each.text)
    after = few.opened(fix.link, DIRECT, State(system, texts)).answer
    assert after.verdict.level == "good"


def test_the_panels_it_names_are_the_fewest():
    texts = {**BASE, "tank": "1500 L", "fail": "3"}
    fix = next(each for each in answer(**texts).fixes if "Put up" in each.text)
    strings = int(fix.link.values["strings"])
    short = [case(**{**texts, "strings": str(n)}).year.short_days for n in (strings - 1, strings)]
    assert short[1] <= 3 < short[0] and f"Put up {2 * strings} panels" in fix.text


def test_tanks_side_by_side_are_forms_and_this_one_is_marked():
    table = answer(**BASE).tables[1]
    assert len(table.rows) > 3
    for at, (volume, days, missed) in enumerate(table.rows):
        shown = figures(**{**BASE, "tank": f"{volume} m³"})
        assert days == f"{shown[SHORT]:.0f}"
        assert missed / 365 == pytest.approx(shown[MISSED], abs=1e-12)
        assert (at in table.marked) == (volume == pytest.approx(3.0))


def test_a_use_of_next_to_nothing_is_worked_out():
    assert answer(**{**BASE, "use": "0.1 L/day"}).tables[1].rows


def test_what_the_pump_gives_is_the_table_at_each_sun():
    made, _ = apart()
    for name, watts, flow in answer(**BASE).tables[0].rows:
        sun = float(re.match(r"\d+", name)[0])
        assert watts == pytest.approx(sun / 1000 * 400 * 0.97 * 0.98 * 0.97)
        assert flow == pytest.approx(made.flow(watts))


def test_a_full_tank_s_weight_and_the_cold_voltage_are_cautioned():
    one = answer(**BASE)
    assert "3000\u00a0kg" in one.cautions[1]
    # 23 V of a panel of 200 W, two in a string, 20 K below the coldest month's mean of 7 °C
    assert f"{2 * 23 * (1 + 0.003 * 38):.3g}\u00a0V" in one.cautions[0]


def test_a_height_out_of_reach_is_said_at_the_pump():
    assert list(asking.outcome(DIRECT, **{**BASE, "climb": "80 m"}).errors) == ["pump"]


@pytest.mark.parametrize("series, words", [("1", "One panel pumps"), ("2", "2 panels pump")])
def test_one_panel_pumps_and_two_pump(series, words):
    assert answer(**{**BASE, "series": series, "fail": "365"}).told.startswith(words)


# Words and picture --------------------------------------------------------------------------------


def test_days_short_over_those_allowed_do_not_work():
    texts = {**BASE, "tank": "1100 L"}
    short = int(figures(**texts)[SHORT])
    assert short > 2
    bad, good = (answer(**{**texts, "fail": str(short - less)}).verdict for less in (1, 0))
    assert (bad.level, good.level) == ("bad", "good")
    assert f"on {short} days" in bad.sentence and f"all but {short} days" in good.sentence


def balance(one):
    """m3 in the tank after each hour, from nothing but what comes and what is asked."""
    level, found_ = one.tank, []
    module, count = one.array.module, one.array.count
    rows = zip(one.weather.plane, one.weather.module_k, one.demand.hours, strict=True)
    for sun, kelvin, ask in rows:
        share = 0.97 * 0.98 * 0.97 * (1 + practice.PANEL_POWER_RISE * (kelvin - 298.15))
        level += HOUR * one.made.flow(max(0.0, count * module.rated_w * sun / 1000 * share))
        level = max(0.0, min(one.tank, level - ask))
        found_.append(level)
    return found_


@pytest.mark.parametrize("texts", [{"tank": "1500 L"}, {"strings": "3"}])
def test_the_line_of_the_tank_is_the_balance(texts):
    one = case(**texts)
    first = one.year.worst[0].day
    held = balance(one)[24 * first : 24 * (first + 14)]
    marks = named(drawing.draw(one, Reader())[0])
    low, high = solar_drawing.STORE_TOP + solar_drawing.STORE_HIGH, solar_drawing.STORE_HIGH
    for (_, y), level in zip(points(marks["level"]), held[:: solar_drawing.STEP], strict=True):
        assert y == pytest.approx(low - high * level / one.tank, abs=0.06)


@pytest.mark.parametrize("texts", [{"tank": "1100 L"}, {}, {"strings": "8", "tank": "9000 L"}])
def test_the_hatched_days_are_those_on_which_water_is_missing(texts):
    one = case(**texts)
    (picture,) = drawing.draw(one, Reader())
    held = balance(one)
    made = {day.day for day in one.year.worst if day.asked - day.served > 1e-9}
    hatched = {int(at.removeprefix("short ")) for at in named(picture) if at.startswith("short ")}
    first = one.year.worst[0].day
    assert {first + at for at in hatched} == made
    assert all(min(held[24 * day : 24 * day + 24]) == 0 for day in made)
    words = "every day is served" if not made else (
        "1 day gets too little" if len(made) == 1 else f"{len(made)} days get too little"
    )  # fmt: skip
    assert words in picture.alt and not list(faults(picture))
    lowest = round(100 * min(held[24 * first : 24 * (first + 14)]) / one.tank)
    assert f"falls to {lowest} % of its water" in picture.alt


@pytest.mark.parametrize("texts", [BASE, {**BASE, "pump": "middle", "season": "south"}])
def test_the_working_gives_what_it_says(texts):
    assert check_working(answer(**texts)) >= 3
