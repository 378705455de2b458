"""Alder Terrace, the invented site every page's example is read from. Once, in metric."""

from __future__ import annotations

from functools import lru_cache

from calc.site.facts import ASSUMED, Fact
from calc.site.rows import Row
from calc.site.site import Site

NAME = "Alder Terrace"
FROM_THE_EXAMPLE = "from the example"
NOTE = "An invented place; its pump is invented too."
_FACTS = {
    "place.name": NAME,
    "place.latitude": "41.25°",
    "place.longitude": "-7.35°",
    "place.altitude": "300 m",
    # of the tables of docs/figures.md there, sun in kWh/m2 a day and air in degC
    "place.climate": "1.75 2.84 3.91 5.07 6.32 7.09 7.50 6.61 5.05 3.14 2.01 1.58 "
    "7.0 7.5 9.9 12.5 15.9 20.5 23.4 23.7 20.7 15.7 10.1 7.3",
    "water.kind": "well",
    "water.level": "-4 m",
    "water.temperature": "15 °C",
    "suction.length": "7 m",
    "suction.pipe": "pe100-sdr11/40",
    "suction.foot_valves": "1",
    "suction.bends": "1",
    "pump.present": "yes",
    "pump.height": "0 m",
    "pump.placement": "out",
    "pump.id": "middle",
    "pump.control": "speed",
    "pump.set": "3.5 bar",
    "pump.cut_in": "2 bar",
    "pump.cut_out": "3.5 bar",
    "pump.starts": "20 per hour",
    "pressure_tank.volume": "200 L",
    "store.days": "3 days",
    "store.usable": "90 %",
    "store.inflow": "6 L/min",
    "store.hours": "6",
    "use.people": "6",
    "use.each": "100 L/day",
    "use.pattern": "home",
    "use.showers": "4",
    "use.sinks": "5",
    "use.toilets": "0",
    "use.washers": "0",
    "use.hoses": "1",
    "use.troughs": "1",
    "use.depth": "4 mm",
    "use.drip_share": "90 %",
    "pipes.hottest": "20 °C",
    "pipes.weakest": "10 bar",
    "pipes.held": "buried",
    "power.voltage": "48 V",
    "power.panel": "150 W",
    "power.series": "2",
    "power.strings": "1",
    "power.tilt": "50°",
    "power.facing": "equator",
    "power.shade": "5 %",
    "power.battery": "lfp",
    "power.capacity": "50 Ah",
    "power.controller": "mppt",
    "power.limit": "150 V",
    "power.amps": "20 A",
    "power.fail": "5",
    "power.cable": "30 m",
    "well.drawn": "690 L",
    "well.drawn_for": "115 min",
    "well.steady": "1.5 L/min",
    "well.static": "3.2 m",
    "well.intake": "4.3 m",
    "well.depth": "6 m",
    "well.bore": "1000 mm",
    "well.cover": "0.3 m",
    "well.clear": "0.5 m",
    "pump.dry_run": "yes",
    "use.garden": "800 L/day",
    "drip.rows": "0.5 m",
    "drip.hours": "6",
    "drip.length": "20 m",
    "drip.spacing": "0.3 m",
    "drip.dripper": "2 L/h",
    "drip.bore": "13.6 mm",
    "drip.filter": "yes",
    "hot.volume": "80 L",
    "hot.stored": "60 °C",
    "hot.tank": "5 L",
    "hot.precharge": "2.3 bar",
    "hot.relief": "6 bar",
}
_SECTIONS = (
    ("pump", "lower fork", "60 m", "5 m", "40"),
    ("lower fork", "upper fork", "70 m", "11.5 m", "32"),
    ("upper fork", "wash-house", "25 m", "12 m", "25"),
    ("upper fork", "cabin 2", "35 m", "12 m", "25"),
    ("upper fork", "cabin 3", "80 m", "18 m", "25"),
    ("lower fork", "cabin 1", "20 m", "6 m", "25"),
    ("lower fork", "goat trough", "50 m", "3 m", "20"),
    ("lower fork", "herb terraces", "40 m", "9 m", "25"),
)
_OUTLETS = (
    ("Wash-house shower", "wash-house", "shower", "2", "2"),
    ("Wash-house hose", "wash-house", "hose", "0", "1"),
    ("Cabin 1 sink", "cabin 1", "sink", "0", "0"),
    ("Cabin 2 sink", "cabin 2", "sink", "0", "0"),
    ("Cabin 3 shower", "cabin 3", "shower", "1", "1"),
    ("Goat trough", "goat trough", "float", "1", "1"),
    ("Herb terraces", "herb terraces", "drip", "0", "0"),
)
# A day of August: outlet, opens at, for hours, how many
_DRAWS = (
    ("Wash-house shower", "7", "0.5", "2"),
    ("Cabin 1 sink", "7.5", "0.5", "1"),
    ("Goat trough", "8", "0.25", "1"),
    ("Cabin 2 sink", "12.5", "0.5", "1"),
    ("Cabin 3 shower", "18", "0.5", "1"),
    ("Wash-house hose", "19", "0.5", "1"),
)


def _section(start: str, to: str, length: str, height: str, size: str) -> Row:
    return _row(
        **{"from": start}, to=to, length=length, height=height, pipe=f"pe100-sdr11/{size}",
        bends="2", fitting="r15" if to == "herb terraces" else "none",
    )  # fmt: skip


def _outlet(name: str, at: str, kind: str, before: str, after: str) -> Row:
    return _row(name=name, at=at, kind=kind, before=before, after=after)


def _draw(outlet: str, start: str, hours: str, count: str) -> Row:
    return _row(**{"from": start}, outlet=outlet, hours=hours, count=count)


def _row(**texts: str) -> Row:
    return {key: Fact(text) for key, text in texts.items()}


@lru_cache(maxsize=1)
def alder_terrace() -> Site:
    """The invented site.  Raises nothing.  Source: invented."""
    site = Site(NAME, "metric", {path: Fact(text) for path, text in _FACTS.items()}, {}, NOTE)
    site = site.put_rows("sections", tuple(_section(*row) for row in _SECTIONS))
    site = site.put_rows("outlets", tuple(_outlet(*row) for row in _OUTLETS))
    # In the shed; no pipe section leads from it, so it feeds nothing by its height.
    site = site.put_rows("tanks", (_row(name="cistern", level="2 m", volume="3000 L"),))
    site = site.put_rows("animals", (_row(kind="goats", count="8"), _row(kind="hens", count="12")))
    return site.put_rows("beds", (_row(name="herb terraces", area="60 m²"),))


@lru_cache(maxsize=1)
def with_hill_tank() -> Site:
    """Alder Terrace with a tank up the hill that is only thought of, a day's use, and its well.

    Its links are longer than a code on paper holds, so these are not in ``alder_terrace``.
    Raises nothing.  Source: invented.
    """
    site = alder_terrace()
    main = _section("upper fork", "hill tank", "90 m", "34 m", "32")
    tank = _row(name="hill tank", level="35.5 m", volume="1000 L", depth="1.5 m")
    site = site.put_rows("sections", (*site.rows("sections"), main))
    site = site.put_rows("tanks", (*site.rows("tanks"), tank))
    site = site.put_rows("draws", tuple(_draw(*row) for row in _DRAWS))
    for path, text in (("pump.control", "fixed"), ("water.yield", "6 L/min"),
                       ("water.stored", "700 L"), ("power.source", "sun")):  # fmt: skip
        site = site.put(path, Fact(text))
    return site


def to_change(name: str) -> Site:
    """Alder Terrace to be typed over: what its reader leaves is assumed, from the example.

    name: of the new site.  Raises nothing.
    """
    site = alder_terrace()
    tables = {key: tuple(map(_assumed, rows)) for key, rows in site.tables.items()}
    return Site(name, site.system, _assumed(site.facts), tables)


def _assumed(facts: Row) -> Row:
    return {key: Fact(fact.text, ASSUMED, FROM_THE_EXAMPLE) for key, fact in facts.items()}
