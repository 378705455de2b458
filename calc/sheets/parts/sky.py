"""The years of a place: twenty made from its twelve months, or the one of an hourly file.

What is made once for a place, or for a way panels stand, is kept: a reader who changes a battery
waits for the battery alone.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from calc import practice
from calc.power.year import Demand, Weather
from calc.sheets.parts.hourly import kept
from calc.sheets.parts.place import means
from calc.sheets.parts.solar_fields import COMPASS
from calc.storage import PATTERNS
from calc.sun import days, hours
from calc.sun.days import MONTH_DAYS
from calc.sun.files import HourlyFile
from calc.sun.horizon import FLAT, Skyline
from calc.sun.plane import Plane
from calc.sun.tilt import towards_equator
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.page.form import Values

SEED = 1  # the same months give the same years, on every device; our choice
SPELL = 30  # days, by whose light a year is told dull: it goes with the days short; our choice
SEASONS = {"north": range(3, 9), "south": (9, 10, 11, 0, 1, 2)}  # months with the most use


@dataclass(frozen=True)
class Stand:
    """How panels stand: slope and azimuth, rad; shade: share of the light lost; line: skyline."""

    slope: float
    azimuth: float
    shade: float = 0.0
    line: Skyline = FLAT


@dataclass(frozen=True)
class Place:
    """latitude: rad; sun: twelve J/m2 a day; air: twelve K."""

    latitude: float
    sun: tuple[float, ...]
    air: tuple[float, ...]

    @property
    def count(self) -> int:
        """How many years there are of it."""
        return days.SEEDED

    def days(self) -> tuple[tuple[float, ...], ...]:
        """J/m2 of each day of each year."""
        return _years(self.sun, self.latitude)

    def year(self, index: int, stand: Stand) -> Weather:
        """The ``Weather`` of one of its years on panels that stand so."""
        return _weather(self, index, stand)

    def dullest(self, by_month: Sequence[float]) -> int:
        """Index of the year with the dullest thirty days for a use: least sun for each m3 asked.

        by_month: m3 a day, 12 numbers.
        """
        return _dullest(self, tuple(by_month))


@dataclass(frozen=True, eq=False)  # itself alone: a file's hours are not to be compared
class FilePlace:
    """The one year of an hourly file; latitude, sun and air as of ``Place``."""

    file: HourlyFile
    latitude: float
    sun: tuple[float, ...]
    air: tuple[float, ...]
    count: int = 1

    def days(self) -> tuple[tuple[float, ...], ...]:
        """J/m2 of each day of its year."""
        level = self.file.level
        return (tuple(HOUR * sum(level[at : at + 24]) for at in range(0, len(level), 24)),)

    def year(self, _index: int, stand: Stand) -> Weather:
        """The ``Weather`` of its year on panels that stand so."""
        return _of_file(self, stand)

    def dullest(self, _by_month: Sequence[float]) -> int:
        """Its only year."""
        return 0


AnyPlace = Place | FilePlace


def coldest(place: AnyPlace) -> float:
    """K, the coldest hour that the panels' voltage is judged for, where nobody says."""
    usual = min(place.air) - practice.COLDEST_BELOW
    return min(usual, *place.file.air) if isinstance(place, FilePlace) else usual


def _moving(numbers: Sequence[float]) -> list[float]:
    """Sums of each thirty days within the year."""
    total = sum(numbers[:SPELL])
    found = [total]
    for new, old in zip(numbers[SPELL:], numbers, strict=False):
        total += new - old
        found.append(total)
    return found


@lru_cache(4)
def _years(sun: tuple[float, ...], latitude: float) -> tuple[tuple[float, ...], ...]:
    return tuple(map(tuple, days.years(sun, latitude, SEED)))


@lru_cache(4)
def _spells(sun: tuple[float, ...], latitude: float) -> tuple[list[float], ...]:
    """Sums of each thirty days of each year."""
    return tuple(map(_moving, _years(sun, latitude)))


@lru_cache(64)  # while a fix is looked for one place and one use come again and again
def _dullest(place: Place, by_month: tuple[float, ...]) -> int:
    asked = [use for use, count in zip(by_month, MONTH_DAYS, strict=True) for _ in range(count)]
    uses = _moving(asked)

    def worst(sums: Sequence[float]) -> float:
        return min(
            (light / use for light, use in zip(sums, uses, strict=True) if use > 0),
            default=0.0,
        )

    years = _spells(place.sun, place.latitude)
    return min(range(len(years)), key=lambda at: worst(years[at]))


@lru_cache(4)
def sun_over(latitude: float) -> hours.SunHours:
    """The sun through the year at a latitude, rad, by its own time; made once."""
    return hours.sun_hours(latitude)


@lru_cache(4)
def _view(latitude: float, stand: Stand) -> hours.Facing:
    return hours.facing(sun_over(latitude), Plane(stand.slope, stand.azimuth), stand.line)


@lru_cache(8)
def _air(air: tuple[float, ...]) -> tuple[float, ...]:
    return hours.air_hours(air)


@lru_cache(days.SEEDED + 4)
def _weather(place: Place, index: int, stand: Stand) -> Weather:
    view = _view(place.latitude, stand)
    level = hours.level_from_days(sun_over(place.latitude), place.days()[index])
    made = hours.series(view, level, _air(place.air))
    return shaded(made, stand.shade)


@lru_cache(8)
def _of_file(place: FilePlace, stand: Stand) -> Weather:
    one = place.file
    sun = hours.sun_hours(place.latitude, one.longitude, one.zone)
    view = hours.facing(sun, Plane(stand.slope, stand.azimuth), stand.line)
    level = hours.level_from_hours(sun, one.level, one.beam, one.diffuse)
    return shaded(hours.series(view, level, one.air), stand.shade)


@lru_cache(1)
def _file_place(file: HourlyFile, latitude: float, air: tuple[float, ...]) -> FilePlace:
    latitude = latitude if file.latitude is None else file.latitude
    return FilePlace(file, latitude, days.monthly_means(file.level), air)


def shaded(made: hours.Series, shade: float) -> Weather:
    """A ``Weather`` of a series of which a share of the light is lost."""
    plane = made.plane if not shade else tuple(light * (1 - shade) for light in made.plane)
    return Weather(plane, made.module, made.air)


def place_of(values: Values) -> AnyPlace:
    """The place of a form: its hourly file where that is open, else its months.

    Raises InputError at a month that cannot be.
    """
    sun, air = means(values)
    file = kept() if values.weather == "file" else None
    if file is not None:
        return _file_place(file, values.lat, air)
    checked = days.checked_means(sun, values.lat)
    return Place(values.lat, tuple(checked), air)


def stand_of(values: Values) -> Stand:
    """How the panels of a form stand, with what its trees and hills take of the light."""
    return replace(turned(values), shade=values.shade or 0.0)


def turned(values: Values) -> Stand:
    """Slope and azimuth of a form."""
    towards = values.facing
    azimuth = towards_equator(values.lat) if towards == "equator" else COMPASS[towards]
    return Stand(values.tilt, azimuth)


def demand_of(values: Values) -> Demand:
    """The ``Demand`` of a form: its use a day by month and by hour."""
    daily = values.use * DAY
    busy = SEASONS.get(values.season, range(12))
    by_month = tuple(daily if month in busy else daily * values.off for month in range(12))
    return Demand(by_month, PATTERNS[values.pattern])
