"""Why an outlet gets too little: the height, a setting, the pump, the source or one part."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.network.parts import Reducer, Run
from calc.network.static import highest_pressures
from calc.network.way import Bottleneck, Eased, bottleneck
from calc.site.supply import PUMP, SOURCE, SUCTION, WATER

if TYPE_CHECKING:
    from calc.network.parts import Link
    from calc.network.state import Solution
    from calc.sheets.keep_up.case import Case, Tap
    from calc.units import Reader

# kinds no wider pipe can help
HEIGHTS = ("height", "set", "valve", "lift", "tank", "break")


@dataclass(frozen=True)
class Cause:
    """What holds the main outlet back.

    kind: "pipe", "suction", "device", "reducer" or "pump" by what easing it gives; of ``HEIGHTS``
    where still water leaves too little: of the set pressure, a reducing valve, the pump's own
    shut-off head, a tank or the source, a break-pressure tank.  row: name of the part; value: Pa
    lost, missing or left.
    """

    kind: str
    row: str
    value: float = 0.0


def cause_of(case: Case) -> Cause:
    """The ``Cause`` that the main outlet gets too little.  Raises InputErrors as solving does."""
    still = _still(case)
    if still is not None:
        return still
    tap, solution, source = case.main, case.after, case.supply.pumping
    missing, weak = 0.0, False
    if source is not None:
        missing = (source.set_pa or 0.0) - solution.pressure(PUMP)
        weak = case.pumped and source.set_pa is not None and missing > 1e3
    first = bottleneck(solution, tap.name)
    found: Bottleneck | Eased = first
    if first.kind == "pump":
        found = _other_part(first, tap, missing if weak else 0.0, solution)
    if found.kind == "height":  # even with every part without loss
        return Cause("height", tap.node, highest_pressures(solution.network)[tap.node])
    if found.kind == "pump":
        return Cause("pump", found.row, missing if weak else 0.0)
    return Cause(found.kind, found.row, case.weight * abs(solution.loss(found.row)))


def _other_part(
    found: Bottleneck, tap: Tap, missing_pa: float, solution: Solution
) -> Bottleneck | Eased:
    """The pipe or device that alone would be enough, rather than a pump that lacks little."""
    short = tap.sure_pa - tap.after.pressure_pa
    for one in found.ranked:
        lost = solution.network.weight * abs(solution.loss(one.row))
        if one.kind != "pump" and one.gain_pa >= short and lost > missing_pa:
            return one
    return found


def _still(case: Case) -> Cause | None:
    """The cause where still water leaves too little, or only just enough; None where it is sure."""
    tap, network = case.main, case.after.network
    needed, node = tap.sure_pa, tap.node
    if case.supply.pumping is None:
        return _fallen(case)
    if not case.pumped and case.feeds not in ("", WATER):
        level = network.heights[case.feeds] - network.heights[node]
        left = case.weight * level
        return Cause("tank", case.feeds, left) if left < needed else None
    most = highest_pressures(network, controlled=False)[node]
    if most < needed:
        behind = _reduced(case, needed) if any(map(tank, case.way)) else None
        return behind or Cause("lift", node, most)
    held = highest_pressures(network)[node]
    if held >= needed:
        return None
    return _reduced(case, needed) or Cause("set", node, held)


def _reduced(case: Case, needed_pa: float) -> Cause | None:
    """The last valve or break-pressure tank on the way that alone leaves too little, if any."""
    heights, node = case.after.network.heights, case.main.node
    for link in reversed(case.way):
        if isinstance(link, Reducer):
            left = link.set_pa - case.weight * (heights[node] - heights[link.end])
            if left < needed_pa and link.vented:
                return Cause("break", link.name, left)
            if left < needed_pa:
                return Cause("valve", link.name, link.set_pa)
    return None


def _fallen(case: Case) -> Cause | None:
    """``_still`` without a pump: the source, a break-pressure tank or a valve."""
    needed, node = case.main.sure_pa, case.main.node
    if highest_pressures(case.after.network)[node] >= needed:
        return None
    found = _reduced(case, needed)
    if found is not None:
        return found
    open_water = case.feeds or SOURCE
    heights = case.after.network.heights
    return Cause("tank", open_water, case.weight * (heights[open_water] - heights[node]))


def words(cause: Cause, case: Case, reader: Reader) -> str:
    """The cause as the end of a sentence."""
    value = reader.show(max(cause.value, 0.0), "pressure")
    if cause.kind == "pipe":
        return f"{value} is lost from {between(cause.row)}"
    if cause.kind == "suction":
        return "the suction pipe is the bottleneck"
    if cause.kind == "device":
        return f"{value} is lost in {cause.row}"
    if cause.kind == "reducer" and tank(case.after.network.link(cause.row)):
        return f"{value} is lost in the float valve of {cause.row}"
    if cause.kind in ("reducer", "valve"):
        return f"{cause.row} is set too low"
    if cause.kind == "pump":
        if cause.value > 0:
            return f"the pump is {value} below its set pressure"
        return "the pump is the bottleneck at this flow"
    if cause.kind == "lift":
        return f"the pump is too weak for this height, {value} with no flow"
    if cause.kind in ("tank", "break"):
        return f"{called(case, cause.row)} is too low, {value} with no flow"
    if cause.kind == "set":
        return f"the set pressure is too low for this climb, {value} with no flow"
    return f"height is the bottleneck, {value} with no flow"


def tank(link: Link) -> bool:
    """Whether a link is a break-pressure tank."""
    return isinstance(link, Reducer) and link.vented


def called(case: Case, name: str) -> str:
    """Open water in a sentence: "the source" where the line begins without a pump."""
    return f"the {SOURCE}" if case.supply.pumping is None and name == SOURCE else name


def between(name: str) -> str:
    """A section's name in a sentence: "pump to house"."""
    return name.replace(" – ", " to ")


def the_pipe(case: Case, name: str) -> str:
    """A run as the subject of a sentence."""
    link = case.after.network.link(name)
    if name == SUCTION or not isinstance(link, Run):
        return name
    return f"the pipe from {between(name)}"
