"""Standing advice that belongs to a pump on a line, and where to go on with its numbers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.pipe import pipes
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_cautions import pipe_cautions
from calc.sheets.parts.line_rows import as_text
from calc.sheets.parts.small_draw import runs_low

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.pump_match.case import Case
    from calc.units import Reader

RUNS_LEVEL = 3.0  # m of suction pipe beyond the lift, where nothing is known; our choice
LEAST_FLOW, MOST_FLOW = 1e-7, 0.05  # m3/s, that the next sheets take


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    laid = (section.pipe for section in case.line.sections)
    found = list(pipe_cautions(laid, case.line.temperature_k))
    if case.displaces:
        found.append(
            "A displacement pump must never face a closed valve without a pressure switch or "
            "bypass and a relief valve."
        )
    elif case.set_pressure > 0 and case.holds:
        found.append(
            "With everything closed the pump stops and a check valve holds the pressure; a "
            f"control commonly starts it again near {reader.show(case.restart, 'pressure')}."
        )
    if case.least is not None and case.steady.draw is None:
        found.append(runs_low(case.least, reader))
    if case.shut_off_pa > 0 and not case.displaces:
        most = reader.show(max(s.pressure_pa for s in case.failed.stresses()), "pressure")
        found.append(
            f"If the control fails, the pipe carries up to {most}: fit a relief valve where that "
            "is more than any part is rated for."
        )
    return tuple(found)


def links(case: Case, values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on, with every number that the other sheet asks for too."""
    line = _line_texts(case, values, reader)
    asked = {"flow": exact(case.flow, "flow", reader), "wanted": _typed(case.need.works_pa, reader)}
    set_at = {"pressure": _typed(max(case.set_pressure, 0.0), reader)}
    crest = exact(values.highest, "length", reader)
    found = []
    fits = case.set_pressure <= 20e5 and abs(values.climb) <= 200.0
    if fits:
        most = case.pump.largest_flow if case.duty is None else case.duty.flow
        most = min(max(most, LEAST_FLOW), MOST_FLOW)
        given = {"use": "own", "most": exact(most, "flow", reader), "highest": crest}
        given |= {"extra": exact(values.extra, "percent", reader)}
        found.append(Link("What this leaves at the outlet", "reach", line | asked | set_at | given))
    if fits and values.length >= 0.5 and values.kind in pipes.KINDS:
        sizes = {key: text for key, text in line.items() if key not in pipes.KINDS}
        texts_ = sizes | asked | set_at | {"crest": crest}
        found.append(Link("Every pipe size for this line", "pipe", texts_))
    found.append(Link("Check the suction lift", "suction", _suction_texts(case, reader)))
    return (*found, Link("Count the flow from showers, hoses and people", "demand", {}))


def _typed(pressure: float, reader: Reader) -> str:
    return exact(pressure, "pressure", reader)


def _line_texts(case: Case, values: Values, reader: Reader) -> dict[str, str]:
    found = {
        key: exact(values.numbers[key], "length", reader) for key in ("length", "climb", "lowest")
    }
    found |= {"water": exact(values.water, "temperature", reader), "kind": values.kind}
    if values.hottest is not None:
        found["hottest"] = exact(values.hottest, "temperature", reader)
    if values.kind in pipes.KINDS:
        found[values.kind] = values.numbers[values.kind]
    else:
        found |= {"bore": exact(values.bore, "diameter", reader), "inside": values.inside}
    found["line"] = as_text(case.line.sections if case.counted else (), reader)
    return found


def _suction_texts(case: Case, reader: Reader) -> dict[str, str]:
    """Lift, flow and place; a pipe long enough for the lift, and what the pump needs."""
    intake, state = case.intake, case.running
    found = {
        "flow": exact(case.flow, "flow", reader),
        "lift": exact(intake.lift, "length", reader),
        "length": exact(max(intake.lift, 0.0) + RUNS_LEVEL, "length", reader),
        "water": exact(intake.temperature, "temperature", reader),
        "altitude": exact(intake.altitude, "length", reader),
    }
    needs = None if state is None or state.stands else case.npsh_required(state.flow, state.speed)
    found["npsh"] = "?" if needs is None or needs > 20.0 else reader.typed(needs, "head")
    return found
