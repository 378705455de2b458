"""Designs for a target: how many panels each battery and each tank asks for, and how sure that is.

It takes seconds, so it is worked out in steps, whenever the reader asks for it.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Generator, Mapping
from dataclasses import dataclass
from html import escape
from typing import TYPE_CHECKING

from calc.page.render import picture
from calc.page.shapes import SMALL, Block, Drawing, Press, Stroke, Words
from calc.power import design
from calc.power.year import simulate
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief
from calc.sheets.parts.solar_judge import count
from calc.sheets.parts.tank_sizes import next_round, round_up
from calc.units import HOUR

if TYPE_CHECKING:
    from calc.page.shapes import Mark, Shape
    from calc.power.design import Tried
    from calc.sheets.parts.solar_case import Case
    from calc.units import Reader

    Change = Callable[[Mapping[str, str]], str]  # changed texts of fields -> address

BATTERIES = (0.2, 0.5, 1.0, 1.5, 2.5)  # of the quick method's battery; our choice
TANK_DAYS = (0.0, 1.0, 3.0)  # days of water in the tank; our choice
STRINGS = (0.5, 1.0, 1.5, 2.0, 3.0, 4.0)  # of the quick method's strings; our choice
LEAST_STRINGS, MOST_STRINGS = 5, 100  # the form takes no more
FINALISTS = 3
ROUND_AH = (1.0, 2.0, 3.0, 5.0, 7.5)  # in each decade: sizes that are asked for; our choice


@dataclass(frozen=True)
class Progress:
    """So many of so many years are worked out; said: what is being done."""

    done: int
    of: int
    said: str


@dataclass(frozen=True)
class Sizes:
    """What is tried: strings, energies in J, tanks in m3, each rising."""

    strings: tuple[int, ...]
    energies: tuple[float, ...]
    tanks: tuple[float, ...]

    @property
    def count(self) -> int:
        return len(self.strings) * len(self.energies) * len(self.tanks)


def sizes(case: Case, reader: Reader) -> Sizes:
    """What is worth trying around the quick method's design, at least 60 designs.

    Around what there is where that method has no design.
    """
    volts, middle, energy = _middle(case)
    strings = {min(MOST_STRINGS, max(1, math.ceil(share * middle))) for share in STRINGS}
    while len(strings) < LEAST_STRINGS:
        strings.add(max(strings) + 1 if max(strings) < MOST_STRINGS else min(strings) - 1)
    energies = {volts * HOUR * next_round(share * energy / volts / HOUR, ROUND_AH)
                for share in BATTERIES}  # fmt: skip
    while len(energies) < len(BATTERIES):
        energies.add(2 * max(energies))
    tanks = {round_up(days * case.daily, "volume", reader) if days else 0.0 for days in TANK_DAYS}
    return Sizes(tuple(sorted(strings)), tuple(sorted(energies)), tuple(sorted(tanks)))


def _middle(case: Case) -> tuple[float, int, float]:
    """(V of the battery, strings, J of the battery) that sizes are tried around."""
    one, found = case.system.battery, case.compared
    if found is None:
        return one.nominal_v, case.system.array.parallel, one.energy_j
    return one.nominal_v, found.hand.strings, found.hand.energy_j


# The work -------------------------------------------------------------------------------------


def designs(case: Case, reader: Reader, change: Change) -> Generator[Progress, None, str]:
    """Work out the spread of the years, then the designs, then the years of the best of them.

    Yields ``Progress`` after each year.  Returns HTML.
    """
    tried_sizes, years = sizes(case, reader), case.place.count
    of = years + tried_sizes.count + FINALISTS * (years - 1)
    done, short = 0, []
    for index in range(years):
        short.append(_short(case, index))
        done += 1
        yield Progress(done, of, "This design in each of its years")
    tried: list[Tried] = []
    for one in design.sweep(
        case.weather, case.demand, case.system, tried_sizes.strings, tried_sizes.energies,
        tried_sizes.tanks, case.most_short,
    ):  # fmt: skip
        tried.append(one)
        done += 1
        yield Progress(done, of, "Other panels, batteries and tanks")
    best, spread = finalists(tried), []
    for one in best:
        other = case.with_size(one.strings, one.energy, one.tank)
        found = [one.year.short_days]
        for index in range(years):
            if index != case.dullest:
                found.append(_short(other, index))
                done += 1
                yield Progress(done, of, "The best of them in each of the years")
        spread.append(found)
    return html(case, reader, change, short, tried, best, spread)


def _short(case: Case, index: int) -> int:
    """Days short in one of the years."""
    weather = case.place.year(index, case.stand)
    return simulate(weather, case.system, case.demand).short_days


def finalists(tried: list[Tried]) -> list[Tried]:
    """Of those that none beats in all three: fewest panels, smallest battery, smallest tank."""
    front = design.frontier(tried)
    picked: list[Tried] = []
    for order in (
        lambda one: (one.tank, one.strings, one.energy),
        lambda one: (one.strings, one.energy, one.tank),
        lambda one: (one.energy, one.strings, one.tank),
    ):
        for one in sorted(front, key=order):
            if one not in picked:
                picked.append(one)
                break
    return picked


# What is shown --------------------------------------------------------------------------------


def html(
    case: Case, reader: Reader, change: Change, short: list[int], tried: list[Tried],
    best: list[Tried], spread: list[list[int]],
) -> str:  # fmt: skip
    """The band of the years, the designs as links, and the picture of all of them."""
    parts = [f"<p>{escape(band(short, case))}</p>"]
    if not best:
        parts.append(f"<p>{escape(_none(case, tried, reader))}</p>")
    for one, years in zip(best, spread, strict=True):
        parts.append(_design(one, years, case, reader, change))
    parts += [picture(one) for one in (frontier_drawing(case, reader, change, tried),)]
    return "".join(parts)


def band(short: list[int], case: Case) -> str:
    """The spread from year to year, in sentences."""
    if len(short) == 1:
        return f"In the year of the file {count(short[0], 'day')} fall short."
    mean = sum(short) / len(short)
    good = sum(one <= case.most for one in short)
    return (
        f"This design in twenty years made from the same months: {span(short)} days short a year, "
        f"{mean:.1f} in the mean; {good} of {len(short)} years keep to the {case.most} allowed. "
        "A real run of years may be worse: long droughts of sun, dust and ageing are not in it."
    )


def span(days: list[int]) -> str:
    """The least and the most of several years' days: "0 to 7", "0".

    >>> span([3, 0, 7]), span([0, 0])
    ('0 to 7', '0')
    """
    return f"{min(days)} to {max(days)}" if min(days) < max(days) else str(days[0])


def _none(case: Case, tried: list[Tried], reader: Reader) -> str:
    least = min(tried, key=lambda one: one.year.short_days)
    panels, energy = least.system.array.count, reader.show(least.energy, "energy")
    return (
        f"None of the {len(tried)} designs tried keeps to {case.most} days: the best, {panels} "
        f"panels with {energy}, falls short on {count(least.year.short_days, 'day')}."
    )


def texts_of(one: Tried, case: Case, reader: Reader) -> dict[str, str]:
    """What the form says of a design."""
    unit = reader.unit("volume")
    return {
        "strings": str(one.strings),
        "ah": f"{one.energy / case.system.battery.nominal_v / HOUR:g} Ah",
        "tank": f"{unit.from_si(one.tank):.4g} {unit.symbol}",
    }


def _design(one: Tried, years: list[int], case: Case, reader: Reader, change: Change) -> str:
    panels = one.system.array.count
    energy, tank = reader.show(one.energy, "energy"), reader.show(one.tank, "volume")
    with_tank = f"a tank of {tank}" if one.tank else "no tank"
    said = (
        f"{count(panels, 'panel')}, a battery of {energy} and {with_tank}: {span(years)} days "
        "short a year."
    )
    address = change(texts_of(one, case, reader))
    return f'<p class="sl-fix">{escape(said)} <a href="{escape(address)}">See it</a></p>'


# The picture: for each tank, the panels that each battery asks for --------------------------------

TOP, HIGH, APART = 20.0, 56.0, 118.0  # units: over a row of bars, the bars, from row to row
LEFT, RIGHT = 8.0, WIDTH - 8.0


def least_strings(tried: list[Tried], energy: float, tank: float) -> Tried | None:
    """The fewest panels that meet the target with a battery and a tank; None where none do."""
    fits = [one for one in tried if one.energy == energy and one.tank == tank and one.meets]
    return min(fits, key=lambda one: one.strings, default=None)


def frontier_drawing(case: Case, reader: Reader, change: Change, tried: list[Tried]) -> Drawing:
    """Bars of panels over batteries, a row for each tank: touch one to see it."""
    energies = sorted({one.energy for one in tried})
    tanks = sorted({one.tank for one in tried})
    shown = [least_strings(tried, energy, tank) for tank in tanks for energy in energies]
    most = max((one.system.array.count for one in shown if one), default=1)
    across = Scale(0.0, float(len(energies)), LEFT, RIGHT)
    shapes: list[Shape] = []
    told = []
    for row, tank in enumerate(tanks):
        top = TOP + row * APART
        name = f"with a tank of {reader.show(tank, 'volume')}" if tank else "without a tank"
        shapes.append(Words(LEFT, top - 6, f"panels needed {name}", size=SMALL))
        up = Scale(0.0, float(most), top + LINE + HIGH, top + LINE)
        fewest = []
        for at, energy in enumerate(energies):
            one = least_strings(tried, energy, tank)
            shapes += _bar(one, across, up, at, energy, case, reader, change)
            fewest.append("none tried" if one is None else str(one.system.array.count))
        shapes.append(Stroke(((LEFT, up.at(0)), (RIGHT, up.at(0))), "ink", width=1.0))
        told.append(f"{name}: {', '.join(fewest)}")
    sold = ", ".join(reader.show(energy, "energy") for energy in energies)
    alt = (
        f"The fewest panels that keep to {count(case.most, 'day')} a year, for batteries of "
        f"{sold}: {'; '.join(told)}."
    )
    height = TOP + len(tanks) * APART - 8
    title = "Panels against battery against tank"
    return Drawing("designs", title, alt, WIDTH, height, tuple(shapes),
                   "Bars: panels, to scale. Touch one to open it.")  # fmt: skip


def _bar(
    one: Tried | None, across: Scale, up: Scale, at: int, energy: float, case: Case,
    reader: Reader, change: Change,
) -> list[Shape]:  # fmt: skip
    """A bar with its count above and its battery below, to be pressed."""
    left, right, low = across.at(at + 0.2), across.at(at + 0.8), up.at(0)
    middle, under = (left + right) / 2, low + LINE
    label = Words(middle, under, brief(energy, "energy", reader), "middle", size=SMALL)
    if one is None:
        return [label, Words(middle, low - 4, "none", "middle", size=SMALL, role="soft")]
    panels = one.system.array.count
    top = up.at(panels)
    shapes: tuple[Mark, ...] = (
        Block(left, top, right - left, low - top, "four", "edge", at=f"bar {at} {one.tank:g}"),
        Words(middle, top - 4, str(panels), "middle", bold=True, size=SMALL),
    )
    room = min(top - LINE, low - 28)
    name = f"{count(panels, 'panel')} with {reader.show(energy, 'energy')}: see it"
    pressed = Press(shapes, name, left - 4, room, right - left + 8, low - room,
                    href=change(texts_of(one, case, reader)))  # fmt: skip
    return [pressed, label]
