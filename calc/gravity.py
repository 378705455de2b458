"""Water that runs down by its own weight: a spring or tank above, a long pipe, no pump.

Heights are above the water of the source, so most are below 0.  On the way the line may be broken:
by a tank open to the air (a break-pressure tank), or by a valve that holds a pressure.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import water
from calc.errors import InputError
from calc.pipe import friction

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.pipe.pipes import Pipe

EVEN = 1e-9  # m, by which heights may differ and still be level
HALVED = 60  # times, until nothing is left between two numbers


@dataclass(frozen=True)
class Spot:
    """A point of the pipe: distance along it from the source and height above its water, m."""

    distance_m: float
    height_m: float


@dataclass(frozen=True)
class Break(Spot):
    """A spot where pressure is taken away. held_pa: Pa left after it; 0: a tank open to the air."""

    held_pa: float = 0.0


@dataclass(frozen=True)
class State:
    """A spot while water runs or stands: the pressures before and after it, Pa, gauge."""

    spot: Spot
    before_pa: float
    after_pa: float

    @property
    def pressure_pa(self) -> float:
        """The higher of the two, which the pipe there must carry, Pa."""
        return max(self.before_pa, self.after_pa)


@dataclass(frozen=True)
class Fall(water.AtTemperature):
    """A pipe that falls from open water through ``spots``, the source's water first.

    spots: two or more, their distances rising from 0; extra: share of length added for bends;
    temperature_k: of the water, K, 273.15 to 373.15; breaks: on the way, in order.
    Raises InputError, named "spots.k" for a spot, where distances do not rise.
    """

    pipe: Pipe
    spots: tuple[Spot, ...]
    temperature_k: float
    extra: float = 0.0
    breaks: tuple[Break, ...] = ()

    def __post_init__(self) -> None:
        if len(self.spots) < 2:
            raise InputError("A pipe has two ends.", name="spots")
        for at, (one, other) in enumerate(zip(self.spots, self.spots[1:], strict=False), 1):
            if not other.distance_m > one.distance_m:
                raise InputError("Distances rise from the source on.", name=f"spots.{at}")

    @property
    def end(self) -> Spot:
        """The outlet."""
        return self.spots[-1]

    @property
    def length_m(self) -> float:
        """Length of the pipe, m."""
        return self.end.distance_m - self.spots[0].distance_m

    @cached_property
    def way(self) -> tuple[Spot, ...]:
        """Spots and breaks by distance, a break after the spot at its place."""
        return tuple(sorted((*self.spots, *self.breaks), key=lambda one: one.distance_m))

    # Along the pipe ---------------------------------------------------------------------------

    def slope(self, flow_m3s: float) -> float:
        """Head lost on each metre at a flow (m3/s), bends included, -."""
        pipe, long = self.pipe, 1.0 + self.extra
        return friction.pipe_loss(flow_m3s, pipe.inside_m, long, pipe.roughness_m, self.viscosity)

    def states(self, flow_m3s: float) -> tuple[State, ...]:
        """Pressure at every spot and break of a full pipe at a flow (m3/s), Pa.

        head(s) = head(s_0) - J (s - s_0); after a break: the held pressure, or less where less
        comes.  Below 0 the pipe would have to suck; at a tank open to the air it cannot.
        Source: hydrostatics; ``friction.pipe_loss``.
        """
        return self._states(self.slope(flow_m3s))

    def _states(self, slope: float) -> tuple[State, ...]:
        head, at, found = self.spots[0].height_m, self.spots[0].distance_m, []
        for spot in self.way:
            head -= slope * (spot.distance_m - at)
            at = spot.distance_m
            before = after = self.weight * (head - spot.height_m)
            if isinstance(spot, Break):
                after = min(before, spot.held_pa)
                head = spot.height_m + after / self.weight
            found.append(State(spot, before, after))
        return tuple(found)

    def left(self, flow_m3s: float) -> float:
        """Gauge pressure at the outlet at a flow (m3/s), Pa; below 0 the water does not arrive."""
        return self.states(flow_m3s)[-1].after_pa

    def least(self, flow_m3s: float) -> State:
        """Where the pressure on the way is lowest at a flow (m3/s), the outlet apart."""
        return min(self.states(flow_m3s)[1:-1] or self.states(flow_m3s)[:1], key=_before)

    @property
    def standing(self) -> tuple[State, ...]:
        """Pressure everywhere while nothing runs, Pa."""
        return self.states(0.0)

    @property
    def most(self) -> State:
        """Where the standing pressure is highest."""
        return max(self.standing, key=lambda one: one.pressure_pa)

    # The flow that comes ----------------------------------------------------------------------

    def largest_flow(self, needed_pa: float = 0.0, sucks: bool = False) -> float:
        """Largest flow that leaves ``needed_pa`` (Pa) at the outlet, m3/s; 0 where none does.

        sucks: the pipe may lie above its pressure line and suck, as a siphon does while no air
        comes in; else no spot has less than the air's pressure, as with an air valve at each.
        The least of the pressures that are asked for falls as the head lost on each metre rises:
        the highest slope that leaves them all is found by halving, and the flow from it.
        Source: ``states``; ``friction.flow_for_loss``.
        """

        def enough(slope: float) -> bool:
            states = self._states(slope)
            if states[-1].after_pa < needed_pa:
                return False
            inner = (one for one in states if not sucks or isinstance(one.spot, Break))
            return all(one.before_pa >= -EVEN * self.weight for one in inner)

        if not enough(0.0):
            return 0.0
        drop = -min(spot.height_m for spot in self.spots) + EVEN
        pairs = zip(self.way, self.way[1:], strict=False)
        shortest = min(b.distance_m - a.distance_m for a, b in pairs if b.distance_m > a.distance_m)
        low, high = 0.0, 2 * drop / shortest
        for _ in range(HALVED):
            middle = (low + high) / 2
            low, high = (middle, high) if enough(middle) else (low, middle)
        pipe, long = self.pipe, 1.0 + self.extra
        return friction.flow_for_loss(low, pipe.inside_m, long, pipe.roughness_m, self.viscosity)

    def limit(self, needed_pa: float = 0.0) -> Spot:
        """The spot that holds the flow down: a crest, a break or the outlet."""
        flow = self.largest_flow(needed_pa)
        states = self.states(flow)
        spare = [one.before_pa for one in states[1:-1]] + [states[-1].after_pa - needed_pa]
        return states[1 + min(range(len(spare)), key=spare.__getitem__)].spot

    def full_from(self, flow_m3s: float, end_pa: float = 0.0) -> float:
        """Distance from the source beyond which a pipe that gets too little water runs full, m.

        flow_m3s: that the source gives, less than the pipe would carry; end_pa: Pa at the outlet.
        Before it water runs along the bottom with air above.  The pressure line is followed up
        from the outlet until it meets the pipe.  0 where all of it is full.  Source: hydrostatics.
        """
        slope, head = self.slope(flow_m3s), self.end.height_m + end_pa / self.weight
        at = self.end
        for spot in reversed(self.way[:-1]):
            before = head + slope * (at.distance_m - spot.distance_m)
            if before < spot.height_m - EVEN:
                spare = head - at.height_m
                lacks = spot.height_m - before
                share = spare / (spare + lacks) if spare > 0 else 0.0
                return at.distance_m - share * (at.distance_m - spot.distance_m)
            if isinstance(spot, Break):
                return spot.distance_m
            head, at = before, spot
        return 0.0

    # What would change it ---------------------------------------------------------------------

    def with_pipe(self, pipe: Pipe) -> Fall:
        """The same line in another pipe."""
        return replace(self, pipe=pipe)

    def broken(self, count: int, held_pa: float = 0.0) -> Fall:
        """The same line with so many breaks that part its drop evenly.

        Each stands where the pipe falls below its height for the last time, so that nothing after
        it lies higher.  held_pa: Pa kept after each (0: tanks).  Source: our choice.
        """
        top, low = self.spots[0].height_m, self.end.height_m
        levels = [top - (top - low) * at / (count + 1) for at in range(1, count + 1)]
        breaks = tuple(Break(self.last_at(level), level, held_pa) for level in levels)
        return replace(self, breaks=breaks)

    def last_at(self, height_m: float) -> float:
        """Distance at which the pipe passes a height (m) for the last time, m.

        Raises InputError where it never does.
        """
        pairs = list(zip(self.spots, self.spots[1:], strict=False))
        for one, other in reversed(pairs):
            low, high = sorted((one.height_m, other.height_m))
            if low - EVEN <= height_m <= high + EVEN and high > low:
                share = (height_m - one.height_m) / (other.height_m - one.height_m)
                return one.distance_m + share * (other.distance_m - one.distance_m)
        raise InputError("The pipe never passes that height.", name="height_m")

    def lowered(self, flow_m3s: float) -> tuple[Spot, ...]:
        """The spots with every crest above the pressure line of a flow (m3/s) laid on it.

        Source: our choice of what is least to dig.
        """
        below = {id(one.spot): one.before_pa for one in self.states(flow_m3s)}
        return tuple(
            spot
            if below[id(spot)] >= 0 or at in (0, len(self.spots) - 1)
            else Spot(spot.distance_m, spot.height_m + below[id(spot)] / self.weight)
            for at, spot in enumerate(self.spots)
        )


def _before(state: State) -> float:
    return state.before_pa


def crests(spots: Sequence[Spot]) -> tuple[Spot, ...]:
    """Spots higher than both neighbours: where air gathers.  Level ones: the first of them."""
    return _turns(spots, 1.0)


def dips(spots: Sequence[Spot]) -> tuple[Spot, ...]:
    """Spots lower than both neighbours: where sand settles and water stays behind."""
    return _turns(spots, -1.0)


def _turns(spots: Sequence[Spot], sign: float) -> tuple[Spot, ...]:
    found, rising = [], False
    top = spots[0]
    for one, other in zip(spots, spots[1:], strict=False):
        change = sign * (other.height_m - one.height_m)
        if change > EVEN:
            rising, top = True, other
        elif change < -EVEN:
            if rising:
                found.append(top)
            rising = False
    return tuple(found)
