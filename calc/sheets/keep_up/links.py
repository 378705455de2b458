"""A supply as the texts of a link: with a fix made, from a blank site, to other sheets."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.page import row_text
from calc.page.answer import TRY, Link
from calc.page.fields import UNKNOWN
from calc.pipe import friction
from calc.pipe.line import Line, Section
from calc.pump.invented import PUMPS
from calc.sheets.keep_up.options import pump_side
from calc.sheets.keep_up.rows import RUNS, TANKS, TAPS
from calc.sheets.parts import guard
from calc.sheets.parts.carry import exact
from calc.sheets.parts.table_texts import table_text
from calc.site.supply import SUCTION
from calc.site.supply_rows import OpenWater
from calc.units import HOUR, Reader

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.network.parts import Run
    from calc.page.form import Values
    from calc.sheets.keep_up.case import Case
    from calc.site.supply import OutletRow, SectionRow, Supply
    from calc.site.supply_rows import Source

LEAST_FLOW = 1e-6  # m3/s, the least the suction sheet takes
# what the gravity sheet takes: m of drop, m of pipe, m3/s, share of the length
HIGHEST, SHORTEST, LONGEST, MOST_FLOW, MOST_EXTRA = 400.0, 0.1, 20e3, 0.05, 2.0


def fixed(values: Values, supply: Supply, reader: Reader) -> Link:
    """The link that opens the sheet with a fix made."""
    return Link(TRY, "keep_up", texts(values, supply, reader))


def links(values: Values, case: Case, reader: Reader) -> Iterator[Link]:
    """Go on with every row, from a blank site, or with another sheet."""
    if values.ask == "few":
        found = texts(values, case.supply, reader)
        yield Link("Enter every pipe and outlet", "keep_up", found)
    yield Link("Start from a blank site", "keep_up", _blank(reader))
    if case.supply.pumping is None:
        yield from _falling(case, reader)
    elif case.after.flows[SUCTION] >= LEAST_FLOW:
        yield Link("Check the suction lift at this flow", "suction", _suction(case, reader))
        yield Link("Panels and battery for this pump", "panels", {})


def _falling(case: Case, reader: Reader) -> Iterator[Link]:
    """On from water that runs by its own weight."""
    names = [link.name for link in case.way]
    if case.main is not None and len(names) == 1 and names[0] in case.built.section_rows:
        run = case.after.network.run(names[0])
        if _taken(case, run):
            yield Link("This one pipe, with its crests", "gravity", _fall(case, run, reader))
    if case.gives:
        texts = {"gives": exact(case.gives, "flow", reader), "hours": "24"}
        yield Link("How big a tank evens out the day", "tank", texts)
    yield Link("Count the flow from showers, hoses and people", "demand", {})


def _taken(case: Case, run: Run) -> bool:
    """Whether the gravity sheet takes every figure of a pipe that brings its water down."""
    return (
        0.0 < _drop(case, run) <= HIGHEST
        and SHORTEST <= run.length_m <= LONGEST
        and _through(case, run) <= MOST_FLOW
        and _share(case, run) <= MOST_EXTRA
    )


def _drop(case: Case, run: Run) -> float:
    return case.after.network.heights[run.start] - case.after.network.heights[run.end]


def _share(case: Case, run: Run) -> float:
    """Bends as the share of length that loses as much at the flow."""
    flow = _through(case, run)
    line = Line((Section(run.pipe, run.length_m),), 0.0, case.after.network.temperature_k)
    return friction.local_loss(run.k, line.speed(flow)) / line.loss(flow)


def _through(case: Case, run: Run) -> float:
    return max(LEAST_FLOW, abs(case.after.flows[run.name]))


def _fall(case: Case, run: Run, reader: Reader) -> dict[str, str]:
    """The one pipe to the main outlet."""
    return {
        "drop": exact(_drop(case, run), "length", reader),
        "length": exact(run.length_m, "length", reader),
        "flow": exact(_through(case, run), "flow", reader),
        "kind": run.pipe.kind,
        run.pipe.kind: run.pipe.size,
        "use": "own",
        "wanted": exact(case.main.after.wanted_pa, "pressure", reader),
        "spring": exact(case.gives, "flow", reader) or UNKNOWN,
        "extra": exact(_share(case, run), "percent", reader),
        "water": exact(case.after.network.temperature_k, "temperature", reader),
        "hottest": exact(case.after.network.hottest_k, "temperature", reader),
        "profile": "",
        "broken": "none",
    }


def _suction(case: Case, reader: Reader) -> dict[str, str]:
    source = pump_side(case.supply)
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
    found, source = {"ask": "rows"}, supply.source
    if isinstance(source, OpenWater):
        found |= {
            "drive": values.drive,
            "fall": exact(source.level_m, "length", reader),
            "gives": exact(source.gives_m3s, "flow", reader),
        }
    else:
        found |= _pump_texts(values, source, reader)
    found |= {
        "water": exact(source.temperature_k, "temperature", reader),
        "altitude": exact(source.altitude_m, "length", reader),
        "hottest": exact(source.hottest_k, "temperature", reader),
    }
    for field, cells in (
        (RUNS, [_section_cells(row) for row in supply.sections]),
        (TAPS, [_outlet_cells(row) for row in supply.outlets]),
        (TANKS, [(row.name, row.level_m) for row in supply.tanks]),
    ):
        found[field.key] = table_text(field, cells, reader)
    return found


def _pump_texts(values: Values, source: Source, reader: Reader) -> dict[str, str]:
    """The fields of the pump's side."""
    pump = next((key for key, pump in PUMPS.items() if pump is source.pump), "own")
    found = {"pump": pump, "drive": values.drive}
    if source.reads_pa is not None:
        found["set"] = exact(source.reads_pa, "pressure", reader)
        found["sensed"] = exact(source.sensed_m or None, "length", reader)
    if pump == "own":
        found |= {"table": values.table, "works": values.works}
    found |= {
        "lift": exact(source.lift_m, "length", reader),
        "suctionlong": exact(source.suction_length_m, "length", reader),
        "suctionpipe": f"{source.suction_pipe.kind}/{source.suction_pipe.size}",
        "pumps": str(source.pumps),
        "relief": "yes" if source.relief else "no",
        "tank": exact(source.tank_m3, "volume", reader),
        "least": exact(source.least_m3s, "flow", reader),
        "precharge": exact(source.charge_pa, "pressure", reader),
        "starts": exact(source.allowed / HOUR, "per_hour", reader),
        "draw": exact(source.smallest_m3s, "flow", reader),
    }
    if pump in guard.DISPLACEMENT:
        found["guard"] = source.guard
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
