"""A supply followed through a day: tanks fill and empty, the pump starts and stops, taps run dry.

dV/dt = what runs into a tank less what runs out, all flows those of the solved network at the
levels of the moment.  The day is cut exactly wherever something changes: outlets open or shut,
power comes or goes, a tank is full or empty, its switch starts or stops the pump, the source runs
out or has recovered.  Between cuts the levels are followed by steps of third order whose errors
are watched.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.errors import InputError, require
from calc.network.at_levels import Flows, Rates, State, Tank
from calc.network.day_run import Run, Step
from calc.network.parted import EMPTY, FREE, FULL, fed
from calc.solve import root

if TYPE_CHECKING:
    from collections.abc import Sequence

EXACT = 1e-6  # share of a tank by which a step may be wrong; our choice
LONGEST = 1800.0  # s, of a step; our choice
SHORTEST = 1e-3  # s, of a step: at a sharp bend an error is let pass
MOMENT = 1e-6  # s, to which a moment is found at which something changes
HAIR = 1e-7  # m3, a tenth of a millilitre: what a tank may be off its limit and still be at it
MOST_CUTS = 5000  # changes in a day, above which the pump could not work; our choice
SETTLED = 2e-3  # share of a tank, and of the day's water, by which days that repeat may differ
MOST_DAYS = 5  # followed until they repeat; our choice
INTO = 1e-9  # m3/s, as ``at_levels.SEEPS``: less is no flow


@dataclass(frozen=True)
class Store:
    """The water that the pump draws from.

    stored_m3: stands in it when rested, m3 (None: never runs out); yield_m3s: comes in, m3/s;
    again: share of what it stores from which the pump starts after it has run out, 0 to 1.
    """

    stored_m3: float | None = None
    yield_m3s: float = 0.0
    again: float = 0.5

    def __post_init__(self) -> None:
        require("again", self.again, 1e-3, 1.0, "percent")


@dataclass(frozen=True)
class Piece:
    """A piece of the day, in which nothing is opened or shut.

    long_s: s; counts: (outlet, how many are open) of those open; power: whether the pump may run.
    """

    long_s: float
    counts: tuple[tuple[str, int], ...] = ()
    power: bool = True


@dataclass(frozen=True)
class Plan:
    """A day to follow. pieces: in their order; again: share of a tank to which it falls before its
    switch starts the pump once it was full, 0 to 1 (None: no switch, a float valve alone)."""

    pieces: tuple[Piece, ...]
    store: Store = Store()
    again: float | None = None

    def __post_init__(self) -> None:
        if self.again is not None:
            require("again", self.again, 0.0, 0.999, "percent")


@dataclass(frozen=True)
class Start:
    """How a day begins. volumes: in each tank, m3; stored: in the source, m3; full, dry: whether
    the pump waits since the tanks were full, or since the source ran out."""

    volumes: tuple[float, ...]
    stored: float = 0.0
    full: bool = False
    dry: bool = False


def filled(flows: Flows, plan: Plan) -> Start:
    """The ``Start`` with every tank and the source full."""
    volumes = tuple(tank.volume_m3 for tank in flows.tanks)
    return Start(volumes, plan.store.stored_m3 or 0.0)


def follow(flows: Flows, plan: Plan, start: Start) -> Run:
    """A day followed from ``start``.

    dV/dt = sum of flows in - sum of flows out, of each tank; dS/dt = yield - pumped, of the source
    flows: ``Flows`` of the network; plan: ``Plan``; start: ``Start``, its volumes 0 to full.
    Returns ``Run``.
    Raises InputError: the network cannot be solved; a pump that starts thousands of times a day
    ("stored_m3"); RangeError: a volume below nothing or above full ("start").
    Source: continuity; steps: P. Bogacki and L. F. Shampine, Applied Mathematics Letters 2 (1989)
    321-325, from memory.
    """
    for tank, volume in zip(flows.tanks, start.volumes, strict=True):
        require("start", volume, -HAIR, tank.volume_m3 + HAIR, "volume")
    return _Day(flows, plan, start).run()


@dataclass(frozen=True)
class Repeated:
    """The day that repeats. run: its ``Run``; days: how many were followed; repeats: whether its
    end is its beginning, to ``SETTLED``; lower: m3 by which each tank ends below its beginning."""

    run: Run
    days: int
    repeats: bool

    @property
    def lower(self) -> tuple[float, ...]:
        return tuple(a - b for a, b in zip(self.run.begins, self.run.ends, strict=True))


def repeated(flows: Flows, plan: Plan, start: Start | None = None) -> Repeated:
    """Days followed one after the other until they repeat, or ``MOST_DAYS`` of them.

    start: of the first (None: all full).  Returns ``Repeated``.  Arguments and errors as
    ``follow``.
    """
    now = start or filled(flows, plan)
    full = (*(tank.volume_m3 for tank in flows.tanks), plan.store.stored_m3 or math.inf)
    days = 0
    while True:
        run, days = follow(flows, plan, now), days + 1
        apart = zip(run.begins, run.ends, full, strict=True)
        day = sum(run.given) + run.pumped
        same = all(abs(a - b) <= SETTLED * min(most, day) + HAIR for a, b, most in apart)
        if same or days == MOST_DAYS:
            return Repeated(run, days, same)
        volumes = tuple(
            min(max(v, 0.0), tank.volume_m3) for v, tank in zip(run.ends, flows.tanks, strict=False)
        )
        now = Start(volumes, max(run.ends[-1], 0.0), run.waits_full, run.waits_dry)


class _Day:
    """A day while it is followed.  Its numbers: tanks, source, then what is added up."""

    def __init__(self, flows: Flows, plan: Plan, start: Start) -> None:
        self.flows, self.plan, self.tanks = flows, plan, flows.tanks
        self.count = len(self.tanks)
        self.full, self.dry = start.full, start.dry
        stored = plan.store.stored_m3
        self.limited = stored is not None
        self.most = [tank.volume_m3 for tank in self.tanks]
        self.most.append(math.inf if stored is None else stored)
        names = fed(flows.network, [tank.name for tank in self.tanks])
        self.fed = [at for at, tank in enumerate(self.tanks) if tank.name in names]
        outlets = len(flows.network.outlets)
        # tanks, source, pumped, ran over, other, then given and missing of each outlet
        self.now = [*start.volumes, start.stored] + [0.0] * (3 + 2 * outlets)
        self.time, self.cuts = 0.0, 0
        self.steps: list[Step] = []

    def run(self) -> Run:
        begins, end = tuple(self.now[: self.count + 1]), 0.0
        asked = [0.0] * len(self.flows.network.outlets)
        for piece in self.plan.pieces:
            end += piece.long_s
            wanted = self.flows.wanted(piece.counts)
            asked = [a + w * piece.long_s for a, w in zip(asked, wanted, strict=True)]
            while self.time < end - MOMENT:
                self._span(piece, end, wanted)
            self.time = end
        ends, rest = tuple(self.now[: self.count + 1]), self.now[self.count + 1 :]
        pumped, over, other, *drawn = rest
        return Run(
            self.flows, tuple(self.steps), begins, ends, tuple(asked), tuple(drawn[0::2]),
            tuple(drawn[1::2]), pumped, over, other, self.plan.store.yield_m3s * end,
            self.full, self.dry,
        )  # fmt: skip

    # One span in which nothing changes --------------------------------------------------------

    def _span(self, piece: Piece, end: float, wanted: tuple[float, ...]) -> None:
        """Follow until something changes, or to the end of the piece."""
        self._count()
        self._switch()
        state, rates = self._state(piece)
        long = LONGEST
        while self.time < end - MOMENT:
            long = min(long, LONGEST, end - self.time)
            long, after, rates_after = self._step(state, long, rates, wanted)
            passed = self._passed(state, after)
            if passed:
                long, after, rates_after = self._cut(state, long, rates, wanted, passed)
            self._keep(state, long, after, rates, rates_after)
            if passed:
                return
            rates = rates_after
            long *= 2.0
            if self._changed(state, rates):
                return

    def _count(self) -> None:
        self.cuts += 1
        if self.cuts > MOST_CUTS:
            text = "With so little water stored the pump would start thousands of times a day."
            raise InputError(text, name="stored_m3")

    def _keep(
        self, state: State, long: float, after: list[float], one: Rates, other: Rates
    ) -> None:
        held = self.count + 1
        volumes = tuple(self.now[:held]), tuple(after[:held])
        begin, self.time, self.now = self.time, self.time + long, after
        if long > 0.0:
            self.steps.append(Step(begin, self.time, state, *volumes, one, other))

    def _switch(self) -> None:
        """The switches of tanks and source, by what stands in them."""
        if self.plan.again is not None and self.fed:
            low = any(self.now[at] <= self.plan.again * self.most[at] + HAIR for at in self.fed)
            top = all(self.now[at] >= self.most[at] - HAIR for at in self.fed)
            self.full = (self.full and not low) or top
        if self.limited:
            store, held = self.plan.store, self.now[self.count]
            if held >= store.again * self.most[-1] - HAIR:
                self.dry = False

    def _state(self, piece: Piece) -> tuple[State, Rates]:
        """How everything stands now, and what runs."""
        pumping = piece.power and not self.full and not self.dry and bool(self.flows.pumps)
        state, rates = self._standing(piece, pumping)
        if pumping and self._runs_out(rates):
            self.dry = True
            state, rates = self._standing(piece, False)
        return state, rates

    def _runs_out(self, rates: Rates) -> bool:
        held, comes = self.now[self.count], self.plan.store.yield_m3s
        return self.limited and held <= HAIR and rates.pumped > comes + INTO

    def _standing(self, piece: Piece, pumping: bool) -> tuple[State, Rates]:
        """Which tanks are at their limit: those whose level would go past it."""
        stands = []
        for at in range(self.count):
            top, low = self.now[at] >= self.most[at] - HAIR, self.now[at] <= HAIR
            stands.append(FULL if top else EMPTY if low else FREE)
        while True:
            state = State(piece.counts, pumping, tuple(stands))
            rates = self.flows.between(state, self._shares(self.now))
            loose = [at for at in range(self.count) if _leaves(stands[at], rates.nets[at])]
            if not loose:
                return state, rates
            for at in loose:
                stands[at] = FREE

    def _shares(self, numbers: Sequence[float]) -> tuple[float, ...]:
        return tuple(numbers[at] / self.most[at] for at in range(self.count))

    # Steps ------------------------------------------------------------------------------------

    def _slopes(self, rates: Rates, held: float, wanted: Sequence[float]) -> list[float]:
        """How fast every number changes."""
        comes = self.plan.store.yield_m3s if self.limited else rates.pumped
        over = 0.0
        if self.limited and held >= self.most[-1] - HAIR and comes > rates.pumped:
            over = comes - rates.pumped
        found = [*rates.nets, comes - rates.pumped - over, rates.pumped, over, rates.other]
        for drawn, asked in zip(rates.drawn, wanted, strict=True):
            found += (drawn, max(asked - drawn, 0.0))
        return found

    def _step(
        self, state: State, long: float, rates: Rates, wanted: Sequence[float]
    ) -> tuple[float, list[float], Rates]:
        """(s, numbers, rates) after a step not longer than ``long`` and exact enough."""
        while True:
            after, rates_after, off = self._tried(state, long, rates, wanted)
            if off <= 1.0 or long <= SHORTEST:
                return long, after, rates_after
            long = max(long * max(0.2, 0.9 * off ** (-1 / 3)), SHORTEST)

    def _tried(
        self, state: State, long: float, rates: Rates, wanted: Sequence[float]
    ) -> tuple[list[float], Rates, float]:
        """(numbers, rates, error over what it may be) after a step.

        k2 = f(y + h/2 k1), k3 = f(y + 3h/4 k2), y' = y + h (2 k1 + 3 k2 + 4 k3) / 9, and the
        error h (-5 k1 + 6 k2 + 8 k3 - 9 k4) / 72.
        """
        now, flows = self.now, self.flows
        held = now[self.count]  # whether the source is full: as at the beginning of the step

        def at(shift: float, slopes: Sequence[float]) -> tuple[Rates, list[float]]:
            there = [now[i] + shift * slopes[i] for i in range(self.count)]
            found = flows.between(state, self._shares(there))
            return found, self._slopes(found, held, wanted)

        k1 = self._slopes(rates, held, wanted)
        pairs = zip(state.stands, rates.nets, strict=True)
        if all(how != FREE or net == 0.0 for how, net in pairs):  # nothing bends: one straight step
            return [n + long * k for n, k in zip(now, k1, strict=True)], rates, 0.0
        k2 = at(long / 2, k1)[1]
        k3 = at(0.75 * long, k2)[1]
        ninth = long / 9
        after = [
            n + ninth * (2 * a + 3 * b + 4 * c) for n, a, b, c in zip(now, k1, k2, k3, strict=True)
        ]
        rates_after = flows.between(state, self._shares(after))
        k4 = rates_after.nets
        off = max(
            (
                abs(long * (-5 * k1[i] + 6 * k2[i] + 8 * k3[i] - 9 * k4[i]) / 72)
                / (EXACT * self.most[i])
                for i in range(self.count)
            ),
            default=0.0,
        )
        return after, rates_after, off

    # Changes ----------------------------------------------------------------------------------

    def _limits(self, state: State) -> list[tuple[int, float, float]]:
        """(number, limit, +1 rising or -1 falling) of what may be passed and changes something."""
        found = []
        for at in range(self.count):
            if state.stands[at] == FREE:
                found += [(at, self.most[at], 1.0), (at, 0.0, -1.0)]
            if self.full and at in self.fed and self.plan.again is not None:
                found.append((at, self.plan.again * self.most[at], -1.0))
        if self.limited:
            found += [(self.count, self.most[-1], 1.0), (self.count, 0.0, -1.0)]
            if self.dry:
                found.append((self.count, self.plan.store.again * self.most[-1], 1.0))
        return found

    def _passed(self, state: State, after: Sequence[float]) -> list[tuple[int, float, float]]:
        """The limits that a step reaches."""
        return [
            (at, limit, way)
            for at, limit, way in self._limits(state)
            if way * (after[at] - limit) >= -HAIR / 2 and way * (self.now[at] - limit) < -HAIR / 2
        ]

    def _cut(
        self, state: State, long: float, rates: Rates, wanted: Sequence[float],
        passed: list[tuple[int, float, float]],
    ) -> tuple[float, list[float], Rates]:  # fmt: skip
        """A step cut where the first limit is reached."""
        for at, limit, _ in passed:

            def over(part: float, at: int = at, limit: float = limit) -> float:
                if part == 0.0:
                    return self.now[at] - limit
                return self._tried(state, part, rates, wanted)[0][at] - limit

            if over(long) * over(0.0) < 0.0:
                long = root(over, 0.0, long, MOMENT)
        after, rates_after, _ = self._tried(state, long, rates, wanted)
        return long, after, rates_after

    def _changed(self, state: State, rates: Rates) -> bool:
        """Whether a tank leaves its limit or is held by it, as another's level moves."""
        for at, (how, net) in enumerate(zip(state.stands, rates.nets, strict=True)):
            if _leaves(how, net):
                return True
            top, low = self.now[at] >= self.most[at] - HAIR, self.now[at] <= HAIR
            if how == FREE and ((top and net > INTO) or (low and net < -INTO)):
                return True
        return False


def _leaves(how: str, net: float) -> bool:
    """Whether a tank at a limit goes away from it. net: into it, m3/s."""
    return (how == FULL and net < -INTO) or (how == EMPTY and net > INTO)


def with_tank(flows: Flows, at: int, tank: Tank) -> Flows:
    """The same flows for another size of a tank of the same depth: nothing is solved again.

    at: index of the tank, a whole number; tank: the other.  Returns ``Flows``, which shares what
    was solved.  Raises InputError where its heights differ.  Source: flows go by levels alone.
    """
    old = flows.tanks[at]
    if (old.name, old.floor_m, old.depth_m) != (tank.name, tank.floor_m, tank.depth_m):
        raise InputError("Only the size of a tank may differ.", name="tank")
    tanks = tuple(tank if i == at else one for i, one in enumerate(flows.tanks))
    return replace(flows, tanks=tanks)
