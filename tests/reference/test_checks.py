"""Every check of the registry, and what the page made of it says of their number."""

import re

import pytest

from scripts import checks_hook
from tests.house.modules import ROOT
from tests.house.test_docstrings import PHYSICS
from tests.house.test_phrases import PHRASES
from tests.reference.checks import CHECKS, SUBJECTS, counted, sources
from tests.reference.checks.check import COUNTS, KINDS, LIBRARY, PUBLISHED, Check, give, part

NAMES = [f"{one.subject}, {one.what}, {one.source}" for one in CHECKS]


@pytest.mark.parametrize("check", CHECKS, ids=NAMES)
def test_calc_gives_what_the_outside_says(check):
    assert check.apart <= check.near.allowed(check.wanted), (check.got, check.wanted, check.source)


def test_250_or_more_checks_count():
    assert len(counted()) >= 250


def test_they_are_from_25_or_more_sources():
    """A source is a document or a library; how calc is solved again here is none."""
    assert len(sources()) >= 25
    assert not any("in the tests" in one for one in sources())


@pytest.mark.parametrize("room", PHYSICS)
def test_every_room_of_physics_is_checked(room):
    assert any(one.module.split(".")[0] == room for one in counted())


def test_no_check_stands_twice():
    assert len(set(NAMES)) == len(NAMES)


@pytest.mark.parametrize("check", CHECKS, ids=NAMES)
def test_a_check_says_what_it_is(check):
    assert check.kind in KINDS and check.what and check.source
    assert check.near.size >= 0
    assert "from memory" not in check.source or check.kind not in COUNTS


def test_subjects_are_those_of_their_tables():
    assert [one.SUBJECT for one in SUBJECTS] == list(dict.fromkeys(one.subject for one in CHECKS))


def test_a_value_too_far_off_does_not_hold():
    def of(found, near):
        return Check("s", "m", "w", "s", 2.0, "m", near, PUBLISHED, lambda: found).holds

    assert of(2.001, part(1e-3)) and not of(2.0021, part(1e-3))
    assert of(2.4, give(0.5)) and not of(2.6, give(0.5))


def test_a_libraries_version_stands_with_it():
    assert all(one.source.split()[-1][0].isdigit() for one in CHECKS if one.kind == LIBRARY)


# The page ---------------------------------------------------------------------------------------


def filled():
    text = (ROOT / "docs" / "checks.md").read_text(encoding="utf-8")
    return checks_hook.on_page_markdown(text, None, None, None)


def test_the_page_has_a_row_for_every_check_and_no_mark_is_left():
    text = filled()
    assert "{{" not in text
    rows = [line for line in text.splitlines() if line.startswith("| ")]
    # beside the checks: the table of totals with a line of all; of each table its two heads
    tables = text.count("<details")
    assert len(rows) == len(CHECKS) + 2 * tables + 2 + len(SUBJECTS) + 1


def test_the_page_says_the_totals_and_what_is_not_checked():
    text = filled()
    assert f"**{len(counted())} checks count, from {len(sources())} sources.**" in text
    assert text.index("## What is not checked") > text.index("## Check by check")


def test_the_page_holds_no_phrase_that_readers_do_not_meet():
    found = [(line, phrase) for line in filled().splitlines() for phrase in PHRASES
             if re.search(phrase, line)]  # fmt: skip
    assert not found


def test_a_difference_is_told_as_its_tolerance_is():
    def of(found, near, expected=2.0):
        return checks_hook.difference(
            Check("s", "m", "w", "s", expected, "m", near, PUBLISHED, lambda: found)
        )

    assert of(2.001, part(0.01)) == "0.05 %" and of(2.001, give(0.01)) == "0.001 m"
    assert of(2.0, part(0.01)) == "rounding"
    assert of(0.25, give(0.5), 0.0) == "0.25 m"


@pytest.mark.parametrize(
    "value, text",
    [(1e-8, "1 × 10<sup>−8</sup>"), (-40.0, "−40"), (0.5, "0.5"),
     (3.2e7, "3.2 × 10<sup>7</sup>")],
)  # fmt: skip
def test_a_number_is_told_as_people_write_it(value, text):
    assert checks_hook._number(value) == text
