"""Links of release 0.1.0, which had no version: read as that release read them.

It told a unit by the very signs of the field's menu, and wrote the menu's unit after any text that
did not end so: "30 m" in a field of bar became "30 mbar".  Such a text is asked about.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from calc.page import row_text
from calc.page.entries import name
from calc.page.fields import Choice, Count, Field, Number, Rows
from calc.quantities import QUANTITIES
from calc.site.frozen import v0

LONGEST = 8000  # characters that 0.1.0 took from one entry
_ENDS = re.compile(r"[\d¼½¾⅛⅜⅝⅞.,]$", re.ASCII)
_TAIL = re.compile(r"(.*[\d¼½¾⅛⅜⅝⅞.,])\s*(\D.*)", re.DOTALL)
_PLAIN = str.maketrans({"³": "3", "²": "2", "°": "", "·": "", " ": ""})


def symbols(entry: Number) -> tuple[str, ...]:
    """The units of a field's menu in 0.1.0; a quantity of one unit had no menu."""
    found = v0.UNITS.get(entry.quantity, ())
    return found if len(found) > 1 else ()


def split(text: str, menu: tuple[str, ...]) -> tuple[str, str | None]:
    """(number, symbol) of "18m" where "m" is one of ``menu``; else (text, None)."""
    trimmed = text.strip()
    for symbol in sorted(menu, key=len, reverse=True):
        for written in (symbol, symbol.translate(_PLAIN)):
            if not written or not trimmed.endswith(written):
                continue
            number = trimmed[: len(trimmed) - len(written)].strip()
            if _ENDS.search(number):
                return number, symbol
    return text, None


def number(entry: Number, text: str, default: str, system: str) -> tuple[str, str]:
    """(text, unit) that 0.1.0 told Python; default: the field's own text in 0.1.0."""
    menu = symbols(entry)
    usual = QUANTITIES[entry.quantity].default(system).symbol
    bare, unit = split(text, menu)
    if entry.optional and text.strip() in {s.translate(_PLAIN) for s in menu} | set(menu):
        own = QUANTITIES[entry.quantity].unit(text.strip())
        return "", own.symbol if own else usual  # an empty box and its menu
    return bare, unit or split(default, menu)[1] or usual


def damaged(entry: Number, text: str) -> tuple[str, str] | None:
    """(the text as typed, as it stands) where a menu's unit may have been added to another."""
    kind, menu = QUANTITIES[entry.quantity], symbols(entry)
    found = _TAIL.fullmatch(text.strip())
    if not found or not menu:
        return None
    figures, tail = found[1], found[2].strip()
    listed = {symbol.translate(_PLAIN) for symbol in menu} | set(menu)
    usual = {kind.metric.translate(_PLAIN), kind.us.translate(_PLAIN)}
    for added in usual if tail in listed else listed:  # "30mbar" may be right, or "30m" and "bar"
        typed = tail.removesuffix(added) if added else tail
        unit = kind.unit(typed) if typed and typed != tail and typed == typed.rstrip() else None
        if unit and typed not in listed and kind.unit(tail) is not unit:
            return f"{figures} {typed}", f"{figures} {tail}"
    return None


def last(entry: Field | None, texts: Mapping[str, str], units: Mapping[str, str]) -> list[str]:
    """What to check of a link whose last field is ``entry``: 0.1.0 wrote no end that a cut would
    take away, so "8" may be what is left of "80 psi"."""
    if not isinstance(entry, Number | Count) or not texts.get(entry.key, "").strip("? "):
        return []
    shown = f"{texts[entry.key]} {units.get(entry.key, '')}".strip()
    return [f"Check its end first, where it may have been cut: is “{name(entry)}” really {shown}?"]


def rows(entry: Rows, text: str) -> tuple[list[list[str]], list[str]]:
    """(rows that 0.1.0 kept, those it left out, in words)."""
    values = [{v for v, _ in c.options} if isinstance(c, Choice) else None for c in entry.columns]
    good: list[list[str]] = []
    bad: list[list[str]] = []
    for row in row_text.decode(text):
        if not "".join(row):
            continue
        fits = len(row) <= len(values) and all(
            allowed is None or cell in allowed for cell, allowed in zip(row, values, strict=False)
        )
        (good if fits else bad).append(list(row))
    bad += good[entry.most :]
    said = [f"row “{', '.join(row)}”" for row in bad]
    good = good[: entry.most]
    if len(good) < entry.least:
        return [], said or [text or "no rows"]
    return good, said


def cell(column: Number, text: str) -> tuple[str, str | None]:
    """(text, unit) of a cell as 0.1.0 told them apart."""
    menu = v0.UNITS.get(column.quantity, ())
    bare, unit = split(text, tuple(symbol for symbol in menu if symbol))
    return bare, unit
