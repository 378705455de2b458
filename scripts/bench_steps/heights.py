"""How far down a phone's page the answer to a link with numbers stands."""

from calc.sheets import KEYS, sheet
from scripts.bench_steps.stage import fresh_browser, live_page, served
from scripts.bench_steps.start import FRAGMENT

SCREEN = {"width": 360, "height": 740}  # px; the phone that the first screen is measured on
NUMBERS = {"reach": FRAGMENT, "keep_up": "#set=3.2bar"}  # a reader's own
BOTTOM = "(part) => document.querySelector(part).getBoundingClientRect().bottom + scrollY"
VERDICT = ".sl-verdict"
SHARE = ".sl-share button:not([hidden])"


def measures():
    """(label, px) pairs: where verdict and share end, from the top of the page."""
    with served() as (_, address), fresh_browser() as context:
        for key in (one for one in KEYS if one in NUMBERS):
            page, _ = live_page(context, address + sheet(key).page + NUMBERS[key])
            page.set_viewport_size(SCREEN)
            page.wait_for_selector("section.sl:not([data-sl-busy])")
            for name, part in (("verdict", VERDICT), ("share", SHARE)):
                yield f"{key}: from the top to the end of {name}, px", page.evaluate(BOTTOM, part)
            page.close()
