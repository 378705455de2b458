"""What the page asks about sites: plain dictionaries in and out, for the bridge to dispatch.

A site is the object of its file's JSON.  Every reply has "errors", a list of sentences; where it
is not empty the rest is missing.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import Number, Rows
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets import views
from calc.sheets.parts import filling
from calc.site import file, link_texts, parts_list
from calc.site.demo import alder_terrace, to_change
from calc.site.facts import ASSUMED, GIVEN, Fact
from calc.site.pack import pack, unpack
from calc.site.rows import TABLES
from calc.site.site import Site
from calc.units import QUANTITIES, Reader, parse

Data = dict[str, Any]


def handle(request: Data) -> Data:
    """Answer one request: {"op": "site", "do": one of ``DO``, ...}.

    Returns a dictionary for JSON.  Raises KeyError for an unknown "do" or sheet.
    """
    try:
        return {"errors": [], **DO[request["do"]](request)}
    except InputError as error:
        return {"errors": [error.message]}


def _site(request: Data) -> Site:
    """The request's site.  Raises InputError with every fault in it."""
    opened = file.from_data(request["site"])
    if opened.site is None:
        raise InputError(" ".join(opened.errors))
    return opened.site


def _reply(site: Site, **more: object) -> Data:
    found = {"site": file.to_data(site), "name": site.name, "summary": summary(site)}
    return {**found, "packed": pack(site), **more}


def summary(site: Site) -> str:
    """What is in a site, in a few words: "8 pipe sections, 7 outlets"."""
    counted = [(len(site.rows(table.key)), table.row) for table in TABLES[:3]]
    said = [f"{n} {word}{'' if n == 1 else 's'}" for n, word in counted if n]
    return ", ".join(said) or "nothing known yet"


# Sites ----------------------------------------------------------------------------------------


def _open(request: Data) -> Data:
    opened = file.read(request["text"])
    if opened.site is None:
        return {"errors": list(opened.errors), "notes": list(opened.notes)}
    return _reply(opened.site, notes=list(opened.notes))


def _demo(_request: Data) -> Data:
    return _reply(alder_terrace())


def _new(request: Data) -> Data:
    return _reply(file.renamed(Site(system=_system(request)), request["name"]))


def _derive(request: Data) -> Data:
    """Alder Terrace to be typed over: all of it is assumed until then."""
    return _reply(file.renamed(to_change(""), request["name"]))


def _duplicate(request: Data) -> Data:
    return _reply(file.renamed(_site(request), request["name"]))


def _rename_point(request: Data) -> Data:
    return _reply(_site(request).rename(request["old"], request["new"]))


def _export(request: Data) -> Data:
    return {"text": file.write(_site(request))}


def _pack(request: Data) -> Data:
    return {"text": pack(_site(request))}


def _unpack(request: Data) -> Data:
    return _reply(unpack(request["text"]))


def _system(request: Data) -> str:
    return "us" if request.get("system") == "us" else "metric"


# Sheets ---------------------------------------------------------------------------------------


def _fill(request: Data) -> Data:
    site, key, system = _site(request), request["sheet"], _system(request)
    way, sheet = request.get("way", ""), find_sheet(request["sheet"])
    facts = views.fill(site, key, way, system)
    texts: dict[str, str] = {}
    units: dict[str, str] = {}
    for entry in sheet.fields:
        if entry.key in facts:
            text = facts[entry.key].text
            if isinstance(entry, Rows):
                rows = [list(row) for row in row_text.decode(text)]
                text, more = link_texts.rows_in(entry, rows, system, {}, link_texts.cell_in)
                texts[entry.key] = text
                units |= more
                continue
            texts[entry.key], symbol = _split(text, entry, system)
            if symbol:
                units[entry.key] = symbol
    asked = views.asked_of(site, key, way)
    cells = filling.assumed_cells(asked, views.VIEWS[key].fields, sheet)
    chosen = f"{asked.moment}/{asked.outlet}"
    return {
        "texts": texts,
        "units": units,
        "standing": {field: fact.standing for field, fact in facts.items()},
        "reasons": {field: fact.reason for field, fact in facts.items() if fact.reason},
        "cells": {place: fact.reason for place, fact in cells},
        "one_to_one": _one_to_one(asked, key, facts),
        "ways": [{"value": value, "label": label} for value, label in views.choices(site, key)],
        "way": chosen,
        "line": _line(asked, system),
    }


def _one_to_one(asked: views.Asked, key: str, facts: Data) -> list[str]:
    """Fields that go back into the site for this way, of those filled."""
    return [
        one.field for one in views.VIEWS[key].fields if one.field in facts and one.puts_back(asked)
    ]


def _line(asked: views.Asked, system: str) -> str:
    """ "3 sections, 155 m"; "" where no way is asked or none can be worked out."""
    if not asked.outlet:
        return ""
    try:
        return asked.way.summary(Reader(system))
    except InputError as error:
        return error.message


def _split(text: str, entry: object, system: str) -> tuple[str, str]:
    """(text, symbol of its unit) as the box and the menu beside it show them."""
    if not isinstance(entry, Number):
        return text, ""
    usual = QUANTITIES[entry.quantity].default(system).symbol
    if not text.strip() or text == filling.ASKED:
        return text, usual
    symbol = parse(text, entry.quantity).unit.symbol
    if symbol and text.endswith(symbol):
        return text[: -len(symbol)].strip(), symbol
    return text, symbol


def linked(packed: str, key: str, way: str, system: str) -> Data:
    """What a link's site is, and how it fills a sheet: the replies of "unpack" and "fill" in one.

    way: one that the site does not have is the first.  Raises InputError for no whole site.
    """
    site = unpack(packed)
    if _assumes(site):
        from calc.sheets.parts.completed import opened  # a site of given facts waits for none

        site = opened(packed)
    if way not in dict(views.choices(site, key)):
        way = ""
    asked = {"site": file.to_data(site), "sheet": key, "way": way, "system": system}
    return {**_fill(asked), **_reply(site)}


def _assumes(site: Site) -> bool:
    """Whether anything in a site was assumed."""
    held = [*site.facts.values()]
    held += [fact for rows in site.tables.values() for row in rows for fact in row.values()]
    return any(fact.standing == ASSUMED for fact in held)


def _back(request: Data) -> Data:
    state = State(
        _system(request),
        request.get("texts", {}),
        request.get("units", {}),
        request.get("standing", {}),
    )
    put = views.back(_site(request), request["sheet"], state, request.get("way", ""))
    return _reply(
        put.site, changes=list(put.changes), what_if=list(put.what_if), stays=list(put.stays)
    )


# Parts ----------------------------------------------------------------------------------------


def _parts(request: Data) -> Data:
    read = parts_list.read(request["text"])
    if read.parts is None:
        return {"errors": list(read.errors), "notes": list(read.notes)}
    pumps = [{"value": pump.name, "label": pump.name} for pump in read.parts.pumps]
    counts = {key: len(rows) for key, rows in (read.parts.others or {}).items()}
    return {"name": read.parts.name, "pumps": pumps, "notes": list(read.notes), **counts}


def _use_pump(request: Data) -> Data:
    read = parts_list.read(request["text"])
    if read.parts is None:
        return {"errors": list(read.errors), "notes": list(read.notes)}
    return _reply(parts_list.with_pump(_site(request), read.parts.pump(request["pump"])))


def _put(request: Data) -> Data:
    """One scalar fact: text, and why where it is only assumed; no text: not known."""
    reason = request.get("assumed")
    fact = Fact(request.get("text", ""), GIVEN if reason is None else ASSUMED, reason or "")
    return _reply(_site(request).put(request["path"], fact))


DO: dict[str, Callable[[Data], Data]] = {
    "open": _open,
    "demo": _demo,
    "new": _new,
    "fill": _fill,
    "back": _back,
    "put": _put,
    "derive": _derive,
    "duplicate": _duplicate,
    "rename_point": _rename_point,
    "export": _export,
    "pack": _pack,
    "unpack": _unpack,
    "parts": _parts,
    "use_pump": _use_pump,
}
