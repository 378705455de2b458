"""What would put a line right: each change tried on the whole line and kept only if it works.

A change is kept where what it is for is gone and nothing new is wrong.  Pipes go up three sizes at
most; where no pipe can help, since the height uses the pressure, none is offered.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.pipe import fittings, pipes
from calc.pipe.line import larger_pipes
from calc.sheets.parts.line_judge import Need, falling_valves, the, too_hot
from calc.sheets.parts.tank_sizes import round_up

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.pipe.line import Line
    from calc.units import Reader


MOST_START = 20e5  # Pa, more is no repair of a house's supply; our choice
LEAST_SHARE = 0.1  # of the flow, below which "open less" is no advice; our choice
HOSES = frozenset({"hose", "layflat", "suction-hose"})  # not for a line that stays under pressure


@dataclass(frozen=True)
class Change:
    """A line and need after one change, and the sentence that tells of it.

    way: of the changes that go one way ("wider", "pressure") the first that is enough counts;
    does: the same as one of several changes, without what it gives ("": ``text``); pipe, laid: the
    pipe that it lays, as a sentence apart, and the indices of the sections it lays it in.
    """

    way: str
    text: str
    line: Line
    need: Need
    name: str = ""  # of the pipe it brings
    does: str = ""
    pipe: str = ""
    laid: frozenset[int] = frozenset()


def line_changes(line: Line, need: Need, reader: Reader, key: str) -> Iterator[Change]:
    """What is tried for a finding of a line (by its key), the likely cheapest first."""
    if key in _CHANGES:
        yield from _CHANGES[key](line, need, reader)


def round_down(value: float, quantity: str, reader: Reader, digits: int = 3) -> float:
    """SI value of the number with ``digits`` figures in the reader's unit, not above ``value``."""
    unit = reader.unit(quantity)
    number = unit.from_si(value)
    if number <= 0:
        return 0.0
    place = 10.0 ** (math.floor(math.log10(number)) - digits + 1)
    return unit.to_si(round(math.floor(number / place + 1e-9) * place, 12))


# Too little pressure -------------------------------------------------------------------------


def _stronger(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """Against too little pressure: wider pipe, less open at once, more pressure.

    Where the height takes too much no wider pipe is enough, but more pressure may be too much for
    the outlet: then both together.
    """
    if height_allows(line, need):
        yield from _wider(line, need, reader)
        yield from _less_flow(line, need, reader)
        yield from _more_pressure(line, need, reader)
        return
    yield from _more_pressure(line, need, reader)
    for change in _wider(line, need, reader):
        yield from _more_with(change, reader)


def _more_with(change: Change, reader: Reader) -> Iterator[Change]:
    """A wider pipe, and the pressure at the start that is then enough."""
    line, need = change.line, change.need
    needed = pressure_for(line, need, reader)
    if needed is None or needed <= line.start_pa:
        return
    raised = replace(line.with_start(needed), highest_pa=_highest(line, needed))
    shown = reader.show(needed, "pressure")
    left = reader.show(raised.left(need.flow_m3s), "pressure")
    pipe = change.text.partition(" leaves ")[0].replace("Every", "every")
    said = (
        "The height is the bottleneck, and the pipe is narrow for it. "
        f"With {shown} at the start, {pipe} leaves {left}."
    )
    does = " ".join(
        one for one in (change.does, f"Raise the pressure at the start to {shown}.") if one
    )
    yield replace(change, way="pressure", text=said, line=raised, does=does)


def height_allows(line: Line, need: Need) -> bool:
    """Whether still water leaves enough, so that a wider pipe could."""
    return line.static > max(need.sure_pa, 0.0) and line.crest(0.0) >= 0.0


def _wider(line: Line, need: Need, reader: Reader, at: int | None = None) -> Iterator[Change]:
    """One section, the one that loses the most, then every section, each up to three sizes.

    at: index of the section to widen instead.
    """
    worst = line.worst(need.flow_m3s) if at is None else at
    section = line.sections[worst]
    for pipe in larger_pipes(section.pipe, practice.MOST_SIZES_UP):
        changed = line.with_pipe(pipe, worst)
        left = reader.show(changed.left(need.flow_m3s), "pressure")
        where = f" for {the(section).lower()}" if section.name else ""
        text, uses = f"{pipe.label}{where} leaves {left}.", f"Use {pipe.label}{where}."
        laid = frozenset({worst})
        yield Change("wider", text, changed, need, pipe=uses, laid=laid)
    if line.single is None:
        yield from _wider_throughout(line, need, reader)


def _wider_throughout(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    for up in range(1, practice.MOST_SIZES_UP + 1):
        sections = []
        for section in line.sections:
            wider = larger_pipes(section.pipe, up)
            sections.append(replace(section, pipe=wider[-1]) if wider else section)
        changed = replace(line, sections=tuple(sections))
        left = reader.show(changed.left(need.flow_m3s), "pressure")
        sizes = "one size" if up == 1 else f"{up} sizes"
        text = f"Every pipe section {sizes} wider leaves {left}."
        does = f"Make every pipe section {sizes} wider."
        yield Change("all", text, changed, need, does=does)


def _less_flow(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    flow = round_down(line.largest_flow(need.sure_pa, need.flow_m3s), "flow", reader)
    if flow > LEAST_SHARE * need.flow_m3s:
        shown = reader.show(flow, "flow")
        said = f"Open less at once: with {shown} or less, the pressure is enough."
        does = f"Open less at once: {shown} or less."
        yield Change("flow", said, line, replace(need, flow_m3s=flow), does=does)


def _more_pressure(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    needed = pressure_for(line, need, reader)
    if needed is None:
        return
    raised = replace(line.with_start(needed), highest_pa=_highest(line, needed))
    cause = "" if height_allows(line, need) else "The height is the bottleneck, not the pipe. "
    left = reader.show(raised.left(need.flow_m3s), "pressure")
    shown = reader.show(needed, "pressure")
    start, does = f"{cause}With {shown} at the start", f"Raise the pressure at the start to {shown}"
    yield Change("pressure", f"{start} you get {left}.", raised, need, does=f"{does}.")
    for change in _tougher(raised, need, reader):
        got = reader.show(change.line.left(need.flow_m3s), "pressure")
        said = f"{start} and {change.name} you get {got}."
        yield replace(change, way="pressure", text=said, does=f"{does}.")


def pressure_for(line: Line, need: Need, reader: Reader) -> float | None:
    """The start pressure that is enough, rounded up in the reader's unit, Pa; None for none
    that a house could have."""
    try:
        needed = line.start_for(max(need.sure_pa, need.works_pa + 1.0), need.flow_m3s)
    except InputError:  # a reducing valve on the way holds less
        return None
    over_crest = line.start_pa - min(line.crest(0.0), line.crest(need.flow_m3s))
    found = round_up(max(needed, over_crest, 0.0), "pressure", reader)
    return found if found <= MOST_START else None


def _highest(line: Line, start_pa: float) -> float | None:
    return None if line.highest_pa is None else max(line.highest_pa, start_pa)


# Too much pressure or heat -------------------------------------------------------------------


def _cooler(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    if line.heat_k > line.temperature_k:
        shown = reader.show(line.temperature_k, "temperature")
        cooler = replace(line, hottest_k=None)
        yield Change("cooler", f"Bury or shade the pipe, so that it gets no hotter than {shown}.",
                     cooler, need)  # fmt: skip


def _tougher(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """Another kind, no narrower, where a section is over its rating or too hot for its kind."""
    bad = [
        at
        for at, stress in enumerate(line.stresses())
        if stress.over or too_hot(line, stress.section.pipe)
    ]
    for kind in other_kinds(line.sections[bad[0]].pipe) if bad else ():
        changed = line
        for at in bad:
            old = line.sections[at].pipe
            wide = as_wide(kind, old)
            if wide is None:
                break
            changed = changed.with_pipe(wide, at)
        else:
            pipe = changed.sections[bad[0]].pipe
            where = "" if line.single else f" for pipe {line.sections[bad[0]].name}"
            if len(bad) > 1:
                where += f" and {len(bad) - 1} more"
            said = f"{pipe.label}{where} is made for this pressure and heat."
            uses = f"Use {pipe.label}{where}."
            laid = frozenset(bad)
            yield Change("kind", said, changed, need, pipe.label, pipe=uses, laid=laid)


def as_wide(kind: str, pipe: pipes.Pipe) -> pipes.Pipe | None:
    """The first size of another kind that is no narrower, give or take 3 %; None for none."""
    wide = (one for one in pipes.sizes(kind) if one.inside_m >= 0.97 * pipe.inside_m)
    return next(wide, None)


def other_kinds(pipe: pipes.Pipe) -> list[str]:
    """Other kinds, hoses apart: by the inch for inch pipe, plastic before metal."""
    inch = pipe.name.endswith(" in")
    kinds = [kind for kind in pipes.KINDS if kind not in {pipe.kind, *HOSES}]
    metal = ("copper", "steel")
    return sorted(
        kinds,
        key=lambda k: (pipes.sizes(k)[0].name.endswith(" in") != inch, k.startswith(metal)),
    )


def _less_pressure(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """A lower start, where that still leaves enough."""
    needed = pressure_for(line, need, reader)
    if needed is None or needed >= line.most_start:
        return
    lower = replace(line.with_start(needed), highest_pa=None)
    left = reader.show(lower.left(need.flow_m3s), "pressure")
    shown = reader.show(needed, "pressure")
    said = f"With {shown} at the start you still get {left}."
    does = f"Lower the pressure at the start to {shown}."
    if needed == 0:
        said = f"The drop alone is enough, without a pump: you get {left}."
        does = "Leave the pump out: the drop alone is enough."
    yield Change("pressure", said, lower, need, does=does)


def _reduced(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """A pressure-reducing valve at the outlet."""
    last = line.sections[-1]
    if last.reducer is not None:
        return
    for held in practice.REDUCED_TO:
        valve = (held, practice.REDUCER_FLOW, practice.REDUCER_LOSS)
        changed = line.with_section(len(line.sections) - 1, replace(last, reducer=valve))
        if changed.left(need.flow_m3s) < need.sure_pa:
            continue
        left = reader.show(changed.left(need.flow_m3s), "pressure")
        does = (
            f"Fit a pressure-reducing valve set to {reader.show(held, 'pressure')} before the "
            "outlet and a relief valve after it."
        )
        yield Change("valve", f"{does} That leaves {left}.", changed, need, does=does)
        return


def _too_strong(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    yield from _cooler(line, need, reader)
    yield from _less_pressure(line, need, reader)
    yield from _tougher(line, need, reader)


def _too_hot(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    yield from _cooler(line, need, reader)
    yield from _tougher(line, need, reader)


def _at_outlet(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    yield from _reduced(line, need, reader)
    yield from _less_pressure(line, need, reader)


def _gentler(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """Against low pressure at a crest: wider pipe, or more pressure."""
    for change in (*_wider(line, need, reader), *_more_pressure(line, need, reader)):
        least = reader.show(change.line.crest(need.flow_m3s), "pressure")
        said = change.text.partition(" leaves ")[0].partition(" you get ")[0]
        yield replace(change, text=f"{said}: the highest point then has {least}.")


def _slower(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """Against fast water: wider pipe where it is fastest, or less open at once."""
    speeds = [line.speed_in(section, need.flow_m3s) for section in line.sections]
    yield from _wider(line, need, reader, speeds.index(max(speeds)))
    flow = 0.999 * need.flow_m3s * practice.SPEED_CARE / max(speeds)
    less = replace(need, flow_m3s=round_down(flow, "flow", reader))
    shown = reader.show(less.flow_m3s, "flow")
    said = f"Open less at once: {shown} or less is slow enough."
    yield Change("flow", said, line, less, does=f"Open less at once: {shown} or less.")


def _valve(line: Line, need: Need, reader: Reader) -> Iterator[Change]:
    """Against a valve that falls off near its rated flow: set it higher, or open less at once."""
    low = falling_valves(line, need)
    for part in fittings.PARTS:
        held = part.reducer[0] if part.reducer is not None else 0.0
        changed = line
        for at in low:
            section = line.sections[at]
            if section.reducer is None or section.reducer[0] >= held:
                break
            changed = changed.with_section(at, replace(section, reducer=part.reducer))
        else:
            shown = reader.show(held, "pressure")
            yield Change("valve", f"Set the pressure-reducing valve to {shown}.", changed, need)
    rated = [one.reducer[1] / one.share for at in low if (one := line.sections[at]).reducer]
    flow = round_down(0.999 * practice.REDUCER_NEAR * min(rated), "flow", reader)
    said = f"Open less at once: {reader.show(flow, 'flow')} or less."
    yield Change("flow", said, line, replace(need, flow_m3s=flow))


_CHANGES = {
    "short": _stronger,
    "no-water": _stronger,
    "over-rating": _too_strong,
    "too-hot": _too_hot,
    "outlet-over-limit": _at_outlet,
    "negative-pressure": _gentler,
    "below-vacuum": _gentler,
    "fast": _slower,
    "reducer-fall": _valve,
}
