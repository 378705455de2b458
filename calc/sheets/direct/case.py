"""Panels, pump, pipe and tank without a battery, worked out over the dullest year of a place."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc.pipe.line import Line, Section
from calc.power import direct
from calc.power.array import Array, check_string, usual_module
from calc.sheets.parts.pipe_choice import chosen_pipe
from calc.sheets.parts.pump_choice import chosen_pump
from calc.sheets.parts.sky import AnyPlace, Stand, coldest, demand_of, place_of, stand_of
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.power.direct import DirectYear, Table
    from calc.power.year import Demand, Weather
    from calc.pump.curve import Pump


@dataclass(frozen=True)
class Case:
    """A form's numbers. made: what the pump gives at each power; tank: m3; lifted: m, from the
    lowest water up to the tank; low: K, for which the panels' voltage is judged;
    the rest as in ``solar_case.Case``."""

    values: Values
    demand: Demand
    array: Array
    pump: Pump
    line: Line
    lifted: float
    made: Table
    tank: float
    place: AnyPlace
    stand: Stand
    dullest: int
    most: int
    low: float

    @property
    def years(self) -> str:
        """What the verdict's year is called."""
        return "the year of the file" if self.place.count == 1 else "the dullest of twenty years"

    @cached_property
    def weather(self) -> Weather:
        """The dullest year."""
        return self.place.year(self.dullest, self.stand)

    @cached_property
    def year(self) -> DirectYear:
        """What the dullest year comes to."""
        return _year(self.place, self.dullest, self.stand, self.array, self.made, self.tank,
                     self.demand)  # fmt: skip

    @property
    def daily(self) -> float:
        """m3 asked on a day of the busiest month."""
        return max(self.demand.by_month)

    @property
    def full_sun(self) -> float:
        """m3/s in full sun (1000 W/m2, panels at 25 degC)."""
        return self.made.flow(direct.power(self.array, 1000.0, 298.15))

    @property
    def starts_at(self) -> float:
        """W/m2 of sun from which water comes, panels at 25 degC; above 1000: it never does."""
        full = direct.power(self.array, 1000.0, 298.15)
        return 1000.0 * self.made.starts_w / full

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
    place, stand, demand = place_of(values), stand_of(values), demand_of(values)
    module = usual_module(values.rated, values.openv)
    array = Array(module, values.series, values.strings)
    low = values.coldest or coldest(place)
    check_string(module, values.series, low, values.limit)
    pump, lifted = chosen_pump(values), values.climb + values.lift
    section = Section(chosen_pipe(values), values.length * (1 + values.extra))
    line = Line((section,), 0.0, values.water)
    made = direct.table(pump, lambda flow: lifted + line.loss(flow), line.weight / GRAVITY)
    return Case(
        values, demand, array, pump, line, lifted, made, values.tank, place, stand,
        place.dullest(demand.by_month), values.fail, low,
    )  # fmt: skip
