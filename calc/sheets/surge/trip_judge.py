"""What a power cut does to a rising pipe, judged: findings, the sentence told and cautions."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.surge import judge
from calc.sheets.surge.judge import HAIR
from calc.sheets.surge.trip_case import CREST
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.surge.trip_case import Trip
    from calc.units import Reader

EVENT = "When the pump stops"
CLOSED = "As the pump stops and its check valve closes, the peak is"


def findings(case: Trip, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or worth saying, harm first."""
    return (
        *judge.heat(case, reader),
        *_ratings(case, reader),
        *_parted(case, reader),
        *_fallen(case, reader),
        *_unrated(case, reader),
        *_crest(case, reader),
        *judge.speed(case, reader),
    )


def _ratings(case: Trip, reader: Reader) -> Iterator[Finding]:
    """Of the pipe and of the lowest-rated part: over, or near."""
    for what, rating, allowed in sorted(case.limits, key=lambda one: one[1]):
        if case.pressure > rating * MET:
            yield judge.static_over(case, what, rating, reader)
        elif case.peak > allowed * MET:
            peak, may = reader.apart(case.peak, allowed, "pressure")
            most = f"may carry {may}, surges included" if allowed > rating else f"is rated {may}"
            said = f"{CLOSED} {peak}"
            if case.separates:
                said = f"{EVENT}, the water column separates: rejoining can reach about {peak}"
            yield Finding("stop", "over-rating", f"{said}, and {what} {most}.", "harm", what)
        elif case.peak > practice.NEAR_RATING * rating * MET:
            peak, rated = reader.apart(case.peak, rating, "pressure")
            near = f"near the {rated} rating of {what}"
            if case.peak > rating * MET:
                near = f"over {what}'s {rated} rating but within its surge allowance"
            said = f"{CLOSED} {peak}, {near}."
            if case.separates:
                said = f"{EVENT}, a separated water column can rejoin with about {peak}, {near}."
            yield Finding("care", "near-rating", said, "weak", what)


def _parted(case: Trip, reader: Reader) -> Iterator[Finding]:
    if case.separates:
        most = reader.show(case.rejoining, "pressure")
        said = f"{EVENT}, the water column separates at {case.worst[0]}; rejoining can reach about "
        yield Finding("care", "column-separation", f"{said}{most}.", "harm")


def _fallen(case: Trip, reader: Reader) -> Iterator[Finding]:
    where, low = case.worst
    if low >= -HAIR:
        return
    shown = reader.show(case.lowest, "pressure")
    said = f"{EVENT}, the pressure at {where} falls to {shown}: "
    if case.lowest < practice.DEEPEST_VACUUM:
        said += "thin pipe may collapse, and leaks draw in polluted water."
    else:
        said += "leaks draw in polluted water."
    yield Finding("care", "negative-pressure", said, "harm")


def _unrated(case: Trip, reader: Reader) -> Iterator[Finding]:
    if case.rating is None and not case.too_hot:
        needed = round_up(case.peak / practice.NEAR_RATING, "pressure", reader)
        said = "This pipe has no known rating: check that it is rated "
        yield unchecked(
            "no-rating", f"{said}{reader.show(needed, 'pressure')} or more.", "the pipe"
        )


def _crest(case: Trip, reader: Reader) -> Iterator[Finding]:
    """Where no highest point is given: how high one may be."""
    if case.crest is not None:
        return
    said = "The highest point on the way is not given, so it is not checked: "
    if case.low > HAIR:
        most = reader.show(round_down(case.dry_from, "length", reader), "length")
        said += f"one up to {most} above the pump works."
    else:
        said += "the pressure there is lower than at the pump."
    yield unchecked("crest-unchecked", said, CREST)


def told(case: Trip, reader: Reader) -> str:
    """How far the pressure falls and how high it then goes, against the lowest rating."""
    low, peak = (reader.show(one, "pressure") for one in (case.lowest, case.peak))
    said = f"{EVENT}, the pressure falls to {low}, then peaks at {peak}."
    return said + judge.lowest_rated(case.weakest, reader)


def cautions(case: Trip) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = [
        *judge.cautions(case),
        "The pump is taken to stop at once, the careful side for a small one. A check valve that "
        "closes late makes a larger knock: a spring closes it before the water turns.",
        "Just below the tank the pressure falls as far, but for a moment only. It is not counted.",
    ]
    if case.vessel is not None:
        found.append(
            "An air vessel is a pressure vessel: its air is lost little by little, so it must be "
            "checked and filled again."
        )
    return tuple(found)
