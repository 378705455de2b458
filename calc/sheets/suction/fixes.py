"""What to try on a suction line: another pipe, a cleaner strainer, less flow, a lower pump."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING

from calc import practice
from calc.page.findings import Finding
from calc.pipe import pipes
from calc.pipe.line import larger_pipes, largest
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.sheets.suction.case import SLACK, Case
from calc.sheets.suction.judge import findings

if TYPE_CHECKING:
    from calc.pipe.pipes import Pipe
    from calc.units import Reader

RIGID = {"metric": "pe100-sdr11", "us": "pvc40"}  # the kind of pipe to offer first
SOFT = ("hose", "layflat")  # kinds that a vacuum can flatten
LEAST_STUB = 0.1  # m, nearer to the inlet no dampener fits; our choice
SHALLOW = 0.1  # m, the least height of water above a pump worth naming
LOWEST = -5.0  # m; to set a pump deeper, for a pipe's sake, is no repair; our choice
SUCKS = frozenset({"npsh", "npsh-margin"})
HEAT = frozenset({"too-hot", "over-rating"})
KIND = HEAT | {"vacuum-collapse"}  # against which no size helps
LOSS = SUCKS | {"vacuum"}  # what less friction is rid of
PIPE = LOSS | KIND | {"fast"}
HEIGHT = LOSS | {"lift-practice", "vacuum-collapse"}


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first; a submersible pump last, which has none of these faults."""
    yield from _foot_valve()
    yield from _damped(case, reader)
    if case.line.heat_k > case.line.temperature_k:
        text = "Bury or shade the suction pipe, so that it gets no hotter than its water."
        yield Change(text, HEAT, {"hottest": ""})
    yield from _pipe(case, reader)
    yield from _strainer(case, reader)
    yield from _less(case, reader)
    yield from _lower(case, reader)
    if case.lift >= case.limit - case.margin:
        text = "Use a submersible pump, which has no suction lift."
        yield Change(text, PIPE | HEIGHT | {"no-foot-valve"})


def last(case: Case, reader: Reader) -> str:
    """What to say where no change is enough."""
    most = case.largest_flow()
    if most > 0:
        return (
            "This pipe is the bottleneck: three sizes up are not enough. With the NPSH margin kept "
            f"it passes {reader.show(most, 'flow')}."
        )
    return "Use a pump with a lower NPSH required, or a submersible pump."


def _wrong(case: Case, reader: Reader) -> set[str]:
    found: tuple[Finding, ...] = findings(case, reader)
    return {one.key for one in found if one.level != "note"}


def _foot_valve() -> Iterator[Change]:
    text = "Fit a foot valve with a strainer at the foot of the suction pipe."
    yield Change(text, frozenset({"no-foot-valve"}), {"foot": "1"})


def _damped(case: Case, reader: Reader) -> Iterator[Change]:
    """A dampener near the inlet, where pulses take more than friction does; else after a pipe."""
    if case.pulses <= case.loss or case.spare is None:
        return
    room = case.spare + case.pulses - _kept(case)
    if room <= 0:
        return
    near = min(practice.DAMPER_NEAR, case.pulsed * room / case.pulses)
    stub = round_down(near, "length", reader, 2)
    if LEAST_STUB <= stub < case.pulsed:
        text = f"Fit a standpipe or dampener within {reader.show(stub, 'length')} of the pump"
        yield Change(f"{text}: its pulses then take little.", SUCKS,
                     {"stub": exact(stub, "length", reader)})  # fmt: skip
    most = case.most_strokes
    if most is not None and case.strokes is not None and most < case.strokes:
        slower = round_down(most, "rpm", reader, 2)
        if slower >= practice.LEAST_FLOW_KEPT * case.strokes:
            text = f"Use a pump that gives this flow with {reader.show(slower, 'rpm')} or fewer"
            yield Change(f"{text} strokes.", SUCKS, {"strokes": exact(slower, "rpm", reader)})


def _candidates(case: Case, reader: Reader) -> Iterator[Pipe]:
    """Pipes to try: the next sizes of its kind, or of firmer kinds where the kind is at fault."""
    if not _wrong(case, reader) & KIND:
        yield from larger_pipes(case.pipe, practice.MOST_SIZES_UP)
        return
    first = RIGID[reader.system]
    for kind in (first, *(kind for kind in pipes.KINDS if kind not in (first, *SOFT))):
        wide = [pipe for pipe in pipes.sizes(kind) if pipe.inside_m >= case.pipe.inside_m]
        yield from wide[: practice.MOST_SIZES_UP]


def _pipe(case: Case, reader: Reader) -> Iterator[Change]:
    """The first pipe that is rid of all a pipe can be, or at least of heat and of speed."""
    tried = [(pipe, case.with_pipe(pipe)) for pipe in _candidates(case, reader)]
    wrong = _wrong(case, reader)
    left = [_wrong(other, reader) for _, other in tried]
    for keys in (PIPE, KIND | {"fast"}, KIND, frozenset({"fast"})):
        for (pipe, other), after in zip(tried, left, strict=True):
            if not after & keys:
                if keys & wrong:
                    yield Change(_pipe_text(pipe, other, reader), keys, _chosen(pipe))
                    return
                break


def _pipe_text(pipe: Pipe, case: Case, reader: Reader) -> str:
    most = ""
    if case.allowed is not None and case.allowed > SHALLOW:
        up = reader.show(min(case.allowed, case.usual_lift), "length")
        most = f": the pump may then be up to {up} above the water"
    return f"Use {pipe.label} as the suction pipe{most}."


def _chosen(pipe: Pipe) -> dict[str, str]:
    return {"kind": pipe.kind, pipe.kind: pipe.size}


def _strainer(case: Case, reader: Reader) -> Iterator[Change]:
    """A strainer that loses less, where it takes more than pipe and fittings do."""
    if case.spare is None or case.strainer <= case.loss - case.strainer:
        return
    over = max(_kept(case) - case.spare, _over_vacuum(case))
    loss = round_down(case.strainer - over, "head", reader)
    if loss > 0:
        text = "The strainer is the bottleneck: clean it, or use one that loses "
        yield Change(f"{text}{reader.show(loss, 'head')} at most.", LOSS,
                     {"strainer": exact(loss, "head", reader)})  # fmt: skip


def _over_vacuum(case: Case) -> float:
    """Head that friction takes too much where the water is above the pump, m; 0: none."""
    if case.lift >= 0:
        return 0.0
    return max(0.0, (case.vacuum - practice.FLOODED_VACUUM) / case.line.weight)


def _kept(case: Case) -> float:
    """NPSH to keep beyond what the pump needs, so that nothing is borderline, m."""
    return max(case.margin, practice.NPSH_MARGIN)


def _less(case: Case, reader: Reader) -> Iterator[Change]:
    """Less flow, where enough is left to be worth it; a pump of chambers gives what it gives."""
    if case.pulsing is not None:
        return
    slow = case.flow * practice.SPEED_CARE * (1 - 1e-6) / case.speed
    most = min(case.largest_flow(_kept(case)), slow)
    if _over_vacuum(case) > 0:
        spare = practice.FLOODED_VACUUM
        most = min(most, largest(lambda flow: spare + case.line.left(flow), case.flow))
    flow = round_down(most, "flow", reader)
    if flow < practice.LEAST_FLOW_KEPT * case.flow:
        return
    text = f"Draw {reader.show(flow, 'flow')} at most through this pipe: open less at once."
    # the strainer's loss is entered at the flow
    lost = case.line.device_loss_in(case.section, flow)
    changed = {"strainer": exact(lost, "head", reader)} if case.strainer else {}
    yield Change(text, LOSS | {"fast"}, {"flow": exact(flow, "flow", reader), **changed})


def _lower(case: Case, reader: Reader) -> Iterator[Change]:
    """The pump lower, in another pipe where that alone is not enough."""
    for pipe in (case.pipe, *_candidates(case, reader)):
        other = case.with_pipe(pipe)
        target = _bearable(other)
        if target >= case.lift:
            continue
        new = _printed(target, reader)
        if new < LOWEST or _wrong(other.with_lift(new), reader) & HEIGHT:
            continue
        where = (
            f"at most {reader.show(new, 'length')} above the water"
            if new >= 0
            else f"with the water at least {reader.show(-new, 'length')} above it"
        )
        changed = {"lift": exact(new, "length", reader)}
        start = "Place"
        if pipe != case.pipe:
            start, changed = f"Use {pipe.label} and place", changed | _chosen(pipe)
        elif _too_high(case):
            start = "Height is the bottleneck: place"
        down = reader.show(case.lift - new, "length")
        yield Change(f"{start} the pump {down} lower, {where}.", HEIGHT, changed)
        return


def _bearable(case: Case) -> float:
    """The highest lift that leaves nothing of ``HEIGHT``, m."""
    allowed = math.inf if case.needed is None else case.available - _kept(case) - case.needed
    above = case.lift + allowed
    if case.pipe.kind in SOFT:
        vacuum = practice.HOSE_VACUUM if case.pipe.kind == "hose" else 0.0
        above = min(above, vacuum / case.line.weight - case.loss)
    above = min(case.usual_lift, above)
    if above < SHALLOW:  # the water then stands above the pump
        above = min(above, practice.FLOODED_VACUUM / case.line.weight - case.loss)
    return above


def _printed(lift: float, reader: Reader) -> float:
    """A lift rounded down to what is printed; never a few centimetres about the water, m."""
    if lift >= SHALLOW:
        return round_down(lift, "length", reader)
    return -round_up(max(-lift, SHALLOW), "length", reader)


def _too_high(case: Case) -> bool:
    """Whether even a pipe without friction would not do."""
    still = case.limit - (case.needed or 0.0) - case.margin
    return case.lift > min(still, case.usual_lift) + SLACK
