"""Units: printing numbers in a reader's units, and the one door to reading them.

Inside ``calc`` every number is SI.  ``quantities`` holds units and factors, ``reading`` turns
"40 psi", "1 1/4 in" or "12,5" into SI, ``Reader`` prints SI in the reader's units.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from calc.quantities import (
    CELSIUS,
    DAY,
    FOOT,
    GALLON_UK,
    GALLON_US,
    GRAVITY,
    HORSEPOWER,
    HOUR,
    INCH,
    LITRE,
    METRE_OF_WATER,
    MINUTE,
    POUND,
    PSI,
    QUANTITIES,
    Quantity,
    Unit,
)
from calc.reading import Parsed, parse

__all__ = [
    "CELSIUS",
    "DAY",
    "FOOT",
    "GALLON_UK",
    "GALLON_US",
    "GRAVITY",
    "HORSEPOWER",
    "HOUR",
    "INCH",
    "LITRE",
    "MET",
    "METRE_OF_WATER",
    "MINUTE",
    "MONTHS",
    "POUND",
    "PSI",
    "QUANTITIES",
    "Parsed",
    "Quantity",
    "Reader",
    "Unit",
    "number_text",
    "numbers_apart",
    "parse",
    "plain_number",
]


MET = 1 + 1e-9  # times a limit: a number typed in another unit is still met
MONTHS = (  # of the year, as they are written
    "January", "February", "March", "April", "May", "June", "July", "August", "September",
    "October", "November", "December",
)  # fmt: skip
MOST_FIGURES = 11  # to tell two numbers apart in a sentence; closer ones are the same to a reader


@lru_cache(maxsize=1024)  # many figures of an answer are the last one's
def number_text(value: float, digits: int = 3) -> str:
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


def numbers_apart(one: float, other: float, digits: int = 3) -> tuple[str, str]:
    """Two numbers as ``number_text``, with more figures where they would print the same.

    >>> numbers_apart(20.004, 20.0), numbers_apart(20.0, 20.0)
    (('20.004', '20.000'), ('20.0', '20.0'))
    """
    for figures in range(digits, MOST_FIGURES + 1):
        shown = number_text(one, figures), number_text(other, figures)
        if shown[0] != shown[1]:
            return shown
    return number_text(one, digits), number_text(other, digits)


def plain_number(value: float, digits: int = 4) -> str:
    """``value`` as a person would type it: no sign that a keyboard lacks, no zeros at the end.

    >>> plain_number(2.50), plain_number(3.78e-10), plain_number(-12345.0)
    ('2.5', '3.78e-10', '-12345')
    """
    text = number_text(value, digits).replace("\u202f", "").replace("−", "-")
    number, sign, exponent = text.partition("e")
    if "." in number:
        number = number.rstrip("0").rstrip(".")
    return number + sign + exponent


@dataclass(frozen=True)
class Reader:
    """How a reader wants numbers: ``system`` is "metric" or "us"."""

    system: str = "metric"

    def unit(self, quantity: str) -> Unit:
        return QUANTITIES[quantity].default(self.system)

    def number(self, value: float, quantity: str, digits: int = 3) -> str:
        """The bare number of an SI ``value`` in the reader's unit."""
        return number_text(self.unit(quantity).from_si(value), digits)

    def show(self, value: float, quantity: str, digits: int = 3) -> str:
        """An SI ``value`` with its unit: "2.80 bar"."""
        return _joined(self.number(value, quantity, digits), self.unit(quantity).symbol)

    def apart(self, one: float, other: float, quantity: str, digits: int = 3) -> tuple[str, str]:
        """Two SI values as ``show`` prints them, with more figures where they would print the same.

        >>> Reader().apart(3.2, 3.204, "length"), Reader().apart(2.0, 2.0, "length")
        (('3.200\xa0m', '3.204\xa0m'), ('2.00\xa0m', '2.00\xa0m'))
        """
        unit = self.unit(quantity)
        first, second = numbers_apart(unit.from_si(one), unit.from_si(other), digits)
        return _joined(first, unit.symbol), _joined(second, unit.symbol)

    def typed(self, value: float, quantity: str) -> str:
        """As a person would type it into a field or a link: "18.5 m", "−" as "-"."""
        text = self.show(value, quantity, 4)
        for printed, plain in (("\u00a0", " "), ("\u202f", ""), ("−", "-")):
            text = text.replace(printed, plain)
        return text

    def both(self, value: float, quantity: str, digits: int = 3) -> str:
        """With the other system in brackets: "2.80 bar (40.6 psi)"."""
        other = Reader("metric" if self.system == "us" else "us")
        first, second = self.show(value, quantity, digits), other.show(value, quantity, digits)
        return first if first == second else f"{first} ({second})"


def _joined(number: str, symbol: str) -> str:
    if not symbol:
        return number
    return number + symbol if symbol in {"%", "°"} else f"{number}\u00a0{symbol}"
