"""What leaves the page: a phone's share sheet, a letter, one sheet of paper, a blank form."""

import json
import re

import pytest

from calc import bridge
from calc.sheets import sheet
from tests.browser.pages import PAGES, VARIED, figures, open_sheet, settle, type_number, wait_live
from tests.browser.test_first_screen import GIVEN, shared

PAGE = re.compile(rb"/Type\s*/Page\b(?!s)")
SAID = "() => document.querySelector('.sl-said').textContent"


@pytest.fixture
def desk(lent):
    return lent(permissions=["clipboard-read", "clipboard-write"]).new_page()


def pressed(page, name, said):
    page.get_by_role("button", name=name).click()
    page.wait_for_function(f"{SAID} === {json.dumps(said)}")
    return page.evaluate("navigator.clipboard.readText()")


def test_a_phone_shares_the_verdict_and_the_link(desk, address):
    desk.add_init_script("navigator.share = async (what) => { window.sent = what; };")
    desk.goto(address + PAGES["reach"] + shared("reach"))
    wait_live(desk)
    desk.get_by_role("button", name="Share").click()
    desk.wait_for_function("() => window.sent")
    sent = desk.evaluate("window.sent")
    assert sent["text"] == desk.locator(".sl-verdict").inner_text().replace("\n", " ")
    assert "climb=22m" in sent["url"]


def test_where_nothing_can_be_shared_there_is_no_such_button(desk, address):
    desk.add_init_script("delete Navigator.prototype.share")
    desk.goto(address + PAGES["reach"])
    assert not desk.get_by_role("button", name="Share").is_visible()
    assert desk.get_by_role("button", name="Copy link").is_visible()


def test_a_letter_is_the_one_that_python_writes(desk, address):
    open_sheet(desk, address, "reach", shared("reach"))
    settle(desk)
    type_number(desk, "climb", "23")
    text = pressed(desk, "Copy as a letter", "Letter copied.")
    assert "Climb from pump to outlet: 23 m" in text and "Please tell us" in text
    assert desk.url in text.splitlines()
    state = desk.evaluate(
        "(fragment) => SpringlineEngine.ask({ op: 'read', sheet: 'reach', fragment })",
        desk.url.partition("#")[2],
    )
    asked = {key: state[key] for key in ("system", "texts", "units", "standing")}
    request = {"op": "letter", "sheet": "reach", "address": desk.url, **asked}
    assert json.loads(bridge.handle(json.dumps(request)))["text"] == text


def test_without_an_answer_nothing_is_copied_and_that_is_said(desk, address):
    open_sheet(desk, address, "reach")
    desk.evaluate("navigator.clipboard.writeText('before')")
    type_number(desk, "climb", "far")
    for name in ("Copy as a letter", "Copy with the working"):
        desk.get_by_role("button", name=name).click()
        desk.wait_for_function(f"{SAID}.includes('no answer to share')")
        assert desk.evaluate("navigator.clipboard.readText()") == "before"


def test_where_the_clipboard_is_refused_the_text_stands_to_be_copied_by_hand(page, address):
    page.add_init_script(
        """navigator.clipboard.write = navigator.clipboard.writeText = async () => {
            throw new DOMException('no', 'NotAllowedError');
        };"""
    )
    open_sheet(page, address, "reach", shared("reach"))
    page.get_by_role("button", name="Copy link").click()
    page.wait_for_selector(".sl-offer")
    assert "climb=22m" in page.locator(".sl-offer").input_value()


# Paper ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", (*VARIED, "hot_water"))
def test_a_sheet_prints_on_one_page(page, address, key):
    page.goto(address + PAGES[key] + shared(key))
    wait_live(page)
    settle(page)
    assert figures(page) == "yours"
    for paper in ("A4", "Letter"):
        assert len(PAGE.findall(page.pdf(format=paper, prefer_css_page_size=False))) == 1
    page.emulate_media(media="print")
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    for part in ("verdict", "figures", "yours", "assumed", "address", "cautions"):
        assert page.locator(f"section.sl .sl-{part}").first.is_visible(), part
    for entry in GIVEN[key]:
        name = sheet(key).field(entry).label.removesuffix(" (optional)")
        if GIVEN[key][entry]:
            assert name in page.locator(".sl-yours").inner_text()
    assert not page.locator("[data-sl-lead]").is_visible()
    small = page.evaluate(
        """() => [...document.querySelectorAll('section.sl *')].filter(one =>
            one.checkVisibility() && !one.closest('svg') && [...one.childNodes].some(
                part => part.nodeType === 3 && part.textContent.trim())
            && parseFloat(getComputedStyle(one).fontSize) < 11.9).map(one => one.className)"""
    )
    assert small == []  # 9 pt are 12 px


def test_the_working_is_on_paper_only_where_it_was_open(page, address):
    open_sheet(page, address, "reach", shared("reach"))
    settle(page)
    seen = []
    for opened in ("false", "true"):
        page.evaluate(f"document.querySelector('.sl-working').open = {opened}")
        page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
        page.emulate_media(media="print")  # the theme opens every fold now
        seen.append(page.locator(".sl-working math").first.is_visible())
        page.emulate_media(media="screen")
        page.evaluate("window.dispatchEvent(new Event('afterprint'))")
    assert seen == [False, True]
    assert page.evaluate("document.querySelector('.sl-working').open")


def test_a_blank_form_prints_with_lines_and_without_figures(page, address):
    page.goto(address + PAGES["keep_up"])
    page.evaluate(
        """() => {
            window.print = () => {
                const form = document.querySelector('.sl-blank');
                window.seen = [form.innerText, document.body.className];
            };
        }"""
    )
    page.emulate_media(media="print")
    page.evaluate("""document.querySelector('[data-action="blank"]').click()""")
    page.wait_for_function("() => window.seen")
    text, body = page.evaluate("window.seen")
    assert "sl-blank-only" in body and "Works" not in text
    for entry in sheet("keep_up").fields:
        assert entry.label.removesuffix(" (optional)") in text
    assert sheet("keep_up").cautions[0] in text
    assert address in text
    assert page.locator(".sl-blank").count() == 0  # on the screen there is none
