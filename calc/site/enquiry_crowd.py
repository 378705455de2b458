"""How many people, told by other nouns and other sums: "3 grooms live here", "students and staff
together 180", "two of us and a lodger, so three"."""

from __future__ import annotations

import re

from calc.site.enquiry_counts import Counted
from calc.site.enquiry_numbers import NUMBER, value

_FOLK = (
    r"(?:people|persons?|guests?|pupils|students|children|kids|staff|teachers|workers|employees|residents|patients|nurses|monks|nuns|sisters|brothers|adults?|boarders|visitors"
    r"|members|learners|volunteers|helpers|orphans|tenants|lodgers?|inmates|sick|doctors|beds|family|families|campers|soldiers|grooms|hands|labourers|inhabitants)"
)
_BEASTS = r"(?:cows?|cattle|goats?|sheep|hens?|chickens?|dogs?|cats?|horses?|ponies|donkeys?|pigs?|ducks?|geese|bees|birds|fish|animals?|alpacas?|llamas?|calves|lambs|families|heads?|generations|households?|years|months|days|weeks)"
_ALL = r"(?:together|altogether|all together|in total|total|in all|all told|combined)"
_SUMS = (
    re.compile(rf"\b{_FOLK}(?: and | & |, | \+ ){_FOLK},?(?: (?:are|we are|is))? {_ALL}[ :=]*(?:about |are )?({NUMBER})(?![\w-])"),
    re.compile(rf"\b{_FOLK}(?: and | & |, | \+ ){_FOLK} ?[:=] ?({NUMBER})(?: {_ALL})?(?= ?(?:[.,;\n]|$))"),
    re.compile(rf"\b(?:of us|we are|people|persons|adults?|us)\b[^.;\n]{{0,50}}\b(?:and|plus|with|,) (?:[a-z]+ ){{1,4}}?(?:[a-z]+),? so ({NUMBER})(?: of us| people| in all)?(?= ?(?:[.;!\n]|$))"),
)  # fmt: skip
_TWO_KINDS = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:\w+ )?(?:sick|patients|guests|pupils|students|children|people|persons|boarders|residents|monks|nuns)(?:,? and|,? plus| \+| &|,)(?: (?:we are|there are|about|also))* ({NUMBER})(?: (?:nurses|staff|teachers|workers|employees|helpers|doctors|cooks|sisters|brothers|monks|of us|adults|us|who live here))?(?= ?(?:[.;!\n]|$)| (?:live|living|sleep|in all|here)\b)"
)
_LIVE = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?!{_BEASTS}\b)(?!(?:of|in|on|to|at|m|ft|l|litres?|gallons?)\b)[a-z]{{4,}}s (?:live|lives|sleep|are living|eat and sleep|stay)(?: (?:and work|permanently|all year))? (?:here|there|in (?:the|it)|on (?:the )?site|with us|all year)\b"
)
_EACH = re.compile(r" (?:each|per|in each|a (?:room|cabin|hut))\b")
_MOST = 1000  # people; beyond, a number counts something else; our choice


def _one(match: re.Match[str], number: float) -> list[Counted]:
    if number == int(number) and 0 < number <= _MOST:
        return [Counted("use.people", number, *match.span())]
    return []


def summed(low: str) -> list[Counted]:
    """A sum that a letter says, or two kinds of people in one breath; these win over their parts."""
    for pattern in _SUMS:
        for match in pattern.finditer(low):
            return _one(match, value(match[1])[0])
    for match in _TWO_KINDS.finditer(low):
        return _one(match, value(match[1])[0] + value(match[2])[0])
    return []


def crowd(low: str) -> list[Counted]:
    """People by the nouns of their work."""
    for match in _LIVE.finditer(low):
        if not _EACH.match(low, match.end()):
            return _one(match, value(match[1])[0])
    return []
