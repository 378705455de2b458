"""What is known of a place: a fact with its standing, and every scalar fact there is, by its path.

A fact is kept as it was typed, with its unit, so that a person finds it again as written; it is
read into SI only where it is used.  ``code``s stand in links and never change.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from calc import practice
from calc.errors import InputError
from calc.pipe import pipes
from calc.reading import seen
from calc.units import QUANTITIES, number_text, parse

GIVEN, ASSUMED, UNKNOWN = "given", "assumed", "unknown"
STANDINGS = (GIVEN, ASSUMED, UNKNOWN)
NAME = 24  # characters of a name, our choice: it must fit in a table
SHORT, LONG = 60, 4000  # characters of a fact's text, and of a pasted table; our choice
MONTHS = 24  # numbers of a climate: twelve of sun, then twelve of temperature
YES_NO = (("yes", "Yes"), ("no", "No"))
WATERS = (("well", "Well"), ("spring", "Spring"), ("cistern", "Cistern"), ("stream", "Stream"))
CONTROLS = (
    ("speed", "Speed control"), ("fixed", "Fixed speed"), ("switch", "Pressure switch"),
)  # fmt: skip
FACINGS = (
    ("equator", "The midday sun"), ("n", "North"), ("ne", "North-east"), ("e", "East"),
    ("se", "South-east"), ("s", "South"), ("sw", "South-west"), ("w", "West"),
    ("nw", "North-west"),
)  # fmt: skip
BATTERY_KINDS = tuple((kind.key, kind.name) for kind in practice.BATTERIES)
CHARGERS = (("mppt", "MPPT (follows the panels)"), ("pwm", "PWM (only switches)"))
PATTERNS = (
    ("home", "Home: morning and evening"), ("dawn", "Drip lines at dawn"),
    ("day", "Through the day: stock, work"), ("even", "Evenly, day and night"),
)  # fmt: skip
SEASONS = (
    ("even", "The same in every month"), ("north", "More from April to September"),
    ("south", "More from October to March"),
)  # fmt: skip
PIPES = tuple((f"{p.kind}/{p.size}", p.label) for kind in pipes.KINDS for p in pipes.sizes(kind))


@dataclass(frozen=True)
class Fact:
    """One thing known: ``text`` as typed, with its unit; ``standing``: given, assumed or unknown;
    ``reason``: why it was assumed, in a few words."""

    text: str = ""
    standing: str = GIVEN
    reason: str = ""

    @property
    def known(self) -> bool:
        return self.standing != UNKNOWN


NOT_KNOWN = Fact("", UNKNOWN)


@dataclass(frozen=True)
class Slot:
    """What a fact may be: its key (a path, or a column's name), label and kind.

    kind: "quantity" (``quantity``, ``low`` to ``high`` in SI), "count" (``low`` to ``high``),
    "choice" (``options``: (value, label) pairs), "text" (up to ``longest`` characters) or
    "numbers" (``longest`` of them); usual: the text assumed where it is unknown, and reason;
    code: its short name in a link.
    """

    key: str
    code: str
    label: str
    kind: str
    quantity: str = ""
    low: float = -math.inf
    high: float = math.inf
    options: tuple[tuple[str, str], ...] = ()
    usual: str = ""
    reason: str = ""
    longest: int = SHORT

    def read(self, text: str) -> Any:
        """A text as SI number, count, word or numbers.

        Raises InputError with a sentence saying what is wrong and what is allowed.
        """
        if len(text) > (self.longest if self.kind == "text" else LONG):
            raise InputError(f"{len(text)} characters are too many.")
        return getattr(self, f"_{self.kind}")(text.strip())

    def _quantity(self, text: str) -> float:
        value = parse(text, self.quantity).value
        slack = 1e-9 * max(abs(self.low), abs(self.high))  # a bound typed in another unit is in
        if not self.low - slack <= value <= self.high + slack:
            raise InputError(f"“{text}” is out of range. Allowed: {self._span()}.")
        return min(max(value, self.low), self.high)

    def _span(self) -> str:
        unit = QUANTITIES[self.quantity].default("metric")
        low, high = (number_text(unit.from_si(bound)) for bound in (self.low, self.high))
        return f"{low} to {high} {unit.symbol}".strip()

    def _count(self, text: str) -> int:
        if not text.isascii() or not text.isdigit() or not self.low <= int(text) <= self.high:
            raise InputError(
                f"“{text}” is not allowed here. Write a whole number from {self.low:g} to "
                f"{self.high:g}."
            )
        return int(text)

    def _choice(self, text: str) -> str:
        known = [value for value, _ in self.options]
        if text not in known:
            several = ", ".join(known) if len(known) <= 20 else f"{known[0]} and {len(known)} more"
            raise InputError(f"“{text}” is not one of the choices here: {several}.")
        return text

    def _text(self, text: str) -> str:
        return seen(text)

    def _numbers(self, text: str) -> tuple[float, ...]:
        try:
            found = tuple(float(word) for word in text.replace(",", " ").split())
        except ValueError:
            found = ()
        if len(found) != self.longest or not all(map(math.isfinite, found)):
            raise InputError(f"Write {self.longest} numbers with spaces between them.")
        return found

    def tidied(self, text: str) -> str:
        """The text with its usual metric unit where none was typed, so that it stands alone.

        Signs that show nothing are left out, as of what is typed in a form.

        What cannot be read stays as it is.  Raises nothing.
        """
        text = seen(text).strip()
        symbol = self.quantity and QUANTITIES[self.quantity].default("metric").symbol
        if symbol and text and text[-1] in "0123456789.¼½¾⅛⅜⅝⅞":
            try:
                with_unit = f"{text} {symbol}"
                if parse(with_unit, self.quantity).value == parse(text, self.quantity).value:
                    return with_unit
            except InputError:
                return text
        return text

    def best(self, fact: Fact) -> Fact:
        """The fact, or where it is unknown what is usual, as assumed."""
        if fact.known or not self.usual:
            return fact
        return Fact(self.usual, ASSUMED, self.reason)


def quantity(key: str, code: str, label: str, kind: str, low: float, high: float,
             usual: str = "", reason: str = "") -> Slot:  # fmt: skip
    """A number with a unit: ``kind`` of ``QUANTITIES``, low and high in SI."""
    return Slot(key, code, label, "quantity", kind, low, high, usual=usual, reason=reason)


def count(key: str, code: str, label: str, low: int, high: int,
          usual: str = "", reason: str = "") -> Slot:  # fmt: skip
    """A whole number."""
    return Slot(key, code, label, "count", "", low, high, usual=usual, reason=reason)


def choice(key: str, code: str, label: str, options: tuple[tuple[str, str], ...],
           usual: str = "", reason: str = "") -> Slot:  # fmt: skip
    """One of some words."""
    return Slot(key, code, label, "choice", options=options, usual=usual, reason=reason)


def text(key: str, code: str, label: str, longest: int = SHORT,
         usual: str = "", reason: str = "") -> Slot:  # fmt: skip
    """Words."""
    return Slot(key, code, label, "text", usual=usual, reason=reason, longest=longest)


_PRACTICE, _OURS, _DATUM = "common practice", "our choice", "counted from the ground at the source"
_PLACE = (
    text("place.name", "pn", "Place", NAME),
    quantity("place.latitude", "pa", "Latitude", "angle", -math.pi / 2, math.pi / 2),
    quantity("place.longitude", "po", "Longitude", "angle", -math.pi, math.pi),
    quantity("place.altitude", "ph", "Height above sea level", "length", -400.0, 5000.0,
             "300 m", "most places lie lower; our choice"),
    text("place.datum", "pz", "Heights are counted from", SHORT, "the ground at the source",
         _OURS),
    text("place.data", "pv", "Version of the climate data"),
    Slot("place.climate", "pc", "Sun and temperature by month", "numbers", longest=MONTHS),
)  # fmt: skip
_WATER = (
    choice("water.kind", "wk", "Source", WATERS),
    quantity("water.level", "wl", "Lowest water level", "length", -200.0, 400.0),
    quantity("water.yield", "wy", "Yield of the source", "flow", 0.0, 1.0),
    quantity("water.stored", "ws", "Water standing in the well", "volume", 0.0, 200.0, "0 L",
             "none counted on"),
    quantity("water.temperature", "wt", "Water temperature", "temperature", 273.15, 373.15,
             "15 °C", f"usual for ground water; {_PRACTICE}"),
)  # fmt: skip
_SUCTION = (
    quantity("suction.length", "sl", "Length of suction pipe", "length", 0.1, 500.0),
    choice("suction.pipe", "sp", "Suction pipe size", PIPES),
    count("suction.foot_valves", "sf", "Foot valves with strainer", 0, 3, "1", _PRACTICE),
    count("suction.bends", "sb", "Bends in the suction pipe", 0, 20, "1", _PRACTICE),
    quantity("suction.strainer", "ss", "Lost in a strainer at the pump", "head", 0.0, 5.0, "0 m",
             "none named"),
)  # fmt: skip
_PUMP = (
    choice("pump.present", "up", "There is a pump", YES_NO, "yes", _OURS),
    quantity("pump.height", "uh", "Height of the pump", "length", -200.0, 400.0, "0 m", _DATUM),
    choice("pump.placement", "ul", "Where the pump is",
           (("out", "Out of the water"), ("in", "In the water")), "out", _OURS),
    text("pump.id", "ui", "Pump", SHORT, "middle",
         "an invented pump; choose yours"),
    text("pump.curve", "uv", "The pump's table", LONG),
    choice("pump.works", "uw", "How the pump works",
           (("centrifugal", "Centrifugal (impeller)"),
            ("diaphragm", "Diaphragm or other displacement pump")), "centrifugal", _PRACTICE),
    quantity("pump.npsh", "un", "NPSH required", "head", 0.0, 20.0),
    quantity("pump.dry_lift", "ud", "Dry lift at sea level", "length", 0.1, 10.0),
    quantity("pump.most_flow", "um", "Maximum flow at set pressure", "flow", 1e-7, 0.05),
    choice("pump.control", "uc", "Control", CONTROLS, "speed", f"usual with solar power; {_OURS}"),
    quantity("pump.set", "us", "Set pressure", "pressure", 0.1e5, 16e5),
    quantity("pump.sensed", "ue", "Height where pressure is sensed", "length", -200.0, 400.0),
    quantity("pump.cut_in", "ua", "Cut-in pressure", "pressure", 0.1e5, 15e5),
    quantity("pump.cut_out", "uo", "Cut-out pressure", "pressure", 0.1e5, 20e5),
    quantity("pump.starts", "ut", "Starts per hour allowed", "per_hour", 1 / 3600, 300 / 3600,
             f"{practice.STARTS_AN_HOUR:g} per hour", _PRACTICE),
    count("pump.count", "uu", "Identical pumps in parallel", 1, 3, "1", _OURS),
    quantity("pump.least_flow", "uf", "Least flow of the pump", "flow", 0.0, 0.05),
    quantity("pump.motor", "uy", "Motor efficiency", "percent", 0.2, 1.0, "75 %", _PRACTICE),
    quantity("pump.controller", "uz", "Controller efficiency", "percent", 0.2, 1.0, "95 %",
             _PRACTICE),
    choice("pump.guard", "uq", "What guards a diaphragm pump",
           (("both", "A pressure switch or bypass, and a relief valve"),
            ("switch", "A pressure switch or bypass only"), ("relief", "A relief valve only"),
            ("none", "Neither")), "both", _PRACTICE),
    choice("pump.relief", "uk", "Relief valve at the pump", YES_NO, "no", _OURS),
    choice("pump.grade", "ug", "Tolerance of the pump curve",
           tuple((key, key) for key in ("1B", "2B", "3B", "none")), "3B", _PRACTICE),
)  # fmt: skip
_TANKS = (
    quantity("pressure_tank.volume", "tv", "Pressure tank volume", "volume", 1e-4, 10.0),
    quantity("pressure_tank.precharge", "tp", "Pre-charge", "pressure", 0.0, 15e5),
    quantity("pressure_tank.rating", "tr", "Pressure tank rating", "pressure", 1e5, 40e5),
    quantity("store.volume", "cv", "Storage tank volume", "volume", 0.01, 1e4),
    quantity("store.days", "cd", "Days without supply", "days", 0.0, 60 * 86400.0, "3 days",
             _PRACTICE),
    quantity("store.usable", "cu", "Usable share of the tank", "percent", 0.3, 1.0,
             "90 %", _PRACTICE),
    quantity("store.inflow", "ci", "What the pump or source gives it", "flow", 0.0, 1.0),
    quantity("store.hours", "ch", "Hours it is filled a day", "number", 0.5, 24.0, "6",
             f"full sun on a fair day; {_PRACTICE}"),
)  # fmt: skip
_USE = (
    count("use.people", "ep", "People", 0, 500),
    quantity("use.each", "ee", "Water a person uses a day", "daily", 0.0, 1e-5, "100 L/day",
             _PRACTICE),
    choice("use.pattern", "et", "When it is used", PATTERNS, "home", _OURS),
    count("use.showers", "ea", "Showers", 0, 60),
    count("use.sinks", "eb", "Sinks and wash basins", 0, 60),
    count("use.toilets", "ec", "Toilets with a cistern", 0, 60),
    count("use.washers", "ed", "Washing machines", 0, 60),
    count("use.hoses", "ef", "Hoses", 0, 60),
    count("use.troughs", "eg", "Trough float valves", 0, 60),
    quantity("use.busy", "eh", "Peak-hour use", "percent", 0.1, 5.0, "100 %", _PRACTICE),
    quantity("use.leak", "el", "Leaks and drips", "flow", 0.0, 0.01, "0.05 L/min", _PRACTICE),
    quantity("use.drip_share", "es", "Drip water that reaches roots", "percent", 0.3, 1.0,
             "90 %", _PRACTICE),
    quantity("use.depth", "ew", "Water the plants use a day", "rain", 0.0, 0.02, "4 mm",
             f"a summer day; {_PRACTICE}"),
    quantity("use.smallest", "em", "Smallest steady draw", "flow", 1e-8, 0.05),
    quantity("use.daily", "ey", "Water used a day, as measured", "daily", 1e-9, 1e-2),
)  # fmt: skip
_LINES = (
    quantity("pipes.hottest", "lh", "Hottest the pipe gets", "temperature", 273.15, 373.15,
             "20 °C", "buried or in the shade"),
    quantity("pipes.weakest", "lw", "Lowest-rated part in the line", "pressure", 0.1e5, 100e5),
    choice("pipes.held", "ld", "How the pipe is held",
           (("buried", "Buried, or clipped and glued"), ("laid", "Laid on the ground"),
            ("joints", "Push-fit joints")), "buried", _OURS),
)  # fmt: skip
_POWER = (
    choice("power.source", "rs", "Power",
           (("grid", "Mains"), ("sun", "Sun"), ("generator", "Generator"), ("none", "None"))),
    quantity("power.voltage", "rv", "System voltage", "voltage", 1.0, 1000.0),
    quantity("power.cable", "rc", "Length of cable", "length", 0.1, 20e3),
    quantity("power.shade", "rh", "Share lost to shade", "percent", 0.0, 0.95),
    quantity("power.panel", "rw", "Rated power of one panel", "power", 1.0, 1000.0),
    quantity("power.open_voltage", "ro", "Open-circuit voltage of a panel", "voltage", 1.0,
             500.0),
    count("power.series", "ri", "Panels in a string", 1, 20),
    count("power.strings", "rp", "Strings side by side", 1, 100),
    quantity("power.tilt", "rt", "Tilt of the panels", "angle", 0.0, math.pi / 2),
    choice("power.facing", "rf", "Facing of the panels", FACINGS),
    choice("power.battery", "rb", "Kind of battery", BATTERY_KINDS),
    quantity("power.capacity", "ra", "Battery capacity", "charge", 360.0, 3.6e8),
    choice("power.controller", "rx", "Charge controller", CHARGERS),
    quantity("power.limit", "rl", "Maximum panel voltage", "voltage", 1.0, 1500.0),
    quantity("power.amps", "rm", "Maximum charging current", "current", 0.1, 1000.0),
    count("power.fail", "rd", "Days a year that may fail", 0, 365),
    quantity("power.hill_tank", "rk", "Tank that feeds the taps", "volume", 0.0,
             1e4, "0 L", "none named"),
    choice("power.season", "rn", "Use over the year", SEASONS, "even", _OURS),
)  # fmt: skip

_HOT = (
    quantity("hot.volume", "hv", "Water heater volume", "volume", 1e-3, 10.0),
    quantity("hot.stored", "hs", "Hot water is stored at", "temperature", 293.15, 368.15),
    quantity("hot.tank", "ht", "Expansion tank volume", "volume", 1e-4, 10.0),
    quantity("hot.precharge", "hp", "Pre-charge of expansion tank", "pressure", 0.0, 16e5),
    quantity("hot.relief", "hr", "Relief valve setting, heater", "pressure", 0.5e5, 25e5),
)

SLOTS = (*_PLACE, *_WATER, *_SUCTION, *_PUMP, *_TANKS, *_USE, *_LINES, *_POWER, *_HOT)
BY_PATH = {slot.key: slot for slot in SLOTS}
