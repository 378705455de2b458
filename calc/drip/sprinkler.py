"""Sprinklers: what one gives and how far it throws at a pressure, and how fast it wets ground."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc import practice
from calc.errors import require


@dataclass(frozen=True)
class Sprinkler:
    """A sprinkler as its data sheet has it.

    flow_m3s: m3/s at ``rated_pa``, Pa; works_pa: Pa, the least it works at; radius_m: m, wetted
    around it from that pressure on.
    """

    flow_m3s: float
    rated_pa: float
    works_pa: float
    radius_m: float

    def at(self, pressure_pa: float) -> float:
        """What it gives at a gauge pressure.

        q = q_0 (p/p_0)**0.5
        pressure_pa: Pa; below 0 counts as 0.  Returns m3/s.  Raises nothing.
        Source: flow through a nozzle.

        >>> Sprinkler(1e-4, 2e5, 1e5, 4.0).at(0.5e5)
        5e-05
        """
        return self.flow_m3s * math.sqrt(max(0.0, pressure_pa) / self.rated_pa)

    def throws(self, pressure_pa: float) -> float:
        """The radius it wets at a gauge pressure.

        r = r_0, below the least pressure it works at 0.6 r_0
        pressure_pa: Pa.  Returns m.  Raises nothing.  Source: ``practice.SHORT_THROW``.

        >>> Sprinkler(1e-4, 2e5, 1e5, 4.0).throws(0.9e5)
        2.4
        """
        enough = pressure_pa * (1 + 1e-9) >= self.works_pa
        return self.radius_m if enough else practice.SHORT_THROW * self.radius_m


def application_rate(flow_m3s: float, along_m: float, between_m: float) -> float:
    """Depth of water that sprinklers give in a time.

    i = q/(a b)
    flow_m3s: q of one, m3/s, 0 to 1; along_m: a, m from one to the next on its line, 0.1 to 1000;
    between_m: b, m from line to line, 0.1 to 1000.  Returns m/s.  Raises RangeError outside.
    Source: definition.

    >>> round(application_rate(2e-4, 6.0, 6.0) * 3.6e6, 1)
    20.0
    """
    require("flow_m3s", flow_m3s, 0.0, 1.0, "flow")
    require("along_m", along_m, 0.1, 1000.0, "length")
    require("between_m", between_m, 0.1, 1000.0, "length")
    return flow_m3s / (along_m * between_m)


def apart(wind_ms: float) -> float:
    """How far apart sprinklers may be in a wind, as a share of the diameter that one wets.

    wind_ms: m/s, 0 to 30.  Returns a share.  Raises RangeError outside.
    Source: ``practice.WIND_APART``.

    >>> apart(0.0), apart(1.5), apart(3.0), apart(6.0)
    (0.65, 0.6, 0.5, 0.3)
    """
    require("wind_ms", wind_ms, 0.0, 30.0, "speed")
    for most, share in practice.WIND_APART:
        if wind_ms <= most * (1 + 1e-9):
            return share
    return practice.WINDY_APART
