"""Write the frozen defaults of links: ``python -m scripts.freeze_links``.

A link leaves out what nobody gave and what is a frozen default of the link's version.  Once a
release is out no text in its table changes; a new field is added, for older links do not have it,
so that it is at its default.  Where a default changes after that, a new version of the link's
format is due, with a table of its own.

    python -m scripts.freeze_links              # calc/site/frozen/v1.py, from today's fields
    python -m scripts.freeze_links FILE.json    # v0.py, from the defaults kept of release 0.1.0
"""

import json
import sys
from pathlib import Path

from calc.page import row_text
from calc.page.fields import Rows
from calc.sheets import KEYS, sheet

FOLDER = Path(__file__).resolve().parents[1] / "calc" / "site" / "frozen"
SYSTEMS = ("metric", "us")


def of_fields(fields):
    """{key: (metric, us)} of a sheet's fields as they are; "runs.long" is a table's column."""
    found = {}
    for entry in fields:
        found[entry.key] = tuple(entry.default(system) for system in SYSTEMS)
        if isinstance(entry, Rows):
            for column in entry.columns:
                key = f"{entry.key}.{column.key}"
                found[key] = tuple(column.default(system) for system in SYSTEMS)
    return found


def of_file(fields):
    """The same of the fields that were kept of release 0.1.0."""
    found = {}
    for entry in fields:
        if entry["kind"] != "Rows":
            found[entry["key"]] = tuple(entry[system] for system in SYSTEMS)
            continue
        found[entry["key"]] = tuple(row_text.encode(entry[system]) for system in SYSTEMS)
        for column in entry["columns"]:
            key = f"{entry['key']}.{column['key']}"
            found[key] = tuple(column[system] for system in SYSTEMS)
    return found


def module(about, tables, units=None):
    """The text of a module of frozen data."""
    lines = [f'"""{about}  Written by ``scripts.freeze_links``."""', ""]
    if units:
        lines.append("UNITS = {  # the menus: in their order")
        lines += [f"    {_q(key)}: {_tuple(symbols)}," for key, symbols in units.items()]
        lines += ["}", ""]
    lines.append("TABLES = {  # sheet: field: (metric, US), or one text for both")
    for key, fields in tables.items():
        lines.append(f"    {_q(key)}: {{")
        for name, texts in fields.items():
            lines += _entry(name, texts)
        lines.append("    },")
    return "\n".join([*lines, "}", ""])


def _entry(name, texts):
    one = texts[0] == texts[1]
    short = f"        {_q(name)}: {_q(texts[0]) if one else _tuple(texts)},"
    if len(short) <= 100:
        return [short]
    lines = [f"        {_q(name)}: ("]
    for text in texts[:1] if one else texts:
        pieces = [text[at : at + 70] for at in range(0, len(text), 70)] or [""]
        lines += [f"            {_q(piece)}" for piece in pieces]
        if not one:
            lines[-1] += ","
    return [*lines, "        ),"]


def _q(text):
    return json.dumps(text, ensure_ascii=False)


def _tuple(texts):
    inside = ", ".join(map(_q, texts))
    return f"({inside},)" if len(texts) == 1 else f"({inside})"


def main(arguments):
    if arguments:
        kept = json.loads(Path(arguments[0]).read_text(encoding="utf-8"))
        tables = {key: of_file(one["fields"]) for key, one in kept["sheets"].items()}
        units = {
            key: tuple(unit["symbol"] for unit in one["units"])
            for key, one in kept["quantities"].items()
        }
        about = "What release 0.1.0 took for what its links left out."
        (FOLDER / "v0.py").write_text(module(about, tables, units), encoding="utf-8")
        return
    tables = {key: of_fields(sheet(key).fields) for key in KEYS}
    about = "What links of version 1 leave out."
    (FOLDER / "v1.py").write_text(module(about, tables), encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1:])
