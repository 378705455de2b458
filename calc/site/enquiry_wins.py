"""Two values of one path that are no contradiction: of a second line, a part, an older saying.

A letter tells of the ditch beside the pipe, of the barn beside the house, of a first guess and then
of what the tape said. Where only one of the values can be meant, it stands; where both can, neither.
"""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece

_WAY = ("way.length", "way.climb", "way.pipe")
_BREAKS = re.compile(
    r"[.;\n!?](?!\d)|, |\(| and (?!a half)| but | while | whereas | plus |: (?=\d)"
)
_HOME = re.compile(
    r"\b(?:house|cabin|home|cottage|hut|kitchen|farmhouse|lodge|trailer|chalet|villa|us|yurt)\b"
)
_LESSER = re.compile(
    r"\b(?:barn|garden|trough|troughs|orchard|greenhouse|shed|stable|stables|paddock|guest ?house|sauna|workshop|studio|neighbou?rs?|field|fields|beds|hydrant|coop|drip)\b"
)
_SECOND = re.compile(
    r"\b(?:second|separate|another|extra|other|third|spare|old|side) (?:\w+ )?(?:line|run|pipe|hose|branch|spur|trench|length|piece|leg)\b|\b(?:branch|spur|ditch|trench|gutter|roof|fence|cable|conduit)\b"
)
_MAIN_LINE = re.compile(r"\bmain (?:line|pipe|run|supply)\b")
_ONWARD = re.compile(
    r" ?(?:more |further |on )?(?:of \w+ )?from (?:the |our )?(?:house|cabin|home|cottage|barn|kitchen) (?:on |down |up |over |out )?to\b"
)
_INDOORS = re.compile(
    r"\b(?:inside|within|indoors|in the (?:house|walls|cabin|attic|cellar|basement)|to the (?:taps|fixtures|shower|sink|garden|barn|trough|stable|field))\b"
)
_TOTAL = re.compile(
    r"\b(?:total(?:ly)?|in total|altogether|all together|all told|in all|overall|whole|entire|all the way)\b"
)
_NET = re.compile(r"\b(?:net|end to end|overall|altogether|difference)\b")
_EXACT = re.compile(
    r"\b(?:to be (?:exact|precise)|exactly|precisely|more (?:exact\w*|precise\w*|accurate\w*)|by (?:the |my )?(?:tape|wheel|level|laser|gps)|(?:tape|laser|level|gps|log|wheel) (?:says?|said|gives?|gave|shows?|showed)|(?:i|we) (?:then )?(?:shot|taped|measured) it)\b"
)
_EARLIER = re.compile(
    r"\b(?:was|were|used to be|had been|originally|at first|once|first thought|thought|guessed|i said|i'd said|i had said|had said|told you)\b[^.;,\d]{0,30}$"
)
_OLD_WORD = re.compile(
    r"\b(?:driller|seller|previous owner|brochure|agent|neighbou?r|he|they)\b[^.;,\d]{0,20}\b(?:said|claimed|promised|told|reckoned|had it at)\b[^.;,\d]{0,20}$|\b(?:per|according to) the (?:driller|seller)\b[^.;,\d]{0,12}$"
)
_WHEN_NEW = re.compile(
    r"[^.;,\d]{0,12}\b(?:when (?:it|the \w+) was (?:new|drilled|dug|built|made)|when new|back then|years ago|at the time|originally|before (?:we|the|i|it)\b)"
)
_TANK = re.compile(r"\b(?:tank|reservoir|cistern|tote|barrel|drum|ibc)s?\b")
_UNDER = re.compile(
    r" ?(?:below|under|lower than|down from|beneath) (?:the |that |our )?(?:\w+ )?(?:tank|reservoir|it\b)"
)
_OF_WATER = re.compile(r"\bwater\b|\bbottom\b|\bfloor of\b")
_TOPMOST = re.compile(r"\b(?:top|lid|roof|overflow|full|rim)\b")


def settled(low: str, path: str, pieces: list[Piece], spans: tuple[tuple[int, int], ...]) -> list[Piece]:  # fmt: skip
    """The pieces of one path that can be meant, of several that say different things."""
    for rule in (_not_in_brackets, _not_aside, _not_older, _the_total):
        kept = rule(low, path, pieces, spans)
        if kept and len(kept) < len(pieces):
            pieces = kept
        if len(pieces) == 1:
            break
    return pieces


_STRUCK = re.compile(
    r"\b(?:hit|struck|found|strike|reached|first|met) (?:the |first )?water(?: was)?(?: at| after| in)?(?: about| around)? $"
)


def struck(low: str, path: str, pieces: list[Piece]) -> list[Piece]:
    """Without the depth at which a driller struck the water, where its level is told as well."""
    if path != "water.level":
        return pieces
    left = [one for one in pieces if not _STRUCK.search(low[max(0, one.start - 40) : one.start])]
    return left or pieces


def _clause(low: str, piece: Piece) -> tuple[str, str]:
    """The words of a piece's own clause, before and after it."""
    begin = max(0, piece.start - 90)
    breaks = [one.end() for one in _BREAKS.finditer(low, begin, piece.start)]
    end = min(len(low), piece.end + 60)
    stop = _BREAKS.search(low, piece.end, end)
    return low[breaks[-1] if breaks else begin : piece.start], low[
        piece.end : stop.start() if stop else end
    ]


def _not_in_brackets(low: str, path: str, pieces: list[Piece], _: object) -> list[Piece]:
    """ "7 m up (4 m of slope, 3 m of house)": brackets hold the parts."""
    if path not in {"way.length", "way.climb", "tank.volume", "store.volume"}:
        return pieces
    return [one for one in pieces if not _in_brackets(low, one)]


def _in_brackets(low: str, piece: Piece) -> bool:
    """Whether a number is one of several that stand within the same brackets."""
    opened = low.rfind("(", max(0, piece.start - 60), piece.start)
    if opened < 0 or ")" in low[opened : piece.start]:
        return False
    return len(re.findall(r"\d[\d.,]*", low[opened : low.find(")", piece.end) + 1])) > 1


def _not_aside(low: str, path: str, pieces: list[Piece], _: object) -> list[Piece]:
    """Without those of a second line, of what lies beyond the house, of a house below its tank."""
    if path == "tank.level":
        return [one for one in pieces if not _beside_tank(*_clause(low, one))]
    if path not in _WAY:
        return pieces
    kept = []
    for one in pieces:
        left, right = _clause(low, one)
        within = path == "way.pipe" and _INDOORS.search(left + " | " + right)
        road = path == "way.length" and re.match(r" ?by (?:the )?(?:road|car|track)\b", right)
        if not (road or _SECOND.search(left) or _ONWARD.match(right) or within):
            kept.append(one)
    kept = kept or pieces
    if path == "way.pipe":
        main = [one for one in kept if _MAIN_LINE.search(_clause(low, one)[0])]
        kept = main or kept
    home = [one for one in kept if _goal(*_clause(low, one)) == "home"]
    lesser = [one for one in kept if _goal(*_clause(low, one)) == "lesser"]
    return [one for one in kept if one not in lesser] if home and lesser else kept


def _goal(left: str, right: str) -> str:
    """What a clause is of: the house, or something beside it; "" where it does not say."""
    said = f"{left}|{right}"
    if _LESSER.search(said):
        return "" if _HOME.search(said) else "lesser"
    return "home" if _HOME.search(said) else ""


def _beside_tank(left: str, right: str) -> bool:
    """Whether a height is a house's below its tank, water's, or that of a tank's top."""
    if _UNDER.match(right) and not _TANK.search(left):
        return True
    return bool(_OF_WATER.search(left) or (_TOPMOST.search(left) and _TANK.search(left)) or re.search(r"\bitself\b|\b(?:its|the) (?:top|lid|rim|roof)\b", left))  # fmt: skip


def _not_older(
    low: str, path: str, pieces: list[Piece], spans: tuple[tuple[int, int], ...]
) -> list[Piece]:
    """Without what a later or more exact saying takes the place of."""
    last = max(pieces, key=lambda one: one.start)
    left, right = _clause(low, last)
    start = next((begin for begin, end in spans if begin <= last.start < end), last.start)
    if _EXACT.search(low[start : last.start][-60:] + "|" + right):
        return [last]
    rough = [one for one in pieces if one.about and one is not last and _near(one, last)]
    if rough and not last.about:
        return [one for one in pieces if one not in rough]
    return [
        one for one in pieces
        if not _OLD_WORD.search(low[max(0, one.start - 60) : one.start])
        and not _WHEN_NEW.match(low[one.end : one.end + 50])
        and not (one is not last and _EARLIER.search(low[max(0, one.start - 50) : one.start]))
    ]  # fmt: skip


def _near(one: Piece, other: Piece) -> bool:
    return one.unit == other.unit and abs(one.low - other.low) <= 0.15 * abs(other.low)


def _the_total(low: str, path: str, pieces: list[Piece], _: object) -> list[Piece]:
    """The whole, where it is named one and is the largest."""
    if path not in {"way.length", "way.climb", "tank.volume", "store.volume", "tank.level"}:
        return pieces
    net = [one for one in pieces if path == "way.climb" and _NET.search(_clause(low, one)[0])]
    if len(net) == 1:
        return net
    most = max(pieces, key=lambda one: abs(one.low))
    alike = all(one.unit == most.unit for one in pieces)
    left, right = _clause(low, most)
    return [most] if alike and _TOTAL.search(f"{left[-45:]}|{right[:30]}") else pieces
