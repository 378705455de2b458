"""What would put a line right, each change judged anew as the whole sheet judges."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.answer import TRY, Link
from calc.page.findings import Fix
from calc.pipe import pipes
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fix_search import Search, Tried
from calc.sheets.parts.line_fixes import height_allows, line_changes, round_down
from calc.sheets.parts.line_rows import as_text
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.reach.judge import findings, given

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.parts.line_fixes import Change
    from calc.sheets.reach.case import Case
    from calc.units import Reader

MOST_ASKED = 0.05  # m3/s, the maximum flow that the form takes
NONE = "No change we tried is enough."
HEIGHT = "The height is the bottleneck:"
WEAK = frozenset({"short", "no-water"})


def fixes(case: Case, values: Values, reader: Reader) -> tuple[Fix, ...]:
    """``Fix``es of everything wrong, each reaching Works or saying what it leaves."""
    search: Search[Case] = Search(
        judged=lambda one: findings(one, reader),
        changes=lambda one, key: _changes(one, key, reader),
        linked=lambda one: _linked(case, one, values, reader),
        gives=lambda one: _gives(one, reader),
    )
    return search.told(case, _none_words(case, reader))


def _none_words(case: Case, reader: Reader) -> str:
    """That nothing is enough; that it is the height, where still water leaves too little."""
    line, need = case.line, case.need
    wrong = {one.key for one in findings(case, reader) if one.level != "note"}
    if line.reduced or height_allows(line, need) or not wrong & WEAK:
        return NONE
    if line.crest(0.0) < 0:
        takes, has = reader.apart(line.weight * line.top_m, line.start_pa, "pressure")
        return f"{NONE} {HEIGHT} the highest point takes {takes}, and the start has {has}."
    left, enough = reader.apart(line.static, need.sure_pa, "pressure")
    return f"{NONE} {HEIGHT} with no flow {left} is left at the outlet; {enough} would be enough."


def _gives(case: Case, reader: Reader) -> str:
    left = reader.show(case.line.left(case.need.flow_m3s), "pressure")
    return f"That leaves {left} at the outlet."


def _changes(case: Case, key: str, reader: Reader) -> Iterator[Tried[Case]]:
    if key == "pump-most":
        yield from _pump(case, reader)
    for change in line_changes(case.line, case.need, reader, key):
        yield _changed(case, change, reader)


def _pump(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """Against more flow than the pump gives: less of it, or a pump that gives it."""
    less = round_down(case.most or 0.0, "flow", reader)
    text = f"Open less at once: {reader.show(less, 'flow')} or less."
    yield Tried("flow", text, replace(case, need=replace(case.need, flow_m3s=less)))
    more = round_up(case.need.flow_m3s, "flow", reader)
    if more <= MOST_ASKED:
        text = f"Choose a pump that gives {reader.show(more, 'flow')} or more at this pressure."
        yield Tried("pump", text, replace(case, most=more))


def _changed(case: Case, change: Change, reader: Reader) -> Tried[Case]:
    """The case with a line's change made.  More pressure asks the pump for the flow at that."""
    line, need = change.line, change.need
    after = replace(case, line=line, need=need)
    if not line.start_pa > case.line.start_pa or need.flow_m3s == 0:
        return Tried(change.way, change.text, after, change.does, change.pipe, change.laid)
    most = round_up(need.flow_m3s, "flow", reader)
    known = case.most is not None or not case.pumped
    if known and most <= MOST_ASKED:
        after = replace(after, most=max(case.most or 0.0, most))
    also = _asks(case, most, line.start_pa, reader)
    text, does = f"{change.text} {also}", f"{change.does} {also}"
    return Tried(change.way, text, after, does, change.pipe, change.laid)


def _asks(case: Case, flow: float, start_pa: float, reader: Reader) -> str:
    """What more pressure (Pa) at the start asks for at a flow (m3/s), as a sentence."""
    shown = reader.show(flow, "flow")
    if case.pumped:
        return f"The pump must give {shown} at that pressure."
    higher = reader.show(round_up(start_pa / case.line.weight, "head", reader), "head")
    return f"That takes a pump that gives {shown}, or a water level {higher} higher."


def _linked(case: Case, after: Case, values: Values, reader: Reader) -> Link | None:
    """The sheet with changes made; None where the form has no words for them."""
    line, need = after.line, after.need
    texts = given(case, values, reader) | {
        "pressure": exact(line.start_pa, "pressure", reader),
        "flow": exact(need.flow_m3s, "flow", reader),
        "hottest": exact(line.hottest_k, "temperature", reader),
    }
    if after.most != case.most and after.most is not None:
        texts["most"] = exact(after.most, "flow", reader)
    single = line.single
    try:
        if case.counted or single is None or single.reducer is not None:
            texts["line"] = as_text(line.sections, reader)
        elif single.pipe.kind in pipes.KINDS:
            texts.pop(values.kind, None)
            texts |= {"kind": single.pipe.kind, single.pipe.kind: single.pipe.size}
    except InputError:
        return None
    return Link(TRY, "reach", texts)
