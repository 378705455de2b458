"""A supply that runs on the sun, worked out: the dullest of its years, hour by hour."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError, RangeError
from calc.power import design
from calc.power.array import Array, Module, check_string, open_voltage, usual_module
from calc.power.battery import Battery, energy_from_ah
from calc.power.controller import Controller
from calc.power.motor import Draw, through_controller
from calc.power.year import Backup, Demand, System, Weather, Year, simulate, trace
from calc.sheets.parts.sky import AnyPlace, Stand, coldest, demand_of, place_of, stand_of
from calc.units import HOUR

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.power.hours import Hour

DAYS = 365
CARRY = 3.0  # days of autonomy of the quick method; common practice, no source


@dataclass(frozen=True)
class Case:
    """A form's numbers.

    demand: m3; system: panels, battery, pump and tank; place: its years; stand: how panels
    stand; dullest: index of the year that the verdict is from; most: days a year that may fail;
    coldest: K, for which the panels' voltage is judged.
    """

    values: Values
    demand: Demand
    system: System
    place: AnyPlace
    stand: Stand
    dullest: int
    most: int
    coldest: float

    @property
    def years(self) -> str:
        """What the verdict's year is called."""
        return "the year of the file" if self.place.count == 1 else "the dullest of twenty years"

    @cached_property
    def weather(self) -> Weather:
        """The dullest year."""
        return self.place.year(self.dullest, self.stand)

    @cached_property
    def year(self) -> Year:
        """What the dullest year comes to."""
        return _year(self.place, self.dullest, self.stand, self.system, self.demand)

    @cached_property
    def hours(self) -> list[Hour]:
        """The dullest year hour by hour."""
        return trace(self.weather, self.system, self.demand)

    @property
    def daily(self) -> float:
        """m3 asked on a day of the busiest month."""
        return max(self.demand.by_month)

    @property
    def daily_energy(self) -> float:
        """J a day that the pump and what stands by take in the busiest month."""
        idle = self.system.pump.standby_w + self.system.controller.standby_w
        return self.daily * self.system.pump.joule_per_m3 + 24 * HOUR * idle

    @property
    def pumping(self) -> float:
        """Seconds a day that the pump runs in the busiest month."""
        return self.daily / self.system.pump.flow_m3s

    @property
    def usable(self) -> float:
        """J that may be drawn from a full battery in warm air."""
        return self.system.battery.energy_j - self.system.battery.reserve

    @property
    def autonomy(self) -> float:
        """Days that a full battery, and a full tank before it, last in the busiest month unsunned.

        While the tank feeds the taps only the standby is drawn.
        """
        idle = 24 * HOUR * (self.system.pump.standby_w + self.system.controller.standby_w)
        stored = self.system.tank_m3 / self.daily
        left = self.usable * self.system.battery.of.discharging - stored * idle
        return stored + max(0.0, left) / self.daily_energy

    @property
    def cold_v(self) -> float:
        """Voltage of a string on the coldest hour, open circuit."""
        one = self.system.array
        return open_voltage(one.module, one.series, self.coldest)

    @cached_property
    def compared(self) -> design.Compared | None:
        """The quick method beside the year; None where it has no design that could be built.

        So it is where a month has no sun to go by, or where it asks for strings without end.
        """
        try:
            return design.compare(self.weather, self.demand, self.system, CARRY)
        except RangeError:
            return None

    def with_size(self, strings: int, energy_j: float, tank_m3: float) -> Case:
        """The same with other panels, battery and tank."""
        return replace(self, system=design.with_size(self.system, strings, energy_j, tank_m3))


@lru_cache(64)  # while a fix is looked for the same designs come again and again
def _year(place: AnyPlace, index: int, stand: Stand, system: System, demand: Demand) -> Year:
    return simulate(place.year(index, stand), system, demand)


def case_of(values: Values) -> Case:
    """The ``Case`` of a form.  Raises InputErrors and RangeErrors as the physics does."""
    place, stand, demand = place_of(values), stand_of(values), demand_of(values)
    array = Array(_module(values), values.series, values.strings)
    made = System(
        array,
        Controller(values.control, values.limit, values.amps),
        Battery(values.kind, float(values.volts), energy_from_ah(float(values.volts), _ah(values))),
        _draw(values),
        values.tank,
        backup=_backup(values),
    )
    if sum(demand.by_month) <= 0:
        raise InputError("Give the water used a day.", name="use")
    dullest = place.dullest(demand.by_month)
    low = values.coldest or coldest(place)
    check_string(array.module, array.series, low, values.limit)
    return Case(values, demand, made, place, stand, dullest, values.fail, low)


def _ah(values: Values) -> float:
    return values.ah / HOUR


def _module(values: Values) -> Module:
    return usual_module(values.rated, values.openv)


def _draw(values: Values) -> Draw:
    """What the pump takes from battery and sun, through an inverter where it runs on AC."""
    if values.feed == "dc":
        return Draw(values.watts, values.flow, values.standby)
    drawn = through_controller(values.watts, values.inverter)
    return Draw(drawn, values.flow, values.standby + values.noload)


def _backup(values: Values) -> Backup | None:
    if values.backup == "none":
        return None
    return Backup(values.aid, values.aidhours)
