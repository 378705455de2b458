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
from calc.page.answer import TRY, Link
from calc.page.findings import Fix, ranked
from calc.page.form import read_values
from calc.page.state import State, hidden_keys
from calc.sheets.parts.carry import texts
from calc.sheets.parts.left_over import left_words

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.page.findings import Finding
    from calc.page.form import Values
    from calc.units import Reader

MOST_FIXES = 3  # more is a list, not advice; our choice
MOST_STEPS = 4  # changes made one after the other; more is a new system; our choice
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
    try with some values, the likely best first; last: what to say where nothing is enough; tables:
    texts of tables of rows, which no change touches; standing: whose the texts are, where findings
    hang on it: what a change does not touch keeps its own.
    """

    sheet: Sheet
    values: Values
    reader: Reader
    judged: Callable[[Values], Iterable[Finding]]
    changes: Callable[[Values], Iterable[Change]]
    last: str = NONE
    tables: Mapping[str, str] = field(default_factory=dict)
    standing: Mapping[str, str] = field(default_factory=dict)

    def fixes(self) -> tuple[Fix, ...]:
        """``Fix``es of all that is wrong; none where nothing is, or where it is not checked."""
        wrong = self._wrong(self.values)
        if not _fixable(wrong):
            return ()
        tried = list(self._tried(wrong))
        whole = [one for one in tried if not _fixable(one[1])]
        found = [self._fix(*one) for one in whole]
        if tried[:1] != whole[:1] or not any(change.texts for change, _ in whole):
            # a likelier one than any whole is not enough alone, or the form can open none
            made = self._together()
            places = [at for at, one in enumerate(tried) if one[0] in made[:1] or one in whole]
            likelier = not whole or tried[places[0]] not in whole
            combined = self._combined(made)
            found = [*combined, *found] if likelier else [*found, *combined]
        found = found or [self._fix(*one) for one in tried]
        return tuple(found[:MOST_FIXES]) or (Fix(self.last),)

    def later(self, **parts: Callable[[], object]) -> Callable[[], dict[str, object]]:
        """What an answer works out after its figures: the fixes, and ``parts`` by their names."""
        return lambda: {"fixes": self.fixes(), **{name: part() for name, part in parts.items()}}

    def link(self, changed: Mapping[str, str]) -> Link:
        """The sheet with these texts changed, and every other as it stands."""
        return Link(TRY, self.sheet.key, self._texts(changed))

    def _texts(self, changed: Mapping[str, str]) -> dict[str, str]:
        """Texts of every field that then shows: a site would fill what is left out."""
        found = texts(self.sheet.fields, self.values, **{**self.tables, **changed})
        hidden = hidden_keys(self.sheet, State(self.reader.system, found))
        return {
            entry.key: found.get(entry.key, entry.default(self.reader.system))
            for entry in self.sheet.fields
            if entry.key not in hidden
        }

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
        texts = self._texts(changed)
        own = {key: whose for key, whose in self.standing.items() if key not in changed}
        return read_values(self.sheet, State(self.reader.system, texts, standing=own))

    def _together(self) -> list[Change]:
        """Changes made one after the other, each for the worst of what is then wrong.

        None where they leave something; the likely best of each first, as those who work do.
        """
        made: list[Change] = []
        done: set[str] = set()
        for _ in range(MOST_STEPS):
            values = self._read(_all_texts(made))
            wrong = _fixable(self._wrong(values)) if values else ()
            if values is None or not wrong:
                break
            change = self._next(wrong, _all_texts(made), values)
            if change is None or wrong[0].key in done:
                return []
            done.add(wrong[0].key)
            made.append(change)
        left = self._left(Change("", frozenset(), _all_texts(made))) if made else None
        return [] if left is None or _fixable(left) else made

    def _next(
        self, wrong: tuple[Finding, ...], changed: Mapping[str, str], values: Values
    ) -> Change | None:
        """The first change for the worst finding that makes nothing else wrong, or least.

        What was changed once stays: two steps of one size would be no repair.
        """
        best: tuple[int, Change] | None = None
        for change in self.changes(values):
            if wrong[0].key not in change.keys or not change.texts:
                continue
            left = self._left(Change("", change.keys, {**changed, **change.texts}))
            if left is None or wrong[0].key in _keys(left) or changed.keys() & change.texts.keys():
                continue
            more = len(_keys(_fixable(left)) - _keys(wrong))
            if best is None or more < best[0]:
                best = more, change
        return best[1] if best else None

    def _combined(self, made: list[Change]) -> list[Fix]:
        """Several changes as one fix; none where there are not several."""
        if len(made) < 2:
            return []
        change = Change(
            f"Do all of this. {' '.join(one.text for one in made)}", frozenset(), _all_texts(made)
        )
        return [self._fix(change, self._left(change) or ())]

    def _fix(self, change: Change, left: tuple[Finding, ...]) -> Fix:
        said = " ".join(part for part in (change.text, left_words(left)) if part)
        return Fix(said, self.link(change.texts) if change.texts else None)


def _all_texts(made: Iterable[Change]) -> dict[str, str]:
    """What several changes come to; a later one wins."""
    return {key: text for change in made for key, text in change.texts.items()}


def _keys(found: Iterable[Finding]) -> set[str]:
    return {one.key for one in found}


def _fixable(found: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """All but what is only not checked, since a fact is not known: its own sentence says which.

    Whether a pipe too hot keeps its shape under a vacuum is not known, but a cooler one does.
    """
    return tuple(one for one in found if one.rank != "unchecked" or one.key == "too-hot")
