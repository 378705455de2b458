"""Figures and tables of the well sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import well_yield
from calc.page import row_text
from calc.page.answer import Column, Figure, Table
from calc.sheets.parts.tank_sizes import gap_words
from calc.sheets.well.case import BACK
from calc.sheets.well.working import WHY
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.answer import Cells
    from calc.page.form import Values
    from calc.sheets.well.case import Case
    from calc.units import Reader

PARTS = (0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0)  # of the yield, in the table of flows; our choice
WAYS = {
    "bucket": "by your test",
    "levels": "by the levels at rest and while pumping",
    "told": "as you were told",
}


def readings_text(values: Values) -> str:
    """The table of readings as a link's text."""
    return row_text.encode(
        (f"{row.time / 60:.10g} min", f"{row.level:.10g} m") for row in values.readings
    )


def _way(case: Case, reader: Reader) -> str:
    """How the yield was found."""
    if case.tested is not None and case.yields > case.tested:
        return f"{_by(case)}, carried beyond the {reader.show(case.tested, 'flow')} of the test"
    return _by(case)


def _by(case: Case) -> str:
    if case.test is None:
        return WAYS[case.known]
    if case.test.transmissivity is None:
        return "by how fast the level recovers"
    return "by Theis' recovery, 100 days without rain"


def figures(case: Case, reader: Reader) -> tuple[Figure, ...]:
    """Yield, store, levels, times, tank, and of a submersible pump what it needs."""
    found = [
        Figure("Well yield", case.yields, "flow", note=_way(case, reader), main=True),
        Figure("Well yield in a day", case.yields * DAY, "volume"),
    ]
    if case.stored is not None:
        found.append(
            Figure("Stored in the well", case.stored, "volume",
                   note="from the static level down to the lowest allowed")
        )  # fmt: skip
    found += _levels(case)
    if not case.keeps_up and case.stored:
        found += _times(case)
    if case.yields > 0:
        found.append(
            Figure("Maximum in the busiest time", case.peak_most, "volume",
                   note=f"{gap_words(case.values.peakfor)}, from the well without a storage tank")
        )  # fmt: skip
        found.append(
            Figure("Storage tank that evens out the day", case.tank, "volume",
                   note="filled slowly, day and night")
        )  # fmt: skip
    return (*found, *_pump(case))


def _levels(case: Case) -> Iterator[Figure]:
    note = "" if case.keeps_up else "as low as you allow: the well cannot keep up"
    yield Figure("Level while the pump runs", case.level, "length", note=note)
    yield Figure("Water above the intake then", case.intake - case.level, "length")
    needed = case.needed_intake
    if needed is not None:
        fits = case.deepest is None or needed <= case.deepest
        note = "for this flow" if fits else "deeper than this well allows: pump less at a time"
        yield Figure("Depth to set the intake", needed, "length", note=note)


def _times(case: Case) -> Iterator[Figure]:
    yield Figure("The pump empties it in", case.runs, "minutes", note="from the static level")
    if case.yields > 0:
        half, most = (case.rests(share) for share in BACK)
        note = f"for half of it; {gap_words(most)} for {100 * BACK[1]:g} %"
        yield Figure("Rest until it recovers", half, "minutes", note=note)


def _pump(case: Case) -> Iterator[Figure]:
    if case.cooling is not None:
        yield Figure("Water speed past the motor", case.cooling, "speed")
    yield Figure("Head the pump must make", case.head, "head", note="without friction")
    if case.submersible:
        yield Figure("Static pressure at the pump", case.pump_pressure, "pressure",
                     note="the drop pipe must be rated for it")  # fmt: skip


# Tables --------------------------------------------------------------------------------------


def tables(case: Case) -> tuple[Table, ...]:
    """What each flow does to the level; how the readings were used."""
    found = [] if case.yields <= 0 else [_flows(case)]
    return tuple(found) if case.test is None else (*found, _readings(case))


def _flows(case: Case) -> Table:
    flows = sorted({*(part * case.yields for part in PARTS), case.pump})
    rows: list[Cells] = []
    marked, dimmed = [], []
    for flow in flows:
        if flow <= 0:
            continue
        share = well_yield.drawn_share(case.yields, flow)
        runs = well_yield.time_to_empty(case.yields, case.stored or 0.0, flow)
        if flow == case.pump:
            marked.append(len(rows))
        if math.isfinite(runs):
            dimmed.append(len(rows))
        rows.append((flow, case.static + share * case.drawdown, _lasting(case, runs)))
    columns = (Column("Flow", "flow"), Column("Level", "length"), Column("The pump may run"))
    return Table("What each flow does to the level", columns, tuple(rows), tuple(marked),
                 tuple(dimmed))  # fmt: skip


def _lasting(case: Case, runs: float) -> str:
    if math.isinf(runs):
        return "for as long as you like"
    return gap_words(runs) if case.stored else "not known: the store is not counted"


def _readings(case: Case) -> Table:
    test = case.test
    rows: list[Cells] = []
    for at, row in enumerate(case.values.readings):
        used = at in test.kept and test.transmissivity is not None
        said = "on Theis' line" if used else "–"
        rows.append((row.time, row.level, max(row.level - case.static, 0.0), said))
    columns = (
        Column("Since the stop", "minutes"),
        Column("Level", "length"),
        Column("Still to recover", "length"),
        Column("Used"),
    )
    note = ""
    if test.transmissivity is None:
        note = f"{WHY[test.why]} The simple way is used."
    return Table("The readings", columns, tuple(rows), note=note)
