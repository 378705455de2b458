"""Fields of a sheet, and the one place where what a reader typed becomes numbers.

A sheet is a ``Sheet``: a key, a title, fields and ``solve(values, reader) ->
Answer``.  ``work(sheet, state)`` reads every field, catches every
``InputError``, and returns an ``Outcome``.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.errors import InputError, RangeError
from calc.page.answer import Answer
from calc.page.entries import read
from calc.page.fields import UNKNOWN, Choice, Number, Rows, Text
from calc.page.state import (
    State,
    filled_rows,
    hidden_keys,
    idle_keys,
    replaced_keys,
    typed_over,
)
from calc.reading import seen
from calc.units import Reader, parse

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from typing import Any

    from calc.page.fields import Cell, Field, Sheet
    from calc.reading import Parsed


_UNIT = re.compile(r"_(?:m[23]?s?|s|h|k|pa|w|kg_m[23]|m[23]?_day)$")  # of an argument's name


@dataclass(frozen=True)
class _ByKey:
    """What was read, by attribute."""

    numbers: dict[str, Any]

    def __getattr__(self, key: str) -> Any:
        try:
            return self.numbers[key]
        except KeyError:
            raise AttributeError(key) from None


@dataclass(frozen=True)
class Row(_ByKey):
    """One row: SI numbers, counts, choices and texts by attribute.

    ``place`` ("taps.2") is the name to give an ``InputError`` about this row, ``cell(key)`` that
    of one of its cells.
    """

    place: str

    def cell(self, key: str) -> str:
        return f"{self.place}.{key}"


@dataclass(frozen=True)
class Assumed:
    """A value the answer used that its reader did not give: shown as text, with the reason.

    ``shown`` is "" where nothing was assumed and the check that needs it was not made.
    """

    key: str
    label: str
    shown: str
    reason: str


@dataclass(frozen=True)
class Values(_ByKey):
    """SI numbers, counts and choices by attribute; ``typed`` keeps the ``Parsed`` numbers."""

    typed: dict[str, Parsed]


@dataclass(frozen=True)
class Outcome:
    """``answer`` is None where ``errors`` (key -> sentence) is not empty.

    Keys are those of fields, "" for the whole sheet, "taps.2" for the third row of a table and
    "taps.2.flow" for its cell.
    """

    answer: Answer | None
    errors: dict[str, str]
    notes: dict[str, str]
    hidden: frozenset[str]
    reader: Reader
    assumed: tuple[Assumed, ...] = ()
    example: bool = False  # nothing was given: the whole answer is the example's
    idle: frozenset[str] = frozenset()  # keys of fields that rows replace


def work(sheet: Sheet, state: State, first: bool = False) -> Outcome:
    """Read ``state``, solve the sheet and return an ``Outcome``; never raises on input.

    first: without what the sheet's answer works out ``later``; ``rest`` adds it.
    """
    reader, hidden = Reader(state.system), hidden_keys(sheet, state)
    gone, idle = replaced_keys(sheet, state, hidden), idle_keys(sheet, state, hidden)
    state = typed_over(sheet, state, hidden)
    values, notes, errors = _values(sheet, state, hidden)
    answer = None
    try:
        if not errors:
            answer = sheet.solve(values, reader)
            answer = answer if first else whole(answer)
        elif sheet.check is not None:
            sheet.check(values)
    except InputError as error:
        for one in getattr(error, "errors", (error,)):
            name = sheet.arguments.get(one.name or "", one.name)
            key = _known(name or "", sheet, hidden, state)
            errors.setdefault(key, _sentence(one, sheet, key, reader, state))
    shown = [entry for entry in sheet.fields if entry.key not in hidden | gone]
    example = all(state.standing_of(entry) == "example" for entry in shown)
    return Outcome(
        answer, errors, notes, hidden, reader, () if example else assumed(shown, state), example,
        idle,
    )  # fmt: skip


def whole(answer: Answer) -> Answer:
    """The answer with what it works out later; a sheet of a test may answer with anything."""
    return answer.whole() if isinstance(answer, Answer) else answer


def rest(outcome: Outcome) -> Outcome:
    """An ``Outcome`` of ``work(..., first=True)`` with what comes later."""
    return outcome if outcome.answer is None else replace(outcome, answer=whole(outcome.answer))


def _values(
    sheet: Sheet, state: State, hidden: frozenset[str]
) -> tuple[Values, dict[str, str], dict[str, str]]:
    """(what the fields hold, notes on how they were read, errors), the last two by key."""
    found = Values({}, {})
    notes: dict[str, str] = {}
    errors: dict[str, str] = {}
    for entry in sheet.fields:
        if entry.key in hidden:
            found.numbers[entry.key] = None
            continue
        if state.standing.get(entry.key) == "asked":
            errors[entry.key] = ASKED
            continue
        try:
            if isinstance(entry, Rows):
                found.numbers[entry.key] = _read_rows(entry, state, errors, notes)
            else:
                value, parsed = read(
                    entry, state.text(entry), state.system, state.units.get(entry.key)
                )
                found.numbers[entry.key] = value
                if parsed is not None:
                    found.typed[entry.key], notes[entry.key] = parsed, parsed.note
        except InputError as error:
            errors[entry.key] = error.message
    return found, notes, errors


EXAMPLE = "from the example"  # reason of what nobody gave
ASKED = "The link can be read in two ways here. Enter what is meant."
STANDINGS = {
    "given": "",
    "assumed": "assumed by whoever made the link",
    "unknown": "not known",
    "example": EXAMPLE,
}


def assumed(entries: Iterable[Field], state: State) -> tuple[Assumed, ...]:
    """``Assumed`` of every field shown whose value its reader did not give, in their order."""
    found: list[Assumed] = []
    for entry in entries:
        if isinstance(entry, Rows):
            found += _assumed_cells(entry, state)
            continue
        standing = state.standing_of(entry)
        if standing in {"given", "asked"} or isinstance(entry, Text):
            continue
        text, reason = state.text(entry), STANDINGS[standing]
        if standing == "assumed":
            reason = state.reasons.get(entry.key) or reason
        if standing == "unknown":
            text = entry.unknown.text(state.system) if entry.unknown else ""
            reason = (entry.unknown.reason if entry.unknown else "") or reason
        elif not text.strip():
            continue
        found.append(Assumed(entry.key, entry.label, written(entry, text, state), reason))
    return tuple(found)


def _assumed_cells(entry: Rows, state: State) -> Iterator[Assumed]:
    """``Assumed`` of every cell of a table whose reader answered "I don't know"."""
    for index, row in enumerate(filled_rows(entry, state.text(entry), state.system)):
        for column, text in zip(entry.columns, row, strict=False):
            unknown = None if isinstance(column, Text) else column.unknown
            if text.strip() != UNKNOWN or unknown is None:
                continue
            key, label = f"{entry.key}.{index}.{column.key}", column.label.lower()
            shown = written(column, unknown.text(state.system), state)
            reason = unknown.reason or STANDINGS["unknown"]
            yield Assumed(key, f"{row_words(entry, index, row)}, {label}", shown, reason)


def written(entry: Field, text: str, state: State) -> str:
    """A field's text as a person reads it: a choice by its label, a number with its unit."""
    text = text.strip()
    if isinstance(entry, Text):
        return seen(text)
    if isinstance(entry, Choice):
        return dict(entry.options).get(text, text)
    if not isinstance(entry, Number) or not text:
        return text
    symbol = state.units.get(entry.key) or Reader(state.system).unit(entry.quantity).symbol
    try:
        parsed = parse(text, entry.quantity, symbol)
    except InputError:
        return text
    bare = text[-1] in "0123456789.,¼½¾⅛⅜⅝⅞"
    return f"{text} {parsed.unit.symbol}".strip() if bare else text


def _read_rows(
    entry: Rows, state: State, errors: dict[str, str], notes: dict[str, str]
) -> tuple[Row, ...]:
    text = state.text(entry)
    rows = filled_rows(entry, text, state.system)
    if not entry.least <= len(rows) <= entry.most:
        counted = f"There {'is 1 row' if len(rows) == 1 else f'are {len(rows)} rows'} here."
        raise InputError(f"{counted} Allowed: {entry.least} to {entry.most}.")
    return tuple(
        _read_row(entry, index, row, state, errors, notes) for index, row in enumerate(rows)
    )


def _read_row(
    entry: Rows,
    index: int,
    row: tuple[str, ...],
    state: State,
    errors: dict[str, str],
    notes: dict[str, str],
) -> Row:
    place = f"{entry.key}.{index}"
    numbers: dict[str, Any] = {}
    if len(row) > len(entry.columns):
        errors[place] = (
            f"{row_words(entry, index, row)}: {len(row)} cells are given; "
            f"there are {len(entry.columns)} columns."
        )
    for column, text in zip(entry.columns, row, strict=False):
        try:
            unit = state.units.get(f"{entry.key}.{column.key}")
            numbers[column.key], parsed = read(column, text, state.system, unit)
            if parsed is not None and parsed.note:
                notes[f"{place}.{column.key}"] = parsed.note
        except InputError as error:
            where = f"{row_words(entry, index, row)}, {column.label.lower()}"
            errors[f"{place}.{column.key}"] = f"{where}: {error.message}"
            numbers[column.key] = _stand_in(column, text, state.system)
    return Row(numbers, place)


def _stand_in(column: Cell, text: str, system: str) -> Any:
    """What ``Sheet.check`` meets for a cell that could not be read: a number that equals none."""
    if isinstance(column, Text):
        return seen(text)
    if isinstance(column, Number):
        return None if column.optional else math.nan
    return read(column, column.default(system), system)[0]


def row_words(entry: Rows, index: int, row: tuple[str, ...]) -> str:
    """What a row is called in a sentence: "Row 3 (Cabin 2)"."""
    name = seen(row[0]).strip() if isinstance(entry.columns[0], Text) and row else ""
    return f"Row {index + 1} ({name})" if name else f"Row {index + 1}"


def _known(name: str, sheet: Sheet, hidden: frozenset[str], state: State) -> str:
    """The key of the field, row or cell that an error names; "" where there is none."""
    key, _, rest = name.partition(".")
    shown = {entry.key: entry for entry in sheet.fields if entry.key not in hidden}
    if key not in shown:
        return ""
    entry = shown[key]
    if not rest or not isinstance(entry, Rows):
        return key
    index, _, column = rest.partition(".")
    count = len(filled_rows(entry, state.texts.get(key, entry.default(state.system)), state.system))
    if not index.isdigit() or int(index) >= count:
        return key
    return name if column in {"", *(c.key for c in entry.columns)} else f"{key}.{index}"


def _sentence(error: InputError, sheet: Sheet, key: str, reader: Reader, state: State) -> str:
    message, label = error.message, _label(error, sheet, key)
    if isinstance(error, RangeError):
        low, high, value = (
            reader.show(bound, error.quantity) for bound in (error.low, error.high, error.value)
        )
        message = f"{label}: {value} is out of range; allowed: {low} to {high}."
        message = f"{message} {error.remedy}".strip()
    if "." not in key:
        return message
    name, index = key.split(".")[:2]
    entry = _table(sheet, name)
    rows = filled_rows(entry, state.texts.get(name, entry.default(state.system)), state.system)
    return f"{row_words(entry, int(index), rows[int(index)])}: {message}"


def _label(error: InputError, sheet: Sheet, key: str) -> str:
    name, _, rest = key.partition(".")
    if not name:
        return _UNIT.sub("", error.name or "a number").replace("_", " ")
    column = rest.partition(".")[2]
    return _table(sheet, name).column(column).label if column else sheet.field(name).label


def _table(sheet: Sheet, key: str) -> Rows:
    """The table of this key: only a table's places have dots in them."""
    entry = sheet.field(key)
    if not isinstance(entry, Rows):
        raise KeyError(key)
    return entry
