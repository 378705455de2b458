"""Water hammer: wave speed, pressure rise, closing time, relief and column separation.

The wave speed is Korteweg's with the wall's restraint after Wylie and Streeter;
the sudden rise is Joukowsky's; a slow closing is followed phase by phase with
Allievi's chain of equations (an opening that closes evenly), beside which stand
Michaud's simple rise and the rigid-column limit.  Friction is left out.

References: E. B. Wylie and V. L. Streeter, Fluid Transients in Systems (1993),
chapter 1 (restraint) and 2; M. H. Chaudhry, Applied Hydraulic Transients, 3rd
ed. (2014), chapter 1 (Allievi's chart and its rigid-column limit): equations
written from memory and checked in the tests against an independent derivation
and against the method of characteristics.
"""

import math
from dataclasses import dataclass

from calc.errors import InputError, require
from calc.solve import root


@dataclass(frozen=True)
class Material:
    """A pipe wall: Young's modulus (Pa, short-term), Poisson's ratio, where from.

    ``recurring``: the surge pressure allowed again and again, as a share of the
    rating (1.0: the standard for small pipe grants none).
    """

    key: str
    label: str
    modulus: float
    poisson: float
    recurring: float
    source: str


# Short-term moduli near 20 degC: a wave passes in a fraction of a second.  Where
# sources differ the stiffer end is taken, which gives the higher pressure rise.
MATERIALS = {
    entry.key: entry
    for entry in (
        Material("pvc", "PVC", 3.0e9, 0.38, 1.0, "handbook range 2.8-3.3 GPa, from memory"),
        Material("pe", "polyethylene", 1.03e9, 0.45, 1.5, "PPI PE handbook: 150 000 psi; AWWA M55"
                 " allows 1.5 x the rating for recurring surge; from memory"),
        Material("pex", "PEX", 0.9e9, 0.45, 1.0, "handbook range 0.6-0.9 GPa, from memory"),
        Material("copper", "copper", 117e9, 0.34, 1.0, "handbook, from memory"),
        Material("steel", "steel", 207e9, 0.30, 1.0, "handbook, from memory"),
        Material("hose", "reinforced hose", 0.1e9, 0.45, 1.0, "rough, common practice, no source"),
    )
}  # fmt: skip


def restraint_jointed(inside, wall, poisson):
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


def restraint_buried(inside, wall, poisson):
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


def restraint_anchored_upstream(inside, wall, poisson):
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


def _check_wall(inside, wall, poisson):
    require("inside", inside, 1e-4, 10.0, "diameter", "Check the inside diameter.")
    require("wall", wall, 1e-10, 2 * inside, "diameter", "Check the wall thickness.")
    require("poisson", poisson, 0.0, 0.5, "number", "Poisson's ratio lies between 0 and 0.5.")


def wave_speed(bulk_modulus, density, inside, wall, modulus, restraint):
    """Speed of a pressure wave in water inside an elastic pipe.

    a = sqrt(K / rho) / sqrt(1 + K / E * D / e * c)

    bulk_modulus: K, Pa; density: rho, kg/m3; inside: D, m; wall: e, m;
    modulus: E of the wall, Pa; restraint: c (-) from one of the relations above.
    Returns a, m/s.  Raises RangeError.  Air in the water lowers it a good deal.
    Source: Korteweg 1878, in Wylie and Streeter 1993 chapter 1.
    """
    require("bulk_modulus", bulk_modulus, 1e8, 1e10, "pressure", "Water has about 2.2 GPa.")
    require("density", density, 500.0, 2000.0, "density", "Water has about 1000 kg/m3.")
    require("modulus", modulus, 1e6, 1e13, "pressure", "Check the wall's Young's modulus.")
    require("restraint", restraint, 0.1, 20.0, "number", "Use one of the wall factors.")
    flexibility = bulk_modulus / modulus * inside / wall * restraint
    return math.sqrt(bulk_modulus / density) / math.sqrt(1 + flexibility)


def joukowsky_rise(density, speed, velocity):
    """Pressure rise when a flow is stopped at once.

    Delta_p = rho * a * v

    density: kg/m3; speed: wave speed a, m/s; velocity: the velocity stopped, m/s, >= 0.
    Returns Pa.  Raises RangeError.  Source: Joukowsky 1898.

    >>> joukowsky_rise(1000.0, 1200.0, 1.0)
    1200000.0
    """
    require("velocity", velocity, 0.0, 100.0, "speed", "Give the velocity that is stopped.")
    return density * speed * velocity


def critical_time(length, speed):
    """Time of a wave's way to the far end and back: a closing faster than it is sudden.

    T_c = 2 * L / a

    length: L, m, > 0; speed: a, m/s, > 0.  Returns s.  Raises RangeError.
    Source: Wylie and Streeter 1993 chapter 1.

    >>> critical_time(600.0, 1200.0)
    1.0
    """
    require("length", length, 1e-6, 1e6, "length", "Give the length of pipe.")
    require("speed", speed, 1.0, 2000.0, "speed", "Check the wave speed.")
    return 2 * length / speed


def michaud_rise(density, length, velocity, closing):
    """Pressure rise when the velocity at the valve falls evenly over the closing time.

    Delta_p = 2 * rho * L * v / T

    density: kg/m3; length: L, m; velocity: v, m/s; closing: T, s, not under 2 L / a.
    Returns Pa (equal to Joukowsky's at T = 2 L / a).  Raises RangeError.
    Source: Michaud 1878.
    """
    require("closing", closing, 1e-9, 1e6, "time", "Give the closing time.")
    return 2 * density * length * velocity / closing


def rigid_column_rise(density, length, velocity, closing, pressure):
    """Pressure rise towards which a very slow, even closing of the opening tends.

    Delta_p = p * n / 2 * (n + sqrt(n**2 + 4)) with n = rho * L * v / (p * T)

    density: kg/m3; length: L, m; velocity: v, m/s; closing: T, s; pressure: p,
    gauge pressure at the valve, Pa, > 0.
    Returns Pa.  Raises RangeError.
    Source: Allievi's limit for slow uniform closing (Chaudhry 2014), from memory.
    """
    require("closing", closing, 1e-9, 1e6, "time", "Give the closing time.")
    require("pressure", pressure, 1.0, 1e9, "pressure", "Give the pressure at the valve.")
    n = density * length * velocity / (pressure * closing)
    return pressure * n / 2 * (n + math.sqrt(n * n + 4))


CHAINS = 12  # chains followed a period; the peak is found to about 0.3 % of the rise


@dataclass(frozen=True)
class Phase:
    """The highest phase of a closing: openings (share) and head ratios before and at it.

    ``zeta`` is the square root of the pressure over the pressure at rest;
    ``allievi`` is Allievi's number rho a v / (2 p).
    """

    allievi: float
    opening_before: float
    zeta_before: float
    opening: float
    zeta: float
    rise: float  # Pa


def allievi_phase(density, speed, length, velocity, closing, pressure):
    """The phase of highest pressure while a valve's opening is closed evenly.

    zeta_i**2 + zeta_(i-1)**2 - 2 = 2 * A * (eta_(i-1) * zeta_(i-1) - eta_i * zeta_i)
    with A = rho * a * v / (2 * p), phases 2 L / a apart; Delta_p = p * (zeta**2 - 1)

    density: kg/m3; speed: a, m/s; length: L, m; velocity: v, m/s; closing: T, s,
    0 to 1e6; pressure: p, gauge pressure at the valve, Pa, > 0.
    Returns ``Phase``.  Raises RangeError.
    Source: Allievi's chain of equations, frictionless pipe fed at constant
    pressure (Chaudhry 2014; Wylie and Streeter 1993), from memory.
    """
    require("closing", closing, 0.0, 1e6, "time", "Give the closing time.")
    require("pressure", pressure, 1.0, 1e9, "pressure", "Give the pressure at the valve.")
    number = joukowsky_rise(density, speed, velocity) / (2 * pressure)
    period = critical_time(length, speed)
    # Each chain sees moments one period apart; several, begun at shares of the
    # first period and one that ends as the valve shuts, together find the peak.
    starts = [period * (k + 1) / CHAINS for k in range(CHAINS)]
    starts.append(closing - period * math.floor(closing / period))
    chains = [_chain(number, closing, period, start) for start in starts]
    before, eta_before, zeta, eta = max(chains, key=lambda phase: phase[2])
    return Phase(number, eta_before, before, eta, zeta, pressure * (zeta * zeta - 1))


def _chain(number, closing, period, start):
    """(zeta before, eta before, zeta, eta) at the highest phase of one chain."""
    zeta, eta, time = 1.0, 1.0, start
    best = (1.0, 1.0, 1.0, 1.0)
    while True:
        now = max(0.0, 1 - time / closing) if time < closing * (1 - 1e-12) else 0.0
        right = 2 - zeta * zeta + 2 * number * eta * zeta
        after = -number * now + math.sqrt((number * now) ** 2 + max(0.0, right))
        if after > best[2]:
            best = (zeta, eta, after, now)
        # The chain settles within a few dozen phases; a closing of thousands need
        # not be followed to its end.
        if now == 0.0 or abs(after - zeta) < 1e-9:
            return best
        zeta, eta, time = after, now, time + period


def closing_rise(density, speed, length, velocity, closing, pressure):
    """Pressure rise at a valve whose opening is closed evenly in a given time.

    Delta_p = rho * a * v up to T = 2 * L / a, beyond it Allievi's highest phase

    Arguments as for ``allievi_phase``; closing 0 is a sudden stop.  Returns Pa.
    Raises RangeError.  Source: Joukowsky 1898, Allievi 1913; agrees with the
    method of characteristics in the tests.
    """
    if closing <= critical_time(length, speed):
        return joukowsky_rise(density, speed, velocity)
    return allievi_phase(density, speed, length, velocity, closing, pressure).rise


def closing_time_for(density, speed, length, velocity, pressure, rise):
    """Shortest closing time that keeps the rise at or under ``rise`` (0: any will do).

    closing_rise(T) = Delta_p, solved for T

    rise: Delta_p allowed, Pa, > 0; other arguments as for ``allievi_phase``.
    Returns s.  Raises RangeError, InputError where nothing is left for a rise.
    Source: the relation above; bracketed by Michaud's and the rigid column's times.
    """
    if rise <= 0:
        raise InputError(
            "The pressure at rest already uses up the rating: nothing is left for a rise."
        )
    require("pressure", pressure, 1.0, 1e9, "pressure", "Give the pressure at the valve.")
    if joukowsky_rise(density, speed, velocity) <= rise:
        return 0.0
    simple = density * length * velocity / rise * max(2.0, math.sqrt(1 + rise / pressure))

    def over(closing):
        return closing_rise(density, speed, length, velocity, closing, pressure) - rise

    tolerance = 1e-4 * simple
    found = root(over, critical_time(length, speed), 2 * simple, tolerance) + tolerance
    # On the safe side of what the root finder leaves open.
    return found if over(found) <= 0 else found + 0.01 * simple


def low_side(pressure, rise):
    """Gauge pressure left when the wave comes back with its sign turned.

    p_low = p - Delta_p

    pressure: gauge pressure at rest, Pa; rise: Delta_p, Pa.  Returns Pa (gauge);
    the same fall is seen beyond a pump that stops at once.
    Raises nothing.  Source: Wylie and Streeter 1993 chapter 1.

    >>> low_side(3e5, 5e5)
    -200000.0
    """
    return pressure - rise


def column_separates(low, air_pressure, vapour_pressure):
    """Whether the water boils and its column parts: p_low + p_air <= p_vapour.

    low: gauge pressure, Pa; air_pressure, vapour_pressure: absolute, Pa.
    Returns a bool.  When the parted column closes again the rise can be larger
    than Joukowsky's.  Raises nothing.  Source: Wylie and Streeter 1993 chapter 8.
    """
    return low + air_pressure <= vapour_pressure


def relief_flow(flow, sudden_rise, rise):
    """Flow a relief valve beside the closing valve must pass to hold the rise.

    Q_r = Q * (1 - Delta_p / Delta_p_sudden), never under 0

    flow: Q stopped, m3/s; sudden_rise: Joukowsky's, Pa, > 0; rise: allowed, Pa, >= 0.
    Returns m3/s.  Raises RangeError.
    Source: a wave of Delta_p stops only the velocity Delta_p / (rho a); the rest
    must go on flowing (from Joukowsky's relation).
    """
    require("sudden_rise", sudden_rise, 1e-9, 1e9, "pressure", "Give the sudden rise.")
    require("rise", rise, 0.0, 1e9, "pressure", "Give the rise that is allowed.")
    return max(0.0, flow * (1 - rise / sudden_rise))
