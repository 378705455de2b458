"""The first live answer without a network: from the service worker, and from a folder on disk."""

import statistics
import zipfile

from calc.sheets import sheet
from scripts.bench_steps.stage import (
    BARE_PAGE,
    IMPORT_PAGE,
    LONGEST,
    fresh_browser,
    served,
    until_live,
)
from scripts.bench_steps.start import FRAGMENT, KEY, ROUNDS
from scripts.build_steps.offline import name
from scripts.build_steps.places import SITE, WORKSHOP

KEPT = "navigator.serviceWorker.ready.then((r) => r.active.state)"


def stored(context, address):
    """Visit once, and wait until the service worker keeps the site."""
    page = context.new_page()
    page.goto(address)
    for _ in range(LONGEST // 100):
        asked = f"Promise.race([{KEPT}, new Promise((r) => setTimeout(r, 100))])"
        if page.evaluate(asked) == "activated":
            break
        page.wait_for_timeout(100)
    else:
        raise TimeoutError("the service worker did not keep the site")
    page.close()


def from_worker():
    """Times of a page served by the service worker over warm starts of both bare pages."""
    ratios = []
    with served() as (server, address):
        for _ in range(ROUNDS):
            with fresh_browser() as context:
                stored(context, address)
                ours = until_live(context, address + sheet(KEY).page + FRAGMENT)
                found = []
                for page in (BARE_PAGE, IMPORT_PAGE):
                    until_live(context, address + page)
                    found.append(ours / until_live(context, address + page))
                ratios.append(found)
    return [statistics.median(column) for column in zip(*ratios, strict=True)]


def from_folder():
    """Times of a page of the unpacked zip over cold starts of both bare pages."""
    target = WORKSHOP / "bench-folder"
    with zipfile.ZipFile(SITE / "download" / "springline.zip") as archive:
        archive.extractall(target)
    page = target / name() / f"{sheet(KEY).page.rstrip('/')}.html"
    ratios = []
    with served() as (_, address):
        for _ in range(ROUNDS):
            found = []
            with fresh_browser() as context:
                ours = until_live(context, page.as_uri() + FRAGMENT)
            for bare in (BARE_PAGE, IMPORT_PAGE):
                with fresh_browser() as context:
                    found.append(ours / until_live(context, address + bare))
            ratios.append(found)
    return [statistics.median(column) for column in zip(*ratios, strict=True)]


def measures():
    """(label, ratio) pairs."""
    for way, ratios in (("service worker", from_worker()), ("file://", from_folder())):
        yield f"{way}: first live answer / Pyodide alone, time", ratios[0]
        yield f"{way}: first live answer / Pyodide and calc imported, time", ratios[1]
