"""What to try for ground under sprinklers: pressure, nozzles, spacing, hours, a tank, less area."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice
from calc.sheets.parts import watering
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.sheets.parts.watering import FLOW, LEAST_SHARE, SPARE, TIME, WATER
from calc.units import DAY, MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.sprinkler.case import Case
    from calc.units import Reader

WEAK, GAPS, RUNOFF = frozenset({"weak"}), frozenset({"gaps"}), frozenset({"runoff"})
LEAST_NOZZLE = 0.25  # of a flow, below which no nozzle throws as far; our choice
MOST_PRESSURE = 6e5  # Pa, more is no pressure for a garden; our choice
NONE = (
    "No single change we tried is enough. More pressure, smaller nozzles, other distances, more "
    "hours and less area each help: combine them. Heavy soil is better watered by drip."
)


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    yield from _pressed(case, reader)
    yield from _other_kind(case, reader)
    yield from _calm(case, reader)
    yield from _closer(case, reader)
    yield from _smaller(case, reader)
    yield from _farther(case, reader)
    yield from watering.longer(case)
    yield from _tank(case, reader)
    yield from _flow(case, reader)
    yield from _less(case, reader)
    yield from watering.more_water(case, reader)


def _pressed(case: Case, reader: Reader) -> Iterator[Change]:
    """More pressure, for sprinklers that have too little."""
    needed = practice.BORDERLINE * case.one.works_pa * (1 + 1e-3)
    if case.pressure < needed <= MOST_PRESSURE:
        pressure = round_up(needed, "pressure", reader)
        text = f"Raise the pressure at the last sprinkler to {reader.show(pressure, 'pressure')}."
        yield Change(text, WEAK | GAPS, {"pressure": exact(pressure, "pressure", reader)})


def _other_kind(case: Case, reader: Reader) -> Iterator[Change]:
    """A kind made for less pressure, that gives as much and throws as far."""
    for key in ("spray", "micro"):
        kind = practice.OUTLET_BY_KEY[key]
        if kind.works < case.one.works_pa:
            least = reader.show(kind.works, "pressure", 2)
            text = (
                f"Use {kind.name.lower()}s that work from {least}, with the same flow and wetted "
                "radius."
            )
            yield Change(text, WEAK | GAPS, {"kind": key, "rated": ""})


def _calm(case: Case, reader: Reader) -> Iterator[Change]:
    """At an hour with less wind."""
    wind = practice.WIND_APART[1][0]
    if case.wind > wind * MET:
        wind = round_down(wind, "speed", reader)
        text = f"Water when the wind is {reader.show(wind, 'speed')} or less, as early as you can."
        yield Change(text, frozenset({"windy", "gaps"}), {"wind": exact(wind, "speed", reader)})


def _closer(case: Case, reader: Reader) -> Iterator[Change]:
    """So near that each wets the ground to the next; both, so that none becomes greater."""
    most = round_down(case.allowed * 2 * case.throws, "length", reader)
    if 0.3 <= most < max(case.along, case.between):
        along, between = min(case.along, most), min(case.between, most)
        text = f"Set sprinklers and their lines up to {reader.show(most, 'length')} apart."
        texts = {
            "along": exact(along, "length", reader), "between": exact(between, "length", reader),
        }  # fmt: skip
        yield Change(text, GAPS, texts)


def _smaller(case: Case, reader: Reader) -> Iterator[Change]:
    """Nozzles that give less, for a soil that takes in little or a source that gives little."""
    share = case.each / case.one.flow_m3s  # of the nominal flow, at this pressure
    if case.soil is not None and case.rate * LEAST_NOZZLE < case.soil.low < case.rate:
        each = case.soil.low * case.along * case.between / share
        yield from _nozzles(each, RUNOFF, reader)
    if case.at_once < 1:
        yield from _nozzles(case.flow / share, FLOW, reader)


def _nozzles(each: float, keys: frozenset[str], reader: Reader) -> Iterator[Change]:
    each = round_down(each / SPARE, "flow", reader)
    text = f"Fit nozzles of {reader.show(each, 'flow')} or less that throw as far."
    yield Change(text, keys, {"each": exact(each, "flow", reader)})


def _farther(case: Case, reader: Reader) -> Iterator[Change]:
    """As far apart as they may be, so that each wets more ground."""
    far = round_down(2 * case.throws * case.allowed, "length", reader)
    if far > max(case.along, case.between):
        text = f"Set sprinklers and their lines {reader.show(far, 'length')} apart."
        texts = {key: exact(far, "length", reader) for key in ("along", "between")}
        yield Change(text, RUNOFF, texts)


def _needed(case: Case) -> float | None:
    """Flow that waters all in the hours there are, m3/s; None where none does."""
    a_day = math.floor(case.hours / case.zone_time * MET)
    if a_day < 1:
        return None
    return math.ceil(case.count / (a_day * case.every)) * case.each


def _flow(case: Case, reader: Reader) -> Iterator[Change]:
    needed = case.each if case.at_once < 1 else case.flow
    if case.time > case.hours:
        needed = max(needed, _needed(case) or 0.0)
    if needed > case.flow:
        flow = round_up(needed * SPARE, "flow", reader)
        text = f"Find a pump that gives {reader.show(flow, 'flow')} at the same pressure."
        yield Change(text, FLOW | TIME, {"flow": exact(flow, "flow", reader)})


def _tank(case: Case, reader: Reader) -> Iterator[Change]:
    """The source fills a tank day and night; from it a pump waters faster."""
    needed, filled = _needed(case), case.flow * DAY
    daily = filled if case.daily is None else min(filled, case.daily)
    if needed is None or needed <= case.flow or case.water * SPARE > daily:
        return
    flow = round_up(needed * SPARE, "flow", reader)
    busiest = case.zones_a_day * case.in_zone * case.each * case.zone_time
    size = reader.show(round_up(max(case.water, min(busiest, case.water * case.every)), "volume",
                                reader, 2), "volume", 2)  # fmt: skip
    text = (
        f"Let the source fill a tank of {size} day and night. Water from it with "
        f"{reader.show(flow, 'flow')} by a second pump."
    )
    yield Change(text, TIME | FLOW, {"flow": exact(flow, "flow", reader)})


def _less(case: Case, reader: Reader) -> Iterator[Change]:
    """What can be watered with what there is; the rest stays dry."""
    ground = case.along * case.between
    number = float(case.count)
    if case.daily is not None:
        number = min(number, math.floor(case.daily / (case.water / case.count) * MET))
    if case.time > case.hours * MET and case.at_once > 0:
        zones = math.floor(case.hours / case.zone_time * MET) * case.every
        number = min(number, zones * case.at_once)
    area = round_down(number * ground / SPARE, "area", reader)
    if LEAST_SHARE * case.area <= area < case.area:
        text = f"Water {reader.show(area, 'area')} and leave the rest dry."
        yield Change(text, WATER | TIME, {"area": exact(area, "area", reader)})
