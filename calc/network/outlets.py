"""What runs out of a supply: outlets whose flow depends on the pressure they get.

A law gives flow and slope at a gauge pressure.  Every law gives nothing at or below zero
pressure (an outlet does not suck water in), never falls as the pressure rises, and says at
which pressure it does its full duty.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.errors import InputError, require

STRAIGHT = 1e-4  # share of the rated pressure below which the root law is a straight line: our
# choice, so that the slope is finite at no flow; the flow there is under 1 % of the rated
FIXED_LEAST = (
    1e4  # Pa, below which a fixed flow cannot be had in full: about 1 m of water; our choice
)
MOST_FLOW, MOST_PRESSURE = 1.0, 1e7  # m3/s, Pa: wider than any outlet here


def orifice_flow_and_slope(
    pressure_pa: float, rated_flow_m3s: float, rated_pressure_pa: float
) -> tuple[float, float]:
    """Flow of an opening that gives a rated flow at a rated pressure, and its slope.

    Q = Q_r sqrt(p / p_r)
    pressure_pa: Pa gauge, any (none runs at or below 0); rated_flow_m3s: m3/s;
    rated_pressure_pa: Pa.  Below 1e-4 p_r the law is the straight line to zero.
    Returns (m3/s, m3/(s Pa)).  Raises nothing.  Source: Torricelli's law.

    >>> orifice_flow_and_slope(4e5, 1e-4, 1e5)[0]
    0.0002
    """
    if pressure_pa <= 0.0:
        return 0.0, 0.0
    share = pressure_pa / rated_pressure_pa
    if share < STRAIGHT:
        slope = rated_flow_m3s * math.sqrt(STRAIGHT) / (STRAIGHT * rated_pressure_pa)
        return slope * pressure_pa, slope
    flow = rated_flow_m3s * math.sqrt(share)
    return flow, flow / (2.0 * pressure_pa)


def held_flow_and_slope(
    pressure_pa: float, flow_m3s: float, least_pa: float
) -> tuple[float, float]:
    """Flow that is held steady from a least pressure up, and its slope.

    Q = Q_0 for p >= p_0, else Q_0 sqrt(p / p_0)
    pressure_pa: Pa gauge, any; flow_m3s: Q_0, m3/s; least_pa: p_0, Pa.
    Returns (m3/s, m3/(s Pa)).  Raises nothing.  Source: the wide open way below p_0 is an
    orifice (Torricelli); above it the regulating part holds the flow.
    """
    if pressure_pa >= least_pa:
        return flow_m3s, 0.0
    return orifice_flow_and_slope(pressure_pa, flow_m3s, least_pa)


def _check(law: _AtPressure | LimitedShower) -> None:
    require(
        "flow_m3s", law.flow_m3s, 1e-9, MOST_FLOW, "flow", "Give the outlet's flow, above zero."
    )
    remedy = "Give the pressure at which the flow holds, above zero."
    require("pressure_pa", law.pressure_pa, 1.0, MOST_PRESSURE, "pressure", remedy)


@dataclass(frozen=True)
class _AtPressure:
    """A law that a flow and the pressure it is had at say whole."""

    flow_m3s: float
    pressure_pa: float

    def __post_init__(self) -> None:
        _check(self)

    @property
    def least_pa(self) -> float:
        """Pressure from which it does its full duty, Pa."""
        return self.pressure_pa

    most_pa = None


@dataclass(frozen=True)
class Orifice(_AtPressure):
    """A tap, hose or nozzle: its flow at a rated pressure; more with more pressure."""

    def flow_and_slope(self, pressure_pa: float) -> tuple[float, float]:
        return orifice_flow_and_slope(pressure_pa, self.flow_m3s, self.pressure_pa)


@dataclass(frozen=True)
class FixedFlow(_AtPressure):
    """A draw that takes its flow whatever the pressure, as long as there is some.

    pressure_pa: below it the flow falls off, down to none at none.
    """

    pressure_pa: float = FIXED_LEAST

    def flow_and_slope(self, pressure_pa: float) -> tuple[float, float]:
        return held_flow_and_slope(pressure_pa, self.flow_m3s, self.pressure_pa)


@dataclass(frozen=True)
class LimitedShower:
    """A shower head with a flow limiter.

    flow_m3s at pressure_pa: what it would pass without the limiter; limit_m3s: the most it
    passes.
    """

    flow_m3s: float
    pressure_pa: float
    limit_m3s: float

    def __post_init__(self) -> None:
        _check(self)
        remedy = "The limit is a flow above zero."
        require("limit_m3s", self.limit_m3s, 1e-9, MOST_FLOW, "flow", remedy)

    @property
    def least_pa(self) -> float:
        """Pressure at which the limiter begins to hold, Pa: p_r (Q_lim / Q_r)^2."""
        return self.pressure_pa * (self.limit_m3s / self.flow_m3s) ** 2

    most_pa = None

    def flow_and_slope(self, pressure_pa: float) -> tuple[float, float]:
        return held_flow_and_slope(pressure_pa, self.limit_m3s, self.least_pa)


@dataclass(frozen=True)
class CompensatingDripper:
    """A pressure-compensating dripper: one flow from its least to its most pressure.

    Below the least pressure it drips less; above the most its flow is not promised, and the
    checks of a network say so.
    """

    flow_m3s: float
    pressure_pa: float
    most_pa: float

    def __post_init__(self) -> None:
        remedy = "Give the flow of one dripper, above zero."
        require("flow_m3s", self.flow_m3s, 1e-12, MOST_FLOW, "flow", remedy)
        require(
            "pressure_pa", self.pressure_pa, 1.0, MOST_PRESSURE, "pressure", "Give its minimum."
        )
        if self.most_pa <= self.pressure_pa:
            raise InputError(
                "A dripper's highest pressure must be above its lowest.", name="most_pa"
            )

    @property
    def least_pa(self) -> float:
        """Pressure from which the flow is held, Pa."""
        return self.pressure_pa

    def flow_and_slope(self, pressure_pa: float) -> tuple[float, float]:
        return held_flow_and_slope(pressure_pa, self.flow_m3s, self.pressure_pa)


OutletLaw = Orifice | FixedFlow | LimitedShower | CompensatingDripper


@dataclass(frozen=True)
class Outlet:
    """So many equal outlets at a node, open or shut.

    wanted_pa: the running pressure at which it works (None: that of its full duty); rated_pa:
    at which it is comfortable (None: the same).
    """

    name: str
    node: str
    law: OutletLaw
    count: int = 1
    open: bool = True
    wanted_pa: float | None = None
    rated_pa: float | None = None

    def __post_init__(self) -> None:
        remedy = f"“{self.name}” needs a whole number of outlets, one or more."
        require("count", self.count, 1, 1_000_000, "number", remedy)

    @property
    def content_pa(self) -> float:
        """Running pressure wanted, Pa."""
        return self.law.least_pa if self.wanted_pa is None else self.wanted_pa

    @property
    def best_pa(self) -> float:
        """Running pressure at which it is comfortable, Pa: never below that wanted."""
        return max(self.content_pa, self.rated_pa or 0.0)

    @property
    def full_m3s(self) -> float:
        """Flow wanted: that at the pressure wanted, m3/s."""
        return self.flow_and_slope(self.content_pa)[0]

    def flow_and_slope(self, pressure_pa: float) -> tuple[float, float]:
        """(m3/s, m3/(s Pa)) of all of them together, as if open."""
        flow, slope = self.law.flow_and_slope(pressure_pa)
        return self.count * flow, self.count * slope
