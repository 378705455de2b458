"""The start page's picture: Alder Terrace to scale, each part leading to the guide that answers."""

import re

import pytest

from calc.page.shapes import Press
from calc.page.text_boxes import Box, box_of
from calc.sheets import KEYS, LATER, sheet
from calc.sheets.start import OVER, UNDER, start_picture
from calc.site.demo import alder_terrace
from tests.page.pictures import HALF, faults, marks, named, off_scale

PICTURE = start_picture()
PARTS = [one for one in PICTURE.shapes if isinstance(one, Press)]


def test_every_question_about_the_place_has_its_part_and_the_sun_has_one():
    # what follows from the panels is asked on their page; the place has no spring and no hill tank
    water = [key for key in KEYS if key not in LATER or key in {"panels", "well", "drip"}]
    assert sorted(one.href for one in PARTS) == sorted(sheet(key).page for key in water)
    assert [one.name for one in PARTS] and all(one.name.endswith("?") for one in PARTS)


def test_it_is_legible():
    assert list(faults(PICTURE)) == []


def test_the_line_of_a_question_crosses_no_other_question():
    words = {one.at: box_of(one.shapes[-1]) for one in PARTS}
    for one in PARTS:
        line = one.shapes[0].points
        for other, box in words.items():
            if other != one.at:
                assert not any(box.cut_by(a, b) for a, b in zip(line, line[1:], strict=False))


def test_a_question_is_beside_its_line():
    for one in PARTS:
        box, (x, _) = box_of(one.shapes[-1]), one.shapes[0].points[0]
        assert box.left - 4 <= x <= box.right + 4


def test_heights_are_to_scale():
    site, found = alder_terrace(), named(PICTURE)
    known = [(0.0, float(found["pump"]["y"]) + float(found["pump"]["height"]))]
    known.append((site.value("water.level"), float(found["water"]["y"])))
    for row in site.rows("sections"):
        name = site.word("sections", row, "to")
        known.append((site.cell("sections", row, "height"), float(found[f"stop {name}"]["cy"])))
    for row in site.rows("tanks"):
        name = site.word("tanks", row, "name")
        known.append((site.cell("tanks", row, "level"), float(found[f"tank {name}"]["y"])))
    assert len(known) == 11 and off_scale(known) <= HALF


def test_every_pipe_of_the_site_is_drawn():
    drawn = [name for name in named(PICTURE) if re.fullmatch(r"pipe \d+", name)]
    # and one from the pump to the pressure tank
    assert len(drawn) == len(alder_terrace().rows("sections")) + 1


@pytest.mark.parametrize("key, text", [*OVER, *UNDER])
def test_a_question_is_short(key, text):
    assert len(text) <= 32
    assert key in KEYS


def test_no_part_lies_on_another():
    icons = []
    for one in PARTS:
        points = [p for shape in one.shapes[1:-1] for p in getattr(shape, "points", ())]
        if points:
            xs, ys = zip(*points, strict=True)
            icons.append(Box(min(xs), min(ys), max(xs), max(ys)))
    assert len(icons) >= 4
    for at, box in enumerate(icons):
        assert not any(map(box.meets, icons[at + 1 :]))


def test_it_carries_no_number_and_so_no_unit_system():
    said = " ".join(one.text for one in marks(PICTURE) if hasattr(one, "text"))
    assert not re.search(r"\d", said + PICTURE.alt + PICTURE.scale)
