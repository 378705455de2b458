"""Demand: flow at once by two methods, and water a day by two.

Flows of taps are kept on a grid of half a US gallon a minute, so that the chance of
every total flow can be worked out exactly, tap by tap.
"""

from dataclasses import dataclass
from math import comb

from calc.errors import require
from calc.units import DAY, GALLON_US, LITRE, MINUTE

GRID = 0.5 * GALLON_US / MINUTE  # m3/s, steps of the flow distribution
CONFIDENCE = 0.99  # of the busiest hour kept: IAPMO Water Demand Calculator (2017), from memory
PEAK_HOUR = 3.0  # busiest hour's flow over the day's mean; common practice, no source


@dataclass(frozen=True)
class Fixture:
    """A kind of tap: ``steps`` of ``GRID`` when open, chance ``p`` open in the busiest hour."""

    key: str
    name: str
    steps: int
    p: float
    source: str

    @property
    def flow(self):
        """Flow when open, m3/s."""
        return self.steps * GRID


_IAPMO = "p: IAPMO/ASPE/WQRF Peak Water Demand Study (2017), from memory; flow: common practice"
_OWN = "p and flow: common practice, no source"
FIXTURES = (
    Fixture("shower", "Showers", 4, 0.045, _IAPMO),
    Fixture("sink", "Sinks and wash basins", 4, 0.02, _IAPMO),
    Fixture("toilet", "Toilets", 6, 0.01, _IAPMO),
    Fixture("washer", "Washing machines", 7, 0.055, _IAPMO),
    Fixture("hose", "Hoses", 20, 0.05, _OWN),
    Fixture("trough", "Trough float valves", 4, 0.10, _OWN),
)

PERSON = 100 * LITRE / DAY  # m3/s: WHO, Domestic Water Quantity (2020), "optimal" access, from memory
GOAT = 8 * LITRE / DAY  # m3/s, goat or sheep in warm weather: extension handbooks 4-10 L, from memory
CATTLE = 50 * LITRE / DAY  # m3/s, cow or horse: extension handbooks 30-70 L, from memory
HEN = 0.3 * LITRE / DAY  # m3/s, hen: extension handbooks 0.2-0.5 L, from memory


def together(flows):
    """Flow of taps that are certainly open together.

    Q = sum n q
    flows: (number, flow m3/s) pairs, numbers 0 or more.  Returns m3/s.  Source: continuity.
    """
    return sum(number * flow for number, flow in flows)


def binomial(number, p):
    """Chance of 0, 1, ... ``number`` taps open, each with chance p and independent.

    P(k) = C(n, k) p^k (1-p)^(n-k)
    number: 0 to 500; p: 0 to 1.  Returns a tuple of n + 1 chances.
    Raises RangeError outside.  Source: binomial distribution, as first used by R. B. Hunter,
    NBS report BMS65 (1940).

    >>> binomial(2, 0.5)
    (0.25, 0.5, 0.25)
    """
    require("number", number, 0, 500, "number")
    require("p", p, 0.0, 1.0, "number", "A chance is from 0 to 1.")
    return tuple(comb(number, k) * p**k * (1 - p) ** (number - k) for k in range(number + 1))


def flow_chances(taps):
    """Chance of every total flow, in steps of ``GRID``, by exact convolution over the kinds.

    taps: (number, steps, p) triples, steps a whole number.  Returns a list: the chance of 0, 1,
    2, ... steps, adding up to 1.  Source: sum of independent binomials.
    """
    chances = [1.0]
    for number, steps, p in taps:
        wider = [0.0] * (len(chances) + number * steps)
        for k, chance in enumerate(binomial(number, p)):
            shift = k * steps
            for at, have in enumerate(chances):
                wider[at + shift] += have * chance
        chances = wider
    return chances


def quantile(chances, share):
    """The smallest number of steps whose chance of not being exceeded reaches ``share``.

    chances: as ``flow_chances`` gives; share: above 0, below 1.  Returns a whole number.
    """
    require("share", share, 1e-6, 1 - 1e-9, "percent")
    total = 0.0
    for steps, chance in enumerate(chances):
        total += chance
        if total >= share - 1e-12:  # 1e-12: sums of chances carry rounding of that size
            return steps
    return len(chances) - 1


def exceeded(chances, flow_m3s):
    """Chance that more than a flow is drawn.

    chances: as ``flow_chances`` gives; flow_m3s: m3/s.  Returns 0 to 1.
    """
    return sum(c for steps, c in enumerate(chances) if steps * GRID > flow_m3s * (1 + 1e-9))


def mean_flow(chances):
    """Mean flow of the busiest hour, m3/s: sum of steps times chance."""
    return sum(steps * chance for steps, chance in enumerate(chances)) * GRID


def irrigation(area_m2, depth_m_day, efficiency):
    """Water for a bed a day.

    V' = A d / e
    area_m2: m2, 0 or more; depth_m_day: m a day the crop uses, 0 to 0.05; efficiency: share of
    the water that reaches the roots, 0.3 to 1.  Returns m3/s.
    Raises RangeError outside.  Source: FAO Irrigation and Drainage Paper 56, net over
    efficiency, from memory.
    """
    require("area", area_m2, 0.0, 1e7, "area")
    require("depth", depth_m_day, 0.0, 0.05, "rain")
    require("efficiency", efficiency, 0.3, 1.0, "percent")
    return area_m2 * depth_m_day / efficiency / DAY


def day_from_busy_hour(busy_hour_m3s):
    """Water a day judged from the busiest hour's mean flow.

    V' = Q_h / k_h, k_h the busiest hour over the day's mean
    busy_hour_m3s: m3/s.  Returns m3/s (mean over the day).
    Source: ``PEAK_HOUR``, common practice.
    """
    return busy_hour_m3s / PEAK_HOUR


def volume_of_day(daily_m3s):
    """Volume of a day at a daily mean, m3."""
    return daily_m3s * DAY


