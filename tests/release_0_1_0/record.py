"""Writes what release 0.1.0 answered into ``replies/``: ``python -m tests.release_0_1_0.record``.

Run once, with the code of commit 3bdfa88, which is that release.  It is kept for the record of
how the files were made: with later code it would write later replies, and must not be run.
"""

import json
import time

from calc.sheets.form import State, work

from calc.bridge import handle
from calc.sheets import KEYS, sheet
from tests.release_0_1_0 import facts, store
from tests.release_0_1_0.requests import requests


def record(request):
    """A request with the hash of its reply and the facts in it."""
    text = handle(json.dumps(request))
    seen = facts.seen(text)
    kept = {"request": request, "sha": seen["sha"]}
    state = State(request["system"], request["texts"], request["units"])
    outcome = work(sheet(request["sheet"]), state)
    if outcome.answer is None:
        return kept | {"errors": seen["errors"]}
    found = facts.of_answer(outcome.answer)
    if found["level"] != seen["level"]:
        raise AssertionError(f"the reply says {seen['level']}, the answer {found['level']}")
    return kept | found


def main():
    for key in KEYS:
        started = time.monotonic()
        kept = [record(request) for request in requests(key)]
        store.write("replies", key, kept)
        answers = sum("level" in one for one in kept)
        seconds = time.monotonic() - started
        size = store.path("replies", key).stat().st_size
        print(f"{key}: {answers} answers of {len(kept)}, {size} bytes, {seconds:.1f} s")


if __name__ == "__main__":
    main()
