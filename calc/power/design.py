"""Designs for a target: panels against battery against tank, one more of each, and the hand sum."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import require
from calc.power.battery import discharge_efficiency
from calc.power.year import simulate
from calc.sun.days import monthly_means
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from calc.power.year import Demand, System, Weather, Year

DULL = 0.5  # of the worst month's mean day of sun: a day below it is dull; our choice


@dataclass(frozen=True)
class Tried:
    """A design and its year: strings of panels, energy J of the battery, tank m3.

    ``meets``: no more days short in a hundred than the target.
    """

    strings: int
    energy: float
    tank: float
    system: System
    year: Year
    meets: bool

    @property
    def size(self) -> tuple[float, float, float]:
        """(panels, J, m3), to compare."""
        return (self.system.array.count, self.energy, self.tank)


def with_size(system: System, strings: int, energy_j: float, tank_m3: float) -> System:
    """The same system with another number of strings, another battery and another tank.

    system: the one to change; strings: whole number, 1 to 200; energy_j: J; tank_m3: m3, 0 or more.
    A cut-out that was given in J stays.
    Returns ``System``.  Raises RangeError outside.
    """
    return replace(
        system,
        array=replace(system.array, parallel=strings),
        battery=replace(system.battery, energy_j=energy_j),
        tank_m3=tank_m3,
    )


def sweep(
    weather: Weather,
    demand: Demand,
    system: System,
    strings: Sequence[int],
    energies: Sequence[float],
    tanks: Sequence[float],
    most_short: float = practice.YEAR_SHORT,
) -> Iterator[Tried]:
    """Every design of strings x batteries x tanks, one at a time, so that the caller may stop.

    weather, demand: the year; system: all that stays the same; strings: whole numbers; energies: J;
    tanks: m3; most_short: target, days in a hundred, a number, 0 to 100.
    Yields ``Tried`` after each design, the smallest first: there are
    len(strings) len(energies) len(tanks).  Raises RangeError outside, before the first.
    """
    require("most_short", most_short, 0.0, 100.0, "number", "Of a hundred days.")
    sizes = sorted(
        (panels, energy, tank) for panels in strings for energy in energies for tank in tanks
    )
    systems = [with_size(system, *size) for size in sizes]
    return _each(weather, demand, systems, most_short)


def _each(
    weather: Weather, demand: Demand, systems: Sequence[System], most_short: float
) -> Iterator[Tried]:
    for one in systems:
        year = simulate(weather, one, demand)
        size = one.array.parallel, one.battery.energy_j, one.tank_m3
        yield Tried(*size, one, year, year.short <= most_short + 1e-9)


def frontier(tried: Iterable[Tried]) -> tuple[Tried, ...]:
    """Designs that meet the target where none with less, or as much, of all three does.

    tried: as far as the sweep came.  Returns them, the fewest panels first; empty where none
    meets the target.  Source: Pareto's definition.
    """
    good = {one.size: one for one in tried if one.meets}
    best = [
        one
        for size, one in good.items()
        if not any(
            other != size and all(a <= b for a, b in zip(other, size, strict=True))
            for other in good
        )
    ]
    return tuple(sorted(best, key=lambda one: one.size))


@dataclass(frozen=True)
class Change:
    """What a step changes. what: "panel", "battery" or "tank"; less_missed: m3 a year less missed.

    days: fewer days short in the year (below zero: more).
    """

    what: str
    tried: Tried
    days: int
    less_missed: float


def one_more(
    weather: Weather,
    demand: Demand,
    system: System,
    energy_j: float,
    tank_m3: float,
    most_short: float = practice.YEAR_SHORT,
    now: Year | None = None,
) -> tuple[Change, ...]:
    """What one more string of panels, one more battery or one more tank changes: start small.

    energy_j: J of one more battery, 1 or more; tank_m3: m3 of one more tank, 0 or more; now: the
    system's year where it is known already; the rest as for ``sweep``.  A reserve that is a share
    of the battery grows with it.
    Returns three ``Change``.  Raises RangeError outside.
    """
    now = simulate(weather, system, demand) if now is None else now
    count, energy, tank = system.array.parallel, system.battery.energy_j, system.tank_m3
    steps = {
        "panel": with_size(system, count + 1, energy, tank),
        "battery": with_size(system, count, energy + energy_j, tank),
        "tank": with_size(system, count, energy, tank + tank_m3),
    }
    tried = _each(weather, demand, tuple(steps.values()), most_short)
    return tuple(
        Change(what, one, now.short_days - one.year.short_days, now.unserved - one.year.unserved)
        for what, one in zip(steps, tried, strict=True)
    )


@dataclass(frozen=True)
class Hand:
    """The quick method's sum. month: 0 to 11, the worst; daily_j: J a day the load takes in it.

    sun_h: its hours of full sun a day; panels_w: W that the panels need; panels: how many;
    strings: whole strings of them; energy_j: J of the battery; days: of autonomy.
    """

    month: int
    daily_j: float
    sun_h: float
    panels_w: float
    panels: int
    strings: int
    energy_j: float
    days: float


def hand_sum(daily_j: float, sun_h: float, share: float) -> float:
    """Rated power of the panels by the quick method.

    P = E / (h eta)
    daily_j: E, J a day, 0 or more; sun_h: h, hours of full sun a day, 0.05 to 15; share: eta, what
    is left of the panels' energy at the load, 0.1 to 1.
    Returns W.  Raises RangeError outside.  Source: after IEEE 1562, from memory.

    >>> round(hand_sum(2000 * 3600.0, 4.0, 0.8), 9)
    625.0
    """
    require("daily_j", daily_j, 0.0, 1e12, "energy")
    require("sun_h", sun_h, 0.05, 15.0, "number", "There is too little sun in the worst month.")
    require("share", share, 0.1, 1.0, "percent")
    return daily_j / HOUR / (sun_h * share)


def hand_battery(daily_j: float, days: float, usable: float, efficiency: float) -> float:
    """Rated energy of the battery by the quick method.

    E_b = E n / (u eta)
    daily_j: E, J a day, 0 or more; days: n, of autonomy, 0.1 to 30; usable: u, share that is drawn,
    0.1 to 1; efficiency: eta, share of what is drawn that reaches the load, 0.1 to 1.
    Returns J.  Raises RangeError outside.  Source: after IEEE 1013 and 1562, from memory.
    """
    require("daily_j", daily_j, 0.0, 1e12, "energy")
    require("days", days, 0.1, 30.0, "number", "Two to five days are usual.")
    require("usable", usable, 0.1, 1.0, "percent")
    require("efficiency", efficiency, 0.1, 1.0, "percent")
    return daily_j * days / (usable * efficiency)


def by_hand(weather: Weather, demand: Demand, system: System, days: float = 3.0) -> Hand:
    """The quick method on this place and pump: daily energy, worst month's sun, days of autonomy.

    weather, demand, system: as for ``year.simulate`` (of the system only what stays: module,
    string, controller, kind of battery, pump, losses); days: n, of autonomy, a number, 0.1 to 30.
    Returns ``Hand`` of the month that asks for most panels.  Raises RangeError outside.
    Source: after IEEE 1013 and 1562, from memory.  The panels' heat and the rate are left out, as
    the quick method does.
    """
    one, pump = system.battery, system.pump
    share = system.losses.left * system.controller.gives
    share *= one.of.charging * one.of.discharging  # all of it through the battery
    idle = DAY * system.idle_w
    rows = []
    for month, sun_h in enumerate(sun_hours(weather)):
        daily = demand.by_month[month] * pump.joule_per_m3 + idle
        rows.append((hand_sum(daily, sun_h, share), month, daily, sun_h))
    watts, month, daily, sun_h = max(rows)
    panels = math.ceil(watts / system.array.module.rated_w - 1e-9)
    strings = math.ceil(panels / system.array.series)
    energy = hand_battery(daily, days, one.of.usable, one.of.discharging)
    return Hand(month, daily, sun_h, watts, panels, strings, energy, days)


def sun_hours(weather: Weather) -> tuple[float, ...]:
    """Mean hours of full sun (1000 W/m2) a day in each month, 12 numbers.  Source: definition."""
    return tuple(mean / (1000.0 * HOUR) for mean in monthly_means(weather.plane))


@dataclass(frozen=True)
class Compared:
    """The quick method beside the year, and why they differ.

    year: what the hand's design comes to; heat: share of the panels' energy that warm cells take;
    rate: share the battery gives at the pump's power, beside its own efficiency; by_day: share of
    the water that is asked while the sun shines, and spares the battery; dull_days: longest run of
    dull days (count); spilled: share of the panels' energy that found no use.
    """

    hand: Hand
    year: Year
    heat: float
    rate: float
    by_day: float
    dull_days: int
    spilled: float


def compare(weather: Weather, demand: Demand, system: System, days: float = 3.0) -> Compared:
    """``by_hand``, its design's year, and what the quick method leaves out, as data for words.

    Arguments, units and errors as for ``by_hand``.  Returns ``Compared``.
    """
    hand = by_hand(weather, demand, system, days)
    made = with_size(system, max(1, hand.strings), hand.energy_j, system.tank_m3)
    year = simulate(weather, made, demand)
    sun = sum(weather.plane)
    rise = system.array.module.power_rise
    warm = sum(
        g * rise * (k - 298.15) for g, k in zip(weather.plane, weather.module_k, strict=True)
    )
    asked = [(a, g) for a, g in zip(demand.hours, weather.plane, strict=True)]
    lit = sum(a for a, g in asked if g > 0)
    return Compared(
        hand,
        year,
        -warm / sun if sun else 0.0,
        discharge_efficiency(made.battery, system.pump.power_w) / made.battery.of.discharging,
        lit / year.asked if year.asked else 0.0,
        dull_run(weather, DULL * hand.sun_h),
        year.spilled / year.array if year.array else 0.0,
    )


def dull_run(weather: Weather, sun_h: float) -> int:
    """Longest run of days with less sun than a limit, within the year.

    sun_h: hours of full sun (1000 W/m2) a day, a number.  Returns the count of days.
    Source: definition.
    """
    longest = run = 0
    for at in range(0, len(weather.plane), 24):
        run = run + 1 if sum(weather.plane[at : at + 24]) < 1000.0 * sun_h else 0
        longest = max(longest, run)
    return longest
