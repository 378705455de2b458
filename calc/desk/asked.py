"""What to ask back about a whole site, in the order of how much its answers hang on it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.page.ask_back import main_figure
from calc.page.ask_back import questions as weighed

if TYPE_CHECKING:
    from calc.desk.work import Part, Work

MOST = 12  # questions; our choice
WEIGHED = 4  # parts whose values are varied; our choice
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
    blocked: dict[str, list[str]] = {}
    for part in work.parts:
        for label in _lacking(part):
            blocked.setdefault(label, []).append(part.sheet.title.rstrip("?"))
    found = [Asked(label, f"without it there is no answer to: {', '.join(titles)}.")
             for label, titles in blocked.items()]  # fmt: skip
    ranked: list[tuple[bool, float, str, str]] = []
    seen = set(blocked)
    parts = [one for one in work.parts if one.answer is not None and one.key not in SLOW]
    for part in parts[:WEIGHED]:
        for one in weighed(part.sheet, part.outcome, part.state):
            if one.label not in seen and not one.told.startswith("as if "):
                seen.add(one.label)
                ranked.append((one.turns, one.moves, one.label, f"{one.told}{_it(part, one.told)}"))
    ranked.sort(key=lambda one: (not one[0], -one[1]))
    found += [Asked(label, told) for _, _, label, told in ranked]
    return found[:MOST]


def _it(part: Part, told: str) -> str:
    """Which figure “it” is, where a question says so."""
    main = main_figure(part.answer) if part.answer and " it is " in told else None
    return f" (“It” is “{main.label}” of “{part.sheet.title}”.)" if main else ""


def _lacking(part: Part) -> list[str]:
    """Labels of the fields for want of which a part has no answer."""
    if part.answer is not None:
        return []
    fields = {entry.key: entry for entry in part.sheet.fields}
    keys = [key.partition(".")[0] for key in part.outcome.errors]
    named = [fields[key].label.removesuffix(" (optional)") for key in keys if key in fields]
    return list(dict.fromkeys(named))
