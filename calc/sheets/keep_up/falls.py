"""What is found where water runs down by its own weight: heights it cannot pass, what its source
gives, break-pressure tanks that run empty or over."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.network.findings import HAIR, Trouble
from calc.network.parts import Device, Level, Reducer
from calc.network.solve import solve
from calc.network.state import SEEPING
from calc.network.static import highest_heads
from calc.network.way import way_to
from calc.sheets.keep_up.cause import tank
from calc.site.rows import SOURCE

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.sheets.keep_up.case import Case
    from calc.units import Reader

DRY, EMPTY, OVER = "dry", "break-empty", "break-over"
GIVES, UNCHECKED = "source-short", "source-unchecked"
SUCKS = ("negative-pressure", "below-vacuum")
EVEN = 1e-6  # m, by which a point may lie above the water it comes from; rounding
WORDS = (DRY, EMPTY, OVER, GIVES, UNCHECKED)  # kinds that ``words`` tells


def tanks(case: Case) -> list[Reducer]:
    """The break-pressure tanks of a supply."""
    return [one for one in case.after.network.links if isinstance(one, Reducer) and one.vented]


# What is found, as figures ----------------------------------------------------------------------


def signs(case: Case) -> Iterator[Trouble]:
    """What is found of open water on the way and where the line begins."""
    if case.supply.pumping is None or tanks(case):
        yield from _dry(case)
    yield from _source(case)
    for one in tanks(case):
        yield from _tank(case, one)


def weighed(case: Case, found: Iterable[Trouble]) -> list[Trouble]:
    """The same, by what holds without a pump.

    Where a full pipe would suck, air comes in and less runs than was worked out: it does not work.
    A break-pressure tank cannot suck; that it runs empty is said in its own words.
    """
    empty = {one.end for one in tanks(case) if case.after.pressure(one.end) < -HAIR}
    kept = [one for one in found if not (one.kind in SUCKS and one.row in empty)]
    if case.supply.pumping is not None:
        return kept
    return [replace(one, level="stop") if one.kind == SUCKS[0] else one for one in kept]


def _dry(case: Case) -> Iterator[Trouble]:
    """Points above the water they come from, behind a tank or, without a pump, anywhere."""
    network = case.after.network
    heads = highest_heads(network, controlled=False)
    fed = {end for tap in case.running for end in _ends(case, tap.node)}
    for place in case.built.shown:
        over = network.heights.get(place, heads.get(place, 0.0)) - heads.get(place, 0.0)
        if over <= EVEN:
            continue
        above = [name for name in way_to(case.after, place) if tank(network.link(name))]
        if case.supply.pumping is None or above:
            level = "stop" if place in fed else "care"
            other = above[-1] if above else ""
            yield Trouble(place, DRY, level, over, None, "length", other)


def _ends(case: Case, node: str) -> set[str]:
    """Points on the way to a node, itself among them."""
    links = [case.after.network.link(name) for name in way_to(case.after, node)]
    return {node} | {end for link in links for end in (link.start, link.end)}


def _source(case: Case) -> Iterator[Trouble]:
    """What is taken from the open water where the line begins, against what it gives."""
    if case.supply.pumping is not None:
        return
    taken, gives = case.after.supplied[SOURCE], case.gives
    if taken <= SEEPING:
        return
    if gives is None:
        yield Trouble(SOURCE, UNCHECKED, "care", taken, None, "flow")
    elif taken > gives * (1 + 1e-9):
        yield Trouble(SOURCE, GIVES, "stop", taken, gives, "flow")


def _tank(case: Case, one: Reducer) -> Iterator[Trouble]:
    """A break-pressure tank that runs empty, or into which another source pushes water."""
    pressure = case.after.pressure(one.end)
    if pressure > HAIR:
        yield Trouble(one.name, OVER, "stop", pressure, None, "pressure")
    elif pressure < -HAIR:
        comes, goes = through(case, one)
        yield Trouble(one.name, EMPTY, "stop", goes, comes, "flow")


def through(case: Case, one: Reducer) -> tuple[float, float]:
    """(most that reaches a break-pressure tank, what runs out of it while it is full), m3/s.

    The supply is parted there: the float valve wide open into open water of the tank's level.
    Raises InputError as the solver does.
    """
    network = case.after.network
    open_water = Level(one.end, network.heights[one.end], fills=True)
    valve = Device(one.name, one.start, one.end, one.flow_m3s, one.loss_m, check=True)
    parted = replace(
        network.with_link(valve),
        places=tuple(place for place in network.places if place.name != one.end),
        levels=(*network.levels, open_water),
        outlets=tuple(outlet for outlet in network.outlets if outlet.node != one.end),
    )
    try:
        found = solve(parted, case.after)
    except InputError:  # from the heads of a tank that sucks it may not get there
        found = solve(parted)
    comes = found.flows[one.name]
    return comes, found.supplied[one.end] + comes


# In words ---------------------------------------------------------------------------------------


def words(case: Case, one: Trouble, reader: Reader) -> str:
    """What is found, as a sentence without its capital."""
    value = one.value or 0.0
    if one.kind == DRY:
        high = reader.show(value, "length")
        above = one.other or "the water it comes from"
        return f"{one.row} lies {high} above {above}: none runs there."
    if one.kind == OVER:
        return f"water from elsewhere pushes into {one.row}: it runs over."
    if one.kind == UNCHECKED:
        takes = reader.show(value, "flow")
        return f"the source's flow is not known, so it is not checked: {takes} or more would pass."
    takes, gives = reader.apart(value, one.limit or 0.0, "flow")
    if one.kind == GIVES:
        return f"the source gives {gives}; what is open takes {takes} from it."
    return f"{one.row} runs empty: at most {gives} reach it, and what is open takes {takes}."
