"""The climate of a garden: the reference evapotranspiration, as the form knows it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import units
from calc.drip import crop
from calc.errors import InputError
from calc.page import row_text
from calc.sheets.parts.carry import exact
from calc.sun.position import daily_extraterrestrial
from calc.units import DAY

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

LEAST_NEED = 0.1e-3  # m a day, below which no garden is watered; our choice
NAMES = {name[:3].lower(): name for name in units.MONTHS}
MONTHS = tuple(NAMES)  # as the form calls them


@dataclass(frozen=True)
class Climate:
    """How the reference evapotranspiration is known.

    way: of the form; reference: ET_0, m a day; months: the same by month, where it is known;
    outside, warmest, coolest, vapour, wind, light, above:
    SI, what it came from where it is worked out.
    """

    way: str
    reference: float
    months: tuple[tuple[str, float], ...] = ()
    outside: float = 0.0
    warmest: float = 0.0
    coolest: float = 0.0
    vapour: float = 0.0
    wind: float = 0.0
    light: float = 0.0
    above: float = 0.0


def climate_of(values: Values) -> Climate:
    """The ``Climate`` of a form.

    Raises InputError where a maximum is below its minimum, or a need is beyond any place.
    """
    if values.climate == "known":
        return Climate("known", values.et)
    if values.climate == "months":
        return _by_month(values)
    found = _measured(values)
    if found.reference < LEAST_NEED:
        raise InputError("Plants need no water in such a month. Choose a warmer one", name="month")
    if found.reference > crop.MOST_WATER * DAY:
        raise InputError(
            "This climate would take more water than any place does. Check humidity and wind",
            name="wind" if found.way == "full" else "warmest",
        )
    return found


def _measured(values: Values) -> Climate:
    """By Hargreaves, or by Penman and Monteith."""
    way, warm, cool = values.climate, values.warmest, values.coolest
    if warm <= cool:
        raise InputError("“Mean daily maximum” must be above the minimum", name="warmest")
    day = crop.middle_day(MONTHS.index(values.month) + 1)
    outside = daily_extraterrestrial(values.latitude, day)
    if way == "warm":
        depth = crop.by_temperature(outside, warm, cool) * DAY
        return Climate(way, depth, (), outside, warm, cool)
    vapour = crop.vapour_from_humidity(values.humid, warm, cool)
    above, wind, light = values.above, values.wind, values.light
    depth = crop.reference(light, outside, warm, cool, above, vapour, wind) * DAY
    return Climate(way, depth, (), outside, warm, cool, vapour, wind, light, above)


def _by_month(values: Values) -> Climate:
    """The month of most need of those given.  Raises InputError where one stands twice."""
    found: dict[str, float] = {}
    for row in values.numbers.get("months") or ():
        if row.at in found:
            said = "This month is there twice. Delete one of the two rows"
            raise InputError(said, name=row.cell("at"))
        found[row.at] = row.et
    most = max(found.values(), default=0.0)
    if most < LEAST_NEED:
        raise InputError("Plants need no water in these months. Add a warmer one", name="months")
    rows = tuple((key, found[key]) for key in MONTHS if key in found)
    return Climate("months", most, rows)


def months_text(values: Values, reader: Reader) -> str:
    """The table of months as a link's text, in the reader's units."""
    return row_text.encode(
        (row.at, exact(row.et, "rain", reader)) for row in values.numbers.get("months") or ()
    )
