"""A table of rows as people change it: cells, rows, links between rows; and as it may go wrong."""

from tests.release_0_1_0 import typed

NAMES = ("Cabin 4", "Hose, far", "Tap; new", "Wow!", "Bäder", "a<b>&c", "North  end", "")


def encode(rows):
    """As 0.1.0 writes rows: ";" between rows, "," between cells, "!" before a sign to keep."""
    return ";".join(",".join(_kept(cell) for cell in row) for row in rows)


def _kept(cell):
    return "".join(f"!{sign}" if sign in "!,;" else sign for sign in cell)


def filled(entry, system):
    """The default rows, every cell written out."""
    columns = entry["columns"]
    return [[*row, *(column[system] for column in columns[len(row) :])] for row in entry[system]]


def drawn(rng, frozen, entry, system, choices):
    """The default rows with a few changes that mostly still make a site."""
    rows = filled(entry, system)
    if not rows:
        return encode([_tank(rng, frozen, entry, system)])
    for _ in range(rng.randint(1, 6)):
        _change(rng, frozen, entry, system, choices, rng.choice(rows))
    way = rng.random()
    if way < 0.15 and len(rows) > 2:
        rows.pop(rng.randrange(len(rows)))
    elif way < 0.3:
        rows.append(list(rng.choice(rows)))
        rows[-1][_name_place(entry)] = rng.choice(NAMES[:3])
    elif way < 0.4:
        rng.shuffle(rows)
    return encode(row[: rng.choice((3, 4, 5, 6, 99, 99, *[99] * 20))] for row in rows)


def _name_place(entry):
    return 1 if entry["key"] == "runs" else 0


def _tank(rng, frozen, entry, system):
    """The only row of a table that starts empty: a tank at the end of a run."""
    columns = entry["columns"]
    row = [column[system] for column in columns]
    row[0] = rng.choice(("lower fork", "upper fork", "cabin 3", "house"))
    row[1] = _number(rng, frozen, columns[1], system)
    return row


def _change(rng, frozen, entry, system, choices, row):
    """One cell anew, not a name."""
    places = [at for at, column in enumerate(entry["columns"]) if column["kind"] != "Text"]
    at = rng.choice(places)
    column = entry["columns"][at]
    if column["kind"] == "Choice":
        row[at] = choices.next(column, f"{entry['key']}.{column['key']}")
    elif column["kind"] == "Count":
        row[at] = str(rng.randint(column["low"], min(column["high"], 4)))
    else:
        row[at] = _number(rng, frozen, column, system)


def _number(rng, frozen, column, system):
    if column["key"] in {"long", "up"}:
        value = rng.uniform(2, 90) if column["key"] == "long" else rng.uniform(-4, 22)
    else:
        value = typed.near_value(rng, frozen, column, system)
    unit = rng.choice(frozen.units(column)[:3])
    spelled = rng.choice((unit["symbol"], *unit["aliases"]))
    return typed.in_unit(value, unit, 3) + rng.choice(("", " ")) + spelled


def odd(rng, frozen, entry, system, choices):
    """A table that may be wrong in a cell, in a row, or as a whole."""
    rows = filled(entry, system) or [["spring", "12 m"]]
    ways = (_odd_cell, _odd_name, _long_row, _short_rows, _no_rows, _many_rows, _as_typed)
    made = rng.choice(ways)(rng, frozen, entry, system, rows)
    return made if isinstance(made, str) else encode(rows)


def _odd_cell(rng, frozen, entry, system, rows):
    for _ in range(rng.randint(1, 3)):
        row, at = rng.choice(rows), rng.randrange(len(entry["columns"]))
        column = entry["columns"][at]
        if column["kind"] == "Number":
            row[at] = typed.odd(rng, frozen, column, system)[0]
        elif column["kind"] == "Count":
            row[at] = typed.odd_count(rng, column)
        elif column["kind"] == "Choice":
            row[at] = typed.odd_choice(rng, column)
        else:
            row[at] = rng.choice((*NAMES, "n" * 25))


def _odd_name(rng, _frozen, _entry, _system, rows):
    """A name that no other row knows, or a row that stands twice."""
    if rng.random() < 0.5:
        rng.choice(rows)[rng.randrange(min(2, len(rows[0])))] = rng.choice(NAMES)
    else:
        rows.append(list(rng.choice(rows)))


def _long_row(rng, _frozen, _entry, _system, rows):
    rng.choice(rows).append(rng.choice(("", "more")))


def _short_rows(rng, _frozen, _entry, _system, rows):
    for row in rows:
        del row[rng.randint(1, len(row)) :]


def _no_rows(rng, *_):
    return rng.choice(("", ";;", " ; ", ","))


def _many_rows(rng, _frozen, entry, _system, rows):
    rows += [list(rows[-1]) for _ in range(entry["most"] + rng.randint(-1, 1) - len(rows))]


def _as_typed(rng, _frozen, _entry, _system, rows):
    """Spaces around the signs, an empty row, a "!" at the end."""
    text = encode(rows)
    return rng.choice((text.replace(",", " , "), text.replace(";", ";;"), text + "!", text + ";"))
