"""What an enquiry tells in words: the source, the pump and its control, names; none that is only asked for."""

from __future__ import annotations

import re

from calc.site import enquiry_machines, enquiry_names, enquiry_stands, enquiry_words
from calc.site.enquiry_model import Found, Piece
from calc.site.enquiry_supposed import of_a_machine, requested

_OFFERED = {"power.source", "power.battery", "pump.control", "pump.placement", "pump.works"}
_PLACED = {"pump.placement", "pump.works"}
_ASKS = re.compile(
    r"(?:^|[,;:] ?|\b(?:and|but|so|or) )(?:is|are|would|will|could|should|can|do|does)\b"
)
_THERE = re.compile(r"\b(?:my|our|the|this|that|we have|i have|have got|runs? on|running on)\b")


_ROWS = re.compile(r"\b(?:drippers?|emitters?|drip ?lines?)\b")
_BED = re.compile(r"\b(?:ground|lines?|rows?|field|plot|beds?)(?: is| are)? $")


def _wanted(clean: str, start: int) -> bool:
    """Whether a question asks about a thing of a kind, and not about the writer's: "is solar
    worth it?", "will a constant pressure pump fix it?"."""
    begin = max(clean.rfind(sign, 0, start) for sign in ".!?\n") + 1
    said = clean[begin:start].strip()
    asks = list(_ASKS.finditer(said))
    whole = said + " " + clean[start:].split("?")[0]
    if " or " in whole and not re.search(r"[.!\n]", whole) and not _THERE.search(said):
        return True  # "pump in the well or on the well?"
    return bool(asks) and not _THERE.search(said, asks[-1].start())


def words(clean: str, found: Found) -> None:
    alone = len(re.findall(r"[.!?\n]", clean.strip())) <= 1  # a letter of one question
    for one in enquiry_words.said(clean):
        stop = re.compile(r"[.!?\n]").search(clean, one.end)
        asked = stop is not None and stop.group() == "?"
        near = stop is not None and stop.start() - one.end < 22
        if stop is not None and near and asked and re.match(r"[?!]* *no\b", clean[stop.start() :]):
            continue
        if one.path in _OFFERED and (
            (asked and not (alone and one.path in _PLACED) and _wanted(clean, one.start))
            or requested(clean, one.start)
        ):
            continue
        if one.path.startswith("power.") and of_a_machine(clean, one.start):
            continue
        found.pieces.append(
            Piece(
                one.path,
                one.start,
                one.end,
                word=one.value,
                weight=one.weight * (0.5 if asked else 1),
            )
        )
    level = enquiry_words.level_with(clean)
    if level and _ROWS.search(clean) and _BED.search(clean[max(0, level[0] - 14) : level[0]]):
        found.pieces.append(Piece("drip.slope", *level, 0.0, 0.0, "%"))
    elif level:
        found.pieces.append(Piece("way.climb", *level, 0.0, 0.0, "m"))
    gone = enquiry_words.no_pump(clean)
    if gone:
        found.pieces.append(Piece("pump.present", *gone, word="no"))


def places(plain: str, clean: str, found: Found) -> None:
    """Where the letter comes from, and where the pump stands."""
    name = enquiry_names.named(plain, clean)
    if name:
        found.pieces.append(Piece("place.name", name[1], name[2], word=name[0]))
    at = enquiry_stands.stands(clean)
    if at and not any(one.path == "pump.placement" for one in found.pieces):
        found.pieces.append(Piece("pump.placement", *at, word="out", weight=2.5))
    hung = enquiry_machines.hung(clean)
    if hung and not any(one.path == "pump.placement" for one in found.pieces):
        found.pieces.append(Piece("pump.placement", *hung, word="in", weight=2.5))
