"""The glossary, and hard words explained where they first stand on a page, from one table.

A hard word becomes a button that opens its meaning, by the browser's own popover: no script.
Where a browser knows no popovers the meanings stand at the end of the page.
"""

import re
from html import escape

from mkdocs.utils import get_relative_url

from calc.page import render
from calc.page.terms import TERMS, hard
from calc.sheets.start import start_picture

GLOSSARY = "{{ glossary }}"
HILLSIDE = "{{ hillside }}"
TAG = re.compile(r"<(/?)(\w+)([^>]*)>")
# text in these stays as it is: headings, links, code, what is pressed, the calculator
LEFT = {"h1", "h2", "h3", "a", "code", "pre", "button", "summary", "label", "section", "script",
        "strong", "em", "table"}  # fmt: skip
VOID = {"br", "hr", "img", "input", "meta", "link"}
SKIPPED = (
    "glossary.md",
    "changes.md",
    "hosting.md",
    "site-file.md",
    "about.md",
    "index.md",
    "checks.md",
)


def on_page_markdown(markdown, page, config, files):
    return markdown.replace(GLOSSARY, glossary()).replace(HILLSIDE, hillside(config))


def hillside(config):
    """The start page's picture; its parts lead to the guides, wherever the pages lie."""
    made = render.picture(start_picture()).replace("<figure ", '<figure markdown="0" ', 1)
    return re.sub(r'href="([\w-]+)/"', rf'href="\1{_ending(config)}"', made)


def glossary():
    """The whole table as a list of definitions."""
    parts = []
    for term in sorted(TERMS, key=lambda one: one.word.lower()):
        also = f" Also called: {', '.join(term.also)}." if term.also else ""
        parts.append(
            f'<dt id="{term.anchor}">{escape(term.word)}</dt>'
            f"<dd>{escape(_sentence(term.meaning))}{escape(also)}</dd>"
        )
    return f'<dl class="sl-glossary" markdown="0">{"".join(parts)}</dl>'


def on_page_content(html, page, config, files):
    if page.file.src_uri in SKIPPED:
        return html
    base = get_relative_url("", page.url)
    return explained(html, f"{base.rstrip('/')}/glossary{_ending(config)}")


def _ending(config):
    return "/" if config["use_directory_urls"] else ".html"


def explained(html, glossary_at):
    """``html`` with the first stand of each hard word in its text made a button."""
    waiting = {term.word: term for term in hard()}
    out, depth, at, shown = [], 0, 0, []
    for tag in TAG.finditer(html):
        text = html[at : tag.start()]
        out += [text if depth else _marked(text, waiting, shown), tag[0]]
        at = tag.end()
        if tag[2].lower() in LEFT and tag[2].lower() not in VOID:
            depth += -1 if tag[1] else 1
    out.append(html[at:])
    return "".join(out) + "".join(_meaning(term, glossary_at) for term in shown)


def _marked(text, waiting, shown):
    """A text between two tags with the first words found in it as buttons."""
    spots = []
    for term in list(waiting.values()):
        found = _pattern(term.word).search(text)
        if found and not any(a < found.end() and found.start() < b for a, b, _ in spots):
            spots.append((found.start(), found.end(), term))
            shown.append(waiting.pop(term.word))
    for start, end, term in sorted(spots, key=lambda one: -one[0]):
        button = (
            f'<button type="button" class="sl-term" popovertarget="sl-term-{term.anchor}">'
            f"{text[start:end]}</button>"
        )
        text = text[:start] + button + text[end:]
    return text


def _pattern(word):
    if word == "NPSH available":
        return re.compile(r"\bNPSH\b(?: available)?")
    if word == "cut-in and cut-out":
        return re.compile(r"\bcut-(?:in|out)\b")
    first = f"[{word[0].upper()}{word[0].lower()}]" if word[0].islower() else re.escape(word[0])
    return re.compile(rf"\b{first}{re.escape(word[1:])}s?\b")


def _meaning(term, glossary_at):
    return (
        f'<div popover id="sl-term-{term.anchor}" class="sl-meaning" data-search-exclude>'
        f"<p><strong>{escape(term.word)}</strong>: {escape(_sentence(term.meaning))} "
        f'<a href="{escape(glossary_at)}#{term.anchor}">All words</a></p></div>'
    )


def _sentence(meaning):
    return meaning[0].upper() + meaning[1:] + "."
