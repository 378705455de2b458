"""What is taken back without a number: what was weighed and rejected, of which neither is believed,
"from a tank, no sorry, from the stream"; a source that is dry; from which flow on something rattles.
"""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece, Token

_WEIGHED = r"(?:considered|discussed|weighed(?: up)?|looked (?:at|into)|talked (?:about|over|through)|thought (?:about|of|over)|proposed|suggested|priced|mooted|offered|tried on paper|contemplated|sketched|mentioned|debated|toyed with|investigated|quoted(?: for)?)"
_REJECTED = r"(?:rejected|dropped|dismissed|ruled out|turned down|shelved|refused|declined|set aside|given up|abandoned|discarded|thrown out|voted down|forgotten|not (?:done|built|bought|taken|pursued|chosen|wanted)|decided against|found too (?:dear|expensive|costly|much))"
_LET_GO = re.compile(
    rf"\b(?:is|are|was|were|has been|have been|had been|got|being)(?: [a-z]+ly| once| also| both| all| even)* (?:{_WEIGHED}\b[^.;\n\d]{{0,25}}?[ ,]+(?:(?:and|but|then|later|yet)[ ,]+)+(?:(?:was|were|is|are|both|all|that|then|again|soon|finally|later|i|we|they|it) )*)?{_REJECTED}\b"
    rf"|\b(?:is|are|was|were|has been|have been|had been)(?: [a-z]+ly| once| also| both| all)* {_WEIGHED}\b(?=[^.;\n]{{0,30}}\b(?:decided against|but (?:no|not|never)\b|said no|came to nothing|too (?:dear|expensive)))"
)
_PERMIT = re.compile(r"\b(?:permit|licen[cs]e|permission)\b[^.;,\n]*$")
_AGAINST = re.compile(
    r"\b(?:we|i|they|he|she|wife|husband)(?:'ve| have| had|'d)?(?: also| then| both| finally| quickly| all)? (?:rejected|decided against|ruled out|turned down|dismissed|declined|said no to|voted against|opted against|refused|backed out of|thought better of|(?:chose|decided|opted) not to (?:buy|fit|have|get|build|put in|drill|use|take))\b"
    r"|\b(?:gave|threw|took|sold) (?:the|our|my|that|his|her) (?:[a-z-]+ ){1,3}(?:away|out|off)\b(?! (?:of|on|the)\b)"
)
_CLAUSE = re.compile(r"[;:(]|, (?=(?:and |but |so )?(?:an?|the|our|my|we|i|one|two|three|\d+)\b)")
_BEGINS = re.compile(r" (?:and|but|while|whereas) ")
_ENDS = re.compile(
    r"[,;:)] ?(?=(?:and |but |so )?(?:we|i|it|the|our|now|an?|one|this)\b)|\bso (?=we|it|i\b)"
)
_NEVER = re.compile(
    r"\bnever (?:had|owned|used|saw|seen|met|needed|bought|found|got) (?:an?|any|one) (?:[a-z-]+ ){0,2}(?:pump|tank|well|spring|line|pipe|switch|vessel|battery|panel|system)s? (?:with|of|that|which|over|under|above|below|bigger|smaller|stronger|larger|better|more|at|deeper)\b"
)
_NEITHER = re.compile(
    r"\b(?:(?:trust|believe|like|know|buy|take|accept)s? neither|(?:do not|don'?t|cannot|can'?t|would not|wouldn'?t|won'?t|never) (?:\w+ )?(?:trust|believe|swear (?:by|to)|vouch for|rely on|bank on|go by) (?:either|any)\b|neither (?:(?:number|figure|value|of (?:them|these|those|the two)|one) )?(?:is|can be|may be|seems|looks|need be|has been) (?:right|true|sure|certain|trusted|correct|believed|reliable|checked|exact|measured)|not sure (?:of|about) either|(?:cannot|can'?t|don'?t|do not) (?:say|know|tell) which (?:of (?:them|these|the two) |one |is )?(?:is )?(?:right|true|correct|to (?:trust|believe)))\b"
)


def rejected(said: str, start: int) -> list[tuple[int, int]]:
    """Spans of a sentence of what was weighed and let go, and of values of which none is believed."""
    found = []
    for one in _LET_GO.finditer(said):
        if _PERMIT.search(said, 0, one.start()):
            continue  # what it was asked for is gone, not the paper alone
        begins = [each.end() for each in _CLAUSE.finditer(said, 0, one.start())]
        begins += [each.end() for each in _BEGINS.finditer(said, 0, one.start())]
        stop = _ENDS.search(said, one.end())
        found.append((max(begins, default=0), stop.start() if stop else len(said)))
    for one in (each for p in (_NEVER, _AGAINST) for each in p.finditer(said)):
        stop = _ENDS.search(said, one.end())
        found.append((one.start(), stop.start() if stop else len(said)))
    if neither := _NEITHER.search(said):
        found.append((0, neither.end()))
    return [(start + a, start + b) for a, b in found]


_PREP = r"(?:out of|from|in|into|of|with|at|on|by|off)"
_NOUN = r"(?:the |an? |our |my |its |this |that )?(?:(?!(?:no|sorry|wait|correction|i|we|it|and|or|but|which|that)\b)[a-z-]+[ ]?){1,3}"
_SORRY = r"[ ,.(-]*(?:(?:no|oh|ah|er|erm|um|uh|well|actually|hm+)\b[ ,.-]*)*(?:sorry|no wait|wait|i mean(?:t)?|correction|scratch that|strike that|rather|hang on|hold on|my mistake|i tell a lie|not that)\b[ ,.:-]*(?:(?:no|it'?s|it is|i mean|that is|make that|actually|oh)\b[ ,]*)*"
_SAID_AGAIN = re.compile(rf"\b(?P<first>(?P<prep>{_PREP}) {_NOUN}?){_SORRY}(?=(?P=prep) )")
_NAMED_AGAIN = re.compile(
    rf"(?<![\w¤-])(?P<first>(?P<the>an?|the|our|my) {_NOUN}?){_SORRY}(?=(?:an?|the|our|my) [a-z])"
)


def reworded(low: str) -> list[tuple[int, int]]:
    """What is said anew at once: "from a stock tank no sorry from the stream"."""
    return [one.span() for p in (_SAID_AGAIN, _NAMED_AGAIN) for one in p.finditer(low)]


_DRY = re.compile(
    r"(?:'s| is| has| was| have| had| went| ran| runs| goes)?(?: now| all| long| since| completely| quite| already| gone| run| bone)*"
    r" (?:dry|dried (?:up|out)|failed|silted(?: up)?|empty|finished|given out|packed up|gave out|stopped|polluted|contaminated|foul(?:ed)?|dirty|salty|brackish|unsafe|too (?:weak|small|far|dirty|low|muddy|warm|salty|shallow))\b(?!-)"
    r"(?=[^.;\n]{0,40}?(?:[.;,]| so\b| and\b| now\b| then\b)[^.;\n]{0,40}\b(?:back to|now|use|using|drilled|dug|carry|draw|pump|pumping|take|it'?s|it is|over to|fall back|switched|changed|moved|have)\b)"
)


def dry(low: str, end: int) -> bool:
    """Whether a source named up to ``end`` gives no more, and another one is used."""
    return bool(_DRY.match(low, end))


_FIXTURE = re.compile(
    r"\b(?:showers?|toilets?|wcs?|loos?|taps?|faucets?|sinks?|basins?|washing machine|washer|dishwasher|bath(?:room)?s?|kitchen|water|drinker|troughs?|hose|sprinklers?|garden)(?: (?:tap|sink|supply))?(?: (?:is|are|stays?|remains?|hangs?|works?|will (?:be|stay)|both|just|still|only|all|both|already|now|fed))* $"
)


def piped(low: str, start: int) -> bool:
    """Whether "on the mains" is said of a tap, whose water the mains bring, and no current."""
    return bool(_FIXTURE.search(low, max(0, start - 60), start))


_TROUBLE = r"(?:noise|noisy|cavitat\w+|rattl\w+|hums?|humming|whin\w+|vibrat\w+|knock\w*|surg\w+|shak\w+|chatter\w*|gurgl\w+|roar\w*|scream\w*|squeal\w*|bang\w*|trips?|loses prime|sucks? air|hammer\w*|splutter\w*|cough\w*)"
_OVER = r"(?:above|over|beyond|past|at more than|once (?:i|we|it) (?:go|pass|draw|get)\w*(?: (?:over|above|past))?|when (?:i|we|it) (?:go|pass|draw|get|open)\w*(?: (?:over|above|past|more than))?|from)"
_FROM_ON = re.compile(rf"\b{_TROUBLE}[^.;,\n\d]{{0,20}}\b{_OVER}(?: about| some)? $")
_ONLY = re.compile(rf"\b{_OVER}(?: about| some)? $")
_THEN = re.compile(rf",? ?(?:[a-z]+ ){{0,4}}{_TROUBLE}\b")


def troubled(low: str, numbers: list[Token], why: str) -> None:
    """ "noise above 9 gpm", "over 20 L/min the pipe hums": a limit, and nothing's flow."""
    for one in numbers:
        if one.kind not in {"flow", "pressure"} or one.why:
            continue
        before = low[max(0, one.start - 60) : one.start]
        if _FROM_ON.search(before) or (_ONLY.search(before) and _THEN.match(low, one.end)):
            one.why = why


_SUCH = re.compile(
    r"s? (?:(?:that|which) (?!i\b|i'|we\b|would|is (?:needed|wanted))|with (?:more|less|over|under|such|that|an?|\d)|like (?:that|this|it|his|yours)|of (?:more|less|that|this|such|\d)|(?:this|so|too) [a-z]+|as [a-z]+ as|bigger|stronger|better|louder|over|under|before)\b"
)
_HIS = re.compile(
    r"\b(?:he|she|they|neighbou?rs?|father|mother|brother|sister|uncle|owners?) (?:has |have |had |'ve )?$"
)


def of_such(low: str, none: re.Match[str]) -> bool:
    """Whether "never had a pump with more than 3 bar" says only that there was none of a kind."""
    if "pump" not in low[none.start() : none.end() + 5]:
        return False
    end = (
        none.end()
        if none.group().rstrip("s").endswith("pump")
        else low.find("pump", none.end() - 4) + 4
    )
    return bool(_SUCH.match(low, end)) or (
        "never" in none.group() and bool(_HIS.search(low, max(0, none.start() - 25), none.start()))
    )


_PART_USES = re.compile(  # what one room or the animals use is no day's use of all
    r"\b(?:kitchen|laundry|dairy|cows?|cattle|animals|livestock|stock|goats|sheep|horses|pool|toilets|showers|washing machine)(?: alone| also| then)? (?:uses?|needs?|takes?|drinks?|wants?)(?: about| around| some| roughly| up to)* $"
)


def of_a_part(clean: str, piece: Piece) -> bool:
    """Whether an amount a day is only of a kitchen, or of animals."""
    before = clean[max(0, piece.start - 60) : piece.start]
    return piece.path == "use.daily" and bool(_PART_USES.search(before))
