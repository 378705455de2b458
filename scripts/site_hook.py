"""Put a worked, printable calculator where a guide says ```calculator <key>```.

The fence becomes a mark in the Markdown and the mark becomes HTML afterwards, so
Markdown never sees the calculator's inside.
"""

import json
import re
from html import escape

import vl_convert
from mkdocs.utils import get_relative_url

import calc
from calc.page import charts, render
from calc.page.fields import Rows
from calc.page.form import work
from calc.page.state import State
from calc.sheets import KEYS, site_ops, views
from calc.sheets import sheet as find_sheet
from calc.sheets.addresses import addresses
from calc.site import link

PAGES = {find_sheet(key).page.rstrip("/"): find_sheet(key) for key in KEYS}
NUMBERS = re.compile(r"\]\(([\w-]+\.md)?#([^)\s]*=[^)\s]*)\)")
FENCE = re.compile(r"^```calculator\s*\n\s*(\w+)\s*\n```\s*$", re.MULTILINE)
MARK = re.compile(r'<div class="sl-place" data-sheet="(\w+)"></div>')
SEARCH = re.compile(r'(<div class="md-search"[^>]*role="dialog")>')
DRAWING = re.compile(
    r'(<figure class="sl-chart" data-chart="([^"]+)">.*?<div class="sl-drawing"[^>]*>)(</div>)',
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
    return MARK.sub(lambda mark: calculator(mark[1], base, flat), html)


def on_page_context(context, page, config, nav):
    context["springline_version"] = calc.__version__
    return context


def on_post_page(output, page, config):
    """Name the search dialog, which the theme leaves without a name for screen readers."""
    return SEARCH.sub(r'\1 aria-label="Search">', output)


def on_post_template(output, template_name, config):
    return SEARCH.sub(r'\1 aria-label="Search">', output)


def calculator(key, base, flat):
    """The whole calculator: form, printed example in both systems, actions."""
    sheet = find_sheet(key)
    metric, us = (printed(sheet, system, base, flat) for system in ("metric", "us"))
    cautions = "".join(f"<li>{escape(caution)}</li>" for caution in sheet.cautions)
    safety = (
        '<div class="sl-cautions"><p><strong>Before you work on it</strong></p>'
        f"<ul>{cautions}</ul></div>"
        if cautions
        else ""
    )
    wide = " sl-wide" if any(isinstance(entry, Rows) for entry in sheet.fields) else ""
    return (
        f'<section class="sl{wide}" data-sheet="{key}" data-base="{base}" data-flat="{int(flat)}" '
        f'aria-label="Calculator: {escape(sheet.title)}" data-search-exclude>'
        f"{_bar(sheet, key)}"
        f'<div class="sl-paper"><div class="sl-scan"></div><p class="sl-address"></p></div>'
        f'<form class="sl-form" action="#" autocomplete="off" novalidate aria-label="Your numbers">'
        f"{render.form(sheet, key)}</form>"
        f'<div class="sl-status" role="status">A worked example, printed with the page.</div>'
        f'<noscript><p class="sl-status">Scripts are off, so the numbers can be read but not '
        f"changed. Everything below is a complete example.</p></noscript>"
        f'<div class="sl-answer">{metric}</div><template class="sl-us">{us}</template>'
        f"{_actions()}{safety}"
        f'<p class="sl-live" aria-live="polite"></p></section>'
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


def _actions():
    return (
        '<div class="sl-actions"><button type="button" data-action="link">Copy link</button>'
        '<button type="button" data-action="text">Copy as text</button>'
        '<button type="button" data-action="print">Print</button>'
        '<button type="button" data-action="reset">Back to the example</button>'
        '<span class="sl-said" role="status"></span></div>'
    )


def printed(sheet, system, base, flat):
    """The default example worked out and drawn. Raises ``ValueError`` if it has errors."""
    outcome = work(sheet, State(system))
    if outcome.answer is None:
        raise ValueError(f"the {system} example of {sheet.key} does not work out: {outcome.errors}")
    drawings = {c.key: _svg(charts.spec(c, outcome.reader)) for c in outcome.answer.charts}
    html = render.answer(outcome, addresses(sheet, State(system), outcome.example, base, flat))
    return DRAWING.sub(lambda found: found[1] + drawings[found[2]] + found[3], html)


def _svg(spec):
    svg = vl_convert.vegalite_to_svg(json.dumps(spec))
    return svg.replace("<svg ", '<svg focusable="false" aria-hidden="true" ', 1)
