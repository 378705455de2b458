"""Standing advice that belongs to a supply's numbers but never counts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.parts import Run
from calc.pump.curve import DisplacementPump
from calc.sheets.parts.line_cautions import pipe_cautions

if TYPE_CHECKING:
    from calc.sheets.keep_up.case import Case


def cautions(case: Case) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    source = case.supply.source
    laid = (row.pipe for row in case.supply.sections)
    found = list(pipe_cautions(laid, source.temperature_k))
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
        found.append("A check valve after a self-priming pump can stop it priming.")
    if source.lift_m <= 0:
        found.append("Fit an isolating valve between the water and the pump.")
    else:
        found.append("Fit a foot valve, and let the suction pipe rise all the way to the pump.")
    return tuple(found)
