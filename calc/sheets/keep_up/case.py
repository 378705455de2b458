"""What a reader entered as one supply, solved before and after more outlets open."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, InputErrors
from calc.network.findings import outlets
from calc.network.parts import PumpSet, Run
from calc.network.state import SEEPING, OutletState, Solution
from calc.network.way import way_to
from calc.sheets.keep_up.cause import Cause, cause_of
from calc.sheets.keep_up.rows import HOUSE, HOUSE_BENDS, HOUSE_OUTLETS, TANKS
from calc.sheets.parts import supply_form
from calc.sheets.parts.fields import NO_PUMP
from calc.sheets.parts.guard import BOTH
from calc.sheets.parts.pipe_choice import pipe_of
from calc.sheets.parts.pump_choice import chosen_pump
from calc.site.supply import (
    PUMP,
    PUMP_PART,
    SOURCE,
    Built,
    OpenWater,
    OutletRow,
    SectionRow,
    Source,
    Supply,
    named,
    row_faults,
)
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from calc.network.parts import Link
    from calc.page.form import Values
    from calc.pipe.pipes import Pipe

EQUAL = 1e-6  # share by which two pressures may differ and still be one; our choice
HAIR = 1.0  # Pa, the same where they are about zero
_FEW = {"sections": "away", "outlets": "showers", "tanks": "away"}


# From the form --------------------------------------------------------------------------------


def supply_of(values: Values) -> Supply:
    """The supply, whichever way it was described.  Raises InputError."""
    source = _open_water(values) if values.drive == NO_PUMP else _pump_side(values)
    if values.ask == "few":
        return _few(source, values)
    return Supply(source, *supply_form.rows_of(values, TANKS.key))


def _open_water(values: Values) -> OpenWater:
    return OpenWater(
        level_m=values.fall,
        gives_m3s=values.gives,
        temperature_k=values.water,
        altitude_m=values.altitude,
        hottest_k=values.hottest,
    )


def _pump_side(values: Values) -> Source:
    source = Source(
        pump=chosen_pump(values),
        set_pa=None,
        lift_m=values.lift,
        suction_length_m=values.suctionlong,
        suction_pipe=pipe_of(values.suctionpipe),
        temperature_k=values.water,
        altitude_m=values.altitude,
        pumps=values.pumps,
        hottest_k=values.hottest,
        relief=values.relief == "yes",
        tank_m3=values.tank,
        sensed_m=values.sensed or 0.0,
        least_m3s=values.least,
        guard=values.guard or BOTH,
        charge_pa=values.precharge,
        allowed=values.starts * HOUR,
        smallest_m3s=values.draw,
    )
    if values.drive == "held":
        source = replace(source, set_pa=values.set + source.sensed_pa)
    return source


def check_rows(values: Values) -> None:
    """The faults of rows that were read, where something else could not be read.

    Raises InputErrors named by the form's rows and cells.
    """
    tables = (values.numbers.get(key) for key in supply_form.tables_of(TANKS.key).values())
    if any(table is None for table in tables):
        return  # not asked, or one could not be read at all: what names its points may be right
    start = SOURCE if values.numbers.get("drive") == NO_PUMP else PUMP
    faults = row_faults(*supply_form.rows_of(values, TANKS.key), start)
    if faults:
        raise InputErrors(named(one, field_of(one.name, "rows")) for one in faults)


def _few(source: Source | OpenWater, values: Values) -> Supply:
    """One pipe to one house."""
    section = SectionRow(
        "pump", HOUSE, values.away, values.climb, pipe_of(values.main), HOUSE_BENDS
    )
    outlets = tuple(
        OutletRow(name, HOUSE, kind, 0 if later else values.numbers[key], values.numbers[key])
        for name, kind, key, later in HOUSE_OUTLETS
        if values.numbers[key]
    )
    if not outlets:
        raise InputError("Nothing is open. Enter at least one outlet.", name="showers")
    return Supply(source, (section,), outlets)


def solved(supply: Supply, ask: str = "rows", near: Case | None = None) -> Case:
    """The supply as a ``Case``.  Raises InputErrors named by the form's fields, rows and cells.

    ask: how the form asked, "rows" or "few"; near: a case of a like supply to begin from.
    """
    try:
        built = supply.built()
        after = built.solve(built.after, near.after if near else None)
        case = Case(built, after, ask, near)
        if near is None:
            _ = case.before  # solved here, so that what it raises is named too
    except InputError as error:
        found = getattr(error, "errors", (error,))
        raise InputErrors(named(one, field_of(one.name, ask)) for one in found) from error
    return case


def field_of(name: str | None, ask: str) -> str:
    """The form's key for a place in the rows, or of the few questions."""
    table = (name or "sections").partition(".")[0]
    if ask == "few" and table != "source":
        return _FEW.get(table, "away")
    return supply_form.field_of(name, TANKS.key)


def sure_pa(works_pa: float) -> float:
    """The pressure, just above borderline, from which what works is sure to, Pa."""
    return practice.BORDERLINE * works_pa * (1 + 1e-6) + HAIR


# Solved -----------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Tap:
    """Outlets of one row at both moments."""

    name: str
    node: str
    before: OutletState
    after: OutletState
    row: OutletRow
    best_pa: float

    @property
    def drop(self) -> float:
        """Pressure lost as the others open, Pa; 0 where it was not open before."""
        kept = self.before.open and self.after.open
        return self.before.pressure_pa - self.after.pressure_pa if kept else 0.0

    @property
    def level(self) -> str:
        """Level of what it gets after: "stop", "care", "note" or ""; "" where it is closed."""
        if not self.after.open:
            return ""
        return practice.enough(self.after.pressure_pa, self.after.wanted_pa, self.best_pa)

    @property
    def sure_pa(self) -> float:
        """The pressure from which it is no longer borderline, Pa."""
        return sure_pa(self.after.wanted_pa)


@dataclass(frozen=True)
class Case:
    """A supply solved before and after; ``near``: a case of a like supply to begin from."""

    built: Built
    after: Solution
    ask: str = "rows"
    near: Case | None = field(default=None, repr=False, compare=False)

    @property
    def supply(self) -> Supply:
        return self.built.supply

    @property
    def gives(self) -> float | None:
        """The most that open water gives where the line begins, m3/s; None: not known."""
        source = self.supply.source
        return source.gives_m3s if isinstance(source, OpenWater) else None

    @cached_property
    def before(self) -> Solution:
        begin = self.near.before if self.near else self.after
        return self.built.solve(self.built.before, begin)

    @property
    def weight(self) -> float:
        """Pa per metre of water."""
        return self.after.network.weight

    @cached_property
    def taps(self) -> tuple[Tap, ...]:
        return tuple(
            Tap(
                outlet.name,
                outlet.node,
                self.before.outlet(outlet.name),
                self.after.outlet(outlet.name),
                self.supply.outlets[self.built.outlet_rows[outlet.name]],
                outlet.best_pa,
            )
            for outlet in self.after.network.outlets
        )

    @cached_property
    def opened(self) -> tuple[Tap, ...]:
        """Outlets of which more are open after than before."""
        return tuple(tap for tap in self.taps if tap.row.after > tap.row.before)

    @cached_property
    def running(self) -> tuple[Tap, ...]:
        """Outlets open after."""
        return tuple(tap for tap in self.taps if tap.after.open)

    @cached_property
    def short(self) -> tuple[str, ...]:
        """Names of open outlets that get too little or only just enough after."""
        found = outlets(self.after)
        kinds = ("short", "no-water")
        return tuple(one.row for one in found if one.kind in kinds and one.level != "note")

    @cached_property
    def main(self) -> Tap | None:
        """The outlet the answer is about.

        The one that falls furthest short; else of those only just well off the nearest; else the
        one that loses most as others open; else the one with the least over what it needs.
        Equal ones: the first in the rows, so that no last bit decides.
        """
        stopped = [tap for tap in self.running if tap.level == "stop"]
        if stopped:
            return first(stopped, lambda tap: tap.after.wanted_pa - tap.after.pressure_pa)
        tight = [tap for tap in self.running if tap.level == "care"]
        if tight:
            return first(tight, _tightness, EQUAL)
        if any(tap.drop > HAIR for tap in self.running):
            return first(self.running, lambda tap: tap.drop)
        return first(self.running, _tightness, EQUAL)

    @cached_property
    def way(self) -> tuple[Link, ...]:
        """Links from the source to ``main`` after, source first."""
        if self.main is None:
            return ()
        return tuple(self.after.network.link(name) for name in way_to(self.after, self.main.node))

    def pipe_of(self, name: str) -> Pipe | None:
        """The pipe of a run by its name; None of another part."""
        runs = (link for link in self.after.network.links if isinstance(link, Run))
        return next((run.pipe for run in runs if run.name == name), None)

    @property
    def sections_on_way(self) -> list[Run]:
        """The pipe sections of ``way``, without the suction pipe."""
        runs = [link for link in self.way if isinstance(link, Run)]
        return [run for run in runs if run.name in self.built.section_rows]

    @property
    def feeds(self) -> str:
        """Name of the open water that ``main`` gets its water from."""
        names = {level.name for level in self.built.levels}
        ends = [end for link in self.way[:1] for end in (link.start, link.end)]
        return next((end for end in ends if end in names), "")

    @property
    def pumped(self) -> bool:
        """Whether the pump gives water to ``main``."""
        return any(
            isinstance(link, PumpSet) and self.after.flows[link.name] > SEEPING for link in self.way
        )

    @cached_property
    def cause(self) -> Cause:
        """Why the main outlet gets too little."""
        return cause_of(self)

    @property
    def cause_known(self) -> str:
        """Kind of the ``cause`` where the main outlet gets too little, else ""."""
        tap = self.main
        return self.cause.kind if tap is not None and tap.level in ("stop", "care") else ""

    @property
    def held(self) -> bool:
        """Whether the pump's control holds its set pressure after."""
        return self.supply.pumping is not None and self.after.pump(PUMP_PART).held


def _tightness(tap: Tap) -> float:
    return -tap.after.pressure_pa / max(tap.after.wanted_pa, HAIR)


def first(taps: Iterable[Tap], key: Callable[[Tap], float], hair: float = HAIR) -> Tap | None:
    """The outlet with the largest ``key``; of equal ones the first; None of none.

    hair: difference within which two are equal, in the key's unit.
    """
    found = [(key(tap), tap) for tap in taps]
    if not found:
        return None
    most = max(value for value, _ in found)
    least = most - max(EQUAL * abs(most), hair)
    return next(tap for value, tap in found if value >= least)
