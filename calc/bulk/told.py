"""Records and lists as plain text for a terminal, and what the sheets ask as rows of cells."""

from __future__ import annotations

from calc.bulk.answers import Data
from calc.bulk.cells import LIST
from calc.page.fields import Choice, Count, Number, Rows, Text
from calc.page.render import WARNING_WORDS
from calc.sheets import KEYS
from calc.sheets import sheet as find_sheet
from calc.units import QUANTITIES

Field = Number | Count | Choice | Text | Rows
SHEETS = ("key", "title", "page")
EXAMPLE = "A worked example with invented numbers, not yours."
FIELDS = ("key", "label", "kind", "quantity", "allowed", "default", "when")


def answer(record: Data) -> str:
    """A sheet's record in lines: verdict, figures, what is found, what is assumed, the link."""
    title = find_sheet(record["sheet"]).title
    if record["error"]:
        errors = record.get("errors") or {"": record["error"]}
        lines = [title, *(f"  {key or record['sheet']}: {one}" for key, one in errors.items())]
        return "\n".join([*lines, *_link(record)]) + "\n"
    lines = [title, *([EXAMPLE] if record["example"] else [])]
    lines.append(f"{record['verdict']}: {record['sentence']}")
    lines += [f"Fix: {one['text']}" for one in record.get("fixes", [])]
    lines += [f"  {one['label']}: {one['shown']}" for one in record["figures"]]
    lines += [f"{WARNING_WORDS[one['level']]}: {one['text']}" for one in record["findings"]]
    lines += _assumed(record["assumed"])
    lines += [f"Not used with the rest: {one}" for one in record["unused"]]
    lines += [f"Caution: {one}" for one in record["cautions"]]
    return "\n".join([*lines, *_link(record)]) + "\n"


def _assumed(assumed: list[Data]) -> list[str]:
    """What was assumed, a line for each reason."""
    by_reason: dict[str, list[str]] = {}
    for one in assumed:
        words = f"{one['label'].removesuffix(' (optional)')} {one['shown']}".strip()
        by_reason.setdefault(one["reason"], []).append(words)
    return [f"Assumed, {reason}: {LIST.join(words)}" for reason, words in by_reason.items()]


def _link(record: Data) -> list[str]:
    return [f"Link: {record['link']}"] if record.get("link") else []


def site(record: Data) -> str:
    """A site's record: what is left out of it, then every answer."""
    lines = [f"Note: {note}" for note in record.get("notes", [])]
    if not record.get("answers"):
        lines.append(record["error"])
    head = "\n".join([*([record["name"]] if record.get("name") else []), *lines])
    parts = [head] if head else []
    return "\n\n".join([*parts, *(answer(one).rstrip("\n") for one in record["answers"])]) + "\n"


# What there is --------------------------------------------------------------------------------


def sheets() -> list[tuple[str, ...]]:
    """(key, title, page) of every sheet."""
    return [(key, find_sheet(key).title, find_sheet(key).page) for key in KEYS]


def fields(key: str, system: str) -> list[tuple[str, ...]]:
    """A row of ``FIELDS`` for every field of a sheet.  Raises KeyError for no such sheet."""
    return [_field(entry, system) for entry in find_sheet(key).fields]


def _field(entry: Field, system: str) -> tuple[str, ...]:
    when = f"{entry.when[0]}: {' or '.join(entry.when[1])}" if entry.when else ""
    return (
        entry.key,
        entry.label,
        type(entry).__name__.lower(),
        entry.quantity if isinstance(entry, Number) else "",
        _allowed(entry),
        entry.default(system),
        when,
    )


def _allowed(entry: Field) -> str:
    """Units of a number, the usual one first; choices; the columns of a table."""
    if isinstance(entry, Number):
        return ", ".join(one.symbol for one in QUANTITIES[entry.quantity].units if one.symbol)
    if isinstance(entry, Count):
        return f"{entry.low} to {entry.high}"
    if isinstance(entry, Choice):
        return ", ".join(value for value, _ in entry.options)
    if isinstance(entry, Rows):
        return ", ".join(column.key for column in entry.columns)
    return f"text, up to {entry.longest} characters"


def field_lines(rows: list[tuple[str, ...]]) -> str:
    """Rows of ``FIELDS`` in two lines each: what it is called, and what it may be."""
    told = []
    for key, label, kind, quantity, allowed, default, when in rows:
        only = f" (only with {when})" if when else ""
        usual = f"; in the example {default}" if default else ""
        what = {"choice": "one of", "count": "a whole number,", "rows": "a table of"}
        told += [f"{key}: {label}{only}", f"    {quantity or what.get(kind, '')} {allowed}{usual}"]
    return "".join(f"{' '.join(line.split()) if line[0] != ' ' else line}\n" for line in told)


def lines(rows: list[tuple[str, ...]]) -> str:
    """Rows of short cells in columns; the last is as long as it is."""
    widths = [max(len(row[at]) for row in rows) for at in range(len(rows[0]) - 1)]
    told = (
        "  ".join([*(cell.ljust(w) for cell, w in zip(row, widths, strict=False)), row[-1]])
        for row in rows
    )
    return "".join(f"{line.rstrip()}\n" for line in told)
