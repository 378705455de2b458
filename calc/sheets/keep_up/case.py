"""A site from its rows: the same supply before and after taps open. Numbers for keep_up."""

from dataclasses import dataclass, replace
from functools import cached_property

from calc.errors import InputError
from calc.network import findings as network_findings
from calc.network import solve as network_solve
from calc.network.outlets import Outlet
from calc.network.parts import Device, Level, Network, Place, PumpSet, Reducer, Run
from calc.network.way import EQUAL
from calc.pipe import friction
from calc.sheets.keep_up.rows import law_of, pipe_of
from calc.units import LITRE, METRE_OF_WATER, MINUTE

WATER, INLET, PUMP_PART, SUCTION = "the water", "the pump’s inlet", "the pump", "the suction pipe"
PUMP = "pump"  # where the runs begin
STILL = 1e-9  # m3/s, below which nothing flows: what is left is the solver's last bits
LPM = LITRE / MINUTE  # m3/s
# A 1 in cartridge housing, clean and due for a change: common practice, no source
FILTERS = {
    "filter": 0.15e5 / METRE_OF_WATER,
    "dirty": 0.7e5 / METRE_OF_WATER,
    "twin": 0.15e5 / METRE_OF_WATER / 4,  # two side by side: half the flow each
}  # m at:
FILTER_FLOW = 40 * LPM  # m3/s
REDUCER_FLOW, REDUCER_LOSS = 30 * LPM, 4.0  # m3/s, m wide open, 3/4 in: common practice, no source
REDUCERS = {"r10": 1.0e5, "r15": 1.5e5, "r20": 2.0e5, "r30": 3.0e5}  # Pa held
MARGIN = 1.1  # of the pressure wanted: less to spare is "only just", own choice
FITTINGS = {"meter": "meter", "check": "spring", "stop": "globe"}


@dataclass(frozen=True)
class Supply:
    """Everything but the rows, in SI: pump and its setting, source, suction, water, place."""

    pump: object
    set_pa: float | None
    lift: float
    suction_length: float
    suction_pipe: object
    temperature: float
    altitude: float
    beside: int = 1  # pumps of this kind side by side, each behind its check valve


def fold(name):
    """Names are the same whatever their spaces and capitals."""
    return " ".join(name.casefold().split())


class Site:
    """Rows as a network. ``where``: name of each part -> row (or cell) to mend."""

    def __init__(self, supply, runs, taps, tanks):
        self.supply, self.where = supply, {}
        self._names = {fold(PUMP): PUMP}
        self._heights = {PUMP: 0.0}
        self._reserved = {fold(name) for name in (WATER, INLET, PUMP_PART, SUCTION)}
        self.levels = [Level(WATER, -supply.lift)]
        self.run_rows, self.tap_rows = {}, {}
        self._tanks(tanks)
        self._ends(runs)
        self.links = [*self._suction(), *self._runs(runs)]
        self._outlets = [self._outlet(row) for row in taps]

    @property
    def shown(self):
        """Names a reader knows, of places and tanks, in the order of the rows."""
        return tuple(self._names.values())

    # Places ----------------------------------------------------------------------------------

    def _tanks(self, rows):
        for row in rows:
            name = self._new(row.name, row.cell("name"))
            self.levels.append(Level(name, row.up, fills=True))
            self.where[name] = row.place

    def _new(self, text, cell):
        """A name of its own, as it was first written."""
        if not text.strip():
            raise InputError("Give it a name.", name=cell)
        key = fold(text)
        if key in self._reserved or key in self._names:
            raise InputError(f"“{text}” is taken already. Give another name.", name=cell)
        self._names[key] = text
        return text

    def _ends(self, rows):
        """Far ends of runs are the places; two runs may end at one place, at one height."""
        tanks = {level.name for level in self.levels}
        for row in rows:
            key = fold(row.to)
            if key not in self._names:
                name = self._new(row.to, row.cell("to"))
                self._heights[name] = row.up
                self.where[name] = row.place
            name = self._names[key]
            if name not in tanks and abs(self._heights[name] - row.up) > 0.05:
                raise InputError(
                    f"“{name}” has another height in a row above. Give both the same.",
                    name=row.cell("up"),
                )

    def _place(self, text, cell):
        """The known place a cell names."""
        name = self._names.get(fold(text))
        if name is None:
            known = ", ".join(self._names.values())
            said = f"“{text}” is no place here." if text.strip() else "No place is given."
            raise InputError(f"{said} Use the end of a run: {known}.", name=cell)
        return name

    # Links -----------------------------------------------------------------------------------

    def _suction(self):
        supply = self.supply
        bore = supply.suction_pipe.inside_m
        k = sum(friction.fitting_coefficient(friction.BY_KEY[f], bore) for f in ("foot", "elbow90"))
        self.where |= {SUCTION: "suctionlong", PUMP_PART: "pump", WATER: "lift", INLET: "lift"}
        self._heights[INLET] = 0.0
        yield Run(SUCTION, WATER, INLET, supply.suction_pipe, supply.suction_length, k)
        for number in range(1, supply.beside + 1):
            name = PUMP_PART if number == 1 else f"{PUMP_PART} {number}"
            self.where[name] = "pumps" if number > 1 else "pump"
            yield PumpSet(name, INLET, PUMP, supply.pump, supply.set_pa)

    def _runs(self, rows):
        taken = set()
        for row in rows:
            start = self._place(row.numbers["from"], row.cell("from"))
            end = self._names[fold(row.to)]
            if start == end:
                raise InputError("It starts and ends at the same place.", name=row.cell("to"))
            name = f"{start} – {end}"
            while name in taken:
                name += " (another)"
            taken.add(name)
            self.run_rows[name] = row
            yield from self._run(row, name, start, end)

    def _run(self, row, name, start, end):
        """The pipe, and before its far end the device that sits in it."""
        pipe = pipe_of(row.pipe)
        k = row.bends * friction.fitting_coefficient(friction.BY_KEY["elbow90"], pipe.inside_m)
        if row.extra in FITTINGS:
            fitting = friction.BY_KEY[FITTINGS[row.extra]]
            k += friction.fitting_coefficient(fitting, pipe.inside_m)
        self.where[name] = row.place
        if row.extra not in FILTERS and row.extra not in REDUCERS:
            yield Run(name, start, end, pipe, row.long, k, check=row.extra == "check")
            return
        before = f"{end}, before the device"
        while before in self._heights:
            before += "’"
        self._heights[before] = row.up
        self.where[before] = row.place
        yield Run(name, start, before, pipe, row.long, k)
        if row.extra in FILTERS:
            part = f"the filter on {name}"
            yield Device(part, before, end, FILTER_FLOW, FILTERS[row.extra])
        else:
            part = f"the reducer on {name}"
            yield Reducer(part, before, end, REDUCERS[row.extra], REDUCER_FLOW, REDUCER_LOSS)
        self.where[part] = row.cell("extra")

    # Outlets ---------------------------------------------------------------------------------

    def _outlet(self, row):
        """(row, outlet of one) with the name made its own."""
        if not row.name.strip():
            raise InputError("Give the outlet a name.", name=row.cell("name"))
        if row.name in self.tap_rows:
            raise InputError(f"“{row.name}” is taken already.", name=row.cell("name"))
        self.tap_rows[row.name] = row
        node = self._place(row.at, row.cell("at"))
        if node in {level.name for level in self.levels}:
            raise InputError(f"“{node}” is open water. Use a place on a pipe.", name=row.cell("at"))
        law, wanted = law_of(row)
        self.where.setdefault(row.name, row.place)
        return row, Outlet(row.name, node, law, wanted_pa=wanted)

    def network(self, moment):
        """The ``Network`` with the outlets open that are open at a moment: "now" or "then"."""
        outlets = tuple(
            replace(outlet, count=max(1, row.numbers[moment]), open=row.numbers[moment] > 0)
            for row, outlet in self._outlets
        )
        places = tuple(Place(name, height) for name, height in self._heights.items())
        supply = self.supply
        return Network(
            places,
            tuple(self.levels),
            tuple(self.links),
            outlets,
            supply.temperature,
            supply.altitude,
        )

    def solve(self, network, start=None):
        """Solve; an error is said at the row it concerns."""
        try:
            return network_solve.solve(network, start)
        except InputError as error:
            raise InputError(error.message, name=self.where.get(error.name, "")) from error


@dataclass(frozen=True)
class Tap:
    """An outlet at both moments; ``before`` and ``after`` are ``OutletState``."""

    name: str
    node: str
    before: object
    after: object
    row: object

    @property
    def drop(self):
        """Pressure lost as the others open, Pa; 0 where it was not open before."""
        kept = self.before.open and self.after.open
        return self.before.pressure_pa - self.after.pressure_pa if kept else 0.0


class Case:
    """A site solved before and after; ``near``: a ``Case`` of a like site to begin from."""

    def __init__(self, site, near=None):
        self.site, self._near = site, near
        self.after = site.solve(site.network("then"), near.after if near else None)

    @cached_property
    def before(self):
        return self.site.solve(self.site.network("now"), (self._near or self).after)

    @cached_property
    def taps(self):
        return tuple(
            Tap(
                outlet.name,
                outlet.node,
                self.before.outlet(outlet.name),
                self.after.outlet(outlet.name),
                self.site.tap_rows[outlet.name],
            )
            for outlet in self.after.network.outlets
        )

    @property
    def weight(self):
        return self.after.network.weight

    @cached_property
    def opened(self):
        """Outlets of which more are open after than before."""
        return tuple(tap for tap in self.taps if tap.row.then > tap.row.now)

    @cached_property
    def running(self):
        """Outlets open after."""
        return tuple(tap for tap in self.taps if tap.row.then > 0)

    @cached_property
    def short(self):
        """Open outlets that get less than wanted after, worst first (``after`` is enough)."""
        if not self.after.short:
            return ()
        missing = [tap for tap in self.running if tap.after.short_pa > 0]
        return tuple(sorted(missing, key=lambda tap: -tap.after.short_pa))

    @cached_property
    def main(self):
        """The outlet the answer is about: the worst off; else, if some is only just well off,
        that one; else the one that loses most."""
        if self.short:
            return self.short[0]
        if self.tight:
            return self.tight[0]
        return max(self.running, key=lambda tap: tap.drop, default=None)

    @cached_property
    def tight(self):
        """Open outlets with little more than wanted after, the nearest first."""
        near = [t for t in self.running if t.after.pressure_pa < MARGIN * t.after.wanted_pa]
        return tuple(sorted(near, key=lambda t: t.after.pressure_pa / t.after.wanted_pa))

    @cached_property
    def way(self):
        """Links from the source to ``main`` after, against the flow, source first."""
        return way_to(self.after, self.main.node) if self.main else ()

    @cached_property
    def starved(self):
        """Whether the pump would cavitate: less NPSH than it needs, or water boiling before it."""
        found = network_findings.suction(self.after)
        return any(finding.row in (PUMP_PART, INLET) for finding in found)


def way_to(solution, node):
    """Links by which most of a place's water comes to it, source first.

    Where nothing flows, the way the rows run; of equal parts side by side, the first.
    """
    arriving = {}
    for link in solution.network.links:
        flow = solution.flows[link.name]
        flow = 0.0 if abs(flow) < STILL else flow
        end, start = (link.end, link.start) if flow >= 0 else (link.start, link.end)
        if end not in arriving or abs(flow) > EQUAL * arriving[end][0]:
            arriving[end] = (abs(flow), link, start)
    way, seen = [], set()
    while node in arriving and node not in seen:
        seen.add(node)
        _, link, start = arriving[node]
        way.append(link)
        node = start
    return tuple(reversed(way))
