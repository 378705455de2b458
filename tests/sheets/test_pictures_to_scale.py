"""What is drawn is where the figures say, to half a unit, read back from the page's SVG."""

import re

import pytest

from calc import storage
from calc.page.form import work
from calc.page.state import State
from calc.pipe import pipes
from calc.sheets import sheet
from calc.units import LITRE, Reader, parse
from tests.page.pictures import named, texts
from tests.parity.cases import worked

HALF = 0.5  # units, which are less than a px on a phone
FEW = 40  # random requests of each sheet


def answers(key):
    for *_, outcome in worked(key, FEW):
        yield outcome.answer


def answer(key, system="metric", **given):
    return work(sheet(key), State(system, given)).answer


def figures(found):
    return {one.label: one.value for one in found.figures}


def step(found, title):
    return next(one.result.value for one in found.steps if one.title == title)


def drawn(found, number=0):
    return named(found.drawings[number])


def block(attributes):
    """(x, y, width, height) of a rectangle."""
    return tuple(float(attributes[name]) for name in ("x", "y", "width", "height"))


def points(attributes):
    """(x, y) of every corner of a line or an area."""
    return [
        (float(x), float(y)) for x, y in re.findall(r"[ML]([-\d.]+) ([-\d.]+)", attributes["d"])
    ]


def level(attributes):
    """y of a level line."""
    ((_, first), *_, (_, last)) = points(attributes)
    assert first == last
    return first


def near(value):
    return pytest.approx(value, abs=HALF)


# Suction ------------------------------------------------------------------------------------


def test_the_well_the_pump_and_the_ruler_are_as_high_as_the_figures_say():
    marked = 0
    for found in answers("suction"):
        told, shapes = figures(found), drawn(found)
        limit = step(found, "How high the air pressure can raise the water")
        loss = told["Friction loss in suction pipe"]
        pulses = told.get("Head that pulses take", 0.0)
        lift = limit - told["NPSH available"] - loss - pulses
        water, (_, pump, _, high) = block(shapes["water"])[1], block(shapes["pump"])
        top = level(shapes["top"]) + (block(shapes["vapour"])[3] if "vapour" in shapes else 0.0)
        metre = (water - top) / limit
        assert pump + high / 2 == near(water - metre * lift)
        most = told.get("Maximum suction lift, by NPSH")
        if most is not None and "most" in shapes:
            marked += 1
            assert level(shapes["most"]) == near(water - metre * most)
            assert block(shapes["friction"])[3] == near(metre * loss)
            assert "pulses" not in shapes or block(shapes["pulses"])[3] == near(metre * pulses)
            assert block(shapes["needed"])[3] == near(metre * told["NPSH required"])
    assert marked > FEW / 4


@pytest.mark.parametrize("lift, above", [("3 m", True), ("9 m", False)])
def test_a_pump_that_is_too_high_is_drawn_over_its_mark(lift, above):
    shapes = drawn(answer("suction", lift=lift, length="12 m"))
    assert (level(shapes["most"]) < level(shapes["level"])) is above
    assert ("over" in shapes) is not above


# Pipe sizes ---------------------------------------------------------------------------------


def test_circles_are_as_wide_as_the_pipes_inside():
    for found in answers("pipe"):
        table = [row[:2] for row in found.tables[0].rows]
        tried = next(
            kind for kind in map(pipes.sizes, pipes.KINDS)
            if [(one.name, one.inside_m) for one in kind] == table
        )  # fmt: skip
        circles = drawn(found)
        shown = [one for one in tried if f"inside {one.size}" in circles]
        assert len(shown) == min(5, len(tried))
        widest = shown[-1]
        metre = float(circles[f"inside {widest.size}"]["r"]) / widest.inside_m
        for one in shown:
            assert float(circles[f"inside {one.size}"]["r"]) == near(metre * one.inside_m)
            assert float(circles[f"outside {one.size}"]["r"]) == near(metre * one.outside_m)


def test_the_smallest_size_that_works_is_framed_and_holds_water():
    found = answer("pipe", line="", climb="12 m")
    shapes = drawn(found)
    x, _, width, _ = block(shapes["chosen"])
    (row,) = found.tables[0].marked
    size = found.tables[0].rows[row][0].removesuffix(" mm")
    circle = shapes[f"inside {size}"]
    assert x < float(circle["cx"]) < x + width
    full = {name for name, one in shapes.items() if "water" in one.get("fill", "")}
    assert f"inside {size}" in full
    dry = [name for name in shapes if name.startswith("inside") and name not in full]
    assert all(float(shapes[name]["r"]) < float(circle["r"]) for name in dry)


def test_the_pressure_under_a_size_is_that_of_the_table():
    found = answer("pipe", line="", climb="12 m")
    said = texts(found.drawings[0])
    lefts = [row[4] for row in found.tables[0].rows if row[4] is not None]
    shown = [text for text in said if text.endswith("bar") and "need" not in text]
    assert shown and all(
        text in {Reader().show(one, "pressure") for one in lefts} for text in shown
    )


# Demand -------------------------------------------------------------------------------------


def test_bars_are_as_long_as_the_flows():
    for found in answers("demand"):
        told, shapes = figures(found), drawn(found)
        lengths = {name: block(one)[2] for name, one in shapes.items()}
        litre = lengths["by chance"] / told["By chance"]
        if "your list" in lengths:
            assert lengths["your list"] == near(litre * told["By your list"])
            parts = sum(lengths.values()) - lengths["your list"] - lengths["by chance"]
            assert parts == pytest.approx(lengths["your list"], abs=HALF * len(lengths))


def test_the_hours_add_up_to_the_day():
    seen = 0
    for found in answers("demand"):
        if len(found.drawings) < 2:
            continue
        shapes = drawn(found, 1)
        amounts = {name: block(one)[2] for name, one in shapes.items() if not name[-1].isdigit()}
        by_use = {
            name: sum(block(shapes[hour])[3] for hour in shapes if hour.startswith(f"{name} "))
            for name in amounts
        }
        whole_day, lengths = sum(by_use.values()), sum(amounts.values())
        for name, length in amounts.items():
            # each of 24 hours is written to a tenth
            assert by_use[name] / whole_day == pytest.approx(length / lengths, abs=0.02)
        seen += 1
    assert seen > FEW / 2


# Storage tank -------------------------------------------------------------------------------


@pytest.mark.parametrize("own, dry", [("5000 L", 3), ("1500 L", 1), ("2500 L", 0), ("700 L", 2)])
def test_the_level_is_that_of_a_balance_by_the_hour(own, dry):
    use, flow, hours, usable = 930 * LITRE, 6 * LITRE * 60, 6, 0.9
    found = answer("tank", use="930 L/day", gives="6 L/min", hours="6", pattern="home", own=own,
                   bridge=f"{dry} days", usable="90 %")  # fmt: skip
    shapes = drawn(found)
    line = points(shapes["level"])
    full, shares = parse(own, "volume").value * usable, storage.PATTERNS["home"]
    sun = storage.supply_pattern(hours)
    base, top = points(shapes["tank"])[1][1], level(shapes["full"])
    per_m3 = (base - top) / full
    level_now = (base - line[0][1]) / per_m3
    for hour, (_, y) in enumerate(line[1:]):
        comes = flow * hours * sun[hour % 24] if hour >= dry * 24 else 0.0
        level_now = min(max(level_now + comes - use * shares[hour % 24], 0.0), full)
        assert y == near(base - per_m3 * level_now)
    assert len(line) == (dry + 3) * 24 + 1
    x, last = line[0][0], line[-1][0]
    if dry:
        assert points(shapes["dry"])[-1][0] == near(x + (last - x) * dry / (dry + 3))


def test_moments_without_water_are_marked_where_the_level_is_nothing():
    shapes = drawn(answer("tank", own="700 L", bridge="2 days"))
    line, base = points(shapes["level"]), points(shapes["tank"])[1][1]
    runs = [block(one) for name, one in shapes.items() if name.startswith("empty")]
    assert runs
    for x, _, width, _ in runs:
        inside = [y for at, y in line if x + HALF < at <= x + width + HALF]
        assert inside and all(y == near(base) for y in inside)


def test_what_is_missing_is_what_is_used_less_what_comes_in():
    found = answer("tank", gives="2 L/min")
    shapes, told = drawn(found), figures(found)
    used, comes, missing = (block(shapes[n])[2] for n in ("you use", "comes in", "missing"))
    assert comes + missing == near(used)
    assert missing / comes == pytest.approx(
        told["Short by, each day"] / told["Comes in on a fair day"], rel=0.01
    )


# Pressure tank ------------------------------------------------------------------------------

TANKS = [
    {"tank": "100 L"}, {"tank": "24 L", "cutin": "1 bar", "cutout": "6 bar"},
    {"tank": "300 L", "precharge": "0.5 bar"}, {"control": "speed", "tank": "8 L", "set": "4 bar"},
]  # fmt: skip


@pytest.mark.parametrize("texts_given", TANKS)
def test_the_drawdown_is_as_high_as_the_figure_says(texts_given):
    found = answer("pressure_tank", **texts_given)
    shapes = drawn(found)
    tank = parse(texts_given["tank"], "volume").value
    (_, stop), (_, start) = points(shapes["drawdown"])
    high = 120.0  # of the tank drawn
    assert start - stop == near(high * figures(found)["Drawdown"] / tank)
    waters = sorted(block(one)[3] for name, one in shapes.items() if name.startswith("water"))
    assert waters[-1] - (waters[0] if len(waters) > 1 else 0.0) == near(start - stop)


def test_a_tank_that_gives_too_little_is_shown_beside_what_it_must_give():
    found = answer("pressure_tank", tank="50 L")
    shapes, told = drawn(found), figures(found)
    gives, must = (block(shapes[name])[2] for name in ("it gives", "it must give"))
    enough = step(found, "Drawdown that is enough")
    assert gives / must == pytest.approx(told["Drawdown"] / enough, rel=0.02)
    assert found.verdict.level != "good" and gives < must


def test_a_relief_valve_that_opens_too_late_is_shown_beside_what_it_guards():
    found = answer("pressure_tank", relief="8 bar", weakest="6 bar")
    shapes = drawn(found)
    stops, opens, rated = (block(shapes[name])[2] for name in
                           ("stops at", "relief opens", "lowest rating"))  # fmt: skip
    assert opens == near(rated * 8 / 6) and stops < rated
    assert "relief valve opens" in found.verdict.sentence
    assert "bad" in str(shapes["relief opens"]) and "bad" not in str(shapes["lowest rating"])


# Pump and pipe ------------------------------------------------------------------------------


def test_what_is_asked_and_the_most_are_where_the_figures_say():
    seen = 0
    for found in answers("pump_match"):
        shapes, told = drawn(found), figures(found)
        _, flow, head, *_ = found.tables[0].rows[2]
        still = found.tables[0].rows[0][2]
        if "asked" not in shapes or still is None or "needed" not in shapes:
            continue
        x, y = float(shapes["asked"]["cx"]), float(shapes["asked"]["cy"])
        (left, first), *_ = points(shapes["needed"])
        if "most" in shapes:
            most = told["Maximum flow at needed pressure"]
            assert float(shapes["most"]["cx"]) == near(left + (x - left) * most / flow)
            seen += 1
        if 0 < still < head:
            base = y + (first - y) * head / (head - still)
            assert base == pytest.approx(204.0, abs=2 * HALF * head / (head - still))
    assert seen > FEW / 4


def test_the_pump_starts_at_its_shut_off_head():
    table = "Flow L/min; Head m\n0; 40\n20; 38\n40; 30\n60; 18"
    found = answer("pump_match", pump="own", table=table, line="", flow="20 L/min")
    shapes = drawn(found)
    (_, top), *_, (end, _) = points(shapes["pump"])
    _, flow, head, *_ = found.tables[0].rows[2]
    x, y = float(shapes["asked"]["cx"]), float(shapes["asked"]["cy"])
    assert (204.0 - top) / (204.0 - y) == pytest.approx(40 / head, rel=0.02)
    assert (end - 44.0) / (x - 44.0) == pytest.approx(60 * LITRE / 60 / flow, rel=0.01)


# Water hammer -------------------------------------------------------------------------------


def test_the_pressures_along_the_pipe_are_those_of_the_figures():
    closings = [one for one in answers("surge") if "Knock on closing" in figures(one)]
    assert len(closings) > FEW / 4
    for found in closings:
        shapes, told = drawn(found), figures(found)
        peak, rise = told["Maximum pressure"], told["Knock on closing"]
        zero, (at_start, at_valve) = level(shapes["zero"]), _ends(shapes["peak"])
        bar = (zero - at_valve) / peak
        assert at_start == near(zero - bar * (peak - rise))
        assert block(shapes["static"])[3] == near(bar * (peak - rise))
        assert _ends(shapes["lowest"])[1] == near(zero - bar * told["Lowest pressure just after"])


@pytest.mark.parametrize("crest", ["", "12 m"])
@pytest.mark.parametrize("flow", ["4 L/min", "9 L/min", "25 L/min"])
def test_heights_after_a_power_cut_are_those_of_the_figures(flow, crest):
    found = answer("surge", event="trip", lift="30 m", flow=flow, crest=crest)
    shapes, told = drawn(found), figures(found)
    (_, foot), *_, (_, top) = points(shapes["pipe"])
    rest = step(found, "Pressure at the pump at rest")
    bar = (foot - top) / rest
    assert points(shapes["peak"])[0][1] == near(foot - bar * told["Maximum pressure"])
    (_, low), (_, way), _ = points(shapes["lowest"])
    assert low == near(foot - bar * told["Lowest pressure at the pump"])
    if crest:
        (_, _), (_, high), _ = points(shapes["pipe"])
        assert foot - high == near(0.4 * (foot - top))
        assert high - way == near(bar * told["Lowest pressure at the highest point"])
    assert level(shapes["static"]) == near(top)


def _ends(attributes):
    (_, first), *_, (_, last) = points(attributes)
    return first, last


def test_a_rating_is_drawn_at_its_pressure():
    found = answer("surge", weakest="8 bar", kind="pe100-sdr11")
    shapes = drawn(found)
    zero, peak = level(shapes["zero"]), _ends(shapes["peak"])[1]
    bar = (zero - peak) / figures(found)["Maximum pressure"]
    levels = {level(one) for name, one in shapes.items() if name.startswith("rating")}
    assert any(y == near(zero - bar * 8e5) for y in levels)


@pytest.mark.parametrize("share", [0.0, 0.25, 1.0, 3.0])
def test_the_rise_is_full_from_where_the_wave_comes_back_in_time(share):
    critical = step(answer("surge"), "Way of the wave, there and back")
    found = answer("surge", closing=f"{share * critical:.9g} s")
    (start, _), (full, _), (valve, _) = points(drawn(found)["peak"])
    assert full == near(start + min(share, 1.0) * (valve - start))
