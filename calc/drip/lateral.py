"""A line with many outlets: what friction takes when the flow shrinks from outlet to outlet."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError, require
from calc.pipe import friction
from calc.solve import root
from calc.units import GRAVITY

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

COLEBROOK = 2.0  # exponent of the flow in Darcy-Weisbach with a friction factor that stays
WILLIAMS = 1.852  # of Hazen and Williams
BLASIUS = 1.75  # of a smooth small pipe: Blasius (1913)
CLOSE = 1e-12  # of the logarithm of the pressure at the end, as it is looked for
HIGHEST = 2e6  # Pa, no line starts with more
LEAST_PRESSURE = 1.0  # Pa, below which an outlet is taken to give nothing; our choice


def christiansen(outlets: int, exponent: float = WILLIAMS, first: float = 1.0) -> float:
    """Share of the friction that a line of equal outlets loses, of one with its whole flow.

    F as ``friction.christiansen``; with the first outlet nearer, F_x = (N F + x - 1) / (N + x - 1)
    outlets: N, whole number, 1 to 10,000; exponent: m of the flow, 1.5 to 2; first: x, way to the
    first outlet over the spacing, 0 to 1.
    Returns a share.  Raises RangeError outside.
    Source: J. E. Christiansen, University of California Bulletin 670 (1942); with x: M. E. Jensen
    and A. M. Fratini, Agricultural Engineering 38 (1957) 247, from memory.

    >>> round(christiansen(10), 3), round(christiansen(1), 3)
    (0.402, 1.004)
    """
    require("outlets", outlets, 1, 10_000, "number", "Count the outlets.")
    require("first", first, 0.0, 1.0, "percent")
    plain = friction.christiansen(outlets, exponent)
    if first == 1.0 or outlets == 1:
        return plain
    return (outlets * plain + first - 1) / (outlets + first - 1)


def smooth_law(
    bore_m: float, kinematic_m2s: float, more: float = 0.0
) -> Callable[[float, float], float]:
    """The friction of a smooth narrow pipe, as drip lines are: (flow m3/s, length m) -> head, m.

    h_f = f L/D v**2/(2 g), f = max(64/Re, 0.3164/Re**0.25, 0.184/Re**0.2)
    bore_m: inside diameter, m, 1 mm to 1 m; kinematic_m2s: m2/s; more: share of the length that
    is added for fittings, 0 to 2.
    Returns the law, rising with the flow throughout; a flow below 0 loses nothing.
    Raises RangeError outside.
    Source: Hagen and Poiseuille; H. Blasius (1913), to Re 1e5; beyond it W. H. McAdams (1942), from
    memory.  The greatest is taken; our choice, on the careful side.
    """
    require("bore_m", bore_m, 1e-3, 1.0, "diameter")
    require("more", more, 0.0, 2.0, "percent")
    area = math.pi / 4 * bore_m**2
    re, plain = bore_m / kinematic_m2s / area, (1 + more) / (2 * GRAVITY * area**2 * bore_m)
    # the head lost in a metre by a flow of 1 m3/s, by each of the three factors
    slow, small, fast = 64 / re * plain, 0.3164 / re**0.25 * plain, 0.184 / re**0.2 * plain

    def loss(flow_m3s: float, length_m: float) -> float:
        if flow_m3s <= 0:
            return 0.0
        return length_m * max(slow * flow_m3s, small * flow_m3s**1.75, fast * flow_m3s**1.8)

    return loss


@dataclass(frozen=True)
class Dripper:
    """A dripper: what it gives at a pressure.

    flow_m3s: m3/s, nominal; pressure_pa: Pa, at which it gives that, of a compensating one the
    least from which it does; compensating: whether it then gives no more.
    """

    flow_m3s: float
    pressure_pa: float
    compensating: bool = False

    def at(self, pressure_pa: float) -> float:
        """What it gives at a gauge pressure.

        q = q_0 (p/p_0)**0.5; compensating, from p_0 on: q_0
        pressure_pa: Pa; below 0 counts as 0.  Returns m3/s.  Raises nothing.
        Source: orifice; the exponent of an unregulated dripper is near 0.5: Keller and Karmeli
        (1974), from memory.
        """
        share = max(0.0, pressure_pa) / self.pressure_pa
        if self.compensating:
            share = min(1.0, share)
        return self.flow_m3s * math.sqrt(share)


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

    @property
    def variation(self) -> float:
        """What the least outlet gives less than the most, share of the most.

        q_var = (q_max - q_min)/q_max.  Source: I. P. Wu and H. M. Gitlin (1974), from memory.
        """
        most = max(self.flows)
        return (most - min(self.flows)) / most if most > 0 else 0.0

    def emission(self, made: float) -> float:
        """Emission uniformity, one dripper to a plant.

        EU = (1 - 1.27 v) q_min/q_mean
        made: v, coefficient of variation of new drippers, share.  Returns a share, 0 or more.
        Raises nothing.
        Source: J. Keller and D. Karmeli, Transactions of the ASAE 17 (1974) 678; ASAE EP405, from
        memory.
        """
        mean = self.flow / len(self.flows)
        return max(0.0, 1 - 1.27 * made) * min(self.flows) / mean if mean > 0 else 0.0


def from_end(
    end_pa: float,
    lengths: Sequence[float],
    rises: Sequence[float],
    weight_pa_m: float,
    loss: Callable[[float, float], float],
    emitter: Callable[[float], float],
) -> Lateral:
    """The line that has a pressure at its last outlet.

    p_i = p_i+1 + w (h_f(q_i+1 + ... + q_N) + rise), q_i = q(p_i)
    end_pa: gauge pressure at the last outlet, Pa, 0 or more; all others as ``step_by_step``.
    Returns ``Lateral``.  Raises nothing.  Source: continuity and energy.
    """
    pressure, carried = end_pa, 0.0
    pressures, flows = [], []
    for length, rise in zip(reversed(lengths), reversed(rises), strict=True):
        flow = emitter(max(0.0, pressure))
        carried += flow
        pressures.append(pressure)
        flows.append(flow)
        pressure += weight_pa_m * (loss(carried, length) + rise)
    return Lateral(tuple(reversed(pressures)), tuple(reversed(flows)), pressure)


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
    Source: continuity and energy; the far end is found by trial.
    """
    require("start_pa", start_pa, 100.0, 2e6, "pressure")
    if not lengths or len(lengths) != len(rises):
        raise InputError("Give a length and a rise for each outlet.", name="lengths")

    def ending(end_pa: float) -> Lateral:
        return from_end(end_pa, lengths, rises, weight_pa_m, loss, emitter)

    if ending(LEAST_PRESSURE).start_pa > start_pa:
        raise InputError("The pressure does not carry water to the end of this line.", name="rises")
    high = start_pa + weight_pa_m * sum(abs(rise) for rise in rises) + LEAST_PRESSURE

    def over(log_pa: float) -> float:
        return ending(math.exp(log_pa)).start_pa - start_pa

    half = math.log(start_pa / 2)  # few lines lose more: a search from there is shorter
    low = half if over(half) < 0 else math.log(LEAST_PRESSURE)
    return ending(math.exp(root(over, low, math.log(high), CLOSE)))


def start_for(
    enough: Callable[[Lateral], float],
    lengths: Sequence[float],
    rises: Sequence[float],
    weight_pa_m: float,
    loss: Callable[[float, float], float],
    emitter: Callable[[float], float],
) -> Lateral | None:
    """The line that has just enough: what pressure it needs at its start.

    enough: of a line, below 0 where it has too little, rising with the pressure; all others as
    ``step_by_step``.
    Returns ``Lateral``; None where ``HIGHEST`` at the end is not enough.  Raises nothing more.
    Source: continuity and energy.
    """

    def short(log_pa: float) -> float:
        return enough(from_end(math.exp(log_pa), lengths, rises, weight_pa_m, loss, emitter))

    low, high = math.log(LEAST_PRESSURE), math.log(HIGHEST)
    if short(high) < 0:
        return None
    end = low if short(low) >= 0 else root(short, low, high, CLOSE)
    return from_end(math.exp(end), lengths, rises, weight_pa_m, loss, emitter)
