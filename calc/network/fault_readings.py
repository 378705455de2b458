"""What is read at a supply to find a fault, and what each reading would be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice, storage, water
from calc.errors import InputError
from calc.network import solve as network_solve
from calc.network.faults import LEAK
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.network.faults import Watched
    from calc.network.outlets import Outlet
    from calc.network.state import Solution

Opened = tuple[tuple[str, int], ...]  # (outlet, how many of it), sorted
STATIC: Opened = ()
LITTLE_AIR = (
    1e-3  # m3, the tank that is counted on where none is known: air in the pipes, our choice
)
MOST_STARTS = 3600.0  # an hour: a start every second; our choice
HOUR = 3600.0

PRESSURE, BUCKET, SUCTION, WATTS, VOLTS, AMPS, LEVEL, STARTS, STANDBY, CLOSED = (
    "pressure", "bucket", "suction", "watts", "volts", "amps", "level", "starts", "standby",
    "closed",
)  # fmt: skip
KINDS = (PRESSURE, BUCKET, SUCTION, WATTS, VOLTS, AMPS, LEVEL, STARTS, STANDBY, CLOSED)


@dataclass(frozen=True)
class Reading:
    """A reading in SI with its standard error.

    kind: "pressure" (Pa gauge, at a point; with nothing open: static), "bucket" (m3/s out of an
    outlet), "suction" (Pa gauge at the pump's inlet, negative below the air outside), "watts",
    "volts", "amps" (of a display), "level" (m from the pump down to the water), "starts" (an hour),
    "standby" (Pa lost in span_s with the pump switched off and all shut), "closed" (the same with
    the valve behind pump and tank shut too).
    at: point or outlet; opened: the outlets open meanwhile.
    """

    kind: str
    value: float
    error: float
    at: str = ""
    opened: Opened = STATIC
    span_s: float = 600.0

    @property
    def asked(self) -> tuple[str, str, Opened]:
        """What was read, whatever it said."""
        return self.kind, self.at, self.opened


def _opened(outlet: Outlet, is_open: bool, count: int) -> Outlet:
    """An outlet open or shut; itself where it stands so: many are asked for, few change."""
    if (outlet.open, outlet.count) == (is_open, count):
        return outlet
    return replace(outlet, open=is_open, count=count)


class Expected:
    """What readings of one supply, sound or not, would be; each set of outlets is solved once.

    near: of a like supply, to begin each solution from.
    """

    def __init__(self, supply: Watched, near: Expected | None = None) -> None:
        self.supply, self.near = supply, near
        self._solved: dict[Opened, Solution] = {}

    def solution(self, opened: Opened) -> Solution:
        """The supply solved with these outlets open, and every leak.  Raises InputError."""
        if opened not in self._solved:
            counts = dict(opened)
            network = self.supply.network
            dry = self.supply.dry
            outlets = tuple(
                _opened(
                    one,
                    one.node not in dry
                    and (one.name.startswith(LEAK) or counts.get(one.name, 0) > 0),
                    max(1, counts.get(one.name, 1)),
                )
                for one in network.outlets
            )
            begin = self.near.solution(opened) if self.near else None
            network = replace(network, outlets=outlets)
            checked = bool(self._solved)
            self._solved[opened] = network_solve.solve(network, begin, True, checked)
        return self._solved[opened]

    def of(self, reading: Reading) -> float | None:
        """What this reading would be, in its unit; None where this supply cannot tell.

        reading: ``Reading``, of which the value is not looked at.
        Raises InputError where the supply cannot be solved.  Source: see each kind.
        """
        return _KINDS[reading.kind](self, reading)

    # Kinds -------------------------------------------------------------------------------------

    def _pressure(self, reading: Reading) -> float:
        if reading.at in self.supply.dry:
            return 0.0
        return max(0.0, self.solution(reading.opened).pressure(reading.at))

    def _bucket(self, reading: Reading) -> float | None:
        count = dict(reading.opened).get(reading.at, 0)
        if not count:
            return None
        if self.supply.network.outlets_by_name[reading.at].node in self.supply.dry:
            return 0.0
        return self.solution(reading.opened).draws[reading.at] / count

    def _suction(self, reading: Reading) -> float | None:
        if not self.supply.inlet:
            return None
        return self.solution(reading.opened).pressure(self.supply.inlet)

    def _watts(self, reading: Reading) -> float | None:
        solved = self.solution(reading.opened)
        total = 0.0
        for part in self.supply.pumps:
            state = solved.pump(part.name)
            if not state.speed:
                continue
            # beyond its table a pump is taken to draw what it draws at its end
            flow = min(state.flow_m3s, part.pump.most_flow(state.speed))
            try:
                drawn = part.pump.drawn_at(
                    flow,
                    state.speed,
                    solved.network.weight / GRAVITY,
                    practice.MOTOR_EFFICIENCY,
                    practice.CONTROL_EFFICIENCY,
                )
            except InputError:
                return None
            if drawn is None:
                return None
            total += drawn
        return total

    def _volts(self, _reading: Reading) -> float | None:
        volts = self.supply.volts
        return None if volts is None else volts * self.supply.volts_share

    def _amps(self, reading: Reading) -> float | None:
        watts, volts = self._watts(reading), self._volts(reading)
        return None if watts is None or not volts else watts / volts

    def _level(self, _reading: Reading) -> float | None:
        heights = self.supply.network.heights
        return heights[self.supply.start] - heights[self.supply.water]

    def _starts(self, reading: Reading) -> float | None:
        """Starts an hour: the draw over what the tank gives between stop and start."""
        gives = self.drawdown()
        if gives is None:
            return None
        drawn = sum(self.solution(reading.opened).draws.values()) + self.supply.back_m3s
        most = self._pump_gives()
        if drawn >= self.supply.least_m3s or drawn >= most:
            return 0.0  # the pump runs on
        return min(MOST_STARTS, HOUR * storage.starts_rate(gives, most, drawn))

    def _standby(self, reading: Reading) -> float:
        leaks = self._leaking() + self.supply.back_m3s
        return self._lost(leaks, reading.span_s)

    def _closed(self, reading: Reading) -> float:
        return self._lost(self.supply.back_m3s, reading.span_s)

    # What they need ----------------------------------------------------------------------------

    def _at_rest(self) -> float:
        """Pressure at the pump from which it rests, Pa."""
        return self._pressure(Reading(PRESSURE, 0.0, 1.0, self.supply.start))

    def _leaking(self) -> float:
        solved = self.solution(STATIC)
        return sum(flow for name, flow in solved.draws.items() if name.startswith(LEAK))

    def _air(self) -> float:
        return water.air_pressure(self.supply.network.altitude_m)

    def _lost(self, flow: float, span_s: float) -> float:
        """Pa lost as so much runs out of the tank: V (p_0 + p_a) / (p + p_a) is its air (Boyle).

        Below the pre-charge no water is left and the pressure is gone.
        """
        if flow <= 0.0:
            return 0.0
        supply, outside, high = self.supply, self._air(), self._at_rest()
        tank = supply.tank_m3 or LITTLE_AIR
        held = tank * (supply.charge_pa + outside) * supply.tank_air
        volume = held / (high + outside) + flow * span_s
        left = held / volume - outside
        return high - left if left > supply.charge_pa * supply.tank_air else high

    def drawdown(self) -> float | None:
        """What the tank gives between the pump's stop and its start, m3; None if not known."""
        supply, high = self.supply, self.supply.cut_out or self.supply.set_pa
        if supply.tank_m3 is None or high is None:
            return None
        low = practice.RESTART_SHARE * high if supply.cut_in is None else supply.cut_in
        held = supply.tank_m3 * (supply.charge_pa + self._air()) * supply.tank_air
        return held / (low + self._air()) - held / (high + self._air())

    def _pump_gives(self) -> float:
        """Flow of the pumps at their set pressure and full speed, m3/s; nothing if they cannot."""
        supply, total = self.supply, 0.0
        heights = supply.network.heights
        lift = heights[supply.start] - heights[supply.water]
        head = (supply.set_pa or 0.0) / supply.network.weight + lift
        for part in supply.pumps:
            low = part.pump.head_and_slope(part.pump.most_flow(part.speed), part.speed)[0]
            if head < part.pump.head_and_slope(0.0, part.speed)[0]:
                total += part.pump.flow_at(max(head, low), part.speed)
        return max(total, 0.0)


_KINDS = {
    PRESSURE: Expected._pressure,
    BUCKET: Expected._bucket,
    SUCTION: Expected._suction,
    WATTS: Expected._watts,
    VOLTS: Expected._volts,
    AMPS: Expected._amps,
    LEVEL: Expected._level,
    STARTS: Expected._starts,
    STANDBY: Expected._standby,
    CLOSED: Expected._closed,
}
