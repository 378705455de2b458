"""How many there are, where the next words put a count right: "told you eight, we're down to three",
"one shower plus an outdoor one", "three zones of four sprinklers"; and counts that are none of the place's.
"""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site.enquiry_model import Piece
from calc.site.enquiry_numbers import FEW, value

_THINGS = r"outlets\.[\w.]+|animals\.\w+|use\.troughs"
_OURS = r"(?:outlets|animals|use|beds|rain|drip|hot)\.[\w.]+"
_KIN = r"(?:neigh?bou?rs?|brother|sister|friend|cousin|uncle|mate)"
_ROOF_PART = r"(?:half|a third|two thirds|a quarter|part|some)"
_NEXT = r"(?:next (?:year|spring|summer|autumn|fall|winter|month|season)|planned|one day|some ?day|in (?:the )?future)"
_SOON = r"(?:next (?:year|spring|summer|autumn|fall|winter|month|season)|one day|some ?day|in (?:the )?future)"
_NOT_IN = r"(?:unconnected|unplumbed|disconnected|unused|never used|(?:not|isn'?t|aren'?t|never)(?: yet| been)* (?:connected|plumbed|hooked up|installed|fitted|in use))"
_TAKEN_OFF = r"(?:sold|scrapped|removed|taken (?:off|out|away)|given away|thrown out|ripped out|capped|stolen|demolished)"

MISCOUNTED: tuple[tuple[str, str, str, str, float], ...] = (
    # said once, and put right at once
    (_OURS, r"\b(?:i|we)(?:'d| had| have|'ve)? (?:also |once |first )?(?:told|said|wrote|mentioned|put down|gave you|counted)\b[^.;\d]{0,25}$", r"[^.\n]{0,60}\b(?:but (?:now|there|we|it|that|the|only|i)|actually|sorry|that was|in fact|wrong|rather|make (?:it|that))\b", "", 1),
    (_OURS, "", r",?(?: i'?d say,?| i think,?| perhaps,?)? (?:or )?(?:rather|no,|make (?:it|that)|correction,?:?|more like|nearer) \d", "", 1),
    (rf"use\.people|{_THINGS}", r"\d,? (?:and )?not $", "", "", 1),
    # people who do not live there
    (r"use\.people", "", r"[^.;\d]{0,20}\b(?:don'?t|do not|doesn'?t|never|none of them) (?:live|lives|sleep|stay|board) (?:here|there|in|on (?:the )?site|with us)\b|[^.;\d]{0,12}\bgo(?:es)? home\b", "", 1),
    (r"use\.people", "", r" (?:a|per|each|every|by) day\b(?!,? (?:each|using|who use))| (?:who |that )?(?:come|comes|pass|visit|walk|call|stop)\b[^.;]{0,20}\b(?:day|daily|by|past|through)\b", "", 1),
    (r"use\.people", "", r"[^.;,\d]{0,20}\b(?:next door|over the (?:road|street)|across the (?:road|valley|river|street)|(?:down|up) the (?:road|lane|valley|street))\b", "", 1),
    (r"use\.people", r"\b(?:built|meant|made|designed|sized|intended|rated|good|enough|suitable|plenty|laid out) for (?:about |up to )?(?:an? )?$", "", "", 1),
    (r"use\.people", r"\b(?:over|at|for|during|last) (?:christmas|easter|new year|thanksgiving|summer|august|july|the holidays|the (?:long )?weekend|the wedding|the party)\b[^.;]*\bhad $", "", "", 1),
    (r"use\.people", r"\bon (?:sundays?|saturdays?|feast days)\b[^.;\d]{0,25}$", "", "", 1),
    (r"use\.people", "", r" (?:are )?coming\b| (?:to|for) (?:dinner|lunch|supper|tea)\b| rents? (?:the|a|our)\b", "", 1),
    (r"use\.people", r"\b(?:wedding|party|funeral|feast|seats?|church|chapel|hall) (?:for|of|with) (?:about )?$|\b(?:shares?|shared|sharing)\b[^.;\d]{0,40}\bwith\b[^.;\d]{0,30}$", "", "", 1),
    (r"use\.people", "", r",? (?:in |at )?(?:a|the)? ?day (?:school|cent(?:re|er)|care|nursery)\b", "", 1),
    # beasts that are gone, to come, or somebody else's
    (r"animals\.\w+", "", r",? (?:and |but |then )?(?:we |i )?(?:have |'ve )?(?:since )?sold (?:half|most|some|them|all|a few|\d|two|three|four|five|six|ten)\b| (?:went to|were sold|have gone|died|are gone)\b", "", 1),
    (rf"use\.people|{_THINGS}", "", r",? last (?:year|season|summer|spring|winter|autumn|fall)\b", "", 1),
    (_THINGS, r"\b(?:(?:we|i)'?ll|will|going to|hop(?:e|ing) to|plan(?:ning|s)? (?:on|to)|intend to|thinking (?:of|about)|might|may)(?: \w+){0,2} (?:get|getting|buy|buying|take on|taking on|add|adding)(?: about| some)? $", "", "", 1),
    (_THINGS, r"\bplanning on (?:about )?$", "", "", 1),
    (r"animals\.\w+", r"\b(?:shed|barn|coop|stables?|room|space|stalls?|byre|parlou?r|licen[cs]e|permit) for (?:about |up to )?$", "", "", 1),
    (r"animals\.\w+", rf"\b(?:the|my|our|a) {_KIN} (?:also )?(?:grazes?|keeps?|runs?|milks?|has|owns?|waters?) (?:his |her |about )?$", "", "", 1),
    (r"animals\.\w+|outlets\.(?:sprinkler|micro)|use\.troughs", r"\b(?:each|every) (?:trough|paddock|field|pen|shed|barn|zone|line|row|block|lateral|circuit)\b[^.;]{0,25}$", "", "", 1),
    (r"animals\.\w+", "", rf" (?:belong to|are|of) (?:my|the|our|a) {_KIN}\b|[^.;\d]{{0,20}}\bdrinks? (?:only )?(?:from|at|in) (?:the|a) [a-z]+,? (?:and )?not\b", "", 1),
    (r"animals\.\w+", "", r" (?:at|in|on|per) each\b", "", 1),
    (r"animals\.\w+", "", r" (?:would|might|could) (?:be|do|have|make|give|not)\b", "", 1),
    # outlets that are none, to come, or fed from elsewhere
    (_THINGS, rf"\b{_SOON}\b[^.;]{{0,40}}$", "", "", 1),
    (_THINGS, "", rf"(?: [a-z]+){{0,2}}? {_NEXT}\b", "", 1),
    (_THINGS, "", rf"(?: (?!and\b|but\b)[a-z]+){{0,5}}? {_NOT_IN}\b", "", 1),
    (_THINGS, "", rf"(?: [a-z]+ and)?(?:'s| is| was| were| has been| have been| got)(?: since| now| all)* {_TAKEN_OFF}\b", "", 1),
    (r"outlets\.\w+", "", r"(?: (?:and|&|,) (?:the )?[a-z ]{3,20}?)? (?:is|are|runs?|works?|flush(?:es)?|fed)(?: all| both| only)? (?:off|on|from|by) (?:the )?(?:mains|town|city|council|municipal) (?:water|supply)\b", "", 1),
    (r"outlets\.shower", "", r" is (?:just |only )?an? (?:bucket|bag|barrel|watering can|solar bag|camp)\b", "", 1),
    (r"outlets\.\w+", "", r" (?:in|at) (?:(?:the|an?) (?:laundromat|launderette|gym|neighbou?rs?'?)|my [a-z]+'s)\b", "", 1),
    (r"outlets\.sink", "", r"[ -]?(?:trap|hole|strainer)\b", "", 1),
    (r"outlets\.washer", r"\b(?:can'?t|cannot|couldn'?t|won'?t) (?:handle|run|have|take|fit|manage|support|cope with) $", r"(?! at (?:the same|once))", "", 1),
    (r"outlets\.\w+=together", "", r" on (?:about |some )?(?:\d|¤|the|an?|our|one|half)", "", 1),
    (r"outlets\.hose", r"\b(?:from|off|through|by) (?:(?:an?|the|our|my|his|their) )?(?:mains|neigh?bou?r'?s?|town|farm) $|\bfill\w*[^.;,\d]{0,20} with (?:an?|the|our) (?:[a-z]+ )?$", "", "", 1),
    (r"outlets\.hose", r"\bfire\b[^.;]{0,30}$", "", "", 1),
    # what flows and what is used
    (r"use\.smallest", "", r" ?(?:per|for (?:the|each|every)|of (?:the|each)) (?:pump|heater|boiler|geyser)\b", "", 1),
    (r"use\.smallest", r"\b(?:least|lowest|smallest) (?:continuous |safe |allowed )?flow (?:per|of|for|through|at)(?: the| each| every| a)? (?:pump|heater|boiler|geyser)\b[^.;\d]*$|\b(?:pumps?|heater|boiler|geyser)(?:'s)?(?: [a-z]+){0,3} (?:least|lowest|smallest) flow\b[^.;\d]*$", "", "", 1),
    (r"use\.daily", r"\b(?:stor|collect|catch|harvest|haul|carr|los|gain|sav)(?:e|es|ed|s|ing|y|ies|ied)? (?:about |up to |only )?$", "", "", 1),
    (r"use\.daily", r"\bused (?:about |up to )?$", r" before (?:the|we|my|our|they|i)\b", "", 1),
    (r"use\.(?:daily|each)", r"\b(?:was|were|used to be|had been) (?:about |around )?$", r"[^.;]*\b(?:now|today|these days)\b", "", 1),
    # areas of which only a part counts
    (r"beds\.area|rain\.roof", "", rf" ?(?:,|\(|but|and)+ ?[^.;\d]{{0,40}}?\b{_ROOF_PART} (?:of (?:it|them|that)|is|are|drains|goes|feeds)\b|,? of which (?:about |only |just )?\d", "", 1),
    (r"rain\.\w+", rf"\bpanels?\b[^.;]{{0,20}}\bon (?:an?|the|our) $|\b{_KIN}'s? (?:[a-z]+ )?roof (?:is|has|of|measures) (?:about )?$", "", "", 1),
    (r"rain\.roof", "", r" ?(?:on )?(?:each|either|per) (?:side|half|slope)\b", "", 1),
    (r"rain\.used", "", r"[^.;]{0,15}\b(?:goes to waste|runs (?:away|off)|is lost|isn'?t (?:used|collected|caught)|not (?:used|collected|caught)|unused|wasted)\b", "", 1),
)  # fmt: skip

# the same, with the words of the number itself: (paths, before, of itself, after, path instead)
_BY_ITSELF = tuple(
    (re.compile(rf"(?:{paths})$"), re.compile(rf"(?:{before})$"), re.compile(rf"(?:{said})$"), re.compile(after), path)
    for paths, before, said, after, path in (
        (_THINGS, r"\b(?:want|wants|like|hope|plan|planning|wish) to (?:put in|add|fit|install|get|buy|have) ", r".* (?:more|extra|additional|new) [a-z ]+", r"", ""),
        (r"outlets\.shower", r"\b(?:we|i|they|you|she|he|kids|children|guests|us|people|can|can'?t|cannot|could|who|must|always|usually|often|never|(?:like|want|wants|able|have|try|tries|going|need) to) ", r"shower", r"(?! (?:room|head|is|has|and (?:an?|the|one)\b))", ""),
        (r"outlets\.washer", r"\b(?:rubber|pressure|power|tap|leather|fib(?:re|er)|car|jet|worn|sealing) ", r"washer", r"", ""),
        (r"outlets\.washer", r"", r".*(?<!clothes )washer", r" (?:on|in|of|under|inside|for) (?:the|an?|that|its|our) (?:[a-z]+ )?(?:hose|tap|valve|bibb?|spigot|faucet|joint|union|fitting|connection)\b", ""),
        (r"animals\.dairy", r"\b(?:goats?|sheep|ewes|does)\b[^.;]{0,15}", r"[\w-]+ (?:milking|in milk)", r"", ""),
        (r"use\.troughs", r"", r".*trough \d", r" ?(?:is|at|lies|sits|gets|overflows|has|stands)\b", ""),
        (r"animals\.cattle", r"\b(?:goats?|sheep|ewes|nannies)\b[^.;\d]{0,25}(?<!plus )(?<!and )", r".* head", r"(?! of (?:[a-z]+ )?(?:cattle|cows|stock|horses|steers|heifers|bulls))", "animals.goats"),
        (r"use\.people", r"", r".* day (?:pupils|students|guests|visitors|boys|girls|workers|trippers|staff)", r"", ""),
        (r"use\.people", r"", r".*\d", r" ?(?:hp|k?w|watts?|v|volts?|amps?|bar|psi|m[3]|inch|mm|m|ft|km|l|phase|years? old)\b", ""),
    )
)  # fmt: skip

_STOP = r"(?= ?(?:[.,;!\n)]|$)| (?:since|now|live|living|left|here|these days|today)\b)"
_SO_FEW = re.compile(
    rf"[^.\n\d]{{0,60}}?\b(?:(?:we're |we are |it is |it's )?down to|never more than|make (?:that|it)|(?:but|it's|it is|actually|though|now|sorry)(?: (?:really|only|just|there are|there's|there is|we are|we're|it's|now|actually|in fact))*),? (?P<n>(?<![\w-]){FEW})(?: of us| people| persons)?{_STOP}"
)
_WELL = re.compile(
    rf"[ ,.-]*(?:of us)?[ ,.-]*\b(?:well|no|sorry|or rather)[ ,.-]+(?P<n>(?<![\w-]){FEW})(?: (?:of us|people|persons|with)\b)"
)
_WITH_KIN = re.compile(
    rf",? (?:and |or )?with (?:the |our |my )?(?:grandma|grandpa|granny|baby|lodger|mother|father|son|daughter|parents|kids|guests?) (?P<n>(?<![\w-]){FEW}){_STOP}"
)
_FEWER = re.compile(
    rf",? (?:but|though|although) (?P<n>an?|{FEW})(?: of (?:them|us))? (?:have|has|is|are)? ?(?:now |since |just )?(?:moved out|left|gone|moved away|away)\b"
)
_LODGER = re.compile(
    rf"(?:,? (?:and|plus)|,? with(?= (?:an?|one|the|my|our|her|his|{FEW}) )| ?\+| ?&) (?:(?P<n>an?|one|the|my|our|her|his|{FEW}) )?(?:elderly |old |live-in |young |paying |wee |new )?(?:baby|toddler|newborn|infant|young ?'?un|youngster|young one|bairn|nipper|tyke|littlie|rugrat|sprog|lodger|tenant|boarder|housekeeper|carer|au pair|nanny|maid|cook|farm ?hand|caretaker|helper|apprentice|grandma|grandpa|granny|mother[ -]in[ -]law|father[ -]in[ -]law)s?\b(?! (?:in summer|sometimes|at weekends?|who comes|comes|now and then|by day|when))"
)
_CREW = r"(?:staff|hosts?|owners?|cooks?|wardens?|helpers?|leaders?|teachers?|volunteers?|workers?|crew|nurses?|carers?|counsell?ors?|guides?|novices?|lay brothers|servants|gardeners?|labourers|caretakers?|cleaners?|employees)"
_CREW_TOO = re.compile(
    rf"(?:,|,? and|,? plus| ?\+| ?&) ?(?:about |another )?(?:(?P<n>{FEW}) (?:[a-z]+ )?{_CREW}\b|{_CREW}[: ]+(?:about )?(?P<m>{FEW})(?![\w-]))(?! (?:who |that )?(?:come|comes|live out|go home|by day|in summer|sometimes|from the village))"
)
_CREW_THEN = re.compile(rf"(?:[.;\n] ?){_CREW}: ?(?P<n>{FEW})(?![\w-])(?! ?%)")
_CREW_FIRST = re.compile(
    rf"(?<![\w¤-])(?P<n>{FEW}) {_CREW}(?: (?:live|lives|sleep|stay)[^.;,\d]{{0,20}})?(?:[,;]| ?\+| ?&| and| plus)+ (?:and |plus )?(?:up to |about |maximum )*$"
)
_IN_ANNEXE = re.compile(
    rf"(?: here| in the (?:main )?house)?,? (?:and|plus) (?P<n>{FEW}) (?:more )?(?:in|at) the (?:annexe?|cottage|cabin|barn|granny flat|caravan|other house|flat|bunkhouse|trailer)\b"
)
_AND_WE = re.compile(rf",? (?:and|plus) (?:we|us) (?P<n>{FEW})(?![\w-])")
_OR = re.compile(rf"(?<![\w¤.,-])(?P<n>{FEW}) or $")
_KIDS_TOO = re.compile(
    r"(?:,? (?:and|plus|with)|,| ?\+) (?:the |our |my )?(?:[a-z]+ )?(?:kids|children|sons|daughters|boys|girls|grandchildren|grandkids)\b(?! (?:come|visit|who|have|left|are|live|at|in the summer|sometimes|on))(?: ?\((?P<n>\d{1,2})\))?"
)
_NOW_AND_THEN = re.compile(
    r" (?:on (?:sun|satur|fri)days|(?:at|on) (?:the )?weekends?|sometimes|in summer|now and then|at times|every other)\b"
)
_LAST_ONE = re.compile(r".*(?:\band|\bplus|,) (?:an?|her|his|my|our|the) [a-z-]+")
_SO_ALL = re.compile(
    rf"(?:,? [a-z-]+){{0,5}}?,? (?:(?:so|makes?|that's|that makes|which makes|making)(?: us| it| we are| we're| that's| a total of| together)?|=) (?P<n>(?<![\w-]){FEW})(?= ?(?:[.,;!\n)]|$)| (?:of us|people|in all|altogether|together))"
)
_ME_AND = re.compile(
    r"(?<!and )(?<!wife )\b(?:me|myself|(?:i live|i share the house) (?:here |there )?with|i) ?(?:(?<=with )|(?:and|plus|with|\+|&) )$"
)
_DUE = re.compile(r",? (?:is |that is |who is )?(?:due|on the way|expected|coming|to come|still to come)\b")  # fmt: skip
_YOUNG = re.compile(r"\b(?:baby|babies|child|kid|little one)$")
_ONE_MAN = re.compile(r"(?:one|1|single) person$")
_LIVES = re.compile(
    r" ?(?:$|[.,;:)!(\n+&-]|(?:household|home|house|lives?|living|here|there|in|only|all|and|plus|with|on|uses?|using|full|alone|at (?:home|the house|present|the moment))\b)"
)


def recounted(low: str, pieces: list[Piece]) -> list[Piece]:
    """The pieces, each count as the words beside it put it right, without those that are none."""
    kept = []
    for one in (_itself(low, each) for each in pieces):
        if one is None:
            continue
        if one.path == "use.people":
            put = _people(low, one, pieces)
        elif one.path.startswith(("outlets.", "animals.", "use.troughs", "beds.")):
            kept += [*_and_all(low, one, pieces), *_milked(low, one)]
            put = _counted(low, one)
        else:
            put = one
        if put is not None:
            kept.append(put)
    return _marked(low, _ordinals(low, kept))


def _itself(low: str, one: Piece) -> Piece | None:
    """A piece as its own words tell what it is; None where they tell that it is none."""
    before = re.split(r"[.;!?\n](?!\d)", low[max(0, one.start - 80) : one.start])[-1]
    for paths, left, said, after, path in _BY_ITSELF:
        if (
            paths.match(one.path)
            and said.fullmatch(low[one.start : one.end])
            and left.search(before)
            and after.match(low, one.end)
        ):
            return replace(one, path=path) if path else None
    return one


def _number(word: str) -> float:
    return value(word)[0] if re.fullmatch(FEW, word) else 1.0


def _extra(more: re.Match[str]) -> float:
    """How many more a match tells, which holds a number as "n" or as "m"."""
    word = next((w for w in (more["n"], more.groupdict().get("m")) if w), "one")
    return _number(word)


def _as(piece: Piece, number: float, end: int) -> Piece | None:
    if number != int(number) or not 0 < number <= 5000:
        return None
    return replace(piece, low=number, high=number, end=max(piece.end, end))


def _people(low: str, one: Piece, pieces: list[Piece]) -> Piece | None:
    said = low[one.start : one.end]
    if _ONE_MAN.search(said) and not _LIVES.match(low, one.end):
        return None
    for pattern in (_WELL, _WITH_KIN, _SO_ALL, _SO_FEW):
        if match := pattern.match(low, one.end):
            return _as(one, value(match["n"])[0], match.end())
    if _FEWER.match(low, one.end):
        return None
    due = _YOUNG.search(said) and _DUE.match(low, one.end)
    if due or (_LAST_ONE.fullmatch(said) and one.low > 1 and _NOW_AND_THEN.match(low, one.end)):
        return _as(one, one.low - 1, one.end)
    if (span := _OR.search(low[max(0, one.start - 20) : one.start])) and value(span["n"])[
        0
    ] < one.low:
        return replace(one, low=value(span["n"])[0])
    if one.low != one.high:
        return one
    kids = _KIDS_TOO.match(low, one.end)
    if (
        kids
        and kids["n"] is None
        and not re.search(r"people|persons|family|adults|household", said)
    ):
        return None
    patterns = (_LODGER, _CREW_TOO, _CREW_THEN, _IN_ANNEXE, _AND_WE)
    more = next((m for p in patterns if (m := p.match(low, one.end))), kids)
    if more and not any(p.path == one.path and one.end <= p.start < more.end() for p in pieces):
        one = replace(one, low=one.low + _extra(more), high=one.high + _extra(more), end=more.end())
    first = _CREW_FIRST.search(low, max(0, one.start - 60), one.start)
    if first and not any(p.path == one.path and p.start < one.start < p.end + 60 for p in pieces):
        one = replace(one, low=one.low + _extra(first), high=one.high + _extra(first))
    if re.match(FEW, said) and _ME_AND.search(low[max(0, one.start - 30) : one.start]):
        one = replace(one, low=one.low + 1, high=one.high + 1)
    return one


# Things --------------------------------------------------------------------------------------------

_AREAS = r"(?:zones|lines|rows|blocks|laterals|circuits|areas|paddocks|fields|sections|beds|plots|terraces|tunnels|greenhouses|patches)"
_LOTS = re.compile(
    rf"(?<![\w¤.,-])(?P<n>{FEW}) (?:[a-z]+ )?{_AREAS},? (?:of|with|having)(?: about)? $"
)
_BETWEEN = re.compile(rf"\bbetween (?P<n>{FEW}) and $")
_ROOM = r"(?:[a-z]+ )?(?:house|kitchen|bath ?room|laundry|annexe?|barn|cabin|cottage|flat|garage|shed|stables?|scullery|utility(?: room)?|pool|yard|garden|workshop|ensuite|studio|basement|attic|sauna|terrace|gate)"
_ONE_MORE = re.compile(
    rf"(?: (?:in|at|by) the {_ROOM})?(?:,? (?:and|plus)|,| ?\+| ?&) (?:(?P<n>an|a|one|another|{FEW}) (?:(?:outdoor|outside|guest|spare|downstairs|upstairs|second|smaller|small|third) one(?!s? (?:of|is|was))|(?:more )?(?:in|by|at|near|for|over|next to|beside|behind|outside|outdoors) the {_ROOM})|the {_ROOM}(?: has)? (?P<m>one|another|{FEW}))(?= ?(?:[.,;)\n]|$)| and\b)"
)
_IN_BRACKETS = re.compile(rf" ?\((?:\+|plus|and) ?(?P<n>one|another|{FEW})\b[^)\n]{{0,20}}\)")
_OF_THEM = re.compile(
    rf",? ?\(?(?P<n>one|both|all|{FEW}) (?:of (?:them|which|those|these) )?(?:is |are |an? |only |still )*(?:dry\b|compost\w*|pit\b|earth\b|waterless|chemical|{_NOT_IN}|on (?:the )?(?:mains|town|city) (?:water|supply))"
)


_FLOOR = re.compile(
    r"(?:the |our |a )?(?:first|second|third|2nd|3rd) (?:floor|stor(?:e?y)|level)\b"
)
_ON_EACH = re.compile(
    r",? (?:(?:one )?(?:on|in|at|per|for) (?:each|every)|(?:each|apiece)(?= ?(?:[.,;:)\n]|$))|per (?:floor|side|flat|house|room|cabin|unit|hut|cottage))\b"
)
_THERE_ARE = re.compile(
    rf"[^.;\n]{{0,40}}; (?:and )?(?:there are|i have|we have|we've got) (?P<n>{FEW})(?: of them)?(?= ?(?:[.,;!\n)]|$))"
)
_AND_THERE = re.compile(
    rf" (?:on|in|at|for|by) the (?:[a-z]+ )?[a-z]+,? (?:and|plus) (?P<n>{FEW}) (?:on|in|at|for|by) the (?:[a-z]+ )?[a-z]+(?= ?(?:[.,;!\n)]|$))"
)
_BUILT = re.compile(
    rf"[^.\n\d]{{0,50}}?(?:[;,]|\bbut) (?:but )?(?:(?:we|i|they) )?(?:only |just )?(?:built|installed|fitted|put in|got|kept) (?:only |just )?(?P<n>{FEW})(?= ?(?:[.,;!\n)]|$))"
)
_MINUS = re.compile(
    rf",? (?:minus|less|except(?: for)?|apart from) (?:the )?(?P<n>one|{FEW}) (?:in|at|on|by|that|which|of)\b"
)
_HAVE_NONE = re.compile(
    r",? (?:and |but |so |because )?(?:we|i) (?:don'?t|do not|haven'?t|never)(?: even)? (?:have|got|had|own)(?: got)? (?:one|any)\b"
)


def _counted(low: str, one: Piece) -> Piece | None:
    before = low[max(0, one.start - 60) : one.start]
    if lots := _LOTS.search(before):
        each = one.path.startswith(("beds.", "outlets.sprinkler", "outlets.micro"))
        many = _number(lots["n"]) if each and one.word != "together" else 1.0
        return replace(one, low=one.low * many, high=one.high * many)
    if one.word or one.path.startswith("beds."):
        return one
    if not one.low:
        return replace(one, low=1.0, high=1.0) if _YES.fullmatch(low, one.start, one.end) else one
    fewer = _BUILT.match(low, one.end)
    if fewer and value(fewer["n"])[0] < one.low:
        return _as(one, value(fewer["n"])[0], fewer.end())
    return _put_right(low, one, before)


_YES = re.compile(r".* yes")


def _put_right(low: str, one: Piece, before: str) -> Piece | None:
    """One thing counted, more or fewer by the words behind it."""
    if _FLOOR.match(low, one.start):
        one = replace(one, low=1.0, high=1.0, vague=True)
    if one.low == 1 and _ON_EACH.match(low, one.end) and one.path.startswith("outlets."):
        return None
    if one.low == 1 and (there := _THERE_ARE.match(low, one.end)):
        return _as(one, value(there["n"])[0], there.end())
    if more_there := _AND_THERE.match(low, one.end):
        return _as(one, one.low + _extra(more_there), more_there.end())
    if one.low == 1 and _HAVE_NONE.match(low, one.end) and one.path.startswith("outlets."):
        return replace(one, low=0.0, high=0.0)
    if (span := _BETWEEN.search(before)) and (least := value(span["n"])[0]) < one.high:
        return replace(one, low=least)
    if dairy := _milked(low, one):
        return _as(one, one.low - dairy[0].low, one.end) if one.low > dairy[0].low else None
    if not one.path.startswith("outlets."):
        return one
    if out := _MINUS.match(low, one.end) or _OF_THEM.match(low, one.end):
        gone = one.low if out["n"] in {"both", "all"} else _number(out["n"])
        return _as(one, one.low - gone, one.end)
    more = _ONE_MORE.match(low, one.end) or _IN_BRACKETS.match(low, one.end)
    if more and not one.path.endswith("hose"):
        return _as(one, one.low + _extra(more), more.end())
    return one


_WE_HAVE = re.compile(
    rf"[^.;\n\d]{{0,30}}?,? (?:and |but |though )?(?:we have|we've got|there are|there's|out of(?: our| the)?) (?P<n>{FEW})(?: of them| in all| all told)?(?= ?(?:[.,;!\n)]|$))"
)


def _and_all(low: str, one: Piece, pieces: list[Piece]) -> list[Piece]:
    """All that there are, told behind those that run together: "two at once, we have three"."""
    match = _WE_HAVE.match(low, one.end) if one.word == "together" else None
    if match is None or value(match["n"])[0] < one.low:
        return []
    number = value(match["n"])[0]
    if any(p.path == one.path and p.start < match.end() and match.start("n") < p.end for p in pieces if p is not one):  # fmt: skip
        return []
    return [replace(one, low=number, high=number, word="", start=match.start("n"), end=match.end())]


_MILK = re.compile(
    rf",? (?:of which|and|but)? ?(?:we|i) (?:only )?milk (?P<n>{FEW})(?= ?(?:[.,;)\n]|$)| of them)"
)


def _milked(low: str, one: Piece) -> list[Piece]:
    """Those of a herd that are in milk: "12 cows of which we milk 8"; the rest is left to the herd."""
    match = _MILK.match(low, one.end) if one.path == "animals.cattle" else None
    if match is None or value(match["n"])[0] > one.low:
        return []
    number = value(match["n"])[0]
    return [replace(one, path="animals.dairy", low=number, high=number, start=match.start("n"), end=match.end())]  # fmt: skip


_BY = re.compile(
    r"\b(?:under|below|beneath|behind|beside|next to|underneath)(?: the| our)? (?:[a-z]+ )?$"
)


def _marked(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without a sink that only says where a pump is, where sinks are told elsewhere."""
    sinks = [p for p in pieces if p.path == "outlets.sink"]
    by = [p for p in sinks if p.vague and p.low == 1 and _BY.search(low[max(0, p.start - 25) : p.start])]  # fmt: skip
    return pieces if len(by) == len(sinks) else [p for p in pieces if p not in by]


_SECOND = re.compile(r"(?:the |our |a |and )?(?:second|third)\b")


def _ordinals(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without one of "one trough …, a second trough": the second is not two more."""
    out: set[int] = set()
    for one in pieces:
        if not _SECOND.match(low, one.start) or one.word or not one.path.startswith(("outlets.", "use.troughs")):  # fmt: skip
            continue
        before = [p for p in pieces if p.path == one.path and p.end <= one.start and not p.word]
        total = sum(p.low for p in before)
        if before and total >= one.low:
            out.add(id(one))
        elif before:
            out |= {id(p) for p in before}
    return [one for one in pieces if id(one) not in out]


_LISTED = re.compile(
    r"\b(?:all|of|both of|between) (?:the|our|my|these|those) $|^(?:the|our|my|these|those) "
)


def at_odds(low: str, pieces: list[Piece]) -> tuple[Piece, ...]:
    """Two numbers of one outlet that cannot both be: "toilets 3 … the highest of the 4 toilets"."""
    ones = [p for p in pieces if p.low > 1 and p.low == p.high and not p.vague and not p.word]
    for first, later in zip(ones, ones[1:], strict=False):
        of = _LISTED.search(low[max(0, later.start - 14) : later.start]) or _LISTED.match(low[later.start : later.end])  # fmt: skip
        if of and later.low > first.low and later.start - first.end > _APART and len(ones) == 2:
            return first, later
    return ()


_APART = 20  # characters, within which two numbers stand in one list; our choice
