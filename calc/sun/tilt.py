"""The tilt that suits a place: for its worst month, its growing season, and the whole year.

Panels face the equator.  Each month stands for its mean day; slopes are whole degrees.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.sun.days import MONTH_DAYS, checked_means
from calc.sun.hours import day_hours
from calc.sun.position import extraterrestrial_normal
from calc.sun.sky import bend, monthly_diffuse_share
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

# The day of each month whose light outside the air is the month's mean: S. A. Klein, Solar Energy
# 19 (1977) 325-329, as in Duffie and Beckman, table 1.6.1
MEAN_DAYS = (17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344)
STEEPEST = 90  # degrees, slopes tried from 0 to there
EVERY_MONTH = tuple(range(1, 13))


@dataclass(frozen=True)
class BestTilt:
    """A tilt and what it gives. ``slope``, ``azimuth``: rad; ``daily``: J/m2 a day by month."""

    slope: float
    azimuth: float
    daily: tuple[float, ...]


@dataclass(frozen=True)
class _Month:
    """A month's mean day.

    ``beams``: of each hour (J/m2 on a plane facing the sun, the sun's height, the sun's part to
    the equator); ``sky``, ``level``: even diffuse and all light on level ground, J/m2.
    """

    beams: tuple[tuple[float, float, float], ...]
    sky: float
    level: float

    def on(self, slope: float, albedo: float) -> float:
        """J/m2 a day on a plane of that slope (rad) facing the equator."""
        up_part, side_part = math.cos(slope), math.sin(slope)
        total = self.sky * (1 + up_part) / 2 + self.level * albedo * (1 - up_part) / 2
        for beam, up, side in self.beams:
            facing = up * up_part + side * side_part
            if facing > 0:
                total += beam * facing
        return total


def towards_equator(latitude: float) -> float:
    """Where panels face: south in the north and on the equator, north in the south.

    latitude: rad, -pi/2 to pi/2.  Returns rad from north: pi or 0.  Raises RangeError outside.
    Source: common practice.
    """
    require("latitude", latitude, -math.pi / 2, math.pi / 2, "angle")
    return 0.0 if latitude < 0 else math.pi


def _month(latitude: float, day: int, mean: float) -> _Month:
    end, hours = day_hours(latitude, day)
    normal, (base, more) = extraterrestrial_normal(day), bend(end)
    spread = [up * part for _, part, _, _, _, up in hours]
    shape = [max(0.0, base + more * one[2]) * s for one, s in zip(hours, spread, strict=True)]
    outside = normal * HOUR * sum(spread)
    if outside <= 0 or mean <= 0:
        return _Month((), 0.0, 0.0)
    scattered = mean * monthly_diffuse_share(min(1.0, mean / outside), end)
    to_equator = 1.0 if latitude < 0 else -1.0
    beams, sky = [], 0.0
    for (_, _, _, _, north, up), s, g in zip(hours, spread, shape, strict=True):
        level = mean * g / sum(shape)
        diffuse = min(level, scattered * s / sum(spread))
        about = diffuse * min(1.0, (level - diffuse) / (normal * HOUR * s))
        sky += diffuse - about
        beams.append(((level - diffuse + about) / up, up, to_equator * north))
    return _Month(tuple(beams), sky, mean)


def _months(means: Sequence[float | None], latitude: float) -> list[_Month]:
    wanted = checked_means(means, latitude)
    return [_month(latitude, day, mean) for day, mean in zip(MEAN_DAYS, wanted, strict=True)]


def plane_means(
    means: Sequence[float | None],
    latitude: float,
    slope: float,
    albedo: float = practice.ALBEDO,
) -> tuple[float, ...]:
    """What falls on a plane that faces the equator, by month.

    The mean day's hours by ``hour_of_day_global``, turned to the plane as
    ``calc.sun.plane.on_plane``; the diffuse share is ``monthly_diffuse_share``
    means: twelve, J/m2 a day on level ground; latitude: rad, -pi/2 to pi/2; slope: rad, 0 to
    pi/2; albedo: share, 0 to 1.  Returns twelve numbers, J/m2 a day.
    Raises InputError naming the month, RangeError outside.
    Source: the mean day of S. A. Klein, Solar Energy 19 (1977) 325-329.
    """
    require("slope", slope, 0.0, math.pi / 2, "angle")
    require("albedo", albedo, 0.0, 1.0, "percent")
    return tuple(month.on(slope, albedo) for month in _months(means, latitude))


def _best(
    months: list[_Month],
    latitude: float,
    albedo: float,
    worth: Callable[[tuple[float, ...]], float],
) -> BestTilt:
    require("albedo", albedo, 0.0, 1.0, "percent")
    found = BestTilt(0.0, towards_equator(latitude), ())
    most = -1.0
    for degrees in range(STEEPEST + 1):
        slope = math.radians(degrees)
        daily = tuple(month.on(slope, albedo) for month in months)
        if worth(daily) > most * (1 + 1e-12):
            most, found = worth(daily), BestTilt(slope, found.azimuth, daily)
    return found


def best_for_months(
    means: Sequence[float | None],
    latitude: float,
    months: Sequence[int],
    albedo: float = practice.ALBEDO,
) -> BestTilt:
    """The tilt with the most light over a growing season.

    The slope that makes the sum of days times ``plane_means`` greatest
    means: twelve, J/m2 a day on level ground; latitude: rad, -pi/2 to pi/2; months: whole
    numbers, 1 to 12, at least one; albedo: share, 0 to 1.  Returns ``BestTilt``.
    Raises InputError naming the month, RangeError outside.  Source: ``plane_means``.
    """
    if not months or not set(months) <= set(EVERY_MONTH):
        raise InputError("Name the months of the season by numbers, 1 to 12.", name="months")
    chosen = sorted({one - 1 for one in months})
    return _best(
        _months(means, latitude), latitude, albedo,
        lambda daily: sum(daily[one] * MONTH_DAYS[one] for one in chosen),
    )  # fmt: skip


def best_for_year(
    means: Sequence[float | None], latitude: float, albedo: float = practice.ALBEDO
) -> BestTilt:
    """The tilt with the most light over the year.

    ``best_for_months`` of all twelve
    means: twelve, J/m2 a day on level ground; latitude: rad, -pi/2 to pi/2; albedo: share, 0 to
    1.  Returns ``BestTilt``.  Raises as ``plane_means``.  Source: ``plane_means``.
    """
    return best_for_months(means, latitude, EVERY_MONTH, albedo)


def best_for_worst_month(
    means: Sequence[float | None], latitude: float, albedo: float = practice.ALBEDO
) -> BestTilt:
    """The tilt whose worst month is the best.

    The slope that makes the least of ``plane_means`` greatest; months without sun do not count
    means: twelve, J/m2 a day on level ground; latitude: rad, -pi/2 to pi/2; albedo: share, 0 to
    1.  Returns ``BestTilt``.  Raises as ``plane_means``.  Source: ``plane_means``.
    """
    months = _months(means, latitude)
    lit = [at for at, month in enumerate(months) if month.level > 0]
    return _best(
        months, latitude, albedo, lambda daily: min((daily[at] for at in lit), default=0.0)
    )
