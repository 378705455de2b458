"""Things counted behind their nouns or by a word that stands for them: "trough with float, 2
pieces", "two tanks with floats", "18 cows in milk, 5 dry ones", "5 cows, two of them giving milk"."""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site.enquiry_counts import Counted
from calc.site.enquiry_numbers import NUMBER, value

_STOCK = re.compile(
    r"\b(?:cows?|cattle|sheep|ewes|goats?|horses?|stock|heifers?|herd|flock|donkeys?|calves|bulls?)\b"
)
_FLOATS = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:\w+ )?(?:tanks?|tubs?|bathtubs?|bowls?|basins?|barrels?|drinking places?|points) (?:with|on|by|has|have) (?:an? )?(?:float|ball)(?:s|[ -]?valves?| valves)?\b"
)
_FOR_TROUGHS = re.compile(
    rf"\btroughs\b[^.;\n\d]{{0,30}}(?<![\w-])({NUMBER}) (?:floats|float valves|ball ?cocks|valves)\b"
)
_FLOAT_VALVES = re.compile(
    rf"\b(?:drinks?|waters?|watered|served|supplied|at|from|with|has|have)(?: \w+){{0,2}} (?<![\w¤-])({NUMBER}) (?:float|ball)[ -]?(?:valves|cocks)\b"
)
_BEHIND = re.compile(
    rf"\b(?:troughs?|drinkers?|waterers?)(?: with (?:an? )?(?:float|ball)(?: valve)?s?)?(?: for (?:the )?[a-z]+)?[ ,:(-]+(?:we have )?({NUMBER}) (?:pieces|pcs|nos?\b|units|off\b|numbers)"
)
_ONES = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:(?:dry|young|other|beef|non-milking|old) ones\b|dry(?= ?[,.;)\n]| and\b))"
)
_MILKED = re.compile(
    rf"[ ,(]*(?:also|too|here|altogether|in all)?[ ,(]*({NUMBER})(?: of (?:them|which|these))? (?:(?:are |is )?(?:giving|in|for) milk|(?:are |is )?milk(?:ing|ed|ers)\b|give milk)\b"
)


def pieces(low: str, things: list[Counted]) -> list[Counted]:
    """Troughs and cattle that are counted otherwise; ``things``: what was counted already."""
    found = []
    if _STOCK.search(low):
        for pattern in (_FLOATS, _FOR_TROUGHS, _FLOAT_VALVES, _BEHIND):
            match = pattern.search(low)
            if match is None or value(match[1])[0] != int(value(match[1])[0]):
                continue
            over = [one for one in things if one.start < match.end() and match.start() < one.end]
            if not any(
                one.path == "use.troughs" and one.count == value(match[1])[0] for one in over
            ):
                found.append(Counted("use.troughs", value(match[1])[0], *match.span()))
            for one in over:
                things.remove(one)  # basins that have floats are none to wash in
            found += [one for one in over if one.path == "use.troughs"]
            break
    cows = [one for one in things if one.path in {"animals.dairy", "animals.cattle"}]
    for match in _ONES.finditer(low) if cows else ():
        if 0 < match.start() - cows[-1].end < _NEAR or any(
            0 < match.start() - one.end < _NEAR for one in cows
        ):
            found.append(Counted("animals.cattle", value(match[1])[0], *match.span()))
    return found


_NEAR = 25  # characters within which "ones" are of the animals named last; our choice


def apart(low: str, things: list[Counted]) -> list[Counted]:
    """Cows of which some are in milk, each kind by itself."""
    found: list[Counted] = []
    for one in things:
        part = _MILKED.match(low, one.end) if one.path == "animals.cattle" else None
        number = value(part[1])[0] if part else 0.0
        if part is None or not 0 < number < one.count or one.together:
            found.append(one)
            continue
        rest = one.count - number
        found.append(replace(one, count=rest, high=rest))
        if not any(each.path == "animals.dairy" and each.start < part.end() and part.start() <= each.end for each in things):  # fmt: skip
            found.append(Counted("animals.dairy", number, part.start(1), part.end()))
    return found
