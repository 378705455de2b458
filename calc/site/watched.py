"""A supply of a site as the search for a fault has it: ``calc.network.faults.Watched``."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.network.faults import Watched
from calc.pump.laws import least_flow
from calc.site.supply import INLET, SUCTION, WATER
from calc.site.supply_rows import Source

if TYPE_CHECKING:
    from calc.site.supply import Built


def watched(
    built: Built,
    cut_in: float | None = None,
    cut_out: float | None = None,
    volts: float | None = None,
) -> Watched:
    """The supply of ``built`` with all outlets shut.

    cut_in, cut_out: of a pressure switch, Pa (None: no switch; with one the source's set pressure
    is the middle of the two); volts: of the display when all is well (None: not known).
    Pre-charge not known: the usual below where the pump starts.  Raises nothing.
    """
    source = built.supply.source
    outlets = tuple(replace(one, open=False, count=1) for one in built.before.outlets)
    network = replace(built.before, outlets=outlets)
    sections = tuple(built.section_rows)
    start = built.supply.start
    if not isinstance(source, Source):
        return Watched(network, sections, start, start)
    starts = cut_in
    if starts is None and source.set_pa is not None:
        starts = practice.RESTART_SHARE * source.set_pa
    usual = max(0.0, (starts or 0.0) - practice.PRECHARGE_GAP)
    best = source.pump.best
    least = least_flow(best.flow if best is not None else source.pump.largest_flow)
    return Watched(
        network,
        sections,
        start,
        WATER,
        INLET,
        SUCTION,
        cut_in=cut_in,
        cut_out=cut_out,
        tank_m3=source.tank_m3,
        charge_pa=usual if source.charge_pa is None else source.charge_pa,
        least_m3s=math.inf if cut_in is not None else source.least_m3s or least,
        volts=volts,
    )
