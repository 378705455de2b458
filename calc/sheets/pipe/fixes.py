"""What would put a pipe right, each change sized and judged anew as the whole sheet judges.

The form has no word for one size: it names the smallest that works.  So where no pipe sections are
given a change is of the kind, the heat, the pressure or the flow, and the size follows from it.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page.answer import TRY, Link
from calc.page.findings import Fix
from calc.pipe import pipes
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fix_search import Search, Tried
from calc.sheets.parts.line_fixes import line_changes, other_kinds, pressure_for, round_down
from calc.sheets.parts.line_rows import as_text
from calc.sheets.pipe import case as sizing
from calc.sheets.pipe.judge import findings, given

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.findings import Finding
    from calc.page.form import Values
    from calc.sheets.parts.line_fixes import Change
    from calc.sheets.pipe.case import Case, Trial
    from calc.units import Reader

LEAST_FLOW = 1e-6  # m3/s, the least the form takes
NONE = "No change we tried is enough."
HEAT = frozenset({"too-hot", "over-rating"})
WEAK = frozenset({"short", "no-water", "height", "fast", "negative-pressure", "below-vacuum"})
OVER = frozenset({"over-rating", "outlet-over-limit"})


def fixes(case: Case, values: Values, reader: Reader) -> tuple[Fix, ...]:
    """``Fix``es of everything wrong, each reaching Works or saying what it leaves."""
    search: Search[Case] = Search(
        judged=lambda one: _judged(one, reader),
        changes=lambda one, key: _changes(one, key, reader),
        linked=lambda one: _linked(case, one, values, reader),
        gives=lambda one: _gives(one, reader),
    )
    return search.told(case, NONE)


def _judged(case: Case, reader: Reader) -> tuple[Finding, ...]:
    tries = sizing.trials(case)
    return findings(case, tries, sizing.smallest(case, tries), reader)


def _chosen(case: Case) -> Trial | None:
    """The size the sheet would name."""
    return sizing.smallest(case, sizing.trials(case))


def _gives(case: Case, reader: Reader) -> str:
    chosen = None if case.counted else _chosen(case)
    line = chosen.line if chosen else case.line
    left = reader.show(line.left(case.need.flow_m3s), "pressure")
    return f"{chosen.pipe.label} then leaves {left}." if chosen else f"That leaves {left}."


def _changes(case: Case, key: str, reader: Reader) -> Iterator[Tried[Case]]:
    if case.counted:
        for change in line_changes(case.line, case.need, reader, key):
            yield _changed(case, change)
        if key in WEAK:
            yield from _throughout(case, reader)
        if key == "fast":
            yield from _own_speed(case, reader)
        return
    if key in HEAT:
        yield from _cooler(case, reader)
        yield from _other_kind(case, reader)
    if key in OVER:
        yield from _less_pressure(case, reader)
    if key == "outlet-over-limit":
        yield from _reduced(case, reader)
    if key in WEAK:
        if _chosen(case) is None:
            yield from _other_kind(case, reader)
        yield from _more_pressure(case, reader)
        yield from _less_flow(case, reader)


# Pipe sections as they are ---------------------------------------------------------------------


def _changed(case: Case, change: Change) -> Tried[Case]:
    """The case with a line's change made; a pipe is changed once, in kind or in size."""
    after = replace(case, line=change.line, need=change.need)
    way = "pipe" if change.way in ("kind", "wider") else change.way
    return Tried(way, change.text, after, change.does, change.pipe, change.laid)


def _throughout(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """The one size of the chosen kind that works for all of the line."""
    found = next((trial for trial in sizing.trials(case) if trial.sure), None)
    if found is not None:
        label, left = found.pipe.label, reader.show(found.left, "pressure")
        after = replace(case, line=found.line)
        every = frozenset(range(len(found.line.sections)))
        yield Tried("throughout", f"One size throughout: {label} leaves {left}.", after,
                    pipe=f"Use {label} throughout.", laid=every)  # fmt: skip


def _own_speed(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """Less flow, down to the highest speed that the reader allows."""
    speed = case.line.speed(case.need.flow_m3s)
    flow = round_down(case.need.flow_m3s * case.fastest / speed, "flow", reader)
    if flow > LEAST_FLOW:
        text = f"Open less at once: {reader.show(flow, 'flow')} or less is slow enough."
        yield Tried("flow", text, replace(case, need=replace(case.need, flow_m3s=flow)))


# One size that is asked for --------------------------------------------------------------------


def _cooler(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    line = case.line
    if line.heat_k <= line.temperature_k:
        return
    shown = reader.show(line.temperature_k, "temperature")
    does = f"Bury or shade the pipe, so that it gets no hotter than {shown}."
    yield _sized("cooler", does, replace(case, line=replace(line, hottest_k=None)), reader)


def _sized(way: str, does: str, after: Case, reader: Reader) -> Tried[Case]:
    """A change and the size it comes to."""
    chosen = _chosen(after)
    left = "" if chosen is None else reader.show(chosen.left, "pressure")
    text = f"{does} Then {chosen.pipe.label} leaves {left}." if chosen else does
    return Tried(way, text, after, does)


def _other_kind(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """Another kind: by the inch for inch pipe, plastic before metal."""
    for kind in other_kinds(pipes.sizes(case.kind)[0]):
        after = case.in_kind(kind)
        chosen = _chosen(after)
        if chosen is not None:
            left, label = reader.show(chosen.left, "pressure"), chosen.pipe.label
            yield Tried("kind", f"Use {label}: it leaves {left}.", after, f"Use {label}.")


def _more_pressure(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """The start pressure with which a size of modest friction works."""
    trial = sizing.modest(case, sizing.trials(case))
    needed = pressure_for(trial.line, case.need, reader)
    if needed is None or needed <= case.line.start_pa:
        return
    highest = case.line.highest_pa
    most = None if highest is None else max(highest, needed)
    after = replace(case, line=replace(case.line, start_pa=needed, highest_pa=most))
    chosen, shown = _chosen(after), reader.show(needed, "pressure")
    does = f"Raise the pressure at the start to {shown}."
    if chosen is None:
        yield Tried("pressure", does, after)
        return
    high = case.line.static <= case.need.sure_pa
    cause = "The height is the bottleneck, not the pipe. " if high else ""
    left = reader.show(chosen.left, "pressure")
    text = f"{cause}With {shown} at the start, {chosen.pipe.label} leaves {left}."
    yield Tried("pressure", text, after, does)


def _less_pressure(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """A lower start, where that still leaves enough."""
    trial = sizing.modest(case, sizing.trials(case))
    needed = pressure_for(trial.line, case.need, reader)
    if needed is None or needed >= case.line.most_start:
        return
    after = replace(case, line=replace(case.line, start_pa=needed, highest_pa=None))
    does = f"Lower the pressure at the start to {reader.show(needed, 'pressure')}."
    if needed == 0:
        does = "Leave the pump out: the drop alone is enough."
    yield _sized("pressure", does, after, reader)


def _reduced(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """A pressure-reducing valve at the outlet."""
    section = case.line.sections[-1]
    for held in practice.REDUCED_TO:
        if section.reducer is not None or held < case.need.sure_pa:
            continue
        valve = (held, practice.REDUCER_FLOW, practice.REDUCER_LOSS)
        line = case.line.with_section(len(case.line.sections) - 1, replace(section, reducer=valve))
        does = (
            f"Fit a pressure-reducing valve set to {reader.show(held, 'pressure')} before the "
            "outlet and a relief valve after it."
        )
        yield _sized("valve", does, replace(case, line=line), reader)


def _less_flow(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """The most that the widest size which is strong enough carries."""
    tries = sizing.trials(case)
    strong = [t for t in tries if not {sizing.WEAK, sizing.HOT} & set(t.reasons)]
    if not strong:
        return
    most = sizing.largest_flow(case, strong[-1], case.need.sure_pa)
    flow = round_down(most, "flow", reader)
    if LEAST_FLOW < flow < case.need.flow_m3s:
        shown, label = reader.show(flow, "flow"), strong[-1].pipe.label
        after = replace(case, need=replace(case.need, flow_m3s=flow))
        text = f"Open less at once: {label} carries {shown}."
        yield Tried("flow", text, after, f"Open less at once: {shown} or less.")


# In words of the form --------------------------------------------------------------------------


def _linked(case: Case, after: Case, values: Values, reader: Reader) -> Link | None:
    """The sheet with changes made; None where the form has no words for them."""
    chosen = None if case.counted or not after.line.reduced else _chosen(after)
    line = chosen.line if chosen else after.line
    texts = given(case, values, reader) | {
        "pressure": exact(line.start_pa, "pressure", reader),
        "flow": exact(after.need.flow_m3s, "flow", reader),
        "hottest": exact(line.heat_k, "temperature", reader),
        "highest": exact(line.highest_pa, "pressure", reader),
        "kind": after.kind,
    }
    try:
        if case.counted or line.reduced:
            texts["line"] = as_text(line.sections, reader)
    except InputError:
        return None
    return Link(TRY, "pipe", texts)
