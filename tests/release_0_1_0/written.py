"""Links that 0.1.0 wrote itself: in its answers, and those that stand in its guides."""

import json
import re
from html import unescape

from calc.bridge import handle
from tests.release_0_1_0 import store
from tests.release_0_1_0.frozen import load

_HREF = re.compile(r'href="([^"#]*)#([^"]*)"')
_GUIDE = re.compile(r"\]\(([^)#\s]*)#([^)\s]*=[^)\s]*)\)")


def in_answers():
    """{sheet key: links that answers to the stored requests offer}, in their order."""
    pages = {one["page"]: key for key, one in load()["sheets"].items()}
    found = {key: {} for key in pages.values()}
    for key in found:
        for line in store.read("replies", key):
            request = {**line["request"], "base": "", "flat": False}
            reply = json.loads(handle(json.dumps(request)))
            for page, fragment in _HREF.findall(reply.get("html", "")):
                found[pages[page]][unescape(fragment)] = None
    return {key: list(links) for key, links in found.items()}


def in_guide(key, docs):
    """The links to numbers in the guide that holds calculator ``key``."""
    name = load()["sheets"][key]["page"].rstrip("/") + ".md"
    links = _GUIDE.findall((docs / name).read_text(encoding="utf-8"))
    return list(dict.fromkeys(fragment for page, fragment in links if not page))
