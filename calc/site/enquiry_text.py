"""The text of an enquiry: HTML taken off, signs made plain at the same places, sentences."""

from __future__ import annotations

import html
import re
from functools import lru_cache
from html.parser import HTMLParser

from calc.site.enquiry_talk import labelled

MOST = 30_000  # characters that are read of a letter; our choice
MOST_RAW = 400_000  # characters of HTML that are looked through; our choice
_MARKUP = re.compile(
    r"<(?:!doctype|html|body|head|div|p|br|table|span|td|li|ul|ol|blockquote|b|i|s|del|strike|strong|em|font)"
    r"\b[^<>]{0,500}>", re.I
)  # fmt: skip
_BLOCKS = frozenset(
    [
        "p",
        "div",
        "br",
        "tr",
        "li",
        "ul",
        "ol",
        "table",
        "h1",
        "h2",
        "h3",
        "h4",
        "blockquote",
        "hr",
        "pre",
    ]
)
_SILENT = frozenset(["style", "script", "head", "title"])
_STRUCK = frozenset(["s", "del", "strike"])
_PLAIN = {
    "\u00a0": " ", "\u202f": " ", "\u2009": " ", "\u2007": " ", "\t": " ", "\r": "\n",
    "\u2019": "'", "\u2018": "'", "\u2032": "'", "\u00b4": "'", "`": "'", "\u201c": '"',
    "\u201d": '"', "\u2033": '"', "\u2013": "-", "\u2014": "-", "\u2212": "-", "\u2011": "-",
    "×": "x", "²": "2", "³": "3", "⁄": "/", "º": "°", "\u200b": " ", "\ufeff": " ",
}  # fmt: skip
_TABLE = {ord(sign): plain for sign, plain in _PLAIN.items()}
_SHORT = re.compile(
    r"(?:\b(?:approx|ca|sch|sched|no|ft|in|gal|gals|dia|elev|max|min|hrs|hr|vs|e\.g|i\.e|abt|est"
    r"|mr|mrs|ms|st|mt|dr|lt|ltr|mtr|mtrs|sq|cu|temp|press|vert|horiz|ave)|\b[a-z])\.$"
)
_LEADERS = re.compile(
    r"\.{4,}|_{3,}|(?<= )\.{3}(?= )|(?<=\w) ?\|(?= )|(?<=[a-z]) {3,}(?=\S)"
)  # between a label and its value
_ANSWERED = re.compile(  # "Distance? 340 m": a label, and what it is
    r"((?:^|[.?!\n] ?)(?!is\b|are\b|was\b|will\b|would\b|can\b|could\b|do\b|does\b|did\b|how\b(?! many)|what\b|why\b|should\b|which\b|or\b|and\b|have\b|has\b|if\b|who\b|any\b|enough\b|maybe\b|perhaps\b|need\b)"
    r"[a-z][a-z' /]{2,28})\?(?= (?:about |around |roughly |maybe |ca\.? |some )?(?:\d|(?:one|two|three|four|five|six|seven|eight|nine|ten|none|yes|no)\b))"
)
_END = re.compile(r"[.!?]+[\"')\]]*(?=\s|$)|\n[ \n]*\n|[\n;]")
_LIST = re.compile(r"\s*(?:[-*•·]|\d{1,2}[.)]\s|\(?[a-h]\)|[\w /]{2,30}[:=])")
_WRAPPED = 50  # characters from which on a line is one that was broken, and goes on; our choice


class _Stripper(HTMLParser):
    """HTML as plain lines; what stands in a blockquote gets the sign of quoted mail."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.parts: list[str] = []
        self.silent = 0
        self.quoted = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.silent += tag in _SILENT
        self.quoted += tag == "blockquote"
        if tag in _STRUCK:
            self.parts.append("~~")
        if tag in _BLOCKS:
            self.parts.append("\n" + "> " * bool(self.quoted))
        elif tag in {"td", "th"}:
            self.parts.append("  ")

    def handle_endtag(self, tag: str) -> None:
        self.silent = max(0, self.silent - (tag in _SILENT))
        self.quoted = max(0, self.quoted - (tag == "blockquote"))
        if tag in _STRUCK:
            self.parts.append("~~")
        if tag in _BLOCKS and tag != "br":
            self.parts.append("\n")

    def handle_data(self, data: str) -> None:
        if not self.silent:
            self.parts.append(re.sub(r"\s+", " ", data))


def plain(raw: str) -> str:
    """The text of a mail: tags off, entities as their signs.  Raises nothing.

    >>> plain("<p>The well is 40&nbsp;ft &amp; wet<br>ok</p>").split()
    ['The', 'well', 'is', '40', 'ft', '&', 'wet', 'ok']
    """
    raw = raw.replace("\r\n", "\n").replace("\x00", " ")[:MOST_RAW]
    if not _MARKUP.search(raw):
        return html.unescape(raw) if "&" in raw else raw
    stripper = _Stripper()
    try:
        stripper.feed(raw)
        stripper.close()
    except (AssertionError, ValueError):  # markup that the library gives up on
        return html.unescape(re.sub(r"<[^<>]{0,500}>", " ", raw))
    text = "".join(stripper.parts)
    return re.sub(r" *\n[ \n]*\n", "\n\n", text).strip()


def folded(text: str) -> str:
    """The text in small letters and plain signs, every sign at its own place.

    >>> folded("5’6” × 2")
    '5\\'6" x 2'
    """
    small = "".join(low if len(low := sign.lower()) == 1 else sign for sign in text)
    small = small.translate(_TABLE)
    small = _LEADERS.sub(lambda dots: ":".ljust(len(dots.group())), small)
    return labelled(_ANSWERED.sub(r"\1:", small))


def sentences(low: str, text: str) -> tuple[tuple[int, int], ...]:
    """(start, end) of the sentences of a folded text, line by line where lines are short.

    text: as it was written, whose capitals tell where a sentence begins after "ft."
    """
    found, start = [], 0
    for end in _END.finditer(low):
        if not _ends(low, text, start, end):
            continue
        if low[start : end.end()].strip():
            found.append((start, end.end()))
        start = end.end()
    if low[start:].strip():
        found.append((start, len(low)))
    return tuple(found)


_UNIT = re.compile(r"\d ?[wvlhm]\.$")
_COUNTS = re.compile(
    r" (?:\d+|one|two|three|four|five|six|seven|eight|ten) (?:of us|people|persons|adults?|kids|showers?|sinks?|toilets?|taps?|cows|goats|sheep|hens|horses|panels|guests|beds)\b"
)
_MATERIAL = re.compile(r" ?(?:PEX|C?PVC|[HLM]?D?PE|SDR|ID|OD|GI|ABS)\b")


def _ends(low: str, text: str, start: int, end: re.Match[str]) -> bool:
    sign = end.group()
    if sign[0] == ".":
        after = text[end.end() : end.end() + 3].strip(" \n\"'(")[:1]
        short = _SHORT.search(low[max(start, end.start() - 8) : end.start() + 1])
        if _COUNTS.match(low, end.end()) and _UNIT.search(
            low, max(start, end.start() - 6), end.start() + 1
        ):
            return True  # "say 6 x 410 W. 3 of us"
        goes_on = after and (not after.isupper() or _MATERIAL.match(text, end.end()))
        return not (short and goes_on)
    if sign == "\n":
        line = low.rfind("\n", 0, end.start()) + 1
        return end.start() - line < _WRAPPED or bool(_LIST.match(low, end.end()))
    return True


@lru_cache(maxsize=64)
def words(*some: str) -> re.Pattern[str]:
    """A pattern of whole words or phrases."""
    return re.compile(r"\b(?:" + "|".join(some) + r")\b")
