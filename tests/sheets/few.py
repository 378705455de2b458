"""Forms of a sheet with a few fields changed or many, as a reader meets one fault or several."""

import random

from calc.page.fields import Number, Rows
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets.addresses import fragment
from calc.site import link as site_link
from calc.units import QUANTITIES, parse
from tests.sheets import awkward

FEW = 3  # fields at most that are changed where few are
PIPES = ("pe100-sdr11/25", "pe100-sdr11/32", "pvc40/1", "hose/0.75", "pex-in/1")


def states(key, count, seed=8):
    """``count`` (sheet, state): the page's and the plain one in turn, the same on every run."""
    rng, page = random.Random(f"{seed} {key}"), find_sheet(key)
    for at in range(count):
        sheet = page if at % 2 else page.plain
        system, texts, units = rng.choice(("metric", "us")), {}, {}
        for entry in _picked(rng, sheet.fields):
            texts[entry.key], unit = _text(rng, entry, system)
            if unit:
                units[entry.key] = unit
        standing = {entry.key: "example" for entry in sheet.fields} | dict.fromkeys(texts, "given")
        # as a page tells it; the plain one is no page, and its links open as if all were given
        yield sheet, State(system, texts, units, standing if sheet is page else {})


def _picked(rng, fields):
    if rng.random() < 0.7:
        return rng.sample(fields, rng.randint(1, FEW))
    return [entry for entry in fields if rng.random() < 0.5]


def _text(rng, entry, system):
    if isinstance(entry, Rows):
        return _rows(rng), None
    default = entry.default(system)
    near = isinstance(entry, Number) and default and entry.quantity != "temperature"
    if not near or rng.random() < 0.4:
        return awkward._text(rng, entry, system)
    unit = QUANTITIES[entry.quantity].default(system)
    value = parse(default, entry.quantity, unit.symbol).value * 2.5 ** rng.uniform(-1, 1)
    return f"{unit.from_si(min(max(value, entry.low), entry.high)):.4g}", unit.symbol


def _rows(rng):
    return ";".join(
        f"{rng.choice([1, 30, 200])} m,{rng.choice([-40, 0, 15])} m,{rng.choice(PIPES)},2,"
        f"{rng.choice(['none', 'dirty', 'r20', 'check'])}"
        for _ in range(rng.choice((0, 0, 1, 2, 4)))
    )


def opened(link, sheet, state):
    """The ``Outcome`` of the page that a link of an answer leads to, through its address."""
    target = find_sheet(link.sheet)
    before = state if target is sheet else None
    text = fragment(target, link.values, state.system, before=before)
    reading = site_link.read(text, target)
    assert reading.trusted and not reading.said, (link, reading.said)
    return work(target, reading.state)


def wrong(answer):
    """Keys of what is worse than a note: (all of them, those that are known and not unchecked)."""
    bad = [one for one in answer.findings if one.level != "note"]
    return {one.key for one in bad}, {one.key for one in bad if one.rank != "unchecked"}
