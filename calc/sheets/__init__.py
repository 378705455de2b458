"""The calculators: one folder each, found by key."""

from __future__ import annotations

from functools import cache
from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.page.fields import Sheet

# In the order the guides present them; the key is the folder name.
KEYS = (
    "reach",
    "keep_up",
    "pressure",
    "suction",
    "pipe",
    "tank",
    "pressure_tank",
    "demand",
    "pump_match",
    "surge",
    "panels",
    "battery",
    "direct",
    "panel_place",
    "cable",
    "gravity",
    "well",
    "hill_tank",
    "drip",
    "sprinkler",
    "hot_water",
    "day",
    "fault",
)
# Sheets that a browser imports only when somebody asks for them: what they work with is as much as
# all others together, and nobody who asks about a pipe should wait for it.  They are sent with the
# rest (``scripts/build_steps/wheel.py``), but are not in the memory that a start comes from.  Such
# a ``sheet.py`` imports fields only; its ``solve`` imports all else.
LATER = (
    "panels", "battery", "direct", "panel_place", "cable", "gravity", "well", "hill_tank", "drip",
    "sprinkler",
    "hot_water",
    "day",
    "fault",
)  # fmt: skip
# What only they ask, by the beginnings of modules' names: the sun, its power, the
# water of hills and wells, what they share; and questions of the first sheets that few ask.
LATER_ROOMS = (
    "calc.sun.",
    "calc.power.",
    "calc.gravity",
    "calc.track",
    "calc.sheets.track_ops",
    "calc.site.enquiry",
    "calc.sheets.enquiry_ops",
    "calc.recovery",
    "calc.well_yield",
    "calc.day_tank",
    "calc.hot_water",
    "calc.network.parted",
    "calc.network.at_levels",
    "calc.network.over_a_day",
    "calc.network.day_run",
    "calc.network.fault",
    "calc.network.suspects",
    "calc.network.next_reading",
    "calc.site.watched",
    "calc.drip.",
    "calc.trip",
    "calc.relief",
    "calc.sheets.surge.trip_",
    "calc.sheets.pressure_tank.relief_",
    "calc.sheets.place_ops",
    *(
        f"calc.sheets.parts.{name}"
        for name in (
            "clock", "sky", "sun_case", "solar_answer", "solar_case", "solar_drawing",
            "solar_fixes", "solar_job", "solar_judge", "world_map", "bars", "day_picture",
            "watering", "completed",
        )
    ),
    *(f"calc.sheets.{key}." for key in LATER),
)  # fmt: skip


@cache
def sheet(key: str) -> Sheet:
    """The ``Sheet`` with this key, its example read from Alder Terrace.

    Raises ``KeyError`` if there is none.
    """
    if key not in KEYS:
        raise KeyError(key)
    views = import_module("calc.sheets.views")  # which asks this module for sheets
    return views.on_example(import_module(f"calc.sheets.{key}.sheet").SHEET)
