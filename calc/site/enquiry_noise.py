"""What in an enquiry is no fact of the writer's place: quoted mail, signatures, dates, prices,
a neighbour's, what was, what might be."""

from __future__ import annotations

import re
from collections.abc import Iterable

from calc.site import enquiry_aside
from calc.site import enquiry_dropped as dropped
from calc.site import enquiry_gone as gone
from calc.site import enquiry_options as options
from calc.site import enquiry_supposed as supposed
from calc.site import enquiry_taken as taken
from calc.site.enquiry_considered import KIN as _KIN
from calc.site.enquiry_considered import considered
from calc.site.enquiry_model import Ignored

MASK = "¤"  # stands where no fact may be read
QUOTED, SIGNED, PHONE = "earlier mail, quoted", "a signature", "a telephone number"
DATE, CLOCK, PRICE, CODE = "a date", "a time of day", "a price", "an order or model number"
ADDRESS, WEB, LONG_AGO = "a post address", "an address on the web", "a length of time or an age"
OTHERS, PAST, MAYBE, NEGATED = "somebody else's", "in the past", "only considered", "negated"

_MONTHS = (
    r"(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?"
    r"|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\b\.?"
)
_TH = r"\d{1,2}(?:st|nd|rd|th)?"
WITHDRAWN = "withdrawn"
_PATTERNS = tuple((why, re.compile(pattern, re.M)) for why, pattern in (
    (WITHDRAWN, r"~~[^~\n]{1,80}~~"),
    (WEB, r"\S{1,80}@\S{1,80}\.\w+|(?:https?://|www\.)\S+"),
    (PHONE, r"\+\d[\d ().-]{7,20}\d"), (PHONE, r"\(?\b\d{3}\)?[ .-]{1,2}\d{3}[.-]\d{4}\b"),
    (PHONE, r"\b0\d{2,4}[ -]\d{3,4}[ -]?\d{3,4}\b|\b\d{3}-\d{4}\b|\b0\d{9,10}\b"),
    (PHONE, r"\b(?:tel|phone|ph|cell|mob(?:ile)?|call(?: me)?(?: (?:on|at))?|ring(?: me)?(?: (?:on|at))?"
            r"|text(?: me)?(?: (?:on|at))?|fax)\b[ .:]{0,3}(?:\(?\+?\d[\d ().-]{5,20}\d|\d{3,}(?! ?[a-z]))"),
    (DATE, r"\b\d{1,2}[/.]\d{1,2}[/.](?:\d{4}|\d{2})\b|\b\d{4}-\d{2}-\d{2}\b|\b\d{1,2}-\d{1,2}-\d{4}\b"),
    (DATE, rf"\b{_TH} (?:of )?{_MONTHS}(?:,? ?(?:19|20)\d\d\b)?|\b(?!may\b){_MONTHS} (?<!march\. )(?<!april\. )(?<!may\. )(?<!june\. )(?<!july\. )(?:[12]?\d|3[01])(?:st|nd|rd|th)?(?! ?(?:m|ft|psi|gal|gallons?|l|lit(?:re|er)s?|lpm|gpm|m[3]|cubic|metres?|meters?|feet|hours?|degrees?|people|persons|guests|of us|bar|mm|cows|%|°)\b)\b"
           r"(?:,? ?(?:19|20)\d\d\b)?"),
    (DATE, rf"\b{_MONTHS} (?:19|20)\d\d\b"), (DATE, r"\b\d{1,2}(?:st|nd|rd|th)\b"),
    (DATE, r"\b(?:in|since|from|back in|until|till|by|of|circa|around|installed|drilled|built|dug|year)"
           r" (?:19[3-9]|20[0-4])\d\b(?! ?(?:m|ft|feet|l|gal|litre|liter|metre|meter|w|psi|sq|')\w*)"),
    (DATE, r"\b(?:19[3-9]|20[0-4])\ds?\b(?= (?:and|but|when|with|by|after)\b| ?[,.;)\n]|$)|\b(?:19|20)\d0s\b"),
    (CLOCK, r"\b\d{1,2}[:.]\d{2} ?(?:am|pm|a\.m\.|p\.m\.|hrs|h)\b|\b\d{1,2}:\d{2}\b"),
    (CLOCK, r"\b\d{1,2} ?(?:am|pm|a\.m\.|p\.m\.|o'?clock)(?:\b|(?<=\.))"),
    (CLOCK, r"\b(?:after|before|until|at|from|by|around) (?:\d{1,2}|six|seven|eight|nine|ten|five|four) (?:in the (?:morning|evening|afternoon)|at night|tonight"
            r"|tomorrow)\b"),
    (PRICE, r"(?:us|au|nz|ca)?[$€£] ?\d(?:[\d,. ]*\d)?(?:k|m)?\b(?:[ -]{1,3}(?:to )?[$€£]? ?\d[\d,.]*k?\b(?! ?[a-z]))?"),
    (PRICE, r"\b\d[\d,.]* ?k? ?(?:dollars?|bucks|euros?|eur|usd|aud|nzd|gbp|chf|quid|grand|francs?|€|£|\$)(?!\w)"),
    (PRICE, r"\b(?:cost|costs|paid|pay|price|priced at|quoted(?: me| us)?|budget(?: is| of)?|for about)"
            r" (?:about |around |only |me |us |is |of )?\d[\d,.]*k?\b(?! ?-?(?:m|ft|feet|psi|gal|l|w|v|h|in|litre|liter"
            r"|metre|meter|gpm|lpm|\"|'|%|percent|mm|inch|pump|panel|tank|people|in|of|x)\w*)"),
    (CODE, r"\b(?:order|invoice|ref(?:erence)?|ticket|(?<!worst )(?<!best )(?<!any )(?<!that )(?<!our )(?<!this )case|quote|quotation|job|account|acct|customer|po|part|model"
           r"|serial|sku|item|permit|parcel|licence|license|id)(?: (?:no|number|num|nr|id|is))?[.:]?[ #]{1,2}(?:is )?(?!et[ _-]?[0o]?\b)(?!swl\b)(?!static\b)"
           r"[a-z]{0,6}[ -]?\d[\w-]*+(?:[-/][\w]+)*+(?! ?(?:mm|cm|in|inch|inches|m|ft|feet|psi|l|gal|m2|sq|acres?|ha|square)\b)"),
    (CODE, r"\((?:no|nr)\.? ?\d+\b"), (CODE, r"#\s?\d{3,}[\w-]*"),
    (CODE, r"\b(?!(?:d|pn|sch|sched|sdr|sidr|dr|dn|pe|pvc|cpvc|hdpe|mdpe|ldpe|pex|ip|od|id|sf|n|s|e|w|x|h|co|y)[ -]?\d)"
           r"[a-z]{1,5}-?\d{2,}[a-z\d]*(?:-[a-z\d]+)*\b"),
    (CODE, r"\b\d{1,3}[a-z]{2}\d{2,}[\w-]*\b|\b\d{2,4}-\d{2,4}-\d{1,4}\b"),
    (ADDRESS, r"\b(?:p\.?o\.? ?)?(?<!spring )(?<!pressure )(?<!intake )(?<!catchment )(?<!collecting )box \d+\b(?! ?(?:m|ft|feet|metres|meters|yards)\b)|\b(?:highway|hwy|route|rte|county road|cr|lot|apt|suite|unit|exit|junction) \d+\b"),
    (ADDRESS, r"\b\d{1,5} (?!(?:imperial |us |cubic |square )?(?:gal(?:lon)?s?|lit(?:re|er)s?|met(?:re|er)s?|feet|foot|ft|m|l|people|panels|inch(?:es)?|in|mm|cm|yards?|bar|psi|volts?|watts?)\b)(?:[a-z]+ ){1,3}(?:road|rd|street|st|lane|ln|avenue|ave|drive|court|close|crescent|terrace rd)\b"),
    (ADDRESS, r"\b[a-z]{1,2}\d[a-z\d]? \d[a-z]{2}\b|\b(?:zip|post ?code)(?: code)?:? ?[a-z]?\d[\w ]{2,7}\b"),
    (LONG_AGO, r"\b(?:\d{1,3}|two|three|four|five|six|ten|twenty|thirty|a few|couple(?: of)?)[ -]+(?:more )?(?:year|yr|month)s?"
               r"(?:[ -]old\b|s'?)?(?: (?:ago|now))?|\b(?:\d{1,3}|two|three|four|five|six|a few|couple(?: of)?)[ -]weeks? ago\b|\bin (?:\d+|two|three|four|a few) weeks\b"),
    (LONG_AGO, r"\b(?:aged?|age of) \d{1,3}(?:(?:,| and| &) ?\d{1,3})*\b|\b(?:two|three|\d+) days ago\b"
               r"|\bfor (?:the (?:last|past) )?\d+ days\b(?= now)"),
))  # fmt: skip
_ZIP = re.compile(r"\b[A-Z]{2},? \d{5}(?:-\d{4})?\b")
_FORWARDED = re.compile(
    r"^[ >]*-{2,}\s*(?:original|forwarded) message|^[ >]*(?:begin )?forwarded (?:message|mail|e-?mail)\b.{0,60}$"
    r"|^[ >]*from: .{0,200}\n[ >]*(?:sent|date|to|subject): ", re.M
)  # fmt: skip
_WROTE = re.compile(r"^[ ]*(?:on|am|le) .{5,150}\n?.{0,80}\bwrote:\s*$", re.M)
_QUOTE = re.compile(r"^[ ]*>.*$", re.M)
_HEADER = re.compile(r"^[ ]*(?:from|to|date|sent|cc|subject|re|fwd?)\s*:.*$", re.M)
_DASHES = re.compile(r"^--+ ?$", re.M)
_SIGN = re.compile(
    r"^[ ]*(?:many thanks|thanks(?: again| so much| a lot| in advance| for .{0,40})?|thank you(?: .{0,40})?|thx|ta|tia"
    r"|(?:kind |best |warm |with )?regards|best(?: wishes)?|all the best|cheers|sincerely|yours(?: \w+)?|br|rgds)"
    r"[ ,!.-]*\n", re.M
)  # fmt: skip
_SENT = re.compile(r"^[ ]*sent from .{0,60}$|^[ ]*get outlook for .*$", re.M)
_FIELD = re.compile(r"^[ ]*[a-z][a-z /()?-]{2,40}: *\S", re.M)
_FIELDS = 4  # labels with values from which on lines are a form's; our choice
_TELLS = 3  # numbers from which on a mail with one question tells something; our choice
_GREETING = 15  # words up to which what stands before earlier mail only hands it on; our choice
_AFTER_SIGN = 70  # characters of a line beyond which it is no part of a signature; our choice


def noise(low: str, text: str) -> list[Ignored]:
    """Spans whose numbers are of another kind altogether.  low: the folded text."""
    found: list[tuple[int, int, str]] = []
    found += _quoted(low)
    found += _signed(low, list(found))
    for match in _ZIP.finditer(text):
        found.append((*match.span(), ADDRESS))
    for why, pattern in _PATTERNS:
        found += [(*match.span(), why) for match in pattern.finditer(low)]
    kept: list[Ignored] = []
    for start, end, why in found:
        if not any(one.start <= start and end <= one.end for one in kept):
            kept.append(Ignored(text[start:end], start, end, why))
    return sorted(kept, key=lambda one: one.start)


def _quoted(low: str) -> list[tuple[int, int, str]]:
    lines = [line.span() for line in _QUOTE.finditer(low)]
    if lines and not _wrote_before(_HEADER.sub("", _WROTE.sub("", _QUOTE.sub("", low)))):
        lines = []  # a mail that was handed on
    theirs = [run for run in _runs(low, lines) if not _own(run, low)]
    found = [(start, end, QUOTED) for _, inside in theirs for start, end in inside]
    forwarded = _FORWARDED.search(low)
    if forwarded and _wrote_before(low[: forwarded.start()]):
        found.append((forwarded.start(), len(low), QUOTED))
    wrote = _WROTE.search(low)
    if wrote:
        rest = low[wrote.end() :]
        whole = ">" not in rest and _wrote_before(low[: wrote.start()])
        found.append((wrote.start(), len(low) if whole else wrote.end(), QUOTED))
    return found


Run = tuple[int, list[tuple[int, int]]]  # depth of the quoting, lines


def _runs(low: str, lines: list[tuple[int, int]]) -> list[Run]:
    """Quoted lines that stand together, by how often they were quoted."""
    runs: list[Run] = []
    for start, end in lines:
        signs = re.match(r"[ >]*", low[start:end])
        depth = signs.group().count(">") if signs else 1
        empty = not low[start:end].strip(" >")
        if runs and not low[runs[-1][1][-1][1] : start].strip() and (empty or depth == runs[-1][0]):
            runs[-1][1].append((start, end))
        else:
            runs.append((depth, [(start, end)]))
    return runs


def _own(run: Run, low: str) -> bool:
    """Whether quoted mail is the writer's own: each second one of a thread, or one that tells of
    "our" place and asks nobody about "yours"."""
    depth, lines = run
    said = " ".join(low[start:end] for start, end in lines)
    ours, yours = (
        len(re.findall(r"\b(?:our|my|we|i|us)\b", said)),
        len(re.findall(r"\byours?\b", said)),
    )
    asks = _ASKS.search(said) if ours < 2 * yours + 1 or _SELLS.search(said) else None
    head = low[max(0, lines[0][0] - 90) : lines[0][0]] + said[:60]
    if re.search(
        r"\b(?:i|we) wrote\b|\bmy (?:earlier|last|first|previous) (?:mail|message|e-?mail|letter)\b",
        head,
    ):
        return True
    if depth % 2 == 0:
        return asks is None
    if asks is not None:
        return False
    tells = len(re.findall(r"\d+", said)) >= _TELLS and said.count("?") <= 1
    return ours > 0 or (not re.search(r"\byou\b", said) and (tells or "?" not in said))


_ASKS = re.compile(
    r"\b(?:your|yours|you have|are you|do you (?:have|know|use|want)|you (?:said|need|want|may need|should)|in stock|we (?:offer|sell|recommend|can (?:offer|send|deliver|supply))|dear (?:customer|sir|madam|mr|mrs|ms)|thank you for your|our (?:price|shop|range|workshop|engineer|catalogue|customers))\b"
)
_SELLS = re.compile(
    r"\b(?:in stock|we (?:offer|sell|recommend|can (?:offer|send|deliver|supply))|dear (?:customer|sir|madam|mr|mrs|ms)|thank you for your|our (?:price|shop|range|workshop|engineer|catalogue|customers))\b"
)
_OURS = re.compile(
    r"\b(?:our|my) (?:\w+ )?(?:well|spring|house|cabin|pump|tank|creek|place|farm|water|pipe|cistern|bore\w*|garden|system|supply)\b|\b(?:we|i) (?:have|use|live|draw|pump|get|need|want)\b"
)


def _wrote_before(before: str) -> bool:
    """Whether more than a greeting stands before earlier mail; else that is what was handed on."""
    words = [one for one in _HEADER.sub("", before).split() if not one.startswith(">")]
    return len(words) >= _GREETING or (len(words) >= 5 and any(one[0].isdigit() for one in words))


def _signed(low: str, quoted: list[tuple[int, int, str]]) -> list[tuple[int, int, str]]:
    stop = min((start for start, end, _ in quoted if end == len(low)), default=len(low))
    found = [(*line.span(), SIGNED) for line in _SENT.finditer(low)]
    dashes = _DASHES.search(low)
    if dashes and low[: dashes.start()].strip() and not _form(low, dashes):
        thread = min(
            (m.start() for p in (_QUOTE, _WROTE) if (m := p.search(low, dashes.end()))),
            default=stop,
        )
        return [*found, (dashes.start(), min(stop, thread), SIGNED)]
    for sign in _SIGN.finditer(low):
        end = sign.end()
        for line in low[sign.end() : stop].split("\n")[:9]:
            if len(line) > _AFTER_SIGN or re.match(
                r"\s*(?:p\.?s|pps|edit|oh|and|also|but)\b", line
            ):
                break
            end += len(line) + 1
        if low[sign.end() : end].strip() and low[min(end, stop) : stop].strip()[:2] in {
            "",
            "ps",
            "p.",
        }:
            found.append((sign.start(), min(end, stop), SIGNED))
    return found


def _form(low: str, dashes: re.Match[str]) -> bool:
    """Whether a line of dashes stands under the heading of a form, and not above a name."""
    rest = low[dashes.end() :]
    return len(_FIELD.findall(rest)) >= _FIELDS and len(rest) > dashes.start()


def masked(low: str, spans: Iterable[Ignored]) -> str:
    """The text with these spans blotted out; lines and sentences keep their ends."""
    signs = list(low)
    for one in spans:
        for at in range(one.start, one.end):
            stops = low[at] == "." and low[at + 1 : at + 2].strip() == ""
            if not stops and signs[at] not in "\n?!":
                signs[at] = MASK if one.why != WITHDRAWN else " "
    return "".join(signs)


# Clauses that tell of something else ---------------------------------------------------------------

_ROLE = (
    r"(?:supplier|dealer|plumber|installer|salesman|seller|buddy|guy|man|chap|fellow|bloke|lady|woman|farmer|rancher|couple|colleague|customer|contractor"
    r"|builder|shop ?keeper|mechanic|electrician|acquaintance|person|family|friend)"
)
_THINGS = r"(?:well|pump|tank|rig|array|outfit|place|system|house|cabin|spring|set ?up|bore(?:hole)?|farm|pressure|pipe|line|panels|one|water|property|ranch|trough)"
_OTHER = re.compile(
    rf"\b{_KIN}(?: [a-z]+){{0,3}},? who (?:have|has|had|gets?|uses?|runs?|lives?|owns?)\b|\b(?:pump|tank|one) (?:that |which )?(?:we|i) (?:have|use)(?: here| now)? (?:is )?(?:on loan|borrowed)\b|\bsister (?:group|parish|mission|community|project|society)\b|\b(?:his|hers|theirs) (?:lifts|gives|runs|does|has|is|works|pumps|makes|delivers|holds)\b|^\W*{_KIN} (?:has|have|had|uses|runs|pays)\b|\b{_KIN}(?:'s|s'|s)?(?: \w+)? {_THINGS}\b|\b(?:the|my|our|a|his|her) {_KIN}(?:(?: \w+){{0,3}}?|(?: (?:on|at|in|from|over|up|down|next|the|other|road|valley|place|croft|farm|hill|side)){{1,5}}) (?:(?:ran|laid|pumps|waters|keeps|owns|irrigates|are|(?:has|have|had)(?! (?:built|made|installed|put|helped|dug|measured|given|told|said|drawn|bought|(?:it|the well|our well|this well|the bore\w*|the pipe|the line) (?:bored|dug|drilled|sunk|laid|put|built|tested))))(?! [^.;\n]{{0,40}}for (?:us|me)\b)|uses?|runs?|gets?|lives?|is on|asks|wonders|wants|would like)\b"
    rf"|\b(?:the|my|our|an?|one|some|this|that) (?:{_ROLE})(?: [a-z]+)? (?:who |that )?(?:has|have|runs|uses|owns|gets|pumps|lifts|draws|lives|swears by)\b(?! (?:been|to|it |the water|our|us|my|me)\b)|\b(?:an?|one|some) (?:{_ROLE}|{_KIN}) with (?:an?|his|her|\d|¤)|\bat (?:my|our) (?:last|old|previous|former|other) (?:place|house|farm|home|property)\b|\b(?:isn't|is not|not) (?:mine|ours)\b|\bbelongs to (?:the|my|our|a) \w+|(?:^|\n)[ *-]*(?:the |my |our )?{_KIN}(?:'s|s'|s)? *[:=(]"
    r"|\b(?:neighbou?ring|adjacent|adjoining|another|sister|the other) (?:scheme|lease|plot|allotment|holding|estate|church|hotel|hut|land|lot|household|camp|farm|property|ranch|place|village|house|school|clinic|association|site|parcel|plot)(?:'s)?\b"
    rf"|\((?:my|our|the|his|her) {_KIN}(?:'s|s')?[^)\n]{{0,30}}\)"
    rf"|\b(?:the|my|our) {_KIN}, (?:who )?[^,.;\n]{{0,45}}, (?:have|has|had|use|uses|run|runs|get|gets)\b(?! (?:measured|built|dug|put|helped|told|said|tried|found))"
    rf"|\b{_KIN}(?:'s|s')(?= (?:is|was|has|at|\d|¤))|\bnext door\b(?! to\b)(?! (?:is|to) (?:the|our))"
    rf"|\b(?<!get )(?<!gets )(?<!got )(?<!drink )(?<!draws )(?<!draw )(?<!take )(?:his|hers|theirs|their) (?:\w+ |[\d.]+ ?[a-z]+ (?:deep |long |high )?)?{_THINGS}\b|\b(?:that of|like) (?:the|my|our) {_KIN}\b"
    r"|\b(?:at work|in town|at (?:his|her|their) place|in the (?:catalogue|catalog|brochure)|(?:on|in) (?:the|a) (?:forum|video|website))\b"
)
_FOR_KIN = re.compile(
    rf"\b(?:asking|writing|enquiring|inquiring|planning|plan|system|supply|water|help(?:ing)?|look(?:ing)? after|inherited|took over|taken over|moved into|on behalf|this is|it is|it's)\b[^.;\n]{{0,45}}(?:\b(?:for|of|at)|(?<=inherited)|(?<=look after)|(?<=looking after)|(?<=took over)|(?<=taken over)|(?<=moved into)) (?:my|our|his|her) (?:elderly |old |late )?(?P<who>(?!neigh){_KIN})\b|(?<!at )(?<!to )(?<!in )(?<!from )(?<!near )(?:\bmy |(?<![^\n]))(?P<whose>(?!neigh){_KIN})'s (?:place|house|farm|cabin|smallholding|homestead)(?= ?[:,]|\n)"
)
_OWN = re.compile(
    r"\b(?:but|whereas|while|though)\b[^.\n]{0,12}\b(?:ours?|we|my|mine|i|us)\b|[,;-] ?(?:ours|mine|we|our|my)\b|\bours (?:is|has|gives)\b"
)
_NOT_OURS = re.compile(r"not (?:mine|ours)|n't (?:mine|ours)")
_HEADED = re.compile(r"[^\n]{0,30}\((?:my|our|the|his|her) [^\n)]{3,40}\) *:?(?:\n|$)")
_GOES_ON = re.compile(r"\s*(?:he|she|they|his|hers|her|theirs|their)\b")
_WAS = re.compile(
    r"\b(?:(?<!is )(?<!are )(?<!be )(?<!get )used to (?!be enough|it\b|the\b|fill\b|water\b|pump (?:it|water)? ?(?:from|into|to)\b|irrigate)[a-z]+|previously|formerly|back then|in the old days|(?:the )?(?:last|previous|former|old) owners?"
    r"|(?<!static )before (?:that|then)[ ,]|until (?:last|recently|it)|(?:originally|once|first) (?:had|was|were|ran|used)|at first|in those days|years ago (?:we|it|there|i)\b|had (?:an? |the )?\w+(?: \w+)? before\b|(?:had|was) (?:been )?(?:closed|filled in|capped|abandoned|decommissioned)"
    r"|(?:we|i) had\b(?=[^.;\n]{0,40}\bnow\b)|before,? (?:i|we|there|it) (?:had|was|were|used|ran)\b|(?:(?:the|our|my|an?) )?(?:old|previous|former|original|first|last) (?:\w+ )?(?:pump|submersible|jet|tank|well|spring|bore\w*|pipe|line|switch|system|pressure tank|cabin|house|battery|batteries|panels?|one)"
    r"(?=(?:, [^,;\n]{2,25},)? (?:was|were|had|held|took|leaked|rotted|lasted|ran|died|broke|failed|gave|used|got|burned|froze|cracked|made|could|did|¤|of )|(?<=system): |(?<=line): |(?<=setup): )"
    r"|(?:i|we) (?:said|wrote|told you|mentioned) [^.,;\n]{2,40} (?:earlier|before|last time|in my (?:first|last) (?:mail|letter|e-?mail))|(?:(?:i|we) (?:said|wrote|told you|mentioned)\b(?=[^.;\n]{0,35}\b(?:it'?s|it is|but|now|actually|there are|that)\b[^.;\n]{0,15}\d)|took (?:the|our|my|an?) [^.,;\n]{0,25} out\b|took out|ripped out|got rid of|gave away|threw (?:out|away)|sold (?:it|them|that|the|off|both|all|our|my|most)|(?:been|was|were|got) sold|removed|scrapped|disconnected|replaced|swapped(?: out)?)\b"
    r"|(?:old|previous|former) (?:supply|arrangement|scheme|set ?-?up|system)\b[^.;:\n]{0,25}:|last (?:year|summer|winter|spring|season|month) (?:it|we|the|i)\b|\b(?:did have|had|there was|there were)\b(?! to\b)[^.;\n]{3,70}\b(?:but|until|till|and then|which)\b[^.;\n]{0,45}\b(?:took (?:it|them|that) (?:out|off|away|down)|burst|got rid|gave up|is gone|are gone|was stolen|sold (?:it|them)|threw (?:it|them)|died|collapsed|ran dry for good|no longer|any ?more)\b)"
)
_NOW = re.compile(
    r"\b(?:but (?:now|that|then|it|we|these)|the (?:present|current) (?:one|tank|pump|pipe|well)|this (?:year|summer)|now|nowadays|these days|today|currently|since then|(?:the )?new (?:one|pump|tank|line|pipe|well|system)|(?:i|we)(?: would|'d)? (?:want|like)|replaced (?:it |that |them )?(?:with|by)"
    r"|(?:is|was|were|been) replaced (?:with|by)|with|by|for)\b"
)
_INSTEAD = re.compile(  # "I said 80 m before, it's 95 m"
    r"[,;:-] ?(?:but |and |actually |no,? |sorry,? )*(?=(?:it'?s|it is|there are|that'?s|they are)\b)"
)
_SEVERAL = 2  # sentences from which on a question may stand for itself; our choice
_NO = re.compile(
    r"(?:\b(?:no|not|without|never|nor|neither|isn'?t|aren'?t|wasn'?t|ain'?t|instead of|rather than|zero"
    r"|never (?:wanted|needed|owned|had|got|bought|liked|fitted|installed|used|missed|put in|got round to|bothered (?:with|about|to (?:fit|buy|get|install|put in))|saw the (?:need|point|use) (?:for|of|in)|cared (?:for|about)|felt the (?:need|want) (?:for|of))|(?:have|has|had|see|got) no (?:use|wish|need|room|time|desire|call|place) (?:for|of)|(?:can|could|will|would|we|i) do without|(?:do|does|did)(?:n'?t| not) (?:have|own|use|want|need|run on|miss|like|care for|bother with)|have(?:n'?t| not)(?: got)?|has(?:n'?t| not)(?: got)?|there'?s no|got no)"
    r"(?:,? (?:a|an|any|the|about|over|quite|proper|real|yet|more|such|even|really|actually|on|in|inside|running|got|have|kind of"
    r"|sort of|connected to|hooked up to))*(?: (?:separate|electric|small|big|new|proper|automatic|flush|flushing|mains|grid))*"
    r"|\b(?:no|without|(?:do|does)(?:n'?t| not) have|have(?:n'?t| not)(?: got)?)\b(?! ?,)[^.;¤\d\n:]{0,40}(?:\bor\b|\bnor\b)(?: an?| any)?(?: \w+)?)\s*$"
)


def apart(low: str, sentences: Iterable[tuple[int, int]]) -> list[tuple[int, int, str]]:
    """Spans of a masked, folded text that tell of somebody else's, of the past, of plans."""
    sentences = tuple(sentences)
    return [
        (start, end if why == OTHERS else _inside(low, start, end), why)
        for start, end, why in [*_apart(low, sentences), *enquiry_aside.aside(low, sentences)]
    ]


def _inside(low: str, start: int, end: int) -> int:
    """Where what is told in brackets ends: with them."""
    line = max(low.rfind(sign, 0, start) for sign in ".;\n") + 1
    opened = low.rfind("(", line, start + 1)
    if opened < 0 or ")" in low[opened:start]:
        return end
    closed = low.find(")", start, end)
    return closed + 1 if closed >= 0 else end


def _apart(low: str, sentences: Iterable[tuple[int, int]]) -> list[tuple[int, int, str]]:
    found = [(*span, WITHDRAWN) for span in taken.reworded(low)]
    theirs = False
    sentences, kin = tuple(sentences), _FOR_KIN.search(low)
    found += [(*span, OTHERS) for span in supposed.taken_back(low, sentences)]
    found += [(*span, MAYBE) for span in options.options(low, sentences)]
    found += [(*span, OTHERS) for span in dropped.theirs(low, () if kin else sentences)]
    found += [(*span, gone.GONE) for span in gone.dropped(low)]
    alone = len(sentences) < _SEVERAL  # a letter of one question tells by it
    for start, end in sentences:
        said = low[start:end]
        other = next(
            (one for one in _OTHER.finditer(said)
             if not (_theirs_too(one, kin) or gone.lives_here(said, one))), None
        )  # fmt: skip
        if other is not None and _HEADED.match(said.strip()):
            blank = low.find("\n\n", end)
            found.append((start, blank if blank > 0 else len(low), OTHERS))
            continue
        if other is None and theirs and _GOES_ON.match(said):
            other = _GOES_ON.match(said)
        theirs = other is not None
        if other is not None:
            own = _OWN.search(said, other.end())
            theirs = own is None
            begin = (
                said.rfind(",", 0, other.start()) + 1 if _NOT_OURS.search(other.group()) else None
            )
            begin = other.start() if begin is None else begin
            found.append((start + begin, start + (own.start() if own else len(said)), OTHERS))
        found += [(*span, OTHERS) for span in supposed.at_home(low, said, start)]
        found += _past(said, start)
        for weighed in (considered, dropped.let_go, taken.rejected):
            found += [(*span, MAYBE) for span in weighed(said, start)]
        found += supposed.supposed(said, start)
        found += [(*span, gone.GONE) for span in gone.gone(said, start)]
        found += [(*span, gone.YOURS) for span in gone.assumed(said, start)]
        if not alone:
            found += [(*span, MAYBE) for span in supposed.asked(said, start)]
    return found


def _theirs_too(other: re.Match[str], kin: re.Match[str] | None) -> bool:
    """Whether somebody's words are of the one that the letter is written for."""
    return kin is not None and (kin["who"] or kin["whose"]).rstrip("s'") in other.group()


_WHICH_WE = re.compile(r"\b(?:which|that) (?:i|we|he|she|they)(?:'ve| have| had)?(?: \w+)? $")
_PUT_IN = re.compile(
    r",? (?:and|but|so|then) (?:i|we)(?:'ve| have)?(?: since| now)? (?:put in|fitted|installed|bought)\b"
)


def _past(said: str, start: int) -> list[tuple[int, int, str]]:
    was = _WAS.search(said) or supposed.long_ago(said)
    if was is None:
        passive = re.search(
            r"\b(?:was|were|has been|got|is) (?:replaced|swapped|changed) (?:with|by|for|to)\b",
            said,
        )
        return [(start, start + passive.start(), PAST)] if passive else []
    now = _NOW.search(said, was.end())
    if now is None and was.group().endswith(("both", "all", "our", "my", "most", "off")):
        now = re.compile(r", (?:and|but|so) (?:the|we|now)\b|;").search(said, was.end())
    if was.group().startswith(("i ", "we ")):
        now = _INSTEAD.search(said, was.end()) or now
    now = now or _PUT_IN.search(said, was.end())
    begin = was.start()
    if _WHICH_WE.search(said, 0, begin):  # "two batteries which we have scrapped"
        begin = max(said.rfind(sign, 0, begin) for sign in ",;:") + 1
    return [(start + begin, start + (now.start() if now else len(said)), PAST)]


def negated(low: str, start: int) -> bool:
    """Whether a "no" or a "not" belongs to what begins at ``start``.

    >>> negated("we have no pump", 11), negated("no, a pump", 6)
    (True, False)
    """
    left = low[max(0, start - 70) : start]
    left = left[left.rfind("\n\n") + 1 :]
    if re.search(r"\b(?:no|not)[,.] ?(?:an?|the|our|it'?s)? ?$", left):
        return False
    return bool(_NO.search(left))
