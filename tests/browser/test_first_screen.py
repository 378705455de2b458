"""A link with numbers opens on the answer; the form and the guide come after it."""

import pytest

from calc.page.state import State
from calc.sheets import KEYS, sheet
from calc.site import link
from tests.browser.pages import PAGES, box, figures, settle, type_number, verdict, wait_live
from tests.conftest import visit

SCREEN = {"width": 360, "height": 740}  # px; the phone that the first screen is measured on
GIVEN = {
    "reach": {"climb": "22 m", "pressure": "3 bar", "line": ""},
    "keep_up": {"set": "3.2 bar"},
    "demand": {"people": "4", "goats": "12"},
    "pipe": {"climb": "22 m", "length": "180 m"},
    "suction": {"lift": "4.5 m", "altitude": "2400 m"},
    "tank": {"use": "1200 L/day", "own": "5000 L"},
    "pressure_tank": {"cutin": "2 bar", "tank": "80 L"},
    "pump_match": {"climb": "20 m", "flow": "30 L/min"},
    "surge": {"flow": "30 L/min", "closing": "0.1 s"},
    "pressure": {"known": "50 psi", "climb": "60 ft"},
    "panels": {"ah": "20 Ah"},
    "battery": {"ah": "20 Ah"},
    "direct": {"strings": "1"},
    "panel_place": {"tilt": "5°", "facing": "w"},
    "cable": {"length": "60 m", "own": "mm2"},
    "gravity": {"drop": "22 m", "length": "650 m"},
    "well": {"dry": "no", "steady": "0.5 L/min"},
    "hill_tank": {"volume": "2000 L", "garden": "1200 L/day"},
    "drip": {"hours": "0.5"},
    "sprinkler": {"pressure": "1.2 bar"},
    "hot_water": {"volume": "1 L", "mix": "none"},
    "day": {"start": "20 %", "gives": "3 L/min"},
    "fault": {"set": "3 bar"},
}


def shared(key, **texts):
    texts = texts or GIVEN[key]
    return "#" + link.write(sheet(key), State("metric", texts, {}, dict.fromkeys(texts, "given")))


@pytest.fixture
def phone(lent):
    return lent(viewport=SCREEN, is_mobile=True, has_touch=True).new_page()


def bottom(page, part):
    return page.locator(part).first.evaluate("one => one.getBoundingClientRect().bottom")


@pytest.mark.parametrize("key", KEYS)
def test_verdict_picture_fix_and_share_stand_above_the_fold(phone, address, key):
    phone.goto(address + PAGES[key] + shared(key))
    wait_live(phone)
    settle(phone)
    parts = [".sl-verdict", ".sl-top > .sl-picture", ".sl-top > .sl-fix"]
    seen = [bottom(phone, part) for part in parts if phone.locator(part).count()]
    seen.append(bottom(phone, ".sl-share button:visible"))
    assert phone.evaluate("scrollY") == 0
    assert seen == sorted(seen)
    assert seen[-1] <= SCREEN["height"]
    order = [".sl-yours", ".sl-assumed", ".sl-figures", ".sl-form", "[data-sl-lead]"]
    tops = [bottom(phone, part) for part in order]
    assert tops == sorted(tops) and tops[0] > seen[-1]
    assert phone.locator(".sl-working").get_attribute("open") is None


def test_change_leads_from_the_readers_numbers_to_the_form(phone, address):
    phone.goto(address + PAGES["reach"] + shared("reach"))
    wait_live(phone)
    told = phone.locator(".sl-yours").inner_text().replace("\u00a0", " ")
    assert "Climb from pump to outlet 22 m" in told
    phone.locator(".sl-yours").get_by_role("link", name="Change").tap()
    assert box(phone, "pressure").evaluate("el => el === document.activeElement")
    assert box(phone, "pressure").is_visible()


def test_what_is_read_first_comes_first_for_those_who_cannot_see(phone, address):
    phone.goto(address + PAGES["reach"] + shared("reach"))
    wait_live(phone)
    order = phone.evaluate(
        """() => [...document.querySelectorAll(
            '[data-sl-question], .sl-verdict, .sl-share, .sl-yours, .sl-form, [data-sl-lead]'
        )].map(one => one.className || one.tagName)"""
    )
    assert order == ["H1", *order[1:4], "sl-form", "DIV"] and "sl-verdict" in order[1]


def test_without_numbers_the_guide_opens(phone, address):
    phone.goto(address + PAGES["reach"])
    lead, section = phone.locator("[data-sl-lead]"), phone.locator("section.sl")
    assert lead.is_visible()
    assert lead.bounding_box()["y"] < section.bounding_box()["y"]
    assert phone.locator("h1").evaluate("one => parseFloat(getComputedStyle(one).fontSize)") > 20


def test_before_python_lives_the_links_numbers_are_shown_and_no_verdict(phone, address):
    phone.route("**/runtime/*/**", lambda route: None)  # they never come
    phone.goto(address + PAGES["reach"] + shared("reach"))
    phone.wait_for_selector(".sl-top > .sl-yours")
    assert figures(phone) == "reading"
    told = phone.locator(".sl-top").inner_text()
    assert "Set pressure 3bar" in told and "Climb from pump to outlet 22m" in told
    assert phone.locator(".sl-verdict, .sl-figures, .sl-chart").count() == 0
    assert box(phone, "climb").input_value() == "22m"


def test_before_our_scripts_run_the_example_is_not_shown_as_the_links_answer(phone, address):
    phone.route("**/assets/page.js", lambda route: route.abort())
    phone.goto(address + PAGES["reach"] + shared("reach"))
    assert not phone.locator(".sl-verdict").is_visible()
    assert not phone.locator("[data-sl-lead]").is_visible()


def test_a_link_in_the_guide_leads_to_its_answer_and_back_to_the_guide(phone, address):
    phone.goto(address + PAGES["reach"])
    wait_live(phone)
    before = verdict(phone)
    phone.get_by_role("link", name="reach a cabin 25 m up").tap()
    settle(phone)
    assert box(phone, "climb").input_value() == "25"
    assert bottom(phone, ".sl-verdict") < SCREEN["height"]
    phone.go_back()
    settle(phone)
    assert (figures(phone), verdict(phone)) == ("example", before)
    assert "=" not in phone.url
    lead = phone.locator("[data-sl-lead]").bounding_box()["y"]
    assert lead < phone.locator("section.sl").bounding_box()["y"]


@pytest.mark.parametrize("size", [(360, 740), (640, 450)])  # the second: 1280 x 900 at 200 %
def test_the_sticky_line_is_opaque_one_line_and_over_no_field_in_focus(browser, address, size):
    width, height = size
    context = visit(browser, viewport={"width": width, "height": height})
    page = context.new_page()
    page.goto(address + PAGES["reach"] + shared("reach"))
    wait_live(page)
    page.locator(".sl-yours a").click()
    line = page.locator(".sl-glance")
    word = page.locator(".sl-verdict .sl-word").inner_text()
    assert line.inner_text().startswith(word) and "bar" in line.inner_text()
    for _ in range(25):
        page.keyboard.press("Tab")
        field, seen = page.evaluate(
            """() => [document.activeElement, document.querySelector('.sl-glance')].map(
                one => (({top, bottom, height}) => ({top, bottom, height}))(
                    one.getBoundingClientRect()))"""
        )
        assert field["top"] >= seen["bottom"] or field["bottom"] <= seen["top"]
        assert seen["height"] < 40
    assert line.evaluate("one => getComputedStyle(one).backgroundColor").startswith("rgb(")
    context.close()


def test_typing_in_a_shared_sheet_keeps_it_where_it_is(phone, address):
    phone.goto(address + PAGES["reach"] + shared("reach"))
    wait_live(phone)
    type_number(phone, "climb", "10")
    assert figures(phone) == "yours"
    assert bottom(phone, ".sl-verdict") < box(phone, "climb").bounding_box()["y"]


def test_a_link_to_a_heading_leaves_the_numbers_in_the_address(phone, address):
    phone.goto(address + PAGES["reach"] + shared("reach"))
    wait_live(phone)
    type_number(phone, "climb", "10")
    heading = phone.locator("h2[id]", has_text="Cautions")
    name = heading.get_attribute("id")
    phone.evaluate(
        """(name) => {
            const link = document.createElement('a');
            link.href = '#' + name;
            document.querySelector('.md-content').append(link);
            link.click();
        }""",
        name,
    )
    assert "climb=10m" in phone.url
    assert heading.evaluate("one => one === document.activeElement")
    assert heading.bounding_box()["y"] < SCREEN["height"]


def test_forward_brings_back_what_was_typed_before_going_on(phone, address):
    phone.goto(address + PAGES["reach"])
    wait_live(phone)
    type_number(phone, "climb", "10")
    phone.get_by_role("link", name="reach a cabin 25 m up").tap()
    settle(phone)
    for way, climb in ((phone.go_back, "10"), (phone.go_forward, "25")):
        way()
        settle(phone)
        assert (box(phone, "climb").input_value(), figures(phone)) == (climb, "yours")
        assert f"climb={climb}m" in phone.url
