"""A site worked out on every sheet that it has something to say to.

Each part is what the sheet's own page shows when it is opened from the site: the same form, the
same answer, and a link to it.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from calc.page.findings import BAD, GOOD, TIGHT, WORDS
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets import site_ops, views
from calc.sheets.parts import ways
from calc.site import link
from calc.site.pack import pack

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.answer import Answer
    from calc.page.fields import Sheet
    from calc.page.findings import Verdict
    from calc.page.form import Outcome
    from calc.site.site import Site

WORST = (BAD, TIGHT, GOOD)
# What a sheet must know of a site before its answer is one about that site: of each group at least
# one fact; and what to say where there is none.
NEEDS: dict[str, tuple[tuple[tuple[str, ...], str], ...]] = {
    "suction": ((("water.level", "suction.length"), "how high the pump is above its water"),),
    "panels": ((("place.latitude",), "the place, and with it the sun"),),
    "battery": ((("place.latitude",), "the place, and with it the sun"),),
    "cable": ((("power.cable",), "the length of the cable"),),
    "tank": ((("use.people", "use.animals", "use.beds", "store.inflow", "water.yield"),
              "who uses the water, or what comes in"),),
    "demand": ((("use.people", "use.beds", "use.animals"), "who uses the water in a day"),),
    "well": ((("water.yield", "well.known"), "what the well gives"),),
    "pressure_tank": ((("pressure_tank.volume", "pump.cut_in", "pump.set"),
                       "how the pump is switched"),),
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
    """A site's parts in the order people ask; ``left``: what was not worked out, and why."""

    site: Site
    system: str
    packed: str
    parts: tuple[Part, ...] = ()
    left: tuple[Left, ...] = field(default=())

    def part(self, key: str) -> Part | None:
        """The part of a sheet; None where it was not worked out."""
        return next((one for one in self.parts if one.key == key), None)

    @property
    def level(self) -> str:
        """The worst of the parts' levels; a part without an answer is borderline."""
        levels = [one.verdict.level if one.verdict else TIGHT for one in self.parts]
        return next((one for one in WORST if one in levels), TIGHT)

    @property
    def word(self) -> str:
        """ "Works", "Borderline", "Does not work": never greener than the worst part."""
        return WORDS[self.level]


def keys(site: Site) -> tuple[str, ...]:
    """The sheets that are about a site as it is: with its pump, or without one."""
    return PUMPED if ways.has_pump(site) else FALLING


def lacking(site: Site, key: str) -> str:
    """What of the site a sheet lacks, in words; "" where it can be worked out."""
    if key in {"keep_up", "reach", "pump_match", "pipe", "surge", "gravity"}:
        if not site.rows("sections"):
            return "the pipe"
        return "" if key == "gravity" or ways.outlets(site) else "what opens at its end"
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
    sheet = find_sheet(key)
    reading = link.read(link.of_site(system, packed, way), sheet)
    filled = site_ops.linked(packed, key, way, system)
    units = {
        name: unit
        for name, unit in filled["units"].items()
        if name.partition(".")[0] in filled["texts"]
    }
    state = State(
        system,
        {**reading.texts, **filled["texts"]},
        {**reading.units, **units},
        {**reading.standing, **{name: filled["standing"][name] for name in filled["texts"]}},
        filled["reasons"] | filled["cells"],
        frozenset(filled["texts"]),
    )
    outcome = work(sheet, state)
    chosen = filled["way"]
    return Part(
        sheet,
        state,
        outcome,
        chosen,
        link.write(sheet, state, packed, chosen, frozenset(filled["texts"])),
    )


def work_out(site: Site, system: str = "", only: Iterable[str] = ()) -> Work:
    """Every sheet that the site has something to say to, solved.

    system: "" for the site's own; only: keys to work out (empty: all that are about the site).
    """
    system, packed = system or site.system, pack(site)
    parts, left = [], []
    for key in keys(site):
        if only and key not in set(only):
            continue
        lacks = lacking(site, key)
        if lacks:
            left.append(Left(key, find_sheet(key).title, lacks))
        else:
            parts.append(part(site, packed, key, system))
    return Work(site, system, packed, tuple(parts), tuple(left))


def choices(site: Site, key: str) -> tuple[tuple[str, str], ...]:
    """(value, label) of the ways a sheet can be asked about."""
    return views.choices(site, key)
