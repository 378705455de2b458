"""What a path of an enquiry may be: facts of a site, and cells of its tables by names of their own."""

from __future__ import annotations

from calc import demand, practice
from calc.site.facts import BY_PATH, Slot, count
from calc.site.rows import BY_TABLE

MOST = 500  # outlets of one kind; our choice
CELLS = {  # path: table, column, label
    "way.length": ("sections", "length", "Length of the pipe"),
    "way.climb": ("sections", "height", "Climb to where water is wanted"),
    "way.pipe": ("sections", "pipe", "Size of the pipe"),
    "tank.level": ("tanks", "level", "Height of the tank above"),
    "tank.volume": ("tanks", "volume", "Volume of the tank above"),
    "beds.area": ("beds", "area", "Area watered by drip"),
}


def label(path: str) -> str:
    """What a path is for readers.  Raises KeyError where there is no such path."""
    if path in CELLS:
        return CELLS[path][2]
    if path in BY_PATH:
        return BY_PATH[path].label
    group, _, rest = path.partition(".")
    key, _, together = rest.partition(".")
    if group == "animals":
        return {one.key: one.name for one in demand.ANIMALS}[key]
    name = practice.OUTLET_BY_KEY[key].name
    return f"{name}: open together" if together else f"{name}: how many"


def slot(path: str) -> Slot:
    """What a path may be.  Raises KeyError where there is no such path."""
    if path in BY_PATH:
        return BY_PATH[path]
    if path in CELLS:
        table, column, _ = CELLS[path]
        return BY_TABLE[table].column(column)
    group, _, rest = path.partition(".")
    if group == "animals":
        return BY_TABLE["animals"].column("count")
    return count(path, "", label(path), 0, MOST)
