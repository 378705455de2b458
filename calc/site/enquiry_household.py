"""Who lives in a house, told one by one: "me, my husband and the twins", "just Ada and me", "my
cousin and I", and by other counts: "sleeps 8", "a household of three", "two guests and us two".
"""

from __future__ import annotations

import re

from calc.site.enquiry_counts import Counted
from calc.site.enquiry_numbers import FEW, value

_ME = r"(?:just |only |also )?(?:me|i|myself|meself)(?! (?:have|am|want|need|think|would|was|use|do|can|had|will|could))"
_NEAR = r"wife|husband|hubby|partner|girlfriend|boyfriend|spouse|missus|fianc[eé]e?|other half|better half"
_YOUNG = r"child|kid|daughter|son|baby|toddler|teenager|teen|boy|girl|lad|lass|grandchild|grandkid|grandson|granddaughter|little one|bairn|youngster|infant|newborn"
_YOUNGS = r"children|kids|daughters|sons|babies|toddlers|teenagers|teens|boys|girls|lads|lasses|grandchildren|grandkids|grandsons|little ones|bairns|youngsters|infants"
_KIN = (
    r"(?:grand)?(?:mother|father|niece|nephew)|mum|mom|dad|mam|gran|granny|nan|grandma|grandpa|grandad|granddad|brother|sister|cousin|uncle|aunt(?:ie|y)?"
    r"|(?:mother|father|sister|brother|son|daughter)[ -]in[ -]law|friend|mate|buddy|lodger|tenant|boarder|room ?mate|house ?mate|flat ?mate|carer|nurse|helper"
    r"|au pair|shepherd|farm ?hand|apprentice|man|woman|lady|guest"
)
_KINS = r"brothers|sisters|cousins|friends|mates|lodgers|tenants|boarders|guests|helpers|farm ?hands|aunts|uncles|adults|grown-ups"
_TWO = r"twins|parents|grandparents|in-laws|couple|folks"
_DET = r"(?:my|the|our|his|her|their|a|an|one)"
_ADJ = r"(?:small|little|young|younger|grown|grown-up|teenage|big|old|elderly|older|elder|eldest|youngest|late-born|new|dear|good|best|adult)"
_SELF = r"herself|himself"
_TERM = re.compile(
    rf"(?P<me>{_ME})(?![\w'])|(?:{_DET} (?:{_ADJ} )?|(?:(?<![a-z] )|(?<=and )|(?<=have ))(?={_NEAR}|{_SELF}))(?P<near>{_NEAR}|{_SELF})(?![\w'])(?P<name> [a-z]{{2,12}}(?= and (?:i|me|myself)\b))?"
    rf"|{_DET} (?:{_ADJ} )?(?P<two>{_TWO})(?![\w'])|(?:{_DET} )?(?P<n>{FEW}) (?:{_ADJ} )?(?P<many>{_YOUNGS}|{_KINS})(?![\w'])"
    rf"|{_DET} (?:{_ADJ} )?(?P<young>{_YOUNG})(?![\w'-])|{_DET} (?:{_ADJ} )?(?P<kin>{_KIN})(?![\w'])"
    rf"|{_DET} (?:{_ADJ} )?(?P<some>{_YOUNGS}|{_KINS})(?![\w'])|(?P<called>(?!{_DET}\b|we\b|us\b|it\b|both\b|then\b|all\b|in\b|at\b|not\b|not\b|nobody\b)(?<=just |only )[a-z]{{3,12}}(?= and (?:me|i|myself)\b)|(?<=me and )(?!{_DET}\b)[a-z]{{3,12}}(?= ?(?:[.;,\n]|now\b|here\b|$))|(?<=me, )(?!{_DET}\b)[a-z]{{3,12}}(?= and (?:{_DET} )(?:{_KIN}|{_YOUNG})\b))"
)
_AND = re.compile(
    r" ?(?:, and also|, and|, plus|, with|,|and|&|\+|plus|with|and also) ?(?:now |then )?"
)
_HERE_BEFORE = re.compile(
    r"\b(?:just|only|there's|there is|there are|it's|it is|house are|house live|house is|home are|for|we have|living here|live here|lives here|household|household is|who live here)[ ,:]*$"
)
_HERE_AFTER = re.compile(
    r" (?:live|share|all live|living|in the (?:house|cabin|cottage)|here|now|at home)\b(?! (?:have|has))"
)
_ENDS = re.compile(r" ?(?:[.;!\n]|$)")
_BEGINS = re.compile(r"(?:^|[.;!?\n:] ?|\b(?:hello|hi), ?)$")
_BEASTS = re.compile(
    r"(?:dogs?|cats?|goats?|hens?|chickens|horses?|pony|ponies|donkeys?|pigs?|cows?|sheep|ducks?|animals|parrot|collie|terrier)\b"
)


def _amount(term: re.Match[str]) -> float | None:
    """How many one term is; None where nobody says how many."""
    if term["n"]:
        return value(term["n"])[0]
    if term["some"]:
        return None
    return 2.0 if term["two"] else 1.0


def _list_at(low: str, first: re.Match[str]) -> list[re.Match[str]]:
    """The terms of a list that begins with ``first``."""
    terms = [first]
    while True:
        joint = _AND.match(low, terms[-1].end())
        after = _TERM.match(low, joint.end()) if joint and joint.group().strip() else None
        if after is None:
            after = _TERM.match(low, terms[-1].end() + 1) if _bare(low, terms[-1]) else None
        if after is None:
            return terms
        terms.append(after)


def _bare(low: str, term: re.Match[str]) -> bool:
    """Whether a list goes on without a comma: "we have wife me 3 kids"."""
    return low[term.end() : term.end() + 1] == " " and bool(
        re.match(rf" (?:me {FEW} (?:{_YOUNGS})|{FEW} (?:{_YOUNGS}))\b", low[term.end() :][:40])
        or re.match(r" me\b", low[term.end() :][:4])
    )


def listed(low: str) -> tuple[Counted | None, bool]:
    """(those of a house named one by one, whether some were named without their number)."""
    at = 0
    while (first := _TERM.search(low, at)) is not None:
        terms = _list_at(low, first)
        at = terms[-1].end()
        if not any(one["me"] for one in terms) or not _whole(low, terms):
            continue
        alone = all(one["me"] for one in terms)
        if alone and not (len(terms) == 1 and _with_a_beast(low, terms[0])):
            continue
        if not _lives(low, terms):
            continue
        amounts = [_amount(one) for one in terms]
        if None in amounts:
            return None, True
        total = sum(one for one in amounts if one is not None)
        if total == int(total) and 0 < total < 30:
            return Counted("use.people", total, terms[0].start(), at), False
    return None, False


def _with_a_beast(low: str, me: re.Match[str]) -> bool:
    """ "it's me and the dog": one."""
    before = re.search(r"\b(?:it's|it is|just|only) $", low[max(0, me.start() - 8) : me.start()])
    own = me.group().startswith(("just", "only"))
    joint = re.match(r" (?:and|&|plus) (?:the|my|a|an|our) (?:old )?", low[me.end() :][:16])
    return bool((before or own) and joint and _BEASTS.match(low, me.end() + joint.end()))


def _whole(low: str, terms: list[re.Match[str]]) -> bool:
    """Whether nobody stands in the list whom no word here names."""
    before = low[max(0, terms[0].start() - 8) : terms[0].start()]
    if re.search(r"[a-z¤][,(] ?$|(?<!\w)(?:and|plus|&) $|¤ $", before) and not (
        terms[0]["me"] and before.endswith(", ")
    ):
        return False
    joint = re.match(
        r",? (?:and|plus|&) (?:the |my |our |a |an |two |three )?", low[terms[-1].end() :][:14]
    )
    if joint is None:
        return True
    after = low[terms[-1].end() + joint.end() :]
    return bool(
        _BEASTS.match(after)
        or re.match(r"(?:we|it|there|that|use|i|have|no)\b", after)
        or "," in joint.group()[:1]
    )


def _lives(low: str, terms: list[re.Match[str]]) -> bool:
    """Whether they live there, and did not only build something together."""
    start, end = terms[0].start(), terms[-1].end()
    if not any(one["kin"] or one["called"] or (one["near"] and one["name"]) for one in terms):
        return True
    before = low[max(0, start - 34) : start]
    lone = terms[0].group().startswith(("just ", "only "))
    if all(one["kin"] is None and one["called"] is None for one in terms):
        return True
    if lone or _HERE_BEFORE.search(before) or _HERE_AFTER.match(low, end):
        return True
    if any(one["near"] or one["young"] or one["many"] for one in terms):
        return not _DID.match(low, end)
    return bool((_BEGINS.search(before) or before.endswith(", ")) and _ENDS.match(low, end))


_DID = re.compile(
    r" (?:then |also |have |had |has |once |both |never )?(?:\w{3,}ed|built|dug|laid|put|ran|found|went|made|cut|bought|got|took|drew|tried|are (?:building|digging|laying|planning)|will|would|could|can)\b(?! (?:here|in the house|the house|on to|onto|into)\b)"
)


def only_did(low: str, party: Counted) -> bool:
    """Whether "my brother and I" only built something, and nobody says that they live there."""
    said = low[party.start : party.end]
    if not _DID.match(low, party.end):
        return False
    if not re.search(r"\b(?:me|i|myself)\b", said):
        return True
    near = re.search(rf"\b(?:{_NEAR}|{_YOUNG}|{_YOUNGS}|{_TWO})\b", said)
    return bool(re.search(rf"\b(?:{_KIN})\b", said)) and near is None


_NO = r"(?! ?(?:m|ft|km|l|hours?|hrs?|h|min(?:utes)?|miles?|met(?:re|er)s?|feet|yards?|years?|months?|weeks?|days?|kilomet(?:re|er)s?|acres?|hectares?|degrees?|litres?|gallons?|psi|bar|times?|farms|houses|families|households|cabins|percent|%)\b)"
_FOLK = r"(?:people|persons?|humans?|guests|pupils|students|children|kids|boys|girls|sisters|brothers|nuns|monks|women|men|pilgrims|campers|visitors|workers|staff|residents|members|patients|adults)"
_OTHER = r"(?:people|persons?|staff|workers|teachers|helpers|girls|boys|children|kids|adults|nurses|brothers|sisters|of us|us|wardens?|leaders|volunteers|guests|novices)"
_BOTH = (
    re.compile(rf"(?<![\w¤.,-])({FEW}) ?\+ ?({FEW}) (?:people|persons|ppl|adults|souls|residents)\b"),
    re.compile(rf"(?<![\w¤.,-])({FEW}) (?:[a-z]+ )?{_FOLK},? (?:and|plus|\+|&|with) (?:about )?({FEW}) (?:[a-z]+ )?{_OTHER}\b(?! (?:at the weekend|in summer|sometimes|visit))"),
    re.compile(rf"(?<![\w¤.,-])({FEW}) (?:[a-z]+ )?{_FOLK},? (?:and|plus|\+|&|with) us ({FEW})\b"),
    re.compile(rf"\b(?:guests|pupils|campers|visitors) (?:are|is|number)(?: at most| maximum| up to| max\.?| about)? ({FEW})[.,;] ?(?:and )?(?:there are )?(?:also )?(?:also |another )?({FEW}) (?:staff|workers|teachers|of us|helpers)\b"),
    re.compile(rf"\bso ({FEW}),? (?:and|plus|\+|&|with) (?:about |another )?({FEW}) (?:staff|of us|workers|helpers|teachers|wardens?)\b"),
)  # fmt: skip
_COUPLE_KIDS = re.compile(
    rf"(?:^|[.;:\n(] ?|\b(?:are|have|for|is|of|just) )(?:mum|mom|mam|husband|wife|parents)(?:,| and| n| &| \+) ?(?:dad|wife|husband|pa),? ?(?:and|n|&|plus|\+|with)? ?(?P<n>{FEW}) (?:(?:small|little|young) )?(?:{_YOUNGS})\b"
)
_ONE = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\bsleeps (?:up to |about |max(?:imum)? )?({FEW}){_NO}",
        rf"\b(?:max(?:imum|\.)?|number of) (?:guests|people|persons|campers|visitors)(?: is| are|:)? ({FEW}){_NO}",
        rf"\b(?:(?<!village )(?<!town )(?<!the )population|inhabitants|headcount|head count|souls|members|sleepers|dwellers)(?: is| are| of)? ?[:=]? ?({FEW}){_NO}",
        rf"(?:^|[;\n,(] ?)(?:people|persons|residents|occupants|users|guests)[,:]? ({FEW})(?= ?(?:[;\n.,)]|$))(?!, ?\d)",
        rf"(?<![\w¤.,-])({FEW})[ -](?:person|people|man|member)s? (?:household|family|house|home|crew|cabin|team)\b",
        rf"(?:^|[.;\n,] ?|\b(?:a|the|our|small|one) )(?:house|cottage|cabin|home|hut|household|flat) for ({FEW})(?: people| persons)?(?= ?(?:[.,;\n]|$))",
        rf"\b(?:convent|monastery|camp|group|community|commune|crew|team|bunk ?house|house|household|lodge)(?: is| of| has| gets| holds| houses| with)(?: about| up to)? ({FEW}) (?:members|sisters|brothers|nuns|monks|hands|men|women|souls|artists|friends|persons|humans|sleepers|lads|girls|boys)\b",
        rf"\bwe(?:'re| are)(?: just| only| all)? ({FEW}) (?!(?:more|less|better|big|hundred)\b)(?:[a-z]+ )?(?:women|men|artists|sisters|brothers|friends|pensioners|retirees|widows|farmers|students|humans|adults|souls|girls|boys|siblings|bachelors|old folk)\b",
        rf"(?<![\w¤.,-])({FEW}) (?:old |young |grown )?(?:humans|folk|sleepers|artists|retirees|widows|nuns|housemates|flatmates|siblings|bodies in the house)\b(?! (?:who|told|came|said))",
        rf"\b(?:workers|staff|people|persons|residents|inhabitants|monks|sisters|nuns|pupils|members|users) are(?: just| only| about| now)? ({FEW})(?= ?(?:[.,;\n]|$))",
        rf"\bmakes (?:us|it|that|a household of) ({FEW})(?: of us| people)?(?= ?(?:[.,;!\n]|$))",
        rf"\b(?:we are|we're) (?:now |only |just )?({FEW})(?= (?:and(?! (?:in|at|from|over) (?:\w+|the \w+) (?:the|we|with|there))|at|on|but|here|now|altogether|total|at present|in the (?:main |big |old )?(?:house|family|evening|home))\b| (?!people|persons|ppl)\w+ (?:and|but)\b){_NO}",
    )
)  # fmt: skip
_PAIR = re.compile(
    r"\bwe are both\b(?! (?:sure|happy|keen|worried|on|at work|out)\b)|\bmy man and (?:i|me)\b"
    rf"|\bi (?:live|stay|share the (?:house|place|cottage))(?: here| there| alone)? with (?:my|a|an|our) (?:{_ADJ} )?(?:{_KIN}|{_YOUNG})(?= ?(?:[.;,\n]|$|in the|here))(?!, (?:my|and|her|his|our|two|three)\b)"
)
_BY_SELF = re.compile(
    r"\b(?:and|she's|he's|is|lives) by (?:her|him)self\b(?= in| on| at| there| now|[.,;])"
)


def summed(low: str) -> Counted | None:
    """Two numbers of people in one breath, added up."""
    if couple := _COUPLE_KIDS.search(low):
        return _people(2.0 + value(couple["n"])[0], couple)
    for pattern in _BOTH:
        match = pattern.search(low)
        if match:
            return _people(sum(value(one)[0] for one in match.groups()), match)
    return None


def counted(low: str) -> Counted | None:
    """How many people there are by the words of ``_ONE``; two, or one, told without a number."""
    hits = [match for pattern in _ONE for match in pattern.finditer(low)]
    numbers = {value(match[1])[0] for match in hits}
    if len(numbers) == 1:
        return _people(numbers.pop(), hits[0])
    if numbers:
        return None  # "sleeps 12. We are 3": nobody says which
    if match := _PAIR.search(low):
        return _people(2.0, match)
    if match := _BY_SELF.search(low):
        return _people(1.0, match)
    return None


def _people(number: float, match: re.Match[str]) -> Counted | None:
    whole = number == int(number) and 0 < number <= 500
    return Counted("use.people", number, *match.span()) if whole else None
