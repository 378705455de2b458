"""What runs at once: of things counted, how many are open together."""

from __future__ import annotations

import re

from calc.site.enquiry_counts import BARE, Counted, how_many
from calc.site.enquiry_numbers import NUMBER, value

_ONCE = re.compile(
    r"\b(?:at (?:once|the same time|one time|a time)|in the same time|together|simultaneously|same time|in parallel|all at once|concurrently|both (?:are |is )?(?:on|open|running|in use)"
    r"|(?:are|is) both (?:on|open|running)|(?:are|going|running|open) at once)\b"
)

_LINK = re.compile(
    r"[ ,]*(?:(?:and|plus|with|&|\+|or|,|then)[ ,]*)?(?:the |a |an |one |also |my |our )*(?:[a-z-]+ ){0,2}$"
)


_BOTH_RUN = re.compile(
    r",? ?(?:are |is |both |going |all )*(?:run|runs|running|on|going|open|in use)\b(?! (?:off|to|from|along|through|out|cold|hot|it|them|that|this|the|one)\b)"
)
_WHILE = re.compile(r"[ ,]*(?:[a-z']+ ){0,2}?(?:while|whilst) (?:[a-z']+ ){0,4}?$")


def _pairs(low: str, outlets: list[Counted]) -> list[Counted]:
    """ "the shower and the washer run", "a shower while I run the kitchen tap"."""
    found: list[Counted] = []
    for one, other in zip(outlets, outlets[1:], strict=False):
        gap = low[one.end : other.start]
        linked = re.fullmatch(r" ?(?:and|\+|&|plus) (?:the |a |my )?", gap)
        both = linked and _BOTH_RUN.match(low, other.end)
        if one.path != other.path and (both or (len(gap) < 45 and _WHILE.fullmatch(gap))):
            found += [Counted(o.path, o.count, o.start, o.end, True) for o in (one, other)]
    return found


def at_once(low: str, found: list[Counted]) -> list[Counted]:
    """Of a list that runs "at once" each thing: "a shower and the kitchen sink together"."""
    outlets = [one for one in found if one.path.startswith("outlets") and one.count]
    more: list[Counted] = [one for one in _pairs(low, outlets) if one.count == 1]
    for once in _ONCE.finditer(low):
        if re.search(
            r"\b(?:not|never|don't|without)\b(?: \w+){0,2} $",
            low[max(0, once.start() - 25) : once.start()],
        ):
            continue
        chain: list[Counted] = []
        at = once.start()
        for one in reversed([one for one in outlets if one.end <= once.start()]):
            gap = low[one.end : at]
            fits = (
                _LINK.fullmatch(gap)
                if chain
                else (
                    len(gap) <= 45
                    and not re.search(r"[.;¤\n]|,.*,", gap)
                    and not re.search(rf"(?<![\w-]){NUMBER}\b", gap)
                )
            )
            if not fits:
                break
            part = chain and _PART_OF.search(low, chain[-1].start, chain[-1].end)
            if part and not _JOINED.search(gap):
                break  # "ten basins, five of the showers run at once"
            if one.path in {other.path for other in chain} or (one.together and chain):
                break
            chain.append(one)
            at = one.start
        for one in chain:
            if not one.together and (len(chain) > 1 or not one.vague):
                more.append(Counted(one.path, one.count, one.start, one.end, True))
    return more


_PART_OF = re.compile(r"\bof (?:the|our|my|these|those) ")
_JOINED = re.compile(r"\b(?:and|plus|with|or)\b|[&+]")
_OF_THEM = re.compile(
    rf"(?<![\w¤-])({NUMBER}|both|all) (?:of (?:them|these|those|the (\w+?)s?)|(?:may|can|could|might|will|are|run|running|on|in use|going|open))\b[^.;¤\n]{{0,30}}?\b(?:at (?:once|the same time|one time|a time)|together|simultaneously)\b"
)

_NEVER_MORE = re.compile(
    rf"\b(?:(?:never|not|no|seldom|rarely) more than|at most|only ever|(?:never|rarely|seldom) over) ({NUMBER})(?: of them)? (?:are |is )?(?:going|on|open|running|in use)\b"
)
_AT_A_TIME = re.compile(
    rf"sprinklers?(?: heads?)?[,;:]? (?:but |and |of which )?(?:only )?(?<![\w¤-])({NUMBER}) (?:(?:of them|run|runs|open|are open|go|going|on) )?(?:at a time|at once|together|at the same time|in one time)\b"
)

_ZONES = re.compile(rf"(?<![\w¤-])({NUMBER})(?: \w+)? zones?\b(?! (?:valve|board))")

_ZONE_AT = re.compile(
    rf"(?:of which |only |with )(?:only )?(?<![\w¤-])({NUMBER}) (?:is |are |runs? |opens? )?(?:\w+ )?(?:at a time|at once|together|at the same time)|(?<![\w¤-])({NUMBER})(?: drip)? zones? (?:(?!one|two|three|four)\w+ ){{0,3}}?(?:at (?:a|one|the same) time|at once|together|runs? at)|\bzones? (?:\w+ ){{0,3}}?(one) (?:at a time|after (?:the other|another)|by one)|\b(one) after (?:the other|another)\b|(?<!zones )\b(one|two|three|\d) at a time\b|\b(?:each|every)(?: one)?(?: of which)?(?: must| has to)? runs? by (?:itself|its own)"
)


def _of_what(low: str, at: int) -> str:
    """The path of the outlets that "five of the showers" are of; "" where they are of none."""
    words = re.compile(r"(?:[a-z]+ ){0,2}?(?=[a-z]+s\b)").match(low, at)
    for end in [words.end(), at] if words else [at]:
        for path, pattern in BARE.items():
            hit = pattern.match(low, end) if path.startswith("outlets") else None
            if hit and hit["thing"].endswith("s"):
                return path
    return ""


def _never_more(low: str) -> list[Counted]:
    """ "three showers, and never more than two going" are two together."""
    found = []
    for match in _NEVER_MORE.finditer(low):
        number, left = value(match[1])[0], low[max(0, match.start() - 40) : match.start()]
        ones = [(one.end(), p) for p, pattern in BARE.items() if p.startswith("outlets")
                for one in pattern.finditer(left) if one["thing"].endswith("s")]  # fmt: skip
        if ones and not re.search(r"[.;\n]", left[max(ones)[0] :]):
            found.append(Counted(max(ones)[1], number, match.start(1), match.end(), True))
    return found


def later(low: str) -> list[Counted]:
    """What is counted of things named before: "four of them at once", zones of drip."""
    found = []
    for match in _OF_THEM.finditer(low):
        number = how_many(match[1])[0]
        named = [
            (p, one)
            for p, pattern in BARE.items()
            if p.startswith("outlets")
            for one in pattern.finditer(low, max(0, match.start() - 90), match.start())
        ]
        own = _of_what(low, match.start(2)) if match[2] else ""
        if number and named and (own or not match[2] or how_many(match[2])[0]):
            path = own or max(named, key=lambda one: one[1].end())[0]
            found.append(Counted(path, number, match.start(), match.end(), True))
    found += _never_more(low)
    for match in _AT_A_TIME.finditer(low):
        number = value(match[1])[0]
        found.append(Counted("outlets.sprinkler", number, match.start(1), match.end(), True))
    if re.search(r"\bdrip|\bdripline|\bemitters?\b|\birrigat", low):
        for match in [] if re.search(r"\bdrip zones?\b", low) else _ZONES.finditer(low):
            if not _ZONE_AT.match(low, match.start()):
                found.append(
                    Counted("outlets.drip", value(match[1])[0], match.start(), match.end())
                )
        for match in _ZONE_AT.finditer(low):
            if re.search(r"zone|circuit|drip", low[max(0, match.start() - 80) : match.end()]):
                found.append(
                    Counted(
                        "outlets.drip",
                        value(next((one for one in match.groups() if one), "one"))[0],
                        match.start(),
                        match.end(),
                        True,
                    )
                )
    return found


def answered(things: list[Counted], asked: list[tuple[int, int, str]]) -> list[Counted]:
    """Outlets named under a question about what runs at once."""
    return [
        Counted(one.path, one.count, one.start, one.end, True)
        for start, end, question in asked
        if _ONCE.search(question)
        for one in things
        if start <= one.start < end and one.path.startswith("outlets") and one.count
    ]
