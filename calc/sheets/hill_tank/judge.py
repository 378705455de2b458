"""What a hill tank's day finds: too little coming in, a tank run dry, too little pressure."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import day_tank, practice
from calc.page.answer import Link
from calc.page.findings import Finding
from calc.sheets.hill_tank.case import DRY, HAIR
from calc.sheets.parts.carry import exact
from calc.sheets.parts.clock import clock
from calc.sheets.parts.line_judge import Need, line_findings
from calc.sheets.parts.tank_sizes import span, spans_apart
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.day_tank import Run
    from calc.sheets.hill_tank.case import Case, Day, Year
    from calc.units import Reader


MOST_USE = 0.009999  # m3/s, the most that a page takes


def of_day(day: Day) -> str:
    """ "on a day of the dry month"."""
    return "on a day of the dry month" if day.key == DRY else "on a usual day"


def empty_from(day: Day) -> float | None:
    """When the tank is first empty on a day that repeats, s from the morning; None: never."""
    spans = day_tank.empty_spans(day.pieces, day.run)
    fresh = [start for start, _ in spans if start > 1e-6] or [start for start, _ in spans]
    return fresh[0] if fresh else None


def missing(day: Day) -> float:
    """m3 asked for in vain on a day that repeats; 0 where it is only rounding."""
    lost = sum(day.run.missing)
    return lost if lost > 1e-9 * day.use else 0.0


def lowest_at(day: Day, run: Run) -> float:
    """When the lowest level of a day's run is reached, s from the morning."""
    return day.pieces[run.lowest].start if run.lowest < len(day.pieces) else DAY


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or worth saying."""
    return (
        *_day(case, reader),
        *_year(case, reader),
        *_pressure(case, reader),
        *_today(case),
    )


# The day --------------------------------------------------------------------------------------


def _day(case: Case, reader: Reader) -> Iterator[Finding]:
    day = case.judged
    if day is None:
        return
    if day.supply <= HAIR:
        said = "Nothing comes in, so the tank empties and stays empty."
        yield Finding("stop", "no-source", said, "cannot")
    elif day.short:
        used, comes = reader.apart(day.use, day.supply, "volume")
        subject = "A day of the dry month" if day.key == DRY else "A usual day"
        said = f"{subject} uses {used} and only {comes} comes in; no tank makes that up."
        yield Finding("stop", "too-little", said, "cannot")
    elif missing(day) > 0:
        yield _runs_dry(case, day, reader)
    elif not day.lasts:
        least = max(0.0, min(day.run.levels) - case.kept)
        left, room = reader.apart(least, case.volume - case.kept, "volume")
        at = clock(lowest_at(day, day.run))
        said = f"Little is to spare: at {at} {left} of {room} is left {of_day(day)}."
        yield Finding("care", "nearly-empty", said)


def _runs_dry(case: Case, day: Day, reader: Reader) -> Finding:
    at, lost = clock(empty_from(day)), reader.show(missing(day), "volume")
    state = "down to its reserve" if case.kept > HAIR else "empty"
    said = f"The tank is {state} at {at} {of_day(day)}; {lost} a day is not served."
    if day.key == DRY and missing(case.usual) > 0:
        at = clock(empty_from(case.usual))
        said = (
            f"Even on a usual day the tank is {state} at {at}; {lost} is not served on the worst."
        )
    return Finding("stop", "tank-dry", said)


def _today(case: Case) -> Iterator[Finding]:
    """From the level given, which may be lower than on a day that repeats."""
    share, day = case.values.morning, case.worst
    if share is None or day.short or missing(day) > 0:
        return
    run = day.begun(case.kept + share * (case.volume - case.kept))
    spans = day_tank.empty_spans(day.pieces, run)
    if spans and sum(run.missing) > 1e-9 * day.use:
        at = clock(spans[0][0])
        said = f"With so little in the morning the tank is empty at {at} today; later it is not."
        yield Finding("note", "today", said)


# The year -------------------------------------------------------------------------------------


def _year(case: Case, reader: Reader) -> Iterator[Finding]:
    year = case.year
    if year is None:
        return
    if case.values.volume < case.between_rains * (1 - 1e-9):
        lasts, asked = spans_apart(case.lasting, practice.BETWEEN_RAINS)
        said = f"Without rain a full tank lasts only {lasts}; plan for {asked} between rains."
        yield Finding("care", "dry-spell", said)
    if year.short:
        used, comes = reader.apart(sum(year.asked), sum(year.comes), "volume")
        said = f"A year uses {used} and only {comes} comes in, with the rain; no tank is enough."
        yield Finding("stop", "year-short", said, "cannot")
    elif year.dry:
        lost = reader.show(sum(year.run.missing), "volume")
        said = f"The tank runs dry in {months_of(year)}; over the year {lost} is missing."
        yield Finding("stop", "season", said)


def months_of(year: Year) -> str:
    """The dry months: "August", "June and July", "June and 3 other months"."""
    names = year.dry
    if len(names) <= 2:
        return " and ".join(names)
    return f"{names[0]} and {len(names) - 1} other months"


# The pressure ---------------------------------------------------------------------------------


def _pressure(case: Case, reader: Reader) -> Iterator[Finding]:
    """What the tank's height leaves at the outlet with its water at the lowest."""
    if case.raised <= 0:
        return
    wanted = case.values.wanted
    for one in line_findings(case.line, Need(case.flow, wanted, wanted), reader):
        if one.key not in {"short", "no-water"}:
            yield one
    left = case.line.left(case.flow)
    gets, needed = reader.apart(left, wanted, "pressure")
    flow = reader.show(case.flow, "flow")
    if left < 0 or left <= 0 < wanted:
        said = f"Friction uses all the pressure of the low tank: it cannot give {flow}."
        yield Finding("stop", "no-water", said, "cannot")
        return
    level = practice.enough(left, wanted, wanted)
    if level in ("stop", "care"):
        but = "you need" if level == "stop" else "little more than"
        said = f"With the tank low the outlet gets {gets} at {flow}; {but} {needed}."
        yield Finding(level, "short", said)


# Said where nothing is wrong, and beside it ---------------------------------------------------


def told(case: Case, reader: Reader) -> str:
    """The lowest level of the day."""
    if case.by_rain:
        days = span(case.lasting)
        return f"The tank lasts through the year; from full it lasts {days} without rain."
    left = reader.show(min(case.shown.levels) - case.kept, "volume")
    above = " above its reserve" if case.kept > HAIR else ""
    at, when = clock(lowest_at(case.worst, case.shown)), of_day(case.worst)
    return f"The tank lasts {when}: its lowest is {left}{above}, at {at}."


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """What belongs to these numbers."""
    mass = reader.show(case.values.volume * 1000, "mass")  # 1000 kg/m3
    found = [
        f"The water in the full tank weighs {mass}: it needs level, firm ground; a stand or roof "
        "needs a structural design."
    ]
    if case.kept > HAIR:
        found.append(
            "A reserve is only kept if the pipe for daily use leaves the tank above it, and the "
            "fire authority accepts the tank."
        )
    return tuple(found)


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from a hill tank."""
    values, day = case.values, case.worst
    given = {
        "use": exact(min(day.use / DAY, MOST_USE), "daily", reader),
        "pattern": values.pattern,
        "own": exact(values.volume, "volume", reader),
        "usable": exact(values.usable, "percent", reader),
    }
    if values.fills in ("sun", "hours"):
        flow = day.supply / (values.hours * HOUR)
        given |= {"gives": exact(flow, "flow", reader), "hours": exact(values.hours, "number",
                                                                       reader).strip()}  # fmt: skip
    found = [
        Link("The tank for days without supply", "tank", given),
        Link("Count the water a day again", "demand", {}),
    ]
    if case.raised > 0:
        start = exact(max(case.line.start_pa, 0.0), "pressure", reader)
        climb = exact(-case.raised, "length", reader)
        known = {"known": start, "climb": climb, "wanted": exact(values.wanted, "pressure", reader)}
        found.append(Link("The pressure this height gives", "pressure", known))
    return tuple(found)
