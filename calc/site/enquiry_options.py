"""What somebody would do, offers, or weighs against another way: how far in a letter that goes on.

A supposition opens with its words ("I'd put", "two options", "which is better", "under discussion",
"promised") and goes on over its clause and its list, over each way that is numbered, and over what
the next sentences say of it, until a sentence tells of what there is.
"""

from __future__ import annotations

import re

from calc.site.enquiry_considered import KIN

_A = r"(?:an?|the|some|another|one|two|three|four|more|new|bigger|larger|second|solar|our|my|everything)"
_PUT = (
    r"(?:put (?:in|up|down|a|an|the|some|it|them|another|our|my)|fit|install|build|buy|drill|dig|hang|mount|add|pump to|raise|replace|swap|set up|bury|go (?:with(?! (?:the|that|his|her|what the) (?:[a-z]+ )?(?:log|figure|number|first|second|lower|higher|latter|former|report|paper|map|last))|for|solar|to|up|deeper)"
    rf"|(?:get|run|use|take|choose|move|place|make|have) {_A}\b)"
)
_WOULD = re.compile(
    rf"\b(?:(?:i|we|they|he|she)'d|(?!you\b)[a-z]+ would|(?:i|we|one) could|(?:i|we|he|she|they) might)(?: (?:also|probably|then|maybe|perhaps|just|rather|simply|sooner|love to|like to|prefer to|want to|have to|need to))* {_PUT}"
    r"|\b(?:that|it|this|they|which|cabin|barn|cottage|workshop|laundry|extension|annexe?|greenhouse|one|other|alternative) would (?:have|need|hold|give|cost|mean|stand|sit|make|bring|take|require|add|save|come (?:to|with)|go)\b"
    r"|\bwould (?:cost|mean|need|take) (?:me|us|another)\b"
)
_BUILT = (  # what somebody would add to a place, whose outlets and animals are none yet
    r"(?:barn|stable|workshop|greenhouse|guest ?(?:house|cabin|room|wing|cottage)|granny flat|second (?:house|bathroom|cabin|cottage|home)|extension|annexe?|swimming pool|pool|sauna|hot tub|laundry|camp ?site|bunk ?house|dairy|poly ?tunnel|horses?|cows?|cattle|goats?|sheep|pigs?|hens?|chickens?|alpacas?)"
)
_LIKE = re.compile(
    rf"\b(?:i|we|they|she|he)(?:'d| would)? (?:also )?(?:like|love|want|wants|hope|hopes|plan|plans|intend)(?: to (?:have|keep|get|own|build|add|put up|raise))? (?:an?|another|some|more|two|three|four|five|six|eight|ten|\d+) (?:[a-z-]+ )?{_BUILT}\b"
    rf"|\b(?:i|we|they|she|he)(?:'re| are|'m| am|'s| is)? (?:want|wants|plan|plans|planning|intend|intending|hope|hopes|hoping) to (?:add|build|open|put up|start|keep|get|own|raise|take on) (?!(?:a |an )?(?:water|supply|system)\b)"
)
_TALK = re.compile(
    r"\b(?:under (?:discussion|consideration|debate)|being (?:considered|discussed)|up for debate|on the table|on offer|still (?:undecided|open|only an idea|on paper)|(?:only|just) (?:an idea|a dream|on paper)|not (?:yet )?(?:drilled|built|bought|ordered)(?: yet)?)\b"
)
_OFFERED = re.compile(
    r"\b(?:[a-z]+ )?(?!(?:i|we|you|and|have|has) )[a-z]+ (?:has |have |had )?(?:proposed|promised|offered|quoted|suggested|recommended|advised)(?! (?:to (?:help|come|pay|call|us|me)|that you|you|your)\b)|\b(?:been|got|me|us) ¤+ for an?\b|\b(?:leaning (?:towards?|to)|inclined to|eyeing|eying)\b"
    rf"|\b{KIN} (?:thinks?|says?|reckons?|believes?|insists?)\b[^.;]{{0,40}}\b(?:needed|enough|better|necessary|too (?:small|thin|weak)|required)\b"
    r"|\bwith an? [^.;,\n]{0,30} instead\b|\bwith \d[^.;,\n]{0,25} instead\b|\b(?:i|we) could pump\b|\b(?:it|tank|pump|pipe|they|this|that) could be (?:raised|lifted|lowered|made|widened|drilled|deepened)\b"
    rf"|\b(?:{KIN}|he|she|they|contractor|plumber|driller|builder|installer|shop|dealer|engineer|salesman|man) (?:says?|said|reckons?|thinks?)(?: to| i should| we should|,)? (?:raise|lift|lower|move|put|use|get|buy|fit|install|go|change|swap|replace|drill|dig|lay|tee|add|double|build)\b"
)
_WHICH = re.compile(
    r"\b(?:which|what) (?:one |way |of (?:the|these) (?:two )?|option )?(?:is|are|would be|would you|do you|will be|should i|should we|makes)[^.?\n]{0,60}?\bor\b[^.?\n]*\?"
    r"|\b(?:which|what) (?:is|would be|works?|makes) (?:the )?(?:better|best|cheaper|wiser|smarter|more sensible)\b[^.?\n]*\?"
    r"|\b(?:is it|would it be|am i|are we|will it be) (?:better|cheaper|wiser|smarter|best|better off|easier)\b[^.?\n]*"
)
_WHAT_ABOUT = re.compile(
    r"\b(?:what|how) about (?:an?|another|the|two|three|\d|[a-z]+ing)\b[^.?\n]*|\b(?:one|another|my|our|his|her) (?:other )?(?:idea|option|choice|possibility|thought|alternative) ?(?:is|was|would be|:)[^.\n]*"
    r"|(?:^|[;\n] ?)\W*(?:either|alternatively|or else)\b[^.?\n]*\bor\b[^.?\n]*|^\W*(?:alternatively|as an alternative|or else)\b[^.?\n]*"
    r"|^\W*(?:option|plan|variant|alternative|scenario|choice) (?:[a-d]|[1-4]|one|two|three)\b(?! (?:is|was) what we)[^.\n]*"
)
_MANY = re.compile(
    r"\bone (?:idea|option|way|choice|possibility|thought) (?:is|would be)\b|\b(?:two|three|four|2|3|4|both|several|some|these|my|our|the) (?:other |possible |different )?(?:options|choices|possibilities|variants|alternatives|ideas|plans|roads|thoughts|scenarios|proposals|offers|quotes|bids|tenders|estimates)\b|\b(?:two|three) (?:other |possible |different )?ways (?:to|of|forward|out|are)\b|\b(?:options|alternatives|ideas|variants) *:"
)
_ONE_OF = re.compile(
    r"\s*[-*•]? ?(?:\(?(?:[a-d]|[1-4]|i{1,3})\)|(?:[a-d]|[1-4])[:.]\s|(?:option|plan|variant|alternative|idea|no\.?|number|choice|way|offer|quote|road) (?:[a-d]|[1-4]|one|two|three)\b|(?:one|the (?:first|second|third|other|one)(?: (?:one|option|way|idea|plan|road|quote|offer))?)(?: is|:|,| would| has| gives| needs| means| says| wants| offers)|(?:first|second|third|firstly|secondly|either|alternatively|or)\b[ ,:])"
)
_KEPT = re.compile(
    r"\b(?:carry(?:ing)? on|continu(?:e|ing)|stay(?:ing)?|keep(?:ing)?|stick(?:ing)?|leav(?:e|ing)) (?:with|as|on|to|using|it|the|our|my|what|things)\b"
)
_IF_A = re.compile(
    r"\b(?:if|for|with|in case of|under|in) (?:(?:option|plan|variant|case) )?[a-d][,:]"
)
_ENDS = re.compile(
    r"[;]|, which (?:is|lies|has|gives|runs|sits|stands)\b|[,.:(] ?(?:but|however|yet|because|since|though|although|so|while|whereas)\b| (?:but|because|although|whereas) |[,;] ?(?:and )?(?:we|i|there|the|our|my|it) (?:now |already |currently )?(?:have|has|is|are|'ve)\b|[,;] ?(?:in fact|really|actually|in truth|(?:we |i )?measured)\b| right now\b| at (?:present|the moment)\b"
)
_GOES_ON = re.compile(
    r"\s*(?:and |so |then )?(?:it|they|this|that|these|those|this one|that one|each|the (?:new|second|bigger|larger|other) (?:one|pump|tank|well|cabin|pipe|line))(?:'d| would| could| might|'ll| will| holds| has| have| comes?| costs?| makes?| gives?| lifts?| needs?| goes| sits| stands| does| delivers| wants)\b"
)
_INSTEAD = re.compile(r"\b(?:replace|swap|raise|move)\b")
_WHICH_IS = re.compile(r" (?:which|that) |, ")  # what is there is told of beside it
_OWN = re.compile(r"\b(?:we|i) (?:have|run|use|own|draw|get) (?:now|already|today|at present)\b")
_MOST = 0.5  # share of a sentence from which on it is considered as a whole; our choice


def options(low: str, sentences: tuple[tuple[int, int], ...]) -> list[tuple[int, int]]:
    """Spans of a letter in which a thing is only weighed; sentences: (start, end) of each."""
    found: list[tuple[int, int]] = []
    listing = goes_on = False
    for start, end in sentences:
        said = low[start:end]
        if listing and _ONE_OF.match(said):
            if not _KEPT.search(said):
                found.append((start, end))
            continue
        many = _MANY.search(said)
        listing = many is not None
        if goes_on and _GOES_ON.match(said) and not _OWN.search(said):
            found.append((start, start + _end(said, 0)))
            continue
        spans = _of(said, many)
        goes_on = sum(b - a for a, b in spans) > _MOST * len(said)
        found += [(start + a, start + b) for a, b in spans]
    return found


def _of(said: str, many: re.Match[str] | None) -> list[tuple[int, int]]:
    """Spans of one sentence."""
    spans = [match.span() for match in _WHICH.finditer(said)]
    spans += [one.span() for one in _WHAT_ABOUT.finditer(said) if not _KEPT.search(one[0])]
    for pattern in (_WOULD, _LIKE, _OFFERED, _IF_A):
        match = pattern.search(said)
        if match:
            other = _WHICH_IS.search(said, match.end()) if _INSTEAD.search(match[0]) else None
            end = _end(said, match.end())
            spans.append((match.start(), min(end, other.start()) if other else end))
    if talk := _TALK.search(said):
        spans.append((_begins(said, talk.start()), _end(said, talk.end())))
    if many and ":" in said[many.end() - 1 :]:
        spans.append((many.start(), len(said)))
    return spans


def _end(said: str, at: int) -> int:
    """Where a supposition ends: with its sentence, or where it goes on to what there is."""
    stop = _ENDS.search(said, at)
    return stop.start() if stop else len(said)


def _begins(said: str, at: int) -> int:
    """Where the clause begins that tells of a thing and then says that it is only talked of."""
    return max(said.rfind(sign, 0, at) for sign in ";:(") + 1
