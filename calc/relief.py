"""What a relief valve must pass, and how wide its opening must be for it.

Against closed outlets all that the pump still gives must go through the relief valve, at no more
than the pressure it is allowed to build up to (set pressure and what is added while it is open).

References: orifice equation of hydraulics; coefficient and form after API 520, liquid, from memory:
checked in the tests against that standard's own formula in inch units.
"""

import math

from calc import practice
from calc.errors import require

_LOWER = "Give the pressure in front of the open valve."


def full_pressure(set_pa: float) -> float:
    """Pressure at which a relief valve is fully open and passes what it is rated for.

    p = (1 + s) p_set, s: ``practice.RELIEF_OVER``

    set_pa: p_set, gauge, Pa, 0 or more.  Returns Pa (gauge).  Raises RangeError.
    Source: overpressure of 10 %, ASME and API 520, from memory.

    >>> round(full_pressure(6e5))
    660000
    """
    require("set_pa", set_pa, 0.0, 1e9, "pressure", "Give the pressure at which it opens.")
    return (1 + practice.RELIEF_OVER) * set_pa


def opening_for(flow_m3s: float, pressure_pa: float, density_kg_m3: float) -> float:
    """Diameter of the opening that passes a flow into the open.

    d = sqrt(4 A / pi), A = Q / (C_d sqrt(2 p / rho)), C_d: ``practice.RELIEF_COEFFICIENT``

    flow_m3s: Q, m3/s, 0 to 10; pressure_pa: p, gauge, Pa, above 0; density_kg_m3: kg/m3.
    Returns m.  Raises RangeError.  Source: orifice equation; API 520, liquid, from memory, for
    certified valves: others lift less at a tenth over their set pressure.

    >>> round(opening_for(3e-4, 6.6e5, 1000.0) * 1e3, 2)
    4.12
    """
    require("flow_m3s", flow_m3s, 0.0, 10.0, "flow")
    require("pressure_pa", pressure_pa, 1.0, 1e9, "pressure", _LOWER)
    speed = practice.RELIEF_COEFFICIENT * math.sqrt(2 * pressure_pa / density_kg_m3)
    return math.sqrt(4 / math.pi * flow_m3s / speed)


def pressure_to_pass(flow_m3s: float, opening_m: float, density_kg_m3: float) -> float:
    """Pressure that drives a flow through an opening: turned round.

    p = rho / 2 (Q / (C_d pi / 4 d^2))^2

    flow_m3s: Q, m3/s, 0 to 10; opening_m: d, m, above 0; density_kg_m3: kg/m3.
    Returns Pa (gauge).  Raises RangeError.  Source: as ``opening_for``.

    >>> round(pressure_to_pass(3e-4, opening_for(3e-4, 6.6e5, 1000.0), 1000.0))
    660000
    """
    require("flow_m3s", flow_m3s, 0.0, 10.0, "flow")
    require("opening_m", opening_m, 1e-5, 2.0, "diameter", "Give the width of the opening.")
    area = math.pi / 4 * opening_m**2
    return density_kg_m3 / 2 * (flow_m3s / (practice.RELIEF_COEFFICIENT * area)) ** 2


def connection(opening_m: float) -> str:
    """Name of the smallest usual connection no narrower than an opening; "" for none.

    opening_m: m, 0 or more.  Returns a name of ``practice.RELIEF_CONNECTIONS``.  Raises nothing.
    Source: nominal sizes, ISO 6708 and ISO 7, from memory.

    >>> connection(0.004), connection(0.016), connection(0.2)
    ('½ in (DN 15)', '¾ in (DN 20)', '')
    """
    fits = (name for bore, name in practice.RELIEF_CONNECTIONS if opening_m <= bore * (1 + 1e-9))
    return next(fits, "")
