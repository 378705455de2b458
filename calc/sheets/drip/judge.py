"""A garden on drip judged: what is found, the sentence told, the advice that belongs to it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Link
from calc.page.findings import Finding
from calc.pipe import pipes
from calc.pipe.friction import velocity
from calc.sheets.parts import watering
from calc.sheets.parts.carry import exact
from calc.units import DAY, HOUR, MET, MINUTE, number_text, numbers_apart

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.drip.case import Case
    from calc.units import Reader

SLOW = 0.9  # of a plain dripper's nominal flow, below which that is said; our choice


def shares(one: float, other: float) -> tuple[str, str]:
    """Two of them that differ, told apart."""
    first, second = numbers_apart(100 * one, 100 * other, 2)
    return f"{first}\u00a0%", f"{second}\u00a0%"


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or not checked."""
    return (
        *_flow(case, reader),
        *watering.enough_water(case, "The plants need", reader),
        *watering.enough_time(case, "a day"),
        *_pressure(case, reader),
        *_even(case),
        *_speed(case, reader),
        *_manifold(case, reader),
        *_filter(case),
    )


def _flow(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.zone_flow <= case.flow * MET:
        return
    takes, gives = reader.apart(case.zone_flow, case.flow, "flow")
    zone = "One drip line alone" if case.in_zone == 1 else "A zone"
    text = (
        f"{zone} takes {takes}, and the source gives {gives}: the pressure falls, and the "
        "weakest drippers get the least."
    )
    yield Finding("stop", "zone-flow", text, "cannot")


def _pressure(case: Case, reader: Reader) -> Iterator[Finding]:
    line, found = case.line, case.solved
    least, most = case.least, max(case.most, case.pressure)
    if line.short(found):
        gets, needs = reader.apart(least, line.dripper.pressure_pa, "pressure")
        text = f"The weakest dripper gets {gets}; this pressure-compensating kind needs {needs}."
        yield Finding("stop", "short", text)
    if most > practice.DRIP_HOLDS_TO * MET:
        has, may = reader.apart(most, practice.DRIP_HOLDS_TO, "pressure")
        text = f"The drip line has {has}; drippers and their joints hold to about {may}."
        yield Finding("care", "over-pressure", text)
    mean = case.line_flow / line.outlets
    if not line.dripper.compensating and mean < SLOW * line.dripper.flow_m3s:
        gives, named = reader.apart(mean, line.dripper.flow_m3s, "dripper")
        text = f"At this pressure a dripper gives {gives}, not {named}. That is counted."
        yield Finding("note", "slow", text)


def _even(case: Case) -> Iterator[Finding]:
    good, most = practice.FLOW_VARIES
    varies = case.solved.variation
    if varies > good * MET:
        has, usual = shares(varies, good)
        text = f"The flow of drippers along a line varies by {has}; {usual} is good."
        yield Finding("stop" if varies > most * MET else "care", "uneven", text)
    if case.zone is not None and case.zone.variation > good * MET:
        has, usual = shares(case.zone.variation, good)
        text = f"The flow of drippers over a zone varies by {has}; {usual} is good."
        level = "stop" if case.zone.variation > most * MET else "care"
        yield Finding(level, "zone-uneven", text)
    good, least = practice.EMISSION
    if case.emission * MET < good:
        has, usual = shares(case.emission, good)
        over = "" if case.zone is None else " of the zone"
        text = f"Emission uniformity{over} is {has}; {usual} is good."
        yield Finding("stop" if case.emission * MET < least else "care", "emission", text)


def _speed(case: Case, reader: Reader) -> Iterator[Finding]:
    speed = velocity(case.solved.flow, case.line.bore)
    level = practice.speed_level(speed)
    if level:
        text = f"Water enters the drip line at {reader.show(speed, 'speed')}, which is fast."
        yield Finding(level, "fast", text)


def _manifold(case: Case, reader: Reader) -> Iterator[Finding]:
    """How fast the water enters it, and what it holds."""
    if case.zone is None or case.manifold is None:
        return
    speed = case.manifold.enters(case.zone)
    level = practice.speed_level(speed)
    if level:
        text = f"Water enters the manifold at {reader.show(speed, 'speed')}, which is fast."
        yield Finding(level, "manifold-fast", text)
    most = max(*case.zone.starts, case.pressure)
    holds = pipes.rating_at(case.manifold.pipe, practice.COOL_WATER)
    if most > holds * MET:
        has, rated = reader.apart(most, holds, "pressure")
        text = f"The manifold has {has}; {case.manifold.pipe.label} is rated {rated}."
        yield Finding("stop", "over-rating", text, "harm")


def _filter(case: Case) -> Iterator[Finding]:
    if not case.filtered:
        text = "Without a filter of 120 mesh (0.13 mm) drippers clog sooner or later."
        yield Finding("care", "no-filter", text)


def told(case: Case, reader: Reader) -> str:
    """The hours and the water of a day."""
    time, water = span(case.time), reader.show(case.water, "volume")
    if case.zones == 1:
        return f"One zone waters it all in {time} a day, with {water}."
    return f"{case.zones} zones, one after another, water it all in {time} a day, with {water}."


def span(seconds: float) -> str:
    """A time in minutes, from two hours on in hours."""
    if seconds < 2 * HOUR:
        return f"{number_text(seconds / MINUTE, 2)} minutes"
    return f"{number_text(seconds / HOUR)} hours"


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Advice for these numbers."""
    usual = reader.show(practice.DRIP_PRESSURE, "pressure", 2)
    found = [
        f"Drip lines commonly run behind a pressure-reducing valve of about {usual}. "
        "Follow the data sheet of the drippers.",
    ]
    if case.filtered:
        found.append(
            "Clean the filter when the pressure behind it falls. Open the ends of the lines twice "
            "a season and let them flush."
        )
    return tuple(found)


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """On to the tank, the water of all else, the way to the garden, and sprinklers."""
    sprayed = {
        "area": exact(case.area, "area", reader),
        "depth": exact(case.climate.reference * case.need, "rain", reader),
    }
    return (
        Link("The tank for this water", "tank", {"use": exact(case.water / DAY, "daily", reader)}),
        Link("All the water you use", "demand", {}),
        Link("The pressure that reaches the garden", "reach", {}),
        Link("The same ground under sprinklers", "sprinkler", sprayed),
    )
