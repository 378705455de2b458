"""The site in the page: whose numbers they are, kept, carried from page to page, put back."""

import json
import re

import pytest

from calc.sheets import site_ops
from scripts.browser import chromium_path  # noqa: F401  (the browser fixture needs it)
from tests.browser.pages import (
    PAGES,
    RUNS,
    TAPS,
    box,
    cell,
    leave,
    menu,
    open_sheet,
    settle,
    type_number,
    unfold,
    verdict,
    wait_live,
)
from tests.conftest import visit

PHONE = {"width": 360, "height": 740}

PARTS = {
    "format": "springline-parts",
    "version": 1,
    "name": "Our <shop>",
    "pumps": [
        {
            "name": '<b>Deep & "strong"</b>',
            "points": [
                {"flow": "0 L/min", "head": "60 m"},
                {"flow": "30 L/min", "head": "50 m"},
                {"flow": "60 L/min", "head": "30 m"},
            ],
        }
    ],
}


@pytest.fixture(params=["desktop", "phone"])
def any_page(lent, request):
    viewport = PHONE if request.param == "phone" else {"width": 1280, "height": 900}
    page = lent(viewport=viewport).new_page()
    page.faults = []
    page.on("pageerror", lambda error: page.faults.append(str(error)))
    yield page
    assert not page.faults


def ask(do, **more):
    reply = site_ops.handle({"op": "site", "do": do, **more})
    assert not reply["errors"], reply["errors"]
    return reply


def filled(site, key, way=""):
    """What Python says a sheet shows of a site."""
    return ask("fill", site=site, sheet=key, way=way, system="metric")


def demo():
    return ask("demo")["site"]


def site_named(name, **facts):
    """A small site: one pipe to one cabin, with one shower."""
    site = ask("derive", name=name)["site"]
    for path, text in facts.items():
        site = ask("put", site=site, path=path.replace("__", "."), text=text)["site"]
    return site


def whose(page):
    return page.locator("[data-sl-site-whose]").inner_text()


def said(page):
    return page.locator("[data-sl-site-said]").inner_text()


def mark(page, key):
    return page.locator(f'.sl-field[data-key="{key}"] > .sl-mark').text_content()


def shown(page, keys):
    return {key: box(page, key).input_value() for key in keys}


def sites(page):
    if page.locator("[data-sl-site-menu]").is_hidden():
        page.locator("[data-sl-sites]").click()
    return page.locator("[data-sl-site-menu]")


def named(page, button, name):
    panel = sites(page)
    panel.get_by_role("button", name=button).click()
    panel.locator("input[type=text]").fill(name)
    panel.locator("input[type=text]").press("Enter")
    settle(page)


def load(page, site):
    """Open a site of this test, as a file."""
    panel = sites(page)
    content = json.dumps(site).encode()
    panel.locator("input[type=file]").set_input_files(
        {"name": "site.json", "mimeType": "application/json", "buffer": content}
    )
    page.wait_for_function("() => document.querySelector('[data-sl-site-menu]').hidden")
    settle(page)


def go(page, key):
    """By the theme's own navigation, as a reader does; on a phone it lies in a drawer."""
    href = PAGES[key].rstrip("/")
    page.locator(f'.md-nav--primary a[href*="{href}"]').first.evaluate("link => link.click()")
    page.wait_for_url(re.compile(rf"/{href}(/|\.html)"))
    page.locator("section.sl .sl-form").scroll_into_view_if_needed()
    wait_live(page)
    settle(page)


def label(table, column):
    """What the page calls a column, whatever it is called today."""
    from calc.sheets import sheet

    return sheet("keep_up").field(table).column(column).label


# Filling --------------------------------------------------------------------------------------


def test_the_example_says_whose_it_is_and_fills_another_way_through_it(any_page, address):
    page = any_page
    open_sheet(page, address, "reach")
    assert whose(page) == "Alder Terrace, our example"
    assert mark(page, "climb") == "example"
    expected = filled(demo(), "reach", "then/Cabin 3 shower")["texts"]
    page.locator("[data-sl-site-way] select").select_option("then/Cabin 3 shower")
    settle(page)
    assert shown(page, ("climb", "length", "flow")) == {
        key: expected[key] for key in ("climb", "length", "flow")
    }
    assert mark(page, "climb") == "example"
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_an_enquiry_entered_once_goes_through_five_pages(any_page, address):
    page = any_page
    open_sheet(page, address, "keep_up")
    unfold(page)
    type_number(page, "set", "4.2")
    cell(page, 1, label("runs", "long"), RUNS).fill("123")
    cell(page, 3, label("runs", "up"), RUNS).fill("14")
    settle(page)
    page.locator("[data-sl-site-back]").click()
    page.wait_for_function("() => document.querySelector('[data-sl-site-said] li')")
    settle(page)
    assert "becomes 4.2 bar" in said(page) and "becomes 123" in said(page)
    site = ask("unpack", text=page.evaluate(
        "new URLSearchParams(location.hash.slice(1)).get('site')"))["site"]  # fmt: skip
    for key in ("reach", "demand", "pipe", "suction", "tank"):
        go(page, key)
        assert "not saved" in whose(page) and "from a link" not in whose(page)
        way = page.locator("[data-sl-site-way] select").input_value()
        reply = filled(site, key, way)
        for field, text in reply["texts"].items():
            control = page.locator(f'.sl-field[data-key="{field}"] .sl-control > :first-child')
            if control.count():
                assert control.input_value() == text, (key, field)
        if key in ("reach", "pipe"):
            assert box(page, "length").input_value() == "218"  # 123 + 70 + 25 m
            assert box(page, "climb").input_value() == "14"
            assert box(page, "pressure").input_value() == "4.2"
            assert mark(page, "pressure") == "from the site"
            assert mark(page, "length") == "from the site" or mark(page, "length") == "assumed"


def test_what_the_site_only_assumes_is_listed_and_leads_to_its_field(page, address):
    open_sheet(page, address, "reach")
    load(page, site_named("Assumed"))
    assert mark(page, "water") == "assumed"
    listed = page.locator(".sl-assumed")
    assert re.search(r"From the example: .*Water temperature 15.°C", listed.inner_text())
    listed.locator('[data-sl-change="water"]').click()
    assert page.evaluate("document.activeElement.name") == "water"
    assert box(page, "water").is_visible()


# Keeping --------------------------------------------------------------------------------------


def test_a_site_is_saved_chosen_after_a_reload_and_forgotten_when_asked_twice(any_page, address):
    page = any_page
    open_sheet(page, address, "reach")
    load(page, site_named("Millers", pump__set="4.1 bar"))
    assert whose(page) == "Millers, not saved"
    assert page.evaluate("Object.keys(localStorage).filter(k => k.includes('site')).length") == 0
    named(page, "Save as…", "Miller’s place")
    assert whose(page) == "Miller’s place, saved here"
    page.goto(f"{address}{PAGES['reach']}")
    page.reload()
    page.locator("section.sl .sl-form").scroll_into_view_if_needed()
    wait_live(page)
    assert whose(page) == "Alder Terrace, our example"
    sites(page).get_by_role("button", name="Miller’s place", exact=True).click()
    settle(page)
    assert whose(page) == "Miller’s place, saved here"
    assert box(page, "pressure").input_value() == "4.1"
    panel = sites(page)
    panel.get_by_role("button", name="Forget Miller’s place").click()
    panel.get_by_role("button", name="Keep it").click()
    panel.get_by_role("button", name="Forget Miller’s place").click()
    panel.get_by_role("button", name="Forget it").click()
    assert whose(page) == "Miller’s place, not saved"
    assert "No site is saved" in sites(page).inner_text()


def test_a_saved_site_is_renamed_and_copied(page, address):
    open_sheet(page, address, "reach")
    load(page, site_named("One"))
    named(page, "Save as…", "One")
    panel = sites(page)
    panel.get_by_role("button", name="Rename One").click()
    panel.locator("input[type=text]").fill("Two")
    panel.locator("input[type=text]").press("Enter")
    settle(page)
    assert whose(page) == "Two, saved here"
    named(page, "Duplicate…", "Three")
    assert whose(page) == "Three, not saved"
    assert page.evaluate("SpringlineStore.names()") == ["Two"]


def test_a_browser_that_refuses_to_keep_says_so(browser, address):
    context = visit(browser)
    context.add_init_script(
        "Storage.prototype.setItem = () => { throw new DOMException('no', 'SecurityError') }"
    )
    page = context.new_page()
    open_sheet(page, address, "reach")
    load(page, site_named("Refused"))
    named(page, "Save as…", "Refused")
    assert "refuses to keep" in said(page)
    assert whose(page).endswith("not saved")
    context.close()


def test_two_tabs_do_not_overwrite_one_another_in_silence(context, address):
    first, second = context.new_page(), context.new_page()
    open_sheet(first, address, "reach")
    load(first, site_named("Shared"))
    named(first, "Save as…", "Shared")
    open_sheet(second, address, "reach")
    sites(second).get_by_role("button", name="Shared", exact=True).click()
    settle(second)
    change(second, "4.1")
    second.locator("[data-sl-site-save]").click()
    first.wait_for_function(
        "() => document.querySelector('[data-sl-site-said]').textContent.includes('another tab')"
    )
    change(first, "4.7")
    before = first.evaluate("localStorage.getItem('springline-site:Shared')")
    if first.locator("[data-sl-site-save]").is_visible():
        first.locator("[data-sl-site-save]").click()
    named(first, "Save as…", "Shared")
    assert first.evaluate("localStorage.getItem('springline-site:Shared')") == before
    assert "differs" in said(first)
    first.get_by_role("button", name="Load it").click()
    settle(first)
    assert box(first, "pressure").input_value() == "4.1"
    assert whose(first) == "Shared, saved here"


def change(page, pressure):
    type_number(page, "pressure", pressure)
    page.locator("[data-sl-site-back]").click()
    page.wait_for_function("() => document.querySelector('[data-sl-site-said] li')")
    settle(page)


def test_a_site_goes_out_as_a_file_and_comes_back_the_same(page, address, tmp_path):
    open_sheet(page, address, "reach")
    site = site_named("Round & round", pump__set="4.1 bar")
    load(page, site)
    panel = sites(page)
    with page.expect_download() as download:
        panel.get_by_role("button", name="Export as file").click()
    path = tmp_path / "site.json"
    download.value.save_as(path)
    assert download.value.suggested_filename == "round-round.json"
    assert json.loads(path.read_text()) == site
    load(page, json.loads(path.read_text()))
    assert box(page, "pressure").input_value() == "4.1"


def test_a_file_that_is_no_site_is_refused_with_a_reason(page, address):
    open_sheet(page, address, "reach")
    sites(page).locator("input[type=file]").set_input_files(
        {"name": "x.json", "mimeType": "application/json", "buffer": b'{"a": 1}'}
    )
    page.wait_for_function("() => document.querySelector('[data-sl-site-said]').textContent !== ''")
    assert "not a site" in said(page)
    assert whose(page) == "Alder Terrace, our example"


# Links ----------------------------------------------------------------------------------------


def test_a_link_with_a_site_opens_in_a_fresh_browser_with_the_same_figures(browser, address):
    first = visit(browser)
    page = first.new_page()
    open_sheet(page, address, "reach")
    load(page, site_named("Letter", pump__set="4.1 bar"))
    page.locator("[data-sl-site-way] select").select_option("now/Cabin 3 shower")
    settle(page)
    type_number(page, "flow", "25")
    named(page, "Save as…", "Letter")
    settle(page)
    shared, text = page.url, verdict(page)
    numbers = shown(page, ("pressure", "climb", "length", "flow", "water"))
    first.close()
    second = visit(browser, locale="en-US")
    page = second.new_page()
    page.goto(shared)
    wait_live(page)
    settle(page)
    assert whose(page) == "Letter, from a link, not saved"
    assert verdict(page) == text
    assert shown(page, ("pressure", "climb", "length", "flow", "water")) == numbers
    assert mark(page, "pressure") == "from the site" and not mark_shown(page, "flow")
    assert page.evaluate("SpringlineStore.names()") == []
    second.close()


def mark_shown(page, key):
    return page.locator(f'.sl-field[data-key="{key}"] > .sl-mark').is_visible()


def test_a_link_without_a_site_is_nobodys(page, address):
    open_sheet(page, address, "reach")
    type_number(page, "climb", "9")
    page.wait_for_function("() => location.hash.includes('climb')")
    page.goto("about:blank")
    page.go_back()
    wait_live(page)
    assert whose(page) == "Numbers from a link, not saved"


def test_units_change_and_the_link_still_opens_the_same_site(page, address):
    open_sheet(page, address, "reach")
    load(page, site_named("Feet"))
    page.get_by_role("button", name="US", exact=True).click()
    settle(page)
    assert menu(page, "length").input_value() == "ft"
    text = verdict(page)
    page.reload()
    wait_live(page)
    settle(page)
    assert menu(page, "length").input_value() == "ft"
    assert verdict(page) == text


# Putting back -----------------------------------------------------------------------------------


def test_numbers_are_put_back_with_a_list_and_taken_back(any_page, address):
    page = any_page
    open_sheet(page, address, "reach")
    load(page, site_named("Back", pump__set="3 bar"))
    button = page.locator("[data-sl-site-back]")
    assert button.is_hidden()
    type_number(page, "flow", "33")
    assert button.is_hidden()  # the site works the flow out: it stays a what-if
    type_number(page, "pressure", "4.5")
    button.click()
    page.wait_for_function("() => document.querySelector('[data-sl-site-said] li')")
    settle(page)
    assert "3 bar becomes 4.5 bar" in said(page)
    assert mark(page, "pressure") == "from the site"
    assert box(page, "flow").input_value() == "33"
    page.locator("[data-sl-site-said]").get_by_role("button", name="Undo").click()
    settle(page)
    assert box(page, "pressure").input_value() == "4.5" and button.is_visible()
    page.reload()
    wait_live(page)
    settle(page)
    assert "3 bar" in page.evaluate("decodeURIComponent(location.hash)").replace("us3,", "us3 bar,")


# I don't know -------------------------------------------------------------------------------------


def test_what_is_not_known_is_said_by_a_button_and_what_follows_is_shown(any_page, address):
    page = any_page
    open_sheet(page, address, "tank")
    unfold(page)
    field = page.locator('.sl-field[data-key="bridge"]')
    button = field.get_by_role("button", name=re.compile("I don’t know"))
    button.focus()
    page.keyboard.press("Enter")
    settle(page)
    assert box(page, "bridge").input_value() == "?"
    assert button.get_attribute("aria-pressed") == "true"
    assert "taken as 3 days, usual with solar pumping" in field.inner_text()
    said = page.locator(".sl-assumed").inner_text().replace("\u00a0", " ")
    assert "Usual with solar pumping: Days without supply 3 days" in said
    box(page, "bridge").fill("2")
    settle(page)
    assert button.get_attribute("aria-pressed") == "false"
    assert "taken as" not in field.inner_text()


# Points -------------------------------------------------------------------------------------------


@pytest.fixture
def hill(any_page, address):
    open_sheet(any_page, address, "keep_up")
    unfold(any_page)
    return any_page


def test_a_point_is_chosen_from_a_menu_of_those_there_are(hill):
    at = cell(hill, 1, label("taps", "at"), TAPS)
    names = at.evaluate("el => [...el.options].map(one => one.text)")
    ends = hill.locator(f'{RUNS} td[data-column="to"] > select').evaluate_all(
        "all => all.map(one => one.value)"
    )
    assert names == ["pump", *ends, "New point…"]
    at.select_option("cabin 2")
    settle(hill)
    assert hill.locator(".sl-wrong").count() == 0


def test_a_new_point_is_typed_and_then_offered(hill):
    hill.locator(RUNS).get_by_role("button", name="Add").click()
    rows = hill.locator(f"{RUNS} tbody tr").count()
    to = cell(hill, rows, label("runs", "to"), RUNS)
    to.fill("barn")
    to.press("Tab")
    settle(hill)
    at = cell(hill, 1, label("taps", "at"), TAPS)
    assert "barn" in at.evaluate("el => [...el.options].map(one => one.text)")
    at.select_option(label="New point…")
    box_there = cell(hill, 1, label("taps", "at"), TAPS)
    assert box_there.evaluate("el => el.tagName === 'INPUT' && el === document.activeElement")
    box_there.fill("nowhere")
    box_there.press("Tab")
    settle(hill)
    assert hill.locator(f"{TAPS} tr.sl-wrong, {TAPS} td.sl-wrong").count() >= 1


def test_a_point_renamed_is_renamed_in_every_row_and_that_is_said(hill):
    to = cell(hill, 2, label("runs", "to"), RUNS)
    assert to.input_value() == "upper fork"
    to.select_option(label="Rename “upper fork”…")
    name = cell(hill, 2, label("runs", "to"), RUNS)
    name.fill("top fork")
    name.press("Tab")
    settle(hill)
    froms = hill.locator(f'{RUNS} td[data-column="from"] > select').evaluate_all(
        "all => all.map(one => one.value)"
    )
    assert froms.count("top fork") == 3 and "upper fork" not in froms
    spoken = hill.locator(f"{RUNS} [role=status]").all_inner_texts()
    assert any("“upper fork” is now “top fork”, in 4 cells" in text for text in spoken)
    assert hill.locator(".sl-wrong").count() == 0


def test_every_fault_is_listed_above_the_answer_and_leads_to_its_cell(hill):
    cell(hill, 2, label("runs", "long"), RUNS).fill("far")
    cell(hill, 4, label("runs", "up"), RUNS).fill("high")
    hill.locator('.sl-field[data-key="set"] input').fill("strong")
    leave(hill)
    links = hill.locator(".sl-faults a")
    assert links.count() == 3
    hill.evaluate("document.querySelectorAll('.sl-form details').forEach(one => one.open = false)")
    links.filter(has_text=label("runs", "up")).click()
    focused = hill.evaluate("document.activeElement.value")
    assert focused == "high"


def test_a_list_of_the_same_faults_is_not_made_anew_under_the_finger(hill):
    hill.locator('.sl-field[data-key="set"] input').fill("strong")
    hill.wait_for_selector(".sl-faults a")
    hill.evaluate("window.link = document.querySelector('.sl-faults a')")
    hill.keyboard.press("Tab")  # leaves the field: it is asked once more
    settle(hill)
    assert hill.evaluate("link.isConnected")


# Parts --------------------------------------------------------------------------------------------


def test_pumps_of_a_parts_list_are_offered_and_chosen(page, address):
    open_sheet(page, address, "keep_up")
    load(page, PARTS)
    assert "1 pump of “Our <shop>”" in said(page)
    pump = box(page, "pump")
    assert '<b>Deep & "strong"</b>' in pump.evaluate("el => [...el.options].map(o => o.text)")
    pump.select_option('part:<b>Deep & "strong"</b>')
    page.wait_for_function(
        "() => document.querySelector('[data-sl-site-said]').textContent.includes('now')"
    )
    settle(page)
    assert pump.input_value() == "own"
    assert box(page, "table").input_value().count("\n") == 3
    assert page.locator(".sl-wrong").count() == 0
    go(page, "pump_match")
    assert '<b>Deep & "strong"</b>' in box(page, "pump").evaluate(
        "el => [...el.options].map(o => o.text)"
    )


# From a folder ------------------------------------------------------------------------------------


def test_a_site_goes_from_page_to_page_in_a_folder(browser, site_folder, tmp_path_factory):
    import zipfile

    folder = tmp_path_factory.mktemp("folder")
    with zipfile.ZipFile(site_folder / "download" / "springline.zip") as packed:
        packed.extractall(folder)
    index = next(folder.rglob("index.html"))
    context = visit(browser)
    page = context.new_page()
    page.goto((index.parent / "head.html").as_uri())
    page.locator("section.sl .sl-form").scroll_into_view_if_needed()
    wait_live(page)
    load(page, site_named("On a stick", pump__set="4.1 bar"))
    go(page, "pipe")
    assert whose(page).startswith("On a stick")
    assert box(page, "pressure").input_value() == "4.1"
    context.close()
