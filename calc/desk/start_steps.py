"""Steps to fill, prime, start and test a supply, each with the reading to expect at it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.desk import said_of
from calc.desk.first_start import BUCKET_WORDS, BUCKETS
from calc.desk.parts_needed import current_known
from calc.sheets.parts import ways
from calc.site.rows import PUMP, SOURCE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.first_start import AtOutlet, Start
    from calc.desk.work import Work
    from calc.units import Reader

NOT_KNOWN = said_of.NOT_KNOWN
DISPLAY = (
    "Read current and voltage from a display only. Measuring inside a box is for a licensed person."
)


def steps(work: Work, start: Start | None, reader: Reader) -> tuple[tuple[str, str], ...]:
    """(what to do, what to expect) in their order.  start: None where it was not worked out.

    Raises nothing.  Source of the order: common practice, no source; of the readings: the
    sheets' own figures and ``first_start``.
    """
    first = _with_pump if ways.has_pump(work.site) else _by_height
    return (*first(work, start, reader), *_tests(work, start, reader))


def _with_pump(work: Work, start: Start | None, reader: Reader) -> Iterator[tuple[str, str]]:
    site = work.site
    yield (
        "Pressure tank empty, its water side open: check the pre-charge.", _pre_charge(work, reader)
    )  # fmt: skip
    yield (
        "Flush pipe and tank. Close the drains, open the outlet that lies highest.",
        _highest(start, reader),
    )
    if site.get("pump.placement").text != "in":
        yield (
            "Prime: fill suction pipe and pump casing with water until no air comes out.",
            "The level stays. If it sinks, the foot valve or a joint leaks.",
        )
    yield (
        "A licensed person connects the power, to local codes. Start against a valve just open.",
        "Water within a minute. If not, stop and prime again: a dry pump is damaged.",
    )  # fmt: skip
    yield "Open the valve slowly. Let air out until the highest outlet runs without spitting.", ""
    yield from _suction(work, start, reader)
    yield "Close every outlet, and watch the pump stop.", _stops(work, start, reader)


def _suction(work: Work, start: Start | None, reader: Reader) -> Iterator[tuple[str, str]]:
    """The vacuum before the pump; not known where the flow would be that of an invented pump."""
    suction = work.part("suction")
    told = said_of.figure(suction, "Vacuum on a gauge")
    if told is None or suction is None:
        return
    if start is None:
        yield "Read the vacuum gauge before the pump, with water running.", NOT_KNOWN
        return
    flow = _text(suction, "flow", reader)
    vacuum = reader.show(told.value, told.quantity, told.digits)
    yield (
        f"Read the vacuum gauge before the pump, with {flow} running.",
        f"{vacuum}. More means a clog or a longer lift.",
    )


def _text(part: object, key: str, reader: Reader) -> str:
    """A field of a part as it stands, with its unit."""
    state = part.state  # type: ignore[attr-defined]
    entry = part.sheet.field(key)  # type: ignore[attr-defined]
    unit = state.units.get(key) or reader.unit(entry.quantity).symbol
    return f"{state.text(entry)} {unit}"


def _pre_charge(work: Work, reader: Reader) -> str:
    held = said_of.fact(work.site, "pressure_tank.precharge", reader)
    if held != NOT_KNOWN:
        return held
    switched = work.site.get("pump.control").text == "switch"
    if switched and work.site.get("pump.cut_in").known:
        usual = work.site.value("pump.cut_in") - practice.PRECHARGE_GAP
        return f"{reader.show(usual, 'pressure')}: usual for this cut-in"
    return f"{NOT_KNOWN}: as the tank’s data sheet says"


def _highest(start: Start | None, reader: Reader) -> str:
    if start is None or not start.outlets:
        return ""
    heights = start.case.after.network.heights
    top = max(start.outlets, key=lambda one: heights.get(one.point, 0.0))
    return f"Highest: {top.name}, {_over(start, top.point, reader)}"


def _over(start: Start, point: str, reader: Reader) -> str:
    heights = start.case.after.network.heights
    rise = heights[point] - heights[start.case.supply.start]
    place = "the pump" if start.control else "the source’s water"
    return f"{reader.show(abs(rise), 'length')} {'above' if rise >= 0 else 'below'} {place}"


def _stops(work: Work, start: Start | None, reader: Reader) -> str:
    site = work.site
    if site.get("pump.control").text == "switch":
        on, off = (said_of.fact(site, f"pump.{key}", reader) for key in ("cut_in", "cut_out"))
        return f"Off at {off}, on again at {on}"
    if start is not None and start.control == "held":
        again = start.static[PUMP] * practice.RESTART_SHARE
        return (
            f"{reader.show(start.static[PUMP], 'pressure')} at the pump, commonly on again near "
            f"{reader.show(again, 'pressure')}"
        )
    if start is not None and PUMP in start.static:
        most = reader.show(start.static[PUMP], "pressure")
        return f"Nothing stops it: up to {most}. Do not leave it so"
    return NOT_KNOWN


def _by_height(work: Work, start: Start | None, reader: Reader) -> Iterator[tuple[str, str]]:
    yield "Check the strainer, the overflow and the isolating valve at the source.", ""
    yield (
        "Open the far end and every drain. Open the source’s valve a little, and flush.",
        "Clear water at the far end",
    )
    yield (
        "Close the drains from the lowest up. Let air out at every crest.",
        ", ".join(start.crests if start else ()),
    )
    ends = [one for one in start.points if one not in start.waters] if start else []
    if start is None or not ends:
        return
    lowest = min(ends, key=start.case.after.network.heights.__getitem__)
    if start.static.get(lowest, -1.0) >= 0:
        yield (
            "Close every outlet, and read a gauge at the lowest point.",
            f"{lowest}: {reader.show(start.static[lowest], 'pressure')}",
        )


def _tests(work: Work, start: Start | None, reader: Reader) -> Iterator[tuple[str, str]]:
    yield (
        "All closed, the supply shut off: look at every joint, and read the gauge for an hour.",
        "It keeps its pressure. What falls is a leak.",
    )
    if start is None:
        yield "Read static and running pressure at every outlet.", NOT_KNOWN
        if ways.has_pump(work.site):
            yield f"Note what the display says. {DISPLAY}", f"Current {NOT_KNOWN}"
        return
    bucket = BUCKET_WORDS[work.system]
    yield (
        f"Open one outlet alone, read its pressure, time a bucket of {bucket}. Then the next.",
        "As in the table of readings",
    )
    total = said_of.shown(work.part("keep_up"), "Flow of everything open")
    where = PUMP if start.control else SOURCE
    told = f"{total} together"
    if start.control:
        told += f", {reader.show(start.case.after.pressure(where), 'pressure')} at the pump"
    yield "Open together what the table names. Read every pressure again.", told
    cable = work.part("cable") if current_known(work) else None
    current = said_of.shown(cable, "Running current")
    if start.control and current != NOT_KNOWN:
        yield f"With all of it open, note what the display says. {DISPLAY}", f"{current}"
    elif start.control:
        yield f"Note what the display says. {DISPLAY}", f"Current {NOT_KNOWN}"
    if start.control and (start.overloads or start.weakest is None):
        rated = NOT_KNOWN if start.weakest is None else reader.show(start.weakest, "pressure")
        yield (
            "Relief valve: lift it by hand once, as its data sheet says.",
            f"It opens below the lowest rating, {rated}",
        )


def outlet_cells(one: AtOutlet, system: str, reader: Reader) -> tuple[str, ...]:
    """An outlet's row of readings as texts: static, alone, bucket, all open; "up to" where the
    pump stops and starts meanwhile."""
    seconds = one.seconds(BUCKETS[system])
    alone, together = (
        "up to " if swings else "" for swings in (one.alone_swings, one.together_swings)
    )
    return (
        one.name,
        told_static(one.static_pa, reader),
        alone + _shown(one.alone_pa, "pressure", reader),
        alone + _shown(one.alone_m3s, "flow", reader),
        "–" if seconds is None else f"{'from ' if alone else ''}{seconds:.0f} s",
        together + _shown(one.together_pa, "pressure", reader, "closed"),
        together + _shown(one.together_m3s, "flow", reader, "closed"),
    )


def told_static(static_pa: float | None, reader: Reader) -> str:
    """A static pressure, or that no water stands at the point."""
    if static_pa is not None and static_pa < 0:
        return said_of.NO_WATER
    return _shown(static_pa, "pressure", reader)


def _shown(value: float | None, quantity: str, reader: Reader, none: str = NOT_KNOWN) -> str:
    if value is None:
        return none
    if quantity == "pressure":
        return said_of.running(value, reader)
    return reader.show(value, quantity)
