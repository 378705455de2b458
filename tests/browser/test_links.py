"""Links in a real browser: read and written by Python, and never beside a foreign verdict."""

import re

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.site import link
from tests.browser.pages import (
    PAGES,
    VARIED,
    answer_text,
    box,
    menu,
    open_sheet,
    settle,
    type_number,
    verdict,
    wait_live,
)  # fmt: skip
from tests.conftest import FORGET, visit

STATUS = "section.sl .sl-status"


def said(page):
    return page.locator(STATUS).first.inner_text()


def no_verdict(page):
    assert page.locator(".sl-answer .sl-verdict").count() == 0
    assert not re.search("Works|Borderline|Does not work", page.locator(".sl-live").inner_text())


def shared(page):
    """The address once Python has written it."""
    settle(page)
    page.wait_for_function("() => location.hash.startsWith('#v=1&')")
    return page.url


TYPED = [
    ("reach", {"pressure": "50 PSI", "climb": "5'6\"", "length": "12 feet", "flow": "4 gal/min"}),
    ("reach", {"pressure": "30 m", "climb": "12 M", "length": "140"}),
    ("reach", {"pressure": "3 kg/cm2", "climb": "about 20", "flow": "200 GPH"}),
    ("pipe", {"length": "900 inches"}),
    ("tank", {"own": "5 m3", "well": ""}),  # and an empty box whose units follow
    ("suction", {"lift": "3,5", "altitude": "1 450"}),
]


@pytest.mark.parametrize("key, texts", TYPED)
def test_what_was_typed_comes_out_the_same_in_a_fresh_browser_with_units_switched(
    lent, address, key, texts
):
    page = lent().new_page()
    open_sheet(page, address, key)
    for name, text in texts.items():
        type_number(page, name, text)
    assert page.locator(".sl-wrong").count() == 0
    metric, there = answer_text(page), shared(page)
    page.get_by_role("button", name="US", exact=True).click()
    settle(page)
    us, switched = answer_text(page), shared(page)
    page.evaluate(FORGET)
    page.close()
    for where, answer, locale in ((there, metric, "en-US"), (switched, us, "en-GB")):
        page = lent(locale=locale).new_page()
        page.goto(where)
        wait_live(page)
        settle(page)
        assert page.locator(".sl-wrong").count() == 0
        assert answer_text(page) == answer
        page.evaluate(FORGET)
        page.close()


@pytest.mark.parametrize("key", VARIED)
def test_a_link_that_python_writes_opens_on_python_s_answer(page, address, key):
    fragment = link.write(sheet(key), State("us"))
    open_sheet(page, address, key, f"#{fragment}")
    settle(page)
    sentence = work(sheet(key), State("us")).answer.verdict.sentence
    assert sentence in verdict(page)


@pytest.mark.parametrize("end", [3, 12, -1, -6])
def test_a_cut_link_is_said_and_shows_no_verdict(page, address, end):
    whole = link.write(sheet("reach"), State(texts={"climb": "22", "pressure": "4"}))
    page.goto(f"{address}{PAGES['reach']}#{whole[:end]}")
    wait_live(page)
    settle(page)
    assert "cut off or damaged" in said(page)
    no_verdict(page)
    assert box(page, "climb").input_value() == "12"
    type_number(page, "climb", "20")
    assert "cut off or damaged" in said(page)  # it is still why the other numbers are not theirs
    assert verdict(page)


def test_while_a_link_is_read_no_verdict_is_shown_as_its_own(page, address):
    page.route("**/runtime/**", lambda route: route.abort())
    page.goto(f"{address}{PAGES['reach']}#climb=20m")
    assert box(page, "climb").input_value() == "20m"
    no_verdict(page)
    page.wait_for_function(
        f"() => document.querySelector('{STATUS}').textContent.includes('could not start')"
    )
    no_verdict(page)


def test_a_link_that_cannot_be_worked_out_shows_no_verdict_and_keeps_its_message(page, address):
    open_sheet(page, address, "reach", "#climb=9999m&length=100m&other=1")
    settle(page)
    no_verdict(page)
    assert "An older link" in said(page) and "other=1" in said(page)
    type_number(page, "climb", "10")
    assert verdict(page)


def test_what_is_asked_about_has_no_verdict_until_it_is_entered(page, address):
    open_sheet(page, address, "reach", "#pressure=30+mbar&climb=5m")
    settle(page)
    no_verdict(page)
    assert "30 m or 30 mbar" in said(page)
    type_number(page, "pressure", "30 m")
    assert verdict(page) and page.locator(".sl-wrong").count() == 0


@pytest.mark.parametrize(
    "fragment",
    ["#climb=21m&amp;length=99m", "#climb%3D21m%26length%3D99m", "#CLIMB=21m&length=99m."],
)
def test_what_mail_makes_of_a_link_is_read(page, address, fragment):
    open_sheet(page, address, "reach", fragment)
    settle(page)
    assert (box(page, "climb").input_value(), box(page, "length").input_value()) == ("21", "99")
    assert verdict(page)


def test_copy_waits_for_the_link_of_what_was_typed_last(browser, address):
    context = visit(browser, permissions=["clipboard-read", "clipboard-write"])
    page = context.new_page()
    open_sheet(page, address, "reach")
    box(page, "climb").fill("23")
    page.get_by_role("button", name="Copy link").click()
    page.wait_for_function(
        "() => document.querySelector('.sl-said').textContent === 'Link copied.'"
    )
    copied = page.evaluate("navigator.clipboard.readText()")
    assert re.search(r"#v=1&climb=23m&c=\w{5}$", copied)
    box(page, "climb").fill("24")
    page.get_by_role("button", name="Copy with the working").click()
    page.wait_for_function(
        "() => document.querySelector('.sl-said').textContent === 'Text copied.'"
    )
    copied = page.evaluate("navigator.clipboard.readText()")
    assert "24 m" in copied and "#v=1&climb=24m&c=" in copied
    context.close()


def test_paper_says_where_the_figures_are_not_those_of_the_numbers(page, address):
    open_sheet(page, address, "reach")
    type_number(page, "climb", "22")
    type_number(page, "climb", "far")
    page.emulate_media(media="print")
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    assert "do not belong" in page.locator(".sl-foreign").inner_text()
    assert not page.locator(".sl-main").is_visible()
    assert page.locator(".sl-scan svg").count() == 0


def test_back_and_forward_bring_form_and_address_together(page, address):
    open_sheet(page, address, "reach", "#climb=21m")
    settle(page)
    page.evaluate("location.hash = '#climb=22m'")
    settle(page)
    assert box(page, "climb").input_value() == "22"
    for way, climb in ((page.go_back, "21"), (page.go_forward, "22"), (page.go_back, "21")):
        way()
        settle(page)
        assert box(page, "climb").input_value() == climb
        assert f"climb={climb}m" in page.url


def test_numbers_from_a_link_keep_who_gave_them(page, address):
    state = State(
        texts={"climb": "21", "flow": "15"}, standing={"flow": "assumed", "climb": "given"}
    )
    open_sheet(page, address, "reach", f"#{link.write(sheet('reach'), state)}")
    settle(page)
    assert "Assumed by whoever made the link" in page.locator(".sl-assumed").inner_text()
    type_number(page, "length", "150")
    assert "flow.=15L/min" in shared(page)
    page.locator('.sl-assumed [data-sl-change="flow"]').click()
    assert box(page, "flow").evaluate("el => el === document.activeElement")
    type_number(page, "flow", "15")
    assert "flow=15L/min" in shared(page)


def test_a_unit_typed_with_its_number_is_in_the_menu_of_who_opens_the_link(page, address):
    open_sheet(page, address, "reach", "#pressure=50+psi&climb=60'")
    settle(page)
    assert (box(page, "pressure").input_value(), menu(page, "pressure").input_value()) == (
        "50",
        "psi",
    )
    assert (box(page, "climb").input_value(), menu(page, "climb").input_value()) == ("60", "ft")
