"""What the page asks about a pasted track: plain dictionaries in and out, for the bridge."""

from __future__ import annotations

from typing import Any

from calc import track
from calc.errors import InputError
from calc.page import row_text
from calc.units import QUANTITIES, Reader

Data = dict[str, Any]

FIELD = "profile"
RECEIVER = "A satellite receiver is often wrong by 10 m (33 ft) in height: check a critical crest."


def handle(request: Data) -> Data:
    """Answer one request: {"op": "track", "text": as pasted, "system": of the reader}.

    Returns {"error": "", "texts": {field: text}, "units": {}, "said": sentences}, or {"error":
    sentence}.
    """
    reader = Reader(request["system"])
    unit = QUANTITIES["length"].default(reader.system)
    try:
        found = track.read(request["text"], unit.symbol)
    except InputError as error:
        return {"error": error.message}
    rows = (
        tuple(f"{unit.from_si(value) + 0.0:.{digits}f} {unit.symbol}" for value, digits in pair)
        for pair in (((along, 0), (high, 1)) for along, high in found.points)
    )
    return {
        "error": "",
        "texts": {FIELD: row_text.encode(rows)},
        "units": {},
        "said": _said(request["text"], found, reader),
    }


def _said(text: str, found: track.Track, reader: Reader) -> list[str]:
    kept = len(found.points)
    said = [f"Filled in below: {found.read} points."]
    if kept < found.read:
        off = reader.show(max(found.off_m, track.LEVEL), "length", 2)
        said = [
            f"Filled in below: {kept} of {found.read} points. No other is off by more than {off} "
            "of height."
        ]
    if found.turned:
        said.append("It began at its low end, so it is told the other way round.")
    if "<" in text:
        said.append(RECEIVER)
    return said
