"""Numbers with units in an enquiry, as people write and speak them."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Token
from calc.site.enquiry_units import UNITS

_ONES = {w: i for i, w in enumerate(
    ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"])}  # fmt: skip
_TENS = {w: 10 * i for i, w in enumerate(
    ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], 2)} | {"fourty": 40}  # fmt: skip
_SMALL = {"half": 0.5, "quarter": 0.25, "quarters": 0.25, "third": 1 / 3, "eighth": 0.125,
          "eighths": 0.125}  # fmt: skip
_GLYPHS = {"¼": 0.25, "½": 0.5, "¾": 0.75, "⅛": 0.125, "⅜": 0.375, "⅝": 0.625, "⅞": 0.875}
_TENWORD = "|".join(_TENS)
_ONEWORD = "|".join(sorted(_ONES, key=len, reverse=True))
CARDINAL = (
    rf"(?:(?:{_TENWORD})(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?|{_ONEWORD})"
)
_WORDS = (
    rf"(?:{CARDINAL} point (?:oh |zero )?(?:{CARDINAL}|oh)(?: (?:one|two|three|four|five|six|seven|eight|nine))?"
    rf"|(?:a|{CARDINAL})[ -]+(?:hundred|thousand)(?:[ -]+(?:and[ -]+)?{CARDINAL}(?:[ -]+hundred)?)?"
    rf"|a couple(?: of)? (?:hundred|thousand|dozen)|couple(?: of)? (?:hundred|thousand|dozen)"
    rf"|(?:{CARDINAL}|a|half a) dozen|{CARDINAL}[ -]and[ -](?:a[ -]half|one half|three quarters|a[ -]quarter)"
    rf"|(?:three[ -]quarters?|five[ -]eighths?)(?: of an?)?|(?:a )?half(?: an?| of an)?(?![a-z])"
    rf"|(?:a )?quarter(?: of an?(?![a-z]))?|(?:a|one) third of an?|one[ -](?:half|quarter)|a couple(?: of)?|{CARDINAL}|hundred[ -]+and[ -]+{CARDINAL}|hundred)"
)
_FIGURES = (
    r"(?:\d{1,3}(?:\.\d)? (?:hundred|thousand)\b|\d+[ -]\d{1,2}/\d{1,2}(?!\d|/)|\d{1,2}/(?:2|4|8|16)(?!\d|/)|\d* ?[¼½¾⅛⅜⅝⅞]"
    r"|\d{1,2}'\d{3}(?![\d'\"])|\d{1,3}(?:,\d{3})+(?:\.\d+)?(?!\d)|\d{1,3}(?:\.\d{3}){2,}(?!\d)|\d{1,3}(?: \d{3})+(?![\d/.,]\d|\d)"
    r"|\d+[.,]\d+|\d+(?: and a (?:half|quarter)| and three quarters)?|\.\d+)"
)
NUMBER = rf"(?:(?<![\w.,/¤-])(?<!(?<![mo])\d )-?{_FIGURES}k?|(?<![\w-])(?:{_WORDS}))"
# of people and things, where neither parts nor hundreds in words are meant: a fifth as long
FEW = rf"(?:(?<![\w.,/¤-])\d{{1,5}}(?![\d.,/]\d)|(?<![\w-])(?:(?:{CARDINAL}|a|half a) dozen|a couple(?: of)?|{CARDINAL}))"
_ONE = re.compile(rf"(?P<n>{NUMBER})")
_SECOND = re.compile(rf"(?P<n>{_FIGURES}k?|(?:{_WORDS}))")
_INCH_OF = re.compile(
    r"(?:(?<![\w-] )|(?<![\d/] of )(?<=\bof )|(?<=\bthe )|(?<=\bin ))(?<![\w-])inch(?= (?:black |blue )?(?:poly|pvc|pe\b|hdpe|mdpe|pex|copper|pipe|line|hose|galv))"
)
_INCH_AND = re.compile(
    r"(?<![\w-])(?:an? |one |1 )?inch and (?:a )?(quarter|half|three quarters)(?: inch)?\b"
)
_AND_HALF = re.compile(
    r"(?<![\w-])(?:an?|one) (?P<u>mile|kilomet(?:re|er)|acre|hectare|hour(?= (?:a|per|each|every) day\b| daily\b))(?: and an? (?P<h>half|quarter))?\b(?! an? (?:hour|minute))"
)
_WHOLE_UNITS = {
    "m": ("length", "mi"),
    "k": ("length", "km"),
    "a": ("area", "acre"),
    "h": ("area", "ha"),
    "hr": ("time", "h"),
}
_GRADES = {80.0, 100.0, 4710.0}  # of polyethylene, as in "PE 100"
_NAMED = re.compile(r"(?:\bsch(?:ed(?:ule)?)?\.?|\bs?i?dr|\bpn|\bclass|\bgrade|\bphase)[ -]?$")
_JOIN = re.compile(r"\s*(?:-+|to|thru|or|and|up to|/)\s*(?:about |maybe |around |roughly )?")
_FEET_INCHES = re.compile(
    rf"(?<![\w.,/])(\d+|{CARDINAL})\s*(?:'|ft|feet|foot)\s*(?:and\s+)?(\d{{1,2}}(?:[ -]\d/\d{{1,2}}|\.\d+|(?: ?[¼½¾]))?|{CARDINAL})"
    r"\s*(?:\"|''|in\b\.?|inch(?:es)?\b)"
)
_ABOUT = re.compile(
    r"(?:about|abt|approx(?:\.|imately)?|around|roughly|circa|ca\.?|c\.|some|say|maybe|nearly|almost"
    r"|just (?:under|over)|at least|up to|~|≈|like|close to|a good|or so|somewhere)\s*$"
)
_PAIR = re.compile(
    r"(?<![\w./,¤-])(\d{1,3}(?:[.,]\d(?!\d))?)\s?(?:/|-|–|to)\s?(\d{1,3}(?:[.,]\d(?!\d))?)(?!\d|/|[.,]\d|\s?(?:mm|in\b|\"|'))\s*-?"
    r"(psi|bars?|kpa|lbs?)?\b"
)


def value(text: str, decimal_comma: bool = False) -> tuple[float, tuple[float, ...]]:
    """(the number, what else it may be) of a number as written.

    >>> value("1,500"), value("1 1/4"), value("a couple of hundred"), value("12,5")
    ((1500.0, ()), (1.25, ()), (200.0, ()), (12.5, ()))
    """
    text = text.strip()
    sign = -1.0 if text.startswith("-") else 1.0
    text = text.lstrip("-").strip()
    if text[:1].isalpha():
        return _spoken(text), ()
    times = 1000.0 if text.endswith(("k", "thousand")) else 100.0 if "hundred" in text else 1.0
    number, maybe = _written(re.sub(r"k$| (?:hundred|thousand)$", "", text), decimal_comma)
    return sign * number * times, tuple(sign * other * times for other in maybe)


def _written(text: str, decimal_comma: bool) -> tuple[float, tuple[float, ...]]:
    part = {"half": 0.5, "quarter": 0.25, "quarters": 0.75}.get(text.rsplit(" ", 1)[-1], 0.0)
    if part:
        return float(text.split(" ", 1)[0]) + part, ()
    for glyph, share in _GLYPHS.items():
        if glyph in text:
            whole = text.replace(glyph, "").strip()
            return float(whole or 0) + share, ()
    mixed = re.fullmatch(r"(?:(\d+)[ -])?(\d+)/(\d+)", text)
    if mixed:
        bottom = float(mixed[3]) or 1.0
        return float(mixed[1] or 0) + float(mixed[2]) / bottom, ()
    text = text.replace(" ", "").replace("'", "")
    if re.fullmatch(r"\d{1,3}(?:,\d{3})+(?:\.\d+)?", text):
        plain = float(text.replace(",", ""))
        if text.startswith("0,"):
            return float(text.replace(",", ".")), ()
        return plain, ()
    if re.fullmatch(r"\d{1,3}(?:\.\d{3}){2,}", text):
        return float(text.replace(".", "")), ()
    if re.fullmatch(r"[1-9]\d{0,2}\.\d{3}", text):
        thousands = float(text.replace(".", ""))
        return (thousands, ()) if decimal_comma else (float(text), (thousands,))
    return float(text.replace(",", ".")), ()


def _spoken(text: str) -> float:
    text = text.replace("-", " ")
    if " point " in text:  # "two point three", "one point oh five"
        whole, part = text.split(" point ", 1)
        digits = "".join(f"{_spoken(one):g}" for one in part.replace("oh", "zero").split())
        return float(f"{_spoken(whole):g}.{digits}")
    if "couple" in text:
        factor = 100.0 if "hundred" in text else 1000.0 if "thousand" in text else 1.0
        return 2 * factor * (12 if "dozen" in text else 1)
    total, current, seen = 0.0, 0.0, False
    for word in text.split():
        if word in _ONES or word in _TENS:
            current += _ONES.get(word, 0) + _TENS.get(word, 0)
            seen = True
        elif word in {"hundred", "thousand", "dozen"}:
            factor = {"hundred": 100.0, "thousand": 1000.0, "dozen": 12.0}[word]
            current = (current or 1.0) * factor
            if word == "thousand":
                total, current = total + current, 0.0
            seen = True
        elif word in _SMALL:
            share = _SMALL[word]
            joined = " and " in text
            fraction = current * share if seen and current and not joined else share
            if "and three quarters" in text:
                return total + (current - 3 + 0.75)
            current = current + share if joined and seen else fraction
    return total + current


def unit_after(low: str, at: int) -> tuple[str, str, int] | None:
    """(kind, unit, end) of the unit that stands at ``at``, after a space or a hyphen."""
    gap = re.compile(
        r"(?: or so|[ -]odd| plus|-?ish|\+)?(?: ?- ?| {0,2}\n? ?)(?=[a-z\"'°%(])"
    ).match(low, at)
    begin = gap.end() if gap else at
    for kind, unit, pattern in UNITS:
        found = pattern.match(low, begin)
        if found:
            return kind, unit, found.end()
    return None


class _Ahead:
    """Where a pattern is found next, looked for once and not again from every number on."""

    def __init__(self, pattern: re.Pattern[str], low: str) -> None:
        self.pattern, self.low = pattern, low
        self.found: re.Match[str] | None = pattern.search(low)

    def next(self, at: int) -> re.Match[str] | None:
        if self.found is not None and self.found.start() < at:
            self.found = self.pattern.search(self.low, at)
        return self.found


def tokens(low: str) -> list[Token]:
    """Numbers with units, ranges and bare numbers of a folded text, in their order."""
    comma = bool(re.search(r"\d,\d{1,2}(?!\d)", low))
    found: list[Token] = []
    at = 0
    ahead = [
        _Ahead(pattern, low) for pattern in (_FEET_INCHES, _INCH_AND, _ONE, _INCH_OF, _AND_HALF)
    ]
    while True:
        feet, spoken, one, alone, whole = (each.next(at) for each in ahead)
        if spoken and (one is None or spoken.start() <= one.start()):
            size = 1 + {"quarter": 0.25, "half": 0.5}.get(spoken[1], 0.75)
            found.append(Token("length", size, size, "in", spoken.start(), spoken.end()))
            at = spoken.end()
            continue
        if alone and (one is None or alone.start() < one.start()):
            found.append(Token("length", 1.0, 1.0, "in", alone.start(), alone.end()))
            at = alone.end()
            continue
        if whole and (one is None or whole.start() <= one.start()):
            kind, unit = _WHOLE_UNITS["hr" if whole["u"] == "hour" else whole["u"][0]]
            size = 1 + {"half": 0.5, "quarter": 0.25}.get(whole["h"] or "", 0.0)
            found.append(Token(kind, size, size, unit, whole.start(), whole.end()))
            at = whole.end()
            continue
        if one is None:
            return found
        if feet and feet.start() <= one.start() and _feet_and_inches(low, feet):
            number = value(feet[1])[0] + value(feet[2])[0] / 12
            found.append(Token("length", number, number, "ft", feet.start(), feet.end()))
            at = feet.end()
            continue
        token = _token(low, one, comma)
        if token is not None:
            _tail(low, token)
            found.append(token)
        at = token.end if token else one.end()


_PIPEWORDS = re.compile(
    r"[ -]*(?:black|sch|poly|pvc|pipe|line|pex|hdpe|mdpe|pe\b|copper|hose|galv|id|od|dia|tub)"
)


def _feet_and_inches(low: str, feet: re.Match[str]) -> bool:
    """Whether "5 ft 6 in" is one height, and no length of a pipe of some inches."""
    return (
        value(feet[2])[0] < 12 and value(feet[1])[0] < 30 and not _PIPEWORDS.match(low, feet.end())
    )


_METRES_AND = re.compile(  # "seven metres and forty to the mud"
    rf" (?:and )?({CARDINAL})(?= (?:across|wide|deep|down|to the|above|below|higher|lower|long)\b| ?[.,;\n])"
)
_TAIL = re.compile(
    rf" ?(\d{{1,2}}|{_ONEWORD})(?= (?:above|below|higher|lower|up|down|tall|deep|over|under|from|to the)\b| ?[.,;\n])"
)
_IMPERIAL = 4.54609  # L in one imperial gallon, by its definition


def _tail(low: str, token: Token) -> None:
    """ "six foot four above", "2 meters 40": the inches or centimetres behind; imperial gallons as
    litres."""
    if token.unit.startswith("imp gp"):
        token.unit = "L/min" if token.unit == "imp gpm" else "L/h"
        token.low, token.high = token.low * _IMPERIAL, token.high * _IMPERIAL
    if token.unit == "qt gpm":
        token.unit, token.low, token.high = "gpm", token.low / 4, token.high / 4
    if token.unit in {"gph", "gpm"} and re.compile(r"[ ,]*\(?imperial\b").match(low, token.end):
        token.unit = "L/min" if token.unit == "gpm" else "L/h"
        token.low, token.high = token.low * _IMPERIAL, token.high * _IMPERIAL
    if token.unit not in {"ft", "m"} or token.low != token.high or not 1 <= token.low <= 12:
        return
    spoken = token.unit == "m" and low[token.end - 1] == "s"
    tail = (_METRES_AND.match(low, token.end) if spoken else None) or _TAIL.match(low, token.end)
    if tail is None or token.low != int(token.low) or low[token.end - 1] == "'":
        return
    more = value(tail[1])[0]
    if token.unit == "m" and not (more >= 10 and (spoken or tail[1].isdigit())):
        return
    if token.unit == "ft" and more > 11:
        return
    token.low = token.high = token.low + more / (12 if token.unit == "ft" else 100)
    token.end = tail.end()


def _token(low: str, one: re.Match[str], comma: bool) -> Token | None:
    if _NAMED.search(low, max(0, one.start() - 12), one.start()):
        return None
    first, maybe = value(one["n"], comma)
    if first in _GRADES and low[max(0, one.start() - 3) : one.start()].strip(" -") == "pe":
        return None
    unit = unit_after(low, one.end())
    about = bool(_ABOUT.search(low, max(0, one.start() - 20), one.start()))
    ranged = _range(low, one, unit, comma)
    if ranged is not None:
        high, kind, symbol, end = ranged
        if first > high > 0 and not one["n"][0].isalpha():
            ranged = None
        else:
            first = _large(first, high, low[one.end() : end])
            return Token(kind, first, high, symbol, one.start(), end, about)
    if unit is None:
        return Token("bare", first, first, "", one.start(), one.end(), about, maybe)
    kind, symbol, end = unit
    more = re.compile(r" and (?:a (half|quarter)|(three quarters))\b").match(low, end)
    if more and kind in {"length", "area"}:
        first += {"half": 0.5, "quarter": 0.25}.get(more[1] or "", 0.75)
        end = more.end()
    if maybe and (kind in {"volume", "power", "daily", "area"} or symbol in {"ft", "L"}):
        first, maybe = maybe[0], ()
    elif maybe and kind not in {"length", "flow"}:
        maybe = ()
    if re.compile(r" or so\b").match(low, end):
        about = True
    return Token(kind, first, first, symbol, one.start(), end, about, maybe)


_TWO_ENDS = re.compile(
    r"between|switch(?:'s)?(?: (?:is|set|works|that|adjusted))* (?:to|at|of|with) $"
)


def _range(low: str, one: re.Match[str], unit: tuple[str, str, int] | None,
           comma: bool) -> tuple[float, str, str, int] | None:  # fmt: skip
    """(high, kind, unit, end) where the number begins a range."""
    begin = unit[2] if unit else one.end()
    join = _JOIN.match(low, begin)
    if join is None:
        return None
    sign = join.group().strip().split(" ")[0]
    if sign == "/" or (
        sign == "and" and not _TWO_ENDS.search(low[max(0, one.start() - 25) : one.start()])
    ):
        return None
    second = _SECOND.match(low, join.end())
    if second is None or second["n"].startswith(("-", "a ")):
        return None
    after = unit_after(low, second.end())
    if after is None or (unit and unit[0] != after[0]):
        return None
    if unit and unit[1] != after[1]:
        return None
    return value(second["n"], comma)[0], after[0], after[1], after[2]


_LARGE = re.compile(r"\b(hundred|thousand)\b")


def _large(first: float, high: float, said: str) -> float:
    """ "three and four hundred feet" begins at three hundred."""
    large = _LARGE.search(said)
    factor = {"hundred": 100.0, "thousand": 1000.0}[large[1]] if large else 1.0
    return first * factor if first < 10 and factor <= high < 10 * factor else first


_SPOKEN_PAIR = re.compile(
    r"\bswitch\b[^.;\n\d]{0,25}?\b(?P<a>twenty|thirty|forty|fifty)[ -](?:to[ -])?(?P<b>forty|fifty|sixty|seventy)\b(?! ?(?:feet|foot|gallon))|\bswitch(?:es)?(?: is| at| set(?: at| to)?|:)? (?P<e>[1-6]\d) (?P<f>[2-8]\d)\b(?! ?(?:\d|ft|feet|foot|m\b|gal|lit|people|/))|\bpressure(?:'s| is| runs| goes| from| set)*(?: at| about)? (?P<k>twenty|thirty|forty|fifty)(?:-| to )(?P<l>forty|fifty|sixty|seventy)\b(?! ?(?:feet|foot|gallon))|\bbetween (?P<g>[1-6]\d) and (?P<h>[2-8]\d)(?= on the (?:gauge|dial)\b)|\b(?:on|at|is|switch) (?P<i>20|30|40|50) (?P<j>40|50|60|70)\b(?! ?(?:\d|ft|feet|foot|m\b|gal|lit|people|/|mm|psi at))|\b(?P<c>twenty|thirty|forty|fifty)[ -](?:to[ -])?(?P<d>forty|fifty|sixty|seventy) (?:pressure )?switch\b"
)


def pairs(low: str) -> list[Token]:
    """Pairs of pressures such as 30/50, wherever they stand; whoever asks looks at what is said."""
    found = []
    for said in _SPOKEN_PAIR.finditer(low):
        one, other = next(two for two in ("ab", "cd", "ef", "gh", "ij", "kl") if said[two[0]])
        ends = [value(said[each])[0] for each in (one, other)]
        if ends[0] < ends[1]:
            pair = Token("pair", ends[0], ends[1], "psi", said.start(one), said.end(other))
            pair.extra["spoken"] = 1.0
            found.append(pair)
    for match in _PAIR.finditer(low):
        first, second = (float(match[one].replace(",", ".")) for one in (1, 2))
        if first < second:
            unit = {"bar": "bar", "bars": "bar", "kpa": "kPa"}.get(match[3] or "psi", "psi")
            small = second <= 10 and not match[3]
            found.append(Token("pair", first, second, "bar" if small else unit, match.start(),
                               match.end()))  # fmt: skip
    return found
