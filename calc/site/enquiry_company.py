"""How many people are told together in one breath: a couple, children and "the two of us", "wife, two kids, him"."""

from __future__ import annotations

import re

from calc.site.enquiry_counts import Counted
from calc.site.enquiry_numbers import NUMBER, value

_YOUNG = r"(?:kids?|children|child|boys?|girls?|daughters?|sons?|bab(?:y|ies)|grandbab(?:y|ies)|toddlers?|teen(?:ager)?s?|grandkids?|grandchild(?:ren)?|little ones?|infants?|newborns?)"
_GROWN = r"(?:(?:grown[ -]?(?:up )?)?(?:people|adults|persons|folks)|grown[ -]?ups|adults|pensioners|oldies)"
_COUPLE = re.compile(
    r"\b(?:we are|we're|we are just|we're just|i am one of) an? (?:(?:retired|young|old|older|elderly|married|middle-aged) )?couple\b(?! (?:of|with|hundred|and))()|\bi (?:live|retired|moved|settled|came|am|stay)(?: out| up| over| back| down)? (?:here|there) with my (?:wife|husband|partner|girlfriend|boyfriend|spouse)\b(?!,? (?:and|plus|our|\+|&|with))()"
)
_AND_US = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:\w+ )?(?:{_YOUNG}|guests?|lodgers|grandparents|parents|helpers|visitors)(?: at (?:the )?most| max(?:imum)?| tops)?,? (?:and|plus|\+|&|with) (?:(?:the )?({NUMBER}|both) of us\b|we(?:'re| are) ({NUMBER})(?= ?[.,;\n]))"
)
_WITH_YOUNG = re.compile(
    rf"(?<![\w¤-])({NUMBER}) {_GROWN}(?:,| and| plus| \+| &| with)(?: and| about)? ({NUMBER}|an?|our|the) (?:\w+ )?{_YOUNG}\b(?! (?:at|on|in the summer|sometimes|visits?|comes?|who (?:visit|come)))"
)
_WIFE_KIDS = re.compile(
    rf"(?:^|[.;\n] ?)(?:his |a |the )?(?:wife|husband|partner),? (?:(?:and |plus )?({NUMBER}) {_YOUNG},? )?(?:and |plus )?(?:him|himself|her|herself)(?= ?(?:[.,;\n]|$))()"
)

_HOUSE_OF = re.compile(
    rf"\b(?:convent|monastery|abbey|priory|community|commune|order|group|team|crew|household) of (?:about )?({NUMBER}) (?:sisters|brothers|nuns|monks|friars|people|adults|members|workers)(?:,| and| plus| \+| &| with)(?: about| up to| and)? ({NUMBER}) (?:guests|novices|visitors|staff|pupils|lodgers|children|helpers|others)\b"
)

_BEDS = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:beds|bunks|berths|guest places)(?:,| and| plus| \+| &| with)(?: and| about)? ({NUMBER}) (?:staff|wardens?|of us|caretakers?|workers|helpers)\b"
)


def told_together(low: str) -> list[Counted]:
    """The people whom one phrase adds up; none where no such phrase stands."""
    found = _COUPLE.search(low)
    if found:
        return [_of(found, 2.0)]
    for pattern, more in (
        (_AND_US, 0.0),
        (_WITH_YOUNG, 0.0),
        (_HOUSE_OF, 0.0),
        (_BEDS, 0.0),
        (_WIFE_KIDS, 2.0),
    ):
        found = pattern.search(low)
        if found:
            total = more + sum(_number(one) for one in found.groups())
            if total == int(total) and 0 < total <= 500:
                return [_of(found, total)]
    return []


def _of(found: re.Match[str], number: float) -> Counted:
    start = found.start() + len(found.group()) - len(found.group().lstrip(" .;\n"))
    return Counted("use.people", number, start, found.end())


def _number(word: str | None) -> float:
    if not word:
        return 0.0
    if word in {"a", "an", "our", "the"}:
        return 1.0
    return 2.0 if word == "both" else value(word)[0]
