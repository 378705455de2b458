"""Solve a supply: the heads at which as much water leaves every place as comes to it.

With what the pressure-holding parts do given, each flow is a rising function of a difference of
heads and each draw one of a head: the imbalances are the slopes of a convex function (Maxwell's
co-content), and Newton's steps with a search along each step come down to its one lowest point
from anywhere.  Around that, every pressure-holding part (a pump's speed control, a reducer) is
"held", "open" or "shut", and what it draws is brought into line with what it gives.  A held head
gives way a little with flow inside a round; the next round begins from what was given, so that
in the end the pressure held is the set pressure itself.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.network import check as network_check
from calc.network import matrix as network_matrix
from calc.network.links import DROOP, SEEP, PumpLaw, law_of, set_head
from calc.network.point import Point
from calc.network.state import STILL, Solution

if TYPE_CHECKING:
    from calc.network.links import Law
    from calc.network.parts import Link, Network

SETTLED = 1e-9  # m, largest last change of a head; it is carried into heads and flows
LOOSELY = 1e-4  # m, the same while pressure-holding parts are still brought into line
ROUGHEST = 0.1  # m, the same before they are first brought into line; our choice, by fewest steps
BALANCED = 1e-7  # share of the flow, before the last change is carried into the flows
FALL = 0.3  # share of its first slope to which the search along a step brings the slope
SEARCHES, INTERPOLATED = 44, 4
MOST_STEPS = 200
MOST_ROUNDS = 100
SINGLY = 12  # rounds after which pressure-holding parts change one at a time
BACK = 1e-10  # m3/s, what may seep back through a held part before it is taken to be shut
NO_FLOW = 1e-11  # m3/s, an imbalance that is rounding where nothing flows
TRICKLE = 1e-6  # m3/s (0.06 L/min), least whole flow an imbalance is measured against
AGREED = 1e-11  # share by which draw and delivery of a pressure-holding part may differ
ROUGHLY = 1e-4  # the same where effects are only compared; our choice
STANDPIPE = 1e-12  # m2/s, keeps the first, straight-line solution solvable


def solve(
    network: Network, start: Solution | None = None, rough: bool = False, checked: bool = False
) -> Solution:
    """Solve a network.

    sum of flows in - sum of flows out - draw = 0 at every place
    network: ``Network``; start: a ``Solution`` of a like network to begin from, or None; rough: a
    pressure-holding part may be a ten-thousandth off, for telling large effects from small ones;
    checked: its parts were checked before, with other outlets open.
    Returns ``Solution``; its flows balance to 1e-9 of the whole flow.
    Raises InputError, naming the row, for parts that cannot be solved.
    Source: continuity and energy; convexity: M. Collins et al., Management Science 24 (1978)
    747-760 (content and co-content models), from memory.
    """
    if not checked:
        network_check.require_sound(network)
    system = _System(network)
    if start is None:
        heads = system.straight_line()
        system.suppose()
    else:
        heads = system.heads_from(start.heads)
        system.begin(heads, start)
    steps, settled = 0, SETTLED if not system.holders else ROUGHEST
    for turn in range(MOST_ROUNDS):
        heads, point, change, used = _lowest(system, heads, settled)
        steps += used
        if system.adjust(heads, change, turn >= SINGLY, ROUGHLY if rough else AGREED):
            settled = min(settled, LOOSELY)
            continue
        if settled == SETTLED:
            return _solution(system, heads, point, change, steps)
        settled = SETTLED
    raise unsolved(system.holders[0].name if system.holders else system.names[0])


def unsolved(name: str) -> InputError:
    """The ``InputError`` to raise where no answer is found; ``name``: part or place it is near."""
    text = f"This supply could not be worked out near “{name}”. Check heights and pipes there."
    return InputError(text, name=name)


class _Holder:
    """A pressure-holding link while a solution is sought: which part of its law it is on."""

    __slots__ = ("base", "draw", "i", "j", "law", "miss", "name", "part", "set_head_m", "slot")

    def __init__(self, link: Link, law: Law, i: int, j: int, slot: int, set_head_m: float) -> None:
        self.name, self.law, self.i, self.j, self.slot = link.name, law, i, j, slot
        self.set_head_m, self.part, self.draw = set_head_m, "held", 0.0
        self.miss = self.base = 0.0

    def begin(self, heads: list[float], flow: float) -> None:
        """Take part and draw from another solution."""
        self.draw = max(flow, -BACK)
        if heads[self.j] < self.set_head_m - 1e-6:
            self.part = "open"

    def taken(self, start_m: float) -> tuple[float, float]:
        """(m3/s, m2/s) drawn from the start while held: what it gives, or less if it cannot."""
        if self.law.passes(start_m - self.set_head_m, self.draw):
            return self.draw, 0.0
        free, slope = self.law.flow(start_m - self.set_head_m)
        return (self.draw, 0.0) if free >= self.draw else (free, slope)

    def given(self, end_m: float, change_m: float = 0.0) -> float:
        """m3/s given at the end while held; the change apart, for it is too small to add.

        ``base`` is what is given at the set head itself.
        """
        return self.base + (self.set_head_m - end_m) / DROOP - change_m / DROOP

    def adjust(
        self, start_m: float, end_m: float, change_m: float, agreed: float
    ) -> tuple[str, object] | None:
        """("part" or "draw", new value) of what is not yet in line, or None."""
        if self.part == "open":
            return ("part", "held") if end_m > self.set_head_m + 1e-9 else None
        if self.part == "shut":
            low = end_m < self.set_head_m - 1e-9 and start_m > end_m - self.law.most_gain
            return ("part", "held") if low else None
        given, taken = self.given(end_m, change_m), self.taken(start_m)[0]
        if given < -BACK:
            return "part", "shut"
        if taken < self.draw * (1 - 1e-9) - STILL and taken < given * (1 - 1e-9):
            return "part", "open"
        if abs(given - self.draw) > agreed * abs(given) + 1e-3 * STILL:
            return "draw", self.foreseen(given)
        return None

    def foreseen(self, given: float) -> float:
        """What it will give in the end: the misses shrink by one ratio (Aitken's step)."""
        miss, before = given - self.draw, self.miss
        self.miss = miss
        ratio = miss / before if before else 0.0
        if not 0.2 < abs(ratio) < 0.99:
            return given
        self.miss = 0.0
        return max(given + miss * ratio / (1.0 - ratio), -BACK)


class _System:
    """A network with its places numbered: unknown heads first, levels after."""

    def __init__(self, network: Network) -> None:
        self.network, self.count = network, len(network.places)
        self.names = [node.name for node in network.places + network.levels]
        index = {name: i for i, name in enumerate(self.names)}
        self.known = [level.level_m for level in network.levels]
        self.at: list[float] = []  # the heads that ``free`` belongs to
        self.free = Point(0, 0)
        pairs = [(index[link.start], index[link.end]) for link in network.links]
        inner = [pair for pair in pairs if max(pair) < self.count]
        self.plan = network_matrix.eliminate(self.count, tuple(inner))
        self.links: list[tuple[str, Law, int, int, int]] = []
        self.holders: list[_Holder] = []
        for link, (i, j) in zip(network.links, pairs, strict=True):
            self._add(link, i, j)
        self.outlets = [
            (outlet, index[outlet.node], network.heights[outlet.node])
            for outlet in network.outlets
            if outlet.open
        ]

    def _add(self, link: Link, i: int, j: int) -> None:
        slot_of, law = self.plan.slot_of, law_of(link, self.network)
        slot = slot_of.get((i, j), slot_of.get((j, i), -1))
        held = set_head(link, self.network)
        if held is None:
            self.links.append((link.name, law, i, j, slot))
        else:
            self.holders.append(_Holder(link, law, i, j, slot, held))

    @property
    def span(self) -> float:
        """More than any two heads can differ by, m: the longest step taken at once."""
        spots = list(self.network.heights.values())
        laws = [law for _, law, *_ in self.links] + [holder.law for holder in self.holders]
        return max(spots) - min(spots) + sum(law.most_gain for law in laws) + 1.0

    def suppose(self) -> None:
        """Draws to begin with: pumps share what the open outlets take in full."""
        pumps = [holder for holder in self.holders if isinstance(holder.law, PumpLaw)]
        full = sum(outlet.full_m3s for outlet, *_ in self.outlets)
        for pump in pumps:
            pump.draw = full / len(pumps)
        self.share()

    def begin(self, heads: list[float], start: Solution) -> None:
        """Parts and draws as in another solution; pumps bring more or less as outlets are open."""
        before = sum(start.draws.values())
        full = sum(outlet.full_m3s for outlet, *_ in self.outlets if start.draws.get(outlet.name))
        share = before / full if full > 0 else 1.0  # of their full flow that they took
        now = sum(
            start.draws.get(outlet.name) or share * outlet.full_m3s for outlet, *_ in self.outlets
        )
        for holder in self.holders:
            grown = now / before if before > 0 and isinstance(holder.law, PumpLaw) else 1.0
            holder.begin(heads, grown * start.flows.get(holder.name, 0.0))
        self.share()

    def heads_from(self, heads: dict[str, float]) -> list[float]:
        """Heads of places as in another solution; its own height where that has none."""
        return [heads.get(place.name, place.height_m) for place in self.network.places] + self.known

    def balance(self, heads: list[float]) -> Point:
        """Imbalances (outflow less inflow) and their slopes at these heads."""
        if heads is not self.at:
            self.at, self.free = heads, self._free(heads)
        point = self.free.copy()  # a round begins where the last one ended
        for holder in self.holders:
            self._hold(point, heads, holder)
        over = point.over
        point.norm = math.fsum(map(abs, over[: self.count]))
        known = math.fsum(map(abs, over[self.count :]))
        point.through = math.fsum(flow for flow, _ in point.draws) + known
        return point

    def _free(self, heads: list[float]) -> Point:
        """The same without the pressure-holding parts."""
        point = Point(len(heads), self.plan.size)
        flows, over, diagonal, upper = point.flows, point.over, point.diagonal, point.upper
        for name, law, i, j, slot in self.links:  # as ``point.link``, without the call
            flow, slope = law.flow(heads[i] - heads[j])
            flows.append((name, i, j, flow, slope))
            over[i] += flow
            over[j] -= flow
            diagonal[i] += slope
            diagonal[j] += slope
            if slot >= 0:
                upper[slot] -= slope
        weight = self.network.weight
        for outlet, i, height in self.outlets:
            flow, slope = outlet.flow_and_slope(weight * (heads[i] - height))
            slope *= weight
            point.draws.append((flow, slope))
            over[i] += flow
            diagonal[i] += slope
        return point

    @staticmethod
    def _hold(point: Point, heads: list[float], holder: _Holder) -> None:
        i, j = holder.i, holder.j
        if holder.part == "held":
            given, (taken, slope) = holder.given(heads[j]), holder.taken(heads[i])
            point.over[i] += taken
            point.diagonal[i] += slope
            point.over[j] -= given
            point.diagonal[j] += 1.0 / DROOP
            return
        head = heads[i] - heads[j]
        flow, slope = holder.law.flow(head) if holder.part == "open" else (SEEP * head, SEEP)
        point.flows.append((holder.name, i, j, flow, slope))
        point.link(i, j, holder.slot, flow, slope)

    def adjust(self, heads: list[float], change: list[float], singly: bool, agreed: float) -> bool:
        """Bring the pressure-holding parts into line; whether any was out of line."""
        changed = False
        for holder in self.holders:
            i, j = holder.i, holder.j
            new = holder.adjust(heads[i] + change[i], heads[j], change[j], agreed)
            if new is None or (changed and singly and new[0] == "part"):
                continue
            setattr(holder, *new)
            changed = True
            if new[1] == "held":
                holder.draw = max(holder.law.flow(heads[i] - holder.set_head_m)[0], 0.0)
        self.share()
        return changed

    def share(self) -> None:
        """What parts that hold one place at one head draw, shared equally: their ``base``."""
        groups: dict[tuple[int, float], list[_Holder]] = {}
        for holder in self.holders:
            if holder.part == "held":
                groups.setdefault((holder.j, holder.set_head_m), []).append(holder)
        for group in groups.values():
            base = sum(holder.draw for holder in group) / len(group)
            for holder in group:
                holder.base = base

    def straight_line(self) -> list[float]:
        """Heads to begin with: every law replaced by a straight line of the right size."""
        point = Point(len(self.names), self.plan.size)
        heads = [0.0] * self.count + self.known
        for _, law, i, j, slot in self.links:
            slope = law.start_slope()
            flow = slope * (heads[i] - heads[j] + law.start_gain)
            point.link(i, j, slot, flow, slope)
        for holder in self.holders:
            slope = holder.law.start_slope()
            point.diagonal[holder.j] += slope
            point.over[holder.j] -= slope * holder.set_head_m
        for outlet, i, height in self.outlets:
            slope = outlet.full_m3s / max(outlet.content_pa, 1e3) * self.network.weight
            point.diagonal[i] += slope
            point.over[i] -= slope * height
        point.diagonal = [one + STANDPIPE for one in point.diagonal]
        return self.change(point)[: self.count] + self.known

    def change(self, point: Point) -> list[float]:
        """Newton's step, m: slopes * x = -imbalances; 0 at levels."""
        right = [-one for one in point.over]
        try:
            found = network_matrix.solve(self.plan, point.diagonal[:], point.upper[:], right)
        except network_matrix.SingularError as error:
            raise unsolved(self.names[error.node]) from error
        found[self.count :] = [0.0] * len(self.known)
        return found


def _lowest(
    system: _System, heads: list[float], settled: float
) -> tuple[list[float], Point, list[float], int]:
    """Newton's steps to the lowest co-content: (heads, point, the last change, steps)."""
    point, span = system.balance(heads), system.span
    for step in range(1, MOST_STEPS + 1):
        change = system.change(point)
        largest = max(map(abs, change), default=0.0)
        if largest <= settled and (settled > SETTLED or _balanced(point, heads)):
            return heads, point, change, step
        if largest > span:
            change = [one * span / largest for one in change]
        before, old = heads, point
        heads, point, share = _along(system, heads, point, change)
        if share * min(largest, span) <= settled and _balanced(old, before):
            return heads, point, [0.0] * len(change), step  # at a bend, such as a valve shut
    worst = max(range(system.count), key=lambda i: abs(point.over[i]))
    raise unsolved(system.names[worst])


def _balanced(point: Point, heads: list[float]) -> bool:
    """Whether what is out of balance is no more than rounding and a share of the flow."""
    return point.norm <= BALANCED * point.through + NO_FLOW + point.rounding(heads)


def _along(
    system: _System, heads: list[float], point: Point, change: list[float]
) -> tuple[list[float], Point, float]:
    """(heads, point, share): so far along a step that the co-content's slope has all but gone.

    The slope rises along the step from below zero.  The whole step is taken where the slope is
    then still falling or small; else its zero is bracketed, by interpolation first and then by
    halving, and where it jumps past zero the near side of the jump is taken.
    """

    def at(share: float) -> tuple[list[float], Point, float]:
        new = [h + share * c for h, c in zip(heads, change, strict=True)]
        there = system.balance(new)
        return new, there, there.slope_along(change)

    first, share = point.slope_along(change), 1.0
    new, there, slope = at(share)
    if slope <= -FALL * first:
        return new, there, share
    low, high, at_low, at_high = 0.0, 1.0, first, slope
    near = (heads, point)
    for search in range(SEARCHES):
        share = (low + high) / 2
        if search < INTERPOLATED:
            share = (low * at_high - high * at_low) / (at_high - at_low)
            share = min(max(share, 0.9 * low + 0.1 * high), 0.1 * low + 0.9 * high)
        new, there, slope = at(share)
        if abs(slope) <= -FALL * first:
            return new, there, share
        if slope > 0:
            high, at_high = share, slope
        else:
            low, at_low, near = share, slope, (new, there)
    return *near, low


def _solution(
    system: _System, heads: list[float], point: Point, change: list[float], steps: int
) -> Solution:
    """The last change goes into heads and flows: so the flows balance to rounding."""
    network = system.network
    over, flows = [0.0] * len(heads), {}
    for name, i, j, flow, slope in point.flows:
        flows[name] = flow + slope * (change[i] - change[j])
        over[i] += flows[name]
        over[j] -= flows[name]
    for holder in system.holders:
        if holder.part == "held":
            flows[holder.name] = holder.given(heads[holder.j], change[holder.j])
            over[holder.i] += flows[holder.name]
            over[holder.j] -= flows[holder.name]
    draws = {outlet.name: 0.0 for outlet in network.outlets}
    for (outlet, i, _), (draw, slope) in zip(system.outlets, point.draws, strict=True):
        draws[outlet.name] = draw + slope * change[i]
        over[i] += draws[outlet.name]
    imbalance = max(map(abs, over[: system.count]), default=0.0) / max(point.through, TRICKLE)
    last = (h + c for h, c in zip(heads, change, strict=True))
    named = dict(zip(system.names, last, strict=True))
    return Solution(network, named, flows, draws, steps, imbalance)
