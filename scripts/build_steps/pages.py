"""The pages: mkdocs makes them, then what it wrote is mended and checked."""

import os
import re
import sys
from html.parser import HTMLParser
from pathlib import Path

from scripts.build_steps import release
from scripts.build_steps.places import ROOT, run

SHIM = "https://unpkg.com/iframe-worker/shim"  # written by the theme's offline plugin
LOADED = {"script": "src", "img": "src", "iframe": "src", "source": "src", "embed": "src",
          "video": "src", "audio": "src", "object": "data"}  # fmt: skip
LOADED_LINKS = {"stylesheet", "preload", "modulepreload", "prefetch", "preconnect", "icon",
                "dns-prefetch", "manifest", "apple-touch-icon"}  # fmt: skip
ELSEWHERE = re.compile(r"^\s*(?:https?:)?//", re.IGNORECASE)
STYLE_ADDRESS = re.compile(
    r"(?:url\(\s*|@import\s+)[\"']?(\s*(?:https?:)?//[^\"')\s]+)", re.IGNORECASE
)


def make(config, folder):
    """Run mkdocs, strictly where the configuration says so."""
    quiet = {**os.environ, "NO_MKDOCS_2_WARNING": "1", "PYTHONDONTWRITEBYTECODE": "1"}
    quiet.update(release.environment())
    command = [sys.executable, "-m", "mkdocs", "build", "--quiet", "--clean"]
    command += ["--config-file", str(config), "--site-dir", str(folder)]
    run(command, cwd=ROOT, env=quiet)


def mend(folder):
    """Use our own copy of the search shim instead of one from another origin."""
    for path in sorted(folder.rglob("*.html")):
        text = path.read_text()
        if SHIM in text:
            up = os.path.relpath(folder / "vendor" / "iframe-worker.js", path.parent)
            path.write_text(text.replace(SHIM, Path(up).as_posix()))


class _Loads(HTMLParser):
    """Collects the addresses that a page loads by itself, not those it links to."""

    def __init__(self):
        super().__init__()
        self.found = []
        self.in_style = False

    def handle_starttag(self, tag, attributes):
        given = {name: value or "" for name, value in attributes}
        self.in_style = tag == "style"
        if tag in LOADED:
            self.found.append(given.get(LOADED[tag], ""))
            self.found += [part.strip() for part in given.get("srcset", "").split(",")]
        elif tag == "link" and LOADED_LINKS & set(given.get("rel", "").lower().split()):
            self.found.append(given.get("href", ""))
        self.found += STYLE_ADDRESS.findall(given.get("style", ""))

    def handle_data(self, data):
        if self.in_style:
            self.found += STYLE_ADDRESS.findall(data)


def foreign_loads(text):
    """Addresses on other origins that a page would load as script, style, font or image."""
    parser = _Loads()
    parser.feed(text)
    return [address for address in parser.found if ELSEWHERE.match(address)]


def check(folder):
    """Raise ``ValueError`` where a page or a style sheet loads from another origin."""
    wrong = []
    for path in sorted(folder.rglob("*.html")):
        wrong += [f"{path.relative_to(folder)}: {a}" for a in foreign_loads(path.read_text())]
    for path in sorted(folder.rglob("*.css")):
        found = STYLE_ADDRESS.findall(path.read_text())
        wrong += [f"{path.relative_to(folder)}: {address}" for address in found]
    if wrong:
        raise ValueError("loads from another origin:\n  " + "\n  ".join(wrong))
