"""Sprinklers judged: what is found, the sentence told, the advice that belongs to it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.parts import watering
from calc.sheets.parts.carry import exact
from calc.sheets.parts.watering import share
from calc.units import DAY, HOUR, MET, MINUTE, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.sprinkler.case import Case
    from calc.units import Reader

A_ROW = 10.0  # m2, less than a row of drip as its page opens: the area is not taken along


def an_hour(rate: float, reader: Reader) -> str:
    """A rate, m/s, as a depth in an hour."""
    return reader.show(rate * HOUR, "rain")


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or not checked."""
    return (
        *_pressure(case, reader),
        *_flow(case, reader),
        *_soil(case, reader),
        *_apart(case, reader),
        *_wind(case, reader),
        *watering.enough_water(case, "Sprinklers need", reader),
        *watering.enough_time(case, "on the busiest day"),
    )


def _pressure(case: Case, reader: Reader) -> Iterator[Finding]:
    works, rated = case.one.works_pa, case.rated
    level = practice.enough(case.pressure, works, rated)
    if level == "stop":
        has, needs = reader.apart(case.pressure, works, "pressure")
        text = (
            f"The last sprinkler gets {has}; this kind works from {needs}, and below that throws "
            f"about {share(practice.SHORT_THROW)} of its radius."
        )
        yield Finding("stop", "weak", text)
    elif level:
        has, full = reader.apart(case.pressure, rated, "pressure")
        least = reader.show(works, "pressure")
        text = f"The last sprinkler gets {has}; it works from {least} and is rated at {full}."
        yield Finding(level, "weak", text)


def _flow(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.at_once < 1:
        takes, gives = reader.apart(case.each, case.flow, "flow")
        text = f"One sprinkler takes {takes}, and the source gives {gives}: its pressure falls."
        yield Finding("stop", "zone-flow", text, "cannot")


def _soil(case: Case, reader: Reader) -> Iterator[Finding]:
    gives = an_hour(case.rate, reader)
    if case.soil is None:
        text = f"Not checked: whether the soil takes in {gives} an hour."
        yield unchecked("soil", text)
        return
    soil = case.soil
    level = "stop" if case.rate > soil.high * MET else "care" if case.rate > soil.low * MET else ""
    if level:
        low, high = (number_text(reader.unit("rain").from_si(one * HOUR), 2)
                     for one in (soil.low, soil.high))  # fmt: skip
        more = "water runs off" if level == "stop" else "water may run off"
        text = (
            f"They give {gives} an hour, and {soil.name.lower()} takes in {low} to {high}: {more}."
        )
        yield Finding(level, "runoff", text)


def _apart(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.spread <= case.allowed * MET:
        return
    far, good = reader.apart(
        max(case.along, case.between), case.allowed * 2 * case.throws, "length"
    )
    dry = case.spread > MET
    why = "the ground between stays dry" if dry else "the ground is wetted unevenly"
    text = f"Sprinklers are {far} apart, and in this wind up to {good} is good: {why}."
    yield Finding("stop" if dry else "care", "gaps", text)


def _wind(case: Case, reader: Reader) -> Iterator[Finding]:
    most = practice.WIND_APART[-1][0]
    if case.wind > most * MET:
        has, good = reader.apart(case.wind, most, "speed")
        text = f"Wind of {has} carries much of the spray away; up to {good} is usual."
        yield Finding("care", "windy", text)


def told(case: Case, reader: Reader) -> str:
    """Zones, how long each runs, and how often."""
    long = f"{number_text(case.zone_time / MINUTE, 2)} minutes"
    if case.zone_time >= 2 * HOUR:
        long = f"{number_text(case.zone_time / HOUR)} hours"
    days = "every day" if case.every == 1 else f"every {case.every} days"
    zones = "One zone runs" if case.zones == 1 else f"{case.zones} zones run"
    return f"{zones} {long} each, {days}, with {an_hour(case.rate, reader)} of water an hour."


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Advice for these numbers."""
    usual, low = (
        reader.show(pressure, "pressure", 2)
        for pressure in (
            practice.OUTLET_BY_KEY["sprinkler"].rated, practice.OUTLET_BY_KEY["spray"].works,
        )
    )  # fmt: skip
    return (
        f"Usual sprinklers need about {usual}. Some are made for {low} and up. "
        "Their data sheet decides.",
        "On a slope water runs off sooner: give less at a time, in two turns with a rest between.",
        "Set a can at several places and run a zone for an hour: that shows how evenly it rains.",
    )


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """On to the pump, to drip, to the tank."""
    asked = {
        "flow": exact(case.zone_flow, "flow", reader),
        "wanted": exact(max(case.rated, case.pressure), "pressure", reader),
    }
    area = {"area": exact(case.area, "area", reader)} if case.area >= A_ROW else {}
    return (
        Link("The pump for one zone", "pump_match", asked),
        Link("The same ground on drip", "drip", area),
        Link("The tank for this water", "tank", {"use": exact(case.water / DAY, "daily", reader)}),
        Link("The pressure that reaches the garden", "reach", {}),
    )
