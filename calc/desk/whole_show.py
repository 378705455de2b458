"""The whole answer as HTML.  Everything a person typed is escaped here."""

from __future__ import annotations

from dataclasses import replace
from html import escape
from typing import TYPE_CHECKING

from calc.desk import bands, changes, may_change, pairs, verdict
from calc.desk.said_of import running
from calc.desk.work import all_ways
from calc.page.findings import GOOD, WORDS
from calc.page.render import told
from calc.page.render_given import groups, plain
from calc.site import link
from calc.site.pack import pack
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.desk.bands import Band, Bands
    from calc.desk.changes import Change
    from calc.desk.fails import Day, Outcome
    from calc.desk.settings import SetRange
    from calc.desk.work import Part, Work
    from calc.page.given import Assumed

FIGURES = 4  # of a part, at most; our choice
SHOWN = 8  # things assumed in a line, before they go into a fold; our choice
AGAIN = {GOOD: "still works", "tight": "borderline", "bad": "does not work"}


class Where:
    """Where pages are. base: way to the site's root; flat: pages end in .html; may: what the maker
    of this page's link asks its reader to change, which goes along to each of them."""

    def __init__(self, base: str, flat: bool, may: str = "") -> None:
        self.base, self.flat, self.may = base, flat, may

    def page(self, name: str, fragment: str) -> str:
        """Address of a page, opened on a fragment of a site."""
        place = self.base + (name.rstrip("/") + ".html" if self.flat else name)
        return f"{place}#{may_change.along(fragment, self.may)}"


def anchor(address: str, words: str, css: str = "") -> str:
    """A link; words and address are escaped."""
    named = f' class="{css}"' if css else ""
    return f'<a{named} href="{escape(address)}">{escape(words)}</a>'


def word(level: str, words: str) -> str:
    """A verdict's word in its colour."""
    return f'<strong class="sl-whole-word sl-is-{level}">{escape(words)}</strong>'


# The verdict ----------------------------------------------------------------------------------


def top(work: Work, whole: verdict.Whole, so_far: bool, where: Where) -> str:
    """The verdict. so_far: parts are still being worked out, and may be worse."""
    said = "So far: " if so_far else ""
    part = work.part(whole.key)
    way = where.page(part.sheet.page, part.fragment) if part else ""
    more = f" {anchor(way, 'See the working')}" if way else ""
    pending = (
        '<p class="sl-whole-pending">Other parts are still being worked out; the verdict can only '
        "get worse.</p>"
        if so_far
        else ""
    )
    return (
        f'<p class="sl-verdict sl-{whole.level}" data-level="{whole.level}">'
        f'<strong class="sl-word">{escape(said + whole.word)}</strong> '
        f"{escape(whole.said)}{more}</p>{pending}"
    )


# The parts ------------------------------------------------------------------------------------


def parts(work: Work, where: Where) -> str:
    """Every part with its word, sentence and main figures, each linked to its working."""
    return "".join(_part(one, where) for one in work.parts)


def _part(one: Part, where: Where) -> str:
    name = one.sheet.title
    way = anchor(where.page(one.sheet.page, one.fragment), name)
    if one.answer is None or one.verdict is None:
        said = next(iter(one.outcome.errors.values()), "")
        return (
            f'<li data-part="{one.key}"><h3>{way}</h3><p>{word("tight", "Not worked out")} '
            f"{escape(said)}.</p></li>"
        )
    ranked = sorted(one.answer.figures, key=lambda figure: not figure.main)[:FIGURES]
    figures = "".join(
        f"<div><dt>{escape(f.label)}</dt><dd>{escape(told(f, one.outcome.reader))}</dd></div>"
        for f in ranked
    )
    return (
        f'<li data-part="{one.key}"><h3>{way}</h3>'
        f"<p>{word(one.verdict.level, one.verdict.word)} {escape(one.verdict.sentence)}</p>"
        f'<dl class="sl-whole-figures">{figures}</dl></li>'
    )


def outlets(work: Work, found: Iterable[Part], where: Where) -> str:
    """Every outlet, open beside all that is open after: pressure, flow, needed, word."""
    reader = Reader(work.system)
    ways_to = {way.outlet: way for way in all_ways(work.site)}
    rows = []
    for one in found:
        name = one.way.partition("/")[2]
        way = ways_to.get(name)
        if way is None or one.verdict is None:
            continue
        cells = (
            running(way.running_pa, reader),
            reader.show(way.outlet_flow, "flow"),
            reader.show(way.needed_pa, "pressure"),
        )
        numbers = "".join(f'<td class="sl-number">{escape(cell)}</td>' for cell in cells)
        css = ' class="sl-marked"' if name == work.weakest else ""
        rows.append(
            f'<tr{css}><th scope="row">{anchor(where.page(one.sheet.page, one.fragment), name)}'
            f"<br>{word(one.verdict.level, one.verdict.word)}</th>{numbers}</tr>"
        )
    if not rows:
        return ""
    heads = ("Outlet", "Pressure", "Flow of one", "Needed")
    note = "Each outlet is open here beside all that is open after. The one with least is marked."
    return table("Every outlet", heads, rows, note)


def table(title: str, heads: Iterable[str], rows: Iterable[str], note: str = "") -> str:
    """A table in a scroller that the Tab key reaches. rows: HTML."""
    head = "".join(f'<th scope="col">{escape(one)}</th>' for one in heads)
    said = f'<p class="sl-table-note">{escape(note)}</p>' if note else ""
    return (
        f'<div class="sl-table" tabindex="0" role="region" aria-label="{escape(title)}">'
        f'<table class="sl-cells"><caption>{escape(title)}</caption><thead><tr>{head}</tr></thead>'
        f"<tbody>{''.join(rows)}</tbody></table></div>{said}"
    )


def set_pressure(found: SetRange | None, reader: Reader) -> str:
    """The range of set pressures, in a sentence; "" where the pump is not held at one."""
    if found is None:
        return ""
    now = reader.show(found.now, "pressure")
    if found.low is None or found.high is None:
        low, high = (reader.show(one, "pressure", 2) for one in found.looked)
        said = (
            f"At any set pressure from {low} to {high} something is too little, or near its limit. "
            f"It is set to {now}."
        )
    else:
        low, high = (reader.show(one, "pressure", 2) for one in (found.low, found.high))
        said = f"A set pressure from {low} to {high} gives every outlet enough. It is set to {now}."
    return f'<p class="sl-whole-set">{escape(said)}</p>'


# What it stands on ----------------------------------------------------------------------------


def merged(work: Work) -> tuple[Assumed, ...]:
    """What the parts assumed, each once."""
    found: dict[tuple[str, str, str], Assumed] = {}
    for one in work.parts:
        for each in one.outcome.assumed:
            mark = (each.label, each.shown, each.reason)
            table_cell = each.key.count(".") == 2
            key = each.key if table_cell else f"{one.key}-{each.key}"
            found.setdefault(mark, replace(each, key=key))
    return tuple(found.values())


def assumed(work: Work) -> str:
    """What was assumed, by reason."""
    found = merged(work)
    if not found:
        return "<p>Nothing was assumed.</p>"
    items = []
    for lead, group in groups(found):
        named = [_taken(one) for one in group]
        first, rest = "; ".join(named[:SHOWN]), named[SHOWN:]
        more = (
            f'<details class="sl-whole-rest"><summary>and {len(rest)} more</summary>'
            f"{escape('; '.join(rest))}.</details>"
            if rest
            else "."
        )
        items.append(f"<li><b>{escape(lead)}</b>: {escape(first)}{more}</li>")
    return f"<ul>{''.join(items)}</ul>"


def _taken(one: Assumed) -> str:
    """One thing taken: its label, and what it was taken as where that is told."""
    label = plain(one.label)
    return f"{label}: {one.shown}" if one.shown else label


def unchecked(work: Work) -> str:
    """What was not checked: pages that lack facts, and checks that could not be made."""
    items = [
        f"<li><b>{escape(one.title.rstrip('?'))}</b>: the site lacks {escape(one.lacks)}.</li>"
        for one in work.left
    ]
    for one in work.parts:
        for finding in one.answer.findings if one.answer else ():
            if finding.rank == "unchecked":
                said = f"<b>{escape(one.sheet.title)}</b>: {escape(finding.text)}"
                items.append(f"<li>{said}</li>")
    return f"<ul>{''.join(items)}</ul>" if items else "<p>All checks could be made.</p>"


def goes(work: Work, where: Where) -> str:
    """Where to go on with the same site."""
    ways_on = (
        ("reply/", "Write the reply"),
        ("installer/", "The installer's sheet"),
        ("compare/", "Two ways side by side"),
    )
    own = link.of_site(work.system, work.packed)
    other = "metric" if work.system == "us" else "us"
    turned = where.page("whole/", link.of_site(other, work.packed))
    units = anchor(turned, "In US units" if other == "us" else "In metric units")
    items = [f"<li>{anchor(where.page(page, own), words)}</li>" for page, words in ways_on]
    return f"<ul>{''.join(items)}<li>{units}</li></ul>"


# Changes, bad days, bands ---------------------------------------------------------------------


def changed(work: Work, found: Iterable[Change], where: Where) -> str:
    """The changes that matter most, each with what it turns, what it takes and its link."""
    items = [_changed(work, one, where) for one in found]
    if not items:
        return "<p>No change that was tried makes this supply better.</p>"
    return f'<ol class="sl-whole-changes">{"".join(items)}</ol>'


def _changed(work: Work, one: Change, where: Where) -> str:
    reader = Reader(work.system)
    turned = f"{WORDS[one.before.level]} → {WORDS[one.after.level]}"
    if one.before.level == one.after.level:
        turned = f"{WORDS[one.before.level]}, as before"
    gains = ""
    if one.before.margin is not None and one.after.margin is not None:
        before, after = (
            reader.show(m, "pressure", 2) for m in (one.before.margin, one.after.margin)
        )
        gains = f" Spare at the weakest outlet: {before} → {after}."
    takes = changes.takes_words(one, reader.show(one.length, "length"))
    new = where.page("whole/", link.of_site(work.system, pack(one.site)))
    both = where.page("compare/", pairs.write(work.system, work.site, one.site))
    facts = "".join(f"<li>{escape(name)}</li>" for name in changes.names(one))
    return (
        f"<li><p><b>{escape(one.told)}</b> {escape(turned)}.{escape(gains)} "
        f"It takes {escape(takes)}; what it costs is not known here.</p><ul>{facts}</ul>"
        f"<p>{anchor(new, 'Open the site with this change')} {anchor(both, 'Both side by side')}"
        "</p></li>"
    )


def bad_days(work: Work, found: Iterable[tuple[Day, Outcome | None]], where: Where) -> str:
    """Each bad day: still works, or what fails and why."""
    return f'<ul class="sl-whole-days">{"".join(_bad_day(work, *one, where) for one in found)}</ul>'


def _bad_day(work: Work, day: Day, one: Outcome | None, where: Where) -> str:
    if one is None or day.site is None:
        return f"<li><b>{escape(day.title)}</b>: not tried. {escape(day.told)}</li>"
    way = anchor(where.page("whole/", link.of_site(work.system, pack(day.site))), "Open it")
    if one.new is not None:
        said = one.new.text
    elif one.worse:
        said = one.verdict.sentence
    else:
        said = "Nothing gets worse." if work.level != GOOD else ""
    words = AGAIN[one.verdict.level] if work.level == GOOD else f"{AGAIN[one.verdict.level]} then"
    if work.level != GOOD and not one.worse:
        words = f"{AGAIN[one.verdict.level]}, as on any day"
    return (
        f'<li data-day="{day.key}"><b>{escape(day.title)}</b>: {word(one.verdict.level, words)}. '
        f"{escape(day.told)} {escape(said)} {way}</li>"
    )


def sure(found: Bands | None, reader: Reader) -> str:
    """The bands, what moves them most, and how they were found."""
    if found is None:
        return "<p>Without an outlet there is no figure to give a band.</p>"
    items = "".join(f"<li>{_band(one, reader)}</li>" for one in found.bands)
    aside = ""
    if found.aside:
        aside = f"<p>Assumed too, and not in the band: {escape(', '.join(found.aside))}.</p>"
    return (
        f'<ul>{items}</ul>{aside}<p class="sl-fine">Each assumed number is varied by what a page '
        "varies it by (0.7 to 1.4 times); the effects are added by their squares (GUM, JCGM "
        "100:2008, 5.1.2). The band is two standard uncertainties each way. Numbers that you "
        "gave count as exact.</p>"
    )


def _band(one: Band, reader: Reader) -> str:
    is_flow = one.quantity == "flow"
    shown = reader.show(one.value, one.quantity) if is_flow else running(one.value, reader)
    label = escape(one.label)
    if one.u <= 0:
        return f"<b>{label}</b>: {escape(shown)}. Nothing that moves it was assumed."
    unit = reader.unit(one.quantity)
    low, high, decimals = bands.rounded(unit.from_si(one.low), unit.from_si(one.high))
    most = [each.label for each, part in one.shares[:2] if part > 0]
    less = ""
    if one.low < 0 or (is_flow and one.low == 0):
        sure = not is_flow and one.high < 0
        less = " In all of it no water comes." if sure else " At the low end no water may come."
    return (
        f"<b>{label}</b>: {low:.{decimals}f} to {high:.{decimals}f} {escape(unit.symbol)} "
        f"({escape(shown)} as worked out). It hangs most on: {escape(', '.join(most))}.{less}"
    )
