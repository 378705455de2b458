"""How the fields of a supply's day stand to a site: its tanks, its times of use, its power."""

from __future__ import annotations

from dataclasses import replace

from calc.sheets.parts import ways
from calc.sheets.parts.bindings import CALCULATED, Asked, Binding, known, written
from calc.sheets.parts.table_bindings import TableBinding, one_to_one
from calc.site.facts import NOT_KNOWN, Fact
from calc.site.rows import Row, fold
from calc.site.site import Site

NOON = 12.5  # hour of day about which a pump on the sun runs, as for a hill tank; our choice


def stores() -> TableBinding:
    """The tanks that a pipe section joins, with their depth and volume."""

    def only(site: Site, row: Row) -> bool:
        return fold(site.word("tanks", row, "name")) in ways.joined(site)

    columns = {"name": "name", "up": "level", "deep": "depth", "volume": "volume"}
    return one_to_one("stores", "tanks", columns, "up", only)


def outlets() -> TableBinding:
    """The outlets, without how many are open before and after."""
    return one_to_one("taps", "outlets", {
        "name": "name", "at": "at", "kind": "kind", "flow": "flow", "rated": "rated",
        "want": "needed",
    })  # fmt: skip


def draws() -> TableBinding:
    """When outlets are open: the rows of those outlets that the site has."""

    def only(site: Site, row: Row) -> bool:
        names = {fold(site.word("outlets", one, "name")) for one in site.rows("outlets")}
        return fold(site.word("draws", row, "outlet")) in names

    columns = {"tap": "outlet", "from": "from", "hours": "hours", "open": "count"}
    return one_to_one("draws", "draws", columns, "", only)


def _powered(asked: Asked) -> Fact:
    fact = asked.site.get("power.source")
    words = {"sun": "hours", "grid": "always", "generator": "hours"}
    if not fact.known or fact.text not in words:
        return NOT_KNOWN
    return replace(fact, text=words[fact.text])


def _stored(asked: Asked) -> Fact:
    """What is stored at the source as the site knows it: what is usual is no knowledge here."""
    fact = asked.site.get("water.stored")
    return fact if fact.known and asked.site.value("water.stored") else NOT_KNOWN


def _begins(asked: Asked) -> Fact:
    """When power comes: the hours of filling lie about noon."""
    hours = asked.site.best("store.hours")
    begins = (NOON - asked.site.value("store.hours") / 2) % 24
    return written(begins, "number", hours.standing, hours.reason or CALCULATED)


def _take_stored(asked: Asked, fact: Fact) -> Site:
    return asked.site.put("water.stored", fact)


POWER = (
    Binding("powered", _powered),
    Binding("pfrom", _begins),
    known("phours", "store.hours"),
)
SOURCE = (
    Binding("stored", _stored, _take_stored, "water.stored"),
    known("gives", "water.yield"),
)
TABLES: tuple[TableBinding, ...] = (stores(), outlets(), draws())
