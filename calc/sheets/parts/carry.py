"""Numbers as the texts of a link: what a reader entered as typed, what was worked out exactly."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows, Sheet, Text
from calc.page.state import State, hidden_keys

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.answer import Answer
    from calc.page.fields import Field
    from calc.page.form import Values
    from calc.units import Reader


def texts(
    fields: Iterable[Field], values: Values, reader: Reader, **changed: str
) -> dict[str, str]:
    """Texts of every field that shows, with some ``changed``: a link that opens the form as it is.

    None is left out as a default: the page, or a site, may fill that field with something else.
    A number keeps the unit it was typed in.  Rows are left out, but for none: give them changed.
    """
    fields, found = tuple(fields), dict(changed)
    for entry in fields:
        text = _text(entry, values)
        if text is not None:
            found.setdefault(entry.key, text)
    hidden = hidden_keys(Sheet("", "", fields, _unsolved), State(reader.system, found))
    for entry in fields:  # those that show only now
        if not isinstance(entry, Rows):
            found.setdefault(entry.key, entry.default(reader.system))
    return {entry.key: found[entry.key] for entry in fields
            if entry.key in found and entry.key not in hidden}  # fmt: skip


def _unsolved(_values: Values, _reader: Reader) -> Answer:
    raise NotImplementedError


def _text(entry: Field, values: Values) -> str | None:
    """A field's text as it stands; None where it did not show, or is a table with rows."""
    value = values.numbers.get(entry.key)
    if isinstance(entry, Rows):
        return "" if value == () else None
    if isinstance(entry, Number):
        parsed = values.typed.get(entry.key)
        if parsed is not None:
            return f"{parsed.number:.12g} {parsed.unit.symbol}".strip()
        if entry.optional:
            return ""
        return UNKNOWN if entry.unknown is not None else None
    if isinstance(entry, Count):
        return None if value is None else str(value)
    return value if isinstance(entry, Choice | Text) else None


def exact(value: float | None, quantity: str, reader: Reader) -> str:
    """An SI value in the reader's unit as typed text, "" for None.

    value: SI; quantity: a key of ``units.QUANTITIES``.  Raises nothing.  Source: our choice.

    >>> from calc.units import Reader
    >>> exact(12.192, "length", Reader("us")), exact(-0.0, "length", Reader())
    ('40 ft', '0 m')
    """
    if value is None:
        return ""
    unit = reader.unit(quantity)
    number = unit.from_si(value) + 0.0  # never "-0"
    return f"{number:.10g} {unit.symbol}"
