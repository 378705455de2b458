"""From a customer's words to a checked answer, a letter and a sheet: the whole way, no number typed.

On a desk and on a phone, by keyboard alone, with the network cut, and from a folder on a disk.
"""

import json
import re
from pathlib import Path

import pytest

from tests.browser.hosts import Host
from tests.conftest import visit

READY = 90_000  # ms; Python starting, and every page of a site worked out, on a loaded machine
DESK, PHONE = {"width": 1280, "height": 900}, {"width": 360, "height": 740}
LETTER = (
    "Hello, the water in our well is 4 m down and the house is 18 m up the hill, 140 m of 40 mm "
    "poly pipe away. We want two showers and a hose at once. There are six of us. Will it work?\n"
    "Kind regards, J.\nTel. 0123 456 789"
)
TOLD = ("18 m", "140 m", "40 mm")
WAYS = ("desk", "phone", "offline", "disk")
COPIED = """window.copied = {};
    const kept = {
        write: async ([item]) => {
            for (const type of item.types) window.copied[type] = await (await item.getType(type)).text();
        },
    };
    Object.defineProperty(navigator, "clipboard", { value: kept, configurable: true });"""


class Way:
    """A page, and the address of a page of the site by its name."""

    def __init__(self, page, root, flat=False):
        self.page, self.root, self.flat = page, root, flat
        page.add_init_script(COPIED)

    def open(self, name):
        self.page.goto(f"{self.root}{name}.html" if self.flat else f"{self.root}{name}/")

    def told(self, words):
        self.page.locator("[data-sl-desk-said]", has_text=words).wait_for(timeout=READY)


@pytest.fixture(scope="module")
def folder(tmp_path_factory, site_folder):
    """The site as the folder that is taken along: pages that end in .html."""
    from scripts.build_steps import offline  # noqa: PLC0415 - only this fixture builds

    where = tmp_path_factory.mktemp("a folder")
    return offline_copy(offline, where)


@pytest.fixture(params=WAYS)
def way(request, browser, address, site_folder):
    kind = request.param
    view = PHONE if kind in ("phone", "offline") else DESK
    if kind == "offline":
        host = Host(Path(site_folder), under="/a/b/")
        context = visit(browser, viewport=view, service_workers="allow")
        page = context.new_page()
        page.goto(host.address)
        page.wait_for_function(
            "() => document.querySelector('[data-offline]')?.textContent.includes('kept on this')",
            timeout=READY,
        )
        page.close()
        host.cut()
        yield Way(context.new_page(), host.address)
    elif kind == "disk":
        context = visit(browser, viewport=view)
        root = request.getfixturevalue("folder").as_uri() + "/"
        yield Way(context.new_page(), root, flat=True)
    else:
        context = visit(browser, viewport=view)
        yield Way(context.new_page(), address)
    context.close()
