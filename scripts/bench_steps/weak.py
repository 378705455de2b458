"""The first live answer over a weak signal, against Pyodide started bare over the same line."""

import collections
import statistics

from calc.sheets import sheet
from scripts.bench_steps.stage import BARE_PAGE, fresh_browser, live_page, served
from scripts.bench_steps.start import FRAGMENT, KEY
from scripts.weak_line import Line, Weak

WEAK, POOR = 1.6e6 / 8, 0.4e6 / 8  # bytes in a second
DELAY = 0.15  # s
ROUNDS = 3
LONGEST = 600_000  # ms; Pyodide alone takes over two minutes on the poorer line


def visit(rate, page):
    """(ms until live, bytes sent by then, addresses asked for more than once by then)."""
    with served(Weak, Line(rate, DELAY)) as (server, address), fresh_browser() as context:
        _, taken = live_page(context, address + page, LONGEST)
        counts = collections.Counter(path.split("?")[0] for path in server.asked)
        again = sorted(path for path, count in counts.items() if count > 1)
        return taken, server.line.sent, again


def measures():
    """(label, ratio) pairs; the starts take turns, so a busy machine slows all alike."""
    ours = sheet(KEY).page + FRAGMENT
    pairs = [(visit(WEAK, ours), visit(WEAK, BARE_PAGE)) for _ in range(ROUNDS)]
    times, sizes = zip(*(ratios(one, bare) for one, bare in pairs), strict=True)
    at = "1.6 Mbit/s, 150 ms, cold"
    yield f"{at}: first live answer / Pyodide alone, time", statistics.median(times)
    yield f"{at}: bytes sent by then / Pyodide alone", statistics.median(sizes)
    yield f"{at}: bytes sent by then, MB", statistics.median(one[1] / 1e6 for one, _ in pairs)
    poor, bare = visit(POOR, ours), visit(POOR, BARE_PAGE)
    at = "0.4 Mbit/s, 150 ms, cold"
    yield f"{at}: first live answer / Pyodide alone, time", poor[0] / bare[0]
    yield f"{at}: files of the runtime sent twice", sum("/runtime/" in path for path in poor[2])


def ratios(one, other):
    return one[0] / other[0], one[1] / other[1]
