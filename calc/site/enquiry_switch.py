"""The two pressures of a pump's switch and the air of its tank, told by verbs in either order, where
one unit or none stands with both: "on at 20, off at 40", "45 psi switch off 25 on", "starts at two
and a quarter bar and stops at three and a quarter", "the needle goes between 2 and 3.5 bar"."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece, Token
from calc.site.enquiry_numbers import NUMBER, value

_UNIT = r"(?:psi|psig|pounds|lbs?|bars?|kpa|kilopascals?)\b"
_ON = (
    r"\b(?:cut(?:s|ting)?[ -]?(?:back )?in|com(?:es?|ing) (?:back )?(?:on|in)|comes? back|kick(?:s|ing)? (?:back )?(?:on|in)"
    r"|(?:switch|turn|click|trip|go)(?:es|s|ing)? (?:back )?on|(?:re)?starts?|starting|closes"
    r"|back (?:in|on)|in|on)\b"
)
_OFF = (
    r"\b(?:cut(?:s|ting)?[ -]?(?:out|off)|(?:shut|switch|turn|click|kick|trip|go)(?:es|s|ting|ing)? (?:itself )?(?:off|out|down)"
    r"|shuts|stops?|stopping|quits?|quitting|opens|out|off)\b"
)
_AT = (
    r"(?:[ ,:=]*(?:pressure|is|was|at|set|to|around|about|roughly|when|it|gets|hits|reaches|drops|falls"
    r"|i think|nearly|just|under|over|below|above|again|up)\b)*[ ,:=]+"
)
_ENDS = r"(?! ?(?:am|pm|a\.m|p\.m|o'?clock|h\b|hours?|hrs|minutes?|min\b|seconds?|sec\b|s\b|times?|days?|%|l\b|lit|gal|gpm|m\b|met|ft|feet|foot|v\b|volts?|w\b|a\b|amps?|in the (?:morning|evening)|at night|x\b|°|mm|cm|inch|in\b)|[.,:]?\d|/\d)"
_OTHER = r"(?! ?-?(?:cm|mm|m\b|met|ft|feet|foot|l\b|lit|gal|v\b|volts?|w\b|°|%|deg|min|sec|hours?|h\b|days?|inch|in\b))"
_N1 = rf"(?P<n1>{NUMBER}){_OTHER}(?: ?-?(?P<u1>{_UNIT}))?"
_N2 = rf"(?P<n2>{NUMBER}|(?<=[-/–])\d[\d.]*\d|(?<=[-/–])\d)(?: ?-?(?P<u2>{_UNIT}))?"
_GAP = r"(?:[^.;\n\d¤]|\.(?= )){0,30}?"
_STARTS_FIRST = (
    re.compile(rf"{_ON}{_AT}{_N1}{_GAP}{_OFF}{_AT}{_N2}{_ENDS}"),
    re.compile(
        rf"{_N1},? (?:psi |bar )?(?:for )?{_ON}[ ,/]+(?:and |& )?(?:at )?{_N2} (?:for )?{_OFF}"
    ),
)
_STOPS_FIRST = (
    re.compile(
        rf"\b(?:to|at|hits|reaches) {_N1}{_GAP}{_OFF}[^.\n\d¤]{{0,30}}?\b(?:at|until|below|under) {_N2},? (?:it |the pump |she )?{_ON}"
    ),
    re.compile(
        rf"\b(?:to|at|hits|reaches) {_N1}{_GAP}{_OFF}[^.\n\d¤]{{0,20}}?{_ON}{_AT}{_N2}{_ENDS}"
    ),
    re.compile(rf"{_OFF}{_AT}{_N1}{_GAP}{_ON}{_AT}{_N2}{_ENDS}"),
    re.compile(
        rf"{_N1},? (?:for )?(?:switch )?{_OFF}[ ,/]+(?:and |& )?(?:at )?{_N2} (?:for )?{_ON}"
    ),
)
_TO = r"(?: ?(?:-|/|–) ?| (?:and|to) )"
_BOTH = (
    re.compile(
        rf"\b(?:pressure ?)?switch(?:es)?\b(?: settings?| pressures?| points?)?(?:[ :,=]*\b(?:is|are|set|at|to|of|between|from|on|runs|works)\b)*[ :,=]+{_N1}{_TO}{_N2}{_ENDS}"
    ),
    re.compile(
        rf"\b(?:needle|gauge|dial|pump|booster|jet pump|sub|cycl(?:es|ing)|works?|swings?|pressure)\b[^.;\n\d¤]{{0,40}}\bbetween (?:about )?{_N1} and (?:about )?{_N2}{_ENDS}"
    ),
    re.compile(rf"\b(?:pressure range|working range|range of pressure)\b[^.;\n\d¤]{{0,25}}{_N1}{_TO}{_N2}{_ENDS}"),
    re.compile(rf"\b(?:pump|booster),? {_N1}(?: ?- ?|/){_N2}(?<=psi|bar|kpa)"),
    re.compile(rf"\b(?:at|between|from|is|it's|reads?|shows?) {_N1}{_TO}{_N2}(?= on the (?:dial|gauge|clock|manometer|needle))"),
    re.compile(rf"\b(?:pump|booster|jet) (?:does|runs|works|is set(?: at| to)?|goes) {_N1}{_TO}{_N2}{_ENDS}"),
)  # fmt: skip
_ONE = (
    ("pump.cut_out", re.compile(rf"{_N1} ?-?cut[ -]?(?:out|off)\b")),
    ("pump.cut_in", re.compile(rf"{_N1} ?-?cut[ -]?in\b(?! ?\d)")),
    ("pressure_tank.precharge", re.compile(
        rf"\bpre-?charged?\b(?: pressure| air)?(?:[ :=,]*\b(?:is|at|to|of|with|set)\b)*[ :=]*{_N1}{_ENDS}")),
    ("pressure_tank.precharge", re.compile(
        rf"\b(?:vessel|tank|bladder)\b[^.;\n\d¤]{{0,25}}\b(?:blown up|pumped up|charged up|inflated|let down) (?:to |at |with )?{_N1}{_ENDS}")),
    ("pressure_tank.precharge", re.compile(
        rf"\b(?:vessel|tank|bladder)'?s? air (?:is |was )?(?:[a-z]+ )?(?:set |pumped )?(?:at |to ){_N1}{_ENDS}")),
)  # fmt: skip
_HEATED = re.compile(r"\bexpansion (?:tank|vessel)\b")  # a heater's, which is told otherwise
_ABOUT = re.compile(
    r"\b(?:pumps?|sub|switch\w*|psi|bars?|kpa|pressure|pounds|lbs|jet|booster|cut[ -]?(?:in|out|s)|submersible|gauge|needle|dial)\b"
)
_NO_PUMP = re.compile(  # what opens, starts or closes and is no pump
    r"\b(?:relief|safety|boiler|heater|thermostat|fan|float|level|drip|regulator|reducer|reducing|timer|heating|sump|alarm|sprinklers?|fence)\b[^.;\n]{0,30}$"
)
_SPANS = {
    "psi": (10, 150),
    "bar": (0.5, 10),
    "kPa": (60, 1000),
}  # usual; common practice, no source
_LEAST, _MOST = 1.12, 4.0  # times that a switch stops above where it starts; our choice
_BARE = 28  # psi from which on an upper pressure without a unit is none of a clock; our choice


def _unit(said: str | None, number: float, low: str) -> str:
    """The unit that was said; else the one that such a number has by its size."""
    if said:
        return "kPa" if said.startswith("k") else "bar" if said.startswith("bar") else "psi"
    if number >= 100 and "kpa" in low:  # noqa: PLR2004
        return "kPa"
    return "psi" if number >= _BARE else "bar" if re.search(r"\bbars?\b", low) else ""


def _can_be(start: float, stop: float, unit: str) -> bool:
    least, most = _SPANS.get(unit, (1.0, 0.0))
    return least <= start < stop <= most and _LEAST <= stop / start <= _MOST


def switched(low: str, numbers: list[Token]) -> list[Piece]:
    """Pieces of all that is told of the pressures at which a pump starts and stops."""
    found: list[Piece] = []
    for patterns, first in ((_STARTS_FIRST, True), (_STOPS_FIRST, False), (_BOTH, True)):
        for pattern in patterns:
            for match in pattern.finditer(low):
                if not any(one.start < match.end() and match.start() < one.end for one in found):
                    found += _two(low, match, first, numbers)
    for path, pattern in _ONE:
        for match in pattern.finditer(low):
            unit = _unit(match["u1"], max(value(match["n1"])[0], _BARE), low)
            number = value(match["n1"])[0]
            least, most = _SPANS[unit]
            if path == "pressure_tank.precharge" and _HEATED.search(low[max(0, match.start() - 90) : match.end()]):  # fmt: skip
                continue
            alone = not any(one.start < match.end() and match.start() < one.end for one in found)
            if least <= number <= most and alone and _sure(match, 1, numbers):
                found.append(_piece(path, match, 1, unit))
    return found


def _piece(path: str, match: re.Match[str], which: int, unit: str) -> Piece:
    number, end = value(match[f"n{which}"])[0], match.end(f"u{which}")
    return Piece(
        path,
        match.start(f"n{which}"),
        max(end, match.end(f"n{which}")),
        number,
        number,
        unit,
        weight=7,
        reason="" if match["u1"] or match.groupdict().get("u2") else "the usual unit, which was not told",
    )  # fmt: skip


def _sure(match: re.Match[str], which: int, numbers: list[Token]) -> bool:
    """Whether a number is none that was taken back, or that is somebody else's."""
    start, end = match.span(f"n{which}")
    return not any(one.why and one.start < end and start < one.end for one in numbers)


def _two(low: str, match: re.Match[str], first: bool, numbers: list[Token]) -> list[Piece]:
    start, stop = value(match["n1"])[0], value(match["n2"])[0]
    if not first:
        start, stop = stop, start
    unit = _unit(match["u2"] or match["u1"], max(start, stop), low)
    around = low[max(0, match.start() - 90) : match.end() + 60]
    if _NO_PUMP.search(low[max(0, match.start() - 40) : match.start()]):
        return []
    if not _ABOUT.search(around) or not _can_be(start, stop, unit):
        return []
    if not (_sure(match, 1, numbers) and _sure(match, 2, numbers)):
        return []
    low_at, high_at = (1, 2) if first else (2, 1)
    return [
        _piece("pump.cut_in", match, low_at, unit),
        _piece("pump.cut_out", match, high_at, unit),
    ]
