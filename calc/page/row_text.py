"""A table as one line of text, the way it stands in a link: "Tap,12m,shower;Hose,30m,hose".

Rows are parted by ";" and cells by ","; "!" before one of these three signs takes it as it is.
Cells missing at the end of a row take their column's default.
"""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

MARKS = "!,;"
_KEPT = 32  # texts; an answer reads the same few tables many times


def encode(rows: Iterable[Iterable[str]]) -> str:
    """Rows of cell texts as one text.

    >>> encode((("Cabin 1", "12,5 m"), ("Hose", "")))
    'Cabin 1,12!,5 m;Hose,'
    """
    return ";".join(",".join(_escaped(cell) for cell in row) for row in rows)


@lru_cache(_KEPT)
def decode(text: str) -> tuple[tuple[str, ...], ...]:
    """Rows of cell texts, trimmed; an empty text is no row.

    >>> decode("Cabin 1,12!,5 m;Hose")
    (('Cabin 1', '12,5 m'), ('Hose',))
    """
    rows: list[tuple[str, ...]] = []
    cells: list[str] = []
    cell: list[str] = []
    signs = iter(text)
    for sign in signs:
        if sign == "!":
            cell.append(next(signs, "!"))
        elif sign == ",":
            cells.append("".join(cell).strip())
            cell = []
        elif sign == ";":
            cells.append("".join(cell).strip())
            rows.append(tuple(cells))
            cells, cell = [], []
        else:
            cell.append(sign)
    if text.strip():
        rows.append((*cells, "".join(cell).strip()))
    return tuple(row for row in rows if row != ("",))


def _escaped(cell: str) -> str:
    for sign in MARKS:
        cell = cell.replace(sign, f"!{sign}")
    return cell
