"""What tests that need the built site or a browser share."""

import functools
import http.server
import os
import sys
import threading
from pathlib import Path

import pytest

from scripts.browser import FLAGS, chromium_path

ROOT = Path(__file__).resolve().parent.parent
SITE = ROOT / "site"


# The longest first, as measured, so that none of them is left to one worker at the end.
LONGEST = (
    "browser/test_accessibility.py",
    "browser/test_site.py",
    "browser/test_calculators.py",
    "browser/test_offline.py",
    "runtime/test_engine.py",
    "browser/test_rows.py",
    "browser/test_policy.py",
    "browser/test_share.py",
    "browser/test_links.py",
    "browser/test_hosting.py",
    "sheets/test_every_sheet.py",
    "browser/test_first_screen.py",
    "sheets/test_keep_up_random.py",
    "runtime/test_store.py",
    "parity/test_parity.py",
    "runtime/test_folder.py",
    "sheets/test_keep_up_fixes.py",
    "sheets/test_every_fix.py",
    "sheets/test_any_supply.py",
)


def pytest_collection_modifyitems(items):
    order = {ROOT / "tests" / name: at for at, name in enumerate(LONGEST)}
    items.sort(key=lambda item: order.get(item.path, len(order)))


class _Quiet(http.server.SimpleHTTPRequestHandler):
    extensions_map = {
        **http.server.SimpleHTTPRequestHandler.extensions_map,
        ".mjs": "text/javascript",
        ".js": "text/javascript",
        ".wasm": "application/wasm",
    }

    def log_message(self, *_args):
        pass


def serve(folder):
    """(server, address) of a folder on a free port of this machine."""
    handler = functools.partial(_Quiet, directory=str(folder))
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), handler)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    return server, f"http://127.0.0.1:{server.server_port}/"


@pytest.fixture(scope="session")
def site_folder():
    if not (SITE / "index.html").exists():
        pytest.fail("the site is not built: run scripts/build first")
    return SITE


@pytest.fixture(scope="session")
def address(site_folder):
    server, where = serve(site_folder)
    yield where
    server.shutdown()


@pytest.fixture(scope="session")
def browser():
    from playwright.sync_api import sync_playwright

    root = hasattr(os, "geteuid") and os.geteuid() == 0
    with sync_playwright() as playwright:
        launched = playwright.chromium.launch(
            executable_path=chromium_path(),
            args=[*FLAGS, *(["--no-sandbox"] if root and sys.platform == "linux" else [])],
        )
        yield launched
        launched.close()


def visit(browser, **settings):
    """A context of a reader in Britain whose browser keeps nothing for later.

    With a service worker every new context would fetch and check the whole site, which takes as
    long as many a test; those about it ask for ``service_workers="allow"``.
    """
    return browser.new_context(**{"locale": "en-GB", "service_workers": "block", **settings})


DESK = {"width": 1280, "height": 900}


@pytest.fixture(scope="module")
def _shared(browser):
    made = visit(browser, viewport=DESK)
    yield made
    made.close()


FORGET = "() => { try { localStorage.clear(); } catch {} }"  # none where nothing may be kept


@pytest.fixture
def context(_shared):
    """A context that tests of a file use one after the other, since a new one costs as much as a
    start of Python; each finds no other page and nothing kept."""
    yield _shared
    for page in _shared.pages:
        page.evaluate(FORGET)
        page.close()


@pytest.fixture(scope="module")
def _lent(browser):
    """{settings: context} of those that ``lent`` has made."""
    made = {}
    yield made
    for context in made.values():
        context.close()


@pytest.fixture
def lent(browser, _lent):
    """Gives a context of any settings, as ``context`` shared by the tests of a file; one with
    other settings is another browser, that knows nothing of the first."""
    taken = []

    def take(**settings):
        name = repr(sorted(settings.items()))
        if name not in _lent:
            _lent[name] = visit(browser, **settings)
        taken.append(_lent[name])
        return _lent[name]

    yield take
    for page in {page for one in taken for page in one.pages}:
        page.evaluate(FORGET)
        page.close()


@pytest.fixture
def storing(browser):
    """A context whose service worker keeps the site for later."""
    made = visit(browser, viewport=DESK, service_workers="allow")
    yield made
    made.close()


@pytest.fixture
def page(context):
    return context.new_page()
