"""WCAG 2.2 AA as far as axe-core can tell, light and dark, wide and narrow; keyboard alone."""

import pytest

from calc.sheets import KEYS
from tests.browser.pages import PAGES, box, figures, leave, open_sheet, settle, type_number
from tests.conftest import ROOT

AXE = ROOT / ".cache" / "npm" / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]


def problems(page):
    page.evaluate(AXE.read_text(encoding="utf-8"))
    found = page.evaluate(
        "(rules) => axe.run(document, {runOnly: {type: 'tag', values: rules}})", RULES
    )
    return [
        (rule["id"], node["target"], node.get("failureSummary", "")[:300])
        for rule in found["violations"]
        for node in rule["nodes"]
    ]


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("place", ["", "about/", *PAGES.values()])
def test_axe_finds_nothing(browser, address, place, scheme):
    context = browser.new_context(color_scheme=scheme, bypass_csp=True)
    page = context.new_page()
    page.goto(address + place)
    page.evaluate("document.querySelectorAll('section.sl details').forEach(d => d.open = true)")
    page.wait_for_timeout(300)
    assert problems(page) == []
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_while_a_field_is_wrong(browser, address, scheme):
    context = browser.new_context(
        color_scheme=scheme, bypass_csp=True, viewport={"width": 360, "height": 740}
    )
    page = context.new_page()
    open_sheet(page, address, "reach")
    type_number(page, "climb", "25")
    type_number(page, "climb", "abc")
    leave(page)
    assert figures(page) == "stale"
    assert problems(page) == []
    context.close()


@pytest.mark.parametrize("key", KEYS)
def test_every_field_can_be_reached_by_tab(page, address, key):
    open_sheet(page, address, key)
    page.evaluate("document.querySelectorAll('section.sl details').forEach(d => d.open = true)")
    wanted = set(
        page.evaluate(
            """() => ['input', 'select', 'textarea']
                .flatMap(kind => [...document.querySelectorAll(`.sl-form ${kind}`)])
                .filter(e => e.offsetParent).map(e => e.id)"""
        )
    )
    page.evaluate("document.querySelector('.sl-form input, .sl-form select').focus()")
    reached = set()
    for _ in range(4 * len(wanted) + 20):
        reached.add(page.evaluate("document.activeElement.id"))
        page.keyboard.press("Tab")
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


@pytest.mark.parametrize("key", KEYS)
def test_no_stop_of_the_tab_key_is_without_a_name(page, address, key):
    page.set_viewport_size({"width": 360, "height": 740})
    page.goto(address + PAGES[key])
    page.evaluate("document.querySelectorAll('section.sl details').forEach(d => d.open = true)")
    page.locator("section.sl .sl-table, .sl-working summary").first.focus()
    for _ in range(60):
        page.keyboard.press("Tab")
        assert not page.evaluate("document.activeElement.closest('math')")
        if not page.evaluate("Boolean(document.activeElement.closest('.sl-more'))"):
            break


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
