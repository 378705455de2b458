"""A pump from its points: a smooth falling curve, speed control, efficiency and power.

``Pump`` is a centrifugal pump (affinity laws); ``DisplacementPump`` a small
diaphragm pump, whose flow hardly falls with pressure.  Both answer the same
questions.  Flows in m3/s, heads in m, powers in W, speed as a share of full.
"""

from dataclasses import dataclass, field
from functools import cached_property

from calc.errors import InputError, require
from calc.solve import Monotone, root
from calc.units import GRAVITY

POINT_DENSITY = 998.2  # kg/m3, clean cold water near 20 degC, in which makers test
FURTHEST_FIRST = 0.5  # the first flow given may be so much of the last (our rule)


@dataclass(frozen=True)
class Point:
    """One row: flow (m3/s), head (m), and where given efficiency (share), powers (W), NPSH (m).

    ``power`` is what the motor or controller draws; ``shaft_power`` what the
    pump's shaft takes; ``row`` is the row of the table, to name in an error.
    """

    flow: float
    head: float
    efficiency: float | None = None
    power: float | None = None
    shaft_power: float | None = None
    npsh: float | None = None
    row: int = 0


@dataclass(frozen=True)
class BestPoint:
    """Where the efficiency is highest.

    ``at_end``: the table stops there, the true best may lie beyond.
    """

    flow: float
    efficiency: float
    at_end: bool


@dataclass(frozen=True)
class Pump:
    """A centrifugal pump at full speed by three or more points.

    Raises InputError, naming the row, for fewer than three points, two equal
    flows, or a head that does not fall as the flow grows.
    """

    name: str
    points: tuple
    _cache: dict = field(default_factory=dict, compare=False, repr=False)

    def __post_init__(self):
        ordered = tuple(sorted(self.points, key=lambda point: point.flow))
        object.__setattr__(self, "points", ordered)
        _check(ordered)
        self._check_start()

    def _check_start(self):
        if self.points[0].flow > FURTHEST_FIRST * self.points[-1].flow:
            raise InputError(
                "The table starts too far from zero flow to tell the shut-off head. "
                "Add a row at or near zero flow."
            )

    # The curve at full speed -----------------------------------------------

    @cached_property
    def _curve(self):
        return Monotone(tuple(p.flow for p in self.points), tuple(p.head for p in self.points))

    @property
    def largest_flow(self):
        """Last flow of the table, m3/s."""
        return self.points[-1].flow

    @property
    def least_head(self):
        """Head at the last flow of the table, m."""
        return self.points[-1].head

    @cached_property
    def shut_off_head(self):
        """Head at zero flow and full speed, m (a parabola leads there from the first point)."""
        return self._full(0.0)[0]

    @cached_property
    def _ends(self):
        """(flow, head, slope) at the first point and at the last, slopes below zero."""
        (a, b), (y, z) = self.points[:2], self.points[-2:]
        start, end = self._curve.slope(a.flow), self._curve.slope(z.flow)
        chord = (z.head - y.head) / (z.flow - y.flow)
        back = (b.head - a.head) / (b.flow - a.flow)
        return (a.flow, a.head, start), (z.flow, z.head, min(end, chord)), back

    def _full(self, flow):
        """(head, slope) at full speed, carried on beyond both ends so that it always falls."""
        (first, top, start), (last, bottom, end), back = self._ends
        if first <= flow <= last:
            return self._curve(flow), self._curve.slope(flow)
        if flow > last:
            return bottom + end * (flow - last), end
        if flow >= 0:
            return self._below_first(flow, first, top, start)
        head, _ = self._full(0.0)
        return head + back * flow, back

    @staticmethod
    def _below_first(flow, first, top, start):
        # H = H_0 - k Q**2 through the first point with its slope.
        return top - start * first / 2 * (1 - (flow / first) ** 2), start * flow / first

    # Speed -----------------------------------------------------------------

    def head_and_slope(self, flow, speed=1.0):
        """(H, dH/dQ) for a network solver: no checks, carried on beyond the table's ends.

        flow: m3/s, any; speed: share of full, > 0.  Returns (m, s/m2).
        The slope is never above zero.  Source: affinity laws.
        """
        head, slope = self._full(flow / speed)
        return speed * speed * head, speed * slope

    def most_flow(self, speed=1.0):
        """The largest flow the table covers at this speed, m3/s."""
        return speed * self.largest_flow

    def head_at(self, flow, speed=1.0):
        """Head at a flow and speed.

        H(Q, s) = s**2 * H_1(Q / s)

        flow: m3/s, 0 to ``most_flow(speed)``; speed: share of full, 0.05 to 1.5.
        Returns m.  Raises RangeError.  Source: affinity laws.
        """
        _check_speed(speed)
        _check_flow(flow, self.most_flow(speed))
        return self.head_and_slope(flow, speed)[0]

    def flow_at(self, head, speed=1.0):
        """Flow at which the pump gives a head: ``head_at`` turned round.

        head: m, from the head at the end of the table to the shut-off head at
        this speed; speed: share of full.  Returns m3/s.  Raises RangeError.
        """
        _check_speed(speed)
        most = self.most_flow(speed)
        top, bottom = self.head_and_slope(0.0, speed)[0], self.head_and_slope(most, speed)[0]
        _check_head(head, bottom, top, "The pump's curve does not reach this head.")
        return _falling_root(lambda flow: self.head_and_slope(flow, speed)[0], head, most)

    def speed_for(self, flow, head):
        """Speed at which the pump gives this head at this flow.

        s: s**2 * H_1(Q / s) = H

        flow: m3/s, 0 to ``largest_flow``; head: m, > 0, up to the head at full speed.
        Returns the share of full speed.  Raises RangeError where full speed is
        not enough or the point lies past the end of the slowed curve.
        """
        top = self.head_at(flow)
        slowest = self._slowest(flow)
        bottom = self.head_and_slope(flow, slowest)[0]
        remedy = "At full speed this is the most the pump gives at this flow."
        _check_head(head, bottom, top, remedy)
        if head >= top:
            return 1.0
        if head <= bottom:
            return slowest
        return root(lambda s: self.head_and_slope(flow, s)[0] - head, slowest, 1.0, 1e-10)

    def _slowest(self, flow):
        return max(0.05, flow / self.largest_flow)

    def controlled_head(self, flow, set_head):
        """Head with speed control: held at the set head up to full speed, then off the curve.

        H = min(H_set, H_1(Q))

        flow: m3/s, 0 to ``largest_flow``; set_head: m, > 0.  Returns m.
        Raises RangeError.
        """
        require("set_head", set_head, 0.0, 1e4, "head", "Give a set pressure above zero.")
        return min(set_head, self.head_at(flow))

    # Efficiency and power --------------------------------------------------

    def _full_speed_flow(self, flow, speed):
        """The flow on the full-speed curve that is similar to ``flow`` at ``speed``."""
        return flow / speed

    def efficiency_at(self, flow, speed=1.0):
        """The pump's own efficiency (shaft to water), a share; None where the table has none.

        Raises RangeError past the figures given.
        """
        return self._looked_up("efficiency", flow, speed)

    def shaft_power_at(self, flow, speed, density):
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

    def power_at(self, flow, speed, density):
        """Power drawn by the motor or controller, W, from the table's own column; None without it.

        P_e = s**3 * P_1(Q / s) * rho / rho_0

        flow: m3/s; speed: share of full; density: kg/m3.  Raises RangeError.
        """
        given = self._looked_up("power", flow, speed)
        return None if given is None else given * self._power_scale(speed) * density / POINT_DENSITY

    @staticmethod
    def _power_scale(speed):
        return speed**3

    def npsh_required_at(self, flow, speed=1.0):
        """NPSH required, m, from the table; None without a column.

        NPSH(Q, s) = s**2 * NPSH_1(Q / s)

        Raises RangeError past the figures given.  Source: affinity laws, a fair
        guide near full speed (common practice).
        """
        given = self._looked_up("npsh", flow, speed)
        return None if given is None else given * self._npsh_scale(speed)

    @staticmethod
    def _npsh_scale(speed):
        return speed**2

    def _column(self, name):
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

    def _looked_up(self, name, flow, speed):
        curve, given = self._column(name)
        if curve is None:
            return None
        similar = self._full_speed_flow(flow, speed)
        remedy = f"The table gives no {name.replace('_', ' ')} there."
        require("flow", similar, given[0][0] - 1e-12, given[-1][0] + 1e-12, "flow", remedy)
        return curve(min(max(similar, given[0][0]), given[-1][0]))

    @cached_property
    def best(self):
        """The best-efficiency point at full speed; None without efficiency or power.

        A parabola through the highest figure and its neighbours.
        """
        shares = [(point.flow, _efficiency(point)) for point in self.points]
        shares = [(flow, share) for flow, share in shares if share is not None]
        if len(shares) < 3:
            return None
        top = max(range(len(shares)), key=lambda index: shares[index][1])
        if top in (0, len(shares) - 1):
            return BestPoint(*shares[top], True)
        return _vertex(*shares[top - 1 : top + 2])


@dataclass(frozen=True)
class DisplacementPump(Pump):
    """A small diaphragm pump: flow falls a little with pressure; a switch or bypass ends it.

    The table's highest head is where the pressure switch or bypass acts; below
    its flow the head stands there.  Slowing takes the same flow off at every
    head: Q(H, s) = Q_1(H) - (1 - s) * Q_free, the slip depending on the head only.
    """

    def _check_start(self):
        if self.points[0].head <= 0:
            raise InputError(
                "The table needs a head above zero: what the pump gives under pressure."
            )

    @staticmethod
    def _below_first(_flow, _first, top, _start):
        return top, 0.0

    def _shift(self, speed):
        return (1 - speed) * self.largest_flow

    def head_and_slope(self, flow, speed=1.0):
        """(H, dH/dQ) for a network solver; see ``Pump.head_and_slope``.

        H(Q, s) = H_1(Q + (1 - s) * Q_free)
        """
        return self._full(flow + self._shift(speed))

    def most_flow(self, speed=1.0):
        """The largest flow the table covers at this speed, m3/s."""
        return speed * self.largest_flow

    def _full_speed_flow(self, flow, speed):
        return flow + self._shift(speed)

    @staticmethod
    def _power_scale(speed):
        # At the same head the torque is the same: power goes with speed.
        return speed

    @staticmethod
    def _npsh_scale(speed):
        return 1.0


def _efficiency(point):
    if point.efficiency is not None:
        return point.efficiency
    power = point.shaft_power or point.power
    return POINT_DENSITY * GRAVITY * point.flow * point.head / power if power else None


def _vertex(left, middle, right):
    """Top of the parabola through three (flow, share) points."""
    (x0, y0), (x1, y1), (x2, y2) = left, middle, right
    first, second = (y1 - y0) / (x1 - x0), (y2 - y1) / (x2 - x1)
    bend = (second - first) / (x2 - x0)
    if bend >= 0:
        return BestPoint(x1, y1, False)
    flow = (x0 + x1) / 2 - first / (2 * bend)
    flow = min(max(flow, x0), x2)
    share = y0 + first * (flow - x0) + bend * (flow - x0) * (flow - x1)
    return BestPoint(flow, share, False)


def _check_speed(speed):
    require("speed", speed, 0.05, 1.5, "percent", "Give the speed as a share of full speed.")


def _check_flow(flow, most):
    # A root found at the very end of the curve is on it, give or take its last bits.
    if not 0.0 <= flow <= most * (1 + 1e-9):
        remedy = "The pump's table ends there: add a row with a larger flow, or ask for less."
        require("flow", flow, 0.0, most, "flow", remedy)


def _check_head(head, bottom, top, remedy):
    slack = 1e-9 * top  # as above
    if not bottom - slack <= head <= top + slack:
        require("head", head, bottom, top, "head", remedy)


def _falling_root(function, wanted, most):
    """x in 0..most where a falling function is ``wanted``; the ends belong to it."""
    if function(0.0) <= wanted:
        return 0.0
    if function(most) >= wanted:
        return most
    return root(lambda x: function(x) - wanted, 0.0, most, 1e-12 * most)


def _check(points):
    if len(points) < 3:
        raise InputError(
            f"The table has {len(points)} points. A curve needs three or more: add rows."
        )
    for point in points:
        for value in (point.flow, point.head):
            if not 0 <= value < 1e6:
                raise InputError(f"{_row(point, points)} has a flow or head below zero. Check it.")
    for before, after in zip(points, points[1:], strict=False):
        if after.flow == before.flow:
            raise InputError(
                f"{_row(before, points)} and {_row(after, points).lower()} have the same flow. "
                "Leave one of them out."
            )
        if after.head >= before.head:
            how = "more head" if after.head > before.head else "the same head"
            raise InputError(
                f"{_row(after, points)} gives {how} at a larger flow than "
                f"{_row(before, points).lower()}. The curve must fall all the way, or one head "
                "stands for two flows: check the figures, or leave one of the two rows out."
            )


def _row(point, points):
    return f"Row {point.row or points.index(point) + 1}"
