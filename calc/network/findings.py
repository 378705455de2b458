"""What a solved supply shows to be wrong or worth knowing, part by part, as figures.

The words are the sheet's: each trouble says its part, its kind, its figure and its limit in SI.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice, water
from calc.errors import InputError
from calc.network.parts import Network, PumpSet, Run
from calc.network.solve import solve
from calc.network.state import SEEPING, STILL, Solution
from calc.network.static import highest_pressures
from calc.pipe import friction, pipes

if TYPE_CHECKING:
    from collections.abc import Iterator

STRONGER = 0.05  # m by which a head must be the stronger to speak of two sources that fight
TAKEN = 1e-9  # m3/s into a level that is worth a word: 4 mL an hour
HAIR = 1.0  # Pa, below which a pressure counts as zero; our choice
LEVELS = ("stop", "care", "note")  # worst first
SLACK = 1 + 1e-9  # a limit typed in another unit is still kept


@dataclass(frozen=True)
class Trouble:
    """Something a solution shows. row: the part's name; kind: a word; level: of ``LEVELS``.

    value, limit: SI numbers of ``quantity`` (a key of ``units.QUANTITIES``); None where none.
    other: the other part or parts it is about.
    """

    row: str
    kind: str
    level: str
    value: float | None = None
    limit: float | None = None
    quantity: str = ""
    other: str = ""


def troubles(solution: Solution, standing: Solution | None = None) -> tuple[Trouble, ...]:
    """Everything a solution shows, worst first.

    standing: the same network solved with every outlet shut (worked out where it is needed).
    Raises InputError as ``solve`` does.
    """
    found = [
        *fights(solution, standing),
        *broken(solution),
        *suction(solution),
        *outlets(solution),
        *_pumps(solution),
        *ratings(solution.network),
        *speeds(solution),
    ]
    return tuple(sorted(found, key=lambda one: LEVELS.index(one.level)))


# Sources ----------------------------------------------------------------------------------------


def own_head(solution: Solution, link: PumpSet) -> float:
    """The head a pump can hold at its end by itself, with no flow, m above the datum.

    H = min(H_set, H_start + H_pump(0))
    Raises nothing.  Source: definition of the shut-off head.
    """
    network = solution.network
    top = solution.heads[link.start] + link.pump.head_and_slope(0.0, link.speed)[0]
    if link.set_pa is None:
        return top
    return min(top, network.heights[link.end] + link.set_pa / network.weight)


def fights(solution: Solution, standing: Solution | None = None) -> Iterator[Trouble]:
    """Sources that work against each other with no check valve between them.

    "fight" at a level: water runs into it (m3/s); at a pump: another holds more head there than
    it can (m).  ``standing`` as in ``troubles``.  Raises InputError as ``solve`` does.
    """
    network, seen = solution.network, set()
    pumps = [link for link in network.links if isinstance(link, PumpSet) and not link.check]
    closed = [level for level in network.levels if not level.fills]
    if not pumps and (not closed or len(network.levels) < 2):
        return  # nothing that could run backwards
    if standing is None:
        standing = solve(network.with_open(()), solution)
    for state in (standing, solution):
        strong = [name for name, flow in state.supplied.items() if flow > TAKEN]
        for level in closed:
            taken = -state.supplied[level.name]
            if taken > TAKEN and level.name not in seen:
                seen.add(level.name)
                by = ", ".join(strong)
                yield Trouble(level.name, "fight", "stop", taken, 0.0, "flow", by)
        for link in pumps:
            held, own = state.heads[link.end], own_head(state, link)
            if held > own + STRONGER and link.name not in seen:
                seen.add(link.name)
                yield Trouble(link.name, "fight", "stop", held, own, "head", link.end)


# Pressure below the air's -----------------------------------------------------------------------


def npsh_available(solution: Solution, place: str) -> float:
    """Net positive suction head at a place, m; below 0 the water boils there.

    NPSH_a = (p + p_air - p_v) / (rho g), velocity head left out
    Raises RangeError for an altitude or temperature out of range.  Source: ISO 17769-1:2012.
    """
    network = solution.network
    air = water.air_pressure(network.altitude_m)
    vapour = water.vapour_pressure(network.temperature_k)
    return (solution.pressure(place) + air - vapour) / network.weight


def npsh_required(solution: Solution, link: PumpSet) -> float | None:
    """What a pump needs at its inlet at its flow and speed, m: its table's, else its row's.

    Raises nothing.  Source: ``Pump.npsh_required_at``; past its figures the last one is used.
    """
    state = solution.pump(link.name)
    if state.flow_m3s <= STILL:
        return None
    try:
        needed = link.pump.npsh_required_at(state.flow_m3s, state.speed or link.speed)
    except InputError:  # past the figures given: the last one is the least it needs
        given = [point.npsh for point in link.pump.points if point.npsh is not None]
        needed = given[-1] if given else None
    return link.npsh_m if needed is None else needed


def suction(solution: Solution) -> Iterator[Trouble]:
    """Pumps at whose inlet the NPSH is short ("npsh", "npsh-margin") or not known enough.

    "npsh-unchecked": value is the most NPSH required that would pass, m.
    Raises RangeError as ``npsh_available``.
    """
    for link in solution.network.links:
        if not isinstance(link, PumpSet) or solution.flows[link.name] <= SEEPING:
            continue
        needed, given = npsh_required(solution, link), npsh_available(solution, link.start)
        if needed is None:
            most = given - practice.NPSH_MARGIN
            yield Trouble(link.name, "npsh-unchecked", "care", most, None, "head")
        elif given < needed:
            yield Trouble(link.name, "npsh", "stop", given, needed, "head")
        elif given < (needed + practice.NPSH_MARGIN) / SLACK:
            yield Trouble(link.name, "npsh-margin", "care", given, needed, "head")


def broken(solution: Solution) -> Iterator[Trouble]:
    """Places with running water where its column parts ("below-vacuum") or is under suction.

    A pump's inlet is bad only where the water boils; "negative-pressure" leaves
    inlets out, which are meant to be.
    Raises RangeError for an altitude or temperature out of range.
    """
    network = solution.network
    running, inlets = set(), set()
    for link in network.links:
        if abs(solution.flows[link.name]) > SEEPING:
            running |= {link.start, link.end}
        if isinstance(link, PumpSet):
            inlets.add(link.start)
    boiling = water.vapour_pressure(network.temperature_k)
    boiling -= water.air_pressure(network.altitude_m)
    for place in network.places:
        pressure = solution.pressure(place.name)
        if place.name not in running:
            continue
        least = boiling if place.name in inlets else max(boiling, practice.DEEPEST_VACUUM)
        if pressure < least:
            yield Trouble(place.name, "below-vacuum", "stop", pressure, least, "pressure")
        elif pressure < -HAIR and place.name not in inlets:
            yield Trouble(place.name, "negative-pressure", "care", pressure, 0.0, "pressure")


# Outlets and pumps ------------------------------------------------------------------------------


def outlets(solution: Solution) -> Iterator[Trouble]:
    """Outlets with no water, too little, too much for them or over the codes' limit.

    "outlet-over-limit" is judged by the highest static pressure, open or shut.
    Raises nothing.
    """
    highest = highest_pressures(solution.network)
    for outlet in solution.network.outlets:
        state = solution.outlet(outlet.name)
        if state.open and state.flow_m3s <= STILL:
            yield Trouble(outlet.name, "no-water", "stop", state.pressure_pa, 0.0, "pressure")
        elif state.open:
            level = practice.enough(state.pressure_pa, outlet.content_pa, outlet.best_pa)
            limit = outlet.best_pa if level == "note" else outlet.content_pa
            if level:
                yield Trouble(outlet.name, "short", level, state.pressure_pa, limit, "pressure")
        most = outlet.law.most_pa
        if most is not None and state.open and state.pressure_pa > most * SLACK:
            yield Trouble(outlet.name, "over", "care", state.pressure_pa, most, "pressure")
        static = max(highest[outlet.node], state.pressure_pa)
        if static > practice.HIGHEST_AT_OUTLET * SLACK:
            limit = practice.HIGHEST_AT_OUTLET
            yield Trouble(outlet.name, "outlet-over-limit", "care", static, limit, "pressure")


def _pumps(solution: Solution) -> Iterator[Trouble]:
    drawn = any(flow > SEEPING for flow in solution.draws.values())
    for link in solution.network.links:
        if not isinstance(link, PumpSet):
            continue
        state = solution.pump(link.name)
        if state.past_end:
            most = link.pump.most_flow(link.speed)
            yield Trouble(link.name, "past-curve", "care", state.flow_m3s, most, "flow")
        elif drawn and state.flow_m3s <= SEEPING:
            yield Trouble(link.name, "idle", "note")


def speeds(solution: Solution) -> Iterator[Trouble]:
    """Pipes in which the water runs fast ("fast"), m/s.  Raises nothing."""
    for link in solution.network.links:
        if isinstance(link, Run):
            speed = friction.velocity(abs(solution.flows[link.name]), link.pipe.inside_m)
            level = practice.speed_level(speed)
            limit = practice.SPEED_CARE if level == "care" else practice.SPEED_NOTE
            if level:
                yield Trouble(link.name, "fast", level, speed, limit, "speed")


# Ratings ----------------------------------------------------------------------------------------


def ratings(network: Network) -> Iterator[Trouble]:
    """Pipes over their rating: as the controls hold them, or once a control has failed.

    "over-rating": the highest static pressure is over the rating; "shut-off-over-rating": only
    that of the pump's shut-off head; "too-hot": K, hotter than the kind may get, a care where no
    pressure ever stands in it; "no-rating": none is known for the kind.  Raises nothing.
    """
    held, failed = highest_pressures(network), highest_pressures(network, controlled=False)
    for link in network.links:
        if not isinstance(link, Run):
            continue
        most, worst = (max(one[link.start], one[link.end]) for one in (held, failed))
        heat, limit = network.heat_k, pipes.hottest_k(link.pipe)
        if pipes.too_hot(link.pipe, heat, network.temperature_k):
            # a suction pipe is under no pressure that could burst it, but a vacuum may flatten it
            level = "stop" if max(most, worst) > HAIR else "care"
            yield Trouble(link.name, "too-hot", level, heat, limit, "temperature")
        if limit is None:
            if most > 0:
                yield Trouble(link.name, "no-rating", "care", most, None, "pressure")
            continue
        if heat > limit + 1e-9:
            continue
        rated = pipes.rating_at(link.pipe, heat)
        if most > rated * SLACK:
            yield Trouble(link.name, "over-rating", "stop", most, rated, "pressure")
        elif worst > rated * SLACK:
            yield Trouble(link.name, "shut-off-over-rating", "care", worst, rated, "pressure")
