"""Outlets and animals counted in an enquiry: "two showers", "the shower", "Showers: 2", "no hose"."""

from __future__ import annotations

import re

from calc.site.enquiry_counts import (
    ACT,
    BARE,
    DRY,
    NO_LIST,
    SKIP_THING,
    THINGS,
    TOGETHER_AFTER,
    TOGETHER_BEFORE,
    Counted,
    how_many,
)
from calc.site.enquiry_noise import negated
from calc.site.enquiry_numbers import NUMBER, value

_PAIRED = re.compile(
    r"(?:^|\n|\d {2,})(?:showers?|sinks?|toilets?|taps?|hoses?|people|goats|hens|cows|troughs?|washers?) +$"
)


def things(low: str) -> list[Counted]:
    """Outlets and animals of a masked text, each where it stands."""
    found: list[Counted] = []
    taken = bytearray(len(low))  # one where a sign was counted already

    def take(start: int, end: int) -> None:
        taken[start:end] = b"\1" * (end - start)

    for low_start, low_end, path in _none(low):
        found.append(Counted(path, 0, low_start, low_end))
        take(low_start, low_end)
    for path, pattern in THINGS:
        for match in pattern.finditer(low):
            start, end = match.span("thing")
            if match["n"][0].isdigit() and _PAIRED.search(
                low[max(0, match.start() - 30) : match.start()]
            ):
                continue
            listed = any(taken[match.start() : end])  # "4 sinks washer" counts the sinks
            skipped = listed or _dry(low, path, match.start("thing"))
            one = None if skipped else _both(low, path, match) or _counted(low, path, match)
            if one is not None:
                found.append(one)
                take(match.start(), end)
    for path, pattern in BARE.items():
        for match in pattern.finditer(low):
            one = None if any(taken[match.start() : match.end()]) else _named(low, path, match)
            if one is not None and not (
                path.startswith("animals") and any(taken[one.start : one.end])
            ):
                found.append(one)
                take(*match.span())
    found.sort(key=lambda one: one.start)
    return found


_BEFORE = re.compile(r"^(?:no|an?|any|the|more|other|flush(?:ing)?|indoor|separate) ")


def _none(low: str) -> list[tuple[int, int, str]]:
    """(start, end, path) of what a list after "no" names: "no toilet, washing machine or hose"."""
    found = []
    for no in NO_LIST.finditer(low):
        at, missed, comma = no.start(1), False, False
        for number, part in enumerate(
            re.split(r"(, ?(?:or |and |nor )?| or | nor | and no )", no[1])
        ):
            if number % 2:
                comma = part.strip() == ","
            elif comma and re.match(r"(?:an?|one|two|the|our) ", part):
                break  # "no shower yet, a kitchen sink"
            else:
                said_no = part.startswith("no ")
                bare = _BEFORE.sub("", part)
                hit = next(((p, f) for p, one in BARE.items() if (f := one.match(bare))), None)
                if hit is None:
                    at += len(part)
                    missed = True
                    continue
                if missed and not said_no:
                    break
                if hit[0].startswith(("outlets", "use")) and not part[
                    hit[1].end() :
                ].strip().startswith(("pressure", "valve")):
                    found.append((at, at + len(part), hit[0]))
            at += len(part)
    return found


def _both(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """ "one shower upstairs, one down": two of them."""
    more = _ONE_MORE.match(low, match.end("thing"))
    if more is None or match["n"] not in {"one", "a", "1"} or not _is_outlet(path):
        return None
    return Counted(path, 2, match.start(), more.end())


def _dry(low: str, path: str, at: int) -> bool:
    """Whether a toilet is one without water."""
    return path == "outlets.toilet" and bool(DRY.search(low[max(0, at - 20) : at]))


def _counted(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """A thing with a number or an article before it; None where it is none of the place's."""
    word, thing = match["n"], match["thing"]
    start, end = match.start(), match.end("thing")
    rooms = _ROOMS.search(low[max(0, match.start("thing") - 90) : match.start("thing")])
    if rooms and word in {"a", "an", "its", "own", "one", "and"}:
        return Counted(path, value(rooms["n"])[0], match.start("thing"), end)
    if _EVERY.search(low[max(0, start - 70) : start]):
        return _each(low, path, match)
    if _EACH_HAS.search(low[max(0, start - 60) : start]) or _other_thing(low, path, match):
        return None
    if negated(low, start) and not word[0].isdigit():
        return Counted(path, 0, start, end) if _is_outlet(path) else None
    after = low[end : end + 70]
    if _EACH.match(after):
        return _each(low, path, match)
    if _EACH_LIST.match(after) and _HOMES.search(low[max(0, start - 170) : start]):
        return _each(low, path, match)
    ordinal = re.match(r"(?:the |our |a )?(second|third) (?!home|house)", match.group())
    if (
        ordinal
        and match.group().startswith("a ")
        and not _HAS.search(low[max(0, start - 30) : start])
    ):
        return None  # "whether a second shower is too much"
    if ordinal:
        return Counted(path, 2.0 if ordinal[1] == "second" else 3.0, start, end)
    number, high = (2.0, 2.0) if word == "both" else how_many(word)
    if number is None:
        return _single(low, path, match)
    sized = re.search(r"\b(?:inch|mm|in)\b|\d/|\"", match.group()[len(word) :])
    if sized and path == "outlets.hose":
        return None  # a hose of that size
    milked = path == "animals.cattle" and _MILKED.search(low[max(0, start - 45) : start])
    if milked and "cow" in thing and not thing.startswith(("dry", "beef")):
        return Counted("animals.dairy", number, start, end)
    part = not _plural(thing) and number > 1 and not _ENDS.match(after)
    if (part and _is_outlet(path)) or number != int(number) or not 0 <= number <= 5000:
        return None  # "3 shower" before another noun
    return Counted(path, number, start, end, _together(low, match), False, high or 0.0)


_MILKED = re.compile(r"(?<!in )\bmilk(?:s|ing)? (?:(?!\bfor\b)[^.;,\n]{1,30} and )?$")
_HAS = re.compile(
    r"\b(?:is|are|have|has|had|got|added|put in|installed|fitted|built|there's|now|plus|and|with) (?:also |now |just |even )?$"
)
_OWNED = re.compile(  # "have a shower, a toilet and a sink" are things, and no washing
    r" (?:inside|indoors|outside|outdoors|upstairs|downstairs|in the)\b|(?:, ?| and | plus | & )(?:an? |one |two |three |the )?(?:[a-z]+ )?(?:toilets?|wc|loo|sinks?|basins?|washing|washer|bath|tap|dishwasher|hose|kitchen)\b"
)
_ROOM_HAS = re.compile(  # "the bathroom upstairs has a shower"
    r"\b(?:upstairs|downstairs|bath ?room|ensuite|house|cabin|cottage|flat|annexe?|barn|floor|hut|room|caravan)(?: also| now)? has (?:an? |one )?$"
)
_NO_NOUN = r"(?= ?(?:$|[,.;:!?)\n])| (?:for|too|as well|and|with|but|plus|by|in|of|on|at|near|that|which|where|so|we|i|there|is|are|when|if|to|next)\b)"
_ONE_MORE = re.compile(
    r" (?:upstairs|up|downstairs|down|inside|outside),? (?:and )?(?:one|another)(?: one)? (?:more )?(?:up|down|upstairs|downstairs|inside|outside)\b(?! to\b)"
    + _NO_NOUN
)
_AND_ONE = re.compile(
    r"(?:(?!, |\band\b)[^.;\n]){0,20},? ?\band (?:another |a second )?(?:one )?(?:(?:in |at |round |out )?(?:the )?(?:front|back|rear)|inside|downstairs|upstairs|outside|in the (?:barn|annexe?|guest \w+|cabin|other \w+|attic|basement|garage|house|kitchen|bathroom|shed|laundry|yard|garden|hall|workshop|stable|loft|cellar))\b"
    + _NO_NOUN
)
_EVERY = re.compile(
    r"\b(?:each|every|all) (?:of them |of these |of the )?(?:rooms?|cabins?|cottages?|houses?|units?|huts?|flats?|chalets?|tents?|pods?|villas?|apartments?|bungalows?)? ?(?:has|have|with|having|gets) (?:(?!\bin the\b)[^.;]){0,40}$"
    r"|\b(?:each|every) (?:room|cabin|cottage|house|unit|hut|flat|chalet|tent|pod|villa|apartment|bungalow|yurt|cell|suite)[:,]? (?:(?:an?|one|two|1|2|own) (?:\w+ )?\w+(?:, ?| and |,? plus )){0,3}$"
)
_EACH_HAS = re.compile(r"\beach (?:with|has|have|having)\b(?:(?!\bin the\b)[^.;]){0,40}$")
_EACH = re.compile(
    r",? ?(?:each(?! of\b| must| has| is| needs| runs?| holds?| holding| (?:about )?\d)|in each|per (?:cabin|house|unit|cottage|hut)|apiece)\b"
)
_EACH_LIST = re.compile(
    r"(?:, ?|,? and | ?\+ ?| ?& ?|,? plus )[^.;()\n]{0,60}\b(?:(?<!on )each|apiece|per (?:cabin|house|unit|flat|room)) ?(?:[).;,]|$)"
)
_ENDS = re.compile(r" ?(?:$|[,.;)&+\n]|and\b|plus\b|with\b|in\b|for\b|or\b)")
_OF_ANIMALS = re.compile(
    r"['-]|s?' | ?power| (?:shed|barn|house|pen|yard|field|paddock|trough|milk|manure|shower|track)\b"
)
_CATTLE = re.compile(r"\b(?:cows?|cattle|calf|calves|bulls?|pasture|ranch|grazing|range)\b")
_HOSE_SIZE = re.compile(  # a hose of that size, or one that is the line
    r" (?:is |of |from |pipe )?(?:\d|½|¾|half|three)"
    rf"| (?:(?:that|which) )?(?:is|was|of|runs?|goes|has|measures|it is)(?: about| some| only| over| nearly)* {NUMBER}[ -]?(?:m|ft|feet|foot|met(?:re|er)s?|yards?)\b"
    r"| (?:(?:that|which) )?(?:runs?|goes|leads|comes|lies|stretched|laid)(?: all the way)? (?:up|down|over|across|along|from|to|through|uphill|downhill)\b"
    r"| (?:up |down |straight |over )?from (?:the|our|my|a) (?:[a-z]+ )?(?:creek|spring|stream|well|pond|river|lake|tank|pump|source|brook|box|dam|cistern)\b"
)
_NO_OUTLET = re.compile(r"fire hose|suction|intake|delivery|discharge|drain|lay ?-?flat|\bof $")
_ON = re.compile(r" (?:are |is )(?:all )?(?:on|open|running|going|in use)\b")


_WHEN = re.compile(r"\b(?:when|if|while|once|whenever)(?: only| just)? $")
_RUN = re.compile(r" (?:both |all )?(?:run|flow)\b(?! (?:out|dry|cold|hot|off|from|to)\b)")


def _is_outlet(path: str) -> bool:
    return path.startswith(("outlets", "use"))


def _plural(thing: str) -> bool:
    named = thing in {"pair", "sheep", "cattle", "poultry"} or thing.startswith("head")
    return thing.endswith("s") or named


def _other_thing(low: str, path: str, match: re.Match[str]) -> bool:
    """Whether the words mean another thing: a dry toilet, a goat shed, a suction hose."""
    start, end = match.start(), match.end("thing")
    after = low[end : end + 70]
    skipped = SKIP_THING.match(after) if _is_outlet(path) else None
    if skipped and not (path == "use.troughs" and skipped.group().startswith(" at ")):
        return True
    if path == "outlets.toilet" and DRY.search(low[: match.start("thing")][-20:]):
        return True
    if path.startswith("animals") and _OF_ANIMALS.match(after):
        return True
    if match["thing"].startswith("pair") and not _CATTLE.search(low):
        return True
    around = low[max(0, start - 12) : match.end()]
    return path == "outlets.hose" and bool(_HOSE_SIZE.match(after) or _NO_OUTLET.search(around))


def _together(low: str, match: re.Match[str]) -> bool:
    """Whether it is said that they are open at one time."""
    start, end = match.start(), match.end("thing")
    after = low[end : end + 70]
    same = TOGETHER_AFTER.match(after)
    other = same and re.search(
        rf"\b(?:not|never|don't)\b|(?<![\w-]){NUMBER}\b(?! time)", same.group()
    )
    if same and not other:
        return True
    before = TOGETHER_BEFORE.search(low[max(0, start - 40) : start])
    run = (
        _plural(match["thing"])
        and _WHEN.search(low, max(0, start - 20), start)
        and _RUN.match(after)
    )
    return bool(
        before or run or match["n"] == "both" or (_plural(match["thing"]) and _ON.match(after))
    )


def _single(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """One thing named in the singular: "a shower", "the kitchen sink"."""
    word, start, end = match["n"], match.start(), match.end("thing")
    if _plural(match["thing"]) or word in {"each", "no", "x"}:
        return None
    if path.startswith("animals") and word not in {"a", "an", "one", "single", "our", "my", "the"}:
        return None
    before = low[max(0, start - 40) : start]
    taken = path == "outlets.shower" and word in {"a", "an", "one", "and", ",", "each", "the"}
    if taken and ACT.search(before) and not (_OWNED.match(low, end) or _ROOM_HAS.search(before)):
        return None
    if path == "outlets.hose" and re.search(r"(?:with|through|by|from) $", before):
        return None
    if _ONE_OF.search(low[max(0, match.start("thing") - 14) : match.start("thing")]):
        return None  # "the highest shower" is one of several
    vague = word not in {"a", "an", "one", "single", "1x"}
    more = _AND_ONE.match(low, end) if not vague else None
    if path == "outlets.hose" and _ON_IT.search(before):
        return None  # of the tap that was counted
    if more:
        return Counted(path, 2, start, more.end())
    listed = word in {",", "and", "&", "+", "plus", "also"}
    if listed and (many := _BEHIND.match(low, end)):  # "shower (2), toilet (3)"
        return Counted(path, value(many[1])[0], match.start("thing"), many.end())
    begin = match.end("n") + 1 if listed and low[match.end("n")] == " " else match.start("thing")
    return Counted(path, 1, begin if listed else start, end, False, vague)


_ON_IT = re.compile(
    r"\b(?:taps?|spigots?|bibb?s?|cocks?|hydrants?|standpipes?|faucets?)(?:(?<!tap)(?<!taps) (?:outside|outdoors))? (?:and|with|has|plus) (?:(?:its|his|the|their) |an? )?$"
)
_ONE_OF = re.compile(
    r"\b(?:highest|top|topmost|upper|lowest|furthest|farthest|nearest|last|worst|first|next|other|far) $"
)
_HOMES = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:\w+ )?(?:bath ?rooms|baths|cabins|houses|units|cottages|bungalows|yurts|tree ?houses|huts|homes|apartments|flats|lodges|rooms|chalets|tents|villas|pods|studios|gites|trailers|caravans|blocks|families|dorms|bedrooms|suites|bays|paddocks|fields|pens)\b[^;]*$"
)


def _each(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """ "three cabins with one shower each" are three showers."""
    homes = _HOMES.search(low[max(0, match.start() - 170) : match.start()]) or _of_all(low, match)
    number = 1.0 if match["n"] in {"a", "an", "one", "1"} else how_many(match["n"])[0]
    if homes is None or number is None:
        return None
    return Counted(path, value(homes[1])[0] * number, match.start(), match.end("thing"))


_EVERY_ONE = re.compile(
    r"\b(?:each|every) (?P<home>cabin|cottage|house|unit|hut|flat|chalet|tent|pod|villa|apartment|bungalow|room|lodge|yurt|cell|dormitory|suite)\b[^.;]{0,70}$"
)


def _of_all(low: str, match: re.Match[str]) -> re.Match[str] | None:
    """How many homes a letter has, where "every chalet has" one of these."""
    every = _EVERY_ONE.search(low, max(0, match.start() - 90), match.start())
    if every is None:
        return None
    return re.search(rf"(?<![\w¤-])({NUMBER}) (?:\w+ )?{every['home'][:5]}[a-z]*s\b", low)


_ROOMS = re.compile(
    rf"(?<![\w¤-])(?P<n>{NUMBER}) (?:\w+ )?(?:bath ?rooms|baths|bedrooms|suites|rooms|cabins|bungalows|cottages|flats|apartments|huts|units|houses|chalets|tents|villas|pods|studios|yurts|tree ?houses|lodges),? ?(?:and |which |that )?(?:each |both |all )?(?:of them )?(?:with|having|has|have)(?: each)? (?:a bathroom with |a bath with )?"
    r"(?:(?:its|their) own |own |an? |one )?(?:[a-z]+,? (?:a )?){0,2}(?:and (?:an? |its own )?)?$"
)


_IN_EACH = re.compile(r"[^.;()\n]{0,40}\b(?:in|for|per) each\b")
_LONE = re.compile(rf" ?, ({NUMBER})(?= ?(?:[.;\n]|$)| (?:pieces|pcs|head|of them|in all)\b)")
_MANY = tuple(
    re.compile(pattern)
    for pattern in (
        rf"[^.;,\n]{{0,30}}, ({NUMBER}) of them\b",
        rf",? (?:there are|we have|i have|about|some|around|maybe)? ?({NUMBER})(?: of them| in all| or so| head)(?![\w])",
        rf", (?:there are|we have|i have) ({NUMBER})\b(?! ?(?:m|ft|psi|gpm))",
    )
)
_DRY_AFTER = re.compile(r"[^.;\n]{0,12}\b(?:outhouse|compost\w*|none|pit|dry)\b")
_UNITS = r"m|ft|psi|gpm|l|lpm|bar|gal|mm|in|inch|w|v|hp|gallon|litre|liter|head|kpa|h"
_SPELT = r"one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|(?:twenty|thirty|forty|fifty|sixty)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine)(?!-))?"
_BESIDE = re.compile(
    rf"s? +(?:about |ca\.? )?(\d{{1,3}}|{_SPELT})\b(?! ?(?:{_UNITS})\b|[/\"']|[.,]\d|-)(?![ ]+(?:of|at|metres|meters|feet|inch)\b)"
)
_BEHIND = re.compile(
    r"s?(?: (?:on|in|at) [a-z]+(?: [a-z])?)? *(?:x|:|=|-|\() *(?:about |ca\.? |approx\.? |~ ?|maybe )?"
    rf"(\d{{1,4}}|(?:{_SPELT})\b)\b(?! ?(?:pairs?|pieces|pcs|{_UNITS})\b|[.,/](?=\d))"
)
_NIL = re.compile(r"s? ?(?::|=|-) ?(?:none|no|nil|0)\b(?! idea)")
_RUNS = re.compile(
    r" (?:is |is turned |comes |gets )?(?:on|open|running|runs|opens|opened|should|must|needs|wants)\b"
)


def _named(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """A thing in a list or on its own: "shower x 2", "toilet: 1", "shower, sink and toilet"."""
    start, end, plural = match.start(), match.end(), match["thing"].endswith("s")
    if _dry(low, path, start):
        return None
    rooms = _ROOMS.search(low[max(0, start - 90) : start])
    if rooms and not plural:
        return Counted(path, value(rooms["n"])[0], start, end)
    homes = _HOMES.search(low[max(0, start - 90) : start])
    if homes and not plural and _IN_EACH.match(low, end):
        return Counted(path, value(homes[1])[0], start, end)
    every = None if plural else _of_all(low, match)
    if every and not path.startswith("animals"):
        return Counted(path, value(every[1])[0], start, end)
    after, before = low[end : end + 30], low[max(0, start - 40) : start]
    listed = _in_list(path, match, before, after)
    if listed is not None:
        return listed
    if path.startswith("animals"):
        return None
    if _NIL.match(after):
        return Counted(path, 0, start, end)
    if path == "outlets.toilet" and _DRY_AFTER.match(after):
        return None
    if _ONE_OF.search(before[-14:]):
        return None
    hosed = path == "outlets.hose" and (_HOSE_SIZE.match(low, end) or _ON_IT.search(before))
    if plural or hosed or SKIP_THING.match(after) or ACT.search(before):
        return None
    if negated(low, start):
        return Counted(path, 0, start, end)
    if path == "use.troughs":
        return None
    tap = re.search(r"\b(?:outside|outdoor|garden|yard) tap", match["thing"])
    apart = path in {"outlets.hose", "outlets.drip"} and not tap
    listed_before = re.search(r"(?:,|and|plus|&|\+|:|/|one)\s*(?:\w+ )?$", before)
    runs = path == "outlets.hose" and _RUNS.match(after)
    if apart and not listed_before and not runs:
        return None
    return Counted(path, 1, start, end, False, True)


def _in_list(path: str, match: re.Match[str], before: str, after: str) -> Counted | None:
    """A thing whose number stands behind it."""
    for pattern in _MANY:
        many = pattern.match(after)
        if many and match["thing"].endswith("s"):
            return Counted(path, value(many[1])[0], match.start(), match.end() + many.end())
    lead = before.rstrip(" -*•")
    head = bool(re.search(r"\d {2,}$", before)) or not lead.strip() or lead[-1:] in "\n,;:(."
    lone = _LONE.match(after) if head and match["thing"].endswith("s") else None
    if lone:
        return Counted(path, value(lone[1])[0], match.start(), match.end() + lone.end())
    beside = _BESIDE.match(after)
    found = beside if head and beside else _BEHIND.match(after)
    if found is None:
        return None
    return Counted(path, value(found[1])[0], match.start(), match.end() + found.end())
