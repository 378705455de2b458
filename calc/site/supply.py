"""A supply from its rows: pipe sections, outlets and tanks as a network, every fault at its row.

Faults are named by table, row and column ("sections.2.start"); who asked maps them to a form.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

from calc import practice
from calc.errors import InputError, InputErrors, RangeError
from calc.network import solve as network_solve
from calc.network.outlets import (
    FIXED_LEAST,
    CompensatingDripper,
    FixedFlow,
    LimitedShower,
    Orifice,
    Outlet,
    OutletLaw,
)
from calc.network.parts import Device, Level, Link, Network, Place, PumpSet, Reducer, Run
from calc.network.state import Solution
from calc.pipe import fittings, friction
from calc.pipe.line import Section
from calc.site.rows import PUMP, SOURCE
from calc.site.rows import fold as folded
from calc.site.supply_rows import OpenWater, OutletRow, SectionRow, Source, TankRow

WATER, INLET, PUMP_PART, SUCTION = "the water", "the pump’s inlet", "the pump", "the suction pipe"
BEND = friction.BY_KEY["elbow90"]
SAME_HEIGHT = 0.05  # m, two heights given for one point may differ by; our choice


@dataclass(frozen=True)
class Supply:
    """The rows of a whole supply, with one pump or with open water where it begins."""

    source: Source | OpenWater
    sections: tuple[SectionRow, ...]
    outlets: tuple[OutletRow, ...]
    tanks: tuple[TankRow, ...] = ()

    @property
    def pumping(self) -> Source | None:
        """The pump's side; None where there is no pump."""
        return self.source if isinstance(self.source, Source) else None

    @property
    def start(self) -> str:
        """Name of the point at which the sections begin."""
        return PUMP if isinstance(self.source, Source) else SOURCE

    def built(self) -> Built:
        """The rows as a network.  Raises InputErrors with every fault of the rows."""
        builder = _Builder(self.sections, self.outlets, self.tanks, self.start)
        links, outlets = builder.parts(self.source)
        if builder.faults:
            raise InputErrors(builder.faults)
        places = tuple(Place(name, height) for name, height in builder.heights.items())
        return Built(
            self, places, tuple(builder.levels), links, outlets,
            tuple(dict.fromkeys(builder.names.values())),
            builder.where, builder.section_rows, builder.outlet_rows,
        )  # fmt: skip


def row_faults(
    sections: tuple[SectionRow, ...],
    outlets: tuple[OutletRow, ...],
    tanks: tuple[TankRow, ...],
    start: str = PUMP,
) -> tuple[InputError, ...]:
    """Every fault of the rows by themselves, whatever pump there is: names, points, heights.

    start: ``PUMP``, or ``SOURCE`` where there is none.  A number that is not known may be NaN.
    Raises nothing.
    """
    builder = _Builder(sections, outlets, tanks, start)
    builder.parts(None)
    return tuple(builder.faults)


@lru_cache(256)  # of a few names an answer asks hundreds of times
def fold(name: str) -> str:
    """A name as it is compared: whatever its spaces, capitals and characters with no print."""
    return folded(plain(name))


@lru_cache(256)
def plain(name: str) -> str:
    """A name without characters that do not print (they could turn a sentence round)."""
    return "".join(one for one in name if one.isprintable()).strip()


def outlet_of(row: OutletRow, node: str, where: str) -> Outlet:
    """The network ``Outlet`` of a row, one of it, open, with the levels of ``practice``.

    node: point it is at; where: "outlets.2", for what is missing.  Raises InputError at its cell.
    """
    kind = practice.OUTLET_BY_KEY[row.kind]
    flow = kind.flow if row.flow_m3s is None else row.flow_m3s
    rated = kind.rated if row.rated_pa is None else row.rated_pa
    if flow is None:
        raise InputError(
            "Enter the flow of one: this kind has no usual flow.", name=f"{where}.flow"
        )
    if rated is None and row.kind != "steady":
        raise InputError("Enter the pressure that goes with the flow.", name=f"{where}.rated")
    works, best = kind.levels(row.rated_pa)
    if row.needed_pa is not None:
        works = best = row.needed_pa
    law = _law(row.kind, flow, rated)
    works = law.least_pa if works is None else works
    return Outlet(row.name, node, law, wanted_pa=works, rated_pa=best)


def _law(kind: str, flow: float, rated: float | None) -> OutletLaw:
    if kind == "steady" or rated is None:
        return FixedFlow(flow, FIXED_LEAST if rated is None else rated)
    if kind == "saver":
        return LimitedShower(flow, rated, flow)
    if kind == "drip":
        return CompensatingDripper(flow, rated, max(practice.DRIP_HOLDS_TO, 2 * rated))
    return Orifice(flow, rated)


@dataclass(frozen=True)
class Built:
    """A supply as parts of a network.

    shown: names a reader knows, points and tanks, in order; where: name of a part -> the fault's
    place in the rows; section_rows, outlet_rows: name -> index of its row.
    """

    supply: Supply
    places: tuple[Place, ...]
    levels: tuple[Level, ...]
    links: tuple[Link, ...]
    outlets: tuple[Outlet, ...]
    shown: tuple[str, ...]
    where: dict[str, str]
    section_rows: dict[str, int]
    outlet_rows: dict[str, int]

    @cached_property
    def before(self) -> Network:
        """The network with the outlets open that are open before."""
        return self._network([row.before for row in self.supply.outlets])

    @cached_property
    def after(self) -> Network:
        """The network with the outlets open that are open after."""
        return self._network([row.after for row in self.supply.outlets])

    def _network(self, counts: list[int]) -> Network:
        outlets = tuple(
            replace(outlet, count=max(1, count), open=count > 0)
            for outlet, count in zip(self.outlets, counts, strict=True)
        )
        source = self.supply.source
        return Network(
            self.places, self.levels, self.links, outlets,
            source.temperature_k, source.altitude_m, source.hottest_k,
        )  # fmt: skip

    def solve(self, network: Network, near: Solution | None = None) -> Solution:
        """Solved; raises InputErrors named by the rows they concern."""
        try:
            return network_solve.solve(network, near)
        except InputError as error:
            raise InputErrors(
                named(one, self.where.get(one.name or "", "sections"))
                for one in getattr(error, "errors", (error,))
            ) from error


def section_of(row: SectionRow, rise_m: float, share: float, name: str) -> Section:
    """The ``Section`` of a row. rise_m: far end above near end, m; share: of the line's flow."""
    part = fittings.BY_KEY[row.part]
    counted: tuple[tuple[friction.Fitting, float], ...] = ()
    counted += ((BEND, row.bends),) if row.bends else ()
    counted += ((part.fitting, 1),) if part.fitting is not None else ()
    return Section(row.pipe, row.length_m, rise_m, counted, share, part.device, part.reducer, name)


def named(error: InputError, name: str) -> InputError:
    """The same error under another name."""
    if isinstance(error, RangeError):
        return RangeError(name, error.value, error.low, error.high, error.quantity, error.remedy)
    return InputError(error.message, name=name)


class _Builder:
    """Goes through the rows once, keeping every fault on the way."""

    def __init__(
        self,
        sections: tuple[SectionRow, ...],
        outlets: tuple[OutletRow, ...],
        tanks: tuple[TankRow, ...],
        start: str,
    ) -> None:
        self.sections, self.outlets, self.tanks = sections, outlets, tanks
        self.faults: list[InputError] = []
        self.where: dict[str, str] = {}
        self.names = {fold(PUMP): start}  # as compared -> as first written
        self.heights: dict[str, float] = {}
        self.levels: list[Level] = []
        self.reserved: set[str] = set()
        if start == PUMP:
            self.heights[PUMP] = 0.0
            self.reserved = {fold(name) for name in (WATER, INLET, PUMP_PART, SUCTION)}
        else:  # rows may call it by either name
            self.names[fold(SOURCE)] = start
            self.levels.append(Level(start, 0.0))
            self.where[start] = "source.level"
        self.section_rows: dict[str, int] = {}
        self.outlet_rows: dict[str, int] = {}

    def parts(
        self, source: Source | OpenWater | None
    ) -> tuple[tuple[Link, ...], tuple[Outlet, ...]]:
        """(links, outlets) of the rows. source: None where only their faults are asked."""
        links: list[Link] = []
        if isinstance(source, OpenWater):
            self.levels[0] = Level(SOURCE, source.level_m)
        elif source is not None:
            self.levels.append(Level(WATER, -source.lift_m))
        self._tanks()
        self._ends()
        if isinstance(source, Source):
            links += self._suction(source)
        links += self._sections()
        made = [self._outlet(at, row) for at, row in enumerate(self.outlets)]
        return tuple(links), tuple(one for one in made if one is not None)

    def _fault(self, text: str, name: str) -> None:
        self.faults.append(InputError(text, name=name))

    # Points ------------------------------------------------------------------------------------

    def _new(self, text: str, cell: str, what: str) -> str | None:
        """A name of its own, as it was first written; None where it cannot be one."""
        key = fold(text)
        if not key:
            self._fault(f"Enter {what}.", cell)
            return None
        if key in self.reserved or key in self.names:
            self._fault(f"“{plain(text)}” is taken already. Give another name.", cell)
            return None
        self.names[key] = plain(text)
        return self.names[key]

    def _tanks(self) -> None:
        for at, row in enumerate(self.tanks):
            name = self._new(row.name, f"tanks.{at}.name", "a name for the tank")
            if name is not None:
                self.levels.append(Level(name, row.level_m, fills=True))
                self.where[name] = f"tanks.{at}"

    def _ends(self) -> None:
        """Far ends of sections are the points; two may end at one point, at one height."""
        tanks = {level.name for level in self.levels}
        for at, row in enumerate(self.sections):
            name = self.names.get(fold(row.end))
            if name is None:
                name = self._new(row.end, f"sections.{at}.end", "the point where it ends")
                if name is None:
                    continue
                self.heights[name] = row.height_m
                self.where[name] = f"sections.{at}"
            elif name not in tanks and abs(self.heights[name] - row.height_m) > SAME_HEIGHT:
                text = f"“{name}” has another height in a row above. Give both the same."
                self._fault(text, f"sections.{at}.height")

    def _point(self, text: str, cell: str) -> str | None:
        """The known point a cell names; None where there is none."""
        name = self.names.get(fold(text))
        if name is None and not fold(text):
            self._fault("Choose a point.", cell)
        elif name is None:
            text = f"No pipe section ends at “{plain(text)}” yet."
            self._fault(f"{text} Choose a point, or add a section to it.", cell)
        return name

    # Links -------------------------------------------------------------------------------------

    def _suction(self, source: Source) -> Iterator[Link]:
        k = suction_k(source.suction_pipe.inside_m)
        self.where |= {
            SUCTION: "source.suction_length", PUMP_PART: "source.pump",
            WATER: "source.lift", INLET: "source.lift",
        }  # fmt: skip
        self.heights[INLET] = 0.0
        yield Run(SUCTION, WATER, INLET, source.suction_pipe, source.suction_length_m, k)
        for number in range(1, source.pumps + 1):
            name = PUMP_PART if number == 1 else f"{PUMP_PART} {number}"
            self.where[name] = "source.pumps" if number > 1 else "source.pump"
            yield PumpSet(name, INLET, PUMP, source.pump, source.set_pa)

    def _sections(self) -> Iterator[Link]:
        for at, row in enumerate(self.sections):
            start = self._point(row.start, f"sections.{at}.start")
            end = self.names.get(fold(row.end))
            if start is None or end is None:
                continue
            if start == end:
                self._fault("It must end at another point than it starts.", f"sections.{at}.end")
                continue
            name = f"{start} – {end}"
            while name in self.section_rows:
                name += " (another)"
            self.section_rows[name] = at
            yield from self._section(at, row, name, start, end)

    def _section(self, at: int, row: SectionRow, name: str, start: str, end: str) -> Iterator[Link]:
        """The pipe, and at its far end the device that is in it."""
        part = fittings.BY_KEY[row.part]
        k = section_of(row, 0.0, 1.0, name).k
        self.where[name] = f"sections.{at}"
        if part.device is None and part.reducer is None:
            yield Run(name, start, end, row.pipe, row.length_m, k, check=part.one_way)
            return
        before = f"{end}, before the device"
        while before in self.heights:
            before += "’"
        self.heights[before] = row.height_m
        self.where[before] = f"sections.{at}"
        yield Run(name, start, before, row.pipe, row.length_m, k)
        if part.device is not None:
            device = f"the filter from {name.replace(' – ', ' to ')}"
            yield Device(device, before, end, *part.device)
        elif part.reducer is not None:
            called = "break-pressure tank" if part.vented else "pressure-reducing valve"
            device = f"the {called} from {name.replace(' – ', ' to ')}"
            yield Reducer(device, before, end, *part.reducer)
        self.where[device] = f"sections.{at}.part"

    # Outlets -----------------------------------------------------------------------------------

    def _outlet(self, at: int, row: OutletRow) -> Outlet | None:
        """The outlet of a row, with a name of its own; None where it has a fault."""
        where, name = f"outlets.{at}", plain(row.name)
        if not name:
            self._fault("Give the outlet a name.", f"{where}.name")
        elif name in self.outlet_rows:
            self._fault(f"“{name}” is taken already. Give another name.", f"{where}.name")
        node = self._point(row.at, f"{where}.at")
        if node in {level.name for level in self.levels}:
            self._fault(f"“{node}” is open water. Choose a point on a pipe.", f"{where}.at")
        try:
            found = outlet_of(replace(row, name=name), node or "", where)
        except InputError as error:
            self.faults.append(error)
            return None
        self.outlet_rows[name] = at
        self.where.setdefault(name, where)
        return found


def suction_k(bore_m: float) -> float:
    """Loss coefficient of a foot valve and one 90° bend in a suction pipe of this bore (m), -.

    Raises RangeError for a bore out of range.  Source: Crane TP-410, from memory.
    """
    parts = (friction.BY_KEY[one] for one in ("foot", "elbow90"))
    return sum(friction.fitting_coefficient(one, bore_m) for one in parts)
