"""Panels at a place, with and without what stands before the sun, by month."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc.sheets.parts.sky import SEASONS, AnyPlace, Stand, place_of, sun_over, turned
from calc.sun import days, hours
from calc.sun.days import MONTH_DAYS
from calc.sun.horizon import FLAT, skyline
from calc.sun.plane import Plane
from calc.sun.tilt import (
    best_for_months,
    best_for_worst_month,
    best_for_year,
    towards_equator,
)

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.page.form import Values


@dataclass(frozen=True)
class Case:
    """A form's numbers. goal: "worst", "year", "north" or "south"."""

    place: AnyPlace
    stand: Stand
    goal: str

    @property
    def equator(self) -> float:
        """Azimuth of the midday sun, rad from north."""
        return towards_equator(self.place.latitude)

    @cached_property
    def daily(self) -> tuple[float, ...]:
        """J/m2 on the panels on a mean day of each month."""
        return monthly(self.place, self.stand)

    @cached_property
    def open(self) -> tuple[float, ...]:
        """The same with nothing before the sun."""
        return monthly(self.place, replace(self.stand, line=FLAT))

    @cached_property
    def best(self) -> Stand:
        """The stand that suits the goal best, with nothing before the sun."""
        means, latitude = self.place.sun, self.place.latitude
        if self.goal == "worst":
            found = best_for_worst_month(means, latitude)
        elif self.goal == "year":
            found = best_for_year(means, latitude)
        else:
            busy = tuple(month + 1 for month in SEASONS[self.goal])
            found = best_for_months(means, latitude, busy)
        return Stand(found.slope, found.azimuth)

    @cached_property
    def ideal(self) -> tuple[float, ...]:
        """J/m2 by month on panels that stand best, with nothing before the sun."""
        return monthly(self.place, self.best)

    def worth(self, daily: Sequence[float]) -> float:
        """What counts for the goal: J/m2 a day in the worst month, or on the mean of its days."""
        if self.goal == "worst":
            lit = [one for one, free in zip(daily, self.ideal, strict=True) if free > 0]
            return min(lit, default=0.0)
        busy = SEASONS.get(self.goal, range(12))
        total = sum(daily[month] * MONTH_DAYS[month] for month in busy)
        return total / sum(MONTH_DAYS[month] for month in busy)

    @property
    def hidden(self) -> float:
        """Share of the goal's light that the skyline takes."""
        free = self.worth(self.open)
        return 1 - self.worth(self.daily) / free if free > 0 else 0.0

    @property
    def turned(self) -> float:
        """Share of the goal's light that another tilt and facing would have, and these lack."""
        free = self.worth(self.ideal)
        return max(0.0, 1 - self.worth(self.open) / free) if free > 0 else 0.0


@lru_cache(32)
def monthly(place: AnyPlace, stand: Stand) -> tuple[float, ...]:
    """J/m2 on panels that stand so, on a mean day of each month: a year with the place's means."""
    plane = Plane(stand.slope, stand.azimuth)
    view = hours.facing(sun_over(place.latitude), plane, stand.line)
    return days.monthly_means(hours.plane_light(view, _level(place)))


@lru_cache(4)
def _level(place: AnyPlace) -> hours.Level:
    (year,) = days.years(place.sun, place.latitude, 1, 1)  # one: its months are the given ones
    return hours.level_from_days(sun_over(place.latitude), year)


def case_of(values: Values) -> Case:
    """The ``Case`` of a form.  Raises InputErrors as the physics does."""
    place = place_of(values)
    line = skyline([(row.from_north, row.high) for row in values.skyline])
    return Case(place, replace(turned(values), line=line), values.goal)
