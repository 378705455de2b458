"""A pump maker's table, pasted in as text, read into points in SI.

The heading names each column and its unit; columns stand between tabs,
semicolons, commas or spaces; the table may run down or across the page.  The
unit tells what a column is: a flow unit a flow, metres, feet, bar or psi a
head, W or hp a power, % an efficiency; a column named NPSH is the NPSH
required.  Every error names the row.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from calc.errors import InputError
from calc.pump.points import POINT_DENSITY, Point
from calc.units import GRAVITY, QUANTITIES, parse

if TYPE_CHECKING:
    from calc.units import Unit

    Line = tuple[int, list[str]]  # number of the row as pasted, cells

MOST_ROWS = 60  # rows read from one table

_KINDS = ("flow", "head", "pressure", "power", "percent")
_BARE = {"": None, "m": "head", "ft": "head"}  # metres and feet: a head, not a pressure
_USED = re.compile(r"(flow|q\b|capacity|head|h\b|tdh|press|eff|eta\b|η|power|p[12]?\b|npsh)", re.I)
_LABELS = {
    "flow": "flow", "head": "head", "efficiency": "efficiency", "power": "power", "npsh": "NPSH "
    "required",
}  # fmt: skip


@dataclass(frozen=True)
class Column:
    """What a heading says: the ``Point`` field it fills (None: not used) and its unit."""

    name: str
    field: str | None
    quantity: str | None
    unit: Unit | None


def read_points(text: str) -> tuple[Point, ...]:
    """The points of a pasted table, in the order given.

    text: the table with its heading.  Returns a tuple of ``Point`` (flow in
    m3/s, head in m, efficiency as a share, power in W, NPSH in m).
    Raises InputError naming the row where something cannot be read.
    Source: none; the layout is what makers' tables have in common.

    >>> [p.head for p in read_points("Flow L/min; Head m\\n0; 40\\n30; 34\\n60; 20")]
    [40.0, 34.0, 20.0]
    """
    rows = _split(text)
    rows = _turned(rows)
    columns = _columns(rows[0])
    body = rows[1:]
    if not any(column.unit for column in columns) and body and _is_unit_row(body[0][1]):
        columns = _columns((0, [f"{n} {u}" for n, u in zip(rows[0][1], body[0][1], strict=False)]))
        body = body[1:]
    _check_columns(columns)
    if len(body) > MOST_ROWS:
        raise InputError(
            f"The table has {len(body)} rows. Allowed: up to {MOST_ROWS}. Leave some out."
        )
    return tuple(_point(number, cells, columns) for number, cells in body)


def _split(text: str) -> list[Line]:
    """[(row number as pasted, cells)] of the lines that are not empty."""
    lines = [(n, line.strip(" \r")) for n, line in enumerate(text.splitlines(), 1) if line.strip()]
    if len(lines) < 2:
        raise InputError(
            "Paste the pump's table: a heading such as “Flow L/min; Head m”, then a row a point."
        )
    separator = _separator([line for _, line in lines])
    return [(number, _cells(line, separator)) for number, line in lines]


def _separator(lines: list[str]) -> str | None:
    """The mark between columns, told by the heading; None: spaces."""
    for mark in ("\t", ";", "|"):
        if mark in lines[0]:
            return mark
    if all("," in line for line in lines[:2]) and not all(
        _comma_decimals(line) for line in lines[1:]
    ):
        return ","
    return None


def _comma_decimals(line: str) -> bool:
    """Whether a line reads as numbers with decimal commas set apart by spaces."""
    return bool(re.fullmatch(r"[-\d.,]+(\s+[-\d.,]+)+", line)) and ", " not in line


def _cells(line: str, separator: str | None) -> list[str]:
    if separator:
        outer = line.strip().strip("|") if separator == "|" else line
        return [cell.strip() for cell in outer.split(separator)]
    if re.search(r"\S {2,}\S", line):
        return re.split(r" {2,}", line)
    words = line.split()
    if all(_number(word) is not None for word in words):
        return words
    return _worded(words)


def _worded(words: list[str]) -> list[str]:
    """Cells of a heading set apart by single spaces: each ends with its unit or at a number."""
    cells: list[str] = []
    cell: list[str] = []
    for word in words:
        if _number(word) is not None and cell:
            cells.append(" ".join(cell))
            cell = []
        cell.append(word)
        if _number(word) is not None or (_unit(word)[1] and (len(cell) > 1 or _has_brackets(word))):
            cells.append(" ".join(cell))
            cell = []
    return [*cells, " ".join(cell)] if cell else cells


def _has_brackets(word: str) -> bool:
    return word[0] in "([" and word[-1] in ")]"


def _turned(rows: list[Line]) -> list[Line]:
    """The rows with the heading on top, where the table was printed across the page."""
    labelled = [cells for _, cells in rows if cells and _number(cells[0]) is None]
    across = len(rows[0][1]) > 2 and len(labelled) == len(rows)
    if not across or any(_number(cell) is None for _, cells in rows for cell in cells[1:]):
        return rows
    width = len(rows[0][1])
    for number, cells in rows:
        if len(cells) != width:
            raise InputError(f"Row {number} has {len(cells) - 1} numbers, row 1 has {width - 1}.")
    turned = zip(*(cells for _, cells in rows), strict=True)
    return [(column, list(cells)) for column, cells in enumerate(turned)]


def _is_unit_row(cells: list[str]) -> bool:
    return any(_unit(cell)[1] for cell in cells) and all(_number(cell) is None for cell in cells)


def _columns(row: Line) -> list[Column]:
    return [_column(cell) for cell in row[1]]


def _column(cell: str) -> Column:
    """A ``Column`` from a heading such as "Flow (L/min)", "H, m" or "P1 [W]"."""
    found = re.fullmatch(r"(.*?)[\s,/]*[(\[](.*?)[)\]]\s*", cell) or re.fullmatch(
        r"(.*?)[\s,]+([^\s,]+)", cell
    )
    name, symbol = (found[1], found[2]) if found else ("", cell)
    quantity, unit = _unit(symbol)
    if unit is None:
        return Column(cell, None, None, None)
    low = name.lower()
    if "npsh" in low:
        return Column(cell, "npsh", quantity, unit)
    field = {"flow": "flow", "head": "head", "pressure": "head", "percent": "efficiency"}.get(
        str(quantity)
    )
    if quantity == "power":
        field = "shaft_power" if re.search(r"p ?2|shaft|brake|bhp", low) else "power"
    return Column(cell, field, quantity, unit)


def _unit(symbol: str) -> tuple[str, Unit] | tuple[None, None]:
    """(quantity key, unit) of a unit symbol; (None, None) where it is none of a pump table's."""
    symbol = symbol.strip().strip("()[]").replace("USgpm", "gpm").replace("US gpm", "gpm")
    if symbol.lower() in _BARE:
        kind = _BARE[symbol.lower()]
        bare = QUANTITIES[kind].unit(symbol) if kind else None
        return (kind, bare) if kind and bare else (None, None)
    for kind in _KINDS:
        unit = QUANTITIES[kind].unit(symbol)
        if unit is not None and unit.symbol:
            return kind, unit
    return None, None


def _check_columns(columns: list[Column]) -> None:
    fields = [column.field for column in columns]
    for column in columns:
        if column.unit is None and _USED.match(column.name):
            raise InputError(
                f"The column “{column.name}” has no unit that is known here. Write it behind the "
                "name, such as “Flow L/min”, “Head m”, “Efficiency %”, “Power W”, “NPSH m”."
            )
    for field in ("flow", "head"):
        if field not in fields:
            example = "“Flow L/min”" if field == "flow" else "“Head m”"
            raise InputError(
                f"No {_LABELS[field]} column was found. Write its name and unit in the heading, "
                f"such as {example}. Read: {', '.join(column.name for column in columns)}."
            )
        if fields.count(field) > 1:
            raise InputError(
                f"There are {fields.count(field)} {_LABELS[field]} columns. Leave one of them in."
            )


def _point(number: int, cells: list[str], columns: list[Column]) -> Point:
    if len(cells) != len(columns):
        raise InputError(
            f"Row {number} has {len(cells)} entries; the heading has {len(columns)}. "
            "Write one entry in each column, a dash where there is none."
        )
    found: dict[str, Any] = {}
    for cell, column in zip(cells, columns, strict=True):
        if column.field is None or cell in {"", "-", "–", "—"}:
            continue
        found[column.field] = _value(number, cell, column)
    for field in ("flow", "head"):
        if field not in found:
            raise InputError(
                f"Row {number} has no {_LABELS[field]}. Fill it in or leave the row out."
            )
    return Point(**found, row=number)


def _value(number: int, cell: str, column: Column) -> float:
    assert column.quantity and column.unit, "only columns with a unit have values"
    try:
        value = parse(cell, column.quantity, column.unit.symbol).value
    except InputError as error:
        raise InputError(f"Row {number}, “{column.name}”: {error.message}") from error
    if value < 0:
        raise InputError(f"Row {number}, “{column.name}”: {cell} is below zero. Check the row.")
    if column.quantity == "pressure":
        return value / (POINT_DENSITY * GRAVITY)
    if column.field == "efficiency" and value >= 1:
        raise InputError(
            f"Row {number}, “{column.name}”: an efficiency of {cell} % cannot be. Write it under "
            "100."
        )
    return value


def _number(cell: str) -> float | None:
    try:
        return float(cell.replace(",", ".").replace("−", "-"))
    except ValueError:
        return None
