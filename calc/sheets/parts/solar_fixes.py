"""What to try with panels, battery and tank: each size found on the same year, hour by hour."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, TypeVar

from calc.power.battery import discharge_limit
from calc.sheets.parts.carry import exact
from calc.sheets.parts.solar_judge import count, lasts
from calc.sheets.parts.tank_sizes import next_round, round_up
from calc.sheets.parts.tries import Change
from calc.units import HOUR

if TYPE_CHECKING:
    from calc.sheets.parts.solar_case import Case
    from calc.sheets.parts.sun_case import SunCase
    from calc.units import Reader

T = TypeVar("T")
SHORT = frozenset({"short-days"})
MOST_TIMES = 8  # of what there is: a larger change is another system; our choice
TANK_DAYS = (0.25, 0.5, 1.0, 2.0, 3.0, 5.0)  # days of water in the tank; our choice
TIMES = (1.25, 1.5, 2.0, 3.0, 4.0, 6.0, 8.0)  # of the battery; our choice
MOST_AH = 1e5  # the form takes no more
ROUND_AH = (1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0)  # in each decade; our choice


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    keys = SHORT | {"battery-life", "rate", "autonomy"}
    if not case.meets:
        yield from _more_panels(case)
    yield from _more_battery(case, keys)
    if not case.meets:
        yield from _tank(case, reader)


def first_that(sizes: tuple[T, ...], good: Callable[[T], bool]) -> int | None:
    """Index of the first of rising sizes that is good, by halving; None where the last is not."""
    if not sizes or not good(sizes[-1]):
        return None
    low, high = -1, len(sizes) - 1
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if good(sizes[middle]) else (middle, high)
    return high


def _more_panels(case: Case) -> Iterator[Change]:
    system = case.system
    now = system.array.parallel
    strings = tuple(range(now + 1, min(100, MOST_TIMES * now) + 1))
    made = tuple(case.with_size(n, system.battery.energy_j, system.tank_m3) for n in strings)
    at = first_that(made, lambda one: one.meets)
    if at is not None:
        panels = made[at].system.array.count
        text = f"Put up {panels} panels: {left(made[at])}."
        yield Change(text, SHORT, {"strings": str(strings[at])})


def left(case: SunCase) -> str:
    """What a change leaves short, in words."""
    short = case.served.short_days
    return f"{count(short, 'day')} would still fall short" if short else "no day falls short then"


def _more_battery(case: Case, keys: frozenset[str]) -> Iterator[Change]:
    """The smallest larger battery with which nothing is wrong that a battery can put right."""
    system, one = case.system, case.system.battery
    volts = one.nominal_v
    sizes = dict.fromkeys(
        next_round(times * one.energy_j / volts / HOUR, ROUND_AH) for times in TIMES
    )
    capacities = tuple(ah for ah in sizes if ah <= MOST_AH)
    made = tuple(
        case.with_size(system.array.parallel, ah * volts * HOUR, system.tank_m3)
        for ah in capacities
    )

    def good(other: Case) -> bool:
        gives = discharge_limit(other.system.battery)
        enough = system.pump.power_w + system.pump.standby_w <= gives
        return other.meets and enough and other.autonomy >= 1 and lasts(other) >= 3

    if good(case):
        return
    at = first_that(made, good)
    if at is not None:
        text = f"Choose a battery of {capacities[at]:g} Ah: {left(made[at])}."
        yield Change(text, keys, {"ah": f"{capacities[at]:g} Ah"})


def _tank(case: Case, reader: Reader) -> Iterator[Change]:
    """A tank that feeds the taps by its height."""
    system = case.system
    volumes = tuple(
        volume
        for volume in (round_up(days * case.daily, "volume", reader) for days in TANK_DAYS)
        if volume > system.tank_m3 * 1.001
    )
    made = tuple(case.with_size(system.array.parallel, system.battery.energy_j, v) for v in volumes)
    at = first_that(made, lambda one: one.meets)
    if at is not None:
        size = reader.show(volumes[at], "volume")
        text = f"Let a tank of {size} up the hill feed the taps: {left(made[at])}."
        yield Change(text, SHORT | {"too-slow"}, {"tank": exact(volumes[at], "volume", reader)})
