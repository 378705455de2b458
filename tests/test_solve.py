"""The root finder and the shape-keeping curve, against scipy and closed forms."""

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from calc.errors import InputError
from calc.solve import Monotone, root

CASES = [
    (lambda x: x**3 - 2 * x - 5, 2.0, 3.0),
    (lambda x: math.cos(x) - x, 0.0, 1.0),
    (lambda x: math.exp(-x) - 1e-8, 0.0, 100.0),
    (lambda x: (x - 1.5) ** 9, 0.0, 4.0),
    (lambda x: math.atan(1e6 * (x - 0.1)), -3.0, 5.0),
    (lambda x: x if x > 0 else x * 1e-9, -1.0, 7.0),
]


@pytest.mark.parametrize("f, low, high", CASES)
def test_root_is_as_close_as_scipys(f, low, high):
    ours, theirs = root(f, low, high), brentq(f, low, high, xtol=1e-15, rtol=1e-15, maxiter=500)
    assert abs(f(ours)) <= abs(f(theirs)) + 1e-15


@settings(max_examples=100, deadline=None)
@given(st.floats(-50, 50), st.floats(0.01, 100), st.floats(0.01, 100))
def test_root_finds_a_known_crossing(at, left, right):
    found = root(lambda x: math.sinh((x - at) / 30), at - left, at + right, 1e-10)
    assert abs(found - at) <= 1e-9


def test_root_takes_few_calls():
    calls = []
    root(lambda x: calls.append(x) or x**3 - 2 * x - 5, 2.0, 3.0, 1e-12)
    assert len(calls) <= 12


@pytest.mark.parametrize("low, high", [(1.0, 3.0), (3.0, 1.0)])
def test_root_at_either_end_is_found(low, high):
    assert root(lambda x: x - 1.0, low, high) == pytest.approx(1.0, abs=1e-15)


def test_root_without_a_crossing_is_said_in_words():
    with pytest.raises(InputError, match="on either side"):
        root(lambda x: x * x + 1, -1.0, 1.0)


def test_root_of_no_number_is_said_in_words():
    with pytest.raises(InputError, match="no number"):
        root(lambda x: math.nan, 0.0, 1.0)


points = st.lists(
    st.tuples(st.integers(0, 1000), st.floats(-100, 100).map(lambda y: round(y, 3))),
    min_size=3,
    max_size=9,
    unique_by=lambda p: p[0],
).map(sorted)


@settings(max_examples=100, deadline=None)
@given(points)
def test_monotone_is_scipys_pchip(pairs):
    xs, ys = zip(*pairs, strict=True)
    ours, theirs = Monotone(xs, ys), PchipInterpolator(xs, ys)
    scale = max(abs(y) for y in ys) + 1e-9
    for x in np.linspace(xs[0], xs[-1], 37):
        x = float(min(max(x, xs[0]), xs[-1]))
        assert abs(ours(x) - theirs(x)) <= 1e-9 * scale
        if x not in xs:
            assert abs(ours.slope(x) - theirs(x, 1)) <= 1e-8 * scale


@settings(max_examples=100, deadline=None)
@given(points)
def test_monotone_never_overshoots(pairs):
    xs, ys = zip(*pairs, strict=True)
    curve = Monotone(xs, ys)
    for (x1, y1), (x2, y2) in itertools.pairwise(pairs):
        for i in range(11):
            y = curve(x1 + (x2 - x1) * i / 10)
            assert min(y1, y2) - 1e-9 <= y <= max(y1, y2) + 1e-9


def test_monotone_through_two_points_is_their_line():
    curve = Monotone((1.0, 3.0), (10.0, 4.0))
    assert curve.value_and_slope(2.0) == (7.0, -3.0)


@pytest.mark.parametrize(
    "xs, ys",
    [((1.0,), (1.0,)), ((1.0, 1.0), (1.0, 2.0)), ((2.0, 1.0), (1.0, 2.0)), ((1.0, 2.0), (1.0,)),
     ((1.0, 2.0), (1.0, math.nan))],
)  # fmt: skip
def test_monotone_refuses_points_that_are_no_curve(xs, ys):
    with pytest.raises(InputError):
        Monotone(xs, ys)


@pytest.mark.parametrize("x", [-0.1, 2.1, math.nan])
def test_monotone_does_not_guess_outside_its_points(x):
    with pytest.raises(InputError, match="outside"):
        Monotone((0.0, 1.0, 2.0), (3.0, 2.0, 0.0))(x)
