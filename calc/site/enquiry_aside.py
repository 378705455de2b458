"""What a sentence tells of elsewhere, of an offer, a plate or a plan: spans that hold no fact.

A place is said to be another's by where it lies ("the farm across the road"), a number to be no
fact by who or what says it ("the leaflet shows", "the salesman swears").
"""

from __future__ import annotations

import re

THEIRS, MAYBE, PAST = "somebody else's", "only considered", "in the past"

_PLACE = r"(?:farms?|cabins?|houses?|places?|ranch(?:es)?|camp ?sites?|church|school|hotel|famil(?:y|ies)|folks|people|dairy|estate|lodge|neighbou?rs?|uncle|aunt|cousin|brother|sister|friend)"
_AWAY = r"(?:next door|over the (?:road|street)|across the (?:road|valley|river|creek|lake|street)|(?:down|up|along) the (?:road|valley|lane)|in the (?:next|other) (?:valley|village|bay)|downstream|upstream|(?:below|above) us|round the corner|over the hill)"
_THEIRS = re.compile(
    rf"\b(?:the|a|two|three|some|other|my|our) (?:[a-z]+ )?{_PLACE} (?:(?!is |are |was |were |sits |stands |lies )[a-z]+ )?{_AWAY}\b(?! (?:and|from) (?:us|me|we|i)\b)|\b(?:uncle|aunt|cousin) [a-z]+ {_AWAY}"
    rf"|\bthe other (?:cabin|house|cottage|hut|dwelling)s? (?:on|at|in) (?:the|this|our) (?:lot|land|site|property|farm|road)\b"
    r"|^(?:the |our |my )?neighbou?rs? (?:is|are) (?:drilling|digging|putting)\b|\b(?:found|hit|struck) water\b[^.;\n]{0,60}\bneighbou?rs?'|\b(?:well ?field|water works|water tower) of the (?:town|village|city)\b"
    r"|\b(?:a|one|some) (?:mate|friend|neighbou?r|cousin|colleague|uncle|relative)s? of (?:mine|ours)\b|\bwells (?:here|around here|in (?:this|the) (?:area|valley|district|village))\b"
    r"|\b(?:driveway|drive|access road|farm road|road in|fence|hedge) (?:is|runs|climbs|measures)\b"
    r"|\ban? (?:well|bore|bore ?hole) (?:about |some |only )?[\d.]+ ?(?:m|km|ft|feet|miles?|yards?|metres|meters) (?:from|away from|off) (?:us|here|me|our (?:place|house|land))\b"
)
_HERE = re.compile(
    r"\b(?:but|whereas|while|though)\b[^.\n]{0,12}\b(?:ours?|we|my|mine|i|us)\b|[,;-] ?(?:and )?(?:ours|mine|we|our|my)\b|\bours (?:is|has|gives)\b|\b(?:the|our) (?:pipe|line)\b"
)
_SALES = r"(?:sales ?m[ae]n|sales ?people|seller|dealer|shop(?: keeper)?|vendor|rep|estimate|quotation|catalogue|brochure|leaflet|advert|advertisement)"
_OFFERED = re.compile(
    rf"\b(?:toy(?:ed|ing)? with|(?:not sure|undecided|can'?t decide|haven'?t decided|torn) (?:yet )?(?:whether|between|about|on)\b|(?<!the )quotes? for|on the shopping list|in my basket|{_SALES} (?:swears|claims|says|said|insists|promises|shows|thinks|reckons|quoted|offers|offered)\b"
    r"|could go as (?:far|deep|high)|wants to (?:hang|set|lower) |will get (?:its|their) own\b|^(?:perhaps|maybe) [^.;\n]{0,40}\b(?:perhaps|maybe)\b|\b(?:our|my|the) dream (?:is|would be|was) |paid for (?:an?|the) |^maybe an? [^.;\n]{0,40}\bmaybe an?\b|(?:plan|drawing|map|design) on paper|(?:data|name|rating|type) ?plate (?:says|reads|gives|shows|has)|(?:label|sticker) on (?:it|the pump|the motor) (?:says|reads|gives|shows)"
    r"|pump (?:will|shall|is to|should|is going to) be (?:moved|put|shifted)|^could (?:an?|one|two|three|four|\d+) |^(?:google earth|the map) (?:says|gives|makes))"
)
_GOES_ON = re.compile(
    r"[;(]|, (?:but|though|yet|what|so|my|our|mine|ours)\b| but | so | what lies\b|\b(?:for now|at present|at the moment)\b"
)
_TILL = re.compile(
    r"\b(?:was|were|sat|stood|hung|had|ran|held|lay|gave|made)\b[^.;\n]{0,30}?\b(?:till|until) (?:the|last|this|we|it|a|recently|easter|christmas|spring|summer|autumn|winter)\b"
    r"|\bwhere there were\b[^.;\n]{0,25}?(?= there are| now\b|,)"
    r"|\bwas (?:only |just |about )?[\d.]+ ?(?:m|ft|feet|metres|meters) (?:deep|long|high|wide) when (?:we|i) (?:bought|came|moved|got|took)\b[^.;\n]{0,20}"
)
_SAID_BY = re.compile(
    r"\"[^\"\n]{4,120}\"[ ,]*(?:said|says|was what|wrote|is what) (?:the|a|my|our|one) (?:[a-z]+ )?(?:man|lady|guy|fellow|chap|clerk|dealer|plumber|driller|neighbou?r|salesman|shop|friend|brother|uncle|father|installer)\b"
)
_GONE_NEXT = re.compile(
    r"\s*(?:it|that|this|they|those|that one)(?: all)? (?:was|were|got|has been|have been|is|are)(?: since| now| all| long)? (?:taken out|sold|scrapped|stolen|given away|thrown out|cancelled|got rid of)\b"
)


def aside(low: str, sentences: tuple[tuple[int, int], ...]) -> list[tuple[int, int, str]]:
    """(start, end, why) of what is told of elsewhere, offered, planned, or gone by the next words."""
    found: list[tuple[int, int, str]] = []
    for at, (start, end) in enumerate(sentences):
        said = low[start:end]
        for pattern, on, why in ((_THEIRS, _HERE, THEIRS), (_OFFERED, _GOES_ON, MAYBE)):
            hit = pattern.search(said)
            if hit is not None:
                stop = on.search(said, hit.end())
                found.append((start + hit.start(), start + stop.start() if stop else end, why))
        for one in _TILL.finditer(said):
            found.append((start + one.start(), start + one.end(), PAST))
        for one in _SAID_BY.finditer(said):
            found.append((start + one.start(), start + one.end(), MAYBE))
        gone = _GONE_NEXT.match(said) if at else None
        if gone is not None:
            found.append((sentences[at - 1][0], start + gone.end(), PAST))
    return found
