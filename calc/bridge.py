"""The one place the browser talks to: JSON text in, JSON text out. Runs anywhere.

Operations (``op``): "work" solves a sheet and renders it, "convert" writes its
fields in the other system of units.
"""

import json

from calc.errors import InputError
from calc.page import charts, render, row_text
from calc.page.fields import Number, Rows
from calc.page.form import State, filled_rows, hidden_keys, work
from calc.sheets import sheet as find_sheet
from calc.units import QUANTITIES, Reader, number_text, parse


def handle(request_text):
    """Answer one request. Raises ``KeyError`` for an unknown sheet or operation."""
    request = json.loads(request_text)
    reply = _OPERATIONS[request["op"]](request)
    return json.dumps(reply, ensure_ascii=False)


def _state(request):
    return State(
        request.get("system", "metric"),
        request.get("texts", {}),
        request.get("units", {}),
        request.get("standing", {}),
    )


def work_out(request):
    """Solve: answer HTML, plain text and chart specifications, or errors by field key."""
    sheet, state = find_sheet(request["sheet"]), _state(request)
    outcome = work(sheet, state)
    reply = {
        "errors": outcome.errors,
        "notes": {key: note for key, note in outcome.notes.items() if note},
        "hidden": sorted(outcome.hidden),
        "same": _equivalents(sheet, state, outcome),
    }
    if outcome.answer is not None:
        reply["html"] = render.answer(outcome, request.get("base", ""), request.get("flat", False))
        reply["text"] = render.plain(sheet, outcome, state)
        reply["charts"] = {c.key: charts.spec(c, outcome.reader) for c in outcome.answer.charts}
    return reply


def _parsed(sheet, state):
    """(field, Parsed) of every number field that can be read."""
    for entry in sheet.fields:
        if isinstance(entry, Number):
            text = state.texts.get(entry.key, entry.default(state.system))
            symbol = state.units.get(entry.key) or Reader(state.system).unit(entry.quantity).symbol
            try:
                yield entry, parse(text, entry.quantity, symbol)
            except InputError:
                continue


def _equivalents(sheet, state, outcome):
    """What each number is in the reader's usual unit, or in the other system's, as a hint."""
    other, same = "metric" if state.system == "us" else "us", {}
    for entry, parsed in _parsed(sheet, state):
        kind = QUANTITIES[entry.quantity]
        usual = kind.default(state.system)
        target = kind.default(other) if parsed.unit == usual else usual
        if parsed.unit != target and entry.key not in outcome.errors:
            same[entry.key] = f"= {number_text(target.from_si(parsed.value))} {target.symbol}"
    return same


def convert(request):
    """Field texts and units in system ``to``; what cannot be read stays as typed."""
    sheet, state = find_sheet(request["sheet"]), _state(request)
    texts, units = dict(state.texts), dict(state.units)
    for entry, parsed in _parsed(sheet, state):
        target = QUANTITIES[entry.quantity].default(request["to"])
        if parsed.unit != target:
            number = target.from_si(parsed.value)
            texts[entry.key], units[entry.key] = _tidy(number), target.symbol
    for entry in sheet.fields:
        if isinstance(entry, Rows):
            texts[entry.key] = _converted_rows(entry, state, request["to"])
    return {"texts": texts, "units": units, "hidden": sorted(hidden_keys(sheet, state))}


def _converted_rows(entry, state, to):
    """A table's text with every number that can be read in system ``to``."""
    text = state.texts.get(entry.key, entry.default(state.system))
    numbers = [isinstance(column, Number) for column in entry.columns]
    rows = []
    for row in filled_rows(entry, text, state.system):
        cells = list(row)
        for place, column in enumerate(entry.columns):
            if numbers[place]:
                cells[place] = _converted_cell(column, cells[place], state.system, to)
        rows.append(cells)
    return row_text.encode(rows)


def _converted_cell(column, text, system, to):
    kind = QUANTITIES[column.quantity]
    target = kind.default(to)
    try:
        parsed = parse(text, column.quantity, kind.default(system).symbol)
    except InputError:
        return text
    if parsed.unit == target:
        return text
    return f"{_tidy(target.from_si(parsed.value))} {target.symbol}".strip()


def _tidy(number):
    """Four figures without trailing zeros, as a person would type it."""
    text = number_text(number, 4).replace("\u202f", "").replace("−", "-")
    return text.rstrip("0").rstrip(".") if "." in text else text


_OPERATIONS = {"work": work_out, "convert": convert}
