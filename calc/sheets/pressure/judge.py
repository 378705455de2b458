"""What the pressure sheet finds: too little, too much, boiling; and what would put it right."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, water
from calc.page.answer import Link
from calc.page.findings import Finding, Fix
from calc.units import number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.pressure.case import Standing
    from calc.units import Reader

REACH_MOST, REACH_CLIMB = 20e5, 200.0  # Pa, m: as far as the sheet linked to goes
SUITS = (  # static pressure, what it suits
    (practice.HOUSE_PRESSURE[0], "a house"),
    (practice.DRIP_PRESSURE, "drip lines"),
    (practice.TROUGH_WORKS, "filling a trough"),
    (0.0, "a trickle"),
)


def use(left: float) -> str:
    """What a static pressure (Pa) suits, in words.  Source: common practice, no source."""
    if left <= 0:
        return "nothing"
    if left > practice.HIGHEST_AT_OUTLET:
        return "nothing without a pressure-reducing valve"
    return next(words for floor, words in SUITS if left >= floor)


def told(state: Standing, values: Values, reader: Reader) -> str:
    """What was typed as head, and what the climb leaves of it."""
    left = f"{reader.show(state.left, 'pressure')} is left: enough for {use(state.left)}"
    return f"{same(state, values, reader)} {where(state, reader)}, {left}."


def same(state: Standing, values: Values, reader: Reader) -> str:
    """What was typed is the weight of so much water."""
    head = reader.show(state.head, "head", 4)
    if state.column or state.absolute:
        return f"A gauge reads {reader.show(state.gauge, 'pressure')}, which is {head} of head."
    typed = values.typed["known"]
    if typed.unit.symbol == reader.unit("pressure").symbol:
        return f"{reader.show(state.gauge, 'pressure')} is {head} of head."
    return f"{number_text(typed.number)}\u00a0{typed.unit.symbol} is {head} of head."


def where(state: Standing, reader: Reader) -> str:
    """The place the answer is about: after the climb or drop."""
    if not state.climb:
        return "Level with it"
    way = "climb" if state.climb > 0 else "drop"
    return f"After a {way} of {reader.show(abs(state.climb), 'length')}"


def findings(state: Standing, reader: Reader) -> Iterator[Finding]:
    """``Finding``s from the static pressures, in no order."""
    show = reader.show
    if state.gauge + state.air < water.vapour_pressure(state.temperature):
        boils = water.boiling_temperature(state.gauge + state.air)
        text = f"Water boils at {show(boils, 'temperature')} at this pressure."
        yield Finding("stop", "boils", text, "cannot")
    if state.left <= 0:
        reach = show(state.head, "length")
        text = f"No water arrives: this pressure raises water {reach} at most."
        yield Finding("stop", "no-water", text, "cannot")
    elif (level := practice.enough(state.left, state.needed, state.needed)) in ("stop", "care"):
        text = (
            f"{where(state, reader)}, {show(state.left, 'pressure')} is left; you need "
            f"{show(state.needed, 'pressure')}."
        )
        yield Finding(level, "short", text)
    most = max(state.gauge, state.left)
    if most > practice.HIGHEST_AT_OUTLET:
        text = (
            f"{show(most, 'pressure')} is more than an outlet may carry: plumbing codes commonly "
            f"allow {show(practice.HIGHEST_AT_OUTLET, 'pressure')}."
        )
        yield Finding("care", "outlet-over-limit", text, "harm")


def fixes(state: Standing, reader: Reader) -> Iterator[Fix]:
    """What would leave the needed pressure, and what takes off too much."""
    show, enough = reader.show, practice.BORDERLINE * state.needed * (1 + 1e-6)
    if state.left <= enough and state.needed > 0:
        start = enough + state.weight * state.climb
        if state.highest(enough) > 0:
            height = show(state.highest(enough), "length")
            yield Fix(f"Put the outlet no higher than {height} above the gauge.")
        yield Fix(f"Or have {show(start, 'pressure')} there instead.")
    if max(state.gauge, state.left) > practice.HIGHEST_AT_OUTLET:
        yield Fix("Fit a pressure-reducing valve, and a relief valve after it.")


def links(state: Standing, reader: Reader) -> tuple[Link, ...]:
    """On to the sheet of a pipe, where that sheet can take these numbers."""
    if state.gauge > REACH_MOST or abs(state.climb) > REACH_CLIMB:
        return ()
    given = {
        "pressure": reader.typed(state.gauge, "pressure"),
        "climb": reader.typed(state.climb, "length"),
        "water": reader.typed(state.temperature, "temperature"),
    }
    if state.needed <= REACH_MOST:
        given |= {"use": "own", "wanted": reader.typed(state.needed, "pressure")}
    return (Link("With pipe and running water: will it reach?", "reach", given),)
