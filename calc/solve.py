"""A root found by bracketing, and a curve through points that keeps their shape."""

from __future__ import annotations

import itertools
import math
from bisect import bisect_right
from typing import TYPE_CHECKING

from calc.errors import InputError, UnsolvedError

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    Three = tuple[float, float, float]

MOST_STEPS = 200  # bisection alone needs about 60 for full precision; Brent's worst case is slower


def root(f: Callable[[float], float], low: float, high: float, tolerance: float = 0.0) -> float:
    """Where a continuous function crosses zero, by Brent's method.

    f(x) = 0 with low <= x <= high
    f: function of one number; low, high: ends at which ``f`` has opposite signs
    (or is zero); tolerance: half-width within which x is wanted, in x's unit
    (machine precision is the least).
    Returns x.
    Raises UnsolvedError where the signs do not differ or f gives no number.
    Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4.

    >>> round(root(lambda x: x * x - 2, 0.0, 2.0), 12)
    1.414213562373
    """
    a, b = low, high
    fa, fb = _number(f, a), _number(f, b)
    if fa == 0.0:
        return a
    if fb != 0.0 and (fa > 0) == (fb > 0):
        raise UnsolvedError(
            f"No crossing between {low:g} and {high:g}: the function is {fa:g} and {fb:g} there, "
            "of one sign. Give ends on either side of the crossing."
        )
    c, fc, step, before = a, fa, b - a, b - a
    for _ in range(MOST_STEPS):
        if abs(fc) < abs(fb):
            a, b, c = b, c, b
            fa, fb, fc = fb, fc, fb
        least = 2 * math.ulp(1.0) * abs(b) + tolerance / 2
        middle = (c - b) / 2
        if abs(middle) <= least or fb == 0.0:
            return b
        step, before = _step((a, b, c), (fa, fb, fc), step, before, least)
        a, fa = b, fb
        b += step if abs(step) > least else math.copysign(least, middle)
        fb = _number(f, b)
        if (fb > 0) == (fc > 0):
            c, fc, step, before = a, fa, b - a, b - a
    raise UnsolvedError(f"No crossing found between {low:g} and {high:g} in {MOST_STEPS} steps.")


def _step(
    points: Three, values: Three, step: float, before: float, least: float
) -> tuple[float, float]:
    """The next step and the one before: interpolated where safe, else half the bracket."""
    (a, b, c), (fa, fb, fc) = points, values
    middle = (c - b) / 2
    if abs(before) < least or abs(fa) <= abs(fb):
        return middle, middle
    s = fb / fa
    if a == c:
        p, q = 2 * middle * s, 1 - s
    else:
        q, r = fa / fc, fb / fc
        p = s * (2 * middle * q * (q - r) - (b - a) * (r - 1))
        q = (q - 1) * (r - 1) * (s - 1)
    p, q = (p, -q) if p > 0 else (-p, q)
    if 2 * p < min(3 * middle * q - abs(least * q), abs(before * q)):
        return p / q, step
    return middle, middle


def _number(f: Callable[[float], float], x: float) -> float:
    value = f(x)
    if math.isnan(value):
        raise UnsolvedError(f"The function gives no number at {x:g}. Give ends within its range.")
    return value


class Monotone:
    """A smooth curve through points that rises and falls only where they do.

    Piecewise cubic Hermite interpolation with weighted harmonic slopes (PCHIP):
    no overshoot, continuous slope.  With two points it is their straight line.
    xs: strictly rising; ys: as many.  Raises InputError otherwise.
    Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304.

    >>> Monotone((0.0, 1.0, 3.0), (4.0, 3.0, 0.0))(1.0)
    3.0
    """

    def __init__(self, xs: Iterable[float], ys: Iterable[float]) -> None:
        self.xs, self.ys = tuple(map(float, xs)), tuple(map(float, ys))
        if len(self.xs) != len(self.ys) or len(self.xs) < 2:
            raise InputError("A curve needs two points or more, with one y for each x.")
        if not all(map(math.isfinite, self.xs + self.ys)):
            raise InputError("A curve's points must all be finite numbers.")
        if any(b <= a for a, b in zip(self.xs, self.xs[1:], strict=False)):
            raise InputError("A curve's x values must rise from point to point, none twice.")
        self._slopes = _slopes(self.xs, self.ys)

    def __call__(self, x: float) -> float:
        """y at x.  Raises UnsolvedError outside the points."""
        return self.value_and_slope(x)[0]

    def slope(self, x: float) -> float:
        """dy/dx at x.  Raises UnsolvedError outside the points."""
        return self.value_and_slope(x)[1]

    def value_and_slope(self, x: float) -> tuple[float, float]:
        """(y, dy/dx) at x.  Raises UnsolvedError outside the points."""
        xs, ys, slopes = self.xs, self.ys, self._slopes
        if not xs[0] <= x <= xs[-1]:
            raise UnsolvedError(f"{x:g} is outside the curve's points, {xs[0]:g} to {xs[-1]:g}.")
        i = min(bisect_right(xs, x), len(xs) - 1) - 1
        width, t = xs[i + 1] - xs[i], (x - xs[i]) / (xs[i + 1] - xs[i])
        rise = (ys[i + 1] - ys[i]) / width
        start, end = slopes[i], slopes[i + 1]
        bend, twist = 3 * rise - 2 * start - end, start + end - 2 * rise
        value = ys[i] + width * t * (start + t * (bend + t * twist))
        if t == 1.0:
            value = ys[i + 1]
        return value, start + t * (2 * bend + 3 * t * twist)


def _slopes(xs: tuple[float, ...], ys: tuple[float, ...]) -> tuple[float, ...]:
    widths = [b - a for a, b in itertools.pairwise(xs)]
    rises = [(b - a) / w for a, b, w in zip(ys, ys[1:], widths, strict=False)]
    if len(rises) == 1:
        return (rises[0], rises[0])
    inner = []
    for w1, w2, r1, r2 in zip(widths, widths[1:], rises, rises[1:], strict=False):
        if r1 == 0 or r2 == 0 or (r1 > 0) != (r2 > 0):
            inner.append(0.0)
        else:
            heavy, light = 2 * w2 + w1, w2 + 2 * w1
            inner.append((heavy + light) / (heavy / r1 + light / r2))
    first = _end_slope(widths[0], widths[1], rises[0], rises[1])
    last = _end_slope(widths[-1], widths[-2], rises[-1], rises[-2])
    return (first, *inner, last)


def _end_slope(near: float, far: float, rise: float, next_rise: float) -> float:
    """One-sided three-point slope, held back where it would bend the curve the wrong way."""
    slope = ((2 * near + far) * rise - near * next_rise) / (near + far)
    if slope == 0 or rise == 0 or (slope > 0) != (rise > 0):
        return 0.0
    if (rise > 0) != (next_rise > 0) and abs(slope) > 3 * abs(rise):
        return 3 * rise
    return slope
