"""Where the pump stands, told after other words of it: "the pump, an old one, sits in the cellar"."""

from __future__ import annotations

import re

from calc.site import enquiry_places as places

_PLACES = (
    r"(?:shed|hut|pump ?-?house|basement|cellar|garage|well ?-?house|barn|utility room|crawl ?space|closet|laundry|pump room|pit|slab|pad|platform|dock|jetty|raft"
    r"|cupboard|workshop|store ?room|boathouse|plant room|boiler room|stable|lean-?to|bank|shore|cabinet|deck|porch|kitchen|scullery|pantry|outbuilding|outhouse|kiosk|box|vault|chamber wall|attic|loft)"
)
_STANDS = re.compile(
    rf"\b(?:sits|stands|lives|is (?:mounted|installed|fixed|housed|located|bolted|placed|standing|sitting)|(?:is|'s)(?: now| just| actually)?)(?: [a-z]+)? (?:down |up |out |right |just )?(?:in|on|at|under|inside|beside) (?:the|an?|our|its|my|their)(?: [a-z-]+){{0,2}}? {_PLACES}\b(?! (?:of the hill|wall of the well))"
)
_OTHER = re.compile(
    r"\b(?:tank|vessel|switch|controller|inverter|batter\w+|panels?|heater|boiler|cylinder|gauge|filter|meter|valve|sensor|transducer|house|cabin|well|spring|cistern|tap|pipe|line|hose|box|accumulator|charger|fuse|breaker|generator|trough|it all|everything|one of|drum|ibc|tote|drinker|sink|shower)\b"
)
_IT = re.compile(
    r"^[\s,-]*(?:and |but |so )?(?:it|this one|the new one|the one we have|she|that one)\b"
)
_HAND = re.compile(
    r"\b(?:hand|sewage|septic|heat|fire|circulation|pool)[ -]?pump|\b(?:old|spare|second|other|petrol|fire) pump\b"
)
_END = re.compile(r"[.;?!\n](?!\d)")
_BOTH = re.compile(
    rf"\bpump(?:,? and|,| &| plus) (?:the |its |our |a )?(?:pressure |bladder )?(?:tank|vessel|accumulator|controller|switch|controls|filter)s? (?:are|sit|stand|live|is|sits|both)(?: both| all| together| down| out| just)* (?:in|on|at|under|inside) (?:the|an?|our|its|my) (?:[a-z-]+ ){{0,2}}?{_PLACES}\b"
)
_OURS = re.compile(r"\bpumps?\b|\bjet\b")


def _begin(clean: str, at: int) -> int:
    """Where the sentence of a place begins; the point of a number ends none."""
    ends = [one.end() for one in _END.finditer(clean, max(0, at - 200), at)]
    return ends[-1] if ends else max(0, at - 200)


def stands(clean: str) -> tuple[int, int] | None:
    """(start, end) of words that put the pump out of the water, by the sentence's subject."""
    both = _BOTH.search(clean)
    if both and not _HAND.search(both.group()):
        return both.span()
    for match in _STANDS.finditer(clean):
        begin = _begin(clean, match.start())
        said = clean[begin : match.start()]
        if len(said) > 160:
            continue
        its = _IT.match(said)
        last = places.noun(clean[max(0, begin - 120) : begin]) if its else ""
        hit = next(reversed(list(_OURS.finditer(said))), None)
        rest = said[hit.end() :] if hit else said[its.end() :] if its else ""
        spoken = hit is not None or last == "PUMP"
        if (
            not spoken
            or _OTHER.search(rest)
            or _HAND.search(clean[max(0, begin - 60) : match.end()])
        ):
            continue
        before = said[: hit.start()] if hit else ""
        if re.search(
            r"\b(?:from|to|by|with|for|of|beside|near|above|below|feeds?|than) (?:the |our |my |a )?(?:[a-z]+ )?$",
            before,
        ):
            continue  # the pump is named, and is not what is told of
        return match.start(), match.end()
    return None
