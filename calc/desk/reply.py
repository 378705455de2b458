"""The reply to a customer: the whole site's work as a letter to copy, text and HTML.

What the page asks goes through ``handle``; the letter is made of the parts' own answers.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.desk import asked, blocks, mail_links, may_change, said_of
from calc.desk.blocks import Address, Grid, Heading, Items, Para
from calc.desk.opened import opened
from calc.desk.work import work_out
from calc.errors import InputError
from calc.page.render import WARNING_WORDS, beside
from calc.page.render_given import groups
from calc.sheets import sheet as find_sheet
from calc.sheets.parts import ways
from calc.site import link
from calc.site.pack import pack
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.blocks import Block
    from calc.desk.opened import Opened
    from calc.desk.work import Part, Work

Data = dict[str, Any]

MOST_MINDED = 12  # cautions of one letter; our choice, a letter is read on a phone
MOST_FIXES = 6  # our choice
MOST_ASSUMED = 8  # of one reason; our choice
BLANK = ("as if blank", "as if left empty")
EXAMPLE = "A worked example with invented numbers, not yours."


def handle(request: Data) -> Data:
    """Answer one request: {"do": "reply", "fragment", "system", "base": address of the site's root,
    "flat": pages end in .html, "may": codes or None for the link's own, "asks": whether to weigh
    what is not known}, or with "mail" a pasted text whose links are looked for.

    Returns {"text", "html", "word", "level", "name", "example", "system", "fragment", "address",
    "groups", "may", "said"}, or of a mail {"found", "said"}.
    Raises InputError where the link cannot be read.
    """
    if "mail" in request:
        return _mail(request)
    found = opened(request.get("fragment", ""), request.get("system", ""))
    work = work_out(found.site, found.system)
    codes = found.may.split(".") if request.get("may") is None else request["may"]
    may = may_change.written(codes)
    fragment = link.of_site(work.system, work.packed, "", may)
    address = request.get("base", "") + _page(work, request.get("flat", False)) + "#" + fragment
    questions = asked.questions(work) if request.get("asks") else None
    letter = tuple(_letter(found, work, questions, may, address))
    return {
        "text": blocks.text(letter),
        "html": blocks.html(letter),
        "word": work.word,
        "level": work.level,
        "name": found.site.name,
        "example": found.example,
        "system": work.system,
        "fragment": fragment,
        "address": address,
        "groups": may_change.choices(found.site),
        "may": may.split(".") if may else [],
        "courtesy": may_change.COURTESY,
        "said": list(found.said),
    }


def _page(work: Work, flat: bool) -> str:
    """The page that the customer's link opens: the whole supply where it could be worked out."""
    first = work.part("keep_up") or next(iter(work.parts), None)
    page = first.sheet.page if first else find_sheet("keep_up").page
    return page.rstrip("/") + ".html" if flat else page


def _mail(request: Data) -> Data:
    """The links of a pasted mail: {"found": [{"fragment", "page", "shown", "name"}], "said"}."""
    found = mail_links.find(request["mail"])
    said, listed = mail_links.told(found), []
    for one in found:
        if not one.whole:
            continue
        try:
            site = opened(one.fragment, "", one.page)
        except InputError as error:
            said.append(f"“{one.shown}”: {error.message}")
            continue
        fragment = link.of_site(site.system, pack(site.site), "", site.may)
        listed.append({
            "fragment": fragment, "raw": one.fragment, "page": one.page, "shown": one.shown,
            "name": site.site.name, "said": list(site.said),
        })  # fmt: skip
    return {"found": listed, "said": said}


# The letter -----------------------------------------------------------------------------------


def _letter(
    found: Opened, work: Work, questions: list[asked.Asked] | None, may: str, address: str
) -> Iterator[Block]:
    reader = Reader(work.system)
    name = f"“{found.site.name}”" if found.site.name else "you described"
    told = f"We worked out the water supply {name} from what you told us."
    yield Para(EXAMPLE if found.example else told)
    yield from _verdict(work)
    yield from _outlets(work, reader)
    yield from _fixes(work)
    yield from _sizes(work, reader)
    yield from _assumed(work)
    yield from _questions(work, questions)
    yield from _minded(work)
    yield from _link(may, address)


def _verdict(work: Work) -> Iterator[Block]:
    parts = said_of.worst_first(work)
    first = parts[0] if parts else None
    if first is None:
        yield Para("Too little is known yet to work anything out.", f"{work.word}.")
        return
    sentence = first.verdict.sentence if first.verdict else said_of.sentence(first)
    yield Para(sentence, f"{work.word}.")
    yield Heading("What we looked at")
    yield Items(tuple(f"{said_of.title(one)} {said_of.sentence(one)}" for one in parts))


def _outlets(work: Work, reader: Reader) -> Iterator[Block]:
    table = said_of.table(work.part("keep_up"), "Every outlet")
    yield Heading("Pressure and flow at every outlet")
    if table is None or not table.rows:
        yield Para("Not worked out: the pipe, the pump or the outlets are not known well enough.")
        return
    rows = tuple(tuple(_outlet(row, reader)) for row in table.rows)
    yield Grid(("Outlet", "Pressure", "Needed", "Flow", "Open", "Result"), rows)
    yield Para("Open: how many before and after the others open. The values are those after.")


def _outlet(row: Any, reader: Reader) -> Iterator[str]:
    """One row of the table of outlets, with the values after the others open."""
    name, result, (_, pressure), needed, (_, flow), count = row
    yield str(name)
    yield reader.show(pressure, "pressure")
    yield reader.show(needed, "pressure")
    yield "closed" if flow is None else reader.show(flow, "flow")
    yield str(count)
    yield str(result)


def _fixes(work: Work) -> Iterator[Block]:
    lines = [
        f"{said_of.title(one)} {fix.text}"
        for one in said_of.worst_first(work)
        if one.answer is not None and one.answer.verdict.level != "good"
        for fix in one.answer.fixes[:2]
    ]
    if lines:
        yield Heading("What to do about it, each checked by working it out again")
        yield Items(tuple(dict.fromkeys(lines))[:MOST_FIXES])


def _sizes(work: Work, reader: Reader) -> Iterator[Block]:
    site = work.site
    yield Heading("Main sizes")
    lines = []
    for size, length, _ in said_of.pipes(site, reader):
        told = said_of.NOT_KNOWN if length is None else reader.show(length, "length")
        lines.append(f"Pipe, {size}: {told}")
    if not lines:
        lines.append(f"Pipe: {said_of.NOT_KNOWN}")
    if ways.has_pump(site):
        lines += _pump(work, reader)
    volume = said_of.fact(site, "pressure_tank.volume", reader)
    if ways.has_pump(site) or volume != said_of.NOT_KNOWN:
        lines.append(f"Pressure tank: {volume}")
    for key, label in (("tank", "Storage tank"), ("panels", "Panels and battery"),
                       ("battery", "Battery"), ("cable", "Cable")):  # fmt: skip
        part = work.part(key)
        lines.append(f"{label}: {said_of.bare(part)}")
    yield Items(tuple(lines))


def _pump(work: Work, reader: Reader) -> list[str]:
    site, part = work.site, work.part("keep_up")
    flow = said_of.shown(part, "Flow of everything open")
    pressure = said_of.shown(part, "Pressure at the pump")
    duty = said_of.NOT_KNOWN if flow == said_of.NOT_KNOWN else f"{flow} at {pressure} at its outlet"
    lines = [
        f"Pump: {said_of.pump(site)}",
        f"Pump duty with everything open: {duty}",
        f"Set pressure: {said_of.fact(site, 'pump.set', reader)}",
    ]
    if site.get("pump.control").text == "switch":
        lines += [
            f"Pressure switch, on: {said_of.fact(site, 'pump.cut_in', reader)}",
            f"Pressure switch, off: {said_of.fact(site, 'pump.cut_out', reader)}",
        ]
    return lines


def _assumed(work: Work) -> Iterator[Block]:
    merged: dict[tuple[str, str, str], Any] = {}
    for part in work.parts:
        for one in part.outcome.assumed:
            if not one.shown and one.reason in BLANK:
                continue  # it may be empty, and nothing hangs on it
            merged.setdefault((one.label, one.shown, one.reason), one)
    lines = []
    for lead, group in groups(merged.values()):
        named = (f"{one.label.removesuffix(' (optional)')} {one.shown}".strip() for one in group)
        told = list(dict.fromkeys(named))
        rest = len(told) - MOST_ASSUMED
        more = f", and {rest} more on the pages behind the link" if rest > 0 else ""
        lines.append(f"{lead}: {', '.join(told[:MOST_ASSUMED])}{more}.")
    if lines:
        yield Heading("Assumed, not from you")
        yield Items(tuple(lines))


def _questions(work: Work, questions: list[asked.Asked] | None) -> Iterator[Block]:
    if questions is None:
        return
    lines = [f"{one.label}: {one.told}" for one in questions]
    lines += [f"{one.title.rstrip('?')} was not worked out: {one.lacks} is not known."
              for one in work.left]  # fmt: skip
    if lines:
        yield Heading("Please tell us, what matters most first")
        yield Items(tuple(lines), numbered=True)


def _minded(work: Work) -> Iterator[Block]:
    """What was found beside the verdicts, then standing advice: of each text one."""
    found: list[str] = []
    for part in said_of.worst_first(work):
        found += _beside(part)
    stops = [one for one in found if not one.startswith(WARNING_WORDS["note"])]
    standing = [
        caution
        for part in work.parts
        if part.answer is not None
        for caution in (*part.answer.cautions, *part.sheet.cautions)
    ]
    lines = list(dict.fromkeys([*stops, *standing]))
    kept = max(MOST_MINDED, len(stops))
    if lines:
        yield Heading("Please mind")
        yield Items(tuple(lines[:kept]))
        if len(lines) > kept:
            yield Para(f"{len(lines) - kept} more cautions are on the pages behind the link.")


def _beside(part: Part) -> list[str]:
    if part.answer is None:
        return []
    return [f"{WARNING_WORDS[one.level]}: {one.text}" for one in beside(part.answer)]


def _link(may: str, address: str) -> Iterator[Block]:
    yield Heading("These numbers, to look at and to change")
    named = may_change.labels(may)
    if named:
        yield Para(f"Please check and change: {'; '.join(named)}. {may_change.COURTESY}")
        yield Para("Then send us the address of the page: it holds your changes.")
    yield Address("Open these numbers", address)
