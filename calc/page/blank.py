"""A form with empty lines, for paper: to be filled in at the place, and entered afterwards."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from calc.page.entries import name
from calc.page.fields import Choice, Number, Rows, Text
from calc.units import QUANTITIES

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.page.fields import Cell, Field, Sheet

EMPTY_ROWS = 8  # of a table; our choice, more go on the back
TICKED = 4  # options at most that stand as boxes to tick; of more, one is written down
LINES = 4  # for a pasted table


def form(sheet: Sheet) -> str:
    """HTML of a sheet's blank form: labels, units, lines to write on, cautions."""
    cautions = "".join(f"<li>{escape(one)}</li>" for one in sheet.cautions)
    groups = "".join(_group(title, entries) for title, entries in _groups(sheet))
    return (
        f"<h1>{escape(sheet.title)}</h1>"
        '<div class="sl-paper"><div class="sl-scan"></div><p class="sl-address"></p></div>'
        "<p>Write a dash where you do not know, and “about” where you guess.</p>"
        f'<p class="sl-line">Place</p><p class="sl-line">Date and name</p>{groups}'
        f"<h2>Before you work on it</h2><ul>{cautions}</ul>"
    )


def _groups(sheet: Sheet) -> Iterator[tuple[str, list[Field]]]:
    """(title, fields) by group; of fields that stand in for one another, such as sizes, one."""
    found: dict[str, list[Field]] = {}
    seen = set()
    for entry in sheet.fields:
        if entry.label not in seen:
            found.setdefault(entry.group, []).append(entry)
            seen.add(entry.label)
    yield from found.items()


def _group(title: str, entries: Iterable[Field]) -> str:
    head = f"<h2>{escape(title)}</h2>" if title else ""
    return head + "".join(map(_field, entries))


def _field(entry: Field) -> str:
    label = escape(name(entry))
    if isinstance(entry, Rows):
        return _table(entry, label)
    if isinstance(entry, Choice) and len(entry.options) <= TICKED:
        boxes = " ".join(f"☐\u00a0{escape(words)}" for _, words in entry.options)
        return f'<p class="sl-boxes">{label}: {boxes}</p>'
    lines = "<br>" * LINES if isinstance(entry, Text) else ""
    unit = _unit(entry)
    return f'<p class="sl-line">{label}{f" ({unit})" if unit else ""}{lines}</p>'


def _unit(entry: Cell) -> str:
    """The usual units of both systems: "m or ft"."""
    if not isinstance(entry, Number):
        return ""
    kind = QUANTITIES[entry.quantity]
    symbols = dict.fromkeys(kind.default(system).symbol for system in ("metric", "us"))
    return escape(" or ".join(filter(None, symbols)))


def _table(entry: Rows, label: str) -> str:
    heads = []
    for column in entry.columns:
        unit = _unit(column)
        heads.append(f"<th>{escape(name(column))}{f'<br>{unit}' if unit else ''}</th>")
    row = f"<tr>{'<td></td>' * len(heads)}</tr>"
    return (
        f'<table class="sl-blank-rows"><caption>{label}</caption>'
        f"<thead><tr>{''.join(heads)}</tr></thead><tbody>{row * EMPTY_ROWS}</tbody></table>"
    )
