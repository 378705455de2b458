"""Facts of a site in words, "not known" where they are: no example's number stands in for one."""

from __future__ import annotations

from collections import Counter, defaultdict
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.ask_back import said
from calc.page.entries import name
from calc.page.fields import UNKNOWN
from calc.sheets.parts import ways
from calc.site.facts import ASSUMED, BY_PATH, SLOTS
from calc.site.facts import NOT_KNOWN as UNTOLD
from calc.site.rows import BY_TABLE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.work import Part, Work
    from calc.page.answer import Figure, Table
    from calc.site.facts import Fact, Slot
    from calc.site.site import Site
    from calc.units import Reader

NOT_KNOWN = "not known"
NO_WATER = "no water"  # at a place above all that water rises to
CAUSE = "suction"  # the part whose fault is the cause of others
FEW = 2  # names in a sentence; our choice
HAIR = 1.0  # Pa; a pressure within this of none is none: the solver's last bits


def fact(site: Site, path: str, reader: Reader) -> str:
    """A fact in the reader's unit: "3.50 bar", "not known", "15.0 °C (assumed)".

    What is usual for an unknown one is no fact.  Raises KeyError for no such path.
    """
    slot, held = BY_PATH[path], site.get(path)
    if not held.known:
        return NOT_KNOWN
    if slot.kind == "choice":
        told = dict(slot.options).get(held.text, held.text)
    elif slot.kind == "quantity":
        told = reader.show(slot.read(held.text), slot.quantity)
    else:
        told = held.text
    return f"{told} (assumed)" if held.standing == "assumed" else told


def pump(site: Site) -> str:
    """The pump's name; an invented one is said to be."""
    held = site.get("pump.id")
    if not held.known:
        return f"{NOT_KNOWN}: worked out with an invented middle pump"
    if held.standing == ASSUMED:
        return f"{NOT_KNOWN}: {_lower(ways.pump_of(site).name)} taken"
    invented = not site.get("pump.curve").known
    try:
        name = ways.pump_of(site).name
    except InputError:
        return held.text
    return f"{name} (invented)" if invented and "nvented" not in name else name


def _lower(words: str) -> str:
    """Words in the middle of a sentence.

    >>> _lower("Invented small pump (about 450 W)")
    'invented small pump (about 450 W)'
    """
    return f"{words[:1].lower()}{words[1:]}"


def running(pressure_pa: float, reader: Reader, digits: int = 3) -> str:
    """A running pressure; below none, what it is short of reaching the place: "no water: 0.400 bar
    short".

    pressure_pa: Pa gauge, any.  Raises nothing.
    """
    if pressure_pa < -HAIR:
        return f"{NO_WATER}: {reader.show(-pressure_pa, 'pressure', digits)} short"
    # what is left below 0 is the solver's last bits, which would show as "-0 bar"
    return reader.show(max(0.0, pressure_pa), "pressure", digits)


def figure(part: Part | None, *starts: str) -> Figure | None:
    """The first figure of a part whose label begins so; None where there is none."""
    if part is None or part.answer is None:
        return None
    for start in starts:
        for one in part.answer.figures:
            if one.label.startswith(start):
                return one
    return None


def shown(part: Part | None, *starts: str) -> str:
    """That figure in the reader's unit, or that it is not known."""
    found = figure(part, *starts)
    return NOT_KNOWN if found is None or part is None else said(found, part.outcome.reader)


def table(part: Part | None, title: str) -> Table | None:
    """A table of a part by the beginning of its title."""
    if part is None or part.answer is None:
        return None
    return next((one for one in part.answer.tables if one.title.startswith(title)), None)


def pipes(site: Site, reader: Reader) -> Iterator[tuple[str, float | None, tuple[str, ...]]]:
    """(size in words, its length in the sections together, which sections) of every size.

    m; None where the length of one of them is not known.
    """
    lengths: dict[str, float | None] = defaultdict(float)
    named: dict[str, list[str]] = defaultdict(list)
    for row in site.rows("sections"):
        pipe = site.word("sections", row, "pipe")
        size = ways.pipe_named(pipe).label if pipe else f"size {NOT_KNOWN}"
        length, before = site.cell("sections", row, "length"), lengths[size]
        lengths[size] = None if length is None or before is None else before + length
        start, end = (site.word("sections", row, column) for column in ("from", "to"))
        named[size].append(f"{start} – {end or NOT_KNOWN}")
    for size, length in lengths.items():
        yield size, length, tuple(named[size])


def sentence(part: Part) -> str:
    """What a part says: "Will it reach? Works. You get …", or what it lacks."""
    if part.verdict is not None:
        return f"{part.verdict.word}. {part.verdict.sentence}"
    lacks = lacking(part)
    if lacks:
        return f"Not worked out: {few(lacks)} not known."
    first = next(iter(part.outcome.errors.values()), "")
    return f"Not worked out. {first.removesuffix('.')}." if first else "Not worked out."


def few(names: list[str]) -> str:
    """The first names, the rest counted: "People", "Latitude, Longitude and 3 more"."""
    rest = len(names) - FEW
    return ", ".join(names[:FEW]) + (f" and {rest} more" if rest > 0 else "")


def lacking(part: Part) -> list[str]:
    """Labels of the fields for want of which a part has no answer; [] where one holds what cannot
    be."""
    if part.answer is not None:
        return []
    fields = {entry.key: entry for entry in part.sheet.fields}
    keys = [key.partition(".")[0] for key in part.outcome.errors]
    held = [fields[key] for key in keys if key in fields]
    if len(held) < len(keys) or any(
        part.state.text(one).strip() not in {"", UNKNOWN} for one in held
    ):
        return []
    return list(dict.fromkeys(name(one) for one in held))


def bare(part: Part | None) -> str:
    """What a part says without its verdict's word; that it is not known where there is none."""
    if part is None:
        return NOT_KNOWN
    return part.verdict.sentence if part.verdict else sentence(part)


def title(part: Part) -> str:
    """A part's title as it leads a sentence: "Will it reach?", "Cable size:"."""
    name = part.sheet.title
    return name if name.endswith("?") else f"{name}:"


def worst_first(work: Work) -> list[Part]:
    """The parts, those that do not work first, those without an answer before what works.

    Of equals the suction comes first: what the pump cannot draw, no pipe can bring.
    """
    order = {"bad": 0, "tight": 1, "": 1, "good": 2}
    level = {one.key: one.verdict.level if one.verdict else "" for one in work.parts}
    return sorted(work.parts, key=lambda one: (order[level[one.key]], one.key != CAUSE))


# What was assumed -----------------------------------------------------------------------------


def assumed_facts(site: Site, reader: Reader) -> Iterator[tuple[str, str]]:
    """("Suction pipe size 40 mm", why) of a site's assumed facts that are not none or zero.

    The set pressure is not among them: it is said to be assumed where it stands; nor is a pump's
    table, whose pump is.
    """
    submersible = site.get("pump.placement").text == "in"
    for slot in SLOTS:
        fact = site.get(slot.key)
        if submersible and slot.key.startswith("suction."):
            continue  # it stands in its water: nothing hangs on a suction pipe
        if slot.key in ("pump.set", "pump.curve"):
            continue
        if slot.key == "pump.present" and fact.standing == ASSUMED and fact.text == "no":
            yield "no pump", fact.reason  # the whole answer hangs on it
        elif slot.key == "pump.id" and fact.standing == ASSUMED:
            yield _lower(ways.pump_of(site).name), fact.reason
        elif fact.standing == ASSUMED and not is_none(slot, fact):
            yield f"{slot.label} {_told(slot, fact, reader)}", fact.reason
    counted: Counter[tuple[str, str]] = Counter()
    for key, rows in site.tables.items():
        for row in rows:
            for slot in BY_TABLE[key].columns:
                fact = row.get(slot.key, UNTOLD)
                if fact.standing == ASSUMED and not is_none(slot, fact):
                    told = _told(slot, fact, reader)
                    name = row["name"].text if "name" in row else ""
                    opens = slot.key in ("before", "after") and name
                    said = f"{told} of “{name}” open" if opens else f"{slot.label} {told}"
                    counted[said, fact.reason] += 1
    for (said, reason), times in counted.items():
        yield said if times == 1 else f"{said} ({times} times)", reason


def is_none(slot: Slot, fact: Fact) -> bool:
    """Whether a fact says that there is none of it, or that it is zero.  Raises nothing.

    >>> from calc.site.facts import BY_PATH, Fact
    >>> is_none(BY_PATH["use.hoses"], Fact("0")), is_none(BY_PATH["use.hoses"], Fact("1"))
    (True, False)
    """
    if fact.text.strip().lower() in {"", "0", "none", "no"}:
        return True
    return slot.kind == "quantity" and slot.quantity != "temperature" and not slot.read(fact.text)


def _told(slot: Slot, fact: Fact, reader: Reader) -> str:
    if slot.kind == "quantity":
        return reader.show(slot.read(fact.text), slot.quantity)
    if slot.key == "pipe":
        return ways.pipe_named(fact.text).label
    return dict(slot.options).get(fact.text, fact.text)
