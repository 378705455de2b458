"""Batteries of the usual kinds: what they hold, give, lose and last."""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.practice import BATTERY_BY_KEY, BatteryKind
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterable

VOLTAGES = (12.0, 24.0, 48.0)  # V, that are sold; common practice, no source
RATED_HOURS = 20.0  # h, of the rate at which a battery's rated energy is given
MONTH, YEAR = 365.0 / 12 * DAY, 365.0 * DAY  # s


def energy_from_ah(nominal_v: float, amp_hours: float) -> float:
    """Rated energy of a battery.

    E = U Q
    nominal_v: U, V, 6 to 100; amp_hours: Q, ampere-hours at the 20 h rate, a number, 0.1 to 1e5.
    Returns J.  Raises RangeError outside.  Source: definition.

    >>> energy_from_ah(12.0, 100.0) / 3600
    1200.0
    """
    require("nominal_v", nominal_v, 6.0, 100.0, "voltage", "12, 24 or 48 V are usual.")
    require("amp_hours", amp_hours, 0.1, 1e5, "number", "Look at the battery's label.")
    return nominal_v * amp_hours * HOUR


@dataclass(frozen=True)
class Battery:
    """A battery: kind (a key of ``practice.BATTERIES``), nominal_v (12, 24 or 48 V), energy_j (J).

    reserve_j: J that are never drawn, where the low-battery cut-out acts (None: what the kind's
    usable share leaves).
    Raises RangeError or InputError by the names of these fields.
    """

    kind: str
    nominal_v: float
    energy_j: float
    reserve_j: float | None = None

    def __post_init__(self) -> None:
        if self.kind not in BATTERY_BY_KEY:
            raise InputError("Choose one of the kinds of battery in the list.", name="kind")
        if self.nominal_v not in VOLTAGES:
            raise InputError("A battery has 12, 24 or 48 V.", name="nominal_v")
        require("energy_j", self.energy_j, HOUR, 1e11, "energy", "Give the battery's energy.")
        if self.reserve_j is not None:
            remedy = "The cut-out lies below the battery's energy."
            require("reserve_j", self.reserve_j, 0.0, self.energy_j, "energy", remedy)

    @property
    def of(self) -> BatteryKind:
        """The usual values of its kind."""
        return BATTERY_BY_KEY[self.kind]

    @property
    def reserve(self) -> float:
        """Energy at which the cut-out acts in warm air, J."""
        if self.reserve_j is None:
            return (1 - self.of.usable) * self.energy_j
        return self.reserve_j


def cold_share(kind: str, battery_k: float) -> float:
    """Share of its rated energy that a battery gives at a temperature.

    Straight lines between the usual points of its kind, level beyond them.
    kind: a key of ``practice.BATTERIES``; battery_k: K, 203 to 343.
    Returns a share, 0.6 to 1.  Raises RangeError outside.  Source: common practice, no source.

    >>> cold_share("lfp", 273.15), cold_share("agm", 310.0)
    (0.9, 1.0)
    """
    require("battery_k", battery_k, 203.0, 343.0, "temperature", "Check the place's air.")
    return _between(BATTERY_BY_KEY[kind].cold, battery_k)


def _between(points: tuple[tuple[float, float], ...], at: float) -> float:
    place = bisect_right(points, (at, math.inf))
    if place == 0 or place == len(points):
        return points[min(place, len(points) - 1)][1]
    (a, low), (b, high) = points[place - 1], points[place]
    return low + (high - low) * (at - a) / (b - a)


def floor(battery: Battery, battery_k: float) -> float:
    """Energy below which nothing is drawn: the cut-out, or in the cold what the cold keeps back.

    E_floor = max(E_reserve, (1 - share(T)) E)
    battery: its kind and energy; battery_k: T, K, 203 to 343.  What the cold keeps back comes
    again with the warmth.
    Returns J.  Raises RangeError outside.  Source: our choice of the larger of both.
    """
    kept = (1 - cold_share(battery.kind, battery_k)) * battery.energy_j
    return max(battery.reserve, kept)


def rate_share(battery: Battery, power_w: float) -> float:
    """Share of its rated energy that a battery gives at a power.

    s = (E / (20 h P))**(k - 1), at most 1
    battery: E, its energy; power_w: P, W, 0 to 1e6.
    Returns a share, 0 to 1.  Raises RangeError outside.
    Source: W. Peukert, Elektrotechnische Zeitschrift 20 (1897), from memory; a slower discharge
    is not taken to give more than the rated energy (our choice).

    >>> rate_share(Battery("lfp", 24.0, 24.0 * 100 * 3600), 120.0)
    1.0
    """
    require("power_w", power_w, 0.0, 1e6, "power")
    if power_w == 0:
        return 1.0
    rated = battery.energy_j / (RATED_HOURS * HOUR)
    return min(1.0, (rated / power_w) ** (battery.of.exponent - 1))


def discharge_efficiency(battery: Battery, power_w: float) -> float:
    """Share of the energy drawn that reaches the load, at the load's power.

    eta = eta_kind s(P), s as ``rate_share``
    battery: its kind and energy; power_w: P, W, 0 to 1e6.
    Returns a share, 0 to 1.  Raises RangeError outside.
    Source: definition; Peukert's missing energy counts as lost (our choice, the careful side).
    """
    return battery.of.discharging * rate_share(battery, power_w)


def charge_limit(battery: Battery, battery_k: float) -> float:
    """Most power a battery may be charged with; 0 where it is too cold for its kind.

    P = r E
    battery: r of its kind, E its energy; battery_k: K, 203 to 343.  Lithium iron phosphate is not
    charged below 273.15 K: it would be damaged for good.
    Returns W.  Raises RangeError outside.  Source: common practice, no source.

    >>> charge_limit(Battery("lfp", 12.0, 3.6e6), 272.0)
    0.0
    """
    require("battery_k", battery_k, 203.0, 343.0, "temperature", "Check the place's air.")
    kind = battery.of
    return kind.charge_rate * battery.energy_j / HOUR if battery_k >= kind.charge_above else 0.0


def discharge_limit(battery: Battery) -> float:
    """Most power a battery gives: P = r E, r of its kind.  Returns W.  Source: common practice."""
    return battery.of.discharge_rate * battery.energy_j / HOUR


def fading_share(battery: Battery) -> float:
    """Share of the stored energy that a battery loses in an hour at rest.

    1 - (1 - f)**(1 h / 1 month)
    battery: f of its kind.  Returns a share.  Source: common practice, no source.
    """
    return 1 - (1 - battery.of.fading) ** (HOUR / MONTH)


def cycle_life(kind: str, depth: float) -> float:
    """Cycles that a battery lasts when each takes one depth.

    ln N in straight lines over ln d between the usual points of its kind; shallower than the
    first, N d is kept; deeper than the last, the last slope is.
    kind: a key of ``practice.BATTERIES``; depth: d, share of its rated energy, 0 to 2.
    Returns the number of cycles, infinite at no depth.  Raises RangeError outside.
    Source: common practice, no source.

    >>> round(cycle_life("lfp", 0.5)), round(cycle_life("lfp", 0.05))
    (6000, 40000)
    """
    require("depth", depth, 0.0, 2.0, "percent")
    if depth == 0:
        return math.inf
    points = BATTERY_BY_KEY[kind].cycles
    if depth <= points[0][0]:
        return points[0][1] * points[0][0] / depth
    place = next((i for i, (d, _) in enumerate(points) if d >= depth), len(points) - 1)
    (a, low), (b, high) = points[place - 1], points[place]
    slope = math.log(high / low) / math.log(b / a)
    return low * (depth / a) ** slope


def replacement(battery: Battery, drawn_j: Iterable[float]) -> float:
    """How long a battery lasts when a year repeats.

    t = 1 year / sum(1 / N(d_i)), at most the years of its kind
    battery: its kind and energy; drawn_j: J drawn from it on each day of the year.  Each day counts
    as one cycle of the depth d_i = drawn / rated energy (equivalent cycles, added up by Miner's
    rule); it is no rainflow count, so one long dull week counts as several shallow cycles.
    Returns s.  Raises nothing.
    Source: Miner's rule; cycle lives are common practice, no source.
    """
    depths = (min(2.0, drawn / battery.energy_j) for drawn in drawn_j)
    worn = sum(1 / cycle_life(battery.kind, depth) for depth in depths if depth > 0)
    longest = battery.of.years * YEAR
    return longest if worn <= 0 else min(longest, YEAR / worn)


def full(battery: Battery) -> float:
    """Energy that a battery is taken to hold as a year begins, J.  Source: our choice."""
    return practice.BATTERY_START * battery.energy_j
