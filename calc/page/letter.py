"""An answer as a short letter: what it says, what it stands on, what to ask back, what to mind.

All of it is in one system of units; the long text beside it has the working.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.ask_back import main_figure, questions, said
from calc.page.render import WARNING_WORDS, beside, told
from calc.page.render_given import groups

if TYPE_CHECKING:
    from calc.page.answer import Answer
    from calc.page.fields import Sheet
    from calc.page.form import Outcome
    from calc.page.state import State
    from calc.units import Reader

FIGURES = 4  # named at most, the main one first; our choice, a letter is read on a phone
ASKED = 5  # questions asked back at most; our choice


def letter(sheet: Sheet, outcome: Outcome, state: State, address: str) -> str:
    """The letter of a worked answer.

    address: of the page with these numbers.  Raises ``ValueError`` where there is no answer.
    """
    found = outcome.answer
    if found is None:
        raise ValueError(f"there is no answer to write of: {outcome.errors}")
    parts = [[sheet.title]]
    if outcome.example:
        parts.append(["A worked example with invented numbers, not yours."])
    parts += [_verdict(found), _given(outcome), _figures(found, outcome.reader)]
    parts += [_assumed(outcome), _asked(sheet, outcome, found, state), _minded(sheet, found)]
    parts.append(["These numbers, to look at and to change:", address])
    text = "\n\n".join("\n".join(lines) for lines in parts if lines)
    return text.replace("\u00a0", " ") + "\n"


def _verdict(found: Answer) -> list[str]:
    verdict = found.verdict
    fix = [f"Likely best fix: {found.fixes[0].text}"] if found.fixes else []
    return [f"{verdict.word}. {verdict.sentence}", *fix]


def _given(outcome: Outcome) -> list[str]:
    if not outcome.given:
        return []
    told = (f"- {one.label.removesuffix(' (optional)')}: {one.shown}" for one in outcome.given)
    return ["Your numbers", *told]


def _figures(found: Answer, reader: Reader) -> list[str]:
    ranked = sorted(found.figures, key=lambda one: not one.main)[:FIGURES]
    return ["What they give", *(f"- {one.label}: {told(one, reader)}" for one in ranked)]


def _assumed(outcome: Outcome) -> list[str]:
    lines = []
    for lead, group in groups(outcome.assumed):
        told = ", ".join(f"{one.label.removesuffix(' (optional)')} {one.shown}".strip()
                         for one in group)  # fmt: skip
        lines.append(f"- {lead}: {told}.")
    return ["Assumed, not from you", *lines] if lines else []


def _asked(sheet: Sheet, outcome: Outcome, found: Answer, state: State) -> list[str]:
    asked = questions(sheet, outcome, state)[:ASKED]
    lines = [f"{number}. {one.label}: {one.told}" for number, one in enumerate(asked, 1)]
    main = main_figure(found)
    it = f" (“it” is the figure “{main.label}”, {said(main, outcome.reader)} now)" if main else ""
    return [f"Please tell us, what matters most first{it}", *lines] if lines else []


def _minded(sheet: Sheet, found: Answer) -> list[str]:
    minded = [f"- {WARNING_WORDS[one.level]}: {one.text}" for one in beside(found)]
    minded += [f"- {caution}" for caution in (*found.cautions, *sheet.cautions)]
    return ["Please mind", *minded] if minded else []
