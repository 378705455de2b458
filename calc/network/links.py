"""What a link passes at a difference of head between its ends: flow and its slope.

Each law answers ``flow(head_m) -> (Q, dQ/dh)`` in m3/s and m2/s, h being the start's head less
the end's, and ``passes(head_m, Q)``, whether it would pass so much.  Flow never falls as h rises:
that is what makes a network have one answer.  Laws are made anew for each solution and remember
their last flow, only to find the next one sooner.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.network.parts import Device, PumpSet, Reducer, Run
from calc.pipe import friction
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.network.parts import Link, Network

SEEP = 1e-12  # m3/s per m, past a shut check valve: under 2 L a year at 50 m; lets the standing
# pressure behind a shut valve follow from the supply in front; our choice
DROOP = 0.1  # m per m3/s, how far a held head gives way within a round of the solver, so that the
# flow at it is a number; carried back in the next round, none is left in the end; our choice
TILT = 1e-3  # m per m3/s, fall of a pump's curve where it is flat: 0.1 mm at 0.1 L/s; our choice
FLAT = 1e-12  # share of the top head below which a curve counts as flat; rounding
STRAIGHT = 1e-3  # share of a device's rated flow below which its loss is taken in step with flow
CLOSE = 1e-7  # relative step from which the last one is exact to 1e-13
_PER = 2.0 / friction.LN10  # lg to ln, twice
LIKELY = 6.5  # 1/sqrt(f) to begin with: a smooth pipe at Re 30,000
MOST_STEPS = 60


@lru_cache(maxsize=1024)  # the pipes of a supply come again in every solution of it
def _constants(
    bore: float, length: float, roughness: float, viscosity: float, k: float
) -> tuple[float, ...]:
    """What ``RunLaw`` needs of a run, in the order in which it is taken apart there."""
    area = math.pi / 4 * bore**2
    per_re = viscosity / bore * area
    turn = friction.LAMINAR_LIMIT * per_re
    full = friction.TURBULENT_FROM * per_re  # where ``loss_and_slope`` leaves its straight bridge
    bends = k / (2 * GRAVITY * area**2)
    low, high = (
        friction.loss_and_slope(flow, bore, length, roughness, viscosity)[0]
        for flow in (turn, full)
    )
    begin = 0.5 * area  # m3/s at 0.5 m/s
    start_slope = begin / friction.loss_and_slope(begin, bore, length, roughness, viscosity, k)[0]
    return (
        area, roughness / bore / friction.ROUGH, friction.SMOOTH * viscosity / bore,
        length / (2 * GRAVITY * bore), bends, low / turn, (high - low) / (full - turn), turn,
        low + bends * turn**2, full, high + bends * full**2, start_slope,
    )  # fmt: skip


class _Law:
    """A law that knows its flow can say whether it would pass so much."""

    __slots__ = ()

    def flow(self, head: float) -> tuple[float, float]:
        raise NotImplementedError

    def passes(self, head: float, flow: float) -> bool:
        return self.flow(head)[0] >= flow


class RunLaw(_Law):
    """Inverse of ``friction.loss_and_slope`` with fittings: flow from head, either way."""

    __slots__ = (
        "_area", "_bends", "_check", "_full", "_full_head", "_last", "_linear", "_rise",
        "_rough", "_start_slope", "_straight", "_thin", "_turn", "_turn_head",
    )  # fmt: skip

    most_gain = start_gain = 0.0

    def __init__(self, run: Run, viscosity: float) -> None:
        self._check = run.check
        (
            self._area, self._rough, self._thin, self._straight, self._bends, self._linear,
            self._rise, self._turn, self._turn_head, self._full, self._full_head, self._start_slope,
        ) = _constants(
            run.pipe.inside_m, run.length_m, run.pipe.roughness_m, viscosity, run.k
        )  # fmt: skip
        self._last = LIKELY

    def flow(self, head: float) -> tuple[float, float]:
        if head < 0.0:
            if self._check:
                return SEEP * head, SEEP
            flow, slope = self._positive(-head)
            return -flow, slope
        return self._positive(head)

    def _positive(self, head: float) -> tuple[float, float]:
        if head <= self._turn_head:
            return _straight_and_square(head, self._linear, self._bends)
        if head >= self._full_head:
            return self._turbulent(head)
        # h - h_turn = rise (q - turn) + bends (q^2 - turn^2), in x = q - turn
        linear = self._rise + 2 * self._bends * self._turn
        extra, slope = _straight_and_square(head - self._turn_head, linear, self._bends)
        return self._turn + extra, slope

    def _turbulent(self, head: float) -> tuple[float, float]:
        """Colebrook's equation gives the flow at once from what friction alone uses up.

        Q = -2 A u lg(eps/(3.7 D) + 2.51 nu/(D u)), h = L/(2 g D) u^2 + b Q^2
        u = v sqrt(f); with bends, b > 0, Newton's steps on u, from the last flow's share: two or
        three suffice anywhere.
        """
        area, rough, thin, straight, bends = (
            self._area,
            self._rough,
            self._thin,
            self._straight,
            self._bends,
        )
        u = math.sqrt(head / (straight + bends * (area * self._last) ** 2))
        for _ in range(MOST_STEPS):
            inside = rough + thin / u
            x = -_PER * math.log(inside)
            flow = area * u * x
            slope = area * (x + _PER * thin / (u * inside))
            rise = 2.0 * (straight * u + bends * flow * slope)
            step = (head - straight * u * u - bends * flow * flow) / rise
            if abs(step) <= CLOSE * u:
                break
            u += step
        self._last = x
        return flow + slope * step, slope / rise

    def start_slope(self) -> float:
        """Flow per metre at 0.5 m/s, to begin with, m2/s."""
        return self._start_slope


def _straight_and_square(head: float, linear: float, square: float) -> tuple[float, float]:
    """Flow and dQ/dh of h = linear Q + square Q^2, for h of 0 or more."""
    root = math.sqrt(linear * linear + 4.0 * square * head)
    return 2.0 * head / (linear + root), 1.0 / root


class DeviceLaw(_Law):
    """h = h_r (Q / Q_r)^2, a straight line below a thousandth of the rated flow."""

    __slots__ = ("_check", "_flow", "_least", "_loss")

    most_gain = start_gain = 0.0

    def __init__(self, device: Device | Reducer) -> None:
        self._flow, self._loss, self._check = device.flow_m3s, device.loss_m, device.check
        self._least = STRAIGHT**2 * self._loss

    def flow(self, head: float) -> tuple[float, float]:
        if head < 0.0 and self._check:
            return SEEP * head, SEEP
        size = abs(head)
        if size < self._least:
            slope = STRAIGHT * self._flow / self._least
            return slope * head, slope
        flow = self._flow * math.sqrt(size / self._loss)
        return math.copysign(flow, head), flow / (2.0 * size)

    def start_slope(self) -> float:
        return self._flow / self._loss


class PumpLaw(_Law):
    """A pump's curve turned round; it never passes water backwards.

    A flat start (a diaphragm pump at its switch) is tilted, so that each head has one flow; from
    its end on the curve is the pump's own.
    """

    __slots__ = (
        "_asked", "_end", "_flat", "_gives", "_last", "_last_head", "_pump", "_speed", "_top",
    )  # fmt: skip

    def __init__(self, part: PumpSet) -> None:
        self._pump, self._speed = part.pump, part.speed
        self._end = part.pump.most_flow(part.speed)
        self._flat = 0.0
        self._flat = self._flat_until()
        self._top = self._curve(0.0)[0]
        self._last_head = self._curve(self._end)[0]
        self._last = self._end / 2
        self._asked = self._gives = 0.0

    def _curve(self, flow: float) -> tuple[float, float]:
        head, slope = self._pump.head_and_slope(flow, self._speed)
        if flow < self._flat:
            return head + TILT * (self._flat - flow), -TILT
        return head, min(slope, -TILT)

    def _flat_until(self) -> float:
        """Flow up to which the curve keeps its top head, m3/s."""
        top, slope = self._pump.head_and_slope(0.0, self._speed)
        if slope < -TILT:
            return 0.0
        low, high = 0.0, self._end
        for _ in range(MOST_STEPS):
            middle = (low + high) / 2
            level = self._pump.head_and_slope(middle, self._speed)[0] >= top * (1 - FLAT)
            low, high = (middle, high) if level else (low, middle)
        return low

    def flow(self, head: float) -> tuple[float, float]:
        gain = -head
        if gain >= self._top:
            return SEEP * (self._top - gain), SEEP
        if gain <= self._last_head:
            slope = self._curve(self._end * (1 + 1e-9))[1]
            return self._end + (gain - self._last_head) / slope, -1.0 / slope
        flow = self._found(gain)
        return flow, -1.0 / self._curve(flow)[1]

    def _found(self, gain: float) -> float:
        """Newton's steps, halving the bracket where one would leave it."""
        low, high, flow = 0.0, self._end, min(max(self._last, 0.0), self._end)
        for _ in range(MOST_STEPS):
            head, slope = self._curve(flow)
            miss = head - gain
            if miss > 0:
                low = flow
            else:
                high = flow
            new = flow - miss / slope
            if abs(new - flow) <= 1e-14 * self._end:
                flow = min(max(new, 0.0), self._end)
                break
            flow = new if low < new < high else (low + high) / 2
        self._last = flow
        return flow

    def passes(self, head: float, flow: float) -> bool:
        """Whether at this head it would pass so much: ``flow`` without looking for the flow."""
        if 0.0 < flow <= self._end:
            if flow != self._asked:  # of one flow at many heads
                self._asked, self._gives = flow, self._curve(flow)[0]
            return self._gives >= -head
        return super().passes(head, flow)

    def start_slope(self) -> float:
        return self._end / self._top

    @property
    def most_gain(self) -> float:
        """The most head it can add, m."""
        return self._top

    @property
    def start_gain(self) -> float:
        """Head it adds, to begin with, m."""
        return self._curve(self._end / 2)[0]


Law = RunLaw | DeviceLaw | PumpLaw


def law_of(link: Link, network: Network) -> Law:
    """The law of a link, wide open: without what its set pressure holds back.

    link: ``Run``, ``Device``, ``Reducer`` or ``PumpSet``.  Returns its law.
    Raises TypeError for anything else.  Source: the classes above.
    """
    if isinstance(link, Run):
        return RunLaw(link, network.viscosity)
    if isinstance(link, (Device, Reducer)):
        return DeviceLaw(link)
    if isinstance(link, PumpSet):
        return PumpLaw(link)
    raise TypeError(f"{link!r} is not a part of a supply.")


def set_head(link: Link, network: Network) -> float | None:
    """Head that a pump's control or a reducer holds at its end, m; None where none is set.

    H_set = z_end + p_set / (rho g)
    link: any link; network: ``Network``.  Returns m.  Raises KeyError for an unknown end.
    Source: hydrostatics.
    """
    if not isinstance(link, (PumpSet, Reducer)) or link.set_pa is None:
        return None
    return network.heights[link.end] + link.set_pa / network.weight
