"""The wall of a pipe as a pressure wave meets it: how stiff it is, and how it is held.

References: E. B. Wylie and V. L. Streeter, Fluid Transients in Systems (1993), chapter 1, from
memory; each material names its own.
"""

import itertools
from dataclasses import dataclass

from calc.errors import require
from calc.units import QUANTITIES


@dataclass(frozen=True)
class Material:
    """A pipe wall for the short time that a wave takes to pass.

    modulus: Young's modulus at 20 degC, Pa; poisson: Poisson's ratio, -; source: where from;
    heat: (temperature K, share of ``modulus``) points, rising; none: the same at every
    temperature; heat_source: where those are from.
    """

    key: str
    label: str
    modulus: float
    poisson: float
    source: str
    heat: tuple[tuple[float, float], ...] = ()
    heat_source: str = ""


# Where sources differ the stiffer value is taken, which gives the higher rise.
# Polyethylene's modulus over that at 73 degF, whatever the time loaded: PPI, Handbook of PE Pipe,
# chapter 3, table B.1.2, from memory.
_PE_FACTORS = (
    (32, 1.62), (40, 1.49), (50, 1.32), (60, 1.18), (73.4, 1.00), (80, 0.93), (90, 0.82),
    (100, 0.73), (110, 0.64), (120, 0.58), (130, 0.50), (140, 0.43),
)  # fmt: skip
_PE_AT_20 = 1.0725  # the same table at 68 degF, between its points
_PE_HEAT = tuple(
    (QUANTITIES["temperature"].default("us").to_si(f), share / _PE_AT_20)
    for f, share in _PE_FACTORS
)
_PE_HEAT_SOURCE = "softer when warm: PPI, Handbook of PE Pipe, table B.1.2, from memory"
# Rigid PVC over 20 degC: handbook curves fall to about 0.7 at 60 degC; the stiff side, our choice.
_PVC_HEAT = ((273.15, 1.10), (293.15, 1.0), (313.15, 0.90), (333.15, 0.75))
_OUR_HEAT = "softer when warm: handbook curves, the stiff side, our choice"
MATERIALS = {
    entry.key: entry
    for entry in (
        Material("pvc", "PVC", 3.0e9, 0.38, "handbook range 2.8-3.3 GPa, from memory",
                 _PVC_HEAT, _OUR_HEAT),
        Material("cpvc", "CPVC", 3.0e9, 0.38, "as PVC, our choice", _PVC_HEAT, _OUR_HEAT),
        Material("pe", "polyethylene", 1.4e9, 0.45, "measured by the wave in PE 100, SDR 11, at "
                 "20 °C: Covas et al., J. Hydraul. Res. 42 (2004), from memory",
                 _PE_HEAT, _PE_HEAT_SOURCE),
        Material("pex", "PEX", 1.2e9, 0.45, "handbook range 0.6-0.9 GPa under a slow load, a third "
                 "more for so short a one, as polyethylene has: our choice",
                 _PE_HEAT, "softer when warm, as polyethylene: our choice"),
        Material("copper", "copper", 117e9, 0.34, "handbook, from memory"),
        Material("steel", "steel", 207e9, 0.30, "handbook, from memory"),
        Material("hose", "reinforced hose", 0.1e9, 0.45, "rough, common practice, no source"),
    )
}  # fmt: skip


def modulus_at(material: Material, temperature_k: float) -> float:
    """Young's modulus of a wall for a short load, at a temperature.

    E = E_20 s(T), straight lines between the points of ``material.heat``
    temperature_k: K, 273.15 to 373.15; above the last point its share, which is the stiff side.
    Returns Pa.  Raises RangeError outside.  Source: each material's own.

    >>> round(modulus_at(MATERIALS["pe"], 293.15) / 1e9, 2)
    1.4
    """
    remedy = "Surges are worked out for liquid water, 0 to 100 degC (32 to 212 degF)."
    require("temperature", temperature_k, 273.15, 373.15, "temperature", remedy)
    points = material.heat
    if not points or temperature_k >= points[-1][0]:
        return material.modulus * (points[-1][1] if points else 1.0)
    for (low, share), (high, after) in itertools.pairwise(points):
        if temperature_k <= high:
            at = (temperature_k - low) / (high - low)
            return material.modulus * (share + (after - share) * at)
    raise AssertionError("the points rise")


def restraint_jointed(inside: float, wall: float, poisson: float) -> float:
    """Wall factor of a pipe free to stretch at its joints (push-fit, rubber rings).

    c = 2 * (e / D) * (1 + nu) + D / (D + e)

    inside: D, m, > 0; wall: e, m, > 0; poisson: nu, 0 to 0.5.
    Returns the factor (-); tends to 1 for a thin wall.
    Raises RangeError.  Source: Wylie and Streeter 1993, thick-walled case
    (exactly Lame's ring), from memory.

    >>> round(restraint_jointed(1.0, 1e-9, 0.3), 6)
    1.0
    """
    _check_wall(inside, wall, poisson)
    return 2 * wall / inside * (1 + poisson) + inside / (inside + wall)


def restraint_buried(inside: float, wall: float, poisson: float) -> float:
    """Wall factor of a pipe held along its whole length (buried, or clipped and glued).

    c = 2 * (e / D) * (1 + nu) + D * (1 - nu**2) / (D + e)

    inside: D, m, > 0; wall: e, m, > 0; poisson: nu, 0 to 0.5.
    Returns the factor (-).  Raises RangeError.
    Source: Wylie and Streeter 1993, anchored throughout, from memory.

    >>> round(restraint_buried(1.0, 1e-9, 0.3), 6)
    0.91
    """
    _check_wall(inside, wall, poisson)
    return 2 * wall / inside * (1 + poisson) + inside * (1 - poisson**2) / (inside + wall)


def restraint_anchored_upstream(inside: float, wall: float, poisson: float) -> float:
    """Wall factor of a pipe held at its upstream end only (laid on the ground).

    c = 2 * (e / D) * (1 + nu) + D * (1 - nu / 2) / (D + e)

    inside: D, m, > 0; wall: e, m, > 0; poisson: nu, 0 to 0.5.
    Returns the factor (-).  Raises RangeError.
    Source: Wylie and Streeter 1993, anchored upstream, from memory.

    >>> round(restraint_anchored_upstream(1.0, 1e-9, 0.3), 6)
    0.85
    """
    _check_wall(inside, wall, poisson)
    return 2 * wall / inside * (1 + poisson) + inside * (1 - poisson / 2) / (inside + wall)


def _check_wall(inside: float, wall: float, poisson: float) -> None:
    require("inside", inside, 1e-4, 10.0, "diameter", "Check the inside diameter.")
    require("wall", wall, 1e-10, 2 * inside, "diameter", "Check the wall thickness.")
    require("poisson", poisson, 0.0, 0.5, "number", "Poisson's ratio lies between 0 and 0.5.")
