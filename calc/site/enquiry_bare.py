"""Numbers without a unit that words beside them leave no doubt of: by a label, by the letter's own."""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site import enquiry_weigh
from calc.site.enquiry_cues import RULES
from calc.site.enquiry_model import Context, Piece, Token
from calc.site.enquiry_numbers import unit_after
from calc.site.enquiry_rules import weigh

_LABEL = re.compile(r"[(\[](?:in )?([a-z0-9²³/\". ]{1,9})[)\]] ?[:=]? {0,3}$")
_VOLTAGE = re.compile(r"\b(?:voltage|v\.?oc)(?: is| of)?[ :=]*$")
_TILT = re.compile(r"\b(?:tilt(?:ed)?|inclination)(?: is| at| of| angle)?[ :=]*$")
_TOLD = {"water.level", "well.static", "pump.height", "well.depth", "way.climb", "way.length"}
_ENDS = re.compile(
    r" ?(?:$|[,.;)\n-]|(?:down|deep|up|higher|lower|above|below|away|when|in (?:late |the |a )?(?:summer|dry|winter|august|july)"
    r"|at the (?:end|worst|lowest)|and|but|from|its|it's|it|with|the|our|we|house|water|static|pump|submersible|makes|gives|yields|on a|according|so)\b)(?! ?(?:am|pm|psi|people|%))"
)
_DEEP_IS = re.compile(  # "well is two hundred forty", "ours is only 85"
    r"(?:^|[.,;:\n] ?|\b(?:the|our|my|this|and|but) )(?:well|bore|bore ?hole|hole|ours)(?:'s| is| was| goes)(?: (?:only|about|just|down|to|around))* $"
)
_SWITCH = re.compile(
    r"switch|cut[ -]?(?:in|out|s)|kicks|pump|turns|comes on|shuts off|comes back|goes off"
)
_PRESSED = re.compile(
    r" ?(?:$|[,.;:)/\n-]|(?:and|off|on|out|in|cut|cuts|when|then|to|it|but|is|or|kick\w*|stop\w*|start\w*|for|pressure|precharge|air|comes|with|pounds|shuts|turns|at)\b)"
)
_CHARGE = re.compile(r"\b(?:pre-?charged?|charge|air)\b[^.;,\d]{0,14}$")
_CHARGED = ("pressure_tank.precharge",)
_OF_PANELS = re.compile(r"\b(?:strings?|rows?|panels?|sets?|groups?|lots?) of $")
_IN_SERIES = re.compile(
    r" ?(?:in (?:series|parallel|a|one|each|the)\b|panels|strings|modules|people|times)"
)
_FOR_SO_LONG = re.compile(r"\b(?:on|off|runs?|running|stops?) for (?:about |only )*$")
_TIMED = re.compile(
    r"\b(?:timer|boiler kicks|heater kicks|fan|float|o'?clock|heating|thermostat|in the (?:morning|evening))\b"
)
_CLOCK = re.compile(r" ?(?:am|pm|times|minutes|hours|seconds|days|a day|%)")


def labelled(low: str, numbers: list[Token]) -> None:
    """ "Depth (m): 62": the unit stands in the label."""
    for token in numbers:
        if token.kind == "bare" and _VOLTAGE.search(low, max(0, token.start - 16), token.start):
            token.kind, token.unit = "voltage", "V"
            continue
        tilted = token.kind == "bare" and 0 <= token.low < 90
        if tilted and _TILT.search(low, max(0, token.start - 22), token.start):
            token.kind, token.unit = "angle", "°"
            continue
        label = _LABEL.search(low, max(0, token.start - 16), token.start)
        if token.kind != "bare" or label is None:
            continue
        unit = unit_after(f"{label[1].strip()} ", 0)
        if unit is not None:
            token.kind, token.unit = unit[0], unit[1]
            token.extra["as"] = label.start()


_SYSTEM = frozenset(["flow", "volume", "pressure", "daily", "each"])
_US = frozenset(["gpm", "gph", "gal", "psi", "gal/day"])
_METRIC = frozenset(["L", "L/min", "L/s", "L/h", "m³", "m³/h", "bar", "kPa", "L/day", "m³/day"])


def usual(numbers: list[Token]) -> str:
    """The unit of all lengths of a letter, feet where it has none and counts in gallons or psi; ""
    where it has several."""
    units = {one.unit for one in numbers if one.kind == "length" and not one.why}
    units -= {"in", "mm", "cm", "mi", "km", "yd"}
    if not units:
        others = {one.unit for one in numbers if one.kind in _SYSTEM and not one.why}
        return "ft" if others & _US and not others & _METRIC else ""
    return units.pop() if len(units) == 1 else ""


def length(token: Token, near: Context, unit: str) -> tuple[Token, str]:
    """(the number in the letter's unit of length, its path), where a cue stands just before it."""
    if near.mail[token.start : token.end] in {"one", "half", "a half"}:
        return token, ""  # "for the dug one"
    if not unit or token.low != token.high or not 1 <= token.low <= 2000:
        return token, ""
    if not _ENDS.match(near.right) or re.search(r":[ ]*$", near.left):
        return token, ""
    trial = replace(token, kind="length", unit=unit, extra=dict(token.extra))
    weights = weigh(trial, near)
    path = max(weights, key=lambda one: weights[one], default="")
    others = [one for one in weights.values() if one > weights[path] - 1.0] if path else []
    cued = any(
        rule.path == path and rule.left and rule.fits(near.left[-110:], near.right)
        for rule in RULES["length"]
    )
    if not path and _DEEP_IS.search(near.left):
        return trial, "well.depth"
    if path == "way.length" and not re.search(r"\d ?(?:m|ft|feet|met)", near.before):
        return token, ""
    return (trial, path) if path in _TOLD and cued and len(others) == 1 else (token, "")


def pressure(token: Token, near: Context) -> Piece | None:
    """A pressure of a switch that its words leave no doubt of."""
    if not 10 <= token.low <= 150 and not 1 <= token.low <= 8:
        return None
    if not _SWITCH.search(near.before + near.right) and not _CHARGE.search(near.left):
        return None
    if not _PRESSED.match(near.right) or _FOR_SO_LONG.search(near.left):
        return None
    if re.match(r"/\d", near.right) or _TIMED.search(near.before + near.right):
        return None
    if token.low < 10 and near.mail[token.start].isalpha():
        return None  # "one thing", "the other one"
    if _OF_PANELS.search(near.left) or _IN_SERIES.match(near.right):
        return None
    trial = replace(token, kind="pressure", unit="psi" if token.low >= 10 else "bar")
    weights = enquiry_weigh.pressure(trial, near)
    path = next((one for one in ("pump.cut_in", "pump.cut_out", *_CHARGED) if one in weights), "")
    if not path or _CLOCK.match(near.right):
        return None
    return Piece(path, token.start, token.end, token.low, token.high, trial.unit, weight=4.5,
                 reason="the usual unit, which was not told")  # fmt: skip
