"""How the fields about a garden on drip stand to a site: beds, climate, what comes there."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice, units
from calc.errors import InputError
from calc.sheets.parts import table_bindings as t
from calc.sheets.parts import use
from calc.sheets.parts import use_bindings as u
from calc.sheets.parts.bindings import (
    NOT_KNOWN,
    Asked,
    Binding,
    figure,
    known,
    told_or,
    unless,
    words,
    written,
)
from calc.site.facts import ASSUMED, Fact
from calc.units import CELSIUS, DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Callable

MONTHS = tuple(name[:3].lower() for name in units.MONTHS)
SWING = "half of a usual day's swing from the mean; our choice"
HARGREAVES = 17.8  # K, added to degC where warmth is weighed with sun: FAO-56 eq. 52


def _area(asked: Asked) -> Fact:
    """Of all beds; not known where none is named."""
    return _BEDS.give(asked) if asked.site.rows("beds") else NOT_KNOWN


_BEDS = u.beds()
_AREA = replace(_BEDS, field="area", give=_area)


def _month(asked: Asked) -> int:
    """The month in which sun and warmth take the most water, from 0.

    Raises InputError where no climate is known.
    """
    numbers = asked.site.value("place.climate")
    if numbers is None:
        raise InputError("No climate is known.", name="month")
    return max(range(12), key=lambda at: numbers[at] * (numbers[at + 12] + HARGREAVES))


def _temperature(way: float) -> Callable[[Asked], Fact]:
    """So many half swings from the mean of that month."""

    def give(asked: Asked) -> Fact:
        mean = asked.site.value("place.climate")[_month(asked) + 12] + CELSIUS
        return written(mean + way * practice.AIR_SWING / 2, "temperature", ASSUMED, SWING)

    return give


def _light(asked: Asked) -> Fact:
    sun = asked.site.value("place.climate")[_month(asked)]
    return Fact(f"{sun:g} kWh/m²")


_CLIMATE = (  # as it was told, else of the place
    told_or(words("month", lambda asked: MONTHS[_month(asked)]), "drip.month"),
    told_or(Binding("warmest", _temperature(1.0)), "drip.warmest"),
    told_or(Binding("coolest", _temperature(-1.0)), "drip.coolest"),
    told_or(Binding("light", _light), "drip.light"),
)


def _flow(asked: Asked) -> float | None:
    """What the outlet gets with what is open, m3/s; None where that is nothing."""
    return asked.way.outlet_flow or None


def _pressure(asked: Asked) -> float | None:
    """Running pressure at the outlet, Pa; None where there is none."""
    running = asked.way.running_pa
    return running if running > 0 else None


def _daily(asked: Asked) -> float | None:
    """What the source brings a day beyond what all else uses, m3/s as a mean.

    None where that is not known, or nothing.
    """
    site = asked.site
    inflow, hours = site.value("store.inflow"), site.value("store.hours")
    others = use.daily(site.put_rows("beds", ()))
    if inflow is None or hours is None or others is None:
        return None
    left = inflow * hours * HOUR / DAY - others
    return left if left > 0 else None


# of any outlet in a garden
WATER = (
    figure("flow", "flow", _flow), figure("pressure", "pressure", _pressure),
    figure("daily", "daily", _daily),
)  # fmt: skip
FIELDS = (
    _AREA, known("rows", "drip.rows"), known("crop", "drip.crop"), known("need", "drip.need"),
    known("climate", "drip.climate"), known("et", "drip.reference"), t.reference(), *_CLIMATE,
    known("latitude", "place.latitude"), known("humid", "drip.humidity"),
    known("wind", "drip.wind"), known("above", "place.altitude"),
    unless(figure("flow", "flow", _flow), "drip.flow"),
    unless(figure("pressure", "pressure", _pressure), "drip.pressure"),
    known("hours", "drip.hours"), known("length", "drip.length"),
    known("spacing", "drip.spacing"), known("dripper", "drip.dripper"),
    known("holds", "drip.holds"), known("rated", "drip.rated"), known("least", "drip.least"),
    known("bore", "drip.bore"), known("slope", "drip.slope"), known("made", "drip.made"),
    known("zones", "drip.zones"), unless(figure("daily", "daily", _daily), "drip.daily"),
    known("reaches", "use.drip_share"), known("filter", "drip.filter"),
    known("fed", "drip.fed"), known("manifold", "drip.manifold"), known("across", "drip.across"),
)  # fmt: skip
