"""The pictures of the sheets of one question: legible whatever is asked, never kinder than the
verdict, in the reader's units only, and drawn as the figures say.

keep_up, reach and pressure have their own tests.
"""

import functools
import os
import re
from dataclasses import replace

import pytest

from calc.page.fields import Choice, Count, Number
from calc.page.form import work
from calc.page.shapes import Block, Dot, Stroke, Words
from calc.page.state import State
from calc.sheets import sheet
from tests.page.pictures import faults, marks, texts
from tests.parity.cases import requests
from tests.sheets import awkward

KEYS = (
    "suction",
    "pipe",
    "demand",
    "tank",
    "pressure_tank",
    "pump_match",
    "surge",
    "cable",
    "gravity",
    "well",
    "hill_tank",
    "drip",
    "sprinkler",
    "hot_water",
)
# requests; more, apart from the daily run: SPRINGLINE_SUPPLIES=200
RANDOM = int(os.environ.get("SPRINGLINE_SUPPLIES", "100"))
AWKWARD = RANDOM // 2
# The findings, but for notes, that a picture must show, by their keys.
SHOWN = {
    "suction": {("stop", "npsh")},
    "pipe": {("stop", "short"), ("stop", "no-water")},
    "tank": {("stop", "too-small"), ("stop", "too-little"), ("stop", "no-source")},
    "pressure_tank": {
        ("stop", "starts"),
        ("care", "starts"),
        ("stop", "never-cuts-out"),
    },
    "pump_match": {("stop", "short"), ("stop", "no-water"), ("stop", "pump-most")},
    "surge": {("stop", "over-rating"), ("care", "negative-pressure")},
    "well": {("stop", "too-little"), ("stop", "tank-dry")},
    "cable": {("stop", "no-size"), ("stop", "too-thin"), ("stop", "start-drop")},
    "gravity": {("stop", "short"), ("stop", "no-water")},
    "hill_tank": {("stop", "tank-dry"), ("stop", "too-little"), ("stop", "no-source")},
    "drip": {
        ("stop", "zone-flow"),
        ("stop", "too-long"),
        ("stop", "too-little"),
        ("stop", "uneven"),
        ("care", "uneven"),
        ("stop", "short"),
        ("stop", "zone-uneven"),
        ("care", "zone-uneven"),
    },
    "sprinkler": {
        ("stop", "weak"),
        ("stop", "gaps"),
        ("care", "gaps"),
        ("stop", "runoff"),
        ("care", "runoff"),
        ("stop", "too-little"),
        ("stop", "too-long"),
        ("stop", "zone-flow"),
    },
    "hot_water": {
        ("stop", "bursts"),
        ("stop", "no-relief"),
        ("stop", "relief-runs"),
        ("stop", "over-rating"),
        ("stop", "too-hot"),
    },
}
OTHER = {"metric": r"psi|ft|gpm|gal", "us": r"bar|m|L|L/min|L/day"}


@functools.cache
def answered(key):
    """(state, answer) of random and awkward requests that have an answer."""
    found = sheet(key)
    plain = tuple(one for one in found.fields if isinstance(one, Choice | Count | Number))
    states = [State(r["system"], r["texts"], r["units"]) for r in requests(key, RANDOM)]
    states += awkward.states(replace(found, fields=plain), AWKWARD)
    worked = ((state, work(found, state)) for state in states)
    return [(state, done.answer) for state, done in worked if done.answer is not None]


def pictures(key):
    return [(state, one) for state, answer in answered(key) for one in answer.drawings]


@pytest.mark.parametrize("key", KEYS)
def test_no_picture_is_hard_to_read(key):
    found = [(state, fault) for state, one in pictures(key) for fault in faults(one)]
    assert found == []


@pytest.mark.parametrize("key", KEYS)
def test_nearly_every_answer_has_its_picture(key):
    without = [answer for _, answer in answered(key) if not answer.drawings]
    assert len(without) <= 0.02 * len(answered(key))


@pytest.mark.parametrize("key", KEYS)
def test_a_picture_is_as_wide_as_a_phone_and_says_what_it_shows(key):
    for _, one in pictures(key):
        assert one.width == 328
        assert one.alt.endswith(".") and "nan" not in one.alt and "inf" not in one.alt
        assert one.scale.endswith(".")


@pytest.mark.parametrize("key", KEYS)
def test_a_picture_speaks_in_the_readers_units_only(key):
    for state, one in pictures(key):
        other = re.compile(rf"\d[\u00a0 ]({OTHER[state.system]})(?![\w/])")
        said = [text for text in (*texts(one), one.alt, one.scale) if other.search(text)]
        assert said == [] or key == "pipe"  # nominal sizes stay as they are


@pytest.mark.parametrize("key", KEYS)
def test_what_is_bad_is_also_said(key):
    for _, one in pictures(key):
        shapes = [m for m in marks(one) if isinstance(m, Block | Stroke | Dot) and m.role == "bad"]
        said = [m for m in marks(one) if isinstance(m, Words) and m.role == "bad"]
        assert not shapes or said


@pytest.mark.parametrize("key", SHOWN)
def test_a_picture_shows_what_the_verdict_finds(key):
    seen = 0
    for state, answer in answered(key):
        levels = {(one.level, one.key) for one in answer.findings}
        bad = any(getattr(m, "role", "") == "bad" for one in answer.drawings for m in marks(one))
        if levels & SHOWN[key]:
            seen += 1
            assert bad, (state, levels)
    assert seen > 0
