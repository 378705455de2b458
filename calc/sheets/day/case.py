"""A supply's day as numbers: what a reader entered, followed from morning to morning."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import TYPE_CHECKING, Any

from calc import day_tank
from calc.errors import InputError
from calc.network import over_a_day
from calc.network.at_levels import Flows, Rates, Tank
from calc.network.day_run import NOTHING, Span, joined
from calc.network.over_a_day import Plan, Start
from calc.network.parted import EMPTY
from calc.network.state import SEEPING
from calc.sheets.day.form import (
    again_of,
    check_names,
    pieces_of,
    renamed,
    store_of,
    supply_of,
)
from calc.sheets.parts.fields import NO_PUMP
from calc.site.supply import (
    WATER,
    Built,
    plain,
)
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.network.day_run import Run, Step
    from calc.page.form import Values

HAIR = 1e-6  # m3, a millilitre: less is nothing
MOMENT = 1.0  # s, two moments closer than this are one


@dataclass
class Kept:
    """What one answer works out once: the flows of each network, and each day followed."""

    flows: dict[Any, Flows] = field(default_factory=dict)
    days: dict[Any, tuple[Run, bool]] = field(default_factory=dict)


@dataclass(frozen=True)
class Case:
    """run: the day; repeats: whether its end is its beginning (False too for a day from a start
    given); begun: whether its start was given; pumped: whether there is a pump."""

    values: Values
    built: Built
    tanks: tuple[Tank, ...]
    plan: Plan
    run: Run
    repeats: bool
    kept: Kept

    @property
    def begun(self) -> bool:
        return self.values.start is not None

    @property
    def pumped(self) -> bool:
        return bool(self.values.drive != NO_PUMP)

    @property
    def falls(self) -> bool:
        """Whether water comes down from an open source, without a pump."""
        return not self.pumped and self.values.fall is not None

    @property
    def came(self) -> float:
        """m3 that came into tanks and pipes in the day, pumped or from an open source."""
        return self.run.pumped + self.run.other

    @property
    def limited(self) -> bool:
        """Whether the source may run out: what it stores and gives is known."""
        return self.plan.store.stored_m3 is not None

    @property
    def weight(self) -> float:
        """Pa per metre of water."""
        return self.built.before.weight

    # Outlets ----------------------------------------------------------------------------------

    @property
    def used(self) -> tuple[str, ...]:
        """Names of the outlets that are open at some time."""
        return tuple(n for n, asked in zip(self.run.outlets, self.run.asked, strict=True) if asked)

    @cached_property
    def failing(self) -> dict[str, tuple[Span, ...]]:
        """Spans in which each used outlet gets too little or nothing, past the day's end too."""
        found = {name: self.around(self.run.spans(name)) for name in self.used}
        return {name: spans for name, spans in found.items() if spans}

    def around(self, spans: Iterable[Span]) -> tuple[Span, ...]:
        """Spans of a day, the last joined to the first where they meet at its end."""
        found = list(spans)
        if len(found) > 1 and not self.begun:
            first, last = found[0], found[-1]
            if first.start < MOMENT and last.end > DAY - MOMENT and first.kind == last.kind:
                found = [*found[1:-1], Span(last.start, first.end + DAY, last.kind)]
        return tuple(one for one in found if one.end - one.start >= MOMENT)

    def nothing(self, name: str) -> tuple[Span, ...]:
        """Spans in which an outlet gets nothing, the longest first."""
        spans = (one for one in self.failing.get(name, ()) if one.kind == NOTHING)
        return tuple(sorted(spans, key=lambda one: one.start - one.end))

    @property
    def missing(self) -> float:
        """What is asked for in vain, m3; 0 where it is only rounding."""
        lost = sum(self.run.missing)
        return lost if lost > HAIR else 0.0

    def open_time(self, name: str) -> float:
        """How long an outlet is open, s."""
        counts = (dict(piece.counts) for piece in self.plan.pieces)
        pairs = zip(counts, self.plan.pieces, strict=True)
        return sum(piece.long_s for held, piece in pairs if held.get(name))

    # Tanks ------------------------------------------------------------------------------------

    def empty(self, at: int) -> tuple[tuple[Span, ...], float]:
        """(spans, m3): when a tank is empty while something is missing, and how much is."""
        found, lost = [], 0.0
        for step in self.run.steps:
            short = self.short_by(step) if step.state.stands[at] == EMPTY else 0.0
            if short > 0.0:
                found.append((step.start, step.end, "empty"))
                lost += short
        spans = (Span(*one) for one in joined(found))
        return self.around(spans), lost

    def short_by(self, step: Step) -> float:
        """What is missing in a step, m3: by the middle of its ends."""
        wanted = self.run.flows.wanted(step.state.counts)
        ends = (step.rates, step.rates_then)
        lost = sum(
            max(0.0, w - sum(one.drawn[at] for one in ends) / 2) for at, w in enumerate(wanted)
        )
        lost *= step.end - step.start
        return lost if lost > HAIR else 0.0

    @property
    def lowest_share(self) -> int:
        """Index of the tank that falls to the smallest share."""
        least = (self.run.lowest(at)[0] for at in range(len(self.tanks)))
        shares = [round(a / b.volume_m3, 9) for a, b in zip(least, self.tanks, strict=True)]
        return shares.index(min(shares))

    def lower(self, at: int) -> float:
        """m3 by which a tank, or after the last of them the source, ends below its beginning."""
        return self.run.begins[at] - self.run.ends[at]

    # Pump and source ---------------------------------------------------------------------------

    def stands(self, step: Step) -> str:
        """Why the pump does not run in a step: "power", "dry", "full"; "" where it may run."""
        if not self.pumped or step.state.pumping:
            return ""
        if not self.powered(step.start):
            return "power"
        # without water at the source it waits; else since the tanks were full
        if self.limited and step.held[-1] < self.plan.store.again * self._stored - HAIR:
            return "dry"
        return "full"

    def powered(self, moment: float) -> bool:
        """Whether the pump has power at a moment, s."""
        end = 0.0
        for piece in self.plan.pieces:
            end += piece.long_s
            if moment < end - over_a_day.MOMENT:
                return piece.power
        return self.plan.pieces[-1].power

    @property
    def _stored(self) -> float:
        return self.plan.store.stored_m3 or 0.0

    @cached_property
    def dry(self) -> tuple[Span, ...]:
        """When the pump waits for a source that has run out."""
        found = [(s.start, s.end, "dry") for s in self.run.steps if self.stands(s) == "dry"]
        return self.around(Span(*one) for one in joined(found))

    @cached_property
    def shut_time(self) -> float:
        """How long a pump at fixed speed runs against closed valves, s."""
        if self.values.drive != "full":
            return 0.0
        steps = (s for s in self.run.steps if s.state.pumping)
        return sum(s.end - s.start for s in steps if self._still(s))

    @staticmethod
    def _still(step: Step) -> bool:
        return max(step.rates.pumped, step.rates_then.pumped) <= over_a_day.INTO

    def stored_needed(self, gives: float) -> float | None:
        """What must stand at the source that gives so much (m3/s), m3; None: it gives too little.

        Of a day that repeats, by the water pumped in each step.
        """
        comes = [gives * (s.end - s.start) for s in self.run.steps]
        return day_tank.swing(comes, self._pumped)

    @cached_property
    def _pumped(self) -> list[float]:
        """m3 pumped in each step."""
        return [
            (s.rates.pumped + s.rates_then.pumped) / 2 * (s.end - s.start) for s in self.run.steps
        ]

    @property
    def even(self) -> float:
        """What is pumped on the mean of the day, m3/s."""
        return sum(self._pumped) / DAY

    # Changed ----------------------------------------------------------------------------------

    def changed(self, **numbers: Any) -> Case:
        """The same with other numbers in the form.  Raises InputError as ``case_of``."""
        values = replace(self.values, numbers={**self.values.numbers, **numbers})
        return case_of(values, self.kept)


def comes(rates: Rates) -> float:
    """m3/s that come into tanks and pipes, pumped or from an open source; 0 where it only seeps."""
    found = rates.pumped + rates.other
    return found if abs(found) > SEEPING else 0.0


# From the form --------------------------------------------------------------------------------


def case_of(values: Values, kept: Kept) -> Case:
    """The ``Case`` of a form.  Raises InputErrors named by its fields, rows and cells."""
    try:
        built = supply_of(values).built()
    except InputError as error:
        raise renamed(error) from error
    check_names(values)
    tanks = tuple(
        Tank(plain(row.name), row.up - row.deep, row.deep, row.volume) for row in values.stores
    )
    plan = Plan(tuple(pieces_of(values, built)), store_of(values), again_of(values))
    key = (built.before, tanks, plan, values.start)
    if key not in kept.days:
        try:
            kept.days[key] = _followed(_flows(kept, built, tanks), plan, values.start)
        except InputError as error:
            raise renamed(error, built) from error
    run, repeats = kept.days[key]
    return Case(values, built, tanks, plan, run, repeats, kept)


def _followed(flows: Flows, plan: Plan, start: float | None) -> tuple[Run, bool]:
    """(the day, whether it repeats).  start: share of each tank, 0 to 1, of a day from there."""
    if start is None:
        day = over_a_day.repeated(flows, plan)
        return day.run, day.repeats
    volumes = tuple(start * tank.volume_m3 for tank in flows.tanks)
    return over_a_day.follow(flows, plan, Start(volumes, plan.store.stored_m3 or 0.0)), False


def _flows(kept: Kept, built: Built, tanks: tuple[Tank, ...]) -> Flows:
    """The flows of a network, for tanks of any size: they go by the levels alone."""
    key = (built.before, tuple((one.floor_m, one.depth_m) for one in tanks))
    if key not in kept.flows:
        kept.flows[key] = Flows(built.before, tanks, WATER)
    return replace(kept.flows[key], tanks=tanks)
