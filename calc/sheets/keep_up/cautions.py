"""Standing advice that belongs to a supply's numbers but never counts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.parts import Run
from calc.pump.curve import DisplacementPump
from calc.sheets.keep_up.falls import tanks
from calc.sheets.keep_up.pump_signs import unasked_draw
from calc.sheets.parts.line_cautions import PRIMES, pipe_cautions
from calc.sheets.parts.small_draw import cycles

if TYPE_CHECKING:
    from calc.sheets.keep_up.case import Case
    from calc.units import Reader


BREAKS = (
    "A break-pressure tank needs an overflow that is led away, a screened vent and a locked lid. "
    "Its inlet ends above the overflow: an air gap."
)
OPEN = (
    "A spring box, a tank and a break-pressure tank are confined spaces: bad air kills. Do not "
    "climb in.",
    "Animals and surface water can pollute a spring. Fence it, and have its water tested before "
    "anybody drinks it.",
    "Fit an isolating valve at the source, and a drain at every low point. Lay the pipe below the "
    "depth of frost.",
)


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    source = case.supply.pumping
    laid = (row.pipe for row in case.supply.sections)
    found = list(pipe_cautions(laid, case.supply.source.temperature_k))
    if tanks(case):
        found.append(BREAKS)
    if source is None:
        return (*found, *OPEN)
    if isinstance(source.pump, DisplacementPump):
        found.append(
            "A diaphragm or other displacement pump must never face a closed valve without a "
            "pressure switch or by-pass, and a relief valve."
        )
    elif source.set_pa is None:
        found.append(
            "A fixed-speed pump needs a pressure switch and a tank, or a relief valve, so that it "
            "does not run on against closed taps."
        )
    if any(isinstance(link, Run) and link.check for link in case.after.network.links):
        found.append(PRIMES)
    if source.lift_m <= 0:
        found.append("Fit an isolating valve between the water and the pump.")
    else:
        found.append("Fit a foot valve, and let the suction pipe rise all the way to the pump.")
    small = unasked_draw(case)
    if small is not None:
        found.append(cycles(small, reader))
    return tuple(found)
