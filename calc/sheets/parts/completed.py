"""A site completed with what is usual, so that it can be worked out: each thing marked as assumed.

Somebody's first letter says how far and how high, seldom what pipe leads to the pump. Without that
nothing can be solved; with it there is an answer, and a question to ask back.
"""

from __future__ import annotations

import math
from dataclasses import replace
from functools import lru_cache
from typing import TYPE_CHECKING

from calc import practice
from calc.pipe import pipes
from calc.sheets.parts import completed_more as more
from calc.sheets.parts import ways
from calc.sheets.parts.fields import SUCTION_LONG
from calc.site.demo import FROM_THE_EXAMPLE
from calc.site.facts import ASSUMED, BY_PATH, NOT_KNOWN, Fact
from calc.site.open_water import begins, named
from calc.site.pack import FROM_A_LINK, unpack
from calc.site.rows import BY_TABLE, PUMP, SOURCE, fold
from calc.units import QUANTITIES, Reader, parse, plain_number

if TYPE_CHECKING:
    from calc.site.rows import Row
    from calc.site.site import Site

# All our choice.
SET = {"metric": "3.5 bar", "us": "50 psi"}  # usual for a house a little above its pump
DATUM = {"metric": "0 m", "us": "0 ft"}  # what heights are counted from
MORE = 3.0  # m of suction pipe beyond the lift, where that alone is more
NO_SUCTION = {"metric": "0.1 m", "us": "0.4 ft"}
SUCTION = {"metric": "pe100-sdr11/40", "us": "pvc40/1.25"}
KIND = {"metric": "pe100-sdr11", "us": "pe-sidr15"}  # of pipe that nobody named
LEVEL = {"metric": "4 m", "us": "13 ft"}  # below a pump at its water, less than it should draw
NOT_TOLD = "not told: as for a pump a little above its water; our choice"
FALLS = "the water comes from above, and no pump is named"
NO_SIZE = "the smallest that keeps the water below {} with all open"
USUAL = "usual; our choice"
HUNG = "not told: just below its water, since it lifts no less from deeper; our choice"
AT_PUMP = "not told: at the pump, the lowest that it can draw from; our choice"
AT_TOP = "not told: at the top of the well; our choice"
NONE_BEFORE = "a pump in its water has none; as short as can be entered"
TO_TANK = "the pipe leads to the tank, whose height was told"
OF_TANK = "that of the tank above, from which the line comes"
COUNTED = "heights are counted from here, as that of the tank is"
BEHIND_TANK = "fed from the tank, by a line that was not told"
FILLED = "the tank fills by a float valve, as nobody said what opens"
# What is completed, beside the ends and sizes of sections.
COMPLETED = (
    "pump.present", "pump.set", "pump.sensed", "suction.pipe", "suction.length", *more.PATHS,
)  # fmt: skip
INVENTED = BY_PATH["pump.id"].reason  # of the usual pump, in links too
UNTOLD = (FROM_A_LINK, FROM_THE_EXAMPLE, INVENTED)
SHOWER = ("name", "kind", "after")
TANK = "Tank"  # the outlet by which a line fills the tank it leads to
KEPT = 64  # sites of links, as they were opened; our choice
COPIED = 10  # facts assumed from the example, from which a site was made of it; our choice


def completed(site: Site) -> Site:
    """The site with what it lacks of pump, suction, pipe and outlets as usual, marked assumed.

    Lengths and heights of pipe are never made up: without them there is no answer.  Whether a
    pump can draw from an assumed level is not told by it: see ``calc.desk.work.lacking``.  Facts
    that are there stay as they are.  Raises nothing.
    """
    site = more.with_well_and_use(site)
    if _falls(site):
        site = _without_pump(site)
    if ways.has_pump(site):
        site = more.hung(site)
    if not site.rows("sections"):
        return site  # and no answer about a whole supply
    site = _with_pump(site) if ways.has_pump(site) else _with_datum(site)
    site = more.with_counts(_with_outlet(_to_the_tank(site)))
    return more.with_a_pump_that_suits(_with_pipes(site))


def _falls(site: Site) -> bool:
    """Whether nobody named a pump and the line goes down from where it begins."""
    if any(path.startswith("pump.") for path in site.facts) or not site.rows("sections"):
        return False
    return _goes_down(site) or _hangs_on_a_tank(site)


def _hangs_on_a_tank(site: Site) -> bool:
    """Whether outlets hang on the only line, a tank above was told, and no well that fills it."""
    well = site.get("water.kind").text == "well"
    return not well and bool(site.rows("outlets")) and _from_the_tank(site) is not None


def _goes_down(site: Site) -> bool:
    """Whether the first section ends below what heights are counted from: its water then."""
    height = site.cell("sections", site.rows("sections")[0], "height")
    return isinstance(height, float) and height < 0.0


def _without_pump(site: Site) -> Site:
    site = site.put("pump.present", Fact("no", ASSUMED, FALLS))
    for at, row in enumerate(site.rows("sections")):
        if fold(site.word("sections", row, "from")) == fold(PUMP):
            site = site.put_cell("sections", at, "from", Fact(SOURCE, ASSUMED, FALLS))
    return site


def _with_datum(site: Site) -> Site:
    """With heights counted from where the line begins, where nobody said how high that is."""
    row = named(site)
    told = row is not None and site.cell("sources", row, "level") is not None
    if told or site.best("water.level").known:
        return site
    if (from_tank := _from_the_tank(site)) is not None:
        return from_tank
    if not (begins(site) and _goes_down(site)):
        return site
    return site.put("water.level", Fact(DATUM[_system(site)], ASSUMED, "where the line begins"))


def _from_the_tank(site: Site) -> Site | None:
    """With the water's level that of the tank above, and heights counted from where the line ends,
    as somebody says it who has a tank above the house and no pump; None where it is otherwise."""
    tank = next(iter(site.rows("tanks")), None)
    level = tank.get("level", NOT_KNOWN) if tank else NOT_KNOWN
    sections = site.rows("sections")
    if not level.known or len(sections) != 1 or sections[0].get("height", NOT_KNOWN).known:
        return None
    end = Fact(DATUM[_system(site)], ASSUMED, COUNTED)
    return site.put("water.level", Fact(level.text, ASSUMED, OF_TANK)).put_cell(
        "sections", 0, "height", end
    )


def _with_pump(site: Site) -> Site:
    system = _system(site)
    if site.best("pump.control").text == "speed":
        site = _put(site, "pump.set", SET[system], USUAL)
    site = _put(site, "suction.pipe", SUCTION[system], USUAL)
    if site.best("pump.placement").text == "in":
        return _in_its_water(site, system)
    if not site.best("water.level").known and site.best("pump.placement").text == "out":
        below = ways.pump_height(site) - parse(LEVEL[system], "length").value
        site = _put(site, "water.level", Reader(system).typed(below, "length"), NOT_TOLD)
    if not site.best("suction.length").known:
        level = site.value("water.level")
        lift = ways.pump_height(site) - level if isinstance(level, float) else 0.0
        text = SUCTION_LONG.text(system)
        if lift + MORE > parse(text, "length").value:
            text = _length(lift + MORE, system)
        site = _put(site, "suction.length", text, SUCTION_LONG.reason)
    return site


def _in_its_water(site: Site, system: str) -> Site:
    """Of a pump in its water: level or depth taken from one another, where one of them is told."""
    level, height = site.get("water.level"), site.get("pump.height")
    if height.known and not level.known:
        site = site.put("water.level", Fact(height.text, ASSUMED, AT_PUMP))
    elif level.known and not height.known:
        site = site.put("pump.height", Fact(level.text, ASSUMED, HUNG))
    if ways.pump_height(site) < 0.0:
        site = _put(site, "pump.sensed", DATUM[system], AT_TOP)
    return _put(site, "suction.length", NO_SUCTION[system], NONE_BEFORE)


def _to_the_tank(site: Site) -> Site:
    """With a line of unknown end led to the tank above, where that one's height is told."""
    at = len(site.rows("sections")) - 1
    tank = next(iter(site.rows("tanks")), None)
    if not ways.has_pump(site) or tank is None:
        return site
    level = tank.get("level", NOT_KNOWN)
    if site.rows("sections")[at].get("height", NOT_KNOWN).known or not level.known:
        return site
    for row, _ in enumerate(site.rows("outlets")):
        for moment in ("before", "after"):
            site = site.put_cell("outlets", row, moment, Fact("0", ASSUMED, BEHIND_TANK))
    return site.put_cell("sections", at, "height", Fact(level.text, ASSUMED, TO_TANK))


def _system(site: Site) -> str:
    return "us" if site.system == "us" else "metric"


def _put(site: Site, path: str, text: str, reason: str) -> Site:
    return site if site.best(path).known else site.put(path, Fact(text, ASSUMED, reason))


def _length(metres: float, system: str) -> str:
    unit = QUANTITIES["length"].default(system)
    return f"{plain_number(math.ceil(unit.from_si(metres)), 4)} {unit.symbol}"


# Reasons told again ---------------------------------------------------------------------------


def with_reasons(site: Site) -> Site:
    """The site with the reasons of what ``completed`` assumed, which a link has no room for.

    A fact that was assumed, and is as ``completed`` would assume it today, has its reason; where
    more of the site is the example's, what the example says stays said to be from it.  No text and
    no standing changes.  Raises nothing.
    """
    bare, taken = _untold(site)
    if not taken:
        return site
    again = completed(bare)
    alike = {}
    for place, old in taken.items():
        new = _at(again, place)
        if new.standing == ASSUMED and _alike(place, old, new):
            alike[place] = new
    copied = _is_copied(site)
    for place, old in taken.items():
        by_example = old.reason == FROM_THE_EXAMPLE
        if place in alike and not (old.reason != FROM_A_LINK and copied):
            site = _with(site, place, replace(old, reason=alike[place].reason))
        elif by_example and not copied:  # it is as in the example by chance
            site = _with(site, place, replace(old, reason=FROM_A_LINK))
    return site


@lru_cache(KEPT)
def opened(packed: str) -> Site:
    """The site of a link, ``with_reasons``. Kept: every page of a site opens the same link, and to
    find its reasons a pump is chosen again.  Raises InputError for no whole site."""
    return with_reasons(unpack(packed))


def _is_copied(site: Site) -> bool:
    """Whether a site was made of the example: much of it is still assumed from there."""
    same = sum(fact.reason == FROM_THE_EXAMPLE for fact in site.facts.values())
    return same >= COPIED


Place = tuple[str, int, str]  # (table, row, column); of a single fact ("", 0, path)


def _untold(site: Site) -> tuple[Site, dict[Place, Fact]]:
    """(the site without what may have been completed, what that was)."""
    taken = {("", 0, path): site.get(path) for path in COMPLETED if _is_untold(site.get(path))}
    bare = site
    for _, _, path in taken:
        bare = bare.put(path, NOT_KNOWN)
    for at, row in enumerate(site.rows("sections")):
        for column in ("from", "pipe", "height"):
            if _is_untold(row.get(column, NOT_KNOWN)):
                taken["sections", at, column] = row[column]
                known = Fact(PUMP) if column == "from" else NOT_KNOWN  # a pump, until it falls
                bare = bare.put_cell("sections", at, column, known)
    rows = site.rows("outlets")
    shower = [rows[0].get(key, NOT_KNOWN) for key in SHOWER] if len(rows) == 1 else [NOT_KNOWN]
    if all(one.standing == ASSUMED for one in shower) and _is_untold(shower[0]):
        taken |= {("outlets", 0, key): rows[0][key] for key in SHOWER}
        bare = bare.put_rows("outlets", ())
    return bare, taken


def _is_untold(fact: Fact) -> bool:
    return fact.standing == ASSUMED and fact.reason in UNTOLD


def _at(site: Site, place: Place) -> Fact:
    table, at, key = place
    if not table:
        return site.get(key)
    rows = site.rows(table)
    return rows[at].get(key, NOT_KNOWN) if at < len(rows) else NOT_KNOWN


def _with(site: Site, place: Place, fact: Fact) -> Site:
    table, at, key = place
    return site.put_cell(table, at, key, fact) if table else site.put(key, fact)


def _alike(place: Place, one: Fact, other: Fact) -> bool:
    table, _, key = place
    slot = BY_TABLE[table].column(key) if table else BY_PATH[key]
    return slot.tidied(one.text) == slot.tidied(other.text)


# Pipe and outlets -------------------------------------------------------------------------------


def _with_outlet(site: Site) -> Site:
    """With one outlet at the end of the last section, where nothing is said to open; with the
    tank's float valve where the line leads to a tank."""
    rows, last = site.rows("outlets"), site.rows("sections")[-1]
    tank = last.get("height", NOT_KNOWN).reason == TO_TANK
    if rows and (not tank or site.word("outlets", rows[0], "name") == TANK):
        return site  # the last: it was completed before
    name, kind, why = (TANK, "float", FILLED) if tank else more.usual_outlet(site)
    outlet: Row = {
        "name": Fact(name, ASSUMED, why),
        "at": Fact(site.word("sections", last, "to")),
        "kind": Fact(kind, ASSUMED, why),
        "after": Fact("1", ASSUMED, why),
    }
    return site.put_rows("outlets", (outlet, *rows))


def _with_pipes(site: Site) -> Site:
    flow, system = _all_open(site), _system(site)
    size = _smallest(KIND[system], flow)
    speed = QUANTITIES["speed"].default(system)
    said = f"{plain_number(speed.from_si(practice.SPEED_NOTE), 2)} {speed.symbol}"
    fact = Fact(size, ASSUMED, NO_SIZE.format(said))
    for at, row in enumerate(site.rows("sections")):
        if not site.word("sections", row, "pipe"):
            site = site.put_cell("sections", at, "pipe", fact)
    return site


def _all_open(site: Site) -> float:
    """What all outlets take at their rated pressure with most of them open, m3/s."""
    total = 0.0
    for row in site.rows("outlets"):
        kind = practice.OUTLET_BY_KEY.get(site.word("outlets", row, "kind"))
        flow = site.cell("outlets", row, "flow") or (kind.flow if kind else None)
        open_ = max(
            site.cell("outlets", row, "before") or 0, site.cell("outlets", row, "after") or 0
        )
        total += (flow or 0.0) * open_
    return total or practice.OUTLET_BY_KEY["shower"].flow or 0.0


def _smallest(kind: str, flow_m3s: float) -> str:
    """The smallest pipe of a kind in which a flow is slower than ``practice.SPEED_NOTE``."""
    found = pipes.sizes(kind)
    for one in found:
        if flow_m3s / (math.pi / 4 * one.inside_m**2) <= practice.SPEED_NOTE:
            return f"{one.kind}/{one.size}"
    return f"{found[-1].kind}/{found[-1].size}"
