"""Supplies with a fault put in, and readings taken of them: what the finder is tried with.

What is injected also has what the finder does not know: roughness, losses of fittings and heights
of its own, each about 5 % off, a severity between those the finder tries, and readings with errors.
"""

import functools
import math
import random
from dataclasses import dataclass, replace

from calc.errors import InputError
from calc.network import faults
from calc.network.fault_kinds import BY_KEY
from calc.network.fault_readings import Expected, Reading
from calc.network.parts import Run
from calc.network.suspects import Finder
from calc.page.form import read_values
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.keep_up.case import supply_of
from calc.site.watched import watched
from tests.sheets import random_supplies

OFF = 0.05  # standard deviation of what the finder does not know
BAR = 1e5
ERRORS = {"pressure": 0.05 * BAR, "suction": 0.02 * BAR, "volts": 0.3, "level": 0.1, "starts": 2.0,
          "standby": 0.1 * BAR, "closed": 0.1 * BAR}  # fmt: skip
SHARES = {"bucket": 0.05, "watts": 0.05}  # of the value


@dataclass(frozen=True)
class Trial:
    """A finder, the readings that can be taken of its supply, and how many outlets stand open."""

    name: str
    finder: Finder
    design: tuple[Reading, ...]


def of_supply(name, supply):
    """A ``Trial``; None where the supply cannot be solved or has nothing to read."""
    try:
        built = supply.built()
        whole = watched(built, volts=24.0)
        finder = Finder(whole)
        finder.sound.solution(())
        design = tuple(_design(whole, built, finder))
        for one in design:
            finder.slopes(one)
    except InputError:
        return None
    return Trial(name, finder, design) if len(design) >= 5 else None


def _design(whole, built, finder):
    rows = {row.name: row for row in built.supply.outlets}
    every = tuple(sorted((one.name, max(1, rows[one.name].after)) for one in whole.network.outlets))
    far = max(whole.network.outlets, key=lambda one: whole.network.heights[one.node])
    yield from _asked(finder, Reading("pressure", 0, 0, whole.start))
    yield from _asked(finder, Reading("pressure", 0, 0, far.node))
    for node in dict.fromkeys((whole.start, *(one.node for one in whole.network.outlets))):
        yield from _asked(finder, Reading("pressure", 0, 0, node, every))
    for one in whole.network.outlets:
        yield from _asked(finder, Reading("bucket", 0, 0, one.name, ((one.name, 1),)))
    for kind in ("suction", "watts"):
        yield from _asked(finder, Reading(kind, 0, 0, "", every))
    little = min(whole.network.outlets, key=lambda one: one.full_m3s / one.count)
    yield from _asked(finder, Reading("starts", 0, 0, "", ((little.name, 1),)))
    for kind in ("volts", "level", "standby", "closed"):
        if whole.pumps or kind == "level":
            yield from _asked(finder, Reading(kind, 0, 0))


def _asked(finder, reading):
    value = finder.expected(faults.NOTHING, 1.0, reading)
    if value is not None:
        error = ERRORS.get(reading.kind) or max(SHARES[reading.kind] * abs(value), 1e-6)
        yield replace(reading, value=value, error=error)


@functools.cache
def trials(count):
    """Alder Terrace, and random supplies that can be solved, ``count`` in all."""
    form = sheet("keep_up")
    found = [of_supply("Alder Terrace", supply_of(read_values(form, State())))]
    for seed in range(10_000, 20_000):
        if len(found) == count:
            break
        try:
            values = read_values(form, random_supplies.state(seed))
            made = values and of_supply(f"random {seed}", supply_of(values))
        except InputError:
            continue
        if made and _fair(made):
            found.append(made)
    return tuple(found)


def _fair(trial):
    """Whether water runs out where it should: nobody looks for a fault in what never worked."""
    sound = trial.finder.sound
    buckets = [one for one in trial.design if one.kind == "bucket"]
    outlets = trial.finder.supply.network.outlets_by_name
    return bool(buckets) and all(
        sound.of(one) >= 0.5 * outlets[one.at].full_m3s / outlets[one.at].count > 0
        for one in buckets
    )


def off(supply, rng):
    """The supply as it is: roughness, fittings and heights other than was said."""

    def share():
        return max(0.5, 1 + OFF * rng.gauss(0, 1))

    network = supply.network
    links = tuple(
        faults.roughly(one, share(), share()) if isinstance(one, Run) else one
        for one in network.links
    )
    start = network.heights[supply.start]
    shared = {}  # a place before a device has the height of the place after it
    for place in network.places:
        fixed = place.name in (supply.start, supply.inlet)
        shared.setdefault(place.height_m, 1.0 if fixed else share())
    places = tuple(
        replace(one, height_m=start + (one.height_m - start) * shared[one.height_m])
        for one in network.places
    )
    levels = tuple(
        replace(one, level_m=start + (one.level_m - start) * share())
        if one.name == supply.water and supply.water != supply.start
        else one
        for one in network.levels
    )
    return replace(supply, network=replace(network, links=links, places=places, levels=levels))


def severity(kind, rng):
    """One between the kind's mildest and worst, none of those the finder tries."""
    marks = BY_KEY[kind].severities
    low, high = math.log(marks[0]), math.log(marks[-1])
    return math.exp(rng.uniform(low, high))


def case(trial, seed, truths=None, keep=0.8):
    """(faults put in, readings) of one seed; truths: the faults, or None to draw them.

    keep: share of the readings that are taken.
    """
    rng = random.Random(seed)
    supply = trial.finder.supply
    if truths is None:
        truths = drawn(trial, rng)
    real = off(supply, rng)
    for truth in truths:
        real = faults.changed(real, truth, severity(truth.kind, rng))
    expected = Expected(real, trial.finder.sound)
    taken = [one for one in trial.design if rng.random() < keep]
    readings = []
    for one in taken:
        value = expected.of(one)
        if value is not None:  # else the display of such a pump says nothing
            readings.append(replace(one, value=value + rng.gauss(0, 1) * one.error))
    return truths, tuple(readings)


def drawn(trial, rng):
    """No fault in one of ten, two in one of ten, else one: kinds are equally likely."""
    draw = rng.random()
    if draw < 0.1:
        return (faults.NOTHING,)
    kinds = {}
    for one in trial.finder.suspects[1:]:
        kinds.setdefault(one.kind, []).append(one)
    picked = rng.sample(sorted(kinds), 2 if draw < 0.2 else 1)
    return tuple(rng.choice(kinds[kind]) for kind in picked)
