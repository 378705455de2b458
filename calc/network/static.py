"""The highest pressures a supply can come under, with no water flowing."""

from __future__ import annotations

from calc.network.parts import Link, Network, PumpSet, Reducer

NONE = float("-inf")  # m, of a place that no water stands at


def highest_heads(network: Network, controlled: bool = True) -> dict[str, float]:
    """Highest head at every place with every outlet and every tank's float valve shut, m.

    H_end = H_start through pipes and devices, the lower of H_start and H_set past a reducer,
    H_start + H_pump(0) past a pump, up to H_set where its control works
    controlled: set pressures are held; False: every control and reducer has failed, so that the
    pumps' shut-off heads stand on the pipes.  Open water stays at its own level; a break-pressure
    tank whose float valve fails runs over and holds no more.
    Returns {place or level: m above the datum}; minus infinity where no water gets to.
    Raises nothing.  Source: hydrostatics.
    """
    levels = {level.name: level.level_m for level in network.levels}
    heads = {place.name: NONE for place in network.places} | levels
    for _ in range(len(heads)):  # each pass carries a head one link further
        changed = False
        for link in network.links:
            for start, end in _ways(link):
                head = _past(network, link, heads[start], controlled)
                if end not in levels and head > heads[end] + 1e-9:
                    heads[end], changed = head, True
        if not changed:
            break
    return heads


def _ways(link: Link) -> tuple[tuple[str, str], ...]:
    """(from, to) of a link, in each direction that lets pressure pass."""
    forward = (link.start, link.end)
    one_way = link.check or isinstance(link, PumpSet)
    return (forward,) if one_way else (forward, forward[::-1])


def _past(network: Network, link: Link, head: float, controlled: bool) -> float:
    """Head that a link passes on, m."""
    held, vented = None, isinstance(link, Reducer) and link.vented
    if isinstance(link, (PumpSet, Reducer)) and link.set_pa is not None and (controlled or vented):
        held = network.heights[link.end] + link.set_pa / network.weight
    if isinstance(link, PumpSet):
        head += link.pump.head_and_slope(0.0, link.speed)[0]
    return head if held is None else min(head, held)


def highest_pressures(network: Network, controlled: bool = True) -> dict[str, float]:
    """``highest_heads`` as gauge pressures, Pa; minus infinity where no water gets to."""
    heads = highest_heads(network, controlled)
    return {name: network.weight * (heads[name] - network.heights[name]) for name in heads}
