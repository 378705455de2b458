"""Outlets and animals counted, looked over once more: those of rooms ("two cabins each with a sink
and a shower"), what words of an outlet mean another thing ("a spring in a basin", "to wash a horse"),
and what the next words put right ("three showers, the ensuite is a pantry now, so two").
"""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site.enquiry_counts import BARE, Counted, how_many
from calc.site.enquiry_numbers import FEW, value

_KINDS = ("outlets.saver", "outlets.shower", "outlets.sink", "outlets.toilet", "outlets.washer", "outlets.hose")  # fmt: skip
_THING = "|".join(
    f"(?:{BARE[path].pattern.replace('(?P<thing>', '(?:', 1)})" for path in _KINDS
).replace("(?<![\\w¤-])", "")
_ROOM = r"(?:bath ?rooms?|baths?|ensuites?|en[ -]suites?|cabins?|houses?|units?|cottages?|bungalows?|yurts?|huts?|apartments?|flats?|lodges?|rooms?|chalets?|tents?|villas?|pods?|studios?|caravans?|blocks?|dorms?|dormitor(?:y|ies)|bedrooms?|suites?|trailers?)"
_BATH = r"(?:(?:an? |one |its own |own )?(?:bath ?room|bath|ensuite|en suite|wet room) (?:with|of|having|w/?) )?"
_ITEM = rf"{_BATH}(?:(?:an?|one|its own|own|the|{FEW}) )?(?:(?!(?:and|with|each|in|the|for|per|no|but)\b)[a-z-]+ ){{0,2}}?(?:{_THING})"
_LIST = rf"(?P<list>{_ITEM}(?:(?: ?, ?and | ?, ?| and | n | ?& ?| ?\+ ?| plus | with |,? plus ){_ITEM})*)"
_HAVE = r"(?:with|w/|w|has|have|having|contains?|gets?|:)"
_EACH = r"(?:each|apiece|in each|per (?:room|cabin|house|unit|flat|cottage|hut|bathroom)|in every one|every one)"
_IN_ROOMS = (
    re.compile(rf"(?<![\w¤.,-])(?P<n>{FEW}) (?:[a-z-]+ )?{_ROOM}(?:[ ,(]*{_HAVE} | ?\( ?|: ?){_LIST}[ ,]*(?:in )?{_EACH}\b"),
    re.compile(rf"\b{_LIST} in (?:each|every one) of (?:the |our |my |these |those )?(?P<n>{FEW}) (?:[a-z-]+ )?{_ROOM}\b(?P<more>,? (?:and|plus) (?:one|another|one more) (?:in|at|for) (?:the|our|my) )?"),
    re.compile(rf"(?<![\w¤.,-])(?P<n>{FEW}) (?:[a-z-]+ )?{_ROOM}[ ,(-]*(?:and |which |that )?(?:in )?(?:each|every one|all)(?: one| room| of them| {_ROOM})? ?(?:{_HAVE}|is|there is|are)(?: each)? {_LIST}"),
    re.compile(rf"\b{_ROOM} (?:each|all) {_HAVE} {_LIST},? (?:and |but )?there(?: are|'s| is) (?P<n>{FEW})(?: of them)?\b"),
    re.compile(rf"(?<![\w¤.,-])(?P<n>{FEW}) (?:[a-z-]+ )?(?:toilets|loos|wcs|lavatories)(?:,| and)? (?:with )?(?:there is |there's )?{_LIST} in each\b"),
)  # fmt: skip


_NO_MORE = re.compile(  # what a house has once, behind what each of its rooms has
    r"(?:,? plus |(?:, ?and |, ?| and | ?\+ ?| ?& ?))(?:an? |one |the )?(?:(?<=plus )|(?<=plus an )|(?<=plus a )|(?<=plus one )|(?=(?:utility|laundry|washing|washer|outside|outdoor|garden|hose|clothes)\b))"
)


def in_rooms(low: str, things: list[Counted]) -> list[Counted]:
    """What each of several rooms has, as often as there are rooms, for what was counted of it once."""
    for pattern in _IN_ROOMS:
        for match in pattern.finditer(low):
            rooms, (start, end) = value(match["n"])[0], match.span("list")
            stop = _NO_MORE.search(low, start, end)
            end = stop.start() if stop else end
            rooms += bool("more" in match.groupdict() and match["more"])
            if rooms != int(rooms) or not 0 < rooms <= 200:
                continue
            found = [
                Counted(path, rooms * each, at, stop)
                for path in _KINDS
                for each, at, stop in _of_list(low, path, start, end)
            ]
            if found:
                inside = range(start, end)
                things = [
                    one for one in things if one.start not in inside and one.end - 1 not in inside
                ]
                if stop:
                    near = range(end, end + 40)
                    things = [
                        replace(one, count=1.0, high=1.0)
                        if one.start in near and one.count == rooms
                        else one
                        for one in things
                    ]
                things += found
    return sorted(things, key=lambda one: one.start)


def _of_list(low: str, path: str, start: int, end: int) -> list[tuple[float, int, int]]:
    """(how many, start, end) of one kind in a room's list."""
    found = []
    for thing in BARE[path].finditer(low, start, end):
        before = re.search(
            rf"(?<![\w-])({FEW}) (?:[a-z-]+ )?$",
            low[max(start, thing.start() - 24) : thing.start()],
        )
        number = how_many(before[1])[0] if before else 1.0
        if number and (before or not thing["thing"].endswith("s")):
            found.append((number, thing.start(), thing.end()))
    return found


# Another thing ------------------------------------------------------------------------------------

_SHAPED = re.compile(r"[ -](?:type|style|shaped|sized|like)\b|-(?:and|to|in)-")
_OF_SIZE = re.compile(
    r"s? of (?:about |some |roughly )?(?:\d|¤)|s? (?:of the (?:fountain|spring|source)|catch(?:es)?|collects?|holds? (?:about )?\d|overflows?|fills?|is fed|under the spring)\b"
)
_IN_A = re.compile(
    r"\b(?:in|into|fills?|filling|from|out of|through|over|empties into|runs into|collects in) (?:an?|the|this|that|our|its) (?:[a-z-]+ ){0,2}$"
)
_SOURCE = re.compile(r"\b(?:spring|stream|creek|seep|brook|burn|rain|overflow|pump)\b")
_RAN = re.compile(
    r"\b(?:ran|run|running|laid|lay|drag(?:ged)?|stretch(?:ed)?|rolled out|threw|pulled) (?:an?|the|our|my|that|out a) (?:[a-z-]+ ){0,2}$"
)
_TO = re.compile(r" (?:to|from|over|across|down|up|out|through|along)\b")
_FIRE = re.compile(r"\b(?:fire|brigade|insurance|insurer|pump truck|tanker)\b")
_TALKED = re.compile(
    r"\b(?:talk(?:s|ing|ed)?|go(?:es|ing)? on|ask(?:s|ing|ed)?|dream(?:s|ing|ed|t)?|joke[sd]?) (?:on )?(?:about|of) [^.;,\n]{0,25}$"
)
_OWNED = re.compile(
    r"(?:^|[,;:&+\n(.-] ?|\b(?:have|has|having|got|keep|keeps|own|owns|and|plus|with|is|are|there's|for|feeds?|waters?|just|only|includes?|including) )$"
)
_WEAK = re.compile(
    r"^an? (?:[a-z]+ )?(?:weak|poor|feeble|pathetic|cold|lukewarm|dribbly|miserable|decent|proper|good|better|strong|steady|reasonable|usable|hot|quick|long|short|nice)\b"
)
_OF_QUALITY = re.compile(
    r"\b(?:complain(?:s|ed|ing)? (?:of|about)|wants?|wanted|wish for|gets?|got|gives?|needs?|for|like|than|enjoy|as|have|has|had|take|takes|of|is|only) $"
)
_STANDS = re.compile(r"(?:^|[.;\n] ?)$")
_LISTED = re.compile(r" ?(?:[,.;&+)\n]|$|and\b|or\b|plus\b)")
_WASH = re.compile(r"\b(?:wash|bathe|bath|swim|dip|soak)(?:es|ing)? (?:ourselves )?in $")
_CAN_GET = re.compile(
    r"\bcan (?:he|she|they|one|you) (?:get|have|fit|add|run|install) [^.;\n]{0,12}$"
)
_MILK = (["milk"], ["milking"])
_HERD = re.compile(r"^(?:the|our|my) cows\b")


def _other(low: str, one: Counted) -> bool:
    """Whether the words of one thing named in the singular mean another thing."""
    if one.count != 1 or one.together:
        return False
    said = low[one.start : one.end]
    thing, before, after = (
        said.split(" ")[-1],
        low[max(0, one.start - 40) : one.start],
        low[one.end : one.end + 40],
    )
    article = re.match(r"(?:an?|the|our|my|this|that|its) ", said)
    lead = before + (article.group() if article else "")
    if _SHAPED.match(after) or _TALKED.search(before) or _CAN_GET.search(before):
        return True
    if one.path == "outlets.sink" and thing == "basin":
        around = low[max(0, one.start - 60) : one.start]
        return bool(_OF_SIZE.match(after) or (_IN_A.search(lead) and _SOURCE.search(around)))
    if one.path == "outlets.hose":
        fire = thing == "hydrant" and _FIRE.search(low[max(0, one.start - 150) : one.end + 80])
        return bool(fire or (_RAN.search(lead) and _TO.match(after)))
    if one.path == "outlets.shower":
        return bool(_WEAK.match(said) and _OF_QUALITY.search(before))
    if one.path == "use.troughs":
        return bool(_WASH.search(before))
    if one.path == "animals.dairy" and article and said.split(" ")[1:] in _MILK:
        return True
    if one.path.startswith("animals."):
        return bool(_HERD.match(said)) or (
            said.startswith(("a ", "an "))
            and not (_LISTED.match(after) if _STANDS.search(before) else _OWNED.search(before))
        )
    return False


# Put right ----------------------------------------------------------------------------------------

_STOP = r"(?= ?(?:[.,;\n)!?]|$))"
_SO = re.compile(
    rf"[^.\n?]{{0,60}}?[,;-] ?so (?:it's |it is |now |just |only |that's |we have |call it |make it )*({FEW}){_STOP}"
)
_OTHERS = re.compile(
    r"\b(?:wife|husband|partner|kids?|child(?:ren)?|bab(?:y|ies)|lodgers?|people|persons?|guests?|me|family|adults?|pumps?|tanks?|wells?|panels?|zones?|trees|rooms|beds?|us)\b"
)
_THERE = re.compile(
    rf",? (?:but |and )?(?:there's|there are|there is|we have|we've got|i have|i've got) (?:just |only |now )?({FEW}){_STOP}"
)
_COUNTS = re.compile(
    rf" ?[,;:.-]+ ?no,? (?:[a-z]+ ){{1,3}}(?:counts|says|makes it|reckons|tells me|thinks) (?:it is |it's |there are )?({FEW})(?={_STOP[3:-1]}| and\b)"
)
_OUT_OF = re.compile(
    rf"(?: [a-z]+){{0,3}} (?:out of (?:the |a total of )?({FEW})(?: total| in all| in total| altogether)?|of ({FEW}) (?:total|in all|in total|altogether)){_STOP}"
)
_NONE_NOW = re.compile(
    r"[:,]? (?:there is|there's|there are) none\b|,? (?:but |and |though )?(?:we|i|he|she|they)(?: have| has|'ve got| have got|'ve) none\b|[?:]+ (?:no|nope|none|never|not)\b(?! (?:idea|sure|yet sure|problem))"
)
_DRY_IS = re.compile(
    r"(?:'s| is| are)(?: an?)? (?:dry(?! and\b|-)|compost\w*|pit|earth|bucket|long ?drop|outhouse|waterless|chemical)\b"
)
_PART = re.compile(rf"^({FEW}) (?:of (?:the|our|my|these|those)) ")
_RUNS = re.compile(r" (?:are |to be |being )?(?:open|on|running|going|in use|used)\b")
_RUN = re.compile(r" (?:may |can |will )?(?:run|go|work|be on|be open)\b")
_SOME_OF = re.compile(rf"(?<![\w¤.,-])({FEW}) (?:out )?of (?:the |our |my |these |those )?$")
_AGAIN = re.compile(
    r",? ?(?:so|that is|i\.?e\.?|meaning|in other words|which is|which makes|=|\() ?(?:about )?"
)


_ANOTHER = re.compile(
    r"(?: [a-z]+){0,2},? (?:and )?another(?: one)? (?:by|in|at|near|next to|beside|outside|upstairs|downstairs|out|for|on|behind|off)\b"
)


def _amended(low: str, one: Counted, after: int) -> list[Counted]:
    """One thing counted as the next words put it right; ``after``: where the next thing begins."""
    tail = low[one.end : min(after, one.end + 90)]
    if one.path == "outlets.toilet" and _DRY_IS.match(tail):
        return [replace(one, count=0.0, high=0.0, vague=False)]
    none = re.search(r"\bnone $", low[max(0, one.start - 5) : one.start])
    if one.count == 1 and (none or _NONE_NOW.match(tail)):
        return [replace(one, count=0.0, high=0.0, vague=False)]
    more = _ANOTHER.match(tail) if one.count == 1 and one.path != "outlets.hose" else None
    if more:
        return [replace(one, count=2.0, high=2.0, end=one.end + more.end(), vague=False)]
    some = _SOME_OF.search(low[max(0, one.start - 28) : one.start])
    if some and one.path.startswith("outlets."):
        part = Counted(one.path, value(some[1])[0], one.start, one.end, True)
        whole = replace(one, together=False)
        return [whole, part] if one.together or _RUNS.match(tail) or _RUN.match(tail) else [whole]
    outer = _OUT_OF.match(tail)
    if outer:
        number = value(outer[1] or outer[2])[0]
        if number == int(number) and number >= one.count:
            return [
                replace(one, together=True),
                Counted(one.path, number, one.end, one.end + outer.end()),
            ]
    for pattern in (_SO, _THERE, _COUNTS):
        match = pattern.match(tail)
        if match and pattern is _SO and _OTHERS.search(match.group()):
            continue
        number = value(match[1])[0] if match else 0.0
        if (
            match
            and number == int(number)
            and 0 < number <= 500
            and (pattern is not _SO or one.count != 1)
        ):
            return [replace(one, count=number, high=number, end=one.end + match.end(), vague=False)]
    return [one]


def _said_again(low: str, one: Counted, earlier: list[Counted]) -> bool:
    """Whether a number only says again what was counted: "85 pair, so 85 cows with calves"."""
    for old in reversed(earlier):
        if old.path != one.path:
            continue
        same = old.count == one.count and _AGAIN.fullmatch(low[old.end : one.start])
        part = _PART.match(low[one.start : one.end]) and old.count >= one.count
        return bool(same or (part and not one.together))
    return False


def settled(low: str, things: list[Counted]) -> list[Counted]:
    """All things counted, looked over: those of rooms, those that are another thing, those put right."""
    things = in_rooms(low, things)
    kept: list[Counted] = []
    for at, one in enumerate(things):
        after = things[at + 1].start if at + 1 < len(things) else len(low)
        if _other(low, one):
            continue
        if not _counts(one):
            kept.append(one)
        elif _said_again(low, one, kept):
            if _PART.match(low[one.start : one.end]) and _RUNS.match(low, one.end):
                kept.append(replace(one, together=True))
        else:
            kept += _amended(low, one, after)
            if one.together and re.search(
                r"\ball (?:the |of the )?$|^(?:all|the) ", low[max(0, one.start - 12) : one.start]
            ):
                kept.append(replace(one, together=False))
    return kept + running(low)


def _counts(one: Counted) -> bool:
    return one.path.startswith(("outlets.", "animals.", "use.troughs")) and one.count > 0


_GOING = re.compile(
    rf"(?<![\w¤-])(?P<all>{FEW}) (?:[a-z-]+ )?(?P<what>showers|sprinklers|hoses|taps|sinks|basins|toilets)(?:[,;:]| ?\()? ?(?:and |but |with |of which |of them )*(?:usual(?:ly)?|normally|generally|maybe|only|about|at most|up to|never more than|often|sometimes| )*"
    rf"(?P<n>{FEW}|both|all)(?: of (?:them|which))? (?:(?:may|can|will|could|might) (?:be )?)?(?:are |is )?(?:going|open|on|running|in use|run|used|go)\b(?P<rest> (?:[a-z]+ ){{0,2}}?(?:at (?:any )?(?:one|the same|a) (?:time|moment)|at once|together|in (?:the )?(?:same|one) (?:time|moment)|every morning|each morning))?"
)


def running(low: str) -> list[Counted]:
    """How many of several are open together: "10 sprinklers, 3 going at any one time"."""
    found = []
    for match in _GOING.finditer(low):
        path = next(
            (p for p in BARE if p.startswith("outlets") and BARE[p].fullmatch(match["what"])), ""
        )
        number = value(match["all"])[0] if match["n"] in {"both", "all"} else value(match["n"])[0]
        if path and (match["rest"] or match["n"] == "both") and number == int(number):
            found.append(Counted(path, number, match.start("n"), match.end(), True))
    return found
