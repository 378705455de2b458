"""The search waits for the calculator's start, never for longer than the reader does."""

import pytest

NOTED = """\
window.TOLD = []; // for each message to the search: was the calculator live?
const RealWorker = window.Worker;
window.Worker = class extends RealWorker {
  postMessage(...message) {
    if (message[0]?.type !== undefined) window.TOLD.push(SpringlineEngine.ready);
    super.postMessage(...message);
  }
};
"""
INDEXED = "() => window.TOLD.length"


@pytest.fixture
def noted(page):
    page.add_init_script(NOTED)
    return page


def _search(page, words):
    page.locator(".md-search__input").click()
    page.locator(".md-search__input").press_sequentially(words, delay=30)
    page.wait_for_selector(".md-search-result__item a")


def test_the_index_is_made_after_the_calculator_is_live(noted, address):
    noted.goto(address + "head/#climb=13m")
    noted.wait_for_function(INDEXED)
    assert noted.evaluate("TOLD[0]")


def test_a_reader_who_searches_first_does_not_wait_for_the_calculator(noted, address):
    noted.route("**/*.wasm", lambda route: None)  # never answered, so Python never starts
    noted.goto(address + "head/#climb=13m")
    _search(noted, "suction")
    assert not noted.evaluate("SpringlineEngine.ready")


def test_without_python_the_index_is_made_all_the_same(noted, address):
    noted.route("**/*.wasm", lambda route: None)
    noted.goto(address + "head/#climb=13m")
    noted.wait_for_function(INDEXED, timeout=20_000)
    assert not noted.evaluate("TOLD[0]")


def test_a_page_without_a_calculator_indexes_at_once(noted, address):
    noted.goto(address + "about/")
    _search(noted, "suction")
    assert noted.evaluate("'ready' in SpringlineEngine && !SpringlineEngine.ready")
