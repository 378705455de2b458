"""Fields filled from a site: for any view, by its bindings."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import replace
from typing import Any

from calc.page import row_text
from calc.page.fields import UNKNOWN as ASKED
from calc.page.fields import Choice, Count, Number, Rows, Sheet, Text
from calc.page.state import State
from calc.sheets.parts.bindings import CALCULATED, Asked, Binding
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN, Fact
from calc.site.rows import Row
from calc.site.site import Site
from calc.units import QUANTITIES, number_text, parse

Field = Number | Count | Choice | Text | Rows


# Filling --------------------------------------------------------------------------------------


def fill(asked: Asked, bindings: Iterable[Binding | TableBinding], sheet: Sheet, system: str,
         digits: int, spare: bool = False) -> dict[str, Fact]:  # fmt: skip
    """Field key -> ``Fact`` with the text the form shows, of the fields the sheet has.

    A menu whose word is not known is left out; spare: so is every field.  Raises nothing.
    """
    found = {}
    fields = {entry.key: entry for entry in sheet.fields}
    for one in bindings:
        if one.field not in fields:
            continue
        entry = fields[one.field]
        if isinstance(one, TableBinding):
            assert isinstance(entry, Rows), entry.key
            rows = one.rows(asked)
            if one.asked and not rows:
                found[one.field] = NOT_KNOWN
                continue
            table = _table(rows, entry, asked.site, system, digits)
            found[one.field] = table if one.take else replace(table, reason=CALCULATED)
        elif one.pipe:
            found |= _pipe(one.fact(asked), fields)
        else:
            fact = shown(one.fact(asked), entry, asked.site, system, digits)
            if fact.known or not (isinstance(entry, Choice) or one.spare or spare):
                found[one.field] = fact
    return found


def _pipe(fact: Fact, fields: dict[str, Field]) -> dict[str, Fact]:
    """The menu of kinds, and of the sizes of that kind where the sheet has one."""
    if not fact.known:
        return {}
    kind, _, size = fact.text.partition("/")
    both = {"kind": replace(fact, text=kind), kind: replace(fact, text=size)}
    return {key: one for key, one in both.items() if key in fields}


def shown(fact: Fact, entry: Field, site: Site, system: str, digits: int) -> Fact:
    """A fact with the text that a field shows: numbers in the reader's system.

    What was typed in the reader's own system stays as typed.
    """
    if not fact.known or (fact.text == "" and not isinstance(entry, Number)):
        return replace(NOT_KNOWN, text=ASKED if getattr(entry, "unknown", None) else "")
    if not isinstance(entry, Number) or not fact.text:
        return fact
    parsed, target = parse(fact.text, entry.quantity), QUANTITIES[entry.quantity].default(system)
    typed = fact.standing == GIVEN and not fact.reason
    if typed and (parsed.unit == target or system == site.system):
        return fact
    if fact.standing == ASSUMED and parsed.unit == target:
        target = parsed.unit
    text = f"{tidy(target.from_si(parsed.value), digits)} {target.symbol}".strip()
    return replace(fact, text=text)


def tidy(number: float, digits: int) -> str:
    """A number as a person would type it, without zeros that say nothing.

    >>> tidy(60.0, 4), tidy(-0.0, 3), tidy(1234.5, 3)
    ('60', '0', '1235')
    """
    text = number_text(number, digits).replace("\u202f", "").replace("−", "-")
    return text.rstrip("0").rstrip(".") if "." in text and "e" not in text else text


def _table(rows: tuple[Row, ...], entry: Rows, site: Site, system: str, digits: int) -> Fact:
    texts = []
    for cells in rows:
        facts = (cell(cells, column, site, system, digits) for column in entry.columns)
        texts.append(_trimmed([fact.text for fact in facts], entry, system))
    return Fact(row_text.encode(texts))


def cell(cells: Row, column: Field, site: Site, system: str, digits: int) -> Fact:
    if column.key not in cells:  # a column added to the sheet and not known here
        return Fact(column.default(system))
    return shown(cells[column.key], column, site, system, digits)


def _trimmed(cells: list[str], entry: Rows, system: str) -> list[str]:
    """Without what is only its column's default at the end."""
    while len(cells) > 1 and cells[-1] == entry.columns[len(cells) - 1].default(system):
        cells = cells[:-1]
    return cells


def assumed_cells(asked: Asked, bindings: Iterable[Binding | TableBinding],
                  sheet: Sheet) -> Iterator[tuple[str, Fact]]:  # fmt: skip
    """("taps.2.now", fact) of each cell of a table that the site only assumes."""
    keys = {entry.key for entry in sheet.fields}
    for one in bindings:
        if isinstance(one, TableBinding) and one.field in keys:
            for at, cells in enumerate(one.rows(asked)):
                for key, fact in cells.items():
                    if fact.standing == ASSUMED:
                        yield f"{one.field}.{at}.{key}", fact


def with_default(entry: Field, metric: str, us: str) -> Field:
    """The field with other defaults."""
    if isinstance(entry, Number):
        return replace(entry, metric=metric, us=us)
    if isinstance(entry, Count):
        return replace(entry, start=int(metric))
    if isinstance(entry, Choice):
        return replace(entry, start=metric, start_us=us)
    if isinstance(entry, Rows):
        return replace(entry, metric=row_text.decode(metric), us=row_text.decode(us))
    return replace(entry, start=metric)


def filled_form(
    filled: Mapping[str, Any], base: State, named: Collection[str] = frozenset()
) -> State:
    """A form as a site fills it: what it says of every field that the form's own link does not.

    filled: what ``site_ops`` replies to "fill"; base: the form before; named: keys of the fields
    that its link says itself.  ``kept`` of what comes back: fields that the site fills.
    """
    mine = [key for key in filled["texts"] if key not in named]
    taken = frozenset(mine)
    units = {
        place: unit for place, unit in filled["units"].items() if place.partition(".")[0] in taken
    }
    return State(
        base.system,
        {**base.texts, **{key: filled["texts"][key] for key in mine}},
        {**base.units, **units},
        {**base.standing, **{key: filled["standing"][key] for key in mine}},
        filled["reasons"] | filled["cells"],
        taken,
    )
