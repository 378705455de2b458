"""Fields of a sheet, and the one place where what a reader typed becomes numbers.

A sheet is a ``Sheet``: a key, a title, fields and ``solve(values, reader) ->
Answer``.  ``work(sheet, state)`` reads every field, catches every
``InputError``, and returns an ``Outcome``.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError, RangeError
from calc.page.answer import Answer
from calc.page.entries import beyond, enter, name, read
from calc.page.fields import Number, Rows, Text
from calc.page.given import EXAMPLE, Assumed, Given, assumed, given, row_words, written
from calc.page.state import (
    State,
    filled_rows,
    fitted,
    hidden_keys,
    idle_keys,
    replaced_keys,
    typed_over,
)
from calc.page.terms import ours
from calc.reading import isolated
from calc.units import QUANTITIES, Reader

if TYPE_CHECKING:
    from collections.abc import Mapping
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
class Values(_ByKey):
    """SI numbers, counts and choices by attribute; ``typed`` keeps the ``Parsed`` numbers.

    standing: field key -> whose its text is, where form or link say it.
    """

    typed: dict[str, Parsed]
    standing: Mapping[str, str] = field(default_factory=dict)


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
    given: tuple[Given, ...] = ()


def work(sheet: Sheet, state: State, first: bool = False) -> Outcome:
    """Read ``state``, solve the sheet and return an ``Outcome``; never raises on input.

    first: without what the sheet's answer works out ``later``; ``rest`` adds it.
    """
    state, typed = fitted(sheet, state), state
    reader, hidden = Reader(state.system), hidden_keys(sheet, state)
    gone, idle = replaced_keys(sheet, state, hidden), idle_keys(sheet, state, hidden)
    state = typed_over(sheet, state, hidden)
    values, notes, errors = _values(sheet, state, hidden)
    notes |= _fits(sheet, typed, state)
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
        idle, given(shown, state),
    )  # fmt: skip


def read_values(sheet: Sheet, state: State) -> Values | None:
    """What ``solve`` would be given with a form that is not shown; None where it has errors."""
    state = fitted(sheet, state)
    values, _, errors = _values(sheet, state, hidden_keys(sheet, state))
    return None if errors else values


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
    found = Values({}, {}, state.standing)
    notes: dict[str, str] = {}
    errors: dict[str, str] = {}
    for entry in sheet.fields:
        if entry.key in hidden:
            found.numbers[entry.key] = None
            continue
        if state.standing.get(entry.key) == "asked":
            errors[entry.key] = f"{enter(entry)}: {ASKED}"
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


def _fits(sheet: Sheet, typed: State, state: State) -> dict[str, str]:
    """What is said beside a field whose example another text stands in for."""
    return {
        entry.key: f"Worked with {written(entry, state.text(entry), state)}: "
        f"{state.reasons.get(entry.key, EXAMPLE)}"
        for entry in sheet.fields
        if state is not typed and state.text(entry) != typed.text(entry)
    }


ASKED = "the link can be read in two ways here"


def _read_rows(
    entry: Rows, state: State, errors: dict[str, str], notes: dict[str, str]
) -> tuple[Row, ...]:
    text = state.text(entry)
    rows = filled_rows(entry, text, state.system)
    if not entry.least <= len(rows) <= entry.most:
        short = len(rows) < entry.least
        raise InputError(
            f"Add {'an' if entry.row[0] in 'aeiou' else 'a'} {entry.row}"
            if short else f"{name(entry)} must be {entry.most} rows or fewer"
        )  # fmt: skip
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
    units = tuple(state.units.get(f"{entry.key}.{column.key}") for column in entry.columns)
    numbers, said, faults = _cells_of(entry, row, state.system, units)
    if len(row) > len(entry.columns):
        errors[place] = (
            f"{row_words(entry, index, row)}: {len(row)} cells are given; "
            f"there are {len(entry.columns)} columns"
        )
    notes |= {f"{place}.{key}": note for key, note in said.items()}
    for key, fault in faults.items():
        errors[f"{place}.{key}"] = f"{row_words(entry, index, row)}: {fault}"
    return Row(dict(numbers), place)


@lru_cache(256)  # while one number is typed all other rows stay
def _cells_of(
    entry: Rows, row: tuple[str, ...], system: str, units: tuple[str | None, ...]
) -> tuple[dict[str, Any], dict[str, str], dict[str, str]]:
    """(what a row's cells hold, notes on how they were read, faults) by column."""
    numbers: dict[str, Any] = {}
    notes: dict[str, str] = {}
    faults: dict[str, str] = {}
    for column, text, unit in zip(entry.columns, row, units, strict=False):
        try:
            numbers[column.key], parsed = read(column, text, system, unit)
            if parsed is not None and parsed.note:
                notes[column.key] = parsed.note
        except InputError as error:
            faults[column.key] = error.message
            numbers[column.key] = _stand_in(column, text, system)
    return numbers, notes, faults


def _stand_in(column: Cell, text: str, system: str) -> Any:
    """What ``Sheet.check`` meets for a cell that could not be read: a number that equals none."""
    if isinstance(column, Text):
        return isolated(text)
    if isinstance(column, Number):
        return None if column.optional else math.nan
    return read(column, column.default(system), system)[0]


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
    message = error.message.removesuffix(".")
    if isinstance(error, RangeError):
        message = _beyond(error, sheet, key, reader, state)
    if "." not in key:
        return message
    table, index = key.split(".")[:2]
    entry = _table(sheet, table)
    rows = filled_rows(entry, state.texts.get(table, entry.default(state.system)), state.system)
    return f"{row_words(entry, int(index), rows[int(index)])}: {message}"


def cells(sheet: Sheet, state: State, errors: dict[str, str]) -> dict[str, str]:
    """The errors that stand in a table, without the row's name, to stand in the row itself."""
    found = {}
    for place, sentence in errors.items():
        table, _, rest = place.partition(".")
        if rest:
            entry, index = _table(sheet, table), int(rest.partition(".")[0])
            row = filled_rows(entry, state.text(entry), state.system)[index]
            found[place] = sentence.removeprefix(f"{row_words(entry, index, row)}: ")
    return found


def _beyond(error: RangeError, sheet: Sheet, key: str, reader: Reader, state: State) -> str:
    """A range of physics in the words of its field; of another quantity than it, in its own too."""
    table, _, rest = key.partition(".")
    column = rest.partition(".")[2]
    entry: Field | None = None
    if table:
        entry = _table(sheet, table).column(column) if column else sheet.field(table)
    quantity = getattr(entry, "quantity", "")
    label = name(entry) if entry else ""
    unit = reader.unit(error.quantity)
    if quantity == error.quantity:
        menu = state.units.get(f"{table}.{column}" if column else table)
        unit = (QUANTITIES[quantity].unit(menu) if menu else None) or unit
    else:  # a choice stands for the number, or it is worked out from several
        own = ours(_UNIT.sub("", error.name or "a number").replace("_", " "))
        own = own if isinstance(entry, Number) else f"its {QUANTITIES[error.quantity].name}"
        label = f"{label}: {own}" if label else f"{own[:1].upper()}{own[1:]}"
    bound = error.low if error.value < error.low else error.high
    said = beyond(label, error.value, bound, error.quantity, unit)
    return f"{said}. {error.remedy}".removesuffix(".") if error.remedy else said


def _table(sheet: Sheet, key: str) -> Rows:
    """The table of this key: only a table's places have dots in them."""
    entry = sheet.field(key)
    if not isinstance(entry, Rows):
        raise KeyError(key)
    return entry
