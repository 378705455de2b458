"""What is wrong with the parts of a supply before anything is solved, row by row."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError, InputErrors
from calc.network.parts import Device, PumpSet, Reducer, Run

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from calc.network.parts import Link, Network


@dataclass(frozen=True)
class Problem:
    """Something that keeps a network from being solved. row: the part's name; kind: a word."""

    row: str
    kind: str
    text: str


def problems(network: Network) -> tuple[Problem, ...]:
    """Every problem of a network's parts, in the order of its rows.

    network: ``Network``.  Returns a tuple of ``Problem``: names used twice, unknown places,
    lengths and figures that cannot be, parts with no water joined to them, parts that water
    cannot reach against a check valve.  Raises nothing.
    """
    found = [*_names(network), *_ends(network), *_numbers(network)]
    if not found:
        found = [*_unjoined(network)]
    if not found:
        found = [*_unreachable(network)]
    return tuple(found)


def require_sound(network: Network) -> None:
    """Raise ``InputErrors`` with every one of ``problems``, if there are any."""
    found = problems(network)
    if found:
        raise InputErrors(InputError(one.text, name=one.row) for one in found)


def _names(network: Network) -> Iterator[Problem]:
    for parts in (network.places + network.levels, network.links, network.outlets):
        seen = set()
        for part in parts:
            if part.name in seen:
                text = f"Two rows are called “{part.name}”. Give each its own name."
                yield Problem(part.name, "name", text)
            seen.add(part.name)


def _ends(network: Network) -> Iterator[Problem]:
    known = network.heights
    levels = {level.name for level in network.levels}
    for link in network.links:
        for end in (link.start, link.end):
            if end not in known:
                text = (
                    f"“{link.name}” leads to “{end}”, which is not a point of this supply. Add it."
                )
                yield Problem(link.name, "unknown", text)
        if link.start == link.end:
            text = f"“{link.name}” starts and ends at “{link.end}”. Join it to another point."
            yield Problem(link.name, "ends", text)
    for outlet in network.outlets:
        if outlet.node not in known:
            text = f"“{outlet.name}” is at “{outlet.node}”, which is not a point. Add it."
            yield Problem(outlet.name, "unknown", text)
        elif outlet.node in levels:
            text = f"“{outlet.name}” is in the open water of “{outlet.node}”. Put it on a pipe."
            yield Problem(outlet.name, "ends", text)


def _numbers(network: Network) -> Iterator[Problem]:
    for node in network.places + network.levels:
        if not abs(node.height_m) <= 9000:
            text = f"The height of “{node.name}” must be below 9000 m. Check it."
            yield Problem(node.name, "height", text)
    for link in network.links:
        text = _wrong(link)
        if text:
            yield Problem(link.name, "figure", f"“{link.name}”: {text}")
    for outlet in network.outlets:
        wanted = outlet.wanted_pa
        if wanted is not None and not 0 <= wanted <= 1e8:
            text = f"“{outlet.name}”: the needed pressure must be 0 or more."
            yield Problem(outlet.name, "figure", text)


def _wrong(link: Link) -> str:
    """What is wrong with a link's own figures, in words ("" where nothing is)."""
    if isinstance(link, Run):
        if not 0 < link.length_m <= 1e6:
            return f"the pipe is {link.length_m:g} m long. Give a length above zero."
        if not 0 <= link.k <= 1e6:
            return f"the fittings' loss coefficient is {link.k:g}. Give 0 or more."
    elif isinstance(link, (Device, Reducer)):
        if not (0 < link.flow_m3s <= 10 and 0 < link.loss_m <= 1e4):
            return "give the loss it has at one flow, both above zero."
    elif isinstance(link, PumpSet) and not 0.05 <= link.speed <= 1.5:
        return f"the speed is {link.speed:g} of full. Give 0.05 to 1.5."
    return _wrong_setting(link)


def _wrong_setting(link: Link) -> str:
    """What is wrong with a set pressure: a reducer's may be 0, where its end is open to the air."""
    held = link.set_pa if isinstance(link, (PumpSet, Reducer)) else None
    if held is None or 0 < held <= 1e8 or (held == 0 and isinstance(link, Reducer)):
        return ""
    return f"the set pressure is {held:g} Pa. Give one above zero."


def neighbours(network: Network) -> dict[str, list[tuple[Link, str]]]:
    """Every (link, other end) by place, whichever way the link points."""
    found: dict[str, list[tuple[Link, str]]] = {name: [] for name in network.heights}
    for link in network.links:
        found[link.start].append((link, link.end))
        found[link.end].append((link, link.start))
    return found


def _unjoined(network: Network) -> Iterator[Problem]:
    """Groups of joined parts without any open water among them: one problem a group."""
    near = neighbours(network)
    wet = _spread([level.name for level in network.levels], near, _anyhow)
    outlets: dict[str, str] = {}
    for outlet in network.outlets:
        outlets.setdefault(outlet.node, outlet.name)
    done = set(wet)
    for place in network.places:
        if place.name in done:
            continue
        group = _spread([place.name], near, _anyhow)
        done |= group
        links = [link for link in network.links if link.start in group]
        yield _dry(group, links, [outlets[name] for name in outlets if name in group])


def _dry(group: set[str], links: list[Link], taps: list[str]) -> Problem:
    names = ", ".join(f"“{name}”" for name in sorted(group)[:4])
    more = f" and {len(group) - 4} more" if len(group) > 4 else ""
    row = taps[0] if taps else min(group)
    if len(links) >= len(group):
        text = f"The loop through {names}{more} has no source of water. Join it to a well or tank."
        return Problem(row, "loop", text)
    which = f"“{taps[0]}” at " if taps else ""
    text = f"{which}{names}{more} has no source of water. Lead a pipe to it from a well or tank."
    return Problem(row, "disconnected", text)


def _spread(
    starts: Iterable[str],
    near: dict[str, list[tuple[Link, str]]],
    passes: Callable[[Link, str], bool],
) -> set[str]:
    """Names reached from ``starts`` over links that ``passes(link, from)``."""
    reached, todo = set(starts), list(starts)
    while todo:
        here = todo.pop()
        for link, other in near[here]:
            if other not in reached and passes(link, here):
                reached.add(other)
                todo.append(other)
    return reached


def _anyhow(_link: Link, _here: str) -> bool:
    return True


def _around(link: Link) -> Callable[[Link, str], bool]:
    """Passes every other link."""
    return lambda one, _: one.name != link.name


def one_way(link: Link) -> bool:
    """Whether water passes a link from start to end only (a pump always drives that way)."""
    return link.check or isinstance(link, PumpSet)


def _unreachable(network: Network) -> Iterator[Problem]:
    """Parts that water could only reach backwards through a check valve, reducer or pump."""
    near = neighbours(network)
    starts = [level.name for level in network.levels]
    reached = _spread(starts, near, lambda link, here: not one_way(link) or link.start == here)
    outlets: dict[str, str] = {}
    for outlet in network.outlets:
        outlets.setdefault(outlet.node, outlet.name)
    for link in network.links:
        if one_way(link) and link.end in reached and link.start not in reached:
            beyond = _spread([link.start], near, _around(link))
            taps = [outlets[name] for name in outlets if name in beyond - reached]
            what = f"“{taps[0]}”" if taps else f"“{link.start}”"
            text = (
                f"Water cannot get to {what}: “{link.name}” lets it pass only from "
                f"“{link.start}” to “{link.end}”. Turn it round, or join a source behind it."
            )
            yield Problem(link.name, "backwards", text)
