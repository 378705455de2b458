"""Where panels stand: the best tilt, the skyline, facings, and the picture of the sky."""

import itertools
import math
import random
from functools import partial

import pytest

from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.panel_place import drawing
from calc.sheets.panel_place.case import case_of, monthly
from calc.sheets.parts.sky import Stand
from calc.sun import tilt
from calc.sun.days import MONTH_DAYS
from tests.page.pictures import faults, named
from tests.sheets import asking, few, solar
from tests.sheets.working import check_working

PLACE = sheet("panel_place")
answer = partial(asking.answer, PLACE)
figures = partial(solar.figures, PLACE)
found = partial(solar.found, PLACE)
OPEN = {"skyline": ""}
SEASON = {"north": range(4, 10), "south": (10, 11, 12, 1, 2, 3)}
BEST = "Best tilt for what is needed"
GETS = "On the panels, as they are needed"


def form(key, **texts):
    return {**solar.PLACES[key], **OPEN, "tilt": "40°", "facing": "equator", **texts}


def case(key, **texts):
    return case_of(solar.values(PLACE, **form(key, **texts)))


def worth(daily, goal):
    """J/m2 a day: the least of twelve months, or the mean over the days of a season."""
    if goal == "worst":
        return min(daily)
    busy = SEASON.get(goal, range(1, 13))
    days = [MONTH_DAYS[month - 1] for month in busy]
    return sum(daily[m - 1] * d for m, d in zip(busy, days, strict=True)) / sum(days)


@pytest.mark.parametrize("goal", ["worst", "year", "north", "south"])
@pytest.mark.parametrize("key", ["north", "south", "tropic"])
def test_the_best_tilt_is_the_best_of_a_scan(key, goal):
    one = case(key, goal=goal)
    best = round(math.degrees(figures(**form(key, goal=goal))[BEST]))
    scan = {
        angle: worth(tilt.plane_means(one.place.sun, one.place.latitude, math.radians(angle)), goal)
        for angle in range(91)
    }
    assert best == max(scan, key=scan.get)


@pytest.mark.parametrize("goal", ["worst", "year"])
@pytest.mark.parametrize("key", ["north", "south", "tropic"])
def test_no_other_tilt_in_the_year_of_days_gives_much_more_than_the_best(key, goal):
    one = case(key, goal=goal)
    most = max(
        worth(monthly(one.place, Stand(math.radians(angle), one.best.azimuth)), goal)
        for angle in range(0, 91, 10)
    )
    # the best is of the mean days; the year's days scatter about them
    assert worth(one.ideal, goal) >= 0.97 * most


def test_the_light_is_that_of_the_goal():
    for goal in ("worst", "year", "north", "south"):
        one = case("north", goal=goal)
        assert figures(**form("north", goal=goal))[GETS] == pytest.approx(worth(one.daily, goal))


def test_light_on_level_panels_is_the_months_own():
    one = case("south", tilt="0°")
    for light, level in zip(one.daily, one.place.sun, strict=True):
        assert light == pytest.approx(level, rel=2e-3)  # days are rounded, hours near the horizon


# Skyline ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", ["north", "south", "tropic", "polar"])
def test_a_skyline_never_raises_any_month(key):
    rng = random.Random(key)
    for _ in range(4):
        count = rng.randint(1, 6)
        ways = rng.sample(range(0, 360, 5), count)
        line = ";".join(f"{way}°,{rng.randint(0, 40)}°" for way in ways)
        one = case(key, skyline=line)
        assert one.stand.line.points
        for hidden, free in zip(one.daily, one.open, strict=True):
            assert hidden <= free * (1 + 1e-9)


def test_a_higher_skyline_takes_more_and_the_share_is_said():
    shares = []
    for high in (0, 10, 25, 45):
        texts = form("north", skyline=f"90°,{high}°;180°,{high}°;270°,{high}°")
        one = case("north", skyline=texts["skyline"])
        share = 1 - worth(one.daily, "worst") / worth(one.open, "worst")
        assert figures(**texts)["Taken by what stands before the sun"] == pytest.approx(share)
        assert ("hidden" in found(**texts)) == (share > 0.1)
        if share > 0.1:
            text = next(f.text for f in answer(**texts).findings if f.key == "hidden")
            assert f"{round(100 * share)} % of the light in the dullest month" in text
            assert f"{round(100 * share)} %" in answer(**texts).drawings[0].alt
        shares.append(share)
    assert shares == sorted(shares) and shares[0] == pytest.approx(0, abs=1e-9) and shares[-1] > 0.3


def test_hills_behind_the_panels_take_less_than_hills_before_them():
    before, behind = (
        figures(**form("north", skyline=f"{a}°,0°;{b}°,25°;{c}°,0°"))[GETS]
        for a, b, c in ((90, 180, 270), (270, 0, 90))
    )
    assert before < behind


@pytest.mark.parametrize("line", ["90°,5°;90°,12°", "0°,5°;360°,9°"])
def test_two_heights_in_one_direction_are_refused_at_the_skyline(line):
    outcome = asking.outcome(PLACE, **form("north", skyline=line))
    assert outcome.answer is None and "two heights" in outcome.errors["skyline"]


# Facings ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", ["north", "south", "tropic"])
def test_east_and_west_are_alike_without_a_skyline(key):
    # the year's hours are the sun's own, so that mornings mirror evenings
    for month in range(12):
        east, west = (case(key, facing=way).daily[month] for way in ("e", "w"))
        assert east == pytest.approx(west, rel=0.01)


@pytest.mark.parametrize("key, toward, away", [("north", "s", "n"), ("south", "n", "s")])
def test_panels_face_the_midday_sun_of_their_hemisphere(key, toward, away):
    facing, named_, turned = (
        figures(**form(key, facing=way))[GETS] for way in ("equator", toward, away)
    )
    assert facing == pytest.approx(named_) and turned < 0.7 * facing
    assert "turned" not in found(**form(key, tilt="60°"))
    assert found(**form(key, tilt="60°", facing=away))["turned"] == "care"


def test_what_is_lost_by_tilt_and_facing_is_said_and_cured_by_the_fix():
    texts = form("north", facing="w", tilt="20°")
    one = answer(**texts)
    share = figures(**texts)["Lost by tilt and facing"]
    place = case("north", facing="w", tilt="20°")
    assert share == pytest.approx(1 - min(place.open) / min(place.ideal)) and share > 0.1
    assert f"lose {round(100 * share)} %" in one.verdict.sentence
    (fix,) = one.fixes
    after = few.opened(fix.link, PLACE, State("metric", texts)).answer
    assert after.verdict.level == "good"
    assert f"Tilt the panels by {math.degrees(place.best.slope):.0f}°" in fix.text


def test_the_mirrored_place_has_the_mirrored_year():
    north, south = case("north"), case("south")
    assert (north.equator, south.equator) == (math.pi, 0.0)
    for month in range(12):
        # months of other lengths, the sun nearer in January, other days' luck
        assert south.daily[month] == pytest.approx(north.daily[(month + 6) % 12], rel=0.12)
    assert sum(south.daily) == pytest.approx(sum(north.daily), rel=0.03)
    bests = [figures(**form(key))[BEST] for key in ("north", "south")]
    assert bests[0] == pytest.approx(bests[1], abs=math.radians(3))


def test_tables_are_forms_with_other_tilts_and_facings():
    months, tilts, facings = answer(**form("south")).tables
    one = case("south")
    for row, light, level in zip(months.rows, one.daily, one.place.sun, strict=True):
        assert row[1] == pytest.approx(level) and row[2] == pytest.approx(light)
    for name, *numbers in tilts.rows:
        other = case("south", tilt=name)
        least = min(other.daily)
        assert numbers == pytest.approx([least, least, sum(other.daily) / 12])
    ways = dict(zip(("e", "ne", "n", "nw", "w"), facings.rows, strict=True))
    for way, row in ways.items():  # the midday sun stands in the north
        daily = case("south", facing=way).daily
        assert row[1:] == pytest.approx((min(daily), min(daily), sum(daily) / 12)), row[0]
    assert [row[0].split()[-1] for row in facings.rows] == ["east", "east", "sun", "west", "west"]


def test_flat_panels_are_told_of_dust():
    assert found(**form("tropic", tilt="9°"))["flat"] == "note"
    assert "flat" not in found(**form("tropic", tilt="10.1°"))


def test_a_polar_night_counts_for_no_month():
    one = case("polar")
    lit = [light for light, free in zip(one.daily, one.ideal, strict=True) if free > 0]
    assert one.daily[11] == 0 and one.worth(one.daily) == min(lit) > 0


# The picture --------------------------------------------------------------------------------------


def compass(picture):
    """{name of a direction: x}."""
    return {
        one.text: one.x for one in picture.shapes if getattr(one, "text", "") in drawing.COMPASS
    }


@pytest.mark.parametrize("key, middle, right", [("north", "S", "W"), ("south", "N", "E"),
                                                ("tropic", "S", "W")])  # fmt: skip
def test_the_picture_looks_at_the_midday_sun(key, middle, right):
    marks = compass(drawing.draw(case(key)))
    centre = drawing.WIDTH / 2
    assert marks[middle] == pytest.approx(centre) and marks[right] > centre + 50


def declination(day):
    """Of the sun on a day, rad: Spencer (1971), written out."""
    angle = 2 * math.pi * (day - 1) / 365
    parts = ((0.399912, -0.070257), (0.006758, -0.000907), (0.002697, -0.00148))
    found_ = 0.006918
    for times, (even, odd) in enumerate(parts, 1):
        found_ -= even * math.cos(times * angle) + odd * math.sin(times * angle)
    return found_


@pytest.mark.parametrize("key", ["north", "south", "tropic", "polar"])
def test_the_sun_s_path_is_where_the_sun_stands(key):
    one = case(key)
    picture, middle = drawing.draw(one), case(key).equator
    low, high = drawing.TOP + drawing.HIGH, drawing.HIGH
    half = (drawing.WIDTH - 16) / 2
    drawn = {at: mark for at, mark in named(picture).items() if at.startswith("path")}
    assert drawn
    strokes = [shape for shape in picture.shapes if getattr(shape, "at", "").startswith("path")]
    for stroke in strokes:
        day = int(stroke.at.split()[1])
        lean = declination(day + 0.5)
        for x, y in stroke.points:
            turn = middle + (x - drawing.WIDTH / 2) / half * drawing.HALF
            up = (low - y) / high * math.pi / 2
            # sin(declination) of that direction: its part along the axis
            along = math.sin(up) * math.sin(one.place.latitude) + (
                math.cos(up) * math.cos(turn) * math.cos(one.place.latitude)
            )
            # an hour's mean direction is a little shorter than a direction
            assert along == pytest.approx(math.sin(lean), abs=0.02), stroke.at


@pytest.mark.parametrize("lat", [-23, -12, 0, 4, 12, 20])
def test_no_path_is_drawn_before_the_sun_where_it_passes_behind(lat):
    texts = {**form("tropic"), "lat": f"{lat}°"}
    one = case_of(solar.values(PLACE, **texts))
    picture = drawing.draw(one)
    wide = (drawing.WIDTH - 16) / 2
    for shape in picture.shapes:
        if getattr(shape, "at", "").startswith("path"):
            for (x0, y0), (x1, y1) in itertools.pairwise(shape.points):
                # near the zenith it turns fast, but then it is high
                high = max(y0, y1) < drawing.TOP + 0.35 * drawing.HIGH
                assert abs(x1 - x0) < wide / 3 or high, (shape.at, x0, x1)
    assert not list(faults(picture))


def test_the_skyline_is_drawn_to_scale():
    one = case("north", skyline="90°,12°;180°,20°;270°,30°")
    area = next(s for s in drawing.draw(one).shapes if getattr(s, "at", "") == "skyline")
    low = drawing.TOP + drawing.HIGH
    x, y = area.points[drawing.STEPS // 2]
    assert x == pytest.approx(drawing.WIDTH / 2)
    assert y == pytest.approx(low - drawing.HIGH * 20 / 90)
    shapes = drawing.draw(case("north")).shapes
    assert not [s for s in shapes if getattr(s, "at", "") == "skyline"]


@pytest.mark.parametrize("key", ["north", "south", "polar"])
def test_the_working_gives_what_it_says(key):
    texts = form(key, skyline="90°,5°;200°,8°", facing="se")
    one = answer(**texts)
    assert check_working(one) >= 2
