"""Panels, pump, pipe and tank without a battery, worked out over the dullest year of a place."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc.pipe.line import Line, Section
from calc.power import direct
from calc.power.array import RATED_AT, RATED_SUN, Array, power
from calc.sheets.parts.pipe_choice import chosen_pipe
from calc.sheets.parts.pump_choice import chosen_pump
from calc.sheets.parts.sky import AnyPlace, Stand
from calc.sheets.parts.sun_case import SunCase, sun_of
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.power.direct import DirectYear, Table
    from calc.power.year import Demand
    from calc.pump.curve import Pump


@dataclass(frozen=True)
class Case(SunCase):
    """A form's numbers. made: what the pump gives at each power; tank: m3; lifted: m, from the
    lowest water up to the tank."""

    array: Array
    pump: Pump
    line: Line
    lifted: float
    made: Table
    tank: float

    @property
    def panels(self) -> Array:
        """The panels."""
        return self.array

    @property
    def served(self) -> DirectYear:
        """What the dullest year serves."""
        return self.year

    @cached_property
    def year(self) -> DirectYear:
        """What the dullest year comes to."""
        return _year(self.place, self.dullest, self.stand, self.array, self.made, self.tank,
                     self.demand)  # fmt: skip

    @property
    def full_power(self) -> float:
        """W of the panels in full sun (1000 W/m2, panels at 25 degC), after their losses."""
        return power(self.array, RATED_SUN, RATED_AT)

    @property
    def full_sun(self) -> float:
        """m3/s at that power."""
        return self.made.flow(self.full_power)

    @property
    def starts_at(self) -> float:
        """W/m2 of sun from which water comes, panels at 25 degC; above 1000: it never does."""
        return RATED_SUN * self.made.starts_w / self.full_power

    def with_size(self, strings: int, tank_m3: float) -> Case:
        """The same with other panels and another tank."""
        return replace(self, array=replace(self.array, parallel=strings), tank=tank_m3)


@lru_cache(64)
def _year(
    place: AnyPlace,
    index: int,
    stand: Stand,
    array: Array,
    made: Table,
    tank: float,
    demand: Demand,
) -> DirectYear:
    return direct.simulate(place.year(index, stand), array, made, tank, demand)


def case_of(values: Values) -> Case:
    """The ``Case`` of a form.  Raises InputErrors as the physics does."""
    panels, sun = sun_of(values)
    pump, lifted = chosen_pump(values), values.climb + values.lift
    section = Section(chosen_pipe(values), values.length * (1 + values.extra))
    line = Line((section,), 0.0, values.water)
    made = direct.table(pump, lambda flow: lifted + line.loss(flow), line.weight / GRAVITY)
    return Case(
        **sun, array=panels, pump=pump, line=line, lifted=lifted, made=made, tank=values.tank
    )
