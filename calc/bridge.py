"""The one place the browser talks to: JSON text in, JSON text out. Runs anywhere.

Operations (``op``): "read" says what a link holds, "work" solves a sheet, renders it and writes
its link, "letter" writes of its answer, "convert" writes its fields in the other system of units,
"site" makes, fills and changes sites, "place" fills in places and their weather, "track" reads a
pasted track and "enquiry" a letter, "desk" takes several sheets together, "job" works on what
takes seconds.
"""

from __future__ import annotations

import json
import sys
import traceback
from contextlib import suppress
from typing import TYPE_CHECKING, Any

from calc.errors import InputError
from calc.page import charts, render, row_text
from calc.page.entries import within
from calc.page.fields import UNKNOWN, Number, Rows
from calc.page.form import cells, rest, work
from calc.page.state import State, filled_rows, hidden_keys
from calc.reading import split
from calc.sheets import onward
from calc.sheets import sheet as find_sheet
from calc.sheets.addresses import addresses
from calc.site import link
from calc.units import QUANTITIES, Reader, number_text, parse, plain_number

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from calc.page.answer import Link
    from calc.page.fields import Sheet
    from calc.page.form import Outcome
    from calc.quantities import Unit
    from calc.reading import Parsed


Data = dict[str, Any]  # JSON

FAILED = (
    "These numbers could not be worked out: a fault of this calculator, not of yours. "
    "Change one of them, and tell us with the link."
)


def handle(request_text: str) -> str:
    """Answer one request; {"failed": sentence} where this code is at fault.

    Raises ``KeyError`` for an unknown sheet or operation.
    """
    request = json.loads(request_text)
    operation, _ = _OPERATIONS[request["op"]], find_sheet(request["sheet"])
    try:
        reply = operation(request)
    except Exception:  # whatever it is, the page must say that it is no answer
        print(traceback.format_exc(), file=sys.stderr)
        reply = {"failed": FAILED}
    return json.dumps(reply, ensure_ascii=False)


def _state(request: Data) -> State:
    return State(
        request.get("system", "metric"),
        request.get("texts", {}),
        request.get("units", {}),
        request.get("standing", {}),
        request.get("reasons", {}),
        frozenset((request.get("site") or {}).get("kept", ())),
    )


def work_out(request: Data) -> Data:
    """Solve: answer HTML, plain text and chart specifications, or errors by field key.

    Its "site" is {text: packed, way, kept: keys of the fields that stand as it fills them}; its
    "way" the one asked about where there is none.  Its "phase" parts what someone waits for who
    types: "first" is the answer's figures, where there are any, "form" what is then said of the
    form, "rest" all, with what takes longer; without it all is worked out at once.
    """
    sheet, state, phase = find_sheet(request["sheet"]), _state(request), request.get("phase", "")
    outcome = _outcome(sheet, state, phase)
    more = outcome.answer is not None and phase in {"first", "form"}
    if more and phase == "first":
        html = render.first(outcome, _addresses(request, sheet, state, outcome))
        return {"html": html, "example": outcome.example, "more": True}
    reply = _of_form(request, sheet, state, outcome) | {"more": more}
    return reply if more else reply | _all(request, sheet, state, outcome)


def _of_form(request: Data, sheet: Sheet, state: State, outcome: Outcome) -> Data:
    """What is said of the form, and its link."""
    return {
        "errors": outcome.errors,
        "cells": cells(sheet, state, outcome.errors),
        "notes": {key: note for key, note in outcome.notes.items() if note},
        "hidden": sorted(outcome.hidden),
        "idle": sorted(outcome.idle),
        "same": _equivalents(sheet, state, outcome),
        "tidy": _tidied(sheet, state),
        "link": link.write(sheet, state, *_carried(request), state.kept, _may(request)),
        "assumed": [
            {"key": one.key, "label": one.label, "shown": one.shown, "reason": one.reason}
            for one in outcome.assumed
        ],
        "example": outcome.example,
    }


def _carried(request: Data) -> tuple[str, str]:
    """(packed site, way) that came with a request."""
    site = request.get("site") or {}
    return site.get("text", ""), site.get("way", "")


def _may(request: Data) -> str:
    """What whoever made the link asks its reader to change, as codes; "" for nothing said."""
    return (request.get("site") or {}).get("may", "")


def _addresses(
    request: Data,
    sheet: Sheet,
    state: State,
    outcome: Outcome,
    going: tuple[str, str] | None = None,
) -> Callable[[Link], str]:
    where = request.get("base", ""), request.get("flat", False)
    carried = _carried(request)
    return addresses(sheet, state, outcome.example, *where, carried, going, _may(request))


def _all(request: Data, sheet: Sheet, state: State, outcome: Outcome) -> Data:
    """What nobody waits for who only looks at the figures: where to go on, text and charts."""
    carried = _carried(request)
    goes = onward.along(sheet, state, carried[0], carried[1] or request.get("way", ""))
    taken = (goes.site, goes.way)
    onto = link.of_site(state.system, *taken, _may(request)) if goes.site else ""
    found: Data = {"onward": onto}
    if outcome.answer is not None:
        address = _addresses(request, sheet, state, outcome, taken)
        found["html"] = render.answer(outcome, address, onward.words(goes))
        found["text"] = render.plain(sheet, outcome, state)
        found["charts"] = {c.key: charts.spec(c, outcome.reader) for c in outcome.answer.charts}
    return found


_LAST: list[tuple[str, State, Outcome]] = []  # what was worked out first, at most one


def _outcome(sheet: Sheet, state: State, phase: str) -> Outcome:
    """phase: "first" and "form" leave out what may come later, "rest" is the same with it."""
    first = phase in {"first", "form"}
    if phase and _LAST and _LAST[0][:2] == (sheet.key, state):
        with suppress(InputError):  # said beside its field below, as where all is asked at once
            return _LAST[0][2] if first else rest(_LAST[0][2])
    outcome = work(sheet, state, first=first)
    _LAST[:] = [(sheet.key, state, outcome)] if first else []
    return outcome


def write_letter(request: Data) -> Data:
    """The answer as a short letter, "" where there is none; its "address" is the page's."""
    from calc.page.letter import letter  # only who asks for one waits for it

    sheet, state = find_sheet(request["sheet"]), _state(request)
    outcome = work(sheet, state)
    if outcome.answer is None:
        return {"text": ""}
    return {"text": letter(sheet, outcome, state, request["address"])}


def _tidied(sheet: Sheet, state: State) -> dict[str, dict[str, str]]:
    """{key: {from, text, unit}} of texts with a unit of their menu: "40 psi" is 40 and psi."""
    found = {}
    for entry in sheet.fields:
        if isinstance(entry, Number):
            typed = state.text(entry)
            text, unit = split(typed, entry.quantity)
            if unit is not None:
                found[entry.key] = {"from": typed, "text": text, "unit": unit.symbol}
    return found


def _parsed(sheet: Sheet, state: State) -> Iterator[tuple[Number, Parsed]]:
    """(field, Parsed) of every number field that can be read."""
    for entry in sheet.fields:
        if isinstance(entry, Number):
            text = state.texts.get(entry.key, entry.default(state.system))
            symbol = state.units.get(entry.key) or Reader(state.system).unit(entry.quantity).symbol
            try:
                yield entry, parse(text, entry.quantity, symbol)
            except InputError:
                continue


def _equivalents(sheet: Sheet, state: State, outcome: Outcome) -> dict[str, str]:
    """What each number is in the reader's usual unit, or in the other system's, as a hint."""
    other, same = "metric" if state.system == "us" else "us", {}
    for entry, parsed in _parsed(sheet, state):
        kind = QUANTITIES[entry.quantity]
        usual = kind.default(state.system)
        target = kind.default(other) if parsed.unit == usual else usual
        if parsed.unit != target and entry.key not in outcome.errors:
            same[entry.key] = f"= {number_text(target.from_si(parsed.value))} {target.symbol}"
    return same


def read_link(request: Data) -> Data:
    """What a link says: every field's text, unit and standing, and what could not be read."""
    sheet = find_sheet(request["sheet"])
    found = link.read(request["fragment"], sheet)
    reply = {
        "system": found.system,
        "texts": found.texts,
        "units": found.units,
        "standing": found.standing,
        "said": list(found.said),
        "cut": found.cut,
        "older": found.older,
        "asks": [{"key": key, "question": question} for key, question in found.asks],
        "trusted": found.trusted,
    }
    return _filled(reply, found, sheet) if found.site else reply


def _filled(reply: Data, found: link.Reading, sheet: Sheet) -> Data:
    """With the link's site, and what that says of every field that the link does not."""
    from calc.sheets import site_ops  # only who has a site waits for it
    from calc.sheets.parts.filling import filled_form

    try:
        site = site_ops.linked(found.site, sheet.key, found.way, found.system)
    except InputError as error:
        return {**reply, "said": [*reply["said"], error.message], "cut": True, "trusted": False}
    state = filled_form(site, State(found.system, found.texts, found.units, found.standing),
                        found.named)  # fmt: skip
    filled = [key for key in site["texts"] if key in state.kept]
    site = {**site, "filled": filled, **_courtesy(found.may, sheet)}
    form = {"texts": state.texts, "units": state.units, "standing": state.standing}
    return {**reply, **form, "site": site}


def _courtesy(may: str, sheet: Sheet) -> Data:
    """What whoever made the link asks its reader to change: codes, words and fields."""
    if not may:
        return {}
    from calc.desk import may_change  # only who has such a link waits for it

    return {"may": may_change.told(may, sheet.key)}


def ask_site(request: Data) -> Data:
    """What the page asks about sites: see ``site_ops``."""
    from calc.sheets import site_ops

    return site_ops.handle(request)


def ask_place(request: Data) -> Data:
    """What the page asks about places: see ``place_ops``."""
    from calc.sheets import place_ops  # and with it all of the sun: only who looks waits for it

    return place_ops.handle(request)


def ask_track(request: Data) -> Data:
    """A pasted GPS track or table as the rows of a form: see ``track_ops``."""
    from calc.sheets import track_ops  # only who pastes one waits for it

    return track_ops.handle(request)


def ask_enquiry(request: Data) -> Data:
    """A pasted letter as facts of a site: see ``enquiry_ops``."""
    from calc.sheets import enquiry_ops  # only who pastes one waits for it

    return enquiry_ops.handle(request)


def ask_desk(request: Data) -> Data:
    """What takes several sheets together: see ``desk.ops``."""
    from calc.desk import ops  # only who asks for it waits for it

    return ops.handle(request)


def ask_job(request: Data) -> Data:
    """What takes seconds, a slice at a time: see ``jobs``."""
    from calc.sheets import jobs

    return jobs.handle(request, _state(request), _carried(request))


def convert(request: Data) -> Data:
    """Field texts and units in system ``to``; what cannot be read stays as typed, standing too."""
    sheet, state = find_sheet(request["sheet"]), _state(request)
    texts, units = dict(state.texts), dict(state.units)
    for number, parsed in _parsed(sheet, state):
        target = QUANTITIES[number.quantity].default(request["to"])
        if parsed.unit != target:
            texts[number.key], units[number.key] = _tidy(number, parsed, target), target.symbol
    for entry in sheet.fields:
        if isinstance(entry, Rows):
            texts[entry.key], more = _converted_rows(entry, state, request["to"])
            units |= more
        elif isinstance(entry, Number) and state.text(entry).strip() in {"", UNKNOWN}:
            units[entry.key] = QUANTITIES[entry.quantity].default(request["to"]).symbol
    hidden = sorted(hidden_keys(sheet, state))
    return {"texts": texts, "units": units, "standing": dict(state.standing), "hidden": hidden}


def _converted_rows(entry: Rows, state: State, to: str) -> tuple[str, dict[str, str]]:
    """A table's text in system ``to`` and its columns' units; what cannot be read keeps its own."""
    numbers = {at: column for at, column in enumerate(entry.columns) if isinstance(column, Number)}
    rows = [list(row) for row in filled_rows(entry, state.text(entry), state.system)]
    for row in rows:
        for at, column in numbers.items():
            if at < len(row):
                row[at] = _converted_cell(column, row[at], state.cell(entry, column, row[at]), to)
    units = {f"{entry.key}.{c.key}": Reader(to).unit(c.quantity).symbol for c in numbers.values()}
    return row_text.encode(rows), units


def _converted_cell(column: Number, text: str, state: State, to: str) -> str:
    kind = QUANTITIES[column.quantity]
    target = kind.default(to)
    symbol = state.units.get(column.key) or kind.default(state.system).symbol
    try:
        parsed = parse(text, column.quantity, symbol)
    except InputError:
        bare = text.strip() not in {"", UNKNOWN} and text.strip()[-1].isdigit()
        return f"{text.strip()} {symbol}" if bare and symbol != target.symbol else text
    if parsed.unit != target:
        return _tidy(column, parsed, target)
    return split(text, column.quantity)[0]


def _tidy(entry: Number, parsed: Parsed, target: Unit) -> str:
    """Four figures, as a person would type them; more where only so a bound is kept."""
    number = target.from_si(parsed.value)
    for digits in range(4, 13):
        text = plain_number(number, digits)
        if not within(entry, parsed) or within(entry, parse(text, entry.quantity, target.symbol)):
            break
    return text


_OPERATIONS = {
    "work": work_out, "read": read_link, "convert": convert, "site": ask_site,
    "letter": write_letter, "place": ask_place, "job": ask_job, "track": ask_track,
    "enquiry": ask_enquiry, "desk": ask_desk,
}  # fmt: skip
