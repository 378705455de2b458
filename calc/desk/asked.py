"""What to ask back about a whole site, in the order of how much its answers hang on it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.desk import limits
from calc.desk.said_of import lacking
from calc.desk.work import ONE_PIPE
from calc.page.ask_back import main_figure
from calc.page.ask_back import questions as weighed
from calc.page.entries import name
from calc.sheets import sheet as find_sheet
from calc.sheets import views
from calc.sheets.parts import completed_more, ways

if TYPE_CHECKING:
    from calc.desk.work import Part, Work
    from calc.page.ask_back import Question

# All our choice.
MOST = 7  # questions
MOST_MOVED = 3  # of what only moves a figure and turns no verdict
WEIGHED = 4  # parts whose values are varied
# What no customer can be asked: margins and shares that whoever answers takes as usual.
OURS = frozenset((
    "water.temperature", "use.busy", "use.drip_share", "use.depth", "use.each", "use.leak",
    "use.smallest", "pump.controller", "pump.motor", "pump.grade", "pump.starts",
    "pump.least_flow", "pump.sensed", "pump.npsh", "pipes.hottest", "suction.strainer",
    "store.usable", "fall.wanted", "NPSH margin", "Needed pressure", "Maximum water speed",
    "Needed pressure at the outlet", "Accepted drop, at start", "Accepted drop, running",
    "How the pump draws", "Friction loss on the way", "Hot draws a day after a pause",
))  # fmt: skip
COUNTS = frozenset(completed_more.COUNTS.values())
ALL_COUNTS = "Showers, sinks, toilets, washing machines, hoses and troughs"
ALL_OF_IT = "without it there is no answer to: Will it keep up, Will it reach."
COUNTED_NONE = "how many are there? We counted none, so there is no flow to plan for."
COUNTED_OPEN = "how many are there? We counted what was said to open at once."
SLOW = {"keep_up", "panels", "battery"}  # dozens of solutions of these would keep somebody waiting


@dataclass(frozen=True)
class Asked:
    """label: what to ask; told: what hangs on it, in words."""

    label: str
    told: str


def questions(work: Work) -> list[Asked]:
    """What keeps an answer from being worked out, then what turns a verdict, then what moves it.

    Every assumed value of the first parts is varied and the parts solved again
    (``calc.page.ask_back``).  Raises nothing on input.
    """
    found, blocked = [Asked(label, ALL_OF_IT) for label in limits.lacking(work)], set[str]()
    for labels, titles in _blocked(work).items():
        blocked |= set(labels)
        without = "it" if len(labels) == 1 else "these"
        told = f"without {without} there is no answer to: {', '.join(titles)}."
        found.append(Asked(", ".join(labels), told))
    parts = [one for one in work.parts if one.answer is not None and one.key not in SLOW]
    ranked = [
        (one, part)
        for part in parts[:WEIGHED]
        for one in weighed(part.sheet, part.outcome, part.state)
        if one.label not in blocked and not one.told.startswith("as if ") and _is_worth(one)
    ]
    ranked.sort(key=lambda pair: (not pair[0].turns, -pair[0].moves))
    facts, moved = set[str](), 0
    said: list[Question] = []
    for one, part in ranked:
        fact = _fact(part.key, one.label)
        if fact in OURS or (fact == "pump.set" and ways.sensed_height(work.site)):
            continue  # a pressure at the pump is not what its sensor is set to
        if fact in COUNTS:
            if work.site.value("use.people") == 0:
                continue  # nobody lives there to open one
            told = COUNTED_NONE if one.told.startswith("we used 0") else COUNTED_OPEN
            fact, one = ALL_COUNTS, replace(one, label=ALL_COUNTS, told=told)
        moved += not one.turns
        if not one.turns and moved > MOST_MOVED:
            break
        if fact not in facts and not any(_is_same(one, other) for other in said):
            facts.add(fact)
            said.append(one)
            found.append(Asked(one.label, _named(part, one.told)))
    return found[:MOST]


def _blocked(work: Work) -> dict[tuple[str, ...], list[str]]:
    """{labels of what is not known: titles of the parts that have no answer for want of it}."""
    found: dict[tuple[str, ...], list[str]] = {}
    first = work.part("keep_up")
    whole = first is None or first.answer is not None
    for part in work.parts:
        if not whole and part.key in ONE_PIPE:
            continue  # filled from the supply: what that lacks is asked
        if labels := tuple(lacking(part)):
            found.setdefault(labels, []).append(part.sheet.title.rstrip("?"))
    return found


def _is_worth(one: Question) -> bool:
    """Whether to ask: of what there is said to be none only where the verdict hangs on it."""
    return one.turns or not one.told.startswith("we used 0")


def _named(part: Part, told: str) -> str:
    """What hangs on it, with the figure named that it moves."""
    main = main_figure(part.answer) if part.answer else None
    if main is None:
        return told
    label = main.label if main.label[1:2].isupper() else main.label[:1].lower() + main.label[1:]
    return told.replace(" it is ", f" the {label} is ", 1)


def _fact(key: str, label: str) -> str:
    """The path of the site's fact that a sheet's field of a label is one to one with; the label
    where there is none: pages call one fact by several names."""
    fields = {name(entry): entry.key for entry in find_sheet(key).fields}
    bound = {one.field: getattr(one, "path", "") for one in views.VIEWS[key].fields}
    return bound.get(fields.get(label, ""), "") or label


def _is_same(one: Question, other: Question) -> bool:
    """Whether two pages ask the same: the same hangs on it, and one name begins the other."""
    named = one.label.startswith(other.label) or other.label.startswith(one.label)
    return named and one.told == other.told
