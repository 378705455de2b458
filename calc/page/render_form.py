"""Fields -> an HTML form. All escaping of a form happens here.

A table of rows is printed as it stands; ``rows.js`` makes it editable from the template
that is printed with it.
"""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from calc.page import explain, row_text
from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows, Text, Unknown
from calc.page.state import filled_rows
from calc.units import QUANTITIES

if TYPE_CHECKING:
    from collections.abc import Mapping

    from calc.page.fields import Cell, Field, Sheet
    from calc.units import Unit

LINE = 80  # characters: a text of so many at most, such as a name, is asked in one line
NOTHING: Mapping[str, str] = {}


def form(sheet: Sheet, prefix: str, above: Mapping[str, str] = NOTHING) -> str:
    """The form's fields with the metric defaults; ``prefix`` makes ids unique on a page.

    above: title of a group -> HTML that stands above its fields.
    """
    groups: dict[str, list[Field]] = {}
    for entry in sheet.fields:
        groups.setdefault(entry.group, []).append(entry)
    parts = []
    for name, entries in groups.items():
        inside = above.get(name, "") + "".join(_field(entry, prefix) for entry in entries)
        if not name:
            parts.append(f'<div class="sl-group">{inside}</div>')
            continue
        opened = "" if name in sheet.folded else " open"
        parts.append(
            f'<details class="sl-group"{opened}><summary>{escape(name)}</summary>{inside}</details>'
        )
    return "".join(parts)


def _field(entry: Field, prefix: str) -> str:
    name = f"{prefix}-{entry.key}"
    if isinstance(entry, Rows):
        return _rows(entry, name)
    control = _control(entry, name)
    hint = (
        f'<span class="sl-help" id="{name}-help">{escape(entry.help)}</span>' if entry.help else ""
    )
    same = '<span class="sl-same"></span>' if isinstance(entry, Number) else ""
    return (
        f'<div class="sl-field" data-key="{escape(entry.key)}"{_when(entry)}{_follows(entry)}>'
        f'<label for="{name}">{escape(entry.label)}</label>{explain.beside(entry.label, name)}'
        f'{hint}<p class="sl-error" id="{name}-error"></p>'
        f'<div class="sl-control">{control}{same}</div>'
        f'<p class="sl-note" id="{name}-note"></p></div>'
    )


def _when(entry: Field) -> str:
    if not entry.when:
        return ""
    key, wanted = entry.when
    return f' data-when="{escape(key)}" data-wanted="{escape(" ".join(wanted))}"'


def _follows(entry: Field) -> str:
    """What follows from "I don't know", where that may be said: for ``marks.js`` to show."""
    if isinstance(entry, Rows | Text) or entry.unknown is None:
        return ""
    said = {"": _taken(entry, entry.unknown, "metric"), "-us": _taken(entry, entry.unknown, "us")}
    return "".join(f' data-sl-unknown{end}="{escape(text)}"' for end, text in said.items())


def _taken(entry: Field, unknown: Unknown, system: str) -> str:
    text, reason = unknown.text(system), unknown.reason
    if not text:
        return f"not checked: {reason}" if reason else "not checked"
    if isinstance(entry, Choice):
        text = dict(entry.options)[text]
    return f"taken as {text}, {reason}" if reason else f"taken as {text}"


def _control(entry: Field, name: str) -> str:
    hint = f"{name}-help " if entry.help else ""
    described = f'aria-describedby="{hint}{name}-error {name}-note"'
    common = f'id="{name}" name="{escape(entry.key)}" {described} autocomplete="off"'
    if isinstance(entry, Choice):
        return _choice(entry, common)
    if isinstance(entry, Count):
        return (
            f'<input type="text" inputmode="numeric" {common} value="{entry.start}" '
            f'data-metric="{entry.start}" data-us="{entry.start}">'
        )
    if isinstance(entry, Number):
        return _number(entry, name, common)
    metric, us = (escape(entry.default(system)) for system in ("metric", "us"))
    if isinstance(entry, Text) and entry.longest <= LINE:
        shown = f'value="{metric}" data-metric="{metric}" data-us="{us}"'
        return f'<input type="text" class="sl-words" {common} {shown}>'
    return (
        f'<textarea rows="8" spellcheck="false" {common} data-metric="{metric}" '
        f'data-us="{us}">{metric}</textarea>'
    )


def _choice(entry: Choice, common: str) -> str:
    start = entry.default("metric")
    options = _options(entry, start)
    if entry.unknown is not None:
        options += f'<option value="{UNKNOWN}">I don’t know</option>'
    return (
        f'<select {common} data-metric="{escape(start)}" '
        f'data-us="{escape(entry.default("us"))}">{options}</select>'
    )


def _options(entry: Choice, start: str, every: bool = True) -> str:
    """A menu's options, below its headings where it has some; or that of ``start`` alone."""
    made: dict[str, str] = {}
    for value, label in entry.options:
        chosen = value == start
        if every or chosen:
            part = value.partition("/")[0]
            mark = " selected" if chosen else ""
            made[part] = made.get(part, "") + (
                f'<option value="{escape(value)}"{mark}>{escape(label)}</option>'
            )
    heads = dict(entry.groups) if every else {}
    return "".join(
        f'<optgroup label="{escape(heads[part])}">{inside}</optgroup>' if part in heads else inside
        for part, inside in made.items()
    )


def _number(entry: Number, name: str, common: str) -> str:
    kind = QUANTITIES[entry.quantity]
    texts = {}
    for system in ("metric", "us"):
        unit, texts[system] = split_default(entry, system)
        if system == "metric":
            shown = unit
        texts[f"{system}-unit"] = unit.symbol
    data = " ".join(f'data-{key}="{escape(value)}"' for key, value in texts.items())
    shown_text = f'value="{escape(texts["metric"])}" {data}'
    box = f'<input type="text" inputmode="{_keyboard(entry)}" {common} {shown_text}>'
    if len(kind.units) == 1:
        tail = (
            f'<span class="sl-unit">{escape(kind.units[0].symbol)}</span>'
            if kind.units[0].symbol
            else ""
        )
        return box + tail
    options = "".join(
        f'<option{" selected" if unit is shown else ""} value="{escape(unit.symbol)}">'
        f"{escape(unit.symbol)}</option>"
        for unit in kind.units
    )
    label = escape(f"Unit of: {entry.label}")
    return f'{box}<select class="sl-unit" id="{name}-unit" aria-label="{label}">{options}</select>'


# people write these with a fraction, or in feet and inches
IN_PARTS = {"length", "diameter", "roughness", "rain"}


def _keyboard(entry: Cell) -> str:
    """Which keys a phone should show: letters and signs only where they are usual."""
    if isinstance(entry, Count):
        return "numeric"
    if isinstance(entry, Number) and entry.quantity not in IN_PARTS and entry.low >= 0:
        return "decimal"
    return "text"


def split_default(entry: Number, system: str) -> tuple[Unit, str]:
    """(Unit, number text) of a number field's default text such as "1 1/4 in"."""
    kind, text = QUANTITIES[entry.quantity], entry.default(system)
    for unit in sorted(kind.units, key=lambda unit: -len(unit.symbol)):
        if unit.symbol and text.endswith(unit.symbol):
            return unit, text[: -len(unit.symbol)].strip()
    return kind.default(system), text


# A table of rows ---------------------------------------------------------------------------


def _rows(entry: Rows, name: str) -> str:
    rows = entry.metric
    body = "".join(_row(entry, name, index, row) for index, row in enumerate(rows))
    head = "".join(
        f'<th scope="col"{_WITH_UNIT if _has_menu(column) else ""}>{_heading(column, name)}</th>'
        for column in entry.columns
    )
    hint = f'<p class="sl-help" id="{name}-help">{escape(entry.help)}</p>' if entry.help else ""
    texts = " ".join(
        f'data-{system}="{escape(_bare_rows(entry, system))}"' for system in ("metric", "us")
    )
    return (
        f'<div class="sl-field sl-rows" data-key="{escape(entry.key)}" data-name="{name}" '
        f'data-row="{_one(entry.row)}" data-least="{entry.least}" data-most="{entry.most}" '
        f"{texts}{_when(entry)}>"
        f'<p class="sl-rows-label" id="{name}-label">{escape(entry.label)}</p>{hint}'
        f'<p class="sl-error" id="{name}-error"></p>'
        f'<table class="sl-grid" aria-labelledby="{name}-label">'
        f'<thead><tr>{head}<th scope="col"><span class="sl-quiet">Change this row</span></th></tr>'
        f"</thead><tbody>{body}</tbody></table>"
        f"<template>{_row(entry, name, None, ())}</template>"
        f'<div class="sl-rows-foot"><button type="button" data-rows="add">Add {_one(entry.row)}'
        '</button><span class="sl-undo" role="status"></span></div>'
        f'<p class="sl-note" id="{name}-note"></p></div>'
    )


_WITH_UNIT = ' class="sl-with-unit"'


def _bare_rows(entry: Rows, system: str) -> str:
    """The default rows as the page shows them: every cell, units in the headings."""
    rows = filled_rows(entry, entry.default(system), system)
    return row_text.encode(
        [_bare(column, text, system) for column, text in zip(entry.columns, row, strict=False)]
        for row in rows
    )


def _one(word: str) -> str:
    return escape(f"{'an' if word[0] in 'aeiou' else 'a'} {word}")


def _has_menu(column: Cell) -> bool:
    return isinstance(column, Number) and len(QUANTITIES[column.quantity].units) > 1


def _heading(column: Cell, name: str) -> str:
    label = escape(column.label)
    help_ = f'<span class="sl-help">{escape(column.help)}</span>' if column.help else ""
    if not isinstance(column, Number) or not QUANTITIES[column.quantity].units[0].symbol:
        return f"{label}{help_}"
    units = QUANTITIES[column.quantity].units
    usual = QUANTITIES[column.quantity].default("metric")
    if len(units) == 1:
        return f'{label} <span class="sl-unit">{escape(usual.symbol)}</span>{help_}'
    options = "".join(
        f"<option{' selected' if unit is usual else ''}>{escape(unit.symbol)}</option>"
        for unit in units
    )
    return (
        f'{label} <select class="sl-unit" data-column="{escape(column.key)}" '
        f'data-us="{escape(QUANTITIES[column.quantity].us)}" data-metric="{escape(usual.symbol)}" '
        f'id="{name}-{escape(column.key)}-unit" '
        f'aria-label="{escape(f"Unit of: {column.label}, all rows")}">{options}</select>{help_}'
    )


def _row(entry: Rows, name: str, index: int | None, row: tuple[str, ...]) -> str:
    """A row of controls; ``index`` None: the template, which holds every choice."""
    texts = tuple(row) + tuple(c.default("metric") for c in entry.columns[len(row) :])
    inside = "".join(
        _cell(column, name, index, text, column.key in entry.rare)
        for column, text in zip(entry.columns, texts, strict=True)
    )
    where = f"row {1 if index is None else index + 1}"
    buttons = "".join(
        f'<button type="button" data-rows="{action}" aria-label="{word}: {where}"'
        f' data-word="{word}" title="{word}">{sign}</button>'
        for action, word, sign in (
            ("up", "Up", "↑"),
            ("down", "Down", "↓"),
            ("copy", "Duplicate", "+"),
            ("remove", "Remove", "✕"),
        )
    )
    return (
        f'<tr>{inside}<td class="sl-row-change"><p class="sl-error"></p>'
        f'<span class="sl-row-buttons">{buttons}</span></td></tr>'
    )


def _cell(column: Cell, name: str, index: int | None, text: str, rare: bool) -> str:
    number = 0 if index is None else index
    place = f"{name}-{number}-{escape(column.key)}"
    label = escape(f"{column.label}, row {number + 1}")
    common = (
        f'id="{place}" aria-label="{label}" aria-describedby="{place}-error {place}-note" '
        'autocomplete="off"'
    )
    defaults = ((s, _bare(column, column.default(s), s)) for s in ("metric", "us"))
    data = "".join(f' data-{s}="{escape(text)}"' for s, text in defaults)
    if isinstance(column, Choice):
        control = f"<select {common}{data}>{_options(column, text, index is None)}</select>"
    else:
        points = " data-sl-points" if isinstance(column, Text) and column.points else ""
        kind = "sl-words" if isinstance(column, Text) else "sl-figure"
        shown = "" if index is None else _bare(column, text)
        control = (
            f'<input type="text" inputmode="{_keyboard(column)}" class="{kind}" {common}{data}'
            f'{points} value="{escape(shown)}">'
        )
    # said once, in the template: for ``marks.js`` to offer "I don't know"
    unknown = isinstance(column, Number | Count) and column.unknown is not None and index is None
    return (
        f'<td data-column="{escape(column.key)}" data-label="{escape(column.label)}"'
        f"{' data-unknown' if unknown else ''}{' data-rare' if rare else ''}>"
        f'<p class="sl-error" id="{place}-error"></p>{control}'
        f'<p class="sl-note" id="{place}-note"></p></td>'
    )


def _bare(column: Cell, text: str, system: str = "metric") -> str:
    """A number's text without the unit that stands in the column's heading."""
    if not isinstance(column, Number):
        return text
    symbol = QUANTITIES[column.quantity].default(system).symbol
    return text[: -len(symbol)].strip() if symbol and text.endswith(symbol) else text
