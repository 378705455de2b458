"""An answer as a short letter: what it says, what it stands on, what to ask back, what to mind.

All of it is in one system of units; the long text beside it has the working.  What a letter of a
phone has no room for is counted in it, and stands on the page behind its link.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.ask_back import main_figure, questions, said
from calc.page.render import WARNING_WORDS, beside, told
from calc.page.render_given import groups, plain

if TYPE_CHECKING:
    from calc.page.answer import Answer
    from calc.page.ask_back import Question
    from calc.page.fields import Sheet
    from calc.page.form import Outcome
    from calc.page.given import Assumed
    from calc.page.state import State
    from calc.units import Reader

WORDS_MOST = 300  # of a letter without its address; our choice, it is read on a phone
ALL = 99  # more than any page has

# What can kill: by the words of a caution, and by those of advice that it then belongs to.
LIFE = tuple(
    (re.compile(caution, re.IGNORECASE), re.compile(advice, re.IGNORECASE))
    for caution, advice in (
        (  # electricity
            r"licensed (person|electrician)|\bwir(e|ed|ing)\b|\blive in\b|\barc\b"
            r"|short-circuit|give off gas|carries current|can kill",
            r"\b(cable|fuse|wire|panels?|battery|inverter|breaker)\b",
        ),
        # air that cannot be breathed
        (r"confined space|do not (enter|climb in)|carbon monoxide", r"\b(well|spring box)\b"),
        (r"keep children out|\bdrowns?\b", r"\bcistern\b"),
        (  # water to drink
            r"drinking water|polluted|backflow|air gap|fit to drink|chlorinate|\bdrinks?\b",
            r"backflow|drinking",
        ),
        (r"let the pressure out|(stores|holds) energy", r"\b(open|take off|loosen)\b"),
        (r"relief valve|rated\b|\brating\b|bursts?\b|explode", r"\b(relief|rat(ed|ing)|burst)"),
        (r"scald|burns\b|legionella", r"hot water|hotter"),
        (r"trench|before you dig", r"\b(bury|dig|trench)\b"),
        (r"\bfalls from\b|at height", r"\broof\b"),
    )
)


@dataclass(frozen=True)
class Room:
    """How many of each a letter holds: figures, assumed values of one reason, questions, notes, and
    cautions beside those that none may miss."""

    figures: int
    assumed: int
    asked: int
    notes: int
    cautions: int


# From a roomy letter to the shortest; our choice.
ROOMS = (
    Room(4, ALL, 5, ALL, ALL), Room(4, ALL, 5, 2, 3), Room(4, 8, 5, 1, 1), Room(4, 6, 4, 1, 0),
    Room(4, 5, 4, 0, 0), Room(4, 4, 3, 0, 0), Room(3, 3, 3, 0, 0), Room(3, 2, 2, 0, 0),
    Room(2, 1, 2, 0, 0), Room(2, 1, 1, 0, 0), Room(1, 1, 1, 0, 0), Room(1, 0, 1, 0, 0),
)  # fmt: skip


def letter(sheet: Sheet, outcome: Outcome, state: State, address: str) -> str:
    """The letter of a worked answer: the roomiest that keeps to ``WORDS_MOST``.

    Stops, cares and cautions on what can kill are in each of them.  address: of the page with these
    numbers.  Raises ``ValueError`` where there is no answer.
    """
    found = outcome.answer
    if found is None:
        raise ValueError(f"there is no answer to write of: {outcome.errors}")
    asked = questions(sheet, outcome, state)
    for room in ROOMS:
        text = _text(sheet, outcome, found, asked, room)
        if words(text) <= WORDS_MOST:
            break
    return f"{text}\n{address}\n".replace("\u00a0", " ")


def words(text: str) -> int:
    """Words and figures of a text.

    >>> words("- Climb: 22 m. – Works.")
    4
    """
    return sum(any(sign.isalnum() for sign in word) for word in text.split())


def _text(sheet: Sheet, outcome: Outcome, found: Answer, asked: list[Question], room: Room) -> str:
    parts = [[sheet.title]]
    if outcome.example:
        parts.append(["A worked example with invented numbers, not yours."])
    parts += [_verdict(found), _given(outcome), _figures(found, outcome.reader, room)]
    parts += [_assumed(outcome, room), _asked(outcome, found, asked[: room.asked])]
    parts += [_minded(sheet, found, room), ["These numbers, to look at and to change:"]]
    return "\n\n".join("\n".join(lines) for lines in parts if lines)


def _verdict(found: Answer) -> list[str]:
    verdict = found.verdict
    fix = [f"Likely best fix: {found.fixes[0].text}"] if found.fixes else []
    return [f"{verdict.word}. {verdict.sentence}", *fix]


def _given(outcome: Outcome) -> list[str]:
    if not outcome.given:
        return []
    told = (f"- {one.label.removesuffix(' (optional)')}: {one.shown}" for one in outcome.given)
    return ["Your numbers", *told]


def _figures(found: Answer, reader: Reader, room: Room) -> list[str]:
    ranked = sorted(found.figures, key=lambda one: not one.main)[: room.figures]
    return ["What they give", *(f"- {one.label}: {told(one, reader)}" for one in ranked)]


def _assumed(outcome: Outcome, room: Room) -> list[str]:
    lines = [f"- {lead}: {_listed(group, room)}." for lead, group in groups(outcome.assumed)]
    return ["Assumed, not from you", *lines] if lines else []


def _listed(group: list[Assumed], room: Room) -> str:
    named = [f"{plain(one.label)} {one.shown}".strip() for one in group[: room.assumed]]
    rest = len(group) - len(named)
    left = f"{rest}{' more' if named else ''} on the page"
    return ", ".join([*named, left] if rest else named)


def _asked(outcome: Outcome, found: Answer, asked: list[Question]) -> list[str]:
    lines = [f"{number}. {one.label}: {one.told}" for number, one in enumerate(asked, 1)]
    main = main_figure(found)
    it = f" (“it” is the figure “{main.label}”, {said(main, outcome.reader)} now)" if main else ""
    return [f"Please tell us, what matters most first{it}", *lines] if lines else []


def _minded(sheet: Sheet, found: Answer, room: Room) -> list[str]:
    said_beside = beside(found)
    notes = [one for one in said_beside if one.level == "note"]
    shown = [one for one in said_beside if one not in notes[room.notes :]]
    cautions = (*found.cautions, *sheet.cautions)
    vital = vital_cautions(sheet, found)
    others = [one for one in cautions if one not in vital]
    kept = [one for one in cautions if one not in others[room.cautions :]]
    minded = [f"- {WARNING_WORDS[one.level]}: {one.text}" for one in shown]
    minded += [f"- {one}" for one in kept]
    minded += _left(len(cautions) - len(kept), len(said_beside) - len(shown))
    return ["Please mind", *minded] if minded else []


def vital_cautions(sheet: Sheet, found: Answer) -> frozenset[str]:
    """Cautions that no letter leaves out: of each danger in ``LIFE`` the first, the sheet's own
    before those of the numbers, and all of a danger that belongs to what was found or advised."""
    cautions = (*sheet.cautions, *found.cautions)
    advised = (fix.text for fix in found.fixes[:1])
    serious = (one.text for one in found.findings if one.level != "note")
    advice = " ".join((found.verdict.sentence, *advised, *serious))
    vital: set[str] = set()
    for danger, belongs in LIFE:
        about = [one for one in cautions if danger.search(one)]
        vital |= {*about} if belongs.search(advice) else {*about[:1]}
    return frozenset(vital)


def _left(cautions: int, notes: int) -> list[str]:
    """One line on what only the page says."""
    named = [
        f"{count} more {word}{'' if count == 1 else 's'}"
        for count, word in ((cautions, "caution"), (notes, "note"))
        if count
    ]
    rest = " and ".join(named)
    return (
        [f"- Before you work on it, read the page behind the link: it has {rest}."] if rest else []
    )
