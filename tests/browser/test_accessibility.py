"""WCAG 2.2 AA as far as axe-core can tell, and text that stays in its box, on every page, at three
widths, in light, dark and forced colours; keyboard alone; names that could mislead."""

import pytest

from calc.sheets import KEYS
from tests.browser.pages import PAGES, box, figures, leave, open_sheet, settle, type_number
from tests.conftest import DESK, ROOT, visit

AXE = ROOT / ".cache" / "npm" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
GEOMETRY = (ROOT / "tests" / "browser" / "geometry.js").read_text(encoding="utf-8")
EVERY = sorted(
    "" if path.stem == "index" else f"{path.stem}/" for path in (ROOT / "docs").glob("*.md")
)
WIDTHS, SCHEMES = (320, 360, 1280), ("light", "dark", "forced")
# Every part is on the specimen, so that page is seen at each width in each scheme. The others hold
# nothing but such parts and prose: each width and each scheme once, as colours do not depend on
# widths within one layout, and 320 and 360 px share one.
PAIRS = ((320, "light"), (360, "forced"), (1280, "dark"))
EACH = tuple((width, scheme) for width in WIDTHS for scheme in SCHEMES)
SEEN = dict.fromkeys((*EVERY, "404.html"), PAIRS) | {"specimen/": EACH}


def problems(page):
    if not page.evaluate("'axe' in window"):
        page.evaluate(AXE.read_text(encoding="utf-8"))
    found = page.evaluate(
        """(rules) => axe.run(document, {
            runOnly: { type: "tag", values: rules },
            resultTypes: ["violations"], // what is well is not listed element by element
        })""",
        RULES,
    )
    return [
        (rule["id"], node["target"], node.get("failureSummary", "")[:300])
        for rule in found["violations"]
        for node in rule["nodes"]
    ]


@pytest.fixture(scope="module")
def looked(browser):
    """A page in which Python does not start, for one test after the other."""
    context = visit(browser, locale="en-US", reduced_motion="reduce", bypass_csp=True)
    context.route("**/*.wasm", lambda route: None)  # never answered: it stays as printed
    yield context.new_page()
    context.close()


# By the theme's own switch: it does not follow the device while a page is open.
CHOSEN = """async (scheme) => {
    const shown = () => document.body.getAttribute('data-md-color-scheme');
    if (!document.querySelector('[name="__palette"]')) return; // as on the 404 page
    if (shown() !== scheme) document.querySelector(`[data-md-color-scheme="${scheme}"]`).click();
    while (shown() !== scheme) await new Promise((done) => setTimeout(done, 20));
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
}"""


def choose(page, width, scheme):
    """As a reader who turns the device or changes its colours; the page follows."""
    page.set_viewport_size({"width": width, "height": 900})
    page.emulate_media(
        color_scheme="dark" if scheme == "dark" else "light",
        forced_colors="active" if scheme == "forced" else "none",
        reduced_motion="reduce",
    )
    page.evaluate(CHOSEN, "slate" if scheme == "dark" else "default")


def opened_out(page):
    page.evaluate("document.querySelectorAll('.sl details').forEach(one => one.open = true)")


@pytest.mark.parametrize("place", SEEN)
def test_a_page_can_be_read_by_everyone(looked, address, place):
    looked.goto(address + place)
    opened_out(looked)
    found = []
    for width, scheme in SEEN[place]:
        choose(looked, width, scheme)
        wrong = [*looked.evaluate(GEOMETRY), *problems(looked)]
        found += [(width, scheme, one) for one in wrong]
    assert found == []


PLANTED = {
    "leaves": '<p style="border:1px solid;width:3em"><span style="white-space:nowrap">far too wide'
    "</span></p>",
    "meets": '<figure class="sl-picture"><svg viewBox="0 0 90 30" width="90" height="30">'
    '<text x="5" y="20">pump</text><text x="9" y="22">well</text></svg></figure>',
    "has no name": '<button type="button"></button>',
    "scrolls": '<div style="overflow-x:auto;width:50px"><p style="width:99px">wide</p></div>',
}


@pytest.mark.parametrize("said", PLANTED)
def test_what_is_wrong_is_found(looked, address, said):
    looked.goto(address + "about/")
    choose(looked, 360, "forced")
    looked.evaluate(
        "html => document.querySelector('main article').innerHTML += html", PLANTED[said]
    )
    assert any(said in one for one in looked.evaluate(GEOMETRY))


def test_axe_finds_nothing_while_a_field_is_wrong(browser, address):
    context = visit(
        browser, locale="en-US", bypass_csp=True, viewport={"width": 360, "height": 740}
    )
    page = context.new_page()
    open_sheet(page, address, "reach")
    type_number(page, "climb", "25")
    type_number(page, "climb", "abc")
    leave(page)
    assert figures(page) == "stale"
    assert problems(page) == []
    context.close()


def test_a_name_that_turns_writing_round_is_read_as_it_stands(page, address):
    open_sheet(page, address, "reach")
    page.get_by_role("button", name="Sites").click()
    page.get_by_role("button", name="Save as…").click()
    page.get_by_label("Save under this name").fill("Lower\u202e cabin\u2066\u0007")
    page.get_by_role("button", name="Save", exact=True).click()
    settle(page)
    assert page.locator("[data-sl-site-whose] strong").inner_text() == "Lower cabin"
    page.get_by_role("button", name="Sites").click()
    assert page.locator(".sl-site-list li > button").nth(1).inner_text() == "Lower cabin"


# The form, all of it unfolded, and nothing else of the page.
ALONE = """() => {
    const form = document.querySelector('.sl-form');
    for (let at = form; at !== document.body; at = at.parentElement) {
        for (const one of at.parentElement.children) {
            if (one !== at) one.style.display = 'none';
        }
    }
    form.querySelectorAll('details').forEach((one) => { one.open = true; });
}"""


@pytest.mark.parametrize("key", KEYS)
def test_every_field_can_be_reached_by_tab(page, address, key):
    open_sheet(page, address, key)
    # every key moves the page, and all that is in view is drawn anew: little is, and no answer
    page.set_viewport_size({"width": DESK["width"], "height": 300})
    page.evaluate(ALONE)
    wanted = set(
        page.evaluate(
            """() => ['input', 'select', 'textarea']
                .flatMap(kind => [...document.querySelectorAll(`.sl-form ${kind}`)])
                .filter(e => e.offsetParent).map(e => e.id)"""
        )
    )
    page.evaluate(
        """() => {
            window.reached = [];
            document.addEventListener('focusin', (event) => reached.push(event.target.id));
            document.querySelector('.sl-form input, .sl-form select').focus();
        }"""
    )
    reached = set()
    for _ in range(8):  # asked now and then: a round trip takes as long as a key
        for _ in range(len(wanted) // 2 + 3):
            page.keyboard.press("Tab")
        reached = set(page.evaluate("reached"))
        if wanted <= reached:
            break
    assert wanted <= reached, wanted - reached


def test_the_first_number_is_a_few_tabs_away(page, address):
    page.goto(address + PAGES["reach"])
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the numbers"
    page.keyboard.press("Enter")
    for _ in range(3):  # what a hard word means may stand before it
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.matches('.sl-form input')"):
            return
    raise AssertionError(page.evaluate("document.activeElement.outerHTML"))


def test_the_answer_is_a_few_tabs_away(page, address):
    page.goto(address + PAGES["reach"])
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the answer"
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("Boolean(document.activeElement.closest('.sl-answer'))")


def test_the_verdict_is_spoken_after_a_change(page, address):
    open_sheet(page, address, "reach")
    type_number(page, "climb", "31")
    page.wait_for_timeout(1200)
    spoken = page.locator(".sl-live").text_content()
    assert spoken.startswith(page.locator(".sl-verdict").first.text_content())


def test_units_can_be_switched_by_keyboard(page, address):
    open_sheet(page, address, "reach")
    page.get_by_role("button", name="US", exact=True).focus()
    page.keyboard.press("Enter")
    settle(page)
    assert box(page, "climb").input_value() == "39.4"  # 12 m of Alder Terrace
