"""How the fields about water that runs down by its height stand to a site: from a spring, and
from a tank up the hill, over its day and its year."""

from __future__ import annotations

from dataclasses import replace

from calc.sheets.parts import bindings as b
from calc.sheets.parts import gravity_bindings as g
from calc.sheets.parts import table_bindings as t
from calc.sheets.parts import worked_out as w
from calc.sheets.parts.bindings import NOT_KNOWN, Asked, Binding, by_way, figure, known, words
from calc.site.facts import Fact
from calc.site.site import Site

EXTRA, WATER = known("extra", "pipes.extra"), known("water", "water.temperature")
# A way from open water asks for the pressure that its outlet needs.
LINE = (
    by_way(g.drop(), "fall.drop", g.falling),
    by_way(b.length(), "fall.length", g.falling),
    by_way(figure("flow", "flow", lambda asked: asked.way.flow), "fall.flow", g.falling),
    by_way(b.way_pipe(), "fall.pipe", g.falling),
    by_way(words("use", lambda _asked: "own"), "fall.use", g.falling),
    by_way(b.needed("wanted"), "fall.wanted", g.falling),
    known("spring", "water.yield"),
    by_way(figure("extra", "percent", g.extra), "pipes.extra", g.falling),
    WATER, known("hottest", "pipes.hottest"), t.points(g.profile_of),
    known("broken", "fall.broken"), known("breaks", "fall.breaks"), known("held", "fall.held"),
)  # fmt: skip


# A tank up the hill ---------------------------------------------------------------------------


def _one_flow(asked: Asked) -> Fact:
    """What the outlet gives, where the site says so."""
    return asked.site.rows("outlets")[asked.row].get("flow", NOT_KNOWN)


def _take_one_flow(asked: Asked, fact: Fact) -> Site:
    return asked.site.put_cell("outlets", asked.row, "flow", fact)


HEIGHT = by_way(figure("height", "length", w.raised), "store.height")
TANK = (
    known("volume", "store.volume"), w.DAILY, known("pattern", "use.pattern"),
    known("garden", "use.garden"), known("gfrom", "use.garden_from"),
    known("ghours", "use.garden_hours"),
    known("fills", "store.fills"), known("gives", "store.inflow"),
    known("dryflow", "store.dry_inflow"), known("hours", "store.hours"),
    known("begins", "store.begins"),
    HEIGHT, replace(b.needed("wanted"), spare=True),
    known("usable", "store.usable"), known("reserve", "store.reserve"),
    known("shape", "store.shape"), known("deep", "store.depth"), known("plan", "store.floor"),
    by_way(replace(b.length(), spare=True), "store.line"), by_way(b.way_pipe(), "store.pipe"),
    EXTRA, Binding("flow", _one_flow, _take_one_flow), WATER,
    known("rain", "rain.used"), known("roof", "rain.roof"), known("runoff", "rain.runoff"),
    t.rain(), known("dryfrom", "rain.dry_from"), known("drycount", "rain.dry_count"),
)  # fmt: skip
