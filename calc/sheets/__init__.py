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
)


@cache
def sheet(key: str) -> Sheet:
    """The ``Sheet`` with this key, its example read from Alder Terrace.

    Raises ``KeyError`` if there is none.
    """
    if key not in KEYS:
        raise KeyError(key)
    views = import_module("calc.sheets.views")  # which asks this module for sheets
    return views.on_example(import_module(f"calc.sheets.{key}.sheet").SHEET)
