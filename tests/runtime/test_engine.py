"""How Python starts in the browser: from its snapshot, without it, without a worker."""

import json

import pytest

from calc.sheets import KEYS, sheet
from tests.conftest import visit

PAGE = "pressure/"
LIVE = 'section.sl[data-state="live"]'
ASK = "SpringlineEngine.ask({op: 'work', sheet: 'pressure'})"
SAID = "(words) => document.querySelector('.sl-status').textContent.includes(words)"


def _open(page, address, where=PAGE, **options):
    page.add_init_script(f"window.SPRINGLINE_OPTIONS = {json.dumps(options)}")
    page.goto(address + where)
    page.wait_for_selector(LIVE, timeout=60_000)


def _way(page):
    return page.evaluate("SpringlineEngine.way")


@pytest.fixture(scope="module")
def live(browser, address):
    """A page where Python has started, for those who ask it and change nothing."""
    context = visit(browser)
    page = context.new_page()
    _open(page, address)
    yield page
    context.close()


def test_python_starts_from_its_snapshot(live):
    assert _way(live) == "snapshot"


def test_every_way_of_starting_gives_the_same_answer(browser, address):
    answers = []
    for options in ({}, {"plain": True}, {"worker": False}, {"worker": False, "plain": True}):
        context = visit(browser, locale="en-US")
        page = context.new_page()
        _open(page, address, **options)
        assert _way(page) == ("plain" if options.get("plain") else "snapshot")
        answers.append(page.evaluate(ASK))
        context.close()
    assert all(answer == answers[0] for answer in answers)


def test_a_damaged_snapshot_falls_back_to_the_plain_start(page, address):
    page.route("**/snapshot.0.bin", lambda route: route.fulfill(body=b"damaged"))
    _open(page, address)
    assert _way(page) == "plain"


def test_a_cut_off_snapshot_falls_back_to_the_plain_start(page, address):
    def half(route):
        body = route.fetch().body()
        route.fulfill(body=body[: len(body) // 2])

    page.route("**/snapshot.1.bin", half)
    _open(page, address)
    assert _way(page) == "plain"


OLD = {
    "WebAssembly": "forbids WebAssembly",
    "DecompressionStream": "this browser is too old",
}


@pytest.mark.parametrize("without", OLD)
def test_what_a_browser_or_host_does_not_allow_is_said_at_once(page, address, without):
    """As under a host's policy without 'wasm-unsafe-eval', and in a browser of before 2023."""
    taken = {
        "WebAssembly": "WebAssembly.Module = () => { throw new Error('refused'); };",
        "DecompressionStream": "delete globalThis.DecompressionStream;",
    }[without]
    page.route("**/worker.js*", lambda route: _before(route, taken))
    page.goto(address + PAGE)
    said = page.evaluate("SpringlineEngine.start().catch((error) => error.message)")
    assert OLD[without] in said
    page.wait_for_function(SAID, arg=OLD[without])


def _before(route, text):
    """The file with some script before it."""
    route.fulfill(body=text + "\n" + route.fetch().text(), content_type="text/javascript")


def test_where_workers_are_refused_python_runs_in_the_page(page, address):
    page.add_init_script("window.Worker = class { constructor() { throw new Error('refused'); } }")
    _open(page, address)
    assert page.evaluate(ASK)["errors"] == {}


def test_where_the_worker_dies_at_once_python_runs_in_the_page(page, address):
    first = []

    def once(route):
        first.append(1)
        route.abort() if len(first) == 1 else route.continue_()

    page.route("**/worker.js*", once)
    _open(page, address)
    assert len(first) == 2
    assert page.evaluate(ASK)["errors"] == {}


@pytest.mark.parametrize(
    "second", ["undefined", "class { constructor() { throw new Error('refused'); } }"]
)
def test_where_no_second_worker_can_be_had_the_first_unpacks_the_snapshot(page, address, second):
    page.route("**/worker.js*", lambda route: _before(route, f"globalThis.Worker = {second};"))
    _open(page, address)
    assert _way(page) == "snapshot"


def test_a_link_with_numbers_starts_python_without_waiting_for_the_rest_of_the_page(page, address):
    page.route("**/page.js", lambda route: route.abort())
    page.goto(address + PAGE + "#climb=13m")
    page.wait_for_function("() => SpringlineEngine.ready")
    page.goto("about:blank")
    page.goto(address + PAGE)
    page.wait_for_load_state("networkidle")
    names = page.evaluate("performance.getEntriesByType('resource').map((one) => one.name)")
    assert not [name for name in names if name.endswith("worker.js")]


def test_start_can_be_called_twice(live):
    assert live.evaluate("SpringlineEngine.start() === SpringlineEngine.start()")


@pytest.mark.parametrize("request_text", ["{op: 'work', sheet: 'nonsense'}", "{op: 'nonsense'}"])
def test_a_bad_question_is_refused_and_the_next_one_answered(live, request_text):
    said = live.evaluate(f"SpringlineEngine.ask({request_text}).catch((error) => error.message)")
    assert said == "KeyError: 'nonsense'"
    assert live.evaluate(ASK)["errors"] == {}


def test_a_start_that_failed_is_said_and_can_be_tried_again(page, address):
    page.route("**/runtime/**", lambda route: route.abort())
    page.goto(address + PAGE)
    # a function: text of another kind is evaluated anew at each look, which the page's policy bars
    page.wait_for_function(
        "() => document.querySelector('.sl-status').innerText.includes('could not')"
    )
    assert "The worked example is as printed" in page.locator(".sl-status").first.inner_text()
    page.unroute("**/runtime/**")
    page.evaluate("SpringlineEngine.start()")
    assert page.evaluate("SpringlineEngine.ready")


def test_answers_come_in_the_order_of_their_questions(live):
    wanted = ["10 m", "20 m", "30 m"]
    replies = live.evaluate(
        """(texts) => Promise.all(texts.map((climb) => SpringlineEngine.ask(
            {op: 'work', sheet: 'pressure', texts: {climb}, units: {climb: 'm'}})))""",
        wanted,
    )
    assert len({reply["text"] for reply in replies}) == len(wanted)


# The plain start on one page: test_rest.py asks of either start about every sheet.
STARTS = [*((key, "snapshot") for key in KEYS), ("pressure", "plain")]


@pytest.mark.parametrize("key, way", STARTS)
def test_a_start_and_its_first_answers_need_nothing_of_the_rest(page, address, key, way):
    """What is sent first is enough; a function that is missing there would cost a reader a wait."""
    said = []
    page.on("console", lambda message: said.append(message.text))
    _open(page, address, sheet(key).page, plain=way == "plain")
    assert _way(page) == way
    for system in ("metric", "us"):
        page.evaluate(f"SpringlineEngine.ask({{op: 'work', sheet: '{key}', system: '{system}'}})")
    assert [one for one in said if "fetches the rest" in one] == []


# The clock that an answer starts runs out when the page says so: a slow machine has time to look.
HELD = """
const clock = self.setTimeout.bind(self);
self.setTimeout = (what, wait, ...more) => {
  if (!(wait >= 1000)) return clock(what, wait, ...more);
  new BroadcastChannel("clock").onmessage = what;
  return 1;
};"""


def test_the_rest_of_python_comes_once_the_first_answer_has(page, address):
    asked = []
    page.on("request", lambda request: asked.append(request.url.rsplit("/", 1)[1]))
    page.route("**/worker.js*", lambda route: _before(route, HELD))
    _open(page, address)
    assert [name for name in asked if name.startswith("rest.")] == []
    with page.expect_request("**/rest.*", timeout=30_000):
        page.evaluate("new BroadcastChannel('clock').postMessage('out')")
    assert page.evaluate(ASK)["errors"] == {}
