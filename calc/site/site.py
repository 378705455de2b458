"""A site: what is known of one place's water, once, for every sheet to read.

A site never changes; ``put`` and the rest give another one, so that undoing is keeping the old.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from calc.errors import InputError
from calc.reading import seen
from calc.site.facts import BY_PATH, NOT_KNOWN, Fact, Slot
from calc.site.rows import BY_TABLE, PUMP, SOURCE, TABLES, Row, fold


@dataclass(frozen=True)
class Site:
    """name: whose it is; system: "metric" or "us", the reader's own; facts: by path, only those
    that are known; tables: rows by table, only those that have any; note: a few words."""

    name: str = ""
    system: str = "metric"
    facts: Mapping[str, Fact] = field(default_factory=dict)
    tables: Mapping[str, tuple[Row, ...]] = field(default_factory=dict)
    note: str = ""

    # Scalar facts ---------------------------------------------------------------------------

    def get(self, path: str) -> Fact:
        """A fact as it stands, unknown where nothing is known.  Raises KeyError: no such path."""
        return self.facts.get(BY_PATH[path].key, NOT_KNOWN)

    def best(self, path: str) -> Fact:
        """A fact, or what is usual where it is unknown, as assumed.  Raises KeyError."""
        return BY_PATH[path].best(self.get(path))

    def value(self, path: str) -> Any:
        """``best`` in SI; None where it is unknown and nothing is usual.  Raises InputError."""
        fact = self.best(path)
        return BY_PATH[path].read(fact.text) if fact.known else None

    def put(self, path: str, fact: Fact) -> Site:
        """The site with a fact; an unknown one is taken out.  Raises InputError, KeyError."""
        facts = {key: one for key, one in self.facts.items() if key != path}
        held = checked(BY_PATH[path], fact)
        if held is not None:
            facts[path] = held
        return replace(self, facts=facts)

    # Tables ---------------------------------------------------------------------------------

    def rows(self, table: str) -> tuple[Row, ...]:
        """Rows of a table, none where it has none.  Raises KeyError: no such table."""
        return self.tables.get(BY_TABLE[table].key, ())

    def cell(self, table: str, row: Row, column: str) -> Any:
        """A cell in SI, or what is usual; None where nothing is known.  Raises InputError."""
        fact = BY_TABLE[table].best(row, column)
        return BY_TABLE[table].column(column).read(fact.text) if fact.known else None

    def word(self, table: str, row: Row, column: str) -> str:
        """A cell of words; "" where it is unknown."""
        return BY_TABLE[table].best(row, column).text

    def put_rows(self, table: str, rows: tuple[Row, ...]) -> Site:
        """The site with other rows in a table.  Raises InputError, KeyError."""
        columns = {slot.key: slot for slot in BY_TABLE[table].columns}
        kept = []
        for row in rows:
            held = {key: checked(columns[key], fact) for key, fact in row.items()}
            kept.append({key: fact for key, fact in held.items() if fact is not None})
        tables = {key: held for key, held in self.tables.items() if key != table}
        if kept:
            tables[table] = tuple(kept)
        return replace(self, tables=tables)

    def put_cell(self, table: str, index: int, column: str, fact: Fact) -> Site:
        """The site with one cell changed; an unknown one is taken out.  Raises InputError."""
        rows = list(self.rows(table))
        rows[index] = {**rows[index], column: fact}
        return self.put_rows(table, tuple(rows))

    # Points ---------------------------------------------------------------------------------

    @property
    def points(self) -> tuple[str, ...]:
        """Names of the points, as first written: the pump, or without one the source, tanks,
        sources, ends of sections."""
        start = PUMP if self.best("pump.present").text == "yes" else SOURCE
        found: dict[str, str] = {fold(start): start}
        for table, column in (("tanks", "name"), ("sources", "name"), ("sections", "to")):
            for row in self.rows(table):
                name = self.word(table, row, column)
                if name.strip():
                    found.setdefault(fold(name), name)
        return tuple(found.values())

    def rename(self, old: str, new: str) -> Site:
        """The site with a point under another name in every row.

        Raises InputError where the new name is empty, too long or another point's.
        """
        new = seen(new).strip()
        if not new:
            raise InputError("Give the point a name.", name="point")
        known = {fold(name) for name in self.points}
        kept = {fold(PUMP)}
        if not self._named_source():
            kept.add(SOURCE)  # no row would give it its level under another name
        if fold(old) not in known or fold(old) in kept:
            raise InputError(f"There is no point “{old}” that could be renamed.", name="point")
        if fold(new) != fold(old) and fold(new) in known | {fold(PUMP)}:
            raise InputError(f"“{new}” is another point already. Give another name.", name="point")
        site = self
        for table in TABLES:
            if not table.names or not self.rows(table.key):
                continue
            rows = tuple(_renamed(row, table.names, old, new) for row in self.rows(table.key))
            site = site.put_rows(table.key, rows)
        return site

    def _named_source(self) -> bool:
        """Whether "source" is a point like others, which a row says of itself."""
        if self.best("pump.present").text == "yes":
            return True
        rows = self.rows("sources")
        return any(fold(self.word("sources", row, "name")) == SOURCE for row in rows)

    def unused(self) -> bool:
        """Whether nothing is known yet."""
        return not self.facts and not self.tables


def _renamed(row: Row, columns: tuple[str, ...], old: str, new: str) -> Row:
    return {
        key: replace(fact, text=new) if key in columns and fold(fact.text) == fold(old) else fact
        for key, fact in row.items()
    }


def checked(slot: Slot, fact: Fact) -> Fact | None:
    """The fact with its text and reason tidied; None where it is unknown or shows nothing.

    Raises InputError where it cannot be read.
    """
    text = slot.tidied(fact.text)
    if not fact.known or not text:
        return None
    slot.read(text)
    return replace(fact, text=text, reason=seen(fact.reason))
