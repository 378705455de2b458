"""What an enquiry tells of no place at all: what books say, what was once meant to be, what is only
wished or asked for; and of things that no water runs through."""

from __future__ import annotations

import re

GENERAL, MEANT, WISHED = "of places in general", "only planned, and not done", "only wished"
ELSEWHERE = "of another place, for another letter"

_BOOKS = re.compile(
    r"\b(?:(?:text|hand|guide|year)?books?|brochures?|leaflets?|magazines?|internet|web ?pages?|websites?|online|rules? of thumb|studies|study|statistics|wikipedia)\b"
    r"|\b(?:each|every) (?:household|house|family) (?:may|can|is allowed|gets|has a right)\b|\b(?:the|your|their|my|a) (?:table|chart|guide|guideline|manual|standard|code|norm|calculator|advert)s?(?: (?:of|for|to) (?:the|my|our|this) \w+)? (?:says?|gives?|lists?|states?|shows?|reckons?|allows?|recommends?|assumes?)\b"
    r"|\b(?:typical|average|ordinary|normal|usual) (?:\w+ )?(?:household|home|house|family|person|cow|goat|hen|farm|well|(?<!ordinary )(?<!normal )(?<!usual )shower|european|american)\b"
    r"|\b(?<!per )(?:(?:a|an|one|each|every) (?:\w+ )?(?:household|family|cow|goat|hen|horse|sheep|human)|(?:an?|one) (?:\w+ )?(?:person|adult|man)) (?:of \w+ )?(?:uses|needs|drinks|takes|consumes|wants|goes through)\b"
    r"|\b(?:people|folks|everybody|everyone) (?:say|says|tell|tells|reckon|reckons|claims?)\b|\b(?:everybody|everyone|most people|all others|others) (?:here |around here |nearby )?(?:gets?|has|have|finds?|hits?|drills?|uses?)\b|(?<!as )(?<!like )(?<!how )\byour (?:\w+ )?(?:sheet|page|site|tool|calculator|form|table|guide|result|programme|program)s?\b[^.;\n]{0,24}\b(?:says?|gives?|shows?|tells?|gets?)\b|\bin general\b|\bsupposedly\b|\bapparently\b"
)
_MEANT = re.compile(
    r"\b(?:(?:the|our|my|first|original|initial|old) (?:plan|idea|intention|thought) was|(?:first|old|early|earlier|original) (?:draft|sketch|plan|drawing|design|layout|idea)s?\b|(?:originally|first|once) (?:was |were )?(?:planned|built|meant|designed|sized|intended|laid out) for\b|(?:had|was|were) (?:once |first |originally )?(?:planned|intended|meant|going|supposed|hoping) to\b|had (?:planned|wanted|meant|hoped)\b"
    r"|(?:almost|nearly) (?:bought|put|drilled|dug|laid|went|chose)|\b(?:architect|engineer|designer|surveyor)s? (?:drew|draws|has drawn|had drawn|proposes?|proposed|sketched|foresees?)\b|\bon the drawings?\b|\b(?:figure|number|value|estimate|reading)\b[^.;\n]{0,40}\b(?:was|is|were) (?:nonsense|rubbish|made up|a guess|wrong(?! ?:))|(?:cancelled|dropped|abandoned|gave up) (?:the|that|this|our) (?:plan|idea|project))"
)
_WISHED = re.compile(
    r"\b(?:(?:i|we) wish (?:it|the|our|we|i|that|there|my)\b|if only\b|^(?:had|were|should) (?:we|i|it|there|the|our)\b|(?:i|we)(?:'d| would) (?:rather|prefer|sooner)\b(?! (?:have |it at |be at )?(?:¤|\d))|ideally,? (?:the|it|we|i|our)\b|would(?: \w+)? have (?:gone|been|had|dug|drilled|put|laid|run|given|cost|needed|meant|taken|reached)|would've\b|in (?:a|an ideal|a perfect) world\b"
    r"|(?:some|any)one (?:else )?(?:might|may|would)|with (?:a|the) new (?:pump|tank|one|system),? (?:it|we|i|you|that) (?:could|would|might|should)\b|(?:could|might) (?:one|some) ?day\b|(?:figured?|reckon(?:ed)?|thought|imagined?|guess(?:ed)?|suppose[d]?|believe)\b[^.;\n]{0,40}\b(?:would|should|might|ought to) (?:be|do|suit|fit|work|give)\b|let'?s say\b|assuming\b|in theory\b|theoretically\b|dream(?:s|ing|t)? of\b)"
)
_ASKED = (  # numbers that a question puts up, none of the writer's: "is 12 L/min a decent flow?"
    re.compile(
        r"^\s*(?:so |and |but |now |then )?(?:is|are|would|will|could|does|do|should|must|isn't|aren't) (?:a |an |about |only |some |say |just |even |around )*(?P<what>(?:\d|¤)[^?]*?)(?:\b(?:enough|sufficient|adequate|okay|ok|too \w+|plenty)\b[^?]*)?\?\s*$"
    ),
    re.compile(
        r"\b(?:enough|sufficient|too (?:small|thin|little|weak)|okay|ok|adequate|able|right|suitable|good) (?:for|to (?:give|carry|pass|deliver|supply|push)) (?:about |a flow of |around )?(?P<what>\d[\d.,]* ?(?:l\b|lit|lpm|gpm|gal|m[3]|psi|bar)[^?,]*)\?\s*$"
    ),
    re.compile(
        r"^\s*(?:so |and |but )?(?P<what>how (?:deep|high|far|big|large|long|strong|much|many) (?:should|must|can|could|may|would|does|do|is|are) (?:a|an|such a|one|you|people|most|wells|pumps|tanks|pipes|springs)\b[^?]*)\?\s*$"
    ),
    re.compile(
        r"^\s*(?:so |and |but )?(?P<what>(?:would|could|will) (?:an? )(?:pump|well|spring|tank|pipe|line|hose) (?:of|at|that|with)\b[^?]*)\?\s*$"
    ),
)
_EITHER = re.compile(  # "40 mm poly or 50?"
    r"^\s*(?:so |and )?(?P<what>\d[^?.,;]{0,25} or (?:a |an )?\d[^?.,;]{0,15})\?\s*$"
)
_APART = re.compile(
    r"\b(?:another|a different|a separate|some other) (?:time|letter|mail|e-?mail|message|story)\b|\bleave (?:that|it) (?:aside|out|for (?:now|later))\b|\b(?:is|are) not what (?:this|i|we|my)\b|\bnot (?:the )?(?:subject|point) (?:of this|here)\b"
)
_VERSION = re.compile(
    r"^\s*(?:a |an |or (?:a |an )?|maybe (?:a |an )?)?(?P<what>\d[^?.]{0,25}\b(?:version|pump|model|pipe|tank|one|line|hose|system))\?\s*$"
)
_LONG_AGO = re.compile(
    r"\b(?:many|some|several|a few|ten|twenty|thirty|\d+|few) (?:years?|decades?) (?:back|earlier|before|since)\b|\b(?:previous|former|earlier|last|prior) (?:people|owners?|tenants?|occupants?|family|couple|lot|lady|man|folk|folks|farmer)\b|[a-z\d¤]¤* (?:years? |decades? )?(?<=[¤s] )back,? (?:it|the|we|there|our)\b|\bback in (?:the day|my)\b|\bwhen (?:i|we) (?:was|were) (?:a )?(?:kids?|child(?:ren)?|boys?|girls?|young|small)\b|\bin (?:my|his|her) (?:grand)?(?:father|mother|dad|parents)'?s? (?:day|time)\b"
    r"|\b(?:has|have|had) (?:since |now )?been (?:taken out|removed|sold|scrapped|pulled out|dismantled|stolen|given away|thrown out|taken away|filled in|capped)\b|\b(?:broke|burnt|burned|froze|died|cracked|rotted|collapsed|fell apart) (?:last|in|two|three|years|long|for good)\b"
)
_GOES_ON = re.compile(
    r"\b(?:but|whereas|while|though|yet|however|now|today)\b[^.\n]{0,14}\b(?:ours?|we|my|mine|i|us|it|the|there)\b|[,;-] ?(?:ours|mine|we|our|my)\b|\b(?:now|today|nowadays|these days|at present|currently)\b"
)
_MACHINE = re.compile(
    r"\b(?:mower|tractor|car|cars|truck|lorry|fence|fencing|energi[sz]er|gate|boat|camper|caravan|motorhome|van|quad|(?:e-?)?bike|scooter|radio|laptop|phone|torch|lamps?|(?<!of the )(?<!of )(?<!the sun)(?<!sun)lights?|lighting|freezer|fridge|camera|weather station|alarm|router|shaver|drill|chain ?saw|wheelchair|pool|pond aerator|aquarium|sauna|bee ?hives?)(?:'s)?\b"
)


_FROM_IT = re.compile(  # what was taken out of a machine
    r"\b(?:left over|salvaged|taken|pulled|rescued|scavenged|recycled|out|bought)(?: out)? (?:from|of) (?:the|my|our|an?|his) (?:old |wrecked |scrapped )?[a-z-]+"
)


def supposed(said: str, start: int) -> list[tuple[int, int, str]]:
    """Spans of a sentence that tell of no place, or of one that is no more; ``start`` is where it
    begins in the letter."""
    found = [(start, start + len(said), ELSEWHERE)] if _APART.search(said) else []
    for why, pattern in ((GENERAL, _BOOKS), (MEANT, _MEANT), (WISHED, _WISHED)):
        match = pattern.search(said)
        if match is None:
            continue
        on = _GOES_ON.search(said, match.end())
        begin = 0 if why == GENERAL and on is None else match.start()
        found.append((start + begin, start + (on.start() if on else len(said)), why))
    return found


def asked(said: str, start: int) -> list[tuple[int, int]]:
    """Spans of a sentence that ask of things in general: "is 12 L/min a decent flow?"."""
    hits = (pattern.search(said) for pattern in (*_ASKED, _VERSION, _EITHER))
    return [(start + one.start("what"), start + one.end("what")) for one in hits if one]


_HOME = re.compile(
    r"\b(?:at home|back home|in town|in the city|at work)\b,? (?:we|i|there|it)\b.*?(?=\bbut\b|\bwhile\b|\bwhereas\b|[.;!?]|$)",
    re.S,
)
_ELSEWHERE = re.compile(
    r"\bat the (?:lake|cabin|cottage|camp|hut|summer ?house|weekend|farm|beach|mountain)\b|\bup here\b"
)


def at_home(low: str, said: str, start: int) -> list[tuple[int, int]]:
    """Spans of a sentence of the home of somebody whose letter is of another place."""
    found = [(start + one.start(), start + one.end()) for one in _HOME.finditer(said)]
    return found if found and _ELSEWHERE.search(low) else []


def long_ago(said: str) -> re.Match[str] | None:
    """The words that put a sentence in the past."""
    return _LONG_AGO.search(said)


def of_a_machine(low: str, start: int) -> bool:
    """Whether a battery or a panel is of something else than the water's supply."""
    begin = max(low.rfind(sign, 0, start) for sign in ".;?!\n") + 1
    said = re.split(r"[.;?!\n]", low[begin:], maxsplit=1)[0]
    said = _FROM_IT.sub(" ", said)
    return bool(_MACHINE.search(said)) and not re.search(r"\b(?:pumps?|bank|inverter)\b", said)


# What is taken back afterwards ------------------------------------------------------------------

_THAT_WAS = re.compile(
    r"\bbut (?:at|on|for) (?:the|my|our) (?:neigh?bou?r|brother|sister|friend|cousin|uncle|aunt)s?'s?\b(?= ?[.,;\n]|$)|\b(?:that|those|these figures|the figures|which) (?:was|were|is|are)(?: for| of| from| actually| really)* (?:the|my|our|his|her) (?:\w+ )?(?:neigh?bou?r|brother|sister|friend|cousin|uncle|aunt|in-?law|father|mother|parent|dad|mum|mom|colleague|grandfather|son|daughter|folk)(?:[ -]in[ -]law)?s?'?s?\b(?! (?:idea|guess|estimate|measure))(?![^.;\n]{0,30}\b(?:before|until|now)\b)"
)
_FORGET = re.compile(
    r"\b(?:forget|ignore|skip|disregard|never ?mind|scrap) (?:about )?(?:that|it|those|this|them)(?: one| bit| part| lot)?(?= ?[,.;:)!\n]|$| (?:please|it is|it's|we|i)\b)"
)


def taken_back(low: str, sentences: tuple[tuple[int, int], ...]) -> list[tuple[int, int]]:
    """Spans of what the next words take back: "a 90 ft well, that was my dad's", "forget that"."""
    found = []
    for index, (start, end) in enumerate(sentences):
        hit = _THAT_WAS.search(low, start, end) or _FORGET.search(low, start, end)
        if hit is None:
            continue
        opened = low.rfind("(", start, hit.start())
        if opened >= 0 and ")" not in low[opened : hit.start()]:
            found.append((opened, hit.end()))
        elif any(sign.isdigit() for sign in low[start : hit.start()]):
            found.append((start, hit.end()))
        elif index and hit.start() - start < _SHORT:
            found.append((sentences[index - 1][0], hit.end()))
    return found


_SHORT = 30  # characters up to which a sentence speaks of the one before; our choice

# What is asked for --------------------------------------------------------------------------------

_REQUEST = re.compile(
    r"\b(?:please|kindly|could you|can you|would you|will you|do you)(?: also)? (?:\w+ )?(?:size|quote|send|offer|suggest|recommend|price|supply|advise|sell|stock|have|do|make|ship|propose)\b"
    r"|\b(?:(?:i am|i'm|we are|we're) after|looking for|looking at|in the market for|shopping for|(?:want|like|hope|wish) to (?:buy|get|order|purchase)|(?:quote|quotation|price|prices|offer|estimate)(?: me| us)? (?:for|of|on)|the cost of|how much (?:is|for|would|are|does)|would (?:i|we) need)\b"
)
_END = re.compile(r"[.;!?\n]")
_OURS = re.compile(r"\b(?:our|my|the|existing|present|old|we have|i have|we've got|runs? on)\b")
_WH = re.compile(r"(?:^\s*|[,;:] ?|\b(?:and|but|so|or) )(?:what|which|where|how)\b(?! many)")


def requested(low: str, start: int) -> bool:
    """Whether a thing is one that somebody asks for: "please send a price for a jet pump"."""
    begin = max((one.end() for one in _END.finditer(low, 0, start)), default=0)
    before = low[begin:start]
    stop = _END.search(low, start)
    asks = stop is not None and stop.group() == "?"
    match = _REQUEST.search(before) or (_WH.search(before) if asks else None)
    if match is None or len(before) - match.end() > 60:
        return False
    return not _OURS.search(before, match.end())


_COSTS = re.compile(
    r"\b(?:quote[ds]?|wants? (?:\$|€|£)|to bring|bringing|would (?:cost|charge)|charges? (?:\$|€|£)|asks? (?:\$|€|£|for))"
)
_COMPANY = re.compile(r"\b(?:compan\w+|co-?op|utility|service)\b")
_UNTRUSTED = re.compile(
    r"[^.;\n]{0,75}\b(?:(?:do not|don'?t|cannot|can'?t|can not|never|nobody can) (?:count|rely|depend|build) on (?:it|that|them)|not (?:reliable|dependable)|unreliable)\b"
    r"|(?: (?:power|supply|line|grid|electricity|is|are|lies))* ?,?(?: but)? ?(?:at|far,?|is|about|some) \d[\d.,]* ?(?:m|km|miles?|yards?|ft|metres|meters)\b(?! (?:of )?cable)[^.;\n]{0,20}"
    r"\b(?:too far|away|off|so (?:it|we|i|panels?|solar|the sun))\b"
)
_CANNOT = re.compile(
    r"\b(?:(?:can'?t|cannot|can not|couldn'?t|won'?t|unable to|never) (?:\w+ )?(?:get|have|reach|bring|use)|(?:could|might)(?! not))\b[^.;,\n]{0,22}$"
)


def out_of_reach(low: str, start: int, end: int) -> bool:
    """Whether power is only offered, cannot be had, or could be used: "the power company wants
    $40,000", "I can't get regular power", "could run it off the house"."""
    begin = max(low.rfind(sign, 0, start) for sign in ".;?!\n") + 1
    if _CANNOT.search(low[begin:start]):
        return True
    if _UNTRUSTED.match(low, end):
        return True
    near = low[begin : end + 30]
    return bool(_COMPANY.search(low[start:end]) and _COSTS.search(near))


_PULLED = re.compile(
    r"\b(?:pulled|removed|scrapped|replaced|retired|sold|swapped)(?: out)? (?:the |our |my |that )?(?:old )?$"
)
_PUT = re.compile(
    r"[^.;\n]{0,30}\b(?:put|fitted|installed|went to|went with|for an?|with an?|by an?)\b"
)
_TO_COME = re.compile(r"\b(?:plan|plans|planning|hope|going|want|wants|meant) to (?:be )?$")


def pulled_out(low: str, start: int, end: int) -> bool:
    """Whether a pump was taken out for another: "we pulled the submersible and put in a jet"."""
    return bool(_PULLED.search(low[max(0, start - 30) : start]) and _PUT.match(low, end))


def to_come(low: str, start: int) -> bool:
    """Whether what is told is only planned: "I plan to bury it"."""
    return bool(_TO_COME.search(low[max(0, start - 25) : start]))
