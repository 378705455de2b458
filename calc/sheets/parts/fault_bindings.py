"""How the fault sheet's readings stand to a site: it keeps none; the example has its own."""

from __future__ import annotations

from calc.sheets.parts.bindings import Asked, Binding
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.demo import alder_terrace
from calc.site.facts import NOT_KNOWN, Fact
from calc.site.rows import Row
from calc.site.site import Site

# As if somebody had gone round Alder Terrace with a gauge and a bucket while the valve of cabin 3
# was half closed: invented.
_GAUGES = (
    ("pump", "3.5 bar", "none"),
    ("cabin 3", "1.75 bar", "none"),
    ("pump", "3.5 bar", "after"),
    ("cabin 3", "0.55 bar", "after"),
    ("wash-house", "1.1 bar", "after"),
)
_BUCKETS = (("Cabin 3 shower", "10 L", "115 s"), ("Cabin 2 sink", "10 L", "75 s"))


def _of_switch(field: str, path: str) -> Binding:
    """A pressure of the switch, of a site whose pump has one."""

    def give(asked: Asked) -> Fact:
        switched = asked.site.best("pump.control").text == "switch"
        return asked.site.best(path) if switched else NOT_KNOWN

    def take(asked: Asked, fact: Fact) -> Site:
        return asked.site.put(path, fact)

    return Binding(field, give, take, path, spare=True)


SWITCH = (_of_switch("cutin", "pump.cut_in"), _of_switch("cutout", "pump.cut_out"))


def readings() -> tuple[TableBinding, TableBinding]:
    """The two tables of readings.  Nothing of them goes into a site: tomorrow they are others."""
    gauges = tuple(_row(at=at, got=got, open=which) for at, got, which in _GAUGES)
    buckets = tuple(_row(tap=tap, volume=full, time=time) for tap, full, time in _BUCKETS)
    return _table("gauges", gauges), _table("buckets", buckets)


def _row(**texts: str) -> Row:
    return {key: Fact(text) for key, text in texts.items()}


def _table(field: str, rows: tuple[Row, ...]) -> TableBinding:
    def give(asked: Asked) -> tuple[Row, ...]:
        return rows if asked.site == alder_terrace() else ()

    return TableBinding(field, give, asked=True)
