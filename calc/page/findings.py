"""What was found wrong or worth saying, and the verdict that follows from it: the worst decides.

A sheet returns findings; nobody writes a verdict.  A finding comes from the numbers given.
Standing advice is a caution (a plain sentence beside the findings) and never counts.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.answer import Link

LEVELS = ("stop", "care", "note")  # worst first
# Of several stops: harm to people opens the sentence, then what cannot work at all, then what is
# too weak; a check that could not be made comes last.
RANKS = ("harm", "cannot", "weak", "unchecked")
GOOD, TIGHT, BAD = "good", "tight", "bad"  # levels of a verdict
WORDS = {GOOD: "Works", TIGHT: "Borderline", BAD: "Does not work"}
RESULT = "Result"  # in place of "Works" where a size is asked
_VERDICT_OF = {"stop": BAD, "care": TIGHT, "note": GOOD}


@dataclass(frozen=True)
class Finding:
    """One thing found.

    level: "stop", "care" or "note"; key: what it is, one of a sheet's own short words
    ("over-rating", "outlet-over-limit", "short", "npsh"), for tests and other sheets; text: one
    sentence in the reader's units that can open the verdict (up to 25 words, 4 numbers); rank:
    one of ``RANKS``; at: name of the part, point or outlet it is about.
    """

    level: str
    key: str
    text: str
    rank: str = "weak"
    at: str = ""

    def __post_init__(self) -> None:
        if self.level not in LEVELS or self.rank not in RANKS:
            raise ValueError(f"no such level or rank: {self.level}, {self.rank}")


@dataclass(frozen=True)
class Fix:
    """What puts it right, worked out anew; ``link``: the same sheet with the change made."""

    text: str
    link: Link | None = None


@dataclass(frozen=True)
class Verdict:
    """The answer's word and sentence. ``level``: "good", "tight" or "bad"."""

    level: str
    sentence: str
    word: str


def unchecked(key: str, text: str, at: str = "") -> Finding:
    """A deciding check that could not be made: Borderline; ``text`` says what would pass."""
    return Finding("care", key, text, "unchecked", at)


def ranked(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings, the worst first; among equals in the order given."""
    return tuple(sorted(findings, key=lambda one: (LEVELS.index(one.level), RANKS.index(one.rank))))


def verdict(findings: Iterable[Finding], told: str, sizing: bool = False) -> Verdict:
    """The verdict that follows: any stop "Does not work", any care "Borderline", else "Works".

    told: the sentence where nothing is worse than a note; sizing: a size was asked for, so
    "Result" stands in place of "Works".  Raises nothing.  Source: our choice.

    >>> verdict((Finding("note", "fast", "Heard."), Finding("stop", "over", "Too much.")), "Fine.")
    Verdict(level='bad', sentence='Too much.', word='Does not work')
    """
    worst = next(iter(ranked(findings)), None)
    level = GOOD if worst is None else _VERDICT_OF[worst.level]
    word = RESULT if sizing and level == GOOD else WORDS[level]
    return Verdict(level, told if worst is None or level == GOOD else worst.text, word)
