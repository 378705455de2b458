"""Outlets and animals of all pieces of a letter: added up, taken back, or named once."""

from __future__ import annotations

import re
from functools import lru_cache

from calc.errors import InputError
from calc.site.enquiry_model import Found, Piece, Told
from calc.site.enquiry_persons import count_told as _count
from calc.site.enquiry_slots import slot


def counts(plain: str, low: str, path: str, pieces: list[Piece]) -> list[Told]:
    """How many there are of one kind: a list added up, one named in the singular is one."""
    pieces = _amended(low, [one for one in pieces if not _taken_back(low, one)])
    counted = [one for one in pieces if not one.vague]
    together = [one for one in pieces if one.word == "together"]
    alone = [one for one in counted if one.word != "together"]
    alone = alone or ([] if path == "outlets.drip" else counted)
    told: list[Told] = []
    if path.startswith("outlets.") and together:
        told.append(_count(plain, f"{path}.together", [max(together, key=lambda one: one.low)]))
    named = [one for one in pieces if one.vague and (_alone(low, one) or _beside(low, one, alone))]
    if alone and named and not any(one.low or _thing(one) == _thing(named[0]) for one in alone):
        alone = []  # "outside tap, no hose"
    if not alone and together:
        return told
    if not alone:
        first = _kinds(low, named)
        return [*told, _count(plain, path, first)] if first else told
    return [*told, _count(plain, path, _added(low, alone, named))]


_CORRECTS = re.compile(
    r"[ ,.;:-]*(?:no[,.]* (?:sorry|wait|it'?s|make (?:it|that))|sorry|correction|make that|i mean|or rather|actually)[ ,.:-]*(?:[a-z']+[ ,]+){0,3}"
)


def _amended(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without what the next piece puts right: "35 cows with calves, no, sorry, 30 pairs"."""
    kept: list[Piece] = []
    for one in pieces:
        if kept and one.low and _CORRECTS.fullmatch(low[kept[-1].end : one.start]):
            kept.pop()
        kept.append(one)
    return kept


_ROOM = re.compile(
    r"\b(kitchen|bath|bathroom|utility|hand|wash|laundry|scullery|outdoor|outside|garden|yard)\b"
)


def _kinds(low: str, named: list[Piece]) -> list[Piece]:
    """Each of several that were named by their rooms, or in one list: "sink and toilet, then the
    kitchen sink"."""
    first: dict[tuple[str, str], Piece] = {}
    for one in named:
        room = _ROOM.search(low[max(0, one.start - 9) : one.end])
        first.setdefault((_thing(one), room[1] if room else ""), one)
    ones = sorted(first.values(), key=lambda one: one.start)
    kept: list[Piece] = []
    for one in ones:
        plain = [each for each in kept if _thing(each) == _thing(one) or _a_tap(one, each)]
        alike = [
            each for each in plain if not (_ROOM.search(each.thing) and _ROOM.search(one.thing))
        ]
        gap = low[alike[-1].end : one.start] if alike else ""
        if not alike or (
            len(gap) < _LISTED
            and not re.search(rf"[.;\n](?!{_MORE})|\b(?:when|while|is|at|has|runs?)\b", gap)
            and not (re.search(r"[.;\n] ?$", gap) and _DOES.match(low, one.end))
        ):
            kept.append(one)
    return kept


_DOES = re.compile(  # a sentence about one that was named before
    r" (?:goes|is|was|runs?|gets|turns|went|starts|stops|works|sputters|dribbles|trickles|spits|only|has|comes|drops|loses|never|always|still|just)\b"
)
_TAPS, _BOWLS = frozenset(["tap", "faucet"]), frozenset(["sink", "basin"])


def _a_tap(one: Piece, other: Piece) -> bool:
    """Whether one is the tap of the other, which is a sink."""
    return (_thing(one) in _TAPS and _thing(other) in _BOWLS) or (
        _thing(one) in _BOWLS and _thing(other) in _TAPS
    )


_MORE = r" ?(?:$|(?:plus|and|also)\b)"  # what is added in a sentence of its own
_LISTED = 50  # characters within which two of a kind stand in one list; our choice


def _kitchen(last: Piece, one: Piece) -> bool:
    """A kitchen's sink beside basins is one more, wherever it is told."""
    both = last.path == one.path == "outlets.sink" and "together" not in {last.word, one.word}
    return both and ("basin" in last.thing) and "kitchen" in one.thing


_JOINED = re.compile(r" ?(?:,|and|,? and|\+|&|plus|,? plus) ?(?:the |a |an |one )?")


def _beside(low: str, one: Piece, counted: list[Piece]) -> bool:
    """Whether a sink of one room stands in one list with those of others: "2 bathroom sinks +
    kitchen sink"."""
    room = _ROOM.search(one.thing) if one.path == "outlets.sink" else None
    if room is None:
        return False
    others = [
        each
        for each in counted
        if each.low
        and room[1] not in each.thing
        and (_ROOM.search(each.thing) or "basin" in each.thing)
    ]
    return any(
        _JOINED.fullmatch(low[first.end : last.start])
        for each in others
        for first, last in (sorted((one, each), key=lambda piece: piece.start),)
    )


def _added(low: str, alone: list[Piece], named: list[Piece]) -> list[Piece]:
    """The pieces that are added up; one that is larger than all before counts instead."""
    kept = [one for one in alone if one.low > 0] or alone[:1]
    total = kept[:1]
    for one in kept[1:]:
        if _adds(low, total, one) or _kitchen(total[-1], one):
            total.append(one)
        elif one.low > sum(piece.low for piece in total):
            total = [one]
    path_is_sink = bool(total) and total[0].path == "outlets.sink"
    for one in named:
        near = one.start - total[-1].start > 0 and one.start - total[-1].end < 40
        kitchen = path_is_sink and "kitchen" in one.thing and "kitchen" not in total[-1].thing
        basin = path_is_sink and {_thing(one), _thing(total[-1])} in (
            {"sink", "basin"},
            {"tap", "basin"},
        )
        if (
            basin
            and one.start < total[0].start
            and len(total) == 1
            or _beside(low, one, total)
            or near
            and _adds(low, total, one)
            and (_thing(one) != _thing(total[-1]) or kitchen)
        ):
            total.append(one)
    return total


def possible(told: list[Told], found: Found) -> list[Told]:
    """Counts that there can be; a note says which were left out."""
    kept = []
    for one in told:
        try:
            slot(one.path).read(one.text)
            kept.append(one)
        except InputError as error:
            found.notes.append(
                f"“{one.quote}” was not taken as {one.label.lower()}: {error.message}"
            )
    return kept


_BACK = re.compile(
    r"\b(?:never ?mind|forget|ignore|disregard|scratch|cross out|don'?t count|do not count|leave out)"
    r" (?:about )?(?:the |that |my )?((?:[a-z]+ )?[a-z]+)\b"
)
_GONE = re.compile(
    r" (?:that |which )?(?:we|i) (?:have |'ve )?(?:closed|shut|removed|took out|taken out|ripped out|got rid of)\b|[^.;\n]{0,8}\b(?:cross (?:that|it) out|scratch that|is gone|gone\b|removed|taken out)"
)


def _taken_back(low: str, piece: Piece) -> bool:
    """Whether a thing counted is taken back elsewhere: "never mind the hose"."""
    return _thing(piece) in _withdrawn(low) or bool(_GONE.match(low, piece.end))


@lru_cache(maxsize=4)
def _withdrawn(low: str) -> frozenset[str]:
    """The last words of what is taken back somewhere in a letter, in the singular."""
    return frozenset(
        word.rstrip("s") for found in _BACK.finditer(low) for word in found[1].split() if word
    )


_PIPE = re.compile(
    r"[^.;\n]{0,14}\b(?:\d|between|from|to the|through|of|is (?:a )?\d|with|run is|size|spiral|bore)"
)


@lru_cache(maxsize=4)
def _every_word(low: str) -> frozenset[str]:
    return frozenset(re.findall(r"[a-z]+", low))


def _alone(low: str, piece: Piece) -> bool:
    """Whether one thing named in the singular is the only one of its kind: nobody speaks of several,
    nobody takes it back, and a hose is none of a pipe line."""
    if f"{_thing(piece)}s" in _every_word(low):
        return False
    if (
        piece.path == "use.troughs"
        and "tank" in piece.thing
        and not re.search(r"\bfloat|\bdrinker|\bwaterer|ball ?cock|\bball valve", low)
    ):
        return False
    if piece.path == "outlets.hose" and "suction hose" in low and "garden" not in piece.thing:
        return False
    pipe = piece.path == "outlets.hose" and (
        _PIPE.match(low, piece.end)
        or re.search(r"\b(?:poly|black|water|supply) $", low[: piece.end - 4])
    )
    return not pipe and not re.search(r"[^\w](?:dn|ø)? ?\d+ ?(?:mm)? $", low[: piece.start][-8:])


def _thing(piece: Piece) -> str:
    return piece.thing.split(" ")[-1].rstrip("s")


def _adds(low: str, total: list[Piece], one: Piece) -> bool:
    """Whether one more is added, or is one of those that were counted already."""
    gap = low[total[-1].end : one.start]
    listed = bool(
        re.fullmatch(
            r"[ ,\n;&+.•*-]*(?:\([^)]{0,30}\))?[^.;¤]{0,30}?(?:and|plus|,|&|\+|with|\n|in the \w+|at the \w+)[^.;¤]{0,25}",
            gap,
        )
    )
    if (not listed and len(gap) > 3) or one.word == "together" or total[-1].word == "together":
        return False
    if one.path.startswith("animals."):  # "9 horses and run 30 cattle"
        gap = re.sub(r"^ and (?:we |i )?(?:run|keep|have|graze) ", " and ", gap)
    return not re.search(
        r"\b(?:when|while|if|whenever|opens?|once|as|runs?|want|use|only|just)\b", gap
    )
