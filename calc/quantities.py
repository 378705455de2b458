"""Quantities and their units: exact factors, and the words that people write for them.

Factors are exact by definition (NIST SP 811, 2008, appendix B) unless a line says otherwise.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from functools import cached_property, lru_cache

FOOT = 0.3048  # m, exact (NIST SP 811 B.8)
INCH = 0.0254  # m, exact (NIST SP 811 B.8)
POUND = 0.45359237  # kg, exact (NIST SP 811 B.8)
GRAVITY = 9.80665  # m/s2, standard acceleration of free fall (NIST SP 811 B.8)
PSI = POUND * GRAVITY / INCH**2  # Pa, pound-force per square inch
GALLON_US = 231 * INCH**3  # m3, 231 cubic inches (NIST SP 811 B.8)
GALLON_UK = 4.54609e-3  # m3, exact (NIST SP 811 B.8)
HORSEPOWER = 550 * FOOT * POUND * GRAVITY  # W, 550 ft lbf/s (NIST SP 811 B.8)
METRE_OF_WATER = 9806.65  # Pa, conventional, 1000 kg/m3 (NIST SP 811 B.8)
CELSIUS = 273.15  # K at 0 degC, exact (NIST SP 811 B.8)
MINUTE, HOUR, DAY = 60.0, 3600.0, 86400.0  # s
LITRE = 1e-3  # m3


@dataclass(frozen=True)
class Unit:
    """A unit: SI value = number * factor + offset."""

    symbol: str
    factor: float
    offset: float = 0.0
    aliases: tuple[str, ...] = ()

    def to_si(self, number: float) -> float:
        """``number`` of this unit in SI."""
        return number * self.factor + self.offset

    def from_si(self, value: float) -> float:
        """An SI ``value`` in this unit."""
        return (value - self.offset) / self.factor


@dataclass(frozen=True)
class Quantity:
    """A kind of number: its name in a sentence, its units, and the usual two.

    units: those of a menu; others: those that are read where they are typed, and no more.
    """

    key: str
    name: str
    units: tuple[Unit, ...]
    metric: str
    us: str
    others: tuple[Unit, ...] = ()

    @cached_property
    def words(self) -> dict[str, Unit]:
        """{folded symbol or alias: unit} of every unit that is read."""
        found: dict[str, Unit] = {}
        for unit in (*self.units, *self.others):
            for word in (unit.symbol, *unit.aliases):
                found.setdefault(_fold(word), unit)
        return found

    def unit(self, symbol: str) -> Unit | None:
        """The unit with this symbol or alias (case-insensitive); None if unknown."""
        return self.words.get(_fold(symbol))

    def default(self, system: str) -> Unit:
        """The usual unit of ``system``: "metric" or "us"."""
        return self.words[_fold(self.us if system == "us" else self.metric)]


@lru_cache(maxsize=2048)  # a table of rows asks for the same few units again and again
def _fold(symbol: str) -> str:
    folded = symbol.replace("·", "").replace("³", "3").replace("²", "2")
    folded = re.sub(r"[\s.]+", "", folded)
    return folded if folded in {"MPa", "mPas"} else folded.lower()


def _u(symbol: str, factor: float, *aliases: str, offset: float = 0.0) -> Unit:
    return Unit(symbol, factor, offset, aliases)


_AMOUNTS = {
    "L": ("L", "litre", "litres", "liter", "liters"),
    "gal": ("gal", "gals", "gallon", "gallons"),
}


def _a(amount: str, *times: str) -> tuple[str, ...]:
    """Ways to write an amount per time: "gal/min", "gallons per minute", "gallons a minute"."""
    return tuple(
        f"{word}{per}{time}"
        for word in _AMOUNTS[amount]
        for per in ("/", " per ", " a ")
        for time in times
    )


def _of_water(*words: str) -> tuple[str, ...]:
    """Ways to write a pressure as a height of water: "m", "m head", "metres of water"."""
    ends = ("", " head", " of head", " water", " of water", " h2o", " wc")
    return tuple(word + end for word in words for end in ends)


_LENGTHS = (
    _u("m", 1.0, "metre", "metres", "meter", "meters", "mtr", "mtrs"),
    _u("ft", FOOT, "foot", "feet", "'", "′", "’"),
    _u("cm", 0.01, "cms", "centimetre", "centimetres", "centimeter", "centimeters"),
    _u("mm", 0.001, "millimetre", "millimetres", "millimeter", "millimeters"),
    _u("in", INCH, "inch", "inches", '"', "″", "”", "''", "’’"),
    _u("km", 1000.0, "kilometre", "kilometres", "kilometer", "kilometers"),
    _u("yd", 3 * FOOT, "yard", "yards"),
    _u("mi", 5280 * FOOT, "mile", "miles"),
)
_VOLUMES = (
    _u("L", LITRE, "litre", "litres", "liter", "liters"),
    _u("m³", 1.0, "m3", "cubic metres", "cubic meters"),
    _u("gal", GALLON_US, "gallon", "gallons", "US gal", "US gallons", "gals"),
    _u("imp gal", GALLON_UK, "UK gal", "imperial gallons"),
    _u("ft³", FOOT**3, "cu ft"),
)


_AREAS = (
    _u("m²", 1.0, "m2"),
    _u("ft²", FOOT**2, "ft2", "sq ft"),
    _u("ha", 1e4),
    _u("acre", 43560 * FOOT**2, "acres"),  # international foot
)
_TABLE = (
    Quantity("length", "length", _LENGTHS, "m", "ft"),
    Quantity("head", "head", _LENGTHS[:2], "m", "ft"),
    Quantity(
        "diameter",
        "diameter",
        (_LENGTHS[3], _LENGTHS[4], _LENGTHS[2], _LENGTHS[0]),
        "mm",
        "in",
    ),
    Quantity(
        "roughness",
        "roughness",
        (_LENGTHS[3], _LENGTHS[4], _LENGTHS[1]),
        "mm",
        "in",
    ),
    Quantity("rain", "depth of water", (_LENGTHS[3], _LENGTHS[4]), "mm", "in"),
    Quantity("area", "area", _AREAS, "m²", "ft²"),
    Quantity(
        "pressure",
        "pressure",
        (
            _u("bar", 1e5, "bars", "barg", "bar g"),
            _u("psi", PSI, "psig", "lb/in2", "lbs/in2", "lbf/in2"),
            _u("kPa", 1e3),
            _u("MPa", 1e6),
            _u("Pa", 1.0),
            _u("m water", METRE_OF_WATER, *_of_water("m", "metre", "metres", "meter", "meters")),
            _u("ft water", FOOT * METRE_OF_WATER, *_of_water("ft", "foot", "feet")),
            _u("inHg", 3386.389, '"hg'),  # conventional, 0 degC (NIST SP 811 B.8)
            _u("mbar", 100.0, "hPa"),
        ),
        "bar",
        "psi",
        (
            _u("atm", 101325.0, "atmospheres"),  # exact (NIST SP 811 B.8)
            # technical atmosphere, kgf/cm2, exact (NIST SP 811 B.8)
            _u("kgf/cm²", GRAVITY * 1e4, "kgf/cm2", "kg/cm2", "kg/cm²", "kp/cm2"),
        ),
    ),
    Quantity(
        "flow",
        "flow",
        (
            _u("L/min", LITRE / MINUTE, "lpm", "l/m", *_a("L", "minute", "min")),
            _u("gpm", GALLON_US / MINUTE, "us gpm", *_a("gal", "minute", "min")),
            _u("L/s", LITRE, "lps", *_a("L", "second", "s", "sec")),
            _u("L/h", LITRE / HOUR, "lph", *_a("L", "hour", "h", "hr")),
            _u("m³/h", 1 / HOUR, "m3/h", "cmh", "m3/hr", "m3/hour"),
            _u("gph", GALLON_US / HOUR, *_a("gal", "hour", "h", "hr")),
            _u("m³/s", 1.0, "m3/s"),
        ),
        "L/min",
        "gpm",
    ),
    Quantity(  # of one dripper
        "dripper",
        "flow",
        (
            _u("L/h", LITRE / HOUR, "lph", *_a("L", "hour", "h", "hr")),
            _u("gph", GALLON_US / HOUR, *_a("gal", "hour", "h", "hr")),
        ),
        "L/h",
        "gph",
    ),
    Quantity(
        "daily",
        "amount a day",
        (
            _u("L/day", LITRE / DAY, "l/d", "lpd", *_a("L", "day", "d")),
            _u("gal/day", GALLON_US / DAY, "gpd", *_a("gal", "day", "d")),
            _u("m³/day", 1 / DAY, "m3/day", "m3/d"),
        ),
        "L/day",
        "gal/day",
    ),
    Quantity("volume", "volume", _VOLUMES, "L", "gal"),
    Quantity(
        "speed",
        "speed",
        (_u("m/s", 1.0, "mps"), _u("ft/s", FOOT, "fps")),
        "m/s",
        "ft/s",
    ),
    Quantity(
        "temperature",
        "temperature",
        (
            _u("°C", 1.0, "c", "degc", "celsius", offset=CELSIUS),
            _u("°F", 5 / 9, "f", "degf", offset=CELSIUS - 32 * 5 / 9),
            _u("K", 1.0),
        ),
        "°C",
        "°F",
    ),
    Quantity(
        "density",
        "density",
        (_u("kg/m³", 1.0, "kg/m3"), _u("lb/ft³", POUND / FOOT**3, "lb/ft3")),
        "kg/m³",
        "lb/ft³",
    ),
    Quantity("viscosity", "viscosity", (_u("mPa·s", 1e-3, "cP"),), "mPa·s", "mPa·s"),
    Quantity("kinematic", "kinematic viscosity", (_u("mm²/s", 1e-6, "cSt"),), "mm²/s", "mm²/s"),
    Quantity(
        "time",
        "time",
        (
            _u("s", 1.0, "sec", "secs", "second", "seconds"),
            _u("min", MINUTE, "mins", "minute", "minutes"),
            _u("h", HOUR, "hr", "hrs", "hour", "hours"),
            _u("days", DAY, "d", "day"),
        ),
        "s",
        "s",
    ),
    Quantity(
        "days",
        "time",
        (_u("days", DAY, "d", "day"), _u("h", HOUR, "hr", "hrs", "hour", "hours")),
        "days",
        "days",
    ),
    Quantity(
        "minutes",
        "time",
        (
            _u("min", MINUTE, "mins", "minute", "minutes"),
            _u("s", 1.0, "sec", "secs", "second", "seconds"),
            _u("h", HOUR, "hr", "hrs", "hour", "hours"),
        ),
        "min",
        "min",
    ),
    Quantity(
        "power",
        "power",
        (_u("W", 1.0, "watt", "watts"), _u("kW", 1e3), _u("hp", HORSEPOWER)),
        "W",
        "W",
    ),
    Quantity("charge", "charge", (_u("Ah", HOUR, "amp hours", "amp-hours"),), "Ah", "Ah"),
    Quantity(  # of the sun in a day, on a square metre
        "irradiation",
        "sun a day",
        (
            _u("kWh/m²", 1e3 * HOUR, "kwh/m2", "kwh/m²/day", "kwh/m2/day", "sun hours"),
            _u("MJ/m²", 1e6, "mj/m2", "mj/m²/day", "mj/m2/day"),
        ),
        "kWh/m²",
        "kWh/m²",
    ),
    Quantity("energy", "energy", (_u("Wh", HOUR), _u("kWh", 1e3 * HOUR), _u("J", 1.0)), "Wh", "Wh"),
    Quantity("per_hour", "rate", (_u("per hour", 1 / HOUR, "/h"),), "per hour", "per hour"),
    Quantity("percent", "share", (_u("%", 0.01, "percent"),), "%", "%"),
    Quantity("number", "number", (_u("", 1.0),), "", ""),
    Quantity("angle", "angle", (_u("°", math.pi / 180, "deg"),), "°", "°"),
    Quantity("voltage", "voltage", (_u("V", 1.0),), "V", "V"),
    Quantity("current", "current", (_u("A", 1.0),), "A", "A"),
    # of one metre of a conductor, and the area of its metal
    Quantity("resistance", "resistance", (_u("mΩ/m", 1e-3), _u("Ω/km", 1e-3)), "mΩ/m", "mΩ/m"),
    Quantity("conductor", "area of a conductor", (_u("mm²", 1e-6, "mm2"),), "mm²", "mm²"),
    Quantity("rpm", "shaft speed", (_u("rpm", 1 / MINUTE),), "rpm", "rpm"),
    Quantity(
        "mass", "mass", (_u("kg", 1.0), _u("lb", POUND, "lbs", "pound", "pounds")), "kg", "lb"
    ),
    Quantity(
        "force", "force", (_u("N", 1.0), _u("kN", 1e3), _u("lbf", POUND * GRAVITY)), "N", "lbf"
    ),
)
QUANTITIES = {quantity.key: quantity for quantity in _TABLE}
