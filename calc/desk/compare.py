"""Two ways of a site side by side: what differs, and what that does.

{"op": "desk", "do": "compare", "fragment": of this page, "a", "b": pasted addresses, "a_site",
"b_site": packed saved sites, "base", "flat"} gives {"fields": {"a": sentence, "b": sentence}, of
what cannot be read; "fragment": the link of both, "a" that of the first; "parts": {place on the
page: HTML}}.
"""

from __future__ import annotations

from dataclasses import dataclass
from html import escape
from typing import TYPE_CHECKING, Any

from calc.desk import changes, may_change, pairs, verdict
from calc.desk.difference import differences, shown, who
from calc.desk.said_of import running
from calc.desk.whole_show import Where, anchor, table, word
from calc.desk.work import ONE_PIPE, all_ways, part, way_for, work_out
from calc.errors import InputError
from calc.page.render import told
from calc.sheets.parts import ways
from calc.site import link
from calc.site.demo import alder_terrace
from calc.site.facts import Fact
from calc.site.pack import pack, unpack
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.work import Part, Work
    from calc.page.answer import Figure

Data = dict[str, Any]
ONE = "Only one way is here. Paste the other link, or take a change from “The whole answer”."
SAME = "The two ways say the same: nothing differs."
FIGURES = 3  # of a part, at most; our choice
EQUAL = 1e-6  # share; figures within it are the same


@dataclass(frozen=True)
class Both:
    """The two ways worked out, in one system of units."""

    a: Work
    b: Work


def example() -> tuple[str, str]:
    """(packed Alder Terrace, packed with a wider pipe): what the page shows of its own."""
    site = alder_terrace()
    wider = site.put_cell("sections", 1, "pipe", Fact("pe100-sdr11/50"))
    return pack(site), pack(wider)


def handle(request: Data) -> Data:
    """Answer one request.  Raises InputError for a link of this page that cannot be read."""
    held, said = _held(request)
    fields: dict[str, str] = {}
    for name in ("a", "b"):
        try:
            opened = _asked(request, name)
        except InputError as error:
            fields[name] = error.message
            continue
        if opened is not None:
            held[name] = opened
            said += list(opened.said)
    if fields or not held:
        return {"fields": fields, "said": said, "parts": {}, "fragment": ""}
    may = held["a"].may if "a" in held else ""
    where = Where(request.get("base", ""), bool(request.get("flat", False)), may)
    if len(held) < 2:
        only = next(iter(held.values()))
        fragment = link.of_site(only.system, pack(only.site), "", only.may)
        return {"fields": {}, "said": [*said, ONE], "fragment": fragment, "a": fragment,
                "parts": {"one": _one(only, where)}}  # fmt: skip
    return {"fields": {}, "said": said, **_side_by_side(held["a"], held["b"], where)}


def _held(request: Data) -> tuple[dict[str, pairs.Opened], list[str]]:
    """What the page's own link holds: {"a", "b"}; of none the example."""
    text = request.get("fragment", "").strip("#").strip()
    asked = any(request.get(name) for name in ("a", "b", "a_site", "b_site"))
    if not text:
        if asked:
            return {}, []
        a, b = (pairs.Opened("metric", unpack(one)) for one in example())
        return {"a": a, "b": b}, []
    opened = pairs.of_address(text)
    found = {"a": pairs.Opened(opened.system, opened.site, may=opened.may)}
    if opened.other is not None:
        found["b"] = pairs.Opened(opened.system, opened.other)
    return found, list(opened.said)


def _asked(request: Data, name: str) -> pairs.Opened | None:
    """What was pasted or chosen for one way; None: nothing.  Raises InputError."""
    packed, text = request.get(f"{name}_site", ""), request.get(name, "")
    if packed:
        site = unpack(packed)
        return pairs.Opened(site.system, site)
    if not text.strip():
        return None
    opened = pairs.of_address(text)
    if name == "b" and opened.other is not None:  # a link of two ways: its second one
        return pairs.Opened(opened.system, opened.other, None, opened.said)
    return opened


def _one(only: pairs.Opened, where: Where) -> str:
    way = where.page("whole/", link.of_site(only.system, pack(only.site)))
    return f"<p>{anchor(way, 'The whole answer of this site')}</p>"


def _side_by_side(a: pairs.Opened, b: pairs.Opened, where: Where) -> Data:
    both = Both(work_out(a.site, a.system, quick=True), work_out(b.site, a.system, quick=True))
    return {
        "fragment": may_change.along(pairs.write(a.system, a.site, b.site), a.may),
        "a": link.of_site(a.system, pack(a.site), "", a.may),
        "parts": {
            "top": _top(both, where),
            "facts": _facts(both),
            "verdicts": _verdicts(both, where),
            "outlets": _outlets(both),
        },
    }


# Shown ------------------------------------------------------------------------------------------


def _top(both: Both, where: Where) -> str:
    lines = []
    for name, work in (("A", both.a), ("B", both.b)):
        found = verdict.quickly(work)
        whole = where.page("whole/", link.of_site(work.system, work.packed))
        lines.append(
            f'<p class="sl-verdict sl-{found.level}"><strong class="sl-word">{name}: '
            f"{escape(found.word)}</strong> {escape(found.said)} "
            f"{anchor(whole, f'The whole answer of {name}')}</p>"
        )
    said = "".join(f"<li>{escape(one)}</li>" for one in turned(both))
    return f"{''.join(lines)}<ul>{said}</ul>"


def turned(both: Both) -> list[str]:
    """What gets better and what gets worse from A to B, in sentences."""
    better: list[str] = []
    worse: list[str] = []
    for a, b in _pairs(both):
        if a is None or b is None:
            continue
        was, now = (changes.ORDER.index(_level(one)) for one in (a, b))
        words = f"{a.sheet.title.rstrip('?')} ({_word(a)} → {_word(b)})"
        if now != was:
            (better if now < was else worse).append(words)
    margins = [verdict.margin(one) for one in (both.a, both.b)]
    found = []
    if better:
        found.append(f"Better in B: {', '.join(better)}.")
    if worse:
        found.append(f"Worse in B: {', '.join(worse)}.")
    if margins[0] is not None and margins[1] is not None:
        reader = Reader(both.a.system)
        before, after = (_over(one, reader) for one in margins if one is not None)
        change = margins[1] - margins[0]
        way = "more" if change > 1 else "less" if change < -1 else "the same"
        found.append(f"The weakest outlet has {way} to spare: {before} in A, {after} in B.")
    return found or ["No part gets better or worse."]


def _over(margin_pa: float, reader: Reader) -> str:
    """What an outlet has beyond what it needs, or lacks."""
    said = "short" if margin_pa < 0 else "over"
    return f"{reader.show(abs(margin_pa), 'pressure', 2)} {said}"


def _level(one: Part) -> str:
    return one.verdict.level if one.verdict else "tight"


def _word(one: Part) -> str:
    return one.verdict.word if one.verdict else "not worked out"


def _pairs(both: Both) -> Iterator[tuple[Part | None, Part | None]]:
    """The parts of both; those of one pipe are asked about the same outlet, A's weakest."""
    keys = [one.key for one in both.a.parts]
    keys += [one.key for one in both.b.parts if one.key not in keys]
    for key in keys:
        a, b = both.a.part(key), both.b.part(key)
        if a and b and key in ONE_PIPE and both.a.weakest != both.b.weakest:
            b = _same_outlet(both, key) or b
        yield a, b


def _same_outlet(both: Both, key: str) -> Part | None:
    site = both.b.site
    if both.a.weakest not in ways.outlets(site):
        return None
    try:
        asked = way_for(site, key, both.a.weakest)
        return part(site, both.b.packed, key, both.b.system, asked)
    except InputError:
        return None


def _facts(both: Both) -> str:
    found = differences(both.a.site, both.b.site)
    if not found:
        return f"<p>{escape(SAME)}</p>"
    rows = [
        f'<tr data-path="{escape(one.path)}"><th scope="row">{escape(one.label)}</th>'
        f"<td>{escape(_said(shown(one, one.before), who(one.before)))}</td>"
        f"<td>{escape(_said(shown(one, one.after), who(one.after)))}</td></tr>"
        for one in found
    ]
    return table("What differs", ("Fact", "A", "B"), rows)


def _said(text: str, by: str) -> str:
    return f"{text} ({by})" if by and by != "given" else text


def _verdicts(both: Both, where: Where) -> str:
    rows = []
    for a, b in _pairs(both):
        one = a or b
        if one is None:
            continue
        cells = "".join(_verdict(each, where) for each in (a, b))
        figures = "<br>".join(escape(line) for line in _figures(a, b))
        rows.append(
            f'<tr data-part="{one.key}"><th scope="row">{escape(one.sheet.title)}</th>{cells}'
            f"<td>{figures}</td></tr>"
        )
    outlet = both.a.weakest
    note = f"Pages of one pipe are asked about {outlet} in both." if outlet else ""
    return table("What it does", ("Part", "A", "B", "Figures, A → B"), rows, note)


def _verdict(one: Part | None, where: Where) -> str:
    if one is None:
        return "<td>not asked</td>"
    way = anchor(where.page(one.sheet.page, one.fragment), "working")
    return f"<td>{word(_level(one), _word(one))} {way}</td>"


def _figures(a: Part | None, b: Part | None) -> list[str]:
    """Main figures of a part in both ways, those that move."""
    old = {one.label: one for one in a.answer.figures} if a and a.answer else {}
    new = {one.label: one for one in b.answer.figures} if b and b.answer else {}
    one = a or b
    if one is None:
        return []
    lines = []
    main = [label for label in old if old[label].main] + [label for label in old
                                                          if not old[label].main]  # fmt: skip
    for label in main:
        if label in new and not _same(old[label], new[label]):
            before, after = (told(each, one.outcome.reader) for each in (old[label], new[label]))
            lines.append(f"{label}: {before} → {after}")
    return lines[:FIGURES] or (["the same"] if old and old.keys() == new.keys() else [])


def _same(a: Figure, b: Figure) -> bool:
    return abs(a.value - b.value) <= EQUAL * max(abs(a.value), abs(b.value))


def _outlets(both: Both) -> str:
    reader = Reader(both.a.system)
    a, b = ({way.outlet: way for way in all_ways(one.site)} for one in (both.a, both.b))
    rows = []
    for name in dict.fromkeys((*a, *b)):
        pair = [one.get(name) for one in (a, b)]
        cells = "".join(
            f'<td class="sl-number">{escape(running(way.running_pa, reader))}</td>'
            if way
            else "<td>–</td>"
            for way in pair
        )
        way = pair[0] or pair[1]
        needed = escape(reader.show(way.needed_pa, "pressure")) if way else "–"
        rows.append(f'<tr><th scope="row">{escape(name)}</th>{cells}'
                    f'<td class="sl-number">{needed}</td></tr>')  # fmt: skip
    if not rows:
        return ""
    return table("Pressure at every outlet", ("Outlet", "A", "B", "Needed"), rows)


def all_of(base: str, flat: bool) -> dict[str, str]:
    """Every place of the page filled with its example: for a page made at build."""
    parts: dict[str, str] = handle({"base": base, "flat": flat})["parts"]
    return parts
