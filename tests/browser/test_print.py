"""The sheet on paper: nothing to press, and its address as a QR code."""

import re

import pytest
import segno

from calc.page.state import State
from calc.sheets import sheet
from calc.site import link
from tests.browser.pages import PAGES, VARIED, open_sheet, type_number, wait_live

SQUARE = re.compile(r"M(\d+) (\d+)h1v1h-1z")
READY = "() => Boolean(window.qrcode)"
LONG_TABLE = ";".join(f"Tap+{n}+far+up+the+hill,wash-house,sink,0,0" for n in range(45))


def _printed(page):
    """(address on paper, the code's squares as rows of 0 and 1; None where there is no code)."""
    page.wait_for_function(READY)
    page.emulate_media(media="print")
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    address = page.locator(".sl-address").inner_text()
    drawn = page.locator(".sl-scan path")
    if not drawn.count():
        return address, None
    dark = {(int(row), int(column)) for column, row in SQUARE.findall(drawn.get_attribute("d"))}
    margin, _, whole, _ = map(int, page.locator(".sl-scan svg").get_attribute("viewBox").split())
    side = whole + 2 * margin  # the margin is where the drawing begins, so below 0
    return address, [[int((row, column) in dark) for column in range(side)] for row in range(side)]


def _codes(address):
    """The codes of ISO/IEC 18004 for an address as segno makes them, one for each mask."""
    same = {"error": "l", "mode": "byte", "micro": False, "boost_error": False}
    return [[list(row) for row in segno.make(address, mask=n, **same).matrix] for n in range(8)]


# Bytes that fill the versions 4, 5, 6 and 8 at level L (ISO/IEC 18004:2015, table 7, from memory).
# Full ones, for segno 1.6.6 fills up others with one byte more than section 7.4.10 asks.
@pytest.mark.parametrize("length", [78, 106, 134, 192])
def test_the_code_on_paper_holds_the_address_on_paper(page, address, length):
    zeros = length - len(f"{address}head/#v=1&climb=25.m&c=12345")
    state = State(texts={"climb": f"25.{'0' * zeros}"}, standing={"climb": "given"})
    page.goto(f"{address}head/#{link.write(sheet('reach'), state)}")
    wait_live(page)
    told, code = _printed(page)
    assert len(told) == length
    assert code in _codes(told)
    assert page.locator(".sl-scan svg").is_visible()


def test_a_changed_number_changes_the_code(page, address):
    open_sheet(page, address, "reach")
    before = _printed(page)
    page.emulate_media(media="screen")
    type_number(page, "climb", "31")
    after = _printed(page)
    assert "climb=31" in after[0]
    assert before[1] and after[1] and before[1] != after[1]


def test_an_address_too_long_for_a_code_stands_in_words(page, address):
    page.goto(address + "keep-up/#taps=" + LONG_TABLE)
    wait_live(page)
    told, code = _printed(page)
    assert len(told) > 1273  # version 25 at level L, 117 squares a side, holds no more
    assert code is None
    assert "too long for a QR code" in page.locator(".sl-scan").inner_text()
    assert page.locator(".sl-address").is_visible()


def test_where_the_library_cannot_be_had_the_sheet_is_printed_without(page, address):
    page.route("**/qrcode.js", lambda route: route.abort())
    open_sheet(page, address, "reach")
    page.evaluate("() => { window.print = () => { window.printed = true; }; }")
    page.get_by_role("button", name="Print", exact=True).click()
    page.wait_for_function("() => window.printed")
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    assert page.locator(".sl-scan svg").count() == 0
    assert "head/#" in page.locator(".sl-address").text_content()


def test_the_code_is_not_shown_on_the_screen(page, address):
    open_sheet(page, address, "reach")
    _printed(page)
    page.emulate_media(media="screen")
    assert not page.locator(".sl-scan").is_visible()


@pytest.mark.parametrize("key", VARIED)
def test_nothing_to_press_and_no_empty_table_is_on_paper(page, address, key):
    page.goto(address + PAGES[key])
    section = page.locator("section.sl")
    assert section.locator("button:visible").count() > 0  # on the screen
    page.emulate_media(media="print")
    assert section.locator("button:visible").count() == 0
    for rows in section.locator(".sl-rows:visible").all():
        assert rows.locator("tbody tr").count() > 0
