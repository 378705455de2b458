"""What the storage tank sheet finds: too little coming in, too small a tank, too low a tank."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, storage, well
from calc.page.answer import Link
from calc.page.findings import Finding, Fix
from calc.sheets.parts.carry import exact
from calc.sheets.parts.tank_sizes import span, spans_apart
from calc.units import DAY, HOUR, plain_number

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.tank.case import Case
    from calc.units import Reader

LEAST_TANK = 0.01  # m3, the smallest that is followed through a day; our choice
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
    used, comes = reader.apart(case.use, case.supply, "volume")
    hours = f"in {plain_number(values.hours, 3)} hours"
    of_well = f"from this well {hours}" if case.asks_for_hours else "from this well"
    where = of_well if case.well_limits else hours
    text = f"You use {used} a day and only {comes} comes {where}; no tank makes that up."
    return Finding("stop", "too-little", text, "cannot")


def _own(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    if case.bridged < -1e-9 * DAY:
        size = reader.show(case.asked, "volume")
        text = f"This tank runs dry on an ordinary day; {size} is needed."
        yield Finding("stop", "too-small", text, "cannot")
    elif values.own < case.volume * (1 - 1e-9):
        lasts, asked = spans_apart(max(0.0, case.bridged), values.bridge)
        text = f"This tank lasts {lasts} without supply; you asked for {asked}."
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
    if case.gravity <= 0 < values.wanted:
        text = (
            "No water runs by height alone: friction takes more head than the tank's height gives."
        )
        yield Finding("stop", "no-water", text, "cannot")
        return
    level = practice.enough(case.gravity, values.wanted, values.wanted)
    if level in ("stop", "care"):
        gets, needed = reader.apart(case.gravity, values.wanted, "pressure")
        text = f"By the tank's height the outlet gets {gets}; you need {needed}."
        yield Finding(level, "short", text)
    if case.raised_static > practice.HIGHEST_AT_OUTLET:
        has, may = reader.apart(case.raised_static, practice.HIGHEST_AT_OUTLET, "pressure")
        text = f"Static pressure at the outlet is {has}; plumbing codes commonly allow {may}."
        yield Finding("care", "outlet-over-limit", text, "harm")


def hours_needed(values: Values, wanted: float) -> float:
    """Hours of pumping a day that bring ``wanted`` m3; infinite where no day is long enough."""
    if values.well is not None:
        return well.hours_for(wanted, values.well, values.gives, values.stored)
    return wanted / (values.gives * HOUR) if values.gives > 0 else math.inf


def refill_time(values: Values, case: Case) -> float:
    """Time to make up what the days without supply took, s; infinite where nothing is over."""
    missed = case.use * values.bridge / DAY
    return storage.days_to_recover(missed, case.supply, case.use)


def protection(case: Case) -> tuple[Fix, ...]:
    """What keeps a pump from running dry, where it draws its well down."""
    if not case.well_limits:
        return ()
    return (Fix("Give the pump dry-run protection, or hold its flow to the well's yield."),)


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
    rows = [
        Link("Count the water a day again", "demand", {}),
        Link("The sun fills this tank, without a battery", "direct", {}),
        Link("One day of this tank, hour by hour", "hill_tank", _one_day(values, case, reader)),
    ]
    if case.raised > 0:
        climb = exact(values.lost - case.raised, "length", reader)
        known, wanted = (exact(p, "pressure", reader) for p in (0.0, values.wanted))
        given = {"known": known, "climb": climb, "wanted": wanted}
        rows.append(Link("The pressure this height gives", "pressure", given))
    if case.raised <= 0 or case.gravity < values.wanted:
        rows.append(Link("A pump after the tank: its pressure tank", "pressure_tank", {}))
    return tuple(rows)


def _one_day(values: Values, case: Case, reader: Reader) -> dict[str, str]:
    """The same tank and use, followed through a day; a slow well as what it gives in its hours."""
    found = {
        "use": exact(case.use / DAY, "daily", reader),
        "pattern": values.pattern,
        "garden": exact(0.0, "daily", reader),
        "volume": exact(max(case.kept, LEAST_TANK), "volume", reader),
        "usable": exact(values.usable, "percent", reader),
        "fills": "sun",
        "gives": exact(case.supply / (values.hours * HOUR), "flow", reader),
        "hours": exact(values.hours, "number", reader).strip(),
        "height": exact(values.height, "length", reader),
    }
    if case.raised > 0:
        found["wanted"] = exact(values.wanted, "pressure", reader)
    return found
