"""Put a worked, printable calculator where a guide says ```calculator <key>```.

The fence becomes a mark in the Markdown and the mark becomes HTML afterwards, so
Markdown never sees the calculator's inside.
"""

import itertools
import json
import re
from html import escape

import vl_convert
from mkdocs.utils import get_relative_url

import calc
from calc.page import blank, charts, render
from calc.page.fields import Rows
from calc.page.form import work
from calc.page.state import State
from calc.sheets import KEYS, jobs, site_ops, views
from calc.sheets import sheet as find_sheet
from calc.sheets.addresses import addresses
from calc.site import link
from scripts import place_chooser, track_box

PAGES = {find_sheet(key).page.rstrip("/"): find_sheet(key) for key in KEYS}
NUMBERS = re.compile(r"\]\(([\w-]+\.md)?#([^)\s]*=[^)\s]*)\)")
FENCE = re.compile(r"^```calculator\s*\n\s*(\w+)\s*\n```\s*$", re.MULTILINE)
TABLE = re.compile(r"<table>(.*?)</table>", re.S)
HEADING = re.compile(r"<th[^>]*>([^<]*)</th>")
MARK = re.compile(r'<div class="sl-place" data-sheet="(\w+)"></div>')
SKIP = re.compile(r'<div data-md-component="skip">')
NUMBERS_AT = re.compile(r'<div class="sl-entry" id="([\w-]+)-numbers"')
AHEAD = re.compile(r'<link rel="(?:next|prev)"[^>]*>\s*')
SEARCH = re.compile(r'(<div class="md-search"[^>]*role="dialog")>')
DRAWING = re.compile(
    r'(<figure class="sl-chart" data-chart="([^"]+)">.*?<div class="sl-plot"[^>]*>)(</div>)',
    re.S,
)


# the zip is made after the pages, so Markdown must not look for it
DOWNLOAD = (
    '<p><a class="md-button" href="../download/springline.zip" download>'
    "Download the folder (about 13 MB)</a></p>"
)
COPY = "You are reading that folder now."


def on_page_markdown(markdown, page, config, files):
    told = DOWNLOAD if config["use_directory_urls"] else COPY
    markdown = with_links(markdown.replace("{{ download }}", told), page.file.src_uri)
    return FENCE.sub(r'<div class="sl-place" data-sheet="\1"></div>', markdown)


def with_links(markdown, name):
    """The guides' links to numbers, written short, as links that say all they use."""

    def written(found):
        sheet = PAGES.get((found[1] or name).removesuffix(".md"))
        if sheet is None:
            return found[0]
        read = link.read(found[2], sheet)
        if not read.trusted:
            raise ValueError(f"{name}: {found[2]} cannot be read: {' '.join(read.said)}")
        return f"]({found[1] or ''}#{link.write(sheet, read.state)})"

    return NUMBERS.sub(written, markdown)


def on_page_content(html, page, config, files):
    base = get_relative_url("", page.url)
    base = base if base.endswith("/") else f"{base}/"
    flat = not config["use_directory_urls"]
    return MARK.sub(lambda mark: calculator(mark[1], base, flat), parted(with_tables(html)))


def with_tables(html):
    """A guide's own tables in scrollers that have a name and can be reached by the Tab key."""
    numbers = itertools.count(1)

    def framed(found):
        heads = ", ".join(HEADING.findall(found[1]))
        return (
            f'<div class="sl-table" tabindex="0" role="region" '
            f'aria-label="Table {next(numbers)}: {escape(heads)}">'
            f'<table class="sl-cells">{found[1]}</table></div>'
        )

    return TABLE.sub(framed, html)


def parted(html):
    """A guide whose question and prose before the calculator the scripts can move: a link with
    numbers opens on the answer, and the prose follows."""
    found = MARK.search(html)
    before, end, lead = html[: found.start()].partition("</h1>") if found else (html, "", "")
    if not end:
        return html
    question = before.replace("<h1", "<h1 data-sl-question", 1)
    return f"{question}{end}<div data-sl-lead>{lead}</div>{html[found.start() :]}"


def on_page_context(context, page, config, nav):
    context["springline_version"] = calc.__version__
    return context


def on_post_page(output, page, config):
    """Name the search dialog, which the theme leaves without a name for screen readers; offer those
    who use the Tab key a way past the menu to the numbers, and one to the answer; have no browser
    fetch pages ahead, which the policy would forbid."""
    output = AHEAD.sub("", output)
    found = NUMBERS_AT.search(output)
    if found:
        skip = "".join(
            f'<a href="#{found[1]}-{place}" class="md-skip">Skip to the {place}</a>'
            for place in ("numbers", "answer")
        )
        output = SKIP.sub(lambda place: place[0] + skip, output, count=1)
    return SEARCH.sub(r'\1 aria-label="Search">', output)


def on_post_template(output, template_name, config):
    return SEARCH.sub(r'\1 aria-label="Search">', output)


def calculator(key, base, flat):
    """The whole calculator: form, printed example in both systems, actions."""
    sheet = find_sheet(key)
    (top, beside, more), us = (printed(sheet, system, base, flat) for system in ("metric", "us"))
    wide = any(isinstance(entry, Rows) for entry in sheet.fields if entry.key not in sheet.replaced)
    answer = f'<div class="sl-answer" id="{key}-answer">{top}{_share()}{beside}</div>'
    above = place_chooser.above(sheet, key, base, flat) | track_box.above(sheet, key, base)
    entry = (
        f'<div class="sl-entry" id="{key}-numbers"><p class="sl-glance" aria-hidden="true"></p>'
        '<form class="sl-form" action="#" autocomplete="off" novalidate aria-label="Your numbers">'
        f"{render.form(sheet, key, above)}</form></div>"
    )
    said = f"{_status()}{answer}"
    return (
        f'<section class="sl{" sl-wide" if wide else ""}" data-sheet="{key}" data-base="{base}" '
        f'data-flat="{int(flat)}" data-sl-figures="example" '
        f'aria-label="Calculator: {escape(sheet.title)}" data-search-exclude>'
        f"{_paper()}{_bar(sheet, key)}{said + entry if wide else entry + said}{more}{_job(key)}"
        f'<template class="sl-us">{"".join(us)}</template>'
        f"<template data-sl-blank>{blank.form(sheet)}</template>"
        f"{_actions()}{_safety(sheet)}"
        '<p class="sl-live" aria-live="polite"></p></section>'
    )


def _paper():
    """What only paper shows: the address, its code, and that figures are left out."""
    return (
        '<div class="sl-paper"><div class="sl-scan"></div><p class="sl-address"></p></div>'
        '<p class="sl-foreign">No figures are printed here: those on the screen do not belong to '
        "the numbers in the form. Wait for the answer, then print again.</p>"
    )


def _status():
    return (
        '<div class="sl-status"><strong>Example.</strong> These numbers are those of Alder '
        "Terrace, not yours.</div>"
        '<noscript><p class="sl-status">Scripts are off, so the numbers can be read but not '
        "changed. Everything below is a complete example.</p></noscript>"
    )


def _safety(sheet):
    cautions = "".join(f"<li>{escape(caution)}</li>" for caution in sheet.cautions)
    return (
        '<div class="sl-cautions"><p><strong>Before you work on it</strong></p>'
        f"<ul>{cautions}</ul></div>"
        if cautions
        else ""
    )


def _bar(sheet, key):
    return (
        f'<div class="sl-bar"><h2 class="sl-title" id="{key}-calculator">{escape(sheet.title)}</h2>'
        '<div class="sl-system" role="group" aria-label="Units">'
        '<button type="button" data-system="metric" aria-pressed="true">Metric</button>'
        '<button type="button" data-system="us" aria-pressed="false">US</button></div>'
        f"{_site(key)}</div>"
    )


def _site(key):
    """Whose numbers these are: all of it that the page can say without a script."""
    filled = site_ops.handle(
        {"op": "site", "do": "fill", "sheet": key, "site": site_ops.handle({"do": "demo"})["site"]}
    )
    first = views.EXAMPLE_WAYS.get(key, "")
    ways = "".join(
        f'<option value="{escape(one["value"])}">{escape(one["label"])}</option>'
        for one in sorted(filled["ways"], key=lambda one: one["value"] != first)
    )
    hidden = "" if len(filled["ways"]) > 1 else " hidden"
    return (
        f'<div class="sl-site" data-sl-site="{escape(" ".join(filled["one_to_one"]))}">'
        '<p class="sl-site-whose"><span data-sl-site-whose><strong>Alder Terrace</strong>, '
        'our example</span> <span class="sl-site-about" data-sl-site-about></span></p>'
        f'<button type="button" data-sl-sites aria-expanded="false" aria-controls="{key}-sites">'
        f'Sites</button><div class="sl-site-menu" id="{key}-sites" data-sl-site-menu hidden></div>'
        f'<label class="sl-site-way" data-sl-site-way{hidden}>for <select>{ways}</select></label>'
        '<button type="button" data-sl-site-back hidden>Put these numbers back into the site'
        '</button><button type="button" data-sl-site-save hidden>Save changes</button>'
        '<div class="sl-site-said" role="status" data-sl-site-said></div></div>'
    )


def _share():
    return (
        '<div class="sl-share"><button type="button" data-action="share" hidden>Share</button>'
        '<button type="button" data-action="link">Copy link</button>'
        '<button type="button" data-action="letter">Copy as a letter</button>'
        '<button type="button" data-action="print">Print</button>'
        '<span class="sl-said" role="status"></span></div>'
    )


def _job(key):
    """Where what takes seconds is begun, ended and shown."""
    if key not in jobs.KEYS:
        return ""
    return (
        '<div class="sl-job"><p><strong>Other designs.</strong> Try panels, batteries and tanks of '
        "many sizes on this year, and the best of them on all twenty. It takes some seconds.</p>"
        '<p><button type="button" data-sl-job-start>Find designs that keep to it</button> '
        '<button type="button" data-sl-job-stop hidden>Stop</button> '
        '<progress data-sl-job-bar aria-label="Designs worked out" hidden></progress> '
        '<span role="status" data-sl-job-said></span></p><div data-sl-job-found></div></div>'
    )


def _actions():
    return (
        '<div class="sl-actions"><button type="button" data-action="text">Copy with the working'
        '</button><button type="button" data-action="blank">Print a blank form</button>'
        '<button type="button" data-action="reset">Back to the example</button></div>'
    )


def printed(sheet, system, base, flat):
    """The default example worked out and drawn. Raises ``ValueError`` if it has errors."""
    outcome = work(sheet, State(system))
    if outcome.answer is None:
        raise ValueError(f"the {system} example of {sheet.key} does not work out: {outcome.errors}")
    drawings = {c.key: _svg(charts.spec(c, outcome.reader)) for c in outcome.answer.charts}
    parts = render.parts(outcome, addresses(sheet, State(system), outcome.example, base, flat))
    return [
        DRAWING.sub(lambda found: found[1] + drawings[found[2]] + found[3], html) for html in parts
    ]


def _svg(spec):
    svg = vl_convert.vegalite_to_svg(json.dumps(spec))
    return svg.replace("<svg ", '<svg focusable="false" aria-hidden="true" ', 1)
