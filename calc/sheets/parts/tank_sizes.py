"""Sizes as a reader meets them: rounded up, round, and as spans of time."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.units import DAY, HOUR, number_text

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.units import Reader

ROUND = (1.0, 1.5, 2.0, 3.0, 5.0, 7.5)  # round sizes in each decade


def round_up(value: float, quantity: str, reader: Reader, digits: int = 3) -> float:
    """SI value of the number with ``digits`` figures in the reader's unit, not below ``value``.

    What a verdict asks for is given by this, so that typing it back really is enough.
    """
    unit = reader.unit(quantity)
    number = unit.from_si(value)
    if number <= 0:
        return value
    place = 10.0 ** (math.floor(math.log10(number)) - digits + 1)
    return unit.to_si(round(math.ceil(number / place - 1e-9) * place, 12))


def next_round(number: float, steps: Sequence[float]) -> float:
    """The next round number, of ``steps`` in each decade; from 1 on.

    >>> next_round(41.0, (1.0, 2.0, 5.0)), next_round(130.0, (1.0, 1.5)), next_round(0.3, (1.0,))
    (50.0, 150.0, 1.0)
    """
    decade = 10.0 ** math.floor(math.log10(max(number, 1.0)))
    return next(decade * one for one in (*steps, 10.0) if decade * one >= number * (1 - 1e-9))


def round_sizes(around_m3: float, reader: Reader) -> tuple[float, ...]:
    """Round tank volumes in the reader's unit, m3, from a fifth to five times a volume."""
    unit = reader.unit("volume")
    middle = unit.from_si(around_m3)
    low = math.floor(math.log10(middle / 5))
    numbers = [m * 10.0**k for k in range(low, low + 4) for m in ROUND]
    return tuple(unit.to_si(n) for n in numbers if middle / 5 <= n <= middle * 5)


def at_least(number: float) -> str:
    """``number`` rounded up to a tenth, as text: what must be reached."""
    return f"{math.ceil(number * 10 - 1e-9) / 10:g}"


def span(seconds: float, digits: int = 1) -> str:
    """A length of time in words, rounded down: "3 days", "1 day", "5.5 hours".

    digits: decimals of hours and days.
    """
    hours = _down(seconds / HOUR, digits)
    if hours < 1:
        return "less than an hour"
    if hours < 24:
        return "1 hour" if hours == 1 else f"{hours:g} hours"
    days = _down(seconds / DAY, digits)
    return "1 day" if days == 1 else f"{days:g} days"


def spans_apart(one: float, other: float) -> tuple[str, str]:
    """Two lengths of time (s) as ``span``, with more decimals where they would read the same.

    >>> spans_apart(2.951 * 86400, 2.99 * 86400), spans_apart(86400, 86400)
    (('2.95 days', '2.99 days'), ('1 day', '1 day'))
    """
    for digits in range(1, 5):
        shown = span(one, digits), span(other, digits)
        if shown[0] != shown[1]:
            return shown
    return span(one), span(other)


def _down(number: float, digits: int) -> float:
    return math.floor(number * 10**digits + 1e-6) / 10**digits


def gap_words(seconds: float) -> str:
    """How far apart starts lie, in words: "45 s", "12 min", "10.6 hours", "3.2 days"."""
    for unit, name, least in ((DAY, "days", 2), (3600.0, "hours", 2), (60.0, "min", 2)):
        if seconds >= least * unit:
            return f"{number_text(seconds / unit)} {name}"
    return f"{number_text(seconds)} s"
