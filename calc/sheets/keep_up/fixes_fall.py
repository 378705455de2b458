"""What is tried where water runs down by its own weight, and where break-pressure tanks stand."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.network.findings import HAIR, broken, ratings
from calc.network.parts import Run
from calc.network.static import highest_pressures
from calc.network.way import way_to
from calc.pipe import fittings
from calc.sheets.keep_up.cause import between, tank
from calc.sheets.keep_up.changed import break_words, instead_words, lay_words, tank_instead_words
from calc.sheets.keep_up.falls import GIVES, signs, tanks
from calc.sheets.keep_up.fixes_short import most_open, with_open
from calc.sheets.keep_up.options import Option, larger, section_of, with_sections
from calc.sheets.keep_up.rows import RUNS
from calc.site.supply import fold

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.pipe.pipes import Pipe
    from calc.sheets.keep_up.case import Case
    from calc.site.supply import SectionRow, Supply
    from calc.units import Reader

MOST_BREAKS = 4  # tanks put into one section at most; our choice
LEAST_FALL = 5.0  # m, from one tank to the next: less is not worth one; our choice
POINT = "break tank"  # name of the points where tanks are put


# Wider pipe, less open ---------------------------------------------------------------------------


def _falls(case: Case) -> bool:
    """Whether water runs down by its own weight somewhere: else a pump is looked after first."""
    return case.supply.pumping is None or bool(tanks(case))


def wider_above(case: Case, _reader: Reader) -> Iterator[Option]:
    """Wider pipe on the way to where it sucks, or to a tank that runs empty: one section of it,
    the one that loses the most, then all of them, up to three sizes."""
    if not _falls(case):
        return
    lossy = sorted(_above(case), key=lambda run: -abs(case.after.loss(run.name)))
    for chosen in (lossy[:1], lossy):
        for up in range(1, practice.MOST_SIZES_UP + 1):
            sizes = {run.name: larger(run.pipe, up) for run in chosen}
            found = {name: pipe for name, pipe in sizes.items() if pipe is not None}
            if found:
                yield _laid(case, found)
        if len(lossy) < 2:
            return


def _above(case: Case) -> list[Run]:
    """Sections with water on the way to what sucks or runs empty."""
    after = case.after
    places = [p.name for p in after.network.places if after.pressure(p.name) < -HAIR]
    names = dict.fromkeys(name for place in places for name in way_to(after, place))
    links = [after.network.link(name) for name in names if name in case.built.section_rows]
    return [link for link in links if isinstance(link, Run)]


def _laid(case: Case, sizes: dict[str, Pipe]) -> Option:
    rows = case.built.section_rows
    words = lay_words(f"{pipe.label} from {between(name)}" for name, pipe in sizes.items())
    changed = {rows[name]: {"pipe": pipe} for name, pipe in sizes.items()}
    return Option(words, with_sections(case.supply, changed))


def fewer_open(case: Case, _reader: Reader) -> Iterator[Option]:
    """Fewer of one outlet, as many as the source, the tanks and the crests allow."""
    for tap in case.running if _falls(case) else ():
        if tap.row.after < 2:
            continue
        count = most_open(case, tap, _flows)
        if count:
            text = f"Open {count} of {tap.name} at once, not {tap.row.after}"
            yield Option(text, with_open(case.supply, tap, count))


def _flows(case: Case) -> bool:
    """Whether no crest sucks, no tank runs empty and the source gives what is taken."""
    if any(True for _ in broken(case.after)):
        return False
    return not any(one.kind == GIVES for one in signs(case))


# Break-pressure tanks ----------------------------------------------------------------------------


def put_tanks(case: Case, reader: Reader) -> Iterator[Option]:
    """Tanks on the way down, at equal steps of height, where no pump's pressure is needed."""
    if case.supply.pumping is not None:
        return
    found = _steepest(case)
    if found is None:
        return
    at, row, top_m = found
    for count in range(1, MOST_BREAKS + 1):
        step = (top_m - row.height_m) / (count + 1)
        if step < LEAST_FALL or len(case.supply.sections) + count > RUNS.most:
            return
        new = _parted(case, at, [top_m - step * n for n in range(1, count + 1)])
        yield Option(break_words(count, row, step, reader), new)


def _steepest(case: Case) -> tuple[int, SectionRow, float] | None:
    """(index, row, height of its start) of the section that falls the most on the way to what
    carries too much; None where none does."""
    network = case.after.network
    static = highest_pressures(network)
    limit = practice.HIGHEST_AT_OUTLET
    ends = {tap.node for tap in case.taps if static[tap.node] > limit}
    ends |= {network.run(one.row).end for one in ratings(network) if one.kind == "over-rating"}
    falls = {
        name: network.heights[network.run(name).start] - network.heights[network.run(name).end]
        for end in ends for name in way_to(case.after, end) if name in case.built.section_rows
    }  # fmt: skip
    name = max(falls, key=lambda one: falls[one], default="")
    if not name:
        return None
    at = case.built.section_rows[name]
    return at, case.supply.sections[at], network.heights[network.run(name).start]


def _parted(case: Case, at: int, levels: list[float]) -> Supply:
    """A section in equal lengths, each but the last down to a tank; what was in it stays last.

    levels: of the tanks, m, the highest first.
    """
    supply = case.supply
    row, names = supply.sections[at], _free_names(case, len(levels))
    long, pieces, start = row.length_m / (len(levels) + 1), [], row.start
    for name, level in zip(names, levels, strict=True):
        pieces.append(
            replace(row, start=start, end=name, height_m=level, length_m=long, bends=0,
                    part="break")
        )  # fmt: skip
        start = name
    pieces.append(replace(row, start=start, length_m=long))
    sections = (*supply.sections[:at], pieces[0], *supply.sections[at + 1 :], *pieces[1:])
    return replace(supply, sections=sections)


def _free_names(case: Case, count: int) -> list[str]:
    taken, number = {fold(name) for name in case.built.shown}, 0
    found: list[str] = []
    while len(found) < count:
        number += 1
        name = POINT if number == 1 and count == 1 else f"{POINT} {number}"
        if fold(name) not in taken:
            found.append(name)
    return found


def valve_instead(case: Case, reader: Reader) -> Iterator[Option]:
    """A pressure-reducing valve where a break-pressure tank on the way stands too low."""
    for link in case.way:
        at = section_of(case, link.name) if tank(link) else None
        for part in fittings.PARTS if at is not None else ():
            if at is not None and part.reducer is not None and not part.vented:
                new = with_sections(case.supply, {at[0]: {"part": part.key}})
                yield Option(instead_words(part.reducer[0], at[1], reader), new)


def tank_instead(case: Case, _reader: Reader) -> Iterator[Option]:
    """Break-pressure tanks, which no failure puts under pressure, for valves that may fail."""
    if case.supply.pumping is not None:
        return
    rows = {
        at: {"part": "break"}
        for at, row in enumerate(case.supply.sections)
        if fittings.BY_KEY[row.part].reducer is not None and row.part != "break"
    }
    if rows:
        changed = with_sections(case.supply, rows)
        first, *others = rows
        more = f", and of {len(others)} more" if others else ""
        yield Option(f"{tank_instead_words(case.supply.sections[first])}{more}", changed)


SUCKING = (wider_above, fewer_open)
TAKING = (fewer_open,)
