"""What the page asks about a customer's letter: plain dictionaries in and out, for the bridge."""

from __future__ import annotations

import re
from html import escape
from typing import Any

from calc.errors import InputError
from calc.page import ask_back
from calc.page.fields import UNKNOWN, Rows
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets import views
from calc.sheets.parts.completed import completed
from calc.site import enquiry, link
from calc.site.enquiry_slots import slot
from calc.site.facts import NOT_KNOWN, PIPES
from calc.site.pack import pack
from calc.site.site import Site

Data = dict[str, Any]

MOST_ASKED = 12  # questions shown; our choice
SHEETS = 3  # sheets that weigh what is not known; our choice
SLOW = {"keep_up", "panels"}  # two dozen solutions of these would keep somebody waiting
_SIZE = re.compile(r"\d+(?: \d+/\d+|/\d+)? (?:mm|in)\b")


def handle(request: Data) -> Data:
    """Answer one request: {"op": "enquiry", "text": as pasted, "chosen": {path: text}, "base",
    "flat", "ask": whether to weigh what is not known}.

    Returns {"html": the text with marks, "facts", "unclear", "contradictions", "left", "unused",
    "notes", "errors": {path: sentence}, "packed", "fragment", "goes", "asks"}.
    """
    found = enquiry.read(request["text"])
    chosen, errors = _checked(request.get("chosen", {}))
    told = enquiry.to_site(found, chosen)
    keys, site = _sheets(told), completed(told)
    packed = "" if site.unused() else pack(site)
    return {
        "html": marked(found),
        "facts": [_fact(one, chosen) for one in found.told],
        "unclear": [_unclear(one, chosen) for one in found.unclear],
        "contradictions": [_contradiction(one, chosen) for one in found.contradictions],
        "left": [{"quote": _short(one.quote), "why": one.why} for one in found.ignored],
        "unused": [_short(one.quote) for one in found.unused],
        "notes": list(found.notes),
        "errors": errors,
        "system": site.system,
        "packed": packed,
        "fragment": link.of_site(site.system, packed) if packed else "",
        "goes": _goes(keys, site.system, packed, request),
        "asks": asks(site, keys) if request.get("ask") and packed else [],
    }


def _checked(chosen: Data) -> tuple[dict[str, str], dict[str, str]]:
    """(texts that can be read, {path: sentence} of those that cannot)."""
    good: dict[str, str] = {}
    errors: dict[str, str] = {}
    for path, text in chosen.items():
        try:
            if text.strip():
                slot(path).read(text)
            good[path] = text
        except InputError as error:
            errors[path] = error.message
        except KeyError:
            errors[path] = "There is no such fact."
    return good, errors


# Facts ----------------------------------------------------------------------------------------


def _fact(one: enquiry.Told, chosen: dict[str, str]) -> Data:
    shown = chosen.get(one.path, one.text)
    return {
        "path": one.path,
        "label": one.label,
        "text": one.text,
        "shown": shown or one.text,
        "kept": one.path not in chosen or bool(shown.strip()),
        "changed": one.path in chosen and shown != one.text,
        "range": f"{one.low} to {one.high}" if one.low else "",
        "quote": _short(one.quote),
        "words": one.words,
        "reason": one.reason,
        "options": _options(one),
    }


def _options(one: enquiry.Told) -> list[list[str]]:
    """The words a fact may be, as (value, label); [] for a number."""
    if one.path.endswith(".pipe"):
        size = _SIZE.match(one.words)
        near = [pair for pair in PIPES if size and pair[1].startswith(size.group())]
        known = one.text in dict(PIPES)
        return [list(pair) for pair in near] if known else [[one.text, one.words], *map(list, near)]
    return [list(pair) for pair in slot(one.path).options]


def _unclear(one: enquiry.Unclear, chosen: dict[str, str]) -> Data:
    choices = [
        {"path": each.path, "text": each.text, "label": f"{each.label}: {each.text}",
         "chosen": chosen.get(each.path) == each.text}
        for each in one.readings
    ]  # fmt: skip
    return {"quote": _short(one.quote), "choices": choices}


def _contradiction(one: enquiry.Contradiction, chosen: dict[str, str]) -> Data:
    choices = [
        {"path": one.path, "text": said.text, "label": f"{_said(said)} (“{_short(said.quote)}”)",
         "chosen": chosen.get(one.path) == said.text}
        for said in one.said
    ]  # fmt: skip
    return {"path": one.path, "label": one.label, "choices": choices}


def _said(one: enquiry.Told) -> str:
    return dict(slot(one.path).options).get(one.text, one.text)


def _short(quote: str) -> str:
    quote = " ".join(quote.split())
    return quote if len(quote) <= 80 else f"{quote[:77]}…"


# The text with marks ----------------------------------------------------------------------------


def marked(found: enquiry.Enquiry) -> str:
    """The text as HTML, escaped, with what was read of it marked.  Raises nothing."""
    spans = [(one.start, one.end, "told", one.label) for one in found.told]
    spans += [(one.start, one.end, "unclear", "unclear") for one in found.unclear]
    for both in found.contradictions:
        spans += [
            (one.start, one.end, "twice", f"{both.label}, said in two ways") for one in both.said
        ]
    spans += [(one.start, one.end, "unused", one.why) for one in found.unused]
    spans += [(one.start, one.end, "left", one.why) for one in found.ignored]
    taken: list[tuple[int, int, str, str]] = []
    for span in spans:  # the first of two that overlap stays
        if span[0] < span[1] and all(span[1] <= other[0] or other[1] <= span[0] for other in taken):
            taken.append(span)
    parts, at = [], 0
    for start, end, kind, title in sorted(taken):
        parts.append(escape(found.text[at:start]))
        words = escape(found.text[start:end])
        parts.append(f'<mark class="sl-read-{kind}" title="{escape(title)}">{words}</mark>')
        at = end
    return "".join(parts) + escape(found.text[at:])


# Going on ---------------------------------------------------------------------------------------


def _sheets(site: Site) -> list[str]:
    """The sheets that an enquiry is likely about, first things first."""
    section = site.rows("sections")[0] if site.rows("sections") else {}
    falls = section.get("height", NOT_KNOWN).text.startswith("-")
    told = any(path.startswith("pump.") for path in site.facts)
    pump = site.best("pump.present").text == "yes" and (told or not falls)
    keys = ["keep_up", "reach", "pump_match"] if pump else ["gravity", "keep_up"]
    if pump and site.get("water.level").known and site.get("pump.placement").text != "in":
        keys.insert(1, "suction")
    for path, key in (
        ("pump.cut_in", "pressure_tank"), ("water.yield", "tank"), ("power.panel", "panels"),
        ("drip.rows", "drip"), ("use.people", "demand"),
    ):  # fmt: skip
        if site.get(path).known:
            keys.append(key)
    if site.rows("beds") and "demand" not in keys:
        keys.append("demand")
    return keys


def _goes(keys: list[str], system: str, packed: str, request: Data) -> list[Data]:
    if not packed:
        return []
    base, flat = request.get("base", ""), request.get("flat", False)
    fragment = link.of_site(system, packed)
    found = []
    for key in keys:
        sheet = find_sheet(key)
        place = base + (sheet.page.rstrip("/") + ".html" if flat else sheet.page)
        found.append({"address": f"{place}#{fragment}", "text": sheet.title})
    return found


def asks(site: Site, keys: list[str]) -> list[Data]:
    """What would still be asked, in the order of how much the answers hang on it.

    Every value that is not known is varied and the sheets solved again: see ``page.ask_back``.
    Returns [{"label", "told"}].  Raises nothing on input.
    """
    found: list[tuple[bool, float, str, str]] = []
    seen = set()
    for key in [key for key in keys if key not in SLOW][:SHEETS]:
        for one in _questions(site, key):
            if one.label not in seen:
                seen.add(one.label)
                found.append((one.turns, one.moves, one.label, one.told))
    found.sort(key=lambda one: (not one[0], -one[1]))
    return [{"label": name, "told": told} for _, _, name, told in found[:MOST_ASKED]]


def _questions(site: Site, key: str) -> list[ask_back.Question]:
    """Questions of one sheet: what it lacks stands as in the example, and is not the reader's."""
    sheet = find_sheet(key)
    filled = views.fill(site, key, "", site.system)
    texts = {
        name: fact.text for name, fact in filled.items()
        if fact.known and fact.text.strip() and fact.text != UNKNOWN
    }  # fmt: skip
    texts |= {  # a table that the site has no rows of is empty, and no example
        entry.key: filled[entry.key].text.replace(UNKNOWN, "")
        for entry in sheet.fields
        if isinstance(entry, Rows) and entry.key in filled
    }
    standing = {name: filled[name].standing for name in texts}
    state = State(site.system, texts, {}, standing)
    outcome = work(sheet, state, first=True)
    if outcome.answer is None:
        return []
    return ask_back.questions(sheet, outcome, state)
