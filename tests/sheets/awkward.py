"""Requests as awkward as a form allows: bounds, zeros, signs, "I don't know", every choice."""

import random

from calc.page.fields import UNKNOWN, Choice, Count, Number, Rows
from calc.page.state import State
from calc.units import QUANTITIES, parse


def states(sheet, count, seed=7):
    """``count`` ``State``s of a sheet, its tables apart, the same ones on every run."""
    rng = random.Random(f"{seed} {sheet.key}")
    for _ in range(count):
        system, texts, units = rng.choice(("metric", "us")), {}, {}
        for entry in sheet.fields:
            if isinstance(entry, Rows) or rng.random() < 0.35:
                continue
            texts[entry.key], unit = _text(rng, entry, system)
            if unit:
                units[entry.key] = unit
        yield State(system, texts, units)


def _text(rng, entry, system):
    if rng.random() < 0.08:
        return UNKNOWN, None
    if isinstance(entry, Choice):
        return rng.choice(entry.options)[0], None
    if isinstance(entry, Count):
        most = min(entry.high, max(3, 4 * entry.start))
        return str(rng.choice((entry.low, entry.high, entry.start, rng.randint(0, most)))), None
    assert isinstance(entry, Number)
    unit = rng.choice(QUANTITIES[entry.quantity].units)
    if entry.optional and rng.random() < 0.3:
        return "", None
    return f"{unit.from_si(_value(rng, entry, system)):.12g}", unit.symbol


def _value(rng, entry, system):
    """A bound, zero, or anything between them, small numbers as often as large ones."""
    low, high = entry.low, entry.high
    roll = rng.random()
    if roll < 0.2:
        return rng.choice((low, high, min(max(0.0, low), high)))
    text = entry.default(system)
    if roll < 0.6 and text and entry.quantity != "temperature":
        around = parse(text, entry.quantity, QUANTITIES[entry.quantity].default(system).symbol)
        return min(max(around.value * 10 ** rng.uniform(-1, 1), low), high)
    if low >= 0 and entry.quantity != "temperature":
        least = max(low, high * 1e-6)
        return least * (high / least) ** rng.random()
    return rng.uniform(low, high)
