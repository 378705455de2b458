"""A site: its points, and renaming them."""

import pytest

from calc.errors import InputError
from calc.site import file
from calc.site.demo import alder_terrace
from calc.site.facts import Fact


def test_points_are_the_pump_the_tanks_and_the_ends_of_sections():
    points = alder_terrace().points
    assert points[0] == "pump"
    assert {"cistern", "lower fork", "wash-house", "herb terraces"} <= set(points)


def test_renaming_a_point_renames_it_in_every_row():
    site = alder_terrace().rename("Upper  Fork", "ridge")
    assert "upper fork" not in file.write(site)
    assert [r["from"].text for r in site.rows("sections")].count("ridge") == 3
    assert [r["to"].text for r in site.rows("sections")].count("ridge") == 1


def test_renaming_reaches_outlets_and_tanks():
    site = alder_terrace().rename("wash-house", "bath-house").rename("cistern", "pond")
    assert site.rows("outlets")[0]["at"].text == "bath-house"
    assert site.rows("tanks")[0]["name"].text == "pond"
    assert site.rows("outlets")[0]["name"].text == "Wash-house shower"


@pytest.mark.parametrize("old, new, words", [
    ("upper fork", "cabin 3", "another point"),
    ("upper fork", "Pump", "another point"),
    ("upper fork", " ", "name"),
    ("nowhere", "somewhere", "no point"),
    ("pump", "engine", "no point"),
    ("upper fork", "x" * 30, "30 characters"),
])  # fmt: skip
def test_a_renaming_that_would_confuse_is_refused(old, new, words):
    with pytest.raises(InputError, match=words):
        alder_terrace().rename(old, new)


def test_a_name_may_change_its_capitals():
    assert "Upper Fork" in alder_terrace().rename("upper fork", "Upper Fork").points


def test_without_a_pump_there_is_no_point_of_that_name():
    assert "pump" not in alder_terrace().put("pump.present", Fact("no")).points
