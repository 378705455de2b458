"""Who suffers when a tap opens, and which part holds an outlet back: found by solving again.

``bottleneck`` makes each likely part on the way to the outlet lossless in turn and solves the
whole supply each time; the part whose ease helps the most is the bottleneck.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, cast

from calc.errors import InputError
from calc.network.findings import broken, suction
from calc.network.parts import Device, PumpSet, Reducer, Run
from calc.network.solve import solve
from calc.network.state import SEEPING, STILL, OutletState
from calc.network.static import highest_pressures
from calc.pipe import pipes

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from calc.network.parts import Link, Network
    from calc.network.state import Solution
    from calc.pump.curve import Pump

EASY = 1e-6  # share of its loss a device keeps when it is taken to be lossless
WIDE = 20.0  # times its bore that a pipe has when it is taken to be lossless
STRONG = 100.0  # times its flow that a pump gives when it is taken to be without limit
HELPS = 1.0  # Pa of gain that is more than rounding
LIKELY = 0.5  # of the largest loss on the way, below which a part is no bottleneck; our choice
EQUAL = 1 + 1e-6  # flows closer than this are one flow: the solver's last bits differ by machine
LEVEL = 1e-6  # m; heads closer than this are one head


@dataclass(frozen=True)
class Sufferer:
    """An outlet before and after others open. lost_pa, lost_m3s: what it loses, Pa and m3/s."""

    name: str
    before: OutletState
    after: OutletState

    @property
    def lost_pa(self) -> float:
        return self.before.pressure_pa - self.after.pressure_pa

    @property
    def lost_m3s(self) -> float:
        return self.before.flow_m3s - self.after.flow_m3s


@dataclass(frozen=True)
class Eased:
    """What easing one part would give. loss_m: what it loses now, m; gain_pa: at the outlet."""

    row: str
    kind: str
    loss_m: float
    gain_pa: float


@dataclass(frozen=True)
class Bottleneck:
    """What holds an outlet back.

    row, kind: the part and what it is: "pipe", "suction", "device", "reducer", "pump" or
    "height"; gain_pa: what easing it alone gives the outlet, Pa; enough: whether that cures it;
    height_pa: what is still short with every part on the way lossless, Pa; ranked: the likely
    parts on the way, the one that helps most first.
    """

    row: str
    kind: str
    gain_pa: float
    enough: bool
    height_pa: float
    ranked: tuple[Eased, ...]


def sufferers(network: Network, opening: Iterable[str]) -> tuple[Sufferer, ...]:
    """Who loses what when more outlets open, the one that loses the largest share first.

    network: ``Network`` as it stands before; opening: names of outlets to open.  Returns a tuple
    of ``Sufferer``, of the outlets open before.  Raises InputError for an unknown name and as
    ``solve`` does.
    """
    unknown = [name for name in opening if name not in network.outlets_by_name]
    if unknown:
        raise InputError(
            f"“{unknown[0]}” is not an outlet of this supply. Choose one that is.", name=unknown[0]
        )
    already = [outlet.name for outlet in network.outlets if outlet.open]
    before = solve(network)
    after = solve(network.with_open({*already, *opening}), before)
    found = [Sufferer(name, before.outlet(name), after.outlet(name)) for name in already]

    def share(one: Sufferer) -> float:
        return one.lost_m3s / one.before.flow_m3s if one.before.flow_m3s > STILL else 0.0

    return tuple(sorted(found, key=lambda one: (-share(one), -one.lost_pa)))


def way_to(solution: Solution, place: str) -> tuple[str, ...]:
    """Names of the links along which most of the water comes to a place, source first.

    At each place the link that brings the most is taken; of equal ones, and where nothing flows,
    the one from the highest head that may pass water this way; of equal ones again, the first.
    solution: ``Solution``; place: name.  Returns a tuple of names, () at a level.
    Raises nothing.  Source: definition.
    """
    network, seen = solution.network, {place}
    found: list[str] = []
    incoming: dict[str, list[tuple[float, str, str]]] = {}
    for link in network.links:
        flow = solution.flows[link.name]
        ends = (link.end, link.start) if flow >= -SEEPING else (link.start, link.end)
        brought = abs(flow) if abs(flow) > SEEPING else 0.0
        incoming.setdefault(ends[0], []).append((brought, ends[1], link.name))
        if abs(flow) <= SEEPING and not (link.check or isinstance(link, PumpSet)):
            incoming.setdefault(ends[1], []).append((0.0, ends[0], link.name))
    while True:
        choice = [one for one in incoming.get(place, ()) if one[1] not in seen]
        if not choice:
            return tuple(reversed(found))
        most = max(brought for brought, _, _ in choice)
        choice = [one for one in choice if one[0] * EQUAL >= most]
        highest = max(solution.heads[start] for _, start, _ in choice)
        _, place, name = next(one for one in choice if solution.heads[one[1]] >= highest - LEVEL)
        found.append(name)
        seen.add(place)


def largest_loss(solution: Solution, way: Sequence[str]) -> str:
    """Name of the link on a way that loses the most head, pumps apart; "" where nothing is lost.

    solution: ``Solution``; way: names of links.  Raises KeyError for an unknown name.
    """
    lossy = [one for one in way if not isinstance(solution.network.link(one), PumpSet)]
    worst = max(lossy, key=solution.lost, default="")
    return worst if worst and solution.lost(worst) > 0 else ""


def kind_on(network: Network, way: Sequence[str], name: str) -> str:
    """What a link on a way is to the outlet at its end.

    network: ``Network``; way: as ``way_to``; name: of a link on it.  Returns "pump", "suction"
    (anything before the first pump), "pipe", "device" or "reducer".  Raises KeyError for an
    unknown name.  Source: definition.
    """
    link = network.link(name)
    if isinstance(link, PumpSet):
        return "pump"
    first = next((i for i, one in enumerate(way) if isinstance(network.link(one), PumpSet)), -1)
    if way.index(name) < first:
        return "suction"
    return {Run: "pipe", Device: "device", Reducer: "reducer"}[type(link)]


@dataclass(frozen=True)
class _Strong:
    """A pump of the same heads at a hundred times the flow."""

    pump: Pump

    def head_and_slope(self, flow: float, speed: float = 1.0) -> tuple[float, float]:
        head, slope = self.pump.head_and_slope(flow / STRONG, speed)
        return head, slope / STRONG

    def most_flow(self, speed: float = 1.0) -> float:
        return STRONG * self.pump.most_flow(speed)


def eased(link: Link) -> Link:
    """The same link without its loss or limit: a wide pipe, a clean device, a strong pump.

    link: ``Run``, ``Device``, ``Reducer`` or ``PumpSet``.  Returns one of the same kind and name;
    a pump keeps its heads and its set pressure, a break-pressure tank its open water.  Raises
    nothing.  Source: definition.
    """
    if isinstance(link, Run):
        bore = min(1.0, WIDE * link.pipe.inside_m)
        return replace(link, pipe=pipes.own_pipe(bore, link.pipe.roughness_m), k=0.0)
    if isinstance(link, Device):
        return replace(link, loss_m=EASY * link.loss_m)
    if isinstance(link, Reducer):  # a tank open to the air stays one: its float valve alone
        held = 0.0 if link.vented else 1e8
        return replace(link, set_pa=held, loss_m=EASY * link.loss_m)
    return replace(link, pump=cast("Pump", _Strong(link.pump)))  # a solver asks no more of a pump


def bottleneck(solution: Solution, outlet: str) -> Bottleneck:
    """Which part on the way to an outlet holds it back the most.

    solution: ``Solution``; outlet: name of an open outlet.  Returns ``Bottleneck``.
    A pump that lacks suction head names the suction line whatever the rest gives; where even
    with every part lossless the outlet is short, the height is named.
    Raises InputError for an unknown or shut outlet.
    """
    state = open_state(solution, outlet)
    network, place = solution.network, solution.network.outlets_by_name[outlet].node
    way = way_to(solution, place)
    likely = [name for name in way if _likely(solution, way, name)]
    ranked = [_ease(solution, way, name, place) for name in likely]
    ranked.sort(key=lambda one: -one.gain_pa)
    height = max(0.0, state.wanted_pa - _lossless(solution, way, place))
    starved = {one.row for one in (*suction(solution), *broken(solution)) if one.level == "stop"}
    starved &= _on_way(network, way)
    suctions = [one for one in ranked if one.kind == "suction"]
    if starved and suctions:
        worst = max(suctions, key=lambda one: one.loss_m)
        return Bottleneck(worst.row, "suction", worst.gain_pa, False, height, tuple(ranked))
    best = ranked[0] if ranked else Eased(place, "height", 0.0, 0.0)
    if height > HELPS:
        row = next((name for name in way if kind_on(network, way, name) == "pump"), place)
        return Bottleneck(row, "height", best.gain_pa, False, height, tuple(ranked))
    enough = best.gain_pa >= state.short_pa
    return Bottleneck(best.row, best.kind, best.gain_pa, enough, height, tuple(ranked))


def _likely(solution: Solution, way: Sequence[str], name: str) -> bool:
    """Whether a part may be the one: the pump past what its control holds, or a large loss.

    A part before the pump counts only while the pump is.
    """
    link = solution.network.link(name)
    if isinstance(link, PumpSet):
        return solution.flows[name] > SEEPING and not solution.pump(name).held
    most = solution.lost(largest_loss(solution, way) or name)
    starved = any(one.row in _on_way(solution.network, way) for one in suction(solution))
    if kind_on(solution.network, way, name) == "suction" and starved:
        return True
    return solution.lost(name) >= LIKELY * most


def _lossless(solution: Solution, way: Sequence[str], place: str) -> float:
    """Pressure at a place with every part on the way lossless, Pa: that of still water."""
    eased_all = solution.network
    for name in way:
        link = eased_all.link(name)
        if isinstance(link, Reducer):
            eased_all = eased_all.with_link(eased(link))
    return highest_pressures(eased_all)[place]


def open_state(solution: Solution, outlet: str) -> OutletState:
    """``OutletState`` of an open outlet.  Raises InputError where it is unknown or shut."""
    if outlet not in solution.network.outlets_by_name:
        raise InputError(
            f"“{outlet}” is not an outlet of this supply. Choose one that is.", name=outlet
        )
    state = solution.outlet(outlet)
    if not state.open:
        raise InputError(f"“{outlet}” is shut. Open it to see what it lacks.", name=outlet)
    return state


def _ease(solution: Solution, way: Sequence[str], name: str, place: str) -> Eased:
    network, loss = solution.network, solution.lost(name)
    beyond = _beyond(network, network.link(name), solution.flows[name] < -SEEPING)
    raised = {
        one: head + max(loss, 0.0) if one in beyond else head
        for one, head in solution.heads.items()
    }
    start = replace(solution, heads=raised)  # near the answer: what it lost is there again
    after = solve(network.with_link(eased(network.link(name))), start, rough=True)
    gain = after.pressure(place) - solution.pressure(place)
    return Eased(name, kind_on(network, way, name), loss, gain)


def _beyond(network: Network, link: Link, backwards: bool) -> set[str]:
    """Places reached through a link and not otherwise; none where it is part of a loop.

    backwards: whether water runs from its end to its start.
    """
    near, far = (link.end, link.start) if backwards else (link.start, link.end)
    found, left = {far}, [far]
    while left:
        here = left.pop()
        for other in network.links:
            if other is link or here not in (other.start, other.end):
                continue
            there = other.end if here == other.start else other.start
            if there not in found:
                found.add(there)
                left.append(there)
    return set() if near in found else found


def _on_way(network: Network, way: Sequence[str]) -> set[str]:
    """Names of the links on a way and of their ends."""
    links = [network.link(name) for name in way]
    return set(way) | {end for link in links for end in (link.start, link.end)}
