"""Questions and answers on one line: "Q: Elevation? A: 6,800 ft", "> any filter? - yes", "how many
people? -> 12"; and numbers that an answer gives without the unit that the letter uses."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece, Token
from calc.site.enquiry_numbers import NUMBER, value

Asked = list[tuple[int, int, str]]

_MARK = r"(?:>[> ]*+|q\d{0,2} ?[:.)] ?|\(?\d{1,2}[.)] ?|\(?[a-h]\) ?|[-*•] ?)"
_LEAD = r"(?:^|(?<=\n))(?P<lead>[ ]*+)"
_SIGN = r"(?:[-=]+>|→|-{1,2}(?= )|:|\ba ?[:.)]|\banswer ?:|=)"
_ARROW = re.compile(
    rf"{_LEAD}(?P<mark>{_MARK}{{0,3}}+)(?P<asked>[a-z][^\n?]{{2,80}})(?:\?|(?= *(?:[-=]+>|→)))(?P<sign>[ ]*{_SIGN}?[ ]*)(?=[^\s?])"
)
_LINE = re.compile(
    rf"{_LEAD}{_MARK}{{0,3}}+(?P<asked>(?:how|what|what's|where|any|which|is|are|do|does)\b[^\n?:]{{2,80}}(?=:)|[a-z][^\n?:]{{2,80}}(?=: {{3}})):(?P<answer>[^\n]+)"
)
_SUCTION = re.compile(r"\bsuction\b|\bintake\b")
_BENDS = re.compile(rf"(?<![\w¤-])({NUMBER}) (?:90[ °]*(?:deg\w*)? )?(?:elbows?|bends?)\b")
_LENGTH = re.compile(r"\b(?:how (?:far|deep|high|long)|where|depth|height|distance|length)\b")
_ONE_NUMBER = re.compile(r"[^\d]*(?:\d(?:[^,;.\n]|[,.](?=\d))*)?")
_COUNTS = re.compile(
    r"\bhow many (?!people|persons|of you|are you|live)|\bnumber of (?!people|persons)"
)
_STOPS = re.compile(r" ?(?:$|[,.;)\n]|down\b|deep\b|away\b|up\b|in\b|and\b)")


def labelled(low: str) -> str:
    """The text with a question that is answered on its own line made the label of its answer; every
    sign stays at its place."""

    def label(one: re.Match[str]) -> str:
        told = one["sign"].strip() or one["mark"].strip()
        if not told:
            return one.group()
        return f"{one['lead']}{one['mark']}{one['asked'].rstrip()}:".ljust(len(one.group()))

    return _ARROW.sub(label, low)


def dialogue(low: str) -> Asked:
    """(start, end of the answer, question) of every question that is answered on its own line."""
    return [
        (match.start("answer"), match.start("answer") + _first(match["answer"]), match["asked"])
        for match in _LINE.finditer(low)
        if not _COUNTS.search(match["asked"])  # "how many showers: 3" is a list's
    ]


def _first(answer: str) -> int:
    """Where what answers the question ends: what follows its first number tells of itself."""
    return _ONE_NUMBER.match(answer).end()  # type: ignore[union-attr]


def united(numbers: list[Token], asked: Asked, unit: str, low: str) -> None:
    """A number without a unit that answers how far or how deep has the letter's unit."""
    for token in numbers:
        if token.kind != "bare" or not unit or not _STOPS.match(low, token.end):
            continue
        question = next((each for start, end, each in asked if start <= token.start < end), "")
        if _LENGTH.search(question) and low[token.start].isdigit():
            token.kind, token.unit = "length", unit


def bends(low: str, asked: Asked) -> list[Piece]:
    """Bends that are counted under a question about the suction."""
    found = []
    for start, end, question in asked:
        match = _BENDS.search(low, start, end) if _SUCTION.search(question) else None
        if match:
            many = value(match[1])[0]
            found.append(Piece("suction.bends", *match.span(), many, many))
    return found
