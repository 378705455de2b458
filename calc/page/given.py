"""What an answer stands on: what its reader gave, and what was taken without being given."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.fields import UNKNOWN, Choice, Number, Rows, Text
from calc.page.row_text import decode
from calc.page.state import State, filled_rows
from calc.reading import isolated, split
from calc.units import Reader, parse

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.page.fields import Field


@dataclass(frozen=True)
class Given:
    """A value that the reader gave, as text: a table by how many rows it has."""

    key: str
    label: str
    shown: str


@dataclass(frozen=True)
class Assumed:
    """A value the answer used that its reader did not give: shown as text, with the reason.

    ``shown`` is "" where nothing was assumed and the check that needs it was not made.
    """

    key: str
    label: str
    shown: str
    reason: str


EXAMPLE = "from the example"  # reason of what nobody gave
EMPTY = "as if left empty"  # reason where one that may be empty is not known
STANDINGS = {
    "given": "",
    "assumed": "assumed by whoever made the link",
    "unknown": "not known",
    "example": EXAMPLE,
}


def given(entries: Iterable[Field], state: State) -> tuple[Given, ...]:
    """``Given`` of every field shown whose value its reader gave, in their order."""
    found = []
    for entry in entries:
        text = state.text(entry)
        if text.strip() and state.standing_of(entry) == "given":
            found.append(Given(entry.key, entry.label, _shown(entry, text, state)))
    return tuple(one for one in found if one.shown)


def _shown(entry: Field, text: str, state: State) -> str:
    """A field in a word or two: "22 m", "6 outlets"."""
    if isinstance(entry, Rows):
        count = len(decode(text))
        return f"{count} {entry.row}{'' if count == 1 else 's'}" if count else ""
    if isinstance(entry, Text):
        count = len(text.strip().splitlines())
        return f"{count} line{'' if count == 1 else 's'}"
    if isinstance(entry, Number):
        number, unit = split(text.strip(), entry.quantity)
        return f"{number} {unit.symbol}" if unit else written(entry, text, state)
    return written(entry, text, state)


def assumed(entries: Iterable[Field], state: State) -> tuple[Assumed, ...]:
    """``Assumed`` of every field shown whose value its reader did not give, in their order."""
    found: list[Assumed] = []
    for entry in entries:
        standing = state.standing_of(entry)
        if isinstance(entry, Rows):
            found += _assumed_rows(entry, standing, state)
            continue
        if standing in {"given", "asked"} or isinstance(entry, Text):
            continue
        text, reason = state.text(entry), STANDINGS[standing]
        if standing == "assumed":
            reason = state.reasons.get(entry.key) or reason
        if standing == "unknown":
            text = entry.unknown.text(state.system) if entry.unknown else ""
            reason = (entry.unknown.reason if entry.unknown else EMPTY) or reason
        elif not text.strip():
            continue
        found.append(Assumed(entry.key, entry.label, written(entry, text, state), reason))
    return tuple(found)


def _assumed_rows(entry: Rows, standing: str, state: State) -> Iterator[Assumed]:
    """``Assumed`` of a table that its reader did not give, or of the cells left unknown in it."""
    shown = _shown(entry, state.text(entry), state)
    if standing in {"example", "assumed"} and shown:
        reason = state.reasons.get(entry.key) if standing == "assumed" else ""
        yield Assumed(entry.key, entry.label, shown, reason or STANDINGS[standing])
    if UNKNOWN in state.text(entry) or any(
        c.default(state.system) == UNKNOWN for c in entry.columns
    ):
        yield from _assumed_cells(entry, state.text(entry), state.system)


@lru_cache(64)  # while one number is typed the tables stay
def _assumed_cells(entry: Rows, texts: str, system: str) -> tuple[Assumed, ...]:
    """``Assumed`` of every cell of a table whose reader answered "I don't know"."""
    usual, found = State(system), []
    for index, row in enumerate(filled_rows(entry, texts, system)):
        for column, text in zip(entry.columns, row, strict=False):
            unknown = None if isinstance(column, Text) else column.unknown
            if text.strip() != UNKNOWN or unknown is None:
                continue
            key, label = f"{entry.key}.{index}.{column.key}", column.label.lower()
            shown = written(column, unknown.text(system), usual)
            reason = unknown.reason or STANDINGS["unknown"]
            found.append(Assumed(key, f"{row_words(entry, index, row)}, {label}", shown, reason))
    return tuple(found)


def written(entry: Field, text: str, state: State) -> str:
    """A field's text as a person reads it: a choice by its label, a number with its unit."""
    text = text.strip()
    if isinstance(entry, Text):
        return isolated(text)
    if isinstance(entry, Choice):
        return dict(entry.options).get(text, text)
    if not isinstance(entry, Number) or not text:
        return text
    symbol = state.units.get(entry.key) or Reader(state.system).unit(entry.quantity).symbol
    try:
        parsed = parse(text, entry.quantity, symbol)
    except InputError:
        return text
    return text if parsed.own else f"{text} {parsed.unit.symbol}".strip()


def row_words(entry: Rows, index: int, row: tuple[str, ...]) -> str:
    """What a row is called in a sentence: "Row 3 (Cabin 2)"."""
    name = isolated(row[0]).strip() if isinstance(entry.columns[0], Text) and row else ""
    return f"Row {index + 1} ({name})" if name else f"Row {index + 1}"
