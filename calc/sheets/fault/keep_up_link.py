"""The supply as the texts of the whole supply’s form, with a fault in it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.network.faults import smaller
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fields import MOST_LIFT
from calc.sheets.parts.supply_tables import RUNS, TANKS, TAPS
from calc.sheets.parts.table_texts import table_text

if TYPE_CHECKING:
    from calc.network.faults import Fault
    from calc.sheets.fault.case import Case
    from calc.units import Reader

WORDS = ("drive", "pump", "table", "works", "suctionpipe", "pumps")
NUMBERS = {
    "set": "pressure", "lift": "length", "suctionlong": "length", "tank": "volume",
    "precharge": "pressure", "sensed": "length", "least": "flow", "fall": "length",
    "water": "temperature", "altitude": "length",
}  # fmt: skip


def as_it_is(case: Case, fault: Fault, severity: float, reader: Reader) -> dict[str, str]:
    """Texts of the whole supply's form with a fault in it; none where the form has no words for it.

    fault, severity: as ``calc.network.faults.changed``.  Raises nothing.
    """
    found = {"ask": "rows"} | _fields(case, reader) | _tables(case, reader)
    values = case.values
    if fault.kind == "nothing":
        return found
    if fault.kind == "set" and values.set is not None and values.drive == "held":
        return found | {"set": exact(values.set * severity, "pressure", reader)}
    if fault.kind == "level":
        lower = "fall" if values.drive == "none" else "lift"
        metres = values.numbers[lower] + (-severity if lower == "fall" else severity)
        if lower == "lift" and metres > MOST_LIFT:
            return {}
        return found | {lower: exact(metres, "length", reader)}
    if fault.kind == "narrow":
        return found | {RUNS.key: _runs(case, reader, fault.where)}
    return {}


def _fields(case: Case, reader: Reader) -> dict[str, str]:
    """The fields that both forms have."""
    values = case.values.numbers
    found = {key: str(values[key]) for key in WORDS if values[key] is not None}
    known = {key: quantity for key, quantity in NUMBERS.items() if values[key] is not None}
    return found | {key: exact(values[key], quantity, reader) for key, quantity in known.items()}


def _tables(case: Case, reader: Reader) -> dict[str, str]:
    values = case.values
    found = {RUNS.key: _runs(case, reader)}
    for entry in (TAPS, TANKS):
        rows = [
            tuple(row.numbers[column.key] for column in entry.columns)
            for row in values.numbers[entry.key]
        ]
        found[entry.key] = table_text(entry, rows, reader)
    return found


def _runs(case: Case, reader: Reader, narrowed: str = "") -> str:
    """The table of sections, one of them a size smaller."""
    rows: list[tuple[Any, ...]] = []
    for at, row in enumerate(case.values.runs):
        cells = {column.key: row.numbers[column.key] for column in RUNS.columns}
        if narrowed and case.built.section_rows.get(narrowed) == at:
            pipe = smaller(case.built.supply.sections[at].pipe)
            if pipe is not None:
                cells["pipe"] = f"{pipe.kind}/{pipe.size}"
        rows.append(tuple(cells.values()))
    return table_text(RUNS, rows, reader)
