"""Writes ``defaults.json``: the fields, defaults, units, pipes and pumps of release 0.1.0.

Run once, with the code of commit 3bdfa88: ``python -m tests.release_0_1_0.freeze``.  It is kept
for the record of how the file was made; with later code it would write something else.
"""

import json

from calc.pumps_demo import PUMPS
from calc.sheets.form import Choice, Count, Number, Rows

from calc import pipes
from calc.sheets import KEYS, sheet
from calc.units import QUANTITIES
from tests.release_0_1_0.frozen import FILE


def field(entry):
    """What a link and a reader of numbers must know of a field."""
    found = {"key": entry.key, "kind": type(entry).__name__, "label": entry.label}
    found["when"] = [entry.when[0], list(entry.when[1])] if entry.when else None
    if isinstance(entry, Rows):
        return found | rows(entry)
    found |= {"metric": entry.default("metric"), "us": entry.default("us")}
    if isinstance(entry, Number):
        found |= {"quantity": entry.quantity, "optional": entry.optional}
        found |= {"low": entry.low, "high": entry.high}
    elif isinstance(entry, Count):
        found |= {"low": entry.low, "high": entry.high}
    elif isinstance(entry, Choice):
        found["values"] = [value for value, _ in entry.options]
    else:
        found["longest"] = entry.longest
    return found


def rows(entry):
    return {
        "metric": [list(row) for row in entry.metric],
        "us": [list(row) for row in entry.us],
        "least": entry.least,
        "most": entry.most,
        "columns": [field(column) for column in entry.columns],
    }


def quantity(kind):
    units = [
        {"symbol": u.symbol, "factor": u.factor, "offset": u.offset, "aliases": list(u.aliases)}
        for u in kind.units
    ]
    return {"name": kind.name, "metric": kind.metric, "us": kind.us, "units": units}


def size(pipe):
    return {
        "size": pipe.size,
        "name": pipe.name,
        "label": pipe.label,
        "outside_m": pipe.outside_m,
        "inside_m": pipe.inside_m,
    }


def listed(things):
    """A JSON list, one thing a line."""
    return "[\n" + ",\n".join(json.dumps(thing, ensure_ascii=False) for thing in things) + "\n]"


def named(pairs):
    """A JSON object, one line a key, of (key, JSON text)."""
    return "{\n" + ",\n".join(f"{json.dumps(key)}: {text}" for key, text in pairs) + "\n}"


def main():
    sheets = (
        (key, named((
            ("title", json.dumps(sheet(key).title)),
            ("page", json.dumps(sheet(key).page)),
            ("fields", listed(field(entry) for entry in sheet(key).fields)),
        )))
        for key in KEYS
    )  # fmt: skip
    kinds = (
        (kind, named((
            ("label", json.dumps(label)),
            ("sizes", listed(size(pipe) for pipe in pipes.sizes(kind))),
        )))
        for kind, label in pipes.KINDS.items()
    )  # fmt: skip
    units = ((key, json.dumps(quantity(q), ensure_ascii=False)) for key, q in QUANTITIES.items())
    pumps = ((key, json.dumps(pump.name)) for key, pump in PUMPS.items())
    text = named((
        ("release", '"0.1.0"'),
        ("commit", '"3bdfa88"'),
        ("sheets", named(sheets)),
        ("quantities", named(units)),
        ("pipes", named(kinds)),
        ("pumps", named(pumps)),
    ))  # fmt: skip
    FILE.write_text(text + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
