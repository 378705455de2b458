"""How many sites of six outlets the command line works out, as ratios.  Prints only.

Run as ``python -m scripts.bench_bulk``.  A thousand in a minute on two cores is the bar.  Other
programs slow the clock but hardly the processor's own time, so both are told.
"""

import json
import os
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from calc.site import file
from scripts.build_steps.places import ROOT
from scripts.made_supplies import site

SITES, CORES = 1000, 2
BAR = 1000 / 60  # sites a second


def spent(jobs, made, answers):
    """(clock, processor) time of one run, s, that of its processes with it."""
    before, begun = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    words = ["sites", made, "--jobs", str(jobs), "--out", answers, "--quiet"]
    ran = subprocess.run([sys.executable, "-m", "calc", *words], cwd=ROOT)
    clock, after = time.perf_counter() - begun, resource.getrusage(resource.RUSAGE_CHILDREN)
    done = answers.read_text(encoding="utf-8").splitlines()
    if ran.returncode or len(done) != SITES:
        raise SystemExit(f"{len(done)} of {SITES} sites, exit code {ran.returncode}")
    return clock, after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def measures(folder):
    """(label, ratio) pairs."""
    made, answers = folder / "sites.jsonl", folder / "answers.jsonl"
    lines = (json.dumps(file.to_data(site(seed))) for seed in range(SITES))
    made.write_text("".join(f"{line}\n" for line in lines), encoding="utf-8")
    alone, processor = spent(1, made, answers)
    yield "sites a minute, one process by the clock / 1,000", SITES / alone / BAR
    clock, both = spent(CORES, made, answers)
    yield "sites a minute, two processes by the clock / 1,000", SITES / clock / BAR
    yield "sites a minute, two cores by processor time / 1,000", CORES * SITES / both / BAR
    yield "processor time, two processes / one", both / processor
    yield "cores that were free for it, processor time / clock, of 2", both / clock / CORES


def main():
    print(f"{os.cpu_count()} cores")
    with tempfile.TemporaryDirectory() as folder:
        for label, ratio in measures(Path(folder)):
            print(f"{label:<72} {ratio:>9.3g}", flush=True)


if __name__ == "__main__":
    main()
