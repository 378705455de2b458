"""What a solved supply shows to be wrong or worth knowing, row by row.

Sentences hold no numbers: each finding carries its figure and limit in SI, for the page to
print in the reader's units.
"""

from dataclasses import dataclass

from calc import water
from calc.errors import InputError
from calc.network.parts import PumpSet, Run
from calc.network.solve import solve
from calc.network.state import STILL
from calc.pipe import pipes

STRONGER = 0.05  # m by which a head must be the stronger to speak of two sources that fight
TAKEN = 1e-9  # m3/s into a level that is worth a word: 4 mL an hour


@dataclass(frozen=True)
class Finding:
    """Something a solution shows. row: the part's name; kind: a word; level: "stop" or "care".

    value, limit: SI numbers of ``quantity`` (a key of ``units.QUANTITIES``); None where none.
    """

    row: str
    kind: str
    level: str
    text: str
    value: float | None = None
    limit: float | None = None
    quantity: str = ""


def findings(solution, standing=None):
    """Everything a solution shows, worst first.

    solution: ``Solution``; standing: the same network solved with every outlet shut (worked out
    here where it is None).  Returns a tuple of ``Finding``.  Raises InputError as ``solve`` does.
    """
    if standing is None:
        standing = solve(solution.network.with_open(()), solution)
    found = [
        *fights(solution, standing),
        *suction(solution),
        *_outlets(solution, standing),
        *_pumps(solution),
        *ratings(standing),
    ]
    return tuple(sorted(found, key=lambda one: one.level != "stop"))


def own_head(solution, link):
    """The head a pump can hold at its end by itself, with no flow, m.

    H = min(H_set, H_start + H_pump(0))
    solution: ``Solution``; link: ``PumpSet``.  Returns m above the datum.  Raises nothing.
    Source: definition of the shut-off head.
    """
    network = solution.network
    top = solution.heads[link.start] + link.pump.head_and_slope(0.0, link.speed)[0]
    if link.set_pa is None:
        return top
    return min(top, network.heights[link.end] + link.set_pa / network.weight)


def fights(solution, standing):
    """Sources that work against each other with no check valve between them: ``Finding``s."""
    network, seen = solution.network, set()
    for state in (standing, solution):
        strong = [name for name, flow in state.supplied.items() if flow > TAKEN]
        by = " and ".join(f"“{name}”" for name in strong) or "another source"
        for level in network.levels:
            taken = -state.supplied[level.name]
            if not level.fills and taken > TAKEN and level.name not in seen:
                seen.add(level.name)
                text = (
                    f"Water runs from {by} into “{level.name}”: the two fight. Fit a check valve "
                    f"in the line of “{level.name}”, or say that it may fill."
                )
                yield Finding(level.name, "fight", "stop", text, taken, 0.0, "flow")
        for link in network.links:
            if not isinstance(link, PumpSet) or link.check or link.name in seen:
                continue
            held, own = state.heads[link.end], own_head(state, link)
            if held > own + STRONGER:
                seen.add(link.name)
                text = (
                    f"Another source holds more pressure at “{link.end}” than “{link.name}” can: "
                    f"the two fight, and water runs back through “{link.name}”, which has no "
                    "check valve. Fit one, or bring the set pressures together."
                )
                yield Finding(link.name, "fight", "stop", text, held, own, "head")


def npsh_available(solution, place):
    """Net positive suction head at a place, m.

    NPSH_a = (p + p_air - p_v) / (rho g), velocity head left out
    solution: ``Solution``; place: name.  Returns m; below 0 the water boils there.
    Raises RangeError for an altitude or temperature out of range.  Source: ISO 17769-1:2012.
    """
    network = solution.network
    air = water.air_pressure(network.altitude_m)
    vapour = water.vapour_pressure(network.temperature_k)
    return (solution.pressure(place) + air - vapour) / network.weight


def npsh_required(solution, link):
    """What a pump needs at its inlet at its flow, m: its table's, else its row's, else None."""
    state = solution.pump(link.name)
    if state.flow_m3s <= STILL:
        return None
    try:
        needed = link.pump.npsh_required_at(state.flow_m3s, state.speed or link.speed)
    except InputError:  # past the figures given: the last one is the least it needs
        given = [point.npsh for point in link.pump.points if point.npsh is not None]
        needed = given[-1] if given else None
    return link.npsh_m if needed is None else needed


def suction(solution):
    """Places where the water would boil, and pumps that lack suction head: ``Finding``s."""
    network = solution.network
    for place in network.places:
        left = npsh_available(solution, place.name)
        if left < 0:
            text = (
                f"At “{place.name}” the pressure would fall below that at which the water boils: "
                "the column breaks, and less flows than is shown. Bring the water nearer, or "
                "widen the pipe before it."
            )
            yield Finding(place.name, "boils", "stop", text, left, 0.0, "head")
    for link in network.links:
        if isinstance(link, PumpSet):
            needed, given = npsh_required(solution, link), npsh_available(solution, link.start)
            if needed is not None and given < needed:
                text = (
                    f"“{link.name}” lacks suction head at this flow: it would lose its prime or "
                    "cavitate, and give less than is shown. Shorten or widen the suction line, "
                    "or bring the pump nearer to the water."
                )
                yield Finding(link.name, "suction", "stop", text, given, needed, "head")


def _outlets(solution, standing):
    for outlet in solution.network.outlets:
        state = solution.outlet(outlet.name)
        wanted = (state.pressure_pa, state.wanted_pa, "pressure")
        if state.open and state.flow_m3s <= STILL:
            text = f"“{outlet.name}” cannot be fed: no water reaches it with these outlets open."
            yield Finding(outlet.name, "unfed", "stop", text, *wanted)
        elif state.short_pa > 0:
            text = f"“{outlet.name}” gets less pressure than wanted."
            yield Finding(outlet.name, "short", "care", text, *wanted)
        most, highest = outlet.law.most_pa, standing.pressure(outlet.node)
        if most is not None and highest > most:
            text = f"“{outlet.name}” stands under more pressure than it is made for. Reduce it."
            yield Finding(outlet.name, "over", "care", text, highest, most, "pressure")


def _pumps(solution):
    drawn = any(flow > STILL for flow in solution.draws.values())
    for link in solution.network.links:
        if not isinstance(link, PumpSet):
            continue
        state = solution.pump(link.name)
        if state.past_end:
            text = f"“{link.name}” runs past the end of its table: what it gives there is a guess."
            most = link.pump.most_flow(link.speed)
            yield Finding(link.name, "past_end", "care", text, state.flow_m3s, most, "flow")
        elif drawn and state.flow_m3s <= STILL:
            text = f"“{link.name}” gives nothing: another source holds more pressure than it can."
            held, own = solution.heads[link.end], own_head(solution, link)
            yield Finding(link.name, "idle", "care", text, held, own, "head")


def ratings(standing):
    """Pipes under more pressure than they are rated for with every outlet shut: ``Finding``s."""
    network = standing.network
    for link in network.links:
        if not isinstance(link, Run) or link.pipe.rating_pa is None:
            continue
        highest = max(standing.pressure(link.start), standing.pressure(link.end))
        try:
            rated = pipes.rating_at(link.pipe, network.temperature_k)
        except InputError as error:
            yield Finding(link.name, "hot", "stop", error.message)
            continue
        if highest > rated:
            text = f"“{link.name}” stands under more pressure than its pipe is rated for."
            yield Finding(link.name, "rating", "stop", text, highest, rated, "pressure")
