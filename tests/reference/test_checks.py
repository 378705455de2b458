"""Every check of the registry, and what the page made of it says of their number."""

import pytest

from tests.house.test_docstrings import PHYSICS
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
    # a difference beyond rounding is allowed for a reason alone
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
