"""Our scripts in two files: what must run before a page is painted, and the rest.

Each request costs a round of the line, and a page's policy keeps browsers from asking for scripts
before they come to them. The theme's template names every script by itself; here the names are
taken from the pages and the files put together in their order.
"""

import re

from scripts.build_steps.places import SCRIPTS

HEAD, PAGE = "assets/head.js", "assets/page.js"
# of few pages, which name them by themselves
APART = {"places", "track", "enquiry", "whole", "desk_paper"}
SOURCES = SCRIPTS.parent / "docs" / "assets"
OURS = sorted(path.stem for path in SOURCES.glob("*.js") if path.stem not in APART)
TAG = re.compile(
    r'<script src="(?P<up>(?:\.\./)*)(?P<name>runtime/manifest|assets/(?:NAMES))\.js"'
    r"(?P<late> defer)?></script>\n?".replace("NAMES", "|".join(OURS))
)


def write(folder):
    """Put the scripts that the pages of ``folder`` name into two, and the pages' tags with them.

    Raises ``ValueError`` where pages do not name the same scripts.
    """
    pages = {path: path.read_text() for path in sorted(folder.rglob("*.html"))}
    lists = {path: named(text) for path, text in pages.items()}
    wanted = {names for names in lists.values() if names[0]}
    if len(wanted) != 1:
        raise ValueError(f"pages name different scripts: {sorted(wanted)}")
    for target, names in zip((HEAD, PAGE), wanted.pop(), strict=True):
        texts = ((folder / f"{name}.js").read_text() for name in names)
        (folder / target).write_text("".join(texts))
    for path, text in pages.items():
        if lists[path][0]:
            path.write_text(_with_two(text))
    for name in OURS:
        (folder / "assets" / f"{name}.js").unlink()


def named(text):
    """(names of those that run at once, names of those that run later) of a page."""
    found = list(TAG.finditer(text))
    now = tuple(one["name"] for one in found if not one["late"])
    return now, tuple(one["name"] for one in found if one["late"])


def _with_two(text):
    """The page with one tag in place of the first of each kind."""
    seen = set()

    def tag(found):
        target, late = (PAGE, " defer") if found["late"] else (HEAD, "")
        if target in seen:
            return ""
        seen.add(target)
        return f'<script src="{found["up"]}{target}"{late}></script>\n'

    return TAG.sub(tag, text)
