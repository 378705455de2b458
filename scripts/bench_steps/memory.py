"""Memory of the browser with a live calculator, against Pyodide started bare."""

import statistics
from pathlib import Path

from calc.sheets import sheet
from scripts.bench_steps.stage import BARE_PAGE, IMPORT_PAGE, fresh_browser, live_page, served
from scripts.bench_steps.start import FRAGMENT, KEY, ROUNDS

PROC = Path("/proc")


def proportional():
    """Memory (bytes, shared pages by their share) of all browser processes on the machine."""
    total = 0
    for folder in PROC.glob("[0-9]*"):
        try:
            command = (folder / "cmdline").read_bytes()
            lines = (folder / "smaps_rollup").read_text().splitlines()
        except OSError:
            continue  # gone, or not ours to read
        if b"chrom" in command:
            total += sum(1024 * int(line.split()[1]) for line in lines if line.startswith("Pss:"))
    return total


def live(address):
    """Memory once Python has answered at ``address``, bytes."""
    before = proportional()
    with fresh_browser() as context:
        page, _ = live_page(context, address)
        page.wait_for_timeout(1000)  # what starting left behind is given back
        return proportional() - before


def measures():
    """(label, ratio) pairs; none where the machine does not tell memory by process."""
    if not (PROC / "self" / "smaps_rollup").exists():
        return
    ours, ratios = [], []
    with served() as (_, address):
        for _ in range(ROUNDS):
            mine = live(address + sheet(KEY).page + FRAGMENT)
            ratios.append([mine / live(address + bare) for bare in (BARE_PAGE, IMPORT_PAGE)])
            ours.append(mine / 1e6)
    alone, imported = (statistics.median(column) for column in zip(*ratios, strict=True))
    yield "memory of the whole browser, live / with Pyodide alone", alone
    yield "memory of the whole browser, live / with Pyodide and calc imported", imported
    yield "memory of the whole browser, live, MB", statistics.median(ours)
