"""One field or cell: what was typed becomes a number in SI, a count, a choice or a text."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from calc.errors import InputError
from calc.page.fields import UNKNOWN, Choice, Count, Number, Text
from calc.reading import seen
from calc.units import Parsed, Reader, number_text, parse, plain_number

if TYPE_CHECKING:
    from calc.page.fields import Cell


def read(
    entry: Cell, text: str, system: str, symbol: str | None = None
) -> tuple[Any, Parsed | None]:
    """(SI number, count, choice or text; None where empty or not known, ``Parsed`` of a number).

    system: the reader's units; symbol: of the unit in the field's menu (None: the system's usual).
    Raises InputError with a sentence for the reader.
    """
    if text.strip() == UNKNOWN and not isinstance(entry, Text):
        text, symbol = _unknown(entry, system), None
        if text == "":
            return None, None
    if isinstance(entry, Choice):
        return _read_choice(entry, text), None
    if isinstance(entry, Count):
        return _read_count(entry, text), None
    if isinstance(entry, Text):
        return _read_text(entry, text), None
    if entry.optional and not text.strip():
        return None, None
    parsed = _read_number(entry, text, Reader(system), symbol)
    return min(max(parsed.value, entry.low), entry.high), parsed


def _read_number(entry: Number, text: str, reader: Reader, symbol: str | None) -> Parsed:
    try:
        parsed = parse(text, entry.quantity, symbol or reader.unit(entry.quantity).symbol)
    except InputError as error:
        raise InputError(f"{error.message} {allowed(entry, reader)}") from error
    if not within(entry, parsed):
        raise InputError(f"{_given(parsed)} is out of range. {allowed(entry, reader)}")
    return parsed


def within(entry: Number, parsed: Parsed) -> bool:
    """Whether a ``Parsed`` number is in its field's span; a bound as it is printed is in."""
    slack = 1e-9 * max(abs(entry.low), abs(entry.high))  # a bound typed in another unit is in
    if entry.low - slack <= parsed.value <= entry.high + slack:
        return True
    typed = plain_number(parsed.number, 12)
    bounds = (parsed.unit.from_si(bound) for bound in (entry.low, entry.high))
    return typed in {plain_number(bound, digits) for bound in bounds for digits in (3, 4)}


def _unknown(entry: Number | Count | Choice, system: str) -> str:
    """The text to work with where the reader does not know; "" for none."""
    if entry.unknown is None:
        raise InputError("This one must be known: without it nothing can be worked out.")
    return entry.unknown.text(system)


def _read_choice(entry: Choice, text: str) -> str:
    if text not in {value for value, _ in entry.options}:
        raise InputError(f"“{text}” is not one of the choices here. Choose one from the list.")
    return text


def _read_count(entry: Count, text: str) -> int:
    span = f"Enter a whole number from {entry.low} to {entry.high}."
    try:
        number = float(text.strip())
    except ValueError:
        given = (
            f"“{text.strip()}” is not a whole number" if text.strip() else "Nothing is entered here"
        )
        raise InputError(f"{given}. {span}") from None
    if not math.isfinite(number) or number != int(number) or not entry.low <= number <= entry.high:
        raise InputError(f"“{text.strip()}” is not allowed here. {span}")
    return int(number)


def _read_text(entry: Text, text: str) -> str:
    if len(text) > entry.longest:
        raise InputError(
            f"This is {len(text)} characters long. Allowed: up to {entry.longest}. "
            "Leave some lines out."
        )
    return seen(text)


def _given(parsed: Parsed) -> str:
    return f"{number_text(parsed.number, 4)} {parsed.unit.symbol}".strip()


def allowed(entry: Number, reader: Reader) -> str:
    """The sentence that says which span a number field takes, in the reader's units."""
    low, high = (reader.show(v, entry.quantity) for v in (entry.low, entry.high))
    return f"Allowed: {low} to {high}."
