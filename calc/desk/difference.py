"""What one site says otherwise than another: fact by fact, as a short text for a link, and back.

A variant is its base and the facts that differ.  "1~m~po.pa~s~" and then a packed site that holds
only what differs: the version, the variant's units, codes of single facts that it does not know,
letters of tables that it holds as a whole, then after the last "~" what is left out of rows.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.site.facts import ASSUMED, NOT_KNOWN, SLOTS, Fact, Slot
from calc.site.pack import pack, unpack
from calc.site.rows import TABLES, Row, Table
from calc.site.site import Site

if TYPE_CHECKING:
    from collections.abc import Iterator

VERSION = "1"
BAD = "The changes in this link cannot be read. Ask for it again."
SAME_NAME, OTHER_NAME = "-", "+"  # whether name and note are the base's


@dataclass(frozen=True)
class Difference:
    """One fact that differs. path: "pump.set" or "sections.2.pipe", "sections.2" for a whole row;
    label: of it in words; before, after: unknown where it is not known there."""

    path: str
    label: str
    slot: Slot | None
    before: Fact
    after: Fact


def differences(base: Site, other: Site) -> tuple[Difference, ...]:
    """Every fact in which ``other`` differs from ``base``, in the order of the site's facts.

    Only text and standing count: a reason is not a fact.  Raises nothing.
    """
    return (*_of_facts(base, other), *_of_tables(base, other))


def _of_facts(base: Site, other: Site) -> Iterator[Difference]:
    for slot in SLOTS:
        before, after = base.get(slot.key), other.get(slot.key)
        if not _same(before, after):
            yield Difference(slot.key, slot.label, slot, before, after)


def _of_tables(base: Site, other: Site) -> Iterator[Difference]:
    for table in TABLES:
        old, new = base.rows(table.key), other.rows(table.key)
        for index in range(max(len(old), len(new))):
            was = old[index] if index < len(old) else None
            now = new[index] if index < len(new) else None
            name = row_name(table, index, now if was is None else was)
            if was is None or now is None:
                there = Fact(_listed(table, now if was is None else was))
                pair = (NOT_KNOWN, there) if was is None else (there, NOT_KNOWN)
                yield Difference(f"{table.key}.{index}", name, None, *pair)
                continue
            for slot in table.columns:
                before, after = (row.get(slot.key, NOT_KNOWN) for row in (was, now))
                if not _same(before, after):
                    path = f"{table.key}.{index}.{slot.key}"
                    yield Difference(path, f"{name}: {slot.label}", slot, before, after)


def row_name(table: Table, index: int, row: Row | None) -> str:
    """What a row is called: by its name or its ends, else by its number."""
    row = row or {}
    if table.key == "sections":
        ends = [table.best(row, key).text for key in ("from", "to")]
        if all(ends):
            return f"Pipe from {ends[0]} to {ends[1]}"
    name = row.get("name", row.get("outlet", NOT_KNOWN)).text
    kind = table.row[:1].upper() + table.row[1:]
    return f"{kind} “{name}”" if name else f"{kind} {index + 1}"


def _listed(table: Table, row: Row | None) -> str:
    held = row or {}
    return ", ".join(held[slot.key].text for slot in table.columns if slot.key in held)


def _same(one: Fact, other: Fact) -> bool:
    return (one.text, one.standing) == (other.text, other.standing)


# As a text ------------------------------------------------------------------------------------


def write(base: Site, other: Site) -> str:
    """What makes ``other`` of ``base``, as one compact text."""
    gone = [
        slot.code for slot in SLOTS if base.get(slot.key).known and not other.get(slot.key).known
    ]
    facts = {path: fact for path, fact in other.facts.items() if not _same(base.get(path), fact)}
    tables: dict[str, tuple[Row, ...]] = {}
    whole, cells = [], []
    for table in TABLES:
        old, new = base.rows(table.key), other.rows(table.key)
        if _rows_same(table, old, new):
            continue
        if len(old) != len(new):
            whole.append(table.code)
            tables[table.key] = new
            continue
        pairs = list(zip(old, new, strict=True))
        tables[table.key] = tuple(_only_changed(table, *pair) for pair in pairs)
        cells += [
            f"{table.code}{index}{slot.code}"
            for index, (was, now) in enumerate(pairs)
            for slot in table.columns
            if slot.key in was and slot.key not in now
        ]
    named = (base.name, base.note) != (other.name, other.note)
    words = (other.name, other.note) if named else ("", "")
    held = Site(words[0], other.system, facts, {k: r for k, r in tables.items() if r}, words[1])
    head = (VERSION, OTHER_NAME if named else SAME_NAME, ".".join(gone), "".join(whole),
            ".".join(cells))  # fmt: skip
    return "~".join((*head, pack(held)))


def _rows_same(table: Table, old: tuple[Row, ...], new: tuple[Row, ...]) -> bool:
    return len(old) == len(new) and not any(
        _only_changed(table, was, now) or set(was) - set(now)
        for was, now in zip(old, new, strict=True)
    )


def _only_changed(table: Table, was: Row, now: Row) -> Row:
    return {
        slot.key: now[slot.key]
        for slot in table.columns
        if slot.key in now and not _same(was.get(slot.key, NOT_KNOWN), now[slot.key])
    }


def read(base: Site, text: str) -> Site:
    """The site that ``write`` was given.  Raises InputError for what cannot be read."""
    parts = text.split("~", 5)
    if len(parts) != 6 or parts[0] != VERSION or parts[1] not in (SAME_NAME, OTHER_NAME):
        raise InputError(BAD)
    held = unpack(parts[5])
    site = replace(base, system=held.system)
    if parts[1] == OTHER_NAME:
        site = replace(site, name=held.name, note=held.note)
    by_code = {slot.code: slot.key for slot in SLOTS}
    for code in filter(None, parts[2].split(".")):
        if code not in by_code:
            raise InputError(BAD)
        site = site.put(by_code[code], NOT_KNOWN)
    for path, fact in held.facts.items():
        site = site.put(path, fact)
    for table in TABLES:
        site = _with_rows(site, table, held.rows(table.key), table.code in parts[3])
    for cell in filter(None, parts[4].split(".")):
        site = _without(site, cell)
    return site


def _with_rows(site: Site, table: Table, rows: tuple[Row, ...], whole: bool) -> Site:
    if whole:
        return site.put_rows(table.key, rows)
    if not rows:
        return site
    old = site.rows(table.key)
    if len(old) != len(rows):
        raise InputError(BAD)
    merged = tuple({**was, **now} for was, now in zip(old, rows, strict=True))
    return site.put_rows(table.key, merged)


def _without(site: Site, cell: str) -> Site:
    table = next((one for one in TABLES if one.code == cell[:1]), None)
    slot = table and next((one for one in table.columns if one.code == cell[-1:]), None)
    number = cell[1:-1]
    if table is None or slot is None or not (number.isascii() and number.isdigit()):
        raise InputError(BAD)
    if int(number) >= len(site.rows(table.key)):
        raise InputError(BAD)
    return site.put_cell(table.key, int(number), slot.key, NOT_KNOWN)


# In words -------------------------------------------------------------------------------------


def shown(one: Difference, fact: Fact) -> str:
    """A fact as a person reads it: a choice by its label; "not known" where it is unknown."""
    if not fact.known or not fact.text:
        return "not known" if one.slot is not None else "none"
    if one.slot is not None and one.slot.options:
        return dict(one.slot.options).get(fact.text, fact.text)
    return fact.text


def who(fact: Fact) -> str:
    """Who says a fact: "given", or why it was assumed."""
    if not fact.known:
        return ""
    return (
        f"assumed{f', {fact.reason}' if fact.reason else ''}"
        if fact.standing == ASSUMED
        else "given"
    )
