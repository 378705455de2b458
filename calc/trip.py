"""A pump that stops at once while it lifts water: the fall, the return, an air vessel against both.

Power fails and a small pump, which has little to keep it turning, stops as if at once.  The column
that still runs up leaves a fall of Joukowsky's size behind it, which runs to the tank.  From there
the water comes back, and the check valve at the pump closes on it: a rise as large.  A vessel of
air beside the check valve gives water to the column and takes it back, so that both are smaller.
Friction is left out, which makes the fall and the rise no smaller.

References: E. B. Wylie and V. L. Streeter, Fluid Transients in Systems (1993); M. H. Chaudhry,
Applied Hydraulic Transients, 3rd ed. (2014): from memory, and checked in the tests by the method of
characteristics.
"""

import math
from dataclasses import dataclass

from calc.errors import InputError, require
from calc.solve import root
from calc.surge import air_work

MOST_SWING = 2.0  # times Joukowsky's rise: no vessel makes more, by the method of characteristics
EMPTY = 1e-6  # of the pressure at rest, absolute: air thinned to it counts as a vacuum; our choice
NO_SWING = 1e-6  # of the pressure at rest, a swing too small to work out; our choice


def pressure_after(static: float, change: float, height: float, weight: float) -> float:
    """Gauge pressure at a point of the pipe while a change of pressure stands there.

    p = p_0 + Delta_p - rho * g * h

    static: p_0, gauge pressure at the pump at rest, Pa; change: Delta_p, Pa, below 0 for a fall;
    height: h, of the point above the pump, m; weight: rho * g, Pa for each m.
    Returns Pa (gauge), also below boiling, as if water could not boil.  Raises nothing.
    Source: hydrostatics; a wave without friction keeps its size all the way to the tank.

    >>> pressure_after(3e5, -2e5, 20.0, 1e4)
    -100000.0
    """
    return static + change - weight * height


@dataclass(frozen=True)
class Swing:
    """Fall below and rise above the pressure at rest, Pa, both 0 or more."""

    fall: float
    rise: float


def swing(
    density: float,
    speed: float,
    length: float,
    bore: float,
    velocity: float,
    start: float,
    air: float,
) -> Swing:
    """Fall and rise at a pump that stops at once beside a vessel of air.

    rho L A v^2 / 2 = p_0 V_0 w(p / p_0), solved for p below and above p_0; w: ``surge.air_work``

    density: kg/m3; speed: of the wave, m/s; length, bore: m; velocity: m/s; start: p_0, absolute
    pressure at rest at the pump, Pa; air: V_0, air in the vessel at rest, m3.
    Returns ``Swing``: neither is passed, since the air never holds more than the moving column's
    energy; at most twice Joukowsky's, which waves in the pipe reach with too small a vessel.
    Raises RangeError.  Source: energy of a rigid column without friction, ``surge.arrester_air``.
    """
    require("start", start, 1.0, 1e9, "pressure", "Give the pressure at rest.")
    require("air", air, 1e-9, 1e6, "volume", "Give the air in the vessel.")
    asked = _motion(density, length, bore, velocity) / (start * air)
    most = MOST_SWING * density * speed * velocity / start

    def over(ratio: float) -> float:
        return air_work(ratio) - asked

    low, high = max(EMPTY, 1 - most), 1 + most
    thin = low if over(low) <= 0 else root(over, low, 1.0)
    thick = high if over(high) <= 0 else root(over, 1.0, high)
    return Swing(start * (1 - thin), start * (thick - 1))


def vessel_air(
    density: float, length: float, bore: float, velocity: float, start: float, reached: float
) -> float:
    """Air (m3, as it rests) of a vessel at the pump that lets the pressure reach no further.

    V_0 = rho L A v^2 / 2 / (p_0 w(p / p_0)), w: ``surge.air_work``

    density: kg/m3; length, bore: m; velocity: m/s; start: p_0, absolute pressure at rest, Pa;
    reached: p, the lowest or the highest allowed, absolute, Pa, a millionth
    of p_0 away from it or more.
    Returns m3.  Raises RangeError, and InputError where both are one.
    Source: energy of a rigid column, as ``surge.arrester_air``.
    """
    require("start", start, 1.0, 1e9, "pressure", "Give the pressure at rest.")
    require("reached", reached, EMPTY * start, 1e9, "pressure", "Allow another pressure.")
    if abs(reached - start) < NO_SWING * start:
        raise InputError("Allow the pressure to swing: no vessel holds it still.", name="reached")
    return _motion(density, length, bore, velocity) / (start * air_work(reached / start))


def _motion(density: float, length: float, bore: float, velocity: float) -> float:
    """Energy of the moving column, J."""
    return density * length * math.pi / 4 * bore**2 * velocity**2 / 2
