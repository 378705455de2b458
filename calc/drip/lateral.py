"""A line with many outlets: what friction takes when the flow shrinks from outlet to outlet."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError, require

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

COLEBROOK = 2.0  # exponent of the flow in Darcy-Weisbach with a friction factor that stays
WILLIAMS = 1.852  # of Hazen and Williams
ROUNDS, CLOSE = 200, 1e-12  # of the search for the pressure at the end
LEAST_PRESSURE = 1.0  # Pa, below which an outlet is taken to give nothing; our choice


def christiansen(outlets: int, exponent: float = WILLIAMS, first: float = 1.0) -> float:
    """Share of the friction that a line of equal outlets loses, of one with its whole flow.

    F = 1/(m + 1) + 1/(2 N) + sqrt(m - 1)/(6 N**2); with the first outlet nearer,
    F_x = (N F + x - 1) / (N + x - 1)
    outlets: N, whole number, 1 to 10,000; exponent: m of the flow, 1.5 to 2; first: x, way to the
    first outlet over the spacing, 0 to 1.
    Returns a share.  Raises RangeError outside.
    Source: J. E. Christiansen, University of California Bulletin 670 (1942); with x: M. E. Jensen
    and A. M. Fratini, Agricultural Engineering 38 (1957) 247, from memory.

    >>> round(christiansen(10), 3), round(christiansen(1), 3)
    (0.402, 1.004)
    """
    require("outlets", outlets, 1, 10_000, "number", "Count the outlets.")
    require("exponent", exponent, 1.5, 2.0, "number")
    require("first", first, 0.0, 1.0, "percent")
    plain = 1 / (exponent + 1) + 1 / (2 * outlets) + math.sqrt(exponent - 1) / (6 * outlets**2)
    if first == 1.0 or outlets == 1:
        return plain
    return (outlets * plain + first - 1) / (outlets + first - 1)


@dataclass(frozen=True)
class Lateral:
    """A line worked out outlet by outlet, from its start.

    pressures: Pa at each outlet; flows: m3/s of each; start_pa: Pa at the start of the line.
    """

    pressures: tuple[float, ...]
    flows: tuple[float, ...]
    start_pa: float

    @property
    def flow(self) -> float:
        """All that runs in, m3/s."""
        return math.fsum(self.flows)

    @property
    def uniformity(self) -> float:
        """Mean of the lowest quarter of the flows over the mean of all, share.

        Source: emission uniformity of the field, ASAE EP405, from memory.
        """
        mean = self.flow / len(self.flows)
        quarter = sorted(self.flows)[: max(1, len(self.flows) // 4)]
        return math.fsum(quarter) / len(quarter) / mean if mean > 0 else 0.0


def step_by_step(
    start_pa: float,
    lengths: Sequence[float],
    rises: Sequence[float],
    weight_pa_m: float,
    loss: Callable[[float, float], float],
    emitter: Callable[[float], float],
) -> Lateral:
    """A line's outlets worked out from its far end, until the start has its pressure.

    p_i = p_i+1 + w (h_f(q_i+1 + ... + q_N) + rise), q_i = q(p_i)
    start_pa: gauge pressure at the start, Pa, 100 to 2e6; lengths: m, from the start to the first
    outlet and on from each to the next; rises: m, of each length; weight_pa_m: w,
    Pa/m; loss: head in m
    lost by a flow (m3/s) in a length (m), rising with both; emitter: m3/s at a gauge pressure, Pa,
    never falling, 0 at 0.
    Returns ``Lateral``.  Raises RangeError outside, InputError where a part of the line stands so
    high that no water comes to it, named "rises".
    Source: continuity and energy; the far end is found by halving.
    """
    require("start_pa", start_pa, 100.0, 2e6, "pressure")
    if not lengths or len(lengths) != len(rises):
        raise InputError("Give a length and a rise for each outlet.", name="lengths")

    def from_end(end_pa: float) -> Lateral:
        return _from_end(end_pa, lengths, rises, weight_pa_m, loss, emitter)

    if from_end(LEAST_PRESSURE).start_pa > start_pa:
        raise InputError("The pressure does not carry water to the end of this line.", name="rises")
    low, high = LEAST_PRESSURE, start_pa + weight_pa_m * sum(abs(rise) for rise in rises)
    for _ in range(ROUNDS):
        middle = (low + high) / 2
        if from_end(middle).start_pa < start_pa:
            low = middle
        else:
            high = middle
        if high - low <= CLOSE * high:
            break
    return from_end((low + high) / 2)


def _from_end(
    end_pa: float,
    lengths: Sequence[float],
    rises: Sequence[float],
    weight_pa_m: float,
    loss: Callable[[float, float], float],
    emitter: Callable[[float], float],
) -> Lateral:
    """The line that has a pressure at its last outlet."""
    pressure, carried = end_pa, 0.0
    pressures, flows = [], []
    for length, rise in zip(reversed(lengths), reversed(rises), strict=True):
        flow = emitter(max(0.0, pressure))
        carried += flow
        pressures.append(pressure)
        flows.append(flow)
        pressure += weight_pa_m * (loss(carried, length) + rise)
    return Lateral(tuple(reversed(pressures)), tuple(reversed(flows)), pressure)
