"""Random valid inputs for every calculator, the same ones on every run."""

import json
import random
from itertools import islice

from calc import bridge
from calc.page import row_text
from calc.page.fields import Choice, Count, Number, Rows
from calc.page.form import rest, work
from calc.page.state import State, filled_rows
from calc.sheets import sheet as find_sheet
from calc.units import QUANTITIES, parse

SEED = 20240229


def requests(key, count, seed=SEED):
    """``count`` requests for sheet ``key`` that work out to an answer.

    Numbers are drawn around the default (0.4 to 2.5 times) and kept inside the
    field's bounds, in a unit drawn from its menu; the draw is repeated until the
    sheet accepts it.
    """
    key_of = (key, seed)
    if len(_DRAWN.setdefault(key_of, [])) < count:
        _DRAWN[key_of] = [request for request, *_ in _begun(key, count, seed)]
    return [
        one | {"texts": {**one["texts"]}, "units": {**one["units"]}}
        for one in _DRAWN[key_of][:count]
    ]


_DRAWN = {}  # (key, seed) -> requests: the answer that shows one to be valid takes its time


def worked(key, count, seed=SEED):
    """(request, ``State``, ``Outcome``) of ``requests``, each worked out once."""
    for request, state, outcome in _begun(key, count, seed):
        yield request, state, rest(outcome)


def replies(key, count, seed=SEED):
    """(request, the bridge's whole reply) of ``requests``, each worked out once.

    As the page asks: the figures first, which show whether the request is valid, then the rest.
    """
    valid = (one for one in _draws(key, count, seed) if _asked(one, "first").get("more"))
    for request in _counted(key, count, valid):
        yield request, _asked(request, "rest")


def _asked(request, phase):
    reply = json.loads(bridge.handle(json.dumps(request | {"phase": phase})))
    assert "failed" not in reply, request
    return reply


def _begun(key, count, seed):
    """(request, state, outcome without what comes later, which never refuses)."""
    return _counted(key, count, _valid(key, count, seed))


def _valid(key, count, seed):
    sheet = find_sheet(key)
    for request in _draws(key, count, seed):
        state = State(request["system"], request["texts"], request["units"])
        outcome = work(sheet, state, first=True)
        if outcome.answer is not None:
            yield request, state, outcome


def _draws(key, count, seed):
    rng, sheet = random.Random(f"{seed} {key}"), find_sheet(key)
    for _ in range(50 * count):
        yield _draw(rng, sheet)


def _counted(key, count, found):
    taken = 0
    for one in islice(found, count):
        taken += 1
        yield one
    assert taken == count, f"{key}: only {taken} of {count} draws were valid"


def _draw(rng, sheet):
    system = rng.choice(["metric", "us"])
    texts, units = {}, {}
    for entry in sheet.fields:
        if rng.random() < 0.3:
            continue
        if isinstance(entry, Choice):
            texts[entry.key] = rng.choice(entry.options)[0]
        elif isinstance(entry, Count):
            texts[entry.key] = str(rng.randint(entry.low, min(entry.high, max(3, 2 * entry.start))))
        elif isinstance(entry, Number):
            texts[entry.key], units[entry.key] = _number(rng, entry, system)
        elif isinstance(entry, Rows):
            texts[entry.key] = _rows(rng, entry, system)
    return {"op": "work", "sheet": sheet.key, "system": system, "texts": texts, "units": units}


def _rows(rng, entry, system):
    """The default rows with some numbers and counts drawn anew; names and choices stay."""
    rows = []
    for row in filled_rows(entry, entry.default(system), system):
        cells = list(row)
        for place, column in enumerate(entry.columns):
            if rng.random() < 0.8:
                continue
            if isinstance(column, Number) and cells[place] not in ("", "?"):
                around = parse(cells[place], column.quantity).value
                value = min(max(around * 1.5 ** rng.uniform(-1, 1), column.low), column.high)
                unit = rng.choice(QUANTITIES[column.quantity].units)
                cells[place] = f"{unit.from_si(value):.6g} {unit.symbol}"
            elif isinstance(column, Count):
                cells[place] = str(rng.randint(column.low, min(column.high, 4)))
        rows.append(cells)
    return row_text.encode(rows)


def _number(rng, entry, system):
    kind = QUANTITIES[entry.quantity]
    unit = rng.choice(kind.units)
    default = entry.default(system)
    if default in ("", "?"):
        return default, kind.default(system).symbol
    around = parse(default, entry.quantity, kind.default(system).symbol).value
    if entry.quantity == "temperature":
        value = around + rng.uniform(-10, 15)
    else:
        value = around * 2.5 ** rng.uniform(-1, 1)
    value = min(max(value, entry.low), entry.high)
    text = f"{unit.from_si(value):.6g}"
    return text, unit.symbol
