"""A supply as the texts of a link: with a fix made, from a blank site, to other sheets."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.page import row_text
from calc.page.answer import TRY, Link
from calc.pump.invented import PUMPS
from calc.sheets.keep_up.rows import RUNS, TANKS, TAPS
from calc.sheets.parts import guard
from calc.sheets.parts.carry import exact
from calc.sheets.parts.table_texts import table_text
from calc.site.supply import SUCTION
from calc.units import HOUR, Reader

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.keep_up.case import Case
    from calc.site.supply import OutletRow, SectionRow, Supply

LEAST_FLOW = 1e-6  # m3/s, the least the suction sheet takes


def fixed(values: Values, supply: Supply, reader: Reader) -> Link:
    """The link that opens the sheet with a fix made."""
    return Link(TRY, "keep_up", texts(values, supply, reader))


def links(values: Values, case: Case, reader: Reader) -> Iterator[Link]:
    """Go on with every row, from a blank site, or with another sheet."""
    if values.ask == "few":
        found = texts(values, case.supply, reader)
        yield Link("Enter every pipe and outlet", "keep_up", found)
    yield Link("Start from a blank site", "keep_up", _blank(reader))
    if case.after.flows[SUCTION] >= LEAST_FLOW:
        yield Link("Check the suction lift at this flow", "suction", _suction(case, reader))
        yield Link("Panels and battery for this pump", "panels", {})


def _suction(case: Case, reader: Reader) -> dict[str, str]:
    source = case.supply.source
    pipe = source.suction_pipe
    return {
        "flow": exact(case.after.flows[SUCTION], "flow", reader),
        "lift": exact(source.lift_m, "length", reader),
        "length": exact(max(source.suction_length_m, source.lift_m), "length", reader),
        "kind": pipe.kind,
        pipe.kind: pipe.size,
        "altitude": exact(source.altitude_m, "length", reader),
        "water": exact(source.temperature_k, "temperature", reader),
    }


def texts(values: Values, supply: Supply, reader: Reader) -> dict[str, str]:
    """Every field, whatever the defaults: what a link leaves out the example or a site fills."""
    source, found = supply.source, {"ask": "rows"}
    pump = next((key for key, pump in PUMPS.items() if pump is source.pump), "own")
    found |= {"pump": pump, "drive": values.drive}
    if source.reads_pa is not None:
        found["set"] = exact(source.reads_pa, "pressure", reader)
        found["sensed"] = exact(source.sensed_m or None, "length", reader)
    if pump == "own":
        found |= {"table": values.table, "works": values.works}
    found |= {
        "lift": exact(source.lift_m, "length", reader),
        "water": exact(source.temperature_k, "temperature", reader),
        "altitude": exact(source.altitude_m, "length", reader),
        "suctionlong": exact(source.suction_length_m, "length", reader),
        "suctionpipe": f"{source.suction_pipe.kind}/{source.suction_pipe.size}",
        "pumps": str(source.pumps),
        "hottest": exact(source.hottest_k, "temperature", reader),
        "relief": "yes" if source.relief else "no",
        "tank": exact(source.tank_m3, "volume", reader),
        "least": exact(source.least_m3s, "flow", reader),
        "precharge": exact(source.charge_pa, "pressure", reader),
        "starts": exact(source.allowed / HOUR, "per_hour", reader),
        "draw": exact(source.smallest_m3s, "flow", reader),
    }
    if pump in guard.DISPLACEMENT:
        found["guard"] = source.guard
    for field, cells in (
        (RUNS, [_section_cells(row) for row in supply.sections]),
        (TAPS, [_outlet_cells(row) for row in supply.outlets]),
        (TANKS, [(row.name, row.level_m) for row in supply.tanks]),
    ):
        found[field.key] = table_text(field, cells, reader)
    return found


def _section_cells(row: SectionRow) -> tuple[Any, ...]:
    pipe = f"{row.pipe.kind}/{row.pipe.size}"
    return row.start, row.end, row.length_m, row.height_m, pipe, row.bends, row.part


def _outlet_cells(row: OutletRow) -> tuple[Any, ...]:
    figures = (row.flow_m3s, row.rated_pa, row.needed_pa)
    return row.name, row.at, row.kind, row.before, row.after, *figures


def _blank(reader: Reader) -> dict[str, str]:
    """One section and one shower: a site to fill in."""
    long = "20m" if reader.system == "metric" else "60ft"
    run = ("pump", "house", long, "0m" if reader.system == "metric" else "0ft")
    return {"runs": row_text.encode((run,)), "taps": "Shower,house,shower,0,1"}
