"""Panels and battery: figures worked out apart, what is found, fixes followed, words, pictures."""

import dataclasses
import re
from functools import partial

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import practice
from calc.page.shapes import Block
from calc.power import design
from calc.power.array import Array, usual_module
from calc.power.battery import Battery
from calc.power.controller import Controller
from calc.power.motor import Draw, through_controller
from calc.power.year import Backup, System, Weather, simulate
from calc.sheets import sheet
from calc.sheets.parts import solar_drawing, solar_fixes, solar_judge
from calc.sun import days as sun_days
from calc.sun import hours as sun_hours
from calc.sun.plane import Plane
from calc.units import HOUR, MONTHS, Reader
from tests.page.pictures import faults, named
from tests.sheets import asking, few, solar
from tests.sheets.solar import FROSTY, NORTH, SOUTH
from tests.sheets.working import check_working

PANELS = sheet("panels")
SYSTEMS = ("metric", "us")
answer = partial(asking.answer, PANELS)
case = partial(solar.case, PANELS)
found = partial(solar.found, PANELS)

BASE = {
    **NORTH, "use": "1000 L/day", "flow": "15 L/min", "watts": "300 W", "rated": "250 W",
    "series": "1", "strings": "2", "kind": "lfp", "volts": "24", "ah": "100 Ah", "tank": "0 L",
    "fail": "5", "tilt": "55°", "shade": "0 %", "limit": "100 V", "amps": "30 A",
    "pattern": "home",
}  # fmt: skip
SMALL = {**BASE, "strings": "1", "ah": "30 Ah", "fail": "0"}


def by_hand(sun, air, latitude, index, **more):
    """A ``Year`` of SMALL by the rooms below, from the numbers alone."""
    made = sun_days.years([3.6e6 * one for one in sun], latitude, 1, 20)
    seen = sun_hours.sun_hours(latitude)
    view = sun_hours.facing(seen, Plane(55 * 3.141592653589793 / 180, 3.141592653589793))
    level = sun_hours.level_from_days(seen, made[index])
    warm = sun_hours.air_hours([273.15 + one for one in air])
    lit = sun_hours.series(view, level, warm)
    weather = Weather(lit.plane, lit.module, lit.air)
    system = System(
        Array(usual_module(250.0), 1, 1), Controller("mppt", 100.0, 30.0),
        Battery("lfp", 24.0, 720.0 * HOUR), Draw(300.0, 15e-3 / 60, 5.0),
    )  # fmt: skip
    demand = case(**SMALL).demand
    assert demand.by_month == pytest.approx((1.0,) * 12)
    return simulate(weather, dataclasses.replace(system, **more), demand)


@pytest.mark.parametrize("tank", [0.0, 0.3])
def test_figures_are_those_of_a_year_worked_out_apart(tank):
    one, texts = case(**SMALL), {**SMALL, "tank": f"{tank} m³"}
    latitude = 41.25 * 3.141592653589793 / 180
    year = by_hand(solar.NORTH_SUN, solar.NORTH_AIR, latitude, one.dullest, tank_m3=tank)
    figures = solar.figures(PANELS, **texts)
    assert figures["Days short in that year"] == year.short_days
    assert figures["Hours with too little water"] == year.dry_hours
    assert figures["Water not served"] == pytest.approx(year.unserved / year.asked, abs=1e-12)
    assert figures["Lowest charge of the battery"] == pytest.approx(year.lowest)
    assert figures["Sun that finds no use"] == pytest.approx(year.spilled / year.array)
    assert figures["Battery lasts, in years"] == pytest.approx(year.lasts / (365 * 86400))
    assert year.short_days > 0  # so that it is a year with something in it


def test_a_backup_is_worked_out_apart_too_and_only_a_generator_takes_fuel():
    texts = {**SMALL, "backup": "generator", "aid": "800 W", "aidhours": "3"}
    year = case(**texts).year
    alone = simulate(
        case(**SMALL).weather, dataclasses.replace(case(**SMALL).system, backup=Backup(800.0, 3.0)),
        case(**SMALL).demand,
    )  # fmt: skip
    figures = solar.figures(PANELS, **texts)
    assert (
        figures["Backup runs, hours a year"] == pytest.approx(alone.backup_hours) and year == alone
    )
    assert figures["Backup runs, hours a year"] * 800 == pytest.approx(year.aided / HOUR)
    # a litre for each kWh
    assert figures["Fuel a year"] == pytest.approx(year.aided / 3.6e6 * 1e-3) and year.aided > 0
    mains = solar.figures(PANELS, **{**texts, "backup": "mains"})
    assert "Fuel a year" not in mains and mains["Backup runs, hours a year"] > 0
    assert "Backup runs, hours a year" not in solar.figures(PANELS, **SMALL)
    assert case(**texts).year.unserved < case(**SMALL).year.unserved


# What is found ------------------------------------------------------------------------------------


@pytest.mark.parametrize("system", SYSTEMS)
def test_too_many_short_days_do_not_work_and_as_many_as_are_allowed_do(system):
    short = case(**SMALL).year.short_days
    assert short > 1
    over = answer(system, **{**SMALL, "fail": str(short - 1)})
    assert over.verdict.word == "Does not work"
    assert f"on {short} days" in over.verdict.sentence
    assert f"allow {short - 1}" in over.verdict.sentence
    just = answer(system, **{**SMALL, "fail": str(short)})
    assert just.verdict.word == "Works" and f"all but {short} days" in just.verdict.sentence


def test_none_allowed_is_said_as_none():
    assert "you allow none" in answer(**SMALL).verdict.sentence


def test_frost_on_lithium_is_borderline_and_on_lead_is_not():
    texts = {**BASE, **FROSTY, "strings": "8", "ah": "600 Ah", "fail": "100", "amps": "200 A"}
    frosty = answer(**texts)
    assert frosty.verdict.word == "Borderline" and found(**texts)["frost"] == "care"
    one = case(**texts)
    air = one.weather.air_k
    days = len({hour // 24 for hour, kelvin in enumerate(air) if kelvin < 273.15})
    assert f"On {days} days" in frosty.verdict.sentence and 20 < days < 200
    lead = answer(**{**texts, "kind": "agm"})
    assert "frost" not in {one.key for one in lead.findings} and lead.verdict.word == "Works"


def test_what_serves_works():
    good = answer(**{**BASE, "strings": "6", "ah": "400 Ah"})
    assert good.verdict.word == "Works"
    assert good.verdict.sentence.startswith("6 panels of 250\u00a0W and a battery of 9600\u00a0Wh")
    assert "serve every day of the dullest of twenty years" in good.verdict.sentence


def test_sun_that_finds_no_use_is_a_note_only_where_the_days_are_served():
    plenty = {**BASE, "strings": "8", "ah": "400 Ah"}
    share = solar.figures(PANELS, **plenty)["Sun that finds no use"]
    assert share > solar_judge.MUCH and found(**plenty)["unused"] == "note"
    assert f"{round(100 * share)} %" in asking.warned(PANELS, **plenty)
    assert "unused" not in found(**{**plenty, "pattern": "home", "use": "9000 L/day"})


def test_a_battery_drawn_deep_each_day_is_said_to_wear_out():
    texts = {**BASE, "kind": "agm", "pattern": "dawn", "ah": "20 Ah", "strings": "4", "fail": "365"}
    assert found(**texts)["battery-life"] == "care"
    years = solar_judge.lasts(case(**texts))
    assert years < 3 and f"{years:.1f} years" in asking.warned(PANELS, **texts)
    assert "battery-life" not in found(**{**texts, "ah": "400 Ah"})


def test_a_pump_too_slow_for_the_busiest_hour_is_named_and_not_the_panels():
    slow = {**BASE, "strings": "20", "ah": "900 Ah", "flow": "1.2 L/min", "watts": "30 W"}
    busiest = 1000 * max(case(**slow).demand.shares) / 60
    assert busiest > 1.2
    one = answer(**slow)
    assert one.verdict.level == "bad" and "busiest hour" in one.verdict.sentence
    assert f"{busiest:.3g}" in one.verdict.sentence and "panel" not in one.verdict.sentence
    with_tank = found(**{**slow, "tank": "2000 L"})
    assert "too-slow" not in with_tank
    fast = found(**{**slow, "flow": f"{busiest * 1.0001} L/min"})
    assert "too-slow" not in fast


def test_a_pump_too_slow_for_a_day_is_named_whatever_the_tank():
    slow = {**BASE, "flow": "0.69 L/min", "watts": "30 W", "tank": "9000 L"}  # 993.6 L a day
    one = answer(**slow)
    assert one.verdict.level == "bad" and "in 24 hours" in one.verdict.sentence
    assert "too-slow" not in found(**{**slow, "flow": "0.7 L/min"})


@pytest.mark.parametrize("key", ["panels", "battery", "direct"])
def test_a_string_too_long_for_the_cold_is_refused_with_how_many_would_do(key):
    one = sheet(key)
    # 60 cells of 250 W: 41.5 V at 25 degC, 0.3 % more a kelvin; the coldest hour -12.9 degC
    cold = 41.5 * (1 + 0.003 * (25 - (7.0 - practice.COLDEST_BELOW)))
    texts = {**NORTH, "rated": "250 W", "strings": "1", "limit": "200 V"}
    most = int(200 // cold)
    assert most == 4
    refused = asking.outcome(one, **texts, series=str(most + 1))
    assert refused.answer is None and f"Put up to {most} in series" in refused.errors["series"]
    assert asking.outcome(one, **texts, series=str(most)).errors == {}
    colder = asking.outcome(one, **texts, series=str(most), coldest="-45 °C")
    assert "series" in colder.errors


def test_the_cold_voltage_is_said_in_the_working_and_the_cautions():
    one = answer(**{**BASE, "openv": "38 V", "coldest": "-15 °C"})
    volts = 38 * (1 + 0.003 * 40)
    assert next(step for step in one.steps if "coldest" in step.title).result.value == (
        pytest.approx(volts)
    )
    assert f"{volts:.3g}\u00a0V" in one.cautions[0]


@pytest.mark.parametrize(
    "texts, word",
    [({"kind": "flooded"}, "explosive gas"), ({"backup": "generator"}, "exhaust kills")],
)
def test_gas_and_exhaust_are_warned_of_where_there_are_any(texts, word):
    assert word in " ".join(answer(**{**BASE, **texts}).cautions)
    assert word not in " ".join(answer(**BASE).cautions)


@pytest.mark.parametrize("texts, field", [({"openv": "1 V"}, "openv"), ({"rated": "0 W"}, "rated")])
def test_a_panel_that_cannot_be_is_said_at_its_field(texts, field):
    errors = asking.outcome(PANELS, **{**BASE, **texts}).errors
    assert list(errors) == [field]


# More of anything never serves less ---------------------------------------------------------------


@given(
    st.integers(1, 4), st.integers(20, 300), st.floats(0, 3), st.floats(300, 2500),
    st.sampled_from(("panels", "battery", "tank")), st.floats(1.1, 3.0),
)  # fmt: skip
@settings(max_examples=15, deadline=None)
def test_more_panels_battery_or_tank_never_miss_more_water(strings, ah, tank, use, what, times):
    """In air without frost, a cut-out in Wh, equal energy and water at the start: see year.py."""
    texts = {**BASE, **solar.TROPIC, "tilt": "10°", "use": f"{use} L/day", "strings": str(strings),
             "ah": f"{ah} Ah", "tank": f"{tank} m³"}  # fmt: skip
    one = case(**texts)
    kept = dataclasses.replace(one.system.battery, reserve_j=one.system.battery.reserve)
    system = dataclasses.replace(one.system, battery=kept)
    more = {
        "panels": design.with_size(system, strings + 1, kept.energy_j, tank),
        "battery": design.with_size(system, strings, times * kept.energy_j, tank),
        "tank": design.with_size(system, strings, kept.energy_j, tank * times + 0.3),
    }[what]
    start = kept.energy_j, tank
    less, most = (simulate(one.weather, each, one.demand, *start) for each in (system, more))
    assert most.unserved <= less.unserved + 1e-9


@pytest.mark.parametrize(
    "texts", [{"strings": "2"}, {"strings": "5"}, {"tank": "1000 L"}, {"tank": "4000 L"}]
)
def test_more_panels_or_tank_in_the_form_never_miss_more(texts):
    assert (
        solar.figures(PANELS, **{**SMALL, **texts})["Water not served"]
        <= solar.figures(PANELS, **SMALL)["Water not served"]
    )


# Fixes --------------------------------------------------------------------------------------------


def test_the_panels_a_fix_names_are_the_fewest_that_do():
    one = case(**{**SMALL, "ah": "60 Ah"})
    (change,) = solar_fixes._more_panels(one)
    strings = int(change.texts["strings"])
    made = {n: case(**{**SMALL, "ah": "60 Ah", "strings": str(n)}).year.short_days
            for n in (strings - 1, strings)}  # fmt: skip
    assert made[strings] <= one.most < made[strings - 1]
    assert f"{strings} panels" in change.text


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("what", ["_more_battery", "_tank"])
def test_the_battery_or_tank_a_fix_names_is_enough_and_smaller_sizes_are_not(what, system):
    texts = {**SMALL, "strings": "3", "ah": "30 Ah"}
    reader, one = Reader(system), case(system, **texts)
    assert one.year.short_days > 0
    arguments = (frozenset({"short-days"}),) if what == "_more_battery" else (reader,)
    (change,) = getattr(solar_fixes, what)(one, *arguments)
    after = case(system, **{**texts, **change.texts})
    assert after.year.short_days == 0 and "no day falls short then" in change.text
    key = next(iter(change.texts))
    # the next smaller of the sizes that are tried is half the tank, five sixths of the battery
    less = {"ah": 0.8, "tank": 0.45}[key] * (
        solar.values(PANELS, system, **{**texts, **change.texts}).numbers[key]
    )
    unit = "Ah" if key == "ah" else "m³"
    smaller = less / HOUR if key == "ah" else less
    assert case(system, **{**texts, key: f"{smaller} {unit}"}).year.short_days > 0


@pytest.mark.parametrize(
    "texts", [SMALL, {**BASE, **SOUTH, "ah": "20 Ah"}, {**BASE, "ah": "20 Ah"}]
)
def test_a_fix_of_a_small_system_makes_it_work(texts):
    one = answer(**texts)
    linked = [fix for fix in one.fixes if fix.link]
    assert one.verdict.level == "bad" and linked
    state = asking.State("metric", texts)
    for fix in linked:
        after = few.opened(fix.link, PANELS, state).answer
        assert "short-days" not in {finding.key for finding in after.findings}, fix


# Tables, working and pictures ---------------------------------------------------------------------


@pytest.mark.parametrize("texts", [BASE, {**SMALL, "control": "pwm"}, {**BASE, "season": "north"}])
def test_the_working_gives_what_it_says(texts):
    assert check_working(answer(**texts)) >= 4


def test_the_quick_method_beside_the_year_is_the_quick_method():
    one = case(**SMALL)
    hand = design.by_hand(one.weather, one.demand, one.system, 3.0)
    table = answer(**SMALL).tables[1]
    these, quick = table.rows
    assert these == ("These", "1", pytest.approx(30 * 24 * HOUR), str(one.year.short_days))
    assert quick[1] == str(hand.strings) and quick[2] == pytest.approx(hand.energy_j)
    made = design.with_size(one.system, hand.strings, hand.energy_j, 0.0)
    year = simulate(one.weather, made, one.demand)
    assert quick[3] == str(year.short_days)
    compared = design.compare(one.weather, one.demand, one.system, 3.0)
    shares = [
        f"{round(100 * each)} %" for each in (compared.heat, compared.by_day, compared.spilled)
    ]
    assert re.findall(r"\d+ %", table.note) == shares
    assert f"runs of up to {compared.dull_days} day" in table.note


def test_what_one_more_changes_is_the_year_with_one_more():
    one = case(**SMALL)
    rows = answer(**SMALL).tables[0].rows
    energy, day = one.system.battery.energy_j, one.daily
    for row, size in zip(rows, ((1, 1, 0), (2, 1, 0), (1, 2, 0), (1, 1, 1)), strict=True):
        made = design.with_size(one.system, size[0], size[1] * energy, size[2] * day)
        year = simulate(one.weather, made, one.demand)
        assert row[1:] == (str(year.short_days), pytest.approx(year.unserved))


def test_rows_that_keep_to_the_days_allowed_are_marked():
    texts = {**BASE, "strings": "2", "ah": "60 Ah", "fail": "5"}
    table = answer(**texts).tables[0]
    assert table.marked == tuple(at for at, row in enumerate(table.rows) if int(row[1]) <= 5)
    assert 0 < len(table.marked) < 4


@pytest.mark.parametrize("texts", [SMALL, BASE, {**BASE, "ah": "900 Ah", "strings": "9"}])
def test_the_hatched_days_are_those_on_which_water_is_missing(texts):
    one = case(**texts)
    picture = solar_drawing.fortnight(one, Reader())
    missing = {
        at for at, day in enumerate(one.year.worst) if day.asked - day.served > 1e-9 * day.asked
    }
    hatched = {int(at.removeprefix("short ")) for at in named(picture) if at.startswith("short ")}
    assert hatched == missing
    how_many = len(missing)
    told = {0: "every day is served", 1: "1 day gets too little"}
    assert told.get(how_many, f"{how_many} days get too little water") in picture.alt
    assert not list(faults(picture))


def test_the_bars_of_sun_and_the_line_of_charge_are_to_scale():
    one = case(**SMALL)
    marks = named(solar_drawing.fortnight(one, Reader()))
    bars = [float(marks[f"sun {at}"]["height"]) for at in range(14)]
    energies = [day.array for day in one.year.worst]
    for bar, energy in zip(bars, energies, strict=True):
        # coordinates are written to a tenth
        assert bar == pytest.approx(solar_drawing.SUN_HIGH * energy / max(energies), abs=0.11)
    first = one.year.worst[0].day
    stored = [hour.stored for hour in one.hours[24 * first : 24 * (first + 14)]]
    heights = [y for _, y in points(marks["level"])]
    low, high = solar_drawing.STORE_TOP + solar_drawing.STORE_HIGH, solar_drawing.STORE_HIGH
    full = one.system.battery.energy_j / HOUR
    for y, wh in zip(heights, stored[:: solar_drawing.STEP], strict=True):
        assert y == pytest.approx(low - high * wh / full, abs=0.06)
    cut = points(marks["cut-out"])[0][1]
    assert cut == pytest.approx(low - high * 0.2, abs=0.06)  # a fifth of lithium is kept


def points(attributes):
    """(x, y) of a line in the picture, to a tenth."""
    return [tuple(map(float, pair.split())) for pair in re.split("[ML]", attributes["d"])[1:]]


@pytest.mark.parametrize("texts", [BASE, SMALL, {**BASE, **SOUTH}])
def test_the_months_picture_names_the_month_with_least_to_spare(texts):
    one = case(**texts)
    picture = solar_drawing.months(one, Reader())
    share = 0.97 * 0.98 * 0.97 * 0.95  # dust, unlike panels, wires; the controller
    at, spare = 0, []
    for month, count in enumerate(sun_days.MONTH_DAYS):
        light = HOUR * sum(one.weather.plane[at : at + 24 * count]) / count / 1000
        at += 24 * count
        brought = light * one.system.array.rated_w * share
        taken = 1.0 / 15e-3 * 60 * 300 + 86400 * 7
        spare.append((brought / taken, month))
        bar = next(each for each in picture.shapes
                   if isinstance(each, Block) and each.at == f"month {month}")  # fmt: skip
        assert (bar.role == "bad") == (brought < taken)
    assert MONTHS[min(spare)[1]] in picture.alt
    assert not list(faults(picture))


def test_a_pump_on_ac_takes_what_its_inverter_takes_too():
    given = {**BASE, "feed": "ac", "inverter": "1000 W", "noload": "12 W", "standby": "5 W"}
    pump = case(**given).system.pump
    assert pump.power_w == pytest.approx(through_controller(300.0, 1000.0), rel=1e-12)
    assert pump.power_w > 300.0
    assert pump.standby_w == pytest.approx(17.0)
    assert answer(**given).findings != () or case(**given).year.served < case(**BASE).year.served


def test_an_inverter_that_is_too_small_is_said_at_its_field():
    errors = asking.outcome(PANELS, **BASE, feed="ac", inverter="100 W").errors
    assert list(errors) == ["inverter"]
