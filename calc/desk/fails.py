"""What would make a supply fail: the site on a bad day, each worked out anew as a whole."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice
from calc.desk import verdict
from calc.desk.changes import ORDER
from calc.desk.work import work_out
from calc.sheets.parts import ways
from calc.sheets.parts.bindings import written
from calc.site.facts import BY_PATH, MONTHS, YEAR, Fact
from calc.site.rows import BY_TABLE, PUMP, SOURCE, fold

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.desk.work import Work
    from calc.page.findings import Finding
    from calc.site.site import Site
    from calc.units import Reader

FILTERS = ("filter", "twin", "strainer")  # parts that get dirty
OPEN = int(BY_TABLE["outlets"].column("after").high)  # at most, of one row


@dataclass(frozen=True)
class Day:
    """A bad day: its key and title, and what it does to the site, in a sentence; site: None where
    the site has nothing that it could touch (``told`` says what is missing)."""

    key: str
    title: str
    told: str
    site: Site | None


@dataclass(frozen=True)
class Outcome:
    """A bad day worked out. verdict: of the whole site then; new: the worst finding that is not
    there on a usual day (None: nothing gets worse); margin: Pa to spare at the weakest outlet
    before and after."""

    day: Day
    verdict: verdict.Whole
    worse: bool
    new: Finding | None
    margin: tuple[float | None, float | None]
    weakest: str


def days(site: Site, reader: Reader) -> tuple[Day, ...]:
    """All that is tried, in the order it is told."""
    return tuple(make(site, reader) for make in _DAYS)


def dirty_filter(site: Site, reader: Reader) -> Day:
    """Every filter due for a change; where there is none, one such after the pump."""
    loss, flow = (
        reader.show(practice.FILTER_DIRTY, "pressure", 2),
        reader.show(practice.FILTER_FLOW, "flow", 2),
    )
    rows = site.rows("sections")
    held = [i for i, row in enumerate(rows) if site.word("sections", row, "fitting") in FILTERS]
    told = f"Its filter takes {loss} at {flow}."
    if not held:
        held = [
            i for i, row in enumerate(rows)
            if fold(site.word("sections", row, "from")) in (fold(PUMP), fold(SOURCE))
            and site.word("sections", row, "fitting") == "none"
        ][:1]  # fmt: skip
        told = f"As if a filter due for a change were in the first pipe: it takes {loss} at {flow}."
    if not held:
        return Day("filter", "A dirty filter", "No pipe section has room for a filter.", None)
    for index in held:
        site = site.put_cell("sections", index, "fitting", Fact("dirty"))
    return Day("filter", "A dirty filter", told, site)


def cold_night(site: Site, reader: Reader) -> Day:
    """Cold water, which is stiffer, and where its climate is known colder air at the battery."""
    cold = reader.show(practice.COLD_WATER, "temperature", 2)
    told, name = f"Water at {cold}.", "A cold night"
    if site.value("water.temperature") <= practice.COLD_WATER:
        return Day("cold", name, f"The water is at {cold} or colder as it is.", None)
    site = site.put("water.temperature", written(practice.COLD_WATER, "temperature"))
    if site.get("place.climate").known:
        numbers = site.value("place.climate")
        text = " ".join(
            f"{n if at < YEAR else max(n - practice.COLD_SPELL, -60.0):g}"
            for at, n in enumerate(numbers[:MONTHS])
        )
        fact = replace(site.get("place.climate"), text=text)
        site = site.put("place.climate", fact)
        told = f"Water at {cold}; air at the battery {_kelvin(practice.COLD_SPELL, reader)} colder."
    return Day("cold", name, told, site)


def _kelvin(difference: float, reader: Reader) -> str:
    return f"{difference * 1.8:g} °F" if reader.system == "us" else f"{difference:g} °C"


def one_more(site: Site, _reader: Reader) -> Day:
    """One more shower open than the site says, or another outlet where there is no shower."""
    rows = site.rows("outlets")
    kinds = [site.word("outlets", row, "kind") for row in rows]
    order = sorted(range(len(rows)), key=lambda i: (kinds[i] != "shower", i))
    for index in order:
        count = site.cell("outlets", rows[index], "after")
        name = site.word("outlets", rows[index], "name")
        if name and count < OPEN:
            site = site.put_cell("outlets", index, "after", Fact(str(count + 1)))
            what = "shower" if kinds[index] == "shower" else "outlet"
            return Day(
                "more", f"One more {what} open", f"{name}: {count + 1} open, not {count}.", site
            )
    return Day("more", "One more shower open", "The site names no outlet.", None)


def dry_month(site: Site, reader: Reader) -> Day:
    """The water of a well lower, and less from any source."""
    name, told = "A dry month", []
    if ways.has_pump(site) and site.get("water.level").known:
        level = site.value("water.level") - practice.DRY_FALL
        low = BY_PATH["water.level"].low
        site = site.put("water.level", written(max(level, low), "length"))
        told.append(f"water {reader.show(practice.DRY_FALL, 'length', 2)} lower")
    for path in ("water.yield", "store.dry_inflow"):
        if site.get(path).known:
            less = site.value(path) * practice.DRY_YIELD
            site = site.put(path, written(less, "flow"))
            if "half" not in " ".join(told):
                told.append("half of what the source gives")
    if not told:
        return Day("dry", name, "Neither the water level nor what the source gives is known.", None)
    said = " and ".join(told)
    return Day("dry", name, f"{said[:1].upper()}{said[1:]}.", site)


def low_battery(site: Site, _reader: Reader) -> Day:
    """A battery that is old or half charged."""
    name = "A low battery"
    if not site.get("power.capacity").known:
        return Day("battery", name, "The battery's capacity is not known.", None)
    less = site.value("power.capacity") * practice.LOW_BATTERY
    if less < BY_PATH["power.capacity"].low:
        return Day("battery", name, "The battery is too small to be halved.", None)
    site = site.put("power.capacity", written(less, "charge"))
    return Day("battery", name, "Half of its capacity, as when old or half charged.", site)


_DAYS: tuple[Callable[[Site, Reader], Day], ...] = (
    dirty_filter, cold_night, one_more, dry_month, low_battery,
)  # fmt: skip


def tried(work: Work, day: Day) -> Outcome | None:
    """A bad day worked out in the whole site; None where it cannot touch this site."""
    if day.site is None:
        return None
    usual, bad = (work_out(one, work.system, quick=True) for one in (work.site, day.site))
    before = {verdict.mark(one) for one in verdict.found(usual)}
    news = [one for one in verdict.found(bad) if verdict.mark(one) not in before]
    told = verdict.quickly(bad)
    worse = ORDER.index(told.level) > ORDER.index(usual.level) or bool(news)
    new = verdict.in_full(bad, news[0]) if news else None
    margins = verdict.margin(usual), verdict.margin(bad)
    return Outcome(day, told, worse, new, margins, bad.weakest)
