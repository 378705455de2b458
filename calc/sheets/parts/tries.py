"""What would put a form right: each change read back from the texts of its link and judged anew.

A change counts as a fix only where nothing it is for is left and nothing else has become wrong.
Where no change puts all right that is wrong, several are made one after the other; where that
does not either, each says what remains.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.answer import Link
from calc.page.findings import Fix, ranked
from calc.page.form import read_values
from calc.page.state import State
from calc.sheets.parts.carry import texts

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.page.findings import Finding
    from calc.page.form import Values
    from calc.units import Reader

MOST_FIXES = 3  # more is a list, not advice; our choice
MOST_STEPS = 4  # changes made one after the other; more is a new system; our choice
TRY = "Try this fix"
NONE = "No single change we tried is enough."


@dataclass(frozen=True)
class Change:
    """Something to do.

    text: a sentence; keys: of the findings it is for; texts: of the fields it changes (none: the
    form has no words for it, and ``left`` holds what it leaves wrong).
    """

    text: str
    keys: frozenset[str]
    texts: Mapping[str, str] = field(default_factory=dict)
    left: tuple[Finding, ...] = ()


@dataclass(frozen=True)
class Form:
    """A sheet's form as it stands.

    judged: what is found with some values, raising InputError as the sheet does; changes: what to
    try with some values, the likely best first; last: what to say where nothing is enough.
    """

    sheet: Sheet
    values: Values
    reader: Reader
    judged: Callable[[Values], Iterable[Finding]]
    changes: Callable[[Values], Iterable[Change]]
    last: str = NONE

    def fixes(self) -> tuple[Fix, ...]:
        """``Fix``es of all that is wrong; none where nothing is, or where it is not checked."""
        wrong = self._wrong(self.values)
        if not _fixable(wrong):
            return ()
        tried = list(self._tried(wrong))
        whole = [one for one in tried if not _fixable(one[1])]
        linked = [self._fix(*one) for one in whole if one[0].texts] or self._together()
        found = [*linked, *(self._fix(*one) for one in whole if not one[0].texts)]
        found = found or [self._fix(*one) for one in tried]
        return tuple(found[:MOST_FIXES]) or (Fix(self.last),)

    def link(self, changed: Mapping[str, str]) -> Link:
        """The sheet with these texts changed, and every other as it stands."""
        said = texts(self.sheet.fields, self.values, self.reader, **changed)
        return Link(TRY, self.sheet.key, said)

    def _wrong(self, values: Values) -> tuple[Finding, ...]:
        """What is worse than a note, the worst first."""
        return tuple(one for one in ranked(self.judged(values)) if one.level != "note")

    def _tried(self, wrong: tuple[Finding, ...]) -> Iterable[tuple[Change, tuple[Finding, ...]]]:
        """Changes that are rid of what they are for and make nothing else wrong; what is left."""
        now = _keys(wrong)
        for change in self.changes(self.values):
            left = self._left(change)
            if left is None or not change.keys & now:
                continue
            if not _keys(left) & change.keys and _keys(left) <= now:
                yield change, left

    def _left(self, change: Change) -> tuple[Finding, ...] | None:
        """What a change leaves wrong; None where the form does not take it."""
        if not change.texts:
            return change.left
        changed = self._read(change.texts)
        try:
            return None if changed is None else self._wrong(changed)
        except InputError:
            return None

    def _read(self, changed: Mapping[str, str]) -> Values | None:
        """The form as the page reads it from a link; None where it does not take that."""
        said = texts(self.sheet.fields, self.values, self.reader, **changed)
        return read_values(self.sheet, State(self.reader.system, said))

    def _together(self) -> list[Fix]:
        """Several changes, one after the other, each for the worst of what is then wrong."""
        made: list[Change] = []
        done: set[str] = set()
        values: Values | None = self.values
        for _ in range(MOST_STEPS):
            wrong = _fixable(self._wrong(values)) if values else ()
            if values is None or not wrong:
                break
            change = self._next(wrong[0].key, _all_texts(made), values)
            if change is None or wrong[0].key in done:
                return []
            done.add(wrong[0].key)
            made.append(change)
            values = self._read(_all_texts(made))
        if values is None or _fixable(self._wrong(values)):
            return []
        said = " ".join(one.text for one in made)
        text = said if len(made) == 1 else f"Do all of this. {said}"
        return [self._fix(Change(text, frozenset(), _all_texts(made)), self._wrong(values))]

    def _next(self, key: str, changed: Mapping[str, str], values: Values) -> Change | None:
        """The change for a finding that leaves the least wrong after what is changed so far.

        What was changed once stays: two steps of one size would be no repair.
        """
        best: tuple[int, Change] | None = None
        for change in self.changes(values):
            if key not in change.keys or not change.texts or changed.keys() & change.texts.keys():
                continue
            left = self._left(Change("", change.keys, {**changed, **change.texts}))
            if left is None or key in _keys(left):
                continue
            if best is None or len(_fixable(left)) < best[0]:
                best = len(_fixable(left)), change
        return best[1] if best else None

    def _fix(self, change: Change, left: tuple[Finding, ...]) -> Fix:
        remains = f" Then this remains: {left[0].text}" if left else ""
        return Fix(f"{change.text}{remains}", self.link(change.texts) if change.texts else None)


def _all_texts(made: Iterable[Change]) -> dict[str, str]:
    """What several changes come to; a later one wins."""
    return {key: text for change in made for key, text in change.texts.items()}


def _keys(found: Iterable[Finding]) -> set[str]:
    return {one.key for one in found}


def _fixable(found: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """All but what is only not checked, since a fact is not known: its own sentence says which."""
    return tuple(one for one in found if one.rank != "unchecked")
