"""What a supply's day finds: outlets that get nothing or too little, tanks that run dry."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.network.findings import ratings
from calc.network.static import highest_pressures
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.day.case import HAIR, comes
from calc.sheets.day.why import why
from calc.sheets.parts.carry import exact
from calc.sheets.parts.clock import clock
from calc.sheets.parts.fields import NO_PUMP
from calc.sheets.parts.pipe_choice import pipe_of
from calc.sheets.parts.tank_sizes import round_up
from calc.units import HOUR, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.network.day_run import Span
    from calc.sheets.day.case import Case
    from calc.units import Reader

MOST_DAYS = 30.0  # until a tank is empty, above which the days are not counted; our choice
SPARE = 1.02  # times what a source must give or store by the sums of the day; our choice
LEAST_STORED = 0.05  # m3 at a source that gives as much as is pumped at any time; our choice
LEAST_FLOW = 1e-8  # m3/s from a source that is worth a word; our choice
A_LITTLE = 60.0  # s against closed valves that are no matter; our choice


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or worth saying, what concerns people first."""
    found = (
        *_pressures(case, reader),
        *_nothing(case),
        *_always_short(case, reader),
        *_empty(case, reader),
        *_short(case, reader),
        *_lower(case, reader),
        *_pump(case, reader),
        *_source(case, reader),
        *_unused(case),
    )
    # a name may open the sentence, as its owner wrote it
    return tuple(replace(one, text=one.text[0].upper() + one.text[1:]) for one in found)


# Outlets --------------------------------------------------------------------------------------


def by_length(case: Case) -> list[tuple[str, Span]]:
    """(outlet, its longest span) of those that get nothing at some time, the longest first."""
    found = [(name, case.nothing(name)) for name in case.failing]
    first = [(name, spans[0]) for name, spans in found if spans]
    return sorted(first, key=lambda one: one[1].start - one[1].end)


def _nothing(case: Case) -> Iterator[Finding]:
    for name, span in by_length(case):
        more = len(case.nothing(name)) - 1
        times = f", and {more} more {'time' if more == 1 else 'times'}" if more else ""
        text = f"{name} gets nothing from {hours(span)}{times}: {why(case, span)}."
        yield Finding("stop", "no-water", text, "cannot", name)


def hours(span: Span) -> str:
    """ "18:40 to 6:00"."""
    return f"{clock(span.start)} to {clock(span.end)}"


def _levels(case: Case) -> Iterator[tuple[str, str, float, float, float]]:
    """(name, level by practice, least pressure, needed, when) of each outlet that is open."""
    for name in case.used:
        one = case.run.flows.network.outlets_by_name[name]
        least = case.run.least(name)
        if least is not None and not case.nothing(name):
            level = practice.enough(least[0], one.content_pa, one.best_pa)
            yield name, level, least[0], one.content_pa, least[2]


def _too_low(case: Case, name: str) -> float:
    """How long an outlet gets too little, s."""
    return sum(span.end - span.start for span in case.failing.get(name, ()))


def _always(case: Case, name: str) -> bool:
    return _too_low(case, name) >= case.open_time(name) * (1 - 1e-6)


def _always_short(case: Case, reader: Reader) -> Iterator[Finding]:
    """Outlets that get too little whenever they are open."""
    for name, level, least, needed, _ in _levels(case):
        if level == "stop" and _always(case, name):
            got, wanted = reader.apart(max(least, 0.0), needed, "pressure")
            text = f"{name} gets too little whenever it is open, {got} at worst; it needs {wanted}."
            yield Finding("stop", "too-weak", text, at=name)


def _short(case: Case, reader: Reader) -> Iterator[Finding]:
    for name, level, least, needed, when in _levels(case):
        got, wanted = reader.apart(max(least, 0.0), needed, "pressure")
        if level == "stop" and not _always(case, name):
            spans = case.failing[name]
            text = f"{name} gets too little from {hours(spans[0])}: {got}; it needs {wanted}."
            yield Finding("care", "short", text, at=name)
        elif level == "care":
            more = "just what is" if got == wanted else f"little more than the {wanted}"
            text = f"{name} gets {got} at {clock(when)}, {more} needed."
            yield Finding("care", "short", text, at=name)
        elif level == "note":
            text = f"{name} has {got} at its weakest, at {clock(when)}: it works."
            yield Finding("note", "weakest", text, at=name)


def _unused(case: Case) -> Iterator[Finding]:
    if not case.used:
        text = "No outlet is opened on this day, so none is checked: enter when each is open."
        yield unchecked("no-use", text)


# Tanks ----------------------------------------------------------------------------------------


def _empty(case: Case, reader: Reader) -> Iterator[Finding]:
    for at, tank in enumerate(case.tanks):
        spans, lost = case.empty(at)
        if spans:
            span = max(spans, key=lambda one: one.end - one.start)
            asked = reader.show(lost, "volume")
            text = f"{tank.name} is empty from {hours(span)}; {asked} a day is asked for in vain."
            yield Finding("stop", "tank-empty", text, at=tank.name)


def _lower(case: Case, reader: Reader) -> Iterator[Finding]:
    """Tanks and the source where they end lower than they began."""
    if case.repeats:
        return
    names = [tank.name for tank in case.tanks] + (["The source"] if case.limited else [])
    for at, name in enumerate(names):
        lost = case.lower(at)
        if lost <= HAIR:
            continue
        shown = reader.show(lost, "volume")
        if case.begun:
            text = f"{name} ends this day {shown} lower than it began."
            yield Finding("note", "ends-lower", text, at=name)
            continue
        days = case.run.ends[at] / lost
        last = f": it lasts {number_text(days)} more days" if days < MOST_DAYS else ""
        text = f"Each day {name} ends {shown} lower than it began{last}."
        yield Finding("care", "lower", text.replace("The source", "the source"), at=name)


# Pump and source ------------------------------------------------------------------------------


def _pump(case: Case, reader: Reader) -> Iterator[Finding]:
    allowed = case.values.starts
    if case.pumped and allowed is not None and case.run.starts_an_hour > allowed * HOUR + 1e-9:
        most = reader.show(allowed, "per_hour")
        text = f"The pump starts {case.run.starts_an_hour} times in one hour; {most} is allowed."
        yield Finding("care", "starts", text)
    if case.shut_time > A_LITTLE:
        long = number_text(case.shut_time / HOUR, 2)
        text = f"The pump runs {long} hours against closed valves: fit a switch that stops it."
        yield Finding("care", "against-closed", text)


def _source(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.dry:
        span = max(case.dry, key=lambda one: one.end - one.start)
        text = f"The source runs out: the pump waits for it from {hours(span)}."
        yield Finding("note", "source-dry", text)
    if case.falls:
        yield from _open_source(case, reader)
    if not case.pumped or case.limited or case.run.pumped <= HAIR:
        return
    stored, gives = case.values.stored or None, case.values.gives
    if gives is None:
        least, needed = enough_source(case, stored, reader)
        text = "What the source gives is not known, so it is not checked: "
        text += f"{reader.show(least, 'flow')} day and night"
        if stored is None:
            text += f", with {reader.show(needed, 'volume')} stored,"
        yield unchecked("yield-unknown", f"{text} would pass.")
        return
    standing = case.stored_needed(gives)
    if standing is None:
        flow, most = reader.apart(gives, case.even, "flow")
        text = f"The source gives {flow}, and the pump takes {most} on the mean of the day."
        yield Finding("stop", "source-short", text, "cannot")
    elif standing > HAIR:
        size = round_up(SPARE * standing, "volume", reader, 2)
        text = "How much is stored at the source is not known, so it is not checked: "
        yield unchecked("stored-unknown", f"{text}{reader.show(size, 'volume')} would pass.")


def _open_source(case: Case, reader: Reader) -> Iterator[Finding]:
    """What runs from an open source at its most, which it must give."""
    gives = case.values.gives
    flow, when = max((max(comes(s.rates), comes(s.rates_then)), -s.start) for s in case.run.steps)
    if flow <= LEAST_FLOW:
        return
    if gives is None:
        enough = reader.show(round_up(SPARE * flow, "flow", reader, 2), "flow")
        text = f"What the source gives is not known, so it is not checked: {enough} would pass."
        yield unchecked("yield-unknown", text)
    elif gives < flow * (1 - 1e-9):
        most, least = reader.apart(flow, gives, "flow")
        text = f"At {clock(-when)} {most} would run from the source, and it gives only {least}."
        yield Finding("stop", "source-short", text, "cannot")


def enough_source(case: Case, stored: float | None, reader: Reader) -> tuple[float, float]:
    """(m3/s, m3) that a source must give and store, round. stored: what it stores, None: open."""
    least = case.even if stored is None else least_yield(case, stored)
    gives = round_up(SPARE * least, "flow", reader, 2)
    needed = case.stored_needed(gives) or 0.0
    return gives, round_up(max(SPARE * needed, LEAST_STORED), "volume", reader, 2)


def least_yield(case: Case, stored: float) -> float:
    """The least that a source must give where so much (m3) is stored, m3/s."""
    low, high = case.even, 1.0
    for _ in range(60):
        middle = (low + high) / 2
        needed = case.stored_needed(middle)
        low, high = (low, middle) if needed is not None and needed <= stored else (middle, high)
    return high


# Pressures at rest ----------------------------------------------------------------------------


def _pressures(case: Case, reader: Reader) -> Iterator[Finding]:
    """Pipes over their rating, and outlets over what codes allow, with no flow."""
    network = case.built.before
    for one in ratings(network):
        if one.kind == "over-rating" and one.value is not None and one.limit is not None:
            carries, rated = reader.apart(one.value, one.limit, "pressure")
            named = one.row.replace(" – ", " to ")
            text = f"The pipe from {named} is rated {rated} but carries {carries} with no flow."
            yield Finding("stop", "over-rating", text, "harm", one.row)
    highest = highest_pressures(network)
    for outlet in network.outlets:
        if highest[outlet.node] > practice.HIGHEST_AT_OUTLET * (1 + 1e-9):
            has, most = reader.apart(highest[outlet.node], practice.HIGHEST_AT_OUTLET, "pressure")
            text = (
                f"Static pressure at {outlet.name} is {has}; codes commonly allow {most} at most."
            )
            yield Finding("care", "outlet-over-limit", text, "harm", outlet.name)


# Said where nothing is wrong, and beside it ---------------------------------------------------


def told(case: Case, reader: Reader) -> str:
    """The lowest level of the day, or how long the pump runs."""
    if not case.tanks:
        if not case.pumped:
            drawn = reader.show(sum(case.run.given), "volume")
            return f"Every outlet gets enough all day; {drawn} is drawn."
        long = number_text(case.run.pump_time / HOUR, 2)
        return f"Every outlet gets enough all day; the pump runs {long} hours."
    at = case.lowest_share
    held, when = case.run.lowest(at)
    left = reader.show(max(held, 0.0), "volume")
    name = case.tanks[at].name
    return f"Every outlet gets enough all day; {name} is lowest at {clock(when)}, with {left}."


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """What belongs to these numbers."""
    found = [
        f"The water in {tank.name} weighs {reader.show(tank.volume_m3 * 1000, 'mass')} when full."
        for tank in case.tanks
    ]
    found.append(
        "Suction, the pump's guard and water speed are not looked at here: see whether the supply "
        "keeps up."
    )
    return tuple(found)


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from a day."""
    values = case.values
    found = [Link("Pressure when several outlets open at once", "keep_up", {})]
    if case.tanks:
        tank = case.tanks[case.lowest_share]
        given = {"volume": exact(tank.volume_m3, "volume", reader)}
        found.append(Link("The tank alone, with rain and a dry month", "hill_tank", given))
    if values.drive != NO_PUMP:
        pipe = pipe_of(values.suctionpipe)
        suction = {
            "lift": exact(values.lift, "length", reader), "kind": pipe.kind, pipe.kind: pipe.size
        }  # fmt: skip
        found.append(Link("Check the suction lift", "suction", suction))
        found.append(Link("How much the well can give", "well", {}))
    return tuple(found)
