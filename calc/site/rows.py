"""The tables of a site and their columns.  A cell is a fact too; a row maps columns to facts."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from calc import demand, practice
from calc.pipe import fittings
from calc.site.facts import (
    LONG,
    MONTH_KEYS,
    NAME,
    NOT_KNOWN,
    PIPES,
    WATERS,
    Fact,
    Slot,
    choice,
    count,
    quantity,
    text,
)

PUMP = "pump"  # the point where the pump's pipe begins
SOURCE = "source"  # the same point, and its name for readers, where there is no pump
MOST = 60  # rows of a table; our choice
Row = Mapping[str, Fact]
_HEIGHT = (-300.0, 400.0)  # m


@dataclass(frozen=True)
class Table:
    """A table: its key, the letter it has in a link, what a row is called, and its columns.

    names: the columns that name a point, which a renaming follows.
    """

    key: str
    code: str
    row: str
    columns: tuple[Slot, ...]
    names: tuple[str, ...] = ()

    def column(self, key: str) -> Slot:
        for slot in self.columns:
            if slot.key == key:
                return slot
        raise KeyError(key)

    def best(self, row: Row, key: str) -> Fact:
        """A cell, or what is usual where it is unknown, as assumed."""
        return self.column(key).best(row.get(key, NOT_KNOWN))


def _name(label: str) -> Slot:
    return text("name", "n", label, NAME)


def _words(
    pairs: Iterable[practice.OutletKind | fittings.Part | demand.Drinker],
) -> tuple[tuple[str, str], ...]:
    return tuple((one.key, one.name) for one in pairs)


_SECTIONS = Table("sections", "s", "pipe section", (
    text("from", "f", "From", NAME, PUMP, "sections begin at the pump"),
    text("to", "t", "To", NAME),
    quantity("length", "l", "Length", "length", 0.01, 20e3),
    quantity("height", "h", "Height of the far end", "length", *_HEIGHT),
    choice("pipe", "p", "Pipe", PIPES),
    count("bends", "b", "Bends", 0, 200, "2", "common practice"),
    choice("fitting", "e", "Filter or valve", _words(fittings.PARTS), "none", "none named"),
    text("profile", "r", "Points on the way", LONG),
), ("from", "to"))  # fmt: skip
_OUTLETS = Table("outlets", "o", "outlet", (
    _name("Outlet"),
    text("at", "a", "At", NAME),
    choice("kind", "k", "Kind", _words(practice.OUTLETS), "shower", "our choice"),
    count("before", "b", "Open before", 0, 50, "0", "taken as shut"),
    count("after", "c", "Open after", 0, 50, "1", "taken as one"),
    quantity("flow", "f", "Flow of one", "flow", 1e-8, 0.1),
    quantity("rated", "r", "At pressure", "pressure", 1e3, 20e5),
    quantity("needed", "w", "Needed pressure", "pressure", 0.0, 20e5),
), ("at",))  # fmt: skip
_TANKS = Table("tanks", "t", "tank", (
    _name("Tank"),
    quantity("level", "l", "Water level", "length", *_HEIGHT),
    quantity("volume", "v", "Volume", "volume", 0.01, 1e4),
    quantity("depth", "d", "Depth of water when full", "length", 0.05, 30.0),
), ("name",))  # fmt: skip
_SOURCES = Table("sources", "w", "source", (
    _name("Source"),
    choice("kind", "k", "Kind", WATERS),
    quantity("level", "l", "Lowest water level", "length", *_HEIGHT),
    quantity("yield", "y", "Yield", "flow", 0.0, 1.0),
    quantity("stored", "s", "Water standing in it", "volume", 0.0, 200.0),
    quantity("temperature", "t", "Temperature", "temperature", 273.15, 373.15),
), ("name",))  # fmt: skip
_ANIMALS = Table("animals", "a", "kind of animal", (
    choice("kind", "k", "Animals", (*_words(demand.ANIMALS), ("other", "Others"))),
    count("count", "c", "Number", 0, 50000),
    quantity("each", "e", "Water for one a day", "daily", 0.0, 1e-5),
))  # fmt: skip
_BEDS = Table("beds", "b", "bed", (
    _name("Bed"),
    quantity("area", "a", "Area watered by drip", "area", 0.0, 1e5),
))  # fmt: skip
_PANELS = Table("panels", "p", "array", (
    _name("Panel"),
    count("count", "c", "Number", 0, 500),
    quantity("power", "w", "Rated power of one", "power", 1.0, 2000.0),
    quantity("tilt", "t", "Tilt", "angle", 0.0, math.pi / 2),
    quantity("facing", "f", "Facing, from north", "angle", -2 * math.pi, 2 * math.pi),
))  # fmt: skip
_BATTERIES = Table("batteries", "y", "battery", (
    _name("Battery"),
    count("count", "c", "Number", 0, 500),
    quantity("voltage", "v", "Voltage", "voltage", 1.0, 1000.0),
    quantity("energy", "e", "Energy of one", "energy", 3600.0, 3.6e9),
    quantity("usable", "u", "Share that may be used", "percent", 0.05, 1.0),
))  # fmt: skip
_CONTROLLERS = Table("controllers", "x", "controller", (
    _name("Controller"),
    choice("kind", "k", "Kind",
           (("charge", "Charge controller"), ("pump", "Pump controller"),
            ("inverter", "Inverter"))),
    quantity("voltage", "v", "Maximum voltage", "voltage", 1.0, 2000.0),
    quantity("current", "c", "Maximum current", "current", 0.1, 1000.0),
    quantity("power", "w", "Maximum power", "power", 1.0, 1e6),
))  # fmt: skip
_PROFILE = Table("profile", "f", "point of the line", (
    quantity("at", "a", "Distance along the pipe", "length", 0.0, 20e3),
    quantity("height", "h", "Height", "length", -500.0, 6000.0),
))  # fmt: skip
_READINGS = Table("readings", "r", "reading", (
    quantity("time", "t", "Since the pump stopped", "minutes", 0.0, 30 * 86400.0),
    quantity("level", "l", "Water below the top", "length", 0.0, 500.0),
))  # fmt: skip
_REFERENCE = Table("reference", "e", "month", (
    choice("month", "m", "Month", MONTH_KEYS),
    quantity("et", "e", "Reference ET₀ a day", "rain", 0.0, 15e-3),
))  # fmt: skip

_DRAWS = Table("draws", "d", "time of use", (
    text("outlet", "o", "Outlet", NAME),
    quantity("from", "f", "Opens at", "number", 0.0, 24.0),
    quantity("hours", "h", "Open for", "number", 0.01, 24.0),
    count("count", "c", "How many", 0, 50, "1", "taken as one"),
))  # fmt: skip

TABLES = (
    _SECTIONS, _OUTLETS, _TANKS, _SOURCES, _ANIMALS, _BEDS, _PANELS, _BATTERIES, _CONTROLLERS,
    _PROFILE, _READINGS, _REFERENCE, _DRAWS,
)  # fmt: skip
BY_TABLE = {table.key: table for table in TABLES}


def fold(name: str) -> str:
    """Names are the same whatever their spaces and capitals.

    >>> fold(" Lower  Fork") == fold("lower fork")
    True
    """
    return " ".join(name.casefold().split())
