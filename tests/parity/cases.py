"""Random valid inputs for every calculator, the same ones on every run."""

import random

from calc.page import row_text
from calc.page.fields import Choice, Count, Number, Rows
from calc.page.form import work
from calc.page.state import State, filled_rows
from calc.sheets import sheet as find_sheet
from calc.units import QUANTITIES, parse


def requests(key, count, seed=20240229):
    """``count`` requests for sheet ``key`` that work out to an answer.

    Numbers are drawn around the default (0.4 to 2.5 times) and kept inside the
    field's bounds, in a unit drawn from its menu; the draw is repeated until the
    sheet accepts it.
    """
    rng, sheet, found = random.Random(f"{seed} {key}"), find_sheet(key), []
    for _ in range(50 * count):
        request = _draw(rng, sheet)
        state = State(request["system"], request["texts"], request["units"])
        if work(sheet, state, first=True).answer is not None:  # the rest never refuses
            found.append(request)
        if len(found) == count:
            return found
    raise AssertionError(f"{key}: only {len(found)} of {count} draws were valid")


def _draw(rng, sheet):
    system = rng.choice(["metric", "us"])
    texts, units = {}, {}
    for entry in sheet.fields:
        if rng.random() < 0.3:
            continue
        if isinstance(entry, Choice):
            texts[entry.key] = rng.choice(entry.options)[0]
        elif isinstance(entry, Count):
            texts[entry.key] = str(rng.randint(entry.low, min(entry.high, max(3, 2 * entry.start))))
        elif isinstance(entry, Number):
            texts[entry.key], units[entry.key] = _number(rng, entry, system)
        elif isinstance(entry, Rows):
            texts[entry.key] = _rows(rng, entry, system)
    return {"op": "work", "sheet": sheet.key, "system": system, "texts": texts, "units": units}


def _rows(rng, entry, system):
    """The default rows with some numbers and counts drawn anew; names and choices stay."""
    rows = []
    for row in filled_rows(entry, entry.default(system), system):
        cells = list(row)
        for place, column in enumerate(entry.columns):
            if rng.random() < 0.8:
                continue
            if isinstance(column, Number) and cells[place] not in ("", "?"):
                around = parse(cells[place], column.quantity).value
                value = min(max(around * 1.5 ** rng.uniform(-1, 1), column.low), column.high)
                unit = rng.choice(QUANTITIES[column.quantity].units)
                cells[place] = f"{unit.from_si(value):.6g} {unit.symbol}"
            elif isinstance(column, Count):
                cells[place] = str(rng.randint(column.low, min(column.high, 4)))
        rows.append(cells)
    return row_text.encode(rows)


def _number(rng, entry, system):
    kind = QUANTITIES[entry.quantity]
    unit = rng.choice(kind.units)
    default = entry.default(system)
    if default in ("", "?"):
        return default, kind.default(system).symbol
    around = parse(default, entry.quantity, kind.default(system).symbol).value
    if entry.quantity == "temperature":
        value = around + rng.uniform(-10, 15)
    else:
        value = around * 2.5 ** rng.uniform(-1, 1)
    value = min(max(value, entry.low), entry.high)
    text = f"{unit.from_si(value):.6g}"
    return text, unit.symbol
