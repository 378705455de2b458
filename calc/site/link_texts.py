"""One field's text in a link, and back: a number with the unit it was typed in, rows of cells.

A unit that cannot be told from the text stands after "!": "12 furlongs!ft".
"""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows
from calc.quantities import QUANTITIES, Unit
from calc.reading import parse, split

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from calc.page.fields import Cell, Field


Texts = dict[str, str]  # by key of a field or column
_PLAIN = str.maketrans({"³": "3", "²": "2", "°": "", "·": "", " ": ""})


@lru_cache(maxsize=256)
def plain_unit(quantity: str, symbol: str) -> str:
    """A unit as addresses spell it well: "m³/h" is "m3/h", "°C" is "C"."""
    kind = QUANTITIES[quantity]
    unit = kind.unit(symbol)
    if unit is None or not symbol:
        return ""
    words = (symbol.translate(_PLAIN), *unit.aliases, symbol)
    return next(word for word in words if word and kind.unit(word) is unit)


def usual(entry: Number, system: str) -> Unit:
    """The unit that a number without one has in ``system``."""
    return QUANTITIES[entry.quantity].default(system)


def number_out(entry: Number, text: str, symbol: str | None, system: str) -> str:
    """The link's text of a number field: ``text`` as typed, ``symbol`` its menu's unit."""
    return _number_out(entry.quantity, text.strip(), symbol, system)


@lru_cache(maxsize=1024)  # while one number is typed all others and the defaults stay
def _number_out(quantity: str, text: str, symbol: str | None, system: str) -> str:
    kind = QUANTITIES[quantity]
    bare, unit = split(text, quantity)
    if unit is None:
        if _has_unit(text, quantity):
            return text  # a unit outside the menu, or feet and inches
        unit = (kind.unit(symbol) if symbol else None) or kind.default(system)
    if not unit.symbol or bare in {"", UNKNOWN} and unit is kind.default(system):
        return bare
    plain = plain_unit(quantity, unit.symbol)
    short = bare + plain
    return short if split(short, quantity) == (bare, unit) else f"{bare}!{plain}"


@lru_cache(maxsize=1024)
def _has_unit(text: str, quantity: str) -> bool:
    try:
        return parse(text, quantity).own
    except InputError:
        return False


def number_in(entry: Number, text: str, system: str) -> tuple[str, str]:
    """(text, symbol of its unit) of a number's text in a link."""
    kind = QUANTITIES[entry.quantity]
    bare, mark, word = text.rpartition("!")
    unit = kind.unit(word) if mark and word else None
    if unit is None:
        bare, unit = split(text, entry.quantity)
    unit = unit or kind.default(system)
    return bare, unit.symbol


def text_out(
    entry: Field, text: str, units: Mapping[str, str], system: str, columns: Mapping[str, str]
) -> str:
    """The link's text of any field; columns: frozen defaults of a table's columns, by key."""
    if isinstance(entry, Rows):
        return rows_out(entry, text, units, system, columns)
    if isinstance(entry, Number):
        return number_out(entry, text, units.get(entry.key), system)
    return text.strip() if isinstance(entry, Choice | Count) else text


def rows_out(
    entry: Rows, text: str, units: Mapping[str, str], system: str, columns: Mapping[str, str]
) -> str:
    """A table's rows, without what is only its column's default at the end of a row."""
    menus = tuple(units.get(f"{entry.key}.{column.key}") for column in entry.columns)
    usual_texts = tuple(columns.get(column.key) for column in entry.columns)
    return _rows_out(entry, text, menus, system, usual_texts)


@lru_cache(64)  # while one number is typed the tables stay
def _rows_out(
    entry: Rows,
    text: str,
    menus: tuple[str | None, ...],
    system: str,
    usual_texts: tuple[str | None, ...],
) -> str:
    ends = [
        None if default is None else _cell_out(column, default, None, system)
        for column, default in zip(entry.columns, usual_texts, strict=True)
    ]
    rows = []
    for row in row_text.decode(text):
        cells = [
            _cell_out(column, cell, menu, system)
            for column, cell, menu in zip(entry.columns, row, menus, strict=False)
        ]
        cells += row[len(cells) :]  # more than there are columns: said where it is read
        while 1 < len(cells) <= len(ends) and cells[-1] == ends[len(cells) - 1]:
            cells.pop()
        rows.append(cells if cells != [""] else ["", ends[1] or ""])
    return row_text.encode(rows)


def _cell_out(column: Cell, text: str, menu: str | None, system: str) -> str:
    if not isinstance(column, Number) or text.strip() in {"", UNKNOWN}:
        return text.strip()
    return number_out(column, text, menu, system)


def rows_in(
    entry: Rows,
    rows: list[list[str]],
    system: str,
    columns: Mapping[str, str],
    cell_in: Callable[[Number, str], tuple[str, str | None]],
) -> tuple[str, Texts]:
    """(text, {column's place: unit}) of a link's rows, each filled up from frozen defaults.

    A column stands in the unit of its first cell that has one; ``cell_in(column, text)`` gives
    (text, symbol or None).
    """
    full = [
        row + [columns[c.key] for c in entry.columns[len(row) :] if c.key in columns]
        for row in rows
    ]
    units = {}
    for at, column in enumerate(entry.columns):
        if not isinstance(column, Number):
            continue
        read = [cell_in(column, row[at]) if at < len(row) else None for row in full]
        menu = next((one[1] for one in read if one and one[1]), usual(column, system).symbol)
        units[f"{entry.key}.{column.key}"] = menu
        for row, one in zip(full, read, strict=True):
            if one:
                row[at] = one[0] if one[1] in {None, menu} or not one[0] else f"{one[0]} {one[1]}"
    return row_text.encode(full), units


def cell_in(column: Number, text: str) -> tuple[str, str | None]:
    """(text, symbol of its unit or None) of a cell of a link's row."""
    kind = QUANTITIES[column.quantity]
    bare, mark, word = text.rpartition("!")
    unit = kind.unit(word) if mark and word else None
    if unit is None:
        bare, unit = split(text, column.quantity)
    return (bare, unit.symbol) if unit else (text, None)
