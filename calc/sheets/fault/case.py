"""The faults of a reader's supply, ranked by what was read, and the reading to take next."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, InputErrors
from calc.network import next_reading
from calc.network.fault_readings import (
    BUCKET,
    CLOSED,
    LEVEL,
    PRESSURE,
    STANDBY,
    STARTS,
    STATIC,
    SUCTION,
    VOLTS,
    WATTS,
    Reading,
)
from calc.network.faults import NOTHING
from calc.network.static import highest_pressures
from calc.network.suspects import Finder, Group, Ranking
from calc.sheets.fault import form
from calc.sheets.fault.form import opened_of, readings_of, renamed, signs, supply_of, switched
from calc.sheets.fault.rows import AFTER
from calc.site.watched import watched

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.network.fault_readings import Expected, Opened
    from calc.network.suspects import Fit
    from calc.page.form import Values
    from calc.site.supply import Built, Supply

SURELY_WRONG = 3.0  # errors over what can be at all, from which a reading is refused; our choice
LEAST_SHOWN = 0.01  # share from which a cause is listed; our choice
LEAST_ROWS, MOST_SHOWN = 3, 10  # causes listed; our choice
SURE = 0.5  # share below which the likeliest cause is only one of several; our choice


@dataclass(frozen=True)
class Weak:
    """An open outlet that gets less than it needs, Pa; level: "stop", "care"."""

    name: str
    has: float
    needs: float
    level: str


@dataclass(frozen=True)
class Case:
    """readings: those that are compared; left_out: places in the form of those that cannot be."""

    values: Values
    built: Built
    finder: Finder
    readings: tuple[Reading, ...]
    left_out: tuple[str, ...]
    signs: tuple[str, ...]

    @cached_property
    def ranking(self) -> Ranking:
        return self.finder.rank(self.readings, self.signs)

    @property
    def first(self) -> Group:
        """The likeliest causes that these readings cannot tell apart."""
        return self.ranking.groups[0]

    @property
    def leader(self) -> Fit:
        """The likeliest of them."""
        return self.first.first

    @property
    def sound(self) -> bool:
        """Whether the likeliest is that nothing is wrong."""
        return self.leader.fault == NOTHING

    @property
    def unseen(self) -> bool:
        """Whether the likeliest is a fault that these readings would not show."""
        return not self.sound and self.first.has(NOTHING)

    @cached_property
    def nothing(self) -> Fit:
        """How the sound supply fits."""
        fits = (fit for group in self.ranking.groups for fit in group.fits)
        return next(fit for fit in fits if fit.fault == NOTHING)

    @cached_property
    def listed(self) -> tuple[Fit, ...]:
        """The causes worth a row, likeliest group first."""
        fits = [fit for group in self.ranking.groups for fit in group.fits]
        likeliest = sorted(fits, key=lambda one: -one.share)[:LEAST_ROWS]
        kept = [fit for fit in fits if fit.share >= LEAST_SHOWN or fit in likeliest]
        return tuple(kept[:MOST_SHOWN])

    @cached_property
    def next(self) -> next_reading.Parting | None:
        """The reading that parts best what is likely; None where none does."""
        return next_reading.best(self.finder, self.ranking, offered(self))

    @property
    def after(self) -> Opened:
        """The outlets open after."""
        return opened_of(self.built, AFTER)

    @cached_property
    def weak_now(self) -> tuple[Weak, ...]:
        """Outlets too weak with the likeliest cause, the others open after."""
        if self.leader.fault == NOTHING:
            return self.weak_sound
        return self._weak(self.finder.with_fault(self.leader.fault, self.leader.severity))

    @cached_property
    def weak_sound(self) -> tuple[Weak, ...]:
        """The same with nothing wrong."""
        return self._weak(self.finder.sound)

    def _weak(self, expected: Expected) -> tuple[Weak, ...]:
        found = []
        outlets = expected.supply.network.outlets_by_name
        for name, _ in self.after:
            one = outlets[name]
            asked = self.finder.supply.network.outlets_by_name[name]
            has = expected.of(Reading(PRESSURE, 0.0, 1.0, one.node, self.after)) or 0.0
            level = practice.enough(has, asked.content_pa, asked.best_pa)
            if level in ("stop", "care"):
                found.append(Weak(name, has, asked.content_pa, level))
        return tuple(sorted(found, key=lambda one: one.has - one.needs))


@lru_cache(4)  # while readings are typed the supply stays
def _finder(
    supply: Supply, cut_in: float | None, cut_out: float | None, volts: float | None
) -> tuple[Built, Finder]:
    built = supply.built()
    finder = Finder(watched(built, cut_in, cut_out, volts))
    finder.sound.solution(STATIC)
    return built, finder


def case_of(values: Values) -> Case:
    """The ``Case`` of a form.  Raises InputErrors named by its fields, rows and cells."""
    supply = supply_of(values)
    try:
        by_switch = values.cutin if values.drive == "full" and switched(values) else None
        built, finder = _finder(
            supply, by_switch, values.cutout if by_switch else None, values.nominal
        )
        finder.sound.solution(opened_of(built, AFTER))
    except InputError as error:
        raise renamed(error) from error
    given = readings_of(values, built)
    _check(given, finder)
    told = [(one, place, finder.tells(one)) for one, place in given]
    readings = tuple(one for one, _, tells in told if tells)
    left_out = tuple(place for _, place, tells in told if not tells)
    return Case(values, built, finder, readings, left_out, signs(values))


def _check(given: tuple[tuple[Reading, str], ...], finder: Finder) -> None:
    """Refuse what no fault can bring about.  Raises InputErrors at the cells."""
    most = highest_pressures(finder.supply.network, controlled=False)
    faults = []
    for reading, place in given:
        if reading.kind != PRESSURE:
            continue
        limit = max(0.0, most.get(reading.at, 0.0))
        if reading.value > limit * 1.1 + SURELY_WRONG * reading.error:
            what = "the pump can make there" if finder.supply.pumps else "the source can give there"
            text = f"This is more than {what} with all closed. Check gauge, unit and heights"
            faults.append(InputError(text, name=place))
    if faults:
        raise InputErrors(faults)


def offered(case: Case) -> Iterator[Reading]:
    """Readings that could be taken, the simplest first, with their usual errors."""
    after, supply = case.after, case.finder.supply
    outlets = supply.network.outlets
    nodes = tuple(dict.fromkeys((supply.start, *(one.node for one in outlets))))
    pressed = nodes if supply.pumps else nodes[1:]  # open water has none
    for opened in (STATIC, after) if after else (STATIC,):
        for node in pressed:
            yield Reading(PRESSURE, 0.0, form.GAUGE_ERROR, node, opened)
    for one in outlets:
        bucket = Reading(BUCKET, 0.0, 1.0, one.name, ((one.name, 1),))
        value = case.finder.expected(NOTHING, 1.0, bucket) or 0.0
        yield Reading(BUCKET, 0.0, max(1e-7, form.BUCKET_ERROR * value), one.name, ((one.name, 1),))
    if not supply.pumps:
        return
    yield Reading(STANDBY, 0.0, form.FALL_ERROR, "", STATIC, case.values.wait)
    yield Reading(CLOSED, 0.0, form.FALL_ERROR, "", STATIC, case.values.wait)
    yield Reading(LEVEL, 0.0, form.LEVEL_ERROR)
    yield Reading(SUCTION, 0.0, form.VACUUM_ERROR, "", after)
    watts = case.finder.expected(NOTHING, 1.0, Reading(WATTS, 0.0, 1.0, "", after))
    if watts:
        yield Reading(WATTS, 0.0, form.DISPLAY_ERROR * watts, "", after)
    if supply.volts:
        yield Reading(VOLTS, 0.0, form.VOLTS_ERROR * supply.volts)
    if outlets:
        little = min(outlets, key=lambda one: one.full_m3s / one.count)
        yield Reading(STARTS, 0.0, form.STARTS_ERROR[0], "", ((little.name, 1),))
