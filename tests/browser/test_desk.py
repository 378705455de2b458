"""From a customer's words to a checked answer, a letter and a sheet, with no number typed.

On a desk and on a phone, by keyboard alone, and with the network cut; ``tests/runtime/test_folder``
goes the same way from a folder on a disk.
"""

from pathlib import Path

import pytest

from tests.browser.hosts import Host
from tests.browser.test_offline import KEPT
from tests.conftest import visit

READY = 90_000  # ms; Python starting, and every page of a site worked out, on a loaded machine
DESK, PHONE = {"width": 1280, "height": 900}, {"width": 360, "height": 740}
LETTER = (
    "Hello, the water in our well is 4 m down and the house is 18 m up the hill, 140 m of 40 mm "
    "poly pipe away. We want two showers and a hose at once. There are six of us. Will it work?\n"
    "Kind regards, J.\nTel. 0123 456 789"
)
WORDS = ("Works", "Borderline", "Does not work")
COPIED = """window.copied = {};
    const kept = {
        write: async ([item]) => {
            for (const type of item.types) {
                window.copied[type] = await (await item.getType(type)).text();
            }
        },
    };
    Object.defineProperty(navigator, "clipboard", { value: kept, configurable: true });"""


def told(page, words):
    page.locator("[data-sl-desk-said]", has_text=words).wait_for(timeout=READY)


def press(page, link):
    link.click()


def enter(page, link):
    """A link gone to by the Tab key from where the focus is, and entered."""
    for _ in range(400):
        page.keyboard.press("Tab")
        if link.evaluate("one => one === document.activeElement"):
            return page.keyboard.press("Enter")
    raise AssertionError("the Tab key does not reach the link")


def journey(page, enquiry, go=press):
    """The letter read, the whole answer, the reply and the sheet; ``go(page, link or button)``."""
    page.add_init_script(COPIED)
    page.goto(enquiry)
    page.get_by_label("Paste the letter").focus()
    page.keyboard.insert_text(LETTER)
    page.keyboard.press("Control+Enter")
    page.locator("[data-sl-enquiry-said]", has_text="read,").wait_for(timeout=READY)
    go(page, page.get_by_role("link", name="The whole answer"))
    told(page, "All parts are worked out")
    word = page.locator('[data-sl-place="top"] .sl-word').inner_text()
    assert word in WORDS
    fragment = page.evaluate("location.hash")
    go(page, page.get_by_role("link", name="Write the reply"))
    told(page, "The letter is written")
    assert page.evaluate("location.hash") == fragment  # the site came along, nothing was typed
    go(page, page.get_by_role("button", name="Copy the letter"))
    told(page, "Letter copied")
    plain = page.evaluate('window.copied["text/plain"]')
    assert word in plain
    assert "140 m" in plain and "0123" not in plain
    assert "<h" in page.evaluate('window.copied["text/html"]')
    page.go_back()
    told(page, "All parts are worked out")
    go(page, page.get_by_role("link", name="The installer's sheet"))
    page.locator(".sl-sheet-page").nth(1).wait_for(timeout=READY)
    assert word in page.locator(".sl-sheet .sl-word").first.inner_text()
    assert "140 m" in page.locator(".sl-sheet").inner_text().replace("\u00a0", " ")
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    return fragment


@pytest.mark.parametrize("view", [DESK, PHONE], ids=["desk", "phone"])
def test_a_letter_is_answered_without_a_number_typed(browser, address, view):
    context = visit(browser, viewport=view)
    page = context.new_page()
    said = []
    page.on("pageerror", lambda error: said.append(str(error)))
    fragment = journey(page, f"{address}enquiry/")
    assert said == []
    page.goto(f"{address}keep-up/{fragment}")
    page.locator('section.sl[data-state="live"]').wait_for(timeout=READY)
    box = page.locator('[data-key="set"] input').first
    box.fill("4 bar")
    page.wait_for_function("(old) => location.hash !== old", arg=fragment, timeout=READY)
    changed = page.evaluate("location.hash")
    page.goto("about:blank")
    page.goto(f"{address}reply/{fragment}")
    told(page, "The letter is written")
    mail = f"Thanks! We would rather have 4 bar.\n> {address}keep-up/{changed}\n"
    page.get_by_label("Paste the customer’s mail or link").fill(mail)
    page.get_by_role("button", name="Find the link").click()
    page.get_by_role("link", name="Compare with the site above").click(timeout=READY)
    told(page, "Both ways are worked out")
    assert "4 bar" in page.locator('[data-path="pump.set"]').inner_text().replace("\u00a0", " ")
    assert said == []
    context.close()


def test_it_is_answered_by_the_keyboard_alone(browser, address):
    context = visit(browser, viewport=DESK)
    journey(context.new_page(), f"{address}enquiry/", go=enter)
    context.close()


def test_it_is_answered_with_the_network_cut(browser, site_folder):
    host = Host(Path(site_folder), under="/a/b/")
    context = visit(browser, viewport=PHONE, service_workers="allow")
    page = context.new_page()
    page.goto(host.address)
    page.wait_for_function(KEPT, timeout=READY)
    host.cut()
    journey(page, f"{host.address}enquiry/")
    context.close()
