"""A site made of what an enquiry told: one pipe from the pump or the source to the house."""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import suppress

from calc.errors import InputError
from calc.site.enquiry_model import Enquiry, Told
from calc.site.facts import ASSUMED, BY_PATH, GIVEN, PIPES, Fact
from calc.site.rows import PUMP, SOURCE, Row
from calc.site.site import Site

HOUSE, HILL_TANK, BEDS = "house", "tank", "garden"
NONE: Mapping[str, str] = {}
# Of the outlets' kinds, those that a use of the site counts as well
_USES = {"shower": "use.showers", "sink": "use.sinks", "toilet": "use.toilets", "washer": "use.washers",
         "hose": "use.hoses"}  # fmt: skip
_PIPES = frozenset(key for key, _ in PIPES)
_OUT_OF_A_SOURCE = {"well": "well", "spring": "spring"}


def to_site(enquiry: Enquiry, chosen: Mapping[str, str] = NONE) -> Site:
    """The site that an enquiry tells of.

    chosen: text by path, of what a person chose or put right: an unclear number, one of two that
    contradict each other, a correction; "" leaves a fact out. What stays unclear is unknown.
    Raises InputError where a chosen text cannot be read.
    """
    told = {one.path: one for one in enquiry.told}
    facts = {path: _fact(one) for path, one in told.items() if _known(one)}
    for path, text in chosen.items():
        facts.pop(path, None)
        if text.strip():
            facts[path] = Fact(text, GIVEN)
    site = Site(system=enquiry.system)
    for path, fact in facts.items():
        if path in BY_PATH:
            site = _put(site, path, fact, strict=path in chosen)
    site = _used(site, facts)
    site = site.put_rows("sections", _way(facts, site))
    site = site.put_rows("outlets", _outlets(facts))
    for table, rows in (
        ("tanks", _tanks(facts)),
        ("animals", _animals(facts)),
        ("beds", _beds(facts)),
    ):
        site = site.put_rows(table, rows)
    return site


def _known(one: Told) -> bool:
    return not one.path.endswith(".pipe") or one.text in _PIPES


def _fact(one: Told) -> Fact:
    return Fact(one.text, ASSUMED if one.standing == "assumed" else GIVEN, one.reason)


def _put(site: Site, path: str, fact: Fact, strict: bool) -> Site:
    if strict:
        return site.put(path, fact)
    with suppress(InputError):
        return site.put(path, fact)
    return site


def _used(site: Site, facts: Mapping[str, Fact]) -> Site:
    """How many outlets there are, for the sheets that count them."""
    for kind, path in _USES.items():
        fact = facts.get(f"outlets.{kind}")
        if fact is not None and path not in facts:
            site = _put(site, path, fact, strict=False)
    return site


def _way(facts: Mapping[str, Fact], site: Site) -> tuple[Row, ...]:
    """One section from the pump, or without one from the source, to the house."""
    row: dict[str, Fact] = {}
    for path, column in (("way.length", "length"), ("way.climb", "height"), ("way.pipe", "pipe")):
        if path in facts:
            row[column] = facts[path]
    if not row:
        return ()
    start = PUMP if site.best("pump.present").text == "yes" else SOURCE
    return ({"from": Fact(start), "to": Fact(HOUSE), **row},)


def _outlets(facts: Mapping[str, Fact]) -> tuple[Row, ...]:
    rows: list[Row] = []
    for path, fact in facts.items():
        group, _, kind = path.partition(".")
        if group == "outlets" and "." not in kind and fact.text != "0":
            open_now = facts.get(f"{path}.together", Fact("1", ASSUMED, "one at a time"))
            rows.append({"name": Fact(_name(kind)), "at": Fact(HOUSE), "kind": Fact(kind),
                         "before": Fact("0", ASSUMED, "taken as shut"), "after": open_now})  # fmt: skip
    for path, fact in facts.items():
        kind = path.split(".")[1]
        if path.endswith(".together") and f"outlets.{kind}" not in facts:
            rows.append({"name": Fact(_name(kind)), "at": Fact(HOUSE), "kind": Fact(kind),
                         "before": Fact("0", ASSUMED, "taken as shut"), "after": fact})  # fmt: skip
    if facts.get("use.troughs", Fact("0")).text != "0":
        rows.append({"name": Fact("Trough"), "at": Fact(HOUSE), "kind": Fact("float"),
                     "before": Fact("0", ASSUMED, "taken as shut"),
                     "after": Fact("1", ASSUMED, "one at a time")})  # fmt: skip
    return tuple(rows)


def _name(kind: str) -> str:
    return {"washer": "Washing machine", "drip": "Drip zone"}.get(kind, kind.capitalize())


def _tanks(facts: Mapping[str, Fact]) -> tuple[Row, ...]:
    columns = {"level": facts.get("tank.level"), "volume": facts.get("tank.volume")}
    row = {key: fact for key, fact in columns.items() if fact is not None}
    return ({"name": Fact(HILL_TANK), **row},) if row else ()


def _animals(facts: Mapping[str, Fact]) -> tuple[Row, ...]:
    return tuple(
        {"kind": Fact(path.split(".")[1]), "count": fact}
        for path, fact in facts.items()
        if path.startswith("animals.")
    )


def _beds(facts: Mapping[str, Fact]) -> tuple[Row, ...]:
    area = facts.get("beds.area")
    return ({"name": Fact(BEDS), "area": area},) if area is not None else ()
