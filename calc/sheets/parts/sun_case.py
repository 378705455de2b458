"""What every supply that runs on the sun is judged by: the dullest year of its place."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Any

from calc.power.array import Array, check_string, open_voltage, usual_module
from calc.power.service import DAYS
from calc.sheets.parts.sky import AnyPlace, Stand, coldest, demand_of, place_of, stand_of

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.power.service import Service
    from calc.power.year import Demand, Weather


@dataclass(frozen=True)
class SunCase:
    """A form's numbers that have to do with place and use.

    demand: m3; place: its years; stand: how panels stand; dullest: index of the year that the
    verdict is from; most: days a year that may fail; coldest: K, for which the panels' voltage is
    judged.
    """

    values: Values
    demand: Demand
    place: AnyPlace
    stand: Stand
    dullest: int
    most: int
    coldest: float

    @property
    def panels(self) -> Array:
        """The panels."""
        raise NotImplementedError

    @property
    def served(self) -> Service:
        """What the dullest year serves."""
        raise NotImplementedError

    @property
    def years(self) -> str:
        """What the verdict's year is called."""
        return "the year of the file" if self.place.count == 1 else "the dullest of twenty years"

    @cached_property
    def weather(self) -> Weather:
        """The dullest year."""
        return self.place.year(self.dullest, self.stand)

    @property
    def meets(self) -> bool:
        """Whether the year keeps to the days that may fail."""
        return self.served.short_days <= self.most

    @property
    def most_short(self) -> float:
        """The days that may fail, of a hundred."""
        return 100.0 * self.most / DAYS

    @property
    def daily(self) -> float:
        """m3 asked on a day of the busiest month."""
        return max(self.demand.by_month)

    @property
    def cold_v(self) -> float:
        """Voltage of a string on the coldest hour, open circuit."""
        return open_voltage(self.panels.module, self.panels.series, self.coldest)


def sun_of(values: Values) -> tuple[Array, dict[str, Any]]:
    """(the panels, the fields of ``SunCase``) of a form.

    Raises InputErrors and RangeErrors as the physics does, at "series" where the panels' cold
    voltage exceeds the controller's limit.
    """
    place, demand = place_of(values), demand_of(values)
    panels = Array(usual_module(values.rated, values.openv), values.series, values.strings)
    low = values.coldest or coldest(place)
    check_string(panels.module, panels.series, low, values.limit)
    return panels, {
        "values": values, "demand": demand, "place": place, "stand": stand_of(values),
        "dullest": place.dullest(demand.by_month), "most": values.fail, "coldest": low,
    }  # fmt: skip
