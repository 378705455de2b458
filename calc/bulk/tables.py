"""CSV and JSON lines as items, and rows of cells as the lines of a CSV that is safe to open.

A spreadsheet works out a cell that begins with "=" and its like as a formula, whoever wrote it.
"""

from __future__ import annotations

import csv
import json
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import chain
from typing import Any

from calc.errors import InputError

SEPARATORS = ",;\t"
LONGEST = 2**31 - 1  # characters of a cell, as the csv module counts; what reads a cell says less
_FORMULA = re.compile(r"[=+\-@\t\r\n＝＋－＠]|\s+[=+\-@]")
_NUMBER = re.compile(r"[+-]?\d+(?:[.,]\d+)?(?:[eE][+-]?\d+)?")
_MARK = "\ufeff"  # byte order mark


@dataclass(frozen=True)
class Item:
    """One thing to work out.

    number: of the items, from 1; line: where it begins in its file, from 1; given: its cells by
    name, or what JSON held; error: why it cannot be read, else "".
    """

    number: int
    line: int
    given: Any = None
    error: str = ""


@dataclass(frozen=True)
class Csv:
    """A CSV that is being read.  marked: whether it began with a byte order mark."""

    names: tuple[str, ...]
    separator: str
    marked: bool
    items: Iterator[Item]


# Reading --------------------------------------------------------------------------------------


def csv_of(lines: Iterable[str]) -> Csv:
    """A CSV with a header, its cells parted by commas, semicolons or tabs.

    lines: with their ends.  Rows with nothing in them are passed over.  Raises InputError where
    there is no header, or a name stands in it twice.
    """
    csv.field_size_limit(LONGEST)
    rest = iter(lines)
    first = next((line for line in rest if line.strip(_MARK + " \t\r\n,;")), "")
    marked = first.startswith(_MARK)
    first = first.removeprefix(_MARK)
    separator = _separator(first)
    reader = csv.reader(chain([first], rest), delimiter=separator, strict=True)
    try:
        names = tuple(unguarded(name).strip() for name in next(reader, []))
    except csv.Error as error:
        raise InputError(f"The header cannot be read: {_quotes(error)}") from error
    if not any(names):
        raise InputError("There is no header: the first line must name the columns")
    twice = sorted({name for name in names if name and names.count(name) > 1})
    if twice:
        raise InputError(f"The header has “{twice[0]}” twice. Give each column its own name")
    return Csv(names, separator, marked, _csv_items(reader, names))


def _separator(line: str) -> str:
    bare = re.sub(r'"[^"]*"', "", line)
    return max(SEPARATORS, key=lambda sign: (bare.count(sign), -SEPARATORS.index(sign)))


def _csv_items(reader: Any, names: tuple[str, ...]) -> Iterator[Item]:
    number = 0
    while True:
        line = reader.line_num + 1
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error as error:
            number += 1
            yield Item(number, line, {}, _quotes(error))
            continue
        if not any(cell.strip() for cell in cells):
            continue
        number += 1
        given = {name: unguarded(cell) for name, cell in zip(names, cells, strict=False) if name}
        given |= {name: "" for name in names[len(cells) :] if name}
        more = [cell for cell in cells[len(names) :] if cell.strip()]
        wrong = f"{len(cells)} cells, where the header names {len(names)}" if more else ""
        yield Item(number, line, given, wrong)


def _quotes(error: csv.Error) -> str:
    if "end of data" in str(error):
        return "A quotation mark is opened and never closed"
    return "Quotation marks must be around a whole cell, and doubled inside it"


def json_items(lines: Iterable[str]) -> Iterator[Item]:
    """JSON lines: one value a line; empty lines are passed over.  Raises nothing."""
    number = 0
    for at, line in enumerate(lines, 1):
        text = line.removeprefix(_MARK) if at == 1 else line
        if not text.strip():
            continue
        number += 1
        try:
            yield Item(number, at, json.loads(text, parse_constant=_no_constant))
        except json.JSONDecodeError as error:
            yield Item(number, at, None, f"This is not JSON: {error.msg}, column {error.colno}")
        except (ValueError, RecursionError) as error:
            yield Item(number, at, None, f"This is not JSON: {error}")


def _no_constant(word: str) -> float:
    raise ValueError(f"{word} is not a number there")


# Writing --------------------------------------------------------------------------------------


def guarded(text: str) -> str:
    """A cell that no spreadsheet takes for a formula: an apostrophe before what begins like one.

    >>> guarded("=2+2"), guarded("-3.5"), guarded("-3.5 m"), guarded("12 m")
    ("'=2+2", '-3.5', "'-3.5 m", '12 m')
    """
    return f"'{text}" if _FORMULA.match(text) and not _NUMBER.fullmatch(text) else text


def unguarded(text: str) -> str:
    """A cell as it was before it was ``guarded``."""
    return text[1:] if text.startswith("'") and _FORMULA.match(text[1:]) else text


def csv_line(cells: Iterable[str], separator: str = ",") -> str:
    """A row of a CSV, guarded; what holds any sign that parts cells somewhere is quoted.

    >>> print(csv_line(["a", "b;c", "-2", "-2 m"]).rstrip())
    a,"b;c",-2,'-2 m
    """
    return separator.join(_quoted(guarded(cell)) for cell in cells) + "\r\n"


def _quoted(cell: str) -> str:
    plain = not any(sign in cell for sign in '",;\t\r\n')
    return cell if plain else '"' + cell.replace('"', '""') + '"'


def json_line(record: Any) -> str:
    """A value as one line of JSON."""
    return json.dumps(record, ensure_ascii=False) + "\n"
