"""The picture of the keep_up sheet: to scale, legible, and it says why an outlet is weak."""

import re
from itertools import combinations

import pytest

from calc.page.drawing import svg
from calc.page.hill.layout import laid_out
from calc.page.shapes import Press, Words
from calc.page.state import State
from calc.page.text_boxes import box_of
from calc.sheets.keep_up.drawing import scene
from calc.units import Reader
from tests.page.pictures import HALF, faults, marks, named, off_scale, texts
from tests.sheets.hillsides import AWKWARD, CAUSES, at_random, drawn, supply


@pytest.fixture
def picture(monkeypatch):
    return lambda state: drawn(state, monkeypatch)


# To scale -------------------------------------------------------------------------------------


def _heights(case, found):
    """[(m above the pump, y)] of everything in a picture that has a height."""
    heights = case.after.network.heights
    source = case.supply.pumping
    level = case.supply.source.level_m if source is None else -source.lift_m
    known = [(level, float(found["water"]["y"]))]
    if source is not None:
        pump = found["pump"]
        known.append((0.0, float(pump["y"]) + float(pump["height"])))
    for tap in case.taps:
        name = f"taps.{case.built.outlet_rows[tap.name]}"
        foot = heights[tap.node]
        if f"outlet {name}" not in found:
            continue  # one column stands for all outlets at a point
        known.append((foot, float(found[f"outlet {name}"]["cy"])))
        for which, state in (("before", tap.before), ("after", tap.after)):
            if f"{which} {name}" in found:
                water = max(0.0, state.pressure_pa) / case.weight
                known.append((foot + water, float(found[f"{which} {name}"]["y"])))
    for level in case.built.levels:
        if f"tank {level.name}" in found:
            known.append((level.level_m, float(found[f"tank {level.name}"]["y"])))
    return known


@pytest.mark.parametrize("name", AWKWARD)
def test_heights_and_pressures_are_to_one_scale(picture, name):
    case, drawing = picture(AWKWARD[name])
    known = _heights(case, named(drawing))
    assert len(known) > 3 and off_scale(known) <= HALF


def test_heights_and_pressures_are_to_one_scale_in_random_supplies(monkeypatch):
    off = {
        seed: off_scale(_heights(case, named(drawing)))
        for seed, case, drawing in at_random(60, monkeypatch)
    }
    assert {seed: by for seed, by in off.items() if by > HALF} == {}


def test_a_wrong_height_is_off_the_scale(picture):
    case, drawing = picture(State())
    found = named(drawing)
    found["after taps.4"] = {**found["after taps.4"], "y": float(found["after taps.4"]["y"]) + 1.0}
    assert off_scale(_heights(case, found)) > HALF


@pytest.mark.parametrize("name", AWKWARD)
def test_a_bar_is_where_enough_is(picture, name):
    case, drawing = picture(AWKWARD[name])
    found = named(drawing)
    known = _heights(case, found)
    (low, under), (high, over) = min(known), max(known)
    each = (over - under) / (high - low)
    bars = 0
    for tap in case.taps:
        key = f"taps.{case.built.outlet_rows[tap.name]}"
        if f"need {key}" in found and f"need {key} 2" not in found:
            height = case.after.network.heights[tap.node] + tap.after.wanted_pa / case.weight
            y = float(re.match(r"M\S+ ([-\d.]+)", found[f"need {key}"]["d"]).group(1))
            assert abs(y - under - each * (height - low)) <= HALF
            bars += 1
    assert bars or name in ("closed", "few", "example", "example in us")


def test_a_pipe_is_as_thick_as_it_is_wide_inside(picture):
    case, drawing = picture(State())
    found = named(drawing)
    runs = [case.after.network.run(name) for name in case.built.section_rows]
    wide = [float(found[f"pipe runs.{at}"]["stroke-width"]) for at in range(len(runs))]
    for (one, thick), (other, thin) in combinations(zip(runs, wide, strict=True), 2):
        # a tenth is written, so half of one may be missing or over in each
        each = max(thick / one.pipe.inside_m, thin / other.pipe.inside_m)
        assert abs(thick / one.pipe.inside_m - thin / other.pipe.inside_m) <= 0.06 * each
    assert len({round(one, 1) for one in wide}) == 4


# Legible --------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", AWKWARD)
def test_an_awkward_supply_is_legible(picture, name):
    _, drawing = picture(AWKWARD[name])
    assert list(faults(drawing)) == []


def test_random_supplies_are_legible(monkeypatch):
    found = {seed: list(faults(drawing)) for seed, _, drawing in at_random(200, monkeypatch)}
    assert {seed: said for seed, said in found.items() if said} == {}


def test_points_and_outlets_are_named_at_their_places(picture):
    _, drawing = picture(State())
    words = " ".join(texts(drawing)).replace("- ", "-")
    for name in ("lower fork", "upper fork", "wash- house", "Cabin 3 shower", "Goat trough"):
        assert name.replace("- ", "-") in words


def test_what_has_no_room_is_counted(picture):
    _, drawing = picture(AWKWARD["thirty"])
    shown = [one for one in drawing.shapes if isinstance(one, Press)]
    left_out = int(re.search(r"(\d+) more have no room", drawing.scale).group(1))
    assert len(shown) + left_out == 30
    case, all_shown = picture(AWKWARD["twelve"])
    assert "no room" not in all_shown.scale
    assert len([one for one in all_shown.shapes if isinstance(one, Press)]) == len(case.taps) == 12


def test_the_weakest_is_never_left_out(picture):
    case, drawing = picture(AWKWARD["sixty"])
    shown = {one.change for one in drawing.shapes if isinstance(one, Press)}
    assert f"taps.{case.built.outlet_rows[case.main.name]}" in shown


# What it says ---------------------------------------------------------------------------------


def _number(text):
    return re.findall(r"[\d.]+", text)


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_pressure_left_is_written_over_its_outlet(picture, system):
    case, drawing = picture(State(system))
    reader = Reader(system)
    pressed = [one for one in drawing.shapes if isinstance(one, Press)]
    assert len(pressed) == len({tap.node for tap in case.taps}) == 6
    by_key = {f"taps.{case.built.outlet_rows[tap.name]}": tap for tap in case.taps}
    for one in pressed:
        tap = by_key[one.change]
        shown = " ".join(
            f"{words.lead} {words.text}" for words in one.shapes if isinstance(words, Words)
        )
        for state in (tap.before, tap.after) if tap.after.open else (tap.after,):
            assert reader.number(state.pressure_pa, "pressure", 2) in shown


def test_the_unit_is_said_beside_the_numbers_or_in_the_title(picture):
    for name in ("example", "example in us", "flat", "tall", "twelve"):
        _, drawing = picture(AWKWARD[name])
        unit = "psi" if name.endswith("us") else "bar"
        over = [one for one in texts(drawing) if one.endswith(f"\u00a0{unit}")]
        assert (unit in drawing.title) or len(over) > 1 or name == "twelve"


@pytest.mark.parametrize("cause", CAUSES)
def test_the_cause_is_marked_at_its_place(picture, cause):
    case, drawing = picture(CAUSES[cause])
    assert case.main.level == "stop"
    said = " ".join(
        one.text for one in marks(drawing) if isinstance(one, Words) and one.role == "bad"
    )
    assert cause in said
    assert cause in drawing.alt and case.main.name in drawing.alt


def test_the_shared_thin_pipe_is_marked_beside_it(picture):
    case, drawing = picture(State())
    lost = Reader().show(case.cause.value, "pressure", 2)
    words = [one for one in marks(drawing) if isinstance(one, Words) and one.role == "bad"]
    cause = [one for one in words if one.text in ("thin pipe", "here", "loses", lost)]
    assert " ".join(one.text for one in cause) == f"thin pipe here loses {lost}"
    (row,) = [at for name, at in case.built.section_rows.items() if name == case.cause.row]
    xs = [
        float(x)
        for x, _ in re.findall(r"([\d.]+) ([\d.]+)", named(drawing)[f"pipe runs.{row}"]["d"])
    ]
    assert all(min(xs) < (box_of(one).left + box_of(one).right) / 2 < max(xs) for one in cause)


def test_a_weak_outlet_can_be_told_in_grey(picture):
    _, drawing = picture(State())
    weak = [one for one in drawing.shapes if isinstance(one, Press) and "too weak" in one.name]
    assert [one.change for one in weak] == ["taps.4"]
    said = [words.text for words in weak[0].shapes if isinstance(words, Words)]
    assert "weak" in said
    after = re.search(r'data-sl-at="after taps.4"/>(<path d="M[^"]+")?', svg(drawing))
    assert after.group(1)  # hatched


def test_what_opens_is_said_at_its_place(picture):
    _, drawing = picture(State())
    assert "opens" in texts(drawing)


def test_where_all_is_well_nothing_is_marked(picture):
    _, drawing = picture(AWKWARD["flat"])
    assert not [one for one in marks(drawing) if getattr(one, "role", "") == "bad"]
    assert "Every open outlet gets enough." in drawing.alt


def test_every_outlet_leads_to_its_row(picture):
    runs = [("pump", "house", "60 m", "8 m", "32")]
    taps = [(f"Tap {at}", "house", "sink", "1", "1") for at in range(4)]
    _, drawing = picture(supply(runs, taps))
    pressed = [one for one in drawing.shapes if isinstance(one, Press)]
    assert [one.change for one in pressed] == [f"taps.{at}" for at in range(4)]
    assert [one.name[:5] for one in pressed] == [f"Tap {at}" for at in range(4)]
    _, few = picture(AWKWARD["few"])
    pressed = [one.change for one in few.shapes if isinstance(one, Press)]
    assert pressed == ["showers", "hoses"]


@pytest.mark.parametrize("name", AWKWARD)
def test_what_is_pressed_is_named_by_the_words_it_shows(picture, name):
    _, drawing = picture(AWKWARD[name])
    for one in drawing.shapes:
        if isinstance(one, Press):
            words = [shape for shape in one.shapes if isinstance(shape, Words)]
            seen = " ".join(f"{shape.lead} {shape.text}".strip() for shape in words)
            assert one.name.startswith(seen) and len(one.name) > len(seen) + 5


def test_branches_leave_the_point_they_leave(picture):
    case, drawing = picture(State())
    layout = laid_out(scene(case, Reader()))
    found = named(drawing)
    for at, row in enumerate(case.supply.sections):
        start = re.match(r"M([\d.]+) ([\d.]+)", found[f"pipe runs.{at}"]["d"]).groups()
        x = layout.ends[row.start][1]
        assert abs(float(start[0]) - x) <= HALF
        if f"stop {row.start}" in found:
            assert abs(float(start[1]) - float(found[f"stop {row.start}"]["cy"])) <= HALF


def test_pipes_of_one_point_lie_at_depths_of_their_own(picture):
    _, drawing = picture(AWKWARD["loop"])
    ds = [one["d"] for name, one in named(drawing).items() if name.startswith("pipe runs.")]
    assert len(ds) == len(set(ds)) == 5
