"""Pipes in an enquiry: sizes with their material, as people name them."""

from __future__ import annotations

import re

from calc.pipe import pipes
from calc.site.enquiry_model import Pipe, Token

_MATERIALS = tuple((key, word, re.compile(pattern)) for key, word, pattern in (
    ("cpvc", "CPVC", r"\bc-?pvc\b"),
    ("pvc80", "PVC schedule 80", r"\b(?:pvc,? ?\(?(?:sch(?:ed(?:ule)?)?\.? ?80)|(?:sch(?:ed(?:ule)?)?\.?[ -]?80)(?: pvc)?)"),
    ("pvc40", "PVC schedule 40", r"\b(?:pvc,? ?\(?(?:sch(?:ed(?:ule)?)?\.? ?40)|(?:sch(?:ed(?:ule)?)?\.?[ -]?40)(?: pvc)?)"),
    ("pvc", "PVC", r"\b(?:u?pvc|u-pvc|pcv|plastic pressure pipe)\b"),
    ("pex", "PEX", r"\bpex(?:-?[abc])?\b"),
    ("pe", "PE", r"\b(?:poly\w*|pe|plastic) hose\b"),
    ("hose", "garden hose", r"\b(?<!flat )(?:garden |suction |spiral )?hose(?:pipe)?\b"),
    ("layflat", "lay-flat", r"\blay ?-?flat\b"),
    ("pe", "PE", r"\b(?:poly(?! ?(?:tunnels?|carbonate|house))(?:thene|ethylene|ethelene|ethyline|pipe|ethylen)?|[hlm]?d?pe(?:[ -]?(?:100|80|4710))?|alkath[a-z]*|polly|black plastic"
                 r"|black pipe|blue (?:mdpe|water pipe|pipe)|pe-?100|pead|pe[hb]d)\b"),
    ("copper", "copper", r"\b(?:copper|cu pipe)\b"),
    ("steel", "galvanised steel", r"\b(?:galv(?:ani[sz]ed)?(?: (?:steel|iron|pipe))?|g\.?i\.? pipe|gi|steel|iron)\b"),
    ("plastic", "", r"\bplastic\b"),
))  # fmt: skip
_INCHES = {0.375: "0.375", 0.5: "0.5", 0.625: "0.625", 0.75: "0.75", 1.0: "1", 1.25: "1.25",
           1.5: "1.5", 2.0: "2", 2.5: "2.5", 3.0: "3", 4.0: "4"}  # fmt: skip
_TEXTS = {0.375: "3/8", 0.5: "1/2", 0.625: "5/8", 0.75: "3/4", 1.25: "1 1/4", 1.5: "1 1/2",
          2.5: "2 1/2"}  # fmt: skip
_KINDS = {  # by material and unit, the kinds that may be meant, the usual one first
    ("pe", "in"): ("pe-sidr15", "pe4710-dr11"), ("pe", "mm"): ("pe100-sdr11", "pe100-sdr17"),
    ("pvc", "in"): ("pvc40",), ("pvc40", "in"): ("pvc40",), ("pvc80", "in"): ("pvc80",),
    ("cpvc", "in"): ("cpvc11",), ("pex", "in"): ("pex-in",), ("pex", "mm"): ("pex-mm",),
    ("copper", "in"): ("copper-l",), ("copper", "mm"): ("copper-en",),
    ("steel", "in"): ("steel",), ("steel", "mm"): ("steel-en",), ("hose", "in"): ("hose",),
    ("layflat", "mm"): ("layflat",), ("layflat", "in"): ("layflat",),
}  # fmt: skip
_BUT_IS = re.compile(
    r"[ ,]*(?:\w+ ){0,2}\w+ (?:i (?:thought|said|wrote)|we (?:thought|said)|no|sorry|i mean|rather)\b[, ]*(?:no |sorry |wait |but |now )*(?:it's|it is|it was|actually|really)?(?= (?:pvc|poly|pe\b|pex|copper|steel|galv|hdpe))"
)
_PIPE = re.compile(
    r"\b(?:pipe|pipes|piping|line|tube|tubing|hose|main|pipeline|plumbing|mainline)\b"
)
_SAYS_CLASS = re.compile(
    r"\bs(?:i)?dr ?-?(\d+(?:\.\d)?)|\bpn ?-?(\d+)|\b(?:sch(?:ed(?:ule)?)?\.? ?)(40|80)|\bdr ?-?(\d+)"
)
_SCHEDULES = {40, 80}
_AND_THEN = re.compile(
    r" [a-z]+(?: [a-z\d]+){0,4} (?:and|plus|with) (?:an? |one |the )?(?:\w+ )?(?:hose|pipe|line|tube)"
)
_BARE_ENDS = re.compile(
    r" ?(?:$|[,.;)\n(]|(?:pipe|line|from|to|for|diameter|dia|outside|pn|sdr|x|and|all|in|up|down|buried|laid|underground|along|between|over)\b)"
)
_FROM = re.compile(r"\b(?:from|to|between|out of) (?:the|our|my|a)\b")
_BORE = re.compile(r"\b(?:well|casing|bore ?hole|bore|drill(?:ed)?|diameter well|hole|wide)\b")


def pipe_at(low: str, token: Token, left: int, right: int) -> Pipe | None:
    """The pipe whose size a token is, within ``left`` to ``right``; None where it is no pipe."""
    size = _size(token)
    if size is None:
        return None
    number, unit = size
    after = low[token.end : min(right, token.end + 45)]
    before = low[max(left, token.start - 40) : token.start]
    material, start, end = _material(
        low, token, low[max(left, token.start - 60) : token.start], after
    )
    if token.kind == "bare" and start < token.start and _counts_else(token, after, material):
        return None
    named = (_PIPE.search(after[:32]) if token.kind != "bare" or not _COUNTED.match(after) else None) or re.search(
        r"\b(?:pipe|line|tube|tubing|plumbing|main)s?(?:'?s)?(?: (?:with|has|have|an?|of|the|is|outside|outer|inner|inside|exterior|interior|external|internal|nominal|diameter|size|about|only|in|just|old|existing|which|that|to|house|from|and|are|it's|running|going)){0,6} $|\b(?:pipe|line|hose|poly|tubing), $|\b(?:delivery|discharge|rising main)(?: is|:|,)? $|\b(?:dn|ø|dia\.?|diameter(?: of)?|pipe size) ?$|\b(?:pipe|line|tube) is [a-z0-9 ]{2,30} of (?:about )?$|\d ?(?:m|ft|feet|metres|meters|foot|')(?: of)? $", before)  # fmt: skip
    sucks = _SUCKS.search(low[max(left, token.start - 70) : token.start])
    if sucks and token.unit in {"in", "mm"}:
        named = sucks
    if _FOR_THE.match(after):
        named = named or re.search("", after)
    if material == "" and not named:
        return None
    if token.kind == "bare" and start == token.start and _AND_THEN.match(low[token.end : end + 45]):
        return None  # "20 cows and one hose"
    if material in {"steel", "pvc", "plastic", "pvc40", "pvc80"} and _BORE.search(
        _FROM.split(after[:30])[0]
    ):
        return None
    if _NO_PIPE.match(after) or (token.kind == "bare" and _MADE_OF.match(after)):
        return None
    known = "" if material == "plastic" else material
    if sucks and not material:
        known = _of_suction(low[max(left, token.start - 90) : token.start])
    word = next((w for key, w, _ in _MATERIALS if key == known), "")
    says = f"{_number(number)} {unit} {word}".strip()
    key, reason = _key(
        known, unit, number, low[max(left, token.start - 30) : min(right, token.end + 40)]
    )
    return Pipe(key, says, reason, start, end)


def _of_suction(before: str) -> str:
    """The material that is told of the suction itself: "the blue polythene suction is 14 m of"."""
    for key, _, pattern in _MATERIALS:
        if re.search(rf"{pattern.pattern} suction\b[^.;\n]*$", before):
            return key
    return ""


_FOR_THE = re.compile(
    r"[ ,]*(?:for the |on the )?(?:suction|delivery|discharge)\b(?! (?:lift|head|height))"
)
_SUCKS = re.compile(r"\b(?:suction(?! lift)|intake|foot valve)\b[^.;\n]*$")
_COUNTED = re.compile(  # what a bare number counts that is no size
    r" (?:times|minutes|mins?|hours?|days?|weeks|years?|people|persons|x|percent|cows|sheep|goats|trees|taps|seconds|metres|feet|starts|cycles)\b"
)
_MADE_OF = re.compile(
    r" (?:old |new |big |large |black |blue )?(?:poly|steel|plastic|pvc|iron|galvani[sz]ed|copper|polyethylene)(?: \w+)? (?:tanks?|barrels?|drums?|tunnels?|posts?|sheds?|roofs?|gates?|cisterns?|totes?|frames?|troughs?|pots?)\b"
)
_NO_PIPE = re.compile(
    r"[ -]*(?:of (?!galv|copper|poly|pvc|steel|pe\b|pex|hdpe|iron)|deep|under (?:the )?(?:ground|soil|grass|surface)|below (?:ground|the)|thick|wall|long|away|apart|times\b|starts\b|minutes?\b|hours?\b|seconds?\b|drip|dripline|dripper|wide"
    r"|pressure gauge|valve|solenoid|meter|filter|ball|connection|outlet|port|inlet|union|hose bib)"
)


def _counts_else(token: Token, after: str, material: str) -> bool:
    """Whether a bare number behind a material is of another thing: "sch 40 PVC, 3 people"."""
    schedules = _SCHEDULES if material.startswith("pvc") else set()
    return token.low in {1, 2, 3, 4} | schedules or not _BARE_ENDS.match(after)


def _number(number: float) -> str:
    return _TEXTS.get(number, f"{number:g}")


def _size(token: Token) -> tuple[float, str] | None:
    """(number, "in" or "mm") where a token may be the size of a pipe."""
    if token.low != token.high or token.low <= 0:
        return None
    if token.unit == "in" and token.low in _INCHES:
        return token.low, "in"
    if token.unit == "mm" and 12 <= token.low <= 125 and token.low == int(token.low):
        return token.low, "mm"
    if token.kind == "bare" and token.low in _INCHES and token.low != int(token.low):
        return token.low, "in"
    if token.kind == "bare" and token.low in {16, 20, 25, 32, 40, 50, 63, 75, 90, 110}:
        return token.low, "mm"
    if token.kind == "bare" and token.low in {1, 2, 3, 4}:
        return token.low, "in"
    return None


def _material(low: str, token: Token, before: str, after: str) -> tuple[str, int, int]:
    """(material, start, end) of the words; "" where none stands beside the size."""
    best: tuple[int, str, int, int] | None = None
    mended = _BUT_IS.match(after)
    if mended:  # "PVC I thought but it's poly"
        after = " " * mended.end() + after[mended.end() :]
    for key, _, pattern in _MATERIALS:
        found = pattern.search(after)
        if found and re.fullmatch(
            r"[ .\"'~-]*(?:(?:of|black|blue|white|buried|the|a|old|new|id|od|nominal|size|\(|pipe|tubing|tube|line|diameter|dia\.?|in|medium|heavy|duty"
            r"|pressure|rolled|coiled|grey|gray|inside|outside|main|hose|,|-|is|soft|rigid|flexible|water|ag|irrigation|class \d+|\d+ ?psi|\d+ ?bar|thick|thick-walled|roll of|coil of|pn ?\d+"
            r"|sdr ?\d+|schedule|rigid|buried|bare|polypipe|wide"
            r"|between|it is|it's|which is|ring of|ring|loop of|length of|run of|suction|delivery|heavy[ -]gauge|gauge|blue[ -]striped?|well|s(?:i)?dr[ -]\d+|dr[ -]?\d+|type [klm])[ ,\"-]*)*",
            after[: found.start()],
        ):
            gap = found.start()
            if best is None or gap < best[0]:
                best = (gap, key, token.start, token.end + found.end())
    if best is None:
        for key, _, pattern in _MATERIALS:
            told = re.match(
                rf"[ ,;]*(?:mm,? )?(?:and )?material(?: is|:)? {pattern.pattern}", after
            )
            if told:
                return key, token.start, token.end + told.end()
            found = next(reversed(list(pattern.finditer(before))), None)
            if found and re.fullmatch(
                r"[ ,(:=-]*(?:(?:pipe|pipes|hose|line|water|of|in|is|the|tube|tubing|\(|main|size|diameter|all|about|dia|od|id|that is|which is|sdr ?\d+|pn ?\d+|with|has|have|an|a|outside|outer|inner|inside|exterior|interior|external|internal|nominal|dn|ø|d|black|rising|between|between them|them|between the two|suction|suction from|well|\d+(?:[.,]\d+)? ?(?:m|ft|foot|metres?|meters?|feet)(?: long)?)[ ,:(-]*)*",
                before[found.end() :],
            ):
                gap = 100 + len(before) - found.end()
                if best is None or gap < best[0]:
                    at = token.start - len(before) + found.start()
                    best = (gap, key, at, token.end)
    return (best[1], best[2], best[3]) if best else ("", token.start, token.end)


def _key(material: str, unit: str, number: float, around: str) -> tuple[str, str]:
    """(key, what was taken for granted) of the pipe that is meant."""
    kinds = _KINDS.get((material or "pe", unit), ())
    said = _SAYS_CLASS.search(around)
    taken = "" if material else "material not told: PE taken"
    if material == "pe" and said and said[1] == "17" and unit == "mm":
        kinds = ("pe100-sdr17",)
    elif material == "pe" and said and said[4] == "9" and unit == "in":
        kinds = ("pe4710-dr9",)
    elif material in {"pe", "pvc"} and not said:
        taken = "pressure class not told"
    for kind in kinds:
        for one in pipes.sizes(kind):
            same = (
                one.size == _INCHES.get(number, "")
                if unit == "in"
                else one.size.split("x")[0] == f"{number:g}"
            )
            if same:
                return f"{kind}/{one.size}", taken
    return "", taken


def bare_material(low: str) -> bool:
    """Whether any material of a pipe is named at all."""
    return any(pattern.search(low) for _, _, pattern in _MATERIALS)
