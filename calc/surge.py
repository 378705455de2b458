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


def wave_speed(
    bulk_modulus: float,
    density: float,
    inside: float,
    wall: float,
    modulus: float,
    restraint: float,
) -> float:
    """Speed of a pressure wave in water inside an elastic pipe.

    a = sqrt(K / rho) / sqrt(1 + K / E * D / e * c)

    bulk_modulus: K, Pa; density: rho, kg/m3; inside: D, m; wall: e, m;
    modulus: E of the wall, Pa; restraint: c (-) from one of the relations above.
    Returns a, m/s.  Raises RangeError.  Air in the water lowers it a good deal.
    Source: Korteweg 1878, in Wylie and Streeter 1993 chapter 1.
    """
    require("bulk_modulus", bulk_modulus, 1e8, 1e10, "pressure", "Water has about 2.2 GPa.")
    require("density", density, 500.0, 2000.0, "density", "Water has about 1000 kg/m³.")
    require("modulus", modulus, 1e6, 1e13, "pressure", "Check the wall's Young's modulus.")
    require("restraint", restraint, 0.1, 20.0, "number", "Use one of the wall factors.")
    flexibility = bulk_modulus / modulus * inside / wall * restraint
    return math.sqrt(bulk_modulus / density) / math.sqrt(1 + flexibility)


FASTEST = 100.0  # m/s, beyond any water in a pipe; our choice
_TOO_FAST = (
    "That is the water speed the flow makes in so narrow a pipe: lower the flow or choose a "
    "larger pipe."
)


def joukowsky_rise(density: float, speed: float, velocity: float) -> float:
    """Pressure rise when a flow is stopped at once.

    Delta_p = rho * a * v

    density: kg/m3; speed: wave speed a, m/s; velocity: the velocity stopped, m/s, 0 to 100.
    Returns Pa.  Raises RangeError.  Source: Joukowsky 1898.

    >>> joukowsky_rise(1000.0, 1200.0, 1.0)
    1200000.0
    """
    require("velocity", velocity, 0.0, FASTEST, "speed", _TOO_FAST)
    return density * speed * velocity


def critical_time(length: float, speed: float) -> float:
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


def michaud_rise(density: float, length: float, velocity: float, closing: float) -> float:
    """Pressure rise when the velocity at the valve falls evenly over the closing time.

    Delta_p = 2 * rho * L * v / T

    density: kg/m3; length: L, m; velocity: v, m/s; closing: T, s, not under 2 L / a.
    Returns Pa (equal to Joukowsky's at T = 2 L / a).  Raises RangeError.
    Source: Michaud 1878.
    """
    require("closing", closing, 1e-9, 1e6, "time", "Give the closing time.")
    return 2 * density * length * velocity / closing


POLYTROPIC = 1.2  # of air squeezed by a surge: Wylie and Streeter 1993, from memory
CHAINS = 12  # chains followed a period; the peak is found to about 0.3 % of the rise
MANY_PERIODS = 50  # of a closing, from which one chain a period finds the same peak; our choice
STRIDE = 20.0  # a stride is this part of A eta and of the opening left: off by 1e-5; our choice
SETTLED = 1e-4  # of the rise, where a chain that only creeps upwards is taken as arrived
LONGEST = 1e6  # s, the longest closing followed


@dataclass(frozen=True)
class Phase:
    """The highest phase of a closing: openings (share) and head ratios before and at it.

    ``zeta`` is the square root of the pressure over the pressure at rest;
    ``allievi`` is Allievi's number rho a v / (2 p); ``rise``: Pa.
    """

    allievi: float
    opening_before: float
    zeta_before: float
    opening: float
    zeta: float
    rise: float


def allievi_phase(
    density: float,
    speed: float,
    length: float,
    velocity: float,
    closing: float,
    pressure: float,
) -> Phase:
    """The phase of highest pressure while a valve's opening is closed evenly.

    zeta_i**2 + zeta_(i-1)**2 - 2 = 2 * A * (eta_(i-1) * zeta_(i-1) - eta_i * zeta_i)
    with A = rho * a * v / (2 * p), phases 2 L / a apart; Delta_p = p * (zeta**2 - 1)

    density: kg/m3; speed: a, m/s; length: L, m; velocity: v, m/s; closing: T, s,
    0 to 1e6; pressure: p, gauge pressure at the valve, Pa, > 0.
    Returns ``Phase``.  Raises RangeError.
    Source: Allievi's chain of equations, frictionless pipe fed at constant
    pressure (Chaudhry 2014; Wylie and Streeter 1993), from memory.
    """
    require("closing", closing, 0.0, LONGEST, "time", "Give the closing time.")
    require("pressure", pressure, 1.0, 1e9, "pressure", "Give the pressure at the valve.")
    number = joukowsky_rise(density, speed, velocity) / (2 * pressure)
    period = critical_time(length, speed)
    # Each chain sees moments one period apart; several, begun at shares of the
    # first period and one that ends as the valve shuts, together find the peak.
    count = CHAINS if closing < MANY_PERIODS * period else 1
    starts = [period * (k + 1) / count for k in range(count)]
    starts.append(closing - period * math.floor(closing / period))
    chains = [_chain(number, closing, period, start) for start in starts]
    before, eta_before, zeta, eta = max(chains, key=lambda phase: phase[2])
    return Phase(number, eta_before, before, eta, zeta, pressure * (zeta * zeta - 1))


def _chain(number: float, closing: float, period: float, start: float) -> tuple[float, ...]:
    """(zeta before, eta before, zeta, eta) at the highest phase of one chain.

    The equation has one fixed point, zeta* = n / 2 + sqrt(n**2 / 4 + 1) with n = A * period / T,
    and with e = zeta - zeta* reads e_i (zeta_i + zeta* + 2 A eta_i)
    = e_(i-1) (2 A eta_(i-1) - zeta_(i-1) - zeta*).  So below it a chain only climbs, and once at
    or above it no later phase is higher: there it ends.  While A eta is large it creeps up over
    thousands of phases; being a trapezoidal rule, it may then take many in one stride, as the
    same equation with A / m and m periods, which has the same fixed point.
    """
    share = period / closing if closing else math.inf
    top = number * share / 2 + math.sqrt((number * share / 2) ** 2 + 1)
    zeta, eta, time = 1.0, 1.0, start
    best = (1.0, 1.0, 1.0, 1.0)
    while True:
        now = _opening(time, closing)
        after = _next_zeta(number, eta, zeta, now)
        if after > best[2]:
            best = (zeta, eta, after, now)
        if now == 0.0 or after >= top:
            return best
        zeta, eta = after, now
        strides = math.floor(min(number, 1 / share) * eta / STRIDE)
        if strides > 1:
            now = _opening(time + strides * period, closing)
            zeta, eta = _next_zeta(number / strides, eta, zeta, now), now
            time += strides * period
        time += period
        if 0 <= top - zeta <= SETTLED * (top - 1) and eta > share:
            return (top, eta, top, eta - share)


def _opening(time: float, closing: float) -> float:
    """Share of the opening left at a time (s) of an even closing."""
    return max(0.0, 1 - time / closing) if time < closing * (1 - 1e-12) else 0.0


def _next_zeta(number: float, eta: float, zeta: float, now: float) -> float:
    """zeta one phase on, from Allievi's equation."""
    right = 2 - zeta * zeta + 2 * number * eta * zeta
    return -number * now + math.sqrt((number * now) ** 2 + max(0.0, right))


def closing_rise(
    density: float,
    speed: float,
    length: float,
    velocity: float,
    closing: float,
    pressure: float,
) -> float:
    """Pressure rise at a valve whose opening is closed evenly in a given time.

    Delta_p = rho * a * v up to T = 2 * L / a, beyond it Allievi's highest phase

    Arguments as for ``allievi_phase`` (kg/m3, m/s, m, m/s, s, Pa); closing 0 is a sudden stop.
    Returns Pa.  Raises RangeError.  Source: Joukowsky 1898, Allievi 1913; agrees with the
    method of characteristics in the tests.
    """
    if closing <= critical_time(length, speed):
        return joukowsky_rise(density, speed, velocity)
    return allievi_phase(density, speed, length, velocity, closing, pressure).rise


def closing_time_for(
    density: float,
    speed: float,
    length: float,
    velocity: float,
    pressure: float,
    rise: float,
) -> float:
    """Shortest closing time that keeps the rise at or under ``rise`` (0: any will do).

    closing_rise(T) = Delta_p, solved for T

    rise: Delta_p allowed, Pa, > 0; other arguments as for ``allievi_phase`` (kg/m3, m/s, m, m/s,
    Pa).  Returns s; infinity where even 1e6 s are too short.  Raises RangeError, and InputError
    where nothing is left for a rise.
    Source: the relation above; bracketed by Michaud's and the rigid column's times.
    """
    if rise <= 0:
        raise InputError(
            "The pressure at rest already uses up the rating: nothing is left for a rise.",
            name="pressure",
        )
    require("pressure", pressure, 1.0, 1e9, "pressure", "Give the pressure at the valve.")
    if joukowsky_rise(density, speed, velocity) <= rise:
        return 0.0
    simple = density * length * velocity / rise * max(2.0, math.sqrt(1 + rise / pressure))

    def over(closing: float) -> float:
        return closing_rise(density, speed, length, velocity, closing, pressure) - rise

    high = min(2 * simple, LONGEST)
    if over(high) > 0:
        return math.inf
    tolerance = 1e-4 * simple
    found = root(over, critical_time(length, speed), high, tolerance) + tolerance
    # On the safe side of what the root finder leaves open.
    return found if over(min(found, LONGEST)) <= 0 else found + 0.01 * simple


def low_side(pressure: float, rise: float) -> float:
    """Gauge pressure left when the wave comes back with its sign turned.

    p_low = p - Delta_p

    pressure: gauge pressure at rest, Pa; rise: Delta_p, Pa.  Returns Pa (gauge);
    the same fall is seen beyond a pump that stops at once.
    Raises nothing.  Source: Wylie and Streeter 1993 chapter 1.

    >>> low_side(3e5, 5e5)
    -200000.0
    """
    return pressure - rise


def column_separates(low: float, air_pressure: float, vapour_pressure: float) -> bool:
    """Whether the water boils and its column parts: p_low + p_air <= p_vapour.

    low: gauge pressure, Pa; air_pressure, vapour_pressure: absolute, Pa.
    Returns a bool.  When the parted column closes again the rise can be larger
    than Joukowsky's.  Raises nothing.  Source: Wylie and Streeter 1993 chapter 8.
    """
    return low + air_pressure <= vapour_pressure


def relief_flow(flow: float, sudden_rise: float, rise: float) -> float:
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


def arrester_air(
    density: float,
    length: float,
    bore: float,
    velocity: float,
    start: float,
    highest: float,
    exponent: float = POLYTROPIC,
) -> float:
    """Air (m3, as it rests at the static pressure) that stops a column within a highest pressure.

    rho L A v^2 / 2 = p_0 V_0 ((r^((n-1)/n) - 1) / (n - 1) - (1 - r^(-1/n))), r = p_2 / p_0

    The column's motion and the push of the supply compress the air by p V^n = constant; the valve
    closes at once, friction is left out, and the arrester sits beside the valve.
    density: kg/m3; length, bore: m; velocity: m/s; start, highest: absolute pressure at rest and at
    the peak, Pa, highest above start; exponent: n, above 1.
    Returns m3.  Raises RangeError.  Source: rigid column, energy; n 1.2 between slow and quick,
    Wylie and Streeter 1993 chapter 10, from memory; checked by integration in the tests.
    """
    require("start", start, 1.0, 1e9, "pressure", "Give the pressure at rest.")
    require("highest", highest, start * (1 + 1e-9), 1e9, "pressure", "Allow a higher peak.")
    motion = density * length * math.pi / 4 * bore**2 * velocity**2 / 2
    return motion / (start * air_work(highest / start, exponent))


def air_work(ratio: float, exponent: float = POLYTROPIC) -> float:
    """Work a column does on shut-in air against the push of its supply, over p_0 V_0.

    w = (r^((n-1)/n) - 1) / (n - 1) - (1 - r^(-1/n)), r = p / p_0

    ratio: r, -, above 1 where the air is squeezed, below 1 where it gives way; exponent: n, -,
    above 1.
    Returns w, -: 0 at r = 1 and above it on either side.  Raises nothing.
    Source: p V^n = constant, integrated; n as for ``arrester_air``.

    >>> round(air_work(2.0), 4), round(air_work(0.5), 4)
    (0.1735, 0.2363)
    """
    squeezed = (ratio ** ((exponent - 1) / exponent) - 1) / (exponent - 1)
    pushed = 1 - ratio ** (-1 / exponent)
    return squeezed - pushed


def thrust(pressure: float, outside: float, angle: float = math.pi / 2) -> float:
    """Push on a bend from the pressure in it, N.

    F = 2 p (pi / 4 D^2) sin(theta / 2); an end or a closed valve: theta = pi / 3, F = p A

    pressure: gauge, Pa; outside: diameter that the joints seal on, m; angle: turned, rad.
    Returns N; what the water's own speed adds is left out: at 3 m/s a tenth of a bar.
    Raises nothing.  Source: AWWA M23, thrust at fittings, from memory.
    """
    return 2 * pressure * math.pi / 4 * outside**2 * math.sin(angle / 2)


def rejoining_peak(pressure: float, rise: float) -> float:
    """About the highest pressure when a parted water column closes again.

    p_max = p + 2 * Delta_p

    pressure: gauge pressure at rest, Pa; rise: Delta_p of the closing, Pa.  Returns Pa.
    The column returns with no more than the velocity that was stopped, and its wave may meet one
    already under way.  Raises nothing.  Source: A. Bergant, A. R. Simpson, A. S. Tijsseling,
    J. Fluids Struct. 22 (2006) 135-171, from memory; as a bound, our choice.

    >>> rejoining_peak(3e5, 5e5)
    1300000.0
    """
    return pressure + 2 * rise
