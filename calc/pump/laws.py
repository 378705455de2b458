"""Relations of pumps that need no curve: power, tolerance, least flow, restart."""

from dataclasses import dataclass

from calc import practice
from calc.errors import require
from calc.units import GRAVITY


@dataclass(frozen=True)
class Grade:
    """An acceptance grade: tolerances as shares of the promised value.

    ``power`` may lie so far above, ``efficiency`` so far below.
    """

    key: str
    flow: float
    head: float
    power: float
    efficiency: float


# ISO 9906:2012, table 8, from memory.  The standard promises one point, not a
# whole curve, and lets pumps under 10 kW be agreed more loosely.
GRADES = {
    "1B": Grade("1B", 0.05, 0.03, 0.04, 0.03),
    "2B": Grade("2B", 0.08, 0.05, 0.08, 0.05),
    "3B": Grade("3B", 0.09, 0.07, 0.09, 0.07),
}


def water_power(flow: float, head: float, density: float) -> float:
    """Power that goes into the water.

    P_w = rho * g * Q * H

    flow: Q, m3/s, >= 0; head: H, m, >= 0; density: rho, kg/m3.
    Returns W.  Raises RangeError.  Source: ISO 17769-1 definition.

    >>> round(water_power(0.001, 10.0, 1000.0), 4)
    98.0665
    """
    require("flow", flow, 0.0, 100.0, "flow", "Give a flow of zero or more.")
    require("head", head, 0.0, 1e4, "head", "Give a head of zero or more.")
    return density * GRAVITY * flow * head


def shaft_power(water: float, efficiency: float) -> float:
    """Power on the pump's shaft.

    P_s = P_w / eta_p

    water: P_w, W; efficiency: eta_p, share, 0.01 to 0.99.  Returns W.
    Raises RangeError.  Source: ISO 17769-1 definition.

    >>> shaft_power(100.0, 0.5)
    200.0
    """
    require("efficiency", efficiency, 0.01, 0.99, "percent", "Check the pump's efficiency.")
    return water / efficiency


def electrical_power(shaft: float, motor_efficiency: float, controller_efficiency: float) -> float:
    """Power drawn from the supply.

    P_e = P_s / (eta_m * eta_c)

    shaft: P_s, W; motor_efficiency: eta_m, controller_efficiency: eta_c, shares,
    0.05 to 1.  Returns W.  Raises RangeError.  Source: definition of efficiency.

    >>> electrical_power(90.0, 0.9, 1.0)
    100.0
    """
    require("motor_efficiency", motor_efficiency, 0.05, 1.0, "percent", "Check the motor.")
    require(
        "controller_efficiency",
        controller_efficiency,
        0.05,
        1.0,
        "percent",
        "Check the controller.",
    )
    return shaft / (motor_efficiency * controller_efficiency)


def wire_to_water(water: float, electrical: float) -> float:
    """Share of the electricity that ends as power in the water.

    eta_ww = P_w / P_e

    water: P_w, W, >= 0; electrical: P_e, W, > 0.  Returns a share.  Raises RangeError.
    Source: definition.

    >>> wire_to_water(150.0, 500.0)
    0.3
    """
    require("electrical", electrical, 1e-9, 1e9, "power", "Give the power drawn.")
    return water / electrical


def least_flow(best_flow: float) -> float:
    """Flow below which a small centrifugal pump should not be left running.

    Q_min = 0.10 * Q_best

    best_flow: Q_best, m3/s.  Returns m3/s.  Raises nothing.
    Source: common practice, no source; a maker's figure goes before it.

    >>> least_flow(0.001)
    0.0001
    """
    return practice.LEAST_FLOW_SHARE * best_flow


def restart_head(set_head: float) -> float:
    """Head at which a controller in standby starts the pump again.

    H_r = 0.95 * H_set

    set_head: H_set, m.  Returns m.  Raises nothing.  Source: common practice, no
    source.  A check valve holds the pressure while the pump rests.

    >>> restart_head(40.0)
    38.0
    """
    return practice.RESTART_SHARE * set_head
