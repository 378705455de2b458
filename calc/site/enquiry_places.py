"""Which place a height or a length is told of: the nouns before and after it."""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.site import enquiry_words as words

_NOUNS = (
    ("PTANK", words.PRESSURE_TANK),
    ("STORE", words.STORE),
    ("ABOVE", words.ABOVE),
    ("WATER", re.compile(r"\b(?:water (?:level|table|surface|line)|static(?: water)? level|static level|static|surface of the water|swl|standing water|water)\b(?! (?:pump|tank|line|pipe|supply|system|heater|softener|pressure|meter|trough|use|board|association|bill|company|is (?:required|needed|wanted|used|piped|brought|taken|drawn|delivered|carried)|runs|flows|gets|a day|per|for|from|to|up|house|catchment|source|comes|is pumped))")),
    ("PUMP", re.compile(r"\b(?<!\bwe )(?<!\bi )(?<!they )(?<!will )(?<!must )(?:pump ?-?(?:house|shed|hut|room|site|box|pit)?s?|jet pump|submersible)\b")),
    ("TANK", words.TANK),
    ("SUCTION", re.compile(r"\b(?:suction|intake (?:pipe|line|hose))\b")),
    ("PANELS", re.compile(r"\b(?:panels?|solar array|array|modules?)\b")),
    ("WELL", re.compile(r"\b(?:wells?|well ?heads?|bore ?holes?|bore|sand ?point|hole|(?:planned|proposed|drilling|best|chosen) (?:spot|site|location))\b")),
    ("SPRING", re.compile(r"\b(?:springs?|seep)\b(?! (?:time|clean|loaded))")),
    ("CREEK", re.compile(r"\b(?:creek|stream|brook|river|burn|beck|pond|dam|lake|intake|source)\b")),
    ("HOUSE", re.compile(
        r"\b(?:house|home|homestead|cabins?|cottage|barn|yurt|shack|bach|garden|trough|paddock|field|orchard|building|kitchen|bathroom|wash-?house|lodge|shop|trailer|taps?|faucet|greenhouse"
        r"|shower|shower head|lawn|tubs?|faucets|trailer|caravan|corral|dorms?|dormitory|hall|workshop|chapel|dairy|parlou?r|nursery|summer ?house|tent|bathhouse|laundry|terrace|top tap|spigot|ranch house|farmhouse|homesite|dwelling|hut|chalet|bungalow|tiny house|place(?! (?:where|for|to))|camp|stable|shed|farm|poly ?tunnel|corral|beds|vineyard|pasture|villa|studio|bathhouse"
        r"|(?:bunk|guest|wash|tea|boat|club|ranch|glass|hen|chicken|milk|out|coach|school|play|sugar|cook)[ -]?house|hydrants?|standpipes?|steading|bunkhouse|byre|upstairs bath|bath|bedrooms?|vans?|pitch(?:es)?|cook shack|dining hall"
        r"|vines|olives|rooms|highest|pastures?|troughs|yards?|patch|planters?|plots?|hut|huts|chalets?|meadow|houses|cabins|clinic|school|guest ?house|main house|lodge|tower|toilets?|sinks?|basement|attic|top outlet|highest outlet|highest tap|top floor|us)\b")),
)  # fmt: skip
SOURCES = frozenset({"WELL", "SPRING", "CREEK"})
_REL = re.compile(
    r"^[ ,]*(?:(?:of )?(?:elevation |height |vertical |vertically |rise |climb |in height |in elevation |straight |further |directly )*)"
    r"(?P<how>above(?! ground)|below|higher(?: up)? than|lower(?: down)? than|deeper than|deeper|uphill (?:of|from)|downhill (?:of|from)|up (?:above|from)|down from|over(?= (?:the|our|my|[a-z]+'s|us|it|water|pump|house|well|spring|creek)\b)|beneath|under(?= (?:the|our|my)\b)|higher|lower)\b"
    r"(?P<rest>[^.;\n]{0,60})"
)
_DOWN = re.compile(r"^(?:below|lower|deeper|downhill|down|beneath|under)")
_DOWNS = re.compile(
    r"\b(?:drop(?:s|ping)?|falls?|falling|downhill|lower|deeper|below|descends?|down)\b"
)


# "from the house": a place that a sentence names, and does not tell of
_OBJECT = re.compile(
    r"\b(?:from|to|at|in|into|of|by|between|above|below|near|behind|beside|with|for|on|over|under|than) (?:(?:the|our|my|a|an|its|that|this) (?:(?!is\b|sits\b|stands\b|lies\b|and\b|but\b)[a-z]+ (?!behind\b|beside\b|near\b|above\b|below\b|at\b|in\b|on\b|of\b|to\b|from\b|by\b|over\b|under\b))?"
    r"(?!is\b|are\b|sits\b|stands\b|lies\b|and\b|but\b|which\b)[a-z]+\b|(?:house|cabin|pump|well|spring|creek|tank|garden|barn|stream|pond|cistern|home|river|borehole|pumphouse|cottage|wellhead|trough|lake)\b)"
)


@dataclass(frozen=True)
class Between:
    """What a length lies between: nouns before (nearest) and after, and how they stand."""

    before: str
    after: str
    how: str  # "above", "below", ""


def noun(said: str, last: bool = True) -> str:
    """The last (or first) of the places named in some words; "" where none is."""
    best, name, size = (-1, "", 0) if last else (10**6, "", 0)
    for key, pattern in _NOUNS:
        for match in pattern.finditer(said):
            at = match.end() if last else match.start()
            better = at > best if last else at < best
            if better or (at == best and len(match.group()) > size):
                best, name, size = at, key, len(match.group())
    return name


def between(left: str, right: str, whole_left: str, subject: str) -> Between:
    """left, whole_left: words before the number, back to the last number and to the sentence's
    beginning; right: after it; subject: of the sentence before."""
    found = _REL.match(right)
    before = (
        _next_to(whole_left) or _antecedent(whole_left) or _subject(left) or _subject(whole_left)
    )
    if re.search(r"\b(?:hangs?|hung|hanging|lowered|suspended)\b", left[-45:]):
        before = "PUMP"
    if _ITS.match(whole_left):
        before = subject or before
    if not before:
        own = noun(left) or noun(whole_left)
        before = (subject or own) if _IT.match(whole_left) else (own or subject)
    if found is None:
        return Between(before, "", "")
    how = "below" if _DOWN.match(found["how"]) else "above"
    if found["how"] in {"higher", "lower"} and not _THAN.match(found["rest"]):
        return Between(before, "", how)  # "30 ft higher" stands alone
    rest = re.split(r"\b(?:and|but|so|then|which|with|,)\b|,", found["rest"])[0]
    return Between(before, noun(rest, last=False) or _pronoun(rest, before, whole_left), how)


_THAN = re.compile(r"[^,.;]{0,25}\b(?:than|above|over|below|from)\b")
_ITS = re.compile(r"[\s,-]*(?:and )?its\b")
_WHOSE = re.compile(
    r"\b(?:whose|its|the) (?:outlet|bottom|base|foot|floor|underside|valve|outlet pipe) (?:is|lies|sits|stands|being)(?: (?:about|roughly|some))? ?$"
)
_IT = re.compile(r"[\s,-]*(?:and |so |but )?(?:it|they|that|this|these|those)\b")
_WHICH = re.compile(
    r"\b(?:that|which)(?: (?:is|runs|flows|sits|stands|lies|are|stand|stays|has been put|is placed|is situated|situated|located|hangs))+"
    r"(?: (?:about|roughly|some|placed|situated|located|around))*(?: (?:on|in|at|up|up on) (?:a|an|the|our) (?:[a-z]+ ){1,2})?(?:about |roughly |some )? ?$"
)


_ONWARD = re.compile(
    r"\b(?P<place>[a-z]+),? (?:which|that|it)(?:'s| (?:is|sits|stands|lies))\b[^.;\n]{0,40}\b(?:away|off|distant|from here) (?:and|but) (?:it'?s |is )?(?:about |some |roughly |maybe )*$"
    r"|\b(?:run|bring|get|pump|push|send|carry|take|lift|feed|pipe) (?:it |that |the water |water )?(?:up |over |out |down )?to (?:the |our |my |a )?(?P<goal>[a-z]+(?: [a-z]+)?),? (?:[^.;\n]{0,40}\b(?:away|off|distant|from here) (?:and|but) )?(?:(?:which|that) is |about |some |roughly |maybe )*$"
)


_CLOSE = re.compile(
    r"(?:^|(?P<last>\b[a-z']+) )(?:the |our |my )?(?P<who>[a-z-]+) (?:is|sits|stands|lies|'s)(?: (?:about|roughly|only|some|maybe|around|just))* ?$"
)
_PREPOSITIONS = frozenset(
    [
        "above",
        "below",
        "over",
        "under",
        "from",
        "to",
        "of",
        "at",
        "near",
        "behind",
        "beside",
        "by",
        "in",
        "on",
        "between",
        "with",
        "for",
        "and",
        "that",
        "which",
        "than",
    ]
)


def _next_to(whole_left: str) -> str:
    """The place just before "is": of "spring is down the hill cabin is" the cabin."""
    close = _CLOSE.search(whole_left[-50:])
    if close is None or close["last"] in _PREPOSITIONS or not noun(close["who"]):
        return ""
    name = noun(f"{close['last'] or ''} {close['who']}", last=False)  # a pump shed is the pump's
    return name if name in {"HOUSE", "SPRING", "CREEK"} else ""


def _antecedent(whole_left: str) -> str:
    """What "that is" just before a number belongs to: the last place that was named."""
    onward = _ONWARD.search(whole_left[-120:])
    if onward and (name := noun(onward["place"] or onward["goal"])):
        return name
    whose = _WHOSE.search(whole_left[-60:])
    tank = whose and (words.ABOVE.search(whole_left) or words.TANK.search(whole_left))
    if tank:
        return "ABOVE"
    found = _WHICH.search(whole_left[-60:])
    return (
        noun(whole_left[: len(whole_left) - len(whole_left[-60:]) + found.start()]) if found else ""
    )


def _pronoun(rest: str, before: str, whole_left: str) -> str:
    """What "it" or "that" after "above" stands for: the other place of the sentence."""
    if not re.match(r" *(?:it|that|this|there|them|the ground)\b", rest):
        return ""
    for key, pattern in _NOUNS:
        if key not in {before, "PANELS", "WATER"} and pattern.search(whole_left):
            return key
    return ""


def _subject(said: str) -> str:
    """The noun that words tell of: of "the tank above the house is" the first, else the last."""
    said = _OBJECT.sub(" ", said)
    clause = re.split(r"[,;:(]| and | but | so | then ", said)
    for part in reversed(clause):
        if name := _last_of(part):
            return name
        if name := noun(part):
            return name
    return ""


_VERB = re.compile(
    r"\b(?:is|are|sits?|stands?|stays?|lays?|lies|hangs?|was|have|has|'s|being|located)\b"
)


def _last_of(part: str) -> str:
    """The noun before the last verb that has one: people who speak on end no sentence."""
    verbs = list(_VERB.finditer(part))
    begins = [0, *(one.end() for one in verbs)]
    for begin, verb in reversed(list(zip(begins, verbs, strict=False))):
        name = noun(part[begin : verb.start()])
        if name and (name != "WATER" or "WATER" in _all(part)):
            return name
    return ""


def _all(said: str) -> set[str]:
    return {key for key, pattern in _NOUNS if pattern.search(said)}


def goes_down(left: str, right: str) -> bool:
    """Whether the words beside a height say that it falls."""
    return bool(_DOWNS.search(left[-45:]) or _DOWNS.search(right[:25]))
