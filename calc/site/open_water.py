"""A site without a pump: the open water in which its pipe sections begin."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.site.rows import PUMP, SOURCE, fold
from calc.site.supply_rows import OpenWater

if TYPE_CHECKING:
    from calc.site.rows import Row
    from calc.site.site import Site

BEGINNINGS = frozenset((fold(PUMP), fold(SOURCE)))  # what rows may call it


def open_water(site: Site) -> OpenWater:
    """The water of a site, at its lowest level, and what it gives in the driest weeks.

    A row of the sources that is called "source" says both before the single facts do.
    Raises InputError where a section begins there and its level is not known.
    """
    row = named(site)
    level = None if row is None else site.cell("sources", row, "level")
    gives = None if row is None else site.cell("sources", row, "yield")
    if level is None:
        level = site.value("water.level")
    if level is None and begins(site):
        raise InputError("The lowest water level is not known.", name="water.level")
    return OpenWater(
        level_m=level or 0.0,
        gives_m3s=site.value("water.yield") if gives is None else gives,
        temperature_k=site.value("water.temperature"),
        altitude_m=site.value("place.altitude"),
    )


def named(site: Site) -> Row | None:
    """The row of the sources that is called "source"; None where there is none."""
    rows = site.rows("sources")
    return next((row for row in rows if fold(site.word("sources", row, "name")) == SOURCE), None)


def begins(site: Site) -> bool:
    """Whether a pipe section begins or ends at the open water itself."""
    return any(
        fold(site.word("sections", row, column)) in BEGINNINGS
        for row in site.rows("sections")
        for column in ("from", "to")
    )
