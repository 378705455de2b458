"""Draws what a reader does in a form, so that 0.1.0 writes a link of it."""

from tests.release_0_1_0 import typed
from tests.release_0_1_0.tables import NAMES


def drawn(rng, frozen):
    """{system, fields: [[key, text, unit]], rows: [[key, [step]]], switch, leave}.

    switch: change to the other system at the end; leave: leave each box, so that a unit typed in
    it moves to its menu.
    """
    system = rng.choice(("metric", "us"))
    act = {"system": system, "fields": [], "rows": []}
    act |= {"switch": rng.random() < 0.25, "leave": rng.random() < 0.5}
    for entry in _picked(rng, frozen):
        if entry["kind"] == "Rows":
            act["rows"].append([entry["key"], _steps(rng, frozen, entry, system)])
        else:
            act["fields"].append([entry["key"], *_typed(rng, frozen, entry, system)])
    return act


def _picked(rng, frozen):
    """Some fields and the choices that show them, in the order of the form."""
    keys = set()
    for entry in rng.choices(frozen.fields, k=rng.choice((1, 2, 3, 5))):
        keys.add(entry["key"])
        while entry["when"]:
            entry = frozen.field(entry["when"][0])
            keys.add(entry["key"])
    return [entry for entry in frozen.fields if entry["key"] in keys]


def _typed(rng, frozen, entry, system):
    """(text, unit of the menu or None)."""
    if entry["kind"] == "Choice":
        return rng.choice(entry["values"]), None
    if entry["kind"] == "Count":
        return (typed.odd_count if rng.random() < 0.2 else typed.count)(rng, entry), None
    if entry["kind"] == "Text":
        return rng.choice((*typed.TABLES, *typed.BAD_TABLES[:4])), None
    return (typed.odd if rng.random() < 0.2 else typed.near)(rng, frozen, entry, system)


def _steps(rng, frozen, entry, system):
    """Rows added, doubled, taken out and moved; cells typed; a column put in another unit."""
    steps = []
    for _ in range(rng.randint(1, 5)):
        way = rng.choice(("add", "copy", "remove", "up", "down", "cell", "cell", "cell", "unit"))
        at = rng.randrange(len(entry["columns"]))
        column = entry["columns"][at]
        if way == "cell":
            steps.append(["cell", rng.randrange(9), at, _cell(rng, frozen, column, system)])
        elif way != "unit":
            steps.append([way, rng.randrange(9)])
        elif column["kind"] == "Number":
            symbol = rng.choice(frozen.units(column))["symbol"]
            steps.append(["unit", column["key"], symbol])
    return steps


def _cell(rng, frozen, column, system):
    if column["kind"] == "Text":
        return rng.choice(NAMES)
    return _typed(rng, frozen, column, system)[0]
