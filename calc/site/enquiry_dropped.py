"""What was weighed and let go, what somebody said in passing, and whose the next sentence is.

"The solar pump idea is off", "a man wanted to sell me 40 ft of cable", "somebody said 3 inch pipe",
"… than my brother. He has 12 panels".
"""

from __future__ import annotations

import re

from calc.site.enquiry_considered import KIN

_OFF = re.compile(
    r"\b(?:the|our|my|that|this|an?) (?:[a-z-]+ ){1,4}(?:idea|plan|option|scheme|project|thought)s?(?: of (?:mine|ours|his|hers))? (?:is|are|was|were|has been|got) (?:now |all |quite )?"
    r"(?:off|dead|dropped|out|gone|history|scrapped|shelved|abandoned|cancelled|buried|rejected)\b"
    r"|\b(?:(?:we|i)(?:'ve| have)? |have )?(?:given up|dropped|shelved|scrapped|abandoned) (?:on )?(?:the|our|my|that) (?:[a-z-]+ ){1,4}(?:idea|plan|option|scheme|project)\b"
)
_SOLD_TO = re.compile(
    r"\b(?:want(?:s|ed)|tried|tries|hop(?:es|ed)|offers?|offered) to (?:sell|flog|give|lend|talk) (?:me|us)\b"
    r"|\b(?:had|has|have) (?:big |great |once )?(?:plans|hopes|dreams) (?:for|of)\b|\b(?:always|once|we|i|she|he) (?:dreamed|dreamt) of\b"
)
_SOMEBODY = re.compile(
    r"\b(?:some(?:body|one)|another|any(?:body|one)|one (?:man|fellow|person|chap|lady))(?: else)?(?: (?:at|in|on) (?:the|our) [a-z]+)? (?:told (?:me|us)|said|says|thinks?|thought|suggest\w*|swears?|swore|claims?|claimed|reckons?|reckoned)\b"
)
_RID = re.compile(
    r"\bwith (?:an?|the|our|my) [^.;,\n]{3,30}, which (?:i|we)(?:'d| would)? (?:want|like|hope|mean|wish|long) to (?:be|get) rid of\b"
)
_OLD = re.compile(
    r",? ?\b(?:but )?(?:that|those|it|these) (?:was|were|is|are) (?:of |from |for )?(?:the|our|my) (?:old|previous|former|last) (?:one|pump|tank|well|system|set ?-?up|pipe)s?\b"
)
_ENDS = re.compile(r"[,;:.!?)\n]| but | so | and (?:we|i|it|there)\b")
_HE_HAS = re.compile(
    r"\s*(?:he|she)(?:'s| (?:also |only |just )?(?:has|had|got|owns?|keeps?|runs?|uses?|gets?|pumps?|draws?|lives?))\b(?! to (?:help|come))"
)
_OF_KIN = re.compile(rf"\b(?:{KIN}|(?:son|daughter)[ -]in[ -]law)\b(?!(?:'s|s'))")
_FOR_THEM = re.compile(r"\b(?:for|with|of) (?:my|our|the|her|his) [^.;\n]{0,30}$")
_NOT_ME = re.compile(r"\bbut (?:i|we)\b|\bwhile (?:i|we)\b|[,;] (?:ours|mine|we|i)\b")


def let_go(said: str, start: int) -> list[tuple[int, int]]:
    """Spans of a sentence of what is only weighed or no more wanted; ``start`` is where it begins."""
    found = [(one.start(), one.end()) for one in _OFF.finditer(said)]
    found += [one.span() for one in _RID.finditer(said)]
    for pattern in (_SOLD_TO, _SOMEBODY):
        for one in pattern.finditer(said):
            stop = _ENDS.search(said, one.end())
            found.append((one.start(), stop.start() if stop else len(said)))
    if old := _OLD.search(said):
        found.append((0, old.end()))
    return [(start + a, start + b) for a, b in found]


def theirs(low: str, sentences: tuple[tuple[int, int], ...]) -> list[tuple[int, int]]:
    """Sentences that begin with "he has", after one that names a relative."""
    found = []
    for before, now in zip(sentences, sentences[1:], strict=False):
        said = low[slice(*now)]
        has = _HE_HAS.match(said)
        kin = next(reversed(list(_OF_KIN.finditer(low, *before))), None)
        if not has or not kin or _FOR_THEM.search(low, before[0], kin.start() + 1):
            continue
        own = _NOT_ME.search(said, has.end())
        found.append((now[0], now[0] + own.start() if own else now[1]))
    return found
