"""Every sheet as a view of a site: which field comes from which fact, and what goes back.

The table is here; ``fill`` and ``back`` of ``parts.filling`` do the work for any view.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from calc.page.fields import Sheet
from calc.page.state import State
from calc.pipe import friction
from calc.sheets import sheet as find_sheet
from calc.sheets.parts import bindings as b
from calc.sheets.parts import day_bindings as day
from calc.sheets.parts import drip_bindings as d
from calc.sheets.parts import fall_bindings as fall
from calc.sheets.parts import fault_bindings as fault
from calc.sheets.parts import filling, moments, putting_back, use, ways
from calc.sheets.parts import open_bindings as o
from calc.sheets.parts import pump_bindings as p
from calc.sheets.parts import solar_bindings as sun
from calc.sheets.parts import steady_bindings as s
from calc.sheets.parts import table_bindings as t
from calc.sheets.parts import use_bindings as u
from calc.sheets.parts import well_bindings as well
from calc.sheets.parts import worked_out as w
from calc.sheets.parts.bindings import Asked, Binding, figure, known, words
from calc.sheets.parts.putting_back import PutBack
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.demo import alder_terrace, with_hill_tank
from calc.site.facts import Fact
from calc.site.site import Site


@dataclass(frozen=True)
class View:
    """A sheet's bindings. outlet: whether it asks about the way to one outlet; kind: of outlet,
    which it asks about first."""

    key: str
    fields: tuple[Binding | TableBinding, ...]
    outlet: bool = True
    kind: str = ""


# The sheets ---------------------------------------------------------------------------------

_WATER = known("water", "water.temperature")
_ALTITUDE = known("altitude", "place.altitude")
_TANK = known("tank", "pressure_tank.volume")
_CHARGE, _STARTS = known("precharge", "pressure_tank.precharge"), known("starts", "pump.starts")
_LEAST = known("least", "pump.least_flow")
_HOTTEST = known("hottest", "pipes.hottest")
_GUARDS = (known("guard", "pump.guard"), known("relief", "pump.relief"))
_WAY_FLOW = figure("flow", "flow", lambda asked: asked.way.flow)
_OUTLET_FLOW = figure("flow", "flow", lambda asked: asked.way.outlet_flow)
_STATIC = figure("static", "pressure", lambda asked: asked.way.static_pa)
_ONE_LINE = (_WAY_FLOW, b.climb(), b.length(), b.needed("wanted"), t.line(), _WATER)
_PIPE = b.way_pipe()
_EXTRA = figure("extra", "percent", w.extra)

VIEWS = {
    view.key: view
    for view in (
        View("reach", (
            p.start("pressure"), *_ONE_LINE, _PIPE, words("use", lambda asked: "own"),
            figure("most", "flow", w.most), _EXTRA, _HOTTEST,
        )),
        View("keep_up", (
            words("ask", lambda asked: "rows"),
            *p.pump(),
            o.drive(), known("set", "pump.set"), p.sensor(), known("pumps", "pump.count"),
            t.outlets(), t.sections(), t.tanks(), p.lift(),
            known("suctionlong", "suction.length"), known("suctionpipe", "suction.pipe"),
            _WATER, _ALTITUDE, _HOTTEST, _LEAST, _TANK, _CHARGE, _STARTS, *_GUARDS,
            known("draw", "use.smallest"), o.fall(), o.gives(),
        ), outlet=False),
        View("pressure", (
            p.start("known"), b.climb(), b.needed("wanted"), _WATER, _ALTITUDE,
        )),
        View("suction", (
            p.lift(), known("length", "suction.length"), figure("flow", "flow", w.whole_flow),
            b.suction_pipe(), words("figure", w.figure_known),
            Binding("npsh", w.npsh, w.take_npsh, "pump.npsh", only=w.npsh_asked),
            known("rated", "pump.dry_lift"), _ALTITUDE, _WATER,
            known("foot", "suction.foot_valves"), known("elbow90", "suction.bends"),
            known("strainer", "suction.strainer"), _HOTTEST,
        ), outlet=False),
        View("pipe", (
            p.start("pressure"), *_ONE_LINE, replace(_PIPE, take=None),  # a kind without its size
            *(w.fitting(f.key) for f in friction.FITTINGS),
            _HOTTEST,
        )),
        View("tank", (
            w.DAILY,
            known("pattern", "use.pattern"), known("gives", "store.inflow"),
            known("hours", "store.hours"), known("bridge", "store.days"),
            known("own", "store.volume"), known("well", "water.yield"),
            known("stored", "water.stored"), known("usable", "store.usable"),
            fall.HEIGHT,
            replace(figure("lost", "head", w.lost), spare=True),
            replace(b.needed("wanted"), spare=True),
        )),
        View("pressure_tank", (
            p.menu("control", "pump.control", {"fixed": "switch"}, {}),
            known("cutin", "pump.cut_in"), known("cutout", "pump.cut_out"),
            known("set", "pump.set"), figure("pump", "flow", w.pump_flow),
            _TANK, figure("draw", "flow", w.drawn),
            _CHARGE, _STARTS,
            replace(figure("shutoff", "head", w.shut_off), spare=True),
            replace(p.lift(), spare=True),
            known("leak", "use.leak"), _ALTITUDE, s.smallest("smallest"), s.least_flow("least"),
            s.refill("refill"), known("weakest", "pipes.weakest"),
        ), outlet=False),
        View("demand", (
            w.number_open("showers_open", "shower"), w.number_open("sinks_open", "sink"),
            w.number_open("hoses_open", "hose"),
            figure("drip", "flow", lambda asked: use.drip_flow(asked.site, asked.moment)),
            known("people", "use.people"), known("shower", "use.showers"),
            known("sink", "use.sinks"), known("toilet", "use.toilets"),
            known("washer", "use.washers"), known("hose", "use.hoses"),
            known("trough", "use.troughs"),
            *(u.animals(kind) for kind in use.DRINKS), u.others(), u.beds(),
            known("depth", "use.depth"), known("each", "use.each"),
            w.flow("showerflow", "shower"), w.flow("sinkflow", "sink"), w.flow("hoseflow", "hose"),
            known("busy", "use.busy"), known("reach", "use.drip_share"),
        ), outlet=False),
        View("pump_match", (
            *p.pump(), *_ONE_LINE, _PIPE, p.lift(),
            figure("suction", "head",
                   lambda asked: ways.suction_loss(asked.site, asked.way.flow)),
            _ALTITUDE, _EXTRA, p.set_to("set"), p.sensor(), known("grade", "pump.grade"),
            known("motor", "pump.motor"), known("controller", "pump.controller"), _HOTTEST,
            _LEAST, _TANK, _CHARGE, _STARTS, *_GUARDS, s.smallest("draw"),
            known("pumps", "pump.count"),
        )),
        View("surge", (
            _OUTLET_FLOW, b.length(), b.last_pipe(),
            figure("pressure", "pressure", lambda asked: asked.way.static_pa),
            known("weakest", "pipes.weakest"), known("held", "pipes.held"), _WATER, _ALTITUDE,
            _HOTTEST, replace(figure("lift", "length", w.lifted), spare=True),
        )),
        View("panels", sun.solar(w.DAILY), outlet=False),
        View("battery", sun.solar(w.DAILY), outlet=False),
        View("panel_place", sun.standing(), outlet=False),
        View("direct", (
            *sun.direct(w.DAILY), *p.pump(), b.climb(), b.length(), _PIPE, p.lift(), _EXTRA, _WATER,
        )),
        View("cable", (
            known("length", "power.cable"), known("voltage", "power.voltage"),
            Binding("power", w.most_power),
        ), outlet=False),
        View("gravity", fall.LINE),
        View("well", well.FIELDS, outlet=False),
        View("hill_tank", fall.TANK),
        View("drip", d.FIELDS, kind="drip"),
        View("sprinkler", d.WATER, kind="sprinkler"),
        View("hot_water", (
            known("heater", "hot.volume"), _WATER, known("stored", "hot.stored"), _STATIC,
            known("volume", "hot.tank"), known("charge", "hot.precharge"),
            known("relief", "hot.relief"), known("weakest", "pipes.weakest"), _OUTLET_FLOW,
            _HOTTEST, _ALTITUDE,
        )),
        View("day", (
            *day.TABLES, t.sections(), o.drive(), *p.pump(), known("set", "pump.set"),
            *day.POWER, known("pumps", "pump.count"), p.sensor(), _STARTS, *day.SOURCE, p.lift(),
            known("suctionlong", "suction.length"), known("suctionpipe", "suction.pipe"),
            _WATER, _ALTITUDE, o.fall(),
        ), outlet=False),
        View("fault", (
            *fault.readings(), t.sections(), t.outlets(), t.tanks(), o.drive(), *p.pump(),
            known("set", "pump.set"), *fault.SWITCH, p.sensor(), known("pumps", "pump.count"),
            p.lift(), known("suctionlong", "suction.length"), known("suctionpipe", "suction.pipe"),
            _WATER, _ALTITUDE, _LEAST, _TANK, _CHARGE, o.fall(),
        ), outlet=False),
    )
}  # fmt: skip


OF_A_PUMP = ("suction", "pump_match", "pressure_tank", "direct", "panels", "battery")


# Asking ---------------------------------------------------------------------------------------


def asked_of(site: Site, key: str, way: str = "") -> Asked:
    """A site with the way a sheet is asked about.

    way: "now/Wash-house shower" (one of ``choices``), "now/" or "then/" for the whole supply; ""
    for the first choice.
    """
    moment, _, outlet = way.partition("/")
    if moment not in moments.COLUMN:
        moment = moments.NOW
    if VIEWS[key].outlet and not outlet:
        outlet = next(iter(_names(site, key)), "")
    return Asked(site, outlet if VIEWS[key].outlet else "", moment)


def _names(site: Site, key: str) -> tuple[str, ...]:
    """Names of the outlets, those of the kind that the sheet is about first."""
    rows = site.rows("outlets")
    first = {site.word("outlets", r, "name") for r in rows
             if site.word("outlets", r, "kind") == VIEWS[key].kind}  # fmt: skip
    return tuple(sorted(ways.outlets(site), key=lambda name: name not in first))


def choices(site: Site, key: str) -> tuple[tuple[str, str], ...]:
    """(value, label) of every way a sheet can be asked about; the first is the usual one."""
    asked: tuple[tuple[str, str], ...] = (
        (moments.NOW, "with what is open before"),
        (moments.THEN, "with what is open after"),
    )
    if moments.same_open(site):
        asked = ((moments.NOW, "with what is open"),)
    if not VIEWS[key].outlet:
        return tuple((f"{moment}/", f"The whole supply, {said}") for moment, said in asked)
    names = _names(site, key)
    return tuple((f"{m}/{name}", f"{name}, {said}") for m, said in asked for name in names)


def fill(site: Site, key: str, way: str = "", system: str = "", digits: int = 4) -> dict[str, Fact]:
    """Every field of a sheet that the site has to do with, as the form shows it.

    site: ``Site``; key: of the sheet; way: as ``asked_of``; system: "metric" or "us" ("": the
    site's); digits: of numbers that are worked out or written in the other system.
    Returns field key -> ``Fact``; unknown ones hold "?" where the field takes that, else nothing.
    Raises KeyError for no such sheet.
    """
    asked = asked_of(site, key, way)
    # a page about a pump is that of an example, on a site that has none
    spare = key in OF_A_PUMP and not ways.has_pump(site)
    return filling.fill(
        asked, VIEWS[key].fields, find_sheet(key), system or site.system, digits, spare
    )


def back(site: Site, key: str, state: State, way: str = "", going: bool = False) -> PutBack:
    """What the reader typed, put into the site where it is one to one.

    state: the form as it stands, in the system it is shown in; way: as it was filled; going: into
    a copy that goes on to another page, as ``Asked``.
    Returns ``PutBack``: the new site, a sentence for each change, and what stayed a what-if.
    Raises KeyError for no such sheet.
    """
    asked = replace(asked_of(site, key, way), going=going)
    if key == "keep_up":
        state = o.with_its_water(site, find_sheet(key), state)
    return putting_back.back(asked, VIEWS[key].fields, find_sheet(key), state)


# The example ----------------------------------------------------------------------------------

# Way asked about where it is not the first; fields in which a page's example asks "what if".
EXAMPLE_WAYS = {"surge": "now/Goat trough", "direct": "now/Cabin 3 shower"}
WHAT_IF = {
    "pressure_tank": {
        "control": Fact("switch"),
        "smallest": Fact(""),
        "least": Fact(""),
        "shutoff": Fact(""),
    },
    "pump_match": {"draw": Fact("")},
    "direct": {"tank": Fact("5000 L"), "strings": Fact("3")},
    "gravity": {
        "drop": Fact("30 m"),
        "length": Fact("900 m"),
        "flow": Fact("15 L/min"),
        "spring": Fact("20 L/min"),
        "kind": Fact("pe100-sdr11"),
        "pe100-sdr11": Fact("40"),
    },
    # the cistern in the shed
    "well": {"cistern": Fact("3000 L")},
    "hill_tank": {"volume": Fact("1000 L"), "height": Fact("15 m")},
    # an orchard by the pump, as if sprinklers were set there
    "sprinkler": {"flow": Fact("15 L/min"), "pressure": Fact("2.2 bar")},
    "tank": {"own": Fact(""), "height": Fact(""), "lost": Fact("1.5 m")},
}
# Fields whose example the sheet itself writes, in round US numbers too: links leave these texts
# out.  Alder Terrace says the same.
AS_WRITTEN = {
    "well": (
        "known", "drawn", "minutes", "steady", "dry", "static", "intake", "depth",
        "casing", "cover", "clear",
    ),
    "hill_tank": ("garden",),
    "drip": ("rows", "hours", "length", "spacing", "dripper", "bore", "filter"),
}  # fmt: skip
EXAMPLE_DIGITS = 3
EXAMPLE_SITES = {"day": with_hill_tank}  # where the example asks about more than is there


def example_defaults(key: str, sheet: Sheet | None = None) -> dict[str, tuple[str, str]]:
    """(metric text, US text) of each field as Alder Terrace fills it.

    sheet: the sheet itself, while it is being made (None: found by its key).
    US texts are converted and rounded; nominal pipe sizes are as they are.
    """
    site, sheet = EXAMPLE_SITES.get(key, alder_terrace)(), sheet or find_sheet(key)
    asked = asked_of(site, key, EXAMPLE_WAYS.get(key, ""))
    found: dict[str, list[str]] = {}
    for system in ("metric", "us"):
        facts = filling.fill(asked, VIEWS[key].fields, sheet, system, EXAMPLE_DIGITS)
        for field, fact in WHAT_IF.get(key, {}).items():
            facts[field] = filling.shown(fact, sheet.field(field), asked.site, system, 3)
        for field, fact in facts.items():
            if fact.known and field not in AS_WRITTEN.get(key, ()):
                found.setdefault(field, []).append(fact.text)
    return {field: (texts[0], texts[1]) for field, texts in found.items()}


def on_example(sheet: Sheet) -> Sheet:
    """The sheet with its fields' defaults read from Alder Terrace: say it last in ``sheet.py``."""
    defaults = example_defaults(sheet.key, sheet)
    fields = (filling.with_default(f, *defaults[f.key]) if f.key in defaults else f
              for f in sheet.fields)  # fmt: skip
    return replace(sheet, fields=tuple(fields), plain=sheet)
