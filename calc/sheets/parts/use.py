"""What a site uses: outlets open, the water of a day; for the sheets that count it."""

from __future__ import annotations

from dataclasses import dataclass

from calc import demand, practice
from calc.sheets.parts.moments import COLUMN
from calc.site.site import Site

SAME = {"shower": ("shower", "saver"), "sink": ("sink",), "hose": ("hose",), "drip": ("drip",)}
DRINKS = {one.key: one.daily for one in demand.ANIMALS}  # m3/s each, as is usual


def number_open(site: Site, kind: str, moment: str) -> int:
    """Outlets of a kind open at a moment."""
    rows = site.rows("outlets")
    return sum(
        site.cell("outlets", row, COLUMN[moment])
        for row in rows
        if site.word("outlets", row, "kind") in SAME[kind]
    )


def flow_of(site: Site, kind: str) -> float:
    """What one outlet of a kind gives, m3/s: as the site says, else as is usual."""
    for row in site.rows("outlets"):
        if site.word("outlets", row, "kind") in SAME[kind]:
            given = site.cell("outlets", row, "flow")
            if given is not None:
                return given
    return practice.OUTLET_BY_KEY[kind].flow


def drip_flow(site: Site, moment: str) -> float:
    """Flow of the drip zones open at a moment, m3/s."""
    total = 0.0
    for row in site.rows("outlets"):
        if site.word("outlets", row, "kind") in SAME["drip"]:
            flow = site.cell("outlets", row, "flow") or practice.OUTLET_BY_KEY["drip"].flow
            total += flow * site.cell("outlets", row, COLUMN[moment])
    return total


@dataclass(frozen=True)
class Stock:
    """A site's animals: rows (indices) of each kind that drinks as is usual, and of those with a
    figure of their own; others: what these take, m3/s; open: some have none and are not counted."""

    usual: dict[str, tuple[int, ...]]
    own: tuple[int, ...]
    others: float
    open: bool


def stock(site: Site) -> Stock:
    """The animals of a site, as every sheet counts them.  Raises InputError as its facts do."""
    usual: dict[str, tuple[int, ...]] = {}
    own: list[int] = []
    others, unknown = 0.0, False
    for at, row in enumerate(site.rows("animals")):
        each, kind = site.cell("animals", row, "each"), site.word("animals", row, "kind")
        if each is None and kind in DRINKS:
            usual[kind] = (*usual.get(kind, ()), at)
            continue
        own.append(at)
        count = site.cell("animals", row, "count") or 0
        others += count * (each or 0.0)
        unknown = unknown or (each is None and count > 0)
    return Stock(usual, tuple(own), others, unknown)


def daily(site: Site) -> float | None:
    """Water of a day, m3/s as a mean; None where the number of people is not known.

    V' = n v + sum n_a v_a + A d / e
    Source: as ``calc.demand``.
    """
    people = site.value("use.people")
    if people is None:
        return None
    found, rows = stock(site), site.rows("animals")
    animals = found.others + sum(
        DRINKS[kind] * (site.cell("animals", rows[at], "count") or 0)
        for kind, places in found.usual.items()
        for at in places
    )
    area = sum(site.cell("beds", row, "area") or 0.0 for row in site.rows("beds"))
    beds = demand.irrigation(area, site.value("use.depth"), site.value("use.drip_share"))
    return people * site.value("use.each") + animals + beds
