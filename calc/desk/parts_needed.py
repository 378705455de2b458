"""The list of parts of a supply, in the trade's own terms: nominal sizes, counts and lengths."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.desk import said_of
from calc.desk.first_start import pump_named
from calc.pipe import fittings
from calc.sheets.parts import ways
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.first_start import Start
    from calc.desk.work import Work
    from calc.site.site import Site

NOT_KNOWN = said_of.NOT_KNOWN
DIRTY = ("hose", "float", "drip")  # kinds of outlet from which dirty water could be drawn back


@dataclass(frozen=True)
class Part:
    """count: "66 m", "4", "not known"; name: of the part; note: where it goes, or why."""

    count: str
    name: str
    note: str = ""


def parts(work: Work, start: Start | None) -> tuple[Part, ...]:
    """Every part that the site's facts call for.  start: None where it was not worked out.

    Raises nothing.  Source: the site's own rows; what else belongs to a supply is common
    practice, no source.
    """
    site, reader = work.site, Reader(work.system)
    found = [*_pipe(site, reader), *_bends(site), *_joints(start), *_fitted(site)]
    if ways.has_pump(site):
        found += [*_pump(site, reader), *_power(work, reader)]
    found += [*_valves(site, start, reader), *_outlets(site)]
    return tuple(found)


def ordered_m(length_m: float) -> float:
    """Length of pipe to order, m: L (1 + s).  s: ``practice.PIPE_SPARE``."""
    return length_m * (1 + practice.PIPE_SPARE)


def _pipe(site: Site, reader: Reader) -> Iterator[Part]:
    spare = f"{100 * practice.PIPE_SPARE:g} % over"
    for size, length, sections in said_of.pipes(site, reader):
        if length is None:
            yield Part(NOT_KNOWN, f"pipe, {size}", _few(sections))
        else:
            laid = reader.show(length, "length")
            yield Part(reader.show(ordered_m(length), "length"), f"pipe, {size}",
                       f"{laid} and {spare}: {_few(sections)}")  # fmt: skip
    if not site.rows("sections"):
        yield Part(NOT_KNOWN, "pipe")
    if ways.has_pump(site):
        length, held = site.value("suction.length"), site.get("suction.pipe")
        known = site.get("suction.length").known
        size = ways.pipe_named(held.text).label if held.known else f"size {NOT_KNOWN}"
        told = reader.show(ordered_m(length), "length") if known else NOT_KNOWN
        laid = f"{reader.show(length, 'length')} and {spare}" if known else ""
        yield Part(told, f"suction pipe, {size}", laid)


def _few(names: tuple[str, ...]) -> str:
    return ", ".join(names) if len(names) <= 3 else f"{len(names)} sections"


def _bends(site: Site) -> Iterator[Part]:
    """Bends by the size of their pipe; those that nobody counted are said to be assumed."""
    counted: Counter[str] = Counter()
    assumed: set[str] = set()
    for row in site.rows("sections"):
        pipe = site.word("sections", row, "pipe")
        size = ways.pipe_named(pipe).label if pipe else f"size {NOT_KNOWN}"
        counted[size] += site.cell("sections", row, "bends") or 0
        if "bends" not in row or row["bends"].standing != "given":
            assumed.add(size)
    for size, count in counted.items():
        if count:
            note = "two a section assumed where nobody counted" if size in assumed else ""
            yield Part(str(count), f"90° elbow or bend, {size}", note)
    held = site.get("suction.bends")
    if ways.has_pump(site) and held.known and held.text != "0":
        yield Part(held.text, "90° elbow or bend in the suction pipe")


def _joints(start: Start | None) -> Iterator[Part]:
    """Tees and reducing pieces where sections meet."""
    if start is None:
        return
    network = start.case.after.network
    sizes: dict[str, dict[str, float]] = {}
    for name in start.case.built.section_rows:
        run = network.run(name)
        for end in (run.start, start.past(run.end)):
            sizes.setdefault(end, {})[run.pipe.name] = run.pipe.outside_m
    tees: dict[str, list[str]] = {}
    steps: dict[str, list[str]] = {}
    for point, others in start.joined.items():
        if point in start.waters:
            continue
        ways_in = len(others) + (point == start.case.supply.start)
        # where one pipe ends or two meet there is no tee
        ordered = sorted(sizes[point], key=sizes[point].__getitem__, reverse=True)
        tees.setdefault(ordered[0], []).extend([point] * max(0, ways_in - 2))
        for smaller in ordered[1:]:
            steps.setdefault(f"{ordered[0]} to {smaller}", []).append(point)
    for size, points in tees.items():
        if points:
            yield Part(str(len(points)), f"tee, {size}", _at(points))
    for pair, points in steps.items():
        yield Part(f"{len(points)} or more", f"reducing piece, {pair}", _at(points))


def _at(points: list[str], what: str = "at") -> str:
    return f"{what} {', '.join(dict.fromkeys(points))}"


def _fitted(site: Site) -> Iterator[Part]:
    """The filters, valves and meters that sections name."""
    for row in site.rows("sections"):
        part = fittings.BY_KEY.get(site.word("sections", row, "fitting") or "none")
        if part is not None and part.key != "none":
            yield Part("1", _lower(part.name), f"before {site.word('sections', row, 'to')}")


def _lower(name: str) -> str:
    return name[0].lower() + name[1:]


def _pump(site: Site, reader: Reader) -> Iterator[Part]:
    count = site.value("pump.count") or 1
    inside = site.get("pump.placement").text == "in"
    yield Part(str(count), f"pump: {said_of.pump(site)}")
    if not inside and _lifts(site):
        valves = site.get("suction.foot_valves")
        told = valves.text if valves.known else NOT_KNOWN
        yield Part(told, "foot valve with strainer", "at the end of the suction pipe")
    yield Part(str(count), "check valve", "after each pump")
    yield Part(str(count if inside else 2 * count), "isolating valve",
               "after each pump" if inside else "before and after each pump")  # fmt: skip
    yield Part("1", "pressure gauge", "after the pump")
    if not inside:
        yield Part("1", "vacuum gauge", "before the pump")
    volume = said_of.fact(site, "pressure_tank.volume", reader)
    charge = said_of.fact(site, "pressure_tank.precharge", reader)
    yield Part("1", f"pressure tank, {volume}", f"pre-charge {charge}")
    if site.get("pump.control").text == "switch":
        on, off = (said_of.fact(site, f"pump.{key}", reader) for key in ("cut_in", "cut_out"))
        yield Part("1", f"pressure switch, on at {on}, off at {off}")
    if site.get("pump.dry_run").text == "yes":
        yield Part("1", "dry-run protection")


def _lifts(site: Site) -> bool:
    """Whether the pump draws water up, or nobody knows."""
    level = site.value("water.level")
    return level is None or level < ways.pump_height(site)


def _power(work: Work, reader: Reader) -> Iterator[Part]:
    site = work.site
    cable = work.part("cable")
    if site.get("power.cable").known:
        length = reader.show(ordered_m(site.value("power.cable")), "length")
        told = said_of.figure(cable, "Voltage at the pump, running")
        size = told.note.partition("with ")[2] if told and current_known(work) else ""
        yield Part(length, f"cable, {size or f'size {NOT_KNOWN}'}", "all its cores; local code")
    cautions = cable.answer.cautions if cable and cable.answer and current_known(work) else ()
    for caution in cautions:
        if "fuse" in caution:
            yield Part("1", "fuse or breaker", caution)
    if site.get("power.panel").known:
        series, strings = site.value("power.series"), site.value("power.strings")
        count = str(series * strings) if series and strings else NOT_KNOWN
        yield Part(count, f"panel, {said_of.fact(site, 'power.panel', reader)}")
    if site.get("power.capacity").known:
        kind = said_of.fact(site, "power.battery", reader)
        yield Part("1", f"battery, {said_of.fact(site, 'power.capacity', reader)}", kind)


def current_known(work: Work) -> bool:
    """Whether the current of the cable's page is of the site's own pump and voltage."""
    return pump_named(work.site) and work.site.get("power.voltage").known


def _valves(site: Site, start: Start | None, reader: Reader) -> Iterator[Part]:
    """Relief valve, drains and air valves, where the heights and pressures ask for them."""
    if start is None:
        yield Part(NOT_KNOWN, "relief valve, drains and air valves",
                   "heights or pressures are not known")  # fmt: skip
        return
    weakest = start.weakest
    if ways.has_pump(site) and (start.overloads or weakest is None or start.control != "held"):
        rated = NOT_KNOWN if weakest is None else reader.show(weakest, "pressure")
        yield Part("1", "relief valve", f"opens below the lowest rating, {rated}")
    for name, what, points in (("drain valve", "lowest:", start.lows),
                               ("air valve", "crest:", start.crests)):  # fmt: skip
        if points:
            yield Part(str(len(points)), name, _at(list(points), what))
    if not ways.has_pump(site):
        yield Part("1", "strainer and isolating valve", "at the source")


def _outlets(site: Site) -> Iterator[Part]:
    kinds: Counter[str] = Counter()
    for row in site.rows("outlets"):
        most = max(site.cell("outlets", row, key) or 0 for key in ("before", "after"))
        kinds[site.word("outlets", row, "kind")] += max(1, most)
    for kind, count in kinds.items():
        yield Part(str(count), f"outlet: {_lower(practice.OUTLET_BY_KEY[kind].name)}")
    rows = len(site.rows("outlets"))
    if rows:
        yield Part(str(rows), "isolating valve", "one before each row of outlets")
    dirty = sum(count for kind, count in kinds.items() if kind in DIRTY)
    if dirty:
        yield Part(str(dirty), "backflow preventer or air gap", "hose, trough, drip; local code")
