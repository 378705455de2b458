"""How long the keep_up sheet takes for ten outlets: solving, curing, rendering. Prints only.

Run as ``python -m scripts.bench_keep_up``.  A keystroke in the browser waits for the figures, at
WebAssembly's pace (measured at about 1.5 times); fixes and working come after.
"""

import json
import time
from dataclasses import replace

from calc import bridge
from calc.page import row_text
from calc.page.form import work
from calc.page.state import State, filled_rows
from calc.sheets import sheet

SHEET = sheet("keep_up")
TAPS = SHEET.field("taps")
ROUNDS = 40
WASM = 1.5  # times the native time for pure Python, from a loop of square roots


def outlets(count):
    """Texts of Alder Terrace with so many outlets, 10 at most; of its own the first."""
    rows = [list(row) for row in filled_rows(TAPS, TAPS.default("metric"), "metric")]
    for name, place in (("Attic sink", "cabin 2"), ("Porch tap", "cabin 1"), ("Urn", "cabin 3")):
        rows.append([name, place, "sink", "0", "1", "", "", ""])
    return {"taps": row_text.encode(rows[:count])}


def typical(task):
    """Median processor time of a task, ms, each round with the set pressure changed."""
    times = []
    for index in range(ROUNDS):
        texts = outlets(10)
        texts["set"] = f"{3.2 + 0.02 * index:.2f} bar"
        begun = time.process_time()
        task(texts)
        times.append((time.process_time() - begun) * 1e3)
    return sorted(times)[ROUNDS // 2]


def _whole(texts):
    bridge.handle(json.dumps({"op": "work", "sheet": "keep_up", "texts": texts}))


def _read(texts):
    work(replace(SHEET, solve=lambda values, reader: None), State("metric", texts))


def _first(texts):
    request = {"op": "work", "sheet": "keep_up", "texts": texts, "phase": "first"}
    bridge.handle(json.dumps(request))


def _answer(texts):
    work(SHEET, State("metric", texts))


def main():
    parts = {"reading rows": _read, "reading and solving": _answer, "figures first": _first}
    parts["with HTML"] = _whole
    measured = {name: typical(task) for name, task in parts.items()}
    whole = measured["with HTML"]
    for name, spent in measured.items():
        print(f"{name:22} {spent:6.1f} ms  {spent / whole:5.0%} of a keystroke")
    print(f"in the browser, about  {whole * WASM:6.1f} ms  {whole * WASM / 50:5.0%} of 50 ms")


if __name__ == "__main__":
    main()
