"""What is tried for too much pressure or heat, and for a suction line that lacks NPSH."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice, water
from calc.network.findings import npsh_available, npsh_required, outlets, ratings
from calc.network.static import highest_pressures
from calc.pipe import fittings, pipes
from calc.sheets.keep_up.case import Case
from calc.sheets.keep_up.cause import between
from calc.sheets.keep_up.changed import valve_words
from calc.sheets.keep_up.options import (
    LENGTH_STEP,
    Option,
    larger,
    pump_side,
    set_down,
    set_up,
    with_sections,
    with_source,
)
from calc.sheets.keep_up.pump_signs import SOFT, most_at_pump, small_draws
from calc.sheets.parts import guard
from calc.sheets.parts.line_fixes import other_kinds
from calc.sheets.parts.small_draw import remedies
from calc.site.supply import PUMP, PUMP_PART, SUCTION, Supply, fold

if TYPE_CHECKING:
    from calc.network.findings import Trouble
    from calc.pipe.pipes import Pipe
    from calc.units import Reader

SHORTEST = 1.0  # m, shortest suction pipe thought of; our choice
RIGID = {"metric": "pe100-sdr11", "us": "pvc40"}  # the kind of suction pipe to offer first
LOWEST = -50.0  # m, lift the form takes at least
SAME_BORE = 0.97  # of the bore, that counts as no narrower; our choice
HELD = ("r30", "r20", "r15")  # pressure-reducing valves offered, the highest first


# Rating and heat --------------------------------------------------------------------------------


def cooler(case: Case, _reader: Reader) -> Iterator[Option]:
    """Pipe no hotter than its water."""
    network = case.after.network
    if network.heat_k > network.temperature_k:
        text = "Bury or shade the pipe, so that it gets no hotter than its water"
        yield Option(text, with_source(case.supply, hottest_k=None))


def set_lower(case: Case, reader: Reader) -> Iterator[Option]:
    """The set pressure down to what ratings, codes and the pump allow."""
    source = case.supply.pumping
    if source is None or source.set_pa is None:
        return
    set_pa = source.set_pa
    over = [most_at_pump(case, source) * 0.99 - set_pa]
    over += [one.limit - one.value for one in ratings(case.after.network)
             if one.kind == "over-rating"]  # fmt: skip
    highest = highest_pressures(case.after.network)
    over += [
        practice.HIGHEST_AT_OUTLET - highest[outlet.node] for outlet in case.after.network.outlets
    ]
    over += [0.99 * (one.limit or 0.0) - (one.value or 0.0) for one in _driven(case)]
    lower = set_down(set_pa + min(over), reader, source.sensed_pa)
    if 0 < lower < set_pa:
        shown = reader.show(lower - source.sensed_pa, "pressure")
        yield Option(f"Lower the set pressure to {shown}", with_source(case.supply, set_pa=lower))


def _driven(case: Case) -> list[Trouble]:
    """Drip zones with more pressure than drippers are made for."""
    return [one for one in outlets(case.after) if one.kind == "over"]


def tougher(case: Case, _reader: Reader) -> Iterator[Option]:
    """Another kind of pipe, no narrower, wherever one is over its rating or too hot."""
    found = ratings(case.after.network)
    bad = {one.row for one in found if one.kind in ("over-rating", "too-hot")}
    bad = bad or {one.row for one in ratings(case.after.network)
                  if one.kind == "shut-off-over-rating"}  # fmt: skip
    if not bad:
        return
    one = case.after.network.run(min(bad)).pipe
    for kind in other_kinds(one):
        chosen = {}
        for name in bad:
            bore = case.after.network.run(name).pipe.inside_m
            wide = [pipe for pipe in pipes.sizes(kind) if pipe.inside_m >= SAME_BORE * bore]
            chosen[name] = wide[0] if wide else None
        if None in chosen.values():
            continue
        yield Option(_pipe_words(chosen), _with_pipes(case, chosen))


def _pipe_words(chosen: dict[str, Pipe]) -> str:
    name = min(chosen)
    where = "as the suction pipe" if name == SUCTION else f"from {between(name)}"
    more = f" and {len(chosen) - 1} more" if len(chosen) > 1 else ""
    return f"Use {chosen[name].label} {where}{more}"


def _with_pipes(case: Case, chosen: dict[str, Pipe]) -> Supply:
    rows, supply = case.built.section_rows, case.supply
    changed = {rows[name]: {"pipe": pipe} for name, pipe in chosen.items() if name != SUCTION}
    if SUCTION in chosen:
        supply = with_source(supply, suction_pipe=chosen[SUCTION])
    return with_sections(supply, changed)


def relief(case: Case, _reader: Reader) -> Iterator[Option]:
    """A relief valve, against a control that fails."""
    rated = [one.limit for one in ratings(case.after.network)
             if one.kind == "shut-off-over-rating"]  # fmt: skip
    if rated and case.supply.pumping is not None:
        text = "Fit a relief valve at the pump that opens below the rating of every pipe"
        yield Option(text, with_source(case.supply, relief=True))


def guarded(case: Case, _reader: Reader) -> Iterator[Option]:
    """What a displacement pump must have."""
    yield Option(guard.FIT, with_source(case.supply, guard=guard.BOTH))


# Over the codes' limit at an outlet -------------------------------------------------------------


def reduced(case: Case, reader: Reader) -> Iterator[Option]:
    """Pressure-reducing valves on the sections that end where the pressure is too high."""
    highest = highest_pressures(case.after.network)
    driven = {one.row for one in _driven(case)}
    limit = practice.HIGHEST_AT_OUTLET * (1 + 1e-9)
    over = {tap.node for tap in case.taps if highest[tap.node] > limit or tap.name in driven}
    rows = {
        at: row
        for at, row in enumerate(case.supply.sections)
        if fold(row.end) in {fold(node) for node in over}
    }
    if not rows or any(row.part != "none" for row in rows.values()):
        return
    first = next(iter(rows.values())).end
    where = f"{first}" + (f" and {len(over) - 1} more points" if len(over) > 1 else "")
    for key in HELD:
        valve = fittings.BY_KEY[key].reducer
        text = valve_words(valve[0], where, reader) if valve is not None else ""
        yield Option(text, with_sections(case.supply, {at: {"part": key} for at in rows}))


# Suction ----------------------------------------------------------------------------------------


def wider_suction(case: Case, reader: Reader) -> Iterator[Option]:
    """A wider suction pipe; one that keeps its shape where the kind is at fault."""
    for pipe in _suction_pipes(case, reader):
        text = f"Use {pipe.label} as the suction pipe"
        yield Option(text, with_source(case.supply, suction_pipe=pipe))


def _suction_pipes(case: Case, reader: Reader) -> list[Pipe]:
    old = pump_side(case.supply).suction_pipe
    if old.kind in SOFT:
        firm = [pipe for pipe in pipes.sizes(RIGID[reader.system]) if pipe.inside_m >= old.inside_m]
        return firm[: practice.MOST_SIZES_UP]
    found = [larger(old, up) for up in range(1, practice.MOST_SIZES_UP + 1)]
    return list(dict.fromkeys(pipe for pipe in found if pipe is not None))


def nearer(case: Case, reader: Reader) -> Iterator[Option]:
    """The pump as near to the water as the lift allows, at its own height."""
    source = pump_side(case.supply)
    least = max(abs(source.lift_m), SHORTEST)
    moved = source.suction_length_m - least
    if moved <= 0:
        return
    first = {
        at: {"length_m": row.length_m + moved}
        for at, row in enumerate(case.supply.sections)
        if fold(row.start) == fold(PUMP)
    }
    new = with_source(with_sections(case.supply, first), suction_length_m=least)
    shown = reader.show(moved, "length")
    yield Option(f"Place the pump {shown} nearer to the water, at its own height", new)


def lower(case: Case, reader: Reader) -> Iterator[Option]:
    """The pump lower, set higher by as much; in a wider suction pipe where that is not enough."""
    source = pump_side(case.supply)
    pipes_tried = [source.suction_pipe, *_suction_pipes(case, reader)]
    for pipe in pipes_tried:
        supply = with_source(case.supply, suction_pipe=pipe)
        also = "" if pipe is pipes_tried[0] else f" and use {pipe.label} as the suction pipe"
        for share in (1.0, 1.5):
            down = _too_high(case) * share
            step = LENGTH_STEP[reader.system]
            down = step * math.ceil(down / step + 0.2)
            if source.lift_m - down < LOWEST:
                return
            new, shown = _lowered(supply, down, case, reader), reader.show(down, "length")
            at = pump_side(new).reads_pa
            held = "" if at is None else f", set to {reader.show(at, 'pressure')}"
            yield Option(f"Place the pump {shown} lower{held}{also}", new)


def _too_high(case: Case) -> float:
    """How much too high the pump is, by NPSH or by practice, m."""
    source, solution = pump_side(case.supply), case.after
    usual = practice.suction_lift(water.air_pressure(source.altitude_m))
    pump = solution.network.pump(PUMP_PART)
    needed = npsh_required(solution, pump)
    spare = 0.0
    if needed is not None:
        spare = needed + practice.NPSH_MARGIN - npsh_available(solution, pump.start)
    return max(source.lift_m - usual, spare, 0.0)


def _lowered(supply: Supply, down: float, case: Case, reader: Reader) -> Supply:
    """The supply with its pump so much lower: every height above it grows."""
    source = pump_side(supply)
    set_pa, sensed_m = source.set_pa, source.sensed_m
    if set_pa is not None and sensed_m:  # its sensor stays where it is
        set_pa, sensed_m = set_pa + case.weight * down, sensed_m + down
    elif set_pa is not None:
        set_pa = set_up(set_pa + case.weight * down, reader)
    lower = replace(source, lift_m=source.lift_m - down, set_pa=set_pa, sensed_m=sensed_m)
    return replace(
        supply,
        source=lower,
        sections=tuple(replace(r, height_m=r.height_m + down) for r in supply.sections),
        tanks=tuple(replace(r, level_m=r.level_m + down) for r in supply.tanks),
    )


# A small draw ---------------------------------------------------------------------------------


def small_tank(case: Case, reader: Reader) -> Iterator[Option]:
    """What keeps the starts at a small draw within those allowed: the usual pre-charge, a tank."""
    for small, _ in small_draws(case):
        for text, charge, tank in remedies(small, reader):
            yield Option(text, with_source(case.supply, charge_pa=charge, tank_m3=tank))


SUCTION_MAKERS = (wider_suction, nearer, lower)
SETTING = (set_lower,)
RATING = (cooler, set_lower, tougher)
GUARD = (guarded,)
FAILING = (cooler, set_lower, relief, tougher)
OUTLET = (reduced, set_lower)
