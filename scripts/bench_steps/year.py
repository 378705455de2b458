"""A year of sun, hour by hour: in the browser, in CPython and in the numpy version of the tests."""

import json
import statistics
import subprocess
import sys
import time

from calc import bridge
from calc.sheets import sheet
from scripts.bench_steps.stage import LONGEST, fresh_browser, served
from scripts.build_steps.places import ROOT

YEAR, SWEEP = 300.0, 20_000.0  # ms, what a year and a sweep are to stay below
ROUNDS = 9
# the numpy version stands in the tests, on which no script leans: it is run by itself
NUMPY = """
import statistics, time
from calc.power.year import simulate
from tests.power.places import HOME, system, weather
from tests.reference.test_power_reference import other_year
there, one = weather(), system(2, 2400.0)
ratios = []
for _ in range(9):
    began = time.perf_counter(); simulate(there, one, HOME)
    half = time.perf_counter(); other_year(there, one, HOME, 2400.0)
    ratios.append((half - began) / (time.perf_counter() - half))
print(statistics.median(ratios))
"""
ASK = """async (requests) => {
  const times = [];
  for (const request of requests) {
    const before = performance.now();
    await SpringlineEngine.ask(request);
    times.push(performance.now() - before);
  }
  return times;
}"""
SWEPT = """async () => {
  const before = performance.now();
  let longest = 0;
  const question = { op: "job", sheet: "panels" };
  let reply = await SpringlineEngine.ask({ ...question, do: "start" });
  while (reply.html === undefined) {
    const began = performance.now();
    reply = await SpringlineEngine.ask({ ...question, do: "step" });
    longest = Math.max(longest, performance.now() - began);
  }
  return [performance.now() - before, longest];
}"""


def requests():
    """Questions that differ in the battery, so that each asks for a year of its own."""
    return [
        {"op": "work", "sheet": "panels", "phase": "first", "texts": {"ah": f"{50 + turn} Ah"}}
        for turn in range(ROUNDS)
    ]


def native():
    """Times of CPython for the questions, ms."""
    times = []
    for request in requests():
        text, before = json.dumps(request), time.perf_counter()
        bridge.handle(text)
        times.append(1000 * (time.perf_counter() - before))
    return times


def measures():
    """(label, ratio) pairs."""
    ran = subprocess.run([sys.executable, "-c", NUMPY], cwd=ROOT, capture_output=True, text=True)
    yield "year: ours in CPython / the numpy version of the tests, time", float(ran.stdout)
    with served() as (_, address), fresh_browser() as context:
        page = context.new_page()
        page.goto(address + sheet("panels").page)
        page.locator("section.sl .sl-form").scroll_into_view_if_needed()
        page.wait_for_selector('section.sl[data-state="live"]', timeout=LONGEST)
        page.wait_for_timeout(1000)
        theirs, ours = page.evaluate(ASK, requests()), native()
        ratio = statistics.median(one / other for one, other in zip(theirs, ours, strict=True))
        yield "year: an answer with a year, browser / CPython, time", ratio
        yield "year: an answer with a year, browser / 0.3 s", statistics.median(theirs) / YEAR
        whole, longest = page.evaluate(SWEPT)
        yield "sweep of designs and years, browser / 20 s", whole / SWEEP
        yield "sweep: longest slice / 0.3 s", longest / YEAR
