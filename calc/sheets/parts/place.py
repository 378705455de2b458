"""Where a place is, and what its months are like: fields that every page about the sun asks.

The numbers themselves stand in the form and in its link, so that an old letter keeps its figures
whatever becomes of the tables they were looked up in.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import Choice, Number, Rows, Text
from calc.sheets.parts.bindings import Asked, known, written
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fields import CAREFUL_ALTITUDE, altitude
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.facts import NAME, SHORT, Fact
from calc.units import MONTHS, QUANTITIES, parse

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.parts.table_bindings import Cells
    from calc.site.site import Site
    from calc.units import Reader

PLACE, CLIMATE = "The place", "Sun and air by month"
FROM = ("weather", ("months",))
SUN, AIR = (
    QUANTITIES[one].default("metric") for one in ("irradiation", "temperature")
)  # of a site
USUAL = ("3.5 kWh/m²", "15 °C")  # of a new row

FIELDS = (
    Text("place", "Name of the place", "", NAME, group=PLACE),
    Number(
        "lat", "Latitude", "angle", "0°", "0°", -math.pi / 2, math.pi / 2,
        help="South of the equator: a minus sign", group=PLACE,
    ),
    Number(
        "lon", "Longitude", "angle", "0°", "0°", -math.pi, math.pi,
        help="West of Greenwich: a minus sign", group=PLACE,
    ),
    replace(
        altitude(5000.0, "300 m", "1000 ft", PLACE),
        help="For the air’s temperature where the place is looked up",
        unknown=CAREFUL_ALTITUDE,
    ),
    Choice(
        "weather",
        "Sun and temperature from",
        (("months", "Twelve monthly means"), ("file", "An hourly file, opened on this page")),
        "months",
        group=CLIMATE,
    ),
    Text("data", "These figures are from", "", SHORT, group=CLIMATE),
    Rows(
        "months",
        "Sun and air by month",
        (
            Choice(
                "month", "Month",
                tuple((str(at), name) for at, name in enumerate(MONTHS, 1)), "1",
            ),
            Number("sun", "Sun a day, on level ground", "irradiation", USUAL[0], USUAL[0],
                   0.0, practice.BRIGHTEST_DAY),
            Number("air", "Mean air temperature", "temperature", USUAL[1], "59 °F",
                   203.15, 333.15),
        ),
        tuple((str(at), *USUAL) for at in range(1, 13)),
        tuple((str(at), USUAL[0], "59 °F") for at in range(1, 13)),
        row="month",
        least=12,
        most=12,
        help="A mean day of each month",
        group=CLIMATE,
    ),
)  # fmt: skip


def means(values: Values) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """(J/m2 a day, K) of the twelve months, from January.

    Raises InputError at the row of a month that stands there twice.
    """
    found: dict[int, tuple[float, float]] = {}
    for row in values.months:
        month = int(row.month)
        if month in found:
            text = f"{MONTHS[month - 1]} is here twice. Give each month once."
            raise InputError(text, name=row.cell("month"))
        found[month] = row.sun, row.air
    sun, air = zip(*(found[month] for month in sorted(found)), strict=True)
    return sun, air


def months_text(values: Values, reader: Reader) -> str:
    """The table of months as a link's text, in the reader's units."""
    return row_text.encode(
        (row.month, exact(row.sun, "irradiation", reader), exact(row.air, "temperature", reader))
        for row in values.months
    )


# Of a site ------------------------------------------------------------------------------------


def _months(asked: Asked) -> tuple[Cells, ...]:
    numbers = asked.site.value("place.climate")
    if numbers is None:
        return ()
    return tuple(
        {
            "month": Fact(str(at + 1)),
            "sun": written(SUN.to_si(numbers[at]), "irradiation"),
            "air": written(AIR.to_si(numbers[at + 12]), "temperature"),
        }
        for at in range(12)
    )


def _take_months(asked: Asked, rows: tuple[tuple[int | None, Cells], ...]) -> Site:
    """Put twelve months back: kWh/m2 a day, then degC."""
    if len(rows) != 12:
        raise InputError("Twelve months are needed.", name="months")
    numbers = [0.0] * 24
    for _, cells in rows:
        at = int(cells["month"].text) - 1
        numbers[at] = SUN.from_si(parse(cells["sun"].text, "irradiation").value)
        numbers[at + 12] = AIR.from_si(parse(cells["air"].text, "temperature").value)
    return asked.site.put("place.climate", Fact(" ".join(f"{one:.4g}" for one in numbers)))


BINDINGS = (
    known("place", "place.name"),
    known("lat", "place.latitude"),
    known("lon", "place.longitude"),
    known("altitude", "place.altitude"),
    known("data", "place.data"),
    TableBinding("months", _months, _take_months, asked=True),
)


def rows_of(
    sun: tuple[float, ...], air: tuple[float, ...], system: str
) -> tuple[tuple[str, ...], ...]:
    """Rows of texts for the table of months. sun: J/m2 a day; air: K; system: of the reader."""
    suns, airs = QUANTITIES["irradiation"], QUANTITIES["temperature"]
    sun_unit, air_unit = suns.default(system), airs.default(system)
    return tuple(
        (
            str(at),
            f"{sun_unit.from_si(light):.2f} {sun_unit.symbol}",
            f"{air_unit.from_si(kelvin):.1f} {air_unit.symbol}",
        )
        for at, (light, kelvin) in enumerate(zip(sun, air, strict=True), 1)
    )
