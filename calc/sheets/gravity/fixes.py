"""What would put a gravity line right, each change judged anew as the whole sheet judges."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page import row_text
from calc.page.answer import TRY, Link
from calc.page.findings import Fix
from calc.pipe.line import larger_pipes
from calc.sheets.gravity.judge import findings
from calc.sheets.gravity.sheet import FIELDS
from calc.sheets.parts import carry
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fix_search import Search, Tried
from calc.sheets.parts.line_fixes import LEAST_SHARE, as_wide, other_kinds, round_down
from calc.sheets.parts.line_judge import Need
from calc.sheets.parts.needs import levels
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.gravity.case import Case
    from calc.units import Reader

MOST_TANKS = 12  # on one line, tried; our choice
LOWER_BY = 0.1  # m, that a crest is laid below the pressure line; our choice
WHOLE = frozenset({0})  # sections laid anew: the line is one pipe
NONE = "No change we tried is enough; a pump may be."


def fixes(case: Case, values: Values, reader: Reader) -> tuple[Fix, ...]:
    """``Fix``es of everything wrong, each reaching Works or saying what it leaves."""
    search: Search[Case] = Search(
        judged=lambda one: findings(one, reader),
        changes=lambda one, key: _changes(one, key, reader),
        linked=lambda one: _linked(case, one, values, reader),
        gives=lambda one: _gives(one, reader),
    )
    return search.told(case, NONE)


def _gives(case: Case, reader: Reader) -> str:
    return f"That leaves {reader.show(case.left, 'pressure')} at the outlet."


def _changes(case: Case, key: str, reader: Reader) -> Iterator[Tried[Case]]:
    if key in {"short", "no-water", "sucks", "below-vacuum", "fast"}:
        yield from _wider(case, reader)
    if key in {"sucks", "below-vacuum", "no-water"}:
        yield from _lower(case, reader)
    if key == "spring-short":
        yield from _gathered(case, reader)
    if key in {"short", "no-water", "sucks", "fast", "spring-short"}:
        yield from _less(case, reader)
    if key in {"over-rating", "outlet-over-limit"}:
        yield from _breaks(case, reader)
    if key in {"over-rating", "too-hot"}:
        yield from _tougher(case, reader)


def _wider(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    for pipe in larger_pipes(case.fall.pipe, practice.MOST_SIZES_UP):
        changed = case.with_pipe(pipe)
        left = reader.show(changed.left, "pressure")
        yield Tried("wider", f"{pipe.label} leaves {left}.", changed,
                    pipe=f"Use {pipe.label}.", laid=WHOLE)  # fmt: skip


def _less(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """Less flow: what arrives with pressure to spare, and no more than the spring gives."""
    flow = 0.999999 * case.fall.largest_flow(case.need.sure_pa)
    if case.spring is not None:
        flow = min(flow, case.spring)
    speed = case.section.speed(case.flow)
    if speed >= practice.SPEED_CARE:
        flow = min(flow, 0.999 * case.flow * practice.SPEED_CARE / speed)
    flow = round_down(flow, "flow", reader)
    if LEAST_SHARE * case.flow < flow < case.flow:
        shown = reader.show(flow, "flow")
        text = f"Open less at once: with {shown} or less it is enough."
        yield Tried("flow", text, case.with_flow(flow), f"Open less at once: {shown} or less.")


def _gathered(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """The spring runs into a tank at the outlet all day; what is asked comes from that."""
    if not case.spring:
        return
    need = Need(case.spring, *levels("trough", None))
    day = reader.show(case.spring * DAY, "volume")
    text = f"Let the spring fill a tank at the outlet day and night, {day} a day, and draw on that."
    yield Tried("gathered", text, replace(case, need=need, use="trough"))


def _lower(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """The crest laid on the pressure line."""
    if not case.counted:
        return
    fall = case.fall
    spots = tuple(
        replace(one, height_m=one.height_m - LOWER_BY) if one != old else one
        for one, old in zip(fall.lowered(case.flow), fall.spots, strict=True)
    )
    moved = [(a, b) for a, b in zip(fall.spots, spots, strict=True) if a != b]
    if not moved:
        return
    old, new = max(moved, key=lambda pair: pair[0].height_m - pair[1].height_m)
    by = reader.show(old.height_m - new.height_m, "length", 2)
    place = reader.show(old.distance_m, "length")
    also = " and the other high points" if len(moved) > 1 else ""
    text = f"Lay the pipe {by} lower {place} from the source{also}, or lead it round the hill."
    yield Tried("lower", text, replace(case, fall=replace(fall, spots=spots)))


def _breaks(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """More tanks, or valves where there are some."""
    if case.drop_m <= 0:
        return
    kind = "pressure-reducing valve" if case.kept == "valve" else "break-pressure tank"
    for count in range(len(case.fall.breaks) + 1, MOST_TANKS + 1):
        changed = case.with_breaks(count)
        most = reader.show(changed.fall.most.pressure_pa, "pressure")
        several = f"a {kind}" if count == 1 else f"{count} {kind}s"
        heights = reader.show(case.drop_m / (count + 1), "length")
        text = (
            f"Put {several} on the way, {heights} of height apart: the pipe then carries {most} at "
            "most."
        )
        yield Tried("breaks", text, changed, f"Put {several} on the way.")


def _tougher(case: Case, reader: Reader) -> Iterator[Tried[Case]]:
    """Another kind, no narrower."""
    old = case.fall.pipe
    for kind in other_kinds(old):
        pipe = as_wide(kind, old)
        if pipe is not None:
            text = f"{pipe.label} is made for this pressure and heat."
            uses = f"Use {pipe.label}."
            yield Tried("kind", text, case.with_pipe(pipe), pipe=uses, laid=WHOLE)


def _linked(case: Case, after: Case, values: Values, reader: Reader) -> Link:
    """The sheet with changes made."""
    fall = after.fall
    changed = {"flow": exact(after.flow, "flow", reader)}
    if fall.pipe != case.fall.pipe:
        changed |= {"kind": fall.pipe.kind, fall.pipe.kind: fall.pipe.size}
    if fall.breaks != case.fall.breaks:
        changed |= {"broken": after.kept, "breaks": str(len(fall.breaks))}
    if after.use != case.use:
        changed["use"] = after.use
    texts = carry.texts(FIELDS, values, **changed)
    if case.counted:
        texts["profile"] = row_text.encode(
            (
                exact(one.distance_m, "length", reader),
                exact(one.height_m + case.datum_m, "length", reader),
            )
            for one in fall.spots
        )
    return Link(TRY, "gravity", texts)
