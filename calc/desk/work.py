"""A site worked out on every sheet that it has something to say to.

Each part is what the sheet's own page shows when it is opened from the site: the same form, the
same answer, and a link to it.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.fields import UNKNOWN
from calc.page.findings import BAD, GOOD, TIGHT, WORDS
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets import site_ops, views
from calc.sheets.parts import ways
from calc.sheets.parts.completed import completed, opened
from calc.sheets.parts.filling import filled_form
from calc.sheets.parts.moments import all_open
from calc.site import link
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN
from calc.site.pack import pack

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.answer import Answer
    from calc.page.fields import Sheet
    from calc.page.findings import Verdict
    from calc.page.form import Outcome
    from calc.sheets.parts.ways import Way
    from calc.site.rows import Row
    from calc.site.site import Site

WORST = (BAD, TIGHT, GOOD)
# What a sheet must know of a site before its answer is one about that site: of each group at least
# one fact; and what to say where there is none.
NEEDS: dict[str, tuple[tuple[tuple[str, ...], str], ...]] = {
    "suction": ((("water.level", "suction.length"), "how high the pump is above its water"),),
    "panels": ((("place.latitude",), "the place, and with it the sun"),),
    "battery": ((("place.latitude",), "the place, and with it the sun"),),
    "cable": ((("power.cable",), "the length of the cable"),),
    "tank": ((("use.people", "use.animals", "use.beds", "use.daily"), "who uses the water"),
             (("store.inflow", "water.yield", "pump.most_flow"), "what fills the tank")),
    "demand": ((("use.people", "use.beds", "use.animals"), "who uses the water in a day"),),
    "well": ((("water.yield", "well.known"), "what the well gives"),),
    "pressure_tank": ((("pressure_tank.volume",), "the volume of the pressure tank"),),
    "drip": ((("drip.rows", "drip.length"), "the drip lines"),),
    "hot_water": ((("hot.volume", "hot.stored"), "the heater"),),
    "hill_tank": ((("store.height", "store.volume"), "the tank on the hill"),),
}  # fmt: skip
PUMPED = (
    "keep_up", "reach", "demand", "pump_match", "suction", "pipe", "pressure_tank", "surge", "well",
    "tank", "drip", "panels", "battery", "cable", "hot_water",
)  # fmt: skip
FALLING = (
    "keep_up", "gravity", "demand", "pipe", "surge", "well", "tank", "hill_tank", "drip",
    "hot_water",
)  # fmt: skip

# Sheets that are asked about one outlet: the one with the least to spare.
ONE_PIPE = frozenset(("reach", "gravity", "pump_match", "pipe", "surge", "hot_water", "tank"))
# Where one of these could not be worked out, a whole supply cannot be said to work.
DECIDING = frozenset(("keep_up", "reach", "gravity", "suction"))
ALL_OPEN = "Flow of everything open"  # a figure of the whole supply
# Flows of a site of which nobody told any, by page and field; our choice.
USUAL_FLOWS = {
    "suction": {"flow": {"metric": "15 L/min", "us": "4 gpm",
                         "why": "two outlets at once, as nobody said what opens; our choice"}},
    "pressure_tank": {
        "pump": {"metric": "20 L/min", "us": "5 gpm", "why": "usual of a small pump; our choice"},
        "draw": {"metric": "7.5 L/min", "us": "2 gpm",
                 "why": "one outlet, as nobody said what opens; our choice"},
    },
}  # fmt: skip
KEPT = 300  # outcomes kept: a site worked out again solves only what the change reaches; our choice
EVEN = 1.0  # Pa; outlets within this of each other have the same to spare: the solver's last bits


@dataclass(frozen=True)
class Part:
    """One sheet's answer for the site. ``fragment`` opens its page as it is here."""

    sheet: Sheet
    state: State
    outcome: Outcome
    way: str
    fragment: str

    @property
    def key(self) -> str:
        return self.sheet.key

    @property
    def answer(self) -> Answer | None:
        """None where the form has faults: ``outcome.errors``."""
        return self.outcome.answer

    @property
    def verdict(self) -> Verdict | None:
        """None where there is no answer."""
        return self.answer.verdict if self.answer else None


@dataclass(frozen=True)
class Left:
    """A sheet that was not worked out, and what of the site it lacks, in words."""

    key: str
    title: str
    lacks: str


@dataclass(frozen=True)
class Work:
    """A site's parts in the order people ask; ``left``: what was not worked out, and why;
    ``weakest``: the outlet with the least to spare, "" where none can be told."""

    site: Site
    system: str
    packed: str
    parts: tuple[Part, ...] = ()
    left: tuple[Left, ...] = field(default=())
    weakest: str = ""

    def part(self, key: str) -> Part | None:
        """The part of a sheet; None where it was not worked out."""
        return next((one for one in self.parts if one.key == key), None)

    @property
    def level(self) -> str:
        """The worst of the parts' levels; a part without an answer is borderline, and so is the
        whole where a deciding part could not be worked out."""
        levels = [one.verdict.level if one.verdict else TIGHT for one in self.parts]
        levels += [TIGHT for _ in self.undecided]
        levels += [TIGHT] if self.overdrawn else []
        return next((one for one in WORST if one in levels), TIGHT)

    @property
    def overdrawn(self) -> tuple[float, float] | None:
        """(what the well gives, what everything open takes from it), m3/s, where that is more;
        None where it is not, or not known.  Pages look at one or the other."""
        gives = self.site.value("water.yield") if self.site.get("water.yield").known else None
        found = self.part("keep_up")
        if gives is None or not ways.has_pump(self.site) or found is None or not found.answer:
            return None
        flows = (one.value for one in found.answer.figures if one.label == ALL_OPEN)
        takes = next(flows, 0.0)
        return (gives, takes) if takes > gives else None

    @property
    def undecided(self) -> tuple[Left, ...]:
        """What was not worked out, and decides whether the supply works."""
        submersible = ways.has_pump(self.site) and self.site.value("pump.placement") == "in"
        return tuple(
            one
            for one in self.left
            if one.key in DECIDING and not (one.key == "suction" and submersible)
        )

    @property
    def word(self) -> str:
        """ "Works", "Borderline", "Does not work": never greener than the worst part."""
        return WORDS[self.level]


def keys(site: Site) -> tuple[str, ...]:
    """The sheets that are about a site as it is: with its pump, or without one.

    A pump in its water lifts none to itself; only of a well is asked what a well gives.
    """
    left_out = {"suction"} if site.value("pump.placement") == "in" else set()
    if site.get("water.kind").known and site.value("water.kind") != "well":
        left_out.add("well")
    every = PUMPED if ways.has_pump(site) else FALLING
    return tuple(key for key in every if key not in left_out)


def lacking(site: Site, key: str) -> str:
    """What of the site a sheet lacks, in words; "" where it can be worked out."""
    if key in {"keep_up", "reach", "pump_match", "pipe", "surge", "gravity"}:
        if not site.rows("sections"):
            return "the pipe"
        return "" if key == "gravity" or ways.outlets(site) else "what opens at its end"
    if key == "suction" and site.get("water.level").standing != GIVEN:
        return NEEDS[key][0][1]  # what is assumed for the sake of the rest tells nothing of it
    for paths, words in NEEDS.get(key, ()):
        if not any(_known(site, path) for path in paths):
            return words
    return ""


def _known(site: Site, path: str) -> bool:
    group, _, table = path.partition(".")
    if group == "use" and table in {"beds", "animals"}:
        return bool(site.rows(table))
    return site.best(path).known and site.get(path).text != ""


def part(site: Site, packed: str, key: str, system: str, way: str = "") -> Part:
    """One sheet filled from the site and solved, as its page does.

    packed: ``pack(site)``; system: "metric" or "us"; way: as ``views.asked_of``.
    Raises KeyError for an unknown sheet, InputError for a site that is not whole.
    """
    return _part(packed, key, system, way, False)


@lru_cache(KEPT)
def _part(packed: str, key: str, system: str, way: str, quick: bool) -> Part:
    sheet = find_sheet(key)
    reading = link.read(link.of_site(system, packed, way), sheet)
    filled = site_ops.linked(packed, key, way, system)
    before = State(system, reading.texts, reading.units, reading.standing)
    state = _with_flow(filled_form(filled, before), key)
    chosen = filled["way"]
    return Part(
        sheet,
        state,
        _outcome(sheet, state, quick),
        chosen,
        link.write(sheet, state, packed, chosen, state.kept),
    )


def _with_flow(state: State, key: str) -> State:
    """The pages of suction and pressure tank, of a site without pipes or outlets, asked about usual
    flows: a letter on a pump that loses its water, or that starts every few seconds, tells none,
    and its lift, its foot valve or its tank can be judged."""
    asked = {
        field: flows
        for field, flows in USUAL_FLOWS.get(key, {}).items()
        if state.texts.get(field, UNKNOWN).strip() in ("", UNKNOWN)
    }
    if not asked:
        return state
    return replace(
        state,
        texts={**state.texts, **{field: flows[state.system] for field, flows in asked.items()}},
        standing={**state.standing, **dict.fromkeys(asked, ASSUMED)},
        reasons={**state.reasons, **{field: flows["why"] for field, flows in asked.items()}},
        kept=state.kept - frozenset(asked),
    )


_OUTCOMES: dict[object, Outcome] = {}


def _outcome(sheet: Sheet, state: State, quick: bool) -> Outcome:
    """``work``, which is asked once for a form that another site fills in the same way.

    quick: without fixes and what else the verdict does not wait for.
    """
    held = (state.texts, state.units, state.standing, state.reasons)
    asked = (sheet.key, state.system, state.kept, *(tuple(sorted(one.items())) for one in held))
    for kept in ((asked, False), (asked, quick)):
        if kept in _OUTCOMES:
            return _OUTCOMES[kept]
    while len(_OUTCOMES) >= KEPT:
        del _OUTCOMES[next(iter(_OUTCOMES))]
    found = _OUTCOMES[asked, quick] = work(sheet, state, first=quick)
    return found


def work_out(site: Site, system: str = "", only: Iterable[str] = (), quick: bool = False) -> Work:
    """Every sheet that the site has something to say to, solved.

    system: "" for the site's own; only: keys to work out (empty: all that are about the site);
    quick: without fixes and what else a verdict does not wait for.
    What the site lacks is as usual and assumed (``completed``).  A sheet of one pipe is asked about
    the outlet with the least to spare.
    """
    return _worked(pack(site), system or site.system, frozenset(only), quick)


@lru_cache(48)
def _worked(packed: str, system: str, only: frozenset[str], quick: bool) -> Work:
    site = completed(opened(packed))
    packed, parts, left = pack(site), [], []
    outlet = weakest(site)
    for key in keys(site):
        if only and key not in only:
            continue
        title, lacks = find_sheet(key).title, lacking(site, key)
        if lacks:
            left.append(Left(key, title, lacks))
            continue
        try:
            parts.append(_part(packed, key, system, way_for(site, key, outlet), quick))
        except InputError as error:
            left.append(Left(key, title, error_words(error)))
    return Work(site, system, packed, tuple(parts), tuple(left), outlet)


def error_words(error: InputError) -> str:
    """The sentence of an error, the first of several."""
    first: InputError = getattr(error, "errors", (error,))[0]
    return first.message


# The weakest outlet -----------------------------------------------------------------------------


def way_for(site: Site, key: str, outlet: str) -> str:
    """The way a sheet is asked about: that to ``outlet`` with all that is open after, for a sheet
    of one pipe; with all of that open, for the suction; "" for the usual one."""
    moment = all_open(site)
    if key == "suction":
        return f"{moment}/"
    return f"{moment}/{outlet}" if outlet and key in ONE_PIPE else ""


def all_ways(site: Site) -> tuple[Way, ...]:
    """The ways to all outlets, each open beside all that is open after; () where none is known.

    What hangs behind a tank that the line fills (``completed``) is on no way of it.
    """
    moment = all_open(site)
    found = []
    behind = {site.word("outlets", row, "name") for row in site.rows("outlets") if _is_behind(row)}
    for name in ways.outlets(site):
        if name in behind:
            continue
        try:
            found.append(ways.way_to_outlet(site, name, moment))
        except InputError:
            continue
    return tuple(found)


def _is_behind(row: Row) -> bool:
    facts = [row.get(key, NOT_KNOWN) for key in ("before", "after")]
    return all(fact.standing == ASSUMED and fact.text == "0" for fact in facts)


def weakest(site: Site) -> str:
    """The outlet with the least pressure beyond what it needs; "" where none can be told."""
    if not site.rows("sections"):
        return ""
    found = all_ways(site)
    least = min((one.running_pa - one.needed_pa for one in found), default=0.0)
    return next((w.outlet for w in found if w.running_pa - w.needed_pa <= least + EVEN), "")


def choices(site: Site, key: str) -> tuple[tuple[str, str], ...]:
    """(value, label) of the ways a sheet can be asked about."""
    return views.choices(site, key)
