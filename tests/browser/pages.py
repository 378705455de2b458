"""A reader's hands: open a calculator, type, read, share."""

from calc.sheets import KEYS, sheet
from tests.conftest import FORGET

PAGES = {key: sheet(key).page for key in KEYS}
# one form of a kind, where a test opens a browser for each: that of the battery is that of the
# panels again, and those of a cable and of drip have nothing that others have not
VARIED = tuple(key for key in KEYS if key not in {"battery", "direct", "cable", "drip"})
TAPS = '.sl-field[data-key="taps"]'  # keep_up's tables
RUNS = '.sl-field[data-key="runs"]'
START = 60_000  # ms; Python starting on a loaded machine


def open_sheet(page, address, key, fragment=""):
    """Open the calculator's page and wait until Python answers."""
    page.goto(f"{address}{PAGES[key]}{fragment}")
    page.locator("section.sl .sl-form").scroll_into_view_if_needed()
    wait_live(page)


def wait_live(page):
    page.wait_for_selector('section.sl[data-state="live"]', timeout=START)


def box(page, key):
    return page.locator(f'.sl-field[data-key="{key}"] .sl-control > :first-child')


def menu(page, key):
    return page.locator(f'.sl-field[data-key="{key}"] select.sl-unit')


def cell(page, row, column, table=TAPS):
    """A control by the name a screen reader says."""
    return page.locator(table).get_by_label(f"{column}, row {row}", exact=True)


def unfold(page):
    page.evaluate("document.querySelectorAll('.sl-form details').forEach(one => one.open = true)")


def verdict(page):
    return page.locator(".sl-answer .sl-verdict").inner_text()


def answer_text(page):
    """All words and figures of the answer; drawings are made later, when in view."""
    return page.evaluate(
        """() => [...document.querySelectorAll('.sl-top, .sl-beside, .sl-more')].map((part) => {
            const copy = part.cloneNode(true);
            copy.querySelectorAll('.sl-plot').forEach(one => one.remove());
            return copy.textContent;
        }).join(' ')"""
    )


def figures(page):
    """Whether the figures belong to the numbers in the form: the page's own word for it."""
    return page.locator("section.sl").get_attribute("data-sl-figures")


def leave(page, link=True):
    """Go on from the field: what is wrong is then said at once."""
    page.evaluate("document.activeElement.blur()")
    settle(page, link)


def type_number(page, key, text, link=True):
    """Type into a field, opening its group first; waits for the reply."""
    field = box(page, key)
    field.evaluate("el => el.closest('details')?.setAttribute('open', '')")
    field.fill(text)
    settle(page, link)


def as_at_first(page):
    """Bring the calculator's open page back to the example as a first visit shows it, with
    nothing kept: a start of Python costs more than many a test."""
    page.evaluate(FORGET)
    for fragment in ("#u=metric", ""):  # the first, so that the address changes in any case
        page.evaluate("fragment => { location.hash = fragment; }", fragment)
        settle(page, link=False)
    assert figures(page) == "example"


def settle(page, link=True):
    """Wait until what is shown belongs to what is typed.

    A change of units is one question and its figures another, and what is typed while a question
    is out is asked once that is answered: three in a row. Questions are answered in their order,
    so of three of ours, each asked after the one before, the last is answered after those. Fixes
    and working may come after the figures: the page says that it is busy until they are there.
    link: wait for the link as well, which is written a little later: 400 ms.
    """
    page.wait_for_function(
        """async (late) => {
            const section = document.querySelector('section.sl');
            const { sheet } = section.dataset;
            for (let turn = 0; turn < 3; turn += 1) {
                await SpringlineEngine.ask({ op: 'convert', sheet, to: 'us' });
            }
            while (section.hasAttribute('data-sl-busy')) {
                await new Promise((done) => setTimeout(done, 20));
            }
            return new Promise((done) => setTimeout(() => done(true), late));
        }""",
        arg=400 if link else 0,
        timeout=START,
    )


def show_chart(page):
    """Bring the first chart into view, where the sheet has one; returns whether it has."""
    chart = page.locator(".sl-chart").first
    if not chart.count():
        return False
    chart.scroll_into_view_if_needed()
    return True
