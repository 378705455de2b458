"""A customer's letter read into facts, and what they answer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.bulk import sites
from calc.bulk.answers import ALL, Data, Wanted, plain, record
from calc.errors import InputError
from calc.sheets import enquiry_ops
from calc.sheets import sheet as find_sheet
from calc.site import enquiry
from calc.site.pack import pack

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.site.site import Site

# Which sheet answers a letter, where it is filled: the first of these
FIRST = ("keep_up", "reach", "gravity")
QUOTED = 80  # characters of a quote; our choice


def worked(text: str, wanted: Wanted) -> Data:
    """The record of a letter, with the answer of the first sheet that its facts fill.

    text: as it came, plain or HTML.  Returns {"facts", "unclear", "contradictions", "notes",
    "ask", "links"} and, where a sheet is filled, its record.  Raises nothing on input.
    """
    read = enquiry.read(text)
    site = enquiry.to_site(read)
    found: Data = {
        "facts": [
            {"path": one.path, "label": one.label, "text": one.text, "quote": _short(one.quote)}
            for one in read.told
        ],
        "unclear": [
            {"quote": _short(one.quote),
             "readings": [f"{each.label}: {each.text}" for each in one.readings]}
            for one in read.unclear
        ],
        "contradictions": [
            {"label": one.label, "said": [_short(each.quote) for each in one.said]}
            for one in read.contradictions
        ],
        "notes": list(read.notes),
        "ask": [],
        "links": [],
        "error": "",
    }  # fmt: skip
    if site.unused():
        return found | {"error": " ".join(read.notes) or "No fact was found in it."}
    return found | _answered(site, wanted)


def _answered(site: Site, wanted: Wanted) -> Data:
    packed = pack(site)
    lacks: list[str] = []
    answered: list[Data] = []
    for key in _order(site, wanted):
        try:
            state, way = sites.form(site, key, wanted.system)
        except InputError:
            continue
        one = record(find_sheet(key), state, wanted, (packed, way))
        if one["error"]:
            lacks = lacks or list(one["errors"].values())
        elif sites.is_filled(key, state):
            answered.append(one)
    asked = [plain(one["label"]) for one in enquiry_ops.asks(site)]
    best = answered[0] if answered else {}
    return {
        "ask": [*([] if answered else lacks), *(one for one in asked if one not in lacks)],
        "links": [one["link"] for one in answered],
        **best,
    }


def _order(site: Site, wanted: Wanted) -> Sequence[str]:
    if wanted.sheets and ALL not in wanted.sheets:
        return wanted.sheets
    keys = sites.keys(site)
    return [*(key for key in FIRST if key in keys), *(key for key in keys if key not in FIRST)]


def _short(quote: str) -> str:
    quote = " ".join(quote.split())
    return quote if len(quote) <= QUOTED else f"{quote[: QUOTED - 1]}…"
