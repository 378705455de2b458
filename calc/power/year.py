"""A year of panels, battery, pump and tank, hour by hour: what is served, and what is not.

More panel, battery or tank never serves less water over the year, with equal energy and water at
the start and the same cut-out in Wh.  Exceptions, each told: a cut-out given as a share of the
battery rises with the battery; in the cold a battery keeps back a share of its size; a battery of
another kind or voltage, and panels in longer strings, are another system; a battery that starts
empty with a larger reserve must first fill it; a backup with few hours a day may have spent them.
The pump works against the tank (or the pressure it keeps without one): a tank is taken to feed the
taps by its height, without a pump of its own.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from functools import cached_property
from itertools import repeat
from typing import TYPE_CHECKING, Any

from calc import practice
from calc.errors import InputError, require
from calc.power import battery as cells
from calc.power.array import USUAL_LOSSES, Array, Losses, check_string
from calc.power.battery import Battery
from calc.power.controller import Controller, most_power, string_powers
from calc.power.hours import HOURS, Hour, Plan, run
from calc.power.motor import Draw
from calc.power.service import Day, Service, days_of, served_of, worst_fortnight
from calc.sun.days import MONTH_DAYS
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

LEAST = 1e-9  # Wh or m3, so that a year without any is no division by nothing


def _series(name: str, values: Sequence[float], low: float, high: float, kind: str) -> None:
    """Refuse another count of hours, a gap, or a value outside; says which hour."""
    if len(values) != HOURS:
        hint = " It is a leap year: leave out 29 February." if len(values) == HOURS + 24 else ""
        raise InputError(f"A year has {HOURS:,} hours; here are {len(values):,}.{hint}", name=name)
    if math.isfinite(sum(values)) and min(values) >= low and max(values) <= high:
        return
    for hour, value in enumerate(values):
        require(name, value, low, high, kind, f"Look at hour {hour + 1:,} of the year.")


@dataclass(frozen=True, eq=False)
class Weather:
    """A year of 8,760 hours from 1 January: plane W/m2 on the panels; module_k, air_k in K.

    The battery is taken to be as warm as the air.  What is worked out of it once is kept.
    Raises InputError or RangeError by the names of these fields, with the hour.
    """

    plane: Sequence[float]
    module_k: Sequence[float]
    air_k: Sequence[float]
    _kept: dict[Any, list[float]] = field(default_factory=dict, repr=False)

    def __post_init__(self) -> None:
        _series("plane", self.plane, 0.0, 2000.0, "number")
        _series("module_k", self.module_k, 203.0, 373.0, "temperature")
        _series("air_k", self.air_k, 203.0, 343.0, "temperature")

    def strings(self, one: System) -> list[float]:
        """``controller.string_powers`` of one string of a system, W each hour."""
        module, series = one.array.module, one.array.series
        key = (module, series, one.controller, one.battery.nominal_v, one.losses)
        if key not in self._kept:
            self._kept[key] = string_powers(
                one.controller, one.array, self.plane, self.module_k, key[3], one.losses
            )
        return self._kept[key]

    def held_back(self, kind: str) -> list[float]:
        """1 - ``battery.cold_share`` of a kind of battery, each hour."""
        if kind not in self._kept:
            self._kept[kind] = [1 - cells.cold_share(kind, kelvin) for kelvin in self.air_k]
        return self._kept[kind]

    @cached_property
    def coldest_k(self) -> float:
        """Lowest air temperature, K."""
        return min(self.air_k)


@dataclass(frozen=True)
class Demand:
    """Water asked: by_month m3 a day, 12 numbers; shares of the day, 24 numbers adding to 1.

    Raises InputError or RangeError by the names of these fields.
    """

    by_month: tuple[float, ...]
    shares: tuple[float, ...]

    def __post_init__(self) -> None:
        if len(self.by_month) != len(MONTH_DAYS):
            raise InputError("Give the use of 12 months.", name="by_month")
        for use in self.by_month:
            require("by_month", use, 0.0, 1e5, "volume", "Give the use of a day, 0 or more.")
        if len(self.shares) != 24 or min(self.shares) < 0 or abs(sum(self.shares) - 1) > 1e-9:
            raise InputError("The shares of the day are 24 numbers adding to 1.", name="shares")

    @cached_property
    def hours(self) -> list[float]:
        """m3 asked in each hour of the year."""
        return [
            use * share
            for use, days in zip(self.by_month, MONTH_DAYS, strict=True)
            for _ in range(days)
            for share in self.shares
        ]


@dataclass(frozen=True)
class Backup:
    """Mains or a generator that pumps what sun and battery cannot: power_w W, hours a day.

    It charges no battery.  Raises RangeError by the names of these fields.
    """

    power_w: float
    hours: float = 24.0

    def __post_init__(self) -> None:
        require("power_w", self.power_w, 1.0, 1e6, "power", "Give what the backup gives.")
        require("hours", self.hours, 0.0, 24.0, "number", "A day has 24 hours.")


@dataclass(frozen=True)
class System:
    """Panels, controller, battery, pump, tank_m3 (m3, may be 0), losses, perhaps a backup."""

    array: Array
    controller: Controller
    battery: Battery
    pump: Draw
    tank_m3: float = 0.0
    losses: Losses = USUAL_LOSSES
    backup: Backup | None = None

    def __post_init__(self) -> None:
        require("tank_m3", self.tank_m3, 0.0, 1e5, "volume", "Give the tank's volume, or 0.")

    @property
    def idle_w(self) -> float:
        """What pump and charge controller draw day and night, W."""
        return self.pump.standby_w + self.controller.standby_w


@dataclass(frozen=True)
class Year(Service):
    """What a year came to: what ``Service`` says of the water, and the power behind it.

    lowest: least state of charge, share of the rated energy.  Energy in J: array (what the
    controller gives), used (pump and standby), spilled, lost (in the battery), aided (by the
    backup); backup_hours: h at its power; cycles: equivalent full cycles; lasts: s until the
    battery is replaced.  energy_gap, water_gap: what the balances do not close by, shares
    (rounding).  worst: the worst fortnight, 14 days.
    """

    lowest: float
    array: float
    used: float
    spilled: float
    lost: float
    aided: float
    backup_hours: float
    cycles: float
    lasts: float
    energy_gap: float
    water_gap: float
    worst: tuple[Day, ...]


def simulate(
    weather: Weather,
    system: System,
    demand: Demand,
    start_j: float | None = None,
    start_m3: float | None = None,
) -> Year:
    """A year of a system, hour by hour.

    What happens in an hour: ``calc.power.hours``.  weather, system, demand: see there; start_j:
    energy in the battery at the start, J, 0 to its energy (None: full); start_m3: water in the
    tank, m3 (None: full).
    Returns ``Year``.  Raises RangeError; InputError named "series" where the string's cold voltage
    exceeds the controller's limit.  Source: conservation of energy and water; battery, controller
    and panels as in their modules.
    """
    return _told(system, plan(weather, system, demand, start_j, start_m3))


def trace(weather: Weather, system: System, demand: Demand) -> list[Hour]:
    """The hours behind ``simulate``, for a chart: see ``hours.Hour`` (Wh, m3)."""
    return run(plan(weather, system, demand))


def plan(
    weather: Weather,
    system: System,
    demand: Demand,
    start_j: float | None = None,
    start_m3: float | None = None,
) -> Plan:
    """What the loop needs; arguments, units and errors as for ``simulate``."""
    check_cold(weather, system)
    one, pump, aid = system.battery, system.pump, system.backup
    start_j = one.energy_j * practice.BATTERY_START if start_j is None else start_j
    start_m3 = system.tank_m3 if start_m3 is None else start_m3
    require("start_j", start_j, 0.0, one.energy_j, "energy", "The battery holds no more.")
    require("start_m3", start_m3, 0.0, system.tank_m3, "volume", "The tank holds no more.")
    clip, strings = most_power(system.controller, one.nominal_v), system.array.parallel
    return Plan(
        sun=[min(strings * watts, clip) for watts in weather.strings(system)],
        asked=demand.hours,
        floors=_floors(weather, one),
        charging=_charging(weather, one),
        capacity=one.energy_j / HOUR,
        discharging=cells.discharge_limit(one),
        into=one.of.charging,
        out=cells.discharge_efficiency(one, pump.power_w),
        fading=cells.fading_share(one),
        idle=system.idle_w,
        per=pump.joule_per_m3 / HOUR,
        rate=pump.flow_m3s * HOUR,
        volume=system.tank_m3,
        backup=aid.power_w if aid else 0.0,
        backup_hours=aid.hours if aid else 0.0,
        stored=start_j / HOUR,
        level=start_m3,
    )


def check_cold(weather: Weather, system: System) -> None:
    """Refuse a string whose voltage on the coldest hour exceeds the controller's limit."""
    module, series = system.array.module, system.array.series
    coldest = min(323.0, weather.coldest_k)
    check_string(module, series, coldest, system.controller.limit_v)


def _floors(weather: Weather, one: Battery) -> Iterable[float]:
    """Wh not to be drawn below in each hour: ``battery.floor``."""
    reserve, energy = one.reserve / HOUR, one.energy_j / HOUR
    if (1 - cells.cold_share(one.kind, weather.coldest_k)) * energy <= reserve:
        return repeat(reserve)
    return [max(reserve, share * energy) for share in weather.held_back(one.kind)]


def _charging(weather: Weather, one: Battery) -> Iterable[float]:
    """Most Wh into the battery in each hour: ``battery.charge_limit``."""
    above = one.of.charge_above
    most = cells.charge_limit(one, 343.0)
    if weather.coldest_k >= above:
        return repeat(most)
    return [most if kelvin >= above else 0.0 for kelvin in weather.air_k]


def _told(system: System, made: Plan) -> Year:
    stored, level, served, pumped, idle, drawn, charged, faded, aided, spilled = zip(
        *run(made), strict=True
    )
    used = sum(idle) + made.per * sum(pumped)
    lost = sum(drawn) * (1 - made.out) + sum(charged) * (1 - made.into) + sum(faded)
    array, aid, spill = sum(made.sun), sum(aided), sum(spilled)
    brought, had = array + aid + made.stored, made.level + sum(pumped)
    energy_gap = brought - used - spill - lost - stored[-1]
    held = [one / made.capacity for one in stored]
    days = days_of(made.asked, served, held, [HOUR * one for one in made.sun])
    return Year(
        **vars(served_of(made.asked, served)),
        lowest=min(made.stored / made.capacity, *held),
        array=array * HOUR,
        used=used * HOUR,
        spilled=spill * HOUR,
        lost=lost * HOUR,
        aided=aid * HOUR,
        backup_hours=aid / made.backup if made.backup else 0.0,
        cycles=sum(drawn) / made.capacity,
        lasts=cells.replacement(system.battery, _daily(drawn)),
        energy_gap=energy_gap / max(brought, LEAST),
        water_gap=(had - sum(served) - level[-1]) / max(had, LEAST),
        worst=worst_fortnight(days),
    )


def _daily(drawn: Sequence[float]) -> list[float]:
    """J out of the battery on each day."""
    return [HOUR * sum(drawn[at : at + 24]) for at in range(0, HOURS, 24)]


def generator_fuel(energy_j: float, m3_per_j: float = practice.GENERATOR_FUEL) -> float:
    """Fuel a generator takes for an energy, as advice.

    V = E v
    energy_j: E, J, 0 or more; m3_per_j: v, m3 for each J, 0 to 1e-8.
    Returns m3.  Raises RangeError outside.  Source: common practice, no source.
    """
    require("energy_j", energy_j, 0.0, 1e15, "energy")
    require("m3_per_j", m3_per_j, 0.0, 1e-8, "number")
    return energy_j * m3_per_j
