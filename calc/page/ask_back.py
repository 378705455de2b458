"""What to ask whoever gave the numbers: of all that was assumed, what most hangs on.

Every assumed value is varied to a careful and a generous one and the sheet solved again. What turns
the verdict comes first, then what moves the main figure most.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.entries import name
from calc.page.fields import Choice, Count, Number, Rows
from calc.page.findings import RESULT
from calc.page.form import work
from calc.page.given import written
from calc.page.state import fitted
from calc.units import QUANTITIES, Reader, parse, plain_number

if TYPE_CHECKING:
    from calc.page.answer import Answer, Figure
    from calc.page.fields import Field, Sheet
    from calc.page.form import Outcome
    from calc.page.given import Assumed
    from calc.page.state import State

# All our choice.
VARIED = 12  # values varied at most, two solutions each: no longer than some answers take
SPREAD = (0.7, 1.4)  # of a number that nobody gave
EITHER_WAY = 10.0  # K, of a temperature
OF_RANGE = 0.02  # of a field's range, for a number assumed to be zero
NOTICED = 0.02  # of the main figure; what moves it less is not asked


@dataclass(frozen=True)
class Question:
    """An assumed value to be asked for.

    told: what hangs on it, in words; turns: the verdict changes within what is usual; moves: how
    far it moves the main figure, as a share of it.
    """

    label: str
    told: str
    turns: bool
    moves: float


@dataclass(frozen=True)
class _Trial:
    """The answer with one assumed value changed: ``shown`` as a person reads it."""

    shown: str
    answer: Answer


def questions(sheet: Sheet, outcome: Outcome, state: State) -> list[Question]:
    """What to ask for, most important first: tables, what turns the verdict, what moves it most.

    Solves the sheet at most twice for each of ``VARIED`` values; never raises on input.
    """
    state = fitted(sheet, state)
    tables: list[Question] = []
    unchecked: list[Question] = []
    varied: list[Question] = []
    for one in outcome.assumed:
        if "." in one.key:  # a cell: its usual value is good enough
            continue
        entry = sheet.field(one.key)
        if isinstance(entry, Rows):
            tables.append(Question(name(entry), f"we used {one.shown} {one.reason}.", True, 1.0))
        elif not one.shown:
            unchecked.append(Question(name(entry), f"{one.reason}.", False, NOTICED))
        elif len(varied) < VARIED:
            varied.append(_question(sheet, outcome, state, entry, one))
    weighed = [one for one in varied if one.turns or one.moves >= NOTICED]
    ranked = sorted([*weighed, *unchecked], key=lambda one: (not one.turns, -one.moves))
    return [*tables, *ranked]


def _question(sheet: Sheet, outcome: Outcome, state: State, entry: Field, one: Assumed) -> Question:
    now = _answer(outcome)
    tried = (_tried(sheet, outcome, state, entry, text) for text in _variations(entry, state))
    trials = [trial for trial in tried if trial is not None]
    turned = [trial for trial in trials if trial.answer.verdict.level != now.verdict.level]
    moved = [(trial.shown, figure) for trial in trials if (figure := _same(now, trial.answer))]
    main = main_figure(now)
    moves = max((_change(main, figure) for _, figure in moved), default=0.0) if main else 0.0
    if turned:
        hangs = [f"with {t.shown} {_verdict(t.answer)}" for t in turned]
    else:
        hangs = [f"with {shown} it is {said(figure, outcome.reader)}" for shown, figure in moved]
    told = f"we used {one.shown}; {', '.join(hangs)}." if hangs else f"we used {one.shown}."
    return Question(name(entry), told, bool(turned), moves)


def _verdict(answer: Answer) -> str:
    """What a changed verdict is; of a page that only works something out, that nothing is wrong."""
    word = answer.verdict.word
    return "nothing is wrong" if word == RESULT else f"the verdict is “{word}”"


def _answer(outcome: Outcome) -> Answer:
    if outcome.answer is None:
        raise ValueError(f"there is no answer to ask about: {outcome.errors}")
    return outcome.answer


def main_figure(answer: Answer) -> Figure | None:
    """The figure an answer is about, which questions are weighed by; None where it has none."""
    ranked = sorted(answer.figures, key=lambda one: not one.main)
    return ranked[0] if ranked else None


def _same(before: Answer, after: Answer) -> Figure | None:
    """The main figure of ``after``, where it is the same one."""
    main, other = main_figure(before), main_figure(after)
    return other if main and other and other.label == main.label else None


def said(figure: Figure, reader: Reader) -> str:
    """A figure's value in the reader's unit."""
    return reader.show(figure.value, figure.quantity, figure.digits)


def _change(before: Figure, after: Figure) -> float:
    """How far it moved, as a share of the larger of the two; 0 where either is no number."""
    largest = max(abs(before.value), abs(after.value))
    share = abs(after.value - before.value) / largest if largest else 0.0
    return share if math.isfinite(share) else 0.0


def _tried(sheet: Sheet, outcome: Outcome, state: State, entry: Field, text: str) -> _Trial | None:
    """The answer with another text in one field; None where there is none, or other fields count:
    then it answers another question.
    """
    changed = replace(
        state,
        texts={**state.texts, entry.key: text},
        units={key: unit for key, unit in state.units.items() if key != entry.key},
        standing={**state.standing, entry.key: "given"},
        kept=state.kept - {entry.key},
    )
    found = work(sheet, changed, first=True)
    if found.answer is None or found.hidden != outcome.hidden:
        return None
    return _Trial(written(entry, text, changed), found.answer)


# Careful and generous values --------------------------------------------------------------------


def _variations(entry: Field, state: State) -> tuple[str, ...]:
    """Texts of a value below and of one above the one in use, as far as the field takes them."""
    text = state.text(entry)
    if state.standing_of(entry) == "unknown" and not isinstance(entry, Rows):
        unknown = getattr(entry, "unknown", None)
        text = unknown.text(state.system) if unknown else ""
    if isinstance(entry, Choice):
        return _neighbours(entry, text)
    if isinstance(entry, Count):
        return _counts(entry, text)
    return _numbers(entry, text, state) if isinstance(entry, Number) else ()


def _neighbours(entry: Choice, text: str) -> tuple[str, ...]:
    """The options before and after the one in use: sizes stand in their order."""
    values = [value for value, _ in entry.options]
    if text not in values:
        return ()
    at = values.index(text)
    return tuple(values[i] for i in (at - 1, at + 1) if 0 <= i < len(values))


def _counts(entry: Count, text: str) -> tuple[str, ...]:
    count = int(float(text))
    step = max(1, round(count * (SPREAD[1] - 1)))
    near = {max(entry.low, count - step), min(entry.high, count + step)} - {count}
    return tuple(str(one) for one in sorted(near))


def _numbers(entry: Number, text: str, state: State) -> tuple[str, ...]:
    unit = QUANTITIES[entry.quantity].default(state.system)
    symbol = state.units.get(entry.key) or unit.symbol
    try:
        parsed = parse(text, entry.quantity, symbol)
    except InputError:
        return ()
    value, unit = parsed.value, parsed.unit
    if entry.quantity == "temperature":
        near = [value - EITHER_WAY, value + EITHER_WAY]
    elif value == 0:
        step = OF_RANGE * (entry.high - max(entry.low, 0.0))
        near = [-step, step]
    else:
        near = [value * share for share in SPREAD]
    bounded = {min(max(one, entry.low), entry.high) for one in near} - {value}
    return tuple(
        f"{plain_number(unit.from_si(one), 3)} {unit.symbol}".strip() for one in sorted(bounded)
    )
