"""The verdict of a whole supply: the worst finding of all its parts decides it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.desk import limits
from calc.desk.said_of import few, lacking, title, worst_first
from calc.desk.work import all_ways, work_out
from calc.page.findings import GOOD, TIGHT, WORDS, Finding, ranked, unchecked
from calc.units import Reader

if TYPE_CHECKING:
    from calc.desk.work import Part, Work

CORE = ("keep_up", "reach", "gravity")  # without any of these nothing is known of the supply
NONE = "Not worked out"
DEMAND = "demand"  # how much is used is seldom what somebody asks who tells of something else


@dataclass(frozen=True)
class Whole:
    """level: "good", "tight" or "bad"; word and sentence; key: of the part it comes from, "" for
    none; outlet: the one that part was asked about, "" where it was asked of all; lead: what is
    said before it, where the sentence is not about what people ask first; title: of its part."""

    level: str
    word: str
    sentence: str
    key: str = ""
    outlet: str = ""
    lead: str = ""
    title: str = ""

    @property
    def said(self) -> str:
        """The sentence, led by what is asked first and its part's title, or by the outlet it is
        about where it does not name it."""
        if self.lead:
            return f"{self.lead} {self.title} {self.sentence}"
        named = not self.outlet or self.outlet in self.sentence
        return self.sentence if named else f"{self.outlet}: {self.sentence}"


@dataclass(frozen=True)
class Found:
    """A finding, and the key of the part it is of."""

    key: str
    finding: Finding


def found(work: Work) -> tuple[Found, ...]:
    """Every stop and care of the parts, the worst first; a part without an answer is one.

    Of equals that of the part people ask first comes first.
    """
    of: dict[int, str] = {}
    all_of: list[Finding] = []
    for one in work.parts:
        for finding in _of_part(one, work):
            if finding.level != "note":
                all_of.append(finding)
                of[id(finding)] = one.key
    for left in work.undecided:
        finding = unchecked("left", f"Not checked, {left.title}: the site lacks {left.lacks}.")
        all_of.append(finding)
        of[id(finding)] = left.key
    short = overdrawn(work)
    if short is not None:
        all_of.append(short)
        of[id(short)] = "keep_up"
    return tuple(Found(of[id(one)], one) for one in ranked(all_of))


def overdrawn(work: Work) -> Finding | None:
    """That everything open takes more than the well gives; None where it does not."""
    if work.overdrawn is None:
        return None
    gives, takes = (Reader(work.system).show(one, "flow") for one in work.overdrawn)
    return Finding(
        "care",
        "yield-short",
        f"The well gives {gives}; everything open takes {takes}, only while water is left in it.",
    )


def _of_part(one: Part, work: Work) -> tuple[Finding, ...]:
    if one.answer is not None:
        return one.answer.findings
    if one.key == "keep_up" and (limit := limits.told(work)):
        return (unchecked("failed", limit),)
    lacks = lacking(one)
    first = next(iter(one.outcome.errors.values()), "its numbers cannot be read")
    said = f"{few(lacks)} not known" if lacks else first.removesuffix(".")
    title = one.sheet.title.rstrip("?")
    return (unchecked("failed", f"Not worked out, {title}: {said}."),)


def of(work: Work) -> Whole:
    """The ``Whole`` of a site's parts: never greener than the worst of them."""
    if not any(work.part(key) for key in CORE):
        return _without_core(work)
    worst, first = next(iter(found(work)), None), next(one for one in work.parts if one.key in CORE)
    if worst is not None and work.level != GOOD:
        at = work.part(worst.key)
        outlet = at.way.partition("/")[2] if at else ""
        whole = Whole(work.level, WORDS[work.level], worst.finding.text, worst.key, outlet)
        if work.level != TIGHT or at is None or worst.key in (*CORE, "suction"):
            return whole
        if first.verdict is None or first.verdict.level != GOOD:
            return whole
        return replace(whole, lead=first.verdict.sentence, title=title(at))
    said = first.verdict.sentence if first.verdict else ""
    return Whole(work.level, WORDS[work.level], said, first.key)


def _without_core(work: Work) -> Whole:
    """Of a supply of which it is not known whether enough arrives: what the other parts say."""
    lacks = next((one.lacks for one in work.left if one.key in CORE), "the pipe")
    need = f"The whole supply needs {lacks} to be known."
    told = [(one, one.verdict) for one in worst_first(work) if one.verdict is not None]
    if not told:
        return Whole(TIGHT, NONE, need)
    worst = [(one, found) for one, found in told if found.level == told[0][1].level]
    first, found = next((pair for pair in worst if pair[0].key != DEMAND), worst[0])
    word, said = WORDS[work.level], found.sentence
    return Whole(work.level, word, said, first.key, lead=need, title=title(first))


def mark(one: Found) -> tuple[str, str, str, str]:
    """What tells a finding from others, whatever its figures: level, part, key and place."""
    return one.finding.level, one.key, one.finding.key, one.finding.at


def in_full(work: Work, one: Found) -> Finding:
    """A finding of a site worked out quickly, as its page says it: with its cause."""
    whole = work_out(work.site, work.system, (one.key,))
    return next((each.finding for each in found(whole) if mark(each) == mark(one)), one.finding)


def quickly(work: Work) -> Whole:
    """``of`` a site worked out quickly, its sentence as the page of the worst finding says it."""
    told, worst = of(work), next(iter(found(work)), None)
    if worst is None or told.sentence != worst.finding.text:
        return told
    return replace(told, sentence=in_full(work, worst).text)


def margin(work: Work) -> float | None:
    """What the weakest outlet has beyond what it needs, Pa; None where none can be told."""
    found_ways = [one.running_pa - one.needed_pa for one in all_ways(work.site)]
    return min(found_ways, default=None)
