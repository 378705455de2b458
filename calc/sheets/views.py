"""Every sheet as a view of a site: which field comes from which fact, and what goes back.

The table is here; ``fill`` and ``back`` of ``parts.filling`` do the work for any view.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from calc.page.fields import Sheet
from calc.page.state import State
from calc.pipe import friction
from calc.pipe.line import Line
from calc.sheets import sheet as find_sheet
from calc.sheets.parts import bindings as b
from calc.sheets.parts import drip_bindings as d
from calc.sheets.parts import filling, putting_back, use, ways
from calc.sheets.parts import pump_bindings as p
from calc.sheets.parts import solar_bindings as sun
from calc.sheets.parts import steady_bindings as s
from calc.sheets.parts import table_bindings as t
from calc.sheets.parts import use_bindings as u
from calc.sheets.parts.bindings import Asked, Binding, figure, known, words
from calc.sheets.parts.putting_back import PutBack
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.demo import alder_terrace
from calc.site.facts import ASSUMED, Fact
from calc.site.site import Site


@dataclass(frozen=True)
class View:
    """A sheet's bindings. outlet: whether it asks about the way to one outlet; kind: of outlet,
    which it asks about first."""

    key: str
    fields: tuple[Binding | TableBinding, ...]
    outlet: bool = True
    kind: str = ""


# What is worked out -------------------------------------------------------------------------


def _line_of(asked: Asked) -> Line:
    return Line(asked.way.sections, asked.way.start_pa, asked.site.value("water.temperature"))


def _extra(asked: Asked) -> float:
    """Bends as added length, at the flow asked: a share that loses the same.  0 with sections."""
    way = asked.way
    if not way.plain or way.flow <= 0:
        return 0.0
    line, only = _line_of(asked), way.sections[0]
    return line.local_loss_in(only, way.flow) / line.straight_loss_in(only, way.flow)


def _most(asked: Asked) -> float:
    """The most the pump gives at the pressure the line starts with, m3/s."""
    way = asked.way
    if way.start != ways.PUMP:
        return way.flow
    return ways.most_flow(asked.site, way.start_pa) if way.held else way.flow


def _fitting(key: str) -> Binding:
    """How many of a fitting are on the way."""

    def give(asked: Asked) -> str:
        counted = (pair for section in asked.way.sections for pair in section.fittings)
        return str(sum(int(count) for fitting, count in counted if fitting.key == key))

    return words(key, give)


def _npsh(asked: Asked) -> Fact:
    """NPSH required: given, or by the pump's curve at the flow of one pump."""
    given = asked.site.best("pump.npsh")
    if given.known:
        return given
    flow = asked.solved.flow / asked.site.value("pump.count")
    needed = ways.pump_of(asked.site).npsh_required_at(flow)
    return b.NOT_KNOWN if needed is None else b.written(needed, "head")


def _figure_known(asked: Asked) -> str:
    """Whether the data sheet's NPSH or its dry lift is what is known."""
    site = asked.site
    only_lift = site.get("pump.dry_lift").known and not site.get("pump.npsh").known
    return "lift" if only_lift and not site.get("pump.curve").known else "npsh"


def _raised(asked: Asked) -> float | None:
    """Water of a tank above the outlet, m, where the line begins at open water."""
    return -asked.way.climb if asked.way.start != ways.PUMP else None


def _lost(asked: Asked) -> float:
    """Head lost on the way to the outlet, m."""
    return _line_of(asked).loss(asked.way.flow)


def _pump_flow(asked: Asked) -> float:
    """Flow of the pump half-way between cut-in and cut-out, m3/s."""
    low, high = (
        ways.known(asked.site, path, "The pressure switch") for path in (
            "pump.cut_in", "pump.cut_out")
    )  # fmt: skip
    return ways.most_flow(asked.site, (low + high) / 2 + ways.sensed_pressure(asked.site))


def _whole_flow(asked: Asked) -> float | None:
    """All that is open, m3/s; None where nothing is."""
    flow = asked.solved.flow
    return flow if flow > ways.LEAST else None


def _drawn(asked: Asked) -> float:
    return max(0.0, asked.solved.flow)


def _take_npsh(asked: Asked, fact: Fact) -> Site:
    return asked.site.put("pump.npsh", fact)


def _npsh_asked(asked: Asked) -> bool:
    """Whether NPSH is a fact of its own, and not read off the pump's curve."""
    if asked.site.get("pump.npsh").known:
        return True
    return ways.pump_of(asked.site).npsh_required_at(0.0) is None


def _open(field: str, kind: str) -> Binding:
    return words(field, lambda asked: str(use.number_open(asked.site, kind, asked.moment)))


def _flow(field: str, kind: str) -> Binding:
    return figure(field, "flow", lambda asked: use.flow_of(asked.site, kind))


def _most_power(asked: Asked) -> Fact:
    """The most that the pumps draw by their table, assumed with an assumed pump; not known where
    the table does not tell."""
    site = asked.site
    powers = [point.power for point in ways.pump_of(site).points]
    if not ways.has_pump(site) or not all(powers):
        return b.NOT_KNOWN
    most = max(powers) * site.value("pump.count")
    if site.get("pump.curve").known or site.get("pump.id").known:
        return b.written(most, "power")
    return b.written(most, "power", ASSUMED, site.best("pump.id").reason)


def _use(asked: Asked) -> Fact:
    """Water of a day as given; else worked out, without the animals of which it is not known what
    they drink."""
    if asked.site.get("use.daily").known:
        return asked.site.get("use.daily")
    daily = use.daily(asked.site)
    if daily is None:
        return b.NOT_KNOWN
    if use.stock(asked.site).open:
        return b.written(daily, "daily", ASSUMED, "without animals whose use is not known")
    return b.written(daily, "daily")


_DAILY = replace(known("use", "use.daily"), give=_use)

# The sheets ---------------------------------------------------------------------------------

_WATER = known("water", "water.temperature")
_ALTITUDE = known("altitude", "place.altitude")
_TANK = known("tank", "pressure_tank.volume")
_CHARGE, _STARTS = known("precharge", "pressure_tank.precharge"), known("starts", "pump.starts")
_LEAST = known("least", "pump.least_flow")
_HOTTEST = known("hottest", "pipes.hottest")
_GUARDS = (known("guard", "pump.guard"), known("relief", "pump.relief"))
_WAY_FLOW = figure("flow", "flow", lambda asked: asked.way.flow)
_ONE_LINE = (_WAY_FLOW, b.climb(), b.length(), b.needed("wanted"), t.line(), _WATER)
_PIPE = b.way_pipe()
_EXTRA = figure("extra", "percent", _extra)

VIEWS = {
    view.key: view
    for view in (
        View("reach", (
            p.start("pressure"), *_ONE_LINE, _PIPE, words("use", lambda asked: "own"),
            figure("most", "flow", _most), _EXTRA, _HOTTEST,
        )),
        View("keep_up", (
            words("ask", lambda asked: "rows"),
            *p.pump(),
            p.menu("drive", "pump.control",
                   {"speed": "held", "fixed": "full", "switch": "full"},
                   {"held": "speed", "full": "fixed"}),
            known("set", "pump.set"), p.sensor(), known("pumps", "pump.count"),
            t.outlets(), t.sections(), t.tanks(), p.lift(),
            known("suctionlong", "suction.length"), known("suctionpipe", "suction.pipe"),
            _WATER, _ALTITUDE, _HOTTEST, _LEAST, _TANK, _CHARGE, _STARTS, *_GUARDS,
            known("draw", "use.smallest"),
        ), outlet=False),
        View("pressure", (
            p.start("known"), b.climb(), b.needed("wanted"), _WATER, _ALTITUDE,
        )),
        View("suction", (
            p.lift(), known("length", "suction.length"), figure("flow", "flow", _whole_flow),
            b.suction_pipe(), words("figure", _figure_known),
            Binding("npsh", _npsh, _take_npsh, "pump.npsh", only=_npsh_asked),
            known("rated", "pump.dry_lift"), _ALTITUDE, _WATER,
            known("foot", "suction.foot_valves"), known("elbow90", "suction.bends"),
            known("strainer", "suction.strainer"), _HOTTEST,
        ), outlet=False),
        View("pipe", (
            p.start("pressure"), *_ONE_LINE, replace(_PIPE, take=None),  # a kind without its size
            *(_fitting(f.key) for f in friction.FITTINGS),
            _HOTTEST,
        )),
        View("tank", (
            _DAILY,
            known("pattern", "use.pattern"), known("gives", "store.inflow"),
            known("hours", "store.hours"), known("bridge", "store.days"),
            known("own", "store.volume"), known("well", "water.yield"),
            known("stored", "water.stored"), known("usable", "store.usable"),
            figure("height", "length", _raised),
            replace(figure("lost", "head", _lost), spare=True),
            replace(b.needed("wanted"), spare=True),
        )),
        View("pressure_tank", (
            p.menu("control", "pump.control", {"fixed": "switch"}, {}),
            known("cutin", "pump.cut_in"), known("cutout", "pump.cut_out"),
            known("set", "pump.set"), figure("pump", "flow", _pump_flow),
            _TANK, figure("draw", "flow", _drawn),
            _CHARGE, _STARTS,
            known("leak", "use.leak"), _ALTITUDE, s.smallest("smallest"), s.least_flow("least"),
            s.refill("refill"),
        ), outlet=False),
        View("demand", (
            _open("showers_open", "shower"), _open("sinks_open", "sink"),
            _open("hoses_open", "hose"),
            figure("drip", "flow", lambda asked: use.drip_flow(asked.site, asked.moment)),
            known("people", "use.people"), known("shower", "use.showers"),
            known("sink", "use.sinks"), known("toilet", "use.toilets"),
            known("washer", "use.washers"), known("hose", "use.hoses"),
            known("trough", "use.troughs"),
            *(u.animals(kind) for kind in use.DRINKS), u.others(), u.beds(),
            known("depth", "use.depth"), known("each", "use.each"),
            _flow("showerflow", "shower"), _flow("sinkflow", "sink"), _flow("hoseflow", "hose"),
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
            figure("flow", "flow", lambda asked: asked.way.outlet_flow), b.length(),
            b.last_pipe(), figure("pressure", "pressure", lambda asked: asked.way.static_pa),
            known("weakest", "pipes.weakest"), known("held", "pipes.held"), _WATER, _ALTITUDE,
            _HOTTEST,
        )),
        View("panels", sun.solar(_DAILY), outlet=False),
        View("battery", sun.solar(_DAILY), outlet=False),
        View("panel_place", sun.standing(), outlet=False),
        View("direct", (
            *sun.direct(_DAILY), *p.pump(), b.climb(), b.length(), _PIPE, p.lift(), _EXTRA, _WATER,
        )),
        View("cable", (
            known("length", "power.cable"), known("voltage", "power.voltage"),
            Binding("power", _most_power),
        ), outlet=False),
        View("drip", d.FIELDS, kind="drip"),
    )
}  # fmt: skip


# Asking ---------------------------------------------------------------------------------------


def asked_of(site: Site, key: str, way: str = "") -> Asked:
    """A site with the way a sheet is asked about.

    way: "now/Wash-house shower" (one of ``choices``), "now/" or "then/" for the whole supply; ""
    for the first choice.
    """
    moment, _, outlet = way.partition("/")
    if moment not in ways.COLUMN:
        moment = ways.NOW
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
    moments: tuple[tuple[str, str], ...] = (
        (ways.NOW, "with what is open before"),
        (ways.THEN, "with what is open after"),
    )
    if ways.same_open(site):
        moments = ((ways.NOW, "with what is open"),)
    if not VIEWS[key].outlet:
        return tuple((f"{moment}/", f"The whole supply, {said}") for moment, said in moments)
    names = _names(site, key)
    return tuple((f"{m}/{name}", f"{name}, {said}") for m, said in moments for name in names)


def fill(site: Site, key: str, way: str = "", system: str = "", digits: int = 4) -> dict[str, Fact]:
    """Every field of a sheet that the site has to do with, as the form shows it.

    site: ``Site``; key: of the sheet; way: as ``asked_of``; system: "metric" or "us" ("": the
    site's); digits: of numbers that are worked out or written in the other system.
    Returns field key -> ``Fact``; unknown ones hold "?" where the field takes that, else nothing.
    Raises KeyError for no such sheet.
    """
    asked = asked_of(site, key, way)
    return filling.fill(asked, VIEWS[key].fields, find_sheet(key), system or site.system, digits)


def back(site: Site, key: str, state: State, way: str = "", going: bool = False) -> PutBack:
    """What the reader typed, put into the site where it is one to one.

    state: the form as it stands, in the system it is shown in; way: as it was filled; going: into
    a copy that goes on to another page, as ``Asked``.
    Returns ``PutBack``: the new site, a sentence for each change, and what stayed a what-if.
    Raises KeyError for no such sheet.
    """
    asked = replace(asked_of(site, key, way), going=going)
    return putting_back.back(asked, VIEWS[key].fields, find_sheet(key), state)


# The example ----------------------------------------------------------------------------------

# Way asked about where it is not the first; fields in which a page's example asks "what if".
EXAMPLE_WAYS = {"surge": "now/Goat trough", "direct": "now/Cabin 3 shower"}
WHAT_IF = {
    "pressure_tank": {"control": Fact("switch"), "smallest": Fact(""), "least": Fact("")},
    "pump_match": {"draw": Fact("")},
    "direct": {"tank": Fact("5000 L"), "strings": Fact("3")},
    "tank": {"own": Fact(""), "height": Fact(""), "lost": Fact("1.5 m")},
}
EXAMPLE_DIGITS = 3


def example_defaults(key: str, sheet: Sheet | None = None) -> dict[str, tuple[str, str]]:
    """(metric text, US text) of each field as Alder Terrace fills it.

    sheet: the sheet itself, while it is being made (None: found by its key).
    US texts are converted and rounded; nominal pipe sizes are as they are.
    """
    asked, sheet = asked_of(alder_terrace(), key, EXAMPLE_WAYS.get(key, "")), sheet or (
        find_sheet(key))  # fmt: skip
    found: dict[str, list[str]] = {}
    for system in ("metric", "us"):
        facts = filling.fill(asked, VIEWS[key].fields, sheet, system, EXAMPLE_DIGITS)
        for field, fact in WHAT_IF.get(key, {}).items():
            facts[field] = filling.shown(fact, sheet.field(field), asked.site, system, 3)
        for field, fact in facts.items():
            if fact.known:
                found.setdefault(field, []).append(fact.text)
    return {field: (texts[0], texts[1]) for field, texts in found.items()}


def on_example(sheet: Sheet) -> Sheet:
    """The sheet with its fields' defaults read from Alder Terrace: say it last in ``sheet.py``."""
    defaults = example_defaults(sheet.key, sheet)
    fields = (filling.with_default(f, *defaults[f.key]) if f.key in defaults else f
              for f in sheet.fields)  # fmt: skip
    return replace(sheet, fields=tuple(fields), plain=sheet)
