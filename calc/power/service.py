"""What a year was asked and what it gave: hours without pressure, short days, the fortnight."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

DAYS = 365
FORTNIGHT = 14
MISSED = 1e-9  # of what is asked: less than this is rounding, and is served
MISSED_DIGITS = 9  # of a fortnight's use, as ``MISSED``


@dataclass(frozen=True)
class Service:
    """asked, served, unserved: m3; dry_hours: in which less was given than asked, count.

    short_days: count of days with such an hour; short: days short in a hundred.
    """

    asked: float
    served: float
    unserved: float
    dry_hours: int
    short_days: int
    short: float


def served_of(asked: Sequence[float], served: Sequence[float]) -> Service:
    """``Service`` of two series of 8,760 hours, m3 each.  Source: definition."""
    dry = [give < ask * (1 - MISSED) for ask, give in zip(asked, served, strict=True)]
    missed = sum(ask - give for ask, give, one in zip(asked, served, dry, strict=True) if one)
    short = sum(any(dry[at : at + 24]) for at in range(0, len(dry), 24))
    return Service(sum(asked), sum(served), missed, sum(dry), short, 100 * short / DAYS)


@dataclass(frozen=True)
class Day:
    """A day: its number from 0; m3 asked and served; J from the panels.

    lowest: the least share of its full charge that the battery held, or of its full water the tank.
    """

    day: int
    asked: float
    served: float
    lowest: float
    array: float


def days_of(
    asked: Sequence[float],
    served: Sequence[float],
    held: Sequence[float],
    array: Sequence[float],
) -> list[Day]:
    """The days of four series of hours: m3, m3, share held, J.  Source: definition."""
    return [
        Day(
            at // 24,
            sum(asked[at : at + 24]),
            sum(served[at : at + 24]),
            min(held[at : at + 24]),
            sum(array[at : at + 24]),
        )
        for at in range(0, len(asked), 24)
    ]


def worst_fortnight(days: Sequence[Day]) -> tuple[Day, ...]:
    """The fortnight in which most water was missed; of equal ones, the one that held least.

    days: of a year, from 1 January; a fortnight does not run over the year's end.
    Returns 14 days, the first one's number is the fortnight's start.  Source: our choice.
    """

    usual = sum(day.asked for day in days) * FORTNIGHT / len(days) or 1.0  # m3 a fortnight

    def badness(first: int) -> tuple[float, float]:
        # rounded: how a sum ends in its last bits must not choose between equal fortnights
        some = days[first : first + FORTNIGHT]
        missed = sum(max(0.0, day.asked - day.served) for day in some) / usual
        return round(missed, MISSED_DIGITS), -round(sum(day.lowest for day in some), MISSED_DIGITS)

    first = max(range(len(days) - FORTNIGHT + 1), key=badness)
    return tuple(days[first : first + FORTNIGHT])
