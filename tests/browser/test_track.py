"""A track pasted or dropped into the form fills in the points along the pipe."""

import pytest

from tests.browser.pages import open_sheet, unfold

TABLE = "0 100\n300 95\n500 98\n900 70"
GPX = (
    '<gpx><trk><trkseg><trkpt lat="41.0" lon="-7.0"><ele>70</ele></trkpt>'
    '<trkpt lat="41.01" lon="-7.0"><ele>100</ele></trkpt></trkseg></trk></gpx>'
)


@pytest.fixture
def page(lent, address):
    page = lent(locale="en-GB", viewport={"width": 360, "height": 740}).new_page()
    open_sheet(page, address, "gravity")
    unfold(page)
    return page


def cells(page):
    rows = page.locator('[data-key="profile"] tbody tr')
    return [[box.input_value() for box in row.locator("input").all()] for row in rows.all()]


def test_a_pasted_table_fills_in_the_points_and_the_answer_follows(page):
    page.get_by_label("Paste a GPS track or a table").fill(TABLE)
    page.get_by_role("button", name="Fill in the points").click()
    page.locator("[data-sl-track-said]", has_text="4 points").wait_for()
    assert len(cells(page)) == 4 and cells(page)[2] == ["500 m", "98.0 m"]
    page.locator(".sl-verdict", has_text="500\u00a0m from the source").wait_for()
    page.wait_for_url("**profile=**")  # the address follows once the answer stands


def test_a_dropped_file_is_read_too_and_what_cannot_be_read_is_said(page):
    box = page.locator("[data-sl-track]")
    box.evaluate(
        """(box, text) => {
            const data = new DataTransfer();
            data.items.add(new File([text], "way.gpx"));
            box.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true }));
        }""",
        GPX,
    )
    page.locator("[data-sl-track-said]", has_text="low end").wait_for()
    assert len(cells(page)) == 2
    page.get_by_label("Paste a GPS track or a table").fill("a spring")
    page.get_by_role("button", name="Fill in the points").click()
    page.locator("[data-sl-track-said].sl-alarm", has_text="Nothing here").wait_for()
    assert len(cells(page)) == 2
