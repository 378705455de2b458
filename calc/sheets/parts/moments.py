"""What is open: now, before a change, or then, after it."""

from __future__ import annotations

from calc.site.site import Site

NOW, THEN = "now", "then"  # with what is open before, and after
COLUMN = {NOW: "before", THEN: "after"}


def same_open(site: Site) -> bool:
    """Whether the same outlets are open before and after."""
    rows = site.rows("outlets")
    return all(site.cell("outlets", r, "before") == site.cell("outlets", r, "after") for r in rows)


def all_open(site: Site) -> str:
    """The moment when all is open: after, where that is another one at all."""
    return NOW if same_open(site) else THEN
