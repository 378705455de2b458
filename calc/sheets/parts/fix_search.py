"""What puts several faults right: one change, or several together, each judged anew as a whole.

A change is offered where nothing is wrong with it, not even borderline; where no one change is
enough, several that together are; where those are not either, what they leave is said.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Generic, TypeVar

from calc.page.findings import Finding, Fix, ranked
from calc.sheets.parts.left_over import left_words
from calc.sheets.parts.tries import MOST_FIXES

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Sequence

    from calc.page.answer import Link

MOST_TOGETHER = 4  # changes made together; our choice
MOST_JUDGED = 80  # cases judged to find those: a reader waits; our choice
NONE = "No change we tried puts everything right."

C = TypeVar("C")


@dataclass(frozen=True)
class Tried(Generic[C]):
    """A case after one change.

    way: of those that go one way the first that is enough counts; text: what to do and what it
    gives; does: what to do alone, as one of several changes ("": ``text``); pipe: the pipe that it
    lays, said alone, and laid: the sections it lays it in, by index: of several changes the last
    that lays a section is said.
    """

    way: str
    text: str
    case: C
    does: str = ""
    pipe: str = ""
    laid: frozenset[int] = frozenset()


@dataclass
class Search(Generic[C]):
    """The search for one case.

    judged: everything found of a case; changes: (case, key of a finding) -> what is tried for it,
    the likely cheapest first; linked: the link that opens a case; gives: what a case gives, as a
    sentence; fixable: of an unchecked finding, whether a change can settle it; enough: whether
    the fixes last asked for leave nothing wrong.
    """

    judged: Callable[[C], Iterable[Finding]]
    changes: Callable[[C, str], Iterable[Tried[C]]]
    linked: Callable[[C], Link | None]
    gives: Callable[[C], str]
    fixable: Callable[[C, Finding], bool] = lambda _case, _finding: False
    enough: bool = False
    _first: set[str] = field(default_factory=set, repr=False)
    _left: int = field(default=MOST_JUDGED, repr=False)
    _best: tuple[int, tuple[Tried[C], ...]] = field(default=(0, ()), repr=False)

    def fixes(self, case: C) -> tuple[Fix, ...]:
        """``Fix``es, the likely best first; none where nothing that is known is wrong."""
        wrong = self.wrong(case)
        if not wrong:
            return ()
        kept: dict[str, Tried[C]] = {}
        for one in self._single(case):
            kept.setdefault(one.way, one)
            if len(kept) == MOST_FIXES:
                break
        self.enough = bool(kept)
        if kept:
            return tuple(self._fix((one,)) for one in kept.values())
        self._first, self._best = set(_keys(wrong)), (len(_known(wrong)), ())
        steps = self._together(case, (), MOST_TOGETHER)
        self.enough = steps is not None
        steps = steps or self._best[1]
        return (self._fix(steps),) if steps else ()

    def told(self, case: C, last: str) -> tuple[Fix, ...]:
        """``fixes``; ``last`` alone where something is wrong and none was found."""
        return self.fixes(case) or ((Fix(last),) if self.wrong(case) else ())

    def wrong(self, case: C) -> tuple[Finding, ...]:
        """What is known to be wrong or only just right, or can be settled, the worst first."""
        return self._looked(case)[0]

    def _looked(self, case: C) -> tuple[tuple[Finding, ...], set[str]]:
        """(what is wrong, the worst first; keys of what cannot be checked)."""
        bad = [one for one in ranked(self.judged(case)) if one.level != "note"]
        unknown = [one for one in bad if one.rank == "unchecked" and not self.fixable(case, one)]
        wrong = tuple(one for one in bad if one not in unknown)
        return wrong, {one.key for one in unknown}

    def _single(self, case: C) -> Iterator[Tried[C]]:
        """The changes after which nothing is wrong that can be put right."""
        wrong, unknown = self._looked(case)
        for key in _keys(wrong):
            for one in self.changes(case, key):
                left, unsure = self._looked(one.case)
                if not left and unsure <= unknown:
                    yield one

    def _together(
        self, case: C, done: tuple[Tried[C], ...], more: int
    ) -> tuple[Tried[C], ...] | None:
        """Changes one after the other that leave nothing wrong; None where none were found."""
        found, unknown = self._looked(case)
        wrong = _keys(found)
        if not wrong:
            return done
        known = len(_known(found))
        if known < self._best[0] and self._first >= set(wrong):
            self._best = (known, done)
        for key in wrong if more else ():
            for one in self.changes(case, key):
                if self._left <= 0:
                    return None
                if any(one.way == past.way for past in done):
                    continue  # a pipe made wider again is more than a repair
                self._left -= 1
                left, unsure = self._looked(one.case)
                after = set(_keys(left))
                # what was hidden by a fault may come up: it is put right in its turn
                if key in after or len(after) > len(wrong) or not unsure <= unknown:
                    continue
                steps = self._together(one.case, (*done, one), more - 1)
                if steps is not None:
                    return steps
        return None

    def _fix(self, steps: tuple[Tried[C], ...]) -> Fix:
        """One ``Fix`` of one or several changes, and what they leave."""
        case = steps[-1].case
        several, wrong = len(steps) > 1, self.wrong(case)
        texts = _said(steps) if several or wrong else [one.text for one in steps]
        parts = [
            f"{NONE} Do this first." if wrong else "Do all of this." if several else "",
            *texts,
            self.gives(case) if several and not wrong else "",
            left_words(self.judged(case)),
        ]
        return Fix(" ".join(part for part in parts if part), self.linked(case))


def _said(steps: Sequence[Tried[C]]) -> list[str]:
    """What to do, step by step, without a pipe that a later step replaces."""
    found = []
    for at, one in enumerate(steps):
        kept = one.pipe and not any(one.laid <= later.laid for later in steps[at + 1 :])
        found += [one.pipe] if kept else []
        found += [one.does or one.text] if one.does or not one.pipe else []
    return found


def _known(found: Sequence[Finding]) -> list[str]:
    return _keys([one for one in found if one.rank != "unchecked"])


def _keys(found: Sequence[Finding]) -> list[str]:
    return list(dict.fromkeys(one.key for one in found))
