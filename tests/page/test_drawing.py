"""Pictures: what is written into the page, and that it can be read and pressed."""

import re
from xml.etree import ElementTree

import pytest

from calc.page.drawing import COLOURS, path, svg, touch
from calc.page.shapes import Area, Block, Dot, Drawing, Press, Stroke, Words, traced
from tests.house.modules import ROOT
from tests.page.pictures import faults, named, texts

CSS = (ROOT / "docs/assets/tokens.css").read_text(encoding="utf-8")


def _drawing(*shapes, width=298.0):
    return Drawing("hill", "A hill", "A hill with a pipe.", width, 200.0, shapes)


def _pressed(x=10.0, side=30.0, **leads):
    return Press((Words(x, 60, "Cabin"),), f"Cabin, {x}", x, 40.0, side, side, **leads)


@pytest.mark.parametrize("variable", sorted({one for one in COLOURS.values() if "var" in one}))
def test_a_colour_has_a_value_in_the_light_and_in_the_dark(variable):
    name = variable.removeprefix("var(").removesuffix(")")
    screen, _, paper = CSS.partition("@media print")
    assert len(re.findall(rf"^  {name}: ", screen, re.MULTILINE)) == 2
    assert f"{name}: " in paper


def test_nothing_of_a_reader_becomes_markup():
    nasty = "<b onclick='x'>&\"</b>"
    shapes = (
        Words(1, 20, nasty, at=nasty),
        Stroke(((1, 1), (2, 2)), at=nasty),
        Press((Words(3, 9, nasty, lead=nasty),), nasty, 0, 0, 30, 30, nasty, nasty),
    )
    drawing = Drawing("k", "t", nasty, 300, 100, shapes)
    root = ElementTree.fromstring(svg(drawing))
    assert not [one for one in root.iter() if one.tag == "b"]
    assert root.get("aria-label") == nasty
    assert f"{nasty} {nasty}" in texts(drawing)


def test_no_style_stands_in_an_element():
    shapes = (
        Stroke(((0, 0), (9, 9)), "bad"), Area(((0, 0), (9, 0), (9, 9)), smooth=2, edge="soft"),
        Block(0, 0, 9, 9, "bad", "ink", corner=2), Dot(3, 3), Words(1, 9, "a", turned=True),
        _pressed(change="taps.2"),
    )  # fmt: skip
    assert " style=" not in svg(_drawing(*shapes))
    assert " id=" not in svg(_drawing(*shapes))


def test_what_is_bad_can_be_told_in_grey():
    line = ((0.0, 0.0), (50.0, 0.0))
    drawing = _drawing(
        Stroke(line, "pipe", at="good"), Stroke(line, "bad", at="bad"),
        Block(0, 0, 20, 40, "water", at="full"), Block(30, 0, 20, 40, "bad", at="low"),
    )  # fmt: skip
    found = named(drawing)
    assert "stroke-dasharray" not in found["good"]
    assert "stroke-dasharray" in found["bad"]
    hatching = svg(drawing).split('data-sl-at="low"/>')[1]
    assert hatching.startswith('<path d="M')
    assert 'd="M' not in svg(drawing).split('data-sl-at="full"/>')[1].split("<rect")[0]


def test_a_hatching_stays_inside_its_block():
    drawing = _drawing(Block(30, 10, 12, 41, "bad"))
    lines = re.search(r'<path d="([^"]+)" fill="none"', svg(drawing)).group(1)
    pairs = re.findall(r"[ML]([\d.]+) ([\d.]+)", lines)
    assert len(pairs) > 10
    assert all(30 <= float(x) <= 42 and 10 <= float(y) <= 51 for x, y in pairs)


def test_a_smooth_line_passes_through_its_points():
    points = ((0.0, 0.0), (10.0, 20.0), (30.0, 5.0), (60.0, 8.0))
    ends = re.findall(r"[CS](?:\S+ )+?(\S+) (\S+?)(?=S|$)", path(points, smooth=True))
    assert [(float(x), float(y)) for x, y in ends] == list(points[1:])
    assert set(points) <= set(traced(points))


def test_an_area_is_smooth_as_far_as_it_says():
    corners = ((0, 0), (10, 5), (20, 0), (20, 30), (0, 30))
    drawing = _drawing(Area(corners, smooth=3, at="hill"))
    assert re.sub(r"[\d. -]", "", named(drawing)["hill"]["d"]) == "MCSLLZ"


def test_what_is_pressed_leads_to_its_field_or_address():
    found = named(_drawing(_pressed(change="taps.2", at="a"), _pressed(60, href="head/", at="b")))
    assert found["a"]["data-sl-change"] == "taps.2" and found["a"]["href"] == "#"
    assert found["b"]["href"] == "head/" and "data-sl-change" not in found["b"]


def test_what_is_pressed_is_within_reach_of_a_screen_reader():
    plain, pressed = _drawing(Words(1, 20, "a")), _drawing(Words(1, 20, "a"), _pressed())
    assert ElementTree.fromstring(svg(plain)).get("role") == "img"
    root = ElementTree.fromstring(svg(pressed))
    assert root.get("role") == "group"
    hidden = [one for one in root if one.get("aria-hidden")]
    assert ["".join(one.itertext()) for one in hidden] == ["a"]


def test_a_finger_has_24_px_on_a_phone():
    assert touch(298) == 24
    assert touch(596) == 48


FAULTY = {
    "is small": [Words(5, 20, "a", size=10)],
    "leaves the picture": [Words(290, 20, "Cabin 3")],
    "meets": [Words(5, 20, "Cabin 3"), Words(30, 25, "Cabin 4")],
    "cuts pipe": [Words(5, 20, "Cabin 3"), Stroke(((0, 0), (40, 40)), at="pipe")],
    "too small for a finger": [_pressed(side=20)],
    "room of “Cabin, 280” leaves": [_pressed(280)],
    "pressed at one place": [_pressed(10), _pressed(30)],
}


@pytest.mark.parametrize("fault", FAULTY)
def test_a_fault_is_found(fault):
    assert any(fault in one for one in faults(_drawing(*FAULTY[fault])))


def test_a_picture_without_faults_has_none():
    pipe = Stroke(((0, 100), (298, 120)), "pipe", at="pipe")
    assert list(faults(_drawing(Words(5, 20, "Cabin 3"), pipe, _pressed()))) == []
