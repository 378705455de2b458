"""A table's rows, worked out in SI, as the text of a link."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, Any

from calc.page import row_text
from calc.page.fields import Number
from calc.sheets.parts.carry import exact
from calc.units import Reader, parse

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.fields import Rows


def table_text(field: Rows, table: Iterable[tuple[Any, ...]], reader: Reader) -> str:
    """Rows of cells as the text of a link: SI numbers, counts and words in the columns' order.

    What is only its column's default at the end of a row is left out.  Raises nothing.
    Source: definition.
    """
    usual = _standard(field, reader.system)
    cells = (
        [_cell(column, value, reader) for column, value in zip(field.columns, row, strict=True)]
        for row in table
    )
    return row_text.encode(_trimmed(row, usual) for row in cells)


@lru_cache
def _standard(field: Rows, system: str) -> list[str]:
    """Each column's default as a link writes it."""
    reader = Reader(system)
    return [_as_cell(c, c.default(system), reader) for c in field.columns]


def _trimmed(cells: list[str], usual: list[str]) -> list[str]:
    """Without what is only its column's default at the end."""
    while len(cells) > 1 and cells[-1] == usual[len(cells) - 1]:
        cells = cells[:-1]
    return cells


def _as_cell(column: object, text: str, reader: Reader) -> str:
    if not isinstance(column, Number) or not text:
        return text
    return exact(parse(text, column.quantity).value, column.quantity, reader)


def _cell(column: object, value: Any, reader: Reader) -> str:
    if value is None:
        return ""
    if not isinstance(column, Number):
        return str(value)
    return exact(value, column.quantity, reader).strip()
