"""What a sentence says of a thing that the one before named: "only two now", "there is none", "ours
gives 7"; and what is told by a unit without its number: "a dripper every metre".
"""

from __future__ import annotations

import re

from calc.site.enquiry_counts import BARE, Counted
from calc.site.enquiry_model import Ignored, Piece, Token
from calc.site.enquiry_noise import OTHERS, WITHDRAWN
from calc.site.enquiry_numbers import NUMBER, value

_STOP = r"(?= ?[.,;!)\n]|$| (?:and|but|since)\b)"
_LEFT = (
    re.compile(
        rf"\b(?:only|just|now|down to|it's|it is|are|be|use|have|keep|run) (?P<n>{NUMBER})(?: of them)? (?:now|left|these days|nowadays|today|any ?more|at present){_STOP}"
    ),
    re.compile(
        rf"\bnow,? (?:there (?:is|are) |it's |it is |we (?:have|use|keep) )?(?:only |just )(?P<n>{NUMBER}){_STOP}"
    ),
)
_FAR = 70  # characters back to the thing that is counted anew; our choice
_OUTLETS = tuple((path, pattern) for path, pattern in BARE.items() if path.startswith("outlets."))


def remaining(low: str, clauses: list[Ignored]) -> list[Counted]:
    """How many are left of what was named before, which counts instead of the earlier number."""
    found = []
    for pattern in _LEFT:
        for one in pattern.finditer(low):
            begin, number = max(0, one.start() - _FAR), value(one["n"])[0]
            named = [
                (each.end(), path)
                for path, thing in _OUTLETS
                for each in thing.finditer(low, begin, one.start())
                if each["thing"].endswith("s")
            ]
            if not named or number != int(number) or not 0 < number <= 500:
                continue
            at, path = max(named)
            other = any(c.why == OTHERS and c.start <= one.start() < c.end for c in clauses)
            if not other and not re.search(r"\d|\n\n|\?", low[at : one.start()]):
                found.append(Counted(path, number, one.start("n"), one.end("n")))
    return found


def replaced(things: list[Counted], left: list[Counted]) -> list[Counted]:
    """Things counted, without those of which a later sentence says how many are left."""
    gone = [
        one
        for one in things
        if any(
            new.path == one.path and one.start < new.start and new.start - one.end < 2 * _FAR
            for new in left
        )
    ]
    return [*(one for one in things if one not in gone), *left]


_EACH_WITH = re.compile(
    rf"(?<![\w¤-])(?P<n>{NUMBER}) (?:[a-z]+ ){{0,3}}(?:trees|vines|bushes|plants|pots|shrubs)\b[^;\n]{{0,30}},? (?:each|every one|all)(?: one| of them)? (?:with|has|have|gets|get) (?:an?|one|its own|their own) (?P<what>micro[ -]?(?:sprinklers?|sprays?|jets?)|mini[ -]?sprinklers?|sprinklers?)\b"
)


def each_with(low: str) -> list[Counted]:
    """ "120 pear trees, each with a micro sprinkler" are 120 of them."""
    found = []
    for one in _EACH_WITH.finditer(low):
        path = "outlets.micro" if one["what"].startswith("mi") else "outlets.sprinkler"
        found.append(Counted(path, value(one["n"])[0], one.start(), one.end()))
    return found


# Without a thing -----------------------------------------------------------------------------------

_FILTER = re.compile(
    r"\bfilters?\b[^.?!\n]{0,40}\?\s*(?:(?:but |as |at present |so far )*(?:there is|there's|there isn't|i have|we have|i've got|we've got|have) (?:none|no such|not got one|no filter)|(?:i|we) (?:do not|don't|haven't) (?:have|got|own) (?:one|any|a filter)|(?:none|no filter|not)(?: there)? (?:now|yet|so far|at present))\b"
)
_SPACED = re.compile(
    r"\b(?:drippers?|emitters?|drip points?|holes)\b(?:[^.;\n]|(?<=\d)\.(?=\d)){0,40}\b(?:each|every|per|one a|one to the) (?P<half>half(?: an?)?[ -])?(?P<u>met(?:re|er)|foot|yard)\b(?! of (?!\d))"
)
_UNITS = {"m": "m", "f": "ft", "y": "yd"}


def words(masked: str, clean: str) -> list[Piece]:
    """A filter that there is none of, drippers every metre.  masked: also what is only asked."""
    found = []
    if re.search(r"\bdrip|\bemitters?\b", clean) and (none := _FILTER.search(masked)):
        found.append(Piece("drip.filter", *none.span(), word="no", weight=4))
    for one in _SPACED.finditer(clean):
        number = 0.5 if one["half"] else 1.0
        found.append(
            Piece("drip.spacing", *one.span(), number, number, _UNITS[one["u"][0]], weight=9)
        )
    return found


# Numbers that have the unit of one before ----------------------------------------------------------

_GIVES = re.compile(
    r"\b(?:(?P<ours>mine|ours|our own)|the (?:log|tag|paper|report|driller's (?:log|paper|report)))(?: only| just)? (?:gives|makes|yields|does|says|shows|reads|has|gets)(?: only| just| about)? $"
)
_ENDS = re.compile(r" ?(?:[.,;!\n]|$|(?:and|so|but|at|in|on)\b)")
_BUT = re.compile(r"\b(?:but|though|however|yet|while)\b")
_NEAR = 120  # characters within which a unit is still the same one; our choice


def flows(low: str, numbers: list[Token]) -> None:
    """ "my neighbour gets 30 gpm. Mine gives 7", "good for 10 gpm, but the log says 4": flows."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        near = second.start - first.end < _NEAR and "\n\n" not in low[first.end : second.start]
        if not near or first.kind != "flow" or second.kind != "bare" or second.why:
            continue
        gives = _GIVES.search(low, max(0, second.start - 45), second.start)
        if gives is None or not _ENDS.match(low, second.end):
            continue
        second.kind, second.unit = first.kind, first.unit
        if not gives["ours"] and _BUT.search(low, first.end, second.start):
            first.why = WITHDRAWN


_PATCH = re.compile(
    r"(?<![\w.,/¤-])(?P<a>\d{1,3}) ?(?:x|by) ?(?P<b>\d{1,3})(?: (?:foot|feet|ft))? (?:[a-z]+ ){0,2}(?:garden|patch|plot|greenhouse|poly ?tunnel|bed)\b(?! ?sheet)"
)


def patches(low: str, unit: str) -> list[tuple[float, str, int, int]]:
    """(area, unit, start, end) of "a 40x60 garden", in the letter's unit of length."""
    if unit not in {"m", "ft"}:
        return []
    return [
        (float(one["a"]) * float(one["b"]), f"{unit}²", one.start("a"), one.end("b"))
        for one in _PATCH.finditer(low)
    ]
