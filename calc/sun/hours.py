"""Days turned into hours, and hours on level ground into hours on a panel's plane.

Hour 0 of the year's 8,760 runs from 0 to 1 o'clock on 1 January.  The clock is the local standard
time where a longitude is given, else the sun's own.  What the sun does at a place is worked out
once (``sun_hours``), what a plane sees of it once a plane (``facing``); a year is then sums.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.sun import days as seeded
from calc.sun.horizon import FLAT, Skyline, sky_share
from calc.sun.plane import FAIMAN_0, FAIMAN_1, LOWEST, Plane
from calc.sun.position import (
    HALF_PI,
    HOUR_ANGLE,
    NOON,
    YEAR,
    clock_shift,
    declination,
    extraterrestrial_normal,
    sunset_angle,
)
from calc.sun.sky import bend, daily_diffuse_share
from calc.units import HOUR, MONTHS

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

HOURS = 24 * YEAR
HALF_HOUR = HOUR_ANGLE / 2  # rad


@dataclass(frozen=True)
class SunHours:
    """The hours of a year with the sun up, at a place; one number an hour, in order.

    ``at``: the hour of the year; ``east``, ``north``, ``up``: parts of the sun's direction, mean
    over the part of the hour that is daylight; ``outside``: W/m2 on level ground without the air
    (the sun not below 1 degree);
    ``of_day``, ``of_diffuse``: the hour's share of the day's light and of its diffuse light.
    By day: ``first``, where in the lists its hours begin, 366 numbers; ``sunset``: rad;
    ``day_light``: J/m2 on level ground without the air.
    """

    at: tuple[int, ...]
    east: tuple[float, ...]
    north: tuple[float, ...]
    up: tuple[float, ...]
    outside: tuple[float, ...]
    of_day: tuple[float, ...]
    of_diffuse: tuple[float, ...]
    first: tuple[int, ...]
    sunset: tuple[float, ...]
    day_light: tuple[float, ...]


@dataclass(frozen=True)
class Level:
    """A year on level ground, W/m2 of each hour: all of it, the beam's part, the diffuse part."""

    whole: tuple[float, ...]
    beam: tuple[float, ...]
    diffuse: tuple[float, ...]


@dataclass(frozen=True)
class Facing:
    """What a plane sees of the sun at a place.

    ``ratio``: beam on the plane over beam on level ground, of each hour of ``sun``, 0 where the
    sun is behind it or the skyline; ``sky``, ``ground``: shares of diffuse and of all light.
    """

    sun: SunHours
    ratio: tuple[float, ...]
    sky: float
    ground: float


@dataclass(frozen=True)
class Series:
    """A year at a place and tilt, of each of 8,760 hours.

    ``plane``: W/m2 on the panel's plane; ``air``, ``module``: temperatures, K.
    """

    plane: tuple[float, ...]
    air: tuple[float, ...]
    module: tuple[float, ...]


def day_hours(
    latitude: float, day: int, shift: float = 0.0
) -> tuple[float, list[tuple[int, float, float, float, float, float]]]:
    """The hours of one day with the sun up.

    An hour that holds sunrise or sunset counts by its daylit part.  Means over the hour:
    cos omega sin(w/2) / (w/2), w the hour's width; and sin omega likewise
    latitude: rad, -pi/2 to pi/2; day: number, 1 to 366; shift: hours, from ``clock_shift``.
    Returns (sunset angle, rad; of each hour its number, its daylit share, mean cos omega, and
    the mean parts of the sun's direction east, north and up).  Raises RangeError outside.
    Source: the means are integrals of ``position``.
    """
    tilt = declination(day + NOON)
    end = sunset_angle(latitude, tilt)
    up_0, up_1 = math.sin(latitude) * math.sin(tilt), math.cos(latitude) * math.cos(tilt)
    north_0, north_1 = math.cos(latitude) * math.sin(tilt), math.sin(latitude) * math.cos(tilt)
    cosine, found = math.cos(tilt), []
    for hour in range(24):
        turn = (HOUR_ANGLE * (hour - 11.5 + shift) + math.pi) % (2 * math.pi) - math.pi
        away, half = abs(turn), HALF_HOUR
        if away - half >= end:
            continue
        if away + half > end and end < math.pi:
            low = max(away - half, -end)
            half = (end - low) / 2
            turn = math.copysign(low + half, turn)
        narrowed = 1 - half * half / 6
        along, across = math.cos(turn) * narrowed, math.sin(turn) * narrowed
        up = up_0 + up_1 * along
        if up > 1e-6:
            part = (hour, half / HALF_HOUR, along)
            found.append((*part, -cosine * across, north_0 - north_1 * along, up))
    return end, found


def sun_hours(
    latitude: float, longitude: float | None = None, zone: float | None = None
) -> SunHours:
    """The sun through a year of 365 days at a place.

    latitude: rad, -pi/2 to pi/2, north positive; longitude: rad, -pi to pi, east positive (None:
    hours are the sun's own); zone: hours ahead of UTC, -12 to 14 (None: the nearest whole one).
    Returns ``SunHours``.  Raises RangeError outside.
    Source: M. Collares-Pereira and A. Rabl (1979) and B. Y. H. Liu and R. C. Jordan (1960) for
    the shares, made to add to 1 over the day's hours.
    """
    require("latitude", latitude, -HALF_PI, HALF_PI, "angle", "North is positive, south negative.")
    if longitude is not None and zone is None:
        zone = float(round(longitude / HOUR_ANGLE))
    at: list[int] = []
    rows: list[tuple[float, ...]] = []
    first, sunsets, day_light = [0], [], []
    for day in range(1, YEAR + 1):
        shift = 0.0
        if longitude is not None and zone is not None:
            shift = clock_shift(day, longitude, zone)
        end, hours = day_hours(latitude, day, shift)
        normal, (base, more) = extraterrestrial_normal(day), bend(end)
        diffuse = [up * part for _, part, _, _, _, up in hours]
        whole = [max(0.0, base + more * one[2]) * d for one, d in zip(hours, diffuse, strict=True)]
        by_diffuse, by_whole = sum(diffuse) or 1.0, sum(whole) or 1.0
        start = 24 * (day - 1)
        for (hour, _, _, *sun, up), d, g in zip(hours, diffuse, whole, strict=True):
            at.append(start + hour)
            above = normal * max(up, LOWEST)
            rows.append((*sun, up, above, g / by_whole, d / by_diffuse))
        first.append(len(rows))
        sunsets.append(end)
        day_light.append(normal * sum(diffuse) * HOUR)
    columns = [tuple(column) for column in zip(*rows, strict=True)]
    return SunHours(
        tuple(at), columns[0], columns[1], columns[2], columns[3], columns[4], columns[5],
        tuple(first), tuple(sunsets), tuple(day_light),
    )  # fmt: skip


def level_from_days(sun: SunHours, days: Sequence[float]) -> Level:
    """Hours on level ground from the light of each day.

    G = H r_t, D = H f r_d, at most G; B = G - D, f from ``daily_diffuse_share``
    sun: the place; days: 365 numbers, J/m2 a day, 0 or more.  A day on which the sun does not
    rise gives nothing.  Returns ``Level``.  Raises InputError for another number of days.
    Source: Collares-Pereira and Rabl (1979), Liu and Jordan (1960), Erbs et al. (1982).
    """
    if len(days) != YEAR:
        raise InputError(f"Give 365 days of sunlight; there are {len(days)}.", name="days")
    whole, beam, diffuse = [0.0] * HOURS, [0.0] * HOURS, [0.0] * HOURS
    at, of_day, of_diffuse, first = sun.at, sun.of_day, sun.of_diffuse, sun.first
    for day, light in enumerate(days):
        if light <= 0 or sun.day_light[day] <= 0:
            continue
        share = daily_diffuse_share(min(1.0, light / sun.day_light[day]), sun.sunset[day])
        power = light / HOUR
        scattered = power * share
        for one in range(first[day], first[day + 1]):
            hour, g, d = at[one], power * of_day[one], scattered * of_diffuse[one]
            if d > g:
                d = g
            whole[hour], beam[hour], diffuse[hour] = g, g - d, d
    return Level(tuple(whole), tuple(beam), tuple(diffuse))


def level_from_hours(
    sun: SunHours, level: Sequence[float], beam: Sequence[float], diffuse: Sequence[float]
) -> Level:
    """Hours on level ground from the three columns of an hourly file.

    B = I_b cos z, cos z the mean over the daylit part of the hour
    sun: the place, by its clock; level: all light on level ground, beam: I_b, on a plane that
    faces the sun, diffuse: on level ground, 8,760 numbers each, W/m2.
    Returns ``Level``.  Raises InputError for another number of hours.  Source: geometry.
    """
    for name, one in (("level", level), ("beam", beam), ("diffuse", diffuse)):
        if len(one) != HOURS:
            raise InputError(f"A year has 8,760 hours; there are {len(one)}.", name=name)
    falling = [0.0] * HOURS
    for hour, up in zip(sun.at, sun.up, strict=True):
        falling[hour] = beam[hour] * up
    return Level(tuple(level), tuple(falling), tuple(diffuse))


def facing(sun: SunHours, plane: Plane, line: Skyline = FLAT) -> Facing:
    """What a plane sees of the sun through the year, with the skyline before it.

    R_b = cos theta / cos z, of the hour's means
    sun: the place; plane: slope, azimuth and ground; line: skyline, judged at the middle of the
    daylit hour.  Returns ``Facing``.  Raises nothing.
    Source: Duffie and Beckman, Solar Engineering, 1.8 and 2.14.
    """
    up_part = math.cos(plane.slope)
    north_part = math.sin(plane.slope) * math.cos(plane.azimuth)
    east_part = math.sin(plane.slope) * math.sin(plane.azimuth)
    parts = zip(sun.east, sun.north, sun.up, strict=True)
    ratio = [(east_part * east + north_part * north) / up + up_part for east, north, up in parts]
    seen = [one if one > 0 else 0.0 for one in ratio]
    if line.points:
        for at, (east, north, up) in enumerate(zip(sun.east, sun.north, sun.up, strict=True)):
            if math.atan2(up, math.hypot(east, north)) < line.elevation(math.atan2(east, north)):
                seen[at] = 0.0
    ground = plane.albedo * (1 - up_part) / 2
    return Facing(sun, tuple(seen), sky_share(line, plane.slope, plane.azimuth), ground)


def plane_light(view: Facing, level: Level) -> tuple[float, ...]:
    """A year's light on a plane.

    G = (B + D A) R_b + D (1 - A) F + H rho (1 - cos beta)/2, A = B / H_0, at most 1
    B, D, H: beam, diffuse and all on level ground; H_0: without the air; F: share of the sky.
    What comes from about the sun (D A) is hidden with it.
    view: the plane; level: the hours.  Returns 8,760 numbers, W/m2.  Raises nothing.
    Source: J. E. Hay and J. A. Davies (1980), as ``calc.sun.plane.on_plane``.
    """
    sky, ground = view.sky, view.ground
    light = [d * sky + g * ground for d, g in zip(level.diffuse, level.whole, strict=True)]
    beams, diffuse, sun = level.beam, level.diffuse, view.sun
    for hour, ratio, outside in zip(sun.at, view.ratio, sun.outside, strict=True):
        beam = beams[hour]
        if beam > 0:
            about = diffuse[hour] * (beam / outside if beam < outside else 1.0)
            light[hour] += (beam + about) * ratio - about * sky
    return tuple(light)


def air_hours(means: Sequence[float], swing: float = practice.AIR_SWING) -> tuple[float, ...]:
    """The air's temperature of each hour, from twelve monthly means.

    T = T_d + s/2 cos(pi/12 (t - 15)), T_d on straight lines between the middles of months
    means: twelve, K, 200 to 330; swing: s, K, 0 to 40, from the coolest to the warmest of a day.
    Returns 8,760 numbers, K.  Raises InputError for another number of months or one that is no
    temperature, RangeError for the swing.
    Source: our choice; the warmest hour is common practice.
    """
    require("swing", swing, 0.0, 40.0, "number")
    if len(means) != 12:
        raise InputError(f"Give twelve monthly temperatures; there are {len(means)}.", name="means")
    for name, one in zip(MONTHS, means, strict=True):
        if not 200.0 <= one <= 330.0:
            raise InputError(f"{name} is not a temperature of the air.", name="means")
    middles = [sum(seeded.MONTH_DAYS[:m]) + seeded.MONTH_DAYS[m] / 2 for m in range(12)]
    middles = [middles[-1] - YEAR, *middles, middles[0] + YEAR]
    values = [means[-1], *means, means[0]]
    wave = [
        swing / 2 * math.cos(HOUR_ANGLE * (hour + 0.5 - practice.WARMEST_HOUR))
        for hour in range(24)
    ]
    air: list[float] = []
    month = 0
    for day in range(YEAR):
        while day + 0.5 >= middles[month + 1]:
            month += 1
        along = (day + 0.5 - middles[month]) / (middles[month + 1] - middles[month])
        mean = values[month] + along * (values[month + 1] - values[month])
        air += [mean + one for one in wave]
    return tuple(air)


def series(
    view: Facing, level: Level, air: Sequence[float], wind_ms: float = practice.MODULE_WIND
) -> Series:
    """A year on a plane, with the temperature of the air and of the module.

    view: the plane; level: the hours; air: 8,760 numbers, K; wind_ms: m/s, 0 to 40.
    Returns ``Series``.  Raises InputError for another number of hours, RangeError outside.
    Source: ``plane_light`` and ``calc.sun.plane.module_temperature``.
    """
    require("wind_ms", wind_ms, 0.0, 40.0, "speed")
    if len(air) != HOURS:
        raise InputError(f"A year has 8,760 hours; there are {len(air)}.", name="air")
    light = plane_light(view, level)
    heat = 1 / (FAIMAN_0 + FAIMAN_1 * wind_ms)
    module = [t + heat * g for t, g in zip(air, light, strict=True)]
    return Series(light, tuple(air), tuple(module))


def seeded_series(
    view: Facing,
    years: Sequence[Sequence[float]],
    air: Sequence[float],
    wind_ms: float = practice.MODULE_WIND,
) -> Iterator[Series]:
    """One ``Series`` after another for seeded years, each made when it is asked for.

    view: the plane; years: from ``calc.sun.days.years``, J/m2 a day; air: 8,760 numbers, K;
    wind_ms: m/s, 0 to 40.  Yields ``Series``.  Raises as ``series`` and ``level_from_days``.
    Source: as these.
    """
    for days in years:
        yield series(view, level_from_days(view.sun, days), air, wind_ms)
