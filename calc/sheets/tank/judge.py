"""What the storage tank sheet finds: too little coming in, too small a tank, too low a tank."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, storage, well
from calc.page.answer import Link
from calc.page.findings import Finding, Fix
from calc.sheets.parts.tank_sizes import at_least, round_up, span
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.tank.case import Case
    from calc.units import Reader

ROUNDED = 0.995  # so that a figure still holds as printed, to three digits
SLOW = 10 * DAY  # s, a refill that takes longer is worth saying; our choice


def told(values: Values, case: Case, reader: Reader) -> str:
    """The size asked for, or what the tank in mind does."""
    if case.short:
        return ""  # a stop says it
    if values.own:
        lasts = f"lasts {span(case.bridged)} without supply"
        more = reader.show(case.asked, "volume")
        least = f" {more} is enough." if case.asked < values.own * (1 - 1e-9) else ""
        return f"This tank evens out the day and {lasts}.{least}"
    if case.volume < 1e-9:
        return (
            "No tank is needed for the day: the source keeps up with the use in every hour of it."
        )
    size = reader.show(case.asked, "volume")
    lasts = f"lasts {span(values.bridge)} without supply" if values.bridge > 0 else ""
    evens = "evens out the day" if case.balance.swing >= 1e-9 else ""
    return f"A tank of {size} {' and '.join(part for part in (evens, lasts) if part)}."


def findings(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """``Finding``s from the volumes and pressures."""
    if case.short:
        yield _too_little(values, case, reader)
    elif values.own:
        yield from _own(values, case, reader)
    if not case.short:
        yield from _refilling(values, case)
    if case.raised > 0:
        yield from _pressure(values, case, reader)
    if case.supply < case.pumped * (1 - 1e-9):
        text = "The pump draws the well down within its hours: it needs dry-run protection."
        yield Finding("note", "dry-run", text)


def _too_little(values: Values, case: Case, reader: Reader) -> Finding:
    """No tank makes up for a source that brings less than is used."""
    if values.gives <= 0 or case.supply <= 0:
        return Finding(
            "stop", "no-source", "No water comes in, so no tank helps for long.", "cannot"
        )
    used, comes = reader.show(case.use, "volume"), reader.show(case.supply, "volume")
    from_where = "from this well" if case.well_limits else f"in {values.hours:g} hours"
    text = f"You use {used} a day and only {comes} comes in {from_where}; no tank makes that up."
    return Finding("stop", "too-little", text, "cannot")


def _own(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    if case.bridged < -1e-9 * DAY:
        size = reader.show(case.asked, "volume")
        text = f"This tank runs dry on an ordinary day; {size} is needed."
        yield Finding("stop", "too-small", text, "cannot")
    elif values.own < case.volume * (1 - 1e-9):
        text = (
            f"This tank lasts {span(max(0.0, case.bridged))} without supply; you asked for "
            f"{span(values.bridge)}."
        )
        yield Finding("care", "short-of-days", text)


def _refilling(values: Values, case: Case) -> Iterator[Finding]:
    if values.bridge <= 0:
        return
    time = refill_time(values, case)
    if math.isinf(time):
        text = "Nothing is left over on a fair day: once drawn down, the tank never fills again."
        yield Finding("care", "never-refills", text)
    elif time > SLOW:
        days = math.ceil(time / DAY)
        text = f"After days without supply the tank takes {days} fair days to fill again."
        yield Finding("care", "slow-refill", text)


def _pressure(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """What the height of the tank alone gives at the outlet."""
    show = reader.show
    if case.gravity <= 0 < values.wanted:
        text = (
            "No water runs by height alone: friction takes more head than the tank's height gives."
        )
        yield Finding("stop", "no-water", text, "cannot")
        return
    level = practice.enough(case.gravity, values.wanted, values.wanted)
    if level in ("stop", "care"):
        text = (
            f"By the tank's height the outlet gets {show(case.gravity, 'pressure')}; you need "
            f"{show(values.wanted, 'pressure')}."
        )
        yield Finding(level, "short", text)
    if case.raised_static > practice.HIGHEST_AT_OUTLET:
        text = (
            f"Static pressure at the outlet is {show(case.raised_static, 'pressure')}; plumbing "
            f"codes commonly allow {show(practice.HIGHEST_AT_OUTLET, 'pressure')}."
        )
        yield Finding("care", "outlet-over-limit", text, "harm")


def fixes(values: Values, case: Case, reader: Reader) -> Iterator[Fix]:
    """What would make it enough, worked out anew."""
    if case.short:
        yield from _more_in(values, case, reader)
    elif values.own and values.own < case.volume * (1 - 1e-9):
        yield Fix(f"Choose a tank of {reader.show(case.asked, 'volume')}.")
    if case.raised > 0:
        needed = practice.BORDERLINE * values.wanted * (1 + 1e-6)
        if case.gravity < needed and values.wanted > 0:
            height = storage.height_for_pressure(needed, values.lost, case.density)
            high = reader.show(round_up(height, "length", reader), "length")
            yield Fix(
                f"Raise the water to {high} above the outlet, lose less head, or add a small pump."
            )
        if case.raised_static > practice.HIGHEST_AT_OUTLET:
            yield Fix("Fit a pressure-reducing valve at the house, and a relief valve after it.")
    if case.supply < case.pumped * (1 - 1e-9):
        yield Fix("Give the pump dry-run protection, or hold its flow to the well's yield.")


def _more_in(values: Values, case: Case, reader: Reader) -> Iterator[Fix]:
    """More water a day, enough to fill the tank again within ``SLOW`` after days without."""
    share = 1 + values.bridge / SLOW
    wanted = case.use * share
    hours = hours_needed(values, wanted)
    if values.gives > 0 and hours <= 24:
        size = case.asked_at(math.ceil(hours * 10 - 1e-9) / 10)
        tank = f"; a tank of {reader.show(size, 'volume')} is then enough" if size else ""
        yield Fix(f"Run the pump {at_least(hours)} hours a day or more{tank}.")
    elif case.well_limits:
        most = reader.show(round_up(wanted / DAY, "flow", reader), "flow")
        both = ((values.well, "the well"), (values.gives, "the pump"))
        weak = " and ".join(name for flow, name in both if flow < wanted / DAY)
        yield Fix(f"Day and night {weak} would have to give {most}: use less, or find more water.")
    if not case.well_limits:
        flow = reader.show(round_up(wanted / (values.hours * HOUR), "flow", reader), "flow")
        yield Fix(f"Or find a source of {flow} for {values.hours:g} hours a day.")
    if case.supply > 0:
        most = reader.show(case.supply / share * ROUNDED, "volume")
        yield Fix(f"Or use no more than {most} a day.")


def hours_needed(values: Values, wanted: float) -> float:
    """Hours of pumping a day that bring ``wanted`` m3; infinite where no day is long enough."""
    if values.well is not None:
        return well.hours_for(wanted, values.well, values.gives, values.stored)
    return wanted / (values.gives * HOUR) if values.gives > 0 else math.inf


def refill_time(values: Values, case: Case) -> float:
    """Time to make up what the days without supply took, s; infinite where nothing is over."""
    missed = case.use * values.bridge / DAY
    return storage.days_to_recover(missed, case.supply, case.use)


def cautions(values: Values, case: Case, reader: Reader) -> tuple[str, ...]:
    """The weight of the tank that is meant, to be carried by something."""
    if case.kept < 1e-9 or (case.short and values.own is None):
        return ()
    mass = reader.show(case.kept * 1000, "mass")  # 1000 kg/m3
    return (
        f"The water in a full tank weighs {mass}: it needs level, firm ground; a stand or roof "
        "needs a structural design.",
    )


def links(values: Values, case: Case, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from a tank."""
    rows = [Link("Count the water a day again", "demand", {})]
    if case.raised > 0:
        climb = reader.typed(values.lost - case.raised, "length")
        known, wanted = (reader.typed(p, "pressure") for p in (0.0, values.wanted))
        given = {"known": known, "climb": climb, "wanted": wanted}
        rows.append(Link("The pressure this height gives", "pressure", given))
    if case.raised <= 0 or case.gravity < values.wanted:
        rows.append(Link("A pump after the tank: its pressure tank", "pressure_tank", {}))
    return tuple(rows)
