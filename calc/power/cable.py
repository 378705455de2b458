"""Cables: resistance, voltage drop, and the smallest conductor that keeps to a drop.

Only the voltage drop is worked out here.  Whether a conductor may carry its current where it lies,
and how it is protected, the local code and a licensed electrician decide; a conductor that is
enough for the drop may still be too small for that.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc import practice
from calc.errors import InputError, require
from calc.units import CELSIUS, INCH


@dataclass(frozen=True)
class Metal:
    """A conductor's metal: resistivity at 20 degC, ohm m; its rise with temperature, 1/K."""

    key: str
    resistivity: float
    rise: float


# IEC 60028 (annealed copper, 1/58 ohm mm2/m) and IEC 60889 (hard-drawn aluminium), from memory
METALS = {
    "copper": Metal("copper", 1e-6 / 58, 3.93e-3),
    "aluminium": Metal("aluminium", 2.8264e-8, 4.03e-3),
}

# Conductors in the circuit that the drop is counted over, for each metre of the way there: both of
# two; of three phases sqrt(3) of one, between two phases.  Source: circuit theory.
CIRCUITS = {"dc": 2.0, "single": 2.0, "three": math.sqrt(3)}


@dataclass(frozen=True)
class Conductor:
    """A size that is sold: ``area`` in m2; ``allowance``: its resistance over that of the area."""

    name: str
    area: float
    allowance: float


def awg_area(gauge: int) -> float:
    """Area of a conductor by its American gauge.

    d = 0.005 in * 92**((36 - n) / 39), A = pi d**2 / 4
    gauge: n, whole number, -3 (4/0) to 40; 0 is 1/0, -1 is 2/0.  Returns m2.
    Raises RangeError outside.  Source: ASTM B258, exact.

    >>> round(awg_area(12) * 1e6, 4)
    3.3088
    """
    require("gauge", gauge, -3, 40, "number", "American gauges go from 40 to 4/0.")
    return math.pi / 4 * (0.005 * INCH * 92 ** ((36 - gauge) / 39)) ** 2


def _awg(gauge: int) -> Conductor:
    name = f"{1 - gauge}/0" if gauge <= 0 else str(gauge)
    return Conductor(f"{name} AWG", awg_area(gauge), practice.STRANDED_AWG)


def _mm2(allowance: float) -> tuple[Conductor, ...]:
    areas = (0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240)
    return tuple(Conductor(f"{area:g} mm²", area * 1e-6, allowance) for area in areas)


# Sizes in rising order.  IEC 60228 classes 2 (stranded) and 5 (flexible), from memory; gauges as
# they are usually sold, common practice.
SERIES = {
    "mm2": _mm2(practice.STRANDED),
    "mm2-flexible": _mm2(practice.FLEXIBLE),
    "awg": tuple(_awg(gauge) for gauge in (18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3)),
}


def resistance(
    area_m2: float, temperature_k: float, metal: str = "copper", allowance: float = 1.0
) -> float:
    """Resistance of one metre of one conductor.

    R' = a rho (1 + alpha (T - 293.15 K)) / A
    area_m2: A, m2, 1e-8 to 1e-2; temperature_k: T of the conductor, K, 203 to 423; metal: a key of
    ``METALS``; allowance: a, 1 to 1.5, a share more for strands that are laid and drawn.
    Returns ohm/m.  Raises RangeError outside, InputError for another metal.
    Source: IEC 60028, IEC 60889.

    >>> round(resistance(1e-6, 293.15) * 58, 9)
    1.0
    """
    require("area_m2", area_m2, 1e-8, 1e-2, "area", "Check the size of the conductor.")
    require("temperature_k", temperature_k, 203.0, 423.0, "temperature", "Check the cable.")
    require("allowance", allowance, 1.0, 1.5, "number")
    if metal not in METALS:
        raise InputError("A conductor is of copper or of aluminium.", name="metal")
    one = METALS[metal]
    warm = 1 + one.rise * (temperature_k - CELSIUS - 20)
    return allowance * one.resistivity * warm / area_m2


def current(circuit: str, power_w: float, voltage_v: float, power_factor: float = 1.0) -> float:
    """Current that a power takes.

    I = P / (U cos phi), three phases: P / (sqrt(3) U cos phi)
    circuit: a key of ``CIRCUITS``; power_w: P, W, 0 to 1e6; voltage_v: U (three phases: between
    two), V, 1 to 1500; power_factor: cos phi, 0.1 to 1, counted for AC only.
    Returns A.  Raises RangeError outside, InputError for another circuit.  Source: definition.

    >>> current("dc", 480.0, 48.0)
    10.0
    """
    _check_circuit(circuit)
    require("power_w", power_w, 0.0, 1e6, "power")
    require("voltage_v", voltage_v, 1.0, 1500.0, "voltage", "Give the voltage of the supply.")
    require("power_factor", power_factor, 0.1, 1.0, "number")
    factor = 1.0 if circuit == "dc" else power_factor
    return power_w / (CIRCUITS[circuit] ** (circuit == "three") * voltage_v * factor)


def voltage_drop(
    circuit: str,
    length_m: float,
    current_a: float,
    ohm_per_m: float,
    power_factor: float = 1.0,
    reactance: float = practice.CABLE_REACTANCE,
) -> float:
    """Voltage lost on the way there and back.

    dU = k L I (R' cos phi + X' sin phi), k = 2 for DC and one phase, sqrt(3) for three
    circuit: a key of ``CIRCUITS``; length_m: L, m, one way, 0 to 1e5 (the way back is counted
    here); current_a: I, A, 0 to 1e4; ohm_per_m: R', ohm/m of one conductor, 0 to 100;
    power_factor: cos phi, 0.1 to 1; reactance: X', ohm/m of one conductor, 0 to 0.01.  DC knows
    neither of the last two.
    Returns V.  Raises RangeError outside, InputError for another circuit.
    Source: IEC 60364-5-52 annex G, from memory; the angle between both ends is left out.

    >>> round(voltage_drop("dc", 100.0, 10.0, 0.001), 9)
    2.0
    """
    _check_circuit(circuit)
    require("length_m", length_m, 0.0, 1e5, "length", "Give the length one way.")
    require("current_a", current_a, 0.0, 1e4, "current")
    require("ohm_per_m", ohm_per_m, 0.0, 100.0, "number")
    require("power_factor", power_factor, 0.1, 1.0, "number")
    require("reactance", reactance, 0.0, 0.01, "number")
    real, across = _parts(circuit, power_factor)
    return CIRCUITS[circuit] * length_m * current_a * (ohm_per_m * real + reactance * across)


def _check_circuit(circuit: str) -> None:
    if circuit not in CIRCUITS:
        raise InputError("Choose DC, one phase or three phases.", name="circuit")


def _parts(circuit: str, power_factor: float) -> tuple[float, float]:
    """(cos phi, sin phi); DC has no second part."""
    if circuit == "dc":
        return 1.0, 0.0
    return power_factor, math.sqrt(1 - power_factor * power_factor)


@dataclass(frozen=True)
class Line:
    """A cable's task.

    circuit: a key of ``CIRCUITS``; voltage_v: V at the source; current_a: A while running;
    length_m: m one way; start_times: current at start over running; power_factor: AC only, at
    start also (a motor that starts has a lower one, so the drop is on the careful side for thin
    cables); temperature_k: K of the conductor; metal: a key of ``METALS``.
    Raises RangeError or InputError by the names of these fields.
    """

    circuit: str
    voltage_v: float
    current_a: float
    length_m: float
    start_times: float = 1.0
    power_factor: float = 1.0
    temperature_k: float = practice.CABLE_WARM
    metal: str = "copper"

    def __post_init__(self) -> None:
        _check_circuit(self.circuit)
        require("voltage_v", self.voltage_v, 1.0, 1500.0, "voltage", "Give the supply's voltage.")
        require("current_a", self.current_a, 0.0, 1e3, "current", "Give the running current.")
        require("length_m", self.length_m, 0.0, 1e5, "length", "Give the length one way.")
        require("start_times", self.start_times, 1.0, 10.0, "number", "Starting takes more.")
        require("power_factor", self.power_factor, 0.1, 1.0, "number")
        resistance(1e-6, self.temperature_k, self.metal)

    def drop(self, ohm_per_m: float, times: float = 1.0) -> float:
        """``voltage_drop`` of this line at ``times`` the running current (number), V."""
        return voltage_drop(
            self.circuit, self.length_m, times * self.current_a, ohm_per_m, self.power_factor
        )


@dataclass(frozen=True)
class Drop:
    """What a conductor takes of a line: drops and voltages in V, shares of the supply's voltage.

    ``left``: V at the motor while it runs, ``start_left`` while it starts (a motor that finds less
    than it needs then may not start); ``loss``: W turned into heat while it runs.
    """

    conductor: Conductor
    drop: float
    share: float
    left: float
    start_drop: float
    start_share: float
    start_left: float
    loss: float


def drop_of(line: Line, conductor: Conductor) -> Drop:
    """Voltage drop of one conductor, running and starting, and the voltage left at the motor.

    dU as ``voltage_drop``; P_loss = n L I**2 R', n = 2, or 3 for three phases.  What is left
    stops at 0 V: such a start does not happen.  Current-carrying capacity is not looked at.
    Returns ``Drop``.  Raises RangeError.  Source: circuit theory.

    >>> worked = drop_of(Line("dc", 48.0, 10.0, 30.0), SERIES["mm2"][5])
    >>> worked.conductor.name, round(worked.drop, 2), round(worked.left, 2)
    ('6 mm²', 2.06, 45.94)
    """
    ohm = resistance(conductor.area, line.temperature_k, line.metal, conductor.allowance)
    drop, start = line.drop(ohm), line.drop(ohm, line.start_times)
    wires = 3 if line.circuit == "three" else 2
    volts = line.voltage_v
    return Drop(
        conductor, drop, drop / volts, max(0.0, volts - drop),
        start, start / volts, max(0.0, volts - start),
        wires * line.length_m * line.current_a**2 * ohm,
    )  # fmt: skip


def least_area(
    line: Line,
    allowance: float,
    most_share: float = practice.DROP_RUNNING,
    most_start_share: float = practice.DROP_STARTING,
) -> float:
    """The area that keeps both drops exactly: ``voltage_drop`` solved for the area.

    allowance: 1 to 1.5, number, as for ``resistance``; most_share, most_start_share: shares of the
    supply's voltage, 0.001 to 0.5, running and starting.
    Returns m2, infinite where the reactance alone takes more.  Raises RangeError outside.
    Source: circuit theory.  Current-carrying capacity is not decided here.
    """
    require("most_share", most_share, 0.001, 0.5, "percent", "Choose a drop that you accept.")
    require("most_start_share", most_start_share, 0.001, 0.5, "percent", "Choose a drop.")
    share = min(most_share, most_start_share / line.start_times)
    per = CIRCUITS[line.circuit] * line.length_m * line.current_a
    if per == 0:
        return 0.0
    real, across = _parts(line.circuit, line.power_factor)
    ohm = (share * line.voltage_v / per - practice.CABLE_REACTANCE * across) / real
    unit = resistance(1e-6, line.temperature_k, line.metal, allowance)
    return unit * 1e-6 / ohm if ohm > 0 else math.inf


def smallest(
    line: Line,
    series: str,
    most_share: float = practice.DROP_RUNNING,
    most_start_share: float = practice.DROP_STARTING,
) -> Drop | None:
    """The smallest conductor of a series whose drops keep to both limits; None where none does.

    series: a key of ``SERIES``; most_share, most_start_share: shares of the supply's voltage,
    0.001 to 0.5, running and starting.
    This is what the voltage drop alone asks for.  The current-carrying capacity is not decided
    here: the local code and a licensed electrician decide it, and may ask for a larger conductor.
    Returns ``Drop`` or None.  Raises InputError for another series, RangeError outside.

    >>> smallest(Line("dc", 48.0, 10.0, 30.0), "awg").conductor.name
    '8 AWG'
    """
    if series not in SERIES:
        raise InputError("Choose sizes in mm² or AWG.", name="series")
    sizes = SERIES[series]
    least = least_area(line, sizes[0].allowance, most_share, most_start_share)
    for one in sizes:
        if one.area >= least * (1 - 1e-12):  # a drop met exactly is met
            return drop_of(line, one)
    return None


@dataclass(frozen=True)
class Protection:
    """Advice, never a decision: ``rating`` A of a fuse or breaker (None: larger than the list).

    ``least``: A, the current times ``times``.  A fuse protects the cable: where the cable may not
    carry ``rating``, the cable must be larger.  Local code and a licensed electrician decide.
    """

    times: float
    least: float
    rating: float | None
    dc: bool


def protection(circuit: str, current_a: float, times: float = practice.FUSE_TIMES) -> Protection:
    """Usual rating of a fuse or breaker for a current, as advice that defers to the local code.

    I_n >= m I, the next that is sold
    circuit: a key of ``CIRCUITS`` (a DC circuit needs a device rated for DC at its voltage);
    current_a: I, A, 0 to 1e3; times: m, number, 1 to 3.
    Returns ``Protection``.  Raises RangeError outside.  Source: common practice, no source.

    >>> protection("dc", 10.0).rating
    15
    """
    _check_circuit(circuit)
    require("current_a", current_a, 0.0, 1e3, "current", "Give the running current.")
    require("times", times, 1.0, 3.0, "number")
    least = current_a * times
    sold = (one for one in practice.FUSE_RATINGS if one >= least * (1 - 1e-12))
    return Protection(times, least, next(sold, None), circuit == "dc")
