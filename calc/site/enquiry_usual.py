"""What a number usually is that no rule has read: by words that in letters of ours went with it.

Each word near a number, its unit, its size and what else is told speak for or against each fact;
their weights are a multinomial logistic regression (Hastie, Tibshirani, Friedman, The Elements of
Statistical Learning, 2nd ed., section 4.4) on letters of our own, worked out by ``python -m
tests.enquiries.weights``. What it tells is marked as read by its words; what it doubts is offered.
"""

from __future__ import annotations

import math
import re
from collections import Counter
from dataclasses import replace
from functools import lru_cache

from calc.errors import InputError
from calc.site.enquiry_made import piece_of
from calc.site.enquiry_model import Found, Piece, Token
from calc.site.enquiry_slots import slot
from calc.site.enquiry_usual_table import CLASSES, WEIGHTS

TELL = 0.9  # likelihood from which an unread number is told; our choice
CHOOSE = 0.65  # the same, of one of the readings that rules left open; our choice
DOUBT, NAMED = 0.1, 0.6  # of two in contradiction: the one that is none, the other one; our choice
HARDLY = 0.02  # likelihood below which what a rule says of a number is only offered; our choice
LIGHT, BORNE = 4.5, 0.3  # weight below which a rule wants the words to bear it out; how likely
NEAR = 60  # letters between a number and what is told beside it; our choice
SLOPE = {"way.climb", "way.length"}  # "60 ft up the hill": only its writer knows
NONE = "none"
REASON = "no word says so outright: read by the words around it"
_KINDS = {"bare", "pair", "time"}  # only words can tell what these are
_METRES = {"m": 1.0, "ft": 0.3048, "yd": 0.9144, "km": 1000.0, "mi": 1609.0, "in": 0.0254,
           "mm": 0.001, "cm": 0.01}  # fmt: skip
_WORD = re.compile(r"[a-z]+(?:'[a-z]+)?|[.,;:?!()\n]|\d")
_FEW = {"a", "an", "the", "of", "and", "to", "is", "it", "i", "we", "our", "my", "that", "this", "in", "on",
        "at", "with", "for", "are", "be", "have", "has", "about", "around", "roughly", "some"}  # fmt: skip
_THINGS = ("well", "spring", "tank", "cistern", "pump", "creek", "roof", "drip")
_GROUPS = ("way", "tank", "store", "water", "well", "pump", "power", "beds")


def features(low: str, token: Token, pieces: list[Piece]) -> set[str]:
    """What speaks of a number.  low: the letter, folded; pieces: what rules have told of it."""
    kind, start, end = token.kind, int(token.start), token.end
    found = {f"k={kind}", f"u={kind}{token.unit}".replace(" ", "")}
    if token.low > 0:
        size = token.low * (_METRES.get(token.unit, 1.0) if kind == "length" else 1.0)
        found.add(f"m={kind}{round(2 * math.log10(max(size, 1e-6)))}")
    if token.low != token.high:
        found.add("range")
    left = _words(low[max(0, start - 160) : start])[-16:]
    right = _words(low[end : end + 110])[:10]
    _beside(found, kind, "L", left[::-1], (3, 7))
    _beside(found, kind, "R", right, (3, 6))
    _next_to(found, kind, left[::-1], right)
    before = re.split(r"[.;\n]", low[max(0, start - 200) : start])[-1]
    after = re.split(r"[.;\n]", low[end : end + 150])[0]
    found |= {f"{kind}S={word[:4]}" for word in _words(before) if len(word) > 4}
    found |= {f"{kind}E={word}" for word in _words(after) if word not in _FEW}
    _told(found, token, pieces)
    return found | {f"{kind}M={word}" for word in _THINGS if word in low}


def _next_to(found: set[str], kind: str, left: list[str], right: list[str]) -> None:
    """The words that touch it, each in its place and together."""
    found.add(f"{kind}b={'_'.join(left[1::-1])}")
    found.add(f"{kind}a={'_'.join(right[:2])}")
    found |= {f"{kind}l{at}={word}" for at, word in enumerate(left[:3])}
    found |= {f"{kind}r{at}={word}" for at, word in enumerate(right[:3])}
    if left and right:
        found.add(f"{kind}lr={left[0]}_{right[0]}")


def _told(found: set[str], token: Token, pieces: list[Piece]) -> None:
    """What rules have told elsewhere, and what of it stands next."""
    kind = token.kind
    paths = {one.path for one in others(pieces, token)}
    found |= {f"{kind}T={path}" for path in paths if path.split(".")[0] in _GROUPS}
    before = max((one for one in pieces if one.end <= token.start), key=_end, default=None)
    after = min((one for one in pieces if one.start >= token.end), key=_start, default=None)
    if before is not None and token.start - before.end < NEAR:
        found.add(f"{kind}P={before.path}")
    if after is not None and after.start - token.end < NEAR:
        found.add(f"{kind}N={after.path}")


def _end(piece: Piece) -> tuple[int, str]:
    return piece.end, piece.path


def _start(piece: Piece) -> tuple[int, str]:
    return piece.start, piece.path


def _beside(found: set[str], kind: str, side: str, words: list[str], ends: tuple[int, int]) -> None:
    """Words of one side, the nearest first: near, further, far."""
    for at, word in enumerate(words):
        zone = 0 if at < ends[0] else 1 if at < ends[1] else 2
        if zone < 2:
            found.add(f"{side}={word}")
        elif word in _FEW:
            continue
        found.add(f"{kind}{side}{zone}={word}")


def _words(said: str) -> list[str]:
    return [one if one != "\n" else "|" for one in _WORD.findall(said)]


@lru_cache(maxsize=1)
def _table() -> dict[str, tuple[tuple[int, float], ...]]:
    """{feature: (number of the class, weight)}."""
    table = {}
    for line in WEIGHTS.split():
        name, _, rest = line.rpartition("~")
        pairs = (one.split(":") for one in rest.split(","))
        table[name] = tuple((int(at), int(weight) / 100) for at, weight in pairs)
    return table


def likely(low: str, token: Token, pieces: list[Piece]) -> dict[str, float]:
    """{path, with "-" behind it where the number is below nothing, or "none": likelihood}."""
    sums = [0.0] * len(CLASSES)
    table = _table()
    for one in features(low, token, pieces):
        for at, weight in table.get(one, ()):
            sums[at] += weight
    most = max(sums)
    powers = [math.exp(one - most) for one in sums]
    whole = math.fsum(powers)
    return {path: power / whole for path, power in zip(CLASSES, powers, strict=True)}


def others(pieces: list[Piece], token: Token) -> list[Piece]:
    """What is told by other words than a number's."""
    return [one for one in pieces if one.end <= token.start or token.end <= one.start]


def settle(low: str, numbers: list[Token], found: Found) -> None:
    """Tells what is unread, decides what is open or said in two ways."""
    settled = []
    for piece in found.pieces:
        token = _of(numbers, piece) if piece.others else None
        settled.append(piece if token is None else _chosen(low, token, piece, found.pieces))
    found.pieces = _doubted(low, numbers, _agreed(low, numbers, settled))
    _unread(low, numbers, found)


def _of(numbers: list[Token], piece: Piece) -> Token | None:
    return next((one for one in numbers if one.start == piece.start and one.end == piece.end), None)


def _chosen(low: str, token: Token, piece: Piece, pieces: list[Piece]) -> Piece:
    """One of the readings that rules left open, if the words around it speak for one."""
    shares = likely(low, token, pieces)
    path, share = max(
        ((one, _share(shares, one)) for one in (piece.path, *piece.others)),
        key=lambda one: one[1],
    )
    if share < CHOOSE or {piece.path, *piece.others} == SLOPE:
        return piece
    return replace(piece_of(token, path, piece.weight, ()), reason=REASON, supposed=True)


def _share(shares: dict[str, float], path: str) -> float:
    return shares.get(path, 0.0) + shares.get(path + "-", 0.0)


def _agreed(low: str, numbers: list[Token], pieces: list[Piece]) -> list[Piece]:
    """Without numbers that are hardly what they were read as, where another one surely is."""
    gone = []
    for path in {one.path for one in pieces}:
        ones = [(one, _of(numbers, one)) for one in pieces if one.path == path and not one.others]
        if len(ones) < 2 or any(token is None for _, token in ones):
            continue
        shares = [
            (one, _share(likely(low, token, pieces), path))
            for one, token in ones
            if token is not None
        ]
        if max(share for _, share in shares) > NAMED:
            gone += [one for one, share in shares if share < DOUBT]
    return [one for one in pieces if one not in gone]


def _doubted(low: str, numbers: list[Token], pieces: list[Piece]) -> list[Piece]:
    """What a rule says of a number that in our letters was hardly ever that: offered beside what it
    was then."""
    kept = []
    spans = Counter((one.start, one.end) for one in pieces)
    for piece in pieces:
        alone = spans[piece.start, piece.end] == 1  # one number, and not a pair's
        token = _of(numbers, piece) if alone and not (piece.others or piece.pipe) else None
        if token is not None and token.kind not in _KINDS and _known(piece.path):
            shares = likely(low, token, pieces)
            if _share(shares, piece.path) < _least(piece):
                piece = replace(piece, others=_instead(shares, token, piece.path))
        kept.append(piece)
    return kept


def _least(piece: Piece) -> float:
    """The likelihood that it needs to be told, and not only offered."""
    return BORNE if piece.weight < LIGHT else HARDLY


def _known(path: str) -> bool:
    """Whether there are weights for it, other than for what is counted."""
    counted = path.startswith(("outlets.", "animals.", "use."))
    return not counted and (path in CLASSES or path + "-" in CLASSES)


def _instead(shares: dict[str, float], token: Token, path: str) -> tuple[str, ...]:
    """The likeliest other fact that a number can be."""
    names = sorted(shares, key=lambda one: -shares[one])
    paths = (one.rstrip("-") for one in names if one != NONE)
    return next(((one,) for one in paths if one != path and _fits(token, one)), ())


def _unread(low: str, numbers: list[Token], found: Found) -> None:
    """Of numbers that no rule has read, the likeliest for each fact that is not told yet."""
    best: dict[str, tuple[float, Token, str]] = {}
    told = {path for one in found.pieces for path in (one.path, *one.others)}
    for token in numbers:
        if token.used or token.why or token.kind in _KINDS:
            continue
        shares = likely(low, token, found.pieces)
        name = max(shares, key=lambda one: shares[one])
        path = name.rstrip("-")
        if name == NONE or path in told or shares[name] < TELL or not _fits(token, path):
            continue
        if path not in best or shares[name] > best[path][0]:
            best[path] = shares[name], token, name
    for path, (_, token, name) in best.items():
        token.used, token.path = True, path
        token.sign = -1.0 if name.endswith("-") else 1.0
        found.pieces.append(replace(piece_of(token, path, 4.0, ()), reason=REASON, supposed=True))


def _fits(token: Token, path: str) -> bool:
    """Whether a fact can have such a number at all."""
    try:
        slot(path).read(f"{token.low:.12g} {token.unit}".strip().lstrip("-"))
    except (InputError, KeyError):
        return path in {"water.level", "pump.height"} and token.kind == "length"
    return True
