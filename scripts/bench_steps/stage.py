"""The site, with Pyodide as it is published and bare pages of it beside, and a fresh browser."""

import contextlib
import functools
import json
import os
import sys
import tempfile
import threading
from pathlib import Path

from playwright.sync_api import sync_playwright

from scripts.browser import FLAGS, chromium_path
from scripts.build_steps import runtime, wheel
from scripts.build_steps.places import ROOT, SITE
from scripts.serve_site import HOST, Handler, Server

BARE_PAGE = "bare.html"  # Pyodide alone
IMPORT_PAGE = "bare-import.html"  # Pyodide, then calc unpacked and every sheet imported
BARE = "bare-pyodide"  # the folder of its files
BARE_WORKER = """\
import {{ loadPyodide }} from "./{folder}/pyodide.mjs";
const base = new URL("./{folder}/", location).href;
const python = await loadPyodide({{ indexURL: base }});
{then}
postMessage("ready");
"""
IMPORT = """\
const wheel = await (await fetch(base + "{wheel}")).arrayBuffer();
python.unpackArchive(wheel, "wheel");
python.runPython("import importlib, calc.bridge, calc.sheets\\n"
  + "for key in calc.sheets.KEYS: calc.sheets.sheet(key)");
"""
BARE_SCRIPT = """\
const worker = new Worker("WORKER", { type: "module" });
worker.onmessage = () => { window.LIVE_AT = performance.now(); };
"""
WATCH = """\
document.addEventListener("DOMContentLoaded", () => {
  const section = document.querySelector("section.sl");
  if (!section) return;
  new MutationObserver(() => {
    if (section.dataset.state === "live") window.LIVE_AT ||= performance.now();
  }).observe(section, { attributeFilter: ["data-state"] });
});
"""
LONGEST = 120_000  # ms; after that something is wrong
PAUSE = 50  # ms between looks; the page itself notes the time, so it adds nothing


class _Noting(Handler):
    """Serves a folder and keeps the paths asked for in the server's ``asked``."""

    def send_head(self):
        self.server.asked.append(self.path.split("?")[0])
        return super().send_head()


class _Stage(Server):
    """Keeps quiet where a closed browser hangs up in the middle of a file."""

    def handle_error(self, request, client_address):
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)


def write_bare(folder):
    """Put Pyodide and pages that start it into ``folder``."""
    made = folder / BARE
    made.mkdir()
    for name, content in runtime.published().items():
        (made / name).write_bytes(content)
    (made / "pyodide-lock.json").write_text(json.dumps(runtime.lock()))
    packed = wheel.write(ROOT, made).name
    for page, then in ((BARE_PAGE, ""), (IMPORT_PAGE, IMPORT.format(wheel=packed))):
        stem = page.removesuffix(".html")
        (folder / page).write_text(f'<!doctype html><script src="{stem}.js"></script>')
        (folder / f"{stem}.js").write_text(BARE_SCRIPT.replace("WORKER", f"{stem}-worker.js"))
        (folder / f"{stem}-worker.js").write_text(BARE_WORKER.format(folder=BARE, then=then))


@contextlib.contextmanager
def served(handler=_Noting, line=None):
    """(server, address) of the site with the bare pages in it; ``server.folder`` is on disk."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for path in SITE.iterdir():
            (folder / path.name).symlink_to(path)
        write_bare(folder)
        with _Stage((HOST, 0), functools.partial(handler, directory=name)) as server:
            server.asked, server.folder, server.line = [], folder, line
            threading.Thread(target=server.serve_forever, daemon=True).start()
            yield server, f"http://{HOST}:{server.server_port}/"
            server.shutdown()


def flags():
    """Chromium's switches; as root it will not start with its sandbox."""
    return [*FLAGS, *(["--no-sandbox"] if os.name == "posix" and os.geteuid() == 0 else [])]


@contextlib.contextmanager
def fresh_browser():
    """A browser that has stored nothing, but keeps what it is given as a reader's would."""
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as profile:
        context = playwright.chromium.launch_persistent_context(
            profile, executable_path=chromium_path(), args=flags(), locale="en-GB"
        )
        context.add_init_script(WATCH)
        try:
            yield context
        finally:
            context.close()


def live_page(context, address, longest=LONGEST):
    """(page, ms): ``address`` opened, and the time until Python had answered there."""
    page = context.new_page()
    page.goto(address, wait_until="commit")
    # looked at from here: the page's policy lets nobody evaluate text in it to wait
    for _ in range(longest // PAUSE):
        taken = page.evaluate("window.LIVE_AT")
        if taken:
            return page, taken
        page.wait_for_timeout(PAUSE)
    raise TimeoutError(f"no answer at {address} within {longest / 1000:g} s")


def until_live(context, address, longest=LONGEST):
    """Time from opening ``address`` until Python has answered there, ms."""
    page, taken = live_page(context, address, longest)
    page.close()
    return taken
