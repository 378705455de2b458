"""What to try against a power cut: an air vessel, a wider pipe, less flow, a lower crest."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.sheets.surge.fixes import KNOCKS, cooler, throttled, wider
from calc.sheets.surge.trip_judge import findings

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.surge.trip_case import Trip
    from calc.units import Reader

LARGEST = 10.0  # m3, the largest vessel the form takes; our choice
SLOWER = "with a smaller pump or a flow limiter"
FALLS = frozenset({"column-separation", "negative-pressure"})
NONE = "No single change we tried is enough."


def changes(case: Trip, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    if case.too_hot:
        yield from cooler(case, reader, findings)
        return
    yield from _vessel(case, reader)
    yield from wider(case, reader, findings)
    yield from _lower_crest(case, reader)
    yield from throttled(case, reader, findings, SLOWER)


def last(case: Trip) -> str:
    """What to say where nothing is enough."""
    if case.calm_fall <= 0:
        return (
            "Lead the pipe below the level of the tank: a crest above it sucks whenever the pump "
            "rests."
        )
    return NONE


def _vessel(case: Trip, reader: Reader) -> Iterator[Change]:
    """A vessel beside the check valve that leaves nothing to mind."""
    needed = case.vessel_needed
    if needed is None:
        return
    air = round_up(needed, "volume", reader)
    if air > LARGEST or (case.vessel is not None and case.vessel >= air):
        return
    peak = reader.show(case.with_vessel(air).peak, "pressure")
    text = (
        f"Fit an air vessel with {reader.show(air, 'volume')} of air at rest after the check "
        f"valve: the peak is then {peak}."
    )
    yield Change(text, KNOCKS, {"vessel": exact(air, "volume", reader)})


def _lower_crest(case: Trip, reader: Reader) -> Iterator[Change]:
    """The pipe led lower, where its highest point alone is at fault."""
    if case.crest is None or not 0 < case.dry_from < case.crest:
        return
    height = round_down(case.dry_from, "length", reader)
    text = f"Lead the pipe so that no point before the tank is over {reader.show(height, 'length')}"
    yield Change(f"{text} above the pump.", FALLS, {"crest": exact(height, "length", reader)})
