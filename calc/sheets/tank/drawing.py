"""The storage tank sheet's picture: the tank, and its water hour by hour over the days.

Heights are to scale, the same in the tank and beside it.  Where less comes in than is used, the two
amounts of a day stand in its place: no tank helps.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import storage
from calc.page.shapes import SMALL, Area, Block, Dot, Drawing, Stroke, Words
from calc.page.text_boxes import box_of, text_width
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief, ticks
from calc.sheets.parts.tank_sizes import span
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.page.shapes import Shape
    from calc.sheets.tank.case import Case
    from calc.units import Reader

TANK, DAYS, EDGE = (6.0, 66.0), 84.0, 8.0  # units: the tank from, to; the days from; right edge
HEAD, HIGH = 42.0, 112.0  # units over the tank and its height
MOST_POINTS, MOST_TICKS = 200, 6  # of the line, in the days' numbers; our choice
AFTER = 3  # fair days shown after those without supply; our choice
NAMED, BAR = 92.0, 14.0  # units kept for the names of bars, and a bar's height
NO_TANK = 1e-9  # m3, less is no tank
NEARLY = 0.01  # of the tank, less is nearly empty; our choice


@dataclass(frozen=True)
class Spell:
    """Days with a tank.

    full: m3 that can be used; levels: m3, at the start and after each hour; dry: days without
    supply, in whole hours; short: hours, counted from 0, in which water is asked for in vain.
    """

    full: float
    levels: tuple[float, ...]
    dry: float
    short: tuple[int, ...]

    @property
    def days(self) -> int:
        return (len(self.levels) - 1) // storage.HOURS

    @property
    def lowest(self) -> int:
        """Hours from the start to the lowest level, the first of several."""
        return min(range(len(self.levels)), key=self.levels.__getitem__)


def spell(values: Values, case: Case) -> Spell:
    """The days without supply and the fair days after them, the tank starting as on a fair day."""
    dry = math.floor(values.bridge / DAY * storage.HOURS + 1e-9) / storage.HOURS
    days = math.ceil(dry - 1e-9) + AFTER
    full, balance = case.kept * values.usable, case.balance
    first = _starts_at(case, dry)
    use, steady = (_from(first, shares) for shares in (case.shares, case.steady))
    start = max(full - (balance.swing - balance.levels[first]), 0.0)
    levels, _ = storage.level_over_days(full, start, case.use, use, case.supply, steady, dry, days)
    off, short = dry * storage.HOURS - 1e-9, []
    for hour in range(days * storage.HOURS):
        at = hour % storage.HOURS
        supply = case.supply * steady[at] if hour >= off else 0.0
        if levels[hour] + supply - case.use * use[at] < -1e-9 * case.use:
            short.append(hour)
    return Spell(full, levels, dry, tuple(short))


def _from(first: int, shares: tuple[float, ...]) -> tuple[float, ...]:
    return (*shares[first:], *shares[:first])


def _starts_at(case: Case, dry: float) -> int:
    """The hour of the day from which the supply fails: midnight, of whole days.

    A part of a day takes more or less of the day's water, by its hours.  The size of the tank
    counts the average, so a part is drawn from the hour at which it costs no more than that.
    """
    hours = round(dry % 1.0 * storage.HOURS) % storage.HOURS
    levels = case.balance.levels
    filled = [
        levels[hour + 1] - levels[hour] + case.use * case.shares[hour]
        for hour in range(storage.HOURS)
    ]
    around = filled + filled
    return min(range(storage.HOURS), key=lambda first: sum(around[first : first + hours]))


def draw(values: Values, case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing`` of a case; none where no tank is needed."""
    if case.short:
        return (_two_amounts(case, reader),)
    if case.kept < NO_TANK:
        return ()
    found = spell(values, case)
    across = Scale(0.0, found.days * DAY, DAYS, WIDTH - EDGE)
    up = Scale(0.0, found.full, HEAD + HIGH, HEAD)
    shapes = (
        *_supply(found, across),
        *_tank(found, up, reader),
        *_water(found, across, up, reader),
        *_axis(found, across, up, reader),
        *_empty(found, across, up),
    )
    size = reader.show(case.kept, "volume")
    title = f"Water in a tank of {size}"
    height = HEAD + HIGH + 2 * LINE + 6
    scaled = "To scale: the water that can be used."
    alt = _alt(found, size, values, reader)
    return (Drawing("level", title, alt, WIDTH, height, shapes, scaled),)


# The tank and its days ----------------------------------------------------------------------


def _supply(found: Spell, across: Scale) -> Iterator[Shape]:
    """What comes in, over the days it is so."""
    if found.dry <= 0:
        yield Words(DAYS, 14.0, "water comes in every day", size=SMALL)
        return
    end = across.at(found.dry * DAY)
    yield Words(DAYS, 14.0, "no water comes in", size=SMALL)
    sides = ((DAYS, 27.0), (DAYS, 21.0), (end, 21.0), (end, 27.0))
    yield Stroke(sides, "ink", width=1.5, at="dry")


def _tank(found: Spell, up: Scale, reader: Reader) -> Iterator[Shape]:
    """The tank, in it the water the days begin with."""
    left, right = TANK
    low, y = up.at(0.0), up.at(found.levels[0])
    yield Block(left, HEAD, right - left, HIGH, "glass")
    if found.levels[0] > 0:
        yield Block(left, y, right - left, low - y, "water", at="start")
    sides = ((left, HEAD - 3), (left, low), (right, low), (right, HEAD - 3))
    yield Stroke(sides, "ink", width=2.5, at="tank")
    full = brief(found.full, "volume", reader)
    yield Words(left - 2, HEAD - 8, full, size=SMALL, lead="full")


def _water(found: Spell, across: Scale, up: Scale, reader: Reader) -> Iterator[Shape]:
    """The level over the days, and its lowest where that is not empty."""
    line = tuple((across.at(hour * 3600.0), up.at(found.levels[hour])) for hour in kept(found))
    low = up.at(0.0)
    yield Area((*line, (across.end, low), (across.start, low)), "water", at="water")
    yield Stroke(line, "ink", width=1.2, at="level")
    yield Stroke(((TANK[1], up.end), (across.end, up.end)), "ink", "dotted", 1.0, at="full")
    if found.short:
        return
    level = found.levels[found.lowest]
    x, y = across.at(found.lowest * 3600.0), up.at(level)
    yield Dot(x, y, 3.5, "ink", at="lowest")
    text = brief(level, "volume", reader)
    words = Words(x, low + LINE, text, "middle", size=SMALL, lead="lowest")
    if level < NEARLY * found.full:
        words = replace(words, text="nearly empty", lead="")
    yield replace(words, x=_kept_in(x, words))


def _kept_in(x: float, words: Words) -> float:
    """The middle nearest to x at which words stay in the picture."""
    half = (box_of(words).right - box_of(words).left) / 2
    return min(max(x, half), WIDTH - half)


def kept(found: Spell) -> list[int]:
    """The hours drawn: all, or of many days the highest and the lowest of each."""
    hours = range(len(found.levels))
    if len(hours) <= MOST_POINTS:
        return list(hours)
    picked = {0, len(hours) - 1, found.lowest}
    for day in range(found.days):
        of_day = range(day * storage.HOURS, (day + 1) * storage.HOURS)
        picked |= {min(of_day, key=found.levels.__getitem__)}
        picked |= {max(of_day, key=found.levels.__getitem__)}
    return sorted(picked)


def _axis(found: Spell, across: Scale, up: Scale, reader: Reader) -> Iterator[Shape]:
    """The days, those without room for their number left out."""
    low, free = up.at(0.0), WIDTH + 1.0
    yield Stroke(((across.start, low), (across.end, low)), "ink", width=1.2)
    marks = ticks(0.0, found.days * DAY, reader.unit("days"), MOST_TICKS)[1:]
    for number, (at, text) in enumerate(reversed(marks)):
        x = across.at(at)
        yield Stroke(((x, low), (x, low + 4)), "ink", width=1.2)
        words = Words(x, low + 2 * LINE + 1, text if number else f"{text} days", "middle", "soft",
                      size=SMALL)  # fmt: skip
        words = replace(words, x=_kept_in(x, words))
        if box_of(words).right <= free:
            yield words
            free = box_of(words).left - 4


def _empty(found: Spell, across: Scale, up: Scale) -> Iterator[Shape]:
    """The hours in which water is asked for and none is left."""
    runs: list[tuple[int, int]] = []
    for hour in found.short:
        if runs and runs[-1][1] == hour:
            runs[-1] = (runs[-1][0], hour + 1)
        else:
            runs.append((hour, hour + 1))
    low = up.at(0.0)
    for number, (first, last) in enumerate(runs):
        x = across.at(first * 3600.0)
        wide = max(across.long((last - first) * 3600.0), 2.0)
        yield Block(x, low + 1, wide, 7, "bad", "bad", at=f"empty {number}")
    if runs:
        first, last = max(runs, key=lambda run: run[1] - run[0])
        x = across.at((first + last) / 2 * 3600.0)
        words = Words(x, low + 19, "empty", "middle", "bad", bold=True, size=SMALL)
        yield replace(words, x=_kept_in(x, words))


def _alt(found: Spell, size: str, values: Values, reader: Reader) -> str:
    full = reader.show(found.full, "volume")
    without = f", the first {span(values.bridge)} without supply" if found.dry > 0 else ""
    said = (
        f"Water in a tank of {size}, of which {full} can be used, over {found.days} days{without}. "
    )
    day = found.lowest // storage.HOURS + 1
    if found.short:
        first = found.short[0] // storage.HOURS + 1
        return f"{said}It runs empty on day {first}, in {len(found.short)} hours of them all."
    least = reader.show(found.levels[found.lowest], "volume")
    falls = "It falls while nothing comes in" if found.dry > 0 else "It falls and fills every day"
    return f"{said}{falls}; the lowest is {least}, on day {day}."


# Too little comes in ------------------------------------------------------------------------


def _two_amounts(case: Case, reader: Reader) -> Drawing:
    """What is used and what comes in, a day."""
    used, comes = (brief(one, "volume", reader) for one in (case.use, case.supply))
    room = max(text_width(one, SMALL, bold=True) for one in (used, comes)) + 6
    scale = Scale(0.0, case.use, NAMED, WIDTH - room)
    shapes: list[Shape] = []
    rows = (("you use", case.use, used), ("comes in", case.supply, comes))
    for number, (name, amount, text) in enumerate(rows):
        y = 6.0 + number * 24
        shapes += [
            Words(NAMED - 6, y + BAR - 3, name, "end", size=SMALL),
            Block(NAMED, y, scale.long(amount), BAR, "water", at=name),
        ]
        end = scale.end if number else scale.at(amount)
        shapes.append(Words(end + 6, y + BAR - 3, text, bold=True, size=SMALL))
    missing = case.use - case.supply
    y = 30.0
    shapes.append(
        Block(scale.at(case.supply), y, scale.long(missing), BAR, "bad", "bad", at="missing")
    )
    text = f"{brief(missing, 'volume', reader)} missing a day"
    shapes.append(Words(scale.end, y + BAR + LINE, text, "end", "bad", bold=True, size=SMALL))
    alt = (
        f"Two bars: you use {reader.show(case.use, 'volume')} a day and "
        f"{reader.show(case.supply, 'volume')} comes in; {reader.show(missing, 'volume')} is "
        "missing."
    )
    scaled = "Lengths are to scale."
    return Drawing(
        "amounts", "What you use and what comes in, a day", alt, WIDTH, 66.0, tuple(shapes), scaled
    )
