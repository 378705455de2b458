"""What else a site is completed with: levels of its well, who uses the water, a pump that suits.

A letter asks what pump is needed more often than it names one, and tells of a well what its driller
wrote.  As in ``completed``, each thing is marked as assumed.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.sheets.parts import ways
from calc.sheets.parts.moments import all_open
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN, Fact
from calc.units import GRAVITY, LITRE, MINUTE, Reader, plain_number
from calc.water import density

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.site.site import Site

# All our choice.
DEEP = 8.0  # m; from water further down than this no pump at the top draws much anywhere
DRILLED = 20.0  # m; a well deeper than this has its pump in it
LIFTED = (1.5, 2.0, 3.0, 4.0, 6.0)  # heads of the small invented pump, where no other is enough
SETS = {
    "metric": ("4 bar", "4.5 bar", "5 bar", "6 bar", "7 bar"),
    "us": ("60 psi", "70 psi", "80 psi", "90 psi", "100 psi"),
}
FIRMER = {"pe-sidr15": "pe-sidr7", "pe100-sdr17": "pe100-sdr11"}  # of the same sizes
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
TAKEN = frozenset((SUITS, STRETCHED, NO_PUMP_SUITS))  # why a pump is there that nobody named
HOLDS = "the class that carries what the pump makes with no flow"
HOUSEHOLD = ("shower", "sink", "toilet", "washer")
COUNTS = {
    "shower": "use.showers", "sink": "use.sinks", "toilet": "use.toilets", "washer": "use.washers",
    "hose": "use.hoses", "float": "use.troughs",
}  # fmt: skip
NAMES = {"shower": "Shower", "sink": "Sink", "hose": "Hose", "float": "Trough"}
ONE_OF_THEM = "one {}, as nobody said what opens"
AS_OPEN = "as many as open at once, as nobody said how many there are"
A_DAY = "5 mm"  # of reference ET0; FAO-56, Table 2, from memory: 4 to 7 mm in warm months
A_DAY_SAID = "usual in a warm month, as neither place nor climate was told; our choice"
LINE_BORE = {"metric": "13.6 mm", "us": "0.54 in"}  # of a drip line outside 16 mm
LINE_SAID = "usual of drip lines; our choice"
OF_CLIMATE = ("drip.climate", "drip.reference", "drip.warmest", "place.latitude")
TOLD_OF_PUMP = ("pump.id", "pump.curve")
# What is completed here, of single facts.
PATHS = (
    "water.level", "well.static", "well.intake", "pump.height", "pump.placement", "store.inflow",
    "use.people", "drip.climate", "drip.reference", "drip.bore", *TOLD_OF_PUMP, *COUNTS.values(),
)  # fmt: skip


def with_well_and_use(site: Site) -> Site:
    """The site with one level of its well for another, the flow to its tank, a usual warm month for
    its drip lines, and nobody in a house where there are animals or beds alone.  Raises nothing."""
    return _with_people(_with_drip(_with_inflow(_with_levels(site))))


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
    """A depth that was told as a height: "63 ft" is at "-63 ft"; "" for others."""
    return f"-{fact.text}" if fact.standing == GIVEN and fact.text[:1].isdigit() else ""


def _depth(fact: Fact) -> str:
    """A height below the datum that was told as a depth; "" for others."""
    return fact.text[1:] if fact.standing == GIVEN and fact.text[:1] == "-" else ""


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


def _with_drip(site: Site) -> Site:
    if not any(path.startswith("drip.") for path in site.facts):
        return site
    if not any(_known(site, path) for path in OF_CLIMATE):
        site = site.put("drip.climate", Fact("known", ASSUMED, A_DAY_SAID))
        site = site.put("drip.reference", Fact(A_DAY, ASSUMED, A_DAY_SAID))
    return _told(site, "drip.bore", LINE_BORE[site.system], LINE_SAID)


def _with_people(site: Site) -> Site:
    if not (site.rows("animals") or site.rows("beds")) or _known(site, "use.daily"):
        return site
    kinds = {site.word("outlets", row, "kind") for row in site.rows("outlets")}
    if kinds & set(HOUSEHOLD) or any(_known(site, COUNTS[kind]) for kind in HOUSEHOLD):
        return site  # somebody opens these: how many is asked
    return _told(site, "use.people", "0", NOBODY)


def usual_outlet(site: Site) -> tuple[str, str, str]:
    """(name, kind, why) of the one outlet that is taken to open where none was said to: of a kind
    that was counted; a trough where animals drink and nobody lives; else a shower."""
    for kind, name in NAMES.items():
        if site.get(COUNTS[kind]).standing == GIVEN and site.value(COUNTS[kind]):
            return name, kind, ONE_OF_THEM.format(name.lower())
    if site.rows("animals") and site.value("use.people") == 0:
        return NAMES["float"], "float", ONE_OF_THEM.format("trough")
    return NAMES["shower"], "shower", ONE_OF_THEM.format("shower")


def with_counts(site: Site) -> Site:
    """The site with as many outlets of each kind as open, where no number of any was told."""
    if any(_known(site, path) for path in COUNTS.values()):
        return site
    for row in site.rows("outlets"):
        path = COUNTS.get(site.word("outlets", row, "kind"))
        open_ = [site.cell("outlets", row, key) for key in ("before", "after")]
        most = max((int(one) for one in open_ if isinstance(one, int | float)), default=0)
        if path and most:
            site = site.put(path, Fact(str(most + int(site.value(path) or 0)), ASSUMED, AS_OPEN))
    return site


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
    deep = isinstance(level, float) and ways.pump_height(site) - level > DEEP
    unknown = level is None and (site.value("well.depth") or 0.0) > DRILLED
    if deep or unknown:
        return site.put("pump.placement", Fact("in", ASSUMED, TOO_DEEP))
    return site


def with_a_pump_that_suits(site: Site) -> Site:
    """The site with an invented pump, where none was named, and what it holds, where that was not
    said: the least pressure and the smallest pump that are enough for what opens.  Pipe of a class
    that nobody named is then of one that holds.  Raises nothing."""
    if not ways.has_pump(site):
        return site
    try:
        return _with_class(_with_pump(site))
    except InputError:  # the supply is not whole: its own page says so
        return site


def _with_pump(site: Site) -> Site:
    if any(_known(site, path) for path in TOLD_OF_PUMP):
        return site
    held = site.get("pump.set")
    at_speed = held.standing == ASSUMED and site.value("pump.control") == "speed"
    for text in (held.text, *(SETS[site.system] if at_speed else ())):
        tried = site.put("pump.set", replace(held, text=text)) if at_speed else site
        every = list(_pumps(tried))
        if _is_enough(every[-1]):  # the strongest: none of the others would be
            return next(one for one in every if _is_enough(one))
    every = list(_pumps(site))
    near = next((one for one in every if _is_reached(one)), every[-1])
    return near.put("pump.id", replace(near.get("pump.id"), reason=NO_PUMP_SUITS))


def _pumps(site: Site) -> Iterator[Site]:
    """The site with each of the invented pumps, the weakest first."""
    if site.get("pump.works").text == "diaphragm":
        yield site.put("pump.id", Fact("diaphragm", ASSUMED, SUITS))
        return
    for key in ("small", "middle", "large"):
        yield site.put("pump.id", Fact(key, ASSUMED, SUITS))
    for times in LIFTED:
        yield _stretched(site, times)


def strongest(site: Site) -> Site:
    """The site with the strongest of the invented pumps.  Raises nothing."""
    return _stretched(site, LIFTED[-1])


def _stretched(site: Site, times: float) -> Site:
    """With the small invented pump's curve at ``times`` the head and power."""
    rows = [
        f"{plain_number(point.flow / (LITRE / MINUTE), 3)}; {plain_number(point.head * times, 3)};"
        f" {plain_number(point.power * times, 3)}; {plain_number(point.npsh or 0.0, 3)}"
        for point in PUMPS["small"].points
    ]
    table = "\n".join(("Flow L/min; Head m; Power W; NPSH m", *rows))
    head = Reader(site.system).show(PUMPS["small"].shut_off_head * times, "head")
    head = head.replace("\u00a0", " ")
    name = Fact(f"Invented pump of {head} with no flow", ASSUMED, STRETCHED)
    return site.put("pump.id", name).put("pump.curve", Fact(table, ASSUMED, STRETCHED))


def _with_class(site: Site) -> Site:
    """With pipe of assumed kind in the class that carries what the pump makes with no flow."""
    makes = _weight(site) * (ways.pump_of(site).shut_off_head - ways.suction_lift(site))
    for at, row in enumerate(site.rows("sections")):
        fact = row.get("pipe", NOT_KNOWN)
        kind, _, size = fact.text.partition("/")
        if fact.standing != ASSUMED or kind not in FIRMER:
            continue
        rating = ways.pipe_named(fact.text).rating_pa
        firmer = next((one for one in pipes.sizes(FIRMER[kind]) if one.size == size), None)
        if rating is not None and rating < makes and firmer is not None:
            text = f"{FIRMER[kind]}/{size}"
            site = site.put_cell("sections", at, "pipe", Fact(text, ASSUMED, HOLDS))
    return site


def _is_enough(site: Site) -> bool:
    """Whether every outlet gets what it needs with all open, and the pump's control is reached.

    Raises InputError as the solved supply does.
    """
    return _is_reached(site) and enough(site)


def enough(site: Site) -> bool:
    """Whether every outlet, open beside all that is open, gets what it needs.

    Raises InputError as the solved supply does.
    """
    moment = all_open(site)
    found = (ways.way_to_outlet(site, name, moment) for name in ways.outlets(site))
    return all(way.running_pa >= way.needed_pa for way in found)


def _is_reached(site: Site) -> bool:
    """Whether the pump makes, with no flow, what its control waits for: where that is read."""
    path = "pump.set" if site.value("pump.control") == "speed" else "pump.cut_out"
    made = ways.pump_of(site).shut_off_head - ways.suction_lift(site)
    return _weight(site) * made - ways.sensed_pressure(site) >= SPARE * (site.value(path) or 0.0)


def _weight(site: Site) -> float:
    """Pa for a metre of the site's water."""
    return density(site.value("water.temperature")) * GRAVITY
