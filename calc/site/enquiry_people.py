"""How many people an enquiry tells of, in each way it is said."""

from __future__ import annotations

import re

from calc.site import enquiry_crowd, enquiry_household
from calc.site.enquiry_company import told_together
from calc.site.enquiry_counts import Counted
from calc.site.enquiry_numbers import FEW, value

_FAMILY = re.compile(
    rf"\b(?:family|household|party|group|crew) (?:of|is|are) (?:about |around )?({FEW})(?![\w-])(?! (?:\w+ )?(?:houses|homes|households|families|cabins|cottages|farms|flats|plots|huts))"
)

_OF_US = re.compile(
    rf"(?<![\w¤-])({FEW})(?: ?(?:-|to|(?<=between \d )and|(?<=between \d\d )and) ?({FEW}))? (?:of us\b|(?:(?!(?:mm|cm|m|ft|in|inch|psi|bar|l|gal|gpm|hp|kw|v|w)\b)\w+ )?(?:people|persons?|residents|occupants|inhabitants|souls|guests|campers|ppl|pers|heads? in the house|folks|pensioners|pupils|students|patients|staff|workers|hikers|monks|nuns|teachers|visitors|tourists|alpinists|climbers|walkers|pilgrims|clients|persons of service|lodgers|tenants|leaders|wardens|instructors|supervisors|carers|nurses|volunteers|mouths|trampers|skiers|scouts|cubs|inmates|soldiers|guys|hunters|lads|ladies|kids and (?:teachers|staff|adults)|children and (?:teachers|staff|adults)|pupils and (?:teachers|staff))\b)"
)

_PEOPLE_IS = re.compile(
    rf"\b(?:people|persons|occupants|residents|household|ppl|users|number of people)(?: in (?:the )?(?:house|household)| living here| \([^)\n]{{0,20}}\))? *[:=-]+ *(?:about |ca\.? ?)?({FEW})(?: ?(?:-|to) ?(\d+))?(?![\w-])(?! (?:shower|sink|toilet|tap|trough|hose|house|family|adult|kid|child|grown|\+|and \d))|(?:^|\n)[ *-]*(?:people|persons|occupants|residents|users) +(\d+)(?= *(?:$|[\n,;.(+]))"
)

_WE_ARE = re.compile(
    rf"\b(?:we are|we're)(?: just| only| about| in total| in all| now)? (?:the )?({FEW})(?: of us)?(?= (?:of us|in (?:the |our )?(?:house|cabin|family|home)|living|who live|at the house|at home|here|and (?:each|every|use|we|have|live|all))\b| ?[,.;)](?!\d))|\b(?:there are|there's|there is|its|it's)(?: just| only| about)? (?:the )?({FEW})(?: of us)?(?= (?:of us|in (?:the |our )?(?:house|cabin|family)|living|who live)\b)|\b(?:and|plus|with|for) us ({FEW})(?= ?[.,;)\n])"
)

_BRETHREN = re.compile(
    rf"(?<!my )(?<!his )(?<!her )(?<![\w¤-])({FEW}) (?:brothers|sisters|soldiers|boarders|apprentices|interns|rangers|scouts|refugees)(?= (?:live|drink|sleep|eat|stay|use|wash|are here|in (?:the|our))\b)"
)
_STAFF = re.compile(
    r"\b(?:staff|teachers|workers|volunteers|helpers|adults|leaders|wardens|instructors|supervisors|carers|nurses)$"
)
_WITH_STAFF = re.compile(
    rf"(?<![\w¤-])({FEW}) (?:children|kids|boys|girls|scouts|cubs|residents|boarders|guests|pupils|campers|students|patients|visitors|learners|clients)(?:,| and| plus| &)(?: about)? $"
)
_SCHOOL = re.compile(r"\b(?:school|kindergarten|orphanage|nursery|cr[eè]che|day ?care)\b")
_CHILDREN = re.compile(
    rf"(?<![\w¤-])({FEW}) (?:school ?)?(?:children|kids|boys|girls|learners|orphans)\b(?! and)()"
)
_BEHIND = re.compile(
    rf"(?:^|[.,;\n] ?)(?:we )?(?:persons|people|guests|residents|pupils|inhabitants)(?: (?:live|living|are|is|up to|max|maximum|about|here|there|in (?:the )?house|in total))* ({FEW})(?= ?(?:[.,;\n]|$))()"
)

_KINDS = re.compile(
    rf"(?<![\w¤-])({FEW}|an?|our)(?: (?:small|little|young|grown|teenage|big))? (adults?|kids?|children|child|teen(?:ager)?s?|grown[ -]?ups?|bab(?:y|ies)|toddlers?|grandparents|boys|girls|daughters?|sons?)\b"
)

_TWO = re.compile(
    r"\b(?:live (?:here |there )?with my (?:wife|husband|partner|girlfriend|boyfriend)\b(?!,? (?:and|plus|our|\+|&|with))|(?:just|only) (?:the )?two of us|\bus two\b|\bthe pair of us\b|my (?:wife|husband|partner|girlfriend|boyfriend|spouse) and (?:i|me|myself)|(?:just|only) me and (?:her|him)\b(?! (?:dogs?|cats?|horses?|goats?))|(?:just|only) me and my (?!dogs?|cats?|horses?|goats?|animals|garden|neighbou?rs?|two|three|four|\d)[a-z]+(?=[ ,.]*(?:here|live|in the|$|[.,;\n]))|(?:just )?(?:me|i|myself) and (?:my|the) (?:wife|husband|partner|girlfriend|boyfriend|spouse|missus))\b"
)

_VISIT = re.compile(
    r"\b(?:guests?|visitors?|weekends?|summer|sometimes|occasionally|when|holidays|campers|tents|august|july|up to|visit|staying over|more)\b"
)

_OTHERS = re.compile(
    r"\b(?:(?:made|meant|designed|sized|built|enough|good|suited|rated) for|took)(?: about)? $"
)
_DID = re.compile(
    r" \W?(?:told|said|say|helped|dug|help|came|to lift|to carry|built|tried|recommend)\b"
)
_SOMETIMES = re.compile(rf",? (?:and |but )?(?:sometimes|at times)(?: in [a-z]+)? ({FEW})(?![\w-])")
_UP_TO = re.compile(
    r"\b(?:up to|sometimes|occasionally|now and then|in (?:summer|august|july|winter)|weekends?)(?: [a-z]+){0,3} $"
)

_ALONE = re.compile(
    r"\b(?:i(?:'m| am) alone|(?:just|only) me(?! and (?!(?:the|my|our|an?|\d+|two|three|four|some|several) (?:\w+ )?(?:dogs?|cats?|goats|hens|chickens|horses?)\b)| &| \+| plus|,? my)|i live alone|by myself|on my own|living alone|(?:she|he) is (?:all )?(?:alone|on (?:her|his) own|by (?:her|him)self)|lives (?:there |here )?(?:alone|by (?:her|him)self|on (?:her|his) own)|(?:she|he) lives alone|single person|one person|1 person)\b"
)

_TERM = re.compile(
    rf"(?<![\w¤-])(?:me|myself|i\b(?! (?:have|am|want|need|think|would|was|use|live|do))|(?:my|the|our|his|her|their|a|an) (?:shepherd|couple|widow|farmer|caretaker|tenant|wife|husband|partner|girlfriend|boyfriend|spouse|missus|(?:(?:small|little|young|elderly|old|baby|teenage|new) )?(?:daughter|son|boy|girl|mother|father)|mother|father|mum|mom|dad|parents|grandparents|in-laws|(?:mother|father|daughter|son|sister|brother)[ -]in[ -]law|grandmother|grandfather|son|daughter|baby|boy|girl|brother|sister)"
    rf"|(?:husband|wife|partner|missus)|(?:his|her|their) (?:mom|mum|mother|dad|father)|(?:daughter|son)[ -]in[ -]law|(?:(?:our|my|the|his|her|their) )?(?P<n>{FEW}|an?|our)(?: (?:small|little|young|grown|teenage|big|adult))? (?:adults?|kids?|children|child|teen(?:ager)?s?|grown[ -]?ups?|bab(?:y|ies)|toddlers?|grandparents|grandchildren|grandkids|boys?|girls?|daughters?|sons?|parents|oldies))(?!['\w])"
)

_PARTY = re.compile(
    rf"{_TERM.pattern.replace('(?P<n>', '(?:')}(?: ?(?:,|and|&|\+|plus|with|, and|, plus|,? ?and also) ?(?:{_TERM.pattern.replace('(?P<n>', '(?:')}))+"
)


def people(low: str) -> list[Counted]:
    """How many people live there, each way it is said."""
    if re.search(
        r"\b(?:nobody|no one) (?:lives|is living|sleeps) (?:here|there|on (?:the )?site)\b", low
    ):
        return []
    both = enquiry_household.summed(low)
    total = [both] if both else enquiry_crowd.summed(low) or _total(low) or told_together(low)
    if total:
        return total
    party, numbered = _household(low, _party(low)), _numbered(low)
    if party is None:
        return numbered
    apart = [
        one
        for one in numbered
        if not one.vague
        and all(one.end <= o.start or o.end <= one.start for o in party)
        and not any(one.count == o.count and 0 <= o.start - one.end < 4 for o in party)
    ]
    found = (
        [*party, *apart]
        if party
        else numbered or _kinds(low) or enquiry_crowd.crowd(low) or _few(low) or _other(low)
    )
    return [one for one in found if not _FOR_EACH.search(low[max(0, one.start - 45) : one.start])]


def _household(low: str, party: list[Counted]) -> list[Counted] | None:
    """The party, or a list of others that holds it; None where some of it have no number."""
    one, unknown = enquiry_household.listed(low)
    party = [each for each in party if not enquiry_household.only_did(low, each)]
    if unknown:
        return None
    wider = one and (not party or one.start < party[0].start or one.end > party[0].end)
    return [one] if one and wider else party


def _other(low: str) -> list[Counted]:
    one = enquiry_household.counted(low)
    return [one] if one else []


_FOR_EACH = re.compile(  # of one house, and nobody adds them up here
    r"\b(?:each|every) (?:house|household|family|flat|cabin|unit|room|cottage|tent|pitch|apartment)\b[^.;\n]{0,18}$"
)


_WHOLE = (
    re.compile(
        rf"\ball (?:of us |the )?{FEW}[ ,.-]+(?:(?:well|no|sorry|actually|or rather|make that)[ ,.-]+)+(?:it's |we're |we are )?({FEW})(?= of us| people| persons)"
    ),
    re.compile(
        rf"\b(?:only|just) (?:us|we) ({FEW})(?: of us)?(?= (?:use|drink|live|draw|are|have)\b)"
    ),
    re.compile(
        rf"\bwe are {FEW},? (?:and |but )?(?:together )?with (?:my|our|the) [a-z]+(?:[ -]in[ -]law)? (?:we are )?({FEW})(?= ?(?:[.,;!\n]|$))"
    ),
    re.compile(
        rf"\b(?:of us|people|persons|we are|we're|guests)\b[^.;\n]{{0,60}}\b(?:normally|usually|otherwise|mostly|most of the (?:time|year)|the rest of the (?:time|year)|day to day),? (?:it is |it's |we are |we're |there are |just |only )*({FEW})(?: of us)?(?= ?(?:[.,;!)\n]|$))"
    ),
    re.compile(
        rf"\b(?:so|that makes|which makes|makes|making|in total|in all|altogether|total of)(?: it)?,? (?:we are |we're |there are |there's |that's |about )?({FEW}) "
        r"(?:of us|people|persons|souls|heads|in all|in total|altogether)\b(?! (?:at|in) the (?:weekend|summer))"
    ),
    re.compile(
        rf"(?<![\w¤-])({FEW}) (?:of us|people|persons|souls|heads) (?:in all|in total|altogether|all told|all together)\b"
    ),
    re.compile(rf", ({FEW}) (?:in all|altogether|all told|all together)(?= ?[.,;!\n]|$)"),
    re.compile(rf"\bwe are ({FEW}) (?:in all|in total|altogether)\b"),
    re.compile(
        rf"(?:^|[.\n!?] *|\b(?:we are|we're|there are|there's) )(?:just |only )?({FEW}) (?:of us )?in (?:the|our) (?:house|household|home|family)(?= ?(?:[.;!\n]|$))"
    ),
    re.compile(
        rf"\b(?:home|back|in|again|here),? so (?:we are |we're |now |it's )?({FEW})(?: of us)?(?= ?(?:[.;!\n]|$))"
    ),
    re.compile(
        rf"\b(?:me|us|i|apiece|each|kids|children|boys|girls|son|daughter|wife|husband),? so ({FEW})(?= ?(?:[.;!\n]|$))"
    ),
)


_MONTHS = re.compile(r"\bmonths?\b[^.;\n]*$")


def _total(low: str) -> list[Counted]:
    """ "so four people", "five in the house": the sum that somebody says wins over its parts."""
    for pattern in _WHOLE:
        for match in pattern.finditer(low):
            number = value(match[1])[0]
            if _MONTHS.search(low[max(0, match.start() - 45) : match.start()]):
                continue
            if number == int(number) and 0 < number <= 500:
                return [Counted("use.people", number, match.start(1), match.end())]
    return []


def _amount(term: re.Match[str]) -> float:
    """How many a term of a party is: a couple, and parents, are two."""
    if term["n"] and term["n"] not in {"a", "an", "our"}:
        return value(term["n"])[0]
    return 2.0 if re.search(r"couple|parents$|oldies$|in-laws$", term.group()) else 1.0


_I_WITH = re.compile(r"\bi (?:live|stay|am living|am|have|rent|own)\b[^.;\n]{0,50}\bwith $")


def _party(low: str) -> list[Counted]:
    """ "me, my wife and three kids", added up."""
    for match in _PARTY.finditer(low):
        if re.search(r"[a-z][,(] ?$|\band $", low[max(0, match.start() - 6) : match.start()]):
            continue  # somebody stands before, whom nobody here knows
        if not re.search(
            r"[a-z]{2}", re.sub(r"\b(?:myself|me|i|and|also|plus|with)\b", "", match.group())
        ):
            continue  # "me, I" is one that speaks
        total = sum(_amount(one) for one in _TERM.finditer(low, match.start(), match.end()))
        total += bool(_I_WITH.search(low, max(0, match.start() - 60), match.start()))
        if total == int(total):
            total += _children(low, match)
            return [Counted("use.people", total, match.start(), match.end())]
    return []


_HAVE = re.compile(
    rf"\b(?:we|i)(?: also)? have (?P<n>an?|{FEW}) (?:(?:small|little|young|teenage|grown) )?(?:kids?|children|child|boys|girls|sons?|daughters?|bab(?:y|ies)|toddlers?|teenagers?)\b(?!,? (?:who|that|away|both|grown|moved|gone|all|in (?:town|the city)))"
)
_CHILD = re.compile(r"kid|child|boy|girl|son|daughter|bab|toddler|teen|adult|parents")


def _children(low: str, match: re.Match[str]) -> float:
    """Children of a couple, which another clause tells: "my wife and I …, we have two kids"."""
    have = None if _CHILD.search(match.group()) else _HAVE.search(low)
    if have is None:
        return 0.0
    return 1.0 if have["n"] in {"a", "an"} else value(have["n"])[0]


_NOT_FED = re.compile(  # who only helped, and who has water from elsewhere
    _DID.pattern
    + r"|,? (?:and|plus|with) (?:us|ourselves|the owners?)\b(?! (?:two|three|four|five|six|\d|both))"
    + r"|,? but (?:they|we|all of us|those|that)(?:'re| are|'s| is| have| get)?(?: all)? (?:on )?(?:the )?(?:town|city|mains|municipal|public|village|council) (?:water|supply|mains)\b"
)
_PLUS = re.compile(
    rf"(?<=of us)(?: and| n| plus| \+| &| and also|(?: together)? with) (?P<who>{_TERM.pattern.replace('(?P<n>', '(?:')})(?! (?:on|at|in the summer|sometimes|visits?|comes?|stays?|who)\b)"
)
_EACH = re.compile(r" (?:each|apiece|per (?:cabin|house|hut|cottage|flat|unit|tent|room))\b")
_HOMES = re.compile(
    rf"(?<![\w¤-])({FEW}) (?:\w+ )?(?:cabins|houses|units|cottages|bungalows|yurts|huts|homes|apartments|flats|lodges|chalets|tents|villas|pods|rooms|families)\b[^.;\n]*$"
)


def _numbered(low: str) -> list[Counted]:
    """ "a family of four", "5 people", "People: 4-6"; guests count where no others are told."""
    found: list[Counted] = []
    school = (_CHILDREN,) if _SCHOOL.search(low) else ()
    for pattern in (_FAMILY, _OF_US, _BRETHREN, _PEOPLE_IS, _WE_ARE, _BEHIND, *school):
        for match in pattern.finditer(low):
            number = value(next((one for one in match.groups() if one), ""))[0]
            one = pattern in {_WE_ARE, _BEHIND, _CHILDREN}
            ranged = match[2] if not one and (match.lastindex or 0) > 1 else None
            high = value(ranged)[0] if ranged else number
            more = None if ranged else _SOMETIMES.match(low, match.end())
            high = value(more[1])[0] if more else high
            after = re.split(r"[.;\n]|, | and | plus ", low[match.end() : match.end() + 40])[0]
            before = low[max(0, match.start() - 30) : match.start()]
            guests = bool(_VISIT.search(after) or _UP_TO.search(before))
            home = re.match(r" at home\b", low[match.end() :]) and "of us" not in match.group()
            if home and len(found) + len(list(pattern.finditer(low))) > 1:
                continue  # at home, and not where the water is asked about
            more_of = _WITH_STAFF.search(before) if _STAFF.search(match.group()) else None
            if more_of:
                number, high = number + value(more_of[1])[0], high + value(more_of[1])[0]
            plus = _PLUS.match(low, match.end()) if pattern is _OF_US else None
            if plus:
                extra = sum(_amount(one) for one in _TERM.finditer(low, *plus.span("who")))
                number, high = number + extra, high + extra
            end = plus.end("who") if plus else match.end()
            if _OTHERS.search(before) or _NOT_FED.match(low, match.end()):
                continue
            if _EACH.match(low, match.end()):
                homes = _HOMES.search(low[max(0, match.start() - 60) : match.start()])
                if homes is None:
                    continue
                number, high = number * value(homes[1])[0], high * value(homes[1])[0]
            if more_of:
                found = [one for one in found if one.end < match.start() - 12]
            again = any(o.start < match.end() and match.start() < o.end for o in found)
            if number == int(number) and 0 < number <= 500 and not again:
                found.append(Counted("use.people", number, match.start(), end, False, guests, high))
    return found


def _kinds(low: str) -> list[Counted]:
    """ "two adults and three children"; children alone say nothing of the others."""
    kinds = list(_KINDS.finditer(low))
    if not kinds:
        return []
    two = _TWO.search(low)
    total = sum(1.0 if one[1] in {"a", "an", "our"} else value(one[1])[0] for one in kinds)
    adults = any(one[2].startswith(("adult", "grown", "grandparents")) for one in kinds)
    near = all(b.start() - a.end() < 30 for a, b in zip(kinds, kinds[1:], strict=False))
    if not near or not (adults or two):
        return []
    if adults or two is None:
        return [Counted("use.people", total, kinds[0].start(), kinds[-1].end())]
    start, end = min(kinds[0].start(), two.start()), max(kinds[-1].end(), two.end())
    return [Counted("use.people", total + 2, start, end)]


def _few(low: str) -> list[Counted]:
    if _KINDS.search(low):
        return []
    for pattern, number in ((_TWO, 2.0), (_ALONE, 1.0)):
        if alone := pattern.search(low):
            return [Counted("use.people", number, alone.start(), alone.end())]
    return []
