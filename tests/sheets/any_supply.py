"""Random requests to the three sheets of a whole supply, each with its answer, worked once."""

import functools
import re

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets.addresses import fragment
from calc.site import link as site_link
from tests.rounds import some
from tests.sheets import drawn, random_supplies

KEYS = ("reach", "pump_match", "keep_up")
SHEETS = [(key, plain) for key in KEYS for plain in (False, True)]
EACH = some(100)  # requests of a sheet, its page's and the plain one apart
UNITS = "bar|psi|L/min|gpm|m/s|ft/s|m|ft|%|°C|°F"
FIGURE = re.compile(rf"(−?\d[\d.\u202f]*(?:e-?\d+)?)[\u00a0 ]?({UNITS})(?![\w/])")


def sheet(key, plain):
    """A sheet as its page has it, its example Alder Terrace, or plain."""
    found = find_sheet(key)
    return found.plain if plain and found.plain else found


def states(key, plain):
    """The same requests on every run; others for the page's sheet and the plain one."""
    first = 50_000 if plain else 60_000
    if key == "keep_up":
        return [random_supplies.state(first + at) for at in range(EACH)]
    return drawn.states(sheet(key, plain), EACH, first)


@functools.cache
def answered(key, plain):
    """(state, answer) of those that have an answer."""
    worked = [(state, work(sheet(key, plain), state).answer) for state in states(key, plain)]
    return tuple((state, answer) for state, answer in worked if answer is not None)


def figures(text):
    """(number, unit) of every figure in a sentence."""
    return [
        (float(number.replace("−", "-").replace("\u202f", "")), unit)
        for number, unit in FIGURE.findall(text)
    ]


def ways_to_open(link, system, plain):
    """The states in which a link of an answer opens: by its texts, and as its address says them."""
    yield State(system, dict(link.values))
    if not plain:
        target = find_sheet(link.sheet)
        yield site_link.read(fragment(target, link.values, system), target).state
