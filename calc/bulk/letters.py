"""A customer's letter read into facts, and what they answer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.bulk import sites
from calc.bulk.answers import ALL, Data, Wanted, plain, record
from calc.sheets import enquiry_ops
from calc.sheets import sheet as find_sheet
from calc.sheets.parts.completed import completed
from calc.site import enquiry
from calc.site.pack import pack

if TYPE_CHECKING:
    from calc.site.site import Site

QUOTED = 80  # characters of a quote; our choice


def worked(text: str, wanted: Wanted) -> Data:
    """The record of a letter, with the answer of the first sheet that its facts fill.

    text: as it came, plain or HTML.  Returns {"facts", "unclear", "contradictions", "notes",
    "ask", "links"} and, where a sheet is filled, its record.  Raises nothing on input.
    """
    read = enquiry.read(text)
    site = completed(enquiry.to_site(read))
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
    about = enquiry_ops.handle({"text": text, "base": wanted.base, "flat": wanted.flat})["goes"]
    found["links"] = [one["address"] for one in about]
    return found | _answered(site, _order(site, [one["text"] for one in about], wanted), wanted)


def _order(site: Site, titles: list[str], wanted: Wanted) -> list[str]:
    """Keys of the sheets to try: what the letter is about, by the titles of its pages."""
    if wanted.sheets and ALL not in wanted.sheets:
        return list(wanted.sheets)
    keys = sites.keys(site)
    return [key for title in titles for key in keys if find_sheet(key).title == title]


def _answered(site: Site, keys: list[str], wanted: Wanted) -> Data:
    """The record of the first sheet that the facts fill, and what to ask."""
    packed = pack(site)
    lacks: list[str] = []
    best: Data = {}
    for key in keys:
        state, way = sites.form(site, key, wanted.system)
        one = record(find_sheet(key), state, wanted, (packed, way))
        if not one["error"] and sites.is_filled(key, state):
            best = one
            break
        lacks = lacks or list(one["errors"].values())
    asked = [plain(one["label"]) for one in enquiry_ops.asks(site, keys)]
    return {"ask": [*([] if best else lacks), *asked], **best}


def _short(quote: str) -> str:
    quote = " ".join(quote.split())
    return quote if len(quote) <= QUOTED else f"{quote[: QUOTED - 1]}…"
