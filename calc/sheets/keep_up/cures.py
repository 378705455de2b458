"""What would mend a short outlet: each change made in the rows and solved again.

A change is tried in the order of its usual cost, own order: look after the filter, turn the
set pressure up, a second filter beside the first, wider pipe (by the plastic it takes), a second
pump, another pump, a cistern up the hill; for a pump short of suction, a wider suction pipe or a
pump nearer to the water.  Nothing is said to cure that the solved network does not show.
"""

import itertools
import math
from dataclasses import dataclass, replace

from calc.errors import InputError
from calc.network.parts import Run
from calc.page.form import Row
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.sheets.keep_up.case import FILTERS, PUMP, PUMP_PART, SUCTION, Case, Site, fold
from calc.units import PSI

MOST_RUNS = 3  # runs of pipe changed at once, own choice: more is a new supply
MOST_SIZES = 3  # sizes up on one run, own choice
STEP = {"metric": 0.1e5, "us": 1.0 * PSI}  # Pa, to which a set pressure is rounded up
MOST_PUMPS = 2  # side by side as a cure, own choice
FILL = 1.0  # m, by which the pump must reach over a cistern to fill it, own choice
CISTERN, CISTERN_WAY = "hill cistern", 50.0  # name; m of pipe to it, own choice: the hill is yours
SHORTEST = 1.0  # m, shortest suction pipe thought of, own choice
MARGIN = 1.05  # share of a shortfall added to a set pressure at a time


@dataclass(frozen=True)
class Rows:
    """The inputs a change works on: the pump and the three tables."""

    supply: object
    runs: tuple
    taps: tuple
    tanks: tuple

    def case(self, before=None):
        """Solved anew; ``before``: a ``Case`` to begin from."""
        return Case(Site(self.supply, self.runs, self.taps, self.tanks), before)

    def with_runs(self, changed):
        """``changed``: index of a run -> its columns to change."""
        runs = tuple(
            replace(row, numbers={**row.numbers, **changed.get(i, {})})
            for i, row in enumerate(self.runs)
        )
        return replace(self, runs=runs)


@dataclass(frozen=True)
class Change:
    """A change that was tried. ``rows``: as they are with it; ``case``: solved with it."""

    text: str
    rows: Rows
    case: Case

    @property
    def cures(self):
        return not self.case.after.short and not self.case.starved

    def pressure(self, name):
        """Running pressure of an outlet with the change, Pa."""
        return self.case.after.outlet(name).pressure_pa


class SuctionChange(Change):
    """A change to the suction: it cures where the pump has suction head enough with it."""

    @property
    def cures(self):
        return not self.case.starved


def tried(rows, case, reader):
    """Changes in the order of their usual cost, up to one that cures.

    Where no digging is needed for that, the wider pipe that would do it too comes after.
    """
    if case.starved:
        makers = (_suction,)  # until that is mended, what an outlet gets is not what is shown
    elif case.short:
        makers = (_clean, _set_higher, _second_filter, _wider, _second_pump, _larger_pump, _cistern)
    else:
        return ()
    found = []
    for make in makers:
        for change in make(rows, case, reader):
            found.append(change)
            if change.cures:
                break
        if found and found[-1].cures:
            break
    if found and found[-1].cures and make in (_clean, _set_higher, _second_filter):
        pipe = next(
            (one for one in itertools.islice(_wider(rows, case, reader), 4) if one.cures), None
        )
        found += [pipe] if pipe else []
    return tuple(found)


def _run_index(case, name):
    return list(case.site.run_rows).index(name)


def _filters(case):
    """Indexes of the runs on the way to the worst outlet that hold a filter."""
    for link in case.way:
        row = case.site.run_rows.get(link.name)
        if row is not None and row.extra in FILTERS:
            yield _run_index(case, link.name), row, link.name


def _clean(rows, case, _reader):
    for index, row, name in _filters(case):
        if row.extra == "dirty":
            new = rows.with_runs({index: {"extra": "filter"}})
            yield Change(f"clean or change the filter on {name}", new, new.case(case))


def _second_filter(rows, case, _reader):
    """Two filters side by side pass half the flow each: a quarter of the loss."""
    for index, row, name in _filters(case):
        new = rows.with_runs({index: {"extra": "twin"}})
        yield Change(f"fit two filters side by side on {name}", new, new.case(case))


def _set_higher(rows, case, reader):
    """Turn the set pressure up by what is missing, until it is enough or too much."""
    supply, step = rows.supply, STEP[reader.system]
    if supply.set_pa is None or not case.after.pump(PUMP_PART).held:
        return
    most, change = _most_set(case), None
    set_pa, missing = supply.set_pa, case.after.short[0].short_pa
    for _ in range(4):
        set_pa = step * math.ceil((set_pa + MARGIN * missing) / step - 1e-9)
        if set_pa > most:
            break
        new = replace(rows, supply=replace(supply, set_pa=set_pa))
        change = Change(
            f"set the pump at {reader.both(set_pa, 'pressure')}",
            new,
            new.case(change.case if change else case),
        )
        if not change.case.after.short or not change.case.after.pump(PUMP_PART).held:
            break
        missing = change.case.after.short[0].short_pa
    if change is not None:
        yield change


def _most_set(case):
    """The highest set pressure that every pipe's rating and the pump allow, Pa."""
    site, weight = case.site, case.weight
    limits = [weight * (site.supply.pump.shut_off_head - site.supply.lift)]
    for link in case.after.network.links:
        if isinstance(link, Run) and link.name != SUCTION and link.pipe.rating_pa is not None:
            lowest = min(case.after.network.heights[n] for n in (link.start, link.end))
            rating = pipes.rating_at(link.pipe, site.supply.temperature)
            limits.append(rating + weight * lowest)
    return min(limits)


def _wider(rows, case, _reader):
    """One run a size, two or three up; then the next run with it: least plastic first.

    The widest of all is tried before the others: if it does not cure, none of them can.
    """
    lossy = [link for link in case.way if link.name in case.site.run_rows]
    lossy.sort(key=lambda link: -case.after.loss(link.name))
    chosen, options = lossy[:MOST_RUNS], []
    for count in range(1, len(chosen) + 1):
        for up in range(1, MOST_SIZES + 1):
            sizes = {link.name: _larger(link.pipe, up) for link in chosen[:count]}
            options.append({name: pipe for name, pipe in sizes.items() if pipe is not None})
    options = [sizes for sizes in options if sizes]
    if not options:
        return
    widest = _with_pipes(rows, case, options[-1])
    if not widest.cures:
        yield widest
        return
    for sizes in sorted(options, key=lambda sizes: _plastic(chosen, sizes)):
        yield _with_pipes(rows, case, sizes)


def _with_pipes(rows, case, sizes):
    """The ``Change`` to other pipes by run."""
    changed = {
        _run_index(case, name): {"pipe": f"{pipe.kind}/{pipe.size}"} for name, pipe in sizes.items()
    }
    words = " and ".join(f"{pipe.label} from {name}" for name, pipe in sizes.items())
    new = rows.with_runs(changed)
    return Change(f"lay {words.replace(' – ', ' to ')}", new, new.case(case))


def _larger(pipe, up):
    """The pipe so many sizes up in its kind, or the largest; None where it is that already."""
    sizes = pipes.sizes(pipe.kind)
    index = next(i for i, one in enumerate(sizes) if one.size == pipe.size)
    return sizes[min(index + up, len(sizes) - 1)] if index < len(sizes) - 1 else None


def _plastic(links, sizes):
    """Goes with what the new pipe weighs: length times outside diameter squared, m3."""
    return sum(
        link.length_m * sizes[link.name].outside_m ** 2 for link in links if link.name in sizes
    )


def _suction(rows, case, reader):
    """A wider suction pipe; then the pump as near to the water as the lift allows."""
    supply = rows.supply
    for up in range(1, MOST_SIZES + 1):
        pipe = _larger(supply.suction_pipe, up)
        if pipe is not None:
            new = replace(rows, supply=replace(supply, suction_pipe=pipe))
            yield SuctionChange(f"lay the suction pipe in {pipe.label}", new, new.case(case))
    least = max(abs(supply.lift), SHORTEST)
    if supply.suction_length > least:
        moved = supply.suction_length - least
        first = {
            i: {"long": row.long + moved}
            for i, row in enumerate(rows.runs)
            if fold(row.numbers["from"]) == fold(PUMP)
        }
        new = replace(rows.with_runs(first), supply=replace(supply, suction_length=least))
        text = (
            f"bring the pump {reader.both(moved, 'length')} nearer to the water, at its own height"
        )
        yield SuctionChange(text, new, new.case(case))


def _second_pump(rows, case, reader):
    """One more pump of the same kind beside it, set as high as it then takes."""
    supply = rows.supply
    if supply.beside >= MOST_PUMPS:
        return
    new = replace(rows, supply=replace(supply, beside=supply.beside + 1))
    yield _and_higher("set one more pump like it beside it", new, new.case(case), reader)


def _and_higher(text, rows, case, reader):
    """A ``Change``, with the set pressure raised too where some outlet is still short."""
    change = Change(text, rows, case)
    if case.after.short:
        for higher in _set_higher(rows, case, reader):
            change = Change(f"{text} and {higher.text}", higher.rows, higher.case)
    return change


def _cistern(rows, case, reader):
    """A cistern joined to the worst outlet's place, as low as serves and the pump can still fill."""
    tap, weight = case.main, case.weight
    supply, height = rows.supply, case.after.network.heights[tap.node]
    ceiling = supply.pump.shut_off_head - supply.lift - FILL
    if supply.set_pa is not None:
        ceiling = min(ceiling, supply.set_pa / weight - FILL)
    line = next((one for one in reversed(case.way) if one.name in case.site.run_rows), None)
    if line is None or any(fold(row.name) == fold(CISTERN) for row in rows.tanks):
        return
    level, change = height + MARGIN * tap.after.wanted_pa / weight + FILL, None
    for _ in range(4):
        if level > ceiling:
            break
        new = _with_cistern(rows, tap.node, line, level)
        change = Change(
            f"stand a cistern where its water is {reader.both(level, 'length')} above the pump, "
            f"joined to {tap.node} by {reader.both(CISTERN_WAY, 'length')} of pipe",
            new,
            new.case(case),
        )
        if not change.case.after.short:
            break
        level += MARGIN * change.case.after.short[0].short_pa / weight
    if change is not None:
        yield change


def _with_cistern(rows, node, line, level):
    """The rows with a cistern and the run to it, in the pipe of ``line``."""
    tank = Row(f"tanks.{len(rows.tanks) + 1}", {"name": CISTERN, "up": level})
    run = {"from": node, "to": CISTERN, "long": CISTERN_WAY, "up": level, "bends": 2}
    run |= {"pipe": f"{line.pipe.kind}/{line.pipe.size}", "extra": "none"}
    added = Row(f"runs.{len(rows.runs) + 1}", run)
    return replace(rows, tanks=(*rows.tanks, tank), runs=(*rows.runs, added))


def _larger_pump(rows, case, reader):
    """The invented pumps with more head, set as high as it then takes."""
    supply = rows.supply
    for pump in PUMPS.values():
        if pump.shut_off_head <= supply.pump.shut_off_head:
            continue
        new = replace(rows, supply=replace(supply, pump=pump))
        try:
            text = f"use the {pump.name[0].lower()}{pump.name[1:]}"
            yield _and_higher(text, new, new.case(case), reader)
        except InputError:
            continue
