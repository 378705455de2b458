"""Panels: one module, modules in series and strings side by side, in cold, heat and dull light."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require

if TYPE_CHECKING:
    from collections.abc import Sequence

RATED_AT = 298.15  # K, module temperature of rated figures: IEC 61215 and IEC 60904-3
RATED_SUN = 1000.0  # W/m2, irradiance of rated figures: IEC 60904-3
APART = 0.06  # rated power may differ so much from voltage times current: rounding, sorting


@dataclass(frozen=True)
class Module:
    """A panel by its label, at 1,000 W/m2 and 25 degC.

    rated_w: W; open_v, best_v: V at open circuit and at maximum power; short_a, best_a: A at short
    circuit and at maximum power; power_rise, voltage_rise (of open_v), best_rise (of best_v),
    current_rise: share a kelvin.
    Raises RangeError or InputError by the names of these fields.
    """

    rated_w: float
    open_v: float
    best_v: float
    short_a: float
    best_a: float
    power_rise: float = practice.PANEL_POWER_RISE
    voltage_rise: float = practice.PANEL_VOLTAGE_RISE
    best_rise: float = practice.PANEL_POWER_RISE
    current_rise: float = practice.PANEL_CURRENT_RISE

    def __post_init__(self) -> None:
        require("rated_w", self.rated_w, 1.0, 2000.0, "power", "Give the panel's rated power.")
        require("open_v", self.open_v, 1.0, 500.0, "voltage", "Look at the panel's label.")
        require("short_a", self.short_a, 0.01, 50.0, "current", "Look at the panel's label.")
        remedy = "At maximum power it lies below the open-circuit voltage."
        require("best_v", self.best_v, 0.5 * self.open_v, 0.98 * self.open_v, "voltage", remedy)
        remedy = "At maximum power it lies below the short-circuit current."
        require("best_a", self.best_a, 0.5 * self.short_a, self.short_a, "current", remedy)
        require("power_rise", self.power_rise, -0.01, 0.0, "number", "It is below zero.")
        require("voltage_rise", self.voltage_rise, -0.01, 0.0, "number", "It is below zero.")
        require("best_rise", self.best_rise, -0.01, 0.0, "number", "It is below zero.")
        require("current_rise", self.current_rise, -0.001, 0.005, "number", "Check the label.")
        if abs(self.best_v * self.best_a / self.rated_w - 1) > APART:
            raise InputError(
                "The panel's rated power is not its voltage times its current at maximum power. "
                "Look at the panel's label again.",
                name="rated_w",
            )


def usual_module(rated_w: float, open_v: float | None = None) -> Module:
    """A panel of which only the rated power is known, or also the open-circuit voltage.

    U_mp = 0.83 U_oc, I_mp = P / U_mp, I_sc = 1.06 I_mp
    rated_w: P, W, 1 to 1000; open_v: U_oc, V, 1 to 500; None: usual for panels of that power, on
    the high side.  Returns ``Module``.  Raises RangeError outside.  Source: common practice.

    >>> usual_module(100.0).open_v
    23.0
    """
    require("rated_w", rated_w, 1.0, 1000.0, "power", "Give the panel's rated power.")
    if open_v is None:
        open_v = next(volts for most, volts in practice.PANEL_OPEN if rated_w <= most)
    best_v = practice.PANEL_BEST_SHARE * open_v
    best_a = rated_w / best_v
    return Module(rated_w, open_v, best_v, practice.PANEL_SHORT_SHARE * best_a, best_a)


@dataclass(frozen=True)
class Array:
    """Panels: ``series`` in a string, ``parallel`` strings side by side; whole numbers."""

    module: Module
    series: int
    parallel: int

    def __post_init__(self) -> None:
        require("series", self.series, 1, 50, "number", "A string has at least one panel.")
        require("parallel", self.parallel, 1, 200, "number", "There is at least one string.")

    @property
    def count(self) -> int:
        """Panels in all, count."""
        return self.series * self.parallel

    @property
    def rated_w(self) -> float:
        """Rated power of all panels, W."""
        return self.count * self.module.rated_w


@dataclass(frozen=True)
class Losses:
    """Shares of the panels' power that are lost before the controller."""

    soiling: float = practice.LOSS_SOILING
    mismatch: float = practice.LOSS_MISMATCH
    wiring: float = practice.LOSS_WIRING

    def __post_init__(self) -> None:
        require("soiling", self.soiling, 0.0, 0.9, "percent", "Clean panels lose little.")
        require("mismatch", self.mismatch, 0.0, 0.5, "percent")
        require("wiring", self.wiring, 0.0, 0.5, "percent")

    @property
    def left(self) -> float:
        """Share that is left: (1 - soiling)(1 - mismatch)(1 - wiring)."""
        return (1 - self.soiling) * (1 - self.mismatch) * (1 - self.wiring)


USUAL_LOSSES = Losses()


def open_voltage(module: Module, series: int, module_k: float) -> float:
    """Open-circuit voltage of a string.

    U = n U_oc (1 + beta (T - 298.15 K))
    module: its figures; series: n, whole number, 1 to 50; module_k: T, K, 203 to 373; for the
    cold, the lowest air temperature that is expected, since the sun rises on cold panels.
    Returns V.  Raises RangeError outside.  Source: NEC 690.7(A)(1), from memory.

    >>> round(open_voltage(usual_module(100.0), 2, 298.15), 9)
    46.0
    """
    require("series", series, 1, 50, "number", "A string has at least one panel.")
    require("module_k", module_k, 203.0, 373.0, "temperature")
    return series * module.open_v * (1 + module.voltage_rise * (module_k - RATED_AT))


def best_voltage(module: Module, series: int, module_k: float) -> float:
    """Maximum-power voltage of a string.

    U = n U_mp (1 + beta (T - 298.15 K))
    module, series, module_k: as for ``open_voltage``; for the heat, the hottest the panels get
    (some 30 K over the air, common practice).
    Returns V.  Raises RangeError outside.  Source: IEC 60891, its linear part, from memory.
    """
    require("series", series, 1, 50, "number", "A string has at least one panel.")
    require("module_k", module_k, 203.0, 373.0, "temperature")
    return series * module.best_v * (1 + module.best_rise * (module_k - RATED_AT))


def most_in_series(module: Module, coldest_k: float, limit_v: float) -> int:
    """How many panels a string may have so that the cold does not harm the controller.

    n = floor(U_limit / (U_oc (1 + beta (T - 298.15 K))))
    module: its figures; coldest_k: T, K, 203 to 323; limit_v: U_limit, V, 1 to 1500.
    Returns a whole number, 0 where one panel is too many.  Raises RangeError outside.
    Source: NEC 690.7, from memory; the local code and a licensed electrician decide.

    >>> most_in_series(usual_module(400.0), 263.15, 150.0)
    2
    """
    require("coldest_k", coldest_k, 203.0, 323.0, "temperature", "The coldest it gets.")
    require("limit_v", limit_v, 1.0, 1500.0, "voltage", "Look at the controller's label.")
    return math.floor(limit_v / open_voltage(module, 1, coldest_k) + 1e-9)


def least_in_series(module: Module, hottest_k: float, low_v: float) -> int:
    """How many panels a string needs to reach the controller's window in the heat.

    n = ceil(U_low / (U_mp (1 + beta (T - 298.15 K))))
    module: its figures; hottest_k: T of the panels, K, 273 to 373; low_v: U_low, V, 0 to 1500.
    Returns a whole number.  Raises RangeError outside.  Source: common practice, no source.
    """
    require("hottest_k", hottest_k, 273.0, 373.0, "temperature", "The hottest panels get.")
    require("low_v", low_v, 0.0, 1500.0, "voltage", "Look at the controller's label.")
    return max(1, math.ceil(low_v / best_voltage(module, 1, hottest_k) - 1e-9))


def check_string(module: Module, series: int, coldest_k: float, limit_v: float) -> float:
    """Refuse a string whose cold voltage exceeds the controller.

    Arguments as for ``open_voltage`` and ``most_in_series``.  Returns the cold open-circuit
    voltage, V.  Raises InputError, named "series", where it lies above ``limit_v``: the controller
    would be destroyed.  Source: NEC 690.7, from memory.
    """
    most = most_in_series(module, coldest_k, limit_v)
    if series > most:
        fix = f"Put up to {most} in series." if most else "Choose another controller."
        raise InputError(
            "In the cold, the string's open-circuit voltage exceeds the controller's limit. " + fix,
            name="series",
        )
    return open_voltage(module, series, coldest_k)


def power(array: Array, plane: float, module_k: float, losses: Losses = USUAL_LOSSES) -> float:
    """Power of the panels at their best voltage.

    P = n P_0 (G / 1000) (1 + gamma (T - 298.15 K)) l
    array: its panels; plane: G, W/m2 on the panels, 0 to 2000; module_k: T of the panels, K, 203 to
    373; losses: l is what they leave, 0 to 1.
    Returns W, 0 or more.  Raises RangeError outside.
    Source: A. P. Dobos, PVWatts Version 5 Manual, NREL/TP-6A20-62641 (2014), equation 8, from
    memory, without its low-light part.

    >>> round(power(Array(usual_module(100.0), 1, 2), 500.0, 298.15, Losses(0, 0, 0)), 9)
    100.0
    """
    require("plane", plane, 0.0, 2000.0, "number", "Sunlight stays below 2000.")
    require("module_k", module_k, 203.0, 373.0, "temperature")
    warm = max(0.0, 1 + array.module.power_rise * (module_k - RATED_AT))
    return array.rated_w * plane / RATED_SUN * warm * losses.left


def powers(
    array: Array,
    plane: Sequence[float],
    module_k: Sequence[float],
    losses: Losses = USUAL_LOSSES,
) -> list[float]:
    """``power`` for many hours at once; nothing is checked hour by hour.

    Arguments as for ``power``, in sequences of one length.  Returns W of each.
    """
    full = array.rated_w / RATED_SUN * losses.left
    rise = array.module.power_rise
    steady = full * (1 - rise * RATED_AT)
    rising = full * rise
    return [
        max(0.0, sun * (steady + rising * warm)) for sun, warm in zip(plane, module_k, strict=True)
    ]
