"""What is tried for outlets that get too little, and for pipes that are too narrow."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.network.parts import Reducer, Run
from calc.network.state import SEEPING
from calc.pipe import fittings
from calc.pump.invented import PUMPS
from calc.sheets.keep_up import valves
from calc.sheets.keep_up.case import Case, Tap, solved, sure_pa
from calc.sheets.keep_up.cause import HEIGHTS, between
from calc.sheets.keep_up.changed import lay_words, tank_words
from calc.sheets.keep_up.options import (
    Option,
    larger,
    section_of,
    set_up,
    with_sections,
    with_source,
)
from calc.sheets.keep_up.pump_signs import most_at_pump
from calc.site.supply import INLET, SUCTION, WATER, SectionRow, Supply, TankRow, fold

if TYPE_CHECKING:
    from calc.pipe.pipes import Pipe
    from calc.units import Reader

MOST_RUNS = 3  # pipe sections changed at once: more is a new supply; our choice
FILL = 1.0  # m, by which the pump must reach over a tank to fill it; our choice
CISTERN, CISTERN_WAY = "hill tank", 50.0  # name; m of pipe to it: the hill is yours; our choice
AGAIN = 1.05  # share of a shortfall added at a time
TURNS = 5  # most times a figure is raised by what is still missing


def missing(case: Case) -> float:
    """What the shortest outlet lacks to be more than borderline, Pa; 0 or less: nothing."""
    solution = case.after
    return max(
        (
            sure_pa(outlet.content_pa) - solution.pressure(outlet.node)
            for outlet in solution.network.outlets
            if outlet.open
        ),
        default=0.0,
    )


# Filters ----------------------------------------------------------------------------------------


def _filters(case: Case) -> Iterator[tuple[int, SectionRow]]:
    """Sections with a filter on the way to the main outlet."""
    for link in case.way:
        at = section_of(case, link.name) if isinstance(link, Run) else None
        if at is not None and fittings.BY_KEY[at[1].part].device is not None:
            yield at


def clean(case: Case, _reader: Reader) -> Iterator[Option]:
    """A clean filter for a dirty one."""
    for at, row in _filters(case):
        if row.part == "dirty":
            where = f"{row.start} to {row.end}"
            new = with_sections(case.supply, {at: {"part": "filter"}})
            yield Option(f"Clean or change the filter from {where}", new)


def second_filter(case: Case, _reader: Reader) -> Iterator[Option]:
    """Two filters side by side pass half the flow each: a quarter of the loss."""
    for at, row in _filters(case):
        if row.part != "twin":
            where = f"{row.start} to {row.end}"
            new = with_sections(case.supply, {at: {"part": "twin"}})
            yield Option(f"Fit two clean filters side by side from {where}", new)


# The setting ------------------------------------------------------------------------------------


def set_higher(case: Case, reader: Reader) -> Iterator[Option]:
    """The set pressure up by what is missing, until it is enough or too much."""
    found = _raised(case, reader)
    source = found.supply.pumping if found is not None else None
    if found is not None and source is not None:
        shown = reader.show(source.reads_pa, "pressure")
        yield Option(f"Raise the set pressure to {shown}", found.supply, case=found)


def _raised(case: Case, reader: Reader) -> Case | None:
    """The case with the set pressure raised; None where it cannot be or does not help."""
    source, found = case.supply.pumping, None
    if source is None or source.set_pa is None or not (case.held or case.cause.kind == "set"):
        return None
    set_pa, short, most = source.set_pa, missing(case), most_at_pump(case, source)
    for _ in range(TURNS):
        set_pa = set_up(set_pa + max(AGAIN * short, 1.0), reader, source.sensed_pa)
        if set_pa > most:
            return found
        found = solved(with_source(case.supply, set_pa=set_pa), case.ask, found or case)
        short = missing(found)
        if short <= 0 or not found.held:
            return found
    return found


def crest_higher(case: Case, reader: Reader) -> Iterator[Option]:
    """The set pressure up by what the lowest pressure on the way is below zero."""
    source, least = case.supply.pumping, _least_on_way(case)
    for turn in range(1, TURNS + 1):
        if source is None or source.set_pa is None or least >= 0:
            return
        set_pa = set_up(source.set_pa - AGAIN * turn * least, reader, source.sensed_pa)
        if set_pa > most_at_pump(case, source):
            return
        shown = reader.show(set_pa - source.sensed_pa, "pressure")
        yield Option(f"Raise the set pressure to {shown}", with_source(case.supply, set_pa=set_pa))


def _least_on_way(case: Case) -> float:
    """The lowest pressure of a point past the pump with running water, Pa."""
    flows = case.after.flows
    ends = {
        end for link in case.after.network.links if abs(flows[link.name]) > SEEPING
        for end in (link.start, link.end)
    } - {INLET, WATER}  # fmt: skip
    places = (place.name for place in case.after.network.places)
    return min((case.after.pressure(name) for name in places if name in ends), default=0.0)


def valve_higher(case: Case, reader: Reader) -> Iterator[Option]:
    """A higher setting of the pressure-reducing valves on the way to the main outlet."""
    for link in case.way:
        if not isinstance(link, Reducer) or (at := section_of(case, link.name)) is None:
            continue
        if link.vented:  # ``fixes_fall``
            continue
        for part in fittings.PARTS:
            if part.reducer is not None and part.reducer[0] > link.set_pa:
                held = reader.show(part.reducer[0], "pressure")
                new = with_sections(case.supply, {at[0]: {"part": part.key}})
                yield Option(f"Set {link.name} to {held}", new)


def valve_up(case: Case, reader: Reader) -> Iterator[Option]:
    """A higher setting of the valves that could give too little near their rated flow."""
    low = [one.other for one in valves.falling(case) if one.level != "note"]
    links = [case.after.network.link(name) for name in low]
    for part in fittings.PARTS:
        held = part.reducer[0] if part.reducer is not None else 0.0
        up = [one for one in links if isinstance(one, Reducer) and one.set_pa < held]
        rows = [at for one in up if (at := section_of(case, one.name)) is not None]
        if rows and len(rows) == len(low):
            where = up[0].name + (f" and {len(up) - 1} more" if len(up) > 1 else "")
            text = f"Set {where} to {reader.show(held, 'pressure')}"
            new = with_sections(case.supply, {at: {"part": part.key} for at, _ in rows})
            yield Option(text, new)


# Wider pipe -------------------------------------------------------------------------------------


def wider(case: Case, _reader: Reader) -> Iterator[Option]:
    """One section a size, two or three up; then the next section with it: least plastic first.

    The widest of all is tried before the others: if it is not enough, none of them can be.
    """
    if case.main is None or case.cause.kind in HEIGHTS:
        return
    lossy = case.sections_on_way
    chosen = sorted(lossy, key=lambda link: -case.after.lost(link.name))[:MOST_RUNS]
    options = []
    for count in range(1, len(chosen) + 1):
        for up in range(1, practice.MOST_SIZES_UP + 1):
            sizes = {link.name: larger(link.pipe, up) for link in chosen[:count]}
            sizes = {name: pipe for name, pipe in sizes.items() if pipe is not None}
            if sizes and sizes not in options:
                options.append(sizes)
    if not options:
        return
    widest = _tried(_with_pipes(case, options[-1]), case)
    if missing(widest.case) > 0:
        yield widest
        return
    for sizes in sorted(options, key=lambda sizes: _plastic(chosen, sizes)):
        option = _tried(_with_pipes(case, sizes), case)
        if missing(option.case) <= 0:
            yield option


def _tried(option: Option, case: Case) -> Option:
    """The same option, solved."""
    return replace(option, case=solved(option.supply, case.ask, case))


def _with_pipes(case: Case, sizes: dict[str, Pipe]) -> Option:
    """The ``Option`` of other pipes by section."""
    rows = case.built.section_rows
    changed = {rows[name]: {"pipe": pipe} for name, pipe in sizes.items()}
    words = lay_words(f"{pipe.label} from {between(name)}" for name, pipe in sizes.items())
    return Option(words, with_sections(case.supply, changed))


def _plastic(links: list[Run], sizes: dict[str, Pipe]) -> float:
    """Goes with what the new pipe weighs: length times outside diameter squared, m3."""
    return sum(
        link.length_m * sizes[link.name].outside_m ** 2 for link in links if link.name in sizes
    )


def slower(case: Case, _reader: Reader) -> Iterator[Option]:
    """Every pipe in which water runs too fast so much wider that it does not."""
    sections, suction = {}, None
    for link in case.after.network.links:
        if not isinstance(link, Run):
            continue
        pipe = _slow_enough(link.pipe, abs(case.after.flows[link.name]))
        if pipe is link.pipe:
            continue
        if pipe is None:
            return
        if link.name == SUCTION:
            suction = pipe
        else:
            sections[link.name] = pipe
    if not sections and suction is None:
        return
    option = _with_pipes(case, sections) if sections else Option("", case.supply)
    if suction is not None:
        also = lay_words([f"{suction.label} as the suction pipe"])
        text = f"{option.text}. {also}" if sections else also
        option = Option(text, with_source(option.supply, suction_pipe=suction))
    yield option


def _slow_enough(pipe: Pipe, flow: float) -> Pipe | None:
    """The pipe itself, or the first wider one that keeps the speed down; None within three."""
    for up in range(practice.MOST_SIZES_UP + 1):
        other = pipe if up == 0 else larger(pipe, up)
        if other is None:
            return None
        # a little less than the limit, for more flows through a wider pipe
        speed = flow / (0.7854 * other.inside_m**2) * (1.0 if up == 0 else 1.05)
        if practice.speed_level(speed) != "care":
            return other
    return None


# Pumps and tanks --------------------------------------------------------------------------------


def second_pump(case: Case, reader: Reader) -> Iterator[Option]:
    """One more pump of the same kind in parallel, set as high as it then takes."""
    source = case.supply.pumping
    if source is None or source.pumps >= practice.MOST_IN_PARALLEL:
        return
    if case.cause.kind != "lift":
        new = with_source(case.supply, pumps=source.pumps + 1)
        yield _and_higher("Fit one more pump of this kind in parallel", new, case, reader)


def _and_higher(text: str, supply: Supply, case: Case, reader: Reader) -> Option:
    """An ``Option``, with the set pressure raised too where some outlet is still short."""
    changed = solved(supply, case.ask, case)
    if missing(changed) > 0:
        higher = _raised(changed, reader)
        source = higher.supply.pumping if higher is not None else None
        if higher is not None and source is not None:
            shown = reader.show(source.reads_pa, "pressure")
            return Option(f"{text} and raise the set pressure to {shown}", higher.supply)
    return Option(text, supply)


def larger_pump(case: Case, reader: Reader) -> Iterator[Option]:
    """The invented pumps with more head, set as high as it then takes."""
    source = case.supply.pumping
    for pump in PUMPS.values():
        if source is None or pump.shut_off_head <= source.pump.shut_off_head:
            continue
        new = with_source(case.supply, pump=pump)
        try:
            yield _and_higher(f"Use a pump like the {pump.name[0].lower()}{pump.name[1:]}",
                              new, case, reader)  # fmt: skip
        except InputError:
            continue


def cistern(case: Case, reader: Reader) -> Iterator[Option]:
    """A tank joined to the main outlet's point, as low as serves and the pump can still fill."""
    tap, source, weight = case.main, case.supply.pumping, case.weight
    if source is None:  # nothing would fill it
        return
    ceiling = most_at_pump(case, source) / weight - FILL
    if source.set_pa is not None:
        ceiling = min(ceiling, source.set_pa / weight - FILL)
    line = next(reversed(case.sections_on_way), None)
    if line is None or any(fold(row.name) == fold(CISTERN) for row in case.supply.tanks):
        return
    level = case.after.network.heights[tap.node] + tap.sure_pa / weight + FILL
    for _ in range(TURNS):
        if level > ceiling:
            return
        new = _with_cistern(case.supply, tap.node, line.pipe, level)
        short = missing(solved(new, case.ask, case))
        if short <= 0:
            yield Option(tank_words(level, CISTERN_WAY, tap.node, reader), new)
            return
        level += AGAIN * short / weight


def _with_cistern(supply: Supply, node: str, pipe: Pipe, level: float) -> Supply:
    """The supply with a tank and the section to it."""
    section = SectionRow(node, CISTERN, CISTERN_WAY, level, pipe)
    return replace(
        supply,
        tanks=(*supply.tanks, TankRow(CISTERN, level)),
        sections=(*supply.sections, section),
    )


# Less at once -----------------------------------------------------------------------------------


def fewer(case: Case, _reader: Reader) -> Iterator[Option]:
    """Fewer of the outlets that open, as many as still get enough."""
    for tap in case.opened:
        if tap.row.after - tap.row.before < 2 and tap.row.after < 2:
            continue
        count = most_open(case, tap, lambda one: missing(one) <= 0)
        if count:
            new = with_open(case.supply, tap, count)
            yield Option(f"Open {count} of {tap.name} at once, not {tap.row.after}", new)


def most_open(case: Case, tap: Tap, serves: Callable[[Case], bool]) -> int:
    """The most of a tap that may be open so that the supply serves; 0 where none may."""
    low, high = 0, tap.row.after  # enough with ``low``, as far as is known; not with ``high``
    while high - low > 1:
        middle = (low + high) // 2
        enough = serves(solved(with_open(case.supply, tap, middle), case.ask, case))
        low, high = (middle, high) if enough else (low, middle)
    return low


def with_open(supply: Supply, tap: Tap, count: int) -> Supply:
    """The supply with so many of a tap open after, and no more before."""
    outlets = tuple(
        replace(row, after=count, before=min(row.before, count)) if row is tap.row else row
        for row in supply.outlets
    )
    return replace(supply, outlets=outlets)


CHEAP = (clean, valve_higher, set_higher, second_filter)
MAKERS = (*CHEAP, wider, second_pump, larger_pump, cistern, fewer)
CREST = (crest_higher, wider, larger_pump)
VALVE = (valve_up, fewer)
PAST_CURVE = (second_pump, larger_pump, fewer)
