"""Random requests to the keep_up sheet: bounds, zero, signs, empties, "I don't know", every choice.

Small supplies, so that many can be asked.
"""

from __future__ import annotations

import random

from calc.page import row_text
from calc.page.fields import UNKNOWN, Choice, Count, Number
from calc.page.state import State
from calc.sheets import sheet
from calc.units import QUANTITIES

SHEET = sheet("keep_up")
POINTS = ("pump", "fork", "house", "barn", "tank", "Pond")
AWKWARD = ("", "?", "0", "-1", "abc", "1e9", "  ", "½")
TABLES = ("runs", "taps", "tanks")
DRAWN = {"lift": 9.0}  # m: from deeper no pump draws, and little could be told of the rest


def number(rng: random.Random, entry: Number, system: str) -> str:
    """A number's text: the default, around it, a bound, or something awkward."""
    unit = QUANTITIES[entry.quantity].default(system)
    draw = rng.random()
    if draw < 0.012:
        return rng.choice(AWKWARD)
    if draw < 0.11:
        return f"{unit.from_si(rng.choice((entry.low, entry.high))):.12g} {unit.symbol}"
    if draw < 0.2 and entry.unknown is not None:
        return UNKNOWN
    if draw < 0.45:
        return entry.default(system)
    most = DRAWN.get(entry.key, entry.high)
    low, high = max(entry.low, most / 400), most / 3
    if entry.quantity == "temperature":
        low, high = entry.low, entry.high
    return f"{unit.from_si(rng.uniform(low, high)):.4g} {unit.symbol}"


def count(rng: random.Random, entry: Count) -> str:
    return str(rng.choice((entry.low, entry.high, 1, 1, 2, 3))) if rng.random() < 0.98 else "?"


def value(rng: random.Random, entry: object, system: str) -> str:
    if isinstance(entry, Choice):
        return rng.choice(entry.options)[0]
    if isinstance(entry, Count):
        return count(rng, entry)
    if isinstance(entry, Number):
        return number(rng, entry, system)
    return entry.default(system)


def table(rng: random.Random, key: str, system: str) -> str:
    """Rows over a few points: most hang together, some do not."""
    entry, rows = SHEET.field(key), []
    for at in range(rng.choice((0, 1, 1, 1)) if key == "tanks" else rng.randint(1, 4)):
        cells = [value(rng, column, system) for column in entry.columns]
        if key == "runs":
            ends = (POINTS[at], POINTS[at + 1])
            cells[:2] = ends if rng.random() < 0.93 else rng.sample(POINTS, 2)
            if rng.random() < 0.7:  # a hill of some tens of metres
                cells[2:4] = f"{rng.uniform(1, 200):.3g} m", f"{rng.uniform(-20, 40):.3g} m"
        elif key == "taps":
            cells[:2] = f"Tap {at}", rng.choice(POINTS[:4])
            if rng.random() < 0.7:
                cells[5:] = "", "", ""
        else:
            cells[0] = rng.choice(("tank", "Pond"))
        rows.append(cells)
    return row_text.encode(rows)


def state(seed: int) -> State:
    """One request by its seed."""
    rng = random.Random(seed)
    system, texts = rng.choice(("metric", "us")), {}
    for entry in SHEET.fields:
        if entry.key in TABLES:
            if rng.random() < 0.85:
                texts[entry.key] = table(rng, entry.key, system)
        elif rng.random() < 0.35:
            texts[entry.key] = value(rng, entry, system)
    return State(system, texts)
