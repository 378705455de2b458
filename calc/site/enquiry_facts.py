"""All that a masked text tells, piece by piece, before it is put together."""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site import (
    enquiry_asked,
    enquiry_bare,
    enquiry_buckets,
    enquiry_counting,
    enquiry_counts,
    enquiry_direct,
    enquiry_doubts,
    enquiry_fixtures,
    enquiry_hours,
    enquiry_machines,
    enquiry_nought,
    enquiry_now,
    enquiry_people,
    enquiry_pieces,
    enquiry_said,
    enquiry_series,
    enquiry_shared,
    enquiry_sides,
    enquiry_sun,
    enquiry_switch,
    enquiry_taken,
    enquiry_talk,
    enquiry_together,
    enquiry_usual,
    enquiry_vessels,
    enquiry_weigh,
)
from calc.site import enquiry_noise as noise
from calc.site.enquiry_counts import Counted
from calc.site.enquiry_left import left_over
from calc.site.enquiry_machines import renamed
from calc.site.enquiry_made import piece_of
from calc.site.enquiry_model import Context, Found, Ignored, Piece, Pipe, Token
from calc.site.enquiry_near import context, on_suction, pipes_of
from calc.site.enquiry_numbers import tokens
from calc.site.enquiry_pipes import pipe_at
from calc.site.enquiry_rules import weigh
from calc.site.enquiry_supposed import of_a_machine
from calc.site.enquiry_tokens import (
    Spans,
    correct,
    exactly,
    in_minutes,
    likewise,
    paired,
    parts,
    seasons,
    since,
    turned,
)

LEAST, SURE = 4.0, 1.5  # weight that a reading needs; by which it must lead; our choice


def facts(plain: str, low: str, masked: str, clean: str, sentences: Spans, clauses: list[Ignored],
          system: str) -> Found:  # fmt: skip
    """masked: without dates and the like; clean: also without what is no fact of the place."""
    found, numbers = Found(), _amounts(masked, sentences, clauses)
    enquiry_said.words(clean, found)
    enquiry_said.places(plain, clean, found)
    taken = _special(clean, low, found, numbers)
    asked = [*enquiry_asked.questions(low), *enquiry_talk.dialogue(low)]
    enquiry_talk.united(numbers, asked, enquiry_bare.usual(numbers), clean)
    found.pieces += enquiry_talk.bends(clean, asked)
    for path, number, start, end in enquiry_asked.counted(clean, asked):
        taken.append((start, end))
        found.pieces.append(Piece(path, start, end, number, number))
    _answers(clean, numbers, asked, found, taken)
    found.pieces += [*enquiry_hours.hours(low, clean), *enquiry_hours.months(clean, low)]
    found.pieces += [*enquiry_sun.told(clean), *enquiry_nought.noughts(clean)]
    found.pieces += [*enquiry_now.words(masked, clean), *enquiry_shared.longitudes(clean)]
    _numbers(clean, numbers, sentences, found, taken, asked)
    _things(clean, found, numbers, asked, enquiry_now.remaining(masked, clauses))
    zoned = enquiry_sun.zoned(clean, found.pieces)
    found.pieces = [*zoned, *_switched(clean, zoned)]
    live = [one for one in numbers if not one.why and clean[one.start] != noise.MASK]
    enquiry_usual.settle(low, live, found)
    _looked_over(low, clean, found)
    _left(plain, numbers, found)
    return found


def _looked_over(low: str, clean: str, found: Found) -> None:
    """The last look at all pieces: earlier mail weighs less, another thing's numbers go."""
    kept = enquiry_doubts.kept(clean, [_earlier(low, one) for one in found.pieces])
    found.pieces = enquiry_machines.put_right(clean, kept)
    if _NO_TANK.search(clean):
        found.pieces = [one for one in found.pieces if not one.path.startswith("pressure_tank.")]


def _amounts(masked: str, sentences: Spans, clauses: list[Ignored]) -> list[Token]:
    """All numbers with a unit, their own or another's, put right by what stands round them."""
    numbers = tokens(masked)
    turned(masked, numbers)
    paired(masked, numbers)
    for token in numbers:
        clause = next((one for one in clauses if one.start <= token.start < one.end), None)
        if clause:
            token.why = clause.why
    enquiry_bare.labelled(masked, numbers)
    correct(masked, numbers, sentences)
    for put_right in (since, exactly):
        put_right(masked, numbers)
    in_minutes(masked, numbers, sentences)
    enquiry_taken.troubled(masked, numbers, noise.MAYBE)
    enquiry_sides.lands(masked, numbers, "the size of the land")
    for units in (seasons, parts, likewise, enquiry_shared.shared, enquiry_now.flows, renamed):
        units(masked, numbers)
    return numbers


def _earlier(low: str, piece: Piece) -> Piece:
    """What stands in quoted mail weighs less than what was written after it."""
    line = low[low.rfind("\n", 0, piece.start) + 1 : piece.start]
    depth = len(line[: len(line) - len(line.lstrip(" >"))].replace(" ", ""))
    return replace(piece, weight=piece.weight - 4 * depth) if depth else piece


_NO_TANK = re.compile(
    r"\b(?:no|without (?:a|any)|never had a|isn't a|don't have a|do not have a) (?:pressure|bladder) (?:tank|vessel)\b(?! (?:problem|trouble|bigger|larger|smaller))"
)


def _special(clean: str, low: str, found: Found, numbers: list[Token]) -> list[tuple[int, int]]:
    """Buckets, sides of beds, strings of panels: spans whose numbers are used up."""
    taken = []
    for token, why in enquiry_buckets.buckets(clean, low):
        taken.append((token.start, token.end))
        if why:
            found.ignored.append(
                Ignored(clean[token.start : token.end], token.start, token.end, why)
            )
            continue
        found.pieces.append(Piece("water.yield", token.start, token.end, token.low, token.high, token.unit, weight=6,
                                  reason="a bucket, timed"))  # fmt: skip
    own = enquiry_now.patches(clean, enquiry_bare.usual(numbers))
    for area, unit, start, end in [*enquiry_sides.by_sides(clean), *own]:
        taken.append((start, end))
        path = "rain.roof" if enquiry_sides.is_roof(clean, start) else "beds.area"
        found.pieces.append(Piece(path, start, end, area, area, unit, weight=7))
    for number, start, end in enquiry_sides.latitudes(clean):
        taken.append((start, end))
        found.pieces.append(Piece("place.latitude", start, end, number, number, "°"))
    for path, number, start, end in enquiry_series.counted(clean):
        found.pieces.append(Piece(path, start, end, number, number))
    switched = enquiry_switch.switched(clean, numbers)
    found.pieces += switched
    return [*taken, *((one.start, one.end) for one in switched)]


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
            found.pieces.append(piece_of(token, path, 6, ()))
            if path == "well.depth":
                found.pieces.append(Piece("water.kind", token.start, token.end, word="well"))


_DROPS = re.compile(r"\b(?:drop (?:pipe|line)|riser|rising pipe) (?:is |of |are )*$")
_DRIPPERS = re.compile(r"\b(?:drippers?|emitters?)\b")  # of whose lines a thin pipe is
_HANGS_ON = re.compile(
    r"\b(?:submersible|pump|sub) (?:is |hangs |hung |is hung )?on [^.;]{0,16} of $"
)
_OLD = re.compile(r"\b(?:old|previous|former) $")
_CHANGED = re.compile(
    r"\b(?:(?:replaced|changed|swapped)|(?:the|a|our|with|laid|put) new) (?:\w+ ){0,2}(?:pipe|line|hose)\b"
)
_DROP_PIPE = re.compile(r"[^,.;]{0,34}\b(?:drop (?:pipe|line)|riser)\b")
_NO_WAY = re.compile(
    r"casing|drip ?line|dripline|gutter|conduit|drop (?:pipe|line)|riser|rising pipe|^[^.,;]{0,12}down the (?:hole|well|bore)"
)


def _numbers(clean: str, numbers: list[Token], sentences: Spans, found: Found,
             taken: list[tuple[int, int]], asked: list[tuple[int, int, str]]) -> None:  # fmt: skip
    live = [one for one in numbers if not one.why and clean[one.start] != noise.MASK]
    pipes, unit = pipes_of(clean, live, sentences), enquiry_bare.usual(live)
    for at, token in enumerate(live):
        if any(start < token.end and token.start < end for start, end in taken):
            token.used = True
            continue
        near = context(clean, live, at, sentences, pipes, "again" in token.extra)
        if "as" not in token.extra and noise.negated(clean, token.start):
            token.why = noise.NEGATED
            continue
        direct = enquiry_direct.path_of(token, near, unit)
        if direct:
            _direct(token, direct, found)
            continue
        pipe = pipes.get(token.start)
        if pipe is not None:
            token.used = True
            _pipe(clean, token, near, pipe, asked, found)
            continue
        _weighed(token, near, found, clean, unit)
        if not token.used and "as_end" in token.extra:
            _weighed(token, context(clean, live, at, sentences, pipes, True), found, clean, unit)
    found.pieces = [one for one in found.pieces if not enquiry_taken.of_a_part(clean, one)]
    told = {one.path for one in found.pieces}
    for token, path in left_over(clean, live, sentences, told):
        found.pieces.append(piece_of(token, path, 4, ()))


_A_DAY = frozenset(["use.each", "use.daily", "use.garden"])


def _direct(token: Token, path: str, found: Found) -> None:
    """A number whose own clause names its fact."""
    token.used, token.path = True, path
    if path in _A_DAY and token.kind == "volume":
        token.unit += "/day"  # "12 people, 50 litres each"
    bare = path == "well.static" and token.kind == "bare"
    if path == "well.pumping" or bare:  # the site's lowest water, too
        found.pieces.append(piece_of(replace(token), "water.level", 5 if bare else 6, ()))
    found.pieces.append(piece_of(token, path, enquiry_direct.weight(path), ()))


def _none_of_way(clean: str, token: Token, near: Context) -> bool:
    """Whether a size is of an old pipe, of one in a well, or of drippers' lines."""
    old = _OLD.search(near.left) and _CHANGED.search(clean)
    drips = token.unit == "mm" and token.low <= 20 and _DRIPPERS.search(near.before + near.after)
    hung = _HANGS_ON.search(near.before[-45:]) or _DROPS.search(near.left[-30:])
    hung = hung or _DROP_PIPE.match(near.right)
    return bool(old or drips or hung or _NO_WAY.search(near.right[:25]))


def _pipe(clean: str, token: Token, near: Context, pipe: Pipe, asked: list[tuple[int, int, str]],
          found: Found) -> None:  # fmt: skip
    """A pipe's size: of the suction or of the way, unless it is an old one's or a well's."""
    sucks = on_suction(clean, pipe, near) or "suction" in enquiry_asked.asked_of(token, asked)
    path = "suction.pipe" if sucks else "way.pipe"
    if _none_of_way(clean, token, near) or (sucks and not _SUCKS.search(near.mail)):
        return
    start = min(pipe.start, token.start)
    found.pieces.append(Piece(path, start, pipe.end, token.low, token.low, token.unit, pipe=pipe))


_SUCKS = re.compile(
    r"\bsuction|\bsuck|\bjet\b|\bfoot[ -]?valve|\bdraw|\bpull|\bintake|\bstrainer|\bsurface|\bdiaphragm|\bbelow the pump"
)


_CYCLES = re.compile(r"switch|cycl|\bcuts?\b|comes on|kicks|\bpressure: *between ")


def _weighed(token: Token, near: Context, found: Found, clean: str, unit: str) -> None:
    """The fact that a number is, if any: the heaviest reading, unclear where two weigh the same."""
    if token.kind == "pair":
        _pair(token, found)
        return
    if token.kind == "bare":
        _bare(token, near, found, unit)
        return
    weights = enquiry_sun.each(near) if token.kind == "each" else weigh(token, near)
    if token.kind == "pressure":
        weights = enquiry_weigh.pressure(token, near) or enquiry_weigh.seldom(near, weights)
        if (
            token.low != token.high
            and _CYCLES.search(near.before + near.after)
            and not weights.get("pressure_tank.precharge")
        ):
            _pair(token, found)
            return
    elif token.kind == "current" and re.search(r"mppt|pwm|controller|charg", near.before[-45:]):
        weights = {"power.amps": 6}
    elif token.kind == "voltage":
        weights = enquiry_weigh.voltage(token, near, weights)
    elif token.kind == "volume":
        weights = enquiry_vessels.volume(token, near)
    elif token.kind == "flow" or "water.yield" in weights:
        weights = enquiry_weigh.flow(token, near, enquiry_weigh.of_wells(near, weights))
    if not weights or max(weights.values()) < LEAST:
        return
    if max(weights, key=lambda one: weights[one]).startswith("power.") and of_a_machine(
        clean, token.start
    ):
        return
    weights = _levels(token, weights, found)
    ranked = sorted(weights.items(), key=lambda one: -one[1])
    path, weight = ranked[0]
    others = tuple(other for other, less in ranked[1:] if weight - less < SURE and less >= LEAST)
    token.used, token.path = True, path
    found.pieces.append(piece_of(token, path, weight, others))


def _levels(token: Token, weights: dict[str, float], found: Found) -> dict[str, float]:
    """The level of the well's page is the lowest water of the site, too."""
    levels = [one for one in ("well.static", "well.pumping") if one in weights]
    if not levels:
        return weights
    found.pieces.append(piece_of(replace(token), levels[0], 8, ()))
    return {"water.level": 6.0 if levels[0] == "well.pumping" else 5.5}


def _pair(token: Token, found: Found) -> None:
    token.used = True
    for path, number in (("pump.cut_in", token.low), ("pump.cut_out", token.high)):
        found.pieces.append(
            Piece(path, token.start, token.end, number, number, token.unit, weight=7)
        )
    found.pieces.append(Piece("pump.control", token.start, token.end, word="switch", weight=0.5))


def _bare(token: Token, near: Context, found: Found, unit: str) -> None:
    """A number without a unit, where the words leave no doubt: of a switch, of the letter's unit."""
    piece = enquiry_bare.pressure(token, near)
    if piece is None:
        trial, path = enquiry_bare.length(token, near, unit)
        if path == "well.static":  # the site's lowest water, too
            found.pieces.append(piece_of(replace(trial), "water.level", 4.5, ()))
        if path:
            token.used = True
            piece = replace(
                piece_of(trial, path, 4.5, ()), reason="the letter's unit, which was not told"
            )
    if piece is not None:
        token.used = True
        found.pieces.append(piece)


def _switched(clean: str, pieces: list[Piece]) -> list[Piece]:
    """A switch that is named beside the two pressures of a pump is what controls it."""
    both = {"pump.cut_in", "pump.cut_out"} <= {one.path for one in pieces}
    match = re.search(r"\bswitch\b", clean) if both else None
    return [Piece("pump.control", *match.span(), word="switch", weight=0.5)] if match else []


def _all_counted(clean: str, asked: list[tuple[int, int, str]]) -> list[Counted]:
    things = enquiry_pieces.apart(clean, enquiry_counting.things(clean))
    things += enquiry_pieces.pieces(clean, things)
    things = enquiry_fixtures.settled(clean, things)
    more = enquiry_together.at_once(clean, things)
    more += [one for one in enquiry_together.later(clean) if not _again(one, things)]
    more += enquiry_together.answered(things, asked)
    more += enquiry_now.each_with(clean)
    counted = [*things, *more, *enquiry_people.people(clean)]
    return enquiry_counts.put_right(clean, counted)


def _again(one: Counted, things: list[Counted]) -> bool:
    """Whether these words were counted already."""
    return any(
        each.path == one.path and each.start < one.end and one.start < each.end and not one.together
        for each in things
    )


def _things(
    clean: str,
    found: Found,
    numbers: list[Token],
    asked: list[tuple[int, int, str]],
    left: list[Counted],
) -> None:
    for one in enquiry_now.replaced(_all_counted(clean, asked), left):
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
