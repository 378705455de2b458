"""What a solved supply says: heads, flows, what each outlet gets, what each pump does."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.network.parts import Network

if TYPE_CHECKING:
    from calc.network.parts import PumpSet

STILL = 1e-12  # m3/s, less than a drop in half a day: no flow
SEEPING = 1e-9  # m3/s, a drop a minute: what may pass a shut valve in the equations, no flow to see


@dataclass(frozen=True)
class OutletState:
    """What an outlet gets. Pressures Pa gauge, flows m3/s; all zero flow where it is shut.

    short_pa: wanted less given where it is open and short, else 0.
    """

    name: str
    open: bool
    pressure_pa: float
    flow_m3s: float
    wanted_pa: float
    wanted_m3s: float
    short_pa: float


@dataclass(frozen=True)
class PumpState:
    """What a pump does. head_m: between its ends; free_m: what it would give at its full speed.

    held: its control holds the set pressure; past_end: it runs beyond its table.
    speed: share of full speed; None where it stands still or the table cannot tell.
    """

    name: str
    flow_m3s: float
    head_m: float
    free_m: float
    held: bool
    past_end: bool
    speed: float | None


@dataclass(frozen=True)
class Solution:
    """A solved network: heads (m) by place and level, flows (m3/s) by link, draws by outlet.

    imbalance: largest share of the whole flow (of 0.06 L/min where less flows) that is lost or
    won at any place; steps: Newton's.
    """

    network: Network
    heads: dict[str, float]
    flows: dict[str, float]
    draws: dict[str, float]
    steps: int
    imbalance: float

    def pressure(self, place: str) -> float:
        """Gauge pressure at a place, Pa."""
        return self.network.weight * (self.heads[place] - self.network.heights[place])

    def loss(self, name: str) -> float:
        """Head lost along a link from start to end, m; negative for a gain."""
        link = self.network.link(name)
        return self.heads[link.start] - self.heads[link.end]

    def lost(self, name: str) -> float:
        """Head lost along a link the way its water runs, m; negative for a gain.

        A link's row may be drawn towards the water it comes from: then its flow is negative, and
        so is ``loss``.
        """
        return self.loss(name) if self.flows[name] >= -SEEPING else -self.loss(name)

    @cached_property
    def supplied(self) -> dict[str, float]:
        """Net flow out of each level, m3/s; negative where water runs in."""
        found = {level.name: 0.0 for level in self.network.levels}
        for link in self.network.links:
            if link.start in found:
                found[link.start] += self.flows[link.name]
            if link.end in found:
                found[link.end] -= self.flows[link.name]
        return found

    def outlet(self, name: str) -> OutletState:
        """``OutletState`` of an outlet."""
        one = self.network.outlets_by_name[name]
        pressure, flow = self.pressure(one.node), self.draws[name]
        slack = 1e-6 * max(one.content_pa, 1.0)  # a held flow begins just at its pressure
        short = one.content_pa - pressure if one.open else 0.0
        wanted = (one.content_pa, one.full_m3s)
        return OutletState(name, one.open, pressure, flow, *wanted, short if short > slack else 0.0)

    @property
    def short(self) -> tuple[OutletState, ...]:
        """Open outlets that get less pressure than wanted, worst first."""
        states = [self.outlet(outlet.name) for outlet in self.network.outlets if outlet.open]
        return tuple(sorted((s for s in states if s.short_pa > 0), key=lambda s: -s.short_pa))

    def pump(self, name: str) -> PumpState:
        """``PumpState`` of a pump."""
        part = self.network.pump(name)
        flow, gain = self.flows[name], -self.loss(name)
        free = part.pump.head_and_slope(flow, part.speed)[0]
        held = part.set_pa is not None and free > gain + 1e-3
        past = flow > part.pump.most_flow(part.speed) * (1 + 1e-6)
        return PumpState(name, flow, gain, free, held, past, _speed(part, flow, gain, held))


def _speed(part: PumpSet, flow: float, gain: float, held: bool) -> float | None:
    if flow <= STILL:
        return None
    if not held:
        return part.speed
    try:
        return part.pump.speed_for(flow, gain)
    except InputError:
        return None
