"""Pieces put together: one fact for each path, sums of outlets, contradictions, unclear ones."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from calc.errors import InputError
from calc.site import enquiry_persons
from calc.site.enquiry_added import counts, possible
from calc.site.enquiry_model import (
    Contradiction,
    Found,
    Ignored,
    Piece,
    Reading,
    Told,
    Unclear,
)
from calc.site.enquiry_recount import at_odds
from calc.site.enquiry_slots import label, slot
from calc.site.enquiry_wins import settled, struck
from calc.units import parse, plain_number

_FIXED = re.compile(
    r"\b(?:correction|sorry|actually|re-?measured|measured (?:it )?again|checked (?:it )?again|i was wrong|my mistake|scrap|ignore (?:the|that|what)|on second thoughts?|turns out|should (?:be(?! (?:fine|ok|okay|enough|good|plenty|all ?right|alright|possible|easy|able|safe|sufficient|right|working)\b)|have (?:been|said))"
    r"|typo|i meant|p\.?s\b|not (?:the )?\d|got (?:it|that) wrong|oops|update|rather than|i wrote|the new (?:one|system|pump) (?:runs|is|holds|has))"
)
_LOWEST = re.compile(
    r"\b(?:drops?|dropped|falls?|fell|went down|goes down|sank|dry|summer|august|september|low(?:est)?|drawdown|draws down|pulls|pulled|drew|sinks|worst|pumping|drought|late|autumn|october|dwl|pwl|dynamic|comes down|came down|running|rains|rainy|wet season|monsoon|(?:in|by|of) may)\b"
)
_SAYS = re.compile(  # somebody else's number against the writer's own
    r"\bmy (?:wife|husband|son|daughter|partner|brother|sister|father|mother|dad|mum|mom)\b[^.;\n]{0,40}\b(?:says?|thinks|reckons|swears|claims|insists)\b"
)
_SORRY = re.compile(
    r"\b(?:sorry|correction|actually|right|my mistake|i was wrong|not (?:the )?\d|scrap|ignore)\b"
)
_INSTANCE = re.compile(r"\b(?:when|while|if|whenever|as soon as|only|the|same|once|opens?|just)\b")
_SIGNED = {"way.climb", "tank.level", "pump.height", "place.latitude"}
_LEVELS = ("well.static", "well.pumping")
_CONTROLS = ("speed", "fixed", "switch")  # the first that is plainly said counts
SAME = 0.005  # of a number, within which two are the same one; our choice
TURNED = 0.04  # the same, of one told in other units and rounded, as 2 bar of 30 psi; our choice


@dataclass
class Result:
    """What is told, what is not clear, and what was withdrawn."""

    told: tuple[Told, ...] = ()
    unclear: tuple[Unclear, ...] = ()
    contradictions: tuple[Contradiction, ...] = ()
    withdrawn: list[Ignored] = field(default_factory=list)


def merged(plain: str, low: str, found: Found, sentences: tuple[tuple[int, int], ...]) -> Result:
    """One fact for each path of all pieces found."""
    result = Result()
    by_path: dict[str, list[Piece]] = {}
    found.pieces = _tanks(found.pieces)
    for piece in found.pieces:
        by_path.setdefault(piece.path, []).append(piece)
    told: list[Told] = []
    unclear: list[Unclear] = []
    contradictions: list[Contradiction] = []
    for path, pieces in list(by_path.items()):
        pieces.sort(key=lambda one: one.start)
        if path == "use.people":
            one, several = enquiry_persons.persons(plain, low, pieces)
            told += one
            unclear += several
            continue
        if path.startswith(("outlets.", "animals.", "use.troughs")):
            odd = _at_odds(plain, low, path, pieces)
            contradictions += odd
            told += [] if odd else possible(counts(plain, low, path, pieces), found)
            continue
        clear = [one for one in pieces if not one.others and not one.values]
        unclear += [_unclear(plain, one) for one in pieces if one not in clear]
        if not clear:
            continue
        kept = (
            _words(clear) if clear[0].word else _one_of(low, sentences, path, clear, result, plain)
        )
        said = tuple(one for piece in kept for one in _checked(plain, piece, found))
        if len(kept) > 1 and len(said) > 1:
            contradictions.append(Contradiction(path, label(path), said))
        else:
            told += said
    result.told = tuple(
        sorted(_whole(_hung(_rained(_drawn_down(told)))), key=lambda one: (one.start, one.path))
    )
    result.unclear = tuple(sorted(unclear, key=lambda one: one.start))
    result.contradictions = tuple(contradictions)
    return result


def _at_odds(plain: str, low: str, path: str, pieces: list[Piece]) -> list[Contradiction]:
    """Two numbers of one kind of outlet that cannot both be."""
    both = tuple(enquiry_persons.count_told(plain, path, [one]) for one in at_odds(low, pieces))
    return [Contradiction(path, label(path), both)] if both else []


def _tanks(pieces: list[Piece]) -> list[Piece]:
    """Of a tank that is named only as one, by what else is said, whether it is above."""
    told = {one.path for one in pieces}
    kinds = {one.word for one in pieces if one.path == "water.kind"}
    high = "tank.level" in told or "pump.present" in told
    low = kinds == {"cistern"} and not high
    if not (high or low) or "store.volume" in {one.path for one in pieces if not one.others}:
        return pieces
    path = "tank.volume" if high else "store.volume"
    return [
        replace(one, path=path, others=()) if "store.volume" in one.others else one
        for one in pieces
    ]


# Words ---------------------------------------------------------------------------------------------


def _words(pieces: list[Piece]) -> list[Piece]:
    """The heaviest value; where two weigh the same, the one that was said first and the more often."""
    path = pieces[0].path
    sums: dict[str, float] = {}
    for one in pieces:
        sums[one.word] = sums.get(one.word, 0) + one.weight
    if path == "power.source" and {"none", "grid"} <= sums.keys():
        return []  # power at one place, and none at the other
    if path == "power.source":
        order = (
            ("none", "sun", "grid", "generator")
            if "sun" not in sums
            else ("sun", "grid", "generator", "none")
        )
        best = next(word for word in order if word in sums)
    elif path == "water.kind":
        best = _source(pieces, sums)
    elif path == "pump.control":
        best = max(sums, key=lambda word: (sums[word] >= 3, -_CONTROLS.index(word)))
    else:
        best = max(
            sums, key=lambda word: (sums[word], -min(p.start for p in pieces if p.word == word))
        )
    return [
        max((one for one in pieces if one.word == best), key=lambda one: (one.weight, -one.start))
    ]


def _source(pieces: list[Piece], sums: dict[str, float]) -> str:
    """What the water comes from: of a spring or well that fills a cistern the spring or well."""
    natural = {word: weight for word, weight in sums.items() if word != "cistern"}
    first = {one.word: one.start for one in reversed(pieces)}
    if not natural:
        return "cistern"
    return max(natural, key=lambda word: (natural[word], -first[word]))


# Numbers -------------------------------------------------------------------------------------------


def _one_of(low: str, sentences: tuple[tuple[int, int], ...], path: str, pieces: list[Piece],
            result: Result, plain: str) -> list[Piece]:  # fmt: skip
    """The pieces that stand: one where all say the same or the last one corrects the others."""
    groups: list[Piece] = []
    for piece in pieces:
        same = next((at for at, one in enumerate(groups) if _same(one, piece)), None)
        if same is None:
            groups.append(piece)
        elif piece.weight > groups[same].weight or (groups[same].about and not piece.about):
            groups[same] = piece
    if len(groups) == 1:
        return groups
    last = max(groups, key=lambda one: one.start)
    line = next((low[start:end] for start, end in sentences if start <= last.start < end), "")
    if _FIXED.search(line) and (not _SAYS.search(line) or _SORRY.search(line)):
        for one in groups:
            if one is not last:
                quote = plain[one.start : one.end]
                result.withdrawn.append(Ignored(quote, one.start, one.end, "withdrawn"))
        return [last]
    groups = struck(low, path, groups)
    if path not in {"water.level", "water.yield"} or not any(
        _LOWEST.search(low[max(0, one.start - 50) : one.end + 40]) for one in groups
    ):
        groups = settled(low, path, groups, sentences)
    if len(groups) == 1:
        return groups
    if path == "water.level" and any(
        _LOWEST.search(low[max(0, one.start - 40) : one.end + 30]) for one in groups
    ):
        return [min(groups, key=lambda one: _si(one))]
    if path == "water.yield" and any(
        _LOWEST.search(low[max(0, one.start - 50) : one.end + 40]) for one in groups
    ):
        return [min(groups, key=_si)]
    heaviest = max(one.weight for one in groups)
    apart = 1.2 if path == "way.length" else 3.1
    sure = [one for one in groups if one.weight > heaviest - apart]
    return sure if len(sure) > 1 else [max(groups, key=lambda one: one.weight)]


def _si(piece: Piece) -> float:
    kind = slot(piece.path).quantity or "number"
    try:
        return parse(f"{piece.low:.12g} {piece.unit}".strip(), kind).value
    except InputError:
        return piece.low


def _same(one: Piece, other: Piece) -> bool:
    if one.pipe and other.pipe:
        first, second = one.pipe.words.split(), other.pipe.words.split()
        return first == second or first[: len(second)] == second or second[: len(first)] == first
    if one.low != one.high or other.low != other.high:
        inside = one if one.low != one.high else other
        point = other if inside is one else one
        return inside.unit == point.unit and inside.low <= point.low and point.high <= inside.high
    a, b = _si(one), _si(other)
    return abs(a - b) <= (TURNED if one.unit != other.unit else SAME) * max(abs(a), abs(b), 1e-12)


# Telling --------------------------------------------------------------------------------------------


def _checked(plain: str, piece: Piece, found: Found) -> list[Told]:
    """The piece as told; nothing, and a note, where no such thing can be."""
    quote = plain[piece.start : piece.end]
    if piece.word:
        return [Told(piece.path, piece.word, label(piece.path), quote, piece.start, piece.end)]
    if piece.pipe:
        pipe, why = piece.pipe, piece.pipe.reason
        standing = "assumed" if why else "given"
        return [Told(piece.path, pipe.key or pipe.words, label(piece.path), quote, piece.start, piece.end,
                     standing=standing, reason=why, words=pipe.words)]  # fmt: skip
    texts = [_text(number, piece.unit) for number in (piece.low, piece.high)]
    fault = _fault(piece, texts)
    if fault:
        found.notes.append(f"“{quote}” was not taken as {label(piece.path).lower()}: {fault}")
        return []
    ranged = piece.low != piece.high
    middle = texts[0] if not ranged else _text((piece.low + piece.high) / 2, piece.unit)
    reason = piece.reason or ("the middle of what was told" if ranged else "")
    standing = "assumed" if ranged or piece.supposed else "given"
    return [Told(piece.path, middle, label(piece.path), quote, piece.start, piece.end,
                 texts[0] if ranged else "", texts[1] if ranged else "", standing, reason)]  # fmt: skip


def _text(number: float, unit: str) -> str:
    return f"{plain_number(number, 6)} {unit}".strip()


def _fault(piece: Piece, texts: list[str]) -> str:
    """Why a number cannot be, in a sentence; "" where it can."""
    try:
        for text in texts:
            slot(piece.path).read(text)
    except InputError as error:
        return error.message
    return ""


def _unclear(plain: str, piece: Piece) -> Unclear:
    paths = (piece.path, *piece.others)
    readings = [
        Reading(path, _text(_signed(path, piece), piece.unit), label(path)) for path in paths
    ]
    for other in piece.values:
        readings.append(Reading(piece.path, _text(other, piece.unit), label(piece.path)))
    return Unclear(plain[piece.start : piece.end], piece.start, piece.end, tuple(readings))


def _signed(path: str, piece: Piece) -> float:
    if path == "water.level":
        return -abs(piece.low)
    return piece.low if path in _SIGNED else abs(piece.low)


def _rained(told: list[Told]) -> list[Told]:
    """A roof whose area is told fills the tank."""
    paths = {one.path: one for one in told}
    roof = paths.get("rain.roof")
    if roof is None or "rain.used" in paths:
        return told
    path = "rain.used"
    return [*told, Told(path, "yes", label(path), roof.quote, roof.start, roof.end)]


def _drawn_down(told: list[Told]) -> list[Told]:
    """A pumping level above the static one is how far the water was drawn down, and no level."""
    at = {one.path: slot(one.path).read(one.text) for one in told if one.path in _LEVELS}
    static, pumping = (at.get(path) for path in _LEVELS)
    if static is None or pumping is None or pumping >= static:
        return told
    return [one for one in told if one.path != "well.pumping"]


def _hung(told: list[Told]) -> list[Told]:
    """A pump hung in a well is in the water; one above the water is out of it."""
    paths = {one.path: one for one in told}
    height = paths.get("pump.height")
    if height is None or "pump.placement" in paths or not height.text.startswith("-"):
        return told
    path = "pump.placement"
    return [*told, Told(path, "in", label(path), height.quote, height.start, height.end)]


def _whole(told: list[Told]) -> list[Told]:
    """What cannot stand beside another fact goes: a pump where there is none."""
    paths = {one.path: one for one in told}
    gone = (
        {
            "pump.placement",
            "pump.control",
            "pump.works",
            "pump.height",
            "pump.cut_in",
            "pump.cut_out",
            "pump.set",
        }
        if paths.get("pump.present")
        else set()
    )
    return [one for one in told if one.path not in gone]
