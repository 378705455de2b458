"""Words are given the room they need and a place that is free."""

import pytest

from calc.page.shapes import Words
from calc.page.text_boxes import Board, Box, around, box_of, fitted, text_width

TEXTS = ["Cabin 3 shower", "20 → 14 psi", "−3.5 m", "“Œuvre”", "水井", "🐐"]


@pytest.mark.parametrize("text", TEXTS)
@pytest.mark.parametrize("bold", [False, True])
def test_what_is_cut_to_fit_fits(text, bold):
    whole = text_width(text, 13, bold)
    assert fitted(text, whole, 13, bold) == text
    for room in (0.9 * whole, 0.5 * whole):
        cut = fitted(text, room, 13, bold)
        assert cut.endswith("…") and text.startswith(cut[:-1])
        assert text_width(cut, 13, bold) <= room or cut == "…"


@pytest.mark.parametrize("text", TEXTS)
def test_a_box_is_as_wide_as_its_words_about_their_anchor(text):
    wide = text_width(text, 12, bold=True)
    for anchor, share in (("start", 0.0), ("middle", 0.5), ("end", 1.0)):
        box = box_of(Words(50, 60, text, anchor, bold=True, size=12))
        assert box.left == pytest.approx(50 - share * wide)
        assert box.right - box.left == pytest.approx(wide)
        assert box.top < 60 < box.bottom
        turned = box_of(Words(50, 60, text, anchor, bold=True, size=12, turned=True))
        assert turned.bottom - turned.top == pytest.approx(wide)
        assert turned.bottom == pytest.approx(60 + share * wide)


def test_a_lead_takes_room_too():
    alone, led = (box_of(Words(0, 20, "14 psi", lead=lead)) for lead in ("", "20 →"))
    assert led.right - alone.right == pytest.approx(text_width("20 → "))


@pytest.mark.parametrize(
    "start, end, cuts",
    [
        ((0, 0), (30, 30), True), ((12, 0), (12, 40), True), ((0, 15), (40, 15), True),
        ((0, 0), (9, 30), False), ((0, 0), (5, 5), False), ((25, 0), (25, 40), False),
        ((12, 12), (18, 18), True), ((0, 25), (40, 21), False), ((8, 22), (22, 21), False),
    ],
)  # fmt: skip
def test_a_line_cuts_what_it_passes_through(start, end, cuts):
    box = Box(10, 10, 20, 20)
    assert box.cut_by(start, end) is cuts
    assert box.cut_by(end, start) is cuts


def test_words_are_placed_where_it_is_free():
    board = Board(200, 100)
    spots = around(100, 50)
    first = board.place("Cabin 3", spots)
    assert (first.x, first.y) == spots[0][:2]
    second = board.place("Cabin 3", spots)
    assert not box_of(second).meets(box_of(first))


def test_words_keep_off_lines_and_inside():
    board = Board(200, 100)
    board.line([(0, 40), (200, 40)], half=2)
    assert board.place("Cabin 3", [(100, 42, "start")]) is None
    assert board.place("Cabin 3", [(190, 80, "start"), (2, 80, "end")]) is None
    assert board.place("Cabin 3", [(100, 70, "start")]) is not None
