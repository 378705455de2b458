"""The same inputs give the same text in CPython and in the browser's Python."""

import os

import pytest

from calc.sheets import KEYS
from tests.browser.pages import open_sheet
from tests.conftest import visit
from tests.parity.cases import replies

# of each sheet; more, apart from the daily run: SPRINGLINE_PARITY=200
COUNT = int(os.environ.get("SPRINGLINE_PARITY", "60"))
# of these a quarter: each follows a year by the hour or lines dripper by dripper, or solves some
# hundred supplies with a fault, ten times as long as the others take, and all go the same way
LONG = frozenset({"panels", "battery", "direct", "panel_place", "drip", "day", "fault"})


@pytest.fixture(scope="module")
def engine(browser, address):
    context = visit(browser, locale="en-US")
    page = context.new_page()
    open_sheet(page, address, KEYS[0])
    yield page
    context.close()


@pytest.mark.parametrize("key", KEYS)
def test_random_inputs_give_the_same_text(engine, key):
    here = list(replies(key, COUNT // 4 if key in LONG else COUNT))
    there = engine.evaluate(
        """async (asked) => {
            const replies = [];
            for (const request of asked) replies.push(await SpringlineEngine.ask(request));
            return replies;
        }""",
        [request for request, _ in here],
    )
    for (request, ours), reply in zip(here, there, strict=True):
        assert reply["text"] == ours["text"], request
        assert reply["html"] == ours["html"], request
        assert reply["same"] == ours["same"], request
