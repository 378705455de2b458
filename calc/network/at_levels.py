"""Flows of a supply by the levels of its tanks: solved at a few levels, straight lines between.

With the same outlets open and the pump on or off, all flows are smooth functions of the tanks'
levels.  They are solved at marks along the depth, only where a day comes by, and are taken as
straight between two marks; a span is halved where a flow changes much along it.  Since continuity
is linear, what is found between marks balances as well as what is found at them.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, NamedTuple

from calc.errors import InputError
from calc.network import solve as network_solve
from calc.network.parted import EMPTY, FREE, FULL, GIVES, Parted, parted, pumps
from calc.network.solve import unsolved
from calc.solve import root

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.network.parts import Network
    from calc.network.state import Solution

CELLS = 8  # spans into which the depth of a tank is parted to begin with; our choice
BEND = 0.03  # share of the largest flow by which flows may differ along a span; our choice
HALVED = 4  # times a span is halved at most
SEEPS = 1e-9  # m3/s into or out of a tank at its limit that counts as none: 0.1 L a day
CLOSE = 1e-10  # m, to which the height is found at which as much runs out of a tank as into it
BELOW = 1.0  # m under all places, where surely nothing runs out
SWEEPS = 40  # of several tanks that water passes through, one after the other


@dataclass(frozen=True)
class Tank:
    """Open water of one floor area. name: of its ``Level``; floor_m: above the datum, m.

    depth_m: of the water when full, m; volume_m3: then in it, m3.
    """

    name: str
    floor_m: float
    depth_m: float
    volume_m3: float

    def level_m(self, volume_m3: float) -> float:
        """Height of its water above the datum, m: floor + depth V / V_full."""
        return self.floor_m + self.depth_m * volume_m3 / self.volume_m3


class State(NamedTuple):
    """What the flows depend on besides the levels.

    counts: (outlet, how many are open) of the open ones; pumping: whether the pumps may run;
    stands: how each tank stands, in their order.
    """

    counts: tuple[tuple[str, int], ...]
    pumping: bool
    stands: tuple[str, ...]


class Rates(NamedTuple):
    """What runs, m3/s, and pressures, Pa gauge.

    nets: into each tank; pumped: out of the pumps' source; other: out of open water that is no
    tank; drawn, pressures: of each outlet of the network, 0 where it is shut or no water gets to.
    """

    nets: tuple[float, ...]
    pumped: float
    other: float
    drawn: tuple[float, ...]
    pressures: tuple[float, ...]


@dataclass
class Flows:
    """The flows of one network. tanks: its ``Tank``s; source: name of the level pumps draw from.

    solves: how many times the network was solved.
    """

    network: Network
    tanks: tuple[Tank, ...]
    source: str = ""
    solves: int = 0
    _found: dict[tuple[State, tuple[float, ...]], Rates] = field(default_factory=dict)
    _parts: dict[tuple[State, frozenset[str]], Parted | None] = field(default_factory=dict)
    _spans: dict[tuple[State, float, float], tuple[Rates, Rates, bool]] = field(
        default_factory=dict
    )
    _wanted: dict[tuple[tuple[str, int], ...], tuple[float, ...]] = field(default_factory=dict)
    _near: dict[frozenset[str], Solution] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.pumps = pumps(self.network)
        self._names = tuple(one.name for one in self.network.outlets)
        self._lowest = min(self.network.heights.values()) - BELOW

    def wanted(self, counts: Sequence[tuple[str, int]]) -> tuple[float, ...]:
        """What each outlet asks for, m3/s: the flow of those open at the pressure they need."""
        key = tuple(counts)
        if key not in self._wanted:
            held = dict(key)
            self._wanted[key] = tuple(
                one.full_m3s / one.count * held.get(one.name, 0) for one in self.network.outlets
            )
        return self._wanted[key]

    def between(self, state: State, shares: Sequence[float]) -> Rates:
        """``Rates`` at levels given as shares of each tank's depth, 0 to 1.

        Raises InputError as ``solve``.  Source: straight lines between solved marks.
        """
        free = [at for at, how in enumerate(state.stands) if how == FREE]
        fixed = [1.0 if how == FULL else 0.0 for how in state.stands]
        if not free:
            return self.mark(state, tuple(fixed))
        if len(free) == 1:
            return self._on_line(state, fixed, free[0], min(max(shares[free[0]], 0.0), 1.0))
        return self._in_simplex(state, fixed, free, shares)

    def _on_line(self, state: State, shares: list[float], at: int, share: float) -> Rates:
        """Of one tank whose level moves: the span halved where a flow bends."""
        low = min(int(share * CELLS), CELLS - 1) / CELLS
        wide = 1.0 / CELLS
        one, other, bends = self._two(state, shares, at, low, wide)
        for _ in range(HALVED):
            if not bends:
                break
            wide /= 2
            low = low + wide if share >= low + wide else low
            one, other, bends = self._two(state, shares, at, low, wide)
        part = (share - low) / wide
        return _mixed(((1.0 - part, one), (part, other)))

    def _two(
        self, state: State, shares: list[float], at: int, low: float, wide: float
    ) -> tuple[Rates, Rates, bool]:
        """(rates at both ends of a span, whether a flow bends along it), kept."""
        key = state, low, wide
        if key not in self._spans:
            ends = []
            for share in (low, low + wide):
                shares[at] = share
                ends.append(self.mark(state, tuple(shares)))
            self._spans[key] = ends[0], ends[1], _bends(ends[0], ends[1])
        return self._spans[key]

    def _in_simplex(
        self, state: State, shares: list[float], free: list[int], asked: Sequence[float]
    ) -> Rates:
        """Of several tanks: from corner to corner of a cell, the furthest along first."""
        within = {}
        for at in free:
            place = min(max(asked[at], 0.0), 1.0) * CELLS
            low = min(int(place), CELLS - 1)
            shares[at], within[at] = low / CELLS, place - low
        order = sorted(free, key=lambda at: -within[at])
        parts = [within[at] for at in order] + [0.0]
        mixed = [(1.0 - parts[0], self.mark(state, tuple(shares)))]
        for step, at in enumerate(order):
            shares[at] += 1.0 / CELLS
            weight = parts[step] - parts[step + 1]
            if weight > 0.0:
                mixed.append((weight, self.mark(state, tuple(shares))))
        return _mixed(mixed)

    # Solving --------------------------------------------------------------------------------

    def mark(self, state: State, shares: tuple[float, ...]) -> Rates:
        """``Rates`` solved at some levels, kept.  Arguments and errors as ``between``."""
        key = state, shares
        if key not in self._found:
            self._found[key] = self._solved(state, shares)
        return self._found[key]

    def _solved(self, state: State, shares: tuple[float, ...]) -> Rates:
        heads = {
            tank.name: tank.floor_m + tank.depth_m * share
            for tank, share in zip(self.tanks, shares, strict=True)
        }
        heads |= {name + GIVES: head for name, head in heads.items()}
        held = [
            (tank.name, how)
            for tank, how in zip(self.tanks, state.stands, strict=True)
            if how != FREE
        ]
        rates = self._rates(state, frozenset(), heads)
        passing = [one for one in held if abs(self._net(rates, one[0])) > SEEPS]
        if not passing:
            return rates
        through = frozenset(name for name, _ in passing)
        return self._passed(state, through, passing, heads)

    def _passed(
        self,
        state: State,
        through: frozenset[str],
        passing: list[tuple[str, str]],
        heads: dict[str, float],
    ) -> Rates:
        """Water passes through tanks at their limit: as much runs out as in.

        The water of an empty one stands lower in its outlet, the float valve of a full one holds
        back more, until that is so.  Where it cannot be, since the tank fills or empties, the
        rates say so.
        """
        rates = self._rates(state, through, heads)
        for _ in range(SWEEPS if len(passing) > 1 else 1):
            off = 0.0
            for name, how in passing:
                sign = 1.0 if how == EMPTY else -1.0
                if sign * self._net(rates, name) >= 0.0 and self._untouched(name, how, heads):
                    continue  # it fills, or gives: its level moves
                off = max(off, abs(self._net(rates, name)))
                rates = self._balanced(state, through, (name, how), heads)
            if off <= SEEPS:
                return rates
        if len(passing) == 1:
            return rates
        raise unsolved(passing[0][0])

    @staticmethod
    def _untouched(name: str, how: str, heads: dict[str, float]) -> bool:
        return heads[name] == heads[name + GIVES]

    def _balanced(
        self, state: State, through: frozenset[str], one: tuple[str, str], heads: dict[str, float]
    ) -> Rates:
        """With one tank's hidden height found at which its net is nothing."""
        name, how = one
        side = name + GIVES if how == EMPTY else name
        limit = heads[name] if how == EMPTY else heads[name + GIVES]

        def net(head: float) -> float:
            return self._net(self._rates(state, through, {**heads, side: head}), name)

        if how == EMPTY:
            low, high = self._lowest, limit
        else:
            low, high = limit, self._highest(state, heads)
        heads[side] = root(net, low, high, CLOSE)
        return self._rates(state, through, heads)

    def _highest(self, state: State, heads: dict[str, float]) -> float:
        """A height at which surely nothing runs in, m."""
        gain = sum(link.pump.head_and_slope(0.0, link.speed)[0] for link in self.pumps)
        spots = [*heads.values(), *self.network.heights.values()]
        return max(spots) + (gain if state.pumping else 0.0) + BELOW

    def _net(self, rates: Rates, name: str) -> float:
        at = next(at for at, tank in enumerate(self.tanks) if tank.name == name)
        return rates.nets[at]

    def _rates(self, state: State, through: frozenset[str], heads: dict[str, float]) -> Rates:
        """Solved with the levels at these heights. through: names of tanks that water passes."""
        key = state, through
        if key not in self._parts:
            stands = {t.name: how for t, how in zip(self.tanks, state.stands, strict=True)}
            self._parts[key] = parted(
                self.network, dict(state.counts), state.pumping, stands, through
            )
        part = self._parts[key]
        nothing = (0.0,) * len(self._names)
        if part is None:
            return Rates((0.0,) * len(self.tanks), 0.0, 0.0, nothing, nothing)
        solution = self._solution(part.at(heads))
        return self._read(solution)

    def _solution(self, network: Network) -> Solution:
        """Solved, beginning from the last solution of the same parts."""
        names = frozenset(link.name for link in network.links)
        self.solves += 1
        near = self._near.get(names)
        try:
            found = network_solve.solve(network, near)
        except InputError:
            if near is None:
                raise
            found = network_solve.solve(network)  # from afresh: the last one may be far off
        self._near[names] = found
        return found

    def _read(self, solution: Solution) -> Rates:
        supplied, outlets = solution.supplied, solution.network.outlets_by_name
        nets = tuple(
            -supplied.get(tank.name, 0.0) - supplied.get(tank.name + GIVES, 0.0)
            for tank in self.tanks
        )
        pumped = supplied.get(self.source, 0.0)
        other = sum(supplied.values()) + sum(nets) - pumped
        drawn = tuple(solution.draws.get(name, 0.0) for name in self._names)
        pressures = tuple(
            solution.pressure(outlets[name].node) if name in outlets else 0.0
            for name in self._names
        )
        return Rates(nets, pumped, other, drawn, pressures)


def _bends(one: Rates, other: Rates) -> bool:
    """Whether a flow changes much from one mark to the next."""
    pairs = [*zip(one.nets, other.nets, strict=True), *zip(one.drawn, other.drawn, strict=True)]
    most = max((max(abs(a), abs(b)) for a, b in pairs), default=0.0)
    return any(abs(a - b) > BEND * most for a, b in pairs)


def _mixed(parts: Sequence[tuple[float, Rates]]) -> Rates:
    """Rates weighted; the weights add to 1."""
    (first, one), *others = parts
    if not others:
        return one
    weight, other = others[0]
    if len(others) == 1:

        def two(a: tuple[float, ...], b: tuple[float, ...]) -> tuple[float, ...]:
            return tuple(first * x + weight * y for x, y in zip(a, b, strict=True))

        return Rates(
            two(one.nets, other.nets),
            first * one.pumped + weight * other.pumped,
            first * one.other + weight * other.other,
            two(one.drawn, other.drawn),
            two(one.pressures, other.pressures),
        )

    def several(of: str) -> tuple[float, ...]:
        columns = zip(*(getattr(rates, of) for _, rates in parts), strict=True)
        weights = [share for share, _ in parts]
        return tuple(sum(w * x for w, x in zip(weights, c, strict=True)) for c in columns)

    return Rates(
        several("nets"),
        sum(share * rates.pumped for share, rates in parts),
        sum(share * rates.other for share, rates in parts),
        several("drawn"),
        several("pressures"),
    )
