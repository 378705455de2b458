"""The site on hosts of all kinds: below a sub-path, compressed or not, with headers or none."""

import re

import pytest

from scripts.build_steps import policy
from scripts.weak_line import Line
from tests.browser.hosts import Host
from tests.browser.pages import PAGES, answer_text, open_sheet, type_number, wait_live
from tests.conftest import visit

KEPT = "() => document.querySelector('[data-offline]')?.textContent.includes('kept on this device')"


def _policy_header(site_folder):
    name, line = (site_folder / policy.HEADER_FILE).read_text().strip().split(": ", 1)
    return {name: line}


KINDS = {
    "at the root": {},
    "below a sub-path": {"under": "/a/b/"},
    "compressed": {"under": "/a/b/", "packed": True},
    "nothing may be kept": {"headers": {"Cache-Control": "no-store"}},
    "all kept for a day": {"headers": {"Cache-Control": "max-age=86400"}},
    "no missing page": {"missing_page": False},
    "types it does not know": {"types": {".wasm": "text/plain", ".bin": "text/plain"}},
}


@pytest.fixture(params=KINDS)
def any_host(request, site_folder):
    made = Host(site_folder, **KINDS[request.param])
    yield made
    made.cut()


@pytest.fixture
def host(site_folder):
    made = Host(site_folder, under="/a/b/")
    yield made
    made.cut()


def _asked_elsewhere(page, address):
    page.on("request", lambda request: page.asked.append(request.url))
    page.asked = []
    return lambda: [url for url in page.asked if not url.startswith((address, "data:", "blob:"))]


def test_a_calculator_works_on_any_kind_of_host_and_is_kept(storing, any_host):
    page = storing.new_page()
    elsewhere = _asked_elsewhere(page, any_host.address)
    open_sheet(page, any_host.address, "reach")
    before = answer_text(page)
    type_number(page, "climb", "25")
    assert answer_text(page) != before
    assert page.evaluate("SpringlineEngine.way") == "snapshot"
    page.wait_for_function(KEPT, timeout=90_000)
    assert elsewhere() == []


SAID = "(words) => document.querySelector('.sl-status').textContent.includes(words)"
READY = "() => SpringlineEngine.ready"


def _runtime(host, name):
    (path,) = host.folder.glob(f"runtime/*/{name}")
    return path.relative_to(host.folder).as_posix()


def _of_runtime(host):
    """How often each file of the runtime that a start needs was asked for."""
    names = [name for name in host.asked if re.search("runtime/.*/(first|python|pyodide)", name)]
    return {name.rsplit("/", 1)[1]: names.count(name) for name in names}


def test_a_connection_cut_half_way_costs_one_piece(page, host):
    host.broken[_runtime(host, "first.1.wasm")] = 1
    page.goto(f"{host.address}head/#climb=21m")
    page.wait_for_function(READY, timeout=60_000)
    counts = _of_runtime(host)
    assert counts.pop("first.1.wasm") == 2
    assert set(counts.values()) == {1}


def test_a_host_that_does_not_answer_is_said_and_the_answer_comes_when_it_does(page, host):
    page.route("**/first.*.wasm", lambda route: route.abort())
    page.goto(f"{host.address}head/#climb=21m")
    page.wait_for_function(SAID, arg="the network does not answer", timeout=30_000)
    page.unroute("**/first.*.wasm")
    wait_live(page)


def test_a_host_that_forbids_webassembly_is_named_as_the_reason_at_once(page, site_folder):
    host = Host(site_folder, headers={"Content-Security-Policy": "script-src 'self'"})
    page.goto(f"{host.address}head/#climb=21m")
    page.wait_for_function(SAID, arg="this host forbids WebAssembly")
    assert [name for name in host.asked if name.endswith(".wasm")] == []
    host.cut()


def test_a_tab_open_while_the_site_is_replaced_is_told_to_reload(page, host):
    for path in host.folder.glob("runtime/*/*"):
        host.overrides[path.relative_to(host.folder).as_posix()] = None
    host.overrides["runtime/manifest.js"] = b'window.SPRINGLINE_RUNTIME = {"folder": "another"};'
    # only the page is the old one, and names the old folder; replaced after it had loaded, the
    # calculator was often faster
    page.goto(f"{host.address}head/")
    page.locator("section.sl .sl-form").scroll_into_view_if_needed()
    page.wait_for_function(SAID, arg="the site was renewed since this page was opened")


def test_over_a_weak_line_python_starts_without_its_snapshot_and_nothing_comes_twice(
    page, site_folder
):
    host = Host(site_folder, packed=True, line=Line(rate=600_000, delay=0))
    page.goto(f"{host.address}head/#climb=21m")
    wait_live(page)
    assert page.evaluate("SpringlineEngine.way") == "plain"
    assert [name for name in host.asked if "snapshot" in name] == []
    assert set(_of_runtime(host).values()) == {1}
    host.cut()


def test_what_came_over_a_weak_line_is_told_while_it_comes(page, site_folder):
    host = Host(site_folder, packed=True, line=Line(rate=600_000, delay=0))
    page.add_init_script(
        "window.heard = []; document.addEventListener('springline-progress', "
        "({ detail }) => window.heard.push(detail));"
    )
    page.goto(f"{host.address}head/#climb=21m")
    wait_live(page)
    heard = page.evaluate("window.heard")
    loaded = [one["loaded"] for one in heard]
    assert len(heard) > 5 and loaded == sorted(loaded)
    assert heard[-1]["loaded"] == heard[-1]["total"] < 3e6
    host.cut()


def test_the_policy_as_a_header_lets_the_calculator_and_its_chart_work(storing, site_folder):
    page = storing.new_page()
    host = Host(site_folder, headers=_policy_header(site_folder))
    said = []
    page.on("console", lambda m: m.type == "error" and said.append(m.text))
    open_sheet(page, host.address, "reach")
    type_number(page, "climb", "25")
    page.locator(".sl-chart").first.scroll_into_view_if_needed()
    page.wait_for_function("() => window.vegaEmbed")
    page.wait_for_function(KEPT, timeout=90_000)
    assert said == []
    host.cut()


def test_the_policy_as_a_header_keeps_the_site_out_of_frames(page, site_folder):
    host = Host(site_folder, headers=_policy_header(site_folder))
    page.goto(f"{host.address}no-such-page-at-all")
    frames = page.evaluate(
        """address => new Promise(done => {
            const frame = document.createElement('iframe');
            frame.onload = () => { try { done(frame.contentDocument?.title ?? null) }
                                   catch { done(null) } };
            frame.src = address; document.body.append(frame);
            setTimeout(() => done(null), 3000); })""",
        host.address,
    )
    assert not frames
    host.cut()


def test_every_link_of_every_page_leads_to_a_file(site_folder):
    missing = []
    for page in site_folder.rglob("index.html"):
        for link in re.findall(r'(?:href|src)="([^":?#]+)', page.read_text()):
            target = (page.parent / link).resolve()
            if not (target.is_file() or (target / "index.html").is_file()):
                missing.append(f"{page.relative_to(site_folder)}: {link}")
    assert missing == []


def test_no_page_but_the_missing_one_names_the_root_of_its_host(site_folder):
    for page in site_folder.rglob("index.html"):
        assert re.findall(r'(?:href|src)="/[^"]*', page.read_text()) == [], page


FORWARDED = [
    ("reach/", "head/"),
    ("reach", "head/"),
    ("pressure_tank/", "pressure-tank/"),
    ("Suction-Lift/index.html", "suction-lift/"),
    ("suction-lfit/", "suction-lift/"),
    ("water-hamer.html", "water-hammer/"),
    ("guides/2019/pump-match", "pump-match/"),
]


@pytest.mark.parametrize("wrong, right", FORWARDED)
def test_an_old_or_misspelt_name_is_forwarded_with_its_numbers(page, host, wrong, right):
    page.goto(f"{host.address}{wrong}#u=us&climb=50ft")
    page.wait_for_url(f"{host.address}{right}#u=us&climb=50ft")


def test_a_forwarded_link_opens_with_its_numbers(page, host):
    page.goto(f"{host.address}reach#climb=21m")
    page.wait_for_url(f"{host.address}head/*")
    page.wait_for_function(  # until Python has read it, the link's own text stands there
        "() => document.querySelector('[data-key=climb] input').value === '21'"
    )


@pytest.mark.parametrize(
    "wrong", ["weather/", "x", "a/deep/place/", "<img src=x>/", "%00%ff", "__proto__"]
)
def test_an_unknown_name_is_offered_every_page_with_the_numbers(page, host, wrong):
    reply = page.goto(f"{host.address}{wrong}#climb=21m")
    assert reply.status == 404
    for where in PAGES.values():
        page.wait_for_selector(f'#list a[href="{host.address}{where}#climb=21m"]')
    assert "Your numbers are kept" in page.locator("#said").inner_text()
    assert page.locator("main img").count() == 0


def test_the_missing_page_does_not_go_round_in_circles(page, host):
    host.overrides["pump-match/index.html"] = None
    page.goto(f"{host.address}pump-match/#speed=90")
    page.wait_for_selector("#list a")
    assert page.url == f"{host.address}pump-match/#speed=90"


def test_the_missing_page_can_be_used_with_scripts_off(browser, host):
    context = visit(browser, locale="en-US", java_script_enabled=False)
    page = context.new_page()
    page.goto(f"{host.address}reach#climb=21m")
    assert page.locator("#start").get_attribute("href")
    assert "after the # sign" in page.locator("noscript").inner_text()
    context.close()


def test_the_missing_page_asks_nothing_of_anyone_else(page, host):
    elsewhere = _asked_elsewhere(page, host.address.removesuffix("a/b/"))
    page.goto(f"{host.address}nothing/like/it/#climb=21m")
    page.wait_for_selector("#list a")
    assert elsewhere() == []


def test_two_copies_on_one_host_keep_their_own(storing, site_folder):
    host = Host(site_folder)
    host.under = "/one/"
    first = storing.new_page()
    first.goto(host.address)
    first.wait_for_function(KEPT, timeout=90_000)
    host.under = "/two/"
    second = storing.new_page()
    second.goto(host.address)
    second.wait_for_function(KEPT, timeout=90_000)
    names = second.evaluate("caches.keys()")
    assert sum("/one/" in name and "tabs" not in name for name in names) == 1
    assert sum("/two/" in name and "tabs" not in name for name in names) == 1
    host.cut()
