"""Whether gravity is enough, and what is wrong along the pipe."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.gravity import crests, dips
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_judge import (
    breaks_at,
    enough,
    heat_findings,
    over_limit,
    speed_finding,
    too_hot,
)

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.gravity import Spot
    from calc.page.form import Values
    from calc.sheets.gravity.case import Case
    from calc.units import Reader


HIGHEST_CLIMB, LEAST_FLOW, SHORTEST = 200.0, 1e-6, 0.5  # m, m3/s, m: what the next sheets take


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Findings of a case, harm first."""
    dry = tuple(_no_water(case, reader))
    return (
        *heat_findings(case.section, case.section.sections[0], reader),
        *_rating(case, reader),
        *over_limit(case.static, reader),
        *(dry or (*_sucks(case, reader), *enough(case.left, case.static, case.need, reader))),
        *_spring(case, reader),
        *speed_finding(case.section.speed(case.flow), "the pipe", reader, ""),
        *_not_full(case, reader),
        *_slow(case, reader),
    )


def told(case: Case, reader: Reader) -> str:
    """The facts in one sentence."""
    left, flow = reader.show(case.left, "pressure"), reader.show(case.flow, "flow")
    needed = reader.show(case.need.works_pa, "pressure")
    return f"{flow} run down by gravity and leave {left} at the outlet; you need {needed}."


def where(case: Case, spot: Spot, reader: Reader) -> str:
    """A point of the pipe in a sentence: how far along it is."""
    if spot == case.fall.end:
        return "at the outlet"
    return f"{reader.show(spot.distance_m, 'length')} from the source"


# Pressure the pipe must carry ------------------------------------------------------------------


def _rating(case: Case, reader: Reader) -> Iterator[Finding]:
    line, most = case.section, case.fall.most
    if too_hot(line, case.fall.pipe):
        return
    rating = line.rating_of(line.sections[0])
    carried = reader.show(most.pressure_pa, "pressure")
    place = where(case, most.spot, reader)
    if rating is None:
        said = f"The pipe has no known rating: check that it is rated {carried} or more."
        yield unchecked("no-rating", said)
    elif most.pressure_pa > rating * (1 + 1e-9):
        limit, carried = reader.apart(rating, most.pressure_pa, "pressure")
        said = f"The pipe is rated {limit} but carries {carried} {place} with everything closed."
        yield Finding("stop", "over-rating", said, "harm")


# Whether the water comes -----------------------------------------------------------------------


def _no_water(case: Case, reader: Reader) -> Iterator[Finding]:
    fall = case.fall
    if case.drop_m <= 0:
        high = reader.show(-case.drop_m, "length")
        said = f"The outlet is {high} above the source's water: none runs without a pump."
        if case.drop_m == 0:
            said = "The outlet is as high as the source's water: none runs without a pump."
        yield Finding("stop", "no-water", said, "cannot")
        return
    over = case.dry
    if over is not None:
        high = reader.show(-over.before_pa / fall.weight, "length")
        place = where(case, over.spot, reader)
        said = f"The pipe rises {high} above the water it comes from, {place}: none passes there."
        yield Finding("stop", "no-water", said, "cannot")
        return
    if case.left < 0 or (case.left <= 0 < case.need.works_pa):
        most, asked = reader.apart(case.open_flow, case.flow, "flow")
        said = f"Friction uses all the drop: at most {most} arrive, not {asked}."
        if most == asked:
            said = f"At {asked} friction uses all the drop: no pressure is left at the outlet."
        yield Finding("stop", "no-water", said, "cannot")


def _sucks(case: Case, reader: Reader) -> Iterator[Finding]:
    """A crest above the pressure line while water runs."""
    over = case.over
    if over is None:
        return
    place, weight = where(case, over.spot, reader), case.fall.weight
    high = reader.show(-over.before_pa / weight, "length")
    most, asked = reader.apart(case.open_flow, case.flow, "flow")
    if over.before_pa < breaks_at(case.section):
        said = f"The pipe {place} lies {high} above its pressure line: the water column separates."
        yield Finding("stop", "below-vacuum", said, "cannot")
    elif most != asked and case.open_flow < case.flow:
        said = (
            f"The pipe {place} lies {high} above its pressure line: once air comes in, {most} run, "
            f"not {asked}."
        )
        yield Finding("stop", "sucks", said, "harm")
    else:
        said = f"The pipe {place} lies {high} above its pressure line: it sucks in air and dirt."
        yield Finding("care", "sucks", said, "harm")


# The source ------------------------------------------------------------------------------------


def _spring(case: Case, reader: Reader) -> Iterator[Finding]:
    asked = reader.show(case.flow, "flow")
    if case.spring is None:
        said = f"The spring's flow is not known, so it is not checked: {asked} or more would pass."
        yield unchecked("unchecked-spring", said)
    elif case.spring < case.flow * (1 - 1e-9):
        gives, asked = reader.apart(case.spring, case.flow, "flow")
        said = f"The spring gives {gives}; you ask for {asked}."
        yield Finding("stop", "spring-short", said, "cannot")


def _not_full(case: Case, reader: Reader) -> Iterator[Finding]:
    """The spring gives less than the open pipe takes: it runs part full."""
    if not case.starved or case.spring is None or case.spring < case.flow:
        return
    gives, takes = reader.apart(case.spring, case.open_flow, "flow")
    said = (
        f"Wide open the pipe would take {takes}, the spring gives {gives}: air would come in. "
        "Throttle it at its lower end."
    )
    yield Finding("note", "not-full", said)


def _slow(case: Case, reader: Reader) -> Iterator[Finding]:
    """Where water is slow, air stays at crests and sand in dips."""
    speed = case.section.speed(case.flow)
    spots = case.fall.spots
    if speed >= practice.SPEED_FLUSHES or not (crests(spots) or dips(spots)):
        return
    runs, least = reader.apart(speed, practice.SPEED_FLUSHES, "speed")
    said = (
        f"Water runs at {runs}: below {least} air stays at crests and sand in dips. Fit air valves "
        "and drains there."
    )
    yield Finding("note", "slow", said)


# Where to go on --------------------------------------------------------------------------------


def links(case: Case, values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on, with every number the other sheet asks for too."""
    found, drop = [], case.drop_m
    line = {
        "climb": exact(-drop, "length", reader),
        "length": exact(case.fall.length_m, "length", reader),
        "flow": exact(case.flow, "flow", reader),
    }
    if case.left < case.need.sure_pa and abs(drop) <= HIGHEST_CLIMB:
        texts = line | {"use": values.use}
        if values.use == "own":
            texts["wanted"] = exact(values.wanted, "pressure", reader)
        found.append(Link("Would a pump reach it", "reach", texts))
    if case.spring:
        texts = {"gives": exact(case.spring, "flow", reader), "hours": "24"}
        found.append(Link("How big a tank evens out the day", "tank", texts))
    plain = 0 < drop <= HIGHEST_CLIMB and not case.fall.breaks
    if plain and case.flow >= LEAST_FLOW and case.fall.length_m >= SHORTEST:
        texts = line | {
            "pressure": exact(0.0, "pressure", reader),
            "wanted": exact(case.need.works_pa, "pressure", reader),
        }
        found.append(Link("Every pipe size for this line", "pipe", texts))
    return (*found, Link("Count the flow from showers, hoses and people", "demand", {}))
