"""The calculators: one folder each, found by key."""

from importlib import import_module

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


def sheet(key):
    """The ``Sheet`` with this key. Raises ``KeyError`` if there is none."""
    if key not in KEYS:
        raise KeyError(key)
    return import_module(f"calc.sheets.{key}.sheet").SHEET
