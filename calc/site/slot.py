"""A fact with its standing, and a slot: what a fact may be, and how its text is read.

A fact is kept as it was typed, with its unit, so that a person finds it again as written; it is
read into SI only where it is used.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from calc.errors import InputError
from calc.reading import seen
from calc.units import QUANTITIES, number_text, parse

GIVEN, ASSUMED, UNKNOWN = "given", "assumed", "unknown"
STANDINGS = (GIVEN, ASSUMED, UNKNOWN)
NAME = 24  # characters of a name, our choice: it must fit in a table
SHORT, LONG = 60, 4000  # characters of a fact's text, and of a pasted table; our choice


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
