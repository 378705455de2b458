"""The pictures of panels and battery: the worst fortnight day by day, and a mean day by month.

Heights are to scale within each picture.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Drawing, Stroke, Words
from calc.power import design
from calc.power.service import FORTNIGHT, MISSED
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief
from calc.sheets.parts.solar_judge import count
from calc.sun.days import MONTH_DAYS
from calc.units import DAY, HOUR, MONTHS

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from calc.page.shapes import Shape
    from calc.power.service import Day
    from calc.sheets.parts.solar_case import Case
    from calc.sheets.parts.sun_case import SunCase
    from calc.units import Reader

LEFT, RIGHT = 8.0, WIDTH - 8.0
SUN_TOP, SUN_HIGH = 22.0, 54.0  # units: over the bars of sun, and their height
STORE_TOP, STORE_HIGH = 98.0, 66.0  # the same of the battery's charge
STEP = 3  # hours from one point of the charge to the next; our choice


def draw(case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing``s of a case."""
    return (fortnight(case, reader), months(case, reader))


def day_name(day: int) -> str:
    """A day of the year, from 0, as "11 Dec".

    >>> day_name(0), day_name(58), day_name(59)
    ('1 Jan', '28 Feb', '1 Mar')
    """
    for name, days in zip(MONTHS, MONTH_DAYS, strict=True):
        if day < days:
            return f"{day + 1} {name[:3]}"
        day -= days
    raise ValueError("a year has 365 days")


# The worst fortnight --------------------------------------------------------------------------


def fortnight(case: Case, reader: Reader) -> Drawing:
    """Sun, charge and missing water through the worst fortnight of the dullest year."""
    stored = [one.stored for one in case.hours]
    full = case.system.battery.energy_j / HOUR
    store = Store("the battery", "charge", "charge of the battery: full", stored, full)
    return worst_fortnight(case, case.year.worst, store, reader, _cut_out(case))


@dataclass(frozen=True)
class Store:
    """What carries a supply through the dark.

    name, of: in sentences ("the battery", "charge"); label: over its picture; levels: at the end of
    each hour of the year; full: the most it holds, in the same unit.
    """

    name: str
    of: str
    label: str
    levels: Sequence[float]
    full: float


def worst_fortnight(
    case: SunCase, worst: Sequence[Day], store: Store, reader: Reader, marks: Iterable[Shape] = ()
) -> Drawing:
    """Sun above, the store below and the days that miss water under it, day by day.

    worst: the fortnight's days; marks: shapes to put upon the store.
    """
    first = worst[0].day
    across = Scale(0.0, float(FORTNIGHT), LEFT, RIGHT)
    missed = [day.asked - day.served > MISSED * max(day.asked, MISSED) for day in worst]
    shapes = (
        *_sun_bars([day.array for day in worst], across, reader),
        *_level(store, first, across),
        *marks,
        *_missed_days(missed, across),
        *_day_names(first, across),
    )
    lowest = round(100 * min(day.lowest for day in worst))
    alt = (
        f"The fortnight from {day_name(first)}, the worst of {case.years}: "
        f"{lacking(sum(missed))}, and {store.name} falls to {lowest} % of its {store.of}."
    )
    title = f"The worst fortnight, from {day_name(first)}"
    height = STORE_TOP + STORE_HIGH + 2 * LINE + 24
    scaled = f"To scale: the sun’s energy of a day, and {store.name}’s {store.of}."
    return Drawing("fortnight", title, alt, WIDTH, height, shapes, scaled)


def _sun_bars(days: Sequence[float], across: Scale, reader: Reader) -> Iterator[Shape]:
    most = max(*days, 1.0)
    up = Scale(0.0, most, SUN_TOP + SUN_HIGH, SUN_TOP)
    yield Words(LEFT, 14.0, "from the panels each day, at most", size=SMALL)
    yield Words(RIGHT, 14.0, brief(most, "energy", reader), "end", size=SMALL)
    for at, energy in enumerate(days):
        left, right = across.at(at + 0.15), across.at(at + 0.85)
        top = up.at(energy)
        yield Block(left, top, right - left, SUN_TOP + SUN_HIGH - top, "four", at=f"sun {at}")
    yield Stroke(((LEFT, SUN_TOP + SUN_HIGH), (RIGHT, SUN_TOP + SUN_HIGH)), "ink", width=1.0)


def _level(store: Store, first: int, across: Scale) -> Iterator[Shape]:
    """What the store holds from hour to hour."""
    levels = store.levels[24 * first : 24 * (first + FORTNIGHT)]
    up = _up(store.full)
    line = tuple(
        (across.at((at + 1) / 24), up.at(levels[at])) for at in range(0, len(levels), STEP)
    )
    low = up.at(0.0)
    yield Words(LEFT, STORE_TOP - 6, store.label, size=SMALL)
    yield Block(LEFT, STORE_TOP, RIGHT - LEFT, STORE_HIGH, "", "edge")
    yield Area((*line, (line[-1][0], low), (line[0][0], low)), "water", at="store")
    yield Stroke(line, "ink", width=1.4, at="level")


def _up(full: float) -> Scale:
    return Scale(0.0, full, STORE_TOP + STORE_HIGH, STORE_TOP)


def _cut_out(case: Case) -> tuple[Shape, ...]:
    """The line below which nothing is drawn."""
    floor = _up(case.system.battery.energy_j).at(case.system.battery.reserve)
    return (
        Stroke(((LEFT, floor), (RIGHT, floor)), "ink", "dashed", 1.2, at="cut-out"),
        Words(RIGHT - 4, floor - 4, "cut-out", "end", size=SMALL, halo="paper"),
    )


def _missed_days(missed: Sequence[bool], across: Scale) -> Iterator[Shape]:
    """A hatched block under each day on which water is missing."""
    top = STORE_TOP + STORE_HIGH + 4
    for at, short in enumerate(missed):
        if short:
            left, right = across.at(at + 0.1), across.at(at + 0.9)
            yield Block(left, top, right - left, 10.0, "bad", "bad", at=f"short {at}")


def _day_names(first: int, across: Scale) -> Iterator[Shape]:
    y = STORE_TOP + STORE_HIGH + 14 + LINE
    for at, anchor in ((0, "start"), (FORTNIGHT // 2, "middle"), (FORTNIGHT - 1, "end")):
        x = {"start": LEFT, "middle": across.at(at + 0.5), "end": RIGHT}[anchor]
        yield Words(x, y, day_name(first + at), anchor, size=SMALL)
    yield Words(LEFT, y + LINE, "hatched below: days with too little water", size=SMALL)


def lacking(days: int) -> str:
    """How many days of a fortnight water is missing on, in words.

    >>> lacking(0), lacking(1), lacking(2)
    ('every day is served', '1 day gets too little water', '2 days get too little water')
    """
    if days == 0:
        return "every day is served"
    return f"{count(days, 'day')} {'gets' if days == 1 else 'get'} too little water"


# The months -----------------------------------------------------------------------------------

BAR_TOP, BAR_HIGH = 44.0, 84.0


def energies(case: Case) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """(what the panels can bring, what the pump takes) on a mean day of each month, J."""
    system = case.system
    idle = DAY * system.idle_w
    left = system.losses.left * system.controller.gives
    brought = tuple(
        hours * HOUR * system.array.rated_w * left for hours in design.sun_hours(case.weather)
    )
    taken = tuple(use * system.pump.joule_per_m3 + idle for use in case.demand.by_month)
    return brought, taken


def months(case: Case, reader: Reader) -> Drawing:
    """What the panels can bring and what the pump takes, on a mean day of each month."""
    brought, taken = energies(case)
    most = max(*brought, *taken, 1.0)
    across, up = Scale(0.0, 12.0, LEFT, RIGHT), Scale(0.0, most, BAR_TOP + BAR_HIGH, BAR_TOP)
    worst = min(range(12), key=lambda month: brought[month] / taken[month])
    shapes: list[Shape] = [
        Words(LEFT, 14.0, "bars: from panels, at most", size=SMALL),
        Words(RIGHT, 14.0, brief(most, "energy", reader), "end", size=SMALL),
        Words(LEFT, 14.0 + LINE, "line: what pump and standby take", size=SMALL),
    ]
    bottom = BAR_TOP + BAR_HIGH
    for at, energy in enumerate(brought):
        left, right, top = across.at(at + 0.12), across.at(at + 0.88), up.at(energy)
        role = "bad" if energy < taken[at] else "four"
        shapes.append(Block(left, top, right - left, bottom - top, role, at=f"month {at}"))
        initial = MONTHS[at][0]
        shapes.append(Words(across.at(at + 0.5), bottom + LINE, initial, "middle", size=SMALL))
    points = tuple(
        (across.at(at + side), up.at(energy)) for at, energy in enumerate(taken) for side in (0, 1)
    )
    shapes.append(Stroke(points, "ink", width=2.0, at="taken"))
    shapes.append(Stroke(((LEFT, bottom), (RIGHT, bottom)), "ink", width=1.0))
    alt = (
        "What the panels can bring on a mean day of each month, and what the pump takes. Least "
        f"is to spare in {MONTHS[worst]}."
    )
    title = "A mean day of each month"
    return Drawing("months", title, alt, WIDTH, bottom + LINE + 8, tuple(shapes), "To scale.")
