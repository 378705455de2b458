"""From a keystroke to new figures on the page, and what the browser costs over CPython."""

import json
import statistics
import time
from urllib.parse import quote

from calc import bridge
from calc.sheets import KEYS, sheet
from scripts.bench_keep_up import ten_outlets
from scripts.bench_steps.stage import LONGEST, fresh_browser, served

FRAME = 1000 / 60  # ms; a screen that draws 60 times a second
STROKES = 25
# types other numbers into the first shown number field that is not 0; ms from each to new figures
TYPE = """async (strokes) => {
  const answer = document.querySelector(".sl-answer");
  const boxes = document.querySelectorAll(".sl-field:not([hidden]):has(select.sl-unit) input");
  const box = [...boxes].find((one) => parseFloat(one.dataset.metric) > 0);
  const start = parseFloat(box.dataset.metric);
  const times = [];
  for (let stroke = 1; stroke <= strokes; stroke += 1) {
    const changed = new Promise((resolve, reject) => {
      const watcher = new MutationObserver(() => { watcher.disconnect(); resolve(); });
      watcher.observe(answer, { childList: true });
      setTimeout(() => reject(new Error("no new figures after 20 s")), 20000);
    });
    box.value = (start * (1 + 0.01 * stroke)).toPrecision(4);
    const before = performance.now();
    box.dispatchEvent(new Event("input", { bubbles: true }));
    await changed;
    times.push(performance.now() - before);
    await new Promise((resolve) => setTimeout(resolve, 30));
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


def measures():
    """(label, ratio) pairs for every calculator."""
    with served() as (_, address), fresh_browser() as context:
        page = context.new_page()
        for key in KEYS:
            page.goto(address + sheet(key).page)
            page.locator("section.sl .sl-form").scroll_into_view_if_needed()
            page.wait_for_selector('section.sl[data-state="live"]', timeout=LONGEST)
            typed = statistics.median(page.evaluate(TYPE, STROKES))
            yield f"{key}: keystroke to new figures / one frame of 60 Hz", typed / FRAME
            ratio = over_native(page, {"op": "work", "sheet": key})
            yield f"{key}: one answer, browser / CPython, time", ratio
        page.goto(f"{address}{sheet('keep_up').page}#taps={quote(ten_outlets()['taps'])}")
        page.wait_for_selector('section.sl[data-state="live"]', timeout=LONGEST)
        page.wait_for_timeout(1000)  # the first answers warm the interpreter's caches
        typed = statistics.median(page.evaluate(TYPE, STROKES))
        yield "keep_up with ten outlets: change to new figures and drawing / 50 ms", typed / 50
