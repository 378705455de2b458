"""The way to an outlet of a site: its pipe sections, and what the solved supply says of them.

Several sheets ask about one pipe; a site has a tree of them.  A ``Way`` is the one line of
sections on which the water comes to the asked outlet, each with the flow that runs in it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

from calc.errors import InputError, InputErrors
from calc.network.parts import Network
from calc.network.state import Solution
from calc.network.way import way_to
from calc.pipe import friction, pipes
from calc.pipe.line import Section, largest
from calc.pump.curve import DisplacementPump, Pump
from calc.pump.invented import PUMPS
from calc.pump.pasted import read_points
from calc.sheets.parts.moments import NOW
from calc.site.open_water import open_water
from calc.site.rows import BY_TABLE, PUMP, SOURCE, fold
from calc.site.site import Site
from calc.site.supply import (
    PUMP_PART,
    Built,
    OpenWater,
    OutletRow,
    SectionRow,
    Source,
    Supply,
    TankRow,
    section_of,
)
from calc.units import GRAVITY, Reader
from calc.water import density, kinematic_viscosity

LEAST = 1e-6  # m3/s; below it nothing arrives, and what the outlet is rated for is asked instead
HELD = 1.0  # Pa; a pump within this of its set pressure holds it: the solver's last bits


# What the site says, in SI -------------------------------------------------------------------


def known(site: Site, path: str, asked_for: str) -> float:
    """A number that must be known.  Raises InputError, naming the path."""
    value = site.value(path)
    if value is None:
        raise InputError(f"{asked_for} is not known.", name=path)
    return value


def pump_of(site: Site) -> Pump:
    """The site's pump: by its pasted table, else an invented one by its key.

    Raises InputError for a table that cannot be read and for a pump known by name only.
    """
    curve = site.best("pump.curve").text
    if curve:
        kind = DisplacementPump if site.value("pump.works") == "diaphragm" else Pump
        return kind(site.get("pump.id").text or "Your pump", read_points(curve))
    key = site.best("pump.id").text
    if key not in PUMPS:
        raise InputError(f"The curve of “{key}” is not known.", name="pump.curve")
    return PUMPS[key]


def pipe_named(text: str) -> pipes.Pipe:
    """The ``Pipe`` of "pe100-sdr11/32".  Raises InputError."""
    kind, _, size = text.partition("/")
    return pipes.pipe(kind, size)


def has_pump(site: Site) -> bool:
    """Whether there is a pump; without one the water runs by its height."""
    return site.value("pump.present") == "yes"


def set_pressure(site: Site) -> float | None:
    """Pressure at the pump that a speed control holds, Pa; None at fixed speed.

    p = p_set + w (z_sensor - z_pump)
    Raises InputError: not known.  Source: hydrostatics, without the friction up to the sensor.
    """
    held = site.value("pump.control") == "speed"
    return known(site, "pump.set", "The set pressure") + sensed_pressure(site) if held else None


def pump_height(site: Site) -> float:
    """Height of the pump above the datum, m; without one heights are counted from the datum."""
    return site.value("pump.height") or 0.0 if has_pump(site) else 0.0


def sensed_height(site: Site) -> float:
    """Height above the pump at which its control reads the pressure, m; 0: not known."""
    sensed = site.value("pump.sensed")
    return 0.0 if sensed is None else sensed - pump_height(site)


def sensed_pressure(site: Site) -> float:
    """What the pressure at the pump is above that which its control reads, Pa."""
    return density(site.value("water.temperature")) * GRAVITY * sensed_height(site)


def suction_lift(site: Site) -> float:
    """From the lowest water level up to the pump, m.  Raises InputError: not known."""
    return pump_height(site) - known(site, "water.level", "The lowest water level")


def suction_loss(site: Site, flow_m3s: float) -> float:
    """Head lost in the suction pipe, its foot valve and bends at a flow, m.  Raises InputError."""
    pipe = pipe_named(site.best("suction.pipe").text)
    length = known(site, "suction.length", "The length of the suction pipe")
    viscosity = kinematic_viscosity(site.value("water.temperature"))
    counts = (("foot", "suction.foot_valves"), ("elbow90", "suction.bends"))
    k = sum(
        site.value(path) * friction.fitting_coefficient(friction.BY_KEY[key], pipe.inside_m)
        for key, path in counts
    )
    return friction.total_loss(
        flow_m3s, pipe.inside_m, length, pipe.roughness_m, viscosity, k
    ) + site.value("suction.strainer")


def most_flow(site: Site, pressure_pa: float) -> float:
    """The most the site's pumps give at a pressure at their outlet, m3/s; 0 where they cannot.

    Q: H(Q / n) = p / w + z + h_s(Q)
    Raises InputError for what is not known.  Source: the pump's own table; definition.
    """
    given = site.value("pump.most_flow")
    if given is not None:
        return given
    pump, beside = pump_of(site), site.value("pump.count")
    weight = density(site.value("water.temperature")) * GRAVITY
    height = pressure_pa / weight + suction_lift(site)

    def spare(flow: float) -> float:
        return pump.head_and_slope(flow / beside)[0] - height - suction_loss(site, flow)

    return largest(spare, beside * pump.most_flow())


# The network ---------------------------------------------------------------------------------


def supply(site: Site) -> Supply:
    """A site as the supply that the network solver takes.

    Raises InputErrors for every cell that is needed and not known, and as its facts do.
    """
    base = pump_height(site)
    missing: list[InputError] = []
    sections = _rows(site, "sections", ("to", "length", "height", "pipe"), missing)
    outlets = _rows(site, "outlets", ("name", "at"), missing)
    # the water in which the sections begin without a pump is not one of them
    fed = joined(site) if has_pump(site) else joined(site) - {SOURCE}
    waters = [
        cells
        for table in ("tanks", "sources")
        for cells in _rows(site, table, ("name", "level"), missing, fed)
    ]
    if missing:
        raise InputErrors(missing)
    return Supply(
        _source(site),
        tuple(
            SectionRow(
                one["from"], one["to"], one["length"], one["height"] - base,
                pipe_named(one["pipe"]), one["bends"], one["fitting"],
            )
            for one in sections
        ),
        tuple(
            OutletRow(
                one["name"], one["at"], one["kind"], one["before"], one["after"],
                one["flow"], one["rated"], one["needed"],
            )
            for one in outlets
        ),
        tuple(TankRow(one["name"], one["level"] - base) for one in waters),
    )  # fmt: skip


def _rows(
    site: Site,
    table: str,
    needed: tuple[str, ...],
    missing: list[InputError],
    only: frozenset[str] | None = None,
) -> list[dict[str, Any]]:
    """Cells of a table's rows in SI by column; what is needed and unknown goes to ``missing``.

    only: folded names to which the rows are kept (None: all).
    """
    found = []
    columns = [slot.key for slot in BY_TABLE[table].columns]
    for index, row in enumerate(site.rows(table)):
        cells = {key: site.cell(table, row, key) for key in columns}
        if only is not None and fold(cells["name"] or "") not in only:
            continue  # it feeds nothing by its height
        found.append(cells)
        blank = [key for key in needed if cells[key] is None or cells[key] == ""]
        if blank:
            text = f"Row {index + 1} of the {table} is not complete."
            missing.append(InputError(text, name=f"{table}.{index}.{blank[0]}"))
    return found


def joined(site: Site) -> frozenset[str]:
    """Folded names of the points at which pipe sections begin or end."""
    rows = site.rows("sections")
    return frozenset(fold(site.word("sections", row, c)) for row in rows for c in ("from", "to"))


def _source(site: Site) -> Source | OpenWater:
    """The pump's side, or without a pump the open water."""
    if not has_pump(site):
        return open_water(site)
    return Source(
        pump=pump_of(site),
        set_pa=set_pressure(site),
        lift_m=suction_lift(site),
        suction_length_m=known(site, "suction.length", "The length of the suction pipe"),
        suction_pipe=pipe_named(site.best("suction.pipe").text),
        temperature_k=site.value("water.temperature"),
        altitude_m=site.value("place.altitude"),
        pumps=site.value("pump.count"),
        sensed_m=sensed_height(site),
    )


@dataclass(frozen=True)
class Solved:
    """A site solved at a moment; ``still``: the same with every outlet closed."""

    site: Site
    made: Built
    moving: Solution

    @cached_property
    def still(self) -> Solution:
        return self.made.solve(self.moving.network.with_open(()))

    @property
    def flow(self) -> float:
        """What runs through the pumps, or without one out of all outlets, m3/s."""
        pumps = [n for n in self.moving.flows if n.startswith(PUMP_PART)]
        through = sum(self.moving.flows[name] for name in pumps)
        return through if has_pump(self.site) else sum(self.moving.draws.values())


def solved(site: Site, moment: str = NOW, asked: str = "") -> Solved:
    """A site solved with what is open at a moment, and the asked outlet too.

    moment: ``NOW`` or ``THEN``; asked: name of an outlet ("": none).
    Raises InputErrors as ``supply`` and the solver do, named by table, row and column.
    """
    made = supply(site).built()
    network = made.before if moment == NOW else made.after
    if asked:
        network = _with(network, asked)
    return Solved(site, made, made.solve(network))


def _with(network: Network, asked: str) -> Network:
    outlets = tuple(replace(o, open=True) if o.name == asked else o for o in network.outlets)
    return replace(network, outlets=outlets)


# The way -------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Way:
    """The line of pipe sections to an outlet, source first.

    outlet, point: names; moment: ``NOW`` or ``THEN``; sections: ``Section``s, each with its share
    of ``flow``; rows: index of each in the table of sections; start: the point the line begins
    at; flow: the largest in any of them, m3/s; outlet_flow: what one outlet of that name gets;
    start_pa: running pressure at the start; static_pa, running_pa: at the point; held: the pump
    holds its set pressure; needed_pa: what the outlet needs.
    """

    outlet: str
    point: str
    moment: str
    start: str
    sections: tuple[Section, ...]
    rows: tuple[int, ...]
    flow: float
    outlet_flow: float
    start_pa: float
    static_pa: float
    running_pa: float
    needed_pa: float
    held: bool

    @property
    def length(self) -> float:
        return sum(section.length_m for section in self.sections)

    @property
    def climb(self) -> float:
        return sum(section.rise_m for section in self.sections)

    @property
    def single(self) -> bool:
        return len(self.sections) == 1

    @property
    def plain(self) -> bool:
        """One section with nothing in it but bends."""
        only = self.sections[0] if self.single else None
        return only is not None and not (only.device or only.reducer)

    def summary(self, reader: Reader) -> str:
        """What the form shows for it, in the reader's units.

        >>> from calc.site.demo import alder_terrace
        >>> way_to_outlet(alder_terrace(), "Wash-house shower").summary(Reader())
        '3 sections, 155 m'
        """
        count, unit = len(self.sections), reader.unit("length")
        length = f"{unit.from_si(self.length):.0f}"
        return f"{count} section{'' if count == 1 else 's'}, {length} {unit.symbol}"


def way_to_outlet(site: Site, outlet: str, moment: str = NOW) -> Way:
    """The ``Way`` to an outlet while it and all that is open at the moment run.

    Raises InputError where there is no such outlet, no way to it, or no steady state.
    """
    if not any(site.word("outlets", row, "name") == outlet for row in site.rows("outlets")):
        raise InputError(f"“{outlet}” is not an outlet of this site.", name="way")
    found = solved(site, moment, outlet)
    state = found.moving.outlet(outlet)
    node = found.moving.network.outlets_by_name[outlet].node
    names = [n for n in way_to(found.moving, node) if n in found.made.section_rows]
    if not names:
        raise InputError(f"No pipe section leads to “{outlet}”.", name="way")
    flow, sections = _sections(found, names)
    if flow < LEAST:  # nothing arrives: what the outlet should have, in every section
        flow = max(LEAST, state.wanted_m3s)
        sections = tuple(replace(section, share=1.0) for section in sections)
    start, start_pa, held = _start(found, names[0])
    count = found.moving.network.outlets_by_name[outlet].count
    return Way(
        outlet, node, moment, start, sections,
        tuple(found.made.section_rows[name] for name in names),
        flow, state.flow_m3s / max(1, count), start_pa, found.still.pressure(node),
        state.pressure_pa, state.wanted_pa, held,
    )  # fmt: skip


def _sections(found: Solved, names: list[str]) -> tuple[float, tuple[Section, ...]]:
    """(largest flow, sections with their shares of it)."""
    flows = [found.moving.flows[name] for name in names]
    most = max(abs(flow) for flow in flows)
    return most, tuple(
        _section(found, name, flow, abs(flow) / most if most > 0 else 1.0)
        for name, flow in zip(names, flows, strict=True)
    )


def _section(found: Solved, name: str, flow: float, share: float) -> Section:
    link = found.moving.network.link(name)
    row = found.made.supply.sections[found.made.section_rows[name]]
    heights = found.moving.network.heights
    rise = heights[link.end] - heights[link.start]
    return section_of(row, -rise if flow < -LEAST else rise, min(1.0, share), name)


def _start(found: Solved, first: str) -> tuple[str, float, bool]:
    """(point the line begins at, running pressure there in Pa, whether the pump holds it)."""
    link = found.moving.network.link(first)
    name = link.start if found.moving.flows[first] >= -LEAST else link.end
    pressure = found.moving.pressure(name)
    if name != PUMP:
        return name, 0.0, False
    wanted = set_pressure(found.site)
    held = wanted is not None and abs(pressure - wanted) <= HELD
    return name, wanted if held else pressure, held


def outlets(site: Site) -> tuple[str, ...]:
    """Names of the outlets a way can be asked to, those open now first."""
    rows = site.rows("outlets")
    names = [(site.word("outlets", row, "name"), row) for row in rows]
    running = [name for name, row in names if name and site.cell("outlets", row, "before")]
    return tuple(dict.fromkeys((*running, *(name for name, _ in names if name))))
