"""Put the letter to a customer where a guide says ```reply; ```installer: the sheet of paper.

Both show once ``docs/assets/desk_paper.js`` runs; script and style come only with these pages.
"""

import re
from html import escape

from mkdocs.utils import get_relative_url

FENCE = re.compile(r"^```(reply|installer)\s*\n```\s*$", re.MULTILINE)
MARK = re.compile(r'<div class="sl-desk-place" data-what="(reply|installer)"></div>')
UNITS = (
    '<div class="sl-desk-units" role="group" aria-label="Units">'
    '<button type="button" data-sl-desk-system="metric">Metric</button>'
    '<button type="button" data-sl-desk-system="us">US</button></div>'
)
SAID = '<p class="sl-desk-said" role="status" data-sl-desk-said></p>'


def on_page_markdown(markdown, page, config, files):
    return FENCE.sub(r'<div class="sl-desk-place" data-what="\1"></div>', markdown)


def on_page_content(html, page, config, files):
    base = get_relative_url("", page.url)
    base = base if base.endswith("/") else f"{base}/"
    flat = not config["use_directory_urls"]
    return MARK.sub(lambda mark: block(mark[1], base, flat), html)


def block(what, base, flat):
    """The box of a page, with the parts that the script fills."""
    files, inside = escape(base), _reply() if what == "reply" else _installer()
    name = "The reply" if what == "reply" else "The installer’s sheet"
    return (
        f'<div class="sl sl-desk sl-desk-{what}" role="region" data-sl-desk="{what}" '
        f'data-base="{files}" data-flat="{int(flat)}" aria-label="{name}" data-search-exclude>'
        f'<link rel="stylesheet" href="{files}assets/desk_paper.css">'
        f'<script src="{files}assets/desk_paper.js" defer></script>'
        '<noscript><p class="sl-status">Scripts are off, so nothing can be worked out here.</p>'
        f"</noscript><div data-sl-desk-box hidden>{inside}</div></div>"
    )


def _reply():
    return (
        '<p class="sl-desk-whose" data-sl-desk-whose></p>'
        '<div class="sl-desk-ways"><button type="button" data-sl-desk-do="copy">Copy the letter'
        '</button><button type="button" data-sl-desk-do="plain">Copy as plain text</button>'
        f"{UNITS}</div>{SAID}"
        '<div class="sl-desk-letter" tabindex="0" role="region" aria-label="The letter" '
        "data-sl-desk-letter></div>"
        "<fieldset data-sl-desk-may hidden><legend>What may the customer change?</legend>"
        '<p class="sl-help" data-sl-desk-courtesy></p><div data-sl-desk-ticks></div></fieldset>'
        '<div class="sl-desk-mail"><label for="desk-mail">Paste the customer’s mail or link</label>'
        '<span class="sl-help" id="desk-mail-help">A whole mail, or a link that a mail program '
        "broke; it stays on this device</span>"
        '<textarea id="desk-mail" rows="5" aria-describedby="desk-mail-help" autocomplete="off" '
        'spellcheck="false" data-sl-desk-mail></textarea>'
        '<button type="button" data-sl-desk-do="find">Find the link</button>'
        '<div role="status"><ul data-sl-desk-found></ul></div></div>'
    )


def _installer():
    return (
        '<p class="sl-desk-whose" data-sl-desk-whose></p>'
        '<div class="sl-desk-ways"><button type="button" data-sl-desk-do="print">Print, or save as '
        'PDF</button><button type="button" data-sl-desk-do="svg">Download the drawing</button>'
        f"{UNITS}</div>{SAID}"
        '<div class="sl-sheet" data-sl-desk-sheet></div>'
    )
