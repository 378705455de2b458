"""What to try for a garden on drip: zones, lines, drippers, hours, a tank, less area."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.pipe import pipes
from calc.sheets.drip.case import MET
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import as_wide, round_down
from calc.sheets.parts.tank_sizes import at_least, round_up
from calc.sheets.parts.tries import Change
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.drip.case import Case
    from calc.sheets.drip.zone import Manifold
    from calc.units import Reader

FLOW, TIME, WATER = frozenset({"zone-flow"}), frozenset({"too-long"}), frozenset({"too-little"})
ZONE = frozenset({"zone-uneven", "emission", "short", "manifold-fast"})
EVEN = frozenset({"uneven", "emission", "short", "fast", "zone-uneven"})
RATED, STRONGER = frozenset({"over-rating"}), "pe100-sdr11"  # rated above any field's pressure
OVER, FILTER = frozenset({"over-pressure"}), frozenset({"no-filter"})
SPARE = 1 + 1e-6  # so that a number rounded for a link is still enough
LEAST_SHARE = 0.1  # of an area, below which to water less is no advice; our choice
LEAST_MADE = 3.0  # %, variation of new drippers, below which none are sold; our choice
MOST_PRESSURE = 4e5  # Pa, more is no pressure for drip lines; our choice
NONE = (
    "No single change we tried is enough. Shorter lines, wider ones, more hours, more flow and "
    "less area each help: combine them."
)


def changes(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    if not case.filtered:
        yield Change("Fit a filter of 120 mesh (0.13 mm) or finer.", FILTER, {"filter": "yes"})
    yield from _zones(case, reader)
    yield from _reduced(case, reader)
    yield from _manifold(case, reader)
    yield from _shorter(case, reader)
    yield from _wider(case, reader)
    yield from _steady(case, reader)
    yield from _better(case)
    yield from _pressed(case, reader)
    yield from _longer_hours(case)
    yield from _tank(case, reader)
    yield from _flow(case, reader)
    yield from _less(case, reader)
    yield from _yield(case, reader)


# Flow and zones -------------------------------------------------------------------------------


def _zones(case: Case, reader: Reader) -> Iterator[Change]:
    """As many as the source can feed, or as few: a zone less saves its time."""
    if case.asked is None or case.per_zone < 1 or case.fitting == case.asked:
        return
    takes = reader.show(replace(case, asked=None).zone_flow, "flow")
    zones = "one zone" if case.fitting == 1 else f"{case.fitting} zones"
    text = f"Make {zones}, one after another: the largest takes {takes}."
    yield Change(text, FLOW | TIME, {"zones": str(case.fitting)})


def _anew(case: Case) -> dict[str, str]:
    """Zones in mind are counted anew where lines or flow change."""
    return {} if case.asked is None else {"zones": ""}


def _flow(case: Case, reader: Reader) -> Iterator[Change]:
    """A source that waters all in the hours, or feeds the zones there are."""
    at_once = case.zone_flow
    if case.time > case.hours:
        zones = math.floor(case.hours / case.zone_time * MET)
        if zones < 1:
            return
        at_once = math.ceil(case.count / zones) * case.line_flow
    if at_once <= case.flow:
        return
    flow = round_up(at_once * SPARE, "flow", reader)
    text = f"Find a pump that gives {reader.show(flow, 'flow')} at the same pressure."
    texts = {"flow": exact(flow, "flow", reader)}
    if case.time > case.hours:
        texts |= _anew(case)
    yield Change(text, FLOW | TIME, texts)


# The manifold ---------------------------------------------------------------------------------


def _manifold(case: Case, reader: Reader) -> Iterator[Change]:
    """Fed in the middle, wider, or with fewer lines on it."""
    one = case.manifold
    if case.zone is None or one is None:
        return
    if not one.middle:
        yield Change("Feed the manifold in the middle.", ZONE, {"fed": "middle"})
    yield from _wider_manifold(case, one)
    longest = one.longest(case.line, case.pressure, case.in_zone)
    if 0 < longest < case.in_zone:
        zones = math.ceil(case.count / longest)
        long = reader.show(math.ceil(case.count / zones) * case.rows, "length")
        text = f"Make {zones} zones, one after another, each with a manifold of {long}."
        yield Change(text, ZONE, {"zones": str(zones)})
    strong = as_wide(STRONGER, one.pipe)
    if strong is not None:
        text = f"Use {strong.label} for the manifold."
        yield Change(text, RATED, {"manifold": f"{strong.kind}/{strong.size}"})


def _wider_manifold(case: Case, one: Manifold) -> Iterator[Change]:
    """The next size of its kind that waters evenly and is not too fast."""
    wider = [pipe for pipe in pipes.sizes(one.pipe.kind) if pipe.inside_m > one.pipe.inside_m]
    for pipe in wider[: practice.MOST_SIZES_UP]:
        wide = replace(one, pipe=pipe)
        even = wide.even(case.line, case.in_zone, case.pressure)
        zone = wide.zone(case.line, case.in_zone, case.pressure) if even else None
        if zone is not None and practice.speed_level(wide.enters(zone)) != "care":
            text = f"Use {pipe.label} for the manifold."
            yield Change(text, ZONE, {"manifold": f"{pipe.kind}/{pipe.size}"})


# How even a line is ---------------------------------------------------------------------------


def _shorter(case: Case, reader: Reader) -> Iterator[Change]:
    """Fed at more places: as long as waters evenly, and as the source can feed."""
    line, longest = case.line, case.line.longest(case.start)
    if 0 < longest < line.outlets:
        yield _lines_of(longest, EVEN | FLOW, case, reader)
    most = math.floor(line.outlets * case.flow / case.line_flow)
    if 0 < most < line.outlets:
        yield _lines_of(most, FLOW, case, reader)


def _lines_of(outlets: int, keys: frozenset[str], case: Case, reader: Reader) -> Change:
    # a little over, so that the last dripper is on it whatever the rounding
    length = round_up(outlets * case.line.spacing, "length", reader, 4)
    text = f"Lay drip lines of {reader.show(length, 'length')} or less, each fed at its start."
    return Change(text, keys, {"length": exact(length, "length", reader), **_anew(case)})


def _wider(case: Case, reader: Reader) -> Iterator[Change]:
    for bore in practice.DRIP_BORES:
        if bore <= case.line.bore:
            continue
        wide = replace(case.line, bore=bore)
        if wide.even(case.start):
            size = reader.show(bore, "diameter")
            text = f"Use drip line with an inside diameter of {size}."
            yield Change(text, EVEN, {"bore": exact(bore, "diameter", reader)})
            return


def _steady(case: Case, reader: Reader) -> Iterator[Change]:
    if case.line.dripper.compensating:
        return
    least = reader.show(practice.DRIPPER_LEAST, "pressure", 2)
    text = f"Use pressure-compensating drippers that work from {least}."
    texts = {"holds": "steady", "least": "?"}
    yield Change(text, EVEN, texts)


def _better(case: Case) -> Iterator[Change]:
    """Drippers that differ less when new."""
    flows = case.solved.flows
    part = min(flows) * len(flows) / case.line_flow  # of the mean of all
    made = math.floor((1 - practice.EMISSION[0] / part) / 1.27 * 1000 - 1e-6) / 10
    if made >= LEAST_MADE:
        text = f"Choose drippers whose coefficient of variation is {made:g}\u00a0% or less."
        yield Change(text, frozenset({"emission"}), {"made": f"{made:g} %"})


def _pressed(case: Case, reader: Reader) -> Iterator[Change]:
    """More pressure, for drippers that have too little."""
    needed = case.line.needs()
    if not case.line.dripper.compensating or needed is None or needed > MOST_PRESSURE:
        return
    needed += case.pressure - case.start  # of a manifold to its weakest line
    pressure = round_up(needed * SPARE, "pressure", reader)
    text = f"Raise the pressure where lines begin to {reader.show(pressure, 'pressure')}."
    yield Change(text, EVEN, {"pressure": exact(pressure, "pressure", reader)})


def _reduced(case: Case, reader: Reader) -> Iterator[Change]:
    """Down to what is usual for drip."""
    pressure = round_up(practice.DRIP_PRESSURE, "pressure", reader)
    if pressure < case.pressure:
        shown = reader.show(pressure, "pressure")
        text = f"Fit a pressure-reducing valve set to {shown} before the lines."
        yield Change(text, OVER, {"pressure": exact(pressure, "pressure", reader)})


# Hours and water ------------------------------------------------------------------------------


def _longer_hours(case: Case) -> Iterator[Change]:
    hours = case.time / HOUR * SPARE
    if hours <= 24:
        text = f"Let it run {at_least(hours)} hours a day."
        yield Change(text, TIME, {"hours": f"{min(24.0, float(at_least(hours))):g}"})


def _tank(case: Case, reader: Reader) -> Iterator[Change]:
    """The source fills a tank day and night; from it the garden is watered faster."""
    zones = math.floor(case.hours / case.zone_time * MET)
    filled = case.flow * DAY
    daily = filled if case.daily is None else min(filled, case.daily)
    if zones < 1 or case.water * SPARE > daily:
        return
    flow = round_up(math.ceil(case.count / zones) * case.line_flow * SPARE, "flow", reader)
    if flow <= case.flow:
        return
    tank = round_up(case.water, "volume", reader, 2)
    size, at_once = reader.show(tank, "volume", 2), reader.show(flow, "flow")
    text = (
        f"Let the source fill a tank of {size} day and night. Water from it with {at_once}, by "
        "height or a second pump."
    )
    yield Change(text, TIME | FLOW, {"flow": exact(flow, "flow", reader), **_anew(case)})


def _less(case: Case, reader: Reader) -> Iterator[Change]:
    """What can be watered with what there is; the rest stays dry."""
    area = case.area
    if case.daily is not None:
        area = min(area, case.daily / case.depth)
    if case.time > case.hours * MET and case.per_zone > 0:
        zones = math.floor(case.hours / case.zone_time * MET)
        if case.asked is None:
            area = min(area, zones * case.per_zone * case.each)
    area = round_down(area / SPARE, "area", reader)
    if not LEAST_SHARE * case.area <= area < case.area:
        return
    text = f"Water {reader.show(area, 'area')} and leave the rest dry, or plant less."
    texts = {"area": exact(area, "area", reader), **_anew(case)}
    if case.each > area:
        length = round_down(area / case.rows, "length", reader)
        texts["length"] = exact(length, "length", reader)
    yield Change(text, WATER | TIME, texts)


def _yield(case: Case, reader: Reader) -> Iterator[Change]:
    if case.daily is None:
        return
    needed = round_up(case.water * SPARE / DAY, "daily", reader)
    text = f"Find {reader.show(needed, 'daily')}: a second source, or rain stored in a tank."
    yield Change(text, WATER, {"daily": exact(needed, "daily", reader)})
