"""A pipe that runs down by gravity, from what a reader gave: numbers only."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc.errors import InputError, InputErrors
from calc.gravity import Fall, Spot
from calc.pipe.line import Line, Section
from calc.sheets.parts.line_judge import HAIR, Need
from calc.sheets.parts.needs import levels
from calc.sheets.parts.pipe_choice import chosen_pipe

if TYPE_CHECKING:
    from calc.gravity import State
    from calc.page.form import Row, Values
    from calc.pipe.pipes import Pipe


@dataclass(frozen=True)
class Case:
    """A fall and what is asked of it.

    use: what for, one of ``needs.USES``; spring: least that the source gives, m3/s (None: not
    known); hottest_k: most the pipe gets, K (None: the water's temperature); kept: "none", "tank"
    or "valve"; counted: the way was given point by point, whose heights are ``datum_m`` more than
    above the source's water.
    """

    fall: Fall
    need: Need
    use: str
    spring: float | None
    hottest_k: float | None = None
    kept: str = "none"
    counted: bool = False
    datum_m: float = 0.0

    @property
    def drop_m(self) -> float:
        """From the source's water down to the outlet, m."""
        return -self.fall.end.height_m

    @property
    def flow(self) -> float:
        """Flow asked, m3/s."""
        return self.need.flow_m3s

    @cached_property
    def states(self) -> tuple[State, ...]:
        """Pressures along the pipe at the flow asked."""
        return self.fall.states(self.flow)

    @cached_property
    def left(self) -> float:
        """Pressure at the outlet at the flow asked, Pa."""
        return self.states[-1].after_pa

    @cached_property
    def comes(self) -> float:
        """The most the full pipe brings at the pressure that is needed, m3/s."""
        return self.fall.largest_flow(self.need.works_pa)

    @cached_property
    def open_flow(self) -> float:
        """What the full pipe would bring with its end wide open, m3/s."""
        return self.fall.largest_flow(0.0)

    @property
    def starved(self) -> bool:
        """Whether the source gives less than the pipe, wide open, would take from it."""
        return self.spring is not None and 0 < self.spring < self.open_flow * (1 - 1e-9)

    @cached_property
    def over(self) -> State | None:
        """Where the pipe lies highest above its pressure line while water runs; None: nowhere."""
        return _lacks(self.states)

    @cached_property
    def dry(self) -> State | None:
        """The same with no flow: above the water it comes from."""
        return _lacks(self.fall.standing)

    @property
    def static(self) -> float:
        """Standing pressure at the outlet, Pa."""
        return self.fall.standing[-1].after_pa

    @cached_property
    def section(self) -> Line:
        """The pipe as a ``Line`` of one section: what its rating, heat and speed are asked of."""
        fall = self.fall
        one = Section(fall.pipe, fall.length_m * (1 + fall.extra), fall.end.height_m)
        return Line((one,), 0.0, fall.temperature_k, hottest_k=self.hottest_k)

    # Changes ----------------------------------------------------------------------------------

    def with_pipe(self, pipe: Pipe) -> Case:
        """The same in another pipe."""
        return replace(self, fall=self.fall.with_pipe(pipe))

    def with_flow(self, flow: float) -> Case:
        """The same with another flow asked, m3/s."""
        return replace(self, need=replace(self.need, flow_m3s=flow))

    def with_breaks(self, count: int) -> Case:
        """The same with so many tanks on the way, or valves like those there are."""
        held = max((one.held_pa for one in self.fall.breaks), default=0.0)
        kept = "tank" if self.kept == "none" else self.kept
        return replace(self, fall=self.fall.broken(count, held), kept=kept)


def _lacks(states: tuple[State, ...]) -> State | None:
    """The state on the way, its ends apart, with the least pressure, where that is below zero."""
    least = min(states[1:-1], key=lambda one: one.before_pa, default=None)
    return least if least is not None and least.before_pa < -HAIR else None


def case_of(values: Values) -> Case:
    """The ``Case`` of a form's values.  Raises InputErrors by row."""
    spots, datum = _spots(values)
    fall = Fall(chosen_pipe(values), spots, values.water, values.extra)
    if values.broken != "none":
        held = values.held if values.broken == "valve" else 0.0
        if fall.end.height_m < 0:
            fall = fall.broken(values.breaks, held)
    need = Need(values.flow, *levels(values.use, values.wanted))
    return Case(
        fall, need, values.use, values.spring, values.hottest, values.broken,
        bool(values.profile), datum,
    )  # fmt: skip


def _spots(values: Values) -> tuple[tuple[Spot, ...], float]:
    """(points with heights above the source's water, height of that water as it was given)."""
    if not values.profile:
        return (Spot(0.0, 0.0), Spot(values.length, -values.drop)), 0.0
    rows = values.profile
    if len(rows) == 1:
        raise InputError(
            "A pipe has two ends. Add the outlet, or remove the row.", name="profile.0.at"
        )
    faults = [
        _backwards(at, one, other)
        for at, (one, other) in enumerate(zip(rows, rows[1:], strict=False), 1)
        if not other.at > one.at
    ]
    if faults:
        raise InputErrors(faults)
    first = rows[0]
    return tuple(Spot(row.at - first.at, row.height - first.height) for row in rows), first.height


def _backwards(at: int, one: Row, other: Row) -> InputError:
    where = "as far as" if other.at == one.at else "nearer than"
    return InputError(
        f"Point {at + 1} is {where} the one before. Give distances along the pipe from the "
        "source, each larger than the last.",
        name=f"profile.{at}.at",
    )
