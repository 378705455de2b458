"""What a browser stores for use without a network: damage is found and mended, and all of it
goes when the site is taken down."""

import re
import time

import pytest

from scripts.build_steps import serviceworker
from scripts.build_steps.places import ROOT
from tests.browser.hosts import Host

KEPT = "() => document.querySelector('[data-offline]')?.textContent.includes('kept on this device')"
LONG = 90_000  # ms; some 20 MB are stored on a loaded machine
REGISTERED = "navigator.serviceWorker.getRegistration().then(Boolean)"
CONTROLLED = "() => Boolean(navigator.serviceWorker.controller)"
DAMAGE = """async (name) => {
  for (const store of await caches.keys()) {
    if (!store.startsWith("springline ")) continue;
    await (await caches.open(store)).put(name, new Response("damaged"));
  }
}"""
SIZE = "(name) => fetch(name).then((reply) => reply.arrayBuffer()).then((all) => all.byteLength)"
STORED_SIZES = """async (name) => {
  const sizes = [];
  for (const store of (await caches.keys()).filter((one) => one.startsWith("springline "))) {
    const held = await (await caches.open(store)).match(name);
    if (held) sizes.push((await held.arrayBuffer()).byteLength);
  }
  return sizes;
}"""


@pytest.fixture
def context(storing):
    return storing


@pytest.fixture
def host(site_folder):
    made = Host(site_folder)
    yield made
    made.cut()


@pytest.fixture
def snapshot(site_folder):
    """(address, number of bytes) of the largest file of the runtime that may be damaged."""
    (path,) = site_folder.glob("runtime/*/snapshot.0.bin")
    return path.relative_to(site_folder).as_posix(), path.stat().st_size


def _wait_until(page, claim):
    """For what a page must be asked for: the driver does not wait for a promise to come true."""
    ends = time.monotonic() + LONG / 1000
    while not claim():
        assert time.monotonic() < ends
        page.wait_for_timeout(100)


def _kept(context, host):
    page = context.new_page()
    page.goto(host.address + "about/")
    page.wait_for_function(KEPT, timeout=LONG)
    page.reload()
    page.wait_for_function(CONTROLLED)
    return page


@pytest.mark.parametrize("which", ["of the runtime", "of the site"])
def test_a_stored_file_that_was_damaged_is_whole_when_it_is_asked_for_again(
    context, host, snapshot, site_folder, which
):
    name, size = snapshot
    if which == "of the site":
        name = "vendor/vega-lite.min.js"
        size = (site_folder / name).stat().st_size
    page = _kept(context, host)
    page.evaluate(DAMAGE, host.address + name)
    page.evaluate(SIZE, host.address + name)
    assert page.evaluate(SIZE, host.address + name) == size
    assert page.evaluate(STORED_SIZES, host.address + name) == [size]


def test_a_stored_file_that_was_damaged_is_mended_without_being_asked_for_again(
    context, host, snapshot
):
    name, size = snapshot
    page = _kept(context, host)
    page.evaluate(DAMAGE, host.address + name)
    page.evaluate(SIZE, host.address + name)
    _wait_until(page, lambda: page.evaluate(STORED_SIZES, host.address + name) == [size])


@pytest.mark.parametrize("piece", ["snapshot.0.bin", "first.0.wasm", "python.0.bin"])
def test_a_start_from_a_damaged_store_mends_it_and_goes_on(context, host, snapshot, piece):
    name = snapshot[0].replace("snapshot.0.bin", piece)
    page = _kept(context, host)
    page.evaluate(DAMAGE, host.address + name)
    page.goto(host.address + "pressure/#climb=12m")
    page.wait_for_function("() => SpringlineEngine.ready", timeout=LONG)
    assert page.evaluate("SpringlineEngine.way") == "snapshot"
    size = host.content(name)
    assert page.evaluate(STORED_SIZES, host.address + name) == [len(size)]


def test_a_damaged_file_does_not_get_from_one_release_into_the_next(
    context, host, snapshot, site_folder
):
    name, size = snapshot
    page = _kept(context, host)
    page.evaluate(DAMAGE, host.address + name)
    # nothing but the name of the release changes: every large file is already stored
    text = (site_folder / serviceworker.NAME).read_text()
    host.overrides["sw.js"] = re.sub('RELEASE = "', 'RELEASE = "b', text, count=1).encode()
    page.evaluate("navigator.serviceWorker.getRegistration().then((one) => one.update())")
    _wait_until(page, lambda: size in page.evaluate(STORED_SIZES, host.address + name))


def test_a_file_damaged_in_the_browsers_own_cache_is_fetched_past_it(context, host, snapshot):
    name, _ = snapshot
    page = context.new_page()
    host.headers = {"Cache-Control": "max-age=31536000, immutable"}
    host.overrides[name] = b"damaged"
    page.goto(host.address + "content-security-policy.txt")  # a page that starts nothing
    assert page.evaluate(SIZE, host.address + name) == len(b"damaged")
    host.overrides.clear()
    host.headers = {}
    assert page.evaluate(SIZE, host.address + name) == len(b"damaged")
    page.goto(host.address + "about/")
    page.wait_for_function(KEPT, timeout=LONG)


def test_taking_the_site_down_leaves_nothing_of_it_in_the_browser(context, host):
    text = (ROOT / "docs" / "hosting.md").read_text()
    (snippet,) = re.findall(r"```js\n(.*?)```", text, re.DOTALL)
    page = _kept(context, host)
    others = [
        "another site",
        f"springline {host.address}inside/ 1",
        f"springline-tabs {host.address}in/",
    ]
    page.evaluate("(names) => Promise.all(names.map((name) => caches.open(name)))", others)
    host.overrides["sw.js"] = snippet.encode()
    page.reload()
    _wait_until(page, lambda: not page.evaluate(REGISTERED))
    assert sorted(page.evaluate("caches.keys()")) == sorted(others)
