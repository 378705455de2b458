"""What else a site is completed with: levels of its well, who uses the water, a pump that suits.

A letter asks what pump is needed more often than it names one, and tells of a well what its driller
wrote.  As in ``completed``, each thing is marked as assumed.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.pump.invented import PUMPS
from calc.sheets.parts import ways
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN, Fact
from calc.units import GRAVITY, LITRE, MINUTE, plain_number
from calc.water import density

if TYPE_CHECKING:
    from calc.pump.curve import Pump
    from calc.site.site import Site

# All our choice.
DEEP = 8.0  # m; from water further down than this no pump at the top draws much anywhere
LIFTED = (1.5, 2.0, 3.0, 4.0, 6.0)  # heads of the small invented pump, where no other is enough
SPARE = 1.05  # what a pump makes with no flow, over what it is to hold or to cut out at
PUMPING = "the pumping level told"
RESTING = "the static level told: it falls while the pump runs"
AS_LOWEST = "that of the lowest level told"
AS_HUNG = "where the pump hangs"
AS_INTAKE = "the depth of the intake told"
TOO_DEEP = "not told: water so deep wants a pump hung in it"
HANGS = "it hangs below the top of the well"
AS_GIVEN = "not told: no more than the source gives"
NOBODY = "nobody was said to live on this supply"
SUITS = "not told: the first of the invented pumps that is enough"
STRETCHED = "not told: an invented pump with the head that this takes"
NO_PUMP_SUITS = "not told: none of the invented pumps is enough, this one comes nearest"
HOUSEHOLD = ("shower", "sink", "toilet", "washer")
COUNTS = ("use.showers", "use.sinks", "use.toilets", "use.washers")
TOLD_OF_PUMP = ("pump.id", "pump.curve")
# What is completed here, of single facts.
PATHS = (
    "water.level", "well.static", "well.intake", "pump.height", "pump.placement", "store.inflow",
    "use.people", *TOLD_OF_PUMP,
)  # fmt: skip


def with_well_and_use(site: Site) -> Site:
    """The site with one level of its well for another, the flow to its tank, and nobody in a house
    where there are animals or beds alone.  Raises nothing."""
    return _with_people(_with_inflow(_with_levels(site)))


def _with_levels(site: Site) -> Site:
    if site.get("water.kind").text not in ("", "well"):
        return site
    site = _told(site, "water.level", _below(site.get("well.pumping")), PUMPING)
    site = _told(site, "water.level", _below(site.get("well.static")), RESTING)
    site = _told(site, "well.static", _depth(site.get("water.level")), AS_LOWEST)
    if site.get("well.known").known or site.get("water.yield").known:
        site = _told(site, "well.intake", _depth(site.get("pump.height")), AS_HUNG)
    return _told(site, "pump.height", _below(site.get("well.intake")), AS_INTAKE)


def _below(fact: Fact) -> str:
    """A depth as a height: "63 ft" is at "-63 ft"; "" where it is not known."""
    return f"-{fact.text}" if fact.known and fact.text[:1].isdigit() else ""


def _depth(fact: Fact) -> str:
    """A height below the datum as a depth; "" for others."""
    return fact.text[1:] if fact.known and fact.text[:1] == "-" else ""


def _told(site: Site, path: str, text: str, reason: str) -> Site:
    """With a fact put where it is not known and there is a text for it."""
    return site.put(path, Fact(text, ASSUMED, reason)) if text and not _known(site, path) else site


def _known(site: Site, path: str) -> bool:
    return site.get(path).known


def _with_inflow(site: Site) -> Site:
    """What fills the tank or is drawn from the well is no more than its source was said to give."""
    given = site.get("water.yield")
    wanted = not _known(site, "store.inflow") and not _known(site, "pump.most_flow")
    return _told(site, "store.inflow", given.text if wanted else "", AS_GIVEN)


def _with_people(site: Site) -> Site:
    if not (site.rows("animals") or site.rows("beds")) or _known(site, "use.daily"):
        return site
    kinds = {site.word("outlets", row, "kind") for row in site.rows("outlets")}
    if kinds & set(HOUSEHOLD) or any(site.get(path).known for path in COUNTS):
        return site  # somebody opens these: how many is asked
    return _told(site, "use.people", "0", NOBODY)


# The pump -------------------------------------------------------------------------------------


def hung(site: Site) -> Site:
    """The site with its pump in the water, where no pump above it could draw or it was said to hang
    below the top of its well; as it is where it was said to stand elsewhere.  Raises nothing."""
    told = (_known(site, path) for path in ("pump.placement", "suction.length", "suction.pipe"))
    if any(told) or site.get("water.kind").text not in ("", "well"):
        return site
    level, height = site.value("water.level"), site.value("pump.height")
    if isinstance(height, float) and height < -DEEP:
        return site.put("pump.placement", Fact("in", ASSUMED, HANGS))
    if isinstance(level, float) and ways.pump_height(site) - level > DEEP:
        return site.put("pump.placement", Fact("in", ASSUMED, TOO_DEEP))
    return site


def with_a_pump_that_suits(site: Site) -> Site:
    """The site with an invented pump, where none was named: the smallest that is enough for what
    opens, else one with more head, else the largest.  Raises nothing."""
    if not ways.has_pump(site) or any(_known(site, path) for path in TOLD_OF_PUMP):
        return site
    if site.get("pump.works").text == "diaphragm":
        return site.put("pump.id", Fact("diaphragm", ASSUMED, SUITS))
    try:
        for key in ("small", "middle", "large"):
            chosen = site.put("pump.id", Fact(key, ASSUMED, SUITS))
            if _is_enough(chosen):
                return chosen
        for times in LIFTED:
            chosen = _stretched(site, times)
            if _is_enough(chosen):
                return chosen
    except InputError:  # the supply is not whole: its own page says so
        return site
    return site.put("pump.id", Fact("large", ASSUMED, NO_PUMP_SUITS))


def _stretched(site: Site, times: float) -> Site:
    """With the small invented pump's curve at ``times`` the head and power."""
    rows = [
        f"{plain_number(point.flow / (LITRE / MINUTE), 3)}; {plain_number(point.head * times, 3)};"
        f" {plain_number(point.power * times, 3)}; {plain_number(point.npsh or 0.0, 3)}"
        for point in PUMPS["small"].points
    ]
    table = "\n".join(("Flow L/min; Head m; Power W; NPSH m", *rows))
    head = plain_number(PUMPS["small"].shut_off_head * times, 3)
    name = Fact(f"Invented pump of {head} m with no flow", ASSUMED, STRETCHED)
    return site.put("pump.id", name).put("pump.curve", Fact(table, ASSUMED, STRETCHED))


def _is_enough(site: Site) -> bool:
    """Whether every outlet gets what it needs with all open, and the pump's control is reached.

    Raises InputError as the solved supply does.
    """
    if _at_rest(site, ways.pump_of(site)) < SPARE * _asked_of(site):
        return False
    moment = ways.NOW if ways.same_open(site) else ways.THEN
    found = (ways.way_to_outlet(site, name, moment) for name in ways.outlets(site))
    return all(way.running_pa >= way.needed_pa for way in found)


def _at_rest(site: Site, pump: Pump) -> float:
    """What the pump makes with no flow where its pressure is read, Pa."""
    weight = density(site.value("water.temperature")) * GRAVITY
    lift = ways.suction_lift(site)
    return weight * (pump.shut_off_head - lift) - ways.sensed_pressure(site)


def _asked_of(site: Site) -> float:
    """The pressure that the control waits for, Pa; 0 where none is told."""
    path = "pump.set" if site.value("pump.control") == "speed" else "pump.cut_out"
    return site.value(path) or 0.0
