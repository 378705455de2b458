"""What a sentence of an enquiry only considers: "if we put in", "thinking of", "he says to go to"."""

from __future__ import annotations

import re

KIN = (
    r"(?:neigh?bou?rs?|brother(?:[ -]in[ -]law)?|sister(?:[ -]in[ -]law)?|friends?|cousin|uncle|aunt|in-?laws|father(?:[ -]in[ -]law)?"
    r"|mother(?:[ -]in[ -]law)?|parents|dad|mum|mom|colleague|buddy|mate|grandfather|grandparents|son|daughter"
    r"|folks|(?:guy|man|lady|people|family|farm|place|ranch) (?:next door|down the road|up the road|across the (?:road|valley)))"
)
_IF = re.compile(
    r"\b(?:(?:if|what if|suppose|supposing|imagine|even if) (?:all|everything|things|money|funds|i|we|you|one|it were|there were|they)\b(?! (?:have|run|open|turn|use|are|do|can|need|want|get|leave) (?:the|both|two|all|a shower|my|our|2|any)\b)(?! (?:go|went|get) (?:¤|\d|a week|two|three|four|five|ten))"
    r"|should (?:i|we) |^should (?:the|a|an|my|our|it)\b|^would [a-z]+(?: [a-z]+)? (?:be|work|do|help|suffice)\b|could (?:i|we) (?:use|go|get|just|put|run(?! (?:two|both|three|all|2|3)\b[^.?]{0,30}\b(?:together|at once|same time))|fit|add|swap|do with|buy|install)|can (?:i|we) (?:use|go|get|just|put|fit|add|swap|do with|buy|install)|shall (?:i|we) "
    r"|would (?:a|an|it|that|\d|one|two)\b|(?:thinking|thought|dreaming|toying) (?:of|about|with)\b|thinking (?:a|an|maybe|\d|¤)|consider(?:s|ing|ed)?|contemplating|(?:i|we)(?:'d| would| can| could)? (?:imagine|picture|envisage|foresee) (?:a|an|one|two|\d)"
    r"|wondering (?:if|whether|about)|know (?:if|whether)|(?:assumed|assumes|presumed|supposed|guessed) (?!that)|(?:i|we|he|she) (?:might|may) (?:\w+ )?(?:get|add|buy|put|install|go|want|need|build|use|fit)|maybe (?:add|get|buy|put|fit|install|one day|later)|tempted"
    r"|(?:says?|said|reckons?|told (?:me|us)|tells (?:me|us)|advises?|advised|wants (?:me|us)) to (?:go|use|put|get|fit|buy|try|change|switch|install|upgrade|replace|have|drill|run)\b"
    r"|(?:was|were|been|got) (?:told|advised|quoted|offered|recommended)\b|(?<!please )(?<!kindly )(?<!you )recommend(?:s|ed)?\b|(?<!please )(?<!kindly )(?<!you )(?<!pls )(?<!plz )suggest(?:s|ed)?\b|\b(?:friend|neighbou?r|seller|shop|plumber|man|vendor) (?:says?|said|tells?|told) (?:to )?(?:me|us)\b|(?:he|she|they|guy|shop|store|dealer|salesman|plumber|driller|installer|builder|firm|company|contractor|seller) (?:wants? to (?:sell|put|fit|install|replace|swap|drill|dig|lay|charge|use|move)|would (?:put|fit|install|use|lay|drill)|says (?:we|i) (?:need|should)|reckons (?:we|i)|quoted|offered|proposed)"
    r"|(?:what|how) about (?:an?|the|one|two|\d|¤)|(?:if|what if|even if) (?:the|our|my|that|this) (?:\w+ ){1,2}(?:were|could|had been|stood)\b|(?:tank|pump|pipe|panels|line|it|they) (?:could|might) (?:also )?(?:go|stand|sit|be (?:put|placed|set|moved))\b|(?<!where )(?:i|we) (?:could|might) (?:also )?(?:put|place|set|move|lay|raise)\b"
    r"|(?:option|variant|alternative|scenario) (?:\d|[abc]|one|two|three)\b|do (?:i|we) (?:need|want|have)(?! to (?:lift|pump|get|bring|supply|water|feed|run|fill|carry|raise|push))|look(?:ing|ed) at (?:a|an|buying|getting|the|one|two|\d)|or (?:should|would|is it better)|instead of (?:a|an|the|\d)|"
    + KIN
    + r" (?:says?|reckons?|thinks?|told (?:me|us)|claims?|swears?|suggested|recommended)(?: that)? (?:i|we|you)(?:'d)? (?:need|should|must|could|ought|want)"
    r"|(?:some ?day|one day|eventually|later on|in (?:the )?future|down the (?:road|track|line) we|next (?:year|summer|spring|season|winter))\b|(?:page|article|video|guide|post|blog|leaflet|book|website|chapter|story|piece|calculator|catalogue?|brochure)s? (?:about|on|for|called|explaining)\b|hop(?:e|ing) to (?:add|get|buy|one)|plan(?:s|ning)? to (?:add|upgrade|replace|buy)"
    r"|(?:want|like|love|going) to (?:keep(?![^.;\n]{0,40}\bfire\b)|own|raise|add|upgrade|replace|buy|put in another)|(?:is|are|will) (?!(?:my|our|this) )(?:a |an )?[^.?\n¤]{0,30}(?:enough|sufficient|too (?:small|big))(?: for me| for us)?\?|^ought (?:the|a|an|my|our|it)\b|^(?:is|are|will) an? [^.?\n¤]{0,30}(?:enough|sufficient|too (?:small|big|thin))\b[^.?\n]{0,30}\?|\bought to be\b|(?:told|tells) (?:me|us|him|her|(?:my|our) [a-z]+) (?:that )?(?:we|i|they|you)(?:'d|'ll)? (?:would |will )?(?:need|should|must|want|have to)\b|told (?:me|us) (?:that )?(?:it|i|we|the|my|our)\b[^.;\n]{0,25}\b(?:should|must|needs?|has)\b"
    r"|(?:saw|seen|found|read about|came across|ad for) (?:a|an|one|some|kits?|pumps?|systems?|offers?|panels?|tanks?|ones|\d+(?= (?:\w+ )?(?:kits?|pumps?|systems?|offers?|panels?|tanks?))|several|many)\b|i (?:have |had )?(?:read|heard) (?:that|somewhere)\b|i (?:read|heard) (?!¤|\d|about \d)|they say(?! ?[,.;)])|it is said|for example|e\.g\.|for instance|such as|says? (?:on the box|in the manual)|rated for up to)"
)
_INSTEAD = re.compile(r"\bif (?:instead|rather|then) (?:i|we|one|you)\b|\bif (?:i|we) instead\b")
_CLAUSE = re.compile(
    r",(?!\d)|[;:(]| (?:but|oh|so|also|though|because|since|then) | and (?!(?:an?|one|two|three|some|more|\d|¤|bigger|larger|new|another|with|put|use|get|fit|add|[a-z]+er) ?)"
)
_WHICH = re.compile(r" (?:which|that|who) ")
_LONG = 30  # words of a sentence from which on it is several, as people speak; our choice
_IF_ENDS = re.compile(
    r"\b(?:but (?:now|currently|right now|at the moment|for now|at present|we have|i have|ours is|the one (?:we|i)(?:'ve| have| use)|what (?:we|i) have)|at the moment|for now|right now|currently|then)\b"
)


def considered(said: str, start: int) -> list[tuple[int, int]]:
    """What a sentence only considers, up to where it goes on to what is."""
    ones = [one for one in (_IF.search(said), _INSTEAD.search(said)) if one]
    maybe = min(ones, key=lambda one: one.start(), default=None)
    if maybe is None:
        return []
    stops = [_IF_ENDS.search(said, maybe.end())]
    whole = maybe.group().startswith(("if", "what if", "supp", "even if"))
    if maybe.group().endswith(("replace", "upgrade")):
        stops.append(_WHICH.search(said, maybe.end()))  # what is there is told of beside it
    if not whole or len(said.split()) > _LONG:
        stops.append(_CLAUSE.search(said, maybe.end() + 3))
    end = min((one.start() for one in stops if one), default=len(said))
    return [(start + _begins(said, maybe), start + end)]


_TIMES = re.compile(r"(?:some ?day|one day|eventually|later on|in (?:the )?future|next )")


def _begins(said: str, maybe: re.Match[str]) -> int:
    """Where a clause begins that is only considered: of "a shower, some day" before its noun."""
    if not _TIMES.match(maybe.group()):
        return maybe.start()
    before = [one.end() for one in _CLAUSE.finditer(said, 0, maybe.start())]
    at = before[-1] if before else 0
    if at and not said[at : maybe.start()].strip():
        at = before[-2] if len(before) > 1 else 0
    return at
