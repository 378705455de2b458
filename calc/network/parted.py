"""What is left of a supply while its pump stands or a tank is full or empty, ready to be solved.

A tank at its limit is parted in two: water of one height that takes, and water of another that
gives, so that a full tank can be kept from taking and an empty one from giving more than it gets.
Parts that no water can get to, and dead ends without an open outlet, are left out.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.network.check import one_way
from calc.network.parts import Device, Level, Network, PumpSet, Run

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from calc.network.outlets import Outlet
    from calc.network.parts import Link

FREE, FULL, EMPTY = "free", "full", "empty"  # how a tank stands
GIVES = ", giving"  # of the name of the side of a parted tank that water runs out of


@dataclass(frozen=True)
class Parted:
    """What is left. network: its tanks at any height; away: names of outlets no water gets to."""

    network: Network
    away: frozenset[str]

    def at(self, heads: Mapping[str, float]) -> Network:
        """The network with the water of its levels at these heights, m above the datum.

        heads: by name of a level; one without stays where it is.
        """
        levels = tuple(
            replace(one, level_m=heads.get(one.name, one.level_m)) for one in self.network.levels
        )
        return replace(self.network, levels=levels)


def parted(
    network: Network,
    counts: Mapping[str, int],
    pumping: bool,
    stands: Mapping[str, str],
    passing: Iterable[str] = (),
) -> Parted | None:
    """The part of a network in which water can move.

    counts: how many of each outlet are open, by name; pumping: True while the pumps may run;
    stands: by name of a tank how it stands, ``FREE``, ``FULL`` or ``EMPTY``; passing: names of
    those at their limit through which water may pass, the other side being at its own height.
    Returns ``Parted``; None where nothing can move.  Raises nothing.
    Source: continuity; which way a check valve, a float valve or an empty tank lets water run.
    """
    passing = frozenset(passing)
    links = [link for link in network.links if pumping or not isinstance(link, PumpSet)]
    levels = {level.name: level for level in network.levels}
    for name, how in stands.items():
        if how != FREE:
            links, levels = _part(links, levels, name, how, name in passing)
    outlets = tuple(_opened(one, counts) for one in network.outlets)
    used = {one.node for one in outlets if one.open}
    kept = _wet(links, levels)
    links = [link for link in links if link.start in kept and link.end in kept]
    away = frozenset(one.name for one in outlets if one.open and one.node not in kept)
    kept, links = _without_dead_ends(kept, links, levels, used)
    if not links:
        return None
    ends = {end for link in links for end in (link.start, link.end)}
    left = Network(
        tuple(place for place in network.places if place.name in kept),
        tuple(level for level in levels.values() if level.name in ends),
        tuple(links),
        tuple(one for one in outlets if one.open and one.node in kept),
        network.temperature_k,
        network.altitude_m,
        network.hottest_k,
    )
    return Parted(left, away)


def fed(network: Network, names: Iterable[str]) -> frozenset[str]:
    """Those of some tanks that the pumps' water gets to without passing through another.

    names: of levels.  Returns names.  Raises nothing.
    """
    levels = {level.name for level in network.levels}
    reached = {link.end for link in pumps(network)}
    todo = list(reached)
    while todo:
        here = todo.pop()
        for link in network.links:
            for start, end in ((link.start, link.end), (link.end, link.start)):
                back = start == link.end
                if start != here or end in reached or (back and one_way(link)):
                    continue
                reached.add(end)
                if end not in levels:
                    todo.append(end)
    return frozenset(name for name in names if name in reached)


def pumps(network: Network) -> tuple[PumpSet, ...]:
    """The pumps of a network."""
    return tuple(link for link in network.links if isinstance(link, PumpSet))


def _opened(outlet: Outlet, counts: Mapping[str, int]) -> Outlet:
    count = counts.get(outlet.name, 0)
    return replace(outlet, count=max(count, 1), open=count > 0)


def _part(
    links: list[Link], levels: dict[str, Level], name: str, how: str, passes: bool
) -> tuple[list[Link], dict[str, Level]]:
    """A tank at its limit as two levels: one that takes, one that gives.

    Of a full one the side that gives is there, of an empty one the side that takes; the other
    only where water passes through.
    """
    takes, gives = how == EMPTY or passes, how == FULL or passes
    made: list[Link] = []
    for link in links:
        if name not in (link.start, link.end):
            made.append(link)
            continue
        into, out = _into(link, name), _out_of(link, name)
        if takes and into is not None:
            made.append(into)
        if gives and out is not None:
            made.append(out)
    level = levels[name]
    found = {key: one for key, one in levels.items() if key != name}
    found |= {name: level} if takes else {}
    found |= {name + GIVES: replace(level, name=name + GIVES)} if gives else {}
    return made, found


def _into(link: Link, name: str) -> Link | None:
    """The link so that it only passes water into a tank; None where it cannot."""
    return _checked(link) if link.end == name else _turned(link)


def _out_of(link: Link, name: str) -> Link | None:
    """The link so that it only passes water out of a tank; None where it cannot."""
    found = _checked(link) if link.start == name else _turned(link)
    named = f"{link.name}, out of {name}"
    return None if found is None else replace(found, name=named, start=name + GIVES)


def _checked(link: Link) -> Link:
    return replace(link, check=True) if isinstance(link, (Run, Device)) else link


def _turned(link: Link) -> Link | None:
    """The link the other way round, one-way; None where water never runs that way."""
    if one_way(link):
        return None
    return replace(_checked(link), start=link.end, end=link.start)


def _wet(links: list[Link], levels: Mapping[str, Level]) -> set[str]:
    """Names of all that water can get to from open water."""
    onward: dict[str, list[str]] = {}
    for link in links:
        onward.setdefault(link.start, []).append(link.end)
        if not one_way(link):
            onward.setdefault(link.end, []).append(link.start)
    reached, todo = set(levels), list(levels)
    while todo:
        for other in onward.get(todo.pop(), ()):
            if other not in reached:
                reached.add(other)
                todo.append(other)
    return reached


def _without_dead_ends(
    kept: set[str], links: list[Link], levels: Mapping[str, Level], used: set[str]
) -> tuple[set[str], list[Link]]:
    """Names and links without those at whose far end nothing is drawn, where no water moves."""
    while True:
        ends: dict[str, int] = {}
        for link in links:
            for end in (link.start, link.end):
                ends[end] = ends.get(end, 0) + 1
        dead = {n for n in kept if ends.get(n, 0) <= 1 and n not in levels and n not in used}
        if not dead:
            return kept, links
        kept = kept - dead
        links = [link for link in links if link.start in kept and link.end in kept]
