"""What is used: a library of statistics, printed tables of fixtures and of animals."""

import numpy as np
from scipy import stats

from calc import demand, practice
from calc.units import DAY, GALLON_US, LITRE, MINUTE
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    MEMORY,
    PRACTICE,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip

SUBJECT, MODULE = "What is used", "demand"
GPM = GALLON_US / MINUTE
KINDS = ((4, 2.0, 0.045), (5, 1.5, 0.02), (3, 3.0, 0.01), (2, 3.5, 0.055), (1, 10.0, 0.05))
SCIPY = library("scipy")
UPC = "Uniform Plumbing Code, demand table without flush valves"
IPC = "International Plumbing Code 2018"
RENEWABLE = "Journal of Renewable Energy (2017) 8504283"
KANSAS = "Kansas State University, Livestock Watering Handbook"
UNDP = "UNDP (2006), as quoted by The Open University"

_BINOMIAL = [(4, 0.045, 1), (20, 0.02, 2), (60, 0.1, 6), (500, 0.003, 4)]
_AT_LEAST = [(4, 0.045, 2), (12, 0.02, 1), (60, 0.1, 14)]


def on_a_grid(kinds):
    """Chances by numpy's convolution of scipy's binomials on a grid of half a gallon a minute."""
    total = np.ones(1)
    for number, gpm, p in kinds:
        one = np.zeros(round(number * gpm * 2) + 1)
        one[:: round(gpm * 2)] = stats.binom.pmf(np.arange(number + 1), number, p)
        total = np.convolve(total, one)
    return total


def _chances():
    return demand.flow_chances([(n, q * GPM, p) for n, q, p in KINDS])


def _of_use(share):
    """gpm, of moments in which water runs, by numpy."""
    grid = on_a_grid(KINDS)
    return (int(np.searchsorted(np.cumsum(grid[1:]) / (1 - grid[0]), share)) + 1) / 2


CHANCES = (
    *table(SUBJECT, MODULE, "Chance that {2} of {0} taps run, each {1:g} of the time", _BINOMIAL,
           lambda n, p, k: demand.binomial(n, p)[k], source=SCIPY, kind=LIBRARY, near=part(1e-11),
           against=lambda n, p, k: stats.binom.pmf(k, n, p), place="binomial distribution"),
    *table(SUBJECT, MODULE, "Chance that {2} or more of {0} taps run, each {1:g} of the time",
           _AT_LEAST, demand.at_least, source=SCIPY, kind=LIBRARY, near=part(1e-11),
           against=lambda n, p, k: stats.binom.sf(k - 1, n, p), place="binomial distribution"),
    *table(SUBJECT, MODULE, "Flow not exceeded in {0:g} of all moments, 15 taps of five kinds",
           [(0.5,), (0.9,), (0.99,), (0.999,)],
           lambda share: demand.quantile(_chances(), share) / GPM,
           source="Convolution on a grid, in the tests with numpy", kind=INDEPENDENT,
           near=give(1e-8), unit="gpm",
           against=lambda share: int(np.searchsorted(np.cumsum(on_a_grid(KINDS)), share)) / 2),
    *table(SUBJECT, MODULE, "The same, of moments in which water runs, {0:g} of them",
           [(0.9,), (0.99,)],
           lambda share: demand.quantile(demand.running(_chances()), share) / GPM,
           source="Convolution on a grid, in the tests with numpy", kind=INDEPENDENT,
           near=give(1e-8), unit="gpm", against=_of_use),
)  # fmt: skip


def wistort(scale):
    """gpm: the 99th percentile of a normal distribution, Q = sum npq + z sqrt(sum npq2 (1-p))."""
    mean = sum(n * scale * p * q for n, q, p in KINDS)
    spread = np.sqrt(sum(n * scale * p * (1 - p) * q**2 for n, q, p in KINDS))
    return mean + 2.326 * spread


def _village(scale):
    kinds = [(n * scale, q * GPM, p) for n, q, p in KINDS]
    return demand.quantile(demand.flow_chances(kinds), 0.99) / GPM


def _units(key):
    return next(one.units for one in demand.FIXTURES if one.key == key)


def _tap(key):
    return next(one.flow for one in demand.FIXTURES if one.key == key) / GPM


TABLES = (
    *table(SUBJECT, MODULE, "Flow for {0} fixture units",
           [(1, 3.0), (2, 5.0), (4, 8.0), (8, 12.8), (15, 17.5), (30, 23.3), (50, 29.1)],
           lambda units: demand.fixture_unit_flow(units) / GPM, source=UPC, kind=PUBLISHED,
           near=part(1e-12), unit="gpm", place="as printed in tables of the trade"),
    *table(SUBJECT, MODULE, "Fixture units of: {0}", [("sink", 1.4)], _units, source=IPC,
           kind=PUBLISHED, near=part(1e-12), place="table E103.3(2)"),
    *table(SUBJECT, MODULE, "Fixture units of: {0}",
           [("shower", 1.4), ("toilet", 2.2), ("washer", 1.4)], _units, source=IPC, kind=MEMORY,
           near=part(1e-12), place="table E103.3(2)"),
    *table(SUBJECT, MODULE, "Flow of {0} times 15 taps, 99 % of moments", [(40,), (80,)], _village,
           source="R. Wistort (1994), Peak Water Demand Study (2017)", kind=MEMORY,
           near=part(0.05), unit="gpm", against=wistort,
           why="the distribution is skewed and stepped"),
    *table(SUBJECT, MODULE, "Flow of tap: {0}",
           [("shower", 2.0), ("sink", 2.0), ("hose", 10.0), ("trough", 6.0)], _tap,
           source="Usual flows of taps", kind=PRACTICE, near=part(1e-9), unit="gpm"),
)  # fmt: skip


def _drinks(key):
    """gal a day."""
    return next(one.daily for one in demand.ANIMALS if one.key == key) * DAY / GALLON_US


def _animals(source, kind, rows, unit="gal/day"):
    # the middle of what is printed, and half of its span
    return [
        check
        for key, low, high in rows
        for check in table(SUBJECT, MODULE, "Drunk a day by: {0}", [(key, (low + high) / 2)],
                           _drinks, source=source, kind=kind,
                           near=give((high - low) / 2 * (1 + 1e-9)), unit=unit,
                           why=f"printed as {low:g} to {high:g}")
    ]  # fmt: skip


LIVESTOCK = (
    *_animals(
        KANSAS, MEMORY, [("cattle", 10.0, 15.0), ("nursing", 11.0, 18.0), ("dairy", 15.0, 30.0)]
    ),
    # for a sheep or a goat 2 gal, a tenth either way; for 100 chickens 6 to 12
    *_animals(RENEWABLE, PUBLISHED, [("goats", 1.8, 2.2), ("hens", 0.06, 0.12)]),
)
PEOPLE = (
    *table(SUBJECT, MODULE, "Used a day by a person, service level {0}",
           [(1, 20.0), (2, 50.0), (3, 100.0)], lambda at: demand.SERVICE[at][1] * DAY / LITRE,
           source=UNDP, kind=PUBLISHED, near=part(1e-9), unit="L"),
    *table(SUBJECT, "practice", "Used a day by a person, taps in the house", [(100.0,)],
           lambda: practice.DAILY_PERSON * DAY / LITRE, source=UNDP, kind=PUBLISHED,
           near=part(1e-9), unit="L", place="upper end of 50 to 100 L"),
    *table(SUBJECT, MODULE, "Water for 1 mm on a hectare", [(10.0,)],
           lambda: demand.irrigation(1e4, 1e-3, 1.0) * DAY, kind=MEMORY, near=part(1e-6), unit="m³",
           source="FAO Irrigation and Drainage Paper 56", place="chapter 1"),
)  # fmt: skip

CHECKS = (*CHANCES, *TABLES, *LIVESTOCK, *PEOPLE)
