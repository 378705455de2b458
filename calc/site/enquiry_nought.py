"""Noughts that a letter tells in words: panels that lie flat, a plot without a slope."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece

_TILT = re.compile(
    r"\b(?:panels?|modules?|array)\b[^.;\n]{0,35}\b(?:flat|horizontal(?:ly)?) (?:on|onto|to) (?:the|a|our|its) (?:\w+ )?roof\b|\b(?:panels?|modules?|array)\b[^.;\n]{0,25}\b(?:lies?|lying|laid|mounted|fixed|is|are|sits?) (?:flat|horizontal(?:ly)?)\b(?! (?:against|on the wall))"
)
_SLOPE = re.compile(
    r"\bslope ?[:,=-]? ?(?:is )?(?:none|nil|zero|nothing)\b|\bno slope (?:to speak of|at all|worth)\b"
)
_DRIPPERS = re.compile(r"\b(?:drippers?|emitters?|drip ?lines?)\b")


def noughts(low: str) -> list[Piece]:
    """All that stands in a masked, folded text."""
    found = []
    tilt = _TILT.search(low)
    if tilt:
        found.append(Piece("power.tilt", *tilt.span(), 0.0, 0.0, "°"))
    slope = _SLOPE.search(low) if _DRIPPERS.search(low) else None
    if slope:
        found.append(Piece("drip.slope", *slope.span(), 0.0, 0.0, "%"))
    return found
