"""Links from the keep_up sheet: with the cure made, from a blank site, to other sheets."""

from functools import lru_cache

from calc.page import row_text
from calc.page.answer import Link
from calc.page.fields import Number
from calc.page.form import filled_rows
from calc.pump.invented import PUMPS
from calc.sheets.keep_up.rows import RUNS, TANKS, TAPS
from calc.units import QUANTITIES, Reader, parse, plain_number

_TABLES = {field.key: field for field in (RUNS, TAPS, TANKS)}


def links(sheet, values, rows, case, changes, reader):
    """Go on with the cure made, from a blank, or with another sheet; ``sheet``: keep_up itself."""
    best = next((change for change in changes if change.cures), None)
    if best is not None:
        yield Link(
            f"See it mended: {best.text}", "keep_up", _texts(sheet, values, best.rows, reader)
        )
    if values.ask == "few":
        yield Link("Go on row by row", "keep_up", _texts(sheet, values, rows, reader))
    yield Link("Start from a blank site", "keep_up", _blank(reader))
    tap = case.main
    if tap is not None:
        flow = _number(sum(case.after.draws.values()), "flow", reader, 4)
        lift = _number(values.lift, "length", reader)
        yield Link("Check the suction lift at this flow", "suction", {"flow": flow, "lift": lift})


def _texts(sheet, values, rows, reader):
    """Every field whose value is not its default, as a link holds it."""
    found = {"ask": "rows"}
    pump = next((key for key, pump in PUMPS.items() if pump is rows.supply.pump), "own")
    found |= {"pump": pump, "drive": values.drive}
    if rows.supply.set_pa is not None:
        found["set"] = _number(rows.supply.set_pa, "pressure", reader)
    if pump == "own":
        found |= {"table": values.table, "works": values.works}
    for key, quantity in (("lift", "length"), ("water", "temperature"), ("altitude", "length")):
        found[key] = _number(values.numbers[key], quantity, reader)
    supply = rows.supply
    found["suctionlong"] = _number(supply.suction_length, "length", reader)
    found["suctionpipe"] = f"{supply.suction_pipe.kind}/{supply.suction_pipe.size}"
    found["pumps"] = str(supply.beside)
    found = {k: v for k, v in found.items() if v != sheet.field(k).default(reader.system)}
    for field, table in ((RUNS, rows.runs), (TAPS, rows.taps), (TANKS, rows.tanks)):
        text = _table_text(field, table, reader)
        if text != _standard(field.key, reader.system)[0]:
            found[field.key] = text
    return found or {"ask": "rows"}


def _table_text(field, table, reader):
    usual = _standard(field.key, reader.system)[1]
    cells = ([_cell(c, row.numbers[c.key], reader) for c in field.columns] for row in table)
    return row_text.encode(_trimmed(row, usual) for row in cells)


@lru_cache
def _standard(key, system):
    """(default rows as a link writes them, each column's default) of a table."""
    field, reader = _TABLES[key], Reader(system)
    usual = [_as_cell(c, c.default(system), reader) for c in field.columns]
    rows = filled_rows(field, field.default(system), system)
    cells = (
        [_as_cell(c, text, reader) for c, text in zip(field.columns, row, strict=True)]
        for row in rows
    )
    return row_text.encode(_trimmed(row, usual) for row in cells), usual


def _trimmed(cells, usual):
    """Without what is only its column's default at the end."""
    while len(cells) > 1 and cells[-1] == usual[len(cells) - 1]:
        cells = cells[:-1]
    return cells


def _as_cell(column, text, reader):
    if not isinstance(column, Number) or not text:
        return text
    return _number(parse(text, column.quantity).value, column.quantity, reader)


def _cell(column, value, reader):
    if value is None:
        return ""
    return _number(value, column.quantity, reader) if isinstance(column, Number) else str(value)


def _blank(reader):
    """One run and one shower: a site to fill in."""
    long = "20m" if reader.system == "metric" else "60ft"
    run = ("pump", "house", long, "0m" if reader.system == "metric" else "0ft")
    return {"runs": row_text.encode((run,)), "taps": "Shower,house,shower,0,1"}


def _number(value, quantity, reader, digits=6):
    """An SI value as a link holds it: "3.8 bar"."""
    unit = QUANTITIES[quantity].default(reader.system)
    return f"{plain_number(unit.from_si(value), digits)} {unit.symbol}"
