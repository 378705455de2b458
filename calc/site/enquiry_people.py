"""How many people an enquiry tells of, in each way it is said."""

from __future__ import annotations

import re

from calc.site.enquiry_counts import Counted
from calc.site.enquiry_numbers import NUMBER, value

_FAMILY = re.compile(
    rf"\b(?:family|household|party|group|crew) of (?:about |around )?({NUMBER})(?![\w-])"
)

_OF_US = re.compile(
    rf"(?<![\w¤-])({NUMBER})(?: ?(?:-|to) ?({NUMBER}))? (?:of us\b|(?:\w+ )?(?:people|persons|residents|occupants|inhabitants|souls|guests|campers|ppl|pers|heads? in the house|folks|pupils|students|patients|staff|workers|hikers|monks|nuns|teachers|visitors|tourists|alpinists|climbers|walkers|pilgrims|clients|members|persons of service|lodgers|tenants|volunteers|mouths)\b)"
)

_PEOPLE_IS = re.compile(
    rf"\b(?:people|persons|occupants|residents|household|ppl|users|number of people)(?: in (?:the )?(?:house|household)| living here| \([^)\n]{0, 20}\))? *[:=-]+ *(?:about |ca\.? ?)?({NUMBER})(?: ?(?:-|to) ?(\d+))?(?![\w-])(?! (?:shower|sink|toilet|tap|trough|hose|house|family))|(?:^|\n)[ *-]*(?:people|persons|occupants|residents|users) +(\d+)(?= *(?:$|[\n,;.(+]))"
)

_WE_ARE = re.compile(
    rf"\b(?:we are|we're|there are|there's|there is|its|it's)(?: just| only| about)? (?:the )?({NUMBER})(?: of us)?(?= (?:of us|in the (?:house|cabin|family)|living|who live|at the house|here)\b| ?[,.;)](?!\d))"
)

_KINDS = re.compile(
    rf"(?<![\w¤-])({NUMBER}|an?|our)(?: (?:small|little|young|grown|teenage|big))? (adults?|kids?|children|child|teen(?:ager)?s?|grown[ -]?ups?|bab(?:y|ies)|toddlers?|grandparents|boys|girls|daughters?|sons?)\b"
)

_TWO = re.compile(
    r"\b(?:(?:just|only) (?:the )?two of us|my (?:wife|husband|partner|girlfriend|boyfriend|spouse) and (?:i|me|myself)|(?:just )?(?:me|i|myself) and (?:my|the) (?:wife|husband|partner|girlfriend|boyfriend|spouse|missus))\b"
)

_VISIT = re.compile(
    r"\b(?:guests?|visitors?|weekends?|summer|sometimes|occasionally|when|holidays|campers|up to|visit|staying over|more)\b"
)

_ALONE = re.compile(
    r"\b(?:just me|only me|i live alone|by myself|on my own|living alone|single person|one person|1 person)\b"
)

_TERM = re.compile(
    rf"(?<![\w¤-])(?:me|myself|i\b(?! (?:have|am|want|need|think|would|was|use|live|do))|(?:my|the|our) (?:wife|husband|partner|girlfriend|boyfriend|spouse|missus|mother|father|mum|mom|dad|mother-in-law|father-in-law|grandmother|grandfather|son|daughter|baby|boy|girl|brother|sister)"
    rf"|(?:(?:our|my|the) )?(?P<n>{NUMBER}|an?|our)(?: (?:small|little|young|grown|teenage|big|adult))? (?:adults?|kids?|children|child|teen(?:ager)?s?|grown[ -]?ups?|bab(?:y|ies)|toddlers?|grandparents|grandchildren|grandkids|boys?|girls?|daughters?|sons?|parents|oldies))(?!['\w])"
)

_PARTY = re.compile(
    rf"{_TERM.pattern.replace('(?P<n>', '(?:')}(?: ?(?:,|and|&|\+|plus|with|, and|,? ?and also) ?(?:{_TERM.pattern.replace('(?P<n>', '(?:')}))+"
)


def people(low: str) -> list[Counted]:
    """How many people live there, each way it is said."""
    found: list[Counted] = []
    for match in _PARTY.finditer(low):
        terms = list(_TERM.finditer(low, match.start(), match.end()))
        total = sum(
            1.0 if not one["n"] or one["n"] in {"a", "an", "our"} else value(one["n"])[0]
            for one in terms
        )
        if total == int(total):
            return [Counted("use.people", total, match.start(), match.end())]
    for pattern in (_FAMILY, _OF_US, _PEOPLE_IS, _WE_ARE):
        for match in pattern.finditer(low):
            said = next((one for one in match.groups() if one), "")
            number = value(said)[0]
            high = (
                value(match[2])[0]
                if match.lastindex and match.lastindex > 1 and match[2]
                else number
            )
            after = re.split(r"[.;\n]|, | and | plus ", low[match.end() : match.end() + 40])[0]
            guests = bool(_VISIT.search(after))
            if (
                number == int(number)
                and 0 < number <= 500
                and not any(o.start < match.end() and match.start() < o.end for o in found)
            ):
                found.append(
                    Counted("use.people", number, match.start(), match.end(), False, guests, high)
                )
    if found:
        return found
    kinds = list(_KINDS.finditer(low))
    if kinds:
        two = _TWO.search(low)
        total = sum(1.0 if one[1] in {"a", "an", "our"} else value(one[1])[0] for one in kinds)
        adults = any(one[2].startswith(("adult", "grown", "grandparents")) for one in kinds)
        near = all(b.start() - a.end() < 30 for a, b in zip(kinds, kinds[1:], strict=False))
        if near and (adults or two):
            start = min(kinds[0].start(), two.start() if two and not adults else kinds[0].start())
            end = max(kinds[-1].end(), two.end() if two and not adults else 0)
            return [Counted("use.people", total + (2 if two and not adults else 0), start, end)]
        return []
    for pattern, number in ((_TWO, 2.0), (_ALONE, 1.0)):
        if alone := pattern.search(low):
            return [Counted("use.people", number, alone.start(), alone.end())]
    return []
