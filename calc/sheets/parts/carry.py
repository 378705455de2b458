"""Numbers as the texts of a link: what a reader entered as typed, what was worked out exactly."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows, Text
from calc.page.state import State, hidden_keys
from calc.sheets import sheet as find_sheet

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.page.fields import Field
    from calc.page.form import Values
    from calc.units import Reader


def texts(key: str, values: Values, reader: Reader, **changed: str) -> dict[str, str]:
    """Texts of every field that shows, with some ``changed``: a link that opens the form as it is.

    key: of the sheet.  None is left out as a default: the page, or a site, may fill that field
    with something else.  A number keeps the unit it was typed in.  Rows of a table are left out,
    but for none: give them in ``changed``.
    """
    sheet, found = find_sheet(key), dict(changed)
    for entry in sheet.fields:
        text = _text(entry, values)
        if text is not None:
            found.setdefault(entry.key, text)
    hidden = hidden_keys(sheet, State(reader.system, found))
    for entry in sheet.fields:  # those that show only now
        if not isinstance(entry, Rows):
            found.setdefault(entry.key, entry.default(reader.system))
    return {entry.key: found[entry.key] for entry in sheet.fields
            if entry.key in found and entry.key not in hidden}  # fmt: skip


def usual(key: str, field: str, system: str, written: Callable[[str], str] = str) -> str | None:
    """The text that a link to a sheet may leave out; None where the page's example has another
    default than the plain sheet: a link opens on the same numbers in either.

    key, field: of the sheet and of its field; system: "metric" or "us"; written: a default as the
    link would write it.
    """
    page = find_sheet(key)
    sheets = (page, page.plain or page)
    first, second = (written(one.field(field).default(system)) for one in sheets)
    return first if first == second else None


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
