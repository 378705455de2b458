"""Tell the theme which release this is, and the page for a missing address what there is."""

import json

from calc.sheets import KEYS, sheet
from scripts.build_steps import release

# Pages that once had another name: {old: new}, as in {"reach": "head"}. Add a line when a page
# is renamed, so that links readers hold still open with their numbers. Sheets' keys are known.
RENAMED = {}


def on_config(config):
    config["extra"]["release"] = release.name()
    return config


def on_template_context(context, template_name, config):
    if template_name == "404.html":
        pages = [[page.url, page.title] for page in context["nav"].pages]
        known = {"pages": [["" if url == "./" else url, title] for url, title in pages]}
        known["renamed"] = {**{key: _folder(sheet(key).page) for key in KEYS}, **RENAMED}
        # "<" cannot end the script element that holds this
        context["known"] = json.dumps(known, sort_keys=True).replace("<", "\\u003c")
    return context


def _folder(page):
    return page.rstrip("/").removesuffix(".md")
