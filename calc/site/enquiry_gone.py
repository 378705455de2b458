"""What is no more, and what the letter's reader had assumed: spans that tell nothing of the place."""

from __future__ import annotations

import re

GONE, YOURS = "in the past", "only considered"

_THING = r"(?:wells?|springs?|bores?|bore ?holes?|ponds?|creeks?|streams?|pumps?|tanks?|cisterns?|generators?|windmills?|diesel|panels?|batter(?:y|ies)|boilers?|heaters?|showers?|troughs?|sources?)"
_ENDED = (
    r"(?:capped|abandoned|filled in|filled up with (?:stones|earth)|closed(?: (?:up|off|down))?(?! (?:with|by|at|and|when|in|with a))|sealed up|no more (?:used|in use|there|connected)|not (?:used|in use|there|connected) (?:any ?more|any longer)"
    r"|no longer (?:used|in use|there|connected|ours)|out of (?:use|service)|given up|sold|stolen|gone|scrapped|disused|retired|disconnected|demolished)"
)
_IS = re.compile(
    rf"\b(?:that|the|this|our|my|an?|old|his) (?:[a-z]+ ){{0,2}}?(?P<noun>{_THING})(?: (?!is\b|are\b|was\b|but\b|and\b)[a-z']+){{0,4}} (?:is|are|was|were|has been|have been|got)(?: now| long| since| all| already)* {_ENDED}\b"
    rf"|\b(?:another|a second|one more|the other|an old|a third) (?:[a-z]+ )?(?P<noun3>{_THING})\b[^.;\n]{{0,50}}\b(?:which|that|but) (?:we|i) (?:do not|don'?t|no longer|never) (?:use|need)\b"
    rf"|\bwe (?:no longer|do not|don'?t) use (?:that|the|this|our|my) (?:[a-z]+ )?(?P<noun2>{_THING})(?: any ?more| any longer)?"
)
_SOLD = re.compile(
    r"\b(?:and|but|so|which|that|,) ?(?:i|we|he|they)?(?:'ve| have)? ?(?:since |already |then )?(?:sold|scrapped|gave away|threw out|binned|returned|sent back|got rid of|took out) (?:it|them|that)\b"
    r"|\b(?:now |then )?(?:it|they) (?:is|are|was|were|got|has been) (?:now )?(?:stolen|sold|scrapped|gone)\b"
)
_ONCE = re.compile(
    r"\b(?:when|while) (?:the|our|my) [a-z]+ (?:was|were|hung|stood|sat)\b[^.;\n]{0,60}?(?=[,;]? (?:but |and )?now\b)"
)
_IGNORE = re.compile(
    r"(?:[,;:-] ?| (?=so ))(?:so |but |please )*(?:ignore|forget|disregard|never ?mind|don'?t count|do not count) (?:it|that|this|them|those|that one)\b"
)
_CLAUSE = re.compile(r"[,;:(]| and | but | while | whereas | so ")
_WROTE = re.compile(
    r"(?<!as )(?<!when )(?<!if )\byou (?:wrote|assumed?|reckoned|calculated?|proposed?|estimated?|supposed?|put down|took|counted)\b(?! (?:to|me|us|back|my|our|about)\b)"
    r"|\byour (?:colleague|answer|reply|report|office|man|people|technician)\b[^.;:\"\n]{0,40}: ?(?=\")"
)
_STOPS = re.compile(r"\bbut\b|[;:.!?]|$")
_LONG = 30  # words from which on a sentence is several; our choice


def gone(said: str, start: int) -> list[tuple[int, int]]:
    """Spans of a sentence of what is capped, sold, no more used; ``start`` is where it begins."""
    found = []
    for one in _IS.finditer(said):
        noun = (one["noun"] or one["noun2"] or one["noun3"]).rstrip("s")
        before = [each.end() for each in _CLAUSE.finditer(said, 0, one.start() + 1)]
        begin = before[-1] if before else 0
        if re.search(rf"\b{noun}s?\b", said[:begin]):
            begin = 0  # "the well gave 12 gpm, but that well is capped now"
        after = _CLAUSE.search(said, one.end())
        found.append((start + begin, start + (after.start() if after else len(said))))
    for one in _SOLD.finditer(said):
        before = [each.end() for each in re.finditer(r"[;:(]", said[: one.start()])]
        begin = before[-1] if before else 0
        if len(said[begin : one.start()].split()) <= _LONG:
            found.append((start + begin, start + one.end()))
    found += [(start + one.start(), start + one.end()) for one in _ONCE.finditer(said)]
    taken = _IGNORE.search(said)
    if taken:
        found.append((start, start + taken.end()))
    return found


_DROPPED = re.compile(
    rf"\b(?:we|i|they|he|she)(?:'ve| have)? (?:now |since |then )?(?:dropped|gave up(?: on)?|given up(?: on)?|abandoned|forgot about|ruled out|decided against) (?:the |that |our )?(?P<noun>{_THING})\b(?! (?:to|at|down|in|by|into|lower)\b)"
)
_BACK = 90  # characters before, in which a thing was told that is dropped now; our choice


def dropped(low: str) -> list[tuple[int, int]]:
    """Spans of what was told and is dropped in the next breath: "Source is a pond... actually no, we
    dropped the pond, it's the well"."""
    found = []
    for one in _DROPPED.finditer(low):
        noun = one["noun"].rstrip("s")
        begin = max(0, one.start() - _BACK)
        before = low[begin : one.start()]
        hit = before.rfind(noun)
        start = begin + before.rfind(". ", 0, hit) + 1 if hit >= 0 else one.start()
        found.append((start, one.end()))
    return found


_HERE = re.compile(r"[^.;\n]{0,25}\b(?:lives?|living|stays?|sleeps?) (?:here|with (?:us|me))\b")


def lives_here(said: str, kin: re.Match[str]) -> bool:
    """Whether somebody's kin are of the house: "me, my wife and my parents live here"."""
    return bool(_HERE.match(said, kin.end()) or _HERE.match(said, kin.start()))


_BUT_I = re.compile(
    r"\b(?:my|our|the) [a-z][a-z' -]{2,20} (?:says?|thinks?|reckons?|claims?|swears?)\b[^.;\n]{0,20}\b(?:pipe|hose|line)\b[^.;\n\d]{0,25}[\d¾½ /]+ ?(?:mm|in\b|inch|\"|) ?(?=,? (?:but )?(?:i|we) (?:think|say|measured|believe|found|reckon|make it|counted|know)\b)"
)


def assumed(said: str, start: int) -> list[tuple[int, int]]:
    """Numbers that the reader of a letter had written: "you wrote "assume 40 cows"."""
    found = [(start + one.start(), start + one.end()) for one in _BUT_I.finditer(said)]
    for one in _WROTE.finditer(said):
        quoted = re.compile(r'[^"\d]{0,12}"[^"\n]{2,120}"').match(said, one.end())
        stop = _STOPS.search(said, one.end())
        end = quoted.end() if quoted else stop.start() if stop else len(said)
        if re.search(r"\d", said[one.end() : end]):
            found.append((start + one.start(), start + end))
    return found
