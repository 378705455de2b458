"""The words round a number, as far as they are its own."""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site import enquiry_places
from calc.site.enquiry_model import Context, Pipe, Token
from calc.site.enquiry_pipes import pipe_at
from calc.site.enquiry_tokens import Spans

WIDE = 400  # characters of a sentence before and after a number that may tell of it; our choice


def pipes_of(clean: str, live: list[Token], sentences: Spans) -> dict[int, Pipe]:
    found = {}
    for token in live:
        start, end = next(
            (one for one in sentences if one[0] <= token.start < one[1]), (0, len(clean))
        )
        pipe = pipe_at(clean, token, start, end) or _corrected(clean, token)
        if pipe is not None and not (
            token.kind == "bare"
            and token.low in {1, 2, 3, 4}
            and not re.search(r"PE|PVC|PEX|steel|copper", pipe.words)
        ):
            found[token.start] = pipe
    return found


def _corrected(clean: str, token: Token) -> Pipe | None:
    """ "25 mm copper, hang on, it's 22 mm": the material of the size that was corrected."""
    if "as" not in token.extra or token.unit not in {"mm", "in"}:
        return None
    start, end = int(token.extra["as"]), int(token.extra["as_end"])
    pipe = pipe_at(clean, replace(token, start=start, end=end), start, end + 30)
    return replace(pipe, start=token.start, end=token.end) if pipe else None


_PUSHED = r"(?:, (?:about )?[\w.]+ ?(?:m|ft|feet|yards|met(?:re|er)s) away|\bfrom pump)\b|\b(?:from pump|pump to (?:the )?(?:house|tank|barn|cabin)|then|delivery|discharge|to the (?:house|barn)|up to|from the pump|push(?:es|ing)?|pumps|sends|feeds|lifts|delivers|on to|out to)\b"


def on_suction(clean: str, pipe: Pipe, near: Context) -> bool:
    if "lay-flat" in pipe.words:
        return False  # it would be sucked flat
    if _DELIVERS.match(clean, pipe.end):
        return False
    if _FOOT_VALVE.match(clean, pipe.end):
        return True
    if _DOWN_WELL.search(near.before[-70:]) or _sucked(clean, pipe):
        return True
    left = re.split(_PUSHED, near.before[-70:])[-1]
    return bool(re.search(r"\b(?:suction(?! lift)|suck(?:s|ing)?|(?:draw|pull)(?:s|ing)? [^.;]*through|intake (?:pipe|line|hose)|foot valve)\b|\bintake(?: is| of|:|,)* (?:about )?[\d.]+ ?(?:ft|m|feet|met(?:re|er)s|') of $", left)
                or re.match(r"[ ,]*(?:\w+ ){0,6}?(?:suction|intake (?:pipe|line|hose)|foot valve|strainer)\b(?! lift)", near.right.split(",")[0][: 55]))  # fmt: skip


_DOWN_WELL = re.compile(
    r"\b(?:pipe|line|hose|poly)(?: (?:that |which )?(?:goes|runs|straight|hangs|is|right|going|reaching))* down (?:in )?(?:the|our|my|a) (?:\w+ )?(?:well|bore\w*|hole|casing)\b[^.;\n\d]{0,25}$"
)
_FOOT_VALVE = re.compile(
    r"(?: pipe| hose| line)?(?: to it| into it| down| in it)?,? (?:and |with |w/? )?(?:an? |one |1 )?(?:\w+ )?foot[ -]?valve\b"
)
_MAIN = {"length", "flow", "volume", "pressure", "pair", "area", "daily"}


def _parts(one: Token, token: Token, pipes: dict[int, Pipe]) -> bool:
    """Whether a number parts the words of a sentence for another one."""
    if one.start in pipes:
        return True
    return one.kind != "bare" and (one.kind in _MAIN or one.kind == token.kind)


_DELIVERS = re.compile(
    r"[ ,]*(?:(?:pipe|line|hose|for|on|as|is|the) )*(?:delivery|discharge|pressure (?:side|pipe|line)|outlet)\b"
)
_SUCKS = re.compile(r"\b(?:suction|intake) (?:hose|pipe|line|tube)\b")
_TO_PUMP = re.compile(
    r"\bfrom (?:the |our )?(?:\w+ )?(?:well|creek|stream|pond|lake|river|cistern|spring|water|foot valve) (?:up |over )?to (?:the |our )?(?:\w+ )?pump\b"
)


_SUCKED = re.compile(  # "suction lift about 5 ft, twelve feet of", "the pipe in is"
    r"\bsuction lift\b[^.;]{0,14}, (?:and )?(?:[\w.]+ ?(?:m|ft|feet|met(?:re|er)s) of )?(?:an? )?$"
    r"|\b(?:pipe|hose|line) in(?: is|:|,) (?:an? )?$"
    r"|\b(?:pipe|hose|line|tube) (?:that|which) (?:sucks|draws|pulls)[^.;\d]{0,14}(?:is|of|,) (?:an? )?$"
)
_TO_WATER = re.compile(
    r"(?: pipe| hose| line)?(?: down| out)? (?:to (?:get there|reach (?:it|the water))|(?:in)?to the (?:stream|creek|lake|pond|river|water|canal|burn|brook))\b(?! (?:tank|main|meter|heater|trough))"
)
_PUMP_HERE = re.compile(r"\bpump\b[^;\n]{0,90}$")
_SUNK = re.compile(
    r"\bsubmersible\b|\bpump (?:is |sits |stands )?in the (?:stream|creek|lake|pond|river|water)"
)


def _sucked(clean: str, pipe: Pipe) -> bool:
    """Whether a pipe leads from a pump that is out of the water down to it."""
    before = clean[max(0, pipe.start - 110) : pipe.start]
    if _SUCKED.search(before):
        return True
    here = _TO_WATER.match(clean, pipe.end) and _PUMP_HERE.search(before)
    return bool(here and not _SUNK.search(clean) and not re.search(_PUSHED, before[-60:]))


def _suction_near(clean: str, pipe: Pipe) -> bool:
    if _DELIVERS.match(clean, pipe.end):
        return False
    if _sucked(clean, pipe):
        return True
    if _SUCKS.search(clean, pipe.start, pipe.end) or _FOOT_VALVE.match(clean, pipe.end):
        return True
    before, after = (
        re.split(
            r"\b(?:then|push(?:es|ing)?|sends|delivers|from pump)\b|, [\w.]+ ?(?:m|ft|feet|met(?:re|er)s) away\b",
            clean[max(0, pipe.start - 70) : pipe.start],
        )[-1],
        clean[pipe.end : pipe.end + 50],
    )
    if "submersible" not in clean and (
        re.search(
            _TO_PUMP.pattern + r"[a-z ,]{0,14}$",
            re.sub(r"\d+ ?(?:m|ft|feet|metres|meters) of $", "", before),
        )
        or _TO_PUMP.search(after)
    ):
        return True
    return bool(re.search(r"\bsuction(?! lift)[^.;]*$|\bsuck(?:s|ing)?\b[^.;]*$|\b(?:draw|pull)(?:s|ing)?\b[^.;]*\bthrough\b[^.;]*$|\bintake (?:pipe|line|hose)[^.;]*$|\bintake(?: is| of|:|,)* (?:about )?[\d.]+ ?(?:ft|m|feet|met(?:re|er)s|') of $", before)
                or re.match(r"[ ,]*(?:\w+ ){0,5}?(?:suction(?! lift)|intake (?:pipe|line|hose)|with strainer|strainer and)\b", after.split(",")[0]))  # fmt: skip


def context(
    clean: str,
    live: list[Token],
    at: int,
    sentences: Spans,
    pipes: dict[int, Pipe],
    again: bool = False,
) -> Context:
    """again: of a number that corrects one, the words round the one corrected."""
    token = live[at]
    begin = int(token.extra.get("as", token.start))
    stands = int(token.extra["as_end"]) if again else token.end
    index = next((i for i, one in enumerate(sentences) if one[0] <= begin < one[1]), 0)
    start = sentences[index][0] if sentences else 0
    end = next((one[1] for one in sentences if one[0] < stands <= one[1]), len(clean))
    others = [
        one for one in live[max(0, at - 40) : at + 40]
        if one is not token and start <= one.start < end and _parts(one, token, pipes)
    ]  # fmt: skip
    before, lasting = start, -1
    for one in others:
        stop = max(one.end, pipes[one.start].end) if one.start in pipes else one.end
        if start <= one.start and one.end <= begin and stop >= before:
            before, lasting = min(stop, begin), one.start
    after = min(
        (one.start for one in others if one.start >= stands and one.end <= end), default=end
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
    start, end = max(start, begin - WIDE), min(end, stands + WIDE)
    return Context(clean[max(before, start) : begin], clean[stands : min(after, end)], clean[start:begin], clean[stands:end],
                   subject, clean, following, last)  # fmt: skip
