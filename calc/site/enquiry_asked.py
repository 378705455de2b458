"""Answers written under the questions of earlier mail: the question says what the number is."""

from __future__ import annotations

import re

from calc.site import enquiry_places as places
from calc.site import enquiry_words as words
from calc.site.enquiry_counts import named_in
from calc.site.enquiry_model import Token
from calc.site.enquiry_numbers import NUMBER, value

_QUESTION = re.compile(
    r"^[ ]*(?:>[> ]*|q\d*[:.)] ?(?![^\n]*[?:] *\S))(?P<asked>[^\n]{3,160}?)[?:]?[ ]*$", re.M
)
_QUANTITY = re.compile(r"\b(?:pump|well|tank|people|use|power|daily|panels|pipe|spring|house)\b")
_NUMBERED = re.compile(r"\(?\d{1,2}[.)]")
_NEXT = re.compile(r"^[ ]*>", re.M)
_ASKED = tuple((path, kind, re.compile(pattern)) for path, kind, pattern in (
    ("water.level", "length", r"\b(?:water level|static|how (?:deep|far down) (?:is|does|down is) the water|depth (?:to|of) (?:the )?water|suction lift|pump\b[^.;\n]{0,25}\b(?:above|over|higher than) (?:the |your )?(?:water|creek|stream|river|pond|lake)|how far (?:down )?(?:below|under)[^?]*water|water (?:is|sits|stands|below))"),
    ("pump.height", "length", r"\b(?:how deep (?:is|does|did)[^?]*\bpump|pump (?:depth|setting)|depth of (?:the )?pump|where (?:does|is) (?:the|your) pump)"),
    ("well.depth", "length", r"\b(?:how deep is (?:the|your) (?:well|bore\w*)|depth of (?:the |your )?(?:well|bore\w*)|well depth)"),
    ("suction.length", "length", r"\b(?:suction(?: (?:line|pipe|hose|side))?)\b(?! (?:lift|height))"),
    ("tank.level", "length", r"\b(?:how (?:high|far|much)[^?]*\btank\b[^?]*(?:above|up|higher)|height of the tank|tank height|how high (?:is|does|up is|above)[^?]*tank)"),
    ("place.altitude", "length", r"\b(?:altitude|above sea|elevation of (?:the|your) (?:site|place)|what elevation|^elevation$)"),
    ("way.climb", "length", r"\b(?:how (?:high|much higher|much lower|far (?:up|above|below|down))|height|rise|climb|vertical|elevation|lift|drop|fall|uphill)"),
    ("power.cable", "length", r"\b(?:batter\w+|panels?|controller|inverter)\b[^?]*\bto\b|cable|\b(?:electricity|power|mains)$"),
    ("way.length", "length", r"\b(?:how far|distance|how long|length|how much pipe|pipe run|run of pipe)"),
    ("water.yield", "flow", r"\b(?:yield|how much water|flow|gives?|recover|produce|bucket)"),
    ("use.daily", "daily", r"\b(?:how much water|use a day|daily|consumption)"),
    ("beds.area", "area", r"\b(?:area|garden|how (?:big|large)|beds?|irrigat|drip)"),
    ("pressure_tank.precharge", "pressure", r"\b(?:pre-?charge|air pressure|air in)"),
    ("pump.cut_in", "pressure", r"\b(?:cut[ -]?in|comes? on|turns? on|start)"),
    ("pump.cut_out", "pressure", r"\b(?:cut[ -]?out|shuts? off|turns? off|stop)"),
    ("pump.set", "pressure", r"\b(?:set pressure|what pressure (?:is|does)[^?]*(?:set|hold)|constant pressure)"),
    ("pressure_tank.volume", "volume", r"\b(?:pressure tank|bladder|accumulator|pressure vessel)"),
    ("power.panel", "power", r"\b(?:panels?)"), ("power.voltage", "voltage", r"\b(?:voltage|volts?|battery|system|power)"),
    ("power.capacity", "charge", r"\bbatter"), ("power.tilt", "angle", r"\btilt|angle"),
    ("place.latitude", "angle", r"\blatitude|where are"),
    ("store.hours", "time", r"\bhours\b"), ("store.days", "time", r"\bdays\b"),
))  # fmt: skip
_BELOW = re.compile(r"\b(?:below|under|lower|fall|drop|down)\b")


def questions(low: str) -> list[tuple[int, int, str]]:
    """(start, end of the answer's first lines, question) of every question that is answered below."""
    found: list[tuple[int, int, str]] = []
    for match in _QUESTION.finditer(low):
        following = low[match.end() + 1 :]
        if not following.strip() or _NEXT.match(following):
            continue
        stop = re.search(r"\n[ ]*\n|\n[ ]*>", following.lstrip("\n "))
        skipped = len(following) - len(following.lstrip("\n "))
        if _NEXT.match(following[skipped:]):
            continue
        end = match.end() + 1 + (skipped + stop.start() if stop else len(following))
        asked = match["asked"]
        if (
            found
            and len(asked.split()) <= 2
            and not _NUMBERED.match(asked)
            and not _QUANTITY.search(asked)
        ):
            asked = f"{found[-1][2]} {asked}"  # "Length?" asks on of the same thing
        found.append((match.end() + 1, end, asked))
    return found


def asked_of(token: Token, asked: list[tuple[int, int, str]]) -> str:
    """The question that a number stands under; "" where none does."""
    return next((question for start, end, question in asked if start <= token.start < end), "")


def answered(token: Token, question: str, low: str) -> tuple[str, float]:
    """(path, sign) of a number under a question; ("", 1) where the question does not say."""
    for path, kind, pattern in _ASKED:
        thin = kind == "length" and token.unit in {"mm", "in"}  # a diameter
        if kind == token.kind and not thin and pattern.search(question):
            return path, _sign(path, question, low[token.end : token.end + 20])
    if token.kind == "volume" and re.search(r"\b(?:daily|a day|per day|each day)\b", question):
        token.kind, token.unit = "daily", f"{token.unit}/day"
        return "use.daily", 1.0
    if token.kind == "volume" and re.search(r"tank|cistern|reservoir|store", question):
        at = re.search(r"\btank|cistern|reservoir", low)
        role = words.tank_role(low, at.start(), at.end()) if at else ""
        if words.STORE.search(question):
            role = "store"
        if words.ABOVE.search(question):
            role = "above"
        return {"above": "tank.volume", "store": "store.volume"}.get(role, ""), 1.0
    return "", 1.0


def _sign(path: str, question: str, after: str) -> float:
    if path in {"water.level", "pump.height"}:
        return -1.0
    if path != "way.climb":
        return 1.0
    down = bool(_BELOW.search(question)) and not re.search(r"\babove\b", question)
    first = places.noun(re.split(r"\babove\b|\bbelow\b", question)[0])
    if re.match(r" ?(?:below|lower|down|downhill)", after):
        down = True
    elif re.match(r" ?(?:above|higher|up)", after):
        down = False
    source = first in {*places.SOURCES, "TANK", "ABOVE", "PUMP"} and "above" in question
    return -1.0 if down != source else 1.0


def counted(low: str, asked: list[tuple[int, int, str]]) -> list[tuple[str, float, int, int]]:
    """(path, number, start, end) of bare numbers under "how many people", "how many showers"."""
    found = []
    for start, end, question in asked:
        many = re.search(r"\b(?:how many|number of)\b(.*)", question)
        said = re.match(
            rf"\s*(?:(?:about|there are|we are|we have|just|only|around) )*(?P<n>{NUMBER})\b(?! ?(?:m|ft|psi|l|gal|in)\b)",
            low[start:end],
        )
        if not many or not said:
            continue
        named = named_in(many[1])
        if named:
            number = value(said["n"])[0]
            if number == int(number) and number >= 0:
                found.append((named, number, start + said.start("n"), start + said.end("n")))
    return found
