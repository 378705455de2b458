"""Hours of the day and of watering, and months of a year, that a letter tells in words."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece
from calc.site.enquiry_numbers import NUMBER, value

_CLOCK = (
    rf"(?P<h>\d{{1,2}}|{NUMBER})(?:[:.](?P<m>\d\d))? ?(?P<half>a\.?m\.?|p\.?m\.?|o'?clock)?"
    r"(?: ?(?P<day>in the (?:early )?(?:morning|evening|afternoon)|at night|this evening|every evening|each evening|every morning))?"
)
_BEGINS = re.compile(
    rf"\b(?P<what>water(?:ing|s)?|irrigat\w+|sprinkl\w+|hosing|fill(?:ing|s)?|pump(?:ing|s)?|it|which|the sun pump)?\b[^.;\n]{{0,25}}?\b(?:start(?:s|ing|ed)?|begin(?:s|ning)?|goes on|comes on|switch(?:es)? on)\b(?P<then>(?: (?:to )?(?:water|irrigat\w+|watering|filling|fill|pumping|with the garden|the garden|it))?)(?: (?:every|each) (?:day|evening|morning))?(?: ?(?:at|from|around|about|by) (?:about |around )?| (?=\d{{1,2}} ?[ap]\.?m\b)){_CLOCK}(?![\d:]|\.\d|\w| ?(?:psi|bar|m\b|ft|l\b|%))"
)
_FROM = re.compile(
    rf"\b(?P<what>water(?:ing|ed|s)?|irrigat\w+|sprinkl\w+)\b[^.;\n]{{0,30}}? from (?:about |around )?{_CLOCK}(?= (?:to|till|until|for|on|onwards)\b|[,.;\n])"
)
_LASTS = re.compile(
    rf"\b(?P<what>water(?:ing|s)?|irrigat\w+|sprinkl\w+|garden|it)\b(?P<mid>[^.;\n]{{0,60}}?)\b(?:lasts?|takes?|goes on(?: for)?|runs?(?: for)?|for|is over in)(?: about| around| some| roughly)? (?:(?P<one>an|one|two|three|four|{NUMBER})[ -]?(?:h|hrs?|hours?)\b(?P<more> and (?:a|one) (?:half|quarter))?|(?P<half>half an hour))"
)
_THEN = re.compile(
    rf",? (?:for |and runs for |then )?(?P<n>{NUMBER}) ?(?:h|hrs?|hours)\b(?! (?:away|later|before))"
)
_MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"]
_MONTH = r"(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\b"
_DRY = (
    re.compile(
        rf"\b(?:(?:does not|doesn'?t|never|hardly|barely|don'?t get) (?:any )?rains?|no rain|without rain|dry (?:season|months?|period|time|spell)s?|dry|rainless)\b(?P<mid>[^.;\n]{{0,35}}?)\b(?P<a>{_MONTH}) ?(?:to|till|until|through|thru|and|-|up to|to the end of) ?(?:the end of |end of |about )?(?P<b>{_MONTH})"
    ),
    re.compile(
        rf"\b(?P<a>{_MONTH}) ?(?:to|till|until|through|thru|-) ?(?:the )?(?:end of )?(?P<b>{_MONTH})(?P<mid>)(?:,)? (?:is |are |being )?(?:all |bone |completely |quite |usually |always |normally )*(?:dry\b|rainless|without (?:any )?rain|no rain)"
    ),
    re.compile(
        rf"\b(?:from|between) (?P<a>{_MONTH}) (?:to|till|until|through|and) (?:the end of )?(?P<b>{_MONTH}),? (?P<mid>[^.;\n]{{0,25}}?)\b(?:no rain|not rain|not a drop|hardly any rain|no real rain|(?:little|barely any) rain|is dry|dry\b|without rain|never rains|hardly rains|(?:does not|doesn'?t) rain)"
    ),
)
_MOST = (
    re.compile(rf"\b(?:et[o0]?|evapotranspiration)\b[^;\n]{{0,50}}?[ (](?:in )?(?P<a>{_MONTH})"),
    re.compile(
        rf"\b(?:et[o0]?|evapotranspiration)\b[^.;\n]{{0,30}}\bmm\b[^.;\n]{{0,14}}\bin (?P<a>{_MONTH})"
    ),
    re.compile(
        rf"\b(?:most water|more water|greatest need|peak (?:need|demand|month)|thirst\w+|highest need|(?:hottest|driest|worst|critical|peak) month|busiest month)\b[^.;\n\d]{{0,25}}?\b(?P<a>{_MONTH})"
    ),
    re.compile(
        rf"\b(?P<a>{_MONTH})(?: is)?(?: (?:when|the month|our|with|they|it|the))*[^.;\n\d]{{0,20}}\b(?:most water|peak (?:month|need|demand)|thirst\w+|greatest need|hottest month|worst month|highest need)"
    ),
)


def hours(low: str, masked: str) -> list[Piece]:
    """When watering or filling begins, and how long it lasts.  low: the folded letter, whose times
    of day are blotted out in ``masked``."""
    found: list[Piece] = []
    for match in (*_BEGINS.finditer(low), *_FROM.finditer(low)):
        hour = _hour(match, low[max(0, match.start("h") - 34) : match.start("h")])
        begin = max(low.rfind(sign, 0, match.start()) for sign in ".;\n") + 1
        said = low[begin : match.end()]
        if hour is None or re.search(r"¤|\b(?:not|never)\b", masked[begin : match.start()]):
            continue
        path = _what(said)
        if path:
            found.append(Piece(path, match.start(), match.end(), hour, hour))
            then = _THEN.match(masked, match.end())
            if then and path == "use.garden_from":
                long = value(then["n"])[0]
                found.append(Piece("use.garden_hours", *then.span("n"), long, long))
    if not found and not re.search(r"\bgarden|\bsprinkl", low):
        return found
    for match in _LASTS.finditer(masked):
        if not _GARDEN.search(masked[max(0, match.start() - 70) : match.end()]) or (
            _DRIP.search(low) and not (found and _WE_WATER.search(match.group()))
        ):
            continue
        amount = 0.5 if match["half"] else 1.0 if match["one"] == "an" else value(match["one"])[0]
        more = {"half": 0.5, "quarter": 0.25}.get((match["more"] or "").split(" ")[-1], 0.0)
        begin = match.start("half" if match["half"] else "one")
        found.append(Piece("use.garden_hours", begin, match.end(), amount + more, amount + more))
        break
    return found


_WE_WATER = re.compile(r"^water (?:it |them |the \w+ )?(?:from|at)\b")
_GARDEN = re.compile(
    r"\b(?:garden|watering|water the|sprinkl\w+|beds|vegetables|lawn|irrigat\w+)\b"
)
_DRIP = re.compile(r"\b(?:drippers?|emitters?|drip ?lines?)\b")
_FILLS = re.compile(r"\b(?:fill(?:s|ed|ing)?|pump(?:s|ing)?)\b[^.;\n]{0,120}$", re.M)


def _what(said: str) -> str:
    """Which beginning is told: of watering the garden, or of filling a tank."""
    if re.search(
        r"\b(?:watering|irrigat\w+|sprinkl\w+|to water|garden|hosing)\b|\b(?:i|we|they) water\b",
        said,
    ):
        return "use.garden_from"
    return "store.begins" if _FILLS.search(said) else ""


def _hour(match: re.Match[str], before: str) -> float | None:
    """An hour from 0 to 24; None where it may be of the morning or of the evening."""
    half, day = (match["half"] or "").replace(".", ""), match["day"] or ""
    hour = value(match["h"])[0] + int(match["m"] or 0) / 60
    if hour > 24 or hour != hour // 0.25 * 0.25:
        return None
    named = re.findall(r"\b(?:each|every|in the) (morning|evening)\b", before)
    day = day or ("" if half else " ".join(named))
    late = half == "pm" or "evening" in day or "night" in day or "afternoon" in day
    if hour < 12 and late:
        return hour + 12
    known = half == "am" or "morning" in day or "clock" in half or match["m"] is not None
    return hour if known else None


_DRY_TIME = re.compile(
    rf"\bdry (?:time|season|period)\b[^.;\n]{{0,40}}?\b(?P<n>{NUMBER}) months?\b(?:,? (?:from|beginning in|starting in) (?P<a>{_MONTH}))?|\bdry months(?: (?:are|here|there|we have|number))*[ :]+(?P<n2>{NUMBER})(?:,? (?:from|beginning(?: in| with)?|starting(?: in| with)?) (?P<a2>{_MONTH}))?"
)


_DRY_ALL = re.compile(
    rf"\bdry months\b[^.;\n\d]{{0,45}},? (?P<n>{NUMBER}) (?:in all|in total|altogether|of them)\b(?P<a>)(?P<a2>)"
)
_DRY_BEGINS = re.compile(
    rf"\b(?:(?P<n>{NUMBER}) )?dry (?:season|months?|period|time|half)\b(?: here| with us| of ours)? (?:starts?|begins?|comes|sets in|runs|is|goes)(?: in| with| around| about| from| at| the| end| beginning| start| of| early| late)* (?P<a>{_MONTH})"
)
_DRY_LIST = re.compile(
    rf"\bdry months?(?: are| is|:| =| being)* ?(?P<all>{_MONTH}(?:(?:, ?| and | & |,? and ){_MONTH})*)(?! ?(?:to|till|until|through|-))"
)


def _begins(clean: str) -> list[Piece]:
    """The month with which the dry season begins, and a list of dry months."""
    if listed := _DRY_LIST.search(clean):
        named = [_MONTHS.index(one[:3]) for one in re.findall(_MONTH, listed["all"])]
        if all((b - a) % 12 == 1 for a, b in zip(named, named[1:], strict=False)):
            many, span = float(len(named)), listed.span()
            return [
                Piece("rain.dry_from", *span, named[0] + 1.0, named[0] + 1.0),
                Piece("rain.dry_count", *span, many, many),
            ]
    begins = _DRY_BEGINS.search(clean)
    if begins is None:
        return []
    first = _MONTHS.index(begins["a"][:3]) + 1.0
    found = [Piece("rain.dry_from", *begins.span(), first, first)]
    if begins["n"]:
        many = value(begins["n"])[0]
        found.append(Piece("rain.dry_count", *begins.span(), many, many))
    return found


_SPELL = re.compile(
    rf"\b(?:dry (?:spell|season|time|period|stretch)s?|drought|(?:summers?|season|time) without rain)(?: here)? (?:lasts?|runs?|is|goes on|takes|of)(?: for| about| around| some| up to)* (?P<n>{NUMBER}) months?\b(?:,? (?:round here )?(?:and )?(?:it )?(?:starts?|starting|from|beginning|begins?)(?: in| with)? (?P<a>{_MONTH}))?(?P<n2>)(?P<a2>)"
    rf"|\bfrom (?P<a3>{_MONTH})(?: on| onwards)? (?:there is |it is |we have |we get )?(?:no rain|not any rain|it does not rain|dry)(?: falls)?(?: for| during| about)* (?P<n3>{NUMBER}) months\b"
    rf"|\b(?:last|for|survive|through) (?:the|our|all) (?P<n6>{NUMBER}) dry months\b(?:,? (?:they |which )?(?:starts?|begins?)(?: in| with)? (?P<a6>{_MONTH}))?"
    rf"|(?<![\w-])(?<!last )(?<!for )(?<!survive )(?<!through )(?<!store )(?P<n4>{NUMBER}) (?:dry months|months (?:dry|without (?:any )?rain|with no rain))\b(?:,? (?:and )?(?:they |which |it |that )?(?:starts?|starting|begins?|beginning|from)(?: in| with)? (?P<a4>{_MONTH}))?"
    rf"|\bdry months ?: ?(?P<n5>{NUMBER}),? (?:beginning|starting|from)(?: in| with)? (?P<a5>{_MONTH})"
)


def _dry_spell(low: str) -> dict[str, str] | None:
    """How many months are dry, and with which they begin, as ``months`` asks for them."""
    match = _SPELL.search(low) if re.search(r"\brain|\broof|\bcistern", low) else None
    if match is None:
        return None
    many = next((match[key] for key in ("n", "n3", "n4", "n5", "n6") if match[key]), "")
    first = next((match[key] for key in ("a", "a3", "a4", "a5", "a6") if match[key]), "")
    return {"n": many, "a": first, "start": str(match.start()), "end": str(match.end())}


def _spelt(time: dict[str, str], found: list[Piece]) -> list[Piece]:
    """The pieces of a dry spell, but those that were told already."""
    told, span = {one.path for one in found}, (int(time["start"]), int(time["end"]))
    more = {"rain.dry_count": value(time["n"])[0]}
    if time["a"]:
        more["rain.dry_from"] = _MONTHS.index(time["a"][:3]) + 1.0
    return [Piece(path, *span, one, one) for path, one in more.items() if path not in told]


def months(clean: str, low: str) -> list[Piece]:
    """Months without rain, and the month that needs most water."""
    found: list[Piece] = []
    several = _DRY_LIST.search(clean)
    for pattern in _DRY:
        match = None if several and "," in several.group() else pattern.search(clean)
        if match and re.search(r"\brain|\broof", clean):
            first, last = (_MONTHS.index(match[one][:3]) for one in ("a", "b"))
            many = float((last - first) % 12 + 1)
            span = match.span()
            found.append(Piece("rain.dry_from", *span, first + 1.0, first + 1.0))
            if not re.search(r"\bdry months\b", clean):
                found.append(Piece("rain.dry_count", *span, many, many))
            break
    found += [] if found else _begins(clean)
    time = _DRY_TIME.search(low) or _DRY_ALL.search(low) or _dry_spell(low)
    if isinstance(time, dict):
        found += _spelt(time, found)
    elif time and not any(one.path == "rain.dry_count" for one in found):
        many, span = value(time["n"] or time["n2"])[0], time.span()
        found.append(Piece("rain.dry_count", *span, many, many))
        first_month = time["a"] or time["a2"]
        if first_month and not any(one.path == "rain.dry_from" for one in found):
            begins = _MONTHS.index(first_month[:3]) + 1.0
            found.append(Piece("rain.dry_from", *span, begins, begins))
    for pattern in _MOST:
        match = pattern.search(clean)
        if match and re.search(r"\bdrip|\bemitters?\b", clean):
            found.append(Piece("drip.month", *match.span("a"), word=match["a"][:3]))
            break
    return found
