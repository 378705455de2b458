"""The installer's sheet: two pages of paper with drawing, figures, parts, steps and readings."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, Any

from calc.desk import first_start, parts_needed, said_of, sheet_drawing, start_steps
from calc.desk.first_start import BUCKET_WORDS
from calc.desk.opened import opened
from calc.desk.work import work_out
from calc.page.render import picture
from calc.sheets import sheet as find_sheet
from calc.sheets.parts import ways
from calc.site import link
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from calc.desk.first_start import Start
    from calc.desk.opened import Opened
    from calc.desk.work import Part, Work

Data = dict[str, Any]

# What two sheets of A4 or Letter hold with margins of 10 mm, our choice; the rest is counted
SHORT = 14  # letters of a cell that holds a number and its unit; our choice
MOST_SECTIONS, MOST_OUTLETS, MOST_PARTS, MOST_CAUTIONS = 14, 12, 40, 12
EXAMPLE = "A worked example with invented numbers, not yours."


def handle(request: Data) -> Data:
    """Answer one request: {"do": "installer", "fragment", "system", "base", "flat"}.

    Returns {"html": the two pages, "svg": the drawing as a file, "" where there is none, "name",
    "word", "level", "example", "fragment", "address"}.
    Raises InputError where the link cannot be read.
    """
    found = opened(request.get("fragment", ""), request.get("system", ""))
    work = work_out(found.site, found.system)
    start = first_start.start(work)
    reader = Reader(work.system)
    drawn = sheet_drawing.draw(start, reader) if start else None
    fragment = link.of_site(work.system, work.packed, "", found.may)
    page = find_sheet("keep_up").page
    place = page.rstrip("/") + ".html" if request.get("flat") else page
    return {
        "html": _first(found, work, start, reader) + _second(work, start, reader),
        "svg": sheet_drawing.download(drawn) if drawn else "",
        "name": found.site.name,
        "word": work.word,
        "level": work.level,
        "example": found.example,
        "system": work.system,
        "fragment": fragment,
        "address": f"{request.get('base', '')}{place}#{fragment}",
    }


# Page one: the supply -------------------------------------------------------------------------


def _first(found: Opened, work: Work, start: Start | None, reader: Reader) -> str:
    name = escape(found.site.name or "unnamed site")
    example = f'<p class="sl-sheet-example">{EXAMPLE}</p>' if found.example else ""
    drawn = picture(sheet_drawing.draw(start, reader)) if start else ""
    return (
        '<section class="sl-sheet-page"><header><h2>Installer’s sheet: '
        f"{name}</h2>{example}{_verdict(work)}"
        f'<p class="sl-sheet-hand">{_hand("Date")}{_hand("Name")}{_hand("Place")}</p></header>'
        f'<div class="sl-sheet-top">{drawn}<div>{_list(_figures(work, start, reader))}'
        '<div class="sl-scan" data-sl-installer-scan=""></div></div></div>'
        f"{_sections(work, start, reader)}{_outlets(work, start, reader)}</section>"
    )


def _hand(label: str) -> str:
    """A line to be written on."""
    return f'<span class="sl-sheet-line">{label}</span>'


def _verdict(work: Work) -> str:
    parts = said_of.worst_first(work)
    sentence = said_of.bare(parts[0]) if parts else "Too little is known to work anything out."
    return (
        f'<p class="sl-verdict sl-{work.level}"><strong class="sl-word">{work.word}</strong> '
        f"{escape(sentence)}</p>"
    )


def _figures(work: Work, start: Start | None, reader: Reader) -> list[tuple[str, str]]:
    site, keep_up = work.site, work.part("keep_up") if start else None
    found = []
    if ways.has_pump(site):
        found += [
            ("Pump", said_of.pump(site)),
            ("Pump above its water", _lift(work, reader)),
            ("Set pressure", said_of.fact(site, "pump.set", reader)),
            ("Switch on, off", " / ".join(
                said_of.fact(site, f"pump.{key}", reader) for key in ("cut_in", "cut_out"))),
            ("Pressure tank", said_of.fact(site, "pressure_tank.volume", reader)),
            ("Pressure at the pump, running", said_of.shown(keep_up, "Pressure at the pump")),
        ]  # fmt: skip
    found.append(("Flow of everything open", said_of.shown(keep_up, "Flow of everything open")))
    if start is not None and start.points:
        static = [start.static[one] for one in start.points if one in start.static]
        most = reader.show(max(static), "pressure") if static else said_of.NOT_KNOWN
        worst = reader.show(max(start.worst[one] for one in start.points), "pressure")
        weakest = start.weakest
        found += [
            ("Maximum static pressure", most),
            ("If every control fails", worst),
            ("Lowest rating", said_of.NOT_KNOWN if weakest is None
             else reader.show(weakest, "pressure")),
        ]  # fmt: skip
    return found


def _lift(work: Work, reader: Reader) -> str:
    level = work.site.value("water.level")
    if level is None:
        return said_of.NOT_KNOWN
    return reader.show(ways.pump_height(work.site) - level, "length")


def _list(pairs: Iterable[tuple[str, str]]) -> str:
    rows = "".join(f"<dt>{escape(label)}</dt><dd>{escape(value)}</dd>" for label, value in pairs)
    return f'<dl class="sl-sheet-figures">{rows}</dl>'


def _sections(work: Work, start: Start | None, reader: Reader) -> str:
    site, rows = work.site, []
    for at, row in enumerate(site.rows("sections")):
        names = [site.word("sections", row, column) for column in ("from", "to")]
        pipe = site.word("sections", row, "pipe")
        known = [site.cell("sections", row, column) for column in ("length", "height")]
        length, height = (
            said_of.NOT_KNOWN if one is None else reader.show(one, "length") for one in known
        )
        label = ways.pipe_named(pipe).label if pipe else said_of.NOT_KNOWN
        rows.append((" – ".join(names), label, length, height, *_running(start, at, reader)))
    heads = ("Pipe section", "Pipe", "Length", "Height of its end", "Static there",
             "Running there", "Flow")  # fmt: skip
    return _table("Pipe sections", heads, rows, MOST_SECTIONS)


def _running(start: Start | None, at: int, reader: Reader) -> tuple[str, str, str]:
    """(static, running pressure at its end, flow) of a section with all of it open."""
    if start is None:
        return (said_of.NOT_KNOWN,) * 3
    rows = start.case.built.section_rows
    name = next((one for one, row in rows.items() if row == at), None)
    if name is None:
        return (said_of.NOT_KNOWN,) * 3
    end = start.past(start.case.after.network.run(name).end)
    static, running = start.static.get(end), start.case.after.pressure(end)
    return (
        start_steps.told_static(static, reader),
        said_of.running(running, reader),
        reader.show(abs(start.case.after.flows[name]), "flow"),
    )


def _outlets(work: Work, start: Start | None, reader: Reader) -> str:
    if start is None:
        return "<p>Readings at the outlets: not known. The supply could not be worked out yet.</p>"
    rows = [(*start_steps.outlet_cells(one, work.system, reader), "", "") for one in start.outlets]
    heads = ("Outlet", "Static", "Alone: pressure", "Alone: flow", BUCKET_WORDS[work.system],
             "All open: pressure", "All open: flow", "Read: pressure", "Read: time")  # fmt: skip
    return _table("Readings to expect at every outlet", heads, rows, MOST_OUTLETS)


def _table(title: str, heads: Sequence[str], rows: Sequence[Sequence[str]], most: int) -> str:
    """A table of texts, the rest of a long one counted."""
    head = "".join(f'<th scope="col">{escape(one)}</th>' for one in heads)
    body = "".join(
        f'<tr><th scope="row">{escape(row[0])}</th>'
        + "".join(f"<td>{escape(_unbroken(cell))}</td>" for cell in row[1:])
        + "</tr>"
        for row in rows[:most]
    )
    rest = len(rows) - most
    more = f"<p>And {rest} more on the page behind the link.</p>" if rest > 0 else ""
    return (
        f'<div class="sl-table" tabindex="0" role="region" aria-label="{escape(title)}">'
        f'<table class="sl-cells"><caption>{escape(title)}</caption><thead><tr>{head}</tr></thead>'
        f"<tbody>{body}</tbody></table></div>{more}"
    )


def _unbroken(cell: str) -> str:
    """A number and its unit stay on one line; longer words may be broken."""
    return cell.replace(" ", "\u00a0") if len(cell) < SHORT else cell


# Page two: parts, steps, cautions -------------------------------------------------------------


def _second(work: Work, start: Start | None, reader: Reader) -> str:
    steps = "".join(
        f"<li>{escape(do)}"
        + (f' <span class="sl-sheet-expect">{escape(expect)}</span>' if expect else "")
        + '<span class="sl-sheet-line">Read</span></li>'
        for do, expect in start_steps.steps(work, start, reader)
    )
    cautions = "".join(f"<li>{escape(one)}</li>" for one in _cautions(work))
    return (
        '<section class="sl-sheet-page"><h3>Fill, prime, start and test</h3>'
        f'<ol class="sl-sheet-steps">{steps}</ol><h3>Parts</h3>{_parts(work, start)}'
        "<h3>Before you work on it</h3>"
        f'<ul class="sl-sheet-cautions">{cautions}</ul>'
        f'<p class="sl-sheet-hand">{_hand("Left open or to be done")}</p></section>'
    )


def _parts(work: Work, start: Start | None) -> str:
    found = parts_needed.parts(work, start)
    items = "".join(
        f"<li><strong>{escape(one.count)}</strong> {escape(one.name)}"
        + (f" <small>({escape(one.note)})</small>" if one.note else "")
        + "</li>"
        for one in found[:MOST_PARTS]
    )
    rest = len(found) - MOST_PARTS
    more = f"<li>And {rest} more: count them in the tables.</li>" if rest > 0 else ""
    return f'<ul class="sl-sheet-parts">{items}{more}</ul>'


def _cautions(work: Work) -> list[str]:
    """What the parts warn of with these numbers, then standing advice of the supply's page."""
    found = [one for part in work.parts for one in _own(part)]
    keep_up = work.part("keep_up")
    standing = (keep_up.sheet if keep_up else find_sheet("keep_up")).cautions
    return list(dict.fromkeys([*standing, *found]))[:MOST_CAUTIONS]


def _own(part: Part) -> tuple[str, ...]:
    return part.answer.cautions if part.answer else ()
