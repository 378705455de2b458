"""Lengths of the pipe through which a pump draws its water, told apart from those that it pushes through."""

from __future__ import annotations

import re

from calc.site import enquiry_places as places
from calc.site.enquiry_model import Context

_TO_PUMP = re.compile(
    r"(?:\bfrom (?:the |our )?(?:\w+ )?|(?:^|[.;\n] ?)(?:the )?)(?:well|creek|stream|pond|lake|river|cistern|spring|water|foot valve)"
    r" (?:up |over )?to (?:the |our )?(?:\w+ )?pump\b"
)
_AT_MOST = re.compile(r"\b(?:max(?:imum)?\.?|up to|at most|no more than)(?: of| about)? $")
_SUCTION_IS = re.compile(r"\bsuction $")
_HOSE = re.compile(
    r"[ ,]*(?:of |long\b|in |through |\d|x ?\d)|[ ,]*(?:\w+ ){0,2}(?:pipe|hose|line|poly)"
)


_NAMED = re.compile(
    r"\b(?:suction\b(?! (?:lift|head|height|side is|is (?:too|not)))|intake (?:pipe|line|hose)\b|(?:pipe|hose|line) (?:reaches |goes |leads )?down (?:in)?to (?:it|the (?:water|river|creek|pond|lake|stream))\b|(?:draw|suck|pull)(?:s|ing)?\b[^.;]{0,40}\b(?:through|with an?|via|using)\b)"
)
_PUSHES = re.compile(
    r"\b(?:then|deliver\w*|discharge|from (?:the|our|my) pump|to (?:the|our|my|a) (?:\w+ )?(?:house|cabin|tank|barn|garden|trough|field|yard|hut|farm|taps?|cottage)|push(?:es|ing)?|pumps (?:it|up|to|the)|sends|feeds|lifts?|lifted|house|from there|after the pump|well is|bore\w* is)\b"
)
_THEN = re.compile(r"\bthen\b[^.;]{0,20}$")
_AS_LONG = re.compile(r" ?(?:long\b|in length\b|in total\b|total\b|of (?:pipe|hose|line|it|run)\b)")
_OF_IT = re.compile(r" ?(?:$|[,.;)\n]|with\b|and\b|from\b|down to\b|in\b|through\b)")
_MEASURES = re.compile(
    r"\b(?:length|long|run|runs|hose|pipe|line|is|goes|measures)(?: (?:about|around|some|only|of|is|maybe|roughly|for|just|over|nearly|a))*[ :=,(]*$"
)


def _its_own(near: Context) -> bool:
    """Whether a sentence that speaks of the suction goes on to its length: "the suction is one
    inch poly about 40 feet long"."""
    named = next(reversed(list(_NAMED.finditer(near.before))), None)
    if named is None or _PUSHES.search(near.before, named.end()):
        return False
    if _AS_LONG.match(near.right):
        return True
    plain = _OF_IT.match(near.right) and not re.search(
        r"\b(?:lift|deep|depth|below|down|level)\b", near.left
    )
    return bool(plain and _MEASURES.search(near.left[-40:]) and near.last_pipe != "way.pipe")


def of_suction(near: Context, at: places.Between, found: dict[str, float]) -> None:
    """The pipe from the water to a pump that is out of it is its suction."""
    around = near.before + near.after
    draws = (
        re.search(r"suction|intake|suck|\b(?:draw|pull)(?:s|ing)?\b[^.;]{0,20}\bthrough", around)
        or "foot valve" in near.left[-30:]
        or near.next_pipe == "suction.pipe"
        or near.last_pipe == "suction.pipe"
    )
    if _SUCTION_IS.search(near.left) and not (
        near.next_pipe or near.last_pipe or _HOSE.match(near.right)
    ):
        found["water.level"] = max(found.get("suction.length", 0), 6)  # a lift, or a pipe's length
    if _AT_MOST.search(near.left):
        found.pop("suction.length", None)  # what a pump can
    if "suction.length" in found and not draws:
        del found["suction.length"]
    if _its_own(near) and not found.get("suction.length"):
        for path in ("way.length", "well.depth"):
            found.pop(path, None)
        found["suction.length"] = 8.5
    if "suction.length" in found and _THEN.search(near.left):
        found["way.length"] = found.pop("suction.length")
    if at.before == "PANELS" and not near.next_pipe:
        found.pop("way.length", None)
    to_pump = re.search(
        _TO_PUMP.pattern + r"(?:,? (?:is|are|of|with|runs|there|about|by|a|it|is it))*[ :]*$",
        near.left[-90:],
    ) or _TO_PUMP.match(near.right.lstrip())
    if "way.length" in found and to_pump and "submersible" not in near.mail:
        found["suction.length"] = found.pop("way.length") + 1
