"""A site as a JSON file: written, read, checked; every fault is named, all of them at once.

The format is described for others in ``docs/site-file.md``.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from calc.errors import InputError
from calc.reading import seen
from calc.site.facts import ASSUMED, BY_PATH, GIVEN, Fact, Slot
from calc.site.rows import BY_TABLE, MOST, PUMP, TABLES, Row, Table, fold
from calc.site.site import Site, checked

FORMAT, VERSION = "springline-site", 1
LARGEST = 200_000  # characters of a file; our choice, far above the fullest site
NAME, NOTE = 60, 2000  # characters; our choice
SYSTEMS = ("metric", "us")
_PARTS = ("format", "version", "name", "system", "note", "facts", "tables")

Data = dict[str, Any]
Upgrade = Callable[[Data], Data]
# From each older version to the next: what a file of it becomes.  None has been needed yet.
UPGRADES: dict[int, Upgrade] = {}


@dataclass(frozen=True)
class Opened:
    """A file read.  site: None where there are errors; errors, notes: sentences.

    Notes say what was left out because it is not known here, and what does not fit together yet.
    """

    site: Site | None
    errors: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


def read(text: str, upgrades: Mapping[int, Upgrade] = UPGRADES) -> Opened:
    """A file's text as a site, or every fault in it.  Raises nothing.

    upgrades: version -> what turns a file of that version into the next.
    """
    try:
        return from_data(loaded(text, "file", LARGEST), upgrades)
    except InputError as error:
        return Opened(None, (error.message,))


def loaded(text: str, what: str, largest: int) -> object:
    """What a JSON text holds. what: "file"; largest: characters.  Raises InputError."""
    if len(text) > largest:
        raise InputError(f"This {what} has {len(text)} characters; {largest} are allowed.")
    try:
        return json.loads(text, parse_constant=_no_constant)
    except (ValueError, RecursionError) as error:
        raise InputError(_not_json(error)) from error


def _no_constant(word: str) -> float:
    raise ValueError(f"{word} is not a number in JSON")


def _not_json(error: Exception) -> str:
    if isinstance(error, json.JSONDecodeError):
        return f"This is not JSON: {error.msg} at line {error.lineno}, column {error.colno}."
    return f"This is not JSON: {error or 'it is nested too deeply'}."


def from_data(data: object, upgrades: Mapping[int, Upgrade] = UPGRADES) -> Opened:
    """The same from what JSON holds.  Raises nothing."""
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        return Opened(None, (f"This is not a site: its “format” is not “{FORMAT}”.",))
    version = data.get("version")
    if isinstance(version, bool) or not isinstance(version, int):
        return Opened(None, ("This file has no version number.",))
    if version > VERSION:
        newer = f"This file is of version {version}; this release reads up to {VERSION}."
        return Opened(None, (f"{newer} Use a newer release.",))
    while version < VERSION:
        if version not in upgrades:
            return Opened(None, (f"Files of version {version} cannot be read.",))
        data, version = upgrades[version](data), version + 1
    return _Reading(data).opened()


class _Reading:
    """One reading of a file, with what was found wrong on the way."""

    def __init__(self, data: Data) -> None:
        self.data = data
        self.errors: list[str] = []
        self.notes: list[str] = []

    def opened(self) -> Opened:
        for key in self.data:
            if key not in _PARTS:
                self.notes.append(f"“{key}” is not known here and was left out.")
        site = Site(
            self._words("name", NAME),
            self._system(),
            self._facts(),
            self._tables(),
            self._words("note", NOTE),
        )
        if self.errors:
            return Opened(None, tuple(self.errors), tuple(self.notes))
        return Opened(site, (), (*self.notes, *loose_ends(site)))

    def _words(self, key: str, longest: int) -> str:
        value = self.data.get(key, "")
        if not isinstance(value, str) or len(value) > longest:
            self.errors.append(f"“{key}” must be up to {longest} characters of text.")
            return ""
        return seen(value)

    def _system(self) -> str:
        system = self.data.get("system", "metric")
        if system not in SYSTEMS:
            self.errors.append("“system” must be “metric” or “us”.")
            return "metric"
        return system

    def _facts(self) -> dict[str, Fact]:
        given = self.data.get("facts", {})
        if not isinstance(given, dict):
            self.errors.append("“facts” must be an object of facts by path.")
            return {}
        found = {}
        for path, value in given.items():
            if path not in BY_PATH:
                self.notes.append(f"The fact “{path}” is not known here and was left out.")
                continue
            fact = self._fact(BY_PATH[path], value, f"Fact “{path}”")
            if fact is not None:
                found[path] = fact
        return found

    def _tables(self) -> dict[str, tuple[Row, ...]]:
        given = self.data.get("tables", {})
        if not isinstance(given, dict):
            self.errors.append("“tables” must be an object of tables by name.")
            return {}
        found = {}
        for key, rows in given.items():
            if key not in BY_TABLE:
                self.notes.append(f"The table “{key}” is not known here and was left out.")
            elif not isinstance(rows, list) or len(rows) > MOST:
                self.errors.append(f"Table “{key}” must be a list of up to {MOST} rows.")
            else:
                kept = tuple(self._row(BY_TABLE[key], at, row) for at, row in enumerate(rows, 1))
                if kept:
                    found[key] = kept
        return found

    def _row(self, table: Table, number: int, row: object) -> Row:
        where = f"Table “{table.key}”, row {number}"
        if not isinstance(row, dict):
            self.errors.append(f"{where} must be an object of cells by column.")
            return {}
        columns = {slot.key: slot for slot in table.columns}
        found = {}
        for key, value in row.items():
            if key not in columns:
                self.notes.append(f"{where}: column “{key}” is not known here and was left out.")
                continue
            fact = self._fact(columns[key], value, f"{where}, column “{key}”")
            if fact is not None:
                found[key] = fact
        return found

    def _fact(self, slot: Slot, value: object, where: str) -> Fact | None:
        """A fact of a cell's value; None where it is unknown or, said in errors, wrong."""
        try:
            return checked(slot, _as_fact(value))
        except InputError as error:
            self.errors.append(f"{where}: {error.message}")
            return None


def _as_fact(value: object) -> Fact:
    if isinstance(value, str):
        return Fact(value)
    parts = value if isinstance(value, dict) else {}
    text, reason = parts.get("text"), parts.get("assumed")
    if set(parts) != {"text", "assumed"} or not isinstance(text, str):
        raise InputError("write text such as “12 m”, or an object of “text” and “assumed” (why).")
    if not isinstance(reason, str):
        raise InputError("“assumed” must say why, as text.")
    if len(reason) > NAME * 2:
        raise InputError(f"a reason has up to {NAME * 2} characters.")
    return Fact(text, ASSUMED, reason)


def loose_ends(site: Site) -> tuple[str, ...]:
    """What does not fit together yet: outlets and sections at points that no section reaches."""
    known = {fold(name) for name in (*site.points, PUMP)}
    return tuple(
        f"Table “{table}”, row {number}: no pipe section ends at “{name}” yet."
        for table, number, name in _named_points(site)
        if name.strip() and fold(name) not in known
    )


def _named_points(site: Site) -> Iterator[tuple[str, int, str]]:
    for table, column in (("sections", "from"), ("outlets", "at")):
        for number, row in enumerate(site.rows(table), 1):
            yield table, number, site.word(table, row, column)


# Writing --------------------------------------------------------------------------------------


def to_data(site: Site) -> Data:
    """A site as JSON holds it; ``from_data`` turned round."""
    data: Data = {"format": FORMAT, "version": VERSION, "name": site.name, "system": site.system}
    if site.note:
        data["note"] = site.note
    data["facts"] = {p: _value(site.facts[p]) for p in BY_PATH if p in site.facts}
    data["tables"] = {
        table.key: [
            {c.key: _value(row[c.key]) for c in table.columns if c.key in row}
            for row in site.rows(table.key)
        ]
        for table in TABLES
        if site.rows(table.key)
    }
    return data


def _value(fact: Fact) -> str | dict[str, str]:
    return fact.text if fact.standing == GIVEN else {"text": fact.text, "assumed": fact.reason}


def write(site: Site) -> str:
    """A site as a file's text, one fact and one row a line.  ``read`` gives the same site."""
    data, lines = to_data(site), []
    for key, value in data.items():
        if key == "facts":
            lines.append(f'  "facts": {_object([(k, _json(v)) for k, v in value.items()], 4)}')
        elif key == "tables":
            tables = [(name, _rows(rows)) for name, rows in value.items()]
            lines.append(f'  "tables": {_object(tables, 4)}')
        else:
            lines.append(f"  {_json(key)}: {_json(value)}")
    return "{\n" + ",\n".join(lines) + "\n}\n"


def _json(value: object) -> str:
    return json.dumps(value, ensure_ascii=False)


def _object(pairs: list[tuple[str, str]], indent: int) -> str:
    if not pairs:
        return "{}"
    space = " " * indent
    inside = ",\n".join(f"{space}{_json(key)}: {text}" for key, text in pairs)
    return "{\n" + inside + "\n" + " " * (indent - 2) + "}"


def _rows(rows: list[Data]) -> str:
    return "[\n" + ",\n".join(f"      {_json(row)}" for row in rows) + "\n    ]"


def renamed(site: Site, name: str) -> Site:
    """The same site under another name.  Raises InputError where it is empty or too long."""
    name = seen(name).strip()
    if not name or len(name) > NAME:
        raise InputError(f"Give a name of 1 to {NAME} characters.", name="name")
    return replace(site, name=name)
