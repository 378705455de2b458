"""From opening a page to its first live answer, against Pyodide started bare."""

import gzip
import statistics

from calc.sheets import sheet
from scripts.bench_steps.stage import BARE_PAGE, IMPORT_PAGE, fresh_browser, served, until_live

KEY = "reach"  # the calculator asked for most
FRAGMENT = "#climb=13m"  # a reader's own number, so that the page starts Python at once
ROUNDS = 5


def visits(server, address):
    """(ms at the first visit of a fresh browser, ms at the second, bytes sent at the first)."""
    server.asked.clear()
    with fresh_browser() as context:
        first = until_live(context, address)
        sent_first = weight(server.folder, list(server.asked))
        return first, until_live(context, address), sent_first


def sent(path):
    """Bytes of a file as a server that compresses would send them."""
    content = path.read_bytes()
    return min(len(content), len(gzip.compress(content, 9)))


def weight(folder, asked):
    """Bytes of all files of ``folder`` among the paths asked for, each once."""
    names = {f"{path}index.html" if path.endswith("/") else path for path in asked}
    paths = (folder / name.strip("/") for name in names)
    return sum(sent(path) for path in paths if path.is_file())


def measures():
    """(label, ratio) pairs; the starts take turns, so a busy machine slows all alike."""
    bare, imported, sizes = [], [], []
    with served() as (server, address):
        for _ in range(ROUNDS):
            ours = visits(server, address + sheet(KEY).page + FRAGMENT)
            alone = visits(server, address + BARE_PAGE)
            whole = visits(server, address + IMPORT_PAGE)
            bare.append([one / other for one, other in zip(ours, alone, strict=True)])
            imported.append([one / other for one, other in zip(ours, whole, strict=True)])
            sizes.append(ours[2] / 1e6)
    first, second, sent_first = (statistics.median(column) for column in zip(*bare, strict=True))
    yield "http cold: first live answer / Pyodide alone, time", first
    yield "http warm: first live answer / Pyodide alone, time", second
    first, second, _ = (statistics.median(column) for column in zip(*imported, strict=True))
    yield "http cold: first live answer / Pyodide and calc imported, time", first
    yield "http warm: first live answer / Pyodide and calc imported, time", second
    yield "http cold: bytes sent (gzip) / those of Pyodide alone", sent_first
    yield "http cold: bytes sent (gzip), MB", statistics.median(sizes)
