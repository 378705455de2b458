"""What came of a day: levels, the pump, and each outlet's hours with too little or nothing."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

from calc.network.state import SEEPING
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from calc.network.at_levels import Flows, Rates, State

NOTHING, SHORT = "nothing", "short"
NONE = 1e-3  # share of what an outlet asks for that counts as nothing; our choice
SLACK = 1e-6  # share of the needed pressure that may be missing: the solver's last bits
HALVINGS = 30  # of a step, to find the moment at which a pressure is too low: to a microsecond
JOIN = 1e-3  # s between two spans that are one
DROP = 9  # digits of m3 that are told: a millionth of a litre; what is left below is rounding


class Step(NamedTuple):
    """A step of the day: s from its beginning, how all stood, and at both ends what was in the
    tanks and, last, in the source (m3), and what ran."""

    start: float
    end: float
    state: State
    held: tuple[float, ...]
    then: tuple[float, ...]
    rates: Rates
    rates_then: Rates


class Span(NamedTuple):
    """Part of the day in which an outlet is open and gets too little: s; kind: ``NOTHING``,
    ``SHORT``."""

    start: float
    end: float
    kind: str


@dataclass(frozen=True)
class Run:
    """A day followed.

    begins, ends: m3 in each tank and, last, in the source; asked, given, missing: m3 of each outlet
    of the network, missing only while less is given than asked; pumped: m3; over: m3 that ran over
    at the source; other: m3 out of open water that is no tank; came: m3 that came to a limited
    source; waits_full, waits_dry: whether at the end the pump waits since the tanks were full, or
    since the source ran out.
    """

    flows: Flows
    steps: tuple[Step, ...]
    begins: tuple[float, ...]
    ends: tuple[float, ...]
    asked: tuple[float, ...]
    given: tuple[float, ...]
    missing: tuple[float, ...]
    pumped: float
    over: float
    other: float
    came: float
    waits_full: bool
    waits_dry: bool

    @property
    def long(self) -> float:
        """How long it is, s."""
        return self.steps[-1].end

    @property
    def outlets(self) -> tuple[str, ...]:
        """Names of the outlets, in their order."""
        return tuple(one.name for one in self.flows.network.outlets)

    @property
    def lost(self) -> float:
        """What the tanks' balance is off by, m3: 0 but for rounding.

        pumped + other - given - change of all tanks
        """
        tanks = len(self.flows.tanks)
        change = sum(self.ends[:tanks]) - sum(self.begins[:tanks])
        return self.pumped + self.other - sum(self.given) - change

    # Levels -----------------------------------------------------------------------------------

    def held(self, at: int, moment: float) -> float:
        """What is in a tank at a moment, m3. at: its index, the source's after the last tank's;
        moment: s, 0 to the day's end."""
        step = self.step(moment)
        if step.end <= step.start:
            return round(step.then[at], DROP)
        part = (moment - step.start) / (step.end - step.start)
        if at >= len(self.flows.tanks):
            return round(step.held[at] + part * (step.then[at] - step.held[at]), DROP)
        long = step.end - step.start
        a, b = step.held[at], step.then[at]
        m, n = long * step.rates.nets[at], long * step.rates_then.nets[at]
        left = 1.0 - part
        held = (
            a * left * left * (1 + 2 * part)
            + b * part * part * (3 - 2 * part)
            + m * part * left * left
            - n * part * part * left
        )
        return round(held, DROP)

    def step(self, moment: float) -> Step:
        """The step in which a moment is, the later of two that meet there."""
        low, high = 0, len(self.steps) - 1
        while low < high:
            middle = (low + high + 1) // 2
            if self.steps[middle].start <= moment:
                low = middle
            else:
                high = middle - 1
        return self.steps[low]

    def lowest(self, at: int) -> tuple[float, float]:
        """(m3, s): the least that is in a tank, and when first. at: as in ``held``."""
        ends = [(one.held[at], one.start) for one in self.steps]
        ends.append((self.steps[-1].then[at], self.steps[-1].end))
        least = min(held for held, _ in ends)
        return next((round(held, DROP), when) for held, when in ends if held <= least + 1e-9)

    # The pump ---------------------------------------------------------------------------------

    @cached_property
    def running(self) -> tuple[tuple[float, float], ...]:
        """(start, end) of each time the pump runs, s.

        A pump that holds a set pressure stands while nothing is drawn; any other runs on.
        """
        held = all(pump.set_pa is not None for pump in self.flows.pumps)

        def runs(step: Step) -> bool:
            moves = max(step.rates.pumped, step.rates_then.pumped) > SEEPING
            return step.state.pumping and (moves or not held)

        spans = joined((one.start, one.end, "") for one in self.steps if runs(one))
        return tuple((start, end) for start, end, _ in spans)

    @property
    def pump_time(self) -> float:
        """How long the pump runs, s."""
        return sum(end - start for start, end in self.running)

    @property
    def starts(self) -> tuple[float, ...]:
        """When the pump starts, s; not at the day's beginning where it ran on over night."""
        found = [start for start, _ in self.running]
        on = self.running and self.running[-1][1] >= self.long - JOIN
        return tuple(found[1:] if on and found[0] <= JOIN else found)

    @property
    def starts_an_hour(self) -> int:
        """The most starts in any hour of the day that repeats, a whole number."""
        found = self.starts
        again = [*found, *(one + self.long for one in found)]
        return max((sum(0 <= b - a < HOUR for b in again) for a in found), default=0)

    # The outlets ------------------------------------------------------------------------------

    def spans(self, name: str, enough: float = 1.0) -> tuple[Span, ...]:
        """When an outlet is open and gets too little. enough: times the pressure it needs, a
        number.  Returns ``Span``s in their order."""
        at = self.outlets.index(name)
        found: list[tuple[float, float, str]] = []
        for step in self.steps:
            wanted = self.flows.wanted(step.state.counts)[at]
            if wanted > 0.0:
                found += self._parts(step, self._judge(at, wanted, enough))
        return tuple(Span(*one) for one in joined(found) if one[2])

    def _judge(self, at: int, wanted: float, enough: float) -> Callable[[Rates], str]:
        """Whether an outlet gets ``NOTHING``, is ``SHORT``, or neither, "". wanted: m3/s."""
        one = self.flows.network.outlets[at]
        needed = enough * one.content_pa * (1 - SLACK)

        def kind(rates: Rates) -> str:
            if rates.drawn[at] <= NONE * wanted:
                return NOTHING
            return SHORT if rates.pressures[at] < needed else ""

        return kind

    def _parts(
        self, step: Step, kind: Callable[[Rates], str]
    ) -> Iterator[tuple[float, float, str]]:
        """A step parted where ``kind`` changes, which its flows do one way only."""
        start, now, last = step.start, kind(step.rates), kind(step.rates_then)
        while now != last:
            low, high = start, step.end
            for _ in range(HALVINGS):
                middle = (low + high) / 2
                if kind(self._rates(step, middle)) == now:
                    low = middle
                else:
                    high = middle
            yield start, high, now
            if high >= step.end - JOIN:
                return
            start, now = high, kind(self._rates(step, high))
        yield start, step.end, now

    def _rates(self, step: Step, moment: float) -> Rates:
        shares = [
            self.held(at, moment) / tank.volume_m3 for at, tank in enumerate(self.flows.tanks)
        ]
        return self.flows.between(step.state, shares)

    def least(self, name: str) -> tuple[float, float, float] | None:
        """(Pa, m3/s, s): the least pressure at an outlet while it is open, its flow then, and when
        first; None where it never is."""
        at = self.outlets.index(name)
        found: list[tuple[float, float, float]] = []
        for step in self.steps:
            if self.flows.wanted(step.state.counts)[at] > 0.0:
                found.append((step.rates.pressures[at], step.rates.drawn[at], step.start))
                found.append((step.rates_then.pressures[at], step.rates_then.drawn[at], step.end))
        return min(found, key=lambda one: (one[0], one[2])) if found else None


def joined(spans: Iterable[tuple[float, float, str]]) -> list[tuple[float, float, str]]:
    """Spans (start, end, kind) in their order, those that meet and are of one kind made one."""
    made: list[tuple[float, float, str]] = []
    for start, end, kind in sorted(spans):
        if end - start <= JOIN:
            continue
        if made and made[-1][2] == kind and start - made[-1][1] <= JOIN:
            made[-1] = made[-1][0], max(end, made[-1][1]), kind
        else:
            made.append((start, end, kind))
    return made
