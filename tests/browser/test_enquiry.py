"""A letter pasted on its page: read, corrected, kept, taken to another page, by keyboard too."""

import pytest

LETTER = (
    "Our drilled well has water at 40 ft. The house is 200 ft from the well and 35 ft above it. "
    "1 inch poly, jet pump on a 40/60 switch. Two showers. <img src=x onerror=alert(1)>"
)
TWICE = "The house is 20 m above the pump. The house is 30 m above the pump. The run is 90 m."


@pytest.fixture
def page(lent, address):
    page = lent(locale="en-GB", viewport={"width": 360, "height": 740}).new_page()
    page.goto(f"{address}enquiry/")
    return page


def paste(page, text):
    page.get_by_label("Paste the letter").fill(text)
    page.get_by_role("button", name="Read it").click()
    page.locator("[data-sl-enquiry-said]", has_text="read,").wait_for()


def row(page, path):
    return page.locator(f'[data-path="{path}"]')


def test_a_letter_is_read_and_its_words_are_marked(page):
    paste(page, LETTER)
    assert row(page, "way.climb").get_by_role("textbox").input_value() == "35 ft"
    marked = page.locator("[data-sl-enquiry-marked]")
    assert marked.locator("mark.sl-read-told", has_text="35 ft").count() == 1
    assert marked.locator("img").count() == 0
    page.locator("[data-sl-enquiry-asks] li").first.wait_for()


def test_a_correction_goes_along_to_the_next_page(page):
    paste(page, LETTER)
    row(page, "way.climb").get_by_role("textbox").fill("50 ft")
    page.locator('[data-sl-enquiry-goes] a[href*="200_ft,50_ft"]').first.wait_for()
    page.get_by_role("link", name="Will it reach?").click()
    page.locator(".sl-verdict").first.wait_for()
    assert "50" in page.locator('[data-key="climb"] input').input_value()


def test_a_correction_that_cannot_be_read_is_said_beside_it(page):
    paste(page, LETTER)
    row(page, "way.climb").get_by_role("textbox").fill("x")
    row(page, "way.climb").get_by_role("alert").filter(has_text="not a number").wait_for()


def test_two_values_are_chosen_between(page):
    paste(page, TWICE)
    page.get_by_role("radio", name="30 m").check()
    page.locator('[data-sl-enquiry-goes] a[href*=",90,30"]').first.wait_for()


def test_what_was_pasted_is_there_after_a_reload(page):
    page.get_by_label("Paste the letter").fill(LETTER)
    page.reload()
    assert page.get_by_label("Paste the letter").input_value() == LETTER


def test_it_works_by_keyboard(page):
    page.get_by_label("Paste the letter").focus()
    page.keyboard.insert_text(LETTER)
    page.keyboard.press("Control+Enter")
    page.locator("[data-sl-enquiry-said]", has_text="read,").wait_for()
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Read it"


def test_the_reader_is_loaded_from_the_first_word_on(page):
    page.get_by_label("Paste the letter").fill("W")
    page.wait_for_function("() => Boolean(SpringlineEngine.way)", timeout=60_000)
    assert page.locator("[data-sl-enquiry-said]").inner_text() == ""  # nothing was asked yet


def test_an_empty_box_is_said(page):
    page.get_by_role("button", name="Read it").click()
    page.locator("[data-sl-enquiry-said].sl-alarm", has_text="Paste a letter first").wait_for()
