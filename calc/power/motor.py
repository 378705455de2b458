"""What a pump draws: from its duty and an efficiency, or from its own power column."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.pump.laws import water_power

if TYPE_CHECKING:
    from calc.pump.curve import Pump


@dataclass(frozen=True)
class Draw:
    """A pump as the year knows it: power_w W while it runs, flow_m3s m3/s it then gives.

    standby_w: W of its controller at all hours.
    Raises RangeError by the names of these fields.
    """

    power_w: float
    flow_m3s: float
    standby_w: float = practice.PUMP_STANDBY

    def __post_init__(self) -> None:
        require("power_w", self.power_w, 1.0, 1e5, "power", "Give what the pump draws.")
        require("flow_m3s", self.flow_m3s, 1e-7, 1.0, "flow", "Give the flow at the duty.")
        require("standby_w", self.standby_w, 0.0, 500.0, "power")

    @property
    def joule_per_m3(self) -> float:
        """Energy for each m3 pumped, J/m3."""
        return self.power_w / self.flow_m3s


def load_efficiency(load: float) -> float:
    """Efficiency of an inverter or a motor's controller at part load.

    Straight lines between usual points, level beyond them.
    load: share of its rated power, 0 to 2.  Returns a share.  Raises RangeError outside.
    Source: common practice, no source; a maker's figure goes before it.

    >>> load_efficiency(0.5), load_efficiency(0.0)
    (0.92, 0.7)
    """
    require("load", load, 0.0, 2.0, "percent", "It is built for no more.")
    points = practice.LOAD_EFFICIENCY
    if load <= points[0][0]:
        return points[0][1]
    for (a, low), (b, high) in zip(points, points[1:], strict=False):
        if load <= b:
            return low + (high - low) * (load - a) / (b - a)
    return points[-1][1]


def through_controller(motor_w: float, rated_w: float) -> float:
    """Power that a controller or inverter draws to give a motor its power.

    P = P_m / eta(P_m / P_rated)
    motor_w: P_m, W, 0 to 1e5; rated_w: of the controller, W, 1 to 1e5.
    Returns W.  Raises RangeError outside and where the motor takes over twice the rated power.
    Source: definition of efficiency.
    """
    require("motor_w", motor_w, 0.0, 1e5, "power")
    require("rated_w", rated_w, 1.0, 1e5, "power", "Look at the controller's label.")
    return motor_w / load_efficiency(motor_w / rated_w)


def draw_by_efficiency(
    flow_m3s: float,
    head_m: float,
    density: float,
    pump_efficiency: float,
    motor_efficiency: float = practice.MOTOR_EFFICIENCY,
    controller_w: float | None = None,
    standby_w: float = practice.PUMP_STANDBY,
) -> Draw:
    """What a pump draws at a duty, from efficiencies.

    P = rho g Q H / (eta_p eta_m eta_c)
    flow_m3s: Q, m3/s, 1e-7 to 1; head_m: H, m, 0.1 to 1e3; density: rho, kg/m3;
    pump_efficiency, motor_efficiency: shares, 0.01 to 1; controller_w: rated power of the
    controller, W (None: its usual efficiency at any load); standby_w: W.
    Returns ``Draw``.  Raises RangeError outside.  Source: definition of efficiency.

    >>> round(draw_by_efficiency(1e-3, 10.0, 1000.0, 0.5, 1.0).power_w)
    218
    """
    require("flow_m3s", flow_m3s, 1e-7, 1.0, "flow", "Give the flow at the duty.")
    require("head_m", head_m, 0.1, 1e3, "head", "Give the head at the duty.")
    require("pump_efficiency", pump_efficiency, 0.01, 1.0, "percent", "Check the pump.")
    require("motor_efficiency", motor_efficiency, 0.01, 1.0, "percent", "Check the motor.")
    motor = water_power(flow_m3s, head_m, density) / (pump_efficiency * motor_efficiency)
    if controller_w is None:
        return Draw(motor / practice.CONTROL_EFFICIENCY, flow_m3s, standby_w)
    return Draw(through_controller(motor, controller_w), flow_m3s, standby_w)


def drawn_by(
    pump: Pump,
    flow_m3s: float,
    speed: float,
    density: float,
    motor_efficiency: float = practice.MOTOR_EFFICIENCY,
    controller_w: float | None = None,
    inverter_w: float | None = None,
) -> float:
    """Power that a pump draws at a flow and speed, from its own table.

    P = P_e(Q, s) where the table says what is drawn, else P_s(Q, s) / (eta_m eta_c)
    pump: its table; flow_m3s: Q, m3/s; speed: s, share of full; density: kg/m3;
    motor_efficiency: a share, for a table of shaft power or pump efficiency; controller_w: rated
    W of the controller there (None: its usual efficiency); inverter_w: rated W of an inverter in
    front of a pump that takes AC (None: no inverter).
    Returns W.  Raises RangeError outside the table, InputError, named "pump", where the table has
    neither power nor efficiency.  Source: affinity laws, definition of efficiency.
    """
    drawn = pump.power_at(flow_m3s, speed, density)
    if drawn is None:
        shaft = pump.shaft_power_at(flow_m3s, speed, density)
        if shaft is None:
            raise InputError("The pump's table tells neither power nor efficiency.", name="pump")
        require("motor_efficiency", motor_efficiency, 0.01, 1.0, "percent", "Check the motor.")
        motor = shaft / motor_efficiency
        usual = motor / practice.CONTROL_EFFICIENCY
        drawn = usual if controller_w is None else through_controller(motor, controller_w)
    return drawn if inverter_w is None else through_controller(drawn, inverter_w)


def draw_of_pump(
    pump: Pump,
    flow_m3s: float,
    speed: float,
    density: float,
    standby_w: float = practice.PUMP_STANDBY,
    inverter_w: float | None = None,
) -> Draw:
    """``drawn_by`` with the flow and the standby, as the year wants it.

    Arguments as for ``drawn_by``; standby_w: W at all hours.  Returns ``Draw``.
    """
    drawn = drawn_by(pump, flow_m3s, speed, density, inverter_w=inverter_w)
    return Draw(drawn, flow_m3s, standby_w)
