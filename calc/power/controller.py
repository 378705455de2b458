"""Charge controllers: one that follows the panels' maximum power, one that only switches."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.power.array import RATED_AT, RATED_SUN, USUAL_LOSSES, Array, Losses, powers

if TYPE_CHECKING:
    from collections.abc import Sequence

KINDS = {"mppt": practice.MPPT_EFFICIENCY, "pwm": practice.PWM_EFFICIENCY}


@dataclass(frozen=True)
class Controller:
    """A charge controller.

    kind: "mppt" (works the panels at maximum power) or "pwm" (pulls them to the battery's
    voltage); limit_v: most the panels may put on it, V; most_a: most it gives the battery, A;
    low_v, high_v: window in which it follows the panels, V (mppt); efficiency: share (None: the
    usual); standby_w: W of its own.
    Raises RangeError or InputError by the names of these fields.
    """

    kind: str
    limit_v: float
    most_a: float
    low_v: float = 0.0
    high_v: float = math.inf
    efficiency: float | None = None
    standby_w: float = practice.CONTROLLER_STANDBY

    def __post_init__(self) -> None:
        if self.kind not in KINDS:
            raise InputError("Choose a controller: MPPT or PWM.", name="kind")
        require("limit_v", self.limit_v, 1.0, 1500.0, "voltage", "Look at the label.")
        require("most_a", self.most_a, 0.1, 1000.0, "current", "Look at the label.")
        require("low_v", self.low_v, 0.0, self.limit_v, "voltage", "It is below the limit.")
        require("standby_w", self.standby_w, 0.0, 200.0, "power")
        if self.efficiency is not None:
            require("efficiency", self.efficiency, 0.5, 1.0, "percent", "Look at the label.")
        if not self.high_v > self.low_v:
            raise InputError("The window's upper end lies above its lower.", name="high_v")

    @property
    def gives(self) -> float:
        """Efficiency given or usual, a share."""
        return KINDS[self.kind] if self.efficiency is None else self.efficiency


def charge_power(
    controller: Controller,
    array: Array,
    plane: float,
    module_k: float,
    battery_v: float,
    losses: Losses = USUAL_LOSSES,
) -> float:
    """Power that panels give through a controller.

    MPPT: P = eta P_array f; PWM: P = eta U_b I; at most U_b I_most.  f is 1 where the panels'
    maximum-power voltage lies in the controller's window; below it the current falls in a line
    from that point to none at the open-circuit voltage; above it the current stays.
    controller, array: theirs; plane: W/m2 on the panels, 0 to 2000; module_k: K, 203 to 373;
    battery_v: U_b, V, 6 to 100; losses: before the controller.
    Returns W.  Raises RangeError outside.
    Source: definition of both kinds; the straight line is our choice.

    >>> from calc.power.array import usual_module
    >>> hundred = Array(usual_module(100.0), 1, 1)
    >>> [round(charge_power(Controller(kind, 100.0, 20.0), hundred, 1000.0, 298.15, 12.0))
    ...  for kind in ("mppt", "pwm")]
    [88, 57]
    """
    require("plane", plane, 0.0, 2000.0, "number", "Sunlight stays below 2000.")
    require("module_k", module_k, 203.0, 373.0, "temperature")
    require("battery_v", battery_v, 6.0, 100.0, "voltage", "12, 24 or 48 V are usual.")
    whole = string_powers(controller, array, (plane,), (module_k,), battery_v, losses)[0]
    return min(whole * array.parallel, most_power(controller, battery_v))


def most_power(controller: Controller, battery_v: float) -> float:
    """Power at which a controller clips: its current limit at the battery's voltage.

    P = U_b I_most
    controller: its limits; battery_v: U_b, V.  Returns W.  Source: definition.

    >>> most_power(Controller("mppt", 150.0, 30.0), 24.0)
    720.0
    """
    return battery_v * controller.most_a


def string_powers(
    controller: Controller,
    array: Array,
    plane: Sequence[float],
    module_k: Sequence[float],
    battery_v: float,
    losses: Losses = USUAL_LOSSES,
) -> list[float]:
    """``charge_power`` of one string for many hours, before the current limit clips.

    Arguments as for ``charge_power``, plane and module_k in sequences of one length.  Returns W of
    each hour.  What all strings give is ``parallel`` times as much, up to ``most_power``.
    """
    one = Array(array.module, array.series, 1)
    if controller.kind == "pwm":
        return _switched(controller, one, plane, module_k, battery_v, losses)
    full = powers(one, plane, module_k, losses)
    low, high = min(module_k, default=RATED_AT), max(module_k, default=RATED_AT)
    if all(_in_window(controller, one, kelvin) == 1.0 for kelvin in (low, high)):
        return [controller.gives * watts for watts in full]
    return [
        controller.gives * watts * _in_window(controller, one, kelvin) if watts else 0.0
        for watts, kelvin in zip(full, module_k, strict=True)
    ]


def _voltages(array: Array, kelvin: float) -> tuple[float, float]:
    """(maximum-power, open-circuit) voltage of a string; the first below the second."""
    one, warmer = array.module, kelvin - RATED_AT
    open_v = array.series * one.open_v * (1 + one.voltage_rise * warmer)
    best_v = array.series * one.best_v * (1 + one.best_rise * warmer)
    return min(best_v, 0.98 * open_v), open_v


def _in_window(controller: Controller, array: Array, kelvin: float) -> float:
    """Share of the maximum power that the controller's window lets it take."""
    best, most = _voltages(array, kelvin)
    if best >= controller.low_v:
        return min(1.0, controller.high_v / best)
    return max(0.0, controller.low_v / best * (most - controller.low_v) / (most - best))


def _switched(
    controller: Controller,
    array: Array,
    plane: Sequence[float],
    module_k: Sequence[float],
    battery_v: float,
    losses: Losses,
) -> list[float]:
    one = array.module
    scale = controller.gives * battery_v * one.best_a * losses.left / RATED_SUN
    found = []
    for sun, kelvin in zip(plane, module_k, strict=True):
        if not sun:
            found.append(0.0)
            continue
        best, most = _voltages(array, kelvin)
        share = 1.0 if battery_v <= best else max(0.0, (most - battery_v) / (most - best))
        found.append(scale * sun * share * (1 + one.current_rise * (kelvin - RATED_AT)))
    return found
