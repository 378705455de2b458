"""One field or cell: what was typed becomes a number in SI, a count, a choice or a text."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from calc.errors import InputError
from calc.page.fields import UNKNOWN, Choice, Count, Number, Text
from calc.reading import ReadingError, isolated
from calc.units import QUANTITIES, Parsed, Reader, parse, plain_number

if TYPE_CHECKING:
    from calc.page.fields import Cell, Field
    from calc.quantities import Unit


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
    unit = symbol or reader.unit(entry.quantity).symbol
    try:
        parsed = parse(text, entry.quantity, unit)
    except ReadingError as error:
        raise InputError(_worded(entry, error, text, unit)) from error
    except InputError as error:
        raise InputError(error.message.removesuffix(".")) from error
    if not within(entry, parsed):
        bound = entry.low if parsed.value < entry.low else entry.high
        raise InputError(beyond(name(entry), parsed.value, bound, entry.quantity, parsed.unit))
    return parsed


# What is wrong, in the label's words: one fault and the one way out.


def name(entry: Field) -> str:
    """What a field is called in a sentence: its label, without what is said about it."""
    return entry.label.removesuffix(" (optional)")


def enter(entry: Field) -> str:
    """What to do where nothing is entered: "Enter the climb from pump to outlet"."""
    label = name(entry)
    if isinstance(entry, Count):
        return f"Enter a whole number for “{label}”"
    if label[1:2].isupper():  # NPSH and its like stay as they are
        return f"Enter the {label}"
    return f"Enter the {label[:1].lower()}{label[1:]}"


def beyond(label: str, value: float, bound: float, quantity: str, unit: Unit) -> str:
    """A number out of its range: the bound it crossed, as a person writes it.

    label: what the number is called; value, bound: SI; unit: to say the bound in.  Raises nothing.
    """
    digits = plain_number(unit.from_si(bound), 4).replace("-", "−")
    side = "more" if value < bound else "fewer" if quantity == "number" else "less"
    return f"{label} must be {f'{digits} {unit.symbol}'.strip()} or {side}"


def _worded(entry: Number, error: ReadingError, text: str, symbol: str) -> str:
    if error.kind == "empty":
        return enter(entry)
    if error.kind == "number":
        return f"{name(entry)} must be a number, such as 12.5"
    if error.kind == "large":
        kind = QUANTITIES[entry.quantity]
        value, bound = (math.inf, entry.high) if "-" not in text else (-math.inf, entry.low)
        unit = kind.unit(symbol) or kind.units[0]
        return beyond(name(entry), value, bound, entry.quantity, unit)
    return error.message.removesuffix(".")


def within(entry: Number, parsed: Parsed) -> bool:
    """Whether a ``Parsed`` number is in its field's span; a bound as it is printed is in."""
    slack = 1e-9 * max(abs(entry.low), abs(entry.high))  # a bound typed in another unit is in
    if entry.low - slack <= parsed.value <= entry.high + slack:
        return True
    typed = plain_number(parsed.number, 12)
    bounds = (parsed.unit.from_si(bound) for bound in (entry.low, entry.high))
    return typed in {plain_number(bound, digits) for bound in bounds for digits in (3, 4)}


def _unknown(entry: Number | Count | Choice, system: str) -> str:
    """The text to work with where the reader does not know; "" for none, as for a field that may
    be left empty."""
    if entry.unknown is None and isinstance(entry, Number) and entry.optional:
        return ""
    if entry.unknown is None:
        raise InputError(f"{enter(entry)}: without it nothing can be worked out")
    return entry.unknown.text(system)


def _read_choice(entry: Choice, text: str) -> str:
    if text not in {value for value, _ in entry.options}:
        raise InputError(f"{name(entry)}: choose one from the list")
    return text


def _read_count(entry: Count, text: str) -> int:
    if not text.strip():
        raise InputError(enter(entry))
    try:
        number = float(text.strip())
    except ValueError:
        raise InputError(f"{name(entry)} must be a whole number") from None
    if number < entry.low or number > entry.high:
        side = f"{entry.low} or more" if number < entry.low else f"{entry.high} or fewer"
        raise InputError(f"{name(entry)} must be {side}")
    if number != number or number != int(number):
        raise InputError(f"{name(entry)} must be a whole number")
    return int(number)


def _read_text(entry: Text, text: str) -> str:
    if len(text) > entry.longest:
        raise InputError(f"{name(entry)} must be {entry.longest} characters or fewer")
    return isolated(text)
