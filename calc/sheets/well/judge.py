"""A well judged: what is found, the sentence told, the advice that belongs to these numbers."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, well_yield
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.tank_sizes import gap_words
from calc.units import DAY, MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.well.case import Case
    from calc.units import Reader


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or not checked."""
    if case.yields <= 0:
        said = "No water flows back into this well, so it cannot keep giving any."
        return (Finding("stop", "no-flow", said, "cannot"),)
    return (
        *_day(case, reader),
        *_suction(case, reader),
        *_dry(case, reader),
        *_busiest(case, reader),
        *_place(case, reader),
        *_cooling(case, reader),
        *_test(case, reader),
    )


def _day(case: Case, reader: Reader) -> Iterator[Finding]:
    """The use of a day against what well and pump can give."""
    most, use = case.day_most, case.use
    name = "the well" if case.yields <= case.pump else "the pump"
    if use > most * MET:
        used, gives = reader.apart(use, most, "volume")
        said = f"You use {used} a day, and {name} can give {gives} at most."
        yield Finding("stop", "too-little", said, "cannot")
    elif use > practice.WELL_SHARE * most * MET:
        used, gives = reader.apart(use, most, "volume")
        said = f"You use {used} of the {gives} a day that {name} can give: little is left to spare."
        if used == gives:
            said = f"You use all of the {gives} a day that {name} can give."
        yield Finding("care", "well-near", said)


def _suction(case: Case, reader: Reader) -> Iterator[Finding]:
    """A pump above the water, which air pressure must reach."""
    if case.submersible:
        return
    most = practice.SEA_LEVEL_AIR / case.weight
    if case.level >= most:
        deep, limit = reader.apart(case.level, most, "length")
        said = f"No pump above a well draws from {deep}: air pressure raises water {limit} at most."
        yield Finding("stop", "suction", said, "cannot")
    elif case.level > practice.SUCTION_LIFT * MET:
        deep, usual = reader.apart(case.level, practice.SUCTION_LIFT, "length")
        said = f"Not checked: whether the pump draws from {deep}; up to {usual} passes."
        yield unchecked("suction-unchecked", said)


def _dry(case: Case, reader: Reader) -> Iterator[Finding]:
    """A pump that takes more than flows in."""
    if case.keeps_up:
        return
    takes, gives = reader.apart(case.pump, case.yields, "flow")
    after = emptied(case)
    if case.dry:
        said = f"The pump takes {takes}, the well gives {gives}. It stops {after} and must rest."
        yield Finding("note", "cycles", said)
        return
    if case.runs <= case.use_run:
        said = (
            f"The pump takes {takes} and the well gives {gives}: it runs dry {after}, with no "
            "protection."
        )
        yield Finding("stop", "runs-dry", said, "cannot")
        return
    said = f"Left running, the pump runs dry {after}: it takes {takes}, the well gives {gives}."
    yield Finding("care", "runs-dry", said)


def emptied(case: Case) -> str:
    """When the level is at its lowest: "after 115 min"."""
    return "at once" if case.runs < 1 else f"after {gap_words(case.runs)}"


def _busiest(case: Case, reader: Reader) -> Iterator[Finding]:
    """The busiest time, from the well alone or from a storage tank."""
    if case.cistern is not None:
        if case.cistern * MET < case.tank:
            has, needs = reader.apart(case.cistern, case.tank, "volume")
            said = f"The storage tank of {has} is too small: it takes {needs} to even out the day."
            yield Finding("stop", "cistern", said)
        return
    peak, most = case.values.peak, case.peak_most
    if peak > most * MET:
        used, gives = reader.apart(peak, most, "volume")
        long = gap_words(case.values.peakfor)
        said = f"In the busiest {long} you use {used}; well and pump then give {gives}."
        yield Finding("stop", "peak", said)


def _place(case: Case, reader: Reader) -> Iterator[Finding]:
    """The intake over the floor of the well."""
    if case.deepest is None:
        need = reader.show(case.intake + case.values.clear, "length")
        said = f"Not checked: whether the intake is clear of the floor; a well {need} deep passes."
        yield unchecked("floor-unchecked", said)
    elif case.intake > case.deepest * MET:
        over = case.depth - case.intake
        if over <= 0:
            said = "The intake is on the floor of the well, where it draws sand and mud."
        else:
            is_now, keeps = reader.apart(over, case.values.clear, "length")
            said = f"The intake is {is_now} above the floor; with less than {keeps} it draws sand."
        yield Finding("care", "floor", said)


def _cooling(case: Case, reader: Reader) -> Iterator[Finding]:
    """Water past the motor of a submersible pump."""
    if not case.submersible:
        return
    least = reader.show(case.least_cooling, "speed")
    if case.cooling is None:
        said = f"Not checked: whether water passes the motor at {least} or more, which cools it."
        yield unchecked("cooling-unchecked", said)
    elif case.cooling * MET < case.least_cooling:
        now, least = reader.apart(case.cooling, case.least_cooling, "speed")
        said = f"Water passes the motor at {now}; it needs {least} to stay cool."
        yield Finding("care", "cooling", said)


def _test(case: Case, reader: Reader) -> Iterator[Finding]:
    """What the test does not bear."""
    flow = case.steadily
    if case.tested is not None and flow > case.tested * MET:
        gives, pumped = reader.apart(flow, case.tested, "flow")
        said = f"Not checked: whether the well keeps giving {gives}; the test pumped only {pumped}."
        yield unchecked("beyond-test", said)
    if case.test is not None and case.test.misses_rest(case.values.readings[0].level - case.static):
        missed = reader.show(case.test.line.at_one, "length")
        said = f"Not checked: whether the water lasts; the level comes back {missed} too low."
        yield unchecked("limited", said)


def told(case: Case, reader: Reader) -> str:
    """What the well can keep giving, in a day, against the use of a day."""
    if case.keeps_up and case.tested is not None and case.yields > case.tested:
        takes, level = reader.show(case.pump, "flow"), reader.show(case.level, "length")
        return f"The well keeps up with the pump's {takes}: the level falls to {level}."
    gives, day = reader.show(case.yields, "flow"), reader.show(case.yields * DAY, "volume")
    use = reader.show(case.use, "volume")
    return f"The well can keep giving {gives}, {day} a day. You use {use}."


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Advice for these numbers."""
    found = []
    if not case.dry:
        found.append(
            "Fit dry-run protection in any case: levels fall in a dry season, and a pump that runs "
            "dry is ruined within minutes."
        )
    if case.known == "told":
        found.append("A driller's figure is often from a short test with air. Test the well again.")
    if case.submersible:
        found += _submersible(case, reader)
    if case.values.sensed == "house":
        found.append(
            "Sensed at the house, the pressure at the pump is higher by the height between and by "
            "the friction on the way. The pipe must be rated for that."
        )
    return tuple(found)


def _submersible(case: Case, reader: Reader) -> Iterator[str]:
    """Check valves, and water that comes in above the motor."""
    every = reader.show(practice.CHECK_VALVES_EVERY, "length")
    more = well_yield.check_valves(case.drop)
    if more:
        plural = "valve" if more == 1 else "valves"
        yield (
            f"Besides the check valve at the pump, fit {more} more check {plural} in the drop "
            f"pipe, no more than {every} apart."
        )
    else:
        yield f"A check valve at the pump is enough for this drop pipe, shorter than {every}."
    if case.sleeve is None:
        yield (
            "Where water comes in above the pump, it does not pass the motor: it then needs a "
            "cooling sleeve."
        )


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from a well."""
    well = {
        "well": exact(case.yields, "flow", reader),
        "gives": exact(case.pump, "flow", reader),
    }
    if case.stored is not None and math.isfinite(case.stored):
        well["stored"] = exact(min(case.stored, 200.0), "volume", reader)
    rows = [Link("How big a storage tank for this well", "tank", well)]
    if not case.submersible and case.level <= 50:
        lift = {"lift": exact(case.level, "length", reader)}
        rows.insert(0, Link("Can a pump above draw it up", "suction", lift))
    return (*rows, Link("Count the water a day again", "demand", {}))
