"""The kinds of field a sheet may have, and the sheet itself: what a form is made of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.page import row_text

if TYPE_CHECKING:
    from calc.page.answer import Answer
    from calc.page.form import Values
    from calc.page.state import State
    from calc.units import Reader

    When = tuple[str, tuple[str, ...]]  # key of a choice, the values for which a field counts

UNKNOWN = "?"  # what stands in a field whose reader does not know


@dataclass(frozen=True)
class Unknown:
    """What follows where the reader answers "I don't know".

    metric, us: the text worked with instead (empty: none, and the check that needs it is "not
    checked"); reason: why that, in a few words ("usual for a shower").
    """

    metric: str = ""
    us: str = ""
    reason: str = ""

    def text(self, system: str) -> str:
        return self.us if system == "us" else self.metric


@dataclass(frozen=True)
class Number:
    """A number with a unit.

    metric, us: the default as typed text ("18 m", "60 ft"); low, high: SI.
    optional: empty is allowed and gives None.  when: (key, (choice, ...)), the
    field counts and shows only while that choice field has one of those values.  unknown: what
    follows from "I don't know" (None: it must be answered).
    """

    key: str
    label: str
    quantity: str
    metric: str
    us: str
    low: float
    high: float
    help: str = ""
    optional: bool = False
    when: When | None = None
    group: str = ""
    unknown: Unknown | None = None

    def default(self, system: str) -> str:
        return self.us if system == "us" else self.metric


@dataclass(frozen=True)
class Count:
    """A whole number from low to high."""

    key: str
    label: str
    start: int
    low: int
    high: int
    help: str = ""
    when: When | None = None
    group: str = ""
    unknown: Unknown | None = None

    def default(self, _system: str) -> str:
        return str(self.start)


@dataclass(frozen=True)
class Choice:
    """One of ``options``: (value, label) pairs; values are short link-safe words.

    groups: (first part, heading) pairs; a long menu has its values "first/second" below headings.
    """

    key: str
    label: str
    options: tuple[tuple[str, str], ...]
    start: str
    start_us: str | None = None
    help: str = ""
    when: When | None = None
    group: str = ""
    unknown: Unknown | None = None
    groups: tuple[tuple[str, str], ...] = ()

    def default(self, system: str) -> str:
        return self.start_us if system == "us" and self.start_us else self.start


@dataclass(frozen=True)
class Text:
    """A block of text, such as a table pasted in; read as it stands into ``Values``."""

    key: str
    label: str
    start: str
    longest: int = 4000  # characters; a page of figures, not a book
    help: str = ""
    when: When | None = None
    group: str = ""
    points: bool = False  # names a point of the site: the page offers those there are

    def default(self, _system: str) -> str:
        return self.start


_written = lru_cache(64)(row_text.encode)  # a table's default is asked for many times an answer


@dataclass(frozen=True, eq=False)  # itself alone: what was read of it is kept by it
class Rows:
    """A table that the reader edits: its ``columns`` are Number, Count, Choice or short Text.

    A column's own default is that of a new row and of a cell that a link leaves out.
    metric, us: default rows of cell texts; most: rows at most; row: what one row is called
    in a sentence ("tap"); rare: keys of columns that few need, folded away on a phone where they
    hold no more than a new row's.  Its text in a ``State`` is that of ``row_text``; it reads into a
    tuple of ``Row``.
    """

    key: str
    label: str
    columns: tuple[Cell, ...]
    metric: tuple[tuple[str, ...], ...]
    us: tuple[tuple[str, ...], ...]
    row: str = "row"
    least: int = 1
    most: int = 60
    help: str = ""
    when: When | None = None
    group: str = ""
    rare: tuple[str, ...] = ()

    def default(self, system: str) -> str:
        return _written(self.us if system == "us" else self.metric)

    def column(self, key: str) -> Cell:
        for candidate in self.columns:
            if candidate.key == key:
                return candidate
        raise KeyError(key)


Cell = Number | Count | Choice | Text  # what may stand in a column of ``Rows``
Field = Cell | Rows


@dataclass(frozen=True)
class WhatIf:
    """A table's rows stand as an example or a site has them, and a field they replace is typed.

    fields: keys of the fields that change the rows; rows: (sheet, state, those of them that were
    given) -> the table's new text, "" where the single fields count instead of rows.
    """

    fields: frozenset[str]
    rows: Callable[[Sheet, State, frozenset[str]], str]


@dataclass(frozen=True)
class Sheet:
    """A calculator.

    folded: names of groups that start closed (rarely changed fields); arguments: name of a
    physics function's argument -> key of the field it came from, for what it refuses; plain:
    the sheet before its example was read from a site, whose defaults leave old answers unchanged;
    check: what says, by InputErrors, the faults that can be told although some fields or cells
    could not be read (None: nothing can);
    replaced: key of a table -> keys of the fields that do not count while it has rows; over:
    what typing over one of them makes of rows that the reader did not type (``WhatIf``);
    fitted: (sheet, state) -> the state with the example's own texts changed that cannot stand
    beside what the reader gave, as assumed and with the reason (None: they always can).
    """

    key: str
    title: str
    fields: tuple[Field, ...]
    solve: Callable[[Values, Reader], Answer]
    folded: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    sources: tuple[str, ...] = ()
    arguments: Mapping[str, str] = field(default_factory=dict)
    plain: Sheet | None = None
    check: Callable[[Values], None] | None = None
    replaced: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    over: Mapping[str, WhatIf] = field(default_factory=dict)
    page: str = ""  # address of its guide below the site's root, e.g. "head/"
    fitted: Callable[[Sheet, State], State] | None = None

    def field(self, key: str) -> Field:
        for candidate in self.fields:
            if candidate.key == key:
                return candidate
        raise KeyError(key)
