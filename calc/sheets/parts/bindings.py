"""How one field of a sheet stands to a site: what it takes from it, and what it may put back.

A ``Binding`` fills one field.  Where it is one to one with a fact, ``take`` puts the reader's
text back; a field worked out from the site has none, and typing over it is a what-if.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

from calc import practice
from calc.errors import InputError
from calc.sheets.parts import ways
from calc.sheets.parts.moments import NOW
from calc.site.facts import ASSUMED, BY_PATH, NOT_KNOWN, Fact
from calc.site.open_water import open_water
from calc.site.rows import BY_TABLE, PUMP, SOURCE, fold
from calc.site.site import Site
from calc.units import QUANTITIES, parse

CALCULATED = "worked out from the site"
FIGURES = 12  # of a number worked out, before it is rounded for display


@dataclass(frozen=True)
class Asked:
    """A site, and the way asked for. outlet: its name, "" for the whole supply; going: what was
    typed goes on to another page in a copy, so that a whole way may change in proportion."""

    site: Site
    outlet: str = ""
    moment: str = NOW
    going: bool = False

    @cached_property
    def way(self) -> ways.Way:
        """The way to the outlet.  Raises InputError where it cannot be worked out."""
        if not self.outlet:
            raise InputError("No outlet is asked for.", name="way")
        return ways.way_to_outlet(self.site, self.outlet, self.moment)

    @cached_property
    def open_water(self) -> bool:
        """Whether the way to the outlet begins at a tank or a spring.  Raises nothing."""
        try:
            return bool(self.outlet) and self.way.start != PUMP
        except (InputError, KeyError):
            return False

    @cached_property
    def solved(self) -> ways.Solved:
        """The supply with what is open.  Raises InputError where it cannot be worked out."""
        return ways.solved(self.site, self.moment, self.outlet)

    @cached_property
    def row(self) -> int:
        """Index of the asked outlet's row.  Raises InputError where there is none."""
        for index, row in enumerate(self.site.rows("outlets")):
            if self.outlet and self.site.word("outlets", row, "name") == self.outlet:
                return index
        raise InputError("No outlet is asked for.", name="way")


def always(_asked: Asked) -> bool:
    """Of a field that may be put back whatever the way is."""
    return True


Give = Callable[[Asked], Fact]
Take = Callable[[Asked, Fact], Site]


@dataclass(frozen=True)
class Binding:
    """field: its key; give: its fact from the site; take: the site with another fact there, or
    None where it is not put back; path: of a scalar fact it is one to one with, for readers;
    pipe: the fact is "kind/size", and ``field`` the menu of kinds beside those of sizes; spare:
    left as it is where nothing is known, since it only counts where something else is; only:
    whether it is one to one for this way."""

    field: str
    give: Give
    take: Take | None = None
    path: str = ""
    pipe: bool = False
    spare: bool = False
    only: Callable[[Asked], bool] = always

    def puts_back(self, asked: Asked) -> bool:
        """Whether what is typed here goes back into the site.  Raises nothing."""
        try:
            return self.take is not None and self.only(asked)
        except InputError:
            return False

    def fact(self, asked: Asked) -> Fact:
        """What the site says; unknown where that cannot be worked out.  Raises nothing."""
        try:
            return self.give(asked)
        except (InputError, KeyError):
            return NOT_KNOWN


def known(field: str, path: str) -> Binding:
    """A field that is one to one with a scalar fact."""

    def take(asked: Asked, fact: Fact) -> Site:
        return asked.site.put(path, fact)

    return Binding(field, lambda asked: asked.site.best(path), take, BY_PATH[path].key)


def figure(field: str, quantity: str, of: Callable[[Asked], float | None]) -> Binding:
    """A field worked out: ``of`` gives SI, or None where it is not known."""

    def give(asked: Asked) -> Fact:
        value = of(asked)
        return NOT_KNOWN if value is None else written(value, quantity)

    return Binding(field, give)


def told_or(worked: Binding, path: str) -> Binding:
    """A fact of its own where it was told, else what is worked out: put back as told."""
    own = known(worked.field, path)

    def give(asked: Asked) -> Fact:
        return asked.site.get(path) if asked.site.get(path).known else _else(worked, own, asked)

    return replace(own, give=give, spare=worked.spare)


def unless(worked: Binding, path: str) -> Binding:
    """What is worked out from the site; a fact of its own where the site does not tell."""
    own = known(worked.field, path)

    def silent(asked: Asked) -> bool:
        return not worked.fact(asked).known

    return replace(own, give=lambda asked: _else(worked, own, asked), only=silent,
                   spare=worked.spare)  # fmt: skip


def _else(worked: Binding, own: Binding, asked: Asked) -> Fact:
    found = worked.fact(asked)
    return found if found.known else own.give(asked)


def _open(asked: Asked) -> bool:
    return asked.open_water


def by_way(worked: Binding, path: str, when: Callable[[Asked], bool] = _open) -> Binding:
    """Of a line that runs by its height: by its own binding where the way begins at open water
    (or ``when`` says so); elsewhere a fact of its own, of a line that the site's pipe sections do
    not hold."""
    own = known(worked.field, path)

    def one(asked: Asked) -> Binding:
        return worked if when(asked) else own

    def take(asked: Asked, fact: Fact) -> Site:
        put = one(asked).take
        return put(asked, fact) if put else asked.site

    return replace(worked, give=lambda asked: one(asked).give(asked), take=take, path=path,
                   only=lambda asked: one(asked).puts_back(asked))  # fmt: skip


def words(field: str, of: Callable[[Asked], str]) -> Binding:
    """A choice or a count worked out."""
    return Binding(field, lambda asked: Fact(of(asked), reason=CALCULATED))


def written(value: float, quantity: str, standing: str = "given", reason: str = CALCULATED) -> Fact:
    """An SI value as a fact in its usual metric unit."""
    unit = QUANTITIES[quantity].default("metric")
    return Fact(f"{unit.from_si(value):.{FIGURES}g} {unit.symbol}".strip(), standing, reason)


# The outlet and the way to it -----------------------------------------------------------------


def _needed(asked: Asked) -> Fact:
    row = asked.site.rows("outlets")[asked.row]
    given = BY_TABLE["outlets"].best(row, "needed")
    if given.known:
        return given
    kind = practice.OUTLET_BY_KEY[asked.site.word("outlets", row, "kind")]
    works, _ = kind.levels(asked.site.cell("outlets", row, "rated"))
    if works is None:
        return NOT_KNOWN
    return written(works, "pressure", ASSUMED, f"usual for a {kind.name.lower()}; common practice")


def needed(field: str) -> Binding:
    """The pressure the asked outlet needs: one to one with its cell."""

    def take(asked: Asked, fact: Fact) -> Site:
        return asked.site.put_cell("outlets", asked.row, "needed", fact)

    return Binding(field, _needed, take)


def _height_rows(asked: Asked) -> tuple[int, ...]:
    """Rows of the sections that end at the asked point, where the line begins at the pump or in
    the source's water."""
    if asked.way.start != (PUMP if ways.has_pump(asked.site) else SOURCE):
        return ()
    rows, point = asked.site.rows("sections"), fold(asked.way.point)
    ends = (fold(asked.site.word("sections", row, "to")) for row in rows)
    return tuple(index for index, end in enumerate(ends) if end == point)


def _begins(site: Site) -> float:
    """Height at which the line begins, m above the datum."""
    return ways.pump_height(site) if ways.has_pump(site) else open_water(site).level_m


def _climb(asked: Asked) -> Fact:
    rows = _height_rows(asked)
    if rows and _begins(asked.site) == 0:
        return BY_TABLE["sections"].best(asked.site.rows("sections")[rows[0]], "height")
    return written(asked.way.climb, "length")


def _take_climb(asked: Asked, fact: Fact) -> Site:
    site, base = asked.site, _begins(asked.site)
    if base and fact.known:
        height = base + BY_PATH["water.level"].read(fact.text)
        fact = replace(fact, text=written(height, "length").text)
    for index in _height_rows(asked):
        site = site.put_cell("sections", index, "height", fact)
    return site


def climb(field: str = "climb") -> Binding:
    """From the start of the line to the point: one to one with the point's height."""
    return Binding(field, _climb, _take_climb, only=lambda asked: bool(_height_rows(asked)))


def _single(asked: Asked) -> bool:
    return asked.going or asked.way.single


def _length(asked: Asked) -> Fact:
    if asked.way.single:
        row = asked.site.rows("sections")[asked.way.rows[0]]
        return BY_TABLE["sections"].best(row, "length")
    return written(asked.way.length, "length")


def _take_length(asked: Asked, fact: Fact) -> Site:
    way, site = asked.way, asked.site
    if way.single:
        return site.put_cell("sections", way.rows[0], "length", fact)
    if not fact.known:
        return site
    share = parse(fact.text, "length").value / way.length
    for at, section in zip(way.rows, way.sections, strict=True):
        long = written(section.length_m * share, "length", ASSUMED, "in proportion")
        site = site.put_cell("sections", at, "length", long)
    return site


def length() -> Binding:
    """Of the whole way; one to one where it has one section.  Going on, each in proportion."""
    return Binding("length", _length, _take_length, only=_single)


def suction_pipe() -> Binding:
    """The menus of the suction pipe's kind and size."""
    by_path = known("kind", "suction.pipe")
    return replace(by_path, pipe=True)


def _pipe(asked: Asked) -> Fact:
    if asked.way.single:
        return BY_TABLE["sections"].best(asked.site.rows("sections")[asked.way.rows[0]], "pipe")
    narrow = min(asked.way.sections, key=lambda section: section.pipe.inside_m).pipe
    return Fact(f"{narrow.kind}/{narrow.size}", reason="the narrowest on the way")


def _take_pipe(asked: Asked, fact: Fact) -> Site:
    site = asked.site
    for at in asked.way.rows:
        site = site.put_cell("sections", at, "pipe", fact)
    return site


def way_pipe() -> Binding:
    """The menus of the way's pipe: one to one where it has one section, else the narrowest.

    Going on, what is chosen is that of every section.
    """
    return Binding("kind", _pipe, _take_pipe, pipe=True, only=_single)


def last_pipe() -> Binding:
    """The menus of the pipe that ends at the outlet."""

    def give(asked: Asked) -> Fact:
        last = asked.way.sections[-1].pipe
        return Fact(f"{last.kind}/{last.size}", reason="the section that ends at the outlet")

    def take(asked: Asked, fact: Fact) -> Site:
        return asked.site.put_cell("sections", asked.way.rows[-1], "pipe", fact)

    return Binding("kind", give, take, pipe=True)
