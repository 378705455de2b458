"""The changes of a site that matter most: each put into the site and all of it worked out anew.

They are ranked by what they turn (the verdict first, then findings that go), then by the pressure
they gain for what they take: parts, settings, pipe by its length and size.  What a change costs is
not known here.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.desk import pairs, settings, verdict
from calc.desk.difference import Difference, differences, row_name, shown
from calc.desk.work import all_ways, work_out
from calc.errors import InputError
from calc.page.findings import BAD, GOOD, TIGHT
from calc.pipe import pipes
from calc.sheets.addresses import fragment
from calc.sheets.parts import ways
from calc.site import link
from calc.site.facts import Fact
from calc.site.pack import pack, unpack
from calc.site.rows import BY_TABLE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.work import Part, Work
    from calc.network.state import Solution
    from calc.site.site import Site

MOST = 14  # candidates worked out; our choice
SHOWN = 3
TWO_STEPS = 2  # changes that bring a stop elsewhere, tried with its fix; our choice
GAINED = 0.02e5  # Pa, from which a gain at the weakest outlet is one; our choice
HIGHER = 0.5e5  # Pa, a set pressure tried higher; our choice
# What changes take, against one another: a part or a section 1, so much pipe of that bore 1 more, a
# setting so much; our choice, since no price is known here.
LAID, WIDE, TURNED = 50.0, 0.032, 0.2  # m, m, share
# Facts that are turned or typed at a device: they take no part.
SET = ("pump.set", "pump.cut_in", "pump.cut_out", "pressure_tank.precharge", "use.", "hot.stored",
       "hot.precharge", "outlets")  # fmt: skip
ORDER = (GOOD, TIGHT, BAD)


@dataclass(frozen=True)
class Candidate:
    """A change that is tried: ``told`` in a sentence, and the site with it."""

    told: str
    site: Site


@dataclass(frozen=True)
class Weight:
    """How a site stands: its level, stops and cares, and Pa to spare at its weakest outlet."""

    level: str
    stops: int
    cares: int
    margin: float | None
    marks: frozenset[tuple[str, str, str]]
    supply: str = GOOD  # level of the whole supply's own part, with all that is open

    @property
    def order(self) -> tuple[int, int, int, int]:
        return ORDER.index(self.level), self.stops, ORDER.index(self.supply), self.cares


@dataclass(frozen=True)
class Change:
    """A candidate worked out in the whole site.

    before, after: how it stands; parts: parts and sections that change; settings: facts that are
    only set; length: metres of pipe to lay; bulk: these as ``LAID`` and ``WIDE`` count them.
    """

    told: str
    site: Site
    before: Weight
    after: Weight
    changed: tuple[Difference, ...]
    parts: int
    settings: int
    length: float
    bulk: float

    @property
    def gained(self) -> float:
        """Pressure gained at the weakest outlet, Pa."""
        if self.before.margin is None or self.after.margin is None:
            return 0.0
        return self.after.margin - self.before.margin

    @property
    def improves(self) -> bool:
        """Whether something gets better and nothing that was good goes wrong."""
        if self.after.order > self.before.order or self.new_stops:
            return False
        return self.after.order < self.before.order or self.gained >= GAINED

    @property
    def new_stops(self) -> bool:
        """Whether it brings a stop that was not there."""
        return any(mark[0] == "stop" for mark in self.after.marks - self.before.marks)

    @property
    def rank(self) -> tuple[float, ...]:
        """What it turns, then what it gains for what it takes."""
        takes = self.parts + self.bulk + TURNED * self.settings
        return (*self.after.order[:3], -self.gained / max(takes, TURNED))


def weigh(site: Site, system: str) -> Weight:
    """How a whole site stands, worked out without fixes."""
    work = work_out(site, system, quick=True)
    found = verdict.found(work)
    marks = frozenset((f.finding.level, f.key, f"{f.finding.key} {f.finding.at}") for f in found)
    stops = sum(f.finding.level == "stop" for f in found)
    whole = work.part("keep_up")
    supply = whole.verdict.level if whole and whole.verdict else TIGHT
    margin = verdict.margin(work)
    return Weight(work.level, stops, len(found) - stops, margin, marks, supply)


# What is tried ---------------------------------------------------------------------------------


def candidates(work: Work) -> tuple[Candidate, ...]:
    """The changes worth trying, ``MOST`` at most, no two of them the same."""
    return _candidates(work.packed, work.system)


@lru_cache(8)
def _candidates(packed: str, system: str) -> tuple[Candidate, ...]:
    work = work_out(unpack(packed), system)
    held = pack(work.site)
    found: dict[str, Candidate] = {}
    for one in _all(work):
        packed = pack(one.site)
        if packed != held:
            found.setdefault(packed, one)
    return tuple(found.values())[:MOST]


def _all(work: Work) -> Iterator[Candidate]:
    yield from _set_pressures(work)
    yield from _wider(work)
    yield from _fixes(work)
    yield from _second_pump(work)


def mended(work: Work, one: Change) -> Candidate | None:
    """A change that brings a stop elsewhere, with the fix of that part: a larger pump, and the
    battery for it.  None where there is none."""
    there = work_out(one.site, work.system)
    bad = {mark[1] for mark in one.after.marks - one.before.marks if mark[0] == "stop"}
    for part in there.parts:
        fixes = part.answer.fixes if part.key in bad and part.answer else ()
        for fix in fixes:
            if fix.link is not None and fix.link.sheet == part.key:
                site = put_back(there, part, fix.link.values)
                if site is not None:
                    return Candidate(f"{one.told} {fix.text}", site)
    return None


def _fixes(work: Work) -> Iterator[Candidate]:
    """Each fix of a part's answer, put back into the site where it is one to one."""
    for part in work.parts:
        answer = part.answer
        if answer is None or answer.verdict.level == GOOD:
            continue
        for fix in answer.fixes:
            if fix.link is not None and fix.link.sheet == part.key:
                site = put_back(work, part, fix.link.values)
                if site is not None:
                    yield Candidate(fix.text, site)


def put_back(work: Work, part: Part, values: object) -> Site | None:
    """The site with what a fix's link says; None where a site does not hold all of it."""
    texts = dict(values)  # type: ignore[call-overload]
    asked = (work.packed, part.way)
    text = fragment(part.sheet, texts, work.system, False, asked, part.state)
    try:
        opened = pairs.of_sheet(part.sheet, link.read(text, part.sheet))
    except InputError:
        return None
    return None if opened.said else opened.site


def _set_pressures(work: Work) -> Iterator[Candidate]:
    """The nearest set pressure at which all works; where there is none, a higher one."""
    found = settings.set_range(work.site, work.system)
    if found is None or found.within:
        return
    aims = [p for p in (found.low, found.high) if p is not None]
    aims = [min(aims, key=lambda p: abs(p - found.now))] if aims else [found.now + HIGHER]
    for aim in aims:
        site = settings.at(work.site, aim, work.system)
        way = "Raise" if aim > found.now else "Lower"
        yield Candidate(f"{way} the set pressure to {site.get('pump.set').text}.", site)


def _wider(work: Work) -> Iterator[Candidate]:
    """The sections that lose most on the way to the weakest outlet: the first one and two sizes
    up, the next one size, and both."""
    rows = _by_loss(work)
    groups = [[(row, 1)] for row in rows[:3]] + [[(row, 2)] for row in rows[:1]]
    groups += [[(row, 1) for row in rows[:2]]] if len(rows) > 1 else []
    for group in groups:
        site, told = work.site, []
        for index, up in group:
            size = _larger(site, index, up)
            if size is None:
                break
            site = site.put_cell("sections", index, "pipe", Fact(size[0]))
            row = row_name(BY_TABLE["sections"], index, work.site.rows("sections")[index])
            told.append(f"{size[1]} in “{row}”")
        else:
            yield Candidate(f"Lay {' and '.join(told)}.", site)


def _by_loss(work: Work) -> list[int]:
    """Rows of the sections on the way to the weakest outlet, those that lose most first."""
    way = next((one for one in all_ways(work.site) if one.outlet == work.weakest), None)
    if way is None:
        return []
    found = ways.solved(work.site, way.moment, way.outlet)
    names = {row: name for name, row in found.made.section_rows.items()}
    return sorted(dict.fromkeys(way.rows), key=lambda row: -_loss(found.moving, names[row]))


def _loss(moving: Solution, name: str) -> float:
    """Friction lost in a section, Pa."""
    run, weight = moving.network.link(name), moving.network.weight
    rise = moving.network.heights[run.end] - moving.network.heights[run.start]
    return abs(moving.pressure(run.start) - moving.pressure(run.end) - weight * rise)


def _larger(site: Site, index: int, up: int) -> tuple[str, str] | None:
    """(fact, label) of the pipe ``up`` sizes wider of the same kind; None where there is none."""
    kind, _, size = site.word("sections", site.rows("sections")[index], "pipe").partition("/")
    sizes = sorted(pipes.sizes(kind), key=lambda one: one.inside_m) if kind else []
    at = next((i for i, one in enumerate(sizes) if one.size == size), None)
    if at is None or at + up >= len(sizes):
        return None
    return f"{kind}/{sizes[at + up].size}", sizes[at + up].label


def _second_pump(work: Work) -> Iterator[Candidate]:
    site = work.site
    if ways.has_pump(site) and site.value("pump.count") == 1 and work.level != GOOD:
        yield Candidate("Set a second pump of the same kind beside the first.",
                        site.put("pump.count", Fact("2")))  # fmt: skip


# Weighed ------------------------------------------------------------------------------------------


def change(work: Work, one: Candidate) -> Change:
    """A candidate worked out in the whole site."""
    changed = differences(work.site, one.site)
    before, after = weigh(work.site, work.system), weigh(one.site, work.system)
    return Change(one.told, one.site, before, after, changed, *_takes(one.site, changed))


def _takes(other: Site, changed: tuple[Difference, ...]) -> tuple[int, int, float, float]:
    """(parts and sections, settings, metres of pipe, their bulk) that a change takes."""
    parts: set[str] = set()
    sets: set[str] = set()
    length = bulk = 0.0
    for one in changed:
        place = ".".join(one.path.split(".")[:2])
        if one.path.startswith(SET):  # of a device that is there
            sets.add(one.path)
            continue
        parts.add(place)
        table, _, rest = one.path.partition(".")
        if table == "sections" and (rest.endswith(".pipe") or one.slot is None):
            rows = other.rows(table)
            index = int(rest.partition(".")[0])
            if index < len(rows):
                long = other.cell(table, rows[index], "length") or 0.0
                pipe = ways.pipe_named(other.word(table, rows[index], "pipe"))
                length += long
                bulk += long / LAID * pipe.inside_m / WIDE
    return len(parts), len(sets), length, bulk


def ranked(work: Work, upto: int = MOST) -> tuple[Change, ...]:
    """The changes that help most, of the first ``upto`` candidates, ``SHOWN`` at most.

    One that changes all that another does, and more, stands only where it turns more.
    """
    found = [change(work, one) for one in candidates(work)[:upto]]
    for one in [each for each in found if each.new_stops and each.gained >= GAINED][:TWO_STEPS]:
        more = mended(work, one)
        found += [change(work, more)] if more else []
    helps = sorted((one for one in found if one.improves), key=lambda one: one.rank)
    best: list[Change] = []
    for one in helps:
        if len(best) < SHOWN and not any(_alike(one, other) for other in best):
            best.append(one)
    return tuple(best)


def _alike(one: Change, better: Change) -> bool:
    """Whether ``one`` does what a better one does already."""
    mine, other = ({each.path for each in c.changed} for c in (one, better))
    return mine <= other or other <= mine


def takes_words(one: Change, told_length: str) -> str:
    """What a change takes, in words. told_length: its metres of pipe as the reader has them."""
    said = []
    if one.length:
        said.append(f"{told_length} of pipe")
    others = one.parts - sum(each.path.endswith(".pipe") for each in one.changed)
    if others > 0:
        said.append(f"{others} part{'' if others == 1 else 's'}")
    if one.settings:
        said.append(f"{one.settings} setting{'' if one.settings == 1 else 's'}")
    return ", ".join(said) or "nothing"


def names(one: Change) -> list[str]:
    """Each fact that changes, in words: "Set pressure: 3.5 bar becomes 3.9 bar"."""
    return [f"{d.label}: {shown(d, d.before)} becomes {shown(d, d.after)}" for d in one.changed]
