"""All that a masked text tells, piece by piece, before it is put together."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from calc.site import enquiry_asked, enquiry_counts, enquiry_places, enquiry_weigh, enquiry_words
from calc.site import enquiry_noise as noise
from calc.site.enquiry_model import Ignored, Token
from calc.site.enquiry_numbers import pairs, tokens
from calc.site.enquiry_pipes import Pipe, pipe_at
from calc.site.enquiry_rules import Context, weigh

Spans = tuple[tuple[int, int], ...]
LEAST, SURE = 4.0, 1.5  # weight that a reading needs; by which it must lead; our choice
_MINUTES = re.compile(
    r"(?:takes?|took|in|every|for|after|lasts?|within|then|each|runs? for|on for|off for)(?: (?:about|around|roughly|only|just|at least|approx\.?))* $"
)
_MINUTES_RIGHT = re.compile(
    r" ?(?:to (?:fill|empty|recover|refill|run)|before|later|on\b|off\b|(?:of|per) (?:running|pumping|hour|use)|and (?:then )?(?:it )?(?:stops?|shuts?|runs? dry)|a day|$|[.,;)])"
)
_SYSTEMS = {12, 24, 36, 48, 110, 115, 120, 220, 230, 240, 380, 400}  # V; common practice, no source
_USUAL = {(20, 40), (30, 50), (40, 60), (50, 70)}  # psi; common practice, no source
_TIMES = re.compile(
    r"\b(?:fill|fills|filling|empt(?:y|ies)|runs? dry|bucket|shower(?:s|ing)?|timer|wait|recovers?|cycles?|shuts off|stops|pumping)\b"
)
_FIX = re.compile(
    r"^[ ,.;:()?!-]*(?:\w+[.,;!?]* ){0,4}?(?:no(?=,|[.]* (?:sorry|wait|it's|its|make|actually|that's|i mean|hang))|nope|sorry|wait|scratch that|correction|make that|i mean|i meant|actually|or rather|er|oops|rather|that should be|should be|let me correct|strike that|i take that back|on second thoughts?|hang on|hmm|my mistake|typo)\b[^¤]{0,45}$"
)
_BUT = re.compile(r"^[ ,]*(?:but|it is|it's|rather|more like|that's)[ ,]*(?:\w+ ){0,3}$")


@dataclass(frozen=True)
class Piece:
    """One thing told, not yet weighed against others: numbers in ``unit``, or a ``word``."""

    path: str
    start: int
    end: int
    low: float = 0.0
    high: float = 0.0
    unit: str = ""
    word: str = ""
    weight: float = 5.0
    vague: bool = False
    about: bool = False
    pipe: Pipe | None = None
    reason: str = ""
    others: tuple[str, ...] = ()  # paths that it may be as well
    values: tuple[float, ...] = ()  # numbers that it may be as well
    thing: str = ""


@dataclass
class Found:
    """All pieces of a mail, and what was left out of it."""

    pieces: list[Piece] = field(default_factory=list)
    ignored: list[Ignored] = field(default_factory=list)
    unused: tuple[Ignored, ...] = ()
    notes: list[str] = field(default_factory=list)
    bare: int = 0


def facts(plain: str, low: str, masked: str, clean: str, sentences: Spans, clauses: list[Ignored],
          system: str) -> Found:  # fmt: skip
    """masked: without dates and the like; clean: also without what is somebody else's, past or
    only considered."""
    found = Found()
    numbers = tokens(masked)
    _pressure_pairs(masked, numbers)
    for token in numbers:
        clause = next((one for one in clauses if one.start <= token.start < one.end), None)
        if clause:
            token.why = clause.why
    _corrected(masked, numbers, sentences)
    _minutes(masked, numbers, sentences)
    _words(clean, found)
    taken = _special(clean, found, numbers)
    asked = enquiry_asked.questions(low)
    for path, number, start, end in enquiry_asked.counted(clean, asked):
        taken.append((start, end))
        found.pieces.append(Piece(path, start, end, number, number))
    _answers(clean, numbers, asked, found, taken)
    _numbers(clean, numbers, sentences, found, taken)
    _things(clean, found, numbers)
    _left(plain, numbers, found)
    found.pieces = [_earlier(low, one) for one in found.pieces]
    return found


def _earlier(low: str, piece: Piece) -> Piece:
    """What stands in quoted mail weighs less than what was written after it."""
    line = low[low.rfind("\n", 0, piece.start) + 1 : piece.start]
    depth = len(line[: len(line) - len(line.lstrip(" >"))].replace(" ", ""))
    return replace(piece, weight=piece.weight - 4 * depth) if depth else piece


def _pressure_pairs(low: str, numbers: list[Token]) -> None:
    """Pairs of pressures in the place of what their numbers were read as."""
    for pair in pairs(low):
        around = low[max(0, pair.start - 60) : pair.end + 60]
        said = low[pair.start : pair.end + 1]
        ready = re.search(r"switch|cut[ -]?(?:in|out)|pressure sw", around) or re.search(
            r"(?:psi|bar|kpa)", said) and re.search(r"\bpump|pressure tank|press|cycl|set", around)  # fmt: skip
        ready = (
            ready or (pair.low, pair.high) in _USUAL and low[pair.start : pair.end].count("/") == 1
        )
        ratio = pair.high / max(pair.low, 0.1)
        if (
            not ready
            or not 1.15 <= ratio <= 4
            or re.search(r"pre-?charge|precharge", low[pair.start - 25 : pair.start])
        ):
            continue
        if pair.unit == "psi" and not 10 <= pair.low <= 120:
            continue
        if pair.unit == "bar" and "psi" in low[pair.end : pair.end + 5]:
            continue
        inside = [one for one in numbers if one.start < pair.end and pair.start < one.end]
        if any(one.kind not in {"bare", "pressure", "time"} for one in inside):
            continue
        pair.end = max([pair.end, *(one.end for one in inside)])
        for one in inside:
            numbers.remove(one)
        numbers.append(pair)
    numbers.sort(key=lambda one: one.start)


def _corrected(low: str, numbers: list[Token], sentences: Spans) -> None:
    """What is taken back at once is withdrawn; what follows stands in its place."""
    for first, second in zip(numbers, numbers[1:], strict=False):
        gap = low[first.end : second.start]
        if len(gap) > 60 or "\n\n" in gap:
            continue
        said_not = noise.negated(low, first.start) and _BUT.match(gap)
        if not (_FIX.match(gap) or said_not):
            continue
        same = second.kind == first.kind or second.kind == "bare"
        if not same or (second.kind == "bare" and second.unit):
            continue
        if second.kind == "bare":
            second.kind, second.unit = first.kind, first.unit
        first.why = noise.WITHDRAWN
        second.extra["as"] = first.extra.get("as", first.start)


def _minutes(low: str, numbers: list[Token], sentences: Spans) -> None:
    """ "10 m" beside words of time are minutes."""
    for token in numbers:
        if token.kind == "length" and token.unit == "m" and low[token.end - 1] == "m":
            left = low[max(0, token.start - 40) : token.start]
            right = low[token.end : token.end + 40]
            line = low[max(0, token.start - 70) : token.end + 50]
            if _MINUTES.search(left) and _MINUTES_RIGHT.match(right) and _TIMES.search(line):
                token.kind, token.unit = "time", "min"


def _words(clean: str, found: Found) -> None:
    for one in enquiry_words.said(clean):
        stop = re.compile(r"[.!?\n]").search(clean, one.end)
        asked = stop is not None and stop.group() == "?"
        found.pieces.append(
            Piece(
                one.path,
                one.start,
                one.end,
                word=one.value,
                weight=one.weight * (0.5 if asked else 1),
            )
        )
    level = enquiry_words.level_with(clean)
    if level:
        found.pieces.append(Piece("way.climb", *level, 0.0, 0.0, "m"))
    gone = enquiry_words.no_pump(clean)
    if gone:
        found.pieces.append(Piece("pump.present", *gone, word="no"))


def _special(clean: str, found: Found, numbers: list[Token]) -> list[tuple[int, int]]:
    """Buckets, sides of beds, strings of panels: spans whose numbers are used up."""
    taken = []
    for token, why in enquiry_weigh.buckets(clean):
        taken.append((token.start, token.end))
        if why:
            found.ignored.append(
                Ignored(clean[token.start : token.end], token.start, token.end, why)
            )
            continue
        found.pieces.append(Piece("water.yield", token.start, token.end, token.low, token.high, token.unit, weight=6,
                                  reason="a bucket, timed"))  # fmt: skip
    for area, unit, start, end in enquiry_weigh.by_sides(clean):
        taken.append((start, end))
        found.pieces.append(Piece("beds.area", start, end, area, area, unit, weight=7))
    for number, start, end in enquiry_weigh.latitudes(clean):
        taken.append((start, end))
        found.pieces.append(Piece("place.latitude", start, end, number, number, "°"))
    for path, number, start, end in enquiry_weigh.counted(clean):
        found.pieces.append(Piece(path, start, end, number, number))
    return taken


def _answers(clean: str, numbers: list[Token], asked: list[tuple[int, int, str]], found: Found,
             taken: list[tuple[int, int]]) -> None:  # fmt: skip
    """Numbers under a question of earlier mail that says what they are."""
    for token in numbers:
        question = "" if token.why else enquiry_asked.asked_of(token, asked)
        if not question or clean[token.start] == noise.MASK or pipe_at(clean, token, 0, len(clean)):
            continue
        path, sign = enquiry_asked.answered(token, question, clean)
        if path and not any(start <= token.start < end for start, end in taken):
            token.sign, token.used = sign, True
            taken.append((token.start, token.end))
            found.pieces.append(_piece(token, path, 6, ()))


def _numbers(clean: str, numbers: list[Token], sentences: Spans, found: Found,
             taken: list[tuple[int, int]]) -> None:  # fmt: skip
    live = [one for one in numbers if not one.why and clean[one.start] != noise.MASK]
    pipes = _pipes(clean, live, sentences)
    for at, token in enumerate(live):
        if any(start < token.end and token.start < end for start, end in taken):
            token.used = True
            continue
        near = _context(clean, live, at, sentences, pipes)
        if "as" not in token.extra and noise.negated(clean, token.start):
            token.why = noise.NEGATED
            continue
        pipe = pipes.get(token.start)
        if pipe is not None:
            token.used = True
            path = "suction.pipe" if _on_suction(clean, pipe, near) else "way.pipe"
            if not re.search(r"casing|drip ?line|dripline|gutter|conduit", near.right[:25]):
                found.pieces.append(
                    Piece(
                        path,
                        min(pipe.start, token.start),
                        pipe.end,
                        token.low,
                        token.low,
                        token.unit,
                        pipe=pipe,
                    )
                )
            continue
        _weighed(token, near, found, clean)
    _run_left(clean, live, sentences, found)


_HIGH = re.compile(
    r"\b(?:above|below|high(?:er)?|deep(?:er)?|depth|up|uphill|down|level|tall|diameter|wide|head|lift|rises?|climb|altitude|elevation|suction|cable|bore|drilled|casing|panels?|under|over|lower|drop|fall|height|static|thick|tank)\b"
)
_RUNS = re.compile(
    r"\b(?:pipe|line|house|cabin|hose|garden|trough|run|from|to|away|between|field|barn|poly|pvc)\b"
)
_FAR = 8.0  # m, below which a length nobody explains is none of a pipe line; our choice
_METRES = {"m": 1.0, "ft": 0.3048, "yd": 0.9144, "km": 1000.0, "mi": 1609.0}


def _run_left(clean: str, live: list[Token], sentences: Spans, found: Found) -> None:
    """The one length left over, where nothing else is the way's and no word is of a height."""
    if any(one.path == "way.length" for one in found.pieces):
        return
    left = [
        one for one in live
        if not one.used and not one.why and one.kind == "length" and one.low * _METRES.get(one.unit, 0) >= _FAR
    ]  # fmt: skip
    fits = []
    for token in left:
        start, end = next(
            (one for one in sentences if one[0] <= token.start < one[1]), (0, len(clean))
        )
        near = clean[max(start, token.start - 30) : min(end, token.end + 25)]
        if not _HIGH.search(near) and _RUNS.search(clean[start:end]):
            fits.append(token)
    if len(fits) == 1:
        fits[0].used = True
        found.pieces.append(_piece(fits[0], "way.length", 4, ()))


def _pipes(clean: str, live: list[Token], sentences: Spans) -> dict[int, Pipe]:
    found = {}
    for token in live:
        start, end = next(
            (one for one in sentences if one[0] <= token.start < one[1]), (0, len(clean))
        )
        pipe = pipe_at(clean, token, start, end)
        if pipe is not None and not (
            token.kind == "bare"
            and token.low in {1, 2, 3, 4}
            and not re.search(r"PE|PVC|PEX|steel|copper", pipe.words)
        ):
            found[token.start] = pipe
    return found


def _on_suction(clean: str, pipe: Pipe, near: Context) -> bool:
    left = re.split(
        r"\b(?:then|delivery|discharge|to the house|up to|from the pump)\b", near.before[-60:]
    )[-1]
    return bool(re.search(r"\b(?:suction(?! lift)|suck(?:s|ing)?|intake (?:pipe|line|hose)|foot valve)\b", left)
                or re.match(r"[ ,]*(?:\w+ ){0,4}?(?:suction|intake (?:pipe|line|hose)|foot valve)\b(?! lift)", near.right.split(",")[0][: 45]))  # fmt: skip


_MAIN = {"length", "flow", "volume", "pressure", "pair", "area", "daily"}


def _parts(one: Token, token: Token, pipes: dict[int, Pipe]) -> bool:
    """Whether a number parts the words of a sentence for another one."""
    if one.start in pipes:
        return True
    return one.kind != "bare" and (one.kind in _MAIN or one.kind == token.kind)


def _suction_near(clean: str, pipe: Pipe) -> bool:
    before, after = clean[max(0, pipe.start - 35) : pipe.start], clean[pipe.end : pipe.end + 40]
    return bool(re.search(r"\bsuction(?! lift)[^.;]*$|\bsuck(?:s|ing)?\b[^.;]*$|\bintake (?:pipe|line|hose)[^.;]*$", before)
                or re.match(r"[ ,]*(?:\w+ ){0,3}?(?:suction(?! lift)|intake (?:pipe|line|hose))\b", after.split(",")[0]))  # fmt: skip


def _context(
    clean: str, live: list[Token], at: int, sentences: Spans, pipes: dict[int, Pipe]
) -> Context:
    token = live[at]
    index = next((i for i, one in enumerate(sentences) if one[0] <= token.start < one[1]), 0)
    start, end = sentences[index] if sentences else (0, len(clean))
    begin = int(token.extra.get("as", token.start))
    others = [one for one in live if one is not token and _parts(one, token, pipes)]
    before, lasting = start, -1
    for one in others:
        stop = max(one.end, pipes[one.start].end) if one.start in pipes else one.end
        if start <= one.start and one.end <= begin and stop >= before:
            before, lasting = min(stop, begin), one.start
    after = min(
        (one.start for one in others if one.start >= token.end and one.end <= end), default=end
    )
    subject = ""
    for back in range(index - 1, max(-1, index - 3), -1):
        subject = enquiry_places.noun(clean[slice(*sentences[back])])
        if subject:
            break
    following, last = (
        ("suction.pipe" if _suction_near(clean, pipes[one]) else "way.pipe") if one in pipes else ""
        for one in (after if after < end else -1, lasting)
    )
    return Context(clean[before:begin], clean[token.end : after], clean[start:begin], clean[token.end : end],
                   subject, clean, following, last)  # fmt: skip


def _weighed(token: Token, near: Context, found: Found, clean: str) -> None:
    """The fact that a number is, if any: the heaviest reading, unclear where two weigh the same."""
    if token.kind == "pair":
        _pair(token, found)
        return
    if token.kind == "bare":
        _bare(token, near, found)
        return
    weights = {"use.each": 7.0} if token.kind == "each" else weigh(token, near)
    if token.kind == "pressure":
        weights = enquiry_weigh.pressure(token, near)
        if (
            token.low != token.high
            and re.search(r"switch|cycl|\bcuts?\b|comes on|kicks", near.before + near.after)
            and not weights.get("pressure_tank.precharge")
        ):
            _pair(token, found)
            return
    elif token.kind == "current" and re.search(r"mppt|pwm|controller|charg", near.before[-45:]):
        weights = {"power.amps": 6}
    elif token.kind == "voltage" and not weights and token.low in _SYSTEMS and not re.search(
            r"voc|max|open|panel|pv|limit", near.left[-25:] + near.right[:12]):  # fmt: skip
        weights = {"power.voltage": 4}
    elif token.kind == "volume":
        weights = enquiry_weigh.volume(token, near)
    elif token.kind == "flow" or "water.yield" in weights:
        weights = enquiry_weigh.flow(token, near, weights)
    if not weights or max(weights.values()) < LEAST:
        return
    ranked = sorted(weights.items(), key=lambda one: -one[1])
    path, weight = ranked[0]
    others = tuple(other for other, less in ranked[1:] if weight - less < SURE and less >= LEAST)
    token.used, token.path = True, path
    found.pieces.append(_piece(token, path, weight, others))


SIGNED = {"way.climb", "tank.level", "pump.height"}
BELOW = {"water.level"}


def _piece(token: Token, path: str, weight: float, others: tuple[str, ...]) -> Piece:
    if path in BELOW | {"pump.height"}:
        token.low, token.high = abs(token.low), abs(token.high)
    times = token.extra.get("times", 1.0)
    low, high, unit = token.low * times, token.high * times, token.unit
    sign = token.sign if path in SIGNED else 1.0
    if path in BELOW:
        sign = -1.0
    if path == "water.yield" and unit.endswith("/day"):
        low, high, unit = (
            low / 24,
            high / 24,
            {"L/day": "L/h", "gal/day": "gph", "m³/day": "m³/h"}[unit],
        )
    if path == "store.hours":
        low, high, unit = (
            low / {"min": 60, "s": 3600}.get(unit, 1),
            high / {"min": 60, "s": 3600}.get(unit, 1),
            "",
        )
    if unit == "weeks":
        low, high, unit = 7 * low, 7 * high, "days"
    ends = sorted((sign * low, sign * high)) if low != high else (sign * low, sign * high)
    if (
        token.maybe
        and path in {"place.altitude", "way.length"}
        and (path == "place.altitude" or token.low < 3)
    ):
        return Piece(
            path, token.start, token.end, token.maybe[0], token.maybe[0], unit, weight=weight
        )
    return Piece(path, int(token.start), token.end, ends[0], ends[1], unit, weight=weight, about=token.about, others=others,
                 values=tuple(sign * one for one in token.maybe))  # fmt: skip


def _pair(token: Token, found: Found) -> None:
    token.used = True
    for path, number in (("pump.cut_in", token.low), ("pump.cut_out", token.high)):
        found.pieces.append(
            Piece(path, token.start, token.end, number, number, token.unit, weight=7)
        )
    found.pieces.append(Piece("pump.control", token.start, token.end, word="switch", weight=0.5))


def _bare(token: Token, near: Context, found: Found) -> None:
    """A number without a unit, where the words leave no doubt: pressures of a switch."""
    if not (token.low >= 10 and token.low <= 150) and not 1 <= token.low <= 8:
        return
    if not re.search(
        r"switch|cut[ -]?(?:in|out|s)|kicks|pump|turns|comes on", near.before + near.right
    ):
        return
    trial = replace(token, kind="pressure", unit="psi" if token.low >= 10 else "bar")
    weights = enquiry_weigh.pressure(trial, near)
    path = next((one for one in ("pump.cut_in", "pump.cut_out") if one in weights), "")
    if path and not re.match(r" ?(?:am|pm|times|minutes|hours|seconds|days|a day|%)", near.right):
        token.used = True
        found.pieces.append(Piece(path, token.start, token.end, token.low, token.high, trial.unit, weight=4.5,
                                  reason="the usual unit, which was not told"))  # fmt: skip


def _things(clean: str, found: Found, numbers: list[Token]) -> None:
    for one in [
        *enquiry_counts.things(clean),
        *enquiry_counts.later(clean),
        *enquiry_counts.people(clean),
    ]:
        thing = re.sub(r"^[\W\d]+", "", clean[one.start : one.end])
        found.pieces.append(Piece(one.path, one.start, one.end, one.count, max(one.count, one.high), vague=one.vague,
                                  word="together" if one.together else "", thing=thing))  # fmt: skip
        for token in numbers:
            if one.start <= token.start and token.end <= one.end + 1:
                token.used = True


def _left(plain: str, numbers: list[Token], found: Found) -> None:
    """Numbers that were not used, and why."""
    unused = []
    for token in numbers:
        if token.used:
            continue
        one = Ignored(
            plain[token.start : token.end], token.start, token.end, token.why or "not understood"
        )
        if token.why in {noise.WITHDRAWN, noise.NEGATED}:
            found.ignored.append(one)
        elif not token.why and any(sign.isdigit() for sign in one.quote):
            unused.append(one)
            found.bare += token.kind == "bare"
    found.unused = tuple(unused)
