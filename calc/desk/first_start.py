"""What gauges and a bucket should show as a supply is filled and started, worked out."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.network.parts import PumpSet
from calc.network.static import NONE, highest_pressures
from calc.page.form import read_values
from calc.pipe import pipes
from calc.sheets.keep_up.case import solved, supply_of
from calc.sheets.parts import completed_more
from calc.sheets.parts.ways import has_pump
from calc.site.rows import PUMP
from calc.units import GALLON_US, LITRE

if TYPE_CHECKING:
    from calc.desk.work import Work
    from calc.network.parts import Network
    from calc.network.state import Solution
    from calc.sheets.keep_up.case import Case
    from calc.site.site import Site

HAIR = 1.0  # Pa; a pump within this of cut-out has reached it: the solver's last bits
BUCKETS = {"metric": 10 * LITRE, "us": 5 * GALLON_US}  # m3, a bucket to time; our choice
BUCKET_WORDS = {"metric": "10 L", "us": "5 gal"}
METERED = ("drip",)  # kinds of outlet that no bucket catches


@dataclass(frozen=True)
class AtOutlet:
    """What is expected at an outlet, Pa gauge and m3/s; None: not known, or not open; a pressure
    below 0: what it is short of getting any water.

    static_pa: nothing flows; alone_pa, alone_m3s: one of it open and no other; together_pa,
    together_m3s: with all that is open after.  A pump that a switch stops meanwhile makes them the
    most that is seen: alone_swings, together_swings.
    """

    name: str
    point: str
    kind: str
    static_pa: float | None
    alone_pa: float | None
    alone_m3s: float | None
    together_pa: float | None
    together_m3s: float | None
    alone_swings: bool = False
    together_swings: bool = False

    def seconds(self, bucket_m3: float) -> float | None:
        """Time to fill a bucket from this outlet alone, s.  t = V / Q

        bucket_m3: V, m3, above 0.  None where no flow is known, or none can be caught.
        """
        if self.kind in METERED or not self.alone_m3s:
            return None
        return bucket_m3 / self.alone_m3s


@dataclass(frozen=True)
class Start:
    """A site at its first start.  case: its whole supply solved."""

    site: Site
    case: Case

    @property
    def control(self) -> str:
        """ "held", "switch", "full", or "" where there is no pump."""
        source = self.case.supply.pumping
        if source is None:
            return ""
        if source.set_pa is not None:
            return "held"
        return "switch" if self.site.get("pump.control").text == "switch" else "full"

    @cached_property
    def rest(self) -> Network | None:
        """The network as its pump leaves it with everything closed; None: not known.

        A pressure switch stops the pump at cut-out, a speed control at its set pressure; a pump
        that nothing stops stands at its shut-off pressure.
        """
        network = self.case.after.network
        if self.control != "switch":
            return network
        stops = self.site.value("pump.cut_out") if self.site.get("pump.cut_out").known else None
        if stops is None:
            return None
        for link in network.links:
            if isinstance(link, PumpSet):
                network = network.with_link(replace(link, set_pa=stops))
        return network

    @cached_property
    def static(self) -> dict[str, float]:
        """Static pressure at every point, Pa gauge: p = p_0 - rho g h; {} where it is not known.

        Raises nothing.  Source: hydrostatics, by ``network.static``.
        """
        found = {} if self.rest is None else highest_pressures(self.rest)
        return {name: value for name, value in found.items() if value > NONE}

    @cached_property
    def worst(self) -> dict[str, float]:
        """Pressure at every point once every control has failed, Pa gauge."""
        found = highest_pressures(self.case.after.network, controlled=False)
        return {name: value for name, value in found.items() if value > NONE}

    @cached_property
    def weakest(self) -> float | None:
        """The lowest rating of a pipe at its hottest or of a part that was named, Pa; None: none
        is known."""
        heat = self.case.after.network.heat_k
        rated = []
        for row in self.case.supply.sections:
            try:
                rated.append(pipes.rating_at(row.pipe, heat))
            except InputError:
                continue  # no rating is known of this pipe, or not at that heat
        for path in ("pipes.weakest", "pressure_tank.rating"):
            if self.site.get(path).known:
                rated.append(self.site.value(path))
        return min(rated, default=None)

    @property
    def overloads(self) -> bool:
        """Whether the pump could go over the lowest rating once its control has failed."""
        most = max((self.worst[one] for one in self.points if one in self.worst), default=0.0)
        return self.weakest is not None and most > self.weakest

    @property
    def points(self) -> tuple[str, ...]:
        """Names of the points that pipe leads to, as they were written."""
        heights = self.case.after.network.heights
        return tuple(name for name in self.case.built.shown if name in heights)

    @cached_property
    def outlets(self) -> tuple[AtOutlet, ...]:
        return tuple(self._outlet(tap.name) for tap in self.case.taps)

    def _outlet(self, name: str) -> AtOutlet:
        tap = next(one for one in self.case.taps if one.name == name)
        pressure, flow, swings = self._alone(name)
        return AtOutlet(
            name, tap.node, tap.row.kind, self.static.get(tap.node), pressure, flow,
            tap.after.pressure_pa if tap.after.open else None,
            tap.after.flow_m3s if tap.after.open else None,
            swings, self._over(self.case.after),
        )  # fmt: skip

    def _over(self, found: Solution) -> bool:
        """Whether a pressure switch stops the pump although water runs."""
        if self.control != "switch" or not self.site.get("pump.cut_out").known:
            return False
        return found.pressure(PUMP) >= self.site.value("pump.cut_out") - HAIR

    def _alone(self, name: str) -> tuple[float | None, float | None, bool]:
        """(running pressure Pa, flow m3/s) with one of an outlet open and no other; whether the
        pump stops meanwhile: then they are what it gives as it stops."""
        if self.rest is None:
            return None, None, False
        network = self.rest.with_open((name,))
        one = tuple(replace(o, count=1) if o.name == name else o for o in network.outlets)
        try:
            found = self.case.built.solve(replace(network, outlets=one), self.case.after)
        except InputError:
            return None, None, False
        state = found.outlet(name)
        return state.pressure_pa, state.flow_m3s, self._over(found)

    @cached_property
    def crests(self) -> tuple[str, ...]:
        """Points higher than all that pipe joins them to, and no end of a line: air gathers."""
        return tuple(self._turning(1))

    @cached_property
    def lows(self) -> tuple[str, ...]:
        """Points lower than all that pipe joins them to: they can be drained."""
        return tuple(self._turning(-1))

    def _turning(self, sign: int) -> list[str]:
        heights, found = self.case.after.network.heights, []
        for name, others in self.joined.items():
            ends = sign > 0 and len(others) < 2
            if ends or name not in heights or name in self.waters:
                continue
            level = sign * heights[name]
            if others and all(level > sign * heights.get(one, heights[name]) for one in others):
                found.append(name)
        return found

    @property
    def waters(self) -> frozenset[str]:
        """Names of open water: tanks, and the source where there is no pump."""
        return frozenset(level.name for level in self.case.built.levels)

    @cached_property
    def joined(self) -> dict[str, tuple[str, ...]]:
        """Point -> the points that a pipe section joins it to."""
        network = self.case.after.network
        found: dict[str, list[str]] = {}
        for name in self.case.built.section_rows:
            run = network.run(name)
            end = self.past(run.end)
            found.setdefault(run.start, []).append(end)
            found.setdefault(end, []).append(run.start)
        return {name: tuple(others) for name, others in found.items()}

    def past(self, end: str) -> str:
        """The point at the end of a section, past the part that sits there."""
        if end in self.case.built.shown:
            return end
        links = self.case.after.network.links
        return next((one.end for one in links if one.start == end), end)


def pump_named(site: Site) -> bool:
    """Whether the site says which pump it is, by name or by its table; one that was taken for want
    of a name is none."""
    taken = completed_more.TAKEN
    return any(one.known and one.reason not in taken
               for one in map(site.get, completed_more.TOLD_OF_PUMP))  # fmt: skip


def start(work: Work) -> Start | None:
    """The first start of a site that was worked out; None where its supply is not known.

    A pump that nobody named gives none: readings of an invented one would be nobody's.
    Raises nothing.
    """
    part = work.part("keep_up")
    named = not has_pump(work.site) or pump_named(work.site)
    if part is None or part.answer is None or not named:
        return None
    values = read_values(part.sheet, part.state)
    return None if values is None else Start(work.site, solved(supply_of(values), values.ask))
