"""Put the box that reads a letter where a guide says ```enquiry```.

It shows once ``docs/assets/enquiry.js`` runs; script and style come only with this page.
"""

import re
from html import escape

from mkdocs.utils import get_relative_url

FENCE = re.compile(r"^```enquiry\s*\n```\s*$", re.MULTILINE)
MARK = '<div class="sl-enquiry-place"></div>'
LISTS = (  # name of the part, its heading, kind of list
    ("asked", "asks", "What to ask, what matters most first", "ol"),
    ("go", "goes", "Go on with these facts", "ul"),
    ("unused-all", "unused", "Numbers that were not understood", "ul"),
    ("left-all", "left", "Left out, and why", "ul"),
)


def on_page_markdown(markdown, page, config, files):
    return FENCE.sub(MARK, markdown)


def on_page_content(html, page, config, files):
    if MARK not in html:
        return html
    base = get_relative_url("", page.url)
    base = base if base.endswith("/") else f"{base}/"
    return html.replace(MARK, block(base, not config["use_directory_urls"]))


def block(base, flat):
    """The box, and the empty parts that the script fills."""
    files = escape(base)
    return (
        f'<div class="sl sl-enquiry" role="region" data-sl-enquiry data-base="{files}" '
        f'data-flat="{int(flat)}" aria-label="Read a letter" data-search-exclude>'
        f'<link rel="stylesheet" href="{files}assets/enquiry.css">'
        f'<script src="{files}assets/enquiry.js" defer></script>'
        '<noscript><p class="sl-status">Scripts are off, so no letter can be read here.</p>'
        "</noscript>"
        '<div class="sl-enquiry-box" data-sl-enquiry-box hidden>'
        '<label for="enquiry-text">Paste the letter</label>'
        '<span class="sl-help" id="enquiry-help">Plain text or a whole e-mail; you can drop a file '
        "here. It stays on this device</span>"
        '<textarea id="enquiry-text" rows="12" aria-describedby="enquiry-help" autocomplete="off" '
        'spellcheck="false" data-sl-enquiry-text></textarea>'
        '<div class="sl-enquiry-ways">'
        '<button type="button" data-sl-enquiry-read>Read it</button>'
        '<button type="button" data-sl-enquiry-clear>Empty the box</button></div>'
        '<p class="sl-enquiry-said" role="status" data-sl-enquiry-said></p></div>'
        f"{_found()}</div>"
    )


def _found():
    lists = "".join(
        f"<div data-sl-enquiry-{whole} hidden><h3>{heading}</h3>"
        f"<{tag} data-sl-enquiry-{name}></{tag}></div>"
        for whole, name, heading, tag in LISTS
    )
    return (
        "<div data-sl-enquiry-found hidden><ul data-sl-enquiry-notes></ul>"
        "<h3>What was read</h3>"
        '<span class="sl-help">Untick what is wrong, or correct it</span>'
        '<ul class="sl-enquiry-facts" data-sl-enquiry-facts></ul>'
        "<div data-sl-enquiry-choices></div>"
        "<h3>The letter</h3>"
        '<div class="sl-enquiry-marked" tabindex="0" role="region" aria-label="The letter, marked" '
        f"data-sl-enquiry-marked></div>{lists}</div>"
    )
