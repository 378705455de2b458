"""What a closing valve does, judged: findings, the sentence told, fixes and links."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_judge import heat_findings, speed_finding
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.surge.case import LONGEST_CLOSING, Case
from calc.units import MET

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

HAIR = 1.0  # Pa, below which a pressure counts as zero; our choice
PIPE_FLOW = 0.05  # m3/s, as far as the sheet of pipe sizes goes


# Findings ------------------------------------------------------------------------------------


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or worth saying, harm first."""
    return (*faults(case, reader), *_heard(case, reader))


def faults(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong, and water that runs fast."""
    return (
        *heat(case, reader),
        *_ratings(case, reader),
        *_fallen(case, reader),
        *_unrated(case, reader),
        *speed(case, reader),
    )


def _closing(case: Case, reader: Reader) -> str:
    return f"Closing in {seconds_text(case.closing)} adds {reader.show(case.rise, 'pressure')}"


def tenth(seconds: float) -> float:
    """A time (s) rounded up to a tenth of a second, so that what is said is on the safe side."""
    return math.ceil(seconds * 10 - 1e-9) / 10


def seconds_text(seconds: float) -> str:
    """A time as it is said and typed: "0.4 s"."""
    return f"{seconds:.4g}\u00a0s"


def heat(case: Case, reader: Reader) -> list[Finding]:
    """What the pipe is too hot for."""
    return [
        replace(one, at="the pipe")
        for one in heat_findings(case.line, case.line.sections[0], reader)
    ]


def _ratings(case: Case, reader: Reader) -> list[Finding]:
    """Of the pipe and of the lowest-rated part: over, or near."""
    found = []
    for what, rating, allowed in sorted(case.limits, key=lambda one: one[1]):
        if case.pressure > rating * MET:
            found.append(static_over(case, what, rating, reader))
        elif case.peak > allowed * MET:
            peak, may = reader.apart(case.peak, allowed, "pressure")
            most = f"may carry {may}, surges included" if allowed > rating else f"is rated {may}"
            adds = _closing(case, reader)
            said = f"{adds}: the peak is {peak}, and {what} {most}."
            if adds.endswith(f" {peak}"):  # nearly nothing stood on it before
                said = f"{adds}, and {what} {most}."
            found.append(Finding("stop", "over-rating", said, "harm", what))
        elif case.peak > practice.NEAR_RATING * rating * MET:
            peak, rated = reader.apart(case.peak, rating, "pressure")
            near = f"near the {rated} rating of {what}"
            if case.peak > rating * MET:
                near = f"over {what}'s {rated} rating, but within its allowance for surges"
            said = f"{_closing(case, reader)}: the peak of {peak} is {near}."
            found.append(Finding("care", "near-rating", said, "weak", what))
    return found


def static_over(case: Case, what: str, rating: float, reader: Reader) -> Finding:
    """That the static pressure alone is over the rating (Pa) of a part."""
    static, rated = reader.apart(case.pressure, rating, "pressure")
    said = f"The static pressure of {static} is over the {rated} rating of {what}."
    return Finding("stop", "over-rating", said, "harm", what)


def _fallen(case: Case, reader: Reader) -> list[Finding]:
    """What the returning wave does: the column separates, polluted water is drawn in."""
    if case.low >= -HAIR:
        return []
    found, rise = [], reader.show(case.rise, "pressure")
    if case.separates:
        most, rated = reader.show(case.rejoining, "pressure"), ""
        over = [(what, rating) for what, rating, most_ in case.limits if case.rejoining > most_]
        if over:
            what, rating = min(over, key=lambda one: one[1])
            most, bears = reader.apart(case.rejoining, rating, "pressure")
            rated = f", and {what} is rated {bears}"
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


def speed(case: Case, reader: Reader) -> list[Finding]:
    """Water that runs fast."""
    return speed_finding(case.velocity, "the pipe", reader, "the pipe")


def heard(case: Case) -> bool:
    """Whether the knock is loud enough to be heard."""
    return case.rise >= practice.KNOCK_HEARD / MET


def _heard(case: Case, reader: Reader) -> list[Finding]:
    if not heard(case):
        return []
    rise, least = reader.apart(case.rise, practice.KNOCK_HEARD, "pressure", 2)
    half = case.closing_for(case.rise / 2)
    slower = ""
    if half <= LONGEST_CLOSING:
        slower = f", or closing over {seconds_text(tenth(half))},"
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
    return said + lowest_rated(case.weakest, reader)


def lowest_rated(weakest: tuple[str, float, float] | None, reader: Reader) -> str:
    """What is rated least, as a sentence after another; "" where nothing has a rating."""
    if weakest is None:
        return ""
    what, rating, _ = weakest
    return f" {what.capitalize()} is rated {reader.show(rating, 'pressure')}."


def cautions(case: Case) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = []
    if case.material is None:
        found.append(
            "The pipe's wall is not known. It is taken as rigid, which gives the highest rise."
        )
    elif case.material.key == "hose":
        found.append("How stiff a hose is differs widely, so figures for hose are rough.")
    if case.allowance > 1:
        found.append(
            "Inch polyethylene pipe may carry 1.5 times its rating in surges (AWWA M55, from "
            "memory). Its fittings and filters may not."
        )
    return tuple(found)


# Links ---------------------------------------------------------------------------------------


def links(values: Values, reader: Reader) -> tuple[Link, ...]:
    """On to the sizes of pipe for this flow and length, where that sheet takes them."""
    if values.flow > PIPE_FLOW:
        return ()
    shown = {
        "flow": exact(values.flow, "flow", reader),
        "length": exact(values.length, "length", reader),
    }
    return (Link("Every pipe size for this flow and length", "pipe", shown),)
