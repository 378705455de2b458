"""What would cure an outlet that falls short: every change tried by solving again, cheapest first.

A change counts as a cure only if the outlet then gets what it wants and no new harm comes of
it: no pipe over its rating, no pump without suction head, no two sources that fight.
"""

from dataclasses import dataclass, replace

from calc.errors import InputError
from calc.network.findings import troubles as findings
from calc.network.parts import Device, Level, PumpSet, Run
from calc.network.solve import solve
from calc.network.state import OutletState, Solution
from calc.network.way import kind_on, open_state, way_to
from calc.pipe import pipes

STEP_PA = 1e4  # Pa, a set pressure is raised by steps of 0.1 bar
STEP_M = 0.5  # m, a cistern's level by half metres
SHORTEST = 1.0  # m, shortest suction line thought of
TRIED = 3  # runs with the greatest loss that are candidates for a wider pipe at each step
MOST_WIDENINGS = 24
BLOCKS = (
    "over-rating",
    "npsh",
    "npsh-margin",
    "below-vacuum",
    "fight",
    "too-hot",
    "over",
    "no-water",
)  # harm, by kind of trouble


@dataclass(frozen=True)
class Costs:
    """What changes cost against each other; 1 is a metre of 25 mm pipe, not laid.

    The defaults are invented, to rank by effort only; give your own for real work.
    pipe_m: a metre of pipe of 25 mm bore, growing with the bore's area; dig_m: laying a metre;
    setting: changing a set pressure; device, pump, cistern: each with its fitting.
    """

    pipe_m: float = 1.0
    dig_m: float = 2.0
    setting: float = 1.0
    device: float = 60.0
    pump: float = 400.0
    cistern: float = 500.0

    def run(self, pipe, length_m):
        """Cost of a run of this pipe, laid."""
        return length_m * (self.dig_m + self.pipe_m * (pipe.inside_m / 0.025) ** 2)


@dataclass(frozen=True)
class Hill:
    """Where a cistern could stand: highest level (m), and the pipe that would join it."""

    name: str
    join: str
    level_m: float
    length_m: float
    pipe: pipes.Pipe


@dataclass(frozen=True)
class Change:
    """One thing changed: row, what of it, before and after; SI of ``quantity``, "" for words."""

    row: str
    what: str
    before: object
    after: object
    quantity: str = ""


@dataclass(frozen=True)
class Cure:
    """A change tried. kind: "widen", "set", "reducer", "pump", "device", "cistern", "suction".

    cured: the outlet gets what it wants and nothing is harmed; why: what stands against it.
    solution: the supply with the change, solved.
    """

    kind: str
    row: str
    text: str
    changes: tuple
    cost: float
    cured: bool
    why: str
    before: OutletState
    after: OutletState
    solution: Solution


def cures(solution, outlet, costs=None, hills=()):
    """Every change worth trying for an outlet that falls short, cures first, cheapest first.

    solution: ``Solution``; outlet: name of an open outlet; costs: ``Costs`` (None: the invented
    ones); hills: ``Hill``s where a cistern could stand.  Returns a tuple of ``Cure``; those that
    do not cure come last, the one that helps most first.  Raises InputError for an unknown or
    shut outlet and as ``solve`` does.
    """
    trial = _Trial(solution, outlet, costs or Costs())
    found = [
        *_set_pressures(trial),
        *_widen(trial),
        *_devices(trial),
        *_second_pumps(trial),
        *_cisterns(trial, hills),
        *_suctions(trial),
    ]
    return tuple(sorted(found, key=lambda one: (not one.cured, _rank(one))))


def _rank(cure):
    return cure.cost if cure.cured else -cure.after.pressure_pa


class _Trial:
    """An outlet's case: what it gets now, the way to it, and how a change is judged."""

    def __init__(self, solution, outlet, costs):
        self.solution, self.outlet, self.costs = solution, outlet, costs
        self.network = solution.network
        self.before = open_state(solution, outlet)
        self.place = self.network.outlets_by_name[outlet].node
        self.way = way_to(solution, self.place)
        self.harms = {(one.row, one.kind) for one in findings(solution) if one.kind in BLOCKS}

    def of(self, *kinds):
        """Links on the way of these kinds."""
        network, way = self.network, self.way
        return [network.link(name) for name in way if kind_on(network, way, name) in kinds]

    def solved(self, network):
        return solve(network, self.solution)

    def gets(self, solution):
        """Whether the outlet gets what it wants (harm is looked at once, in the end)."""
        state = solution.outlet(self.outlet)
        return state.short_pa == 0 and state.flow_m3s > 0

    def judge(self, kind, row, text, changes, cost, solution, why=""):
        """The ``Cure`` of a change solved: does it serve, and does it harm?"""
        harm = [
            one for one in findings(solution)
            if one.kind in BLOCKS and ((one.row, one.kind) not in self.harms or self._own(one))
        ]  # fmt: skip
        cured = self.gets(solution) and not harm
        if not cured:
            why = (
                f"{harm[0].kind} at {harm[0].row}" if harm else why
            ) or f"“{self.outlet}” still gets too little."
        after = solution.outlet(self.outlet)
        return Cure(
            kind,
            row,
            text,
            changes,
            cost,
            cured,
            "" if cured else why,
            self.before,
            after,
            solution,
        )

    def _own(self, finding):
        """Old harm that has to go for the outlet to be served: suction on its own way."""
        links = [self.network.link(name) for name in self.way]
        ends = {end for link in links for end in (link.start, link.end)} | set(self.way)
        return finding.kind in (
            "npsh",
            "npsh-margin",
            "below-vacuum",
            "no-water",
        ) and finding.row in ends | {self.outlet}


def _least(count, serves):
    """The least of 1..count for which ``serves`` holds (it holds from there on); None if none."""
    if count < 1 or not serves(count):
        return None
    low, high = 0, count
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if serves(middle) else (middle, high)
    return high


def _set_pressures(trial):
    """A higher set pressure of each pump and reducer on the way, as far as ratings let it."""
    standing = solve(trial.network.with_open(()), trial.solution)
    for link in trial.of("pump", "reducer"):
        if link.set_pa is None:
            continue
        room, why = _room(trial, link, standing)
        tried = {}

        def serves(steps, link=link, tried=tried):
            held = replace(link, set_pa=link.set_pa + steps * STEP_PA)
            tried[steps] = trial.solved(trial.network.with_link(held))
            return trial.gets(tried[steps])

        most = int(room / STEP_PA)
        if most < 1:
            continue
        steps = _least(most, serves) or most
        changes = (
            Change(link.name, "set", link.set_pa, link.set_pa + steps * STEP_PA, "pressure"),
        )
        kind = "set" if isinstance(link, PumpSet) else "reducer"
        text = f"Raise the set pressure of “{link.name}”."
        yield trial.judge(kind, link.name, text, changes, trial.costs.setting, tried[steps], why)


def _room(trial, link, standing):
    """(Pa by which a set pressure can rise, what ends it)."""
    network, heads = standing.network, standing.heads
    if isinstance(link, PumpSet):
        top = heads[link.start] + link.pump.head_and_slope(0.0, link.speed)[0]
        why = f"“{link.name}” itself cannot hold more."
    else:
        top, why = heads[link.start], f"No more pressure than that comes to “{link.name}”."
    room = network.weight * (top - heads[link.end])
    for run in network.links:
        if isinstance(run, Run) and run.pipe.rating_pa is not None:
            rated = pipes.rating_at(run.pipe, network.temperature_k)
            spare = rated - max(standing.pressure(run.start), standing.pressure(run.end))
            if spare < room:
                room, why = spare, f"“{run.name}” is not rated for more pressure than that."
    return max(room, 0.0), why


def _wider(run):
    """The run in the next size of its kind; None where there is none."""
    try:
        larger = [p for p in pipes.sizes(run.pipe.kind) if p.inside_m > run.pipe.inside_m]
    except InputError:
        return None
    return replace(run, pipe=larger[0]) if larger else None


def _widen(trial):
    """The worst run wider, and as many runs as it takes, each step the one that gives the most."""
    runs = [run for run in trial.of("pipe") if isinstance(run, Run)]
    if not runs:
        return
    worst = max(runs, key=lambda run: abs(trial.solution.loss(run.name)))
    alone = _widened(trial, [worst])
    if alone:
        yield alone
    several = _widened(trial, runs) if len(runs) > 1 else None
    if several and (alone is None or several.changes != alone.changes):
        yield several


def _widened(trial, runs):
    """The ``Cure`` of widening these runs step by step until the outlet is served."""
    solution, names = trial.solution, [run.name for run in runs]
    for _ in range(MOST_WIDENINGS):
        best = _next_size(trial, solution, names)
        if best is None:
            break
        solution = best
        if trial.gets(solution):
            break
    changed = [n for n in names if solution.network.link(n) != trial.network.link(n)]
    if not changed:
        return None
    changes, cost = [], 0.0
    for name in changed:
        old, new = trial.network.link(name), solution.network.link(name)
        changes.append(Change(name, "size", old.pipe.label, new.pipe.label))
        cost += trial.costs.run(new.pipe, new.length_m)
    rows = " and ".join(f"“{change.row}” in {change.after}" for change in changes)
    why = "Wider pipe alone leaves too little."
    text = f"Lay {rows}."
    return trial.judge("widen", changed[0], text, tuple(changes), cost, solution, why)


def _next_size(trial, solution, names):
    """The solution with one of these runs a size wider that gives most for its cost."""
    network = solution.network
    runs = sorted((network.link(n) for n in names), key=lambda r: -abs(solution.loss(r.name)))
    wider = [run for run in map(_wider, runs) if run is not None][:TRIED]
    tried = [(run, solve(network.with_link(run), solution)) for run in wider]

    def worth(one):
        run, after = one
        gain = after.pressure(trial.place) - solution.pressure(trial.place)
        return gain / trial.costs.run(run.pipe, run.length_m)

    return max(tried, key=worth)[1] if tried else None


def _devices(trial):
    """A filter, meter or valve of twice the flow at the same loss."""
    for link in trial.of("device"):
        if isinstance(link, Device):
            larger = replace(link, flow_m3s=2 * link.flow_m3s)
            changes = (Change(link.name, "flow", link.flow_m3s, larger.flow_m3s, "flow"),)
            text = f"Fit a “{link.name}” of twice the size."
            after = trial.solved(trial.network.with_link(larger))
            yield trial.judge("device", link.name, text, changes, trial.costs.device, after)


def _second_pumps(trial):
    """A second pump like the first, side by side; with a higher set pressure if it takes that."""
    for link in trial.of("pump"):
        two, after = _pair(trial, link, link.set_pa)
        changes = (Change(link.name, "pumps", 1, 2, "number"),)
        text = f"Set a second pump like “{link.name}” beside it, each with a check valve."
        yield trial.judge("pump", link.name, text, changes, trial.costs.pump, after)
        if link.set_pa is None or trial.gets(after):
            continue
        room, why = _room(trial, link, solve(two.with_open(()), after))
        tried = {}

        def serves(steps, link=link, tried=tried):
            tried[steps] = _pair(trial, link, link.set_pa + steps * STEP_PA)[1]
            return trial.gets(tried[steps])

        most = int(room / STEP_PA)
        if most < 1:
            continue
        steps = _least(most, serves) or most
        high = Change(link.name, "set", link.set_pa, link.set_pa + steps * STEP_PA, "pressure")
        text = text[:-1] + ", and raise the set pressure of both."
        cost = trial.costs.pump + trial.costs.setting
        yield trial.judge("pump", link.name, text, (*changes, high), cost, tried[steps], why)


def _pair(trial, link, set_pa):
    """(network, solution) with two pumps of one set pressure in the place of one."""
    taken = {one.name for one in trial.network.links}
    name = next(n for i in range(2, 99) if (n := f"{link.name} {i}") not in taken)
    first = replace(link, check=True, set_pa=set_pa)
    rest = tuple(one for one in trial.network.links if one.name != link.name)
    network = replace(trial.network, links=(*rest, first, replace(first, name=name)))
    return network, trial.solved(network)


def _cisterns(trial, hills):
    """A cistern at each hill, as low as serves."""
    for hill in hills:
        bottom = trial.network.heights.get(hill.join)
        if bottom is None:
            raise InputError(f"“{hill.name}” joins at “{hill.join}”, which is no place here.")
        tried = {}

        def serves(steps, hill=hill, bottom=bottom, tried=tried):
            level = min(bottom + steps * STEP_M, hill.level_m)
            tried[steps] = trial.solved(with_cistern(trial.network, hill, level))
            return trial.gets(tried[steps])

        most = max(1, int(-(-(hill.level_m - bottom) // STEP_M)))
        steps = _least(most, serves) or most
        level = min(bottom + steps * STEP_M, hill.level_m)
        cost = trial.costs.cistern + trial.costs.run(hill.pipe, hill.length_m)
        changes = (Change(hill.name, "level", None, level, "length"),)
        text = f"Stand a cistern at “{hill.name}” and join it at “{hill.join}”."
        why = f"“{hill.name}” is not high enough."
        yield trial.judge("cistern", hill.name, text, changes, cost, tried[steps], why)


def with_cistern(network, hill, level_m):
    """The network with a cistern at a hill, joined through a check valve.

    network: ``Network``; hill: ``Hill``; level_m: of its water, m.  Returns ``Network``.
    """
    line = Run(f"{hill.name} line", hill.name, hill.join, hill.pipe, hill.length_m, 1.0, True)
    levels = (*network.levels, Level(hill.name, level_m))
    return replace(network, levels=levels, links=(*network.links, line))


def _suctions(trial):
    """A shorter and a wider suction line, where the pump lacks suction head or gains by it."""
    for run in trial.of("suction"):
        if not isinstance(run, Run):
            continue
        nearer = _nearer(trial, run)
        if nearer is not None:
            yield nearer
        wider = _wider(run)
        if wider is not None:
            after = trial.solved(trial.network.with_link(wider))
            changes = (Change(run.name, "size", run.pipe.label, wider.pipe.label),)
            text = f"Lay “{run.name}” in {wider.pipe.label}."
            cost = trial.costs.run(wider.pipe, run.length_m)
            yield trial.judge("suction", run.name, text, changes, cost, after)


def _nearer(trial, run):
    """The pump nearer to the water: suction as short as the lift, delivery longer by as much."""
    network, heights = trial.network, trial.network.heights
    least = max(abs(heights[run.end] - heights[run.start]), SHORTEST)
    delivery = next((one for one in trial.of("pipe") if isinstance(one, Run)), None)
    if least >= run.length_m or delivery is None:
        return None
    moved = run.length_m - least
    longer = replace(delivery, length_m=delivery.length_m + moved)
    changed = network.with_link(replace(run, length_m=least)).with_link(longer)
    changes = (
        Change(run.name, "length", run.length_m, least, "length"),
        Change(delivery.name, "length", delivery.length_m, longer.length_m, "length"),
    )
    text = (
        f"Bring the pump nearer to the water, at its own height: “{run.name}” as short as the lift."
    )
    cost = trial.costs.run(delivery.pipe, moved)
    return trial.judge("suction", run.name, text, changes, cost, trial.solved(changed))
