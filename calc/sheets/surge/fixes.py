"""What to try against a knock: a slower valve, a wider pipe, an arrester, less flow or pressure."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from calc import practice, surge
from calc.pipe import pipes
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import LEAST_SHARE, round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.sheets.surge.case import LONGEST_CLOSING, Case
from calc.sheets.surge.judge import faults, seconds_text, tenth
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from calc.page.findings import Finding
    from calc.units import Reader

    Judge = Callable[[Any, Reader], Iterable[Finding]]

REDUCED = 0.5  # of the lowest rating: what a reducer is set to, to leave room; our choice
LEAST_SET = 1e3  # Pa, the least the form takes
STEPS_DOWN = (1.0, 0.9, 0.8, 0.65, 0.5)  # of what would do for a sudden stop; our choice
# What a slower valve, a wider pipe or a relief valve puts right.
KNOCKS = frozenset({"over-rating", "near-rating", "column-separation", "negative-pressure"})
FAST = frozenset({"fast"})
# Kinds made for hot water, those tried first by system of units: our choice
HOT_KINDS = {"metric": ("pex-mm", "copper-en"), "us": ("pex-in", "copper-l")}


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    if case.too_hot:
        yield from cooler(case, reader)
        return
    yield from _reduced(case, reader)
    yield from _slower(case, reader)
    yield from wider(case, reader)
    yield from _relieved(case, reader)
    yield from throttled(case, reader)


def _bad(case: Case, reader: Reader, judged: Judge = faults) -> set[str]:
    return {one.key for one in judged(case, reader) if one.level != "note"}


def _gentle(case: Case) -> float | None:
    """Closing time, s, that leaves no knock to mind; None where the form takes none so long."""
    seconds = case.closing_for(case.calm_rise)
    return tenth(seconds) if seconds <= LONGEST_CLOSING else None


def _slower(case: Case, reader: Reader) -> Iterator[Change]:
    seconds = _gentle(case)
    if seconds is None or seconds <= case.closing:
        return
    peak = reader.show(replace(case, closing=seconds).peak, "pressure")
    text = f"Close the valve over {seconds_text(seconds)} or longer: the peak is then {peak}."
    yield Change(text, KNOCKS, {"closing": f"{seconds:g} s"})


def wider(case: Case, reader: Reader, judged: Judge = faults) -> Iterator[Change]:
    """The next size that is enough, up to three sizes; where none is, for the speed alone."""
    wrong = _bad(case, reader, judged)
    tried = [(one, _bad(one, reader, judged)) for one in case.wider()]
    for keys in (KNOCKS | FAST, FAST, KNOCKS):
        found = next((one for one, left in tried if not left & keys), None)
        if found and keys & wrong:
            peak = reader.show(found.peak, "pressure")
            text = f"Use {found.pipe.label} instead: the peak is then {peak}."
            yield Change(text, keys, {case.pipe.kind: found.pipe.size})
            return


def _relieved(case: Case, reader: Reader) -> Iterator[Change]:
    """A relief valve or arrester beside a valve that closes suddenly: the rest of the flow."""
    allowed = case.calm_rise
    if case.closing > case.critical or allowed <= 0:
        return
    passing = surge.relief_flow(case.flow, case.sudden, allowed)
    if passing <= practice.RELIEF_SHARE * case.flow or passing >= case.flow:
        return
    shown = reader.show(round_up(passing, "flow", reader), "flow")
    changed = replace(case, relief=passing)
    peak = reader.show(changed.peak, "pressure")
    text = (
        f"Fit a surge arrester or quick relief valve for {shown} beside the valve: the peak is "
        f"then {peak}."
    )
    left = tuple(one for one in faults(changed, reader) if one.level != "note")
    yield Change(text, KNOCKS, left=left)


def throttled(
    case: Case,
    reader: Reader,
    judged: Judge = faults,
    how: str = "with a smaller outlet or a flow limiter",
) -> Iterator[Change]:
    """Less flow, for the knock and for the speed; not below a tenth."""
    wrong = _bad(case, reader, judged)
    slow = 0.999 * practice.SPEED_CARE / case.velocity
    calm = case.calm_rise / case.rise if case.rise > 0 else 1.0
    for keys, share in ((KNOCKS | FAST, min(slow, calm)), (FAST, slow)):
        if not keys & wrong:
            continue
        for step in STEPS_DOWN if keys & KNOCKS & wrong else (1.0,):
            if not LEAST_SHARE <= share * step < 1.0:
                break
            flow = round_down(share * step * case.flow, "flow", reader)
            if not _bad(replace(case, flow=flow), reader, judged) & keys:
                shown = reader.show(flow, "flow")
                text = f"Limit the flow to {shown} {how}."
                yield Change(text, keys, {"flow": exact(flow, "flow", reader)})
                return


def _reduced(case: Case, reader: Reader) -> Iterator[Change]:
    """Static pressure near a rating: a reducer, and a slower valve where that is not enough."""
    lowest = min((rating for _, rating, _ in case.limits), default=0.0)
    held = round_down(REDUCED * lowest, "pressure", reader, 2)
    if case.pressure <= practice.NEAR_RATING * lowest * MET or held < LEAST_SET:
        return
    lower = replace(case, pressure=held)
    texts = {"pressure": exact(held, "pressure", reader)}
    shown = reader.show(held, "pressure")
    text = f"Fit a pressure-reducing valve set to {shown} before the pipe"
    yield Change(f"{text}.", KNOCKS, texts)
    seconds = _gentle(lower)
    if seconds is not None and seconds > case.closing:
        said = f"{text}, and close the valve over {seconds_text(seconds)} or longer."
        yield Change(said, KNOCKS, texts | {"closing": f"{seconds:g} s"})


def cooler(case: Case, reader: Reader, judged: Judge = faults) -> Iterator[Change]:
    """A pipe too hot: out of the sun, else a kind that is made for the heat."""
    keys = frozenset({"too-hot"})
    if case.hottest > case.temperature:
        text = "Bury or shade the pipe, so that it gets no hotter than its water."
        yield Change(text, keys, {"hottest": ""})
    first = HOT_KINDS[reader.system]
    for kind in (*first, *(one for one in pipes.KINDS if one not in first)):
        wide = [one for one in pipes.sizes(kind) if one.inside_m >= case.pipe.inside_m]
        tried = [case.with_pipe(pipe) for pipe in wide[: practice.MOST_SIZES_UP]]
        tried = [one for one in tried if not one.too_hot]
        if tried:
            best = min(tried, key=lambda one: len(_bad(one, reader, judged)))
            text = f"Use {best.pipe.label} instead, which is made for such heat."
            yield Change(text, keys, {"kind": kind, kind: best.pipe.size})
