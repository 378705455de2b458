"""A supply that runs on the sun, worked out: the dullest of its years, hour by hour."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError, RangeError
from calc.power import design
from calc.power.battery import Battery, energy_from_ah
from calc.power.controller import Controller
from calc.power.motor import Draw, through_controller
from calc.power.year import Backup, Demand, System, Year, simulate, trace
from calc.sheets.parts.sky import AnyPlace, Stand
from calc.sheets.parts.sun_case import SunCase, sun_of
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.power.array import Array
    from calc.power.hours import Hour

CARRY = 3.0  # days of autonomy of the quick method; common practice, no source


@dataclass(frozen=True)
class Case(SunCase):
    """A form's numbers. system: panels, battery, pump and tank."""

    system: System

    @property
    def panels(self) -> Array:
        """The panels."""
        return self.system.array

    @property
    def served(self) -> Year:
        """What the dullest year serves."""
        return self.year

    @cached_property
    def year(self) -> Year:
        """What the dullest year comes to."""
        return _year(self.place, self.dullest, self.stand, self.system, self.demand)

    @cached_property
    def hours(self) -> list[Hour]:
        """The dullest year hour by hour."""
        return trace(self.weather, self.system, self.demand)

    @property
    def daily_energy(self) -> float:
        """J a day that the pump and what stands by take in the busiest month."""
        return self.daily * self.system.pump.joule_per_m3 + DAY * self.system.idle_w

    @property
    def usable(self) -> float:
        """J that may be drawn from a full battery in warm air."""
        return self.system.battery.energy_j - self.system.battery.reserve

    @property
    def autonomy(self) -> float:
        """Days that a full battery, and a full tank before it, last in the busiest month unsunned.

        While the tank feeds the taps only the standby is drawn.
        """
        idle = DAY * self.system.idle_w
        stored = self.system.tank_m3 / self.daily
        left = self.usable * self.system.battery.of.discharging - stored * idle
        return stored + max(0.0, left) / self.daily_energy

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
    panels, sun = sun_of(values)
    volts = float(values.volts)
    made = System(
        panels,
        Controller(values.control, values.limit, values.amps),
        Battery(values.kind, volts, energy_from_ah(volts, values.ah / HOUR)),
        _draw(values),
        values.tank,
        backup=_backup(values),
    )
    if sum(sun["demand"].by_month) <= 0:
        raise InputError("Give the water used a day.", name="use")
    return Case(**sun, system=made)


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
