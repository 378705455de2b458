"""Numbers put right by what stands round them: pairs of pressures, corrections, minutes."""

from __future__ import annotations

import re

from calc.errors import InputError
from calc.site import enquiry_noise as noise
from calc.site.enquiry_model import Token
from calc.site.enquiry_numbers import pairs
from calc.units import parse

Spans = tuple[tuple[int, int], ...]

_MINUTES = re.compile(
    r"(?:takes?|took|in|every|for|after|lasts?|within|then|each|runs? for|on for|off for)(?: (?:about|around|roughly|only|just|at least|approx\.?))* $"
)

_MINUTES_RIGHT = re.compile(
    r" ?(?:to (?:fill|empty|recover|refill|run)|before|later|on\b|off\b|(?:of|per) (?:running|pumping|hour|use)|and (?:then )?(?:it )?(?:stops?|shuts?|runs? dry)|a day|$|[.,;)])"
)

_SET = re.compile(r"\bpump\b[^.;\n]{0,40}\bset (?:at |to |for )?$")
_USUAL = {(20, 40), (30, 50), (40, 60), (50, 70)}  # psi; common practice, no source

_TIMES = re.compile(
    r"\b(?:fill|fills|filling|empt(?:y|ies)|runs? dry|bucket|shower(?:s|ing)?|timer|wait|recovers?|cycles?|shuts off|stops|pumping)\b"
)

_FIX = re.compile(
    r"^[ ,.;:()?!\"'-]*(?:\w+[.,;!?]* (?:- )?){0,4}?(?:in (?:practice|reality|truth|fact),? (?:it'?s|it is|it was|i get|we get|there'?s)|no(?=,|[.]* (?:sorry|wait|it's|its|make|actually|that's|i mean|hang))|nope|sorry|wait|scratch that|correction|make that|i mean|i meant|actually(?: it's| it is| more like| nearer| closer to| about|,)? ?$|but (?:i|we) (?:make it|made it|measured|paced|counted)|i (?:think|reckon|guess|believe),? (?:it'?s|it is)(?: more like| nearer| closer to| really| rather)|or rather|er|oops|rather|(?:that|it) should be|let me correct|strike that|i take that back|on second thoughts?|hang on|hmm|my mistake|i tell a lie|no,? i tell a lie|wrong,? [a-z' ]{0,30}|typo|(?:then |but |and )*(?:i |we |i've |we've |it |has |been |have |since |now |just )*(?:(?:upgraded|switched|increased|went up|moved up) (?:it |them |that )?to|(?:replaced|swapped) (?:it|them|that) (?:with|for|by))|(?:then |but |and )*(?:i |we )?(?:cancelled|canceled|returned (?:it|them)|sent (?:it|them) back|(?:swapped|changed|exchanged) (?:it |them )?(?:to|for)))\b[^¤]{0,60}$"
)

_OH_NO = re.compile(  # words of the first number, then what takes it back
    r"[^¤\d.;:?!]{0,60}\b(?:(?:ah|oh|er|erm|uh),? no|no,? (?:no|sorry|wait)|sorry,? no|wait,? no|hang on|scratch that|i tell a lie)\b[ ,.:-]*(?:(?:sorry|it'?s|it is|it was|make it|make that|about|more like)[ ,]*)*"
)
_AGAIN = re.compile(
    r"[^¤\d]{0,90}?[.;!?](?: |\n)*(?:oh,? |wait,? |hang on,? |er,? |hm+,? )?no[,.:;!-]+ *(?:(?:sorry|wait|it is|it's|it was|that's|make it|make that|more like|actually|about|i mean)[,.]? *)*"
)
_LATER = 90  # characters up to a sentence that corrects what was said; our choice
_STANDS = re.compile(
    r" ?(?:$|[,.;)\n]|up\b|down|deep|away|high|long|to\b|with\b|from|above|below|over|under|of\b|not\b|and\b|in the)"
)
_BUT = re.compile(r"^[ ,]*(?:but|it is|it's|rather|more like|that's)[ ,]*(?:\w+ ){0,3}$")


def _can_be(low: str, pair: Token) -> bool:
    """Whether a switch can have two such pressures."""
    if not 1.15 <= pair.high / max(pair.low, 0.1) <= 4:
        return False
    if re.search(r"pre-?charge[^,;.]*$", low[pair.start - 25 : pair.start]):
        return False
    if pair.unit == "psi" and not 10 <= pair.low <= 120:
        return False
    return not (pair.unit == "bar" and "psi" in low[pair.end : pair.end + 5])


def paired(low: str, numbers: list[Token]) -> None:
    """Pairs of pressures in the place of what their numbers were read as."""
    for pair in pairs(low):
        around = low[max(0, pair.start - 60) : pair.end + 60]
        said = low[pair.start : pair.end + 1]
        unit = re.search(r"(?:psi|bar|kpa)", said)
        ready = (
            re.search(r"switch|cut[ -]?(?:in|out)|pressure sw", around)
            or (unit and re.search(r"\bpump|pressure tank|press|cycl|set", around))
            or (
                (pair.low, pair.high) in _USUAL
                and (said.count("/") == 1 or _SET.search(low, 0, pair.start))
            )
        )
        spoken = "spoken" in pair.extra and re.search(
            r"\bpump|pressure (?:tank|is)|pressure's|bladder|\bjet\b|shower", around
        )
        ready = ready or spoken
        if (
            "/" not in said
            and not spoken
            and not re.search(
                r"switch|cut[ -]?(?:in|out|s)|kicks|comes on|cycl|between|set\b", around
            )
        ):
            continue
        small = pair.high <= 10 and not unit
        if small and (re.search(r"\d $", low[max(0, pair.start - 2) : pair.start]) or not re.search(
                r"switch|cut[ -]?(?:in|out)", low[max(0, pair.start - 22) : pair.end + 18])):  # fmt: skip
            continue
        if not ready or not _can_be(low, pair):
            continue
        inside = [one for one in numbers if one.start < pair.end and pair.start < one.end]
        if any(one.kind not in {"bare", "pressure", "time"} for one in inside):
            continue
        pair.end = max([pair.end, *(one.end for one in inside)])
        for one in inside:
            numbers.remove(one)
        numbers.append(pair)
    numbers.sort(key=lambda one: one.start)


_OF_IT = re.compile(r" of (?:it|that|this|which)\b")


def parts(low: str, numbers: list[Token]) -> None:
    """ "2,200 gallons, 500 of it for fire": a part has the unit of its whole."""
    for whole, part in zip(numbers, numbers[1:], strict=False):
        near = part.start - whole.end < 60 and "\n\n" not in low[whole.end : part.start]
        less = part.kind == "bare" and whole.kind == "volume" and part.low < whole.low
        if near and less and _OF_IT.match(low, part.end):
            part.kind, part.unit = whole.kind, whole.unit


_OURS = re.compile(
    r"\b(?:i|we|you)(?:'d| would)?(?: only| just| best| rather)? (?:count|reckon|figure|bank|rely|plan) on(?: only| just| about)? $|\b(?:ours|mine|i|we) (?:only |just )?(?:gives|makes|yields|has|got|get|measured|counted|timed)(?: only| just| about)* $"
)
_STOP = re.compile(r" ?(?:[.,;!\n]|$|in \w+|at (?:best|most|worst))")


def likewise(low: str, numbers: list[Token]) -> None:
    """ "his gives 20 L/min, ours 8", "he wrote 12 gpm, I measured 7": a flow, too."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        near = second.start - first.end < 60 and "\n" not in low[first.end : second.start]
        if near and first.kind == "flow" and second.kind == "bare" and first.low != second.low:
            ours = _OURS.search(low[max(0, second.start - 40) : second.start])
            if ours and _STOP.match(low, second.end):
                second.kind, second.unit = first.kind, first.unit


_SEASON = re.compile(
    r",? (?:in|at|by|during) (?:late |early |the |a |dry |wet |end of )*(?:summer|spring(?! (?:box|line))|april|may|june|july|august|september|october|november|autumn|fall|winter|dry|rains|drought|monsoon)\b"
)


def seasons(low: str, numbers: list[Token]) -> None:
    """ "9 gpm in spring and 4 in late summer": the second has the unit of the first."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        near = second.start - first.end < (60 if first.kind == "flow" else 40) and first.kind in {
            "flow",
            "length",
        }
        near = near and not _thin(first)
        unit = second.kind == "bare" or (
            second.unit == "in" and low[second.end - 2 : second.end] == "in"
        )
        at = second.end if second.kind == "bare" else second.end - 3
        if near and unit and _SEASON.match(low, at):
            second.kind, second.unit = first.kind, first.unit
            second.end = at
            if first.kind == "flow" and not first.why:  # the words round the first one tell it
                second.extra["as"], second.extra["as_end"] = first.start, first.end


_EXACTLY = re.compile(
    r"[^¤\d]{0,50}\b(?:to be (?:exact|precise)|more exact(?:ly)?|more precisely|exactly|precisely)\b[ ,:]*(?:(?:it'?s|it is|about) )*$"
)
_MEASURED = re.compile(
    r"[^¤\d]{0,40}\b(?:i|we|he|she|(?:my|our) [a-z]+) (?:then |have |later )?(?:shot|measured|taped|surveyed|levelled)\b[^.;\d]{0,25}[:,]? ?(?:(?:it'?s|it is|and got|at|it came to) )*$"
)
_TOLD = re.compile(r"\b(?:told you|(?:i|we) (?:said|wrote|thought|guessed|reckoned))\b[^.;\d]*$")
_TOLD_CLOSE = 0.5  # the same, where the first one is only what was said before; our choice
_CLOSE = 0.2  # share by which an exact number may differ from the first guess; our choice


def exactly(low: str, numbers: list[Token]) -> None:
    """ "about 500 ft to the house, to be exact 487 ft": the exact one stands in the other's place."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        alike = second.kind == first.kind and _thin(second) == _thin(first)
        alike = alike and second.unit == first.unit and first.kind != "bare"
        if not alike or first.why or second.why or "as" in second.extra:
            continue
        gap = low[first.end : second.start]
        rough = _TOLD.search(low, max(0, first.start - 60), first.start)
        said = _EXACTLY.fullmatch(gap) or ((first.about or rough) and _MEASURED.fullmatch(gap))
        close = _TOLD_CLOSE if rough else _CLOSE
        if said and 0 < abs(first.low - second.low) <= close * second.low:
            first.why = noise.WITHDRAWN
            _stands_for(second, first)


_SAID_AGAIN = re.compile(r" ?[(\[] ?(?:or |about |ca\.? |roughly |approx\.? |i\.?e\.? |= ?)*")


def turned(low: str, numbers: list[Token]) -> None:
    """ "61 m (200 ft) deep" is one number: what its brackets say in other units is no other one."""
    for first, second in list(zip(numbers, numbers[1:], strict=False)):
        if first.kind != second.kind or first.unit == second.unit or _thin(first) or _thin(second):
            continue
        inside = _SAID_AGAIN.fullmatch(low[first.end : second.start])
        if not inside or low[second.end : second.end + 1] not in {")", "]"}:
            continue
        if first.low != first.high or not _equal(first, second):
            continue
        first.end = second.end + 1
        numbers.remove(second)


def _equal(first: Token, second: Token) -> bool:
    try:
        a, b = (parse(f"{one.low:.12g} {one.unit}", one.kind).value for one in (first, second))
    except (InputError, ValueError, KeyError):
        return False
    return abs(a - b) <= 0.04 * max(abs(a), abs(b))


def correct(low: str, numbers: list[Token], sentences: Spans) -> None:
    """What is taken back at once is withdrawn; what follows stands in its place."""
    _named(low, numbers)
    _once(low, numbers)
    for at, second in enumerate(numbers[1:], 1):
        gap = low[numbers[at - 1].end : second.start]
        first = None if "again" in second.extra else _taken_back(low, numbers, at, gap)
        if first is None or first.why or (second.kind == "bare" and second.unit):
            continue
        if second.kind == "bare" and not _STANDS.match(low, second.end):
            continue
        if second.kind == "bare":
            second.kind, second.unit = first.kind, first.unit
        first.why = noise.WITHDRAWN
        second.extra["as"] = first.extra.get("as", first.start)
        second.extra["as_end"] = first.extra.get("as_end", first.end)


_NOT = re.compile(r" ?[a-z']{0,9},? ?(?:\(?not|instead of|rather than|and not|nicht) (?:the )?$")


def _named(low: str, numbers: list[Token]) -> None:
    """ "sorry, 18 not 15": what is negated by its number is corrected, however far back it stands."""
    for second, denied in zip(numbers, numbers[1:], strict=False):
        if not _NOT.fullmatch(low[second.end : denied.start]) or second.why:
            continue
        first = next(
            (
                one
                for one in reversed(numbers)
                if one.end <= second.start
                and one.low == denied.low
                and not one.why
                and denied.kind in {"bare", one.kind}
                and (second.kind in {"bare", one.kind} or one.kind == "bare")
            ),
            None,
        )
        if first is None or "as" in second.extra or first.kind == second.kind == "bare":
            continue
        if second.kind == "bare":
            second.kind, second.unit = first.kind, first.unit
        first.why, denied.why = noise.WITHDRAWN, noise.NEGATED
        _stands_for(second, first)


_ONCE = re.compile(
    r" ?[a-z/]{0,9} (?:was|were|is|are|had been|would be) (?:(?:only|just|back|when|what|how|for|from|of|in|at|the|his|her|my|our|it) )*(?:last|old|former|previous|before|winter|spring|summer|autumn|fall|first|wet|new|drilled|driller\w*|seller\w*|agent\w*|neighbou?r\w*|january|february|march|april|may|june|july|august|september|october|november|december|¤+|used|started|guess|plan|brochure|log|wrong)\b"
)
_IS = re.compile(
    r"[^¤\d]{0,60}\b(?:it'?s|it is|it has|now|there'?s|today|this year)(?: (?:is|at|only|about|more like|now|really|down to))* $"
)


def _once(low: str, numbers: list[Token]) -> None:
    """ "water at 19 m, no wait, 19 was last winter, it's 23 m now": the number said twice was once."""
    for at, (first, again) in enumerate(zip(numbers, numbers[1:], strict=False)):
        gap = low[first.end : again.start]
        same = again.low == first.low and again.kind in {"bare", first.kind}
        if not same or first.kind == "bare" or first.why or len(gap) > _LATER or "\n\n" in gap:
            continue
        if not _FIX.match(gap + "x") or not _ONCE.match(low, again.end):
            continue
        first.why = again.why = noise.PAST
        for second in numbers[at + 2 : at + 3]:
            alike = second.kind == first.kind and _thin(second) == _thin(first)
            if alike and not second.why and _IS.fullmatch(low[again.end : second.start]):
                _stands_for(second, first)


def _stands_for(second: Token, first: Token) -> None:
    """The words round the first number tell what the second one is."""
    second.extra["as"], second.extra["as_end"] = first.start, first.end
    second.extra["again"] = 1.0


_WAS = re.compile(
    r"\b(?:was|were|normally|usually|could get|got|gave|stood|had|used|made|yielded|ran|came|measured|when (?:we|i|it|they)|at first|originally|once|back then|years ago|in ¤+)\b[^.;]*$"
)
_IS_NOW = re.compile(
    r"(?: when (?:we|i|they|it) [^.;,\d]{3,30})?[^.;\d]{0,18}(?:[,;.] ?(?:and |but )?| (?:and|but) (?:it )?)(?:these days|now|nowadays|today|currently|at present|this year|lately)\b,? ?(?:[a-z']+ ){0,4}?$"
    r"|[^.;\d]{0,14}[,;.]? ?(?:and |but |then |so )*(?:since then |now )?\b(?:i|we|he|they)(?:'ve| have|'d| had)? (?:since |now |just |then )?(?:lowered|raised|moved|pulled|dropped|extended|deepened|lengthened|shortened|changed) (?:it|that|this|them|the \w+) (?:up |down |out )?to (?:about )?$"
    r"|[,;.]? ?(?:and |but |then |so )*(?:since then |now )?(?:i|we|he|they)(?:'ve| have)? (?:since |now |then )?(?:put|set|reset|hung|dropped) (?:it|that|this|them) (?:back |down |back down |up )?(?:at|to) (?:about )?$"
)

_NEARER = re.compile(
    r"[^.;\d]{0,25}\b(?:now|today|these days|nowadays|this (?:year|summer))\b,? ?(?:it'?s |it is )?(?:only |about |just |nearer |more like |down to |closer to |rather )*"
)


def since(low: str, numbers: list[Token]) -> None:
    """ "the water stood at 8 m, now it's at 14 m": of what was and what is, what is."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        alike = second.kind == first.kind and _thin(second) == _thin(first)
        if first.why == noise.PAST and first.kind == "flow" and second.kind == "bare":
            if _NEARER.fullmatch(low[first.end : second.start]) and not second.why:
                second.kind, second.unit = first.kind, first.unit
            continue
        if first.why or second.why or not (alike or second.kind == "bare") or first.kind == "bare":
            continue
        gap = low[first.end : second.start]
        if not _IS_NOW.fullmatch(gap) or not _WAS.search(
            low, max(0, first.start - 70), first.start
        ):
            continue
        if second.kind == "bare":
            if not _STANDS.match(low, second.end):
                continue
            second.kind, second.unit = first.kind, first.unit
        first.why = noise.PAST
        _stands_for(second, first)


_STRONG = re.compile(r"\bno,? (?:sorry|wait|i )|\bsorry\b|\bcorrection\b|\bscratch that\b")


_NEXT = re.compile(
    r"[a-z]{3}[.;] +[a-z]"
)  # another sentence begins: "3-phase no, single. Sits at 66 m"


def _taken_back(low: str, numbers: list[Token], at: int, gap: str) -> Token | None:
    """The number that the one at ``at`` corrects: the last one of its kind, as pipes' sizes are
    none of the kind of their lengths."""
    again = len(gap) <= _LATER and _AGAIN.fullmatch(gap)
    if not again and (len(gap) > (_LATER if _STRONG.search(gap) else 60) or "\n\n" in gap):
        return None
    said_not = noise.negated(low, numbers[at - 1].start) and _BUT.match(gap)
    if not (again or _FIX.match(gap) or _OH_NO.fullmatch(gap) or said_not):
        return None
    second = numbers[at]
    for first in reversed(numbers[max(0, at - 3) : at]):
        if second.start - first.end > 2 * _LATER:
            return None
        if first is numbers[at - 1] and first.kind == "bare" and not first.unit:
            return None if not again and _NEXT.search(gap) else first
        if second.kind == "bare" or (second.kind == first.kind and _thin(second) == _thin(first)):
            return first
    return None


def _thin(token: Token) -> bool:
    return token.kind == "length" and token.unit in {"mm", "cm", "in"}


def in_minutes(low: str, numbers: list[Token], sentences: Spans) -> None:
    """ "10 m" beside words of time are minutes."""
    for token in numbers:
        if token.kind == "length" and token.unit == "m" and low[token.end - 1] == "m":
            left = low[max(0, token.start - 40) : token.start]
            right = low[token.end : token.end + 40]
            line = low[max(0, token.start - 70) : token.end + 50]
            if _MINUTES.search(left) and _MINUTES_RIGHT.match(right) and _TIMES.search(line):
                token.kind, token.unit = "time", "min"
