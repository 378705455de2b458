"""Put the whole answer where a guide says ```whole```, and two ways side by side for ```compare```.

Both are printed complete with Alder Terrace, so that they are right before any script runs; the
script fills the same places for a link with a site.
"""

import re
from html import escape

from mkdocs.utils import get_relative_url

from calc.desk import compare, whole

FENCE = re.compile(r"^```(whole|compare)\s*\n```\s*$", re.MULTILINE)
MARK = re.compile(r'<div class="sl-desk-place" data-desk="(whole|compare)"></div>')
EXAMPLE = "Alder Terrace, an invented example."
WHOLE = (  # place, its heading, tag of what is in it
    ("outlets", "", "div"),
    ("set", "", "div"),
    ("changes", "The three changes that matter most", "div"),
    ("fails", "What would make it fail", "div"),
    ("bands", "How sure the figures are", "div"),
    ("list", "Every part", "ul"),
    ("assumed", "What was assumed", "div"),
    ("unchecked", "What was not checked", "div"),
    ("goes", "Go on with this site", "div"),
)
COMPARE = (
    ("one", "", "div"),
    ("facts", "", "div"),
    ("verdicts", "", "div"),
    ("outlets", "", "div"),
)


def on_page_markdown(markdown, page, config, files):
    return FENCE.sub(r'<div class="sl-desk-place" data-desk="\1"></div>', markdown)


def on_page_content(html, page, config, files):
    if not MARK.search(html):
        return html
    base = get_relative_url("", page.url)
    base = base if base.endswith("/") else f"{base}/"
    flat = not config["use_directory_urls"]
    made = {"whole": whole_block, "compare": compare_block}
    return MARK.sub(lambda mark: made[mark[1]](base, flat), html)


def _block(kind, name, base, flat, inside):
    files = escape(base)
    return (
        f'<div class="sl sl-whole" role="region" data-sl-desk="{kind}" data-base="{files}" '
        f'data-flat="{int(flat)}" aria-label="{name}" data-search-exclude>'
        f'<link rel="stylesheet" href="{files}assets/whole.css">'
        f'<script src="{files}assets/whole.js" defer></script>{inside}</div>'
    )


def _places(places, parts):
    found = []
    for name, heading, tag in places:
        title = f"<h2>{heading}</h2>" if heading else ""
        body = f'<{tag} data-sl-place="{name}">{parts.get(name, "")}</{tag}>'
        found.append(f'<div class="sl-whole-{name}">{title}{body}</div>')
    return "".join(found)


def whole_block(base, flat):
    """The whole answer of the example, and the places that the script fills."""
    parts = whole.all_of("", base, flat)
    inside = (
        f'<p class="sl-whole-name" data-sl-desk-name>{EXAMPLE}</p>'
        '<p class="sl-whole-said" role="status" data-sl-desk-said></p>'
        f'<div data-sl-place="top">{parts["top"]}</div>{_places(WHOLE, parts)}'
    )
    return _block("whole", "The whole answer", base, flat, inside)


def compare_block(base, flat):
    """Two boxes for links, and the example compared."""
    parts = compare.all_of(base, flat)
    boxes = "".join(
        f'<div class="sl-whole-box"><label for="compare-{key}">{label}</label>'
        f'<span class="sl-error" role="alert" id="compare-{key}-error" data-sl-desk-error="{key}" '
        "hidden></span>"
        f'<input type="text" id="compare-{key}" data-sl-desk-link="{key}" autocomplete="off" '
        f'spellcheck="false" aria-describedby="compare-{key}-error">'
        f'<select data-sl-desk-saved="{key}" aria-label="{label}, a saved site" hidden></select>'
        "</div>"
        for key, label in (("a", "Link of way A"), ("b", "Link of way B"))
    )
    inside = (
        f'<form class="sl-whole-boxes" action="#" novalidate data-sl-desk-form hidden>{boxes}'
        '<div class="sl-whole-ways"><button type="submit">Compare</button>'
        '<button type="button" data-sl-desk-copy hidden>Copy the link of both</button></div></form>'
        f'<p class="sl-whole-name" data-sl-desk-name>{EXAMPLE} B has a wider pipe.</p>'
        '<p class="sl-whole-said" role="status" data-sl-desk-said></p>'
        f'<div data-sl-place="top">{parts["top"]}</div>{_places(COMPARE, parts)}'
    )
    return _block("compare", "Two ways side by side", base, flat, inside)
