"""A supply with something wrong in it: each fault is a change of the parts that are solved."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from calc.network.fault_kinds import BY_KEY, KINDS, LEAK_AT
from calc.network.outlets import CompensatingDripper, LimitedShower, Orifice, Outlet, OutletLaw
from calc.network.parts import Device, Network, PumpSet, Run
from calc.network.static import NONE, highest_heads
from calc.pipe import pipes

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from calc.pump.curve import Pump

LEAK = "a leak"  # name of the outlet that stands for it


@dataclass(frozen=True)
class Watched:
    """A supply as its owner knows it, with every outlet shut.

    network: ``Network``; sections: names of the pipe sections; start: the point at which they
    begin, where the gauge at the pump is; inlet, water, suction: the pump's inlet, its open water
    and the pipe between ("" without a pump; water: the open water they begin in).
    cut_in, cut_out: where a pressure switch starts and stops the pump, Pa (None: a speed control
    holds the set pressure, or nothing does); tank_m3: pressure tank (None: not known);
    charge_pa: its pre-charge; least_m3s: flow below which the pump is stopped; volts: said on the
    display when all is well (None: not known).
    The rest is what a fault may change: tank_air: share of the tank's air that is there; power:
    share of the power in ``pump``; back_m3s: what runs back through the pump at rest; dry: points
    that no water reaches; volts_share: of the voltage.
    """

    network: Network
    sections: tuple[str, ...]
    start: str
    water: str
    inlet: str = ""
    suction: str = ""
    cut_in: float | None = None
    cut_out: float | None = None
    tank_m3: float | None = None
    charge_pa: float = 0.0
    least_m3s: float = 0.0
    volts: float | None = None
    tank_air: float = 1.0
    back_m3s: float = 0.0
    volts_share: float = 1.0
    dry: frozenset[str] = field(default=frozenset())

    @property
    def pumps(self) -> tuple[PumpSet, ...]:
        """Its pumps."""
        return tuple(link for link in self.network.links if isinstance(link, PumpSet))

    @property
    def set_pa(self) -> float | None:
        """The pressure held at the pump, Pa; None where none is."""
        return self.pumps[0].set_pa if self.pumps else None


@dataclass(frozen=True)
class Fault:
    """kind: key of ``fault_kinds.KINDS``; where: section, filter or outlet, "" elsewhere."""

    kind: str
    where: str = ""


NOTHING = Fault("nothing")


def possible(supply: Watched) -> tuple[Fault, ...]:
    """Every fault that this supply can have, one place each, "nothing" first."""
    found: list[Fault] = []
    for kind in KINDS:
        found += [Fault(kind.key, place) for place in _places(supply, kind.key)]
    return tuple(found)


def _places(supply: Watched, kind: str) -> Iterator[str]:
    pump, known_tank = bool(supply.pumps), supply.tank_m3 is not None
    there = {
        "nothing": True, "strainer": pump, "worn": pump, "air": pump, "volts": pump, "check": pump,
        "level": True, "set": supply.set_pa is not None, "charge": known_tank and pump,
    }  # fmt: skip
    if BY_KEY[kind].per_section:
        yield from (name for name in supply.sections if _can(supply, kind, name))
    elif kind == "filter":
        yield from (link.name for link in supply.network.links if isinstance(link, Device))
    elif kind == "outlet":
        yield from (outlet.name for outlet in supply.network.outlets)
    elif there[kind]:
        yield ""


def _can(supply: Watched, kind: str, section: str) -> bool:
    run = supply.network.run(section)
    if kind == "narrow":
        return smaller(run.pipe) is not None
    return kind != "leak" or any(place.name == run.end for place in supply.network.places)


def smaller(pipe: pipes.Pipe) -> pipes.Pipe | None:
    """The next smaller size of a kind by its bore; None of the smallest, or of a measured bore."""
    if pipe.kind not in pipes.KINDS:
        return None
    less = [one for one in pipes.sizes(pipe.kind) if one.inside_m < pipe.inside_m * (1 - 1e-9)]
    return max(less, key=lambda one: one.inside_m, default=None)


def changed(supply: Watched, fault: Fault, severity: float) -> Watched:
    """The supply with a fault in it.

    supply: ``Watched``; fault: one of ``possible``; severity: within those of its kind, in the unit
    said there.  Faults may be put in one after another.
    Returns ``Watched``.  Raises KeyError for a fault that this supply cannot have.
    Source: for each kind the part that changes; pump at another speed: affinity laws.
    """
    kind = fault.kind
    if kind == "nothing":
        return supply
    if kind in _SIMPLE:
        return _SIMPLE[kind](supply, severity)
    if kind in ("worn", "air"):
        return _with_pumps(supply, lambda part: replace(part, pump=_weaker(part, kind, severity)))
    network = supply.network
    if kind == "leak":
        leak = Orifice(severity, LEAK_AT)
        node = network.run(fault.where).end
        name = LEAK
        while name in network.outlets_by_name:
            name += " (another)"
        more = (*network.outlets, Outlet(name, node, leak))
        return replace(supply, network=replace(network, outlets=more))
    if kind == "outlet":
        outlets = (
            replace(one, law=_furred(one, severity)) if one.name == fault.where else one
            for one in network.outlets
        )
        return replace(supply, network=replace(network, outlets=tuple(outlets)))
    if kind == "filter":
        device = network.link(fault.where)
        if not isinstance(device, Device):
            raise KeyError(fault.where)
        device = replace(device, loss_m=device.loss_m * severity)
        return replace(supply, network=network.with_link(device))
    return _in_section(supply, fault, severity)


def _in_section(supply: Watched, fault: Fault, severity: float) -> Watched:
    run = supply.network.run(fault.where)
    if fault.kind == "narrow":
        pipe = smaller(run.pipe)
        if pipe is None:
            raise KeyError(fault.where)
        network = supply.network.with_link(replace(run, pipe=pipe))
        return replace(supply, network=network)
    network = supply.network.with_link(replace(run, k=run.k + severity))
    found = replace(supply, network=network)
    if fault.kind == "shut":
        left = tuple(link for link in network.links if link.name != run.name)
        heads = highest_heads(replace(network, links=left))
        found = replace(
            found, dry=supply.dry | {name for name, head in heads.items() if head == NONE}
        )
    return found


def _with_pumps(supply: Watched, change: Callable[[PumpSet], PumpSet]) -> Watched:
    network = supply.network
    for part in supply.pumps:
        network = network.with_link(change(part))
    return replace(supply, network=network)


def _weaker(part: PumpSet, kind: str, left: float) -> Pump:
    """A worn pump, or one that passes air: head, flow and power are less.

    Worn: water slips back inside, the power stays.  Air: flow and power fall by the square, for
    lighter water is lifted less.  Common practice, no source; the powers are our choice.
    """
    flow, power = (left, 1.0) if kind == "worn" else (left**2, left**2)
    points = tuple(
        replace(
            point,
            flow=point.flow * flow,
            head=point.head * left,
            power=None if point.power is None else point.power * power,
            shaft_power=None if point.shaft_power is None else point.shaft_power * power,
            efficiency=None if not point.efficiency else point.efficiency * flow * left / power,
        )
        for point in part.pump.points
    )
    return replace(part.pump, points=points, _cache={})


def _furred(outlet: Outlet, share: float) -> OutletLaw:
    """The law of an outlet that passes a share of its flow, whatever held it before."""
    law = outlet.law
    if isinstance(law, LimitedShower):
        return replace(law, flow_m3s=law.flow_m3s * share)
    if isinstance(law, CompensatingDripper):
        return replace(law, flow_m3s=law.flow_m3s * share)
    # an orifice, or a flow held: the least pressure for it rises with the square
    return Orifice(law.flow_m3s * share, law.pressure_pa)


def _strainer(supply: Watched, k: float) -> Watched:
    run = supply.network.run(supply.suction)
    return replace(supply, network=supply.network.with_link(replace(run, k=run.k + k)))


def _lower(supply: Watched, metres: float) -> Watched:
    levels = tuple(
        replace(one, level_m=one.level_m - metres) if one.name == supply.water else one
        for one in supply.network.levels
    )
    return replace(supply, network=replace(supply.network, levels=levels))


def _slower(supply: Watched, share: float) -> Watched:
    slowed = _with_pumps(supply, lambda part: replace(part, speed=part.speed * share))
    return replace(slowed, volts_share=supply.volts_share * share)


def _set_lower(supply: Watched, share: float) -> Watched:
    found = _with_pumps(supply, lambda part: set_to(part, share))
    if supply.cut_in is None or supply.cut_out is None:
        return found
    return replace(found, cut_in=supply.cut_in * share, cut_out=supply.cut_out * share)


def set_to(part: PumpSet, share: float) -> PumpSet:
    """A pump that holds a share of its set pressure; one that holds none as it is.

    part: ``PumpSet``; share: of the set pressure, share above 0.  Returns ``PumpSet``.
    """
    return part if part.set_pa is None else replace(part, set_pa=part.set_pa * share)


_SIMPLE: dict[str, Callable[[Watched, float], Watched]] = {
    "strainer": _strainer,
    "level": _lower,
    "volts": _slower,
    "set": _set_lower,
    "charge": lambda supply, share: replace(supply, tank_air=supply.tank_air * share),
    "check": lambda supply, flow: replace(supply, back_m3s=supply.back_m3s + flow),
}


def roughly(run: Run, roughness: float, k: float) -> Run:
    """A pipe with its roughness and its fittings' losses times these shares.

    run: ``Run``; roughness, k: shares of those it has, above 0.  Returns ``Run``.
    """
    pipe = replace(run.pipe, roughness_m=run.pipe.roughness_m * roughness)
    return replace(run, pipe=pipe, k=run.k * k)
