"""Quantities and units: exact factors, reading what people type, printing numbers.

Inside ``calc`` every number is SI.  This module is the edge: ``parse`` reads
"40 psi", "1 1/4 in" or "12,5" into SI, ``Reader`` prints SI in the reader's
units.  Factors are exact by definition (NIST SP 811, 2008, appendix B) unless a
line says otherwise.
"""

import math
import re
from dataclasses import dataclass
from functools import lru_cache

from calc.errors import InputError

FOOT = 0.3048  # m, exact (NIST SP 811 B.8)
INCH = 0.0254  # m, exact (NIST SP 811 B.8)
POUND = 0.45359237  # kg, exact (NIST SP 811 B.8)
GRAVITY = 9.80665  # m/s2, standard acceleration of free fall (NIST SP 811 B.8)
PSI = POUND * GRAVITY / INCH**2  # Pa, pound-force per square inch
GALLON_US = 231 * INCH**3  # m3, 231 cubic inches (NIST SP 811 B.8)
GALLON_UK = 4.54609e-3  # m3, exact (NIST SP 811 B.8)
HORSEPOWER = 550 * FOOT * POUND * GRAVITY  # W, 550 ft lbf/s (NIST SP 811 B.8)
METRE_OF_WATER = 9806.65  # Pa, conventional, 1000 kg/m3 (NIST SP 811 B.8)
MINUTE, HOUR, DAY = 60.0, 3600.0, 86400.0  # s
LITRE = 1e-3  # m3


@dataclass(frozen=True)
class Unit:
    """A unit: SI value = number * factor + offset."""

    symbol: str
    factor: float
    offset: float = 0.0
    aliases: tuple = ()

    def to_si(self, number):
        return number * self.factor + self.offset

    def from_si(self, value):
        return (value - self.offset) / self.factor


@dataclass(frozen=True)
class Quantity:
    """A kind of number: its name in a sentence, its units, and the usual two."""

    key: str
    name: str
    units: tuple
    metric: str
    us: str

    def unit(self, symbol):
        """The unit with this symbol or alias (case-insensitive); None if unknown."""
        wanted = _fold(symbol)
        for unit in self.units:
            if wanted in {_fold(unit.symbol), *(_fold(a) for a in unit.aliases)}:
                return unit
        return None

    def default(self, system):
        return self.unit(self.us if system == "us" else self.metric)


@lru_cache(maxsize=2048)  # a table of rows asks for the same few units again and again
def _fold(symbol):
    folded = symbol.replace("·", "").replace("³", "3").replace("²", "2")
    folded = re.sub(r"[\s.]+", "", folded)
    return folded if folded in {"MPa", "mPas"} else folded.lower()


def _u(symbol, factor, *aliases, offset=0.0):
    return Unit(symbol, factor, offset, aliases)


_LENGTHS = (
    _u("m", 1.0, "metre", "metres", "meter", "meters"),
    _u("ft", FOOT, "foot", "feet", "'", "′"),
    _u("cm", 0.01),
    _u("mm", 0.001, "millimetre", "millimetres"),
    _u("in", INCH, "inch", "inches", '"', "″"),
    _u("km", 1000.0),
    _u("yd", 3 * FOOT, "yard", "yards"),
    _u("mi", 5280 * FOOT, "mile", "miles"),
)
_VOLUMES = (
    _u("L", LITRE, "litre", "litres", "liter", "liters"),
    _u("m³", 1.0, "m3", "cubic metres"),
    _u("gal", GALLON_US, "gallon", "gallons", "US gal", "usgal"),
    _u("imp gal", GALLON_UK, "UK gal"),
    _u("ft³", FOOT**3, "cu ft"),
)


def _quantities():
    table = [
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
        Quantity("area", "area", _areas(), "m²", "ft²"),
        Quantity(
            "pressure",
            "pressure",
            (
                _u("bar", 1e5),
                _u("psi", PSI, "psig", "lb/in2"),
                _u("kPa", 1e3),
                _u("MPa", 1e6),
                _u("Pa", 1.0),
                _u("m water", METRE_OF_WATER, "m", "mh2o", "mwc", "m head"),
                _u("ft water", FOOT * METRE_OF_WATER, "ft", "fth2o", "ft head"),
                _u("inHg", 3386.389, '"hg'),  # conventional, 0 degC (NIST SP 811 B.8)
                _u("mbar", 100.0, "hPa"),
            ),
            "bar",
            "psi",
        ),
        Quantity(
            "flow",
            "flow",
            (
                _u("L/min", LITRE / MINUTE, "lpm", "l/m"),
                _u("gpm", GALLON_US / MINUTE, "gal/min", "us gpm"),
                _u("L/s", LITRE, "lps"),
                _u("L/h", LITRE / HOUR, "lph"),
                _u("m³/h", 1 / HOUR, "m3/h", "cmh"),
                _u("gph", GALLON_US / HOUR, "gal/h"),
                _u("m³/s", 1.0, "m3/s"),
            ),
            "L/min",
            "gpm",
        ),
        Quantity(
            "daily",
            "amount a day",
            (
                _u("L/day", LITRE / DAY, "l/d"),
                _u("gal/day", GALLON_US / DAY, "gpd", "gal/d"),
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
                _u("°C", 1.0, "c", "degc", "celsius", offset=273.15),
                _u("°F", 5 / 9, "f", "degf", offset=273.15 - 32 * 5 / 9),
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
                _u("s", 1.0, "sec", "seconds"),
                _u("min", MINUTE, "minutes"),
                _u("h", HOUR, "hr", "hours"),
                _u("days", DAY, "d", "day"),
            ),
            "s",
            "s",
        ),
        Quantity(
            "days", "time", (_u("days", DAY, "d", "day"), _u("h", HOUR, "hours")), "days", "days"
        ),
        Quantity(
            "minutes",
            "time",
            (_u("min", MINUTE, "minutes"), _u("s", 1.0), _u("h", HOUR, "hours")),
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
        Quantity(
            "energy", "energy", (_u("Wh", HOUR), _u("kWh", 1e3 * HOUR), _u("J", 1.0)), "Wh", "Wh"
        ),
        Quantity(
            "per_hour", "rate", (_u("per hour", 1 / HOUR, "/h", "1/h"),), "per hour", "per hour"
        ),
        Quantity("percent", "share", (_u("%", 0.01, "percent"),), "%", "%"),
        Quantity("number", "number", (_u("", 1.0),), "", ""),
        Quantity("angle", "angle", (_u("°", math.pi / 180, "deg"),), "°", "°"),
        Quantity("voltage", "voltage", (_u("V", 1.0),), "V", "V"),
        Quantity("current", "current", (_u("A", 1.0),), "A", "A"),
        Quantity("rpm", "shaft speed", (_u("rpm", 1 / MINUTE),), "rpm", "rpm"),
        Quantity("mass", "mass", (_u("kg", 1.0), _u("lb", POUND)), "kg", "lb"),
    ]
    return {quantity.key: quantity for quantity in table}


def _areas():
    return (
        _u("m²", 1.0, "m2"),
        _u("ft²", FOOT**2, "ft2", "sq ft"),
        _u("ha", 1e4),
        _u("acre", 43560 * FOOT**2, "acres"),  # international foot
    )


QUANTITIES = _quantities()

_VULGAR = {"¼": "1/4", "½": "1/2", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_SPACES = "\u00a0\u2009\u202f"
_NUMBER = re.compile(
    r"""(?P<sign>[-+]?)
    (?: (?P<whole>\d+)[\s-]+(?P<top>\d+)/(?P<bottom>\d+)
      | (?P<top2>\d+)/(?P<bottom2>\d+)
      | (?P<plain>(?:\d+(?:[.,\s]\d+)*[.,]?|[.,]\d+)(?:e[-+]?\d+)?) )
    \s*(?P<unit>.*)$""",
    re.VERBOSE | re.IGNORECASE,
)


@dataclass(frozen=True)
class Parsed:
    """What was read: the SI value, the number and unit it was typed in, a note."""

    value: float
    number: float
    unit: Unit
    note: str = ""


def parse(text, quantity, unit_symbol=None):
    """Read ``text`` as a ``quantity``; a unit in the text wins over ``unit_symbol``.

    text: what was typed: "40", "40 psi", "1 1/4 in", "¾", "12,5", "5 ft 6 in".
    quantity: key of ``QUANTITIES``; unit_symbol: one of its units (None: metric).
    Returns ``Parsed``.  Raises ``InputError`` with a sentence for the reader
    where nothing, no finite number, an ambiguous comma or a unit of another
    kind was typed.

    >>> round(parse("1 1/4 in", "diameter").value, 5)
    0.03175
    """
    kind = QUANTITIES[quantity]
    unit = kind.unit(unit_symbol) if unit_symbol is not None else kind.default("metric")
    if unit is None:
        raise InputError(f"“{unit_symbol}” is not a unit of {kind.name}. {_units_of(kind)}")
    cleaned = _clean(text)
    if not cleaned:
        raise InputError("Nothing is entered here. Enter a number.")
    feet_inches = _feet_and_inches(cleaned) if kind.unit("ft") and kind.unit("in") else None
    if feet_inches is not None:
        foot = kind.unit("ft")
        return Parsed(foot.to_si(feet_inches), feet_inches, foot)
    match = _NUMBER.match(cleaned)
    if match is None:
        raise InputError(f"“{text.strip()}” is not a number. Enter a number such as 12.5.")
    number, note = _number(match)
    if match["unit"]:
        unit = _typed_unit(match["unit"], kind, text)
    if not math.isfinite(number) or abs(number) > 1e15:
        raise InputError(f"“{text.strip()}” is too large to be meant. Check the number.")
    return Parsed(unit.to_si(number), number, unit, note)


def _clean(text):
    for space in _SPACES:
        text = text.replace(space, " ")
    for glyph, plain in _VULGAR.items():
        text = text.replace(glyph, f" {plain}")
    return text.replace("−", "-").replace("⁄", "/").strip()


def _feet_and_inches(text):
    """Feet from "5 ft 6 in", "5'6\\"" (None if it is not of that form)."""
    found = re.fullmatch(
        r"(-?\d+(?:\.\d+)?)\s*(?:ft|feet|foot|'|′)\s*(\d+(?:\.\d+)?)\s*(?:in|inch|inches|\"|″)?",
        text,
        re.IGNORECASE,
    )
    if found is None:
        return None
    feet, inches = float(found[1]), float(found[2])
    return math.copysign(abs(feet) + inches / 12, feet)


def _number(match):
    """The number and a note on how it was read."""
    sign = -1.0 if match["sign"] == "-" else 1.0
    if match["plain"] is None:
        whole = float(match["whole"] or 0)
        top = float(match["top"] or match["top2"])
        bottom = float(match["bottom"] or match["bottom2"])
        if bottom == 0:
            raise InputError("A fraction cannot have 0 below the line.")
        return sign * (whole + top / bottom), ""
    plain = match["plain"].strip()
    return _decimal(plain, sign)


def _decimal(plain, sign):
    grouped = re.fullmatch(r"(\d{1,3}(?: \d{3})+)((?:[.,]\d+)?)", plain)
    if grouped:
        plain = grouped[1].replace(" ", "") + grouped[2]
    if " " in plain:
        raise InputError(f"“{plain}” is more than one number. Enter one number here.")
    commas, points = plain.count(","), plain.count(".")
    if commas == 0 and points <= 1:
        return sign * float(plain), ""
    if commas == 1 and points == 0:
        whole, part = plain.split(",")
        if re.fullmatch(r"\d{3}", part) and whole.strip("0"):
            raise InputError(
                f"“{plain}” can mean {whole}{part} or {whole}.{part}. "
                f"Write it without the comma: {whole}{part} or {whole}.{part}."
            )
        value = sign * float(plain.replace(",", "."))
        return value, f"Read as {value:.10g}: the comma was taken as a decimal point."
    if points == 1 and re.fullmatch(r"\d{1,3}(,\d{3})+\.\d*", plain):
        return sign * float(plain.replace(",", "")), ""
    if commas > 1 and points == 0 and re.fullmatch(r"\d{1,3}(,\d{3})+", plain):
        return sign * float(plain.replace(",", "")), ""
    raise InputError(f"“{plain}” is not one number. Use a point for decimals, such as 12.5.")


def _typed_unit(symbol, kind, text):
    symbol = symbol.strip()
    unit = kind.unit(symbol)
    if unit is not None:
        return unit
    elsewhere = [q.name for q in QUANTITIES.values() if symbol and q.unit(symbol)]
    if elsewhere:
        raise InputError(
            f"“{symbol}” is a unit of {elsewhere[0]}, not of {kind.name}. {_units_of(kind)}"
        )
    raise InputError(f"“{text.strip()}”: “{symbol}” is not a unit known here. {_units_of(kind)}")


def _units_of(kind):
    symbols = [unit.symbol for unit in kind.units if unit.symbol]
    return f"Use {', '.join(symbols)}." if symbols else "Enter a plain number."


def number_text(value, digits=3):
    """``value`` with ``digits`` significant figures, whole figures never rounded off.

    Rounded first to 12 figures, so that the last bit of a library's arithmetic
    cannot tip a tie: the same text on every machine.  Thousands from 10 000 up
    are set off with a narrow no-break space.

    >>> number_text(2.75, 2), number_text(1234.56), number_text(0.0)
    ('2.8', '1235', '0')
    """
    if not math.isfinite(value):
        return "–"
    value = float(f"{value:.11e}")
    if value == 0:
        return "0"
    if not 1e-300 < abs(value) < 1e300:
        return f"{value:.{digits - 1}e}"
    exponent = int(
        f"{value * (1 + 1e-11):.{digits - 1}e}".partition("e")[2]
    )  # after rounding: 99.95 -> 100
    decimals = max(0, digits - 1 - exponent)
    if decimals > 9 or exponent > 14:
        return f"{value:.{digits - 1}e}"
    scaled = math.floor(abs(value) * 10**decimals * (1 + 1e-11) + 0.5) / 10**decimals
    text = f"{scaled:.{decimals}f}"
    whole, _, part = text.partition(".")
    if len(whole) > 4:
        whole = f"{int(whole):,}".replace(",", "\u202f")
    sign = "−" if value < 0 and scaled else ""
    return sign + whole + (f".{part}" if part else "")


@dataclass(frozen=True)
class Reader:
    """How a reader wants numbers: ``system`` is "metric" or "us"."""

    system: str = "metric"

    def unit(self, quantity):
        return QUANTITIES[quantity].default(self.system)

    def number(self, value, quantity, digits=3):
        """The bare number of an SI ``value`` in the reader's unit."""
        return number_text(self.unit(quantity).from_si(value), digits)

    def show(self, value, quantity, digits=3):
        """An SI ``value`` with its unit: "2.80 bar"."""
        return _joined(self.number(value, quantity, digits), self.unit(quantity).symbol)

    def typed(self, value, quantity):
        """As a person would type it into a field or a link: "18.5 m", "−" as "-"."""
        text = self.show(value, quantity, 4)
        for printed, plain in (("\u00a0", " "), ("\u202f", ""), ("−", "-")):
            text = text.replace(printed, plain)
        return text

    def both(self, value, quantity, digits=3):
        """With the other system in brackets: "2.80 bar (40.6 psi)"."""
        other = Reader("metric" if self.system == "us" else "us")
        first, second = self.show(value, quantity, digits), other.show(value, quantity, digits)
        return first if first == second else f"{first} ({second})"


def _joined(number, symbol):
    if not symbol:
        return number
    return number + symbol if symbol in {"%", "°"} else f"{number}\u00a0{symbol}"
