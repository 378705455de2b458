"""What the pressure sheet finds: too little, too much, boiling; and what would put it right."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, water
from calc.page.answer import Link
from calc.page.findings import Finding
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.units import number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.pressure.case import Standing
    from calc.units import Reader

REACH_MOST, REACH_CLIMB = 20e5, 200.0  # Pa, m: as far as the sheet linked to goes
REACH_HOTTEST = 333.15  # K, likewise
TRICKLE = 100.0  # Pa, the least that counts as water arriving where none is asked for; our choice
LOW = 0.1  # m, the least height worth naming; our choice
WEAK = frozenset({"short", "no-water"})
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
    enough = f"enough for {use(state.left)}"
    if state.left > practice.HIGHEST_AT_OUTLET:
        enough = "too much without a pressure-reducing valve"
    left = f"{reader.show(state.left, 'pressure')} is left, {enough}"
    return f"{same(state, values, reader)} {where(state, reader)}, {left}."


def same(state: Standing, values: Values, reader: Reader) -> str:
    """What was typed is the weight of so much water."""
    head = reader.show(state.head, "head", 4)
    if state.column or state.absolute:
        return f"A gauge reads {reader.show(state.gauge, 'pressure')}: {head} of head."
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
        left, needed = reader.apart(state.left, state.needed, "pressure")
        text = f"{where(state, reader)}, {left} is left; you need {needed}."
        yield Finding(level, "short", text)
    most = max(state.gauge, state.left)
    if most > practice.HIGHEST_AT_OUTLET:
        has, may = reader.apart(most, practice.HIGHEST_AT_OUTLET, "pressure")
        text = f"{has} is more than an outlet may carry: plumbing codes commonly allow {may}."
        yield Finding("care", "outlet-over-limit", text, "harm")


def changes(state: Standing, reader: Reader) -> Iterator[Change]:
    """What to try: a lower outlet, another pressure, a reducing valve, cooler water."""
    yield from _lower(state, reader)
    yield from _start(state, reader)
    yield from _cooler(state, reader)
    yield from _reduced(state, reader)


def _least_start(state: Standing) -> float:
    """Gauge pressure that leaves enough at the outlet and does not boil, Pa."""
    sure = max(practice.BORDERLINE * state.needed * (1 + 1e-9), TRICKLE)
    return max(sure + state.weight * state.climb,
               water.vapour_pressure(state.temperature) - state.air)  # fmt: skip


def _lower(state: Standing, reader: Reader) -> Iterator[Change]:
    sure = max(practice.BORDERLINE * state.needed * (1 + 1e-9), TRICKLE)
    height = state.highest(sure)
    if height >= LOW:
        height = round_down(height, "length", reader)
        text = f"Put the outlet no higher than {reader.show(height, 'length')} above the gauge."
    elif height >= 0:
        height, text = 0.0, "Put the outlet level with the gauge."
    else:
        height = -round_up(max(-height, LOW), "length", reader)
        text = f"Put the outlet at least {reader.show(-height, 'length')} below the gauge."
    yield Change(text, WEAK, {"climb": exact(height, "length", reader)})


def _start(state: Standing, reader: Reader) -> Iterator[Change]:
    start = round_up(_least_start(state), "pressure", reader)
    if start > state.gauge:
        text = f"Have {reader.show(start, 'pressure')} on the gauge there instead."
        yield Change(text, WEAK | {"boils"}, _gauge(start, reader))


def _gauge(pressure: float, reader: Reader) -> dict[str, str]:
    return {"known": exact(pressure, "pressure", reader), "kind": "gauge"}


def _cooler(state: Standing, reader: Reader) -> Iterator[Change]:
    pressure = state.gauge + state.air
    if pressure >= water.vapour_pressure(state.temperature):
        return
    cooler = round_down(water.boiling_temperature(pressure), "temperature", reader)
    text = f"Keep the water below {reader.show(cooler, 'temperature')}."
    yield Change(text, frozenset({"boils"}), {"water": exact(cooler, "temperature", reader)})


def _reduced(state: Standing, reader: Reader) -> Iterator[Change]:
    """A reducing valve where the pressure is known, else before each outlet that has too much."""
    over = frozenset({"outlet-over-limit"})
    least = _least_start(state)
    own = round_up(max(least, 0.0), "pressure", reader)
    for held in (*(p for p in practice.REDUCED_TO if p >= least), own):
        if max(held, held - state.weight * state.climb) <= practice.HIGHEST_AT_OUTLET:
            text = (
                f"Fit a pressure-reducing valve set to {reader.show(held, 'pressure')} there, and "
                "a relief valve after it."
            )
            yield Change(text, over, _gauge(held, reader))
            break
    if practice.BORDERLINE * state.needed <= practice.HIGHEST_AT_OUTLET:
        text = (
            "Fit a pressure-reducing valve before each outlet that has more, and a relief valve "
            "after it."
        )
        left = tuple(one for one in findings(state, reader) if one.key not in over)
        yield Change(text, over, left=tuple(one for one in left if one.level != "note"))


def links(state: Standing, reader: Reader) -> tuple[Link, ...]:
    """On to the sheet of a pipe, where that sheet can take these numbers."""
    if (
        state.gauge > REACH_MOST
        or abs(state.climb) > REACH_CLIMB
        or state.temperature > REACH_HOTTEST
    ):
        return ()
    given = {
        "pressure": exact(state.gauge, "pressure", reader),
        "climb": exact(state.climb, "length", reader),
        "water": exact(state.temperature, "temperature", reader),
    }
    if state.needed <= REACH_MOST:
        given |= {"use": "own", "wanted": exact(state.needed, "pressure", reader)}
    return (Link("With pipe and running water: will it reach?", "reach", given),)
