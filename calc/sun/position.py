"""Where the sun stands, and what reaches the top of the air.

Angles are radians, azimuths from north, clockwise.  A day is the day of the year, 1 to 366; an
hour is of solar time unless it says local: the sun is highest at 12.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.errors import require
from calc.units import DAY, MINUTE

SOLAR_CONSTANT = 0.0820e6 / MINUTE  # W/m2, 0.0820 MJ/m2 a minute: FAO-56 eq. 21
HOUR_ANGLE = math.pi / 12  # rad an hour
YEAR = 365
# Days by which a date of the mean year is later in the season than Spencer's, who counts from 0 h
# of 1 January of a leap year: 0, 0.76, 0.52, 0.27 in four years after one another
LATER = 0.39
NOON = LATER + 0.5
HALF_PI = math.pi / 2


@dataclass(frozen=True)
class Position:
    """Where the sun stands. ``zenith``: rad from straight up; ``azimuth``: rad from north."""

    zenith: float
    azimuth: float


def _day(day: float) -> float:
    return require("day", day, 1, 366, "number", "Give the day of the year.")


def _latitude(latitude: float) -> float:
    return require(
        "latitude", latitude, -HALF_PI, HALF_PI, "angle", "North is positive, south negative."
    )


def _season(day: float) -> float:
    """The season as an angle, rad, of a day that may be a fraction."""
    return 2 * math.pi * (require("day", day, 0, 368, "number") - 1) / YEAR


def declination(day: float) -> float:
    """The sun's angle over the equator's plane.

    delta = 0.006918 - 0.399912 cos G + 0.070257 sin G - 0.006758 cos 2G + 0.000907 sin 2G
    - 0.002697 cos 3G + 0.00148 sin 3G, G = 2 pi (n - 1) / 365
    day: n, number, 0 to 368, with its fraction; ``NOON`` past a date is its noon in a mean year.
    Returns rad.  Raises RangeError outside.
    Source: J. W. Spencer, Search 2 (1971) 172.

    >>> round(math.degrees(declination(172)), 1)
    23.5
    """
    one = _season(day)
    return (
        0.006918
        - 0.399912 * math.cos(one)
        + 0.070257 * math.sin(one)
        - 0.006758 * math.cos(2 * one)
        + 0.000907 * math.sin(2 * one)
        - 0.002697 * math.cos(3 * one)
        + 0.00148 * math.sin(3 * one)
    )


def equation_of_time(day: float) -> float:
    """How far solar time is ahead of a clock that runs evenly.

    E = 12/pi (7.5e-6 + 0.001868 cos G - 0.032077 sin G - 0.014615 cos 2G - 0.040849 sin 2G)
    day: n, number, and G as ``declination``.  Returns hours.  Raises RangeError outside.
    Source: J. W. Spencer, Search 2 (1971) 172, with the corrected first term.

    >>> round(60 * equation_of_time(42))
    -14
    """
    one = _season(day)
    angle = (
        0.0000075
        + 0.001868 * math.cos(one)
        - 0.032077 * math.sin(one)
        - 0.014615 * math.cos(2 * one)
        - 0.040849 * math.sin(2 * one)
    )
    return angle / HOUR_ANGLE


def hour_angle(hour: float) -> float:
    """The sun's angle from its highest point, negative in the morning.

    omega = pi/12 (t - 12)
    hour: t, solar hours, -24 to 48.  Returns rad.  Raises RangeError outside.
    Source: definition.
    """
    return HOUR_ANGLE * (require("hour", hour, -24.0, 48.0, "number") - 12.0)


def clock_shift(day: float, longitude: float, zone: float) -> float:
    """What to add to the local standard time for the solar time.

    s = 12/pi L - z + E
    day: number, 1 to 366; longitude: L, rad, east positive, -pi to pi; zone: z, hours ahead of
    UTC, -12 to 14, without summer time; E is ``equation_of_time``.  Returns hours.
    Raises RangeError outside.  Source: Duffie and Beckman, Solar Engineering, 1.5.
    """
    require("longitude", longitude, -math.pi, math.pi, "angle", "East is positive.")
    require("zone", zone, -12.0, 14.0, "number", "Hours ahead of UTC, without summer time.")
    return longitude / HOUR_ANGLE - zone + equation_of_time(_day(day) + NOON)


def position(latitude: float, day: float, hour: float) -> Position:
    """Where the sun stands at an hour of solar time.

    cos z = sin phi sin delta + cos phi cos delta cos omega; the azimuth from the parts of the
    sun's direction to the north and east
    latitude: phi, rad, -pi/2 to pi/2; day: number, 1 to 366; hour: solar hours.
    Returns ``Position``, without refraction.  Raises RangeError outside.
    Source: spherical trigonometry; Duffie and Beckman, Solar Engineering, 1.6.

    >>> here = position(math.radians(40), 80, 12)
    >>> round(math.degrees(here.zenith)), round(math.degrees(here.azimuth))
    (40, 180)
    """
    return _position(latitude, _day(day) + LATER + hour / 24, hour_angle(hour))


def _position(latitude: float, moment: float, turn: float) -> Position:
    tilt = declination(moment)
    sine, cosine = math.sin(_latitude(latitude)), math.cos(latitude)
    up = sine * math.sin(tilt) + cosine * math.cos(tilt) * math.cos(turn)
    north = cosine * math.sin(tilt) - sine * math.cos(tilt) * math.cos(turn)
    east = -math.cos(tilt) * math.sin(turn)
    return Position(math.acos(max(-1.0, min(1.0, up))), math.atan2(east, north) % (2 * math.pi))


def position_by_clock(
    latitude: float, longitude: float, zone: float, day: float, hour: float
) -> Position:
    """Where the sun stands at an hour of local standard time.

    ``position`` at the solar hour t + s, s from ``clock_shift``
    latitude, longitude: rad; zone: hours ahead of UTC; day: number, 1 to 366; hour: t, hours of
    local standard time, 0 to 24.  Returns ``Position``.  Raises RangeError outside.
    Source: as ``position``.
    """
    require("hour", hour, 0.0, 24.0, "number", "A day has 24 hours.")
    moment = day + LATER + (hour - zone) / 24
    turn = hour_angle(hour + clock_shift(day, longitude, zone))
    turn += HOUR_ANGLE * (equation_of_time(moment) - equation_of_time(day + NOON))
    return _position(latitude, moment, turn)


def extraterrestrial_normal(day: float) -> float:
    """What reaches a plane that faces the sun outside the air.

    I = G_sc d_r, d_r = 1 + 0.033 cos(2 pi J / 365)
    day: J, number, 1 to 366.  Returns W/m2.  Raises RangeError outside.  Source: FAO-56 eq. 23.
    """
    return SOLAR_CONSTANT * (1 + 0.033 * math.cos(2 * math.pi * _day(day) / YEAR))


def fao_declination(day: float) -> float:
    """The sun's declination as FAO-56 has it, for its daily sums.

    delta = 0.409 sin(2 pi J / 365 - 1.39)
    day: J, number, 1 to 366.  Returns rad.  Raises RangeError outside.  Source: FAO-56 eq. 24.
    """
    return 0.409 * math.sin(2 * math.pi * _day(day) / YEAR - 1.39)


def sunset_angle(latitude: float, tilt: float) -> float:
    """The hour angle at which the sun sets: 0 in polar night, pi on a polar day.

    omega_s = arccos(-tan phi tan delta)
    latitude: phi, rad, -pi/2 to pi/2; tilt: delta, the sun's declination, rad, -0.42 to 0.42.
    Returns rad, 0 to pi.  Raises RangeError outside.  Source: FAO-56 eq. 25.

    >>> round(sunset_angle(0.0, 0.3) / math.pi, 6)
    0.5
    """
    require("tilt", tilt, -0.42, 0.42, "angle")
    up = math.sin(_latitude(latitude)) * math.sin(tilt)
    round_ = math.cos(latitude) * math.cos(tilt)
    if abs(up) >= round_:
        return math.pi if up > 0 else 0.0
    return math.acos(-up / round_)


def daylight_hours(latitude: float, day: float) -> float:
    """Hours from sunrise to sunset.

    N = 24/pi omega_s
    latitude: rad, -pi/2 to pi/2; day: number, 1 to 366.  Returns hours, 0 to 24.
    Raises RangeError outside.  Source: FAO-56 eq. 34, example 9.

    >>> round(daylight_hours(math.radians(-22.9), 135), 1)
    10.9
    """
    return 24 / math.pi * sunset_angle(latitude, fao_declination(day))


def daily_extraterrestrial(latitude: float, day: float) -> float:
    """What would reach level ground in a day without the air.

    R_a = 24/pi 3600 G_sc d_r (omega_s sin phi sin delta + cos phi cos delta sin omega_s)
    latitude: phi, rad, -pi/2 to pi/2; day: J, number, 1 to 366.  Returns J/m2 a day, 0 in polar
    night.  Raises RangeError outside.  Source: FAO-56 eq. 21, example 8.

    >>> round(daily_extraterrestrial(math.radians(-20), 246) / 1e6, 1)
    32.2
    """
    return _day_light(latitude, day, fao_declination(day))


def daily_outside(latitude: float, day: float) -> float:
    """What would reach level ground in a day without the air, by the sun's truer declination.

    ``daily_extraterrestrial`` with ``declination`` at noon: FAO-56's is a degree out in autumn
    latitude: phi, rad, -pi/2 to pi/2; day: J, number, 1 to 366.  Returns J/m2 a day, 0 in polar
    night.  Raises RangeError outside.  Source: FAO-56 eq. 21; Spencer (1971).
    """
    return _day_light(latitude, day, declination(_day(day) + NOON))


def _day_light(latitude: float, day: float, tilt: float) -> float:
    end = sunset_angle(latitude, tilt)
    share = end * math.sin(latitude) * math.sin(tilt)
    share += math.cos(latitude) * math.cos(tilt) * math.sin(end)
    return max(0.0, DAY / math.pi * extraterrestrial_normal(day) * share)
