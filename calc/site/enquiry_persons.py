"""How many people there are, of all that a letter says: added up, ranged, or not clear."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece, Reading, Told, Unclear
from calc.site.enquiry_slots import label

_AND = re.compile(r",? ?(?:and|plus|with|&|\+) ?(?:(?:we|there) are )?(?:about |around |some )?|, ")
_SO = re.compile(r"\b(?:so|makes?|together|total of)(?: about)? $")


def persons(plain: str, low: str, pieces: list[Piece]) -> tuple[list[Told], list[Unclear]]:
    """(the number of people where it is plain, what else it may be where two numbers compete)."""
    path = "use.people"
    alone = [one for one in pieces if not one.vague] or pieces[:1]
    total = alone[:1]
    for one in alone[1:]:
        if _AND.fullmatch(low[total[-1].end : one.start]):
            total.append(one)
    others = [one for one in alone if one not in total]
    amount = sum(one.low for one in total)
    rest = [one for one in others if one.low not in {amount, *(each.low for each in total)}]
    for one in rest:
        if _SO.search(low[max(0, one.start - 18) : one.start]):
            return [count_told(plain, path, [one])], []
    if not rest:
        return [count_told(plain, path, total)], []
    readings = tuple(
        Reading(path, f"{number:g}", label(path))
        for number in dict.fromkeys([amount, *(one.low for one in rest)])
    )
    return [], [
        Unclear(plain[one.start : one.end], one.start, one.end, readings) for one in (*total, *rest)
    ]


def count_told(plain: str, path: str, pieces: list[Piece]) -> Told:
    """A count told by these pieces, added up."""
    low, high = sum(one.low for one in pieces), sum(one.high for one in pieces)
    start, end = min(one.start for one in pieces), max(one.end for one in pieces)
    ends = (f"{low:g}", f"{high:g}") if low != high else ("", "")
    text = f"{low:g}" if low == high else f"{(low + high) / 2:.0f}"
    return Told(path, text, label(path), plain[start:end], start, end, *ends)
