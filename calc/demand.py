"""Demand: the flow at once, counted in several ways, and the water of a day.

The chance of every total flow is worked out exactly, kind of outlet by kind of outlet: no curve is
read, so it holds for a cabin with three outlets as well as for a village.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from math import comb
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import require
from calc.practice import GPM
from calc.units import DAY, GALLON_US, LITRE

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    Tap = tuple[int, float, float]  # number there are, flow m3/s when open, chance that one is open
    Chances = tuple[tuple[float, float], ...]  # (flow m3/s, its chance), flows rising

CONFIDENCE = 0.99  # share of moments kept to: Peak Water Demand Study (2017), from memory
NEGLIGIBLE = 1e-15  # chance left out: below the rounding of the sums
EXACT_TOTALS = 8000  # different total flows up to which each is kept apart; our choice
SAME_FLOW = 1e-9  # of everything open: totals nearer than this are one, summed in another order
FINEST = 1e-7  # m3/s, finest step of the grid beyond that; our choice
MOST_BINS = 8000  # steps of the grid up to everything open; our choice
MOST_TAPS = 500  # of a kind


@dataclass(frozen=True)
class Fixture:
    """A kind of outlet.

    outlet: its key in ``practice.OUTLET_BY_KEY``, which has its flow; p: chance that one is open at
    a moment of the busiest hour; units: water supply fixture units, None where the flow is added
    as it is.
    """

    key: str
    name: str
    outlet: str
    p: float
    units: float | None
    source: str

    @property
    def flow(self) -> float:
        """m3/s when open."""
        flow = practice.OUTLET_BY_KEY[self.outlet].flow
        assert flow is not None, "a fixture has a usual flow"
        return flow


_STUDY = (
    "p: IAPMO/ASPE/WQRF Peak Water Demand Study (2017), from memory; units: International Plumbing "
    "Code, table E103.3(2), private use, from memory"
)
FIXTURES = (
    Fixture("shower", "Showers", "shower", 0.045, 1.4, _STUDY),
    # a kitchen sink; a wash basin alone has 0.7
    Fixture("sink", "Sinks and wash basins", "sink", 0.02, 1.4, _STUDY),
    Fixture("toilet", "Toilets with a cistern", "toilet", 0.01, 2.2, _STUDY),
    Fixture("washer", "Washing machines", "washer", 0.055, 1.4, _STUDY),
    Fixture("hose", "Hoses", "hose", 0.05, None, "p: common practice, no source"),
    # open for a short while, since it passes much: our choice
    Fixture("trough", "Trough float valves", "float", 0.03, None, "p: our choice"),
)


@dataclass(frozen=True)
class Drinker:
    """A kind of animal and what one drinks and spills. daily: m3/s over the day."""

    key: str
    name: str
    daily: float
    source: str


_STOCK = "Journal of Renewable Energy (2017) 8504283, table 1: "
_HANDBOOK = "Kansas State University, Livestock Watering Handbook, from memory: "
ANIMALS = (
    Drinker("goats", "Goats or sheep", 8 * LITRE / DAY, _STOCK + "2 gal a day (7.6 L)"),
    Drinker(
        "cattle", "Dry cows or horses", 50 * LITRE / DAY, _STOCK + "10 to 15 gal a day (38-57 L)"
    ),
    Drinker("hens", "Hens", 0.3 * LITRE / DAY, _STOCK + "6 to 12 gal a day for 100 (0.23-0.45 L)"),
    Drinker(
        "nursing",
        "Cows with a calf",
        18 * GALLON_US / DAY,
        _HANDBOOK + "11 to 18 gal a day, the upper",
    ),
    Drinker(
        "dairy",
        "Dairy cows in milk",
        30 * GALLON_US / DAY,
        _HANDBOOK + "15 to 30 gal a day, the upper",
    ),
)

_WHO = "WHO, Domestic Water Quantity, Service Level and Health (2020), from memory"
SERVICE = (  # name, m3/s a person, source
    ("Emergency: drinking, cooking, hands", 15 * LITRE / DAY, "Sphere Handbook, from memory"),
    ("Basic: carried from a tap nearby", 20 * LITRE / DAY, _WHO),
    ("Intermediate: one tap at the house", 50 * LITRE / DAY, _WHO),
    ("Optimal: taps in the house", practice.DAILY_PERSON, _WHO),
)

# Water supply fixture units -> gal/min, supply with flush tanks.  International Plumbing Code,
# table E103.3(3), after R. B. Hunter (1940), from memory; at 1, 2, 4, 8, 15, 30 and 50 units
# compared with a printed copy; the units in ``FIXTURES`` are the same code's.
_UNITS = (
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 35, 40, 45,
    50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200, 225, 250, 275, 300, 400, 500, 750, 1000,
)  # fmt: skip
_UNITS_GPM = (
    0, 3.0, 5.0, 6.5, 8.0, 9.4, 10.7, 11.8, 12.8, 13.7, 14.6, 15.4, 16.0, 16.5, 17.0, 17.5, 18.0,
    18.4, 18.8, 19.2, 19.6, 21.5, 23.3, 24.9, 26.3, 27.7, 29.1, 32.0, 35.0, 38.0, 41.0, 43.5, 48.0,
    52.5, 57.0, 61.0, 65.0, 70.0, 75.0, 80.0, 85.0, 105.0, 124.0, 170.0, 208.0,
)  # fmt: skip


def together(flows: Iterable[tuple[int, float]]) -> float:
    """Flow of taps that are certainly open together.

    Q = sum n q
    flows: (number, flow m3/s) pairs, numbers 0 or more.  Returns m3/s.
    Source: continuity.

    >>> round(together(((2, 1e-4), (1, 6e-4))), 12)
    0.0008
    """
    return sum(number * flow for number, flow in flows)


def binomial(number: int, p: float) -> tuple[float, ...]:
    """Chance of 0, 1, ... ``number`` taps open, each with chance p and independent.

    P(k) = C(n, k) p^k (1-p)^(n-k)
    number: whole number, 0 to 500; p: 0 to 1.  Returns a tuple of n + 1 chances.
    Raises RangeError outside.
    Source: binomial distribution, first used for outlets by R. B. Hunter, NBS report BMS65 (1940).

    >>> binomial(2, 0.5)
    (0.25, 0.5, 0.25)
    """
    require("number", number, 0, MOST_TAPS, "number", "Count the buildings in parts.")
    require("p", p, 0.0, 1.0, "number", "A chance is from 0 to 1.")
    return tuple(comb(number, k) * p**k * (1 - p) ** (number - k) for k in range(number + 1))


def at_least(number: int, p: float, wanted: int) -> float:
    """Chance that ``wanted`` or more of ``number`` taps are open.

    P(K >= m) = sum of P(k) from m to n
    number, p: as ``binomial``; wanted: m, whole number.  Returns 0 to 1.
    Raises RangeError as ``binomial``.  Source: binomial distribution.

    >>> at_least(2, 0.5, 1)
    0.75
    """
    return min(1.0, sum(binomial(number, p)[max(0, wanted) :]))


def combination_chance(wanted: Iterable[tuple[int, float, int]]) -> float:
    """Chance that at least a named number of each kind is open at one moment.

    P = product of P(K >= m) over the kinds
    wanted: (number there are, p, number named) triples.  Returns 0 to 1.
    Raises RangeError as ``binomial``.  Source: independent kinds.
    """
    chance = 1.0
    for number, p, named in wanted:
        chance *= at_least(number, p, named)
    return chance


def mean_open(taps: Iterable[Tap]) -> float:
    """How many taps are open on average in the busiest hour.

    H = sum n p
    taps: (number, flow m3/s, p) triples.  Returns a number.
    Source: mean of the binomial distribution.
    """
    return sum(number * p for number, _, p in taps)


def flow_chances(taps: Iterable[Tap]) -> Chances:
    """Chance of every total flow, by convolution over the kinds of outlet.

    P(Q) = sum of the products of P(k) over all combinations that give Q
    taps: (number, flow m3/s, p) triples; number and p as ``binomial``.
    Returns (flow m3/s, chance) pairs, the flows rising; the chances add up to 1 within 1e-12.
    Exact up to ``EXACT_TOTALS`` different totals.  Beyond, the flow of each kind is rounded up to
    a grid: by less than 1/4000 of everything open, never down, and zero is only zero.
    Raises RangeError as ``binomial``.  Source: sum of independent binomials.

    >>> flow_chances(((1, 2e-4, 0.5), (1, 3e-4, 0.5)))
    ((0.0, 0.25), (0.0002, 0.25), (0.0003, 0.25), (0.0005, 0.25))
    """
    taps = [tap for tap in taps if tap[0] > 0 and tap[1] > 0]
    everything = together((n, q) for n, q, _ in taps)
    same = everything * SAME_FLOW or 1.0
    if _too_many_totals(taps, same):
        return _gridded(taps, _grid(everything))
    totals = {0: (0.0, 1.0)}
    for number, flow, p in taps:
        steps = [(k * flow, c) for k, c in enumerate(binomial(number, p)) if c > NEGLIGIBLE]
        found: dict[int, tuple[float, float]] = {}
        for have, before in totals.values():
            for more, chance in steps:
                total = have + more
                key = round(total / same)
                most, sofar = found.get(key, (0.0, 0.0))
                found[key] = (max(most, total), sofar + before * chance)
        totals = {key: pair for key, pair in found.items() if pair[1] > NEGLIGIBLE}
    return tuple(totals[key] for key in sorted(totals))


def _too_many_totals(taps: Sequence[Tap], same: float) -> bool:
    """Whether more than ``EXACT_TOTALS`` different flows can be drawn, to within ``same`` (m3/s).

    Counted whatever their chances, so that more outlets never have fewer totals.
    """
    totals = {0: 0.0}
    for number, flow, _ in taps:
        found: dict[int, float] = {}
        for k in range(number + 1):
            for have in totals.values():
                found.setdefault(round((have + k * flow) / same), have + k * flow)
            if len(found) > EXACT_TOTALS:
                return True
        totals = found
    return False


def _grid(everything_m3s: float) -> float:
    """Step of the grid, m3/s: ``FINEST`` doubled until few enough steps reach everything open.

    Each coarser grid lies on the finer one, so that more outlets never round to less.
    """
    grid = FINEST
    while everything_m3s > MOST_BINS * grid:
        grid *= 2
    return grid


def _gridded(taps: Sequence[Tap], grid: float) -> Chances:
    """``flow_chances`` with the flow of each kind rounded up to whole steps of a grid (m3/s)."""
    totals = {0: 1.0}
    for number, flow, p in taps:
        steps = [
            (-int(-k * flow / grid * (1 - SAME_FLOW) // 1), chance)
            for k, chance in enumerate(binomial(number, p))
            if chance > NEGLIGIBLE
        ]
        found: dict[int, float] = {}
        for have, before in totals.items():
            for more, chance in steps:
                found[have + more] = found.get(have + more, 0.0) + before * chance
        totals = {key: chance for key, chance in found.items() if chance > NEGLIGIBLE}
    return tuple((key * grid, totals[key]) for key in sorted(totals))


def enough_for_all(taps: Iterable[Tap], share: float = CONFIDENCE) -> float:
    """The flow that is enough in ``share`` of all moments of the busiest hour.

    The smallest Q with P(Q) >= share, whether water runs or not.
    taps: as ``flow_chances``; share: above 0, below 1.  Returns m3/s.  Raises RangeError outside.
    More outlets, flow or use never lower it, since each outlet only adds to the flow.
    Source: binomial method, R. B. Hunter, NBS report BMS65 (1940).
    """
    return quantile(flow_chances(taps), share)


def enough_for_one(tap: Tap, share: float = CONFIDENCE) -> float:
    """The flow that is enough in ``share`` of the moments when this kind runs, it alone.

    The smallest Q with P(Q | Q > 0) >= share: the Peak Water Demand Study's rule for a few
    outlets, kind by kind.
    tap: (number, flow m3/s, p); share: above 0, below 1.  Returns m3/s, never less than one
    outlet of the kind; 0 where there is none or it never runs.  Raises RangeError outside.
    More of the kind never lower it: of a binomial distribution without its zero, the one with
    more trials is larger in likelihood ratio.
    Source: zero-truncated binomial, Peak Water Demand Study (2017), from memory; by kind: our
    choice, since over all kinds at once a small outlet added can lower the flow.
    """
    return quantile(running(flow_chances((tap,))), share)


def by_chance(taps: Iterable[Tap], share: float = CONFIDENCE) -> float:
    """The flow by chance to plan for: enough for all together, and for each kind alone.

    Q = max(Q_all, Q_1, Q_2, ...)
    taps: as ``flow_chances``; share: above 0, below 1.  Returns m3/s.  Raises RangeError outside.
    Never falls when outlets are added, as none of its parts does.
    Source: ``enough_for_all`` and ``enough_for_one``; together: our choice.

    >>> round(by_chance(((2, 10 * GPM, 0.05), (4, 2 * GPM, 0.045))) / GPM, 6)
    20.0
    """
    taps = tuple(taps)
    return max((enough_for_all(taps, share), *(enough_for_one(tap, share) for tap in taps)))


def running(chances: Chances) -> Chances:
    """Chances of the flows given that any water runs at all.

    P(Q | Q > 0) = P(Q) / (1 - P(0))
    chances: as ``flow_chances`` gives.  Returns pairs as given, without the flow 0; empty where
    water never runs.
    Source: zero-truncated distribution, as the Peak Water Demand Study (2017) uses for small
    buildings, from memory.
    """
    never = sum(chance for flow, chance in chances if flow == 0)
    if never >= 1.0 - NEGLIGIBLE:
        return ()
    return tuple((flow, chance / (1 - never)) for flow, chance in chances if flow > 0)


def quantile(chances: Chances, share: float) -> float:
    """The smallest flow whose chance of not being exceeded reaches ``share``.

    chances: (flow m3/s, chance) pairs, flows rising; share: above 0, below 1.
    Returns m3/s; 0 where there are none.  Raises RangeError for another share.
    Source: definition of a quantile.
    """
    require("share", share, 1e-6, 1 - 1e-9, "percent")
    total = 0.0
    for flow, chance in chances:
        total += chance
        if total >= share - 1e-12:  # sums of chances carry rounding of that size
            return flow
    return chances[-1][0] if chances else 0.0


def exceeded(chances: Chances, flow_m3s: float) -> float:
    """Chance that more than a flow is drawn.

    P(Q > q)
    chances: (flow m3/s, chance) pairs; flow_m3s: m3/s.  Returns 0 to 1.
    Source: definition.
    """
    edge = flow_m3s * (1 + 1e-9)  # the same flow summed in another order is not more
    return min(1.0, sum(chance for flow, chance in chances if flow > edge))


def fixture_unit_flow(units: float) -> float:
    """Flow that codes ask for a load in water supply fixture units (cisterns, no flush valves).

    Straight lines between the points of the table.
    units: 0 to 1000.  Returns m3/s.  Raises RangeError outside.
    Source: International Plumbing Code, table E103.3(3), from memory.

    >>> round(fixture_unit_flow(15) / GPM, 6)
    17.5
    """
    require("fixture units", units, 0.0, _UNITS[-1], "number", "Count the buildings in parts.")
    at = max(1, bisect_left(_UNITS, units))
    low, high = _UNITS[at - 1], _UNITS[at]
    share = (units - low) / (high - low)
    return GPM * (_UNITS_GPM[at - 1] * (1 - share) + _UNITS_GPM[at] * share)


def irrigation(area_m2: float, depth_m_day: float, efficiency: float) -> float:
    """Water for a bed, as a mean over the day.

    V' = A d / e
    area_m2: m2, 0 to 1e7; depth_m_day: m a day the crop uses, 0 to 0.05; efficiency: e, share of
    the water that reaches the roots, 0.3 to 1.  Returns m3/s.
    Raises RangeError outside.
    Source: gross need = net need over efficiency, FAO Irrigation and Drainage Paper 24, from
    memory.

    >>> round(irrigation(60.0, 0.005, 1.0) * DAY, 9)
    0.3
    """
    require("area", area_m2, 0.0, 1e7, "area")
    require("depth", depth_m_day, 0.0, 0.05, "rain")
    require("efficiency", efficiency, 0.3, 1.0, "percent")
    return area_m2 * depth_m_day / efficiency / DAY
