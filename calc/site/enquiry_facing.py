"""Where panels look: "facing south-west", "azimuth: se", "north-facing"."""

from __future__ import annotations

import re

_AIMED = re.compile(
    r"(?:\b(?:azimuth|orientation|facing|direction|aspect) *[:=] *|\btilt[^.;\n]{0,20}?(?:°|deg(?:rees)?),? )(?:to(?:wards)? (?:the )?|due )?"
    r"(north|south|east|west|[ns][ew]?(?![a-z])|[ew](?![a-z]))[ -]?(east|west)?\b"
)
_FACING = re.compile(
    r"\b(?:fac(?:e|es|ing)|look(?:s|ing)?|point(?:s|ing|ed)?|oriented|aimed|looking)(?: (?:due|straight|true|roughly|about|to(?:ward(?:s)?)?|the|magnetic|more or less|almost|directly))* (north|south|east|west|[ns][ew]?(?![a-z])|[ew](?![a-z]))(?:[ -]?(east|west))?\b|\b(north|south|east|west)(?:[ -]?(east|west))?[ -]facing\b"
)


def facing(low: str) -> list[tuple[str, int, int]]:
    """(key of the direction, start, end) of all that a folded text says of where panels look."""
    found: list[tuple[str, int, int]] = []
    if not re.search(r"panel|array|solar|pv|roof|module", low):
        return []
    for match in _AIMED.finditer(low):
        found.append((_key(match[1], match[2] or ""), match.start(), match.end()))
    for match in _FACING.finditer(low):
        they = re.search(r"\b(?:they|these|all|both)(?: all| both)? ?$", low[: match.start()][-20:])
        wide = 300 if they else 80
        if re.search(
            r"panel|array|solar|pv|module", low[max(0, match.start() - wide) : match.end() + 40]
        ):
            first, second = match[1] or match[3], match[2] or match[4] or ""
            found.append((_key(first, second), match.start(), match.end()))
    return found


def _key(first: str, second: str) -> str:
    return (first if len(first) <= 2 else first[0]) + second[:1]
