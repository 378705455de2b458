"""A row of texts by name as the form of a sheet, as if each was typed into its field."""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import get_close_matches
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from calc.bulk.answers import Data, Wanted, record
from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import UNKNOWN, Choice, Number, Rows
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.units import QUANTITIES

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Mapping

    from calc.page.fields import Field, Sheet

DONT_KNOW = "i don't know"
_WITH_UNIT = re.compile(r"(.*\S)\s*[(\[]([^()\[\]]+)[)\]]")


@dataclass(frozen=True)
class Place:
    """Where a column's cells go: the key of a field, and the unit that the column's name says."""

    key: str
    unit: str = ""


@lru_cache(1024)
def place(key: str, name: str) -> Place | None:
    """The field that a column's name means: "climb", "Climb from pump to outlet", "climb (ft)".

    key: of the sheet.  None where it means none.  Raises InputError where a label is that of
    several fields, or the unit is not one of the field's.
    """
    sheet, name = find_sheet(key), name.strip()
    found = _field(sheet, name)
    parted = _WITH_UNIT.fullmatch(name)
    if found is None and parted:
        found = _field(sheet, parted[1])
        if isinstance(found, Number):
            unit = QUANTITIES[found.quantity].unit(parted[2])
            if unit is None:
                units = ", ".join(one.symbol for one in QUANTITIES[found.quantity].units)
                raise InputError(f"Column “{name}”: the unit must be one of {units}")
            return Place(found.key, unit.symbol)
    return Place(found.key) if found else None


def _field(sheet: Sheet, name: str) -> Field | None:
    folded = name.casefold()
    for entry in sheet.fields:
        if entry.key.casefold() == folded:
            return entry
    labelled = [
        entry
        for entry in sheet.fields
        if folded in {entry.label.casefold(), entry.label.casefold().removesuffix(" (optional)")}
    ]
    if len(labelled) > 1:
        keys = ", ".join(entry.key for entry in labelled)
        raise InputError(f"“{name}” is the label of several fields. Write one of {keys}")
    return labelled[0] if labelled else None


def places(key: str, names: Collection[str]) -> dict[str, Place]:
    """{name: ``Place``} of the names that mean a field of a sheet.

    Raises InputError where none does, two mean the same, or one cannot be read.
    """
    found: dict[str, Place] = {}
    taken: dict[str, str] = {}
    for name in names:
        one = place(key, name)
        if one is None:
            continue
        if one.key in taken and taken[one.key] != name:
            raise InputError(f"“{taken[one.key]}” and “{name}” are the same field. Leave one out")
        found[name] = one
        taken[one.key] = name
    if names and not found:
        keys = ", ".join(entry.key for entry in find_sheet(key).fields[:4])
        raise InputError(f"No column is named after a field of {key}, such as {keys}")
    return found


def pairs(key: str, words: Iterable[str]) -> dict[str, str]:
    """Words such as "climb=12m" as {name: text}, each name of a field of the sheet.

    Raises InputError for any other word.
    """
    found: dict[str, str] = {}
    for word in words:
        name, sign, typed = word.partition("=")
        if not sign:
            raise InputError(f"“{word}”: write field=value, such as climb=12m")
        if name in found:
            raise InputError(f"“{name}” is given twice. Leave one out")
        if place(key, name) is None:
            known = [entry.key for entry in find_sheet(key).fields]
            near = get_close_matches(name, known, 1)
            hint = f"Did you mean {near[0]}?" if near else f"See python -m calc fields {key}."
            raise InputError(f"{key} has no field “{name}”. {hint}")
        found[name] = typed
    places(key, found)
    return found


def form(key: str, given: Mapping[str, Any], system: str = "metric") -> State:
    """The form with every cell typed in; a field that has no column is the example's.

    given: name -> text, or what JSON holds.  Raises InputError, as ``places``.
    """
    sheet = find_sheet(key)
    texts: dict[str, str] = {}
    units: dict[str, str] = {}
    for name, one in places(key, given).items():
        texts[one.key] = text(sheet.field(one.key), given[name])
        if one.unit:
            units[one.key] = one.unit
    standing = {entry.key: "example" for entry in sheet.fields if entry.key not in texts}
    standing |= {one: "given" for one, typed in texts.items() if typed != UNKNOWN}
    return State(system, texts, units, standing)


def text(entry: Field, cell: Any) -> str:
    """What a reader would have typed: a choice by its value or its label, a table as rows.

    cell: a text, a number of JSON, None for an empty field, or for a table a list of lists.
    """
    if isinstance(entry, Rows) and isinstance(cell, list):
        rows = (row if isinstance(row, list) else [row] for row in cell)
        return row_text.encode([_said(one) for one in row] for row in rows)
    typed = _said(cell)
    if typed.casefold().replace("’", "'") == DONT_KNOW:
        return UNKNOWN
    if isinstance(entry, Choice):
        known = {label.casefold(): value for value, label in entry.options}
        known |= {value.casefold(): value for value, _ in entry.options}
        return known.get(typed.casefold(), typed)
    return typed


def _said(cell: Any) -> str:
    if cell is None:
        return ""
    return cell.strip() if isinstance(cell, str) else str(cell)


def worked(key: str, given: Mapping[str, Any], wanted: Wanted) -> Data:
    """The record of one row.  Raises nothing on input: what cannot be read is its "error"."""
    try:
        state = form(key, given, wanted.system or "metric")
    except InputError as error:
        return {"sheet": key, "error": error.message}
    return record(find_sheet(key), state, wanted)
