"""Take the pictures of the README from the built site, as a phone of 360 x 740 px shows it.

Light scheme, numbers of Alder Terrace only.  Run by ``scripts/pictures``.
"""

import functools
import http.server
import os
import sys
import threading

from playwright.sync_api import sync_playwright

from calc.page.state import State
from calc.sheets import sheet
from calc.site import link
from scripts.browser import FLAGS, chromium_path
from scripts.build_steps.places import ROOT, SITE

PLACE = ROOT / "docs" / "pictures"
SCREEN = {"width": 360, "height": 740}  # px
SHARP = 1  # pixels of the picture to one of the screen: more would be over MOST
MOST = 120_000  # bytes of a picture
LIVE = 'section.sl[data-state="live"]'
START = 120_000  # ms


class _Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, *_args):
        pass


def shared(key, **texts):
    """Where a shared link opens: the page and the numbers that somebody gave."""
    found = sheet(key)
    given = State("metric", texts, {}, dict.fromkeys(texts, "given"))
    return f"{found.page}#{link.write(found, given)}"


def take(page, address, name, until):
    """One picture.  Raises ``ValueError`` where it is too large to be kept."""
    page.goto(address)
    page.wait_for_selector(until, timeout=START)
    page.wait_for_selector("section.sl[data-sl-busy]", state="detached", timeout=START)
    path = PLACE / f"{name}.png"
    page.screenshot(path=path)
    if path.stat().st_size > MOST:
        raise ValueError(f"{path.name} has {path.stat().st_size} bytes; {MOST} are the most")
    print(f"{path.relative_to(ROOT)}: {path.stat().st_size} bytes")


def main():
    PLACE.mkdir(exist_ok=True)
    handler = functools.partial(_Quiet, directory=str(SITE))
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), handler)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    address = f"http://127.0.0.1:{server.server_port}/"
    root = hasattr(os, "geteuid") and os.geteuid() == 0
    flags = [*FLAGS, *(["--no-sandbox"] if root and sys.platform == "linux" else [])]
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium_path(), args=flags)
        context = browser.new_context(
            viewport=SCREEN,
            device_scale_factor=SHARP,
            is_mobile=True,
            has_touch=True,
            color_scheme="light",
            locale="en-GB",
        )
        page = context.new_page()
        take(page, address, "start-page", ".sl-questions")
        take(page, address + shared("keep_up", set="3.2 bar"), "first-screen", LIVE)
        browser.close()
    server.shutdown()


if __name__ == "__main__":
    main()
