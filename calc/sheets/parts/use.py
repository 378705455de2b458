"""What a site uses: outlets open, the water of a day; for the sheets that count it."""

from __future__ import annotations

from calc import demand, practice
from calc.sheets.parts import ways
from calc.site.site import Site

SAME = {"shower": ("shower", "saver"), "sink": ("sink",), "hose": ("hose",), "drip": ("drip",)}


def number_open(site: Site, kind: str, moment: str) -> int:
    """Outlets of a kind open at a moment."""
    rows = site.rows("outlets")
    return sum(
        site.cell("outlets", row, ways.COLUMN[moment])
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
            total += flow * site.cell("outlets", row, ways.COLUMN[moment])
    return total


def daily(site: Site) -> float | None:
    """Water of a day, m3/s as a mean; None where the number of people is not known.

    V' = n v + sum n_a v_a + A d / e
    Source: as ``calc.demand``.
    """
    people = site.value("use.people")
    if people is None:
        return None
    each = {one.key: one.daily for one in demand.ANIMALS}
    animals = sum(
        (site.cell("animals", row, "count") or 0)
        * (site.cell("animals", row, "each") or each.get(site.word("animals", row, "kind"), 0.0))
        for row in site.rows("animals")
    )
    area = sum(site.cell("beds", row, "area") or 0.0 for row in site.rows("beds"))
    beds = demand.irrigation(area, site.value("use.depth"), site.value("use.drip_share"))
    return people * site.value("use.each") + animals + beds
