"""A table as one line of text, the way it stands in a link: "Tap,12m,shower;Hose,30m,hose".

Rows are parted by ";" and cells by ","; "!" before one of these three signs takes it as it is.
Cells missing at the end of a row take their column's default.
"""

MARKS = "!,;"


def encode(rows):
    """Rows of cell texts as one text.

    >>> encode((("Cabin 1", "12,5 m"), ("Hose", "")))
    'Cabin 1,12!,5 m;Hose,'
    """
    return ";".join(",".join(_escaped(cell) for cell in row) for row in rows)


def decode(text):
    """Rows of cell texts, trimmed; an empty text is no row.

    >>> decode("Cabin 1,12!,5 m;Hose")
    (('Cabin 1', '12,5 m'), ('Hose',))
    """
    rows, cells, cell = [], [], []
    signs = iter(text)
    for sign in signs:
        if sign == "!":
            cell.append(next(signs, "!"))
        elif sign == ",":
            cells.append("".join(cell).strip())
            cell = []
        elif sign == ";":
            cells.append("".join(cell).strip())
            rows.append(tuple(cells))
            cells, cell = [], []
        else:
            cell.append(sign)
    if text.strip():
        rows.append((*cells, "".join(cell).strip()))
    return tuple(row for row in rows if row != ("",))


def _escaped(cell):
    return "".join(f"!{sign}" if sign in MARKS else sign for sign in cell)
