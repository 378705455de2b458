"""Our links in a pasted mail, found and put right: what mail programs do to an address is undone.

A mail is read as it is quoted, wrapped, encoded or led through another site's address; whether a
link came through whole is told by its check characters (``calc.site.fragment``), so that nothing
is guessed in silence.
"""

from __future__ import annotations

import base64
import binascii
import quopri
import re
from dataclasses import dataclass
from email import policy
from email.parser import BytesParser
from html import unescape
from itertools import islice, takewhile
from typing import TYPE_CHECKING
from urllib.parse import unquote

from calc.site import fragment as spelled
from calc.site.link import VERSION

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

LARGEST = 1_000_000  # characters of a pasted mail that are read; our choice
DEEPEST = 3  # addresses inside one another that are opened; our choice
MOST = 20  # links told; our choice
STARTS = 200  # places looked at where a link may begin; our choice
LINES = 800  # lines that a wrapped link may go on for; our choice
_SEEN = re.compile("[\u200b-\u200f\u202a-\u202e\u2060\ufeff\u00ad]")  # shows nothing, splits words
_QUOTES = re.compile(r"^[ \t]*(?:[>|][ \t]?)+", re.MULTILINE)
_HREF = re.compile(r"""\bhref\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s>]+))""", re.IGNORECASE)
_TAG = re.compile(r"<(?:br|/p|/div|/li|/tr|/h\d)[^>]*>|<(?![^>]*@)[a-z/!][^>]*>", re.IGNORECASE)
_START = re.compile(r"(?:\#|%(?:25)*23)v(?:=|%(?:25)*3D)\d", re.IGNORECASE)
_END = re.compile(r"&c=[0-9a-z]{5}", re.IGNORECASE)
_AMP = re.compile(r"&(?:(?:amp|#38|#x26);)+", re.IGNORECASE)  # escaped once or more often
_HEADER = re.compile(r"^(?:[A-Za-z][A-Za-z-]*: .*\r?\n(?:[ \t].*\r?\n)*)+\r?\n", re.MULTILINE)
_SOFT = re.compile(r"=[ \t]*\r?\n")
_BASE64 = re.compile(r"(?:^[A-Za-z0-9+/]{60,76}\r?\n)+^[A-Za-z0-9+/]+={0,2}[ \t]*$", re.MULTILINE)
_PAGE = re.compile(r"([a-z][a-z0-9-]*)(?:/|\.html)(?:index\.html)?$", re.IGNORECASE)
CUT = "This link is cut off or damaged: its check characters do not fit. Ask for it again."
NONE = "No Springline link was found in this text."


@dataclass(frozen=True)
class Found:
    """A link of a text. fragment: what is after "#", spelled once, "" where it could not be put
    right; page: last word of its address ("keep-up"), "" where unknown; said: what is wrong with
    it, "" for nothing; shown: as it stood, shortened."""

    fragment: str
    page: str
    said: str
    shown: str

    @property
    def whole(self) -> bool:
        return not self.said


def find(text: str) -> tuple[Found, ...]:
    """Every link of ours in a text, each once, those that came through whole first.

    text: a link, a sentence with one, or a whole mail as its source or as it is read.
    Raises nothing.  Source: RFC 2045 (transfer encodings), RFC 3676 (flowed and quoted text),
    RFC 3986 (percent-encoding); the rest is what mail programs are seen to do, our choice.
    """
    whole: dict[str, Found] = {}
    best: tuple[int, int] = (-1, 0)
    broken: list[Found] = []
    for body in _bodies(text[:LARGEST]):
        found = list(islice(_in_text(body), STARTS))
        good = {one.fragment: one for one in found if one.whole}
        bad = list({one.shown: one for one in found if not one.whole}.values())
        if (len(good), -len(bad)) > best:  # the reading that understands most says what is lost
            best, broken = (len(good), -len(bad)), bad
        whole = {**good, **whole}
    return tuple([*whole.values(), *broken][:MOST])


# The text of a mail ---------------------------------------------------------------------------


def _bodies(text: str) -> Iterator[str]:
    """The texts to look in, the likeliest first: the mail's parts, the text as it stands."""
    parts = _parts(text)
    yield from parts
    yield from _as_read(text)
    if _SOFT.search(text) or "=3D" in text.upper():
        yield from _as_read(_quoted_printable(text))
    for block in _BASE64.findall(_QUOTES.sub("", text)):
        yield from _as_read(_from_base64(block))
    # a break may stand in the sign that a link begins with
    yield "".join(line.strip() for line in _QUOTES.sub("", _SEEN.sub("", text)).splitlines())


def _parts(text: str) -> list[str]:
    """Texts of the parts of a mail's source; none where it is none."""
    if not _HEADER.match(text.lstrip()):
        return []
    raw = text.lstrip().encode("utf-8", "surrogateescape")
    message = BytesParser(policy=policy.default).parsebytes(raw)
    found: list[str] = []
    for part in message.walk():
        if part.get_content_maintype() != "text":
            continue
        try:
            body = part.get_content()
        except (LookupError, ValueError, UnicodeError):
            continue  # an encoding that is not known: the text as it stands is looked at too
        found += _as_read(body)
    return found


def _as_read(text: str) -> list[str]:
    """A text, and where it is HTML the addresses in it and its words."""
    plain = _SEEN.sub("", text)
    if not re.search(r"<a\b|<html\b|<br\b|<p\b|</", plain, re.IGNORECASE):
        return [plain]
    hrefs = [unescape("".join(one)) for one in _HREF.findall(plain)]
    return ["\n\n".join(hrefs), unescape(_TAG.sub(_broken, plain)), plain]


def _broken(tag: re.Match[str]) -> str:
    """Only what ends a line does so: a tag inside a word splits no link."""
    return "\n\n" if re.match(r"<(?:br|/)", tag[0], re.IGNORECASE) else ""


def _quoted_printable(text: str) -> str:
    raw = quopri.decodestring(_QUOTES.sub("", text).encode("utf-8", "surrogateescape"))
    return raw.decode("utf-8", "replace")


def _from_base64(block: str) -> str:
    try:
        return base64.b64decode("".join(block.split())).decode("utf-8", "replace")
    except (binascii.Error, ValueError):
        return ""


# Links ----------------------------------------------------------------------------------------


def _in_text(text: str) -> Iterator[Found]:
    """Links of a text, as lines that go on where a link was wrapped."""
    lines = _QUOTES.sub("", text).splitlines()
    for at, line in enumerate(lines):
        for start in _START.finditer(line):
            yield _link(line, start.start(), lines[at + 1 : at + 1 + LINES])


def _link(line: str, at: int, following: list[str]) -> Found:
    """The link whose "#" is at ``at``: as far over the lines as its check characters fit."""
    begins = max(line.rfind(sign, 0, at) for sign in " \t<>\"'([")
    address, shown = line[begins + 1 : at], spelled.shown(line[begins + 1 :])
    rest = list(_near(following))
    near = list(takewhile(str.strip, rest))
    spaced = [one for one in rest if one.strip()]
    for lines in ([], near, spaced):
        for glue in ("", "+", "_") if lines else ("",):
            found = _reading(_glued([line[at:], *lines], glue))
            if found:
                return Found(found, _page(address), "", shown)
    return Found("", _page(address), CUT, shown)


def _near(lines: list[str]) -> Iterator[str]:
    """The lines up to another link."""
    for line in lines:
        if _START.search(line):
            return
        yield line


def _glued(lines: list[str], glue: str) -> str:
    """Lines as one, with ``glue`` where a line ended in a space: a mail puts one there to say that
    the line goes on, or breaks at one that was in the text."""
    pieces = [lines[0].rstrip()]
    for before, line in zip(lines, lines[1:], strict=False):
        pieces.append((glue if before.endswith(" ") or line.startswith(" ") else "") + line.strip())
    return "".join(pieces)


def _reading(text: str) -> str:
    """The whole fragment that a text from its "#" on begins with, spelled as ours or more often;
    "" for none."""
    tried = _AMP.sub("&", text)
    for _ in range(DEEPEST + 1):
        found = _whole(tried)
        if found or "%" not in tried:
            return found
        tried = _AMP.sub("&", unquote(tried))
    return ""


def _whole(text: str) -> str:
    """The fragment that a text begins with, where its check characters fit; "" where not."""
    body = re.sub(r"^(?:#|%23)+", "", text)
    end = _END.search(body)  # the first: check characters stand once, at the end
    pairs, damaged = spelled.part(body[: end.end()]) if end else ([], [])
    return spelled.join(pairs) if pairs and not damaged and _fits(pairs) else ""


def _fits(pairs: list[tuple[str, str]]) -> bool:
    """As ``link.read`` asks it: the version first, and check characters of all before them."""
    key, text = pairs[-1]
    return (
        pairs[0][0].lower() == "v"
        and pairs[0][1].strip() == str(VERSION)
        and key.lower() == "c"
        and spelled.same_check(text, pairs[:-1])
    )


def _page(address: str) -> str:
    """The page's name in an address: "keep-up" of ".../keep-up/"; "" where there is none."""
    for _ in range(DEEPEST):
        address = unquote(address)
    named = _PAGE.search(address)
    return named[1].lower() if named else ""


def told(found: Iterable[Found]) -> list[str]:
    """What is said of links that were looked for: nothing of whole ones."""
    listed = list(found)
    if not listed:
        return [NONE]
    return [f"{one.said} It begins “{one.shown}”." for one in listed if one.said]
