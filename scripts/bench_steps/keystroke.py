"""From a keystroke to new figures on the page, and what the browser costs over CPython."""

import json
import statistics
import time
from urllib.parse import quote

from calc import bridge
from calc.sheets import KEYS, sheet
from scripts.bench_keep_up import outlets
from scripts.bench_steps.stage import LONGEST, fresh_browser, served

FRAME = 1000 / 60  # ms; a screen that draws 60 times a second
STROKES = 25
PENDING = 300  # ms; as in figures.js, after which figures are said to be from before
# ten keys a second, our choice: faster than people type; sooner, drawing the screen is measured too
# types other numbers into the first shown number field that is not 0; [ms to new figures, ms to all
# of the answer] of each: fixes and working are asked for after a pause, as in asking.js
TYPE = """async (strokes) => {
  const section = document.querySelector("section.sl");
  const answer = document.querySelector(".sl-answer");
  const boxes = document.querySelectorAll(".sl-field:not([hidden]):has(select.sl-unit) input");
  const box = [...boxes].find((one) => parseFloat(one.dataset.metric) > 0);
  const start = parseFloat(box.dataset.metric);
  const times = [];
  for (let stroke = 1; stroke <= strokes; stroke += 1) {
    const changed = (done) => new Promise((resolve, reject) => {
      const watcher = new MutationObserver(() => {
        if (done()) { watcher.disconnect(); resolve(performance.now()); }
      });
      watcher.observe(section, { attributeFilter: ["data-sl-busy"] });
      watcher.observe(answer, { childList: true, subtree: true });
      setTimeout(() => reject(new Error("no new figures after 20 s")), 20000);
    });
    box.value = (start * (1 + 0.01 * stroke)).toPrecision(4);
    const before = performance.now();
    box.dispatchEvent(new Event("input", { bubbles: true }));
    const seen = answer.querySelector(".sl-verdict");
    const figures = changed(() => answer.querySelector(".sl-verdict") !== seen);
    const all = changed(() => !section.hasAttribute("data-sl-busy"));
    times.push([(await figures) - before, (await all) - before]);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return times;
}"""
ASK = """async (request) => {
  const before = performance.now();
  await SpringlineEngine.ask(request);
  return performance.now() - before;
}"""


def native(request):
    """Time of CPython for one request, ms."""
    text, before = json.dumps(request), time.perf_counter()
    bridge.handle(text)
    return 1000 * (time.perf_counter() - before)


def over_native(page, request):
    """Median time of the browser over CPython; they take turns, so a busy machine slows both."""
    pairs = [(page.evaluate(ASK, request), native(request)) for _ in range(STROKES)]
    return statistics.median(browsers / ours for browsers, ours in pairs)


def medians(page):
    """(ms to new figures, ms to all of the answer), medians of many keystrokes."""
    page.wait_for_selector('section.sl[data-state="live"]', timeout=LONGEST)
    page.wait_for_timeout(1000)  # the first answers warm the interpreter's caches
    return [statistics.median(times) for times in zip(*page.evaluate(TYPE, STROKES), strict=True)]


def measures():
    """(label, ratio) pairs for every calculator."""
    with served() as (_, address), fresh_browser() as context:
        page = context.new_page()
        for key in KEYS:
            page.goto(address + sheet(key).page)
            page.locator("section.sl .sl-form").scroll_into_view_if_needed()
            yield from compared(key, medians(page))
            ratio = over_native(page, {"op": "work", "sheet": key})
            yield f"{key}: one answer, browser / CPython, time", ratio
        for count in (6, 10):
            page.goto("about:blank")  # another fragment alone would open no page
            page.goto(f"{address}{sheet('keep_up').page}#taps={quote(outlets(count)['taps'])}")
            yield from compared(f"keep_up with {count} outlets", medians(page))


def compared(name, times):
    """The two medians over what they are meant to stay below."""
    yield f"{name}: keystroke to new figures / one frame of 60 Hz", times[0] / FRAME
    yield f"{name}: keystroke to fixes and working / {PENDING} ms", times[1] / PENDING
