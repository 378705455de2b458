"""Writes what 0.1.0 read from links into ``readings/``: run as a module, sheet keys may follow.

Run once, with the code and the built site of commit 3bdfa88 and a browser.  It is kept for the
record of how the files were made, and must not be run with later code.
"""

import random
import sys
from pathlib import Path

from playwright.sync_api import sync_playwright

from calc.bridge import handle
from tests.conftest import FLAGS, ROOT, SITE, chromium_path, serve
from tests.release_0_1_0 import acts, hand, store, written
from tests.release_0_1_0.frozen import Frozen, load
from tests.release_0_1_0.readings import read

EACH = 200  # links of each sheet
OFFERED, DONE = 30, 45  # of them at most offered in answers; written by the page of what was done
AGAIN = 12  # of them read once more by a page that starts with the link
SEED = "0.1.0 links"
AWAKE = ("--disable-background-timer-throttling", "--disable-renderer-backgrounding")
SCRIPT = Path(__file__).with_name("page.js")


def opened(browser, address):
    """A page that keeps what it asks; nothing of it is stored for the next."""
    context = browser.new_context(locale="en-GB", viewport={"width": 1280, "height": 900})
    page = context.new_page()
    page.expose_function("answered", handle)
    page.add_init_script(path=SCRIPT)
    for unneeded in ("**/runtime/*/**", "**/vendor/**"):
        page.route(unneeded, lambda route: route.abort())
    page.goto(address)
    page.wait_for_function("window.SpringlineEngine && window.Kept")
    return page


def fresh(page, where, fragment):
    """What a page makes of a link that it starts with."""
    page.goto("about:blank")
    page.goto(f"{where}#{fragment}", wait_until="domcontentloaded")
    page.wait_for_timeout(20)
    return page.evaluate("Kept.seen()")


def fragments(rng, key, offered, page):
    """(source, fragment) of the links of a sheet, no two the same."""
    frozen = Frozen(key)
    found = dict.fromkeys(written.in_guide(key, ROOT / "docs"), "guide")
    few = rng.sample(offered, min(OFFERED, len(offered)))
    found |= dict.fromkeys((f for f in few if f not in found), "answer")
    done = 0
    while done < DONE:
        link = page.evaluate("act => Kept.write(act)", acts.drawn(rng, frozen))
        if link not in found:
            found[link] = "form"
            done += 1
    for link in hand.links(rng, frozen, EACH):
        found.setdefault(link, "hand")
    return [(source, fragment) for fragment, source in found.items()][:EACH]


def line(key, source, fragment, seen):
    """What is kept of a link; ``typed``: where the browser's address spells it in another way."""
    request = {name: seen[name] for name in ("system", "texts", "units")}
    kept = {"fragment": seen["hash"].removeprefix("#"), "source": source}
    if kept["fragment"] != fragment:
        kept["typed"] = fragment
    kept |= {"request": request, "left_out": seen["left"]}
    return kept | read({"sheet": key, **request})


def record(browser, address, key, offered):
    rng = random.Random(f"{SEED} {key}")
    where = address + load()["sheets"][key]["page"]
    writer, reader, starter = (opened(browser, where) for _ in range(3))
    kept = []
    for at, (source, fragment) in enumerate(fragments(rng, key, offered, writer)):
        if "=" not in fragment:  # only a page that starts with it looks at all
            seen = fresh(starter, where, fragment)
        else:
            seen = reader.evaluate("fragment => Kept.read(fragment)", fragment)
            if at % (EACH // AGAIN) == 0 and fresh(starter, where, fragment) != seen:
                raise AssertionError(f"{key}: a page that starts with {fragment} reads otherwise")
        kept.append(line(key, source, fragment, seen))
    store.write("readings", key, kept)
    for page in (writer, reader, starter):
        page.context.close()
    return kept


def main():
    server, address = serve(SITE)
    offered = written.in_answers()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=chromium_path(), args=[*FLAGS, *AWAKE, "--no-sandbox"]
        )
        for key in sys.argv[1:] or offered:
            kept = record(browser, address, key, offered[key])
            size = store.path("readings", key).stat().st_size
            sources = [one["source"] for one in kept]
            counted = {source: sources.count(source) for source in dict.fromkeys(sources)}
            print(f"{key}: {len(kept)} links, {counted}, {size} bytes", flush=True)
        browser.close()
    server.shutdown()


if __name__ == "__main__":
    main()
