"""What a link means by the fields that it leaves out, and whether a field could read a text."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.fields import Choice, Count, Number, Rows
from calc.page.row_text import decode
from calc.quantities import QUANTITIES
from calc.reading import parse
from calc.site import frozen, link_texts

if TYPE_CHECKING:
    from calc.page.fields import Field, Sheet

ENDS = ".)>,;:!\"'”’»]"  # what a sentence puts after an address


def defaults(sheet: Sheet, version: int, system: str) -> tuple[dict[str, str], dict[str, str]]:
    """(texts, units) of every field as a link of ``version`` that leaves it out means it."""
    usual = frozen.table(version, sheet.key, system)
    texts: dict[str, str] = {}
    units: dict[str, str] = {}
    # a field added later leaves old answers as they were; a sheet added later has its example
    since = (sheet.plain or sheet) if usual else sheet
    later = {entry.key: entry.default(system) for entry in since.fields}
    for entry in sheet.fields:
        text = usual.get(entry.key, later[entry.key])
        if isinstance(entry, Rows):
            columns = columns_of(entry, usual)
            rows = [list(row) for row in decode(text)]
            texts[entry.key], more = link_texts.rows_in(
                entry, rows, system, columns, link_texts.cell_in
            )
            units |= more
        elif isinstance(entry, Number):
            texts[entry.key], units[entry.key] = link_texts.number_in(entry, text, system)
        else:
            texts[entry.key] = text
    return texts, units


def columns_of(entry: Rows, usual: dict[str, str]) -> dict[str, str]:
    keys = ((c.key, f"{entry.key}.{c.key}") for c in entry.columns)
    return {key: usual[name] for key, name in keys if name in usual}


def is_number(entry: Number, text: str) -> bool:
    try:
        parse(text, entry.quantity)
    except InputError:
        return False
    return True


def own_unit(entry: Number, text: str) -> bool:
    try:
        own = parse(text, entry.quantity).own
    except InputError:
        return True  # it is refused as it stands
    return own or len(QUANTITIES[entry.quantity].units) == 1


def readable(entry: Field, text: str, system: str) -> bool:
    if isinstance(entry, Choice):
        return text.strip().lower() in {value.lower() for value, _ in entry.options}
    if isinstance(entry, Count):
        return text.strip().isdigit()
    if isinstance(entry, Number):
        return is_number(entry, text)
    if isinstance(entry, Rows):
        rows = decode(text)
        if not rows or len(rows[-1]) > len(entry.columns):
            return True
        return readable(entry.columns[len(rows[-1]) - 1], rows[-1][-1], system)
    return True


def without_end(entry: Field, text: str, system: str) -> str:
    """``text`` without signs at its end, where only so it can be read."""
    shorter = text
    for _ in range(4):
        if readable(entry, shorter, system):
            return shorter
        if shorter[-1:] not in tuple(ENDS):
            return text
        shorter = shorter[:-1].rstrip()
    return shorter if readable(entry, shorter, system) else text
