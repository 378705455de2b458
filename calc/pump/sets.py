"""Pumps together: in series, in parallel; a pump against a system; tolerance bands."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError, require
from calc.solve import root

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.pump.curve import Pump
    from calc.pump.laws import Grade


@dataclass(frozen=True)
class Series:
    """Pumps one after the other: one flow, heads added."""

    pumps: tuple[Pump, ...]

    @property
    def largest_flow(self) -> float:
        """Largest flow every pump's table covers, m3/s."""
        return min(pump.largest_flow for pump in self.pumps)

    @property
    def shut_off_head(self) -> float:
        """Head at zero flow, m."""
        return sum(pump.shut_off_head for pump in self.pumps)

    def head_and_slope(self, flow: float) -> tuple[float, float]:
        """(H, dH/dQ) for a network solver: the sums at the same flow."""
        both = [pump.head_and_slope(flow) for pump in self.pumps]
        return sum(head for head, _ in both), sum(slope for _, slope in both)

    def head_at(self, flow: float) -> float:
        """Head at a flow, m: H = H_a(Q) + H_b(Q).  Raises RangeError past a table's end."""
        return sum(pump.head_at(flow) for pump in self.pumps)


@dataclass(frozen=True)
class Parallel:
    """Pumps side by side, each behind its check valve: one head, flows added."""

    pumps: tuple[Pump, ...]

    @property
    def shut_off_head(self) -> float:
        """Head at zero flow, m: the strongest pump's."""
        return max(pump.shut_off_head for pump in self.pumps)

    @property
    def least_head(self) -> float:
        """Lowest head every pump's table covers, m."""
        return max(pump.least_head for pump in self.pumps)

    @property
    def largest_flow(self) -> float:
        """Flow at ``least_head``, m3/s."""
        return self.flow_at(self.least_head)

    def flow_at(self, head: float) -> float:
        """Flow at a head: Q = Q_a(H) + Q_b(H); a pump too weak for the head stands still.

        head: m, ``least_head`` to ``shut_off_head``.  Returns m3/s.  Raises RangeError.
        """
        require(
            "head", head, self.least_head, self.shut_off_head, "head", "The pumps do not reach it."
        )
        return sum(pump.flow_at(head) for pump in self.pumps if head < pump.shut_off_head)

    def head_at(self, flow: float) -> float:
        """Head at a flow, m: ``flow_at`` turned round.  Raises RangeError past a table's end."""
        first = self.pumps[0]
        if all(pump == first for pump in self.pumps):
            return first.head_at(flow / len(self.pumps))
        low, high = self.least_head, self.shut_off_head
        most = self.flow_at(low)
        require("flow", flow, 0.0, most, "flow", "The pumps' tables end there.")
        if flow == 0.0:
            return high
        return root(lambda head: self.flow_at(head) - flow, low, high, 1e-11 * high)

    def head_and_slope(self, flow: float) -> tuple[float, float]:
        """(H, dH/dQ): slopes of the running pumps combined as 1 / sum(1 / slope).

        flow: m3/s, within the tables.  Raises RangeError.
        """
        head = self.head_at(flow)
        running = [pump for pump in self.pumps if head < pump.shut_off_head] or [self.pumps[0]]
        slopes = [
            pump.head_and_slope(pump.flow_at(min(head, pump.shut_off_head)))[1] for pump in running
        ]
        if any(slope == 0 for slope in slopes):
            return head, 0.0
        return head, 1 / sum(1 / slope for slope in slopes)


@dataclass(frozen=True)
class Duty:
    """Where pump and system meet.

    ``past_end``: at the table's last flow the pump still has head over.
    """

    flow: float
    head: float
    past_end: bool


def duty(pump: Pump, system_head: Callable[[float], float], speed: float = 1.0) -> Duty:
    """The flow at which a pump's head equals the head the system takes.

    Q: H(Q, s) = H_sys(Q)

    pump: a ``Pump``; system_head: rising function flow (m3/s) -> head (m);
    speed: share of full.  Returns ``Duty``.  Raises InputError where the pump
    cannot lift the water at all.  Source: definition of the duty point.
    """

    def spare(flow: float) -> float:
        return pump.head_and_slope(flow, speed)[0] - system_head(flow)

    most = pump.most_flow(speed)
    if spare(0.0) <= 0:
        raise InputError(
            "The pump's shut-off head is not above the head the system needs at no flow."
        )
    if spare(most) >= 0:
        return Duty(most, pump.head_at(most, speed), True)
    flow = root(spare, 0.0, most, 1e-10 * most)
    return Duty(flow, system_head(flow), False)


def weakest_head(pump: Pump, flow: float, grade: Grade) -> float:
    """Lowest head at a flow that an acceptance grade lets pass.

    H_low = min(H(Q) * (1 - t_H), H(Q / (1 - t_Q)))

    pump: a ``Pump``; flow: m3/s, 0 to ``largest_flow``; grade: a ``Grade``.
    Returns m.  Raises RangeError.  Source: ISO 9906: a tested curve passes when
    it touches either arm of the cross around the promised point.
    """
    by_head = pump.head_at(flow) * (1 - grade.head)
    return max(0.0, min(by_head, pump.head_and_slope(flow / (1 - grade.flow))[0]))


def strongest_head(pump: Pump, flow: float, grade: Grade) -> float:
    """Highest head at a flow that an acceptance grade lets pass.

    H_high = max(H(Q) * (1 + t_H), H(Q / (1 + t_Q)))

    Arguments, raises and source as for ``weakest_head``.  Returns m.
    """
    by_head = pump.head_at(flow) * (1 + grade.head)
    return max(by_head, pump.head_and_slope(flow / (1 + grade.flow))[0])
