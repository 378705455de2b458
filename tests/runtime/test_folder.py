"""The copy that opens by double click: unpacked from its zip and opened from the disk."""

import json
import os
import re
import shutil
import subprocess
import sys
import zipfile

import pytest

import calc
from scripts.build_steps import offline
from scripts.build_steps.places import DIST, PARTS, ROOT
from tests.browser.test_desk import journey
from tests.conftest import visit

PARTS_MADE = re.compile(r"\bdata-sl-(?:desk|enquiry|figures|place|start)[a-z-]*(?==| |>)")
LIVE = 'section.sl[data-state="live"]'
ASK = "SpringlineEngine.ask({op: 'work', sheet: 'pressure'})"


@pytest.fixture(scope="module")
def packed():
    command = [sys.executable, "-m", "scripts.build_steps.offline"]
    subprocess.run(command, check=True, cwd=ROOT, timeout=600)
    return DIST / f"springline-{calc.__version__}.zip"


@pytest.fixture(scope="module")
def folder(packed, tmp_path_factory):
    where = tmp_path_factory.mktemp("a folder with spaces and ü")
    with zipfile.ZipFile(packed) as archive:
        archive.extractall(where)
    return where / offline.name()


def _open(page, folder, **options):
    page.add_init_script(f"window.SPRINGLINE_OPTIONS = {json.dumps(options)}")
    page.goto((folder / "pressure.html").as_uri())
    page.wait_for_selector(LIVE, timeout=60_000)


def test_the_zip_is_small_enough_to_send(packed):
    assert packed.stat().st_size <= 15_000_000


def test_the_zip_holds_one_folder_with_the_index_on_top(packed):
    names = zipfile.ZipFile(packed).namelist()
    assert {name.split("/")[0] for name in names} == {offline.name()}
    assert f"{offline.name()}/index.html" in names


def test_every_link_between_the_pages_leads_to_a_file(folder):
    missing = []
    for page in folder.rglob("*.html"):
        for link in re.findall(r'href="([^":#?]+)', page.read_text()):
            if not (page.parent / link).is_file():
                missing.append(f"{page.name}: {link}")
    assert missing == []


def test_every_page_is_made_as_the_site_is(folder, site_folder):
    """What guides call for stands in their pages here too, and no mark of it is left over."""
    for page in folder.glob("*.html"):
        text = page.read_text()
        assert "{{ " not in text, page.name
        here = site_folder / ("index.html" if page.stem == "index" else f"{page.stem}/index.html")
        if here.is_file():
            assert set(PARTS_MADE.findall(text)) == set(PARTS_MADE.findall(here.read_text()))


def test_a_letter_is_answered_from_the_disk(page, folder):
    journey(page, (folder / "enquiry.html").as_uri())


@pytest.mark.parametrize("options", [{}, {"plain": True}, {"worker": False}])
def test_it_opens_from_the_disk_and_works_out_numbers(page, folder, options):
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    _open(page, folder, **options)
    way = "plain" if options.get("plain") else "snapshot"
    assert page.evaluate("SpringlineEngine.way") == way
    assert page.evaluate(ASK)["errors"] == {}
    assert [url for url in asked if not url.startswith(("file:", "blob:", "data:"))] == []


def test_the_disk_and_the_server_give_the_same_answer(browser, folder, address):
    answers = []
    for where in (address + "pressure/", (folder / "pressure.html").as_uri()):
        context = visit(browser, locale="en-US")
        page = context.new_page()
        page.goto(where)
        page.wait_for_selector(LIVE, timeout=60_000)
        answers.append(page.evaluate(ASK))
        context.close()
    assert answers[0] == answers[1]


def test_search_works_from_the_disk(page, folder):
    said = []
    page.on("pageerror", lambda error: said.append(str(error)))
    page.goto((folder / "index.html").as_uri())
    page.locator(".md-search__input").click()
    page.locator(".md-search__input").press_sequentially("suction", delay=50)
    found = page.locator('.md-search-result__link[href*="suction-lift.html"]').first
    found.click()
    page.wait_for_selector("section.sl[data-sheet=suction]")
    assert said == []


@pytest.mark.parametrize("way", ["disk", "http"])
def test_it_works_in_firefox(folder, address, way):
    firefox = shutil.which("firefox-esr") or shutil.which("firefox")
    if not firefox:
        pytest.skip("no Firefox on this machine")
    page = (folder / "pressure.html").as_uri() if way == "disk" else address + "pressure/"
    script = ROOT / "tests" / "runtime" / "firefox.mjs"
    ran = subprocess.run(
        ["node", script, PARTS, firefox, page],
        capture_output=True, text=True, timeout=180, env={**os.environ, "HOME": str(folder.parent)},
    )  # fmt: skip
    assert ran.returncode == 0, ran.stderr[-2000:]
    assert json.loads(ran.stdout) == {"way": "snapshot", "errors": {}}
