"""What the maker of a link asks its reader to change: a courtesy, never a lock.

In a link it is "may=o.h.us": codes parted by dots, one letter for a group of facts, two for one
fact (``Slot.code``).  The form marks the fields; every other field can be changed as before.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.sheets import views
from calc.site import fragment as spelled
from calc.site.facts import BY_PATH, PIPES, SLOTS
from calc.site.rows import BY_TABLE

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.site.site import Site

MOST = 40  # codes read from a link; our choice
COURTESY = "Nothing is locked: every other number can be changed too."
_SIZES = frozenset(text.partition("/")[0] for text, _ in PIPES)  # fields of the sizes of a kind


@dataclass(frozen=True)
class Group:
    """Facts that go together. code: one letter in a link; paths: beginnings of the paths of its
    facts; tables: of a site; fields: keys of sheets' fields that come from those tables."""

    code: str
    label: str
    paths: tuple[str, ...] = ()
    tables: tuple[str, ...] = ()
    fields: frozenset[str] = frozenset()


# Codes stand in links and never change.  The grouping is our choice.
GROUPS = (
    Group("o", "Outlets, and how many are open", ("use.showers", "use.sinks", "use.toilets",
          "use.washers", "use.hoses", "use.troughs", "use.busy"), ("outlets", "draws"),
          frozenset({"taps", "draws", "flow", "wanted", "showers_open", "sinks_open",
                     "hoses_open"})),
    Group("h", "Heights and lengths", ("water.level", "suction.length", "pump.height",
          "pump.sensed", "fall.drop", "fall.length"), ("sections", "profile"),
          frozenset({"runs", "line", "climb", "length", "lift", "profile"})),
    Group("p", "Pipe", ("suction.pipe", "suction.foot_valves", "suction.bends", "pipes.",
          "fall.pipe"), ("sections",), frozenset({"runs", "line", "kind"})),
    Group("u", "Pump and its pressures", ("pump.",)),
    Group("t", "Tanks", ("pressure_tank.", "store."), ("tanks",), frozenset({"tanks", "stores"})),
    Group("w", "Well, spring and water", ("water.", "well."), ("sources", "readings"),
          frozenset({"readings"})),
    Group("e", "People, animals and beds", ("use.",), ("animals", "beds"),
          frozenset({"goats", "cattle", "hens", "nursing", "dairy", "others", "beds", "area"})),
    Group("r", "Place and power", ("place.", "power."), ("panels", "batteries", "controllers")),
    Group("d", "Garden on drip", ("drip.",), ("reference",)),
    Group("q", "Hot water", ("hot.",)),
    Group("f", "Line by gravity", ("fall.",)),
    Group("n", "Rain", ("rain.",)),
)  # fmt: skip
BY_CODE = {group.code: group for group in GROUPS}
_SLOT_OF = {slot.code: slot for slot in SLOTS}


def group_of(path: str) -> Group | None:
    """The first group that a fact belongs to; None of none."""
    return next((one for one in GROUPS if _has(one, path)), None)


def _has(group: Group, path: str) -> bool:
    return any(path == one or (one.endswith(".") and path.startswith(one)) for one in group.paths)


def read(may: str) -> tuple[str, ...]:
    """The codes of a link that are known here, each once.  Raises nothing."""
    codes = dict.fromkeys(code.strip().lower() for code in may.split(".")[:MOST])
    return tuple(code for code in codes if code in BY_CODE or code in _SLOT_OF)


def written(codes: Iterable[str]) -> str:
    """Codes as a link carries them, those of facts only where their group is not among them.

    >>> written(["us", "o", "uc", "nonsense", "u"])
    'o.u'
    """
    known = set(read(".".join(codes)))
    found = [group.code for group in GROUPS if group.code in known]
    for slot in SLOTS:
        group = group_of(slot.key)
        if slot.code in known and not (group and group.code in known):
            found.append(slot.code)
    return ".".join(found)


def along(fragment: str, may: str) -> str:
    """A whole fragment of ours that says what its reader is asked to change.

    may: codes, "" for nothing; the fragment stays as it is where it says so already, or has no
    site.
    """
    keys = {key for key, _ in spelled.part(fragment)[0]}
    if not may or "site" not in keys or "may" in keys:
        return fragment
    return spelled.added(fragment, "may", may)


def labels(may: str) -> tuple[str, ...]:
    """What may be changed, in words."""
    return tuple(
        BY_CODE[code].label if code in BY_CODE else _SLOT_OF[code].label for code in read(may)
    )


def fields(may: str, key: str) -> tuple[str, ...]:
    """Keys of the fields of a sheet that may be changed.  Raises nothing."""
    view = views.VIEWS.get(key)
    codes = read(may)
    found: list[str] = []
    for binding in view.fields if view else ():
        path = getattr(binding, "path", "")
        groups = [BY_CODE[code] for code in codes if code in BY_CODE]
        mine = any(binding.field in one.fields for one in groups)
        if path:
            first = group_of(path)
            mine = mine or BY_PATH[path].code in codes or bool(first and first.code in codes)
        if mine:
            found.append(binding.field)
    if "kind" in found:
        found += sorted(_SIZES)
    return tuple(found)


def told(may: str, key: str) -> dict[str, object]:
    """What the page of a sheet shows of it: {"code", "words", "fields"}; words "" for nothing."""
    named = labels(may)
    words = f"You were asked to change: {'; '.join(named)}. {COURTESY}" if named else ""
    return {"code": written(read(may)), "words": words, "fields": list(fields(may, key))}


def choices(site: Site) -> list[dict[str, object]]:
    """What a link's maker may tick for a site: groups it has something of, and their facts."""
    found: list[dict[str, object]] = []
    for group in GROUPS:
        facts = [
            {"code": BY_PATH[path].code, "label": BY_PATH[path].label}
            for path in sorted(site.facts, key=lambda one: SLOTS.index(BY_PATH[one]))
            if group_of(path) is group
        ]
        rows = any(site.rows(BY_TABLE[table].key) for table in group.tables)
        if facts or rows:
            found.append({"code": group.code, "label": group.label, "facts": facts})
    return found
