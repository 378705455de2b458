"""Numbers left over that only one thing can be: the way's length, a yield."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Token
from calc.site.enquiry_tokens import Spans

_HIGH = re.compile(
    r"\b(?:above|below|high(?:er)?|deep(?:er)?|depth|up|uphill|down|level|tall|diameter|wide|head|lift|rises?|climb|altitude|elevation|suction|cable|bore|drilled|casing|panels?|under|over|lower|drop|fall|height|static|thick|tank|town|village|grid|mains|shop|store|fence|road|city|school|summit|cabin is|land)\b"
)

_RUNS = re.compile(
    r"\b(?:pipe|line|house|cabin|hose|garden|trough|run|from|to|away|between|field|barn|poly|pvc)\b"
)

_MEASURED = re.compile(r"\b(?:altimeter|map|static|difference|height|driller|measured)\b")
_SEASON = re.compile(  # of a level that was told before
    r"\bin (?:the )?(?:spring|summer|autumn|winter|fall)\b(?: it(?:'s| is)?| only| is)* (?:about )?$"
)
_FAR = 8.0  # m, below which a length nobody explains is none of a pipe line; our choice

_METRES = {"m": 1.0, "ft": 0.3048, "yd": 0.9144, "km": 1000.0, "mi": 1609.0}


_NO_YIELD = re.compile(
    r"\b(?:(?<!driller )rated|pump|hose|shower|tap|float|sprinklers?|drip|nozzle|sink|each|needs?|want|reach|kitchen|bathroom|tap|emitters?|filter|meter|house|demand|peak|push(?:es)?|lifts?|moves|delivers|sends)\b"
)


def left_over(
    clean: str, live: list[Token], sentences: Spans, told: set[str]
) -> list[tuple[Token, str]]:
    """(number, path) where one number is left and only one thing is not told yet."""
    found = []
    for path, fits in (("way.length", _runs), ("water.yield", _yields)):
        if path in told:
            continue
        ones = [one for one in live if not one.used and not one.why and fits(clean, one, sentences)]
        if len(ones) == 1:
            ones[0].used = True
            found.append((ones[0], path))
    return found


def _around(clean: str, token: Token, sentences: Spans) -> tuple[str, str]:
    """(words near a number, its sentence)."""
    start, end = next((one for one in sentences if one[0] <= token.start < one[1]), (0, len(clean)))
    near = clean[max(start, token.start - 30) : min(end, token.end + 25)]
    return near, clean[max(start, token.start - 200) : min(end, token.end + 200)]


def _clause(clean: str, token: Token) -> str:
    left = re.split(r"[,;.:]", clean[max(0, token.start - 60) : token.start])[-1]
    return left + " " + re.split(r"[,;.:]", clean[token.end : token.end + 40])[0]


def _runs(clean: str, token: Token, sentences: Spans) -> bool:
    if (
        token.kind != "length"
        or "other" in token.extra
        or token.low * _METRES.get(token.unit, 0) < _FAR
    ):
        return False
    near, said = _around(clean, token, sentences)
    if _SEASON.search(clean, max(0, token.start - 30), token.start):
        return False
    if _MEASURED.search(said) and not _RUNS.search(_clause(clean, token)):
        return False
    return not _HIGH.search(near) and bool(_RUNS.search(said))


def _yields(clean: str, token: Token, sentences: Spans) -> bool:
    if token.kind != "flow":
        return False
    _, said = _around(clean, token, sentences)
    before = clean[max(0, clean.find(said) - 130) : clean.find(said)]
    if re.match(r"\s*it\b", said) and re.search(r"\bpump\b", before):
        return False  # what the pump gives
    source = re.search(r"\b(?:spring|well|bore|creek|source)", clean)
    return bool(source) and not _NO_YIELD.search(said) and not said.rstrip().endswith("?")
