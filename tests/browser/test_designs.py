"""Designs for a target, worked out in slices while the page stays alive."""

import pytest

from tests.browser.pages import START, box, open_sheet, settle, type_number, verdict

FOUND = ".sl-job [data-sl-job-found] figure"


@pytest.fixture
def panels(page, address):
    open_sheet(page, address, "panels")
    settle(page)
    return page


def begin(page):
    page.get_by_role("button", name="Find designs that keep to it").click()


def said(page):
    return page.locator("[data-sl-job-said]")


def test_designs_come_with_links_that_fill_the_form(panels):
    begin(panels)
    panels.wait_for_selector(FOUND, timeout=3 * START)
    link = panels.locator(".sl-job .sl-fix a").first
    sentence = panels.locator(".sl-job .sl-fix").first.inner_text()
    link.click()
    settle(panels)
    count = int(box(panels, "strings").input_value()) * int(box(panels, "series").input_value())
    assert sentence.startswith(f"{count} panel")
    assert not panels.locator(FOUND).count()


def test_the_form_answers_while_designs_are_worked_out_and_ends_them(panels):
    begin(panels)
    panels.locator("[data-sl-job-bar]").wait_for(timeout=START)
    before = verdict(panels)
    type_number(panels, "ah", "20")
    settle(panels)
    assert verdict(panels) != before
    assert "The numbers have changed" in said(panels).inner_text()
    assert not panels.locator(FOUND).count()


def test_they_can_be_stopped(panels):
    begin(panels)
    panels.locator("[data-sl-job-bar]").wait_for(timeout=START)
    panels.get_by_role("button", name="Stop").click()
    assert said(panels).inner_text() == "Stopped."
    assert panels.locator("[data-sl-job-bar]").is_hidden()
    assert panels.get_by_role("button", name="Find designs that keep to it").is_visible()
