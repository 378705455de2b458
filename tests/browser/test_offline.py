"""After one visit the whole site works with the network cut, and releases never mix."""

import shutil
import time
from pathlib import Path

import pytest

from scripts.build_steps import serviceworker
from scripts.build_steps.places import ROOT
from tests.browser.hosts import Host
from tests.browser.pages import (
    PAGES,
    VARIED,
    answer_text,
    box,
    open_sheet,
    show_chart,
    type_number,
    wait_live,
)
from tests.conftest import visit

KEPT = "() => document.querySelector('[data-offline]')?.textContent.includes('kept on this device')"
NEWER = "() => document.querySelector('[data-offline]')?.textContent.includes('newer release')"
LONG = 90_000  # ms; some 20 MB are stored on a loaded machine
NAME = "window.RELEASE_SEEN"  # written into a script by ``_mark``
STORES = "() => caches.keys().then(names => names.filter(n => n.startsWith('springline ')))"
RELEASE_OF_VEGA = (
    "() => fetch('../vendor/vega.min.js').then(r => r.text()).then(t => t.slice(0, 8))"
)


def _mark(site, target, name):
    """A release of its own: the built site with ``name`` in pages, scripts and drawings."""
    shutil.copytree(site, target)
    for page in target.rglob("index.html"):
        page.write_text(page.read_text().replace("<h1", f'<p class="mark">{name}</p><h1', 1))
    script = target / "assets" / "head.js"
    script.write_text(script.read_text() + f'\n{NAME} = "{name}";\n')
    drawing = target / "vendor" / "vega.min.js"
    drawing.write_text(f"/* {name} */\n" + drawing.read_text())
    serviceworker.write(target)
    return target


@pytest.fixture
def context(storing):
    return storing


@pytest.fixture(scope="module")
def releases(site_folder, tmp_path_factory):
    where = tmp_path_factory.mktemp("releases")
    return [_mark(site_folder, where / name, name) for name in ("one", "two")]


@pytest.fixture
def host(releases):
    made = Host(releases[0], under="/a/b/")
    yield made
    made.cut()


def _visit(context, host, where=""):
    page = context.new_page()
    page.goto(host.address + where)
    page.wait_for_function(KEPT, timeout=LONG)
    return page


def _seen(page):
    """(release of the page, release of its script)."""
    return page.locator(".mark").inner_text(), page.evaluate(NAME)


@pytest.fixture(scope="module")
def cut_off(browser, releases):
    """(context, address) of a reader who saw the index once; the network is gone."""
    host = Host(releases[0], under="/a/b/")
    context = visit(browser, service_workers="allow")
    page = _visit(context, host)
    page.close()
    host.cut()
    yield context, host.address
    context.close()


@pytest.mark.parametrize("key", VARIED)
def test_a_calculator_never_opened_before_works_with_the_network_cut(cut_off, key):
    context, address = cut_off
    page = context.new_page()
    open_sheet(page, address, key)
    show_chart(page)
    assert page.evaluate("SpringlineEngine.way") == "snapshot"
    assert len(answer_text(page)) > 100
    page.close()


def test_a_changed_number_and_its_chart_with_the_network_cut(cut_off):
    context, address = cut_off
    page = context.new_page()
    open_sheet(page, address, "reach", "#climb=20m")
    before = answer_text(page)
    type_number(page, "climb", "25")
    assert answer_text(page) != before
    page.locator(".sl-chart").first.scroll_into_view_if_needed()
    page.wait_for_function("() => window.vegaEmbed && document.querySelector('.sl-chart svg')")
    page.close()


def test_every_page_opens_with_the_network_cut(cut_off, site_folder):
    context, address = cut_off
    page = context.new_page()
    for at, path in enumerate(sorted(site_folder.rglob("index.html"))):
        folder = path.parent.relative_to(site_folder).as_posix()
        others = f"{folder}/index.html", f"{folder}/?from=mail#u=us"
        # the others in turn: what is made of them goes by no list of pages
        for written in (f"{folder}/", others[at % 2]):
            reply = page.goto(address + written.removeprefix("./"))
            assert reply.status == 200
            assert page.locator("h1").count() == 1
    page.close()


def test_a_page_without_its_last_slash_keeps_the_fragment_with_the_network_cut(cut_off):
    context, address = cut_off
    page = context.new_page()
    page.goto(address + "head#climb=21m")
    assert page.url == address + "head/#climb=21m"
    wait_live(page)  # until Python has read the link its text stands as it came
    assert box(page, "climb").input_value() == "21"
    page.close()


def test_search_finds_with_the_network_cut(cut_off):
    context, address = cut_off
    page = context.new_page()
    page.set_viewport_size({"width": 1280, "height": 900})
    page.goto(address)
    page.locator(".md-search__input").click()
    page.locator(".md-search__input").press_sequentially("suction", delay=60)
    page.wait_for_selector(".md-search-result__item a")
    page.close()


def test_a_missing_page_is_said_to_be_missing_with_the_network_cut(cut_off):
    context, address = cut_off
    page = context.new_page()
    reply = page.goto(address + "no/such/place/#climb=21m")
    assert reply.status == 404
    assert "not here" in page.locator("h1").inner_text()
    page.wait_for_selector(f'#list a[href="{address}head/#climb=21m"]')
    page.close()


def test_the_tab_of_the_first_visit_works_on_when_the_network_goes(context, releases):
    host = Host(releases[0])
    page = _visit(context, host, PAGES["reach"])
    wait_live(page)
    host.cut()
    type_number(page, "climb", "25")
    page.locator(".sl-chart").first.scroll_into_view_if_needed()
    page.wait_for_function("() => window.vegaEmbed && document.querySelector('.sl-chart svg')")


def test_the_calculator_starts_before_the_site_is_stored(context, host):
    page = context.new_page()
    open_sheet(page, host.address, "pressure")
    page.wait_for_function(KEPT, timeout=LONG)
    started = [name.endswith("snapshot.0.bin") for name in host.asked].index(True)
    assert started < host.asked.index("sw.js")


def test_a_new_release_replaces_the_old_and_an_open_tab_keeps_the_old(context, host, releases):
    old = _visit(context, host, PAGES["reach"])
    old.reload()
    assert _seen(old) == ("one", "one")
    host.folder = releases[1]
    other = context.new_page()
    other.goto(host.address + PAGES["pressure"])
    assert _seen(other) == ("one", "one")
    other.wait_for_function(NEWER, timeout=LONG)
    # both releases are stored now; the old tab is answered from the old one
    assert len(other.evaluate(STORES)) == 2
    assert old.evaluate(RELEASE_OF_VEGA) == "/* one *"
    wait_live(old)
    type_number(old, "climb", "19")
    other.reload()
    assert _seen(other) == ("two", "two")
    assert other.evaluate(RELEASE_OF_VEGA) == "/* two *"
    assert old.evaluate(RELEASE_OF_VEGA) == "/* one *"
    old.reload()
    assert _seen(old) == ("two", "two")
    # nobody reads the old release any more: it goes with the next page
    other.goto(host.address + PAGES["tank"])
    other.wait_for_function(f"() => ({STORES})().then(names => names.length === 1)")
    assert _seen(other) == ("two", "two")


def test_a_browser_with_the_service_worker_of_0_1_0_takes_the_new_release(
    context, host, releases, tmp_path
):
    old = _mark(releases[0], tmp_path / "old", "0.1.0")
    head = (old / "sw.js").read_text().split("];\n", 1)[0] + "];\n"
    then = ROOT / "tests" / "release_0_1_0" / "service_worker.js"
    (old / "sw.js").write_text(head + then.read_text())
    host.folder = old
    page = _visit(context, host, PAGES["reach"])
    page.reload()
    assert page.evaluate(NAME) == "0.1.0"
    host.folder = releases[1]
    page.goto(host.address + PAGES["pressure"])
    page.wait_for_function(NEWER, timeout=LONG)
    page.reload()
    assert page.evaluate(NAME) == "two"
    _assert_works_here(page, "climb")


def _assert_works_here(page, field):
    wait_live(page)
    before = answer_text(page)
    type_number(page, field, "25")
    assert answer_text(page) != before


def _stores(page):
    page.wait_for_function(
        "() => navigator.serviceWorker.getRegistration().then(r => !r || !r.installing)",
        timeout=LONG,
    )
    return page.evaluate(STORES)


def _asked(page, host, name, after=""):
    """Wait until a file has been asked for, after another that already was."""
    start, end = host.asked.index(after) if after else 0, time.monotonic() + LONG / 1000
    while name not in host.asked[start:]:
        assert time.monotonic() < end, " ".join(host.asked)
        page.wait_for_timeout(100)


def _assert_given_up(page, host, name):
    """Once the file has been asked for, what was stored till then is thrown away."""
    # the worker's first file: its store is there by then, and is empty again only if thrown away
    _asked(page, host, "404.html")
    _asked(page, host, name, after="404.html")
    page.wait_for_function(f"() => ({STORES})().then(names => names.length === 0)", timeout=LONG)
    assert _stores(page) == []


def _assert_works(page):
    _assert_works_here(page, "climb")


@pytest.mark.parametrize("name", ["vendor/vega.min.js", "about/"])
def test_a_file_of_another_release_stops_the_storing(context, host, releases, name):
    file = f"{name}index.html" if name.endswith("/") else name
    host.overrides[file] = (releases[1] / file).read_bytes()
    page = context.new_page()
    open_sheet(page, host.address, "reach")
    _assert_given_up(page, host, name)
    _assert_works(page)


def test_a_missing_file_stops_the_storing_and_the_next_visit_mends_it(context, host):
    host.overrides["vendor/vega-lite.min.js"] = None
    page = context.new_page()
    open_sheet(page, host.address, "reach")
    _assert_given_up(page, host, "vendor/vega-lite.min.js")
    host.overrides.clear()
    page.reload()
    page.wait_for_function(KEPT, timeout=LONG)
    assert len(page.evaluate(STORES)) == 1


FULL = "Promise.reject(new DOMException('full', 'QuotaExceededError'))"
BROKEN_STORES = {
    "full at once": f"Cache.prototype.put = () => {FULL};\n",
    "full half way": "let room = 9; const put = Cache.prototype.put; "
    "Cache.prototype.put = function (...all) "
    f"{{ return room-- > 0 ? put.apply(this, all) : {FULL}; }};\n",
    "refused": f"CacheStorage.prototype.open = () => {FULL};\n",
}


@pytest.mark.parametrize("kind", BROKEN_STORES)
def test_a_store_that_is_full_or_refused_leaves_the_site_working(context, host, releases, kind):
    host.overrides["sw.js"] = (BROKEN_STORES[kind] + (releases[0] / "sw.js").read_text()).encode()
    page = context.new_page()
    said = []
    page.on("pageerror", lambda error: said.append(str(error)))
    open_sheet(page, host.address, "reach")
    _asked(page, host, "sw.js")
    page.wait_for_timeout(1000)
    assert _stores(page) == []
    _assert_works(page)
    page.goto(host.address + PAGES["pressure"])
    assert _seen(page) == ("one", "one")
    assert said == []


def test_a_store_that_breaks_later_leaves_the_network(context, host, releases):
    later = (
        f"addEventListener('activate', () => {{ caches.open = caches.match = () => {FULL}; }});\n"
    )
    host.overrides["sw.js"] = (later + (releases[0] / "sw.js").read_text()).encode()
    page = _visit(context, host, PAGES["reach"])
    page.reload()
    assert page.evaluate("Boolean(navigator.serviceWorker.controller)")
    _assert_works(page)


REFUSALS = {
    "registration": "ServiceWorkerContainer.prototype.register = () => "
    "Promise.reject(new DOMException('no', 'SecurityError'));",
    "no workers": "delete Navigator.prototype.serviceWorker;",
    "saving data": "Object.defineProperty(NetworkInformation.prototype, 'saveData', "
    "{get: () => true});",
}


@pytest.mark.parametrize("kind", REFUSALS)
def test_a_browser_that_keeps_nothing_shows_the_site_as_before(context, host, kind):
    page = context.new_page()
    said = []
    page.on("pageerror", lambda error: said.append(str(error)))
    page.on("console", lambda m: m.type in ("error", "warning") and said.append(m.text))
    page.add_init_script(REFUSALS[kind])
    open_sheet(page, host.address, "reach")
    _assert_works(page)
    page.wait_for_timeout(3000)
    assert "sw.js" not in host.asked
    assert [one for one in said if "favicon" not in one] == []


def test_from_a_disk_nothing_is_registered(page, site_folder):
    page.add_init_script(
        "window.calls = 0; if (window.ServiceWorkerContainer) "
        "ServiceWorkerContainer.prototype.register = () => { window.calls += 1; };"
    )
    page.goto((Path(site_folder) / "index.html").as_uri())
    page.wait_for_timeout(4000)
    assert page.evaluate("window.calls") == 0


def test_every_file_a_page_may_ask_for_is_listed(site_folder):
    addresses = {address for address, _ in serviceworker.listed(site_folder)}
    for folder in ("vendor", "search", "runtime"):
        for path in (site_folder / folder).rglob("*"):
            if path.is_file():
                assert path.relative_to(site_folder).as_posix() in addresses
    assert {"", "404.html", *PAGES.values()} <= addresses


def test_the_release_changes_with_a_byte_and_only_then(tmp_path):
    (tmp_path / "index.html").write_text("1")
    first = serviceworker.release(serviceworker.listed(tmp_path))
    assert serviceworker.release(serviceworker.listed(tmp_path)) == first
    (tmp_path / "index.html").write_text("2")
    assert serviceworker.release(serviceworker.listed(tmp_path)) != first
