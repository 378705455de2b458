"""A hill tank's day and year as numbers: what comes, what is drawn, the level, the pressure."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import day_tank, practice, storage
from calc.day_tank import DAYS_OF, Window
from calc.errors import InputError
from calc.pipe.line import Line, Section
from calc.sheets.parts.pipe_choice import chosen_pipe
from calc.units import DAY, MONTHS

if TYPE_CHECKING:
    from typing import Any

    from calc.day_tank import Piece, Run
    from calc.page.form import Values

NOON = 12.5  # hour of day about which a pump on the sun runs, as for a storage tank; our choice
EVEN = 1 - 1e-9  # of the use: what differs by less is rounding
USUAL, DRY = "usual", "dry"
HAIR = 1e-9  # m3


@dataclass(frozen=True)
class Day:
    """A day of one kind. key: ``USUAL`` or ``DRY``; volume, kept: m3; comes, used, watered: m3 in
    each of the ``pieces``; garden: whether it is watered."""

    key: str
    pieces: tuple[Piece, ...]
    volume: float
    kept: float
    used: tuple[float, ...]
    watered: tuple[float, ...]

    @cached_property
    def comes(self) -> tuple[float, ...]:
        """m3 that come in, in each piece."""
        return day_tank.amounts(self.pieces)[0]

    @cached_property
    def asked(self) -> tuple[float, ...]:
        """m3 that are asked for in each piece."""
        return tuple(a + b for a, b in zip(self.used, self.watered, strict=True))

    @property
    def use(self) -> float:
        """m3 asked for in the day."""
        return sum(self.asked)

    @property
    def supply(self) -> float:
        """m3 that come in in the day, without rain."""
        return sum(self.comes)

    @property
    def short(self) -> bool:
        """Whether less comes in than is used, so that no tank helps."""
        return self.supply < self.use * EVEN

    @cached_property
    def swing(self) -> float | None:
        """What the tank must give above its reserve, m3; None: no tank is enough."""
        return day_tank.swing(self.comes, self.asked)

    @cached_property
    def run(self) -> Run:
        """The day that repeats."""
        return day_tank.repeated(self.comes, self.asked, self.volume, self.kept)

    @cached_property
    def from_full(self) -> Run:
        """The day that begins with a full tank."""
        return self.begun(self.volume)

    def begun(self, start: float) -> Run:
        """The day that begins with so much in the tank, m3."""
        return day_tank.follow(self.comes, self.asked, self.volume, self.kept, start)

    @property
    def room(self) -> float:
        """What the tank may give with some to spare, m3."""
        return (self.volume - self.kept) * (1 - practice.TANK_IN_HAND)

    @property
    def lasts(self) -> bool:
        """Whether the day goes well with some to spare."""
        return self.swing is not None and self.swing <= self.room * (1 + 1e-9)

    def carries(self, comes: float = 1.0, used: float = 1.0, watered: float = 1.0) -> bool:
        """Whether it would with so many times what comes in, is used and is watered."""
        asked = [used * a + watered * b for a, b in zip(self.used, self.watered, strict=True)]
        least = day_tank.swing([comes * one for one in self.comes], asked)
        return least is not None and least <= self.room * (1 + 1e-12)

    @cached_property
    def times(self) -> float | None:
        """How many times the inflow is enough, with some to spare; None: no inflow is."""
        if self.supply <= 0:
            return None
        return day_tank.least_times(self.comes, self.asked, self.kept + self.room, self.kept)


@dataclass(frozen=True)
class Year:
    """Twelve months from January. rain, comes, asked: m3 in each; run: what the tank does; least:
    m3 it must give over the year, None: no tank is enough."""

    rain: tuple[float, ...]
    comes: tuple[float, ...]
    asked: tuple[float, ...]
    run: Run
    least: float | None

    @property
    def dry(self) -> tuple[str, ...]:
        """Names of the months in which water is missing."""
        missing = zip(MONTHS, self.run.missing, strict=True)
        return tuple(name for name, one in missing if one > HAIR)

    @property
    def short(self) -> bool:
        """Whether a year brings less than it uses."""
        return sum(self.comes) < sum(self.asked) * EVEN


@dataclass(frozen=True)
class Case:
    """volume: m3 that can be used in the full tank; kept: m3 of it for fire; raised: m from the
    outlet up to the tank's own, 0 where a pump draws from it; deep: m of water that can be used
    when full; flow: least m3/s at an open outlet; needed: Pa there; usual, dry: ``Day``s."""

    values: Values
    volume: float
    kept: float
    raised: float
    deep: float
    usual: Day
    dry: Day

    # The days -------------------------------------------------------------------------------

    @property
    def alike(self) -> bool:
        """Whether a day of the dry month is a usual one."""
        return (self.dry.comes, self.dry.asked) == (self.usual.comes, self.usual.asked)

    @cached_property
    def worst(self) -> Day:
        """The day that is harder on the tank."""
        return max(self.days, key=_hard)

    @property
    def days(self) -> tuple[Day, ...]:
        """The kinds of day there are, the dry one first."""
        return (self.usual,) if self.alike else (self.dry, self.usual)

    @cached_property
    def judged(self) -> Day | None:
        """The day that is judged by itself; with rain none that needs it."""
        days = self.days
        if self.values.rain == "yes":
            days = tuple(one for one in days if not one.short)
        return max(days, key=_hard) if days else None

    @property
    def by_rain(self) -> bool:
        """Whether the days alone bring too little, and rain has to bring the rest."""
        return self.worst.short and self.values.rain == "yes"

    @property
    def shown(self) -> Run:
        """The run that the answer is about: a dry day of a tank that rain fills is from full."""
        return self.worst.from_full if self.by_rain else self.worst.run

    @property
    def lasting(self) -> float:
        """s that a full tank lasts where less comes in than is used."""
        day = self.worst
        return (self.volume - self.kept) / (day.use - day.supply) * DAY

    # The year -------------------------------------------------------------------------------

    @cached_property
    def year(self) -> Year | None:
        """The months; None without a roof."""
        return year_of(self) if self.values.rain == "yes" else None

    @property
    def day_tank(self) -> float | None:
        """Whole tank that carries the day with some to spare, m3; None: none does."""
        if self.judged is None or self.judged.swing is None:
            return None
        part = self.judged.swing / (1 - practice.TANK_IN_HAND)
        return (self.kept + part) / self.values.usable

    @property
    def year_tank(self) -> float | None:
        """Whole tank that carries the year, m3; None: none does, or there is no roof."""
        if self.year is None or self.year.least is None:
            return None
        return (self.kept + self.dry.use + self.year.least) / self.values.usable

    @property
    def between_rains(self) -> float:
        """Whole tank that lasts the days between rains, m3; 0 where rain is not needed."""
        if not self.by_rain:
            return 0.0
        lacking = (self.worst.use - self.worst.supply) * practice.BETWEEN_RAINS / DAY
        return (self.kept + lacking) / self.values.usable

    @property
    def tank_needed(self) -> float | None:
        """Whole tank that carries the day, the year and days without rain, m3; None: none does."""
        if self.year is not None and self.year_tank is None:
            return None
        day = 0.0 if self.judged is None else self.day_tank
        return None if day is None else max(day, self.year_tank or 0.0, self.between_rains)

    # The pressure ---------------------------------------------------------------------------

    @cached_property
    def line(self) -> Line:
        """The pipe to the outlet from the tank's own, with the lowest and the highest level."""
        pipe = chosen_pipe(self.values)
        section = Section(pipe, self.values.length * (1 + self.values.extra), -self.raised)
        bare = Line((section,), 0.0, self.values.water)
        least, most = (bare.weight * self.height(one) for one in (self.low, self.volume))
        return replace(bare, start_pa=least, highest_pa=most)

    @cached_property
    def low(self) -> float:
        """The lowest level, m3, on either day and at the end of any month."""
        levels = [min(self.shown.levels)]
        if self.judged is not None:
            levels.append(min(self.judged.run.levels))
        if self.year is not None:
            levels.append(min(self.year.run.levels))
        return max(self.kept, min(levels))

    @cached_property
    def flow(self) -> float:
        """The most that is drawn at once, m3/s: in an hour's mean, or by one outlet."""
        drawn = [piece.drawn for day in (self.usual, self.dry) for piece in day.pieces]
        return max(self.values.flow, *drawn)

    def height(self, level: float) -> float:
        """How high the water stands above the tank's outlet, m, at a level (m3)."""
        return self.deep * level / self.volume

    def pressure(self, level: float, flow: float) -> float:
        """Running pressure at the outlet, Pa, at a level (m3) and a flow (m3/s)."""
        line = self.line
        return line.weight * (self.raised + self.height(level) - line.loss(flow))

    @cached_property
    def too_low(self) -> float:
        """s of the day in which water runs with too little pressure."""
        line, known = self.line, {}

        def needed(drawn: float) -> float:
            flow = max(drawn, self.values.flow)
            if flow not in known:
                high = self.values.wanted / line.weight + line.loss(flow) - self.raised
                known[flow] = high / self.deep * self.volume
            return known[flow]

        return day_tank.time_below(self.worst.pieces, self.shown, needed)

    def changed(self, **numbers: Any) -> Case:
        """The same with other numbers in the form."""
        values = replace(self.values, numbers={**self.values.numbers, **numbers})
        return case_of(values)


def _hard(day: Day) -> tuple[bool, float, float]:
    """How hard a day is on the tank, to compare by."""
    return day.short, sum(day.run.missing), -min(day.run.levels)


def case_of(values: Values) -> Case:
    """The ``Case`` of a form.  Raises InputErrors, also by the physics' own arguments."""
    volume = values.volume * values.usable
    if values.reserve >= volume * EVEN:
        raise InputError(
            "Fire reserve must be less than what can be used of the tank", name="reserve"
        )
    raised = values.height or 0.0
    deep = values.deep if values.shape == "depth" else volume / values.plan
    days = (_day(values, volume, key) for key in (USUAL, DRY))
    return Case(values, volume, values.reserve, raised, deep, *days)


def _day(values: Values, volume: float, key: str) -> Day:
    """One kind of day, the dry one with its garden and its flow."""
    used = day_tank.hourly(values.use * DAY, storage.PATTERNS[values.pattern])
    garden = values.garden * DAY if key == DRY else 0.0
    hours = values.ghours or 1.0
    watered = (Window(values.gfrom or 0.0, hours, garden / (hours * 3600)),)
    comes = _filling(values, key)
    pieces = day_tank.day(comes, (*used, *watered))
    parts = (day_tank.part(pieces, one) for one in (used, watered))
    return Day(key, pieces, volume, values.reserve, *parts)


def _filling(values: Values, key: str) -> tuple[Window, ...]:
    """What fills the tank, but for rain."""
    if values.fills == "none":
        return ()
    flow = values.gives
    if key == DRY and values.dryflow is not None:
        flow = values.dryflow
    if values.fills == "always":
        return (Window(0.0, 24.0, flow),)
    begins = values.begins if values.fills == "hours" else (NOON - values.hours / 2) % 24
    return (Window(begins, values.hours, flow),)


def rain_of(values: Values) -> tuple[float, ...]:
    """m of rain in each month from January.

    Raises InputError at the row of a month that stands there twice.
    """
    found: dict[int, float] = {}
    for row in values.months:
        month = int(row.month)
        if month in found:
            text = f"{MONTHS[month - 1]} is given twice. Give each month once"
            raise InputError(text, name=row.cell("month"))
        found[month] = row.rain
    return tuple(found[month] for month in sorted(found))


def dry_months(values: Values) -> frozenset[int]:
    """Indices of the dry months, from January as 0."""
    first = int(values.dryfrom) - 1
    return frozenset((first + at) % 12 for at in range(values.drycount))


def year_of(case: Case, roof: float | None = None) -> Year:
    """The year of a case. roof: m2, another one than its own."""
    values = case.values
    area = (values.roof if roof is None else roof) * values.runoff
    rain = tuple(area * depth for depth in rain_of(values))
    dry = dry_months(values)
    days = [case.dry if at in dry else case.usual for at in range(12)]
    comes = tuple(
        wet + one.supply * long for wet, one, long in zip(rain, days, DAYS_OF, strict=True)
    )
    asked = tuple(one.use * long for one, long in zip(days, DAYS_OF, strict=True))
    # a month's balance does not see its days: a day's water is left for them; our choice
    kept = min(case.kept + case.dry.use, case.volume * EVEN)
    run = day_tank.repeated(comes, asked, case.volume, kept)
    return Year(rain, comes, asked, run, day_tank.swing(comes, asked))
