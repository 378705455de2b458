"""A pump from its points: a smooth falling curve, speed control, efficiency and power.

``Pump`` is a centrifugal pump (affinity laws); ``DisplacementPump`` a small
diaphragm pump, whose flow hardly falls with pressure.  Both answer the same
questions.  Flows in m3/s, heads in m, powers in W, speed as a share of full.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from functools import cached_property
from typing import TYPE_CHECKING, Any

from calc.errors import InputError, require
from calc.pump.laws import electrical_power
from calc.pump.points import POINT_DENSITY, BestPoint, Point, check, efficiency, vertex
from calc.solve import Monotone, root
from calc.units import GRAVITY

if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Self

    End = tuple[float, float, float]  # flow, head, slope

FURTHEST_FIRST = 0.5  # the first flow given may be so much of the last; our choice


@dataclass(frozen=True)
class Pump:
    """A centrifugal pump at full speed by three or more points.

    Raises InputError, naming the row, for fewer than three points, two equal
    flows, or a head that does not fall as the flow grows.
    """

    name: str
    points: tuple[Point, ...]
    _cache: dict[str, Any] = field(default_factory=dict, compare=False, repr=False)

    def __post_init__(self) -> None:
        ordered = tuple(sorted(self.points, key=lambda point: point.flow))
        object.__setattr__(self, "points", ordered)
        check(ordered)
        self._check_start()

    def _check_start(self) -> None:
        if self.points[0].flow > FURTHEST_FIRST * self.points[-1].flow:
            raise InputError(
                "The table starts too far from zero flow to tell the shut-off head. "
                "Add a row at or near zero flow."
            )

    # The curve at full speed -----------------------------------------------

    @cached_property
    def _curve(self) -> Monotone:
        return Monotone(tuple(p.flow for p in self.points), tuple(p.head for p in self.points))

    @property
    def largest_flow(self) -> float:
        """Last flow of the table, m3/s."""
        return self.points[-1].flow

    @property
    def least_head(self) -> float:
        """Head at the last flow of the table, m."""
        return self.points[-1].head

    @cached_property
    def shut_off_head(self) -> float:
        """Head at zero flow and full speed, m (a parabola leads there from the first point)."""
        return self._full(0.0)[0]

    @cached_property
    def _ends(self) -> tuple[End, End, float]:
        """(flow, head, slope) at the first point and at the last, slopes below zero."""
        (a, b), (y, z) = self.points[:2], self.points[-2:]
        start, end = self._curve.slope(a.flow), self._curve.slope(z.flow)
        chord = (z.head - y.head) / (z.flow - y.flow)
        back = (b.head - a.head) / (b.flow - a.flow)
        return (a.flow, a.head, start), (z.flow, z.head, min(end, chord)), back

    def _full(self, flow: float) -> tuple[float, float]:
        """(head, slope) at full speed, carried on beyond both ends so that it always falls."""
        (first, top, start), (last, bottom, end), back = self._ends
        if first <= flow <= last:
            return self._curve.value_and_slope(flow)
        if flow > last:
            return bottom + end * (flow - last), end
        if flow >= 0:
            return self._below_first(flow, first, top, start)
        head, _ = self._full(0.0)
        return head + back * flow, back

    @staticmethod
    def _below_first(flow: float, first: float, top: float, start: float) -> tuple[float, float]:
        # H = H_0 - k Q**2 through the first point with its slope.
        return top - start * first / 2 * (1 - (flow / first) ** 2), start * flow / first

    # Speed -----------------------------------------------------------------

    def head_and_slope(self, flow: float, speed: float = 1.0) -> tuple[float, float]:
        """(H, dH/dQ) for a network solver: no checks, carried on beyond the table's ends.

        flow: m3/s, any; speed: share of full, > 0.  Returns (m, s/m2).
        The slope is never above zero.  Source: affinity laws.
        """
        head, slope = self._full(flow / speed)
        return speed * speed * head, speed * slope

    def most_flow(self, speed: float = 1.0) -> float:
        """The largest flow the table covers at this speed, m3/s."""
        return speed * self.largest_flow

    def head_at(self, flow: float, speed: float = 1.0) -> float:
        """Head at a flow and speed.

        H(Q, s) = s**2 * H_1(Q / s)

        flow: m3/s, 0 to ``most_flow(speed)``; speed: share of full, 0.05 to 1.5.
        Returns m.  Raises RangeError.  Source: affinity laws.
        """
        _check_speed(speed)
        _check_flow(flow, self.most_flow(speed))
        return self.head_and_slope(flow, speed)[0]

    def flow_at(self, head: float, speed: float = 1.0) -> float:
        """Flow at which the pump gives a head: ``head_at`` turned round.

        head: m, from the head at the end of the table to the shut-off head at
        this speed; speed: share of full.  Returns m3/s.  Raises RangeError.
        """
        _check_speed(speed)
        most = self.most_flow(speed)
        top, bottom = self.head_and_slope(0.0, speed)[0], self.head_and_slope(most, speed)[0]
        _check_head(head, bottom, top, "The pump's curve does not reach this head.")
        return _falling_root(lambda flow: self.head_and_slope(flow, speed)[0], head, most)

    def speed_for(self, flow: float, head: float) -> float:
        """Speed at which the pump gives this head at this flow.

        s: s**2 * H_1(Q / s) = H

        flow: m3/s, 0 to ``largest_flow``; head: m, > 0, up to the head at full speed.
        Returns the share of full speed.  Raises RangeError where full speed is
        not enough or the point lies past the end of the slowed curve.
        """
        top = self.head_at(flow)
        slowest = self._slowest(flow)
        bottom = self.head_and_slope(flow, slowest)[0]
        remedy = "At full speed the pump gives no more head than this at this flow."
        _check_head(head, bottom, top, remedy)
        if head >= top:
            return 1.0
        if head <= bottom:
            return slowest
        return root(lambda s: self.head_and_slope(flow, s)[0] - head, slowest, 1.0, 1e-10)

    def _slowest(self, flow: float) -> float:
        return max(0.05, flow / self.largest_flow)

    def slowed_to(self, flow: float, head: float) -> float:
        """Speed for a head that may be too low for the table: the curve is carried on past its end.

        s: s**2 * H_1(Q / s) = H, with H_1 as ``head_and_slope`` carries it on
        flow: m3/s, 0 to ``largest_flow``; head: m, above 0.  Returns the share of full speed, 1
        where full speed does not give the head.  Raises nothing.  Source: affinity laws.
        """
        if head >= self.head_and_slope(flow)[0]:
            return 1.0
        if flow == 0.0:
            return math.sqrt(head / self.shut_off_head)
        ends = flow / self.largest_flow  # the speed at which the slowed table ends at this flow
        if self.head_and_slope(flow, ends)[0] <= head:
            return root(lambda s: self.head_and_slope(flow, s)[0] - head, ends, 1.0, 1e-10)
        slowest = ends
        while self.head_and_slope(flow, slowest)[0] > head:
            slowest /= 2
        return root(lambda s: self.head_and_slope(flow, s)[0] - head, slowest, ends, 1e-10 * ends)

    # Efficiency and power --------------------------------------------------

    def _full_speed_flow(self, flow: float, speed: float) -> float:
        """The flow on the full-speed curve that is similar to ``flow`` at ``speed``."""
        return flow / speed

    def efficiency_at(self, flow: float, speed: float = 1.0) -> float | None:
        """The pump's own efficiency (shaft to water), a share; None where the table has none.

        Raises RangeError past the figures given.
        """
        return self._looked_up("efficiency", flow, speed)

    def shaft_power_at(self, flow: float, speed: float, density: float) -> float | None:
        """Power on the shaft, W, from the table's shaft power or efficiency; None without either.

        P_s = s**3 * P_1(Q / s) * rho / rho_0, or rho * g * Q * H / eta

        flow: m3/s; speed: share of full; density: kg/m3.  Raises RangeError.
        """
        given = self._looked_up("shaft_power", flow, speed)
        if given is not None:
            return given * self._power_scale(speed) * density / POINT_DENSITY
        efficiency = self.efficiency_at(flow, speed)
        if not efficiency:
            return None
        return density * GRAVITY * flow * self.head_at(flow, speed) / efficiency

    def power_at(self, flow: float, speed: float, density: float) -> float | None:
        """Power drawn by the motor or controller, W, from the table's own column; None without it.

        P_e = s**3 * P_1(Q / s) * rho / rho_0

        flow: m3/s; speed: share of full; density: kg/m3.  Raises RangeError.
        """
        given = self._looked_up("power", flow, speed)
        return None if given is None else given * self._power_scale(speed) * density / POINT_DENSITY

    def drawn_at(
        self, flow: float, speed: float, density: float, motor: float, controller: float
    ) -> float | None:
        """Power drawn, W: ``power_at``, else that of the shaft through motor and controller.

        flow: m3/s; speed: share of full; density: kg/m3; motor, controller: efficiencies, shares.
        Returns None where the table tells neither power nor efficiency.  Raises RangeError.
        """
        drawn = self.power_at(flow, speed, density)
        if drawn is not None:
            return drawn
        shaft = self.shaft_power_at(flow, speed, density)
        return None if shaft is None else electrical_power(shaft, motor, controller)

    @staticmethod
    def _power_scale(speed: float) -> float:
        return speed**3

    def npsh_required_at(self, flow: float, speed: float = 1.0) -> float | None:
        """NPSH required, m, from the table; None without a column.

        NPSH(Q, s) = max(NPSH_1(Q), s**2 * NPSH_1(Q / s))

        flow: m3/s; speed: share of full.  Raises RangeError past the figures given.
        Source: affinity laws.  The square understates what a slowed pump needs, so a pump is
        never taken to need less than at full speed at this flow (our choice, the careful side).
        """
        similar = self._looked_up("npsh", flow, speed)
        if similar is None or speed >= 1.0:
            return None if similar is None else similar * speed**2
        full = self._looked_up("npsh", flow, 1.0)
        return similar * speed**2 if full is None else max(similar * speed**2, full)

    def _column(self, name: str) -> tuple[Monotone | None, list[tuple[float, float]]]:
        """Interpolation of an optional column (None with fewer than two figures)."""
        if name not in self._cache:
            given = [
                (p.flow, getattr(p, name)) for p in self.points if getattr(p, name) is not None
            ]
            if name == "efficiency" and given and given[0][0] > 0:
                given.insert(0, (0.0, 0.0))  # no flow, no power in the water
            curve = None if len(given) < 2 else Monotone(*map(tuple, zip(*given, strict=True)))
            self._cache[name] = (curve, given)
        return self._cache[name]

    def _looked_up(self, name: str, flow: float, speed: float) -> float | None:
        curve, given = self._column(name)
        if curve is None:
            return None
        similar = self._full_speed_flow(flow, speed)
        remedy = f"The table gives no {name.replace('_', ' ')} there."
        require("flow", similar, given[0][0] - 1e-12, given[-1][0] + 1e-12, "flow", remedy)
        return curve(min(max(similar, given[0][0]), given[-1][0]))

    def beside(self, count: int) -> Self:
        """Equal pumps side by side, each behind its check valve, as one pump of the same kind.

        Q: H(Q) = H_1(Q / n), P(Q) = n * P_1(Q / n), NPSH(Q) = NPSH_1(Q / n)
        count: n, 1 or more.  Raises nothing.  Source: definition; flows add at one head.
        """
        if count == 1:
            return self
        points = tuple(
            replace(
                point,
                flow=count * point.flow,
                power=None if point.power is None else count * point.power,
                shaft_power=None if point.shaft_power is None else count * point.shaft_power,
            )
            for point in self.points
        )
        return type(self)(self.name, points)

    @cached_property
    def best(self) -> BestPoint | None:
        """The best-efficiency point at full speed; None without efficiency or power.

        A parabola through the highest figure and its neighbours.
        """
        every = ((point.flow, efficiency(point)) for point in self.points)
        shares = [(flow, share) for flow, share in every if share is not None]
        if len(shares) < 3:
            return None
        top = max(range(len(shares)), key=lambda index: shares[index][1])
        if top in (0, len(shares) - 1):
            return BestPoint(*shares[top], True)
        return vertex(*shares[top - 1 : top + 2])


@dataclass(frozen=True)
class DisplacementPump(Pump):
    """A small diaphragm pump: flow falls a little with pressure; a switch or bypass ends it.

    The table's highest head is taken as where the pressure switch or bypass acts, as the sheets
    say; below its flow the head stays there.  Without a switch the pump itself knows no limit.
    Slowing takes the same flow off at every head: Q(H, s) = Q_1(H) - (1 - s) * Q_free, the slip
    depending on the head only.
    """

    def _check_start(self) -> None:
        if self.points[0].head <= 0:
            raise InputError(
                "The table needs a head above zero: what the pump gives under pressure."
            )

    @staticmethod
    def _below_first(_flow: float, _first: float, top: float, _start: float) -> tuple[float, float]:
        return top, 0.0

    def _shift(self, speed: float) -> float:
        return (1 - speed) * self.largest_flow

    def head_and_slope(self, flow: float, speed: float = 1.0) -> tuple[float, float]:
        """(H, dH/dQ) for a network solver; see ``Pump.head_and_slope``.

        H(Q, s) = H_1(Q + (1 - s) * Q_free)
        """
        return self._full(flow + self._shift(speed))

    def most_flow(self, speed: float = 1.0) -> float:
        """The largest flow the table covers at this speed, m3/s."""
        return speed * self.largest_flow

    def slowed_to(self, flow: float, head: float) -> float:
        """Speed for a head, m; see ``Pump.slowed_to``.

        Below the head at the end of its table the pump moves its flow at any head: s = Q / Q_free.
        """
        if head >= self.head_and_slope(flow)[0]:
            return 1.0
        ends = flow / self.largest_flow
        if head <= self.least_head:
            return ends
        return root(lambda s: self.head_and_slope(flow, s)[0] - head, ends, 1.0, 1e-10)

    def _full_speed_flow(self, flow: float, speed: float) -> float:
        return flow + self._shift(speed)

    @staticmethod
    def _power_scale(speed: float) -> float:
        # At the same head the torque is the same: power goes with speed.
        return speed

    def npsh_required_at(self, flow: float, speed: float = 1.0) -> float | None:
        """NPSH required, m, at the same head at full speed; None without a column.

        Raises RangeError past the figures given.  Source: our choice; pulses are not counted.
        """
        return self._looked_up("npsh", flow, speed)


def _check_speed(speed: float) -> None:
    require("speed", speed, 0.05, 1.5, "percent", "Give the speed as a share of full speed.")


def _check_flow(flow: float, most: float) -> None:
    # A root found at the very end of the curve is on it, give or take its last bits.
    if not 0.0 <= flow <= most * (1 + 1e-9):
        remedy = "The pump's table ends there: add a row with a larger flow, or ask for less."
        require("flow", flow, 0.0, most, "flow", remedy)


def _check_head(head: float, bottom: float, top: float, remedy: str) -> None:
    slack = 1e-9 * top  # as above
    if not bottom - slack <= head <= top + slack:
        require("head", head, bottom, top, "head", remedy)


def _falling_root(function: Callable[[float], float], wanted: float, most: float) -> float:
    """x in 0..most where a falling function is ``wanted``; the ends belong to it."""
    if function(0.0) <= wanted:
        return 0.0
    if function(most) >= wanted:
        return most
    return root(lambda x: function(x) - wanted, 0.0, most, 1e-12 * most)
