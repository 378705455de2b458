"""What a form holds, and which of its fields count: what the reader typed, before it is read."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.page import row_text
from calc.page.fields import UNKNOWN, Number, Rows
from calc.reading import split
from calc.units import QUANTITIES, Reader

if TYPE_CHECKING:
    from collections.abc import Mapping

    from calc.page.fields import Cell, Field, Sheet
    from calc.quantities import Unit


@dataclass(frozen=True)
class State:
    """What the reader typed: texts by field key (missing: the default).

    units: field key -> unit symbol from its menu, "runs.long" for a table's column; standing:
    field key -> ``STANDINGS`` for a text that its reader did not type, "asked" where a link can
    be read in two ways; without an entry, a text that is the default's is the example's, any
    other is given.  reasons: field key -> why it was assumed, in a few words, where that is known.
    kept: keys of the fields that stand as a site fills them.
    """

    system: str = "metric"
    texts: Mapping[str, str] = field(default_factory=dict)
    units: Mapping[str, str] = field(default_factory=dict)
    standing: Mapping[str, str] = field(default_factory=dict)
    reasons: Mapping[str, str] = field(default_factory=dict)
    kept: frozenset[str] = frozenset()
    _defaults: dict[str, bool] = field(default_factory=dict, init=False, compare=False, repr=False)

    def text(self, entry: Field) -> str:
        """The text of a field, its default where nothing is typed."""
        return self.texts.get(entry.key, entry.default(self.system))

    def standing_of(self, entry: Field) -> str:
        """Where the text of a field comes from: one of ``STANDINGS``."""
        if self.text(entry).strip() == UNKNOWN:
            return "unknown"
        if entry.key in self.standing:
            return self.standing[entry.key]
        found = self._defaults.get(entry.key)  # asked for several times an answer
        if found is None:
            found = self._defaults[entry.key] = self._is_default(entry)
        return "example" if found else "given"

    def is_typed(self, entry: Field) -> bool:
        """Whether the reader gave this text: it is neither the example's nor a site's."""
        return entry.key not in self.kept and self.standing_of(entry) == "given"

    def _is_default(self, entry: Field) -> bool:
        text, default = self.text(entry), entry.default(self.system)
        if isinstance(entry, Rows):
            if text == default and self._in_usual_units(entry):
                return True
            return self._rows(entry, text) == State(self.system)._rows(entry, default)
        if not isinstance(entry, Number):
            return text == default
        usual = Reader(self.system).unit(entry.quantity)
        menu = QUANTITIES[entry.quantity].unit(self.units.get(entry.key, usual.symbol))
        return _parted(text, entry, menu) == _parted(default, entry, usual)

    def _in_usual_units(self, entry: Rows) -> bool:
        usual = {
            f"{entry.key}.{column.key}": Reader(self.system).unit(column.quantity).symbol
            for column in entry.columns
            if isinstance(column, Number)
        }
        return all(self.units.get(place, symbol) == symbol for place, symbol in usual.items())

    def _rows(self, entry: Rows, text: str) -> list[list[object]]:
        """The cells of a table, numbers parted from their units."""
        units = tuple(self.units.get(f"{entry.key}.{column.key}") for column in entry.columns)
        return _parted_rows(entry, text, self.system, units)

    def cell(self, entry: Rows, column: Cell, text: str) -> State:
        """The state of one cell of the table ``entry``, as if its column were a field."""
        unit = self.units.get(f"{entry.key}.{column.key}")
        return State(self.system, {column.key: text}, {column.key: unit} if unit else {})


def _parted(text: str, entry: Number, menu: Unit | None) -> tuple[str, Unit | None]:
    number, own = split(text.strip(), entry.quantity)
    return number, own or menu


@lru_cache(64)  # while one number is typed the tables stay
def _parted_rows(
    entry: Rows, text: str, system: str, units: tuple[str | None, ...]
) -> list[list[object]]:
    found = []
    for row in filled_rows(entry, text, system):
        cells: list[object] = []
        for column, cell, symbol in zip(entry.columns, row, units, strict=False):
            if isinstance(column, Number):
                usual = Reader(system).unit(column.quantity)
                menu = QUANTITIES[column.quantity].unit(symbol or usual.symbol)
                cells.append(_parted(cell, column, menu))
            else:
                cells.append(cell)
        found.append([*cells, *row[len(entry.columns) :]])
    return found


@lru_cache(64)  # asked for many times an answer
def filled_rows(entry: Rows, text: str, system: str) -> tuple[tuple[str, ...], ...]:
    """The rows of a table's text, each filled up with its columns' defaults."""
    defaults = tuple(column.default(system) for column in entry.columns)
    return tuple(row + defaults[len(row) :] for row in row_text.decode(text))


# Which fields count ---------------------------------------------------------------------------


def hidden_keys(sheet: Sheet, state: State) -> frozenset[str]:
    """Keys of the fields whose ``when`` does not hold in ``state``."""
    hidden = set()
    for entry in sheet.fields:
        if entry.when is None:
            continue
        key, wanted = entry.when
        chosen = state.texts.get(key, sheet.field(key).default(state.system))
        if key in hidden or chosen not in wanted:
            hidden.add(entry.key)
    return frozenset(hidden)


def fitted(sheet: Sheet, state: State) -> State:
    """``state`` with the example's texts that cannot stand beside what was given put right."""
    return state if sheet.fitted is None else sheet.fitted(sheet, state)


def typed_over(sheet: Sheet, state: State, hidden: frozenset[str]) -> State:
    """``state`` with the rows of an example or a site changed by what was typed over them.

    Whose rows they were stays: what was typed is told by its own field.
    """
    texts, standing = {}, {}
    for key, what_if in sheet.over.items():
        given = _given_over(sheet, state, key, hidden)
        if given:
            texts[key] = what_if.rows(sheet, state, given)
            standing[key] = state.standing_of(sheet.field(key))
    if not texts:
        return state
    return replace(state, texts={**state.texts, **texts}, standing={**state.standing, **standing})


def _given_over(sheet: Sheet, state: State, key: str, hidden: frozenset[str]) -> frozenset[str]:
    """Keys of the fields typed over rows that the reader did not type."""
    if key in hidden or not _rows_stand(sheet, state, key) or state.is_typed(sheet.field(key)):
        return frozenset()
    fields = _over(sheet, key) - hidden
    return frozenset(one for one in fields if state.is_typed(sheet.field(one)))


def _over(sheet: Sheet, key: str) -> frozenset[str]:
    """Keys of the fields that change a table's rows when they are typed; none of some tables."""
    return sheet.over[key].fields if key in sheet.over else frozenset()


def _rows_stand(sheet: Sheet, state: State, key: str) -> bool:
    return bool(row_text.decode(state.text(sheet.field(key))))


def replaced_keys(sheet: Sheet, state: State, hidden: frozenset[str]) -> frozenset[str]:
    """Keys of the fields that do not count, because a table that replaces them has rows."""
    gone: set[str] = set()
    for key, replaced in sheet.replaced.items():
        if key not in hidden and _rows_stand(sheet, state, key):
            gone |= {*replaced} - _given_over(sheet, state, key, hidden)
    return frozenset(gone)


def idle_keys(sheet: Sheet, state: State, hidden: frozenset[str]) -> frozenset[str]:
    """Keys of the fields in which typing would change nothing: rows replace them."""
    gone: set[str] = set()
    for key, replaced in sheet.replaced.items():
        if key in hidden or not _rows_stand(sheet, state, key):
            continue
        typed = state.is_typed(sheet.field(key))
        gone |= {*replaced} - (frozenset() if typed else _over(sheet, key))
    return frozenset(gone)
