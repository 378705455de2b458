"""The content-security policy: strict, on every page, and never in the way of a reader."""

import random
import re
import urllib.parse

import pytest

from calc.page.fields import Number
from calc.page.state import State, hidden_keys
from calc.sheets import sheet
from scripts.build_steps import policy
from tests.browser.pages import PAGES, VARIED, box, open_sheet, settle, show_chart, type_number

WATCH = """
    window.broken = [];
    document.addEventListener('securitypolicyviolation', (event) =>
        window.broken.push(event.effectiveDirective + ' ' + event.blockedURI + ' ' + event.sample));
"""


NO_WORKER = "Service Worker registration blocked by Playwright"  # as ``visit`` wishes


def _watch(page):
    page.add_init_script(WATCH)
    page.asked, page.said = [], []
    page.on("request", lambda request: page.asked.append(request.url))
    page.on(
        "console",
        lambda m: (
            m.type in ("error", "warning") and m.text != NO_WORKER and page.said.append(m.text)
        ),
    )
    page.on("pageerror", lambda error: page.said.append(str(error)))
    return page


@pytest.fixture
def watched(page):
    """A page that notes what the policy refused, what it asked for and what it complained of."""
    return _watch(page)


@pytest.fixture
def watched_storing(storing):
    """The same of a reader whose browser keeps the site for later."""
    return _watch(storing.new_page())


def _assert_clean(page, address):
    assert page.evaluate("window.broken") == []
    assert page.said == []
    own = (address, "data:", "blob:" + address)
    assert [url for url in page.asked if not url.startswith(own)] == []


def _number_field(key):
    hidden = hidden_keys(sheet(key), State())
    for entry in sheet(key).fields:
        number = re.match(r"[\d.]+", entry.metric) if isinstance(entry, Number) else None
        if number and float(number[0]) > 0 and entry.key not in hidden:
            return entry.key, f"{float(number[0]) * 1.25:g}"
    raise AssertionError(f"{key} has no number field")


def _pages(site_folder):
    return sorted(site_folder.rglob("*.html"))


def test_every_page_carries_the_same_policy(site_folder):
    found = {re.search(r'Policy" content="([^"]+)"', p.read_text())[1] for p in _pages(site_folder)}
    assert len(found) == 1


def test_the_policy_stands_before_anything_that_runs(site_folder):
    for path in _pages(site_folder):
        text = path.read_text()
        assert (
            text.index("Content-Security-Policy")
            < re.search(r"<(script|style|link)\b", text).start()
        )


def test_the_policy_allows_no_unhashed_inline_part_and_no_other_origin(site_folder):
    text = (site_folder / policy.HEADER_FILE).read_text()
    for loose in ("unsafe-inline", "'unsafe-eval'", "http:", "https:", "blob:", "*"):
        assert loose not in text
    assert "default-src 'none'" in text


def test_no_page_has_a_style_attribute_or_an_event_attribute(site_folder):
    for path in _pages(site_folder):
        found = re.findall(r"<[a-z][^>]*?\s(style|on[a-z]+)=", path.read_text())
        assert found == [], path


def test_an_inline_script_without_its_hash_does_not_run(watched, address):
    watched.goto(address)
    watched.evaluate(
        """() => { const tag = document.createElement('script');
                   tag.textContent = 'window.ran = true'; document.head.append(tag); }"""
    )
    assert watched.evaluate("window.ran") is None
    assert watched.evaluate("window.broken.length") == 1


def test_a_request_to_another_origin_is_refused(watched, address):
    watched.goto(address)
    refused = watched.evaluate("fetch('http://127.0.0.1:9/').then(() => 'asked', () => 'refused')")
    assert refused == "refused"
    assert watched.evaluate("window.broken[0]").startswith("connect-src")


@pytest.mark.parametrize("key", VARIED)
def test_a_calculator_is_used_in_full_without_a_violation(watched, address, key):
    open_sheet(watched, address, key)
    type_number(watched, *_number_field(key))
    if show_chart(watched):
        watched.wait_for_selector(".sl-chart .sl-plot:not(.sl-waiting) svg")
    watched.get_by_role("button", name="US", exact=True).click()
    settle(watched)
    watched.get_by_role("button", name="Back to the example").click()
    settle(watched)
    _assert_clean(watched, address)


def test_the_first_chart_drawn_anew_without_a_violation(watched_storing, address):
    open_sheet(watched_storing, address, "reach")
    printed = watched_storing.locator(".sl-chart svg").first.evaluate("el => el.outerHTML")
    type_number(watched_storing, "climb", "19")
    watched_storing.locator(".sl-chart").first.scroll_into_view_if_needed()
    watched_storing.wait_for_function(
        "old => document.querySelector('.sl-chart svg')?.outerHTML !== old", arg=printed
    )
    assert "vegaEmbed" in watched_storing.evaluate("Object.keys(window).join()")
    _assert_clean(watched_storing, address)


def test_every_page_opens_without_a_violation(watched_storing, address, site_folder):
    for path in _pages(site_folder):
        if path.name == "404.html":
            continue  # below: served for what is missing
        watched_storing.goto(address + path.relative_to(site_folder).as_posix())
        watched_storing.wait_for_timeout(150)
        _assert_clean(watched_storing, address)


def test_search_and_the_dark_page_work_without_a_violation(watched_storing, address):
    watched_storing.goto(address)
    watched_storing.locator(".md-search__input").click()
    watched_storing.locator(".md-search__input").press_sequentially("suction", delay=60)
    watched_storing.wait_for_selector(".md-search-result__item a")
    watched_storing.keyboard.press("Escape")
    scheme = "document.body.dataset.mdColorScheme"
    before = watched_storing.evaluate(scheme)
    watched_storing.locator('form[data-md-component="palette"] label:visible').first.click()
    watched_storing.wait_for_function(f"old => {scheme} !== old", arg=before)
    watched_storing.reload()
    assert watched_storing.evaluate(scheme) != before
    _assert_clean(watched_storing, address)


NASTY = [
    "<script>window.ran=1</script>",
    "<img src=x onerror=window.ran=1>",
    "<svg/onload=window.ran=1>",
    '"><script>window.ran=1</script>',
    "' onfocus=window.ran=1 autofocus='",
    "</textarea><script>window.ran=1</script>",
    "</template><img src=x onerror=window.ran=1>",
    "<iframe srcdoc='<script>parent.ran=1</script>'>",
    "javascript:window.ran=1",
    "<a href=javascript:window.ran=1>x</a>",
    "<math><mtext><style><img src=x onerror=window.ran=1></style></mtext></math>",
    "<details open ontoggle=window.ran=1>",
    "<base href=http://127.0.0.1:9/>",
    "<meta http-equiv=refresh content=0;url=http://127.0.0.1:9/>",
    "<form action=http://127.0.0.1:9/><input type=submit autofocus>",
    "<link rel=stylesheet href=http://127.0.0.1:9/a.css>",
    "<object data=http://127.0.0.1:9/></object>",
    "{{7*7}}${7*7}#{7*7}",
    "&lt;script&gt;window.ran=1&lt;/script&gt;",
    "&#60;script&#62;window.ran=1&#60;/script&#62;",
    "%3Cscript%3Ewindow.ran=1%3C/script%3E",
    "\u202e<script>\u0000window.ran=1</script>",
    "__proto__",
    "constructor",
    "x" * 5000,
    "1" * 400,
    "9" * 5000,
    "'); import('os').system('id'); ('",
    "\\u003cscript\\u003e",
    "﹤script﹥＜script＞",
]
PIECES = [
    "<", ">", "\"", "'", "`", "=", "&", "#", "/", "\\", "%", "\u2028", "script", "img", "svg",
    "style", "onerror=window.ran=1", "src=x", "javascript:", "]]>", "<!--", "-->", "12", " m",
    " psi", "\x00", "climb", "u=us", "\U0001f4a7", "\u0301", "NaN", "1e999",
]  # fmt: skip


def _random_strings(count):
    chance = random.Random(20)
    return ["".join(chance.choices(PIECES, k=chance.randint(1, 14))) for _ in range(count)]


# what may come and go while a reader types, by tag; anything else is an intruder
INTRUDERS = """
    () => [...document.querySelectorAll('iframe, object, embed, base, [onerror], [onload], ' +
        '[onfocus], [ontoggle], [srcdoc], a[href^="javascript"], section.sl script, ' +
        'section.sl img, section.sl link, section.sl meta, section.sl form:not(.sl-form)')]
        .map((element) => element.outerHTML)
"""
SCRIPTS = "() => [...document.scripts].map((one) => one.src + one.textContent).sort()"


def _assert_untouched(page, address, scripts):
    assert page.evaluate("window.ran") is None
    assert page.evaluate(INTRUDERS) == []
    assert page.evaluate(SCRIPTS) == scripts
    _assert_clean(page, address)


@pytest.fixture
def ready(watched, address):
    """The calculator with all its scripts loaded, and no dialog allowed."""
    dialogs = []
    watched.on("dialog", lambda dialog: (dialogs.append(dialog.message), dialog.dismiss()))
    open_sheet(watched, address, "reach")
    type_number(watched, "climb", "19")
    watched.locator(".sl-chart").first.scroll_into_view_if_needed()
    watched.wait_for_function("() => window.vegaEmbed && window.qrcode")
    watched.wait_for_timeout(300)
    watched.scripts = watched.evaluate(SCRIPTS)
    yield watched
    assert dialogs == []


def _set_hash(page, text):
    page.evaluate("text => { location.hash = text }", text)
    page.wait_for_function(
        "() => SpringlineEngine.ask({op: 'convert', sheet: 'reach', to: 'us'}).then(() => true)"
    )


@pytest.mark.parametrize("strings", [NASTY, _random_strings(40)], ids=["nasty", "random"])
def test_a_fragment_cannot_bring_in_a_script(ready, address, strings):
    for text in strings:
        coded = urllib.parse.quote(text)
        for fragment in (f"#climb={coded}", f"#{coded}=1&use={coded}", f"#climb={text}"):
            _set_hash(ready, fragment)
        _assert_untouched(ready, address, ready.scripts)


@pytest.mark.parametrize("strings", [NASTY, _random_strings(40)], ids=["nasty", "random"])
def test_pasted_text_cannot_bring_in_a_script(ready, address, strings):
    field = box(ready, "climb")
    for text in strings:
        field.fill(text)
        ready.wait_for_function(
            "() => SpringlineEngine.ask({op: 'convert', sheet: 'reach', to: 'us'}).then(() => true)"
        )
        _assert_untouched(ready, address, ready.scripts)


@pytest.mark.parametrize("text", NASTY[:8])
def test_a_link_opened_afresh_cannot_bring_in_a_script(watched, address, text):
    coded = urllib.parse.quote(text)
    watched.goto(f"{address}{PAGES['reach']}#climb={coded}&{coded}={coded}")
    watched.wait_for_selector('.sl-field[data-key="climb"].sl-wrong', timeout=60_000)
    assert watched.evaluate("window.ran") is None
    assert watched.evaluate(INTRUDERS) == []
    _assert_clean(watched, address)


def test_every_page_names_its_release(site_folder):
    import calc

    for path in _pages(site_folder):
        if path.name != "404.html":
            assert re.search(
                rf"data-release>Springline {re.escape(calc.__version__)} of \d{{4}}-",
                path.read_text(),
            )
            assert "newer one" in path.read_text() or "newest release" in path.read_text()


def test_used_pages_are_all_there(site_folder):
    assert set(PAGES.values()) <= {f"{p.parent.name}/" for p in _pages(site_folder)}
