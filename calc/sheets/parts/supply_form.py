"""The tables of a supply as a form holds them, read into rows; every fault at its cell of the form.

Sheets that ask for a whole supply have the same tables of sections and outlets and each a table of
tanks of its own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.sheets.parts.pipe_choice import pipe_of
from calc.site.supply import OutletRow, SectionRow, TankRow

if TYPE_CHECKING:
    from collections.abc import Mapping

    from calc.page.form import Row, Values

# tables and columns of ``Supply`` -> those of the form
_TABLES = {"sections": "runs", "outlets": "taps"}
_COLUMNS = {
    "start": "from", "end": "to", "length": "long", "height": "up", "part": "extra", "name": "name",
    "at": "at", "flow": "flow", "rated": "rated", "level": "up",
}  # fmt: skip
_SOURCE = {
    "suction_length": "suctionlong", "lift": "lift", "pump": "pump", "pumps": "pumps",
    "level": "fall",
}  # fmt: skip
Rows = tuple[tuple[SectionRow, ...], tuple[OutletRow, ...], tuple[TankRow, ...]]


def rows_of(values: Values, tanks: str) -> Rows:
    """(sections, outlets, tanks) of a form. tanks: key of its table of tanks.  Raises nothing."""
    return (
        tuple(_section(row) for row in values.runs),
        tuple(_outlet(row) for row in values.taps),
        tuple(TankRow(row.name, row.up) for row in values.numbers[tanks]),
    )


def _section(row: Row) -> SectionRow:
    start = row.numbers["from"]
    return SectionRow(start, row.to, row.long, row.up, pipe_of(row.pipe), row.bends, row.extra)


def _outlet(row: Row) -> OutletRow:
    """How many are open before and after stands only where a form asks it."""
    now, then = row.numbers.get("now", 0), row.numbers.get("then", 0)
    return OutletRow(row.name, row.at, row.kind, now, then, row.flow, row.rated, row.want)


def tables_of(tanks: str) -> Mapping[str, str]:
    """Table of ``Supply`` -> key of the form's. tanks: key of its table of tanks."""
    return {**_TABLES, "tanks": tanks}


def field_of(name: str | None, tanks: str) -> str:
    """The form's key for a place in the rows.  tanks: key of the form's table of tanks.

    >>> field_of("sections.2.start", "tanks"), field_of("source.level", "tanks")
    ('runs.2.from', 'fall')
    """
    table, _, rest = (name or "sections").partition(".")
    if table == "source":
        return _SOURCE.get(rest, "pump")
    tables = tables_of(tanks)
    if table not in tables:
        return _TABLES["sections"]
    index, _, column = rest.partition(".")
    parts = (tables[table], index, _COLUMNS.get(column, "") if column else "")
    return ".".join(part for part in parts if part)
