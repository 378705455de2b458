"""What a closing valve does, judged: findings, the sentence told, fixes and links."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice, surge
from calc.page.answer import Link
from calc.page.findings import Finding, Fix, unchecked
from calc.pipe import pipes
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.line_judge import heat_findings, speed_finding
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.surge.case import LONGEST_CLOSING, Case

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.units import Reader

HAIR = 1.0  # Pa, below which a pressure counts as zero; our choice
MET = 1 + 1e-9  # a pressure typed in another unit is still met
REDUCED = 0.5  # of the lowest rating: what a reducer is set to, to leave room; our choice
MOST_FIXES = 3  # more is a list, not advice; our choice
# What a slower valve, a wider pipe or a relief valve puts right.
KNOCKS = frozenset({"over-rating", "near-rating", "column-separation", "negative-pressure"})
# Kinds made for hot water, tried in this order by system of units: our choice
HOT_KINDS = {"metric": ("pex-mm", "copper-en"), "us": ("pex-in", "copper-l")}


# Findings ------------------------------------------------------------------------------------


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or worth saying, harm first."""
    return (*_faults(case, reader), *_heard(case, reader))


def _faults(case: Case, reader: Reader) -> tuple[Finding, ...]:
    return (
        *_heat(case, reader),
        *_ratings(case, reader),
        *_fallen(case, reader),
        *_unrated(case, reader),
        *_speed(case, reader),
    )


def _closing(case: Case, reader: Reader) -> str:
    return f"Closing in {_seconds(case.closing)} adds {reader.show(case.rise, 'pressure')}"


def _tenth(seconds: float) -> float:
    """Rounded up to a tenth of a second, so that what is said is on the safe side."""
    return math.ceil(seconds * 10 - 1e-9) / 10


def _seconds(seconds: float) -> str:
    return f"{seconds:.4g}\u00a0s"


def _heat(case: Case, reader: Reader) -> list[Finding]:
    return [
        replace(one, at="the pipe")
        for one in heat_findings(case.line, case.line.sections[0], reader)
    ]


def _ratings(case: Case, reader: Reader) -> list[Finding]:
    """Of the pipe and of the lowest-rated part: over, or near."""
    found = []
    for what, rating, allowed in sorted(case.limits, key=lambda one: one[1]):
        rated, peak = reader.show(rating, "pressure"), reader.show(case.peak, "pressure")
        if case.pressure > rating * MET:
            static = reader.show(case.pressure, "pressure")
            said = f"The static pressure of {static} is over the {rated} rating of {what}."
            found.append(Finding("stop", "over-rating", said, "harm", what))
        elif case.peak > allowed * MET:
            most = f"is rated {rated}"
            if allowed > rating:
                most = f"may carry {reader.show(allowed, 'pressure')}, surges included"
            said = f"{_closing(case, reader)}: the peak is {peak}, and {what} {most}."
            found.append(Finding("stop", "over-rating", said, "harm", what))
        elif case.peak > practice.NEAR_RATING * rating * MET:
            near = f"near the {rated} rating of {what}"
            if case.peak > rating * MET:
                near = f"over {what}'s {rated} rating, but within its allowance for surges"
            said = f"{_closing(case, reader)}: the peak of {peak} is {near}."
            found.append(Finding("care", "near-rating", said, "weak", what))
    return found


def _fallen(case: Case, reader: Reader) -> list[Finding]:
    """What the returning wave does: the column separates, polluted water is drawn in."""
    if case.low >= -HAIR:
        return []
    found, rise = [], reader.show(case.rise, "pressure")
    if case.separates:
        most = reader.show(case.rejoining, "pressure")
        over = [(what, rating) for what, rating, most_ in case.limits if case.rejoining > most_]
        rated = ""
        if over:
            what, rating = min(over, key=lambda one: one[1])
            rated = f", and {what} is rated {reader.show(rating, 'pressure')}"
        said = (
            f"The knock of {rise} separates the water column; rejoining can reach about "
            f"{most}{rated}."
        )
        found.append(Finding("care", "column-separation", said, "harm"))
    low = reader.show(case.lowest, "pressure")
    said = f"After the knock of {rise} the pressure falls to {low}: leaks draw in polluted water."
    return [*found, Finding("care", "negative-pressure", said, "harm")]


def _unrated(case: Case, reader: Reader) -> list[Finding]:
    if case.rating is not None or case.too_hot:
        return []
    needed = round_up(case.peak / practice.NEAR_RATING, "pressure", reader)
    said = (
        f"{_closing(case, reader)}, and this pipe has no known rating: check that it is rated "
        f"{reader.show(needed, 'pressure')} or more."
    )
    return [unchecked("no-rating", said, "the pipe")]


def _speed(case: Case, reader: Reader) -> list[Finding]:
    return speed_finding(case.velocity, "the pipe", reader, "the pipe")


def heard(case: Case) -> bool:
    """Whether the knock is loud enough to be heard."""
    return case.rise >= practice.KNOCK_HEARD / MET


def _heard(case: Case, reader: Reader) -> list[Finding]:
    if not heard(case):
        return []
    rise, least = (reader.show(p, "pressure", 2) for p in (case.rise, practice.KNOCK_HEARD))
    half = case.closing_for(case.rise / 2)
    slower = ""
    if half <= LONGEST_CLOSING:
        slower = f", or closing over {_seconds(_tenth(half))},"
    said = (
        f"You will hear this knock of {rise}: from about {least} a pipe bangs. Half the "
        f"flow{slower} halves it."
    )
    return [Finding("note", "heard", said)]


def told(case: Case, reader: Reader) -> str:
    """How big the knock is, whether it is heard, and the peak against the lowest rating."""
    peak = reader.show(case.peak, "pressure")
    loud = "enough to hear" if heard(case) else "too little to hear"
    said = f"{_closing(case, reader)}, {loud}; the peak is {peak}."
    if case.weakest is None:
        return said
    what, rating, _ = case.weakest
    return f"{said} {what.capitalize()} is rated {reader.show(rating, 'pressure')}."


def cautions(case: Case) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = []
    if case.material is None:
        found.append(
            "The pipe's wall is not known. It is taken as rigid, which gives the highest rise."
        )
    elif case.material.key == "hose":
        found.append(
            "How stiff a hose is differs widely, so figures for hose are rough (common practice)."
        )
    if case.allowance > 1:
        found.append(
            "Inch polyethylene pipe may carry 1.5 times its rating in surges (AWWA M55, from "
            "memory). Its fittings and filters may not."
        )
    return tuple(found)


# Fixes ---------------------------------------------------------------------------------------


def fixes(values: Values, case: Case, reader: Reader) -> tuple[Fix, ...]:
    """Changes after which nothing is left of what they are for; each is worked out anew."""
    before = _bad(case, reader)
    wrong = before - {"no-rating"}
    if not wrong:
        return ()
    kept: list[tuple[int, Fix]] = []
    for text, changed, keys, texts in _changes(case, reader, wrong):
        left = _bad(changed, reader)
        if keys & wrong and not left & keys and left <= before:
            link = Link("Try this fix", "surge", _texts(values, reader) | texts) if texts else None
            kept.append((len(left), Fix(text, link)))
    if not case.too_hot:  # what leaves the least wrong comes first; out of the sun before all
        kept.sort(key=lambda one: one[0])
    found = tuple(fix for _, fix in kept[:MOST_FIXES])
    return found or (Fix("No single change we tried is enough."),)


def _bad(case: Case, reader: Reader) -> set[str]:
    return {one.key for one in _faults(case, reader) if one.level != "note"}


MAY_BE_EMPTY = ("weakest", "rating", "hottest")  # fields that a reader may leave empty
Change = tuple[str, Case, frozenset[str], dict[str, str]]


def _changes(case: Case, reader: Reader, wrong: set[str]) -> Iterator[Change]:
    """(sentence, the case after it, keys it is for, texts that change) of all worth trying."""
    if case.too_hot:
        yield from _cooler(case, reader)
        return
    if any(case.pressure > rating * MET for _, rating, _ in case.limits):
        yield from _reduced(case, reader)
        return
    if wrong & KNOCKS:
        yield from _slower(case, reader)
    yield from _wider(case, reader, wrong)
    if wrong & KNOCKS:
        yield from _relieved(case, reader)
    yield from _throttled(case, reader, wrong)


def _gentle(case: Case) -> float | None:
    """Closing time, s, that leaves no knock to mind; None where the form takes none so long."""
    seconds = case.closing_for(case.calm_rise)
    return _tenth(seconds) if seconds <= LONGEST_CLOSING else None


def _slower(case: Case, reader: Reader) -> Iterator[Change]:
    seconds = _gentle(case)
    if seconds is None or seconds <= case.closing:
        return
    changed = replace(case, closing=seconds)
    peak = reader.show(changed.peak, "pressure")
    text = f"Close the valve over {_seconds(seconds)} or longer: the peak is then {peak}."
    yield text, changed, KNOCKS, {"closing": f"{seconds:g} s"}


def _wider(case: Case, reader: Reader, wrong: set[str]) -> Iterator[Change]:
    """The next size that is enough, up to three sizes."""
    keys = frozenset(wrong & (KNOCKS | {"fast"}))
    for changed in case.wider():
        if not _bad(changed, reader) & keys:
            peak = reader.show(changed.peak, "pressure")
            text = f"Use {changed.pipe.label} instead: the peak is then {peak}."
            yield text, changed, keys, {case.pipe.kind: changed.pipe.size}
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
    yield text, changed, KNOCKS, {}


def _throttled(case: Case, reader: Reader, wrong: set[str]) -> Iterator[Change]:
    """Less flow, for a sudden stop and for the speed; not below a tenth."""
    keys = frozenset(wrong & (KNOCKS | {"fast"}))
    shares = [0.999 * practice.SPEED_CARE / case.velocity]
    if keys & KNOCKS:
        shares.append(case.calm_rise / case.rise)
    share = min(1.0, *shares)
    if not 0.1 <= share < 1.0:
        return
    flow = round_down(share * case.flow, "flow", reader)
    text = f"Limit the flow to {reader.show(flow, 'flow')} with a smaller outlet or a flow limiter."
    yield text, replace(case, flow=flow), keys, {"flow": reader.typed(flow, "flow")}


def _reduced(case: Case, reader: Reader) -> Iterator[Change]:
    """Static pressure over a rating: a reducer, and a slower valve where that is not enough."""
    lowest = min(rating for _, rating, _ in case.limits)
    held = round_down(REDUCED * lowest, "pressure", reader, 2)
    shown = reader.show(held, "pressure")
    if held < 1e3:
        return
    lower = replace(case, pressure=held)
    texts = {"pressure": reader.typed(held, "pressure")}
    text = f"Fit a pressure-reducing valve set to {shown} before the pipe."
    yield text, lower, KNOCKS, texts
    seconds = _gentle(lower)
    if seconds is not None and seconds > case.closing:
        slower = replace(lower, closing=seconds)
        said = f"{text[:-1]}, and close the valve over {_seconds(seconds)} or longer."
        yield said, slower, KNOCKS, texts | {"closing": f"{seconds:g} s"}


def _cooler(case: Case, reader: Reader) -> Iterator[Change]:
    """A pipe too hot: out of the sun, else a kind that is made for the heat."""
    keys = frozenset({"too-hot"})
    if case.hottest > case.temperature:
        shaded = replace(case, hottest=case.temperature)
        yield "Bury or shade the pipe, so that it gets no hotter than its water.", shaded, keys, {
            "hottest": ""
        }  # fmt: skip
    for kind in HOT_KINDS[reader.system]:
        wide = [one for one in pipes.sizes(kind) if one.inside_m >= case.pipe.inside_m]
        tried = [case.with_pipe(pipe) for pipe in wide[: practice.MOST_SIZES_UP]]
        if tried:
            best = min(tried, key=lambda one: len(_bad(one, reader)))
            text = f"Use {best.pipe.label} instead, which is made for such heat."
            yield text, best, keys, {"kind": kind, kind: best.pipe.size}


# Links ---------------------------------------------------------------------------------------


def _texts(values: Values, reader: Reader) -> dict[str, str]:
    """The sheet's own fields as texts, so that a fix opens with all else as it is."""
    found = dict.fromkeys(MAY_BE_EMPTY, "")
    for key, value in values.numbers.items():
        parsed = values.typed.get(key)
        if parsed is not None:
            found[key] = f"{parsed.number:.10g} {parsed.unit.symbol}".strip()
        elif isinstance(value, str):
            found[key] = value
    return found


def links(values: Values, reader: Reader) -> tuple[Link, ...]:
    """On to the sizes of pipe for this flow and length."""
    shown = {
        "flow": reader.typed(values.flow, "flow"),
        "length": reader.typed(values.length, "length"),
    }
    return (Link("Every pipe size for this flow and length", "pipe", shown),)
