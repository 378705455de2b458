"""The years of a place: which one decides, how panels see it, and what cannot be a place."""

import gzip
import math
from pathlib import Path

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.parts import hourly, sky
from calc.sun.days import MONTH_DAYS, years
from calc.units import DAY
from tests.sheets import solar

KEYS = ("panels", "battery", "direct", "panel_place")
PANELS = sheet("panels")
SEASONAL = {"season": "south", "off": "20 %"}
NONE_ELSE = {"season": "north", "off": "0 %"}


def form(key, **texts):
    return solar.values(PANELS, **solar.PLACES[key], **texts)


def worst_of(year, asked):
    """J/m2 of light for each m3 asked in the dullest thirty days, counted anew each time."""
    found = []
    for first in range(365 - 30 + 1):
        light, use = (sum(days[first : first + 30]) for days in (year, asked))
        if use > 0:
            found.append(light / use)
    return min(found)


@pytest.mark.parametrize("texts", [{}, SEASONAL, NONE_ELSE], ids=["even", "south", "north only"])
@pytest.mark.parametrize("key", ["north", "south", "tropic"])
def test_the_year_that_decides_has_the_least_light_for_the_water_asked_in_thirty_days(key, texts):
    values = form(key, **texts)
    place, use = sky.place_of(values), sky.demand_of(values).by_month
    asked = [daily for daily, days in zip(use, MONTH_DAYS, strict=True) for _ in range(days)]
    worst = [worst_of(year, asked) for year in place.days()]
    assert len(worst) == 20
    chosen = place.dullest(use)
    # sums that run on differ in their last digits from sums made anew
    assert worst[chosen] == pytest.approx(min(worst), rel=1e-9)
    assert min(worst) < 0.98 * max(worst)  # so that it matters which


def test_the_season_of_use_can_decide_for_another_year():
    chosen = set()
    for texts in ({}, SEASONAL, NONE_ELSE):
        values = form("tropic", **texts)
        chosen.add(sky.place_of(values).dullest(sky.demand_of(values).by_month))
    assert len(chosen) > 1


def test_the_same_months_give_the_same_years_in_whatever_order_they_stand():
    rows = solar.NORTH["months"].split(";")
    first = sky.place_of(form("north")).days()
    sky._years.cache_clear()
    again = solar.values(PANELS, **solar.NORTH | {"months": ";".join(reversed(rows))})
    assert sky.place_of(again).days() == first
    assert len(set(first)) == 20


def test_the_years_are_made_of_the_form_s_own_months_and_latitude():
    place = sky.place_of(form("south"))
    sun = [3.6e6 * one for one in solar.turned(solar.NORTH_SUN)]
    assert place.sun == pytest.approx(sun) and place.latitude == pytest.approx(math.radians(-41.25))
    assert place.air == pytest.approx([273.15 + one for one in solar.turned(solar.NORTH_AIR)])
    assert place.days() == tuple(map(tuple, years(place.sun, place.latitude, sky.SEED, 20)))
    at = 0
    for month, count in enumerate(MONTH_DAYS):
        light = [sum(year[at : at + count]) for year in place.days()]
        # days are rounded to 100 J/m2, of some 5 million
        assert sum(light) / 20 / count == pytest.approx(sun[month], rel=1e-4)
        at += count


def test_a_year_s_hours_hold_the_light_of_its_days():
    place = sky.place_of(form("north"))
    level = place.year(3, sky.Stand(0.0, math.pi)).plane
    for day in range(0, 365, 7):
        # flat panels see all of the sky; light of an hour near the horizon may be clipped
        held = 3600 * sum(level[24 * day : 24 * day + 24])
        assert held == pytest.approx(place.days()[3][day], rel=2e-3)


def test_panels_face_the_midday_sun_of_their_hemisphere_unless_they_are_told_otherwise():
    assert sky.stand_of(form("north")).azimuth == math.pi
    assert sky.stand_of(form("south")).azimuth == 0.0
    for at, (word, _) in enumerate(PANELS.field("facing").options[1:]):
        assert sky.stand_of(form("south", facing=word)).azimuth == pytest.approx(at * math.pi / 4)


def test_a_place_turned_over_the_equator_has_the_same_light_half_a_year_later():
    north, south = (solar.case(PANELS, **solar.PLACES[key]) for key in ("north", "south"))
    light = [sum(one.place.year(0, one.stand).plane) for one in (north, south)]
    # another order of the same days' luck, another length of months, the sun nearer in January
    assert light[0] == pytest.approx(light[1], rel=0.05)


def test_panels_turned_from_the_sun_get_less():
    place = sky.place_of(form("south"))
    light = {
        azimuth: sum(place.year(0, sky.Stand(0.7, azimuth)).plane)
        for azimuth in (0.0, math.pi / 2, math.pi)
    }
    assert light[0.0] > light[math.pi / 2] > light[math.pi]


def test_no_light_falls_through_a_polar_night_and_every_sheet_works_it_out():
    place = sky.place_of(form("polar"))
    december = place.year(0, sky.Stand(1.2, math.pi)).plane[-24 * 31 :]
    assert max(december) == 0.0
    for key in KEYS:
        for system in ("metric", "us"):
            found = work(sheet(key), State(system, dict(solar.POLAR)))
            assert found.errors == {} and found.answer.steps and found.answer.tables
    assert solar.case(PANELS, **solar.POLAR).compared is None  # said by leaving it out


@pytest.mark.parametrize("key", KEYS)
def test_a_month_that_stands_twice_is_said_at_its_row(key):
    rows = solar.NORTH["months"].split(";")
    rows[4] = "3" + rows[4][1:]
    found = work(sheet(key), State("metric", {"months": ";".join(rows)}))
    assert found.answer is None and "March" in found.errors["months.4.month"]


@pytest.mark.parametrize("key", KEYS)
def test_a_month_with_more_sun_than_can_be_is_said_at_the_months(key):
    sun = list(solar.NORTH_SUN)
    sun[11] = 9.0
    texts = solar.place(41.25, sun, solar.NORTH_AIR)
    found = work(sheet(key), State("metric", texts))
    assert found.answer is None and "December has more sun" in found.errors["months"]


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("lat", ["95°", "-90.5°"])
def test_a_latitude_that_cannot_be_is_said_at_its_field(key, lat):
    found = work(sheet(key), State("metric", {**solar.NORTH, "lat": lat}))
    assert found.answer is None and list(found.errors) == ["lat"]


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("column, name", [(1, "sun"), (2, "air")])
def test_a_number_that_is_missing_is_said_at_its_cell(key, column, name):
    rows = [row.split(",") for row in solar.NORTH["months"].split(";")]
    rows[7][column] = ""
    texts = {**solar.NORTH, "months": ";".join(",".join(row) for row in rows)}
    found = work(sheet(key), State("metric", texts))
    assert found.answer is None and f"months.7.{name}" in found.errors


def test_eleven_months_are_not_enough():
    texts = {**solar.NORTH, "months": solar.NORTH["months"].rpartition(";")[0]}
    for key in KEYS:
        assert "months" in work(sheet(key), State("metric", texts)).errors


def test_shade_takes_its_share_of_the_light_in_every_hour():
    open_, shaded = (
        solar.case(PANELS, **solar.NORTH, shade=share).weather for share in ("0 %", "10 %")
    )
    assert shaded.plane == pytest.approx([0.9 * one for one in open_.plane])
    assert sum(open_.plane) > 0 and shaded.air_k == open_.air_k


@pytest.mark.parametrize(
    "season, busy", [("north", range(4, 10)), ("south", (10, 11, 12, 1, 2, 3))]
)
def test_the_share_of_the_other_months_is_asked_in_the_other_months(season, busy):
    values = form("north", use="1000 L/day", season=season, off="30 %")
    by_month = sky.demand_of(values).by_month
    for month, use in enumerate(by_month, 1):
        assert use == pytest.approx(1.0 if month in busy else 0.3), month


@pytest.mark.parametrize("pattern", ["home", "dawn", "day", "even"])
def test_a_day_asks_for_the_water_that_is_used(pattern):
    values = form("north", use="1000 L/day", pattern=pattern)
    hours = sky.demand_of(values).hours
    assert sum(hours[:24]) == pytest.approx(values.use * DAY) == pytest.approx(1.0)
    assert sum(hours) == pytest.approx(365.0)


def test_the_height_above_the_sea_need_not_be_known_for_any_of_them():
    for key in KEYS:
        found = work(sheet(key), State("metric", {**solar.NORTH, "altitude": "?"}))
        assert found.errors == {} and any(one.key == "altitude" for one in found.assumed)


# An hourly file ---------------------------------------------------------------------------------

TUCSON = Path(__file__).parents[1] / "sun" / "data" / "tucson.csv.gz"
FILE = {"weather": "file"}


@pytest.fixture
def tucson():
    yield hourly.keep(gzip.decompress(TUCSON.read_bytes()).decode())
    hourly.forget()


def test_an_open_file_is_the_one_year_of_the_place(tucson):
    place = sky.place_of(solar.values(PANELS, **{**solar.NORTH, "lat": "32.2°"}, **FILE))
    assert place.count == 1
    assert place.latitude == pytest.approx(math.radians(32.2))  # this file does not say where
    level = sky.Stand(0.0, math.pi)
    # panels lying flat see what falls on level ground, less what lies below the horizon's rounding
    assert sum(place.year(0, level).plane) == pytest.approx(sum(tucson.level), rel=0.01)
    assert sum(place.days()[0]) == pytest.approx(3600 * sum(tucson.level), rel=1e-9)


def test_a_file_that_is_not_open_leaves_the_months_and_the_page_says_so():
    assert hourly.kept() is None
    assert sky.place_of(form("north", **FILE)).count == 20
    answer = solar.first(PANELS, **solar.NORTH, **FILE)
    assert "no-file" in {one.key for one in answer.findings}


def test_the_verdict_names_the_year_of_the_file(tucson):
    answer = solar.first(PANELS, **solar.NORTH, **FILE, fail="365")
    assert answer.told.endswith("the year of the file.")
    assert "no-file" not in {one.key for one in answer.findings}


def test_an_open_file_is_taken_apart_once(tucson):
    before = sky.place_of(form("north", **FILE))
    assert sky.place_of(form("north", **FILE)) is before
