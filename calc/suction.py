"""Suction lift: how far down a pump can draw, and how far it is from boiling its water.

A pump does not pull: the air outside pushes.  What that push leaves above the water's
vapour pressure, after the lift and the friction, is the net positive suction head (NPSH)
available; the pump needs a certain NPSH (its maker's figure, at that flow).

Why pumps stay far below the 10 m of theory: that height takes a perfect vacuum at no flow.
Water must still be pushed through valve and pipe and into the pump (NPSH required), worn
valves and joints let air in, and air dissolved in the water comes out under vacuum.
"""

import math
from dataclasses import dataclass

from calc import water
from calc.errors import require
from calc.units import GRAVITY

MOST_DRY_LIFT = 10.33  # m, what the air at sea level can carry: 101325 Pa over 1000 kg/m3


@dataclass(frozen=True)
class Surroundings:
    """Where the pump is: air pressure Pa, water's vapour pressure Pa and density kg/m3."""

    air_pa: float
    vapour_pa: float
    density: float

    @property
    def weight(self) -> float:
        """Pa per metre of water."""
        return self.density * GRAVITY


def place(altitude_m: float, temperature_k: float) -> Surroundings:
    """The ``Surroundings`` at an altitude for water at a temperature.

    altitude_m: m, -1000 to 9000; temperature_k: K, 273.15 to 373.15.  Returns ``Surroundings``.
    Raises RangeError outside.  Source: ISO 2533:1975 and IAPWS, see ``calc.water``.
    """
    return Surroundings(
        water.air_pressure(altitude_m),
        water.vapour_pressure(temperature_k),
        water.density(temperature_k),
    )


def theoretical_lift(site: Surroundings) -> float:
    """Lift at which still water boils under a perfect vacuum.

    z_max = (p_air - p_v) / (rho g)
    site: ``Surroundings``.  Returns m.  Source: hydrostatics.

    >>> round(theoretical_lift(place(0.0, 293.15)), 2)
    10.11
    """
    return (site.air_pa - site.vapour_pa) / site.weight


def npsh_available(site: Surroundings, lift_m: float, friction_m: float) -> float:
    """Net positive suction head available at the pump's inlet.

    NPSH_a = (p_air - p_v) / (rho g) - z - h_f
    site: ``Surroundings``; lift_m: m from water level up to the pump, -100 to 100 (minus: the water
    stands above); friction_m: m lost in the suction line, 0 or more.
    Returns m; below 0 the water would boil before it arrives.
    Raises RangeError outside.  Source: ISO 17769-1:2012, net positive suction head.
    """
    require("lift_m", lift_m, -100.0, 100.0, "length", "Give the height from water to pump.")
    require("friction_m", friction_m, 0.0, 1e12, "head")
    return theoretical_lift(site) - lift_m - friction_m


def acceleration_head(
    length_m: float, speed_ms: float, strokes: float, factor: float, gives: float
) -> float:
    """Head a piston or diaphragm pump takes to speed up the water of a stiff pipe at each stroke.

    h_a = L v (60 n) C / (K g)
    length_m: of pipe that moves in pulses, m, 0 to 10000; speed_ms: mean water speed in it, m/s, 0
    to 100; strokes: n of each chamber, 1/s, 0 to 100; factor: C, -, by the number of chambers
    (``practice.PULSING``), for strokes a minute; gives: K, -, 1 to 3, how far the water gives.
    Returns m, to be taken off the NPSH available.  Raises RangeError outside.
    Source: Hydraulic Institute, standards for reciprocating pumps (ANSI/HI 6.1-6.5), from memory;
    checked in the tests against pistons followed through a turn.

    >>> round(acceleration_head(5.0, 0.5, 5.0, 0.2, 1.4), 2)
    10.93
    """
    require("length_m", length_m, 0.0, 1e4, "length")
    require("speed_ms", speed_ms, 0.0, 100.0, "speed", "Use a wider pipe.")
    require("strokes", strokes, 0.0, 100.0, "rpm", "Give the strokes of one chamber a minute.")
    require("factor", factor, 0.0, 1.0, "number")
    require("gives", gives, 1.0, 3.0, "number")
    return length_m * speed_ms * 60 * strokes * factor / (gives * GRAVITY)


def allowable_lift(
    site: Surroundings, friction_m: float, npsh_required_m: float, margin_m: float
) -> float:
    """The highest lift that still leaves the NPSH required and a margin.

    z = (p_air - p_v) / (rho g) - h_f - NPSH_r - m
    friction_m, npsh_required_m, margin_m: m, 0 or more.  Returns m; below 0 the water must
    stand above the pump by that much.
    Raises RangeError outside.  Source: ISO 17769-1:2012, solved for the lift.
    """
    require("npsh_required_m", npsh_required_m, 0.0, 100.0, "head")
    require("margin_m", margin_m, 0.0, 100.0, "head")
    require("friction_m", friction_m, 0.0, 1e12, "head")
    return theoretical_lift(site) - friction_m - npsh_required_m - margin_m


def inlet_pressure(site: Surroundings, lift_m: float, friction_m: float) -> float:
    """Gauge pressure at the pump's inlet, as a vacuum gauge there would read.

    p_in = -rho g (z + h_f), velocity head left out
    site: ``Surroundings``; lift_m, friction_m: m.  Returns Pa, negative for a vacuum.
    Source: hydrostatics.
    """
    return -site.weight * (lift_m + friction_m)


def altitude_derated_lift(rated_lift_m: float, site: Surroundings, rated: Surroundings) -> float:
    """A dry (self-priming) lift rated at one place, at another.

    z' = z p'/p rho/rho': drawing air, a pump reaches a vacuum that is a share of the air's
    pressure, as its valves and dead space compress the air by a fixed ratio.
    rated_lift_m: m, 0 to 10.33; site, rated: ``Surroundings``.  Returns m.
    Raises RangeError outside.  Source: ideal gas compressed by a fixed ratio.
    """
    require(
        "rated_lift_m", rated_lift_m, 0.0, MOST_DRY_LIFT, "length", "No pump can lift more dry."
    )
    return rated_lift_m * site.air_pa / rated.air_pa * rated.density / site.density


def npsh_of_dry_lift(rated_lift_m: float, site: Surroundings, rated: Surroundings) -> float:
    """NPSH a pump needs, where its maker states only the largest dry lift.

    NPSH_r = max(0, H_0 - z, H - z'), H = (p_air - p_v) / (rho g), z' the dry lift at this site
    H_0 - z is what the pump left unused of the air's push where it was rated: running wet it
    needs no more.  H - z' is what it leaves unused here, drawing air.  The larger is taken.
    rated_lift_m: m, 0 to 10.33; site, rated: ``Surroundings``.  Returns m.
    Raises RangeError outside.  Source: definitions of NPSH and of the dry lift, the safe side.

    >>> sea = place(0.0, 293.15)
    >>> round(npsh_of_dry_lift(5.0, sea, sea), 2)
    5.11
    """
    wet = theoretical_lift(rated) - rated_lift_m
    dry = theoretical_lift(site) - altitude_derated_lift(rated_lift_m, site, rated)
    return max(0.0, wet, dry)


def dry_lift_for(npsh_m: float, site: Surroundings, rated: Surroundings) -> float:
    """Dry lift a pump must state so that it needs no more than an NPSH: turned round.

    z = max(H_0 - NPSH, (H - NPSH) p/p' rho'/rho), H = (p_air - p_v) / (rho g)
    npsh_m: m, 0 or more; site, rated: ``Surroundings``.  Returns m, 0 or more; above 10.33 m no
    pump has it.  Raises RangeError below 0.  Source: ``npsh_of_dry_lift``, solved for the lift.

    >>> sea = place(0.0, 293.15)
    >>> round(dry_lift_for(5.11, sea, sea), 1)
    5.0
    """
    require("npsh_m", npsh_m, 0.0, 100.0, "head")
    wet = theoretical_lift(rated) - npsh_m
    share = site.air_pa / rated.air_pa * rated.density / site.density
    return max(0.0, wet, (theoretical_lift(site) - npsh_m) / share)


def air_volume_to_clear(bore_m: float, length_m: float, site: Surroundings, lift_m: float) -> float:
    """Free air (at outside pressure) a self-priming pump must draw out before water arrives.

    V = pi/4 D^2 L
    bore_m: m above 0; length_m: m above 0; lift_m: m, up to the theoretical lift.
    Returns m3.  Raises RangeError where the lift is beyond what air can push.
    Source: all the air the pipe holds at the outside pressure, leaks not counted.
    """
    require("bore_m", bore_m, 1e-4, 2.0, "diameter")
    require("length_m", length_m, 1e-3, 1e4, "length")
    require("lift_m", lift_m, -100.0, theoretical_lift(site), "length", "Lower the pump.")
    return math.pi / 4 * bore_m**2 * length_m


def priming_time(
    bore_m: float, length_m: float, site: Surroundings, lift_m: float, displacement_m3s: float
) -> float:
    """Least time a self-priming pump takes to draw the air out of its suction line.

    t = A/q (z + L + (L - H) ln(H / (H - z))), A = pi/4 D^2, H = (p_air - p_v) / (rho g)
    As the water rises the air in the pipe thins, and each stroke takes the same volume of
    thinner air.  The pipe is taken to rise first and then run level, which takes longest.
    bore_m: m; length_m: m, at least the lift; site: ``Surroundings``; lift_m: m, 0 to below H;
    displacement_m3s: volume the pump draws a second, m3/s, above 0.
    Returns s, between V/q and 2 V/q for a pipe that only rises.
    Raises RangeError outside.
    Source: own derivation, ideal gas at constant temperature, saturated with vapour:
    d(P (L - y)) A = -q P dt with P = rho g (H - y), integrated from y = 0 to z.
    """
    limit = theoretical_lift(site)
    volume = air_volume_to_clear(bore_m, length_m, site, lift_m)
    require("lift_m", lift_m, 0.0, limit * (1 - 1e-9), "length", "Lower the pump.")
    require("length_m", length_m, lift_m, 1e4, "length", "The pipe must reach down to the water.")
    require("displacement_m3s", displacement_m3s, 1e-9, 10.0, "flow", "Give what the pump moves.")
    thinned = lift_m + length_m + (length_m - limit) * math.log(limit / (limit - lift_m))
    return volume / length_m * thinned / displacement_m3s
