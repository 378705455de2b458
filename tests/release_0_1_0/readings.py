"""The SI values that form code reads from the texts of a request, field by field."""

from dataclasses import replace

from calc.page.fields import Rows, Sheet
from calc.page.form import work
from calc.page.state import State, hidden_keys
from calc.sheets import sheet
from tests.release_0_1_0.facts import rounded


def read(request):
    """{values, errors} of a request by field key; fields that do not show have neither.

    A number is SI to 12 digits, an empty one None, a table a list of lists of cells.  Errors are
    sentences by key, those of a table by "taps.1" or "taps.1.flow".
    """
    found = sheet(request["sheet"])
    state = State(request["system"], request["texts"], request["units"])
    hidden = hidden_keys(found, state)
    values, errors = {}, {}
    for entry in found.fields:
        if entry.key not in hidden:
            value, wrong = _one(entry, state)
            errors |= wrong
            if not wrong:
                values[entry.key] = value
    return {"values": values, "errors": errors}


def _one(entry, state):
    """(value, errors) of one field, read as the only one of a sheet."""
    kept = []
    alone = Sheet("alone", "", (replace(entry, when=None),), lambda values, _: kept.append(values))
    errors = work(alone, state).errors
    if errors:
        return None, errors
    value = kept[0].numbers[entry.key]
    if isinstance(entry, Rows):
        return [[rounded(row.numbers[c.key]) for c in entry.columns] for row in value], {}
    return rounded(value), {}
