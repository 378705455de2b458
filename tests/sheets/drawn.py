"""Requests drawn at random for one sheet: bounds, zero, signs, empties, "?" and every choice."""

import random

from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows, Text
from calc.page.row_text import encode
from calc.page.state import State
from calc.units import QUANTITIES, parse


def states(sheet, count, seed=0):
    """``count`` states of a sheet, the same on every run."""
    rng = random.Random(f"{seed} {sheet.key}")
    return [_state(rng, sheet) for _ in range(count)]


def _state(rng, sheet):
    system = rng.choice(["metric", "us"])
    texts = {}
    for entry in sheet.fields:
        if rng.random() < 0.7:
            continue
        if isinstance(entry, Rows):
            rows = rng.choice([0, 0, 1, 3])
            cells = ([_text(rng, column, system) for column in entry.columns] for _ in range(rows))
            texts[entry.key] = encode(cells)
        elif not isinstance(entry, Text):
            texts[entry.key] = _text(rng, entry, system)
    return State(system, texts)


def _text(rng, entry, system):
    if isinstance(entry, Choice):
        return rng.choice(entry.options)[0]
    if isinstance(entry, Count):
        known = [str(entry.low), str(rng.randint(entry.low, entry.high))]
        return rng.choice(known if entry.unknown is None else [*known, UNKNOWN])
    if isinstance(entry, Number):
        return _number(rng, entry, system)
    return "a name"


def _number(rng, entry, system):
    kind = rng.random()
    if kind < 0.04:
        return ""
    if kind < 0.08 or (entry.unknown is not None and kind < 0.20):
        return UNKNOWN
    unit = rng.choice(QUANTITIES[entry.quantity].units)
    low, high = entry.low, entry.high
    if kind < 0.28:
        value = rng.choice([low, high, 0.0])
    elif kind < 0.40 or not entry.default(system):
        value = rng.uniform(low, high)
    else:
        value = parse(entry.default(system), entry.quantity).value * 4 ** rng.uniform(-1, 1)
        value *= -1 if rng.random() < 0.1 else 1
    return f"{unit.from_si(value):.9g} {unit.symbol}"
