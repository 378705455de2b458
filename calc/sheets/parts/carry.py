"""What a reader entered, as the texts of a link: the same sheet opens on the same numbers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows, Text

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.fields import Field
    from calc.page.form import Values
    from calc.units import Reader


def texts(
    fields: Iterable[Field], values: Values, reader: Reader, **changed: str
) -> dict[str, str]:
    """Texts of the fields that differ from their defaults, with some ``changed``.

    A number keeps the unit it was typed in.  A table of rows is left out: give it in ``changed``.
    """
    found = {}
    for entry in fields:
        if not _shown(entry, values) and entry.key not in changed:
            continue
        text = changed.get(entry.key, _text(entry, values, reader))
        if text is not None and text != entry.default(reader.system):
            found[entry.key] = text
    return found


def _shown(entry: Field, values: Values) -> bool:
    if entry.when is None:
        return True
    key, wanted = entry.when
    return values.numbers.get(key) in wanted


def _text(entry: Field, values: Values, reader: Reader) -> str | None:
    value = values.numbers.get(entry.key)
    if isinstance(entry, Rows):
        return None
    if isinstance(entry, Number):
        parsed = values.typed.get(entry.key)
        if parsed is not None:
            return f"{parsed.number:.12g} {parsed.unit.symbol}".strip()
        return UNKNOWN if entry.unknown is not None and not entry.optional else None
    if isinstance(entry, Count):
        return None if value is None else str(value)
    return value if isinstance(entry, Choice | Text) else None
