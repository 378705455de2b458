"""Seeded years of days from twelve monthly means, with runs of dull weather.

A day's clearness is its light over what is outside the air.  Within a month it is drawn from the
distribution that goes with the month's mean, and each day leans on the one before.  The same
means, latitude and seed give the same years, to the last digit, wherever they are worked out:
only ``random.Random.random`` is asked, and each day is rounded to ``STEP``.
"""

from __future__ import annotations

import math
import random
from functools import lru_cache
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.sun.position import YEAR, daily_outside
from calc.sun.sky import CLEAREST
from calc.units import HOUR, MONTHS

if TYPE_CHECKING:
    from collections.abc import Sequence

MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
LEAN = 0.29  # of a day on the day before: Graham, Hollands and Huget (1988)
DULLEST = 0.05  # least clearness of a day: Bendt, Collares-Pereira and Rabl (1981)
# of the month's mean, at least, on its dullest day: our choice, as three hourly years have 0.22 to
# 0.39; up to a mean of 0.25 it changes nothing, above it keeps a dry place's weeks from being too
# dull
DULLEST_SHARE = 0.2
STEP = 100.0  # J/m2, a day is rounded to: far above what two machines' arithmetic differs by
SEEDED = 20  # years made at once, whose mean is the given one; our choice
DARK = 0.5e6  # J/m2 a day outside the air, below which a mean is not judged; our choice


def month_of_days() -> tuple[int, ...]:
    """The month, 0 to 11, of each of the year's 365 days.  Returns whole numbers."""
    return tuple(month for month, days in enumerate(MONTH_DAYS) for _ in range(days))


def monthly_means(hours: Sequence[float]) -> tuple[float, ...]:
    """The mean daily light of each month, from the hours of a year.

    hours: 8,760 numbers, W/m2.  Returns twelve numbers, J/m2 a day.  Raises InputError for
    another number of hours.  Source: sum.
    """
    if len(hours) != 24 * YEAR:
        raise InputError(f"A year has 8,760 hours; there are {len(hours)}.", name="hours")
    means, first = [], 0
    for days in MONTH_DAYS:
        means.append(HOUR * math.fsum(hours[first : first + 24 * days]) / days)
        first += 24 * days
    return tuple(means)


def clearest_of_month(mean: float) -> float:
    """The clearness of the clearest day of a month.

    K_max = 0.6313 + 0.267 K - 11.9 (K - 0.75)^8
    mean: K, the month's mean clearness, share, 0 to 0.9; the fit holds from 0.15 to 0.75.  Below
    and above, K_max stays a quarter of the way to 1 above the mean at least (our choice).
    Returns a share.  Raises RangeError outside.
    Source: K. G. T. Hollands and R. G. Huget, Solar Energy 30 (1983) 195-209, as in Duffie and
    Beckman, Solar Engineering, eq. 2.9.5.
    """
    require("mean", mean, 0.0, 0.9, "percent")
    fitted = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8
    return max(fitted, mean + 0.25 * (1 - mean) * min(1.0, mean / DULLEST))


def steepness(mean: float, low: float, high: float) -> float:
    """How fast the clearness of days grows more frequent from the dullest to the clearest.

    K = (K_max e^(g K_max) - K_min e^(g K_min)) / (e^(g K_max) - e^(g K_min)) - 1/g, solved for g
    mean: K, share, between low: K_min and high: K_max, shares.  Returns g, a number, within 400
    of 0.  Raises RangeError outside.
    Source: P. Bendt, M. Collares-Pereira and A. Rabl, Solar Energy 27 (1981) 1-5.

    >>> abs(steepness(0.5, 0.25, 0.75)) < 1e-6
    True
    """
    require("mean", mean, low, high, "percent")
    width, wanted = high - low, (mean - low) / (high - low)
    down, up = -400.0, 400.0
    for _ in range(60):
        middle = (down + up) / 2
        if _mean_of(middle) < wanted:
            down = middle
        else:
            up = middle
    return (down + up) / 2 / width


def _mean_of(rate: float) -> float:
    """Mean of a variable on 0 to 1 whose density grows as e^(rate x)."""
    if abs(rate) < 1e-3:
        return 0.5 + rate / 12
    return 1 / (1 - math.exp(-rate)) - 1 / rate if rate > 0 else 1 - _mean_of(-rate)


def clearness_at(share: float, rate: float, low: float, high: float) -> float:
    """The clearness that a share of the days stays below.

    k = ln((1 - F) e^(g K_min) + F e^(g K_max)) / g
    share: F, 0 to 1; rate: g, number, from ``steepness``; low, high: K_min, K_max, shares.
    Returns a share.  Raises RangeError outside.
    Source: Bendt, Collares-Pereira and Rabl (1981), its distribution turned round.

    >>> round(clearness_at(1.0, 3.0, 0.05, 0.7), 9)
    0.7
    """
    require("share", share, 0.0, 1.0, "percent")
    width = high - low
    if abs(rate * width) < 1e-3:
        return low + share * width
    if rate > 0:
        return high + math.log(share + (1 - share) * math.exp(-rate * width)) / rate
    return low + math.log(1 - share + share * math.exp(rate * width)) / rate


@lru_cache(8)  # a place is asked about again and again
def outside(latitude: float) -> tuple[float, ...]:
    """What would reach level ground on each of 365 days without the air.

    ``daily_outside`` of each day
    latitude: rad, -pi/2 to pi/2.  Returns J/m2 a day.  Raises RangeError outside.
    Source: FAO-56 eq. 21; Spencer (1971).
    """
    return tuple(daily_outside(latitude, day) for day in range(1, YEAR + 1))


def checked_means(means: Sequence[float | None], latitude: float) -> tuple[float, ...]:
    """Twelve monthly means that a place at that latitude can have.

    means: twelve, J/m2 a day on level ground, 0 to 50e6; latitude: rad, -pi/2 to pi/2.
    Returns them.  Raises InputError naming the month that is missing, is no number, or has more
    light than can reach the ground there (0.85 of what is outside the air); RangeError for the
    latitude.  Source: FAO-56 eq. 21; the bound is our choice.
    """
    if len(means) != 12:
        raise InputError(
            f"Give twelve monthly means, January to December; there are {len(means)}.",
            name="means",
        )
    above, month = [0.0] * 12, month_of_days()
    for day, light in enumerate(outside(latitude)):
        above[month[day]] += light / MONTH_DAYS[month[day]]
    found: list[float] = []
    for name, mean, most in zip(MONTHS, means, above, strict=True):
        if mean is None:
            raise InputError(f"{name} is missing: give all twelve months.", name="means")
        if not 0 <= mean <= practice.BRIGHTEST_DAY:
            raise InputError(
                f"{name} is not a daily amount of sunlight: give 0 to 13.9 kWh/m² a day.",
                name="means",
            )
        if most > DARK and mean > CLEAREST * most:
            raise InputError(
                f"{name} has more sunlight than can reach the ground at this latitude: "
                f"{mean / 3.6e6:.2f} kWh/m² a day; at most {CLEAREST * most / 3.6e6:.2f}.",
                name="means",
            )
        found.append(float(mean))
    return tuple(found)


def normal_scores(seed: int, count: int) -> list[float]:
    """A run of normal numbers, each leaning on the one before.

    z_1 = e_1, z_i = r z_i-1 + sqrt(1 - r^2) e_i, r = 0.29, e normal by Box and Muller
    seed, count: whole numbers, 0 or more.  Returns ``count`` numbers, mean 0, variance 1.
    Raises nothing.  Source: V. A. Graham, K. G. T. Hollands and T. E. Huget, Solar Energy 40
    (1988) 83-92; G. E. P. Box and M. E. Muller (1958).
    """
    return list(_scores(seed, count))


@lru_cache(SEEDED)  # the same seeds for every place
def _scores(seed: int, count: int) -> tuple[float, ...]:
    draw = random.Random(seed).random
    keep, found, last = math.sqrt(1 - LEAN * LEAN), [], 0.0
    for at in range(count):
        fresh = math.sqrt(-2 * math.log(1 - draw())) * math.cos(2 * math.pi * draw())
        last = LEAN * last + keep * fresh if at else fresh
        found.append(last)
    return tuple(found)


def years(
    means: Sequence[float | None], latitude: float, seed: int = 0, count: int = SEEDED
) -> tuple[tuple[float, ...], ...]:
    """Seeded years of daily light on level ground, whose mean is the twelve given means.

    H = k R_a, k from ``clearness_at`` of the share Phi(z), z from ``normal_scores``; then each
    month of all the years is multiplied by one number, so that their mean is the given one.
    A single year's months still vary.  Where a month is dark, its light (if any) goes by R_a.
    means: twelve, J/m2 a day; latitude: rad, -pi/2 to pi/2; seed: whole number, 0 or more;
    count: whole number of years, 1 to 100: with one, its own months are the given ones.
    Returns years of 365 days, J/m2 a day, in steps of 100.  Raises as ``checked_means``.
    Source: Bendt, Collares-Pereira and Rabl (1981); Graham, Hollands and Huget (1988).  Tried on
    three hourly years: the worst week is right in dry places, too dull in the maritime tropics.
    """
    require("count", count, 1, 100, "number")
    wanted = checked_means(means, latitude)
    above = outside(latitude)
    made = [normal_scores(1000 * seed + one, YEAR) for one in range(count)]
    root, first = math.sqrt(0.5), 0
    for month, days in enumerate(MONTH_DAYS):
        light = above[first : first + days]
        total, part = sum(light), slice(first, first + days)
        first += days
        mean = wanted[month] * days / total if total > 0 else 0.0
        if total <= DARK * days or mean <= DULLEST:
            for year in made:
                year[part] = [mean * one for one in light]
            continue
        low, high = max(DULLEST, DULLEST_SHARE * mean), clearest_of_month(mean)
        rate = steepness(mean, low, high)
        for year in made:
            year[part] = [
                one * clearness_at(0.5 + 0.5 * math.erf(score * root), rate, low, high)
                for one, score in zip(light, year[part], strict=True)
            ]
        level = wanted[month] * days * count / sum(sum(year[part]) for year in made)
        for year in made:
            year[part] = [level * one for one in year[part]]
    return tuple(tuple(round(day / STEP) * STEP for day in year) for year in made)
