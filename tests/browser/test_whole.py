"""The whole answer and two ways side by side in a browser: phone, keyboard, bad links."""

import re

import pytest

from calc.desk import pairs
from calc.site import link
from calc.site.demo import alder_terrace
from calc.site.facts import Fact
from calc.site.pack import pack
from tests.conftest import visit

SITE = alder_terrace().put("pump.set", Fact("4 bar"))
WIDER = SITE.put_cell("sections", 1, "pipe", Fact("pe100-sdr11/50"))


@pytest.fixture
def page(browser, address):
    context = visit(browser, locale="en-GB", viewport={"width": 360, "height": 740})
    page = context.new_page()
    yield page
    context.close()


def said(page, words):
    page.locator("[data-sl-desk-said]", has_text=words).wait_for(timeout=60_000)


def test_without_a_link_it_shows_the_example(page, address):
    page.goto(f"{address}whole/")
    assert "invented example" in page.locator("[data-sl-desk-name]").inner_text()
    assert page.locator('[data-sl-place="top"] .sl-verdict').count() == 1


def test_a_link_fills_the_page_step_by_step(page, address):
    page.goto(f"{address}whole/#{link.of_site('us', pack(SITE))}")
    page.locator('[data-sl-place="top"]', has_text="So far").wait_for(timeout=60_000)
    said(page, "All parts are worked out")
    assert "So far" not in page.locator('[data-sl-place="top"]').inner_text()
    assert page.locator(".sl-whole-changes > li").count() <= 3
    assert page.locator(".sl-whole-days > li").count() == 5
    assert "psi" in page.locator('[data-sl-place="outlets"]').inner_text()
    assert page.evaluate("document.documentElement.scrollWidth") <= 360


def test_a_part_opens_its_own_page(page, address):
    page.goto(f"{address}whole/#{link.of_site('metric', pack(SITE))}")
    said(page, "All parts are worked out")
    page.locator('[data-part="suction"] h3 a').click()
    page.wait_for_url(re.compile("/suction-lift/#"))


def test_a_cut_link_is_said(page, address):
    page.goto(f"{address}whole/#{link.of_site('metric', pack(SITE))[:-4]}")
    said(page, "cut off")
    assert page.locator('[data-sl-place="top"] .sl-verdict').count() == 0


def test_two_ways_come_from_one_link(page, address):
    page.goto(f"{address}compare/#{pairs.write('metric', SITE, WIDER)}")
    said(page, "Both ways are worked out")
    assert page.locator('[data-path="sections.1.pipe"]').count() == 1
    assert page.evaluate("document.documentElement.scrollWidth") <= 360


def test_two_links_are_pasted_by_keyboard_and_a_bad_one_stays_in_its_field(page, address):
    page.goto(f"{address}compare/")
    page.get_by_label("Link of way A", exact=True).focus()
    page.keyboard.insert_text(link.of_site("metric", pack(SITE)))
    page.keyboard.press("Tab")
    page.keyboard.insert_text("nonsense")
    page.keyboard.press("Enter")
    page.locator('[data-sl-desk-error="b"]', has_text="not a link").wait_for(timeout=60_000)
    assert page.get_by_label("Link of way B", exact=True).input_value() == "nonsense"
    page.get_by_label("Link of way B", exact=True).fill(link.of_site("metric", pack(WIDER)))
    page.keyboard.press("Enter")
    said(page, "Both ways are worked out")
    assert "to=" in page.url
