"""The place chooser in a real browser: what it fills in, what it fetches, and what it says."""

import re
import zipfile

import pytest

from tests.browser.pages import (
    START,
    as_at_first,
    box,
    cell,
    figures,
    leave,
    open_sheet,
    settle,
    type_number,
    unfold,
    verdict,
)
from tests.conftest import DESK, visit
from tests.sun.test_files import epw, plain

MONTHS = '.sl-field[data-key="months"]'
FETCHED = "() => performance.getEntriesByType('resource').map(one => one.name)"


@pytest.fixture(scope="module")
def _started(browser, address):
    context = visit(browser, viewport=DESK)
    page = context.new_page()
    open_sheet(page, address, "panels")
    yield page
    context.close()


@pytest.fixture
def site(_started):
    """The calculator with the example; tests have one start of Python."""
    as_at_first(_started)
    unfold(_started)
    return _started


def said(page, word):
    """What the chooser says, once it says ``word``."""
    place = page.locator(".sl-places-said", has_text=re.compile(re.escape(word)))
    place.wait_for(timeout=START)
    return place.inner_text()


def options(page):
    return page.get_by_role("listbox", name="Towns").get_by_role("option")


def world(page):
    return page.get_by_role("img", name="Map of the world")


def find(page, asked):
    page.get_by_role("combobox", name="Find a town").fill(asked)
    options(page).first.wait_for(timeout=START)


def parts(page):
    return sorted(re.findall(r"assets/places/(\w+)\.js", " ".join(page.evaluate(FETCHED))))


def test_a_town_found_by_keyboard_fills_the_form_and_gives_its_own_answer(browser, address):
    context = visit(browser, viewport=DESK)
    page = context.new_page()
    open_sheet(page, address, "panels")
    unfold(page)
    world(page).wait_for(timeout=START)
    assert parts(page) == ["sun"]  # for the map, which was opened with all the rest
    find(page, "taos")
    assert parts(page) == ["sun", "towns"]
    before = verdict(page)
    page.keyboard.press("Enter")
    assert "height" in said(page, "Filled in below: Taos, New Mexico, United States")
    settle(page)
    assert (box(page, "lat").input_value(), box(page, "place").input_value()) == (
        "36.41",
        "Taos, New Mexico",
    )
    assert cell(page, 7, "Sun a day, on level ground", MONTHS).input_value() == "6.65"
    assert figures(page) == "yours" and verdict(page) != before
    assert parts(page) == ["air", "sun", "towns"]
    context.close()


def test_arrows_choose_among_towns_of_one_name_and_escape_closes_them(site):
    find(site, "springfield")
    assert options(site).count() > 2
    site.keyboard.press("ArrowDown")
    second = options(site).nth(1)
    assert second.get_attribute("aria-selected") == "true"
    town = site.get_by_role("combobox", name="Find a town")
    assert town.get_attribute("aria-activedescendant") == second.get_attribute("id")
    site.keyboard.press("Escape")
    assert options(site).count() == 0 and town.get_attribute("aria-expanded") == "false"


def test_a_town_that_is_not_there_is_said_until_the_example_is_back(site):
    site.get_by_role("combobox", name="Find a town").fill("qqzzx")
    assert "near it" in said(site, "No town of that name")
    site.get_by_role("button", name="Back to the example").click()
    assert site.locator(".sl-places-said").inner_text() == ""


def test_a_touch_on_the_map_fills_and_marks_that_place(site):
    drawn = world(site)
    drawn.wait_for(timeout=START)
    drawn.scroll_into_view_if_needed()
    size = drawn.bounding_box()
    per_degree = size["width"] / 360
    drawn.click(position={"x": (180 + 25) * per_degree, "y": (84 + 30) * per_degree})  # 30 S 25 E
    said(site, "the place you touched")
    settle(site)
    found = [float(box(site, key).input_value()) for key in ("lat", "lon")]
    assert found == pytest.approx([-30.0, 25.0], abs=0.6)
    mark = site.locator(".sl-world-mark")
    assert float(mark.get_attribute("cx")) == pytest.approx(205, abs=0.6)


def test_a_position_typed_is_looked_up_and_its_fault_stands_beside_the_field(site):
    for key, text in (("lat", "-23.7"), ("lon", "133.9"), ("altitude", "545")):
        type_number(site, key, text, link=False)
    site.get_by_role("button", name="Use the position below").click()
    said(site, "sun and air of this position")
    settle(site)
    warm, cold = (
        float(cell(site, row, "Mean air temperature", MONTHS).input_value()) for row in (1, 7)
    )
    assert warm > 25 > cold + 8  # January is summer there
    type_number(site, "lat", "95", link=False)
    site.get_by_role("button", name="Use the position below").click()
    said(site, "90")
    leave(site, link=False)
    assert "Latitude must be 90" in site.locator('.sl-field[data-key="lat"] .sl-error').inner_text()


def test_this_devices_position_is_used_where_it_is_allowed_and_a_refusal_is_said(site):
    device = site.get_by_role("button", name="Use this device’s position")
    device.click()
    assert "Find a town" in said(site, "not allowed")
    site.context.grant_permissions(["geolocation"])
    site.context.set_geolocation({"latitude": 36.407, "longitude": -105.573})
    device.click()
    said(site, "this device’s position")
    settle(site)
    assert box(site, "lat").input_value() == "36.41"
    site.context.clear_permissions()


def test_an_hourly_file_fills_the_place_and_one_with_a_gap_is_refused_by_its_row(site):
    file = site.get_by_label("Open an hourly file")

    def give(lines):
        file.set_input_files(
            {"name": "year.epw", "mimeType": "text/plain", "buffer": "\n".join(lines).encode()}
        )

    gap = plain()
    del gap[100]
    give(gap)
    assert "Row 101" in said(site, "a gap")
    assert box(site, "weather").input_value() == "months"
    give(epw())
    said(site, "year.epw")
    settle(site)
    assert box(site, "weather").input_value() == "file"
    assert box(site, "place").input_value() == "Nowhere"
    assert cell(site, 1, "Sun a day, on level ground", MONTHS).input_value() == "2.70"


def test_figures_that_cannot_be_fetched_are_said_and_fetched_when_they_can(browser, address):
    context = visit(browser, viewport=DESK)
    page = context.new_page()
    page.route("**/places/towns.js", lambda route: route.abort())
    open_sheet(page, address, "panels")
    unfold(page)
    town = page.get_by_role("combobox", name="Find a town")
    town.fill("taos")
    assert "twelve months" in said(page, "could not be loaded")
    page.unroute("**/places/towns.js")
    find(page, "taos,")
    context.close()


def test_figures_used_before_the_site_is_kept_are_kept_with_it(storing, address):
    page = storing.new_page()
    open_sheet(page, address, "panels")
    unfold(page)
    find(page, "taos")
    page.wait_for_function(
        """async () => (await Promise.all(['sun', 'towns'].map(
            (part) => caches.match(new URL(`../assets/places/${part}.js`, location.href)),
        ))).every(Boolean)""",
        timeout=START,
    )
    assert parts(page).count("air") == 0  # nobody wanted it


def test_a_town_is_found_in_the_folder_that_opens_from_a_disk(browser, site_folder, tmp_path):
    with zipfile.ZipFile(site_folder / "download" / "springline.zip") as archive:
        archive.extractall(tmp_path)
    (start,) = tmp_path.glob("*/power.html")
    context = visit(browser, viewport=DESK)
    page = context.new_page()
    page.goto(start.as_uri())
    page.wait_for_selector('section.sl[data-state="live"]', timeout=START)
    unfold(page)
    find(page, "taos")
    page.keyboard.press("Enter")
    said(page, "Filled in below: Taos")
    settle(page)
    assert figures(page) == "yours"
    context.close()
