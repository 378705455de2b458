"""Numbers as the texts of a link: what a reader entered as typed, what was worked out exactly."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows, Text

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.fields import Field
    from calc.page.form import Values
    from calc.units import Reader


def texts(fields: Iterable[Field], values: Values, **changed: str) -> dict[str, str]:
    """Texts of the fields that show, with some ``changed``.

    All of them, whatever the defaults: what a link leaves out is filled by the example or a site.
    A number keeps the unit it was typed in.  A table of rows is left out: give it in ``changed``.
    """
    found = {}
    for entry in fields:
        if not _shown(entry, values) and entry.key not in changed:
            continue
        text = changed.get(entry.key, _text(entry, values))
        if text is not None:
            found[entry.key] = text
    return found


def _shown(entry: Field, values: Values) -> bool:
    if entry.when is None:
        return True
    key, wanted = entry.when
    return values.numbers.get(key) in wanted


def _text(entry: Field, values: Values) -> str | None:
    value = values.numbers.get(entry.key)
    if isinstance(entry, Rows):
        return None
    if isinstance(entry, Number):
        parsed = values.typed.get(entry.key)
        if parsed is not None:
            return f"{parsed.number:.12g} {parsed.unit.symbol}".strip()
        return "" if entry.optional else UNKNOWN
    if isinstance(entry, Count):
        return UNKNOWN if value is None else str(value)
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
