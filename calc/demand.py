"""Demand: the flow at once, counted in several ways, and the water of a day.

The chance of every total flow is worked out exactly, kind of tap by kind of tap: no curve is
read, so it holds for a cabin with three taps as well as for a village.
"""

from bisect import bisect_left
from dataclasses import dataclass
from math import comb

from calc.errors import require
from calc.units import DAY, GALLON_US, LITRE, MINUTE

GPM = GALLON_US / MINUTE  # m3/s
CONFIDENCE = 0.99  # share of moments kept to: Peak Water Demand Study (2017), from memory
NEGLIGIBLE = 1e-15  # chance left out: below the rounding of the sums
BINS = 4000  # flows nearer than this part of everything open are taken together, at the larger
MOST_TAPS = 500  # of a kind


@dataclass(frozen=True)
class Fixture:
    """A kind of tap.

    ``flow``: m3/s when open; ``p``: chance that one is open at a moment of the busiest hour;
    ``units``: water supply fixture units, None where the flow is added as it is.
    """

    key: str
    name: str
    flow: float
    p: float
    units: float | None
    source: str


_STUDY = (
    "p: IAPMO/ASPE/WQRF Peak Water Demand Study (2017), from memory; units: Uniform Plumbing "
    "Code, private use, from memory; flow: "
)
_TRADE = _STUDY + "common practice, no source"
_OWN = "p and flow: common practice, no source"
FIXTURES = (
    Fixture("shower", "Showers", 2.0 * GPM, 0.045, 2.0, _TRADE),
    Fixture("sink", "Sinks and wash basins", 2.0 * GPM, 0.02, 1.5, _TRADE),
    Fixture("toilet", "Toilets with a cistern", 3.0 * GPM, 0.01, 2.5, _STUDY + "as p"),
    Fixture("washer", "Washing machines", 3.5 * GPM, 0.055, 4.0, _STUDY + "as p"),
    Fixture("hose", "Hoses", 10.0 * GPM, 0.05, None, _OWN),
    Fixture("trough", "Trough float valves", 2.0 * GPM, 0.10, None, _OWN),
)


@dataclass(frozen=True)
class Drinker:
    """A kind of animal and what one drinks and spills, m3/s over the day."""

    key: str
    name: str
    daily: float
    source: str


_STOCK = "Journal of Renewable Energy (2017) 8504283, table 1: "
ANIMALS = (
    Drinker("goats", "Goats or sheep", 8 * LITRE / DAY, _STOCK + "2 gal a day (7.6 L)"),
    Drinker("cattle", "Cows or horses", 50 * LITRE / DAY, _STOCK + "10 to 15 gal a day (38-57 L)"),
    Drinker("hens", "Hens", 0.3 * LITRE / DAY, _STOCK + "6 to 12 gal a day for 100 (0.23-0.45 L)"),
)

_WHO = "WHO, Domestic Water Quantity, Service Level and Health (2020), from memory"
SERVICE = (  # name, m3/s a person, source
    ("Emergency: drinking, cooking, hands", 15 * LITRE / DAY, "Sphere Handbook, from memory"),
    ("Basic: carried from a tap nearby", 20 * LITRE / DAY, _WHO),
    ("Intermediate: one tap at the house", 50 * LITRE / DAY, _WHO),
    ("Optimal: taps in the house", 100 * LITRE / DAY, _WHO),
)

# Water supply fixture units -> gal/min, supply with flush tanks.  International Plumbing Code,
# table E103.3(3), after R. B. Hunter (1940), from memory; at 1, 2, 4, 8, 15, 30 and 50 units
# compared with a printed copy.
_UNITS = (
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 35, 40, 45,
    50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200, 225, 250, 275, 300, 400, 500, 750, 1000,
)  # fmt: skip
_UNITS_GPM = (
    0, 3.0, 5.0, 6.5, 8.0, 9.4, 10.7, 11.8, 12.8, 13.7, 14.6, 15.4, 16.0, 16.5, 17.0, 17.5, 18.0,
    18.4, 18.8, 19.2, 19.6, 21.5, 23.3, 24.9, 26.3, 27.7, 29.1, 32.0, 35.0, 38.0, 41.0, 43.5, 48.0,
    52.5, 57.0, 61.0, 65.0, 70.0, 75.0, 80.0, 85.0, 105.0, 124.0, 170.0, 208.0,
)  # fmt: skip


def together(flows):
    """Flow of taps that are certainly open together.

    Q = sum n q
    flows: (number, flow m3/s) pairs, numbers 0 or more.  Returns m3/s.
    Source: continuity.

    >>> round(together(((2, 1e-4), (1, 6e-4))), 12)
    0.0008
    """
    return sum(number * flow for number, flow in flows)


def binomial(number, p):
    """Chance of 0, 1, ... ``number`` taps open, each with chance p and independent.

    P(k) = C(n, k) p^k (1-p)^(n-k)
    number: whole number, 0 to 500; p: 0 to 1.  Returns a tuple of n + 1 chances.
    Raises RangeError outside.
    Source: binomial distribution, first used for taps by R. B. Hunter, NBS report BMS65 (1940).

    >>> binomial(2, 0.5)
    (0.25, 0.5, 0.25)
    """
    require("number", number, 0, MOST_TAPS, "number", "Count the buildings in parts.")
    require("p", p, 0.0, 1.0, "number", "A chance is from 0 to 1.")
    return tuple(comb(number, k) * p**k * (1 - p) ** (number - k) for k in range(number + 1))


def at_least(number, p, wanted):
    """Chance that ``wanted`` or more of ``number`` taps are open.

    P(K >= m) = sum of P(k) from m to n
    number, p: as ``binomial``; wanted: m, whole number.  Returns 0 to 1.
    Raises RangeError as ``binomial``.  Source: binomial distribution.

    >>> at_least(2, 0.5, 1)
    0.75
    """
    return min(1.0, sum(binomial(number, p)[max(0, wanted) :]))


def combination_chance(wanted):
    """Chance that at least a named number of each kind is open at one moment.

    P = product of P(K >= m) over the kinds
    wanted: (number there are, p, number named) triples.  Returns 0 to 1.
    Raises RangeError as ``binomial``.  Source: independent kinds.
    """
    chance = 1.0
    for number, p, named in wanted:
        chance *= at_least(number, p, named)
    return chance


def mean_open(taps):
    """How many taps are open on average in the busiest hour.

    H = sum n p
    taps: (number, flow m3/s, p) triples.  Returns a number.
    Source: mean of the binomial distribution.
    """
    return sum(number * p for number, _, p in taps)


def flow_chances(taps):
    """Chance of every total flow, by exact convolution over the kinds of tap.

    P(Q) = sum of the products of P(k) over all combinations that give Q
    taps: (number, flow m3/s, p) triples; number and p as ``binomial``.
    Returns (flow m3/s, chance) pairs, the flows rising; the chances add up to 1 within 1e-12.
    Flows closer together than 1/4000 of everything open count as the larger of them.
    Raises RangeError as ``binomial``.  Source: sum of independent binomials.

    >>> flow_chances(((1, 2e-4, 0.5), (1, 3e-4, 0.5)))
    ((0.0, 0.25), (0.0002, 0.25), (0.0003, 0.25), (0.0005, 0.25))
    """
    taps = [tap for tap in taps if tap[0] > 0 and tap[1] > 0]
    bin_m3s = together((n, q) for n, q, _ in taps) / BINS or 1.0
    totals = {0: (0.0, 1.0)}
    for number, flow, p in taps:
        steps = [(k * flow, c) for k, c in enumerate(binomial(number, p)) if c > NEGLIGIBLE]
        found = {}
        for have, before in totals.values():
            for more, chance in steps:
                total, key = have + more, round((have + more) / bin_m3s)
                most, sofar = found.get(key, (0.0, 0.0))
                found[key] = (max(most, total), sofar + before * chance)
        totals = {key: pair for key, pair in found.items() if pair[1] > NEGLIGIBLE}
    return tuple(totals[key] for key in sorted(totals))


def running(chances):
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


def quantile(chances, share):
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


def exceeded(chances, flow_m3s):
    """Chance that more than a flow is drawn.

    P(Q > q)
    chances: (flow m3/s, chance) pairs; flow_m3s: m3/s.  Returns 0 to 1.
    Source: definition.
    """
    edge = flow_m3s * (1 + 1e-9)  # the same flow summed in another order is not more
    return min(1.0, sum(chance for flow, chance in chances if flow > edge))


def mean_flow(chances):
    """Mean flow of the busiest hour: sum of flow times chance.

    chances: (flow m3/s, chance) pairs.  Returns m3/s.  Source: definition.
    """
    return sum(flow * chance for flow, chance in chances)


def fixture_unit_flow(units):
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


def irrigation(area_m2, depth_m_day, efficiency):
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
