"""What would mend a short outlet: each change made in the rows and solved again.

A change is tried in the order of its usual cost, own order: look after the filter, turn the
set pressure up, a second filter beside the first, wider pipe (by the plastic it takes), another
pump.  Nothing is said to cure that the solved network does not show.
"""

import itertools
import math
from dataclasses import dataclass, replace

from calc import pipes
from calc.errors import InputError
from calc.network import Run
from calc.pumps_demo import PUMPS
from calc.sheets.keep_up_case import FILTERS, PUMP_PART, SUCTION, Case, Site
from calc.units import PSI

MOST_RUNS = 3  # runs of pipe changed at once, own choice: more is a new supply
MOST_SIZES = 3  # sizes up on one run, own choice
STEP = {"metric": 0.1e5, "us": 1.0 * PSI}  # Pa, to which a set pressure is rounded up
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
        return not self.case.after.short

    def pressure(self, name):
        """Running pressure of an outlet with the change, Pa."""
        return self.case.after.outlet(name).pressure_pa


def tried(rows, case, reader):
    """Changes in the order of their usual cost, up to one that cures.

    Where no digging is needed for that, the wider pipe that would do it too comes after.
    """
    found = []
    if not case.short:
        return ()
    for make in (_clean, _set_higher, _second_filter, _wider, _larger_pump):
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
        if change.cures or not change.case.after.pump(PUMP_PART).held:
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


def _larger_pump(rows, case, reader):
    """The invented pumps with more head, set as high as it then takes."""
    supply = rows.supply
    for pump in PUMPS.values():
        if pump.shut_off_head <= supply.pump.shut_off_head:
            continue
        new = replace(rows, supply=replace(supply, pump=pump))
        try:
            change = Change(f"use the {pump.name[0].lower()}{pump.name[1:]}", new, new.case(case))
            if change.case.after.short:
                for higher in _set_higher(new, change.case, reader):
                    text = f"{change.text} and {higher.text}"
                    change = Change(text, higher.rows, higher.case)
            yield change
        except InputError:
            continue
