"""From opening a page to its first live answer, against Pyodide started bare."""

import gzip
import statistics

from calc.sheets import sheet
from scripts.bench_steps.stage import BARE_PAGE, fresh_browser, served, until_live
from scripts.build_steps.places import SITE

KEY = "reach"  # the calculator asked for most
FRAGMENT = "#climb=13m"  # a reader's own number, so that the page starts Python at once
ROUNDS = 3


def cold_and_warm(address):
    """(ms at the first visit of a fresh browser, ms at the second)."""
    with fresh_browser() as context:
        return until_live(context, address), until_live(context, address)


def sent(path):
    """Bytes of a served file as a server that compresses would send them."""
    content = (SITE / path).read_bytes()
    return min(len(content), len(gzip.compress(content, 9)))


def weight(asked):
    """Bytes of all files of the site among the paths asked for, each once."""
    names = {f"{path}index.html" if path.endswith("/") else path for path in asked}
    return sum(sent(name) for name in (n.strip("/") for n in names) if (SITE / name).is_file())


def measures():
    """(label, ratio) pairs; the two starts take turns, so a busy machine slows both alike."""
    times, weights = [], []
    with served() as (server, address):
        for _ in range(ROUNDS):
            server.asked.clear()
            ours = cold_and_warm(address + sheet(KEY).page + FRAGMENT)
            ours_weight = weight(server.asked)
            server.asked.clear()
            bare = cold_and_warm(address + BARE_PAGE)
            weights.append((ours_weight, weight(server.asked)))
            times.append([one / other for one, other in zip(ours, bare, strict=True)])
    for word, ratios in zip(("first", "second"), zip(*times, strict=True), strict=True):
        yield f"{word} visit: first live answer / Pyodide alone, time", statistics.median(ratios)
    ours_weight, bare_weight = weights[-1]
    yield "first visit: bytes sent (gzip) / those of Pyodide alone", ours_weight / bare_weight
    yield "first visit: bytes sent (gzip), MB", ours_weight / 1e6
